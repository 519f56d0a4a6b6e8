import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { ACTION_ROWS } from "@/tests/access/action-rows";
import { actionForm } from "@/tests/support/action-form";
import type { AddressParts } from "./club-addresses";
import { addressOf } from "./page-routes";
import type { Answered, Asked } from "./plain-request";

interface BuiltAction {
  readonly workers: Readonly<Record<string, unknown>>;
  readonly exportedName: string;
}

const MANIFEST = fileURLToPath(new URL("../../../.next/server/server-reference-manifest.json", import.meta.url));

/** The actions that a build has, by their names: the identifier that calls each, and a page that it is on. */
export function builtActions(): ReadonlyMap<string, { readonly id: string; readonly page: string }> {
  const { node } = JSON.parse(readFileSync(MANIFEST, "utf8")) as { readonly node: Record<string, BuiltAction> };
  return new Map(
    Object.entries(node).map(([id, { exportedName, workers }]) => {
      const [page = ""] = Object.keys(workers);
      return [exportedName, { id, page: page.replace(/^app/, "").replace(/\/page$/, "") || "/" }];
    }),
  );
}

const built = builtActions();

/** A call of an action as a page of ours sends it, with a field more where one is given. */
export function callOf(name: string, ids: AddressParts, more: Readonly<Record<string, string>> = {}): Asked {
  const row = ACTION_ROWS[name];
  const action = built.get(name);
  if (row === undefined || action === undefined) throw new Error(`the build has no action ${name}`);
  const headers = { "next-action": action.id, accept: "text/x-component" };
  const path = addressOf(action.page, ids);
  const input = { ...row.input(ids), ...more };
  if (row.sent === "form") return { method: "POST", path, headers, body: actionForm(row.bound(ids), input) };
  const body = JSON.stringify([...row.bound(ids), input]);
  return { method: "POST", path, headers: { ...headers, "content-type": "text/plain;charset=UTF-8" }, body };
}

/** What became of a call: the words of its answer, the page that it leads to, or the status of a failure. */
export function outcomeOf({ status, headers, text }: Answered): string {
  const [redirect] = headers.get("x-action-redirect")?.split(";") ?? [];
  if (redirect !== undefined) return redirect.startsWith("/sign-in?next=") ? "sign in" : `to ${redirect}`;
  if (status !== 200) return String(status);
  const [line] = text.split("\n").filter((each) => /^\w+:\{"status":/.test(each));
  return line === undefined ? `200 ${text.slice(0, 200)}` : line.slice(line.indexOf(":") + 1);
}
