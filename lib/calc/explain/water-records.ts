import { sparges, type ExplanationContext } from "./explanation-context";
import { inUnit, measure, ofLedger } from "./explanation-inputs";
import type { ExplanationRecord, RecordsOf } from "./explanation-record";
import { HEATING_EQUATION, heatingInputs } from "./heating-inputs";
import { ION_RECORDS } from "./ion-records";
import { firstPhase } from "./ledger-flows";

const AT_20 = "Volumes at 20 °C; worts up to 35 °P.";

const total: ExplanationRecord = {
  words:
    "All the water that goes into the beer, measured cold: for the mash, for sparging (rinsing the grain) and for topping up after the boil. Nobody types it in: the recipe states the wort wanted in the fermenter, and the water is what that takes once every loss on the way is added. Water for the chiller and for cleaning is left out.",
  equation:
    "water = wort into the fermenter + left in the kettle + boiled off + kept by the grain − moisture and dissolved extract of the grist − sugar and malt extract, all by mass; tried again until the fermenter receives the volume wanted",
  inputs: (a) => [
    ...ofLedger(a, "fermenter.volume", "stand.lost", "kettle.evaporated", "lauter.retained", "mash.dissolved"),
    measure("Moisture of the grist", a.sums.maltWaterKg, "mass"),
    measure("Sugar and malt extract", a.sums.addedKg, "mass"),
  ],
  sources: ["mass-balance", "kell-1975", "nbs-440-1942"],
  validRange: AT_20,
  nudges: ["10 % more grist", "boil-off 0.5 kg/h higher", "10 % more wort into the fermenter"],
};

const mash: ExplanationRecord = {
  words: (a) =>
    sparges(a)
      ? "The water that the grain is stirred into, measured cold. It follows from the mash thickness that the recipe asks for, and is never more than all the water before the boil. What is left rinses the grain."
      : "The water that the grain is stirred into, measured cold. Nothing is kept back for sparging (rinsing the grain), so all the water before the boil goes into the mash.",
  equation: (a) =>
    sparges(a)
      ? "mash water = thickness × grist, at most water in all − water after the boil"
      : "mash water = water in all − water after the boil",
  inputs: (a) => [
    ...(sparges(a) ? [measure("Thickness wanted", a.recipe.thickness, "thickness"), ...ofLedger(a, "mash.grist")] : []),
    ...ofLedger(a, "water.total", "water.topUp"),
  ],
  sources: ["mass-balance"],
  validRange: AT_20,
  nudges: ["mash thinner by 0.5 L/kg", "10 % more grist", "boil-off 0.5 kg/h higher", "15 minutes more boil"],
};

const sparge: ExplanationRecord = {
  words:
    "The water that rinses the grain after the first wort has run off, measured cold. It is what is left of the water in all once the mash and the water after the boil have had theirs. A bigger grist or a thinner mash leaves less of it.",
  equation: "sparge water = water in all − mash water − water after the boil",
  inputs: (a) => ofLedger(a, "water.total", "water.mash", "water.topUp"),
  sources: ["mass-balance"],
  validRange: AT_20,
  nudges: ["10 % more grist", "mash thinner by 0.5 L/kg", "boil-off 0.5 kg/h higher", "without sparging"],
};

const topUp: ExplanationRecord = {
  words:
    "Cold water added to the wort after the boil, as the recipe says. It is counted inside the volume in the fermenter, so that much less wort has to be boiled. It thins strength, bitterness and colour alike.",
  equation: "as the recipe states",
  inputs: (a) => [measure("Water after the boil in the recipe", a.recipe.topUp, "volume")],
  sources: ["mass-balance"],
  validRange: "Less than the volume wanted in the fermenter.",
  nudges: ["a tenth of the volume as water after the boil", "no water after the boil"],
};

const residualAlkalinity: ExplanationRecord = {
  words:
    "Alkalinity is what keeps the mash from turning acid; calcium and magnesium work against it, because they react with phosphates of the malt. What is left is the residual alkalinity, negative in soft water with much calcium. It was found on finished wort; the acid of dark malts and acids that are added are left out.",
  equation:
    "residual alkalinity = alkalinity − 50.04 × (calcium / 20.04 / 3.5 + magnesium / 12.15 / 7), with alkalinity = bicarbonate × 50.04 / 61.02, in mg/L",
  inputs: (a) => ofLedger(a, "water.bicarbonate", "water.calcium", "water.magnesium"),
  sources: ["kolbach-1953", "iupac-2021"],
  validRange: "0 to 10 000 mg/L of each ion; studied on pale wort of 12 °P.",
  nudges: ["half of the source water replaced by distilled water", "1 g more gypsum", "1 g more baking soda"],
};

const inTun = ({ equipment }: ExplanationContext): boolean => equipment.mash.kind === "tun";

const strike: ExplanationRecord = {
  words: (a) =>
    `How hot the water must be before the grain goes in, so that both settle at the first rest. ${
      inTun(a)
        ? "The colder grain and the mash tun, which starts as cold as the air, take up the heat that the water gives."
        : "The colder grain takes up the heat that the water gives; a basket or a bag hangs in the water and is as warm."
    } The warmth that dry malt gives when it is wetted is left out, and so is what is lost while stirring.`,
  equation: (a) =>
    inTun(a)
      ? "strike = rest + (grist × 0.41 × (rest − grain) + tun / 4187 J/(kg·K) × (rest − air)) / strike water, in kg, for one mash"
      : "strike = rest + grist × 0.41 × (rest − grain) / strike water, in kg, for one mash",
  inputs: (a) => [
    measure("First rest", a.recipe.mash[0]?.celsius ?? null, "temperature"),
    measure("Grain", a.ambient.grain, "temperature"),
    ...ofLedger(a, "mash.grist", "water.mash"),
    inUnit("Number of mashes", a.recipe.mashes, ""),
    measure("Strike water of one mash", firstPhase(a.ledger, "prepare")?.litres ?? null, "volume"),
    ...(inTun(a)
      ? [
          inUnit("Heat capacity of the mash tun", a.equipment.mash.heatCapacity, "J/K"),
          measure("Air", a.ambient.air, "temperature"),
        ]
      : []),
  ],
  sources: ["energy-balance", "brewing-room-book-1985"],
  validRange: "−20 to 102 °C; above the boiling point it says that no water is hot enough for so much grain.",
  nudges: ["grain 10 °C colder", "mash thinner by 0.5 L/kg", "mash 2 °C hotter", "10 % more grist"],
};

const heatingTime: ExplanationRecord = {
  words:
    "How long the kettle takes to bring the strike water of one mash from the tap to the strike temperature. Water and kettle take up what the heater delivers, less what the walls lose to the air. Filling the kettle and evaporation on the way are left out. No time is given where the losses meet the power before the water is hot enough.",
  equation: HEATING_EQUATION,
  inputs: (a) => [
    measure("Tap water", a.ambient.tapWater, "temperature"),
    ...ofLedger(a, "water.strike", "water.mash"),
    measure("Strike water of one mash", firstPhase(a.ledger, "prepare")?.litres ?? null, "volume"),
    ...heatingInputs(a),
  ],
  sources: ["energy-balance"],
  validRange: "Up to 102 °C, air from −30 to 60 °C.",
  nudges: ["supply voltage 5 % lower", "tap water 5 °C colder", "a heater one fifth stronger"],
};

/** How the numbers of the water are explained. */
export const WATER_RECORDS: RecordsOf<"water"> = {
  ...ION_RECORDS,
  "water.total": total,
  "water.mash": mash,
  "water.sparge": sparge,
  "water.topUp": topUp,
  "water.residualAlkalinity": residualAlkalinity,
  "water.strike": strike,
  "water.heatingTime": heatingTime,
};
