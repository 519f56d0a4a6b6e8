"use client";

import type { Drift } from "@/lib/calc/learn";
import type { Dimension } from "@/lib/calc/ledger";
import type { LearnedRow } from "@/lib/model/learning/learned-figures";
import type { Preferences } from "@/lib/model/preferences";
import { FigureSide } from "@/lib/ui/equipment/figure-side";
import { FIGURE_DIMENSION } from "@/lib/ui/equipment/figure-dimension";
import { Quantity } from "@/lib/ui/quantity";

interface LearnedLineProps {
  readonly row: LearnedRow;
  readonly titles: readonly string[];
  readonly mayTake: boolean;
  readonly isChosen: boolean;
  readonly preferences: Preferences;
  readonly onChoose: (take: boolean) => void;
}

/** One figure: in the profile, by this kettle's brews, of its kind, and what the profile may take. */
export function LearnedLine({ row, titles, mayTake, isChosen, preferences, onChoose }: LearnedLineProps) {
  const { name, label, now, own, kind, proposed, drift } = row;
  const shared = { dimension: FIGURE_DIMENSION[name], preferences };
  return (
    <li className="border-b border-rule py-3">
      {mayTake ? (
        <label className="flex min-h-12 items-start gap-3" htmlFor={`take-${name}`}>
          <input
            id={`take-${name}`}
            type="checkbox"
            className="no-print mt-1 size-6 shrink-0"
            checked={isChosen}
            onChange={(event) => onChoose(event.target.checked)}
          />
          <span className="font-semibold">{label}</span>
        </label>
      ) : (
        <p className="font-semibold">{label}</p>
      )}
      <dl className="grid grid-cols-2 gap-x-6 gap-y-1 sm:grid-cols-4">
        <FigureSide none="nothing yet" label={`In the profile, ${now.from}`} figure={now} {...shared} />
        <FigureSide
          none="nothing yet"
          label={own === null ? "By its brews" : `By its brews, ${String(own.brews)} that tell`}
          figure={own === null ? null : { value: own.value, sd: own.standardError }}
          {...shared}
        />
        <FigureSide
          none="nothing yet"
          label={kind === null ? "Its kind" : `Its kind, ${kettlesAndBrews(kind)}`}
          figure={kind === null ? null : { value: kind.mean, sd: kind.meanSd }}
          {...shared}
        />
        <FigureSide none="nothing yet" label="For the next brew" figure={proposed} {...shared} />
      </dl>
      {proposed?.basis === undefined ? null : <p className="text-sm text-muted">By: {proposed.basis}.</p>}
      {drift === null ? null : <DriftWords {...{ drift, titles, ...shared }} />}
    </li>
  );
}

function kettlesAndBrews({ kettles, brews }: { readonly kettles: number; readonly brews: number }): string {
  return `${String(kettles)} ${kettles === 1 ? "kettle" : "kettles"}, ${String(brews)} brews`;
}

interface Shown {
  readonly dimension: Dimension;
  readonly preferences: Preferences;
}

function DriftWords(props: Shown & { readonly drift: Drift; readonly titles: readonly string[] }) {
  const { drift, titles, ...shown } = props;
  return (
    <p className="text-sm text-accent">
      It seems to have changed at “{titles[drift.after] ?? "a brew"}”: from <Quantity value={drift.before} {...shown} />{" "}
      to <Quantity value={drift.behind} {...shown} />. Chance shows as much in fewer than one steady kettle of twenty;
      it does not say why. If something was changed at the kettle, let the brews count from then on.
    </p>
  );
}
