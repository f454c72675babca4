// How soon a change of foam depth shows the new year: from the input event to the frame that paints
// the new figure, in milliseconds and in frames of 16.7. Fields that the new depth lacks are carried
// over, so that the year need not wait for them. For people to read; no check depends on it.
import { launch, screens } from "./browser.mjs";
import { Planner } from "./planner.page.mjs";
import { serve } from "./site.mjs";
import { Visit } from "./visit.mjs";

const ROUNDS = Number(process.argv[2] ?? 15);
const FRAME = 1000 / 60;
const BAR = 2; // frames

const [browser, site] = await Promise.all([launch(), serve()]);
const visit = await Visit.begin(browser, site, { viewport: screens.desktop });
await visit.open();
const planner = await new Planner(visit.page).ready();
await planner.settled();
await planner.yearHeat();
await planner.host.getByTestId("year-figures").scrollIntoViewIfNeeded();

// On the page itself, so that no message from outside is in between.
const round = (depth) =>
  visit.page.evaluate(async (depth) => {
    const root = document.querySelector("inchwise-planner").shadowRoot;
    const slider = root.querySelector("[data-testid='control-wall-foam'] input[type='range']");
    const figure = root.querySelector("[data-testid='year-figures'] dd");
    const frame = () => new Promise((resolve) => requestAnimationFrame(resolve));
    const painted = async () => {
      await frame();
      // After the frame's own work, when it has been painted.
      const { port1, port2 } = new MessageChannel();
      await new Promise((resolve) => ((port1.onmessage = resolve), port2.postMessage(0)));
      return performance.now();
    };
    const changed = new Promise((resolve) => {
      const observer = new MutationObserver(() => (observer.disconnect(), resolve(performance.now())));
      observer.observe(figure, { childList: true, characterData: true, subtree: true });
      setTimeout(() => resolve(null), 5000);
    });
    await frame();
    const start = performance.now();
    slider.value = String(depth);
    slider.dispatchEvent(new Event("input", { bubbles: true }));
    const handled = performance.now();
    const written = await changed;
    if (written === null) return null;
    const end = await painted();
    return { handled: handled - start, written: written - start, painted: end - start };
  }, depth);

const middle = (values) => values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)];
const times = { new: [], known: [] };
// There and back: first depths whose fields are still to be solved, then those that are known.
for (let n = 0; n < ROUNDS; n++) {
  for (const [kind, depth] of [["new", 101 + n], ["known", 60]]) {
    const time = await round(depth);
    if (time) times[kind].push(time);
    await planner.settled();
    await planner.curveDrawn();
    await visit.page.waitForTimeout(250);
  }
}
for (const [kind, rows] of Object.entries(times)) {
  const told = Object.fromEntries(
    ["handled", "written", "painted"].map((what) => {
      const values = rows.map((row) => row[what]);
      const [least, median, most] = [Math.min(...values), middle(values), Math.max(...values)];
      return [what, { least, median, most }];
    }),
  );
  const rounded = Object.fromEntries(
    Object.entries(told).map(([what, row]) => [
      `${what}, ms`,
      Object.fromEntries(Object.entries(row).map(([name, ms]) => [name, ms.toFixed(1)])),
    ]),
  );
  rounded["painted, frames"] = Object.fromEntries(
    Object.entries(told.painted).map(([name, ms]) => [name, (ms / FRAME).toFixed(2)]),
  );
  console.log(`depths with ${kind} fields, ${rows.length} of ${ROUNDS} rounds`);
  console.table(rounded);
  console.log(`The bar, ${BAR} frames: ${told.painted.median <= BAR * FRAME ? "met" : "missed"} by the median.`);
}
await visit.end();
await Promise.all([browser.close(), site.stop()]);
