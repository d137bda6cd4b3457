// What children said, in quotes in the gutter beside the line it was said about.

export class Gutter {
  #phrases = new Map(); // event id -> element

  constructor({ root, grid, say, remove }) {
    Object.assign(this, { root, grid, say, remove });
  }

  paint(state) {
    const wanted = new Map(state.phrases.map((phrase) => [phrase.event, phrase]));
    for (const [event, element] of this.#phrases) {
      if (wanted.has(event)) continue;
      element.remove();
      this.#phrases.delete(event);
    }
    for (const [event, phrase] of wanted) {
      if (!this.#phrases.has(event)) this.#phrases.set(event, this.#make(phrase));
    }
    this.#place();
  }

  #make({ event, text, cells }) {
    const element = document.createElement("div");
    element.className = "b-phrase";
    const words = document.createElement("q");
    words.textContent = text;
    const take = document.createElement("button");
    take.type = "button";
    take.className = "b-small-button";
    take.textContent = this.say("take-away");
    take.setAttribute("aria-label", this.say("take-phrase-away", { text }));
    take.addEventListener("click", () => this.remove(event));
    element.append(words, take);
    element.cells = cells;
    this.root.append(element);
    return element;
  }

  // Each beside its first cell in view, one under the other without touching.
  #place() {
    if (!this.#phrases.size) return;
    const top = this.root.getBoundingClientRect().top;
    const placed = [...this.#phrases.values()].map((element) => ({ element, y: this.#wishedY(element) - top }));
    placed.sort((a, b) => a.y - b.y);
    let free = 0;
    for (const { element, y } of placed) {
      const high = element.offsetHeight;
      const at = Math.max(free, y - high / 2);
      element.style.setProperty("--y", `${at.toFixed(0)}px`);
      free = at + high + 8;
    }
  }

  #wishedY(element) {
    const boxes = element.cells.map((n) => this.grid.cell(n)).filter((cell) => cell?.offsetParent)
      .map((cell) => cell.getBoundingClientRect());
    return boxes.length ? (boxes[0].top + boxes[0].bottom) / 2 : this.grid.root.getBoundingClientRect().top;
  }

  // The stretches of the gutter in which words stand, as boxes of the page; none on a small screen, where phrases stand
  // under the grid.
  boxes() {
    if (this.#underTheGrid) return [];
    return [...this.#phrases.values()].map((element) => element.querySelector("q").getBoundingClientRect());
  }

  get #underTheGrid() { return !this.#phrases.size || getComputedStyle(this.root).position === "static"; }

  // Where the lines to the cells start.
  anchors(page) {
    if (this.#underTheGrid) return [];
    return [...this.#phrases.values()].map((element) => {
      const lines = [...element.querySelector("q").getClientRects()];
      const box = lines.reduce((widest, line) => (line.right > widest.right ? line : widest));
      return { cells: element.cells, anchor: { x: box.right - page.left + 6, y: (box.top + box.bottom) / 2 - page.top } };
    });
  }
}
