import { MEASURABLE, MEASURABLE_QUANTITIES, type ComparedReading, type MeasurableQuantity } from "@/lib/calc/compare";
import {
  brew,
  brewWithWater,
  FIGURES,
  type Ambient,
  type Equipment,
  type Ledger,
  type Recipe,
} from "@/lib/calc/ledger";
import { normalCdf } from "@/lib/calc/statistics";
import { celsius, fraction, grams, kilograms, litres, metres, minutes, volts, watts } from "@/lib/calc/units";
import { typicalEquipment, type EquipmentKind } from "@/lib/model/typical-equipment";
import { paleAle, sameDay } from "./brewing-fixtures";
import { seededNoise } from "./seeded-noise";

/** Chance that is the same for the same seed. */
export interface Chance {
  readonly normal: () => number;
  readonly uniform: () => number;
}

export function chance(seed: number): Chance {
  const normal = seededNoise(seed);
  return { normal, uniform: () => normalCdf(normal()) };
}

/** A kettle with its secret: what it really does, and how much its brews differ. */
export interface SecretKettle {
  readonly typical: Equipment;
  readonly truth: Equipment;
  /** Times the scatter that is taken for usual. */
  readonly unsteady: number;
}

/** Invented: what differs from brew to brew on one kettle, as share of the figure and at least. */
const SCATTER: Readonly<Record<string, readonly [share: number, least: number]>> = {
  "kettle.lossCoefficient": [0.1, 0],
  "kettle.boilOff": [0.05, 0],
  "kettle.trub": [0.15, 0.1],
  "kettle.transfer": [0.1, 0.02],
  "lauter.absorption": [0.05, 0],
  "lauter.deadSpace": [0.05, 0.02],
  "lauter.bypass": [0, 0.03],
  "lauter.conversion": [0, 0.01],
  hopAbsorption: [0.15, 0],
  "fermenter.left": [0.15, 0.1],
};

/** Moves every figure by so many of its uncertainties, within what it can be. */
function moved(equipment: Equipment, by: (name: string, value: number, sd: number) => number): Equipment {
  return FIGURES.reduce((made, { name, of, withFigure, range }) => {
    const figure = of(made);
    if (figure.sd === 0) return made;
    const value = Math.min(range.max, Math.max(range.min, figure.value + by(name, figure.value, figure.sd)));
    return withFigure(made, { ...figure, value });
  }, equipment);
}

/** What the kettles of one kind have in common, in typical uncertainties: nobody knows it. */
type KindSecret = ReadonlyMap<string, number>;

export function kindSecret({ normal }: Chance): KindSecret {
  return new Map(FIGURES.map(({ name }) => [name, 0.7 * normal()]));
}

/** A kettle of a kind, of some size. Its own deviation is evenly spread, which is not what the library supposes. */
export function secretKettle(kind: EquipmentKind, secret: KindSecret, { uniform }: Chance): SecretKettle {
  const capacity = 28 + 30 * uniform();
  const typical = typicalEquipment({
    name: "Simulated",
    kind,
    capacity: litres(capacity),
    power: watts(60 * capacity + 400),
    voltage: volts(230),
    usualBatch: litres(0.62 * capacity),
    altitude: metres(100),
  });
  const own = new Map<string, number>(FIGURES.map(({ name }) => [name, 1.2 * (2 * uniform() - 1)]));
  const truth = moved(typical, (name, _, sd) => sd * ((secret.get(name) ?? 0) + (own.get(name) ?? 0)));
  return { typical, truth, unsteady: 0.6 + 0.8 * uniform() };
}

/** What somebody feels like brewing: a pale ale, weaker or stronger, a little more or less of it, hopped more or less. */
export function wantedRecipe(kettle: SecretKettle, { uniform }: Chance): Recipe {
  const batch = kettle.typical.usualBatch * (0.85 + 0.2 * uniform());
  const strength = 0.75 + 0.5 * uniform();
  const scale = batch / paleAle.intoFermenter;
  const hopping = scale * (0.6 + 1.4 * uniform());
  return {
    ...paleAle,
    intoFermenter: litres(batch),
    boil: minutes(uniform() < 0.7 ? 60 : 90),
    fermentables: paleAle.fermentables.map((row) => ({ ...row, kg: kilograms(row.kg * scale * strength) })),
    hops: paleAle.hops.map((hop) => ({ ...hop, grams: grams(hop.grams * hopping) })),
  };
}

/** What is wrong with a reading, so that tests can say who was found out. */
export interface TakenReading extends ComparedReading {
  readonly gross: boolean;
}

export interface SimulatedBrew {
  /** What really happened; nobody sees it. */
  readonly happened: Ledger;
  readonly readings: readonly TakenReading[];
}

const GROSS_SHARE = 0.03;
const READ_SHARE = 0.85;
const READ: readonly MeasurableQuantity[] = MEASURABLE_QUANTITIES.filter((id) => id !== "water.strike");

/**
 * Brews for real: the kettle with today's figures, malt of today's sack, water as it was poured, mains as it comes, a boil by
 * a kitchen clock, air of today. null where nothing comes of it.
 */
export function brewForReal(
  kettle: SecretKettle,
  plan: { readonly recipe: Recipe; readonly ledger: Ledger },
  random: Chance,
): SimulatedBrew | null {
  const { normal } = random;
  const figures = moved(kettle.truth, (name, value) => {
    const [share, least] = SCATTER[name] ?? [0, 0];
    return kettle.unsteady * Math.max(least, share * value) * normal();
  });
  const equipment: Equipment = {
    ...figures,
    kettle: { ...figures.kettle, supplyVoltage: volts(figures.kettle.supplyVoltage * (1 + 0.0075 * normal())) },
  };
  const ambient: Ambient = { ...sameDay, air: celsius(sameDay.air + 2 * normal()) };
  const mashL = plan.ledger.quantities["water.mash"] ?? 0;
  const spargeL = plan.ledger.quantities["water.sparge"] ?? 0;
  const outcome = brewWithWater({
    recipe: recipeOfToday(plan.recipe, random),
    equipment,
    ambient,
    mashWaterKg: poured(mashL, normal),
    spargeKg: poured(spargeL, normal),
  });
  if (!outcome.ok) return null;
  return { happened: outcome.ledger, readings: READ.flatMap((id) => reading(outcome.ledger, id, random)) };
}

/** By a jug with marks. */
const poured = (planned: number, normal: () => number): number =>
  planned === 0 ? 0 : Math.max(0, 0.9982 * (planned + Math.max(0.2, 0.01 * planned) * normal()));

function recipeOfToday(recipe: Recipe, { normal }: Chance): Recipe {
  const delivery = 0.007 * normal();
  const attenuation = ((recipe.yeast.attenuationHigh - recipe.yeast.attenuationLow) / 4) * normal();
  return {
    ...recipe,
    boil: minutes(recipe.boil + 0.8 * normal()),
    fermentables: recipe.fermentables.map((row) =>
      row.kind === "sugar"
        ? row
        : { ...row, extract: fraction(Math.min(1, row.extract * (1 + delivery + 0.007 * normal()))) },
    ),
    yeast: {
      ...recipe.yeast,
      attenuationLow: fraction(recipe.yeast.attenuationLow + attenuation),
      attenuationHigh: fraction(recipe.yeast.attenuationHigh + attenuation),
    },
  };
}

/** With the error of the instrument, read off its scale, and now and then read quite wrong. */
function reading(ledger: Ledger, quantity: MeasurableQuantity, { normal, uniform }: Chance): TakenReading[] {
  const value = ledger.quantities[quantity];
  if (value === null || uniform() > READ_SHARE) return [];
  const { typicalSd: sd, kind } = MEASURABLE[quantity];
  const gross = uniform() < GROSS_SHARE;
  const blunder = gross ? (normal() < 0 ? -1 : 1) * sd * (4 + 8 * uniform()) : 0;
  const division = kind === "duration" ? 1 : 0.1;
  const read = Math.max(0, division * Math.round((value + sd * normal() + blunder) / division));
  return [{ quantity, value: read, sd, gross }];
}

/** The plan on a profile; null where nothing comes of it. */
export function planOn(equipment: Equipment, recipe: Recipe): Ledger | null {
  const outcome = brew({ recipe, equipment, ambient: sameDay });
  return outcome.ok ? outcome.ledger : null;
}
