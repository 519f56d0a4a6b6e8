import type { Prediction } from "./brew";
import type { CalendarEvent } from "./calendar";
import { rulesInWords, type SharedBrewRules } from "./shared-brew-rules";
import { instantOf, localTime } from "./zoned-time";

const MINUTE_MS = 60_000;
const REMINDER_TIME = "19:00";

/** What is known of one member's brew day. */
export interface BrewDay {
  readonly sharedBrewId: string;
  readonly equipmentId: string;
  readonly title: string;
  readonly kettleName: string;
  readonly brewAt: Date;
  readonly zone: string;
  readonly planVersion: number;
  /** Of the member's place, which changes with the day. */
  readonly lockVersion: number;
  readonly rules: SharedBrewRules;
  readonly isCancelled: boolean;
  /** null where the recipe does not fit: the day then lasts an assumed eight hours. */
  readonly dayMinutes: Prediction | null;
  readonly url: string | null;
}

const ASSUMED_MINUTES = 8 * 60;

/** The brew day in a calendar: from its start for as long as is predicted, with a reminder on the evening before. */
export function brewDayEvent(day: BrewDay): CalendarEvent {
  const { brewAt, zone, planVersion, lockVersion, dayMinutes, isCancelled } = day;
  const minutes = Math.ceil(dayMinutes?.value ?? ASSUMED_MINUTES);
  const dayBefore = localTime(new Date(brewAt.getTime() - 24 * 60 * MINUTE_MS), zone).day;
  const remindAt = instantOf({ day: dayBefore, time: REMINDER_TIME, zone });
  return {
    uid: `${day.sharedBrewId}.${day.equipmentId}@gylebook`,
    // Both only ever grow, and so does their sum.
    sequence: planVersion - 1 + (lockVersion - 1),
    start: brewAt,
    end: new Date(brewAt.getTime() + minutes * MINUTE_MS),
    summary: `${isCancelled ? "Off: " : ""}Brew ${day.title} on ${day.kettleName}`,
    description: [
      lengthInWords(dayMinutes),
      `Plan version ${String(planVersion)}.`,
      ...rulesInWords(day.rules).map((words) => `${words}.`),
    ].join("\n"),
    url: day.url,
    isCancelled,
    remindAt: remindAt !== null && remindAt < brewAt ? remindAt : null,
  };
}

function lengthInWords(prediction: Prediction | null): string {
  if (prediction === null) return "The recipe does not fit this kettle yet, so eight hours are assumed.";
  const { value, low80, high80 } = prediction;
  return `The brew day takes ${hours(value)}; four times out of five between ${hours(low80)} and ${hours(high80)}.`;
}

function hours(minutes: number): string {
  const whole = Math.round(minutes);
  return `${String(Math.floor(whole / 60))} h ${String(whole % 60).padStart(2, "0")} min`;
}
