import "server-only";
import type { JudgeEffect } from "@/lib/calc/judging";
import { tastingResults } from "@/lib/model/tasting/results";
import { roleMay } from "@/lib/model/roles";
import type { Member } from "../session";
import { listTastings } from "./reads";
import { findTastingFacts } from "./results-read";

/** How a judge scored in one flight of a tasting that was revealed. */
export interface JudgedFlight {
  readonly tastingId: string;
  readonly tastingTitle: string;
  readonly heldOn: string | null;
  readonly flightTitle: string;
  readonly judgeId: string;
  readonly name: string;
  readonly handedIn: number;
  readonly effect: JudgeEffect | null;
  /** Degrees of freedom of the effect's error. */
  readonly df: number;
}

/** As far back as is of use: somebody judges otherwise after some years. */
const MOST_TASTINGS = 30;

/** The calibration of judges over the latest tastings: of all for an organiser, of the reader alone for anybody else. */
export async function listJudgedFlights(member: Member): Promise<readonly JudgedFlight[]> {
  const seesAll = roleMay(member.role, "organise");
  const revealed = (await listTastings(member)).filter(({ state }) => state === "revealed").slice(0, MOST_TASTINGS);
  const found: JudgedFlight[] = [];
  for (const { id } of revealed) {
    const facts = await findTastingFacts(member, id);
    if (facts === null) continue;
    for (const { flight, judges, adjustment } of tastingResults(facts).scored) {
      for (const { seat, handedIn, effect } of judges) {
        if (handedIn === 0 || (!seesAll && seat.judgeId !== member.userId)) continue;
        found.push({
          ...{ tastingId: id, tastingTitle: facts.title, heldOn: facts.heldOn, flightTitle: flight.title },
          ...{ judgeId: seat.judgeId, name: seat.name, handedIn, effect },
          df: adjustment?.ok === true ? adjustment.df : 0,
        });
      }
    }
  }
  return found;
}
