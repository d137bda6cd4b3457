// The lesson's list of events on this page: made here, kept in the store, heard from the server or from another tab.
// `state` is what may be painted: only what is stored. `ahead` also holds what is just being stored, so that the next
// key knows where the count is. Without a store everything is painted and `stored` is false.

import { inOrder, reduceEvents } from "./reduce.js";

const CHANNEL = "countfold-lessons";

export class EventList {
  #records = new Map(); // id -> {event, own, seq, refused}
  #storing = new Map(); // id -> event, not stored yet
  #channel = null;

  constructor({ lesson, store, maker, channel = globalThis.BroadcastChannel }) {
    this.lesson = lesson;
    this.store = store;
    this.maker = maker;
    this.stored = store !== null;
    this.state = this.ahead = reduceEvents([]);
    this.changed = () => {}; // something to paint
    this.waiting = () => {}; // something to send
    if (channel) this.#listen(new channel(CHANNEL));
  }

  async load() {
    if (this.store) {
      try {
        for (const { event, own, seq, refused } of await this.store.all()) {
          this.#take({ event, own, seq, refused });
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

  // Made or held here and not acknowledged yet, in counting order of the clock.
  get unsent() {
    return this.records.filter((record) => record.seq === null && !record.refused)
      .sort((a, b) => a.event.t - b.event.t);
  }

  get refused() { return this.records.filter((record) => record.refused); }

  // Make an event. It is painted once it is stored; the promise is done then.
  async add(kind, data) {
    const event = this.maker.make(kind, data);
    this.#storing.set(event.id, event);
    this.#reduceAhead();
    const record = { event, own: true, seq: null, refused: "" };
    if (this.stored) {
      try {
        await this.store.put([record]);
      } catch {
        this.stored = false; // full or blocked: painted all the same, and the page says so
      }
    }
    this.#storing.delete(event.id);
    this.#take(record);
    this.#reduce();
    this.changed();
    this.waiting();
    this.#channel?.postMessage({ lesson: this.lesson, event });
    return event;
  }

  // Events that the server sent, each with its seq.
  async hear(events) {
    const fresh = [];
    for (const { seq, ...event } of events) {
      const known = this.#records.get(event.id);
      if (known?.seq === seq && !event.erased) continue;
      fresh.push({ event, own: known?.own ?? false, seq, refused: "" });
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
    for (const [id, { words }] of Object.entries(rejected)) {
      const record = this.#records.get(id);
      if (record) answered.push({ ...record, refused: words });
    }
    await this.#keep(answered);
  }

  // An older backup was put back: everything held is to be sent again.
  async sendAllAgain() {
    await this.#keep(this.records.map((record) => ({ ...record, seq: null, refused: "" })));
  }

  #listen(channel) {
    this.#channel = channel;
    channel.onmessage = ({ data }) => {
      if (data.lesson !== this.lesson || this.#records.has(data.event.id)) return;
      this.#take({ event: data.event, own: true, seq: null, refused: "" }); // the other tab has stored it
      this.#reduce();
      this.changed();
      this.waiting();
    };
  }

  async #keep(records) {
    if (!records.length) return;
    if (this.stored) {
      try {
        await this.store.put(records);
      } catch {
        this.stored = false;
      }
    }
    for (const record of records) this.#take(record);
    this.#reduce();
    this.changed();
  }

  #take(record) {
    this.#records.set(record.event.id, record);
    this.maker.see(record.event);
  }

  #reduce() {
    this.state = reduceEvents(this.events);
    this.#reduceAhead();
  }

  #reduceAhead() {
    this.ahead = this.#storing.size ? reduceEvents([...this.events, ...this.#storing.values()]) : this.state;
  }
}
