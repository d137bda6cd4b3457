"""Make the demo school in an empty database."""

from django.conf import settings
from django.core.management.base import BaseCommand
from django.utils import timezone

from accounts.models import School
from grade_bands.actions import load_standards
from routines.demo.build import make_demo_school


class Command(BaseCommand):
    help = "Fill an empty database with an invented school. Refuses where there is a school already."

    def handle(self, *args: object, **options: object) -> None:
        if not settings.DEMO:
            raise SystemExit("The demo school is made only where COUNTFOLD_DEMO is 1.")
        if School.objects.exists():
            raise SystemExit("There is a school here already; the demo school needs an empty database.")
        make_demo_school(today=timezone.localdate(), load_standards=load_standards, told=self.stdout.write)
