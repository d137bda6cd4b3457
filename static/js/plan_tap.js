// What tapped cells have in common is asked again when another count stands in them, and "Start again" lets go of them.
(() => {
  const part = () => document.querySelector(".plan-taps");
  const tapped = () => [...part().querySelectorAll('[data-n][aria-pressed="true"]')];
  const tell = () => part().dispatchEvent(new CustomEvent("cells-chosen", { bubbles: true }));

  document.addEventListener("click", (event) => {
    if (!event.target.closest("[data-untap]")) return;
    tapped().forEach((cell) => cell.setAttribute("aria-pressed", "false"));
    part().querySelector("[data-chosen-cells]").value = "";
    tell();
  });
  document.body.addEventListener("counted", () => {
    if (part() && tapped().length) tell();
  });
})();
