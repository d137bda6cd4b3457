"""What is foreseen for each slip of the table is what its columns lead to, at every count where it happens."""

import re
from fractions import Fraction
from math import lcm

import pytest

from routines.counting import Audience, Count, likely_slips
from routines.counting.slips.foreseeing import rules_for
from routines.counting.slips.jump import Jump
from tests.counting.slips.table import counts_for, fires, grid_of, level, rows, unit_of
from tests.counting.slips.what_is_heard import SAID, number_said, written

ROWS = rows()


def expected(identity: str, count: Count, n: int, places: int) -> Fraction | int | str | None:
    unit = unit_of(identity, count, places)
    a, b, s = (value / unit for value in (count.value(n - 1), count.value(n), count.step))
    if identity in SAID:
        number = SAID[identity](a, b, s) * unit
        return number % 720 if count.kind == "clock" else number
    return written(identity, a, b, s, lcm(count.scale, count.style.over) if count.kind == "fraction" else places)


@pytest.mark.parametrize("identity", ROWS)
def test_what_is_heard_follows_from_the_table_at_every_count(identity: str) -> None:
    tried = 0
    for count, places in counts_for(identity):
        grid = grid_of(count)
        (rule,) = [rule for rule in rules_for(grid) if rule.id == identity]
        for n in fires(ROWS[identity], count, places):
            heard = re.sub(r" [ap]\.m\.$", "", rule.heard(Jump(grid, n), "en"))
            due = expected(identity, count, n, places)
            if due is None:
                assert heard == "", (count, n)
            elif isinstance(due, str):
                assert heard == due, (count, n)
            else:
                assert number_said(heard, count.kind) == due, (count, n, heard)
            tried += 1
    assert tried >= 2


@pytest.mark.parametrize("identity", ROWS)
def test_it_is_foreseen_there_and_nowhere_else(identity: str) -> None:
    """Where another rule hears the same at the same count, it stands for both."""
    grade = level(ROWS[identity]["grade_low"])
    for count, places in counts_for(identity):
        grid = grid_of(count)
        (rule,) = [rule for rule in rules_for(grid) if rule.id == identity]
        slips = likely_slips(grid, audience=Audience(grade))
        listed = {(slip.n, slip.heard) for slip in slips}
        happens = fires(ROWS[identity], count, places)
        assert {slip.n for slip in slips if slip.rule == identity} <= happens
        for n in happens:
            heard = rule.heard(Jump(grid, n), "en")
            named = ("", count.text(n), *count.text(n).split(" = "))
            assert heard in named or (n, heard) in listed, (count, n, heard)
