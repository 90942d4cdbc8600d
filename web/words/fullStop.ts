/** A sentence with its full stop, and only one where it ends in an initial. */
export const fullStop = (sentence: string) => (sentence.endsWith(".") ? sentence : `${sentence}.`)
