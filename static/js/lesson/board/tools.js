// The tools beside the grid. A tool is taken in hand and used on the cells that are tapped; with the keyboard its letter
// works on the cell in focus at once. Both ways end in the same function.

import { characterAt, digitPlaces } from "./numeral.js";

const LONGEST_PHRASE = 280, MOST_CELLS = 12;
const USED_ON_CELLS = new Set(["tint", "ring", "underline", "hatch", "jump", "phrase", "guess", "cover", "again", "said"]);
export const THINK_SECONDS = 30;

export class Tools {
  constructor({ root, board }) {
    Object.assign(this, { root, board, inHand: "", chosen: [] });
    root.addEventListener("click", (event) => {
      const button = event.target.closest("[data-tool]");
      if (button) this.press(button.dataset.tool);
    });
  }

  press(name) {
    const { gestures } = this.board;
    if (name === "next") this.board.writeNext();
    else if (name === "undo") gestures.undo();
    else if (name === "think") gestures.think(this.board.think.isRunning ? 0 : THINK_SECONDS);
    else if (USED_ON_CELLS.has(name)) this.take(this.inHand === name ? "" : name);
  }

  // Take a tool in hand, or put it down ("").
  take(name) {
    this.inHand = name;
    this.#choose([]);
    for (const button of this.root.querySelectorAll("[aria-pressed]")) {
      button.setAttribute("aria-pressed", String(button.dataset.tool === name));
    }
    this.board.root.dataset.inHand = name;
    if (name) this.board.tell(this.board.say(`use-${name}`));
    else this.board.tell("");
  }

  // The tool in hand on a cell that was tapped.
  use(n, point) {
    this.apply(this.inHand, n, point);
    if (this.inHand === "said" || this.inHand === "guess") this.take("");
  }

  // One tool on one cell, by tap or by key.
  apply(name, n, point = null) {
    const { gestures, typing } = this.board;
    if (name === "tint" || name === "ring" || name === "hatch") gestures.toggleMark(n, name);
    else if (name === "underline") this.#underline(n, point);
    else if (name === "jump") this.#jump(n);
    else if (name === "phrase") this.#phrase(n, point !== null);
    else if (name === "guess") this.#guess(n);
    else if (name === "cover") gestures.toggleCover(n);
    else if (name === "again") gestures.recountLine(n);
    else if (name === "said") typing.open(n);
  }

  #underline(n, point) {
    const { gestures, grid } = this.board;
    const entry = gestures.entry(n);
    if (!entry?.text) return;
    const numeral = grid.cell(n).querySelector(".b-entry:last-child > .numeral");
    if (point && numeral) gestures.toggleMark(n, "underline", characterAt(numeral, entry.text, point.x, point.y));
    else gestures.underlineNext(n, digitPlaces(entry.text));
  }

  #jump(n) {
    const [from] = this.chosen;
    if (from === undefined) {
      this.#choose([n]);
      this.board.tell(this.board.say("jump-where"));
      return;
    }
    if (from !== n) this.board.gestures.jump(from, n);
    this.#choose([]);
    this.board.tell(this.inHand ? this.board.say("use-jump") : "");
  }

  #guess(n) {
    if (this.board.gestures.entry(n)) this.board.tell(this.board.say("guess-empty"));
    else this.board.typing.open(n, { guess: true });
  }

  // By tap, cells are gathered first and the words typed then; by key, the words follow at once.
  #phrase(n, byTap) {
    const { slip, say } = this.board;
    const cells = this.chosen.includes(n) ? this.chosen.filter((one) => one !== n) : [...this.chosen, n];
    if (cells.length > MOST_CELLS) {
      this.board.tell(say("phrase-most"));
      return;
    }
    this.#choose(cells);
    if (byTap && slip.isOpen) return;
    slip.open({
      label: say("type-phrase"), hint: say("no-names"), longest: LONGEST_PHRASE,
      choices: [{ name: say("pin-it"), key: say("key-enter"), act: (text) => this.#pin(text) }],
      onOneLine: true, // under the grid, so that it covers no cell
      done: () => {
        this.take("");
        this.board.grid.focus(n, { take: true });
      },
    });
  }

  #pin(text) {
    if (this.chosen.length) this.board.gestures.pinPhrase(text, [...this.chosen].sort((a, b) => a - b));
  }

  #choose(cells) {
    this.chosen = cells;
    const { grid } = this.board;
    for (const cell of grid.root.querySelectorAll(".is-chosen")) cell.classList.remove("is-chosen");
    for (const n of cells) grid.cell(n)?.classList.add("is-chosen");
  }
}
