import type { hairlineForms } from "../../../../geometry/scalp/hairlineLandmarks"
import type { TriedHead } from "../../../../presets/client/headSizes"
import type { MeasureLabel, TechniqueWay } from "../../../../presets/techniques/technique"
import type { HouseWords } from "../../en/techniques/houseWords"
import type { Tools } from "../../tools"
import { draft } from "./draft"
import { frames } from "./frames"
import { others } from "./others"
import { stepWords } from "./stepWords"

/** Techniques: those of the house in words, and the panel that shows them beside the salon's own. */
export const techniques = (t: Tools) => {
  const steps = stepWords(t)
  const house: HouseWords = { ...frames(t, steps), ...others(t, steps) }
  const sections = (count: number) => t.count(count, { one: "# sección", other: "# secciones" })
  return {
    done: {},
    house,
    /** What hair that a technique leaves out is called. */
    leftOut: { veil: "Capa superior", "baby-hairs": "Pelitos de bebé", edges: "Bordes" },
    measures: {
      depth: "Grosor",
      "slice-depth": "Grosor de velo",
      "weave-depth": "Grosor de tejido",
      "backcomb-depth": "Grosor de cardado",
      gap: "Espacio",
      rows: "Filas",
      "rows-a-side": "Filas por lado",
      "slices-a-side": "Velos por lado",
      weaves: "Tejidos",
      "rows-over-forehead": "Filas sobre la frente",
      "rows-on-heavy-side": "Filas en el lado fuerte",
    } satisfies Record<MeasureLabel, string>,
    ways: {
      only: "Tal cual",
      "bright-edge": "Más claro en el borde",
      "soft-edge": "Más suave en el borde",
      "in-turn": "Velo y tejido alternos",
      melted: "Difuminado cardado",
      "parted-left": "Raya a la izquierda",
      "parted-right": "Raya a la derecha",
      "heavy-right": "Fuerte a la derecha",
      "heavy-left": "Fuerte a la izquierda",
    } satisfies Record<TechniqueWay, string>,
    draft: draft(t),

    panel: {
      startFrom: "Partir de una técnica",
      title: "Técnicas",
      own: "Las suyas",
      /** What a technique comes to on this head. */
      comesTo: ({ foils, low, high, minLow, minHigh, withoutRoom }: ComesTo) => {
        const told = [
          t.count(foils, { one: "# papel", other: "# papeles" }),
          t.gramsRange({ low, mid: low, high }),
          `${t.minuteRange(minLow, minHigh)} de colocación`,
        ].join(", ")
        return withoutRoom > 0 ? `${told}; aquí no hay sitio para ${sections(withoutRoom)}` : told
      },
      read: "Pasos y opciones",
      readOf: (name: string) => `Pasos y opciones de ${name}`,
      steps: "Pasos",
      notes: "Notas",
      placeHere: "Colocar en esta cabeza",
      placeOnNew: "Colocar en plan nuevo",
      saveAsOwn: "Guardar como propia",
      saveAsCopy: "Guardar como copia",
      edit: "Renombrar, editar",
      editing: (name: string) => `Editar «${name}»`,
      delete: "Eliminar",
      stepsStay: "Los pasos quedan como están escritos.",
      vary: "Cambiar antes de colocar",
      way: "Variante",
      stitch: "Puntada",
      span: ({ low, high, usual }: { low: string; high: string; usual: string }) =>
        `de ${low} a ${high}, lo usual ${usual}`,
      anotherHead: "Verla en otra cabeza",
      head: "Cabeza",
      hairline: "Contorno",
      thisPlans: "El de este plan",
      heads: { small: "Pequeña, 52 cm", average: "Media", large: "Grande, 62 cm" } satisfies Record<
        TriedHead,
        string
      >,
      hairlines: {
        round: "Redondo",
        straight: "Recto",
        receding: "Con entradas",
        peaked: "En pico",
      } satisfies Record<(typeof hairlineForms)[number], string>,
    },

    own: {
      save: (selected: number) =>
        selected === 0
          ? "Guardar todas las secciones como técnica…"
          : t.count(selected, {
              one: "Guardar la sección elegida como técnica…",
              other: "Guardar # secciones elegidas como técnica…",
            }),
      titleOf: (count: number) => `Una técnica de ${sections(count)}`,
      name: "Nombre",
      nameHint: "Un nombre de al menos una letra",
      aim: "Para qué sirve, en una frase",
      steps: "Pasos, uno por línea",
      notes: "Notas",
      private:
        "Una técnica se puede pasar a otros: no escriba nada de su cliente en ella. Las notas de cada papel se quedan en el plan.",
      saveThis: "Guardar esta técnica",
      saved: (name: string) => `La técnica «${name}» está guardada`,
      savedAlready: (name: string) => `La técnica «${name}» ya estaba guardada`,
      deleted: (name: string) => `La técnica «${name}» se eliminó`,
      deletedNote: (name: string) => `Se eliminó «${name}».`,
      undo: "Deshacer",
      openFile: "Abrir archivo de técnica…",
      file: "Archivo de técnica",
      unreadable: (count: number) =>
        t.count(count, {
          one: "# técnica guardada aquí no la puede leer este Partline, y queda como está.",
          other: "# técnicas guardadas aquí no las puede leer este Partline, y quedan como están.",
        }),
    },

    share: {
      copyLink: "Copiar enlace",
      share: "Compartir…",
      toFile: "Guardar en archivo",
      tooLong: "Demasiado larga para un enlace: guárdela en un archivo y envíelo.",
      copyFromHere: "Copie el enlace de aquí:",
      copied: "El enlace está copiado. Contiene la técnica, nada de su cliente.",
      link: "Enlace",
      byLink: "Una técnica por enlace",
      nameless: "Una técnica sin nombre",
      opened: "Ha abierto una técnica compartida. No se guarda ni cambia nada hasta que usted elija.",
      onTop: ({ plan, count }: { plan: string; count: number }) =>
        `«${plan}» ya tiene ${sections(count)}: colocada en esta cabeza, la técnica se suma a lo que hay.`,
    },
  }
}

type ComesTo = {
  foils: number
  low: number
  high: number
  minLow: number
  minHigh: number
  withoutRoom: number
}

export type TechniquesWords = ReturnType<typeof techniques>
