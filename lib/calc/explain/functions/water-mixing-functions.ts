import { fraction, grams, gramsPerLitre, litres } from "../../units";
import { IONS, TREATED_WATER_RANGE, addIons, blendWaters, dilutionFor, ionsFromSalts, saltsFor } from "../../water";
import type { Salt } from "../../water";
import type { FunctionInput, FunctionRecord } from "./function-record";
import { EXAMPLE_WATER, FULLEST_WATER, ionInputs } from "./water-inputs";

const BREW_L = 20;

const SALT_GRAMS = {
  gypsum: grams(4),
  calciumChlorideDihydrate: grams(2),
  epsomSalt: grams(1),
  tableSalt: grams(1),
  bakingSoda: grams(1),
  chalk: grams(1),
  slakedLime: grams(1),
};

const SALT_LABELS: Readonly<Record<Salt, string>> = {
  gypsum: "Gypsum",
  calciumChlorideDihydrate: "Calcium chloride dihydrate",
  epsomSalt: "Epsom salt",
  tableSalt: "Table salt",
  bakingSoda: "Baking soda",
  chalk: "Chalk",
  slakedLime: "Slaked lime",
};

const ADDED = ionsFromSalts({ litres: litres(BREW_L), grams: SALT_GRAMS });

// More of a salt is possible until one of its ions, beside what the others bring, is all that a water may hold.
function saltInput(salt: Salt): FunctionInput {
  const perGram = ionsFromSalts({ litres: litres(BREW_L), grams: { [salt]: grams(1) } });
  const room = IONS.map((ion) => (perGram[ion] > 0 ? (FULLEST_WATER - ADDED[ion]) / perGram[ion] : Infinity));
  const max = SALT_GRAMS[salt] + Math.min(...room);
  return { at: `0.grams.${salt}`, label: SALT_LABELS[salt], unit: "g", min: 0, max };
}

const SALTED_LITRES: FunctionInput = {
  at: "0.litres",
  label: "Water",
  unit: "L",
  min: (BREW_L * Math.max(...IONS.map((ion) => ADDED[ion]))) / FULLEST_WATER,
  max: TREATED_WATER_RANGE.max,
};

const LYE = "Slaked lime is caustic: keep it from eyes and lungs, and wear goggles and gloves to weigh it.";

/** How the functions that mix waters and salts are explained. */
export const WATER_MIXING_FUNCTIONS: readonly FunctionRecord[] = [
  {
    id: "water/ionsFromSalts",
    words: `The ions that salts add to a water, from their formulas. The salts are taken as pure, in the hydrate named and fully dissolved; calcium chloride draws water from the air and is often weaker than its label. Chalk and slaked lime count with all of their base, as bicarbonate. ${LYE}`,
    equation: "mg/L = 1000 × grams × moles of the ion × molar mass of the ion / (molar mass of the salt × litres)",
    inputs: [
      SALTED_LITRES,
      saltInput("gypsum"),
      saltInput("calciumChlorideDihydrate"),
      saltInput("epsomSalt"),
      saltInput("tableSalt"),
      saltInput("bakingSoda"),
      saltInput("chalk"),
      saltInput("slakedLime"),
    ],
    gives: "concentrations added, mg/L",
    sources: ["iupac-2021"],
    validRange: "0.001 to 100 000 L, up to 10 000 mg/L of each ion.",
    call: ionsFromSalts,
    example: [{ litres: BREW_L, grams: SALT_GRAMS }],
  },
  {
    id: "water/addIons",
    words:
      "The ions of a water after salts were dissolved in it, ion by ion. Nothing settles out: very hard water with much bicarbonate drops chalk when it is boiled, which is left out.",
    equation: "ion of the treated water = ion of the source + ion of the salts",
    inputs: [
      ...ionInputs("0.source", " of the source").map((input, i) => ({
        ...input,
        max: FULLEST_WATER - ADDED[IONS[i] ?? "calcium"],
      })),
      ...ionInputs("0.salts", " of the salts").map((input, i) => ({
        ...input,
        max: FULLEST_WATER - EXAMPLE_WATER[IONS[i] ?? "calcium"],
      })),
    ],
    gives: "concentrations, mg/L",
    sources: ["mass-balance"],
    validRange: "0 to 10 000 mg/L of each ion, before and after.",
    call: addIons,
    example: [{ source: EXAMPLE_WATER, salts: ADDED }],
  },
  {
    id: "water/blendWaters",
    words:
      "The ions of several waters mixed, each weighted by its volume. Demineralised water counts as a water without ions. The pH does not mix in this way: give phOfWater the blend.",
    equation: "ion = sum of litres × ion of each water / sum of litres",
    inputs: [
      { at: "0.0.litres", label: "First water", ...litres.range },
      ...ionInputs("0.0.ions", " of the first water"),
      { at: "0.1.litres", label: "Second water", ...litres.range },
      ...ionInputs("0.1.ions", " of the second water"),
    ],
    gives: "concentrations of the blend, mg/L",
    sources: ["mass-balance"],
    validRange: "Any number of waters, at least one with a volume above zero.",
    call: blendWaters,
    example: [
      [
        { litres: 12, ions: EXAMPLE_WATER },
        { litres: 8, ions: { ...EXAMPLE_WATER, calcium: 10, bicarbonate: 20 } },
      ],
    ],
  },
  {
    id: "water/dilutionFor",
    words:
      "The least share of demineralised water that brings every ion of a water under a target, and the ion that asks for it. Salts can only add, so less leaves an ion too high. It does not ask whether salts can make up the rest: saltsFor does.",
    equation: "share = largest of 1 − target / source over the ions that are above the target",
    inputs: [...ionInputs("0.source", " of the source"), ...ionInputs("0.target", " of the target")],
    gives: "share of demineralised water, and the ion that decides it",
    sources: ["mass-balance"],
    validRange: "0 to 10 000 mg/L of each ion.",
    call: dilutionFor,
    example: [{ source: EXAMPLE_WATER, target: { ...EXAMPLE_WATER, calcium: 48 } }],
  },
  {
    id: "water/saltsFor",
    words: `The salts, and where it must be the demineralised water, that bring a water nearest to a target. Misfits count by charge, so that 20 mg/L of calcium weigh as much as 48 of sulfate; no salt is negative or above its limit. A target whose own charges do not cancel cannot be met by any salts, and what is left is shown ion by ion. Chalk is used only when asked for, because it hardly dissolves. ${LYE}`,
    equation:
      "least sum over the ions of ((source × (1 − share) + salts − target) × charge / molar mass)², 0 ≤ salt ≤ limit, 0 ≤ share ≤ limit",
    inputs: [
      { at: "0.litres", label: "Water", ...TREATED_WATER_RANGE },
      { at: "0.mostDemineralised", label: "Largest share of demineralised water", ...fraction.range },
      { at: "0.most.gypsum", label: "Most gypsum", ...gramsPerLitre.range },
      ...ionInputs("0.source", " of the source"),
      ...ionInputs("0.target", " of the target"),
    ],
    gives:
      "grams of each salt, share of demineralised water, ions reached, what each is off, and whether the target is met",
    sources: ["lawson-hanson-1974", "iupac-2021", "troester-2009"],
    validRange: "0.001 to 100 000 L, 0 to 10 000 mg/L of each ion; met means within 1 mg/L.",
    call: saltsFor,
    // Half of the source, and 3 g of gypsum.
    example: [
      {
        source: EXAMPLE_WATER,
        target: { calcium: 74.9, magnesium: 6, sodium: 12.5, sulfate: 118.7, chloride: 25, bicarbonate: 90 },
        litres: BREW_L,
        most: { gypsum: 2 },
        mostDemineralised: 1,
      },
    ],
  },
];
