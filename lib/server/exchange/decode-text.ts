import "server-only";
import { UnreadableFileError } from "@/lib/model/exchange/file-node";

const MARKS: readonly (readonly [encoding: string, bytes: readonly number[]])[] = [
  ["utf-8", [0xef, 0xbb, 0xbf]],
  ["utf-16le", [0xff, 0xfe]],
  ["utf-16be", [0xfe, 0xff]],
];

const DECLARED = /^\s*<\?xml[^>]*?\bencoding\s*=\s*["']([\w.:-]{1,40})["']/;

/** Encodings that files of recipes are found in. Latin-1 is read as its superset, as browsers do. */
const ENCODINGS: ReadonlyMap<string, string> = new Map([
  ["utf-8", "utf-8"],
  ["utf8", "utf-8"],
  ["us-ascii", "utf-8"],
  ["utf-16", "utf-16le"],
  ["iso-8859-1", "windows-1252"],
  ["latin1", "windows-1252"],
  ["windows-1252", "windows-1252"],
]);

/** The text of a file: by its byte order mark, by what an XML file says of itself, or UTF-8, and Latin-1 where that fails. */
export function decodeText(bytes: Uint8Array): string {
  for (const [encoding, mark] of MARKS) {
    if (mark.every((byte, i) => bytes[i] === byte)) return decodeAs(encoding, bytes);
  }
  const start = new TextDecoder("latin1").decode(bytes.subarray(0, 200));
  const [, declared] = DECLARED.exec(start) ?? [];
  if (declared === undefined) return decodeUnmarked(bytes);
  const encoding = ENCODINGS.get(declared.toLowerCase());
  if (encoding === undefined) {
    throw new UnreadableFileError(
      1,
      `the file says that it is in ${declared}; it has to be UTF-8, UTF-16 or ISO-8859-1`,
    );
  }
  return decodeAs(encoding, bytes);
}

function decodeUnmarked(bytes: Uint8Array): string {
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder("windows-1252").decode(bytes);
  }
}

function decodeAs(encoding: string, bytes: Uint8Array): string {
  try {
    return new TextDecoder(encoding, { fatal: true }).decode(bytes);
  } catch (cause) {
    const reason = `the file says that it is in ${encoding.toUpperCase()}, and it is not`;
    throw new UnreadableFileError(1, reason, { cause });
  }
}
