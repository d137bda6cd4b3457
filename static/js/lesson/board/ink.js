// The class's ink over the grid, as loose lines: rings, underlines, jumps, the lines from phrases to their cells, a second
// counting. Drawn anew at each change; it holds no texts but labels of jumps and of lines.

import { jumpLine, phraseLine, ringAround } from "./ink_lines.js";
import { characterBox } from "./numeral.js";

const SVG = "http://www.w3.org/2000/svg";

export class Ink {
  constructor({ svg, grid, gutter, fold }) {
    Object.assign(this, { svg, grid, gutter, fold });
  }

  paint(state, font) {
    const hasInk = [state.marks, state.jumps, state.phrases, state.recounts].some((ink) => ink.length);
    if (!hasInk && !this.svg.firstChild) return; // nothing to measure: a key is painted sooner
    const page = this.svg.getBoundingClientRect();
    this.svg.setAttribute("viewBox", `0 0 ${page.width} ${page.height}`);
    this.svg.style.setProperty("--font", `${font}px`);
    const on = (box) => box && ({ left: box.left - page.left, top: box.top - page.top, right: box.right - page.left,
      bottom: box.bottom - page.top, width: box.width, height: box.height });
    const cellBox = (n) => {
      const cell = this.grid.cell(n);
      return cell && cell.offsetParent ? on(cell.getBoundingClientRect()) : null;
    };
    const numeral = (n) => this.grid.cell(n)?.querySelector(".b-entry:last-child > .numeral, .b-guess > .numeral");
    const inkBox = (n) => {
      const cell = cellBox(n), figures = cell && numeral(n);
      if (!cell) return null;
      if (figures) return trimmed(on(figures.getBoundingClientRect()), font, figures.querySelector(".n-fraction"));
      const x = (cell.left + cell.right) / 2, y = (cell.top + cell.bottom) / 2;
      return { left: x - 0.3 * font, right: x + 0.3 * font, top: y - 0.36 * font, bottom: y + 0.36 * font };
    };
    const frame = on(this.grid.root.getBoundingClientRect());
    this.rightEdge = page.width;
    this.words = this.gutter.boxes().map(on);
    const drawn = [];
    for (const mark of state.marks) {
      const box = inkBox(mark.n);
      if (!box || state.covered.includes(mark.n)) continue;
      if (mark.mark === "ring") drawn.push(made("ellipse", "i-ring", ringAround(box, font)));
      if (mark.mark === "underline") drawn.push(this.#underline(mark, numeral(mark.n), on, box, font));
    }
    for (const { from, to } of state.recounts) drawn.push(...this.#recount(from, to, cellBox, font));
    const arcs = [];
    for (const jump of state.jumps) {
      const ends = [jump.from, jump.to].map((n) => ({ place: this.grid.place(n), cell: cellBox(n), ink: inkBox(n) }));
      if (ends.every((end) => end.cell)) drawn.push(...this.#jump(jump, ends, frame, font, arcs));
    }
    for (const { cells, anchor } of this.gutter.anchors(page)) {
      for (const n of cells) {
        const cell = cellBox(n);
        if (cell) drawn.push(made("path", "i-phrase", { d: phraseLine(anchor, cell, inkBox(n), frame, font) }));
      }
    }
    this.svg.replaceChildren(...drawn);
    this.#keepLabelsIn(page.width, font);
  }

  // A long label ("+1 ft 10 in") is set smaller rather than cut by the edge of the board.
  #keepLabelsIn(width, font) {
    for (const label of this.svg.querySelectorAll(".i-outside")) {
      const box = label.getBBox();
      const room = box.x < 0 ? box.x + box.width : width - box.x;
      if (box.width > room) label.style.setProperty("font-size", `${Math.max(0.3, (0.6 * room) / box.width) * font}px`);
    }
  }

  #underline({ place }, figures, on, box, font) {
    const digit = figures && place !== null ? on(characterBox(figures, place)) : null;
    const { left, right } = digit ?? box;
    const foot = digit && digit.height < 0.9 * font ? digit.top + 0.82 * digit.height : box.bottom;
    const y = foot + 0.14 * font;
    return made("line", "i-underline", { x1: left - 0.02 * font, x2: right + 0.02 * font, y1: y, y2: y });
  }

  #jump({ from, to }, [start, end], frame, font, arcs) {
    const last = { row: this.grid.first.row + this.grid.fitted.rows - 1,
      column: this.grid.first.column + this.grid.fitted.columns - 1 };
    const margin = { left: roomBeside(this.words, start.cell, end.cell, frame.left, font), right: this.rightEdge - frame.right };
    const line = jumpLine(start, end, frame, font, { first: this.grid.first, last, arcs, margin });
    const label = made("text", `i-label ${line.outside ? "i-outside" : ""}`, {
      x: line.label.x, y: line.label.y, "text-anchor": line.label.anchor });
    label.textContent = this.fold.jump(from, to);
    return [made("path", "i-jump", { d: line.d }), made("path", "i-jump", { d: line.head }), label];
  }

  // Counted again: a loose line under each written stretch of a line, turning back at its end.
  #recount(from, to, cellBox, font) {
    const lines = new Map();
    for (let n = from; n <= to; n += 1) {
      const cell = cellBox(n);
      if (!cell) continue;
      const key = Math.round(cell.top);
      const seen = lines.get(key);
      lines.set(key, seen ? { ...seen, left: Math.min(seen.left, cell.left), right: Math.max(seen.right, cell.right) }
        : { left: cell.left, right: cell.right, bottom: cell.bottom });
    }
    return [...lines.values()].map(({ left, right, bottom }) => {
      const y = bottom - 0.07 * font, a = left + 0.3 * font, b = right - 0.34 * font, h = 0.11 * font;
      return made("path", "i-recount", {
        d: `M${a} ${y} L${b} ${y} c${1.6 * h} 0 ${1.6 * h} ${-2 * h} 0 ${-2 * h} h${-1.6 * h}`
          + ` m${h} ${-0.9 * h} l${-h} ${0.9 * h} l${h} ${0.9 * h}` });
    });
  }
}

// How much of the gutter is free of children's words along the way from one cell to the other.
function roomBeside(words, one, other, left, font) {
  const top = Math.min(one.top, other.top) - 0.3 * font, bottom = Math.max(one.bottom, other.bottom) + 0.3 * font;
  const beside = words.filter((box) => box.top < bottom && box.bottom > top);
  return Math.min(left, ...beside.map((box) => left - box.right));
}

// The digits alone: the line box is higher than its ink.
function trimmed(box, font, stacked) {
  const middle = (box.top + box.bottom) / 2;
  const half = (stacked ? 0.72 : 0.3615) * font;
  return { ...box, top: middle - half, bottom: middle + half };
}

function made(tag, name, attributes) {
  const element = document.createElementNS(SVG, tag);
  element.setAttribute("class", name);
  for (const [key, value] of Object.entries(attributes)) {
    element.setAttribute(key, typeof value === "number" ? value.toFixed(1) : value);
  }
  return element;
}
