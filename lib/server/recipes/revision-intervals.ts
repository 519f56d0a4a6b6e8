import "server-only";
import { OutOfRangeError } from "@/lib/calc/errors";
import { brew, intervals, type Intervals } from "@/lib/calc/ledger";
import type { RecipeRevision } from "@/lib/model/recipe-content";
import type { Member } from "../session";

const MOST_KEPT = 500;
const kept = new Map<string, Intervals | null>();

/**
 * The intervals of a revision on the kettle that it was written on, null where no wort comes of it. They take longer than
 * the rest of a page, and a revision never changes, so this process computes those that are read often once.
 */
export function revisionIntervals(
  { spaceId }: Pick<Member, "spaceId">,
  { id, rev, content }: Pick<RecipeRevision, "id" | "rev" | "content">,
): Intervals | null {
  // Identifiers are chosen by whoever writes, and one only within its space.
  const key = `${spaceId} ${id} ${rev}`;
  const known = kept.get(key);
  const found = known === undefined ? computed(content) : known;
  // Put last again: what has not been read for longest is let go first.
  kept.delete(key);
  kept.set(key, found);
  if (kept.size > MOST_KEPT) kept.delete(kept.keys().next().value ?? key);
  return found;
}

function computed({ recipe, writtenOn: { equipment, ambient } }: RecipeRevision["content"]): Intervals | null {
  const input = { recipe, equipment, ambient };
  try {
    return brew(input).ok ? intervals(input) : null;
  } catch (error) {
    if (error instanceof OutOfRangeError) return null;
    throw error;
  }
}
