// The built site, served on this machine.
import { spawn } from "node:child_process";
import { createInterface } from "node:readline";
import { fileURLToPath } from "node:url";

const root = fileURLToPath(new URL("../..", import.meta.url));

/** Serves dist as it stands. `under` puts it below a sub-path. */
export async function serve({ under = "/" } = {}) {
  const words = ["serve", "--no-build", "--port", "0", "--under", under];
  const built = process.env.INCHWISE_SITE;
  const server = built
    ? spawn(built, words, { cwd: root, stdio: ["ignore", "pipe", "inherit"] })
    : spawn("cargo", ["site", ...words], { cwd: root, stdio: ["ignore", "pipe", "inherit"] });
  const ended = new Promise((resolve) => server.once("exit", resolve));
  for await (const line of createInterface({ input: server.stdout })) {
    const address = line.match(/http:\S+/)?.[0];
    if (address) {
      const stop = async () => {
        server.kill();
        await ended;
      };
      return { address, stop };
    }
  }
  throw new Error("The server ended before it told its address; its own words stand above.");
}
