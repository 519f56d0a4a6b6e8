import "server-only";
import type { MarkedPart } from "@/lib/model/search";

/** What the database writes around a match: of the private use area, so that no text means anything by them. */
const START = "\ue000";
const STOP = "\ue001";

/** A text with marks, as parts that a page can lay out without ever reading markup. */
export function markedParts(text: string): readonly MarkedPart[] {
  const [before = "", ...rest] = text.split(START);
  const parts = rest.flatMap((piece) => {
    const [match = "", ...after] = piece.split(STOP);
    return [
      { text: match, isMatch: true },
      { text: after.join(""), isMatch: false },
    ];
  });
  const first = { text: before.replaceAll(STOP, ""), isMatch: false };
  return [first, ...parts].filter((part) => part.text !== "");
}

export function hasMatch(parts: readonly MarkedPart[]): boolean {
  return parts.some((part) => part.isMatch);
}
