import { INSIDERS, OUTSIDERS, STRANGERS, type Insider, type Person } from "./roles";

/** A status, or that somebody is sent to the sign-in page. */
export type Cell = number | "sign in";
type Cells = Readonly<Record<Person, Cell>>;

export interface RouteRow {
  readonly cells: Cells;
  /** What is asked for, where the address alone asks for nothing. */
  readonly query?: string;
  /** How long an answer may be kept: not at all, by the browser that asked, or by everybody because it is nobody's own. */
  readonly kept: "not" | "by the browser" | "by everybody";
}

const all = <P extends Person>(people: readonly P[], cell: Cell): Record<P, Cell> =>
  Object.fromEntries(people.map((person) => [person, cell])) as Record<P, Cell>; // each of them, by the line above

interface Rest {
  readonly query?: string;
  readonly kept?: RouteRow["kept"];
}

const row = (cells: Cells, { kept = "not", ...rest }: Rest = {}): RouteRow => ({ cells, kept, ...rest });

/** What everybody gets alike. */
const open = (cell: Cell, rest?: Rest): RouteRow =>
  row({ ...all(STRANGERS, cell), ...all(OUTSIDERS, cell), ...all(INSIDERS, cell) }, rest);

/** Whoever is signed in, wherever they belong. */
const own = (strangers: Cell, cell: Cell, rest?: Rest): RouteRow =>
  row({ ...open(cell).cells, ...all(STRANGERS, strangers) }, rest);

/** A page of a club: others do not learn that it is there. */
const club = (inside: Readonly<Partial<Record<Insider, Cell>>> = {}, rest?: Rest): RouteRow =>
  row({ ...all(STRANGERS, "sign in"), ...all(OUTSIDERS, 404), ...all(INSIDERS, 200), ...inside }, rest);

/** The same for what a program asks for, which has no use for a sign-in page. */
const program = (inside: Readonly<Partial<Record<Insider, Cell>>> = {}, rest?: Rest): RouteRow => {
  const { cells, ...others } = club(inside, rest);
  return { ...others, cells: { ...cells, ...all(STRANGERS, 401) } };
};

const notFor = (...people: readonly Insider[]): Readonly<Partial<Record<Insider, Cell>>> => all(people, 404);
const refusedTo = (...people: readonly Insider[]): Readonly<Partial<Record<Insider, Cell>>> => all(people, 403);

/** Pages of what only some do, by the table of abilities in lib/model/roles.ts. */
const FOR_BREWERS = notFor("guest", "judge", "steward");
const FOR_ORGANISERS = notFor("guest", "judge", "steward", "member");
const FOR_STEWARDS = notFor("guest", "judge", "member");

/** The tasting of the demo is prepared by its organiser: from then on no other steward sees what is in it. */
const FOR_ITS_STEWARD = notFor("guest", "judge", "steward", "member");

/** Sent without anything in it: whoever may is told what is missing, and whoever may not is told that. */
const EMPTY = all(INSIDERS, 400);
const EMPTY_BY_BREWERS = { ...refusedTo("guest", "judge", "steward"), member: 400, organiser: 400 };
const EMPTY_BY_ORGANISERS = { ...refusedTo("guest", "judge", "steward", "member"), organiser: 400 };

/** The expected answer of every route to everybody, at addresses of the demo club. A route without a row fails the tests. */
export const ROUTE_ROWS: Readonly<Record<string, RouteRow>> = {
  "GET /": open(200),
  "GET /sign-in": row({ ...all(STRANGERS, 200), ...all(OUTSIDERS, 307), ...all(INSIDERS, 307) }),
  "GET /join": open(200),
  "GET /api-docs": open(200),
  "GET /p/[address]": open(200),
  "GET /p/[address]/card.png": open(200, { kept: "by everybody" }),
  "GET /p/results/[result]": open(200),
  "GET /p/results/[result]/card.png": open(200, { kept: "by everybody" }),
  "GET /account": own("sign in", 200),
  "GET /account/data": own("sign in", 200),

  "GET /api/health/live": open(200),
  "GET /api/health/ready": open(200),
  "GET /api/auth/[...nextauth]": open(200, { kept: "by the browser" }),
  "POST /api/auth/[...nextauth]": open(400),
  "GET /api/push/key": own(401, 200, { kept: "by the browser" }),
  "POST /api/push/subscriptions": own(401, 400),
  "DELETE /api/push/subscriptions": own(401, 400),
  "POST /api/log/ingest": own(401, 400),
  "POST /api/tastings/ingest": own(401, 400),
  "GET /api/brew-day/[space]/[brew]": program(),
  "GET /api/brew-day/[space]/[brew]/live": program({}, { kept: "by the browser" }),
  "GET /api/brew-day/[space]/[brew]/photos/[photo]": program(notFor(...INSIDERS)),
  "POST /api/brew-day/[space]/[brew]/photos": program(EMPTY_BY_BREWERS, { query: "id=[photo]" }),
  // What a judge was given to judge, and nobody else.
  "GET /api/tastings/[space]/[tasting]": program(notFor("guest", "steward", "member", "organiser")),
  // By the key of a sensor only: no session opens these.
  "GET /api/v1/brews": open(401),
  "GET /api/v1/brews/[brew]/readings": open(401),
  "POST /api/v1/readings": open(401),
  "GET /api/v1/openapi.json": open(200, { kept: "by everybody" }),
  "GET /calendar/[token]": open(404),

  // The pages that devices keep: the same for everybody, with nobody's data in them.
  "GET /brew-day/[[...at]]": open(200, { kept: "by everybody" }),
  "GET /brew-day/files/[file]": open(200, { kept: "by everybody" }),
  "GET /brew-day/manifest.json": open(200, { kept: "by everybody" }),
  "GET /brew-day/sw.js": open(200, { kept: "by everybody" }),
  "GET /judging/[[...at]]": open(200, { kept: "by everybody" }),
  "GET /judging/files/[file]": open(200, { kept: "by everybody" }),
  "GET /judging/manifest.json": open(200, { kept: "by everybody" }),
  "GET /judging/sw.js": open(200, { kept: "by everybody" }),

  "GET /s/[space]": club(),
  "GET /s/[space]/search": club(),
  "GET /s/[space]/people": club(),
  "GET /s/[space]/notices": club(),
  "GET /s/[space]/calendar": club(),
  "GET /s/[space]/sensors": club(),
  "GET /s/[space]/club-file": club(FOR_ORGANISERS),
  "GET /s/[space]/club-file/download": club(refusedTo("guest", "judge", "steward", "member")),
  "POST /s/[space]/club-file/look": club(EMPTY_BY_ORGANISERS),
  "POST /s/[space]/club-file/take": club(EMPTY_BY_ORGANISERS),

  "GET /s/[space]/brews": club(),
  "GET /s/[space]/brews/[brew]": club(),
  "GET /s/[space]/brews/[brew]/comparison": club(),
  "GET /s/[space]/brews/[brew]/cellar": club(),
  "POST /s/[space]/brews/[brew]/cellar/csv": program(EMPTY_BY_BREWERS),
  "GET /s/[space]/brews/[brew]/package": club(),
  "GET /s/[space]/brews/[brew]/package/labels": club(),
  "GET /s/[space]/comparisons": club(),
  "GET /s/[space]/comparisons/export": program(),
  "GET /s/[space]/comparisons/[comparison]": club(),

  "GET /s/[space]/equipment": club(),
  "GET /s/[space]/equipment/new": club(FOR_BREWERS),
  "GET /s/[space]/equipment/[equipment]": club(),
  "GET /s/[space]/equipment/[equipment]/learned": club(),
  "GET /s/[space]/equipment/[equipment]/trials/[trial]": club(),
  "POST /s/[space]/equipment/[equipment]/trials/[trial]/readings": program(EMPTY),

  "GET /s/[space]/ingredients": club(),
  "GET /s/[space]/ingredients/new": club(FOR_BREWERS),
  "GET /s/[space]/ingredients/export": club(),
  "GET /s/[space]/ingredients/[ingredient]": club(),
  "GET /s/[space]/ingredients/lots/new": club(FOR_BREWERS),
  "GET /s/[space]/ingredients/lots/[lot]": club(),

  "GET /s/[space]/orders": club(FOR_BREWERS),
  "GET /s/[space]/orders/new": club(FOR_ORGANISERS),
  "GET /s/[space]/orders/[order]": club(FOR_BREWERS),
  "GET /s/[space]/orders/[order]/csv": program(FOR_BREWERS),
  "GET /s/[space]/orders/[order]/hand-out": club(FOR_BREWERS),
  "GET /s/[space]/orders/[order]/items/[item]": club(FOR_BREWERS),

  "GET /s/[space]/recipes": club(),
  "GET /s/[space]/recipes/new": club(FOR_BREWERS),
  "GET /s/[space]/recipes/import": club(FOR_BREWERS),
  "POST /s/[space]/recipes/import/preview": club(EMPTY_BY_BREWERS),
  "POST /s/[space]/recipes/import/take": club(EMPTY_BY_BREWERS),
  "GET /s/[space]/recipes/export": club(),
  "GET /s/[space]/recipes/export/file": club({}, { query: "recipe=[recipe]&format=beerxml-1.0" }),
  "GET /s/[space]/recipes/[recipe]": club(),
  "GET /s/[space]/recipes/[recipe]/compare": club(),
  "GET /s/[space]/recipes/[recipe]/copy": club(),
  "GET /s/[space]/recipes/[recipe]/drafts": club(),
  "GET /s/[space]/recipes/[recipe]/family": club(),
  "GET /s/[space]/recipes/[recipe]/kettles": club(),
  "GET /s/[space]/recipes/[recipe]/kettles/choice": club({}, { query: "rev=1&kettle=[equipment]" }),
  "GET /s/[space]/recipes/[recipe]/kettles/csv": club(),
  "GET /s/[space]/recipes/[recipe]/kettles/rows": club({}, { query: "rev=1" }),
  "GET /s/[space]/recipes/[recipe]/kettles/[equipment]": club(),
  // No grist reaches the strength of this recipe on this kettle; whoever may read it is told.
  "GET /s/[space]/recipes/[recipe]/kettles/[equipment]/csv": program(all(INSIDERS, 409)),
  "GET /s/[space]/recipes/[recipe]/publish": club(FOR_ORGANISERS),
  "GET /s/[space]/recipes/[recipe]/revisions/[revision]": club(),

  "GET /s/[space]/shared-brews": club(),
  "GET /s/[space]/shared-brews/new": club(FOR_ORGANISERS),
  "GET /s/[space]/shared-brews/[sharedBrew]": club(),
  "GET /s/[space]/shared-brews/[sharedBrew]/comparison": club(),
  "GET /s/[space]/shared-brews/[sharedBrew]/plan": club(FOR_ORGANISERS),
  "GET /s/[space]/shared-brews/[sharedBrew]/publish": club(FOR_ORGANISERS),
  "GET /s/[space]/shared-brews/[sharedBrew]/kettles/[equipment]": club(),
  "GET /s/[space]/shared-brews/[sharedBrew]/kettles/[equipment]/csv": program(),
  // The day of whoever brews there, who is none of these.
  "GET /s/[space]/shared-brews/[sharedBrew]/kettles/[equipment]/calendar": club(notFor(...INSIDERS)),

  "GET /s/[space]/tastings": club(),
  "GET /s/[space]/tastings/judges": club(),
  "GET /s/[space]/tastings/new": club(FOR_STEWARDS),
  "GET /s/[space]/tastings/[tasting]": club(),
  "GET /s/[space]/tastings/[tasting]/prepare": club(FOR_ITS_STEWARD),
  "GET /s/[space]/tastings/[tasting]/prepare/flights/[flight]": club(FOR_ITS_STEWARD),
  "GET /s/[space]/tastings/[tasting]/prepare/entries/[entry]": club(FOR_ITS_STEWARD),
  "GET /s/[space]/tastings/[tasting]/labels": club(FOR_ITS_STEWARD),
  "GET /s/[space]/tastings/[tasting]/paper": club(FOR_ITS_STEWARD),
  "GET /s/[space]/tastings/[tasting]/pour": club(notFor("guest", "judge", "member")),
  "GET /s/[space]/tastings/[tasting]/feedback": club(),
  "GET /s/[space]/tastings/[tasting]/results": club(),
  "GET /s/[space]/tastings/[tasting]/results/export": program(notFor(...INSIDERS), { query: "format=csv" }),
  "GET /s/[space]/tastings/[tasting]/sheets-to-print": club(FOR_ITS_STEWARD),
};
