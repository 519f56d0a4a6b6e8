import { randomUUID } from "node:crypto";
import { BLANK_SHEET } from "@/lib/model/tasting/sheet";
import { inSpace } from "@/lib/server/db";
import type { Member } from "@/lib/server/session";
import { ask } from "./ask";
import type { Setting, Verdict, Writer } from "./writer";

interface Delivering {
  readonly kind: string;
  readonly path: string;
  readonly member: Member;
  readonly reference: string;
  /** An event with this identifier that says this text. */
  readonly eventOf: (id: string, text: string) => object;
  readonly stored: (
    member: Member,
  ) => Promise<readonly { readonly id: string; readonly text: string; readonly count: number }[]>;
}

/** Sends the same event until it is acknowledged, as a phone does. */
function delivering(setting: Setting, a: Delivering): Writer {
  const acknowledged = new Map<string, string>();
  let waiting: { readonly id: string; readonly text: string; readonly event: object } | null = null;
  // The same in every byte each time it is sent: another event under the same identifier is refused.
  const made = () => {
    const [id, text] = [randomUUID(), `said ${randomUUID()}`];
    return { id, text, event: a.eventOf(id, text) };
  };
  const send = async (): Promise<boolean> => {
    waiting ??= made();
    const { id, text, event } = waiting;
    const sentAt = new Date().toISOString();
    const delivery = { space: setting.slug, user: a.member.userId, sentAt, roundTripMs: 20, unsteady: [] };
    const reply = await ask(setting.origin, {
      path: a.path,
      method: "POST",
      headers: { "content-type": "application/json", origin: setting.origin, ...setting.cookieOf(a.reference) },
      body: JSON.stringify({ ...delivery, events: [event] }),
    });
    const isKept = reply?.status === 200 && new RegExp(`"(stored|duplicate)":\\["${id}"`).test(reply.text);
    if (!isKept) return false;
    acknowledged.set(id, text);
    waiting = null;
    return true;
  };
  return {
    kind: a.kind,
    write: send,
    drain: async () => waiting === null || send(),
    judge: async (): Promise<Verdict> => {
      const rows = new Map((await a.stored(a.member)).map((row) => [row.id, row]));
      return {
        acknowledged: acknowledged.size,
        lost: [...acknowledged].filter(([id, text]) => rows.get(id)?.text !== text).length,
        doubled: [...rows.values()].filter(({ count }) => count > 1).length,
        halfWritten: 0,
      };
    },
  };
}

const stamp = (id: string): object => ({
  id,
  deviceId: randomUUID(),
  deviceSeq: 1,
  occurredAt: new Date().toISOString(),
});

/** Readings of a brew day. */
export function readingWriter(
  setting: Setting,
  a: { readonly member: Member; readonly reference: string; readonly brewId: string },
): Writer {
  const said = { kind: "temperature", quantity: "kettle.temperature", value: 66, sd: 0.5, instrument: "thermometer" };
  return delivering(setting, {
    ...{ ...a, kind: "reading", path: "/api/log/ingest" },
    eventOf: (id, note) => ({ ...stamp(id), brewId: a.brewId, ...said, sampleC: null, note, entered: "", step: null }),
    stored: ({ spaceId, userId }) =>
      inSpace(
        spaceId,
        userId,
        (tx) => tx.$queryRaw<{ id: string; text: string; count: number }[]>`
          SELECT id::text, min(payload ->> 'note') AS text, count(*)::int AS count FROM brew_event
          WHERE space_id = ${spaceId}::uuid AND brew_id = ${a.brewId}::uuid GROUP BY id`,
      ),
  });
}

/** Score sheets of a judge. */
export function sheetWriter(
  setting: Setting,
  a: { readonly member: Member; readonly reference: string; readonly tastingId: string; readonly entryNo: number },
): Writer {
  const of = { tastingId: a.tastingId, flightNo: 1, entryNo: a.entryNo, kind: "sheet", isFinal: false };
  return delivering(setting, {
    ...{ ...a, kind: "score sheet", path: "/api/tastings/ingest" },
    eventOf: (id, aroma) => ({
      ...{ ...stamp(id), ...of },
      payload: { ...BLANK_SHEET, notes: { ...BLANK_SHEET.notes, aroma } },
    }),
    stored: ({ spaceId, userId }) =>
      inSpace(
        spaceId,
        userId,
        (tx) => tx.$queryRaw<{ id: string; text: string; count: number }[]>`
          SELECT id::text, min(payload -> 'notes' ->> 'aroma') AS text, count(*)::int AS count FROM tasting_event
          WHERE space_id = ${spaceId}::uuid AND judge_id = ${userId}::uuid GROUP BY id`,
      ),
  });
}
