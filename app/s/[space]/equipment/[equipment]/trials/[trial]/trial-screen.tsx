"use client";

import { useMemo, useState } from "react";
import type { Equipment } from "@/lib/calc/ledger";
import type { Preferences } from "@/lib/model/preferences";
import { proposalsOf } from "@/lib/model/trial/proposals";
import { trialDay, type Trial } from "@/lib/model/trial/trial";
import type { TrialPart } from "@/lib/model/trial/trial-entry";
import { trialRuns } from "@/lib/model/trial/trial-log";
import { trialResults } from "@/lib/model/trial/trial-results";
import { ExplanationPanel } from "@/lib/ui/explanation-panel";
import { AcceptFigures } from "./accept-figures";
import { DeliveryLine } from "./delivery-line";
import { checkedEntry } from "./make-entry";
import { PartChooser } from "./part-chooser";
import { PartView } from "./part-view";
import { useFigureExplanation } from "./use-figure-explanation";
import { useTrialLog } from "./use-trial-log";

interface TrialScreenProps {
  readonly space: string;
  readonly trial: Trial;
  readonly equipment: Equipment;
  readonly rev: number;
  readonly mayWrite: boolean;
  readonly preferences: Preferences;
}

/** A commissioning trial as it goes: part by part, with what it tells so far and what may go into the profile. */
export function TrialScreen({ space, trial, equipment, rev, mayWrite, preferences }: TrialScreenProps) {
  const { id: trialId, equipmentId } = trial;
  const address = `/s/${space}/equipment/${equipmentId}/trials/${trialId}/readings`;
  const log = useTrialLog({ trialId, kept: trial.entries, address, mayWrite });
  const [part, setPart] = useState<TrialPart>("marks");
  const [chosenRuns, setChosenRuns] = useState<Readonly<Partial<Record<TrialPart, number>>>>({});
  const [problem, setProblem] = useState<string | null>(null);
  const { explanation, interval, open, close } = useFigureExplanation();

  const runs = useMemo(() => trialRuns(log.entries), [log.entries]);
  const results = useMemo(() => trialResults(runs, equipment), [runs, equipment]);
  const proposals = useMemo(
    () => proposalsOf({ results, equipment, day: trialDay(trial.begunAt) }),
    [results, equipment, trial.begunAt],
  );
  const lastRun = Math.max(1, ...runs.filter((each) => each.part === part).map((each) => each.run));

  function add(made: object): void {
    const checked = checkedEntry(made);
    setProblem(checked.ok ? null : checked.why);
    if (checked.ok) log.add(checked.entry);
  }

  return (
    <>
      <PartChooser part={part} runs={runs} onChoose={setPart} />
      <DeliveryLine log={log} />
      <p role="alert" className="text-accent">
        {problem}
      </p>
      <PartView
        {...{ part, runs, results, equipment, preferences, mayWrite }}
        run={chosenRuns[part] ?? lastRun}
        onRun={(run) => setChosenRuns({ ...chosenRuns, [part]: run })}
        onAdd={add}
        onExplain={open}
      />
      <AcceptFigures
        {...{ space, equipmentId, trialId, rev, proposals, mayWrite, preferences }}
        isAllSent={log.pendingCount === 0}
      />
      <ExplanationPanel explanation={explanation} interval={interval} preferences={preferences} onClose={close} />
    </>
  );
}
