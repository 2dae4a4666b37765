/**
 * The benchmark: `npm run bench`, or `npm run bench -- frame measure` for some parts.
 * Prints a line per figure. Compare ratios within one run; never a bound in a test.
 */
import { buildBench } from "./build.bench.ts";
import { checkBench } from "./check.bench.ts";
import { flightBench } from "./flight.bench.ts";
import { frameBench } from "./frame.bench.ts";
import type { BenchLine } from "./line.ts";
import { lighthouseBench } from "./lighthouse.bench.ts";
import { mapBench } from "./map.bench.ts";
import { measureBench } from "./measure.bench.ts";
import { paperBench } from "./paper.bench.ts";
import { readBench } from "./read.bench.ts";
import { rebuildBench } from "./rebuild.bench.ts";
import { terrainBench } from "./terrain.bench.ts";
import { weightBench } from "./weight.bench.ts";

const PARTS: Readonly<Record<string, () => Promise<readonly BenchLine[]>>> = {
  read: readBench,
  frame: frameBench,
  measure: measureBench,
  check: checkBench,
  flight: flightBench,
  terrain: terrainBench,
  build: buildBench,
  rebuild: rebuildBench,
  paper: paperBench,
  weight: weightBench,
  map: mapBench,
  lighthouse: lighthouseBench,
};

const wanted = process.argv.slice(2);
const unknown = wanted.filter((name) => !Object.hasOwn(PARTS, name));
if (unknown.length > 0) {
  console.error(
    `No part of the benchmark is called ${unknown.join(", ")}; choose from ${Object.keys(PARTS).join(", ")}.`,
  );
  process.exit(2);
}

for (const [name, part] of Object.entries(PARTS)) {
  if (wanted.length > 0 && !wanted.includes(name)) continue;
  console.log(`\n${name}`);
  for (const line of await part()) {
    const value =
      Math.abs(line.value) >= 100
        ? line.value.toFixed(0)
        : Math.abs(line.value) >= 1
          ? line.value.toFixed(2)
          : line.value.toPrecision(2);
    console.log(`  ${line.name.padEnd(44)} ${value.padStart(9)} ${line.unit.padEnd(4)} ${line.note}`);
  }
}
