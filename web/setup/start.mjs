// npm start: install, build, serve on localhost, print the address.

import { buildApp, load } from "./buildApp.mjs"
import { ensureInstalled } from "./ensure.mjs"

ensureInstalled()
const folder = await buildApp()
const { readBuild } = await load("web/host/readBuild.ts")
const { serveBuild } = await load("web/host/serve.ts")
const build = readBuild(folder)
const port = Number(process.env.PORT ?? 4173)
const serving = await serveBuild(() => build, { host: "localhost", port })
console.log(`Partline is ready: http://localhost:${serving.port}/`)
console.log("Press Ctrl+C to stop.")
