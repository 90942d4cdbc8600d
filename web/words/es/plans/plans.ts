import type { Tools } from "../../tools"
import { keys } from "./keys"
import { notKept } from "./notKept"

/** The top bar, the plans of this browser, saving, keys and the language. */
export const plans = (t: Tools) => ({
  /** What undo calls a change of this chapter. */
  done: {
    rename: "Cambiar el nombre del plan",
    "follow-scale": "Seguir lo que enseñó la báscula",
  },
  notKept: notKept(t),
  keys,
  pageTitle: "Partline",
  untitled: "Plan sin nombre",
  /** The bar over every screen. */
  bar: {
    plans: "Planes…",
    skip: "Ir a la pantalla",
    named: (name: string) => `${name}: Planes…`,
    visit: "El servicio",
    screens: {
      client: "Cliente",
      placement: "Colocación",
      formula: "Fórmula",
      timing: "Tiempos",
      sheets: "Hojas",
    },
    /** In the window's title. */
    pageTitle: (screen: string, plan: string) => `${screen}: ${plan} – Partline`,
    example: "Un ejemplo inventado.",
    startOwn: "Empezar su propio plan",
    undo: "Deshacer",
    redo: "Rehacer",
    undoWhat: (what: string) => `Deshacer: ${what}`,
    redoWhat: (what: string) => `Rehacer: ${what}`,
  },
  undone: (what: string) => `Deshecho: ${what}`,
  doneAgain: (what: string) => `Rehecho: ${what}`,
  lastNotOpened: (why: string) => `No se pudo abrir el último plan. ${why}`,
  /** Whether the plan on the screen is on the disk. */
  saving: {
    "not-yet": "Aún sin guardar",
    saving: "Guardando…",
    saved: "Guardado",
    notSaved: "Sin guardar.",
    asCopy: "Guardar como copia",
    toFile: "Guardar en archivo",
  },
  /** The dialog of all plans. */
  dialog: {
    title: "Planes",
    newPlan: "Plan nuevo",
    fromExample: "Partir del ejemplo",
    saveEverything: "Guardar todo en un archivo",
    saveForColleague: "Guardar para otra persona",
    fileHolds:
      "«Guardar todo en un archivo» contiene las respuestas de salud de su cliente, las pruebas de alergia y las anulaciones, legibles para quien tenga el archivo. «Guardar para otra persona» las deja fuera.",
    stay: "Los planes se quedan en este navegador y solo salen como archivos. Guarde uno en un archivo para llevárselo o tener una segunda copia.",
  },
  list: {
    title: "Guardados en este navegador",
    none: "Ninguno aún. Un plan se guarda en cuanto se dibuja algo.",
    numbered: (title: string, number: number) => `${title} (${t.whole(number)})`,
    openNow: "abierto ahora",
    moment: (iso: string) => t.dayAndTime(Date.parse(iso)),
    details: (items: readonly string[]) => items.join(", "),
    rename: "Renombrar",
    renameNamed: (name: string) => `Renombrar ${name}`,
    newName: "Nombre nuevo",
    save: "Guardar",
    duplicate: "Duplicar",
    duplicateNamed: (name: string) => `Duplicar ${name}`,
    copyOf: (name: string) => (name.trim() ? `${name} (copia)` : "Copia"),
    delete: "Eliminar",
    deleteNamed: (name: string) => `Eliminar ${name}`,
    deleted: (name: string) => `Se eliminó ${name}. Queda en la papelera 30 días.`,
    undo: "Deshacer",
    /** No more are shown at once. */
    more: (count: number) => t.count(count, { one: "Mostrar # más", other: "Mostrar # más" }),
    find: "Buscar un plan",
  },
  bin: {
    title: (count: number) => t.count(count, { one: "Papelera: # plan", other: "Papelera: # planes" }),
    days: (count: number) =>
      t.count(count, {
        one: "se elimina del todo en # día",
        other: "se elimina del todo en # días",
      }),
    putBack: "Recuperar",
    putBackNamed: (name: string) => `Recuperar ${name}`,
  },
  /** Plans that could not be read. */
  aside: {
    title: (count: number) =>
      t.count(count, { one: "# plan no se pudo leer", other: "# planes no se pudieron leer" }),
    why: "Se conservan tal como se escribieron. Quizá un Partline más nuevo los lea; cada uno se puede guardar en un archivo.",
    tryAgain: "Reintentar",
    save: "Guardar en archivo",
    saveNamed: (name: string) => `Guardar ${name} en un archivo`,
  },
  /** The shelf cannot be written in; its plans can be taken out. */
  readOnly: {
    title: "Estos planes se pueden guardar en archivos, no abrir aquí",
    save: "Guardar en archivo",
    saveNamed: (name: string) => `Guardar ${name} en un archivo`,
  },
  language: {
    title: "Idioma",
    unchecked: "traducido sin revisión de colorista nativa o nativo; se agradecen correcciones",
  },
  /** A part of the app that did not load, or broke. */
  parts: {
    waiting: "Cargando…",
    failed: "No se pudo cargar esta parte.",
    stays: "El plan sigue como está.",
    tryAgain: "Reintentar",
    reload: "Recargar la página",
  },
})

export type PlansWords = ReturnType<typeof plans>
