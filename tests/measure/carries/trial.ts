/**
 * `npm run carries -- 4000`: thousands of random holes held to the oracle, more than a test
 * run has time for. Ends non-zero on any fault.
 */
import { holdHole } from "./hold.ts";

const count = Number(process.argv[2] ?? 3000);
const first = Number(process.argv[3] ?? 1);
if (!Number.isInteger(count) || count < 1 || !Number.isInteger(first)) {
  console.error("Say how many holes, and from which seed: npm run carries -- 3000 1");
  process.exit(2);
}
let [tried, unsettled, worst] = [0, 0, 0];
const faults: string[] = [];
for (let seed = first; seed < first + count; seed++) {
  const held = holdHole(seed);
  tried += held.tried;
  unsettled += held.unsettled;
  worst = Math.max(worst, held.worstMetres);
  faults.push(...held.faults);
}
for (const fault of faults.slice(0, 40)) console.error(fault);
console.log(
  `${count} holes, ${tried} hazards: ${faults.length} faults, worst difference ${(worst * 1000).toFixed(2)} mm, ` +
    `${unsettled} not settled (a hair decides how many stretches there are).`,
);
process.exitCode = faults.length > 0 ? 1 : 0;
