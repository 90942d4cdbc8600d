const starts = [0x811c9dc5, 0x01000193, 0x9e3779b9, 0x85ebca6b] as const

/** 32 hexadecimal figures that follow from the text alone: four runs of the FNV-1a hash, each from its own start. */
export function fingerprint(text: string): string {
  let [first, second, third, fourth]: readonly number[] = starts
  for (let i = 0; i < text.length; i++) {
    const letter = text.charCodeAt(i)
    first = Math.imul(first ^ letter, 0x01000193)
    second = Math.imul(second ^ letter, 0x01000193)
    third = Math.imul(third ^ letter, 0x01000193)
    fourth = Math.imul(fourth ^ letter, 0x01000193)
  }
  return [first, second, third, fourth].map(figures).join("")
}

const figures = (sum: number) => (sum >>> 0).toString(16).padStart(8, "0").toUpperCase()
