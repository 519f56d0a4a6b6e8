import type { NextConfig } from "next";

const isBench = process.env.GYLEBOOK_BENCH === "on";

const config: NextConfig = {
  // A benchmark brings a page of its own, page.bench.tsx, to hold the others against.
  pageExtensions: [...(isBench ? ["bench.tsx"] : []), "tsx", "ts"],
  poweredByHeader: false,
  reactStrictMode: true,
  typedRoutes: false,
  // `npm run check` compiles everything, the tests too; whoever only starts it need not wait for that.
  typescript: { ignoreBuildErrors: true },
  // The optimiser would fetch addresses on behalf of a visitor, and no page needs it.
  images: { unoptimized: true, remotePatterns: [], localPatterns: [] },
  serverExternalPackages: ["@node-rs/argon2", "pg", "@prisma/adapter-pg", "nodemailer", "sharp", "web-push"],
};

export default config;
