/**
 * `npm run faults`: breaks what can break, at full strength, and prints what was lost.
 * `npm test` tries a sample of each.
 */
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { breakBring, breakNew } from "./folders.ts";
import { mutateContent } from "./content.ts";
import { damageHeightFiles } from "./height-files.ts";
import { damagePictures } from "./pictures.ts";
import { seeded } from "./random.ts";
import { attackServe } from "./serve-under-fire.ts";
import { breakSwaps } from "./swaps.ts";

export interface Faults {
  readonly tried: number;
  /** What a fault cost, each in words; none is what is wanted. */
  readonly lost: readonly string[];
}

const sum = (all: readonly Faults[]): Faults => ({
  tried: all.reduce((tried, one) => tried + one.tried, 0),
  lost: all.flatMap(({ lost }) => lost),
});

/** Subjects by name; each is given an empty folder and a seed. */
const SUBJECTS: Readonly<Record<string, (folder: string, seed: number) => Promise<Faults>>> = {
  requests: (folder, seed) => attackServe(folder, 5000, seeded(seed)),
  swaps: async (folder) => sum([await breakSwaps(folder, "beside"), await breakSwaps(folder, "within")]),
  folders: async (folder) => sum([await breakBring(folder), await breakNew(folder)]),
  heights: (folder, seed) => damageHeightFiles(folder, 10_000, seeded(seed)),
  content: (folder, seed) => mutateContent(folder, 10_000, seeded(seed)),
  pictures: (folder, seed) => damagePictures(folder, 5000, seeded(seed)),
};

const [wanted, seedText] = process.argv.slice(2);
const seed = seedText === undefined ? 18 : Number(seedText);
const names = wanted === undefined || wanted === "all" ? Object.keys(SUBJECTS) : [wanted];
if (!names.every((name) => Object.hasOwn(SUBJECTS, name)) || !Number.isInteger(seed)) {
  console.error(`Usage: npm run faults -- [${Object.keys(SUBJECTS).join("|")}|all] [seed]`);
  process.exit(2);
}
for (const name of names) {
  const folder = await mkdtemp(join(tmpdir(), "marram-faults-"));
  try {
    const { tried, lost } = await SUBJECTS[name]!(folder, seed);
    console.log(`${name}: faults tried ${tried}, lost ${lost.length}`);
    for (const one of lost) console.log(`  ${one}`);
    if (lost.length > 0) process.exitCode = 1;
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}
