from django.db import migrations, models


class Migration(migrations.Migration):
    dependencies = [("routines", "0002_import_file")]

    operations = [
        migrations.AddIndex(
            model_name="lesson",
            index=models.Index(fields=["routine", "year", "practice", "class_group"], name="lesson_told"),
        ),
    ]
