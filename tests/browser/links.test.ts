/** Every address in the built site leads somewhere in it, whatever path it is served from. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, inject, test } from "vitest";
import { brokenLinks, linksIn } from "../support/links.ts";
import { filesOf, pagesOf } from "../support/site.ts";

const { base, folder } = inject("site");

describe("the check itself", () => {
  const files = new Map([
    ["index.html", `<a href="/g/a/">a</a> <a href='/g/a/#x'>x</a> <img src="/g/p.png" srcset="/g/q.png 2x">`],
    ["a/index.html", `<p id="x">`],
    ["p.png", ""],
  ]);
  const broken = (page: string, html: string) => brokenLinks(page, html, "/g/", (file) => files.get(file));

  test("finds addresses of every kind", () => {
    expect(linksIn(files.get("index.html")!)).toEqual(["/g/a/", "/g/a/#x", "/g/p.png", "/g/q.png"]);
  });

  test("names a missing file, a missing place on a page, and an address outside the site", () => {
    expect(broken("", files.get("index.html")!)).toEqual(["/g/q.png: no such file"]);
    expect(broken("", `<a href="/g/a/#y">`)).toEqual(["/g/a/#y: nothing there has that id"]);
    expect(broken("", `<a href="/a/">`)).toEqual(["/a/: outside /g/"]);
    expect(broken("a/", `<a href="../">up</a> <a href="#x">x</a>`)).toEqual(["#x: nothing there has that id"]);
    expect(broken("", `<a href="mailto:a@b.example">m</a> <a href="https://elsewhere.example/">e</a>`)).toEqual([]);
  });
});

test("every link of every page leads somewhere", () => {
  const read = (file: string): string | undefined =>
    files.has(file) ? readFileSync(join(folder, file), "utf8") : undefined;
  const files = new Set(filesOf(folder));
  let count = 0;
  const broken = pagesOf(folder).flatMap((page) => {
    const html = read(page === "" || page.endsWith("/") ? `${page}index.html` : page)!;
    count += linksIn(html).length;
    return brokenLinks(page, html, base, read).map((fault) => `${page}: ${fault}`);
  });
  expect(broken).toEqual([]);
  expect(count).toBeGreaterThan(200);
});

test("no page holds a script, a style or a handler of its own: the policy would refuse it", () => {
  const own = pagesOf(folder).filter((page) => {
    const html = readFileSync(join(folder, page === "" || page.endsWith("/") ? `${page}index.html` : page), "utf8");
    return /<script(?![^>]*\ssrc=)(?![^>]*application\/ld\+json)[^>]*>|<style|\sstyle=|\son[a-z]+=/i.test(html);
  });
  expect(own).toEqual([]);
});
