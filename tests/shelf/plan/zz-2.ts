import { randomShed } from './random-sheds.js';
import { bruteForce } from './brute-force.js';
import { stockOf } from './brute-stock.js';
import { blockWays, crankWays } from './brute-parts.js';
import { rodWays } from './brute-rods.js';
import { pistonWays, ringWays, topWays, thrustWays, shellWays } from './brute-fits.js';
const t:any={};
for (let s=1;s<=400;s++) { const shed=randomShed(s); if (bruteForce(shed).engines) continue; const st=stockOf(shed,{}); const why:string[]=[];
 const bw=st.blocks.flatMap(b=>blockWays(shed,b)); if(!bw.length) why.push('blocks'+(shed.machining?'':' nomach'));
 const cw=st.crankshafts.flatMap(b=>crankWays(shed,b)); if(!cw.length) why.push('cranks'+(shed.machining?'':' nomach'));
 if(!rodWays(shed,st.rods).length) why.push('rods '+shed.engine.cylinders);
 if(bw.length&&!bw.some(b=>pistonWays(shed,st.pistonSets,b).length)) why.push('pistons');
 if(bw.length&&!bw.some(b=>ringWays(shed,st.ringSets,b).length)) why.push('rings');
 if(!st.heads.length) why.push('heads'); if(!st.valveSets.length) why.push('valves');
 if(shed.engine.endPlay) { if(!bw.some(b=>cw.some(c=>thrustWays(shed,st.thrustWashers,b.part.thrustWidth,c.part.thrustWidth).length))) why.push('thrust'); }
 if(cw.length&&rodWays(shed,st.rods).length&&!cw.some(c=>rodWays(shed,st.rods).some(r=>shellWays(st.shells,'rods',shed.engine.rodJournals,{...c.rods,sizes:c.rods.sizes.flatMap(x=>Array(shed.engine.rodsPerJournal??1).fill(x))} as never,r.housings).length))) why.push('rodshells');
 if(cw.length&&bw.length&&shed.engine.mainJournals&&!cw.some(c=>bw.some(b=>shellWays(st.shells,'mains',shed.engine.mainJournals!,c.mains,b.housings).length))) why.push('mainshells');
 const k=why.join('+'); t[k]=(t[k]??0)+1; }
console.log(Object.entries(t).sort((a:any,b:any)=>b[1]-a[1]).slice(0,25));
