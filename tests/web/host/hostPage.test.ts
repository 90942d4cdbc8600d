import { X509Certificate } from "node:crypto"
import jsQR from "jsqr"
import { expect, it } from "vitest"
import { makeCertificate } from "../../../web/host/certificate"
import { answerFromPage } from "../../../web/host/hostPage"

const { authority } = makeCertificate(["192.0.2.17"], new Date())
const host = { appAddress: "https://192.0.2.17:4443/", pageAddress: "http://192.0.2.17:4444/", authority }
const ask = (url: string) => answerFromPage({ method: "GET", url, headers: {} }, host)
const text = String(ask("/").body)

/** The squares of a drawn code as a picture, four pixels a square. */
function pictureOf(svg: string) {
  const size = Number(svg.match(/viewBox="0 0 (\d+)/)?.[1])
  const unit = Number(svg.match(/h(\d+)v/)?.[1])
  const side = (size / unit) * 4
  const pixels = new Uint8ClampedArray(side * side * 4).fill(255)
  for (const [, x, y] of svg.matchAll(/M(\d+),(\d+)h/g))
    for (let row = 0; row < 4; row++)
      for (let column = 0; column < 4; column++) {
        const at = (((Number(y) / unit) * 4 + row) * side + (Number(x) / unit) * 4 + column) * 4
        pixels.fill(0, at, at + 3)
      }
  return { pixels, side }
}

it("shows both addresses as codes that another reader reads", () => {
  const codes = [...text.matchAll(/<svg[\s\S]*?<\/svg>/g)].map(([svg]) => pictureOf(svg))
  // Read back by jsQR, a reader of another hand.
  expect(codes.map(({ pixels, side }) => jsQR(pixels, side, side)?.data)).toEqual([
    host.pageAddress,
    host.appAddress,
  ])
})

it("gives the certificate to trust, and the fingerprint to know it by", () => {
  const given = ask("/partline.crt")
  expect(given.headers["Content-Type"]).toBe("application/x-x509-ca-cert")
  const certificate = new X509Certificate(given.body as Buffer)
  expect(certificate.fingerprint256).toBe(new X509Certificate(authority).fingerprint256)
  expect(text).toContain(certificate.fingerprint256)
})

it("has no script, loads nothing, and has nothing else", () => {
  expect(text).not.toMatch(/<script|<link|<img|\son\w+=/)
  expect(ask("/").headers["Content-Security-Policy"]).toMatch(/^default-src 'none'; style-src 'sha256-/)
  expect(ask("/../.host/certificate.json").status).toBe(404)
})
