/** Lets a phone put the brew day on its home screen, where it is kept for longer. */
export function GET(): Response {
  const manifest = {
    name: "Gylebook brew day",
    short_name: "Brew day",
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
