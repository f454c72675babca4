// The planner as a visitor meets it. Every selector lives here: journeys speak of what people do.
import assert from "node:assert/strict";

const LISTS = {
  spots: { rows: ".spots-table tbody tr", behind: "further-row", control: "button" },
  losses: { rows: ".losses tbody tr", behind: "small", control: "summary" },
};

export class Planner {
  /** The `index`-th planner on the page. */
  constructor(page, index = 0) {
    this.page = page;
    this.host = page.locator("inchwise-planner").nth(index);
    const walls = this.host.getByTestId("control-wall-foam");
    this.depth = walls.getByRole("slider");
    this.depthReading = walls.getByRole("textbox");
    this.clear = this.host.getByTestId("answer-clear");
    this.lost = this.host.getByTestId("answer-lost");
    this.load = this.host.getByTestId("answer-load");
    this.further = this.host.getByTestId("further");
    this.drip = this.host.getByTestId("answer-drip");
    this.damp = this.host.getByTestId("damp");
    this.apology = this.host.getByRole("status");
  }

  /** Brings the element on screen and waits until it is the live planner, its further part too. */
  async ready() {
    await this.host.scrollIntoViewIfNeeded();
    await this.depth.waitFor();
    await this.further.locator(".cautions").waitFor({ state: "attached" });
    return this;
  }

  /** Waits until every field is solved and what is out of sight has taken its room, so that nothing is about to move. */
  async settled() {
    await this.load.locator(".refining").waitFor({ state: "detached" });
    await this.page.waitForTimeout(400);
    return this;
  }

  /**
   * Does something and gives the milliseconds from then until every field it asks for is solved;
   * nothing if all of them were known.
   */
  async timeToSettle(act) {
    await this.load.evaluate((load) => {
      const watch = { start: performance.now(), seen: false, end: null };
      const look = () => {
        if (load.querySelector(".refining")) watch.seen = true;
        else if (watch.seen) watch.end ??= performance.now();
      };
      watch.observer = new MutationObserver(look);
      watch.observer.observe(load, { subtree: true, childList: true, attributes: true });
      globalThis.settling = watch;
    });
    await act();
    await this.page.waitForTimeout(100);
    await this.settled();
    return this.page.evaluate(() => {
      const { observer, start, end } = globalThis.settling;
      observer.disconnect();
      return end === null ? null : end - start;
    });
  }

  /** Waits until the curve over wall depth is worked out, which comes last. */
  async curveDrawn() {
    await this.host.locator(".chart-figure.working").waitFor({ state: "detached" });
    return this;
  }

  /** Waits until the year is that of all that is chosen, and reads its heat, kWh. */
  async yearHeat() {
    await this.host.locator(".year-strip-figure:not(.working)").waitFor({ state: "attached" });
    const text = await this.host.getByTestId("year-figures").locator("dd").first().textContent();
    return Number(text.replace(/[^0-9]/g, ""));
  }

  /** What the year comes to, label by label. */
  async yearFigures() {
    const text = await this.host.getByTestId("year-figures").textContent();
    return text.replace(/[\u00a0\u202f]/g, " ");
  }

  /** The figures and verdicts of the year that can be asked about. */
  yearAsked() {
    return this.host.locator("[data-testid=year-figures] summary, [data-testid=year-verdicts] summary");
  }

  /** The working under one of them. */
  yearWorking(figure) {
    return this.yearAsked().nth(figure).locator("xpath=following-sibling::div");
  }

  /** What the answer says a year of heat costs, once it is that of all that is chosen. */
  async costAtHead() {
    const line = this.host.locator(".answer .yearly:not(.earlier):not(:empty)");
    await line.waitFor();
    return Number((await line.textContent()).replace(/[^0-9]/g, ""));
  }

  /** What is said of heater, supply, power cut, damp and summer. */
  async yearVerdicts() {
    const verdicts = this.host.getByTestId("year-verdicts");
    await verdicts.scrollIntoViewIfNeeded(); // What is out of sight has no text.
    return verdicts.innerText();
  }

  /** Types into the search of places and goes to the first that is found, by keys alone. */
  async goToPlace(words) {
    const search = this.host.getByTestId("year-place-search");
    await search.focus();
    await this.page.keyboard.type(words);
    await this.host.getByTestId("year-found").getByRole("button").first().waitFor();
    await this.page.keyboard.press("ArrowDown");
    await this.page.keyboard.press("Enter");
    return this.host.getByTestId("year-place").innerText();
  }

  /** Types into the search of places and reads what is found; the keyboard stays in the search. */
  async searchPlaces(words) {
    await this.host.getByTestId("year-place-search").focus();
    await this.page.keyboard.type(words);
    const found = this.host.getByTestId("year-found").getByRole("button");
    await found.first().waitFor();
    await this.host.locator(".year-sources:not([hidden])").waitFor({ state: "attached" });
    return found.allTextContents();
  }

  /** The place that is chosen, or the file, and what is said of it. */
  async placeLine() {
    const text = await this.host.getByTestId("year-place").textContent();
    return text.replace(/[\u00a0\u202f]/g, " ");
  }

  /** The box of one figure of the place. */
  async placeFigure(key) {
    const figures = this.host.getByTestId("year-place-figures");
    if ((await figures.getAttribute("open")) === null) await figures.locator("summary").click();
    return this.host.getByTestId(`place-${key}`);
  }

  /** Chooses a file of hours. */
  giveHours(file) {
    return this.host.getByTestId("year-hours-file").setInputFiles(file);
  }

  /** Drops a file of hours on their box. */
  dropHours({ name, mimeType, buffer }) {
    return this.host.getByTestId("year-hours").evaluate(
      (box, { name, type, text }) => {
        const dataTransfer = new DataTransfer();
        dataTransfer.items.add(new File([text], name, { type }));
        for (const event of ["dragover", "drop"]) {
          box.dispatchEvent(new DragEvent(event, { dataTransfer, bubbles: true, cancelable: true }));
        }
      },
      { name, type: mimeType, text: buffer.toString() },
    );
  }

  /** What is said of the file of hours. */
  hoursSaid() {
    return this.host.getByTestId("year-hours-said").textContent();
  }

  /** What is wrong with it, line by line. */
  hourFaults() {
    return this.host.getByTestId("year-hours-faults").locator("li").allTextContents();
  }

  /** Back to the hours of the place, by keys. */
  async backFromHours() {
    const back = this.host.getByTestId("year-hours-back");
    await back.focus();
    await this.page.keyboard.press("Enter");
    await back.waitFor({ state: "hidden" });
  }

  /** Saves the example of a file of hours and gives its text. */
  async saveExample() {
    const format = this.host.getByTestId("year-hours-format");
    await format.locator("summary").click();
    const [download] = await Promise.all([
      this.page.waitForEvent("download"),
      format.getByRole("button").click(),
    ]);
    const parts = [];
    for await (const part of await download.createReadStream()) parts.push(part);
    return Buffer.concat(parts).toString();
  }

  /** What is listed as chosen, for paper. */
  printedChoices() {
    return this.host.locator(".summary dl").innerText();
  }

  /** Goes back to the usual design and year. */
  startOver() {
    return this.host.getByTestId("start-over").click();
  }

  /** Where the link to this design leads. */
  link() {
    return this.host.getByTestId("design-link").getAttribute("href");
  }

  /** What of a link could not be used. */
  unusedOfLink() {
    return this.host.getByTestId("year-unused").textContent();
  }

  /** Chooses a heater by its stable name. */
  async chooseHeater(name) {
    const group = this.host.getByTestId("year-heater");
    if ((await group.getAttribute("open")) === null) await group.locator("summary").click();
    await this.host.getByTestId("year-heater-kind").selectOption(name);
  }

  /** Types a choice about the year, in the group and the box of these names. */
  async typeYearChoice(group, key, text) {
    const box = await this.yearChoice(group, key);
    await box.fill(text);
    await box.blur();
  }

  /** The box of a choice about the year, its fold open. */
  async yearChoice(group, key) {
    const fold = this.host.getByTestId(group);
    if ((await fold.getAttribute("open")) === null) await fold.locator("summary").click();
    return this.host.getByTestId(`year-${key}`);
  }

  /** Why the year shown is an earlier one; nothing where it is that of the choices. */
  yearFaults() {
    return this.host.getByTestId("year-faults").innerText();
  }

  /** What of the place its hours miss. */
  yearMissed() {
    return this.host.getByTestId("year-missed").innerText();
  }

  /** Types the place's winter temperature. */
  async typeWinter(text) {
    const box = await this.placeFigure("winter_design");
    await box.fill(text);
    await box.press("Enter");
  }

  /** Whether the live planner stands in the element. */
  isLive() {
    return this.host.evaluate((host) => Boolean(host.shadowRoot?.querySelector("div *")));
  }

  /** The rows of the cold spots or of the losses: which stand behind, and which the keyboard reaches. */
  rowsOf(list) {
    const { rows, behind, control } = LISTS[list];
    const look = (host, [rows, behind, control]) =>
      [...host.shadowRoot.querySelectorAll(rows)].map((row) => ({
        name: row.querySelector("th").firstElementChild.textContent,
        behind: row.classList.contains(behind),
        takesKeyboard: Boolean(row.querySelector(control)),
      }));
    return this.host.evaluate(look, [rows, behind, control]);
  }

  /** How many rows of such a list are to be seen. */
  visibleRows(list) {
    return this.host.locator(LISTS[list].rows).filter({ visible: true }).count();
  }

  /** Gives the keyboard to a row of such a list. */
  standInRow(list, name) {
    const { rows, control } = LISTS[list];
    return this.host.locator(rows).locator(control, { hasText: new RegExp(`^${name}`) }).focus();
  }

  /** The words of whatever holds the keyboard. */
  heldWords() {
    return this.host.evaluate((host) => host.shadowRoot.activeElement?.textContent ?? "nothing");
  }

  /** Opens every folded section as a visitor does, also those that only appear once others are open. */
  async unfold() {
    const folded = this.host.locator("details:not([open]) > summary:visible, [aria-expanded='false']:visible");
    for (let left = 200; (await folded.count()) > 0 && left > 0; left--) {
      await folded.first().click();
    }
  }

  /** The same by script, where only what is then seen matters. */
  async unfoldByScript() {
    const left = await this.host.evaluate(async (host) => {
      const selector = "details:not([open]) > summary, [aria-expanded='false']";
      const folded = () => [...host.shadowRoot.querySelectorAll(selector)].filter((one) => one.checkVisibility());
      const pause = (time) => new Promise((done) => setTimeout(done, time));
      // Parts out of sight say only after a rest that they are open: none is asked again before.
      const asked = new Map();
      const asks = (one) => performance.now() - (asked.get(one) ?? -Infinity) > 1500;
      for (let round = 0; round < 100 && folded().length > 0; round++) {
        for (const one of folded().filter(asks)) {
          asked.set(one, performance.now());
          one.click();
          // What opens says so by an event of its own.
          await pause(0);
        }
        await pause(50);
      }
      return folded().map((one) => one.textContent);
    });
    assert.deepEqual(left, [], "something stays folded");
  }

  /** Moves the side walls' foam by steps of the arrow keys, as a keyboard user does. */
  async deepenByKeys(steps) {
    await this.depth.focus();
    for (let step = 0; step < Math.abs(steps); step++) await this.nudge(steps);
  }

  /** One press of an arrow key on whatever has the keyboard. */
  nudge(direction) {
    return this.page.keyboard.press(direction > 0 ? "ArrowRight" : "ArrowLeft");
  }

  /** What the planner reads for the side walls' foam. */
  reading() {
    return this.depthReading.inputValue();
  }

  /** The host page changes an attribute of the element. */
  setAttribute(name, value) {
    return this.host.evaluate((host, [name, value]) => host.setAttribute(name, value), [name, value]);
  }

  /** The answer as numbers, in metric units: clear size in mm, room lost in L, load in W. */
  async answer() {
    const figures = async (part) => {
      const text = await part.locator(".value").innerText();
      return text.split("×").map((figure) => Number(figure.replace(/[^0-9.]/g, "")));
    };
    const [clear, [lost], [load]] = await Promise.all([this.clear, this.lost, this.load].map(figures));
    return { clear, lost, load };
  }

  /** Chooses a box by its key. */
  async chooseBox(key) {
    await this.host.getByTestId("control-box").selectOption(key);
  }

  /** Chooses what is done about the castings. */
  async treat(key) {
    await this.host.getByTestId(`treatment-${key}`).click();
  }

  /** Chooses metric or imperial. */
  async switchUnits(key) {
    await this.host.getByTestId(`units-${key}`).click();
  }

  /** Types into the wall foam's box and leaves it with Enter. */
  async typeDepth(text) {
    await this.depthReading.fill(text);
    await this.depthReading.press("Enter");
  }

  /** Whether the wall foam's box says that it cannot take what stands in it. */
  async isRefused() {
    return (await this.depthReading.getAttribute("aria-invalid")) === "true";
  }

  /** Takes hold of a foam face in the cross-section and nudges it one step deeper. */
  async nudgeGrip(which) {
    const grip = this.host.getByTestId("section").getByRole("slider").nth(which === "ceiling" ? 0 : 1);
    const before = await grip.getAttribute("aria-valuenow");
    await grip.focus();
    await this.page.keyboard.press("PageUp");
    if ((await grip.getAttribute("aria-valuenow")) === before) throw new Error(`${which} did not move`);
  }

  /** What the answer to "will it drip?" says. */
  async dripLine() {
    return (await this.drip.innerText()).replace(/[\u00a0\u202f]/g, " ");
  }

  /** Opens one folded part by its name. */
  async open(fold) {
    const part = this.host.getByTestId(`fold-${fold}`);
    if ((await part.getAttribute("open")) === null) await part.locator("summary").first().click();
  }

  /** Types into a field and leaves it with Enter. */
  async type(field, text) {
    const box = this.host.getByTestId(`field-${field}`);
    await box.fill(text);
    await box.press("Enter");
  }

  /** What a field says is wrong with it; empty while all is well. */
  async fault(field) {
    const fault = this.host.locator(`#${field}-fault`);
    return (await fault.textContent()).replace(/[\u00a0\u202f]/g, " ");
  }

  /** Chooses among named options by the stable name of one. */
  async choose(choice, key) {
    await this.host.getByTestId(`control-${choice}`).selectOption(key);
  }

  /** Brings the cold spots on screen and waits for the picture of the coldest. */
  async spots() {
    const panel = this.host.getByTestId("spots");
    await panel.waitFor();
    await panel.scrollIntoViewIfNeeded();
    await this.pictured();
    return panel;
  }

  /** Waits until the picture is that of the present design. */
  async pictured() {
    const picture = this.host.getByTestId("temperature");
    await picture.locator(".coldest-mark:not([d='']), .main-isotherm:not([d=''])").first().waitFor({ state: "attached" });
    await picture.locator(".refining-word:empty, .refining-word:text-is('')").first().waitFor({ state: "attached" });
    return picture;
  }

  /** The cold spots as they are listed: name, verdict, and figures as numbers. */
  spotRows() {
    return this.host.getByTestId("spots").locator("tbody tr").evaluateAll((rows) =>
      rows.map((row) => {
        const number = (cell) => Number(cell.textContent.replace("\u2212", "-").replace(/[^0-9.-]/g, ""));
        const [surface, mould, drip] = [...row.querySelectorAll("td")].map(number);
        return {
          key: row.dataset.testid.replace("spot-", ""),
          verdict: row.querySelector(".verdict-word").textContent,
          isStale: row.classList.contains("refining"),
          isChosen: row.classList.contains("chosen"),
          surface,
          mould,
          drip,
        };
      }),
    );
  }

  /** Chooses a cold spot by its key. */
  async chooseSpot(key) {
    const button = this.host.getByTestId(`spot-${key}`).getByRole("button");
    if (!(await button.isVisible())) await this.host.getByTestId("all-spots").click();
    await button.click();
    await this.pictured();
  }

  /** A handle in the temperature picture, by the key of what it changes. */
  handle(key) {
    return this.host.getByTestId(`handle-${key}`);
  }

  /** The labels in the temperature picture that are on screen. */
  pictureLabels() {
    return this.host.getByTestId("temperature").locator(".label:visible").evaluateAll((labels) =>
      labels.map((label) => {
        const { left, top, right, bottom } = label.getBoundingClientRect();
        return { text: label.textContent, left, top, right, bottom };
      }),
    );
  }
}
