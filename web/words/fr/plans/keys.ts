/** What each key does. The letters are of the tools, and the same in every language. */
export const keys = {
  title: "Touches",
  rows: {
    tools: {
      keys: "V  S  W  B  P  L  D  H",
      does: "choisir, tranche, tricotage, crêpage, peindre, laisser, diviser, lisière",
    },
    free: { keys: "Alt en traçant", does: "trace librement, sans calage" },
    nudge: { keys: "← → ↑ ↓ sur le schéma", does: "déplace la sélection de 1 mm, avec Maj de 5" },
    fingers: { keys: "Appui à 2 doigts, à 3", does: "défaire, refaire" },
    escape: { keys: "Échap", does: "annule le tracé en cours" },
    undo: { keys: "Ctrl+Z, Ctrl+Maj+Z", does: "défaire, refaire" },
    copy: { keys: "Ctrl+A, Ctrl+C, Ctrl+V", does: "tout choisir, copier, coller" },
    several: {
      keys: "Maj ou Ctrl sur le schéma",
      does: "appuyer pour ajouter à la sélection ; tracer un cadre pour en prendre plusieurs",
    },
    list: { keys: "↑ ↓ dans la liste", does: "choisit une papillote ; avec Maj plusieurs" },
    order: { keys: "Alt+↑ Alt+↓ dans la liste", does: "la poser plus tôt, plus tard" },
    mirror: { keys: "M dans la liste", does: "copie en miroir de l’autre côté" },
    remove: { keys: "Suppr dans la liste", does: "la supprime" },
    number: { keys: "↑ ↓ dans un nombre", does: "un pas de plus, de moins" },
    help: { keys: "?", does: "ces touches" },
  },
}
