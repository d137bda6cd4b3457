"""Reading standards: the bundled Common Core table, or a school's own file."""

import csv
from collections.abc import Iterable
from dataclasses import dataclass
from pathlib import Path

from django.conf import settings
from django.utils.module_loading import import_string
from django.utils.translation import gettext as _

from .models import Area, Standard
from .models.standard import LONGEST

COMMON_CORE = "Common Core State Standards for Mathematics"
COMMON_CORE_FILE = Path(__file__).parent / "data" / "standards.csv"

# Required by the standards' Public License wherever the codes are listed. The summaries are our own wording.
COMMON_CORE_NOTICE = (
    "© Copyright 2010. National Governors Association Center for Best Practices and Council of Chief State School "
    "Officers. All rights reserved."
)

NEEDED = ("code", "area", "summary")
MOST_ROWS = 2_000  # each is held against a count when standards are suggested for it
AREA_BY_NAME = {name: area for area in Area for name in (area.value, area.label)}


class StandardsFileError(ValueError):
    """A file of standards that can't be read; the message says which line and what to do."""


@dataclass(frozen=True, slots=True)
class StandardRow:
    code: str
    grade: str
    area: Area
    summary: str
    number_limits: str
    count_features: str


def read_standards(lines: Iterable[str]) -> list[StandardRow]:
    """Read a CSV file with the columns code, area, summary and, if wanted, grade, number_limits, count_features.

    Raises: StandardsFileError with the line and what to do.
    """
    reader = csv.DictReader(lines, restkey="too_many", restval="")
    try:
        return read_rows(reader)
    except csv.Error:  # a cell of over 131,072 characters: a quotation mark that is never closed, as a rule
        raise StandardsFileError(
            _("Line %(line)s can't be read as CSV. Look for a quotation mark there that is not closed.")
            % {"line": reader.line_num + 1}
        ) from None


def read_rows(reader: "csv.DictReader[str]") -> list[StandardRow]:
    missing = [name for name in NEEDED if name not in (reader.fieldnames or ())]
    if missing:
        raise StandardsFileError(
            _("The first line must name the columns; add %(columns)s.") % {"columns": ", ".join(missing)}
        )
    rows: list[StandardRow] = []
    seen: set[str] = set()
    for record in reader:
        row = read_row(record, line=reader.line_num)
        if row.code in seen:
            raise StandardsFileError(
                _("Line %(line)s: %(code)s is there twice. Keep one.") % {"line": reader.line_num, "code": row.code}
            )
        seen.add(row.code)
        rows.append(row)
        if len(rows) > MOST_ROWS:
            raise StandardsFileError(
                _("This file has over %(most)s standards. Keep those of the grades you teach.")
                % {"most": f"{MOST_ROWS:,}"}
            )
    if not rows:
        raise StandardsFileError(_("The file has no standards under its first line."))
    return rows


def read_row(record: dict[str, str], *, line: int) -> StandardRow:
    if "too_many" in record:
        raise StandardsFileError(
            _("Line %(line)s has more cells than the first. Put texts with commas in quotes.") % {"line": line}
        )
    fields = {name: record.get(name, "").strip() for name in StandardRow.__dataclass_fields__}
    for name in NEEDED:
        if not fields[name]:
            raise StandardsFileError(_("Line %(line)s: fill in %(name)s.") % {"line": line, "name": name})
    area = AREA_BY_NAME.get(fields["area"].lower())
    if area is None:
        raise StandardsFileError(
            _("Line %(line)s: “%(area)s” is no area. Use one of: %(areas)s.")
            % {"line": line, "area": fields["area"][:40], "areas": ", ".join(map(str, Area.labels))}
        )
    for name, longest in LONGEST.items():
        if len(fields[name]) > longest:
            raise StandardsFileError(
                _("Line %(line)s: shorten %(name)s to %(most)s characters.")
                % {"line": line, "name": name, "most": longest}
            )
    if why := why_unreadable(fields["count_features"]):
        raise StandardsFileError(_("Line %(line)s, count_features: %(why)s") % {"line": line, "why": why})
    return StandardRow(
        code=fields["code"],
        grade=fields["grade"],
        area=area,
        summary=fields["summary"],
        number_limits=fields["number_limits"],
        count_features=fields["count_features"],
    )


def why_unreadable(count_features: str) -> str:
    """What keeps a standard's features from being read, in a sentence; "" where they can be, or where there are none.

    Who reads them is not known here: the settings say (COUNT_FEATURES_FAULT), for counting lies further up.
    """
    if not count_features.strip():
        return ""
    return str(import_string(settings.COUNT_FEATURES_FAULT)(count_features))


def unreadable(standards: Iterable[Standard]) -> list[tuple[Standard, str]]:
    """Those whose features cannot be read, each with the reason. They were stored before features were checked."""
    return [(standard, why) for standard in standards if (why := why_unreadable(standard.count_features))]


def common_core() -> list[StandardRow]:
    """The bundled table."""
    with COMMON_CORE_FILE.open(encoding="utf-8", newline="") as file:
        return read_standards(file)
