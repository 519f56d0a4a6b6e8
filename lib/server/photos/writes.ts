import "server-only";
import { createHash } from "node:crypto";
import { megabytes, PHOTO_LIMITS, type Photo } from "@/lib/model/photo";
import { AppError } from "../app-error";
import { blobsOf } from "../blobs/open-blobs";
import { requireWritableBrew } from "../log/require-writable";
import { sameBytes } from "../content-hash";
import { inSpace, type SpaceTransaction } from "../db";
import type { Member } from "../session";
import { makePictures, type Pictures } from "./pictures";

export interface SentPhoto {
  readonly id: string;
  readonly brewId: string;
  readonly bytes: Uint8Array<ArrayBuffer>;
}

export interface KeptPhoto {
  readonly outcome: "stored" | "duplicate";
  readonly photo: Photo;
}

/**
 * Keeps a photo of a brew. A phone may send it many times under the number it gave it: it is kept once. The bytes are
 * stored before the row that names them, so that a row never names what is not there; bytes whose row was refused lie
 * under their hash and hurt nobody.
 */
export async function keepPhoto(member: Member, { id, brewId, bytes }: SentPhoto): Promise<KeptPhoto> {
  const { spaceId, userId } = member;
  const sent = hashOf(bytes);
  const known = await inSpace(spaceId, userId, async (tx) => {
    await requireWritableBrew(tx, member, brewId);
    const photo = await findSame(tx, { spaceId, id, brewId, sent });
    if (photo === null) await requireRoom(tx, spaceId, brewId, 0);
    return photo;
  });
  if (known !== null) return { outcome: "duplicate", photo: known };
  const pictures = await makePictures(bytes);
  await store(spaceId, pictures);
  return inSpace(spaceId, userId, async (tx) => {
    // Of two photos at one moment the second waits, so that together they do not go over what a club may keep.
    await tx.$queryRaw`SELECT pg_advisory_xact_lock(hashtextextended(${`photos ${spaceId}`}, 0))::text`;
    const already = await findSame(tx, { spaceId, id, brewId, sent });
    if (already !== null) return { outcome: "duplicate", photo: already };
    await requireRoom(tx, spaceId, brewId, pictures.whole.bytes.length + pictures.thumb.bytes.length);
    const row = { spaceId, id, brewId, uploaderId: userId, sentSha256: sent, ...columnsOf(pictures) };
    await tx.attachment.create({ data: row });
    return { outcome: "stored", photo: { id, width: row.width, height: row.height, bytes: row.bytes } };
  });
}

function hashOf(bytes: Uint8Array): Uint8Array<ArrayBuffer> {
  return new Uint8Array(createHash("sha256").update(bytes).digest());
}

function columnsOf({ whole, thumb }: Pictures) {
  return {
    mime: "image/webp",
    sha256: hashOf(whole.bytes),
    bytes: whole.bytes.length,
    width: whole.width,
    height: whole.height,
    thumbSha256: hashOf(thumb.bytes),
    thumbBytes: thumb.bytes.length,
  };
}

async function store(spaceId: string, { whole, thumb }: Pictures): Promise<void> {
  const blobs = blobsOf(spaceId);
  for (const { bytes } of [whole, thumb]) {
    await blobs.put(Buffer.from(hashOf(bytes)).toString("hex"), bytes, "image/webp");
  }
}

/** The photo under this number; another one under it is refused, and never overwritten. */
async function findSame(
  tx: SpaceTransaction,
  a: { readonly spaceId: string; readonly id: string; readonly brewId: string; readonly sent: Uint8Array },
): Promise<Photo | null> {
  const row = await tx.attachment.findUnique({
    where: { spaceId_id: { spaceId: a.spaceId, id: a.id } },
    select: { brewId: true, sentSha256: true, width: true, height: true, bytes: true },
  });
  if (row === null) return null;
  const isSame = row.brewId === a.brewId && row.sentSha256 !== null && sameBytes(row.sentSha256, a.sent);
  if (isSame) return { id: a.id, width: row.width ?? 0, height: row.height ?? 0, bytes: row.bytes };
  throw new AppError("CONFLICT", "Another photo with this identifier is kept already; nothing was changed.");
}

async function requireRoom(tx: SpaceTransaction, spaceId: string, brewId: string, more: number): Promise<void> {
  const [counted] = await tx.$queryRaw<{ readonly photos: number; readonly bytes: number }[]>`
    SELECT count(*) FILTER (WHERE brew_id = ${brewId}::uuid)::int AS photos,
           coalesce(sum(bytes + coalesce(thumb_bytes, 0)), 0)::float8 AS bytes
    FROM attachment WHERE space_id = ${spaceId}::uuid`;
  const { perBrew, perClubBytes } = PHOTO_LIMITS;
  if ((counted?.photos ?? 0) >= perBrew) {
    throw new AppError(
      "CONFLICT",
      `Photos: this brew has ${String(perBrew)}, deleted ones included, which is the most.`,
    );
  }
  if ((counted?.bytes ?? 0) + more > perClubBytes) {
    throw new AppError("CONFLICT", `Photos: this club keeps ${megabytes(perClubBytes)} of them, which is the most.`);
  }
}
