"""A whole trial in a file, from which the same numbers are concluded again.

A .npz (a zip of plain arrays; nothing in it is run on reading) of format 2:

- `about`: JSON text: format, truck, digest (SHA-256 of everything in the truck), engine, versions,
  heading_rad, grip, hold, settings and pace of the trial, seconds of CPU, and units: key -> unit;
- samples, n in the order they were taken: time, theta, lean (n,), loads (n, 4), chassis (n, 7),
  joints (n, m) named by joint_names, give (n, 4, 3), slip (n, 4), as in `Record`; passed (n,):
  whether a sample is on the way from the level to the end of the tilting, for replays; weight;
- stretches, k of them, the holds that decide the angle included: stretch_kind, stretch_fate,
  stretch_search, stretch_vary, stretch_jumped, stretch_afresh, stretch_fell, stretch_first,
  stretch_last (k,), stretch_left (k, 4), stretch_touched (k, 4), as in `Stretch`.
"""

from __future__ import annotations

import io
import json
from dataclasses import asdict, fields
from pathlib import Path
from typing import Any, cast

import numpy as np

from crossfall.engines.settings import TrialSettings
from crossfall.trials.log import Log, Stretch
from crossfall.trials.outcome import TiltTrial, concluded
from crossfall.trials.pace import Pace
from crossfall.trials.record import FIELDS, Record
from crossfall.truck.errors import InputError, Problem
from crossfall.truck.files import write_atomically
from crossfall.truck.model import frozen

_FORMAT = 2
_MOST = 200_000_000  # bytes of a file once unpacked
UNITS = {
    "time": "s",
    "theta": "rad, table angle",
    "lean": "rad, chassis against the table",
    "loads": "N, front left, front right, rear left, rear right",
    "chassis": "m x, y, z and quaternion x, y, z, w, table axes",
    "joints": "m for heave, rad for roll",
    "give": "m, wheel on its axle, along the axle's axes x, y, z",
    "slip": "m",
    "weight": "N",
    "stretch_left": "rad, table angle",
    "stretch_touched": "rad, table angle",
}


def save_trial(trial: TiltTrial, path: str | Path, versions: dict[str, str]) -> None:
    """Write the trial in one step; versions: what its numbers depend on. Raises OSError."""
    about = {
        "format": _FORMAT,
        "truck": trial.truck,
        "digest": trial.digest,
        "engine": trial.engine,
        "versions": versions,
        "heading_rad": trial.heading,
        "grip": trial.grip,
        "hold": "rail" if trial.rail else "brakes",
        "settings": asdict(trial.settings),
        "pace": asdict(trial.pace),
        "seconds": trial.seconds,
        "units": UNITS,
    }
    log, samples = trial.log, trial.log.samples
    arrays: dict[str, Any] = {name: getattr(samples, name) for name in FIELDS}
    arrays |= {"lean": log.lean, "passed": log.passed, "weight": log.weight}
    arrays["joint_names"] = np.array(samples.joint_names, dtype=np.str_)
    for one in fields(Stretch):
        arrays[f"stretch_{one.name}"] = np.array([getattr(s, one.name) for s in log.stretches])
    buffer = io.BytesIO()
    np.savez_compressed(buffer, about=np.array(json.dumps(about)), **arrays)
    write_atomically(path, buffer.getvalue())


def load_trial(path: str | Path) -> TiltTrial:
    """The trial in a file, its numbers concluded anew. InputError for what is no such file."""
    try:
        with open(path, "rb") as file, np.load(file, allow_pickle=False) as data:
            if sum(info.file_size for info in data.zip.infolist()) > _MOST:
                raise ValueError("too large")
            kept = {name: data[name] for name in data.files}
        return concluded(_trial(kept))
    except FileNotFoundError:
        raise InputError(Problem(str(path), "there is no such file")) from None
    except OSError as error:
        raise InputError(Problem(str(path), error.strerror or "cannot be read")) from None
    except Exception:  # a damaged or foreign file may fail anywhere on the way
        what = "is no kept trial of this format"
        raise InputError(Problem(str(path), what, "tilt --record writes one")) from None


def _trial(kept: dict[str, Any]) -> TiltTrial:
    about = json.loads(str(kept["about"]))
    if about["format"] != _FORMAT:
        raise ValueError("another format")
    names = tuple(str(n) for n in kept["joint_names"])
    samples = Record(joint_names=names, **{name: frozen(kept[name]) for name in FIELDS})
    columns = [kept[f"stretch_{one.name}"].tolist() for one in fields(Stretch)]
    names_of, make = [one.name for one in fields(Stretch)], cast(Any, Stretch)
    stretches = tuple(
        make(
            **{
                name: tuple(v) if isinstance(v, list) else v
                for name, v in zip(names_of, row, strict=True)
            }
        )
        for row in zip(*columns, strict=True)
    )
    passed = np.array(kept["passed"], dtype=bool)
    passed.flags.writeable = False
    log = Log(samples, frozen(kept["lean"]), passed, stretches, float(kept["weight"]))
    return TiltTrial(
        float(about["heading_rad"]),
        "stands",
        float(about["grip"]),
        about["hold"] == "rail",
        log,
        TrialSettings(**about["settings"]),
        Pace(**about["pace"]),
        str(about["engine"]),
        str(about["truck"]),
        str(about["digest"]),
        float(about["seconds"]),
    )
