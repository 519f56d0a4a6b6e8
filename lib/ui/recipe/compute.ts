import { OutOfRangeError } from "@/lib/calc/errors";
import { brew, type Ambient, type Equipment, type Ledger, type LedgerOutcome, type Recipe } from "@/lib/calc/ledger";

export interface Brewed {
  readonly recipe: Recipe;
  readonly equipment: Equipment;
  readonly ambient: Ambient;
  readonly ledger: Ledger;
}

export type Computed = { readonly ok: true; readonly brewed: Brewed } | { readonly ok: false; readonly why: string };

/** The ledger of a recipe on a kettle; or why no wort comes of it, in words. */
export function compute(recipe: Recipe, equipment: Equipment, ambient: Ambient): Computed {
  try {
    const outcome = brew({ recipe, equipment, ambient });
    if (!outcome.ok) return { ok: false, why: whyNoWort(outcome) };
    return { ok: true, brewed: { recipe, equipment, ambient, ledger: outcome.ledger } };
  } catch (error) {
    // Every amount is in its range, and together they are still outside what a formula holds for.
    if (error instanceof OutOfRangeError) return { ok: false, why: `This does not brew: ${error.message}` };
    throw error;
  }
}

type Failure = Exclude<LedgerOutcome, { readonly ok: true }>;

const WHY: Readonly<Record<Failure["reason"], (value: string) => string>> = {
  "no-fermentable": () => "Nothing here gives extract: a recipe needs malt, sugar or malt extract",
  "no-mash-step": () => "There is no mash step: a recipe needs at least one temperature to mash at",
  "grain-holds-all-water": () =>
    "The grain would hold all the water, and nothing would run off: less grain, or more volume",
  "kettle-keeps-all-wort": (value) =>
    `Trub, hops and hoses would keep ${value} L, and nothing would reach the fermenter: more volume, or fewer hops`,
  "too-salty": (value) => `The water would hold ${value} mg/L of salts, and the arithmetic ends at 5000: less salt`,
  "too-strong": (value) =>
    `The wort would have ${value} °P, and the arithmetic ends at 35 °P: less grain, or more volume`,
  "too-bitter": (value) =>
    `One hop addition would bring ${value} mg/L of alpha acids, and the arithmetic ends at 1000: fewer hops`,
  "too-dark": (value) =>
    `The wort would have ${value} malt colour units, and the arithmetic ends at 1000: less dark malt, or more volume`,
};

function whyNoWort({ reason, value }: Failure): string {
  return WHY[reason](value.toFixed(1));
}
