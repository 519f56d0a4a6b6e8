const HEAD = (origin: string, path: string, type: string): string =>
  `curl -X POST ${origin}${path} \\\n  -H "Authorization: Bearer $KEY" \\\n  -H "Content-Type: ${type}"`;

export function jsonExample(origin: string, body: unknown): string {
  return `${HEAD(origin, "/api/v1/readings", "application/json")} \\\n  -d '${JSON.stringify(body, null, 2)}'`;
}

export function csvExample(origin: string): string {
  return `${HEAD(origin, "/api/v1/readings", "text/csv")} \\\n  --data-binary @fermentation.csv`;
}

export function readExample(origin: string): string {
  const path = "/api/v1/brews/$BREW/readings?quantity=fermenter.temperature&limit=100";
  return `curl "${origin}${path}" \\\n  -H "Authorization: Bearer $KEY"`;
}
