/** Photos in a page's markup. */
import { expect, test } from "vitest";
import { focusClasses, photoSource } from "../../src/components/photo.ts";
import type { PhotoVariant } from "../../src/site/pictures/photos.ts";

const variants: PhotoVariant[] = [480, 960, 1000].flatMap((widthPixels) =>
  (["avif", "webp", "jpg"] as const).map((format) => ({
    name: `set-${widthPixels}.${format}`,
    widthPixels,
    heightPixels: widthPixels / 2,
    format,
  })),
);

test("a picture offers every width of every format and reserves the largest one's room", () => {
  const source = photoSource(variants, (name) => `p/${name}`);
  expect(source.sets).toEqual({
    avif: "p/set-480.avif 480w, p/set-960.avif 960w, p/set-1000.avif 1000w",
    webp: "p/set-480.webp 480w, p/set-960.webp 960w, p/set-1000.webp 1000w",
    jpg: "p/set-480.jpg 480w, p/set-960.jpg 960w, p/set-1000.jpg 1000w",
  });
  expect(source).toMatchObject({ src: "p/set-960.jpg", width: 1000, height: 500 });
});

test("a focal point goes to the nearest step that has a class", () => {
  expect(focusClasses([0.3, 0.62])).toBe("fx-30 fy-60");
  expect(focusClasses([0, 1])).toBe("fx-0 fy-100");
  expect(focusClasses(undefined)).toBeUndefined();
});
