import "server-only";

/** Bytes by the SHA-256 of what they are, in hexadecimal; each club has a store of its own. */
export interface Blobs {
  /** Keeping the same bytes again changes nothing. */
  readonly put: (key: string, bytes: Uint8Array<ArrayBuffer>, type: string) => Promise<void>;
  /** The bytes; null where there are none under this key. */
  readonly get: (key: string) => Promise<Uint8Array<ArrayBuffer> | null>;
  readonly delete: (key: string) => Promise<void>;
  readonly list: () => Promise<readonly string[]>;
}

const KEY = /^[0-9a-f]{64}$/;
const SPACE = /^[0-9a-f]{8}(?:-[0-9a-f]{4}){3}-[0-9a-f]{12}$/;

/** A key that can be nothing but the name of a file: no separator, no dot, no other letter. */
export function requireKey(key: string): string {
  if (!KEY.test(key)) throw new Error("a blob is named by the hexadecimal SHA-256 of its bytes");
  return key;
}

export function requireSpace(spaceId: string): string {
  if (!SPACE.test(spaceId)) throw new Error("a store of blobs belongs to a space");
  return spaceId;
}
