// The slip of paper on which words are typed: over a cell for what was said, in the gutter for a phrase. It says with
// plain buttons what Enter and Shift+Enter do; Escape leaves.

export class SlipOfPaper {
  #done = () => {};

  constructor({ root, say }) {
    this.root = root;
    this.say = say;
    this.field = root.querySelector("input");
    this.name = root.querySelector("label");
    this.hint = root.querySelector(".hint");
    this.buttons = root.querySelector(".b-slip-buttons");
    root.addEventListener("keydown", (event) => this.#key(event));
  }

  get isOpen() { return !this.root.hidden; }

  get text() { return this.field.value.trim().replace(/\s+/g, " "); }

  // choices: [{name, act(text), needsText}], the first is what Enter does, one with `shift` what Shift+Enter does.
  open({ label, hint = "", text = "", longest, choices, at = () => {}, onOneLine = false, done }) {
    this.choices = choices;
    this.#done = done;
    this.name.textContent = label;
    this.hint.textContent = hint;
    this.hint.hidden = !hint;
    this.field.maxLength = longest;
    this.field.value = text;
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

  // A tap elsewhere: what was typed is not lost, it does what Enter does.
  leave() {
    if (this.isOpen && this.text) this.#take(this.choices[0]);
    else this.close();
  }

  #take(choice) {
    const text = this.text;
    if (choice.needsText !== false && !text) return;
    this.root.hidden = true;
    choice.act(text);
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
      this.close();
    } else if (event.key === "Enter" && event.target === this.field) {
      event.preventDefault();
      const shifted = this.choices.find((choice) => choice.shift);
      this.#take((event.shiftKey && shifted) || this.choices[0]);
    }
  }
}
