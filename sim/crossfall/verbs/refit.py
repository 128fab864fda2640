"""`crossfall refit FILE`: what a kept trial says, concluded from its record anew."""

from __future__ import annotations

from math import degrees

import click

from crossfall.verbs.common import console, emit, json_option


@click.command()
@click.argument("file")
@json_option
def command(file: str, as_json: bool) -> None:
    """What a kept trial says: the same angle and interval again, to the last digit.

    FILE is what `crossfall tilt TRUCK --record FILE` wrote. No engine runs: holds and loads of the
    record are all there is to it.
    """
    from crossfall.answers.keys import trial_record
    from crossfall.trials.saved import load_trial

    trial = load_trial(file)
    about = {
        "truck": trial.truck,
        "digest": trial.digest,
        "heading_deg": round(degrees(trial.heading), 9),
        "grip": trial.grip,
        "hold": "rail" if trial.rail else "brakes",
    }
    said = trial_record(trial)
    if as_json:
        emit("refit", {**about, **said})
        return
    out = console()
    out.print(
        f"{trial.truck}, heading {about['heading_deg']:g}, grip {trial.grip:g}, {about['hold']},"
        f" in {trial.engine}",
        highlight=False,
    )
    ends, at = said["trial_ci_deg"] or said["trial_slide_ci_deg"], said["trial_deg"]
    at = said["trial_slide_deg"] if at is None else at
    if at is None or ends is None:
        out.print("it stands as far as the table went")
        return
    out.print(
        f"{trial.outcome} at {at:.3f}\N{DEGREE SIGN} ({ends[0]:.3f} to {ends[1]:.3f}, 95 %)",
        highlight=False,
    )
    parts = (f"{name} {half:.3f}" for name, half in said["trial_terms_deg"].items() if half)
    out.print(f"of that, plus or minus, degrees: {', '.join(parts)}", highlight=False)
    holds = [s for s in trial.log.stretches if s.kind == "hold"]
    out.print(f"{len(trial.log.samples)} samples, {len(holds)} holds", highlight=False)
