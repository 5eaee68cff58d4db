// Shows the label to the workshop: it reads the frames of the camera, so every browser that lets a page use the camera will do.
const between = 500;
const longest = 1280;
const patience = 8000;
const form = document.querySelector("form.scan");
const live = document.querySelector(".scan-live");
const view = live.querySelector(".scan-view");
const words = live.querySelector(".scan-words");
const button = live.querySelector(".scan-start");
const frame = document.createElement("canvas");
let stream = null;

// A photo that was taken needs no second tap.
form.elements.photo.addEventListener("change", () => form.elements.photo.files.length && form.requestSubmit());

// Browsers give the camera to secure addresses only.
live.hidden = !navigator.mediaDevices?.getUserMedia;
button.addEventListener("click", () => stream ? close() : open());
document.addEventListener("visibilitychange", () => document.visibilityState === "hidden" && close());

async function open() {
  try {
    stream = await navigator.mediaDevices.getUserMedia({ video: { facingMode: "environment", width: { ideal: longest } } });
  } catch (fault) {
    words.textContent = fault.name === "NotAllowedError"
      ? "The browser does not let this page use the camera. Allow it there, or photograph the label below."
      : "No camera answers. Photograph the label below, or type its code.";
    return;
  }
  const mine = stream;
  view.srcObject = mine;
  view.hidden = false;
  button.textContent = "Close the camera";
  words.textContent = "Hold the label before the camera.";
  await view.play();
  view.scrollIntoView({ block: "nearest" });
  // Closed and opened again meanwhile, the camera is another one, with a round of its own.
  while (stream === mine) {
    await look();
    await new Promise(done => setTimeout(done, between));
  }
}

function close() {
  stream?.getTracks().forEach(track => track.stop());
  stream = null;
  view.srcObject = null;
  view.hidden = true;
  button.textContent = "Open the camera";
  words.textContent = "";
}

async function look() {
  if (!view.videoWidth) return;
  const scale = Math.min(1, longest / Math.max(view.videoWidth, view.videoHeight));
  [frame.width, frame.height] = [view.videoWidth * scale, view.videoHeight * scale];
  frame.getContext("2d").drawImage(view, 0, 0, frame.width, frame.height);
  const body = new FormData();
  body.append("photo", await new Promise(done => frame.toBlob(done, "image/jpeg", .8)), "camera.jpg");
  const answer = await fetch(form.action, { method: "POST", body, headers: { Accept: "application/json" }, signal: AbortSignal.timeout(patience) }).catch(() => null);
  if (!stream) return;
  if (!answer || answer.status >= 500 || answer.status === 429) {
    words.textContent = "The laptop does not answer. The code on the label can be looked up when it is back.";
  } else if (answer.ok) {
    navigator.vibrate?.(80);
    words.textContent = "Read.";
    const { href } = await answer.json();
    close();
    location.assign(href);
  } else {
    words.textContent = answer.status === 422 ? `Met ${(await answer.json()).refusals[0].met}.` : "The laptop does not let this phone in: pair it first.";
  }
}
