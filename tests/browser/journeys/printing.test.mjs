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
