"""Columns for what people sign in with: stored and compared without capitals and in one Unicode form, on every database."""

from typing import TYPE_CHECKING, Any

from django.db import models

from ..same_text import sign_in_text

if TYPE_CHECKING:  # at run time Django's fields take no types
    AnyField = models.Field[str, str]
    CharField = models.CharField[str, str]
    EmailField = models.EmailField[str, str]
else:
    from django.db.models import CharField, EmailField
    from django.db.models import Field as AnyField


class FoldedText(AnyField):
    """To be put before a text field: whatever comes in, or is looked for, is folded first."""

    def to_python(self, value: Any) -> Any:
        value = super().to_python(value)
        return sign_in_text(value) if isinstance(value, str) else value

    def get_prep_value(self, value: Any) -> Any:
        value = super().get_prep_value(value)
        return sign_in_text(value) if isinstance(value, str) else value

    def pre_save(self, model_instance: models.Model, add: bool) -> Any:
        value = self.to_python(super().pre_save(model_instance, add))
        setattr(model_instance, self.attname, value)
        return value


class FoldedCharField(FoldedText, CharField):
    pass


class FoldedEmailField(FoldedText, EmailField):
    pass
