"""The set-up sheet as a user meets it: files that print to one page, JSON, and plain refusals."""

from __future__ import annotations

import io
import json
import subprocess
import sys
from dataclasses import replace
from pathlib import Path

import pytest
from click.testing import CliRunner
from pypdf import PdfReader

from browsing import browser
from crossfall.cli import crossfall
from crossfall.show.sheet.facts import Facts, gather
from crossfall.show.sheet.words import sheet_words
from crossfall.show.sheet.write import write_sheet
from crossfall.truck.build import load_truck

PAIRS = (("bramble", "thistle"), ("thistle", "burdock"), ("burdock", "bramble"))
A4 = pytest.approx([595.3, 841.9], abs=0.6)  # pt; a browser rounds to whole pixels
OVERFLOW = """() => {
  const page = document.querySelector('.sheet').getBoundingClientRect();
  const out = [];
  for (const e of document.querySelectorAll('h1, h2, h3, p, section, th, td')) {
    const box = e.getBoundingClientRect();
    const over = box.right > page.right || box.bottom > page.bottom || box.left < page.left;
    if (over || e.scrollWidth > Math.ceil(box.width) + 1) out.push(e.textContent);
  }
  return out;
}"""


@pytest.fixture(scope="module")
def sheets() -> dict[str, Facts]:
    """Each demo truck with and without another one to compare."""
    found = {}
    for name, other in PAIRS:
        facts = gather(load_truck(name), load_truck(other))
        found[f"{name} against {other}"] = facts
        found[name] = replace(facts, before=None, changed=None)
    return found


def test_every_sheet_prints_to_one_a4_page(sheets: dict[str, Facts], tmp_path: Path) -> None:
    with browser() as launched:
        page = launched.new_page()
        for name, facts in sheets.items():
            write_sheet(facts, tmp_path / "sheet.html")
            asked: list[str] = []
            page.on("request", lambda request, asked=asked: asked.append(request.url))
            page.goto((tmp_path / "sheet.html").as_uri())
            printed = PdfReader(io.BytesIO(page.pdf(prefer_css_page_size=True)))
            assert len(printed.pages) == 1, name
            box = printed.pages[0].mediabox
            assert [float(box.width), float(box.height)] == A4
            assert page.evaluate(OVERFLOW) == [], name
            assert [u for u in asked if not u.startswith("file:")] == []
            said = printed.pages[0].extract_text()
            assert facts.now.truck.name in said
            assert sheet_words(facts).figures[0].value in said


def test_every_pdf_is_one_a4_page(sheets: dict[str, Facts], tmp_path: Path) -> None:
    for name, facts in sheets.items():
        write_sheet(facts, tmp_path / "sheet.pdf")
        reader = PdfReader(tmp_path / "sheet.pdf")
        assert len(reader.pages) == 1, name
        box = reader.pages[0].mediabox
        assert [float(box.width), float(box.height)] == A4
        said = reader.pages[0].extract_text()
        for table in sheet_words(facts).tables:
            assert table.title in said
            assert all(cell in said for row in table.rows for cell in row[1:] if cell), name


def test_verb_writes_the_file_and_the_same_bytes_again(
    sheets: dict[str, Facts], tmp_path: Path
) -> None:
    """From another process too, where sets and hashes come in another order."""
    command = [sys.executable, "-m", "crossfall.cli", "sheet", "thistle", "-o", "t.pdf"]
    run = subprocess.run(command, cwd=tmp_path, capture_output=True, text=True, check=False)
    assert (run.returncode, run.stderr) == (0, "")
    assert run.stdout == "wrote t.pdf\n"
    assert [p.name for p in tmp_path.iterdir()] == ["t.pdf"]
    write_sheet(sheets["thistle"], tmp_path / "again.pdf")
    assert (tmp_path / "again.pdf").read_bytes() == (tmp_path / "t.pdf").read_bytes()


def test_json_holds_the_numbers_and_writes_nothing(
    sheets: dict[str, Facts], tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.chdir(tmp_path)
    arguments = ["sheet", "thistle", "--before", "burdock", "--json"]
    result = CliRunner().invoke(crossfall, arguments, catch_exceptions=False)
    assert result.exit_code == 0
    assert list(tmp_path.iterdir()) == []
    found = json.loads(result.stdout)
    facts = sheets["thistle against burdock"]
    assert (found["schema"], found["verb"], found["files"]) == (3, "sheet", [])
    assert found["now"]["weights"]["mass_g"] == pytest.approx(1e3 * facts.now.weight.mass)
    assert found["before"]["weights"]["truck"] == "burdock"
    told = sheet_words(facts)
    assert len(found["now"]["tips"]["headings"]) == len(told.tips.rows) == 9
    for row, entry in zip(told.tips.rows, found["now"]["tips"]["headings"], strict=True):
        railed = entry["compliant_deg"] is None
        number = entry["rail_deg"] if railed else entry["compliant_deg"]
        assert row[2] == (f"[{number:.1f}]" if railed else f"{number:.1f}")
    for row, entry in zip(told.board.rows, found["board"]["headings"], strict=True):
        low, high = entry["compliant_range_deg"] or entry["rail_range_deg"]
        assert row[2] == f"{low:.1f} – {high:.1f}"
    parts = found["changed"]["parts"]
    assert sum(p["mass_g"] for p in parts) == pytest.approx(found["changed"]["mass_g"])
    changed = found["changed"]
    gained = changed["parts_price_put_on"] - changed["parts_price_taken_off"]
    assert sum(p["price"] for p in parts) == pytest.approx(gained)


def test_with_changes_it_costs_what_the_plan_says(tmp_path: Path) -> None:
    """The sheet of a planned set, straight from its names: the same price, the same angle."""
    run = CliRunner().invoke
    asked = ["--aim", "side", "--budget", "20", "--json"]
    planned = json.loads(run(crossfall, ["plan", "bramble", *asked], catch_exceptions=False).stdout)
    best = planned["best"]
    made = [f"{c['change']} x {c['quantity']}" for c in best["changes"]]
    arguments = [a for name in made for a in ("--with", name)]
    result = run(crossfall, ["sheet", "bramble", *arguments, "--json"], catch_exceptions=False)
    found = json.loads(result.stdout)
    assert found["bought"]["price"] == pytest.approx(best["price"])
    assert [c["label"] for c in found["bought"]["changes"]] == [c["label"] for c in best["changes"]]
    mass = found["now"]["weights"]["mass_g"] - found["before"]["weights"]["mass_g"]
    assert sum(c["mass_g"] for c in found["bought"]["changes"]) == pytest.approx(mass)
    sides = [h for h in found["now"]["tips"]["headings"] if h["heading_deg"] in (90, 270)]
    tips = [h["compliant_deg"] or h["rail_deg"] for h in sides]
    assert min(tips) == pytest.approx(best["value_deg"], abs=1e-7)


def test_without_a_name_it_is_called_after_the_truck(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.chdir(tmp_path)
    arguments = ["sheet", "thistle", "--date", "1 May", "--surface", "wet rock"]
    result = CliRunner().invoke(crossfall, arguments, catch_exceptions=False)
    assert result.exit_code == 0
    text = (tmp_path / "thistle-sheet.html").read_text(encoding="utf-8")
    assert "1 May" in text
    assert "wet rock" in text


@pytest.mark.parametrize(
    ("arguments", "said"),
    [
        (["bramble", "-o", "sheet.png"], "use .html or .pdf"),
        (["bramble", "-o", "sheet"], "has no suffix"),
        (["brambel"], "bramble"),
        (["bramble", "--before", "no-such.toml"], "no-such.toml"),
        (["bramble", "--surface", "ice"], "no surface 'ice'"),
        (["bramble", "-o", "missing/sheet.pdf"], "missing"),
        (["bramble", "--with", "lite body"], "no change 'lite body'"),
        (["bramble", "--with", "light body x 2"], "1 to 1 times, not 2"),
        (["bramble", "--with", "light body", "--before", "thistle"], "leave --before out"),
        (["bramble", "--date", "x", "--colour"], "--colour"),
    ],
)
def test_bad_input_is_one_line_and_status_2(
    arguments: list[str], said: str, tmp_path: Path
) -> None:
    command = [sys.executable, "-m", "crossfall.cli", "sheet", *arguments]
    run = subprocess.run(command, cwd=tmp_path, capture_output=True, text=True, check=False)
    assert run.returncode == 2
    assert said in run.stderr
    assert "Traceback" not in run.stderr
    assert run.stderr.count("\n") == 1
    assert run.stdout == ""
    assert list(tmp_path.iterdir()) == []
