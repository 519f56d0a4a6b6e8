import "server-only";
import { generateVAPIDKeys } from "web-push";
import { directory } from "../db";
import { environment } from "../environment";

export interface PushKeys {
  readonly publicKey: string;
  readonly privateKey: string;
}

/**
 * The key by which push services know this server: from the settings, or made once and kept. Browsers subscribe to it,
 * so every process has the same.
 */
export async function pushKeys(): Promise<PushKeys> {
  const set = environment.pushKeys;
  if (set !== null) return set;
  const kept = await findKept();
  if (kept !== null) return kept;
  const made = generateVAPIDKeys();
  // Of two processes at one moment the first one's key is kept, and both read it.
  await directory.pushKey.createMany({ data: [made], skipDuplicates: true });
  const agreed = await findKept();
  if (agreed === null) throw new Error("the key for push services was not kept");
  return agreed;
}

function findKept(): Promise<PushKeys | null> {
  return directory.pushKey.findFirst({ select: { publicKey: true, privateKey: true } });
}
