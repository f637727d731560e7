/** An invented syllable with the pronunciations a teacher would call regular. */
export interface NonsenseSyllable {
  readonly word: string;
  readonly sounds: readonly string[];
}

/**
 * Each entry is spelling=sounds. Only spellings whose first sound nobody doubts are listed (common practice, no
 * source).
 */
const ONSETS = table(
  'b=B d=D f=F h=HH j=JH k=K l=L m=M n=N p=P r=R s=S t=T v=V w=W z=Z ch=CH sh=SH th=TH bl=B.L br=B.R cl=K.L cr=K.R dr=D.R fl=F.L fr=F.R gl=G.L gr=G.R pl=P.L pr=P.R sk=S.K sl=S.L sm=S.M sn=S.N sp=S.P st=S.T sw=S.W thr=TH.R tr=T.R tw=T.W spl=S.P.L str=S.T.R squ=S.K.W qu=K.W kn=N wr=R ph=F wh=W',
);
const SHORT = table('a=AE e=EH i=IH o=AA u=AH');
const CODAS = table(
  'b=B d=D g=G m=M n=N p=P t=T x=K.S ck=K ff=F ll=L ss=S zz=Z ch=CH sh=SH tch=CH dge=JH ft=F.T lp=L.P mp=M.P nd=N.D nt=N.T pt=P.T sk=S.K sp=S.P st=S.T nch=N.CH ng=NG nk=NG.K',
);
const LONG = table('a=EY i=AY o=OW');
const BEFORE_E = table('b=B d=D f=F k=K l=L m=M n=N p=P t=T v=V z=Z c=S');
const TEAMS = table('ai=EY ee=IY oa=OW oi=OY igh=AY aw=AO ar=AA.R or=AO.R ir=ER ur=ER');
const AFTER_TEAM = table('b=B d=D f=F k=K m=M n=N p=P t=T ch=CH');

/** Returns words of one syllable in a fixed order: closed, vowel-consonant-e, vowel team, r-controlled. */
export function nonsenseSyllables(): NonsenseSyllable[] {
  return [
    ...combine(ONSETS, SHORT, CODAS, ''),
    ...combine(ONSETS, LONG, BEFORE_E, 'e'),
    ...combine(ONSETS, TEAMS, AFTER_TEAM, ''),
  ];
}

function* combine(onsets: Table, vowels: Table, codas: Table, end: string): Generator<NonsenseSyllable> {
  for (const [onset, before] of onsets) {
    for (const [vowel, middle] of vowels) {
      for (const [coda, after] of codas) {
        const said = [before, middle, after].join('.').replaceAll('.', ' ');
        // If o and aw are one sound (frost, long), either sound is regular.
        const sounds = vowel === 'o' && end === '' ? [said, said.replace('AA', 'AO')] : [said];
        yield { word: onset + vowel + coda + end, sounds };
      }
    }
  }
}

type Table = readonly (readonly [spelling: string, sounds: string])[];

function table(text: string): Table {
  return text.split(' ').map((entry) => entry.split('=') as [string, string]);
}
