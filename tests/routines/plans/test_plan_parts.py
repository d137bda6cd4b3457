"""Parts of the plan page that come when asked for: what they offer can be taken, and they change nothing themselves."""

import json
from html import unescape
from uuid import uuid4

import pytest
from django.urls import reverse

from routines.models import PlanDraft
from routines.plans.views.parts import PARTS
from tests.counting.claims import a_claim
from tests.factories import StandardFactory
from tests.routines.plan_sheets import answer_fields, saved_plan, sheet, stop_fields

pytestmark = pytest.mark.django_db

HTMX = {"HTTP_HX_REQUEST": "true"}
TENS_BY_SIX = {"start": "10", "step": "6", "terms": "25", "line_length": "5"}
A_SHEET_FOR_EACH_KIND = [
    {"kind": "whole", "start": "10", "step": "6"},
    {"kind": "whole", "start": "-9", "step": "3"},
    {"kind": "decimal", "start": "0.4", "step": "0.3"},
    {"kind": "fraction", "start": "1/4", "step": "3/4"},
    {"kind": "length", "start": "9 in", "step": "1 ft 3 in"},
    {"kind": "mass", "start": "12 oz", "step": "12 oz"},
    {"kind": "capacity", "start": "250 mL", "step": "400 mL"},
    {"kind": "money", "start": "$0.10", "step": "35c"},
    {"kind": "clock", "start": "8:10", "step": "25 min"},
    {"kind": "elapsed", "start": "20 min", "step": "25 min"},
]


@pytest.fixture
def ask(owner, visit):
    """Asks for a part of a new plan and gives the answer."""
    client, key = visit(owner), uuid4()

    def asked(name: str, scripts: bool = True, **fields: object):
        address = reverse("plan_part", kwargs={"key": key, "name": name})
        return client.post(address, sheet(**fields), **(HTMX if scripts else {}))

    return asked


@pytest.mark.parametrize("name", list(PARTS))
@pytest.mark.parametrize("fields", A_SHEET_FOR_EACH_KIND, ids=lambda fields: f"{fields['kind']} {fields['start']}")
def test_every_part_answers_for_every_kind_and_keeps_nothing(ask, name, fields):
    answer = ask(name, **fields)
    assert answer.status_code == 200
    assert "<html" not in answer.content.decode()
    assert not PlanDraft.objects.exists()


@pytest.mark.parametrize("name", list(PARTS))
def test_every_part_waits_for_a_count(ask, name):
    assert ask(name, start="", step="").status_code == 200


@pytest.mark.parametrize("name", ["says", "stops", "next", "folds"])
def test_without_scripts_a_part_is_a_page_that_carries_the_plan_along(ask, name):
    page = ask(name, scripts=False, notes="Carried along").content.decode()
    assert "<html" in page
    assert 'name="notes" value="Carried along"' in page
    assert 'name="change"' in page


def test_an_unknown_part_is_not_found(ask):
    assert ask("gradebook").status_code == 404


def test_parts_of_anothers_plan_are_not_found(owner, teammate, visit):
    routine = saved_plan(owner)
    for name in PARTS:
        address = reverse("plan_part", kwargs={"pk": routine.pk, "name": name})
        assert visit(teammate).post(address, sheet(), **HTMX).status_code == 404


def test_parts_refuse_get(owner, visit):
    assert visit(owner).get(reverse("plan_part", kwargs={"key": uuid4(), "name": "says"})).status_code == 405


def test_at_most_five_answers_one_of_each_sort(ask):
    found = ask("says", **TENS_BY_SIX).context["suggestions"]
    assert [one.sort for one in found] == ["easy", "deeper", "not-for-long", "not-so", "slip"]
    assert len(ask("says", rounds="2", **TENS_BY_SIX).context["suggestions"]) <= 10


def test_what_is_written_already_is_not_suggested_again(ask):
    first = ask("says", **TENS_BY_SIX).context["suggestions"][0]
    again = ask("says", **TENS_BY_SIX, **answer_fields(0, first.words)).context["suggestions"]
    assert first.words not in [one.words for one in again]


def test_a_taken_suggestion_becomes_a_row_that_can_be_edited(owner, visit, ask):
    slip = ask("says", **TENS_BY_SIX).context["suggestions"][-1]
    key = uuid4()
    page = visit(owner).post(
        reverse("plan_change", kwargs={"key": key}), sheet(**TENS_BY_SIX, change=slip.take), **HTMX
    )
    assert f'value="{slip.words}"' in page.content.decode()
    assert f'value="{slip.n}"' in page.content.decode()


def test_counting_by_six_from_ten_is_not_the_six_times_table(ask, grade_three):
    words = [one.words for one in ask("says", grade="3", **TENS_BY_SIX).context["suggestions"] if one.sort == "not-so"]
    assert words == ["We are counting the 6 times table."]


def test_the_times_table_itself_is_not_called_a_mistake(ask, grade_three):
    found = ask("says", grade="3", rounds="6", start="6", step="6", terms="20", line_length="5").context["suggestions"]
    assert not [one for one in found if "times table" in one.words and one.sort == "not-so"]


def test_spanish_plans_get_spanish_suggestions(ask, grade_three):
    found = ask("says", grade="3", language="es", **TENS_BY_SIX).context["suggestions"]
    assert "tabla del 6" in " ".join(one.words for one in found)


def test_suggested_stops_come_in_counting_order_and_end_at_the_end(ask):
    places = [offer.offered.after for offer in ask("stops", **TENS_BY_SIX).context["offers"]]
    assert places == sorted(places)
    assert places[-1] == 25


def test_a_stop_that_is_asked_already_is_not_offered(ask):
    first = ask("stops", **TENS_BY_SIX).context["offers"][0].offered
    again = ask("stops", **TENS_BY_SIX, **stop_fields(0, first.after, first.question)).context["offers"]
    assert first.question not in [offer.offered.question for offer in again]


def test_a_taken_next_count_reads_back_as_the_same_count(owner, visit, ask):
    for offer in ask("next", **TENS_BY_SIX).context["offers"]:
        key = uuid4()
        client = visit(owner)
        client.post(reverse("plan_change", kwargs={"key": key}), sheet(**TENS_BY_SIX, change=offer.take), **HTMX)
        form = client.get(reverse("plan_edit", kwargs={"key": key})).context["form"]
        (following,) = form.reading.next_counts
        assert (following.count.count().start, following.count.count().step) == (
            offer.offered.grid.count.start,
            offer.offered.grid.count.step,
        )


# Will it appear?


def test_202_is_the_33rd_count_by_six_from_ten(ask):
    """10 + 32 x 6 = 202; five in a line, so the 33rd count stands in row 7, column 3."""
    page = ask("appear", ask_value="202", **TENS_BY_SIX).content.decode()
    assert "202 is the 33rd count: row 7, column 3." in page


def test_what_is_jumped_over_is_shown_between_its_neighbours(ask):
    page = ask("appear", ask_value="200", **TENS_BY_SIX).content.decode()
    assert "200 is not counted: 196 comes before it, 202 after." in page


def test_a_question_becomes_a_stop_with_its_routes(ask):
    take = ask("appear", ask_value="202", **TENS_BY_SIX).context["found"].take
    row = json.loads(take.removeprefix("stops.add "))
    assert row["after"] == 25
    assert "202" in row["question"]
    assert len(row["routes"].splitlines()) >= 2


def test_each_good_number_says_whether_it_comes_and_where(ask):
    answer = ask("appear", **TENS_BY_SIX)
    page = " ".join(answer.content.decode().split())
    for probe, place in answer.context["probes"]:
        assert f'value="{probe.text}"' in page
        assert probe.why in unescape(page)
        assert (place is not None) == probe.appears
        if place:
            # by hand: five in a line, so count n stands in row (n - 1) // 5 + 1, column (n - 1) % 5 + 1
            assert place == ((probe.n - 1) // 5 + 1, (probe.n - 1) % 5 + 1)
            assert f"row {place[0]}, column {place[1]}" in page
    marks = [probe.appears for probe, _place in answer.context["probes"]]
    assert (page.count("<strong>yes</strong>"), page.count("<strong>no</strong>")) == (sum(marks), marks.count(False))


@pytest.mark.parametrize("typed", ["abc", "1e5", "2/", "<b>"])
def test_what_is_no_number_gets_one_sentence(ask, typed):
    answer = ask("appear", ask_value=typed, **TENS_BY_SIX)
    assert answer.status_code == 200
    assert answer.context["wrong"]
    assert "<b>" not in answer.content.decode().replace("<b></b>", "")


# Check a claim


def claim_fields(saying: str, **fields: str) -> dict[str, str]:
    return {"claim-saying": saying, **{f"claim-{name}": text for name, text in fields.items()}}


@pytest.mark.parametrize(
    ("fields", "true"),
    [
        (claim_fields("jump", direction="down", jump="30"), True),
        (claim_fields("jump", direction="down", jump="31"), False),
        (claim_fields("jump", direction="count", jump="6"), True),
        (claim_fields("ends", reading="place:0", digits="6", where="column", line="2"), True),
        (claim_fields("ends", reading="place:0", digits="6", where="column", line="3"), False),
        (claim_fields("ends", reading="place:0", where="column"), True),
        (claim_fields("ends", reading="place:0", where="row"), False),
        (claim_fields("lands", multiple="10", lie="column"), True),
        (claim_fields("lands", multiple="10", lie="column", line="2"), False),
        (claim_fields("lands", multiple="10", lie="down-right"), False),
        (claim_fields("many", multiple="30", many="5"), True),
        (claim_fields("many", multiple="30", many="4"), False),
        (claim_fields("rest", multiple="2", where="count", rest="0"), True),
        (claim_fields("rest", multiple="2", where="count", rest="1"), False),
    ],
)
def test_claims_about_counting_by_six_from_ten(ask, fields, true):
    """10 16 22 28 34 | 40 46 52 58 64 | ...: 30 more down a column, all even, five counts in every thirty."""
    assert ask("claim", check_claim="1", **TENS_BY_SIX, **fields).context["verdict"].true is true


@pytest.mark.parametrize(
    "fields",
    [
        claim_fields("jump", direction="down", jump="many"),
        claim_fields("ends", reading="place:0", digits="six", where="column"),
        claim_fields("ends", reading="place:0", digits="6", where="column", line="0"),
        claim_fields("lands", multiple="0"),
        claim_fields("many", multiple="10", many=""),
        claim_fields("rest", multiple="2", rest="7"),
        claim_fields("nonsense"),
        claim_fields("ends", reading="place:77", digits="6", where="nowhere"),
    ],
)
def test_a_claim_that_says_nothing_gets_a_sentence_and_no_verdict(ask, fields):
    answer = ask("claim", check_claim="1", **TENS_BY_SIX, **fields)
    assert answer.status_code == 200
    assert "verdict" not in answer.context
    assert answer.context["claim_form"].errors


def test_digits_left_at_always_the_same_are_judged_where_the_button_asks(ask):
    fields = {**claim_fields("ends", reading="place:0", where="column"), "start": "10", "step": "7", "line_length": "5"}
    waiting = ask("claim", **fields)
    assert "verdict" not in waiting.context
    assert 'name="check_claim"' in waiting.content.decode()
    verdict = ask("claim", check_claim="1", **fields).context["verdict"]
    assert (verdict.true, verdict.counterexample) == (False, (1, 6))
    assert "of 10 and 45, in rows 1 and 2, are 0 and 5" in verdict.because


@pytest.mark.parametrize(
    ("fields", "missing"),
    [
        ({"kind": "clock", "start": "8:10", "step": "25 min"}, 'value="many"'),
        ({"kind": "mass", "start": "12 oz", "step": "12 oz"}, "tenths digit"),
        ({"kind": "decimal", "start": "0.4", "step": "0.3"}, "hundredths digit"),
    ],
)
def test_a_claim_offers_only_what_these_numbers_have(ask, fields, missing):
    assert missing not in ask("claim", **fields).content.decode()


def test_tapped_cells_say_what_they_have_in_common(ask):
    explained = ask("cells", tapped="1 6 11", **TENS_BY_SIX).context["explained"]
    assert explained[0][0].claim == a_claim("landmarks", multiple=10, every=5, first=1, lie="column", lines=[1])


@pytest.mark.parametrize("tapped", ["", "0", "26", "x", "1 1 1", "1000000"])
def test_cells_that_are_not_there_are_left_out(ask, tapped):
    assert ask("cells", tapped=tapped, **TENS_BY_SIX).status_code == 200


# Other folds, designs, standards


def test_the_lit_tens_are_lit_in_every_fold_in_which_they_are_seen(ask):
    tens = '{"every":5,"family":"landmarks","first":1,"lie":"column","lines":[1],"multiple":"10"}'
    folds = ask("folds", lit=["", tens], **TENS_BY_SIX).context["folds"]
    assert [fold.grid.line_length for fold in folds] == [*range(2, 13)]
    ten = next(fold for fold in folds if fold.grid.line_length == 10)
    assert [pattern.claim.parameters.get("lines") for pattern in ten.lit] == [(1, 6)]
    assert all(fold.sentence for fold in folds)


def test_folds_longer_than_the_count_are_left_out(ask):
    folds = ask("folds", start="3", step="3", terms="6", line_length="3").context["folds"]
    assert [fold.grid.line_length for fold in folds] == [2, 3, 4, 5, 6]


def test_the_plan_s_own_fold_is_marked_and_every_other_is_told_against_it(ask):
    answer = ask("folds", start="3", step="7", terms="30", line_length="4")
    folds = answer.context["folds"]
    assert [fold.grid.line_length for fold in folds if fold.is_mine] == [4]
    assert {fold.against for fold in folds if not fold.is_mine} == {4}
    page = answer.content.decode()
    assert page.count('aria-current="true"') == 1
    assert page.count("Fold it this way") == len(folds) - 1


def test_an_own_line_longer_than_the_strip_s_stands_in_it_too(ask):
    folds = ask("folds", start="3", step="7", terms="60", line_length="15", lead="2").context["folds"]
    assert [(fold.grid.line_length, fold.grid.lead) for fold in folds if fold.is_mine] == [(15, 2)]


def test_a_design_asks_for_the_pattern_first_and_then_for_three_limits(ask):
    first = ask("design", kind="money").content.decode()
    assert "What shall the class see?" in first
    assert "starting from" not in first
    asked = ask("design", kind="money", **{"design-wanted_pattern": "column"}).content.decode()
    before, further = asked.split("More limits")
    assert [label for label in ("starting from", ">by<", ">with<", "Landmarks every") if label in before] == [
        "starting from", ">by<", ">with<",
    ]  # fmt: skip
    assert "Landmarks every" in further


@pytest.mark.parametrize(
    ("kind", "left_out"), [("whole", set()), ("money", {"opposites"}), ("clock", {"opposites", "many", "table"})]
)
def test_only_patterns_that_a_kind_can_show_are_offered(ask, kind, left_out):
    answer = ask("design", kind=kind)
    offered = {value for value, _words, _on in answer.context["design_form"].patterns}
    assert {"column", "row", "diagonal", "ends", "turns", "many", "table", "opposites"} - offered == left_out


@pytest.mark.parametrize(
    ("area", "kind"),
    [
        ("money", "money"),
        ("time", "clock"),
        ("fractions", "fraction"),
        ("measurement", "length"),
        ("integers", "whole"),
    ],
)
def test_designing_for_an_area_sets_its_kind(owner, visit, area, kind):
    page = visit(owner).get(reverse("plan_new"), {"grade": "2", "area": area, "design": "1"}, follow=True)
    assert page.context["form"].count["kind"].value() == kind
    assert page.context["designing"]
    assert 'id="tool-design" data-plan-part open' in page.content.decode()


def test_designs_for_integers_start_below_zero(ask):
    form = ask("design", area="integers", **{"design-wanted_pattern": "column"}).context["design_form"]
    assert form["start_low"].value() == "-20"


def test_limits_of_a_design_are_written_and_read_in_the_plan_s_mark(ask):
    comma = {"kind": "decimal", "style-decimal_mark": ",", "start": "0,4", "step": "0,3"}
    answer = ask("design", **comma, **{"design-wanted_pattern": "column"})
    assert answer.context["design_form"]["grain"].value() == "0,1"
    assert answer.context["designs"]
    typed = {"design-before": "decimal column", "design-wanted_pattern": "column", "design-step_low": "0.3"}
    assert ask("design", **comma, **typed).context["design_form"]["step_low"].value() == "0,3"


@pytest.mark.parametrize("wanted", ["column", "row", "diagonal", "ends", "turns", "many", "table", "opposites"])
def test_designed_grids_show_what_is_wanted(ask, wanted):
    answer = ask("design", **{"design-wanted_pattern": wanted})
    designs = answer.context["designs"]
    assert designs
    assert all(one.pattern for one in designs)
    assert len(designs) <= 6
    assert len({(one.grid.count.step, one.grid.line_length) for one in designs}) == len(designs)


@pytest.mark.parametrize(
    ("wide", "field", "said"),
    [
        ({"design-step_high": "9999999"}, "step_low", "9,999,998 steps are more than can be looked through here."),
        ({"design-terms_low": "2", "design-terms_high": "200", "design-length_high": "200"}, "terms_low", "200"),
    ],
)
def test_limits_too_wide_to_look_through_are_named(ask, wide, field, said):
    answer = ask("design", **{"design-before": "whole column"}, **wide)
    assert [*answer.context["design_form"].errors] == [field]
    assert said in answer.content.decode()


@pytest.mark.parametrize("wanted", ["column", "row", "diagonal", "ends", "turns", "many", "table"])
def test_starts_as_far_as_numbers_go_are_looked_through(ask, wanted):
    wide = {"design-start_high": "999999999", "design-wanted_pattern": wanted, "design-before": f"whole {wanted}"}
    assert ask("design", **wide).context["designs"]


def test_a_taken_design_becomes_the_count(owner, visit, ask):
    design = ask("design", **{"design-wanted_pattern": "diagonal"}).context["designs"][0]
    client, key = visit(owner), uuid4()
    client.post(reverse("plan_change", kwargs={"key": key}), sheet(start="", step="", change=design.take), **HTMX)
    form = client.get(reverse("plan_edit", kwargs={"key": key})).context["form"]
    assert form.grid == design.grid


@pytest.mark.parametrize(
    "fields",
    [
        {"design-step_low": "x"},
        {"design-length_low": "-1"},
        {"design-terms_high": "900"},
        {"design-multiple": "0"},
        {"design-grain": "0"},
    ],
)
def test_limits_that_cannot_be_read_get_a_sentence(ask, fields):
    answer = ask("design", **{"design-before": "whole column"}, **fields)
    assert answer.status_code == 200
    assert answer.context["design_form"].errors
    assert "designs" not in answer.context


def test_limits_in_which_nothing_fits_say_so(ask):
    fields = {
        "design-before": "whole column",
        "design-start_low": "1",
        "design-start_high": "1",
        "design-step_low": "2",
    }
    page = ask("design", **fields, **{"design-step_high": "2", "design-multiple": "10"}).content.decode()
    assert "No grid within these limits shows it." in page


def test_standards_of_the_schools_list_are_offered_until_taken(ask, grade_three):
    StandardFactory(code="LS.9", grade=grade_three, count_features="fit=direct; kind=whole; step=any", summary="Skips.")
    offered = [fit.code for fit in ask("standards", **TENS_BY_SIX).context["fits"]]
    assert offered == ["LS.9"]
    assert ask("standards", standards="LS.9", **TENS_BY_SIX).context["fits"] == []


def test_a_standard_that_cannot_be_read_leaves_the_others_offered(ask, grade_three):
    for code, features in (("LS.1", "fit=direct; start=1/0"), ("LS.2", "colour"), ("LS.3", "\x01")):
        StandardFactory(code=code, grade=grade_three, count_features=features, summary="Skips.")
    StandardFactory(code="LS.9", grade=grade_three, count_features="fit=direct; kind=whole; step=any", summary="Skips.")
    assert [fit.code for fit in ask("standards", **TENS_BY_SIX).context["fits"]] == ["LS.9"]


def test_a_rule_is_judged_when_the_button_asks(ask, grade_three):
    page = ask("rule", grade="3", **TENS_BY_SIX)
    assert "verdict" not in page.context
    right = ask("rule", grade="3", ask_rule="6 times the place, plus 4", check_rule="1", **TENS_BY_SIX)
    assert right.context["verdict"].holds
    assert "Yes, for every n: 10, 16, 22" in right.content.decode()
    off = ask("rule", grade="3", ask_rule="10 + 6n", check_rule="1", **TENS_BY_SIX).content.decode()
    assert "at place 1 it gives 16, and we count 10" in off
    assert "if the first place is 0" in off
    assert 'value="10 + 6n"' in off


@pytest.mark.parametrize(
    ("typed", "sentence"), [("", "Write n"), ("6", "Write n"), ("6 apples n", "apples"), ("n" * 90, "Shorten")]
)
def test_a_rule_that_cannot_be_read_is_kept_with_what_to_do(ask, grade_three, typed, sentence):
    answer = ask("rule", grade="3", ask_rule=typed, check_rule="1", **TENS_BY_SIX)
    assert sentence in answer.context["wrong"]
    assert f'value="{typed}"' in answer.content.decode()


def test_a_rule_says_in_what_its_numbers_are_meant(ask, grade_three):
    answer = ask("rule", grade="3", kind="money", start="$0.10", step="$0.35", ask_rule="0.35n - 0.25", check_rule="1")
    assert answer.context["verdict"].holds
    assert "Plain numbers are dollars." in answer.content.decode()


@pytest.mark.parametrize("fields", [{"kind": "clock", "start": "8:10", "step": "25 min"}, {"start": "", "step": ""}])
def test_without_a_rule_in_n_no_rule_is_asked_for(ask, grade_three, fields):
    assert "ask_rule" not in ask("rule", grade="3", **fields).content.decode()


def test_rules_wait_for_grade_three(ask):
    answer = ask("rule", **TENS_BY_SIX).content.decode()
    assert "from grade 3 on" in answer
    assert "ask_rule" not in answer
