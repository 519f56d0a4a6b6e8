import type { MetadataRoute } from "next";

/** Only what a club published is for search engines; everything else asks for a sign-in anyway. */
export default function robots(): MetadataRoute.Robots {
  return { rules: { userAgent: "*", allow: ["/p/", "/_next/static/"], disallow: "/" } };
}
