// Solves fields away from the page: as a worker, or, where a page forbids workers, imported by the
// page itself. The newest wish wins between two pieces of work.

import init, { AsideSolver } from "./solver.js";

const SLICE = 4; // Milliseconds of work before the mail is looked at again.
const PATIENCE = 3; // Milliseconds that fields wait for a year, which is asked for right behind them.
const TOGETHER = 12; // Milliseconds in which answers are gathered: each costs the page a reckoning.

/// Gives what hears designs; answers go to `say`.
export const serve = (say) => {
  const ready = init({ module_or_path: new URL("./solver_bg.wasm", import.meta.url) });
  const turn = new MessageChannel();
  let solver;
  let working = false;
  let waiting;
  let answers = [];
  let tellAt = 0;

  const work = () => {
    const until = performance.now() + SLICE;
    let answer;
    do {
      answer = solver.step();
      if (answer?.length) answers.push(answer);
    } while (answer && performance.now() < until);
    working = Boolean(answer); // The time ran out before the work did.
    if (answers.length > 0 && (!working || performance.now() >= tellAt)) {
      say(answers, answers.map(({ buffer }) => buffer));
      answers = [];
      tellAt = performance.now() + TOGETHER;
    }
    if (working) turn.port2.postMessage(0);
  };

  const begin = () => {
    waiting = undefined;
    work();
  };

  turn.port1.onmessage = work;

  return async ({ request, design, depths, choices, hours, place }) => {
    await ready;
    solver ??= new AsideSolver();
    if (request === undefined) solver.look(place, design);
    else if (hours) solver.take_year(request, design, choices, hours);
    else solver.take(request, design, depths);
    const isShort = request === undefined || hours;
    // Pictures and years come of the first step, and are waited for.
    if (isShort) tellAt = 0;
    if (working && !(isShort && waiting)) return;
    working = true;
    clearTimeout(waiting);
    waiting = isShort ? undefined : setTimeout(begin, PATIENCE);
    if (isShort) work();
  };
};

if (!globalThis.document) {
  const hear = serve((answers, buffers) => postMessage(answers, buffers));
  onmessage = ({ data }) => hear(data);
}
