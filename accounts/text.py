"""What counts as text here: one definition, used wherever words come in or are read back.

A text is a run of characters that every page, file, print and database can hold. Three sorts are not text:

- control characters (U+0000 to U+001F and U+007F to U+009F, but not the tab and the line feed) and the 66 code points
  that Unicode calls noncharacters. Nobody sees them and nobody typed them on purpose, so they are taken out;
- halves of a surrogate pair. Two that belong together are joined to the character they mean; a single half was part
  of something seen (an emoji cut in two), so it becomes U+FFFD, the sign Unicode gives for that, rather than nothing;
- other ends of a line (CR, CR LF, NEL, VT, FF and U+2028, U+2029) become a line feed. A browser counts a line end as
  one character, so what fits a field there fits it here.

So a text is mended at the door and never refused: what a person typed stays, apart from what cannot be seen. What is
text stays as it is, whatever its language: marks that join, accents that combine and signs for right-to-left writing
are text, and so are characters that this machine's fonts don't know.

Doors: `config.text_gate` mends every field of a request; `read_json` and `read_bytes` read files, and JSON that stands
in a field. Documents that are stored are held to the same definition by `is_text`.

Source: The Unicode Standard, chapter 23.7 (noncharacters), 3.9 (U+FFFD for ill-formed sequences), 5.8 (line ends).
"""

import json
import math
import re
from collections.abc import Mapping
from typing import Any

REPLACEMENT = "\ufffd"
# A document of ours is six levels deep; what nests deeper is not one.
DEEPEST = 20
LONGEST_NUMBER = 20

_LINE_ENDS = re.compile("\r\n|[\r\x0b\x0c\x85\u2028\u2029]")
_NONCHARACTERS = "\ufdd0-\ufdef" + "".join(
    chr(plane + low) for plane in range(0, 0x110000, 0x10000) for low in (0xFFFE, 0xFFFF)
)
_UNSEEN = re.compile(f"[\x00-\x08\x0b-\x1f\x7f-\x9f{_NONCHARACTERS}]")
_SURROGATES = re.compile("[\ud800-\udfff]+")
_NOT_TEXT = re.compile(f"[\x00-\x08\x0b-\x1f\x7f-\x9f\u2028\u2029\ud800-\udfff{_NONCHARACTERS}]")


def is_text(value: str) -> bool:
    """Whether `mended` would leave it as it is.

    >>> is_text("½ of the class\\n\\tsaid 🙂"), is_text("a\\x00b"), is_text("\\ud83d")
    (True, False, False)
    """
    return _NOT_TEXT.search(value) is None


def mended(value: str) -> str:
    """The text in it: line ends made one, unseen characters taken out, halves of characters joined or marked.

    >>> mended("Tens\\x00 go up\\r\\nby \\ud83d\\ude00, then \\ud83d")
    'Tens go up\\nby 😀, then �'
    """
    if is_text(value):
        return value
    joined = _SURROGATES.sub(lambda halves: _joined(halves[0]), value)
    return _UNSEEN.sub("", _LINE_ENDS.sub("\n", joined))


def _joined(halves: str) -> str:
    return halves.encode("utf-16-le", "surrogatepass").decode("utf-16-le", "replace")


def mended_document(value: Any, depth: int = DEEPEST) -> Any:
    """A JSON value with every text in it mended, the names of its parts too. Raises ValueError where it nests too deep."""
    if isinstance(value, str):
        return mended(value)
    if not isinstance(value, Mapping | list):
        return value
    if not depth:
        raise ValueError("The document nests too deep.")
    if isinstance(value, Mapping):
        return {mended(name): mended_document(part, depth - 1) for name, part in value.items()}
    return [mended_document(part, depth - 1) for part in value]


def read_bytes(content: bytes) -> str:
    """The text of a file in UTF-8, with or without the mark in front. Raises ValueError for another encoding."""
    return mended(content.decode("utf-8-sig"))


def read_json(content: str | bytes, deepest: int = DEEPEST) -> Any:
    """JSON from outside, every text in it mended. Raises ValueError for anything that cannot be read.

    A number too long or too large to be kept stays the text it is, so that whoever wants a number there refuses it.

    >>> read_json('{"title": "Threes \\\\ud800"}')
    {'title': 'Threes �'}
    """
    text = read_bytes(content) if isinstance(content, bytes) else content
    try:
        value = json.loads(text, parse_constant=_refuse, parse_int=_whole, parse_float=_finite)
    except RecursionError as error:
        raise ValueError("The document nests too deep.") from error
    return mended_document(value, deepest)


def _refuse(name: str) -> None:
    raise ValueError(f"{name} is no number.")


def _whole(digits: str) -> int | str:
    return int(digits) if len(digits) <= LONGEST_NUMBER else digits


def _finite(digits: str) -> float | str:
    return number if math.isfinite(number := float(digits)) else digits
