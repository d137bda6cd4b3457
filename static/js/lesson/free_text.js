// A free text beside a lesson: never longer than it may be, and asked about first where it looks as if it named a child.
// Nothing is cut and nothing is lost: what was typed stays in its field until it is kept or changed.

import { namesIn } from "./names.js";

export class FreeText {
  #keep = () => {};

  // root: holds [data-too-long] and [data-ask] with its words and two buttons; input: the field that was typed in.
  constructor({ root, input, names, say }) {
    Object.assign(this, { input, names, say });
    this.tooLong = root.querySelector("[data-too-long]");
    this.ask = root.querySelector("[data-ask]");
    input.addEventListener("input", () => this.clear());
    this.ask.querySelector("[data-does=keep]").addEventListener("click", () => this.#keep());
    this.ask.querySelector("[data-does=change]").addEventListener("click", () => this.change());
  }

  get isAsking() { return !this.ask.hidden; }

  clear() {
    this.tooLong.hidden = true;
    this.ask.hidden = true;
  }

  // Back to the field, with what was typed.
  change() {
    this.clear();
    this.input.focus();
  }

  // `keep` is called with the text at once, or once it was said that it names no child. longest: in characters.
  offer(text, longest, keep) {
    this.clear();
    const length = [...text].length;
    if (length > longest) {
      this.tooLong.textContent = this.say("too-long", { length, longest });
      this.tooLong.hidden = false;
      this.input.focus();
      return;
    }
    const found = namesIn(text, this.names);
    if (!found.length) {
      keep(text);
      return;
    }
    this.#keep = () => {
      this.clear();
      keep(text);
    };
    this.ask.querySelector("p").textContent = this.say("is-a-child", { names: found.join(this.say("or")) });
    this.ask.hidden = false;
    this.ask.querySelector("[data-does=change]").focus();
  }
}

// As it is kept: no white around it, one space between words.
export function tidied(text) {
  return text.trim().replace(/\s+/g, " ");
}
