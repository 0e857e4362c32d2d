import react from '@vitejs/plugin-react'
import { defineConfig } from 'vite'

const SERVER = 'http://localhost:3000'

export default defineConfig({
  // This folder, wherever the build was started.
  root: import.meta.dirname,
  plugins: [react()],
  build: {
    outDir: '../dist/web',
    emptyOutDir: true,
    target: ['chrome100', 'firefox100', 'safari15.4'],
    // The content security policy allows no data: fonts and no inline anything.
    assetsInlineLimit: 0,
  },
  server: {
    proxy: {
      // The socket's own place, not the pages' folder of the same name.
      '^/live/?(\\?|$)': { target: SERVER, ws: true },
      '/api': SERVER,
      '/healthz': SERVER,
    },
  },
})
