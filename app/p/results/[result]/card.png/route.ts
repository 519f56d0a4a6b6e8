import { notFound } from "next/navigation";
import { findPublishedResult } from "@/lib/server/publications/result-reads";
import { linkCard } from "@/lib/ui/card/link-card";
import { cardFigures } from "../../../beer-figure-texts";

interface CardContext {
  readonly params: Promise<{ readonly result: string }>;
}

/** The picture that stands beside a link to a result. */
export async function GET(_request: Request, { params }: CardContext): Promise<Response> {
  const { title, brewers, clubName, figures } = (await findPublishedResult((await params).result)) ?? notFound();
  const line = `Planned against measured by ${String(brewers)} brewers of ${clubName}`;
  return linkCard({ title, line, ...cardFigures(figures) });
}
