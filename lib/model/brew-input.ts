import { z } from "zod";
import { adaptationChoice } from "./adaptation";
import { ambientInput } from "./ambient";
import { BREW_STATES } from "./brew";
import { counted, revisionNumber } from "./measured";
import { recipeInput } from "./recipe-content";
import { oneOf, optionalText, recordId } from "./written";

/** A batch to be planned: the recipe as it was adapted to the kettle. The server computes everything else itself. */
export const newBrew = z.strictObject({
  recipeId: recordId,
  rev: revisionNumber,
  equipmentId: recordId,
  sharedBrewId: recordId.nullable(),
  recipe: recipeInput,
  ambient: ambientInput,
  /** The lot that a row of the recipe is taken from, by the path of the row. */
  lots: z.exactOptional(adaptationChoice.shape.lots),
});
export type NewBrew = z.output<typeof newBrew>;

export const brewMove = z.strictObject({
  id: recordId,
  state: oneOf("State", BREW_STATES),
  lockVersion: counted("Version", { min: 1, max: 1_000_000_000 }),
});
export type BrewMove = z.output<typeof brewMove>;

/** A planned brew that will not be; the reason may be empty where nothing was measured yet. */
export const brewDrop = brewMove.omit({ state: true }).extend({ why: optionalText("Reason", 500) });
export type BrewDrop = z.output<typeof brewDrop>;
