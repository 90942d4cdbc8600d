import react from "@vitejs/plugin-react"
import { defineConfig } from "vite"

const policy = [
  "default-src 'self'",
  "img-src 'self' data: blob:",
  "style-src 'self'",
  "font-src 'self'",
  "worker-src 'self'",
  "connect-src 'self'",
  "frame-src blob:",
  "object-src 'none'",
  "base-uri 'none'",
  "form-action 'none'",
].join("; ")

export default defineConfig({
  root: "web",
  base: "./",
  build: {
    outDir: "../dist",
    emptyOutDir: true,
    target: "es2022",
    chunkSizeWarningLimit: 700,
    modulePreload: {
      // The first script would carry a list of what every later screen is made of; a screen finds its parts itself.
      resolveDependencies: (_, parts, { hostType }) =>
        hostType === "html" ? parts : parts.filter((part) => part.endsWith(".css")),
    },
  },
  plugins: [
    react(),
    {
      name: "content-security-policy",
      apply: "build",
      transformIndexHtml: (html) =>
        html.replace(
          "<head>",
          `<head>\n    <meta http-equiv="Content-Security-Policy" content="${policy}" />`,
        ),
    },
  ],
})
