// Sends a reading without leaving the page: the server answers with the next spot and the verdict, and that part of the page is put in place.
import { dress } from "./keypad.js";

document.addEventListener("submit", async e => {
  const form = e.target.closest("form[data-instant]");
  if (!form) return;
  e.preventDefault();
  const data = new FormData(form);
  if (e.submitter?.name) data.append(e.submitter.name, e.submitter.value);
  try {
    const answer = await fetch(form.action, { method: "POST", body: new URLSearchParams(data) });
    const page = new DOMParser().parseFromString(await answer.text(), "text/html");
    const fresh = page.getElementById(form.dataset.instant);
    if (!fresh) throw new Error("no such part in the answer");
    document.getElementById(form.dataset.instant).replaceWith(fresh);
    // The live region stays and its words change: that is what gets read out.
    document.getElementById("aloud").replaceChildren(...page.getElementById("aloud").childNodes);
    document.querySelector("h1").textContent = page.querySelector("h1").textContent;
    if (answer.redirected) history.replaceState(null, "", answer.url);
    dress(fresh);
    fresh.querySelector("[data-keypad]")?.focus({ preventScroll: true });
    scrollTo(0, 0);
  } catch {
    // Whatever went wrong on the way: the plain form says it.
    form.removeAttribute("data-instant");
    form.requestSubmit(e.submitter);
  }
});
