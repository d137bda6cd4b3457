"""Lessons kept so far: what their events say of them, so that coverage goes on counting them."""

from django.db import migrations
from django.db.backends.base.schema import BaseDatabaseSchemaEditor
from django.db.migrations.state import StateApps
from django.db.models import Max, Min, Q

WRITES = ("term.write", "term.correct")


def read_from_events(apps: StateApps, schema_editor: BaseDatabaseSchemaEditor) -> None:
    Lesson = apps.get_model("routines", "Lesson")
    lessons = Lesson.objects.annotate(
        last=Max("events__seq"),
        latest=Max("events__received_at"),
        first_written=Min("events__received_at", filter=Q(events__kind__in=WRITES)),
    )
    for lesson in lessons.iterator(chunk_size=500):
        Lesson.objects.filter(pk=lesson.pk).update(
            last_seq=lesson.last or 0, last_event_at=lesson.latest, written_at=lesson.first_written
        )


class Migration(migrations.Migration):
    dependencies = [("routines", "0005_mend_texts")]

    operations = [migrations.RunPython(read_from_events, migrations.RunPython.noop)]
