"""Which words to take out, from whose texts, and from which places."""

from typing import Any

from django import forms
from django.utils.translation import gettext
from django.utils.translation import gettext_lazy as _

from accounts.models import User
from routines.erasing.places import CALLED
from routines.words_erased.matching import MOST_WORDS, words_of

SHORTEST, LONGEST = 2, 80


class WordsForm(forms.Form):
    words = forms.CharField(
        label=_("Words to remove"),
        min_length=SHORTEST,
        max_length=LONGEST,
        help_text=_(
            "A name, or a few words in a row. Capitals and what stands between the words do not matter; accents do."
        ),
        widget=forms.TextInput(attrs={"autocomplete": "off", "spellcheck": "false"}),
    )
    whose = forms.ChoiceField(
        label=_("In whose texts"),
        choices=[("mine", _("In what I wrote")), ("all", _("In what anyone wrote"))],
        initial="mine",
        required=False,
    )

    def __init__(self, *args: Any, person: User, **kwargs: Any) -> None:
        super().__init__(*args, **kwargs)
        self.person = person
        if not person.is_administrator:
            del self.fields["whose"]

    def clean_words(self) -> str:
        words: str = self.cleaned_data["words"]
        found = words_of(words)
        if not any(sign.isalpha() for sign in words):
            raise forms.ValidationError(gettext("Type at least one letter: numbers alone are what counts are made of."))
        if sum(len(word) for word, _, _ in found) < SHORTEST:
            raise forms.ValidationError(gettext("Type at least %(least)s letters.") % {"least": SHORTEST})
        if len(found) > MOST_WORDS:
            raise forms.ValidationError(gettext("Type at most %(most)s words at a time.") % {"most": MOST_WORDS})
        return words

    @property
    def whose_texts(self) -> int | None:
        """The one person whose texts are meant; None for everybody's, which only an administrator may ask for."""
        everybody = self.person.is_administrator and self.cleaned_data.get("whose") == "all"
        return None if everybody else self.person.pk


class PlacesForm(forms.Form):
    places = forms.MultipleChoiceField(
        choices=list(CALLED.items()),
        error_messages={"required": _("Tick at least one place, or leave everything as it is.")},
    )
