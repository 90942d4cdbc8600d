import type { Piece } from "../../../core/kinds/kindRecord"
import type { Tools } from "../../tools"
import { pieces } from "../common/pieces"
import { buttons } from "./buttons"
import { foilsWords } from "./calls"

/** The service while it goes on: what is next, what is on, and what is done with each foil. */
export const floor = (t: Tools) => ({
  next: "Ensuite",
  nextFoil: (piece: Piece) => (piece === "panel" ? "Mèche suivante" : "Papillote suivante"),
  allOn: (_: Piece): string => "Toutes sont posées.",
  what: ({ kind, place, foils }: { kind: string; place: string; foils: number }) =>
    foils === 1
      ? `${t.capital(kind)}, ${place}`
      : `${t.capital(kind)} en ${t.whole(foils)} papillotes, ${place}`,
  mix: (letter: string) => `mélange ${letter}`,
  now: "Maintenant",
  atMinute: (min: number) => `À la minute ${t.whole(min)}`,
  isOn: (foil: number, piece?: Piece) =>
    piece === "panel" ? `Mèche ${foil} posée` : `Papillote ${foil} posée`,
  /** Who placed it, by name, else by what they are. */
  by: (who: string) => `(${who})`,
  colourist: "coloriste",
  assistant: "renfort",
  whoTaps: "Qui touche",
  wentOnEarlier: buttons.wentOnEarlier,
  /** A lane: who works in it, and on which side. */
  lane: (who: string) => t.capital(who),
  laneDone: "Tout ce côté est posé.",
  /** Foils of a lane that may be taken before their turn. */
  otherFoil: (piece: Piece) =>
    ({ foil: "Une autre d’abord", panel: "Une autre mèche d’abord", both: "Une autre d’abord" })[piece],

  onNow: "En pose",
  foilsOn: (piece: Piece): string =>
    ({ foil: "Papillotes en pose", panel: "Mèches en pose", both: "Papillotes et mèches en pose" })[piece],
  noneOn: (_: Piece): string => "Rien en pose.",
  foil: (piece: Piece) => t.capital(pieces(t).word(1, piece)),
  foilName: (foil: number, piece?: Piece) => t.capital(pieces(t).names([foil], piece)),
  foilNames: (foils: readonly number[], piece?: Piece) => foilsWords(t, foils, piece),
  minutes: "min",
  /** Time left to the planned minute, and past it: it never slides ahead. */
  offIn: (ms: number) => `retrait dans ${t.clock(ms)}`,
  offOver: (ms: number) => `retrait prévu il y a ${t.clock(ms)}`,
  offStop: "retirer",
  rootsToCome: "racine à venir",
  rootsOn: "Racine posée",
  rootsWentOnEarlier: "Racine posée plus tôt",
  offNow: (limitMin: number) => `max ${t.whole(limitMin)} : retirer`,
  countedFromEarliest: "comptée au plus tôt",

  tapFoil: (piece: Piece): string =>
    ({
      foil: "Appuyez sur une papillote : contrôlée, retirer, réappliquée.",
      panel: "Appuyez sur une mèche : contrôlée, retirer, réappliquée.",
      both: "Appuyez sur une papillote ou une mèche : contrôlée, retirer, réappliquée.",
    })[piece],
  burning: "Brûle",
  checked: "Contrôlée",
  off: buttons.off,
  reCoated: "Réappliquée",

  mixNow: (mix: string) => `Mélanger ${mix} maintenant`,
  /** The minute is written apart: it changes by itself. */
  bowlFor: ({ bowl, of }: { bowl: number; of: number }) => `bol ${bowl} sur ${of}, pour la minute`,
  rinseNow: buttons.rinseNow,
  allOfThem: (count: number) => t.count(count, { one: "la seule en pose (#)", other: "les # en pose" }),
  notReady: (foils: readonly number[], piece?: Piece) =>
    `${foilsWords(t, foils, piece)} : pas encore à l’heure prévue. Rincer quand même ?`,
  rinseAll: "Tout rincer",
  notYet: "Pas encore",
  end: "Finir la prestation",
  tonerOn: buttons.tonerOn,
  tonerChecked: "Contrôlé",
  tonerOff: buttons.tonerOff,
  tonerPlan: ({ product, minutes }: { product: string | null; minutes: number }) =>
    product === null ? `${t.minutes(minutes)} ; choisir la patine` : `${product}, ${t.minutes(minutes)}`,
  tonerTime: ({ onMs, plannedMin }: { onMs: number; plannedMin: number }) =>
    `${t.clock(onMs)} sur ${t.minutes(plannedMin)}`,
  tonerDone: "rincé",
  skipToners: "Sans patine",
  after: "Après le rinçage",
  heatOn: buttons.heatOn,
  heatFor: (minutes: number) => `${t.minutes(minutes)}, puis contrôler`,
  heatOff: "Chaleur ôtée",
  thenCheck: "puis contrôler, refroidir",

  outlook: ({ lastOnMin, rinseMin }: { lastOnMin: number; rinseMin: number }, piece: Piece) =>
    `À ce rythme : ${{ foil: "dernière papillote posée", panel: "dernière mèche posée", both: "dernière posée" }[piece]} minute ${t.whole(lastOnMin)}, toutes retirées minute ${t.whole(rinseMin)}.`,

  again: "Refaire une prestation de ce plan",
  weigh: {
    title: "Peser ce qui reste",
    bowl: ({ bowl, mix }: { bowl: number; mix: string }) => `Bol ${bowl}, mélange ${mix}`,
    made: ({ lightenerG, developerG }: { lightenerG: number; developerG: number }) =>
      `fait avec ${t.gramsNumber(lightenerG)} + ${t.grams(developerG)}`,
    left: "Reste",
    used: (grams: number) => `${t.grams(grams)} utilisés`,
  },
  nextVisit: {
    title: "Prochaine séance",
    plan: "Planifier la prochaine",
    when: ({ from, to }: { from: string; to: string }) => `Entre le ${t.date(from)} et le ${t.date(to)}.`,
    test: (day: string) => `Touche d’essai faite au plus tard le ${t.date(day)}.`,
  },

  /** One check: what was seen. */
  check: {
    seen: (name: string) => `${name} : ce que vous avez vu`,
    level: (name: string) => `${name} : hauteur vue`,
    darker: "Un demi-ton plus foncé",
    lighter: "Un demi-ton plus clair",
    stretch: "Élasticité",
    stretches: { ok: "OK", soft: "Mous", stop: "Arrêt" },
    scalp: "Cuir chevelu",
    comforts: { ok: "OK", warm: "Chaud", burning: "Brûle" },
    product: "Produit",
    moist: "Humide",
    dry: "Sec",
    save: "Enregistrer",
    notNow: "Pas maintenant",
  },
})
