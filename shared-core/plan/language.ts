/** Languages in which the core writes sentences for people. */
export type Language = 'en' | 'de';

/** The same sentence in every language of the program. */
export type Words = Readonly<Record<Language, string>>;
