import type { TrialPart } from "@/lib/model/trial/trial-entry";
import type { TrialRun } from "@/lib/model/trial/trial-log";
import { whereOf, type PartResult, type TrialResults } from "@/lib/model/trial/trial-results";

/** What a part comes to, as far as the screen has to know: whether it is told, and where its readings lie. */
export interface PartOutcome {
  readonly result: PartResult<{ readonly ok: boolean }> | null;
  /** Residuals of a run's readings over their uncertainty; empty where nothing was fitted. */
  readonly residualsOf: (run: TrialRun) => readonly (number | null)[];
  readonly curveOf: (run: TrialRun) => readonly (readonly [x: number, y: number])[];
}

/** Residuals and curves of a part, by run. */
export function outcomeOf(part: TrialPart, results: TrialResults, run: TrialRun | null): PartOutcome {
  switch (part) {
    case "heating":
    case "cooling": {
      const found = results.heating;
      const fit = found?.outcome?.ok === true ? found.outcome : null;
      return byRun(found, fit?.residuals ?? [], fit?.curves ?? []);
    }
    case "boil-off": {
      const found = results.boilOff;
      const fit = found?.outcome?.ok === true ? found.outcome : null;
      return byRun(found, fit?.residuals ?? [], fit?.lines ?? []);
    }
    case "chill": {
      const found = results.chill;
      const fit = found?.outcome?.ok === true && "curves" in found.outcome ? found.outcome : null;
      return byRun(found, fit?.residuals ?? [], fit?.curves ?? []);
    }
    case "dead space":
      return byRun(run === null ? null : (results.deadSpace[whereOf(run)] ?? null), [], []);
    case "marks":
      return byRun(results.marks, [], []);
  }
}

function byRun(
  result: PartOutcome["result"],
  residuals: readonly (readonly (number | null)[])[],
  curves: readonly (readonly (readonly [number, number])[])[],
): PartOutcome {
  const placeOf = (run: TrialRun): number =>
    result?.runs.findIndex((each) => each.part === run.part && each.run === run.run) ?? -1;
  return {
    result,
    residualsOf: (run) => residuals[placeOf(run)] ?? [],
    curveOf: (run) => curves[placeOf(run)] ?? [],
  };
}
