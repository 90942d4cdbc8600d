import { createPrivateKey, X509Certificate } from "node:crypto"
import { mkdtempSync, rmSync, statSync } from "node:fs"
import { get } from "node:https"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { afterAll, expect, it } from "vitest"
import { makeCertificate } from "../../../web/host/certificate"
import { keptCertificate } from "../../../web/host/keptCertificate"
import { serve } from "../../../web/host/serve"

// The reader is Node's own OpenSSL, which checks what RFC 5280 asks of a chain.
const now = new Date("2026-11-30T10:00:00Z")
const names = ["192.0.2.17", "127.0.0.1", "localhost", "salon.local"]
const made = makeCertificate(names, now)
const server = new X509Certificate(made.cert)
const authority = new X509Certificate(made.authority)

const folder = mkdtempSync(join(tmpdir(), "partline-host-"))
afterAll(() => rmSync(folder, { recursive: true }))

it("names every address of the host and no other", () => {
  expect(server.subjectAltName).toBe(
    "IP Address:192.0.2.17, IP Address:127.0.0.1, DNS:localhost, DNS:salon.local",
  )
  expect(server.checkIP("192.0.2.17")).toBe("192.0.2.17")
  expect(server.checkIP("192.0.2.18")).toBeUndefined()
})

it("is signed by the authority, which signs itself and is one", () => {
  expect(server.verify(authority.publicKey)).toBe(true)
  expect(server.checkIssued(authority)).toBe(true)
  expect(authority.verify(authority.publicKey)).toBe(true)
  expect([authority.ca, server.ca]).toEqual([true, false])
})

it("is for servers alone, and for at most the 825 days that tablets take", () => {
  // 1.3.6.1.5.5.7.3.1 is serverAuth, RFC 5280 section 4.2.1.12.
  expect(server.keyUsage).toEqual(["1.3.6.1.5.5.7.3.1"])
  const days = (Date.parse(server.validTo) - Date.parse(server.validFrom)) / 86_400_000
  expect(days).toBe(800)
  expect(Date.parse(server.validFrom)).toBeLessThan(now.getTime())
})

it("throws the authority's key away: what is kept can sign for nobody", () => {
  expect(Object.keys(made)).toEqual(["key", "cert", "authority"])
  expect(authority.checkPrivateKey(createPrivateKey(made.key))).toBe(false)
  expect(server.checkPrivateKey(createPrivateKey(made.key))).toBe(true)
})

it("opens a connection that trusts the authority, and none that does not", async () => {
  const real = makeCertificate(["127.0.0.1"], new Date())
  const serving = await serve(() => ({ status: 200, headers: {}, body: "here" }), {
    host: "127.0.0.1",
    port: 0,
    tls: real,
  })
  const status = (ca?: string) =>
    new Promise((done) => {
      get({ host: "127.0.0.1", port: serving.port, ...(ca && { ca }) }, (answer) =>
        done(answer.statusCode),
      ).on("error", (error: NodeJS.ErrnoException) => done(error.code))
    })
  expect(await status(real.authority)).toBe(200)
  expect(await status()).toBe("UNABLE_TO_VERIFY_LEAF_SIGNATURE")
  await serving.stop()
})

it("is kept for the next time, for its owner alone, while it fits", () => {
  const first = keptCertificate(folder, names, now)
  expect(statSync(join(folder, "certificate.json")).mode & 0o777).toBe(0o600)
  expect(keptCertificate(folder, names.slice(1), now)).toEqual(first)
  expect(keptCertificate(folder, [...names, "192.0.2.99"], now)).not.toEqual(first)
  const second = keptCertificate(folder, names, now)
  expect(keptCertificate(folder, names, new Date(now.getTime() + 790 * 86_400_000))).not.toEqual(second)
})
