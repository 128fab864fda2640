"""Three tabs, another program and restarts at one bench, in random order, against a plain model.

The model keeps what each file should hold and what should be on the bench, and knows of every tab
whether what it has in view is still that. A tab in the know is obeyed; any other is refused with a
sentence and nothing changes. By hand, for many rounds: python tests/interleaving.py 2000
"""

from __future__ import annotations

import random
import shutil
import sys
import tempfile
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any

from asking import Server, seen
from numbered_files import numbered_text

Parts = tuple[tuple[str, int], ...]  # name and grams, in the order of the file
FILES = ("alder.toml", "birch.toml")
MORE = ("cedar.toml", "dogwood.toml")
NAMES = ("pack", "motor", "servo", "winch", "brass", "lead")
HEAD = numbered_text("thistle").split("[[part]]")[0].rstrip()
HEAD = HEAD.split("[battery]")[0].rstrip() + "\n"


def text(parts: Parts) -> str:
    """The truck file with these parts, as the bench itself would write it."""
    entry = '\n[[part]]\nname = "{}"\non = "chassis"\nmass_g = {}\nat_mm = [{}, 0, 90]\n'
    axle = '\n[[part]]\nname = "{0} axle"\non = "{0} axle"\nmass_g = 300\nat_mm = [0, 0, 0]\n'
    wheels = '\n[[part]]\nname = "wheels"\non = "every wheel"\nmass_g = 120\nat_mm = [0, 0, 0]\n'
    tub = '\n[[part]]\nname = "tub"\non = "chassis"\nmass_g = 700\nat_mm = [0, 0, 110]\n'
    fixed = axle.format("front") + axle.format("rear") + wheels + tub
    return HEAD + fixed + "".join(entry.format(n, m, place(n)) for n, m in parts)


def place(name: str) -> int:
    return 10 * NAMES.index(name) - 20


@dataclass(frozen=True)
class Doc:
    """A file being worked on. name: changes whenever a tab that saw it before is no longer in the
    know. base: what was on disk when last looked at."""

    file: str
    name: int
    parts: Parts
    saved: Parts
    base: Parts
    back: tuple[Parts, ...] = ()
    ahead: tuple[Parts, ...] = ()

    @property
    def unsaved(self) -> bool:
        return self.parts != self.saved


@dataclass
class Tab:
    state: dict[str, Any]
    name: int  # of the document as this tab has it in view
    parts: Parts


@dataclass
class Round:
    """One bench with its model; `play` does random things and checks each."""

    chance: random.Random
    folder: Path
    keeper: Path
    disk: dict[str, Parts] = field(default_factory=dict)
    kept: dict[str, Doc] = field(default_factory=dict)  # unsaved work of files not on the bench
    names: int = 0
    refusals: int = 0

    def play(self, steps: int) -> None:
        for file in FILES:
            self.to_disk(file, (("pack", 200), ("motor", 150), ("servo", 60)))
        self.server = Server(self.folder, FILES[0], self.keeper)
        self.put_on(FILES[0])
        self.tabs = [self.look() for _ in range(3)]
        acts = [self.edit] * 8 + [self.undo, self.redo, self.go, self.switch, self.pulse] * 2
        acts += [self.save, self.save, self.save_as, self.program, self.restart, self.refresh]
        for _ in range(steps):
            tab = self.chance.choice(self.tabs)
            self.chance.choice(acts)(tab)
            self.check()
        self.server.close()

    # The model's own moves

    def fresh(self) -> int:
        self.names += 1
        return self.names

    def to_disk(self, file: str, parts: Parts) -> None:
        self.disk[file] = parts
        (self.folder / file).write_text(text(parts))

    def put_on(self, file: str) -> None:
        """The file comes on the bench, with the unsaved work that was kept of it."""
        there = self.disk[file]
        work = self.kept.pop(file, None)
        if work is None:
            self.doc = Doc(file, self.fresh(), there, there, there)
        else:
            base = work.base if work.parts != there else there
            self.doc = Doc(file, work.name, work.parts, there, base, work.back, work.ahead)

    def put_off(self) -> None:
        if self.doc.unsaved:
            self.kept[self.doc.file] = self.doc

    def became(self, parts: Parts, back: tuple[Parts, ...], ahead: tuple[Parts, ...]) -> None:
        d = self.doc
        self.doc = Doc(d.file, self.fresh(), parts, d.saved, d.base, back, ahead)

    def changed(self, parts: Parts) -> None:
        if parts != self.doc.parts:
            self.became(parts, (*self.doc.back, self.doc.parts), ())

    def saved(self, base: Parts) -> None:
        d = self.doc
        self.doc = Doc(d.file, d.name, d.parts, d.parts, base, d.back, d.ahead)

    # What tabs do

    def look(self) -> Tab:
        return Tab(self.server.ask("/api/bench"), self.doc.name, self.doc.parts)

    def tell(self, tab: Tab, path: str, **body: Any) -> bool:
        """Whether the bench did it; the tab then has the new state in view. Where it did not, what
        it says is a sentence, and the tab looks anew."""
        knows = tab.name == self.doc.name
        answer = self.server.tell(path, **seen(tab.state), **body)
        if "refused" not in answer:
            assert knows, f"{path} of a tab that saw another state was obeyed"
            return True
        self.refusals += 1
        assert answer["problems"], path
        assert all(len(s.split()) >= 4 for s in answer["problems"]), answer
        if not knows:
            assert answer["where"] in ("tab", "document"), answer
        self.answer = answer
        return False

    def after(self, tab: Tab) -> None:
        fresh = self.look()
        tab.state, tab.name, tab.parts = fresh.state, fresh.name, fresh.parts

    def edit(self, tab: Tab, again: int = 2) -> None:
        there = dict(tab.parts)
        what = self.chance.choice(["mass", "mass", "mass", "add", "remove"])
        name = self.chance.choice(NAMES if what == "add" else [*there] or [NAMES[0]])
        mass = self.chance.randint(20, 300)
        part = {"name": name, "on": "chassis", "mass_g": mass, "at_mm": [place(name), 0, 90]}
        edits: dict[str, Any] = {
            "mass": {"do": "set", "part": name, "key": "mass_g", "value": mass},
            "add": {"do": "add", "part": part},
            "remove": {"do": "remove", "part": name},
        }[what]
        for _ in range(again):  # the second time it is "do mine on top"
            now = dict(self.doc.parts)
            possible = (name in now) != (what == "add")
            knows = tab.name == self.doc.name
            done = self.tell(tab, "/api/edit", edits=[edits], what=what)
            assert done == (knows and possible), (what, name, self.doc)
            if done:
                if what == "remove":
                    del now[name]
                else:
                    now[name] = mass
                self.changed(tuple(now.items()))
                self.after(tab)
                return
            self.after(tab)

    def undo(self, tab: Tab) -> None:
        if self.tell(tab, "/api/undo") and self.doc.back:
            d = self.doc
            self.became(d.back[-1], d.back[:-1], (*d.ahead, d.parts))
        self.after(tab)

    def redo(self, tab: Tab) -> None:
        if self.tell(tab, "/api/redo") and self.doc.ahead:
            d = self.doc
            self.became(d.ahead[-1], (*d.back, d.parts), d.ahead[:-1])
        self.after(tab)

    def go(self, tab: Tab) -> None:
        d = self.doc
        states = (*d.back, d.parts, *reversed(d.ahead))
        to = self.chance.randint(0, len(states))  # one too many is refused
        if self.tell(tab, "/api/go", to=to):
            if to != len(d.back):
                self.became(states[to], states[:to], tuple(reversed(states[to + 1 :])))
        elif tab.name == d.name:
            assert to == len(states)
        self.after(tab)

    def switch(self, tab: Tab) -> None:
        file = self.chance.choice([*self.disk])
        self.server.tell("/api/open", name=file)
        if file != self.doc.file:
            self.put_off()
            self.put_on(file)
        self.after(tab)

    def save(self, tab: Tab) -> None:
        same = self.disk[self.doc.file] == self.doc.base
        over = self.chance.random() < 0.2
        if self.tell(tab, "/api/save", name=None, over=over):
            assert same or over
            self.disk[self.doc.file] = self.doc.parts
            self.saved(self.doc.parts)
        elif self.answer["where"] == "disk":
            assert not same
            self.after(tab)
            if self.chance.random() < 0.5:
                assert self.tell(tab, "/api/discard")
                self.changed(self.disk[self.doc.file])
                self.saved(self.doc.parts)
        self.after(tab)

    def save_as(self, tab: Tab) -> None:
        file = self.chance.choice([*FILES, *MORE])
        over = self.chance.random() < 0.5
        d = self.doc
        if file == d.file:
            return
        if self.tell(tab, "/api/save", name=file, over=over):
            assert over or file not in self.disk
            assert file not in self.kept, "unsaved work of another truck was written over"
            self.disk[file] = d.parts
            self.doc = Doc(file, self.fresh(), d.parts, d.parts, d.parts, d.back, d.ahead)
        self.after(tab)

    # What others do

    def program(self, tab: Tab) -> None:
        """Another program changes a file."""
        file = self.chance.choice([*self.disk])
        parts = dict(self.disk[file])
        parts[self.chance.choice(NAMES)] = self.chance.randint(20, 300)
        self.to_disk(file, tuple(parts.items()))

    def pulse(self, tab: Tab) -> None:
        told = self.server.ask("/api/pulse")
        d, there = self.doc, self.disk[self.doc.file]
        if there != d.base:
            assert bool(told["disk"]) == d.unsaved
            if not d.unsaved:
                self.changed(there)
                self.saved(there)
        else:
            assert told["disk"] == ""

    def restart(self, tab: Tab) -> None:
        self.server.close()
        self.put_off()
        file = self.chance.choice([self.doc.file, self.chance.choice([*self.disk])])
        self.server = Server(self.folder, file, self.keeper)
        self.put_on(file)

    def refresh(self, tab: Tab) -> None:
        self.after(tab)

    def check(self) -> None:
        """The bench has what the model has, and so has every file."""
        sheet = self.server.bench.desk.sheet
        assert sheet.source.name == self.doc.file
        assert sheet.history.text == text(self.doc.parts)
        assert sheet.unsaved == self.doc.unsaved
        for file, parts in self.disk.items():
            assert (self.folder / file).read_text() == text(parts), file


def play(seed: int, steps: int = 30) -> int:
    """One round; gives how many questions were refused."""
    place = Path(tempfile.mkdtemp(prefix="crossfall-tabs-"))
    try:
        (place / "shop").mkdir()
        one = Round(random.Random(seed), place / "shop", place / "state")
        one.play(steps)
        return one.refusals
    finally:
        shutil.rmtree(place)


if __name__ == "__main__":
    rounds, total = int(sys.argv[1]), 0
    for seed in range(rounds):
        total += play(seed)
        if (seed + 1) % 50 == 0 or seed + 1 == rounds:
            sys.stdout.write(f"{seed + 1} rounds, {total} refusals, nothing lost\n")
            sys.stdout.flush()
