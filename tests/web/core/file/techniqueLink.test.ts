import { deflateRawSync } from "node:zlib"
import { describe, expect, it } from "vitest"
import { crc32 } from "../../../../web/core/file/crc32"
import { packTechnique } from "../../../../web/core/file/techniqueFile"
import { fragmentOf, isTechniqueLink, readFragment } from "../../../../web/core/file/techniqueLink"
import { usualTechnique, usualTechniques } from "../../../support/techniques"
import { en } from "../../../support/words"

const frame = usualTechnique("bright-frame")
const damaged = /cut short or altered on its way/
const newer = /newer Partline/
const tooLarge = /more than any technique needs/

async function fragment() {
  const made = await fragmentOf(frame)
  if (!made) throw new Error("too long")
  return made
}

async function refusal(link: string) {
  const opened = await readFragment(link)
  return opened.ok ? "opened" : en.problems.clause(opened.problems[0])
}

/** A link as a stranger would forge it: any text, with the checksum that belongs to it. */
function forged(text: string | Buffer) {
  const packed = deflateRawSync(text)
  const sum = Buffer.alloc(4)
  sum.writeUInt32BE(crc32(packed))
  return `#technique=1.${Buffer.concat([sum, packed]).toString("base64url")}`
}

describe("the checksum", () => {
  it("is the one of the standard: CBF43926 for the digits 1 to 9 (ISO 3309's check value)", () => {
    expect(crc32(new TextEncoder().encode("123456789"))).toBe(0xcbf43926)
  })
})

describe("a technique in a link", () => {
  it.each(usualTechniques)("comes out as it went in: $name", async (technique) => {
    const link = await fragmentOf(technique)
    expect(link).toMatch(/^#technique=1\.[\w-]+$/)
    expect(link?.length).toBeLessThan(3000)
    expect(isTechniqueLink(link ?? "")).toBe(true)
    expect(await readFragment(link ?? "")).toEqual({ ok: true, technique })
  })

  it("carries words of any script", async () => {
    const named = { ...frame, name: "Крона ✂️", notes: "头发\nशीर्ष", steps: ["Разделите."] }
    expect(await readFragment((await fragmentOf(named)) ?? "")).toEqual({ ok: true, technique: named })
  })

  it("is none when it would be too long to travel", async () => {
    const notes = Array.from({ length: 2000 }, (_, i) =>
      String.fromCharCode(0x4e00 + ((i * 7919) % 20_000)),
    ).join("")
    const spots = Array.from({ length: 200 }, (_, i) => ({
      landmark: ((i * 7919) % 1400) / 100 - 7 + i / 1e5,
      behindMm: ((i * 104729) % 19_000) / 100 + i / 1e5,
    }))
    const [section] = frame.sections
    const sections = Array.from({ length: 20 }, (_, i) => ({
      ...section,
      parting: {
        run: "through" as const,
        spots: spots.map(({ landmark, behindMm }) => ({ landmark, behindMm: (behindMm * (i + 3.7)) % 200 })),
      },
    }))
    expect(await fragmentOf({ ...frame, notes, sections })).toBeNull()
  })
})

describe("a link that did not arrive whole", () => {
  it("is refused wherever it was cut", async () => {
    const whole = await fragment()
    for (const share of [0.1, 0.4, 0.7, 0.95, 0.999])
      expect(await refusal(whole.slice(0, Math.floor(whole.length * share)))).toMatch(damaged)
    expect(await refusal("#technique=")).toMatch(damaged)
    expect(await refusal("#technique=1.AAAA")).toMatch(damaged)
  })

  it("is refused whichever letter was altered", async () => {
    const whole = await fragment()
    const start = whole.indexOf(".") + 1
    for (let i = start; i < whole.length; i += 11) {
      const altered = whole.slice(0, i) + (whole[i] === "A" ? "B" : "A") + whole.slice(i + 1)
      expect(await refusal(altered)).toMatch(damaged)
    }
    expect(await refusal(`${whole}%20more`)).toMatch(damaged)
    expect(await refusal(`${whole}AAAA`)).toMatch(damaged)
  })
})

describe("a link from elsewhere", () => {
  it("is refused when its way of writing is newer, or the technique in it is", async () => {
    const whole = await fragment()
    expect(await refusal(whole.replace("=1.", "=2."))).toMatch(newer)
    expect(await refusal(forged(packTechnique(frame).replace('"version":1', '"version":9')))).toMatch(newer)
  })

  it("is refused before it is unpacked when it is longer than any made here", async () => {
    expect(await refusal(`#technique=1.${"A".repeat(300_000)}`)).toMatch(tooLarge)
  })

  it("is refused as soon as it unpacks to more than a technique needs: 100 MB of nothing in 100 kB", async () => {
    const bomb = forged(Buffer.alloc(100 * 1024 * 1024))
    expect(bomb.length).toBeLessThan(200_000)
    const before = process.memoryUsage().arrayBuffers
    expect(await refusal(bomb)).toMatch(tooLarge)
    expect(process.memoryUsage().arrayBuffers - before).toBeLessThan(20 * 1024 * 1024)
  })

  it("is refused field by field like a file", async () => {
    expect(await refusal(forged('{"kind":"partline-plan","version":1}'))).toMatch(/not a Partline technique/)
    expect(await refusal(forged("<script>alert(1)</script>"))).toMatch(/not a technique/)
    expect(await refusal(forged(Buffer.from([0xff, 0xfe, 0x80])))).toMatch(damaged)
    expect(await refusal(forged(packTechnique(frame).replace('"start":3', '"start":3000')))).toMatch(
      /section 1, depth at the start: expected 0.5 to 60 mm/,
    )
    expect(
      await refusal(forged(packTechnique(frame).replace('"aim":', '"__proto__":{"x":1},"aim":'))),
    ).toMatch(/not a field of a technique|opened/)
  })
})
