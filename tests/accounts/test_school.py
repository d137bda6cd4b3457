"""The one school."""

import pytest
from django.core.exceptions import ValidationError
from django.db import IntegrityError

from accounts.models import School
from tests.factories import SchoolFactory

pytestmark = pytest.mark.django_db


def test_there_is_room_for_one_school_only():
    SchoolFactory()
    with pytest.raises(IntegrityError):
        SchoolFactory(pk=2)


def test_current_is_that_school():
    school = SchoolFactory()
    assert School.objects.current() == school


def test_before_set_up_there_is_none():
    with pytest.raises(School.DoesNotExist):
        School.objects.current()


def test_the_two_marks_must_differ():
    with pytest.raises(IntegrityError):
        SchoolFactory(decimal_mark=",", thousands=",")


def test_an_unknown_time_zone_is_refused():
    with pytest.raises(ValidationError) as refused:
        SchoolFactory.build(time_zone="Mars/Olympus").full_clean()
    assert "time_zone" in refused.value.message_dict
