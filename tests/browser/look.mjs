import { launch, screens } from "./browser.mjs";
const url = process.argv[2] ?? "http://127.0.0.1:8123/";
const only = process.argv[3]?.split(",");
const sheet = process.argv[4];
const scheme = process.argv[5] ?? "light";
const browser = await launch();
for (const [name, viewport] of Object.entries(screens)) {
  if (only && !only.includes(name)) continue;
  const page = await browser.newPage({ viewport, colorScheme: scheme, hasTouch: name === "phone" });
  page.on("console", (m) => { if (m.type() !== "log") console.log(name, m.type(), m.text().slice(0, 600)); });
  page.on("pageerror", (e) => console.log(name, "pageerror", String(e.stack ?? e).slice(0, 900)));
  const start = Date.now();
  await page.goto(url);
  await page.locator("inchwise-planner").scrollIntoViewIfNeeded();
  await page.waitForSelector("inchwise-planner .answer", { timeout: 60000 }).catch((e) => console.log(String(e).slice(0, 200)));
  console.log(name, "answer after", Date.now() - start);
  await page.evaluate(() => document.querySelector("inchwise-planner").scrollIntoView());
  await page.waitForSelector('inchwise-planner[data-state="ready"]', { timeout: 90000 }).catch((e) => console.log("not ready"));
  console.log(name, "ready after", Date.now() - start);
  if (sheet) { await page.click(`[data-testid=name-${sheet}]`); }
  await page.waitForTimeout(6000);
  await page.screenshot({ path: `/tmp/shots/${name}${sheet ? "-" + sheet : ""}${scheme === "dark" ? "-dark" : ""}.png` });
  await page.close();
}
await browser.close();
