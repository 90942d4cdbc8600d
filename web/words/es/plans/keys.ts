/** What each key does. The letters are of the tools, and the same in every language. */
export const keys = {
  title: "Teclas",
  rows: {
    tools: {
      keys: "V  S  W  B  P  L  D  H",
      does: "seleccionar, velo, tejido, cardado, pintar, dejar fuera, dividir, contorno",
    },
    free: { keys: "Alt al dibujar", does: "dibuja libre, sin ajustar" },
    nudge: { keys: "← → ↑ ↓ en el mapa", does: "mueve lo seleccionado 1 mm; con Mayús, 5" },
    fingers: { keys: "Tocar con 2 dedos, con 3", does: "deshacer, rehacer" },
    escape: { keys: "Esc", does: "cancela el trazo en curso" },
    undo: { keys: "Ctrl+Z, Ctrl+Mayús+Z", does: "deshacer, rehacer" },
    copy: { keys: "Ctrl+A, Ctrl+C, Ctrl+V", does: "seleccionar todo, copiar, pegar" },
    several: {
      keys: "Mayús o Ctrl en el mapa",
      does: "toque para sumar a la selección; arrastre un recuadro sobre varias",
    },
    list: { keys: "↑ ↓ en la lista", does: "elegir un papel; con Mayús, varios" },
    order: { keys: "Alt+↑ Alt+↓ en la lista", does: "aplicarlo antes, después" },
    mirror: { keys: "M en la lista", does: "reflejar al otro lado" },
    remove: { keys: "Supr en la lista", does: "eliminarlo" },
    number: { keys: "↑ ↓ en un número", does: "un paso más, uno menos" },
    help: { keys: "?", does: "estas teclas" },
  },
}
