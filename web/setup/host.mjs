// npm run host -- --https: build, and serve in the local network, with a page that says how a tablet opens it.
import { join } from "node:path"
import { buildApp, load } from "./buildApp.mjs"
import { ensureInstalled, root } from "./ensure.mjs"

ensureInstalled()
const folder = await buildApp()
const { readBuild } = await load("web/host/readBuild.ts")
const { serve, serveBuild } = await load("web/host/serve.ts")
const { namesOfHost, networkAddresses } = await load("web/host/addresses.ts")

const build = readBuild(folder)
const everywhere = "0.0.0.0"
const port = Number(process.env.PORT ?? 4443)
const [address = "localhost"] = networkAddresses()
if (process.argv.includes("--https")) await hostSecurely()
else await hostPlainly()
console.log("Press Ctrl+C to stop.")

async function hostSecurely() {
  const { keptCertificate } = await load("web/host/keptCertificate.ts")
  const { answerFromPage, fingerprint } = await load("web/host/hostPage.ts")
  const { key, cert, authority } = keptCertificate(join(root, ".host"), namesOfHost())
  const app = await serveBuild(() => build, { host: everywhere, port, tls: { key, cert: cert + authority } })
  const host = { appAddress: `https://${address}:${app.port}/`, pageAddress: "", authority }
  const page = await serve((asked) => answerFromPage(asked, host), { host: everywhere, port: port + 1 })
  host.pageAddress = `http://${address}:${page.port}/`
  console.log(`Partline is ready in this network: ${host.appAddress}`)
  console.log(`How a tablet opens it, with a code to scan: http://localhost:${page.port}/`)
  console.log(`The certificate that a tablet must trust has this SHA-256:\n  ${fingerprint(authority)}`)
}

async function hostPlainly() {
  const app = await serveBuild(() => build, { host: everywhere, port })
  console.log(`Partline is ready in this network: http://${address}:${app.port}/`)
  console.log("Over plain HTTP a browser keeps no app for later: for a tablet, add --https.")
}
