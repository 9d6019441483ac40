import { randomShed } from '/work/main/tests/shelf/plan/random-sheds.js';
import { bruteForce } from '/work/main/tests/shelf/plan/brute-force.js';
const tally: Record<string, number> = {}; let priced=0; const slow:any[]=[]; const t0=performance.now(); const margins=new Set();
const N=Number(process.argv[2]??200);
for (let s=Number(process.argv[4]??1);s<=N;s++){ const t=performance.now(); const a=bruteForce(randomShed(s)); const d=performance.now()-t; slow.push([d,s,a.engines]);
 tally[a.engines]=(tally[a.engines]??0)+1; if(a.cost>0)priced++; if (process.argv[3]) console.log(s, JSON.stringify(a), d.toFixed(0)); }
slow.sort((a,b)=>b[0]-a[0]); console.log(tally, priced, (performance.now()-t0).toFixed(0), slow.slice(0,6));
