// What a gesture of the class or the teacher adds to the lesson. One function a gesture; what stands on the board is read
// from `ahead`, so that fast keys never write a count twice.

export const TAKEN_BACK = new Set([
  "term.write", "term.correct", "term.left-out", "mark.add", "mark.remove", "jump.add", "phrase.add", "predict",
  "cover", "uncover", "recount",
]);

export class Gestures {
  #restored = new Set(); // marks put back by an undo, and the removals that this answered

  constructor({ list, fold }) {
    this.list = list;
    this.fold = fold;
  }

  get state() { return this.list.ahead; }

  entry(n) { return this.state.entries[String(n)]?.at(-1) ?? null; }

  get lastTerm() { return this.fold.count.texts.length; }

  writeNext() {
    const n = this.state.next;
    return n > this.lastTerm ? null : this.write(n, this.fold.text(n));
  }

  // Said and written; what the key slipped on is replaced without a stroke.
  write(n, text) {
    return this.list.add("term.write", { n, text, over: this.entry(n)?.event ?? null });
  }

  // The class corrects: what was said is struck and kept.
  correct(n, text) {
    const entry = this.entry(n);
    if (!entry) return this.write(n, text);
    if (entry.text === text && !entry.left_out) return null;
    return this.list.add("term.correct", { n, text, over: entry.event });
  }

  leaveOut(n) {
    return this.list.add("term.left-out", { n, over: this.entry(n)?.event ?? null });
  }

  predict(n, text) {
    return this.list.add("predict", { n, text });
  }

  toggleMark(n, mark, place = null) {
    const standing = this.state.marks.find((one) => one.n === n && one.mark === mark && one.place === place);
    return standing ? this.remove(standing.event) : this.list.add("mark.add", { n, mark, place });
  }

  // One press a digit, from the last to the first, then none.
  underlineNext(n, places) {
    const standing = this.state.marks.filter((one) => one.n === n && one.mark === "underline");
    const last = standing.at(-1);
    const following = last ? places[places.indexOf(last.place) + 1] : places[0];
    for (const mark of standing) this.remove(mark.event);
    return following === undefined ? null : this.list.add("mark.add", { n, mark: "underline", place: following });
  }

  jump(from, to) {
    const standing = this.state.jumps.find((one) => one.from === from && one.to === to);
    return standing ? this.remove(standing.event) : this.list.add("jump.add", { from, to });
  }

  pinPhrase(text, cells) {
    return this.list.add("phrase.add", { text, cells });
  }

  remove(event) {
    return this.list.add("mark.remove", { event });
  }

  toggleCover(n) {
    return this.list.add(this.state.covered.includes(n) ? "uncover" : "cover", { n });
  }

  // The line in which n stands is counted again, as far as it is written.
  recountLine(n) {
    const written = this.fold.lineOf(n).filter((one) => this.entry(one));
    if (!written.length) return null;
    return this.list.add("recount", { from: Math.min(...written), to: Math.max(...written) });
  }

  think(seconds) {
    return this.list.add("think", { seconds });
  }

  // Takes the newest thing on the board back. A mark that was taken away is put back as a new one.
  undo(kinds = TAKEN_BACK) {
    const event = this.newest(kinds);
    if (!event) return null;
    if (event.kind !== "mark.remove") return this.list.add("undo", { event: event.id });
    this.#restored.add(event.id);
    const removed = this.list.events.find((one) => one.id === event.data.event);
    const adding = this.list.add(removed.kind, removed.data);
    adding.then((fresh) => this.#restored.add(fresh.id));
    return adding;
  }

  undoWrite() {
    return this.undo(new Set(["term.write", "term.correct", "term.left-out"]));
  }

  // What an undo would take back; undefined where there is nothing.
  newest(kinds = TAKEN_BACK) {
    const events = this.list.eventsAhead;
    const gone = new Set(events.filter((one) => one.kind === "undo").map((one) => one.data.event));
    for (const one of events) if (one.kind === "mark.remove" && !gone.has(one.id)) gone.add(one.data.event);
    return events.filter((one) => kinds.has(one.kind) && !gone.has(one.id) && !this.#restored.has(one.id)).at(-1);
  }
}
