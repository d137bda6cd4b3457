"""How every form of the app is drawn, and what it says of a text that is too long."""

from django.core.validators import MaxLengthValidator
from django.forms.renderers import TemplatesSetting
from django.utils.translation import gettext_lazy as _


class FieldRenderer(TemplatesSetting):
    form_template_name = "forms/form.html"
    field_template_name = "forms/field.html"


def say_limits_plainly() -> None:
    """One sentence for every field with a limit, where the field has none of its own."""
    MaxLengthValidator.message = _("Shorten this to %(limit_value)d characters; it has %(show_value)d.")
