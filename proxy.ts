import { NextResponse, type NextRequest } from "next/server";
import { environment } from "@/lib/server/environment";
import { isWithdrawn } from "@/lib/server/publications/withdrawn";
import { withdrawnPage } from "@/lib/server/publications/withdrawn-page";
import { isSameOrigin, originOf } from "@/lib/server/same-origin";

/**
 * Turns away what would change something from another site's page, gives each request a content policy with a nonce of
 * its own, and tells pages their address. Who may see what is decided where the data are read, not here; only that
 * something is gone is said here, because no page can answer 410.
 */
export async function proxy(request: NextRequest): Promise<NextResponse> {
  // Actions and handlers ask the same again; left to itself, the framework answers some of these with an error of its own.
  const changes = request.method !== "GET" && request.method !== "HEAD";
  if (changes && !isSameOrigin(originOf(request.headers), environment.appOrigin)) {
    const message = "This request did not come from a page of this service.";
    return NextResponse.json({ message }, { status: 403, headers: { "cache-control": "no-store" } });
  }
  const nonce = btoa(crypto.randomUUID());
  const policy = isKept(request.nextUrl.pathname) ? KEPT_POLICY : contentPolicy(nonce);
  const response = (await leadsToWithdrawn(request.nextUrl.pathname)) ? gone(nonce) : next(request, policy);
  response.headers.set("content-security-policy", policy);
  response.headers.set("referrer-policy", "same-origin");
  response.headers.set("x-content-type-options", "nosniff");
  return response;
}

function next(request: NextRequest, policy: string): NextResponse {
  const headers = new Headers(request.headers);
  headers.set("x-gylebook-path", `${request.nextUrl.pathname}${request.nextUrl.search}`);
  headers.set("content-security-policy", policy);
  return NextResponse.next({ request: { headers } });
}

function gone(nonce: string): NextResponse {
  return new NextResponse(withdrawnPage(nonce), {
    status: 410,
    headers: { "content-type": "text/html; charset=utf-8", "cache-control": "no-store", "x-robots-tag": "noindex" },
  });
}

const PUBLISHED = /^\/p\/(?:results\/)?([a-z0-9-]{8,80})(?:\/|$)/;

/** A public address, or the picture that goes with it. */
async function leadsToWithdrawn(pathname: string): Promise<boolean> {
  const [, address] = PUBLISHED.exec(pathname) ?? [];
  return address !== undefined && isWithdrawn(address);
}

const isKept = (pathname: string): boolean => /^\/(?:brew-day|judging)(?:\/|$)/.test(pathname);

/**
 * The pages of brew days and of judging are kept on devices, where a nonce of their own would be an old one. They need
 * none: all of their script and style are files.
 */
const KEPT_POLICY = [
  "default-src 'self'",
  "script-src 'self'",
  "style-src 'self'",
  "img-src 'self' data: blob:",
  "connect-src 'self'",
  "worker-src 'self'",
  "manifest-src 'self'",
  "object-src 'none'",
  "base-uri 'none'",
  "form-action 'self'",
  "frame-ancestors 'none'",
].join("; ");

function contentPolicy(nonce: string): string {
  // The development server compiles with eval and injects styles; the built app does neither.
  const isDevelopment = process.env.NODE_ENV === "development";
  return [
    "default-src 'self'",
    `script-src 'self' 'nonce-${nonce}' 'strict-dynamic'${isDevelopment ? " 'unsafe-eval'" : ""}`,
    `style-src 'self'${isDevelopment ? " 'unsafe-inline'" : ` 'nonce-${nonce}'`}`,
    "img-src 'self' data:",
    "font-src 'self'",
    "connect-src 'self'",
    // The workers that compute the table of all kettles come from here, as every script.
    "worker-src 'self'",
    "object-src 'none'",
    "base-uri 'none'",
    "form-action 'self'",
    "frame-ancestors 'none'",
  ].join("; ");
}

export const config = {
  // What comes here has its body kept in memory first, up to 10 MB, and cut off there. Routes that take large bodies, or
  // that machines post to, see to their own limits, origins and headers; `apiRoute` and `tokenRoute` do not do without.
  matcher: [
    {
      source:
        "/((?!_next/static|favicon.ico|api/v1/|api/brew-day/[^/]+/[^/]+/photos|s/[^/]+/club-file/(?:look|take)$).*)",
    },
  ],
};
