import { spawn, type ChildProcessWithoutNullStreams } from "node:child_process";
import { once } from "node:events";
import { createConnection } from "node:net";
import { fileURLToPath } from "node:url";
import { afterAll, beforeAll, describe, expect, it, vi } from "vitest";
import { z } from "zod";
import { freePort } from "../../../lib/ops/free-port.mjs";

const inRoot = (path: string) => fileURLToPath(new URL(`../../../${path}`, import.meta.url));
const line = z.looseObject({
  port: z.number().optional(),
  event: z.string().optional(),
  request_id: z.string().optional(),
});

let child: ChildProcessWithoutNullStreams;
let printed = "";
let address: string;
let metrics: string;

const lines = () => printed.split("\n").flatMap((text) => (text === "" ? [] : [line.parse(JSON.parse(text))]));
const linesOf = (id: string | null) => lines().filter((entry) => entry.request_id === id);

beforeAll(async () => {
  const metricsPort = await freePort();
  metrics = `http://127.0.0.1:${metricsPort}/metrics`;
  const args = ["--import", inRoot("lib/ops/observe.mjs"), inRoot("tests/support/observed-server.mjs")];
  child = spawn(process.execPath, args, {
    env: { ...process.env, GYLEBOOK_LOG: "json", METRICS_PORT: String(metricsPort) },
  });
  for (const stream of [child.stdout, child.stderr]) {
    stream.setEncoding("utf8").on("data", (text: string) => (printed += text));
  }
  await vi.waitFor(() => expect(lines()[0]?.port).toBeTypeOf("number"), { timeout: 20_000 });
  address = `http://127.0.0.1:${String(lines()[0]?.port)}`;
});

afterAll(async () => {
  if (child.exitCode === null && child.signalCode === null) {
    child.kill("SIGKILL");
    await once(child, "close");
  }
});

/** Asks, and waits until the log has told of it. */
async function ask(path: string, headers: Record<string, string> = {}) {
  const answer = await fetch(`${address}${path}`, { headers });
  const text = await answer.text();
  const id = answer.headers.get("x-request-id");
  await vi.waitFor(() => expect(linesOf(id).some(({ event }) => event === "request")).toBe(true));
  return { text, id, told: linesOf(id) };
}

describe("an observed server", () => {
  it("gives each request an identifier that the answer, the work and the log share", async () => {
    const [first, second] = [await ask("/"), await ask("/wait")];
    expect(first.text).toBe(first.id);
    expect(second.text).toBe(second.id);
    expect(first.id).not.toBe(second.id);
    expect(second.told).toMatchObject([{ event: "request", method: "GET", route: "(none)", status: 200 }]);
    expect(second.told[0]).toMatchObject({ ts: expect.stringMatching(/^\d{4}-\d\d-\d\dT[\d:.]+Z$/) as string });
  });

  it("takes over the identifier of a proxy, unless it is more than one", async () => {
    expect((await ask("/", { "x-request-id": "from-the-edge-0001" })).id).toBe("from-the-edge-0001");
    expect((await ask("/", { "x-request-id": "short id; and more" })).id).toMatch(/^[\w-]{36}$/);
  });

  it("keeps what is about people out of the log: queries, paths, addresses, tokens, messages of the database", async () => {
    await ask("/private/nora-nearly-gone?email=lena@example.org&token=c2VjcmV0", {
      cookie: "session=s3cr3t-reference",
    });
    await ask("/said");
    await ask("/database");
    for (const canary of ["lena", "nora", "c2VjcmV0", "s3cr3t", "a1B2a1B2", "emailNorm"]) {
      expect(printed, canary).not.toContain(canary);
    }
    expect(printed).toContain("[address]");
    expect(printed).toContain("[secret]");
    expect(printed).toContain('"code":"P2002"');
  });

  it("writes one line for one event, also where a text has a line break", async () => {
    const { told } = await ask("/said");
    expect(told.map(({ event }) => event)).toEqual(["console", "failed", "request"]);
    expect(lines().some((entry) => entry.level === "forged")).toBe(false);
  });

  it("counts requests by route and status, in the text format of Prometheus, where only this machine asks", async () => {
    await ask("/wait");
    const answer = await fetch(metrics);
    expect(answer.headers.get("content-type")).toBe("text/plain; version=0.0.4; charset=utf-8");
    const text = await answer.text();
    expect(text).toMatch(/^gylebook_http_requests_total\{method="GET",route="\(none\)",status="200"\} [1-9]\d*$/m);
    expect(text).toMatch(/^gylebook_http_request_duration_seconds_bucket\{route="\(none\)",le="\+Inf"\} [1-9]\d*$/m);
    expect(text).toMatch(/^gylebook_http_requests_in_flight 0$/m);
    expect(text).toMatch(/^process_resident_memory_bytes \d+$/m);
    for (const each of text.trimEnd().split("\n")) expect(each).toMatch(/^(# TYPE \w+ \w+|\w+(\{.*\})? [\d.e+-]+)$/);
    expect((await fetch(metrics.replace("/metrics", "/"))).status).toBe(404);
  });

  it("says that a request got no answer, when its reader went before", async () => {
    const { port } = new URL(address);
    const socket = createConnection(Number(port), "127.0.0.1");
    await once(socket, "connect");
    socket.write("POST /never HTTP/1.1\r\nHost: x\r\nContent-Length: 5\r\nX-Request-Id: gone-before-1\r\n\r\n");
    await once(socket, "data");
    socket.destroy();
    await vi.waitFor(() => expect(linesOf("gone-before-1")).toMatchObject([{ event: "request", method: "POST" }]));
  });

  it("knows that it is going to end, when the command that started it says so, and ends with that command", async () => {
    expect((await ask("/draining")).text).toBe("false");
    child.stdin.write("drain\n");
    await vi.waitFor(async () => expect((await ask("/draining")).text).toBe("true"));
    child.stdin.end();
    const [, signal] = (await once(child, "close")) as [number | null, string | null];
    expect(signal).toBe("SIGTERM");
  });
});
