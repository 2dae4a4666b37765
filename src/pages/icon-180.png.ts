/** The icon a phone shows when the guide is put on its home screen. */
import type { APIRoute } from "astro";
import sharp from "sharp";
import favicon from "../../public/favicon.svg?raw";

export const GET: APIRoute = async () => {
  // Phones round the corners themselves, so the icon fills its square.
  const square = favicon.replace('rx="14"', "");
  const png = await sharp(Buffer.from(square), { density: 216 }).resize(180, 180).png({ compressionLevel: 9 }).toBuffer();
  return new Response(new Uint8Array(png), { headers: { "Content-Type": "image/png" } });
};
