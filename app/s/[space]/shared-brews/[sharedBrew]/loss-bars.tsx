import type { ExtractAccount } from "@/lib/calc/compare";
import { LossPart } from "./loss-part";
import { LOSS_PARTS, lossShares } from "./loss-shares";

const WIDTH = 300;
const BAR = 16;
const GAP = 6;
const LABEL = 74;

/** Two bars, planned and measured. A picture of the numbers below it, which say everything, so it is not read aloud. */
export function LossBars({ account }: { readonly account: ExtractAccount }) {
  const shares = lossShares(account);
  const measured = shares.flatMap(({ measured: share }) => (share === null ? [] : [share]));
  const rows = [
    { label: "planned", shares: shares.map(({ planned }) => planned) },
    // Parts that are not known would make a bar that lies.
    ...(measured.length === LOSS_PARTS.length ? [{ label: "measured", shares: measured }] : []),
  ];
  return (
    <svg className="chart" viewBox={`0 0 ${WIDTH} ${rows.length * (BAR + GAP)}`} aria-hidden>
      {rows.map((row, i) => (
        <g key={row.label} transform={`translate(0 ${i * (BAR + GAP)})`}>
          <text className="chart-minor" x="0" y={BAR - 4}>
            {row.label}
          </text>
          <Segments shares={row.shares} />
        </g>
      ))}
    </svg>
  );
}

function Segments({ shares }: { readonly shares: readonly number[] }) {
  const scale = WIDTH - LABEL;
  // A measured loss can come out below nothing; the text says so, a bar cannot.
  const drawn = shares.map((share) => Math.min(1, Math.max(0, share)));
  return LOSS_PARTS.map(({ id, pattern }, i) => {
    const before = drawn.slice(0, i).reduce((sum, share) => sum + share, 0);
    const x = LABEL + scale * Math.min(1, before);
    const width = Math.max(0, Math.min(WIDTH - x - 0.5, scale * (drawn[i] ?? 0)));
    return <LossPart key={id} pattern={pattern} x={x} width={width} height={BAR - 1} />;
  });
}
