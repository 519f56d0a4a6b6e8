import { z } from "zod";
import { REMINDER_KINDS, type ReminderKind } from "./cellar/reminders";
import { recordId } from "./written";

const PLAN_KINDS = ["plan changed", "entered", "taken out"] as const;
type PlanKind = (typeof PLAN_KINDS)[number];

const TASTING_KINDS = ["tasting opened", "tasting reminder", "tasting revealed"] as const;
type TastingKind = (typeof TASTING_KINDS)[number];

export const NOTICE_KINDS = [...PLAN_KINDS, ...REMINDER_KINDS, ...TASTING_KINDS] as const;

/** What a notice of a shared brew is about: enough to write its words, also when the thing itself has moved on. */
const planPayload = z.strictObject({
  sharedBrewId: recordId,
  title: z.string(),
  /** Of the plan. */
  version: z.number().int(),
  /** What the organiser wrote about it. */
  note: z.string(),
  kettle: z.string(),
});

/** What a notice of the cellar is about. */
const brewPayload = z.strictObject({
  brewId: recordId,
  title: z.string(),
  kettle: z.string(),
  /** What is to be done, in words. */
  note: z.string(),
});

/** What a notice of a tasting is about: which one, and nothing of what is in it. */
const tastingPayload = z.strictObject({ tastingId: recordId, title: z.string(), note: z.string() });

/** What somebody is told. */
export type NoticeAbout =
  | { readonly kind: PlanKind; readonly payload: z.output<typeof planPayload> }
  | { readonly kind: ReminderKind; readonly payload: z.output<typeof brewPayload> }
  | { readonly kind: TastingKind; readonly payload: z.output<typeof tastingPayload> };

/** Something that a member is told. */
export type Notice = NoticeAbout & {
  readonly id: string;
  readonly createdAt: Date;
  readonly readAt: Date | null;
  readonly mailedAt: Date | null;
};

export const noticesRead = z.strictObject({ ids: z.array(recordId).min(1).max(200) });
export type NoticesRead = z.output<typeof noticesRead>;

/** Reads what a notice is about, by its kind. */
export function readAbout(kind: (typeof NOTICE_KINDS)[number], payload: unknown): NoticeAbout {
  if (isReminder(kind)) return { kind, payload: brewPayload.parse(payload) };
  if (isOfTasting(kind)) return { kind, payload: tastingPayload.parse(payload) };
  return { kind, payload: planPayload.parse(payload) };
}

function isReminder(kind: string): kind is ReminderKind {
  return REMINDER_KINDS.some((each) => each === kind);
}

function isOfTasting(kind: string): kind is TastingKind {
  return TASTING_KINDS.some((each) => each === kind);
}

/** The first line of a notice, on its page and as the subject of a mail. */
export function noticeInWords({ kind, payload }: NoticeAbout): string {
  switch (kind) {
    case "plan changed":
      return `The plan of ${payload.title} has changed: version ${String(payload.version)}`;
    case "entered":
      return `You were entered for ${payload.title} with ${payload.kettle}`;
    case "taken out":
      return `You were taken out of ${payload.title} with ${payload.kettle}`;
    case "dry hop":
      return `Dry hops are due in ${payload.title} from ${payload.kettle}`;
    case "diacetyl rest":
      return `A rest for diacetyl is due for ${payload.title} from ${payload.kettle}`;
    case "tasting opened":
      return `${payload.title} is open: you have a part in it`;
    case "tasting reminder":
      return `${payload.title}: sheets of yours are not in yet`;
    case "tasting revealed":
      return `${payload.title} is revealed: see what was in the glasses`;
  }
}

/** Where the thing itself is, under the address of its space. */
export function noticePath({ payload }: NoticeAbout): string {
  if ("brewId" in payload) return `/brews/${payload.brewId}/cellar`;
  return "tastingId" in payload ? `/tastings/${payload.tastingId}` : `/shared-brews/${payload.sharedBrewId}`;
}
