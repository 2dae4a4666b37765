/** Films that the command makes of the built demo, and a look into them by FFmpeg's probe. */
import { spawnSync } from "node:child_process";
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import type { FilmData } from "../../src/contract/film-data.ts";
import { run, type Ended } from "./run.ts";
import { needTools } from "./tools.ts";

export const film = (demo: string, ...options: readonly string[]): Promise<Ended> =>
  run("src/commands/film.ts", ["--built", demo, ...options]);

/** Small pictures, quickly drawn. */
export const SMALL = ["--size", "160x120"] as const;

/** A file of the demo's one course: its folder in the first language, or below `de/`. */
export function filmData(demo: string, file: string, language = ""): FilmData {
  const course = readdirSync(demo).find((name) => existsSync(join(demo, name, "tour.json")))!;
  return JSON.parse(readFileSync(join(demo, language, course, file), "utf8")) as FilmData;
}

/** Width, height and pixel format, and when each frame is shown. */
export function probe(file: string): { readonly streams: readonly unknown[]; readonly seconds: readonly number[] } {
  needTools("ffmpeg");
  const { stdout } = spawnSync(
    "ffprobe",
    [
      "-v",
      "error",
      "-select_streams",
      "v",
      "-show_entries",
      "stream=width,height,pix_fmt:frame=pts_time",
      "-of",
      "json",
      file,
    ],
    { encoding: "utf8" },
  );
  const { streams, frames } = JSON.parse(stdout) as { streams: unknown[]; frames: { pts_time: string }[] };
  return { streams, seconds: frames.map(({ pts_time: seconds }) => Number(seconds)) };
}
