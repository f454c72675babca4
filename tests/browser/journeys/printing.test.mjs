import assert from "node:assert/strict";
import { after, before, test } from "node:test";

import { launch, screens } from "../browser.mjs";
import { Planner } from "../planner.page.mjs";
import { serve } from "../site.mjs";
import { Visit } from "../visit.mjs";

let browser, site;
before(async () => ([browser, site] = await Promise.all([launch(), serve()])));
after(() => Promise.all([browser?.close(), site?.stop()]));

for (const format of ["A4", "Letter"]) {
  test(`the page prints on ${format} with the planner's figures and without its navigation`, async () => {
    const visit = await Visit.begin(browser, site, { viewport: screens.desktop });
    await visit.open();
    const planner = await new Planner(visit.page).ready();
    const pdf = await visit.page.pdf({ format });
    assert.equal(pdf.subarray(0, 5).toString(), "%PDF-");
    const pages = pdf.toString("latin1").match(/\/Type\s*\/Page\b/g)?.length ?? 0;
    assert.ok(pages >= 1 && pages <= 8, `${pages} pages`);
    await visit.wasClean();
    await visit.page.emulateMedia({ media: "print" });
    for (const figure of [planner.clear, planner.lost, planner.load]) {
      assert.ok(await figure.isVisible());
    }
    assert.equal(await visit.page.getByRole("navigation").count(), 0);
    await visit.end();
  });
}

test("what is printed to build from names no fan where there is none, and the heater", async () => {
  const visit = await Visit.begin(browser, site, { viewport: screens.desktop });
  await visit.open();
  const planner = await new Planner(visit.page).ready();
  await planner.settled();
  await visit.page.emulateMedia({ media: "print" });
  const without = await planner.printedChoices();
  assert.match(without, /Heater\s*electric/i);
  assert.match(without, /Damper openings\s*0\b/);
  assert.doesNotMatch(without, /Fan/);
  await visit.page.emulateMedia({ media: "screen" });
  await planner.setAttribute("design", "v=1&damper_count=3");
  await planner.settled();
  await visit.page.emulateMedia({ media: "print" });
  const named = await planner.printedChoices();
  assert.match(named, /Fan/);
  await visit.end();
});

test("every cold spot is on the paper, also those a screen shows on demand", async () => {
  const visit = await Visit.begin(browser, site, { viewport: screens.desktop });
  await visit.open();
  const planner = await new Planner(visit.page).ready();
  await planner.settled();
  const rows = await planner.rowsOf("spots");
  assert.ok(rows.length > 15, `${rows.length} spots`);
  assert.ok((await planner.visibleRows("spots")) < rows.length, "a screen shows all of them at once");
  await visit.page.emulateMedia({ media: "print" });
  assert.equal(await planner.visibleRows("spots"), rows.length);
  await visit.end();
});
