"""Targets that lessons kept so far say were seen: as rows, so that coverage counts them without the log being opened."""

from django.db import migrations
from django.db.backends.base.schema import BaseDatabaseSchemaEditor
from django.db.migrations.state import StateApps


def read_from_events(apps: StateApps, schema_editor: BaseDatabaseSchemaEditor) -> None:
    Lesson = apps.get_model("routines", "Lesson")
    LessonEvent = apps.get_model("routines", "LessonEvent")
    TargetOutcome = apps.get_model("routines", "TargetOutcome")
    told = LessonEvent.objects.filter(kind="target", erased=False)
    lessons = Lesson.objects.filter(deleted_at=None, pk__in=told.values("lesson")).select_related("version")
    for lesson in lessons.iterator(chunk_size=200):
        about = LessonEvent.objects.filter(lesson=lesson, erased=False, kind__in=("target", "undo"))
        events = sorted(about, key=lambda event: (event.t, event.device, str(event.pk)))
        undone = {event.data["event"] for event in events if event.kind == "undo"}
        targets = [event for event in events if event.kind == "target"]
        seen = {event.data["position"]: event.data["seen"] for event in targets if str(event.pk) not in undone}
        try:
            families = [str(target["claim"]["family"]) for target in lesson.version.plan.get("targets") or []]
        except (KeyError, TypeError):  # a damaged plan names none
            families = []
        TargetOutcome.objects.filter(lesson=lesson, position__in={event.data["position"] for event in targets}).delete()
        TargetOutcome.objects.bulk_create(
            TargetOutcome(lesson=lesson, position=position, family=families[position], seen=said)
            for position, said in sorted(seen.items())
            if said and position < len(families)
        )


class Migration(migrations.Migration):
    dependencies = [("routines", "0009_job_erasing")]

    operations = [migrations.RunPython(read_from_events, migrations.RunPython.noop)]
