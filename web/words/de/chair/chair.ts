import type { chair as english } from "../../en/chair/chair"
import { pieces } from "../common/pieces"
import { buttons } from "./buttons"
import { calls, toners } from "./calls"
import { emergencies } from "./emergencies"
import { floor } from "./floor"

export const chair: typeof english = (t) => ({
  title: "Am Stuhl",

  done: {
    "keep-service": "Behandlung sichern",
    "keep-alarm": "Sichern, was schiefging",
    "weigh-left": "Rest einer Schale sichern",
  },

  start: {
    ahead: ({ foils, piece, bowls, span }) =>
      `${pieces(t).count(foils, piece)}, ${t.count(bowls, { one: "# Schale", other: "# Schalen" })}, ${span} am Stuhl.`,
    begin: "Uhr starten",
    clock: (piece) =>
      ({
        foil: "Die Uhr läuft bei Neuladen und Ruhezustand weiter. Jede Folie antippen, wenn das Produkt das Haar zuerst berührt.",
        panel:
          "Die Uhr läuft bei Neuladen und Ruhezustand weiter. Jede Malpartie antippen, wenn das Produkt das Haar zuerst berührt.",
        both: "Die Uhr läuft bei Neuladen und Ruhezustand weiter. Jede Folie und Malpartie antippen, wenn das Produkt das Haar zuerst berührt.",
      })[piece],
    reach:
      "Die Höchstzeit des Herstellers ist die Grenze. In Reichweite des Gastes bleiben, solange Produkt im Haar ist.",
  },

  device: {
    "no-vibration": "Dieses Gerät kann nicht vibrieren: Den Ton eingeschaltet lassen.",
    "no-sound":
      "Dieses Gerät gibt hier keinen Ton: Es so halten, dass Sie die Vibration spüren oder es sehen.",
    neither: "Dieses Gerät gibt hier weder Ton noch Vibration: Den Bildschirm im Blick behalten.",
    "may-sleep":
      "Der Bildschirm dieses Geräts kann ausgehen: Für die Behandlung so einstellen, dass er anbleibt.",
  },

  bar: {
    leave: "Verlassen",
    alarmsStay: "Alarme bleiben an",
    time: "Zeit der Behandlung",
    clock: t.clock,
    undo: buttons.undo,
    alarm: "Etwas stimmt nicht",
    notKept: (why) => `Auf diesem Gerät nicht gesichert: ${why}`,
    service: "Behandlung läuft",
    nothingOn: (piece) =>
      ({ foil: "Keine Folie liegt", panel: "Keine Malpartie liegt", both: "Nichts liegt" })[piece],
    inOtherWindow: "in einem anderen Fenster",
    toChair: "Zum Stuhl",
  },

  elsewhere: {
    otherPlan:
      "In diesem Fenster läuft die Behandlung eines anderen Plans. Diesen Plan in einem zweiten Fenster öffnen, um beide laufen zu lassen.",
    toThat: "Zu dieser Behandlung",
    controlled: "Diese Behandlung wird in einem anderen Fenster gesteuert. Sie können hier zusehen.",
    takeOver: buttons.takeOver,
    notOpened: (why) => `Der Plan dieser Behandlung ließ sich nicht öffnen: ${why}`,
  },

  refusals: {
    "changed-in-another-window":
      "Ein anderes Fenster hat diese Behandlung fortgesetzt. Prüfen, was es jetzt zeigt, dann noch einmal tippen.",
    "held-in-another-window": `Ein anderes Fenster steuert diese Behandlung. Zuerst „${buttons.takeOver}“ antippen.`,
    "nothing-to-undo": "Kein Tippen zum Zurücknehmen.",
    "no-such-foil": ({ piece }) => `Diese ${pieces(t).word(1, piece)} gehört nicht zu dieser Behandlung.`,
    "off-since": ({ foil, atMin, piece }) =>
      `${pieces(t).names([foil], piece)} ist seit Minute ${t.number(atMin, 1)} ab.`,
    "on-since": ({ foil, atMin, piece }) =>
      `${pieces(t).names([foil], piece)} liegt seit Minute ${t.number(atMin, 1)}; ihre Zeit läuft von da an.`,
    "no-later-roots": ({ foil, piece }) =>
      `${pieces(t).names([foil], piece)} hat keinen Ansatz, der später kommt.`,
    "roots-on-since": ({ foil, atMin, piece }) =>
      `${pieces(t).names([foil], piece)}: Ansatz seit Minute ${t.number(atMin, 1)}; seine Zeit läuft von da an.`,
    "never-on": ({ foil, piece }) =>
      `${pieces(t).names([foil], piece)} wurde nie als gelegt angetippt, also kann sie nicht ab. Sie wählen und zuerst „${buttons.wentOnEarlier}“ antippen.`,
    "heat-never-on": `„${buttons.heatOn}“ wurde nie angetippt, also kann die Wärme nicht aus.`,
    "no-heat-planned": "Es ist keine Wärme geplant.",
    "heat-once": ({ state, atMin }) =>
      `Die Wärme ist seit Minute ${t.number(atMin, 1)} ${state === "on" ? "an" : "aus"}. Sie wird einmal verwendet.`,
    "toner-over": ({ zone }) => `${toners[zone]}: schon ausgespült.`,
    "toner-on-since": ({ zone, atMin }) =>
      `${toners[zone]}: seit Minute ${t.number(atMin, 1)} im Haar; die Zeit läuft von da an.`,
    "toner-never-on": ({ zone }) => `${toners[zone]}: zuerst „${buttons.tonerOn(toners[zone])}“ antippen.`,
    "second-tap": "Zweites Tippen an derselben Stelle innerhalb einer Sekunde: nicht gezählt.",
  },

  notes: {
    "counts-from-earliest": ({ foil, fromMin, piece }) =>
      `${pieces(t).names([foil], piece)} wurde nicht als gelegt angetippt; ihre Zeit zählt ab Minute ${t.number(fromMin, 1)}, dem frühesten möglichen Zeitpunkt.`,
    "counts-from-now": ({ foil, fromMin, piece }) =>
      `${pieces(t).names([foil], piece)} zählt ab jetzt. Lag sie schon vorher: „${buttons.undo}“, dann „${buttons.wentOnEarlier}“ antippen; sie zählt dann ab Minute ${t.number(fromMin, 1)}.`,
    "in-words": ({ words }) => words,
  },

  clockNotes: {
    "clock-set-back": ({ byMs }) =>
      `Die Uhr des Geräts wurde um ${t.duration(byMs)} zurückgestellt. Die Uhr der Behandlung läuft weiter.`,
    "slept-or-set-forward": ({ byMs }) =>
      `Das Gerät ruhte ${t.duration(byMs)}, oder seine Uhr wurde vorgestellt. Die längere Zeit zählt.`,
    "set-back-while-closed": ({ byMs, piece }) =>
      `Die Uhr des Geräts wurde um mindestens ${t.duration(byMs)} zurückgestellt, während diese Seite geschlossen war. Jetzt jede ${pieces(t).word(1, piece)} kontrollieren: Sie kann länger im Haar sein als gezeigt.`,
    "in-words": ({ words }) => words,
  },

  stillOn: (foils, piece) =>
    t.count(foils.length, {
      one: `${t.capital(pieces(t).names(foils, piece))} liegt noch. Zuerst „${buttons.off}“ oder „${buttons.rinseNow}“ antippen.`,
      other: `${t.capital(pieces(t).names(foils, piece))} liegen noch. Zuerst „${buttons.off}“ oder „${buttons.rinseNow}“ antippen.`,
    }),
  tonerStillOn: (zones) =>
    `${t.and(zones.map((zone) => toners[zone]))}: noch im Haar. Zuerst „${buttons.tonerOff}“ antippen.`,

  calls: calls(t),
  floor: floor(t),
  emergencies: emergencies(t),
})
