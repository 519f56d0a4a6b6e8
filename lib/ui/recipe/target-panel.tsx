"use client";

import { useState, type ReactElement, type SubmitEvent } from "react";
import { useEditor } from "./editor-context";
import { NO_TARGET, readTarget, type TargetForm } from "./target-form";
import { TargetFields } from "./target-fields";
import { TargetOutcome } from "./target-outcome";
import { solvedProposal, type MetTarget, type Proposal } from "./target-proposal";

/** A target in place of an amount: the amounts that meet it are shown first, and put in only when somebody says so. */
export default function TargetPanel(): ReactElement {
  const { store, preferences, dispatch } = useEditor();
  const [form, setForm] = useState<TargetForm>(NO_TARGET);
  const [proposal, setProposal] = useState<Proposal | null>(null);

  function solve(event: SubmitEvent<HTMLFormElement>): void {
    event.preventDefault();
    const state = store.state();
    if (state.shown === null || state.waitingFor.length > 0) {
      setProposal({ ok: false, message: `First the recipe has to brew: ${state.waitingFor.join("; ")}` });
      return;
    }
    const read = readTarget(form, state.shown.keys, preferences);
    setProposal(read.ok ? solvedProposal(read, state.shown, state.reading.names, preferences) : read);
  }

  function put({ words, changes }: MetTarget): void {
    const change = changes.map(({ apply }) => apply);
    dispatch({ type: "put", words, change: (draft) => change.reduce((into, apply) => apply(into), draft) });
    setProposal(null);
  }

  return (
    <form onSubmit={solve} noValidate className="flex flex-col gap-3 pb-4" aria-label="Target instead of an amount">
      <TargetFields
        form={form}
        onChange={(change) => {
          setForm({ ...form, ...change });
          setProposal(null);
        }}
      />
      <button type="submit" className="button button-quiet self-start">
        Work it out
      </button>
      {proposal === null ? null : <TargetOutcome proposal={proposal} onPut={put} />}
    </form>
  );
}
