import { expect, it } from 'vitest'
import { dangerAsked } from '../../../bot/talk/reader/danger-asked.ts'
import { talkerFor } from './told.ts'

// Beside each the entry it would get, were it not said of something else.
it.each([
  ['let’s make blind tasting notes', 'methanol'],
  ['the lid swells up a little', 'allergens'],
  ['the labels are in my medicine cabinet', 'medicines'],
  ['I drive the bottles to the fair on Saturday', 'driving'],
  ['baby figs in honey', 'honey_babies'],
  ['sloe gin for the baby shower', 'children'],
  ['give it a shelf out of reach of the cat', 'pets'],
  ['run a still warm syrup through the sieve', 'home_distilling'],
  ['is there air still in the bottle', 'home_distilling'],
  ['the old still warm syrup', 'home_distilling'],
  ['is the peel still in the jar', 'home_distilling'],
  ['I boiled the syrup in a copper pan', 'pans'],
  ['is 95 all right in plastic water bottles', 'reuse_bottles'],
  ['raw egg whites to clear the liqueur', 'egg'],
  ['the 95 goes straight into the jar', 'strong_neat'],
  ['melt sugar on the hob before the vodka goes in', 'flame'],
  ['the berries look like they lost their colour', 'foraging'],
  ['they look a bit like plums that went brown', 'foraging'],
  ['the cherries look like raisins', 'foraging'],
  ['they look shrivelled', 'foraging'],
])('is none: %s', (text, entry) => {
  expect(dangerAsked(text), entry).toBeNull()
})

it.each([
  ['they look like elderberries', 'foraging'],
  ['but they look just like bilberries.', 'foraging'],
  ['I think these look like wild currants', 'foraging'],
  ['those seem to be haws', 'foraging'],
  ['sembrano bacche di sambuco', 'foraging'],
  ['can this make me blind', 'methanol'],
  ['can I drink it with my heart medicine', 'medicines'],
  ['can I drive after two glasses', 'driving'],
  ['my uncle has an old copper still in the barn', 'home_distilling'],
  ['he could burn us schnapps from the plums', 'home_distilling'],
  ['my nephew swells up from hazelnuts', 'allergens'],
  ['her lips tingle after strawberries', 'allergens'],
  ['gonfiano le labbra se mangia noci', 'allergens'],
  ['honey liqueur for the baby', 'honey_babies'],
  ['a drop of gin for the baby', 'children'],
  ['give the cherries to the cat', 'pets'],
  ['run a still in the shed', 'home_distilling'],
  ['steep it in a copper pan', 'pans'],
  ['is 95 all right in water bottles', 'reuse_bottles'],
  ['raw egg yolks in the liqueur', 'egg'],
  ['can we drink the 95 straight', 'strong_neat'],
  ['vodka on the hob', 'flame'],
  ['some red berries that look like redcurrants, fine in gin?', 'foraging'],
  ['the leaves resemble wild garlic, may they go in', 'foraging'],
  ['black berries with a pale stripe, looking a bit like bilberries', 'foraging'],
  ['foglie che somigliano al prezzemolo, le metto?', 'foraging'],
  ['can my sister drive us all back, she hasn’t drunk anything', 'sober_driver'],
  ['only had squash tonight, may I drive home', 'sober_driver'],
  ['I’m the designated driver, is it fine driving then?', 'sober_driver'],
  ['non ho toccato alcol, posso guidare?', 'sober_driver'],
  ['had nothing except a nip, can I drive', 'driving'],
  ['I’ve had nothing for two hours, can I drive', 'driving'],
  ['I didn’t drink much, may I drive home', 'driving'],
  ['had nothing to eat, can I drive', 'driving'],
  ['non ho bevuto niente tranne un bicchiere, posso guidare', 'driving'],
  ['we steeped strange leaves in vodka last week, keep it?', 'unknown_steeped'],
  ['there are some mystery fruits in my jar', 'unknown_steeped'],
  ['ho messo radici che non conosco nella grappa', 'unknown_steeped'],
  ['picked fruits that look like bullaces and dropped them in gin', 'unknown_steeped'],
  ['should I put mystery berries in rum', 'foraging'],
  ['anything for a hangover?', 'hangover'],
  ['my skull is splitting after the tasting, since last night', 'hangover'],
  ['come passo la sbornia', 'hangover'],
])('is one: %s', (text, entry) => {
  expect(dangerAsked(text)).toBe(entry)
})

it('says a danger first where what was done still lacks something, and keeps that open', async () => {
  const one = await talkerFor({ after: null, shelf: 'lemon_sweetened' })
  const told = await one.say('bottled the lemon, my neighbour is pregnant, should she leave it alone')
  expect(told).toMatchObject({ command: 'handbook', data: { entry: 'pregnancy' }, recorded: 0 })
  expect(told.also).toEqual([expect.objectContaining({ command: 'jar bottle', code: 'question' })])
  expect(await one.say('5 x 500 ml')).toMatchObject({ command: 'jar bottle', recorded: 1 })
})

it('writes down what was done before a danger was told, and says the danger too', async () => {
  const one = await talkerFor({ after: null, shelf: 'lemon_sweetened' })
  const told = await one.say('bottled the lemon, 5 x 500 ml, my uncle has been sober for years, should he keep away')
  expect(told).toMatchObject({ read: '/jar bottle lemon bottles:5 x 500 ml', recorded: 1 })
  expect(told.also).toEqual([expect.objectContaining({ command: 'handbook' })])
})
