// npm start: install, build, serve on localhost, print the address.
import { ensureInstalled, root } from "./ensure.mjs"

ensureInstalled()
const { build, preview } = await import("vite")
await build({ root: `${root}/web`, configFile: `${root}/vite.config.ts`, logLevel: "warn" })
const server = await preview({
  root: `${root}/web`,
  configFile: `${root}/vite.config.ts`,
  logLevel: "warn",
  preview: { port: Number(process.env.PORT ?? 4173), host: "localhost" },
})
console.log(`Partline is ready: ${server.resolvedUrls.local[0]}`)
console.log("Press Ctrl+C to stop.")
