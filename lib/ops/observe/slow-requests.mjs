import http from "node:http";
import { syncBuiltinESMExports } from "node:module";

/** The largest file of a club comes within this time over a phone. */
const REQUEST_S = 300;
/** A browser sends its header at once; whoever takes longer holds a connection for its own sake. */
const HEADERS_S = 15;
const LOOKED_AT_MS = 1000;

/**
 * Cuts off whoever sends a request so slowly that it would only keep a connection busy. The framework makes its server
 * without a setting for this, so that Node's own way of making one gets these for its defaults.
 */
export function limitSlowRequests() {
  const requestTimeout = 1000 * Number(process.env.REQUEST_SECONDS || REQUEST_S);
  const headersTimeout = Math.min(requestTimeout, 1000 * Number(process.env.HEADERS_SECONDS || HEADERS_S));
  const limits = { requestTimeout, headersTimeout, connectionsCheckingInterval: LOOKED_AT_MS };
  const { createServer } = http;
  http.createServer = (first, second) =>
    typeof first === "function" ? createServer(limits, first) : createServer({ ...limits, ...first }, second);
  syncBuiltinESMExports();
}
