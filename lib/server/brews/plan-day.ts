import "server-only";
import {
  brew,
  intervals,
  QUANTITY_IDS,
  type Ambient,
  type Dimension,
  type Equipment,
  type Ledger,
  type LedgerOutcome,
  type Limit,
  type Recipe,
} from "@/lib/calc/ledger";
import { buildRunSheet, type Step } from "@/lib/calc/runsheet";
import type { Prediction, Predictions } from "@/lib/model/brew";
import { AppError } from "../app-error";

interface Day {
  readonly recipe: Recipe;
  readonly equipment: Equipment;
  readonly ambient: Ambient;
}

interface PlannedDay {
  readonly steps: readonly Step[];
  readonly predicted: Predictions;
  /** That the wort needs, 10⁹; null where nobody knows. */
  readonly cells: number | null;
}

/** The run sheet and the predictions of a brew day; refuses a recipe that cannot be brewed on this equipment. */
export function planDay(day: Day): PlannedDay {
  const outcome = brew(day);
  if (!outcome.ok) throw new AppError("INVALID", whyNot(outcome));
  const { ledger } = outcome;
  const broken = ledger.limits.filter((limit) => !limit.ok);
  if (broken.length > 0) {
    throw new AppError("INVALID", `The recipe does not fit this equipment: ${broken.map(inWords).join("; ")}.`);
  }
  const { recipe, equipment } = day;
  const steps = buildRunSheet({ ledger, recipe, equipment });
  return { steps, predicted: predictions(ledger, day), cells: ledger.quantities["fermenter.cells"] };
}

function predictions(ledger: Ledger, day: Day): Predictions {
  const known = intervals(day);
  const predicted: Partial<Record<(typeof QUANTITY_IDS)[number], Prediction>> = {};
  for (const id of QUANTITY_IDS) {
    const value = ledger.quantities[id];
    const interval = known[id];
    if (value !== null && interval !== undefined) predicted[id] = { value, ...interval };
  }
  return predicted;
}

const REFUSALS: Readonly<Record<Exclude<LedgerOutcome, { ok: true }>["reason"], (value: string) => string>> = {
  "no-fermentable": () => "A recipe needs at least one fermentable: malt, sugar or malt extract.",
  "no-mash-step": () => "A recipe with grain in the mash needs a mash step.",
  "grain-holds-all-water": (value) => `The grain would hold all the water: ${value} L run off.`,
  "kettle-keeps-all-wort": (value) => `Kettle, hops and hoses would keep all the wort: ${value} L.`,
  "too-salty": (value) => `The water would hold ${value} mg/L of salts, which no brewing water does.`,
  "too-strong": (value) => `The wort would have ${value} °P, which no such amount of water dissolves.`,
  "too-bitter": (value) => `One hop addition would bring ${value} mg/L of alpha acids, more than wort takes up.`,
  "too-dark": (value) => `The wort would have ${value} malt colour units, and the arithmetic ends at 1000.`,
};

function whyNot({ reason, value }: Exclude<LedgerOutcome, { ok: true }>): string {
  return REFUSALS[reason](rounded(value));
}

/** Units of the dimensions in which equipment has limits. */
const UNIT: Partial<Record<Dimension, string>> = {
  mass: " kg",
  volume: " L",
  thickness: " L/kg",
  temperature: " °C",
  power: " W",
  carbonation: " volumes of CO₂",
};

function inWords({ id, value, bound, side, dimension }: Limit): string {
  const unit = UNIT[dimension] ?? "";
  return `${id} ${rounded(value)}${unit}, ${side} ${rounded(bound)}${unit}`;
}

function rounded(value: number): string {
  return String(Number(value.toPrecision(3)));
}
