"""Empty what was kept of failed tries: it held the passphrases that were typed, which are often nearly the right ones."""

from django.db import migrations
from django.db.backends.base.schema import BaseDatabaseSchemaEditor
from django.db.migrations.state import StateApps


def forget(apps: StateApps, schema_editor: BaseDatabaseSchemaEditor) -> None:
    apps.get_model("axes", "AccessAttempt").objects.update(get_data="", post_data="")


class Migration(migrations.Migration):
    dependencies = [
        ("accounts", "0004_sign_in_names_compare_alike"),
        ("axes", "0010_accessattemptexpiration"),
    ]

    operations = [migrations.RunPython(forget, migrations.RunPython.noop)]
