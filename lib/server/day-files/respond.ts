import "server-only";
import { dayFile, dayFiles, dayWorker, type KeptPage } from "./read";

interface Shell {
  readonly page: KeptPage;
  readonly heading: string;
  /** Said where scripts do not run. */
  readonly withoutScripts: string;
  /** Behind the page in the address: the club, and the brew or tasting. */
  readonly at: readonly string[] | undefined;
  /** Under which address the script asks for it. */
  readonly api: string;
}

/** What a shell's route is called with. */
export interface ShellContext {
  readonly params: Promise<{ readonly at?: string[] }>;
}

/**
 * A page that devices keep to start without a network: the same for everybody, without any data. Its script reads from the
 * address what it is about, and asks for that as the person who is signed in.
 */
export async function shellResponse({ page, heading, withoutScripts, at, api }: Shell): Promise<Response> {
  const { script, style } = await dayFiles(page);
  const html = `<!doctype html>
<html lang="en-GB" data-theme="auto">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1, viewport-fit=cover">
<meta name="color-scheme" content="light dark">
<title>${heading} · Gylebook</title>
<link rel="icon" href="/icon.svg" type="image/svg+xml">
<link rel="manifest" href="/${page}/manifest.json">
<link rel="stylesheet" href="${style}">
<script type="module" src="${script}"></script>
</head>
<body class="flex min-h-dvh flex-col">
<a href="#content" class="skip-link">Skip to the content</a>
<div id="day" class="flex-1"><main id="content" class="page" tabindex="-1"><h1>${heading}</h1><p>Starting…</p>
<noscript><p>${withoutScripts}</p></noscript>
</main></div>
</body>
</html>
`;
  return new Response(html, {
    headers: { "content-type": "text/html; charset=utf-8", "cache-control": "no-cache", ...early(api, at) },
  });
}

/** Lets a browser that comes over a slow network ask for the data while the script is still on its way. */
function early(api: string, at: readonly string[] | undefined): { readonly link?: string } {
  if (at?.length !== 2) return {};
  const path = [api, ...at.map((part) => encodeURIComponent(decodedOnce(part)))].join("/");
  return { link: `<${path}>; rel=preload; as=fetch; crossorigin` };
}

/** The framework hands parts of an address on as they were sent. */
function decodedOnce(part: string): string {
  try {
    return decodeURIComponent(part);
  } catch {
    return part;
  }
}

/** A built file. Its name says what is in it, so it never changes. */
export async function fileResponse(page: KeptPage, name: string): Promise<Response> {
  const built = await dayFile(page, name);
  if (built === null) return new Response("Not found", { status: 404, headers: { "cache-control": "no-store" } });
  return new Response(new Uint8Array(built.content), {
    headers: { "content-type": built.type, "cache-control": "public, max-age=31536000, immutable" },
  });
}

/** The worker that keeps a page. A browser looks for a newer one at each visit. */
export async function workerResponse(page: KeptPage): Promise<Response> {
  return new Response(new Uint8Array(await dayWorker(page)), {
    headers: { "content-type": "text/javascript; charset=utf-8", "cache-control": "no-cache" },
  });
}

/** Lets a phone put a page on its home screen, where it is kept for longer. */
export function manifestResponse({ name, shortName }: { readonly name: string; readonly shortName: string }): Response {
  const manifest = {
    name,
    short_name: shortName,
    start_url: "/",
    scope: "/",
    display: "standalone",
    background_color: "#faf8f2",
    theme_color: "#faf8f2",
    icons: [{ src: "/icon.svg", sizes: "any", type: "image/svg+xml" }],
  };
  return Response.json(manifest, {
    headers: { "content-type": "application/manifest+json", "cache-control": "no-cache" },
  });
}
