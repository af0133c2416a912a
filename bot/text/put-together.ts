type All<Parts> = Parts extends readonly [infer First, ...infer Others] ? First & All<Others> : unknown

/** Features as one: of each group, the sentences of them all. */
export const putTogether = <Parts extends readonly object[]>(...features: Parts): All<Parts> => {
  const groups: Record<string, object> = {}
  for (const feature of features) {
    for (const [group, sentences] of Object.entries(feature)) groups[group] = { ...groups[group], ...sentences }
  }
  return groups as All<Parts>
}
