"""The tilt board: what it tells of the truck, whether it agrees, and what is wrong if not."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import numpy as np
import pytest

from crossfall.answers.answer import slide_angles
from crossfall.measurement.board import BoardResult, check_board
from crossfall.measurement.board_file import BoardReading, BoardReadings, add_reading, read_board
from crossfall.measurement.board_height import board_known, board_model, infer
from crossfall.measurement.board_predict import held, outlook, predict
from crossfall.statics import rigid
from crossfall.truck.build import load_truck
from crossfall.truck.errors import InputError
from crossfall.truck.massprops import whole
from crossfall.truck.model import Truck, frozen
from crossfall.truck.steering import swung
from crossfall.verbs.board import compared
from support import make_truck

FOUR = (0.0, 90.0, 180.0, 270.0)


def shifted(truck: Truck, by: tuple[float, float, float]) -> Truck:
    """The truck with its chassis' CG elsewhere by enough to move the whole CG by so many m."""
    share = whole(truck).mass / truck.chassis.mass
    body = replace(truck.chassis, cg=frozen(truck.chassis.cg + np.multiply(by, share)))
    return replace(truck, chassis=body)


def wider(truck: Truck, by: float) -> Truck:
    """The truck with another contact half-width, m."""
    front, rear = (
        replace(a, tyre=replace(a.tyre, contact_half_width=a.tyre.contact_half_width + by))
        for a in truck.axles
    )
    return replace(truck, front=front, rear=rear)


def measured(
    real: Truck,
    headings: tuple[float, ...] = FOUR,
    *,
    locked: bool = True,
    told_locked: bool | None = None,
    rng: np.random.Generator | None = None,
    repeats: int = 3,
    scatter_deg: float = 0.2,
) -> BoardReadings:
    """What the board shows for a truck: its compliant answer, exactly or with every error."""
    psi = np.radians(headings)
    angles = predict(real, list(psi), [locked] * len(psi)).angle
    bias = 0.0 if rng is None else np.radians(rng.uniform(-0.2, 0.2))
    readings = []
    for heading, angle in zip(psi, angles, strict=True):
        shown = np.full(repeats, angle + bias)
        if rng is not None:
            shown = shown + np.radians(rng.normal(0, scatter_deg, repeats))
            step = np.radians(0.1)
            shown = step * np.round(shown / step)
        said = locked if told_locked is None else told_locked
        readings.append(BoardReading(float(heading), tuple(shown), said))
    return BoardReadings(tuple(readings), float(np.radians(0.1)), float(np.radians(0.2)))


TRUCK = make_truck(contact_half_width=0.004)
FIRM = make_truck(contact_half_width=0.004, tyre_stiffness=2e5)  # so that half-width shows


def test_height_and_half_width_come_back_from_all_four_headings() -> None:
    real = wider(shifted(FIRM, (0, 0, 0.007)), -0.001)
    found = infer(FIRM, measured(real))
    assert found.height.value == pytest.approx(whole(real).cg[2], abs=0.0003)
    assert found.contact.value == pytest.approx(0.003, abs=0.0003)
    assert found.warnings == ()


def turned(truck: Truck) -> Truck:
    """The truck with its front wheels 30 deg to the left, their tyres 20 mm out from kingpins."""
    return replace(truck, front=replace(truck.front, steered=swung(np.radians(30.0), 0.02)))


def test_with_wheels_turned_the_file_s_own_values_give_the_prediction() -> None:
    truck = turned(TRUCK)
    board = measured(truck)
    ahead = outlook(truck, board.tips)
    known = board_known(truck, board, None, ahead.expected)
    shown = board_model(truck, board, ahead)(np.array([[k.value for k in known]]))[0]
    assert shown == pytest.approx(ahead.expected.angle, abs=1e-9)


def test_with_wheels_turned_the_closed_form_s_tip_lines_are_the_tyres_own() -> None:
    stiff = turned(make_truck(contact_half_width=0.004, tyre_stiffness=1e9, locked=True))
    found = infer(stiff, measured(stiff))
    assert found.closed_form.value == pytest.approx(0.004, abs=1e-4)


def test_soft_tyres_hide_the_half_width_but_not_the_height() -> None:
    """k_t w^2 / 2 is far below W h: a wider contact wins nothing, so it cannot be measured."""
    real = wider(shifted(TRUCK, (0, 0, 0.007)), -0.001)
    found = infer(TRUCK, measured(real))
    assert found.height.value == pytest.approx(whole(real).cg[2], abs=0.0003)
    assert not found.contact.measured
    assert any("too soft" in w for w in found.warnings)
    sides = [r for r in measured(real).readings if r.heading in np.radians([90.0, 270.0])]
    half = TRUCK.front.track / 2
    expected = np.tan(sides[0].angles[0]) * whole(real).cg[2] - half
    assert found.closed_form.value == pytest.approx(expected, abs=0.0003)


def test_exact_rigid_angles_give_height_and_half_width_exactly() -> None:
    """With nothing that gives, the closed form is inverted to the last digits."""
    stiff = make_truck(contact_half_width=0.004, tyre_stiffness=1e9, locked=True)
    real = wider(shifted(stiff, (0, 0, 0.007)), 0.002)
    psi = np.radians(FOUR)
    angles = rigid.tip_angle(real, psi) + predict(stiff, list(psi), [True] * 4).give
    readings = tuple(
        BoardReading(float(h), (float(a),), True) for h, a in zip(psi, angles, strict=True)
    )
    found = infer(stiff, BoardReadings(readings, 1e-6, 0.0))
    assert found.height.value == pytest.approx(whole(real).cg[2], rel=1e-7)
    assert found.contact.value == pytest.approx(0.006, abs=1e-6)


def test_intervals_of_height_and_half_width_cover_the_truth() -> None:
    """120 boards: three standard errors are 6 %; the give is known here, so they may be wide."""
    rng = np.random.default_rng(4)
    hits, trials = np.zeros(2), 120
    base = make_truck(contact_half_width=0.004, tyre_stiffness=1e9, locked=True)
    psi = np.radians(FOUR)
    ahead = outlook(base, [BoardReading(float(h), (0.5,), True) for h in psi])
    for _ in range(trials):
        real = wider(shifted(base, (0, 0, rng.uniform(-0.01, 0.01))), rng.uniform(-0.003, 0.003))
        tilt = rigid.tip_angle(real, psi) + np.radians(rng.uniform(-0.2, 0.2))
        shown = np.radians(rng.normal(0, 0.3, (4, 3))) + tilt[:, None]
        shown = np.radians(0.1) * np.round(shown / np.radians(0.1))
        readings = tuple(
            BoardReading(float(h), tuple(a), True) for h, a in zip(psi, shown, strict=True)
        )
        board = BoardReadings(readings, float(np.radians(0.1)), float(np.radians(0.2)))
        found = infer(base, board, ahead=ahead)
        truth = whole(real).cg[2], real.front.tyre.contact_half_width
        for i, (e, t) in enumerate(zip((found.height, found.contact), truth, strict=True)):
            hits[i] += e.low <= t <= e.high
    assert np.all(hits / trials >= 0.89)


def test_sides_alone_warn_and_rest_on_the_file() -> None:
    found = infer(FIRM, measured(FIRM, (90.0, 270.0)))
    assert not found.contact.measured
    assert any("only side slopes" in w for w in found.warnings)
    both = infer(FIRM, measured(FIRM))
    assert found.height.u > 4 * both.height.u


def test_ends_alone_give_the_height_but_not_the_half_width() -> None:
    found = infer(FIRM, measured(FIRM, (0.0, 180.0)))
    assert not found.contact.measured
    assert found.height.value == pytest.approx(whole(FIRM).cg[2], abs=1e-6)
    assert any("only climbs and descents" in w for w in found.warnings)


def test_one_heading_warns_of_the_offset_as_well() -> None:
    found = infer(FIRM, measured(FIRM, (90.0,)))
    assert any("tip heading 270 too" in w for w in found.warnings)


def test_both_sides_tell_a_cg_off_the_middle_from_a_high_one() -> None:
    real = shifted(TRUCK, (0, 0.003, 0))
    found = infer(TRUCK, measured(real))
    assert found.y.value == pytest.approx(0.003, abs=5e-4)
    assert found.height.value == pytest.approx(whole(TRUCK).cg[2], abs=1e-3)


def test_a_climb_is_not_forgotten_where_the_tyres_hide_the_half_width() -> None:
    """On tyres firm enough for it to matter on a side, too soft to be told from the height."""
    truck = load_truck("burdock").truck
    sides = infer(truck, measured(truck, (90.0, 270.0)))
    assert any("only side slopes" in w or "too soft" in w for w in sides.warnings)
    found = infer(truck, measured(truck, (90.0, 270.0, 0.0)))
    assert not any("only side slopes" in w for w in found.warnings)
    assert found.contact.measured or any("too soft" in w for w in found.warnings)
    assert found.closed_form.measured
    assert found.height.u < 0.9 * sides.height.u


@pytest.mark.parametrize(("off_deg", "words"), [(4.0, "inside"), (-12.0, "beyond the edge")])
def test_a_half_width_that_no_tyre_has_is_said_in_words(off_deg: float, words: str) -> None:
    board = measured(FIRM)
    sides = np.radians([90.0, 270.0])
    readings = tuple(
        replace(r, angles=tuple(a - np.radians(off_deg) for a in r.angles))
        if r.heading in sides
        else r
        for r in board.readings
    )
    found = infer(FIRM, replace(board, readings=readings))
    assert not found.contact.measured
    assert any(words in w and "none does" in w for w in found.warnings)
    assert np.isnan(found.correlation)


def test_a_half_width_is_bounded_by_the_tyre_it_belongs_to() -> None:
    board = measured(wider(FIRM, -0.004))  # none at all: the angles may well ask for less
    lower = tuple(
        replace(r, angles=tuple(a - np.radians(1.5 * abs(np.sin(r.heading))) for a in r.angles))
        for r in board.readings
    )
    found = infer(FIRM, replace(board, readings=lower))
    assert found.contact.value == 0.0
    assert found.contact.low == 0.0
    assert 0.0 < found.contact.high < FIRM.front.tyre.width / 2


def test_free_suspension_is_corrected_for_but_costs_certainty() -> None:
    free = infer(TRUCK, measured(TRUCK, locked=False))
    locked = infer(TRUCK, measured(TRUCK))
    assert free.height.value == pytest.approx(whole(TRUCK).cg[2], abs=1e-6)
    assert free.height.u > 1.3 * locked.height.u
    assert any("suspension was free" in w for w in free.warnings)


def test_an_odd_angle_is_found() -> None:
    board = measured(TRUCK, (0.0, 90.0, 180.0, 270.0, 90.0, 270.0, 0.0, 180.0))
    bad = replace(board.readings[1], angles=tuple(a + 0.07 for a in board.readings[1].angles))
    readings = (board.readings[0], bad, *board.readings[2:])
    found = infer(TRUCK, replace(board, readings=readings))
    assert found.outliers
    assert found.outliers[0].label == "heading 90"
    assert found.outliers[0].off == pytest.approx(0.07, rel=0.3)


def test_an_angle_that_the_others_deny_is_left_out_and_named() -> None:
    """With it the height was between the two, 30 mm off, and all three angles were blamed."""
    good = measured(TRUCK, (0.0, 90.0, 270.0))
    low = replace(good.readings[0], angles=tuple(a - 0.18 for a in good.readings[0].angles))
    found = infer(TRUCK, replace(good, readings=(low, *good.readings[1:])))
    assert found.left_out
    assert [d.label for d in found.outliers] == ["heading 0"]
    assert found.outliers[0].off == pytest.approx(-0.18, abs=0.02)
    assert found.height.low <= whole(TRUCK).cg[2] <= found.height.high
    sides = infer(TRUCK, replace(good, readings=good.readings[1:]))
    assert found.height == sides.height


def test_of_two_that_deny_each_other_neither_is_left_out() -> None:
    good = measured(TRUCK, (0.0, 180.0))
    low = replace(good.readings[0], angles=tuple(a - 0.18 for a in good.readings[0].angles))
    found = infer(TRUCK, replace(good, readings=(low, good.readings[1])))
    assert not found.left_out
    assert {d.label for d in found.outliers} == {"heading 0", "heading 180"}


# Agreement and diagnosis


def check(real: Truck, **kwargs: object) -> BoardResult:
    return check_board(TRUCK, measured(real, **kwargs))  # type: ignore[arg-type]


def test_the_same_truck_agrees() -> None:
    result = check(TRUCK, rng=np.random.default_rng(1))
    assert result.agrees
    assert result.causes == ()


def test_en_number_is_the_gap_over_the_combined_expanded_uncertainty() -> None:
    result = check(shifted(TRUCK, (0, 0, -0.004)))
    v = result.verdicts[0]
    combined = np.hypot(1.96 * v.u, 2 * v.predicted_u)
    assert v.number == pytest.approx((v.measured - v.predicted) / combined, rel=0.15)


def test_what_lies_within_a_lopsided_range_agrees() -> None:
    """A reading inside the 95 % range, on its long side, was said not to agree."""
    ahead = outlook(TRUCK, [BoardReading(float(np.pi / 4), (0.5,))])
    angle = float(ahead.expected.angle[0])
    lopsided = replace(ahead.expected, low=np.array([angle - 0.03]), high=np.array([angle + 0.005]))

    def asked(off: float) -> bool:
        readings = (BoardReading(float(np.pi / 4), (angle + off,) * 3),)
        board = BoardReadings(readings, 1e-4, 1e-4)
        found = check_board(TRUCK, board, ahead=replace(ahead, expected=lopsided))
        return found.verdicts[0].agrees

    assert asked(-0.028)
    assert not asked(0.028)


@pytest.mark.parametrize(
    ("by", "name", "words"),
    [
        ((0.0, 0.0, -0.012), "height", "lower than the file says"),
        ((0.0, 0.0, 0.012), "height", "higher than the file says"),
        ((0.0, 0.007, 0.0), "side", "further to the left"),
        ((0.0, -0.007, 0.0), "side", "further to the right"),
        ((0.012, 0.0, 0.0), "along", "further forward"),
    ],
)
def test_a_cg_that_is_elsewhere_is_named_with_its_direction_and_size(
    by: tuple[float, float, float], name: str, words: str
) -> None:
    result = check(shifted(TRUCK, by), rng=np.random.default_rng(3))
    assert not result.agrees
    cause = result.causes[0]
    assert cause.name == name
    assert words in cause.words
    assert abs(cause.amount) == pytest.approx(np.linalg.norm(by), rel=0.35)


def test_narrower_contact_is_told_from_a_higher_cg_by_the_climb() -> None:
    firm = make_truck(contact_half_width=0.012, tyre_stiffness=2e5)
    board = measured(wider(firm, -0.008), rng=np.random.default_rng(3))
    result = check_board(firm, board)
    assert result.causes[0].name == "contact"
    assert "further in" in result.causes[0].words


def test_a_suspension_that_was_not_locked_after_all_is_named() -> None:
    result = check(TRUCK, locked=False, told_locked=True)
    assert result.causes[0].name == "lock"
    assert "not locked" in result.causes[0].words


def test_a_truck_that_slid_is_named() -> None:
    grip = make_truck(grip=(0.5, 0.55, 0.6)).grips[0]
    real = replace(TRUCK, grips=(grip,))
    board = measured(real)
    at = float(np.arctan(0.55))
    slid = tuple(replace(r, angles=(at, at, at)) for r in board.readings)
    result = check_board(real, replace(board, readings=slid), grip)
    assert result.causes[0].name == "slide"
    railed = tuple(replace(r, rail=True) for r in slid)
    behind = check_board(real, replace(board, readings=railed), grip)
    assert all(c.name != "slide" for c in behind.causes)


def test_a_reading_marked_as_slid_is_held_against_the_grip() -> None:
    grip = TRUCK.grips[0]
    at = float(np.arctan(grip.likely))
    board = BoardReadings((BoardReading(np.pi / 2, (at,) * 3, slid=True),), 0.001, 0.003)
    assert check_board(TRUCK, board, grip).agrees
    low = BoardReadings((BoardReading(np.pi / 2, (0.4,) * 3, slid=True),), 0.001, 0.003)
    assert not check_board(TRUCK, low, grip).agrees


def slid_at(degrees: float, heading: float = np.pi / 2) -> BoardReadings:
    at = (float(np.radians(degrees)),) * 3
    return BoardReadings((BoardReading(heading, at, slid=True),), 0.001, 0.003)


def test_a_truck_that_slid_sooner_than_its_grip_allows_is_told_the_grip_it_had() -> None:
    (said,) = check_board(TRUCK, slid_at(25.0)).warnings
    assert "at heading 90 it let go sooner than the grip in the file allows" in said
    assert "lower it to about 0.47" in said


def test_a_truck_that_rolls_away_is_held_against_where_its_differentials_let_go() -> None:
    front, rear = TRUCK.axles
    loose = replace(
        TRUCK,
        front=replace(front, shaft=-0.3, open=True),
        rear=replace(rear, shaft=-0.3, open=True),
    )
    askew = np.pi / 4
    low, likely, high = np.degrees(slide_angles(loose, np.array([askew]), TRUCK.grips[0])[0])
    assert likely < np.degrees(np.arctan(TRUCK.grips[0].likely)) - 2
    found = check_board(loose, slid_at(likely, askew))
    assert found.agrees
    assert np.degrees([found.verdicts[0].low, found.verdicts[0].high]) == pytest.approx([low, high])
    (said,) = check_board(loose, slid_at(low - 1, askew)).warnings
    assert said.endswith("lower it")


def test_height_and_verdicts_rest_on_the_same_prediction_made_once(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    """On the surface asked for, and each question once: it was asked five times, and the height
    was that of the board's usual surface."""
    from crossfall.measurement import board_predict

    board = measured(shifted(TRUCK, (0, 0, 0.012)), locked=False)
    asked = []
    ranges = board_predict.ranges
    monkeypatch.setattr(
        board_predict, "ranges", lambda t, c: asked.append(c[0].grip) or ranges(t, c)
    )
    wet = make_truck(grip=(0.9, 1.0, 1.1)).grips[0]
    truck = replace(TRUCK, grips=(*TRUCK.grips, replace(wet, surface="wet boards")))
    found, fitted = compared(truck, board, "wet boards")
    assert not found.agrees
    assert [g.surface for g in asked] == ["wet boards"]
    ahead = outlook(truck, board.tips, truck.grips[-1])
    assert fitted is not None
    assert fitted.height == infer(truck, board, ahead=ahead).height


def test_locking_the_suspension_leaves_little_to_correct() -> None:
    psi = list(np.radians(FOUR))
    free, locked = (predict(TRUCK, psi, [k] * 4).give for k in (False, True))
    assert np.all(np.abs(locked) < 0.5 * np.abs(free))
    assert all(a.suspension.locked for a in held(TRUCK).axles)


# The file


def test_readings_are_added_and_what_stood_there_stays(tmp_path: Path) -> None:
    path = tmp_path / "sample.board.toml"
    add_reading(path, "sample", 90, [41.2, 41.5])
    path.write_text(path.read_text() + "# dry plywood\n")
    add_reading(path, "sample", 270, [40], locked=True, rail=True)
    board = read_board(path)
    assert "# dry plywood" in path.read_text()
    assert [r.angles for r in board.readings] == [
        pytest.approx(np.radians([41.2, 41.5])),
        pytest.approx(np.radians([40.0])),
    ]
    assert board.readings[1].locked
    assert board.readings[1].rail
    assert board.resolution == pytest.approx(np.radians(0.1))


def test_an_impossible_reading_changes_nothing(tmp_path: Path) -> None:
    path = tmp_path / "sample.board.toml"
    add_reading(path, "sample", 90, [41.2])
    before = path.read_bytes()
    with pytest.raises(InputError, match="less than 90"):
        add_reading(path, "sample", 90, [95.0])
    with pytest.raises(InputError, match="cannot slide"):
        add_reading(path, "sample", 90, [35.0], slid=True, rail=True)
    assert path.read_bytes() == before


def test_mistakes_in_a_board_file_are_told_by_line(tmp_path: Path) -> None:
    path = tmp_path / "sample.board.toml"
    path.write_text("[[tip]]\nheading_deg = 90\nangle_deg = [120]\nrial = true\n")
    with pytest.raises(InputError) as caught:
        read_board(path)
    assert [(p.line, p.key) for p in caught.value.problems] == [
        (3, "tip[0].angle_deg[0]"),
        (4, "tip[0].rial"),
    ]
