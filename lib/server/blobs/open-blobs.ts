import "server-only";
import { mkdir } from "node:fs/promises";
import { environment } from "../environment";
import type { Blobs } from "./blobs";
import { localDiskBlobs } from "./local-disk";
import { s3Blobs } from "./s3";

/** The store of a space: the bucket, where one is set up, or a folder of this machine. */
export function blobsOf(spaceId: string): Blobs {
  const { blobs } = environment;
  return blobs.kind === "s3" ? s3Blobs(blobs, spaceId) : localDiskBlobs(blobs.folder, spaceId);
}

/** Stops a server whose store is set up wrongly. */
export async function prepareBlobs(): Promise<void> {
  const { blobs } = environment;
  if (blobs.kind === "disk") await mkdir(blobs.folder, { recursive: true });
}
