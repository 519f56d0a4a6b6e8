import type { JudgeEffect } from "@/lib/calc/judging";
import type { Preferences } from "@/lib/model/preferences";
import { judgeInterval } from "@/lib/model/tasting/judge-interval";
import type { JudgeResult, ScoredResult } from "@/lib/model/tasting/results-scored";
import { DataTable, type DataColumn } from "@/lib/ui/data-table";
import { Quantity } from "@/lib/ui/quantity";

interface JudgeTableProps {
  readonly result: ScoredResult;
  readonly ownId: string;
  readonly preferences: Preferences;
}

/** How each judge of a flight scored, by seat: who sits where, each knows of the own seat alone. */
export function JudgeTable({ result, ownId, preferences }: JudgeTableProps) {
  const df = result.adjustment?.ok === true ? result.adjustment.df : null;
  const seatWords = ({ seat }: JudgeResult): string =>
    `Seat ${String(seat.seat)}${seat.judgeId === ownId ? " (you)" : ""}`;
  return (
    <>
      <DataTable
        caption={`Judges of ${result.flight.title}`}
        captionHidden
        columns={[
          { id: "seat", label: "Seat", cell: seatWords },
          ...effectColumns(preferences, df),
          {
            ...{ id: "sheets", label: "Sheets", isNumber: true },
            cell: ({ handedIn, served }) => `${String(handedIn)} of ${String(served)}`,
          },
        ]}
        records={result.judges}
        keyOf={({ seat }) => seat.judgeId}
      />
      <p className="mt-2 max-w-3xl text-muted">
        Severity: points below the average judge; a mild one is below nothing. Spread: standard deviation of the judge’s
        scores, beside that of the entries he or she tasted. Scatter: what is left of the scores when entry and severity
        are taken off.
      </p>
    </>
  );
}

function effectColumns(preferences: Preferences, df: number | null): readonly DataColumn<JudgeResult>[] {
  const reason = "cannot be told from these sheets";
  const shared = { dimension: "points", preferences, aligned: true, reason } as const;
  const plain = (id: string, label: string, of: (effect: JudgeEffect) => number | null): DataColumn<JudgeResult> => ({
    ...{ id, label, isNumber: true },
    cell: ({ effect }) => <Quantity {...shared} value={effect === null ? null : of(effect)} />,
  });
  return [
    {
      ...{ id: "severity", label: "Severity", isNumber: true },
      cell: ({ effect }) => (
        <Quantity
          {...shared}
          value={effect?.severity ?? null}
          interval={effect === null || df === null ? null : judgeInterval(effect, df)}
        />
      ),
    },
    plain("spread", "Spread", ({ spread }) => spread),
    plain("expected", "Spread of the entries", ({ expectedSpread }) => expectedSpread),
    plain("scatter", "Scatter", ({ scatter }) => scatter),
  ];
}
