// The year: what it costs to heat, whether it holds, and where the box stands.
import assert from "node:assert/strict";
import { after, before, test } from "node:test";

import { launch, screens } from "../browser.mjs";
import { Planner } from "../planner.page.mjs";
import { serve } from "../site.mjs";
import { Visit } from "../visit.mjs";

let browser, site;
before(async () => ([browser, site] = await Promise.all([launch(), serve()])));
after(() => Promise.all([browser?.close(), site?.stop()]));

const living = (name, steps) =>
  test(name, async () => {
    const visit = await Visit.begin(browser, site, { viewport: screens.desktop });
    await visit.open();
    const planner = await new Planner(visit.page).ready();
    await planner.settled();
    await steps(planner, visit);
    await visit.wasClean();
    await visit.end();
  });

/** Asks until it is so; the worker answers in its own time. */
const soon = async (is, what) => {
  for (let left = 60; left > 0; left--) {
    if (await is()) return;
    await new Promise((resolve) => setTimeout(resolve, 100));
  }
  assert.fail(what);
};

living("more foam makes the year cheaper at once", async (planner) => {
  const before = await planner.yearHeat();
  assert.ok(before > 1000, `${before} kWh`);
  await planner.typeDepth("100");
  await soon(async () => (await planner.yearHeat()) < before - 100, "less heat with more foam");
});

living("a place is found by keys alone, and its table is fetched only then", async (planner, visit) => {
  const cold = await planner.yearHeat();
  assert.ok(!visit.fetched().includes("places.txt"));
  assert.match(await planner.goToPlace("yellowk"), /Yellowknife/);
  assert.ok(visit.fetched().includes("places.txt"));
  await soon(async () => (await planner.yearHeat()) > cold + 300, "more heat in a colder place");
  assert.match(await planner.yearVerdicts(), /power cut at −3\d/);
});

living("a heat pump draws less, and a supply that is too small says so", async (planner) => {
  await soon(
    async () => /Too little\s+Supply: 120 V and 15 A/.test(await planner.yearVerdicts()),
    "an electric heater is too much for a wall socket",
  );
  await planner.chooseHeater("air_source_heat_pump");
  await soon(
    async () => /Heater: up to 0\sW at −33/.test(await planner.yearVerdicts()),
    "a heat pump that stops in the cold",
  );
});

living("a stove holds only while tended, and no power cut is counted on it", async (planner) => {
  await soon(
    async () => /The heater stops with the power/.test(await planner.yearVerdicts()),
    "an electric heater stops",
  );
  await planner.chooseHeater("wood_stove");
  await soon(
    async () => /While tended\s+Heater: .* With nobody there to feed the stove: 0\sW/.test(await planner.yearVerdicts()),
    "a stove left alone gives nothing",
  );
  assert.match(await planner.yearVerdicts(), /power cut at .*The stove is not counted/);
});

living("a fan may not cool below what the heater holds; a night shift may run over midnight", async (planner) => {
  await planner.yearHeat();
  await planner.open("use");
  await planner.open("ventilation");
  await planner.type("used_from", "20");
  await planner.type("used_until", "4");
  assert.equal(await planner.fault("used_until"), "");
  await planner.type("used_until", "20");
  assert.match(await planner.fault("used_until"), /The same hour twice/);
  await planner.type("used_until", "4");
  await planner.type("damper_count", "3");
  await planner.type("fan_cools_above", "15");
  assert.match(await planner.fault("fan_cools_above"), /must not be below Room temperature, 20 °C/);
  await planner.type("fan_cools_above", "25");
  assert.equal(await planner.fault("fan_cools_above"), "");
});

living("a winter that the made hours do not reach is told under the place", async (planner) => {
  await planner.yearHeat();
  assert.equal((await planner.yearMissed()).trim(), "");
  await planner.typeWinter("-55");
  await soon(async () => /winter −55\s°C, made −4\d/.test(await planner.yearMissed()), "it is told");
});

living("every figure and verdict of the year tells how it comes about, by keys alone", async (planner, { page }) => {
  await planner.yearHeat();
  const asked = planner.yearAsked();
  assert.equal(await asked.count(), 14);
  for (let figure = 0; figure < 14; figure++) {
    await asked.nth(figure).focus();
    await page.keyboard.press("Enter");
    const working = planner.yearWorking(figure);
    await working.getByText(/^Source: /).waitFor();
    assert.ok((await working.locator("li").count()) >= 1, `figure ${figure} has steps`);
  }
  const heat = planner.yearWorking(0);
  await heat.getByText(/^By months [0-9,]+\skWh, that is \d+% of the [0-9,]+\skWh hour by hour$/).waitFor();
  // It stays open, and keeps up with what is chosen.
  const before = await heat.innerText();
  await planner.typeDepth("100");
  await soon(async () => (await heat.innerText()) !== before, "the working follows the foam");
  await asked.first().focus();
  await page.keyboard.press("Enter");
  await heat.waitFor({ state: "hidden" });
});
