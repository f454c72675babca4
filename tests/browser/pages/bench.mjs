// The bench as a visitor meets it: the answer, the drawing, the four controls, the steps.
import assert from "node:assert/strict";

/** Plain spaces for all kinds of them. */
export const plain = (text) => text.replace(/[\u00a0\u202f]/g, " ");

/** The first number of a text, whatever groups its digits. */
export const number = (text) => Number(plain(text).replace(/−/g, "-").replace(/[, ](?=\d{3})/g, "").match(/-?\d+(\.\d+)?/)?.[0]);

const id = (name) => `[data-testid="${name}"]`;

export class Bench {
  constructor(driver) {
    this.driver = driver;
  }

  /** Brings the planner on screen and waits until it stands. */
  async ready() {
    await this.driver.scrollToHost();
    await this.driver.until((host) => ["working", "ready"].includes(host.dataset.state));
    await this.driver.until((host) => host.shadowRoot.querySelector('[data-progress="there"]'));
    return this;
  }

  /** Waits until every figure is of the present design. */
  async settled() {
    await this.driver.until((host) => host.dataset.state === "ready", undefined, { timeout: 60_000 });
    return this;
  }

  /** What is wrong with the host's planner: loading, working, ready, lost, failed. */
  state() {
    return this.driver.hostAttribute("data-state");
  }

  async figure(name) {
    return plain(await this.driver.text(`${id(`answer-${name}`)} .value`));
  }

  async delta(name) {
    return plain(await this.driver.text(`${id(`answer-${name}`)} .delta`));
  }

  /** The answer in numbers. */
  async answer() {
    const clear = (await this.figure("clear")).split("×").map(number);
    return { clear, lost: number(await this.figure("lost")), load: number(await this.figure("load")) };
  }

  async cost() {
    await this.driver.until((host) => !host.shadowRoot.querySelector('[data-testid="answer-cost"].waiting'));
    return number(await this.figure("cost"));
  }

  async verdict() {
    return plain(await this.driver.evaluate((host) =>
      host.shadowRoot.querySelector('[data-testid="answer-drip"] .long').textContent));
  }

  /** What a foam control reads: walls or roof. */
  async foam(hand) {
    return plain(await this.driver.evaluate((host, hand) => {
      const control = hand === "walls" ? "control-wall-foam" : "control-ceiling-foam";
      return host.shadowRoot.querySelector(`[data-testid="${control}"] .foam-value`).textContent;
    }, hand));
  }

  /** One step more or less of a foam. */
  step(hand, way) {
    return this.driver.click(id(`${hand}-${way}`));
  }

  /** Presses keys on a slider: `slider-walls`, `grip-ceiling`. */
  async keys(name, ...keys) {
    await this.driver.focus(id(name));
    for (const key of keys) await this.driver.press(key);
  }

  treat(treatment) {
    return this.driver.click(`label:has(${id(`treatment-${treatment}`)})`);
  }

  chooseBox(size) {
    return this.driver.select(id("control-box"), size);
  }

  units(units) {
    return this.driver.click(`label:has(${id(`units-${units}`)})`);
  }

  show(drawing) {
    return this.driver.click(id(`drawing-${drawing}`));
  }

  chip(control) {
    return this.driver.click(id(`chip-${control}`));
  }

  /** Opens a sheet and waits until it is there. */
  async open(sheet) {
    await this.driver.click(id(`name-${sheet}`));
    await this.opened(sheet);
  }

  async opened(sheet) {
    await this.driver.until(
      (host, sheet) => host.shadowRoot.querySelector(`[data-testid="sheet-${sheet}"][data-progress="there"]`),
      sheet,
    );
  }

  openSheet() {
    return this.driver.attribute(".planner", "data-sheet");
  }

  /** Opens what is folded. */
  async unfold(name) {
    if ((await this.driver.attribute(id(name), "open")) === null) {
      await this.driver.click(`${id(name)} > summary`);
    }
    await this.driver.present(`${id(name)} > .disclosed > *`);
  }

  /** Types into a field of the open sheet. */
  type(field, text) {
    return this.driver.fill(id(`field-${field}`), text);
  }

  async reading(field) {
    return plain(await this.driver.value(id(`field-${field}`)));
  }

  async fault(field) {
    return plain(await this.driver.evaluate((host, field) =>
      host.shadowRoot.getElementById(`${field}-fault`).textContent, field)).trim();
  }

  choose(control, option) {
    return this.driver.select(id(`control-${control}`), option);
  }

  undo() {
    return this.driver.click(id("undo"));
  }

  redo() {
    return this.driver.click(id("redo"));
  }

  startOver() {
    return this.driver.click(id("start-over"));
  }

  steps() {
    return this.driver.texts(".step-list li");
  }

  async reason() {
    return plain(await this.driver.text(id("reason")));
  }

  async isLive() {
    return (await this.driver.count(".planner")) === 1;
  }

  /** The numbers of the cold places on the drawing. */
  numbers() {
    return this.driver.texts(".drawings .spot-number");
  }

  async text(name) {
    return plain(await this.driver.text(id(name)));
  }

  async seen(name) {
    await this.driver.present(id(name));
  }

  /** Waits until what stands there reads so. */
  async reads(name, pattern) {
    await this.driver.until(
      (host, [name, source]) => {
        const there = host.shadowRoot.querySelector(`[data-testid="${name}"]`);
        return there && new RegExp(source).test(there.textContent.replace(/[\u00a0\u202f]/g, " "));
      },
      [name, pattern.source],
    );
  }

  async doesNotCover() {
    const cost = await this.driver.box(id("answer-cost"));
    assert.ok(cost.width > 0);
  }
}
