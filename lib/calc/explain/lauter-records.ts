import { sparges, type ExplanationContext } from "./explanation-context";
import { figure, inUnit, measure, ofLedger } from "./explanation-inputs";
import type { ExplanationRecord, RecordsOf } from "./explanation-record";
import { flowOf } from "./ledger-flows";

const retained: ExplanationRecord = {
  words:
    "The wort that the drained grain and the space below it keep. Each kilogram of grain holds a fixed volume, and each mash leaves the dead space full. Squeezing or waiting longer is not in it except through those two figures.",
  equation: "wort left = absorption × grist + number of mashes × dead space",
  inputs: (a) => [
    figure("Absorption of the grain", a.equipment.lauter.absorption, "thickness"),
    ...ofLedger(a, "mash.grist"),
    figure("Dead space", a.equipment.lauter.deadSpace, "volume"),
    inUnit("Number of mashes", a.recipe.mashes, ""),
  ],
  sources: ["mass-balance"],
  validRange: "As long as the mash holds more wort than the grain keeps.",
  nudges: ["10 % more grist", "grain that keeps 10 % more wort", "0.5 L more dead space under the grain"],
};

const runOff: ExplanationRecord = {
  words:
    "The wort that reaches the kettle from the mash, as if cooled to 20 °C so that it can stand beside the other volumes. By mass it is everything liquid in the mash and all the sparge water, less the wort that the grain keeps. Sugar and malt extract for the kettle are not yet in it.",
  equation:
    "run-off = (mash water + moisture of the grist + extract dissolved + sparge water − wort kept, by mass) / density at 20 °C",
  inputs: (a) => {
    const flow = flowOf(a.ledger, "lauter", "out", "run-off");
    const litres = a.ledger.quantities["lauter.runOff"];
    return [
      ...ofLedger(a, "water.mash", "water.sparge", "mash.dissolved", "lauter.retained"),
      measure("Moisture of the grist", a.sums.maltWaterKg, "mass"),
      measure("Run-off, by mass", flow?.kg ?? null, "mass"),
      inUnit("Density of the run-off at 20 °C", flow === null || litres === null ? null : flow.kg / litres, "kg/L"),
    ];
  },
  sources: ["mass-balance", "nbs-440-1942", "kell-1975"],
  validRange: "0 to 35 °P.",
  nudges: ["boil-off 0.5 kg/h higher", "10 % more wort into the fermenter", "15 minutes more boil"],
};

const RINSED = "Sparge water rinses the wort that the grain keeps, and a share of it runs past and rinses nothing.";

const RINSING = {
  none: "",
  batch: "The rest mixes with it wholly once, as a batch does.",
  continuous: "The rest runs down through a flooded bed, which counts as three stirred layers, one washing the next.",
  "pour-over": "The rest thins it steadily, as water does that runs through a stirred vessel.",
} as const;

function lostWords(a: ExplanationContext): string {
  const what = "The extract that leaves with the spent grain, dissolved in the wort that it keeps.";
  const leaves = "What the mash never dissolved is not counted here.";
  if (!sparges(a)) return `${what} Nothing rinses the grain, so that wort is as strong as the first wort. ${leaves}`;
  return `${what} ${RINSED} ${RINSING[a.equipment.lauter.method]} ${leaves}`;
}

function lostEquation(a: ExplanationContext): string {
  if (!sparges(a)) return "extract left = first wort / 100 × wort kept, by mass";
  const rinsing = "rinsing water = sparge water × (1 − share that runs past)";
  if (a.equipment.lauter.method === "continuous") {
    return `extract left = first wort / 100 × wort kept, by mass, × e^(−t) (3 + 2 t + t² / 2) / 3, with t = 3 × rinsing water / volume of wort kept; ${rinsing}`;
  }
  return a.equipment.lauter.method === "batch"
    ? `extract left = strength after mixing × wort kept, with strength after mixing = first wort / 100 × wort kept before / (wort kept before + rinsing water), by mass; ${rinsing}`
    : `extract left = first wort / 100 × wort kept, by mass, × exp(−rinsing water / volume of wort kept); ${rinsing}`;
}

const lost: ExplanationRecord = {
  words: lostWords,
  equation: lostEquation,
  inputs: (a) => [
    ...ofLedger(a, "mash.firstWort", "lauter.retained"),
    ...(sparges(a)
      ? [...ofLedger(a, "water.sparge"), figure("Share that runs past", a.equipment.lauter.bypass, "fraction")]
      : []),
  ],
  sources: ["mass-balance"],
  validRange: "Worts up to 35 °P; a stronger one counts with the density at 35 °P.",
  nudges: ["10 % more grist", "no sparge water past the grain", "without sparging", "grain that keeps 10 % more wort"],
};

const efficiency: ExplanationRecord = {
  words:
    "The share of the dissolved extract that runs off into the kettle. It is a result and not a setting: a bigger grist for the same volume keeps more wort and leaves less water to rinse it, so the share falls when the basket is full. What the mash never dissolved does not count against it.",
  equation: "lauter efficiency = 1 − extract left in the grain / extract dissolved",
  inputs: (a) => ofLedger(a, "lauter.lost", "mash.dissolved"),
  sources: ["mass-balance"],
  validRange: "Worts up to 35 °P.",
  nudges: ["10 % more grist", "no sparge water past the grain", "boil-off 0.5 kg/h higher", "without sparging"],
};

/** How the numbers of lautering (draining and rinsing the grain) are explained. */
export const LAUTER_RECORDS: RecordsOf<"lauter"> = {
  "lauter.runOff": runOff,
  "lauter.retained": retained,
  "lauter.lost": lost,
  "lauter.efficiency": efficiency,
};
