import type { AddedAskId, AskId } from '../../../core/botanical/ask-back.ts'

/** Whole questions, each with what to write; THIS stands for what was typed. */
export const askedNames: { readonly [Id in AddedAskId]: string } = {
  rosebay:
    'Is that rosebay willowherb? Oleander has the same name, and it kills. Write “fireweed” if it’s the willowherb.',
  leopards_bane: 'That name is used for several plants, and some of them kill. What’s its Latin name?',
  almond_extract: 'Almond extract often comes from bitter kernels. Have you got sweet almonds? Write “100 g almonds”.',
  mahleb: 'Mahleb is ground cherry kernel, and that gives off cyanide. Would sweet almonds do? Write “100 g almonds”.',
  cherry_laurel_fruit:
    'Cherry laurel kills, and I can’t tell fruit from leaf here. Have you got cherries? Write “500 g sour cherries”.',
  coumarin_herb: 'THIS has coumarin, and I’ve no safe amount for it. Would vanilla do? Write “1 vanilla pod”.',
  wild_ginger: 'Is that root ginger from a shop? The wild plant destroys the kidneys. Write “100 g ginger”.',
  costmary:
    'That’s a name of costmary and of tansy, and tansy acts on the nerves. Would rosemary do? Write “20 g rosemary”.',
  mugwort: 'Mugwort has thujone, and I’ve no safe amount for it. Would rosemary do? Write “20 g rosemary”.',
  skullcap:
    'Skullcap gets swapped for germander, which wrecks the liver. Would lemon balm do? Write “50 g lemon balm”.',
  pine_tips:
    'Are you sure it’s pine? Yew tips look alike, and yew kills. If they’re bought, or you know the tree, write “pine buds”.',
  berries_mixed: 'Which berries are in it? Give each its own grams, like “200 g raspberries + 100 g blackberries”.',
  spices_mixed:
    'Which spices are in it? Some have a limit. Give each its own grams, like “3 g Ceylon cinnamon + 2 g cloves”.',
  sweet_things:
    'THIS: that’s a sweetener, so it goes in after straining. Leave it out of the plants and stir it in at the end.',
  not_listed: 'THIS is on no list of foods that I have, so I’ve no amount for it. What else have you got?',
  blossom_cyanide:
    'THIS gives off a little cyanide, and I’ve no safe amount for it. Would elderflowers do? Write “50 g elderflowers”.',
  rhubarb_root:
    'The root is a laxative, and I’ve no safe amount for it. Have you got the stalks? Write “500 g rhubarb”.',
  eucalyptus: 'THIS is strong, and I’ve no safe amount for it. Would peppermint do? Write “50 g peppermint”.',
  asafoetida:
    'THIS comes from giant fennel, and I’ve no safe amount for it. Would fennel seed do? Write “20 g fennel seed”.',
  seaweed: 'Which seaweed is it? Some hold arsenic. Write its name, like “10 g nori”.',
  wood_chips: 'Only chips sold for drinks are safe. Would oak do? Write “5 g oak chips”.',
  vanilla_made:
    'Have you got a pod? Extract, paste and vanilla sugar go in after straining, to taste. Write “1 vanilla pod”.',
}

export const isAskedName = (ask: AskId): ask is AddedAskId => Object.hasOwn(askedNames, ask)
