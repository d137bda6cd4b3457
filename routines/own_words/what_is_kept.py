"""What is kept of people's words, for how long, and who reads it: the one table of the page and of the README."""

from dataclasses import dataclass

from django.utils.functional import Promise
from django.utils.translation import gettext_lazy as _


@dataclass(frozen=True, slots=True)
class Kept:
    """columns: those of the register of people's words that this row speaks for; none for what stands outside the database."""

    what: str | Promise
    how_long: str | Promise
    who_reads: str | Promise
    columns: tuple[str, ...] = ()


def _of(model: str, *fields: str) -> tuple[str, ...]:
    return tuple(f"{model}.{field}" for field in fields)


KEPT = (
    Kept(
        _("Counts: the plan and each of its saves"),
        _("Until words are removed from them. A count that is out of the bank is kept too"),
        _(
            "In the bank: everyone in the school; its older saves those who may change it (its authors, and coaches). "
            "Drafts: their authors. Out of the bank: its authors, coaches and administrators"
        ),
        (*_of("routines.Routine", "title", "story", "search_text"), *_of("routines.RoutineVersion", "plan")),
    ),
    Kept(
        _("What is typed in a plan and not saved"),
        _("Until you save it or let go of it"),
        _("You"),
        _of("routines.PlanDraft", "fields"),
    ),
    Kept(
        _("Lessons: what was said, written and noticed"),
        _("Until you remove the lesson, or words from it"),
        _("You; on the board the class, without what you noticed; others as far as you shared that lesson"),
        _of("routines.LessonEvent", "data"),
    ),
    Kept(
        _("Reflections: what was seen, where it was hard, what comes next"),
        _("Until you change them or remove the lesson"),
        _("You; your team, or your team and the coach, where you shared that lesson. Never an administrator"),
        _of("routines.Reflection", "seen", "stuck", "next_step"),
    ),
    Kept(
        _("Your note to next year"),
        _("Until you change it or remove the lesson"),
        _("You"),
        _of("routines.Reflection", "to_next_year"),
    ),
    Kept(
        _("Notes on counts"),
        _("Until you remove them"),
        _("Everyone who may read the count"),
        _of("routines.RoutineNote", "text"),
    ),
    Kept(
        _("Suggestions: why, and by when"),
        _("Until you take them back"),
        _("You, and who they are for. That it was taken is seen by you; that it was kept or declined by nobody else"),
        _of("routines.Suggestion", "why"),
    ),
    Kept(
        _("Files of counts that you brought in"),
        _("Until you bring in another one"),
        _("You"),
        _of("routines.ImportFile", "name", "plans", "refused"),
    ),
    Kept(
        _("Booklets and files that you asked for"),
        _("An hour"),
        _("You"),
        _of("routines.Job", "title", "said"),
    ),
    Kept(
        _("Your name, the name you sign in with, your e-mail"),
        _("As long as your counts and lessons: a closed account keeps its name on them"),
        _("Your name: everyone in the school. The name you sign in with: administrators. Your e-mail: you"),
        _of("accounts.User", "display_name", "sign_in_name", "email"),
    ),
    Kept(
        _("Names of people who are invited"),
        _("The invitation works for a week; its row stays"),
        _("Administrators, while it is open"),
        _of("accounts.OneTimeLink", "display_name"),
    ),
    Kept(
        _("Names of the school, its grades, years and classes; the standards"),
        _("Until an administrator changes them"),
        _("Everyone in the school; a class is told to its grade, its teams, coaches and administrators"),
        (
            *_of("accounts.School", "name"),
            *(f"grade_bands.{model}.name" for model in ("GradeBand", "Grade", "SchoolYear", "ClassGroup")),
            *_of("grade_bands.Standard", "framework", "code", "summary", "number_limits", "count_features"),
        ),
    ),
    Kept(
        _("Your passphrase"),
        _("Until you set another"),
        _("Nobody: only a hash of it is kept"),
    ),
    Kept(
        _("Wrong tries to sign in: the name that was typed, the address and the browser of the device"),
        _("A quarter of an hour, and then until somebody signs in or tries to"),
        _("Nobody: they slow guessing down"),
    ),
    Kept(
        _("Events of a lesson, in the browser that wrote them"),
        _("Fourteen days after the server has them"),
        _("Who uses that browser under the same name"),
    ),
    Kept(
        _("Backups of all of this on the server"),
        _(
            "Fourteen: the newest seven, and one of each day before these. "
            "Words that are removed are taken out of them too"
        ),
        _("Whoever runs the server"),
    ),
    Kept(
        _("The list of removed words"),
        _("For good, so that an older backup does not bring them back"),
        _("Nobody: it holds keyed hashes, no words"),
    ),
)
