import "server-only";
import { setImmediate as others } from "node:timers/promises";
import type { KettleEntry } from "@/lib/model/kettle-entry";
import type { RecipeContent } from "@/lib/model/recipe-content";
import type { WrittenIntention } from "@/lib/model/recipe-intention";
import { readKettles } from "@/lib/server/kettles/figures";
import type { Member } from "@/lib/server/session";
import { wholeRow, type KettleFigures } from "@/lib/ui/kettles/kettle-figures";
import { choiceInView, type KettleView } from "@/lib/ui/kettles/kettle-view";
import { inNameOrder, isComputed, named, shownRows, type KettleRow } from "@/lib/ui/kettles/shown-rows";

interface Asked {
  readonly content: RecipeContent;
  readonly written: WrittenIntention;
  readonly entries: readonly KettleEntry[];
  readonly view: KettleView;
}

/**
 * The rows that a view shows, each as soon as it is computed; in an order by figures all at the end. Between two kettles
 * the server answers others.
 */
export async function* computedRows(member: Member, asked: Asked): AsyncGenerator<KettleRow, void> {
  const { content, written, view } = asked;
  const entries = named(inNameOrder(asked.entries, view), view);
  const keptOf = new Map(entries.map(({ key, kept }) => [key, kept?.choice ?? null]));
  const entryOf = new Map(entries.map((entry) => [entry.key, entry]));
  const isOrdered = isComputed(view.sort);
  const figures = new Map<string, KettleFigures>();
  for await (const batch of readKettles(member, entries)) {
    for (const kettle of batch) {
      await others();
      const choice = choiceInView(keptOf.get(kettle.id) ?? null, view.volume);
      const row = wholeRow({ content, written, kettle, choice });
      figures.set(kettle.id, row);
      const entry = entryOf.get(kettle.id);
      if (!isOrdered && entry !== undefined) yield* rowsOf([entry], new Map([[kettle.id, row]]), view);
    }
  }
  // Members without a kettle have nothing to wait for; they stand at the end.
  yield* rowsOf(isOrdered ? entries : entries.filter(({ kettleName }) => kettleName === null), figures, view);
}

function rowsOf(
  ordered: readonly KettleEntry[],
  figures: ReadonlyMap<string, KettleFigures>,
  view: KettleView,
): readonly KettleRow[] {
  return shownRows({ ordered, figures, view, isComplete: true });
}
