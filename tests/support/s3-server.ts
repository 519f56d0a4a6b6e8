import { createHash, createHmac } from "node:crypto";
import { createServer, type IncomingMessage, type ServerResponse } from "node:http";
import type { AddressInfo } from "node:net";

export const S3_KEYS = { accessKeyId: "AKIAINVENTEDKEY", secretAccessKey: "an/invented+secret", region: "us-east-1" };

export interface S3Server {
  readonly endpoint: string;
  readonly objects: ReadonlyMap<string, Buffer>;
  /** Answers the next so many requests as a store does that has too much to do. */
  readonly falter: (count: number) => void;
  readonly stop: () => Promise<void>;
}

interface Signed {
  readonly method: string;
  readonly path: string;
  readonly query: URLSearchParams;
  readonly headers: Readonly<Record<string, string>>;
  readonly signedHeaders: string;
  readonly date: string;
  readonly region: string;
}

const hmac = (key: string | Buffer, text: string) => createHmac("sha256", key).update(text).digest();
const hash = (data: string | Buffer) => createHash("sha256").update(data).digest("hex");
const encoded = (text: string) =>
  encodeURIComponent(text).replaceAll(/[!'()*]/g, (c) => `%${c.charCodeAt(0).toString(16).toUpperCase()}`);

/** The signature of a request by AWS Signature Version 4, written from its description and not from our client. */
export function signatureV4(
  secret: string,
  { method, path, query, headers, signedHeaders, date, region }: Signed,
): string {
  const pairs = [...query].map(([name, value]) => `${encoded(name)}=${encoded(value)}`).sort();
  const lines = signedHeaders.split(";").map((name) => `${name}:${(headers[name] ?? "").trim()}\n`);
  const payload = headers["x-amz-content-sha256"] ?? "";
  const canonical = [method, path, pairs.join("&"), lines.join(""), signedHeaders, payload].join("\n");
  const scope = `${date.slice(0, 8)}/${region}/s3/aws4_request`;
  const key = scope.split("/").reduce<string | Buffer>((last, part) => hmac(last, part), `AWS4${secret}`);
  return hmac(key, ["AWS4-HMAC-SHA256", date, scope, hash(canonical)].join("\n")).toString("hex");
}

/** A bucket on a port of this machine that takes only what is signed with its keys, two keys a page. */
export async function serveS3(): Promise<S3Server> {
  const objects = new Map<string, Buffer>();
  let faltering = 0;
  const server = createServer((request, response) => {
    void bodyOf(request).then((body) => {
      if (faltering > 0) {
        faltering -= 1;
        response.writeHead(503).end();
      } else answer(objects, request, body, response);
    });
  });
  await new Promise<void>((listening) => server.listen(0, "127.0.0.1", listening));
  const { port } = server.address() as AddressInfo; // it listens on a port, not on a file
  return {
    endpoint: `http://127.0.0.1:${String(port)}`,
    objects,
    falter: (count) => {
      faltering = count;
    },
    stop: () => new Promise((stopped) => server.close(() => stopped())),
  };
}

function answer(objects: Map<string, Buffer>, request: IncomingMessage, body: Buffer, response: ServerResponse): void {
  const url = new URL(request.url ?? "/", "http://localhost");
  const [, bucket, ...rest] = url.pathname.split("/");
  const key = rest.join("/");
  if (!isSigned(request, url, body)) response.writeHead(403).end("<Error><Code>SignatureDoesNotMatch</Code></Error>");
  else if (bucket !== "photos") response.writeHead(404).end("<Error><Code>NoSuchBucket</Code></Error>");
  else if (request.method === "PUT") {
    objects.set(key, body);
    response.writeHead(200).end();
  } else if (request.method === "DELETE") {
    objects.delete(key);
    response.writeHead(204).end();
  } else if (key === "") response.writeHead(200).end(page(objects, url.searchParams));
  else if (objects.has(key)) response.writeHead(200).end(objects.get(key));
  else response.writeHead(404).end("<Error><Code>NoSuchKey</Code></Error>");
}

function isSigned(request: IncomingMessage, url: URL, body: Buffer): boolean {
  const told =
    /^AWS4-HMAC-SHA256 Credential=([^/]+)\/\d{8}\/([^/]+)\/s3\/aws4_request, SignedHeaders=([^,]+), Signature=(\w+)$/;
  const [, keyId, region = "", signedHeaders = "", signature] = told.exec(request.headers.authorization ?? "") ?? [];
  const headers = Object.fromEntries(Object.entries(request.headers).map(([name, value]) => [name, String(value)]));
  const payload = headers["x-amz-content-sha256"];
  if (payload !== "UNSIGNED-PAYLOAD" && payload !== hash(body)) return false;
  const date = headers["x-amz-date"] ?? "";
  const signed = { method: request.method ?? "", path: url.pathname, query: url.searchParams, headers, signedHeaders };
  return (
    keyId === S3_KEYS.accessKeyId && signature === signatureV4(S3_KEYS.secretAccessKey, { ...signed, date, region })
  );
}

function page(objects: ReadonlyMap<string, Buffer>, query: URLSearchParams): string {
  const all = [...objects.keys()].filter((key) => key.startsWith(query.get("prefix") ?? "")).sort();
  const from = Number(query.get("continuation-token") ?? "0");
  const keys = all.slice(from, from + 2).map((key) => `<Contents><Key>${key}</Key><Size>1</Size></Contents>`);
  const isMore = all.length > from + 2;
  const next = isMore ? `<NextContinuationToken>${String(from + 2)}</NextContinuationToken>` : "";
  return `<?xml version="1.0"?><ListBucketResult><IsTruncated>${String(isMore)}</IsTruncated>${next}${keys.join("")}</ListBucketResult>`;
}

async function bodyOf(request: IncomingMessage): Promise<Buffer> {
  const chunks: Buffer[] = [];
  for await (const chunk of request) chunks.push(chunk as Buffer);
  return Buffer.concat(chunks);
}
