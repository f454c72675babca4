// Conformance that a machine can judge: WCAG 2.2 levels A and AA, and the engine's good practice.
import assert from "node:assert/strict";
import { after, before, test } from "node:test";

import { AxeBuilder } from "@axe-core/playwright";

import { launch, schemes, screens } from "../browser.mjs";
import { Planner } from "../planner.page.mjs";
import { serve } from "../site.mjs";
import { Visit } from "../visit.mjs";

const rules = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"];
// What another colour scheme can change.
const colours = ["color-contrast", "link-in-text-block"];

let browser, site;
before(async () => ([browser, site] = await Promise.all([launch(), serve()])));
after(() => Promise.all([browser?.close(), site?.stop()]));

const faults = async (page, only) => {
  // One document without frames, and no list of what passed: the same verdicts in a third of the time.
  const judge = new AxeBuilder({ page }).setLegacyMode(true).options({ resultTypes: ["violations"] });
  const { violations, passes } = await (only ? judge.withRules(only) : judge.withTags(rules)).analyze();
  assert.ok(passes.length >= (only ? 1 : 10), "the judge saw almost nothing");
  return violations.map(({ id, help, nodes }) => ({
    rule: `${id}: ${help}`,
    where: nodes.map((node) => node.target.flat().join(" ")),
  }));
};

for (const [screen, viewport] of Object.entries(screens)) {
  for (const colorScheme of schemes) {
    const only = colorScheme === "dark" ? colours : undefined;
    test(`no fault on a ${screen} in ${colorScheme}, folded and unfolded`, async () => {
      const visit = await Visit.begin(browser, site, { viewport, colorScheme });
      await visit.open();
      const planner = await new Planner(visit.page).ready();
      assert.deepEqual(await faults(visit.page, only), []);
      await planner.setAttribute("design", "v=1&damper_count=3");
      await planner.unfoldByScript();
      await planner.damp.getByTestId("fan-table").waitFor();
      assert.deepEqual(await faults(visit.page, only), []);
      await visit.end();
    });
  }
}

test("no fault when the planner never comes", async () => {
  const visit = await Visit.begin(browser, site, { viewport: screens.phone });
  await visit.context.route("**/embed.js", (route) => route.fulfill({ status: 404 }));
  await visit.open();
  assert.deepEqual(await faults(visit.page), []);
  await visit.end();
});

test("the keyboard reaches the planner and leaves it again", async () => {
  const visit = await Visit.begin(browser, site, { viewport: screens.desktop });
  await visit.open();
  await new Planner(visit.page).ready();
  const seen = [];
  for (let step = 0; step < 400; step++) {
    await visit.page.keyboard.press("Tab");
    const at = await visit.page.evaluate(() => document.activeElement?.nodeName ?? "BODY");
    if (at === "BODY") break;
    seen.push(at);
  }
  const inside = seen.indexOf("INCHWISE-PLANNER");
  assert.ok(inside > 0, "the planner was never reached");
  assert.ok(seen.slice(inside).includes("A"), "the planner keeps the keyboard");
  await visit.end();
});

// Rows of both lists fall out of what is shown at once as fields are solved or the design changes.
for (const list of ["spots", "losses"]) {
  test(`whoever stands in a row of the ${list} keeps the keyboard when it falls behind`, async () => {
    const visit = await Visit.begin(browser, site, { viewport: screens.desktop });
    await visit.open();
    const planner = await new Planner(visit.page).ready();
    const foamed = (depth) =>
      `v=1&side_wall_foam_mm=${depth}&front_end_foam_mm=${depth}&door_end_foam_mm=${depth}&ceiling_foam_mm=${depth}`;
    const inFront = async (design) => {
      await planner.setAttribute("design", design);
      await planner.settled();
      return (await planner.rowsOf(list)).filter((row) => row.takesKeyboard && !row.behind).map((row) => row.name);
    };
    let fell = 0;
    for (const [one, other] of [[40, 150], [150, 40]]) {
      const later = await inFront(foamed(other));
      const falls = (await inFront(foamed(one))).find((name) => !later.includes(name));
      if (!falls) continue;
      await planner.standInRow(list, falls);
      await inFront(foamed(other));
      assert.ok((await planner.rowsOf(list)).find((row) => row.name === falls).behind, `${falls} stayed in front`);
      const held = await planner.heldWords();
      assert.ok(held.includes(falls), `${falls} lost the keyboard to ${held}`);
      fell += 1;
    }
    assert.ok(fell > 0, "no row ever fell behind");
    await visit.end();
  });
}
