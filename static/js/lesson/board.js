// The page that the class sees. Reads the count once, opens the list of events, draws it, and keeps in touch with the
// server. It never writes a count that nobody asked for.

import { BoardView } from "./board/board_view.js";
import { listenToKeys } from "./board/keys.js";
import { makeRuler } from "./board/measure.js";
import { offerEnding } from "./ending.js";
import { keepPage } from "./keep_page.js";
import { openLesson } from "./open_lesson.js";
import { showStatus } from "./status.js";
import { wordsOf } from "./words.js";

const root = document.getElementById("board");
const say = wordsOf();
const names = JSON.parse(document.getElementById("names").textContent);

async function open() {
  const lesson = await openLesson(root.dataset);
  if (!lesson) {
    root.querySelector('[data-part="hint"]').textContent = say("no-count");
    return;
  }
  const { count, list, sync } = lesson;
  const ruler = await makeRuler(getComputedStyle(root).fontFamily);
  const board = new BoardView({ root, count, list, say, names, ruler });
  board.part("grid").lang = count.language;
  const status = () => showStatus(board.part("status"), { list, sync, say });
  list.changed = () => {
    board.paint();
    status();
  };
  list.answered = sync.changed = status;
  listenToKeys(board);
  const ending = board.part("end-sheet");
  if (ending) {
    const ask = offerEnding({ dialog: ending, after: root.dataset.after, list, sync });
    root.querySelector('[data-does="end"]').addEventListener("click", ask);
  }
  list.changed();
  board.grid.focus(board.frame || 1, { take: true });
  root.dataset.ready = "yes";
  sync.start();
  keepPage(root.dataset);
}

open();
