// Typing in a cell: what was said otherwise, what the class corrects, what a child guesses.

const LONGEST = 40;

export class Typing {
  constructor({ slip, gestures, fold, grid, say }) {
    Object.assign(this, { slip, gestures, fold, grid, say });
  }

  open(n, { text = "", guess = false } = {}) {
    const { gestures, say } = this;
    const entry = gestures.entry(n);
    const ahead = !entry && n > gestures.state.next;
    const choices = entry ? this.#overWritten(n) : guess || ahead ? this.#guessing(n) : this.#saying(n);
    const label = entry ? say("type-over", { text: entry.left_out ? say("cell-left-out") : entry.text })
      : say(guess || ahead ? "type-guess" : "type-said");
    this.slip.open({ label, text, longest: LONGEST, choices, at: (root) => this.#placeOver(root, n),
      done: () => this.grid.focus(this.grid.focused, { take: true }) });
  }

  #saying(n) {
    const { gestures, say } = this;
    return [
      { name: say("write-it"), key: say("key-enter"), act: (text) => gestures.write(n, text) },
      { name: say("as-it-counts"), act: () => gestures.write(n, this.fold.text(n)), needsText: false },
      { name: say("left-out"), act: () => gestures.leaveOut(n), needsText: false },
    ];
  }

  #guessing(n) {
    const { gestures, say } = this;
    const choices = [
      { name: say("guess-it"), key: say("key-enter"), act: (text) => gestures.predict(n, text) },
      { name: say("write-it"), key: say("key-shift-enter"), shift: true, act: (text) => gestures.write(n, text) },
    ];
    const standing = gestures.state.predictions[String(n)];
    if (standing) choices.push({ name: say("take-away"), act: () => gestures.remove(standing.event), needsText: false });
    return choices;
  }

  #overWritten(n) {
    const { gestures, say } = this;
    return [
      { name: say("class-corrects"), key: say("key-enter"), act: (text) => gestures.correct(n, text) },
      { name: say("mistyped"), key: say("key-shift-enter"), shift: true, act: (text) => gestures.write(n, text) },
      { name: say("as-it-counts"), act: () => gestures.correct(n, this.fold.text(n)), needsText: false },
    ];
  }

  // Over its cell, kept within the board.
  #placeOver(root, n) {
    const cell = this.grid.cell(n).getBoundingClientRect(), desk = root.parentElement.getBoundingClientRect();
    const width = root.offsetWidth, high = root.offsetHeight;
    const left = Math.min(Math.max(cell.left - desk.left, 0), Math.max(desk.width - width, 0));
    const below = cell.bottom - desk.top + 4;
    const top = below + high <= desk.height ? below : Math.max(0, cell.top - desk.top - high - 4);
    root.style.setProperty("--x", `${left.toFixed(0)}px`);
    root.style.setProperty("--y", `${top.toFixed(0)}px`);
  }
}
