"""How every form of the app is drawn: one template for a field, one for a form."""

from django.forms.renderers import TemplatesSetting


class FieldRenderer(TemplatesSetting):
    form_template_name = "forms/form.html"
    field_template_name = "forms/field.html"
