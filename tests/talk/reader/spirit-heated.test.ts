import { expect, it } from 'vitest'
import { dangerAsked } from '../../../bot/talk/reader/danger-asked.ts'
import { handbook } from '../../../bot/text/en/handbook/index.ts'
import { talker } from './told.ts'

it.each([
  'is it fine to simmer the sugar with the rum in it',
  'can we heat it up with the liquor still in',
  'microwave the syrup with the gin in?',
  'could I reheat the batch with the booze in it',
  'cook the blackberries in brandy?',
  'I warmed the honey with the whisky in it',
  'posso scaldare tutto con la grappa dentro',
  'bollire lo zucchero con l’alcol?',
  'I warmed the brandy and the honey up together',
  'we boiled the gin with the syrup',
  'ho scaldato la vodka con lo zucchero',
  'there’s a saucepan of gin and honey on the stove as we speak',
  'ho un pentolino di grappa e zucchero sul fornello',
])('begins with a plain no where spirit is heated with the rest: %s', async (text) => {
  expect(await talker().say(text)).toMatchObject({ command: 'handbook', data: { entry: 'heat_spirit' }, recorded: 0 })
  expect(handbook.heat_spirit.text).toMatch(/^No, never/)
})

it.each([
  'boil the sugar water, then add the rum',
  'do I simmer the syrup before the gin goes in',
  'I cooked the syrup and topped up with vodka',
  'cook a sauce with the brandy',
  'cooking pears and brandy in the larder',
  'simmer it without the vodka',
  'I heated the vodka and the sugar apart',
])('says nothing of it where they are apart: %s', (text) => {
  expect(dangerAsked(text)).not.toBe('heat_spirit')
})
