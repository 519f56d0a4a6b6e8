import { describe, expect, it } from "vitest";
import { litres } from "@/lib/calc/units";
import { equipmentInput } from "@/lib/model/equipment";
import { findEquipment, listEquipment } from "@/lib/server/equipment/reads";
import { createEquipment, saveEquipment } from "@/lib/server/equipment/writes";
import { parsedEquipment } from "../support/brewing";
import { join, newClub } from "../support/club";
import { sampleEquipment } from "../support/sample-recipe";

const renamed = (name: string) => equipmentInput.parse({ ...sampleEquipment(), name });

describe("equipment", () => {
  it("is read back as it was written, with its owner, by everybody in the club", async () => {
    const { member, guest } = await newClub("member", "guest");
    const { id } = await createEquipment(member, parsedEquipment());
    const own = { id, ownerId: member.userId, ownerName: "Some member", rev: 1, equipment: sampleEquipment() };
    expect(await findEquipment(member, id)).toEqual({ ...own, mayWrite: true });
    expect(await listEquipment(guest)).toEqual([{ ...own, mayWrite: false }]);
  });

  it("is changed by its owner or an organiser, in a new revision", async () => {
    const { organiser, member } = await newClub("member");
    const other = await join(organiser, "member");
    const { id } = await createEquipment(member, parsedEquipment());
    await expect(saveEquipment(other, { id, baseRev: 1, equipment: renamed("Mine") })).rejects.toThrow(
      "Only the owner of this equipment or an organiser changes it.",
    );
    expect(await saveEquipment(member, { id, baseRev: 1, equipment: renamed("New name") })).toEqual({
      ok: true,
      rev: 2,
    });
    expect(await saveEquipment(organiser, { id, baseRev: 2, equipment: renamed("Other") })).toEqual({
      ok: true,
      rev: 3,
    });
    expect(await findEquipment(member, id)).toMatchObject({ rev: 3, equipment: { name: "Other" } });
  });

  it("lets one of ten simultaneous saves through", async () => {
    const { member } = await newClub("member");
    const { id } = await createEquipment(member, parsedEquipment());
    const outcomes = await Promise.all(
      Array.from({ length: 10 }, (_, index) =>
        saveEquipment(member, { id, baseRev: 1, equipment: renamed(`Kettle ${String(index)}`) }),
      ),
    );
    expect(outcomes.filter((outcome) => outcome.ok)).toHaveLength(1);
  });

  it("makes no revision of what did not change", async () => {
    const { member } = await newClub("member");
    const { id } = await createEquipment(member, parsedEquipment());
    const outcome = await saveEquipment(member, { id, baseRev: 1, ...parsedEquipment() });
    expect(outcome).toEqual({ ok: false, reason: "unchanged" });
  });

  it("is refused by the database itself when a kettle of 0 L gets past the form", async () => {
    const { member } = await newClub("member");
    const { equipment } = parsedEquipment();
    const noKettle = { ...equipment, kettle: { ...equipment.kettle, capacity: litres(0) } };
    await expect(createEquipment(member, { equipment: noKettle })).rejects.toThrow();
    expect(await listEquipment(member)).toEqual([]);
  });
});
