import { z } from "zod";
import {
  WAY_OUT_KINDS,
  type AdaptOutcome,
  type FermentableStock,
  type HopStock,
  type WayOut,
  type WayOutKind,
} from "@/lib/calc/adapt";
import type { Equipment, Ledger, Recipe } from "@/lib/calc/ledger";
import { millilitres, type Millilitres } from "@/lib/calc/units";
import type { AcidSolution } from "@/lib/calc/water";
import { acidOfLot, fermentableOfLot, hopOfLot, type LotFigures } from "./lot";
import { counted, revisionNumber } from "./measured";
import type { RecipeContent } from "./recipe-content";
import { adaptTo, type WrittenIntention } from "./recipe-intention";
import { oneOf, recordId, written } from "./written";

const ROW_PATH = /^(?:(?:fermentables|hops)\.\d{1,2}|salts\.[A-Za-z]{1,40}|yeast|acid)$/;

/** What a brewer chose for one revision on one kettle. */
export const adaptationChoice = z.strictObject({
  volume: oneOf("Volume", ["usual", "written"]),
  /** Name of the way out; null brews it as intended. */
  way: written("Way out", 80).nullable(),
  /** The lot used for a row of the recipe, by the path of the row: "hops.2". */
  lots: z
    .record(z.string().regex(ROW_PATH, "This is not a row of a recipe"), recordId)
    .refine((lots) => Object.keys(lots).length <= 80, { message: "A recipe has at most 80 rows" }),
});
export type AdaptationChoice = z.output<typeof adaptationChoice>;

/** A choice as it is sent: 0 as the version says that there was none yet. */
export const adaptationChange = z.strictObject({
  recipeId: recordId,
  rev: revisionNumber,
  equipmentId: recordId,
  lockVersion: counted("Version", { min: 0, max: 1_000_000_000 }),
  choice: adaptationChoice,
});
export type AdaptationChange = z.output<typeof adaptationChange>;

/** A choice as it is kept. */
export interface Adaptation {
  readonly recipeId: string;
  readonly rev: number;
  readonly equipmentId: string;
  readonly lockVersion: number;
  readonly choice: AdaptationChoice;
  readonly changedByName: string;
  readonly changedAt: Date;
}

export const NO_CHOICE: AdaptationChoice = { volume: "usual", way: null, lots: {} };

/** What a way out is called in a form and in a stored choice. */
export function wayName({ kind, also }: Pick<WayOut, "kind" | "also">): string {
  return also === null ? kind : `${kind} and ${also}`;
}

/** A recipe as it is brewed on a kettle, once everything is chosen. */
export interface ChosenRecipe {
  readonly recipe: Recipe;
  readonly ledger: Ledger;
  /** The way out that it takes; null where it fits as intended. */
  readonly way: WayOut | null;
}

export interface Adapted {
  readonly outcome: AdaptOutcome;
  /** null where it does not fit, and no way out was chosen or the chosen one is no longer there. */
  readonly chosen: ChosenRecipe | null;
  /** Whether a way out was chosen that this kettle no longer has. */
  readonly isWayLost: boolean;
}

/**
 * The recipe on one kettle with its brewer's lots, along the way out that was chosen. Where only that one is `wanted`, the
 * others are not searched, which a table of a thousand kettles could not wait for.
 */
export function adaptWith(a: {
  readonly content: RecipeContent;
  readonly written: WrittenIntention;
  readonly equipment: Equipment;
  readonly choice: AdaptationChoice;
  /** The lots of the choice, by their identifiers; one that is missing leaves the recipe's own figures. */
  readonly lots: ReadonlyMap<string, LotFigures>;
  readonly wanted?: "every way" | "the chosen way";
}): Adapted {
  const { content, equipment, choice } = a;
  const intention = withLots(a.written.intention, choice, a.lots);
  const ways = a.wanted === "the chosen way" ? waysFor(choice.way) : null;
  const outcome = adaptTo({ content, intention, equipment, volume: choice.volume, ways });
  if (outcome.ok) {
    return { outcome, chosen: { recipe: outcome.recipe, ledger: outcome.ledger, way: null }, isWayLost: false };
  }
  const way = outcome.waysOut.find((each) => wayName(each) === choice.way) ?? null;
  const chosen = way === null ? null : { recipe: way.recipe, ledger: way.ledger, way };
  return { outcome, chosen, isWayLost: choice.way !== null && way === null };
}

/** null searches all of them, which a way of two changes takes. */
function waysFor(name: string | null): readonly WayOutKind[] | null {
  if (name === null) return [];
  const kind = WAY_OUT_KINDS.find((each) => each === name);
  if (kind !== undefined) return [kind];
  return WAY_OUT_KINDS.some((each) => name.startsWith(`${each} and `)) ? null : [];
}

/** What has rows of fermentables and hops, and perhaps an acid: a recipe with its amount, or an intention without. */
interface Rows<F, H, A> {
  readonly fermentables: readonly F[];
  readonly hops: readonly H[];
  readonly water: { readonly acid: A | null };
}

interface SomeAcid {
  readonly solution: AcidSolution;
  readonly ml?: Millilitres;
}

/** The same rows as the chosen lots are. */
export function withLots<F extends FermentableStock, H extends HopStock, A extends SomeAcid, R extends Rows<F, H, A>>(
  rows: R & Rows<F, H, A>,
  choice: AdaptationChoice,
  lots: ReadonlyMap<string, LotFigures>,
): R {
  const lotOf = (path: string): LotFigures | undefined => lots.get(choice.lots[path] ?? "");
  const [acid, acidLot] = [rows.water.acid, lotOf("acid")];
  return {
    ...rows,
    water: { ...rows.water, acid: acid !== null && acidLot?.kind === "acid" ? asStrong(acid, acidLot) : acid },
    fermentables: rows.fermentables.map((row, index) => {
      const lot = lotOf(`fermentables.${String(index)}`);
      return lot?.kind === "fermentable" ? fermentableOfLot(row, lot) : row;
    }),
    hops: rows.hops.map((row, index) => {
      const lot = lotOf(`hops.${String(index)}`);
      return lot?.kind === "hop" ? hopOfLot(row, lot) : row;
    }),
  };
}

/** Another strength; where the amount is said, as much acid in another amount of solution. */
function asStrong<A extends SomeAcid>(acid: A, lot: Extract<LotFigures, { readonly kind: "acid" }>): A {
  const solution = acidOfLot(acid.solution, lot);
  if (acid.ml === undefined) return { ...acid, solution };
  const ratio = strengthOf(acid.solution) / strengthOf(solution);
  return { ...acid, solution, ml: millilitres(acid.ml * ratio) };
}

/** Acid in a volume of its solution, kg/L. */
function strengthOf({ massFraction, density }: AcidSolution): number {
  return massFraction * density;
}
