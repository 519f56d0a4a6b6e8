import type { NextConfig } from "next";

const config: NextConfig = {
  poweredByHeader: false,
  reactStrictMode: true,
  typedRoutes: false,
  // `npm run check` compiles everything, the tests too; whoever only starts it need not wait for that.
  typescript: { ignoreBuildErrors: true },
  // The optimiser would fetch addresses on behalf of a visitor, and no page needs it.
  images: { unoptimized: true, remotePatterns: [], localPatterns: [] },
  serverExternalPackages: ["@node-rs/argon2", "pg", "@prisma/adapter-pg", "nodemailer"],
};

export default config;
