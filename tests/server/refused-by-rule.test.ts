import { describe, expect, it } from "vitest";
import { inSpace, isRefusedByRule } from "@/lib/server/db";
import { newClub } from "../support/club";

/** What the client throws when the database answers with a code. */
async function thrownWith(code: string): Promise<unknown> {
  const { organiser } = await newClub();
  try {
    await inSpace(organiser.spaceId, organiser.userId, async (tx) => {
      await tx.$executeRaw`SELECT set_config('test.code', ${code}, true)`;
      await tx.$executeRaw`
        DO $$ BEGIN RAISE EXCEPTION 'no' USING ERRCODE = current_setting('test.code'); END $$`;
    });
  } catch (error) {
    return error;
  }
  throw new Error("nothing was thrown");
}

// PostgreSQL, appendix A, error codes.
describe("isRefusedByRule", () => {
  it.each([
    ["23514", "a check"],
    ["23503", "a reference"],
    ["22003", "a number out of range"],
    ["P0001", "a trigger"],
  ])("is true of %s, %s", async (code) => {
    expect(isRefusedByRule(await thrownWith(code))).toBe(true);
  });

  it.each([
    ["57P03", "starting up"],
    ["57P01", "shutting down"],
    ["57014", "too slow"],
    ["40001", "at odds with another transaction"],
    ["53300", "out of connections"],
  ])("is false of %s, a database that is %s: what was sent is right, and is sent again", async (code) => {
    expect(isRefusedByRule(await thrownWith(code))).toBe(false);
  });
});
