/** Time to measure a hole of the demo, from content already read. */
import { fileURLToPath } from "node:url";
import { readContent } from "../../src/read/content.ts";
import { measureCourse } from "../../src/measure/course.ts";
import { checkTip, renderTip } from "../../src/tell/tip.ts";
import { median, type BenchLine } from "./line.ts";
import { words } from "../../src/site/language/words.ts";

const RUNS = 31;

export async function measureBench(): Promise<BenchLine[]> {
  const started = performance.now();
  const { club } = await readContent(fileURLToPath(new URL("../../content", import.meta.url)));
  const readMs = performance.now() - started;
  const course = club?.courses[0];
  if (!club || !course) throw new Error("The demo cannot be read; run the check command to see why.");
  const timed = (work: () => void): number => {
    const times = Array.from({ length: RUNS }, () => {
      const start = performance.now();
      work();
      return performance.now() - start;
    });
    return median(times) / course.holes.length;
  };
  const first = performance.now();
  const measured = measureCourse(course);
  const cold = (performance.now() - first) / course.holes.length;
  return [
    {
      name: "read the demo, 18 holes",
      value: readMs,
      unit: "ms",
      note: "front matter, schema and geometry checks, cold",
    },
    {
      name: "measure one hole",
      value: timed(() => measureCourse(course)),
      unit: "ms",
      note: `all tee sets; median of ${RUNS}; cold ${cold.toFixed(2)} ms; aim under 5 ms`,
    },
    {
      name: "fill and check one tip",
      value: timed(() =>
        measured.holes.forEach((hole) => {
          checkTip(hole, club.units);
          renderTip(hole, { units: club.units, idPrefix: "bench", words: words("en").tell });
        }),
      ),
      unit: "ms",
      note: "Markdown with its figures",
    },
  ];
}
