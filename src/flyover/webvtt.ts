/** Captions as WebVTT (W3C, "WebVTT: The Web Video Text Tracks Format"). */
import type { Cue } from "../contract/film-data.ts";

/** `01:02:03.004`; hours only from the first hour on. */
export function timestamp(seconds: number): string {
  if (!Number.isFinite(seconds) || seconds < 0)
    throw new RangeError(`A caption's time must be 0 or more, not ${seconds}.`);
  const total = Math.round(seconds * 1000);
  const part = (value: number, digits: number): string => String(value).padStart(digits, "0");
  const hours = Math.floor(total / 3_600_000);
  const rest = `${part(Math.floor(total / 60_000) % 60, 2)}:${part(Math.floor(total / 1000) % 60, 2)}.${part(total % 1000, 3)}`;
  return hours > 0 ? `${part(hours, 2)}:${rest}` : rest;
}

/** Cue text may hold no markup of ours, no arrow and no blank line. */
const cueText = (text: string): string =>
  text
    .replaceAll("&", "&amp;")
    .replaceAll("<", "&lt;")
    .replaceAll(">", "&gt;")
    .replace(/\n\s*\n/g, "\n");

/** The format's own mark for words in another language. */
const inLanguage = (text: string, language: string | undefined): string =>
  language === undefined ? text : `<lang ${language}>${text}</lang>`;

/** A whole file. @param title goes behind the signature; one line. */
export function webVtt(cues: readonly Cue[], title = ""): string {
  const heading = title.replaceAll("-->", " ").replace(/\s+/g, " ").trim();
  const blocks = cues.map(
    ({ startSeconds, endSeconds, text, language }, i) =>
      `${i + 1}\n${timestamp(startSeconds)} --> ${timestamp(endSeconds)}\n${inLanguage(cueText(text), language)}\n`,
  );
  return [`WEBVTT${heading === "" ? "" : ` ${heading}`}\n`, ...blocks].join("\n");
}
