import { randomUUID } from "node:crypto";
import { subscribe } from "node:diagnostics_channel";
import { operations } from "./operations.mjs";
import { routeFinder } from "./routes.mjs";

const REQUEST_ID = /^[\w-]{8,64}$/;

/**
 * Gives each request an identifier, which its answer and everything that is logged about it carry, and notes how it
 * ended. Node tells of every request by itself, so that nothing of the framework is replaced.
 */
export function watchRequests({ except }) {
  const routeOf = routeFinder();
  let inFlight = 0;
  operations.gauge("gylebook_http_requests_in_flight", () => inFlight);
  subscribe("http.server.request.start", ({ request, response, server }) => {
    if (server === except()) return;
    const begun = process.hrtime.bigint();
    const given = request.headers["x-request-id"];
    // A proxy may have made one already; anything that looks otherwise is not repeated.
    const id = typeof given === "string" && REQUEST_ID.test(given) ? given : randomUUID();
    request.headers["x-request-id"] = id;
    response.setHeader("x-request-id", id);
    operations.request.enterWith({ id });
    inFlight += 1;
    response.once("close", () => {
      inFlight -= 1;
      note({ request, response, route: routeOf(request.url ?? ""), begun, id });
    });
  });
}

function note({ request, response, route, begun, id }) {
  const seconds = Number(process.hrtime.bigint() - begun) / 1e9;
  const method = /^[A-Z]{1,10}$/.test(request.method ?? "") ? request.method : "OTHER";
  // Whoever went before the answer was whole got none.
  const status = response.writableFinished ? response.statusCode : 499;
  operations.count("gylebook_http_requests_total", { method, route, status });
  operations.observe("gylebook_http_request_duration_seconds", { route }, seconds);
  operations.log("info", "request", { request_id: id, method, route, status, ms: Math.round(seconds * 1000) });
}
