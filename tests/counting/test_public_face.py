"""The public face: every name is there, and is what it says even after its module was imported by itself."""

import inspect
from importlib import import_module

import pytest

import routines.counting as counting


@pytest.mark.parametrize("name", counting.__all__)
def test_every_name_can_be_asked_for(name: str) -> None:
    assert getattr(counting, name) is not None


@pytest.mark.parametrize("name", ["ideas", "locate", "probes"])
def test_a_function_that_bears_its_modules_name_stays_the_function(name: str) -> None:
    import_module(f"routines.counting.{name}")
    assert inspect.isfunction(getattr(counting, name))


def test_any_other_name_is_an_error() -> None:
    with pytest.raises(AttributeError):
        counting.nothing_of_the_kind  # noqa: B018
