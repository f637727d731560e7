import { wordSet } from './word-set.ts';

/**
 * Short forms before the name of a person or place, with or without a full stop: Mr. Falk, Dr Falk, St. Bram. The
 * sentence continues after the short form.
 */
const BEFORE_NAMES = wordSet(
  'Mr Mrs Ms Mx Dr Prof Rev Capt Cpt Sgt Lt Col Gen Cmdr Maj Gov Sen Rep Hon Pres Supt St Ste Mt Ft Messrs Mme Mlle',
);
/** Short forms that nobody mistakes for a word, so that they need no full stop. */
const WITHOUT_STOP = wordSet('Mr Mrs Ms Mx Dr PhD etc Etc');
/** Short forms with a full stop. The sentence may end at the full stop: etc., Jan., Tarn Quay Ltd. */
const OTHERS = wordSet(
  'Jr Sr vs Vs etc Etc approx dept Dept ed eds Ed Eds fig figs Fig Figs cf Jan Feb Mar Apr Jun Jul Aug Sept Sep Oct Nov Dec ' +
    'Mon Tue Tues Wed Thu Thur Thurs Fri Sat Sun vol vols Vol Vols Ave Blvd Rd Ln Hwy Ltd Inc Corp Co Bros Assn Assoc ' +
    'pp para ch Ch sec Sec hr hrs min mins est Est incl excl max govt Govt ext tel Tel No Nos',
);
/** Short forms that are words too. They are short forms only before a number, a comma or small letters (No. 7, Sat. 3 May). */
const WORDS_TOO = wordSet(
  'No Nos Gen Col Rep Sen Hon Pres Ed ed eds fig figs Fig Figs Mar Jun Wed Sat Sun Co Ch Rd Ln sec Sec min mins max est Est ext ' +
    'para Gov Maj',
);
/** Noises and one word that have no vowel letter but are not short forms. */
const VOICED = /(.)\1|^(?:hm|psst|pst|tsk|nth|sh|mm)$/;
const VOWELLESS = /^[b-df-hj-np-tv-xz]{2,4}$/;

/**
 * Whether letters are a short form without a full stop: two to four lower-case letters without a vowel (km, lb, pm; not
 * shh, hmm), or a form such as Mr.
 */
export function isShortForm(run: string): boolean {
  return VOWELLESS.test(run) ? !VOICED.test(run) : WITHOUT_STOP.has(run);
}

/** Whether letters followed by a full stop are a short form: vol. 2, Sat., Mt. Falk; not the end of `He sat.` */
export function isShortened(run: string, after: string): boolean {
  if (!BEFORE_NAMES.has(run) && !OTHERS.has(run)) return false;
  if (!WORDS_TOO.has(run)) return true;
  return /^(?:,|\s+[\d\p{Ll}])/u.test(after) || (BEFORE_NAMES.has(run) && /^\s\p{Lu}\p{Ll}/u.test(after));
}

/**
 * Whether a name follows a short form, so that no sentence ends there: Mr, St; not etc. The short form is given without
 * its full stop.
 */
export function standsBeforeName(run: string): boolean {
  return BEFORE_NAMES.has(run);
}
