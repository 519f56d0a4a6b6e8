import type { KeptChoice } from "@/lib/model/kettle-entry";

/** What is chosen now for a kettle; null where nothing is, and without an answer, when the page goes by what it has. */
export async function readKept(address: string, kettle: string): Promise<KeptChoice | null> {
  const answer = await fetch(`${address}&kettle=${kettle}`).catch(() => null);
  if (answer?.ok !== true) return null;
  return ((await answer.json()) as { readonly kept: KeptChoice | null }).kept;
}
