"""Following every link of the pages, as far as a bound for pages that are alike."""

import io
from collections import Counter, deque
from collections.abc import Iterable, Iterator
from html.parser import HTMLParser
from urllib.parse import urldefrag, urlencode, urljoin, urlsplit

from django.test import Client
from pypdf import PdfReader

from tests.fuzz.found import read_forms, view_of

ALIKE_AT_MOST = 3  # pages of one name and with the same questions in their address, beside those it begins with


class _Links(HTMLParser):
    def __init__(self) -> None:
        super().__init__()
        self.found: list[str] = []

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self.found += [value for name, value in attrs if name in ("href", "src", "hx-get") and value]


def _leading_on(page: str, address: str) -> Iterator[str]:
    links = _Links()
    links.feed(page)
    asked = [
        f"{sent.address.partition('?')[0]}?{urlencode(sent.fields, doseq=True)}"
        for sent in read_forms(page, address, "")
        if sent.method == "get"
    ]
    for link in (*links.found, *asked):
        whole = urldefrag(urljoin(address, link))[0]
        if whole.startswith("/") and not whole.startswith(("//", "/static/")):
            yield whole


def _alike(address: str) -> tuple[str, frozenset[str]]:
    asked = urlsplit(address).query
    return view_of(address), frozenset(part.partition("=")[0] for part in asked.split("&"))


def words_of(content: bytes, kind: str) -> str:
    if kind.startswith("application/pdf"):
        return " ".join(page.extract_text() for page in PdfReader(io.BytesIO(content)).pages)
    return content.decode(errors="replace")


def crawl(client: Client, begin_at: Iterable[str]) -> Iterator[tuple[str, str, int]]:
    """(address, words, status) of each page that can be reached by links, forms that ask and redirects, and of those it
    begins at, whether anything leads there or not."""
    first = list(dict.fromkeys(begin_at))
    waiting, met = deque(first), set(first)
    alike: Counter[tuple[str, frozenset[str]]] = Counter()
    while waiting:
        address = waiting.popleft()
        answer = client.get(address)
        content = b"".join(answer.streaming_content) if answer.streaming else answer.content
        kind = answer.get("Content-Type", "")
        text = words_of(content, kind) if answer.status_code != 405 else ""
        yield address, text, answer.status_code
        leads_on = [urljoin(address, answer["Location"])] if "Location" in answer else []
        if kind.startswith("text/html"):
            leads_on += _leading_on(text, address)
        for link in leads_on:
            if link in met or view_of(link) in ("accounts:sign_out", "accounts:sign_out_everywhere"):
                continue
            met.add(link)
            alike[_alike(link)] += 1
            if alike[_alike(link)] <= ALIKE_AT_MOST:
                waiting.append(link)
