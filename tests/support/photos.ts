/** Photos as cameras write them, made for tests. */
import sharp from "sharp";

/** Left half red, right half blue. */
export async function half(width: number, height: number): Promise<Buffer> {
  const left = await sharp({ create: { width: Math.floor(width / 2), height, channels: 3, background: "#d00000" } })
    .png()
    .toBuffer();
  return sharp({ create: { width, height, channels: 3, background: "#0000d0" } })
    .composite([{ input: left, left: 0, top: 0 }])
    .png()
    .toBuffer();
}

export interface Camera {
  readonly width: number;
  readonly height: number;
  /** EXIF Orientation, 1 to 8. */
  readonly orientation: number;
  /** Writes traces to look for into every place that a JPEG has for them. */
  readonly secrets?: boolean;
}

/** A JPEG of {@link half} with EXIF: owner, orientation, 56° 30′ 7″ N. */
export async function camera({ width, height, orientation, secrets = false }: Camera): Promise<Buffer> {
  const owner = secrets ? "SECRET-OWNER" : "A. Person";
  const picture = sharp(await half(width, height))
    .jpeg({ quality: 90 })
    .withExif({
      IFD0: { Artist: owner, Orientation: `${orientation}` },
      IFD3: { GPSLatitudeRef: "N", GPSLatitude: "56/1 30/1 7/1" },
    })
    .withMetadata({ orientation });
  if (!secrets) return picture.toBuffer();
  const bytes = await picture
    .withXmp(
      '<x:xmpmeta xmlns:x="adobe:ns:meta/"><rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#"><rdf:Description xmlns:exif="http://ns.adobe.com/exif/1.0/" exif:GPSLatitude="56,30.1N" exif:UserComment="SECRET-XMP"/></rdf:RDF></x:xmpmeta>',
    )
    .toBuffer();
  // After the start of image: APP13 with an IPTC caption (2:120), and a comment.
  const caption = Buffer.from("SECRET-IPTC");
  const iim = Buffer.concat([
    Buffer.from([0x1c, 2, 120, 0, caption.length]),
    caption,
    Buffer.alloc(caption.length % 2 === 0 ? 1 : 0),
  ]);
  const size = Buffer.alloc(4);
  size.writeUInt32BE(iim.length);
  const resource = Buffer.concat([
    Buffer.from("Photoshop 3.0\0"),
    Buffer.from("8BIM"),
    Buffer.from([0x04, 0x04, 0, 0]),
    size,
    iim,
  ]);
  return Buffer.concat([
    bytes.subarray(0, 2),
    segment(0xed, resource),
    segment(0xfe, Buffer.from("SECRET-COMMENT")),
    bytes.subarray(2),
  ]);
}

function segment(marker: number, body: Buffer): Buffer {
  const length = Buffer.alloc(2);
  length.writeUInt16BE(body.length + 2);
  return Buffer.concat([Buffer.from([0xff, marker]), length, body]);
}
