/**
 * What `bring --write` and `new` write, broken off at each of their writes: all of it or nothing, at the
 * latest after the next start.
 */
import { cp, rm, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { finishWriting } from "../../src/read/write-all.ts";
import { writeClub } from "../fixtures/club.ts";
import { fingerprint, run } from "../support/run.ts";
import { breakOff } from "./broken-off.ts";

const same = (a: object, b: object): boolean => JSON.stringify(a) === JSON.stringify(b);

interface Tried {
  readonly tried: number;
  readonly lost: string[];
}

/**
 * Breaks off a command that changes a folder. @param before what the folder holds at first; undefined where
 * it is not there.
 */
async function breakFolder(
  scratch: string,
  folder: string,
  before: string | undefined,
  args: readonly string[],
  every: number,
): Promise<Tried> {
  const prepare = async (): Promise<void> => {
    await rm(folder, { recursive: true, force: true });
    if (before !== undefined) await cp(before, folder, { recursive: true });
  };
  await prepare();
  const old = await fingerprint(folder).catch(() => ({}));
  const { code, stderr } = await run(args[0]!, args.slice(1));
  if (code !== 0) throw new Error(`Without a fault it ended with ${code}: ${stderr}`);
  const fresh = await fingerprint(folder);
  if (same(old, fresh)) throw new Error("It changes nothing: nothing would be tried.");
  return breakOff(
    {
      args,
      folder,
      prepare,
      judge: async ({ ended }) => {
        await finishWriting(folder);
        const found = await fingerprint(folder).catch(() => ({}));
        if (!same(found, old) && !same(found, fresh))
          return `neither as it was nor finished: ${Object.keys(found).join(", ")}`;
        // An empty folder may stay when nothing could be told to remove it.
        if (ended.code === 0 && !same(found, fresh)) return "said that it was done, and it was not";
        return undefined;
      },
    },
    join(scratch, "count"),
    every,
  );
}

const square = (east: number, north: number, metres: number): number[][] => {
  const [x, y] = [-9 + east / 61_400, 56.5 + north / 111_350];
  const [w, h] = [metres / 61_400, metres / 111_350];
  return [
    [x, y],
    [x + w, y],
    [x + w, y + h],
    [x, y + h],
    [x, y],
  ];
};

export async function breakBring(scratch: string, every = 1): Promise<Tried> {
  const before = join(scratch, "before-bring");
  await writeClub(before, { holes: 0 });
  const map = join(scratch, "map.geojson");
  const feature = (properties: object, type: string, coordinates: unknown): object => ({
    type: "Feature",
    properties,
    geometry: { type, coordinates },
  });
  const holes = [1, 2, 3].flatMap((n) => [
    feature({ golf: "hole", ref: String(n), par: "4", name: `Hole ${n}` }, "LineString", [
      [-9 + (n * 130) / 61_400, 56.5],
      [-9 + (n * 130) / 61_400, 56.503],
    ]),
    feature({ golf: "green" }, "Polygon", [square(n * 130 - 8, 326, 16)]),
    feature({ golf: "tee", tee: "white" }, "Point", [-9 + (n * 130) / 61_400, 56.5]),
    feature({ golf: "bunker" }, "Polygon", [square(n * 130 + 20, 250, 6)]),
  ]);
  await writeFile(map, JSON.stringify({ type: "FeatureCollection", features: holes }));
  const folder = join(scratch, "content");
  return breakFolder(
    scratch,
    folder,
    before,
    ["src/commands/bring.ts", "--content", folder, "--course", "course-1", "--write", map],
    every,
  );
}

export async function breakNew(scratch: string, every = 1): Promise<Tried> {
  const folder = join(scratch, "club");
  return breakFolder(
    scratch,
    folder,
    undefined,
    ["src/commands/new.ts", "--folder", folder, "--name", "Trial Links", "--holes", "9", "--at", "lat=56.5,lon=-9"],
    every,
  );
}
