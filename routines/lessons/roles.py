"""Who takes part in a lesson, and what each may send, hear and do."""

from dataclasses import dataclass
from enum import StrEnum
from typing import Any

from routines.lessons.kinds import KINDS


class Role(StrEnum):
    TEACHER = "teacher"
    CO_TEACHER = "co-teacher"
    SUBSTITUTE = "substitute"
    BOARD = "board"


@dataclass(frozen=True, slots=True)
class Participant:
    """One device in one lesson. `user` is whoever is signed in on it; None where only a pass lets it in."""

    role: Role
    user: Any = None

    @property
    def is_board(self) -> bool:
        return self.role is Role.BOARD

    @property
    def is_guest(self) -> bool:
        """Guests are there while the lesson is on; afterwards it is its teacher's alone."""
        return self.role is not Role.TEACHER

    @property
    def may_end(self) -> bool:
        return self.role in (Role.TEACHER, Role.CO_TEACHER)

    @property
    def may_pair(self) -> bool:
        return self.may_end

    def may_send(self, name: str) -> bool:
        """Kinds that are not known here are kept from people, and never from a board."""
        kind = KINDS.get(name)
        if self.role is Role.TEACHER:
            return True
        if self.role is Role.CO_TEACHER:
            return name != "lesson.reopen"
        if self.role is Role.SUBSTITUTE:
            return kind is None or kind.substitute_sends
        return kind is not None and kind.board_sends

    def may_hear(self, name: str) -> bool:
        """A board never hears what it could not show: a kind that is not known here might be anything."""
        if not self.is_board:
            return True
        kind = KINDS.get(name)
        return kind is not None and kind.board_hears
