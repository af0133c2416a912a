/** An amount of grams from which `f`, positive at nothing and falling without end, is no longer positive. */
export function enoughG(f: (addedG: number) => number, startG: number): number {
  let high = startG
  for (let doubling = 0; doubling < 60 && f(high) > 0; doubling++) high *= 2
  return high
}
