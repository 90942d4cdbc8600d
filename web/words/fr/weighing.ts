import { calibrationFigures } from "../../../presets/weighing/calibrationFigures"
import type { WeighableCode } from "../../core/bowls/weighables"
import type { LearntFigures } from "../../core/document/salon"
import type { TrustCode } from "../../core/weighing/trust"
import type { ReadingProblem } from "../../core/weighing/weighedBowl"
import { type ListProblem, neededColumns } from "../../core/weighing/weighingCsv"
import type { Sentences } from "../say"
import type { Tools } from "../tools"
import type { CommonWords } from "./common/common"

export const weighing = (t: Tools, { foils: foilsWords, kinds, mix: mixName }: CommonWords) => ({
  done: {
    "keep-weighing": "Enregistrer une pesée",
    "add-list": "Ajouter des pesées depuis une liste",
    "leave-out": "Écarter une pesée",
    "count-again": "Compter de nouveau une pesée",
    "remove-weighing": "Retirer une pesée",
    "back-to-start": "Revenir aux chiffres de départ",
    "count-all": "Compter de nouveau toutes les pesées",
    "take-start": "Partir des chiffres d’autres salons",
    "leave-start": "Revenir aux chiffres du métier",
  },

  title: "Peser vos bols",
  bowl: {
    how: "Pesez le bol avec son pinceau avant la première papillote et après la dernière.",
    noFoils: "Pas encore de papillotes. Ensuite, pesez chaque bol, avec son pinceau, avant et après.",
    what: "Pesé",
    chooseOne: "Choisir",
    before: "Avant",
    after: "Après",
    save: ({ productG }: { productG: number }) => `Enregistrer : ${t.number(productG)} g utilisés`,
    /** What was weighed, in the list to choose from and as it is saved. */
    name: {
      bowl: ({ mix, bowl, foils }) =>
        `${t.capital(mixName(mix))}, bol ${t.whole(bowl)} : ${foilsWords(foils)}`,
      foil: ({ foil }) => `Papillote ${t.whole(foil)} seule`,
      coat: ({ foil, part, mix }) =>
        `${t.capital(mixName(mix))} sur ${part === "roots" ? "la racine" : "longueurs et pointes"} de la papillote ${t.whole(foil)}`,
    } satisfies Sentences<WeighableCode>,
    /** A weighing as it is saved: the day and name of its plan, then what was weighed. */
    ofPlan: ({ date, plan, what }: { date: string; plan: string; what: string }) =>
      plan ? `${date}, ${plan} : ${what}` : `${date} : ${what}`,
    problem: readingProblems(t),
  },
  learnt: learntWords(t, kinds),
  picture: {
    name: "Grammes prévus et pesés ; la liste ci-dessous dit la même chose en chiffres",
    axis: "g pesés",
    legend:
      "En hauteur : grammes prévus, la barre quatre fois sur cinq. En largeur : grammes pesés. Sur la ligne oblique, les deux concordent. Les points comptent, les croix paraissent fausses, les cercles sont écartés.",
  },
  rows: {
    count: (count: number) => t.count(count, { one: "# pesée", other: "# pesées" }),
    doubted: "Pesées qui paraissent fausses",
    looksWrong: ({ name, weighedG, expectedG }: { name: string; weighedG: number; expectedG: number }) =>
      `${name} : ${t.number(weighedG)} g pesés ; les autres donnent environ ${t.grams(expectedG)}. Vérifiez, ou écartez-la.`,
    figures: ({ weighedG, expectedG }: { weighedG: number; expectedG: number }) =>
      `${t.number(weighedG)} g pesés, ${t.grams(expectedG)} prévus`,
    counts: "Compte",
    remove: "Retirer",
    removeThis: ({ name }: { name: string }) => `Retirer ${name}`,
  },
  start: {
    take: "Partir des chiffres d’autres salons, JSON",
    leave: "Partir des chiffres du métier",
    from: ({ salons }: { salons: number }) =>
      t.count(salons, {
        one: "Au départ : les chiffres de # salon. Vos propres bols les resserrent.",
        other: "Au départ : les chiffres réunis de # salons. Vos propres bols les resserrent.",
      }),
  },
  list: {
    add: "Ajouter une liste, CSV",
    save: "Enregistrer la liste, CSV",
    backToStart: "Revenir aux chiffres de départ",
    countAll: "Compter de nouveau toutes les pesées",
    /** A weighing that came from a list. */
    line: ({ file, line }: { file: string; line: number }) => `${file}, ligne ${t.whole(line)}`,
    problem: listProblems(t),
    /** A line that the others do not bear out. */
    doubtful: ({ line, weighedG, expectedG }: { line: number; weighedG: number; expectedG: number }) =>
      `La ligne ${t.whole(line)} paraît fausse : ${t.number(weighedG, 1)} g pesés ; les autres donnent environ ${t.number(expectedG, 1)} g. Vérifiez-la ou écartez-la.`,
  },
})

const readingProblems = (t: Tools) => {
  const said = ({ beforeG, afterG }: ReadingProblem) =>
    `${t.number(beforeG, 1)} g avant et ${t.number(afterG, 1)} g après`
  return {
    "not-read": (read) =>
      `${said(read)} : saisissez les deux pesées en grammes, avec le même bol et le même pinceau.`,
    gained: (read) =>
      `${said(read)} : le bol pèse plus après qu’avant. Les deux pesées sont-elles inversées ?`,
    "nothing-placed": (read) => `${said(read)} : rien n’a été utilisé. Écartez ce bol.`,
  } satisfies Sentences<ReadingProblem>
}

const learntWords = (t: Tools, kinds: CommonWords["kinds"]) => {
  const { share, probability } = calibrationFigures.trust
  const target = `à ${t.percent(share)} près, ${t.number(10 * probability)} fois sur 10`
  const stands = ({ withinShare }: { withinShare: number }) =>
    `Le chiffre médian est juste à ${t.percent(withinShare)} près, 9 fois sur 10.`
  return {
    trust: {
      "no-agreement":
        "Ces pesées ne concordent pas assez pour dire de combien le chiffre médian peut se tromper.",
      trusted: (trust) => `${stands(trust)} On peut s’y fier.`,
      "more-needed": (trust) =>
        `${stands(trust)} ${t.count(trust.more, {
          one: `Il faut encore une pesée comme celles-ci pour l’avoir ${target}.`,
          other: `Il faut encore # pesées comme celles-ci pour l’avoir ${target}.`,
        })}`,
      "too-many-needed": (trust) =>
        `${stands(trust)} Aucun nombre de pesées comme celles-ci ne le donnerait ${target}.`,
    } satisfies Sentences<TrustCode>,
    byStart: "Jusque-là, ce plan emploie les chiffres de départ, qui sont des hypothèses.",
    /** What the figures of this plan were learnt from. */
    byWeighings: (learnt: readonly Pick<LearntFigures, "product" | "kind" | "weighings">[]) =>
      `Ce plan emploie ce qui a été appris : ${t.and(
        learnt.map(
          ({ product, kind, weighings }) =>
            `${[product, kind && kinds[kind]].filter(Boolean).join(", ") || "toutes les pesées"} (pesées : ${t.whole(weighings)})`,
        ),
      )}.`,
    figure: "Chiffre",
    start: "Au départ",
    weighed: "D’après pesées",
    names: {
      lossG: "Perte par papillote",
      soakGPerG: "Absorbé, par gramme de cheveux",
      coatMgPerCm2: "Dépôt par cm² de cheveux",
    },
    grams: ({ low, mid, high }: { low: number; mid: number; high: number }) =>
      `${t.number(mid)} g (de ${t.number(low)} à ${t.number(high)})`,
    milligrams: ({ low, mid, high }: { low: number; mid: number; high: number }) =>
      `${t.number(mid)} mg (de ${t.number(low)} à ${t.number(high)})`,
  }
}

const listProblems = (t: Tools) => {
  const columns = `colonnes attendues : ${neededColumns.join(",")} (et foils, si une ligne est un bol pour plusieurs)`
  const at = ({ line, column }: { line: number; column: string }) => `Ligne ${t.whole(line)}, ${column}`
  const found = (cell: { found: string }) => (cell.found === "" ? "case vide" : `trouvé « ${cell.found} »`)
  return {
    "file-too-large": ({ mostMb }) =>
      `Une liste de pesées fait au plus ${t.whole(mostMb)} Mo. Est-ce un autre fichier ?`,
    "header-empty": `La ligne 1 est vide ; ${columns}.`,
    "header-separator": ({ separator }) =>
      separator === "tabs"
        ? "Ligne 1 : les colonnes sont séparées par des tabulations. Enregistrez la liste avec des virgules entre les colonnes et des points dans les nombres, 4.5."
        : "Ligne 1 : les colonnes sont séparées par des points-virgules. Enregistrez la liste avec des virgules entre les colonnes et des points dans les nombres, 4.5.",
    "columns-missing": ({ columns: missing }) => `Ligne 1 : il manque ${t.and(missing)} ; ${columns}.`,
    "column-unknown": ({ column }) => `Ligne 1 : « ${column} » est de trop ; ${columns}.`,
    cells: ({ line, cells, columns }) =>
      `Ligne ${t.whole(line)} : ${t.whole(cells)} valeurs pour ${t.whole(columns)} colonnes. Si des nombres contiennent une virgule, écrivez un point : 4.5 au lieu de 4,5.`,
    "decimal-comma": (cell) => `${at(cell)} : ${found(cell)} ; écrivez un point, ${cell.write}.`,
    "no-number": (cell) => `${at(cell)} : nombre attendu, ${found(cell)}.`,
    negative: (cell) =>
      `${at(cell)} : 0 ou plus attendu, ${found(cell)}. Pesez de nouveau ou écartez la ligne.`,
    "nothing-used": (cell) =>
      `${at(cell)} : grammes au-dessus de 0 attendus, ${found(cell)}. Écartez la ligne si rien n’a été utilisé.`,
    "not-whole": (cell) => `${at(cell)} : nombre entier à partir de 1 attendu, ${found(cell)}.`,
    "too-large": (cell) => `${at(cell)} : ${t.whole(cell.most)} au plus attendu, ${found(cell)}.`,
    "more-slips": ({ count }) =>
      t.count(count, { one: "Et une autre du même genre.", other: "Et # autres du même genre." }),
  } satisfies Sentences<ListProblem>
}
