import { createDecipheriv, createECDH, createHmac, createPublicKey, randomBytes, verify } from "node:crypto";
import { createServer, type IncomingHttpHeaders } from "node:http";
import type { AddressInfo } from "node:net";
import { text } from "node:stream/consumers";

/** The keys of a browser for one subscription. */
export interface BrowserKeys {
  readonly privateKey: Buffer;
  readonly p256dh: Buffer;
  readonly auth: Buffer;
}

export function newBrowserKeys(): BrowserKeys {
  const curve = createECDH("prime256v1");
  const p256dh = curve.generateKeys();
  return { privateKey: curve.getPrivateKey(), p256dh, auth: randomBytes(16) };
}

const hmac = (key: Buffer, ...parts: readonly (Buffer | string)[]) => {
  const sum = createHmac("sha256", key);
  for (const part of parts) sum.update(part);
  return sum.digest();
};
// One block of HKDF is enough for everything here: 32 bytes at most.
const expand = (key: Buffer, info: readonly (Buffer | string)[], length: number) =>
  hmac(key, ...info, Buffer.from([1])).subarray(0, length);

/** Opens a message as a browser does: RFC 8291, with the content coding of RFC 8188. */
export function openPush({ privateKey, p256dh, auth }: BrowserKeys, body: Buffer): string {
  const [salt, idLength] = [body.subarray(0, 16), body.readUInt8(20)];
  const sender = body.subarray(21, 21 + idLength);
  const sealed = body.subarray(21 + idLength);
  const curve = createECDH("prime256v1");
  curve.setPrivateKey(privateKey);
  const shared = hmac(auth, curve.computeSecret(sender));
  const material = expand(shared, ["WebPush: info\0", p256dh, sender], 32);
  const pseudorandom = hmac(salt, material);
  const key = expand(pseudorandom, ["Content-Encoding: aes128gcm\0"], 16);
  const nonce = expand(pseudorandom, ["Content-Encoding: nonce\0"], 12);
  const open = createDecipheriv("aes-128-gcm", key, nonce);
  open.setAuthTag(sealed.subarray(-16));
  const padded = Buffer.concat([open.update(sealed.subarray(0, -16)), open.final()]);
  // The last record ends with 2, and zeros behind it.
  return padded.subarray(0, padded.lastIndexOf(2)).toString("utf8");
}

export interface Claims {
  readonly aud: string;
  readonly exp: number;
  readonly sub: string;
}

/** What the sender says of itself, where its signature is right: RFC 8292. */
export function openVapid(authorization: string): { readonly claims: Claims; readonly publicKey: string } {
  const [, token = "", publicKey = ""] = /^vapid t=([^,]+), ?k=(.+)$/.exec(authorization) ?? [];
  const [head = "", body = "", signature = ""] = token.split(".");
  const point = Buffer.from(publicKey, "base64url");
  const [x, y] = [point.subarray(1, 33), point.subarray(33)].map((part) => part.toString("base64url"));
  const key = createPublicKey({ format: "jwk", key: { kty: "EC", crv: "P-256", x: x ?? "", y: y ?? "" } });
  const signed = { key, dsaEncoding: "ieee-p1363" as const };
  if (!verify("sha256", Buffer.from(`${head}.${body}`), signed, Buffer.from(signature, "base64url"))) {
    throw new Error("the signature is wrong");
  }
  return { claims: JSON.parse(Buffer.from(body, "base64url").toString()) as Claims, publicKey };
}

interface Received {
  readonly path: string;
  readonly headers: IncomingHttpHeaders;
  readonly body: Buffer;
}

export interface PushService {
  readonly origin: string;
  readonly received: readonly Received[];
  /** What it answers from now on; a path of its own may be answered otherwise. */
  readonly answer: (status: number, path?: string) => void;
  readonly stop: () => Promise<void>;
}

/** A push service on a port of this machine, which keeps what it is sent. */
export async function servePush(): Promise<PushService> {
  const received: Received[] = [];
  const statuses = new Map<string, number>();
  const server = createServer((request, response) => {
    request.setEncoding("latin1");
    void text(request).then((body) => {
      const path = request.url ?? "";
      received.push({ path, headers: request.headers, body: Buffer.from(body, "latin1") });
      response.writeHead(statuses.get(path) ?? statuses.get("") ?? 201, { location: "http://127.0.0.1:1/" }).end();
    });
  });
  await new Promise<void>((listening) => server.listen(0, "127.0.0.1", listening));
  const { port } = server.address() as AddressInfo; // it listens on a port, not on a file
  return {
    origin: `http://127.0.0.1:${String(port)}`,
    received,
    answer: (status, path = "") => statuses.set(path, status),
    stop: () => new Promise((stopped) => server.close(() => stopped())),
  };
}
