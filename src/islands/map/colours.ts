/** The plate's colours under the names the map asks for. */

export interface MapColours {
  readonly paper: string;
  readonly ink: string;
  readonly accent: string;
  readonly rough: string;
  readonly fairway: string;
  readonly fairwayEdge: string;
  readonly tee: string;
  readonly green: string;
  readonly greenEdge: string;
  readonly bunker: string;
  readonly bunkerEdge: string;
  readonly beach: string;
  readonly water: string;
  readonly waterEdge: string;
  readonly scrub: string;
  readonly scrubEdge: string;
  readonly heath: string;
  readonly wood: string;
  readonly woodEdge: string;
  readonly rock: string;
  readonly rockEdge: string;
  readonly road: string;
  readonly path: string;
  readonly building: string;
  readonly outOfBounds: string;
  readonly stakeYellow: string;
  readonly stakeRed: string;
  readonly stakeWhite: string;
}

export type Scheme = "light" | "dark";

const LIGHT: MapColours = {
  paper: "#f6f1e4", ink: "#26302e", accent: "#a8321e",
  rough: "#c9cf9f", fairway: "#a9c483", fairwayEdge: "#7f9f5f", tee: "#9dbb78", green: "#cfe3a4", greenEdge: "#7f9f5f",
  bunker: "#f0e2b8", bunkerEdge: "#b79a5b", beach: "#ecdfbb", water: "#a9cbd6", waterEdge: "#4d8296",
  scrub: "#a9ac63", scrubEdge: "#6f7231", heath: "#bfae93", wood: "#8fa878", woodEdge: "#4f6b44",
  rock: "#c4bfb2", rockEdge: "#77726a", road: "#ddd6c6", path: "#8d7f66", building: "#b7a999",
  outOfBounds: "#d9d4c6", stakeYellow: "#d9a400", stakeRed: "#c0261c", stakeWhite: "#ffffff",
};

const DARK: MapColours = {
  ...LIGHT,
  paper: "#151b1c", ink: "#e8e3d4", accent: "#ff8d6b",
  rough: "#3c452f", fairway: "#4f6a3d", fairwayEdge: "#6f8e56", tee: "#5b7847", green: "#6d8f52", greenEdge: "#93b574",
  bunker: "#b29c66", bunkerEdge: "#d8c48d", beach: "#8d7f58", water: "#234654", waterEdge: "#5e9bb0",
  scrub: "#4c4e24", scrubEdge: "#8b8e4d", heath: "#584d3f", wood: "#2f4330", woodEdge: "#6e8a63",
  rock: "#4d4b47", rockEdge: "#8b877f", road: "#5a564c", path: "#9c8f76", building: "#6e6459", outOfBounds: "#2a2c28",
};

export const mapColours = (scheme: Scheme): MapColours => (scheme === "dark" ? DARK : LIGHT);
