/** Time to check the demo's 18 holes, and how well the matcher does on labelled sentences. */
import { fileURLToPath } from "node:url";
import { runChecks } from "../../src/check/check.ts";
import { loadGuide } from "../../src/site/load/load.ts";
import { HELD_OUT, tuning } from "../check/corpus.ts";
import { score } from "../check/scoring.ts";
import { median, type BenchLine } from "./line.ts";

const RUNS = 5;

export async function checkBench(): Promise<BenchLine[]> {
  const { guide } = await loadGuide(fileURLToPath(new URL("../../content", import.meta.url)));
  const measured = guide?.courses[0];
  if (!guide || !measured) throw new Error("The demo cannot be read; run the check command to see why.");
  const once = (): { readonly wall: number; readonly cpu: number } => {
    const [wall, cpu] = [performance.now(), process.cpuUsage()];
    runChecks({ club: guide.club, measured, today: "2026-11-25" });
    const used = process.cpuUsage(cpu);
    return { wall: performance.now() - wall, cpu: (used.user + used.system) / 1000 };
  };
  const first = once();
  const warm = median(Array.from({ length: RUNS }, () => once().cpu));
  const held = score(HELD_OUT);
  const all = score([...tuning(), ...HELD_OUT]);
  return [
    {
      name: "check the demo, 18 holes, cold",
      value: first.wall,
      unit: "ms",
      note: `${first.cpu.toFixed(0)} ms of processor; aim under 1,000`,
    },
    { name: "check the demo, 18 holes, warm", value: warm, unit: "ms", note: `processor time, median of ${RUNS}` },
    {
      name: "contradictions, held out: precision",
      value: held.precision,
      unit: "",
      note: `of ${held.called} called, ${held.sentences} sentences`,
    },
    { name: "contradictions, held out: recall", value: held.recall, unit: "", note: `of ${held.labelled} labelled` },
    {
      name: "contradictions, whole corpus: precision",
      value: all.precision,
      unit: "",
      note: `of ${all.called} called, ${all.sentences} sentences`,
    },
    { name: "contradictions, whole corpus: recall", value: all.recall, unit: "", note: `of ${all.labelled} labelled` },
  ];
}
