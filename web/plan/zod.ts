import { z } from "zod"

// Zod probes `new Function` unless told not to, which a strict content policy reports as an error.
// So this file comes first and is the only one that imports zod.
z.config({ jitless: true })

export { z }
