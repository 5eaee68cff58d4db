// Shows under the box what a line comes to while it is typed or dictated: pieces to tap away, doubts to settle. They are fields of the same
// form, so what is tapped goes with the line, over the outbox too. The box opens once and keeps its height: nothing moves while one types.
const form = document.querySelector("form.say");
const pause = 150;
const patience = 4000;

if (form) {
  const line = form.elements.line;
  const box = form.querySelector(".comes");
  const aloud = form.querySelector("[role=status]");
  let timer = 0;
  let asking;
  let shown = "";

  const open = () => form.classList.add("open");
  const soon = () => { clearTimeout(timer); timer = setTimeout(read, pause); };

  async function read() {
    asking?.abort();
    const text = line.value;
    if (!text.trim()) return show("", "");
    asking = new AbortController();
    try {
      const answer = await fetch(form.dataset.pieces, { method: "POST", body: new URLSearchParams(new FormData(form)), signal: AbortSignal.any([asking.signal, AbortSignal.timeout(patience)]) });
      if (answer.ok) return show(await answer.text(), text);
      say("Not read while you type. It is read when it is recorded.");
    } catch (fault) {
      if (fault.name !== "AbortError") say("Not read while the laptop is away. It is read when it is sent.");
    }
  }

  function show(html, text) {
    const at = box.contains(document.activeElement) ? document.activeElement : null;
    box.replaceChildren(...new DOMParser().parseFromString(html, "text/html").body.childNodes);
    shown = text;
    aloud.textContent = box.firstElementChild?.dataset.sum ?? "";
    if (at) [...box.querySelectorAll("input")].find(i => i.type === at.type && i.name === at.name && i.value === at.value)?.focus({ preventScroll: true });
  }

  // What was tapped stays beside the words: only the pieces of this very line are shown.
  function say(words) {
    let note = box.querySelector(".away-note");
    if (!note) {
      note = document.createElement("p");
      note.className = "away-note";
      box.prepend(note);
    }
    note.textContent = aloud.textContent = words;
  }

  line.addEventListener("focus", open);
  line.addEventListener("input", () => { open(); soon(); });
  // A tap after the question went out: the answer under way knows nothing of it.
  box.addEventListener("change", () => { asking?.abort(); if (shown !== line.value) soon(); });
  form.addEventListener("reset", () => { clearTimeout(timer); asking?.abort(); show("", ""); });
  // Later than the tap that took the focus away: what it is aimed at must not move under it.
  form.addEventListener("focusout", () => setTimeout(() => { if (!line.value.trim() && !form.contains(document.activeElement)) form.classList.remove("open"); }, 600));

  // Above the keyboard of a phone, which lies over the page.
  const seen = window.visualViewport;
  seen?.addEventListener("resize", () => form.style.setProperty("--keyboard", seen.scale > 1.01 ? "0px" : `${Math.max(0, Math.round(innerHeight - seen.height))}px`));

  if (line.value.trim()) { open(); read(); }
}
