import type { ReactNode } from "react";
import {
  alcoholByVolume,
  apparentAttenuation,
  apparentRange,
  realAttenuation,
  type Extracts,
} from "@/lib/calc/alcohol";
import type { Dimension } from "@/lib/calc/ledger";
import { Z80 } from "@/lib/calc/statistics";
import { degreesPlato } from "@/lib/calc/units";
import { lastGravity } from "@/lib/model/cellar/fermentation";
import { ExplainedCall } from "@/lib/ui/explained-call";
import { Quantity } from "@/lib/ui/quantity";
import type { CellarPart } from "./cellar-part";

interface CourseFigure {
  readonly label: string;
  readonly id: string;
  readonly dimension: Dimension;
  readonly of: (extracts: Extracts) => number;
}

const FIGURES: readonly CourseFigure[] = [
  {
    label: "Apparent attenuation so far",
    id: "alcohol/apparentAttenuation",
    dimension: "fraction",
    of: apparentAttenuation,
  },
  { label: "Real attenuation so far", id: "alcohol/realAttenuation", dimension: "fraction", of: realAttenuation },
  { label: "Alcohol so far", id: "alcohol/alcoholByVolume", dimension: "alcohol", of: alcoholByVolume },
];

/** How far the beer has come by its last reading: attenuation and alcohol, each with how it comes about. */
export function AttenuationFigures({ fermentation, preferences }: Pick<CellarPart, "fermentation" | "preferences">) {
  const { original, curve } = fermentation;
  const last = lastGravity(fermentation);
  if (original === null || last === null) return null;
  const { min, max } = apparentRange(original.plato);
  const now = Math.min(max, Math.max(min, last.value));
  const extracts = { originalPlato: original.plato, apparentPlato: degreesPlato(now) };
  const extract = { dimension: "extract", preferences } as const;
  return (
    <dl className="my-3">
      <Line label={`Original extract, ${original.isMeasured ? "measured" : "as planned"}`}>
        <Quantity value={original.plato} {...extract} />
      </Line>
      <Line label="Gravity, last read">
        <Quantity value={last.value} {...extract} />
      </Line>
      {FIGURES.map(({ label, id, dimension, of }) => (
        <Line key={id} label={label} explained={<ExplainedCall id={id} args={[extracts]} />}>
          <Quantity value={of(extracts)} dimension={dimension} preferences={preferences} />
        </Line>
      ))}
      {curve?.ok === true ? (
        <Line label="Expected end, by the curve">
          <Quantity value={curve.finalPlato} {...extract} interval={around(curve.finalPlato, curve.finalSd)} />
        </Line>
      ) : null}
    </dl>
  );
}

function around(value: number, sd: number) {
  return { low80: value - Z80 * sd, high80: value + Z80 * sd };
}

function Line(props: { readonly label: string; readonly children: ReactNode; readonly explained?: ReactNode }) {
  return (
    <div className="flex flex-wrap items-baseline justify-between gap-x-4 border-b border-rule py-1">
      <dt>{props.label}</dt>
      <dd>
        <strong>{props.children}</strong>
      </dd>
      {props.explained === undefined ? null : <dd className="basis-full">{props.explained}</dd>}
    </div>
  );
}
