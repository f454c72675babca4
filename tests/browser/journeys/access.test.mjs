// Conformance that a machine can judge, the keyboard, narrow widths, and paper.
import assert from "node:assert/strict";
import { test } from "node:test";

import { AxeBuilder } from "@axe-core/playwright";

import { schemes, screens } from "../browser.mjs";
import { journeys } from "../begin.mjs";
import { serve } from "../site.mjs";
import { Visit } from "../visit.mjs";

const { at, begin, objects, journey } = journeys();
const SHEETS = ["brief", "fit", "dry", "heat", "air", "build"];
const rules = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"];
// What another colour scheme can change.
const colours = ["color-contrast", "link-in-text-block"];

const faults = async (page, only) => {
  const judge = new AxeBuilder({ page }).setLegacyMode(true).options({ resultTypes: ["violations"] });
  const { violations } = await (only ? judge.withRules(only) : judge.withTags(rules)).analyze();
  return violations.map(({ id, help, nodes }) => ({
    rule: `${id}: ${help}`,
    where: nodes.slice(0, 6).map((node) => node.target.flat().join(" ")),
  }));
};

const unfoldAll = (driver) =>
  driver.evaluate(async (host) => {
    for (let round = 0; round < 3; round++) {
      for (const fold of host.shadowRoot.querySelectorAll(".sheet details:not([open])")) fold.open = true;
      await new Promise((resolve) => setTimeout(resolve, 60));
    }
  });

for (const screen of Object.keys(screens)) {
  for (const colorScheme of schemes) {
    const only = colorScheme === "dark" ? colours : undefined;
    journey(`no fault in any sheet on a ${screen} in ${colorScheme}, folded and unfolded`, async ({ bench, driver, visit }) => {
      for (const sheet of SHEETS) {
        await bench.open(sheet);
        await unfoldAll(driver);
        assert.deepEqual(await faults(visit.page, only), [], sheet);
      }
    }, { screen, colorScheme, clean: false });
  }
}

test("no fault when the planner never comes", async () => {
  const visit = await begin({ viewport: screens.phone });
  await visit.context.route("**/embed.js", (route) => route.fulfill({ status: 404 }));
  await visit.open();
  assert.deepEqual(await faults(visit.page), []);
  await visit.end();
});

journey("the keyboard reaches the planner and leaves it again", async ({ visit }) => {
  const seen = [];
  for (let step = 0; step < 150; step++) {
    await visit.page.keyboard.press("Tab");
    const at = await visit.page.evaluate(() => document.activeElement?.nodeName ?? "BODY");
    if (at === "BODY") break;
    seen.push(at);
  }
  const inside = seen.indexOf("INCHWISE-PLANNER");
  assert.ok(inside > 0, "the planner was never reached");
  assert.ok(seen.slice(inside).includes("A"), "the planner keeps the keyboard");
});

for (const width of [320, 390, 820, 1200, 1440]) {
  test(`nothing runs off the side at ${width} px, in any sheet`, { timeout: 60_000 }, async () => {
    const visit = await begin({ viewport: { width, height: 800 } });
    await visit.open();
    const { bench, driver } = objects(visit);
    await bench.ready();
    for (const sheet of SHEETS) {
      await bench.open(sheet);
      await unfoldAll(driver);
      const page = await visit.page.evaluate(() => document.documentElement.scrollWidth);
      assert.equal(page, width, sheet);
      const holder = await driver.evaluate((host) => {
        const holder = host.shadowRoot.querySelector(".sheet-holder");
        return holder.scrollWidth - holder.clientWidth;
      });
      assert.ok(holder <= 1, `${sheet} is ${holder} px too wide`);
    }
    await visit.end();
  });
}

test("the site works below a sub-path", async () => {
  const below = await serve({ under: "/shop/planner/" });
  const visit = await Visit.begin(at.browser, below, { viewport: screens.phone });
  await visit.open();
  await objects(visit).bench.ready();
  assert.ok(visit.requests.every((url) => url.startsWith(below.address)));
  await visit.wasQuiet();
  await visit.end();
  await below.stop();
});

test("a second visit fetches nothing of the element's version again", async () => {
  const visit = await begin({ viewport: screens.phone });
  await visit.open();
  await objects(visit).bench.ready();
  await visit.open();
  await objects(visit).bench.ready();
  const files = await visit.page.evaluate(() =>
    performance
      .getEntriesByType("resource")
      .filter(({ name }) => name.includes("/element/"))
      .map(({ name, transferSize }) => [name, transferSize]),
  );
  assert.ok(files.length >= 3);
  for (const [name, sent] of files) assert.equal(sent, 0, name);
  await visit.end();
});

for (const screen of Object.keys(screens)) {
  test(`a visitor on a ${screen} gets the planner under the strict policy, and nothing jumps`, async () => {
    const visit = await begin({ viewport: screens[screen] });
    await visit.open();
    const { bench } = objects(visit);
    await bench.ready();
    await bench.settled();
    await visit.wasClean();
    await visit.end();
  });
}

for (const format of ["A4", "Letter"]) {
  journey(`the page prints on ${format} without having been scrolled: figures, drawing, plan and verdict first`, async ({ visit, driver }) => {
    const pdf = await visit.page.pdf({ format });
    const pages = pdf.toString("latin1").match(/\/Type\s*\/Page\b/g)?.length ?? 0;
    assert.ok(pages >= 1 && pages <= 5, `${pages} pages`);
    await visit.page.emulateMedia({ media: "print" });
    for (const part of ["answer-clear", "answer-lost", "answer-load", "answer-drip", "drawing", "control-treatment"]) {
      assert.ok(await driver.at(`[data-testid="${part}"]`).isVisible(), part);
    }
    assert.equal(await visit.page.getByRole("navigation").count(), 0);
  }, { clean: false });
}

test("with scripts off the page still tells worked sizes, and what to do for others", async () => {
  const visit = await begin({ javaScriptEnabled: false });
  await visit.open();
  const sizes = visit.page.getByRole("table", { name: /usual build/ });
  assert.ok(await sizes.isVisible());
  assert.match(await sizes.getByRole("row").nth(1).innerText(), /20 foot\s+\d\.\d\d × .* kW/);
  await visit.end();
});
