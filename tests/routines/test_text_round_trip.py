"""A text that somebody typed: kept, shown, sent out as a file and read in again, whatever it holds."""

import json
from html import unescape

from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from accounts.text import mended
from routines.exchange.reading import read
from routines.models import Routine, RoutineVersion
from tests.accounts.test_text import ANY_TEXT
from tests.routines.making import make_routine

FIELDS = {"kind": "whole", "start": "4", "step": "7", "terms": "20", "line_length": "5", "fill": "across", "lead": "0"}
FIELDS |= {"grade": "2", "language": "en", "stops-0-after": "5", "expected-0-sort": "own"}
# A browser sends no halves of pairs: what it can send is what UTF-8 can hold.
SENT = ANY_TEXT.filter(lambda text: text.isascii() or not any("\ud800" <= sign <= "\udfff" for sign in text))
EACH = settings(max_examples=25, suppress_health_check=[HealthCheck.function_scoped_fixture])


def shown(text: str) -> list[str]:
    """The words of it, as a page may break its lines anywhere."""
    return unescape(text).split()


@EACH
@given(notes=SENT, question=SENT.filter(lambda text: mended(text).strip()), words=SENT)
def test_what_is_typed_is_kept_shown_sent_out_and_read_in_again(owner, visit, notes, question, words):
    browser = visit(owner)
    typed = {**FIELDS, "title": "Typed", "notes": notes, "stops-0-question": question, "expected-0-words": words}
    saved = browser.post(f"/plans/new/00000000-0000-4000-8000-{Routine.objects.count():012}/", typed)
    assert saved.status_code == (302 if len(notes) <= 2000 else 422)
    routine = Routine.objects.latest("pk")
    plan = routine.plan
    assert plan.notes == mended(notes).strip()
    assert plan.stops[0].question == mended(question).strip()
    assert [answer.words for answer in plan.expected] == ([mended(words).strip()] if mended(words).strip() else [])

    page = unescape(browser.get(f"/routines/{routine.pk}/").content.decode())
    assert all(word in page for word in plan.notes.split())
    assert all(word in page for word in shown(plan.stops[0].question))

    file = browser.get(f"/routines/{routine.pk}/file.json").content
    assert read(file, {"2"}).plans == (plan,)
    assert json.loads(file)["routines"] == [plan.as_dict()]


@EACH
@given(title=ANY_TEXT, why=ANY_TEXT, name=st.text(max_size=20))
def test_what_a_file_brings_is_kept_and_shown(owner, title, why, name):
    document = {**make_routine(owner).plan.as_dict(), "title": f"From a file {title}"[:120], "notes": why}
    document["stops"][0]["routes"] = [name]
    content = json.dumps({"format": "countfold-routines", "version": 1, "routines": [document]}).encode()
    found = read(content, {"2"})
    assert not found.refused
    (plan,) = found.plans
    assert (plan.title, plan.notes) == (mended(document["title"]).strip(), mended(why))
    version = RoutineVersion.objects.create(
        routine=Routine.objects.latest("pk"), number=2, by=owner, plan=plan.as_dict()
    )
    version.refresh_from_db()
    assert version.read_plan() == plan
