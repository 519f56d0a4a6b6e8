import "server-only";
import { z } from "zod";
import type { Predictions } from "@/lib/model/brew";
import type { FlightFacts, JudgedEntry, Seat, TastingFacts } from "@/lib/model/tasting/results-facts";
import { figuresOfBeer, figuresOfBrew, type BeerFigure } from "@/lib/model/tasting/prepare-figures";
import { beerFigures } from "@/lib/model/tasting/prepare";
import type { Tasting } from "@/lib/model/tasting/tasting";
import { displayNames } from "../accounts/names";
import { inSpace, type SpaceTransaction } from "../db";
import type { Member } from "../session";
import { listSummaries } from "../summaries/reads";
import { findTasting } from "./reads";
import { readCounted, type Counted } from "./results-counted";

/**
 * All that a tasting's results are made of; null before the reveal, and for whoever does not belong to the club. The
 * database shows nobody's sheets before it either.
 */
export async function findTastingFacts(member: Member, id: string): Promise<TastingFacts | null> {
  const tasting = await findTasting(member, id);
  if (tasting?.revealed === null || tasting?.revealedAt === null || tasting === null) return null;
  const { spaceId, userId } = member;
  const within = { spaceId, tastingId: id };
  const read = await inSpace(spaceId, userId, async (tx) => ({
    counted: await readCounted(tx, within),
    identities: await readIdentities(tx, within),
    served: await tx.tastingServing.findMany({
      where: within,
      select: { flightNo: true, judgeId: true, entryNo: true },
    }),
    seed: await tx.tasting.findUniqueOrThrow({ where: { spaceId_id: { spaceId, id } }, select: { seed: true } }),
  }));
  const brewIds = read.identities.flatMap(({ brewId }) => (brewId === null ? [] : [brewId]));
  const summaries = brewIds.length === 0 ? [] : await listSummaries(member, { ids: brewIds });
  const summaryOf = new Map(summaries.map(({ id: brewId, summary }) => [brewId, summary]));
  const nameOf = await displayNames(
    member,
    [...read.counted.sheets, ...read.counted.choices].map(({ actorId }) => actorId),
  );
  const seats = seatsOf(tasting);
  return {
    ...{ id, title: tasting.title, heldOn: tasting.heldOn, revealedAt: tasting.revealedAt, seed: read.seed.seed },
    flights: tasting.flights.map(({ flightNo, title, kind }): FlightFacts => {
      const inFlight = <R extends { readonly flightNo: number }>(rows: readonly R[]): readonly R[] =>
        rows.filter((row) => row.flightNo === flightNo);
      const judging = new Set(tasting.flights.find((each) => each.flightNo === flightNo)?.judges.map((j) => j.userId));
      return {
        ...{ flightNo, title, kind },
        entries: inFlight(tasting.revealed ?? []).map((entry): JudgedEntry => {
          const identity = read.identities.find(({ entryNo }) => entryNo === entry.entryNo);
          if (identity === undefined) return { ...entry, figures: [], brewerIds: [] };
          const { brewId, predicted, figures, brewerIds } = identity;
          const brewed = brewId === null ? null : figuresOfBrew(summaryOf.get(brewId) ?? null, predicted);
          return { ...entry, figures: brewed ?? statedFigures(figures), brewerIds };
        }),
        judges: seats.filter(({ judgeId }) => judging.has(judgeId)),
        served: inFlight(read.served),
        ...countedIn(read.counted, flightNo, nameOf),
      };
    }),
  };
}

/** Written by this program when the brew was planned. */
const predictions = z.custom<Predictions>((value) => typeof value === "object" && value !== null);

/** Seats go by chance that nobody chose, the judges' ids, so that a number says nothing of who came first. */
function seatsOf(tasting: Tasting): readonly Seat[] {
  const names = new Map(tasting.flights.flatMap(({ judges }) => judges.map(({ userId, name }) => [userId, name])));
  return [...names]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([judgeId, name], at) => ({ judgeId, name, seat: at + 1 }));
}

function countedIn(
  { sheets, choices, begun }: Counted,
  flightNo: number,
  nameOf: (userId: string) => string,
): Pick<FlightFacts, "sheets" | "choices" | "begun"> {
  const withWriter = <R extends { readonly flightNo: number; readonly judgeId: string; readonly actorId: string }>(
    rows: readonly R[],
  ): readonly (R & { readonly enteredBy: string | null })[] =>
    rows
      .filter((row) => row.flightNo === flightNo)
      .map((row) => ({ ...row, enteredBy: row.actorId === row.judgeId ? null : nameOf(row.actorId) }));
  return {
    sheets: withWriter(sheets),
    choices: withWriter(choices),
    begun: begun.filter((row) => row.flightNo === flightNo),
  };
}

function statedFigures(stored: unknown): readonly BeerFigure[] {
  const parsed = beerFigures.safeParse(stored);
  return parsed.success ? figuresOfBeer(parsed.data) : [];
}

async function readIdentities(
  tx: SpaceTransaction,
  within: { readonly spaceId: string; readonly tastingId: string },
): Promise<
  readonly {
    readonly entryNo: number;
    readonly brewId: string | null;
    readonly predicted: Predictions;
    readonly figures: unknown;
    readonly brewerIds: readonly string[];
  }[]
> {
  const rows = await tx.tastingIdentity.findMany({
    where: within,
    select: {
      ...{ entryNo: true, brewId: true, brewerUserId: true, figures: true },
      brew: { select: { predicted: true, collaborators: { select: { userId: true } } } },
    },
  });
  return rows.map(({ entryNo, brewId, brewerUserId, figures, brew }) => ({
    ...{ entryNo, brewId, figures },
    predicted: predictions.parse(brew?.predicted ?? {}),
    brewerIds: [
      ...(brewerUserId === null ? [] : [brewerUserId]),
      ...(brew?.collaborators ?? []).map(({ userId }) => userId),
    ],
  }));
}
