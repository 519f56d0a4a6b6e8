import { describe, expect, it } from "vitest";
import { intervals } from "@/lib/calc/ledger";
import { buildRunSheet } from "@/lib/calc/runsheet";
import { MEASURABLE_IDS } from "@/lib/model/reading";
import { measuringPoint, pointsOfStep, pointsOutsideSteps } from "@/lib/ui/brew/measuring-points";
import { brewed, brewInput } from "../../support/brewed";

const plan = { ledger: brewed(), intervals: intervals(brewInput()), dipStick: null };
const steps = buildRunSheet({ ...brewInput(), ledger: plan.ledger });

describe("measuring points", () => {
  it("offer everything that can be measured, each at a step or after the day", () => {
    const points = [...steps.flatMap((step) => pointsOfStep(step, plan)), ...pointsOutsideSteps(steps, plan)];
    expect(new Set(points.map(({ quantity }) => quantity))).toEqual(new Set(MEASURABLE_IDS));
    expect(points.every(({ expected }) => expected !== null)).toBe(true);
  });

  it("leave final gravity and packaged volume for after the brew day", () => {
    const later = pointsOutsideSteps(steps, plan).map(({ quantity }) => quantity);
    expect(later).toEqual(["fermenter.finalExtract", "package.volume"]);
  });

  it("offer a refractometer for wort, and never for fermented beer", () => {
    expect(measuringPoint("kettle.preBoilGravity", plan).instruments).toContain("refractometer");
    expect(measuringPoint("fermenter.finalExtract", plan).instruments).not.toContain("refractometer");
  });
});
