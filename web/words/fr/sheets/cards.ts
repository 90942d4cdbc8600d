import type { HomeCare, SkinSign } from "../../../../presets/sheets/aftercare"
import type { Tools } from "../../tools"

/** The sheet to take home, and the salon's record card. */
export const cards = (t: Tools) => ({
  takeHome: {
    about: "À emporter",
    done: "Ce qui a été fait",
    planned: "Ce qui est prévu",
    picture: "L’image montre où, pas la couleur.",
    mirror: "Comme vous vous voyez dans le miroir",
    skin: "Surveillez votre peau et votre cuir chevelu aujourd’hui et pendant trois jours",
    signs: {
      irritation:
        "Démangeaisons, rougeur ou éruption : rincez abondamment à l’eau tiède pendant 20 minutes, n’appliquez rien d’autre et appelez-nous. Pas mieux en un jour : pharmacien ou médecin.",
      burn: "Cloques, peau qui suinte ou douleur qui dure : voyez un médecin le jour même. Une brûlure peut apparaître plus tard.",
      breathing: "Gêne pour respirer, ou gonflement du visage, des lèvres, de la langue ou de la gorge :",
      "take-along": "Emportez cette fiche : elle nomme les produits et la date.",
    } satisfies Record<SkinSign, string>,
    breathing: (number: string) =>
      number
        ? `Gêne pour respirer, ou gonflement du visage, des lèvres, de la langue ou de la gorge : utilisez votre stylo d’adrénaline si vous en avez un, appelez immédiatement le ${number}, puis allongez-vous, sauf si respirer est difficile.`
        : "Gêne pour respirer, ou gonflement du visage, des lèvres, de la langue ou de la gorge : utilisez votre stylo d’adrénaline si vous en avez un, appelez immédiatement votre numéro d’urgence (_________), puis allongez-vous, sauf si respirer est difficile.",
    care: "Soins à la maison",
    careWhen: {
      "first-days": "Les deux premiers jours",
      "every-wash": "À chaque lavage",
      weekly: "Une fois par semaine",
      heat: "Chaleur",
      "sun-and-pool": "Soleil et piscine",
    } satisfies Record<HomeCare, string>,
    careText: {
      "first-days": "Pas de lavage, ni élastiques ou pinces serrés.",
      "every-wash":
        "Eau tiède, shampooing doux, après-shampooing sur les longueurs éclaircies. Démêlez en partant des pointes.",
      weekly:
        "Si les cheveux éclaircis paraissent trop chauds : un soin patinant, selon son mode d’emploi. Puis un masque.",
      heat: "Employez une protection thermique selon son étiquette. Appareils chauffants sur cheveux secs seulement, au réglage le plus bas qui suffit.",
      "sun-and-pool":
        "Avant de nager, mouillez les cheveux et mettez de l’après-shampooing ; rincez bien après. Un chapeau en plein soleil.",
    } satisfies Record<HomeCare, string>,
    back: "Quand revenir",
    toner: "Patine",
    frame: "Contour du visage",
    days: (from: string, to: string) => t.days(from, to),
    regrowth: (from: string, to: string) => `${t.days(from, to)} (sur repousse seulement)`,
    test: "Touche d’essai",
    testBy: (hours: number, day: string) =>
      `Avant chaque patine ou coloration, comme l’indique son fabricant, au moins ${t.whole(hours)} heures avant : pour la première date, au plus tard le ${t.date(day)}.`,
    questions: "Des questions ?",
    ask: (salon: string, phone: string) =>
      [salon || "Salon ______________", phone || "téléphone ______________"].join(", "),
    mind: "À retenir",
    defers:
      "Suivez le mode d’emploi de chaque produit ; il passe, avec la loi locale et les règles d’exercice, avant cette fiche. Gardez-la.",
  },

  record: {
    about: "Fiche client",
    private:
      "Confidentiel : contient des réponses de santé. À garder là où seul le personnel autorisé peut la lire.",
    hair: "Cheveux et souhaits",
    planned: "Ce qui est prévu",
    mixed: "Mélangé",
    weighed: "Reste dans le bol",
    weigh: (bowls: readonly { name: string; leftG: number | null }[]) =>
      bowls.map(({ name, leftG }) => `${name} ${leftG === null ? "________" : t.number(leftG)} g`).join(", "),
    toner: "patine",
    mix: (letter: string) => `mélange ${letter}`,
    times: "Prévu et réel, minutes depuis la première séparation",
    heads: {
      number: "N°",
      foil: "Papillote",
      mix: "Mél.",
      on: "Pose",
      off: "Retrait",
      planned: "prévu",
      actual: "réel",
      checks: "Minutes de pose et contrôles",
    },
    alarms: "Incidents",
    takenBack: (what: string) => `${what} (défait)`,
    next: "Prochaine fois",
    defers:
      "Une formule n’est pas une commande à renouveler : à chaque visite passent d’abord une nouvelle consultation, les tests et le mode d’emploi du fabricant, puis la loi locale et les règles d’exercice de la profession.",
  },
})
