/** Numbers with decimals as a language writes them. */

/** `71.4` in en-GB, `71,4` in de-DE: always that many decimals. */
export const decimal = (value: number, decimals: number, locale: string): string =>
  new Intl.NumberFormat(locale, {
    minimumFractionDigits: decimals,
    maximumFractionDigits: decimals,
    useGrouping: false,
  }).format(value);

/** The same with no more decimals than there are to tell: `2`, `2.5`. */
export const shortDecimal = (value: number, mostDecimals: number, locale: string): string =>
  new Intl.NumberFormat(locale, { maximumFractionDigits: mostDecimals, useGrouping: false }).format(value);
