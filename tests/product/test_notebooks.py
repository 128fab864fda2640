"""The worked studies run from top to bottom, and what their text says is what they find."""

from __future__ import annotations

import ast
import json
import re
from dataclasses import dataclass
from pathlib import Path
from tempfile import TemporaryDirectory

import nbclient
import nbformat
import pytest

FOLDER = Path(__file__).parents[2] / "notebooks"
NAMES = sorted(path.stem for path in FOLDER.glob("*.ipynb"))
TIPS = "tips-or-slides-first"
TRACK = "track-width-against-approach-angle"
SCALE = "from-scale-readings-to-a-calibrated-model"
OWN = "a-response-and-a-ground-of-your-own"
RUN = [pytest.param(n, marks=pytest.mark.bullet) if n == OWN else n for n in NAMES]  # it drives


@dataclass(frozen=True)
class Claim:
    """A number in the text of a study (the group of `says`) and what it should be.

    found: an expression of the study's own names. within: how far the two may be apart.
    """

    study: str
    says: str
    found: str
    within: float


CLAIMS = (
    Claim(TIPS, r"113\.9 = 0\.81, and the angle is \*\*(.+?)°", "by_hand", 0.05),
    Claim(TIPS, r"likely slide angle is \*\*(.+?)°", "race['rock'].slide_deg.likely", 0.05),
    Claim(TIPS, r"six degrees: from \*\*(.+?)°", "by_library", 0.05),
    Claim(TIPS, r"down to about \*\*(.+?)°", "across.trial_deg", 0.15),
    Claim(TIPS, r"how sure that is: \*\*(.+?)°", "across.compliant_range_deg[0]", 0.06),
    Claim(TIPS, r"how sure that is: .+? to \*\*(.+?)°", "across.compliant_range_deg[1]", 0.06),
    Claim(TIPS, r"\*\*(\d+) %\*\* is left for the tip", "100 * chances['wet rock']", 1.0),
    Claim(TIPS, r"at the slide angle of (.+?)°", "slippery.trial_slide_deg", 0.2),
    Claim(TIPS, r"the tip angles there are \*\*(.+?)°", "climb.rail_deg", 0.06),
    Claim(TIPS, r"are \*\*.+?°\*\* and \*\*(.+?)°", "descent.rail_deg", 0.06),
    Claim(TRACK, r"grip \(0\.9, so at (.+?)°", "slide[0, 0]", 0.05),
    Claim(TRACK, r"the block tips at \*\*(.+?)°", "bramble.tip(90).rigid_deg", 0.05),
    Claim(TRACK, r"From about \*\*(.+?) mm", "np.interp(slide[0, 0], stiff, tracks)", 0.6),
    Claim(TRACK, r"is worth \*\*(.+?)°", "slope_per_mm(stiff)", 0.005),
    Claim(TRACK, r"a little more, \*\*(.+?)°", "slope_per_mm(middle[across])", 0.005),
    Claim(TRACK, r"with 160 mm, at \*\*(.+?)°", "middle[across, 2]", 0.06),
    Claim(SCALE, r"The scale says \*\*(.+?) mm", "weighed.cg_z_mm.value", 0.06),
    Claim(SCALE, r"file alone was out by \*\*(.+?) mm", "z - found.cg_z_mm.before", 0.06),
    Claim(SCALE, r"reconciled height is \*\*(.+?) mm", "found.cg_z_mm.after", 0.1),
    Claim(SCALE, r"the truth, \*\*(.+?) mm", "z", 0.05),
    Claim(SCALE, r"The file was \*\*(.+?)°", "off_before", 0.05),
    Claim(SCALE, r"calibrated, \*\*(.+?)°", "off_after", 0.05),
    Claim(OWN, r"Bramble has \*\*(.+?)\*\* in hand", "now", 0.006),
    Claim(OWN, r"more track bring \*\*(.+?)\*\*", "wider", 0.006),
    Claim(OWN, r"lower \*\*(.+?)\*\*", "lower", 0.006),
    Claim(OWN, r"first, with \*\*(.+?)\*\* in hand", "in_hand.max()", 0.006),
    Claim(OWN, r"lightest wheel keeps \*\*(.+?)\*\* %", "drives['flat'].lightest_percent[1]", 1.0),
    Claim(OWN, r"Over the rib it keeps \*\*(.+?)\*\* %", "drives['rib'].lightest_percent[1]", 1.5),
    Claim(OWN, r"192 mm it keeps \*\*(.+?)\*\* %", "drives['rib'].lightest_percent[2]", 1.5),
)  # fmt: skip

TURNS = (
    (TIPS, "rock tips first", "chances['rock'] > 0.95"),
    (TIPS, "loose dirt slides", "chances['loose dirt'] < 0.05"),
    (TIPS, "the block calls wet rock safe", "across.rigid_deg > race['wet rock'].slide_deg.high"),
    (TIPS, "trial and statics agree", "abs(trial.trial_deg - across.compliant_deg) < 0.3"),
    (TIPS, "grip lets it tip", "trial.trial_outcome == 'tips'"),
    (TIPS, "no grip lets it slide", "slippery.trial_outcome == 'slides'"),
    (TIPS, "across it tips first", "all(around[i].outcome == 'tips' for i in (6, 18))"),
    (TIPS, "up and down it slides", "all(around[i].outcome == 'slides' for i in (0, 12))"),
    (TRACK, "track is nothing to a climb", "np.ptp(block.tip_deg[::61]) < 1e-6"),
    (TRACK, "nor on springs", "np.ptp(middle[0]) < 0.1"),
    (TRACK, "six degrees are lost", "5.5 < (stiff - middle[across])[5] < 6.9"),
    (TRACK, "the block's frontier closes", "stiff[-1] > slide[across, -1]"),
    (TRACK, "the truck's does not", "np.maximum(low, high)[across].max() < slide[across, -1]"),
    (TRACK, "the block slides on wet rock", "stiff.min() > 31.0"),
    (TRACK, "the narrow truck tips there", "max(low[across, 2], high[across, 2]) < 30.96"),
    (SCALE, "scale, board and file agree", "found.agrees"),
    (SCALE, "nothing is left out", "not found.left_out"),
    (SCALE, "truth is in the bars", "abs(z - found.cg_z_mm.after) <= 2 * found.cg_z_mm.after_sd"),
    (SCALE, "and they are shorter", "found.cg_z_mm.after_sd < found.cg_z_mm.before_sd"),
    (SCALE, "calibration helps", "abs(off_after) < abs(off_before)"),
    (SCALE, "the board is inside the range", "verdict.agrees"),
    (SCALE, "the scale hardly matters", "'scale' not in causes[-1].cause"),
    (OWN, "it would stand on the slab", "now > 1"),
    (OWN, "wide trucks slide first", "all(tips[:, -1] > slides[:, -1])"),
    (OWN, "narrow ones tip", "all(tips[:, 0] < slides[:, 0])"),
    (OWN, "the battery matters least", "found[0].axes[-1].key == HEIGHT"),
    (OWN, "a narrow one rolls over", "drives['rib'].outcome[0] == 'rolled over'"),
    (OWN, "and the others get across", "set(drives['rib'].outcome[1:]) == {'crossed'}"),
)  # fmt: skip


def ran(study: str) -> tuple[dict[str, float], int]:
    """What was asked of a study, by expression, after running it, and how many pictures it has."""
    book = nbformat.read(FOLDER / f"{study}.ipynb", as_version=4)
    asked = [c.found for c in CLAIMS if c.study == study]
    asked += [expression for of, _, expression in TURNS if of == study]
    values = ", ".join(f"{e!r}: float({e})" for e in asked)
    book.cells.append(nbformat.v4.new_code_cell(f"import json; print(json.dumps({{{values}}}))"))
    with TemporaryDirectory() as place:
        nbclient.NotebookClient(
            book, timeout=600, kernel_name="python3", resources={"metadata": {"path": place}}
        ).execute()
    outputs = [output for cell in book.cells for output in cell.get("outputs", [])]
    pictures = sum("image/png" in output.get("data", {}) for output in outputs)
    return json.loads(outputs[-1].text), pictures


def said(claim: Claim) -> float:
    book = nbformat.read(FOLDER / f"{claim.study}.ipynb", as_version=4)
    words = " ".join(" ".join(c.source.split()) for c in book.cells if c.cell_type == "markdown")
    (number,) = re.findall(claim.says, words)
    return float(number)


@pytest.mark.parametrize("study", RUN)
def test_finds_what_its_text_says(study):
    found, pictures = ran(study)
    claims = [c for c in CLAIMS if c.study == study]
    far = [(c.found, said(c), found[c.found]) for c in claims
           if not abs(said(c) - found[c.found]) <= c.within]  # fmt: skip
    assert not far
    assert not [what for of, what, expression in TURNS if of == study and found[expression] != 1.0]
    assert pictures >= 3


@pytest.mark.parametrize("study", NAMES)
def test_knows_nothing_but_the_front_door(study):
    book = nbformat.read(FOLDER / f"{study}.ipynb", as_version=4)
    trees = [ast.parse(c.source) for c in book.cells if c.cell_type == "code"]
    imported = set()
    for node in (n for tree in trees for n in ast.walk(tree)):
        if isinstance(node, ast.Import):
            imported |= {alias.name for alias in node.names}
        elif isinstance(node, ast.ImportFrom):
            imported |= {f"{node.module}.{alias.name}" for alias in node.names}
    assert {name for name in imported if name.startswith("crossfall")} == {"crossfall"}


@pytest.mark.parametrize("study", NAMES)
def test_is_kept_without_outputs(study):
    book = nbformat.read(FOLDER / f"{study}.ipynb", as_version=4)
    nbformat.validate(book)
    code = [c for c in book.cells if c.cell_type == "code"]
    assert code
    assert all(not c.outputs and c.execution_count is None for c in code)


def test_every_study_is_held_to_its_text():
    assert sorted({c.study for c in CLAIMS}) == sorted({of for of, _, _ in TURNS}) == NAMES
