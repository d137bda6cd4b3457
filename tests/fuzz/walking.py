"""Opening every page for what can be sent from it, and sending it."""

import re
import uuid

from django.urls import reverse

from accounts.sent_once import FIELD as KEY
from routines.models import Routine
from tests.fuzz.asking import Asker, undone
from tests.fuzz.found import Sent, as_one, read_forms, view_of
from tests.fuzz.odd import FURTHER, LARGE, NUMBERS, TEXTS, UNREADABLE, bent, encoded

ASKS_ONLY = ("plan_part", "plan_preview")  # a POST to these changes nothing and brings further fields
SEES_MORE = ("teacher", "administrator")  # the others see on a page what these do
IN_FULL = 1  # further views that read the same field (a plan's parts) get a share of the values
LISTS = (
    "home", "bank", "my_plans", "plan_new", "lessons", "coverage", "booklet_choose", "week", "suggestions", "import",
    "export_bank", "grade_bands:classes", "grade_bands:grades", "accounts:people", "accounts:school", "accounts:own_account",
)  # fmt: skip


def everything_sendable(asker: Asker, addresses: dict[str, list[str]]) -> list[Sent]:
    """Everything that can be sent from the pages, found by opening them as everyone."""
    found: list[Sent] = []
    read: set[str] = set()
    with undone():
        for role in asker.cookies:
            for address in (one for some in addresses.values() for one in some):
                if view_of(address) in read and role not in SEES_MORE:
                    continue
                answer = asker.ask(role, "get", address)
                if answer is not None and answer.status_code == 200:
                    read.add(view_of(address))
                    if "html" in answer.get("Content-Type", ""):
                        found += read_forms(answer.text, address, role)
        for sent in {one.view: one for one in found if one.view.split(" ")[0] in ASKS_ONLY}.values():
            answer = asker.ask(sent.role, "post", sent.address, encoded(sent.fields), live=True)
            if answer is not None and answer.status_code == 200:
                inside = read_forms(answer.text, sent.address, sent.role)
                for more in inside:
                    more.fields = {**sent.fields, **more.fields}
                    more.method = "post"
                found += inside
    return found


def every_field(sendable: list[Sent]) -> list[tuple[Sent, str, bool]]:
    """Each field of each view once, and each kind of button; True where enough other views were asked about this field."""
    taken, views = {}, {}
    for sent in sendable:
        for name in sorted({*sent.fields, *sent.files}):
            value = sent.fields.get(name, [""])[0]
            shape = as_one(value.split(" ")[0]) if name in sent.button else ""
            key = (sent.method, sent.view, as_one(name), shape)
            if key not in taken:
                others = views.setdefault((as_one(name), shape), set())
                others.add(sent.view)
                taken[key] = (sent, name, len(others) > IN_FULL)
    return list(taken.values())


def odd_values(value: str, place: int, briefly: bool) -> list[str]:
    """A number, a text that is none, and one of the same shape, each in turn: over all fields every one is sent often.

    A field that holds a number gets two, one of them large enough to be read and too large to be done.
    """
    shapes = bent(value) or ([re.sub(r"\d+", NUMBERS[place % 4], value)] if re.search(r"\d", value) else [])
    others = [*TEXTS[1:], *FURTHER]
    in_turn = [others[place % len(others)], *shapes[place % max(len(shapes), 1) :][:1]]
    if briefly:
        values = [*NUMBERS, *TEXTS, *in_turn]
        return [values[place // 3 % len(values)]] if place % 3 == 0 else []
    if value.lstrip("-").isdigit():
        return [LARGE, UNREADABLE[place % len(UNREADABLE)], *in_turn[place % 2 :][:1]]
    return [TEXTS[0], [NUMBERS[place % 4], *in_turn][place % (1 + len(in_turn))]]


def send(asker: Asker, sent: Sent, fields: dict[str, list[str]], said: str, *, live: bool = False) -> bool:
    """As from a page opened just before: a form whose key was kept already would not be read any further.

    Returns: whether something may have been kept.
    """
    if fields.get(KEY) == sent.fields.get(KEY) and KEY in fields:
        fields = {**fields, KEY: [str(uuid.UUID(int=asker.asked))]}
    if sent.method == "get":
        asker.ask(sent.role, "get", f"{sent.address.partition('?')[0]}?{encoded(fields).decode()}", said=said)
        return False
    answer = asker.ask(sent.role, "post", sent.address, encoded(fields), said=said, live=live)
    return answer is not None and answer.status_code < 400 and not sent.view.startswith(ASKS_ONLY)


def lists_open(asker: Asker, role: str, said: str) -> None:
    """Every list, and the count newest in it, as who may have put something there."""
    for name in LISTS:
        asker.ask(role, "get", reverse(name), said=f"after {said}")
    for routine in Routine.objects.order_by("-pk")[:1]:
        for name in ("routine", "export_routine", "print"):
            asker.ask(role, "get", reverse(name, args=[routine.pk]), said=f"after {said}")
