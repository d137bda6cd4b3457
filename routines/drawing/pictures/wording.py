"""What the pictures say of a count, in each language."""

from routines.counting import Count

from ..numerals import MINUS
from ..words import WORDS


def title(name: str, count: Count, first: int, last: int, language: str) -> str:
    said = WORDS[language]
    told = said.picture.format(name=said.pictures[name], first=count.text(first), last=count.text(last))
    return told.replace("-", MINUS)


def description(count: Count, first: int, last: int, language: str) -> str:
    """The values in counting order and the jump between them."""
    values = ", ".join(count.text(n) for n in range(first, last + 1))
    step = count.difference_text(abs(count.step))
    return f"{values}. {WORDS[language].jump[count.step < 0].format(step=step)}".replace("-", MINUS)


def since(count: Count, language: str) -> str:
    """What passed between the term before and this one."""
    return WORDS[language].since[count.step < 0].format(step=count.difference_text(abs(count.step)))


def parts_key(forward: bool, language: str) -> tuple[str, str]:
    """What dark parts and what the bracketed parts are, in a count forward or backward."""
    said, back = WORDS[language], not forward
    return said.dark_parts[back], said.bracketed_parts[back]
