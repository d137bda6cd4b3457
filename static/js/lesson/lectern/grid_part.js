// The small grid on top: as far as it is written, the next cell framed. A tap opens a cell; while a stretch is being
// picked, two taps or a drag choose its first and last cell.

import { GridView } from "../board/grid_view.js";
import { isStacked } from "../board/numeral.js";

const CELL = { width: 62, font: 21, smallest: 14 };
// A thumb needs 44 px. Where a whole line of the fold then would not fit, its cells may be narrower, for a line that is cut
// shows no pattern: 32 px, over the 24 of WCAG 2.2 (2.5.8). Lines too long even so are shown in parts, of 44 px again.
const TARGET = 44, NARROWEST = 32;
const STACKED = 2.3, LINE = 1.9; // height of a line, of the font
const AIR = 10, LEAST_AIR = 5; // px beside the widest numeral
const ROWS = 5, ROWS_ON_A_LOW_SCREEN = 2, LOW = 620;
const MOVES = { ArrowUp: [-1, 0], ArrowDown: [1, 0], ArrowLeft: [0, -1], ArrowRight: [0, 1] };

export class GridPart {
  #first = null; // of the stretch that is being picked
  #dragged = false;

  constructor({ root, room, earlier, later, fold, say, ruler, open }) {
    Object.assign(this, { root, room, earlier, later, fold, open });
    this.grid = new GridView({ root, fold, say });
    this.picked = null; // is told the stretch once it is chosen
    const { texts, terms, landmarks } = fold.count;
    this.widest = Math.max(...texts.slice(0, terms).map((text, at) => ruler(text, { bold: landmarks.includes(at + 1) })));
    this.stacked = texts.slice(0, terms).some(isStacked);
    this.#listen();
    earlier.addEventListener("click", () => this.#turn(-1));
    later.addEventListener("click", () => this.#turn(1));
    new ResizeObserver(() => { if (this.grid.upto) this.#fit(); }).observe(room);
  }

  paint(state, frame) {
    const { terms, texts } = this.fold.count;
    const upto = Math.max(terms, state.next - 1, frame, ...Object.keys(state.predictions).map(Number));
    if (this.grid.build(Math.min(upto, texts.length)) || !this.shown) this.#fit();
    this.grid.paint(state, frame);
    const target = frame || Math.max(1, state.next - 1);
    if (this.following !== target) {
      this.following = target;
      this.grid.reveal(target);
      this.#sayHidden();
      if (!this.root.contains(document.activeElement)) this.grid.focus(target);
    }
  }

  // Choose a stretch: {from, to} is handed to `done`. Without `done`: no more.
  pick(done) {
    this.picked = done ?? null;
    this.#choose(null, null);
    this.root.classList.toggle("is-picking", this.picked !== null);
  }

  #fit() {
    const { rows, columns } = this.grid;
    const written = CELL.smallest * this.widest + LEAST_AIR;
    const whole = Math.max(written, NARROWEST);
    const top = this.room.parentElement;
    top.classList.remove("is-wide");
    if (columns * whole > this.room.clientWidth - 4) top.classList.add("is-wide"); // the words go under the grid
    const room = this.room.clientWidth - 4;
    const least = columns * whole <= room ? whole : Math.max(written, TARGET);
    const font = Math.max(CELL.smallest, Math.min(CELL.font, (room / columns - AIR) / this.widest));
    const shownColumns = Math.max(1, Math.min(columns, Math.floor(room / least)));
    const width = Math.min(Math.max(CELL.width, font * this.widest + AIR), room / shownColumns);
    const most = window.innerHeight < LOW ? ROWS_ON_A_LOW_SCREEN : ROWS;
    const height = Math.max(this.stacked ? STACKED * font : LINE * font + 4, TARGET + 1); // with its line
    for (const [name, value] of Object.entries({ font, "cell-width": Math.floor(width), "cell-height": height })) {
      this.root.style.setProperty(`--${name}`, `${value.toFixed(1)}px`);
    }
    this.grid.show({ rows: Math.min(rows, most), columns: shownColumns }, this.grid.first);
    this.shown = true;
    if (this.following) this.grid.reveal(this.following);
    this.#sayHidden();
  }

  // A page of lines back or on: what is out of view can still be reached by a thumb.
  #turn(way) {
    const { grid } = this;
    const upright = grid.rows > grid.fitted.rows;
    const by = way * (upright ? grid.fitted.rows : grid.fitted.columns);
    grid.show(grid.fitted, { row: grid.first.row + (upright ? by : 0), column: grid.first.column + (upright ? 0 : by) });
    this.#sayHidden();
  }

  #sayHidden() {
    const { grid } = this;
    const upright = grid.rows > grid.fitted.rows;
    const first = upright ? grid.first.row : grid.first.column;
    const after = upright ? grid.rows - grid.fitted.rows - first : grid.columns - grid.fitted.columns - first;
    this.earlier.parentElement.hidden = first + after <= 0;
    this.earlier.disabled = first <= 0;
    this.later.disabled = after <= 0;
  }

  #listen() {
    const cellAt = (event) => {
      const under = document.elementFromPoint(event.clientX, event.clientY)?.closest("[data-n]");
      return under && this.root.contains(under) ? Number(under.dataset.n) : null;
    };
    this.root.addEventListener("click", (event) => {
      const cell = event.target.closest("[data-n]");
      if (!cell || this.#dragged) return;
      this.grid.focus(Number(cell.dataset.n), { take: true });
      this.#take(Number(cell.dataset.n));
    });
    this.root.addEventListener("pointerdown", (event) => {
      this.#dragged = false;
      this.dragFrom = this.picked ? cellAt(event) : null;
    });
    this.root.addEventListener("pointermove", (event) => {
      const n = this.dragFrom ? cellAt(event) : null;
      if (!n || n === this.dragFrom) return;
      this.#dragged = true;
      this.#choose(this.dragFrom, n);
    });
    this.root.addEventListener("pointerup", (event) => {
      const n = this.#dragged ? cellAt(event) : null;
      if (n) this.#done(this.dragFrom, n);
      this.dragFrom = null;
    });
    this.root.addEventListener("keydown", (event) => {
      if (event.key in MOVES) {
        event.preventDefault();
        this.grid.focus(this.grid.beside(this.grid.focused, ...MOVES[event.key]), { take: true });
        this.#sayHidden();
      } else if (event.key === "Enter" || event.key === " ") {
        event.preventDefault();
        this.#take(this.grid.focused);
      }
    });
  }

  #take(n) {
    if (!this.picked) this.open(n);
    else if (this.#first === null) this.#choose(n, n);
    else this.#done(this.#first, n);
  }

  #done(one, other) {
    const done = this.picked;
    this.pick(null);
    done({ from: Math.min(one, other), to: Math.max(one, other) });
  }

  #choose(first, last) {
    this.#first = first;
    for (const cell of this.root.querySelectorAll("[data-n]")) {
      const n = Number(cell.dataset.n);
      cell.classList.toggle("is-chosen", first !== null && n >= Math.min(first, last) && n <= Math.max(first, last));
    }
  }
}
