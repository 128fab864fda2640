"""The worked studies run from top to bottom, and what their text says is what they find."""

from __future__ import annotations

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
    Claim(TIPS, r"likely slide angle is \*\*(.+?)°", "np.degrees(slides[-1][1])", 0.05),
    Claim(TIPS, r"seven degrees: from \*\*(.+?)°", "by_library", 0.05),
    Claim(TIPS, r"down to about \*\*(.+?)°", "np.degrees(across.trial.tip)", 0.15),
    Claim(TIPS, r"how sure that is: \*\*(.+?)°", "np.degrees(across.range.tip[0])", 0.06),
    Claim(TIPS, r"how sure that is: .+? to \*\*(.+?)°", "np.degrees(across.range.tip[1])", 0.06),
    Claim(TIPS, r"\*\*(\d+) %\*\* is left for the tip", "100 * chances['wet rock']", 1.0),
    Claim(TIPS, r"at the slide angle of (.+?)°", "np.degrees(slippery.slide)", 0.2),
    Claim(TIPS, r"the tip angles there are \*\*(.+?)°", "np.degrees(climb.rail)", 0.06),
    Claim(TIPS, r"are \*\*.+?°\*\* and \*\*(.+?)°", "np.degrees(descent.rail)", 0.06),
    Claim(TIPS, r"stands on a climb up to \*\*(.+?)°", "held['rear only'][0]", 0.05),
    Claim(TIPS, r"brake lets go at \*\*(.+?)°", "held['rear only'][2]", 0.05),
    Claim(TRACK, r"grip \(0\.9, so at (.+?)°", "np.degrees(slide[0, 0])", 0.05),
    Claim(TRACK, r"the block tips at \*\*(.+?)°",
          "np.degrees(rigid.tip_angle(as_it_is, fine)[90])", 0.05),
    Claim(TRACK, r"From about \*\*(.+?) mm", "np.interp(slide[0, 0], block[across], tracks)", 0.6),
    Claim(TRACK, r"is worth \*\*(.+?)°", "slope_per_mm(block)", 0.005),
    Claim(TRACK, r"little more, \*\*(.+?)°", "slope_per_mm(middle)", 0.005),
    Claim(TRACK, r"with 160 mm, at \*\*(.+?)°", "np.degrees(middle[across, 2])", 0.06),
    Claim(SCALE, r"The scale says \*\*(.+?) mm", "1000 * weighed.z.value", 0.06),
    Claim(SCALE, r"file alone was out by \*\*(.+?) mm", "1e3 * (truth[3] - found.before[3])", 0.06),
    Claim(SCALE, r"reconciled height is \*\*(.+?) mm", "1000 * found.after[3]", 0.1),
    Claim(SCALE, r"the truth, \*\*(.+?) mm", "1000 * truth[3]", 0.05),
    Claim(SCALE, r"The file was \*\*(.+?)°", "off_before", 0.05),
    Claim(SCALE, r"calibrated, \*\*(.+?)°", "off_after", 0.05),
)  # fmt: skip

TURNS = (
    (TIPS, "rock tips first", "chances['rock'] > 0.95"),
    (TIPS, "loose dirt slides", "chances['loose dirt'] < 0.05"),
    (TIPS, "the rigid block calls wet rock safe", "across.rigid > slides[-2][2]"),
    (TIPS, "trial and statics agree", "abs(trial.tip - across.tip) < 0.005"),
    (TIPS, "grip lets it tip", "gripping.outcome == 'tips'"),
    (TIPS, "no grip lets it slide", "slippery.outcome == 'slides'"),
    (TIPS, "across it tips first", "all(around.answers[i].outcome == 'tips' for i in (6, 18))"),
    (TIPS, "up and down it slides", "all(around.answers[i].outcome == 'slides' for i in (0, 12))"),
    (TRACK, "track is nothing to a climb", "abs(np.ptp(np.degrees(block[0]))) < 1e-6"),
    (TRACK, "nor on springs", "np.ptp(np.degrees(middle[0])) < 0.1"),
    (TRACK, "seven degrees are lost", "6.5 < np.degrees(block - middle)[across, 5] < 7.5"),
    (TRACK, "the block's frontier closes", "block[across, -1] > slide[across, -1]"),
    (TRACK, "the truck's does not", "high[across].max() < slide[across, -1]"),
    (TRACK, "the block slides on wet rock", "np.tan(block[across]).min() > 0.6"),
    (TRACK, "the narrow truck tips there", "np.tan(high[across, 2]) < 0.6"),
    (SCALE, "scale, board and file agree", "found.agrees"),
    (SCALE, "nothing is left out", "not found.left_out"),
    (SCALE, "truth is in the bars", "all(abs(truth - found.after) <= 2 * found.after_sd)"),
    (SCALE, "and they are shorter", "all(found.after_sd < found.before_sd)"),
    (SCALE, "calibration helps", "abs(off_after) < abs(off_before)"),
    (SCALE, "the board is inside the range", "loose.low[0] < sprung.tip < loose.high[0]"),
    (SCALE, "the scale hardly matters", "weighed.budget[0][0] == 'block height'"),
)


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


@pytest.mark.parametrize("study", NAMES)
def test_finds_what_its_text_says(study):
    found, pictures = ran(study)
    claims = [c for c in CLAIMS if c.study == study]
    far = [(c.found, said(c), found[c.found]) for c in claims
           if not abs(said(c) - found[c.found]) <= c.within]  # fmt: skip
    assert not far
    assert not [what for of, what, expression in TURNS if of == study and found[expression] != 1.0]
    assert pictures >= 3


@pytest.mark.parametrize("study", NAMES)
def test_is_kept_without_outputs(study):
    book = nbformat.read(FOLDER / f"{study}.ipynb", as_version=4)
    nbformat.validate(book)
    code = [c for c in book.cells if c.cell_type == "code"]
    assert code
    assert all(not c.outputs and c.execution_count is None for c in code)


def test_every_study_is_held_to_its_text():
    assert sorted({c.study for c in CLAIMS}) == sorted({of for of, _, _ in TURNS}) == NAMES
