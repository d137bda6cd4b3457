"""Marlow Bridge School: its people, bands, grades and classes. All invented; children have no names here or anywhere."""

from dataclasses import dataclass
from datetime import date, timedelta

from accounts.models import School, User
from grade_bands.models import ClassGroup, Grade, GradeBand, SchoolYear

NAME = "Marlow Bridge School"
WEEKS_SO_FAR = 13
TERMS_BEGIN = (0, 11, 22, 32)  # in weeks after the year's first day, so that today lies in the second


@dataclass(frozen=True, slots=True)
class Person:
    """`classes` are (grade, class name, languages) of this year."""

    sign_in_name: str
    display_name: str
    role: str = User.Role.TEACHER
    classes: tuple[tuple[str, str, tuple[str, ...]], ...] = ()


PEOPLE = (
    Person("calloway", "Ines Calloway", User.Role.COACH),
    Person("whitlock", "Bram Whitlock", User.Role.ADMINISTRATOR),
    Person("haddad", "Noor Haddad", classes=(("K", "K Willow", ("en",)),)),
    Person("quiroga", "Pilar Quiroga", classes=(("1", "1 Arroyo", ("en", "es")),)),
    Person("okeefe", "Finn O’Keefe", classes=(("1", "1 Bridge", ("en",)),)),
    Person("marsh", "Delia Marsh", classes=(("2", "2 Heron", ("en",)),)),
    Person("tran", "Owen Tran", classes=(("2", "2 Otter", ("en",)),)),
    Person("adeyemi", "Sam Adeyemi", classes=(("3", "3 Ferry", ("en",)),)),
    Person("lindqvist", "Greta Lindqvist", classes=(("3", "3 Mill", ("en",)),)),
    Person("mori", "Hana Mori", classes=(("4", "4 Quay", ("en",)),)),
    Person("ferrer", "Lucía Ferrer", classes=(("4", "4 Puente", ("en", "es")),)),
    Person("bell", "Marcus Bell", classes=(("5", "5 Lantern", ("en",)),)),
    Person("sorensen", "Ida Sørensen", classes=(("5", "5 Harbor", ("en",)),)),
    Person("kaya", "Yusuf Kaya", classes=(("6", "6 Beacon", ("en",)),)),
)

# (band, grades); each grade with the areas the school expects of it.
BANDS = (
    ("K-1", (("K", ("whole", "measurement")), ("1", ("whole", "measurement", "time")))),
    (
        "2-3",
        (
            ("2", ("whole", "measurement", "money", "time")),
            ("3", ("whole", "fractions", "measurement", "money", "time")),
        ),
    ),
    (
        "4-5",
        (
            ("4", ("whole", "decimals", "fractions", "measurement", "money", "time")),
            ("5", ("whole", "decimals", "fractions", "measurement")),
        ),
    ),
    ("6", (("6", ("integers", "decimals", "fractions", "ratios", "measurement")),)),
)


def make_school() -> School:
    return School.objects.create(pk=1, name=NAME, is_demo=True, languages=["en", "es"])


def make_people() -> dict[str, User]:
    """People by sign-in name. They have no passphrase: the demo signs in with one click, and in no other way."""
    people = {}
    for person in PEOPLE:
        user = User(sign_in_name=person.sign_in_name, display_name=person.display_name, role=person.role)
        user.set_unusable_password()
        user.save()
        people[person.sign_in_name] = user
    return people


def make_grades() -> dict[str, Grade]:
    grades: dict[str, Grade] = {}
    for band_order, (band_name, rows) in enumerate(BANDS):
        band = GradeBand.objects.create(name=band_name, order=band_order)
        for name, areas in rows:
            level = 0 if name == "K" else int(name)
            grades[name] = Grade.objects.create(name=name, order=len(grades), level=level, band=band, areas=list(areas))
    return grades


def make_year(today: date) -> SchoolYear:
    """A school year that is WEEKS_SO_FAR weeks old today, so that the demo never looks out of date."""
    monday = today - timedelta(days=today.weekday(), weeks=WEEKS_SO_FAR)
    ends = monday + timedelta(weeks=42)
    terms = [(monday + timedelta(weeks=weeks)).isoformat() for weeks in TERMS_BEGIN]
    name = f"{monday.year}-{ends.year}"
    return SchoolYear.objects.create(name=name, starts_on=monday, ends_on=ends, term_starts=terms)


def make_classes(people: dict[str, User], grades: dict[str, Grade], year: SchoolYear) -> dict[str, ClassGroup]:
    """Classes by name."""
    made = {}
    for person in PEOPLE:
        for grade, name, languages in person.classes:
            group = ClassGroup.objects.create(name=name, grade=grades[grade], year=year, languages=list(languages))
            group.teachers.add(people[person.sign_in_name])
            made[name] = group
    return made
