/** What a photo of a brew may be, for the phone that sends it and for the server that takes it. */
export const PHOTO_LIMITS = {
  bytes: 10 * 1024 * 1024,
  /** Of the picture as it is sent: more than any phone takes, and little enough to unpack. */
  pixels: 64_000_000,
  perBrew: 40,
  perClubBytes: 2 * 1024 * 1024 * 1024,
} as const;

/** The longer side of what is kept, in pixels. */
export const PHOTO_SIDES = { whole: 1600, thumb: 320 } as const;
export const PHOTO_SIZES = ["whole", "thumb"] as const;
export type PhotoSize = (typeof PHOTO_SIZES)[number];

export interface Photo {
  readonly id: string;
  readonly width: number;
  readonly height: number;
  readonly bytes: number;
}

/** A number of bytes as somebody reads it in a message. */
export function megabytes(bytes: number): string {
  return `${String(Math.ceil((bytes / 1024 / 1024) * 10) / 10)} MB`;
}
