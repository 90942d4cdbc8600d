import { createHash } from "node:crypto"
import type { Page } from "playwright-core"
import { readBuild, type ServedBuild, type ServedFile, servedFile } from "../../web/host/readBuild"
import { type Serving, serveBuild } from "../../web/host/serve"

/** A host that can be stopped, started again at the same address, and given another build meanwhile. */
export type TestHost = {
  address: string
  serves(build: ServedBuild): void
  start(): Promise<void>
  stop(): Promise<void>
}

export async function openHost(first: ServedBuild): Promise<TestHost> {
  let build = first
  let serving: Serving = await serveBuild(() => build, { host: "localhost", port: 0 })
  const { port } = serving
  return {
    address: `http://localhost:${port}/`,
    serves: (next) => {
      build = next
    },
    start: async () => {
      serving = await serveBuild(() => build, { host: "localhost", port })
    },
    stop: () => serving.stop(),
  }
}

export const thisBuild = () => readBuild("dist")

/** The same app as a build of another name, with the worker that belongs to it. */
export const buildNamed = (name: string): ServedBuild =>
  withFirstPage(thisBuild(), (page) => page.replace("<html ", `<html data-build="${name}" `))

/** The name of the build that a window shows; null for the one as it was built. */
export const buildShown = (page: Page) => page.evaluate(() => document.documentElement.dataset.build ?? null)

export const showsBuild = (page: Page, name: string) =>
  page.waitForFunction((wanted) => document.documentElement.dataset.build === wanted, name)

/** A build with another first page, a probe where one is given, and the worker that belongs to both. */
export function withFirstPage(
  build: ServedBuild,
  change: (page: string) => string,
  probe?: ServedFile,
): ServedBuild {
  const first = build.get("index.html") as ServedFile
  const page = servedFile("index.html", Buffer.from(change(String(first.bytes))))
  const probed = probe ? `[\`probe.js\`,\`${sha256(probe.bytes)}\`],` : ""
  // The worker of the build as it stands, with the name and the hashes that differ.
  const worker = String(build.get("sw.js")?.bytes)
    .replace(sha256(first.bytes), sha256(page.bytes))
    .replace(/id:`\w+`,files:\[/, `id:\`${sha256(page.bytes).replace(/\W/g, "")}\`,files:[${probed}`)
  const changed = new Map(build).set("index.html", page)
  if (probe) changed.set("probe.js", probe)
  return changed.set("sw.js", servedFile("sw.js", Buffer.from(worker)))
}

const sha256 = (bytes: Buffer) => createHash("sha256").update(bytes).digest("base64")

/** A build in which one file is not what its worker knows it by. */
export function withDamage(build: ServedBuild, path: string): ServedBuild {
  const file = build.get(path) as ServedFile
  return new Map(build).set(path, servedFile(path, Buffer.concat([file.bytes, Buffer.from("\n/* */")])))
}
