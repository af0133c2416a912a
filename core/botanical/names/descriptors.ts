import type { PlantCut, PlantState } from '../botanical.ts'

/** Words that say the state of a plant. */
const STATES: ReadonlyMap<string, PlantState> = new Map(
  (
    [
      [
        'fresh',
        'fresh frozen fresco fresca freschi fresche surgelato surgelata surgelati surgelate congelato congelati',
      ],
      ['dried', 'dried dry secco secca secchi secche essiccato essiccata essiccati essiccate'],
    ] as const
  ).flatMap(([state, words]) => words.split(' ').map((word) => [word, state] as const)),
)

const CUTS: ReadonlyMap<string, PlantCut> = new Map(
  (
    [
      ['whole', 'whole intero intera interi intere grani'],
      [
        'cracked',
        'cracked crushed bruised spezzato spezzata spezzati spezzate pestato pestata pestati pestate schiacciato schiacciati',
      ],
      ['ground', 'ground powdered powder milled macinato macinata macinati macinate polvere'],
    ] as const
  ).flatMap(([cut, words]) => words.split(' ').map((word) => [word, cut] as const)),
)

/** Words that change nothing about which plant it is. */
const FILLERS = new Set(
  (
    'organic untreated unwaxed unsprayed bio biologico biologica biologici biologiche trattato trattati non ' +
    'ripe maturo matura maturi mature large big medium small grosso grossa grossi grosse grande grandi medio medi ' +
    'piccolo piccola piccoli piccole thin thinly sliced slice chopped grated peeled pitted stoned halved cut washed split ' +
    'fette tritato tritata tritati grattugiato grattugiata sbucciato affettato bought shop supermarket store home grown ' +
    'homegrown garden from my in con orto giardino about good nice edible food grade piece pezzo pezzi without with and roasted toasted tostato tostata tostati tostate senza allotment plot orchard own our planted i bosco picked freshly hand mashed blended pureed pricked hulled capped trimmed stemmed cored deseeded destemmed destoned rinsed pared juicy plump very quite really extra'
  ).split(' '),
)

export interface Described {
  /** What is left when the descriptions are taken away. */
  readonly words: readonly string[]
  readonly state: PlantState | null
  readonly cut: PlantCut | null
}

export const describe = (words: readonly string[]): Described => ({
  words: words.filter((word) => !STATES.has(word) && !CUTS.has(word) && !FILLERS.has(word)),
  state: words.map((word) => STATES.get(word)).find((state) => state !== undefined) ?? null,
  cut: words.map((word) => CUTS.get(word)).find((cut) => cut !== undefined) ?? null,
})
