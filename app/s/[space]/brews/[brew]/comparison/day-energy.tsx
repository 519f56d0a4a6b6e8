import { meterEnergy, type ComparedRow } from "@/lib/calc/compare";
import type { Brew } from "@/lib/model/brew";
import type { BrewPlan } from "@/lib/model/brew-plan";
import { meterReadings } from "@/lib/model/meter-readings";
import type { Preferences } from "@/lib/model/preferences";
import { intervalOfSd } from "@/lib/ui/brew/interval-of-sd";
import { ExplainedCall } from "@/lib/ui/explained-call";
import { Quantity } from "@/lib/ui/quantity";

interface DayEnergyProps {
  readonly brew: Brew;
  readonly plan: BrewPlan;
  readonly rows: readonly ComparedRow[];
  readonly preferences: Preferences;
}

/** The electricity of the day: as planned, and by a meter that was read at both ends of it. */
export function DayEnergy({ brew, plan, rows, preferences }: DayEnergyProps) {
  const meter = meterReadings(brew);
  const row = rows.find(({ quantity }) => quantity === "day.energy");
  const shown = { dimension: "energy", preferences } as const;
  return (
    <section aria-labelledby="energy" className="mt-10">
      <h2 id="energy">Energy</h2>
      <p className="mt-1">
        Electricity planned:{" "}
        <Quantity
          value={plan.ledger.quantities["day.energy"]}
          interval={plan.intervals["day.energy"] ?? null}
          {...shown}
        />
        .{" "}
        {row === undefined || row.measured === null ? (
          whyNone(meter)
        ) : (
          <>
            By the meter:{" "}
            <Quantity value={row.measured} interval={intervalOfSd(row.measured, row.measuredSd)} {...shown} />,{" "}
            {row.expectation} the expectation. What else hangs on the meter is in it.
          </>
        )}
      </p>
      {row === undefined || row.measured === null ? null : <ExplainedCall id="compare/meterEnergy" args={[meter]} />}
    </section>
  );
}

function whyNone(meter: Parameters<typeof meterEnergy>[0]): string {
  if (meter.length === 0)
    return "Nobody read a meter; it is read on the run sheet, at the start of the day and at its end.";
  const energy = meterEnergy(meter);
  if (energy.ok || energy.reason === "fewer-than-two")
    return "The meter was read once; a second reading tells the rest.";
  return "The meter runs back from one reading to the next, so one of them is wrong or it was set to zero.";
}
