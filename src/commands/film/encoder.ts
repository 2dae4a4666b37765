/** Pictures into a video file: FFmpeg, the one that is here or Debian's, installed. */
import { spawn, spawnSync } from "node:child_process";
import { once } from "node:events";
import { aptInstall } from "../browser/install-browser.ts";
import { CommandError } from "../options.ts";

/** Set it to FFmpeg's path to use that one. */
export const ENCODER_VARIABLE = "MARRAM_FFMPEG";

export type FilmFormat = "mp4" | "webm";

/** How each format is written: an open, widely played codec, good enough to edit on. */
const CODECS: Readonly<Record<FilmFormat, readonly string[]>> = {
  mp4: ["-c:v", "libx264", "-preset", "medium", "-crf", "18", "-movflags", "+faststart", "-f", "mp4"],
  webm: ["-c:v", "libvpx-vp9", "-crf", "28", "-b:v", "0", "-row-mt", "1", "-f", "webm"],
};

const runs = (path: string): boolean => spawnSync(path, ["-version"], { stdio: "ignore" }).status === 0;

/** @throws CommandError when there is none and none can be installed */
export function findOrInstallEncoder(tell: (message: string) => void): string {
  const named = process.env[ENCODER_VARIABLE];
  if (named !== undefined && named !== "") {
    if (runs(named)) return named;
    throw new CommandError(
      `${ENCODER_VARIABLE} is ${named}, which cannot be run: set it to FFmpeg's path, or unset it.`,
    );
  }
  if (runs("ffmpeg")) return "ffmpeg";
  tell("No FFmpeg found; installing Debian's.");
  if (aptInstall(["ffmpeg"]) && runs("ffmpeg")) return "ffmpeg";
  throw new CommandError(
    `A film needs FFmpeg, which is not here. Install it, or set ${ENCODER_VARIABLE} to its path.`,
  );
}

export interface Encoder {
  /** A PNG picture of the film's size; settles when there is room for the next. */
  add(png: Uint8Array): Promise<void>;
  /** @throws CommandError with what the encoder said when it failed */
  finish(): Promise<void>;
  /** Stops without a film. */
  abandon(): void;
}

export function encodeTo(path: string, encoder: string, format: FilmFormat, framesPerSecond: number): Encoder {
  const child = spawn(
    encoder,
    [
      "-hide_banner",
      "-loglevel",
      "error",
      "-y",
      "-f",
      "image2pipe",
      "-c:v",
      "png",
      "-framerate",
      String(framesPerSecond),
      "-i",
      "-",
      // What every player can show; and no date or version in the file.
      "-an",
      "-pix_fmt",
      "yuv420p",
      "-map_metadata",
      "-1",
      "-fflags",
      "+bitexact",
      "-flags:v",
      "+bitexact",
      ...CODECS[format],
      path,
    ],
    { stdio: ["pipe", "ignore", "pipe"] },
  );
  let said = "";
  let failure: Error | undefined;
  child.stderr.setEncoding("utf8").on("data", (text: string) => (said += text));
  // A broken pipe is told by the exit code and what was said, which come with it.
  child.stdin.on("error", () => undefined);
  const ended = new Promise<number | null>((resolve) => {
    child.once("error", (error) => {
      failure = error;
      resolve(null);
    });
    child.once("close", resolve);
  });
  return {
    async add(png) {
      if (!child.stdin.writable || child.stdin.write(png)) return;
      await Promise.race([once(child.stdin, "drain"), ended]);
    },
    async finish() {
      child.stdin.end();
      const code = await ended;
      if (code !== 0)
        throw new CommandError(
          `The film could not be written. FFmpeg said: ${failure?.message ?? (said.trim() || `nothing, and ended with ${code}`)}`,
        );
    },
    abandon: () => void child.kill(),
  };
}
