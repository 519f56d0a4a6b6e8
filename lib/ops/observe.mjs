/** Loaded into the server before anything else: request identifiers, limits of time, the log, metrics, and the notice that it will end. */
import { logConsole } from "./observe/console-lines.mjs";
import { metricsServer, serveMetrics } from "./observe/metrics-server.mjs";
import { install, operations } from "./observe/operations.mjs";
import { watchRequests } from "./observe/requests.mjs";
import { limitSlowRequests } from "./observe/slow-requests.mjs";

install();
limitSlowRequests();
watchRequests({ except: metricsServer });
if (process.env.GYLEBOOK_LOG === "json") logConsole();
const port = Number(process.env.METRICS_PORT || 0);
if (port > 0) serveMetrics(port);

// The command that started the server says by this pipe that it is going to end it. The pipe closes with that command,
// even if it is killed: a server left behind would hold the port.
process.stdin.on("data", () => {
  operations.isDraining = true;
});
process.stdin.once("end", () => process.kill(process.pid, "SIGTERM"));
process.stdin.resume().unref();
