import { describe, expect, it } from "vitest";
import { limitWords } from "@/lib/calc/explain";
import type { Limit } from "@/lib/calc/ledger";
import { brewed } from "../../support/brewed";
import { EXPLAINED_BREWS } from "../../support/explained-brews";

describe("the words for a limit", () => {
  const limits = Object.values(EXPLAINED_BREWS).flatMap((brew) => brew.ledger.limits);
  const kinds = [...new Map(limits.map((limit) => [limit.id, limit])).values()];

  it("are there for every limit, in sentences and without a number of their own", () => {
    // As many as the ledger has kinds of limit; the brews between them meet all.
    expect(kinds).toHaveLength(13);
    for (const limit of kinds) {
      const { title, because } = limitWords(limit);
      expect(title).not.toBe("");
      expect(because).toMatch(/\.$/);
      expect(`${title} ${because}`).not.toMatch(/\d/);
    }
  });

  it("are the same whether the limit is kept or not, because they say why it is there", () => {
    const limit = brewed().limits.find((each) => each.id === "boil volume");
    if (limit === undefined) throw new Error("the kettle has no boil volume");
    const broken: Limit = { ...limit, ok: false };
    expect(limitWords(broken)).toEqual(limitWords(limit));
  });
});
