// Makes events. The counter `t` is a Lamport clock: one more than the highest that this page has seen.

const VERSION = 1;

// A UUID4 by getRandomValues: randomUUID is missing on a classroom's plain http address.
export function newId() {
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  bytes[6] = (bytes[6] & 0x0f) | 0x40;
  bytes[8] = (bytes[8] & 0x3f) | 0x80;
  const hex = Array.from(bytes, (byte) => byte.toString(16).padStart(2, "0")).join("");
  return [hex.slice(0, 8), hex.slice(8, 12), hex.slice(12, 16), hex.slice(16, 20), hex.slice(20)].join("-");
}

export class EventMaker {
  #highest = 0;

  constructor({ now = () => new Date(), elapsed = () => performance.now() } = {}) {
    this.device = newId(); // random per page load: two loads never share a clock
    this.now = now;
    this.elapsed = elapsed;
  }

  see(event) {
    if (event.t > this.#highest) this.#highest = event.t;
  }

  make(kind, data) {
    this.#highest += 1;
    return {
      v: VERSION,
      id: newId(),
      t: this.#highest,
      device: this.device,
      at: this.now().toISOString(),
      ms: Math.round(this.elapsed()),
      kind,
      data,
    };
  }
}
