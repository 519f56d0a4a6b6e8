import type { Reading } from "../reading";
import type { LoggedReading, ReadingVersion } from "./logged-readings";
import { isSeries } from "./series";

/**
 * The readings of the ledger's numbers, each value that was ever given, in the order of the log. What a correction has
 * replaced is there and does not count.
 */
export function brewReadings(brewId: string, readings: readonly LoggedReading[]): readonly Reading[] {
  return readings.flatMap((reading) => {
    const last = reading.history.findLast(({ measured }) => measured === reading.measured);
    return reading.history.flatMap((version) => asReading(brewId, reading, version, version !== last) ?? []);
  });
}

function asReading(
  brewId: string,
  { at, deviceId, deviceSeq, isVoid }: LoggedReading,
  { id, measured, actorName, receivedAt }: ReadingVersion,
  isOvertaken: boolean,
): Reading | null {
  if (measured === null || isSeries(measured.quantity)) return null;
  const { quantity, value, sd, instrument, sampleC, note, entered } = measured;
  return {
    id,
    brewId,
    deviceId,
    deviceSeq,
    quantity,
    value,
    sd,
    instrument,
    sampleC,
    note,
    entered,
    occurredAt: new Date(at),
    actorName,
    receivedAt: receivedAt === null ? null : new Date(receivedAt),
    replaced: isVoid || isOvertaken,
  };
}
