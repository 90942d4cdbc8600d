import type { Paper } from "./page"

/** `stops` says in a sentence whether the mix is held; empty says nothing. */
export type SheetOptions = { paper: Paper; mirror: boolean; stops: string }
