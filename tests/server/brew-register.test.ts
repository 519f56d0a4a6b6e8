import { randomUUID } from "node:crypto";
import { describe, expect, it } from "vitest";
import { readingInput } from "@/lib/model/reading-input";
import { listRegister } from "@/lib/server/brews/register";
import { recordReading } from "@/lib/server/readings/writes";
import { newBrewing } from "../support/brewing";
import { newClub } from "../support/club";
import { sampleReading } from "../support/sample-reading";

async function clubWithBrew() {
  const club = await newClub("member");
  return { ...club, ...(await newBrewing(club.organiser, club.member)) };
}

describe("listRegister", () => {
  it("shows what was planned for a batch before anything is measured", async () => {
    const { organiser, brewId } = await clubWithBrew();
    const [entry, ...others] = await listRegister(organiser);
    expect(others).toEqual([]);
    expect(entry).toMatchObject({ id: brewId, state: "planned", measuredOriginal: null });
    const { value, low80, high80 } = entry?.plannedOriginal ?? { value: 0, low80: 0, high80: 0 };
    expect(low80 < value && value < high80).toBe(true);
  });

  it("shows the original extract that was read last, and no other reading", async () => {
    const { member, brewId } = await clubWithBrew();
    const deviceId = randomUUID();
    const readings = [
      { deviceSeq: 1, quantity: "fermenter.originalExtract", value: 11, sd: 0.2 },
      { deviceSeq: 2, quantity: "fermenter.originalExtract", value: 12, sd: 0.2 },
      { deviceSeq: 3, quantity: "kettle.preBoilGravity", value: 9, sd: 0.2 },
    ];
    for (const change of readings) {
      await recordReading(member, readingInput.parse({ ...sampleReading(brewId), deviceId, ...change }));
    }
    expect((await listRegister(member))[0]?.measuredOriginal).toBeCloseTo(12, 9);
  });

  it("shows nothing of another club", async () => {
    const { brewId } = await clubWithBrew();
    const { organiser: stranger } = await newClub();
    expect((await listRegister(stranger)).map(({ id }) => id)).not.toContain(brewId);
  });
});
