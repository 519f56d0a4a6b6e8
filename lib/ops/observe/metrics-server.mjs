import { createServer } from "node:http";
import { monitorEventLoopDelay } from "node:perf_hooks";
import { metricsText, operations } from "./operations.mjs";

let server = null;

export const metricsServer = () => server;

/** Serves what was counted on a port of its own, which only this machine reaches; the site itself never shows it. */
export function serveMetrics(port) {
  const delay = monitorEventLoopDelay({ resolution: 20 });
  delay.enable();
  operations.gauge("process_resident_memory_bytes", () => process.memoryUsage.rss());
  operations.gauge("nodejs_heap_used_bytes", () => process.memoryUsage().heapUsed);
  operations.gauge("nodejs_eventloop_delay_p99_seconds", () => delay.percentile(99) / 1e9);
  operations.gauge("process_uptime_seconds", () => process.uptime());
  operations.gauge("gylebook_draining", () => (operations.isDraining ? 1 : 0));
  server = createServer((request, response) => {
    if (request.method !== "GET" || request.url !== "/metrics") {
      response.writeHead(404).end();
      return;
    }
    response.writeHead(200, { "content-type": "text/plain; version=0.0.4; charset=utf-8" }).end(metricsText());
  });
  server.on("error", (error) => operations.log("error", "metrics are not served", { code: error.code }));
  // It keeps no process alive that wants to end.
  server.listen(port, "127.0.0.1").unref();
}
