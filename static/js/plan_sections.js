// On a narrow page one section of the plan stands open at a time, so that the page stays short. What was taken is brought
// into view where it now stands, and outlined once. The strip of folds stays until the next one is there.
(() => {
  const wide = window.matchMedia("(min-width: 52.01rem)");
  const still = window.matchMedia("(prefers-reduced-motion: reduce)");
  const OUTLINED = 2000;
  const beside = new WeakSet(); // opened by an arrival: the section that it was taken in stays open too
  const parts = () => [...document.querySelectorAll("[data-plan-part]")];

  document.addEventListener("toggle", (event) => {
    const opened = event.target;
    if (wide.matches || !opened.open || !opened.matches("[data-plan-part]")) return;
    if (beside.delete(opened)) return;
    const before = opened.getBoundingClientRect().top;
    parts().filter((part) => part !== opened).forEach((part) => { part.open = false; });
    window.scrollBy(0, opened.getBoundingClientRect().top - before);
  }, true);

  // A section with something wrong in it, or that the address leads to, is open from the start.
  const leads = location.hash && document.getElementById(location.hash.slice(1));
  parts().forEach((part) => {
    if (part.querySelector('.field-error, [aria-invalid="true"]') || (leads && part.contains(leads))) {
      beside.add(part);
      part.open = true;
    }
  });

  function arrive() {
    const row = document.querySelector("[data-arrived]");
    if (!row) return;
    row.removeAttribute("data-arrived");
    const part = row.closest("details");
    if (part && !part.open) {
      beside.add(part);
      part.open = true;
    }
    row.tabIndex = -1;
    row.focus({ preventScroll: true });
    row.scrollIntoView({ block: "nearest", behavior: still.matches ? "auto" : "smooth" });
    row.classList.add("arrived");
    setTimeout(() => row.classList.remove("arrived"), OUTLINED);
  }
  document.body.addEventListener("taken", arrive);
  document.body.addEventListener("counted", arrive);

  // A field that comes anew while it is in use stays in use.
  let used = "";
  document.body.addEventListener("htmx:oobBeforeSwap", (event) => {
    if (event.detail.target.contains(document.activeElement)) used = document.activeElement.id;
  });
  document.body.addEventListener("htmx:oobAfterSwap", () => {
    const again = used && document.activeElement === document.body && document.getElementById(used);
    if (again) again.focus({ preventScroll: true });
    used = "";
  });

  const strip = () => document.getElementById("plan-folds");
  document.body.addEventListener("htmx:oobBeforeSwap", (event) => {
    const next = event.detail.fragment.querySelector("#plan-folds");
    if (next && strip()) next.replaceChildren(...strip().childNodes);
  });
  document.body.addEventListener("htmx:afterSwap", (event) => {
    if (event.detail.target !== strip()) return;
    const mine = strip().querySelector(".fold-mine");
    if (mine) mine.parentElement.scrollLeft = mine.offsetLeft - (mine.parentElement.clientWidth - mine.offsetWidth) / 2;
  });
})();
