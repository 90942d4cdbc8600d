import { createHash } from "node:crypto"
import { gunzipSync } from "node:zlib"
import { expect, it } from "vitest"
import { answer } from "../../../web/host/answer"
import { contentPolicy } from "../../../web/host/policy"
import { servedFile } from "../../../web/host/readBuild"

const page = Buffer.from("<!doctype html><title>Partline</title>")
const build = new Map(
  ["index.html", "sw.js", "assets/App-abc.js", "manifest.webmanifest", "icon-192.png"].map((path) => [
    path,
    servedFile(path, page),
  ]),
)
const ask = (url: string, headers = {}, method = "GET") => answer({ method, url, headers }, build)

it("sends the policy as a header, where alone it can forbid a frame", () => {
  const { headers } = ask("/")
  expect(headers["Content-Security-Policy"]).toBe(`${contentPolicy}; frame-ancestors 'none'`)
  expect(contentPolicy).toContain("manifest-src 'self'")
  expect(contentPolicy).not.toContain("frame-src")
  expect(headers["X-Content-Type-Options"]).toBe("nosniff")
})

it.each([
  ["/sw.js", "no-store"],
  ["/assets/App-abc.js", "public, max-age=31536000, immutable"],
  ["/", "no-cache"],
  ["/manifest.webmanifest", "no-cache"],
])("lets a browser keep %s for as long as it may: %s", (url, kept) => {
  expect(ask(url).headers["Cache-Control"]).toBe(kept)
})

it("gives the first page for the folder, and nothing outside the build", () => {
  expect(ask("/?x=1").body).toEqual(page)
  expect(ask("/index.html").body).toEqual(page)
  for (const url of ["/nothing", "/../package.json", "/%2e%2e/package.json", "/%zz", "/assets/"])
    expect(ask(url).status).toBe(404)
  expect(ask("/", {}, "POST").status).toBe(405)
})

it("packs what is worth packing for those who take it, and is the same bytes after", () => {
  const packed = ask("/", { "accept-encoding": "br, gzip" })
  expect(packed.headers["Content-Encoding"]).toBe("gzip")
  expect(gunzipSync(packed.body as Buffer)).toEqual(page)
  expect(packed.headers["Content-Length"]).toBe(String((packed.body as Buffer).length))
  expect(ask("/icon-192.png", { "accept-encoding": "gzip" }).headers["Content-Encoding"]).toBeUndefined()
})

it("says that a file is unchanged by the hash of its bytes", () => {
  const tag = ask("/").headers.ETag
  expect(tag).toBe(`"${createHash("sha256").update(page).digest("base64url").slice(0, 27)}"`)
  const again = ask("/", { "if-none-match": tag })
  expect([again.status, again.body]).toEqual([304, ""])
})
