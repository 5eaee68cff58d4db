// Moves the square and the words on with the workshop's clock, once a second.
const square = document.querySelector(".clock img");
const words = document.querySelector(".clock time");
if (square && words) {
  const began = performance.now();
  const first = Date.parse(words.textContent.replace(" ", "T") + "Z");
  setInterval(() => {
    square.src = `/clock.svg?${Math.round(performance.now())}`;
    words.textContent = new Date(first + performance.now() - began).toISOString().slice(0, 19).replace("T", " ");
  }, 1000);
}
