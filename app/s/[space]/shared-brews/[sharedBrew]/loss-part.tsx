import type { LossPattern } from "./loss-shares";

interface LossPartProps {
  readonly pattern: LossPattern;
  readonly x: number;
  readonly width: number;
  readonly height: number;
}

/** One part of a bar. Parts differ by pattern, so that they are told apart without colour and on paper. */
export function LossPart({ pattern, ...place }: LossPartProps) {
  const isPattern = pattern === "hatched" || pattern === "dotted";
  return (
    <rect
      className={`loss-part loss-${pattern}`}
      y="0.5"
      {...place}
      fill={isPattern ? `url(#loss-${pattern})` : undefined}
    />
  );
}

/** The patterns themselves, once a page. */
export function LossPatterns() {
  return (
    <svg className="absolute size-0" aria-hidden>
      <defs>
        <pattern id="loss-hatched" width="5" height="5" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
          <line className="loss-ink" x1="0" y1="0" x2="0" y2="5" />
        </pattern>
        <pattern id="loss-dotted" width="4" height="4" patternUnits="userSpaceOnUse">
          <circle className="loss-dot" cx="2" cy="2" r="0.9" />
        </pattern>
      </defs>
    </svg>
  );
}
