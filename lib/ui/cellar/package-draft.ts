import type { PrimingSugarKind } from "@/lib/calc/carbonation";
import type { Dimension, Recipe } from "@/lib/calc/ledger";
import { CONTAINER_KINDS } from "@/lib/model/cellar/containers";
import {
  filledLitres,
  missingLitres,
  planPackaging,
  type PackagingChoice,
  type PackagingPlan,
} from "@/lib/model/cellar/packaging-plan";
import { overRated, type OverRated } from "@/lib/model/cellar/package-pressure";
import type { FieldErrors } from "@/lib/model/field-errors";
import type { FilledContainer, Packaged } from "@/lib/model/log/log-event";
import type { Preferences } from "@/lib/model/preferences";
import { displayUnit } from "../display-unit";
import { fixedDigits } from "../fixed-digits";
import { parseAmount } from "../parse-amount";

/** One kind of container while it is typed. */
export interface ContainerDraft {
  readonly kind: string;
  readonly count: string;
  readonly rated: string;
}

/** Packaging while it is typed. */
export interface PackageDraft {
  readonly litres: string;
  readonly lost: string;
  readonly volumes: string;
  readonly sugar: PrimingSugarKind | "none";
  readonly celsius: string;
  readonly storage: string;
  readonly containers: readonly ContainerDraft[];
  readonly name: string;
  readonly why: string;
  readonly early: string;
  readonly note: string;
}

export const EMPTY_CONTAINER: ContainerDraft = { kind: CONTAINER_KINDS[1]?.name ?? "", count: "", rated: "" };

interface Known {
  readonly packaging: Recipe["packaging"];
  /** Beer that the plan expects, L. */
  readonly litres: number | null;
  /** Warmest reading since fermentation ended, °C; null without one. */
  readonly warmest: number | null;
}

export function emptyPackage({ packaging, litres, warmest }: Known, preferences: Preferences): PackageDraft {
  const shown = (value: number, dimension: Dimension, digits: number): string =>
    fixedDigits(displayUnit(dimension, preferences).fromLibrary(value), digits);
  return {
    litres: litres === null ? "" : shown(litres, "volume", 1),
    lost: "0",
    volumes: fixedDigits(packaging.carbonation, 1),
    sugar: packaging.priming ?? "none",
    celsius: shown(Math.max(warmest ?? packaging.warmest, packaging.warmest), "temperature", 0),
    storage: "",
    containers: [EMPTY_CONTAINER],
    ...{ name: "", why: "", early: "", note: "" },
  };
}

/** What was typed, as far as it can be read, and what follows from it. */
export interface ReadPackage {
  readonly errors: FieldErrors;
  readonly containers: readonly FilledContainer[];
  readonly filled: number;
  /** How much more the containers hold than there is beer, L. */
  readonly missing: number;
  readonly choice: PackagingChoice | null;
  readonly plan: PackagingPlan | null;
  readonly over: readonly OverRated[];
}

/** Reads packaging; every message says field, value and range. */
export function readPackage(
  draft: PackageDraft,
  packaging: Recipe["packaging"],
  preferences: Preferences,
): ReadPackage {
  const errors: Record<string, string> = {};
  const amount = (
    name: string,
    text: string,
    label: string,
    dimension: Dimension,
    min: number,
    max: number,
  ): number | null => {
    const read = parseAmount({ text, label, dimension, preferences, range: { min, max } });
    if (read.ok) return read.value;
    errors[name] = read.message;
    return null;
  };
  const litres = amount("package-litres", draft.litres, "Beer to package", "volume", 0.1, 5000);
  const volumesCo2 = amount("package-volumes", draft.volumes, "Carbonation", "carbonation", 0, 6);
  const celsius = amount("package-celsius", draft.celsius, "Warmest since fermentation", "temperature", -2, 45);
  const storageC = amount("package-storage", draft.storage, "Warmest place of storage", "temperature", -2, 45);
  const lostL = amount("package-lost", draft.lost, "Lost", "volume", 0, 5000);
  const containers = draft.containers.flatMap((each, i) => readContainer(each, i, errors, preferences) ?? []);
  const sugar = draft.sugar === "none" ? null : draft.sugar;
  const isWhole = litres !== null && volumesCo2 !== null && celsius !== null && storageC !== null;
  const choice = isWhole ? { litres, volumesCo2, celsius, storageC, sugar } : null;
  const filled = filledLitres(containers);
  return {
    errors,
    containers,
    filled,
    missing: litres === null ? 0 : missingLitres({ beerL: litres, lostL: lostL ?? 0, filledL: filled }),
    choice,
    plan: choice === null ? null : planPackaging(choice),
    over: choice === null ? [] : overRated({ ...choice, containers }, packaging.rated),
  };
}

const COUNT = /^\d{1,6}$/;

function readContainer(
  { kind, count, rated }: ContainerDraft,
  index: number,
  errors: Record<string, string>,
  preferences: Preferences,
): FilledContainer | null {
  const found = CONTAINER_KINDS.find(({ name }) => name === kind);
  const many = COUNT.test(count.trim()) ? Number(count) : Number.NaN;
  const isCount = many >= 1 && many <= 100_000;
  if (!isCount) {
    errors[`package-count-${String(index)}`] =
      `Number of containers “${count.trim().slice(0, 20)}” is not a whole number from 1 to 100000`;
  }
  const stated = parseAmount({
    ...{ text: rated, label: "Pressure that the maker states", dimension: "pressure" as const, preferences },
    range: { min: 0, max: 20 },
  });
  const isStated = rated.trim() !== "";
  if (isStated && !stated.ok) errors[`package-rated-${String(index)}`] = stated.message;
  if (found === undefined || !isCount || (isStated && !stated.ok)) return null;
  return { ...found, count: many, ratedBar: isStated && stated.ok ? stated.value : null };
}

/** What goes into the log, once nothing is wrong any more; null until then. */
export function packagedOf(draft: PackageDraft, read: ReadPackage, preferences: Preferences): Packaged | null {
  const { choice, plan, containers, over } = read;
  if (choice === null || plan === null || containers.length === 0 || Object.keys(read.errors).length > 0) return null;
  const lost = parseAmount({ text: draft.lost, label: "Lost", dimension: "volume", preferences });
  const { volumesCo2, celsius, storageC, sugar } = choice;
  const early = draft.early.trim();
  return {
    ...{ kind: "package", containers, volumesCo2, celsius, storageC, note: draft.note },
    method: sugar === null ? "forced" : "priming",
    sugar: sugar ?? "",
    sugarGrams: plan.sugarGrams ?? 0,
    lostL: lost.ok ? lost.value : 0,
    override: over.length === 0 ? null : { name: draft.name, why: draft.why },
    early: early === "" ? null : { why: early },
  };
}
