import { randomShed } from './random-sheds.js';
import { bruteForce } from './brute-force.js';
import { planBuilds } from '../../../src/shelf/index.js';
const [a,b]=[Number(process.argv[2]),Number(process.argv[3])]; let tp=0,tb=0,bad=0;
for (let s=a;s<=b;s++) { const shed=randomShed(s);
 for (const opts of [{}, {atMost:1}, {buying:false}, {mostPerEngine:{amount:20+s%120,currency:'EUR'}}, {reserved:[shed.crankshafts?.[0]?.name??'',shed.shells?.[0]?.name??'']}]) {
 if ((opts as any).mostPerEngine && !shed.machining?.length && !shed.toBuy) continue;
 let t=performance.now(); const want=bruteForce(shed,opts); tb+=performance.now()-t; t=performance.now();
 try { const p=await planBuilds(shed,opts); tp+=performance.now()-t;
 const got={engines:p.builds.length,cost:Math.round(p.cost.amount*1000),margin:p.smallestMargin===undefined?undefined:Math.round(p.smallestMargin*1e9)};
 if (JSON.stringify(got)!==JSON.stringify(want)||p.proof.kind!=='optimal') { bad++; console.log(s,JSON.stringify(opts),'got',JSON.stringify(got),'want',JSON.stringify(want),p.proof.kind); }
 } catch(e) { bad++; console.log(s,JSON.stringify(opts),'threw',String(e).slice(0,300)); }
 }}
console.log({tp,tb,bad});
