// Going back to a plan that was saved from this page shows the plan as it was saved: browsers keep the page as it stood
// before, alive or as it was first sent, and would show a blank sheet or an older text. What nobody saved stays as it is.
(() => {
  const form = document.querySelector("[data-keeps]");
  if (!form) return;
  let sent = false;
  let written = false;
  form.addEventListener("submit", () => { sent = true; });
  form.addEventListener("input", () => { written = true; });

  const version = (page) => page.querySelector("[name=based_on]")?.value ?? "";

  async function lookAgain(keptAlive) {
    written = false;
    const answer = await fetch(location.href, { cache: "no-cache" }).catch(() => null);
    if (!answer || !answer.ok || written) return;
    const now = new DOMParser().parseFromString(await answer.text(), "text/html");
    if (!now.querySelector("[data-keeps]") || written) return;
    const isSaved = answer.redirected || version(now) !== version(document);
    if (!isSaved && keptAlive) return;
    form.inert = true; // what is typed from now on would go with this page
    location.replace(answer.url);
  }

  window.addEventListener("pageshow", (event) => {
    const cameBack = performance.getEntriesByType("navigation")[0]?.type === "back_forward";
    if (event.persisted ? sent : cameBack) lookAgain(event.persisted);
    sent = false;
  });
})();
