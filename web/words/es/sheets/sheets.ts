import type { PaperName } from "../../../../presets/sheets/papers"
import type { SheetName } from "../../../../presets/sheets/sheetNames"
import type { Names } from "../../en/sheets/names"
import type { Tools } from "../../tools"
import { cards } from "./cards"
import { handout } from "./handout"
import { lesson } from "./lesson"
import { map } from "./map"
import { views } from "./views"

/** Paper, and the screen it is chosen on. */
export const sheets = (t: Tools, common: Names) => ({
  done: {
    lesson: "Cambiar el texto de la ficha",
    "lesson-as-drawn": "Ficha: volver a lo que dice el plan",
  },
  screen: screen(t),

  /** As each sheet is chosen. */
  names: {
    placement: "Mapa de colocación",
    technique: "Hoja de técnica",
    "take-home": "Para casa",
    record: "Ficha de cliente",
  } satisfies Record<SheetName, string>,
  /** Who reads it, and what to mind when it is printed. */
  asides: {
    placement:
      "El mapa va en el espejo, donde otros pueden leerlo, así que solo muestra iniciales. Imprima al 100\u00a0% (no «ajustar a la página») para que la regla salga a tamaño real.",
    technique:
      "Para estudiantes: lo que se dibuja, paso a paso, con una cabeza donde dibujar, fallos, autocomprobación y el recuadro de evaluación. No lleva cliente, fecha ni notas.",
    "take-home":
      "Para su cliente, en letra grande: lo que se hizo, piel y cuero cabelludo, cuidado en casa, cuándo volver. Sin fórmula ni respuestas de salud.",
    record:
      "Para el salón: el cabello, lo preguntado, las mezclas, tiempos previstos y reales, revisiones y las notas para la próxima vez. Contiene respuestas de salud.",
  } satisfies Record<SheetName, string>,

  /** The head of each page. */
  heading: {
    unnamed: "Plan sin nombre",
    client: (initials: string) => `Cliente ${initials}`,
    page: (number: number, count: number) => `página ${t.whole(number)} de ${t.whole(count)}`,
    datedPage: (day: string, number: number, count: number) =>
      `${t.date(day)}, página ${t.whole(number)} de ${t.whole(count)}`,
  },

  cautions: cautions(),
  map: map(t, common),
  views: views(),
  cards: cards(t),
  handout: handout(),
  lesson: lesson(t),
  /** What a reader’s program is told of a drawing. */
  pictures: {
    view: (view: string, foils: readonly number[]) =>
      foils.length === 0
        ? `Dibujo de la cabeza: ${view}.`
        : `Dibujo de la cabeza: ${view}. En él: ${common.foils(foils)}.`,
    clock: "Barras del reloj; los mismos minutos están al lado en números.",
    comb: "Una regla a tamaño real.",
    stitches: "Puntadas a tamaño real.",
  },
})

const screen = (t: Tools) => ({
  title: "Hojas",
  sheet: "Hoja",
  paper: "Formato",
  papers: { a4: "A4", letter: "Carta" } satisfies Record<PaperName, string>,
  language: "Idioma de la hoja",
  change: "Cambiar",
  front: "Vista frontal",
  fronts: { facing: "De cara a su cliente", mirror: "Como en el espejo" },
  save: "Guardar PDF",
  print: "Imprimir…",
  share: "Compartir…",
  readAsPage: "Leer como página",
  readHint:
    "Una página para navegador o teléfono, sin scripts: texto que se puede ampliar o leer en voz alta.",
  cancel: "Cancelar",
  saved: (file: string) => `${file} guardado`,
  pages: "Páginas",
  page: (number: number) => `Página ${t.whole(number)}`,
  pageOf: (number: number, count: number) => `Página ${t.whole(number)} de ${t.whole(count)}`,
  asPrinted: "Página impresa",
  working: "Componiendo las páginas…",
  workingOn: (done: number, count: number) => `Componiendo, paso ${t.whole(done)} de ${t.whole(count)}…`,
  printing: (done: number, count: number) => `Imprimiendo la página ${t.whole(done)} de ${t.whole(count)}…`,
  stopped: "Las páginas no se compusieron.",
  again: "Componer las páginas",
  noFont: "No se cargó la letra de las hojas. Compruebe la conexión y recargue.",
  noWords: "No se cargó el idioma de la hoja. Compruebe la conexión y elíjalo otra vez.",
  noPdf: "No se pudo hacer el PDF. Recargue la página e inténtelo otra vez.",
})

const cautions = () => ({
  /** What every placement map and handout says, in the fewest words. */
  all: [
    "Primero las instrucciones del fabricante; después, la ley local y las normas de licencia; después, su criterio. Esta hoja solo planifica.",
    "Guantes puestos. Lejos de ojos, pestañas y cejas. En un ojo: enjuague de inmediato, 20 minutos.",
    "Ventile al mezclar. Cubra el bol sin apretar; no lo selle nunca.",
    "Sin calor, salvo que lo permitan las instrucciones. Ni boles ni pinzas de metal.",
    "Nada de llamas, herramientas calientes ni aerosoles cerca del producto. Los papeles usados van al agua, no a la basura.",
    "Pida a su cliente que avise de todo calor, hormigueo o dolor.",
    "Papel caliente o hinchado, escozor o ardor: retírelo y enjuague de inmediato con abundante agua fresca.",
    "Revise cada 5 a 10 minutos. Pare en el nivel deseado, en el tiempo máximo del fabricante o cuando se seque, lo primero que ocurra.",
    "Cabellos, gramos y minutos son estimaciones: lea el margen.",
  ],
  localRule: "Norma local:",
  codedLetters:
    "Algunas letras no se pueden imprimir aquí. En lugar de cada una sale su código, por ejemplo [U+6F22].",
})

export type SheetsWords = ReturnType<typeof sheets>
