import { loadAnalyzer } from '../load-analyzer.ts';
const a = loadAnalyzer();
for(const w of process.argv.slice(2)) for(const r of a.analyze(w).readings) console.log(w.padEnd(14), r.units.map(u=>`${u.affix==='suffix'?'+':''}${u.letters}${u.affix==='prefix'?'+':''}:${u.sound}`).join(' ').padEnd(45), r.base, r.affixes.map(x=>x.text+'/'+x.kind+'/'+x.change).join(' '), '|', r.syllables.map(s=>s.text+'/'+s.type).join(' '), '|', r.requires.join(' '), '|', r.source, r.madeOf? 'JOINT '+r.madeOf.joint.join(' '):'');
