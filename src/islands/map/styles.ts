/**
 * The map's style sheets, fetched with the map. Imported plainly they would be linked from
 * every page that offers a map, and weigh more than the rest of its styles together.
 */
import library from "maplibre-gl/dist/maplibre-gl.css?url";
import own from "./live-map.css?url";

let loaded: Promise<unknown> | undefined;

/** Settles once both apply. Asked for beside the map's code, they do not keep it waiting. */
export function stylesLoaded(): Promise<unknown> {
  loaded ??= Promise.all([library, own].map(link)).catch((reason: unknown) => {
    loaded = undefined;
    throw reason;
  });
  return loaded;
}

function link(address: string): Promise<void> {
  return new Promise((resolve, reject) => {
    const element = document.createElement("link");
    element.rel = "stylesheet";
    element.href = address;
    element.addEventListener("load", () => resolve());
    element.addEventListener("error", () => reject(new Error(`${address} did not come.`)));
    document.head.append(element);
  });
}
