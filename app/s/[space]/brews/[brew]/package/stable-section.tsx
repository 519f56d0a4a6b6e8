import Link from "next/link";
import type { Brew } from "@/lib/model/brew";
import type { Fermentation } from "@/lib/model/cellar/fermentation";
import { notStable } from "@/lib/model/cellar/stable-words";
import type { Preferences } from "@/lib/model/preferences";
import { Caution } from "@/lib/ui/caution";
import { ExplainedCall } from "@/lib/ui/explained-call";
import { Notice } from "@/lib/ui/notice";
import { Quantity } from "@/lib/ui/quantity";

interface StableSectionProps {
  readonly brew: Pick<Brew, "id">;
  readonly fermentation: Fermentation;
  readonly preferences: Preferences;
}

/** Whether the gravity has stood still, which is asked before anything is closed. */
export function StableSection({ fermentation, preferences }: StableSectionProps) {
  const { stable, gravities, expectedFinal } = fermentation;
  const why = notStable(fermentation);
  const last = gravities.slice(-2).map(({ day, value, sd }) => ({ day, plato: value, sd }));
  return (
    <section aria-labelledby="stable" className="mb-6 flex flex-col gap-3">
      <h2 id="stable">Has it ended?</h2>
      {stable.ok ? (
        <p>
          The gravity has stood still at <Quantity value={stable.plato} dimension="extract" preferences={preferences} />{" "}
          for two days or more. That does not hold after a warm spell, dry hops, fruit or wild yeast: then read it
          again.
        </p>
      ) : (
        <>
          <Notice kind="attention">
            <p className="font-semibold">Not ready for its containers. {why}</p>
            <p>
              <Link href="cellar" className="target">
                Read it in the cellar
              </Link>
            </p>
          </Notice>
          <Caution>
            Beer that ferments on in a closed bottle bursts it, and glass in the face is the worst accident of brewing
            at home.
          </Caution>
        </>
      )}
      {last.length === 2 ? (
        <ExplainedCall id="fermentation/stableGravity" args={[{ points: last, expectedFinal }]} />
      ) : null}
    </section>
  );
}
