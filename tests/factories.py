"""Rows for tests. No random values: what a test is about, it says."""

from datetime import date

import factory
from django.contrib.auth.hashers import make_password

from accounts.models import School, User
from grade_bands.models import ClassGroup, Grade, GradeBand, SchoolYear, Standard


class SchoolFactory(factory.django.DjangoModelFactory):
    class Meta:
        model = School

    pk = 1
    name = "Larkfield School"
    time_zone = "America/Chicago"


class UserFactory(factory.django.DjangoModelFactory):
    """A teacher, who signs in only by the test client unless the test gives a `passphrase`."""

    class Meta:
        model = User

    class Params:
        passphrase = None
        coach = factory.Trait(role=User.Role.COACH)
        administrator = factory.Trait(role=User.Role.ADMINISTRATOR)

    sign_in_name = factory.Sequence(lambda n: f"person{n}")
    display_name = factory.Sequence(lambda n: f"Person {n}")
    role = User.Role.TEACHER
    password = factory.LazyAttribute(lambda person: make_password(person.passphrase))


class GradeBandFactory(factory.django.DjangoModelFactory):
    class Meta:
        model = GradeBand

    name = factory.Sequence(lambda n: f"Band {n}")
    order = factory.Sequence(lambda n: 20 + n)


class GradeFactory(factory.django.DjangoModelFactory):
    class Meta:
        model = Grade

    name = factory.Sequence(lambda n: f"G{n}")
    order = factory.Sequence(lambda n: 20 + n)
    level = 3
    band = factory.SubFactory(GradeBandFactory)
    areas = factory.LazyFunction(lambda: ["whole"])


class StandardFactory(factory.django.DjangoModelFactory):
    class Meta:
        model = Standard

    framework = "Larkfield scheme"
    code = factory.Sequence(lambda n: f"LS.{n}")
    grade = factory.SubFactory(GradeFactory)
    area = "whole"
    summary = "Count on by equal steps."


class SchoolYearFactory(factory.django.DjangoModelFactory):
    class Meta:
        model = SchoolYear
        django_get_or_create = ("starts_on",)

    name = "2026-27"
    starts_on = date(2026, 8, 17)
    ends_on = date(2027, 6, 18)


class ClassGroupFactory(factory.django.DjangoModelFactory):
    class Meta:
        model = ClassGroup
        skip_postgeneration_save = True

    name = factory.Sequence(lambda n: f"Class {n}")
    grade = factory.SubFactory(GradeFactory)
    year = factory.SubFactory(SchoolYearFactory)
    languages = factory.LazyFunction(lambda: ["en"])

    @factory.post_generation
    def teachers(self, create, given, **kwargs) -> None:
        self.teachers.set(given or ())
