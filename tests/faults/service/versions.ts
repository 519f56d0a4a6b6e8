import { randomUUID } from "node:crypto";
import { z } from "zod";
import { DEFAULT_PREFERENCES } from "@/lib/model/preferences";
import { keptDraft } from "@/lib/model/recipe-draft";
import { directory, inSpace } from "@/lib/server/db";
import type { Member } from "@/lib/server/session";
import { tokenHash } from "@/lib/server/tokens";
import { ask, parsed, returned } from "./ask";
import type { Setting, Verdict, Writer } from "./writer";

interface Holder {
  readonly member: Member;
  readonly reference: string;
}

/** An own version of one thing that goes up by one with each write. */
interface Held {
  readonly version: number;
  readonly text: string;
}

const outcome = z.union([
  z.object({ ok: z.literal(true), lockVersion: z.number() }),
  z.object({ ok: z.literal(false), newer: z.object({ lockVersion: z.number() }) }),
]);

/** One draft, kept again and again as its page does. */
export function draftWriter(setting: Setting, a: Holder): Writer {
  const id = randomUUID();
  const rows = { steps: [], mashGrist: [], kettleGrist: [], boilHops: [], standHops: [], dryHops: [] };
  const of = { kettle: "", writer: randomUUID(), note: "", preferences: DEFAULT_PREFERENCES };
  const kept = keptDraft.parse({ fields: {}, rows, ...of });
  let version = 0;
  let last: Held | null = null;
  let count = 0;
  return {
    kind: "draft",
    write: async () => {
      const title = `Tried ${randomUUID()}`;
      const change = { space: setting.slug, id, baseRev: null, lockVersion: version, title, kept };
      const asked = setting.actionOf("app/s/[space]/recipes/draft-actions.ts", "saveDraftAction", change);
      const headers = { ...asked.headers, ...setting.cookieOf(a.reference), origin: setting.origin };
      const path = `/s/${setting.slug}/recipes/new`;
      const answer = outcome.safeParse(returned(await ask(setting.origin, { ...asked, path, headers }))?.data);
      if (!answer.success) return false;
      version = answer.data.ok ? answer.data.lockVersion : answer.data.newer.lockVersion;
      if (!answer.data.ok) return false;
      last = { version, text: title };
      count += 1;
      return true;
    },
    judge: async (): Promise<Verdict> => {
      const { spaceId, userId } = a.member;
      const drafts = await inSpace(spaceId, userId, (tx) =>
        tx.recipeDraft.findMany({ where: { spaceId, userId, id } }),
      );
      const [row] = drafts.map(({ lockVersion, title }) => ({ version: lockVersion, text: title }));
      return {
        acknowledged: count,
        lost: isHeld(last, row) ? 0 : 1,
        doubled: Math.max(0, drafts.length - 1),
        halfWritten: 0,
      };
    },
  };
}

/** What was acknowledged last is there, or something later that never was. */
function isHeld(last: Held | null, there: Held | undefined): boolean {
  if (last === null) return true;
  if (there === undefined || there.version < last.version) return false;
  return there.version > last.version || there.text === last.text;
}

/** Signs in by the form of next-auth; whoever got a cookie has a session. */
export function signInWriter(setting: Setting, a: { readonly email: string; readonly password: string }): Writer {
  const references: string[] = [];
  return {
    kind: "sign-in",
    write: async () => {
      const csrf = await ask(setting.origin, { path: "/api/auth/csrf" });
      const token = z.object({ csrfToken: z.string() }).safeParse(csrf?.status === 200 ? parsed(csrf.text) : null);
      if (csrf === null || !token.success) return false;
      const cookie = csrf.headers.getSetCookie().map((each) => each.split(";")[0] ?? "");
      const body = new URLSearchParams({
        ...token.data,
        email: a.email,
        password: a.password,
        json: "true",
      }).toString();
      const type = { "content-type": "application/x-www-form-urlencoded" };
      const headers = { ...type, origin: setting.origin, cookie: cookie.join("; ") };
      const reply = await ask(setting.origin, {
        path: "/api/auth/callback/credentials",
        method: "POST",
        headers,
        body,
      });
      const [, reference] = /gylebook-session=([^;]+)/.exec(reply?.headers.getSetCookie().join("\n") ?? "") ?? [];
      if (reference === undefined || reference === "") return false;
      references.push(reference);
      return true;
    },
    judge: async (): Promise<Verdict> => {
      const found = await Promise.all(
        references.map((reference) =>
          directory.authSession.count({ where: { tokenHash: tokenHash(decodeURIComponent(reference)) } }),
        ),
      );
      const lost = found.filter((count) => count === 0).length;
      return {
        acknowledged: references.length,
        lost,
        doubled: found.filter((count) => count > 1).length,
        halfWritten: 0,
      };
    },
  };
}
