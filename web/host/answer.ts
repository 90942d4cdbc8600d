import { headerPolicy } from "./policy"
import type { ServedBuild } from "./readBuild"

export type Asked = { method: string; url: string; headers: Record<string, string | string[] | undefined> }
export type Answer = { status: number; headers: Record<string, string>; body: Buffer | string }

const always = {
  "Content-Security-Policy": headerPolicy,
  "X-Content-Type-Options": "nosniff",
  "Referrer-Policy": "no-referrer",
}

/** What a host of the app says to a request. README tells any other host to say the same. */
export function answer({ method, url, headers }: Asked, build: ServedBuild): Answer {
  if (method !== "GET" && method !== "HEAD") return refusal(405, "Only GET")
  const path = pathOf(url)
  const file = path === null ? undefined : build.get(path)
  if (path === null || !file) return refusal(404, "Not found")
  const own = { ...always, "Cache-Control": keepFor(path), ETag: file.tag, Vary: "Accept-Encoding" }
  if (headers["if-none-match"] === file.tag) return { status: 304, headers: own, body: "" }
  const zips = file.zipped !== null && /\bgzip\b/.test(String(headers["accept-encoding"] ?? ""))
  const body = zips && file.zipped ? file.zipped : file.bytes
  const packing = zips ? { "Content-Encoding": "gzip" } : {}
  const size = { "Content-Type": file.type, "Content-Length": String(body.length) }
  return { status: 200, headers: { ...own, ...size, ...packing }, body: method === "HEAD" ? "" : body }
}

/** The worker is asked for anew each time, a name with a hash in it never again. */
const keepFor = (path: string) =>
  path === "sw.js"
    ? "no-store"
    : path.startsWith("assets/")
      ? "public, max-age=31536000, immutable"
      : "no-cache"

const refusal = (status: number, words: string): Answer => ({
  status,
  headers: { ...always, "Content-Type": "text/plain; charset=utf-8", "Cache-Control": "no-store" },
  body: words,
})

function pathOf(url: string): string | null {
  try {
    const { pathname } = new URL(url, "http://host")
    return decodeURIComponent(pathname).replace(/^\//, "") || "index.html"
  } catch {
    return null
  }
}
