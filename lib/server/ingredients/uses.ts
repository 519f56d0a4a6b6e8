import "server-only";
import type { KindAndFigures } from "@/lib/model/ingredient";
import type { IngredientUse } from "@/lib/model/ingredient-use";
import { nameKey } from "@/lib/model/lot";
import { inSpace } from "../db";
import type { Member } from "../session";

/** How a recipe is asked for an ingredient: a JSON path, and the text that it compares with. */
interface Question {
  readonly path: string;
  readonly text: string;
}

/** The newest revisions and the brews whose recipe has an ingredient. Names are compared without regard to letters. */
export async function findUses(
  { spaceId, userId }: Member,
  name: string,
  what: KindAndFigures,
): Promise<IngredientUse> {
  const { path, text } = questionOf(name, what);
  const variables = JSON.stringify({ text });
  return inSpace(spaceId, userId, async (tx) => {
    const recipes = await tx.$queryRaw<{ id: string; title: string; rev: number }[]>`
      SELECT r.id, r.title, r.head_rev AS rev
      FROM recipe r
      JOIN recipe_revision v ON v.space_id = r.space_id AND v.recipe_id = r.id AND v.rev = r.head_rev
      WHERE r.space_id = ${spaceId}::uuid AND r.archived_at IS NULL
        AND jsonb_path_exists(v.content -> 'recipe', ${path}::jsonpath, ${variables}::jsonb)
      ORDER BY r.title, r.id`;
    const brews = await tx.$queryRaw<{ id: string; title: string; state: string }[]>`
      SELECT b.id, b.title, b.state FROM brew b
      WHERE b.space_id = ${spaceId}::uuid AND b.dropped_at IS NULL AND jsonb_path_exists(b.recipe, ${path}::jsonpath, ${variables}::jsonb)
      ORDER BY b.created_at DESC, b.id`;
    return { recipes, brews };
  });
}

function questionOf(name: string, what: KindAndFigures): Question {
  switch (what.kind) {
    case "fermentable":
      return byName("$.fermentables[*].name", name);
    case "hop":
      return byName("$.hops[*].name", name);
    case "yeast":
      return byName("$.yeast.name", name);
    case "salt":
      return { path: "$.water.salts.keyvalue() ? (@.key == $text)", text: what.figures.salt };
    case "acid":
      return { path: "$.water.acid.solution.acid ? (@ == $text)", text: what.figures.acid };
  }
}

/** A pattern may not be a variable in a JSON path, so the name stands in it, every character that is no letter or digit escaped. */
function byName(place: string, name: string): Question {
  const pattern = nameKey(name)
    .replaceAll(/[^\p{L}\p{N} ]/gu, String.raw`\$&`)
    .replaceAll(" ", String.raw`\s+`);
  return { path: `${place} ? (@ like_regex ${JSON.stringify(`^\\s*${pattern}\\s*$`)} flag "i")`, text: "" };
}
