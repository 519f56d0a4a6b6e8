"use client";

import { useState } from "react";
import { guessedChoices } from "@/lib/model/cellar/csv/columns";
import { CSV_LIMITS, readCsvTable } from "@/lib/model/cellar/csv/table";
import type { FieldErrors } from "@/lib/model/field-errors";
import { ErrorSummary } from "@/lib/ui/error-summary";
import { Field } from "@/lib/ui/field";
import { controlAttributes } from "@/lib/ui/field-ids";
import { useHydrated } from "@/lib/ui/use-hydrated";
import { CsvChoice } from "./csv-choice";
import type { OpenFile } from "./open-file";

const HINT = "A table with a heading and a column of times, at most 5 MB and 20,000 lines.";
const NONE: FieldErrors = {};

/** Takes readings from a file of a probe or a spreadsheet: first it is shown line by line, then it is taken. */
export function CsvSection({ address }: { readonly address: string }) {
  const [open, setOpen] = useState<OpenFile | null>(null);
  const [errors, setErrors] = useState(NONE);
  const isHydrated = useHydrated();

  async function look(file: File | undefined): Promise<void> {
    setOpen(null);
    setErrors(NONE);
    if (file === undefined) return;
    if (file.size > CSV_LIMITS.bytes) {
      setErrors({ "cellar-file": "The file is larger than 5 MB; that is the most that is read. Nothing was taken." });
      return;
    }
    const table = readCsvTable(await file.text());
    if (!table.ok) setErrors({ "cellar-file": table.message });
    else setOpen({ file, table, choices: guessedChoices(table.header, zoneOfDevice()) });
  }

  return (
    <section aria-labelledby="from-file" className="no-print">
      <h2 id="from-file">Readings from a file</h2>
      <div className="mt-2 flex flex-col gap-4">
        <ErrorSummary errors={errors} />
        <Field name="cellar-file" label="CSV file" hint={HINT} error={errors["cellar-file"]}>
          <input
            type="file"
            accept=".csv,.txt,.tsv,text/csv,text/plain"
            className="input"
            disabled={!isHydrated}
            onChange={(event) => void look(event.target.files?.[0])}
            {...controlAttributes({ name: "cellar-file", hint: HINT, error: errors["cellar-file"] })}
          />
        </Field>
        {open === null ? null : (
          <CsvChoice open={open} address={address} choose={(choices) => setOpen({ ...open, choices })} />
        )}
      </div>
    </section>
  );
}

function zoneOfDevice(): string {
  return Intl.DateTimeFormat().resolvedOptions().timeZone;
}
