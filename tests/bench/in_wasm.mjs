// Our solver in wasm, timed under Node or in Chromium: node in_wasm.mjs FOLDER node|chromium
//
// Reads the name of a case per line and answers, tab-separated: milliseconds from problem to solution,
// iterations, relative residual, coupling. FOLDER holds solver.js and solver_bg.wasm.
import { createServer } from "node:http";
import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { createInterface } from "node:readline";
import { pathToFileURL } from "node:url";

const [folder, host] = process.argv.slice(2);

/** Solves a case by name; runs wherever the module was loaded. */
const timed = (module, name) => {
  const problem = module.Case.named(name);
  const start = performance.now();
  const solution = problem.solve();
  const elapsed = performance.now() - start;
  problem.free();
  return [elapsed, ...solution];
};

const inNode = async () => {
  const module = await import(pathToFileURL(join(folder, "solver.js")));
  await module.default({ module_or_path: await readFile(join(folder, "solver_bg.wasm")) });
  return { solve: async (name) => timed(module, name), close: async () => {} };
};

const kinds = { ".js": "text/javascript", ".wasm": "application/wasm", ".html": "text/html" };

const inChromium = async () => {
  const { launch } = await import("../browser/browser.mjs");
  const server = createServer(async (request, response) => {
    const name = request.url === "/" ? "index.html" : request.url.slice(1);
    const text = name === "index.html" ? "<!doctype html>" : await readFile(join(folder, name)).catch(() => null);
    if (text === null) return response.writeHead(404).end();
    response.writeHead(200, { "content-type": kinds[name.slice(name.lastIndexOf("."))] }).end(text);
  });
  await new Promise((resolve) => server.listen(0, "127.0.0.1", resolve));
  const browser = await launch();
  const page = await browser.newPage();
  await page.goto(`http://127.0.0.1:${server.address().port}/`);
  await page.evaluate(async () => {
    globalThis.solver = await import("/solver.js");
    await globalThis.solver.default();
  });
  return {
    solve: (name) => page.evaluate(`(${timed})(solver, ${JSON.stringify(name)})`),
    close: async () => {
      await browser.close();
      server.close();
    },
  };
};

const solver = await (host === "chromium" ? inChromium() : inNode());
for await (const name of createInterface({ input: process.stdin })) {
  console.log((await solver.solve(name)).join("\t"));
}
await solver.close();
