import "server-only";
import { createHash } from "node:crypto";
import { AwsClient } from "aws4fetch";
import { isRecord, type FileNode } from "@/lib/model/exchange/file-node";
import { readXml } from "../exchange/read-xml";
import { requireKey, requireSpace, type Blobs } from "./blobs";

export interface S3Settings {
  readonly endpoint: string;
  readonly bucket: string;
  readonly region: string;
  readonly accessKeyId: string;
  readonly secretAccessKey: string;
}

const RETRIES = 3;

/** Blobs of a space as objects of one bucket, by the four verbs that every S3-compatible store has. */
export function s3Blobs(settings: S3Settings, spaceId: string): Blobs {
  const { region, accessKeyId, secretAccessKey } = settings;
  const client = new AwsClient({ accessKeyId, secretAccessKey, region, service: "s3", retries: RETRIES });
  const bucket = `${settings.endpoint.replace(/\/+$/, "")}/${settings.bucket}`;
  const prefix = `${requireSpace(spaceId)}/`;
  const addressOf = (key: string): string => `${bucket}/${prefix}${requireKey(key)}`;
  return {
    async put(key, bytes, type) {
      // The hash of the body is signed with it, so that nothing between us and the store can change a picture.
      const hash = createHash("sha256").update(bytes).digest("hex");
      const headers = { "content-type": type, "x-amz-content-sha256": hash };
      await answered("PUT", await client.fetch(addressOf(key), { method: "PUT", headers, body: bytes }));
    },
    async get(key) {
      const answer = await client.fetch(addressOf(key));
      if (answer.status === 404) return null;
      return new Uint8Array(await (await answered("GET", answer)).arrayBuffer());
    },
    async delete(key) {
      const answer = await client.fetch(addressOf(key), { method: "DELETE" });
      if (answer.status !== 404) await answered("DELETE", answer);
    },
    async list() {
      const keys: string[] = [];
      for (let from: string | null = ""; from !== null;) {
        const asked = new URLSearchParams({ "list-type": "2", prefix });
        if (from !== "") asked.set("continuation-token", from);
        const answer: Response = await answered("GET", await client.fetch(`${bucket}?${asked.toString()}`));
        const page = readPage(await answer.text());
        keys.push(...page.keys.filter((key) => key.startsWith(prefix)).map((key) => key.slice(prefix.length)));
        from = page.next;
      }
      return keys.sort();
    },
  };
}

async function answered(verb: string, answer: Response): Promise<Response> {
  if (answer.ok) return answer;
  // The store's own words may hold the names of keys; its status says enough.
  await answer.body?.cancel();
  throw new Error(`the store of photos answered ${String(answer.status)} to ${verb}`);
}

function readPage(text: string): { readonly keys: readonly string[]; readonly next: string | null } {
  const list = recordOf(recordOf(readXml(text)).get("ListBucketResult"));
  const contents = [...list].filter(([name]) => /^Contents(?:#\d+)?$/.test(name));
  const keys = contents.map(([, node]) => textOf(recordOf(node).get("Key")));
  const next = textOf(list.get("IsTruncated")) === "true" ? textOf(list.get("NextContinuationToken")) : "";
  return { keys, next: next === "" ? null : next };
}

function recordOf(node: FileNode | undefined): ReadonlyMap<string, FileNode> {
  return node !== undefined && isRecord(node.value) ? node.value : new Map<string, FileNode>();
}

function textOf(node: FileNode | undefined): string {
  return typeof node?.value === "string" ? node.value : "";
}
