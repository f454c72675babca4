// How every journey begins: a browser, the built site, a visit, and the page objects on it.
import { after, before, test } from "node:test";

import { launch, screens } from "./browser.mjs";
import { PlaywrightDriver } from "./drivers/playwright.mjs";
import { Bench } from "./pages/bench.mjs";
import { Dry } from "./pages/dry.mjs";
import { Heat } from "./pages/heat.mjs";
import { serve } from "./site.mjs";
import { Visit } from "./visit.mjs";

/** Journeys of one file share a browser and a server. */
export function journeys() {
  const at = {};
  before(async () => {
    [at.browser, at.site] = await Promise.all([launch(), serve()]);
  });
  after(() => Promise.all([at.browser?.close(), at.site?.stop()]));

  const begin = (options = {}) => Visit.begin(at.browser, at.site, { viewport: screens.desktop, ...options });

  const objects = (visit, index = 0) => {
    const driver = new PlaywrightDriver(visit.page, index);
    return { visit, driver, bench: new Bench(driver), dry: new Dry(driver), heat: new Heat(driver) };
  };

  /** The demo page, opened, its planner settled. */
  const journey = (name, steps, { screen = "desktop", path = "", clean = true, ...options } = {}) =>
    test(name, { timeout: 120_000 }, async () => {
      const visit = await begin({ viewport: screens[screen] ?? screen, ...options });
      try {
        await visit.open(path);
        const all = objects(visit);
        await all.bench.ready();
        await all.bench.settled();
        await steps(all);
        if (clean) await visit.wasClean();
        else await visit.wasQuiet();
      } finally {
        await visit.end();
      }
    });

  return { at, begin, objects, journey };
}
