/** Scores as shares of 1: the softmax. */
export function softmax(scores: readonly number[]): readonly number[] {
  const most = Math.max(...scores)
  const odds = scores.map((score) => Math.exp(score - most))
  const all = odds.reduce((sum, each) => sum + each, 0)
  return odds.map((each) => each / all)
}
