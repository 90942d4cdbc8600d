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
  title: "At the chair",

  /** What undo calls a change of this chapter. */
  done: {
    "keep-service": "Save the service",
    "keep-alarm": "Save what went wrong",
    "weigh-left": "Save what is left in a bowl",
  },

  /** Before minute 0. */
  start: {
    /** What is to come; the span is two lengths of time. */
    ahead: ({ foils, piece, bowls, span }: { foils: number; piece: Piece; bowls: number; span: string }) =>
      `${pieces(t).count(foils, piece)}, ${t.count(bowls, { one: "# bowl", other: "# bowls" })}, ${span} in the chair.`,
    begin: "Start the clock",
    clock: (piece: Piece): string =>
      ({
        foil: "The clock goes on through reload and sleep. Tap each foil as the product first touches the hair.",
        panel:
          "The clock goes on through reload and sleep. Tap each panel as the product first touches the hair.",
        both: "The clock goes on through reload and sleep. Tap each foil and panel as the product first touches the hair.",
      })[piece],
    reach: "The maker’s maximum time is the limit. Stay in reach of the client while product is on.",
  },

  /** What this device cannot do. */
  device: {
    "no-vibration": "This device cannot vibrate: leave its sound on.",
    "no-sound": "This device makes no sound here: keep it where you feel it vibrate, or see it.",
    neither: "This device neither sounds nor vibrates here: keep the screen in sight.",
    "may-sleep": "This device may let its screen sleep: set it to stay on for the service.",
  },

  bar: {
    leave: "Leave",
    alarmsStay: "alarms stay on",
    time: "Time of the service",
    clock: t.clock,
    undo: buttons.undo,
    alarm: "Something is wrong",
    notKept: (why: string) => `Not saved on this device: ${why}`,
    /** On every other screen, while a service goes on. */
    service: "Service going on",
    nothingOn: (piece: Piece): string =>
      ({ foil: "No foils on", panel: "No panels on", both: "Nothing on" })[piece],
    inOtherWindow: "in another window",
    toChair: "To the chair",
  },

  /** The chair of another plan, or of another window. */
  elsewhere: {
    otherPlan:
      "The service of another plan goes on in this window. Open this plan in a second window to run both.",
    toThat: "To that service",
    controlled: "This service is controlled in another window. You can watch it here.",
    takeOver: buttons.takeOver,
    notOpened: (why: string) => `The plan of that service did not open: ${why}`,
  },

  /** Why a tap is not taken. */
  refusals: {
    "changed-in-another-window":
      "Another window has gone on with this service. Check what it shows now, then tap again.",
    "held-in-another-window": `Another window controls this service. Tap “${buttons.takeOver}” first.`,
    "nothing-to-undo": "There is no tap to undo.",
    "no-such-foil": ({ piece }) => `That ${pieces(t).word(1, piece)} is not in this service.`,
    "off-since": ({ foil, atMin, piece }) =>
      `${t.capital(pieces(t).names([foil], piece))} has been off since minute ${t.number(atMin, 1)}.`,
    "on-since": ({ foil, atMin, piece }) =>
      `${t.capital(pieces(t).names([foil], piece))} has been on since minute ${t.number(atMin, 1)}; its time runs from there.`,
    "no-later-roots": ({ foil, piece }) =>
      `${t.capital(pieces(t).names([foil], piece))} has no roots that go on later.`,
    "roots-on-since": ({ foil, atMin, piece }) =>
      `${t.capital(pieces(t).names([foil], piece))}: roots on since minute ${t.number(atMin, 1)}; their time runs from there.`,
    "never-on": ({ foil, piece }) =>
      `${t.capital(pieces(t).names([foil], piece))} was never tapped on, so it cannot come off. Choose it and tap “${buttons.wentOnEarlier}” first.`,
    "heat-never-on": `“${buttons.heatOn}” was never tapped, so the heat cannot be taken away.`,
    "no-heat-planned": "No heat is planned.",
    "heat-once": ({ state, atMin }) =>
      `The heat has been ${state === "on" ? "on" : "off"} since minute ${t.number(atMin, 1)}. It is used once.`,
    "toner-over": ({ zone }) => `${toners[zone]}: rinsed off already.`,
    "toner-on-since": ({ zone, atMin }) =>
      `${toners[zone]}: on since minute ${t.number(atMin, 1)}; its time runs from there.`,
    "toner-never-on": ({ zone }) => `${toners[zone]}: tap “${buttons.tonerOn(toners[zone])}” first.`,
    "second-tap": "Second tap in the same place within a second: ignored.",
  } satisfies Sentences<OfPieces<ChairRefusal> | { code: "held-in-another-window" } | { code: "second-tap" }>,

  /** What to know of a tap that was taken. */
  notes: {
    "counts-from-earliest": ({ foil, fromMin, piece }) =>
      `${t.capital(pieces(t).names([foil], piece))} was not tapped on; its time counts from minute ${t.number(fromMin, 1)}, the earliest it can have been.`,
    "counts-from-now": ({ foil, fromMin, piece }) =>
      `${t.capital(pieces(t).names([foil], piece))} counts from now. If it went on before, tap “${buttons.undo}”, then “${buttons.wentOnEarlier}”: it then counts from minute ${t.number(fromMin, 1)}.`,
    "in-words": ({ words }) => words,
  } satisfies Sentences<OfPieces<TapNote>>,

  clockNotes: {
    "clock-set-back": ({ byMs }) =>
      `The device’s clock was set back by ${t.duration(byMs)}. The service’s clock goes on.`,
    "slept-or-set-forward": ({ byMs }) =>
      `The device slept for ${t.duration(byMs)}, or its clock was set forward. The longer time is counted.`,
    "set-back-while-closed": ({ byMs, piece }) =>
      `The device’s clock was set back by at least ${t.duration(byMs)} while this page was closed. Check every ${pieces(t).word(1, piece)} now: it may have been on longer than shown.`,
    "in-words": ({ words }) => words,
  } satisfies Sentences<OfPieces<ClockNote>>,

  /** Deleting its plan. */

  /** Ending with foils on. */
  stillOn: (foils: readonly number[], piece?: Piece) =>
    `${t.capital(pieces(t).names(foils, piece))} still on. Tap “${buttons.off}” or “${buttons.rinseNow}” first.`,
  tonerStillOn: (zones: readonly ToneZoneName[]) =>
    `${t.and(zones.map((zone) => toners[zone]))} still on. Tap “${buttons.tonerOff}” first.`,

  calls: calls(t),
  floor: floor(t),
  emergencies: emergencies(t),
})

export type ChairWords = ReturnType<typeof chair>
