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
    ...change,
  };
}

describe("currentReadings", () => {
  it("takes the reading that one device gave last, whatever its clock says", () => {
    const first = reading({ deviceSeq: 1, occurredAt: new Date("2026-03-14T12:00:00Z") });
    const second = reading({ deviceSeq: 2, value: 26, occurredAt: new Date("2026-03-14T11:00:00Z") });
    expect(currentReadings([second, first]).get("kettle.preBoil")).toBe(second);
  });

  it("takes the reading of two devices that the server had last", () => {
    const early = reading({ deviceId: "phone", deviceSeq: 9 });
    const late = reading({ deviceId: "tablet", receivedAt: new Date("2026-03-14T11:05:00Z") });
    expect(currentReadings([late, early]).get("kettle.preBoil")).toBe(late);
  });

  it("keeps one reading of each quantity", () => {
    const readings = [reading({}), reading({ quantity: "kettle.postBoil", deviceSeq: 2 })];
    expect([...currentReadings(readings).keys()]).toEqual(["kettle.preBoil", "kettle.postBoil"]);
  });
});
