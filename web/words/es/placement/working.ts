import type { WorkingStartId } from "../../../../presets/placement/workingSections"
import type { SectionNameCode } from "../../../core/document/sectionNameCode"
import type { WorkingNameCode } from "../../../core/placement/workingName"
import { say } from "../../say"
import type { Tools } from "../../tools"
import { type CommonWords, theSection } from "../common/common"

/** How the head is divided before work begins. */
export const working = (t: Tools, { workingName }: CommonWords) => {
  const named = (code: WorkingNameCode) => `«${say<WorkingNameCode>(workingName, code)}»`
  return {
    divide: "Dividir en secciones",
    title: (sections: number) => t.count(sections, { one: "# sección", other: "# secciones" }),
    inOrder: "en orden de trabajo",
    sectionLines: "Líneas de división",
    divideFurther: "Dividir más",
    orDraw: "O elija «Dividir» y trace una línea de división de borde a borde.",
    starts: {
      "four-section": {
        name: "Cuatro secciones",
        aim: "Del centro frontal a la nuca, y de oreja a oreja por la coronilla.",
      },
      "four-with-triangle": {
        name: "Cuatro secciones con triángulo",
        aim: "Igual, con un triángulo sobre la frente aparte.",
      },
      triangle: { name: "Triángulo superior", aim: "De ambas entradas a un punto en lo alto." },
      "face-frame-triangle": {
        name: "Triángulo del rostro",
        aim: "De encima de cada oreja a un punto en lo alto.",
      },
      profile: { name: "Línea central", aim: "Del centro frontal al centro de la nuca." },
      radial: { name: "Oreja a oreja", aim: "De oreja a oreja por la coronilla." },
      horseshoe: { name: "Herradura", aim: "De una entrada a la otra, rodeando la coronilla." },
    } satisfies Record<WorkingStartId, { name: string; aim: string }>,

    nameOf: (numeral: string) => `Nombre de la sección ${numeral}`,
    work: ({ name, by }: { name: WorkingNameCode; by: -1 | 1 }) =>
      by < 0 ? `Trabajar antes ${named(name)}` : `Trabajar después ${named(name)}`,
    select: "Elegir",
    selectFoils: (name: WorkingNameCode) => `Elegir los papeles de ${named(name)}`,
    numberBySection: "Numerar por sección y lado",
    applyBySection: "Aplicar por sección y lado",
    groupList: "Agrupar la lista de papeles",
    noFoils: "sin papeles",
    foils: (foils: number) => t.count(foils, { one: "# papel", other: "# papeles" }),
    minutes: (low: number, high: number) => t.minuteRange(low, high),

    line: ({ number, lengthMm }: { number: number; lengthMm: number }) =>
      `Línea de división ${t.whole(number)}, ${t.mm(lengthMm)}`,
    removeAll: "Quitar todas",
    nudges: {
      face: "Hacia la cara",
      nape: "Hacia la nuca",
      right: "A la der. de cliente",
      left: "A la izq. de cliente",
    },
    mirror: "Reflejar",
    remove: "Quitar",

    across: "Cruza una línea de división",
    crossesInto: (name: WorkingNameCode) => `× entra en ${named(name)}`,
    crossing: ({ section, home, into, areaCm2 }: Crossing) =>
      `${t.capital(theSection(section))}, de ${named(home)}: ${t.area(areaCm2)} de su cuero cabelludo quedan en ${named(into)}.`,
    fixes: {
      trim: { one: "Recortar aquí", all: (count: number) => `Recortar las ${t.whole(count)} aquí` },
      split: { one: "Dividir en dos", all: (count: number) => `Dividir las ${t.whole(count)} en dos` },
      letCross: { one: "Dejar así", all: (count: number) => `Dejar así las ${t.whole(count)}` },
    },
    /** The same for who hears the page, with the section that is meant. */
    fixesOf: {
      trim: (section: SectionNameCode) => `Recortar ${theSection(section)} aquí`,
      split: (section: SectionNameCode) => `Dividir ${theSection(section)} en dos`,
      letCross: (section: SectionNameCode) => `Dejar así ${theSection(section)}`,
    },
  }
}

type Crossing = { section: SectionNameCode; home: WorkingNameCode; into: WorkingNameCode; areaCm2: number }
