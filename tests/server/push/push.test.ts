import { randomUUID } from "node:crypto";
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { pushSubscriptionInput } from "@/lib/model/push/push-input";
import { directory } from "@/lib/server/db";
import { requirePushEndpoint } from "@/lib/server/push/endpoint";
import { pushKeys } from "@/lib/server/push/keys";
import { isPublicAddress, lookupPublic } from "@/lib/server/push/public-address";
import { sendPush } from "@/lib/server/push/send";
import { subscribe, unsubscribe } from "@/lib/server/push/subscriptions";
import { newViewer } from "../../support/club";
import { newBrowserKeys, openPush, openVapid, servePush, type PushService } from "../../support/push-service";

let service: PushService;
beforeEach(async () => {
  vi.stubEnv("PUSH_LOCAL", "on");
  service = await servePush();
});
afterEach(async () => {
  vi.unstubAllEnvs();
  await service.stop();
});

const PAYLOAD = { title: "Millrace", body: "Hops: “Weir” 40 g", url: "/brew-day/hollowmere/1", tag: "hops-1" };
const targetOf = (path = "/one") => ({ endpoint: `${service.origin}${path}`, ...newBrowserKeys() });

describe("the reader of the tests", () => {
  it("opens the message of RFC 8291, section 5", () => {
    const keys = {
      privateKey: Buffer.from("q1dXpw3UpT5VOmu_cf_v6ih07Aems3njxI-JWgLcM94", "base64url"),
      p256dh: Buffer.from(
        "BCVxsr7N_eNgVRqvHtD0zTZsEc6-VV-JvLexhqUzORcxaOzi6-AYWXvTBHm4bjyPjs7Vd8pZGH6SRpkNtoIAiw4",
        "base64url",
      ),
      auth: Buffer.from("BTBZMqHH6r4Tts7J_aSIgg", "base64url"),
    };
    const body = Buffer.from(
      "DGv6ra1nlYgDCS1FRnbzlwAAEABBBP4z9KsN6nGRTbVYI_c7VJSPQTBtkgcy27mlmlMoZIIgDll6e3vCYLocInmYWAmS6TlzAC8wEqKK6PBru3jl7A_yl95bQpu6cVPTpK4Mqgkf1CXztLVBSt2Ks3oZwbuwXPXLWyouBWLVWGNWQexSgSxsj_Qulcy4a-fN",
      "base64url",
    );
    expect(openPush(keys, body)).toBe("When I grow up, I want to be a watermelon");
  });
});

describe("a message for a browser", () => {
  it("is sealed for it alone, and says who sends it", async () => {
    const target = targetOf();
    const keys = await pushKeys();
    expect(await sendPush(target, PAYLOAD, keys)).toBe("sent");
    const [got] = service.received;
    const body = got?.body ?? Buffer.alloc(0);
    expect(JSON.parse(openPush(target, body))).toEqual(PAYLOAD);
    expect(() => openPush(newBrowserKeys(), body)).toThrow();
    expect(body.toString("latin1")).not.toContain("Millrace");
    expect(got?.headers).toMatchObject({ "content-encoding": "aes128gcm", ttl: "600", urgency: "high" });
    const { claims, publicKey } = openVapid(got?.headers.authorization ?? "");
    expect(publicKey).toBe(keys.publicKey);
    expect(claims.aud).toBe(service.origin);
    const inSeconds = claims.exp - Date.now() / 1000;
    // RFC 8292, section 2: not more than 24 hours from the time of the request.
    expect(inSeconds).toBeGreaterThan(60);
    expect(inSeconds).toBeLessThanOrEqual(86_400);
    expect(claims.sub).toMatch(/^(?:mailto:|https:)/);
  });

  it.each([
    [201, "sent"],
    [404, "gone"],
    [410, "gone"],
    [400, "refused"],
    [413, "refused"],
    [307, "refused"],
    [429, "later"],
    [503, "later"],
  ])("that is answered with %i is %s", async (status, outcome) => {
    service.answer(status);
    expect(await sendPush(targetOf(), PAYLOAD, await pushKeys())).toBe(outcome);
    expect(service.received).toHaveLength(1);
  });

  it("is for another try where nobody answers", async () => {
    const target = targetOf();
    await service.stop();
    expect(await sendPush(target, PAYLOAD, await pushKeys())).toBe("later");
    service = await servePush();
  });
});

describe("the key of this server", () => {
  it("is made once, also by two processes at one moment, and may be set instead", async () => {
    const all = await Promise.all(Array.from({ length: 5 }, () => pushKeys()));
    expect(new Set(all.map(({ publicKey }) => publicKey)).size).toBe(1);
    expect(await directory.pushKey.count()).toBe(1);
    vi.stubEnv("VAPID_PUBLIC_KEY", "B".repeat(87));
    await expect(pushKeys()).rejects.toThrow("VAPID_PRIVATE_KEY must be set where VAPID_PUBLIC_KEY is");
    vi.stubEnv("VAPID_PRIVATE_KEY", "c".repeat(43));
    expect(await pushKeys()).toEqual({ publicKey: "B".repeat(87), privateKey: "c".repeat(43) });
  });
});

describe("a subscription", () => {
  const inputOf = (endpoint: string) => {
    const { p256dh, auth } = newBrowserKeys();
    const keys = { p256dh: p256dh.toString("base64url"), auth: auth.toString("base64url") };
    return pushSubscriptionInput.parse({ endpoint, expirationTime: null, keys });
  };
  const countOf = (userId: string) => directory.pushSubscription.count({ where: { userId } });

  it("is one for each browser, goes to whoever used it last, and ends when asked", async () => {
    const [first, second] = [await newViewer("First"), await newViewer("Second")];
    const input = inputOf(`${service.origin}/${randomUUID()}`);
    await subscribe(first, input);
    await subscribe(first, input);
    expect(await countOf(first.userId)).toBe(1);
    await subscribe(second, input);
    expect([await countOf(first.userId), await countOf(second.userId)]).toEqual([0, 1]);
    await unsubscribe(first, input.endpoint);
    expect(await countOf(second.userId)).toBe(1);
    await unsubscribe(second, input.endpoint);
    await unsubscribe(second, input.endpoint);
    expect(await countOf(second.userId)).toBe(0);
  });

  it("is one of ten for a person; the oldest gives way", async () => {
    const viewer = await newViewer("Many browsers");
    const inputs = Array.from({ length: 12 }, (_, n) => inputOf(`${service.origin}/${String(n)}/${randomUUID()}`));
    for (const input of inputs) await subscribe(viewer, input);
    const kept = await directory.pushSubscription.findMany({ where: { userId: viewer.userId } });
    expect(kept.map(({ endpoint }) => endpoint).sort()).toEqual(
      inputs
        .slice(2)
        .map(({ endpoint }) => endpoint)
        .sort(),
    );
  });

  it.each([
    [{ endpoint: "not an address" }, "Endpoint is not an address"],
    [{ keys: { p256dh: "AAAA", auth: "A".repeat(22) } }, "Key p256dh is not 65 bytes in base64url"],
    [{ keys: { p256dh: "A".repeat(87), auth: "<>" } }, "Key auth is not 16 bytes in base64url"],
  ])("is refused: %j", (change, message) => {
    const keys = { p256dh: "A".repeat(87), auth: "A".repeat(22) };
    const parsed = pushSubscriptionInput.safeParse({ endpoint: "https://push.example/1", keys, ...change });
    expect(parsed.error?.issues[0]?.message).toBe(message);
  });
});

describe("an endpoint", () => {
  beforeEach(() => vi.stubEnv("PUSH_LOCAL", ""));

  it.each([
    "http://push.example/1",
    "https://push.example:8443/1",
    "https://user@push.example/1",
    "https://127.0.0.1/1",
    "https://2130706433/1",
    "https://0x7f.1/1",
    "https://[::1]/1",
    "https://[::ffff:10.0.0.1]/1",
    "https://localhost/1",
    "https://database/1",
    "https://metadata.internal./1",
    "file:///etc/passwd",
  ])("is refused in production: %s", (endpoint) => {
    expect(() => requirePushEndpoint(endpoint)).toThrow("Endpoint: it takes an https:// address of a push service");
  });

  it("is taken by its name", () => {
    expect(requirePushEndpoint("https://updates.push.example/wpush/v2/abc").hostname).toBe("updates.push.example");
  });

  it.each([
    ...["0.0.0.0", "10.1.2.3", "100.64.0.1", "127.0.0.1", "169.254.169.254", "172.16.0.1", "172.31.255.255"],
    ...["192.0.2.1", "192.168.1.1", "198.18.0.1", "198.51.100.7", "203.0.113.9", "224.0.0.1", "255.255.255.255"],
    ...["::", "::1", "::ffff:127.0.0.1", "64:ff9b::a00:1", "100::1", "fc00::1", "fd12::1", "fe80::1", "ff02::1"],
    ...["2001:db8::1", "2002:7f00:1::", "2001:0:1::1", "no address"],
  ])("leads nowhere when its name means %s", (address) => {
    expect(isPublicAddress(address)).toBe(false);
  });

  it.each(["1.1.1.1", "172.32.0.1", "100.128.0.1", "2606:4700::1111", "2a00:1450::200e"])("may be at %s", (address) => {
    expect(isPublicAddress(address)).toBe(true);
  });

  it("is not connected to where its name leads into this machine, whatever was said before", async () => {
    const found = await new Promise<Error | null>((answered) => {
      lookupPublic("localhost", {}, (error) => answered(error));
    });
    expect(found?.message).toBe("the address of the push service is not public");
  });
});
