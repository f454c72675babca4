import assert from "node:assert/strict";
import { after, before, test } from "node:test";

import { launch, screens } from "../browser.mjs";
import { Planner } from "../planner.page.mjs";
import { serve } from "../site.mjs";
import { Visit } from "../visit.mjs";

let browser, site;
before(async () => ([browser, site] = await Promise.all([launch(), serve()])));
after(() => Promise.all([browser?.close(), site?.stop()]));

for (const [screen, viewport] of Object.entries(screens)) {
  test(`a visitor on a ${screen} gets the planner under the strict policy, and nothing jumps`, async () => {
    const visit = await Visit.begin(browser, site, { viewport });
    await visit.open();
    const planner = await new Planner(visit.page).ready();
    const before = await planner.reading();
    await planner.deepenByKeys(3);
    assert.notEqual(await planner.reading(), before);
    await visit.wasClean();
    await visit.end();
  });
}

for (const width of [320, 390, 820, 1440]) {
  test(`nothing runs off the side at ${width} px`, async () => {
    const visit = await Visit.begin(browser, site, { viewport: { width, height: 800 } });
    await visit.open();
    const planner = await new Planner(visit.page).ready();
    await planner.unfoldByScript();
    const page = await visit.page.evaluate(() => document.documentElement.scrollWidth);
    assert.equal(page, width);
    await visit.end();
  });
}

test("the site works below a sub-path", async () => {
  const below = await serve({ under: "/shop/planner/" });
  const visit = await Visit.begin(browser, below, { viewport: screens.phone });
  await visit.open();
  await new Planner(visit.page).ready();
  assert.ok(visit.requests.every((url) => url.startsWith(below.address)));
  await visit.wasClean();
  await visit.end();
  await below.stop();
});

test("a second visit fetches nothing of the element's version again", async () => {
  const visit = await Visit.begin(browser, site, { viewport: screens.phone });
  await visit.open();
  await new Planner(visit.page).ready();
  await visit.open();
  await new Planner(visit.page).ready();
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
