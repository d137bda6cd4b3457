// Tapping cells of the grid: what do they have in common? Arrow keys walk, space or Enter taps.
(() => {
  const inGrid = (target) => target.closest("#plan-picture .g-cell[role='button']");
  const cells = () => [...document.querySelectorAll("#plan-picture .g-cell[role='button']")];

  function remember() {
    const box = document.getElementById("plan-tapped");
    const fields = cells()
      .filter((cell) => cell.getAttribute("aria-pressed") === "true")
      .map((cell) => {
        const field = document.createElement("input");
        Object.assign(field, { type: "hidden", name: "tapped", value: cell.dataset.n });
        return field;
      });
    box.replaceChildren(...fields);
    htmx.trigger(box, "tapped");
  }

  function tap(cell) {
    cell.setAttribute("aria-pressed", String(cell.getAttribute("aria-pressed") !== "true"));
    remember();
  }

  function walk(cell, key) {
    const here = cell.getBoundingClientRect();
    const middle = (box) => [box.left + box.width / 2, box.top + box.height / 2];
    const [x, y] = middle(here);
    const next = cells()
      .map((other) => ({ other, at: middle(other.getBoundingClientRect()) }))
      .filter(({ at }) => ({
        ArrowRight: at[0] > x + 1 && Math.abs(at[1] - y) < 1,
        ArrowLeft: at[0] < x - 1 && Math.abs(at[1] - y) < 1,
        ArrowDown: at[1] > y + 1 && Math.abs(at[0] - x) < 1,
        ArrowUp: at[1] < y - 1 && Math.abs(at[0] - x) < 1,
      })[key])
      .sort((a, b) => Math.hypot(a.at[0] - x, a.at[1] - y) - Math.hypot(b.at[0] - x, b.at[1] - y))[0];
    if (!next) return;
    cell.setAttribute("tabindex", "-1");
    next.other.setAttribute("tabindex", "0");
    next.other.focus();
  }

  // Another count or fold: the same cells hold other numbers now.
  document.body.addEventListener("counted", () => {
    if (document.querySelector("#plan-tapped input")) remember();
  });
  document.addEventListener("click", (event) => {
    const cell = inGrid(event.target);
    if (cell) tap(cell);
    if (event.target.closest("[data-untap]")) {
      cells().forEach((one) => one.setAttribute("aria-pressed", "false"));
      remember();
    }
  });
  document.addEventListener("keydown", (event) => {
    const cell = event.target.closest && inGrid(event.target);
    if (!cell) return;
    if (event.key === " " || event.key === "Enter") tap(cell);
    else if (event.key.startsWith("Arrow")) walk(cell, event.key);
    else return;
    event.preventDefault();
  });
})();
