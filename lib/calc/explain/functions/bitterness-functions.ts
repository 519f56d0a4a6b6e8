import {
  alphaAfterStorage,
  alphaLostFromStorageIndex,
  dryHopRate,
  ragerIbu,
  ragerUtilisation,
  STORAGE_INDEX_RANGE,
  STORAGE_RANGE,
  TINSETH_RANGE,
  tinsethIbu,
  tinsethUtilisation,
} from "../../bitterness";
import { HOPPED_WORT_RANGE } from "../../bitterness/alpha-concentration";
import { DRY_HOPPED_RANGE } from "../../bitterness/dry-hop-rate";
import { days, fraction, grams } from "../../units";
import type { FunctionInput, FunctionRecord } from "./function-record";

/** A hop addition as every formula of bitterness takes it. */
export const ADDITION_INPUTS: readonly FunctionInput[] = [
  { at: "0.alphaFraction", label: "Alpha acids, fraction of the hops", ...fraction.range },
  { at: "0.grams", label: "Hops", ...grams.range },
  { at: "0.litres", label: "Finished wort", ...HOPPED_WORT_RANGE },
  { at: "0.sg", label: "Gravity in the kettle", ...TINSETH_RANGE.sg },
];

export const ADDITION = { alphaFraction: 0.05, grams: 30, litres: 20, sg: 1.05 } as const;

const boilTime = (at: string): FunctionInput => ({ at, label: "Time in the boil", ...TINSETH_RANGE.minutes });

/** How the functions of hops in the boil, in the store and in the beer are explained. */
export const BITTERNESS_FUNCTIONS: readonly FunctionRecord[] = [
  {
    id: "bitterness/tinsethUtilisation",
    words:
      "The share of the alpha acids that a boil brings into the beer as bitterness, fitted by Tinseth to beers: it rises towards a limit with time and falls with gravity. Losses to trub and yeast are inside the fit; form of the hops, vigour of the boil and size of the kettle are not told apart. At one gravity it is a quarter lower than Rager's figure at 60 min.",
    equation: "utilisation = 1.65 × 0.000125^(SG − 1) × (1 − e^(−0.04 t)) / 4.15, t in min",
    inputs: [{ at: "0.sg", label: "Gravity in the kettle", ...TINSETH_RANGE.sg }, boilTime("0.minutes")],
    gives: "utilisation, fraction",
    sources: ["tinseth-1997"],
    validRange: "SG 1.000 to 1.160, 0 to 240 min; the table covers 1.030 to 1.130 and 120 min.",
    call: tinsethUtilisation,
    example: [{ sg: 1.05, minutes: 60 }],
  },
  {
    id: "bitterness/tinsethIbu",
    words:
      "The bitterness of one hop addition to a boil at 100 °C: Tinseth's utilisation times the alpha acids in a litre. It counts every addition in proportion, though only about 90 mg/L of alpha acids dissolve in wort at pH 5.2, so very large late additions give less. For a stand, a slow chill or a boil on a mountain use standIbu.",
    equation: "IBU = utilisation × alpha fraction × 1000 × grams / litres",
    inputs: [...ADDITION_INPUTS, boilTime("0.minutes")],
    gives: "bitterness, IBU",
    sources: ["tinseth-1997", "malowicki-shellhammer-2005"],
    validRange: "As tinsethUtilisation; up to 1000 IBU.",
    call: tinsethIbu,
    example: [{ ...ADDITION, minutes: 60 }],
  },
  {
    id: "bitterness/ragerUtilisation",
    words:
      "The share of the alpha acids by the older step table of Rager, as the smooth fit in general use. It gives 5 % to hops that are not boiled at all and stops rising after an hour. It is here by name, for recipes that were written with it; the rest of the library counts by Tinseth.",
    equation: "utilisation % = 18.11 + 13.86 × tanh((t − 31.32) / 18.27), t in min",
    inputs: [boilTime("0")],
    gives: "utilisation, %",
    sources: ["rager-1990"],
    validRange: "0 to 240 min; the table ends at 60 min.",
    call: ragerUtilisation,
    example: [60],
  },
  {
    id: "bitterness/ragerIbu",
    words:
      "The bitterness of one hop addition by Rager, with his adjustment for worts stronger than 1.050, for recipes that were written with it. At 60 min and 1.050 it is a third more than Tinseth's figure; a recipe keeps its bitterness only within one formula.",
    equation:
      "IBU = utilisation × alpha fraction × 1000 × grams / litres / (1 + (SG − 1.050) / 0.2), the last only above 1.050",
    inputs: [...ADDITION_INPUTS, boilTime("0.minutes")],
    gives: "bitterness, IBU",
    sources: ["rager-1990"],
    validRange: "SG 1.000 to 1.160, 0 to 240 min; up to 1000 IBU.",
    call: ragerIbu,
    example: [{ ...ADDITION, minutes: 60 }],
  },
  {
    id: "bitterness/alphaAfterStorage",
    words:
      "The alpha acids that stored hops still have. They fall exponentially by what the variety loses in half a year at 20 °C, half as fast for each 15 K colder and slower the less air comes in. The factors for the bag are from memory; a measured storage index says more.",
    equation: "alpha = fresh alpha × (1 − loss)^(days / 180 × 2^((t − 20) / 15) × storage factor)",
    inputs: [
      { at: "0.alphaFraction", label: "Alpha acids when fresh, fraction", ...fraction.range },
      { at: "0.lossIn6Months", label: "Share lost in six months at 20 °C", ...STORAGE_RANGE.loss },
      { at: "0.days", label: "Storage", ...days.range },
      { at: "0.celsius", label: "Storage temperature", ...STORAGE_RANGE.celsius },
      { at: "0.storageFactor", label: "Storage factor: 1 loose, 0.5 under vacuum", ...fraction.range },
    ],
    gives: "alpha acids, fraction of the hops",
    sources: ["garetz-1994"],
    validRange: "−30 to 40 °C, losses up to 0.95.",
    call: alphaAfterStorage,
    example: [{ alphaFraction: 0.1, lossIn6Months: 0.3, days: 180, celsius: 20, storageFactor: 1 }],
  },
  {
    id: "bitterness/alphaLostFromStorageIndex",
    words:
      "How much of the bitter acids hops have lost, from the storage index that a laboratory or the merchant states. It is a straight line in the logarithm of the index; four crop years gave slopes of 102 to 115 % where 110 % is used. It counts alpha and beta acids together, which do not go quite alike.",
    equation: "lost = 1.10 × log10(index / 0.25), at least 0",
    inputs: [{ at: "0", label: "Hop storage index", ...STORAGE_INDEX_RANGE }],
    gives: "lost bitter acids, fraction",
    sources: ["nickerson-likens-1979"],
    validRange: "An index of 0.2, fresh, to 2, where next to nothing is left.",
    call: alphaLostFromStorageIndex,
    example: [0.31],
  },
  {
    id: "bitterness/dryHopRate",
    words:
      "Dry hops for each litre of beer, by which a dry hopping is carried from one kettle to another. Cold beer isomerises nothing, so none of it counts as bitterness here. In truth dry hops bring humulinones and take up some iso-alpha acids, a change in either direction that no published law gives from grams and litres alone.",
    equation: "rate = grams / litres",
    inputs: [
      { at: "0.grams", label: "Dry hops", ...grams.range },
      { at: "0.litres", label: "Beer", ...DRY_HOPPED_RANGE },
    ],
    gives: "rate, g/L",
    sources: ["trade-practice"],
    validRange: "0.1 to 100 000 L, up to 1000 g/L.",
    call: dryHopRate,
    example: [{ grams: 100, litres: 20 }],
  },
];
