"""Take words out of everything that is kept: the database, its file, and every backup of this server."""

from django.core.management.base import BaseCommand, CommandParser, OutputWrapper

from accounts.models import User
from routines.erasing.doing import Part, StillRead, begin, finish
from routines.erasing.forms import WordsForm
from routines.erasing.looking import look_for
from routines.erasing.places import CALLED
from routines.erasing.showing import shown
from routines.words_erased.list_of_erasures import ListDamaged
from routines.words_erased.matching import Sought, mark_of


class Written:
    """Says how far it is in lines of a terminal: each part, and each backup."""

    def __init__(self, out: OutputWrapper) -> None:
        self.out, self.part, self.total = out, "", 0

    def begin_part(self, part: str, total: int) -> None:
        if part != self.part:
            self.out.write(f"{Part(part).label}.")
        self.part, self.total = part, total

    def progress(self, done: int) -> None:
        if self.part == Part.BACKUPS:
            self.out.write(f"Backup {done + 1} of {self.total}")


class Command(BaseCommand):
    help = (
        "Take words out of what anyone wrote. They are asked for and typed, so that they stand in no list of commands. "
        "With --finish, go on with removals that are not at their end, and again with those that a foreign restore undid."
    )

    def add_arguments(self, parser: CommandParser) -> None:
        parser.add_argument("--by", help="sign-in name of the administrator in whose name this is done")
        parser.add_argument("--finish", action="store_true", help="ask for no words; only go on with what was begun")

    def handle(self, *args: object, by: str | None = None, **options: bool) -> None:
        try:
            if not options["finish"]:
                self._begin(by)
            self._finish(again=options["finish"])
        except (ListDamaged, StillRead) as error:
            raise SystemExit(str(error)) from None

    def _begin(self, by: str | None) -> None:
        person = User.objects.active().filter(sign_in_name=by or "").first()
        if person is None or not person.is_administrator:
            raise SystemExit("Name an administrator: --by SIGN-IN-NAME.")
        form = WordsForm({"words": input("Words to remove: "), "whose": "all"}, person=person)
        if not form.is_valid():
            raise SystemExit(" ".join(map(str, form.errors["words"])))
        words = form.cleaned_data["words"]
        sought = Sought.in_words(words)
        found = shown(look_for(sought, whose=None), sought, reader=person, whose=None)
        for place in found.places:
            self.stdout.write(f"{place.texts or place.followers} in {place.called}: {', '.join(place.spelt)}")
        if not found.texts:
            self.stdout.write("They stand in no text of the database; its file and the backups are written anew.")
        if input("Remove them for good? Type yes: ").strip().casefold() != "yes":
            raise SystemExit("Nothing was changed.")
        begin(*mark_of(words), by=person, places=list(CALLED), whose=None)

    def _finish(self, *, again: bool) -> None:
        failed = finish(Written(self.stdout), again=again)
        for name in failed:
            self.stdout.write(f"Could not be written anew, and may hold the words: {name}")
        self.stdout.write("Done.")
