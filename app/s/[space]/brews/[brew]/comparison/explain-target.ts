import { explain, type ExplainedNumber } from "@/lib/calc/explain";
import { planOf } from "@/lib/model/brew-plan";
import { explainDerived } from "@/lib/ui/brew/explain-derived";
import { explainDifference } from "@/lib/ui/brew/explain-difference";
import { explainExtract } from "./explain-extract";
import { explainMeter } from "./explain-meter";
import { explainCause } from "./explain-cause";
import { explainReading } from "./explain-reading";
import { explainReconciled } from "./explain-reconciled";
import type { ExplainedTarget } from "./explained-target";
import type { Explained } from "./explained";

/** The explanation of one number of the comparison; null where there is no such number. */
export function explainTarget(target: ExplainedTarget, explained: Explained): ExplainedNumber | null {
  if (target.kind === "extract") return explainExtract(target, explained);
  if (target.kind === "cause") return explainCause(target, explained);
  const { id, column } = target;
  if (column === "planned") return explainPlanned(id, explained);
  const row = explained.comparison.rows.find(({ quantity }) => quantity === id);
  if (row === undefined || row.measured === null) return null;
  if (column === "reconciled") return explainReconciled(row, explained);
  if (column === "difference") return explainDifference(row, explained.preferences);
  if (id === "day.energy") return explainMeter(row, explained);
  return row.derived ? explainDerived(row, explained.comparison.rows) : explainReading(row, explained);
}

function explainPlanned(
  id: Extract<ExplainedTarget, { kind: "quantity" }>["id"],
  { brew }: Explained,
): ExplainedNumber | null {
  const plan = planOf(brew);
  if (plan === null) return null;
  const { recipe, equipment, ambient } = brew;
  return explain({ ledger: plan.ledger, recipe, equipment, ambient, id });
}
