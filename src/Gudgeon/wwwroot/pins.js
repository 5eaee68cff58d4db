// A photo becomes a board: tap to put the next pin, drag or arrow keys to move one. Every change is one of the page's own forms, sent by the outbox.
import { deliver, senderId } from "./outbox.js";

const board = document.querySelector("svg.pinboard");
const form = document.querySelector("form.new-pin");
const step = 0.005;

if (board && form) {
  const width = Number(board.dataset.width);
  const height = Number(board.dataset.height);
  const photo = board.dataset.photo;
  const said = form.querySelector(".pin-said");
  form.querySelector(".with-script").hidden = false;

  const placeOf = event => {
    const at = new DOMPoint(event.clientX, event.clientY).matrixTransform(board.getScreenCTM().inverse());
    return { x: inside(at.x / width), y: inside(at.y / height) };
  };
  const put = (pin, { x, y }) => pin.setAttribute("transform", `translate(${(x * width).toFixed(2)} ${(y * height).toFixed(2)})`);
  const whereIs = pin => {
    const { e, f } = pin.transform.baseVal.consolidate().matrix;
    return { x: e / width, y: f / height };
  };

  board.addEventListener("click", async event => {
    if (event.target.closest(".pin")) return;
    const place = placeOf(event);
    const fields = new FormData(form);
    fields.set("x", percent(place.x));
    fields.set("y", percent(place.y));
    if (!fields.get("what") && !fields.get("name")) {
      form.elements.x.value = percent(place.x);
      form.elements.y.value = percent(place.y);
      form.elements.name.focus();
      return;
    }
    const label = fields.get("number") || next(fields.get("what"));
    const ghost = ghostPin(label);
    put(ghost, place);
    form.elements.sender.value = senderId();
    form.elements.number.value = "";
    const came = await deliver(form.action, [...fields], `pin at ${percent(place.x)} %, ${percent(place.y)} %`);
    if (came.refused) ghost.remove();
    else ghost.dataset.pin = fields.get("sender");
    said.textContent = came.refused ? `Pin ${label} was not taken. ` : came.kept ? `Pin ${label} put, not sent yet. ` : `Pin ${label} put. `;
    const again = document.createElement("a");
    again.href = "";
    again.textContent = "Show it in the list";
    if (!came.refused) said.append(again);
  });

  // Pins count on from the ones that are there, so that ten taps need no typing.
  const counted = new Map();
  const next = what => {
    const first = form.elements.what.selectedOptions[0]?.dataset.next;
    if (!first) return "•";
    const number = counted.get(what) ?? Number(first);
    counted.set(what, number + 1);
    return String(number);
  };

  const ghostPin = label => {
    const pin = document.createElementNS(board.namespaceURI, "g");
    pin.setAttribute("class", "pin");
    pin.setAttribute("tabindex", "0");
    pin.setAttribute("role", "button");
    pin.setAttribute("aria-label", `pin ${label}`);
    for (const [name, r] of [["reach", 70], ["dot", 30]]) {
      const circle = document.createElementNS(board.namespaceURI, "circle");
      circle.setAttribute("class", name);
      circle.setAttribute("r", r);
      pin.append(circle);
    }
    const text = document.createElementNS(board.namespaceURI, "text");
    text.setAttribute("dy", "11");
    text.textContent = label;
    pin.append(text);
    board.append(pin);
    return pin;
  };

  let drag = null;
  board.addEventListener("pointerdown", event => {
    const pin = event.target.closest(".pin");
    if (!pin?.dataset.pin) return;
    pin.setPointerCapture(event.pointerId);
    drag = { pin, from: whereIs(pin), moved: false };
  });
  board.addEventListener("pointermove", event => {
    if (!drag) return;
    const place = placeOf(event);
    drag.moved ||= Math.hypot(place.x - drag.from.x, place.y - drag.from.y) > step;
    if (drag.moved) put(drag.pin, place);
  });
  board.addEventListener("pointerup", () => {
    if (drag?.moved) moved(drag.pin, drag.from);
    drag = null;
  });
  board.addEventListener("pointercancel", () => {
    if (drag) put(drag.pin, drag.from);
    drag = null;
  });

  // Arrow keys move at once and are recorded once the key rests.
  const resting = new Map();
  board.addEventListener("keydown", event => {
    const by = { ArrowLeft: [-step, 0], ArrowRight: [step, 0], ArrowUp: [0, -step], ArrowDown: [0, step] }[event.key];
    const pin = event.target.closest(".pin");
    if (!by || !pin?.dataset.pin) return;
    event.preventDefault();
    const from = whereIs(pin);
    const first = resting.get(pin)?.from ?? from;
    clearTimeout(resting.get(pin)?.timer);
    put(pin, { x: inside(from.x + by[0]), y: inside(from.y + by[1]) });
    resting.set(pin, { from: first, timer: setTimeout(() => { resting.delete(pin); moved(pin, first); }, 600) });
  });

  const moved = async (pin, from) => {
    const { x, y } = whereIs(pin);
    const fields = [["sender", senderId()], ["back", form.elements.back.value], ["photo", photo], ["pin", pin.dataset.pin], ["x", percent(x)], ["y", percent(y)]];
    const came = await deliver(board.dataset.moved, fields, `${pin.getAttribute("aria-label")} moved`);
    if (came.refused) put(pin, from);
  };
}

function inside(part) { return Math.min(1, Math.max(0, part)); }
function percent(part) { return (part * 100).toFixed(2); }
