// What hands do: undo, Back, swipes, links, and what a host's own page does meanwhile.
import assert from "node:assert/strict";
import { test } from "node:test";

import { screens } from "../browser.mjs";
import { journeys } from "../begin.mjs";

const { journey, begin, objects } = journeys();

journey("every change is undone and done again, starting over too", async ({ bench }) => {
  await bench.step("roof", "more");
  await bench.step("roof", "more");
  await bench.treat("leave_bare");
  assert.equal(await bench.foam("roof"), "85 mm");
  await bench.undo();
  await bench.undo();
  assert.equal(await bench.foam("roof"), "80 mm");
  await bench.redo();
  assert.equal(await bench.foam("roof"), "85 mm");
  await bench.startOver();
  assert.equal(await bench.foam("roof"), "75 mm");
  await bench.undo();
  assert.equal(await bench.foam("roof"), "85 mm");
});

journey("a key press is one step, a pull is one step however long", async ({ bench, driver, visit }) => {
  const box = await driver.box('[data-testid="slider-walls"]');
  await visit.page.mouse.move(box.x + 30, box.y + 10);
  await visit.page.mouse.down();
  for (let x = 0; x < 80; x += 8) await visit.page.mouse.move(box.x + 30 + x, box.y + 10);
  await visit.page.mouse.up();
  assert.notEqual(await bench.foam("walls"), "50 mm");
  assert.equal((await bench.steps()).length, 1);
  await bench.undo();
  assert.equal(await bench.foam("walls"), "50 mm");
});

journey("a swipe never changes the design, wherever it begins", async ({ bench, driver, visit }) => {
  await bench.chip("walls");
  const session = await visit.context.newCDPSession(visit.page);
  for (const part of ['[data-testid="slider-walls"]', '[data-testid="grip-wall"]', '[data-testid="grip-ceiling"]', ".sheet"]) {
    const box = await driver.box(part);
    const [x, y] = [box.x + box.width / 2, box.y + Math.min(box.height / 2, 40)];
    const touch = (type, dy) => session.send("Input.dispatchTouchEvent", { type, touchPoints: type === "touchEnd" ? [] : [{ x, y: y + dy }] });
    await touch("touchStart", 0);
    for (let dy = -10; dy >= -160; dy -= 10) await touch("touchMove", dy);
    await touch("touchEnd", 0);
  }
  assert.equal(await bench.foam("walls"), "50 mm");
  assert.equal(await bench.foam("roof"), "75 mm");
}, { screen: "phone", hasTouch: true });

journey("Back goes to the sheet before, then leaves, and who comes back finds the design", async ({ bench, visit }) => {
  const page = visit.page;
  await bench.step("roof", "more");
  await bench.open("heat");
  await bench.open("air");
  await page.waitForTimeout(500);
  await page.goBack();
  await bench.opened("heat");
  assert.equal(await bench.foam("roof"), "80 mm");
  await page.goto("about:blank");
  await page.goBack();
  await bench.ready();
  assert.equal(await bench.foam("roof"), "80 mm");
}, { clean: false });

journey("a host's own anchors leave the design alone, and a reload keeps it", async ({ bench, visit }) => {
  await bench.step("roof", "more");
  await visit.page.waitForTimeout(600);
  await visit.page.evaluate(() => (location.hash = "#yard"));
  await visit.page.waitForTimeout(200);
  assert.equal(await bench.foam("roof"), "80 mm");
  await visit.page.reload();
  await bench.ready();
  assert.equal(await bench.foam("roof"), "80 mm");
}, { clean: false });

journey("a link brings everything back, and is copied by a button that says so", async ({ bench, driver, visit }) => {
  await visit.context.grantPermissions(["clipboard-read", "clipboard-write"]);
  await bench.step("walls", "more");
  await bench.open("heat");
  await driver.click('[data-testid="copy-link"]');
  await driver.until((host) => host.shadowRoot.textContent.includes("The link is copied."));
  const link = await visit.page.evaluate(() => navigator.clipboard.readText());
  assert.match(link, /#v=1&.*side_wall_foam_mm=55.*;heat$/);
  await visit.page.goto("about:blank");
  await visit.page.goto(link);
  await bench.ready();
  assert.equal(await bench.foam("walls"), "55 mm");
  assert.equal(await bench.openSheet(), "heat");
}, { clean: false });

test("a stranger's words in a link are never repeated, and a megabyte of them is refused", async () => {
  const visit = await begin();
  for (const fragment of ["#v=1&Call_0900_for_a_refund=1", `#v=1&${"a=1&".repeat(262_144)}`, "#v=9&stud_depth_mm=64", "#v=1;Buy_now=1"]) {
    await visit.open("");
    const { bench, driver } = objects(visit);
    const start = Date.now();
    await visit.page.evaluate((fragment) => (location.hash = fragment), fragment);
    await bench.ready();
    await driver.until((host) => host.shadowRoot.querySelector('[data-testid="link-unread"]'));
    assert.ok(Date.now() - start < 8000);
    const said = await driver.evaluate((host) => host.shadowRoot.textContent);
    assert.ok(!/refund|0900|Buy_now|a=1/.test(said));
  }
  await visit.end();
});

test("two planners on one page keep their own choices, and a planner that moves keeps its own", async () => {
  const visit = await begin();
  await visit.openHost("<main><inchwise-planner></inchwise-planner></main><inchwise-planner></inchwise-planner>");
  const [first, second] = [objects(visit, 0).bench, objects(visit, 1).bench];
  await first.ready();
  await second.ready();
  await first.ready();
  await first.step("roof", "more");
  assert.equal(await second.foam("roof"), "75 mm");
  await visit.page.evaluate(() => {
    const planner = document.querySelector("inchwise-planner");
    document.body.append(planner);
  });
  const moved = objects(visit, 1).bench;
  await moved.ready();
  assert.equal(await moved.foam("roof"), "80 mm", "what was chosen stays through a move");
  assert.equal(visit.fetched().filter((name) => name.startsWith("planner_bg.wasm")).length, 1);
  await visit.wasQuiet();
  await visit.end();
});

test("the host's attributes and properties reach the planner, at the start and later", async () => {
  const visit = await begin();
  await visit.openHost('<inchwise-planner design="v=1&amp;ceiling_foam_mm=60"></inchwise-planner>');
  const { bench, driver } = objects(visit);
  await bench.ready();
  assert.equal(await bench.foam("roof"), "60 mm");
  await bench.step("roof", "more");
  await bench.startOver();
  assert.equal(await bench.foam("roof"), "60 mm", "starting over goes back to the host's design");
  await driver.setHostAttribute("design", "v=1&ceiling_foam_mm=110");
  await driver.until((host) => host.shadowRoot.textContent.includes("110"));
  await driver.setHostAttribute("language", "fr");
  await driver.until((host) => host.shadowRoot.textContent.includes("Espace libre"));
  await driver.setHostAttribute("units", "imperial");
  await driver.until((host) => host.shadowRoot.textContent.includes("″") || host.shadowRoot.textContent.includes("po"));
  await visit.end();
  assert.ok(screens.phone);
});
