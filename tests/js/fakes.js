// A server that keeps events as the real one does, timers that go when told to, a store in memory.

export class FakeServer {
  constructor() {
    this.events = new Map();
    this.epoch = "first";
    this.token = "t1";
    this.calls = [];
    this.trouble = null; // (method, body) -> an answer, or a throw, before the server does anything
    this.after = null; // the same, after the server has kept what was sent
    this.refuses = () => null; // event -> {reason, words}
    this.missing = false;
    this.ended = false;
  }

  fetch = async (address, { method, headers, body }) => {
    this.calls.push({ method, address, headers, body: body && JSON.parse(body) });
    const early = this.trouble?.(method, this.calls.at(-1));
    if (early) return early;
    const answer = method === "POST" ? this.#post(JSON.parse(body), headers) : this.#get(address);
    const late = this.after?.(method, this.calls.at(-1));
    return late ?? answer;
  };

  put(event) { this.events.set(event.id, { ...event, seq: this.events.size + 1 }); }

  #post({ events }, headers) {
    if (headers["X-CSRFToken"] !== this.token) return reply(403);
    if (this.missing && !events.some((event) => event.kind === "lesson.open")) return reply(404);
    this.missing = false;
    const accepted = {}, rejected = {};
    for (const event of events) {
      const reason = this.refuses(event);
      if (reason) rejected[event.id] = reason;
      else {
        if (!this.events.has(event.id)) this.put(event);
        accepted[event.id] = this.events.get(event.id).seq;
      }
    }
    return reply(200, { ...this.#about(), accepted, rejected });
  }

  #get(address) {
    if (this.missing) return reply(404);
    const after = Number(new URL(address, "http://school").searchParams.get("after"));
    const events = [...this.events.values()].filter((event) => event.seq > after).slice(0, 500);
    const last = events.at(-1)?.seq ?? after;
    return reply(200, { ...this.#about(), last, more: last < this.events.size, ended: this.ended, events });
  }

  #about() { return { epoch: this.epoch, last: this.events.size, token: this.token }; }
}

export function reply(status, json = {}, more = {}) {
  return { status, ok: status >= 200 && status < 300, redirected: false, json: async () => json, ...more };
}

export class FakeStore {
  constructor({ full = false } = {}) {
    this.records = new Map();
    this.full = full;
    this.held = []; // puts that wait until `release`
    this.holds = false;
    this.puts = 0;
  }

  async all() { return [...this.records.values()]; }

  async put(records) {
    this.puts += 1;
    if (this.full) throw new Error("QuotaExceededError");
    if (this.holds) await new Promise((done) => this.held.push(done));
    for (const record of records) this.records.set(record.event.id, structuredClone(record));
  }

  putHeard(records) { return this.put(records); }

  release() { this.held.splice(0).forEach((done) => done()); }
}

export class FakeTimers {
  constructor() { this.set = []; }

  setTimer = (act, wait) => {
    const timer = { act, wait };
    this.set.push(timer);
    return timer;
  };

  clearTimer = (timer) => { this.set = this.set.filter((one) => one !== timer); };

  get wait() { return this.set[0]?.wait; }
}
