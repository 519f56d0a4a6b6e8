import { waterDensity } from "../gravity";
import { boilingPoint as boilingPointAt, boilOffRate } from "../heat";
import { celsius, watts } from "../units";
import type { ExplanationContext } from "./explanation-context";
import { figureInUnit, inUnit, measure, ofLedger } from "./explanation-inputs";
import type { ExplanationRecord, RecordsOf } from "./explanation-record";
import { HEATING_EQUATION, heatingInputs, OPEN_HEATING_EQUATION } from "./heating-inputs";
import { firstPhase, flowOf } from "./ledger-flows";

const HOT_DENSITY = "0 to 35 °P and up to 100 °C; hot densities within 0.0003 kg/L.";
const DENSITIES = ["mass-balance", "kell-1975", "nbs-440-1942", "bubnik-1995"] as const;

const preBoil: ExplanationRecord = {
  words:
    "What stands in the kettle when the wort comes to the boil, at that temperature. It is the mass of the run-off: hot, it takes up about a twenty-fifth more room than at 20 °C. Sugar and malt extract for the kettle are not yet in it, and what evaporates on the way is not yet taken off.",
  equation: "before the boil = run-off × its density at 20 °C / its density at the boiling point",
  inputs: (a) => ofLedger(a, "lauter.runOff", "kettle.preBoilGravity", "kettle.boilingPoint"),
  sources: DENSITIES,
  validRange: HOT_DENSITY,
  nudges: ["boil-off 0.5 kg/h higher", "15 minutes more boil", "10 % more wort into the fermenter"],
};

const preBoilGravity: ExplanationRecord = {
  words:
    "How strong the wort in the kettle is before anything boils off. It is the extract that ran off over the mass of the run-off. Sugar and malt extract for the kettle are not yet in it.",
  equation: "gravity before the boil = 100 × (extract dissolved − extract left in the grain) / run-off, by mass",
  inputs: (a) => [
    ...ofLedger(a, "mash.dissolved", "lauter.lost", "lauter.runOff"),
    measure("Run-off, by mass", flowOf(a.ledger, "kettle", "in", "run-off")?.kg ?? null, "mass"),
  ],
  sources: ["mass-balance"],
  validRange: "0 to 35 °P.",
  nudges: ["10 % more grist", "boil-off 0.5 kg/h higher", "conversion 3 percentage points lower"],
};

const boilingPoint: ExplanationRecord = {
  words:
    "The temperature at which water boils at this altitude. The air presses less higher up, and the boiling point falls by about a degree for each 300 m. The weather moves it by up to half a degree and the sugar in the wort raises it by less; both are left out.",
  equation:
    "boiling point = 1730.63 / (8.07131 − log₁₀ p) − 233.426, with p = 760 mmHg × (1 − 2.25577·10⁻⁵ × altitude)^5.25588",
  inputs: (a) => [inUnit("Altitude", a.equipment.altitude, "m")],
  sources: ["iso-2533-1975", "antoine-water"],
  validRange: "−450 to 6000 m, within 0.1 °C of the tables.",
  nudges: ["at 1600 m above the sea", "at sea level"],
};

const power: ExplanationRecord = {
  words:
    "What the heater draws on the supply of this place. Its resistance hardly changes, so the power goes with the square of the voltage: 5 % less voltage is about 10 % less power. Not all of it reaches the liquid; the heating times allow for that.",
  equation: "power = rated power × (supply voltage / rated voltage)²",
  inputs: ({ equipment: { kettle } }) => [
    measure("Rated power", kettle.ratedPower, "power"),
    inUnit("Rated voltage", kettle.ratedVoltage, "V"),
    inUnit("Supply voltage", kettle.supplyVoltage, "V"),
  ],
  sources: ["energy-balance"],
  validRange: "Supply up to 1000 V, a plain resistance.",
  nudges: ["supply voltage 5 % lower", "a heater one fifth stronger"],
};

const heatingTime: ExplanationRecord = {
  words: (a) =>
    `How long the wort takes from the end of lautering to the boil. Wort and kettle take up what the heater delivers, less what the walls lose to the air${
      a.equipment.kettle.lid
        ? "; under the lid nothing is taken to evaporate"
        : " and what evaporates from the open surface"
    }. Heating that begins while the wort still runs off is left out. No time is given where the losses meet the power before the boil.`,
  equation: (a) => (a.equipment.kettle.lid ? HEATING_EQUATION : OPEN_HEATING_EQUATION),
  inputs: (a) => [
    ...ofLedger(a, "lauter.runOff", "kettle.preBoilGravity"),
    measure("Wort when heating begins", firstPhase(a.ledger, "heat to the boil")?.fromC ?? null, "temperature"),
    ...ofLedger(a, "kettle.boilingPoint"),
    ...heatingInputs(a),
    ...openSurface(a),
  ],
  sources: ["energy-balance", "bubnik-1995", "ashrae-carrier"],
  validRange:
    "0 to 35 °P, air from −30 to 60 °C; without a lid, evaporation is carried on past the pool temperatures at which it was studied.",
  nudges: [
    "supply voltage 5 % lower",
    "half the heat loss of the kettle",
    "without a lid while heating",
    "with a lid while heating",
  ],
};

function openSurface({ equipment, ambient }: ExplanationContext): ReturnType<typeof inUnit>[] {
  if (equipment.kettle.lid) return [];
  return [
    inUnit("Open surface", equipment.kettle.openArea, "m²"),
    measure("Relative humidity of the air", ambient.humidity, "fraction"),
  ];
}

const COLD_WATER_DENSITY = waterDensity(celsius(20));

const evaporated: ExplanationRecord = {
  words: (a) =>
    `The water that leaves as steam, given as the cold water it was. It is the boil-off that this kettle is known for, or less where the heater on this supply cannot hold it, times the length of the boil${
      a.equipment.kettle.lid ? "" : ", and what evaporates from the open kettle on the way there"
    }. Turning the heater down is left out.`,
  equation: (a) =>
    a.equipment.kettle.lid
      ? `boiled off = boil-off × boil / density of cold water; ${HELD}`
      : `boiled off = (boil-off × boil + evaporated while heating) / density of cold water; ${HELD}`,
  inputs: (a) => [
    figureInUnit("Boil-off of this kettle", a.equipment.kettle.boilOff, "kg/h"),
    inUnit("Boil-off that the heater can hold", holdableBoilOff(a), "kg/h"),
    measure("Boil", a.recipe.boil, "minutes"),
    ...(a.equipment.kettle.lid ? [] : [measure("Evaporated while heating", evaporatedBefore(a), "mass")]),
    inUnit("Density of cold water", COLD_WATER_DENSITY, "kg/L"),
    ...ofLedger(a, "kettle.boilingPoint"),
    ...heatingInputs(a),
  ],
  sources: ["mass-balance", "energy-balance", "nist-steam-tables", "ashrae-carrier"],
  validRange: "A boil like those that the boil-off was found in; air from −30 to 60 °C.",
  nudges: [
    "boil-off 0.5 kg/h higher",
    "15 minutes more boil",
    "supply voltage 5 % lower",
    "without a lid while heating",
    "with a lid while heating",
  ],
};

const HELD =
  "boil-off = that of this kettle, at most (P − U × (boiling point − air)) / heat of evaporation, with P = heater power × share that reaches the liquid, U = heat loss for each degree";

function holdableBoilOff({ equipment: { kettle, altitude }, ambient, ledger }: ExplanationContext): number {
  const held = boilOffRate({
    powerW: watts((ledger.quantities["kettle.power"] ?? 0) * kettle.heatShare.value),
    lossCoefficient: kettle.lossCoefficient.value,
    boilingC: boilingPointAt({ altitudeM: altitude }),
    ambientC: ambient.air,
  });
  return held.ok ? held.kilogramsPerHour : 0;
}

function evaporatedBefore(a: ExplanationContext): number | null {
  const steam = flowOf(a.ledger, "kettle", "lost", "steam");
  const boilOff = Math.min(a.equipment.kettle.boilOff.value, holdableBoilOff(a));
  // Rounding must not make it less than nothing.
  return steam === null ? null : Math.max(0, steam.kg - (boilOff * a.recipe.boil) / 60);
}

const postBoil: ExplanationRecord = {
  words:
    "What is left in the kettle when the heat goes off, at the boiling point. It is the run-off and the sugar and malt extract added, less the water boiled off, by mass. The room that hops and trub (the sludge of protein) take up is left out.",
  equation: "end of boil = (run-off + sugar and malt extract − boiled off, by mass) / density at the boiling point",
  inputs: (a) => [
    ...ofLedger(a, "lauter.runOff", "kettle.evaporated"),
    measure("Sugar and malt extract", a.sums.addedKg, "mass"),
    measure("Hot wort, by mass", flowOf(a.ledger, "kettle", "out", "hot wort")?.kg ?? null, "mass"),
    ...ofLedger(a, "kettle.postBoilGravity", "kettle.boilingPoint"),
  ],
  sources: DENSITIES,
  validRange: HOT_DENSITY,
  nudges: ["10 % more wort into the fermenter", "half the trub", "a tenth of the volume as water after the boil"],
};

const postBoilGravity: ExplanationRecord = {
  words:
    "How strong the wort is when the heat goes off. The boil takes water away and leaves the extract; sugar and malt extract added to the kettle bring theirs. Water added after the boil comes later.",
  equation:
    "gravity at the end of the boil = 100 × (extract dissolved − extract left in the grain + extract added) / hot wort, by mass",
  inputs: (a) => [
    ...ofLedger(a, "mash.dissolved", "lauter.lost"),
    measure("Extract of sugar and malt extract", a.sums.addedExtractKg, "mass"),
    ...ofLedger(a, "lauter.runOff", "kettle.evaporated"),
    measure("Hot wort, by mass", flowOf(a.ledger, "kettle", "out", "hot wort")?.kg ?? null, "mass"),
  ],
  sources: ["mass-balance"],
  validRange: "Up to 35 °P.",
  nudges: ["10 % more grist", "conversion 3 percentage points lower", "half the trub"],
};

/** How the numbers of the kettle are explained. */
export const KETTLE_RECORDS: RecordsOf<"kettle"> = {
  "kettle.preBoil": preBoil,
  "kettle.preBoilGravity": preBoilGravity,
  "kettle.boilingPoint": boilingPoint,
  "kettle.power": power,
  "kettle.heatingTime": heatingTime,
  "kettle.evaporated": evaporated,
  "kettle.postBoil": postBoil,
  "kettle.postBoilGravity": postBoilGravity,
};
