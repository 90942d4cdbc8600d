import { createHash, generateKeyPairSync, type KeyObject, randomBytes, sign } from "node:crypto"
import { isIP } from "node:net"
import { bits, moment, natural, objectId, octets, place, sequence, setOf, text, yes } from "./der"

/** What a host in a local network needs to be trusted: `authority` is what a tablet is given. All as PEM. */
export type HostCertificate = { key: string; cert: string; authority: string }

/** Systems refuse a longer one: at most 825 days (Apple, "Requirements for trusted certificates in iOS 13 and macOS 10.15"). */
const validDays = 800
const dayMs = 86_400_000

const id = {
  commonName: "2.5.4.3",
  signature: "1.2.840.10045.4.3.2",
  subjectKey: "2.5.29.14",
  keyUsage: "2.5.29.15",
  otherNames: "2.5.29.17",
  basic: "2.5.29.19",
  authorityKey: "2.5.29.35",
  extendedUsage: "2.5.29.37",
  forServers: "1.3.6.1.5.5.7.3.1",
}

/**
 * A certificate for these names and addresses (X.509 v3, RFC 5280; P-256, SHA-256), and the authority that signed it. The
 * authority's key is thrown away at once: a tablet that trusts it trusts this one host and nothing else, ever.
 */
export function makeCertificate(names: readonly string[], now: Date): HostCertificate {
  const authority = generateKeyPairSync("ec", { namedCurve: "P-256" })
  const server = generateKeyPairSync("ec", { namedCurve: "P-256" })
  const made = now.toISOString().slice(0, 10)
  const issuer = nameOf(`Partline in this network, ${made}`)
  const issuerKeyId = keyId(authority.publicKey)
  const sealed = (subject: Buffer, key: KeyObject, extensions: Buffer[]) =>
    seal({ issuer, subject, key, extensions, now }, authority.privateKey)
  return {
    key: server.privateKey.export({ type: "pkcs8", format: "pem" }).toString(),
    cert: sealed(
      nameOf("Partline"),
      server.publicKey,
      serverExtensions(names, server.publicKey, issuerKeyId),
    ),
    authority: sealed(issuer, authority.publicKey, authorityExtensions(issuerKeyId)),
  }
}

/** An authority for servers, with no other authority below it (path length 0). */
const authorityExtensions = (own: Buffer) => [
  extension(id.basic, sequence(yes(), natural(Buffer.from([0]))), true),
  // keyCertSign is bit 5, so two bits are unused.
  extension(id.keyUsage, bits(Buffer.from([0b0000_0100]), 2), true),
  extension(id.subjectKey, octets(own)),
]

const serverExtensions = (names: readonly string[], key: KeyObject, issuerKeyId: Buffer) => [
  extension(id.basic, sequence(), true),
  // digitalSignature is bit 0, so seven bits are unused.
  extension(id.keyUsage, bits(Buffer.from([0b1000_0000]), 7), true),
  extension(id.extendedUsage, sequence(objectId(id.forServers))),
  extension(id.otherNames, sequence(...names.map(otherName))),
  extension(id.subjectKey, octets(keyId(key))),
  extension(id.authorityKey, sequence(place(0, issuerKeyId, false))),
]

const otherName = (name: string) =>
  isIP(name) === 4
    ? place(7, Buffer.from(name.split(".").map(Number)), false)
    : place(2, Buffer.from(name, "ascii"), false)

const extension = (name: string, value: Buffer, isCritical = false) =>
  sequence(objectId(name), ...(isCritical ? [yes()] : []), octets(value))

const nameOf = (commonName: string) => sequence(setOf(sequence(objectId(id.commonName), text(commonName))))

const spki = (key: KeyObject) => key.export({ type: "spki", format: "der" })

/** RFC 7093 section 2, method 1: the first 160 bits of the SHA-256 of the key's bits (the last 65 bytes for P-256). */
const keyId = (key: KeyObject) =>
  createHash("sha256").update(spki(key).subarray(-65)).digest().subarray(0, 20)

type Draft = { issuer: Buffer; subject: Buffer; key: KeyObject; extensions: Buffer[]; now: Date }

function seal({ issuer, subject, key, extensions, now }: Draft, signer: KeyObject): string {
  const algorithm = sequence(objectId(id.signature))
  const version3 = place(0, natural(Buffer.from([2])), true)
  // An hour back, for a tablet whose clock is behind.
  const from = new Date(now.getTime() - dayMs / 24)
  const until = new Date(from.getTime() + validDays * dayMs)
  const content = sequence(
    ...[version3, natural(randomBytes(16)), algorithm, issuer],
    ...[sequence(moment(from), moment(until)), subject, spki(key)],
    place(3, sequence(...extensions), true),
  )
  const sealed = sequence(content, algorithm, bits(sign("sha256", content, signer)))
  return `-----BEGIN CERTIFICATE-----\n${sealed.toString("base64").replace(/.{64}/g, "$&\n").trim()}\n-----END CERTIFICATE-----\n`
}
