// What a visitor does with the planner, and what it answers.
import assert from "node:assert/strict";
import { after, before, test } from "node:test";

import { launch, screens } from "../browser.mjs";
import { Planner } from "../planner.page.mjs";
import { serve } from "../site.mjs";
import { Visit } from "../visit.mjs";

let browser, site;
before(async () => ([browser, site] = await Promise.all([launch(), serve()])));
after(() => Promise.all([browser?.close(), site?.stop()]));

const planning = (name, steps) =>
  test(name, async () => {
    const visit = await Visit.begin(browser, site, { viewport: screens.desktop });
    await visit.open();
    const planner = await new Planner(visit.page).ready();
    await planner.settled();
    await steps(planner, visit);
    await visit.wasClean();
    await visit.end();
  });

planning("a longer box gives a longer room and a larger load", async (planner) => {
  const before = await planner.answer();
  await planner.chooseBox("40_high_cube");
  await planner.settled();
  const after = await planner.answer();
  assert.ok(after.clear[0] > before.clear[0] && after.clear[2] > before.clear[2]);
  assert.ok(after.load > before.load);
});

planning("foam up to the frame is free of room, past it takes room, always saves heat", async (planner) => {
  const at = async (typed) => {
    await planner.typeDepth(typed);
    await planner.settled();
    return planner.answer();
  };
  const [thin, flush, past] = [await at("30"), await at("63"), await at("100")];
  assert.equal(thin.clear[1], flush.clear[1]);
  assert.ok(past.clear[1] < flush.clear[1]);
  assert.ok(thin.load > flush.load && flush.load > past.load);
});

planning("the answer says what a year of heat costs, and foam makes it less", async (planner) => {
  const heat = await planner.yearHeat();
  const thin = await planner.costAtHead();
  // The demo page's price of a kilowatt hour; both figures are rounded.
  assert.ok(Math.abs(thin - heat * 0.16) < 2, `${thin} for ${heat} kWh`);
  await planner.typeDepth("90");
  await planner.settled();
  const thick = await planner.costAtHead();
  assert.ok(thick < thin, `${thick} after ${thin}`);
  await planner.setAttribute("language", "fr");
  assert.equal(await planner.costAtHead(), thick);
});

planning("lengths are read as people write them", async (planner) => {
  for (const [typed, shown] of [['2 1/2"', /^6[34] mm$/], ["63 mm", /^63 mm$/], ["2.5 in", /^6[34] mm$/], ["6.3 cm", /^63 mm$/]]) {
    await planner.typeDepth(typed);
    assert.match((await planner.reading()).replace(/\u00a0/g, " "), shown, typed);
  }
  await planner.switchUnits("imperial");
  assert.match(await planner.reading(), /2\D*1.?[/⁄]?2|2½/u);
});

planning("dropping the ceiling costs headroom, covering does not", async (planner) => {
  const covered = await planner.answer();
  await planner.treat("drop_ceiling");
  await planner.settled();
  const dropped = await planner.answer();
  assert.ok(dropped.clear[2] < covered.clear[2]);
  assert.equal(dropped.clear[0], covered.clear[0]);
});

planning("a depth out of range is refused at its field and nothing typed is lost", async (planner) => {
  const before = await planner.answer();
  for (const typed of ["900", "NaN", "1e999", "-4", "<img src=x onerror=alert(1)>", "9".repeat(5000)]) {
    await planner.typeDepth(typed);
    assert.ok(await planner.isRefused(), typed.slice(0, 20));
    // A number that was read gets its unit; what could not be read stays as it was typed.
    const kept = { 900: "900\u00a0mm", "-4": "\u22124\u00a0mm" }[typed] ?? typed;
    assert.equal(await planner.reading(), kept);
    assert.deepEqual(await planner.answer(), before, "the last good answer stays");
  }
  await planner.typeDepth("60");
  assert.ok(!(await planner.isRefused()));
});

planning("a foam face moves by the arrow keys", async (planner) => {
  const before = await planner.reading();
  await planner.nudgeGrip("ceiling");
  await planner.settled();
  await planner.nudgeGrip("wall");
  assert.notEqual(await planner.reading(), before);
});

planning("a page may ask the engine itself", async (planner, visit) => {
  const evaluation = await visit.page.evaluate(async () => {
    const { evaluate } = await import(new URL("embed.js", document.baseURI).href);
    return (await evaluate({})).evaluation;
  });
  const shown = await planner.answer();
  assert.equal(Math.round(evaluation.room.clear.width_m * 1000), shown.clear[1]);
  assert.ok(Math.abs(evaluation.heat_load.greatest_w - shown.load) <= 5);
});
