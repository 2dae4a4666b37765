/** Poppler's command-line programs: an independent reader of the PDFs we make. */
import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { needTools } from "./tools.ts";

export type PopplerProgram = "pdffonts" | "pdfimages" | "pdfinfo" | "pdftocairo" | "pdftoppm" | "pdftotext";

/** Runs one of poppler's programs and returns what it prints. */
export function poppler(program: PopplerProgram, args: readonly string[]): string {
  needTools("poppler-utils");
  return execFileSync(program, args, {
    encoding: "utf8",
    maxBuffer: 256 * 1024 * 1024,
    stdio: ["ignore", "pipe", "pipe"],
  });
}

/** Text of some pages, laid out as it stands. */
export const textOf = (pdf: string, first: number, last = first): string =>
  poppler("pdftotext", ["-layout", "-f", `${first}`, "-l", `${last}`, pdf, "-"]);

export interface PageBoxes {
  /** Left, low, right, high, in points. */
  readonly [box: string]: readonly number[];
}

/** Every box of every page, in order. */
export function boxesOf(pdf: string): PageBoxes[] {
  const pages = Number(/^Pages:\s+(\d+)/m.exec(poppler("pdfinfo", [pdf]))?.[1]);
  const pageBoxes: Record<string, readonly number[]>[] = Array.from({ length: pages }, () => ({}));
  for (const [, page, box, numbers] of poppler("pdfinfo", ["-box", "-f", "1", "-l", `${pages}`, pdf]).matchAll(
    /^Page\s+(\d+) (\w+Box):\s+(.*)$/gm,
  )) {
    pageBoxes[Number(page) - 1]![box!] = numbers!.trim().split(/\s+/).map(Number);
  }
  return pageBoxes;
}

/** Width and height of a box, points. */
export const sizeOf = (box: readonly number[] | undefined): readonly [number, number] => {
  if (box?.length !== 4) throw new Error("The page has no such box.");
  return [box[2]! - box[0]!, box[3]! - box[1]!];
};

/** A page as vector graphics, in points. */
export const vectorsOf = (pdf: string, page: number): string =>
  poppler("pdftocairo", ["-svg", "-f", `${page}`, "-l", `${page}`, pdf, "-"]);

/** A page as a picture, PNG. */
export function pictureOf(pdf: string, page: number, dotsPerInch: number): Buffer {
  const folder = mkdtempSync(join(tmpdir(), "marram-page-"));
  try {
    poppler("pdftoppm", [
      "-png",
      "-singlefile",
      "-r",
      `${dotsPerInch}`,
      "-f",
      `${page}`,
      "-l",
      `${page}`,
      pdf,
      join(folder, "page"),
    ]);
    return readFileSync(join(folder, "page.png"));
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
