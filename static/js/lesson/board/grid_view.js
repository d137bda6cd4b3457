// The folded grid in the page: rows of cells, of which only as many are shown as the back row can read. Cells are made
// once and changed only where what they show changed.

import { cellInWords, cellView } from "./cell_view.js";
import { setNumeral } from "./numeral.js";

export class GridView {
  #cells = new Map(); // n -> element
  #shown = new Map(); // n -> what it shows, as text
  #rows = [];
  #places = new Map(); // n -> [row, column] from 0
  #window = ""; // the lines and columns shown, of the cells as they are built

  constructor({ root, fold, say }) {
    Object.assign(this, { root, fold, say });
    this.landmarks = new Set(fold.count.landmarks);
    this.upto = 0;
    this.focused = 1;
    this.first = { row: 0, column: 0 };
    this.fitted = { rows: 1, columns: 1 };
  }

  get rows() { return this.#rows.length; }

  get columns() { return this.#rows[0]?.length ?? 0; }

  cell(n) { return this.#cells.get(n) ?? null; }

  place(n) { return this.#places.get(n) ?? null; }

  // Makes the cells for the counts up to `upto`; only when that number changed.
  build(upto) {
    if (upto === this.upto) return false;
    const hadFocus = this.root.contains(document.activeElement);
    this.upto = upto;
    this.#rows = this.fold.page(upto);
    this.#cells.clear();
    this.#shown.clear();
    this.#places.clear();
    this.#window = "";
    this.root.replaceChildren(...this.#rows.map((row, index) => this.#makeRow(row, index)));
    this.root.setAttribute("aria-rowcount", this.rows);
    this.root.setAttribute("aria-colcount", this.columns);
    this.focus(this.focused, { take: hadFocus });
    return true;
  }

  #makeRow(row, index) {
    const line = made("div", "b-row", { role: "row", "aria-rowindex": index + 1 });
    if ((this.fold.count.fill === "down" ? 0 : index) % 2) line.classList.add("b-pleat");
    row.forEach((n, column) => line.append(this.#makeCell(n, index, column)));
    return line;
  }

  #makeCell(n, row, column) {
    const cell = made("div", "b-cell", { role: "gridcell", "aria-colindex": column + 1 });
    if (this.fold.count.fill === "down" && column % 2) cell.classList.add("b-pleat");
    if (n === null) {
      cell.classList.add("b-outside");
      return cell;
    }
    cell.dataset.n = n;
    cell.tabIndex = -1;
    this.#cells.set(n, cell);
    this.#places.set(n, [row, column]);
    return cell;
  }

  paint(state, frame) {
    const ink = inkOfCells(state);
    for (const [n, cell] of this.#cells) {
      const view = cellView(state, n, { frame, landmarks: this.landmarks, text: (one) => this.fold.text(one),
        group: (one) => this.fold.group(one) });
      const shown = JSON.stringify([view, ink.get(n)]);
      if (this.#shown.get(n) === shown) continue;
      this.#shown.set(n, shown);
      drawCell(cell, view);
      cell.setAttribute("aria-label", cellInWords(view, ink.get(n) ?? [], this.say));
    }
  }

  // Which lines and columns are in view.
  show(fitted, first) {
    this.fitted = fitted;
    this.first = {
      row: within(first.row, this.rows - fitted.rows),
      column: within(first.column, this.columns - fitted.columns),
    };
    const window = [this.first.row, this.first.column, fitted.rows, fitted.columns].join();
    if (window === this.#window) return;
    this.#window = window;
    const { row, column } = this.first;
    const more = { up: row > 0, left: column > 0, down: row + fitted.rows < this.rows, right: column + fitted.columns < this.columns };
    for (const [side, hidden] of Object.entries(more)) this.root.classList.toggle(`is-more-${side}`, hidden);
    [...this.root.children].forEach((line, row) => {
      line.hidden = row < this.first.row || row >= this.first.row + fitted.rows;
      [...line.children].forEach((cell, column) => {
        cell.hidden = column < this.first.column || column >= this.first.column + fitted.columns;
      });
    });
  }

  // Scrolls by lines as little as needed to have this count in view.
  reveal(n) {
    const place = this.place(n);
    if (!place) return;
    this.show(this.fitted, {
      row: near(this.first.row, place[0], this.fitted.rows),
      column: near(this.first.column, place[1], this.fitted.columns),
    });
  }

  focus(n, { take = false } = {}) {
    const cell = this.cell(n) ?? this.cell(1);
    for (const one of this.root.querySelectorAll('[tabindex="0"]')) one.tabIndex = -1;
    this.focused = Number(cell.dataset.n);
    cell.tabIndex = 0;
    if (!take) return;
    this.reveal(this.focused);
    cell.focus({ preventScroll: false });
  }

  // The count beside n, or n itself at the edge.
  beside(n, down, right) {
    const [row, column] = this.place(n);
    return this.#rows[row + down]?.[column + right] ?? n;
  }
}

function drawCell(cell, view) {
  cell.className = cell.className.replace(/ ?is-\S+/g, "");
  cell.classList.add(`is-${view.look}`);
  if (view.next) cell.classList.add("is-next");
  if (view.bold) cell.classList.add("is-landmark");
  for (const mark of view.marks) cell.classList.add(`is-${mark}`);
  const parts = view.entries.map(drawEntry);
  if (view.guess) {
    const guess = made("span", "b-guess");
    guess.append(setNumeral(view.guess), made("span", "b-asking", {}, "?"));
    parts.push(guess);
  }
  if (view.group) parts.push(made("span", "b-group", {}, view.group));
  if (view.next && !view.entries.length) parts.push(made("span", "b-writing"));
  cell.classList.toggle("is-twice", view.entries.length > 1);
  cell.replaceChildren(...parts);
}

function drawEntry({ text, struck, leftOut }) {
  const entry = made("span", "b-entry");
  if (struck.length) {
    const said = made("span", "b-said");
    for (const words of struck) said.append(drawStruck(words));
    entry.append(said);
  }
  entry.append(leftOut ? made("span", "b-left-out") : setNumeral(text));
  return entry;
}

function drawStruck(words) {
  const struck = made("s", "b-struck");
  struck.append(words ? setNumeral(words) : made("span", "b-left-out"));
  return struck;
}

function inkOfCells(state) {
  const ink = new Map();
  const add = (n, word) => ink.set(n, [...(ink.get(n) ?? []), word]);
  for (const { n, mark } of state.marks) add(n, `cell-${mark}`);
  for (const { cells } of state.phrases) for (const n of cells) add(n, "cell-phrase");
  return ink;
}

function made(tag, name, attributes = {}, text = "") {
  const element = document.createElement(tag);
  element.className = name;
  for (const [key, value] of Object.entries(attributes)) element.setAttribute(key, value);
  element.textContent = text;
  return element;
}

function within(at, most) {
  return Math.max(0, Math.min(at, most));
}

function near(first, at, size) {
  if (at < first) return at;
  return at >= first + size ? at - size + 1 : first;
}
