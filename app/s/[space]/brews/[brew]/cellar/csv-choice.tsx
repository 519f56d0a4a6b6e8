"use client";

import { useMemo } from "react";
import type { CsvChoices } from "@/lib/model/cellar/csv/columns";
import { readCsvRows } from "@/lib/model/cellar/csv/rows";
import { isZone } from "@/lib/model/zoned-time";
import { ErrorSummary } from "@/lib/ui/error-summary";
import { Notice } from "@/lib/ui/notice";
import { CsvColumns } from "./csv-columns";
import { CsvPreview } from "./csv-preview";
import type { OpenFile } from "./open-file";
import { useCsvTake } from "./use-csv-take";

interface CsvChoiceProps {
  readonly open: OpenFile;
  readonly address: string;
  readonly choose: (choices: CsvChoices) => void;
}

/** Which column is what, what comes of it line by line, and the button that takes it. */
export function CsvChoice({ open: { file, table, choices }, address, choose }: CsvChoiceProps) {
  const { errors, taken, isTaking, take } = useCsvTake(address);
  const rows = useMemo(
    () => (isZone(choices.zone) ? readCsvRows(table.lines, choices, new Date()) : []),
    [table, choices],
  );
  return (
    <>
      <ErrorSummary errors={errors} />
      <CsvColumns header={table.header} choices={choices} choose={choose} />
      <CsvPreview rows={rows} isTaking={isTaking} take={(leaveOut) => take(file, { ...choices, leaveOut })} />
      {taken === null ? null : (
        <Notice live>
          {String(taken.added)} readings added; {String(taken.known)} were in the log already; {String(taken.leftOut)}{" "}
          lines left out.
        </Notice>
      )}
    </>
  );
}
