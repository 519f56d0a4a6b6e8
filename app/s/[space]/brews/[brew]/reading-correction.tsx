"use client";

import { readDraft } from "@/lib/ui/brew/reading-draft";
import type { ReadingFieldsProps } from "@/lib/ui/brew/reading-fields";

/** What the correction of an instrument makes of the number, while it is typed. */
export function ReadingCorrection({
  draft,
  point,
  preferences,
}: Pick<ReadingFieldsProps, "draft" | "point" | "preferences">) {
  if (draft.amount.trim() === "") return null;
  const read = readDraft(draft, point, preferences);
  if (!read.ok || read.reading.correction === null) return null;
  return <output className="text-sm text-muted">{read.reading.correction}.</output>;
}
