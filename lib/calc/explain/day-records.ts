import { WATER_HEAT_CAPACITY } from "../heat";
import { HANDLING } from "../ledger/handling";
import type { ExplanationInput } from "./explanation";
import type { ExplanationContext } from "./explanation-context";
import { measure, ofLedger } from "./explanation-inputs";
import type { ExplanationRecord, RecordsOf } from "./explanation-record";
import { energyIn, flowOf, minutesIn } from "./ledger-flows";

const time: ExplanationRecord = {
  words:
    "From starting to weigh out to the clean kettle. Heating, cooling and rests come from this recipe on this kettle; preparing, stirring in, draining, sparging, transferring and cleaning take the time that they usually take. Nothing is counted as done side by side, and no pause is in it. No time is given where a heating never ends.",
  equation: "brew day = Σ of all phases, one after the other",
  inputs: (a) => [
    measure("Heating the strike water, of all mashes", minutesIn(a.ledger, "heat strike water"), "minutes"),
    ...ofLedger(a, "mash.time", "kettle.heatingTime"),
    measure("Boil", minutesIn(a.ledger, "boil"), "minutes"),
    ...(a.recipe.stand === null
      ? []
      : [...ofLedger(a, "stand.coolingTime"), measure("Stand", minutesIn(a.ledger, "stand"), "minutes")]),
    ...ofLedger(a, "stand.chillTime"),
    measure("Preparing", minutesIn(a.ledger, "prepare"), "minutes"),
    measure(
      "Stirring in, draining and sparging",
      minutesIn(a.ledger, "dough in", "lift and drain", "sparge"),
      "minutes",
    ),
    measure("Transferring and cleaning", minutesIn(a.ledger, "transfer", "clean"), "minutes"),
  ],
  sources: ["energy-balance", "trade-practice"],
  validRange: "Times of the hands are common practice; the run sheet is planned anew from what really happens.",
  nudges: ["15 minutes more boil", "supply voltage 5 % lower", "a chiller half as strong"],
};

const energy: ExplanationRecord = {
  words:
    "The electricity that heating takes on this day, from cold water to the end of the boil. While it heats the heater runs at full power; in a rest or at the boil it gives what is lost there. Sparge water counts with the heat that it takes up, whatever heats it, and pumps and fridges are left out.",
  equation:
    "energy = Σ power × time of each phase + sparge water × 4187 J/(kg·K) × (76 °C − tap water); at the boil, power = (boil-off × heat of evaporation + heat loss × (boiling point − air)) / share that reaches the liquid",
  inputs: energyInputs,
  sources: ["energy-balance", "nist-steam-tables"],
  validRange: "Boiling points up to 102 °C, air from −30 to 60 °C.",
  nudges: ["half the heat loss of the kettle", "15 minutes more boil", "tap water 5 °C colder"],
};

function energyInputs(a: ExplanationContext): ExplanationInput[] {
  const spargeKg = flowOf(a.ledger, "lauter", "in", "sparge water")?.kg ?? 0;
  const spargeKWh = (spargeKg * WATER_HEAT_CAPACITY * Math.max(0, HANDLING.spargeC - a.ambient.tapWater)) / 3.6e6;
  return [
    measure("Heating the strike water", energyIn(a.ledger, "heat strike water"), "energy"),
    measure("Mash, rests and heating between them", energyIn(a.ledger, "rest", "heat between rests"), "energy"),
    measure("Heating to the boil", energyIn(a.ledger, "heat to the boil"), "energy"),
    measure("Boil", energyIn(a.ledger, "boil"), "energy"),
    measure("Sparge water", spargeKWh, "energy"),
    ...ofLedger(a, "kettle.power", "water.heatingTime", "kettle.heatingTime"),
  ];
}

/** How the numbers of the whole day are explained. */
export const DAY_RECORDS: RecordsOf<"day"> = {
  "day.time": time,
  "day.energy": energy,
};
