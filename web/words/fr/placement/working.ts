import type { WorkingStartId } from "../../../../presets/placement/workingSections"
import type { SectionNameCode } from "../../../core/document/sectionNameCode"
import type { WorkingNameCode } from "../../../core/placement/workingName"
import { say } from "../../say"
import type { Tools } from "../../tools"
import { articles } from "../common/articles"
import type { CommonWords } from "../common/common"

/** How the head is divided before work begins. */
export const working = (t: Tools, names: CommonWords) => {
  const { workingName } = names
  const { the } = articles(t, names)
  const named = (code: WorkingNameCode) => say<WorkingNameCode>(workingName, code)
  return {
    divide: "Diviser en sections",
    title: (sections: number) => t.count(sections, { one: "# section", other: "# sections" }),
    inOrder: "dans l’ordre de travail",
    sectionLines: "Lignes de section",
    divideFurther: "Diviser encore",
    orDraw: "Ou choisissez « Diviser » et tracez une ligne de section d’un bord à l’autre.",
    starts: {
      "four-section": {
        name: "Quatre sections",
        aim: "Du milieu du front à la nuque, et d’oreille à oreille par le vertex.",
      },
      "four-with-triangle": {
        name: "Quatre sections et triangle",
        aim: "De même, avec un triangle au-dessus du front gardé à part.",
      },
      triangle: { name: "Triangle du dessus", aim: "Des deux golfes à un point du dessus." },
      "face-frame-triangle": {
        name: "Triangle du contour",
        aim: "D’au-dessus de chaque oreille à un point du dessus.",
      },
      profile: { name: "Ligne médiane", aim: "Du milieu du front au milieu de nuque." },
      radial: { name: "Oreille à oreille", aim: "D’oreille à oreille par le vertex." },
      horseshoe: { name: "Fer à cheval", aim: "D’un golfe à l’autre en contournant le vertex." },
    } satisfies Record<WorkingStartId, { name: string; aim: string }>,

    nameOf: (numeral: string) => `Nom de la section ${numeral}`,
    work: ({ name, by }: { name: WorkingNameCode; by: -1 | 1 }) =>
      by < 0 ? `Travailler plus tôt : ${named(name)}` : `Travailler plus tard : ${named(name)}`,
    select: "Choisir",
    selectFoils: (name: WorkingNameCode) => `Choisir les papillotes : ${named(name)}`,
    numberBySection: "Numéroter par section et côté",
    applyBySection: "Poser par section et côté",
    groupList: "Grouper la liste",
    noFoils: "sans papillote",
    foils: (foils: number) => t.count(foils, { one: "# papillote", other: "# papillotes" }),
    minutes: (low: number, high: number) => t.minuteRange(low, high),

    line: ({ number, lengthMm }: { number: number; lengthMm: number }) =>
      `Ligne de section ${t.whole(number)}, ${t.mm(lengthMm)}`,
    removeAll: "Tout retirer",
    nudges: {
      face: "Vers le visage",
      nape: "Vers la nuque",
      right: "Vers sa droite",
      left: "Vers sa gauche",
    },
    mirror: "Miroir",
    remove: "Retirer",

    across: "À cheval sur une ligne",
    crossesInto: (name: WorkingNameCode) => `× déborde : ${named(name)}`,
    crossing: ({ section, home, into, areaCm2 }: Crossing) =>
      `${t.capital(the(section))} (${named(home)}) : ${t.area(areaCm2)} de son cuir chevelu se trouvent en « ${named(into)} ».`,
    fixes: {
      trim: { one: "Limiter ici", all: (count: number) => `Limiter les ${t.whole(count)} ici` },
      split: { one: "Diviser en deux", all: (count: number) => `Diviser les ${t.whole(count)} en deux` },
      letCross: { one: "Laisser ainsi", all: (count: number) => `Laisser ainsi les ${t.whole(count)}` },
    },
    /** The same for who hears the page, with the section that is meant. */
    fixesOf: {
      trim: (section: SectionNameCode) => `Limiter ${the(section)} ici`,
      split: (section: SectionNameCode) => `Diviser ${the(section)} en deux`,
      letCross: (section: SectionNameCode) => `Laisser ${the(section)} ainsi`,
    },
  }
}

type Crossing = { section: SectionNameCode; home: WorkingNameCode; into: WorkingNameCode; areaCm2: number }
