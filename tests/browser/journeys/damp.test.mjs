// Will it drip? What a visitor reads at once, and what wrong choices of air say.
import assert from "node:assert/strict";
import { after, before, test } from "node:test";

import { launch, screens } from "../browser.mjs";
import { Planner } from "../planner.page.mjs";
import { serve } from "../site.mjs";
import { Visit } from "../visit.mjs";

let browser, site;
before(async () => ([browser, site] = await Promise.all([launch(), serve()])));
after(() => Promise.all([browser?.close(), site?.stop()]));

const planning = (name, viewport, steps, ended = (visit) => visit.wasClean()) =>
  test(name, async () => {
    const visit = await Visit.begin(browser, site, { viewport });
    await visit.open();
    const planner = await new Planner(visit.page).ready();
    await planner.settled();
    await steps(planner, visit);
    await ended(visit);
    await visit.end();
  });

planning("the answer to will it drip stands in sight on a phone", screens.phone, async (planner, visit) => {
  await planner.host.evaluate((host) => host.scrollIntoView());
  await planner.drip.locator("b").filter({ hasText: /./ }).waitFor();
  const line = await planner.dripLine();
  assert.match(line, /Will it drip\? (Yes|No): this use brings \d+\s?%.* down to −33 °C up to about \d+\s?% indoor humidity; weakest spot: [a-z]/);
  for (const by of [0, 3000, 3000]) {
    await visit.page.mouse.wheel(0, by);
    await visit.page.waitForTimeout(100);
    const box = await planner.drip.boundingBox();
    assert.ok(box.y >= 0 && box.y + box.height <= screens.phone.height, JSON.stringify(box));
  }
});

planning("a wet use is told what air and cold spots make of it", screens.desktop, async (planner) => {
  await planner.choose("room_use", "laundry_and_drying");
  await planner.settled();
  assert.match(await planner.dripLine(), /Yes: this use brings \d+\s?%/);
  await planner.damp.getByText(/engineered design/).waitFor();
  await planner.damp.getByText(/fit dampers and a fan/).waitFor();
  await planner.open("ventilation");
  await planner.type("damper_count", "3");
  await planner.damp.getByText(/the fan runs \d+\s?% of the time/).waitFor();
  await planner.damp.getByTestId("fan-table").waitFor();
});

planning("wrong choices of air are refused at their field, each with its reason", screens.desktop, async (planner) => {
  await planner.open("ventilation");
  await planner.open("use");
  await planner.open("air");
  const refused = async (field, text, reason) => {
    await planner.type(field, text);
    assert.match(await planner.fault(field), reason, `${field} ${text}`);
  };
  await refused("target_humidity", "120 %", /Read as 120%\. Allowed: 10% to 95%/);
  await planner.type("target_humidity", "40");
  await refused("damper_diameter", "0 mm", /Read as 0 mm\. Allowed: 100 mm to 400 mm/);
  await planner.type("damper_diameter", "200");
  await refused("air_changes", "0", /no air carries it out/);
  await planner.type("damper_count", "3");
  assert.equal(await planner.fault("air_changes"), "", "the dampers carry it out");
  await planner.choose("fan_given", "curve");
  await refused("fan_second_flow", "200", /must be more than First point, flow, 300 m³\/h/);
  await planner.type("fan_second_flow", "500");
  await refused("fan_third_pressure", "50 Pa", /must be less than Second point, pressure, 48 Pa/);
  await planner.type("fan_third_pressure", "28");
  await refused("exhaust_count", "3", /^$/);
  assert.match(await planner.fault("damper_count"), /Needs 4, has 3: 1 short/);
});

planning("every figure of damp tells how it comes about, by keys alone", screens.phone, async (planner, visit) => {
  await planner.open("ventilation");
  await planner.type("damper_count", "3");
  await planner.settled();
  const asked = planner.damp.getByTestId("damp-room").locator("summary").first();
  await asked.focus();
  await visit.page.keyboard.press("Enter");
  const working = planner.damp.getByTestId("damp-room").locator(".working").first();
  await working.getByText(/2 × person at ordinary work: 180\sg\/h, known from 120\sg\/h to 240\sg\/h/).waitFor();
  await working.getByText(/^Source: /).waitFor();
  const moves = planner.damp.getByTestId("fan-table").locator("summary").first();
  await moves.focus();
  await visit.page.keyboard.press("Space");
  await planner.damp.getByTestId("fan-table").getByText(/^Intake: ζ hood\s1\.50 \+ screen/).waitFor();
  // It stays open while the figures beside it change.
  await planner.type("exhaust_diameter", "300");
  await planner.damp.getByTestId("fan-table").getByText(/^Exhaust: ζ hood\s1\.50 \+ screen/).waitFor();
});

planning("showers, kerosene and a wider exhaust change what is told", screens.desktop, async (planner) => {
  await planner.open("use");
  await planner.open("ventilation");
  await planner.choose("room_use", "store");
  await planner.damp.getByText(/no moisture/).first().waitFor();
  await planner.type("showers", "2");
  await planner.damp.getByText(/0\.5\skg of water on a day of use/).waitFor();
  await planner.type("showers", "0");
  await planner.type("unvented_kerosene", "2");
  await planner.damp.getByText(/2\.3\skg of water on a day of use/).waitFor();
  await planner.host.getByTestId("cautions").getByText("A flame without a flue").waitFor();
  await planner.type("damper_count", "3");
  const exhaust = planner.damp.getByTestId("fan-table").locator("tr").filter({ hasText: "On the exhaust" }).locator("td").first();
  const narrow = await exhaust.textContent();
  await planner.type("exhaust_diameter", "300");
  await exhaust.filter({ hasNotText: narrow }).waitFor();
  const [slow, fast] = [await exhaust.textContent(), narrow].map((text) => Number.parseFloat(text));
  assert.ok(slow < fast, `${slow} m/s through the wider one, ${fast} m/s before`);
}, (visit) => visit.wasQuiet());

planning("the picture of why it drips says in words what it shows", screens.phone, async (planner) => {
  const figure = planner.host.getByTestId("moist-air");
  await figure.scrollIntoViewIfNeeded();
  // As humid as January of the place, 150 Pa of the 162 Pa that ice leaves air of −15.2 °C: 0.93 · 27.7 Pa at −33 °C and
  // 96.4 kPa, 0.622 · 25.7 / 96,400 = 0.17 g/kg.
  await figure.getByText(/Outdoor air of −33\s°C brings 0\.17\sg\/kg of water.*the rest lands there\./).first().waitFor();
  assert.match(await figure.locator("desc").textContent(), /the rest lands there/);
  await planner.choose("room_use", "store");
  await figure.getByText(/nothing lands there\./).first().waitFor();
}, (visit) => visit.wasQuiet());
