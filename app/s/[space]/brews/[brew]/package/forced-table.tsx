import { gaugePressureAtAltitude } from "@/lib/calc/carbonation";
import { celsius, metres, volumesCo2 } from "@/lib/calc/units";
import type { Preferences } from "@/lib/model/preferences";
import { DataTable } from "@/lib/ui/data-table";
import { CallExplainedWhenAsked } from "@/lib/ui/call-explained-when-asked";
import { Quantity } from "@/lib/ui/quantity";

interface ForcedTableProps {
  readonly volumes: number;
  readonly altitudeM: number;
  readonly preferences: Preferences;
}

/** Temperatures of a cellar, °C; the table behind the fit ends near 20. */
const TEMPERATURES = [0, 2, 4, 6, 8, 10, 12, 14, 16, 18, 20] as const;

/** What the regulator is set to for this carbonation, by the temperature of the beer. */
export function ForcedTable({ volumes, altitudeM, preferences }: ForcedTableProps) {
  const at = (c: number) => ({
    celsius: celsius(c),
    volumes: volumesCo2(volumes),
    altitudeM: metres(altitudeM),
  });
  return (
    <>
      <DataTable
        caption="Regulator for this carbonation, by the temperature of the beer"
        columns={[
          {
            id: "celsius",
            label: "Beer at",
            cell: (c: number) => <Quantity value={c} dimension="temperature" preferences={preferences} digits={0} />,
          },
          {
            id: "gauge",
            label: "Gauge pressure",
            isNumber: true,
            cell: (c: number) => (
              <Quantity value={gaugePressureAtAltitude(at(c))} dimension="pressure" preferences={preferences} aligned />
            ),
          },
        ]}
        records={TEMPERATURES}
        keyOf={String}
      />
      <CallExplainedWhenAsked id="carbonation/gaugePressureAtAltitude" args={[at(TEMPERATURES[2])]} />
    </>
  );
}
