import { crc32, deflateSync } from "node:zlib";
import sharp from "sharp";

/** A JPEG that says where it was taken, by whom and how the phone was held: red on the left, blue on the right. */
export async function gpsJpeg(orientation = 1): Promise<Uint8Array<ArrayBuffer>> {
  const half = { create: { width: 40, height: 40, channels: 3 as const, background: { r: 0, g: 0, b: 255 } } };
  const blue = await sharp(half).png().toBuffer();
  const jpeg = await sharp({
    create: { width: 80, height: 40, channels: 3, background: { r: 255, g: 0, b: 0 } },
  })
    .composite([{ input: blue, left: 40, top: 0 }])
    .withExif({
      IFD0: { Artist: "Invented Brewer", Software: "invented camera" },
      IFD3: { GPSLatitudeRef: "N", GPSLatitude: "54/1 30/1 0/1", GPSLongitudeRef: "W", GPSLongitude: "3/1 10/1 0/1" },
    })
    .withMetadata({ orientation })
    .jpeg({ quality: 95 })
    .toBuffer();
  return new Uint8Array(jpeg);
}

export async function noisyJpeg(width: number, height: number): Promise<Uint8Array<ArrayBuffer>> {
  const noise = { type: "gaussian" as const, mean: 128, sigma: 60 };
  return new Uint8Array(
    await sharp({ create: { width, height, channels: 3, background: "grey", noise } })
      .jpeg()
      .toBuffer(),
  );
}

/** A PNG of a few hundred bytes that unpacks into gigabytes. */
export function pictureBomb(side = 30_000): Uint8Array<ArrayBuffer> {
  const head = Buffer.alloc(13);
  head.writeUInt32BE(side, 0);
  head.writeUInt32BE(side, 4);
  head.set([8, 2, 0, 0, 0], 8);
  const rows = deflateSync(Buffer.alloc(100_000));
  const signature = Buffer.from("\u0089PNG\r\n\u001a\n", "latin1");
  return new Uint8Array(
    Buffer.concat([signature, chunk("IHDR", head), chunk("IDAT", rows), chunk("IEND", Buffer.alloc(0))]),
  );
}

function chunk(name: string, data: Buffer): Buffer {
  const body = Buffer.concat([Buffer.from(name, "latin1"), data]);
  const [length, check] = [Buffer.alloc(4), Buffer.alloc(4)];
  length.writeUInt32BE(data.length);
  check.writeUInt32BE(crc32(body));
  return Buffer.concat([length, body, check]);
}
