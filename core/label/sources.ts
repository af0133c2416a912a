/** Where a figure was seen, in full, for whoever checks it; a language has a short name for each. */
export const sources = {
  eu_2019_787: 'Regulation (EU) 2019/787, Articles 1–2 and Annex I category 33 (seen in copies of the text)',
  eu_110_2008: 'Regulation (EC) 110/2008, Annex II point 32 (legislation.gov.uk)',
  eu_1169_2011: 'Regulation (EU) 1169/2011, Annex XII (strength tolerances); Annex II (allergens) from memory',
  uk_si_1989_768:
    'Food Labelling (Amendment) Regulations 1989, SI 1989/768, Schedule 5A Part I, items 3(a) and 4; carried on by Annex XII of assimilated Regulation 1169/2011',
  cfr_27_5: '27 CFR 5.150 (section number from memory; 2.5 % by weight confirmed by an examination page)',
  cfr_27_19: '27 CFR 19.356(c); T.D. TTB-158 of 2 April 2020 (0.3 percentage points)',
  gi_sorrento: 'Product file “Liquore di limone di Sorrento”, DM 12 November 2012, GU 18 of 22.1.2013',
  gi_mirto: 'Product file “Mirto di Sardegna”, Gazzetta Ufficiale 13A03064 (2013)',
  gi_genepi: 'Product file “Genepì del Piemonte”, DM 24 April 2012, GU 153 of 3.7.2012',
  gi_pacharan: 'Regulation of Pacharán Navarro (figures second-hand)',
  uk_cmo_2016: 'UK Chief Medical Officers’ low-risk drinking guidelines, 2016',
  drinks_table: 'A table of standard drinks by country (secondary, dmitry.fitness; agrees with the ICAP table)',
  icap_table: 'ICAP/IARD tables of drinking guidelines (2010 and later copies)',
  intake_table:
    'Copies of the table of recommended maximum intake (Canada 27 g, Australia 100 g a week; Austria 24/16 g)',
  kalinowski_2016: 'Kalinowski & Humphreys, Addiction 2016 (37 countries; standard drink 8 to 20 g)',
  who_2023: 'World Health Organization, statement of January 2023',
  memory: 'National law or official guidance, from memory, not verified',
} as const

export type LawSourceKey = keyof typeof sources

/** How far a figure can be trusted; anything but `published` is said with it. */
export type LawTrust = 'published' | 'secondary' | 'memory'

export interface Cited {
  readonly trust: LawTrust
  readonly sources: readonly LawSourceKey[]
}
