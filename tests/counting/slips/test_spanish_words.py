"""Slips of the Spanish number words, foreseen where a class counts in Spanish.

Common practice, no source; the regular words are those num2words gives.
"""

from routines.counting import Audience, Count, Grid, Slip, likely_slips


def slips(start: str, step: str, level: int, kind: str = "whole", terms: int = 12, language: str = "es") -> list[Slip]:
    grid = Grid(Count.parse(kind=kind, start=start, step=step, terms=terms), 4)
    return likely_slips(grid, audience=Audience(level, language))


def heard(rule: str, found: list[Slip]) -> list[tuple[str, str]]:
    return [(slip.heard, slip.correct) for slip in found if slip.rule == rule]


def test_sesenta_and_setenta_change_places() -> None:
    assert heard("S01", slips("50", "10", 1)) == [("70", "60"), ("60", "70"), ("170", "160")]
    assert heard("S08", slips("50", "10", 2)) == [("70", "60"), ("60", "70"), ("170", "160")]
    assert heard("S01", slips("67", "1", 1)) == [("60", "70")]


def test_the_teens_and_the_twenties_are_run_on() -> None:
    assert heard("S02", slips("17", "1", 1)) == [("diecidiez", "20")]
    assert heard("W01", slips("27", "1", 1)) == [("veintidiez", "30")]
    assert heard("W01", slips("37", "1", 1)) == [("treinta y diez", "40")]


def test_words_of_their_own_are_made_up_by_rule() -> None:
    assert heard("S03", slips("10", "1", 0))[:2] == [("dieciuno", "11"), ("diecidós", "12")]
    assert heard("S05", slips("450", "50", 3)) == [
        ("cincocientos", "500"),
        ("sietecientos", "700"),
        ("nuevecientos", "900"),
    ]


def test_words_that_join() -> None:
    assert heard("S04", slips("29", "1", 1)) == [("treinta uno", "31")]
    assert heard("S06", slips("99", "1", 2))[0] == ("cien uno", "101")
    assert ("dos terceros", "2/3") in heard("S07", slips("1/3", "1/3", 3, "fraction"))


def test_a_class_that_counts_in_english_meets_none_of_them() -> None:
    assert not [slip for slip in slips("50", "10", 2, language="en") if slip.rule.startswith("S")]


def test_the_slips_of_the_english_words_are_not_foreseen_in_spanish() -> None:
    english = {"W05", "W06", "W07"}
    assert english <= {slip.rule for slip in slips("12", "1", 1, language="en")}
    assert english.isdisjoint({slip.rule for slip in slips("12", "1", 1)})
