"use client";

import { wayName } from "@/lib/model/adaptation";
import type { KeptChoice, KettleEntry } from "@/lib/model/kettle-entry";
import type { Preferences } from "@/lib/model/preferences";
import { fixedDigits } from "@/lib/ui/fixed-digits";
import type { ToldWay } from "@/lib/ui/kettles/kettle-figures";
import { wayWords } from "@/lib/ui/kettles/way-words";
import { WayForm, type Choosing } from "./way-form";

interface WayChoicesProps extends Choosing {
  readonly entry: KettleEntry;
  readonly ways: readonly ToldWay[];
  readonly preferences: Preferences;
  readonly onKept?: (id: string, kept: KeptChoice) => void;
}

/** The ways out of a kettle with how far each is from the recipe as written, the nearest first. */
export function WayChoices({ entry, ways, preferences, ...form }: WayChoicesProps) {
  if (ways.length === 0) return <p>No change of volume, mash or boil brings it within the limits of this kettle.</p>;
  const chosen = entry.kept?.choice.way ?? null;
  return (
    <section aria-label="Ways out">
      <h3>Ways out</h3>
      <p className="text-sm text-muted">
        The distance says how far each is from the recipe as written; 0 is the recipe itself.
      </p>
      <ol className="list-ruled">
        {ways.map((way) => {
          const name = wayName(way);
          const words = wayWords(way, preferences);
          return (
            <li key={name} className="flex flex-wrap items-center justify-between gap-x-4 gap-y-1 py-2">
              <span className="min-w-0 flex-1 basis-60">
                {words} <span className="text-muted">distance {fixedDigits(way.distance, 2)}</span>
              </span>
              {name === chosen ? (
                <span className="target">Chosen</span>
              ) : entry.mayChoose ? (
                <WayForm {...form} entry={entry} way={name}>
                  Choose<span className="sr-only">: {words}</span>
                </WayForm>
              ) : null}
            </li>
          );
        })}
      </ol>
    </section>
  );
}
