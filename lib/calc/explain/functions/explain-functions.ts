import { explain } from "../explain";
import { explainFermentable } from "../explain-fermentable";
import { explainHop } from "../explain-hop";
import { limitWords } from "../limit-words";
import { BREW_INPUTS } from "./brew-inputs";
import { EXAMPLE_BREW, EXAMPLE_LEDGER } from "./example-brew";
import type { FunctionRecord } from "./function-record";

const BREWED = { ...EXAMPLE_BREW, ledger: EXAMPLE_LEDGER };

const OWN_LEDGER = "Any ledger of brew, with the recipe, equipment and day that it was brewed from.";

/** How the functions that explain a ledger are explained. */
export const EXPLAIN_FUNCTIONS: readonly FunctionRecord[] = [
  {
    id: "explain/explain",
    words:
      "One number of a ledger opened up: what it is, the equation behind it, its inputs, sources and range. An input that is itself a number of the ledger can be opened in turn, until only decisions and measured figures are left. What would change it is brewed anew, one change at a time, with the water found again for the volume wanted.",
    equation: "value at the changed brew, for each of up to three changes",
    inputs: BREW_INPUTS,
    gives: "the explanation, with every value in the library's unit",
    sources: ["mass-balance"],
    validRange: OWN_LEDGER,
    call: explain,
    example: [{ ...BREWED, id: "lauter.efficiency" }],
  },
  {
    id: "explain/explainFermentable",
    words:
      "The extract that one row of the grist gives, with its share of the extract and of the colour, opened up in the same way. Everything in the mash loses the same share to conversion and to the wort that the grain keeps, which treats dark and pale malts alike and is not quite true.",
    equation: "extract = mass × (1 − moisture) × yield × conversion × lauter efficiency",
    inputs: BREW_INPUTS,
    gives: "the explanation, kg; nothing where the recipe has no such row",
    sources: ["mass-balance", "trade-practice"],
    validRange: OWN_LEDGER,
    call: explainFermentable,
    example: [{ ...BREWED, index: 0 }],
  },
  {
    id: "explain/explainHop",
    words:
      "The bitterness that one hop addition gives, opened up in the same way: every minute counts by how fast alpha acids isomerise at its temperature against 100 °C, through boil, stand and chilling. Bitterness of dry hops and of what isomerises in storage is left out.",
    equation: "bitterness = utilisation(gravity, ∫ k(T)/k(100 °C) dt) × alpha × grams × 1000 / litres",
    inputs: BREW_INPUTS,
    gives: "the explanation, mg/L; nothing where the recipe has no such row",
    sources: ["tinseth-1997", "malowicki-shellhammer-2005"],
    validRange: OWN_LEDGER,
    call: explainHop,
    example: [{ ...BREWED, index: 0 }],
  },
  {
    id: "explain/limitWords",
    words:
      "Why a limit of the equipment matters and how its value comes about, in plain words. Value and bound stay in the limit itself, for whoever shows it. The words are the same whether the limit is kept or broken.",
    equation: "none: words by the name of the limit",
    inputs: [],
    gives: "a title and a reason",
    sources: ["trade-practice"],
    validRange: "Every limit that a ledger can hold.",
    call: limitWords,
    example: [{ id: "boil volume", ok: true, value: 26, bound: 30, side: "at most", dimension: "volume" }],
  },
];
