import { createHash, randomUUID } from "node:crypto";
import { mkdtemp, readdir, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, afterEach, beforeAll, describe, expect, it, vi } from "vitest";
import type { Blobs } from "@/lib/server/blobs/blobs";
import { localDiskBlobs } from "@/lib/server/blobs/local-disk";
import { blobsOf } from "@/lib/server/blobs/open-blobs";
import { s3Blobs } from "@/lib/server/blobs/s3";
import { environment } from "@/lib/server/environment";
import { S3_KEYS, serveS3, signatureV4, type S3Server } from "../../support/s3-server";

let folder: string;
let server: S3Server;
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), "gylebook-blobs-"));
  server = await serveS3();
});
afterAll(async () => {
  await server.stop();
  await rm(folder, { recursive: true });
});
afterEach(() => vi.unstubAllEnvs());

const settings = () => ({ endpoint: server.endpoint, bucket: "photos", ...S3_KEYS });
const DRIVERS = {
  "on the local disk": (spaceId: string) => localDiskBlobs(folder, spaceId),
  "in a bucket": (spaceId: string) => s3Blobs(settings(), spaceId),
} as const;

const bytesOf = (text: string) => new Uint8Array(Buffer.from(text));
const keyOf = (bytes: Uint8Array) => createHash("sha256").update(bytes).digest("hex");

async function put(blobs: Blobs, text: string): Promise<string> {
  const bytes = bytesOf(text);
  await blobs.put(keyOf(bytes), bytes, "image/webp");
  return keyOf(bytes);
}

describe.each(Object.entries(DRIVERS))("blobs %s", (_where, open) => {
  it("are given back as they were, however often they are put", async () => {
    const blobs = open(randomUUID());
    const key = await put(blobs, "a picture");
    await put(blobs, "a picture");
    expect(await blobs.get(key)).toEqual(bytesOf("a picture"));
    expect(await blobs.list()).toEqual([key]);
  });

  it("are told apart from what is not there, and may be deleted twice", async () => {
    const blobs = open(randomUUID());
    const key = await put(blobs, "another");
    await blobs.delete(key);
    await blobs.delete(key);
    expect(await blobs.get(key)).toBeNull();
    expect(await blobs.list()).toEqual([]);
  });

  it("are listed all, page after page", async () => {
    const blobs = open(randomUUID());
    const keys = [];
    for (const text of ["1", "2", "3", "4", "5"]) keys.push(await put(blobs, text));
    expect(await blobs.list()).toEqual(keys.sort());
  });

  it("of one club are nothing to another, under the same key", async () => {
    const key = await put(open(randomUUID()), "only here");
    const other = open(randomUUID());
    expect(await other.get(key)).toBeNull();
    expect(await other.list()).toEqual([]);
  });

  it.each([
    "../../../etc/passwd",
    "..",
    "",
    "a".repeat(63),
    "A".repeat(64),
    `${"a".repeat(63)}/`,
    `${"a".repeat(64)}\0`,
  ])("have no other names than hashes: %j", async (key) => {
    const blobs = open(randomUUID());
    const acts: readonly (() => Promise<unknown>)[] = [
      () => blobs.get(key),
      () => blobs.put(key, bytesOf("x"), "image/webp"),
      () => blobs.delete(key),
    ];
    for (const act of acts) await expect(act()).rejects.toThrow("a blob is named by");
    for (const space of ["..", "../elsewhere", ""]) expect(() => open(space)).toThrow("belongs to a space");
  });
});

describe("a bucket", () => {
  it("has its requests signed: with another secret it gives and takes nothing", async () => {
    const spaceId = randomUUID();
    const key = await put(s3Blobs(settings(), spaceId), "signed");
    const forged = s3Blobs({ ...settings(), secretAccessKey: "guessed" }, spaceId);
    await expect(forged.get(key)).rejects.toThrow("the store of photos answered 403 to GET");
    await expect(put(forged, "forged")).rejects.toThrow("answered 403 to PUT");
    expect(server.objects.has(`${spaceId}/${keyOf(bytesOf("forged"))}`)).toBe(false);
  });

  it("is asked again where it has too much to do", async () => {
    const blobs = s3Blobs(settings(), randomUUID());
    server.falter(2);
    const key = await put(blobs, "patience");
    expect(await blobs.get(key)).toEqual(bytesOf("patience"));
  });

  // Amazon S3 API Reference, "Authenticating Requests: Using the Authorization Header", example: GET Object.
  it("is held by its test double to the published signature", () => {
    const empty = "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855";
    const headers = {
      host: "examplebucket.s3.amazonaws.com",
      range: "bytes=0-9",
      "x-amz-content-sha256": empty,
      "x-amz-date": "20130524T000000Z",
    };
    const signed = { method: "GET", path: "/test.txt", query: new URLSearchParams(), headers, region: "us-east-1" };
    const signedHeaders = "host;range;x-amz-content-sha256;x-amz-date";
    const secret = "wJalrXUtnFEMI/K7MDENG/bPxRfiCYEXAMPLEKEY";
    expect(signatureV4(secret, { ...signed, signedHeaders, date: "20130524T000000Z" })).toBe(
      "f0e8bdb87c964420e857bd35b5d6ed310bd44f0170aba48dd91039c6036bdb41",
    );
  });
});

describe("a folder", () => {
  it("shows nothing that is not written to its end", async () => {
    const spaceId = randomUUID();
    const blobs = localDiskBlobs(folder, spaceId);
    const key = await put(blobs, "whole");
    await writeFile(join(folder, spaceId, `${"b".repeat(64)}.half`), "half");
    expect(await blobs.list()).toEqual([key]);
    expect((await readdir(join(folder, spaceId))).filter((name) => name.startsWith(key))).toEqual([key]);
  });
});

describe("the settings of the store", () => {
  it("are a folder without more, and a bucket where one is named", async () => {
    vi.stubEnv("BLOB_FOLDER", folder);
    expect(environment.blobs).toEqual({ kind: "disk", folder });
    vi.stubEnv("S3_ENDPOINT", server.endpoint);
    vi.stubEnv("S3_BUCKET", "photos");
    vi.stubEnv("S3_ACCESS_KEY_ID", S3_KEYS.accessKeyId);
    vi.stubEnv("S3_SECRET_ACCESS_KEY", S3_KEYS.secretAccessKey);
    const blobs = blobsOf(randomUUID());
    const key = await put(blobs, "by setting");
    expect([...server.objects.keys()].some((name) => name.endsWith(key))).toBe(true);
  });

  it("name what is missing or wrong", () => {
    vi.stubEnv("S3_ENDPOINT", "ftp://store.example");
    vi.stubEnv("S3_BUCKET", "../photos");
    expect(() => environment.blobs).toThrow(
      "S3_ENDPOINT must be an address that begins with https:// and S3_BUCKET must be the name of a bucket and S3_ACCESS_KEY_ID must be set where S3_ENDPOINT is",
    );
  });
});
