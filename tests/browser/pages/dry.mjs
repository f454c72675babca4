// The sheet of the cold places.
import { plain, number } from "./bench.mjs";

export class Dry {
  constructor(driver) {
    this.driver = driver;
  }

  /** Every place: its number, name, temperature, and what becomes of it. */
  async places() {
    if ((await this.driver.attribute('[data-testid="all-spots"]', "open")) === null) {
      await this.driver.click('[data-testid="all-spots"] > summary');
    }
    const rows = await this.driver.evaluate((host) =>
      [...host.shadowRoot.querySelectorAll(".spot-list li")].map((row) => ({
        key: row.dataset.testid.replace("spot-", ""),
        number: row.querySelector(".round").textContent,
        surface: row.querySelector("b").textContent,
        risk: row.querySelector(".risk").textContent,
        stands: row.querySelector(".stands").textContent,
        isLookedAt: row.querySelector(".spot").getAttribute("aria-pressed") === "true",
      })),
    );
    return rows.map((row) => {
      const [mould, drip] = (plain(row.stands).match(/\d+(?=\s?%)/g) ?? []).map(Number);
      return { ...row, mould, drip, surface: number(row.surface), risk: plain(row.risk) };
    });
  }

  async place(key) {
    return (await this.places()).find((row) => row.key === key);
  }

  async look(key) {
    await this.places();
    await this.driver.click(`[data-testid="spot-${key}"] .spot`);
    await this.pictured();
  }

  /** Waits until the picture of what is looked at is there. */
  pictured() {
    return this.driver.until((host) => {
      const steel = host.shadowRoot.querySelector(".temperature-figure path.dew-line, .temperature-figure path.isotherm");
      const waiting = host.shadowRoot.querySelector(".temperature-figure .spot-name .hint");
      return steel?.getAttribute("d") && waiting?.textContent === "";
    });
  }

  cut(number) {
    return this.driver.click(`label:has([data-testid="cut-${number}"])`);
  }

  steel() {
    return this.driver.attribute(".temperature-figure path.steel", "d");
  }

  async verdict() {
    return plain(await this.driver.text('[data-testid="verdict"]'));
  }

  /** Waits until remedies were tried, and reads them. */
  async helps() {
    await this.driver.until(
      (host) => host.shadowRoot.querySelector(".helps li") || /Nothing/.test(host.shadowRoot.querySelector('[data-testid="helps-said"]')?.textContent),
      undefined,
      { timeout: 90_000 },
    );
    return (await this.driver.texts(".helps li")).map(plain);
  }

  doFirst() {
    return this.driver.click('[data-testid="do-it"]');
  }
}
