import { newIngredient, type NewIngredient } from "@/lib/model/ingredient";
import { newLot, type NewLot } from "@/lib/model/ingredient-lot";

/** An ingredient of the demo club, by the person who adds it. The maltings, gardens and figures are invented. */
export interface DemoIngredient {
  readonly by: string;
  readonly ingredient: NewIngredient;
}

/** A lot on the shelf of the club, or of the person who adds it. */
export interface DemoLot {
  readonly by: string;
  readonly lot: NewLot;
}

const INVENTED = "Invented for the demo.";

export const DEMO_INGREDIENTS: readonly DemoIngredient[] = [
  {
    by: "organiser",
    ingredient: newIngredient.parse({
      name: "Hollowmere floor malt (invented)",
      notes: `${INVENTED} A pale malt turned by hand, a little moister than bought ones.`,
      what: {
        kind: "fermentable",
        figures: {
          kind: "malt",
          station: "mash",
          extract: 0.8,
          moisture: 0.052,
          colour: 5.5,
          fermentability: null,
          acidity: { distilledWaterPh: 5.72, buffering: 38, lacticFraction: 0 },
        },
      },
    }),
  },
  {
    by: "tamsin",
    ingredient: newIngredient.parse({
      name: "Greywick hedge hop (invented)",
      notes: `${INVENTED} From one garden; nobody knows the variety, and the alpha acids were measured once.`,
      what: { kind: "hop", figures: { alphaLow: 0.028, alphaHigh: 0.046, lossIn6Months: 0.42 } },
    }),
  },
  {
    by: "bero",
    ingredient: newIngredient.parse({
      name: "Club house ale yeast (invented)",
      notes: `${INVENTED} Kept on slopes, grown up for each shared brew.`,
      what: {
        kind: "yeast",
        figures: { attenuationLow: 0.74, attenuationHigh: 0.79, celsiusLow: 17, celsiusHigh: 21 },
      },
    }),
  },
  {
    by: "wilma",
    ingredient: newIngredient.parse({
      name: "Mill house honey (invented)",
      notes: INVENTED,
      what: {
        kind: "fermentable",
        figures: {
          kind: "sugar",
          station: "kettle",
          extract: 1,
          moisture: 0.18,
          colour: 6,
          fermentability: 0.95,
          acidity: null,
        },
      },
    }),
  },
];

const DAY_MS = 86_400_000;

/** The demo's lots in the days around today, so that some are fresh and one has kept too long. */
export function demoLots(now: Date): readonly DemoLot[] {
  const day = (offset: number): string => new Date(now.getTime() + offset * DAY_MS).toISOString().slice(0, 10);
  const lot = (by: string, rest: Omit<NewLot, "what" | "notes"> & { readonly what: object }): DemoLot => ({
    by,
    lot: newLot.parse({ notes: INVENTED, ...rest }),
  });
  const euro = (minor: number, quantity: number) => ({ minor, currency: "EUR", for: quantity });
  return [
    ...MALT_LOTS.map(([by, owner, name, label, extract, moisture, colour, onHand, cents, keeps]) =>
      lot(by, {
        ...{ owner, name, label, onHand, bestBefore: day(keeps), price: euro(cents, 25) },
        what: { kind: "fermentable", figures: { extract, moisture, colour } },
      }),
    ),
    ...HOP_LOTS.map(([by, owner, name, label, alpha, age, storedAt, packaging, onHand, keeps]) =>
      lot(by, {
        ...{ owner, name, label, onHand, bestBefore: day(keeps), price: euro(520, 100) },
        what: { kind: "hop", figures: { alpha, analysedOn: day(-age), storedAt, packaging } },
      }),
    ),
    lot("bero", {
      ...{ owner: "club", name: "American ale, clean", label: "Six packets (invented)", onHand: 6 },
      ...{ bestBefore: day(300), price: euro(390, 1) },
      what: { kind: "yeast", figures: { form: "dry", cells: 110, packedOn: day(-200), storedAt: 4 } },
    }),
    lot("organiser", {
      ...{
        owner: "club",
        name: "Gypsum",
        label: "Jar on the shelf (invented)",
        onHand: 480,
        bestBefore: null,
        price: null,
      },
      what: { kind: "salt", figures: {} },
    }),
    lot("organiser", {
      ...{ owner: "club", name: "Lactic acid 80 %", label: "Bottle of spring (invented)", onHand: 420 },
      ...{ bestBefore: day(500), price: null },
      what: { kind: "acid", figures: { massFraction: 0.8, density: 1.19 } },
    }),
  ];
}

type MaltLot = readonly [
  by: string,
  owner: "club" | "me",
  name: string,
  label: string,
  extract: number,
  moisture: number,
  colour: number,
  kg: number,
  centsFor25Kg: number,
  keepsDays: number,
];

const MALT_LOTS: readonly MaltLot[] = [
  ["organiser", "club", "Pale ale malt", "Sack 31, harvest before last (invented)", 0.806, 0.041, 5.6, 61.4, 3450, 240],
  ["organiser", "club", "Pilsner malt", "Sack 8 (invented)", 0.818, 0.044, 3.2, 22.75, 3290, 300],
  ["organiser", "me", "Pale ale malt", "Half a sack of mine (invented)", 0.8, 0.048, 6.4, 11.2, 3600, 120],
  ["member", "me", "Pale ale malt", "Bucket under the stairs (invented)", 0.795, 0.058, 6.1, 3.6, 3500, 60],
  ["member", "me", "Brown malt", "Opened bag (invented)", 0.725, 0.034, 148, 0.3, 4800, -20],
];

type HopLot = readonly [
  by: string,
  owner: "club" | "me",
  name: string,
  label: string,
  alpha: number,
  ageDays: number,
  storedAt: number,
  packaging: "loose" | "sealed bag" | "vacuum or inert gas",
  grams: number,
  keepsDays: number,
];

const HOP_LOTS: readonly HopLot[] = [
  ["organiser", "club", "Cascade", "Harvest of last year (invented)", 0.058, 400, -18, "vacuum or inert gas", 840, 500],
  ["organiser", "club", "Magnum", "This harvest (invented)", 0.128, 60, -18, "vacuum or inert gas", 500, 900],
  ["member", "me", "Cascade", "Opened packet (invented)", 0.061, 430, 4, "sealed bag", 75, 30],
  ["member", "me", "Northdown", "From the freezer (invented)", 0.076, 220, -18, "sealed bag", 120, 400],
  ["tamsin", "me", "Greywick hedge hop (invented)", "Own picking (invented)", 0.037, 75, -18, "sealed bag", 310, 600],
];
