"""Spanish says one word for one thing: the words of primary schools that were chosen, and none of those that were not."""

import ast
import re
from collections.abc import Iterator
from pathlib import Path

import pytest

import routines

ROOT = Path(routines.__path__[0])
# Instead of: what is not to be said. Common practice, no source; the first of each pair is what is said throughout.
BANNED = {
    "cifra": r"d[ií]gitos?",
    "celda": r"casillas?|recuadros?",
    "conteo": r"(?:la|las|una|esta|esa|nuestra|otra|misma) cuentas?|del recuento",
    "cuadrícula": r"tableros?|tabla de números",
    "salto": r"brincos?",
    "fila": r"renglón|renglones|hileras?",
    "desde cero": r"de la nada|de nada",
}


def texts() -> Iterator[tuple[str, str]]:
    """Every text in the Spanish folder, with its file; those of drawings and of what is printed stand there too."""
    for path in sorted((ROOT / "words" / "es").rglob("*.py")):
        for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
            if isinstance(node, ast.Constant) and isinstance(node.value, str):
                yield path.name, node.value


@pytest.mark.parametrize("said", BANNED)
def test_the_word_that_was_chosen_is_the_only_one(said: str) -> None:
    found = [(file, text) for file, text in texts() if re.search(rf"\b(?:{BANNED[said]})\b", text, re.IGNORECASE)]
    assert found == [], f"say “{said}”"


def test_the_look_finds_what_is_banned() -> None:
    planted = "Señala el dígito en la casilla de la cuenta"
    assert all(re.search(rf"\b(?:{BANNED[said]})\b", planted) for said in ("cifra", "celda", "conteo"))


def test_there_are_texts_to_look_at() -> None:
    assert sum("cifra" in text for _, text in texts()) > 20
