from django.db import migrations


class Migration(migrations.Migration):
    dependencies = [("accounts", "0005_forget_tried_passphrases")]

    operations = [migrations.RenameModel("SetUpTries", "CodeTries")]
