"use client";

import type { ReactElement } from "react";
import { BeerPanel } from "./beer-panel";
import type { KettleChoice } from "./editor-state";
import { FitLine } from "./fit-line";
import { RecipeNotes } from "./recipe-notes";
import { RecipeTable } from "./recipe-table";
import { RemovedLine } from "./removed-line";
import { useKettleName } from "./use-kettle-name";

/** The beer, the ledger and the notes. */
export function RecipeBody({ kettles }: { readonly kettles: readonly KettleChoice[] }): ReactElement {
  const kettleName = useKettleName(kettles);
  return (
    <>
      {/* The beer stays in sight as long as the rows do. */}
      <div>
        <BeerPanel />
        <FitLine kettleName={kettleName} />
        <RecipeTable kettleName={kettleName} />
      </div>
      <RemovedLine />
      <RecipeNotes />
    </>
  );
}
