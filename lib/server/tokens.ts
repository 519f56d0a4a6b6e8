import "server-only";
import { hash, randomBytes } from "node:crypto";

/** A secret of 256 random bits, in letters that a URL and a cookie carry unchanged. */
export function newToken(): string {
  return randomBytes(32).toString("base64url");
}

/** What the database keeps of a token: whoever reads the table cannot use it. */
export function tokenHash(token: string): Uint8Array<ArrayBuffer> {
  return sha256(token);
}

export function sha256(text: string): Uint8Array<ArrayBuffer> {
  return new Uint8Array(hash("sha256", text, "buffer"));
}

/** The same in hexadecimal digits, which takes a fraction of the time where there are thousands. */
export function sha256Hex(text: string): string {
  return hash("sha256", text, "hex");
}
