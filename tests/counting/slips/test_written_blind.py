"""How many of eighty slips, written down by someone who had not seen the rules, are named as expected, and foreseen.

Sources: in the rows of slips_written_blind.csv.
"""

from tests.counting.slips.written_blind import written_slips

NAMED, FORESEEN = 79, 64


def test_every_row_has_its_source_and_stands_for_itself() -> None:
    slips = written_slips()
    assert len(slips) == 80
    assert all(slip.row["source"] for slip in slips)
    assert len({(slip.row["kind"], slip.row["start"], slip.row["step"], slip.row["said"]) for slip in slips}) == 80


def test_so_many_are_named_as_expected() -> None:
    missed = [
        f"{slip.id}: {slip.row['expected']}, not {slip.heard()}" for slip in written_slips() if not slip.is_named()
    ]
    assert 80 - len(missed) >= NAMED, "\n".join(missed)


def test_so_many_are_foreseen() -> None:
    missed = [
        f"{slip.id}: {slip.row['said']} at {slip.row['right']}" for slip in written_slips() if not slip.is_foreseen()
    ]
    assert 80 - len(missed) >= FORESEEN, "\n".join(missed)
