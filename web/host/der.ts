/** The few kinds of value of ASN.1 that a certificate is written in, as DER bytes (ITU-T X.690). */

const wrap = (tag: number, content: Buffer): Buffer =>
  Buffer.concat([Buffer.from([tag]), lengthOf(content), content])

function lengthOf({ length }: Buffer): Buffer {
  if (length < 128) return Buffer.from([length])
  const bytes = length < 256 ? [length] : [length >> 8, length & 255]
  return Buffer.from([128 + bytes.length, ...bytes])
}

export const sequence = (...parts: Buffer[]) => wrap(0x30, Buffer.concat(parts))
export const setOf = (...parts: Buffer[]) => wrap(0x31, Buffer.concat(parts))
export const octets = (content: Buffer) => wrap(0x04, content)
export const bits = (content: Buffer, unused = 0) =>
  wrap(0x03, Buffer.concat([Buffer.from([unused]), content]))
export const yes = () => wrap(0x01, Buffer.from([255]))
export const text = (words: string) => wrap(0x0c, Buffer.from(words))

/** A number that is not negative, its bytes from the largest on. */
export function natural(bytes: Buffer): Buffer {
  const first = bytes.findIndex((byte) => byte !== 0)
  const short = first < 0 ? Buffer.from([0]) : bytes.subarray(first)
  return wrap(0x02, short[0] > 127 ? Buffer.concat([Buffer.from([0]), short]) : short)
}

/** A value in a place of its own; `inner` holds another value, else the bytes are the value. */
export const place = (number: number, content: Buffer, inner: boolean) =>
  wrap((inner ? 0xa0 : 0x80) + number, content)

/** A name of the world's tree of names, such as 2.5.4.3. */
export function objectId(dotted: string): Buffer {
  const [first, second, ...rest] = dotted.split(".").map(Number)
  return wrap(0x06, Buffer.from([first * 40 + second, ...rest.flatMap(sevenBits)]))
}

function sevenBits(value: number): number[] {
  const digits = [value & 127]
  for (let rest = value >> 7; rest > 0; rest >>= 7) digits.unshift((rest & 127) | 128)
  return digits
}

/** A moment as GeneralizedTime; RFC 5280 wants the two-digit year of UTCTime before 2050. */
export function moment(date: Date): Buffer {
  const digits = `${date.toISOString().slice(0, 19).replace(/\D/g, "")}Z`
  return date.getUTCFullYear() < 2050
    ? wrap(0x17, Buffer.from(digits.slice(2)))
    : wrap(0x18, Buffer.from(digits))
}
