import { adapt, intentionOf, substitute } from "../../adapt";
import * as intended from "../../adapt/require-intention";
import * as recipeNumbers from "../../ledger/recipe-numbers";
import { ambientInputs, BREW_INPUTS, equipmentInputs, numbersAt, processInputs, recipeInputs } from "./brew-inputs";
import { EXAMPLE_BREW, EXAMPLE_DAY, EXAMPLE_EQUIPMENT, EXAMPLE_LEDGER, EXAMPLE_RECIPE } from "./example-brew";
import type { FunctionInput, FunctionRecord } from "./function-record";

const INTENTION = intentionOf({ recipe: EXAMPLE_RECIPE, ledger: EXAMPLE_LEDGER });

const intentionInputs: readonly FunctionInput[] = [
  ...numbersAt("0.intention", intended.INTENTION_NUMBERS),
  ...processInputs("0.intention"),
  ...numbersAt("0.intention.fermentables.0", intended.INTENDED_FERMENTABLE_NUMBERS),
  ...numbersAt("0.intention.fermentables.0.acidity", recipeNumbers.ACIDITY_NUMBERS),
  ...numbersAt("0.intention.hops.0", intended.INTENDED_HOP_NUMBERS),
  ...numbersAt("0.intention.water.source", recipeNumbers.SOURCE_NUMBERS),
  ...numbersAt("0.intention.water.ions", recipeNumbers.SOURCE_NUMBERS),
  { at: "0.intention.water.saltsMgPerLitre.gypsum", label: "Dose of gypsum", ...intended.SALT_DOSE_RANGE },
  { at: "0.intention.water.acid.mashPh", label: "Mash pH wanted", ...intended.MASH_PH_RANGE },
];

const SHELF = [
  { name: "Hallertauer", alpha: 0.045 },
  { name: "Perle", alpha: 0.075 },
];

/** How the functions that fit a recipe to a kettle and a shelf are explained. */
export const ADAPT_FUNCTIONS: readonly FunctionRecord[] = [
  {
    id: "adapt/intentionOf",
    words:
      "What a recipe is meant to be, read out of its ledger on the kettle that it was written for: strength, colour, the share of the extract from each fermentable, the bitterness of each addition, doses of dry hops and salts, and the mash pH. The amounts fall away, because on another kettle they are others. The volume is left open unless somebody sets it.",
    equation: "share = extract of the row / all extract; dose = grams / litres; the rest as the ledger gives it",
    inputs: recipeInputs("0.recipe"),
    gives: "the intention, free of any kettle",
    sources: ["mass-balance"],
    validRange: "Any recipe that brews, with its own ledger.",
    call: intentionOf,
    example: [{ recipe: EXAMPLE_RECIPE, ledger: EXAMPLE_LEDGER }],
  },
  {
    id: "adapt/adapt",
    words:
      "The amounts that make the same beer on another kettle. Nothing is scaled: the grist follows from a root in the lauter efficiency, which the grist itself lowers; dark malts hold the colour; hops follow from this kettle's own heating and chilling; water, salts and acid are solved for the water at hand. Where the brew breaks a limit of the kettle, each way out that is asked for is computed in full and ranked by how far it is from what was meant, by weights that are ours; a look at many kettles asks for none.",
    equation:
      "η′(grist(η)) = η by secant; hops_i × wanted_i / given_i until they rest; residuals below 1e-6 of the targets",
    inputs: [
      ...intentionInputs,
      ...equipmentInputs("0.equipment"),
      ...ambientInputs("0.ambient"),
      { at: "0.hold.intoFermenter", label: "Volume for everybody", ...intended.HELD_VOLUME_RANGE },
      ...numbersAt("0.source", recipeNumbers.SOURCE_NUMBERS),
    ],
    gives: "recipe, ledger and residuals; or the limits that are broken and the ways out, the nearest first",
    sources: ["mass-balance", "energy-balance"],
    validRange: "Worts up to 35 °P at the end of the boil.",
    call: adapt,
    example: [
      {
        intention: INTENTION,
        equipment: EXAMPLE_EQUIPMENT,
        ambient: EXAMPLE_DAY,
        hold: { intoFermenter: 18 },
        source: EXAMPLE_RECIPE.water.source,
      },
    ],
  },
  {
    id: "adapt/substitute",
    words:
      "What can stand in for a malt or a hop that is not to be had, with every amount solved anew. A malt that is there for its colour is replaced by its colour, any other by its extract, a hop by the bitterness of its addition or, where it gives none, by its dose. Candidates are ranked by how unlike they are in yield, colour, mash pH, attenuation or alpha acids, by weights that are ours. Flavour and aroma are outside the arithmetic: taste.",
    equation:
      "distance = share · |ln yield ratio| + colour share · |ln colour ratio| + |ln beer colour ratio| + 2 |Δ pH| + 4 |Δ attenuation|; for hops |ln alpha ratio|",
    inputs: [
      ...BREW_INPUTS,
      { at: "0.lacking.index", label: "Row, whole, from 0", unit: "", min: 0, max: EXAMPLE_RECIPE.hops.length - 1 },
      { at: "0.lacking.candidates.0.alpha", label: "Alpha acids of a candidate", unit: "", min: 0, max: 1 },
    ],
    gives:
      "substitutes with recipe, ledger and the numbers that change, the nearest first, and what does not fit and why",
    sources: ["mass-balance", "tinseth-1997"],
    validRange: "Any recipe that brews.",
    call: substitute,
    example: [{ ...EXAMPLE_BREW, lacking: { list: "hops", index: 1, candidates: SHELF } }],
  },
];
