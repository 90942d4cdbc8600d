import type { ChairRefusal } from "../../../core/chair/chairClock"
import type { ClockNote, TapNote, ToneZoneName } from "../../../core/document/serviceRecord"
import type { Piece } from "../../../core/kinds/kindRecord"
import type { OfPieces } from "../../pieceWords"
import type { Sentences } from "../../say"
import type { Tools } from "../../tools"
import { pieces } from "../common/pieces"
import { buttons } from "./buttons"
import { calls, toners } from "./calls"
import { emergencies } from "./emergencies"
import { floor } from "./floor"

export const chair = (t: Tools) => ({
  title: "En el sillón",

  /** What undo calls a change of this chapter. */
  done: {
    "keep-service": "Guardar el servicio",
    "keep-alarm": "Guardar lo que salió mal",
    "weigh-left": "Guardar lo que queda en un bol",
  },

  /** Before minute 0. */
  start: {
    /** What is to come; the span is two lengths of time. */
    ahead: ({ foils, piece, bowls, span }: { foils: number; piece: Piece; bowls: number; span: string }) =>
      `${pieces(t).count(foils, piece)}, ${t.count(bowls, { one: "# bol", other: "# boles" })}, ${span} en el sillón.`,
    begin: "Poner el reloj",
    clock: (piece: Piece): string =>
      ({
        foil: "El reloj sigue aunque se recargue o se duerma. Toque cada papel cuando el producto toque el cabello por primera vez.",
        panel:
          "El reloj sigue aunque se recargue o se duerma. Toque cada panel cuando el producto toque el cabello por primera vez.",
        both: "El reloj sigue aunque se recargue o se duerma. Toque cada papel y panel cuando el producto toque el cabello por primera vez.",
      })[piece],
    reach:
      "El tiempo máximo del fabricante es el límite. Quédese al alcance de su cliente mientras haya producto puesto.",
  },

  /** What this device cannot do. */
  device: {
    "no-vibration": "Este dispositivo no vibra: deje su sonido activado.",
    "no-sound": "Este dispositivo no suena aquí: téngalo donde note que vibra, o a la vista.",
    neither: "Este dispositivo no suena ni vibra aquí: tenga la pantalla a la vista.",
    "may-sleep":
      "Este dispositivo puede apagar su pantalla: ajústelo para que siga encendida durante el servicio.",
  },

  bar: {
    leave: "Salir",
    alarmsStay: "las alarmas siguen",
    time: "Tiempo del servicio",
    clock: t.clock,
    undo: buttons.undo,
    alarm: "Algo va mal",
    notKept: (why: string) => `No guardado en este dispositivo: ${why}`,
    /** On every other screen, while a service goes on. */
    service: "Servicio en curso",
    nothingOn: (piece: Piece): string =>
      ({ foil: "Sin papeles puestos", panel: "Sin paneles puestos", both: "Nada puesto" })[piece],
    inOtherWindow: "en otra ventana",
    toChair: "Al sillón",
  },

  /** The chair of another plan, or of another window. */
  elsewhere: {
    otherPlan:
      "En esta ventana está en curso el servicio de otro plan. Abra este plan en una segunda ventana para llevar los dos.",
    toThat: "A ese servicio",
    controlled: "Este servicio se controla en otra ventana. Aquí puede verlo.",
    takeOver: buttons.takeOver,
    notOpened: (why: string) => `El plan de ese servicio no se abrió: ${why}`,
  },

  /** Why a tap is not taken. */
  refusals: {
    "changed-in-another-window":
      "Otra ventana ha seguido con este servicio. Mire lo que muestra ahora y toque otra vez.",
    "held-in-another-window": `Otra ventana controla este servicio. Toque antes «${buttons.takeOver}».`,
    "nothing-to-undo": "No hay ningún toque que deshacer.",
    "no-such-foil": ({ piece }) => `Ese ${pieces(t).word(1, piece)} no está en este servicio.`,
    "off-since": ({ foil, atMin, piece }) =>
      `El ${pieces(t).names([foil], piece)} está retirado desde el minuto ${t.number(atMin, 1)}.`,
    "on-since": ({ foil, atMin, piece }) =>
      `El ${pieces(t).names([foil], piece)} está puesto desde el minuto ${t.number(atMin, 1)}; su tiempo corre desde ahí.`,
    "no-later-roots": ({ foil, piece }) =>
      `El ${pieces(t).names([foil], piece)} no tiene raíz que vaya más tarde.`,
    "roots-on-since": ({ foil, atMin, piece }) =>
      `El ${pieces(t).names([foil], piece)}: raíz puesta desde el minuto ${t.number(atMin, 1)}; su tiempo corre desde ahí.`,
    "never-on": ({ foil, piece }) =>
      `El ${pieces(t).names([foil], piece)} nunca se tocó como puesto, así que no se puede retirar. Elíjalo y toque antes «${buttons.wentOnEarlier}».`,
    "heat-never-on": `Nunca se tocó «${buttons.heatOn}», así que el calor no se puede quitar.`,
    "no-heat-planned": "No hay calor previsto.",
    "heat-once": ({ state, atMin }) =>
      state === "on"
        ? `El calor está puesto desde el minuto ${t.number(atMin, 1)}. Se usa una vez.`
        : `El calor está quitado desde el minuto ${t.number(atMin, 1)}. Se usa una vez.`,
    "toner-over": ({ zone }) => `${toners[zone]}: ya está enjuagado.`,
    "toner-on-since": ({ zone, atMin }) =>
      `${toners[zone]}: puesto desde el minuto ${t.number(atMin, 1)}; su tiempo corre desde ahí.`,
    "toner-never-on": ({ zone }) => `${toners[zone]}: toque antes «${buttons.tonerOn(toners[zone])}».`,
    "second-tap": "Segundo toque en el mismo lugar en menos de un segundo: ignorado.",
  } satisfies Sentences<OfPieces<ChairRefusal> | { code: "held-in-another-window" } | { code: "second-tap" }>,

  /** What to know of a tap that was taken. */
  notes: {
    "counts-from-earliest": ({ foil, fromMin, piece }) =>
      `El ${pieces(t).names([foil], piece)} no se tocó como puesto; su tiempo cuenta desde el minuto ${t.number(fromMin, 1)}, lo más temprano que pudo ser.`,
    "counts-from-now": ({ foil, fromMin, piece }) =>
      `El ${pieces(t).names([foil], piece)} cuenta desde ahora. Si se puso antes, toque «${buttons.undo}» y luego «${buttons.wentOnEarlier}»: entonces cuenta desde el minuto ${t.number(fromMin, 1)}.`,
    "in-words": ({ words }) => words,
  } satisfies Sentences<OfPieces<TapNote>>,

  clockNotes: {
    "clock-set-back": ({ byMs }) =>
      `El reloj del dispositivo se atrasó ${t.duration(byMs)}. El reloj del servicio sigue.`,
    "slept-or-set-forward": ({ byMs }) =>
      `El dispositivo durmió ${t.duration(byMs)}, o su reloj se adelantó. Se cuenta el tiempo más largo.`,
    "set-back-while-closed": ({ byMs, piece }) =>
      `El reloj del dispositivo se atrasó al menos ${t.duration(byMs)} con esta página cerrada. Revise ya todos los ${pieces(t).word(2, piece)}: pueden llevar puestos más de lo que se muestra.`,
    "in-words": ({ words }) => words,
  } satisfies Sentences<OfPieces<ClockNote>>,

  /** Ending with foils on. */
  stillOn: (foils: readonly number[], piece?: Piece) =>
    t.count(foils.length, {
      one: `${t.capital(pieces(t).names(foils, piece))} aún puesto. Toque antes «${buttons.off}» o «${buttons.rinseNow}».`,
      other: `${t.capital(pieces(t).names(foils, piece))} aún puestos. Toque antes «${buttons.off}» o «${buttons.rinseNow}».`,
    }),
  tonerStillOn: (zones: readonly ToneZoneName[]) =>
    `${t.and(zones.map((zone) => toners[zone]))}: aún en el pelo. Toque antes «${buttons.tonerOff}».`,

  calls: calls(t),
  floor: floor(t),
  emergencies: emergencies(t),
})

export type ChairWords = ReturnType<typeof chair>
