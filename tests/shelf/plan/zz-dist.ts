import { randomShed } from './random-sheds.js';
import { enginesByBlock } from './brute-force.js';
import { stockOf } from './brute-stock.js';
const out:any[]=[]; let t0=performance.now();
for (let s=1;s<=200;s++) { const shed=randomShed(s); const stock=stockOf(shed,{}); let t=performance.now(); const e=enginesByBlock(shed,stock); const d=performance.now()-t; out.push([Math.round(d), s, e.map(x=>x.length).join()]);}
console.log(performance.now()-t0); out.sort((a,b)=>b[0]-a[0]); console.log(out.slice(0,30).map(String).join('\n')); console.log(out.filter(o=>/[1-9]/.test(o[2])).length)
