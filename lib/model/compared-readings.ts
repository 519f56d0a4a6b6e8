import type { Brew } from "./brew";
import type { Packaged } from "./log/log-event";
import type { Logged } from "./log/project-log";
import type { LoggedReading } from "./log/logged-readings";
import type { Reading } from "./reading";

/** Bottles of one kind are filled alike to about this share. Common practice, no source. */
const FILL_SD = 0.02;

/**
 * The readings that a comparison goes by: those of the ledger's numbers, and what packaging says of two of them where
 * nobody read these by name. Beer ends as strong as the fermenter was last read, and is as much as the containers hold.
 */
export function comparedReadings(brew: Pick<Brew, "id" | "readings" | "log">): readonly Reading[] {
  const { readings, log } = brew;
  const packaging = log.packagings.at(-1);
  if (packaging === undefined) return readings;
  const isRead = (quantity: Reading["quantity"]): boolean =>
    readings.some((reading) => reading.quantity === quantity && !reading.replaced);
  const last = log.readings.findLast(
    ({ measured, isVoid, at }) => measured.quantity === "fermenter.gravity" && !isVoid && at <= packaging.at,
  );
  return [
    ...readings,
    ...(last === undefined || isRead("fermenter.finalExtract") ? [] : [finalExtract(brew.id, last)]),
    ...(isRead("package.volume") ? [] : [packagedVolume(brew.id, packaging)]),
  ];
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

function packagedVolume(brewId: string, { id, at, actorName, receivedAt, content }: Logged<Packaged>): Reading {
  const litres = content.containers.reduce((sum, each) => sum + each.litres * each.count, 0);
  return {
    ...{ id, brewId, actorName },
    ...{ deviceId: "", deviceSeq: null, instrument: "other", sampleC: null, note: content.note },
    quantity: "package.volume",
    value: litres,
    sd: FILL_SD * litres,
    entered: content.containers.map(({ name, count }) => `${String(count)} × ${name}`).join(", "),
    occurredAt: new Date(at),
    receivedAt: receivedAt === null ? null : new Date(receivedAt),
    replaced: false,
  };
}
