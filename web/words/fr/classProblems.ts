import type { classProblems as english } from "../en/classProblems"

/** What is wrong with the list of a class or of its heads, a row of it by its line. */
export const classProblems: typeof english = (t) => ({
  "too-large": ({ mostMb }) => `Liste attendue : au plus ${t.whole(mostMb)} Mo. Est-ce un autre fichier ?`,
  "columns-missing": ({ columns }) =>
    `Ligne 1 : ${t.and(columns)} manque. Un en-tête avec ces colonnes est attendu.`,
  "column-twice": ({ column }) => `Ligne 1 : la colonne « ${column} » figure deux fois. En garder une.`,
  "no-rows": "La liste n’a pas de ligne sous son en-tête.",
  "cell-empty": ({ line, column }) =>
    `Ligne ${t.whole(line)}, ${column} : vide. La remplir ou retirer la ligne.`,
  "no-file-name": ({ line, found }) =>
    `Ligne ${t.whole(line)}, name : « ${found} » ne peut pas nommer un fichier. Lettres ou chiffres, 80 au plus.`,
  twice: ({ line, first, column, found }) =>
    `Ligne ${t.whole(line)}, ${column} : « ${found} » donne le même fichier que la ligne ${t.whole(first)}. Les distinguer.`,
  "no-number": ({ line, column, found }) =>
    `Ligne ${t.whole(line)}, ${column} : millimètres au-dessus de 0 attendus, trouvé « ${found} ».`,
  measures: ({ line }) =>
    `Ligne ${t.whole(line)} : attendu soit length, breadth, height, soit around, over, front-to-nape.`,
  "no-hairline": ({ line, found, known }) =>
    `Ligne ${t.whole(line)}, hairline : attendu ${t.or(known)}, trouvé « ${found} ».`,
  "head-size": ({ line }) => `Ligne ${t.whole(line)} : aucune tête n’a ces mesures.`,
  "not-in-class": ({ line, found }) =>
    `Ligne ${t.whole(line)}, name : personne dans la classe n’est « ${found} ». L’écrire comme dans --names.`,
  "learner-without-file": ({ line, name, found }) =>
    found === ""
      ? `Ligne ${t.whole(line)}, file : ${name} n’en a pas. La remplir ou retirer la ligne.`
      : `Ligne ${t.whole(line)}, file : « ${found} » de ${name} n’est pas parmi les fichiers nommés une fois après le modèle.`,
  "file-without-learner": ({ found }) => `« ${found} » n’est à personne dans la classe. Ajouter une ligne.`,
})
