type OneAndSeveral = readonly [one: string, several: string]

/** Kinds that share the figures of another's entry, by its id; a cook who says damsons is told damsons. */
const KINDS: Readonly<Record<string, readonly OneAndSeveral[]>> = {
  plum: [
    ['damson', 'damsons'],
    ['mirabelle', 'mirabelles'],
    ['greengage', 'greengages'],
    ['gage', 'gages'],
    ['Victoria plum', 'Victoria plums'],
  ],
  blueberry: [
    ['bilberry', 'bilberries'],
    ['whortleberry', 'whortleberries'],
  ],
}

/** The kind that was typed, where a plant's entry has several; null where the entry's own name will do. */
export function kindNamed(id: string, noun: string | null | undefined, count: number | null = null): string | null {
  const typed = noun?.toLowerCase()
  const kind = KINDS[id]?.find((names) => names.some((name) => name.toLowerCase() === typed))
  return kind?.[count !== null && count <= 1 ? 0 : 1] ?? null
}
