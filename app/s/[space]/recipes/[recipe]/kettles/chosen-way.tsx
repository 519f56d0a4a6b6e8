"use client";

import type { KeptChoice, KettleEntry } from "@/lib/model/kettle-entry";
import type { Preferences } from "@/lib/model/preferences";
import type { KettleFigures } from "@/lib/ui/kettles/kettle-figures";
import { wayWords } from "@/lib/ui/kettles/way-words";
import { WayForm, type Choosing } from "./way-form";

interface ChosenWayProps extends Choosing {
  readonly entry: Pick<KettleEntry, "key" | "kept" | "mayChoose">;
  readonly figures: Pick<KettleFigures, "fit" | "way" | "isWayLost"> | null;
  readonly preferences: Preferences;
  readonly onKept?: (id: string, kept: KeptChoice) => void;
}

/** The way out that somebody chose for a kettle, and the button that takes it back. */
export function ChosenWay({ entry, figures, preferences, ...form }: ChosenWayProps) {
  const { kept, mayChoose } = entry;
  const name = kept?.choice.way ?? null;
  if (kept === null || name === null || figures === null) return null;
  const { way, isWayLost, fit } = figures;
  const words = way === null ? name : wayWords(way, preferences);
  // A way out holds for the volume that it was chosen with.
  const isOfAnother = form.volume !== "chosen" && form.volume !== kept.choice.volume;
  return (
    <div className={isWayLost ? "notice notice-attention" : "notice"}>
      <p>
        Chosen by {kept.changedByName}: {words}, for {VOLUMES[kept.choice.volume]}.
      </p>
      {isWayLost ? (
        <p>The kettle has changed since, and this way out no longer works on it. Choose another one.</p>
      ) : null}
      {fit === "fits" && !isOfAnother ? <p>The kettle has changed since, and the recipe now fits without it.</p> : null}
      {mayChoose ? (
        <WayForm {...form} volume="usual" entry={entry} way="">
          Take it back
        </WayForm>
      ) : null}
    </div>
  );
}

const VOLUMES = { usual: "the kettle’s usual batch", written: "the volume of the recipe" } as const;
