import type { KettleOfKind } from "@/lib/calc/learn";
import { ExplainedCall } from "@/lib/ui/explained-call";

interface HowItComesAboutProps {
  readonly kettle: KettleOfKind;
  readonly others: readonly KettleOfKind[];
}

/** The two calculations behind the figures, with what went into them. */
export function HowItComesAbout({ kettle, others }: HowItComesAboutProps) {
  const { equipment, brews, typical } = kettle;
  return (
    <section aria-labelledby="how" className="mt-8">
      <h2 id="how">How it comes about</h2>
      <h3>By its brews</h3>
      <ExplainedCall id="learn/calibrate" args={[{ equipment, brews }]} />
      {others.length === 0 ? null : (
        <>
          <h3>With its kind</h3>
          <ExplainedCall id="learn/pool" args={[{ start: typical, kettles: [kettle, ...others] }]} />
        </>
      )}
    </section>
  );
}
