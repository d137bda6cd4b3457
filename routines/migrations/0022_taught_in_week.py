"""What each grade had in each week, added up of its days, for a school that has lessons already."""

import django.db.models.deletion
from django.db import migrations, models
from django.db.backends.base.schema import BaseDatabaseSchemaEditor
from django.db.migrations.state import StateApps
from django.db.models import Sum

NUMBERS = (
    "lessons",
    *(f"{audience}_{said}" for audience in ("team", "coach") for said in ("seen", "not_yet", "not_recorded")),
)


def fill(apps: StateApps, schema_editor: BaseDatabaseSchemaEditor | None) -> None:
    TaughtOn, TaughtInWeek = (apps.get_model("routines", name) for name in ("TaughtOn", "TaughtInWeek"))
    weeks = TaughtOn.objects.order_by().values("year_id", "grade_id", "area", "monday")
    sums = {name: Sum(name) for name in NUMBERS}
    TaughtInWeek.objects.bulk_create((TaughtInWeek(**week) for week in weeks.annotate(**sums)), batch_size=2000)


class Migration(migrations.Migration):

    dependencies = [
        ('grade_bands', '0002_terms'),
        ('routines', '0021_fill_what_was_said_of_targets'),
    ]

    operations = [
        migrations.CreateModel(
            name='TaughtInWeek',
            fields=[
                ('id', models.BigAutoField(auto_created=True, primary_key=True, serialize=False, verbose_name='ID')),
                ('area', models.CharField(choices=[('whole', 'whole numbers'), ('integers', 'integers'), ('decimals', 'decimals'), ('fractions', 'fractions'), ('ratios', 'ratios'), ('measurement', 'measurement'), ('money', 'money'), ('time', 'time')], max_length=12)),
                ('monday', models.DateField()),
                ('lessons', models.PositiveIntegerField(default=0)),
                ('team_seen', models.PositiveIntegerField(default=0)),
                ('team_not_yet', models.PositiveIntegerField(default=0)),
                ('team_not_recorded', models.PositiveIntegerField(default=0)),
                ('coach_seen', models.PositiveIntegerField(default=0)),
                ('coach_not_yet', models.PositiveIntegerField(default=0)),
                ('coach_not_recorded', models.PositiveIntegerField(default=0)),
                ('grade', models.ForeignKey(db_index=False, on_delete=django.db.models.deletion.CASCADE, related_name='+', to='grade_bands.grade')),
                ('year', models.ForeignKey(db_index=False, on_delete=django.db.models.deletion.CASCADE, related_name='+', to='grade_bands.schoolyear')),
            ],
            options={
                'indexes': [models.Index(fields=['year', 'grade', 'monday', 'area', 'lessons', 'team_seen', 'team_not_yet', 'team_not_recorded', 'coach_seen', 'coach_not_yet', 'coach_not_recorded'], name='taughtinweek_of_grade')],
                'constraints': [models.UniqueConstraint(fields=('year', 'grade', 'area', 'monday'), name='taughtinweek_once')],
            },
        ),
        migrations.RunPython(fill, migrations.RunPython.noop),
    ]
