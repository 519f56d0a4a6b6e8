import {
  brew,
  brewWithWater,
  CORRELATION_RANGE,
  costOf,
  differenceIntervals,
  DRAWS_RANGE,
  intervals,
  mashCurveOf,
  PRICE_RANGE,
  sampledIntervals,
  stationAccounts,
} from "../../ledger";
import { PHASE_RANGE } from "../../ledger/mash-curve-of";
import { QUASI_RANDOM_RANGE } from "../../numerics";
import { kilograms } from "../../units";
import { ambientInputs, BREW_INPUTS, recipeInputs } from "./brew-inputs";
import { EXAMPLE_BREW, EXAMPLE_DAY, EXAMPLE_LEDGER, EXAMPLE_RECIPE } from "./example-brew";
import { fieldInput } from "./field-input";
import type { FunctionInput, FunctionRecord } from "./function-record";

const CORRELATIONS = [{ one: "kettle.boilOff", other: "kettle.lossCoefficient", coefficient: -0.3 }];

const correlation: FunctionInput = {
  at: "0.correlations.0.coefficient",
  label: "Correlation of two figures",
  ...CORRELATION_RANGE,
};

const PRICES = {
  fermentables: [1.6, 2.4, 1.2],
  hops: [40, 55, null],
  yeast: 4,
  kilowattHour: 0.3,
  cubicMetreOfWater: 4,
};

const price = (at: string, label: string): FunctionInput => ({ at: `0.prices.${at}`, label, ...PRICE_RANGE });

const phase = (field: "minutes" | "fromC" | "toC", label: string): FunctionInput => ({
  at: `0.phases.0.${field}`,
  label,
  ...(field === "minutes" ? PHASE_RANGE.minutes : PHASE_RANGE.celsius),
});

const WORTS = "Worts up to 35 °P at the end of the boil, 300 °C at most as a strike temperature that is asked for.";

/** How the functions of the ledger are explained. */
export const LEDGER_FUNCTIONS: readonly FunctionRecord[] = [
  {
    id: "ledger/brew",
    words:
      "Everything that one recipe becomes on one kettle, from the water to the package: masses, volumes, strengths, times, energy, bitterness, colour and pH at each station, balanced to rounding. Water is found so that the fermenter receives the volume wanted, and efficiency is a result of grist, absorption, sparge and losses, not a figure that is typed in. Flavour is outside it. Hot liquor scalds, and closed vessels of beer hold pressure: the limits in it are the kettle's, not a licence.",
    equation:
      "for mass and for extract at each station: in = lost + out; water by secant until the fermenter holds the volume wanted",
    inputs: BREW_INPUTS,
    gives: "the ledger: balances, quantities, rows, phases and limits; or why no wort comes of it, with the figure",
    sources: ["mass-balance", "energy-balance"],
    validRange: WORTS,
    call: brew,
    example: [EXAMPLE_BREW],
  },
  {
    id: "ledger/brewWithWater",
    words:
      "The same ledger for water that has been measured out already: what the kettle then makes of it. The volume in the fermenter is a result here, which is what a brewer meets on the day when a figure of the kettle is not as thought.",
    equation: "as brew, with mash and sparge water given",
    inputs: [
      ...BREW_INPUTS,
      fieldInput("mashWaterKg", "Mash water", kilograms.range),
      fieldInput("spargeKg", "Sparge water", kilograms.range),
    ],
    gives: "the ledger; or why no wort comes of it, with the figure",
    sources: ["mass-balance", "energy-balance"],
    validRange: WORTS,
    call: brewWithWater,
    example: [{ ...EXAMPLE_BREW, mashWaterKg: 13.6, spargeKg: 13.5 }],
  },
  {
    id: "ledger/intervals",
    words:
      "How far each predicted number may be off, as an interval that holds it four times out of five. Every figure of the kettle and every property of the raw materials is moved by its standard uncertainty, the brew is computed anew, and the effects add up as squares; numbers that hang on one figure move together. It takes effects for straight lines; what is weighed, poured or set has no interval.",
    equation: "u² = Σ (∂y/∂x · u(x))² + 2 Σ r · (∂y/∂x₁ · u(x₁)) (∂y/∂x₂ · u(x₂)); interval = y ± 1.2816 u",
    inputs: [...BREW_INPUTS, correlation],
    gives: "low and high end for each predicted quantity, in its unit; nothing where nothing can be brewed",
    sources: ["jcgm-100-2008"],
    validRange: "Effects that are near straight lines within one standard uncertainty.",
    call: intervals,
    example: [{ ...EXAMPLE_BREW, correlations: CORRELATIONS }],
  },
  {
    id: "ledger/differenceIntervals",
    words:
      "How far the difference between two brews may be off. On the same kettle, with malt and hops of the same delivery, both are off in the same direction, and most of that drops out of their difference: a change can be surer than either number. Kettles or yeasts that differ are off each for itself. Effects are taken for straight lines.",
    equation:
      "u² = Σ shared (∂y₂/∂x · u(x) − ∂y₁/∂x · u(x))² + Σ separate (∂y/∂x · u(x))²; interval = y₂ − y₁ ± 1.2816 u",
    inputs: [...recipeInputs("0.before.recipe"), ...recipeInputs("0.after.recipe")],
    gives:
      "low and high end of after less before for each predicted quantity, in its unit; nothing where one cannot be brewed",
    sources: ["jcgm-100-2008"],
    validRange: "Effects that are near straight lines within one standard uncertainty.",
    call: differenceIntervals,
    example: [{ before: EXAMPLE_BREW, after: EXAMPLE_BREW }],
  },
  {
    id: "ledger/sampledIntervals",
    words:
      "The same intervals by brute force: figures are drawn from their uncertainties, evenly spread rather than at random, and the 10th and 90th percentile of many brews are read off. It knows curvature and bounds, at a hundred times the cost, and is what the fast intervals are held against.",
    equation:
      "percentiles 10 and 90 of y(x) over draws of x, x = known value + u(x) · normal quantile of an even sequence",
    inputs: [
      ...BREW_INPUTS,
      correlation,
      fieldInput("draws", "Draws, whole", DRAWS_RANGE),
      fieldInput("seed", "Seed of the sequence, whole", QUASI_RANDOM_RANGE.seed),
    ],
    gives: "low and high end for each predicted quantity, in its unit; nothing where nothing can be brewed",
    sources: ["jcgm-101-2008"],
    validRange: "100 to 10 000 draws; a thousand give the ends to a few per cent of the width.",
    call: sampledIntervals,
    example: [{ ...EXAMPLE_BREW, correlations: CORRELATIONS, draws: 100, seed: 1 }],
  },
  {
    id: "ledger/stationAccounts",
    words:
      "A ledger told station by station: every flow in, lost and out with mass, extract, strength and volume, cold and at the temperature that it leaves with, and time, electricity and temperatures of the station. Nothing is computed twice; it spells out what brew balanced. Beer counts its real extract.",
    equation: "litres = kg / density(°P, °C); °P = 100 · extract / mass",
    inputs: [...recipeInputs("0.recipe"), ...ambientInputs("0.ambient")],
    gives: "seven stations in the order of the process",
    sources: ["mass-balance"],
    validRange: "Any ledger of brew; above 100 °C the density is that at 100 °C.",
    call: stationAccounts,
    example: [{ ledger: EXAMPLE_LEDGER, recipe: EXAMPLE_RECIPE, ambient: EXAMPLE_DAY }],
  },
  {
    id: "ledger/costOf",
    words:
      "What a brew costs, station by station: each row by its weight, yeast by the pitch, electricity and water as the ledger counts them. What has no price is named and left out, so the total is then too low. Gas, cooling water, cleaning and the brewer's hours are not in it.",
    equation: "cost = Σ amount × price; per litre = cost / litres packaged",
    inputs: [
      ...recipeInputs("0.recipe"),
      price("fermentables.0", "Price of a kilogram of malt"),
      price("hops.0", "Price of a kilogram of hops"),
      price("yeast", "Price of the yeast"),
      price("kilowattHour", "Price of a kilowatt-hour"),
      price("cubicMetreOfWater", "Price of a cubic metre of water"),
    ],
    gives: "total, cost per packaged litre and per station in the currency of the prices; and what had no price",
    sources: ["mass-balance"],
    validRange: "Prices from 0 to 1 000 000 of one currency.",
    call: costOf,
    example: [{ ledger: EXAMPLE_LEDGER, recipe: EXAMPLE_RECIPE, prices: PRICES }],
  },
  {
    id: "ledger/mashCurveOf",
    words:
      "What one mash lived through, as the enzymes see it: its rests and the heating between them as one curve. Draining and sparging are left out, as they are in the attenuation that yeast is described with. Of two equal mashes it tells the first.",
    equation: "straight lines through the ends of each rest and each heating",
    inputs: [
      phase("minutes", "Length of a phase"),
      phase("fromC", "Temperature at its start"),
      phase("toC", "Temperature at its end"),
    ],
    gives: "minutes from the first rest and °C; empty without a rest",
    sources: ["energy-balance"],
    validRange: "Any brew day of brew.",
    call: mashCurveOf,
    example: [
      {
        phases: [
          { name: "rest", startMin: 60, minutes: 40, fromC: 64, toC: 64, litres: 16, powerW: 280 },
          { name: "heat between rests", startMin: 100, minutes: 8, fromC: 64, toC: 72, litres: 16, powerW: 2500 },
          { name: "rest", startMin: 108, minutes: 20, fromC: 72, toC: 72, litres: 16, powerW: 330 },
        ],
      },
    ],
  },
];
