/**
 * What a browser's PDF lacks: the boxes a printer cuts by, marks around them, the document's
 * language and title where readers look for them, and the same bytes for the same content.
 */
import { createHash } from "node:crypto";
import { PDFArray, PDFDict, PDFDocument, PDFHexString, PDFName, rgb, type PDFPage } from "@cantoo/pdf-lib";
import { points, SLUG_MM, turned, type Size } from "../../paper/sizes.ts";
import { centred, cropMarks, foldMarks, type Rect, type Stroke } from "../../paper/marks.ts";
import { saddleStitch } from "../../paper/imposition.ts";
import { sweep } from "./sweep.ts";
import { steadyIds } from "./steady-ids.ts";

export interface Finish {
  readonly title: string;
  readonly subject: string;
  readonly author: string;
  readonly language: string;
  /** The page without bleed, and what bleeds on every side of it in the PDF that came in. */
  readonly page: Size;
  readonly bleedMm: number;
  /** Keeps the bleed and puts crop marks around it. */
  readonly marks: boolean;
  /** Where the sheet is folded, from its left edge. */
  readonly foldMm?: number;
  /** Shown as facing pages after a cover. */
  readonly facing?: boolean;
}

/** Registration black: on every plate. */
const MARK = { thickness: 0.35, color: rgb(0, 0, 0) };
const DASH = [2.5, 2];

function draw(page: PDFPage, strokes: readonly Stroke[], dashed = false): void {
  for (const {
    from: [x1, y1],
    to: [x2, y2],
  } of strokes) {
    page.drawLine({ start: { x: x1, y: y1 }, end: { x: x2, y: y2 }, ...MARK, ...(dashed ? { dashArray: DASH } : {}) });
  }
}

/** Sets the boxes of a page that holds trim and bleed from its upper left corner. */
function setBoxes(page: PDFPage, { page: size, bleedMm, marks, foldMm }: Finish): Rect {
  const { height } = page.getMediaBox();
  const [bleed, slug] = [points(bleedMm), points(SLUG_MM)];
  const trim: Rect = {
    x: bleed,
    y: height - bleed - points(size.heightMm),
    width: points(size.widthMm),
    height: points(size.heightMm),
  };
  const around = (by: number): readonly [number, number, number, number] => [
    trim.x - by,
    trim.y - by,
    trim.width + 2 * by,
    trim.height + 2 * by,
  ];
  page.setMediaBox(...around(marks ? bleed + slug : 0));
  page.setCropBox(...around(marks ? bleed + slug : 0));
  page.setBleedBox(...around(marks ? bleed : 0));
  page.setTrimBox(...around(0));
  page.setArtBox(...around(0));
  if (marks) {
    draw(page, cropMarks(trim, bleed));
    if (foldMm !== undefined) draw(page, foldMarks(trim, trim.x + points(foldMm), bleed), true);
  }
  return trim;
}

/** Dates say when it was printed; a book is the same whenever that is. They are left out. */
function setDetails(
  document: PDFDocument,
  { title, subject, author, language }: Pick<Finish, "title" | "subject" | "author" | "language">,
): void {
  document.setTitle(title, { showInWindowTitleBar: true });
  document.setSubject(subject);
  document.setAuthor(author);
  document.setCreator("Marram");
  document.setProducer("Marram");
  document.setLanguage(language);
  const info = document.context.lookup(document.context.trailerInfo.Info);
  if (info instanceof PDFDict) for (const key of ["CreationDate", "ModDate"]) info.delete(PDFName.of(key));
}

async function save(document: PDFDocument): Promise<Uint8Array> {
  const once = await document.save({ useObjectStreams: true, updateFieldAppearances: false });
  // The file's identity (ISO 32000-1, 14.4) from its own content.
  const id = PDFHexString.of(createHash("md5").update(once).digest("hex").toUpperCase());
  const ids = PDFArray.withContext(document.context);
  ids.push(id);
  ids.push(id);
  document.context.trailerInfo.ID = ids;
  return document.save({ useObjectStreams: true, updateFieldAppearances: false });
}

/** Finishes a PDF of single pages: boxes, marks, details. Tags, bookmarks and text stay as they are. */
export async function finish(pdf: Uint8Array, how: Finish): Promise<Uint8Array> {
  const document = await PDFDocument.load(pdf, { updateMetadata: false });
  for (const page of document.getPages()) setBoxes(page, how);
  steadyIds(document);
  setDetails(document, how);
  if (how.facing) document.catalog.set(PDFName.of("PageLayout"), PDFName.of("TwoPageRight"));
  return save(document);
}

/**
 * A booklet: pages two and two on sheets to be printed on both sides (turned over the short
 * edge), folded in the middle and stapled. A printer's sheet: pictures of the pages, without
 * tags or bookmarks.
 */
export async function impose(pdf: Uint8Array, how: Finish, sheet: Size): Promise<Uint8Array> {
  const source = await PDFDocument.load(pdf, { updateMetadata: false });
  const target = await PDFDocument.create({ updateMetadata: false });
  const [width, height, bleed] = [points(how.page.widthMm), points(how.page.heightMm), points(how.bleedMm)];
  const { widthMm, heightMm } = turned(sheet);
  const pages = source.getPages();
  // At the spine two pages meet: there is no bleed there. All are taken over in one go, so that fonts are shared.
  const spreads = saddleStitch(pages.length);
  const taken = spreads.flatMap(([left, right]) => [
    { page: pages[left - 1]!, spine: "right" },
    { page: pages[right - 1]!, spine: "left" },
  ]);
  const embedded = await target.embedPages(
    taken.map(({ page }) => page),
    taken.map(({ page, spine }) => {
      const top = page.getMediaBox().height;
      const start = spine === "left" ? bleed : 0;
      return { left: start, right: start + bleed + width, top, bottom: top - height - 2 * bleed };
    }),
  );
  for (let i = 0; i < spreads.length; i++) {
    const side = target.addPage([points(widthMm), points(heightMm)]);
    const trim = centred(2 * width, height, points(widthMm), points(heightMm));
    side.drawPage(embedded[2 * i]!, { x: trim.x - bleed, y: trim.y - bleed });
    side.drawPage(embedded[2 * i + 1]!, { x: trim.x + width, y: trim.y - bleed });
    side.setTrimBox(trim.x, trim.y, trim.width, trim.height);
    side.setBleedBox(trim.x - bleed, trim.y - bleed, trim.width + 2 * bleed, trim.height + 2 * bleed);
    draw(side, cropMarks(trim, bleed));
    draw(side, foldMarks(trim, trim.x + width, bleed), true);
  }
  setDetails(target, how);
  await sweep(target);
  return save(target);
}

/** Single pages each in the middle of a sheet, with marks to cut and fold by. */
export async function onSheets(pdf: Uint8Array, how: Finish, sheet: Size): Promise<Uint8Array> {
  const source = await PDFDocument.load(pdf, { updateMetadata: false });
  const target = await PDFDocument.create({ updateMetadata: false });
  const [width, height, bleed] = [points(how.page.widthMm), points(how.page.heightMm), points(how.bleedMm)];
  const pages = source.getPages();
  const embedded = await target.embedPages(
    pages,
    pages.map((page) => {
      const top = page.getMediaBox().height;
      return { left: 0, right: width + 2 * bleed, top, bottom: top - height - 2 * bleed };
    }),
  );
  for (const picture of embedded) {
    const side = target.addPage([points(sheet.widthMm), points(sheet.heightMm)]);
    const trim = centred(width, height, points(sheet.widthMm), points(sheet.heightMm));
    side.drawPage(picture, { x: trim.x - bleed, y: trim.y - bleed });
    side.setTrimBox(trim.x, trim.y, trim.width, trim.height);
    draw(side, cropMarks(trim, bleed));
    if (how.foldMm !== undefined) draw(side, foldMarks(trim, trim.x + points(how.foldMm), bleed), true);
  }
  setDetails(target, how);
  await sweep(target);
  return save(target);
}
