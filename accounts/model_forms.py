"""Django's forms and fields that belong to a model, so that they can be written with it: `ModelForm[School]`.

The stubs know which model a form's `instance` is only when told so; Django itself takes no such argument at run time.
"""

from typing import TYPE_CHECKING, Self

from django import forms

__all__ = ["ModelChoiceField", "ModelForm", "ModelMultipleChoiceField"]

if TYPE_CHECKING:
    from django.forms import ModelChoiceField, ModelForm, ModelMultipleChoiceField
else:

    class _WithModel:
        def __class_getitem__(cls, model: object) -> type[Self]:
            return cls

    class ModelChoiceField(_WithModel, forms.ModelChoiceField):
        pass

    class ModelForm(_WithModel, forms.ModelForm):
        pass

    class ModelMultipleChoiceField(_WithModel, forms.ModelMultipleChoiceField):
        pass
