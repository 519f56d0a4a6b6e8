import "server-only";
import { resolve } from "node:path";
import { z } from "zod";

const databaseUrl = z.url({ protocol: /^postgres(ql)?$/, error: "must be an address that begins with postgresql://" });
const origin = z.url({ protocol: /^https?$/, error: "must be an address such as https://brewing.example" });
const smtp = z.url({ protocol: /^smtps?$/, error: "must be an address that begins with smtp:// or smtps://" });
// One mailbox, with a name or without: "Brewing circle <brewing@club.example>". A line break would begin another header.
const mailbox = z
  .string({ error: "must be set where SMTP_URL is" })
  .max(200)
  .regex(/^(?:[^<>@\r\n]{1,80} <[^<>@\s]+@[^<>@\s]+>|[^<>@\s]+@[^<>@\s]+)$/, "must be one e-mail address");
const s3Settings = z.object({
  endpoint: z.url({ protocol: /^https?$/, error: "S3_ENDPOINT must be an address that begins with https://" }),
  bucket: z
    .string({ error: "S3_BUCKET must be set where S3_ENDPOINT is" })
    .regex(/^[a-z0-9][a-z0-9.-]{1,61}[a-z0-9]$/, "S3_BUCKET must be the name of a bucket"),
  region: z.string().regex(/^[a-z0-9-]{1,40}$/, "S3_REGION must be a name such as us-east-1"),
  accessKeyId: z.string({ error: "S3_ACCESS_KEY_ID must be set where S3_ENDPOINT is" }).min(1).max(200),
  secretAccessKey: z.string({ error: "S3_SECRET_ACCESS_KEY must be set where S3_ENDPOINT is" }).min(1).max(200),
});
const publicKey = z.string().regex(/^[\w-]{87}$/, "must be a VAPID key, 65 bytes in base64url");
const privateKey = z
  .string({ error: "must be set where VAPID_PUBLIC_KEY is" })
  .regex(/^[\w-]{43}$/, "must be a VAPID key, 32 bytes in base64url");
const subject = z.string().regex(/^(?:https:\/\/|mailto:)\S+$/, "must begin with https:// or mailto:");
const secret = z.string({ error: "must be set" }).min(32, "must have at least 32 characters");

/**
 * The settings, each read when it is asked for: a build has none and needs none, and a command needs no secret.
 */
export const environment = {
  get databaseUrl(): string {
    return read("DATABASE_URL", databaseUrl);
  },

  /**
   * The same database past a pooler in transaction mode, for what such a one cannot do; null where there is none, and the
   * address above is the database's own.
   */
  get databaseDirectUrl(): string | null {
    return read("DATABASE_DIRECT_URL", databaseUrl.optional()) ?? null;
  },

  /** A hot standby that some pages may be read from. */
  get databaseReplicaUrl(): string | null {
    return read("DATABASE_REPLICA_URL", databaseUrl.optional()) ?? null;
  },

  /** Further servers that hold the content of some spaces, by their number: DATABASE_URL_1 and so on. */
  get furtherDatabases(): ReadonlyMap<number, string> {
    const names = Object.keys(process.env).filter((name) => /^DATABASE_URL_[1-9]\d?$/.test(name) && given(name));
    return new Map(names.map((name) => [Number(name.slice("DATABASE_URL_".length)), read(name, databaseUrl)]));
  },

  /** The one origin that pages are served from; null on a development server, which takes the request's own. */
  get appOrigin(): string | null {
    const address = read("APP_ORIGIN", origin.optional()) ?? read("NEXTAUTH_URL", origin.optional());
    return address === undefined ? null : new URL(address).origin;
  },

  get authSecret(): string {
    return read("NEXTAUTH_SECRET", secret);
  },

  /** How mail leaves; null where it is not set up, and notices then stay on the site. */
  get mail(): { readonly smtpUrl: string; readonly from: string } | null {
    const smtpUrl = read("SMTP_URL", smtp.optional());
    return smtpUrl === undefined ? null : { smtpUrl, from: read("MAIL_FROM", mailbox) };
  },

  /** The key for push services; null where none is set, and one is made and kept in the database. */
  get pushKeys(): { readonly publicKey: string; readonly privateKey: string } | null {
    const key = read("VAPID_PUBLIC_KEY", publicKey.optional());
    return key === undefined ? null : { publicKey: key, privateKey: read("VAPID_PRIVATE_KEY", privateKey) };
  },

  /** Whom a push service may write to about what this server sends. */
  get pushSubject(): string {
    const { appOrigin } = this;
    const own = appOrigin?.startsWith("https:") === true ? appOrigin : "mailto:nobody@gylebook.invalid";
    return read("VAPID_SUBJECT", subject.optional()) ?? own;
  },

  /** Whether push services may be on this machine, as in tests. */
  get isPushLocal(): boolean {
    return given("PUSH_LOCAL") === "on";
  },

  /** Where the bytes of photos are: in a bucket, or in a folder of this machine where none is set up. */
  get blobs():
    ({ readonly kind: "s3" } & z.output<typeof s3Settings>) | { readonly kind: "disk"; readonly folder: string } {
    const endpoint = given("S3_ENDPOINT");
    if (endpoint === undefined) return { kind: "disk", folder: resolve(given("BLOB_FOLDER") ?? ".data/blobs") };
    const settings = s3Settings.safeParse({
      endpoint,
      bucket: given("S3_BUCKET"),
      region: given("S3_REGION") ?? "us-east-1",
      accessKeyId: given("S3_ACCESS_KEY_ID"),
      secretAccessKey: given("S3_SECRET_ACCESS_KEY"),
    });
    if (settings.success) return { kind: "s3", ...settings.data };
    throw new Error(`${settings.error.issues.map((issue) => issue.message).join(" and ")}.`);
  },
};

function given(name: string): string | undefined {
  // An empty variable is one that is not set.
  return process.env[name] === "" ? undefined : process.env[name];
}

function read<T>(name: string, schema: z.ZodType<T>): T {
  const parsed = schema.safeParse(given(name));
  if (parsed.success) return parsed.data;
  throw new Error(`${name} ${parsed.error.issues.map((issue) => issue.message).join(" and ")}.`);
}
