import { createHash } from "node:crypto"
import { readFileSync, writeFileSync } from "node:fs"
import { join, resolve } from "node:path"
import { build as buildWithVite, type Plugin } from "vite"
import { filesUnder } from "../host/readBuild.ts"
import type { Build } from "../offline/build"

const source = resolve(import.meta.dirname, "../offline/worker.ts")

/** After a build is written: makes sw.js, which knows every file of that very build by its hash. */
export function offlineWorker(): Plugin {
  let folder = ""
  return {
    name: "offline-worker",
    apply: "build",
    configResolved({ root, build }) {
      folder = resolve(root, build.outDir)
    },
    closeBundle: {
      order: "post",
      sequential: true,
      handler: async () => {
        const files = filesUnder(folder).filter((path) => path !== "sw.js")
        const bytes = new Map(files.map((path) => [path, readFileSync(join(folder, path))]))
        writeFileSync(join(folder, "sw.js"), await workerScript(bytes))
      },
    },
  }
}

/** The script of the worker that keeps these files, by their paths. */
export async function workerScript(files: ReadonlyMap<string, Buffer>): Promise<string> {
  const hashed = [...files].map(([path, bytes]) => [path, sha256(bytes)] as const).sort()
  // Another worker is another build too, even over the same files.
  const id = sha256(`${JSON.stringify(hashed)}${await bundled({ id: "", files: [] })}`)
  return bundled({ id: id.replace(/\W/g, "").slice(0, 16), files: hashed })
}

const sha256 = (content: string | Buffer) => createHash("sha256").update(content).digest("base64")

/** A plain script without imports. It has nothing in common with the app's own parts, so it is built apart. */
async function bundled(build: Build): Promise<string> {
  const made = await buildWithVite({
    configFile: false,
    logLevel: "warn",
    define: { PARTLINE_BUILD: JSON.stringify(build) },
    build: {
      write: false,
      target: "es2022",
      lib: { entry: source, formats: ["iife"], name: "worker", fileName: "sw" },
    },
  })
  const [output] = Array.isArray(made) ? made : [made]
  if (!("output" in output)) throw new Error("the offline worker was not built")
  return output.output[0].code
}
