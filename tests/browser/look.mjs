import { launch, screens } from "./browser.mjs";
const url = "http://127.0.0.1:8123/";
const name = process.argv[2];
const scheme = process.argv[3] ?? "light";
const sheets = (process.argv[4] ?? "brief,fit,dry,heat,air,build").split(",");
const browser = await launch();
const page = await browser.newPage({ viewport: screens[name] ?? { width: +name.split("x")[0], height: +name.split("x")[1] }, colorScheme: scheme, hasTouch: name === "phone" });
const said = new Set();
const say = (text) => { const cut = text.slice(0, 300); if (!said.has(cut) && said.size < 12) { said.add(cut); console.log(cut); } };
page.on("console", (m) => { if (m.type() !== "log") say(m.type() + " " + m.text()); });
page.on("pageerror", (e) => say("pageerror " + String(e)));
await page.goto(url);
await page.waitForSelector('inchwise-planner[data-state="ready"]', { timeout: 90000 }).catch(() => console.log("not ready"));
for (const sheet of sheets) {
  await page.click(`[data-testid=name-${sheet}]`);
  await page.waitForSelector(`[data-testid=sheet-${sheet}][data-progress=there]`, { timeout: 15000 }).catch(() => console.log("not there", sheet));
  await page.waitForTimeout(1500);
  await page.screenshot({ path: `/tmp/shots/${name}-${sheet}${scheme === "dark" ? "-dark" : ""}.png` });
}
await browser.close();
