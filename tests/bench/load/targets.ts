import { randomUUID } from "node:crypto";
import { BLANK_SHEET } from "@/lib/model/tasting/sheet";
import { sessionCookie } from "@/lib/server/auth";
import { readActions } from "./actions";
import type { Answered, Asked } from "./http";
import type { Reader, Subject } from "./subject";

/** A page or a write that is measured. */
export interface Target {
  readonly name: string;
  readonly isWrite: boolean;
  /** A request that was never made before. */
  readonly next: () => Asked;
  readonly isDone: (answered: Answered) => boolean;
}

/** The pages that a club opens most, and what it writes most. */
export async function targetsOf(subject: Subject, origin: string): Promise<readonly Target[]> {
  return [...pages(subject), ...(await writes(subject, origin))];
}

function signedIn({ reference }: Reader): Readonly<Record<string, string>> {
  return { cookie: `${sessionCookie()}=${reference}` };
}

function pages({ slug, organiser, recipe, brew, sharedBrew, published }: Subject): readonly Target[] {
  const paths: Readonly<Record<string, string>> = {
    "start, signed in": "/",
    "home of the club": `/s/${slug}`,
    recipes: `/s/${slug}/recipes`,
    recipe: `/s/${slug}/recipes/${recipe}`,
    "recipe on every kettle": `/s/${slug}/recipes/${recipe}/kettles`,
    brews: `/s/${slug}/brews`,
    "brew with its log": `/s/${slug}/brews/${brew}`,
    "shared brew": `/s/${slug}/shared-brews/${sharedBrew}`,
    "search for a word": `/s/${slug}/search?q=porter`,
    "published recipe": `/p/${published}`,
  };
  return Object.entries(paths).map(([name, path]) => ({
    name,
    isWrite: false,
    next: () => ({ path, headers: signedIn(organiser) }),
    isDone: ({ status, body }) => status === 200 && body.includes("</html>"),
  }));
}

async function writes(subject: Subject, origin: string): Promise<readonly Target[]> {
  const { slug, organiser, judge, brew, content } = subject;
  const actionOf = await readActions();
  const act = (path: string, asked: Omit<Asked, "path">): Asked => ({
    ...asked,
    path,
    headers: { ...asked.headers, ...signedIn(organiser), origin, host: new URL(origin).host },
  });
  const recipe = (): unknown => {
    const title = `Written under load ${randomUUID()}`;
    return { space: slug, draftId: randomUUID(), title, content, message: "First revision" };
  };
  return [
    {
      name: "write: reading of a brew",
      isWrite: true,
      next: () => delivered("/api/log/ingest", { slug, origin, by: organiser, event: reading(brew) }),
      isDone: isStored,
    },
    {
      name: "write: score sheet",
      isWrite: true,
      next: () => delivered("/api/tastings/ingest", { slug, origin, by: judge, event: sheet(subject) }),
      isDone: isStored,
    },
    {
      name: "write: new recipe, and its page",
      isWrite: true,
      next: () =>
        act(`/s/${slug}/recipes/new`, actionOf("app/s/[space]/recipes/new/actions.ts", "createRecipeAction", recipe())),
      isDone: ({ redirect }) => redirect?.includes("/recipes/") ?? false,
    },
  ];
}

const isStored = ({ status, body }: Answered): boolean => status === 200 && /"stored":\["/.test(body);

function delivered(
  path: string,
  a: { readonly slug: string; readonly origin: string; readonly by: Reader; readonly event: object },
): Asked {
  const sentAt = new Date().toISOString();
  const delivery = { space: a.slug, user: a.by.userId, sentAt, roundTripMs: 20, unsteady: [], events: [a.event] };
  const headers = { "content-type": "application/json", origin: a.origin, ...signedIn(a.by) };
  return { path, method: "POST", headers, body: JSON.stringify(delivery) };
}

function stamp(): object {
  return { id: randomUUID(), deviceId: randomUUID(), deviceSeq: 1, occurredAt: new Date().toISOString() };
}

function reading(brewId: string): object {
  const said = { kind: "temperature", quantity: "kettle.temperature", value: 66.5, sd: 0.5, instrument: "thermometer" };
  return { ...stamp(), brewId, ...said, sampleC: null, note: "", entered: "66.5 °C", step: null };
}

function sheet({ tasting, flight, entry }: Subject): object {
  const of = { tastingId: tasting, flightNo: flight, entryNo: entry };
  return { ...stamp(), ...of, kind: "sheet", isFinal: false, payload: BLANK_SHEET };
}
