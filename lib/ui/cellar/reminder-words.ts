import type { Reminder } from "@/lib/model/cellar/reminders";
import { dayAfter } from "./day-words";

/** What is to be done and when, in a sentence. */
export function reminderWords(reminder: Reminder): string {
  const what = reminder.kind === "dry hop" ? `Dry hops (${hopWords(reminder)})` : "A rest for diacetyl";
  const are = reminder.kind === "dry hop" ? "are" : "is";
  switch (reminder.state) {
    case "done":
      return `${what}: done.`;
    case "left out":
      return `${what}: left out, which the log says why.`;
    case "due":
      return `${what} ${are} due now${reminder.at === null ? "" : `; by the curve since ${dayAfter(reminder.at, 0)}`}.`;
    case "ahead":
      return reminder.at === null
        ? `${what} ${are} to come; the readings do not tell yet when.`
        : `${what} ${are} due about ${dayAfter(reminder.at, 0)}.`;
  }
}

function hopWords({ hops }: Reminder): string {
  return hops.map(({ name, grams }) => `${name}, ${String(Number(grams.toPrecision(3)))} g`).join("; ");
}
