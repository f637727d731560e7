import { readFileSync } from 'node:fs';
import { loadAnalyzer } from '../load-analyzer.ts';
const a = loadAnalyzer();
const lesson = readFileSync(new URL('../../public/data/lesson-words.tsv', import.meta.url),'utf8').trimEnd().split('\n').map(l=>l.split('\t')[0]!);
// minimal irregular list
const need=(n:any,s:Set<string>):boolean=>{ // true if reads
  if(s.has(n.word)) return true;
  if(!n.requires.includes('irregular')) return true;
  return !!n.madeOf && !n.madeOf.joint.includes('irregular') && n.madeOf.parts.every((p:any)=>need(p,s));
};
const s=new Set<string>();
const collect=(n:any)=>{ if(need(n,s)) return; if(n.madeOf && !n.madeOf.joint.includes('irregular')) n.madeOf.parts.forEach(collect); else s.add(n.word); };
for(const w of lesson){const rs=a.analyze(w).readings; if(rs.some(r=>!r.requires.includes('irregular'))) continue; const r=rs[0]!; collect({word:w,requires:r.requires,madeOf:r.madeOf});}
console.log(s.size);
for(const w of [...s].sort()){const r=a.analyze(w).readings[0]!; console.log(w,'\t',r.units.filter(u=>u.pattern==='irregular').map(u=>u.letters+':'+u.sound).join(' '),'\t',r.base??'',r.affixes.map(x=>x.text).join('+'));}
