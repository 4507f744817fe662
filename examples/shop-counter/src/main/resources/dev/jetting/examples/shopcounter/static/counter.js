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
