"""Who may do what, address by address: what stands behind each, who gets it, and who sees that it is there."""

from dataclasses import dataclass

PEOPLE = frozenset({"owner", "co_author", "teammate", "other_teacher", "coach", "administrator"})
IN_A_LESSON = frozenset({"board", "substitute"})
WAITING = frozenset({"waiting_device"})
SIGNED_OUT = frozenset({"signed_out"})
EVERYBODY = PEOPLE | IN_A_LESSON | WAITING | SIGNED_OUT

OWNER = frozenset({"owner"})
AUTHORS = frozenset({"owner", "co_author"})
GRADE = frozenset({"owner", "teammate"})
TEAM = frozenset({"owner", "co_author", "teammate"})  # one band; the co-author teaches its other grade
COACH = frozenset({"coach"})
ADMINISTRATOR = frozenset({"administrator"})
NOBODY: frozenset[str] = frozenset()


@dataclass(frozen=True, slots=True)
class Cell:
    """thing: what stands behind the address, by its name in the school of the test ("" where nothing does). allowed: who
    gets it. seen: who is told that it is there and not hers (403); for all others signed in it is not there (404). sends: who
    may send something to it, where these are not all who get it."""

    thing: str
    allowed: frozenset[str]
    seen: frozenset[str] = NOBODY
    sends: frozenset[str] | None = None

    def open_to(self, method: str) -> frozenset[str]:
        return self.sends if method == "post" and self.sends is not None else self.allowed


ALL = (Cell("", PEOPLE),)
OPEN = (Cell("", EVERYBODY),)
SIGNING_IN = PEOPLE | WAITING | SIGNED_OUT  # a device in a lesson finds that lesson and the sign-in page

COUNT_READ = (
    Cell("draft", AUTHORS),
    Cell("shared", PEOPLE),
    Cell("retired", AUTHORS | COACH | ADMINISTRATOR),
)
COUNT_CHANGED = (Cell("draft", AUTHORS), Cell("shared", AUTHORS | COACH, seen=PEOPLE))
LOG_READ = (
    Cell("lesson", OWNER),
    Cell("lesson_for_team", TEAM, sends=OWNER),
    Cell("lesson_for_team_and_coach", TEAM | COACH, sends=OWNER),
)
ON_NOW = Cell("lesson_on_now", OWNER)
FOR_DEVICES = (Cell("lesson_on_now", OWNER | IN_A_LESSON),)


def for_owner(thing: str, seen: frozenset[str] = NOBODY) -> tuple[Cell, ...]:
    return (Cell(thing, OWNER, seen),)


def for_administrator(thing: str = "") -> tuple[Cell, ...]:
    return (Cell(thing, ADMINISTRATOR, seen=PEOPLE),)


def each(names: str, cells: tuple[Cell, ...], before: str = "") -> dict[str, tuple[Cell, ...]]:
    return dict.fromkeys((before + name for name in names.split()), cells)


# By the name of the address; with "new" where a plan that nobody saved yet goes by the same name.
TABLE: dict[str, tuple[Cell, ...]] = {
    **each("accounts:sign_in board_wait board_status lesson_worker", OPEN),
    **each("favicon accounts:sign_out accounts:recover grade_bands:set_up", (Cell("", SIGNING_IN),)),
    "accounts:invitation": (Cell("invitation", SIGNING_IN),),
    "accounts:new_passphrase": (Cell("new_passphrase", SIGNING_IN),),
    "board_code": (Cell("", WAITING),),
    # One's own, whoever one is.
    **each("own_account change_passphrase sign_out_everywhere", ALL, before="accounts:"),
    **each("home bank my_plans worth_teaching plan_new lessons suggestions planned_put_back", ALL),
    **each("coverage coverage_csv coverage_pdf coverage_print coverage_standards booklet_choose import file_schema", ALL),
    **each("coverage_standards_csv coverage_standards_pdf coverage_standards_print", ALL),
    **each("erase_words erase_progress erase_finish own_words what_is_kept", ALL),
    **{
        f"plan_{name} new": (Cell("plan_nobody_saved", PEOPLE),)
        for name in ("preview", "edit", "draft", "drop", "change", "part")
    },
    # Counts.
    **each("routine routine_copy routine_note print print_html print_pdf plan_pdf", COUNT_READ),
    **each("export_routine export_grid planned_new lesson_taught lesson_teach", COUNT_READ),
    "routine_compare": (
        Cell("copy_in_drafts", AUTHORS),
        Cell("copy_of_shared", PEOPLE),
        Cell("copy_of_retired", AUTHORS | COACH | ADMINISTRATOR),
    ),
    "suggest": (Cell("draft", NOBODY, seen=AUTHORS), Cell("shared", PEOPLE - ADMINISTRATOR, seen=ADMINISTRATOR)),
    "routine_share": (Cell("draft", AUTHORS), Cell("shared", AUTHORS, seen=PEOPLE)),
    "routine_retire": (Cell("draft", NOBODY, seen=AUTHORS), Cell("shared", OWNER | COACH | ADMINISTRATOR, seen=PEOPLE)),
    "routine_co_authors": (Cell("draft", OWNER, seen=AUTHORS), Cell("shared", OWNER, seen=PEOPLE)),
    "plan_preview": (Cell("draft", PEOPLE),),  # of what is typed; the plan that is kept is not looked at
    **each("edit part draft drop change merge history restore", COUNT_CHANGED, before="plan_"),
    **each("note_change note_remove", (*for_owner("note", seen=PEOPLE), *for_owner("note_on_draft", seen=AUTHORS))),
    # Lessons: their records, and the board and the lectern of one that is on.
    **each("lesson lesson_replay", LOG_READ),
    **each("lesson_board lesson_board_json lesson_events", FOR_DEVICES),
    **each("lesson_lectern lesson_lectern_json lesson_ask", (Cell("lesson_on_now", OWNER | {"substitute"}),)),
    **each("lesson_pair lesson_end lesson_reopen lesson_delete", (ON_NOW,)),
    "lesson_disconnect": for_owner("device"),
    "lesson_pair_code": (Cell("waiting_device", PEOPLE, sends=NOBODY),),  # without one of her lessons there is nothing to send to
    # The week, and what colleagues suggest.
    "week": (Cell("", PEOPLE - ADMINISTRATOR, seen=ADMINISTRATOR),),
    **each("planned_move planned_remove", (Cell("planned", OWNER, seen=TEAM | COACH),)),
    "suggestion_answer": for_owner("suggestion", seen=COACH),
    "suggestion_withdraw": (Cell("suggestion", COACH, seen=OWNER),),
    **each("coverage_cell planned_for_gap", (Cell("grade_and_area", GRADE | COACH | ADMINISTRATOR),)),
    **each("coverage_standard planned_for_standard", (Cell("grade_and_standard", GRADE | COACH | ADMINISTRATOR),)),
    "suggest_for_gap": (Cell("grade_and_area", GRADE | COACH, seen=ADMINISTRATOR),),
    "suggest_for_standard": (Cell("grade_and_standard", GRADE | COACH, seen=ADMINISTRATOR),),
    # Files and prints that somebody asked for.
    **each("booklet booklet_drop booklet_pdf", for_owner("booklet")),
    **each("own_words_zip own_words_drop", for_owner("words")),
    **each("import_look import_add import_progress import_stop", for_owner("file")),
    # What was found is gone within the hour: whoever asks for any look is led to the page of her own.
    **each("erase_look erase_begin", (Cell("look", PEOPLE),)),
    **each("erase_look_again erase_leave", for_owner("look")),
    "export_bank": (Cell("", COACH | ADMINISTRATOR, seen=PEOPLE),),
    # The school.
    **each("school people invite recovery_code", for_administrator(), before="accounts:"),
    **each("reset_passphrase set_role close_account", for_administrator("person"), before="accounts:"),
    "accounts:reopen_account": for_administrator("leaver"),
    "accounts:withdraw_invitation": for_administrator("sent_invitation"),
    "hand_on": for_administrator("leaver"),
    "backups": for_administrator(),
    **each("classes new_class new_year grades new_grade new_band", for_administrator(), before="grade_bands:"),
    **each("import_common_core import_standards keep_standards", for_administrator(), before="grade_bands:"),
    **each("edit_class remove_class", for_administrator("class_group"), before="grade_bands:"),
    **each("edit_year remove_year carry_over", for_administrator("year"), before="grade_bands:"),
    "grade_bands:edit_grade": for_administrator("grade"),
    "grade_bands:edit_band": for_administrator("band"),
}  # fmt: skip
