"""The forms of two pages share what a menu offers as long as it is the same, and nothing of what one of them was given."""

from django.utils.datastructures import MultiValueDict

from grade_bands.models import Grade
from routines.plans.forms.count import StyleForm
from routines.plans.forms.plan import AboutForm

FIRST, SECOND = ([Grade(name=name, level=3)] for name in ("3 morning", "3 noon"))


def offered(form: AboutForm, name: str = "grade") -> list[str]:
    field = form.fields[name]
    assert field.choices == field.widget.choices
    return [value for value, _ in field.choices]


def test_what_one_form_offers_no_other_does():
    one, other = AboutForm(MultiValueDict(), FIRST), AboutForm(MultiValueDict(), SECOND)
    assert (offered(one), offered(other)) == (["3 morning"], ["3 noon"])
    assert AboutForm.base_fields["grade"].choices == []
    assert str(one["grade"]).count("<option") == 1
    assert "3 morning" in str(one["grade"])
    assert "3 morning" not in str(other["grade"])


def test_what_all_forms_offer_stays_whole():
    one, other = AboutForm(MultiValueDict(), FIRST), AboutForm(MultiValueDict(), SECOND)
    assert offered(one, "area") == offered(other, "area") != []
    assert str(one["area"]) == str(other["area"])


def test_a_kind_of_number_offers_its_own_style_to_its_form_alone():
    money, whole = (StyleForm(MultiValueDict({"kind": [kind]}), kind) for kind in ("money", "whole"))
    again = StyleForm(MultiValueDict({"kind": ["whole"]}), "whole")
    for name in whole.fields:
        assert str(whole[name]) == str(again[name])
    money.fields["shape"].widget.attrs["class"] = "wide"
    assert "wide" not in str(StyleForm(MultiValueDict(), "fraction")["shape"])
