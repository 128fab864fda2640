"""The one schema: every key, its unit and its form."""

from __future__ import annotations

import json

import numpy as np
import pytest

from crossfall.answers.answer import Answers, answer
from crossfall.answers.conditions import conditions
from crossfall.answers.keys import KEYS, record, report
from support import make_truck

UNITS = ("_deg", "_percent", "_share")
BARE = {"grip", "case", "hold", "over", "outcome", "verdict", "uncertain_by", "budget_steps"}


@pytest.fixture(scope="module")
def found() -> Answers:
    truck = make_truck()
    asked = conditions(truck, np.radians([0.0, 90.0]), "rock")
    return answer(truck, asked, trial=False)


def test_every_key_names_its_unit_or_has_none() -> None:
    names = [key.name for key in KEYS]
    assert len(set(names)) == len(names)
    for key in KEYS:
        assert key.meaning
        if key.form in ("number", "pair", "named numbers") and key.name not in BARE:
            assert key.name.endswith(UNITS), key.name


def test_values_have_the_form_that_is_said(found: Answers) -> None:
    for a in found.answers:
        for key in KEYS:
            value = record(a)[key.name]
            if value is None:
                assert key.may_be_null, key.name
            elif key.form == "number":
                assert isinstance(value, float), key.name
            elif key.form == "pair":
                assert len(value) == 2
            elif key.form == "named numbers":
                assert tuple(value) == key.fields
            elif key.form == "text":
                assert isinstance(value, str)
            else:
                assert isinstance(value, list)


def test_a_slide_has_no_compliant_angle_but_one_against_a_rail(found: Answers) -> None:
    climb, side = (record(a) for a in found.answers)
    assert climb["compliant_deg"] is None
    assert climb["rail_deg"] > climb["goes_at_deg"] == climb["slide_deg"]["likely"]
    assert side["rail_deg"] is None
    assert side["goes_at_deg"] == side["compliant_deg"]
    assert side["compliant_range_deg"][0] <= side["compliant_deg"]


def test_the_budget_ends_where_the_answer_is(found: Answers) -> None:
    for a in found.answers:
        said = record(a)
        steps = [s["gained_deg"] for s in said["budget_steps"]]
        assert steps[-1] is None  # no trial, no remainder
        gone = said["rigid_deg"] + sum(steps[:-1])
        assert gone == pytest.approx(np.degrees(a.tip), abs=1e-9)


def test_it_is_plain_json(found: Answers) -> None:
    assert json.loads(json.dumps(report(found)))["headings"][0]["heading_deg"] == 0.0
