// What of the plan matters now, and what the lectern's taps add to the lesson.

import assert from "node:assert/strict";
import { test } from "node:test";
import { Fold } from "../../static/js/lesson/board/folding.js";
import { allSent } from "../../static/js/lesson/ending.js";
import { EventList } from "../../static/js/lesson/event_list.js";
import { EventMaker } from "../../static/js/lesson/event.js";
import { Acts } from "../../static/js/lesson/lectern/acts.js";
import {
  coming, differing, heardAnswers, saidOtherwise, stopComing, stopNow, stopReached, voiceStretch,
} from "../../static/js/lesson/lectern/guide.js";
import { pieces } from "../../static/js/lesson/lectern/typeset.js";
import { reduceEvents } from "../../static/js/lesson/reduce.js";
import { FakeStore } from "./fakes.js";

const TEXTS = ["10", "16", "22", "28", "34", "40", "46", "52", "58", "64"];
const COUNT = {
  terms: 8, texts: TEXTS, line_length: 4, fill: "across", rows: 2, columns: 4, jumps: {}, places: TEXTS.map((text, at) => [1 + (at > 3), 1 + (at % 4)]),
  stops: [{ after: 3 }, { after: 6 }, { after: 6 }],
  coming: { 5: [{ heard: "33", why: "", reply: "", equal: false }, { heard: "thirty-four", why: "", reply: "", equal: true }], 8: [{ heard: "42", why: "w", reply: "r", equal: false }] },
  flags: { 7: ["Each ends in 0, 6, 2, 8, 4"] },
};

async function lesson() {
  const list = new EventList({ lesson: "one", store: new FakeStore(), maker: new EventMaker(), channel: null });
  await list.load();
  const acts = new Acts({ list, fold: new Fold(COUNT) });
  const write = async (counts) => { for (let at = 0; at < counts; at += 1) await acts.writeNext(); };
  return { list, acts, write };
}

const state = (more) => ({ ...reduceEvents([]), ...more });

test("the coming stop is the first that the count has not passed and the class was not at", () => {
  assert.equal(stopComing(state({ next: 1 }), COUNT), 0);
  assert.equal(stopComing(state({ next: 4 }), COUNT), 0);
  assert.equal(stopComing(state({ next: 5 }), COUNT), 1);
  assert.equal(stopComing(state({ next: 4, stops: { 0: 10 } }), COUNT), 1);
  assert.equal(stopComing(state({ next: 7, stops: { 1: 10 } }), COUNT), 2);
  assert.equal(stopComing(state({ next: 8 }), COUNT), null);
});

test("a stop of another version of the plan is none", () => {
  assert.equal(stopNow(state({ at_stop: 3 }), COUNT), null);
  assert.equal(stopNow(state({ at_stop: 2 }), COUNT), 2);
  assert.equal(stopNow(state({ at_stop: null }), COUNT), null);
});

test("the count reaches a stop by its own step, not by jumping over it", () => {
  assert.deepEqual(stopReached(state({ next: 3 }), state({ next: 4 }), COUNT), { enter: 0 });
  assert.equal(stopReached(state({ next: 3 }), state({ next: 5 }), COUNT), null);
  assert.equal(stopReached(state({ next: 4 }), state({ next: 4 }), COUNT), null);
  assert.equal(stopReached(state({ next: 5 }), state({ next: 4 }), COUNT), null);
});

test("a stop where the class was already does not open by itself again", () => {
  assert.equal(stopReached(state({ next: 3 }), state({ next: 4, stops: { 0: 900 } }), COUNT), null);
});

test("counting on leaves the stop; counting up to a stop that was opened early does not", () => {
  assert.deepEqual(stopReached(state({ next: 4, at_stop: 0 }), state({ next: 5, at_stop: 0 }), COUNT), { leave: 0 });
  assert.equal(stopReached(state({ next: 2, at_stop: 0 }), state({ next: 3, at_stop: 0 }), COUNT), null);
});

test("the next count comes first, then those of which something is known, with the plain ones between", () => {
  const rows = coming(state({ next: 4 }), COUNT);
  assert.deepEqual(rows.map((row) => row.n ?? row.plain), [4, 5, ["40"], 7]);
  assert.deepEqual(rows[1].heard.map(({ heard }) => heard), ["33", "thirty-four"]);
  assert.deepEqual(rows[3].flags, COUNT.flags[7]);
});

test("past the planned end only the next count comes, and after the last nothing", () => {
  assert.deepEqual(coming(state({ next: 9 }), COUNT).map((row) => row.text), ["58"]);
  assert.deepEqual(coming(state({ next: 11 }), COUNT), []);
});

test("what was said otherwise is listed until it is corrected; an equal name and a difference are not", async () => {
  const { list, acts, write } = await lesson();
  await write(4);
  await acts.write(5, "33");
  await acts.write(6, "40");
  assert.deepEqual(saidOtherwise(list.state, COUNT).map(({ n, text, right }) => [n, text, right]), [[5, "33", "34"]]);
  await acts.correct(5, "34");
  assert.deepEqual(saidOtherwise(list.state, COUNT), []);
  assert.deepEqual(list.state.entries["5"][0].struck, ["33"]);
  await acts.write(5, "thirty-four");
  assert.deepEqual(saidOtherwise(list.state, COUNT), []);
  await acts.leaveOut(7);
  assert.deepEqual(saidOtherwise(list.state, COUNT).map(({ n, leftOut }) => [n, leftOut]), [[7, true]]);
});

test("of two entries in one cell the one chosen stands alone, for both devices", async () => {
  const { list, acts } = await lesson();
  const other = { v: 1, id: "b0000000-0000-4000-8000-000000000000", t: 1, device: "other", at: "2026-11-03T14:05:09.250Z", ms: 5, kind: "term.write" };
  await acts.write(1, "10");
  await list.hear([{ ...other, seq: 1, data: { n: 1, text: "11", over: null } }]);
  const [{ n, entries }] = differing(list.state);
  assert.deepEqual(entries.map(({ text }) => text).sort(), ["10", "11"]);
  await acts.settle(n, entries.find(({ text }) => text === "11"), entries);
  assert.deepEqual(list.state.entries["1"].map(({ text, struck }) => [text, struck]), [["11", []]]);
});

test("the voice is about what was counted since the last mark, or that mark again", async () => {
  const { list, acts, write } = await lesson();
  assert.equal(voiceStretch(list.state), null);
  await write(4);
  assert.deepEqual(voiceStretch(list.state), { from: 1, to: 4, how: "" });
  await acts.voice(voiceStretch(list.state), "strong");
  assert.deepEqual(voiceStretch(list.state), { from: 1, to: 4, how: "strong" });
  await write(2);
  assert.deepEqual(voiceStretch(list.state), { from: 5, to: 6, how: "" });
});

test("a planned answer is kept once and taken back by the same tap", async () => {
  const { list, acts } = await lesson();
  await acts.notice("they all end in 4", 2);
  await acts.notice("my own words");
  const heard = heardAnswers(list.state);
  assert.deepEqual([...heard.keys()], [2]);
  await acts.takeBack(heard.get(2));
  assert.equal(heardAnswers(list.state).size, 0);
  assert.deepEqual(list.state.notices.map(({ text }) => text), ["my own words"]);
});

test("a target chosen again is not recorded any more", async () => {
  const { list, acts } = await lesson();
  await acts.target(0, "seen");
  assert.deepEqual(list.state.targets, { 0: "seen" });
  await acts.target(0, "seen");
  assert.deepEqual(list.state.targets, {});
});

test("undo takes back noticings and voices too, never a stop or the think time", async () => {
  const { list, acts, write } = await lesson();
  await write(1);
  await acts.notice("one");
  await acts.enterStop(0);
  await acts.think(30);
  assert.equal(acts.newest().kind, "notice.add");
  await acts.undo();
  assert.equal(acts.newest().kind, "term.write");
  assert.equal(list.state.at_stop, 0);
  await acts.undo();
  assert.equal(acts.newest(), undefined);
  assert.equal(acts.undo(), null);
});

test("a sentence's fractions are found, and dates and prices left alone", () => {
  assert.deepEqual(pieces("under 7 3/5 and 1/5?"), ["under ", "7 3/5", " and ", "1/5", "?"]);
  assert.deepEqual(pieces("on 1/2/2026"), ["on 1/2/2026"]);
});

test("the end waits until all is sent, and no longer than its patience", async () => {
  const list = { unsent: [1] };
  assert.equal(await allSent(list, { patience: 300, wait: async () => {} }), false);
  assert.equal(await allSent(list, { patience: 300, wait: async () => { list.unsent = []; } }), true);
});
