import "server-only";
import type { SpaceTransaction } from "../db";

/** Words alone: no quotation, no exclusion, nothing that would have a meaning of its own. */
const PLAIN_WORDS = /^[\p{L}\p{N}\s]+$/u;

/**
 * What was typed, as the database asks for it: words as written and by their English stem, quotations and exclusions as
 * on the web, and the last word also as a beginning. Empty where nothing is asked for.
 */
export async function askedWords(tx: SpaceTransaction, typed: string): Promise<string> {
  const words = typed.trim().split(/\s+/);
  const last = PLAIN_WORDS.test(typed) ? (words.at(-1) ?? "") : "";
  const before = words.slice(0, -1).join(" ");
  const [row] = await tx.$queryRaw<readonly { readonly asked: string }[]>`
    SELECT (CASE
      -- An exclusion must hold in every reading, so there is one.
      WHEN ${typed} ~ '(^|\\s)-' THEN websearch_to_tsquery('gyle_english', ${typed})
      WHEN ${last} = '' THEN
        websearch_to_tsquery('gyle_plain', ${typed}) || websearch_to_tsquery('gyle_english', ${typed})
      ELSE
        websearch_to_tsquery('gyle_plain', ${typed}) || websearch_to_tsquery('gyle_english', ${typed}) ||
        (websearch_to_tsquery('gyle_plain', ${before}) && to_tsquery('gyle_plain', quote_literal(${last}) || ':*'))
    END)::text AS asked`;
  return row?.asked ?? "";
}

/**
 * The same words with those that stand nowhere in the space replaced by the likeliest that does; null where there is
 * nothing to replace, or nothing like it.
 */
export async function correctedWords(tx: SpaceTransaction, typed: string): Promise<string | null> {
  if (!PLAIN_WORDS.test(typed)) return null;
  const words = typed.trim().split(/\s+/);
  const nearest = await tx.$queryRaw<readonly { readonly word: string; readonly nearest: string | null }[]>`
    WITH asked AS (
      SELECT n, word, (tsvector_to_array(to_tsvector('gyle_plain', word)))[1] AS folded
      FROM unnest(${words}::text[]) WITH ORDINALITY AS a (word, n)
    )
    SELECT a.word, near.nearest
    FROM asked a
    LEFT JOIN nearest_words((SELECT array_agg(DISTINCT folded) FROM asked WHERE folded IS NOT NULL)) AS near
      ON near.mistyped = a.folded
    ORDER BY a.n`;
  const corrected = nearest.map(({ word, nearest: near }) => near ?? word).join(" ");
  return corrected.toLowerCase() === words.join(" ").toLowerCase() ? null : corrected;
}
