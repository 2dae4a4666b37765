/** `npm run dev`: the guide as it is being written; content and pages are watched. */
import { resolve } from "node:path";
import { fileURLToPath } from "node:url";
import { CONTENT_VARIABLE } from "../site/build/integration.ts";
import { EXIT_CODES, readOptions, runCommand } from "./options.ts";

const USAGE = `Usage: npm run dev -- [options]
  --content DIR   folder with club.yaml and the courses (default: content)`;

await runCommand(async () => {
  const options = readOptions(
    process.argv.slice(2),
    { content: { type: "string" }, help: { type: "boolean" } },
    USAGE,
  );
  if (options.help) {
    console.log(`${USAGE}\n${EXIT_CODES}`);
    return;
  }
  if (options.content !== undefined) process.env[CONTENT_VARIABLE] = resolve(options.content);
  process.env["ASTRO_TELEMETRY_DISABLED"] = "1";
  const { dev } = await import("astro");
  await dev({ root: fileURLToPath(new URL("../../", import.meta.url)) });
});
