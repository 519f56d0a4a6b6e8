import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { balanceErrors } from "@/lib/calc/compare/balance-errors";
import { balanceVariables, type VariableId } from "@/lib/calc/compare/balance-variables";
import { followBrew, plannedFigures, type BrewFigures } from "@/lib/calc/compare/brew-figures";
import { FOLLOWED_READINGS, readingIn } from "@/lib/calc/compare/followed-readings";
import { latestReadings, type ComparedReading } from "@/lib/calc/compare/latest-readings";
import { plannedBrew } from "@/lib/calc/compare/planned-brew";
import { reconcileBrew } from "@/lib/calc/compare/reconcile-brew";
import { settleBrew } from "@/lib/calc/compare/settle-brew";
import { intervals } from "@/lib/calc/ledger";
import { litres } from "@/lib/calc/units";
import { brewed, brewInput, valueOf } from "../../support/brewed";
import { expectWithin } from "../../support/expect-within";
import { readingsOf } from "../../support/readings-of";

const ledger = brewed();
const predicted = intervals(brewInput());
const plan = plannedBrew(ledger);

describe("a brew followed from its figures", () => {
  it("is the planned one for the planned figures, on every kettle (second method: the ledger)", () => {
    for (const changes of [{}, { lauter: { method: "none" } }, { recipe: { topUp: litres(4) } }] as const) {
      const other = brewed(changes);
      const figures = plannedFigures(plannedBrew(other));
      const brew = followBrew(plannedBrew(other), figures);
      for (const id of FOLLOWED_READINGS) {
        expectWithin(readingIn(brew, figures, id), valueOf(other, id), 1e-8 * valueOf(other, id));
      }
    }
  });

  it("closes all seven balances, whatever the figures (law)", () => {
    const share = fc.double({ min: 0.5, max: 1.5, noNaN: true });
    fc.assert(
      fc.property(fc.array(share, { minLength: 9, maxLength: 9 }), (shares) => {
        const planned = plannedFigures(plan);
        const ids = Object.keys(planned) as (keyof BrewFigures)[];
        const figures = Object.fromEntries(ids.map((id, i) => [id, planned[id] * (shares[i] ?? 1)])) as BrewFigures;
        const brew = followBrew(plan, figures);
        const valueAt = (id: VariableId): number =>
          id in figures ? figures[id as keyof BrewFigures] : readingIn(brew, figures, id as never);
        for (const error of balanceErrors(plan, valueAt)) expectWithin(error, 0, 1e-9);
      }),
    );
  });

  it("settles on the same values as the balances with Lagrange's method do (second method)", () => {
    // Where something was not read, the balances lay its tangent at the plan, so the two part with the square of how far
    // the readings are from it; within half an uncertainty nothing of that is left.
    const noise = fc.double({ min: -0.5, max: 0.5, noNaN: true });
    fc.assert(
      fc.property(fc.array(noise, { minLength: 11, maxLength: 11 }), fc.nat(255), (noises, mask) => {
        const read = readingsOf(ledger)
          .map((each, i): ComparedReading => ({ ...each, value: each.value + each.sd * (noises[i] ?? 0) }))
          .filter((_, i) => ((mask >> i) & 1) === 0);
        const readings = latestReadings(read);
        const variables = balanceVariables({ ledger, intervals: predicted, plan, readings });
        const settled = settleBrew({ plan, intervals: predicted, variables, final: null });
        const brew = followBrew(plan, settled.figures);
        for (const { id, reconciled, sigma } of reconcileBrew(plan, variables).variables) {
          const value =
            id in settled.figures ? settled.figures[id as never] : readingIn(brew, settled.figures, id as never);
          expectWithin(value, reconciled, 1e-2 * sigma);
        }
      }),
      { numRuns: 60 },
    );
  });

  it("says how uncertain each figure is as those balances do (second method)", () => {
    const readings = latestReadings(readingsOf(ledger));
    const variables = balanceVariables({ ledger, intervals: predicted, plan, readings });
    const { covariance } = settleBrew({ plan, intervals: predicted, variables, final: null });
    const byBalances = reconcileBrew(plan, variables).variables;
    Object.keys(plannedFigures(plan)).forEach((id, i) => {
      const other = byBalances.find((each) => each.id === id);
      if (other !== undefined)
        expectWithin(Math.sqrt(covariance[i]?.[i] ?? 0), other.reconciledSigma, 1e-3 * other.sigma);
    });
    expect(byBalances.length).toBe(15);
  });
});
