import "server-only";

/**
 * What stands at an address whose text was withdrawn. No page of the framework can answer 410, so this one is written
 * out and needs nothing else: no script, no other file, and the style under the nonce of its answer.
 */
export function withdrawnPage(nonce: string): string {
  return `<!doctype html>
<html lang="en-GB">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="robots" content="noindex, nofollow">
<title>Withdrawn · Gylebook</title>
<style nonce="${nonce}">
:root { color-scheme: light dark; }
body {
  max-width: 40rem;
  margin: 3rem auto;
  padding: 0 1rem;
  background: light-dark(#faf8f2, #161512);
  color: light-dark(#1f1d1a, #ebe6da);
  font: 1rem / 1.6 system-ui, -apple-system, "Segoe UI", Roboto, "Liberation Sans", sans-serif;
}
h1 { font-family: Palatino, "Liberation Serif", Georgia, serif; line-height: 1.2; }
a { display: inline-block; padding: 0.75rem 0; color: inherit; }
</style>
</head>
<body>
<main>
<h1>Withdrawn</h1>
<p>A club had published something at this address, and has taken it back. Gylebook keeps no copy of what was withdrawn.</p>
<p><a href="/">To the front page</a></p>
</main>
</body>
</html>
`;
}
