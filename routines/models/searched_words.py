"""Which words of a text can be looked for, and what a search asks for: accents and capitals aside, numbers as typed."""

import re
import unicodedata
from collections.abc import Iterator
from dataclasses import dataclass

LONGEST = 40
"""In signs: of a longer word only its beginning can be looked for."""

_FRACTION_SIGN = "\u2044"  # which stands in ½ once it is spread out
_WRITTEN_SMALL = re.compile("[\u00bc-\u00be\u2150-\u215f\u2189]")  # ½ and its kin
_CHUNK = re.compile(r"(?:(?<![^\W_])-)?(?:[.,](?=\d))?[^\W_]+(?:[.,:/'][^\W_]+)*")
_PARTS = re.compile(r"[.,:/']")
_NUMBER = re.compile(r"-?[.,]?\d+(?:[.,:/]\d+)*")
_IN_THOUSANDS = re.compile(r"-?\d{1,3}(?:,\d{3})+")
_LEADING_NUMBER = re.compile(r"\d+")


@dataclass(frozen=True, slots=True)
class Asked:
    """One word looked for: a number is met by itself alone, any other word by all that begin with it."""

    word: str
    whole: bool


def folded(text: str) -> str:
    """Without accents and capitals, ½ as 1/2, one kind of minus and of apostrophe.

    Source: Unicode Standard 3.13 (caseless matching) and its compatibility decomposition (NFKD), marks left out.
    """
    if text.isascii():
        return text.casefold()
    apart = _WRITTEN_SMALL.sub(r" \g<0>", text.replace("\u2212", "-").replace("\u2019", "'"))
    spread = unicodedata.normalize("NFKD", apart)
    bare = "".join(sign for sign in spread if not unicodedata.combining(sign))
    return bare.replace(_FRACTION_SIGN, "/").casefold()


def words_in(text: str) -> set[str]:
    """Every word by which a text is found.

    >>> sorted(words_in("1,325 of ¾ in 3.OA.D.9: Ana\u2019s AÑO"))
    ['1,325', '1325', '3', '3.oa.d.9', '3/4', '9', 'ana', "ana's", 'ano', 'in', 'oa', 'of']
    """
    return {word[:LONGEST] for chunk in _chunks(text) for word in _words_of(chunk)}


def asked_for(text: str) -> list[Asked]:
    """The words of a search, each once, in their order.

    >>> asked_for("Oct\u00f3 1,325 3.OA -7")[1:]
    [Asked(word='1,325', whole=True), Asked(word='3.oa', whole=False), Asked(word='-7', whole=True)]
    """
    words = [Asked(_as_number(chunk)[:LONGEST], True) if is_number(chunk) else Asked(chunk[:LONGEST], False)
             for chunk in _chunks(text)]  # fmt: skip
    return list(dict.fromkeys(words))


def is_number(chunk: str) -> bool:
    return _NUMBER.fullmatch(chunk) is not None


def _chunks(text: str) -> Iterator[str]:
    yield from _CHUNK.findall(folded(text))


def _as_number(chunk: str) -> str:
    """.8 is found as 0.8 too."""
    return re.sub(r"^(-?)([.,])", r"\g<1>0\2", chunk)


def _words_of(chunk: str) -> Iterator[str]:
    if is_number(chunk):
        number = _as_number(chunk)
        for written in {number, number.lstrip("-")}:
            yield written
            if _IN_THOUSANDS.fullmatch(written):
                yield written.replace(",", "")
        return
    word = chunk.lstrip("-.,")
    yield word
    parts = _PARTS.split(word)
    for part in parts:
        if len(part) > 1 or part.isdigit():
            yield part
        if leading := _LEADING_NUMBER.match(part):
            yield leading.group()
