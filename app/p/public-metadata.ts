import type { Metadata } from "next";
import { environment } from "@/lib/server/environment";
import { CARD_SIZE } from "@/lib/ui/card/card-size";

/** What the head of a public page says to search engines, and to whoever shows a preview of a link to it. */
export function publicMetadata(page: {
  readonly title: string;
  readonly description: string;
  /** Its address from the root, which is the canonical one. */
  readonly url: string;
}): Metadata {
  const { title, description, url } = page;
  const origin = environment.appOrigin;
  const alt = `${title}: ${description}`;
  const images = [{ url: `${url}/card.png`, ...CARD_SIZE, type: "image/png", alt }];
  return {
    ...(origin === null ? {} : { metadataBase: new URL(origin) }),
    title,
    description,
    alternates: { canonical: url },
    robots: { index: true, follow: true },
    openGraph: { type: "article", siteName: "Gylebook", title, description, url, images },
    twitter: { card: "summary_large_image", title, description, images },
  };
}
