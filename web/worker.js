// Solves fields away from the page: as a worker, or, where a page forbids workers, imported by the
// page itself. The newest wish wins between two pieces of work.

import init, { Worker as Solver } from "./solver.js";

const SLICE = 8; // Milliseconds of work before the mail is looked at again.

/// Gives what hears messages; answers go to `say`.
export const serve = async (say) => {
  await init({ module_or_path: new URL("./solver_bg.wasm", import.meta.url) });
  const solver = new Solver();
  const turn = new MessageChannel();
  let working = false;

  const work = () => {
    const until = performance.now() + SLICE;
    let answer;
    do {
      answer = solver.step();
      if (answer) say(answer, answer.slice(1).map(({ buffer }) => buffer));
    } while (answer && performance.now() < until);
    working = Boolean(answer); // The time ran out before the work did.
    if (working) turn.port2.postMessage(0);
  };

  turn.port1.onmessage = work;
  queueMicrotask(() => say(["Ready"]));

  return (message) => {
    solver.hear(message);
    if (!working) {
      working = true;
      turn.port2.postMessage(0);
    }
  };
};

if (!globalThis.document) {
  // What is said before the program stands waits for it.
  const served = serve((answer, buffers) => postMessage(answer, buffers));
  onmessage = async ({ data }) => (await served)(data);
  // A program that does not come is a worker that died: the page hears of it.
  served.catch((error) => setTimeout(() => { throw error; }));
}
