// The sheet of losses and of the year.
import { plain, number } from "./bench.mjs";

export class Heat {
  constructor(driver) {
    this.driver = driver;
  }

  /** The year's heat, kWh, once it is that of all that is chosen. */
  async yearHeat() {
    await this.driver.until((host) => host.shadowRoot.querySelector('[data-testid="year-figures"] li'));
    return number((await this.driver.text('[data-testid="year-figures"] li')).replace(/^\D*/, ""));
  }

  async verdicts() {
    return plain(await this.driver.text('[data-testid="year-verdicts"]'));
  }

  async total() {
    return number(await this.driver.text('[data-testid="losses-total"]'));
  }

  async asked() {
    return this.driver.count('[data-testid="year-figures"] summary, [data-testid="year-verdicts"] summary');
  }
}
