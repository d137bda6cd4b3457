// A free text beside a lesson: never empty, never longer than it may be, and asked about first where it looks as if it
// named a child. Nothing is kept until that is answered.

import { namesIn } from "../names.js";

export class WrittenWords {
  // form: with an input, a [data-ask] part with its words and two buttons.
  constructor({ form, names, say, keep }) {
    Object.assign(this, { form, names, say, keep });
    this.input = form.querySelector("input");
    this.ask = form.querySelector("[data-ask]");
    form.addEventListener("submit", (event) => {
      event.preventDefault();
      this.#offer();
    });
    this.input.addEventListener("input", () => { this.ask.hidden = true; });
    this.ask.querySelector("[data-does=keep]").addEventListener("click", () => this.#done());
    this.ask.querySelector("[data-does=change]").addEventListener("click", () => {
      this.ask.hidden = true;
      this.input.focus();
    });
  }

  // Words to begin with, and what is done with them instead of `keep`.
  begin(text = "", keep = this.keep) {
    this.keep = keep;
    this.input.value = text;
    this.ask.hidden = true;
  }

  #offer() {
    const text = this.#text;
    if (!text) {
      this.input.focus();
      return;
    }
    const found = namesIn(text, this.names);
    if (!found.length) {
      this.#done();
      return;
    }
    this.ask.querySelector("p").textContent = this.say("is-a-child", { names: found.join(this.say("or")) });
    this.ask.hidden = false;
    this.ask.querySelector("[data-does=change]").focus();
  }

  get #text() { return this.input.value.trim().replace(/\s+/g, " ").slice(0, this.input.maxLength); }

  #done() {
    const text = this.#text;
    this.begin("");
    if (text) this.keep(text);
  }
}
