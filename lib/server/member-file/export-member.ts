import "server-only";
import { writeAudit } from "../audit";
import { blobsOf } from "../blobs/open-blobs";
import { directory } from "../db";
import type { Viewer } from "../session";
import { ownPhotos } from "../photos/own-photos";
import { readAccount } from "./account-facts";
import { ownRows } from "./own-rows";

const FORMAT = "gylebook-own-data";
const VERSION = 1;

interface OwnSpace {
  readonly spaceId: string;
  readonly name: string;
}

/**
 * Everything that somebody wrote or that is about them, in all their clubs, those they left too: one JSON document, in
 * pieces. What others wrote is not in it, nor any secret.
 */
export async function exportOwnData(viewer: Viewer, now: Date): Promise<AsyncIterable<string>> {
  const { userId } = viewer;
  const account = await readAccount(userId);
  const spaces = await directory.membership.findMany({
    where: { userId, space: { deletedAt: null } },
    select: { spaceId: true, space: { select: { name: true } } },
    orderBy: [{ space: { name: "asc" } }, { spaceId: "asc" }],
  });
  await writeAudit(directory, { action: "own data", outcome: "ok", actor: userId });
  const head = { format: FORMAT, version: VERSION, exportedAt: now.toISOString(), ...account };
  return piecesOf(
    head,
    userId,
    spaces.map(({ spaceId, space }) => ({ spaceId, name: space.name })),
  );
}

async function* piecesOf(head: object, userId: string, spaces: readonly OwnSpace[]): AsyncGenerator<string> {
  yield `${JSON.stringify(head).slice(0, -1)},\n"spaces":[`;
  for (const [index, space] of spaces.entries()) {
    yield `${index === 0 ? "" : ","}\n{"id":${JSON.stringify(space.spaceId)},"name":${JSON.stringify(space.name)},"rows":[`;
    const rows = await ownRows(space.spaceId, userId);
    for (const [at, row] of rows.entries()) yield `${at === 0 ? "" : ","}\n${JSON.stringify(row)}`;
    yield `\n],"photos":[`;
    yield* photosOf(space.spaceId, userId);
    yield `]}`;
  }
  yield "\n]}\n";
}

/** The pictures themselves, one after the other, so that one is in memory at a time. */
async function* photosOf(spaceId: string, userId: string): AsyncGenerator<string> {
  const rows = await ownPhotos(spaceId, userId);
  let isFirst = true;
  for (const { id, mime, key } of rows) {
    const bytes = await blobsOf(spaceId).get(key);
    if (bytes === null) continue;
    const picture = { id, mime, base64: Buffer.from(bytes).toString("base64") };
    yield `${isFirst ? "" : ","}\n${JSON.stringify(picture)}`;
    isFirst = false;
  }
}
