import { viewOf } from '../../../bot/commands/jar/known/view-of.ts'
import type { PlantIn } from '../../../core/jar/entry/entry.ts'
import type { JarView } from '../../../core/jar/tasks/jar-view.ts'
import { exactly, type Measured } from '../../../core/quantity/measured/measured.ts'
import { isoOf } from '../../../core/quantity/time/day-number.ts'
import { whiteSugar } from '../../../core/recipe/sweetening.ts'
import { type Jar, NOBODY } from '../../../store/person.ts'
import { jarOf, startedAs } from '../commands-jar-views/jars.ts'

export const TODAY = '2026-11-25'
const NOW_MS = Date.UTC(2026, 10, 25, 12)
const TODAY_NUMBER = Math.floor(NOW_MS / 86_400_000)

const dayFromToday = (days: number): string => isoOf(TODAY_NUMBER + days)

export const seen = (jar: Jar): JarView =>
  viewOf(jar, { nowMs: NOW_MS, settings: NOBODY.settings, assumedZone: 'UTC' })!

const give = (value: number, plusMinus: number): Measured => ({ value, plusMinus })

export const plant = (id: string | null, name: string, massG: number, count: number | null = null): PlantIn => ({
  id,
  name,
  isDried: false,
  massG: give(massG, 1),
  count,
  isUsual: false,
  words: null,
  addOn: null,
})

/** Measured, sweetened, bottled, rated and rested. */
export const readyBatch = (name: string): JarView =>
  seen(
    jarOf('ready', [
      {
        on: '2026-09-25',
        ...startedAs(
          name,
          {
            plants: [plant('lemon_peel', 'Lemon peel', 100, 10), plant('ginger', 'Ginger', 30)],
            sweetenings: whiteSugar(give(100, 1)),
          },
          { strainFrom: '2026-10-15', strainBy: '2026-10-25', restDays: 30 },
        ),
      },
      {
        on: '2026-10-18',
        kind: 'strained',
        measured: { amount: give(930, 10), by: 'volume', atC: 20 },
        strength: { abvPercent: give(77, 0.5), abvAtC: null, readsProof: false },
        rinseWaterG: exactly(0),
      },
      { on: '2026-10-19', kind: 'sweetened', waterG: give(800, 8), sweetenings: whiteSugar(give(380, 2)) },
      { on: '2026-10-24', kind: 'bottled', bottles: [{ count: 4, volumeMl: 500 }] },
      { on: '2026-11-20', kind: 'tasted', rating: 4, note: null },
    ]),
  )

/** Still on its plants, one of them its maker's own. */
export const steepingBatch = (name: string, plants?: readonly PlantIn[]): JarView =>
  seen(
    jarOf('steep', [
      {
        on: '2026-11-01',
        ...startedAs(
          name,
          { plants: plants ?? [plant('green_walnut', 'Green walnut', 300), plant(null, 'jaboticaba', 12)] },
          { tasteFrom: '2026-11-20', strainFrom: '2026-12-01', strainBy: '2026-12-20', restDays: 60 },
        ),
      },
    ]),
  )

/** Strained after 17 days: one plant was planned 4 days before, another added the day before, more lemon on the third. */
export const withLaterPlants = (): JarView => {
  const none = { plants: [], spirits: [], waterG: exactly(0), sweetenings: [] }
  const coffee = { ...plant('coffee_whole', 'coffee', 30), addOn: '2026-11-14' }
  return seen(
    jarOf('later', [
      { on: '2026-11-01', ...startedAs('lemon', { plants: [plant('lemon_peel', 'Lemon peel', 100), coffee] }) },
      { on: '2026-11-03', kind: 'added', ...none, plants: [plant('lemon_peel', 'Lemon peel', 20)] },
      { on: '2026-11-17', kind: 'added', ...none, plants: [plant('cinnamon_ceylon', 'cinnamon', 5)] },
      { on: '2026-11-18', kind: 'strained', measured: null, strength: null, rinseWaterG: exactly(0) },
    ]),
  )
}

/** So many jars in every stage, early, in time and late. */
export const manyJars = (names: readonly string[]): readonly JarView[] =>
  names.map((name, index) => {
    const start = -((index * 17) % 95) - 1
    const [strainFrom, strainBy] = [start + 14 + ((index * 7) % 30), start + 24 + ((index * 7) % 30)]
    const plan = {
      tasteFrom: dayFromToday(strainFrom - 3),
      strainFrom: dayFromToday(strainFrom),
      strainBy: dayFromToday(strainBy),
      restDays: 30 + (index % 4) * 10,
    }
    const isOut = strainBy < -6 && index % 5 !== 0
    return seen(
      jarOf(`jar${index}`, [
        { on: dayFromToday(start), ...startedAs(name, {}, plan) },
        ...(isOut
          ? [
              {
                on: dayFromToday(strainFrom + 1),
                kind: 'strained' as const,
                measured: null,
                strength: null,
                rinseWaterG: exactly(0),
              },
            ]
          : []),
        ...(isOut && strainBy < -20
          ? [
              {
                on: dayFromToday(strainFrom + 2),
                kind: 'sweetened' as const,
                waterG: give(500, 5),
                sweetenings: whiteSugar(give(300, 3)),
              },
            ]
          : []),
      ]),
    )
  })

/** Names as people give them: the widest, four scripts and more, signs that no font of ours has, and marks piled up. */
export const NAMES = {
  widest: 'W'.repeat(40),
  wideWords: 'Midwinter walnut, mandarin & mint number W',
  cyrillic: 'Щедрый лимон с мёдом и жжёной коркой Ю',
  greek: 'Νεράντζι με γαρύφαλλο, Χριστούγεννα ΏΨΩ',
  hebrew: 'ליקר הדרים וקינמון לשולחן החורף של כולנו',
  arabic: 'شراب البرتقال والقرفة لمعرض منتصف الشتاء',
  georgian: 'ლიმონის ლიქიორი შობისთვის, მეორე ქილა',
  vietnamese: 'Rượu chanh ủ mùa đông ẤỂỖỢ ngọt ngào ặ',
  undrawn: '梅酒の瓶 👩‍👩‍👧‍👦 plum',
  marks: `Z${'\u0301\u0316'.repeat(20)}algo`,
  marked: 'A\u030a\u0301\u0323 j\u0323\u030c Å\u0301',
  italic: 'fffj jfjf ffi (jjj) /fff/ _jjj_',
  hostile: `</text><rect width="9999" height="9999"/><image href="file:///etc/passwd"/>&amp;"'\u0000\u202E`,
} as const
