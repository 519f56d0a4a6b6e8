"use client";

import { useState, type SubmitEvent } from "react";
import type { MeasuringPoint, WrittenReading } from "@/lib/ui/brew/reading-draft";
import { CELLAR_SERIES, cellarPoint } from "@/lib/ui/cellar/cellar-point";
import { SubmitButton } from "@/lib/ui/submit-button";
import { TextField } from "@/lib/ui/text-field";
import { EntryLine } from "../entry-line";
import { ReadingForm } from "../reading-form";
import { eventOf, useLogEntry } from "../use-log-entry";
import { measuredOf } from "@/lib/ui/brew/measured-of";
import type { LoggedLineProps } from "./logged-line-props";

type ChangeReadingProps = LoggedLineProps;

/** Corrects a reading, or says that it does not count. Both are new entries that name it; it stays in the log. */
export function ChangeReading(a: ChangeReadingProps) {
  const [isOpen, setOpen] = useState(false);
  const { reading, label } = a;
  const at = new Date(reading.at).toISOString().slice(0, 16).replace("T", " ");
  return (
    <details className="no-print" open={isOpen} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary className="target text-sm text-muted">
        Correct<span className="sr-only"> {`${label} of ${at}, ${reading.measured.entered}`}</span>
      </summary>
      {isOpen ? <Forms {...a} /> : null}
    </details>
  );
}

function Forms({ reading, brew, fermentation, preferences, record }: ChangeReadingProps) {
  const series = CELLAR_SERIES.find((each) => each === reading.measured.quantity);
  const compose = (brewId: string, point: MeasuringPoint, written: WrittenReading) => {
    const measured = measuredOf(point, written);
    const content = { kind: "correct" as const, targetId: reading.id, seen: reading.changes, measured };
    // When it was corrected; the reading keeps the time of its own.
    return { events: [eventOf(brewId, content, null)] };
  };
  return (
    <div className="flex flex-col gap-4 py-2">
      {series === undefined ? null : (
        <ReadingForm
          brewId={brew.id}
          name={`correct-${reading.id}`}
          point={{ ...cellarPoint(series, fermentation), label: "Should be" }}
          preferences={preferences}
          record={record}
          compose={compose}
        />
      )}
      {reading.isVoid ? null : <VoidForm reading={reading} brewId={brew.id} record={record} />}
    </div>
  );
}

function VoidForm({
  reading,
  brewId,
  record,
}: Pick<ChangeReadingProps, "reading" | "record"> & { readonly brewId: string }) {
  const [why, setWhy] = useState("");
  const { delivery, send } = useLogEntry(brewId, record);

  function submit(event: SubmitEvent<HTMLFormElement>): void {
    event.preventDefault();
    void send([{ content: { kind: "void", targetId: reading.id, seen: reading.changes, why }, at: null }]);
  }

  return (
    <form onSubmit={submit} noValidate className="flex flex-col gap-2">
      <TextField
        name={`void-${reading.id}`}
        label="Why it does not count"
        maxLength={500}
        value={why}
        onChange={(event) => setWhy(event.target.value)}
      />
      <div>
        <SubmitButton kind="quiet" pending="Saving…" isPending={delivery.kind === "saving"}>
          It does not count
        </SubmitButton>
      </div>
      <EntryLine delivery={delivery} />
    </form>
  );
}
