/** A button that loads MapLibre when it is pressed, the map's style beside it, and says when the map is drawn. */
import type { MapOptions } from "maplibre-gl";

/** What the benchmark writes beside the page. */
export interface BareMap {
  /** Size of the guide's map, CSS pixels. */
  readonly width: number;
  readonly height: number;
  readonly options: Pick<MapOptions, "center" | "zoom" | "bearing"> & {
    readonly style: Exclude<MapOptions["style"], string | null | undefined>;
  };
}

const slot = document.getElementById("live-map")!;
document.querySelector("button")!.addEventListener("click", () => void open());

async function open(): Promise<void> {
  slot.dataset["state"] = "loading";
  try {
    const [{ draw }, map] = await Promise.all([
      import("./map.ts"),
      fetch("map.json").then((response) => response.json() as Promise<BareMap>),
    ]);
    await draw(slot, map);
    slot.dataset["state"] = "ready";
  } catch (cause) {
    console.error(cause);
    slot.dataset["state"] = "failed";
  }
}
