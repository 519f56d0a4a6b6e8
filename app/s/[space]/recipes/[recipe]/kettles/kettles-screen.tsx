"use client";

import { useCallback, useMemo } from "react";
import type { KettleEntry } from "@/lib/model/kettle-entry";
import type { Preferences } from "@/lib/model/preferences";
import type { FirstKettles, KettleSnapshot } from "@/lib/ui/kettles/kettle-store";
import { KettleTable } from "@/lib/ui/kettles/kettle-table";
import { sheetQuery, type KettleView } from "@/lib/ui/kettles/kettle-view";
import { inNameOrder, shownRows, type KettleRow } from "@/lib/ui/kettles/shown-rows";
import { useKettleView } from "@/lib/ui/kettles/use-kettle-view";
import { useKettles } from "@/lib/ui/kettles/use-kettles";
import { usePrinting } from "@/lib/ui/use-printing";
import { useHydrated } from "@/lib/ui/use-hydrated";
import { KettleFilter } from "./kettle-filter";
import { KettlePanels } from "./kettle-panels";
import { PrintedLine } from "./printed-line";
import { TableState } from "./table-state";
import { useKettlePanel } from "./use-kettle-panel";

interface KettlesScreenProps {
  readonly first: FirstKettles;
  readonly spaceSlug: string;
  readonly revision: { readonly id: string; readonly rev: number; readonly title: string };
  readonly preferences: Preferences;
}

/** The table of all kettles with its filter, and the panel that opens from a cell. */
export function KettlesScreen({ first, spaceSlug, revision, preferences }: KettlesScreenProps) {
  const home = `/s/${spaceSlug}/recipes/${revision.id}`;
  const { view, show } = useKettleView();
  const isHydrated = useHydrated();
  const printing = usePrinting();
  const address = `${home}/kettles/rows?rev=${String(revision.rev)}`;
  const { store, snapshot } = useKettles({ first, address, volume: view.volume });
  const isComplete = snapshot.computed === snapshot.kettleCount && snapshot.entries.length === snapshot.rowCount;
  const rows = useRows(snapshot, view, isComplete);
  const { panel, questions, follow, close } = useKettlePanel(
    store,
    `${home}/kettles/choice?rev=${String(revision.rev)}`,
  );
  const { rev, volume } = view;
  const sheetHref = useCallback(
    ({ key }: KettleEntry) => `${home}/kettles/${key}${sheetQuery({ rev, volume })}`,
    [home, rev, volume],
  );
  const shared = { view, home, onView: show, preferences, sheetHref };
  return (
    <>
      <KettleFilter view={view} onView={show} />
      <TableState
        {...{ ...shared, snapshot, isComplete, isHydrated }}
        shownCount={rows.length}
        onRetry={() => void store.start()}
      />
      <PrintedLine title={revision.title} rev={revision.rev} />
      {rows.length === 0 && isComplete ? (
        <p>No kettle is left by this choice.</p>
      ) : (
        <KettleTable
          {...shared}
          rows={rows}
          isWhole={view.isPlain || printing !== null}
          questions={isHydrated ? questions : null}
          onLook={store.look}
        />
      )}
      <KettlePanels
        {...{ ...shared, ...snapshot, panel }}
        choosing={{ space: spaceSlug, recipeId: revision.id, rev: revision.rev, volume }}
        onFollow={follow}
        onKept={store.keep}
        onClose={close}
      />
    </>
  );
}

function useRows(snapshot: KettleSnapshot, view: KettleView, isComplete: boolean): readonly KettleRow[] {
  const { entries, figures } = snapshot;
  const { sort, isDescending } = view;
  const ordered = useMemo(() => inNameOrder(entries, { sort, isDescending }), [entries, sort, isDescending]);
  return shownRows({ ordered, figures, view, isComplete });
}
