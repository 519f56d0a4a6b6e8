import "server-only";
import { answerOf, measuredBrews, type ComparisonAnswer } from "@/lib/model/summary/answer";
import type { BrewFilter } from "@/lib/model/summary/brew-filter";
import type { BrewAmongOthers } from "@/lib/model/summary/compared-brew";
import type { ComparisonQuestion } from "@/lib/model/summary/question";
import { resultPage } from "@/lib/model/summary/result-page";
import type { Member } from "../session";
import { listSummaries } from "./reads";

/**
 * The brews that pass a filter with the answer of a question, as a page shows them: of most only the figure that is asked
 * for, and all of those that the address brings to the page.
 */
export async function listAcross(
  member: Member,
  filter: BrewFilter,
  a: { readonly question: ComparisonQuestion; readonly asked: Readonly<Record<string, string>> },
): Promise<{ readonly brews: readonly BrewAmongOthers[]; readonly answer: ComparisonAnswer }> {
  const { question, asked } = a;
  const found = await listSummaries(member, filter, { onlyFigure: question.quantity });
  const wholeIds = shownIds(found, question, asked);
  const whole = new Map(
    (wholeIds.length === 0 ? [] : await listSummaries(member, { ids: wholeIds }, { withCurves: true })).map((brew) => [
      brew.id,
      brew,
    ]),
  );
  const brews = found.map((brew) => whole.get(brew.id) ?? brew);
  return { brews, answer: answerOf(question, brews) };
}

/** The rows of the page, and two brews that are held against each other. */
function shownIds(
  brews: readonly BrewAmongOthers[],
  question: ComparisonQuestion,
  asked: Readonly<Record<string, string>>,
): readonly string[] {
  const pair = brews.filter(({ id }) => id === asked["first"] || id === asked["second"]);
  const { rows } = resultPage(measuredBrews(question, brews), asked);
  return [...new Set([...rows.map(({ brew }) => brew.id), ...pair.map(({ id }) => id)])];
}
