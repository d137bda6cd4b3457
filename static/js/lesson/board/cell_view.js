// What one cell shows, from the reduced state: a plain description that is drawn only where it changed. Of a count that is
// not written it holds nothing.

export function cellView(state, n, { frame, landmarks, text, group = () => "" }) {
  const view = { n, look: "empty", entries: [], bold: false, next: n === frame, marks: [], guess: "", group: "" };
  const entries = state.entries[String(n)] ?? filledEntry(state, n, text);
  view.marks = state.marks.filter((mark) => mark.n === n && (mark.mark === "tint" || mark.mark === "hatch"))
    .map((mark) => mark.mark);
  if (state.covered.includes(n)) return { ...view, look: "covered" };
  if (entries || view.next) view.group = group(n);
  if (entries) {
    view.look = "written";
    view.entries = entries.map(({ text: words, struck, left_out: leftOut }) => ({ text: words, struck, leftOut }));
    view.bold = landmarks.has(n) && entries.at(-1).text === text(n);
  } else if (String(n) in state.predictions) {
    view.look = "guessed";
    view.guess = state.predictions[String(n)].text;
  }
  return view;
}

function filledEntry(state, n, text) {
  const filled = state.filled.some(([first, last]) => first <= n && n <= last);
  return filled ? [{ text: text(n), struck: [], left_out: false }] : null;
}

// The cell in words, for those who hear the board.
export function cellInWords(view, ink, say) {
  const words = [];
  if (view.look === "covered") words.push(say("cell-covered"));
  if (view.look === "guessed") words.push(say("cell-guessed", { text: view.guess }));
  for (const { text, struck, leftOut } of view.entries) {
    words.push(leftOut ? say("cell-left-out") : text);
    for (const said of struck) words.push(say("cell-struck", { text: said || say("cell-left-out") }));
  }
  if (view.group) words.push(view.group);
  if (view.next) words.push(say("cell-next"));
  if (!words.length) words.push(say("cell-empty"));
  for (const mark of new Set(ink)) words.push(say(mark));
  return words.join(", ");
}
