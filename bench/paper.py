"""What a print costs over bare WeasyPrint that writes the same final HTML: ratios in one run, in processor time.

Bare is `HTML(string=html).write_pdf(stylesheets=...)` with the look that was chosen, told beforehand. "kept": its style sheet
is parsed and its fonts are loaded already, as the printing process has them; "anew": it reads both for each page, as it does
by itself. "again": the same page printed a second time, over the first of these. The noise is bare against itself. Searching
for patterns and writing the HTML are not printing, and listed apart.
"""

from __future__ import annotations

import math
import os
import sys
from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from functools import partial
from pathlib import Path
from time import process_time
from typing import Any

import django

os.environ.setdefault("DJANGO_SETTINGS_MODULE", "config.settings")
django.setup()

from accounts.models import School, User
from grade_bands.models import Grade
from routines.demo.plans import PLANS
from routines.models import Routine, RoutineVersion
from routines.models.plan_document import Plan
from routines.paper.booklet import Booklet
from routines.paper.document import Document
from routines.paper.print import Wishes
from routines.paper.prints import document_of
from routines.paper.styles import BOOKLET_LOOK, LOOKS, paper_css
from routines.paper.subject import Subject
from routines.paper.worker import Press, font_css

FONTS = Path(__file__).resolve().parent.parent / "static" / "fonts"
PLANS_APART = int(os.environ.get("BENCH_PLANS_APART", "3"))
BOOKLET_COUNTS = int(os.environ.get("BENCH_COUNTS", "36"))
SCHOOL = School(name="Bench")


class Watched(Press):
    """The press, which also tells which looks it laid out, on how many pages."""

    def __init__(self) -> None:
        super().__init__(FONTS)
        self.pages: dict[str, int] = {}

    def _laid_out(self, page: Any, *sheets: str) -> Any:
        document = super()._laid_out(page, *sheets)
        self.pages[sheets[-1]] = len(document.pages)
        return document

    def chosen(self, looks: Sequence[str]) -> str:
        return next((look for look in looks if self.pages.get(look) == 1), looks[(len(looks) - 1) // 2])


@dataclass(frozen=True, slots=True)
class Row:
    """What one document took, in milliseconds: `ours` at first and `reprinted`; `bare` and `again` are the same."""

    layouts: int
    pages: int
    html: float
    ours: float
    reprinted: float
    bare: float
    anew: float
    again: float


def main() -> int:
    """Print the ratios, what is not printing, and the memory."""
    press = Watched()
    press.pdf('<html lang="en"><title>warm</title><p>warm</p></html>', paper_css("letter"), LOOKS)
    write(
        f"{'':<24}{'pages':>6}{'layouts':>9}{'ours ms':>9}{'bare ms':>9}{'kept':>7}{'again':>7}{'anew':>7}{'noise':>7}"
        f"{'the HTML ms':>13}"
    )
    for name in ("plan", "substitute"):
        made = [written(partial(sheets, name, demo.plan)) for demo in PLANS[::PLANS_APART]]
        line(f"{name}, {len(made)} plans", [measured(press, document, LOOKS, took) for document, took in made])
        write(f"  the most memory so far: {memory():.0f} MB")
    plans = [PLANS[number % len(PLANS)].plan for number in range(BOOKLET_COUNTS)]
    document, took = written(
        lambda: Booklet("Bench", [subject(plan) for plan in plans], ("plan", "substitute")).document()
    )
    line(f"booklet of {BOOKLET_COUNTS} counts", [measured(press, document, (BOOKLET_LOOK,), took)])
    write(f"  the most memory so far: {memory():.0f} MB; the process of a booklet ends with it")
    return 0


def sheets(name: str, plan: Plan) -> Document:
    return document_of(name, subject(plan), Wishes())


def subject(plan: Plan) -> Subject:
    grade = Grade(name=plan.grade, level=2)
    routine = Routine(owner=User(display_name="First"), grade=grade)
    return Subject(RoutineVersion(routine=routine, number=1, plan=plan.as_dict()), SCHOOL)


def written(make: Callable[[], Document]) -> tuple[Document, float]:
    """The document, and the milliseconds that its sheets took."""
    began = process_time()
    document = make()
    return document, 1000 * (process_time() - began)


def measured(press: Watched, document: Document, looks: Sequence[str], took: float) -> Row:
    html, css = document.html(), paper_css(document.paper)
    press.pages = {}
    ours = time_of(lambda: press.pdf(html, css, looks, document.fit))
    look = press.chosen(looks)
    layouts = len(press.pages)
    reprinted = time_of(lambda: press.pdf(html, css, looks, document.fit))
    return Row(layouts, press.pages[look], took, ours, reprinted, *bare_times(press, html, css, look))


def bare_times(press: Press, html: str, css: str, look: str) -> Iterator[float]:
    from weasyprint import CSS, HTML
    from weasyprint.text.fonts import FontConfiguration

    def bare(sheets: list[Any], fonts: Any) -> None:
        HTML(string=html).write_pdf(stylesheets=sheets, font_config=fonts, pdf_variant="pdf/ua-1")

    def anew() -> None:
        fonts = FontConfiguration()
        bare([CSS(string=text, font_config=fonts) for text in (font_css(FONTS), css, look)], fonts)

    kept = [press.css, *(press._parse(text) for text in (css, look))]
    yield time_of(lambda: bare(kept, press.configuration))
    yield time_of(anew)
    yield time_of(lambda: bare(kept, press.configuration))


def time_of(work: Callable[[], object]) -> float:
    began = process_time()
    work()
    return 1000 * (process_time() - began)


def line(name: str, rows: Sequence[Row]) -> None:
    def mean(part: str) -> float:
        return float(sum(getattr(row, part) for row in rows)) / len(rows)

    ours, bare = mean("ours"), mean("bare")
    write(
        f"{name:<24}{mean('pages'):>6.1f}{mean('layouts'):>9.1f}{ours:>9.0f}{bare:>9.0f}{ours / bare:>7.2f}"
        f"{mean('reprinted') / bare:>7.2f}"
        f"{ours / mean('anew'):>7.2f}{mean('again') / bare:>7.2f}{mean('html'):>13.0f}"
    )


def memory() -> float:
    """Megabytes; Windows does not tell."""
    if sys.platform == "win32":
        return math.nan
    import resource

    most = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss
    return most / 1024 / (1024 if sys.platform == "darwin" else 1)


def write(text: str) -> None:
    sys.stdout.write(f"{text}\n")
    sys.stdout.flush()


if __name__ == "__main__":
    raise SystemExit(main())
