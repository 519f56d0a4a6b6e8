import type { Beer } from "./after-boil";
import type { BrewingWater } from "./brewing-water";
import type { DayPlan } from "./day-plan";
import type { Ambient, Equipment } from "./equipment";
import type { GristSums } from "./grist-sums";
import type { KettleHeat } from "./kettle-heat";
import type { HopResult } from "./ledger";
import type { MashedMalt } from "./mashed-malt";
import type { Masses } from "./mass-balance";
import type { Recipe } from "./recipe";

/** All that the stations need to be written down; `quantitiesOf` and the explanations read it. */
export interface BrewState {
  readonly recipe: Recipe;
  readonly equipment: Equipment;
  readonly ambient: Ambient;
  readonly sums: GristSums;
  readonly masses: Masses;
  readonly heat: KettleHeat;
  readonly water: BrewingWater;
  readonly day: DayPlan;
  /** null without a grist. */
  readonly mashed: MashedMalt | null;
  readonly beer: Beer;
  readonly hops: readonly HopResult[];
  readonly colourEbc: number;
  readonly postBoilL: number;
}
