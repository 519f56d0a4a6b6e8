import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { canonicalJson } from "@/lib/server/canonical-json";
import { canonicalEvent } from "@/lib/server/log/canonical-event";
import { partsOf } from "@/lib/server/log/shared-columns";
import { INSTRUMENTS } from "@/lib/model/reading";
import { logEventInput } from "@/lib/model/log/log-event-input";

describe("partsOf", () => {
  const value = fc.oneof(fc.constantFrom("a", "b"), fc.integer({ min: 0, max: 1 }), fc.constant(null));
  const object = fc.dictionary(fc.constantFrom("note", "step", "sd", "entered"), value);
  const read = (text: string): Record<string, unknown> => JSON.parse(text) as Record<string, unknown>;

  it("loses nothing of any object", () => {
    const back = (objects: readonly Record<string, unknown>[]): readonly unknown[] => {
      const { shared, each } = partsOf(objects);
      return each.map((own) => ({ ...read(shared), ...read(own) }));
    };
    fc.assert(
      fc.property(fc.array(object, { minLength: 1, maxLength: 4 }), (objects) => {
        expect(back(objects)).toEqual(objects);
      }),
      { numRuns: 2000 },
    );
  });

  it("writes what all say once", () => {
    const { shared, each } = partsOf([
      { sd: 0.5, entered: "18 °C" },
      { sd: 0.5, entered: "19 °C" },
    ]);
    expect(shared).toBe('{"sd":0.5}');
    expect(each).toEqual(['{"entered":"18 °C"}', '{"entered":"19 °C"}']);
  });
});

describe("canonicalEvent", () => {
  const stamp = { id: fc.uuid(), brewId: fc.uuid(), deviceId: fc.uuid() };
  const time = fc
    .date({ min: new Date("2001-01-01"), max: new Date("2030-01-01"), noInvalidDate: true })
    .map((at) => at.toISOString());
  const measured = fc.record({
    ...stamp,
    deviceSeq: fc.oneof(fc.constant(null), fc.integer({ min: 1, max: 1e6 })),
    occurredAt: time,
    kind: fc.constant("temperature"),
    quantity: fc.constantFrom("kettle.temperature", "fermenter.temperature"),
    value: fc.double({ min: 0, max: 100, noNaN: true }),
    sd: fc.double({ min: 0, max: 5, noNaN: true }),
    instrument: fc.constantFrom(...INSTRUMENTS),
    sampleC: fc.oneof(fc.constant(null), fc.double({ min: 0, max: 100, noNaN: true })),
    note: fc.string({ maxLength: 20 }),
    entered: fc.constantFrom("18 °C", "64.4 °F"),
    step: fc.oneof(fc.constant(null), fc.constant("rest-1")),
  });

  it("is the canonical JSON of every event that the border lets through", () => {
    let seen = 0;
    fc.assert(
      fc.property(measured, fc.uuid(), (said, actorId) => {
        const { success, data } = logEventInput.safeParse(said);
        if (!success) return;
        seen += 1;
        expect(canonicalEvent(data, actorId)).toBe(canonicalJson({ ...data, actorId }));
      }),
      { numRuns: 1000 },
    );
    expect(seen).toBeGreaterThan(500);
  });

  it("is so for what is not measured too", () => {
    const event = { id: "i", brewId: "b", deviceId: "d", deviceSeq: 1, occurredAt: "2026-05-02T10:15:00.000Z" };
    const note = { ...event, kind: "note", text: "stirred", step: null } as const;
    expect(canonicalEvent(note, "a")).toBe(
      '{"actorId":"a","brewId":"b","deviceId":"d","deviceSeq":1,"id":"i","kind":"note",' +
        '"occurredAt":"2026-05-02T10:15:00.000Z","step":null,"text":"stirred"}',
    );
  });
});
