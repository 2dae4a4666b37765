/** Following the links of built pages without a browser. */

const ATTRIBUTE = /\s(?:href|src|srcset|data-source)\s*=\s*(?:"([^"]*)"|'([^']*)')/g;

/** Every address a page names: links, scripts, styles, pictures in every size. */
export function linksIn(html: string): string[] {
  return [...html.matchAll(ATTRIBUTE)].flatMap(([whole, double, single]) => {
    const value = (double ?? single ?? "").replaceAll("&amp;", "&").replaceAll("&#38;", "&");
    return whole.trimStart().startsWith("srcset")
      ? value.split(",").map((one) => one.trim().split(/\s+/)[0]!)
      : [value];
  });
}

/**
 * Links of a page that lead nowhere within the site; links to other sites are let be.
 *
 * @param page its address below the base: `""`, `links/7/`
 * @param read a file of the site as text, undefined when there is none
 */
export function brokenLinks(
  page: string,
  html: string,
  base: string,
  read: (file: string) => string | undefined,
): string[] {
  const here = new URL(`${base}${page}`, "http://site.invalid");
  return linksIn(html).flatMap((link) => {
    const target = new URL(link, here);
    if (target.origin !== here.origin) return [];
    if (!target.pathname.startsWith(base)) return [`${link}: outside ${base}`];
    const path = decodeURIComponent(target.pathname.slice(base.length));
    const text =
      target.pathname === here.pathname ? html : read(path === "" || path.endsWith("/") ? `${path}index.html` : path);
    if (text === undefined) return [`${link}: no such file`];
    const id = decodeURIComponent(target.hash.slice(1));
    return id === "" || new RegExp(`\\sid=["']?${id.replace(/[.*+?^${}()|[\]\\]/g, "\\$&")}["'\\s>]`).test(text)
      ? []
      : [`${link}: nothing there has that id`];
  });
}
