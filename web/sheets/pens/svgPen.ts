import { escaped } from "../../drawing/escaped"
import { mmPerPt, type Path, type StampPart } from "./page"
import type { Pen, PenStyle } from "./pen"
import { systemFamily, weightNumbers } from "./systemLetters"

const anchors = { left: "start", center: "middle", right: "end" } as const

/** Drawings that are written already, by the names they have in the document. */
export type Stamps = Map<readonly StampPart[], string>

/**
 * A pen that writes SVG in mm. Presentation attributes only, so it shows under a policy that forbids inline styles.
 * `prefix` keeps the clip names of one drawing apart from those of another in the same document.
 */
export function svgPen(prefix: string, stamps: Stamps = new Map()): { pen: Pen; markup: () => string } {
  const parts: string[] = []
  const open: number[] = []
  let clips = 0
  let style: PenStyle = { ink: "#000000" }
  const pen: Pen = {
    style(next) {
      style = next
    },
    path(paths, paint) {
      parts.push(
        `<path d="${paths.map((path) => pathData(path, paint !== "stroke")).join("")}" ${inks(style, paint)}/>`,
      )
    },
    clip(path) {
      const name = `${prefix}-${++clips}`
      parts.push(
        `<clipPath id="${name}"><path d="${pathData(path, true)}"/></clipPath><g clip-path="url(#${name})">`,
      )
      open[open.length - 1]++
    },
    text(text, [x, y], align) {
      const { weight, sizePt } = style.type ?? { weight: "regular", sizePt: 11 }
      parts.push(
        `<text x="${short(x)}" y="${short(y)}" font-size="${short(sizePt * mmPerPt)}" font-weight="${weightNumbers[weight]}"` +
          ` font-family="Partline Sans" text-anchor="${anchors[align]}" fill="${style.ink}">${escaped(text)}</text>`,
      )
    },
    run({ text, at: [x, y], sizePt, weight, ink }) {
      parts.push(
        `<text x="${short(x)}" y="${short(y)}" font-size="${short(sizePt * mmPerPt)}" font-weight="${weightNumbers[weight]}"` +
          ` font-family="${systemFamily}" direction="ltr" fill="${ink}">${escaped(text)}</text>`,
      )
    },
    stamp({ parts: kept, at: [x, y] }, draw) {
      const name = stamps.get(kept) ?? `${prefix}-stamp-${stamps.size + 1}`
      if (!stamps.has(kept)) {
        stamps.set(kept, name)
        parts.push(`<defs><g id="${name}">`)
        draw()
        parts.push("</g></defs>")
      }
      parts.push(`<use href="#${name}" x="${short(x)}" y="${short(y)}"/>`)
    },
    save: () => void open.push(0),
    restore: () => void parts.push("</g>".repeat(open.pop() ?? 0)),
  }
  return { pen, markup: () => parts.join("\n") }
}

function inks({ ink, line }: PenStyle, paint: string): string {
  if (paint === "fill" || !line) return `fill="${ink}"`
  const dash = line.dashPt.length
    ? ` stroke-dasharray="${line.dashPt.map((pt) => short(pt * mmPerPt)).join(" ")}"`
    : ""
  return (
    `fill="none" stroke="${ink}" stroke-width="${short(line.weightPt * mmPerPt)}"` +
    ` stroke-linecap="round" stroke-linejoin="round"${dash}`
  )
}

const pathData = (path: Path, closed: boolean) =>
  `M${path.map(([x, y]) => `${short(x)} ${short(y)}`).join("L")}${closed ? "Z" : ""}`

const short = (mm: number) => String(Math.round(mm * 1000) / 1000)
