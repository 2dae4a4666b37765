/** The live map on a built page: opened, tapped, read. */
import type { Locator, Page } from "playwright-core";
import type { LonLat } from "../../src/contract/map-data.ts";
import { pixelOf, type Camera } from "./mercator.ts";
import type { TiltedCamera } from "./pinhole.ts";

export const opener = (page: Page): Locator => page.getByRole("button", { name: "Open live map" });
export const slot = (page: Page): Locator => page.locator("#live-map");
export const view = (page: Page): Locator => page.locator(".live-map-view");
export const tool = (page: Page, name: string): Locator =>
  page.locator(".live-map-tools").getByRole("button", { name });
export const action = (page: Page, name: string): Locator =>
  page.locator(".live-map-actions").getByRole("button", { name });

/** What a screen reader was last told. */
export const spoken = (page: Page): Locator => page.locator("[data-map-spoken]");

/** What stands under the map. */
export const reading = (page: Page): Locator => page.locator(".live-map-shown");

/** Presses the button and waits for the map to be there, or not to be. */
export async function start(page: Page): Promise<string> {
  await opener(page).click();
  await page.waitForFunction(() =>
    ["ready", "failed"].includes(document.getElementById("live-map")?.dataset["state"] ?? ""),
  );
  return (await slot(page).getAttribute("data-state")) ?? "";
}

export async function cameraOf(page: Page): Promise<Camera & TiltedCamera> {
  const [longitude, latitude, zoom, bearing, pitch] = (await page
    .locator("[data-camera]")
    .getAttribute("data-camera"))!
    .split(" ")
    .map(Number);
  return { center: [longitude!, latitude!], zoom: zoom!, bearing: bearing!, pitch: pitch! };
}

/** Taps a flat map where a position is drawn. */
export async function tap(page: Page, position: LonLat): Promise<void> {
  const box = (await view(page).boundingBox())!;
  const { x, y } = pixelOf(position, await cameraOf(page), box);
  await page.mouse.click(box.x + x, box.y + y);
}

/** The large figures by their labels. */
export const figures = async (page: Page): Promise<Record<string, number>> =>
  Object.fromEntries(
    await page
      .locator(".live-map-figure")
      .evaluateAll((pairs) =>
        pairs.map((pair) => [
          pair.querySelector("dt")!.textContent,
          Number.parseInt(pair.querySelector("dd")!.textContent, 10),
        ]),
      ),
  );
