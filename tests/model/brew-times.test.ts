import { describe, expect, it } from "vitest";
import type { Step, StepName } from "@/lib/calc/runsheet";
import { brewTimes } from "@/lib/model/brew-times";
import type { LoggedStep } from "@/lib/model/log/step-log";
import { projectLog } from "@/lib/model/log/project-log";

const MIN = 60_000;
const BEGAN = Date.parse("2026-10-03T08:00:00Z");

const step = (id: string, name: StepName, startMin: number, minutes: number): Step => ({
  ...{ id, name, startMin, minutes, celsius: null, litres: null, powerW: null },
  ...{ amounts: [], measure: [], cautions: [] },
});

const SHEET = [
  step("fill", "fill", 0, 10),
  step("strike", "heat strike water", 10, 50),
  step("rest", "rest", 60, 60),
  step("boil", "boil", 150, 60),
];

function withSteps(times: Readonly<Record<string, readonly [begun: number | null, done: number | null]>>) {
  const steps = new Map(
    Object.entries(times).map(([id, [begun, done]]): [string, LoggedStep] => [
      id,
      {
        ...{ step: id, leftOut: null, added: null, byName: "", isSafe: true },
        begunAt: begun === null ? null : BEGAN + begun * MIN,
        doneAt: done === null ? null : BEGAN + done * MIN,
      },
    ]),
  );
  return { runSheet: SHEET, log: { ...projectLog([]), steps } };
}

describe("the times of a brew day", () => {
  it("counts from the first step that was begun, and a stretch from its first step to the end of its last", () => {
    const times = brewTimes(withSteps({ fill: [5, 20], strike: [25, 85], rest: [90, 150], boil: [185, null] }));
    expect(times).toEqual([
      expect.objectContaining({ id: "strike", plannedStart: 10, plannedMinutes: 50, start: 20, minutes: 60 }),
      expect.objectContaining({ id: "mash", plannedStart: 60, plannedMinutes: 60, start: 85, minutes: 60 }),
      expect.objectContaining({ id: "boil", plannedStart: 150, plannedMinutes: 60, start: 180, minutes: null }),
    ]);
  });

  it("leaves open what nobody confirmed", () => {
    for (const { start, minutes } of brewTimes(withSteps({}))) expect([start, minutes]).toEqual([null, null]);
  });
});
