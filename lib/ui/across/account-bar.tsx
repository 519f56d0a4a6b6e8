import type { ReactElement } from "react";

const WIDTH = 200;
const HEIGHT = 10;

/** The parts of one account in a bar. Where one is not known there is no bar, which would lie. */
export function AccountBar({ shares }: { readonly shares: readonly (number | null)[] }): ReactElement | null {
  const known = shares.flatMap((share) => (share === null ? [] : [Math.min(1, Math.max(0, share))]));
  if (known.length < shares.length) return null;
  return (
    <svg className="chart account-bar" viewBox={`0 0 ${WIDTH} ${HEIGHT}`} aria-hidden>
      {known.map((share, i) => {
        const before = known.slice(0, i).reduce((sum, each) => sum + each, 0);
        const x = WIDTH * Math.min(1, before);
        // Told apart by their order and by turns of dark and light, also on paper.
        return (
          <rect
            key={x}
            className={i % 2 === 0 ? "account-part" : "account-part account-part-light"}
            x={x}
            y="0.5"
            width={Math.max(0, Math.min(WIDTH - x, WIDTH * share))}
            height={HEIGHT - 1}
          />
        );
      })}
    </svg>
  );
}
