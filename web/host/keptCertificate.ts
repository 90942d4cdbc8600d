import { X509Certificate } from "node:crypto"
import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs"
import { isIP } from "node:net"
import { join } from "node:path"
import { type HostCertificate, makeCertificate } from "./certificate"

const leastDays = 14

/** The certificate of the last time while it still fits, so that a tablet trusts once; else a new one. */
export function keptCertificate(folder: string, names: readonly string[], now = new Date()): HostCertificate {
  const kept = read(folder)
  if (kept && fits(kept, names, now)) return kept
  const made = makeCertificate(names, now)
  mkdirSync(folder, { recursive: true, mode: 0o700 })
  writeFileSync(join(folder, "certificate.json"), JSON.stringify(made), { mode: 0o600 })
  return made
}

function fits({ cert }: HostCertificate, names: readonly string[], now: Date): boolean {
  const certificate = new X509Certificate(cert)
  const daysLeft = (Date.parse(certificate.validTo) - now.getTime()) / 86_400_000
  const isNamed = (name: string) => (isIP(name) ? certificate.checkIP(name) : certificate.checkHost(name))
  return daysLeft >= leastDays && names.every(isNamed)
}

function read(folder: string): HostCertificate | null {
  const file = join(folder, "certificate.json")
  if (!existsSync(file)) return null
  try {
    return JSON.parse(readFileSync(file, "utf8"))
  } catch {
    return null
  }
}
