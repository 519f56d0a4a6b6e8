import { waterDensity, wortDensity } from "../gravity";
import { celsius as inCelsius, degreesPlato } from "../units";
import type { Ambient } from "./equipment";
import type { Ledger, PhaseName, Stream } from "./ledger";
import type { Station } from "./quantity-catalogue";
import type { Recipe } from "./recipe";
import { requireAmbient, requireRecipe } from "./require-brew";

/** A flow of a station with its volume and strength. */
export interface StreamAccount extends Stream {
  /** Extract by mass, °P; null for what is no water, wort or beer. Beer counts its real extract. */
  readonly plato: number | null;
  /** L; null for what is no water, wort or beer. */
  readonly litresAt20: number | null;
  /** Temperature that it leaves the station with, °C, and its volume there, L. */
  readonly celsius: number | null;
  readonly litres: number | null;
}

/** One station of the process with all that goes through it. */
export interface StationAccount {
  readonly station: Station;
  readonly in: readonly StreamAccount[];
  readonly lost: readonly StreamAccount[];
  readonly out: readonly StreamAccount[];
  readonly minutes: number;
  /** Electricity of the station's phases; sparge water is heated elsewhere and counted with the day. */
  readonly energyKWh: number;
  readonly temperatureCurve: Ledger["temperatureCurve"];
  /** At room temperature; from the mash on. null where no grain is mashed. */
  readonly ph: number | null;
  /** mg/L iso-alpha acids in what leaves the station; null before the boil. */
  readonly bitterness: number | null;
  /** EBC of what leaves the station; null before the boil. */
  readonly colour: number | null;
}

const STATION_OF: Readonly<Record<PhaseName, Station>> = {
  prepare: "water",
  "heat strike water": "water",
  "dough in": "mash",
  rest: "mash",
  "heat between rests": "mash",
  "lift and drain": "lauter",
  sparge: "lauter",
  "heat to the boil": "kettle",
  boil: "kettle",
  "cool to the stand": "stand",
  stand: "stand",
  chill: "stand",
  transfer: "fermenter",
  clean: "package",
};

/** Not a liquid: what is weighed and never poured. */
const DRY: ReadonlySet<string> = new Set([
  "grist",
  "grain",
  "grain, with what did not dissolve",
  "sugar and malt extract",
  "steam",
  "turned to alcohol, CO₂ and yeast",
]);

const HOTTEST_DENSITY_C = 100;
const STRONGEST_PLATO = 35;

/**
 * Spells a ledger out station by station: masses with their volumes and strengths, time, energy and temperatures.
 *
 * `brew` keeps what it needs for its numbers; this adds what a reader wants to see at each station, when it is looked at.
 *
 * @param a.ledger - What `brew` made of the recipe.
 * @param a.recipe - The recipe.
 * @param a.ambient - The day.
 * @returns The seven stations in the order of the process; a flow out of one is the flow into the next.
 * @validRange Any ledger of `brew`; volumes above 100 °C count with the density at 100 °C.
 * @throws {@link OutOfRangeError} when ledger and recipe do not belong together and a strength comes out impossible.
 * @source Density of sucrose solutions (docs/sources.md#nbs-440-1942, docs/sources.md#bubnik-1995); mass balance
 * (docs/sources.md#mass-balance)
 * @example
 * stationAccounts({ ledger, recipe, ambient })[3].out[0]; // { name: "hot wort", kg: 24.2, litres: 24.3, celsius: 99.8, … }
 */
export function stationAccounts({
  ledger,
  recipe,
  ambient,
}: {
  readonly ledger: Ledger;
  readonly recipe: Recipe;
  readonly ambient: Ambient;
}): readonly StationAccount[] {
  requireRecipe(recipe);
  requireAmbient(ambient);
  const leaves = temperatures(ledger, recipe, ambient);
  let comesC: number = ambient.tapWater;
  return ledger.balances.map((balance) => {
    const { station } = balance;
    const leavesC = leaves[station];
    const phases = ledger.phases.filter((phase) => STATION_OF[phase.name] === station);
    const account: StationAccount = {
      station,
      in: balance.in.map((stream) => streamAccount(stream, comesC)),
      lost: balance.lost.map((stream) => streamAccount(stream, leavesC)),
      out: balance.out.map((stream) => streamAccount(stream, leavesC)),
      minutes: phases.reduce((sum, phase) => sum + phase.minutes, 0),
      energyKWh: phases.reduce((sum, phase) => sum + (phase.powerW * phase.minutes) / 60_000, 0),
      temperatureCurve: phases.flatMap((phase) => [
        [phase.startMin, phase.fromC] as const,
        [phase.startMin + phase.minutes, phase.toC] as const,
      ]),
      ...propertiesAt(station, ledger),
    };
    comesC = leavesC;
    return account;
  });
}

/** How warm what leaves each station is, °C. */
function temperatures(ledger: Ledger, recipe: Recipe, ambient: Ambient): Readonly<Record<Station, number>> {
  const endOf = (name: PhaseName): number | undefined => ledger.phases.findLast((phase) => phase.name === name)?.toC;
  const mashC = recipe.mash.at(-1)?.celsius ?? ambient.tapWater;
  return {
    water: ambient.tapWater,
    mash: mashC,
    lauter: endOf("sparge") ?? mashC,
    kettle: endOf("boil") ?? mashC,
    stand: endOf("transfer") ?? recipe.yeast.celsius,
    fermenter: recipe.yeast.celsius,
    package: recipe.packaging.warmest,
  };
}

function streamAccount(stream: Stream, atC: number): StreamAccount {
  if (DRY.has(stream.name)) return { ...stream, plato: null, litresAt20: null, celsius: null, litres: null };
  const plato = stream.kg > 0 ? (100 * stream.extractKg) / stream.kg : 0;
  const density = (celsius: number): number =>
    stream.extractKg === 0
      ? waterDensity(inCelsius(celsius))
      : wortDensity({ plato: degreesPlato(Math.min(STRONGEST_PLATO, plato)), celsius: inCelsius(celsius) });
  const measuredC = Math.min(HOTTEST_DENSITY_C, Math.max(0, atC));
  return {
    ...stream,
    plato,
    litresAt20: stream.kg / density(20),
    celsius: atC,
    litres: stream.kg / density(measuredC),
  };
}

function propertiesAt(station: Station, { quantities }: Ledger): Pick<StationAccount, "ph" | "bitterness" | "colour"> {
  const mashed = station !== "water";
  const boiled = mashed && station !== "mash" && station !== "lauter";
  const bittered = boiled && station !== "kettle";
  return {
    ph: mashed ? quantities["mash.ph"] : null,
    // What the stand and the chill add is known at their end only.
    bitterness: bittered ? quantities["fermenter.bitterness"] : null,
    colour: boiled ? quantities["fermenter.colour"] : null,
  };
}
