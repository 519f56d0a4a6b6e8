import type { ReactElement } from "react";
import { fixedDigits } from "../fixed-digits";

/** A number without a unit, as a test gives it; a tiny probability is said to be below what the digits can show. */
export interface StatisticProps {
  readonly value: number;
  readonly kind?: "statistic" | "probability";
}

const LEAST = 0.001;

export function Statistic({ value, kind = "statistic" }: StatisticProps): ReactElement {
  const isTiny = kind === "probability" && value < LEAST;
  const text = isTiny ? `below ${fixedDigits(LEAST, 3)}` : fixedDigits(value, kind === "probability" ? 3 : 2);
  return <span className="tabular-nums">{text}</span>;
}
