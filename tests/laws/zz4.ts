import { readFileSync } from 'node:fs';
import { loadAnalyzer, loadLexicon } from '../load-analyzer.ts';
const a = loadAnalyzer(); const lex=loadLexicon();
const lesson = readFileSync(new URL('../../public/data/lesson-words.tsv', import.meta.url),'utf8').trimEnd().split('\n').map(l=>l.split('\t')[0]!);
let n=0; const out:string[]=[];
for(const w of lesson){const rec=lex.find(w.toLowerCase()); const r=rec?.readings[0]; if(r?.kind==='whole'&&r.madeBy&&/^(s|es|ed|ing|er|est|ly|ness|ful|less)$/.test(r.madeBy.affix.letters)){n++; const x=a.analyze(w).readings[0]!; out.push(w+' ('+x.units.map(u=>u.letters+':'+u.sound).join(' ')+' / '+a.analyze(x.madeOf?.parts[0]?.word??'').readings.map(r=>r.units.map(u=>u.letters+':'+u.sound).join(' ')).join(' || ')+')')}}
console.log(n); console.log(out.join('\n'));
// unit patterns in composed words outside parts+joint affix
const odd:string[]=[];
for(const w of lesson){const x=a.analyze(w).readings[0]!; const rec=lex.find(w.toLowerCase()); if(!x.madeOf||rec?.readings[0]?.kind==='whole') continue; const parts=new Set(x.madeOf.parts.flatMap(p=>p.requires)); const extra=x.madeOf.joint.filter(id=>!parts.has(id)&&!/^(suffix|prefix|change|compound|contraction|possessive)/.test(id)); if(extra.length) odd.push(w+': '+extra.join(' '));}
console.log('ODD',odd.length, odd.join('\n'));
