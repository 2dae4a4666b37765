/**
 * Lettering on a drawing stands in a halo: the same text stroked in paper's colour beneath.
 * A browser writes that stroke into a PDF as text a second time, so every name would be
 * found, read aloud and copied twice. Before printing, halos are drawn as what they look
 * like: outlines of the letters, stroked.
 */
import { readFile } from "node:fs/promises";
import { join } from "node:path";
import opentype from "opentype.js";
import type { Page } from "playwright-core";

/** Outlines are taken at this size and scaled. */
const EM = 100;

type Outlines = Record<string, Record<string, string>>;

const FACES = [
  { key: "normal 400", file: "400-normal" },
  { key: "normal 600", file: "600-normal" },
  { key: "italic 400", file: "400-italic" },
] as const;

/**
 * Outlines of some characters in the lettering's faces; a character no face has is left out and goes without
 * a halo.
 */
async function outlinesOf(characters: readonly string[], fontFolder: string): Promise<Outlines> {
  const outlines: Outlines = {};
  for (const { key, file } of FACES) {
    const own: Record<string, string> = (outlines[key] = {});
    for (const subset of ["latin", "latin-ext"]) {
      const bytes = await readFile(join(fontFolder, `besley-${subset}-${file}.woff`));
      const font = opentype.parse(bytes.buffer.slice(bytes.byteOffset, bytes.byteOffset + bytes.byteLength));
      for (const character of characters) {
        const glyph = font.charToGlyph(character);
        if (own[character] === undefined && glyph.index !== 0) own[character] = glyph.getPath(0, 0, EM).toPathData(1);
      }
    }
  }
  return outlines;
}

/** Turns the halos of a page's drawings into outlines. */
export async function drawHalos(page: Page, fontFolder: string): Promise<void> {
  const characters = await page.evaluate(() => {
    const found = new Set<string>();
    for (const text of document.querySelectorAll<SVGTextElement>("svg.plate text"))
      for (const c of text.textContent ?? "") if (c.trim() !== "") found.add(c);
    return [...found];
  });
  const outlines = await outlinesOf(characters, fontFolder);
  await page.evaluate(
    ({ outlines, em }) => {
      for (const text of document.querySelectorAll<SVGTextElement>("svg.plate text")) {
        const style = getComputedStyle(text);
        if (style.stroke === "none" || !style.paintOrder.startsWith("stroke")) continue;
        const size = parseFloat(style.fontSize);
        const face = outlines[`${style.fontStyle} ${style.fontWeight}`] ?? outlines["normal 400"] ?? {};
        const halo = document.createElementNS("http://www.w3.org/2000/svg", "g");
        const transform = text.getAttribute("transform");
        if (transform) halo.setAttribute("transform", transform);
        halo.setAttribute("fill", "none");
        halo.setAttribute("stroke", style.stroke);
        halo.setAttribute("stroke-linejoin", "round");
        const shown = text.getNumberOfChars() > 0 && style.display !== "none";
        [...(shown ? (text.textContent ?? "") : "")].forEach((character, i) => {
          const d = face[character];
          if (!d) return;
          const { x, y } = text.getStartPositionOfChar(i);
          const path = document.createElementNS("http://www.w3.org/2000/svg", "path");
          path.setAttribute("transform", `translate(${x.toFixed(2)} ${y.toFixed(2)}) scale(${size / em})`);
          path.setAttribute("stroke-width", String((parseFloat(style.strokeWidth) * em) / size));
          path.setAttribute("d", d);
          halo.append(path);
        });
        text.before(halo);
        // Whatever the drawing's own rule says: the letters are filled, no more.
        text.style.stroke = "none";
      }
    },
    { outlines, em: EM },
  );
}
