// Puts keys under the thumb for a reading: big, with the sign that phone keypads lack.
const keys = ["7", "8", "9", "⌫", "4", "5", "6", "+", "1", "2", "3", "−", "0", ".", ",", "in"];

export function dress(root) {
  for (const box of root.querySelectorAll("[data-keypad]:not([data-dressed])")) {
    box.dataset.dressed = "";
    const pad = document.createElement("div");
    pad.className = "keys";
    for (const key of keys) {
      const button = document.createElement("button");
      button.type = "button";
      button.textContent = key;
      if (key === "⌫") button.setAttribute("aria-label", "Delete the last key");
      button.addEventListener("click", () => {
        box.value = key === "⌫" ? box.value.slice(0, -1) : box.value + (key === "in" ? " in" : key);
        box.dispatchEvent(new Event("input", { bubbles: true }));
      });
      pad.append(button);
    }
    const send = box.form.querySelector("button[type=submit]");
    send.before(pad);
    // One line is one reading: Enter sends it. A pasted column keeps its lines.
    box.addEventListener("keydown", e => {
      if (e.key === "Enter" && !e.shiftKey) {
        e.preventDefault();
        box.form.requestSubmit(send);
      }
    });
  }
}

dress(document);
