import { dayFiles } from "@/lib/server/day-files/read";

/**
 * The page of every brew day: the same for everybody, without any data. The script reads from the address which brew it
 * is, and asks for it as the person who is signed in; a device keeps this page to start without a network.
 */
export async function GET(): Promise<Response> {
  const { script, style } = await dayFiles();
  const html = `<!doctype html>
<html lang="en-GB" data-theme="auto">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1, viewport-fit=cover">
<meta name="color-scheme" content="light dark">
<title>Brew day · Gylebook</title>
<link rel="icon" href="/icon.svg" type="image/svg+xml">
<link rel="manifest" href="/brew-day/manifest.json">
<link rel="stylesheet" href="${style}">
<script type="module" src="${script}"></script>
</head>
<body class="flex min-h-dvh flex-col">
<a href="#content" class="skip-link">Skip to the content</a>
<div id="day" class="flex-1"><main id="content" class="page" tabindex="-1"><h1>Brew day</h1><p>Starting…</p>
<noscript><p>The brew day needs scripts. The printed run sheet works without: open the brew in your club and print it.</p></noscript>
</main></div>
</body>
</html>
`;
  return new Response(html, {
    headers: { "content-type": "text/html; charset=utf-8", "cache-control": "no-cache" },
  });
}
