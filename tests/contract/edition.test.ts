/** Editions as plain data: addresses, reading, what an update takes. */
import { describe, expect, test } from "vitest";
import {
  addressIn,
  addressOf,
  bytesToFetch,
  filesByAddress,
  isStamped,
  readEdition,
  stampedWith,
  UNSTAMPED,
  type Edition,
} from "../../src/contract/edition.ts";
import { keyOf } from "../../src/islands/keep/shelf.ts";

const hash = (digit: string): string => digit.repeat(64);
const edition = (files: Record<string, [number, string]>): Edition => ({
  edition: "0123456789abcdef",
  bytes: Object.values(files).reduce((sum, [bytes]) => sum + bytes, 0),
  files: Object.fromEntries(
    Object.entries(files).map(([path, [bytes, digit]]) => [path, { bytes, sha256: hash(digit) }]),
  ),
});

test.each([
  ["index.html", ""],
  ["a/7/index.html", "a/7/"],
  ["a/notindex.html", "a/notindex.html"],
  ["404.html", "404.html"],
])("%s is asked for as %j", (path, address) => {
  expect(addressOf(path)).toBe(address);
});

test("an address is found under the guide's path, however it is written, and nowhere else", () => {
  expect(addressIn("/g/a/7/", "/g/")).toBe("a/7/");
  expect(addressIn("/g/a/7/index.html", "/g/")).toBe("a/7/");
  expect(addressIn("/g/photos/d%C3%BCne.jpg", "/g/")).toBe("photos/düne.jpg");
  expect(addressIn("/gg/a/", "/g/")).toBeUndefined();
  expect(addressIn("/g/%E0%A4%A", "/g/")).toBeUndefined();
});

test("a file's key in the cache is the address it is asked for, back and forth", () => {
  for (const address of ["", "a/7/", "photos/düne 1.jpg", "100%.png"])
    expect(addressIn(keyOf("/g/", address), "/g/")).toBe(address);
});

test("an update takes what the kept edition does not hold alike", () => {
  const kept = edition({ "index.html": [100, "a"], "b.css": [20, "b"], "gone.js": [7, "c"] });
  const next = edition({ "index.html": [110, "d"], "b.css": [20, "b"], "new.js": [5, "e"] });
  expect(bytesToFetch(next, kept)).toBe(115);
  expect(bytesToFetch(next, undefined)).toBe(135);
  expect(bytesToFetch(kept, kept)).toBe(0);
  expect(filesByAddress(next).get("")?.bytes).toBe(110);
  // A page that differs by the edition's name alone is written anew from the one that is kept.
  const named = (all: Edition, digit: string): Edition => ({
    ...all,
    files: { ...all.files, "index.html": { ...all.files["index.html"]!, unstamped: hash(digit) } },
  });
  expect(bytesToFetch(named(next, "f"), named(kept, "f"))).toBe(5);
  expect(bytesToFetch(named(next, "f"), named(kept, "0"))).toBe(115);
});

test("a page is put under another edition's name, and nothing else of it changes", () => {
  const page = `<html lang="de" data-edition="${UNSTAMPED.edition}" data-edition-bytes="${UNSTAMPED.bytes}"><p>data-edition</p>`;
  const named = stampedWith(page, "0123456789abcdef", 25_700_000);
  expect(named).toBe(
    '<html lang="de" data-edition="0123456789abcdef" data-edition-bytes="000025700000"><p>data-edition</p>',
  );
  expect(stampedWith(named, UNSTAMPED.edition, UNSTAMPED.bytes)).toBe(page);
  expect([isStamped(named), isStamped("<html>")]).toEqual([true, false]);
});

describe("reading", () => {
  const good = edition({ "index.html": [1, "a"] });
  test("takes what the build writes", () => {
    expect(readEdition(JSON.parse(JSON.stringify(good)))).toEqual(good);
  });
  test.each([
    ["nothing", undefined],
    ["a host's page", "<html>"],
    ["a list", []],
    ["another name", { ...good, edition: "latest" }],
    ["no size", { ...good, bytes: "1" }],
    ["a file without its hash", { ...good, files: { a: { bytes: 1 } } }],
    ["a short hash", { ...good, files: { a: { bytes: 1, sha256: "ab" } } }],
  ])("refuses %s", (_, value) => {
    expect(readEdition(value)).toBeUndefined();
  });
});
