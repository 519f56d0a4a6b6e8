"use client";

import type { ServedFlight } from "@/lib/model/tasting/judge-sheet";
import { ActionForm } from "@/lib/ui/action-form";
import { Notice } from "@/lib/ui/notice";
import { SubmitButton } from "@/lib/ui/submit-button";
import { enterChoiceAction, enterSheetAction } from "./actions";
import { PaperChoiceFields } from "./paper-choice-fields";
import { PaperSheetFields } from "./paper-sheet-fields";

interface PaperFormProps {
  readonly space: string;
  readonly tastingId: string;
  readonly judgeId: string;
  readonly name: string;
  readonly flight: ServedFlight;
  /** null of a triangle or duo-trio. */
  readonly entryNo: number | null;
}

/** One sheet from paper, in the judge's name. */
export function PaperForm({ space, tastingId, judgeId, name, flight, entryNo }: PaperFormProps) {
  const enter = entryNo === null ? enterChoiceAction : enterSheetAction;
  const what = entryNo === null ? flight.title : `Entry ${String(entryNo)}`;
  return (
    <section aria-labelledby="paper-sheet" className="mt-6 max-w-xl">
      <h2 id="paper-sheet">
        {what}, judged by {name}
      </h2>
      <ActionForm<void> action={enter.bind(null, space, tastingId)}>
        {({ result, errors, isPending }) => (
          <>
            <input type="hidden" name="judgeId" value={judgeId} />
            <input type="hidden" name="flightNo" value={flight.flightNo} />
            {entryNo === null ? (
              <PaperChoiceFields flight={flight} errors={errors} />
            ) : (
              <>
                <input type="hidden" name="entryNo" value={entryNo} />
                <PaperSheetFields errors={errors} />
              </>
            )}
            {result?.status === "ok" ? <Notice live>Entered for {name}.</Notice> : null}
            <div>
              <SubmitButton pending="Entering…" isPending={isPending}>
                Enter for {name}
              </SubmitButton>
            </div>
          </>
        )}
      </ActionForm>
    </section>
  );
}
