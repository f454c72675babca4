// One visit to a page, and a witness to everything that should not happen during it.
import assert from "node:assert/strict";

/** Most of a page's layout that may shift by itself (the published bar for a good page is 0.1). */
const STEADY = 0.02;

export class Visit {
  /** Opens a fresh context and page; `options` are the context's (viewport, colorScheme, ...). */
  static async begin(browser, site, options = {}) {
    const context = await browser.newContext({ reducedMotion: "reduce", ...options });
    await context.addInitScript(witness);
    const visit = new Visit();
    Object.assign(visit, { context, site, page: await context.newPage() });
    visit.errors = [];
    visit.foreign = [];
    visit.requests = [];
    const home = new URL(site.address).origin;
    visit.page.on("console", (message) => {
      if (message.type() === "error") visit.errors.push(message.text());
    });
    visit.page.on("pageerror", (error) => visit.errors.push(String(error)));
    context.on("request", (request) => {
      visit.requests.push(request.url());
      const { origin, protocol } = new URL(request.url());
      if (origin !== home && protocol !== "data:" && protocol !== "blob:") {
        visit.foreign.push(request.url());
      }
    });
    return visit;
  }

  /** The shop's page, or another address below it. */
  async open(path = "") {
    await this.page.goto(new URL(path, this.site.address).href);
  }

  /** A host's own page around the element: `body` under the very policy the server sends. */
  async openHost(body) {
    const address = new URL("host.html", this.site.address).href;
    const policy = await fetch(this.site.address);
    await this.context.route(address, (route) =>
      route.fulfill({
        headers: {
          "content-type": "text/html; charset=utf-8",
          "content-security-policy": policy.headers.get("content-security-policy"),
        },
        body: `<!doctype html><html lang="en"><head><title>A host</title>
          <link rel="icon" href="style/mark.svg"><script type="module" src="embed.js"></script>
          </head><body>${body}</body></html>`,
      }),
    );
    await this.page.goto(address);
  }

  /** The names of the element's files asked for so far. */
  fetched() {
    return this.requests.map((url) => url.split("/").pop());
  }

  /** What the page witnessed: policy violations and layout shifts nobody's input explains. */
  witnessed() {
    return this.page.evaluate(() => window.witnessed);
  }

  /** No policy violation, error or call to another host. */
  async wasQuiet() {
    const { violations } = await this.witnessed();
    assert.deepEqual(violations, [], "the content-security policy was broken");
    assert.deepEqual(this.errors, [], "the console shows errors");
    assert.deepEqual(this.foreign, [], "another host was called");
  }

  /** Nothing went wrong: quiet, and no jump of the layout. */
  async wasClean() {
    // Shifts are reported after the frame that shows them.
    await this.page.waitForTimeout(150);
    await this.wasQuiet();
    const { shifts } = await this.witnessed();
    const shifted = shifts.reduce((sum, shift) => sum + shift.value, 0);
    assert.ok(shifted <= STEADY, `the layout jumped: ${JSON.stringify(shifts)}`);
  }

  end() {
    return this.context.close();
  }
}

function witness() {
  const witnessed = { violations: [], shifts: [] };
  Object.defineProperty(window, "witnessed", { value: witnessed });
  document.addEventListener("securitypolicyviolation", (event) => {
    const { violatedDirective, blockedURI, sourceFile, lineNumber, sample } = event;
    witnessed.violations.push({ violatedDirective, blockedURI, sourceFile, lineNumber, sample });
  });
  new PerformanceObserver((list) => {
    for (const entry of list.getEntries()) {
      if (entry.hadRecentInput) continue;
      // What stands in the element has no name here; where it was and went tells it.
      const place = ({ x, y, width, height }) => [x, y, width, height].map(Math.round).join(" ");
      const moved = entry.sources.map((moved) => `${place(moved.previousRect)} to ${place(moved.currentRect)}`);
      witnessed.shifts.push({ value: entry.value, moved });
    }
  }).observe({ type: "layout-shift", buffered: true });
}
