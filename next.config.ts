import type { NextConfig } from "next";

const inDevelopment = process.env.NODE_ENV === "development";

/**
 * Pages are built once and served as files, so each carries its payload in
 * inline scripts. A nonce needs a page rendered anew for every request, and the
 * hash option covers only files: `'unsafe-inline'` for scripts is what is left.
 * What limits it: nothing from outside is ever fetched, and no page shows HTML
 * that a person typed. React's development build needs eval.
 * @see next/dist/docs/01-app/02-guides/content-security-policy.md
 */
const contentSecurityPolicy = {
  "default-src": "'self'",
  "script-src": `'self' 'unsafe-inline' 'wasm-unsafe-eval'${inDevelopment ? " 'unsafe-eval'" : ""}`,
  "style-src": "'self' 'unsafe-inline'",
  "img-src": "'self' data: blob:",
  "font-src": "'self' data:",
  "connect-src": "'self'",
  "worker-src": "'self' blob:",
  "media-src": "'self' blob:",
  "object-src": "'none'",
  "base-uri": "'self'",
  "form-action": "'self'",
  "frame-ancestors": "'none'",
};

const headers = {
  "Content-Security-Policy": Object.entries(contentSecurityPolicy)
    .map(([directive, sources]) => `${directive} ${sources}`)
    .join("; "),
  "X-Content-Type-Options": "nosniff",
  "Referrer-Policy": "same-origin",
  "Permissions-Policy": "camera=(), microphone=(), geolocation=(), payment=(), usb=()",
  "Cross-Origin-Opener-Policy": "same-origin",
  "Cross-Origin-Resource-Policy": "same-origin",
};

const config: NextConfig = {
  reactStrictMode: true,
  poweredByHeader: false,
  productionBrowserSourceMaps: false,
  devIndicators: false,
  turbopack: { root: import.meta.dirname },
  headers: async () => [
    {
      source: "/:path*",
      headers: Object.entries(headers).map(([key, value]) => ({ key, value })),
    },
  ],
};

export default config;
