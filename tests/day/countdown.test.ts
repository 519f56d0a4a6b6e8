import { describe, expect, it } from "vitest";
import { countdown, spokenCountdown } from "@/lib/day/alarm/countdown";
import { openAlarms } from "@/lib/day/alarm/due-alarms";
import { pressed } from "@/lib/day/screen/keypad";

describe("countdown", () => {
  it.each([
    [60 * 60_000, "1:00:00"],
    [59 * 60_000 + 59_000, "59:59"],
    [5000, "0:05"],
    [1, "0:01"],
    [0, "0:00"],
    [-1, "−0:01"],
    [-90_000, "−1:30"],
  ])("shows %i ms as %s", (ms, text) => {
    expect(countdown(ms)).toBe(text);
  });

  it("is read aloud in minutes", () => {
    expect(spokenCountdown(61 * 60_000)).toBe("1 hour 1 minute left");
    expect(spokenCountdown(-125_000)).toBe("2 minutes over");
  });
});

describe("openAlarms", () => {
  const timer = (name: string, dueAt: number, change: object = {}) => ({
    timer: name,
    label: name,
    step: null,
    dueAt,
    acknowledged: null,
    isCleared: false,
    ...change,
  });
  const all = [
    timer("late", 3000),
    timer("due", 1000),
    timer("heard", 500, { acknowledged: { at: 600, byName: "Somebody" } }),
    timer("cleared", 500, { isCleared: true }),
  ];
  const timers = new Map(all.map((each) => [each.timer, each]));

  it("are those that nobody has heard or cleared, the next one first, due from their instant on", () => {
    expect(openAlarms(timers, 999).map((alarm) => [alarm.timer, alarm.isDue])).toEqual([
      ["due", false],
      ["late", false],
    ]);
    expect(openAlarms(timers, 1000)[0]?.isDue).toBe(true);
  });

  it("are due after a long sleep as well, however late one looks", () => {
    expect(openAlarms(timers, 1_000_000).every(({ isDue }) => isDue)).toBe(true);
  });
});

describe("keypad", () => {
  it("writes digits, one decimal point, a sign, and deletes", () => {
    expect(pressed("6", "5", false)).toBe("65");
    expect(pressed("65", ".", false)).toBe("65.");
    expect(pressed("65.", ".", false)).toBe("65.");
    expect(pressed("65,4", ".", false)).toBe("65,4");
    expect(pressed("4", "±", false)).toBe("-4");
    expect(pressed("-4", "±", false)).toBe("4");
    expect(pressed("65.", "⌫", false)).toBe("65");
    expect(pressed("", "⌫", false)).toBe("");
  });

  it("begins a number anew where one stood there as a suggestion", () => {
    expect(pressed("20", "6", true)).toBe("6");
    expect(pressed("20", ".", true)).toBe("0.");
  });
});
