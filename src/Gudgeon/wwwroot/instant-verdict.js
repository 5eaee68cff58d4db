// Sends a reading without leaving the page: the answer has the next spot and the verdict, and that part of the page is put in place.
// It goes through the outbox like every form: a reading typed while the laptop is away is kept and sent later.
import { deliver, senderId } from "./outbox.js";
import { dress } from "./keypad.js";

// Before the outbox sees the form, which would load the page anew.
document.addEventListener("submit", async e => {
  const form = e.target.closest("form[data-instant]");
  if (!form) return;
  e.preventDefault();
  if (form.dataset.sending) return;
  form.dataset.sending = "yes";
  const fields = [...new FormData(form, e.submitter)];
  const spot = document.querySelector(".spot-now")?.textContent.trim() ?? "";
  const came = await deliver(form.getAttribute("action"), fields, `${spot}: ${form.elements.reading?.value ?? ""}`);
  delete form.dataset.sending;
  const page = came.html === undefined ? null : new DOMParser().parseFromString(came.html, "text/html");
  const fresh = page?.getElementById(form.dataset.instant);
  if (!fresh) {
    if (came.url) return location.assign(came.url);
    // Kept for later: the box is free for the next spot's reading.
    form.reset();
    form.elements.sender.value = senderId();
    return;
  }
  document.getElementById(form.dataset.instant).replaceWith(fresh);
  // The live region stays and its words change: that is what gets read out.
  document.getElementById("aloud").replaceChildren(...page.getElementById("aloud").childNodes);
  document.querySelector("h1").textContent = page.querySelector("h1").textContent;
  if (came.url) history.replaceState(null, "", came.url);
  dress(fresh);
  fresh.querySelector("[data-keypad]")?.focus({ preventScroll: true });
  scrollTo(0, 0);
}, { capture: true });
