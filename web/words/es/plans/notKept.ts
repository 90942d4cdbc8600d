import type { KeptThing, NotKept } from "../../../core/fields/notKept"
import type { Sentences } from "../../say"
import type { Tools } from "../../tools"
import { problems } from "../problems/problems"

/** Why a thing could not be kept in the browser, and what to do. */
export const notKept = (t: Tools): Sentences<NotKept> => ({
  "changed-elsewhere":
    "Este plan se cambió en otra pestaña o ventana. No se ha escrito nada encima: guarde el suyo como copia o vuelva a abrir el otro.",
  "removed-elsewhere":
    "Este plan se eliminó en otra pestaña o ventana. Guarde el suyo como copia si aún lo necesita.",
  "card-changed-elsewhere":
    "Esta ficha se cambió en otra pestaña o ventana. No se ha escrito nada encima: se muestra como está ahora. Vuelva a introducir su cambio.",
  "merged-too-long": "Juntas, las dos fichas son más largas de lo que cabe en una. Acorte antes una nota.",
  "service-running": "Hay un servicio en curso con este plan. Termínelo antes de eliminar el plan.",
  blocked: ({ what }) =>
    `Otra ventana con un Partline anterior está abierta. Ciérrela, o guarde ${things[what]} en un archivo.`,
  full: ({ what }) =>
    `El almacenamiento del navegador está lleno. Guarde ${things[what]} en un archivo y elimine los planes que ya no necesite.`,
  "newer-shelf": ({ what }) =>
    `Un Partline más nuevo ha usado el almacenamiento de este navegador. Guarde ${things[what]} en un archivo y recargue la página.`,
  "private-window": ({ what }) =>
    `Las ventanas privadas no guardan. Guarde ${things[what]} en un archivo antes de cerrarla.`,
  "refused-by-browser": ({ what, error }) =>
    error
      ? `El navegador no pudo guardar ${things[what]} (${error}). Guarde en un archivo y recargue la página.`
      : `El navegador no pudo guardar ${things[what]}. Guarde en un archivo y recargue la página.`,
  "not-in-order": ({ what, problem }) =>
    `No fue posible guardar ${things[what]}, porque no se pudo volver a leer. ${problems(t).sentence(problem)}`,
  unreadable: ({ problem }) => problems(t).sentence(problem),
  "salon-unreadable":
    "Algunos datos guardados del salón no se pueden leer. Con el próximo cambio se apartan; lo demás se conserva.",
  "keeper-missing":
    "No se pudo cargar la parte de Partline que guarda. Guarde el plan en un archivo y recargue la página.",
})

const things: Record<KeptThing, string> = {
  plan: "el plan",
  technique: "la técnica",
  salon: "los datos del salón",
  service: "el servicio",
  card: "la ficha",
}
