import type { Chiller, PhaseName } from "../ledger";
import type { ExplanationInput } from "./explanation";
import type { ExplanationContext } from "./explanation-context";
import { figure, figureInUnit, inUnit, measure, ofLedger } from "./explanation-inputs";
import type { ExplanationRecord, RecordsOf } from "./explanation-record";
import { firstPhase } from "./ledger-flows";

const lost: ExplanationRecord = {
  words:
    "The wort that stays behind between kettle and fermenter, as if at 20 °C. Trub (the sludge of protein and spent hops) keeps some, chiller and hoses keep some, and the hops of this recipe soak up more. It takes its extract and its bitterness with it.",
  equation: "left behind = trub + chiller and hoses + absorption of hops × hops in the kettle",
  inputs: (a) => [
    figure("Trub", a.equipment.kettle.trub, "volume"),
    figure("Chiller and hoses", a.equipment.kettle.transfer, "volume"),
    figureInUnit("Absorption of hops", a.equipment.hopAbsorption, "L/kg"),
    measure("Hops in the kettle", 1000 * a.sums.kettleHopsKg, "grams"),
  ],
  sources: ["mass-balance"],
  validRange: "As long as some wort is left to run out.",
  nudges: ["half the trub", "10 % more hops in the kettle", "hops that keep 1 L/kg more wort"],
};

const coolingTime: ExplanationRecord = {
  words: (a) =>
    a.recipe.stand === null
      ? "The time to cool from the boil to the stand, a rest of the hopped wort below boiling. This recipe has none, so there is no such time."
      : `The time to cool from the boil to the stand, a rest of the hopped wort below boiling. ${
          a.equipment.chiller.kind === "counterflow"
            ? "The wort runs through the chiller and back, so that the whole kettle cools evenly."
            : SENTENCE[a.equipment.chiller.kind]
        } Starting and stopping the chiller are left out.`,
  equation: (a) => EQUATION[a.equipment.chiller.kind === "counterflow" ? "immersion" : a.equipment.chiller.kind],
  inputs: (a) => (a.recipe.stand === null ? [] : coolingInputs(a, "cool to the stand")),
  sources: ["energy-balance", "kays-london-1984", "bubnik-1995"],
  validRange: "0 to 35 °P, cooling water from 0 to 60 °C, air from −30 to 60 °C.",
  nudges: ["stand 5 °C hotter", "a chiller half as strong", "half the flow of cooling water", "air 10 °C colder"],
};

const chillTime: ExplanationRecord = {
  words: (a) =>
    `The time from the stand, or from the boil where there is none, to the temperature for the yeast. ${
      SENTENCE[a.equipment.chiller.kind]
    } Where the coolant is too warm for that, it stops a few degrees above the coolant and the fermenter does the rest.`,
  equation: (a) => EQUATION[a.equipment.chiller.kind],
  inputs: (a) => coolingInputs(a, "chill"),
  sources: ["energy-balance", "kays-london-1984", "bubnik-1995", "trade-practice"],
  validRange: "0 to 35 °P, cooling water from 0 to 60 °C, air from −30 to 60 °C.",
  nudges: [
    "a chiller half as strong",
    "cooling water 5 °C warmer",
    "half the flow of cooling water",
    "air 10 °C colder",
    "10 % more wort into the fermenter",
  ],
};

const SENTENCE: Readonly<Record<Chiller["kind"], string>> = {
  immersion: "A coil in the kettle cools all the wort at once, quickly at first and ever more slowly.",
  counterflow: "The wort leaves through the chiller as fast as it can be cooled, and the rest waits hot in the kettle.",
  "ice bath": "The kettle stands in melting ice and cools quickly at first and ever more slowly.",
  none: "Nothing but the air cools the kettle, quickly at first and ever more slowly.",
};

const MIXED = "time = C / (G + U) × ln((from − floor) / (to − floor)), with C = heat capacity of wort and kettle";

const EQUATION: Readonly<Record<Chiller["kind"], string>> = {
  immersion: `${MIXED}, G = F × (1 − exp(−conductance / F)), F = flow of cooling water × 4178 J/(L·K), U = heat loss, floor = (G × cooling water + U × air) / (G + U)`,
  "ice bath": `${MIXED}, G = conductance, U = heat loss, floor = (G × 0 °C + U × air) / (G + U)`,
  none: `${MIXED}, G = 0, U = heat loss, floor = air`,
  counterflow:
    "time = heat capacity of the wort / W, with W the largest flow of wort, in W/K, for which conductance × log-mean temperature difference = W × (from − to)",
};

function coolingInputs(a: ExplanationContext, name: PhaseName): ExplanationInput[] {
  const phase = firstPhase(a.ledger, name);
  return [
    ...ofLedger(a, "kettle.postBoil", "kettle.postBoilGravity"),
    measure("From", phase?.fromC ?? null, "temperature"),
    measure("To", phase?.toC ?? null, "temperature"),
    ...chillerInputs(a),
    ...(a.equipment.chiller.kind === "counterflow" && name === "chill" ? [] : kettleInputs(a)),
  ];
}

// Wort that runs out through a chiller leaves the kettle behind; otherwise kettle and wort cool together.
function kettleInputs({ equipment: { kettle }, ambient }: ExplanationContext): ExplanationInput[] {
  return [
    figureInUnit("Heat loss of the kettle", kettle.lossCoefficient, "W/K"),
    inUnit("Heat capacity of the empty kettle", kettle.heatCapacity, "J/K"),
    measure("Air", ambient.air, "temperature"),
  ];
}

function chillerInputs({ equipment: { chiller } }: ExplanationContext): ExplanationInput[] {
  if (chiller.kind === "none") return [];
  const conductance = figureInUnit("Conductance of the chiller", chiller.conductance, "W/K");
  return chiller.kind === "ice bath"
    ? [conductance]
    : [
        conductance,
        inUnit("Flow of cooling water", chiller.coolantFlow, "L/min"),
        measure("Cooling water", chiller.coolant, "temperature"),
      ];
}

/** How the numbers between boil and fermenter are explained. */
export const STAND_RECORDS: RecordsOf<"stand"> = {
  "stand.lost": lost,
  "stand.coolingTime": coolingTime,
  "stand.chillTime": chillTime,
};
