"""Congruences solved and met, against trying every number of a full turn."""

from hypothesis import given
from hypothesis import strategies as st

from routines.counting.designing.congruences import Residues, Span, solve

moduli = st.integers(1, 40)
numbers = st.integers(-60, 60)


@given(numbers, numbers, moduli)
def test_solve_gives_every_solution_and_no_other(factor, wanted, modulus):
    solutions = {x for x in range(modulus) if (factor * x - wanted) % modulus == 0}
    found = solve(factor, wanted, modulus)
    listed = set() if found is None else {x for x in range(modulus) if x % found.modulus == found.residue}
    assert listed == solutions


@given(numbers, moduli, numbers, moduli)
def test_two_classes_meet_in_what_lies_in_both(a, m, b, n):
    both = {x for x in range(m * n) if (x - a) % m == 0 and (x - b) % n == 0}
    found = Residues(a % m, m).meet(Residues(b % n, n))
    listed = set() if found is None else {x for x in range(m * n) if x % found.modulus == found.residue}
    assert listed == both


@given(numbers, numbers, st.integers(1, 7), numbers, moduli)
def test_members_are_the_multiples_of_the_grain_in_the_class(low, high, grain, residue, modulus):
    span = Span(low, high, grain)
    members = list(span.members(Residues(residue % modulus, modulus)))
    assert members == [x for x in range(low, high + 1) if x % grain == 0 and (x - residue) % modulus == 0]
    assert all(span.has(x) for x in members)
