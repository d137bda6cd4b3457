from django.db import migrations, models


class Migration(migrations.Migration):
    dependencies = [("routines", "0006_lessons_kept_so_far")]

    operations = [
        migrations.AddIndex(
            model_name="lesson",
            index=models.Index(
                fields=["routine", "year", "class_group"],
                name="lesson_told",
                condition=models.Q(practice=False, written_at__isnull=False, deleted_at__isnull=True),
            ),
        ),
    ]
