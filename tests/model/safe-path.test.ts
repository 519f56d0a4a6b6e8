import { describe, expect, it } from "vitest";
import { safePath } from "@/lib/model/safe-path";

describe("safePath", () => {
  it.each(["/", "/s/club", "/s/club/recipes/new?from=1#malt", "/account"])("keeps %s", (path) => {
    expect(safePath(path)).toBe(path);
  });

  it.each([
    "//evil.example",
    "///evil.example",
    "/\\evil.example",
    "\\\\evil.example",
    "/\t/evil.example",
    "/\n/evil.example",
    "https:evil.example",
    "https://evil.example",
    "javascript:alert(1)",
    "data:text/html,x",
    "evil.example",
    "/..//evil.example",
    "/.//evil.example",
    " //evil.example",
    "",
    null,
    undefined,
  ])("turns %j into the start page", (path) => {
    expect(safePath(path)).toBe("/");
  });
});
