// The keyboard and the presenter's clicker. Single letters work only while the grid has the focus; Page Down and Page Up,
// which clickers send, work wherever nothing is being typed.

import { THINK_SECONDS } from "./tools.js";

const ON_THE_CELL = { t: "tint", r: "ring", u: "underline", h: "hatch", j: "jump", p: "phrase", g: "guess", c: "cover",
  a: "again", s: "said" };
const ANYWHERE = new Set([" ", "Enter", "ArrowUp", "ArrowDown", "ArrowLeft", "ArrowRight"]);
const MOVES = { ArrowUp: [-1, 0], ArrowDown: [1, 0], ArrowLeft: [0, -1], ArrowRight: [0, 1] };

export function listenToKeys(board) {
  document.addEventListener("keydown", (event) => {
    if (event.target.closest("input, textarea, select, dialog, [role='dialog']")) return;
    if (event.key === "PageDown") only(event, () => board.writeNext());
    else if (event.key === "PageUp") only(event, () => board.gestures.undoWrite());
    else if ((event.ctrlKey || event.metaKey) && event.key.toLowerCase() === "z") only(event, () => board.gestures.undo());
    else if (event.key === "Escape") board.tools.take("");
    else if (event.target === document.body && ANYWHERE.has(event.key)) only(event, actOf(board, event));
  });
  board.grid.root.addEventListener("keydown", (event) => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const act = actOf(board, event);
    if (act) only(event, act);
  });
}

// A key that is held down does nothing twice: a count is not written by leaning on the keyboard.
function only(event, act) {
  event.preventDefault();
  if (!event.repeat || event.key in MOVES) act();
}

function actOf(board, event) {
  const { grid, gestures, tools } = board;
  const n = grid.focused;
  const { key } = event;
  if (key in MOVES) return () => move(board, n, key);
  if (key === " ") return () => (tools.inHand ? tools.use(n, null) : board.writeNext());
  if (key === "Enter") return () => (tools.inHand ? tools.use(n, null) : n === board.frame ? board.writeNext() : board.typing.open(n));
  if (key === "Home" || key === "End") return () => grid.focus(key === "Home" ? 1 : Math.min(gestures.state.next, grid.upto), { take: true });
  if (key === "Backspace" || key === "Delete" || key.toLowerCase() === "z") return () => gestures.undo();
  if (key.toLowerCase() === "k") return () => gestures.think(board.think.isRunning ? 0 : THINK_SECONDS);
  if (key.toLowerCase() === "b") return () => board.bare();
  if (key.toLowerCase() === "f") return () => board.fullScreen();
  if (key === "?") return () => board.help();
  if (key.toLowerCase() in ON_THE_CELL) return () => tools.apply(ON_THE_CELL[key.toLowerCase()], n);
  if (key.length === 1 && !/[\p{L}\s]/u.test(key)) return () => board.typing.open(n, { text: key });
  return null;
}

// Right on the cell that is next writes it: the class counts on.
function move(board, n, key) {
  const { grid } = board;
  if (key === "ArrowRight" && n === board.frame) {
    board.writeNext();
    return;
  }
  grid.focus(grid.beside(n, ...MOVES[key]), { take: true });
  board.paintInk();
}
