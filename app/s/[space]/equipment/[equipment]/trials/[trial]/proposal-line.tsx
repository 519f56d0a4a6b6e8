"use client";

import type { Preferences } from "@/lib/model/preferences";
import type { Proposal } from "@/lib/model/trial/proposals";
import { FigureSide } from "@/lib/ui/equipment/figure-side";

interface ProposalLineProps {
  readonly proposal: Proposal;
  readonly isChosen: boolean;
  readonly mayWrite: boolean;
  readonly preferences: Preferences;
  readonly onChoose: (take: boolean) => void;
}

/** One figure: what the profile says, what the trial says, and by what. */
export function ProposalLine({ proposal, isChosen, mayWrite, preferences, onChoose }: ProposalLineProps) {
  const { figure, label, before, after, dimension, basis, doubt } = proposal;
  return (
    <li className="border-b border-rule py-3">
      <label className="flex min-h-12 items-start gap-3" htmlFor={`take-${figure}`}>
        {mayWrite ? (
          <input
            id={`take-${figure}`}
            type="checkbox"
            className="no-print mt-1 size-6 shrink-0"
            checked={isChosen}
            onChange={(event) => onChoose(event.target.checked)}
          />
        ) : null}
        <span className="font-semibold">{label}</span>
      </label>
      <dl className="grid grid-cols-2 gap-x-6 sm:max-w-lg">
        <FigureSide none="none" label={beforeWords(before)} figure={before} {...{ dimension, preferences }} />
        <FigureSide none="none" label="After, measured" figure={after} {...{ dimension, preferences }} />
      </dl>
      <p className="text-sm text-muted">By: {basis}.</p>
      {doubt === null ? null : <p className="text-sm text-accent">{doubt}</p>}
    </li>
  );
}

function beforeWords(before: Proposal["before"]): string {
  return before === null || before.from === null ? "Before" : `Before, ${before.from}`;
}
