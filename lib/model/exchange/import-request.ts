import { z } from "zod";
import { recordId } from "../written";
import { FILE_LIMITS } from "./file-node";

const kettle = z.preprocess((value) => (value === "" ? null : value), recordId.nullable());

/** What a preview is asked for; the file stands beside it. An empty kettle derives one from the file. */
export const previewRequest = z.strictObject({ kettle });

const place = z.coerce
  .number({ error: "A recipe is chosen by its place in the file" })
  .int("A recipe is chosen by its place in the file")
  .min(0, "A recipe is chosen by its place in the file")
  .max(FILE_LIMITS.recipes, "A recipe is chosen by its place in the file");

/** Which recipes of a file are taken, by their places in it. */
export const importRequest = z.strictObject({
  kettle,
  chosen: z.preprocess(
    (value) => (typeof value === "string" ? value.split(",").filter((part) => part !== "") : value),
    z
      .array(place)
      .min(1, "Choose at least one recipe")
      .max(FILE_LIMITS.recipes, `Choose at most ${String(FILE_LIMITS.recipes)} recipes`)
      .transform((chosen) => [...new Set(chosen)]),
  ),
});
export type ImportRequest = z.output<typeof importRequest>;
