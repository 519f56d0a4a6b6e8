import { randomUUID } from "node:crypto";
import { setTimeout as wait } from "node:timers/promises";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { inSpace } from "@/lib/server/db";
import { oneAtATime } from "@/lib/server/one-at-a-time";
import { findSharedBrew } from "@/lib/server/shared-brews/reads";
import { newBrewing } from "../support/brewing";
import { newClub } from "../support/club";

describe("oneAtATime", () => {
  it("asks in order, one by one, whatever an earlier question came to", async () => {
    let open = 0;
    let most = 0;
    const asked: number[] = [];
    async function ask(question: number): Promise<number> {
      asked.push(question);
      most = Math.max(most, ++open);
      await wait(5);
      open--;
      if (question === 2) throw new Error("refused");
      return question * 10;
    }
    const connection = oneAtATime({ queryRaw: ask, executeRaw: ask });
    const answers = await Promise.allSettled([
      connection.queryRaw(1),
      connection.executeRaw(2),
      connection.queryRaw(3),
    ]);
    expect(answers.map((answer) => (answer.status === "fulfilled" ? answer.value : "refused"))).toEqual([
      10,
      "refused",
      30,
    ]);
    expect({ asked, most }).toEqual({ asked: [1, 2, 3], most: 1 });
  });
});

describe("a transaction", () => {
  const warnings: string[] = [];
  const note = (warning: Error): void => {
    warnings.push(warning.message);
  };
  beforeAll(() => process.on("warning", note));
  afterAll(() => process.off("warning", note));

  // The driver says so once in a process; this file has one of its own.
  it("asks its connection one thing at a time, also where a read has several relations", async () => {
    const { organiser, member } = await newClub("member");
    const { sharedBrewId } = await newBrewing(organiser, member);
    await findSharedBrew(organiser, sharedBrewId);
    const { spaceId, userId } = organiser;
    await inSpace(spaceId, userId, (tx) =>
      Promise.all([1, 2, 3].map(() => tx.recipe.count({ where: { spaceId, id: randomUUID() } }))),
    );
    await wait(20);
    expect(warnings.filter((message) => message.includes("already executing a query"))).toEqual([]);
  });
});
