import "server-only";
import { canonicalJson } from "./canonical-json";
import { sha256 } from "./tokens";

/** The same for the same content, whatever order its fields came in. */
export function contentHash(content: unknown): Uint8Array<ArrayBuffer> {
  return sha256(canonicalJson(content));
}

export function sameBytes(a: Uint8Array, b: Uint8Array): boolean {
  return Buffer.compare(a, b) === 0;
}
