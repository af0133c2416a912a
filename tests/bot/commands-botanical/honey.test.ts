import { expect, test } from 'vitest'
import { cautionKeys, json } from '../commands-label/desk.ts'

test('/cautions tells of honey and children, beside plants or alone', async () => {
  expect((await json('/cautions of:honey')).data).toMatchObject({ ids: [], sweeteners: ['honey'] })
  expect((await cautionKeys('/cautions of:honey'))[0]).toBe('honey_infant')
  const beside = '/cautions of:8 lemons + 200 g honey'
  expect((await json(beside)).data).toMatchObject({ ids: ['lemon_peel'], sweeteners: ['honey'] })
  expect(await cautionKeys(beside)).toContain('honey_infant')
  expect(await cautionKeys('/cautions of:8 lemons')).not.toContain('honey_infant')
  expect(await cautionKeys('/cautions of:maple syrup')).not.toContain('honey_infant')
})
