// What a visitor does on the bench, and what it answers.
import assert from "node:assert/strict";

import { journeys } from "../begin.mjs";
import { number } from "../pages/bench.mjs";

const { journey } = journeys();

journey("a longer box gives a longer room and a larger load", async ({ bench }) => {
  const before = await bench.answer();
  await bench.chooseBox("40_high_cube");
  await bench.settled();
  const after = await bench.answer();
  assert.ok(after.clear[0] > before.clear[0] && after.clear[2] > before.clear[2]);
  assert.ok(after.load > before.load);
});

journey("foam up to the frame is free of room, past it takes room, always saves heat", async ({ bench }) => {
  const at = async (steps) => {
    for (let step = 0; step < steps; step++) await bench.step("walls", "more");
    await bench.settled();
    return bench.answer();
  };
  const [thin, flush, past] = [await at(0), await at(2), await at(8)];
  assert.equal(thin.clear[1], flush.clear[1]);
  assert.ok(past.clear[1] < flush.clear[1]);
  assert.ok(thin.load > flush.load && flush.load > past.load);
});

journey("a seller sees one step more on the ceiling as deltas beside every headline", async ({ bench }) => {
  assert.equal(await bench.delta("load"), "");
  await bench.step("roof", "more");
  await bench.settled();
  await bench.cost();
  assert.equal(await bench.delta("clear"), "as before");
  assert.match(await bench.delta("load"), /^−\d+ W$/);
  assert.match(await bench.delta("cost"), /^−\d+$/);
  assert.deepEqual(await bench.steps(), ["Ceiling foam 75\u00a0mm → 80\u00a0mm"]);
});

journey("what one more step would do is said before it is pressed, and comes to that", async ({ bench, driver }) => {
  const said = () => driver.evaluate((host) => host.shadowRoot.querySelector('[data-testid="control-wall-foam"] .one-more').textContent);
  await driver.until((host) => /W/.test(host.shadowRoot.querySelector('[data-testid="control-wall-foam"] .one-more').textContent));
  const promised = number((await said()).replace(/^\+5\s?mm:.*?(?=[−+])/u, ""));
  const before = (await bench.answer()).load;
  await bench.step("walls", "more");
  await bench.settled();
  const came = (await bench.answer()).load - before;
  // Both are rounded: the load to 10 or 50 W.
  assert.ok(Math.abs(came - promised) <= 50, `promised ${promised}, came ${came}`);
});

journey("each treatment says what it would change, and dropping the ceiling costs headroom", async ({ bench, driver }) => {
  const covered = await bench.answer();
  await driver.until((host) => [...host.shadowRoot.querySelectorAll(".card-said")].every((it) => !it.textContent.includes("…")), undefined, { timeout: 60_000 });
  const cards = await driver.texts(".card");
  assert.ok(cards.every((card) => /W|mm|L|frost|does not fit/.test(card.split("\n").slice(1).join(" "))), cards.join(" | "));
  await bench.treat("drop_ceiling");
  await bench.settled();
  const dropped = await bench.answer();
  assert.ok(dropped.clear[2] < covered.clear[2]);
  assert.equal(dropped.clear[0], covered.clear[0]);
});

journey("a foam face moves by the arrow keys, 5 mm or a quarter of an inch", async ({ bench }) => {
  await bench.keys("grip-ceiling", "ArrowDown");
  assert.equal(await bench.foam("roof"), "80 mm");
  await bench.keys("slider-walls", "ArrowRight", "ArrowRight");
  assert.equal(await bench.foam("walls"), "60 mm");
  await bench.keys("slider-walls", "Shift+ArrowRight");
  assert.equal(await bench.foam("walls"), "61 mm");
});

journey("the cold places carry the same numbers on the drawing and in the list", async ({ bench, dry }) => {
  const listed = (await dry.places()).filter((row) => row.number).map((row) => row.number);
  assert.ok(listed.length >= 3, `${listed.length} numbered`);
  const drawn = new Set(await bench.numbers());
  await bench.show("plan");
  for (const number of await bench.numbers()) drawn.add(number);
  assert.deepEqual([...drawn].sort(), listed.sort());
});

journey("figures that stand twice are the same", async ({ bench, dry, heat }) => {
  assert.equal(await dry.verdict(), await bench.verdict());
  await bench.open("heat");
  const [total, load] = [await heat.total(), (await bench.answer()).load];
  assert.ok(Math.abs(total - load) <= 50, `${total} and ${load}`);
  const [kwh, cost] = [await heat.yearHeat(), await bench.cost()];
  // The demo page's price of a kilowatt hour; both figures are rounded.
  assert.ok(Math.abs(kwh * 0.16 - cost) < 2, `${kwh} kWh, ${cost}`);
  await bench.open("fit");
  assert.match(await bench.text("sizes"), new RegExp((await bench.answer()).clear[0].toLocaleString("en")));
});

journey("a page may ask the engine itself", async ({ bench, visit }) => {
  const evaluation = await visit.page.evaluate(async () => {
    const { evaluate } = await import(new URL("embed.js", document.baseURI).href);
    return (await evaluate({})).evaluation;
  });
  const shown = await bench.answer();
  assert.equal(Math.round(evaluation.room.clear.width_m * 1000), shown.clear[1]);
  assert.ok(Math.abs(evaluation.heat_loss.design_load_w - shown.load) <= 50);
});

for (const screen of ["phone", "tablet", "desktop"]) {
  journey(`answer, drawing and controls are seen together on a ${screen}, whatever is open`, async ({ bench, driver, visit }) => {
    const { height } = visit.page.viewportSize();
    for (const sheet of ["brief", "fit", "dry", "heat", "air", "build"]) {
      await bench.open(sheet);
      for (const part of [".answer", ".drawings", ".control.shown", ".names", ".sheet-holder"]) {
        const box = await driver.box(part);
        assert.ok(box.y >= -1 && box.y + box.height <= height + 1 && box.height > 40, `${sheet} ${part} ${JSON.stringify(box)}`);
      }
    }
    await visit.wasQuiet();
  }, { screen, clean: false });
}

journey("a buyer on a phone finds size, damp and cost within two taps each", async ({ bench, driver }) => {
  assert.match(await bench.figure("clear"), /5,748 × 2,202 × 2,289/);
  assert.match(await bench.figure("cost"), /XTS/);
  assert.match(await driver.text('[data-testid="answer-drip"] .short'), /frost/);
  await bench.open("dry");
  assert.match(await bench.text("verdict"), /cold spells/);
}, { screen: "phone" });
