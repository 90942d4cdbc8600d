import type { Skill } from "../../../../presets/timing/pace"
import type { Piece } from "../../../core/kinds/kindRecord"
import type { Tools } from "../../tools"
import { pieces } from "../common/pieces"

/** How the visit goes: one line that says it, and the fields that change it. */
export const settings = (t: Tools) => {
  const pace: Record<Skill | "learnt", string> = {
    expert: "Rythme expert",
    usual: "Rythme habituel",
    learner: "Rythme débutant",
    learnt: "Rythme mesuré",
  }
  return {
    title: "Déroulement",
    change: "Modifier",
    close: "Fermer",
    /** The settings in one line. */
    line: (now: {
      pace: Skill | "learnt"
      people: 1 | 2
      rinse: "each" | "together"
      bookingMin: number | null
      heatMin: number | null
      isDried: boolean
      breaks: number
      piece: Piece
    }) =>
      `${[
        pace[now.pace],
        now.people === 1 ? "coloriste sans renfort" : "coloriste et renfort",
        now.rinse === "each"
          ? `chaque ${pieces(t).word(1, now.piece)} retirée quand elle est prête`
          : "toutes retirées en un rinçage",
        ...(now.heatMin === null ? [] : [`${t.minutes(now.heatMin)} de chaleur`]),
        ...(now.breaks === 0 ? [] : [t.count(now.breaks, { one: "# pause", other: "# pauses" })]),
        ...(now.isDried ? [] : ["sans séchage"]),
        now.bookingMin === null
          ? "durée de rendez-vous non réglée"
          : `${t.minutes(now.bookingMin)} réservées`,
      ].join(", ")}.`,

    pace: "Rythme",
    /** A pace and its minutes per foil. */
    paceOption: ({ name, low, high }: { name: Skill | "learnt"; low: number; high: number }) =>
      `${pace[name]} ${t.spread(t.number(low, 1), t.number(high, 1))} min par papillote`,

    working: "Qui travaille",
    alone: "Coloriste",
    two: "Coloriste et renfort",
    who: "Coloriste",
    assistant: "Renfort",
    assistantSide: "Le côté du renfort",
    sides: { left: "Gauche de la personne", right: "Droite de la personne" },

    off: (piece: Piece) => `Retrait des ${pieces(t).word(2, piece)}`,
    each: "Chacune quand elle est prête",
    together: "Toutes en un rinçage",

    lift: "Éclaircissement",
    asAsked: "Comme au profil",
    notSet: "Non réglé",
    levels: "D’une hauteur à l’autre",
    fromTo: ({ from, to }: { from: number; to: number }) =>
      `De la hauteur ${t.number(from)} à ${t.number(to)}`,
    levelNow: "Hauteur actuelle",
    target: "Hauteur visée",

    appointment: "Durée du rendez-vous",
    inMinutes: "Minutes au fauteuil",
    booked: "Minutes réservées",
    drying: "Séchage",
    dried: "Au fauteuil",
    damp: "Sans",

    heat: "Chaleur, si le mode d’emploi du fabricant la permet",
    noHeat: "Aucune",
    minutes: (minutes: number) => t.minutes(minutes),
    temperature: "Température, si mesurée",

    breaks: "Pauses",
    fromMin: "De la minute",
    toMin: "À la minute",
    whoRests: "Qui fait la pause",
    rests: { both: "Pause à deux", "1": "Coloriste en pause", "2": "Renfort en pause" },
    addBreak: "Ajouter une pause",
    removeBreak: "Retirer",
  }
}
