// Where it drips first: the list, the temperature picture and what can be moved in it.
import assert from "node:assert/strict";
import { after, before, test } from "node:test";

import { launch, screens } from "../browser.mjs";
import { Planner } from "../planner.page.mjs";
import { serve } from "../site.mjs";
import { Visit } from "../visit.mjs";

let browser, site;
before(async () => ([browser, site] = await Promise.all([launch(), serve()])));
after(() => Promise.all([browser?.close(), site?.stop()]));

const looking = (name, viewport, steps) =>
  test(name, async () => {
    const visit = await Visit.begin(browser, site, { viewport });
    await visit.open();
    const planner = await new Planner(visit.page).ready();
    await planner.settled();
    await planner.spots();
    await steps(planner, visit);
    await visit.wasClean();
    await visit.end();
  });

looking("cold spots are listed coldest first, each with what it stands", screens.desktop, async (planner) => {
  const rows = (await planner.spotRows()).filter((row) => !row.isStale);
  assert.ok(rows.length > 15);
  for (const [one, next] of rows.slice(1).map((row, n) => [rows[n], row])) {
    assert.ok(one.surface <= next.surface, `${one.key} before ${next.key}`);
    assert.ok(one.drip <= next.drip);
  }
  // Mould is told of the mean of the month that asks most, which is milder than the coldest day: more than 80 % of what
  // makes a place drip on that (ISO 13788:2012, clause 5). Frames and panes are told by drops alone.
  const framed = new Set(["personnel_door", "windows"]);
  for (const row of rows) {
    if (framed.has(row.key)) assert.equal(row.mould, 0, `${row.key} has no figure of mould`);
    else assert.ok(row.mould > 0.8 * row.drip - 1, `${row.key}: mould over ${row.mould}, drips over ${row.drip}`);
  }
  assert.ok(rows[0].isChosen, "the coldest is looked at");
});

looking("drier air stays dry, damper air drips", screens.phone, async (planner) => {
  const dripping = async () =>
    (await planner.spotRows()).filter((row) => /drips|frosts/.test(row.verdict)).map((row) => row.key);
  await planner.choose("room_use", "store");
  await planner.settled();
  assert.deepEqual(await dripping(), [], "in a store that gives off nothing");
  await planner.open("use");
  await planner.type("plant_water", "60");
  await planner.settled();
  const wet = await dripping();
  assert.ok(wet.length > 15, `${wet.length} places drip`);
});

looking("a row shows its picture, and its labels do not cover one another", screens.phone, async (planner) => {
  for (const key of ["side_wall_stud", "front_top_casting", "stud_head", "floor_member", "side_roof_edge", "window_frame", "side_walls"]) {
    await planner.chooseSpot(key);
    const labels = await planner.pictureLabels();
    assert.ok(labels.some(({ text }) => text.startsWith("coldest")), `${key} names its coldest place`);
    assert.ok(labels.filter(({ text }) => text.endsWith("°")).length >= 2, `${key} has isotherms`);
    for (const [n, one] of labels.entries()) {
      for (const other of labels.slice(0, n)) {
        const across = Math.min(one.right, other.right) - Math.max(one.left, other.left);
        const down = Math.min(one.bottom, other.bottom) - Math.max(one.top, other.top);
        assert.ok(across <= 1 || down <= 1, `${key}: ${one.text} covers ${other.text}`);
      }
    }
  }
});

looking("a casting is cut three ways", screens.desktop, async (planner) => {
  await planner.chooseSpot("front_top_casting");
  const picture = await planner.pictured();
  const steel = () => picture.locator("path.steel").getAttribute("d");
  const seen = new Set([await steel()]);
  for (const cut of [1, 2]) {
    await picture.getByTestId(`cut-${cut}`).check();
    await planner.pictured();
    seen.add(await steel());
  }
  assert.equal(seen.size, 3);
});

looking("more cover by the keyboard makes a casting's corner warmer", screens.desktop, async (planner) => {
  await planner.chooseSpot("front_top_casting");
  const spot = async () => (await planner.spotRows()).find((row) => row.key === "front_top_casting");
  const before = await spot();
  const handle = planner.handle("casting_cover");
  assert.equal(await handle.getAttribute("aria-valuenow"), "50");
  await handle.focus();
  await planner.page.keyboard.press("PageUp");
  await planner.page.keyboard.press("ArrowDown");
  assert.equal(await handle.getAttribute("aria-valuenow"), "76");
  await planner.settled();
  await planner.pictured();
  const after = await spot();
  assert.ok(!after.isStale && after.surface > before.surface, `${before.surface} to ${after.surface}`);
});

looking("studs over troughs are warmer, and the picture shows the waves", screens.desktop, async (planner) => {
  await planner.chooseSpot("side_wall_stud");
  const spot = async () => (await planner.spotRows()).find((row) => row.key === "side_wall_stud");
  const height = async () => {
    const picture = await planner.pictured();
    const [, , , high] = (await picture.locator("svg").first().getAttribute("viewBox")).split(" ");
    return Number(high);
  };
  const [before, flat] = [await spot(), await height()];
  await planner.unfold();
  await planner.choose("frame_position", "over_troughs");
  await planner.settled();
  await planner.spots();
  // Side wall sheet is 36 mm deep.
  assert.ok(Math.abs((await height()) - flat - 36) < 1, "the wave's depth is drawn");
  const after = await spot();
  assert.ok(!after.isStale && after.surface > before.surface, `${before.surface} to ${after.surface}`);
});

looking("a pad under the bracket is drawn and helps", screens.desktop, async (planner) => {
  await planner.chooseSpot("stud_head");
  const spot = async () => (await planner.spotRows()).find((row) => row.key === "stud_head");
  const before = await spot();
  const handle = planner.handle("bracket_pad");
  await handle.focus();
  await planner.page.keyboard.press("End");
  await planner.settled();
  const picture = await planner.pictured();
  assert.match(await picture.locator("path.pad").getAttribute("d"), /^M/);
  assert.ok((await spot()).surface > before.surface);
});
