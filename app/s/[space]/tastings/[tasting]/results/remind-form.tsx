"use client";

import type { ActionResult } from "@/lib/model/action-result";
import { ActionForm } from "@/lib/ui/action-form";
import { ClockTime } from "@/lib/ui/brew/clock-time";
import { Notice } from "@/lib/ui/notice";
import { SubmitButton } from "@/lib/ui/submit-button";

type Told = ActionResult<{ readonly judges: number }>;

interface RemindFormProps {
  readonly remindedAt: Date | null;
  readonly action: (previous: Told | null, form: FormData) => Promise<Told>;
}

/** Tells the judges whose sheets are missing so, on the site and by mail to those who get mail. */
export function RemindForm({ remindedAt, action }: RemindFormProps) {
  return (
    <div className="no-print mt-3 max-w-xl">
      {remindedAt === null ? null : (
        <p className="text-muted">
          Judges were last reminded on <ClockTime at={remindedAt} withDay />.
        </p>
      )}
      <ActionForm<{ readonly judges: number }> action={action}>
        {({ result, isPending }) => (
          <>
            <div>
              <SubmitButton pending="Reminding…" isPending={isPending} kind="quiet">
                Remind of missing sheets
              </SubmitButton>
            </div>
            {result?.status === "ok" ? (
              <Notice live>
                {result.data.judges === 1 ? "One judge is" : `${String(result.data.judges)} judges are`} told how many
                sheets are missing.
              </Notice>
            ) : null}
          </>
        )}
      </ActionForm>
    </div>
  );
}
