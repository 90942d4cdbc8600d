import { createHash } from "node:crypto"
import { readdirSync, readFileSync, statSync } from "node:fs"
import { extname, join } from "node:path"
import { gzipSync } from "node:zlib"

/** A file of the build as it is served. */
export type ServedFile = { bytes: Buffer; zipped: Buffer | null; type: string; tag: string }

/** The built app in memory, by path: a build that is made meanwhile does not mix with it. */
export type ServedBuild = ReadonlyMap<string, ServedFile>

const types: Record<string, string> = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".txt": "text/plain; charset=utf-8",
  ".json": "application/json",
  ".webmanifest": "application/manifest+json",
  ".svg": "image/svg+xml",
  ".png": "image/png",
  ".ttf": "font/ttf",
  ".woff2": "font/woff2",
}

const isPacked = new Set([".png", ".woff2"])

/** Every file below a folder, by its path from there with forward strokes. */
export const filesUnder = (folder: string): string[] =>
  readdirSync(folder).flatMap((name) => {
    const path = join(folder, name)
    return statSync(path).isDirectory() ? filesUnder(path).map((below) => `${name}/${below}`) : [name]
  })

export const readBuild = (folder: string): ServedBuild =>
  new Map(filesUnder(folder).map((path) => [path, servedFile(path, readFileSync(join(folder, path)))]))

export function servedFile(path: string, bytes: Buffer): ServedFile {
  const ending = extname(path)
  const tag = `"${createHash("sha256").update(bytes).digest("base64url").slice(0, 27)}"`
  return {
    ...{ bytes, tag },
    zipped: isPacked.has(ending) ? null : gzipSync(bytes),
    type: types[ending] ?? "application/octet-stream",
  }
}
