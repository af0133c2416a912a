import { expect, test } from 'vitest'
import { textOf } from './desk.ts'

test.each(['4 oz', '0.5 oz', '1 lb', '1 lb 4 oz', '2 oz weight'])(
  '%s of a plant stays as it was typed',
  async (typed) => {
    const text = await textOf(`/plan of:${typed} ginger spirit:750 ml 40%`)
    expect(text).toContain(`Buy ${typed.replace(' weight', '')} fresh ginger`)
  },
)
