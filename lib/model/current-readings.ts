import type { MeasurableId, Reading } from "./reading";

/**
 * The reading that counts for each quantity: the last one given. Earlier ones stay in the log, struck through.
 *
 * On one device its own count says which came last, for who enters a value anew may give it an earlier time. Between
 * devices it is the time of the reading: which of two phones reached the server first says nothing.
 */
export function currentReadings(readings: readonly Reading[]): ReadonlyMap<MeasurableId, Reading> {
  const ofDevices = new Map<string, Reading>();
  for (const reading of readings) {
    if (reading.replaced) continue;
    const key = `${reading.quantity} ${reading.deviceId}`;
    const before = ofDevices.get(key);
    if (before === undefined || isLaterOnDevice(reading, before)) ofDevices.set(key, reading);
  }
  const current = new Map<MeasurableId, Reading>();
  for (const reading of ofDevices.values()) {
    const before = current.get(reading.quantity);
    if (before === undefined || isLater(reading, before)) current.set(reading.quantity, reading);
  }
  return current;
}

function isLaterOnDevice(a: Reading, b: Reading): boolean {
  if (a.deviceSeq === null || b.deviceSeq === null || a.deviceSeq === b.deviceSeq) return isLater(a, b);
  return a.deviceSeq > b.deviceSeq;
}

function isLater(a: Reading, b: Reading): boolean {
  const apart = a.occurredAt.getTime() - b.occurredAt.getTime();
  return apart === 0 ? a.id > b.id : apart > 0;
}
