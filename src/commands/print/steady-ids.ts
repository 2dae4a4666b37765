/**
 * The names of a tagged PDF's structure elements, made to depend on the document alone.
 *
 * The browser names each after a counter of its own that also counts what it did before,
 * so that one book printed twice could differ in nothing but these names.
 */
import { PDFArray, PDFDict, PDFName, PDFStream, PDFString, type PDFDocument, type PDFObject } from "@cantoo/pdf-lib";

const NODE = /^node(\d{8})$/;

type Replace = (put: (value: PDFString) => void, written: string) => void;

/** Every string in an object, wherever it is nested; indirect objects are visited as themselves. */
function eachString(object: PDFObject, visit: Replace): void {
  const at = (value: PDFObject, put: (changed: PDFString) => void): void => {
    if (value instanceof PDFString) visit(put, value.asString());
    else eachString(value, visit);
  };
  if (object instanceof PDFArray) {
    for (let i = 0; i < object.size(); i++) at(object.get(i), (value) => object.set(i, value));
  } else if (object instanceof PDFDict) {
    for (const key of object.keys())
      at(object.get(key)!, (value) => object.set(PDFName.of(key.asString().slice(1)), value));
  } else if (object instanceof PDFStream) {
    eachString(object.dict, visit);
  }
}

/**
 * Numbers the names from 1 in their own order, which keeps the name tree sorted as it must be (ISO 32000-1,
 * 7.9.6).
 */
export function steadyIds(document: PDFDocument): void {
  const objects = document.context.enumerateIndirectObjects().map(([, object]) => object);
  const found = new Set<string>();
  for (const object of objects) eachString(object, (_put, written) => void (NODE.test(written) && found.add(written)));
  const renamed = new Map([...found].sort().map((name, i) => [name, `node${String(i + 1).padStart(8, "0")}`]));
  for (const object of objects) {
    eachString(object, (put, written) => {
      const name = renamed.get(written);
      if (name !== undefined) put(PDFString.of(name));
    });
  }
}
