import { describe, expect, it } from "vitest";
import { routeFinder } from "../../../lib/ops/observe/routes.mjs";

const routeOf = routeFinder([
  "/",
  "/s/[space]/recipes/new",
  "/s/[space]/recipes/[recipe]",
  "/calendar/[token]",
  "/brew-day/[[...at]]",
  "/api/auth/[...nextauth]",
]);

describe("the route of a path", () => {
  it.each([
    ["/", "/"],
    ["/?next=/s/hollowmere", "/"],
    ["/s/hollowmere/recipes/new", "/s/[space]/recipes/new"],
    ["/s/hollowmere/recipes/9d2f?rev=2", "/s/[space]/recipes/[recipe]"],
    ["/calendar/a-secret-of-256-bits", "/calendar/[token]"],
    ["/brew-day", "/brew-day/[[...at]]"],
    ["/brew-day/hollowmere/9d2f", "/brew-day/[[...at]]"],
    ["/api/auth/callback/credentials", "/api/auth/[...nextauth]"],
    ["/_next/static/chunks/a.js", "/_next"],
  ])("of %s is %s", (path, route) => {
    expect(routeOf(path)).toBe(route);
  });

  it("says nothing of a path that leads nowhere", () => {
    expect(routeOf("/nora@example.org/%0aforged")).toBe("(none)");
  });
});
