// Marks the fields of the count whose sentence below says that something is wrong.
(() => {
  const mark = () => {
    for (const sentence of document.querySelectorAll("[data-wrong]")) {
      const field = document.getElementById(`id_${sentence.dataset.wrong}`);
      if (!field) continue;
      if (sentence.hidden) field.removeAttribute("aria-invalid");
      else field.setAttribute("aria-invalid", "true");
    }
  };
  document.body.addEventListener("htmx:oobAfterSwap", mark);
  mark();
})();
