import type { MeasurableId, Reading } from "./reading";

/** The reading that counts for each quantity: the last one given. Earlier ones stay in the log, struck through. */
export function currentReadings(readings: readonly Reading[]): ReadonlyMap<MeasurableId, Reading> {
  const current = new Map<MeasurableId, Reading>();
  for (const reading of readings) {
    const before = current.get(reading.quantity);
    if (before === undefined || isLater(reading, before)) current.set(reading.quantity, reading);
  }
  return current;
}

/** The server's clock decides between people; on one device its own count does. */
function isLater(a: Reading, b: Reading): boolean {
  if (a.deviceId === b.deviceId) return a.deviceSeq > b.deviceSeq;
  return a.receivedAt.getTime() > b.receivedAt.getTime();
}
