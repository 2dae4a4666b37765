/**
 * One palette for everything drawn: plate, course map, green sheets, thumbnails and the
 * live map. A tint is a custom property (`--plate-fairway`); the colours below are its
 * values by day, by night, in high contrast and in one ink for print.
 *
 * Drawings carry the values of one theme as presentation attributes, so a plate reads right
 * with no stylesheet at all (a share card, a saved file); {@link plateCss} overrides them
 * on a page, since any rule beats a presentation attribute.
 */

export type PlateTheme = "light" | "dark" | "ink";

/** Warm paper and brown-black ink, one sea colour, straw-green ground, sand a shade off the paper. */
const LIGHT = {
  paper: "#f7f0df",
  margin: "#f7f0df",
  ink: "#2d2823",
  "ink-soft": "#6d6252",
  halo: "#faf5e8",
  ground: "#ebe3c6",
  grass: "#8d8a55",
  rough: "#d8d3a4",
  "first-cut": "#cfd3a2",
  fairway: "#bccb93",
  band: "#afc086",
  "fairway-edge": "#758c4d",
  green: "#e1ecc0",
  "green-edge": "#6f8a4c",
  fringe: "#a5bb79",
  tee: "#c6d5a0",
  "tee-edge": "#76895a",
  sand: "#f6e8c2",
  "sand-dot": "#b08e56",
  "sand-shade": "#b99a63",
  "sand-lit": "#fffaf0",
  "sand-edge": "#8f7446",
  strand: "#efe2bf",
  sea: "#c3dad8",
  "sea-line": "#3f7c88",
  "sea-ink": "#24596a",
  "sea-shade": "#8db7ba",
  gorse: "#8d9451",
  "gorse-shade": "#515a2e",
  "gorse-lit": "#c3bf6c",
  bloom: "#e3b03a",
  scrub: "#cfcb95",
  heather: "#9c7a92",
  heath: "#dccfc0",
  tree: "#7f9a68",
  "tree-shade": "#47603f",
  "tree-lit": "#b4c592",
  wood: "#c9cf9f",
  rock: "#d3c8b4",
  contour: "#a07a4c",
  hachure: "#7c6443",
  shadow: "#4a4030",
  road: "#fbf6ea",
  "road-edge": "#85775f",
  building: "#a9806a",
  "building-edge": "#53382b",
  flag: "#c53b2c",
  "stake-white": "#ffffff",
  "stake-yellow": "#f4c51d",
  "stake-red": "#d0342a",
} as const;

/** A colour with a name. */
export type Tint = keyof typeof LIGHT;
type Tints = Readonly<Record<Tint, string>>;

const DARK: Tints = {
  paper: "#171b1c",
  margin: "#171b1c",
  ink: "#efe6d0",
  "ink-soft": "#b3a88f",
  halo: "#1a1e1f",
  ground: "#33342a",
  grass: "#7d7b55",
  rough: "#383b28",
  "first-cut": "#424b31",
  fairway: "#4c5e39",
  band: "#566a41",
  "fairway-edge": "#7b9156",
  green: "#6c8748",
  "green-edge": "#b4ca84",
  fringe: "#566b3a",
  tee: "#566a40",
  "tee-edge": "#a2b67c",
  sand: "#8c7a51",
  "sand-dot": "#c2ac77",
  "sand-shade": "#4f4227",
  "sand-lit": "#d9c894",
  "sand-edge": "#cdb784",
  strand: "#6a5e43",
  sea: "#17323b",
  "sea-line": "#5fa3b0",
  "sea-ink": "#9ccbd3",
  "sea-shade": "#0f242b",
  gorse: "#5d6534",
  "gorse-shade": "#2a2f17",
  "gorse-lit": "#8f9450",
  bloom: "#d7a637",
  scrub: "#35371f",
  heather: "#94708a",
  heath: "#38302f",
  tree: "#4f6a45",
  "tree-shade": "#223220",
  "tree-lit": "#83a070",
  wood: "#2d3823",
  rock: "#4a463d",
  contour: "#a98a5c",
  hachure: "#a99468",
  shadow: "#0a0c0c",
  road: "#565143",
  "road-edge": "#94896f",
  building: "#8b6a59",
  "building-edge": "#d7b8a4",
  flag: "#ef6a53",
  "stake-white": "#ffffff",
  "stake-yellow": "#f4c51d",
  "stake-red": "#e2483c",
};

/** One ink on white: what hue says by day, line and texture say here. */
const INK: Tints = {
  paper: "#ffffff",
  margin: "#ffffff",
  ink: "#000000",
  "ink-soft": "#333333",
  halo: "#ffffff",
  ground: "#ffffff",
  grass: "#777777",
  rough: "#ffffff",
  "first-cut": "#f4f4f4",
  fairway: "#e9e9e9",
  band: "#dadada",
  "fairway-edge": "#555555",
  green: "#ffffff",
  "green-edge": "#000000",
  fringe: "#c4c4c4",
  tee: "#ffffff",
  "tee-edge": "#000000",
  sand: "#ffffff",
  "sand-dot": "#444444",
  "sand-shade": "#777777",
  "sand-lit": "#ffffff",
  "sand-edge": "#000000",
  strand: "#ffffff",
  sea: "#ffffff",
  "sea-line": "#222222",
  "sea-ink": "#000000",
  "sea-shade": "#bbbbbb",
  gorse: "#ffffff",
  "gorse-shade": "#000000",
  "gorse-lit": "#ffffff",
  bloom: "#000000",
  scrub: "#ffffff",
  heather: "#444444",
  heath: "#ffffff",
  tree: "#ffffff",
  "tree-shade": "#000000",
  "tree-lit": "#ffffff",
  wood: "#ffffff",
  rock: "#eeeeee",
  contour: "#999999",
  hachure: "#444444",
  shadow: "#888888",
  road: "#ffffff",
  "road-edge": "#444444",
  building: "#555555",
  "building-edge": "#000000",
  flag: "#000000",
  "stake-white": "#ffffff",
  "stake-yellow": "#cccccc",
  "stake-red": "#000000",
};

/** Differences for readers who ask for more contrast, by day and by night. */
const MORE_CONTRAST: Readonly<Record<"light" | "dark", Partial<Tints>>> = {
  light: {
    paper: "#ffffff",
    margin: "#ffffff",
    halo: "#ffffff",
    ink: "#000000",
    "ink-soft": "#2a2a2a",
    ground: "#f3eed8",
    "fairway-edge": "#44561f",
    "green-edge": "#2c4512",
    "sand-edge": "#4d3a14",
    "sea-line": "#0f4b58",
    "sea-ink": "#00323f",
    contour: "#6b4a1f",
    green: "#f2f9dc",
    fairway: "#b4c783",
    "road-edge": "#3a3226",
    flag: "#a81505",
  },
  dark: {
    paper: "#000000",
    margin: "#000000",
    halo: "#000000",
    ink: "#ffffff",
    "ink-soft": "#e2dccb",
    ground: "#16170f",
    "fairway-edge": "#b7d085",
    "green-edge": "#f0ffcb",
    green: "#9dba6b",
    "sand-edge": "#fff0c4",
    "sea-line": "#9fdbe6",
    "sea-ink": "#d2f4fa",
    contour: "#d0b183",
    "road-edge": "#d6cbb0",
    flag: "#ff8d78",
  },
};

/** Every tint by theme; the live map takes its colours from here too. */
export const PALETTE: Readonly<Record<PlateTheme, Tints>> = { light: LIGHT, dark: DARK, ink: INK };

type Paint = Tint | "none";

/** What each kind of mark is painted with. Widths and dashes belong to the composition. */
const PAINTS = {
  paper: { fill: "margin" },
  ground: { fill: "ground" },
  rough: { fill: "rough", stroke: "rough" },
  heath: { fill: "heath", stroke: "heath" },
  scrub: { fill: "scrub", stroke: "scrub" },
  wood: { fill: "wood", stroke: "wood" },
  rock: { fill: "rock", stroke: "hachure" },
  strand: { fill: "strand", stroke: "strand" },
  shore: { fill: "none", stroke: "sea-ink" },
  sea: { fill: "sea" },
  "sea-shade": { fill: "sea-shade" },
  waterline: { fill: "none", stroke: "sea-line" },
  "first-cut": { fill: "none", stroke: "first-cut" },
  fairway: { fill: "fairway" },
  band: { fill: "none", stroke: "band" },
  "fairway-edge": { fill: "none", stroke: "fairway-edge" },
  fringe: { fill: "none", stroke: "fringe" },
  green: { fill: "green", stroke: "green-edge" },
  "teeing-ground": { fill: "tee", stroke: "tee-edge" },
  "tee-shade": { fill: "tee-edge" },
  bunker: { fill: "sand" },
  "bunker-edge": { fill: "none", stroke: "sand-edge" },
  "sand-shade": { fill: "sand-shade" },
  "sand-lit": { fill: "sand-lit" },
  stipple: { fill: "none", stroke: "sand-dot" },
  contour: { fill: "none", stroke: "contour" },
  "contour-figure": { fill: "contour", stroke: "halo" },
  hachure: { fill: "hachure" },
  scarp: { fill: "none", stroke: "hachure" },
  grass: { fill: "none", stroke: "grass" },
  heather: { fill: "none", stroke: "heather" },
  gorse: { fill: "gorse", stroke: "gorse-shade" },
  "gorse-shade": { fill: "gorse-shade" },
  "gorse-lit": { fill: "gorse-lit" },
  bloom: { fill: "bloom" },
  tree: { fill: "tree", stroke: "tree-shade" },
  "tree-shade": { fill: "tree-shade" },
  "tree-lit": { fill: "tree-lit" },
  shadow: { fill: "shadow" },
  "road-edge": { fill: "none", stroke: "road-edge" },
  road: { fill: "none", stroke: "road" },
  path: { fill: "none", stroke: "road-edge" },
  wall: { fill: "none", stroke: "ink" },
  "wall-stone": { fill: "none", stroke: "road" },
  hedge: { fill: "none", stroke: "tree-shade" },
  building: { fill: "building", stroke: "building-edge" },
  "roof-shade": { fill: "building-edge" },
  landmark: { fill: "paper", stroke: "ink" },
  "landmark-ink": { fill: "ink" },
  out: { fill: "none", stroke: "ink" },
  "stake-white": { fill: "stake-white", stroke: "ink" },
  "stake-yellow": { fill: "stake-yellow", stroke: "ink" },
  "stake-red": { fill: "stake-red", stroke: "ink" },
  casing: { fill: "none", stroke: "halo" },
  line: { fill: "none", stroke: "ink" },
  arc: { fill: "none", stroke: "ink" },
  tick: { fill: "none", stroke: "ink" },
  leader: { fill: "none", stroke: "ink" },
  spot: { fill: "paper", stroke: "ink" },
  "spot-full": { fill: "ink", stroke: "halo" },
  ring: { fill: "none", stroke: "ink" },
  marker: { stroke: "ink" },
  flag: { fill: "flag", stroke: "ink" },
  pole: { fill: "none", stroke: "ink" },
  pill: { fill: "halo", stroke: "ink" },
  figure: { fill: "ink", stroke: "halo" },
  "pill-figure": { fill: "ink" },
  name: { fill: "ink", stroke: "halo" },
  "water-name": { fill: "sea-ink", stroke: "halo" },
  note: { fill: "ink-soft", stroke: "halo" },
  title: { fill: "ink" },
  legend: { fill: "ink-soft" },
  frame: { fill: "none", stroke: "ink" },
  "frame-ink": { fill: "ink" },
  disc: { fill: "paper", stroke: "ink" },
  "frame-paper": { fill: "margin", stroke: "ink" },
} as const satisfies Readonly<Record<string, { readonly fill?: Paint; readonly stroke?: Paint }>>;

/** A kind of mark; its class is `plate-` and this. */
export type Mark = keyof typeof PAINTS;

/** Class and theme colours of a mark, as attributes. */
export type Painter = (mark: Mark) => Readonly<Record<string, string>>;

/** The painter of a theme. */
export function painter(theme: PlateTheme): Painter {
  const colour = (paint: Paint): string => (paint === "none" ? "none" : PALETTE[theme][paint]);
  return (mark) => {
    const paint: { readonly fill?: Paint; readonly stroke?: Paint } = PAINTS[mark];
    return {
      class: `plate-${mark}`,
      ...(paint.fill ? { fill: colour(paint.fill) } : {}),
      ...(paint.stroke ? { stroke: colour(paint.stroke) } : {}),
    };
  };
}

/** Lettering of a plate when the site sets no other. */
export const PLATE_FONT = "Besley, 'Besley Variable', Georgia, 'Times New Roman', serif";

/**
 * The rules a page needs for its drawings: tints by scheme (`prefers-color-scheme`,
 * overruled by `data-theme="light"` or `"dark"` on any element around them), more contrast
 * on request, one ink in print, and the paint of every mark. A page may set `--plate-font`.
 */
export function plateCss(): string {
  const tints = (values: Partial<Tints>): string =>
    Object.entries(values)
      .map(([tint, value]) => `--plate-${tint}:${value}`)
      .join(";");
  const property = (paint: Paint): string => (paint === "none" ? "none" : `var(--plate-${paint})`);
  const rules = Object.entries(PAINTS).map(([mark, paint]: [string, { fill?: Paint; stroke?: Paint }]) => {
    const fill = paint.fill ? `fill:${property(paint.fill)}` : "";
    const stroke = paint.stroke ? `stroke:${property(paint.stroke)}` : "";
    return `.plate-${mark}{${[fill, stroke].filter(Boolean).join(";")}}`;
  });
  const { light, dark } = MORE_CONTRAST;
  /** A page that follows the system, where that is dark. */
  const dimmed = ':root:where(:not([data-theme="light"]))';
  return [
    // All as specific as one another, so that the later rule counts: a chosen theme beats the system's.
    `:root,[data-theme="light"]{${tints(LIGHT)}}`,
    `@media (prefers-contrast:more){:root,[data-theme="light"]{${tints(light)}}}`,
    `@media (prefers-color-scheme:dark){${dimmed}{${tints(DARK)}}}`,
    `[data-theme="dark"]{${tints(DARK)}}`,
    `@media (prefers-contrast:more) and (prefers-color-scheme:dark){${dimmed}{${tints(dark)}}}`,
    `@media (prefers-contrast:more){[data-theme="dark"]{${tints(dark)}}}`,
    ...rules,
    `.plate text{font-family:var(--plate-font,${PLATE_FONT});font-variant-numeric:lining-nums}`,
    // A link is shown by more than colour: its disc fills, its line thickens.
    `.plate-link:is(:hover,:focus-visible) .plate-disc{fill:var(--plate-ink)}`,
    `.plate-link:is(:hover,:focus-visible) .plate-title{fill:var(--plate-paper)}`,
    `.plate-link:is(:hover,:focus-visible) .plate-line{stroke-width:2.4;stroke-dasharray:none}`,
    `.plate-link:focus-visible{outline:none}`,
    `.plate-link:focus-visible .plate-disc{stroke-width:4;paint-order:stroke}`,
    // Light is scarce at night: there the relief is only hinted at.
    `[data-theme="dark"] .plate-relief{opacity:.5}`,
    `@media (prefers-color-scheme:dark){:root:not([data-theme="light"]) .plate-relief{opacity:.5}}`,
    `@media print{:root,:root[data-theme]{${tints(INK)}}.plate-relief{display:none}}`,
  ].join("\n");
}
