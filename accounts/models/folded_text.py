"""Columns for what people sign in with: stored and compared without capitals and in one Unicode form, on every database."""

from django.db import models

from ..same_text import sign_in_text


class FoldedText(models.Field):
    """To be put before a text field: whatever comes in, or is looked for, is folded first."""

    def to_python(self, value):
        value = super().to_python(value)
        return sign_in_text(value) if isinstance(value, str) else value

    def get_prep_value(self, value):
        value = super().get_prep_value(value)
        return sign_in_text(value) if isinstance(value, str) else value

    def pre_save(self, model_instance, add):
        value = self.to_python(super().pre_save(model_instance, add))
        setattr(model_instance, self.attname, value)
        return value


class FoldedCharField(FoldedText, models.CharField):
    pass


class FoldedEmailField(FoldedText, models.EmailField):
    pass
