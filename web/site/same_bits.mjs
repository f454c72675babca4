// Evaluates one design with the release wasm: node same_bits.mjs GLUE WASM DESIGN
import { readFile } from "node:fs/promises";
import { pathToFileURL } from "node:url";

const [glue, wasm, design] = process.argv.slice(2);
const planner = await import(pathToFileURL(glue));
await planner.default({ module_or_path: await readFile(wasm) });
process.stdout.write(planner.evaluate(await readFile(design, "utf8")));
