/** A message or a group of them as another language turns it: the same data, words of its own. */
export type Worded<T> = T extends string
  ? string
  : T extends (...given: infer Given) => infer Said
    ? (...given: Given) => Worded<Said>
    : { [K in keyof T]: Worded<T[K]> }
