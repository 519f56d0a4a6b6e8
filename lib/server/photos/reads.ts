import "server-only";
import type { PhotoSize } from "@/lib/model/photo";
import { blobsOf } from "../blobs/open-blobs";
import { inSpace } from "../db";
import { isRecordId } from "../record-id";
import type { Member } from "../session";

interface AskedPhoto {
  readonly brewId: string;
  readonly id: string;
  readonly size: PhotoSize;
}

interface Served {
  readonly bytes: Uint8Array<ArrayBuffer>;
  readonly mime: string;
}

interface Named {
  readonly sha256: Uint8Array;
  readonly thumbSha256: Uint8Array | null;
  readonly mime: string;
}

/** One picture of a brew; null where there is none, where it was taken out of the log, or its bytes are elsewhere. */
export async function findPhoto(member: Member, asked: AskedPhoto): Promise<Served | null> {
  if (!isRecordId(asked.id) || !isRecordId(asked.brewId)) return null;
  const row = await findRow(member, asked);
  const hash = asked.size === "thumb" ? row?.thumbSha256 : row?.sha256;
  if (row === null || hash === null || hash === undefined) return null;
  const bytes = await blobsOf(member.spaceId).get(Buffer.from(hash).toString("hex"));
  return bytes === null ? null : { bytes, mime: row.mime };
}

async function findRow({ spaceId, userId }: Member, { brewId, id }: AskedPhoto): Promise<Named | null> {
  const [row] = await inSpace(
    spaceId,
    userId,
    // A photo may come before the event that shows it; once every event that shows it is void, it is gone.
    (tx) => tx.$queryRaw<Named[]>`
      WITH shown AS (
        SELECT EXISTS (SELECT FROM brew_event v WHERE v.space_id = e.space_id AND v.brew_id = e.brew_id
                       AND v.kind = 'void' AND v.target_id = e.id) AS is_void
        FROM brew_event e
        WHERE e.space_id = ${spaceId}::uuid AND e.brew_id = ${brewId}::uuid
          AND e.kind = 'photo' AND e.payload ->> 'photoId' = ${id}
      )
      SELECT sha256, thumb_sha256 AS "thumbSha256", mime FROM attachment
      WHERE space_id = ${spaceId}::uuid AND id = ${id}::uuid AND brew_id = ${brewId}::uuid
        AND coalesce((SELECT NOT bool_and(is_void) FROM shown), true)`,
  );
  return row ?? null;
}
