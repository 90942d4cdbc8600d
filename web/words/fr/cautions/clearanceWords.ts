import type { Clearance } from "../../../core/cautions/clearance"
import type { Piece } from "../../../core/kinds/kindRecord"
import type { Tools } from "../../tools"

type Told = Pick<Clearance, "state" | "day" | "by"> & {
  stops: readonly unknown[]
  notAsked: readonly unknown[]
}

/** The three states of a plan: do not mix, not asked yet, cleared. */
export function clearanceWords(t: Tools) {
  const stops = (count: number) =>
    t.count(count, { one: "Ne pas mélanger : # blocage", other: "Ne pas mélanger : # blocages" })
  const notAsked = (count: number) => t.count(count, { one: "Non demandé : #", other: "Non demandés : #" })
  const clearedBy = ({ by, day }: Told) => {
    const things = t.and([
      t.count(by.answers, { one: "# réponse", other: "# réponses" }),
      ...(by.tests > 0
        ? [
            t.count(by.tests, {
              one: "# touche d’essai lue négative",
              other: "# touches d’essai lues négatives",
            }),
          ]
        : []),
      ...(by.letters > 0
        ? [t.count(by.letters, { one: "# courrier de médecin", other: "# courriers de médecin" })]
        : []),
      ...(by.overrides > 0 ? [t.count(by.overrides, { one: "# dérogation", other: "# dérogations" })] : []),
    ])
    return by.askedBy.trim() === ""
      ? `Feu vert le ${t.date(day)} d’après ${things}.`
      : `Feu vert le ${t.date(day)} (questions posées par ${by.askedBy}) d’après ${things}.`
  }
  return {
    /** In the top bar. */
    pill: (told: Told) =>
      told.state === "stop"
        ? stops(told.stops.length)
        : told.state === "not-asked"
          ? notAsked(told.notAsked.length)
          : "Feu vert ce jour",
    /** At the head of a screen. */
    head: (told: Told) =>
      told.state === "stop"
        ? `${stops(told.stops.length)}.`
        : told.state === "not-asked"
          ? `${notAsked(told.notAsked.length)}.`
          : clearedBy(told),
    /** One sentence for the command. */
    sentence: (told: Told) =>
      told.state === "stop"
        ? t.count(told.stops.length, {
            one: "NE PAS MÉLANGER : # blocage arrête le plan.",
            other: "NE PAS MÉLANGER : # blocages arrêtent le plan.",
          })
        : told.state === "not-asked"
          ? t.count(told.notAsked.length, {
              one: "PAS DE FEU VERT : # point n’a pas encore été demandé.",
              other: "PAS DE FEU VERT : # points n’ont pas encore été demandés.",
            })
          : clearedBy(told),
    list: "Ce qui manque",
    stopsTitle: "Ne pas mélanger",
    notAskedTitle: "Pas encore demandé",
    none: "Rien ne manque pour aujourd’hui.",
    goTo: "Y aller",
    close: "Fermer",
    /** What may be answered together, aloud. */
    aloud: {
      title: "Demandé à voix haute",
      aside: (count: number) =>
        t.count(count, {
          one: "Une question peut recevoir « non » si vous la posez à voix haute. Votre nom est gardé avec la réponse.",
          other:
            "# questions peuvent recevoir « non » si vous les posez à voix haute. Votre nom est gardé avec les réponses.",
        }),
      by: "Votre nom",
      sign: "Demandé à voix haute : non à toutes",
      wanting: "Saisissez d’abord votre nom.",
    },
    /** At the chair, before the clock starts. */
    chairStop: "Ne pas mélanger. Réglez d’abord les blocages.",
    chairNotAsked: "À demander avant de lancer l’horloge.",
    chairHeld: (piece: Piece) =>
      `Un blocage est apparu. Ne commencez ${{ foil: "plus de papillote", panel: "plus de mèche", both: "plus de papillote ni de mèche" }[piece]} et ne mélangez plus de bol. Contrôlez et rincez ce qui est posé.`,
    chairOpen: (piece: Piece) =>
      `Une question est de nouveau ouverte. Ne commencez ${{ foil: "plus de papillote", panel: "plus de mèche", both: "plus de papillote ni de mèche" }[piece]} et ne mélangez plus de bol avant d’y avoir répondu. Contrôlez et rincez ce qui est posé.`,
  }
}
