"use client";

import type { ActionResult } from "@/lib/model/action-result";
import { ActionForm } from "@/lib/ui/action-form";
import { SubmitButton } from "@/lib/ui/submit-button";

interface GiveKettleProps {
  readonly isGiven: boolean;
  readonly action: (previous: ActionResult<void> | null, form: FormData) => Promise<ActionResult<void>>;
}

/** Where the owner of a kettle decides whether other clubs learn from it. */
export function GiveKettle({ isGiven, action }: GiveKettleProps) {
  return (
    <section aria-labelledby="give" className="no-print mt-8 max-w-3xl">
      <h2 id="give">For other clubs</h2>
      <p className="mb-3">
        {isGiven ? (
          <>What this kettle has told is given to other clubs. Taken back, it is gone from there at once.</>
        ) : (
          <>
            You can give what this kettle has told to other clubs: its size, its figures and what its brews say of them.
            Your name, the club’s, the kettle’s and the brews’ stay here, and its height is told to 100 m only. Nobody
            sees a single kettle; kettles of a kind count once five people have given theirs.
          </>
        )}
      </p>
      <ActionForm action={action}>
        {({ isPending }) => (
          <>
            <input type="hidden" name="isGiven" value={isGiven ? "no" : "yes"} />
            <div>
              <SubmitButton pending="Saving…" isPending={isPending} kind={isGiven ? "attention" : "plain"}>
                {isGiven ? "Take it back" : "Give it to other clubs"}
              </SubmitButton>
            </div>
          </>
        )}
      </ActionForm>
    </section>
  );
}
