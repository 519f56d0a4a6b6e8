/** A server of a few answers, to be loaded together with lib/ops/observe.mjs; it says its port when it listens. */
import { createServer } from "node:http";
import { once } from "node:events";

const { gylebookOperations: operations } = globalThis;

const ANSWERS = {
  "/": (response) => response.end(operations.request.getStore().id),
  "/draining": (response) => response.end(String(operations.isDraining)),
  "/said": (response) => {
    console.error('not sent to lena@example.org\n{"level":"forged"}', new Error("no mailbox lena@example.org"));
    operations.log("error", "failed", operations.factsOf(new Error(`token ${"a1B2".repeat(11)} is over`)));
    response.end();
  },
  "/database": (response) => {
    const error = Object.assign(new Error("Invalid invocation { emailNorm: 'lena@example.org' }"), { code: "P2002" });
    error.name = "PrismaClientKnownRequestError";
    operations.log("error", "failed", operations.factsOf(error));
    response.end();
  },
  "/wait": (response) => void Promise.resolve().then(() => response.end(operations.request.getStore().id)),
};

const server = createServer((request, response) => {
  const [path] = request.url.split("?");
  (ANSWERS[path] ?? ((other) => other.writeHead(404).end()))(response);
});
server.listen(0, "127.0.0.1");
await once(server, "listening");
process.stdout.write(`${JSON.stringify({ port: server.address().port })}\n`);
