"""Every field with a limit says so plainly, and lets the browser cut nothing."""

import pytest
from django import forms
from django.urls import URLPattern, get_resolver
from django.utils.module_loading import import_string

from accounts.forms import InviteForm, PassphraseField
from accounts.models import User
from routines.bank.forms.note import NoteForm


def all_forms(parent: type[forms.BaseForm] = forms.BaseForm) -> set[type[forms.BaseForm]]:
    found = {child for child in parent.__subclasses__() if child.__module__.partition(".")[0] in OURS}
    return found.union(*[all_forms(child) for child in parent.__subclasses__()])


OURS = ("accounts", "grade_bands", "routines")


def limited_fields() -> list[tuple[str, forms.CharField]]:
    assert get_resolver().url_patterns, URLPattern  # every view, and so every form, is imported
    import_string("config.urls.urlpatterns")
    return [
        (f"{form.__module__}.{form.__qualname__}.{name}", field)
        for form in sorted(all_forms(), key=lambda form: form.__qualname__)
        for name, field in form.base_fields.items()
        if isinstance(field, forms.CharField) and field.max_length
    ]


def test_every_limit_is_a_plain_sentence():
    limited = limited_fields()
    assert len(limited) > 40
    for name, field in limited:
        with pytest.raises(forms.ValidationError) as refused:
            field.run_validators("w" * (field.max_length + 1))
        sentence = " ".join(refused.value.messages)
        assert "Ensure this value" not in sentence, name
        assert "characters" in sentence or "letters" in sentence, f"{name}: {sentence}"


def test_no_field_is_cut_by_the_browser():
    for name, field in limited_fields():
        form = type("Of", (forms.Form,), {"field": field})()
        assert "maxlength" not in str(form["field"]), name
        told = (
            "" if isinstance(field, PassphraseField) else f'data-limit="{field.max_length}"'
        )  # none is typed that long
        assert told in str(form["field"]), name


def test_a_note_too_long_says_by_how_much():
    assert NoteForm({"text": "x" * 2001}).errors["text"] == ["Shorten this to 2000 characters; it has 2001."]


@pytest.mark.django_db
def test_a_name_too_long_for_an_invitation_stays_in_its_field(visit, administrator):
    long = "Lee " * 30
    assert InviteForm({"display_name": long, "role": User.Role.TEACHER}).errors["display_name"]
    answer = visit(administrator).post("/school/people/invite/", {"display_name": long, "role": "teacher"})
    assert answer.status_code == 422
    assert long in answer.text
