// Solves fields away from the page. The first message brings the compiled module, the others bring
// designs; the newest design wins between two pieces of work.

import init, { AsideSolver } from "./inchwise.js";

const SLICE = 12; // Milliseconds of work before the mail is looked at again.
const turn = new MessageChannel();
let ready;
let solver;
let working = false;

const work = () => {
  const until = performance.now() + SLICE;
  const answers = [];
  let answer;
  do {
    answer = solver.step();
    if (answer) answers.push(answer);
  } while (answer && performance.now() < until);
  working = Boolean(answer); // The time ran out before the work did.
  if (answers.length === 0) return;
  postMessage(answers, answers.map(({ buffer }) => buffer));
  if (working) turn.port2.postMessage(0);
};

turn.port1.onmessage = work;

onmessage = async ({ data }) => {
  if (data instanceof WebAssembly.Module) {
    ready = init({ module_or_path: data });
    return;
  }
  await ready;
  solver ??= new AsideSolver();
  solver.take(data.request, data.design, data.depths);
  if (!working) work();
};
