"use client";

import { useRouter } from "next/navigation";
import { useState, useTransition, type SubmitEvent } from "react";
import type { Preferences } from "@/lib/model/preferences";
import type { Proposal, ProposedFigure } from "@/lib/model/trial/proposals";
import { takenWords } from "@/lib/ui/equipment/taken-words";
import { Notice } from "@/lib/ui/notice";
import { SubmitButton } from "@/lib/ui/submit-button";
import { acceptFiguresAction } from "./actions";
import { ProposalLine } from "./proposal-line";

interface AcceptFiguresProps {
  readonly space: string;
  readonly equipmentId: string;
  readonly trialId: string;
  readonly rev: number;
  readonly proposals: readonly Proposal[];
  readonly mayWrite: boolean;
  /** Figures count only once their readings are on the server. */
  readonly isAllSent: boolean;
  readonly preferences: Preferences;
}

/** The figures of the trial beside those of the profile; the brewer takes each or leaves it. */
export function AcceptFigures(props: AcceptFiguresProps) {
  const { space, equipmentId, trialId, rev, proposals, mayWrite, isAllSent, preferences } = props;
  const router = useRouter();
  const [chosen, setChosen] = useState<ReadonlyMap<ProposedFigure, boolean>>(new Map());
  const [answer, setAnswer] = useState<string | null>(null);
  const [isPending, startTransition] = useTransition();
  const isChosen = ({ figure, doubt }: Proposal): boolean => chosen.get(figure) ?? doubt === null;
  const accepted = proposals.filter(isChosen).map(({ figure, after }) => ({ figure, value: after.value }));

  function submit(event: SubmitEvent<HTMLFormElement>): void {
    event.preventDefault();
    startTransition(async () => {
      const result = await acceptFiguresAction(space, equipmentId, { trialId, baseRev: rev, accepted });
      setAnswer(takenWords(result));
      router.refresh();
    });
  }

  return (
    <section aria-labelledby="accept" className="mt-10 border-t border-ink pt-6">
      <h2 id="accept" className="mb-2">
        Into the profile
      </h2>
      <p className="mb-4">
        Nothing changes by itself. Choose which figures of this trial the profile takes; brews that are planned keep
        theirs.
      </p>
      {proposals.length === 0 ? <p className="text-muted">The trial does not tell a figure yet.</p> : null}
      <form onSubmit={submit}>
        <ul>
          {proposals.map((proposal) => (
            <ProposalLine
              key={proposal.figure}
              {...{ proposal, preferences, mayWrite }}
              isChosen={isChosen(proposal)}
              onChoose={(take) => setChosen(new Map([...chosen, [proposal.figure, take]]))}
            />
          ))}
        </ul>
        {mayWrite && proposals.length > 0 ? (
          <div className="no-print mt-4 flex flex-col items-start gap-3">
            <SubmitButton pending="Saving…" isPending={isPending} disabled={accepted.length === 0 || !isAllSent}>
              Save as revision {rev + 1}
            </SubmitButton>
            {isAllSent ? null : <p className="text-muted">As soon as every reading is on the server.</p>}
          </div>
        ) : null}
      </form>
      <div role="status">{answer === null ? null : <Notice>{answer}</Notice>}</div>
    </section>
  );
}
