// Everything works without this. It only reloads while the portfolio is being assessed, and lets the arrow keys walk along the line.
"use strict";

const live = document.querySelector("[data-live]");
if (live && !document.activeElement?.closest("form")) {
  setTimeout(() => location.reload(), 2000);
}

// As-known-on: a slider beside the date field. It only fills the field; the form is still sent by its button.
for (const field of document.querySelectorAll("input[data-slide]")) {
  const day = 86400000;
  const first = Date.parse(field.min), last = Date.parse(field.max);
  if (!(last > first)) continue;
  const slide = document.createElement("input");
  slide.type = "range";
  slide.min = "0";
  slide.max = String(Math.round((last - first) / day));
  slide.value = String(Math.round((Date.parse(field.value) - first) / day));
  slide.setAttribute("aria-label", "Day, from the beginning of the job to today");
  slide.addEventListener("input", () => { field.value = new Date(first + slide.value * day).toISOString().slice(0, 10); });
  slide.addEventListener("change", () => field.form.requestSubmit());
  field.addEventListener("input", () => { slide.value = String(Math.round((Date.parse(field.value) - first) / day)); });
  field.after(slide);
}

// The line: arrows move from peg to peg, plus and minus zoom through the links that are there anyway.
const line = document.querySelector(".line");
if (line) {
  line.addEventListener("keydown", (event) => {
    const stops = [...line.querySelectorAll("svg a")];
    const at = stops.indexOf(document.activeElement);
    const step = { ArrowRight: 1, ArrowLeft: -1 }[event.key];
    if (step && at >= 0) {
      stops[Math.min(stops.length - 1, Math.max(0, at + step))].focus();
      event.preventDefault();
    }
    const link = { "+": "[data-zoom=in]", "=": "[data-zoom=in]", "-": "[data-zoom=out]" }[event.key];
    if (link) line.querySelector(link)?.click();
  });
}

// The day of an entry: filling in a day chooses its line.
for (const line of document.querySelectorAll(".when .choice")) {
  line.addEventListener("input", (event) => { if (event.target.type === "date") line.querySelector("[type=radio]").checked = true; });
}

// An import: how far it is, as the desk tells it; at the end the page is shown anew. Without this the page asks again by itself.
const runs = document.querySelector("[data-progress]");
if (runs) {
  const told = new EventSource(runs.dataset.progress);
  const share = runs.querySelector("progress");
  const words = runs.querySelector("[data-words]");
  const said = runs.querySelector("[data-said]");
  let quarter = 0;
  told.addEventListener("progress", (event) => {
    const now = JSON.parse(event.data);
    words.textContent = now.words;
    if (now.share === null) share.removeAttribute("value");
    else share.value = now.share;
    const next = Math.floor((now.share ?? 0) / 25);
    if (next !== quarter) said.textContent = now.words;
    quarter = next;
  });
  told.addEventListener("end", () => { told.close(); location.reload(); });
}

// A file that is too large is said before it is sent.
for (const field of document.querySelectorAll("input[type=file][data-most]")) {
  field.addEventListener("change", () => {
    field.setCustomValidity(field.files[0]?.size > Number(field.dataset.most) ? field.dataset.tooLarge : "");
    field.reportValidity();
  });
}
