import type { Person } from "@/tests/access/roles";
import { ROUTE_ROWS } from "@/tests/access/route-rows";
import { ACTION_ROWS } from "@/tests/access/action-rows";
import { callOf, outcomeOf } from "./support/access-actions";
import { nowhereAt, placeOf } from "./support/access-places";
import { asked, ORIGIN } from "./support/access-requests";
import { openAccessWorld, type AccessWorld } from "./support/access-world";
import { BYPASSES } from "./support/bypasses";
import { ask, forEachOf, type Answered, type Asked } from "./support/plain-request";
import { expect, test } from "./support/test";

// Requests as any program can send them, without a browser.
test.describe.configure({ mode: "default", timeout: 300_000 });
test.skip((process.env.DATABASE_URL ?? "") === "", "the people are made in the database: npm test -- browser");

const ROUTES = Object.keys(ROUTE_ROWS);
const READ_ROUTES = ROUTES.filter((route) => route.startsWith("GET "));

let world: AccessWorld;
test.beforeAll(async () => {
  world = await openAccessWorld();
});
test.afterAll(() => world.end());

const get = (person: Person, request: Asked): Promise<Answered> => ask(ORIGIN, asked(world, person, request));

test("every page has a policy with a nonce of its own, and no script without it", async () => {
  const wrong = await forEachOf(READ_ROUTES, async (route) => {
    const [first, second] = await forEachOf([1, 2], () => get("organiser", placeOf(route, world.here)));
    const isPage = first?.headers.get("content-type")?.startsWith("text/html") === true;
    return first === undefined || second === undefined || !isPage ? [] : policyFaults(route, first, second);
  });
  expect(wrong.flat()).toEqual([]);
});

function policyFaults(route: string, first: Answered, second: Answered): readonly string[] {
  const policy = first.headers.get("content-security-policy") ?? "";
  const [, nonce] = /script-src 'self' 'nonce-([^']+)' 'strict-dynamic'/.exec(policy) ?? [];
  const scripts = [...first.text.matchAll(/<script\b([^>]*)>/g)].map(([, attributes = ""]) => attributes);
  const isKept = /^GET \/(?:brew-day|judging)\//.test(route);
  const alone = isKept
    ? scripts.filter((attributes) => !/\bsrc="\/(?:brew-day|judging)\//.test(attributes))
    : scripts.filter((attributes) => nonce === undefined || !attributes.includes(`nonce="${nonce}"`));
  const inline = [...first.text.matchAll(/<[^>]+\s(on[a-z]+)=/g)].map(([, name = ""]) => name);
  const isLoose = /script-src[^;]*unsafe|default-src[^;]*(?:\*|https?:)/.test(policy);
  const faults = [
    ...(!isKept && nonce === undefined ? ["no nonce"] : []),
    ...(nonce !== undefined && second.text.includes(nonce) ? ["the nonce of the request before"] : []),
    ...(isLoose || !/object-src 'none'.*base-uri 'none'.*frame-ancestors 'none'/.test(policy)
      ? ["a loose policy"]
      : []),
    ...alone.map((attributes) => `a script without it: ${attributes.slice(0, 80)}`),
    ...inline.map((name) => `a handler in the page: ${name}`),
    ...(/href="\s*javascript:/i.test(first.text) ? ["a link that is a script"] : []),
  ];
  return faults.map((fault) => `${route}: ${fault}`);
}

test("nothing that is somebody’s own is kept by anybody else, and the most of it by nobody", async () => {
  const cases = READ_ROUTES.flatMap((route) =>
    (["organiser", "judge", "outsider"] as const).map((person) => ({ route, person })),
  );
  const wrong = await forEachOf(cases, async ({ route, person }) => {
    const { headers, status } = await get(person, placeOf(route, world.here));
    const told = headers.get("cache-control") ?? "nothing";
    const { kept } = ROUTE_ROWS[route] ?? {};
    const isRight =
      kept === "by everybody" || /\bno-store\b/.test(told) || (kept === "by the browser" && /\bprivate\b/.test(told));
    return isRight ? [] : [`${route} for ${person}: ${String(status)} with ${told}`];
  });
  expect(wrong.flat()).toEqual([]);
});

test("no header and no way of writing an address leads past the sign-in or into another club", async () => {
  const routes = READ_ROUTES.filter((route) => /\[space\]|\/account/.test(route));
  const cases = BYPASSES.flatMap((bypass, n) => [
    ...routes.map((route) => ({ bypass, route, person: "anonymous" as const })),
    // Whoever is signed in is asked for the club by the page itself: each way, on every fourth page.
    ...routes.filter((_, at) => at % 4 === n % 4).map((route) => ({ bypass, route, person: "outsider" as const })),
  ]);
  const leaks = await forEachOf(cases, async ({ bypass, route, person }) => {
    const { text } = await get(person, bypass.change(placeOf(route, world.here)));
    const word = world.words.find((each) => text.includes(each));
    return word === undefined ? [] : [`${route} by ${bypass.name} for ${person}: “${word}”`];
  });
  expect(leaks.flat()).toEqual([]);
  // The words do stand on these pages, or their absence says nothing.
  const seen = await forEachOf(routes, async (route) => {
    const { text } = await get("organiser", placeOf(route, world.here));
    return world.words.some((word) => text.includes(word));
  });
  expect(seen.filter((isSeen) => isSeen).length).toBeGreaterThan(routes.length / 2);
});

const ELSEWHERE = "https://elsewhere.example";
const { host } = new URL(ORIGIN);
/** Where a request says that it comes from; null sends nothing. */
const FOREIGN: readonly Readonly<Record<string, string>>[] = [
  {},
  { origin: "null" },
  { origin: ELSEWHERE },
  { origin: ELSEWHERE, "x-forwarded-host": "elsewhere.example", "x-forwarded-proto": "https" },
  { origin: `http://sub.${host}` },
  { origin: ORIGIN, "sec-fetch-site": "cross-site" },
  { origin: ORIGIN, "sec-fetch-site": "same-site" },
];

test("no change is made for a page that is not ours, by any action or handler", async () => {
  const ids = { ...nowhereAt("hollowmere"), ...world.here };
  const handlers = ROUTES.filter((route) => !route.startsWith("GET ") && !route.includes("/api/v1/"));
  const changes = [
    ...handlers.map((route) => ({ what: route, request: placeOf(route, ids) })),
    ...Object.keys(ACTION_ROWS).map((name) => ({ what: name, request: callOf(name, ids) })),
  ];
  const cases = changes.flatMap((change) => FOREIGN.map((from) => ({ ...change, from })));
  const done = await forEachOf(cases, async ({ what, request, from }) => {
    const { origin: _own, ...sent } = asked(world, "organiser", request).headers ?? {};
    const { status, text } = await ask(ORIGIN, { ...request, headers: { ...sent, ...from } });
    const isRefused = status === 403 && text.includes("did not come from a page of this service");
    return isRefused ? [] : [`${what} from ${JSON.stringify(from)}: ${String(status)}`];
  });
  expect(done.flat()).toEqual([]);
});

test("no write takes a field that it does not know", async () => {
  const ids = nowhereAt("hollowmere");
  const taken = await forEachOf(Object.keys(ACTION_ROWS), async (name) => {
    const call = callOf(name, { ...ids, space: "hollowmere" }, { isOrganiser: "true" });
    const outcome = outcomeOf(await ask(ORIGIN, asked(world, "organiser", call)));
    return outcome.startsWith('{"status":"invalid"') ? [] : [`${name}: ${outcome}`];
  });
  expect(taken.flat()).toEqual([]);
});

/** More than any of them reads; photos, logs of sensors and files of clubs may be larger, and their limits are tested with the services. */
const TOO_MUCH = "x".repeat(3 * 1024 * 1024);
const LARGER = /photos$|club-file|cellar\/csv$|\/api\/auth\/|\/api\/v1\//;

test("no handler reads more than it has a use for", async () => {
  const handlers = ROUTES.filter((route) => !route.startsWith("GET ") && !LARGER.test(route));
  const read = await forEachOf(handlers, async (route) => {
    const { status } = await get("organiser", { ...placeOf(route, world.here), body: TOO_MUCH });
    return status === 413 ? [] : [`${route}: ${String(status)}`];
  });
  expect(handlers.length).toBeGreaterThan(5);
  expect(read.flat()).toEqual([]);
});

const ELSEWHERES = [
  ...["//elsewhere.example", "///elsewhere.example", "/\\elsewhere.example", "\\\\elsewhere.example"],
  ...["https://elsewhere.example", "https:elsewhere.example", "http:/elsewhere.example", "javascript:alert(1)"],
  ...["/\t/elsewhere.example", "/\n/elsewhere.example", "\t//elsewhere.example", "%2f%2felsewhere.example"],
  ...["/%2f/elsewhere.example", "/..//elsewhere.example", "/.//elsewhere.example", "/s/../..//elsewhere.example"],
  ...["https://localhost@elsewhere.example", "//localhost.elsewhere.example", "data:text/html,x", "elsewhere.example"],
];

test("the sign-in leads on to this service alone, whatever a link says", async () => {
  const led = await forEachOf(ELSEWHERES, async (next) => {
    const path = `/sign-in?next=${encodeURIComponent(next)}`;
    const { status, headers } = await get("member", { method: "GET", path });
    const to = new URL(headers.get("location") ?? "https://nowhere.invalid", ORIGIN);
    return status === 307 && to.origin === ORIGIN ? [] : [`${next} led to ${to.href}`];
  });
  expect(led.flat()).toEqual([]);
});

const HALF = "\ud800";
const STRANGE = [
  ...["'; DROP TABLE recipe; --", "%", "_", "\\", "\u0000", "' OR 1=1 --", '{"not":""}', "title; select pg_sleep(9)"],
  ...["(((", "a & | !", ":*", "x".repeat(5000), "<img src=x onerror=alert(1)>", "../../etc/passwd", HALF],
];
const ASKED = [
  ...[
    "search?q=",
    "recipes?sort=",
    "recipes?direction=",
    "recipes?page=",
    "brews?state=",
    "brews?sort=",
    "equipment?sort=",
  ],
  ...["ingredients?whose=", "ingredients?kind=", "ingredients?q=", "comparisons?group=", "comparisons?quantity="],
];

/** Half of a character cannot be written in an address. */
const encoded = (word: string): string => (word === HALF ? "%ED%A0%80" : encodeURIComponent(word));

test("no search, filter or order makes a statement of what somebody writes, nor an element of a page", async () => {
  const cases = ASKED.flatMap((asking) => STRANGE.map((word) => `/s/hollowmere/${asking}${encoded(word)}`));
  const broken = await forEachOf(cases, async (path) => {
    const { status, text } = await get("member", { method: "GET", path });
    return status < 500 && !text.includes("<img src=x") ? [] : [`${path.slice(0, 80)}: ${String(status)}`];
  });
  expect(broken.flat()).toEqual([]);
});

test("a role, a membership and a session that end are over at the next request", async () => {
  const newRecipe = { method: "GET", path: "/s/hollowmere/recipes/new" };
  const statuses: number[] = [];
  const look = async (): Promise<void> => void statuses.push((await get("guest", newRecipe)).status);
  await look();
  await world.changeGuest({ role: "member", status: "active" });
  await look();
  await world.changeGuest({ role: "guest", status: "active" });
  await look();
  await world.changeGuest({ role: "member", status: "left" });
  await look();
  await world.changeGuest({ role: "member", status: "active" });
  await look();
  await world.endSessionOf("guest");
  await look();
  expect(statuses).toEqual([404, 200, 404, 404, 200, 307]);
});
