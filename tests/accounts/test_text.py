"""What counts as text, and what becomes of the rest."""

import json
import unicodedata
from pathlib import Path

import pytest
from django.conf import settings
from hypothesis import given
from hypothesis import strategies as st

from accounts.text import DEEPEST, is_text, mended, mended_document, read_bytes, read_json

# Every code point, halves of pairs, controls and noncharacters far more often than chance would bring them.
ODD = "\x00\x07\x0b\x0c\r\x1b\x7f\x85\x9f\u2028\ud800\udbff\udc00\udfff\ufdd0\ufdef\ufffe\uffff\U0001fffe\U0010ffff"
ANY_TEXT = st.text(st.one_of(st.characters(), st.characters(categories=["Cs"]), st.sampled_from(ODD)))
LINE_ENDS = "\r\x0b\x0c\x85\u2028\u2029"


def is_noncharacter(sign: str) -> bool:
    # The Unicode Standard, 23.7: U+FDD0..U+FDEF and the last two code points of each of the 17 planes.
    return 0xFDD0 <= ord(sign) <= 0xFDEF or ord(sign) & 0xFFFE == 0xFFFE


def is_kept(sign: str) -> bool:
    return unicodedata.category(sign) not in ("Cc", "Cs") and not is_noncharacter(sign) and sign not in LINE_ENDS


@given(ANY_TEXT)
def test_what_is_mended_is_text_and_stays_as_it_is(value):
    found = mended(value)
    assert is_text(found)
    assert mended(found) == found
    assert found.encode().decode() == found
    assert not any(is_noncharacter(sign) or unicodedata.category(sign) == "Cs" for sign in found)
    assert all(sign in "\n\t" for sign in found if unicodedata.category(sign) == "Cc")


@given(ANY_TEXT)
def test_nothing_that_can_be_seen_is_taken_out(value):
    kept = [sign for sign in value if is_kept(sign)]
    rest = iter(mended(value))
    assert all(sign in rest for sign in kept)
    assert len(mended(value)) <= len(value)


@given(st.text())
def test_plain_text_of_any_language_is_left_alone(value):
    if all(is_kept(sign) or sign in "\n\t" for sign in value):
        assert mended(value) is value


@pytest.mark.parametrize(
    ("typed", "kept"),
    [
        ("two\r\nlines", "two\nlines"),
        ("two\rlines", "two\nlines"),
        ("pasted\x0bfrom slides", "pasted\nfrom slides"),
        ("a\x00b\x1bc\x7fd\x9fe", "abcde"),
        ("half \ud83d", "half \ufffd"),
        ("\ude00\ud83d", "\ufffd\ufffd"),
        ("whole \ud83d\ude00", "whole 😀"),
        ("\ufdd0\uffff\U0010fffe", ""),
        ("👩\u200d🏫 \u05d0\u200f e\u0301 \ue000", "👩\u200d🏫 \u05d0\u200f e\u0301 \ue000"),
    ],
)
def test_each_sort_has_its_own_way(typed, kept):
    assert mended(typed) == kept


JSON_VALUES = st.recursive(
    st.one_of(st.none(), st.booleans(), st.integers(-(10**15), 10**15), ANY_TEXT),
    lambda inner: st.one_of(st.lists(inner, max_size=4), st.dictionaries(ANY_TEXT, inner, max_size=4)),
    max_leaves=12,
)


def texts_in(value):
    if isinstance(value, str):
        yield value
    elif isinstance(value, dict):
        for name, part in value.items():
            yield name
            yield from texts_in(part)
    elif isinstance(value, list):
        for part in value:
            yield from texts_in(part)


@given(JSON_VALUES)
def test_json_from_outside_holds_nothing_but_text(value):
    found = read_json(json.dumps(value))
    assert all(map(is_text, texts_in(found)))
    assert found == mended_document(value)
    json.dumps(found, ensure_ascii=False).encode()


@given(st.binary(max_size=200))
def test_bytes_are_text_or_refused(content):
    try:
        assert is_text(read_bytes(content))
    except ValueError:
        with pytest.raises(UnicodeDecodeError):
            content.decode()


@pytest.mark.parametrize(
    "content",
    ["", "{", "NaN", "[Infinity]", "[" * 100_000, "[" * 21 + "]" * 21, b"\xff\xfe1"],
)
def test_json_that_cannot_be_kept_is_refused_in_one_way(content):
    with pytest.raises(ValueError):
        read_json(content)


@pytest.mark.parametrize("digits", ["9" * 21, "-" + "9" * 5000, "1e999", "-1e400"])
def test_a_number_that_cannot_be_kept_stays_the_text_it_is(digits):
    assert read_json(f'{{"n": {digits}}}') == {"n": digits}


def test_a_document_may_be_as_deep_as_ours_are_and_deeper():
    assert read_json("[" * DEEPEST + "1" + "]" * DEEPEST)


def test_json_from_outside_is_read_at_this_door_only():
    """What the others read is the server's own: its print queue, its schema, its backups, what it worked out."""
    of_our_own = {"accounts/text.py", "config/backups.py", "config/opening_backups.py", "routines/exchange/writing.py",
                  "routines/words_erased/list_of_erasures.py", "routines/worked_out/keeping.py"}  # fmt: skip
    of_our_own |= {f"routines/paper/{name}.py" for name in ("booklet_worker", "process", "worker")}
    apps = ("accounts", "config", "grade_bands", "routines")
    files = [path for app in apps for path in (Path(settings.BASE_DIR) / app).rglob("*.py")]
    reading = {str(path.relative_to(settings.BASE_DIR)) for path in files if "json.load" in path.read_text("utf-8")}
    assert reading <= of_our_own
