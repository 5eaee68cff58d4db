// What is sent is kept first, then sent, then forgotten: a phone that loses the laptop loses nothing. Forms with a sender's id are recorded
// once however often they are sent, so sending again is always safe.
const retryEvery = 4000;
const patience = 20_000;
const patienceForFiles = 180_000;
const book = document.body.dataset.book ?? "";

/** An id for one sending. Plain HTTP pages have no randomUUID. */
export function senderId() {
  return [...crypto.getRandomValues(new Uint8Array(16))].map(b => b.toString(16).padStart(2, "0")).join("");
}

/** Keeps something to be sent later. */
export async function keep(item) {
  await put({ book, kept: Date.now(), tries: 1, ...item });
  await show();
  later();
}

/** Sends now, after what waits already. Gives { url, html }, { refused, html } or { kept }. */
export async function deliver(action, fields, words, files = []) {
  const seq = await put({ book, kept: Date.now(), tries: 0, action, fields, files, words });
  return (await drain()).get(seq) ?? { kept: true };
}

/** Says that entries are this page's own: no news to it. */
export function own(count) {
  if (count) document.dispatchEvent(new CustomEvent("own-entries", { detail: count }));
}

// ---- the store
const opened = new Promise((resolve, reject) => {
  const request = indexedDB.open("gudgeon-outbox", 1);
  request.onupgradeneeded = () => request.result.createObjectStore("items", { keyPath: "seq", autoIncrement: true });
  request.onsuccess = () => resolve(request.result);
  request.onerror = () => reject(request.error);
});

async function inStore(mode, work) {
  const store = (await opened).transaction("items", mode).objectStore("items");
  return new Promise((resolve, reject) => {
    const request = work(store);
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
}

const put = item => inStore("readwrite", s => s.put(item));
const all = () => inStore("readonly", s => s.getAll());
const forget = seq => inStore("readwrite", s => s.delete(seq));

// ---- sending, in order, one at a time
let draining = Promise.resolve();

function drain() {
  const run = () => navigator.locks ? navigator.locks.request("gudgeon-outbox", sendAll) : sendAll();
  return (draining = draining.then(run, run));
}

async function sendAll() {
  const came = new Map();
  const items = await all();
  for (const [place, item] of items.entries()) {
    const answer = await send(item);
    if (answer.wait) {
      // What stands behind waits as well: the order of the work is the order of the book.
      for (const waiting of items.slice(place)) await put({ ...waiting, tries: waiting.tries + 1, shut: answer.shut });
      break;
    }
    if (answer.refused && item.tries > 0 && !(await ask(item, answer))) break;
    await forget(item.seq);
    came.set(item.seq, answer);
    own(toldBy(answer.url));
  }
  await show();
  later();
  return came;
}

async function send(item) {
  const body = item.files?.length ? new FormData() : new URLSearchParams();
  for (const [name, value] of item.fields) body.append(name, value);
  if (item.tries > 0) body.append("ago", ((Date.now() - item.kept) / 1000).toFixed(1));
  for (const [name, file] of item.files ?? []) body.append(name, file, file.name);
  const answer = await post(item.action, body, item.files?.length ? patienceForFiles : patience);
  if (!answer || answer.status >= 500 || answer.status === 429) return { wait: true };
  if (answer.status === 401 || answer.status === 403) return { wait: true, shut: true };
  const html = await answer.text().catch(() => "");
  return answer.ok ? { url: answer.redirected ? answer.url : null, html } : { refused: true, html };
}

async function post(action, body, wait) {
  try {
    return await fetch(action, { method: "POST", body, signal: AbortSignal.timeout(wait), headers: action.includes("/intake/") ? { Accept: "application/json" } : {} });
  } catch {
    return null;
  }
}

/** What was typed when the laptop was away and does not fit any more becomes an open question in the book, with the words. */
async function ask(item, answer) {
  if (!item.book) return true;
  const why = refusalOf(answer.html);
  const asked = await post(`/books/${encodeURIComponent(item.book)}/not-taken`, new URLSearchParams({
    sender: `${item.fields.find(([name]) => name === "sender")?.[1] ?? senderId()}.q`, words: item.words, why,
    ago: ((Date.now() - item.kept) / 1000).toFixed(1),
  }), patience);
  return asked?.ok ?? false;
}

/** How many entries an answer tells of: its address names the first and the last. */
function toldBy(url) {
  const [first, last] = (url && new URL(url).searchParams.get("told") || "").split("-").map(Number);
  return last >= first ? last - first + 1 : 0;
}

function refusalOf(html) {
  if (html.startsWith("[")) return JSON.parse(html).flatMap(a => a.refusals).map(r => `${r.where}: met ${r.met}; expected ${r.expected}.`).join(" ");
  const page = new DOMParser().parseFromString(html, "text/html");
  return [...page.querySelectorAll(".refusal dd")].map(d => d.textContent).join("; ") || "the book did not take it";
}

let timer = 0;
async function later() {
  clearTimeout(timer);
  if ((await all()).length) timer = setTimeout(drain, retryEvery);
}

addEventListener("online", drain);
document.addEventListener("visibilitychange", () => document.visibilityState === "visible" && drain());
document.addEventListener("laptop-is-back", drain);

// ---- what is not sent yet, in plain sight
async function show() {
  const items = (await all()).filter(i => i.tries > 0);
  let box = document.querySelector(".outbox");
  if (!items.length) return box?.remove();
  if (!box) {
    box = document.createElement("section");
    box.className = "outbox";
    box.setAttribute("role", "status");
    document.querySelector("main")?.prepend(box);
  }
  const head = document.createElement("p");
  const strong = document.createElement("strong");
  strong.textContent = items.length === 1 ? "1 not sent yet. " : `${items.length} not sent yet. `;
  head.append(strong, items.some(i => i.shut) ? "The laptop does not let this phone in any more: pair it again." : "Kept in this phone; sent when the laptop answers.");
  const list = document.createElement("ul");
  for (const item of items) {
    const row = document.createElement("li");
    row.textContent = item.words;
    list.append(row);
  }
  box.replaceChildren(head, list);
}

// ---- every form of the page that has a sender's id
document.addEventListener("submit", async event => {
  const form = event.target;
  if (event.defaultPrevented || form.method !== "post" || !form.elements.sender || form.dataset.sending) return;
  event.preventDefault();
  form.dataset.sending = "yes";
  const data = [...new FormData(form, event.submitter)];
  const files = data.filter(([, value]) => value instanceof File);
  const fields = data.filter(([, value]) => !(value instanceof File));
  const came = await deliver(form.getAttribute("action"), fields, wordsOf(form, event.submitter, fields), files);
  delete form.dataset.sending;
  if (came.url) location.assign(came.url);
  else if (came.html !== undefined) replaceWork(came.html);
  else {
    form.reset();
    form.elements.sender.value = senderId();
    document.querySelector(".outbox")?.scrollIntoView({ block: "nearest" });
  }
});

/** What the form says, for a person to know it again. */
function wordsOf(form, button, fields) {
  const typed = fields.filter(([name, value]) => value && form.querySelector(`[name="${CSS.escape(name)}"]:not([type=hidden])`)).map(([, value]) => value);
  const done = button?.textContent.trim().replace(/\s+/g, " ") ?? "";
  return (form.matches(".say, .read-first") ? form.elements.line.value : [done, typed.join(", ")].filter(Boolean).join(": ")).slice(0, 300) || "a form";
}

function replaceWork(html) {
  const page = new DOMParser().parseFromString(html, "text/html");
  const work = page.querySelector("main");
  if (!work) return location.reload();
  document.title = page.title;
  document.querySelector("main").replaceWith(work);
  work.focus();
  show();
}

if (window.isSecureContext && "serviceWorker" in navigator) navigator.serviceWorker.register("/sw.js").catch(() => {});
show();
drain();
