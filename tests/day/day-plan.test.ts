import { describe, expect, it } from "vitest";
import { buildRunSheet, type Replan, type Step } from "@/lib/calc/runsheet";
import type { DayBrew } from "@/lib/model/day-sheet";
import type { LogEntry } from "@/lib/model/log/log-entry";
import { projectLog } from "@/lib/model/log/project-log";
import { dayPlan, isOver } from "@/lib/day/plan/day-plan";
import { alarmsOf, clearedAlarms, stepAct } from "@/lib/day/plan/step-events";
import { begin, done, leaveOut, takeBack, withoutIdle } from "@/lib/day/plan/step-moves";
import { brewed, brewInput } from "../support/brewed";
import { entry, measured, START } from "../support/log/sample-events";

const MINUTE = 60_000;
const { recipe, equipment, ambient } = brewInput();
const sheet = buildRunSheet({ recipe, equipment, ledger: brewed() });
const brew: DayBrew = {
  id: "00000000-0000-7000-8000-000000000900",
  title: "Test ale",
  brewerName: "Somebody",
  equipmentName: "Test kettle",
  state: "planned",
  recipe,
  equipment,
  ambient,
  runSheet: sheet,
  predicted: {},
  lockVersion: 1,
  mayWrite: true,
  startedAt: null,
  isDropped: false,
};
const words = { end: (step: Step) => `${step.name} ends`, addition: (step: Step) => step.id };

const named = (name: Step["name"]): Step => {
  const step = sheet.find((each) => each.name === name);
  if (step === undefined) throw new Error(`the sample has no ${name}`);
  return step;
};

/** The day `minute` minutes after the start, with entries in the order of their minutes. */
const planAt = (minute: number, ...entries: readonly LogEntry[]) =>
  dayPlan(brew, projectLog(entries), START + minute * MINUTE);

describe("dayPlan", () => {
  it("knows no times before the first step has begun", () => {
    const plan = planAt(0);
    expect(plan).toMatchObject({ startedAt: null, replan: null, running: [] });
    expect(plan.next?.step.id).toBe(sheet[0]?.id);
  });

  it("starts with the first step that somebody began, also before the server knows", () => {
    const plan = planAt(12, entry(1, stepAct("weigh-out-1", "begun"), { minute: 2, received: false }));
    expect(plan.startedAt).toBe(START + 2 * MINUTE);
    expect(plan.running.map(({ step }) => step.id)).toEqual(["weigh-out-1"]);
    expect(plan.next?.step.id).toBe("fill-1");
  });

  it("moves everything behind a step that runs late, and says by how much", () => {
    const weighing = named("weigh out").minutes;
    const onTime = planAt(weighing, entry(1, stepAct("weigh-out-1", "begun"), { minute: 0 }));
    const late = planAt(weighing + 30, entry(1, stepAct("weigh-out-1", "begun"), { minute: 0 }));
    if (onTime.replan?.ok !== true || late.replan?.ok !== true) throw new Error("the day is planned");
    expect(late.replan.behindMin - onTime.replan.behindMin).toBeCloseTo(30, 6);
    const pitching = (replan: Replan | null) => (replan?.ok === true ? (replan.pitch?.min ?? 0) : 0);
    expect(pitching(late.replan) - pitching(onTime.replan)).toBeCloseTo(30, 6);
  });

  it("offers the hops of a boil while it goes on, and never as what follows it", () => {
    const boil = named("boil");
    const plan = planAt(1, entry(1, stepAct(boil.id, "begun"), { minute: 0 }));
    expect(plan.additions.length).toBeGreaterThan(0);
    expect(new Set(plan.additions.map(({ step }) => step.name))).toEqual(new Set(["hop addition"]));
    expect(plan.next?.step.name).not.toBe("hop addition");
    const [first] = plan.additions;
    const added = planAt(
      2,
      entry(1, stepAct(boil.id, "begun"), { minute: 0 }),
      entry(2, stepAct(first?.step.id ?? "", "done"), { minute: 1 }),
    );
    expect(added.additions).toHaveLength(plan.additions.length - 1);
  });

  it("puts a step of the brewer's own behind the one it was put behind", () => {
    const extra = stepAct("extra-1", "added", { title: "Stir again", minutes: 7, after: "dough-in-1" });
    const plan = planAt(0, entry(1, extra, { minute: 0 }));
    const ids = plan.steps.map(({ step }) => step.id);
    expect(ids[ids.indexOf("dough-in-1") + 1]).toBe("extra-1");
    expect(plan.steps.find(({ step }) => step.id === "extra-1")).toMatchObject({
      step: { minutes: 7 },
      known: { added: { title: "Stir again" } },
    });
  });

  it("leaves out what was left out, in any order, and takes it back", () => {
    const out = entry(1, stepAct("fill-1", "left out", { why: "filled already" }), { minute: 0 });
    const plan = planAt(1, out);
    const filling = plan.steps.find(({ step }) => step.id === "fill-1");
    expect(filling !== undefined && isOver(filling)).toBe(true);
    expect(plan.next?.step.id).toBe("weigh-out-1");
    const back = planAt(2, out, entry(2, stepAct("fill-1", "taken back"), { minute: 1 }));
    const again = back.steps.find(({ step }) => step.id === "fill-1");
    expect(again !== undefined && isOver(again)).toBe(false);
  });

  it("says that the kettle does not heat when its thermometer stands still", () => {
    const heating = named("heat strike water");
    const plan = planAt(
      30,
      entry(1, stepAct(heating.id, "begun"), { minute: 0 }),
      entry(10, measured(20), { minute: 10 }),
      entry(20, measured(20), { minute: 20 }),
      entry(29, measured(20), { minute: 29 }),
    );
    expect(plan.replan).toMatchObject({ ok: false, reason: "not-heating" });
  });
});

describe("alarms of a step", () => {
  it("ring at its end and at each addition, counted back from the end", () => {
    const boil = named("boil");
    const begunAt = START + 17 * MINUTE;
    const alarms = alarmsOf(boil, sheet, begunAt, words);
    const dueAfter = new Map(alarms.map(({ timer, dueAt }) => [timer, (Date.parse(dueAt ?? "") - begunAt) / MINUTE]));
    expect(dueAfter.get(`end-${boil.id}`)).toBeCloseTo(boil.minutes, 6);
    const hops = recipe.hops.filter(({ use }) => use === "boil").map(({ minutes }) => boil.minutes - minutes);
    const additions = [...dueAfter].filter(([timer]) => timer.startsWith("at-")).map(([, minutes]) => minutes);
    // Those after the boil ring at flame-out where there is no stand.
    const flameOut =
      recipe.stand === null ? recipe.hops.filter(({ use }) => use === "stand").map(() => boil.minutes) : [];
    const sorted = (numbers: readonly number[]) => [...numbers].sort((a, b) => a - b);
    const expected = sorted([...hops, ...flameOut]);
    expect(additions).toHaveLength(expected.length);
    sorted(additions).forEach((minutes, i) => expect(minutes).toBeCloseTo(expected[i] ?? NaN, 6));
  });

  it("are none for handwork, which its brewer needs no bell for", () => {
    for (const name of ["weigh out", "fill", "dough in", "transfer", "clean"] as const) {
      expect(alarmsOf(named(name), sheet, START, words)).toEqual([]);
    }
  });

  it("are cleared when the step is over, and only those that are open", () => {
    const boil = named("boil");
    const set = new Set(alarmsOf(boil, sheet, START, words).map(({ timer }) => timer));
    expect(new Set(clearedAlarms(boil, sheet).map(({ timer }) => timer))).toEqual(set);
    const plan = planAt(0);
    const step = plan.steps.find((each) => each.step.id === boil.id);
    if (step === undefined) throw new Error("the boil is on the sheet");
    const end = `end-${boil.id}`;
    const kept = withoutIdle(done(plan, step), new Set([end]));
    expect(kept.map((each) => (each.kind === "timer" ? each.timer : each.kind))).toEqual(["step", end]);
  });
});

describe("moves", () => {
  const plan = planAt(0);
  const stepOf = (name: Step["name"]) => {
    const found = plan.steps.find(({ step }) => step.name === name);
    if (found === undefined) throw new Error(`the sample has no ${name}`);
    return found;
  };
  const acts = (contents: ReturnType<typeof begin>) =>
    contents.flatMap((each) => (each.kind === "step" ? [[each.step, each.act, each.why]] : []));

  it("begin what takes time, and finish at once what takes none", () => {
    expect(acts(begin(plan, stepOf("boil"), START, words))).toEqual([["boil-1", "begun", ""]]);
    expect(acts(begin(plan, stepOf("pitch"), START, words))).toEqual([["pitch-1", "done", ""]]);
  });

  it("leave out with the reason, and take back", () => {
    expect(acts(leaveOut(plan, stepOf("sparge"), "no liquor"))).toEqual([["sparge-1", "left out", "no liquor"]]);
    expect(acts(takeBack(plan, stepOf("sparge")))).toEqual([["sparge-1", "taken back", ""]]);
  });
});
