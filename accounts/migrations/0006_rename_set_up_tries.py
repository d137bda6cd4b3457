from django.db import migrations


class Migration(migrations.Migration):
    # The renaming of a model looks the model up among the content types, backwards too.
    dependencies = [
        ("accounts", "0005_forget_tried_passphrases"),
        ("contenttypes", "0002_remove_content_type_name"),
    ]

    operations = [migrations.RenameModel("SetUpTries", "CodeTries")]
