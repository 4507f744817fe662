"use strict";
// Marks a form that is on its way, so that an impatient second press does nothing.
document.addEventListener("submit", (event) => {
  const button = event.target.querySelector("button");
  if (button) {
    button.setAttribute("aria-busy", "true");
    setTimeout(() => { button.disabled = true; }, 0);
  }
});
// Sends a file and says how much of it has gone; without a script the form sends it as it is.
document.addEventListener("submit", (event) => {
  const form = event.target;
  const file = form.querySelector("input[type=file]")?.files[0];
  if (form.dataset.upload && file) {
    event.preventDefault();
    upload(form, file);
  }
});
// The words of the page with their values.
function filled(words, values) {
  return words.replace(/\{(\w+)\}/g, (_, name) => values[name]);
}
function upload(form, file) {
  const sent = form.querySelector(".sent");
  const bar = sent.querySelector("progress");
  const say = (text) => { sent.querySelector("span").textContent = text; };
  const kilobytes = (bytes) => Math.ceil(bytes / 1000) + " kB";
  const refuse = (text) => {
    say(text);
    setTimeout(() => {
      const button = form.querySelector("button");
      button.removeAttribute("aria-busy");
      button.disabled = false;
    }, 0);
  };
  sent.hidden = false;
  if (file.size > Number(form.dataset.upload)) {
    refuse(filled(form.dataset.tooLarge,
      { size: kilobytes(file.size), most: kilobytes(Number(form.dataset.upload)) }));
    return;
  }
  const request = new XMLHttpRequest();
  request.open("POST", form.action);
  request.setRequestHeader("Accept", "text/html");
  request.upload.addEventListener("progress", (progress) => {
    bar.value = progress.loaded / progress.total;
    say(filled(form.dataset.sent,
      { sent: kilobytes(progress.loaded), total: kilobytes(progress.total) }));
  });
  request.addEventListener("load", () => {
    if (request.status < 400) {
      window.location.assign(request.responseURL);
      return;
    }
    const page = new DOMParser().parseFromString(request.responseText, "text/html");
    refuse(page.querySelector(".big")?.textContent || filled(form.dataset.refused, request));
  });
  request.addEventListener("error", () => { refuse(form.dataset.lost); });
  const data = new FormData(form);
  data.delete("kits");
  request.send(data);
}
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
