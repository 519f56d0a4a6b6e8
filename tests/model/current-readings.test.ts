import { describe, expect, it } from "vitest";
import type { Reading } from "@/lib/model/reading";
import { currentReadings } from "@/lib/model/current-readings";

function reading(change: Partial<Reading>): Reading {
  return {
    id: "r",
    brewId: "b",
    deviceId: "phone",
    deviceSeq: 1,
    quantity: "kettle.preBoil",
    value: 27,
    sd: 0.3,
    instrument: "sight glass",
    sampleC: null,
    occurredAt: new Date("2026-03-14T11:00:00Z"),
    note: "",
    entered: "27 L",
    actorName: "Somebody",
    receivedAt: new Date("2026-03-14T11:00:10Z"),
    replaced: false,
    ...change,
  };
}

describe("currentReadings", () => {
  it("takes the reading that one device gave last, whatever its clock says", () => {
    const first = reading({ deviceSeq: 1, occurredAt: new Date("2026-03-14T12:00:00Z") });
    const second = reading({ deviceSeq: 2, value: 26, occurredAt: new Date("2026-03-14T11:00:00Z") });
    expect(currentReadings([second, first]).get("kettle.preBoil")).toBe(second);
  });

  it("takes the later of two devices, whichever reached the server first", () => {
    const early = reading({ deviceId: "phone", deviceSeq: 9, receivedAt: new Date("2026-03-14T18:00:00Z") });
    const late = reading({ id: "s", deviceId: "tablet", occurredAt: new Date("2026-03-14T11:05:00Z") });
    for (const readings of [
      [late, early],
      [early, late],
    ]) {
      expect(currentReadings(readings).get("kettle.preBoil")).toBe(late);
    }
  });

  it("does not take what was corrected or voided", () => {
    const first = reading({});
    const voided = reading({ id: "s", deviceSeq: 2, replaced: true });
    expect(currentReadings([first, voided]).get("kettle.preBoil")).toBe(first);
    expect(currentReadings([voided]).size).toBe(0);
  });

  it("keeps one reading of each quantity", () => {
    const readings = [reading({}), reading({ quantity: "kettle.postBoil", deviceSeq: 2 })];
    expect([...currentReadings(readings).keys()]).toEqual(["kettle.preBoil", "kettle.postBoil"]);
  });
});
