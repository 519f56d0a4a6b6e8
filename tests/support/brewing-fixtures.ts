import type { Ambient, Equipment, Figure, Recipe } from "@/lib/calc/ledger";
import {
  celsius,
  ebc,
  fraction,
  grams,
  joulesPerKelvin,
  kilograms,
  kilogramsPerHour,
  litres,
  litresPerKilogram,
  litresPerMinute,
  metres,
  milligramsPerLitre,
  millionPerMlPlato,
  minutes,
  squareMetres,
  volts,
  volumesCo2,
  watts,
  wattsPerKelvin,
} from "@/lib/calc/units";

/** Invented for the tests; believable figures of a 35 L electric basket kettle. */
const figure = <Q extends number>(value: Q, sd: number): Figure<Q> => ({ value, sd, from: "stated", count: 0 });

export const garageKettle: Equipment = {
  name: "Garage kettle",
  kettle: {
    capacity: litres(35),
    headspace: litres(3),
    minimum: litres(8),
    openArea: squareMetres(0.09),
    lid: true,
    heatCapacity: joulesPerKelvin(4000),
    ratedPower: watts(2500),
    ratedVoltage: volts(230),
    supplyVoltage: volts(230),
    heatShare: figure(fraction(0.97), 0.02),
    lossCoefficient: figure(wattsPerKelvin(6), 1),
    boilOff: figure(kilogramsPerHour(2.4), 0.3),
    trub: figure(litres(1.5), 0.4),
    transfer: figure(litres(0.6), 0.2),
  },
  mash: {
    kind: "basket",
    capacity: litres(33),
    grainLimit: kilograms(8),
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
    spargeHeater: null,
  },
  hopAbsorption: figure(litresPerKilogram(6), 1.5),
  chiller: {
    kind: "immersion",
    conductance: figure(wattsPerKelvin(450), 60),
    coolantFlow: litresPerMinute(8),
    coolant: celsius(12),
  },
  fermenter: { capacity: litres(30), headspace: litres(4), left: figure(litres(1), 0.3) },
  usualBatch: litres(21),
  altitude: metres(50),
};

export const sameDay: Ambient = {
  air: celsius(18),
  humidity: fraction(0.6),
  tapWater: celsius(12),
  grain: celsius(18),
};

const softWater = {
  calcium: milligramsPerLitre(40),
  magnesium: milligramsPerLitre(6),
  sodium: milligramsPerLitre(12),
  sulfate: milligramsPerLitre(30),
  chloride: milligramsPerLitre(20),
  bicarbonate: milligramsPerLitre(110),
};

/** Invented for the tests: a pale ale with a dark malt, three kettle additions, a stand and a dry hop. */
export const paleAle: Recipe = {
  intoFermenter: litres(21),
  topUp: litres(0),
  thickness: litresPerKilogram(3),
  mash: [
    { celsius: celsius(66), minutes: minutes(60) },
    { celsius: celsius(76), minutes: minutes(10) },
  ],
  mashes: 1,
  boil: minutes(60),
  stand: { celsius: celsius(80), minutes: minutes(20) },
  fermentables: [
    malt("Pale ale malt", 4.4, 0.81, 0.035, 6),
    malt("Munich malt light", 0.5, 0.8, 0.042, 14.5),
    malt("Caramel malt 60L", 0.25, 0.76, 0.043, 158.6),
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
    { name: "Magnum", grams: grams(18), alpha: fraction(0.13), use: "boil", minutes: minutes(60) },
    { name: "Cascade", grams: grams(20), alpha: fraction(0.065), use: "boil", minutes: minutes(10) },
    { name: "Cascade", grams: grams(30), alpha: fraction(0.065), use: "stand", minutes: minutes(20) },
    { name: "Cascade", grams: grams(50), alpha: fraction(0.065), use: "dry", minutes: minutes(0) },
  ],
  water: { source: softWater, salts: { gypsum: grams(4), calciumChlorideDihydrate: grams(2) }, acid: null },
  yeast: {
    name: "American ale, clean",
    attenuationLow: fraction(0.73),
    attenuationHigh: fraction(0.8),
    pitch: millionPerMlPlato(0.75),
    celsius: celsius(19),
  },
  packaging: {
    container: "bottle",
    carbonation: volumesCo2(2.4),
    priming: "sucrose",
    warmest: celsius(20),
    rated: volumesCo2(3),
  },
};

export function malt(
  name: string,
  kg: number,
  extract: number,
  moisture: number,
  colour: number,
): Recipe["fermentables"][number] {
  return {
    name,
    kind: "malt",
    kg: kilograms(kg),
    extract: fraction(extract),
    moisture: fraction(moisture),
    colour: ebc(colour),
    station: "mash",
    fermentability: null,
    acidity: null,
  };
}
