"""Free text beside a lesson: a text that looks as if it named a child is asked about before it is kept."""

from django import forms

from routines.names_of_children import look_like_names

A_CHILD = "a-child"
"""The code of the question."""


class NamesAskedForm(forms.Form):
    """`asked_fields` are looked through; ticking `no_names` says that the words found are not children."""

    asked_fields: tuple[str, ...] = ()
    no_names = forms.BooleanField(required=False, label="These are not children’s names; keep the text")

    def clean(self):
        cleaned = super().clean()
        if not cleaned.get("no_names"):
            for name in self.asked_fields:
                words = look_like_names(cleaned.get(name) or "")
                if words:
                    self.add_error(
                        name,
                        forms.ValidationError(
                            f"Is {' or '.join(words)} a child? Write the idea, not who said it, or tick the box below.",
                            code=A_CHILD,
                        ),
                    )
        return cleaned

    @property
    def asks_about_names(self) -> bool:
        """True when the box to say "not a child" should be shown."""
        return any(self.has_error(name, A_CHILD) for name in self.errors)
