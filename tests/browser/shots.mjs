// Pictures of the built page for people to look at: `node shots.mjs` writes tests/browser/shots.
import { mkdir } from "node:fs/promises";
import { fileURLToPath } from "node:url";

import { launch, schemes, screens } from "./browser.mjs";
import { Planner } from "./planner.page.mjs";
import { serve } from "./site.mjs";
import { Visit } from "./visit.mjs";

const folder = fileURLToPath(new URL("shots/", import.meta.url));
await mkdir(folder, { recursive: true });
const [browser, site] = await Promise.all([launch(), serve()]);
for (const [screen, viewport] of Object.entries(screens)) {
  for (const colorScheme of schemes) {
    const visit = await Visit.begin(browser, site, { viewport, colorScheme });
    await visit.open();
    const planner = await new Planner(visit.page).ready();
    await planner.settled();
    await planner.curveDrawn();
    const shoot = async (name, fullPage) => {
      const path = `${folder}${screen}-${colorScheme}-${name}.png`;
      await visit.page.screenshot({ path, fullPage });
      console.log(path);
    };
    await shoot("planner", false);
    await visit.page.evaluate(() => window.scrollTo(0, 0));
    await shoot("first", false);
    await shoot("page", true);
    await planner.unfold();
    await shoot("unfolded", true);
    await visit.end();
  }
}
const visit = await Visit.begin(browser, site, { viewport: screens.phone, javaScriptEnabled: false });
await visit.open();
await visit.page.screenshot({ path: `${folder}phone-light-no-scripts.png`, fullPage: true });
await visit.page.pdf({ path: `${folder}print.pdf`, format: "A4" }).catch(() => {});
await visit.end();
await Promise.all([browser.close(), site.stop()]);
