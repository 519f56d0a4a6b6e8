import { CO2_FROM_SUGAR, residualCo2 } from "../carbonation";
import type { ExplanationInput } from "./explanation";
import type { ExplanationContext } from "./explanation-context";
import { figure, figureInUnit, inUnit, measure, ofLedger } from "./explanation-inputs";
import type { ExplanationRecord, RecordsOf } from "./explanation-record";
import { flowOf } from "./ledger-flows";

const volume: ExplanationRecord = {
  words:
    "The beer that goes into bottles or a keg, as if at 20 °C. Fermentation takes away the carbon dioxide that leaves and the yeast that grows; some beer stays with the yeast, and dry hops soak up some. Samples that are drawn and drunk are left out.",
  equation:
    "packaged = wort / (1 + 1.0665 × alcohol by mass) / density of beer of the final gravity − left with the yeast − absorption of hops × dry hops, with alcohol by mass = (original − real extract) / (2.0665 − 0.010665 × original) / 100",
  inputs: (a) => [
    ...ofLedger(a, "fermenter.volume", "fermenter.originalExtract", "fermenter.finalExtract"),
    measure("Beer, by mass", flowOf(a.ledger, "fermenter", "out", "beer")?.kg ?? null, "mass"),
    figure("Left with the yeast", a.equipment.fermenter.left, "volume"),
    figureInUnit("Absorption of hops", a.equipment.hopAbsorption, "L/kg"),
    measure("Dry hops", 1000 * a.sums.dryHopsKg, "grams"),
  ],
  sources: ["balling-1865", "mass-balance", "nbs-440-1942"],
  validRange: "Up to 35 °P; the density is that of wort that reads the same.",
  nudges: ["10 % more wort into the fermenter", "twice as much left with the yeast", "half the dry hops"],
};

const REAL_EXTRACT = "real extract = 0.1808 × original + 0.8192 × final";

const alcohol: ExplanationRecord = {
  words:
    "The alcohol in the beer, by volume at 20 °C. Each gram of alcohol takes a little over two grams of extract, the rest of which leaves as carbon dioxide or becomes yeast. What priming sugar adds is left out, a few tenths of a per cent at most.",
  equation: `alcohol = (original − real extract) / (2.0665 − 0.010665 × original) × specific gravity of the beer / 0.7907, with ${REAL_EXTRACT}`,
  inputs: (a) => ofLedger(a, "fermenter.originalExtract", "fermenter.finalExtract"),
  sources: ["balling-1865", "oiml-r22", "asbc-tables"],
  validRange: "Original extract up to 35 °P, final gravity from 0 °P to the original.",
  nudges: [
    "yeast that attenuates 3 percentage points further",
    "10 % more grist",
    "conversion 3 percentage points lower",
  ],
};

const energyContent: ExplanationRecord = {
  words:
    "The food energy of a litre of beer, in kilocalories. It is 6.9 for each gram of alcohol and 4 for each gram of extract that is left, minerals taken off. What priming sugar adds is left out.",
  equation: `energy = 10 × (6.9 × alcohol by mass + 4 × (real extract − 0.1)) × specific gravity of the beer, in %, with ${REAL_EXTRACT}`,
  inputs: (a) => ofLedger(a, "fermenter.originalExtract", "fermenter.finalExtract"),
  sources: ["asbc-beer-33", "balling-1865"],
  validRange: "Original extract up to 35 °P; minerals are taken as 0.1 %.",
  nudges: ["10 % more grist", "10 % more wort into the fermenter", "yeast that attenuates 3 percentage points further"],
};

const carbonation: ExplanationRecord = {
  words:
    "The carbon dioxide that the recipe asks for, in volumes: litres of gas, at 0 °C and the pressure of the air, in a litre of beer. It is decided, not computed. Keep it below what the maker of the bottle or keg states: above that, bottles burst.",
  equation: "as the recipe states",
  inputs: (a) => [
    measure("Carbonation in the recipe", a.recipe.packaging.carbonation, "carbonation"),
    measure("Highest that the maker of the container states", a.recipe.packaging.rated, "carbonation"),
  ],
  sources: ["trade-practice"],
  validRange: "Up to what the maker of the container states.",
  nudges: ["half a volume more carbonation", "half a volume less carbonation"],
};

const primingSugar: ExplanationRecord = {
  words: (a) =>
    a.recipe.packaging.priming === null
      ? "The sugar that would carbonate the beer in a closed container. This recipe carbonates from a cylinder, so there is none to weigh."
      : "The sugar that carbonates the beer in its closed container. Beer keeps some gas from fermentation, the less the warmer it has been since; sugar that ferments wholly makes up the rest. It counts on fermentation having ended: sugar left over from it comes on top and may burst bottles.",
  equation:
    "sugar = packaged × (carbonation − gas left) × 1.963 g/L / gas from a gram of sugar, with gas left = 3.0378 − 0.050062 F + 0.00026555 F², F = temperature in °F",
  inputs: primingInputs,
  sources: ["iupac-2021", "trade-practice"],
  validRange: "Up to 6 volumes, −2 to 45 °C; the gas left stays at its lowest value above 34.6 °C.",
  nudges: [
    "half a volume more carbonation",
    "beer 5 °C warmer",
    "primed with dextrose monohydrate",
    "primed with table sugar",
  ],
};

function primingInputs(a: ExplanationContext): ExplanationInput[] {
  const { warmest, priming } = a.recipe.packaging;
  return [
    ...ofLedger(a, "package.volume", "package.carbonation"),
    measure("Warmest since fermentation ended", warmest, "temperature"),
    measure("Gas left from fermentation", residualCo2(warmest), "carbonation"),
    ...(priming === null ? [] : [inUnit("Gas from a gram of sugar", CO2_FROM_SUGAR[priming], "g/g")]),
  ];
}

const pressure: ExplanationRecord = {
  words:
    "The pressure in the closed container, above that of the air, at the warmest temperature of the recipe. Warm beer holds less gas at a given pressure, so the same carbonation presses harder. It is worked by Henry's law, which reads higher in warm beer than the brewers' table and so errs on the safe side of glass; what the maker of the container states decides. Where the container may get warmer than stated, expect more.",
  equation: "pressure = carbonation × 1.9635 g/L / (10 × exp(−10.73797 + 2617.25 / T)) − 1.013 bar, with T in kelvin",
  inputs: (a) => [
    ...ofLedger(a, "package.carbonation"),
    measure("Warmest temperature", a.recipe.packaging.warmest, "temperature"),
  ],
  sources: ["henry-co2"],
  validRange: "−2 to 45 °C, up to 10 volumes, at sea level.",
  nudges: ["beer 5 °C warmer", "half a volume more carbonation", "half a volume less carbonation"],
};

/** How the numbers of the package are explained. */
export const PACKAGE_RECORDS: RecordsOf<"package"> = {
  "package.volume": volume,
  "package.alcohol": alcohol,
  "package.energyContent": energyContent,
  "package.carbonation": carbonation,
  "package.primingSugar": primingSugar,
  "package.pressure": pressure,
};
