/** What a page does for the maps it opens: fetches their data, and names the fonts their labels are set in. */

/** @throws when it does not come, or is no JSON; what it holds is for its reader in contract/ */
export async function fetched(address: URL, signal: AbortSignal): Promise<unknown> {
  const response = await fetch(address, { signal });
  if (!response.ok) throw new Error(`${address.pathname} answered ${response.status}`);
  return await response.json();
}

/** The first font family of an element's style. */
export const fontsOf = (element: HTMLElement): string[] =>
  getComputedStyle(element)
    .fontFamily.split(",")
    .map((family) => family.trim().replace(/^["']|["']$/g, ""))
    .slice(0, 1);
