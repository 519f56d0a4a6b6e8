import { z } from "zod";
import { counted } from "./measured";
import { waterSource } from "./recipe-rows";
import { optionalText, recordId } from "./written";
import { zonedTime } from "./zoned-time";

/** What a member chooses within the plan. */
const chosen = {
  sharedBrewId: recordId,
  equipmentId: recordId,
  brewDay: zonedTime.nullable(),
  water: waterSource.nullable(),
  yeast: optionalText("Your yeast", 80),
};

/** `planVersion` is the one that was read before joining. */
export const joining = z.strictObject({ ...chosen, planVersion: counted("Plan version", { min: 1, max: 1_000_000 }) });
export type Joining = z.output<typeof joining>;

const lockVersion = counted("Version", { min: 1, max: 1_000_000_000 });

export const participationChange = z.strictObject({ ...chosen, lockVersion });
export type ParticipationChange = z.output<typeof participationChange>;

export const leaving = z.strictObject({ sharedBrewId: recordId, equipmentId: recordId, lockVersion });
export type Leaving = z.output<typeof leaving>;

/** How a change of one's own part ended. */
export type PartOutcome =
  { readonly ok: true; readonly lockVersion: number } | { readonly ok: false; readonly reason: "stale" };
