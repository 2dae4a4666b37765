/** The plate's colours, as the page shows them now. */
import { PALETTE, type Tint } from "../../draw/palette.ts";

export type MapColours = Readonly<Record<Tint, string>>;

export type Scheme = "light" | "dark";

/**
 * A scheme's palette, overruled tint by tint by what the page's style sheet says
 * (`--plate-fairway` and so on): that is how more contrast and a chosen theme reach the map.
 */
export function mapColours(scheme: Scheme, property: (name: string) => string): MapColours {
  const own: MapColours = PALETTE[scheme];
  const entries = Object.entries(own).map(([tint, colour]) => [tint, longHex(property(`--plate-${tint}`)) ?? colour]);
  return { ...own, ...Object.fromEntries(entries) };
}

/** `#rgb` or `#rrggbb` as `#rrggbb`; undefined for anything else. */
export function longHex(value: string): string | undefined {
  const digits = /^#([0-9a-f]{3}|[0-9a-f]{6})$/i.exec(value.trim())?.[1];
  if (digits === undefined) return undefined;
  return `#${digits.length === 6 ? digits : [...digits].map((digit) => digit + digit).join("")}`;
}
