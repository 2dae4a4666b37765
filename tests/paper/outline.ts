/** Bookmarks of a PDF, read with pdf-lib: depth and title, in order. */
import { readFile } from "node:fs/promises";
import { PDFDict, PDFDocument, PDFHexString, PDFName, PDFString } from "@cantoo/pdf-lib";

export interface Bookmark {
  readonly depth: number;
  readonly title: string;
}

export async function bookmarksOf(file: string): Promise<Bookmark[]> {
  const { catalog, context } = await PDFDocument.load(await readFile(file), { updateMetadata: false });
  const found: Bookmark[] = [];
  const walk = (start: unknown, depth: number): void => {
    for (let at = start; at instanceof PDFDict; at = at.lookup(PDFName.of("Next"))) {
      const title = at.lookup(PDFName.of("Title"));
      if (title instanceof PDFString || title instanceof PDFHexString)
        found.push({ depth, title: title.decodeText() });
      walk(at.lookup(PDFName.of("First")), depth + 1);
    }
  };
  const outlines = context.lookup(catalog.get(PDFName.of("Outlines")));
  if (outlines instanceof PDFDict) walk(outlines.lookup(PDFName.of("First")), 1);
  return found;
}

/** The document's language, and whether its title is shown. */
export async function announced(
  file: string,
): Promise<{ language: string; showsTitle: boolean; facing: string | undefined }> {
  const { catalog } = await PDFDocument.load(await readFile(file), { updateMetadata: false });
  const language = catalog.lookup(PDFName.of("Lang"));
  const preferences = catalog.lookup(PDFName.of("ViewerPreferences"));
  return {
    language: language instanceof PDFString || language instanceof PDFHexString ? language.decodeText() : "",
    showsTitle: preferences instanceof PDFDict && String(preferences.get(PDFName.of("DisplayDocTitle"))) === "true",
    facing: catalog.get(PDFName.of("PageLayout"))?.toString(),
  };
}
