import "fake-indexeddb/auto";
import { describe, expect, it } from "vitest";
import { sheetStanding, type JudgeSheet } from "@/lib/model/tasting/judge-sheet";
import { BLANK_SHEET, type Sheet } from "@/lib/model/tasting/sheet";
import type { TastingEvent } from "@/lib/model/tasting/sheet-event";
import type { Delivery } from "@/lib/model/log/delivery";
import type { DeliveryAnswer } from "@/lib/model/log/delivery-answer";
import { DEFAULT_PREFERENCES } from "@/lib/model/preferences";
import { openTastingDatabase } from "@/lib/day/store/tasting-database";
import { JudgingSession } from "@/lib/day/sync/judging-session";

const TASTING = "00000000-0000-7000-8000-000000000700";

function sheetFor(userId: string): JudgeSheet {
  return {
    space: { slug: "club", name: "Club" },
    me: { id: userId, name: userId },
    preferences: DEFAULT_PREFERENCES,
    tasting: { id: TASTING, title: "Autumn tasting", state: "open" },
    flights: [{ flightNo: 1, title: "Ales", kind: "scored", entries: [{ entryNo: 417, style: null }], glasses: [] }],
    entries: [],
    readAt: "2027-03-14T15:00:00.000Z",
  };
}

interface Network {
  isThere: boolean;
  readonly received: TastingEvent[];
  readonly senders: Set<string>;
}

/** A judge's page on one device; each call is the page loaded anew. */
async function openPage(device: string, network: Network, userId = "judge"): Promise<JudgingSession> {
  const session = new JudgingSession({
    database: await openTastingDatabase(device),
    clock: { now: () => Date.now(), steady: () => performance.now(), page: crypto.randomUUID() },
    space: "club",
    tastingId: TASTING,
    post: (delivery: Delivery) => {
      if (!network.isThere) return Promise.reject(new TypeError("no network"));
      const events = delivery.events as TastingEvent[];
      network.received.push(...events);
      network.senders.add(delivery.user);
      const answer: DeliveryAnswer = {
        stored: events.map(({ id }) => id),
        duplicate: [],
        rejected: [],
        receivedAt: new Date().toISOString(),
      };
      return Promise.resolve({ status: 200, body: answer });
    },
    fetchSheet: () =>
      Promise.resolve(network.isThere ? { kind: "sheet", sheet: sheetFor(userId) } : { kind: "unreachable" }),
    announce: () => undefined,
    alone: (work) => work(),
  });
  await session.reread();
  await session.refresh();
  return session;
}

const withPoints = (aroma: number): Sheet => ({ ...BLANK_SHEET, scores: { ...BLANK_SHEET.scores, aroma } });
const write = (session: JudgingSession, payload: Sheet): Promise<void> =>
  session.write(1, { kind: "sheet", entryNo: 417, isFinal: false, payload });

describe("a judge’s device", () => {
  it("opens from a cold start without a network, with all that was written before, and sends it once", async () => {
    const network: Network = { isThere: true, received: [], senders: new Set() };
    await openPage("cold", network);
    network.isThere = false;
    const first = await openPage("cold", network);
    await write(first, withPoints(7));
    await write(first, withPoints(9));
    const again = await openPage("cold", network);
    expect(again.snapshot().sheet?.tasting.title).toBe("Autumn tasting");
    expect(sheetStanding(again.snapshot().entries, 417).payload).toEqual(withPoints(9));
    expect(again.snapshot().waiting).toHaveLength(2);
    expect(again.snapshot().connection).toBe("unreachable");

    network.isThere = true;
    await again.send();
    await again.send();
    expect(network.received.map(({ deviceSeq }) => deviceSeq)).toEqual([1, 2]);
    expect(again.snapshot().waiting).toEqual([]);
    // The server's sheet does not hold it yet, and it is on the screen all the same.
    expect(sheetStanding(again.snapshot().entries, 417).payload).toEqual(withPoints(9));
  });

  it("shows and sends nothing of another judge who used it before", async () => {
    const network: Network = { isThere: true, received: [], senders: new Set() };
    await openPage("lent", network, "one");
    network.isThere = false;
    await write(await openPage("lent", network, "one"), withPoints(11));
    network.isThere = true;
    const other = await openPage("lent", network, "two");
    await other.send();
    expect(sheetStanding(other.snapshot().entries, 417).payload).toBeNull();
    expect(network.senders).not.toContain("two");
  });
});
