// The teacher's page. Reads the count with its plan once, opens the list of events, draws it, and keeps in touch with the
// server. Its questions (will it appear, is this true) are the server's to answer; all else works without network.

import { makeRuler } from "./board/measure.js";
import { offerEnding } from "./ending.js";
import { keepPage } from "./keep_page.js";
import { LecternView } from "./lectern/lectern_view.js";
import { openLesson } from "./open_lesson.js";
import { showStatus } from "./status.js";
import { wordsOf } from "./words.js";

const root = document.getElementById("lectern");
const say = wordsOf();
const names = JSON.parse(document.getElementById("names").textContent);
const part = (name) => root.querySelector(`[data-part="${name}"]`);

async function open() {
  const lesson = await openLesson(root.dataset);
  if (!lesson) {
    part("told").textContent = say("no-count");
    return;
  }
  const { count, list, sync } = lesson;
  const ruler = await makeRuler(getComputedStyle(root).fontFamily);
  const lectern = new LecternView({ root, count, list, say, names, ruler });
  part("grid").lang = count.language;
  const status = () => {
    showStatus(part("status"), { list, sync, say });
    part("sign-in").hidden = sync.trouble !== "signed-out";
  };
  list.changed = () => {
    lectern.paint();
    status();
  };
  list.answered = sync.changed = status;
  const ending = part("end-sheet");
  if (ending) {
    const ask = offerEnding({ dialog: ending, after: root.dataset.after, list, sync });
    for (const button of root.querySelectorAll('[data-does="end"]')) button.addEventListener("click", ask);
  }
  list.changed();
  root.dataset.ready = "yes";
  sync.start();
  keepPage(root.dataset);
}

// The server's fragments say themselves what is wrong; where it cannot be reached, the sheet says so.
document.addEventListener("htmx:sendError", (event) => unreached(event.target, false));
document.addEventListener("htmx:beforeRequest", (event) => unreached(event.target, true));

function unreached(element, reached) {
  const words = element.closest("dialog")?.querySelector("[data-unreached]");
  if (words) words.hidden = reached;
}

open();
