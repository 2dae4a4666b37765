/**
 * The map's style sheet, fetched with the map. Imported plainly it would be linked from
 * every page that offers a map.
 */
import address from "./live-map.css?url";

let loaded: Promise<unknown> | undefined;

/** Settles once it applies. Asked for beside the map's code, it does not keep it waiting. */
export function stylesLoaded(): Promise<unknown> {
  loaded ??= link().catch((reason: unknown) => {
    loaded = undefined;
    throw reason;
  });
  return loaded;
}

function link(): Promise<void> {
  return new Promise((resolve, reject) => {
    const element = document.createElement("link");
    element.rel = "stylesheet";
    element.href = address;
    element.addEventListener("load", () => resolve());
    element.addEventListener("error", () => reject(new Error(`${address} did not come.`)));
    document.head.append(element);
  });
}
