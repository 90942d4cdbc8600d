import type { Paper } from "../pens/page"

/** `stops` says in a sentence whether the mix is held, empty says nothing; `zone` is the time zone of the salon's clock. */
export type SheetOptions = { paper: Paper; mirror: boolean; stops: string; zone: string }
