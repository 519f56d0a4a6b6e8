import {
  brew,
  brewWithWater,
  type Ambient,
  type Equipment,
  type Ledger,
  type QuantityId,
  type Recipe,
} from "@/lib/calc/ledger";
import { garageKettle, paleAle, sameDay } from "./brewing-fixtures";

interface Changes {
  readonly recipe?: Partial<Recipe>;
  readonly kettle?: Partial<Equipment["kettle"]>;
  readonly lauter?: Partial<Equipment["lauter"]>;
  readonly mash?: Partial<Equipment["mash"]>;
  readonly equipment?: Partial<Equipment>;
  readonly ambient?: Partial<Ambient>;
}

/** The invented pale ale on the invented kettle, with some things changed. */
export function brewInput(changes: Changes = {}): { recipe: Recipe; equipment: Equipment; ambient: Ambient } {
  return {
    recipe: { ...paleAle, ...changes.recipe },
    equipment: {
      ...garageKettle,
      ...changes.equipment,
      kettle: { ...garageKettle.kettle, ...changes.kettle },
      lauter: { ...garageKettle.lauter, ...changes.lauter },
      mash: { ...garageKettle.mash, ...changes.mash },
    },
    ambient: { ...sameDay, ...changes.ambient },
  };
}

/** Its ledger; a brew that gives none fails the test. */
export function brewed(changes: Changes = {}): Ledger {
  const outcome = brew(brewInput(changes));
  if (!outcome.ok) throw new Error(`no ledger: ${outcome.reason} ${outcome.value}`);
  return outcome.ledger;
}

/** One quantity that must have a value. */
export function valueOf(ledger: Ledger, id: QuantityId): number {
  const value = ledger.quantities[id];
  if (value === null) throw new Error(`${id} has no value`);
  return value;
}

/** A figure that is exactly known. */
export const exactly = <Q extends number>(value: Q): { value: Q; sd: number; from: "stated"; count: number } => ({
  value,
  sd: 0,
  from: "stated",
  count: 0,
});

/** What this kettle makes of the planned water when one of its figures is not as stated. */
export function brewedOtherwise(changes: Changes): Ledger {
  const planned = brewed();
  const kilograms = (id: "water.mash" | "water.sparge"): number => 0.9982 * valueOf(planned, id);
  const outcome = brewWithWater({
    ...brewInput(changes),
    mashWaterKg: kilograms("water.mash"),
    spargeKg: kilograms("water.sparge"),
  });
  if (!outcome.ok) throw new Error(outcome.reason);
  return outcome.ledger;
}
