import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import {
  brewWithWater,
  QUANTITY_IDS,
  type Equipment,
  type Figure,
  type QuantityId,
  type Recipe,
} from "@/lib/calc/ledger";
import {
  celsius,
  fraction,
  grams,
  joulesPerKelvin,
  kilogramsPerHour,
  litres,
  litresPerKilogram,
  litresPerMinute,
  metres,
  milliequivalentsPerKilogramPh,
  milligramsPerLitre,
  millionPerMlPlato,
  minutes,
  ph,
  watts,
  wattsPerKelvin,
} from "@/lib/calc/units";
import { garageKettle, malt, paleAle, sameDay } from "../../support/brewing-fixtures";
import { expectPrinted } from "../../support/expect-printed";

const page = readFileSync("docs/worked-examples.md", "utf8");
const section = page.slice(page.indexOf("## one-beer"));
const ROWS = [...section.matchAll(/^\| `([\w.]+)` +\| ([\d.]+) +\|/gm)].map(([, id, printed]) => ({ id, printed }));

const exactly = <Q extends number>(value: Q): Figure<Q> => ({ value, sd: 0, from: "stated", count: 0 });

const equipment: Equipment = {
  ...garageKettle,
  altitude: metres(0),
  kettle: {
    ...garageKettle.kettle,
    heatCapacity: joulesPerKelvin(5000),
    ratedPower: watts(3000),
    heatShare: exactly(fraction(1)),
    lossCoefficient: exactly(wattsPerKelvin(8)),
    boilOff: exactly(kilogramsPerHour(3)),
    trub: exactly(litres(1.5)),
    transfer: exactly(litres(0.5)),
  },
  lauter: {
    ...garageKettle.lauter,
    method: "batch",
    absorption: exactly(litresPerKilogram(0.8)),
    deadSpace: exactly(litres(0)),
    bypass: exactly(fraction(0)),
    conversion: exactly(fraction(0.95)),
  },
  hopAbsorption: exactly(litresPerKilogram(6)),
  chiller: {
    kind: "immersion",
    conductance: exactly(wattsPerKelvin(2000)),
    coolantFlow: litresPerMinute(30),
    coolant: celsius(10),
  },
  fermenter: { ...garageKettle.fermenter, left: exactly(litres(1)) },
};

const recipe: Recipe = {
  ...paleAle,
  mash: [{ celsius: celsius(66), minutes: minutes(60) }],
  stand: null,
  fermentables: [
    {
      ...malt("Pale malt", 5, 0.8, 0.04, 6),
      acidity: {
        distilledWaterPh: ph(5.75),
        buffering: milliequivalentsPerKilogramPh(38),
        lacticFraction: fraction(0),
      },
    },
  ],
  hops: [{ name: "Hop", grams: grams(25), alpha: fraction(0.1), use: "boil", minutes: minutes(60) }],
  water: {
    source: {
      calcium: milligramsPerLitre(40),
      magnesium: milligramsPerLitre(6),
      sodium: milligramsPerLitre(12),
      sulfate: milligramsPerLitre(30),
      chloride: milligramsPerLitre(20),
      bicarbonate: milligramsPerLitre(110),
    },
    salts: { gypsum: grams(4) },
    acid: null,
  },
  yeast: {
    ...paleAle.yeast,
    attenuationLow: fraction(0.75),
    attenuationHigh: fraction(0.79),
    pitch: millionPerMlPlato(0.75),
    celsius: celsius(20),
  },
};

describe("the beer worked by hand (docs/worked-examples.md#one-beer)", () => {
  const outcome = brewWithWater({ recipe, equipment, ambient: sameDay, mashWaterKg: 18, spargeKg: 9 });
  if (!outcome.ok) throw new Error(outcome.reason);
  const { quantities } = outcome.ledger;

  it("goes through every station", () => {
    const stations = new Set(ROWS.map(({ id }) => id?.split(".")[0]));
    expect([...stations]).toEqual(["water", "mash", "lauter", "kettle", "stand", "fermenter", "package"]);
    expect(ROWS.length).toBe(section.split("\n| `").length - 1);
  });

  it.each(ROWS)("$id is $printed", ({ id, printed }) => {
    const known = QUANTITY_IDS.find((each): each is QuantityId => each === id);
    if (known === undefined || printed === undefined) throw new Error(`no quantity ${String(id)}`);
    const value = quantities[known];
    if (value === null) throw new Error(`${known} has no value`);
    expectPrinted(value, printed);
  });
});
