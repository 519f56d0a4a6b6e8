import { randomUUID } from "node:crypto";
import { setTimeout as wait } from "node:timers/promises";
import { Client } from "pg";
import { afterEach, describe, expect, it, vi } from "vitest";
import { inSpace } from "@/lib/server/db";
import { oneAtATime } from "@/lib/server/one-at-a-time";
import { findSharedBrew } from "@/lib/server/shared-brews/reads";
import { newBrewing } from "../support/brewing";
import { newClub } from "../support/club";

afterEach(() => {
  vi.restoreAllMocks();
});

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

/** How many questions were open at once on one connection, at most; they are asked and answered as ever. */
function watchConnections(): () => number {
  const open = new WeakMap<object, number>();
  let most = 0;
  // It is called with the connection that it is asked of, below.
  // eslint-disable-next-line @typescript-eslint/unbound-method -- bound by `apply`
  const ask = Client.prototype.query as (this: Client, ...question: unknown[]) => unknown;
  function asked(this: Client, ...question: unknown[]): unknown {
    const answer = ask.apply(this, question);
    // Whatever is asked outside of a transaction is answered to a callback.
    if (!(answer instanceof Promise)) return answer;
    const now = (open.get(this) ?? 0) + 1;
    open.set(this, now);
    most = Math.max(most, now);
    const close = (): void => {
      open.set(this, (open.get(this) ?? 1) - 1);
    };
    void answer.then(close, close);
    return answer;
  }
  vi.spyOn(Client.prototype, "query").mockImplementation(asked);
  return () => most;
}

describe("a transaction", () => {
  it("asks its connection one thing at a time, also where a read has several relations", async () => {
    const { organiser, member } = await newClub("member");
    const { sharedBrewId } = await newBrewing(organiser, member);
    const mostAtOnce = watchConnections();
    await findSharedBrew(organiser, sharedBrewId);
    const { spaceId, userId } = organiser;
    await inSpace(spaceId, userId, (tx) =>
      Promise.all([1, 2, 3].map(() => tx.recipe.count({ where: { spaceId, id: randomUUID() } }))),
    );
    expect(mostAtOnce()).toBe(1);
  });
});
