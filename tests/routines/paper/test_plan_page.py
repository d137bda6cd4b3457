"""The plan on paper: every text of the plan, on one page where it fits."""

import pytest

from routines.models.plan_document import CountSection, ExpectedAnswer, Fold, Stop, Story
from routines.paper.plan_page import in_rows, place_grid, plan_sheet
from routines.paper.styles import LOOKS
from routines.paper.subject import Subject
from tests.routines.making import make_routine
from tests.routines.paper.plans import BY_KIND, FULL, plan_of


def every_text(plan) -> list[str]:
    texts = [plan.title, plan.story.text, *plan.notes.split("\n\n"), *plan.standards]
    texts += [target.words for target in plan.targets]
    for answer in plan.expected:
        texts += [answer.words, answer.reply]
    for stop in plan.stops:
        texts += [stop.question, *stop.answer.split("\n"), *stop.routes]
    texts += [following.why for following in plan.next_counts]
    return [text for text in texts if text]


def test_every_text_of_the_plan_is_on_it(owner, printed):
    text = printed(make_routine(owner, plan=FULL)).text()
    for words in every_text(FULL):
        assert words in text


def test_the_goal_is_answered_at_its_group(owner, printed):
    # 4 + 8 x 7 = 60, the ninth count.
    assert "The goal, 60, is met at bag 9." in printed(make_routine(owner, plan=FULL)).text()


def test_a_goal_without_groups_is_answered_by_its_count(owner, school, words):
    plan = FULL.changed(story=Story("How many sevens to get past 50?", "", "50"))
    said = words(plan_sheet(Subject(make_routine(owner, plan=plan).current_version, school, "both")))
    assert "The goal, 50, is passed at count 8, by 3." in said  # 4 + 7 x 7 = 53
    assert "se pasa en el número 8" in said


def test_the_teachers_name_of_a_group_is_quoted_where_the_sentence_is_in_another_language(owner, school, words):
    version = make_routine(owner, plan=FULL).current_version
    said = words(plan_sheet(Subject(version, school, "both")))
    assert "Each bag: 7." in said
    assert "The goal, 60, is met at bag 9." in said
    assert "Cada «bag»: 7." in said
    assert "La meta, 60, se alcanza en «bag 9»." in said


def test_a_time_is_not_broken_over_two_lines(owner, school):
    html = plan_sheet(Subject(make_routine(owner, plan=FULL).current_version, school, "both"))
    assert "think\u00a015\u00a0s · share\u00a075\u00a0s" in html
    assert "pensar\u00a015\u00a0s · compartir\u00a075\u00a0s" in html


def test_a_goal_that_cannot_be_read_here_stops_nothing(owner, school, words):
    plan = FULL.changed(story=Story("Bags of plums.", "bag", "21 lb"))
    assert "Bags of plums." in words(plan_sheet(Subject(make_routine(owner, plan=plan).current_version, school)))


def test_each_cell_says_its_group(owner, printed):
    text = printed(make_routine(owner, plan=FULL)).text()
    assert all(f"bag {n}" in text for n in range(1, 21))


def test_a_page_that_fits_is_one_page(owner, printed):
    assert len(printed(make_routine(owner)).pdf.pages) == 1


def test_a_long_plan_flows_on_and_loses_nothing(owner, printed):
    long = FULL.changed(
        title="A title of a hundred and twenty letters that goes on until it has said everything there is to say about it, twice",
        count=CountSection("whole", "3", "7", 200),
        fold=Fold(10),
        targets=(),
        stops=tuple(
            Stop(n, f"Question at {n}?", "one\ntwo\nthree\nfour", (f"route to {n}",)) for n in range(20, 201, 20)
        ),
        expected=FULL.expected * 6,
    )
    document = printed(make_routine(owner, plan=long))
    text = document.text()
    assert len(document.pdf.pages) > 1
    for words in every_text(long):
        assert words in text


def test_what_goes_on_to_another_page_is_a_whole_section(owner, printed):
    stops = tuple(Stop(n, f"What do you see at {n}, and will it stay?", "one\ntwo\nthree") for n in (5, 10, 15, 20))
    plan = FULL.changed(stops=stops, expected=FULL.expected * 5)
    document = printed(make_routine(owner, plan=plan))
    first, second = (document.text(slice(page, page + 1)) for page in (0, 1))
    assert len(document.pdf.pages) == 2
    assert "Stops" in first
    assert "will it stay" not in second
    assert second.startswith("They may say")
    for answer in FULL.expected:
        assert second.count(answer.reply) == 5
        assert answer.reply not in first


def test_a_grid_too_wide_to_read_is_also_written_line_by_line(owner, school, words):
    routine = make_routine(owner, plan=plan_of(CountSection("whole", "1000", "25", 80), Fold(40)))
    subject = Subject(routine.current_version, school)
    assert not place_grid(subject, ())[1].is_readable
    assert "1,000; 1,025; 1,050" in words(plan_sheet(subject))


@pytest.mark.parametrize("kind", BY_KIND)
def test_grids_of_every_kind_can_be_read(kind, owner, school):
    routine = make_routine(owner, plan=plan_of(BY_KIND[kind], Fold(4)))
    _, picture = place_grid(Subject(routine.current_version, school), ())
    assert picture.numeral >= 9


def test_two_hundred_counts_can_be_read(owner, school):
    routine = make_routine(owner, plan=plan_of(CountSection("whole", "3", "7", 200), Fold(10)))
    assert place_grid(Subject(routine.current_version, school), ())[1].is_readable


def test_stops_stand_in_rows_of_like_length():
    assert [len(row) for row in in_rows(list(range(4)), 3)] == [2, 2]
    assert [len(row) for row in in_rows(list(range(7)), 3)] == [3, 3, 1]
    assert in_rows([], 3) == []


def test_the_looks_leave_something_to_write_on():
    assert all(".ruled-1" not in look for look in LOOKS)


def test_the_footers_hold_the_longest_names(owner, school, printed):
    school.name = "The Community School for Everybody Who Lives at the Old Bridge by the Long River and the Mill"
    school.save()
    assert school.name in printed(make_routine(owner)).text()


def test_amounts_past_a_larger_unit_are_said_in_both(owner, school, words):
    plan = plan_of(
        CountSection("mass", "8 oz", "8 oz", 12), Fold(4), expected=(ExpectedAnswer("22 oz", "", "slip", 3),)
    )
    plan = plan.changed(stops=(Stop(4, "What do four weigh?"), Stop(1, "And one?")))
    said = words(plan_sheet(Subject(make_routine(owner, plan=plan).current_version, school)))
    assert "After 32 oz (2 lb), the 4th" in said
    assert "After 8 oz, the 1st" in said
    assert "24 oz (1 lb 8 oz), the 3rd: heard as" in said
    assert "landmark: pounds, 16 oz (1 lb)" in said
