import { mashCurveOf } from "../ledger";
import { acidityOf } from "../ledger/acidity-of";
import { gristExtract, GRAIN_DISPLACEMENT } from "../mash";
import type { ExplanationInput } from "./explanation";
import type { ExplanationContext } from "./explanation-context";
import { figure, inUnit, measure, ofLedger } from "./explanation-inputs";
import type { ExplanationRecord, RecordsOf } from "./explanation-record";
import { heatingInputs } from "./heating-inputs";
import { minutesIn } from "./ledger-flows";

type Row = ExplanationContext["recipe"]["fermentables"][number];

function eachMashed({ recipe }: ExplanationContext, input: (row: Row) => ExplanationInput): ExplanationInput[] {
  return recipe.fermentables.filter((row) => row.station === "mash").map(input);
}

const grist: ExplanationRecord = {
  words:
    "All that goes into the mash, as weighed, its moisture included. Sugar and malt extract that go straight into the kettle are not in it.",
  equation: "grist = Σ mass of each row that is mashed",
  inputs: (a) => eachMashed(a, (row) => measure(row.name, row.kg, "mass")),
  sources: ["mass-balance"],
  validRange: "Any mass.",
  nudges: ["10 % more grist", "10 % less grist"],
};

const thickness: ExplanationRecord = {
  words:
    "How much water meets each kilogram of grain: a large number is a thin mash. It is the mash water over the grist, both as measured out cold. Water that is kept back to heat a later rest is counted, too.",
  equation: "thickness = mash water / grist",
  inputs: (a) => ofLedger(a, "water.mash", "mash.grist"),
  sources: ["mass-balance"],
  validRange: "Any grist; without one there is no thickness.",
  nudges: ["mash thinner by 0.5 L/kg", "10 % more grist", "without sparging", "boil-off 0.5 kg/h higher"],
};

const volume: ExplanationRecord = {
  words:
    "The room that one mash takes up, water and grain together, at its warmest rest. Soaked grain counts with a fixed volume for each kilogram, less than dry grain fills in the sack, because water fills the gaps. Foam and room for stirring are left out.",
  equation: "volume = (mash water, expanded to the warmest rest, + 0.67 L/kg × grist) / number of mashes",
  inputs: (a) => [
    ...ofLedger(a, "water.mash", "mash.grist"),
    measure(
      "Warmest rest",
      a.recipe.mash.reduce((most, step) => Math.max(most, step.celsius), 20),
      "temperature",
    ),
    inUnit("Volume of soaked grain", GRAIN_DISPLACEMENT, "L/kg"),
    inUnit("Number of mashes", a.recipe.mashes, ""),
  ],
  sources: ["trade-practice", "kell-1975"],
  validRange: "Up to 100 °C; the volume of the grain is common practice, within about a tenth.",
  nudges: ["10 % more grist", "mash thinner by 0.5 L/kg", "in two mashes"],
};

const potential: ExplanationRecord = {
  words:
    "The extract (sugars and whatever else dissolves) that the mashed grain holds, as a laboratory finds it in finely ground malt. Each row gives its mass without moisture times the yield of its dry substance. No kettle gets all of it: the rows that follow say where it stays.",
  equation: "extract in the grist = Σ mass × (1 − moisture) × yield of the dry substance",
  inputs: (a) => [
    ...ofLedger(a, "mash.grist"),
    ...eachMashed(a, (row) => measure(`Extract in ${row.name}`, gristExtract(row), "mass")),
  ],
  sources: ["mass-balance"],
  validRange: "Moisture and yield as stated for the malt; lots of one kind differ by about a hundredth.",
  nudges: ["10 % more grist", "malt with 1 percentage point less extract"],
};

const dissolved: ExplanationRecord = {
  words:
    "The part of the grist's extract that the mash brings into solution. It is the extract in the grist times the conversion of this equipment, a figure for how completely mashing works there. Milling, mash time and temperature do not change it here except through that figure.",
  equation: "extract dissolved = extract in the grist × conversion",
  inputs: (a) => [...ofLedger(a, "mash.potential"), figure("Conversion", a.equipment.lauter.conversion, "fraction")],
  sources: ["mass-balance"],
  validRange: "Conversion from 0 to 1.",
  nudges: ["conversion 3 percentage points lower", "10 % more grist", "malt with 1 percentage point less extract"],
};

const firstWort: ExplanationRecord = {
  words:
    "The strength of the wort before any sparge water reaches it. It is the dissolved extract over everything liquid in the mash, the moisture of the malt included. A weaker reading is the first sign that less has dissolved than expected.",
  equation: "first wort = 100 × extract dissolved / (mash water + moisture of the grist + extract dissolved), by mass",
  inputs: (a) => [
    ...ofLedger(a, "mash.dissolved", "water.mash"),
    measure("Moisture of the grist", a.sums.maltWaterKg, "mass"),
  ],
  sources: ["mass-balance", "narziss"],
  validRange: "Up to 60 °P, past which no mash flows.",
  nudges: ["mash thinner by 0.5 L/kg", "conversion 3 percentage points lower", "10 % more grist", "without sparging"],
};

const time: ExplanationRecord = {
  words: (a) =>
    `The rests of the recipe and the heating from one to the next, for all mashes together. ${
      a.equipment.mash.heated
        ? "The heater warms water, grain and vessel at once, against the heat that the kettle loses."
        : "The vessel has no heater, so later rests are reached with boiling water, which is counted as taking no time."
    } Stirring the grain in and draining it are left out.`,
  equation:
    "mash time = rests + heating between rests; heating = ∫ C dT / (P − U × (T − air)), with the grain in C as 0.41 of its mass in water",
  inputs: (a) => [
    measure("Rests, of all mashes", minutesIn(a.ledger, "rest"), "minutes"),
    measure("Heating between rests", minutesIn(a.ledger, "heat between rests"), "minutes"),
    ...(a.equipment.mash.heated ? [...ofLedger(a, "water.mash", "mash.grist"), ...heatingInputs(a)] : []),
  ],
  sources: ["energy-balance", "brewing-room-book-1985"],
  validRange: "Up to 102 °C, air from −30 to 60 °C; no time where a rest cannot be reached.",
  nudges: ["first rest 10 minutes longer", "supply voltage 5 % lower", "in two mashes", "10 % more grist"],
};

const mashPhRecord: ExplanationRecord = {
  words:
    "The pH of the mash as it reads in a cooled sample; hot in the mash it is about 0.3 lower. Malts buffer around the pH that each has alone in distilled water, the bicarbonate of the water takes up acid, calcium and magnesium set acid free from the malt, and acids add theirs. A malt of which the recipe knows no more than kind and colour counts with the usual figures of its kind, so it is as good as those; a meter is better.",
  equation:
    "Σ mass × buffering × (pH − distilled-water pH of the malt) + alkalinity used up − calcium / 3.5 − magnesium / 7 − acids = 0, all in mEq and solved for the pH",
  inputs: (a) => [
    ...eachMashed(a, (row) => inUnit(`${row.name}, in distilled water`, acidityOf(row).distilledWaterPh, "pH")),
    ...eachMashed(a, (row) => inUnit(`${row.name}, buffering`, acidityOf(row).buffering, "mEq/(kg·pH)")),
    ...ofLedger(a, "water.mash", "water.calcium", "water.magnesium", "water.bicarbonate"),
    ...(a.recipe.water.acid === null ? [] : [inUnit("Acid in the mash water", a.recipe.water.acid.ml, "mL")]),
  ],
  sources: ["delange-2015", "kolbach-1953", "plummer-busenberg-1982", "trade-practice"],
  validRange: "pH 3 to 10; within about 0.2 for malts that nobody measured.",
  nudges: ["1 g more gypsum", "half of the source water replaced by distilled water", "mash thinner by 0.5 L/kg"],
};

const conversion: ExplanationRecord = {
  words:
    "The share of the starch that the enzymes of the malt turn into sugars and dextrins over the rests and the heating between them. It follows the temperatures of this mash with the enzymes of a pale barley malt; thickness, grind and acidity are left out. The extract dissolved is not lowered by it, so a small share is a warning: only a grist of caramel or roasted malt, which brings no starch, does well without.",
  equation:
    "starch → dextrin → sugar, each at a rate that follows Arrhenius' law in the amylases that are still alive, over the curve of the mash",
  inputs: (a) =>
    mashCurveOf({ phases: a.ledger.phases }).flatMap(([minute, celsius]) => [
      measure(`Mash after ${String(Math.round(minute))} min`, celsius, "temperature"),
    ]),
  sources: ["brandam-2003", "koljonen-1995", "muller-1990"],
  validRange: "Rests of 55 to 78 °C, barley malt at 2.5 to 4 L/kg.",
  nudges: ["first rest 10 minutes longer", "mash 2 °C hotter"],
};

/** How the numbers of the mash are explained. */
export const MASH_RECORDS: RecordsOf<"mash"> = {
  "mash.grist": grist,
  "mash.thickness": thickness,
  "mash.volume": volume,
  "mash.potential": potential,
  "mash.dissolved": dissolved,
  "mash.firstWort": firstWort,
  "mash.ph": mashPhRecord,
  "mash.conversion": conversion,
  "mash.time": time,
};
