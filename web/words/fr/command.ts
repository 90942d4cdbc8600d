import type { ArgumentProblem } from "../../core/command/argumentProblem"
import type { LearnProblem } from "../../core/joining/readRows"
import type { Sentences } from "../say"
import type { Tools } from "../tools"
import { classProblems } from "./classProblems"
import { classVerbs, headOptions } from "./classVerbs"

/** The headless command: what it explains of itself, and what it cannot use. */
export const command = (t: Tools) => ({
  done: {},
  eachExplains: "Chaque verbe s’explique avec --help.",
  failed: (why: string) => `Partline n’a pas pu le faire : ${why}`,
  language: (tags: readonly string[]) => `langue des phrases : ${tags.join(", ")} ; en-GB par défaut`,

  problems: {
    "unknown-verb": ({ verb, known }) => `« ${verb} » n’est pas un verbe : attendu ${known.join(", ")}.`,
    "unknown-option": ({ option, known }) =>
      known.length > 0
        ? `--${option} n’est pas une option de ce verbe : attendu ${known.map((name) => `--${name}`).join(", ")}.`
        : `--${option} n’est pas une option de ce verbe : aucune option attendue.`,
    "given-twice": ({ option }) => `--${option} est donné deux fois : attendu une seule fois.`,
    "no-value": ({ option }) => `--${option} : une valeur est attendue après.`,
    "no-file-expected": ({ file }) => `« ${file} » n’est pas attendu ici : ce verbe ne prend pas de fichier.`,
    "file-missing": "FILE manque : chemin d’un plan attendu.",
    "one-file-too-many": ({ file }) => `« ${file} » est un fichier de trop : chemin d’un seul plan attendu.`,
    "not-a-choice": ({ option, known, found }) =>
      found === null
        ? `--${option} manque : attendu ${t.or(known)}.`
        : `--${option} : attendu ${t.or(known)}, trouvé « ${found} ».`,
    "out-missing": "--out manque : chemin du PDF à écrire attendu.",
    "cannot-write": ({ path }) =>
      `--out : impossible d’écrire « ${path} » : chemin attendu dans un dossier qui existe.`,
    "cannot-read": ({ file }) =>
      `Impossible de lire « ${file} » : chemin attendu d’un plan enregistré par Partline.`,
    "cannot-read-list": ({ file }) =>
      `Impossible de lire « ${file} » : chemin attendu d’une liste de pesées, CSV.`,
    "head-choose":
      "Taille de la tête : attendu soit --length --breadth --height, soit --around --over --front-to-nape.",
    "measure-missing": ({ option }) => `--${option} manque : millimètres attendus.`,
    "measure-unusable": ({ option, found }) =>
      `--${option} : millimètres au-dessus de 0 attendus, trouvé « ${found} ».`,
    "number-missing": ({ option }) => `--${option} manque : attendu ${numbers[option]}.`,
    "number-unusable": ({ option, found }) =>
      `--${option} : attendu ${numbers[option]}, trouvé « ${found} ».`,
    "minutes-unusable": ({ option, found }) =>
      `--${option} : attendu ${minutes[option]} au-dessus de 0, trouvé « ${found} ».`,
    "levels-together": "--from et --to : attendu les deux hauteurs, ou aucune.",
    "consent-missing":
      "--consent yes manque : le salon dit par là que ses chiffres peuvent être transmis. Aucune donnée sur la clientèle n’y figure.",
    "csv-out-missing": "--out manque : chemin du CSV à écrire attendu.",
    "start-out-missing": "--out manque : chemin du JSON à écrire attendu.",
    "nothing-to-learn":
      "Rien à transmettre : aucun bol pesé après une prestation, aucun test mèche et aucune papillote minutée au fauteuil. Donner plus de plans, ou une liste de pesées.",
    "too-few-salons": ({ salons, least }) =>
      `${t.count(salons, { one: "# fichier", other: "# fichiers" })}, un par salon : attendu au moins ${t.whole(least)}.`,
    "cannot-read-folder": ({ folder }) => `Impossible de lire « ${folder} » : chemin d’un dossier attendu.`,
    "client-missing": "--client manque : identifiant ou nom attendu, comme le verbe clients les donne.",
    "client-unknown": ({ client }) =>
      `--client : personne ici n’est « ${client} ». Le verbe clients dit qui est là.`,
    "client-several": ({ client, ids }) =>
      `--client : plusieurs cartes s’appellent « ${client} » : un des identifiants ${ids.join(", ")} attendu.`,
    "client-out-missing": "--out manque : chemin du JSON ou du HTML à écrire attendu.",
    "sure-missing": ({ name, plans, files }) =>
      `--sure yes manque : ${name} serait effacé pour de bon, ${t.count(plans, { one: "# plan", other: "# plans" })}, de ${files.join(", ")}. Rien n’a été changé.`,
    "cannot-erase": ({ path }) =>
      `Impossible de supprimer ou d’écrire « ${path} » : ce qu’il contient est toujours là.`,
    "same-rows": ({ file, other }) =>
      `« ${file} » contient les mêmes lignes que « ${other} » : donner chaque salon une seule fois.`,
    "not-a-technique": ({ file, known }) =>
      `« ${file} » n’est pas une technique : attendu le chemin d’un fichier de technique ou une de ${known.join(", ")}.`,
    "not-a-model": ({ file, known }) =>
      `« ${file} » n’est pas un modèle : attendu le chemin d’un plan ou d’un fichier de technique, ou une de ${known.join(", ")}.`,
    "names-missing": "--names manque : attendu le chemin de la classe, CSV avec la colonne name.",
    "folder-out-missing": "--out manque : attendu le chemin du dossier où écrire.",
    "plan-out-missing": "--out manque : attendu le chemin du plan à écrire.",
    "learner-missing": "LEARNER manque : attendu le chemin d’au moins un plan après le modèle.",
    "table-out-alone": "--names est pour une classe : --out, --sheets ou les deux sont attendus avec.",
    "learner-twice": ({ file }) =>
      `« ${file} » : un autre fichier donne le même nom. Donner chacun une fois, ou les distinguer avec --names.`,
    "within-unusable": ({ found, known }) =>
      `--within : attendu ${known.join(", ")}, chacun avec un nombre au-dessus de 0, comme ${known[0]}=3 ; trouvé « ${found} ».`,
    "no-room": ({ name, learner }) =>
      learner === null
        ? `${name} n’a pas de place sur cette tête.`
        : `${name} n’a pas de place sur la tête de ${learner}.`,
    "cannot-write-one": ({ path, written }) =>
      written.length === 0
        ? `« ${path} » ne peut pas être écrit : attendu un dossier où l’on peut écrire. Rien n’a été écrit.`
        : `« ${path} » ne peut pas être écrit : attendu un dossier où l’on peut écrire. Écrits avant : ${written.join(", ")}.`,
  } satisfies Sentences<ArgumentProblem>,

  passedOn:
    "Des nombres seulement : ni nom, ni note, ni produit, ni jour ne figurent dans la liste. La lire avant de la transmettre.",
  joined:
    "Un nouveau salon prend ce fichier sous « Formule », « Peser vos bols » ; calibrate le prend avec --start. Ses propres bols resserrent ensuite les chiffres.",
  learn: learnProblems(t),
  classes: classProblems(t),
  progress: (done: number, count: number) => `${t.whole(done)} sur ${t.whole(count)}`,

  overLegalLimit: (percent: number) =>
    `Note : la loi permet au plus ${t.number(percent)} % dans l’UE et au Royaume-Uni dans un produit capillaire prêt à l’emploi.`,

  /** What each verb prints, what else there is to know of it, and each option. */
  verbs: {
    head: {
      summary:
        "Les mesures sur la peau, la surface chevelue et ses zones, et les repères d’une tête de cette taille.",
      details: [],
      options: headOptions,
    },
    measure: {
      summary:
        "Les chiffres de chaque section d’un plan, dans l’ordre de pose, et leurs totaux, sans compter un cheveu deux fois.",
      details: [],
      options: {},
    },
    check: {
      summary:
        "Si le plan peut être mélangé, avec blocages et mises en garde : sortie 1 pour un blocage, 3 pour ce qui n’a pas été demandé, 0 avec feu vert.",
      details: [],
      options: {},
    },
    mix: {
      summary: "Que mélanger pour le plan : force, grammes voulus, et chaque bol avec sa minute.",
      details: [],
      options: {},
    },
    sheet: {
      summary: "Une fiche d’un plan en PDF ; celle à emporter, aussi comme page pour un navigateur.",
      details: [
        "--language est la langue de la fiche ; les phrases sur la commande sont dans celle de --messages.",
      ],
      options: {
        kind: "placement, technique, take-home (à emporter) ou record (fiche client)",
        paper: "a4 ou letter ; letter pour en-US, sinon a4, par défaut",
        out: "où écrire le PDF ; take-home finissant par .html s’écrit comme page pour un navigateur",
        front: "le devant vu de face (facing), ou vu dans le miroir (mirror) ; facing par défaut",
        messages: "langue des phrases sur la commande ; en-GB par défaut",
      },
    },
    validate: {
      summary: "Si un fichier est un plan qui peut s’ouvrir, et sinon ce qui ne va pas.",
      details: [],
      options: {},
    },
    blend: {
      summary: "Grammes de chaque flacon qui donnent ensemble le titre voulu, en masse.",
      details: [],
      options: {
        have: "pour cent des flacons, une virgule entre eux : 12,3",
        want: "pour cent voulu : 6",
        grams: "grammes voulus en tout : 90",
      },
    },
    calibrate: {
      summary:
        "Grammes par papillote, absorption et dépôt appris de papillotes ou de bols pesés (colonnes hairG,strandAreaCm2,productG et, pour les bols, foils), avec fourchettes à 80 %.",
      details: [],
      options: { start: "chiffres réunis au départ (learn join) ; les chiffres de départ par défaut" },
    },
    clients: {
      summary: "Les clients d’un dossier : qui, combien de plans, la dernière visite et dans quels fichiers.",
      details: [
        "Lit les fichiers .json du dossier même : plans, cartes, fichiers de clients et sauvegardes. Aucun plan ne nomme son client :",
        "un fichier de client ou une sauvegarde le dit. unread : fichiers dont personne ne sait à qui ils sont.",
      ],
      options: {},
    },
    export: {
      summary:
        "Tout ce qu’un dossier contient d’un client, en fichier que Partline rouvre ou en page à lire.",
      details: ["Il contient les réponses de santé et n’est pas verrouillé."],
      options: {
        client: "l’identifiant ou le nom, comme le verbe clients les donne",
        out: "où l’écrire ; s’il finit par .html, c’est une page à lire",
      },
    },
    erase: {
      summary:
        "Efface pour de bon un client d’un dossier : carte, plans et fichier, et lui seul des sauvegardes. Les techniques restent.",
      details: [
        "Sans --sure, dit ce qui partirait et ne change rien. Donne les fichiers supprimés et réécrits, et ceux qui ne se lisent pas :",
        "regardez-les vous-même. Les copies dans d’autres dossiers et les feuilles imprimées ne sont pas atteintes.",
      ],
      options: {
        client: "l’identifiant ou le nom, comme le verbe clients les donne",
        sure: "yes : tout part pour de bon",
      },
    },
    "learn export": {
      summary:
        "Ce qu’un salon a appris, en une petite liste à transmettre : pesées, tests mèche et rythmes, sans donnée sur la clientèle.",
      details: [
        "Prend des plans avec leurs prestations et des listes de pesées ; un bol compte s’il a été pesé après la prestation. Les",
        "lignes 1 et 2 de la liste sont les colonnes et leurs unités. Lignes : weighing (kind, foils, hairG, strandAreaCm2,",
        "productG), strand (un contrôle par ligne) et pace (papillotes minutées d’une personne, moyenne et dispersion). Rien d’autre.",
      ],
      options: {
        consent: "yes : le salon accepte que ses chiffres soient transmis",
        out: "où écrire le CSV",
      },
    },
    "learn join": {
      summary: "Les listes de trois salons ou plus, réunies en ce dont part un nouveau salon.",
      details: [
        "Imprime chaque chiffre pour un nouveau salon, avec sa fourchette à 80 % (halfTimeMin : deux tiers des têtes) et l’écart",
        "entre salons, en proportion, un écart type. null si moins de trois salons le renseignent ; le chiffre reste alors tel quel.",
      ],
      options: {
        out: "où écrire les chiffres réunis, JSON",
      },
    },
    ...classVerbs,
    timing: {
      summary:
        "Quand chaque papillote se pose, peut être prête et se retire, les bols et contrôles, et les conflits.",
      details: [
        "Imprime foils, bowls, looks, firstOnMin, lastOnMin, rinseMin et conflicts ; en plus chairMin (tout le rendez-vous, une",
        "fourchette), heat (mise et ôtée, ou null), steps (rinçage, démêlage, patine par zone, séchage) et, par bol, mélange et",
        "sections. Un bout de readyMin est null si la hauteur visée n’est pas atteinte à temps. Règles de conflicts : over-run,",
        "under-processed, pot-life, booking et hairline-ahead (un seul rinçage, la lisière prête bien avant l’arrière).",
      ],
      options: {
        pace: "minutes par papillote, de l’une à la suivante ; le rythme du plan par défaut",
        hands: "1 : coloriste, 2 : avec renfort ; selon le plan par défaut",
        rinse:
          "each : chaque papillote retirée quand elle est prête ; together : un seul rinçage ; selon le plan par défaut",
        from: "hauteur actuelle des cheveux, de 1 à 10 ; avec --to ; celles du plan par défaut",
        to: "hauteur visée ; sans elle, les papillotes sont prêtes quand la plupart le sont",
        booking: "minutes réservées ; celles du plan par défaut",
      },
    },
  },
})

const learnProblems = (t: Tools) => {
  const at = ({ line, column, found }: { line: number; column: string; found: string }) =>
    `Ligne ${t.whole(line)}, ${column} : ${found === "" ? "case vide" : `trouvé « ${found} »`}`
  const strands = {
    order: "ses contrôles ne sont pas dans l’ordre du temps, ou dépassent le temps maximum",
    printed: "l’éclaircissement imprimé le plus bas dépasse le plus haut",
    alike:
      "ses lignes diffèrent par la force, l’éclaircissement imprimé, le temps maximum ou la hauteur de départ",
    "too-many": "elle a plus de contrôles qu’un test mèche",
  }
  return {
    "too-large": ({ mostMb }) =>
      `Attendu une liste de ${t.whole(mostMb)} Mo au plus. Est-ce un autre fichier ?`,
    "columns-missing": ({ columns }) =>
      `Ligne 1 : il manque ${t.and(columns)}. Récrivez la liste avec learn export.`,
    "column-unknown": ({ column }) =>
      `Ligne 1 : « ${column} » n’est pas une colonne d’une telle liste. Retirez-la.`,
    unit: (cell) => `${at(cell)} ; unité ${cell.unit} attendue.`,
    cells: ({ line, cells, columns }) =>
      `Ligne ${t.whole(line)} : ${t.whole(cells)} valeurs pour ${t.whole(columns)} colonnes. Si des nombres contiennent une virgule, écrivez un point : 4.5 au lieu de 4,5.`,
    word: (cell) =>
      cell.known.length > 0
        ? `${at(cell)} ; attendu ${t.or(cell.known)}.`
        : `${at(cell)} ; rien n’est attendu. Videz la case.`,
    number: (cell) =>
      `${at(cell)} ; attendu un ${cell.isWhole ? "nombre entier" : "nombre"} de ${t.number(cell.low, 2)} à ${t.number(cell.high, 2)}. Corrigez-le, ou retirez la ligne.`,
    "not-of-row": (cell) => `${at(cell)} ; une ligne ${cell.row} n’a rien ici. Videz la case.`,
    strand: ({ strand, why }) =>
      `Mèche ${t.whole(strand)} : ${strands[why]}. Corrigez ses lignes, ou retirez-les.`,
    "no-rows": "La liste n’a aucune ligne.",
    more: ({ count }) =>
      t.count(count, { one: "Et une autre du même genre.", other: "Et # autres du même genre." }),
  } satisfies Sentences<LearnProblem>
}

const numbers = {
  have: "des pour cent séparés par une virgule, 12,3",
  want: "un pour cent, 6 ou 7.5",
  grams: "des grammes, 90 ou 37.5",
}
const minutes = { pace: "des minutes par papillote", booking: "des minutes" }
