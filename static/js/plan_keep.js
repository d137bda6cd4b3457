// Says whether what is typed has been kept and, if not, why; tries again; keeps the last words when the page is left.
(() => {
  const form = document.querySelector("[data-keeps]");
  const state = document.querySelector("[data-kept]");
  if (!form || !state) return;
  const AGAIN_AFTER = 15000;
  let unkept = false;
  let saving = false;
  let again = 0;

  // The server's own sentence (422, 413), or one for the kind of refusal.
  function reason(request) {
    if (!request.status) return state.dataset.lost;
    if (request.status === 422) return null;
    if (request.status === 413) return request.responseText.startsWith("Not kept") ? request.responseText : state.dataset.tooMuch;
    if (request.status === 401) return state.dataset.signedOut;
    if (request.status === 403) return request.getResponseHeader("X-Stale-Form") ? state.dataset.stale : state.dataset.forbidden;
    if (request.status === 404) return state.dataset.gone;
    if (request.status === 507) return state.dataset.full;
    return state.dataset.refused;
  }

  const passes = (status) => !status || status >= 500;

  form.addEventListener("input", () => {
    unkept = true;
    state.textContent = state.dataset.typing;
  });
  form.addEventListener("submit", () => { saving = true; });

  document.body.addEventListener("htmx:afterRequest", (event) => {
    const request = event.detail.xhr;
    const isKeeping = event.detail.elt === state;
    // The buttons that add and take out keep the plan too.
    if (!isKeeping && event.detail.elt.name !== "change") return;
    clearTimeout(again);
    if (event.detail.successful) {
      if (isKeeping) unkept = false;
      return;
    }
    const why = reason(request);
    if (why !== null) state.textContent = why;
    if (isKeeping && passes(request.status)) again = setTimeout(keep, AGAIN_AFTER);
  });

  const keep = () => { if (unkept && !saving) htmx.trigger(state, "keep"); };
  window.addEventListener("online", keep);

  // A closed tab gives no time for an answer: the browser sends this after the page is gone.
  document.addEventListener("visibilitychange", () => {
    if (document.visibilityState !== "hidden") keep();
    else if (unkept && !saving && navigator.sendBeacon(state.dataset.kept, new FormData(form))) unkept = false;
  });

  // Back to a page that was saved from: it may be written on again.
  window.addEventListener("pageshow", () => { saving = false; });
})();
