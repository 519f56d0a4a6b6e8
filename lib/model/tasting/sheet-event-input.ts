import { z } from "zod";
import { instant } from "../log/instant";
import { counted } from "../measured";
import { oneOf, recordId } from "../written";
import { missingParts, SHEET_PART_NAMES } from "./sheet";
import type { TastingEvent } from "./sheet-event";
import { blindNumber, choiceInput, sheetInput } from "./sheet-input";

const stamp = {
  id: recordId,
  tastingId: recordId,
  flightNo: counted("Flight", { min: 1, max: 99 }),
  deviceId: recordId,
  deviceSeq: counted("Number of the entry", { min: 1, max: Number.MAX_SAFE_INTEGER }).nullable(),
  occurredAt: instant("Time of the sheet"),
  isFinal: z.boolean({ error: "Whether it is handed in is neither true nor false" }),
};

const sheetSaved = z
  .strictObject({ ...stamp, kind: z.literal("sheet"), entryNo: blindNumber("Entry"), payload: sheetInput })
  .superRefine(({ isFinal, payload }, context) => {
    const missing = missingParts(payload).map((part) => SHEET_PART_NAMES[part].toLowerCase());
    if (!isFinal || missing.length === 0) return;
    context.addIssue({
      code: "custom",
      path: ["payload", "scores"],
      message: `A sheet is handed in with all its points; missing: ${missing.join(", ")}`,
    });
  });

const choiceMade = z.strictObject({ ...stamp, kind: z.literal("choice"), payload: choiceInput });

/** An event of a tasting as a device sends it. */
export const tastingEventInput: z.ZodType<TastingEvent> = z
  .object({ kind: oneOf("Kind of entry", ["sheet", "choice"]) })
  .loose()
  .transform((event, context): TastingEvent => {
    const parsed = (event.kind === "sheet" ? sheetSaved : choiceMade).safeParse(event);
    if (parsed.success) return parsed.data;
    for (const issue of parsed.error.issues) context.addIssue({ ...issue });
    return z.NEVER;
  });
