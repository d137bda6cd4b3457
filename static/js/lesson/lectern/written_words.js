// A form of the lectern with one free text: never empty, and kept once it is asked about where it has to be.

import { FreeText, tidied } from "../free_text.js";

export class WrittenWords {
  // form: with an input and what free_text.js needs. longest: in characters, as docs/lessons.md says.
  constructor({ form, names, say, longest, keep }) {
    Object.assign(this, { form, longest, keep });
    this.input = form.querySelector("input");
    this.text = new FreeText({ root: form, input: this.input, names, say });
    form.addEventListener("submit", (event) => {
      event.preventDefault();
      this.#offer();
    });
  }

  // Words to begin with, and what is done with them instead of `keep`.
  begin(text = "", keep = this.keep) {
    this.keep = keep;
    this.input.value = text;
    this.text.clear();
  }

  #offer() {
    const text = tidied(this.input.value);
    if (!text) {
      this.input.focus();
      return;
    }
    this.text.offer(text, this.longest, (words) => {
      this.begin("");
      this.keep(words);
    });
  }
}
