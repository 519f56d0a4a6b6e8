import { randomUUID } from "node:crypto";

/** A reading as a phone sends it. */
export const sampleReading = (brewId: string) => ({
  id: randomUUID(),
  brewId,
  deviceId: randomUUID(),
  deviceSeq: 1,
  quantity: "kettle.preBoil" as const,
  value: 27.5,
  sd: 0.3,
  instrument: "sight glass" as const,
  sampleC: 70,
  occurredAt: "2026-03-14T11:05:00Z",
  note: "",
  entered: "27.5 L",
});
