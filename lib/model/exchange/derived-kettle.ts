import { brew, type Equipment, type Figure, type Recipe } from "@/lib/calc/ledger";
import { fraction, kilogramsPerHour, litres, metres, volts, watts } from "@/lib/calc/units";
import { EQUIPMENT_FIELDS } from "../equipment-fields";
import { USUAL_DAY } from "../ambient-fields";
import { typicalEquipment } from "../typical-equipment";
import type { StatedRecipe } from "./stated-recipe";

export const DERIVED_KETTLE_NAME = "Kettle of the file";

/** Room over the volume before the boil, and heat for it. Common practice, no source. */
const ROOM = 1.35;
const WATTS_PER_L = 90;
const SUPPLY_V = 230;
const NEAREST_EFFICIENCY = 0.0005;
const MOST_PASSES = 6;

export interface DerivedKettle {
  readonly equipment: Equipment;
  /** What was worked out from what, in sentences for the preview. */
  readonly derived: readonly string[];
}

/**
 * A typical electric kettle with a basket, of the size of the file's batch, with its boil-off from the volume before the
 * boil and its conversion from the efficiency that the file states. Standards describe a result, not a kettle.
 */
export function derivedKettle(stated: StatedRecipe, recipe: Recipe): DerivedKettle {
  const { batch, preBoil } = stated;
  const start = typicalEquipment({
    name: DERIVED_KETTLE_NAME,
    kind: "electric with basket",
    capacity: litres(within("kettle.capacity", ROOM * Math.max(batch, preBoil ?? 1.15 * batch))),
    power: watts(within("kettle.ratedPower", WATTS_PER_L * batch)),
    voltage: volts(SUPPLY_V),
    usualBatch: litres(within("usualBatch", batch)),
    altitude: metres(0),
  });
  const derived = [
    `The file describes no kettle as this book does: “${DERIVED_KETTLE_NAME}” is a typical one for its batch of ${shown(batch)} L.`,
  ];
  const boiling = withBoilOff(start, stated, derived);
  return { equipment: withEfficiency(boiling, stated, recipe, derived), derived };
}

function withBoilOff(
  equipment: Equipment,
  { batch, preBoil, boil, topUp }: StatedRecipe,
  derived: string[],
): Equipment {
  if (preBoil === null || boil === 0) return equipment;
  const { trub, transfer } = equipment.kettle;
  const lossL = trub.value + transfer.value;
  const kgPerH = ((preBoil - (batch - topUp) - lossL) * 60) / boil;
  if (kgPerH <= 0) {
    derived.push(
      `Its ${shown(preBoil)} L before the boil leave nothing to boil off, so the boil-off stays a typical one.`,
    );
    return equipment;
  }
  const boilOff = stated(kilogramsPerHour(within("kettle.boilOff", kgPerH)));
  derived.push(
    `Boil-off ${shown(boilOff.value)} kg/h, from ${shown(preBoil)} L before a boil of ${shown(boil)} min and ${shown(lossL)} L left behind.`,
  );
  return { ...equipment, kettle: { ...equipment.kettle, boilOff } };
}

/**
 * The conversion with which the whole brewhouse comes to the efficiency stated. The one rises nearly in proportion to
 * the other, so a few corrections in proportion find it.
 */
function withEfficiency(
  equipment: Equipment,
  { efficiency }: StatedRecipe,
  recipe: Recipe,
  derived: string[],
): Equipment {
  if (efficiency === null) return equipment;
  const onConversion = (value: number): Equipment => ({
    ...equipment,
    lauter: { ...equipment.lauter, conversion: stated(fraction(Number(value.toFixed(4)))) },
  });
  let conversion = 1;
  let found = efficiencyOn(onConversion(conversion), recipe);
  for (let pass = 0; pass < MOST_PASSES; pass += 1) {
    if (found === null) return equipment;
    if (Math.abs(found - efficiency) < NEAREST_EFFICIENCY) break;
    conversion = within("lauter.conversion", (conversion * efficiency) / found);
    found = efficiencyOn(onConversion(conversion), recipe);
  }
  if (found === null) return equipment;
  derived.push(
    Math.abs(found - efficiency) < 2 * NEAREST_EFFICIENCY
      ? `Conversion ${percentOf(conversion)}, so that the brewhouse comes to the ${percentOf(efficiency)} that the file states.`
      : `The file states an efficiency of ${percentOf(efficiency)}; this kettle comes to ${percentOf(found)} at a conversion of ${percentOf(conversion)}.`,
  );
  return onConversion(conversion);
}

function efficiencyOn(equipment: Equipment, recipe: Recipe): number | null {
  const outcome = brew({ recipe, equipment, ambient: USUAL_DAY });
  return outcome.ok ? outcome.ledger.quantities["fermenter.efficiency"] : null;
}

function within(field: keyof typeof EQUIPMENT_FIELDS, value: number): number {
  const { min, max } = EQUIPMENT_FIELDS[field];
  return Math.min(max, Math.max(min, value));
}

function stated<Q extends number>(value: Q): Figure<Q> {
  return { value, sd: 0.05 * value, from: "stated", count: 0 };
}

const shown = (value: number): string => String(Number(value.toPrecision(3)));
const percentOf = (share: number): string => `${String(Number((100 * share).toFixed(1)))} %`;
