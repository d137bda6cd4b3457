"""The routines app: the bank, plans, lessons, prints and coverage; who does which kind of work beside the pages."""

from django.apps import AppConfig
from django.utils.translation import gettext as _


class RoutinesConfig(AppConfig):
    name = "routines"
    default_auto_field = "django.db.models.BigAutoField"

    def ready(self) -> None:
        from routines.erasing.doing import make_erasing
        from routines.erasing.look_jobs import make_look
        from routines.exchange.importing import add_all
        from routines.jobs.runner import Work, works
        from routines.models import Job
        from routines.own_words.making import make_words
        from routines.paper.booklet_jobs import make_booklet, writing

        works[Job.Kind.BOOKLET] = Work(
            make_booklet, writing.give_up, _("The booklet could not be made. Try it with fewer counts.")
        )
        works[Job.Kind.IMPORT] = Work(add_all, lambda: None, _("Adding stopped here. What was added stays."))
        works[Job.Kind.LOOKING] = Work(
            make_look, lambda: None, _("The search stopped in the middle. Nothing was changed.")
        )
        works[Job.Kind.ERASING] = Work(
            make_erasing, lambda: None, _("It stopped in the middle, and some words may be left.")
        )
        works[Job.Kind.OWN_WORDS] = Work(
            make_words, lambda: None, _("Your words could not be put together. Try again.")
        )
