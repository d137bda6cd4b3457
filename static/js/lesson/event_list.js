// The lesson's list of events on this page: made here, kept in the store, heard from the server or from another tab.
// `state` is what may be painted: only what is stored. `ahead` also holds what is just being stored, so that the next
// key knows where the count is. Without a store everything is painted and `stored` is false.

import { inOrder, isKnown, reduceEvents } from "./reduce.js";

const CHANNEL = "countfold-lessons";

export class EventList {
  #records = new Map(); // id -> {event, own, by, seq, refused, reason}
  #storing = new Map(); // id -> event, not stored yet
  #channel = null;
  #turn = []; // [{record, done}] for the next transaction
  #isStoring = false;
  #isBehind = false;
  #changes = 0; // to the set of events held here
  #aheadOf = 0; // the changes that `ahead` knows of

  // person: who opened the page, by a mark of the server's; "" where nobody was signed in.
  constructor({ lesson, store, maker, person = "", channel = globalThis.BroadcastChannel }) {
    this.lesson = lesson;
    this.person = person;
    this.store = store;
    this.maker = maker;
    this.stored = store !== null;
    this.state = this.ahead = reduceEvents([]);
    this.changed = () => {}; // something to paint
    this.answered = () => {}; // nothing to paint, but the server has answered
    this.waiting = () => {}; // something to send
    if (channel) this.#listen(new channel(CHANNEL));
  }

  async load() {
    if (this.store) {
      try {
        for (const { event, own, by, seq, refused, reason } of await this.store.all()) {
          this.#take({ event, own, by, seq, refused, reason });
        }
      } catch {
        this.stored = false;
      }
    }
    this.#reduce();
  }

  get records() { return [...this.#records.values()]; }

  get events() { return this.records.map((record) => record.event); }

  // With what is just being stored, in order.
  get eventsAhead() { return inOrder([...this.events, ...this.#storing.values()]); }

  // Made or held here and not acknowledged yet, in counting order of the clock; but for what is another's to send.
  get unsent() {
    return this.#waiting.filter((record) => !this.#isAnothers(record)).sort((a, b) => a.event.t - b.event.t);
  }

  // Made in this browser by somebody else who was signed in, and not acknowledged yet.
  get anothers() { return this.#waiting.filter((record) => this.#isAnothers(record)); }

  // All that this page may send, sent or not: of a stub nothing is left.
  get sendable() {
    const others = new Set(this.anothers);
    return inOrder(this.records.filter((record) => !record.event.erased && !others.has(record)).map((record) => record.event));
  }

  get #waiting() { return this.records.filter((record) => record.seq === null && !record.refused); }

  #isAnothers({ by }) {
    return Boolean(by) && by !== this.person;
  }

  get refused() { return this.records.filter((record) => record.refused); }

  // Written here, and gone because words in it were removed everywhere before it reached the server.
  get removed() { return this.records.filter((record) => record.own && record.event.erased); }

  // Whether another device does what this page knows nothing of.
  get isBehind() { return this.#isBehind; }

  // Make an event. It is painted once it is stored; the promise is done then.
  async add(kind, data) {
    const event = this.maker.make(kind, data);
    this.#storing.set(event.id, event);
    this.#changes += 1;
    this.#reduceAhead();
    await new Promise((done) => {
      this.#turn.push({ record: { event, own: true, by: this.person, seq: null, refused: "" }, done });
      if (!this.#isStoring) this.#storeAll();
    });
    return event;
  }

  // One transaction for all that came while the disk was busy, so that fast keys never queue for it one by one.
  async #storeAll() {
    this.#isStoring = true;
    try {
      while (this.#turn.length) {
        const batch = this.#turn.splice(0);
        const records = batch.map(({ record }) => record);
        if (this.stored) {
          try {
            await this.store.put(records);
          } catch {
            this.stored = false; // full or blocked: painted all the same, and the page says so
          }
        }
        for (const record of records) {
          this.#storing.delete(record.event.id);
          this.#take(record, { isHeld: true });
        }
        for (const { done } of batch) done();
        this.#reduce();
        this.changed();
        this.waiting();
        for (const { event, by } of records) this.#channel?.postMessage({ lesson: this.lesson, event, by });
      }
    } finally {
      this.#isStoring = false;
    }
  }

  // Events that the server sent, each with its seq.
  async hear(events) {
    const fresh = [];
    for (const { seq, ...event } of events) {
      const known = this.#records.get(event.id);
      if (known?.seq === seq && !event.erased) continue;
      fresh.push({ event, own: known?.own ?? false, by: known?.by, seq, refused: "" });
    }
    await this.#keep(fresh);
  }

  // The server's answer to what was sent: seq by id, and {words} by id.
  async acknowledge(accepted, rejected) {
    const answered = [];
    for (const [id, seq] of Object.entries(accepted)) {
      const record = this.#records.get(id);
      if (record) answered.push({ ...record, seq, refused: "" });
    }
    for (const [id, { reason, words }] of Object.entries(rejected)) {
      const record = this.#records.get(id);
      if (record) answered.push({ ...record, refused: words, reason });
    }
    await this.#keep(answered);
  }

  // An older backup was put back: everything held is to be sent again, but for stubs, of which nothing is left to send.
  async sendAllAgain() {
    await this.#keep(this.records.filter((record) => !record.event.erased).map((record) => ({
      ...record, by: record.seq === null ? record.by : "", seq: null, refused: "", // what was sent once is anybody's to send again
    })));
  }

  // What was refused for a reason that holds no more.
  async sendAgain(reason) {
    await this.#keep(this.refused.filter((record) => record.reason === reason).map((record) => ({ ...record, refused: "" })));
  }

  #listen(channel) {
    this.#channel = channel;
    channel.onmessage = ({ data }) => {
      if (data.lesson !== this.lesson || this.#records.has(data.event.id)) return;
      this.#take({ event: data.event, own: true, by: data.by, seq: null, refused: "" }); // the other tab has stored it
      this.#reduce();
      this.changed();
      this.waiting();
    };
  }

  async #keep(records) {
    if (!records.length) return;
    if (this.stored) {
      try {
        await this.store.putHeard(records);
      } catch {
        this.stored = false;
      }
    }
    const before = this.#changes;
    for (const record of records) this.#take(record);
    if (this.#changes === before) { // only where they stand with the server
      this.answered();
      return;
    }
    this.#reduce();
    this.changed();
  }

  // isHeld: it is in `ahead` already. The same id is the same content, but for a stub.
  #take(record, { isHeld = this.#records.has(record.event.id) && !record.event.erased } = {}) {
    if (!isHeld) this.#changes += 1;
    if (!isKnown(record.event.kind)) this.#isBehind = true;
    this.#records.set(record.event.id, record);
    this.maker.see(record.event);
  }

  // What was reduced ahead of the store is what stands now, unless something else came meanwhile.
  #reduce() {
    const isAsAhead = !this.#storing.size && this.#aheadOf === this.#changes;
    this.state = isAsAhead ? this.ahead : reduceEvents(this.events);
    this.#reduceAhead();
  }

  #reduceAhead() {
    if (this.#aheadOf === this.#changes) return;
    this.ahead = this.#storing.size ? reduceEvents([...this.events, ...this.#storing.values()]) : this.state;
    this.#aheadOf = this.#changes;
  }
}
