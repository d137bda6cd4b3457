"""Who has a count in the bank, for a school that has a bank already."""

import django.db.models.deletion
from django.conf import settings
from django.db import migrations, models
from django.db.backends.base.schema import BaseDatabaseSchemaEditor
from django.db.migrations.state import StateApps


def fill(apps: StateApps, schema_editor: BaseDatabaseSchemaEditor | None) -> None:
    Routine, BankOwner = (apps.get_model("routines", name) for name in ("Routine", "BankOwner"))
    owners = Routine.objects.filter(status="shared").order_by().values_list("owner_id", flat=True).distinct()
    BankOwner.objects.bulk_create(BankOwner(owner_id=owner, has_counts=True) for owner in owners)


class Migration(migrations.Migration):

    dependencies = [
        ('routines', '0022_taught_in_week'),
        migrations.swappable_dependency(settings.AUTH_USER_MODEL),
    ]

    operations = [
        migrations.CreateModel(
            name='BankOwner',
            fields=[
                ('id', models.BigAutoField(auto_created=True, primary_key=True, serialize=False, verbose_name='ID')),
                ('has_counts', models.BooleanField(default=False)),
                ('owner', models.OneToOneField(on_delete=django.db.models.deletion.CASCADE, related_name='bank_owner', to=settings.AUTH_USER_MODEL)),
            ],
        ),
        migrations.RunPython(fill, migrations.RunPython.noop),
    ]
