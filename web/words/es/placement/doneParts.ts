import type { whorlTurns } from "../../../../geometry/parting/wornParting"
import type { LandmarkName } from "../../../../geometry/scalp/hairlineLandmarks"
import type { WorkingStartId } from "../../../../presets/placement/workingSections"
import type { Sides } from "../../../core/document/hairlineMoves"
import type { SectionNameCode } from "../../../core/document/sectionNameCode"
import type { WorkingNameCode } from "../../../core/placement/workingName"
import { say } from "../../say"
import type { Tools } from "../../tools"
import { type CommonWords, ofSection, theSection } from "../common/common"
import { stack } from "./stack"
import { working } from "./working"

export const hairlineDone = ({ landmarkOf }: CommonWords) => ({
  "move-landmark": ({ name, sides }: { name: LandmarkName; sides: Sides }) =>
    `Mover: ${landmarkOf(name, sides)}`,
  "reset-landmark": ({ name, sides }: { name: LandmarkName; sides: Sides }) =>
    `Restablecer: ${landmarkOf(name, sides)}`,
  "reset-hairline": "Restablecer el contorno",
  "set-usual-parting": "Indicar la raya habitual",
  "clear-usual-parting": "Borrar la raya habitual",
  "set-whorl": ({ turns }: { turns: (typeof whorlTurns)[number] }) =>
    ({
      clockwise: "Indicar el remolino: horario",
      anticlockwise: "Indicar el remolino: antihorario",
      none: "Indicar el remolino: ninguno",
    })[turns],
  "clear-whorl": "Borrar el remolino",
  "move-whorl": "Mover el remolino",
})

export const workingDone = (t: Tools, names: CommonWords) => {
  const { workingName } = names
  const { starts } = working(t, names)
  const nameOf = (sections: readonly SectionNameCode[]) =>
    sections.length === 1
      ? theSection(sections[0])
      : t.count(sections.length, { one: "# sección", other: "# secciones" })
  const named = (name: WorkingNameCode) => `«${say<WorkingNameCode>(workingName, name)}»`
  return {
    divide: ({ start }: { start: WorkingStartId }) => `Dividir: ${starts[start].name}`,
    "draw-section-line": "Dibujar una línea de división",
    "move-section-line": "Mover la línea de división",
    "bend-section-line": "Curvar la línea de división",
    "nudge-section-line": ({ way }: { way: "face" | "nape" | "left" | "right" }) => lineNudges[way],
    "mirror-section-line": "Reflejar la línea de división",
    "remove-section-line": ({ more }: { more: number }) =>
      more === 0
        ? "Quitar la línea de división"
        : t.count(more, {
            one: "Quitar la línea de división y # que acababa en ella",
            other: "Quitar la línea de división y # que acababan en ella",
          }),
    "remove-section-lines": "Quitar todas las líneas de división",
    "number-by-section": "Numerar por sección y lado",
    "apply-by-section": "Aplicar por sección y lado",
    "rename-section": ({ name, to }: { name: WorkingNameCode; to: string }) =>
      to ? `Renombrar ${named(name)} como «${to}»` : `Renombrar ${named(name)}`,
    "work-earlier": ({ name }: { name: WorkingNameCode }) => `Trabajar antes ${named(name)}`,
    "work-later": ({ name }: { name: WorkingNameCode }) => `Trabajar después ${named(name)}`,
    "trim-to-section": ({ sections }: { sections: readonly SectionNameCode[] }) =>
      `Recortar ${nameOf(sections)} a la sección de la cabeza`,
    "split-at-line": ({ sections }: { sections: readonly SectionNameCode[] }) =>
      `Dividir ${nameOf(sections)} por la línea de división`,
    "let-cross": ({ sections }: { sections: readonly SectionNameCode[] }) =>
      `Dejar que cruce la línea de división: ${nameOf(sections)}`,
  }
}

const lineNudges = {
  face: "Mover la línea de división hacia la cara",
  nape: "Mover la línea de división hacia la nuca",
  left: "Mover la línea de división a la izquierda de su cliente",
  right: "Mover la línea de división a la derecha de su cliente",
}

export const stackDone = (t: Tools, names: CommonWords) => {
  const { total, title } = stack(t, names)
  return {
    /** While the stack is being chosen. */
    "stack-behind": ({ section }: { section: SectionNameCode }) => title(section),
    stack: ({ section, each, sides, foils, sections }: Stacked) => {
      const behind = `Apilar ${t.whole(each)} detrás ${ofSection(section)}`
      return sides === 2 ? `${behind} en cada lado: ${total({ foils, sections })}` : behind
    },
  }
}

type Stacked = { section: SectionNameCode; each: number; sides: 1 | 2; foils: number; sections: number }
