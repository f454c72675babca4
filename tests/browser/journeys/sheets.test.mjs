// What each sheet is for, by what people do in it.
import assert from "node:assert/strict";

import { journeys } from "../begin.mjs";

const { journey } = journeys();

journey("lengths are read as people write them", async ({ bench }) => {
  await bench.open("build");
  await bench.unfold("fold-foam");
  for (const [typed, shown] of [['2 1/2"', /^6[34] mm$/], ["63 mm", /^63 mm$/], ["2.5 in", /^6[34] mm$/], ["6.3 cm", /^63 mm$/]]) {
    await bench.type("ceiling_foam", typed);
    assert.match(await bench.reading("ceiling_foam"), shown, typed);
  }
  await bench.units("imperial");
  assert.match(await bench.reading("ceiling_foam"), /2\D*1.?[/⁄]?2|2½/u);
}, { clean: false });

journey("a depth out of range is refused at its field and nothing typed is lost", async ({ bench }) => {
  const before = await bench.answer();
  await bench.open("build");
  await bench.unfold("fold-foam");
  for (const typed of ["900", "NaN", "1e999", "-4", "<img src=x onerror=alert(1)>"]) {
    await bench.type("ceiling_foam", typed);
    assert.notEqual(await bench.fault("ceiling_foam"), "", typed);
    // A number that was read gets its unit; what could not be read stays as it was typed.
    const kept = { 900: "900 mm", "-4": "−4 mm" }[typed] ?? typed;
    assert.equal(await bench.reading("ceiling_foam"), kept);
    assert.deepEqual((await bench.answer()).clear, before.clear, "the last good answer stays");
  }
  assert.match(await bench.reason(), /Ceiling foam/);
  await bench.type("ceiling_foam", "60");
  assert.equal(await bench.fault("ceiling_foam"), "");
}, { clean: false });

journey("wrong choices of air are refused at their field, each with its reason", async ({ bench }) => {
  await bench.open("air");
  const refused = async (field, text, reason) => {
    await bench.type(field, text);
    assert.match(await bench.fault(field), reason, `${field} ${text}`);
  };
  await refused("target_humidity", "120 %", /Read as 120%\. Allowed: 10% to 95%/);
  await bench.type("target_humidity", "40");
  await refused("damper_diameter", "0 mm", /Read as 0 mm\. Allowed: 100 mm to 400 mm/);
  await bench.type("damper_diameter", "200");
  await refused("air_changes", "0", /no air carries it out/);
  await bench.type("damper_count", "3");
  assert.equal(await bench.fault("air_changes"), "", "the dampers carry it out");
  await bench.choose("fan_given", "curve");
  await refused("fan_second_flow", "200", /must be more than First point, flow, 300 m³\/h/);
  await bench.type("fan_second_flow", "500");
  await refused("exhaust_count", "3", /^$/);
  assert.match(await bench.fault("damper_count"), /Needs 4, has 3: 1 short/);
}, { clean: false });

journey("cold places are listed coldest first, each with what it stands", async ({ dry }) => {
  const rows = await dry.places();
  assert.ok(rows.length > 15);
  for (const [one, next] of rows.slice(1).map((row, n) => [rows[n], row])) {
    assert.ok(one.surface <= next.surface, `${one.key} before ${next.key}`);
  }
  // Mould may grow from 80 % at the surface (ISO 13788:2012, clause 5): whole per cents are shown.
  for (const row of rows) assert.ok(Math.abs(row.mould - 0.8 * row.drip) <= 1, row.key);
  assert.ok(rows[0].isLookedAt, "the coldest is looked at");
}, { clean: false });

journey("the verdict is about this room: a store of nothing stays dry where a laundry frosts", async ({ bench, dry }) => {
  await bench.open("brief");
  await bench.choose("room_use", "laundry_and_drying");
  await bench.settled();
  const wet = await bench.verdict();
  await bench.choose("room_use", "store");
  await bench.settled();
  const store = await bench.verdict();
  assert.notEqual(wet, store);
  assert.match(wet, /frost on \d+ places/);
  await bench.open("dry");
  assert.equal(await dry.verdict(), store);
}, { clean: false });

journey("what helps most is tried on the engine, and a button does it", async ({ bench, dry }) => {
  const before = await bench.verdict();
  const helps = await dry.helps();
  assert.ok(helps.length >= 1 && helps.every((help) => /leaves/.test(help)), helps.join(" | "));
  await dry.doFirst();
  await bench.settled();
  assert.notEqual(await bench.verdict(), before);
  await bench.undo();
  await bench.settled();
  assert.equal(await bench.verdict(), before);
}, { clean: false });

journey("a casting is cut three ways", async ({ dry }) => {
  await dry.look("front_top_casting");
  const seen = new Set([await dry.steel()]);
  for (const cut of [1, 2]) {
    await dry.cut(cut);
    await dry.pictured();
    seen.add(await dry.steel());
  }
  assert.equal(seen.size, 3);
}, { clean: false });

journey("more cover by the keyboard makes a casting's corner warmer", async ({ bench, dry, driver }) => {
  await dry.look("front_top_casting");
  const before = await dry.place("front_top_casting");
  const handle = '[data-testid="handle-casting_cover"]';
  assert.equal(await driver.attribute(handle, "aria-valuenow"), "50");
  await bench.keys("handle-casting_cover", "PageUp");
  assert.equal(await driver.attribute(handle, "aria-valuenow"), "75");
  await bench.settled();
  const after = await dry.place("front_top_casting");
  assert.ok(after.surface > before.surface, `${before.surface} to ${after.surface}`);
}, { clean: false });

journey("more foam makes the year cheaper at once", async ({ bench, heat }) => {
  await bench.open("heat");
  const before = await heat.yearHeat();
  assert.ok(before > 1000, `${before} kWh`);
  for (let step = 0; step < 8; step++) await bench.step("walls", "more");
  await bench.settled();
  assert.ok((await heat.yearHeat()) < before - 100);
}, { clean: false });

journey("a place is found by its name, and its table is fetched only then", async ({ bench, heat, driver, visit }) => {
  const usual = await bench.cost();
  assert.ok(!visit.fetched().some((name) => name.startsWith("places.txt")));
  await bench.open("brief");
  await driver.focus('[data-testid="place-search"]');
  await driver.type("yellowk");
  await driver.present('[data-testid="place-found"] button');
  await driver.press("Enter");
  await bench.reads("place", /Yellowknife/);
  assert.ok(visit.fetched().some((name) => name.startsWith("places.txt")));
  await bench.settled();
  assert.ok((await bench.cost()) > usual + 30);
  await bench.open("heat");
  assert.match(await heat.verdicts(), /power cut at −3\d/);
}, { clean: false });

journey("a heat pump draws less, and a supply that is too small says so", async ({ bench, heat }) => {
  await bench.open("heat");
  await heat.yearHeat();
  assert.match(await heat.verdicts(), /Too little\s+Supply: 120 V and 15 A/);
  await bench.choose("heater", "air_source_heat_pump");
  await bench.reads("year-verdicts", /Heater: up to 0 W at −33/);
  await bench.choose("heater", "wood_stove");
  await bench.reads("year-verdicts", /With nobody there to feed the stove: 0 W/);
}, { clean: false });

journey("every figure and verdict of the year tells how it comes about, by keys alone", async ({ bench, heat, driver }) => {
  await bench.open("heat");
  await heat.yearHeat();
  const count = await heat.asked();
  assert.ok(count >= 13, `${count} figures`);
  const summaries = "[data-testid=year-figures] summary, [data-testid=year-verdicts] summary";
  for (let figure = 0; figure < count; figure++) {
    await driver.host.locator(summaries).nth(figure).focus();
    await driver.press("Enter");
  }
  await driver.until((host, count) => [...host.shadowRoot.querySelectorAll("[data-testid=year] .working .hint")]
    .filter((hint) => /^Source: /.test(hint.textContent)).length === count, count);
}, { clean: false });

journey("a wet use is told what air and cold places make of it, and showers and kerosene too", async ({ bench }) => {
  await bench.open("brief");
  await bench.choose("room_use", "store");
  await bench.open("air");
  await bench.reads("damp-room", /no moisture/);
  await bench.open("brief");
  await bench.unfold("fold-sources");
  await bench.type("showers", "2");
  await bench.type("unvented_kerosene", "2");
  await bench.open("air");
  await bench.settled();
  await bench.reads("damp-room", /kg of water a day/);
  await bench.type("damper_count", "3");
  await bench.seen("fan-table");
  await bench.open("build");
  await bench.reads("cautions", /A flame without a flue/);
}, { clean: false });

journey("you stand in it, and the ladder adds up", async ({ bench, driver }) => {
  await bench.open("fit");
  assert.match(await bench.text("own-height"), /539 mm over your head/);
  await driver.click('[data-testid="own-height"] .nudge:last-of-type');
  assert.match(await bench.text("own-height"), /over your head/);
  await bench.reads("ladder", /2,289 mm/);
}, { clean: false });
