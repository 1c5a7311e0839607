import type { Told } from './note.ts';

/** What is said of client copies. */
const error = (code: string, says: string, why: string, write: string): Told => ({
  ...{ code, level: 'error', says, why, write },
});

export const reportLeftOut = 'This client copy is left out; the series stands.';

export const reportPublic = (): Told =>
  error(
    'report-public',
    'A client copy is not for the public.',
    'It holds the names that a client wants kept back, and what is withheld.',
    'Write  shown-to: house  , or leave the line out.',
  );

export const nobodySigns = (): Told =>
  error(
    'report-signed',
    'Nobody signs this client copy.',
    'A paper that nobody signs is nobody’s word.',
    'Name the roles that sign by hand:  signed-by: [head of the lab] .',
  );

export const aliasIsReal = (as: string, what: string): Told =>
  error(
    'alias-real',
    `"${as}" is also ${what}.`,
    'A reader would take the one for the other, or learn a name that is kept back.',
    'Take a name that nothing in the book goes by, as  Article B .',
  );

export const aliasTwice = (as: string, other: string): Told =>
  error(
    'alias-twice',
    `"${as}" also stands for ${other}.`,
    'Two articles under one name cannot be told apart.',
    'Give each of them a name of its own.',
  );

export const aliasOutside = (article: string): Told =>
  error(
    'alias-outside',
    `${article} has another name here, and is not among the articles of this paper.`,
    'A name is only needed for what the paper reports.',
    `Write ${article} among the  articles  , or take the alias out.`,
  );

export const overDraft = (part: string): Told =>
  error(
    'report-over-draft',
    `The part ${part} is a draft.`,
    'What is handed to a client does not rest on words that may still change.',
    `Publish it first (dipmark pin --part ${part}), or take it out.`,
  );

export const nameTold = (where: string, real: string, as: string): Told =>
  error(
    'alias-told',
    `${where} tells "${real}", which goes by "${as}" on this paper.`,
    'Whoever is handed the paper learns the name that is kept back.',
    `Write "${as}" there, or words that name nothing.`,
  );
