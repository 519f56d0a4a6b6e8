import { exportQuery, exportRequest } from "@/lib/model/exchange/export-request";
import { fieldErrors, type FieldErrors } from "@/lib/model/field-errors";

/** A request of the form that gave no file: what was wrong with it, and what was chosen. */
export interface RefusedExport {
  readonly errors: FieldErrors;
  readonly chosen: ReadonlySet<string>;
  readonly format: string;
}

/**
 * Reads a refused request back out of the address of the form; null where the form is opened anew. What it says comes
 * from the request itself and never from the address, so that nobody makes this page say something.
 */
export function readRefused(
  query: Readonly<Record<string, string | string[] | undefined>>,
  present: ReadonlySet<string>,
): RefusedExport | null {
  if (query.refused === undefined) return null;
  const pairs = Object.entries(query).flatMap(([name, value]) => [value ?? []].flat().map((one) => [name, one]));
  const asked = exportQuery(new URLSearchParams(pairs));
  const parsed = exportRequest.safeParse(asked);
  const chosen = new Set([query.recipe ?? []].flat().filter((id) => present.has(id)));
  const format = typeof query.format === "string" ? query.format : "";
  if (!parsed.success) return { errors: fieldErrors(parsed.error), chosen, format };
  const gone = parsed.data.recipe.length - chosen.size;
  const message =
    gone > 0 ? "A recipe that was chosen is not here any more. Choose from those below" : "There is no such revision";
  return { errors: { recipe: message }, chosen, format };
}
