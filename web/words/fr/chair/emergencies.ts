import type { EmergencyName, EmergencyStep } from "../../../../presets/chair/emergencies"
import type { AlarmName } from "../../../core/document/serviceRecord"
import type { Piece } from "../../../core/kinds/kindRecord"
import type { Tools } from "../../tools"
import { pieces } from "../common/pieces"

type Steps = { readonly [N in EmergencyName]: { readonly [S in EmergencyStep<N>]: string } }

/** The red button: short, one thing a line, nothing but what to do. */
export const emergencies = (t: Tools) => ({
  whatIsWrong: "Quel est le problème ?",
  somethingElse: "Autre chose",
  backToClock: "Retour à l’horloge",
  number: (number: string) => `Numéro d’urgence : ${number}`,
  numberUnknown: "Numéro d’urgence : non réglé. Réglez-le dans « Votre salon ».",
  salon: (name: string, phone: string) =>
    [...(name ? [`Salon : ${name}`] : []), ...(phone ? [`Téléphone du salon : ${phone}`] : [])].join(". "),
  first:
    "Dans le doute, appeler d’abord le numéro d’urgence. La formation aux premiers secours et le mode d’emploi du fabricant passent avant cette liste.",
  about: (foils: readonly number[], piece?: Piece) => t.capital(pieces(t).names(foils, piece)),
  done: "Fait",
  stepDone: (step: string) => `Fait : ${step}`,
  log: "Journal",
  time: t.time,
  day: t.day,
  logLine: ({ time, clock, what }: { time: string; clock: string; what: string }) =>
    `${time} (minute ${clock}) : ${what}`,
  logDay: ({ day, time, what }: { day: string; time: string; what: string }) => `${day}, ${time} : ${what}`,
  /** What went wrong, and the step that was done. */
  logStep: ({ what, step }: { what: string; step: string }) => `${what} : ${step}`,
  logFoils: ({ what, foils }: { what: string; foils: string }) => `${what} (${foils})`,

  names: {
    breathing: "Gêne pour respirer, ou visage ou gorge qui gonfle",
    burning: "Cuir chevelu ou peau qui brûle",
    eye: "Produit dans l’œil",
    wheeze: "Respiration sifflante ou toux seulement",
    "hot-foil": "Papillote chaude, gonflée ou qui fume",
    faint: "Évanouissement",
    fit: "Convulsions",
    swallowed: "Produit avalé",
    other: "Autre chose",
  } satisfies { readonly [N in AlarmName]: string },

  steps: {
    breathing: {
      pen: "Utiliser maintenant le stylo d’adrénaline de la personne.",
      call: "Appeler le numéro d’urgence. Dire « anaphylaxie ».",
      "lie-flat":
        "Allonger à plat, jambes surélevées. Redresser seulement si respirer est difficile ; sur le côté gauche en cas de grossesse. Ne pas se lever ni marcher, même si cela va mieux.",
      "second-pen": "Pas mieux après 5 minutes : utiliser un second stylo, s’il y en a un.",
      air: "Éloigner poudre et bol. Ouvrir la fenêtre.",
      "rinse-later": "Quand la respiration le permet, quelqu’un rince le produit.",
      stay: "Rester auprès de la personne. Plus jamais de décolorant pour elle.",
    },
    burning: {
      "foils-off": "Retirer maintenant ce qui est posé à cet endroit. Ne pas attendre le contrôle.",
      rinse:
        "Rincer abondamment à l’eau courante fraîche pendant au moins 20 minutes. Tenir l’eau à l’écart des yeux.",
      "no-ice": "Ni glace, ni crème.",
      "no-more": "Ni chaleur, ni patine, ni rien d’autre sur ce cuir chevelu aujourd’hui.",
      doctor:
        "Cloques, peau lésée ou douleur qui dure : voir un médecin aujourd’hui, avec le nom du produit et son temps de pose. Brûlures étendues, profondes ou au visage : appeler le numéro d’urgence.",
    },
    eye: {
      rinse:
        "Rincer immédiatement à l’eau tiède, sous un filet doux. Tenir les paupières ouvertes ; laisser couler du nez vers l’extérieur, à l’opposé de l’autre œil.",
      lens: "Enlever une lentille de contact si elle vient facilement ; continuer à rincer.",
      "keep-rinsing": "Continuer à rincer au moins 20 minutes. Ne pas frotter, pas de gouttes.",
      go: "Appeler le numéro d’urgence ou aller aux urgences ophtalmologiques ; si possible, continuer à rincer en route. Emporter le pot. La personne ne doit pas conduire.",
    },
    wheeze: {
      "powder-away": "Éloigner poudre et bol. Faire entrer de l’air frais.",
      inhaler: "Aider avec l’inhalateur de la personne.",
      call: "Pas mieux en 5 minutes, ou pire : appeler le numéro d’urgence.",
      "rinse-later": "Quand la respiration est facile, rincer le produit et arrêter la prestation.",
    },
    "hot-foil": {
      "take-off": "Gants mis. Ne pas l’ouvrir au-dessus du visage. Retirer la papillote.",
      "into-water":
        "Plonger la papillote et son produit dans beaucoup d’eau, dehors ou à l’écart des personnes.",
      rinse:
        "Rincer abondamment à l’eau fraîche cette mèche et le cuir chevelu dessous ; 20 minutes si la peau est chaude ou fait mal.",
      "feel-others": "Tâter toutes les autres papillotes de ce bol. Retirer toute papillote chaude.",
      flames: "Flammes : alarme incendie, pompiers, sortir.",
      "no-more": "Plus de chaleur ni de ce mélange aujourd’hui. Noter de quel bol il s’agissait.",
    },
    faint: {
      "lie-flat": "Allonger la personne à plat, jambes surélevées ; sur le côté gauche en cas de grossesse.",
      "keep-clear": "Tenir le produit à l’écart des yeux et de la bouche. Desserrer le peignoir. Air frais.",
      "not-awake":
        "Pas de réveil en une minute : position latérale de sécurité, appeler le numéro d’urgence.",
      "not-breathing":
        "Respiration anormale : appeler, commencer les compressions thoraciques, aller chercher le défibrillateur.",
      end: "Réveil : rester allongé un moment. Rincer le produit et arrêter la prestation.",
    },
    fit: {
      "make-room": "Faire de la place. Écarter les objets durs ; caler la tête sur du mou.",
      "nothing-in": "Rien dans la bouche. Ne pas maintenir la personne de force.",
      "time-it": "Chronométrer.",
      call: "Plus de 5 minutes, première fois, ou blessure : appeler le numéro d’urgence.",
      after: "Ensuite : position latérale de sécurité. Rester. Rincer le produit.",
    },
    swallowed: {
      "rinse-mouth": "Rincer la bouche à l’eau.",
      "not-sick": "Ne pas faire vomir.",
      call: "Appeler le centre antipoison ou le numéro d’urgence, le pot à la main.",
    },
  } satisfies Steps,
})
