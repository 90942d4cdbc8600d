import { type Fonts, readFontFile } from "./fontFile"
import regular from "./fonts/PartlineSans-Regular.ttf?url"
import semibold from "./fonts/PartlineSans-SemiBold.ttf?url"
import type { Weight } from "./page"
import { systemLetters } from "./systemLetters"

export const fontFiles: Record<Weight, string> = {
  regular: "PartlineSans-Regular.ttf",
  semibold: "PartlineSans-SemiBold.ttf",
}

/** Where the bytes of a font file come from: the page's own server, or, without a screen, the disk. */
export type ReadFont = (weight: Weight) => Promise<Uint8Array>

const addresses: Record<Weight, string> = { regular, semibold }

const fetchFont: ReadFont = async (weight) =>
  new Uint8Array(await (await fetch(addresses[weight])).arrayBuffer())

let loaded: Promise<Fonts> | null = null

/** The two weights of the sheets' typeface, read once. */
export async function loadFonts(read: ReadFont = fetchFont): Promise<Fonts> {
  loaded ??= Promise.all([read("regular"), read("semibold")]).then(([regularBytes, semiboldBytes]) => ({
    regular: readFontFile(regularBytes),
    semibold: readFontFile(semiboldBytes),
    system: systemLetters(),
  }))
  // What failed is tried anew by whoever asks next.
  loaded.catch(() => {
    loaded = null
  })
  return loaded
}
