// The think-time bar: silent, as wide as the grid, shrinking steadily. It ends by being empty; nothing blinks.

const STEP = 100; // ms between two drawings

export class ThinkBar {
  #timer = null;
  #running = null; // event id
  #started = 0;

  // tell: is told how many seconds are left, whole ones.
  constructor({ root, bar, device, tell = () => {} }) {
    Object.assign(this, { root, bar, device, tell });
  }

  // heardLive: the event came while this page was open, so that it starts when it is heard; clocks of devices differ.
  paint(think, { heardLive }) {
    if (think?.event === (this.#running ?? undefined)) return;
    clearInterval(this.#timer);
    this.#running = think?.event ?? null;
    this.root.classList.toggle("is-thinking", think !== null);
    if (!think) {
      this.#draw(0);
      return;
    }
    this.#started = this.#start(think, heardLive);
    const draw = () => {
      const left = Math.max(0, 1 - (performance.now() - this.#started) / (think.seconds * 1000));
      this.#draw(left);
      this.tell(Math.ceil(left * think.seconds));
      if (left === 0) {
        clearInterval(this.#timer);
        this.root.classList.remove("is-thinking");
      }
    };
    this.#timer = setInterval(draw, STEP);
    draw();
  }

  get isRunning() { return this.root.classList.contains("is-thinking"); }

  #start({ device, ms, at }, heardLive) {
    if (device === this.device) return ms;
    if (heardLive) return performance.now();
    return performance.now() - Math.max(0, Date.now() - Date.parse(at)); // after a reload
  }

  #draw(left) {
    this.bar.style.setProperty("--left", left.toFixed(4));
  }
}
