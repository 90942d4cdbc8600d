import * as z from "zod/mini"

// Zod probes `new Function` unless told not to, which a strict content policy reports as an error.
// So this file comes first and is the only one that imports zod. The small build of it: the map waits for it to load.
z.config({ jitless: true })

export { z }
