/** Lines that put the jars on the shelf that a sentence of the corpus speaks of. */
const lemon = ['/jar start lemon of:10 lemons spirit:1 l 95% when:12 days ago']
const ginger = ['/jar start ginger of:100 g ginger spirit:700 ml 60% when:5 days ago']
const strained = ['/jar strain lemon measured:930 ml strength:87% when:yesterday']
const sweetened = ['/jar sweeten lemon water:1.5 l sugar:510 g when:yesterday']

export const SHELVES = {
  /** One jar, which steeps. */
  lemon,
  /** Two jars, which both steep. */
  lemon_ginger: [...lemon, ...ginger],
  /** One jar, which waits for its syrup. */
  lemon_strained: [...lemon, ...strained],
  /** One jar, with its syrup in, neither filtered nor in bottles. */
  lemon_sweetened: [...lemon, ...strained, ...sweetened],
  lemon_bottled: [...lemon, ...strained, ...sweetened, '/jar bottle lemon bottles:5 x 500 ml'],
  /** One jar with spices beside its fruit, which steeps. */
  spiced: [
    '/jar start pear of:1 kg pears spirit:1 l 60% when:9 days ago',
    '/jar add pear of:1 Ceylon cinnamon stick + 2 g dried chilli when:5 days ago',
    ...ginger,
  ],
  /** Four jars for the midwinter fair, one at each step: sloe steeps, lemon is strained, orange sweetened, raspberry bottled. */
  fair: [
    '/jar start sloe of:500 g sloes spirit:700 ml gin 40% when:60 days ago',
    ...lemon,
    ...strained,
    '/jar start orange of:8 oranges spirit:700 ml 95% when:40 days ago',
    '/jar strain orange measured:640 ml strength:85% when:20 days ago',
    '/jar sweeten orange water:950 ml sugar:350 g when:20 days ago',
    '/jar start raspberry of:600 g raspberries spirit:1 l 60% when:120 days ago',
    '/jar strain raspberry measured:1.1 l when:100 days ago',
    '/jar sweeten raspberry water:200 ml sugar:250 g when:100 days ago',
    '/jar bottle raspberry bottles:3 x 500 ml when:90 days ago',
  ],
} as const satisfies Readonly<Record<string, readonly string[]>>

export type Shelf = keyof typeof SHELVES
