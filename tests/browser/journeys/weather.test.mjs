// Where the year's hours come from: a file of the visitor's own, a shop's own places, a link.
import assert from "node:assert/strict";
import { after, before, test } from "node:test";

import { launch, screens } from "../browser.mjs";
import { Planner } from "../planner.page.mjs";
import { serve } from "../site.mjs";
import { Visit } from "../visit.mjs";

let browser, site;
before(async () => ([browser, site] = await Promise.all([launch(), serve()])));
after(() => Promise.all([browser?.close(), site?.stop()]));

const begin = (options) => Visit.begin(browser, site, { viewport: screens.desktop, ...options });

const hosted = async (visit, attributes = "") => {
  await visit.openHost(`<main><inchwise-planner ${attributes}></inchwise-planner></main>`);
  return new Planner(visit.page).ready();
};

/** Asks until it is so; the worker answers in its own time. */
const soon = async (is, what) => {
  for (let left = 80; left > 0; left--) {
    if (await is()) return;
    await new Promise((resolve) => setTimeout(resolve, 100));
  }
  assert.fail(what);
};

const HEAD = "hour,temperature_c,dew_point_c,global_horizontal_w_m2";
/** A year at one temperature without sun, some of its lines written otherwise. */
const yearFile = (celsius, lines = {}) => {
  const rows = Array.from({ length: 8760 }, (_, hour) => lines[hour] ?? `${hour},${celsius},-45,0`);
  return { name: "yard.csv", mimeType: "text/csv", buffer: Buffer.from([HEAD, ...rows].join("\n")) };
};

test("a year of hours from a file is run on, and the place's comes back", async () => {
  const visit = await begin();
  const planner = await hosted(visit);
  await planner.settled();
  const usual = await planner.yearHeat();
  const asked = visit.requests.length;
  await planner.giveHours(yearFile(-30));
  await soon(async () => (await planner.yearHeat()) > 1.5 * usual, "a year at −30 °C takes more heat");
  assert.match(await planner.placeLine(), /^yard\.csv .*this page only.*Varnholm Flats/);
  assert.match(await planner.hoursSaid(), /runs on the hours of yard\.csv/);
  assert.match(await planner.placeLine(), /17,520 K·d below 18 °C/); // 365 days of 48 K
  await soon(async () => /power cut at −30/.test(await planner.yearVerdicts()), "its own winter");
  assert.equal(visit.requests.length, asked, "nothing is sent anywhere");
  const winter = await planner.placeFigure("winter_design");
  assert.equal(await winter.inputValue(), "−30");
  assert.notEqual(await winter.getAttribute("readonly"), null);
  assert.equal(await (await planner.placeFigure("latitude")).getAttribute("readonly"), null);
  await planner.backFromHours();
  await soon(async () => (await planner.yearHeat()) === usual, "the place's year comes back");
  assert.doesNotMatch(await planner.placeLine(), /yard/);
  await visit.wasQuiet();
  await visit.end();
});

test("hours with more sun than the latitude has are taken with a warning", async () => {
  const visit = await begin();
  const planner = await hosted(visit);
  await planner.settled();
  const bright = Object.fromEntries(Array.from({ length: 8760 }, (_, n) => [n, `${n},5,-5,300`]));
  await planner.giveHours(yearFile(5, bright));
  await soon(async () => /more sun than can reach/.test(await planner.placeLine()), "told");
  const latitude = await planner.placeFigure("latitude");
  await latitude.fill("0");
  await latitude.press("Enter");
  await soon(async () => !/more sun/.test(await planner.placeLine()), "the equator has it");
  await visit.wasQuiet();
  await visit.end();
});

test("what is wrong with a file is told by line, and the year stays", async () => {
  const visit = await begin();
  const planner = await hosted(visit);
  await planner.settled();
  const usual = await planner.yearHeat();
  const cold = Object.fromEntries(Array.from({ length: 9 }, (_, n) => [n, `${n},cold,-8,0`]));
  await planner.giveHours(yearFile(-5, cold));
  await soon(async () => (await planner.hourFaults()).length === 6, "five faults and how many more");
  const faults = await planner.hourFaults();
  assert.match(faults[0], /Line 2, temperature_c: “cold”/);
  assert.match(faults[4], /Line 6/);
  assert.match(faults[5], /4 more/);
  assert.match(await planner.hoursSaid(), /yard\.csv cannot be used/);
  await planner.giveHours({ name: "list.csv", mimeType: "text/csv", buffer: Buffer.from("a,b\n1,2\n") });
  await soon(async () => (await planner.hourFaults()).length === 3, "three columns are missing");
  const large = { name: "all.csv", mimeType: "text/csv", buffer: Buffer.alloc(11e6, "#") };
  await planner.giveHours(large);
  await soon(async () => /all\.csv is larger than 10 MB/.test(await planner.hoursSaid()), "too large");
  assert.deepEqual(await planner.hourFaults(), []);
  assert.equal(await planner.yearHeat(), usual);
  await planner.giveHours(yearFile(-30));
  await soon(async () => (await planner.yearHeat()) > usual, "a file put right is taken");
  await visit.wasQuiet();
  await visit.end();
});

test("a file can be dropped, and its form is shown and saved", async () => {
  const visit = await begin();
  const planner = await hosted(visit);
  await planner.settled();
  const usual = await planner.yearHeat();
  await planner.dropHours(yearFile(-30));
  await soon(async () => (await planner.yearHeat()) > usual, "a dropped file is taken");
  const saved = await planner.saveExample();
  assert.match(saved, /^hour,temperature_c,dew_point_c,global_horizontal_w_m2\n0,/);
  await visit.wasQuiet();
  await visit.end();
});

/** A table of one shop's places; the third line is none. */
const shopTable = (months) => `# Measured by the shop.
# name|...
Grebewick Yard|XT||5200|1000|100|20|-300|240|${months}
Nowhere|XT
`;
const flat = (value) => Array(12).fill(value).join(" ");
const MONTHS = [flat(-100), flat(80), flat(200), flat(150)].join("|");

test("a shop's own places are found first and marked; a bad line is told and breaks nothing", async () => {
  const visit = await begin();
  const table = new URL("yard.txt", site.address).href;
  await visit.context.route(table, (route) => route.fulfill({ body: shopTable(MONTHS) }));
  const warnings = [];
  visit.page.on("console", (message) => message.type() === "warning" && warnings.push(message.text()));
  const planner = await hosted(visit, 'places="yard.txt"');
  await planner.settled();
  const usual = await planner.yearHeat();
  const [first, ...others] = await planner.searchPlaces("gre");
  assert.match(first, /^Grebewick Yard, XT \(this shop’s own\)$/);
  assert.ok(others.length > 0 && others.every((name) => !name.includes("shop’s")));
  assert.ok(warnings.some((text) => /line 4 of the table of places/.test(text)), warnings.join("\n"));
  await visit.page.keyboard.press("Enter");
  await soon(async () => (await planner.yearHeat()) !== usual, "the year is that of the shop's place");
  assert.match(await planner.placeLine(), /^Grebewick Yard, XT The shop’s own figures/);
  await visit.wasQuiet();
  await visit.end();
});

test("places of another host are refused in plain words, and the search works without", async () => {
  const visit = await begin();
  const warnings = [];
  visit.page.on("console", (message) => message.type() === "warning" && warnings.push(message.text()));
  const planner = await hosted(visit, 'places="https://elsewhere.invalid/yard.txt"');
  assert.ok((await planner.searchPlaces("yellowk")).some((name) => /Yellowknife/.test(name)));
  assert.ok(warnings.some((text) => /this host only/.test(text)), warnings.join("\n"));
  await visit.wasQuiet();
  await visit.end();
});

test("a link opens with the year that was chosen", async () => {
  const visit = await begin();
  const planner = await hosted(visit, "address");
  await planner.settled();
  await planner.typeDepth("100");
  await planner.chooseHeater("air_source_heat_pump");
  await planner.goToPlace("yellowk");
  const winter = await planner.placeFigure("winter_design");
  await winter.fill("-41.5");
  await winter.press("Enter");
  await soon(async () => /winter_design=-41.5/.test(await planner.link()), "the link has the year");
  const link = await planner.link();
  assert.match(link, /^#v=1&.*side_wall_foam_mm=100.*;heater=air_source_heat_pump&place=Yellowknife/);
  await soon(async () => new URL(visit.page.url()).hash === link, "so has the address");
  await planner.settled();
  const heat = await planner.yearHeat();
  await visit.page.reload();
  await planner.ready();
  await planner.settled();
  await soon(async () => /Yellowknife.*Changed by hand/.test(await planner.placeLine()), "its place");
  await soon(async () => (await planner.yearHeat()) === heat, "the same year again");
  assert.match(await planner.reading(), /^100\b/);
  assert.equal(new URL(visit.page.url()).hash, link);
  // Another link, of the design alone, leads back to the usual year.
  await visit.page.evaluate(() => (location.hash = "#v=1&side_wall_foam_mm=60"));
  await soon(async () => /^Varnholm/.test(await planner.placeLine()), "the usual place");
  await visit.wasQuiet();
  await visit.end();
});

test("starting over takes design, year, place and link back", async () => {
  const visit = await begin();
  const planner = await hosted(visit, 'address year="electricity_price=0.16&amp;prices_of=2026-11-02"');
  await planner.settled();
  const usual = await planner.yearHeat();
  const changeYear = async () => {
    await planner.open("use");
    await planner.type("person_count", "5");
    await planner.chooseHeater("wood_stove");
    await soon(async () => /person_count=5.*;heater=wood_stove/.test(await planner.link()), "the link has the year");
  };
  const isUsual = async (why) => {
    await soon(async () => (await planner.link()) === "#v=1", `the link, ${why}`);
    await soon(async () => new URL(visit.page.url()).hash === "#v=1", `the address, ${why}`);
    await soon(async () => (await planner.yearHeat()) === usual, `the year, ${why}`);
    assert.match(await planner.placeLine(), /^Varnholm/);
    // Boxes out of sight show it at the next rest.
    await planner.settled();
    // What the host chose stays chosen.
    assert.match(await planner.yearFigures(), /prices of 2026-11-02/);
  };
  await planner.typeDepth("100");
  await changeYear();
  assert.match(await planner.goToPlace("yellowk"), /Yellowknife/);
  await soon(async () => /heater=wood_stove&place=Yellowknife/.test(await planner.link()), "the link has the place");
  await planner.startOver();
  await isUsual("with another design");
  assert.match(await planner.reading(), /^50\b/);
  await changeYear();
  await planner.startOver();
  await isUsual("with the usual design");
  await planner.giveHours(yearFile(-30));
  await soon(async () => /yard\.csv/.test(await planner.placeLine()), "hours of one's own");
  await planner.startOver();
  await isUsual("on hours of one's own");
  await visit.wasQuiet();
  await visit.end();
});

test("what is being typed stays while fields are solved", async () => {
  const visit = await begin();
  const planner = await hosted(visit, "address");
  await planner.settled();
  const box = await planner.yearChoice("year-heater", "heater_limit");
  await box.fill("5000");
  await planner.setAttribute("design", "v=1&side_wall_foam_mm=110&front_end_foam_mm=110&door_end_foam_mm=110");
  await soon(async () => /^110\b/.test(await planner.reading()), "the design is there");
  await planner.settled();
  assert.equal(await box.inputValue(), "5000");
  await box.blur();
  await soon(async () => /heater_limit=5000/.test(await planner.link()), "and is taken");
  await visit.wasQuiet();
  await visit.end();
});

test("starting over takes back a link that could not be read", async () => {
  const visit = await begin();
  const planner = await hosted(visit, "address");
  await visit.page.evaluate(() => (location.hash = "#v=1&side_wall_foam_mm=thick;people=3"));
  const said = planner.host.getByText(/link could not be read in full/);
  await said.waitFor();
  await planner.startOver();
  await said.waitFor({ state: "hidden" });
  await soon(async () => new URL(visit.page.url()).hash === "#v=1", "the address is the usual one");
  await visit.wasQuiet();
  await visit.end();
});

test("what a link asks and cannot be is named, and the rest is taken", async () => {
  const visit = await begin();
  const planner = await hosted(visit, 'address year="electricity_price=0.16&amp;prices_of=2026-11-02"');
  await visit.page.evaluate(() => {
    location.hash = "#v=1;heater=sun&people=1.5&setback=4&place=Atlantis&nonsense&temperature_1=%00";
  });
  const said = () => planner.unusedOfLink();
  await soon(async () => /place/.test(await said()), "the place is not found");
  assert.match(await said(), /heater, nonsense, temperature_1, people, place\./);
  await soon(async () => (await planner.link()) === "#v=1&setback_k=4", "what can be is taken");
  assert.ok((await planner.yearHeat()) > 1000);
  await visit.wasQuiet();
  await visit.end();
});

test("an earlier link opens, its people and its months in the design", async () => {
  const visit = await begin();
  const planner = await hosted(visit, "address");
  await planner.settled();
  await visit.page.evaluate(() => {
    location.hash = "#v=1&coldest_month_c=-20&steel_sun_rise_k=3;people=5&fan_above=27&moisture_in_use=0.00005";
  });
  await soon(async () => /moisture_in_use/.test(await planner.unusedOfLink()), "what is not used any more is told");
  await soon(
    async () => /^#v=1&person_count=5&fan_cools_above_c=27;place=&temperature_1=-20&/.test(await planner.link()),
    "the link is of today",
  );
  assert.match(await planner.placeLine(), /Changed by hand/);
  await visit.wasQuiet();
  await visit.end();
});

test("figures of a place show and read in imperial units", async () => {
  const visit = await begin();
  const planner = await hosted(visit, "address");
  await planner.settled();
  const winter = await planner.placeFigure("winter_design");
  const metric = await winter.inputValue();
  await planner.switchUnits("imperial");
  await soon(async () => (await winter.inputValue()) !== metric, "degrees Fahrenheit");
  assert.match(await planner.placeLine(), /°F·d below 65\s°F/);
  await winter.fill("-40");
  await winter.press("Enter");
  const height = await planner.placeFigure("elevation");
  await height.fill("1,000 ft");
  await height.press("Enter");
  await soon(async () => /elevation=304.8&winter_design=-40$/.test(await planner.link()), "in SI inside");
  await planner.switchUnits("metric");
  await soon(async () => (await winter.inputValue()) === "−40", "the same in Celsius");
  await visit.wasQuiet();
  await visit.end();
});
