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

test("two planners on one page keep their own choices", async () => {
  const visit = await begin();
  await visit.openHost("<inchwise-planner></inchwise-planner><inchwise-planner></inchwise-planner>");
  const [first, second] = [new Planner(visit.page, 0), new Planner(visit.page, 1)];
  await first.ready();
  await first.settled();
  await second.ready();
  const untouched = await second.reading();
  await first.deepenByKeys(4);
  assert.notEqual(await first.reading(), untouched);
  assert.equal(await second.reading(), untouched);
  assert.equal(visit.fetched().filter((name) => name === "planner_bg.wasm").length, 1);
  await visit.wasClean();
  await visit.end();
});

test("a planner taken out and put back lives again", async () => {
  const visit = await begin();
  await visit.openHost("<main><inchwise-planner><p>Worked sizes</p></inchwise-planner></main>");
  const planner = await new Planner(visit.page).ready();
  await visit.page.evaluate(() => {
    window.kept = document.querySelector("inchwise-planner");
    window.kept.remove();
  });
  assert.equal(await visit.page.evaluate(() => window.kept.shadowRoot.querySelector("div")), null);
  await visit.page.evaluate(() => document.querySelector("main").append(window.kept));
  await planner.ready();
  const before = await planner.reading();
  await planner.deepenByKeys(1);
  assert.notEqual(await planner.reading(), before);
  await visit.wasClean();
  await visit.end();
});

test("moving a planner about while it loads leaves exactly one", async () => {
  const visit = await begin();
  await visit.openHost("<main><inchwise-planner></inchwise-planner></main>");
  await visit.page.evaluate(() => {
    const [main, planner] = [document.querySelector("main"), document.querySelector("inchwise-planner")];
    for (let turn = 0; turn < 5; turn++) {
      planner.remove();
      main.append(planner);
    }
  });
  const planner = await new Planner(visit.page).ready();
  assert.equal(await planner.depth.count(), 1);
  await visit.wasClean();
  await visit.end();
});

test("the host's attributes reach the planner, at the start and later", async () => {
  const visit = await begin();
  await visit.openHost('<inchwise-planner design="v=1&amp;side_wall_foam_mm=60&amp;front_end_foam_mm=60&amp;door_end_foam_mm=60"></inchwise-planner>');
  const planner = await new Planner(visit.page).ready();
  assert.match(await planner.reading(), /^60\b/);
  await planner.typeDepth("90");
  await planner.startOver();
  await planner.settled();
  assert.match(await planner.reading(), /^60\b/, "starting over goes back to the host's design");
  await planner.setAttribute("design", "v=1&side_wall_foam_mm=110&front_end_foam_mm=110&door_end_foam_mm=110");
  await visit.page.waitForFunction(
    () => document.querySelector("inchwise-planner").shadowRoot.textContent.includes("110"),
  );
  await visit.end();
});

test("a planner far below the screen costs the page nothing until it comes near", async () => {
  const visit = await begin();
  const far = '<svg width="1" height="6000" aria-hidden="true"></svg>';
  await visit.openHost(`${far}<inchwise-planner><p>Worked sizes</p></inchwise-planner>`);
  await visit.page.waitForTimeout(400);
  assert.ok(visit.fetched().includes("embed.js"));
  assert.ok(!visit.fetched().includes("planner_bg.wasm"));
  await new Planner(visit.page).ready();
  assert.ok(visit.fetched().includes("planner_bg.wasm"));
  await visit.end();
});

test("if the planner cannot start, what the page wrote stays and a quiet line says so", async () => {
  const visit = await begin();
  await visit.context.route("**/*_bg.wasm", (route) => route.abort());
  await visit.openHost("<inchwise-planner><p>Worked sizes</p></inchwise-planner>");
  const planner = new Planner(visit.page);
  await planner.apology.waitFor();
  assert.ok(await visit.page.getByText("Worked sizes").isVisible());
  assert.equal(await planner.isLive(), false);
  await visit.end();
});

test("the quiet line speaks the page's language", async () => {
  const visit = await begin();
  await visit.context.route("**/planner.css", (route) => route.fulfill({ status: 404 }));
  await visit.openHost('<div lang="fr-CA"><inchwise-planner></inchwise-planner></div>');
  const planner = new Planner(visit.page);
  await planner.apology.waitFor();
  assert.match(await planner.apology.innerText(), /démarrer/);
  await visit.end();
});

test("without the further part the first one works, and a quiet line says what is missing", async () => {
  const visit = await begin();
  await visit.context.route("**/further_bg.wasm", (route) => route.fulfill({ status: 404 }));
  await visit.openHost("<inchwise-planner></inchwise-planner>");
  const planner = new Planner(visit.page);
  await planner.further.getByRole("status").waitFor();
  const before = await planner.reading();
  await planner.deepenByKeys(1);
  assert.notEqual(await planner.reading(), before);
  await planner.settled();
  assert.ok((await planner.answer()).load > 0);
  await visit.end();
});

test("with scripts off the page still tells worked sizes, and what to do for others", async () => {
  const visit = await begin({ javaScriptEnabled: false });
  await visit.open();
  const sizes = visit.page.getByRole("table", { name: /usual build/ });
  assert.ok(await sizes.isVisible());
  assert.match(await sizes.getByRole("row").nth(1).innerText(), /20 foot\s+\d\.\d\d × .* kW/);
  const words = visit.page.locator("inchwise-planner noscript p");
  assert.match(await words.innerText(), /scripts allowed/);
  assert.ok((await words.boundingBox()).height > 0);
  assert.deepEqual(visit.foreign, []);
  await visit.end();
});
