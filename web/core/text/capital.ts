/** Words that begin a sentence or a line. */
export const capital = (words: string) => words[0].toUpperCase() + words.slice(1)
