// Talks with the server: sends what is not acknowledged, in batches, and asks every second for what others added.
// Whatever goes wrong, nothing is dropped: it stays in the list and is tried again.

const BATCH = 100;
const LATER = "too-many"; // no refusal of the event: it is to be sent again
const EVERY = 1000; // while something happens
const QUIET_AFTER = 60; // answers without news
const WHEN_QUIET = 3000;
const LONGEST = 30000; // between two tries while the server cannot be reached
const RESTED = new Set(["offline", "server"]); // no new event hurries these on
const TROUBLES = { 401: "signed-out", 403: "refused", 404: "unknown", 409: "another-person", 410: "deleted" };

export class Sync {
  #timer = null;
  #busy = false;
  #again = false;
  #failures = 0;
  #quiet = 0;

  constructor({ list, address, token, about = {}, keepAbout = async () => {}, fetch = globalThis.fetch.bind(globalThis),
    setTimer = (act, wait) => setTimeout(act, wait), clearTimer = (timer) => clearTimeout(timer),
    isVisible = () => !document.hidden }) {
    Object.assign(this, { list, address, token, about, keepAbout, fetch, setTimer, clearTimer, isVisible });
    this.trouble = ""; // "", offline, server, signed-out, another-person, refused, unknown, not-paired, deleted
    this.changed = () => {};
  }

  start() {
    this.list.waiting = () => this.soon();
    this.soon();
  }

  stop() {
    this.clearTimer(this.#timer);
    this.#timer = null;
  }

  // Something is waiting, the page is visible again, or the network came back.
  soon() {
    if (this.#busy) {
      this.#again = true;
      return;
    }
    if (this.#failures && RESTED.has(this.trouble) && this.#timer !== null) return; // the next try is set
    this.#set(0);
  }

  wake() {
    this.#failures = 0;
    this.#quiet = 0;
    this.stop();
    this.soon();
  }

  #set(wait) {
    this.clearTimer(this.#timer);
    this.#timer = this.setTimer(() => this.round(), wait);
  }

  // One round: send everything that waits, then ask for news. Sets the next one.
  async round() {
    if (this.#busy) return;
    this.#busy = true;
    this.#again = false;
    this.#timer = null;
    let news = false;
    try {
      news = await this.#send();
      if (this.isVisible()) news = (await this.#ask()) || news;
      this.#failures = 0;
      this.#say("");
    } catch (problem) {
      this.#failures += 1;
      this.#say(problem instanceof Refusal ? problem.trouble : "offline");
    }
    this.#busy = false;
    this.#quiet = news ? 0 : this.#quiet + 1;
    const unsent = this.list.unsent.length > 0;
    if (this.#failures) this.#set(Math.min(LONGEST, EVERY * 2 ** Math.min(this.#failures - 1, 10)));
    else if (this.#again) this.#set(0);
    else if (unsent || this.isVisible()) this.#set(this.#quiet > QUIET_AFTER ? WHEN_QUIET : EVERY);
  }

  async #send() {
    let sent = false;
    let waiting = this.list.unsent;
    while (waiting.length) {
      const events = waiting.slice(0, BATCH).map((record) => record.event);
      const answer = await this.#speak("POST", this.#parcel(events));
      if (await this.#wasPutBack(answer)) {
        waiting = this.list.unsent;
        continue;
      }
      const rejected = Object.fromEntries(
        Object.entries(answer.rejected).filter(([, { reason }]) => reason !== LATER)
          .map(([name, reason]) => [events[name]?.id ?? name, reason]),
      );
      await this.list.acknowledge(answer.accepted, rejected);
      const left = this.list.unsent;
      if (left.length >= waiting.length && left[0]?.event.id === events[0].id) break; // no answer on these: later
      waiting = left;
      sent = true;
    }
    return sent;
  }

  async #ask() {
    let news = false;
    for (;;) {
      const answer = await this.#speak("GET");
      if (await this.#wasPutBack(answer)) {
        await this.#send();
        continue;
      }
      await this.list.hear(answer.events);
      if (!answer.ended) await this.list.sendAgain("ended"); // its teacher has opened it again
      news ||= answer.events.length > 0;
      // `last` goes over events that this page may not hear, so it is more than the seq of the last one heard.
      if (answer.last !== this.about.last) await this.#remember({ last: answer.last });
      if (!answer.more) return news;
    }
  }

  // Another epoch: an older backup was put back, so all that is held is sent again.
  async #wasPutBack({ epoch }) {
    if (epoch === this.about.epoch) return false;
    const first = this.about.epoch === undefined;
    await this.#remember({ epoch, last: first ? (this.about.last ?? 0) : 0 });
    if (first) return false;
    await this.list.sendAllAgain();
    return true;
  }

  async #remember(change) {
    Object.assign(this.about, change, { heard_at: Date.now() });
    await this.keepAbout(this.about);
  }

  async #speak(method, body) {
    let answer = await this.#call(method, body);
    if (answer.status === 403) { // the token was changed: an answer to GET brings a fresh one
      const fresh = await this.#call("GET");
      if (fresh.ok && !fresh.redirected) {
        this.token = (await fresh.json()).token ?? this.token;
        answer = await this.#call(method, body);
      } else if (fresh.status !== 403) {
        answer = fresh; // it says more: signed out, or not there
      }
    }
    if (answer.status === 404 && this.#canMakeAgain()) { // perhaps a restore lost the lesson: what opened it is held here
      const made = await this.#call("POST", this.#parcel(this.#firstBatch()));
      if (made.ok) {
        await this.list.sendAllAgain();
        answer = await this.#call(method, body);
      }
    }
    if (answer.redirected) throw new Refusal("signed-out");
    if (!answer.ok) throw new Refusal(await troubleOf(answer));
    const told = await answer.json();
    this.token = told.token ?? this.token;
    return told;
  }

  #canMakeAgain() {
    return this.list.events.some((event) => event.kind === "lesson.open");
  }

  // `now` tells the server how far this clock is from its own.
  #parcel(events) {
    return { epoch: this.about.epoch ?? null, now: new Date().toISOString(), person: this.list.person, events };
  }

  #firstBatch() {
    return this.list.sendable.slice(0, BATCH);
  }

  #call(method, body) {
    const options = { method, credentials: "same-origin", redirect: "follow", cache: "no-store",
      headers: { Accept: "application/json", "X-CSRFToken": this.token } };
    if (body === undefined) return this.fetch(`${this.address}?after=${this.about.last ?? 0}&person=${this.list.person}`, options);
    options.headers["Content-Type"] = "application/json";
    return this.fetch(this.address, { ...options, body: JSON.stringify(body) });
  }

  #say(trouble) {
    this.trouble = trouble;
    this.changed();
  }
}

// A 404 may be for a device whose pairing has ended, and then says so.
async function troubleOf(answer) {
  const { reason } = answer.status === 404 ? await answer.json().catch(() => ({})) : {};
  return reason === "not-paired" ? reason : TROUBLES[answer.status] ?? "server";
}

class Refusal extends Error {
  constructor(trouble) {
    super(trouble);
    this.trouble = trouble;
  }
}
