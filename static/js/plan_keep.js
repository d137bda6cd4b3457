// Says whether what is typed has been kept, and keeps the last words when the page is left.
(() => {
  const form = document.querySelector("[data-keeps]");
  const state = document.querySelector("[data-kept]");
  if (!form || !state) return;
  let unkept = false;
  let saving = false;

  form.addEventListener("input", () => {
    unkept = true;
    state.textContent = state.dataset.typing;
  });
  form.addEventListener("submit", () => { saving = true; });

  document.body.addEventListener("htmx:afterRequest", (event) => {
    if (event.detail.elt !== state) return;
    if (event.detail.successful) unkept = false;
    else state.textContent = event.detail.xhr.status ? state.dataset.refused : state.dataset.lost;
  });

  // A closed tab gives no time for an answer: the browser sends this after the page is gone.
  document.addEventListener("visibilitychange", () => {
    if (document.visibilityState !== "hidden" || !unkept || saving) return;
    if (navigator.sendBeacon(state.dataset.kept, new FormData(form))) unkept = false;
  });

  // Back to a page that was saved from: it may be written on again.
  window.addEventListener("pageshow", () => { saving = false; });
})();
