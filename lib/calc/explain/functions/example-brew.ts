import { brew, type Ambient, type Equipment, type Figure, type Ledger, type Recipe } from "../../ledger";
import {
  celsius,
  ebc,
  fraction,
  grams,
  joulesPerKelvin,
  kilograms,
  kilogramsPerHour,
  kilogramsPerLitre,
  litres,
  litresPerKilogram,
  litresPerMinute,
  metres,
  milliequivalentsPerKilogramPh,
  milligramsPerLitre,
  millilitres,
  millionPerMlPlato,
  minutes,
  ph,
  squareMetres,
  volts,
  volumesCo2,
  watts,
  wattsPerKelvin,
} from "../../units";

/** Invented: a blonde ale of two malts and a sugar, hopped three times, on a 30 L basket kettle. */
export const EXAMPLE_RECIPE: Recipe = {
  intoFermenter: litres(19),
  topUp: litres(0),
  thickness: litresPerKilogram(3.2),
  mash: [
    { celsius: celsius(64), minutes: minutes(40) },
    { celsius: celsius(72), minutes: minutes(20) },
  ],
  mashes: 1,
  boil: minutes(60),
  stand: { celsius: celsius(82), minutes: minutes(15) },
  fermentables: [
    {
      name: "Pilsner malt",
      kind: "malt",
      kg: kilograms(4),
      extract: fraction(0.81),
      moisture: fraction(0.045),
      colour: ebc(3.5),
      station: "mash",
      fermentability: null,
      acidity: {
        distilledWaterPh: ph(5.75),
        buffering: milliequivalentsPerKilogramPh(40),
        lacticFraction: fraction(0),
      },
    },
    {
      name: "Caramel malt",
      kind: "malt",
      kg: kilograms(0.25),
      extract: fraction(0.75),
      moisture: fraction(0.05),
      colour: ebc(80),
      station: "mash",
      fermentability: null,
      acidity: null,
    },
    {
      name: "Sucrose",
      kind: "sugar",
      kg: kilograms(0.2),
      extract: fraction(1),
      moisture: fraction(0.0005),
      colour: ebc(0),
      station: "kettle",
      fermentability: fraction(1),
      acidity: null,
    },
  ],
  hops: [
    { name: "Magnum", grams: grams(15), alpha: fraction(0.13), use: "boil", minutes: minutes(60) },
    { name: "Saaz", grams: grams(25), alpha: fraction(0.035), use: "stand", minutes: minutes(15) },
    { name: "Saaz", grams: grams(30), alpha: fraction(0.035), use: "dry", minutes: minutes(0) },
  ],
  water: {
    source: {
      calcium: milligramsPerLitre(50),
      magnesium: milligramsPerLitre(8),
      sodium: milligramsPerLitre(15),
      sulfate: milligramsPerLitre(35),
      chloride: milligramsPerLitre(25),
      bicarbonate: milligramsPerLitre(130),
    },
    salts: { gypsum: grams(3) },
    acid: {
      solution: { acid: "lactic", massFraction: fraction(0.8), density: kilogramsPerLitre(1.19) },
      ml: millilitres(4),
    },
  },
  yeast: {
    name: "Ale yeast",
    attenuationLow: fraction(0.73),
    attenuationHigh: fraction(0.79),
    pitch: millionPerMlPlato(0.75),
    celsius: celsius(19),
  },
  packaging: {
    container: "bottle",
    carbonation: volumesCo2(2.5),
    priming: "sucrose",
    warmest: celsius(20),
    rated: volumesCo2(3),
  },
};

const figure = <Q extends number>(value: Q, sd: number): Figure<Q> => ({ value, sd, from: "stated", count: 0 });

export const EXAMPLE_EQUIPMENT: Equipment = {
  name: "Basket kettle, 30 L",
  kettle: {
    capacity: litres(33),
    headspace: litres(3),
    minimum: litres(8),
    openArea: squareMetres(0.085),
    lid: true,
    heatCapacity: joulesPerKelvin(4000),
    ratedPower: watts(2500),
    ratedVoltage: volts(230),
    supplyVoltage: volts(230),
    heatShare: figure(fraction(0.96), 0.02),
    lossCoefficient: figure(wattsPerKelvin(6), 1),
    boilOff: figure(kilogramsPerHour(2.4), 0.3),
    trub: figure(litres(1.5), 0.4),
    transfer: figure(litres(0.5), 0.2),
  },
  mash: {
    kind: "basket",
    capacity: litres(31),
    grainLimit: kilograms(7),
    falseBottom: true,
    heated: true,
    heatCapacity: joulesPerKelvin(1500),
    lossCoefficient: wattsPerKelvin(6),
    thickest: litresPerKilogram(2.2),
  },
  lauter: {
    method: "pour-over",
    absorption: figure(litresPerKilogram(0.8), 0.08),
    deadSpace: figure(litres(0), 0),
    bypass: figure(fraction(0.25), 0.08),
    conversion: figure(fraction(0.95), 0.02),
    spargeHeater: watts(1800),
  },
  hopAbsorption: figure(litresPerKilogram(6), 1.5),
  chiller: {
    kind: "immersion",
    conductance: figure(wattsPerKelvin(450), 60),
    coolantFlow: litresPerMinute(8),
    coolant: celsius(12),
  },
  fermenter: { capacity: litres(30), headspace: litres(4), left: figure(litres(1), 0.3) },
  usualBatch: litres(19),
  altitude: metres(100),
};

export const EXAMPLE_DAY: Ambient = {
  air: celsius(18),
  humidity: fraction(0.6),
  tapWater: celsius(12),
  grain: celsius(18),
};

/** Recipe, equipment and day, as most of the functions over the whole process take them. */
export const EXAMPLE_BREW = { recipe: EXAMPLE_RECIPE, equipment: EXAMPLE_EQUIPMENT, ambient: EXAMPLE_DAY } as const;

export const EXAMPLE_LEDGER: Ledger = ledgerOf(brew(EXAMPLE_BREW));

function ledgerOf(outcome: ReturnType<typeof brew>): Ledger {
  if (!outcome.ok) throw new Error(`the example gives no wort: ${outcome.reason}`);
  return outcome.ledger;
}
