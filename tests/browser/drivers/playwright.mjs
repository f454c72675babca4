// What a page object asks of a browser, asked of Chromium through Playwright. Another driver has the
// same words: the page objects do not know which they talk to.

export class PlaywrightDriver {
  /** The `index`-th planner on a page. */
  constructor(page, index = 0) {
    this.page = page;
    this.host = page.locator("inchwise-planner").nth(index);
  }

  /** Something in the planner, by a selector. */
  at(selector) {
    return this.host.locator(selector).first();
  }

  scrollToHost() {
    return this.host.evaluate((host) => host.scrollIntoView());
  }

  hostAttribute(name) {
    return this.host.getAttribute(name);
  }

  setHostAttribute(name, value) {
    return this.host.evaluate(
      (host, [name, value]) => (value === null ? host.removeAttribute(name) : host.setAttribute(name, value)),
      [name, value],
    );
  }

  /** Waits until the function of the host and an argument is true. */
  async until(is, argument, { timeout = 30_000 } = {}) {
    const end = Date.now() + timeout;
    while (!(await this.host.evaluate(is, argument).catch(() => false))) {
      if (Date.now() > end) throw new Error(`it never came to be so: ${is}`);
      await this.page.waitForTimeout(50);
    }
  }

  evaluate(what, argument) {
    return this.host.evaluate(what, argument);
  }

  click(selector) {
    return this.at(selector).click();
  }

  async fill(selector, text) {
    await this.at(selector).fill(text);
    await this.at(selector).blur();
  }

  select(selector, value) {
    return this.at(selector).selectOption(value);
  }

  focus(selector) {
    return this.at(selector).focus();
  }

  press(key) {
    return this.page.keyboard.press(key);
  }

  type(text) {
    return this.page.keyboard.type(text);
  }

  text(selector) {
    return this.at(selector).innerText();
  }

  value(selector) {
    return this.at(selector).inputValue();
  }

  attribute(selector, name) {
    return this.at(selector).getAttribute(name);
  }

  texts(selector) {
    return this.host.locator(selector).allInnerTexts();
  }

  count(selector) {
    return this.host.locator(selector).count();
  }

  box(selector) {
    return this.at(selector).boundingBox();
  }

  /** Waits until it is there. */
  present(selector, options = {}) {
    return this.at(selector).waitFor({ state: "attached", ...options });
  }

  files(selector, file) {
    return this.at(selector).setInputFiles(file);
  }
}
