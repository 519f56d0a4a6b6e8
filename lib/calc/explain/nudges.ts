import { EQUIPMENT_NUDGES } from "./equipment-nudges";
import { RECIPE_NUDGES } from "./recipe-nudges";
import { WATER_NUDGES } from "./water-nudges";

/** Every change that an explanation may try, by the words that tell of it. */
export const NUDGES = { ...RECIPE_NUDGES, ...WATER_NUDGES, ...EQUIPMENT_NUDGES } as const;

export type NudgeName = keyof typeof NUDGES;
