import { notFound } from "next/navigation";
import { findPublished } from "@/lib/server/publications/reads";
import { linkCard } from "@/lib/ui/card/link-card";
import { cardFigures } from "../../beer-figure-texts";
import { publishedQuantities } from "../published-quantities";

interface CardContext {
  readonly params: Promise<{ readonly address: string }>;
}

/** The picture that stands beside a link to a recipe. */
export async function GET(_request: Request, { params }: CardContext): Promise<Response> {
  const { title, content, authorName } = (await findPublished((await params).address)) ?? notFound();
  const quantities = publishedQuantities(content) ?? {};
  return linkCard({ title, line: `A recipe by ${authorName}`, ...cardFigures(quantities) });
}
