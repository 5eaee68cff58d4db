// Says what others recorded since this page was made, and whether the laptop answers. The page never jumps by itself.
const every = 1200;
const { book, version } = document.body.dataset;
let base = version ? Number(version) : null;
let missed = 0;
document.addEventListener("own-entries", event => { base += event.detail; });

async function look() {
  if (document.visibilityState === "visible") {
    try {
      const answer = await fetch(`/others/${encodeURIComponent(book)}`, { signal: AbortSignal.timeout(4000), cache: "no-store" });
      if (!answer.ok) throw new Error(`answer ${answer.status}`);
      const newest = (await answer.json()).newest;
      base ??= newest;
      if (missed > 1) document.dispatchEvent(new Event("laptop-is-back"));
      missed = 0;
      say("others", newest > base ? `${newest - base} new ${newest - base === 1 ? "entry" : "entries"}. ` : "", "Show");
      say("away", "");
    } catch {
      if (++missed === 2) say("away", "The laptop does not answer. What you type or tap here is kept and sent later.");
    }
  }
  setTimeout(look, every);
}

function say(what, words, link) {
  let box = document.querySelector(`.${what}`);
  if (!words) return box?.remove();
  if (!box) {
    box = document.createElement("p");
    box.className = what;
    box.setAttribute("role", "status");
    document.querySelector("main").prepend(box);
  }
  if (box.dataset.words === words) return;
  box.dataset.words = words;
  box.textContent = words;
  if (link) {
    const again = document.createElement("a");
    again.href = "";
    again.textContent = link;
    box.append(again);
  }
}

look();
