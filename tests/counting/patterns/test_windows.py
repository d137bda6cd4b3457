from hypothesis import given, settings
from hypothesis import strategies as st

from routines.counting.patterns.windows import first_in_window


@settings(max_examples=settings.default.max_examples * 10)
@given(st.integers(-60, 60), st.integers(-60, 60), st.integers(1, 40), st.data())
def test_the_first_meeting_is_the_one_found_by_trying(start: int, step: int, modulus: int, data: st.DataObject) -> None:
    low = data.draw(st.integers(0, modulus - 1))
    high = data.draw(st.integers(low, modulus - 1))
    tried = next((j for j in range(modulus) if low <= (start + j * step) % modulus <= high), None)
    assert first_in_window(start, step, modulus, low, high) == tried


def test_large_moduli_take_no_time() -> None:
    j = first_in_window(1, 10**9 + 7, 10**18 + 9, 5, 6)
    assert j is not None
    assert 5 <= (1 + j * (10**9 + 7)) % (10**18 + 9) <= 6
