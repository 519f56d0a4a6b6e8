import { notFound } from "next/navigation";
import { describe, expect, it } from "vitest";
import { z } from "zod";
import { litres } from "@/lib/calc/units";
import { measured } from "@/lib/model/measured";
import { answer } from "@/lib/server/action";
import { apiRoute } from "@/lib/server/api-route";
import { AppError } from "@/lib/server/app-error";
import { environment } from "@/lib/server/environment";
import { isSameOrigin } from "@/lib/server/same-origin";

const OWN = environment.appOrigin ?? "http://localhost:3000";
const own = () => new Headers({ origin: OWN, host: new URL(OWN).host, "sec-fetch-site": "same-origin" });
const schema = z.strictObject({ volume: measured("Kettle volume", litres, { min: 0.5, max: 2000 }) });
const echo = (input: { readonly volume: number }) => Promise.resolve(input.volume);

describe("isSameOrigin", () => {
  const host = "gyle.example";
  const origin = "https://gyle.example";

  it.each([
    ["our own page", { origin, host, fetchSite: "same-origin" }, true],
    ["an older browser without Sec-Fetch-Site", { origin, host, fetchSite: null }, true],
    ["no Origin at all", { origin: null, host, fetchSite: null }, false],
    ["the origin of a sandboxed frame", { origin: "null", host, fetchSite: null }, false],
    ["another site", { origin: "https://evil.example", host, fetchSite: "cross-site" }, false],
    [
      "another site with a forged Host",
      { origin: "https://evil.example", host: "evil.example", fetchSite: null },
      false,
    ],
    ["a subdomain", { origin: "https://a.gyle.example", host, fetchSite: "same-site" }, false],
    ["plain http of the same host", { origin: "http://gyle.example", host, fetchSite: null }, false],
    ["our Origin with a contradicting Sec-Fetch-Site", { origin, host, fetchSite: "cross-site" }, false],
  ])("judges %s", (_what, request, allowed) => {
    expect(isSameOrigin(request, origin)).toBe(allowed);
  });

  it("falls back on the request's own host where no origin is configured", () => {
    expect(isSameOrigin({ origin: "http://gyle.example", host, fetchSite: null }, null)).toBe(true);
    expect(isSameOrigin({ origin: "http://evil.example", host, fetchSite: null }, null)).toBe(false);
  });
});

describe("an action", () => {
  it("gives the data of good input, from a form as from an object", async () => {
    const form = new FormData();
    form.set("volume", "25");
    form.set("$ACTION_ID_1", "");
    for (const input of [form, { volume: 25 }]) {
      expect(await answer(schema, echo, { headers: own(), input })).toEqual({ status: "ok", data: 25 });
    }
  });

  it("gives the message of each wrong field, with field, value and range", async () => {
    expect(await answer(schema, echo, { headers: own(), input: { volume: 0 } })).toEqual({
      status: "invalid",
      fieldErrors: { volume: "Kettle volume 0 L is outside 0.5 to 2000 L" },
    });
  });

  it("refuses fields that it does not know and input that is no form", async () => {
    for (const input of [{ volume: 25, isOrganiser: true }, null, "volume", [25]]) {
      expect(await answer(schema, echo, { headers: own(), input })).toMatchObject({ status: "invalid" });
    }
  });

  it("runs nothing for a request from elsewhere", async () => {
    let ran = false;
    const run = () => Promise.resolve((ran = true));
    for (const headers of [new Headers(), new Headers({ origin: "https://evil.example" })]) {
      expect(await answer(schema, run, { headers, input: { volume: 25 } })).toEqual({
        status: "refused",
        message: "This request did not come from a page of this service.",
      });
    }
    expect(ran).toBe(false);
  });

  it("passes refusals on in words and lets a bug through", async () => {
    const request = { headers: own(), input: { volume: 25 } };
    const refuse = () => Promise.reject(new AppError("FORBIDDEN", "Only an organiser does this."));
    expect(await answer(schema, refuse, request)).toEqual({
      status: "refused",
      message: "Only an organiser does this.",
    });
    const bug = () => Promise.reject(new TypeError("a bug"));
    await expect(answer(schema, bug, request)).rejects.toThrow("a bug");
  });
});

describe("a route handler", () => {
  const post = (headers: HeadersInit) => new Request(`${OWN}/api/x`, { method: "POST", headers });

  it.each([
    ["UNAUTHENTICATED", 401],
    ["FORBIDDEN", 403],
    ["NOT_FOUND", 404],
    ["CONFLICT", 409],
    ["INVALID", 400],
  ] as const)("answers %s with %i", async (code, status) => {
    const handler = apiRoute(() => Promise.reject(new AppError(code, "in words")));
    const response = await handler(post(own()), undefined);
    expect(response.status).toBe(status);
    expect(await response.json()).toEqual({ message: "in words" });
  });

  it("answers what is not there in a way that nobody keeps", async () => {
    const handler = apiRoute((): Promise<Response> => notFound());
    const response = await handler(post(own()), undefined);
    expect(response.status).toBe(404);
    expect(response.headers.get("cache-control")).toBe("no-store");
  });

  it("answers a malformed request with its fields", async () => {
    const handler = apiRoute((): Promise<Response> =>
      Promise.reject(schema.safeParse({ volume: 0 }).error ?? new Error()),
    );
    const response = await handler(post(own()), undefined);
    expect(response.status).toBe(400);
    expect(await response.json()).toMatchObject({ fieldErrors: { volume: expect.any(String) as string } });
  });

  it("runs no changing request from elsewhere, and any reading one", async () => {
    const handler = apiRoute((request: Request) => Promise.resolve(new Response(request.method)));
    expect((await handler(post({ origin: "https://evil.example" }), undefined)).status).toBe(403);
    expect((await handler(post({}), undefined)).status).toBe(403);
    expect((await handler(new Request(`${OWN}/api/x`), undefined)).status).toBe(200);
  });
});
