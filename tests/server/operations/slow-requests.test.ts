import { spawn, type ChildProcess } from "node:child_process";
import { once } from "node:events";
import { createConnection, type Socket } from "node:net";
import { createInterface } from "node:readline";
import { fileURLToPath } from "node:url";
import { afterAll, beforeAll, describe, expect, it } from "vitest";

const inRoot = (path: string) => fileURLToPath(new URL(`../../../${path}`, import.meta.url));

let child: ChildProcess;
let port: number;

beforeAll(async () => {
  const args = ["--import", inRoot("lib/ops/observe.mjs"), inRoot("tests/support/observed-server.mjs")];
  const server = spawn(process.execPath, args, {
    env: { ...process.env, HEADERS_SECONDS: "1", REQUEST_SECONDS: "2" },
  });
  child = server;
  const [line] = (await once(createInterface(server.stdout), "line")) as [string];
  port = (JSON.parse(line) as { readonly port: number }).port;
});

afterAll(async () => {
  child.kill("SIGKILL");
  await once(child, "close");
});

/** Sends the beginning at once and the rest a letter at a time, until the server hangs up; says what it told. */
async function drip(beginning: string, letter: string): Promise<string> {
  const socket: Socket = createConnection({ host: "127.0.0.1", port });
  let told = "";
  socket.setEncoding("utf8").on("data", (text: string) => (told += text));
  // It may still be writing when the other side has gone.
  socket.on("error", () => undefined);
  socket.write(beginning);
  const dripping = setInterval(() => socket.write(letter), 100);
  await once(socket, "close");
  clearInterval(dripping);
  return told;
}

describe("a server", () => {
  it("answers whoever is done in time", async () => {
    expect((await fetch(`http://127.0.0.1:${String(port)}/`)).status).toBe(200);
  });

  it("hangs up on a header that comes a letter at a time", async () => {
    expect(await drip("GET / HTTP/1.1\r\nHost: localhost\r\nX-Slow: ", "a")).toMatch(/^HTTP\/1\.1 408 /);
  });

  it("hangs up on a body that comes a letter at a time", async () => {
    const head = "POST /never-read HTTP/1.1\r\nHost: localhost\r\nContent-Length: 100000\r\n\r\n";
    // What needs no body is answered before it has come; the connection is cut off all the same.
    expect(await drip(head, "a")).toMatch(/^HTTP\/1\.1 (?:404|408) /);
  });
});
