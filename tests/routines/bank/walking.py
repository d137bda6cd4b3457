"""Going through a list by its own links."""

import re
from html import unescape

TITLE = re.compile(r'<h2><a href="[^"]*">([^<]*)</a></h2>')
LINK = r'<a class="button" href="([^"]*)"[^>]*>{}</a>'


def titles_on(answer) -> list[str]:
    return [unescape(title) for title in TITLE.findall(answer.text)]


def link(answer, name: str) -> str | None:
    found = re.search(LINK.format(name), answer.text)
    return unescape(found[1]) if found else None


def pages(client, address: str, further: str = "Next") -> list:
    """The answers from this address on, each reached by the link of the one before."""
    path = address.split("?")[0]
    answers = [client.get(address)]
    while (then := link(answers[-1], further)) and len(answers) < 40:
        answers.append(client.get(path + then))
    return answers


def walked(client, address: str, further: str = "Next") -> list[str]:
    return [title for answer in pages(client, address, further) for title in titles_on(answer)]
