"""Take words out of everything that is kept: the database, its file, and every backup of this server."""

from typing import Any

from django.core.management.base import BaseCommand, CommandError, CommandParser

from accounts.models import User
from routines.erasing.doing import StillRead, begin, finish
from routines.erasing.forms import WordsForm
from routines.erasing.looking import look_for
from routines.erasing.places import CALLED
from routines.words_erased.list_of_erasures import ListDamaged
from routines.words_erased.matching import Sought


class Command(BaseCommand):
    help = (
        "Take words out of what anyone wrote. They are asked for and typed, so that they stand in no list of commands. "
        "With --finish, go on with removals that are not at their end, and again with those that a foreign restore undid."
    )

    def add_arguments(self, parser: CommandParser) -> None:
        parser.add_argument("--by", help="sign-in name of the administrator in whose name this is done")
        parser.add_argument("--finish", action="store_true", help="ask for no words; only go on with what was begun")

    def handle(self, *args: object, by: str | None = None, **options: Any) -> None:
        try:
            if not options["finish"]:
                self._begin(by)
            self._finish(again=options["finish"])
        except (ListDamaged, StillRead) as error:
            raise CommandError(str(error)) from None

    def _begin(self, by: str | None) -> None:
        person = User.objects.active().filter(sign_in_name=by or "").first()
        if person is None or not person.is_administrator:
            raise CommandError("Name an administrator: --by SIGN-IN-NAME.")
        form = WordsForm({"words": input("Words to remove: "), "whose": "all"}, person=person)
        if not form.is_valid():
            raise CommandError(" ".join(map(str, form.errors["words"])))
        found = look_for(Sought.in_words(form.cleaned_data["words"]), reader=person, whose=None)
        for place in found.places:
            self.stdout.write(f"{place.texts or place.followers} in {place.called}: {', '.join(place.forms)}")
        if not found.texts:
            self.stdout.write("They stand in no text of the database; its file and the backups are written anew.")
        if input("Remove them for good? Type yes: ").strip().casefold() != "yes":
            raise CommandError("Nothing was changed.")
        begin(form.cleaned_data["words"], by=person, places=list(CALLED), whose=None)

    def _finish(self, *, again: bool) -> None:
        failed = finish(lambda done, total: self.stdout.write(f"Backup {done + 1} of {total}"), again=again)
        for name in failed:
            self.stdout.write(f"Could not be written anew, and may hold the words: {name}")
        self.stdout.write("Done.")
