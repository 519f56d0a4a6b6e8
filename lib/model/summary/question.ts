import { z } from "zod";
import type { ComparedAs } from "@/lib/calc/compare";
import { QUANTITIES, type Dimension, type QuantityId } from "@/lib/calc/ledger";
import { BREW_STATES } from "../brew";
import { oneOf, recordId } from "../written";

/** What brews are compared by, in the order of the process: what is measured and what follows from it. */
export const ASKED_QUANTITIES = [
  "water.mash",
  "water.strike",
  "mash.firstWort",
  "lauter.efficiency",
  "kettle.preBoil",
  "kettle.preBoilGravity",
  "kettle.heatingTime",
  "kettle.evaporated",
  "kettle.postBoil",
  "stand.lost",
  "fermenter.volume",
  "fermenter.originalExtract",
  "fermenter.efficiency",
  "fermenter.attenuation",
  "fermenter.finalExtract",
  "package.volume",
  "package.alcohol",
  "day.energy",
] as const satisfies readonly QuantityId[];

export const GROUPINGS = ["brewer", "kettle", "kind of kettle", "revision", "shared brew"] as const;
export type Grouping = (typeof GROUPINGS)[number];

export const COMPARED_AS = ["measured", "difference"] as const satisfies readonly ComparedAs[];

/** A day as people write it in an address; nothing stands for no limit. */
const day = z
  .union([z.literal(""), z.iso.date({ error: "a day is written 2026-03-14" })])
  .transform((text) => (text === "" ? null : text));
const record = z.union([z.literal(""), recordId]).transform((id) => (id === "" ? null : id));
const state = z.union([z.literal(""), oneOf("State", BREW_STATES)]).transform((word) => (word === "" ? null : word));

/** What is asked of the log: which number, grouped how, of which brews. It is what an address and a saved comparison hold. */
export const comparisonQuestion = z.strictObject({
  quantity: oneOf("Quantity", ASKED_QUANTITIES),
  as: oneOf("Compared as", COMPARED_AS),
  group: oneOf("Group", GROUPINGS),
  recipe: record,
  sharedBrew: record,
  brewer: record,
  state,
  from: day,
  to: day,
});
export type ComparisonQuestion = z.output<typeof comparisonQuestion>;

const BY_PLAN: ReadonlySet<Dimension> = new Set<Dimension>(["volume", "minutes", "temperature", "energy"]);

/** Sizes of batches and times differ from kettle to kettle by plan, so they are held against it; a beer is what it is. */
export function usuallyComparedAs(quantity: QuantityId): ComparedAs {
  const { dimension } = QUANTITIES[quantity];
  return BY_PLAN.has(dimension) ? "difference" : "measured";
}

type Asked = Readonly<Record<string, string | readonly string[] | undefined>>;

/** The question of an address. What it does not say, or says wrongly, is as usual. */
export function questionOf(asked: Asked): ComparisonQuestion {
  const said = (name: string): string => (typeof asked[name] === "string" ? asked[name] : "");
  const quantity = ASKED_QUANTITIES.find((id) => id === said("quantity")) ?? "fermenter.originalExtract";
  const read = <T>(schema: z.ZodType<T>, name: string): T | null => schema.safeParse(said(name)).data ?? null;
  return {
    quantity,
    as: COMPARED_AS.find((as) => as === said("as")) ?? usuallyComparedAs(quantity),
    group: GROUPINGS.find((group) => group === said("group")) ?? "brewer",
    ...{ recipe: read(record, "recipe"), sharedBrew: read(record, "sharedBrew"), brewer: read(record, "brewer") },
    ...{ state: read(state, "state"), from: read(day, "from"), to: read(day, "to") },
  };
}

/** The question as the parameters of an address; what sets no limit is left out. */
export function addressOfQuestion(question: ComparisonQuestion): string {
  const said = Object.entries(question).flatMap(([name, value]) => (value === null ? [] : [[name, value]]));
  return new URLSearchParams(said).toString();
}

/** The parameters of an address, each once. */
export function askedOf(
  parameters: Readonly<Record<string, string | readonly string[] | undefined>>,
): Record<string, string> {
  const said = Object.entries(parameters).flatMap(([name, value]) =>
    typeof value === "string" ? [[name, value]] : [],
  );
  return Object.fromEntries(said) as Record<string, string>;
}
