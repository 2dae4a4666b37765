/** Swaps one guide for another, in a process of its own that may be killed: target, where. */
import { cp } from "node:fs/promises";
import { swapIn, type Where } from "../../src/commands/swap.ts";

const [target, made, where] = process.argv.slice(2);
try {
  await swapIn(target!, (staging) => cp(made!, staging, { recursive: true }), where as Where);
} catch (error) {
  console.error(error instanceof Error ? error.message : String(error));
  process.exitCode = 1;
}
