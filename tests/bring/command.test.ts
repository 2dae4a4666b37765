/**
 * The commands as a club runs them: an OpenStreetMap file of two holes into an empty course, out again, and
 * what is said when something is missing.
 */
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, it } from "vitest";
import { oval, position, writeClub } from "../fixtures/club.ts";
import { run as runCommand } from "../support/run.ts";

let content: string;
beforeAll(async () => {
  content = mkdtempSync(join(tmpdir(), "marram-command-"));
  await writeClub(content, { holes: 0 });
  writeFileSync(join(content, "map.osm"), osm());
});
afterAll(() => rmSync(content, { recursive: true, force: true }));

/** OSM XML drawn by hand: ways by their positions, a multipolygon of two ways, a pin. */
function osm(): string {
  const nodes: string[] = [];
  const things: string[] = [];
  let next = 1;
  const tags = (of: Record<string, string>): string =>
    Object.entries(of)
      .map(([k, v]) => `<tag k="${k}" v="${v}"/>`)
      .join("");
  const node = ([lon, lat]: readonly [number, number], of: Record<string, string> = {}): number => {
    nodes.push(`<node id="${next}" lat="${lat}" lon="${lon}">${tags(of)}</node>`);
    return next++;
  };
  const way = (path: readonly (readonly [number, number])[], of: Record<string, string>): number => {
    const closed = path[0]!.join() === path[path.length - 1]!.join();
    const refs = (closed ? path.slice(0, -1) : path).map((p) => node(p));
    things.push(
      `<way id="${next}">${[...refs, ...(closed ? [refs[0]] : [])].map((ref) => `<nd ref="${ref}"/>`).join("")}${tags(of)}</way>`,
    );
    return next++;
  };
  for (const [i, x] of [0, 130].entries()) {
    way([position(x, 0), position(x + 8, 200), position(x, 330)], {
      golf: "hole",
      ref: String(i + 1),
      par: "4",
      handicap: String(2 - i),
      name: ["Outward", "Homeward"][i]!,
      "dist:white": "361",
      "dist:red": "330",
    });
    way(oval(x, 330, 12, 14, 10), { golf: "green" });
    way(oval(x, 0, 5, 5, 6), { golf: "tee", tee: "white" });
    way(oval(x + 4, 190, 16, 90, 12), { golf: "fairway" });
    way(oval(x - 20, 210, 4, 3, 6), { golf: "bunker" });
    way(oval(x + 22, 300, 4, 3, 6), { golf: "bunker" });
    node(position(x + 2, 331), { golf: "pin", ref: String(i + 1) });
    node(position(x, 1), { golf: "tee", tee: "white" });
    node(position(x, 31), { golf: "tee", tee: "red" });
  }
  const [outer, inner] = [way(oval(65, 100, 20, 30, 12), {}), way(oval(65, 100, 5, 6, 8), {})];
  things.push(
    `<relation id="${next++}"><member type="way" ref="${outer}" role="outer"/><member type="way" ref="${inner}" role="inner"/>${tags({ type: "multipolygon", natural: "water", name: "Mere" })}</relation>`,
  );
  way([position(-40, -50), position(-40, 400)], { highway: "residential", name: "Shore Road" });
  node(position(10, 10), { amenity: "bench" });
  return `<?xml version="1.0" encoding="UTF-8"?>\n<osm version="0.6" generator="by hand">${nodes.join("")}${things.join("")}</osm>`;
}

interface Result {
  readonly code: number | null;
  readonly out: string;
}

async function run(command: "bring" | "export", ...args: string[]): Promise<Result> {
  const { code, stdout, stderr } = await runCommand(`src/commands/${command}.ts`, ["--content", content, ...args]);
  return { code, out: `${stdout}${stderr}` };
}

it("shows first, writes when asked, asks for a unit, and has nothing to do the second time", async () => {
  const map = join(content, "map.osm");
  const preview = await run("bring", "--course", "course-1", "--all", map);
  expect(preview.code).toBe(0);
  expect(preview.out).toContain(`${map}: OSM XML, 21 features.`);
  expect(preview.out).toContain("gives lengths for white, red without a unit, and OpenStreetMap sets none");
  expect(preview.out).toContain("course-1/holes/01-outward.md (new)");
  expect(preview.out).toContain(
    "20 matched, 0 guessed, 1 left over: 20 new, 0 changed, 0 as before.\nThis is a preview; nothing was written. Add --write to change 3 files in ",
  );
  expect(existsSync(join(content, "course-1/holes/01-outward.md"))).toBe(false);

  const written = await run("bring", "--course", "course-1", "--dist-unit", "yards", "--write", map);
  expect(written.out).toContain("Written: 3 files in ");
  const page = readFileSync(join(content, "course-1/holes/02-homeward.md"), "utf8");
  expect(page).toContain("hole: 2\nname: Homeward\npar: 4\nstrokeIndex: 1\ncard: { white: 361, red: 330 }\nfeatures:");
  expect([...page.matchAll(/id: ([a-z0-9-]+)/g)].map(([, id]) => id)).toEqual([
    "line",
    "tee-white",
    "tee-red",
    "teeing-ground-white",
    "fairway",
    "green",
    "pin",
    "bunker-left-1",
    "bunker-right-1",
  ]);
  expect(readFileSync(join(content, "course-1/course.yaml"), "utf8")).toMatch(
    /id: mere, properties: \{ natural: water, name: Mere \}, geometry: \{ type: Polygon, coordinates: \[\[\[.*\]\],\[\[/,
  );

  const again = await run("bring", "--course", "course-1", "--dist-unit", "yards", map);
  expect(again.out).toContain(
    "0 new, 0 changed, 20 as before.\nThis is a preview; nothing was written. Add --write to change 0 files",
  );
});

it("exports what it brought, in the format asked for", async () => {
  const out = join(content, "out");
  expect(await run("export", "--format", "gpx", "--out", out)).toEqual({
    code: 0,
    out: `${join(out, "course-1.gpx")} written.\n`,
  });
  expect((await run("export", "--out", out)).out.trim().split("\n")).toHaveLength(3);
  expect((await run("bring", "--course", "course-1", join(out, "course-1.kml"))).out).toContain(
    "0 new, 0 changed, 20 as before.",
  );
});

it.each([
  [["bring", "map.osm"], "--course is missing: which course is it? Write --course tarvay, the name of its folder."],
  [["bring", "--course", "course-1"], "No files are named. Expected GeoJSON"],
  [
    ["bring", "--course", "course-1", "--dist-unit", "feet", "x"],
    '--dist-unit is "feet": expected yards or metres. Write --dist-unit yards.',
  ],
  [["bring", "--course", "course-1", "--lines", "ref", "x"], '--lines is "ref": expected a tag and its value.'],
  [["bring", "--course", "course-1", "--apply", "x"], "Unknown option '--apply'."],
  [["bring", "--course", "elsewhere", "x"], "elsewhere/course.yaml: is not there. Write it first"],
  [["bring", "--course", "../course-1", "x"], "expected the name of a course's folder"],
  [["bring", "--course", "course-1", "absent.gpx"], "absent.gpx: cannot be read: it is not there. Check the path."],
  [["export"], "--out is missing: where are the files to go? Write --out exported."],
  [
    ["export", "--out", "x", "--format", "shp"],
    '--format is "shp": expected geojson, gpx, kml or all. Write --format gpx.',
  ],
  [["export", "--out", "x", "--course", "no"], 'There is no course "no" in '],
] as const)("%j says what is missing and what to type", async ([command, ...args], said) => {
  const { code, out } = await run(command, ...args);
  expect(code).toBe(1);
  expect(out).toContain(said);
  expect(out).not.toMatch(/\n\s+at /);
});
