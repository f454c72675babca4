// Evaluates one design with the engine in wasm: node same_bits.mjs FOLDER DESIGN
import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { pathToFileURL } from "node:url";

const [folder, design] = process.argv.slice(2);
const engine = await import(pathToFileURL(join(folder, "engine.js")));
await engine.default({ module_or_path: await readFile(join(folder, "engine_bg.wasm")) });
process.stdout.write(engine.evaluate(await readFile(design, "utf8")));
