"use strict";
// Marks a form that is on its way, so that an impatient second press does nothing.
document.addEventListener("submit", (event) => {
  const button = event.target.querySelector("button");
  if (button) {
    button.setAttribute("aria-busy", "true");
    setTimeout(() => { button.disabled = true; }, 0);
  }
});
document.addEventListener("click", (event) => {
  if (event.target.closest("[data-print]")) {
    window.print();
  }
});
// Asks again for a part of the page that is still being worked on.
(() => {
  const running = document.querySelector("[data-running]");
  if (!running) { return; }
  let wait = 300;
  async function again() {
    const part = document.querySelector("[data-running]");
    if (!part) { return; }
    const answer = await fetch(location.href, { headers: { "X-Part": part.dataset.part } });
    if (answer.ok) {
      const page = new DOMParser().parseFromString(await answer.text(), "text/html");
      part.replaceWith(page.getElementById(part.id));
    }
    wait = Math.min(2000, wait * 1.3);
    setTimeout(again, wait);
  }
  setTimeout(again, wait);
})();
