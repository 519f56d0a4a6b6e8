import { explain, type Explanation } from "@/lib/calc/explain";
import { brew, type Ambient, type Equipment, type Ledger, type QuantityId, type Recipe } from "@/lib/calc/ledger";
import { kilograms, litres, litresPerKilogram, watts, wattsPerKelvin } from "@/lib/calc/units";
import { brewInput, exactly } from "./brewed";
import { garageKettle, paleAle } from "./brewing-fixtures";

export interface ExplainedBrew {
  readonly recipe: Recipe;
  readonly equipment: Equipment;
  readonly ambient: Ambient;
  readonly ledger: Ledger;
}

function explainedBrew(changes: Parameters<typeof brewInput>[0]): ExplainedBrew {
  const input = brewInput(changes);
  const outcome = brew(input);
  if (!outcome.ok) throw new Error(`no ledger: ${outcome.reason} ${outcome.value}`);
  return { ...input, ledger: outcome.ledger };
}

const { chiller } = garageKettle;

/** Brews that between them take every way through the ledger; all invented. */
export const EXPLAINED_BREWS = {
  "pale ale, poured over a basket": explainedBrew({}),
  "pale ale without sparging, into a keg": explainedBrew({
    recipe: { thickness: null, stand: null, packaging: { ...paleAle.packaging, container: "keg", priming: null } },
    lauter: { method: "none" },
    equipment: { chiller: { ...chiller, kind: "counterflow" } },
  }),
  "stepped mash in an unheated tun, batch sparge, open kettle": explainedBrew({
    recipe: { thickness: litresPerKilogram(4) },
    mash: { kind: "tun", heated: false },
    lauter: { method: "batch", deadSpace: exactly(litres(1)) },
    kettle: { lid: false },
    equipment: { chiller: { ...chiller, kind: "counterflow" } },
  }),
  "two mashes, continuous sparge, water after the boil": explainedBrew({
    recipe: { mashes: 2, topUp: litres(2) },
    lauter: { method: "continuous" },
    equipment: { chiller: { ...chiller, kind: "ice bath" } },
  }),
  "no chiller and a heater too weak for the boil": explainedBrew({
    kettle: { lossCoefficient: { ...garageKettle.kettle.lossCoefficient, value: wattsPerKelvin(40) } },
    equipment: { chiller: { ...chiller, kind: "none" } },
  }),
  "a heater that holds no more than a gentle boil": explainedBrew({ kettle: { ratedPower: watts(1600) } }),
  "malt extract alone": explainedBrew({
    recipe: {
      fermentables: paleAle.fermentables
        .filter((row) => row.station === "kettle")
        .map((row) => ({ ...row, kind: "malt extract" as const, kg: kilograms(3), fermentability: null })),
    },
  }),
} as const;

export const PALE_ALE = EXPLAINED_BREWS["pale ale, poured over a basket"];

export function explanationOf(id: QuantityId, of: ExplainedBrew = PALE_ALE): Explanation {
  return explain({ ...of, id });
}

/** One input of an explanation, which must be there and have a value. */
export function inputOf(explanation: Pick<Explanation, "label" | "inputs">, label: string): number {
  const value = explanation.inputs.find((input) => input.label === label)?.value ?? null;
  if (value === null) throw new Error(`“${explanation.label}” has no input “${label}”`);
  return value;
}
