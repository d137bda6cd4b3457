"""Print the code for the set-up page; nothing once the school is set up."""

from django.core.management.base import BaseCommand

from accounts.models import School
from accounts.set_up_code import set_up_code


class Command(BaseCommand):
    help = __doc__

    def handle(self, *args: object, **options: object) -> None:
        if not School.objects.exists():
            self.stdout.write(set_up_code())
