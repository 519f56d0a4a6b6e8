import type { Stamped } from "@/lib/model/log/log-entry";
import type { EventContent, LogEvent } from "@/lib/model/log/log-event";
import type { DeviceClock } from "./clock";
import { dayQueue, type DayDatabase } from "./database";
import { keepInQueue, type Person } from "./keep-in-queue";

/** Who writes, and at which brew. */
export interface Writer extends Person {
  readonly brewId: string;
}

/** Keeps events of a brew on this device, all of them or none. */
export function keepEvents(
  database: DayDatabase,
  clock: DeviceClock,
  writer: Writer,
  contents: readonly EventContent[],
  occurredAt?: number,
): Promise<readonly LogEvent[]> {
  const { brewId } = writer;
  const make = contents.map((content) => (stamp: Stamped): LogEvent => ({ ...content, ...stamp, brewId }));
  return keepInQueue(dayQueue(database), clock, writer, make, occurredAt);
}
