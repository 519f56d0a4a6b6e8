import type { Asked } from "./plain-request";

interface Bypass {
  readonly name: string;
  readonly change: (request: Asked) => Asked;
}

const withHeaders = (name: string, headers: Readonly<Record<string, string>>): Bypass => ({
  name,
  change: (request) => ({ ...request, headers }),
});

const withPath = (name: string, rewrite: (path: string) => string, headers: Asked["headers"] = {}): Bypass => ({
  name,
  change: (request) => ({ ...request, path: rewrite(request.path), headers }),
});

const MIDDLEWARE = "middleware:middleware:middleware:middleware:middleware";
const withoutQuery = (path: string): string => path.split("?")[0] ?? path;

/**
 * Ways by which requests once went past what a framework puts before its pages: headers that it uses among its own parts, and
 * other spellings of an address. Each is tried on every page that is somebody's own.
 */
export const BYPASSES: readonly Bypass[] = [
  withHeaders("x-middleware-subrequest of a middleware", { "x-middleware-subrequest": MIDDLEWARE }),
  withHeaders("x-middleware-subrequest of a source folder", {
    "x-middleware-subrequest": MIDDLEWARE.replaceAll("middleware", "src/middleware"),
  }),
  withHeaders("x-middleware-subrequest of a proxy", {
    "x-middleware-subrequest": MIDDLEWARE.replaceAll("middleware", "proxy"),
  }),
  withHeaders("x-middleware-next", { "x-middleware-next": "1" }),
  withHeaders("x-middleware-rewrite", { "x-middleware-rewrite": "/s/hollowmere" }),
  withHeaders("x-invoke-*", { "x-invoke-path": "/", "x-invoke-status": "200", "x-invoke-output": "/s/[space]" }),
  withHeaders("x-matched-path", { "x-matched-path": "/s/hollowmere", "x-now-route-matches": "1=hollowmere" }),
  withHeaders("x-nextjs-data", { "x-nextjs-data": "1" }),
  withHeaders("x-original-url", { "x-original-url": "/", "x-rewrite-url": "/" }),
  withHeaders("RSC", { rsc: "1" }),
  withHeaders("RSC, prefetched", { rsc: "1", "next-router-prefetch": "1" }),
  withHeaders("RSC, a segment of it", {
    ...{ rsc: "1", "next-router-prefetch": "1" },
    "next-router-segment-prefetch": "/_tree",
  }),
  withHeaders("a path told by the client", { "x-gylebook-path": "/", "x-forwarded-uri": "/" }),
  withPath("the data of a page", (path) => `${withoutQuery(path)}.rsc`, { rsc: "1" }),
  withPath("the data of a segment", (path) => `${withoutQuery(path)}.segments/_tree.segment.rsc`, { rsc: "1" }),
  withPath("an encoded letter", (path) => path.replace("/s/", "/%73/")),
  withPath("two slashes", (path) => `/${path}`),
  withPath("a dot between", (path) => path.replace("/s/", "/./s/./")),
  withPath("capitals", (path) => path.toUpperCase()),
  withPath("a slash at the end", (path) => `${withoutQuery(path)}/`),
];
