import type { Tools } from "../tools"

/** How many plans and techniques of a backup there are, by what becomes of them here. */
type BackupFound = {
  added: number
  beside: number
  same: number
  unread: number
  techniques: number
  cards: number
}

/** The app on this device, the plans kept in it, and newer versions. */
export const offline = (t: Tools) => ({
  done: {},
  update: {
    ready: "Hay un Partline más nuevo.",
    load: "Cargarlo",
    later: "Más tarde",
    refused: "Ahora no: otra ventana está en el sillón, o hay un cambio sin guardar.",
  },
  kept: {
    title: "En este dispositivo",
    unknown:
      "Este navegador guarda los planes, pero no Partline: solo se abre mientras se pueda llegar a su dirección.",
    keeping: "Partline se está copiando en este dispositivo, para abrirse sin red.",
    kept: "Partline se abre sin red.",
    failed:
      "No se pudo copiar Partline en este dispositivo: solo se abre mientras se pueda llegar a su dirección.",
  },
  persistence: {
    unknown: "Este navegador no dice si conserva los planes cuando falta espacio.",
    granted: "Este navegador conserva los planes cuando falta espacio.",
    refused:
      "Este navegador puede borrar los planes cuando falte espacio, o cuando no se use durante un tiempo.",
    ask: "Pedir que los conserve",
  },
  /** All that this browser keeps, in one file. */
  backup: {
    title: "Copia de respaldo",
    none: "Desde este navegador no se ha guardado ninguna copia de respaldo.",
    save: "Guardar copia de respaldo",
    open: "Abrir copia de respaldo…",
    file: "Archivo de la copia de respaldo",
    holds:
      "Un archivo con todos los planes, las fichas, las técnicas y lo que guarda su salón. Contiene las respuestas de salud de toda la clientela y no está cifrado: guárdelo donde solo usted pueda leerlo. Un servicio en curso en el sillón no está incluido.",
    /** What is in a backup that was opened, before it is taken in. */
    found: ({ added, beside, same, unread, techniques, cards }: BackupFound) =>
      [
        `${t.count(added, { one: "# plan es nuevo aquí", other: "# planes son nuevos aquí" })}.`,
        ...(same > 0
          ? [`${t.count(same, { one: "# plan ya está aquí", other: "# planes ya están aquí" })}.`]
          : []),
        ...(beside > 0
          ? [
              `${t.count(beside, { one: "# plan difiere del que hay aquí y se añade a su lado", other: "# planes difieren de los que hay aquí y se añaden a su lado" })}.`,
            ]
          : []),
        ...(unread > 0
          ? [
              `${t.count(unread, { one: "# plan no se puede leer y se aparta", other: "# planes no se pueden leer y se apartan" })}.`,
            ]
          : []),
        `${t.count(techniques, { one: "# técnica es nueva", other: "# técnicas son nuevas" })}.`,
        ...(cards > 0
          ? [`${t.count(cards, { one: "# ficha es nueva", other: "# fichas son nuevas" })}.`]
          : []),
        "Nada de lo que hay aquí se sustituye.",
      ].join(" "),
    takeIn: "Incorporar",
    restored: "La copia de respaldo está incorporada.",
    today: "La última copia de respaldo es de hoy.",
    days: ({ days }: { days: number }) =>
      t.count(days, {
        one: "La última copia de respaldo tiene # día.",
        other: "La última copia de respaldo tiene # días.",
      }),
  },
  licences: "Licencias",
})

export type OfflineWords = ReturnType<typeof offline>
