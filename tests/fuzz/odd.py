"""What nobody types and somebody sends."""

import json
import re
from typing import Any
from urllib.parse import quote_from_bytes

from hypothesis import strategies as st

LONE = "\ud800"
CONTROLS = "a\x00b\x07\x1b[31m\x7f"
NEVER_CHARACTERS = "a\ufffe\uffff\ufdd0\U0010ffff"
TURNED = "\u202eabc\u2066\u200f\ufeff"
DIGITS_4300 = "9" * 4300
DIGITS_5000 = "9" * 5000
DEEP = "[" * 20_000 + "]" * 20_000

LARGE = "99999999"
TEXT = LONE + CONTROLS + NEVER_CHARACTERS
UNREADABLE = [DIGITS_5000, DIGITS_4300, TEXT]
# One for each root.
NUMBERS = [DIGITS_5000, DIGITS_4300, LARGE, "99999"]
TEXTS = [TEXT, "x" * 9000]
# Sent here and there.
FURTHER = [
    "", " ", "-1", "0", "²", "٣", "½", "1_000", "1e400", "nan", "-99999999", "9" * 19, "1/0", "1/99999999", "0x10",
    "99999:99999", "$99999999999", "1 ft 99999999 in", "99999999999999999999/3", "{}", "[]", "null", DEEP, '{"a":' * 400,
    '"\\ud800"', "\r\nX-Header: y", "../../etc/passwd", "%00", "&#0;", "'; --", TURNED, NEVER_CHARACTERS, CONTROLS,
    "ss\u0131\u0130\u1e9e", "e" + "\u0301" * 3000, "00000000-0000-0000-0000-000000000000", "2026-02-30", "99999-01-01",
]  # fmt: skip

odd_text = st.one_of(
    st.sampled_from(NUMBERS + TEXTS + FURTHER),
    st.text(max_size=60),
    st.integers(-(10**30), 10**30).map(str),
    st.text("0123456789-+.,/: ½²٣eE_'\"$%", max_size=20),
)
odd_json: st.SearchStrategy[Any] = st.recursive(
    st.one_of(st.none(), st.booleans(), st.integers(), st.floats(), st.sampled_from(NUMBERS + TEXTS + [10**400])),
    lambda inner: st.one_of(
        st.lists(inner, max_size=4),
        st.dictionaries(st.one_of(st.sampled_from(["family", "blocks", "along", "n", "id", "v"]), st.text()), inner),
    ),
    max_leaves=8,
)


def bent(value: str) -> list[str]:
    """Odd values of the same shape: of one that holds JSON, with its numbers, texts and lists replaced."""
    place = value.find("{")
    if place < 0:
        return []
    before, document = value[:place], value[place:]
    ways = [
        re.sub(r':\s*"[^"]*"', ': "\\\\ud800"', document),
        re.sub(r':\s*"[^"]*"', ": []", document),
        re.sub(r"-?\b\d+\b", DIGITS_5000, document),
        re.sub(r"-?\b\d+\b", "99999999", document),
        re.sub(r"\[[^\[\]]*\]", "{}", document),
        re.sub(r'"(\w+)":', r'"\\u0000\1":', document),
        document[:-1],
    ]
    return [before + way for way in dict.fromkeys(ways) if way != document]


def encoded(fields: dict[str, list[str]]) -> bytes:
    """As a form, lone surrogates too."""
    pairs = [(name, value) for name, values in fields.items() for value in values]
    return "&".join(f"{_quoted(name)}={_quoted(value)}" for name, value in pairs).encode()


def _quoted(text: str) -> str:
    return quote_from_bytes(text.encode("utf-8", "surrogatepass"), safe="")


def multipart(fields: dict[str, list[str]], files: list[tuple[str, str, bytes]]) -> tuple[bytes, str]:
    """As a form with files, whose names may hold anything."""
    parts = [(f'name="{name}"', value.encode("utf-8", "surrogatepass")) for name, vs in fields.items() for value in vs]
    parts += [(f'name="{name}"; filename="{file}"', content) for name, file, content in files]
    body = b""
    for head, content in parts:
        line = f"Content-Disposition: form-data; {head}\r\n\r\n".encode("utf-8", "surrogatepass")
        body += b"--odd-boundary\r\n" + line + content + b"\r\n"
    return body + b"--odd-boundary--\r\n", "multipart/form-data; boundary=odd-boundary"


def odd_files(example: bytes) -> list[tuple[str, bytes]]:
    """Files by name. `example` is a sound file of routines."""
    counts = json.loads(example)
    files = [
        ("counts\x00\x07.json", example),
        ("../" * 60 + "\u202e.json", example),
        ("deep.json", DEEP.encode()),
        ("half.json", example[: len(example) // 2]),
        ("wide.json", ("\ufeff" + example.decode()).encode("utf-16")),
        ("numbers.json", re.sub(rb":\s*\d+", b": " + DIGITS_5000.encode(), example)),
        ("lists.json", re.sub(rb':\s*"[^"]*"', b": [[]]", example)),
        ("many.csv", b"code,grade,area,summary\r\n" + b"x" * 200_000 + b",2,whole,y\r\n"),
        ("quoted.csv", b'code,grade,area,summary\r\n"' + b"x,\n" * 70_000),
        ("nul.csv", b"framework,code,grade,area,summary,count_features\r\nA,\x00B,2,whole,C\x07,{\r\n"),
        ("latin.csv", "framework,code,grade,area,summary\r\nÄ,Ö1,2,whole,ß\r\n".encode("latin-1")),
        ("features.csv", b"framework,code,grade,area,summary,count_features\r\nA,B1,2,whole,C,bogus feature=x\r\n"),
    ]
    texts = [name for name, value in counts["routines"][0].items() if isinstance(value, str)]
    for name in ("title", "notes", "story", *texts):
        for odd in (LONE, CONTROLS + NEVER_CHARACTERS) if name == "title" else (LONE,):
            bent_one = json.loads(example)
            bent_one["routines"][0][name] = {"text": odd, "group": odd} if name == "story" else f"Bent {odd}"
            files.append((f"{name}.json", json.dumps(bent_one).encode()))
    return list(dict.fromkeys(files))
