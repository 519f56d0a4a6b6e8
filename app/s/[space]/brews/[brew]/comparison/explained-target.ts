import type { CauseId, ExtractLineId, QuantityCauses } from "@/lib/calc/compare";
import type { QuantityId } from "@/lib/calc/ledger";
import { isComparisonColumn, isQuantityId, type ComparisonColumn } from "./comparison-columns";

/** A number of the comparison that somebody wants explained. */
export type ExplainedTarget =
  | { readonly kind: "quantity"; readonly id: QuantityId; readonly column: ComparisonColumn }
  | { readonly kind: "extract"; readonly id: ExtractLineId; readonly column: "planned" | "measured" }
  | { readonly kind: "cause"; readonly id: QuantityCauses["quantity"]; readonly cause: CauseId };

interface Query {
  readonly explain?: string | string[];
  readonly of?: string | string[];
}

/** The number that the address asks for, so that an explanation can be sent to somebody. */
export function askedFor({ explain, of }: Query): ExplainedTarget | null {
  if (typeof explain !== "string" || !isQuantityId(explain)) return null;
  const column = typeof of === "string" && isComparisonColumn(of) ? of : "planned";
  return { kind: "quantity", id: explain, column };
}

/** The part of an address that asks for it. */
export function queryFor(target: ExplainedTarget | null): string {
  return target?.kind === "quantity" ? `?explain=${target.id}&of=${target.column}` : "";
}
