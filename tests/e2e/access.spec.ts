import { randomUUID } from "node:crypto";
import { EVERYBODY, INSIDERS, OUTSIDERS, STRANGERS, type Person } from "@/tests/access/roles";
import { roleMay } from "@/lib/model/roles";
import type { ActionRow } from "@/tests/access/action-row";
import { ACTION_ROWS } from "@/tests/access/action-rows";
import { ROUTE_ROWS } from "@/tests/access/route-rows";
import { builtActions, callOf, outcomeOf } from "./support/access-actions";
import type { AddressParts } from "./support/club-addresses";
import { asked, cellOf, ORIGIN } from "./support/access-requests";
import { openAccessWorld, type AccessWorld } from "./support/access-world";
import { placeOf, nowhereAt, piecesOf, withoutIds } from "./support/access-places";
import { ask, forEachOf } from "./support/plain-request";
import { expect, test } from "./support/test";

// One world for all of them, and no browser: these are requests as any program can send them.
test.describe.configure({ mode: "default", timeout: 300_000 });
test.skip((process.env.DATABASE_URL ?? "") === "", "the people are made in the database: npm test -- browser");

const ROUTES = Object.keys(ROUTE_ROWS);
const CLUB_ROUTES = ROUTES.filter((route) => route.includes("[space]"));

let world: AccessWorld;
test.beforeAll(async () => {
  world = await openAccessWorld();
});
test.afterAll(() => world.end());

const EVERY_CELL = ROUTES.flatMap((route) => EVERYBODY.map((person) => ({ route, person })));

test("every route answers everybody as its row says", async () => {
  const wrong = await forEachOf(EVERY_CELL, async ({ route, person }) => {
    const cell = cellOf(await ask(ORIGIN, asked(world, person, placeOf(route, world.here))));
    const expected = ROUTE_ROWS[route]?.cells[person];
    return cell === expected ? [] : [`${route} for ${person}: ${String(cell)}, not ${String(expected)}`];
  });
  expect(wrong.flat()).toEqual([]);
});

interface Case {
  readonly route: string;
  readonly person: Person;
  readonly parts: AddressParts;
  /** What an address with nothing behind it has in common with the other. */
  readonly like: AddressParts;
}

test("what a club has is answered to others as what nobody has, to the last word", async () => {
  const elsewhere = ["former", "outsider"] as const;
  const cases: readonly Case[] = [
    ...CLUB_ROUTES.flatMap((route) => elsewhere.map((person) => ({ route, person, parts: world.here, like: {} }))),
    // The records of one club under the address of another, by somebody who may do everything there.
    ...CLUB_ROUTES.filter((route) => /\[(?!space\])/.test(route)).map((route) => {
      const space = { space: "farfield" };
      return { route, person: "outsider" as const, parts: { ...world.here, ...space }, like: space };
    }),
    ...CLUB_ROUTES.map((route) => {
      return { route, person: "organiser" as const, parts: { ...world.here, space: "farfield" }, like: {} };
    }),
  ];
  const told = await forEachOf(cases, async ({ route, person, parts, like }) => {
    const empty = { ...nowhereAt(`no-${randomUUID().slice(0, 8)}`), entry: parts.entry ?? "", ...like };
    const [there, nowhere] = await forEachOf([parts, empty], async (each) => {
      const { status, text } = await ask(ORIGIN, asked(world, person, placeOf(route, each)));
      return [String(status), ...piecesOf(text, each)];
    });
    const more = there?.filter((piece) => nowhere?.includes(piece) !== true) ?? [];
    const less = nowhere?.filter((piece) => there?.includes(piece) !== true) ?? [];
    return [...more, ...less].map((piece) => `${route} for ${person}: ${piece.slice(0, 200)}`);
  });
  expect(told.flat()).toEqual([]);
});

const ACTIONS = Object.keys(ACTION_ROWS);
const call = async (person: Person, name: string, ids: AccessWorld["here"]): Promise<string> =>
  outcomeOf(await ask(ORIGIN, asked(world, person, callOf(name, ids))));

/** Whether a row lets somebody of the club do it, as far as the role decides. */
function mayHere(person: (typeof INSIDERS)[number], { may }: ActionRow): boolean {
  return may === "come" || may === "be signed in" || may === "be here" || roleMay(person, may);
}

// What is sent from beside a kettle stays on the page, so that those are told instead.
const SENT_AWAY = /^sign in$|"refused","message":"You are no longer signed in/;
const NOT_THERE = /^404$|"refused","message":"There is no such brew here/;

test("the build has the actions of the table, and no other", () => {
  expect([...builtActions().keys()].sort()).toEqual([...ACTIONS].sort());
});

test("every action sends strangers to sign in, and knows nothing of a club to whoever is not of it", async () => {
  const cases = ACTIONS.flatMap((name) => EVERYBODY.map((person) => ({ name, person })));
  const wrong = await forEachOf(cases, async ({ name, person }) => {
    const row = ACTION_ROWS[name];
    if (row === undefined || row.may === "come") return [];
    const isStranger = STRANGERS.some((each) => each === person);
    const isOutside = OUTSIDERS.some((each) => each === person);
    if (!isStranger && (row.may === "be signed in" || !isOutside)) return [];
    const outcome = await call(person, name, { ...nowhereAt("hollowmere"), ...world.here });
    return (isStranger ? SENT_AWAY : NOT_THERE).test(outcome) ? [] : [`${name} for ${person}: ${outcome}`];
  });
  expect(wrong.flat()).toEqual([]);
});

test("every action refuses whoever’s role does not reach, in words, with records that are there", async () => {
  const cases = ACTIONS.flatMap((name) => INSIDERS.map((person) => ({ name, person })));
  const wrong = await forEachOf(cases, async ({ name, person }) => {
    const row = ACTION_ROWS[name];
    if (row === undefined || mayHere(person, row)) return [];
    const outcome = await call(person, name, { ...nowhereAt("hollowmere"), ...world.here });
    return /^\{"status":"refused","message":".*\b(?:Only|may)\b/.test(outcome)
      ? []
      : [`${name} for ${person}: ${outcome}`];
  });
  expect(wrong.flat()).toEqual([]);
});

test("every action answers the records of another club as records that are nowhere", async () => {
  const named = ACTIONS.filter((name) => ACTION_ROWS[name]?.named === true);
  const wrong = await forEachOf(named, async (name) => {
    const [there, nowhere] = await forEachOf([world.here, {}], async (records) => {
      const ids = { ...nowhereAt("farfield"), ...records, space: "farfield" };
      return withoutIds(await call("outsider", name, ids), ids);
    });
    // What is wrong of itself is told before anything is looked for, and would say nothing here.
    const isLookedFor = there !== undefined && !there.includes('"status":"invalid"') && !there.startsWith("to ");
    return isLookedFor && there === nowhere ? [] : [`${name}: ${String(there)}, and nowhere ${String(nowhere)}`];
  });
  expect(wrong.flat()).toEqual([]);
});
