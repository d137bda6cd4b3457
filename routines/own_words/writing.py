"""Somebody's words as files: a page to read, a table, and everything as it is kept."""

import json
import zipfile
from collections.abc import Callable, Iterator
from contextlib import ExitStack
from datetime import date, datetime
from tempfile import TemporaryFile
from typing import IO, Any

from django.template.loader import render_to_string
from django.utils import timezone
from django.utils.translation import gettext as _

from accounts.models import School, User
from accounts.spreadsheets import table_csv
from routines.exchange.writing import written as written_counts
from routines.models import RoutineVersion, UnreadablePlan
from routines.models.plan_document import Plan

from .gathering import Written, called, words_of

FORMAT, VERSION = "countfold-words", 1
PAGE, TABLE, EVERYTHING, COUNTS = "words.html", "words.csv", "words.json", "counts.json"


def write_words(
    target: IO[bytes], *, person: User, school: School, on_rows: Callable[[int], None] = lambda rows: None
) -> None:
    """Write all that this person wrote as a zip of four files. on_rows: told how many rows were read since.

    Rows are read once and go to the disk as they come, so that memory stays the same however much there is.
    """
    with ExitStack() as open_files, zipfile.ZipFile(target, "w", zipfile.ZIP_DEFLATED) as archive:
        page, table, everything = (open_files.enter_context(TemporaryFile()) for _number in range(3))
        head = {"format": FORMAT, "version": VERSION, "person": person.sign_in_name, "school": school.name}
        made_at = timezone.localtime()
        context = {"person": person, "school": school, "made_at": made_at}
        _put(page, render_to_string("own_words/words_head.html", context))
        _put(table, "\ufeff" + table_csv([[_("What"), _("About"), _("When"), _("Place"), _("Words")]]))
        _put(everything, json.dumps({**head, "made_at": made_at.isoformat()})[:-1] + ', "words": [\n')
        column, about, between = "", ("", ""), ""
        for rows, some in words_of(person):
            for one in some:
                _put(everything, between + json.dumps(_whole(one), ensure_ascii=False))
                between = ",\n"
                if not one.texts:
                    continue
                shown = {"one": one, "new_column": one.column != column, "called": called(one.column)}
                shown["new_about"] = shown["new_column"] or (one.about, _day(one.at)) != about
                column, about = one.column, (one.about, _day(one.at))
                _put(page, render_to_string("own_words/_words_of_one.html", shown))
                _put(table, table_csv(_in_the_table(one)))
            on_rows(rows)
        _put(page, render_to_string("own_words/words_foot.html"))
        _put(everything, "\n]}\n")
        for name, file in ((PAGE, page), (TABLE, table), (EVERYTHING, everything)):
            _pack(archive, name, file)
        counts = list(newest_counts(person))
        if counts:
            archive.writestr(COUNTS, written_counts(counts))


def newest_counts(person: User) -> Iterator[Plan]:
    """Her newest save of each count, as far as it can be read: what another school can bring in."""
    versions = RoutineVersion.objects.filter(by=person).order_by("routine", "-number")
    last = None
    for version in versions.iterator():
        if version.routine_id != last:
            last = version.routine_id
            try:
                yield version.read_plan()
            except UnreadablePlan:
                continue


def _put(file: IO[bytes], text: str) -> None:
    file.write(text.encode())


def _pack(archive: zipfile.ZipFile, name: str, file: IO[bytes]) -> None:
    file.seek(0)
    with archive.open(name, "w") as packed:
        while part := file.read(1024 * 1024):
            packed.write(part)


def _in_the_table(one: Written) -> list[list[str]]:
    return [[called(one.column), one.about, _day(one.at), place, text] for place, text in one.texts]


def _whole(one: Written) -> dict[str, Any]:
    return {"kept_in": one.column, "about": one.about, "at": one.at and one.at.isoformat(), "value": one.value}


def _day(at: datetime | date | None) -> str:
    if at is None:
        return ""
    return (timezone.localtime(at) if isinstance(at, datetime) else at).strftime("%Y-%m-%d")
