"""Whatever a teacher typed, the plan is printed, and the words that the print's letters can write are in it."""

from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from accounts.text import mended
from tests.accounts.test_text import ANY_TEXT, ODD
from tests.routines.making import make_routine

FEW = settings(max_examples=6, suppress_health_check=[HealthCheck.function_scoped_fixture])
LETTERS = "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789áéñü¿½"
UNSEEN = "".join(
    sign for sign in ODD if not "\ud800" <= sign <= "\udfff"
)  # two halves may make a sign without a letter
WORD = st.text(st.sampled_from(LETTERS + UNSEEN), min_size=1, max_size=8)


@FEW
@given(st.lists(WORD, min_size=1, max_size=12).map(" ".join))
def test_words_among_unseen_characters_are_printed(owner, printed, typed):
    notes = mended(typed)
    text = printed(make_routine(owner, title="Printed", notes=notes)).text()
    assert all(word in text for word in notes.split() if "\ufffd" not in word)


@FEW
@given(ANY_TEXT)
def test_any_text_is_printed(owner, printed, typed):
    """Signs that the bundled letters lack stand as boxes; how they read back is up to the reader, so it isn't asked."""
    routine = make_routine(owner, title=f"Printed {mended(typed)}"[:120].strip(), notes=mended(typed)[:2000])
    assert len(printed(routine).pdf.pages) >= 1
