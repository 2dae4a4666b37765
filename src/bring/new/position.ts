/** A position as people write it, or copy it from a map. Pure. */

export interface Degrees {
  readonly latitude: number;
  readonly longitude: number;
}

/** What is wrong with it: the sentence goes on "The position ...". */
export type Misread = string;

const NUMBER = String.raw`[-+\u2212]?\d{1,3}(?:[.,]\d+)?`;

/** A share link's `@lat,lon`, `#map=15/lat/lon`, `?mlat=..&mlon=..`, `ll=lat,lon`, and the `geo:` URI of RFC 5870. */
const LINKS: readonly RegExp[] = [
  /@(-?\d{1,2}(?:\.\d+)?),(-?\d{1,3}(?:\.\d+)?)/,
  /[#&?]map=\d{1,2}(?:\.\d+)?\/(-?\d{1,2}(?:\.\d+)?)\/(-?\d{1,3}(?:\.\d+)?)/,
  /mlat=(-?\d{1,2}(?:\.\d+)?)&mlon=(-?\d{1,3}(?:\.\d+)?)/,
  /[?&](?:ll|q|query|center|destination|cp)=(?:loc:)?(-?\d{1,2}(?:\.\d+)?)(?:,|%2C|~)\+?(-?\d{1,3}(?:\.\d+)?)/i,
  /^geo:(-?\d{1,2}(?:\.\d+)?),(-?\d{1,3}(?:\.\d+)?)/i,
];

const plain = (text: string): number => Number(text.replace("\u2212", "-").replace(",", "."));

interface Part {
  readonly value: number;
  readonly axis: "latitude" | "longitude" | undefined;
}

/** `56.5`, `lat=56.5`, `56.5° N`, `N 56° 30.5'`, `56°30'18"N`. */
function partOf(text: string): Part | undefined {
  const named = new RegExp(String.raw`^(lat|lon|lng|long)(?:itude|gitude)?\s*[=:]?\s*(${NUMBER})\s*°?$`, "i").exec(
    text,
  );
  if (named) return { value: plain(named[2]!), axis: /^lat/i.test(named[1]!) ? "latitude" : "longitude" };
  const written =
    /^([NSEWO])?\s*([-+\u2212]?\d{1,3}(?:[.,]\d+)?)\s*(?:°|º|deg|d|\s)?\s*(?:(\d{1,2}(?:[.,]\d+)?)\s*(?:'|′|’|min|m|\s)?\s*)?(?:(\d{1,2}(?:[.,]\d+)?)\s*(?:"|″|”|''|sec|s)?\s*)?([NSEWO])?$/i.exec(
      text,
    );
  if (!written) return undefined;
  const [, before, degrees, minutes, seconds, after] = written;
  const [m, s] = [plain(minutes ?? "0"), plain(seconds ?? "0")];
  if (m >= 60 || s >= 60 || (before !== undefined && after !== undefined)) return undefined;
  const letter = (before ?? after)?.toUpperCase();
  const whole = plain(degrees!);
  const negative = /^[-\u2212]/.test(degrees!) || letter === "S" || letter === "W";
  const size = Math.abs(whole) + m / 60 + s / 3600;
  // O is east in German and west in French, so it says only which axis it is.
  if (letter === "O") return undefined;
  return {
    value: negative ? -size : size,
    axis: letter === undefined ? undefined : letter === "N" || letter === "S" ? "latitude" : "longitude",
  };
}

/**
 * Two parts of a text: at a semicolon, between a letter and what follows, at a comma that is no decimal one,
 * at a space.
 */
function split(text: string): string[] {
  if (text.includes(";")) return text.split(";");
  const lettered =
    /^([NSEW][^NSEW]*?)[\s,]+([NSEW][^NSEW]*)$/i.exec(text) ?? /^([^NSEW]*[NSEW])[\s,]+([^NSEW]*[NSEW])$/i.exec(text);
  if (lettered) return [lettered[1]!, lettered[2]!];
  const named = text.split(/[,\s]+(?=l[aon])/i);
  if (named.length > 1) return named;
  const spaced = /^(\S+),\s+(\S.*)$/.exec(text);
  if (spaced) return [spaced[1]!, spaced[2]!];
  if (/^[^,]+,[^,]+$/.test(text) && !/\s/.test(text)) return text.split(",");
  const words = text.split(/\s+/);
  return words.length === 2 ? words : text.split(",");
}

/** A latitude before a longitude, as every map gives them, unless letters or names say otherwise. */
export function positionFrom(typed: string): Degrees | Misread {
  const text = typed.trim();
  for (const link of LINKS) {
    const found = link.exec(text);
    if (found) return within(Number(found[1]), Number(found[2]));
  }
  const parts = split(text)
    .map((part) => part.trim())
    .filter((part) => part !== "");
  const read = parts.map(partOf);
  if (parts.length === 0 || parts.length > 2 || read.some((part) => part === undefined)) return "cannot be read";
  const [first, second] = read as [Part, Part | undefined];
  if (second === undefined)
    return `lacks its ${first.axis === "latitude" ? "longitude" : first.axis === "longitude" ? "latitude" : "second number"}`;
  if (first.axis !== undefined && first.axis === second.axis) return `gives the ${first.axis} twice`;
  const turned = first.axis === "longitude" || second.axis === "latitude";
  return turned ? within(second.value, first.value) : within(first.value, second.value);
}

/** Web maps end at 85 degrees, and so do golf courses. */
function within(latitude: number, longitude: number): Degrees | Misread {
  if (Math.abs(latitude) > 85 || Math.abs(longitude) > 180)
    return "is not on the map: latitude goes from -85 to 85, longitude from -180 to 180, latitude first";
  return { latitude, longitude };
}
