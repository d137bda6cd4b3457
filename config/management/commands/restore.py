"""Put a backup back."""

from pathlib import Path

from django.core.management.base import BaseCommand, CommandParser

from config import backups
from config.opening_backups import BackupRefused


class Command(BaseCommand):
    help = __doc__

    def add_arguments(self, parser: CommandParser) -> None:
        parser.add_argument("file", type=Path)
        parser.add_argument("--from-another-server", action="store_true")

    def handle(self, *args: object, file: Path, from_another_server: bool, **options: object) -> None:
        if not backups.on_this_database():
            raise SystemExit("This database is PostgreSQL: use pg_restore, as DEVELOPERS.md says.")
        try:
            restored = backups.restore(file, from_another_server=from_another_server)
        except BackupRefused as refusal:
            raise SystemExit(str(refusal)) from None
        self.stdout.write(f"Restored from {file.name}. Everyone signs in again.")
        if restored.kept:
            self.stdout.write(f"What was there until now is kept: {restored.kept}")
        if restored.damaged:
            self.stdout.write(
                f"What was there was damaged; its files are in {restored.damaged}. Start the server again."
            )
