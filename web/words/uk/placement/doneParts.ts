import type { SectionNameCode } from "../../../core/document/sectionNameCode"
import type { WorkingNameCode } from "../../../core/placement/workingName"
import type { CommonWords } from "../../en/common/common"
import type { PlacementWords } from "../../en/placement/placement"
import { say } from "../../say"
import type { Tools } from "../../tools"
import { sectionCount } from "./counted"
import { stack } from "./stack"
import { working } from "./working"

type Done = PlacementWords["done"]

type HairlineDone =
  | "move-landmark"
  | "reset-landmark"
  | "reset-hairline"
  | "set-usual-parting"
  | "clear-usual-parting"
  | "set-whorl"
  | "clear-whorl"
  | "move-whorl"

export const hairlineDone = ({ landmarkOf }: CommonWords): Pick<Done, HairlineDone> => ({
  "move-landmark": ({ name, sides }) => `Переміщення: ${landmarkOf(name, sides)}`,
  "reset-landmark": ({ name, sides }) => `Скидання: ${landmarkOf(name, sides)}`,
  "reset-hairline": "Скидання лінії росту",
  "set-usual-parting": "Звичний проділ",
  "clear-usual-parting": "Очищення звичного проділу",
  "set-whorl": ({ turns }) =>
    ({
      clockwise: "Вихор маківки: за годинниковою стрілкою",
      anticlockwise: "Вихор маківки: проти годинникової стрілки",
      none: "Вихор маківки: немає",
    })[turns],
  "clear-whorl": "Очищення: вихор маківки",
  "move-whorl": "Переміщення: вихор маківки",
})

type WorkingDone =
  | "divide"
  | "draw-section-line"
  | "move-section-line"
  | "bend-section-line"
  | "nudge-section-line"
  | "mirror-section-line"
  | "remove-section-line"
  | "remove-section-lines"
  | "number-by-section"
  | "apply-by-section"
  | "rename-section"
  | "work-earlier"
  | "work-later"
  | "trim-to-section"
  | "split-at-line"
  | "let-cross"

export const workingDone = (t: Tools, names: CommonWords): Pick<Done, WorkingDone> => {
  const { sectionName, workingName } = names
  const { starts } = working(t, names)
  const nameOf = (sections: readonly SectionNameCode[]) =>
    sections.length === 1 ? say<SectionNameCode>(sectionName, sections[0]) : sectionCount(t, sections.length)
  const named = (name: WorkingNameCode) => say<WorkingNameCode>(workingName, name)
  return {
    divide: ({ start }) => `Поділ: ${starts[start].name}`,
    "draw-section-line": "Нова лінія поділу",
    "move-section-line": "Переміщення лінії поділу",
    "bend-section-line": "Вигин лінії поділу",
    "nudge-section-line": ({ way }) => lineNudges[way],
    "mirror-section-line": "Віддзеркалення лінії поділу",
    "remove-section-line": ({ more }) =>
      more === 0
        ? "Вилучення лінії поділу"
        : `Вилучення лінії поділу й тих, що на ній закінчувалися: ${t.whole(more)}`,
    "remove-section-lines": "Вилучення всіх ліній поділу",
    "number-by-section": "Номери за секціями й боками",
    "apply-by-section": "Порядок за секціями й боками",
    "rename-section": ({ name, to }) =>
      to ? `Нова назва: ${named(name)} → ${to}` : `Нова назва: ${named(name)}`,
    "work-earlier": ({ name }) => `Раніше: ${named(name)}`,
    "work-later": ({ name }) => `Пізніше: ${named(name)}`,
    "trim-to-section": ({ sections }) => `Обрізання за секцією голови: ${nameOf(sections)}`,
    "split-at-line": ({ sections }) => `Поділ за лінією поділу: ${nameOf(sections)}`,
    "let-cross": ({ sections }) => `Через лінію поділу: ${nameOf(sections)}`,
  }
}

const lineNudges = {
  face: "Лінія поділу ближче до обличчя",
  nape: "Лінія поділу ближче до карка",
  left: "Лінія поділу до лівого боку клієнта",
  right: "Лінія поділу до правого боку клієнта",
}

export const stackDone = (t: Tools, names: CommonWords): Pick<Done, "stack-behind" | "stack"> => {
  const { total, title } = stack(t, names)
  return {
    "stack-behind": ({ section }) => title(section),
    stack: ({ section, each, sides, foils, sections }) => {
      const behind = `${title(section)}, ще ${t.whole(each)}`
      return sides === 2 ? `${behind} на кожному боці: ${total({ foils, sections })}` : behind
    },
  }
}
