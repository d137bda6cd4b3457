import django.core.validators
from django.db import migrations, models

import accounts.models.folded_text


class Migration(migrations.Migration):
    dependencies = [("accounts", "0003_fold_sign_in_names")]

    operations = [
        migrations.RemoveConstraint(model_name="user", name="user_sign_in_name_unique_any_case"),
        migrations.RemoveConstraint(model_name="user", name="user_email_unique_any_case"),
        migrations.AlterField(
            model_name="user",
            name="sign_in_name",
            field=accounts.models.folded_text.FoldedCharField(
                error_messages={"unique": "Someone already signs in with this name. Choose another."},
                max_length=40,
                unique=True,
                validators=[
                    django.core.validators.RegexValidator("^[\\w.-]+$", "Use letters, digits, dots and hyphens only.")
                ],
            ),
        ),
        migrations.AlterField(
            model_name="user",
            name="email",
            field=accounts.models.folded_text.FoldedEmailField(blank=True, default="", max_length=254),
        ),
        migrations.AddConstraint(
            model_name="user",
            constraint=models.UniqueConstraint(
                condition=models.Q(("email", ""), _negated=True),
                fields=("email",),
                name="user_email_unique",
                violation_error_message="Someone already has this e-mail. Choose another or leave it empty.",
            ),
        ),
        migrations.CreateModel(
            name="SetUpTries",
            fields=[
                ("id", models.BigAutoField(auto_created=True, primary_key=True, serialize=False, verbose_name="ID")),
                ("address", models.CharField(max_length=60, unique=True)),
                ("number", models.PositiveIntegerField(default=0)),
                ("since", models.DateTimeField()),
            ],
        ),
    ]
