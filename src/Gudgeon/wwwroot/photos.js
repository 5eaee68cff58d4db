// Sends photos one by one with a bar, so that one bad file or a lost network costs no other. What does not get through waits in the outbox.
import { keep, own, senderId } from "./outbox.js";

const form = document.querySelector("form.add-photos");
const atOnce = 2;

form?.addEventListener("submit", async event => {
  event.preventDefault();
  const files = [...form.querySelector("input[type=file]").files];
  const progress = form.querySelector(".photo-progress");
  const bar = progress.querySelector("progress");
  const words = progress.querySelector(".words");
  const count = { done: 0, taken: 0, there: 0, refused: 0, kept: 0 };
  progress.hidden = false;
  bar.max = files.length;
  const show = () => {
    bar.value = count.done;
    words.textContent = [`${count.done} of ${files.length}`, count.there && `${count.there} in the book before`, count.refused && `${count.refused} not taken`, count.kept && `${count.kept} not sent yet`].filter(Boolean).join(", ");
  };
  show();
  const queue = files.entries();
  const worker = async () => {
    for (const [, file] of queue) {
      const fields = [["sender", senderId()], ...[...new FormData(form)].filter(([name]) => name === "of")];
      try {
        const answers = await send(fields, file);
        for (const answer of answers) {
          if (answer.refusals.length) { count.refused++; answer.refusals.forEach(tell); }
          else if (answer.wasThere) count.there++;
          else { count.taken++; own(1); }
        }
      } catch {
        await keep({ action: form.action, fields, files: [["photo", file]], words: `photo ${file.name}` });
        count.kept++;
      }
      count.done++;
      show();
    }
  };
  await Promise.all(Array.from({ length: atOnce }, worker));
  form.reset();
  if (!count.refused && !count.kept) location.reload();
});

async function send(fields, file) {
  const body = new FormData();
  for (const [name, value] of fields) body.append(name, value);
  body.append("photo", file, file.name);
  const answer = await fetch(form.action, { method: "POST", body, headers: { Accept: "application/json" } });
  if (answer.status !== 200 && answer.status !== 422) throw new Error(`answer ${answer.status}`);
  return answer.json();
}

function tell(refusal) {
  const row = document.createElement("li");
  row.textContent = `${refusal.where}: met ${refusal.met}; expected ${refusal.expected}. ${refusal.remedy}.`;
  form.querySelector(".photo-refused").append(row);
}
