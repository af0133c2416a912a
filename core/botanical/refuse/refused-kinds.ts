import type { Refused } from '../refused.ts'
import { gardenPoisons } from './garden-poisons.ts'

/** Kinds of things that are never planned, by the words that name them; phrasings beyond names are in refusal-rules.ts. */
export const refusedKinds: readonly Refused[] = [
  {
    id: 'garden_poisons',
    names: gardenPoisons,
    instead: null,
    trust: 'memory',
    sources: [],
  },
  {
    id: 'essential_oils',
    names:
      'essential oil, essential oils, aroma oil, aroma oils, oil of wintergreen, wintergreen oil, clove oil, wormwood oil, pennyroyal oil, eucalyptus oil, olio essenziale, oli essenziali, essenza, essenze, olio di garofano, olio di assenzio',
    instead: null,
    trust: 'derived',
    sources: ['ema_wormwood'],
  },
  {
    id: 'unnamed_plant',
    names:
      'unknown plant, unknown plants, unknown berry, unknown berries, unknown herb, unknown herbs, some berries, mystery berries, pianta sconosciuta, piante sconosciute, bacche sconosciute, erba sconosciuta, erbe sconosciute',
    instead: null,
    trust: 'published',
    sources: ['anses_confusion', 'veratrum_cases', 'gelsemium_case'],
  },
  {
    id: 'wild_garlic',
    names: 'wild garlic, ramsons, bear garlic, aglio orsino, aglio selvatico, Allium ursinum',
    instead: null,
    trust: 'published',
    sources: ['anses_confusion'],
  },
  {
    id: 'wild_carrot_family',
    names:
      "wild carrot, wild carrots, Queen Anne's lace, wild parsnip, wild parsnips, wild celery, cow parsley, wild angelica, carota selvatica, carote selvatiche, pastinaca selvatica, sedano selvatico, angelica selvatica, Daucus carota, Anthriscus sylvestris",
    instead: null,
    trust: 'memory',
    sources: ['efsa_compendium'],
  },
  {
    id: 'self_dug_gentian',
    names: 'self-dug gentian, dug gentian, wild gentian, genziana selvatica, genziana raccolta',
    instead: null,
    trust: 'published',
    sources: ['veratrum_cases'],
  },
  {
    id: 'florist_flowers',
    names:
      'florist flower, florist flowers, florist rose, florist roses, garden-centre rose, garden-centre roses, garden centre flowers, bouquet, bouquets, potpourri, pot pourri, potpourris, pot pourris, cut flowers, fiori recisi, fiori del fioraio, rose del fioraio, mazzo di fiori, mazzi di fiori',
    instead: null,
    trust: 'common_practice',
    sources: ['common_practice'],
  },
  {
    id: 'elderberry',
    names: 'elderberry, elderberries, black elderberry, black elderberries, bacca di sambuco, bacche di sambuco',
    instead: null,
    trust: 'published',
    sources: ['cdc_1984'],
  },
  {
    id: 'dairy_egg',
    names:
      'egg, eggs, egg yolk, egg yolks, egg white, egg whites, milk, condensed milk, cream, double cream, heavy cream, yogurt, yoghurt, butter, mascarpone, eggnog, uovo, uova, tuorlo, tuorli, albume, albumi, latte, latte condensato, panna, burro',
    instead: null,
    trust: 'published',
    sources: ['colorado_eggs', 'common_practice'],
  },
  {
    id: 'stone_fruit_leaves',
    names:
      'peach leaf, peach leaves, cherry leaf, cherry leaves, apricot leaf, apricot leaves, plum leaf, plum leaves, foglia di pesco, foglie di pesco, foglia di ciliegio, foglie di ciliegio, foglia di albicocco, foglie di albicocco',
    instead: null,
    trust: 'memory',
    sources: ['unverified'],
  },
  {
    id: 'medicines',
    names:
      'medicine, medicines, drug, drugs, tablet, tablets, pill, pills, painkiller, painkillers, sleeping pill, sleeping pills, farmaco, farmaci, medicina, medicinale, medicinali, pastiglia, pastiglie, compressa, compresse',
    instead: null,
    trust: 'memory',
    sources: ['efsa_compendium'],
  },
]
