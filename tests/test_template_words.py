"""Words that stand in a template go through the translation, so that another language is one catalogue."""

from pathlib import Path

import pytest

from tests.bare_words import in_template

ROOT = Path(__file__).parents[1]
# What is printed speaks the language that was chosen for it, not the page's: its words come from routines/paper.
BY_THE_LANGUAGE_OF_THE_PRINT = ROOT / "templates" / "paper" / "sheets"
TEMPLATES = sorted(ROOT.glob("templates/**/*.html"))


def named(path: Path) -> str:
    return str(path.relative_to(ROOT / "templates"))


@pytest.mark.parametrize("path", TEMPLATES, ids=named)
def test_no_bare_words_in_a_template(path):
    assert in_template(path.read_text(encoding="utf-8")) == []


@pytest.mark.parametrize("path", sorted(BY_THE_LANGUAGE_OF_THE_PRINT.glob("*.html")), ids=named)
def test_a_printed_sheet_does_not_ask_for_the_language_of_the_page(path):
    assert "translate" not in path.read_text(encoding="utf-8")


@pytest.mark.parametrize(
    "source",
    [
        "<p>Tap a cell.</p>",
        "<button>undo</button>",
        '<nav aria-label="Moments"></nav>',
        '<input placeholder="such as 54">',
        '<p>{% translate "Kept" %} by you</p>',
        '{{ lesson.outcome|default:"not recorded" }}',
        '{% include "lessons/_board_tool.html" with name="next" words="next" %}',
        "<p>{{ n }} of {{ last }}</p>",
        '{% grid grid size="card" title="The grid alone" %}',
        '<p data-lost="Not kept: no connection."></p>',
        'aria-label="By day" data-day="{{ day }}"',
        "{% blocktranslate %}{{ n }} lesson{% endblocktranslate %}{{ n|pluralize }}",
    ],
)
def test_bare_words_in_a_template_are_found(source):
    assert in_template(source)


@pytest.mark.parametrize(
    "source",
    [
        '<p class="quiet">{% translate "Tap a cell." %}</p>',
        '<nav aria-label="{% translate "Moments" %}" data-step="after">{{ words }}</nav>',
        "{% blocktranslate trimmed %}Taught by {{ who }}.{% endblocktranslate %}",
        '{{ lesson.taught_on|date:"j F Y" }} · {{ lesson.title|default:_("not in the bank") }}',
        "<kbd>Z</kbd>",
        'data-day="{{ day }}" data-count="{{ count }}"',
        '{% grid grid size="card" title=_("The grid alone") %}',
        "<script>const words = 'a b';</script>{% comment %}Context: a lesson.{% endcomment %}",
    ],
)
def test_translated_words_in_a_template_are_not(source):
    assert in_template(source) == []
