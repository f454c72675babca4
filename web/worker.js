// Solves fields away from the page: as a worker, or, where a page forbids workers, imported by the
// page itself. The newest design wins between two pieces of work.

import init, { AsideSolver } from "./solver.js";

const SLICE = 12; // Milliseconds of work before the mail is looked at again.

/// Gives what hears designs; answers go to `say`.
export const serve = (say) => {
  const ready = init({ module_or_path: new URL("./solver_bg.wasm", import.meta.url) });
  const turn = new MessageChannel();
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
    if (answers.length > 0) say(answers, answers.map(({ buffer }) => buffer));
    if (working) turn.port2.postMessage(0);
  };

  turn.port1.onmessage = work;

  return async ({ request, design, depths, choices, place }) => {
    await ready;
    solver ??= new AsideSolver();
    if (place) solver.take_year(request, design, choices, place);
    else solver.take(request, design, depths);
    if (!working) work();
  };
};

if (!globalThis.document) {
  const hear = serve((answers, buffers) => postMessage(answers, buffers));
  onmessage = ({ data }) => hear(data);
}
