"""Importing the engine stays cheap: slow libraries wait until they are needed."""

import subprocess
import sys

import pytest


def loaded_after(code: str) -> set[str]:
    """The top-level modules that a fresh interpreter has loaded after running the code."""
    ask = f"{code}\nimport sys\nprint(' '.join(sorted({{name.partition('.')[0] for name in sys.modules}})))"
    run = subprocess.run([sys.executable, "-c", ask], capture_output=True, text=True, check=True)
    return set(run.stdout.split())


@pytest.mark.parametrize("library", ["sympy", "django", "babel", "num2words", "weasyprint"])
def test_importing_the_engine_loads_no(library: str) -> None:
    assert library not in loaded_after("import routines.counting")


def test_counting_and_folding_load_no_sympy() -> None:
    code = (
        "from routines.counting import Count, Grid\n"
        "count = Count.parse(kind='fraction', start='2/3', step='1/3', terms=12)\n"
        "Grid(count, 4).cells(); count.words(3)"
    )
    loaded = loaded_after(code)
    assert not {"sympy", "django", "babel"} & loaded


def test_the_rule_as_an_expression_loads_sympy_only_then() -> None:
    code = (
        "from routines.counting import Count\nCount.parse(kind='whole', start='1', step='3', terms=4).rule().expression"
    )
    assert "sympy" in loaded_after(code)
