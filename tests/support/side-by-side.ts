/**
 * Runs npm scripts at once and fails if one of them does: `node tests/support/side-by-side.ts test:types test:demo`.
 * What each says is told when it ends, so that nothing is mixed.
 */
import { spawn } from "node:child_process";

const run = (script: string): Promise<boolean> =>
  new Promise((resolve) => {
    // A shell finds npm under its Windows name too; the names come from package.json.
    const child = spawn(`npm run ${script}`, { shell: true, stdio: ["ignore", "pipe", "pipe"] });
    let said = "";
    for (const stream of [child.stdout, child.stderr])
      stream.setEncoding("utf8").on("data", (text: string) => (said += text));
    const end = (well: boolean): void => {
      process.stdout.write(said);
      resolve(well);
    };
    child.on("error", (error) => {
      said += `${error.message}\n`;
      end(false);
    });
    child.on("close", (code) => end(code === 0));
  });

const ended = await Promise.all(process.argv.slice(2).map(run));
if (!ended.every(Boolean)) process.exitCode = 1;
