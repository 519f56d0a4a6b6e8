import { z } from "zod";
import { EQUIPMENT_FIELDS } from "./equipment-fields";
import { equipmentInput } from "./equipment";
import { measuredBy } from "./measured";
import { EQUIPMENT_KINDS, typicalEquipment } from "./typical-equipment";
import { oneOf, written } from "./written";

/** What a person knows of a kettle, as the whole profile that is estimated from it. */
export const equipmentAnswers = z
  .strictObject({
    name: written("Name of the equipment", 80),
    kind: oneOf("Kind of equipment", EQUIPMENT_KINDS),
    capacity: measuredBy(EQUIPMENT_FIELDS["kettle.capacity"]),
    power: measuredBy(EQUIPMENT_FIELDS["kettle.ratedPower"]),
    voltage: measuredBy(EQUIPMENT_FIELDS["kettle.supplyVoltage"]),
    usualBatch: measuredBy(EQUIPMENT_FIELDS.usualBatch),
    altitude: measuredBy(EQUIPMENT_FIELDS.altitude),
  })
  .refine((answers) => answers.usualBatch <= answers.capacity, {
    path: ["usualBatch"],
    message: "Usual batch is more than the kettle holds",
  })
  .transform((answers, context) => {
    // An odd set of answers may estimate a figure outside the range that a profile takes.
    const estimated = equipmentInput.safeParse(typicalEquipment(answers));
    if (estimated.success) return estimated.data;
    context.addIssue({ code: "custom", message: estimated.error.issues.map(({ message }) => message).join("; ") });
    return z.NEVER;
  });
