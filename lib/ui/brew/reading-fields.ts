import type { Preferences } from "@/lib/model/preferences";
import type { DraftErrors, DraftField, MeasuringPoint, ReadingDraft } from "./reading-draft";

/** What the fields of a reading share. */
export interface ReadingFieldsProps {
  readonly name: string;
  readonly point: MeasuringPoint;
  readonly preferences: Preferences;
  readonly draft: ReadingDraft;
  readonly errors: DraftErrors;
  readonly type: (field: DraftField, text: string) => void;
}
