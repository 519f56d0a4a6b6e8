import type { Intention } from "@/lib/calc/adapt";
import type { Equipment, Recipe } from "@/lib/calc/ledger";
import type { Ions } from "@/lib/calc/water";
import { adaptWith, withLots, type AdaptationChoice, type Adapted } from "./adaptation";
import { heldIntention, withLooseAcid, type HeldTask } from "./held-intention";
import type { LotFigures } from "./lot";
import type { RecipeContent } from "./recipe-content";
import type { WrittenIntention } from "./recipe-intention";
import type { SharedBrewRules } from "./shared-brew-rules";

export interface SheetTask {
  readonly content: RecipeContent;
  readonly written: WrittenIntention;
  readonly rules: SharedBrewRules;
  readonly equipment: Equipment;
  readonly choice: AdaptationChoice;
  readonly lots: ReadonlyMap<string, LotFigures>;
  /** The brewer's own water; null takes that of the recipe. */
  readonly water: Ions | null;
  /** The brewer's own yeast, used where the plan leaves it open; empty takes that of the recipe. */
  readonly yeast: string;
}

/** The recipe of a shared brew on one kettle, under the rules of the plan. */
export function sheetUnderRules(task: SheetTask): Adapted {
  const { content, written, rules, equipment, choice, lots } = task;
  const volume = rules.volume ? "written" : choice.volume;
  const held: HeldTask = {
    recipe: withLots(content.recipe, choice, lots),
    written,
    rules,
    equipment,
    ambient: content.writtenOn.ambient,
    intoFermenter: volume === "written" ? content.recipe.intoFermenter : equipment.usualBatch,
    water: task.water,
  };
  const adapt = (intention: Intention): Adapted =>
    adaptWith({ content, written: { ...written, intention }, equipment, choice: { ...choice, volume }, lots });
  const intention = { ...heldIntention(held), yeast: yeastOf(task) };
  if (rules.mashPh || content.recipe.water.acid === null) return adapt(intention);
  const without = adapt({ ...intention, water: { ...intention.water, acid: null } });
  const { recipe, ledger } = without.outcome;
  if (recipe === null || ledger === null) return without;
  return adapt(withLooseAcid(held, intention, { recipe, ledger }));
}

function yeastOf({ rules, yeast, content }: SheetTask): Recipe["yeast"] {
  const { recipe } = content;
  return rules.yeast.same || yeast === "" ? recipe.yeast : { ...recipe.yeast, name: yeast };
}
