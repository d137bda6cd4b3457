"""What every test shares: how hard hypothesis tries, quick passphrases, and the cast of the school."""

import os
from collections import Counter
from collections.abc import Callable, Iterator
from functools import partial

import pytest
from django.core.exceptions import EmptyResultSet
from django.db import connection
from django.test import Client
from django.utils import timezone
from hypothesis import HealthCheck, settings

from accounts import written_once
from accounts.compiled_once import CompiledOnce, values_of
from accounts.models import School, User
from grade_bands.models import Grade, GradeBand, SchoolYear
from tests.absent import NOT_TESTED
from tests.factories import (
    ClassGroupFactory,
    GradeBandFactory,
    GradeFactory,
    SchoolFactory,
    SchoolYearFactory,
    UserFactory,
)

settings.register_profile("quick", max_examples=60, deadline=None, suppress_health_check=[HealthCheck.too_slow])
# On CI the same examples each time, so that a red run can be run again; `run.py proof` is the place for luck.
settings.register_profile("ci", parent=settings.get_profile("quick"), max_examples=100, derandomize=True)
settings.register_profile("brief", parent=settings.get_profile("ci"), max_examples=15)
settings.load_profile(os.environ.get("HYPOTHESIS_PROFILE", "quick"))


def pytest_addoption(parser) -> None:
    parser.addoption(
        "--with-database",
        action="store_true",
        help="Only tests that open the database, for a run on another one. pytest-django refuses it to all others.",
    )


def pytest_collection_modifyitems(config, items) -> None:
    if not config.getoption("--with-database"):
        return
    chosen = {item for item in items if opens_database(item)}
    config.hook.pytest_deselected(items=[item for item in items if item not in chosen])
    items[:] = [item for item in items if item in chosen]


def opens_database(item) -> bool:
    asked = {"db", "transactional_db"}
    if item.get_closest_marker("one_database"):
        return False
    return item.get_closest_marker("django_db") is not None or not asked.isdisjoint(getattr(item, "fixturenames", ()))


def pytest_terminal_summary(terminalreporter) -> None:
    """Each missing part of the machine by name. On CI a skipped test is a failed run: nothing there may be missing."""
    skipped = terminalreporter.stats.get("skipped", [])
    reasons = Counter(report.longrepr[2].removeprefix("Skipped: ") for report in skipped)
    for reason, tests in reasons.items():
        if reason.startswith(NOT_TESTED):
            terminalreporter.write_line(f"!! {reason} Left out: {tests} tests.", yellow=True)
    if skipped and os.environ.get("CI") == "true":
        terminalreporter.write_line(f"CI skips nothing, but {len(skipped)} were skipped.", red=True)


def pytest_sessionfinish(session) -> None:
    reporter = session.config.pluginmanager.get_plugin("terminalreporter")
    if reporter and reporter.stats.get("skipped") and os.environ.get("CI") == "true":
        session.exitstatus = pytest.ExitCode.TESTS_FAILED


@pytest.fixture(autouse=True)
def quick_and_plain(settings) -> None:
    """A hash that takes no time, and static files served from where they lie."""
    settings.PASSWORD_HASHERS = ["django.contrib.auth.hashers.MD5PasswordHasher"]
    settings.STATIC_ROOT = settings.BASE_DIR / "static"
    settings.STORAGES = {
        **settings.STORAGES,
        "staticfiles": {"BACKEND": "django.contrib.staticfiles.storage.StaticFilesStorage"},
    }


@pytest.fixture(autouse=True)
def compiled_queries_are_as_new(monkeypatch) -> None:
    """Whatever a test asks by a query that is compiled once, the same is written as if it were written anew."""
    ask = CompiledOnce.compiled

    def compare(query, args, options):
        kept = ask(query, args, options)
        assert as_compiled(kept, args) == written_anew(query.queryset(*args, **options)), query.__qualname__
        return kept

    monkeypatch.setattr(CompiledOnce, "compiled", compare)


def as_compiled(kept, args) -> tuple[str, tuple] | None:
    return kept and (kept.sql, kept.filled(values_of(args)))


def written_anew(queryset) -> tuple[str, tuple] | None:
    try:
        return queryset.query.get_compiler(queryset.db).as_sql()
    except EmptyResultSet:
        return None


@pytest.fixture(autouse=True)
def nothing_remembered() -> None:
    """What a process wrote in one test is not shown in the next, whose names and keys may be the same."""
    written_once.remembered.clear()
    written_once.typed_drawings.clear()


@pytest.fixture(autouse=True)
def pieces_are_as_new(monkeypatch) -> None:
    """Whatever a test is shown from memory would be written the same to the letter. What that asks is not counted."""
    give = written_once.as_kept

    def compare(text, make):
        asked = len(connection.queries_log)
        assert text.decode() == make()
        while len(connection.queries_log) > asked:
            connection.queries_log.pop()
        return give(text, make)

    monkeypatch.setattr(written_once, "as_kept", compare)


# Owner, co-author and teammate teach in one band; other_teacher in another.


@pytest.fixture
def school(db) -> Iterator[School]:
    """Its day is the tests' day, also in the hours when it is yesterday there."""
    made = SchoolFactory()
    with timezone.override(made.time_zone):
        yield made


@pytest.fixture
def year(school) -> SchoolYear:
    return SchoolYearFactory()


@pytest.fixture
def middle_band(school) -> GradeBand:
    return GradeBandFactory(name="2-3", order=2)


@pytest.fixture
def grade_two(middle_band) -> Grade:
    return GradeFactory(name="2", order=3, level=2, band=middle_band, areas=["whole", "measurement", "money", "time"])


@pytest.fixture
def grade_three(middle_band) -> Grade:
    return GradeFactory(name="3", order=4, level=3, band=middle_band, areas=["whole", "fractions", "measurement"])


@pytest.fixture
def grade_five(school) -> Grade:
    band = GradeBandFactory(name="4-5", order=3)
    return GradeFactory(name="5", order=6, level=5, band=band, areas=["whole", "decimals", "fractions"])


@pytest.fixture
def owner(grade_two, year) -> User:
    person = UserFactory(sign_in_name="owner", display_name="Owner Ota")
    ClassGroupFactory(name="2 Wren", grade=grade_two, year=year, teachers=[person])
    return person


@pytest.fixture
def co_author(grade_three, year) -> User:
    person = UserFactory(sign_in_name="co-author", display_name="Co-author Cole")
    ClassGroupFactory(name="3 Plum", grade=grade_three, year=year, teachers=[person])
    return person


@pytest.fixture
def teammate(grade_two, year) -> User:
    person = UserFactory(sign_in_name="teammate", display_name="Teammate Tao")
    ClassGroupFactory(name="2 Finch", grade=grade_two, year=year, teachers=[person])
    return person


@pytest.fixture
def other_teacher(grade_five, year) -> User:
    person = UserFactory(sign_in_name="other", display_name="Other Oyelaran")
    ClassGroupFactory(name="5 Slate", grade=grade_five, year=year, teachers=[person])
    return person


@pytest.fixture
def coach(school) -> User:
    return UserFactory(sign_in_name="coach", display_name="Coach Cruz", coach=True)


@pytest.fixture
def administrator(school) -> User:
    return UserFactory(sign_in_name="admin", display_name="Administrator Ames", administrator=True)


@pytest.fixture
def signed_out(school) -> Client:
    return Client()


@pytest.fixture
def all_through(django_capture_on_commit_callbacks):
    """Within it, what follows a save when everything is written does follow, as it does outside of tests."""
    return partial(django_capture_on_commit_callbacks, execute=True)


@pytest.fixture
def visit(school) -> Callable[[User], Client]:
    """A browser of this person's own, signed in."""

    def signed_in(person: User) -> Client:
        client = Client()
        client.force_login(person, backend="accounts.backends.NameOrEmailBackend")
        return client

    return signed_in
