// Where loose lines run: pure geometry. Boxes are {left, top, right, bottom} in px of the ink's own drawing.

const NEEDED_BESIDE = 1.2; // for an arc and its label, of the font size
const LANES_ABOVE = 2; // between the grid and the head of the board
const TILT = -4; // degrees: rings are drawn by hand

export function ringAround(box, font) {
  const cx = (box.left + box.right) / 2, cy = (box.top + box.bottom) / 2;
  return {
    cx, cy, rx: (box.right - box.left) / 2 + 0.3 * font, ry: (box.bottom - box.top) / 2 + 0.2 * font,
    transform: `rotate(${TILT} ${cx.toFixed(1)} ${cy.toFixed(1)})`,
  };
}

// An arc with its arrowhead and the place of its label. It runs outside the cells where the grid has a margin.
// `arcs` holds what was drawn before on the same side, so that a second arc runs further out.
export function jumpLine(from, to, frame, font, { first, last, arcs, margin }) {
  const [fromRow, fromColumn] = from.place, [toRow, toColumn] = to.place;
  if (fromColumn === toColumn) {
    const left = fromColumn === first.column && margin.left > NEEDED_BESIDE * font;
    const right = fromColumn === last.column && margin.right > NEEDED_BESIDE * font;
    const side = left ? -1 : right ? 1 : 0;
    const inside = side === 0 && fromColumn !== last.column;
    return upright(from, to, frame, font, side, right || inside, side ? lane(arcs, side < 0 ? "left" : "right", fromRow, toRow) : 0);
  }
  if (fromRow === toRow) {
    const out = fromRow === first.row ? lane(arcs, "top", fromColumn, toColumn) : 0;
    return level(from, to, frame, font, fromRow === first.row && out < LANES_ABOVE, out);
  }
  return slanted(from, to, font);
}

// How many arcs of this side overlap the stretch already.
function lane(arcs, side, a, b) {
  const low = Math.min(a, b), high = Math.max(a, b);
  const over = arcs.filter((arc) => arc.side === side && arc.low < high && low < arc.high);
  const free = over.length ? Math.max(...over.map((arc) => arc.lane)) + 1 : 0;
  arcs.push({ side, low, high, lane: free });
  return free;
}

function upright(from, to, frame, font, side, right, out) {
  const y0 = middleY(from.cell), y1 = middleY(to.cell);
  const down = y1 > y0 ? 1 : -1;
  const x = right ? Math.max(from.ink.right, to.ink.right) + 0.42 * font : Math.min(from.ink.left, to.ink.left) - 0.42 * font;
  const start = y0 + down * 0.12 * font, stop = y1 - down * 0.12 * font;
  const edges = side ? frame : from.cell;
  const turn = (right ? edges.right : edges.left) + (right ? 1 : -1) * (side ? 0.75 + 0.55 * out : 0.1) * font;
  const peak = (x + 3 * turn) / 4; // where the curve's middle lies
  const outside = side !== 0;
  const between = down > 0 ? from.cell.bottom : from.cell.top; // inside, a label stands between two lines, on no numeral
  return {
    d: `M${x} ${start} C${turn} ${start} ${turn} ${stop} ${x} ${stop}`,
    head: head(x, stop, right ? Math.PI : 0, font),
    label: { x: peak + (right ? 0.14 : -0.14) * font, y: outside ? (start + stop) / 2 + 0.2 * font : between + 0.14 * font,
      anchor: right ? "start" : "end" },
    outside,
  };
}

function level(from, to, frame, font, outside, out) {
  const x0 = middleX(from.cell), x1 = middleX(to.cell);
  const y = Math.min(from.ink.top, to.ink.top) - 0.2 * font;
  const lowest = outside ? frame.top - (0.1 + 0.6 * out) * font : from.cell.top - 0.02 * font;
  const turn = y - (4 * (y - lowest)) / 3;
  const toward = x1 > x0 ? 1 : -1;
  const a = x0 + toward * 0.1 * font, b = x1 - toward * 0.1 * font;
  return {
    d: `M${a} ${y} C${a} ${turn} ${b} ${turn} ${b} ${y}`,
    head: head(b, y, Math.PI / 2, font),
    label: { x: (a + b) / 2, y: lowest - 0.08 * font, anchor: "middle" },
    outside: false,
  };
}

function slanted(from, to, font) {
  const away = { x: middleX(to.cell) - middleX(from.cell), y: middleY(to.cell) - middleY(from.cell) };
  const long = Math.hypot(away.x, away.y);
  const start = leaving(from, away, font), stop = leaving(to, { x: -away.x, y: -away.y }, font);
  const bend = Math.min(0.12 * long, 0.5 * font);
  const turn = { x: (start.x + stop.x) / 2 + (bend * away.y) / long, y: (start.y + stop.y) / 2 - (bend * away.x) / long };
  return {
    d: `M${start.x} ${start.y} Q${turn.x} ${turn.y} ${stop.x} ${stop.y}`,
    head: head(stop.x, stop.y, Math.atan2(stop.y - turn.y, stop.x - turn.x), font),
    label: { x: (start.x + 2 * turn.x + stop.x) / 4 + (0.42 * font * away.y) / long,
      y: (start.y + 2 * turn.y + stop.y) / 4 - (0.32 * font * away.x) / long + 0.14 * font, anchor: "middle" },
    outside: false,
  };
}

// The point at which a line from the middle of the numeral leaves it.
function leaving({ cell, ink }, toward, font) {
  const wide = (ink.right - ink.left) / 2 + 0.18 * font, high = (ink.bottom - ink.top) / 2 + 0.18 * font;
  const scale = Math.min(wide / Math.max(Math.abs(toward.x), 0.01), high / Math.max(Math.abs(toward.y), 0.01));
  return { x: middleX(cell) + toward.x * scale, y: middleY(cell) + toward.y * scale };
}

function head(x, y, angle, font) {
  const long = 0.3 * font, open = 0.5;
  const end = (turned) => `${x - long * Math.cos(turned)} ${y - long * Math.sin(turned)}`;
  return `M${end(angle - open)} L${x} ${y} L${end(angle + open)}`;
}

// A loose line from a phrase to a cell: along the upper edge of the line, so that it crosses no numeral.
export function phraseLine(anchor, cell, ink, frame, font) {
  if (cell.left <= frame.left + 1) {
    const x = ink.left - 0.32 * font, y = middleY(cell);
    const half = (anchor.x + x) / 2;
    return `M${anchor.x} ${anchor.y} C${half} ${anchor.y + 0.2 * font} ${half} ${y + 0.1 * font} ${x} ${y}`;
  }
  const high = cell.top + 0.1 * font, near = ink.left - 0.1 * font;
  return `M${anchor.x} ${anchor.y} C${frame.left} ${anchor.y} ${frame.left - 0.2 * font} ${high} ${frame.left + 0.3 * font} ${high}`
    + ` L${near - 0.3 * font} ${high} Q${near} ${high} ${near} ${ink.top - 0.04 * font}`;
}

function middleX(box) { return (box.left + box.right) / 2; }

function middleY(box) { return (box.top + box.bottom) / 2; }
