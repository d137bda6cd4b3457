"""How many counts the bank holds by grade and area, for a school that has a bank already."""

import django.db.models.deletion
from django.db import migrations, models
from django.db.backends.base.schema import BaseDatabaseSchemaEditor
from django.db.migrations.state import StateApps
from django.db.models import Count


def fill(apps: StateApps, schema_editor: BaseDatabaseSchemaEditor) -> None:
    Routine, BankTotal = (apps.get_model("routines", name) for name in ("Routine", "BankTotal"))
    cells = Routine.objects.filter(status="shared").order_by().values("grade_id", "area").annotate(counts=Count("pk"))
    BankTotal.objects.bulk_create(BankTotal(**cell) for cell in cells)


class Migration(migrations.Migration):

    dependencies = [
        ('grade_bands', '0001_grades_classes_standards'),
        ('routines', '0015_suggestion_answers'),
    ]

    operations = [
        migrations.CreateModel(
            name='BankTotal',
            fields=[
                ('id', models.BigAutoField(auto_created=True, primary_key=True, serialize=False, verbose_name='ID')),
                ('area', models.CharField(choices=[('whole', 'whole numbers'), ('integers', 'integers'), ('decimals', 'decimals'), ('fractions', 'fractions'), ('ratios', 'ratios'), ('measurement', 'measurement'), ('money', 'money'), ('time', 'time')], max_length=12)),
                ('counts', models.PositiveIntegerField(default=0)),
                ('grade', models.ForeignKey(db_index=False, on_delete=django.db.models.deletion.CASCADE, related_name='+', to='grade_bands.grade')),
            ],
        ),
        migrations.AddConstraint(
            model_name='banktotal',
            constraint=models.UniqueConstraint(fields=('grade', 'area'), name='banktotal_once'),
        ),
        migrations.RunPython(fill, migrations.RunPython.noop),
    ]
