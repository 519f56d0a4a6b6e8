import { describe, expect, it } from "vitest";
import { ACTION_ROWS } from "./action-rows";
import { readActions, readRoutes } from "./app-surface";
import { EVERYBODY } from "./roles";
import { ROUTE_ROWS } from "./route-rows";

const routes = readRoutes();
const actions = readActions();

describe("the table of who gets what", () => {
  it("has a row for every route of the app, and for no other", () => {
    expect(routes.length).toBeGreaterThan(100);
    expect(Object.keys(ROUTE_ROWS).sort()).toEqual([...routes].sort());
  });

  it("has a row for every action of the app, and for no other", () => {
    const names = actions.map(({ name }) => name);
    expect(new Set(names).size).toBe(names.length);
    expect(Object.keys(ACTION_ROWS).sort()).toEqual([...names].sort());
  });

  it("says for everybody what every route answers", () => {
    for (const [route, { cells }] of Object.entries(ROUTE_ROWS)) {
      expect(Object.keys(cells).sort(), route).toEqual([...EVERYBODY].sort());
    }
  });
});

describe("an action", () => {
  it("gives back what the wrapper gives, which looks at origin and input, whichever it is", () => {
    expect(actions.filter(({ isWrapped }) => !isWrapped)).toEqual([]);
  });
});
