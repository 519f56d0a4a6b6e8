import { newIngredient, type NewIngredient } from "@/lib/model/ingredient";
import { newLot, type NewLot } from "@/lib/model/ingredient-lot";

/** A lot of hops of the test recipe, as a form would send it; `change` is what it would send instead. */
export function hopLot(change: object = {}): NewLot {
  return newLot.parse({
    name: "Cascade",
    label: "Harvest 2026",
    what: { kind: "hop", figures: { alpha: 0.06, analysedOn: null, storedAt: null, packaging: null } },
    bestBefore: "2028-09-30",
    price: { minor: 450, currency: "EUR", for: 100 },
    notes: "",
    owner: "club",
    onHand: 250,
    ...change,
  });
}

/** A sack of malt. */
export function maltLot(change: object = {}): NewLot {
  return hopLot({
    name: "Pale ale malt",
    label: "Sack 7",
    what: { kind: "fermentable", figures: { extract: 0.8, moisture: 0.05, colour: 6 } },
    price: null,
    onHand: 25,
    ...change,
  });
}

export function ownHop(change: object = {}): NewIngredient {
  return newIngredient.parse({
    name: "Garden hop",
    notes: "From the fence",
    what: { kind: "hop", figures: { alphaLow: 0.03, alphaHigh: 0.05, lossIn6Months: 0.4 } },
    ...change,
  });
}

/** Packs of the yeast of the test recipe. */
export function yeastLot(cells: number | null, change: object = {}): NewLot {
  const figures = { form: "liquid", cells, packedOn: null, storedAt: null };
  return hopLot({ name: "Ale yeast", label: "Packs", what: { kind: "yeast", figures }, onHand: 10, ...change });
}

export function saltLot(name: string, change: object = {}): NewLot {
  return hopLot({ name, label: "Jar", what: { kind: "salt", figures: {} }, onHand: 500, ...change });
}

/** A bottle of lactic acid of another strength than most recipes name. */
export function acidLot(massFraction: number, density: number, change: object = {}): NewLot {
  const what = { kind: "acid", figures: { massFraction, density } };
  return hopLot({ name: "Lactic acid 60 %", label: "Bottle", what, onHand: 250, ...change });
}
