/** Starts the languages. English now; another one is another catalogue in this table. */

import i18next from 'i18next'
import { initReactI18next } from 'react-i18next'
import { type Catalogue, en } from './en/index.ts'

const CATALOGUES = { en } satisfies Record<string, Catalogue>

export function startLanguages(): void {
  void i18next.use(initReactI18next).init({
    lng: 'en',
    fallbackLng: 'en',
    resources: CATALOGUES,
    ns: Object.keys(en),
    defaultNS: 'common',
    // Codes such as `room/locked` are keys as they stand; catalogues nest by dots elsewhere.
    interpolation: { escapeValue: false },
    returnNull: false,
  })
  document.documentElement.lang = 'en'
  document.documentElement.dir = 'ltr'
}
