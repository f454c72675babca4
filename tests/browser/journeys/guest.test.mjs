// A guest that cannot be lost: whatever does not come, is broken or hangs.
import assert from "node:assert/strict";
import { test } from "node:test";

import { screens } from "../browser.mjs";
import { journeys } from "../begin.mjs";

const { begin, objects } = journeys();

const FILES = ["planner.js", "planner_bg.wasm", "planner.css"];
const FATES = {
  "is not there": (route) => route.fulfill({ status: 404, body: "" }),
  "is broken": (route) => route.fulfill({ status: 200, contentType: "text/plain", body: "\0broken" }),
  "never comes": () => {},
};

for (const [fate, meet] of Object.entries(FATES)) {
  for (const file of FILES) {
    // A style sheet that is broken is a planner without style, which a browser takes.
    if (file.endsWith(".css") && fate === "is broken") continue;
    test(`when ${file} ${fate}, a plain sentence comes within 10 s, and trying again mends it`, { timeout: 60_000 }, async () => {
      const visit = await begin();
      await visit.context.route(`**/${file}*`, meet);
      await visit.openHost("<inchwise-planner><p>Worked sizes</p></inchwise-planner>");
      const { driver, bench } = objects(visit);
      await driver.until((host) => host.dataset.state === "failed", undefined, { timeout: 12_000 });
      assert.ok(await visit.page.getByText("Worked sizes").isVisible());
      await visit.context.unroute(`**/${file}*`);
      await visit.page.getByRole("button", { name: "Try again" }).click();
      await bench.ready();
      await visit.end();
    });
  }

  test(`when the solver ${fate}, sizes stand, a sentence comes within 12 s, and trying again mends it`, { timeout: 90_000 }, async () => {
    const visit = await begin();
    await visit.context.route("**/solver_bg.wasm*", meet);
    await visit.openHost("<inchwise-planner></inchwise-planner>");
    const { driver, bench } = objects(visit);
    await driver.until((host) => host.dataset.state === "lost", undefined, { timeout: 14_000 });
    assert.match(await bench.figure("clear"), /5,748/);
    await bench.seen("solver-lost");
    await visit.context.unroute("**/solver_bg.wasm*");
    await visit.page.getByRole("button", { name: "Try again" }).click();
    await bench.settled();
    await visit.end();
  });
}

test("a worker that dies is started again, and the answer comes", { timeout: 60_000 }, async () => {
  const visit = await begin();
  await visit.context.addInitScript(() => {
    const Real = window.Worker;
    let count = 0;
    window.Worker = class extends Real {
      constructor(...words) {
        super(...words);
        if (count++ < 1) setTimeout(() => this.dispatchEvent(new Event("error")), 300);
      }
    };
  });
  await visit.openHost("<inchwise-planner></inchwise-planner>");
  const { bench } = objects(visit);
  await bench.ready();
  await bench.settled();
  await visit.end();
});

test("where a page forbids workers, the answer comes all the same", { timeout: 90_000 }, async () => {
  const visit = await begin();
  await visit.context.addInitScript(() => {
    window.Worker = class {
      constructor() {
        throw new Error("no workers here");
      }
    };
  });
  await visit.openHost("<inchwise-planner></inchwise-planner>");
  const { bench } = objects(visit);
  await bench.ready();
  await bench.settled();
  assert.ok((await bench.answer()).load > 0);
  await visit.end();
});

const LAYOUTS = {
  block: "",
  flex: "display:flex",
  "flex column": "display:flex;flex-direction:column;align-items:center",
  "centred grid": "display:grid;place-items:center",
  "inline-flex": "display:inline-flex",
  float: "overflow:hidden",
  absolute: "position:relative;height:2000px",
  "table cell": "display:table-cell",
  dialog: "",
  columns: "columns:2",
  "inline block": "display:inline-block",
  "fixed width": "width:500px",
  "narrow column": "width:300px",
};

test("any layout gives the planner a width", { timeout: 120_000 }, async () => {
  for (const [name, style] of Object.entries(LAYOUTS)) {
    const visit = await begin();
    await visit.openHost("<main id=m><inchwise-planner></inchwise-planner></main>");
    await visit.page.evaluate(
      ([name, style]) => {
        const main = document.querySelector("#m");
        main.style.cssText = style;
        const planner = main.firstElementChild;
        if (name === "float") planner.style.cssFloat = "left";
        if (name === "absolute") planner.style.cssText = "position:absolute;left:0;top:0";
        if (name === "dialog") {
          const dialog = document.createElement("dialog");
          document.body.append(dialog);
          dialog.append(planner);
          dialog.showModal();
        }
      },
      [name, style],
    );
    const { bench, driver } = objects(visit);
    await bench.ready();
    const { width } = await driver.host.boundingBox();
    assert.ok(width >= 250, `${name}: ${width} px`);
    await visit.end();
  }
});

test("direction and text of a host stay outside", async () => {
  const visit = await begin();
  await visit.openHost("<main dir=rtl><inchwise-planner></inchwise-planner></main>");
  await visit.page.evaluate(() => {
    document.querySelector("main").style.cssText =
      "text-transform:uppercase;letter-spacing:1em;word-spacing:2em;text-indent:5em;white-space:pre;line-height:4;text-align:right;font-size:40px;text-shadow:1px 1px red;visibility:visible";
  });
  const { bench, driver } = objects(visit);
  await bench.ready();
  const styles = await driver.evaluate((host) => {
    const { direction, textTransform, letterSpacing, wordSpacing, textIndent, whiteSpace, textAlign, textShadow, fontSize } =
      getComputedStyle(host.shadowRoot.querySelector(".figure.clear"));
    return { direction, textTransform, letterSpacing, wordSpacing, textIndent, whiteSpace, textAlign, textShadow, fontSize };
  });
  assert.equal(styles.direction, "ltr");
  assert.equal(styles.textTransform, "none");
  assert.equal(styles.letterSpacing, "normal");
  assert.equal(styles.textIndent, "0px");
  assert.equal(styles.textShadow, "none");
  assert.equal(styles.fontSize, "16px");
  assert.match(await bench.figure("clear"), /^5,748 × 2,202 × 2,289 mm$/);
  await visit.end();
});

for (const viewport of [{ width: 320, height: 256 }, { width: 640, height: 360 }]) {
  test(`at ${viewport.width} × ${viewport.height} no tab stop is covered`, { timeout: 60_000 }, async () => {
    const visit = await begin({ viewport });
    await visit.openHost("<inchwise-planner></inchwise-planner>");
    const { bench } = objects(visit);
    await bench.ready();
    await bench.settled();
    let inside = 0;
    for (let stop = 0; stop < 60; stop++) {
      await visit.page.keyboard.press("Tab");
      const seen = await visit.page.evaluate(() => {
        const root = document.querySelector("inchwise-planner").shadowRoot;
        const held = root.activeElement;
        if (!held) return null;
        const { left, top, width, height } = held.getBoundingClientRect();
        const hit = root.elementFromPoint(left + width / 2, top + Math.min(height / 2, 20));
        return { name: held.outerHTML.slice(0, 80), covered: !(hit && (held === hit || held.contains(hit) || hit.contains(held))) };
      });
      if (!seen) continue;
      inside += 1;
      assert.ok(!seen.covered, seen.name);
    }
    assert.ok(inside > 20, `${inside} stops`);
    await visit.end();
  });
}

test("a planner far below the screen costs the page nothing until it comes near", async () => {
  const visit = await begin();
  const far = '<svg width="1" height="6000" aria-hidden="true"></svg>';
  await visit.openHost(`${far}<inchwise-planner><p>Worked sizes</p></inchwise-planner>`);
  await visit.page.waitForTimeout(400);
  assert.ok(!visit.fetched().some((name) => name.startsWith("planner_bg.wasm")));
  const { bench } = objects(visit);
  await bench.ready();
  await visit.end();
});

test("nodes stay flat over language switches", { timeout: 60_000 }, async () => {
  const visit = await begin({ viewport: screens.desktop });
  await visit.openHost("<inchwise-planner></inchwise-planner>");
  const { bench, driver } = objects(visit);
  await bench.ready();
  await bench.settled();
  const session = await visit.context.newCDPSession(visit.page);
  const nodes = async () => {
    await session.send("HeapProfiler.collectGarbage");
    const { metrics } = await session.send("Performance.getMetrics");
    return metrics.find(({ name }) => name === "Nodes").value;
  };
  await session.send("Performance.enable");
  const turn = async () => {
    await driver.setHostAttribute("language", "fr");
    await driver.until((host) => host.shadowRoot.textContent.includes("Espace libre"));
    await driver.setHostAttribute("language", "en");
    await driver.until((host) => host.shadowRoot.textContent.includes("Clear room"));
  };
  await turn();
  const before = await nodes();
  for (let times = 0; times < 8; times++) await turn();
  const after = await nodes();
  assert.ok(after < before * 1.1 + 100, `${before} to ${after} nodes`);
  await visit.end();
});
