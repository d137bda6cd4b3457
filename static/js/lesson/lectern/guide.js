// What of the plan matters now. Pure: from the lesson's state and the count with its plan (lectern.json).

const FURTHER = 12; // counts that are looked ahead
const ROWS = 4; // of them, as many rows as a thumb reaches
const PLAIN = 3; // counts of which nothing is said, in one row

// The stop the class is at: its position in the plan; null where it is at none.
export function stopNow(state, count) {
  return state.at_stop !== null && state.at_stop < count.stops.length ? state.at_stop : null;
}

// The next stop of the plan that the class was not at yet and has not counted past; null after the last.
export function stopComing(state, count) {
  const ahead = count.stops.map((stop, position) => ({ ...stop, position }))
    .filter(({ after, position }) => after >= state.next - 1 && !(String(position) in state.stops));
  ahead.sort((a, b) => a.after - b.after || a.position - b.position);
  return ahead[0]?.position ?? null;
}

// The count went on from `before` to `now`: which stop it has reached, or whether it has left the one it was at.
// {enter: position}, {leave: position} or null.
export function stopReached(before, now, count) {
  if (now.next <= before.next) return null;
  const position = count.stops.findIndex(({ after }, at) => after === now.next - 1 && !(String(at) in now.stops));
  if (position >= 0 && position !== now.at_stop) return { enter: position };
  if (now.at_stop === null) return null;
  const after = count.stops[now.at_stop]?.after ?? 0;
  return now.next - 1 > after ? { leave: now.at_stop } : null;
}

// The coming counts: the next one always, then those at which something may be heard or ends, with the plain ones between.
// [{n, text, heard, flags}] or [{plain: [texts], more}].
export function coming(state, count) {
  const { next } = state;
  if (next > count.texts.length) return [];
  const rows = [rowOf(count, next)];
  const last = Math.min(next + FURTHER, count.terms);
  let plain = [];
  for (let n = next + 1; n <= last && rows.length < ROWS; n += 1) {
    const row = rowOf(count, n);
    if (!row.heard.length && !row.flags.length) {
      plain.push(row.text);
      continue;
    }
    if (plain.length) rows.push(plainRow(plain));
    plain = [];
    rows.push(row);
  }
  if (plain.length) rows.push(plainRow(plain));
  return rows;
}

function rowOf(count, n) {
  return { n, text: count.texts[n - 1], heard: count.coming[String(n)] ?? [], flags: count.flags[String(n)] ?? [] };
}

function plainRow(texts) {
  return { plain: texts.slice(0, PLAIN), more: texts.length > PLAIN };
}

// What stands on the board and is not the count's own text, nor the same in another form; the latest first.
export function saidOtherwise(state, count) {
  const found = [];
  for (const [key, entries] of Object.entries(state.entries)) {
    if (entries.length > 1) continue; // asked about on its own
    const n = Number(key), [{ event, text, left_out: leftOut }] = entries;
    const foreseen = (count.coming[key] ?? []).find(({ heard }) => heard === text) ?? null;
    if (text === count.texts[n - 1] || foreseen?.equal) continue;
    found.push({ n, event, text, leftOut, right: count.texts[n - 1], reply: foreseen?.reply ?? "", why: foreseen?.why ?? "" });
  }
  return found.reverse();
}

// Cells in which two devices wrote different things: [{n, entries}].
export function differing(state) {
  return Object.entries(state.entries).filter(([, entries]) => entries.length > 1)
    .map(([n, entries]) => ({ n: Number(n), entries }));
}

// The stretch that a tap on the voice is about: since the last one, or, where nothing was counted since, that one again.
export function voiceStretch(state) {
  const last = state.voices.at(-1) ?? null;
  const from = Math.max(0, ...state.voices.map(({ to }) => to)) + 1;
  const to = state.next - 1;
  if (from <= to) return { from, to, how: "" };
  return last ? { from: last.from, to: last.to, how: last.how } : null;
}

// Which planned answers were heard: event by position.
export function heardAnswers(state) {
  return new Map(state.notices.filter(({ expected }) => expected !== null).map(({ expected, event }) => [expected, event]));
}
