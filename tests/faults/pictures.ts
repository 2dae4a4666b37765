/** Pictures broken in every way, looked through as the build looks through them. */
import { readFile, writeFile } from "node:fs/promises";
import { join } from "node:path";
import sharp from "sharp";
import { openOrthophoto, OrthophotoError, readOrthophoto } from "../../src/read/orthophoto.ts";
import { lookAtPhoto, PhotoError } from "../../src/read/photos.ts";
import { gdal } from "../support/gdal.ts";
import { damaged, type Random } from "./random.ts";

const [WIDTH, HEIGHT] = [160, 120];

async function photos(): Promise<{ readonly kind: string; readonly bytes: Buffer }[]> {
  const pixels = Buffer.from(Array.from({ length: WIDTH * HEIGHT * 3 }, (_, i) => (i * 7 + (i >> 5) * 13) & 255));
  const picture = sharp(pixels, { raw: { width: WIDTH, height: HEIGHT, channels: 3 } }).withExif({
    IFD0: { Copyright: "Invented" },
  });
  return Promise.all(
    (["jpeg", "png", "webp", "avif", "tiff"] as const).map(async (kind) => ({
      kind,
      bytes: await picture.clone().toFormat(kind).toBuffer(),
    })),
  );
}

export interface PictureFaults {
  readonly tried: number;
  readonly lost: readonly string[];
  readonly refused: number;
}

const inWords = (error: unknown): boolean =>
  (error instanceof PhotoError || error instanceof OrthophotoError) && !error.message.includes("\n");

/** @throws PhotoError or OrthophotoError, as the build would tell it */
async function look(folder: string, kind: string, bytes: Uint8Array): Promise<void> {
  if (kind !== "aerial") return void (await lookAtPhoto(bytes, `mutant.${kind}`));
  const path = join(folder, "mutant.tif");
  await writeFile(path, bytes);
  const photo = {
    file: "ground/air.tif",
    crs: undefined,
    corners: undefined,
    place: { file: "course.yaml", line: 1, column: 1 },
  };
  const source = await openOrthophoto(path, photo, [-9, 56.49, -8.997, 56.494]);
  await readOrthophoto(source, photo.file, 0.1);
}

/** Damages photos of every kind, and photos from the air, so often in all. */
export async function damagePictures(folder: string, count: number, random: Random): Promise<PictureFaults> {
  const whole = await photos();
  const aerial = join(folder, "aerial.tif");
  await writeFile(join(folder, "aerial.png"), whole.find(({ kind }) => kind === "png")!.bytes);
  gdal("gdal_translate", [
    "-q",
    "-a_srs",
    "EPSG:32629",
    "-a_ullr",
    "500000",
    "6261120",
    "500160",
    "6261000",
    "-co",
    "COMPRESS=DEFLATE",
    "-co",
    "TILED=YES",
    "-co",
    "BLOCKXSIZE=64",
    "-co",
    "BLOCKYSIZE=64",
    join(folder, "aerial.png"),
    aerial,
  ]);
  const kinds = [...whole, { kind: "aerial", bytes: await readFile(aerial) }];
  // Whole, each is taken; so what is refused is refused for its damage.
  for (const { kind, bytes } of kinds) await look(folder, kind, bytes);
  const lost: string[] = [];
  let refused = 0;
  for (let i = 0; i < count; i++) {
    const { kind, bytes } = kinds[i % kinds.length]!;
    const mutant = random.chance(0.4)
      ? Buffer.concat([damaged(bytes.subarray(0, 300), random), bytes.subarray(300)])
      : damaged(bytes, random);
    try {
      await look(folder, kind, mutant);
    } catch (error) {
      if (inWords(error)) refused++;
      else {
        lost.push(
          `${kind}, mutant ${i}: not refused in a sentence: ${error instanceof Error ? (error.stack ?? error.message) : String(error)}`,
        );
        await writeFile(join(folder, `lost-${i}.${kind}`), mutant);
      }
    }
  }
  return { tried: count, lost, refused };
}
