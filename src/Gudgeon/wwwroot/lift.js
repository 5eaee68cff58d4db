// The slider moves the picture. Without script its button asks the server for the same picture.
for (const form of document.querySelectorAll("form[data-poses]")) {
  const slider = form.querySelector("input[type=range]");
  form.querySelector("button").remove();
  slider.addEventListener("input", () => {
    for (const pose of document.querySelectorAll("[data-pose]"))
      pose.classList.toggle("now", pose.dataset.pose === slider.value);
  });
}
