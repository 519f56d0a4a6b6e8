import { OutOfRangeError } from "@/lib/calc/errors";
import { boilingPoint, boilOffRate, elementPower, heatUp } from "@/lib/calc/heat";
import type { Dimension, Equipment } from "@/lib/calc/ledger";
import { celsius, degreesPlato, kilograms, squareMetres, watts, type Celsius, type Watts } from "@/lib/calc/units";
import { USUAL_DAY } from "@/lib/model/ambient-fields";
import type { Preferences } from "@/lib/model/preferences";
import { formatQuantity } from "../format-quantity";

/** A number that follows from a profile. */
export interface DerivedFigure {
  readonly label: string;
  /** null where reality has no such value; `how` says why. */
  readonly value: number | null;
  readonly dimension: Dimension;
  readonly how: string;
}

/** What the kettle does with its figures, on a usual day; empty where they are outside what the formulas hold for. */
export function derivedFigures(equipment: Equipment, preferences: Preferences): readonly DerivedFigure[] {
  try {
    return derive(equipment, preferences);
  } catch (error) {
    if (error instanceof OutOfRangeError) return [];
    throw error;
  }
}

const MASH_END_C = 67;

function derive(equipment: Equipment, preferences: Preferences): readonly DerivedFigure[] {
  const { kettle, altitude } = equipment;
  const drawnW = elementPower({
    ratedW: kettle.ratedPower,
    ratedV: kettle.ratedVoltage,
    supplyV: kettle.supplyVoltage,
  });
  const heatW = watts(drawnW * kettle.heatShare.value);
  const boilC = boilingPoint({ altitudeM: altitude });
  const held = boilOffRate({
    powerW: heatW,
    lossCoefficient: kettle.lossCoefficient.value,
    boilingC: boilC,
    ambientC: USUAL_DAY.air,
  });
  return [
    {
      label: "Power on this supply",
      value: drawnW,
      dimension: "power",
      how: "Rated power × (supply voltage / rated voltage)².",
    },
    { label: "Water boils at", value: boilC, dimension: "temperature", how: "Standard air pressure at this altitude." },
    heating({ equipment, preferences, heatW, fromC: USUAL_DAY.tapWater, words: "from the tap" }),
    heating({ equipment, preferences, heatW, fromC: celsius(MASH_END_C), words: "from the mash" }),
    {
      label: "Boil-off that the heater can hold, in an hour",
      value: held.ok ? held.kilogramsPerHour : null,
      dimension: "mass",
      how: held.ok
        ? "Power into the liquid less the loss of the walls, over the heat of evaporation."
        : `The walls lose ${Math.ceil(held.missingW)} W more than the heater gives: it does not boil.`,
    },
  ];
}

function heating(a: {
  readonly equipment: Equipment;
  readonly preferences: Preferences;
  readonly heatW: Watts;
  readonly fromC: Celsius;
  readonly words: string;
}): DerivedFigure {
  const { equipment, preferences, heatW, fromC, words } = a;
  const { kettle, usualBatch, altitude } = equipment;
  const outcome = heatUp({
    massKg: kilograms(usualBatch),
    plato: degreesPlato(0),
    vesselHeatCapacity: kettle.heatCapacity,
    powerW: heatW,
    lossCoefficient: kettle.lossCoefficient.value,
    openAreaM2: kettle.lid ? squareMetres(0) : kettle.openArea,
    fromC,
    toC: boilingPoint({ altitudeM: altitude }),
    ambientC: USUAL_DAY.air,
    relativeHumidity: USUAL_DAY.humidity,
  });
  const shown = (value: number): string => {
    const { text, unit } = formatQuantity({ value, dimension: "temperature", preferences, digits: 0 });
    return `${text} ${unit}`;
  };
  return {
    label: `Usual batch to the boil, ${words}`,
    value: outcome.ok ? outcome.seconds / 60 : null,
    dimension: "minutes",
    how: outcome.ok
      ? `From ${shown(fromC)}: energy for liquid and steel over the power, with what is lost on the way.`
      : `It stalls at ${shown(outcome.ceilingC)}, where the losses meet the power.`,
  };
}
