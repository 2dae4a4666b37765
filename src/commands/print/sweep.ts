/** Drops what nothing points at any more: pages taken over as pictures leave their first copies behind. */
import { PDFArray, PDFDict, PDFRef, PDFStream, type PDFDocument, type PDFObject } from "@cantoo/pdf-lib";

export async function sweep(document: PDFDocument): Promise<void> {
  await document.flush();
  const { context } = document;
  const reached = new Set<PDFRef>();
  const open: (PDFObject | undefined)[] = [context.trailerInfo.Root, context.trailerInfo.Info];
  while (open.length > 0) {
    const object = open.pop();
    if (object instanceof PDFRef) {
      if (reached.has(object)) continue;
      reached.add(object);
      open.push(context.lookup(object));
    } else if (object instanceof PDFDict) open.push(...object.values());
    else if (object instanceof PDFArray) open.push(...object.asArray());
    else if (object instanceof PDFStream) open.push(...object.dict.values());
  }
  for (const [ref] of context.enumerateIndirectObjects()) if (!reached.has(ref)) context.delete(ref);
}
