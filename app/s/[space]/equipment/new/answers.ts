import { EQUIPMENT_FIELDS } from "@/lib/model/equipment-fields";
import type { MeasuredField } from "@/lib/model/field";

export const ANSWER_NAMES = ["capacity", "power", "voltage", "usualBatch", "altitude"] as const;
export type NumberAnswer = (typeof ANSWER_NAMES)[number];

/** The numbers that are asked for, in the order of the form. */
export const ANSWERS: Readonly<
  Record<NumberAnswer, { readonly label: string; readonly hint: string; readonly field: MeasuredField }>
> = {
  capacity: { label: "Kettle volume", hint: "To the brim.", field: EQUIPMENT_FIELDS["kettle.capacity"] },
  power: {
    label: "Power",
    hint: "On the rating plate of the kettle or hob.",
    field: EQUIPMENT_FIELDS["kettle.ratedPower"],
  },
  voltage: {
    label: "Voltage",
    hint: "Of the supply that it stands on.",
    field: EQUIPMENT_FIELDS["kettle.supplyVoltage"],
  },
  usualBatch: {
    label: "Usual batch",
    hint: "What you usually put into the fermenter.",
    field: EQUIPMENT_FIELDS.usualBatch,
  },
  altitude: { label: "Altitude", hint: "Water boils cooler on a mountain.", field: EQUIPMENT_FIELDS.altitude },
};
