import type { Preferences } from "@/lib/model/preferences";
import type { ComparedBrew } from "./compared-brew";
import { LossBars } from "./loss-bars";
import { LossNumbers } from "./loss-numbers";
import { LossPatterns } from "./loss-part";

interface LossMultiplesProps {
  readonly home: string;
  readonly brews: readonly ComparedBrew[];
  readonly preferences: Preferences;
}

/** Where the extract went, one small picture a brewer on the same scale; every number also as text. */
export function LossMultiples({ home, brews, preferences }: LossMultiplesProps) {
  return (
    <section aria-labelledby="losses" className="mt-10">
      <h2 id="losses">Where the extract went</h2>
      <p className="mt-1 text-muted">
        Shares of all extract weighed out, from the grist to the fermenter. All bars are drawn on the same scale, 0 to
        100 %.
      </p>
      <LossPatterns />
      <div className="mt-4 grid gap-x-10 gap-y-8 sm:grid-cols-2 lg:grid-cols-3">
        {brews.map(({ brew, name, comparison }) =>
          comparison === null ? null : (
            <figure key={brew.id} className="break-inside-avoid">
              <figcaption className="mb-1 font-semibold">{name}</figcaption>
              <LossBars account={comparison.extract} />
              <LossNumbers
                name={name}
                href={`${home}/brews/${brew.id}/comparison#extract`}
                account={comparison.extract}
                preferences={preferences}
              />
            </figure>
          ),
        )}
      </div>
    </section>
  );
}
