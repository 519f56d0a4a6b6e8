import { rankCorrelation, type RankCorrelation } from "@/lib/calc/judging";
import type { Dimension } from "@/lib/calc/ledger";
import type { DescriptorId } from "./descriptors";
import type { StyledQuantity } from "../style-spans";
import { byEntry } from "./results-by-entry";
import type { FlightFacts } from "./results-facts";

interface Followed {
  readonly quantity: StyledQuantity;
  readonly label: string;
  readonly dimension: Dimension;
  readonly word: DescriptorId;
}

/** What judges taste, and the figure that it should follow. */
const FOLLOWED: readonly Followed[] = [
  { quantity: "fermenter.bitterness", label: "Bitterness", dimension: "bitterness", word: "bitter" },
  { quantity: "fermenter.colour", label: "Colour", dimension: "colour", word: "dark" },
  { quantity: "package.alcohol", label: "Alcohol", dimension: "alcohol", word: "warming" },
  { quantity: "fermenter.finalExtract", label: "Final gravity", dimension: "extract", word: "full" },
];

/** Fewer entries than this show no pattern that is worth a number. */
const FEWEST_ENTRIES = 3;

/** One entry as it was computed and as it was tasted. */
export interface FollowedEntry {
  readonly entryNo: number;
  readonly beer: string;
  readonly computed: number;
  /** Half of its 80 % interval; null where nothing is known of it. */
  readonly half80: number | null;
  /** Mean strength over its sheets, from 0 where nobody named the word to 3. */
  readonly judged: number;
}

export interface FollowedFigure extends Followed {
  readonly entries: readonly FollowedEntry[];
  /** Whether the figures lie closer together than any of them is known, so that nothing can be seen to follow them. */
  readonly isLevel: boolean;
  /** null where too few entries have the figure. */
  readonly correlation: RankCorrelation | null;
}

/** Whether what judges tasted follows what was computed and measured, over the entries of scored flights. */
export function followedFigures(flights: readonly FlightFacts[]): readonly FollowedFigure[] {
  return FOLLOWED.map((followed) => {
    const entries = flights.flatMap((flight) => followedEntries(flight, followed));
    const pair = { a: entries.map(({ computed }) => computed), b: entries.map(({ judged }) => judged) };
    const correlation = entries.length < FEWEST_ENTRIES ? null : rankCorrelation(pair);
    return { ...followed, entries, isLevel: isLevel(entries), correlation };
  });
}

function isLevel(entries: readonly FollowedEntry[]): boolean {
  const values = entries.map(({ computed }) => computed);
  const known = entries.map(({ half80 }) => half80 ?? 0);
  return Math.max(...values) - Math.min(...values) < Math.min(...known);
}

function followedEntries({ entries, sheets }: FlightFacts, { quantity, word }: Followed): readonly FollowedEntry[] {
  const sheetsOf = byEntry(sheets);
  return entries.flatMap(({ entryNo, beer, figures }) => {
    const figure = figures.find((each) => each.quantity === quantity);
    const own = sheetsOf(entryNo);
    if (figure === undefined || own.length === 0) return [];
    const { value: computed, interval } = figure;
    const half80 = interval === null ? null : (interval.high80 - interval.low80) / 2;
    const strengths = own.map(
      ({ sheet }): number => sheet.descriptors.find((noted) => noted.word === word)?.strength ?? 0,
    );
    return [{ entryNo, beer, computed, half80, judged: strengths.reduce((sum, each) => sum + each, 0) / own.length }];
  });
}
