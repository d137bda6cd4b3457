"""Every kind of number that has a name can be counted in, and the other way round."""

from routines.counting import Kind
from routines.counting.kinds.registry import KINDS


def test_every_named_kind_is_there_in_its_order() -> None:
    assert list(KINDS) == list(Kind)
