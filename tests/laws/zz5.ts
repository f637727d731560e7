import { readFileSync } from 'node:fs';
import { loadAnalyzer } from '../load-analyzer.ts';
import { catalogue } from '../../src/analyze/catalogue/catalogue.ts';
const a = loadAnalyzer();
const lesson = readFileSync(new URL('../../public/data/lesson-words.tsv', import.meta.url),'utf8').trimEnd().split('\n').map(l=>l.split('\t')[0]!);
for (const row of catalogue) { const bad=row.examples.filter(w=>!a.analyze(w).readings.some(r=>r.requires.includes(row.id))); if(!bad.length) continue;
 const c=lesson.filter(w=>a.analyze(w).readings[0]!.requires.includes(row.id)).slice(0,400).sort((x,y)=>a.analyze(x).readings[0]!.requires.length-a.analyze(y).readings[0]!.requires.length).slice(0,16);
 console.log(row.id,'BAD',bad.join(' '),'OF',row.examples.join(' '),'CAND',c.join(' ')); }
