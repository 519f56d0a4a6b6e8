"use client";

import { useState, type SubmitEvent } from "react";
import type { Recipe } from "@/lib/calc/ledger";
import type { FieldErrors } from "@/lib/model/field-errors";
import type { Measured, Packaged } from "@/lib/model/log/log-event";
import type { Preferences } from "@/lib/model/preferences";
import { containerWords } from "@/lib/model/cellar/containers";
import { FILLING_SHARE } from "@/lib/model/cellar/packaging-plan";
import { emptyPackage, packagedOf, readPackage, type PackageDraft } from "@/lib/ui/cellar/package-draft";
import { ErrorSummary } from "@/lib/ui/error-summary";
import { SubmitButton } from "@/lib/ui/submit-button";
import { TextField } from "@/lib/ui/text-field";
import { useHydrated } from "@/lib/ui/use-hydrated";
import { EntryLine } from "../entry-line";
import type { RecordReading } from "../use-delivery";
import { useLogEntry, type NewEntry } from "../use-log-entry";
import { BeerFields } from "./beer-fields";
import { ContainerFields } from "./container-fields";
import { EarlyField } from "./early-field";
import { OverrideFields } from "./override-fields";
import { PackageFigures } from "./package-figures";

interface PackageFormProps {
  readonly brew: { readonly id: string; readonly title: string; readonly packaging: Recipe["packaging"] };
  readonly me: string;
  readonly litres: number | null;
  readonly warmest: number | null;
  readonly altitudeM: number;
  /** Why the beer is not ready; null where its gravity stands still. */
  readonly notReady: string | null;
  readonly preferences: Preferences;
  readonly record: RecordReading;
}

const NONE: FieldErrors = {};

/** Into bottles or kegs: volumes, gas, containers, and what has to be signed for. */
export function PackageForm({ brew, me, litres, warmest, altitudeM, notReady, preferences, record }: PackageFormProps) {
  const { packaging } = brew;
  const [draft, setDraft] = useState(() => emptyPackage({ packaging, litres, warmest }, preferences));
  const [errors, setErrors] = useState(NONE);
  const { delivery, send, edited } = useLogEntry(brew.id, record);
  const isHydrated = useHydrated();
  const read = readPackage(draft, packaging, preferences);

  function type(change: Partial<PackageDraft>): void {
    setDraft({ ...draft, ...change });
    if (delivery.kind !== "editing") edited();
  }

  function submit(event: SubmitEvent<HTMLFormElement>): void {
    event.preventDefault();
    const packaged = packagedOf(draft, read, preferences);
    setErrors(packaged === null ? read.errors : NONE);
    if (packaged !== null) void send(entriesOf(packaged, read.filled));
  }

  const fields = { draft, errors, preferences, type };
  return (
    <section aria-labelledby="fill" className="no-print">
      <h2 id="fill">Fill it</h2>
      <form onSubmit={submit} noValidate>
        <fieldset disabled={!isHydrated} className="mt-3 flex max-w-3xl flex-col gap-5">
          <legend className="sr-only">Packaging</legend>
          <ErrorSummary errors={errors} />
          <BeerFields {...fields} />
          <ContainerFields {...fields} read={read} />
          <PackageFigures read={read} altitudeM={altitudeM} preferences={preferences} />
          {read.over.length === 0 ? null : <OverrideFields {...fields} over={read.over} names={[me, brew.title]} />}
          {notReady === null ? null : <EarlyField {...fields} notReady={notReady} />}
          <TextField
            name="package-note"
            label="Note on packaging"
            maxLength={500}
            value={draft.note}
            onChange={(event) => type({ note: event.target.value })}
          />
          <div>
            <SubmitButton pending="Saving…" isPending={delivery.kind === "saving"}>
              It is in package
            </SubmitButton>
          </div>
          <EntryLine delivery={delivery} />
        </fieldset>
      </form>
    </section>
  );
}

/** The packaging, and the packaged volume as the ledger compares it. */
function entriesOf(packaged: Packaged, filled: number): readonly NewEntry[] {
  const volume: Measured = {
    kind: "volume",
    quantity: "package.volume",
    value: filled,
    sd: FILLING_SHARE * filled,
    instrument: "other",
    sampleC: null,
    note: "Containers filled, by their sizes",
    entered: containerWords(packaged).slice(0, 80),
    step: null,
  };
  return [
    { content: packaged, at: null },
    { content: volume, at: null },
  ];
}
