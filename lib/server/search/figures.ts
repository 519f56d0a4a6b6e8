import "server-only";
import { NOBODY } from "../nobody";
import { OutOfRangeError } from "@/lib/calc/errors";
import { brew, type Ledger, type QuantityId } from "@/lib/calc/ledger";
import { recipeContent, type RecipeContent } from "@/lib/model/recipe-content";
import { CALC_VERSION } from "../calc-version";
import { directory, inSpace, type SpaceTransaction } from "../db";

const AT_ONCE = 50;

/**
 * Writes the figures of a recipe's newest revision beside its words, in the transaction of the save. The triggers of the
 * database have filed the words by then; the figures only lib/calc knows.
 */
export async function fileFigures(
  tx: SpaceTransaction,
  spaceId: string,
  recipe: { readonly id: string; readonly content: RecipeContent },
): Promise<void> {
  await tx.searchDocument.updateMany({
    where: { spaceId, kind: "recipe", id: recipe.id },
    data: { ...figuresOf(recipe.content), calcVersion: CALC_VERSION },
  });
}

function figuresOf({ recipe, writtenOn: { equipment, ambient } }: RecipeContent) {
  const ledger = ledgerOf({ recipe, equipment, ambient });
  const figure = (id: QuantityId): number | null => ledger?.quantities[id] ?? null;
  return {
    originalPlato: figure("fermenter.originalExtract"),
    bitternessIbu: figure("fermenter.bitterness"),
    colourEbc: figure("fermenter.colour"),
    alcoholVol: figure("package.alcohol"),
  };
}

/** null where no wort comes of it: such a recipe is kept and found all the same, by its words. */
function ledgerOf(written: Parameters<typeof brew>[0]): Ledger | null {
  try {
    const outcome = brew(written);
    return outcome.ok ? outcome.ledger : null;
  } catch (error) {
    if (error instanceof OutOfRangeError) return null;
    throw error;
  }
}

/**
 * Computes the figures that are missing or of another version of the calculation, for recipes from before there was a
 * search and after a new version. Recipes that change meanwhile file their own.
 *
 * @returns How many recipes were given figures.
 */
export async function fillFigures(): Promise<number> {
  const spaces = await directory.space.findMany({ select: { id: true } });
  let filled = 0;
  for (const { id } of spaces) filled += await fillFiguresOf(id);
  return filled;
}

/** The same for one space, as after its recipes came out of a file. */
export async function fillFiguresOf(spaceId: string): Promise<number> {
  let filled = 0;
  for (let some = AT_ONCE; some === AT_ONCE; filled += some) some = await fillSome(spaceId);
  return filled;
}

function fillSome(spaceId: string): Promise<number> {
  return inSpace(spaceId, NOBODY, async (tx) => {
    const stale = await tx.$queryRaw<readonly { readonly id: string; readonly content: unknown }[]>`
      SELECT d.id, v.content
      FROM search_document d
      JOIN recipe r ON r.space_id = d.space_id AND r.id = d.id
      JOIN recipe_revision v ON v.space_id = r.space_id AND v.recipe_id = r.id AND v.rev = r.head_rev
      WHERE d.space_id = ${spaceId}::uuid AND d.kind = 'recipe' AND d.calc_version IS DISTINCT FROM ${CALC_VERSION}
      LIMIT ${AT_ONCE} FOR UPDATE OF d`;
    for (const { id, content } of stale) await fileFigures(tx, spaceId, { id, content: recipeContent.parse(content) });
    return stale.length;
  });
}
