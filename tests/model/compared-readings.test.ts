import { describe, expect, it } from "vitest";
import { comparedReadings } from "@/lib/model/compared-readings";
import { brewReadings } from "@/lib/model/log/brew-readings";
import type { LogEntry } from "@/lib/model/log/log-entry";
import type { Packaged } from "@/lib/model/log/log-event";
import { projectLog } from "@/lib/model/log/project-log";
import { entry, idOf, measured } from "../support/log/sample-events";

const gravity = (plato: number, quantity: "fermenter.gravity" | "fermenter.finalExtract" = "fermenter.gravity") =>
  measured(plato, { kind: "gravity", quantity, sd: 0.25 });

const bottles: Packaged = {
  kind: "package",
  containers: [
    { name: "bottle, 0.5 L", litres: 0.5, count: 30, ratedBar: null },
    { name: "keg, 5 L", litres: 5, count: 1, ratedBar: null },
  ],
  ...{ volumesCo2: 2.4, method: "priming", sugar: "sucrose", sugarGrams: 120, celsius: 20, storageC: 22, lostL: 0.5 },
  ...{ override: null, early: null, note: "" },
};

function valuesOf(entries: readonly LogEntry[]): Record<string, number> {
  const log = projectLog(entries);
  const readings = comparedReadings({ id: idOf(900), log, readings: brewReadings(idOf(900), log.readings) });
  return Object.fromEntries(readings.map(({ quantity, value }) => [quantity, value]));
}

describe("comparedReadings", () => {
  it("knows no end of a beer that ferments", () => {
    expect(valuesOf([entry(1, gravity(6)), entry(2, gravity(3.1))])).toEqual({});
  });

  it("takes the last gravity before packaging as the final one", () => {
    const log = [entry(1, gravity(6)), entry(2, gravity(3.1)), entry(3, bottles), entry(4, gravity(2.9))];
    expect(valuesOf(log)).toEqual({ "fermenter.finalExtract": 3.1 });
  });

  it("leaves out a gravity that was voided", () => {
    const voided = { kind: "void", targetId: idOf(2), seen: [], why: "read the wrong scale" } as const;
    const log = [entry(1, gravity(6)), entry(2, gravity(3.1)), entry(3, voided), entry(4, bottles)];
    expect(valuesOf(log)["fermenter.finalExtract"]).toBe(6);
  });

  it("leaves a final gravity that somebody read by name as it is", () => {
    const log = [entry(1, gravity(3.1)), entry(2, gravity(3.4, "fermenter.finalExtract")), entry(3, gravity(3.2))];
    expect(valuesOf([...log, entry(4, bottles)])).toEqual({ "fermenter.finalExtract": 3.4 });
  });
});
