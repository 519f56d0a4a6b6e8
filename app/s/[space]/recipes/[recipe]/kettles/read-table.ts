import "server-only";
import { recipeIntention } from "@/lib/model/recipe-intention";
import type { RecipeRevision } from "@/lib/model/recipe-content";
import { listKettleEntries } from "@/lib/server/kettles/entries";
import { readFirstKettles } from "@/lib/server/kettles/first-rows";
import type { Member } from "@/lib/server/session";
import { wholeRow } from "@/lib/ui/kettles/kettle-figures";
import type { FirstKettles } from "@/lib/ui/kettles/kettle-store";
import { choiceInView, type KettleView } from "@/lib/ui/kettles/kettle-view";
import { inNameOrder, named } from "@/lib/ui/kettles/shown-rows";

/** So many rows come computed with the page, which is every row of most clubs; a browser computes the others. */
const FIRST_ROWS = 50;

/** The rows that come with the page; null where the recipe does not brew on its own kettle. */
export async function readTable(
  member: Member,
  { id: recipeId, rev, content }: RecipeRevision,
  view: KettleView,
): Promise<FirstKettles | null> {
  const written = recipeIntention(content);
  if (written === null) return null;
  const all = await listKettleEntries(member, { recipeId, rev });
  const entries = all.length <= FIRST_ROWS ? all : named(inNameOrder(all, view), view).slice(0, FIRST_ROWS);
  const choices = new Map(entries.map(({ key, kept }) => [key, choiceInView(kept?.choice ?? null, view.volume)]));
  const kettles = await readFirstKettles(member, entries);
  return {
    entries,
    rowCount: all.length,
    kettleCount: all.filter(({ kettleName }) => kettleName !== null).length,
    figures: kettles.map((kettle) => {
      const choice = choices.get(kettle.id) ?? choiceInView(null, view.volume);
      return [kettle.id, wholeRow({ content, written, kettle, choice })] as const;
    }),
  };
}
