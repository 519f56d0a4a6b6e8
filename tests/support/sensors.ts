import { randomUUID } from "node:crypto";
import { makeSensorKey } from "@/lib/server/sensors/tokens";
import { proveSensor, type Member } from "@/lib/server/session";
import type { SensorSender } from "@/lib/server/proof";

/** A key of a member; for one brew where one is named. */
export async function newKey(member: Member, brewId: string | null = null, days = 30): Promise<string> {
  return (await makeSensorKey(member, { name: "Invented probe", brewId, days })).token;
}

export async function newSender(member: Member, brewId: string | null = null): Promise<SensorSender> {
  const sender = await proveSensor(await newKey(member, brewId));
  if (sender === null) throw new Error("the test's own set-up failed");
  return sender;
}

/** A reading as a probe sends it, a minute after the one before. */
export const sentReading = (brew: string, minute = 0, change: object = {}) => ({
  ...{ brew, at: new Date(Date.parse("2026-03-14T10:00:00Z") + minute * 60_000).toISOString() },
  ...{ quantity: "fermenter.temperature", value: 19.5, unit: "°C", ...change },
});

/** A request of a program that knows nothing of pages. */
export function sentBy(token: string | null, body: unknown, headers: Readonly<Record<string, string>> = {}): Request {
  const authorization: Readonly<Record<string, string>> = token === null ? {} : { authorization: `Bearer ${token}` };
  return new Request("http://localhost:3000/api/v1/readings", {
    method: "POST",
    headers: { "content-type": "application/json", "x-forwarded-for": randomUUID(), ...authorization, ...headers },
    body: typeof body === "string" ? body : JSON.stringify(body),
  });
}
