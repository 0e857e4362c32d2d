/** Words of classes: their names, and how they are read from text. */

import type { RosterFault } from '../../../engine/contest/rosters/read-roster.ts'

export const classes = {
  title: 'Classes',
  sentence: 'Children pick their name from the list when they come in. Nobody has to type one.',
  none: 'No class yet.',
  newClass: 'New class',
  untitled: 'Class without a title',
  open: 'Open {{title}}',
  pupils_one: '{{count}} name',
  pupils_other: '{{count}} names',

  edit: {
    back: 'All classes',
    title: 'Title',
    titleHelp: 'Such as 7b, or Thursday club',
    keep: 'Keep',
    export: 'Save as CSV',
    remove: 'Delete the class',
    removeAsk: {
      title: 'Delete “{{title}}”?',
      sentence_one: 'Its {{count}} name is deleted from this server. This cannot be taken back.',
      sentence_other: 'Its {{count}} names are deleted from this server. This cannot be taken back.',
      yes: 'Delete the class',
    },
    leaveAsk: {
      title: 'Leave without keeping?',
      sentence: 'What you changed in this class is lost.',
      yes: 'Leave',
    },
    withoutAsk: {
      title_one: 'Keep the class without it?',
      title_other: 'Keep the class without these?',
      sentence_one: '{{count}} entry was not taken. It is lost when you keep the class now.',
      sentence_other: '{{count}} entries were not taken. They are lost when you keep the class now.',
      yes_one: 'Keep without it',
      yes_other: 'Keep without them',
    },
  },

  pupil: {
    inClass: 'In the class',
    rename: 'Rename',
    renameThis: 'Rename {{name}}',
    remove: 'Remove',
    removeThis: 'Remove {{name}}',
    name: 'Name',
    done: 'Done',
    removed: '{{name}} is out of the class.',
    bringBack: 'Bring back',
  },

  add: {
    title: 'Names',
    titleMore: 'More names',
    help: 'Type or paste them: one a line, or a table from your school’s list.',
    privacy:
      "First names or nicknames are enough. Please leave family names, birthdays and addresses out. Your school's own rules and the local law on children's data come first.",
    file: 'Read a CSV file',
    fileTooLarge: 'This file is larger than any class. Choose the list of one class.',
    madeUp: 'Make up names',
    madeUpCount: 'How many',
    column: 'Which column has the names?',
    columnNumber: 'Column {{number}}',
    columnAll: 'all of them',
    read: 'Read so far',
    nothing: 'The names appear here as they are read.',
    summary: '{{names}} read',
    summaryFaults_one: '{{names}} read, {{count}} entry is not taken yet',
    summaryFaults_other: '{{names}} read, {{count}} entries are not taken yet',
    line: 'Line {{line}}',
    useOffer: 'Write “{{offer}}”',
    fullNames_one: '{{count}} entry looks like a full name.',
    fullNames_other: '{{count}} entries look like full names.',
    shorten: 'Keep first names only',
  },

  fault: {
    'roster/rude': 'This name would not do on the board. Write another.',
    'roster/unusual-letters': 'Use letters, numbers and spaces.',
    'roster/too-long': 'Longer than {{max}} letters.',
    'roster/twice': 'Stands in line {{firstLine}} already.',
    'roster/too-many': 'A class has {{max}} names at most. Make another class of the rest.',
    'roster/quote-open': 'A quotation mark is never closed. Close it, or leave it out.',
    'roster/too-much-text': 'This is more text than any class. Leave out what are no names.',
  } satisfies Record<RosterFault['code'], string>,
  inClassAlready: 'Is in the class already.',
} as const
