import { z } from "zod";
import { revisionNumber } from "../measured";
import { oneOf, recordId } from "../written";
import { EXPORT_KINDS } from "./export-file";
import { FILE_LIMITS } from "./file-node";

/** Which recipes go into a file; a revision other than the newest only for one recipe alone. */
export const exportRequest = z
  .strictObject({
    recipe: z
      .array(recordId)
      .min(1, "Choose at least one recipe")
      .max(FILE_LIMITS.recipes, `One file takes at most ${String(FILE_LIMITS.recipes)} recipes`)
      .transform((ids) => [...new Set(ids)]),
    format: oneOf("Format", EXPORT_KINDS),
    rev: revisionNumber.nullable(),
  })
  .refine(({ recipe, rev }) => rev === null || recipe.length === 1, {
    path: ["rev"],
    message: "Only one recipe at a time is exported in an older revision",
  });

/** The request as it stands in an address, which the form, the links and the answer to a refused form write alike. */
export function exportQuery(query: URLSearchParams): Record<"recipe" | "format" | "rev", unknown> {
  return { recipe: query.getAll("recipe"), format: query.get("format"), rev: query.get("rev") };
}
