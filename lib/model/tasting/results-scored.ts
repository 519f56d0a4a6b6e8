import {
  adjustForJudge,
  intraclassCorrelation,
  kendallW,
  type AdjustedEntry,
  type AdjustedForJudge,
  type IntraclassCorrelation,
  type JudgeEffect,
} from "@/lib/calc/judging";
import { byEntry } from "./results-by-entry";
import type { FlightFacts, JudgedEntry, Seat } from "./results-facts";

/** Means that differ by less are told apart by rounding alone. */
const LEVEL = 1e-9;

/** How one entry did. */
export interface EntryResult {
  readonly entry: JudgedEntry;
  readonly served: number;
  readonly scores: readonly number[];
  /** Mean of its scores; null where nobody handed in a sheet of it. */
  readonly rawMean: number | null;
  /** With the severity of its judges taken off; null where that cannot be told. */
  readonly adjusted: AdjustedEntry | null;
  /** Of the adjusted means, or of the raw ones where there are none; entries that are level share a rank. */
  readonly rank: number | null;
  readonly isTied: boolean;
}

export interface JudgeResult {
  readonly seat: Seat;
  readonly served: number;
  readonly handedIn: number;
  readonly begun: number;
  /** null where severity cannot be told from the entries. */
  readonly effect: JudgeEffect | null;
}

/** How far judges who tasted everything agree; null where fewer than two did, or there are fewer than two entries. */
export interface Agreement {
  readonly judges: number;
  readonly entries: number;
  readonly scores: readonly (readonly number[])[];
  readonly concordance: ReturnType<typeof kendallW>;
  readonly intraclass: IntraclassCorrelation;
}

export interface ScoredResult {
  readonly flight: FlightFacts;
  /** The best first; those without a sheet last. */
  readonly entries: readonly EntryResult[];
  readonly judges: readonly JudgeResult[];
  readonly agreement: Agreement | null;
  /** What became of the correction for judges; null where no sheet was handed in. */
  readonly adjustment: AdjustedForJudge | null;
  /** The table that it was made from: rows of judges, columns of entries, those with a sheet only. */
  readonly table: ScoredCells;
  readonly missing: number;
}

export interface ScoredCells {
  readonly judges: readonly Seat[];
  readonly entryNos: readonly number[];
  readonly scores: readonly (readonly (number | null)[])[];
}

/** The results of a scored flight. The same seed gives the same chances. */
export function scoredResult(flight: FlightFacts, seed: number): ScoredResult {
  const table = cellsOf(flight);
  const adjustment = table.scores.length === 0 ? null : adjustForJudge({ scores: table.scores, seed });
  const entries = rankedEntries(flight, table, adjustment);
  return {
    flight,
    entries,
    judges: flight.judges.map((seat) => judgeResult(flight, { seat, table, adjustment })),
    agreement: agreementOf(table),
    adjustment,
    table,
    missing: flight.served.length - flight.sheets.length,
  };
}

function cellsOf({ judges, entries, sheets }: FlightFacts): ScoredCells {
  const wrote = new Set(sheets.map(({ judgeId }) => judgeId));
  const tasted = new Set(sheets.map(({ entryNo }) => entryNo));
  const scoring = judges.filter(({ judgeId }) => wrote.has(judgeId));
  const entryNos = entries.map(({ entryNo }) => entryNo).filter((entryNo) => tasted.has(entryNo));
  const totals = new Map(sheets.map(({ judgeId, entryNo, total }) => [`${judgeId} ${String(entryNo)}`, total]));
  const cell = (judgeId: string, entryNo: number): number | null => totals.get(`${judgeId} ${String(entryNo)}`) ?? null;
  return {
    judges: scoring,
    entryNos,
    scores: scoring.map(({ judgeId }) => entryNos.map((entryNo) => cell(judgeId, entryNo))),
  };
}

function rankedEntries(
  { entries, served, sheets }: FlightFacts,
  table: ScoredCells,
  adjustment: AdjustedForJudge | null,
): readonly EntryResult[] {
  const sheetsOf = byEntry(sheets);
  const servedOf = byEntry(served);
  const places = new Map(table.entryNos.map((entryNo, at) => [entryNo, at]));
  const unranked = entries.map((entry) => {
    const { entryNo } = entry;
    const scores = sheetsOf(entryNo).map(({ total }) => total);
    const at = places.get(entryNo) ?? -1;
    const rawMean = scores.length === 0 ? null : scores.reduce((sum, score) => sum + score, 0) / scores.length;
    const adjusted = adjustment?.ok === true ? (adjustment.entries[at] ?? null) : null;
    return {
      entry,
      served: servedOf(entryNo).length,
      scores,
      rawMean,
      adjusted,
      by: adjusted?.adjusted ?? levelMean(adjustment, at, rawMean),
    };
  });
  // Entries of groups that share no judge have no common order.
  const mayRank = adjustment !== null && (adjustment.ok || adjustment.reason !== "disconnected");
  return unranked
    .map(({ by, ...result }) => {
      const above = unranked.filter((other) => other.by !== null && by !== null && other.by > by + LEVEL).length;
      const level = unranked.filter((other) => other.by !== null && by !== null && Math.abs(other.by - by) <= LEVEL);
      return { ...result, rank: by === null || !mayRank ? null : above + 1, isTied: mayRank && level.length > 1 };
    })
    .sort((a, b) => (a.rank ?? Infinity) - (b.rank ?? Infinity) || (b.rawMean ?? -1) - (a.rawMean ?? -1));
}

function levelMean(adjustment: AdjustedForJudge | null, at: number, rawMean: number | null): number | null {
  if (adjustment?.ok !== false || adjustment.reason !== "too-few-scores") return rawMean;
  return adjustment.adjusted[at] ?? null;
}

function judgeResult(
  { served, sheets, begun }: FlightFacts,
  a: { readonly seat: Seat; readonly table: ScoredCells; readonly adjustment: AdjustedForJudge | null },
): JudgeResult {
  const { judgeId } = a.seat;
  const isOwn = (each: { readonly judgeId: string }): boolean => each.judgeId === judgeId;
  const at = a.table.judges.findIndex(isOwn);
  return {
    seat: a.seat,
    served: served.filter(isOwn).length,
    handedIn: sheets.filter(isOwn).length,
    begun: begun.filter(isOwn).length,
    effect: a.adjustment?.ok === true ? (a.adjustment.judges[at] ?? null) : null,
  };
}

/** Both measures need a full table, so they are of the judges who handed in a sheet of every entry. */
function agreementOf({ scores, entryNos }: ScoredCells): Agreement | null {
  const full = scores.flatMap((row) => {
    const given = row.filter((cell) => cell !== null);
    return given.length === row.length ? [given] : [];
  });
  if (full.length < 2 || entryNos.length < 2) return null;
  return {
    judges: full.length,
    entries: entryNos.length,
    scores: full,
    concordance: kendallW(full),
    intraclass: intraclassCorrelation({ scores: full, form: "2,1", confidence: 0.8 }),
  };
}
