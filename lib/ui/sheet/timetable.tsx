import type { ReactElement } from "react";
import { QUANTITIES, type Equipment } from "@/lib/calc/ledger";
import type { Step } from "@/lib/calc/runsheet";
import type { Preferences } from "@/lib/model/preferences";
import { stepTitle } from "../brew/step-titles";
import { DataTable } from "../data-table";
import { Quantity } from "../quantity";

/** The day on paper: when each step begins, counted from weighing out, and room for what is read. */
export function Timetable(props: {
  readonly steps: readonly Step[];
  readonly equipment: Equipment;
  readonly preferences: Preferences;
}): ReactElement {
  const { steps, equipment, preferences } = props;
  return (
    <DataTable<Step>
      caption="Timetable, counted from weighing out"
      columns={[
        { id: "step", label: "Step", cell: (step) => stepTitle(step, equipment) },
        {
          id: "start",
          label: "Begins at",
          isNumber: true,
          cell: ({ startMin }) => <Quantity value={startMin} dimension="minutes" preferences={preferences} />,
        },
        {
          id: "takes",
          label: "Takes",
          isNumber: true,
          cell: ({ minutes }) =>
            minutes === 0 ? null : <Quantity value={minutes} dimension="minutes" preferences={preferences} />,
        },
        {
          id: "temperature",
          label: "Temperature",
          isNumber: true,
          cell: ({ celsius }) =>
            celsius === null ? null : <Quantity value={celsius} dimension="temperature" preferences={preferences} />,
        },
        { id: "clock", label: "Clock", cell: () => <span className="sheet-blank" /> },
        {
          id: "read",
          label: "Read",
          cell: ({ measure }) =>
            measure.length === 0 ? null : (
              <>
                {measure.map((id) => QUANTITIES[id].label).join(", ")}: <span className="sheet-blank" />
              </>
            ),
        },
      ]}
      records={steps}
      keyOf={({ id }) => id}
    />
  );
}
