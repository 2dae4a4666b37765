/** `sitemap.xml` and `robots.txt` of a guide that knows its own address. */
import { writeFile } from "node:fs/promises";
import { join } from "node:path";

/** Pages in the order given; no dates, so that the same guide gives the same bytes. */
export const sitemapXml = (addresses: readonly string[]): string =>
  [
    '<?xml version="1.0" encoding="UTF-8"?>',
    '<urlset xmlns="http://www.sitemaps.org/schemas/sitemap/0.9">',
    ...addresses.map((address) => `  <url><loc>${address.replaceAll("&", "&amp;")}</loc></url>`),
    "</urlset>",
    "",
  ].join("\n");

/** Search engines read it only at the root of a host; below, it does no harm. */
export const robotsTxt = (sitemap: string): string => `User-agent: *\nAllow: /\n\nSitemap: ${sitemap}\n`;

/**
 * @param site origin of the guide
 * @param base path it is served from, a slash at each end
 * @param pages paths from the guide's root
 */
export async function writeSitemap(
  folder: string,
  site: string,
  base: string,
  pages: readonly string[],
): Promise<void> {
  const full = (path: string): string => new URL(`${base}${path}`, site).href;
  await writeFile(join(folder, "sitemap.xml"), sitemapXml(pages.map(full)));
  await writeFile(join(folder, "robots.txt"), robotsTxt(full("sitemap.xml")));
}
