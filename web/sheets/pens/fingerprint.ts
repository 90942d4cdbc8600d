/** 32 hexadecimal figures that follow from the text alone: four runs of the FNV-1a hash, each from its own start. */
export function fingerprint(text: string): string {
  return [0x811c9dc5, 0x01000193, 0x9e3779b9, 0x85ebca6b].map((start) => hash(text, start)).join("")
}

function hash(text: string, start: number): string {
  let sum = start
  for (let i = 0; i < text.length; i++) sum = Math.imul(sum ^ text.charCodeAt(i), 0x01000193)
  return (sum >>> 0).toString(16).padStart(8, "0").toUpperCase()
}
