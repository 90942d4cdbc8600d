import type { SectionNameCode } from "../../../core/document/sectionNameCode"
import type { WorkingNameCode } from "../../../core/placement/workingName"
import type { CommonWords } from "../../en/common/common"
import type { PlacementWords } from "../../en/placement/placement"
import { say } from "../../say"
import type { Tools } from "../../tools"
import { foilCount } from "./counted"

/** How the head is divided before work begins. */
export const working = (t: Tools, names: CommonWords): PlacementWords["working"] => {
  const named = (code: WorkingNameCode) => say<WorkingNameCode>(names.workingName, code)
  const nameOf = (section: SectionNameCode) => say<SectionNameCode>(names.sectionName, section)
  return {
    divide: "Поділити на секції",
    title: (sections) =>
      t.count(sections, { one: "# секція", few: "# секції", many: "# секцій", other: "# секції" }),
    inOrder: "за порядком роботи",
    sectionLines: "Лінії поділу",
    divideFurther: "Ділити далі",
    orDraw: "Або виберіть «Поділити» й проведіть лінію поділу від краю до краю.",
    starts: {
      "four-section": {
        name: "Чотири секції",
        aim: "Від центру лоба до карка й від вуха до вуха через маківку.",
      },
      "four-with-triangle": {
        name: "Чотири секції з трикутником",
        aim: "Те саме, з окремим трикутником над лобом.",
      },
      triangle: {
        name: "Трикутник на верху",
        aim: "Від обох скроневих виїмок до точки на верху.",
      },
      "face-frame-triangle": {
        name: "Трикутник рамки обличчя",
        aim: "Від точки над кожним вухом до точки на верху.",
      },
      profile: { name: "Центральна лінія", aim: "Від центру лоба до центру карка." },
      radial: { name: "Від вуха до вуха", aim: "Від вуха до вуха через маківку." },
      horseshoe: {
        name: "Підкова",
        aim: "Від однієї скроневої виїмки навколо маківки до другої.",
      },
    },

    nameOf: (numeral) => `Назва секції ${numeral}`,
    work: ({ name, by }) => (by < 0 ? `Раніше: ${named(name)}` : `Пізніше: ${named(name)}`),
    select: "Вибрати",
    selectFoils: (name) => `Вибрати фольги: ${named(name)}`,
    numberBySection: "Номери за секціями й боками",
    applyBySection: "Порядок за секціями й боками",
    groupList: "Згрупувати список фольг",
    noFoils: "без фольг",
    foils: (foils) => foilCount(t, foils),
    minutes: (low, high) => t.minuteRange(low, high),

    line: ({ number, lengthMm }) => `Лінія поділу ${t.whole(number)}, ${t.mm(lengthMm)}`,
    removeAll: "Прибрати всі",
    nudges: {
      face: "До обличчя",
      nape: "До карка",
      right: "До правого боку клієнта",
      left: "До лівого боку клієнта",
    },
    mirror: "Віддзеркалити",
    remove: "Прибрати",

    across: "Через лінію поділу",
    crossesInto: (name) => `× заходить: ${named(name)}`,
    crossing: ({ section, home, into, areaCm2 }) =>
      `${t.capital(nameOf(section))} (${named(home)}): ${t.area(areaCm2)} шкіри в секції «${named(into)}».`,
    fixes: {
      trim: { one: "Обрізати тут", all: (count) => `Обрізати тут усі ${t.whole(count)}` },
      split: { one: "Поділити надвоє", all: (count) => `Поділити надвоє всі ${t.whole(count)}` },
      letCross: { one: "Хай буде", all: (count) => `Хай будуть усі ${t.whole(count)}` },
    },
    fixesOf: {
      trim: (section) => `Обрізати тут: ${nameOf(section)}`,
      split: (section) => `Поділити надвоє: ${nameOf(section)}`,
      letCross: (section) => `Хай буде: ${nameOf(section)}`,
    },
  }
}
