"use client";

import { useRouter } from "next/navigation";
import { useState, useTransition, type SubmitEvent } from "react";
import type { FigureName } from "@/lib/calc/ledger";
import type { LearnedRow } from "@/lib/model/learning/learned-figures";
import type { Preferences } from "@/lib/model/preferences";
import { takenWords } from "@/lib/ui/equipment/taken-words";
import { Notice } from "@/lib/ui/notice";
import { SubmitButton } from "@/lib/ui/submit-button";
import { acceptLearnedAction } from "./actions";
import { LearnedLine } from "./learned-line";

interface AcceptLearnedProps {
  readonly space: string;
  readonly equipmentId: string;
  readonly rev: number;
  readonly since: string | null;
  readonly rows: readonly LearnedRow[];
  /** Of the brews that count, in order of time. */
  readonly titles: readonly string[];
  readonly mayWrite: boolean;
  readonly preferences: Preferences;
}

/** The figures of the profile beside what brews say; the owner takes each or leaves it. */
export function AcceptLearned(props: AcceptLearnedProps) {
  const { space, equipmentId, rev, since, rows, titles, mayWrite, preferences } = props;
  const router = useRouter();
  const [chosen, setChosen] = useState<ReadonlyMap<FigureName, boolean>>(new Map());
  const [answer, setAnswer] = useState<string | null>(null);
  const [isPending, startTransition] = useTransition();
  const isChosen = (row: LearnedRow): boolean => isNews(row) && (chosen.get(row.name) ?? row.drift === null);
  const accepted = rows.flatMap((row) =>
    isChosen(row) && row.proposed !== null ? [{ figure: row.name, value: row.proposed.value }] : [],
  );

  function submit(event: SubmitEvent<HTMLFormElement>): void {
    event.preventDefault();
    startTransition(async () => {
      setAnswer(takenWords(await acceptLearnedAction(space, equipmentId, { baseRev: rev, since, accepted })));
      router.refresh();
    });
  }

  return (
    <section aria-labelledby="figures">
      <h2 id="figures">Figures</h2>
      <p className="mb-3 max-w-3xl">
        The last of each is for the next brew, with how far one brew is off from another; the others say how well the
        figure itself is known. All intervals hold four cases in five. A figure of which no brew tells keeps what it
        has.
      </p>
      <form onSubmit={submit}>
        <ul>
          {rows.map((row) => (
            <LearnedLine
              key={row.name}
              {...{ row, titles, preferences }}
              mayTake={mayWrite && isNews(row)}
              isChosen={isChosen(row)}
              onChoose={(take) => setChosen(new Map([...chosen, [row.name, take]]))}
            />
          ))}
        </ul>
        {mayWrite && rows.some(isNews) ? (
          <div className="no-print mt-4">
            <SubmitButton pending="Saving…" isPending={isPending} disabled={accepted.length === 0}>
              Save as revision {rev + 1}
            </SubmitButton>
          </div>
        ) : null}
      </form>
      <div role="status">{answer === null ? null : <Notice>{answer}</Notice>}</div>
    </section>
  );
}

/** Whether the profile does not have it already. */
function isNews({ now, proposed }: LearnedRow): boolean {
  return proposed !== null && (now.from !== "learned" || now.value !== proposed.value || now.sd !== proposed.sd);
}
