import type { Tools } from "../tools"

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
  backup: {
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
