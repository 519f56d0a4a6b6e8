import "server-only";
import sharp from "sharp";
import { PHOTO_LIMITS, PHOTO_SIDES } from "@/lib/model/photo";
import { AppError } from "../app-error";

// Of everything that the library could read in this process, three formats are left, and the drawings of which the framework
// makes the picture of a link. What somebody sends is known by its first bytes before the library gets it.
sharp.block({ operation: ["VipsForeignLoad"] });
sharp.unblock({
  operation: [
    ...["VipsForeignLoadJpegBuffer", "VipsForeignLoadPngBuffer", "VipsForeignLoadWebpBuffer"],
    "VipsForeignLoadSvgBuffer",
  ],
});
// One picture at a time uses one core and keeps nothing, so that a photo never stands in the way of a reading.
sharp.concurrency(1);
sharp.cache(false);

const FORMATS = ["jpeg", "png", "webp"] as const;
const QUALITY = { whole: 80, thumb: 70 } as const;

interface Picture {
  readonly bytes: Uint8Array<ArrayBuffer>;
  readonly width: number;
  readonly height: number;
}

export interface Pictures {
  readonly whole: Picture;
  readonly thumb: Picture;
}

/**
 * Makes of what a phone sent the two pictures that are kept: upright, small, and made anew from the pixels, so that
 * nothing of the file comes along, neither where it was taken nor anything hidden behind it.
 */
export async function makePictures(sent: Uint8Array): Promise<Pictures> {
  if (!FORMATS.includes(formatOf(sent) as (typeof FORMATS)[number])) throw notAPhoto();
  await requireFewPixels(sent);
  try {
    const whole = await drawn(sent, "whole");
    return { whole, thumb: await drawn(sent, "thumb") };
  } catch (cause) {
    throw new AppError("INVALID", "Photo: the picture is damaged or not complete; nothing was kept.", { cause });
  }
}

/** By its first bytes: what a file calls itself is not believed. */
function formatOf(sent: Uint8Array): string | null {
  const head = Buffer.from(sent.subarray(0, 12)).toString("latin1");
  if (head.startsWith("\u00ff\u00d8\u00ff")) return "jpeg";
  if (head.startsWith("\u0089PNG\r\n\u001a\n")) return "png";
  return head.startsWith("RIFF") && head.endsWith("WEBP") ? "webp" : null;
}

async function requireFewPixels(sent: Uint8Array): Promise<void> {
  const told = await sharp(sent, { limitInputPixels: false })
    .metadata()
    .catch((cause: unknown) => {
      throw new AppError("INVALID", "Photo: the picture is damaged or not complete; nothing was kept.", { cause });
    });
  const pixels = told.width * told.height;
  if (pixels <= PHOTO_LIMITS.pixels) return;
  throw new AppError(
    "INVALID",
    `Photo: ${String(told.width)} × ${String(told.height)} pixels are too many; at most ${inMillions(PHOTO_LIMITS.pixels)} million are taken.`,
  );
}

const inMillions = (pixels: number): string => String(pixels / 1_000_000);

async function drawn(sent: Uint8Array, size: "whole" | "thumb"): Promise<Picture> {
  const side = PHOTO_SIDES[size];
  const { data, info } = await sharp(sent, { limitInputPixels: PHOTO_LIMITS.pixels, failOn: "truncated", pages: 1 })
    .rotate()
    .resize({ width: side, height: side, fit: "inside", withoutEnlargement: true })
    .webp({ quality: QUALITY[size] })
    .timeout({ seconds: 20 })
    .toBuffer({ resolveWithObject: true });
  return { bytes: new Uint8Array(data), width: info.width, height: info.height };
}

function notAPhoto(): AppError {
  return new AppError("INVALID", "Photo: the file is no JPEG, PNG or WebP picture; nothing was kept.");
}
