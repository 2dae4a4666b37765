/** What a page does for the maps it opens: fetches their data, and names the fonts their labels are set in. */

/** Our own build wrote the file, so its shape is taken on trust. @throws when it does not come */
export async function fetched<Data>(address: URL): Promise<Data> {
  const response = await fetch(address);
  if (!response.ok) throw new Error(`${address.pathname} answered ${response.status}`);
  return await response.json() as Data;
}

/** The first font family of an element's style. */
export const fontsOf = (element: HTMLElement): string[] =>
  getComputedStyle(element).fontFamily.split(",").map((family) => family.trim().replace(/^["']|["']$/g, "")).slice(0, 1);
