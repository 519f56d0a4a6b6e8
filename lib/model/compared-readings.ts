import type { Brew } from "./brew";
import type { LoggedReading } from "./log/logged-readings";
import type { Reading } from "./reading";

/**
 * The readings that a comparison goes by: those of the ledger's numbers, and the final gravity of a packaged beer. Where
 * nobody read that by name, it is the last gravity of the fermenter before packaging.
 */
export function comparedReadings(brew: Pick<Brew, "id" | "readings" | "log">): readonly Reading[] {
  const { readings, log } = brew;
  const packaging = log.packagings.at(-1);
  if (packaging === undefined) return readings;
  if (readings.some(({ quantity, replaced }) => quantity === "fermenter.finalExtract" && !replaced)) return readings;
  const last = log.readings.findLast(
    ({ measured, isVoid, at }) => measured.quantity === "fermenter.gravity" && !isVoid && at <= packaging.at,
  );
  return last === undefined ? readings : [...readings, finalExtract(brew.id, last)];
}

function finalExtract(brewId: string, last: LoggedReading): Reading {
  const { value, sd, instrument, sampleC, note, entered } = last.measured;
  return {
    ...{ brewId, value, sd, instrument, sampleC, note, entered },
    ...{ id: last.id, deviceId: last.deviceId, deviceSeq: last.deviceSeq, actorName: last.actorName },
    quantity: "fermenter.finalExtract",
    occurredAt: new Date(last.at),
    receivedAt: last.receivedAt === null ? null : new Date(last.receivedAt),
    replaced: false,
  };
}
