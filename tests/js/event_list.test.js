// Painted once stored, known ahead of it, and never dropped.

import assert from "node:assert/strict";
import { test } from "node:test";
import { EventList } from "../../static/js/lesson/event_list.js";
import { EventMaker, newId } from "../../static/js/lesson/event.js";
import { FakeStore } from "./fakes.js";

const listOn = (store) => new EventList({ lesson: "L", store, maker: new EventMaker({ elapsed: () => 5 }), channel: null });

test("an id is a UUID of version 4", () => {
  assert.match(newId(), /^[0-9a-f]{8}-[0-9a-f]{4}-4[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/);
  assert.notEqual(newId(), newId());
});

test("nothing is painted before it is stored, and the next key knows already", async () => {
  const store = new FakeStore();
  store.holds = true;
  const list = listOn(store);
  let painted = 0;
  list.changed = () => { painted += 1; };
  const adding = list.add("term.write", { n: 1, text: "1", over: null });
  assert.equal(list.state.next, 1);
  assert.equal(list.ahead.next, 2);
  assert.equal(painted, 0);
  await Promise.resolve();
  store.release();
  await adding;
  assert.equal(list.state.next, 2);
  assert.equal(painted, 1);
});

test("keys faster than the disk are all kept in order", async () => {
  const store = new FakeStore();
  store.holds = true;
  const list = listOn(store);
  const adding = [];
  for (let time = 0; time < 50; time += 1) {
    const n = list.ahead.next;
    adding.push(list.add("term.write", { n, text: String(n), over: null }));
  }
  await Promise.resolve();
  store.holds = false;
  store.release();
  await Promise.all(adding);
  assert.equal(store.puts, 2); // the first key, and all that came while the disk was busy
  assert.equal(list.state.next, 51);
  assert.deepEqual(list.unsent.map((record) => record.event.data.n), Array.from({ length: 50 }, (_, index) => index + 1));
});

for (const [says, store] of [["a store that is full", new FakeStore({ full: true })], ["no store", null]]) {
  test(`with ${says} it is painted all the same, and the page knows`, async () => {
    const list = listOn(store);
    await list.add("term.write", { n: 1, text: "1", over: null });
    assert.equal(list.state.next, 2);
    assert.equal(list.stored, false);
    assert.equal(list.unsent.length, 1);
  });
}

test("the clock goes on from the highest that was seen", async () => {
  const list = listOn(new FakeStore());
  await list.hear([{ id: newId(), t: 41, device: "other", kind: "show", data: { line: 1 }, ms: 0, at: "", v: 1, seq: 1 }]);
  assert.equal((await list.add("show", { line: 2 })).t, 42);
  assert.equal(list.state.line, 2);
});

test("an answer of the server paints nothing anew, and what another device did does", async () => {
  const list = listOn(new FakeStore());
  let painted = 0, answered = 0;
  const event = await list.add("term.write", { n: 1, text: "1", over: null });
  list.changed = () => { painted += 1; };
  list.answered = () => { answered += 1; };
  await list.acknowledge({ [event.id]: 1 }, {});
  await list.hear([{ ...event, seq: 1 }]);
  assert.deepEqual([painted, answered, list.unsent.length], [0, 1, 0]);
  await list.hear([{ id: newId(), t: 41, device: "other", kind: "show", data: { line: 1 }, ms: 0, at: "", v: 1, seq: 2 }]);
  assert.deepEqual([painted, list.state.line], [1, 1]);
  await list.hear([{ ...event, data: {}, erased: true, seq: 1 }]);
  assert.deepEqual([painted, list.state.next], [2, 1]);
});

test("what came from another device while a key was being stored is in the state", async () => {
  const store = new FakeStore();
  store.holds = true;
  const list = listOn(store);
  const adding = list.add("term.write", { n: 1, text: "1", over: null });
  store.holds = false;
  await list.hear([{ id: newId(), t: 1, device: "z", kind: "cover", data: { n: 4 }, ms: 0, at: "", v: 1, seq: 1 }]);
  assert.deepEqual([list.state.next, list.state.covered], [1, [4]]);
  assert.deepEqual([list.ahead.next, list.ahead.covered], [2, [4]]);
  store.release();
  await adding;
  assert.deepEqual([list.state.next, list.state.covered], [2, [4]]);
});
