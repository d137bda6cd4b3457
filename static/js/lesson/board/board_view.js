// The board: puts grid, ink, gutter, tools and think bar together, and draws the lesson's state.

import { Fold } from "./folding.js";
import { fit } from "./fitting.js";
import { Gestures } from "./gestures.js";
import { GridView } from "./grid_view.js";
import { Gutter } from "./gutter.js";
import { Ink } from "./ink.js";
import { isStacked } from "./numeral.js";
import { SlipOfPaper } from "./slip_of_paper.js";
import { ThinkBar } from "./think.js";
import { Tools } from "./tools.js";
import { Typing } from "./typing.js";

const LEVELS = [[], ["is-tight"], ["is-tight", "is-tightest"]]; // ever narrower gutters, for wide and long counts
const SCROLL_BUTTONS = 52; // px, under a grid of which only some lines are shown
const GUTTER = 0.14, BESIDE = 0.05; // of the screen: wished for at the left, left free for arcs at the right
const PHONE = window.matchMedia("(max-width: 48rem)");
const ON_A_PHONE = 0.6; // of the screen's height is the grid's; the page scrolls there
const LOW = "is-low"; // a struck text stands closer to its correction

export class BoardView {
  #before = null;
  #loaded = false;

  constructor({ root, count, list, say, names, ruler, read = false }) {
    Object.assign(this, { root, count, list, say, read });
    const part = (name) => root.querySelector(`[data-part="${name}"]`);
    this.part = part;
    this.fold = new Fold(count);
    this.gestures = new Gestures({ list, fold: this.fold });
    this.grid = new GridView({ root: part("grid"), fold: this.fold, say });
    this.gutter = new Gutter({ root: part("gutter"), grid: this.grid, say, remove: (event) => this.gestures.remove(event) });
    this.ink = new Ink({ svg: part("ink"), grid: this.grid, gutter: this.gutter, fold: this.fold });
    this.think = new ThinkBar({ root: part("think"), bar: part("think-bar"), device: list.maker.device });
    this.slip = new SlipOfPaper({ root: part("slip"), names, say });
    this.typing = new Typing({ slip: this.slip, gestures: this.gestures, fold: this.fold, grid: this.grid, say });
    this.tools = new Tools({ root: part("tools"), board: this });
    this.goingOn = false;
    this.widest = Math.max(...count.texts.slice(0, count.terms).map((text, index) =>
      ruler(text, { bold: this.grid.landmarks.has(index + 1) })));
    this.stacked = count.texts.slice(0, count.terms).some(isStacked);
    this.#listen();
  }

  // The count that is framed as next; 0 after the planned end until somebody goes on.
  get frame() { return this.#frame(this.list.state); }

  #frame(state) {
    const { next } = state;
    return next > this.count.terms && !this.goingOn ? 0 : Math.min(next, this.count.texts.length);
  }

  writeNext() {
    const { next } = this.list.ahead;
    if (next > this.count.terms && !this.goingOn) {
      this.goingOn = true;
      this.tell(this.say("planned-end"));
      this.paint();
      this.grid.focus(this.frame, { take: true });
      return;
    }
    if (this.gestures.writeNext() === null) this.tell(this.say("no-further"));
  }

  // Draws the state. Called whenever it changed and when the screen did.
  paint({ fitAgain = false } = {}) {
    const { state } = this.list;
    const written = Math.max(this.count.terms, state.next - 1, ...Object.keys(state.predictions).map(Number));
    const upto = this.goingOn ? Math.max(written, Math.min(state.next, this.count.texts.length)) : written;
    const hadFocus = this.grid.root.contains(document.activeElement);
    if (this.grid.build(upto) || fitAgain) {
      this.#fit();
      if (hadFocus) this.grid.focus(this.grid.focused, { take: true }); // measured, a cell may have been out of view
    }
    const frame = this.frame;
    this.grid.paint(state, frame);
    this.#follow(state, frame);
    this.think.paint(state.ended ? null : state.think, { heardLive: this.#loaded });
    this.paintInk();
    this.#announce(state);
    this.#before = state;
    this.#loaded = true;
  }

  paintInk() {
    this.#sayHidden();
    this.gutter.paint(this.list.state);
    this.ink.paint(this.list.state, this.font);
  }

  // Words for everyone near the board: how a tool is used, where the planned end is.
  tell(words) {
    this.part("hint").textContent = words;
  }

  bare() {
    this.root.classList.toggle("is-bare");
    this.tell(this.root.classList.contains("is-bare") ? this.say("tools-back") : "");
    this.paint({ fitAgain: true });
  }

  fullScreen() {
    if (document.fullscreenElement) document.exitFullscreen();
    else document.documentElement.requestFullscreen?.().catch(() => this.tell(this.say("no-full-screen")));
  }

  help() {
    this.part("help").showModal();
  }

  #fit() {
    let best = null;
    for (const level of LEVELS) {
      best = this.#fitted(level);
      if (best.whole) break;
    }
    if (!best.whole) best = this.#fitted(LEVELS.at(-1), SCROLL_BUTTONS);
    this.font = best.font;
    this.root.classList.toggle(LOW, best.height < 1.6 * best.font);
    const left = PHONE.matches ? best.font : Math.max(0, best.room.height - best.height * best.rows - (best.whole ? 2 : SCROLL_BUTTONS));
    for (const [name, value] of Object.entries({ font: best.font, "cell-width": best.width, "cell-height": best.height,
      "grid-width": best.width * best.columns + 4, drop: Math.min(left, 1.25 * best.font) })) {
      this.root.style.setProperty(`--${name}`, `${value.toFixed(1)}px`);
    }
    if (!PHONE.matches) this.#widenGutter(best);
    this.grid.show(best, this.grid.first);
  }

  // A long count narrows the gutter to be seen whole; what its columns leave free goes back to what children say.
  #widenGutter({ room, width, columns }) {
    const screen = window.innerWidth;
    const has = this.part("gutter").getBoundingClientRect().width;
    const free = room.width - width * columns - BESIDE * screen;
    if (free > 0 && has < GUTTER * screen) this.root.style.setProperty("--gutter", `${Math.min(GUTTER * screen, has + free).toFixed(0)}px`);
  }

  #fitted(level, less = 0) {
    this.root.style.removeProperty("--gutter");
    for (const name of LEVELS.at(-1)) this.root.classList.toggle(name, level.includes(name));
    const { rows, columns } = this.grid;
    const { width, height: high } = this.part("stage").getBoundingClientRect();
    const height = PHONE.matches ? ON_A_PHONE * window.innerHeight : high;
    const room = { width: width - 3, height: height - 3 - less };
    const best = fit({ room, screen: window.innerWidth, rows, columns, widest: this.widest, stacked: this.stacked });
    return { ...best, room: { width, height }, whole: best.rows >= rows && best.columns >= columns };
  }

  // What is next stays in view; the focus goes with it while it was there.
  #follow(state, frame) {
    const { grid } = this;
    const moved = !this.#before || this.#before.next !== state.next;
    const hadFocus = grid.root.contains(document.activeElement); // a cell that scrolls out of view loses it
    if (state.line !== null && state.line !== this.#before?.line) this.showLine(state.line);
    else if (moved) grid.reveal(frame || state.next - 1);
    const old = this.#before && this.#frame(this.#before);
    if (!moved || !(frame || state.next > 1)) return;
    if (!this.#before || grid.focused === old || grid.focused === this.#before.next) {
      const target = frame || state.next - 1;
      grid.focus(target, { take: hadFocus });
    }
  }

  showLine(line) {
    const { grid } = this;
    const down = this.count.fill === "down";
    const n = this.count.places.findIndex(([row, column]) => (down ? column : row) === line + 1) + 1;
    if (n) grid.reveal(n);
  }

  scroll(lines) {
    const { grid } = this;
    const by = (size, all, first) => (all > size ? first + lines : first);
    grid.show(grid.fitted, {
      row: by(grid.fitted.rows, grid.rows, grid.first.row),
      column: grid.rows > grid.fitted.rows ? grid.first.column : by(grid.fitted.columns, grid.columns, grid.first.column),
    });
    this.paintInk();
  }

  #sayHidden() {
    const { grid } = this;
    const upright = grid.rows > grid.fitted.rows;
    const before = upright ? grid.first.row : grid.first.column;
    const after = upright ? grid.rows - grid.fitted.rows - before : grid.columns - grid.fitted.columns - before;
    for (const [name, hidden] of [["earlier", before], ["later", after]]) {
      const button = this.part(name);
      button.classList.toggle("is-idle", hidden === 0);
      button.disabled = hidden === 0;
      const word = `${hidden === 1 ? "one" : "many"}-${upright ? "rows" : "columns"}-${name}`;
      const words = hidden ? this.say(word, { count: hidden }) : "";
      if (button.textContent !== words) button.textContent = words;
    }
    this.part("scroll").hidden = before + after === 0;
  }

  // Says what was written, for those who hear the board: only what is new.
  #announce(state) {
    if (!this.#before) return;
    const news = Object.keys(state.entries).filter((n) => {
      const was = this.#before.entries[n]?.at(-1), is = state.entries[n].at(-1);
      return was?.event !== is.event && (was?.text !== is.text || was?.left_out !== is.left_out);
    });
    this.said = news.at(-1) ?? this.said;
    if (this.said === undefined) return;
    const covered = state.covered.includes(Number(this.said));
    const entry = state.entries[this.said]?.at(-1);
    if (news.length || covered || !entry) this.part("live").textContent = covered || !entry ? "" : this.#spoken(entry);
  }

  #spoken({ text, struck, left_out: leftOut }) {
    const words = leftOut ? this.say("cell-left-out") : text;
    return struck.length ? this.say("heard-corrected", { said: struck.at(-1), text: words }) : words;
  }

  #listen() {
    const { grid } = this;
    grid.root.addEventListener("click", (event) => {
      const cell = event.target.closest("[data-n]");
      if (cell) this.#tap(Number(cell.dataset.n), { x: event.clientX, y: event.clientY });
    });
    grid.root.addEventListener("dblclick", (event) => {
      const cell = event.target.closest("[data-n]");
      if (cell && !this.tools.inHand && Number(cell.dataset.n) < this.list.ahead.next) this.typing.open(Number(cell.dataset.n));
    });
    grid.root.addEventListener("focusin", (event) => {
      const cell = event.target.closest("[data-n]");
      if (cell && Number(cell.dataset.n) !== grid.focused) grid.focus(Number(cell.dataset.n));
    });
    grid.root.addEventListener("wheel", (event) => this.scroll(Math.sign(event.deltaY)), { passive: true });
    this.part("earlier").addEventListener("click", () => this.scroll(-1));
    this.part("later").addEventListener("click", () => this.scroll(1));
    const buttons = { "bare": () => this.bare(), "full-screen": () => this.fullScreen(), "help": () => this.help() };
    for (const [name, act] of Object.entries(buttons)) {
      for (const button of this.root.querySelectorAll(`[data-does="${name}"]`)) button.addEventListener("click", act);
    }
    new ResizeObserver(() => this.list.ahead && this.grid.upto && this.paint({ fitAgain: true })).observe(this.part("desk"));
  }

  #tap(n, point) {
    if (this.slip.isOpen && this.tools.inHand !== "phrase") this.slip.leave();
    this.grid.focus(n, { take: !this.slip.isOpen });
    if (this.tools.inHand) this.tools.use(n, point);
    else if (n === this.frame) this.writeNext();
  }
}
