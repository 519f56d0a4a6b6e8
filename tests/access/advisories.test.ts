import { describe, expect, it } from "vitest";
import { judge } from "../../lib/ops/advisories.mjs";

const advisory = (severity: string) => ({
  source: 1096001,
  title: "A hole in parsing",
  severity,
  url: "https://github.com/advisories/GHSA-aaaa-bbbb-cccc",
});
const answer = (severity: string) => ({
  vulnerabilities: {
    parser: { name: "parser", via: [advisory(severity)] },
    // It has no hole of its own.
    user: { name: "user", via: ["parser"] },
  },
});

describe("what the registry knows against the packages", () => {
  it("ends the check where it is serious, and is told where it is not", () => {
    const words = (severity: string) => `parser: ${severity}, GHSA-aaaa-bbbb-cccc, A hole in parsing`;
    expect(judge(answer("high"))).toEqual({ notAsked: null, serious: [words("high")], told: [] });
    expect(judge(answer("moderate"))).toEqual({ notAsked: null, serious: [], told: [words("moderate")] });
    expect(judge({ vulnerabilities: {} })).toEqual({ notAsked: null, serious: [], told: [] });
  });

  it("is neither where it is explained", () => {
    const explained = { "GHSA-aaaa-bbbb-cccc": "the parser gets nothing of anybody else" };
    expect(judge(answer("critical"), explained)).toEqual({ notAsked: null, serious: [], told: [] });
  });

  it("is unknown where the registry does not answer, which is said and ends nothing", () => {
    const refused = { message: "405 Method Not Allowed", error: { code: "E405", summary: "", detail: "" } };
    expect(judge(refused)).toEqual({ notAsked: "405 Method Not Allowed", serious: [], told: [] });
    expect(judge({}).notAsked).toBe("no reason was given");
  });
});
