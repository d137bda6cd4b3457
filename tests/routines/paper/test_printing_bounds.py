"""Printing keeps the server free: few wait at once, and nothing endless is laid out."""

import threading

import pytest

from routines.paper.press import PaperError, PrintingProcess


def test_others_are_told_to_wait_while_as_many_print_as_may(monkeypatch):
    begun, end = threading.Barrier(3), threading.Event()

    def slow(self, *given):
        begun.wait(10)
        end.wait(10)
        return b"%PDF"

    monkeypatch.setattr(PrintingProcess, "_in_turn", slow)
    process = PrintingProcess(most_in_hand=2)
    printing = [threading.Thread(target=process.pdf, args=("<p>", "")) for _ in range(2)]
    for thread in printing:
        thread.start()
    begun.wait(10)
    with pytest.raises(PaperError, match="Others are printing just now"):
        process.pdf("<p>", "")
    end.set()
    for thread in printing:
        thread.join(10)
    monkeypatch.setattr(PrintingProcess, "_in_turn", lambda self, *given: b"%PDF")
    assert process.pdf("<p>", "") == b"%PDF"


def test_what_fails_gives_its_place_back(monkeypatch):
    def fails(self, *given):
        raise PaperError("No.")

    process = PrintingProcess(most_in_hand=1)
    monkeypatch.setattr(PrintingProcess, "_in_turn", fails)
    for _ in range(3):
        with pytest.raises(PaperError, match="No"):
            process.pdf("<p>", "")


def test_a_document_without_end_is_not_laid_out(monkeypatch):
    monkeypatch.setattr(PrintingProcess, "_in_turn", lambda self, *given: pytest.fail("It was laid out."))
    with pytest.raises(PaperError, match="too long to print"):
        PrintingProcess(largest=10).pdf("<p>" * 4, "")
