import { createHash } from "node:crypto"
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

/** The same app under another title, with the worker that belongs to it. */
export function buildTitled(title: string): ServedBuild {
  const build = new Map(thisBuild())
  const first = build.get("index.html") as ServedFile
  const page = servedFile(
    "index.html",
    Buffer.from(String(first.bytes).replace(/<title>[^<]*/, `<title>${title}`)),
  )
  // The worker of the build as it stands, with the name and the one hash that differ.
  const worker = String(build.get("sw.js")?.bytes)
    .replace(sha256(first.bytes), sha256(page.bytes))
    .replace(/id:`\w+`/, `id:\`${title.replace(/\W/g, "")}\``)
  return build.set("index.html", page).set("sw.js", servedFile("sw.js", Buffer.from(worker)))
}

const sha256 = (bytes: Buffer) => createHash("sha256").update(bytes).digest("base64")

/** A build in which one file is not what its worker knows it by. */
export function withDamage(build: ServedBuild, path: string): ServedBuild {
  const file = build.get(path) as ServedFile
  return new Map(build).set(path, servedFile(path, Buffer.concat([file.bytes, Buffer.from("\n/* */")])))
}
