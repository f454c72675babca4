// What a long drag does to the page, for people to read; no check depends on it: how soon the
// picture of a casting is that of the last move, how long the page's thread is held at a time, and
// how much memory is held after many moves.
import { launch, screens } from "./browser.mjs";
import { Planner } from "./planner.page.mjs";
import { serve } from "./site.mjs";
import { Visit } from "./visit.mjs";

const MOVES = Number(process.argv[2] ?? 1000);
const ROUNDS = 9;
const PAUSE = 16; // milliseconds from one move of a hand to the next

const [browser, site] = await Promise.all([launch(), serve()]);
const visit = await Visit.begin(browser, site, { viewport: screens.desktop });
await visit.open();
const planner = await new Planner(visit.page).ready();
await planner.settled();
await planner.spots();
await planner.chooseSpot("front_top_casting");
const devtools = await visit.context.newCDPSession(visit.page);
await devtools.send("Performance.enable");

const held = async () => {
  await devtools.send("HeapProfiler.collectGarbage");
  const { metrics } = await devtools.send("Performance.getMetrics");
  const of = (wanted) => metrics.find(({ name }) => name === wanted).value;
  return {
    "scripts, MB": (of("JSHeapUsedSize") / 1e6).toFixed(2),
    nodes: of("Nodes"),
    listeners: of("JSEventListeners"),
  };
};

// Drags on the page itself, so that no message from outside is in between.
const drag = (moves) =>
  visit.page.evaluate(
    async ({ moves, pause }) => {
      const root = document.querySelector("inchwise-planner").shadowRoot;
      const slider = root.querySelector("[data-testid='control-wall-foam'] input[type='range']");
      const handle = root.querySelector("[data-testid='handle-casting_cover']");
      const refining = root.querySelector(".refining-word");
      const steel = () => root.querySelector("[data-testid='temperature'] path.stipple").getAttribute("d");
      const long = [];
      const observer = new PerformanceObserver((list) => long.push(...list.getEntries().map((e) => e.duration)));
      observer.observe({ type: "longtask" });
      const rest = (ms) => new Promise((resolve) => setTimeout(resolve, ms));
      const press = (key) => handle.dispatchEvent(new KeyboardEvent("keydown", { key, bubbles: true }));
      for (let n = 0; n < moves; n++) {
        if (n % 100 < 50) {
          slider.value = String(40 + (n % 50));
          slider.dispatchEvent(new Event("input", { bubbles: true }));
        } else press(n % 2 ? "ArrowDown" : "PageUp") || press("ArrowUp");
        if (n % 100 > 90) press("Home");
        await rest(pause);
      }
      const before = steel();
      press("ArrowDown");
      const last = performance.now();
      let fresh;
      for (let turn = 0; turn < 400; turn++) {
        await new Promise((resolve) => requestAnimationFrame(resolve));
        if (steel() !== before && refining.textContent === "") {
          fresh = performance.now() - last;
          break;
        }
      }
      observer.disconnect();
      return { fresh, long };
    },
    { moves, pause: PAUSE },
  );

const middle = (values) => values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)];
const fresh = [];
for (let round = 0; round < ROUNDS; round++) {
  fresh.push((await drag(20)).fresh);
  await planner.settled();
}
console.log("milliseconds from the last move to the picture of it");
console.table({ least: Math.min(...fresh), middle: middle(fresh), most: Math.max(...fresh) });

const before = await held();
const { long } = await drag(MOVES);
await planner.settled();
const after = await held();
console.log(`held before and after ${MOVES} moves`);
console.table({ before, after });
console.log(`tasks over 50 ms while dragging: ${long.length}`, long.map(Math.round));

// The element comes and goes: what it listened to goes with it.
const remounted = await visit.page.evaluate(async () => {
  const host = document.querySelector("inchwise-planner");
  const parent = host.parentNode;
  const next = host.nextSibling;
  for (let n = 0; n < 10; n++) {
    host.remove();
    await new Promise((resolve) => setTimeout(resolve, 50));
    const ready = new Promise((resolve) => host.addEventListener("inchwise-ready", resolve, { once: true }));
    parent.insertBefore(host, next);
    host.scrollIntoView();
    await ready;
    await new Promise((resolve) => setTimeout(resolve, 1500));
  }
  return true;
});
if (remounted) console.table({ "after ten comings and goings": await held() });
await visit.end();
await Promise.all([browser.close(), site.stop()]);
