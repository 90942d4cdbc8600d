import { bench } from "./bench"

/** The table, made while this module is loaded: the words of a language are fetched by a loader that closes with it. */
export const table = await bench()
