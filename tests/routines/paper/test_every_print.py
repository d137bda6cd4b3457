"""What holds for everything printed: tags, language, words for pictures, our font alone, the school's paper."""

import pytest
from django.urls import reverse

from routines.paper.prints import PRINTS
from tests.routines.making import make_lesson, make_routine
from tests.routines.paper.plans import FULL

LETTER = {(612.0, 792.0), (792.0, 612.0)}
A4 = {(595.28, 841.89), (841.89, 595.28)}


@pytest.fixture(params=list(PRINTS))
def name(request):
    return request.param


def test_it_is_tagged_titled_and_has_our_font_alone(name, owner, printed):
    document = printed(make_routine(owner, plan=FULL), name, show="lit")
    root = document.pdf.Root
    assert root.MarkInfo.Marked
    assert str(root.Lang) == "en"
    assert "/StructTreeRoot" in root
    assert str(document.pdf.docinfo["/Title"])
    assert b"pdfuaid" in document.pdf.Root.Metadata.read_bytes()
    figures = document.of_type("/S", "/Figure")
    assert figures
    assert all(str(figure.get("/Alt", "")).strip() for figure in figures)
    fonts = document.of_type("/Type", "/FontDescriptor")
    assert fonts
    for font in fonts:
        assert "Countfold-Hand" in str(font.FontName) or "CountfoldHand" in str(font.FontName)
        assert "/FontFile2" in font or "/FontFile3" in font
    assert document.sizes() <= LETTER


def test_in_both_languages_on_a4_the_spanish_parts_say_so(name, owner, school, printed):
    school.paper = "a4"
    school.save()
    document = printed(make_routine(owner, plan=FULL), name, language="both")
    assert document.sizes() <= A4
    assert str(document.pdf.Root.Lang) == "en"
    assert [item for item in document.of_type("/Lang", "es") if "/S" in item]


def test_in_spanish_the_teachers_english_words_say_so(owner, printed):
    document = printed(make_routine(owner, plan=FULL), language="es")
    text = document.text()
    assert str(document.pdf.Root.Lang) == "es"
    assert "Paradas" in text
    assert "Stops" not in text
    assert [item for item in document.of_type("/Lang", "en") if "/S" in item]


def test_a_plan_in_both_languages_is_printed_in_both(owner, printed):
    text = printed(make_routine(owner, plan=FULL.changed(language="both"))).text()
    assert "Stops Paradas" in text


def test_what_children_get_carries_no_version_and_no_note_for_teachers(owner, printed):
    routine = make_routine(owner, plan=FULL)
    for name, pages in (("recording", slice(None)), ("poster", slice(None)), ("follow-up", slice(0, 1))):
        for language, hidden in (("en", ("version", "not who said", "not your name")), ("es", ("versión", "no quién"))):
            text = printed(routine, name, language=language).text(pages)
            assert text
            assert not [words for words in (*hidden, "planned by", owner.display_name) if words in text], (name, text)
    assert "version 1" in printed(routine, "plan").text()


@pytest.mark.parametrize(
    ("planned", "language", "said"),
    [
        ("en", "es", "Lo que escribió la maestra o el maestro se deja como está, en inglés."),
        ("es", "en", "What the teacher wrote stays as written, in Spanish."),
        ("en", "both", "What the teacher wrote stays as written, in English."),
        ("en", "en", ""),
        ("en", "", ""),
        ("both", "", ""),
        ("both", "en", ""),
    ],
)
def test_a_print_in_another_language_says_once_what_stays_as_written(planned, language, said, owner, visit, words):
    routine, pages = make_routine(owner, plan=FULL.changed(language=planned)), {}
    for name in PRINTS:
        page = visit(owner).get(reverse("print_html", args=[routine.pk, name]), {"language": language}).text
        pages[name] = words(page).count(said) if said else words(page).count("stays as written")
    told = 1 if said else 0
    assert pages == {"plan": told, "substitute": told, "poster": 0, "recording": 0, "follow-up": told}


def test_someone_elses_draft_is_not_printed(name, owner, teammate, visit):
    routine = make_routine(owner, shared=False, title="Planted damson")
    for view in ("print_pdf", "print_html"):
        answer = visit(teammate).get(reverse(view, args=[routine.pk, name]))
        assert answer.status_code == 404
        assert b"damson" not in answer.content
    assert visit(teammate).get(reverse("print", args=[routine.pk])).status_code == 404
    assert visit(teammate).get(reverse("plan_pdf", args=[routine.pk])).status_code == 404


def test_the_signed_out_sign_in_first(name, owner, signed_out):
    routine = make_routine(owner)
    for address in (
        reverse("print", args=[routine.pk]),
        reverse("print_pdf", args=[routine.pk, name]),
        reverse("print_html", args=[routine.pk, name]),
    ):
        answer = signed_out.get(address)
        assert answer.status_code == 302
        assert "/sign-in" in answer["Location"]


def test_a_colleague_prints_what_is_shared(name, owner, teammate, visit):
    assert visit(teammate).get(reverse("print_html", args=[make_routine(owner).pk, name])).status_code == 200


def test_an_unknown_print_is_not_found(owner, visit):
    routine = make_routine(owner)
    assert visit(owner).get(reverse("print_pdf", args=[routine.pk, "ledger"])).status_code == 404


def test_the_page_to_choose_from_offers_every_print(owner, visit):
    routine = make_routine(owner)
    make_lesson(routine, owner)
    page = visit(owner).get(reverse("print", args=[routine.pk])).text
    assert all(reverse("print_pdf", args=[routine.pk, name]) in page for name in PRINTS)
    assert "as it happened in a lesson" in page


def test_lessons_that_are_not_offered_for_a_poster_are_counted(owner, visit, monkeypatch):
    monkeypatch.setattr("routines.paper.views.prints.LESSONS_OFFERED", 1)
    routine = make_routine(owner)
    client, address = visit(owner), reverse("print", args=[routine.pk])
    make_lesson(routine, owner)
    assert "under Lessons" not in client.get(address).text
    make_lesson(routine, owner)
    assert "The 1 latest. 1 earlier one has the poster on its own page, under Lessons." in client.get(address).text


@pytest.mark.parametrize(
    "wish", [{"language": "la"}, {"starts_at": "soon"}, {"show": "lesson"}, {"amount": "all of it"}, {"lesson": "x"}]
)
def test_a_wish_that_cannot_be_read_leads_back_to_choosing(wish, owner, visit):
    answer = visit(owner).get(reverse("print_pdf", args=[make_routine(owner).pk, "poster"]), wish)
    assert answer.status_code == 422
    assert "form-error" in answer.text


def test_the_page_for_the_browser_brings_no_script_and_no_inline_style(name, owner, visit):
    page = visit(owner).get(reverse("print_html", args=[make_routine(owner, plan=FULL).pk, name])).text
    assert "<script" not in page
    assert " style=" not in page
    assert "<style" not in page
    assert "css/paper.css" in page
