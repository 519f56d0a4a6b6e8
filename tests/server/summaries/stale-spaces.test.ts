import { describe, expect, it } from "vitest";
import { dropBrew } from "@/lib/server/brews/drop";
import { remakeStale, staleSpaces } from "@/lib/server/summaries/stale";
import { newBrewing } from "../../support/brewing";
import { newClub } from "../../support/club";

describe("the work between requests", () => {
  it("goes to a space whose brew has no summary or was written to, and to no other", async () => {
    const { organiser, member } = await newClub("member");
    const { spaceId } = organiser;
    expect(await staleSpaces()).not.toContain(spaceId);

    const { brewId } = await newBrewing(organiser, member);
    expect(await staleSpaces()).toContain(spaceId);

    await remakeStale(spaceId, 0);
    expect(await staleSpaces()).not.toContain(spaceId);

    await dropBrew(member, { id: brewId, lockVersion: 1, why: "The kettle leaks" });
    expect(await staleSpaces()).toContain(spaceId);
  });
});
