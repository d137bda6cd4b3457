"""The brute force imports nothing of the engine, and sees it when the engine is wrong."""

import ast
from pathlib import Path

import pytest

from routines.counting import Count, Grid
from routines.counting.patterns import blocks, how_many, landmarks
from tests.brute_force.long_run import batch
from tests.counting.comparing import disagreements

FOLDER = Path(__file__).parents[1] / "brute_force"
VIEW = Grid(Count.parse(kind="whole", start="1,325", step="-50", terms=16), 4)


@pytest.mark.parametrize("module", sorted(FOLDER.glob("*.py")), ids=lambda path: path.stem)
def test_no_module_imports_the_engine(module: Path) -> None:
    allowed_to_compare = {"long_run"}  # it runs the comparison; it judges nothing itself
    imported = set()
    for node in ast.walk(ast.parse(module.read_text(encoding="utf-8"))):
        if isinstance(node, ast.Import):
            imported |= {alias.name for alias in node.names}
        elif isinstance(node, ast.ImportFrom) and node.level == 0:
            imported.add(node.module or "")
    outside = {name for name in imported if name.split(".")[0] in ("routines", "tests") and "brute_force" not in name}
    assert not outside or module.stem in allowed_to_compare


def test_a_wrong_break_is_noticed(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(blocks, "break_beyond", lambda *_: None)
    assert any("breaks at 28 by listing" in wrong for wrong in disagreements(VIEW))


def test_a_claim_too_few_is_noticed(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(landmarks, "_found", lambda *_: None)
    assert any(wrong.startswith("missed") and "landmarks" in wrong for wrong in disagreements(VIEW))


def test_a_claim_too_many_is_noticed(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(how_many, "_shortest_block", lambda _: (1, 2))
    assert any(wrong.startswith("not so") and "how-many" in wrong for wrong in disagreements(VIEW))


def test_a_batch_of_the_long_run_counts_its_claims() -> None:
    tally = batch((20_261_125, 5))
    assert (tally.grids, tally.wrong) == (5, ())
    assert tally.claims > 5
