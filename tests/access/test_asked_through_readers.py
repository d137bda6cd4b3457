"""Views come to what is not everybody's by the querysets that say who may read it, or each way round has its reason here."""

import ast
from collections.abc import Iterator
from pathlib import Path

from django.urls import URLPattern, URLResolver, get_resolver

ROOT = Path(__file__).resolve().parents[2]

PRIVATE = {
    "Routine", "RoutineVersion", "RoutineNote", "PlanDraft", "Lesson", "LessonEvent", "Reflection", "TargetOutcome", "LessonPass",
    "Planned", "Suggestion", "Job", "JobFile", "ImportFile",
}  # fmt: skip

# What a queryset is asked first: whose it is, or who may read or change it.
READERS = {
    "visible_to", "in_bank", "of", "owned_or_among", "taught_by", "known_to", "open_to", "shared_about", "sent_to",
    "changeable_by",
}  # fmt: skip

OF_ONE_FOUND = "of a count that `visible_to` found before"
FOUND_BEFORE = "of a row that its readers' queryset found before, and whose owner was asked for"
MADE = "is made by who asks, of a count that `visible_to` found"
ROUND = {
    "routines/bank/views/routine.py _notes_on RoutineNote.filter": OF_ONE_FOUND,
    "routines/bank/views/routine.py _saves_of RoutineVersion.filter": OF_ONE_FOUND,
    "routines/bank/views/routine.py add_note RoutineNote.create": MADE,
    "routines/bank/views/routine.py make RoutineNote.create": MADE,
    "routines/erasing/views.py _removed Job.filter": "of the person, in the next line",
    "routines/lessons/views/log.py _own_class Planned.filter": "for a class of hers",
    "routines/lessons/views/pairing.py pair_by_code Lesson.on_now": "taught with her, in the same line",
    "routines/lessons/views/teaching.py teach Lesson.on_now": "taught by her, in the next line",
    "routines/own_words/views.py words_zip JobFile.filter": "of a job of hers",
    "routines/paper/views/booklets.py booklet_choose Routine.all": "cards of a page that was read for her",
    "routines/paper/views/booklets.py booklet_pdf JobFile.filter": "of a job of hers",
    "routines/plans/views/history.py restore RoutineVersion.select_related": "of a count that she may change (open_plan)",
    "routines/plans/views/merging.py merge RoutineVersion, or 404": "of a count that she may change (open_plan)",
    "routines/plans/views/open_plan.py became Routine.filter": "of a form that she sent; found again by `visible_to`",
    "routines/plans/views/open_plan.py open_plan PlanDraft.filter": "another's is not there, in the next line",
    "routines/plans/views/page.py save_plan Routine.filter": "whether the count of a form that she sent is still there",
    "routines/team/views/notes.py remove RoutineNote.filter": FOUND_BEFORE,
    "routines/team/views/planned.py remove Planned.filter": FOUND_BEFORE,
    "routines/team/views/suggestions.py suggestions Suggestion.filter": "those that she made",
    "routines/team/views/suggestions.py withdraw Suggestion.filter": FOUND_BEFORE,
}


def modules() -> set[Path]:
    """Those that hold a view, and all beside them in a folder of views."""
    found = {ROOT / (view.__module__.replace(".", "/") + ".py") for view in every_view(get_resolver())}
    ours = {path for path in found if path.is_relative_to(ROOT) and path.exists()}
    return ours | {other for path in ours if path.parent.name == "views" for other in path.parent.glob("*.py")}


def every_view(resolver: URLResolver) -> Iterator[object]:
    for entry in resolver.url_patterns:
        if isinstance(entry, URLPattern):
            yield entry.callback
        else:
            yield from every_view(entry)


def ways_round(path: Path) -> Iterator[str]:
    """Where a private model is asked otherwise: the file, the function, the model and what it is asked."""
    tree = ast.parse(path.read_text(encoding="utf-8"))
    for function in (node for node in ast.walk(tree) if isinstance(node, ast.FunctionDef)):
        for asked in asked_in(function):
            yield f"{path.relative_to(ROOT)} {function.name} {asked}"


def asked_in(function: ast.FunctionDef) -> Iterator[str]:
    for node in ast.walk(function):
        if isinstance(node, ast.Attribute) and is_all_rows(node.value):
            model = node.value.value.id  # type: ignore[attr-defined]
            if node.attr not in READERS:
                yield f"{model}.{node.attr}"
        if isinstance(node, ast.Call) and getattr(node.func, "id", "") in ("get_object_or_404", "get_list_or_404"):
            first = node.args[0]
            if isinstance(first, ast.Name) and first.id in PRIVATE:
                yield f"{first.id}, or 404"


def is_all_rows(node: ast.AST) -> bool:
    """`Routine.objects`"""
    named = isinstance(node, ast.Attribute) and node.attr in ("objects", "_default_manager", "_base_manager")
    return named and isinstance(node.value, ast.Name) and node.value.id in PRIVATE  # type: ignore[attr-defined]


def test_every_way_round_has_its_reason_and_every_reason_a_way():
    found = {way for path in modules() for way in ways_round(path)}
    assert sorted(found) == sorted(ROUND)


def test_the_modules_are_those_of_the_views():
    names = {str(path.relative_to(ROOT)) for path in modules()}
    assert {"routines/bank/views/routine.py", "routines/coverage/files.py", "routines/exchange/views.py"} <= names
    assert len(names) > 40


def test_it_sees_what_it_looks_for():
    source = """
def view(request, pk):
    one = get_object_or_404(Routine, pk=pk)
    other = get_object_or_404(Lesson.objects.kept(), pk=pk)
    allowed = Routine.objects.visible_to(request.user).filter(pk=pk)
    School.objects.first()
    return RoutineVersion._default_manager.get(pk=pk)
"""
    function = ast.parse(source).body[0]
    assert isinstance(function, ast.FunctionDef)
    assert sorted(asked_in(function)) == ["Lesson.kept", "Routine, or 404", "RoutineVersion.get"]
