// The slip of paper on which words are typed: over a cell for what was said, in the gutter for a phrase. It says with
// plain buttons what Enter and Shift+Enter do; Escape leaves.

import { FreeText, tidied } from "../free_text.js";

export class SlipOfPaper {
  #done = () => {};

  constructor({ root, names, say }) {
    this.root = root;
    this.say = say;
    this.field = root.querySelector("input");
    this.name = root.querySelector("label");
    this.hint = root.querySelector(".hint");
    this.buttons = root.querySelector(".b-slip-buttons");
    this.free = new FreeText({ root, input: this.field, names, say });
    root.addEventListener("keydown", (event) => this.#key(event));
  }

  get isOpen() { return !this.root.hidden; }

  get text() { return tidied(this.field.value); }

  // choices: [{name, act(text), needsText}], the first is what Enter does, one with `shift` what Shift+Enter does.
  open({ label, hint = "", text = "", longest, choices, at = () => {}, onOneLine = false, done }) {
    this.choices = choices;
    this.longest = longest;
    this.#done = done;
    this.name.textContent = label;
    this.hint.textContent = hint;
    this.hint.hidden = !hint;
    this.field.value = text;
    this.free.clear();
    this.buttons.replaceChildren(...choices.map((choice) => this.#button(choice)),
      this.#button({ name: this.say("close"), key: this.say("key-escape"), act: () => {}, needsText: false }));
    this.root.hidden = false;
    this.root.classList.toggle("is-line", onOneLine);
    at(this.root);
    this.field.focus();
    this.field.setSelectionRange(text.length, text.length);
  }

  close() {
    if (!this.isOpen) return;
    this.root.hidden = true;
    this.#done();
  }

  // A tap elsewhere: what was typed is not lost, it does what Enter does, or is asked about.
  leave() {
    if (this.isOpen && this.text) this.#take(this.choices[0]);
    else this.close();
  }

  #take(choice) {
    if (choice.needsText === false) this.#finish(() => choice.act());
    else if (this.text) this.free.offer(this.text, this.longest, (text) => this.#finish(() => choice.act(text)));
  }

  #finish(act) {
    this.root.hidden = true;
    act();
    this.#done();
  }

  #button(choice) {
    const button = document.createElement("button");
    button.type = "button";
    button.className = "b-small-button";
    button.textContent = choice.name;
    if (choice.key) {
      const key = document.createElement("kbd");
      key.textContent = choice.key;
      button.append(" ", key);
    }
    button.addEventListener("click", () => this.#take(choice));
    return button;
  }

  #key(event) {
    event.stopPropagation();
    if (event.key === "Escape") {
      event.preventDefault();
      if (this.free.isAsking) this.free.change();
      else this.close();
    } else if (event.key === "Enter" && event.target === this.field) {
      event.preventDefault();
      const shifted = this.choices.find((choice) => choice.shift);
      this.#take((event.shiftKey && shifted) || this.choices[0]);
    }
  }
}
