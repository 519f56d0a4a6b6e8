import type { ReactElement } from "react";
import type { Dimension } from "@/lib/calc/ledger";
import type { Step, StepAmount } from "@/lib/calc/runsheet";
import type { Preferences } from "@/lib/model/preferences";
import { Quantity } from "../quantity";

export interface StepFiguresProps {
  readonly step: Step;
  readonly preferences: Preferences;
}

const AMOUNT_DIMENSIONS: Readonly<Record<Exclude<StepAmount["unit"], "mL">, Dimension>> = {
  kg: "mass",
  g: "grams",
  L: "volume",
  "billion cells": "cells",
};

/** Temperature, volume, heater power and the amounts of a step. */
export function StepFigures({ step, preferences }: StepFiguresProps): ReactElement {
  const figures = [
    { label: "Temperature", value: step.celsius, dimension: "temperature" },
    { label: "In the vessel", value: step.litres, dimension: "volume" },
    { label: "Heater", value: step.powerW, dimension: "power" },
  ] as const;
  const shown = figures.filter(({ value }) => value !== null);
  return (
    <>
      {shown.length === 0 ? null : (
        <dl className="flex flex-wrap gap-x-6">
          {shown.map(({ label, value, dimension }) => (
            <div key={label} className="flex gap-2">
              <dt className="text-muted">{label}</dt>
              <dd>
                <Quantity value={value} dimension={dimension} preferences={preferences} digits={digitsOf(dimension)} />
              </dd>
            </div>
          ))}
        </dl>
      )}
      {step.amounts.length === 0 ? null : (
        <ul className="max-w-md">
          {step.amounts.map((amount, i) => (
            <li key={`${amount.name} ${i}`} className="flex justify-between gap-4 border-b border-rule py-1">
              <span>{amount.name}</span>
              {amount.unit === "mL" ? (
                <span>{`${amount.value.toFixed(1)} mL`}</span>
              ) : (
                <Quantity value={amount.value} dimension={AMOUNT_DIMENSIONS[amount.unit]} preferences={preferences} />
              )}
            </li>
          ))}
        </ul>
      )}
    </>
  );
}

/** A heater is set to tens of watts at best. */
function digitsOf(dimension: Dimension): number | undefined {
  return dimension === "power" ? 0 : undefined;
}
