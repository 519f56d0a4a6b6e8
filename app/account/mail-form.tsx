"use client";

import type { MailChoice } from "@/lib/model/mail-choice";
import { ActionForm } from "@/lib/ui/action-form";
import { CheckboxField } from "@/lib/ui/checkbox-field";
import { Notice } from "@/lib/ui/notice";
import { SubmitButton } from "@/lib/ui/submit-button";
import { saveMailChoiceAction } from "./actions";

interface MailFormProps {
  readonly choice: MailChoice;
  /** Whether this service is set up to send mail. */
  readonly isSent: boolean;
}

/** What comes by e-mail as well; the notices on the site stay. */
export function MailForm({ choice, isSent }: MailFormProps) {
  return (
    <ActionForm action={saveMailChoiceAction}>
      {({ result, isPending }) => (
        <>
          <CheckboxField
            name="changes"
            label="Mail me when the plan of a shared brew changes that I take part in"
            defaultChecked={choice.changes}
          />
          <p className="field-hint">
            {isSent
              ? "The notice on the site comes in any case."
              : "This service is not set up to send mail, so there is a notice on the site only."}
          </p>
          {result?.status === "ok" && !isPending ? <Notice live>Saved.</Notice> : null}
          <div>
            <SubmitButton pending="Saving…" isPending={isPending}>
              Save what is mailed
            </SubmitButton>
          </div>
        </>
      )}
    </ActionForm>
  );
}
