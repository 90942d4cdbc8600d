import type { EmergencyName, EmergencyStep } from "../../../../presets/chair/emergencies"
import type { AlarmName } from "../../../core/document/serviceRecord"
import type { Piece } from "../../../core/kinds/kindRecord"
import type { Tools } from "../../tools"
import { pieces } from "../common/pieces"

type Steps = { readonly [N in EmergencyName]: { readonly [S in EmergencyStep<N>]: string } }

/** The red button: short, one thing a line, nothing but what to do. */
export const emergencies = (t: Tools) => ({
  whatIsWrong: "¿Qué va mal?",
  somethingElse: "Otra cosa",
  backToClock: "Volver al reloj",
  number: (number: string) => `Número de emergencias: ${number}`,
  numberUnknown: "Número de emergencias: sin definir. Defínalo en «Su salón».",
  salon: (name: string, phone: string) =>
    [...(name ? [`Salón: ${name}`] : []), ...(phone ? [`Teléfono del salón: ${phone}`] : [])].join(". "),
  first:
    "En caso de duda, llame primero al número de emergencias. La formación en primeros auxilios y las instrucciones del fabricante van antes que esta lista.",
  about: (foils: readonly number[], piece?: Piece) => t.capital(pieces(t).names(foils, piece)),
  done: "Hecho",
  stepDone: (step: string) => `Hecho: ${step}`,
  log: "Registro de horas",
  time: t.time,
  day: t.day,
  logLine: ({ time, clock, what }: { time: string; clock: string; what: string }) =>
    `${time} (minuto ${clock}): ${what}`,
  logDay: ({ day, time, what }: { day: string; time: string; what: string }) => `${day}, ${time}: ${what}`,
  /** What went wrong, and the step that was done. */
  logStep: ({ what, step }: { what: string; step: string }) => `${what}: ${step}`,
  logFoils: ({ what, foils }: { what: string; foils: string }) => `${what} (${foils})`,

  names: {
    breathing: "Dificultad para respirar, o se hincha la cara o la garganta",
    burning: "Arde el cuero cabelludo o la piel",
    eye: "Producto en el ojo",
    wheeze: "Solo pitidos o tos",
    "hot-foil": "Papel caliente, hinchado o humeante",
    faint: "Desmayo",
    fit: "Convulsión",
    swallowed: "Producto tragado",
    other: "Otra cosa",
  } satisfies { readonly [N in AlarmName]: string },

  steps: {
    breathing: {
      pen: "Use ya el propio autoinyector de adrenalina de su cliente.",
      call: "Llame al número de emergencias. Diga «anafilaxia».",
      "lie-flat":
        "Acueste a su cliente boca arriba, con las piernas en alto. Incorpore solo si cuesta respirar; sobre el lado izquierdo si hay embarazo. Sin ponerse de pie ni caminar, aunque mejore.",
      "second-pen": "Sin mejora a los 5 minutos: use un segundo autoinyector, si lo hay.",
      air: "Aleje el polvo y el bol. Abra la ventana.",
      "rinse-later": "Cuando la respiración lo permita, alguien enjuaga el producto.",
      stay: "Quédese con su cliente. Nunca más decolorante para su cliente.",
    },
    burning: {
      "foils-off": "Retire ya lo que haya puesto ahí. No espere a la revisión.",
      rinse:
        "Enjuague con abundante agua corriente fresca al menos 20 minutos. Que el agua no entre en los ojos.",
      "no-ice": "Nada de hielo ni crema.",
      "no-more": "Hoy, nada de calor, matizador ni otra cosa en este cuero cabelludo.",
      doctor:
        "Ampollas, piel abierta o dolor que no cede: al médico hoy mismo, con el nombre del producto y el tiempo que estuvo puesto. Quemaduras grandes, profundas o en la cara: llame al número de emergencias.",
    },
    eye: {
      rinse:
        "Enjuague de inmediato con un chorro suave de agua tibia. Mantenga los párpados abiertos; que corra desde el lado de la nariz hacia fuera, lejos del otro ojo.",
      lens: "Quite la lente de contacto si sale con facilidad; siga enjuagando.",
      "keep-rinsing": "Siga enjuagando al menos 20 minutos. Sin frotar, sin gotas.",
      go: "Llame al número de emergencias o acuda a urgencias oftalmológicas; siga enjuagando por el camino si puede. Lleve el bote. Su cliente no debe conducir.",
    },
    wheeze: {
      "powder-away": "Aleje el polvo y el bol. Deje entrar aire fresco.",
      inhaler: "Ayude a usar el propio inhalador de su cliente.",
      call: "Sin mejora en 5 minutos, o peor: llame al número de emergencias.",
      "rinse-later": "Cuando la respiración sea fácil, enjuague el producto y termine el servicio.",
    },
    "hot-foil": {
      "take-off": "Con guantes. No lo abra sobre la cara. Retire el papel.",
      "into-water": "Eche el papel con su producto en abundante agua, fuera o lejos de la gente.",
      rinse:
        "Enjuague ese mechón y el cuero cabelludo debajo con abundante agua fresca; 20 minutos si la piel está caliente o duele.",
      "feel-others": "Toque todos los demás papeles de ese bol. Retire todo el que esté caliente.",
      flames: "Llamas: alarma de incendios, bomberos, salir.",
      "no-more": "Hoy, nada de calor ni más de esa mezcla. Anote qué bol era.",
    },
    faint: {
      "lie-flat":
        "Acueste a su cliente boca arriba, con las piernas en alto; sobre el lado izquierdo si hay embarazo.",
      "keep-clear": "Mantenga el producto lejos de ojos y boca. Afloje la capa. Aire fresco.",
      "not-awake": "Sin despertar en un minuto: posición de recuperación, llame al número de emergencias.",
      "not-breathing":
        "Sin respiración normal: llame, empiece las compresiones torácicas, traiga el desfibrilador.",
      end: "Al despertar: que siga en esa postura un rato. Enjuague el producto y termine el servicio.",
    },
    fit: {
      "make-room": "Haga sitio. Aparte los objetos duros; ponga algo blando bajo la cabeza.",
      "nothing-in": "Nada en la boca. No sujete a su cliente.",
      "time-it": "Mida el tiempo.",
      call: "Más de 5 minutos, la primera de su vida, o con heridas: llame al número de emergencias.",
      after: "Después: posición de recuperación. Quédese. Enjuague el producto.",
    },
    swallowed: {
      "rinse-mouth": "Que se enjuague la boca con agua.",
      "not-sick": "No provoque el vómito.",
      call: "Llame a información toxicológica o al número de emergencias, con el bote en la mano.",
    },
  } satisfies Steps,
})
