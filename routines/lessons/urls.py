"""Addresses of lessons."""

from django.urls import path, register_converter

from routines.lessons.views import exchange, history, lectern, log, pairing, replay, teaching


class SixDigits:
    """A code as it is shown, with the zeros in front."""

    regex = "[0-9]{6}"

    def to_python(self, value: str) -> str:
        return value

    def to_url(self, value: str) -> str:
        return value


register_converter(SixDigits, "six_digits")

urlpatterns = [
    path("routines/<int:pk>/taught/", log.taught, name="lesson_taught"),
    path("routines/<int:pk>/teach/", teaching.teach, name="lesson_teach"),
    path("lessons/", history.lessons, name="lessons"),
    path("lessons/worker.js", teaching.worker, name="lesson_worker"),
    path("lessons/<uuid:key>/", log.lesson, name="lesson"),
    path("lessons/<uuid:key>/replay/", replay.replay, name="lesson_replay"),
    path("lessons/<uuid:key>/board/", teaching.board, name="lesson_board"),
    path("lessons/<uuid:key>/board.json", exchange.board_json, name="lesson_board_json"),
    path("lessons/<uuid:key>/lectern/", lectern.lectern, name="lesson_lectern"),
    path("lessons/<uuid:key>/lectern.json", exchange.lectern_json, name="lesson_lectern_json"),
    path("lessons/<uuid:key>/ask/", lectern.ask, name="lesson_ask"),
    path("lessons/<uuid:key>/events/", exchange.events, name="lesson_events"),
    path("lessons/<uuid:key>/pair/", pairing.pair, name="lesson_pair"),
    path("lessons/<uuid:key>/pair/<int:pk>/", pairing.disconnect, name="lesson_disconnect"),
    path("lessons/<uuid:key>/end/", teaching.end, name="lesson_end"),
    path("lessons/<uuid:key>/reopen/", teaching.reopen, name="lesson_reopen"),
    path("lessons/<uuid:key>/delete/", teaching.delete, name="lesson_delete"),
    path("board/", pairing.wait, name="board_wait"),
    path("board/status/", pairing.status, name="board_status"),
    path("board/code.svg", pairing.code_svg, name="board_code"),
    path("pair/<six_digits:code>/", pairing.pair_by_code, name="lesson_pair_code"),
]
