import type { NextConfig } from "next";

const config: NextConfig = {
  poweredByHeader: false,
  reactStrictMode: true,
  typedRoutes: false,
  // The optimiser would fetch addresses on behalf of a visitor, and no page needs it.
  images: { unoptimized: true, remotePatterns: [], localPatterns: [] },
  serverExternalPackages: ["@node-rs/argon2", "pg", "@prisma/adapter-pg"],
};

export default config;
