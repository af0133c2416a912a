import type { CalendarDay } from '../../../core/quantity/quantities.ts'
import type { SeasonStep, SeasonText } from '../demo-text.ts'
import { dayText } from './phrases.ts'

/** One jar, from the shop to the freezer. */
const oneJar: readonly SeasonStep[] = [
  {
    at: '2026-09-05 10:00',
    remark: 'The allotment society is making liqueurs to give away at its midwinter fair. First, one jar: lemon.',
    lines: ['/plan of:10 lemons spirit:1 l 95%'],
  },
  {
    at: '2026-09-06 10:00',
    remark: 'Bought, peeled, and in the jar.',
    lines: ['/jar start lemon of:10 lemons spirit:1 l 95%'],
  },
  { at: '2026-09-13 18:00', lines: ['/jar taste lemon rating:3 note:bright, a little thin'] },
  { at: '2026-09-20 11:00', lines: ['/jar strain lemon measured:960 ml strength:88%'] },
  {
    at: '2026-09-20 15:00',
    remark: 'The syrup has cooled.',
    lines: ['/jar sweeten lemon water:1.6 l sugar:530 g'],
  },
  { at: '2026-09-23 18:00', lines: ['/jar bottle lemon bottles:5 x 500 ml'] },
  {
    at: '2026-10-25 19:00',
    remark: 'Straight from the freezer.',
    lines: ['/jar open lemon', '/jar taste lemon rating:5 note:worth the wait'],
  },
]

/** A shelf of four. */
const fourJars: readonly SeasonStep[] = [
  {
    at: '2026-09-05 10:00',
    remark: 'Now the same season again, with four jars on the shelf.',
    lines: [
      '/reminders zone:London shake:every other day',
      '/jar start lemon of:10 lemons spirit:1 l 95% to-sweetness:everyday',
      '/jar start ginger of:150 g ginger spirit:700 ml 60% to-sweetness:dry',
    ],
  },
  {
    at: '2026-09-05 10:00',
    remark: 'The vanilla goes in first, the coffee beans later. The bot says when.',
    lines: ['/jar start coffee of:80 g coffee beans + 1 vanilla spirit:1 l 40%'],
  },
  {
    at: '2026-09-06 18:00',
    remark: 'The basil is cut before the first cold night.',
    lines: ['/jar start basil of:60 g basil spirit:500 ml 95%', '/jar list'],
  },
  { at: '2026-09-06 19:00', lines: ['/jar tag lemon'], isQuiet: true },
  { at: '2026-09-07 18:00', lines: ['/jar taste basil rating:2 note:grassy, give it a day'] },
  {
    at: '2026-09-08 18:00',
    lines: ['/jar taste basil rating:4 note:round and green', '/jar strain basil measured:480 ml strength:87%'],
  },
  {
    at: '2026-09-09 18:00',
    remark: 'There’s only 250 g of sugar in the tin.',
    lines: ['/jar sweeten basil water:760 ml sugar:250 g'],
  },
  { at: '2026-09-10 18:00', lines: ['/jar taste ginger rating:3 note:hot, not round yet'] },
  { at: '2026-09-11 18:00', lines: ['/jar filter basil measured:1.33 l'] },
  {
    at: '2026-09-12 18:00',
    lines: ['/jar taste lemon rating:3 note:bright, a little thin', '/jar bottle basil bottles:5 x 250 ml'],
  },
  { at: '2026-09-14 18:00', lines: ['/jar add coffee of:80 g coffee beans'] },
  {
    at: '2026-09-16 19:00',
    remark: 'The first glass of the season.',
    lines: ['/jar open basil', '/jar taste basil rating:5 note:a whole garden'],
  },
  {
    at: '2026-09-19 11:00',
    remark: 'Ginger is strained, but somebody types the wrong name.',
    lines: [
      '/jar taste coffee rating:2 note:vanilla first, the coffee is coming',
      '/jar strain lemon measured:680 ml strength:52%',
      '/jar undo lemon',
      '/jar strain ginger measured:680 ml strength:52%',
    ],
  },
  { at: '2026-09-19 11:30', lines: ['/jar list picture:yes'], isQuiet: true },
  { at: '2026-09-20 11:00', lines: ['/jar sweeten ginger water:420 ml sugar:150 g'] },
  { at: '2026-09-22 18:00', lines: ['/jar filter ginger', '/jar bottle ginger bottles:2 x 500 ml'] },
  {
    at: '2026-09-24 20:00',
    remark: 'The plot holders go to the sea for a week.',
    lines: ['/jar later all until:3 October'],
  },
  {
    at: '2026-10-03 18:00',
    lines: ['/jar strain lemon measured:960 ml strength:88%'],
  },
  { at: '2026-10-04 11:00', lines: ['/jar sweeten lemon water:1.6 l sugar:530 g'], isQuiet: true },
  {
    at: '2026-10-05 18:00',
    remark: 'Somebody misread the jug. That’s easy to fix.',
    lines: [
      '/jar strain coffee measured:940 ml strength:39.5%',
      '/jar correct coffee measured:910 ml',
      '/syrup jar:coffee to-strength:30% to-sweetness:190 g/L',
    ],
  },
  {
    at: '2026-10-06 18:00',
    lines: [
      '/jar filter lemon',
      '/jar bottle lemon bottles:5 x 500 ml',
      '/jar sweeten coffee water:150 ml sugar:225 g',
    ],
    isQuiet: true,
  },
  {
    at: '2026-10-08 18:00',
    remark: 'Lemon and coffee are sweetened and bottled like the others.',
    lines: ['/jar filter coffee measured:1.15 l', '/jar bottle coffee bottles:4 x 250 ml'],
    isQuiet: true,
  },
  { at: '2026-10-20 19:00', lines: ['/jar open ginger', '/jar taste ginger rating:4 note:warms the whole shed'] },
  { at: '2026-11-03 19:00', lines: ['/jar open lemon', '/jar taste lemon rating:5 note:worth the wait'] },
  { at: '2026-11-03 20:00', lines: ['/share lemon', '/jar label lemon'], isQuiet: true },
  { at: '2026-11-05 19:00', lines: ['/jar open coffee', '/jar taste coffee rating:3 note:good, but the vanilla wins'] },
  {
    at: '2026-12-12 17:00',
    remark: 'The midwinter fair is over, and the basil is gone.',
    lines: ['/jar empty basil', '/jar list', '/notebook compare:lemon + ginger'],
  },
]

/** The allotment society's season: what it types, and the words around it. */
export const seasonText: SeasonText = {
  zone: 'Europe/London',
  /** How a reminder to shake is answered. */
  shaken: '/jar shake all',
  acts: [
    { steps: oneJar, isWhole: true },
    { steps: fourJars, isWhole: false },
  ],
  remark: (text: string) => `# ${text}`,
  heading: (day: CalendarDay) => `── ${dayText(day)} ──`,
  shakesLeftOut: 'From here on we skip the shaking.',
  goOn: '(Enter for the next day)',
  end: 'That was a whole season, and nothing was saved. To start yours: npm start',
}
