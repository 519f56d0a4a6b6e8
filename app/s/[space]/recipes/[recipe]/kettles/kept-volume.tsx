"use client";

import type { KeptChoice, KettleEntry } from "@/lib/model/kettle-entry";
import { WayForm, type Choosing } from "./way-form";

interface KeptVolumeProps extends Choosing {
  readonly entry: Pick<KettleEntry, "key" | "kept" | "mayChoose">;
  readonly onKept?: (id: string, kept: KeptChoice) => void;
}

const VOLUMES = { usual: "the kettle’s usual batch", written: "the volume of the recipe" } as const;

/** The volume that is kept for a kettle without a way out; or, where the page shows another one, the button that keeps it. */
export function KeptVolume({ entry, ...form }: KeptVolumeProps) {
  const { kept, mayChoose } = entry;
  const present = kept?.choice.volume ?? "usual";
  const { volume: asked } = form;
  if (asked === "chosen" || asked === present) {
    if (kept === null || kept.choice.way !== null || present === "usual") return null;
    return (
      <p>
        Volume chosen by {kept.changedByName}: {VOLUMES[present]}.
      </p>
    );
  }
  if (!mayChoose) return null;
  return (
    <div>
      {(kept?.choice.way ?? null) === null ? null : (
        <p className="text-muted">The way out that is kept is of another volume, and would go.</p>
      )}
      <WayForm {...form} entry={entry} way="">
        Keep {VOLUMES[asked]}
      </WayForm>
    </div>
  );
}
