import react from "@vitejs/plugin-react"
import { defineConfig } from "vite"
import { contentPolicy } from "./web/host/policy.ts"
import { fileGroups, preloadSoon } from "./web/setup/grouped.ts"
import { licences } from "./web/setup/licences.ts"
import { offlineWorker } from "./web/setup/offlineWorker.ts"

export default defineConfig({
  root: "web",
  base: "./",
  // A path that is not there is a 404, not the first page.
  appType: "mpa",
  build: {
    outDir: "../dist",
    emptyOutDir: true,
    target: "es2022",
    chunkSizeWarningLimit: 700,
    rolldownOptions: { output: { codeSplitting: { groups: fileGroups() } } },
    modulePreload: {
      // The first script would carry a list of what every later screen is made of; a screen finds its parts itself.
      resolveDependencies: (_, parts, { hostType }) =>
        hostType === "html" ? parts : parts.filter((part) => part.endsWith(".css")),
    },
  },
  // Workers load the words of one language alone.
  worker: { format: "es" },
  plugins: [
    react(),
    {
      name: "content-security-policy",
      apply: "build",
      transformIndexHtml: (html) =>
        html.replace(
          "<head>",
          `<head>\n    <meta http-equiv="Content-Security-Policy" content="${contentPolicy}" />`,
        ),
    },
    preloadSoon(),
    licences(),
    offlineWorker(),
  ],
})
