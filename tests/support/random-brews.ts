import fc from "fast-check";
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
  millilitres,
  millionPerMlPlato,
  minutes,
  squareMetres,
  volts,
  volumesCo2,
  watts,
  wattsPerKelvin,
  type QuantityMaker,
} from "@/lib/calc/units";
import { ACID_SOLUTIONS } from "@/lib/calc/water";

/** How many random brews a property is tried on; a long run asks for more. */
export const RANDOM_BREWS = Number(process.env.GYLEBOOK_RANDOM_BREWS ?? 1000);

const inside = <U extends string>(
  make: QuantityMaker<U>,
  min: number,
  max: number,
): fc.Arbitrary<ReturnType<QuantityMaker<U>>> => fc.double({ min, max, noNaN: true }).map(make);

/** Nobody times a rest to the fraction of a minute. */
const wholeMinutes = (most: number): fc.Arbitrary<ReturnType<typeof minutes>> =>
  fc.integer({ min: 0, max: most }).map(minutes);

const figure = <Q extends number>(value: fc.Arbitrary<Q>, relativeSd: number): fc.Arbitrary<Figure<Q>> =>
  value.map((known) => ({ value: known, sd: known * relativeSd, from: "stated", count: 0 }));

const mashed: fc.Arbitrary<Recipe["fermentables"][number]> = fc.record({
  name: fc.constant("Grain"),
  kind: fc.constantFrom("malt", "adjunct"),
  kg: fc.oneof(
    { arbitrary: inside(kilograms, 0.001, 9), weight: 9 },
    { arbitrary: fc.constant(kilograms(0)), weight: 1 },
  ),
  extract: inside(fraction, 0.5, 0.9),
  moisture: inside(fraction, 0, 0.12),
  colour: fc.oneof(inside(ebc, 2, 20), inside(ebc, 20, 1400)),
  station: fc.constant("mash"),
  fermentability: fc.constant(null),
  acidity: fc.constant(null),
});

const added: fc.Arbitrary<Recipe["fermentables"][number]> = fc.record({
  name: fc.constant("Sugar"),
  kind: fc.constantFrom("sugar", "malt extract"),
  kg: inside(kilograms, 0.001, 4),
  extract: inside(fraction, 0.8, 1),
  moisture: inside(fraction, 0, 0.3),
  colour: inside(ebc, 0, 200),
  station: fc.constant("kettle"),
  fermentability: fc.option(inside(fraction, 0, 1)),
  acidity: fc.constant(null),
});

const hop: fc.Arbitrary<Recipe["hops"][number]> = fc.record({
  name: fc.constant("Hop"),
  grams: inside(grams, 0.1, 200),
  alpha: fc.oneof(inside(fraction, 0.001, 0.2), fc.constant(fraction(0))),
  use: fc.constantFrom("boil", "stand", "dry"),
  minutes: wholeMinutes(90),
});

const ion = inside(milligramsPerLitre, 0, 300);

export const recipes: fc.Arbitrary<Recipe> = fc.record({
  intoFermenter: inside(litres, 2, 60),
  topUp: fc.oneof(fc.constant(litres(0)), inside(litres, 0, 1.9)),
  thickness: fc.option(inside(litresPerKilogram, 1.5, 6)),
  mash: fc.array(fc.record({ celsius: inside(celsius, 35, 78), minutes: wholeMinutes(90) }), {
    minLength: 0,
    maxLength: 4,
  }),
  mashes: fc.constantFrom(1, 1, 1, 2),
  boil: wholeMinutes(150),
  stand: fc.option(fc.record({ celsius: inside(celsius, 50, 100), minutes: wholeMinutes(60) })),
  fermentables: fc
    .tuple(fc.array(mashed, { maxLength: 5 }), fc.array(added, { maxLength: 2 }))
    .map(([grain, sugar]) => [...grain, ...sugar]),
  hops: fc.array(hop, { maxLength: 5 }),
  water: fc.record({
    source: fc.record({
      calcium: ion,
      magnesium: ion,
      sodium: ion,
      sulfate: ion,
      chloride: ion,
      bicarbonate: ion,
    }),
    salts: fc.record({ gypsum: inside(grams, 0, 20), chalk: inside(grams, 0, 5) }, { requiredKeys: [] }),
    acid: fc.option(fc.record({ solution: fc.constant(ACID_SOLUTIONS.lactic80), ml: inside(millilitres, 0, 30) })),
  }),
  yeast: fc.record({
    name: fc.constant("Yeast"),
    attenuationLow: inside(fraction, 0.6, 0.75),
    attenuationHigh: inside(fraction, 0.75, 0.95),
    pitch: inside(millionPerMlPlato, 0.3, 2),
    celsius: inside(celsius, 8, 30),
  }),
  packaging: fc.record({
    container: fc.constantFrom("bottle", "keg"),
    carbonation: inside(volumesCo2, 1.2, 4),
    priming: fc.constantFrom("sucrose", "dextroseMonohydrate", "dextroseAnhydrous", null),
    warmest: inside(celsius, 2, 25),
    rated: inside(volumesCo2, 2, 6),
  }),
});

export const kettles: fc.Arbitrary<Equipment> = fc.record({
  name: fc.constant("Kettle"),
  kettle: fc.record({
    capacity: inside(litres, 8, 90),
    headspace: inside(litres, 0, 8),
    minimum: inside(litres, 0, 12),
    openArea: inside(squareMetres, 0.03, 0.25),
    lid: fc.boolean(),
    heatCapacity: inside(joulesPerKelvin, 500, 12000),
    ratedPower: inside(watts, 300, 6000),
    ratedVoltage: fc.constantFrom(volts(230), volts(240)),
    supplyVoltage: inside(volts, 100, 245),
    heatShare: figure(inside(fraction, 0.5, 1), 0.02),
    lossCoefficient: figure(inside(wattsPerKelvin, 0, 15), 0.15),
    boilOff: figure(inside(kilogramsPerHour, 0, 6), 0.1),
    trub: figure(inside(litres, 0, 4), 0.3),
    transfer: figure(inside(litres, 0, 2), 0.3),
  }),
  mash: fc.record({
    kind: fc.constantFrom("basket", "bag", "tun"),
    capacity: inside(litres, 8, 90),
    grainLimit: fc.option(inside(kilograms, 1, 15)),
    falseBottom: fc.boolean(),
    heated: fc.boolean(),
    heatCapacity: inside(joulesPerKelvin, 0, 15000),
    lossCoefficient: inside(wattsPerKelvin, 0, 12),
    thickest: inside(litresPerKilogram, 1.5, 2.8),
  }),
  lauter: fc.record({
    method: fc.constantFrom("none", "batch", "continuous", "pour-over"),
    absorption: figure(inside(litresPerKilogram, 0.3, 1.3), 0.1),
    deadSpace: figure(inside(litres, 0, 3), 0.3),
    bypass: figure(inside(fraction, 0, 0.6), 0.3),
    conversion: figure(inside(fraction, 0.7, 1), 0.02),
    spargeHeater: fc.constant(null),
  }),
  hopAbsorption: figure(inside(litresPerKilogram, 0, 10), 0.2),
  chiller: fc.record({
    kind: fc.constantFrom("immersion", "counterflow", "ice bath", "none"),
    conductance: figure(inside(wattsPerKelvin, 20, 1200), 0.1),
    coolantFlow: inside(litresPerMinute, 1, 15),
    coolant: inside(celsius, 2, 28),
  }),
  fermenter: fc.record({
    capacity: inside(litres, 3, 90),
    headspace: inside(litres, 0, 8),
    left: figure(inside(litres, 0, 2), 0.3),
  }),
  usualBatch: inside(litres, 3, 60),
  altitude: inside(metres, -100, 3500),
});

export const days: fc.Arbitrary<Ambient> = fc.record({
  air: inside(celsius, -5, 35),
  humidity: inside(fraction, 0.1, 1),
  tapWater: inside(celsius, 2, 28),
  grain: inside(celsius, -5, 35),
});
