"""The fixed words of the paper, in both languages."""

import re
from pathlib import Path

from django.conf import settings

from routines.paper.languages import LANGUAGES, PrintLanguages
from routines.words import LANGUAGES as SPOKEN

TEMPLATES = Path(settings.BASE_DIR) / "templates" / "paper" / "sheets"


def test_every_word_a_template_asks_for_is_there():
    asked = {key for page in TEMPLATES.glob("*.html") for key in re.findall(r"\bsay\.(\w+)", page.read_text())}
    assert asked
    assert asked <= set(SPOKEN["en"].paper)


def test_the_second_language_is_marked():
    assert PrintLanguages(LANGUAGES["both"])["stops"] == 'Stops <span class="also" lang="es">Paradas</span>'
    assert PrintLanguages(LANGUAGES["es"])["stops"] == "Paradas"


def test_what_is_the_same_in_both_is_said_once():
    assert PrintLanguages(LANGUAGES["both"]).each(lambda language: "20 s") == "20 s"


def test_what_is_filled_in_is_escaped():
    told = PrintLanguages(LANGUAGES["both"]).tell("landmark", name="<b>")
    assert "<b>" not in told
    assert "&lt;b&gt;" in told


def test_minus_signs_are_set():
    assert "from −3" in PrintLanguages(LANGUAGES["en"]).tell("by", step="2", start="-3")
