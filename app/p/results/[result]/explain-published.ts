import type { ComparedRow } from "@/lib/calc/compare";
import type { ExplainedNumber } from "@/lib/calc/explain";
import { QUANTITIES } from "@/lib/calc/ledger";
import type { Preferences } from "@/lib/model/preferences";
import { comparedRowOf, type ResultColumn, type ResultContent } from "@/lib/model/published-result";
import type { AcrossTarget } from "@/lib/ui/across/across-table";
import { explainDerived } from "@/lib/ui/brew/explain-derived";
import { explainDifference } from "@/lib/ui/brew/explain-difference";
import { uncertaintyText } from "@/lib/ui/brew/reading-uncertainty";
import { displayUnit } from "@/lib/ui/display-unit";

const NOT_SHOWN = "Its inputs belong to one brewer’s kettle and are not published.";

/** How a published number came about, from what is published; null where there is no such number. */
export function explainPublished(
  { columns, accounts }: Pick<ResultContent, "columns" | "accounts">,
  { column, id, of }: AcrossTarget,
  preferences: Preferences,
): ExplainedNumber | null {
  const found = columns.find(({ name }) => name === column);
  const row = found === undefined ? null : comparedRowOf(found, id);
  if (found === undefined || row === null) return null;
  if (of === "planned") return explainPlanned(row, accounts);
  if (of === "difference") return explainDifference(row, preferences);
  return row.derived ? explainDerived(row, rowsOf(found)) : explainReading(row, preferences);
}

function rowsOf(column: ResultColumn): readonly ComparedRow[] {
  return column.rows.flatMap(({ quantity }) => comparedRowOf(column, quantity) ?? []);
}

function explainPlanned(row: ComparedRow, accounts: ResultContent["accounts"]): ExplainedNumber | null {
  const account = Object.entries(accounts).find(([id]) => id === row.quantity)?.[1];
  if (account === undefined) return null;
  const { label, dimension } = QUANTITIES[row.quantity];
  const bounds = row.interval === null ? [] : [row.interval.low80, row.interval.high80];
  return {
    ...account,
    label: `${label}, planned`,
    value: row.planned,
    dimension,
    words: `${account.words} ${NOT_SHOWN}`,
    inputs: bounds.map((value, i) => ({
      label: `80 % interval, ${i === 0 ? "low" : "high"} end`,
      value,
      dimension,
      unit: "",
    })),
    whatIf: [],
  };
}

function explainReading(row: ComparedRow, preferences: Preferences): ExplainedNumber {
  const { label, dimension } = QUANTITIES[row.quantity];
  const { measured, measuredSd } = row;
  const uncertainty =
    measured === null || measuredSd === null
      ? null
      : Number(uncertaintyText(measuredSd, dimension, preferences, measured));
  return {
    label: `${label}, measured`,
    value: measured,
    dimension,
    words: "Read by the brewer on an instrument of their own. Of several readings of one quantity the last one counts.",
    equation: "the reading as it was given, gravities at 20 °C",
    inputs: [
      {
        label: "Stated standard uncertainty",
        value: uncertainty,
        dimension: null,
        unit: displayUnit(dimension, preferences).unit,
      },
    ],
    sources: [{ anchor: "trade-practice", title: "Common practice, no source" }],
    validRange: "What the instrument can read.",
    whatIf: [],
  };
}
