/** The device's own position, asked for only when the golfer has said so. Nothing of it leaves this page. */
import type { Fix } from "./whereabouts.ts";

export type LocateFault = "denied" | "unavailable" | "unsupported";

const WITHIN_MS = 30_000;

/** Follows the position until the function it gives is called. */
export function follow(found: (fix: Fix) => void, failed: (fault: LocateFault) => void): () => void {
  if (!("geolocation" in navigator) || !window.isSecureContext) {
    failed("unsupported");
    return () => undefined;
  }
  const watch = navigator.geolocation.watchPosition(
    ({ coords: { longitude, latitude, accuracy } }) => {
      if ([longitude, latitude, accuracy].every(Number.isFinite))
        found({ position: [longitude, latitude], accuracyMetres: accuracy });
      else failed("unavailable");
    },
    ({ code, PERMISSION_DENIED }) => failed(code === PERMISSION_DENIED ? "denied" : "unavailable"),
    { enableHighAccuracy: true, maximumAge: 5_000, timeout: WITHIN_MS },
  );
  return () => navigator.geolocation.clearWatch(watch);
}
