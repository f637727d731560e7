import { readFileSync } from 'node:fs';
import { loadAnalyzer } from '../load-analyzer.ts';
import { catalogue } from '../../src/analyze/catalogue/catalogue.ts';
import { countVowels } from '../../src/analyze/alignment/sounds.ts';
const a = loadAnalyzer();
const lesson = readFileSync(new URL('../../public/data/lesson-words.tsv', import.meta.url),'utf8').trimEnd().split('\n').map(l=>l.split('\t')[0]!);
// catalogue
const bad:string[]=[];
for (const row of catalogue) for (const w of row.examples) if(!a.analyze(w).readings.some(r=>r.requires.includes(row.id))) bad.push(`${row.id}:${w}(${a.analyze(w).readings[0]!.units.map(u=>u.letters+':'+u.sound).join(' ')})`);
console.log('EXAMPLES',bad.length, bad.join('\n'));
const used=new Set(lesson.flatMap(w=>a.analyze(w).readings.flatMap(r=>r.requires)));
console.log('UNUSED', catalogue.filter(r=>!used.has(r.id)).map(r=>r.id).join(' '));
// irregular
const irr=lesson.filter(w=>a.analyze(w).readings.every(r=>r.requires.includes('irregular')));
const by=new Map<string,string[]>();
for(const w of irr){const r=a.analyze(w).readings[0]!;const k=r.units.filter(u=>u.pattern==='irregular').map(u=>u.letters+':'+u.sound).join(' ');by.set(k,[...(by.get(k)??[]),w]);}
console.log('IRREGULAR', irr.length);
for(const [k,v] of [...by].sort((x,y)=>y[1].length-x[1].length)) console.log(`${k}\t${v.length}\t${v.join(' ')}`);
// syllables
const syl=lesson.filter(w=>{const r=a.analyze(w).readings[0]!;return r.syllables.length!==countVowels(r.units.map(u=>u.sound).join('.'))});
console.log('SYL', syl.length, syl.map(w=>{const r=a.analyze(w).readings[0]!;return r.syllables.map(s=>s.text).join('.')+'('+r.pronunciation+')'}).join('\n'));
