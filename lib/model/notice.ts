import { z } from "zod";
import { recordId } from "./written";

export const NOTICE_KINDS = ["plan changed", "entered", "taken out"] as const;
export type NoticeKind = (typeof NOTICE_KINDS)[number];

/** What a notice is about: enough to write its words, also when the thing itself has moved on. */
export const noticePayload = z.strictObject({
  sharedBrewId: recordId,
  title: z.string(),
  /** Of the plan. */
  version: z.number().int(),
  /** What the organiser wrote about it. */
  note: z.string(),
  kettle: z.string(),
});
export type NoticePayload = z.output<typeof noticePayload>;

/** Something that a member is told. */
export interface Notice {
  readonly id: string;
  readonly kind: NoticeKind;
  readonly payload: NoticePayload;
  readonly createdAt: Date;
  readonly readAt: Date | null;
  readonly mailedAt: Date | null;
}

export const noticesRead = z.strictObject({ ids: z.array(recordId).min(1).max(200) });
export type NoticesRead = z.output<typeof noticesRead>;

/** The first line of a notice, on its page and as the subject of a mail. */
export function noticeInWords(kind: NoticeKind, { title, version, kettle }: NoticePayload): string {
  switch (kind) {
    case "plan changed":
      return `The plan of ${title} has changed: version ${String(version)}`;
    case "entered":
      return `You were entered for ${title} with ${kettle}`;
    case "taken out":
      return `You were taken out of ${title} with ${kettle}`;
  }
}
