// Reduces a lesson's events to what stands on the board: pure, and the same whatever the order of arrival.
// routines/lessons/state.py does the same in Python; both are held to tests/routines/lessons/vectors.
// Unknown kinds and erased stubs are passed over. Removal and undo win and are final.

const INK = new Set(["mark.add", "jump.add", "phrase.add", "predict"]); // what mark.remove takes away

export function reduceEvents(events) {
  const ordered = inOrder(events);
  const gone = gather(ordered);
  const state = emptyState();
  const work = { state, gone, entered: new Map() };
  for (const event of ordered) {
    const act = ACTS[event.kind];
    if (!act || event.erased || gone.undone.has(event.id)) continue;
    if (INK.has(event.kind) && gone.removed.has(event.id)) continue;
    act(work, event, event.data);
  }
  return finished(state);
}

// Each event once, by (t, device, id).
export function inOrder(events) {
  const once = new Map();
  for (const event of events) once.set(event.id, event);
  return [...once.values()].sort((a, b) => a.t - b.t || compare(a.device, b.device) || compare(a.id, b.id));
}

function compare(a, b) {
  if (a === b) return 0;
  return a < b ? -1 : 1;
}

function emptyState() {
  return {
    opened: null, entries: new Map(), filled: [], marks: [], jumps: [], phrases: [], predictions: new Map(),
    covered: new Set(), recounts: [], notices: [], voices: [], stops: new Map(), at_stop: null, think: null,
    targets: new Map(), line: null, ended: false,
  };
}

// Which events never were: gathered first, so that it is the same whether an undo comes before or after its event.
function gather(events) {
  const gone = { undone: new Set(), removed: new Set(), over: new Map() };
  for (const event of events) {
    if (event.erased) continue;
    if (event.kind === "undo") gone.undone.add(event.data.event);
    else if (event.kind === "mark.remove") gone.removed.add(event.data.event);
    gone.over.set(event.id, event.data.over ?? null);
  }
  return gone;
}

// What `over` names: where that event was undone, what it had been over itself.
function meant(gone, over) {
  const seen = new Set();
  while (gone.undone.has(over) && !seen.has(over)) {
    seen.add(over);
    over = gone.over.get(over) ?? null;
  }
  return over;
}

// The new entry takes the place of the one that `over` names, else stands beside it; what says the same is one.
function enter(work, event, { text, leftOut = false, strike = false }) {
  const { n } = event.data;
  const fresh = { event: event.id, text, struck: [], left_out: leftOut, names: new Set([event.id]) };
  if (!work.state.entries.has(n)) work.state.entries.set(n, []);
  const entries = work.state.entries.get(n);
  const over = meant(work.gone, event.data.over ?? null);
  const place = entries.findIndex((entry) => entry.names.has(over));
  if (place < 0) {
    entries.push(fresh);
  } else {
    const old = entries[place];
    fresh.struck = strike && !sameWords(fresh, old) ? [...old.struck, old.text] : old.struck;
    entries[place] = fresh;
  }
  const [first, ...again] = entries.filter((entry) => sameWords(entry, fresh));
  for (const entry of again) {
    first.struck = [...first.struck, ...entry.struck];
    for (const name of entry.names) first.names.add(name);
    entries.splice(entries.indexOf(entry), 1);
  }
}

function sameWords(a, b) {
  return a.text === b.text && a.left_out === b.left_out;
}

// The class leaves the stop it is at. Only a device that was there from the start can say for how long.
function leaveStop(work, event) {
  const { state, entered } = work;
  const began = entered.get(event.device);
  if (state.at_stop !== null && began !== undefined) {
    const before = state.stops.get(state.at_stop) ?? 0;
    state.stops.set(state.at_stop, before + Math.max(0, event.ms - began));
  }
  entered.clear();
  state.at_stop = null;
}

// The event's id and these parts of its data; a part that is not there is null.
function part(event, ...names) {
  const taken = { event: event.id };
  for (const name of names) taken[name] = event.data[name] ?? null;
  return taken;
}

const ACTS = {
  "lesson.open": ({ state }, event, data) => { state.opened ??= data; },
  "term.write": (work, event, data) => enter(work, event, { text: data.text }),
  "term.correct": (work, event, data) => enter(work, event, { text: data.text, strike: true }),
  "term.left-out": (work, event) => enter(work, event, { text: "", leftOut: true }),
  "filled": ({ state }, event, data) => { state.filled.push([data.from, data.to]); },
  "recount": ({ state }, event) => { state.recounts.push(part(event, "from", "to")); },
  "mark.add": ({ state }, event) => { state.marks.push(part(event, "n", "mark", "place")); },
  "jump.add": ({ state }, event) => { state.jumps.push(part(event, "from", "to")); },
  "phrase.add": ({ state }, event, data) => {
    state.phrases.push({ ...part(event, "text"), cells: [...(data.cells ?? [])] });
  },
  "predict": ({ state }, event, data) => { state.predictions.set(data.n, part(event, "text")); },
  "cover": ({ state }, event, data) => { state.covered.add(data.n); },
  "uncover": ({ state }, event, data) => { state.covered.delete(data.n); },
  "think": ({ state }, event, data) => {
    const { id, device, ms, at } = event;
    state.think = data.seconds ? { event: id, device, ms, at, seconds: data.seconds } : null;
  },
  "stop.enter": (work, event, data) => {
    if (work.state.at_stop !== data.stop) {
      leaveStop(work, event);
      work.state.at_stop = data.stop;
    }
    if (!work.entered.has(event.device)) work.entered.set(event.device, event.ms);
  },
  "stop.leave": (work, event, data) => { if (work.state.at_stop === data.stop) leaveStop(work, event); },
  "show": ({ state }, event, data) => { state.line = data.line ?? null; },
  "notice.add": ({ state }, event) => { state.notices.push(part(event, "text", "expected")); },
  "notice.edit": ({ state }, event, data) => {
    for (const notice of state.notices) if (notice.event === data.event) notice.text = data.text;
  },
  "voice": ({ state }, event) => { state.voices.push(part(event, "from", "to", "how")); },
  "target": ({ state }, event, data) => {
    if (data.seen) state.targets.set(data.position, data.seen);
    else state.targets.delete(data.position);
  },
  "lesson.end": ({ state }) => { state.ended = true; },
  "lesson.reopen": ({ state }) => { state.ended = false; },
};

// Kinds that this page knows; the others are kept and passed over.
export function isKnown(kind) {
  return Object.hasOwn(ACTS, kind) || kind === "undo" || kind === "mark.remove";
}

// The state as the plain JSON that both languages give.
function finished(state) {
  const highest = Math.max(0, ...state.entries.keys(), ...state.filled.map(([, last]) => last));
  const filled = (n) => state.filled.some(([first, last]) => first <= n && n <= last);
  for (const n of [...state.predictions.keys()]) {
    if (state.entries.has(n) || filled(n)) state.predictions.delete(n);
  }
  return {
    ...state,
    entries: byNumber(state.entries, (entries) => entries.map(({ names, ...entry }) => entry)),
    predictions: byNumber(state.predictions),
    covered: [...state.covered].sort((a, b) => a - b),
    stops: byNumber(state.stops),
    targets: byNumber(state.targets),
    next: highest + 1,
  };
}

function byNumber(map, change = (value) => value) {
  const sorted = [...map].sort(([a], [b]) => a - b);
  return Object.fromEntries(sorted.map(([key, value]) => [String(key), change(value)]));
}
