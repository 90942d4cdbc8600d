import type { Technique } from "../../../presets/techniques/technique"
import { problemAt } from "../checks/problem"
import { crc32 } from "./crc32"
import { deflate, inflate } from "./deflate"
import { type OpenedTechnique, openTechnique, packTechnique } from "./techniqueFile"

/**
 * A technique in the fragment of an address, which a browser sends to no server: `#technique=1.` and, in letters an
 * address may hold, four bytes of checksum followed by the deflated text of its file.
 */
const mark = "#technique="
const linkVersion = 1
const sumBytes = 4

/** Messengers cut longer addresses. */
const mostLettersMade = 16_000
const mostLettersRead = 200_000
const mostBytes = 1024 * 1024

export const isTechniqueLink = (fragment: string) => fragment.startsWith(mark)

/** The fragment that tells a technique; null when it would be too long to travel. */
export async function fragmentOf(technique: Technique): Promise<string | null> {
  const text = new TextEncoder().encode(packTechnique(technique))
  const packed = await deflate(text)
  if (!packed) return null
  const bytes = new Uint8Array(sumBytes + packed.length)
  new DataView(bytes.buffer).setUint32(0, crc32(packed))
  bytes.set(packed, sumBytes)
  const fragment = `${mark}${linkVersion}.${toLetters(bytes)}`
  return fragment.length <= mostLettersMade ? fragment : null
}

/** The technique that a fragment tells, or why there is none. */
export async function readFragment(fragment: string): Promise<OpenedTechnique> {
  if (fragment.length > mostLettersRead) return refuse("too-large-link")
  const [, version, letters] = /^(\d{1,4})\.([\w-]+)$/.exec(fragment.slice(mark.length)) ?? []
  if (!version) return refuse("damaged-link")
  if (Number(version) > linkVersion) return refuse("newer-link")
  const bytes = toBytes(letters)
  return bytes && bytes.length > sumBytes ? unpack(bytes) : refuse("damaged-link")
}

const refuse = (code: "damaged-link" | "newer-link" | "too-large-link"): OpenedTechnique => ({
  ok: false,
  problems: [problemAt([], { code })],
})

/** Nothing is unpacked whose checksum is wrong, and no more than a technique needs. */
async function unpack(bytes: Uint8Array<ArrayBuffer>): Promise<OpenedTechnique> {
  const packed = bytes.subarray(sumBytes)
  if (crc32(packed) !== new DataView(bytes.buffer).getUint32(0)) return refuse("damaged-link")
  try {
    const text = await inflate(packed, mostBytes)
    return text
      ? openTechnique(new TextDecoder("utf-8", { fatal: true }).decode(text))
      : refuse("too-large-link")
  } catch {
    return refuse("damaged-link")
  }
}

/** Base64 with the two letters that mean something else in an address changed, and nothing at its end (RFC 4648, section 5). */
const toLetters = (bytes: Uint8Array) =>
  btoa(Array.from(bytes, (byte) => String.fromCharCode(byte)).join(""))
    .replaceAll("+", "-")
    .replaceAll("/", "_")
    .replaceAll("=", "")

function toBytes(letters: string): Uint8Array<ArrayBuffer> | null {
  try {
    const text = atob(letters.replaceAll("-", "+").replaceAll("_", "/"))
    return Uint8Array.from(text, (letter) => letter.charCodeAt(0))
  } catch {
    return null
  }
}
