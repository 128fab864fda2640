"""From no file to one that agrees with scale and board: questions, pictures, and what is made.

The page asks one thing at a time; here is what it asks, in words of its own, with the guide's
drawings, and with a caution where the work can hurt.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from functools import lru_cache
from math import degrees
from pathlib import Path
from typing import TYPE_CHECKING, Any

from crossfall.app.journal import text_digest
from crossfall.measurement import begin_files as files
from crossfall.measurement.board_file import read_board
from crossfall.measurement.readings import FURTHER, QUESTIONS, Question
from crossfall.measurement.reconcile import Reconciled, reconcile
from crossfall.measurement.reconcile_write import included_rows, new_text
from crossfall.measurement.weigh_in_file import read_session
from crossfall.truck.build import Loaded
from crossfall.truck.errors import InputError, Problem
from crossfall.truck.model import Truck

if TYPE_CHECKING:
    from crossfall.show.guide_drawings import Measures

CAUTIONS = {
    "pack": "Lithium pack: unplug it and tape over its leads before you lift or turn the truck, or "
    "put in something of its weight and size. One that has fallen, swollen or been pierced goes "
    "outdoors, away from anything that burns.",
    "block": "A truck on a block can roll off. Chock the lower wheels, keep the block in mid-"
    "bench, lift by the chassis, and keep fingers out from under it.",
    "fall": "A truck tips off a board suddenly. Lay a soft mat under it, tie a slack tether, keep "
    "a hand close by and your fingers out from under the board; prop it before you let go.",
    "dust": "Lead and brass: do not file or drill them dry, the dust is harmful. Wash your hands "
    "after handling lead, and keep it from children.",
    "models": "All this is for scale models. It is no basis for a vehicle that carries people.",
}
_BLOCK = 90.0  # mm, in the picture of a raised truck
_ANGLE = 36.0  # deg, of the board in its picture


@dataclass(frozen=True)
class Instruction:
    """How one reading is asked for: what to do, and the picture and caution beside it."""

    do: str
    picture: str = ""
    caution: str = ""


def _corner(name: str, caution: str = "") -> Instruction:
    do = f"Stand the {name} wheel on the scale and the other three on blocks just as high, "
    do += "the dampers free"
    return Instruction(do, f"corner {name}", caution)


INSTRUCTIONS: dict[str, Instruction] = {
    "wheelbase_mm": Instruction(
        "Measure from the front wheel nut to the rear wheel nut", "lengths"
    ),
    "front_track_mm": Instruction("Measure between the middles of the two front tyres", "track"),
    "rear_track_mm": Instruction("Measure between the middles of the two rear tyres", "track"),
    "tyre_diameter_mm": Instruction("Measure across a tyre that carries nothing", "tyre"),
    "tyre_width_mm": Instruction("Measure how wide its tread is", "tyre"),
    "front_left_g": _corner("front left", "pack"),
    "front_right_g": _corner("front right"),
    "rear_left_g": _corner("rear left"),
    "rear_right_g": _corner("rear right"),
    "raised": Instruction("Choose the end to put on a block", "raised", "block"),
    "block_mm": Instruction(
        "Measure the block, from the lower wheels' ground to the raised ones'", "raised", "block"
    ),
    "raised_g": Instruction(
        "Weigh the lower axle, both its wheels on the scale, brakes off", "raised", "block"
    ),
    "held": Instruction("Was the suspension tied by then, so that nothing sank or rose?", "damper"),
    "wheel_g": Instruction("Take one wheel off and weigh it, tyre and all"),
    "body_g": Instruction("Take the body off and weigh it; leave this out if it stays on"),
    "roof_mm": Instruction("Measure how high its roof stands above the ground"),
    "pack_g": Instruction("Take the pack out and weigh it", caution="pack"),
    "pack_at_mm": Instruction("Say where the pack's middle sits in the truck"),
    "squash_g": Instruction("Press one wheel down on the scale, and note what it shows", "pressed"),
    "squash_mm": Instruction("Note by how much the wheel nut went down", "pressed"),
    "sag_g": Instruction("Lay a weight on the body over one axle, about half a kilogram"),
    "front_sag_mm": Instruction("Note by how much the body sank with it over the front axle"),
    "rear_sag_mm": Instruction("Note by how much it sank with it over the rear axle"),
    "front_hang_mm": Instruction(
        "Lift the truck by its chassis: how far do the front wheels hang down?", caution="block"
    ),
    "rear_hang_mm": Instruction("And how far do the rear wheels hang down?"),
    "bump_mm": Instruction("Push the body down to its stops: how far does it go?"),
    "front_spacing_mm": Instruction("Measure between the left and right front spring"),
    "rear_spacing_mm": Instruction("Measure between the left and right rear spring"),
    "anti_roll_bar": Instruction("Which axles have an anti-roll bar?"),
    "side_g": Instruction("Pull a held wheel along its axle with the luggage scale", "sideways"),
    "side_mm": Instruction("Note by how much the rim moved", "sideways"),
    "roll_g": Instruction("Pull a held wheel along the ground with the luggage scale", "along"),
    "roll_mm": Instruction("Note by how much it moved", "along"),
}
_CHOICES = {
    "raised": ("front", "rear"),
    "anti_roll_bar": ("none", "front", "rear", "both"),
    "held": ("yes", "no"),
    "corners_held": ("yes", "no"),
}


def wizard_questions() -> list[dict[str, Any]]:
    """What `begin` asks, in order, and what may be given later."""
    return [_told(q, True) for q in QUESTIONS] + [_told(q, False) for q in FURTHER]


def _told(q: Question, first: bool) -> dict[str, Any]:
    step = INSTRUCTIONS.get(q.key, Instruction(q.words[:1].upper() + q.words[1:]))
    return {
        "key": q.key,
        "words": q.words,
        "do": step.do,
        "hint": "" if q.key in INSTRUCTIONS else q.hint,
        "kind": q.kind,
        "choices": list(_CHOICES.get(q.key, ())),
        "needed": q.needed,
        "after": q.after,
        "minutes": q.minutes,
        "picture": step.picture,
        "caution": step.caution,
        "first": first,
    }


def wizard_pictures(truck: Truck) -> dict[str, str]:
    """The drawings of a truck like this one."""
    from crossfall.show.guide_drawings import measures_of  # matplotlib, once it is asked for

    return drawings(measures_of(truck))


@lru_cache(maxsize=4)
def drawings(f: Measures) -> dict[str, str]:
    """The drawings by name, as SVG that the page's style sheet colours."""
    from crossfall.show import guide_drawings as draw
    from crossfall.show import guide_tyres as tyres

    corners = [f"{end} {side}" for end in ("front", "rear") for side in ("left", "right")]
    drawn: dict[str, tuple[Any, ...]] = {
        "lengths": (draw.lengths, f),
        "track": (draw.track, f),
        "tyre": (draw.tyre_size, f),
        "damper": (draw.damper,),
        "raised": (draw.raised_weighing, f, _BLOCK),
        "board": (draw.tilt_board, f, _ANGLE),
        "headings": (draw.headings,),
        "pressed": (tyres.pressed, f, "1000 g"),
        "sideways": (tyres.sideways, f, "1.0 kg"),
        "along": (tyres.along, f, "1.0 kg"),
        "level front": (draw.weighing, f, "front"),
        "level rear": (draw.weighing, f, "rear"),
        "side left": (draw.weighing, f, "left"),
        "side right": (draw.weighing, f, "right"),
        **{f"corner {c}": (draw.corner_weighing, c) for c in corners},
    }
    return {name: draw.page_svg(*given) for name, given in drawn.items()}


def checked_typed(key: str, typed: str) -> Any:
    """One reading as typed. Raises InputError with a sentence."""
    for q in (*QUESTIONS, *FURTHER):
        if q.key == key:
            return files.accepted_reading(q, typed)
    raise InputError(Problem("readings", f"there is no reading '{key[:60]}'"))


def begun(folder: Path, name: str, typed: Mapping[str, Any], again: bool) -> dict[str, Any]:
    """Make a truck file of readings as typed, beside those it was begun from where `again`."""
    path, kept = files.begin_paths(str(folder / name), again)
    given = {str(k): checked_typed(str(k), str(v)) for k, v in typed.items()}
    made, loaded = files.begin_files(path, kept, given, kept if again else None, again)
    said = files.begin_answer(made, loaded, path, kept)
    return {**said, "file": path.name, "readings_file": kept.name, "implausible": files.askew(made)}


def agreement(loaded: Loaded, text: str, scales: Path, board: Path) -> tuple[dict[str, Any], str]:
    """What has to move for the file to agree with the readings kept beside it, and the text with
    it moved. Raises InputError where there are none, or they do not belong to this truck."""
    session = read_session(scales, loaded.truck) if scales.is_file() else None
    read = read_board(board) if board.is_file() else None
    if read is not None and not read.readings:
        read = None
    if session is None and read is None:
        what = "neither scale readings nor board readings are kept beside this truck"
        raise InputError(Problem(loaded.path.name, what, "weigh it, or tilt it on a board"))
    names = [p.name for p in loaded.spec.part]
    try:
        found = reconcile(loaded.truck, names, session, read, included_rows(loaded))
    except ValueError as error:
        raise InputError(Problem(loaded.path.name, str(error))) from None
    files_read = [p for p, one in ((scales, session), (board, read)) if one is not None]
    stamp = text_digest("".join(p.read_text("utf-8") for p in files_read))[:12]
    mark = f"{_COUNTED}{', '.join(p.name for p in files_read)}; readings {stamp}\n"
    reply = {
        **_told_agreement(found),
        "scales": session is not None,
        "board": read is not None,
        # A reading that the file has been brought together with must not pull a second time.
        "counted": "all" if mark in text else "some" if _COUNTED in text else "",
    }
    if reply["counted"] == "all":
        return {**reply, "moves": []}, text
    return reply, mark + new_text(loaded, found, text)


_COUNTED = "# Reconciled with "
_MOVED = 0.05  # sd: less is no move worth a line


def _told_agreement(found: Reconciled) -> dict[str, Any]:
    names = (("mass", "g"), ("CG ahead of the middle", "mm"), ("CG to the left", "mm"),
             ("CG height", "mm"))  # fmt: skip
    return {
        "agrees": bool(found.agrees),
        "sums": [
            {
                "what": what,
                "unit": unit,
                "before": float(found.before[i]) * 1e3,
                "before_pm": files.SURE_95 * float(found.before_sd[i]) * 1e3,
                "after": float(found.after[i]) * 1e3,
                "after_pm": files.SURE_95 * float(found.after_sd[i]) * 1e3,
            }
            for i, (what, unit) in enumerate(names)
        ],
        "moves": [
            {
                "part": m.name,
                "mass_by_g": float(m.mass_by) * 1e3,
                "place_by_mm": [float(v) * 1e3 for v in m.place_by],
            }
            for m in found.moves
            if m.most >= _MOVED
        ],
        "at_limit": list(found.at_limit),
        "left_out": [
            {
                "reading": one.label,
                "kind": one.kind,
                "off": float(one.off) * 1e3 if one.kind == "scale" else degrees(one.off),
                "unit": "g" if one.kind == "scale" else "°",
            }
            for one in found.left_out
        ],
    }
