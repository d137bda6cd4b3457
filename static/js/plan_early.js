// What was typed before the scripts ran is told to them now, so that it is previewed and kept like all that is typed later.
(() => {
  const form = document.querySelector("[data-keeps]");
  // On the way back and when it is loaded again, the browser fills the page in as it stood.
  if (!form || performance.getEntriesByType("navigation")[0]?.type !== "navigate") return;
  const isTyped = (field) => (field.type === "checkbox" ? field.checked !== field.defaultChecked : field.value !== field.defaultValue);

  // htmx listens when the page has been read; a moment later so does everything.
  document.addEventListener("DOMContentLoaded", () => setTimeout(() => {
    for (const field of form.querySelectorAll("input:not([type=radio]), textarea")) {
      if (isTyped(field)) field.dispatchEvent(new Event("input", { bubbles: true }));
    }
  }));
})();
