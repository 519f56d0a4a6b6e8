import type { ReactNode } from "react";
import type { ReadPackage } from "@/lib/ui/cellar/package-draft";
import type { Preferences } from "@/lib/model/preferences";
import { CallExplainedWhenAsked } from "@/lib/ui/call-explained-when-asked";
import { Quantity } from "@/lib/ui/quantity";
import { ForcedTable } from "./forced-table";

interface PackageFiguresProps {
  readonly read: ReadPackage;
  readonly altitudeM: number;
  readonly preferences: Preferences;
}

/** What follows from the fields: sugar or pressure on the regulator, and the pressure in the containers. */
export function PackageFigures({ read, altitudeM, preferences }: PackageFiguresProps) {
  const { choice, plan, filled, missing } = read;
  if (choice === null || plan === null) {
    return <p className="field-hint">Sugar and pressure stand here once all temperatures and volumes are written.</p>;
  }
  const { volumesCo2, celsius, storageC, litres, sugar } = choice;
  return (
    <div role="group" aria-label="What follows" className="flex flex-col gap-3">
      <dl>
        <Line label="Gas that the beer holds already">
          <Quantity value={plan.residual} dimension="carbonation" preferences={preferences} />
        </Line>
        {plan.sugarGrams === null ? null : (
          <Line label="Priming sugar for all of it, weighed">
            <Quantity value={plan.sugarGrams} dimension="grams" preferences={preferences} digits={0} />
          </Line>
        )}
        <Line label="Pressure in it at the warmest place">
          <Quantity value={plan.pressureBar} dimension="pressure" preferences={preferences} />
        </Line>
        <Line label="In the containers so far">
          <Quantity value={filled} dimension="volume" preferences={preferences} />
        </Line>
      </dl>
      {missing === 0 ? null : (
        <p role="status" className="notice notice-attention">
          These containers hold <Quantity value={missing} dimension="volume" preferences={preferences} /> more than
          there is beer. A container that is not full holds air, and its gas and its sugar are not what is computed
          here.
        </p>
      )}
      {sugar === null ? null : (
        <CallExplainedWhenAsked
          id="carbonation/primingSugar"
          args={[{ litres, targetVolumes: volumesCo2, celsius, sugar }]}
        />
      )}
      <CallExplainedWhenAsked id="carbonation/closedPressure" args={[{ volumes: volumesCo2, celsius: storageC }]} />
      {sugar === null ? <ForcedTable volumes={volumesCo2} altitudeM={altitudeM} preferences={preferences} /> : null}
    </div>
  );
}

function Line({ label, children }: { readonly label: string; readonly children: ReactNode }) {
  return (
    <div className="flex flex-wrap items-baseline justify-between gap-x-4 border-b border-rule py-1">
      <dt>{label}</dt>
      <dd>
        <strong>{children}</strong>
      </dd>
    </div>
  );
}
