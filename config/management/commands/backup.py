"""Write a backup of the SQLite database now."""

from django.core.management.base import BaseCommand

from config import backups


class Command(BaseCommand):
    help = __doc__

    def handle(self, *args: object, **options: object) -> None:
        if not backups.on_this_database():
            raise SystemExit("This database is PostgreSQL: use pg_dump, as DEVELOPERS.md says.")
        failure = backups.try_to_write_backup()
        if failure:
            raise SystemExit(failure)
        self.stdout.write(f"Written: {backups.kept_backups()[0]}")
