import type { SectionKind } from "../../../../geometry/section/section"
import type { SectionNameCode } from "../../../core/document/sectionNameCode"
import type { Tools } from "../../tools"
import { type CommonWords, ofSection } from "../common/common"

/** So many more foils behind one. */
export const stack = (t: Tools, { kinds }: CommonWords) => {
  return {
    title: (section: SectionNameCode) => `Apilar detrás ${ofSection(section)}`,
    allFit: (asked: number) => t.count(asked, { one: "Cabe.", other: "Caben los #." }),
    touching: "Espacio 0 mm: quedan espalda con espalda y comparten cabellos en los bordes. 1 mm los separa.",
    bothSides: ({ foils, sections }: { foils: number; sections: number }) =>
      `En ambos lados, por parejas: ${total({ foils, sections })} en total.`,
    place: ({ fits, asked, sides }: { fits: number; asked: number; sides: 1 | 2 }) => {
      const those =
        fits < asked && fits > 0
          ? t.count(fits, { one: "Colocar el único que cabe", other: "Colocar los # que caben" })
          : `Colocar ${t.whole(fits)}`
      return sides === 2 ? `${those} en cada lado` : those
    },
    cancelled: "Pila cancelada",
    total,
    more: "Cuántos más",
    bySliding: "Cuántos más, deslizando",
    oneMore: "Uno más",
    oneFewer: "Uno menos",
    handle: "Cuántos más, desde la última raya",
    handleValue: ({ shown, sides }: { shown: number; sides: 1 | 2 }) =>
      sides === 2
        ? t.count(shown, { one: "# más en cada lado", other: "# más en cada lado" })
        : t.count(shown, { one: "# más", other: "# más" }),
    handleName: ({ shown, sides }: { shown: number; sides: 1 | 2 }) =>
      sides === 2 ? `${t.whole(shown)} + ${t.whole(shown)} más` : `${t.whole(shown)} más`,

    gap: "Espacio",
    depthOfEach: "Grosor de cada uno",
    depthOfKind: (kind: SectionKind) => `Grosor de cada ${kinds[kind]}`,
    follow: "Seguir",
    follows: { hairline: "El contorno", parting: "Esta raya" },
    eachSecond: "Uno sí, uno no",
    inLine: "En línea",
    brick: "En ladrillo",
    shift: "Desplazar por la raya",
    alternate: "Alternar con",
    allTheSame: "Todos iguales",
    alternateKind: (kind: SectionKind) => t.capital(kinds[kind]),
  }

  function total({ foils, sections }: { foils: number; sections: number }) {
    if (foils === sections) return t.count(foils, { one: "# papel", other: "# papeles" })
    const all = t.count(sections, { one: "# sección", other: "# secciones" })
    return foils === 0 ? all : t.count(foils, { one: `${all}, # con papel`, other: `${all}, # con papel` })
  }
}
