import type { whorlTurns } from "../../../../geometry/parting/wornParting"
import type { LandmarkName } from "../../../../geometry/scalp/hairlineLandmarks"
import type { WorkingStartId } from "../../../../presets/placement/workingSections"
import type { Sides } from "../../../core/document/hairlineMoves"
import type { SectionNameCode } from "../../../core/document/sectionNameCode"
import type { WorkingNameCode } from "../../../core/placement/workingName"
import { say } from "../../say"
import type { Tools } from "../../tools"
import { articles } from "../common/articles"
import type { CommonWords } from "../common/common"
import { stack } from "./stack"
import { working } from "./working"

export const hairlineDone = ({ landmarkOf }: CommonWords) => ({
  "move-landmark": ({ name, sides }: { name: LandmarkName; sides: Sides }) =>
    `Déplacer : ${landmarkOf(name, sides)}`,
  "reset-landmark": ({ name, sides }: { name: LandmarkName; sides: Sides }) =>
    `Remettre : ${landmarkOf(name, sides)}`,
  "reset-hairline": "Remettre la lisière",
  "set-usual-parting": "Noter la raie habituelle",
  "clear-usual-parting": "Effacer la raie habituelle",
  "set-whorl": ({ turns }: { turns: (typeof whorlTurns)[number] }) =>
    ({
      clockwise: "Noter l’épi du vertex : horaire",
      anticlockwise: "Noter l’épi du vertex : antihoraire",
      none: "Noter l’épi du vertex : aucun",
    })[turns],
  "clear-whorl": "Effacer l’épi du vertex",
  "move-whorl": "Déplacer l’épi du vertex",
})

export const workingDone = (t: Tools, names: CommonWords) => {
  const { workingName } = names
  const { the } = articles(t, names)
  const { starts } = working(t, names)
  const nameOf = (sections: readonly SectionNameCode[]) =>
    sections.length === 1
      ? the(sections[0])
      : t.count(sections.length, { one: "# section", other: "# sections" })
  const named = (name: WorkingNameCode) => say<WorkingNameCode>(workingName, name)
  return {
    divide: ({ start }: { start: WorkingStartId }) => `Diviser : ${starts[start].name}`,
    "draw-section-line": "Tracer une ligne de section",
    "move-section-line": "Déplacer la ligne de section",
    "bend-section-line": "Courber la ligne de section",
    "nudge-section-line": ({ way }: { way: "face" | "nape" | "left" | "right" }) => lineNudges[way],
    "mirror-section-line": "Ligne de section en miroir",
    "remove-section-line": ({ more }: { more: number }) =>
      more === 0
        ? "Retirer la ligne de section"
        : `Retirer la ligne de section et ${t.count(more, { one: "# qui y finissait", other: "# qui y finissaient" })}`,
    "remove-section-lines": "Retirer toutes les lignes de section",
    "number-by-section": "Numéroter par section et côté",
    "apply-by-section": "Poser par section et côté",
    "rename-section": ({ name, to }: { name: WorkingNameCode; to: string }) =>
      to ? `Renommer « ${named(name)} » en « ${to} »` : `Renommer « ${named(name)} »`,
    "work-earlier": ({ name }: { name: WorkingNameCode }) => `Travailler plus tôt : ${named(name)}`,
    "work-later": ({ name }: { name: WorkingNameCode }) => `Travailler plus tard : ${named(name)}`,
    "trim-to-section": ({ sections }: { sections: readonly SectionNameCode[] }) =>
      `Limiter ${nameOf(sections)} à la section de la tête`,
    "split-at-line": ({ sections }: { sections: readonly SectionNameCode[] }) =>
      `Diviser ${nameOf(sections)} à la ligne de section`,
    "let-cross": ({ sections }: { sections: readonly SectionNameCode[] }) =>
      `Laisser ${nameOf(sections)} traverser la ligne de section`,
  }
}

const lineNudges = {
  face: "Déplacer la ligne de section vers le visage",
  nape: "Déplacer la ligne de section vers la nuque",
  left: "Déplacer la ligne de section vers la gauche de la personne",
  right: "Déplacer la ligne de section vers la droite de la personne",
}

export const stackDone = (t: Tools, names: CommonWords) => {
  const { total, title } = stack(t, names)
  const { the } = articles(t, names)
  return {
    /** While the stack is being chosen. */
    "stack-behind": ({ section }: { section: SectionNameCode }) => title(section),
    stack: ({ section, each, sides, foils, sections }: Stacked) => {
      const behind = `Empiler ${t.whole(each)} derrière ${the(section)}`
      return sides === 2 ? `${behind} de chaque côté : ${total({ foils, sections })}` : behind
    },
  }
}

type Stacked = { section: SectionNameCode; each: number; sides: 1 | 2; foils: number; sections: number }
