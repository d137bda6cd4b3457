"""Reading standards: the bundled Common Core table, or a school's own file."""

import csv
from collections.abc import Iterable, Iterator, Sequence
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


MOST_FAULTS = 20  # named at once; whoever mends so many loads the file again


class StandardsFileError(ValueError):
    """A file of standards that can't be read. `sentences` say, one each, which line and what to do."""

    def __init__(self, *sentences: str) -> None:
        super().__init__(" ".join(sentences))
        self.sentences = sentences


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

    Cells are parted by commas, or by semicolons or tabs where the first line is. Empty lines, as a spreadsheet leaves them,
    are passed over. Raises: StandardsFileError with every line that is wrong, up to MOST_FAULTS, and what to do.
    """
    given = list(lines)
    records = _records(given, next(filter(str.strip, given), ""))
    try:
        _line, first = next(records, (1, []))
    except csv.Error:
        raise StandardsFileError(_not_closed(1)) from None
    names = [name.strip().lower() for name in first]
    if missing := [name for name in NEEDED if name not in names]:
        raise StandardsFileError(
            _("The first line must name the columns; add %(columns)s.") % {"columns": ", ".join(missing)}
        )
    if twice := sorted({name for name in StandardRow.__dataclass_fields__ if names.count(name) > 1}):
        raise StandardsFileError(_("The first line names %(columns)s twice. Keep one.") % {"columns": ", ".join(twice)})
    return read_rows(names, records)


def _records(lines: Sequence[str], first: str) -> Iterator[tuple[int, list[str]]]:
    """Each record with the line it begins in, the empty ones left out. Raises: csv.Error, of which `args[0]` is that line."""
    delimiter = "," if "," in first else next((mark for mark in ";\t" if mark in first), ",")
    reader = csv.reader(lines, delimiter=delimiter, strict=True)
    begins = 1
    try:
        for cells in reader:
            if any(cell.strip() for cell in cells):
                yield begins, cells
            begins = reader.line_num + 1
    except csv.Error:  # a quotation mark that is never closed, as a rule
        raise csv.Error(begins) from None


def _not_closed(line: int) -> str:
    return _("Line %(line)s can't be read as CSV. Look for a quotation mark there that is not closed.") % {"line": line}


def read_rows(names: Sequence[str], records: Iterator[tuple[int, list[str]]]) -> list[StandardRow]:
    rows: list[StandardRow] = []
    faults: list[str] = []
    seen: dict[str, int] = {}
    try:
        for line, cells in records:
            try:
                row = read_row(names, cells, line=line)
            except StandardsFileError as error:
                faults.extend(error.sentences)
            else:
                if row.code in seen:
                    said = {"line": line, "code": row.code, "earlier": seen[row.code]}
                    faults.append(_("Line %(line)s: %(code)s is in line %(earlier)s too. Keep one.") % said)
                seen.setdefault(row.code, line)
                rows.append(row)
            if len(rows) > MOST_ROWS:
                raise StandardsFileError(
                    _("This file has over %(most)s standards. Keep those of the grades you teach.")
                    % {"most": f"{MOST_ROWS:,}"}
                )
            if len(faults) == MOST_FAULTS:
                faults.append(_("The lines after %(line)s were not looked at yet.") % {"line": line})
                break
    except csv.Error as error:
        faults.append(_not_closed(error.args[0]))
    if faults:
        raise StandardsFileError(*faults)
    if not rows:
        raise StandardsFileError(_("The file has no standards under its first line."))
    return rows


def read_row(names: Sequence[str], cells: Sequence[str], *, line: int) -> StandardRow:
    if any(cell.strip() for cell in cells[len(names) :]):
        raise StandardsFileError(
            _("Line %(line)s has more cells than the first. Put texts with commas in quotes.") % {"line": line}
        )
    record = dict(zip(names, cells, strict=False))
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
