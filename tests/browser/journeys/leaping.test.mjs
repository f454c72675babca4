// Leaping about the page: whatever a visitor lands on stays where it is.
import assert from "node:assert/strict";
import { after, before, test } from "node:test";

import { launch, screens } from "../browser.mjs";
import { Planner } from "../planner.page.mjs";
import { serve } from "../site.mjs";
import { Visit } from "../visit.mjs";

let browser, site;
before(async () => ([browser, site] = await Promise.all([launch(), serve()])));
after(() => Promise.all([browser?.close(), site?.stop()]));

/** Longer than the half second in which a shift is laid to a key that was pressed. */
const LOOK = 700;

/** Presses keys, and looks at the page after each. */
const leap = async (page, keys) => {
  for (const key of keys) {
    await page.keyboard.press(key);
    await page.waitForTimeout(LOOK);
  }
};

const leaping = (name, viewport, steps) =>
  test(name, async () => {
    const visit = await Visit.begin(browser, site, { viewport });
    await visit.open();
    const planner = await new Planner(visit.page).ready();
    await steps(planner, visit);
    await visit.wasClean();
    await visit.end();
  });

for (const [screen, viewport] of Object.entries(screens)) {
  leaping(`nothing jumps under who leaps about at once on a ${screen}`, viewport, async (planner, { page }) => {
    await leap(page, ["End", "PageUp", "PageUp", "Home", "End", "PageUp", "Home"]);
    await planner.settled();
    await leap(page, ["End", "Home"]);
  });

  leaping(`nothing jumps under who leaps to what a change moved on a ${screen}`, viewport, async (planner, { page }) => {
    await planner.settled();
    await planner.typeDepth("90");
    await leap(page, ["Home", "End", "Home"]);
    await planner.settled();
    await planner.treat("drop_ceiling");
    await planner.host.evaluate((host) => host.shadowRoot.activeElement?.blur());
    await leap(page, ["End", "PageUp", "PageUp", "PageUp", "Home"]);
    await planner.settled();
    await leap(page, ["End", "Home"]);
  });
}

leaping("a part that is leapt to stays where it was found", screens.phone, async (planner, { page }) => {
  await planner.settled();
  for (const part of ["year", "spots", "damp", "further", "year-verdicts"]) {
    await planner.host.getByTestId(part).evaluate((part) => part.scrollIntoView());
    const top = () => planner.host.getByTestId(part).evaluate((part) => part.getBoundingClientRect().top);
    const before = await top();
    await page.waitForTimeout(LOOK);
    assert.ok(Math.abs((await top()) - before) <= 1, part);
  }
});
