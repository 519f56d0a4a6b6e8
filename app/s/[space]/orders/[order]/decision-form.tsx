"use client";

import type { OrderSubstitution } from "@/lib/model/order/order";
import { ActionForm } from "@/lib/ui/action-form";
import { SubmitButton } from "@/lib/ui/submit-button";
import type { OrderAction } from "./order-action";

interface DecisionFormProps {
  readonly substitution: OrderSubstitution;
  readonly action: OrderAction;
}

/** Yes or no to a replacement in one's own beer; an agreement can be taken back while the order is open. */
export function DecisionForm({ substitution, action }: DecisionFormProps) {
  const { id, lockVersion, state, to } = substitution;
  return (
    <div className="flex flex-wrap gap-3">
      {state === "proposed" ? (
        <Answer {...{ id, lockVersion, action }} state="agreed" words="Agree" about={to.name} />
      ) : null}
      <Answer {...{ id, lockVersion, action }} state="declined" words="Decline" about={to.name} />
    </div>
  );
}

function Answer(props: {
  readonly id: string;
  readonly lockVersion: number;
  readonly action: OrderAction;
  readonly state: "agreed" | "declined";
  readonly words: string;
  readonly about: string;
}) {
  const { id, lockVersion, action, state, words, about } = props;
  return (
    <ActionForm action={action}>
      {({ isPending }) => (
        <>
          <input type="hidden" name="id" value={id} />
          <input type="hidden" name="lockVersion" value={lockVersion} />
          <input type="hidden" name="state" value={state} />
          <SubmitButton pending="Saving…" isPending={isPending} kind={state === "agreed" ? "quiet" : "attention"}>
            {words}
            <span className="sr-only"> to {about}</span>
          </SubmitButton>
        </>
      )}
    </ActionForm>
  );
}
