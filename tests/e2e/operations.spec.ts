import { spawn, type ChildProcessWithoutNullStreams } from "node:child_process";
import { randomBytes } from "node:crypto";
import { once } from "node:events";
import { createConnection, type Socket } from "node:net";
import { fileURLToPath } from "node:url";
import { freePort } from "../../lib/ops/free-port.mjs";
import { expect, test } from "./support/test";

const SERVE = fileURLToPath(new URL("../../lib/ops/serve.mjs", import.meta.url));
const DRAIN_S = 5;

interface Server {
  readonly origin: string;
  readonly port: number;
  readonly child: ChildProcessWithoutNullStreams;
  readonly printed: () => string;
}

/** A second server of the same build and database, as an operator starts it. */
async function startServer(change: Record<string, string> = {}): Promise<Server> {
  const port = await freePort();
  const origin = `http://localhost:${String(port)}`;
  const env = {
    ...process.env,
    PORT: String(port),
    APP_ORIGIN: origin,
    NEXTAUTH_URL: origin,
    NEXTAUTH_SECRET: randomBytes(32).toString("base64url"),
    GYLEBOOK_LOG: "json",
    DRAIN_SECONDS: String(DRAIN_S),
    ...change,
  };
  const child = spawn(process.execPath, [SERVE], { env });
  let printed = "";
  for (const stream of [child.stdout, child.stderr]) {
    stream.setEncoding("utf8").on("data", (text: string) => (printed += text));
  }
  return { origin, port, child, printed: () => printed };
}

/** Begins a request whose body does not end yet, and gives what it was answered so far. */
async function beginPost({
  port,
  origin,
}: Server): Promise<{ readonly socket: Socket; readonly answered: () => string }> {
  const socket = createConnection(port, "127.0.0.1");
  let answered = "";
  socket.setEncoding("utf8").on("data", (text: string) => (answered += text));
  await once(socket, "connect");
  const head = ["POST /api/auth/signout HTTP/1.1", `Host: localhost:${String(port)}`, `Origin: ${origin}`];
  const body = ["Content-Type: application/x-www-form-urlencoded", "Content-Length: 9", "X-Request-Id: slow-request-1"];
  socket.write(`${[...head, ...body].join("\r\n")}\r\n\r\njson=`);
  return { socket, answered: () => answered };
}

const readiness = ({ origin }: Server) =>
  fetch(`${origin}/api/health/ready`).then((answer): Promise<unknown> => answer.json());

test.skip(
  (process.env.DATABASE_URL ?? "") === "",
  "a second server needs the database of the first: npm test -- browser",
);

test("a server that is told to end says so, answers what is under way, and takes nothing after that", async () => {
  const server = await startServer();
  await expect.poll(server.printed, { timeout: 60_000 }).toContain('"event":"serving"');
  const { socket, answered } = await beginPost(server);
  const ended = once(server.child, "close");
  server.child.kill("SIGTERM");
  await expect.poll(() => readiness(server), { timeout: DRAIN_S * 1000 }).toEqual({ ready: false, state: "draining" });
  // From here on nobody new is taken; the one under way ends its body only then.
  await expect.poll(() => readiness(server).catch(() => "nobody"), { timeout: 30_000 }).toBe("nobody");
  expect(answered()).toBe("");
  socket.write("true");
  await expect.poll(answered).toMatch(/^HTTP\/1\.1 \d{3} /);
  await ended;
  const lines = server.printed().trimEnd().split("\n");
  for (const line of lines) expect(() => JSON.parse(line) as unknown, line).not.toThrow();
  const slow = lines
    .map((line) => JSON.parse(line) as Record<string, unknown>)
    .find((each) => each.request_id === "slow-request-1");
  expect(slow).toMatchObject({ event: "request", method: "POST", route: "/api/auth/[...nextauth]" });
});

test("a server with a secret that anybody could guess does not start", async () => {
  const server = await startServer({ NEXTAUTH_SECRET: "change-me-change-me-change-me-change-me" });
  const [code] = (await once(server.child, "close")) as [number | null];
  expect(code).not.toBe(0);
  expect(server.printed()).toContain("NEXTAUTH_SECRET is easily guessed");
});
