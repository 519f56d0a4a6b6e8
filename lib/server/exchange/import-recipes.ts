import "server-only";
import { randomUUID } from "node:crypto";
import type { Equipment } from "@/lib/calc/ledger";
import type { ImportRequest } from "@/lib/model/exchange/import-request";
import type { Imported } from "@/lib/model/exchange/imported";
import { UnreadableFileError } from "@/lib/model/exchange/file-node";
import type { ReadFile, ReadRecipe } from "@/lib/model/exchange/read-recipes";
import { newRecipe } from "@/lib/model/recipe-content";
import { AppError } from "../app-error";
import { inSpace, toJson } from "../db";
import { findEquipment } from "../equipment/reads";
import { requireAbility } from "../permissions";
import { insertRecipes } from "../recipes/writes";
import type { Member } from "../session";
import { readRecipeFile } from "./read-file";

/** Reads a file for somebody who may write recipes. Nothing is stored. */
export async function readForImport(
  member: Member,
  { bytes, kettle }: { readonly bytes: Uint8Array; readonly kettle: ImportRequest["kettle"] },
): Promise<ReadFile> {
  requireAbility(member, "write recipes");
  const equipment = kettle === null ? null : await requireKettle(member, kettle);
  try {
    return readRecipeFile(bytes, equipment);
  } catch (error) {
    if (error instanceof UnreadableFileError) throw new AppError("INVALID", error.message, { cause: error });
    throw error;
  }
}

async function requireKettle(member: Member, id: string): Promise<Equipment> {
  const profile = await findEquipment(member, id);
  if (profile === null) throw new AppError("NOT_FOUND", "There is no such kettle here.");
  return profile.equipment;
}

/**
 * Takes the chosen recipes of a file into the space, all in one transaction. The file is read again: what a browser says
 * of it is not believed.
 */
export async function importRecipes(
  member: Member,
  { bytes, kettle, chosen }: ImportRequest & { readonly bytes: Uint8Array },
): Promise<Imported> {
  const file = await readForImport(member, { bytes, kettle });
  const message = `Imported from a ${file.format === "beerjson" ? "BeerJSON" : "BeerXML"} file`;
  const recipes = chosen.map((index) => {
    const { title, content, leftover } = requireTaken(file, index);
    return { id: randomUUID(), leftover, ...newRecipe.parse({ title, content, message }) };
  });
  const importId = randomUUID();
  const { spaceId, userId } = member;
  await inSpace(spaceId, userId, async (tx) => {
    await insertRecipes(tx, member, recipes);
    await tx.recipeLeftover.createMany({
      data: recipes.map(({ id, leftover }) => ({
        spaceId,
        recipeId: id,
        rev: 1,
        importId,
        format: file.format,
        version: file.version,
        leftover: toJson(leftover),
        importedBy: userId,
      })),
    });
  });
  return { importId, recipes: recipes.map(({ id, title }) => ({ id, title })) };
}

function requireTaken({ recipes }: ReadFile, index: number): ReadRecipe {
  const recipe = recipes[index];
  if (recipe === undefined) throw new AppError("INVALID", "The file has fewer recipes than were chosen.");
  if (recipe.content === null) {
    throw new AppError("INVALID", `“${recipe.title}” cannot be taken: ${recipe.problems.join("; ")}.`);
  }
  return recipe;
}
