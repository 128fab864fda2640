"""Every number of the page's title block against what the verbs print of the file it saves.

By hand, for three trucks and many edits: python tests/page_numbers.py 20 [TRUCK ...]
"""

from __future__ import annotations

import json
import random
import re
import subprocess
import sys
import tempfile
from pathlib import Path
from typing import Any

from playwright.sync_api import Page, expect

from browsing import Bench, ask, browser, looking, running, shop, tell

LONG = 240_000  # ms, on a machine with other work to do
WAYS = {"climb": 0, "left": 90, "descent": 180, "right": 270}
TOLD = 0.005  # deg, mm, g: answers travel to the page in hundredths
Found = list[tuple[str, float, float, int]]  # name, on the page, of the verb, digits shown


def verb(folder: Path, *words: str) -> Any:
    """What a verb prints as JSON."""
    command = [sys.executable, "-c", "from crossfall.cli import main; main()", *words, "--json"]
    done = subprocess.run(command, cwd=folder, capture_output=True, text=True, check=True)
    return json.loads(done.stdout)


def figures(text: str) -> list[float]:
    """The numbers of a text, with their signs."""
    return [float(w) for w in re.findall(r"-?\d+(?:\.\d+)?", text.replace("−", "-"))]


def compared(page: Page, folder: Path, file: str) -> Found:
    """Each number that the page shows beside the verb's; the page has settled."""
    weigh = verb(folder, "weigh", file)
    ways = {h["heading_deg"]: h for h in verb(folder, "tilt", file, "--no-trial")["headings"]}
    found: Found = []
    front, left = weigh["wheel_loads_g"], ("front_left", "rear_left")
    wanted = {
        "All up": (weigh["mass_g"], 0),
        "CG height": (weigh["cg_mm"][2], 1),
        "On the front": (weigh["front_share_percent"], 1),
        "On the left": (100 * sum(front[k] for k in left) / weigh["mass_g"], 1),
        "CG ahead": (weigh["cg_mm"][0], 1),
        "CG left": (weigh["cg_mm"][1], 1),
        "On springs": (weigh["sprung_g"], 0),
        "Off springs": (sum(weigh["unsprung_g"]), 0),
    }
    for name, (value, digits) in wanted.items():
        cell = page.locator("#numbers div", has=page.locator(f"dt:text-matches('^{name},')"))
        found.append((name, figures(cell.locator("dd").inner_text())[0], value, digits))
    for name, heading in WAYS.items():
        found += _of_way(page, name, ways[heading])
    slide = ways[0]["slide_deg"]
    said = figures(page.locator("#sliding").inner_text().split("it slides at")[1].split("°. ")[0])
    keys = ("likely", "low", "high") if len(said) > 1 else ("likely",)
    found += [(f"slides {k}", said[i], slide[k], 1) for i, k in enumerate(keys)]
    return found


def _of_way(page: Page, name: str, way: dict[str, Any]) -> Found:
    body = page.locator(f'#budget [data-case="{name}"]')
    cells = [figures(t)[0] for t in body.locator("tr").first.locator("td").all_inner_texts()[:5]]
    steps = [s["gained_deg"] for s in way["budget_steps"][:4]]
    found: Found = [(f"{name} rigid", cells[0], way["rigid_deg"], 1)]
    found += [(f"{name} step {i}", cells[1 + i], steps[i], 1) for i in range(4)]
    slides = way["compliant_deg"] is None
    tip = way["rail_deg"] if slides else way["compliant_deg"]
    low, high = way["rail_range_deg"] if slides else way["compliant_range_deg"]
    shown, span = body.locator("b").inner_text(), body.locator(".range-cell").inner_text()
    assert shown.startswith("[") == slides, (name, shown)
    ends = [(f"{name} low", low), (f"{name} high", high)]
    if span.startswith("likely"):
        pairs = [*zip(figures(shown.replace("–", " ")), ends, strict=True)]
        found += [(words, there, value, 0) for there, (words, value) in pairs]
        found.append((f"{name} tip", figures(span)[0], tip, 1))
    else:
        pairs = [*zip(figures(span), ends, strict=True)]
        found += [(words, there, value, 1) for there, (words, value) in pairs]
        found.append((f"{name} tip", figures(shown)[0], tip, 1))
    return found


def unequal(found: Found) -> Found:
    """Those that differ by more than rounding."""
    return [f for f in found if abs(f[1] - f[2]) > 0.5 * 10 ** -f[3] + TOLD]


def settled(page: Page) -> None:
    """Waits until all there is to say of the truck is on the page."""
    expect(page.locator(".polar g.inexact")).to_have_count(0, timeout=LONG)
    expect(page.locator("#budget")).not_to_contain_text("…", timeout=LONG)


def an_edit(page: Page, bench: Bench, chance: random.Random) -> str:
    """One edit such as a hand makes, saved; gives what it was."""
    state: Any = ask(bench, "/api/bench")
    rows = [r for r in state["rows"] if r["here"] and r["at_mm"] and r["weighed"]]
    row, axis = chance.choice(rows), chance.choice("xyz")
    edit: dict[str, Any]
    if chance.random() < 0.3:
        measure = chance.choice(state["measures"])
        value = round(measure["value"] + chance.choice((-4, 4)) * measure["step"], 3)
        value = min(measure["high"], max(measure["low"], value))
        edit, what = {"do": "measure", "key": measure["key"], "value": value}, measure["name"]
    elif chance.random() < 0.5:
        value = round(row["mass_g"] * chance.uniform(0.7, 1.4), 1)
        edit = {"do": "set", "part": row["name"], "key": "mass_g", "value": value}
        what = f"mass of {row['name']}"
    else:
        value = row["at_mm"]["xyz".index(axis)] + chance.randint(-8, 8)
        edit = {"do": "set", "part": row["name"], "key": f"at_mm.{axis}", "value": value}
        what = f"place of {row['name']}"
    at = {k: state[k] for k in ("document", "revision")}
    after: Any = tell(bench, "/api/edit", {**at, "edits": [edit], "what": what})
    if "refused" not in after:
        at = {k: after[k] for k in ("document", "revision")}
        tell(bench, "/api/save", {**at, "name": None, "over": False})
    page.reload()
    page.wait_for_selector("html[data-ready]")
    settled(page)
    return what


def check(names: tuple[str, ...], edits: int, seed: int = 1) -> tuple[int, list[str]]:
    """How many numbers were compared, and those that differ."""
    chance, count, wrong = random.Random(seed), 0, []
    with tempfile.TemporaryDirectory() as place, browser() as chromium:
        folder = shop(Path(place) / "shop", *names)
        for name in names:
            with (
                running(folder, f"{name}.toml") as bench,
                looking(chromium, bench) as seen,
            ):
                for i in range(edits):
                    what = an_edit(seen.page, bench, chance)
                    found = compared(seen.page, folder, f"{name}.toml")
                    count += len(found)
                    wrong += [f"{name}, edit {i}, {what}: {f}" for f in unequal(found)]
    return count, wrong


if __name__ == "__main__":
    for truck in sys.argv[2:] or ("bramble", "burdock", "thistle"):
        compared_in_all, differ = check((truck,), int(sys.argv[1]))
        sys.stdout.write(f"{truck}: {compared_in_all} numbers compared, {len(differ)} differ\n")
        sys.stdout.writelines(f"{line}\n" for line in differ)
        sys.stdout.flush()
