"use client";

import type { QuantityId } from "@/lib/calc/ledger";
import type { KeptChoice, KettleEntry } from "@/lib/model/kettle-entry";
import type { Preferences } from "@/lib/model/preferences";
import { ExplanationPanel } from "@/lib/ui/explanation-panel";
import type { KettleFigures } from "@/lib/ui/kettles/kettle-figures";
import { FitPanel } from "./fit-panel";
import type { KettlePanel } from "./use-kettle-panel";
import type { Choosing } from "./way-form";

interface KettlePanelsProps {
  readonly panel: KettlePanel;
  readonly entries: readonly KettleEntry[];
  readonly figures: ReadonlyMap<string, KettleFigures>;
  readonly preferences: Preferences;
  readonly choosing: Choosing;
  readonly sheetHref: (entry: KettleEntry) => string;
  readonly onFollow: (number: QuantityId) => void;
  readonly onKept: (id: string, kept: KeptChoice) => void;
  readonly onClose: () => void;
}

/** What opens over the table. */
export function KettlePanels(props: KettlePanelsProps) {
  const { panel, entries, figures, preferences, onFollow, onClose } = props;
  const entry = entries.find(({ key }) => key === panel?.id) ?? null;
  const cell = panel?.kind === "number" ? panel.cell : null;
  const isFit = panel?.kind === "fit";
  return (
    <>
      <ExplanationPanel
        explanation={cell?.explanation ?? null}
        interval={cell?.interval}
        preferences={preferences}
        onClose={onClose}
        onFollow={onFollow}
      />
      <FitPanel
        entry={isFit ? entry : null}
        figures={(isFit ? figures.get(panel.id) : null) ?? null}
        detail={isFit ? panel.detail : null}
        preferences={preferences}
        choosing={props.choosing}
        sheetHref={props.sheetHref}
        onKept={props.onKept}
        onClose={onClose}
      />
    </>
  );
}
