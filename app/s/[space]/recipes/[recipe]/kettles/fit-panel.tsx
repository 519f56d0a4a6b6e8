"use client";

import type { KeptChoice, KettleEntry } from "@/lib/model/kettle-entry";
import type { Preferences } from "@/lib/model/preferences";
import { LimitLine } from "@/lib/ui/equipment/limit-line";
import type { FitDetail } from "@/lib/ui/kettles/desk-messages";
import type { KettleFigures } from "@/lib/ui/kettles/kettle-figures";
import { SheetDialog } from "@/lib/ui/sheet-dialog";
import { ChosenWay } from "./chosen-way";
import { KeptVolume } from "./kept-volume";
import type { Choosing } from "./way-form";
import { WayChoices } from "./way-choices";

interface FitPanelProps {
  /** null keeps the panel closed. */
  readonly entry: KettleEntry | null;
  readonly figures: KettleFigures | null;
  /** null while the ways out are searched. */
  readonly detail: FitDetail | null;
  readonly preferences: Preferences;
  readonly choosing: Choosing;
  readonly sheetHref: (entry: KettleEntry) => string;
  readonly onKept: (id: string, kept: KeptChoice) => void;
  readonly onClose: () => void;
}

/** One kettle: the limits that the recipe breaks, and the ways out to choose from. */
export function FitPanel(props: FitPanelProps) {
  const { entry, detail, onClose } = props;
  return (
    <SheetDialog
      heading={entry === null ? null : `${entry.kettleName ?? ""}, ${entry.ownerName}`}
      subject={entry?.key}
      onClose={onClose}
    >
      {entry === null ? null : detail === null ? (
        <p role="status">Searching the ways out…</p>
      ) : (
        <FitBody {...props} entry={entry} detail={detail} />
      )}
    </SheetDialog>
  );
}

type FitBodyProps = FitPanelProps & { readonly entry: KettleEntry; readonly detail: FitDetail };

function FitBody({ entry, figures, detail, preferences, choosing, sheetHref, onKept }: FitBodyProps) {
  const broken = detail.limits.filter(({ ok, id }) => !ok && id !== "carbonation");
  const form = { ...choosing, entry, onKept };
  return (
    <div className="flex flex-col gap-4">
      {detail.fits ? (
        <p>It fits as intended, within every limit of the kettle.</p>
      ) : broken.length === 0 ? (
        <p>No grist gives a wort of this strength on this kettle.</p>
      ) : (
        <ul className="flex flex-col gap-3">
          {broken.map((limit) => (
            <li key={limit.id} className="notice notice-attention max-w-none">
              <LimitLine limit={limit} preferences={preferences} withReason />
            </li>
          ))}
        </ul>
      )}
      <KeptVolume {...form} />
      <ChosenWay {...form} figures={figures} preferences={preferences} />
      {detail.fits ? null : <WayChoices {...form} ways={detail.ways} preferences={preferences} />}
      <p>
        <a href={sheetHref(entry)}>The whole sheet of this kettle</a>
      </p>
      <details>
        <summary className="cursor-pointer py-2">Every limit of the kettle</summary>
        <ul className="list-ruled">
          {detail.limits.map((limit) => (
            <li key={limit.id} className="py-1">
              <LimitLine limit={limit} preferences={preferences} />
            </li>
          ))}
        </ul>
      </details>
    </div>
  );
}
