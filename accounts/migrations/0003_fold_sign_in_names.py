"""Fold sign-in names and e-mails that stand there as they were typed, so that they are found however they are typed."""

from django.db import migrations
from django.db.backends.base.schema import BaseDatabaseSchemaEditor
from django.db.migrations.state import StateApps

from accounts.same_text import sign_in_text

LONGEST = 40


def fold(apps: StateApps, schema_editor: BaseDatabaseSchemaEditor) -> None:
    """Of two that were told apart by capitals or by Unicode form alone, the older keeps the name, the later gets a number.

    An e-mail stays with the older of two; both still sign in with their names.
    """
    User = apps.get_model("accounts", "User")
    names: set[str] = set()
    emails: set[str] = set()
    folded = []
    for person in User.objects.order_by("pk"):
        name = free_name(sign_in_text(person.sign_in_name), names)
        email = sign_in_text(person.email)
        email = "" if email in emails else email
        names.add(name)
        emails.add(email)
        if (name, email) != (person.sign_in_name, person.email):
            folded.append((person, name, email))
    # First out of one another's way: the database compares some of them alike already.
    for person, _name, _email in folded:
        User.objects.filter(pk=person.pk).update(sign_in_name=f"-{person.pk}", email="")
    for person, name, email in folded:
        User.objects.filter(pk=person.pk).update(sign_in_name=name, email=email)


def free_name(name: str, taken: set[str]) -> str:
    chosen, number = name[:LONGEST], 1
    while chosen in taken:
        number += 1
        chosen = f"{name[: LONGEST - 1 - len(str(number))]}-{number}"
    return chosen


class Migration(migrations.Migration):
    dependencies = [("accounts", "0002_sent_form")]

    operations = [migrations.RunPython(fold, migrations.RunPython.noop)]
