import { randomShed } from './random-sheds.js';
import { planBuilds } from '../../../src/shelf/index.js';
const t:any={}; const add=(k:string)=>t[k]=(t[k]??0)+1;
for (let s=1;s<=200;s++) { const shed=randomShed(s); const p=await planBuilds(shed);
 for (const b of p.builds) { b.jobs.forEach(j=>add(j.work)); b.parts.forEach(x=>x.bought&&add('bought '+x.section)); if(b.interchange) add('group'); if(b.endPlay) add('endplay '+b.endPlay.washers.length); if(b.guides?.finding) add('guides'); const r=b.parts.filter(x=>x.section==='rods').length; if(r>1) add('singles'); add('cyl '+shed.engine.cylinders+' mains '+shed.engine.mains+' rpj '+(shed.engine.rodsPerJournal??1)); if (s===15||s===34) console.log(JSON.stringify(b,null,0).slice(0,3000)); } }
console.log(t);
