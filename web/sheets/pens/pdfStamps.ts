import type { StampItem, StampPart } from "./page"
import { fillInk, point, strokeInk, traced } from "./pdfOperators"

/** What the library keeps for its own plug-ins, as far as stamps need it. */
export type StampInternal = {
  write(...words: unknown[]): void
  events: { subscribe(topic: string, listener: () => void): void }
  newObjectDeferred(): number
  newObjectDeferredBegin(id: number, doOutput?: boolean): void
  putStream(stream: {
    data: string
    additionalKeyValues: { key: string; value: string }[]
    objectId: number
  }): void
}

type Stamp = { name: string; parts: readonly StampPart[]; id: number }

/** Larger than any sheet either way, points. */
const box = "[-4000 -4000 4000 4000]"

/** Drawings kept once in the file, as form XObjects (ISO 32000-1, 8.10), however often they are printed. */
export function stampsOf(internal: StampInternal) {
  const stamps = new Map<readonly StampPart[], Stamp>()

  const stampOf = (parts: readonly StampPart[]): Stamp => {
    const known = stamps.get(parts)
    if (known) return known
    for (const part of parts) if (part.kind === "stamp") stampOf(part.parts)
    const stamp = { name: `St${stamps.size + 1}`, parts, id: 0 }
    stamps.set(parts, stamp)
    return stamp
  }

  internal.events.subscribe("putResources", () => {
    for (const stamp of stamps.values()) stamp.id = internal.newObjectDeferred()
    for (const { id, parts } of stamps.values()) {
      const inside = parts.flatMap((part) => (part.kind === "stamp" ? stampOf(part.parts) : []))
      const named = inside.map(({ name, id: inner }) => `/${name} ${inner} 0 R`).join(" ")
      internal.newObjectDeferredBegin(id, true)
      internal.putStream({
        data: ["1 J 1 j", ...parts.map((part) => operators(part, stampOf))].join("\n"),
        additionalKeyValues: [
          { key: "Type", value: "/XObject" },
          { key: "Subtype", value: "/Form" },
          { key: "BBox", value: box },
          { key: "Resources", value: `<< /XObject << ${named} >> >>` },
        ],
        objectId: id,
      })
      internal.write("endobj")
    }
  })
  internal.events.subscribe("putXobjectDict", () => {
    for (const { name, id } of stamps.values()) internal.write(`/${name} ${id} 0 R`)
  })

  return {
    /** Print a stamp on the page at hand, of a height in mm. */
    print: (stamp: StampItem, pageHeightMm: number) =>
      internal.write(placed(stampOf(stamp.parts).name, [stamp.at[0], stamp.at[1] - pageHeightMm])),
  }
}

const placed = (name: string, at: readonly [number, number]) => `q 1 0 0 1 ${point(at)} cm /${name} Do Q`

function operators(part: StampPart, stampOf: (parts: readonly StampPart[]) => Stamp): string {
  switch (part.kind) {
    case "stamp":
      return placed(stampOf(part.parts).name, part.at)
    case "area":
      return `${fillInk(part.ink)} ${traced(part.path)} h f`
    case "lines":
      return `${strokeInk(part.ink, part)} ${part.paths.map((path) => traced(path) + (part.closed ? " h" : "")).join(" ")} S`
    case "hatch":
      return `${strokeInk(part.ink, part)} ${part.segments.map((segment) => traced(segment)).join(" ")} S`
  }
}
