"""Who teaches a class: those who do are ticked, others are named; so a page has everybody's names once, not for each class."""

from collections import Counter
from collections.abc import Iterable, Mapping
from typing import Any, NamedTuple

from django import forms
from django.core.exceptions import ValidationError
from django.utils.translation import gettext as _
from django.utils.translation import gettext_lazy

from accounts.models import User
from accounts.same_text import sign_in_text
from accounts.typed_numbers import typed_id

NAMED_AT_ONCE = 2  # beside those who are ticked


class Everybody:
    """Whom a page may name. `named` has each person's key and name; who shares a name has the one for signing in behind it."""

    def __init__(self, people: Iterable[User]) -> None:
        people = list(people)
        times = Counter(sign_in_text(person.display_name) for person in people)
        self._shared = {name for name, number in times.items() if number > 1}
        self.named = {person.pk: self._name(person) for person in people}
        self._keys = {sign_in_text(person.sign_in_name): person.pk for person in people}
        self._keys |= {sign_in_text(name): key for key, name in self.named.items()}

    def _name(self, person: User) -> str:
        shared = sign_in_text(person.display_name) in self._shared
        return f"{person.display_name} ({person.sign_in_name})" if shared else person.display_name

    def find(self, typed: str) -> int:
        """The key of who is meant: by name, or by the name for signing in. Raises ValidationError where nobody is."""
        name = sign_in_text(typed)
        if name in self._shared:
            raise ValidationError(
                _("More than one person is called “%(name)s”. Choose one that the field offers."),
                params={"name": typed},
                code="shared",
            )
        if name not in self._keys:
            raise ValidationError(
                _("Nobody here is called “%(name)s”. Choose a name that the field offers."),
                params={"name": typed},
                code="nobody",
            )
        return self._keys[name]


class Said(NamedTuple):
    """What a form says of who teaches: keys as sent, and names as typed."""

    ticked: list[str]
    typed: list[str]


class TeachersWidget(forms.Widget):
    template_name = "grade_bands/_teachers.html"
    use_fieldset = True
    names: Mapping[int, str] = {}
    """Those whom it ticks or lets be ticked."""

    def value_from_datadict(self, data: Any, files: Any, name: str) -> Said:
        every = getattr(data, "getlist", lambda key: data.get(key) or [])
        return Said(every(name), [text.strip() for text in every(f"{name}-named") if text.strip()])

    def value_omitted_from_data(self, data: Any, files: Any, name: str) -> bool:
        return False  # a box that is not ticked sends nothing

    def id_for_label(self, id_: str, index: str | None = None) -> str:
        return ""

    def get_context(self, name: str, value: Said, attrs: Any) -> dict[str, Any]:
        context: dict[str, Any] = super().get_context(name, None, attrs)
        context["ticks"] = [(key, words, str(key) in value.ticked) for key, words in self.names.items()]
        context["typed"] = (value.typed + [""] * NAMED_AT_ONCE)[: max(NAMED_AT_ONCE, len(value.typed))]
        return context


class TeachersField(forms.Field):
    """Cleaned, the keys of those who teach. Its page includes `grade_bands/_everybody.html` once."""

    widget = TeachersWidget

    def __init__(self, **kwargs: Any) -> None:
        words = gettext_lazy("Write a colleague’s name. The field offers everybody who is here.")
        super().__init__(**{"label": gettext_lazy("Who teaches it"), "help_text": words, "required": False, **kwargs})
        self.everybody = Everybody([])
        self._names: Mapping[int, str] = {}

    def offer(self, everybody: Everybody, now: Mapping[int, str]) -> None:
        """Let everybody be named, and those who teach it now (key and name) be ticked."""
        self.everybody = everybody
        self._names = now
        self.widget.names = now

    def prepare_value(self, value: Any) -> Said:
        """For the page: who was sent as ticked stays there to be ticked."""
        if not isinstance(value, Said):
            return Said([str(getattr(person, "pk", person)) for person in value or ()], [])
        sent = {key: self.everybody.named[key] for key in map(typed_id, value.ticked) if key in self.everybody.named}
        self.widget.names = {**self._names, **sent}
        return value

    def clean(self, value: Said) -> list[int]:
        ticked = [typed_id(text) for text in value.ticked]
        if not all(key in self.everybody.named or key in self._names for key in ticked):
            raise ValidationError(_("Choose from the list."), code="invalid_choice")
        return list(dict.fromkeys([*ticked, *map(self.everybody.find, value.typed)]))

    def has_changed(self, initial: Any, data: Any) -> bool:
        return True


def named_in(field: forms.BoundField) -> list[str]:
    """The names of those who are ticked, and those that are typed."""
    said = field.value()
    names = field.field.widget.names
    return [*(words for key, words in names.items() if str(key) in said.ticked), *said.typed]


def offer_teachers(form: forms.BaseForm, everybody: Everybody, now: Mapping[int, str]) -> None:
    """Let the field `teachers` of this form tick those who teach now, and name everybody."""
    field = form.fields["teachers"]
    assert isinstance(field, TeachersField)
    field.offer(everybody, now)
