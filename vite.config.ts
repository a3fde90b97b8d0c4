import preact from '@preact/preset-vite'
import { VitePWA } from 'vite-plugin-pwa'
import { defineConfig } from 'vitest/config'

// Everything a static host should send; see DEVELOPERS.md, "Hosting".
const headers = {
  'X-Content-Type-Options': 'nosniff',
  'Referrer-Policy': 'no-referrer',
  'Cross-Origin-Opener-Policy': 'same-origin',
  'Cross-Origin-Resource-Policy': 'same-origin',
  'Cache-Control': 'no-cache',
}

const shared = {
  extends: true as const,
  root: import.meta.dirname,
}

export default defineConfig({
  root: 'src',
  base: './',
  publicDir: '../public',
  cacheDir: '../.cache/vite',
  build: { outDir: '../.dist', emptyOutDir: true, target: 'es2022', sourcemap: false },
  preview: { headers, port: 4173 },
  plugins: [
    preact({ devToolsEnabled: false, prefreshEnabled: false }),
    VitePWA({
      registerType: 'prompt',
      injectRegister: false,
      manifest: false,
      workbox: {
        globPatterns: ['**/*.{js,css,html,svg,png,webmanifest}'],
        cleanupOutdatedCaches: true,
        navigateFallback: 'index.html',
      },
    }),
  ],
  test: {
    maxWorkers: 2,
    projects: [
      {
        ...shared,
        test: {
          name: 'unit',
          environment: 'node',
          include: ['tests/{units,plan,engine,published,files,cli,store}/**/*.test.ts', 'tests/*.test.ts'],
        },
      },
      {
        ...shared,
        test: { name: 'app', environment: 'happy-dom', include: ['tests/app/**/*.test.{ts,tsx}'] },
      },
      {
        ...shared,
        test: {
          name: 'browser',
          environment: 'node',
          include: ['tests/browser/**/*.test.ts'],
          testTimeout: 60_000,
          hookTimeout: 120_000,
          fileParallelism: false,
        },
      },
    ],
  },
})
