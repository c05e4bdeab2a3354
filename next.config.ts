import type { NextConfig } from 'next';

const development = process.env.NODE_ENV === 'development';

/** A page may load and send only to this server: no visit leaves the machine by way of the browser. */
const contentSecurityPolicy = [
  "default-src 'self'",
  // Next hands its data over in inline scripts; only the development server evaluates text.
  `script-src 'self' 'unsafe-inline'${development ? " 'unsafe-eval'" : ''}`,
  "style-src 'self' 'unsafe-inline'",
  "img-src 'self' data: blob:",
  "font-src 'self' data:",
  "worker-src 'self' blob:",
  "connect-src 'self'",
  "frame-src 'self' blob:",
  "object-src 'none'",
  "base-uri 'none'",
  "form-action 'self'",
  "frame-ancestors 'none'",
].join('; ');

const config: NextConfig = {
  reactStrictMode: true,
  poweredByHeader: false,
  // Another lock file in a folder above must not make Next take that folder for the project.
  turbopack: { root: process.cwd() },
  // `npm test` checks types with every compiler configuration before it builds; `npm start` need not wait for it again.
  typescript: { ignoreBuildErrors: true },
  // A draft may be one MiB of JSON (lib/store/draft-text.ts); sent inside a form it grows.
  experimental: { serverActions: { bodySizeLimit: '3mb' } },
  async headers() {
    return [
      {
        source: '/:path*',
        headers: [
          { key: 'Content-Security-Policy', value: contentSecurityPolicy },
          { key: 'X-Content-Type-Options', value: 'nosniff' },
          { key: 'Referrer-Policy', value: 'no-referrer' },
          { key: 'Permissions-Policy', value: 'camera=(), microphone=(), geolocation=()' },
        ],
      },
    ];
  },
};

export default config;
