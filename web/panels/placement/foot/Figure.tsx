/** A figure before its words. */
export const Figure = ({ value, words }: { value: string; words: string }) => (
  <span className="figure">
    <b>{value}</b> {words}
  </span>
)
