// What the page and the server say to each other: nothing is lost, nothing is there twice, and trouble has a name.

import assert from "node:assert/strict";
import { test } from "node:test";
import { EventList } from "../../static/js/lesson/event_list.js";
import { EventMaker } from "../../static/js/lesson/event.js";
import { Sync } from "../../static/js/lesson/sync.js";
import { FakeServer, FakeStore, FakeTimers, reply } from "./fakes.js";

function page(server, { store = new FakeStore(), visible = true, about = {}, person = "" } = {}) {
  const maker = new EventMaker({ elapsed: () => 1 });
  const list = new EventList({ lesson: "L", store, maker, person, channel: null });
  const timers = new FakeTimers();
  const sync = new Sync({ list, address: "/events/", token: server.token, about, fetch: server.fetch,
    setTimer: timers.setTimer, clearTimer: timers.clearTimer, isVisible: () => visible });
  return { list, sync, timers, store };
}

const write = (list, n) => list.add("term.write", { n, text: String(n), over: null });

test("what is written is sent once, in order, and acknowledged", async () => {
  const server = new FakeServer();
  const { list, sync } = page(server);
  for (let n = 1; n <= 3; n += 1) await write(list, n);
  await sync.round();
  assert.deepEqual([...server.events.values()].map((event) => event.data.n), [1, 2, 3]);
  assert.equal(list.unsent.length, 0);
  await sync.round();
  assert.equal(server.calls.filter((call) => call.method === "POST").length, 1);
});

test("a hundred events go in one batch, the rest in the next", async () => {
  const server = new FakeServer();
  const { list, sync } = page(server);
  for (let n = 1; n <= 120; n += 1) await write(list, n);
  await sync.round();
  assert.deepEqual(server.calls.filter((call) => call.method === "POST").map((call) => call.body.events.length), [100, 20]);
});

test("an answer that was never heard leaves one row", async () => {
  const server = new FakeServer();
  const { list, sync } = page(server);
  await write(list, 1);
  server.after = () => { throw new TypeError("network"); };
  await sync.round();
  assert.equal(list.unsent.length, 1);
  assert.equal(sync.trouble, "offline");
  server.after = null;
  await sync.round();
  assert.equal(server.events.size, 1);
  assert.equal(list.unsent.length, 0);
  assert.equal(sync.trouble, "");
});

test("without network the tries come ever more seldom, at most half a minute apart", async () => {
  const server = new FakeServer();
  const { sync, timers } = page(server);
  server.trouble = () => { throw new TypeError("network"); };
  const waits = [];
  for (let time = 0; time < 8; time += 1) {
    await sync.round();
    waits.push(timers.wait);
    timers.set = [];
  }
  assert.deepEqual(waits, [1000, 2000, 4000, 8000, 16000, 30000, 30000, 30000]);
});

for (const status of [500, 502, 503, 507, 413]) {
  test(`a server that answers ${status} is not called a lost connection, and everything is kept here`, async () => {
    const server = new FakeServer();
    const { list, sync, timers } = page(server);
    sync.start();
    await write(list, 1);
    server.trouble = () => reply(status);
    timers.set = [];
    await sync.round();
    assert.equal(sync.trouble, "server");
    assert.equal(list.unsent.length, 1);
    await write(list, 2);
    assert.equal(timers.wait, 1000); // what is written does not hurry the next try
    server.trouble = null;
    await sync.round();
    assert.deepEqual([...server.events.values()].map((event) => event.data.n), [1, 2]);
    assert.equal(sync.trouble, "");
  });
}

for (const [says, answer] of [["an answer of 401", reply(401)], ["being sent to the sign-in page", reply(200, {}, { redirected: true })]]) {
  test(`${says} keeps what is written and asks to sign in`, async () => {
    const server = new FakeServer();
    const { list, sync } = page(server);
    await write(list, 1);
    server.trouble = () => answer;
    await sync.round();
    assert.equal(sync.trouble, "signed-out");
    assert.equal(list.unsent.length, 1);
    server.trouble = null;
    await sync.round();
    assert.equal(server.events.size, 1);
  });
}

test("a token that was changed is fetched anew once", async () => {
  const server = new FakeServer();
  const { list, sync } = page(server);
  await write(list, 1);
  server.token = "t2";
  await sync.round();
  assert.equal(server.events.size, 1);
  assert.equal(sync.trouble, "");
});

test("a token that went with its session means signed out", async () => {
  const server = new FakeServer();
  const { list, sync } = page(server);
  await write(list, 1);
  server.trouble = (method) => reply(method === "POST" ? 403 : 401);
  await sync.round();
  assert.equal(sync.trouble, "signed-out");
});

test("a token that stays refused is not asked for for ever", async () => {
  const server = new FakeServer();
  const { list, sync } = page(server);
  await write(list, 1);
  server.trouble = (method) => (method === "POST" ? reply(403) : null);
  await sync.round();
  assert.equal(sync.trouble, "refused");
  assert.equal(server.calls.length, 3);
  assert.equal(list.unsent.length, 1);
});

for (const [status, trouble, told] of [
  [404, "unknown"], [404, "not-paired", { reason: "not-paired" }], [409, "another-person"], [410, "deleted"],
]) {
  test(`${status} is ${trouble} and loses nothing`, async () => {
    const server = new FakeServer();
    const { list, sync } = page(server);
    await write(list, 1);
    server.trouble = () => reply(status, told);
    await sync.round();
    assert.equal(sync.trouble, trouble);
    assert.equal(list.unsent.length, 1);
  });
}

test("one refused event keeps its sentence, stays on the page, and holds nothing else up", async () => {
  const server = new FakeServer();
  const { list, sync } = page(server);
  const bad = await write(list, 1);
  await write(list, 2);
  server.refuses = (event) => (event.id === bad.id ? { reason: "text", words: "At most 40 characters." } : null);
  await sync.round();
  assert.equal(server.events.size, 1);
  assert.deepEqual(list.refused.map((record) => record.refused), ["At most 40 characters."]);
  assert.equal(list.state.entries["1"][0].text, "1");
  await sync.round();
  assert.equal(server.calls.filter((call) => call.method === "POST").length, 1);
});

test("what others wrote is heard, over several answers where it is much", async () => {
  const server = new FakeServer();
  const other = new EventMaker();
  for (let n = 1; n <= 600; n += 1) server.put(other.make("mark.add", { n: 1, mark: "ring", place: null }));
  const { list, sync } = page(server);
  await sync.round();
  assert.equal(list.state.marks.length, 600);
  assert.equal(list.maker.make("show", { line: 0 }).t, 601);
});

test("an older backup put back heals: all that is held is sent again", async () => {
  const server = new FakeServer();
  const { list, sync } = page(server);
  for (let n = 1; n <= 5; n += 1) await write(list, n);
  await sync.round();
  server.events = new Map([...server.events].slice(0, 2));
  server.epoch = "second";
  await sync.round();
  await sync.round();
  assert.equal(server.events.size, 5);
  assert.equal(list.unsent.length, 0);
});

test("a stub is not sent again: nothing of it is left", async () => {
  const server = new FakeServer();
  const { list, sync } = page(server);
  const late = await list.add("notice.add", { text: "garply", expected: null });
  await write(list, 1);
  server.put({ ...late, data: {}, erased: true });
  await sync.round();
  server.epoch = "second";
  server.calls = [];
  await sync.round();
  const sent = server.calls.flatMap((call) => call.body?.events ?? []);
  assert.deepEqual(sent.map((event) => event.kind), ["term.write"]);
  assert.equal(list.unsent.length, 0);
});

test("a lesson that a restore lost is made again by whoever holds what opened it", async () => {
  const server = new FakeServer();
  const { list, sync } = page(server);
  await list.add("lesson.open", { version: 1 });
  await write(list, 1);
  await sync.round();
  server.events = new Map();
  server.epoch = "second";
  server.missing = true;
  await sync.round();
  await sync.round();
  assert.equal(server.events.size, 2);
  assert.equal(sync.trouble, "");
});

test("it is made again too where something waits to be sent", async () => {
  const server = new FakeServer();
  const { list, sync } = page(server);
  await list.add("lesson.open", { version: 1 });
  await sync.round();
  server.events = new Map();
  server.missing = true;
  await write(list, 1);
  await sync.round();
  assert.deepEqual([...server.events.values()].map((event) => event.kind), ["lesson.open", "term.write"]);
  assert.equal(sync.trouble, "");
});

test("a lesson that is not there for whoever is signed in makes nothing that was sent look unsent", async () => {
  const server = new FakeServer();
  const { list, sync } = page(server);
  await list.add("lesson.open", { version: 1 });
  await write(list, 1);
  await sync.round();
  server.trouble = () => reply(404);
  await sync.round();
  assert.equal(sync.trouble, "unknown");
  assert.equal(list.unsent.length, 0);
  await write(list, 2);
  await sync.round();
  assert.equal(list.unsent.length, 1);
});

test("every request says who opened the page", async () => {
  const server = new FakeServer();
  const { list, sync } = page(server, { person: "somebody" });
  await write(list, 1);
  await sync.round();
  assert.deepEqual(server.calls.map((call) => call.body?.person ?? new URL(call.address, "http://school").searchParams.get("person")),
    ["somebody", "somebody"]);
});

test("what one person wrote in this browser is not sent from a page that another opened", async () => {
  const server = new FakeServer();
  const store = new FakeStore();
  const before = page(server, { store, person: "ana" });
  await write(before.list, 1);
  const other = page(server, { store, person: "bo" });
  await other.list.load();
  await write(other.list, 2);
  await other.sync.round();
  assert.deepEqual([...server.events.values()].map((event) => event.data.n), [2]);
  assert.equal(other.list.anothers.length, 1);
  assert.equal(other.list.state.entries["1"][0].text, "1");
  const again = page(server, { store, person: "ana" });
  await again.list.load();
  await again.sync.round();
  assert.deepEqual([...server.events.values()].map((event) => event.data.n), [2, 1]);
  assert.equal(again.list.anothers.length, 0);
});

test("what nobody signed in wrote, and what the server had once, is anybody's to send", async () => {
  const server = new FakeServer();
  const store = new FakeStore();
  const device = page(server, { store });
  await write(device.list, 1);
  const ana = page(server, { store, person: "ana" });
  await ana.list.load();
  await write(ana.list, 2);
  await ana.sync.round();
  assert.equal(server.events.size, 2);
  server.events = new Map();
  server.epoch = "second"; // an older backup
  const bo = page(server, { store, person: "bo", about: { epoch: "first", last: 2 } });
  await bo.list.load();
  await bo.sync.round();
  await bo.sync.round();
  assert.equal(server.events.size, 2);
});

test("what came after the end is sent again once the lesson is open again", async () => {
  const server = new FakeServer();
  const store = new FakeStore();
  const { list, sync } = page(server, { store });
  await write(list, 1);
  server.ended = true;
  server.refuses = () => ({ reason: "ended", words: "The lesson has ended." });
  await sync.round();
  assert.deepEqual(list.refused.map((record) => record.refused), ["The lesson has ended."]);
  const again = page(server, { store }); // loaded again meanwhile
  await again.list.load();
  await again.sync.round();
  assert.equal(again.list.refused.length, 1);
  server.ended = false;
  server.refuses = () => null;
  await again.sync.round();
  await again.sync.round();
  assert.equal(server.events.size, 1);
  assert.equal(again.list.refused.length, 0);
});

test("what was removed before it reached the server is not gone in silence", async () => {
  const server = new FakeServer();
  const { list, sync } = page(server);
  const late = await list.add("notice.add", { text: "garply", expected: null });
  const others = new EventMaker().make("notice.add", {});
  server.put({ ...others, erased: true });
  server.put({ ...late, data: {}, erased: true });
  await sync.round();
  assert.deepEqual(list.removed.map((record) => record.event.id), [late.id]);
  assert.equal(list.state.notices.length, 0);
});

test("what was kept but not sent before a reload is sent after it", async () => {
  const server = new FakeServer();
  const store = new FakeStore();
  const before = page(server, { store });
  await write(before.list, 1);
  const after = page(server, { store });
  await after.list.load();
  assert.equal(after.list.state.entries["1"][0].text, "1");
  await after.sync.round();
  assert.equal(server.events.size, 1);
});

test("two tabs that send the same event leave one row", async () => {
  const server = new FakeServer();
  const store = new FakeStore();
  const one = page(server, { store });
  await write(one.list, 1);
  const two = page(server, { store });
  await two.list.load();
  await Promise.all([one.sync.round(), two.sync.round()]);
  assert.equal(server.events.size, 1);
});

test("a page that is not looked at sends, but does not ask", async () => {
  const server = new FakeServer();
  const { list, sync, timers } = page(server, { visible: false });
  await write(list, 1);
  await sync.round();
  assert.deepEqual(server.calls.map((call) => call.method), ["POST"]);
  assert.equal(timers.wait, undefined);
});

test("after a quiet minute the page asks less often, and at once when something is written", async () => {
  const server = new FakeServer();
  const { list, sync, timers } = page(server);
  sync.start();
  for (let time = 0; time < 62; time += 1) {
    timers.set = [];
    await sync.round();
  }
  assert.equal(timers.wait, 3000);
  await write(list, 1);
  assert.equal(timers.wait, 0);
});

test("a kind that an old page does not know is kept and passed over", async () => {
  const server = new FakeServer();
  server.put(new EventMaker().make("sparkle", { n: 1 }));
  const { list, sync } = page(server);
  await sync.round();
  assert.equal(list.events.length, 1);
  assert.equal(list.state.next, 1);
  assert.ok(list.isBehind);
  assert.equal(sync.trouble, "");
});

test("a page that knows every kind is not behind", async () => {
  const server = new FakeServer();
  const { list, sync } = page(server);
  const { id } = await list.add("mark.add", { n: 1, mark: "ring", place: null });
  await list.add("mark.remove", { event: id });
  await list.add("undo", { event: id });
  await sync.round();
  assert.ok(!list.isBehind);
});
