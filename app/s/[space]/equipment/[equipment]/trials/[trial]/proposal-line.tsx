"use client";

import type { Dimension } from "@/lib/calc/ledger";
import type { Preferences } from "@/lib/model/preferences";
import type { Proposal } from "@/lib/model/trial/proposals";
import { intervalOfSd } from "@/lib/ui/brew/interval-of-sd";
import { Quantity } from "@/lib/ui/quantity";

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
        <Side label={beforeWords(before)} figure={before} {...{ dimension, preferences }} />
        <Side label="After, measured" figure={after} {...{ dimension, preferences }} />
      </dl>
      <p className="text-sm text-muted">By: {basis}.</p>
      {doubt === null ? null : <p className="text-sm text-accent">{doubt}</p>}
    </li>
  );
}

function beforeWords(before: Proposal["before"]): string {
  return before === null || before.from === null ? "Before" : `Before, ${before.from}`;
}

interface SideProps {
  readonly label: string;
  readonly figure: { readonly value: number; readonly sd: number | null } | null;
  readonly dimension: Dimension;
  readonly preferences: Preferences;
}

function Side({ label, figure, dimension, preferences }: SideProps) {
  return (
    <div>
      <dt className="text-sm text-muted">{label}</dt>
      <dd>
        {figure === null ? (
          "none"
        ) : (
          <Quantity
            value={figure.value}
            dimension={dimension}
            interval={intervalOfSd(figure.value, figure.sd)}
            // A jug tells more of a litre than a recipe does.
            digits={dimension === "volume" ? 2 : undefined}
            preferences={preferences}
          />
        )}
      </dd>
    </div>
  );
}
