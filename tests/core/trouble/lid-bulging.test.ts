import { describe, expect, it } from 'vitest'
import { botanicalById } from '../../../core/botanical/catalogue/catalogue.ts'
import { keepingOf } from '../../../core/liquid/keeping.ts'
import { diagnose, diagnoseAll } from '../../../core/trouble/diagnose.ts'
import { NOTHING_KNOWN, type TroubleFacts } from '../../../core/trouble/facts.ts'

const exactly = (value: number) => ({ value, plusMinus: 0 })

/** A drink of that strength and sweetness, its plants known or not. */
const drink = (percent: number, sugarGPerL: number, plant: string | null = 'plum'): TroubleFacts => ({
  ...NOTHING_KNOWN,
  abvPercent: exactly(percent),
  weakestPercent: percent,
  sugarGPerL: exactly(sugarGPerL),
  keeping: keepingOf({ abvPercent: exactly(percent), sugarGPerL: exactly(sugarGPerL) } as never),
  delleUnits: 4.5 * percent + sugarGPerL / 10,
  ageDays: 20,
  plants:
    plant === null
      ? null
      : [{ botanical: botanicalById(plant), name: plant, gPerL: null, pieceShare: null, days: null }],
  signs: { dairy: false, known: true },
})

/**
 * Source: tests/published/trouble-stop-lines.json and core/trouble/sources.ts: `keeping` (nothing ferments over 85 Delle units from
 * 20 % vol on), `cork` (warm air pushes a cork out once), `bot_ethanol` (botulism needs it weak).
 */
describe('a lid that bulges', () => {
  it.each([40, 60])(
    'of a steeping jar of %s %% may be warm air: held until it is seen whether it comes again',
    (percent) => {
      const told = diagnose('pressure', drink(percent, 0))
      expect(told.verdict).toEqual({ kind: 'hold', because: 'recurs' })
      expect(told.question).toBe('recurs')
      expect(told.causes.find(({ cause }) => !cause.isDangerous)?.id).toBe('warm_room')
      expect(told.causes.map(({ id }) => id)).not.toContain('low_acid')
    },
  )

  it('goes on where it does not come again, and is held as gas where it does', () => {
    expect(diagnose('pressure', drink(40, 0), { recurs: false }).verdict.kind).toBe('keep')
    const again = diagnose('pressure', drink(40, 0), { recurs: true })
    expect(again.verdict).toEqual({ kind: 'hold', because: 'fizz' })
    expect(again.causes[0]).toMatchObject({ id: 'yeast', finding: { whys: [{ key: 'should_not', abvPercent: 40 }] } })
  })

  it('under 20 % with little sugar is yeast, and under 15 % thrown away', () => {
    const weak = diagnose('pressure', drink(17, 40))
    expect(weak.verdict).toEqual({ kind: 'hold', because: 'danger' })
    expect(weak.question).not.toBe('recurs')
    expect(diagnose('pressure', drink(12, 100)).verdict).toEqual({ kind: 'throw_away', because: 'fizzed_weak' })
  })

  it('of a sweet liqueur that keeps is warm air too, with the danger of garlic said where it may be in it', () => {
    const sweet = diagnose('pressure', drink(18, 320, null))
    expect(sweet.verdict).toEqual({ kind: 'hold', because: 'recurs' })
    expect(sweet.causes.map(({ id }) => id)).toContain('low_acid')
  })

  it('names botulism only where it is weak enough for it', () => {
    const strong = diagnose('pressure', drink(40, 0, 'garlic'))
    expect(strong.verdict).toEqual({ kind: 'throw_away', because: 'gas_low_acid' })
    expect(diagnose('pressure', drink(16, 0, 'garlic')).verdict).toEqual({
      kind: 'throw_away',
      because: 'weak_low_acid',
    })
    expect(diagnose('fermenting', drink(40, 0, 'garlic')).verdict).toEqual({
      kind: 'throw_away',
      because: 'gas_low_acid',
    })
    const unknown = {
      ...drink(40, 0, 'garlic'),
      weakestPercent: null,
      abvPercent: null,
      keeping: null,
      delleUnits: null,
    }
    expect(diagnose('pressure', unknown).verdict).toEqual({ kind: 'throw_away', because: 'weak_low_acid' })
  })

  it('comes after what has to be answered first, and before what is mostly harmless', () => {
    expect(diagnoseAll(['pressure', 'mould'], drink(40, 0))[0]).toMatchObject({ symptom: 'mould', question: 'growth' })
    expect(diagnoseAll(['sediment', 'pressure'], drink(40, 0))[0].symptom).toBe('pressure')
  })
})
