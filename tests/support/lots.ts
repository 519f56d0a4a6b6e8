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
