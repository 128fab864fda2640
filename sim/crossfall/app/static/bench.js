function rh(i,e,t){for(let[n,s]of Object.entries(e))s==null||s===!1||(n.startsWith("on")&&typeof s=="function"?i.addEventListener(n.slice(2),s):i.setAttribute(n,s===!0?"":String(s)));i.append(...t.filter(n=>n!=null&&n!==!1))}function m(i,e={},...t){let n=document.createElement(i);return rh(n,e,t),n}function te(i,e={},...t){let n=document.createElementNS("http://www.w3.org/2000/svg",i);return rh(n,e,t),n}function Ee(i){let e=document.getElementById(i);if(e===null)throw new Error(`no element ${i}`);return e}function xe(i,...e){let t=document.activeElement,n=t&&i.contains(t)?t.getAttribute("data-key"):null;i.replaceChildren(...e.filter(s=>!!s)),n!==null&&i.querySelector(`[data-key="${CSS.escape(n)}"]`)?.focus({preventScroll:!0})}var tl=null;function Le(i,e="note"){tl??=Ee("say"),tl.textContent=i,tl.dataset.kind=e}function Ht(i,e="button"){let t=()=>[...i.querySelectorAll(e)].filter(r=>!r.disabled&&!r.hidden),n=null,s=()=>{let r=t(),a=n&&r.includes(n)?n:r.find(o=>o.getAttribute("aria-pressed")==="true")??r[0];for(let o of r){let l=o===a?0:-1;o.tabIndex!==l&&(o.tabIndex=l)}};i.addEventListener("focusin",r=>{n=r.target.closest(e),s()}),i.addEventListener("keydown",r=>{let a=r.key,o=t(),l=o.indexOf(document.activeElement);if(l<0)return;let h={ArrowRight:l+1,ArrowDown:l+1,ArrowLeft:l-1,ArrowUp:l-1,Home:0,End:o.length-1}[a];h!==void 0&&(r.preventDefault(),o[(h+o.length)%o.length].focus())}),new MutationObserver(s).observe(i,{childList:!0,subtree:!0,attributes:!0,attributeFilter:["disabled","hidden","aria-pressed"]}),s()}var ah=()=>matchMedia("(prefers-reduced-motion: reduce)").matches,j=(i,e=1)=>i==null||!Number.isFinite(i)?"–":i.toFixed(e).replace(/^-(0(\.0*)?)$/,"$1").replace("-","−"),vt=(i,e=1)=>{let t=j(i,e);return i>0&&Number(i.toFixed(e))!==0?`+${t}`:t},nl=null,oh=!1;function lh(){return zs(),oh}function zs(){if(nl===null){let i=document.createElement("canvas").getContext("webgl2");oh=i===null;let e=i?.getExtension("WEBGL_debug_renderer_info"),t=e?String(i?.getParameter(e.UNMASKED_RENDERER_WEBGL)):"";i?.getExtension("WEBGL_lose_context")?.loseContext(),nl=/swiftshader|llvmpipe|software|basic render/i.test(t)}return nl}var ch=i=>Math.max(0,Math.min(3,-Math.floor(Math.log10(i)+1e-9))),Oi=(i,e)=>`${j(i,Number.isInteger(Math.round(i*100)/100)?0:2)} ${e}`.trim();var pt={climb:{heading:0,name:"Climb",short:"Climb"},left:{heading:90,name:"Left side down",short:"Left down"},descent:{heading:180,name:"Descent",short:"Descent"},right:{heading:270,name:"Right side down",short:"Right down"}},I={bench:null,scene:null,answers:null,rows:[],measures:[],path:null,trials:[],view:{tilt:0,heading:90,row:null,direction:"all",rail:!1},trying:!1},Dr=new Map;function Ne(i,e){for(let t of Array.isArray(i)?i:[i])Dr.has(t)||Dr.set(t,new Set),Dr.get(t).add(e)}function Zn(...i){let e=new Set;for(let t of i)for(let n of Dr.get(t)??[])e.add(n);for(let t of e)t()}var Cf=150;function ns(i,e){let t=0,n=0,s=()=>{clearTimeout(t),n=performance.now(),i()};return()=>{if(!I.trying)return s();clearTimeout(t),t=window.setTimeout(s,Math.max(20,Math.min(Cf,n+e()-performance.now())))}}function Wt(i){let e=I.bench?.file===i.file?I.bench.rows.find(t=>t.row===I.view.row)?.name:void 0;(e!==void 0||I.bench?.file!==i.file)&&(I.view.row=i.rows.find(t=>t.name===e)?.row??null),I.path&&I.bench?.truck!==i.truck&&(I.path=null),I.bench=i,I.scene=i.scene,I.answers=i.answers,I.rows=i.rows,I.measures=i.measures,I.trying=!1,Zn("bench","shown","pick")}function il(i){I.scene=i.scene,I.answers=i.answers,I.rows=i.rows,I.measures=i.measures,I.trying=!0,Zn("shown")}function ct(i){let e=i.heading!==void 0&&i.heading!==I.view.heading,t=i.row!==void 0&&i.row!==I.view.row;Object.assign(I.view,i),(e||i.tilt!==void 0||i.direction!==void 0||i.rail!==void 0)&&Zn("view"),t&&Zn("pick")}function Jn(i,e,t){if(i.length===0)return null;let n=360/i.length,s=(t%360+360)%360/n,r=Math.floor(s)%i.length,a=e[r]??null,o=e[(r+1)%i.length]??null;return a===null||o===null?a??o:a+(o-a)*(s-Math.floor(s))}var Un=i=>i.compliant_deg.map((e,t)=>e??i.rail_deg[t]??null);function Qt(i,e){let t=Jn(i.heading_deg,Un(i),e);if(t===null)return null;let n=i.heading_deg.length,s=i.rail_deg[Math.round(e*n/360)%n]!==null;return{slides:s,deg:s?i.slide_deg.likely:t}}function Gs(i){let[e,t]=i?.compliant_range_deg??i?.rail_range_deg??[null,null];return e===null||t===null?null:[e,t]}var Pf=2,sl=i=>i!==null&&i[1]-i[0]>Pf,ki=(i,e)=>sl(e)?`${j(e[0],0)}–${j(e[1],0)}`:j(i);var ke=class extends Error{constructor(t,n,s){super(n.join(" "));this.status=t;this.sentences=n;this.where=s}status;sentences;where},Fn=class extends ke{constructor(){super(0,["The bench does not answer."],"gone")}},$t=(()=>{let i=document.getElementById("frozen");return i?.textContent?JSON.parse(i.textContent):null})(),zi=$t?$t.turn_deg:5;function If(i,e){let{bench:t,paths:n}=$t;return i==="/api/bench"?t:i==="/api/path"?n[Math.round(Number(e.heading_deg)/zi)*zi%360]:i==="/api/reference"?t.before:/exact|ways|gains/.test(i)?t.answers:null}var rl=new AbortController,hh=new EventTarget;function Lf(){rl.abort(new Fn),rl=new AbortController,hh.dispatchEvent(new Event("gone"))}function uh(i){hh.addEventListener("gone",i)}async function Vs(i,e={},t){if($t)throw new ke(403,["This is a copy to look at, without a bench behind it."],"copy");let n=rl,s;try{s=await fetch(i,{...e,signal:t?AbortSignal.any([t,n.signal]):n.signal})}catch(r){throw t?.aborted&&!n.signal.aborted&&!(t.reason instanceof DOMException&&t.reason.name==="TimeoutError")?r:(n.signal.aborted||Lf(),new Fn)}if(!s.ok)throw new ke(s.status,[await s.text()||s.statusText],null);return s}async function Hs(i){let e;try{e=await i.json()}catch{throw new Fn}if(typeof e=="object"&&e!==null&&"refused"in e)throw new ke(e.refused,e.problems,e.where);return e}async function Bi(i,e={},t){if($t){let s=If(i,e);if(s==null)throw new ke(409,["This is a copy to look at, without a bench behind it."],"copy");return s}let n=new URLSearchParams(Object.entries(e).map(([s,r])=>[s,String(r)])).toString();return Hs(await Vs(n?`${i}?${n}`:i,{},t))}async function is(i,e){return Hs(await Vs(i,{method:"POST",headers:{"Content-Type":"application/json"},body:JSON.stringify(e)}))}var ui=()=>({document:I.bench.document,revision:I.bench.revision}),gn=(i,e={},t)=>Bi(i,{...ui(),...e},t),St=(i,e={})=>is(i,{...ui(),...e}),_e={bench:()=>Bi("/api/bench"),pulse:()=>Bi("/api/pulse",{},AbortSignal.timeout(15e3)),edit:(i,e)=>St("/api/edit",{edits:i,what:e}),attempt:(i,e=!1)=>St("/api/try",{edits:i,full:e}),undo:()=>St("/api/undo"),redo:()=>St("/api/redo"),history:()=>gn("/api/history"),go:i=>St("/api/go",{to:i}),nameStep:(i,e)=>St("/api/name-step",{step:i,name:e}),pin:i=>St("/api/pin",{key:i}),reference:()=>gn("/api/reference"),save:(i,e)=>St("/api/save",{name:i,over:e}),discard:()=>St("/api/discard"),open:i=>is("/api/open",{name:i}),path:(i,e)=>gn("/api/path",{heading_deg:i},e),partForm:()=>gn("/api/part-form"),changes:()=>gn("/api/changes"),editChanges:(i,e)=>St("/api/edit-changes",{seen:i,asked:e}),keepEdits:(i,e)=>St("/api/keep-edits",{seen:i,asked:e}),bought:()=>gn("/api/bought"),fit:i=>St("/api/fit",{chosen:i}),plan:i=>St("/api/plan",{asked:i}),readings:()=>gn("/api/readings"),weigh:(i,e)=>St("/api/weigh",{form:i,keep:e}),board:i=>i?St("/api/board",{asked:i}):gn("/api/board"),wizard:()=>gn("/api/wizard"),reading:(i,e)=>is("/api/reading",{key:i,typed:e}),begin:(i,e,t)=>is("/api/begin",{name:i,typed:e,again:t}),agreement:i=>St("/api/agreement",{put:i}),sheet:async()=>{let i=await Vs(`/api/sheet?${new URLSearchParams({document:ui().document,revision:String(ui().revision)})}`);return i.headers.get("content-type")?.includes("pdf")||await Hs(i),i.blob()},share:async()=>{let i=await Vs(`/api/share?${new URLSearchParams({document:ui().document,revision:String(ui().revision)})}`);return i.headers.get("content-type")?.includes("json")&&await Hs(i),i.blob()},sweeps:()=>Bi("/api/sweeps"),sweep:i=>Bi("/api/sweep",{name:i}),runSweep:i=>St("/api/sweep-run",{asked:i}),sweepState:()=>Bi("/api/sweep-state"),stopSweep:()=>is("/api/sweep-stop",{}),place:i=>St("/api/place",{values:i}),trial:()=>Bi("/api/trial"),runTrial:(i,e)=>St("/api/trial",{headings:i,rail:e}),stopTrial:()=>is("/api/trial-stop",{}),poses:async i=>{let e=await Vs(`/api/poses?${new URLSearchParams({document:ui().document,revision:String(ui().revision),file:i})}`);return e.headers.get("content-type")?.includes("json")&&await Hs(e),e.arrayBuffer()},exact:()=>gn("/api/exact"),gains:()=>gn("/api/gains"),ways:()=>gn("/api/ways"),surface:i=>St("/api/surface",{surface:i})};function Fr(i,e,t){return i===null||e===null||e===void 0||Number((i-e).toFixed(t))===0?null:m("span",{class:"diff"},vt(i-e,t))}var Or=()=>I.bench.before;function Nf(){let i=t=>100*(t.corner_g[0]+t.corner_g[2])/t.mass_g,e=(t,n,s,r)=>{let[a,o]=[n(I.answers.numbers),Or()?n(Or().numbers):void 0];return m("div",{},m("dt",{},`${t}, ${r}`),m("dd",{},j(a,s)," ",Fr(a,o,s)))};return m("dl",{class:"cells",id:"numbers"},e("All up",t=>t.mass_g,0,"g"),e("CG height",t=>t.cg_mm[2],1,"mm"),e("On the front",t=>t.front_percent,1,"%"),e("On the left",i,1,"%"),e("CG ahead",t=>t.cg_mm[0],1,"mm"),e("CG left",t=>t.cg_mm[1],1,"mm"),e("On springs",t=>t.sprung_g,0,"g"),e("Off springs",t=>t.unsprung_g,0,"g"))}var Ur=["squash","along","rise","lean"];function al(i){return Object.entries(pt).map(([e,{heading:t,short:n}],s)=>{let r=o=>Jn(i.heading_deg,o,t),a=r(Un(i));return{name:e,short:n,rigid:r(i.rigid_deg)??0,tip:a,slides:Qt(i,t)?.slides??!1,way:i.ways?.[s]??null}})}function Df(i,e,t){let n=a=>Math.max(0,a)/t*200,s=[...dh(i,n,3,9),te("line",{x1:n(i.rigid),x2:n(i.rigid),y1:0,y2:15})];e&&s.push(te("g",{class:"then"},...dh(e,n,14,4)));let r=ol(i).map((a,o)=>`${i.way?.budget_steps[o]?.name} ${vt(a)}°`).join(", ");return te("svg",{viewBox:`0 0 200 ${e?19:15}`,class:e?"budget-bar both":"budget-bar",preserveAspectRatio:"none",role:"img","aria-label":r||"no budget yet"},...s)}function dh(i,e,t,n){let s=[te("rect",{class:"keep",x:0,y:t,width:e(i.tip??i.rigid),height:n})],r=i.rigid;return ol(i).forEach((a,o)=>{let[l,c]=[e(r+Math.min(0,a)),e(r+Math.max(0,a))];s.push(te("rect",{class:`loss${o}`,x:l,y:t,width:Math.max(0,c-l),height:n})),r+=a}),s}function ol(i){return(i.way?.budget_steps??[]).slice(0,Ur.length).map(e=>e.gained_deg??0)}function Uf(i){let e=Gs(i.way),t=i.way?.uncertain_by.slice(0,4).map(s=>`${s.name} ±${j(s.pm_deg,2)}°`).join(", "),n=e?sl(e)?`likely ${j(i.tip)}`:`${j(e[0])} to ${j(e[1])}`:"…";return m("td",{class:"n range-cell",title:t?`95 %. Behind it: ${t}`:void 0},n)}function Ff(i,e){let t=ki(i.tip,Gs(i.way));return m("td",{class:"n"},m("b",{},i.slides?`[${t}]`:t)," ",Fr(i.tip,e?.tip,1))}function Of(){let i=al(I.answers),e=Or(),t=e?al(e):[],n=Math.max(...[...i,...t].map(r=>Math.max(r.rigid,r.tip??0)))*1.02,s=r=>Ur.map((a,o)=>m("td",{class:"n"},r.way?vt(ol(r)[o]??0):"…"));return m("table",{id:"budget"},m("caption",{},"Where the degrees go",e?m("span",{class:"soft"},`, thin bars: ${e.what}`):null),m("thead",{},m("tr",{},...["","stiff",...Ur,"tips, 95 %"].map((r,a)=>m(r?"th":"td",r?{scope:"col",class:a?"n":""}:{},r)))),...i.map((r,a)=>m("tbody",{"data-case":r.name},m("tr",{},m("th",{scope:"row",rowspan:2},r.short),m("td",{class:"n"},j(r.rigid)),...s(r),Ff(r,t[a]??null)),m("tr",{},m("td",{class:"bar-cell",colspan:Ur.length+1},Df(r,t[a]??null,n)),Uf(r)))))}function kf(i){return i.outcome!=="too close to call"?`${i.outcome} first`:`too close to call, ${j(100*i.tips_first_share,0)} % tips`}function Bf(){let{surface:i,grip_range:e,slide_deg:t,ways:n}=I.answers,s=(a,o,l)=>o>a?` (${j(a,l)} to ${j(o,l)})`:"",r=al(I.answers);return m("p",{class:"text soft",id:"sliding"},`On ${i}, grip ${j(e.likely,2)}${s(e.low,e.high,2)}, it slides at ${j(t.likely)}°${s(t.low,t.high,1)}. `,n?`${r.map(a=>`${a.short}: ${kf(a.way)}`).join("; ")}. `:"",r.some(a=>a.slides)?"In brackets: it slides first, and would tip there against a rail.":"")}function zf(){let i=I.answers,e=I.view.heading,t=I.trying?void 0:i.ways?.find(c=>c.heading_deg===e),[n,s]=t?.goes_at_range_deg??[null,null],r=Qt(i,e),a=Or(),o=Object.values(pt).find(c=>c.heading===e)?.short??`Turned ${j(e,0)}°`,l=a?Qt(a,e)?.deg:void 0;xe(Ee("readout"),m("span",{},`${o}: ${r?.slides?"slides":"tips"} at ${ki(r?.deg??null,n===null||s===null?null:[n,s])}° `,Fr(r?.deg??null,l,1)),m("span",{},`${j(i.numbers.mass_g,0)} g `,Fr(i.numbers.mass_g,a?.numbers.mass_g,0)))}function fh(){Ne(["shown","view"],()=>{I.answers&&zf()}),Ne("shown",()=>{I.answers&&xe(Ee("block"),Nf(),Of(),Bf())})}var fi=null,di=null,ph=0,Ws=[];function mi(i){di=i,clearTimeout(kr),fi===null&&Gf()}async function Gf(){for(;di!==null;){let i=di;di=null;let e=fi=new AbortController,t=performance.now();try{let n=await _e.attempt(i);if(e.signal.aborted)return;il(n),Ws.push(performance.now()-t),Ws.length>400&&Ws.shift(),clearTimeout(kr),kr=window.setTimeout(()=>{Vf(i,e)},250)}catch(n){if(e.signal.aborted)return;if(!(n instanceof ke))throw n;if(n instanceof Fn)return Sn();if(n.status===409)return fi=null,di=null,void _h(n,"what you were trying",null);Le(n.sentences.slice(0,3).join(" "),"wrong")}}fi=null}var kr=0;async function Vf(i,e){if(!(!I.trying||fi!==null||e.signal.aborted||di!==null))try{let t=await _e.attempt(i,!0);I.trying&&fi===null&&di===null&&!e.signal.aborted&&il(t)}catch(t){if(!(t instanceof ke))throw t}}function gh(){clearTimeout(kr),fi?.abort(),fi=null,di=null}async function en(i,e){return gh(),ht(()=>_e.edit(i,e),e,()=>_e.edit(i,e))}var mh=Promise.resolve(),ll=0,Br=0,zr=()=>ll>0;function ht(i,e,t){let n=Br;ll+=1;let s=mh.then(()=>Br===n?Hf(i,e,t):!1).finally(()=>{ll-=1});return mh=s,s}async function Hf(i,e,t){try{return Wt(await i()),Le(e?`${e[0].toUpperCase()}${e.slice(1)}.`:""),Ee("notice").hidden=!0,!0}catch(n){if(!(n instanceof ke))throw n;return n instanceof Fn?(Br+=1,Sn()):n.status===409&&n.where!=="disk"?await _h(n,e,t??null):(Le(n.sentences.slice(0,3).join(" "),"wrong"),Sn()),!1}}function Sn(){gh(),Wt(I.bench)}async function _h(i,e,t){Br+=1;let n=I.bench;try{Wt(await _e.bench())}catch(a){if(!(a instanceof ke))throw a;return}let s=I.bench,r=[["Leave it as it is",()=>{}]];if(s.file!==n.file){r.unshift([`Put ${n.file} back on the bench`,()=>{ht(()=>_e.open(n.file),`on the bench: ${n.file}`)}]),pi(`${s.file} is on the bench now, put there from another tab. Your last change was meant for ${n.file} and was not put down.`,r);return}t&&r.unshift([`Do mine on top: ${e}`,()=>{ht(()=>I.bench.file===n.file?t():Promise.reject(i),e)}]),pi("This truck was changed in another tab or on disk. You see that state now; your last change was not put down.",r)}function pi(i,e){let t=Ee("notice");xe(t,m("p",{},i),...e.map(([n,s])=>m("button",{type:"button",onclick:()=>{t.hidden=!0,s()}},n))),t.hidden=!1,t.querySelector("button")?.focus()}function vh(){Ne("bench",()=>{clearTimeout(ph);let i=I.bench;ph=window.setTimeout(()=>{Wf(i)},i.answers.exact?400:120)})}async function Wf(i){let e=()=>I.bench!==i,t=()=>{I.trying||(I.answers=i.answers,Zn("shown"))};try{for(let s of[_e.exact,_e.ways]){if(e())return;if(s===_e.exact&&i.answers.exact)continue;let r=await s();if(e())return;i.answers=r,t()}if(i.before&&!(i.before.exact&&i.before.ways)){let s=await _e.reference();if(e())return;i.before=s,t()}let n=await _e.gains();if(e())return;i.answers=n,t()}catch(n){if(!(n instanceof ke)||n.status!==409&&n.status!==0)throw n}}function ss(i,e,t){let n="input, select, button",s=l=>[...l.querySelectorAll(n)],r=l=>{l&&(l.focus(),l instanceof HTMLInputElement&&l.select())},a=l=>{for(let c of i.querySelectorAll("[tabindex='0']"))c.tabIndex=-1;l.tabIndex=0};for(let l of s(i))l.tabIndex=-1;let o=i.querySelector(t.key?`[data-key="${CSS.escape(t.key)}"]`:"input")??i.querySelector(n);o&&a(o),i.addEventListener("focusin",l=>{a(l.target),t.key=l.target.getAttribute("data-key")??""}),i.addEventListener("input",l=>l.target.toggleAttribute("data-typing",!0));for(let l of["change","focusout"])i.addEventListener(l,c=>c.target.removeAttribute("data-typing"));i.addEventListener("keydown",l=>{let c=l.target,h=c.closest(e),d=s(h).indexOf(c);if(l.altKey||l.ctrlKey||l.metaKey)return;let u=l.key==="ArrowLeft"?-1:l.key==="ArrowRight"?1:0,f=l.key==="ArrowUp"?-1:l.key==="ArrowDown"?1:0;if(f){l.preventDefault();let g=f>0?h.nextElementSibling:h.previousElementSibling;g&&r(s(g)[Math.min(d,s(g).length-1)])}else u&&!c.hasAttribute("data-typing")&&(l.preventDefault(),r(s(h)[d+u]))})}var Gr=i=>i.closest("[hidden]")===null;function wn(i,e,t=0){let n=!1,s=0,r=()=>{clearTimeout(s),!(!n||!Gr(i))&&(n=!1,e())};Ne("bench",()=>{n=!0,clearTimeout(s),s=window.setTimeout(r,t)}),i.addEventListener("open",r)}function xh(i){bh(Ee("tabs"),Ee("leaf"),i)}function cl(i,e){return t=>{let n=m("div",{class:"subtabs",role:"tablist","aria-label":i});t.classList.add("several"),t.append(n),bh(n,t,e)}}function yh(...i){for(let e of i)document.getElementById(`tab-${e}`)?.click()}function bh(i,e,t){let n=new Map,s=t.map((a,o)=>{let l=m("button",{type:"button",role:"tab",id:`tab-${a.id}`,onclick:()=>r(a.id)},a.name);return l.addEventListener("keydown",c=>{let h={ArrowRight:o+1,ArrowLeft:o-1,Home:0,End:t.length-1}[c.key];h!==void 0&&(c.preventDefault(),r(t[(h+t.length)%t.length].id,!0))}),i.append(l),l}),r=(a,o=!1)=>{t.forEach((l,c)=>{let h=s[c],d=l.id===a,u=n.get(l.id);if(h.setAttribute("aria-selected",String(d)),h.tabIndex=d?0:-1,u&&(u.hidden=!d),!!d)if(o&&h.focus(),u)for(let f of[u,...u.querySelectorAll('[role="tabpanel"]')])Gr(f)&&f.dispatchEvent(new Event("open"));else{let f=m("div",{role:"tabpanel",id:`leaf-${a}`,"aria-labelledby":`tab-${a}`});e.append(f),n.set(a,f),h.setAttribute("aria-controls",f.id),l.make(f)}})};r(t[0].id)}function Mh(){let i=document.querySelector(".bench"),e=[...document.querySelectorAll(".places button")];for(let t of e)t.addEventListener("click",()=>{i.dataset.place=t.dataset.place;for(let n of e)n.setAttribute("aria-pressed",String(n===t))})}var wh=[["side","Side slope"],["climb","Climb"],["descent","Descent"],["worst","Weakest way"]];function Th(i){let e=null,t=null,n="",s="side",r=m("div",{class:"total",id:"change-total"}),a=m("div",{id:"changes"}),o={key:""},l=m("select",{id:"change-order","aria-label":"Best first for"},...wh.map(([d,u])=>m("option",{value:d},u)));l.addEventListener("change",()=>{s=l.value,c()}),i.append(m("div",{class:"bar"},m("label",{for:"change-order"},"Best first for"),l),r,a);let c=()=>{if(xe(r,...Sh(e)),!e)return xe(a,m("p",{class:"text soft"},"Reading the change file…"));if(e.changes.length===0)return xe(a,m("p",{class:"text"},`There is no ${e.file} beside this truck. It lists what you could do, with prices: begin one under "The list", where what you edited by hand becomes a change as well.`));let d=f=>t?.changes[f.name]?.gain_deg[s]??-99,u=m("div",{},...[...e.changes].sort((f,g)=>d(g)-d(f)).map(f=>Xf(f,e,t)));ss(u,".change",o),xe(a,u)},h=async()=>{try{if(e=await _e.changes(),c(),e.changes.length===0)return;let d=`${I.bench.file} ${I.bench.answers.surface} ${e.stamp}`;if(t&&d===n&&Object.keys(I.bench.fitted).length)return;n=d,t=await _e.bought(),c()}catch(d){if(!(d instanceof ke))throw d;d.status!==409&&d.status!==0&&Le(d.message,"wrong")}};Ne("bench",c),wn(i,()=>{h()},250),i.addEventListener("open",()=>{h()}),Ne("shown",()=>xe(r,...Sh(e))),c(),h()}function Sh(i){let{fitted:e,before:t,answers:n}=I.bench,s=Object.keys(e),r=(i?.changes??[]).reduce((o,l)=>o+l.price*(e[l.name]??0),0),a=[m("span",{},s.length?`${s.length} fitted, `:"Nothing fitted, ",m("b",{},Oi(r,i?.currency??"")))];if(t){a.push(m("span",{},`${vt(n.numbers.mass_g-t.numbers.mass_g,0)} g`));for(let{heading:o,short:l}of Object.values(pt)){let c=(f,g)=>Jn(f.heading_deg,g,o),[h,d]=[c(n,Un(n)),c(t,Un(t))],u=h!==null&&d!==null?h-d:(c(n,n.rigid_deg)??0)-(c(t,t.rigid_deg)??0);a.push(m("span",{class:"one-gain"},`${l} `,m("b",{class:u>.05?"gain-up":u<-.05?"gain-down":""},`${vt(u,1)}°`)))}a.push(m("span",{class:"soft"},`against ${$f(t.what)}`))}return s.length&&a.push(m("button",{type:"button",id:"fit-none","data-key":"fit-none",onclick:()=>{Eh({},"took all changes off")}},"Take all off")),a}var $f=i=>i==="before these changes"?"the truck before":i.startsWith("as ")?`the truck ${i}`:i;function Eh(i,e){return ht(()=>_e.fit(i),e)}function Xf(i,e,t){let n=I.bench.fitted[i.name]??0,s=t?.changes[i.name],r=`change-${i.name.replace(/\W+/g,"-")}`,a=d=>{let u={...I.bench.fitted};if(d>0?u[i.name]=d:delete u[i.name],d>0&&i.group)for(let f of e.changes)f.group===i.group&&f.name!==i.name&&delete u[f.name];if(d>0)for(let f of i.requires)u[f]??=1;Eh(u,d>0?`fitted ${i.name}`:`took ${i.name} off`).then(f=>{f||(o.checked=n>0)})},o=m("input",{type:"checkbox",id:r,"data-key":r,checked:n>0,role:"switch"});o.addEventListener("change",()=>a(o.checked?1:0));let l=null;i.most>1&&(l=m("input",{type:"number",min:0,max:i.most,step:1,value:n,"aria-label":`How many of ${i.label}`,"data-key":`${r}-many`}),l.addEventListener("change",()=>a(Math.max(0,Math.min(i.most,Math.round(Number(l.value)))))));let c=s?wh.slice(0,3).map(([d,u])=>{let f=s.gain_deg[d]??null,v=!s.turns[d]&&Math.abs(f??0)>2*(s.gain_sd_deg[d]??0)&&Math.abs(f??0)>=.05?(f??0)>0?"gain-up":"gain-down":"";return m("span",{},`${u} `,m("b",{class:v},f===null?"–":`${vt(f,2)}°`))}):[],h=t?.impossible[i.name];return m("div",{class:`change${n>0?" on":""}`,"data-change":i.name},o,m("label",{for:r},i.label),m("span",{class:"price"},l,l?" × ":"",Oi(i.price,e.currency)),m("div",{class:"buys"},...t?c:[m("span",{class:"soft"},"working out what it buys…")],...(s?.side??[]).map(d=>m("span",{class:"soft"},`${d.what} ${vt(d.by,Math.abs(d.by)<10?1:0)} ${d.unit}`))),s?.words||h||i.requires.length?m("p",{class:"note"},[h??"",s?.words?`${s.words[0].toUpperCase()}${s.words.slice(1)}.`:"",i.requires.length?`Needs ${i.requires.join(", ")}.`:""].filter(Boolean).join(" ")):null)}function Ch(i){Ee("undo").addEventListener("click",Ah),Ee("redo").addEventListener("click",hl),Ee("save").addEventListener("click",()=>{Rh()}),Ee("save-as").addEventListener("click",ul),Ee("sheet").addEventListener("click",()=>{qf()});let e=Ee("truck");e.addEventListener("change",()=>{Ih(e.value)});let t=Ee("surface");t.addEventListener("change",()=>{ht(()=>_e.surface(t.value),`on ${t.value}`)});let n=Ee("reference");n.addEventListener("change",()=>{ht(()=>_e.pin(n.value),`compared with: ${n.selectedOptions[0]?.textContent??""}`)}),Yf(i),addEventListener("keydown",s=>{if(!(s.ctrlKey||s.metaKey)||s.target.matches("input[type=text], input[type=number], textarea"))return;let r=s.key.toLowerCase();r==="z"&&(s.preventDefault(),(s.shiftKey?hl:Ah)()),r==="y"&&(s.preventDefault(),hl()),r==="s"&&(s.preventDefault(),Rh())}),Ht(document.querySelector(".tools")),Ne("bench",Ph)}function Ph(){let i=I.bench;xe(Ee("truck"),...i.trucks.map(s=>m("option",{value:s,selected:s===i.file},s.replace(/\.toml$/,"")))),xe(Ee("surface"),...(i.surfaces.length?i.surfaces:[i.answers.surface]).map(s=>m("option",{value:s,selected:s===i.answers.surface},s))),Ee("surface").disabled=i.surfaces.length<2,xe(Ee("reference"),...i.references.map(s=>m("option",{value:s.key,selected:s.key===i.reference},s.words)));let e=Ee("state");e.textContent=i.needs_name?i.unsaved?"demo truck, changed: save it under a name":"demo truck":i.unsaved?"changed, not saved yet":"saved",e.classList.toggle("unsaved",i.unsaved);let[t,n]=[Ee("undo"),Ee("redo")];t.disabled=i.undo===null,n.disabled=i.redo===null,t.title=i.undo===null?"Nothing to undo":`Undo: ${i.undo}`,n.title=i.redo===null?"Nothing to redo":`Redo: ${i.redo}`,Ee("save").disabled=!i.unsaved&&!i.needs_name,document.title=`${i.unsaved?"• ":""}${i.file.replace(/\.toml$/,"")} – crossfall bench`}async function qf(){Le("Drawing the set-up sheet…");try{let i=m("a",{href:URL.createObjectURL(await _e.sheet()),download:`${I.bench.file.replace(/\.toml$/,"")}-sheet.pdf`});i.click(),URL.revokeObjectURL(i.href),Le("The set-up sheet is in your downloads.")}catch(i){if(!(i instanceof ke))throw i;Le(`The sheet was not drawn: ${i.message}`,"wrong")}}function Ah(){ht(()=>_e.undo(),`undone: ${I.bench.undo??"nothing"}`)}function hl(){ht(()=>_e.redo(),`done again: ${I.bench.redo??"nothing"}`)}async function Rh(){if(I.bench.needs_name)return ul();await Vr(null,!1)}async function Vr(i,e){try{Wt(await _e.save(i,e)),Le(`Saved as ${I.bench.file}.`)}catch(t){if(!(t instanceof ke))throw t;if(t.status===409&&t.where==="disk")pi(`Not saved: ${t.message}.`,[["Save under a new name",ul],["Write mine over it",()=>{Vr(i,!0)}],["Take the file as it is on disk",()=>{ht(()=>_e.discard(),"taken from disk")}]]);else if(t.status===409){let n=I.bench.file;Wt(await _e.bench()),I.bench.file!==n?pi(`${I.bench.file} is on the bench now, put there from another tab; ${n} was not saved.`,[[`Put ${n} back on the bench`,()=>{Ih(n)}]]):pi("This truck was changed in another tab or on disk. You see that state now; nothing was saved.",[["Save this state",()=>{Vr(i,e)}]])}else t.status!==0&&Le(t.message,"wrong")}}function ul(){let i=Ee("ask"),e=m("input",{id:"new-file",required:!0,maxlength:80,value:I.bench.file.replace(/\.toml$/,"")+"-2"});xe(i,m("form",{method:"dialog"},m("h2",{},"Save as a new file"),m("label",{for:"new-file"},"Name, in the opened folder"),e,m("div",{class:"bar"},m("button",{value:"no",formnovalidate:!0},"Leave it"),m("button",{value:"yes",class:"main"},"Save")))),i.onclose=()=>{i.returnValue==="yes"&&Vr(e.value.trim(),!1)},i.returnValue="no",i.showModal(),e.select()}async function Ih(i){Le(`Fetching ${i.replace(/\.toml$/,"")}…`),await ht(()=>_e.open(i),`on the bench: ${i.replace(/\.toml$/,"")}`)&&Ph()}function Yf(i){let e=document.documentElement,t=Ee("light"),n=matchMedia("(prefers-color-scheme: dark)"),s=null;try{s=localStorage.getItem("crossfall-light")}catch{}let r=()=>{let a=s??(n.matches?"dark":"light");e.dataset.light=a,t.textContent=a==="dark"?"Light":"Dark",i()};t.addEventListener("click",()=>{s=e.dataset.light==="dark"?"light":"dark";try{localStorage.setItem("crossfall-light",s)}catch{}r()}),n.addEventListener("change",r),r()}function Nh(i){let e=null,t=null,n={key:""},s=m("div",{id:"change-list"}),r=m("div",{hidden:!0}),a=m("datalist",{id:"change-groups"}),o=m("button",{type:"button",id:"change-new"},"New change"),l=m("button",{type:"button",id:"change-keep",title:"What you edited by hand since the state it is compared with"},"Keep my edits as a change"),c=m("button",{type:"button",id:"change-back",hidden:!0});i.append(m("div",{class:"bar"},o,l,c),r,s,a);let h=()=>{if(!e)return;if(c.hidden=t===null||t.stamp!==e.stamp,c.textContent=`Take back: ${t?.what??""}`,xe(a,...[...new Set(e.changes.map(p=>p.group).filter(Boolean))].map(p=>m("option",{value:p}))),e.changes.length===0)return xe(s,m("p",{class:"text"},`There is no ${e.file} yet. Begin it with a new change, or edit the truck (move the pack, weigh something lighter, add a part) and keep that as a change: it becomes a switch with a price.`));let v=m("tbody",{},...e.changes.map(d)),_=m("table",{class:"parts listed"},m("caption",{class:"visually-hidden"},"The list of changes. Arrow keys go through it."),m("thead",{},m("tr",{},...["Change, and what it does",`Price, ${e.currency||"money"}`,"One of a group",""].map(p=>m(p?"th":"td",p?{scope:"col"}:{},p)))),v);ss(v,"tr",n),xe(s,_,m("p",{class:"text soft"},`Kept in ${e.file}. Of a group only one can be on the truck.`))},d=v=>{let _=v.name in I.bench.fitted,p=(M,C,S,T)=>{let A=m("input",{value:S,"aria-label":`${C} of ${v.name}`,"data-key":`list-${M}-${v.name}`,...T});return A.addEventListener("change",()=>{if(!A.checkValidity())return void A.reportValidity();let x=M==="price"?Number(A.value||0):A.value.trim()||null;f({do:"field",name:v.name,field:M,value:x},`${C.toLowerCase()} of ${v.name}`).then(E=>{E||(A.value=S)})}),A};return m("tr",{"data-listed":v.name},m("td",{},p("label","Words",v.label,{required:!0,maxlength:200}),m("small",{class:"soft"},v.does)),m("td",{class:"n"},p("price","Price",String(v.price),{type:"number",min:0,max:1e7,step:"any"})),m("td",{},p("group","Group",v.group??"",{list:"change-groups",maxlength:60})),m("td",{},m("button",{type:"button","aria-label":`Remove ${v.name} from the list`,"data-key":`list-remove-${v.name}`,disabled:_,title:_?"It is on the truck: take it off first":"Remove",onclick:()=>{f({do:"remove",name:v.name},`removed ${v.name}`)}},"✕")))},u=(v,_)=>{e=v,t=v.was===void 0?null:{text:v.was,stamp:v.stamp,what:_},h()},f=async(v,_)=>{try{return u(await _e.editChanges(e?.stamp??"",v),_),Le(`${_[0].toUpperCase()}${_.slice(1)}, written to ${e.file}.`),!0}catch(p){if(!(p instanceof ke))throw p;return Le(p.sentences.slice(0,3).join(" "),"wrong"),p.status!==0&&g(),!1}},g=async()=>{try{e=await _e.changes(),h()}catch(v){if(!(v instanceof ke))throw v;v.status!==409&&v.status!==0&&Le(v.message,"wrong")}};c.addEventListener("click",()=>{t&&f({do:"text",text:t.text},`took back: ${t.what}`).then(v=>{v&&(t=null,h(),o.focus())})}),o.addEventListener("click",()=>Lh(r,"A new change",!0,v=>f({do:"new",change:v},`new change ${v.name}`))),l.addEventListener("click",()=>Lh(r,"Your edits as a change",!1,async v=>{let _=await ht(()=>_e.keepEdits(e?.stamp??"",v),`kept your edits as ${v.name}, switched on`);return _&&yh("changes"),_})),wn(i,()=>{g()},100),i.addEventListener("open",()=>{g()}),g()}var Zf=[["move","moves a part"],["mass","makes a part weigh"],["remove","takes a part off"],["set","sets a measure"]];function Lh(i,e,t,n){let s=(T,A)=>m("input",{id:`change-${T}`,...A}),r=s("name",{required:!0,maxlength:60,pattern:'[^.\\[\\]"]+',"aria-label":"Name"}),a=s("label",{maxlength:200,"aria-label":"In words"}),o=s("price",{type:"number",min:0,max:1e7,step:"any",value:0,"aria-label":"Price"}),l=s("group",{list:"change-groups",maxlength:60,"aria-label":"Group, of which only one can be chosen"}),c=m("select",{id:"change-act","aria-label":"What it does"},...Zf.map(([T,A])=>m("option",{value:T},A))),h=I.bench.rows.find(T=>T.row===I.view.row)?.name,d=m("select",{id:"change-part","aria-label":"Which part"},...I.bench.rows.map(T=>m("option",{value:T.name,selected:T.name===h},T.name))),u=m("select",{id:"change-measure","aria-label":"Which measure"},...I.bench.measures.map(T=>m("option",{value:T.key},`${T.name}, ${T.unit}`))),f=["ahead","to the left","up"].map((T,A)=>s(`by${A}`,{type:"number",step:"any",value:0,"aria-label":`Moved by, ${T}, mm`})),g=s("value",{type:"number",step:"any","aria-label":"To"}),v=m("div",{class:"new-line"}),_=()=>{let T=c.value;g.required=T==="mass"||T==="set",xe(v,m("span",{class:"new-label"},"It"),c,...T==="set"?[u,g]:[d],...T==="move"?[...f,m("span",{class:"soft"},"mm ahead, left, up")]:[],...T==="mass"?[g,m("span",{class:"soft"},"g")]:[])};c.addEventListener("change",()=>{_(),c.focus()});let p=()=>c.value==="move"?{move:[{part:d.value,by_mm:f.map(T=>Number(T.value))}]}:c.value==="mass"?{swap:[{part:d.value,new:{mass_g:Number(g.value)}}]}:c.value==="remove"?{remove:[d.value]}:{set:{[u.value]:Number(g.value)}},M=()=>{i.hidden=!0,i.replaceChildren(),document.getElementById(t?"change-new":"change-keep")?.focus()},C=(T,...A)=>m("div",{class:"new-line"},m("span",{class:"new-label"},T),...A),S=m("form",{class:"new-part","aria-label":e},m("h3",{},e),C("Name",r,m("label",{},"price ",o)),t?C("In words",a):null,C("One of",l,m("span",{class:"soft"},"leave empty if it goes with all others")),t?v:null,m("p",{class:"about"},t?"What is more than this (a part added, several things at once): edit the truck, then keep that as a change.":"What differs from the state your truck is compared with goes into the list, and is switched on in its place."),m("div",{class:"bar"},m("button",{type:"submit",class:"main",id:"change-add"},t?"Put it in the list":"Keep them"),m("button",{type:"button",id:"change-leave",onclick:M},"Leave it")));S.addEventListener("submit",T=>{T.preventDefault();let A={name:r.value.trim(),label:a.value.trim(),price:Number(o.value||0),group:l.value.trim(),...t?p():{}};n(A).then(x=>{x&&M()})}),_(),xe(i,S),i.hidden=!1,r.focus()}function Dh(){let i=Ee("history"),e=m("div",{class:"steps"}),t=m("button",{type:"button",id:"step-name",onclick:()=>h()},"Name this step…"),n=m("button",{type:"button",id:"step-pin",title:"Compare everything with the truck as it is now",onclick:()=>{ht(()=>_e.pin("now"),"compared with this step from now on")}},"Compare with this");i.append(e,m("div",{class:"step-tools"},t,n)),Ht(i);let s=null,r=0,a=()=>{let d=s?.steps??[];if(i.hidden=d.length<2,!s||i.hidden)return;let u=d.map(v=>v.weakest_deg).filter(v=>v!==null),[f,g]=[Math.min(...u)-.5,Math.max(...u)+.5];xe(e,...d.map((v,_)=>{let p=v.weakest_deg,M=_?d[_-1].weakest_deg:null,C=p!==null&&M!==null?`, ${vt(p-M,1)}°`:"",S=`${v.name||v.what}${p===null?"":`: weakest ${j(p)}°${C}`}${v.saved?", as saved":""}`,T=m("i",{class:"step-bar","aria-hidden":"true"});return T.style.height=`${p===null?2:Math.round(3+15*(p-f)/(g-f))}px`,m("button",{type:"button",class:`step${v.saved?" saved":""}${_>s.now?" undone":""}`,"data-key":`step-${_}`,"aria-pressed":String(_===s.now),title:S,"aria-label":`Step ${_}: ${S}`,onclick:()=>{ht(()=>_e.go(_),_===0?"back at the start":`at the step: ${v.name||v.what}`)}},T,m("span",{},v.name?v.name:p===null?"…":`${j(p)}°`))})),t.disabled=s.now===0,e.querySelector("[aria-pressed='true']")?.scrollIntoView({block:"nearest",inline:"nearest"})},o=async()=>{try{s=await _e.history(),a()}catch(d){if(!(d instanceof ke))throw d}},l=()=>{clearTimeout(r),r=window.setTimeout(()=>{o()},150)};Ne("bench",l);let c="";Ne("shown",()=>{I.trying||!I.answers.exact||c===I.bench.truck+I.answers.surface||(c=I.bench.truck+I.answers.surface,l())});let h=()=>{if(!s||s.now===0)return;let d=s.now,u=Ee("ask"),f=m("input",{id:"new-step",maxlength:60,value:s.steps[d].name});xe(u,m("form",{method:"dialog"},m("h2",{},"Name this step"),m("label",{for:"new-step"},`What to call the truck after “${s.steps[d].what}”`),f,m("div",{class:"bar"},m("button",{value:"no",formnovalidate:!0},"Leave it"),m("button",{value:"yes",class:"main"},"Name it")))),u.onclose=()=>{u.returnValue==="yes"&&_e.nameStep(d,f.value).then(g=>{s=g,a()},g=>{if(!(g instanceof ke))throw g;Le(g.message,"wrong")})},u.returnValue="no",u.showModal(),f.select()}}var Uh=1500,Wr=!1,Hr="";function Fh(){uh(()=>{if(Wr)return;Wr=!0,document.documentElement.dataset.lost="",Sn();let i=Ee("notice");i.replaceChildren(m("p",{},"The bench does not answer. What you see is the last state it took; your work up to there is kept. Start it again with crossfall bench: this page finds it by itself.")),i.hidden=!1}),window.setTimeout(()=>{Oh()},Uh)}async function Oh(){try{await Jf()}catch(i){if(!(i instanceof ke))throw i;i instanceof Fn||Le(i.message,"wrong")}finally{window.setTimeout(()=>{Oh()},Uh)}}async function Jf(){let i=await _e.pulse(),e=I.bench;if(Wr)return Kf();if(!(I.trying||zr())){if(i.document!==e.document||i.revision!==e.revision){let t=await _e.bench();if(I.trying||zr()||I.bench!==e)return;Wt(t),Le(t.document!==e.document?`${t.file} was put on the bench by another tab.`:`Changed elsewhere: ${t.undo??"an older state"}.`)}else if(i.unsaved!==e.unsaved||i.surface!==e.answers.surface||i.reference!==(e.reference??"auto")){let t=await _e.bench();!I.trying&&!zr()&&I.bench===e&&Wt(t)}i.disk!==Hr&&(Hr=i.disk,Hr&&pi(`${Hr}.`,[["Take the file as it is on disk",()=>{ht(()=>_e.discard(),"taken from disk")}],["Keep what is here",()=>{}]]))}}async function Kf(){let i=I.bench,e=await _e.bench();Wr=!1,delete document.documentElement.dataset.lost,Ee("notice").hidden=!0,Wt(e),Le(e.document===i.document&&e.revision===i.revision?"The bench is back, with everything as it was.":`The bench is back, with ${e.file} as it is there now.`)}var kh=[["mass_g","mass of a part, g",0],["at_mm.x","a part's place ahead, mm",30],["at_mm.y","a part's place to the left, mm",20],["at_mm.z","a part's place up, mm",25]],dl={heading_deg:["way it stands, turned by °",0,180,13],grip:["grip of the ground",.5,1.2,8]};function zh(i,e){let t=[Bh("x","Across","both.track_mm"),Bh("y","Up","chassis.raise_mm")],n=m("select",{id:"sweep-heading","aria-label":"Which way to stand"},...Object.values(pt).map(p=>m("option",{value:p.heading,selected:p.heading===90},p.name)),m("option",{value:"all"},"all four ways")),s=m("select",{id:"sweep-method","aria-label":"By which method"},m("option",{value:"compliant"},"springs and tyres"),m("option",{value:"closed form"},"as if nothing gave, at once")),r=m("span",{class:"soft",id:"sweep-count"}),a=m("button",{type:"submit",class:"main",id:"sweep-run"},"Run"),o=m("button",{type:"button",id:"sweep-stop",hidden:!0},"Stop"),l=m("progress",{id:"sweep-bar",max:1,value:0,"aria-label":"How far the sweep is",hidden:!0}),c=m("p",{class:"text",id:"sweep-words",role:"status",hidden:!0}),h=m("form",{class:"new-part sweep-form","aria-label":"A new sweep"},m("h3",{},"A new sweep"),...t.map(p=>p.node),m("div",{class:"new-line"},m("span",{class:"new-label"},"Standing"),n),m("div",{class:"new-line"},m("span",{class:"new-label"},"By"),s),m("div",{class:"bar"},a,o,r),l,c);i.append(h);let d=()=>t.reduce((p,M)=>p*Number(M.asked().steps),1)*(n.disabled||n.value!=="all"?1:4),u=()=>{n.disabled=t.some(p=>p.key()==="heading_deg"),r.textContent=`${d()} trucks to answer`};h.addEventListener("input",u),h.addEventListener("change",u),Ne("bench",u);let f="",g=p=>{let M=p.state==="running"||p.state==="stopping";a.disabled=M,o.hidden=!M,o.disabled=p.state==="stopping",l.hidden=!M,l.max=Math.max(1,p.total),l.value=p.done,c.hidden=p.state==="none",c.classList.toggle("wrong",p.state==="failed");let C=p.left_s===null||p.left_s<1?"":`, about ${p.left_s<90?`${j(p.left_s,0)} s`:`${j(p.left_s/60,0)} min`} left`,S={none:"",running:p.done?`${p.done} of ${p.total}${C}.`:"Starting…",stopping:"Stopping; what is done is kept.",stopped:`Stopped at ${p.done} of ${p.total}; what is done is in the map.`,done:`${p.total} done; the map is below.`,failed:`It failed: ${p.words}`}[p.state];c.textContent!==S&&(c.textContent=S),!M&&f&&(f="",p.table&&e(p.table),p.state==="done"&&Le("The sweep is done."))},v=0,_=async()=>{clearTimeout(v);try{let p=await _e.sweepState();(p.state==="running"||p.state==="stopping")&&(f="yes"),g(p)}catch(p){if(!(p instanceof ke))throw p}f&&(v=window.setTimeout(()=>{_()},Gr(i)?500:3e3))};h.addEventListener("submit",p=>{p.preventDefault();let[M,C]=t.map(T=>T.key());if(M===C)return Le("The two are the same: vary two different things.","wrong");let S=n.value==="all"?Object.values(pt).map(T=>T.heading):[Number(n.value)];a.disabled=!0,_e.runSweep({axes:t.map(T=>T.asked()),headings:S,method:s.value}).then(T=>{f="yes",g(T),_()},T=>{if(a.disabled=!1,!(T instanceof ke))throw T;Le(T.sentences.slice(0,2).join(" "),"wrong")})}),o.addEventListener("click",()=>{_e.stopSweep().then(g)}),u(),_()}function Bh(i,e,t){let n=()=>[m("optgroup",{label:"The truck"},m("option",{value:"both.track_mm"},"both tracks, mm"),...I.bench.measures.map(_=>m("option",{value:_.key},`${_.name.toLowerCase()}, ${_.unit}`))),m("optgroup",{label:"Its parts"},...kh.map(([_,p])=>m("option",{value:`part.${_}`},p))),m("optgroup",{label:"The conditions"},...Object.entries(dl).map(([_,[p]])=>m("option",{value:_},p)))],s=m("select",{id:`sweep-${i}`,"aria-label":`${e}: what to vary`},...n());s.value=t;let r=m("select",{id:`sweep-${i}-part`,"aria-label":`${e}: of which part`,hidden:!0}),a=(_,p,M={})=>m("input",{id:`sweep-${i}-${_}`,type:"number",step:"any",required:!0,"aria-label":`${e}: ${p}`,...M}),[o,l,c]=[a("first","from"),a("last","to"),a("steps","in how many steps",{min:2,max:500,step:1,value:11})],h=()=>s.value.startsWith("part."),d=()=>h()?`part.${r.value}.${s.value.slice(5)}`:s.value,u=()=>{if(s.value in dl)return dl[s.value].slice(1);if(h()){let C=I.bench.rows.find(x=>x.name===r.value),[S,,T]=kh.find(([x])=>`part.${x}`===s.value);if(!C)return[0,1,11];if(S==="mass_g")return[Math.round(C.mass_g/2),Math.round(C.mass_g*1.5),11];let A=C.at_mm?.["xyz".indexOf(S.slice(-1))]??0;return[A-T,A+T,11]}let _=I.bench.measures.find(C=>C.key===(s.value==="both.track_mm"?"front.track_mm":s.value));if(!_)return[0,1,11];let p=Math.min((_.high-_.low)/4,20),M=C=>Number((Math.round(Math.min(_.high,Math.max(_.low,C))/_.step)*_.step).toFixed(3));return[M(_.value-p),M(_.value+p),11]},f=()=>{if(r.hidden=!h(),!r.hidden){let C=r.value||I.bench.rows.find(T=>T.row===I.view.row)?.name,S=s.value==="part.mass_g";xe(r,...I.bench.rows.filter(T=>S||T.at_mm).map(T=>m("option",{value:T.name,selected:T.name===C},T.name)))}let[_,p,M]=u();[o.value,l.value,c.value]=[String(_),String(p),String(M)]};s.addEventListener("change",f),r.addEventListener("change",f);let g="";return Ne("bench",()=>{if(g===I.bench.file)return;g=I.bench.file;let _=s.value;xe(s,...n()),s.value=_,s.value||(s.value=t),f()}),g=I.bench.file,f(),{node:m("div",{class:"new-line"},m("span",{class:"new-label"},e),s,r,m("span",{class:"sweep-range"},m("span",{class:"soft"},"from"),o,m("span",{class:"soft"},"to"),l,m("span",{class:"soft"},"in"),c,m("span",{class:"soft"},"steps"))),key:d,asked:()=>({key:d(),first:Number(o.value),last:Number(l.value),steps:Number(c.value)})}}function Gh(i){let e=m("div",{id:"map-holder"}),t=m("div",{}),n=m("select",{id:"sweep-choice",class:"grow","aria-label":"Finished sweep"}),s=async()=>{try{xe(e,jf(await _e.sweep(n.value)))}catch(l){if(!(l instanceof ke))throw l;xe(e,m("p",{class:"text wrong"},l.message))}},r=m("div",{class:"bar"},m("label",{for:"sweep-choice"},"Finished"),n,m("button",{type:"button",id:"sweep-open",onclick:()=>{s()}},"Open")),a=m("p",{class:"text soft"},"No finished sweep in this folder yet: run one here, or with crossfall sweep.");i.append(t,r,a,e);let o=async(l="")=>{try{let{tables:c}=await _e.sweeps(),h=l||n.value;xe(n,...c.map(d=>m("option",{value:d,selected:d===h},d.replace(/^crossfall-out\//,"").replace(/\/table\.csv$/,"")))),r.hidden=c.length===0,a.hidden=c.length>0,l&&await s()}catch(c){if(!(c instanceof ke))throw c}};zh(t,l=>{o(l)}),i.addEventListener("open",()=>{o()}),o()}function jf(i){let e=Object.entries(i.columns).filter(([,u])=>u.every(f=>f===null||typeof f=="number")).map(([u])=>u),t=e.filter(u=>new Set(i.columns[u]).size>1),n=t.filter(u=>u.includes(".")&&!u.startsWith("slide")),s=e.filter(u=>/tip|compliant|rigid|critical|angle/.test(u)&&u.endsWith("_deg")),r={x:n[0]??t[0]??"",y:n[1]??t[1]??"",z:s.find(u=>u==="tip_deg")??s[0]??t[t.length-1]??""},a=[...new Set(i.columns.heading_deg??[])].filter(u=>typeof u=="number"),o=a[0]??null,l=m("div",{}),c=(u,f)=>{let g=m("select",{id:`map-${u}`},...t.map(v=>m("option",{value:v,selected:v===r[u]},Qf(v))));return g.addEventListener("change",()=>{r[u]=g.value,d()}),[m("label",{for:`map-${u}`},f),g]},h=m("select",{id:"map-way","aria-label":"Heading"},...a.map(u=>m("option",{value:u},`turned ${u}°`)));h.addEventListener("change",()=>{o=Number(h.value),d()});let d=()=>xe(l,ep(i,r,o,n));return d(),m("div",{},m("div",{class:"bar map-bar"},...c("x","Across"),...c("y","Up"),...c("z","Colour"),a.length>1?h:null),l,m("p",{class:"text soft"},`${i.rows} lines${i.cut?", the first of more":""}. A point puts that truck on the table; undo brings yours back.`))}function Qf(i){return i.replace(/^part\./,"").replace(/\.at_mm\./," ").replace(/\./g," ").replace(/_(mm|deg|g)$/," ($1)").replace(/_/g," ")}function ep(i,e,t,n){let s=i.columns,r=[];for(let N=0;N<i.rows;N++)[e.x,e.y,e.z].every(Z=>typeof s[Z]?.[N]=="number")&&(t===null||s.heading_deg?.[N]===t)&&r.push(N);let a=(N,V)=>s[N][V],o=N=>{let V=r.map(U=>a(N,U)),[Z,w]=[Math.min(...V),Math.max(...V)];return w>Z?[Z,w]:[Z-1,w+1]},[l,c,h]=[420,320,46];if(r.length===0)return te("svg",{viewBox:`0 0 ${l} 40`},te("text",{x:10,y:24,class:"ring-name"},"nothing to draw"));let[[d,u],[f,g],[v,_]]=[o(e.x),o(e.y),o(e.z)],p=N=>h+(N-d)/(u-d)*(l-h-70),M=N=>c-40-(N-f)/(g-f)*(c-60),C=N=>{let V=[[31,56,84],[88,124,144],[176,184,164],[243,228,178]],Z=Math.max(0,Math.min(2.999,N*3)),[w,U]=[V[Math.floor(Z)],V[Math.floor(Z)+1]];return`rgb(${w.map((k,B)=>Math.round(k+(U[B]-k)*(Z%1))).join(" ")})`},[S,T]=[new Set(r.map(N=>a(e.x,N))).size,new Set(r.map(N=>a(e.y,N))).size],A=S*T<=r.length*1.5&&S>1&&T>1,[x,E]=A?[(l-h-70)/(S-1)*1.02,(c-60)/(T-1)*1.02]:[11,11],H=r.map(N=>{let V=`${e.x} ${j(a(e.x,N),2)}, ${e.y} ${j(a(e.y,N),2)}: ${e.z} ${j(a(e.z,N),2)}`,Z=te("rect",{x:p(a(e.x,N))-x/2,y:M(a(e.y,N))-E/2,width:x,height:E,fill:C((a(e.z,N)-v)/(_-v)),class:"map-point",tabindex:r.length<=400?0:-1,role:"button","aria-label":V},te("title",{},V)),w=()=>{let U={};for(let k of n)U[k]=a(k,N);ht(()=>_e.place(U),"put a point of the sweep on the table").then(k=>{k&&Le(V)})};return Z.addEventListener("click",w),Z.addEventListener("keydown",U=>{(U.key==="Enter"||U.key===" ")&&(U.preventDefault(),w())}),Z}),F=[];for(let N=0;N<=4;N++)F.push(te("text",{class:"ring-name",x:p(d+(u-d)*N/4),y:c-12,"text-anchor":"middle"},j(d+(u-d)*N/4,u-d<8?2:0)),te("text",{class:"ring-name",x:h-14,y:M(f+(g-f)*N/4)+3,"text-anchor":"end"},j(f+(g-f)*N/4,g-f<8?2:0)),te("rect",{x:l-38,y:24+(4-N)*30,width:12,height:30,fill:C(N/4)}),te("text",{class:"ring-name",x:l-22,y:24+(4-N)*30+18},j(v+(_-v)*N/4,1)));return F.push(te("text",{class:"ring-name",x:l-38,y:16},e.z.replace(/_/g," "))),te("svg",{viewBox:`0 0 ${l} ${c}`,id:"map",role:"group","aria-label":`${e.z} over ${e.x} and ${e.y}`},...H,...F)}var tp=[["budget","At most, money","100"],["added_g","At most heavier, g",""],["run_min","Run time at least, min",""],["front_least","On the front axle at least, %",""],["front_most","On the front axle at most, %",""],["reach_deg","Reach this angle, °",""]],$s="";function Hh(i){let e=m("select",{id:"plan-aim"},...[["worst","the weakest way"],["side","the side slope"],["climb","the climb"],["descent","the descent"]].map(([c,h])=>m("option",{value:c},h))),t=tp.map(([c,h,d])=>{let u=m("input",{id:`plan-${c}`,type:"number",step:"any",min:c==="added_g"?void 0:0,value:d});return[c,m("label",{for:`plan-${c}`},h),u]}),n=m("select",{id:"plan-limits"},m("option",{value:""},"no class")),s="",r=async()=>{if(s===I.bench.document)return;s=I.bench.document;let c=await _e.changes();$s=c.currency;let h=l.querySelector("label[for='plan-budget']");h&&(h.textContent=`At most, ${$s||"money"}`),xe(n,m("option",{value:""},"no class"),...c.limits.map(d=>m("option",{value:d},d.replace(".limits.toml",""))))},a=m("div",{id:"plan-answer","aria-live":"polite"}),o=m("button",{type:"submit",class:"main",id:"plan-go"},"Find the best set"),l=m("form",{class:"plan-form"},m("label",{for:"plan-aim"},"Raise"),e,...t.flatMap(([,c,h])=>[c,h]),m("label",{for:"plan-limits"},"Within the limits of"),n,o);l.addEventListener("submit",c=>{c.preventDefault();let h={aim:e.value};for(let[d,,u]of t)u.value!==""&&(h[d]=Number(u.value));n.value&&(h.limits=n.value),o.disabled=!0,xe(a,m("p",{class:"text soft"},"Looking through every set that may go together…")),_e.plan(h).then(d=>np(a,d),d=>{if(!(d instanceof ke))throw d;xe(a,m("p",{class:"text wrong"},d.message))}).finally(()=>{o.disabled=!1})}),i.append(l,a),i.addEventListener("open",()=>{r()}),wn(i,()=>{r()}),r()}function np(i,e){let t=e.best;xe(i,t?m("div",{},m("h3",{},`Best: ${j(t.deg,2)}° for ${Oi(t.price,$s)}`),Vh(t,"best")):m("p",{class:"text"},"No set of these changes does what is asked."),e.front.length>1?ip(e):null,m("p",{class:"text soft"},`${e.scored} sets were scored with springs and tyres${e.proven?"; this is proven to be the best of them all":""}.`),e.runners.length?m("h3",{},"Next best"):null,...e.runners.map((n,s)=>Vh(n,`runner-${s}`)))}function Vh(i,e){return m("div",{class:"change"},m("span",{}),m("span",{},i.labels.join("; ")||"nothing"),m("button",{type:"button",id:`fit-${e}`,onclick:()=>{fl(i)}},"Fit"),m("p",{class:"note"},`${j(i.deg,2)}° ± ${j(1.96*i.sd_deg,2)}${i.slides?" against a rail: it slides first":""}, ${Oi(i.price,$s)}, ${j(i.added_g,0)} g heavier${i.tied?"; as good as the best, as far as the masses are known":""}`))}function fl(i){return ht(()=>_e.fit(i.chosen),"fitted the set")}function ip(i){let e=i.front,[t,n,s]=[420,200,38],[r,a]=[0,Math.max(...e.map(g=>g.price),1)],o=[...e.map(g=>g.deg),i.now.deg],[l,c]=[Math.floor(Math.min(...o)),Math.ceil(Math.max(...o))],h=g=>s+(g-r)/(a-r)*(t-s-14),d=g=>n-28-(g-l)/Math.max(1,c-l)*(n-44),u=[];for(let g=l;g<=c;g+=Math.max(1,Math.round((c-l)/5)))u.push(te("path",{class:"ring",d:`M${s} ${d(g)}H${t-10}`}),te("text",{class:"ring-name",x:s-5,y:d(g)+3,"text-anchor":"end"},`${g}°`));for(let g=0;g<=4;g++)u.push(te("text",{class:"ring-name",x:h(a*g/4),y:n-12,"text-anchor":"middle"},j(a*g/4,0)));let f=`M${h(0)} ${d(e[0].deg)}`;e.forEach((g,v)=>{f+=`${v?`H${h(g.price)}`:""}L${h(g.price)} ${d(g.deg)}`}),u.push(te("path",{class:"compliant",d:f}));for(let g of e){let v=`${Oi(g.price,$s)}: ${j(g.deg,2)}°, ${g.labels.join("; ")||"nothing"}`,_=te("circle",{cx:h(g.price),cy:d(g.deg),r:5,class:"front-point",tabindex:0,role:"button","aria-label":`Fit: ${v}`},te("title",{},v));_.addEventListener("click",()=>{fl(g)}),_.addEventListener("keydown",p=>{(p.key==="Enter"||p.key===" ")&&(p.preventDefault(),fl(g))}),u.push(_)}return m("figure",{class:"front"},m("figcaption",{class:"text soft"},"The most degrees for every price; a point fits its set."),te("svg",{viewBox:`0 0 ${t} ${n}`,id:"front",role:"group","aria-label":"Money against degrees"},...u))}function On(i,...e){for(let t of e)i.push(t[0],t[1],t[2])}function rs(i,e,t,n,s){On(i,e,t,n,e,n,s)}function sp(i,e=[0,0,0]){let[t,n,s]=[0,1,2].map(d=>(i[d]??1)/2),r=d=>[e[0]+(d&1?t:-t),e[1]+(d&2?n:-n),e[2]+(d&4?s:-s)],a=[0,1,2,3,4,5,6,7].map(r),o=d=>a[d],l=[],c=[[0,2,3,1],[4,5,7,6],[0,1,5,4],[2,6,7,3],[0,4,6,2],[1,3,7,5]];for(let[d,u,f,g]of c)rs(l,o(d),o(u),o(f),o(g));let h=[];for(let d=0;d<8;d++)for(let u of[1,2,4])d&u||On(h,o(d),o(d|u));return{triangles:l,lines:h,hull:a}}function Wh(i,e,t){let n=(u,f)=>Array.from({length:20},(g,v)=>{let _=2*Math.PI*v/20;return[u*Math.cos(_),u*Math.sin(_),f]}),[s,r]=[-t/2,t/2],[a,o,l,c]=[n(i,s),n(i,r),n(e,s),n(e,r)],h=[],d=[];for(let u=0;u<20;u++){let f=(u+1)%20;rs(h,a[u],a[f],o[f],o[u]),e>0?(rs(h,l[f],l[u],c[u],c[f]),rs(h,o[u],o[f],c[f],c[u]),rs(h,a[f],a[u],l[u],l[f]),On(d,l[u],l[f],c[u],c[f])):(On(h,[0,0,r],o[u],o[f]),On(h,[0,0,s],a[f],a[u])),On(d,a[u],a[f],o[u],o[f])}return{triangles:h,lines:d,hull:[...a,...o]}}function rp(i){let[e,t]=[7,12],n=(o,l)=>{let[c,h]=[Math.PI*o/e,2*Math.PI*l/t];return[i*Math.sin(c)*Math.cos(h),i*Math.sin(c)*Math.sin(h),i*Math.cos(c)]},s=[],r=[],a=[];for(let o=0;o<e;o++)for(let l=0;l<t;l++)rs(s,n(o,l),n(o+1,l),n(o+1,l+1),n(o,l+1)),a.push(n(o,l));for(let o=0;o<20;o++){let[l,c]=[o,o+1].map(h=>2*Math.PI*h/20);On(r,[i*Math.cos(l),i*Math.sin(l),0],[i*Math.cos(c),i*Math.sin(c),0]),On(r,[i*Math.cos(l),0,i*Math.sin(l)],[i*Math.cos(c),0,i*Math.sin(c)])}return{triangles:s,lines:r,hull:a}}function ap(i,e){let t=[];for(let n of e)On(t,i[n[0]],i[n[1]],i[n[2]]);return{triangles:t,lines:lp(i,e),hull:op(i)}}function op(i){if(i.length<=300)return i;let e=new Set;for(let t=0;t<240;t++){let n=1-(2*t+1)/240,[s,r]=[Math.sqrt(1-n*n),t*2.399963],a=[s*Math.cos(r),s*Math.sin(r),n],o=i[0],l=-1/0;for(let c of i){let h=c[0]*a[0]+c[1]*a[1]+c[2]*a[2];h>l&&([o,l]=[c,h])}e.add(o)}return[...e]}function lp(i,e){let t=new Map,n=[];for(let s of e){let[r,a,o]=s.map(c=>i[c]),l=up(hp($h(a,r),$h(o,r)));for(let[c,h]of[[s[0],s[1]],[s[1],s[2]],[s[2],s[0]]]){let d=c<h?`${c} ${h}`:`${h} ${c}`,u=t.get(d);u===void 0?t.set(d,l):cp(u,l)<.8&&On(n,i[c],i[h])}}return n}var $h=(i,e)=>[i[0]-e[0],i[1]-e[1],i[2]-e[2]],cp=(i,e)=>i[0]*e[0]+i[1]*e[1]+i[2]*e[2],hp=(i,e)=>[i[1]*e[2]-i[2]*e[1],i[2]*e[0]-i[0]*e[2],i[0]*e[1]-i[1]*e[0]];function up(i){let e=Math.hypot(...i)||1;return[i[0]/e,i[1]/e,i[2]/e]}function gi(i){let[e=1,t=1,n=1]=i.size_mm;switch(i.kind){case"box":return sp(i.size_mm,i.middle_mm);case"cylinder":return Wh(e,0,t);case"tube":return Wh(e,t,n);case"sphere":return rp(e);case"mesh":return ap(i.vertices_mm??[],i.faces??[])}}function Xs(i,e,t){return[0,1,2].map(n=>e[3*n]*i[0]+e[3*n+1]*i[1]+e[3*n+2]*i[2]+t[n])}var kn={plan:([i,e])=>[-e,-i],side:([i,,e])=>[i,-e],rear:([,i,e])=>[-i,-e]},$r=new Map;function Bn(i){let e=i.shape;if(!e)return"";let t=e.vertices_mm?`${e.vertices_mm.length} ${e.vertices_mm[0]} ${e.faces?.length}`:`${e.size_mm} ${e.middle_mm??""}`;return`${i.label}|${e.kind} ${t}|${i.centre_mm}|${i.turn}`}function Xr(i,e){let t=`${e}|${Bn(i)}`,n=$r.get(t);return n||($r.size>4e3&&$r.clear(),n=dp(i,e),$r.set(t,n)),n}function dp(i,e){return i.shape?ml(gi(i.shape).hull.map(t=>kn[e](Xs(t,i.turn,i.centre_mm)))):[]}function Gi(i){return i.length?`M${i.map(([e,t])=>`${e.toFixed(1)} ${t.toFixed(1)}`).join("L")}Z`:""}function fp(i,e){let t={plan:n=>n.centre_mm[2],side:n=>-n.centre_mm[1],rear:n=>-n.centre_mm[0]};return[...i].sort((n,s)=>t[e](n)-t[e](s))}function pl(i){return i==="chassis"?"chassis":i.endsWith("axle")?`axle ${i.split(" ")[0]}`:"wheel"}function ml(i){let e=[...i].sort((n,s)=>n[0]-s[0]||n[1]-s[1]),t=n=>{let s=[];for(let r of n){for(;s.length>=2&&pp(s[s.length-2],s[s.length-1],r)<=0;)s.pop();s.push(r)}return s.pop(),s};return[...t(e),...t(e.reverse())]}var pp=(i,e,t)=>(e[0]-i[0])*(t[1]-i[1])-(e[1]-i[1])*(t[0]-i[0]);function qr(i,e){let t=[];for(let r of i.parts)t.push(...Xr(r,e));for(let r of i.axles)for(let a of[-1,1]){let o=a*(r.track_mm/2+r.width_mm/2);t.push(kn[e]([r.x_mm+a*r.radius_mm,o,0]),kn[e]([r.x_mm,o,2*r.radius_mm]))}let n=t.map(r=>r[0]),s=t.map(r=>r[1]);return[Math.min(...n),Math.min(...s),Math.max(...n),Math.max(...s)]}var Kn=class{constructor(e,t=1,n=!1){this.face=e;this.scale=t;this.named=n}face;scale;named;root=te("g");order="";drawn=[];draw(e,t){let n=fp(e.filter(a=>a.shape),this.face),s=n.map(a=>a.label).join("|");s!==this.order&&(this.order=s,this.drawn=n.map(()=>({path:te("path"),look:"",dress:""})),this.root.replaceChildren(...this.drawn.map(a=>a.path)));let r=typeof this.scale=="number"?this.scale:this.scale();n.forEach((a,o)=>this.one(this.drawn[o],a,t,r))}one(e,t,n,s){let r=`${Bn(t)} ${s}`;r!==e.look&&(e.look=r,e.path.setAttribute("d",Gi(Xr(t,this.face).map(([c,h])=>[c*s,h*s]))));let a=t.row>=0,o=`part ${pl(t.carrier)}${a&&t.row===n?" picked":""}${a?" here":""}`,l=`${o} ${t.row} ${this.named?t.mass_g:""}`;l!==e.dress&&(e.dress=l,e.path.setAttribute("class",o),a&&e.path.setAttribute("data-row",String(t.row)),this.named&&e.path.replaceChildren(te("title",{},`${t.label}, ${j(t.mass_g)} g`)))}};var _n=74,_i=178,Vi=15,mp=[["key-compliant","tips on springs and tyres"],["key-rail","against a rail"],["key-range","its 95 % range"],["key-rigid","tips, nothing gives"],["key-slide","slides, low to high grip"],["key-lift","first wheel lifts"],["key-tried","virtual trial"],["key-before","before"]],gp={"key-tried":"M13 0L18 5L13 10L8 5Z","key-range":"M3 5H23M3 1V9M23 1V9"},gl=class{root;back=te("g");curves=te("g");parts=new Kn("plan",()=>this.scale());marks=te("g");plan=te("g",{class:"polar-plan"},this.parts.root,this.marks);puck=te("g",{class:"puck"});high=75;constructor(e){this.root=te("svg",{viewBox:"-234 -206 468 412",class:"polar",role:"slider",tabindex:0,"data-key":"puck","aria-label":"Slope under the truck: arrows left and right turn it, up and down tilt it","aria-valuemin":0,"aria-valuemax":90},this.back,this.plan,this.curves,this.puck);let t=document.createElement("ul");t.className="legend";for(let[n,s]of mp){let r=te("svg",{viewBox:"0 0 26 10",class:n,"aria-hidden":"true"},n==="key-slide"?te("rect",{width:26,height:10}):te("path",{d:gp[n]??"M0 5H26"})),a=document.createElement("li");a.append(r,s),t.append(a)}e.append(this.root,t),Ne(["shown","trials"],()=>this.draw()),Ne("view",()=>this.drawPuck()),Ne("pick",()=>this.drawPlan()),this.listen()}listen(){let e=!1,t=n=>{let s=new DOMPoint(n.clientX,n.clientY).matrixTransform(this.root.getScreenCTM().inverse()),r=Math.hypot(s.x,s.y),a=(vp(Math.atan2(-s.x,s.y))+360)%360;ct({heading:Math.round(a/zi)*zi%360,tilt:Math.max(0,Math.min(90,xp(this.angleAt(r),1)))})};this.root.addEventListener("pointerdown",n=>{e=!0,this.root.setPointerCapture(n.pointerId),t(n)}),this.root.addEventListener("pointermove",n=>{e&&t(n)});for(let n of["pointerup","pointercancel"])this.root.addEventListener(n,()=>e=!1);this.root.addEventListener("keydown",n=>{let s=n.shiftKey?10:1,{tilt:r,heading:a}=I.view,l={ArrowUp:{tilt:Math.min(90,r+s)},ArrowDown:{tilt:Math.max(0,r-s)},ArrowLeft:{heading:(a+360-zi*s)%360},ArrowRight:{heading:(a+zi*s)%360},Home:{tilt:0}}[n.key];l&&(n.preventDefault(),ct(l),Le(`Tilt ${j(I.view.tilt)}°, turned ${j(I.view.heading,0)}°; ${Xh(I.view.heading)}.`))})}radius(e){return e<Vi?e/Vi*_n:_n+(e-Vi)/(this.high-Vi)*(_i-_n)}angleAt(e){return e<_n?e/_n*Vi:Vi+(e-_n)/(_i-_n)*(this.high-Vi)}at(e,t){let n=e*Math.PI/180;return[-Math.sin(n)*t,Math.cos(n)*t]}curve(e,t){return e.flatMap((n,s)=>{let r=t[s];return r==null?[]:[this.at(n,this.radius(Math.min(r,90)))]})}draw(){let e=I.answers;if(!e)return;let t=this.high,n=Un(e),s=Math.max(...e.rigid_deg,...n.map(u=>u??0));this.high=Math.max(this.high,Math.min(95,Math.ceil((s+2)/10)*10)),(this.high!==t||!this.back.hasChildNodes())&&this.drawBack(),this.drawPlan();let[r,a,o]=[e.slide_deg.low,e.slide_deg.likely,e.slide_deg.high].map(u=>_p(this.radius(u))),l=[te("path",{class:"slide-band",d:`${o}${r}`,"fill-rule":"evenodd"}),te("path",{class:"slide-likely",d:a}),te("path",{class:"lift",d:this.pieces(e.heading_deg,e.first_lift_deg)})],c=I.bench.before;if(c){let u=Un(c);l.push(te("path",{class:"before",d:Gi(this.curve(c.heading_deg,u.some(f=>f!==null)?u:c.rigid_deg))}))}let[h,d]=this.cutAt(e);l.push(te("path",{class:"rigid",d:Gi(this.curve(e.heading_deg,e.rigid_deg))}),te("path",{class:"railed",d}),te("path",{class:"compliant",d:h}));for(let u of e.ways??[])l.push(this.range(u));for(let u of I.trying?[]:I.trials)l.push(...this.tried(u));for(let{heading:u}of Object.values(pt))l.push(this.reading(u),this.wayName(u));for(let[u,f,g]of[["nose",0,-_n-1],["tail",0,_n+7],["left",14-_n,-5],["right",_n-14,-5]])l.push(te("text",{x:f,y:g,class:"side-name","text-anchor":"middle"},u));this.curves.replaceChildren(...l),this.curves.classList.toggle("trying",I.trying),this.curves.classList.toggle("inexact",!e.exact),this.drawPuck()}pieces(e,t){let n="",s=!1;for(let r=0;r<=e.length;r++){let a=t[r%e.length]??null;a!==null&&(n+=`${s?"L":"M"}${as(this.at(e[r%e.length],this.radius(Math.min(a,90))))}`),s=a!==null}return n}cutAt(e){let[t,n,s]=[e.heading_deg,Un(e),e.slide_deg.likely],r=["",""],a=360/t.length,o=-1,l=(c,h,d)=>{r[c]+=`${o===c?"L":"M"}${as(this.at(h,this.radius(Math.min(d,90))))}`,o=c};return t.forEach((c,h)=>{let[d,u]=[n[h]??null,n[(h+1)%t.length]??null];if(d===null||u===null){o=-1;return}let[f,g]=[h,(h+1)%t.length].map(v=>e.rail_deg[v]===null?0:1);if(o!==f&&l(f,c,d),f!==g){let v=u===d?.5:Math.max(0,Math.min(1,(s-d)/(u-d))),_=c+a*v;l(f,_,s),l(g,_,s)}l(g,c+a,u)}),r}range(e){let[t,n]=e.compliant_range_deg??e.rail_range_deg??[null,null];if(t===null||n===null)return te("g");let[[s,r],[a,o]]=[t,n].map(h=>this.at(e.heading_deg,this.radius(h))),l=this.at(e.heading_deg+90,5),c=([h,d])=>`M${as([h-l[0],d-l[1]])}L${as([h+l[0],d+l[1]])}`;return te("path",{class:e.compliant_deg===null?"range of-rail":"range",d:`M${as([s,r])}L${as([a,o])}${c([s,r])}${c([a,o])}`},te("title",{},`95 % range: ${j(t)} to ${j(n)}°`))}tried(e){let t=e.trial_deg??e.trial_slide_deg;if(t===null)return[];let[n,s]=this.at(e.heading_deg,this.radius(t)),[r,a]=(e.trial_ci_deg??[t,t]).map(c=>this.at(e.heading_deg,this.radius(c??t))),o=e.hold==="rail"?" against a rail":"",l=te("title",{},`virtual trial: ${e.trial_outcome}${o} at ${j(t)}°`);return[te("path",{class:"tried-line",d:`M${r[0]} ${r[1]}L${a[0]} ${a[1]}`}),te("path",{class:`tried ${e.trial_outcome}`,d:`M${n} ${s-5}L${n+5} ${s}L${n} ${s+5}L${n-5} ${s}Z`},l)]}reading(e){let t=I.answers,n=Qt(t,e),s=n?.deg??Jn(t.heading_deg,t.rigid_deg,e),[r,a]=this.at(e,_i+14),o=Math.abs(r)<20?"middle":r<0?"start":"end",l=e===90?-231:e===270?231:r,c={x:l,y:a+(Math.abs(a)<20?-6:a>0?10:0),"text-anchor":o},h=te("tspan",{class:"reading-slides"},"slides "),d=I.trying?void 0:t.ways?.find(g=>g.heading_deg===e),[u,f]=d?.goes_at_range_deg??[null,null];return te("text",{...c,class:"reading"},n?.slides&&o==="middle"?h:null,`${ki(s,u===null||f===null?null:[u,f])}°`,n?.slides&&o!=="middle"?te("tspan",{class:"reading-slides",x:l,dy:12},"slides"):null)}wayName(e){let t={0:"tail downhill",90:"left side",180:"nose downhill",270:"right side"}[e],[n,s]=this.at(e,_i+14);if(Math.abs(n)<20)return te("text",{x:44,y:s+(s>0?10:0),class:"way-name"},t);let r={x:n<0?-231:231,"text-anchor":n<0?"start":"end"};return te("text",{class:"way-name",y:s+24},te("tspan",r,t),te("tspan",{...r,dy:12},"downhill"))}drawBack(){let e=[];for(let t=20;t<=this.high;t+=10){let n=this.radius(t),[s,r]=this.at(134,n);e.push(te("circle",{r:n,class:t%30===0?"ring strong":"ring"}),te("text",{x:s,y:r+3,class:"ring-name","text-anchor":"middle"},`${t}°`))}for(let t=0;t<360;t+=15){let[n,s]=this.at(t,_i),[r,a]=this.at(t,_i+(t%45===0?7:4));e.push(te("path",{d:`M${n} ${s}L${r} ${a}`,class:"tick"}))}e.push(te("circle",{r:_i,class:"rim"})),this.back.replaceChildren(...e)}scale(){return Math.min(.42,(_n-8)/(I.scene.wheelbase_mm/2+60))}drawPlan(){let e=I.scene;if(!e)return;let t=this.scale();this.parts.draw(e.parts,I.view.row);let n=[],s=[0,1,3,2].map(o=>e.tip_points_mm[o]).map(([o,l])=>[-l*t,-o*t]);n.push(te("path",{d:Gi(s),class:"tip-line"}));let[r,a]=[-e.cg_mm[1]*t,-e.cg_mm[0]*t];n.push(te("g",{transform:`translate(${r.toFixed(2)} ${a.toFixed(2)})`,class:"cg"},te("circle",{r:5,class:"cg-back"}),te("path",{d:"M0 0V-5A5 5 0 0 1 5 0ZM0 0V5A5 5 0 0 1 -5 0Z",class:"cg-dark"}),te("circle",{r:5,class:"cg-ring"}))),this.marks.replaceChildren(...n)}drawPuck(){let{tilt:e,heading:t}=I.view,n=I.answers;if(!n)return;let s=this.radius(e),[r,a]=this.at(t,s),[o,l]=this.at(t,_i),c=Qt(n,t)?.deg??Jn(n.heading_deg,n.rigid_deg,t)??90;this.puck.classList.toggle("over",e>c),this.puck.replaceChildren(te("path",{d:`M0 0L${o.toFixed(1)} ${l.toFixed(1)}`,class:"puck-line"}),te("circle",{cx:r.toFixed(1),cy:a.toFixed(1),r:15,class:"puck-reach"}),te("circle",{cx:r.toFixed(1),cy:a.toFixed(1),r:6.5,class:"puck-dot"})),this.root.setAttribute("aria-valuenow",j(e).replace("−","-")),this.root.setAttribute("aria-valuetext",`tilted ${j(e)} degrees, turned ${j(t,0)}; ${Xh(t)}`)}};function Xh(i){let e=I.answers,t=Qt(e,i);return t===null?`tips at ${j(Jn(e.heading_deg,e.rigid_deg,i))}° if nothing gives`:`${t.slides?"slides":"tips"} at ${j(t.deg)}°`}var _p=i=>`M${i} 0A${i} ${i} 0 1 0 ${-i} 0A${i} ${i} 0 1 0 ${i} 0Z`,as=([i,e])=>`${i.toFixed(2)} ${e.toFixed(2)}`,vp=i=>i*180/Math.PI,xp=(i,e)=>Number(i.toFixed(e)),qh=()=>new gl(Ee("polar"));var yp=["front","rear","left","right","front left","front right","rear left","rear right","all"],bp=["","front","rear","left","right"],qs=(i,e="",t="")=>({at:i,raised:e,block_mm:t,loads:""});function Zh(i){let e=[qs("front"),qs("rear"),qs("left"),qs("rear","front","90")],t="",n=m("tbody",{}),s=m("div",{id:"weigh-answer","aria-live":"polite"}),r=m("input",{id:"weigh-step",type:"number",min:.01,step:"any",value:1,required:!0}),a=m("input",{id:"weigh-locked",type:"checkbox",checked:!0}),o=()=>xe(n,...e.map((h,d)=>{let u=m("td",{},Yh(h)),f=g=>v=>{h[g]=v.target.value,xe(u,Yh(h))};return m("tr",{},u,m("td",{},m("select",{"aria-label":`Reading ${d+1}: what stands on the scale`,onchange:f("at")},...yp.map(g=>m("option",{value:g,selected:g===h.at},g==="all"?"the whole truck":g.includes(" ")?`${g} wheel`:g==="front"||g==="rear"?`${g} axle`:`${g} side`)))),m("td",{},m("select",{"aria-label":`Reading ${d+1}: which end is raised`,onchange:f("raised")},...bp.map(g=>m("option",{value:g,selected:g===h.raised},g?`${g} raised`:"level")))),m("td",{},m("input",{type:"number",min:1,step:"any",value:h.block_mm,"aria-label":`Reading ${d+1}: block height in mm`,onchange:f("block_mm")})),m("td",{},m("input",{type:"text",inputmode:"decimal",value:h.loads,placeholder:"1342; 1345","aria-label":`Reading ${d+1}: scale shows, in g, repeats apart by semicolons or spaces`,onchange:f("loads")})),m("td",{},m("button",{type:"button","aria-label":`Remove reading ${d+1}`,onclick:()=>{e.splice(d,1),o()}},"✕")))})),l=async h=>{try{_l(s,await _e.weigh({step_g:Number(r.value),locked:a.checked,readings:e},h)),h&&Le("The readings are kept beside the truck.")}catch(d){if(!(d instanceof ke))throw d;xe(s,m("p",{class:"text wrong"},d.sentences.slice(0,3).join(" ")))}};i.append(m("p",{class:"text"},"One kitchen scale will do: put it under one axle, the other on a block of the scale's height, and write down what it shows. Then raise one end on a block you have measured, and weigh the other end again: that gives the height."),m("div",{class:"parts-holder"},m("table",{class:"parts",id:"readings"},m("thead",{},m("tr",{},...["","On the scale","Stands","Block, mm","Scale shows, g",""].map(h=>m(h?"th":"td",h?{scope:"col"}:{},h)))),n)),m("div",{class:"bar"},m("button",{type:"button",id:"reading-add",onclick:()=>{e.push(qs("front")),o()}},"Another reading"),m("label",{for:"weigh-step"},"Scale's step, g"),r,m("label",{class:"tick"},a,"suspension tied up"),m("button",{type:"button",class:"main",id:"weigh-go",onclick:()=>{l(!1)}},"Weigh"),m("button",{type:"button",id:"weigh-keep",onclick:()=>{l(!0)}},"Keep readings")),s),o();let c=async()=>{if(t!==I.bench.file){t=I.bench.file;try{let h=await _e.readings();h.form?(e=h.form.readings,r.value=String(h.form.step_g),a.checked=h.form.locked,o(),xe(s,m("p",{class:"text soft"},`Read back from ${h.file}.`))):xe(s,h.there?m("p",{class:"text"},`${h.file} says more than this form shows, and is left as it is: crossfall weigh-in ${h.file} reads it. Keeping readings here puts it aside as a copy first.`):null)}catch(h){if(!(h instanceof ke))throw h;t=""}}};wn(i,()=>{c()}),c()}function Yh(i){let e=["left","right"].includes(i.at)||["left","right"].includes(i.raised),[t,n]=e?["left","right"]:["rear","front"],s=o=>i.raised===o?16:0,r=o=>i.at===o||i.at==="all"||i.at.startsWith(`${o} `)||i.at.endsWith(` ${o}`),a=(o,l)=>[...s(l)?[te("rect",{class:"sk-block",x:o-9,y:40-s(l),width:18,height:s(l)})]:[],te("rect",{class:r(l)?"sk-scale":"sk-block",x:o-11,y:40,width:22,height:5}),te("circle",{class:"sk-line",cx:o,cy:32-s(l),r:8})];return te("svg",{class:"sketch",viewBox:"0 -8 92 56",role:"img","aria-label":`${i.at} on the scale${i.raised?`, ${i.raised} raised`:""}`},...a(20,t),...a(72,n),te("path",{class:"sk-body",d:`M14 ${24-s(t)}L78 ${24-s(n)}L74 ${14-s(n)}L18 ${12-s(t)}Z`}))}function _l(i,e){let t=I.answers.numbers,n=[t.mass_g,t.cg_mm[0],t.cg_mm[1],t.cg_mm[2]];xe(i,m("table",{id:"weighed"},m("caption",{},"What the scale says"),m("thead",{},m("tr",{},...["","found","95 % between","in the file","difference"].map(s=>m(s?"th":"td",s?{scope:"col",class:"n"}:{},s)))),m("tbody",{},...e.found.map((s,r)=>m("tr",{},m("th",{scope:"row"},`${s.what}, ${s.unit}`),m("td",{class:"n"},m("b",{},s.value===null?"not measured":j(s.value))),m("td",{class:"n"},s.value===null?"–":`${j(s.low)} to ${j(s.high)}`),m("td",{class:"n"},j(n[r])),m("td",{class:"n"},s.value===null?"–":vt(s.value-n[r])))))),...[...e.doubts,...e.warnings].map(s=>m("p",{class:"text wrong"},s)),e.next.length?m("p",{class:"text soft"},`What would help most now: ${e.next.join("; ")}.`):null)}function Jh(i){let e=m("div",{id:"board"});i.append(m("p",{class:"text"},"Lay a strip under the downhill tyres so that they do not slide, raise the board slowly, and read the angle at which the last uphill tyre leaves it."),e,m("p",{class:"text soft"},"Have a hand ready to catch the truck, take loose weights off first, and mind the pack. Scale models only: nothing here is a basis for a vehicle that carries people."));let t=s=>{_e.board(s).then(r=>n(r),r=>{if(!(r instanceof ke))throw r;r.status!==409&&r.status!==0&&Le(r.message,"wrong")})},n=s=>xe(e,m("table",{},m("caption",{},"Tilt-board card"),m("thead",{},m("tr",{},...["","predicted","measured before","measured now"].map(r=>m(r?"th":"td",r?{scope:"col",class:"n"}:{},r)))),m("tbody",{},...s.card.map(r=>{let a=s.readings.filter(l=>l.heading_deg===r.heading_deg),o=m("input",{type:"number",min:1,max:89,step:.1,id:`board-${r.heading_deg}`,"aria-label":`Measured angle, ${r.name}`});return m("tr",{},m("th",{scope:"row"},r.name),m("td",{class:"n"},r.high_deg-r.low_deg>.15?`${j(r.low_deg)} to ${j(r.high_deg)}°`:`${j(r.deg)}°`,m("small",{class:"soft"},` ± ${j(2*r.u_deg)}`)),m("td",{class:"n"},...a.length?a.map(l=>m("span",{class:l.agrees?"":"wrong"},`${j(l.measured_deg)}° ${l.agrees?"agrees":"does not"} `,m("button",{type:"button",class:"small",title:"Take this reading out","aria-label":`Take out ${j(l.measured_deg)}°, ${r.name}`,onclick:()=>t({remove:l.number,angles_deg:l.angles_deg})},"✕"))):["–"]),m("td",{class:"n"},o," ",m("button",{type:"button","aria-label":`Note ${r.name}`,onclick:()=>{o.value!==""&&o.reportValidity()&&t({heading_deg:r.heading_deg,angle_deg:Number(o.value)})}},"Note")))}))),s.agrees===null?null:m("p",{class:"text"},m("b",{},s.agrees?"Prediction and board agree.":"Prediction and board do not agree.")),...s.causes.map(r=>m("p",{class:"text"},r)),m("p",{class:"text soft"},`Readings are kept in ${s.file}.`));wn(i,()=>t(),900),xe(e,m("p",{class:"text soft"},"Working out what the board should show…")),t()}var[Kh,jh]=[1600,900],Mp=["fill","fill-opacity","fill-rule","stroke","stroke-width","stroke-opacity","stroke-dasharray","stroke-linecap","stroke-linejoin","paint-order","font","text-anchor","visibility","vector-effect","letter-spacing"];function eu(i){if(Ee("share-picture").addEventListener("click",()=>{wp(i)}),Ee("share-page").addEventListener("click",()=>{Sp()}),!$t)return;let e=m("p",{class:"frozen-note"});document.querySelector(".head").append(e),Ne("bench",()=>{e.textContent=`${I.bench.file.replace(/\.toml$/,"")}, as it was on ${$t.date}: a copy to look at`})}function tu(i,e){let t=m("a",{href:URL.createObjectURL(i),download:e});t.click(),URL.revokeObjectURL(t.href),Le(`${e} is in your downloads.`)}var Yr=()=>I.bench.file.replace(/\.toml$/,"");async function Sp(){Le("Working out every way to stand, for the copy…");try{tu(await _e.share(),`${Yr()}-bench.html`)}catch(i){if(!(i instanceof ke))throw i;Le(`No copy was made: ${i.message}`,"wrong")}}async function Qh(i,e,t){let n=i.cloneNode(!0),[s,r]=[[i,...i.querySelectorAll("*")],[n,...n.querySelectorAll("*")]];s.forEach((l,c)=>{let h=getComputedStyle(l);for(let d of Mp)r[c].style.setProperty(d,h.getPropertyValue(d))}),n.setAttribute("width",String(e)),n.setAttribute("height",String(t)),n.setAttribute("xmlns","http://www.w3.org/2000/svg");let a=new Image,o=URL.createObjectURL(new Blob([new XMLSerializer().serializeToString(n)],{type:"image/svg+xml"}));return a.src=o,await a.decode(),URL.revokeObjectURL(o),a}async function wp(i){let e=m("canvas",{width:Kh,height:jh}),t=e.getContext("2d"),n=getComputedStyle(document.documentElement),s=M=>n.getPropertyValue(M).trim();t.fillStyle=s("--sheet"),t.fillRect(0,0,Kh,jh),i.render();let r=document.querySelector("#stage .flat"),a=Ee("stage-canvas"),o=r?r.getBoundingClientRect():a,[l,c]=[o.width,o.height],h=Math.min(790/l,700/c);t.drawImage(r?await Qh(r,l*2,c*2):a,20,90,l*h,c*h);let d=document.querySelector("svg.polar");t.drawImage(await Qh(d,1560,1374),820,84,760,669);let u=(M,C,S,T,A="--ink")=>{t.font=T,t.fillStyle=s(A),t.fillText(M,C,S)},f=n.getPropertyValue("--plain")||"sans-serif",{numbers:g,surface:v,grip_range:_}=I.answers;u(Yr(),30,56,`600 38px ${f}`),u(`on ${v}, grip ${j(_.likely,2)}, ${$t?.date??new Date().toISOString().slice(0,10)}`,60+Tp(t,Yr(),`600 38px ${f}`),56,`22px ${f}`,"--soft"),u(`${j(g.mass_g,0)} g, CG ${j(g.cg_mm[2])} mm high, ${j(g.front_percent)} % on the front`,30,820,`24px ${f}`);let p=Object.values(pt).map(({heading:M,short:C})=>{let S=Qt(I.answers,M),T=I.answers.ways?.find(A=>A.heading_deg===M);return`${C} ${S?.slides?"slides":"tips"} ${ki(S?.deg??null,S?.slides?null:Gs(T))}°`});u(p.join("   "),30,862,`600 24px ${f}`),e.toBlob(M=>{M&&tu(M,`${Yr()}.png`)})}function Tp(i,e,t){return i.font=t,i.measureText(e).width}/**
 * @license
 * Copyright 2010-2026 Three.js Authors
 * SPDX-License-Identifier: MIT
 */var Cu=0,ql=1,Pu=2;var gr=1,Iu=2,Is=3,Ii=0,qt=1,Wn=2,Ji=0,Ls=1,Yl=2,Zl=3,Jl=4,Lu=5;var Ki=100,Nu=101,Du=102,Uu=103,Fu=104,Ou=200,ku=201,Bu=202,zu=203,Kl=204,jl=205,Gu=206,Vu=207,Hu=208,Wu=209,$u=210,Xu=211,qu=212,Yu=213,Zu=214,xa=0,ya=1,ba=2,bs=3,Ma=4,Sa=5,wa=6,Ta=7,Ql=0,Ju=1,Ku=2,$n=0,ec=1,tc=2,nc=3,ic=4,sc=5,rc=6,ac=7;var oc=300,ji=301,Ns=302,ja=303,Qa=304,Ea=1e3,Gn=1001,Aa=1002,Dt=1003,ju=1004;var _r=1005;var Xt=1006,eo=1007;var ai=1008;var hn=1009,lc=1010,cc=1011,Ds=1012,to=1013,Pn=1014,In=1015,Ln=1016,no=1017,io=1018,Qi=1020,hc=35902,uc=35899,dc=1021,fc=1022,Nn=1023,si=1026,oi=1027,pc=1028,so=1029,Li=1030,ro=1031;var ao=1033,vr=33776,xr=33777,yr=33778,br=33779,oo=35840,lo=35841,co=35842,ho=35843,uo=36196,fo=37492,po=37496,mo=37488,go=37489,Mr=37490,_o=37491,vo=37808,xo=37809,yo=37810,bo=37811,Mo=37812,So=37813,wo=37814,To=37815,Eo=37816,Ao=37817,Ro=37818,Co=37819,Po=37820,Io=37821,Lo=36492,No=36494,Do=36495,Uo=36283,Fo=36284,Sr=36285,Oo=36286;var er=2300,Ra=2301,_a=2302,zl=2303,Gl=2400,Vl=2401,Hl=2402;var Qu=3200;var mc=0,ed=1,li="",sn="srgb",tr="srgb-linear",nr="linear",it="srgb";var va=7680;var td=519,nd=512,id=513,sd=514,gc=515,rd=516,ad=517,_c=518,vc=519,od=35044;var xc="300 es",xn=2e3,ir=2001;function Ep(i){for(let e=i.length-1;e>=0;--e)if(i[e]>=65535)return!0;return!1}function Ap(i){return ArrayBuffer.isView(i)&&!(i instanceof DataView)}function sr(i){return document.createElementNS("http://www.w3.org/1999/xhtml",i)}function ld(){let i=sr("canvas");return i.style.display="block",i}var nu={},Ms=null;function yc(...i){let e="THREE."+i.shift();Ms?Ms("log",e,...i):console.log(e,...i)}function cd(i){let e=i[0];if(typeof e=="string"&&e.startsWith("TSL:")){let t=i[1];t&&t.isStackTrace?i[0]+=" "+t.getLocation():i[1]='Stack trace not available. Enable "THREE.Node.captureStackTrace" to capture stack traces.'}return i}function Oe(...i){i=cd(i);let e="THREE."+i.shift();if(Ms)Ms("warn",e,...i);else{let t=i[0];t&&t.isStackTrace?console.warn(t.getError(e)):console.warn(e,...i)}}function ze(...i){i=cd(i);let e="THREE."+i.shift();if(Ms)Ms("error",e,...i);else{let t=i[0];t&&t.isStackTrace?console.error(t.getError(e)):console.error(e,...i)}}function Qs(...i){let e=i.join(" ");e in nu||(nu[e]=!0,Oe(...i))}function hd(i,e,t){return new Promise(function(n,s){function r(){switch(i.clientWaitSync(e,i.SYNC_FLUSH_COMMANDS_BIT,0)){case i.WAIT_FAILED:s();break;case i.TIMEOUT_EXPIRED:setTimeout(r,t);break;default:n()}}setTimeout(r,t)})}var ud={[xa]:xa,[ba]:wa,[Ma]:Ma,[bs]:Sa,[ya]:ya,[wa]:ba,[Ta]:Ta,[Sa]:bs},Vn=class{addEventListener(e,t){this._listeners===void 0&&(this._listeners={});let n=this._listeners;n[e]===void 0&&(n[e]=[]),n[e].indexOf(t)===-1&&n[e].push(t)}hasEventListener(e,t){let n=this._listeners;return n===void 0?!1:n[e]!==void 0&&n[e].indexOf(t)!==-1}removeEventListener(e,t){let n=this._listeners;if(n===void 0)return;let s=n[e];if(s!==void 0){let r=s.indexOf(t);r!==-1&&s.splice(r,1)}}dispatchEvent(e){let t=this._listeners;if(t===void 0)return;let n=t[e.type];if(n!==void 0){e.target=this;let s=n.slice(0);for(let r=0,a=s.length;r<a;r++)s[r].call(this,e);e.target=null}}},Bt=["00","01","02","03","04","05","06","07","08","09","0a","0b","0c","0d","0e","0f","10","11","12","13","14","15","16","17","18","19","1a","1b","1c","1d","1e","1f","20","21","22","23","24","25","26","27","28","29","2a","2b","2c","2d","2e","2f","30","31","32","33","34","35","36","37","38","39","3a","3b","3c","3d","3e","3f","40","41","42","43","44","45","46","47","48","49","4a","4b","4c","4d","4e","4f","50","51","52","53","54","55","56","57","58","59","5a","5b","5c","5d","5e","5f","60","61","62","63","64","65","66","67","68","69","6a","6b","6c","6d","6e","6f","70","71","72","73","74","75","76","77","78","79","7a","7b","7c","7d","7e","7f","80","81","82","83","84","85","86","87","88","89","8a","8b","8c","8d","8e","8f","90","91","92","93","94","95","96","97","98","99","9a","9b","9c","9d","9e","9f","a0","a1","a2","a3","a4","a5","a6","a7","a8","a9","aa","ab","ac","ad","ae","af","b0","b1","b2","b3","b4","b5","b6","b7","b8","b9","ba","bb","bc","bd","be","bf","c0","c1","c2","c3","c4","c5","c6","c7","c8","c9","ca","cb","cc","cd","ce","cf","d0","d1","d2","d3","d4","d5","d6","d7","d8","d9","da","db","dc","dd","de","df","e0","e1","e2","e3","e4","e5","e6","e7","e8","e9","ea","eb","ec","ed","ee","ef","f0","f1","f2","f3","f4","f5","f6","f7","f8","f9","fa","fb","fc","fd","fe","ff"];var vl=Math.PI/180,Ca=180/Math.PI;function wr(){let i=Math.random()*4294967295|0,e=Math.random()*4294967295|0,t=Math.random()*4294967295|0,n=Math.random()*4294967295|0;return(Bt[i&255]+Bt[i>>8&255]+Bt[i>>16&255]+Bt[i>>24&255]+"-"+Bt[e&255]+Bt[e>>8&255]+"-"+Bt[e>>16&15|64]+Bt[e>>24&255]+"-"+Bt[t&63|128]+Bt[t>>8&255]+"-"+Bt[t>>16&255]+Bt[t>>24&255]+Bt[n&255]+Bt[n>>8&255]+Bt[n>>16&255]+Bt[n>>24&255]).toLowerCase()}function Qe(i,e,t){return Math.max(e,Math.min(t,i))}function Rp(i,e){return(i%e+e)%e}function xl(i,e,t){return(1-t)*i+t*e}function dd(i){return Math.pow(2,Math.floor(Math.log(i)/Math.LN2))}function bc(i){switch(i.constructor){case Uint32Array:return 4294967295;case Uint16Array:return 65535;case Uint8Array:case Uint8ClampedArray:return 255;case Int32Array:return 2147483647;case Int16Array:return 32767;case Int8Array:return 127;default:return}}function Cp(i,e){if(e.constructor===Float32Array)return i;let t=bc(e);if(t===void 0)throw new Error("THREE.MathUtils: Invalid component type.");return Math.max(i/t,-1)}function Pp(i,e){if(e.constructor===Float32Array)return i;let t=bc(e);if(t===void 0)throw new Error("THREE.MathUtils: Invalid component type.");return Math.round(i*t)}var et=class{static{this.prototype.isVector2=!0}constructor(e=0,t=0){this.x=e,this.y=t}get width(){return this.x}set width(e){this.x=e}get height(){return this.y}set height(e){this.y=e}set(e,t){return this.x=e,this.y=t,this}setScalar(e){return this.x=e,this.y=e,this}setX(e){return this.x=e,this}setY(e){return this.y=e,this}setComponent(e,t){switch(e){case 0:this.x=t;break;case 1:this.y=t;break;default:throw new Error("THREE.Vector2: index is out of range: "+e)}return this}getComponent(e){switch(e){case 0:return this.x;case 1:return this.y;default:throw new Error("THREE.Vector2: index is out of range: "+e)}}clone(){return new this.constructor(this.x,this.y)}copy(e){return this.x=e.x,this.y=e.y,this}add(e){return this.x+=e.x,this.y+=e.y,this}addScalar(e){return this.x+=e,this.y+=e,this}addVectors(e,t){return this.x=e.x+t.x,this.y=e.y+t.y,this}addScaledVector(e,t){return this.x+=e.x*t,this.y+=e.y*t,this}sub(e){return this.x-=e.x,this.y-=e.y,this}subScalar(e){return this.x-=e,this.y-=e,this}subVectors(e,t){return this.x=e.x-t.x,this.y=e.y-t.y,this}multiply(e){return this.x*=e.x,this.y*=e.y,this}multiplyScalar(e){return this.x*=e,this.y*=e,this}divide(e){return this.x/=e.x,this.y/=e.y,this}divideScalar(e){return this.multiplyScalar(1/e)}applyMatrix3(e){let t=this.x,n=this.y,s=e.elements;return this.x=s[0]*t+s[3]*n+s[6],this.y=s[1]*t+s[4]*n+s[7],this}min(e){return this.x=Math.min(this.x,e.x),this.y=Math.min(this.y,e.y),this}max(e){return this.x=Math.max(this.x,e.x),this.y=Math.max(this.y,e.y),this}clamp(e,t){return this.x=Qe(this.x,e.x,t.x),this.y=Qe(this.y,e.y,t.y),this}clampScalar(e,t){return this.x=Qe(this.x,e,t),this.y=Qe(this.y,e,t),this}clampLength(e,t){let n=this.length();return this.divideScalar(n||1).multiplyScalar(Qe(n,e,t))}floor(){return this.x=Math.floor(this.x),this.y=Math.floor(this.y),this}ceil(){return this.x=Math.ceil(this.x),this.y=Math.ceil(this.y),this}round(){return this.x=Math.round(this.x),this.y=Math.round(this.y),this}roundToZero(){return this.x=Math.trunc(this.x),this.y=Math.trunc(this.y),this}negate(){return this.x=-this.x,this.y=-this.y,this}dot(e){return this.x*e.x+this.y*e.y}cross(e){return this.x*e.y-this.y*e.x}lengthSq(){return this.x*this.x+this.y*this.y}length(){return Math.sqrt(this.x*this.x+this.y*this.y)}manhattanLength(){return Math.abs(this.x)+Math.abs(this.y)}normalize(){return this.divideScalar(this.length()||1)}angle(){return Math.atan2(-this.y,-this.x)+Math.PI}angleTo(e){let t=Math.sqrt(this.lengthSq()*e.lengthSq());if(t===0)return Math.PI/2;let n=this.dot(e)/t;return Math.acos(Qe(n,-1,1))}distanceTo(e){return Math.sqrt(this.distanceToSquared(e))}distanceToSquared(e){let t=this.x-e.x,n=this.y-e.y;return t*t+n*n}manhattanDistanceTo(e){return Math.abs(this.x-e.x)+Math.abs(this.y-e.y)}setLength(e){return this.normalize().multiplyScalar(e)}lerp(e,t){return this.x+=(e.x-this.x)*t,this.y+=(e.y-this.y)*t,this}lerpVectors(e,t,n){return this.x=e.x+(t.x-e.x)*n,this.y=e.y+(t.y-e.y)*n,this}equals(e){return e.x===this.x&&e.y===this.y}fromArray(e,t=0){return this.x=e[t],this.y=e[t+1],this}toArray(e=[],t=0){return e[t]=this.x,e[t+1]=this.y,e}fromBufferAttribute(e,t){return this.x=e.getX(t),this.y=e.getY(t),this}rotateAround(e,t){let n=Math.cos(t),s=Math.sin(t),r=this.x-e.x,a=this.y-e.y;return this.x=r*n-a*s+e.x,this.y=r*s+a*n+e.y,this}random(){return this.x=Math.random(),this.y=Math.random(),this}*[Symbol.iterator](){yield this.x,yield this.y}},yn=class{constructor(e=0,t=0,n=0,s=1){this.isQuaternion=!0,this._x=e,this._y=t,this._z=n,this._w=s}static slerpFlat(e,t,n,s,r,a,o){let l=n[s+0],c=n[s+1],h=n[s+2],d=n[s+3],u=r[a+0],f=r[a+1],g=r[a+2],v=r[a+3];if(d!==v||l!==u||c!==f||h!==g){let _=l*u+c*f+h*g+d*v;_<0&&(u=-u,f=-f,g=-g,v=-v,_=-_);let p=1-o;if(_<.9995){let M=Math.acos(_),C=Math.sin(M);p=Math.sin(p*M)/C,o=Math.sin(o*M)/C,l=l*p+u*o,c=c*p+f*o,h=h*p+g*o,d=d*p+v*o}else{l=l*p+u*o,c=c*p+f*o,h=h*p+g*o,d=d*p+v*o;let M=1/Math.sqrt(l*l+c*c+h*h+d*d);l*=M,c*=M,h*=M,d*=M}}e[t]=l,e[t+1]=c,e[t+2]=h,e[t+3]=d}static multiplyQuaternionsFlat(e,t,n,s,r,a){let o=n[s],l=n[s+1],c=n[s+2],h=n[s+3],d=r[a],u=r[a+1],f=r[a+2],g=r[a+3];return e[t]=o*g+h*d+l*f-c*u,e[t+1]=l*g+h*u+c*d-o*f,e[t+2]=c*g+h*f+o*u-l*d,e[t+3]=h*g-o*d-l*u-c*f,e}get x(){return this._x}set x(e){this._x=e,this._onChangeCallback()}get y(){return this._y}set y(e){this._y=e,this._onChangeCallback()}get z(){return this._z}set z(e){this._z=e,this._onChangeCallback()}get w(){return this._w}set w(e){this._w=e,this._onChangeCallback()}set(e,t,n,s){return this._x=e,this._y=t,this._z=n,this._w=s,this._onChangeCallback(),this}clone(){return new this.constructor(this._x,this._y,this._z,this._w)}copy(e){return this._x=e.x,this._y=e.y,this._z=e.z,this._w=e.w,this._onChangeCallback(),this}setFromEuler(e,t=!0){let n=e._x,s=e._y,r=e._z,a=e._order,o=Math.cos,l=Math.sin,c=o(n/2),h=o(s/2),d=o(r/2),u=l(n/2),f=l(s/2),g=l(r/2);switch(a){case"XYZ":this._x=u*h*d+c*f*g,this._y=c*f*d-u*h*g,this._z=c*h*g+u*f*d,this._w=c*h*d-u*f*g;break;case"YXZ":this._x=u*h*d+c*f*g,this._y=c*f*d-u*h*g,this._z=c*h*g-u*f*d,this._w=c*h*d+u*f*g;break;case"ZXY":this._x=u*h*d-c*f*g,this._y=c*f*d+u*h*g,this._z=c*h*g+u*f*d,this._w=c*h*d-u*f*g;break;case"ZYX":this._x=u*h*d-c*f*g,this._y=c*f*d+u*h*g,this._z=c*h*g-u*f*d,this._w=c*h*d+u*f*g;break;case"YZX":this._x=u*h*d+c*f*g,this._y=c*f*d+u*h*g,this._z=c*h*g-u*f*d,this._w=c*h*d-u*f*g;break;case"XZY":this._x=u*h*d-c*f*g,this._y=c*f*d-u*h*g,this._z=c*h*g+u*f*d,this._w=c*h*d+u*f*g;break;default:Oe("Quaternion: .setFromEuler() encountered an unknown order: "+a)}return t===!0&&this._onChangeCallback(),this}setFromAxisAngle(e,t){let n=t/2,s=Math.sin(n);return this._x=e.x*s,this._y=e.y*s,this._z=e.z*s,this._w=Math.cos(n),this._onChangeCallback(),this}setFromRotationMatrix(e){let t=e.elements,n=t[0],s=t[4],r=t[8],a=t[1],o=t[5],l=t[9],c=t[2],h=t[6],d=t[10],u=n+o+d;if(u>0){let f=.5/Math.sqrt(u+1);this._w=.25/f,this._x=(h-l)*f,this._y=(r-c)*f,this._z=(a-s)*f}else if(n>o&&n>d){let f=2*Math.sqrt(1+n-o-d);this._w=(h-l)/f,this._x=.25*f,this._y=(s+a)/f,this._z=(r+c)/f}else if(o>d){let f=2*Math.sqrt(1+o-n-d);this._w=(r-c)/f,this._x=(s+a)/f,this._y=.25*f,this._z=(l+h)/f}else{let f=2*Math.sqrt(1+d-n-o);this._w=(a-s)/f,this._x=(r+c)/f,this._y=(l+h)/f,this._z=.25*f}return this._onChangeCallback(),this}setFromUnitVectors(e,t){let n=e.dot(t)+1;return n<1e-8?(n=0,Math.abs(e.x)>Math.abs(e.z)?(this._x=-e.y,this._y=e.x,this._z=0,this._w=n):(this._x=0,this._y=-e.z,this._z=e.y,this._w=n)):(this._x=e.y*t.z-e.z*t.y,this._y=e.z*t.x-e.x*t.z,this._z=e.x*t.y-e.y*t.x,this._w=n),this.normalize()}angleTo(e){return 2*Math.acos(Math.abs(Qe(this.dot(e),-1,1)))}rotateTowards(e,t){let n=this.angleTo(e);if(n===0)return this;let s=Math.min(1,t/n);return this.slerp(e,s),this}identity(){return this.set(0,0,0,1)}invert(){return this.conjugate()}conjugate(){return this._x*=-1,this._y*=-1,this._z*=-1,this._onChangeCallback(),this}dot(e){return this._x*e._x+this._y*e._y+this._z*e._z+this._w*e._w}lengthSq(){return this._x*this._x+this._y*this._y+this._z*this._z+this._w*this._w}length(){return Math.sqrt(this._x*this._x+this._y*this._y+this._z*this._z+this._w*this._w)}normalize(){let e=this.length();return e===0?(this._x=0,this._y=0,this._z=0,this._w=1):(e=1/e,this._x=this._x*e,this._y=this._y*e,this._z=this._z*e,this._w=this._w*e),this._onChangeCallback(),this}multiply(e){return this.multiplyQuaternions(this,e)}premultiply(e){return this.multiplyQuaternions(e,this)}multiplyQuaternions(e,t){let n=e._x,s=e._y,r=e._z,a=e._w,o=t._x,l=t._y,c=t._z,h=t._w;return this._x=n*h+a*o+s*c-r*l,this._y=s*h+a*l+r*o-n*c,this._z=r*h+a*c+n*l-s*o,this._w=a*h-n*o-s*l-r*c,this._onChangeCallback(),this}slerp(e,t){let n=e._x,s=e._y,r=e._z,a=e._w,o=this.dot(e);o<0&&(n=-n,s=-s,r=-r,a=-a,o=-o);let l=1-t;if(o<.9995){let c=Math.acos(o),h=Math.sin(c);l=Math.sin(l*c)/h,t=Math.sin(t*c)/h,this._x=this._x*l+n*t,this._y=this._y*l+s*t,this._z=this._z*l+r*t,this._w=this._w*l+a*t,this._onChangeCallback()}else this._x=this._x*l+n*t,this._y=this._y*l+s*t,this._z=this._z*l+r*t,this._w=this._w*l+a*t,this.normalize();return this}slerpQuaternions(e,t,n){return this.copy(e).slerp(t,n)}random(){let e=2*Math.PI*Math.random(),t=2*Math.PI*Math.random(),n=Math.random(),s=Math.sqrt(1-n),r=Math.sqrt(n);return this.set(s*Math.sin(e),s*Math.cos(e),r*Math.sin(t),r*Math.cos(t))}equals(e){return e._x===this._x&&e._y===this._y&&e._z===this._z&&e._w===this._w}fromArray(e,t=0){return this._x=e[t],this._y=e[t+1],this._z=e[t+2],this._w=e[t+3],this._onChangeCallback(),this}toArray(e=[],t=0){return e[t]=this._x,e[t+1]=this._y,e[t+2]=this._z,e[t+3]=this._w,e}fromBufferAttribute(e,t){return this._x=e.getX(t),this._y=e.getY(t),this._z=e.getZ(t),this._w=e.getW(t),this._onChangeCallback(),this}toJSON(){return this.toArray()}_onChange(e){return this._onChangeCallback=e,this}_onChangeCallback(){}*[Symbol.iterator](){yield this._x,yield this._y,yield this._z,yield this._w}},G=class{static{this.prototype.isVector3=!0}constructor(e=0,t=0,n=0){this.x=e,this.y=t,this.z=n}set(e,t,n){return n===void 0&&(n=this.z),this.x=e,this.y=t,this.z=n,this}setScalar(e){return this.x=e,this.y=e,this.z=e,this}setX(e){return this.x=e,this}setY(e){return this.y=e,this}setZ(e){return this.z=e,this}setComponent(e,t){switch(e){case 0:this.x=t;break;case 1:this.y=t;break;case 2:this.z=t;break;default:throw new Error("THREE.Vector3: index is out of range: "+e)}return this}getComponent(e){switch(e){case 0:return this.x;case 1:return this.y;case 2:return this.z;default:throw new Error("THREE.Vector3: index is out of range: "+e)}}clone(){return new this.constructor(this.x,this.y,this.z)}copy(e){return this.x=e.x,this.y=e.y,this.z=e.z,this}add(e){return this.x+=e.x,this.y+=e.y,this.z+=e.z,this}addScalar(e){return this.x+=e,this.y+=e,this.z+=e,this}addVectors(e,t){return this.x=e.x+t.x,this.y=e.y+t.y,this.z=e.z+t.z,this}addScaledVector(e,t){return this.x+=e.x*t,this.y+=e.y*t,this.z+=e.z*t,this}sub(e){return this.x-=e.x,this.y-=e.y,this.z-=e.z,this}subScalar(e){return this.x-=e,this.y-=e,this.z-=e,this}subVectors(e,t){return this.x=e.x-t.x,this.y=e.y-t.y,this.z=e.z-t.z,this}multiply(e){return this.x*=e.x,this.y*=e.y,this.z*=e.z,this}multiplyScalar(e){return this.x*=e,this.y*=e,this.z*=e,this}multiplyVectors(e,t){return this.x=e.x*t.x,this.y=e.y*t.y,this.z=e.z*t.z,this}applyEuler(e){return this.applyQuaternion(iu.setFromEuler(e))}applyAxisAngle(e,t){return this.applyQuaternion(iu.setFromAxisAngle(e,t))}applyMatrix3(e){let t=this.x,n=this.y,s=this.z,r=e.elements;return this.x=r[0]*t+r[3]*n+r[6]*s,this.y=r[1]*t+r[4]*n+r[7]*s,this.z=r[2]*t+r[5]*n+r[8]*s,this}applyNormalMatrix(e){return this.applyMatrix3(e).normalize()}applyMatrix4(e){let t=this.x,n=this.y,s=this.z,r=e.elements,a=1/(r[3]*t+r[7]*n+r[11]*s+r[15]);return this.x=(r[0]*t+r[4]*n+r[8]*s+r[12])*a,this.y=(r[1]*t+r[5]*n+r[9]*s+r[13])*a,this.z=(r[2]*t+r[6]*n+r[10]*s+r[14])*a,this}applyQuaternion(e){let t=this.x,n=this.y,s=this.z,r=e.x,a=e.y,o=e.z,l=e.w,c=2*(a*s-o*n),h=2*(o*t-r*s),d=2*(r*n-a*t);return this.x=t+l*c+a*d-o*h,this.y=n+l*h+o*c-r*d,this.z=s+l*d+r*h-a*c,this}project(e){return this.applyMatrix4(e.matrixWorldInverse).applyMatrix4(e.projectionMatrix)}unproject(e){return this.applyMatrix4(e.projectionMatrixInverse).applyMatrix4(e.matrixWorld)}transformDirection(e){let t=this.x,n=this.y,s=this.z,r=e.elements;return this.x=r[0]*t+r[4]*n+r[8]*s,this.y=r[1]*t+r[5]*n+r[9]*s,this.z=r[2]*t+r[6]*n+r[10]*s,this.normalize()}divide(e){return this.x/=e.x,this.y/=e.y,this.z/=e.z,this}divideScalar(e){return this.multiplyScalar(1/e)}min(e){return this.x=Math.min(this.x,e.x),this.y=Math.min(this.y,e.y),this.z=Math.min(this.z,e.z),this}max(e){return this.x=Math.max(this.x,e.x),this.y=Math.max(this.y,e.y),this.z=Math.max(this.z,e.z),this}clamp(e,t){return this.x=Qe(this.x,e.x,t.x),this.y=Qe(this.y,e.y,t.y),this.z=Qe(this.z,e.z,t.z),this}clampScalar(e,t){return this.x=Qe(this.x,e,t),this.y=Qe(this.y,e,t),this.z=Qe(this.z,e,t),this}clampLength(e,t){let n=this.length();return this.divideScalar(n||1).multiplyScalar(Qe(n,e,t))}floor(){return this.x=Math.floor(this.x),this.y=Math.floor(this.y),this.z=Math.floor(this.z),this}ceil(){return this.x=Math.ceil(this.x),this.y=Math.ceil(this.y),this.z=Math.ceil(this.z),this}round(){return this.x=Math.round(this.x),this.y=Math.round(this.y),this.z=Math.round(this.z),this}roundToZero(){return this.x=Math.trunc(this.x),this.y=Math.trunc(this.y),this.z=Math.trunc(this.z),this}negate(){return this.x=-this.x,this.y=-this.y,this.z=-this.z,this}dot(e){return this.x*e.x+this.y*e.y+this.z*e.z}lengthSq(){return this.x*this.x+this.y*this.y+this.z*this.z}length(){return Math.sqrt(this.x*this.x+this.y*this.y+this.z*this.z)}manhattanLength(){return Math.abs(this.x)+Math.abs(this.y)+Math.abs(this.z)}normalize(){return this.divideScalar(this.length()||1)}setLength(e){return this.normalize().multiplyScalar(e)}lerp(e,t){return this.x+=(e.x-this.x)*t,this.y+=(e.y-this.y)*t,this.z+=(e.z-this.z)*t,this}lerpVectors(e,t,n){return this.x=e.x+(t.x-e.x)*n,this.y=e.y+(t.y-e.y)*n,this.z=e.z+(t.z-e.z)*n,this}cross(e){return this.crossVectors(this,e)}crossVectors(e,t){let n=e.x,s=e.y,r=e.z,a=t.x,o=t.y,l=t.z;return this.x=s*l-r*o,this.y=r*a-n*l,this.z=n*o-s*a,this}projectOnVector(e){let t=e.lengthSq();if(t===0)return this.set(0,0,0);let n=e.dot(this)/t;return this.copy(e).multiplyScalar(n)}projectOnPlane(e){return yl.copy(this).projectOnVector(e),this.sub(yl)}reflect(e){return this.sub(yl.copy(e).multiplyScalar(2*this.dot(e)))}angleTo(e){let t=Math.sqrt(this.lengthSq()*e.lengthSq());if(t===0)return Math.PI/2;let n=this.dot(e)/t;return Math.acos(Qe(n,-1,1))}distanceTo(e){return Math.sqrt(this.distanceToSquared(e))}distanceToSquared(e){let t=this.x-e.x,n=this.y-e.y,s=this.z-e.z;return t*t+n*n+s*s}manhattanDistanceTo(e){return Math.abs(this.x-e.x)+Math.abs(this.y-e.y)+Math.abs(this.z-e.z)}setFromSpherical(e){return this.setFromSphericalCoords(e.radius,e.phi,e.theta)}setFromSphericalCoords(e,t,n){let s=Math.sin(t)*e;return this.x=s*Math.sin(n),this.y=Math.cos(t)*e,this.z=s*Math.cos(n),this}setFromCylindrical(e){return this.setFromCylindricalCoords(e.radius,e.theta,e.y)}setFromCylindricalCoords(e,t,n){return this.x=e*Math.sin(t),this.y=n,this.z=e*Math.cos(t),this}setFromMatrixPosition(e){let t=e.elements;return this.x=t[12],this.y=t[13],this.z=t[14],this}setFromMatrixScale(e){let t=this.setFromMatrixColumn(e,0).length(),n=this.setFromMatrixColumn(e,1).length(),s=this.setFromMatrixColumn(e,2).length();return this.x=t,this.y=n,this.z=s,this}setFromMatrixColumn(e,t){return this.fromArray(e.elements,t*4)}setFromMatrix3Column(e,t){return this.fromArray(e.elements,t*3)}setFromEuler(e){return this.x=e._x,this.y=e._y,this.z=e._z,this}setFromColor(e){return this.x=e.r,this.y=e.g,this.z=e.b,this}equals(e){return e.x===this.x&&e.y===this.y&&e.z===this.z}fromArray(e,t=0){return this.x=e[t],this.y=e[t+1],this.z=e[t+2],this}toArray(e=[],t=0){return e[t]=this.x,e[t+1]=this.y,e[t+2]=this.z,e}fromBufferAttribute(e,t){return this.x=e.getX(t),this.y=e.getY(t),this.z=e.getZ(t),this}random(){return this.x=Math.random(),this.y=Math.random(),this.z=Math.random(),this}randomDirection(){let e=Math.random()*Math.PI*2,t=Math.random()*2-1,n=Math.sqrt(1-t*t);return this.x=n*Math.cos(e),this.y=t,this.z=n*Math.sin(e),this}*[Symbol.iterator](){yield this.x,yield this.y,yield this.z}},yl=new G,iu=new yn,Ge=class{static{this.prototype.isMatrix3=!0}constructor(e,t,n,s,r,a,o,l,c){this.elements=[1,0,0,0,1,0,0,0,1],e!==void 0&&this.set(e,t,n,s,r,a,o,l,c)}set(e,t,n,s,r,a,o,l,c){let h=this.elements;return h[0]=e,h[1]=s,h[2]=o,h[3]=t,h[4]=r,h[5]=l,h[6]=n,h[7]=a,h[8]=c,this}identity(){return this.set(1,0,0,0,1,0,0,0,1),this}copy(e){let t=this.elements,n=e.elements;return t[0]=n[0],t[1]=n[1],t[2]=n[2],t[3]=n[3],t[4]=n[4],t[5]=n[5],t[6]=n[6],t[7]=n[7],t[8]=n[8],this}extractBasis(e,t,n){return e.setFromMatrix3Column(this,0),t.setFromMatrix3Column(this,1),n.setFromMatrix3Column(this,2),this}setFromMatrix4(e){let t=e.elements;return this.set(t[0],t[4],t[8],t[1],t[5],t[9],t[2],t[6],t[10]),this}multiply(e){return this.multiplyMatrices(this,e)}premultiply(e){return this.multiplyMatrices(e,this)}multiplyMatrices(e,t){let n=e.elements,s=t.elements,r=this.elements,a=n[0],o=n[3],l=n[6],c=n[1],h=n[4],d=n[7],u=n[2],f=n[5],g=n[8],v=s[0],_=s[3],p=s[6],M=s[1],C=s[4],S=s[7],T=s[2],A=s[5],x=s[8];return r[0]=a*v+o*M+l*T,r[3]=a*_+o*C+l*A,r[6]=a*p+o*S+l*x,r[1]=c*v+h*M+d*T,r[4]=c*_+h*C+d*A,r[7]=c*p+h*S+d*x,r[2]=u*v+f*M+g*T,r[5]=u*_+f*C+g*A,r[8]=u*p+f*S+g*x,this}multiplyScalar(e){let t=this.elements;return t[0]*=e,t[3]*=e,t[6]*=e,t[1]*=e,t[4]*=e,t[7]*=e,t[2]*=e,t[5]*=e,t[8]*=e,this}determinant(){let e=this.elements,t=e[0],n=e[1],s=e[2],r=e[3],a=e[4],o=e[5],l=e[6],c=e[7],h=e[8];return t*a*h-t*o*c-n*r*h+n*o*l+s*r*c-s*a*l}invert(){let e=this.elements,t=e[0],n=e[1],s=e[2],r=e[3],a=e[4],o=e[5],l=e[6],c=e[7],h=e[8],d=h*a-o*c,u=o*l-h*r,f=c*r-a*l,g=t*d+n*u+s*f;if(g===0)return this.set(0,0,0,0,0,0,0,0,0);let v=1/g;return e[0]=d*v,e[1]=(s*c-h*n)*v,e[2]=(o*n-s*a)*v,e[3]=u*v,e[4]=(h*t-s*l)*v,e[5]=(s*r-o*t)*v,e[6]=f*v,e[7]=(n*l-c*t)*v,e[8]=(a*t-n*r)*v,this}transpose(){let e,t=this.elements;return e=t[1],t[1]=t[3],t[3]=e,e=t[2],t[2]=t[6],t[6]=e,e=t[5],t[5]=t[7],t[7]=e,this}getNormalMatrix(e){return this.setFromMatrix4(e).invert().transpose()}transposeIntoArray(e){let t=this.elements;return e[0]=t[0],e[1]=t[3],e[2]=t[6],e[3]=t[1],e[4]=t[4],e[5]=t[7],e[6]=t[2],e[7]=t[5],e[8]=t[8],this}setUvTransform(e,t,n,s,r,a,o){let l=Math.cos(r),c=Math.sin(r);return this.set(n*l,n*c,-n*(l*a+c*o)+a+e,-s*c,s*l,-s*(-c*a+l*o)+o+t,0,0,1),this}scale(e,t){return Qs("Matrix3: .scale() is deprecated. Use .makeScale() instead."),this.premultiply(bl.makeScale(e,t)),this}rotate(e){return Qs("Matrix3: .rotate() is deprecated. Use .makeRotation() instead."),this.premultiply(bl.makeRotation(-e)),this}translate(e,t){return Qs("Matrix3: .translate() is deprecated. Use .makeTranslation() instead."),this.premultiply(bl.makeTranslation(e,t)),this}makeTranslation(e,t){return e.isVector2?this.set(1,0,e.x,0,1,e.y,0,0,1):this.set(1,0,e,0,1,t,0,0,1),this}makeRotation(e){let t=Math.cos(e),n=Math.sin(e);return this.set(t,-n,0,n,t,0,0,0,1),this}makeScale(e,t){return this.set(e,0,0,0,t,0,0,0,1),this}equals(e){let t=this.elements,n=e.elements;for(let s=0;s<9;s++)if(t[s]!==n[s])return!1;return!0}fromArray(e,t=0){for(let n=0;n<9;n++)this.elements[n]=e[n+t];return this}toArray(e=[],t=0){let n=this.elements;return e[t]=n[0],e[t+1]=n[1],e[t+2]=n[2],e[t+3]=n[3],e[t+4]=n[4],e[t+5]=n[5],e[t+6]=n[6],e[t+7]=n[7],e[t+8]=n[8],e}clone(){return new this.constructor().fromArray(this.elements)}},bl=new Ge,su=new Ge().set(.4123908,.3575843,.1804808,.212639,.7151687,.0721923,.0193308,.1191948,.9505322),ru=new Ge().set(3.2409699,-1.5373832,-.4986108,-.9692436,1.8759675,.0415551,.0556301,-.203977,1.0569715);function Ip(){let i={enabled:!0,workingColorSpace:tr,spaces:{},convert:function(s,r,a){return this.enabled===!1||r===a||!r||!a||(this.spaces[r].transfer===it&&(s.r=ii(s.r),s.g=ii(s.g),s.b=ii(s.b)),this.spaces[r].primaries!==this.spaces[a].primaries&&(s.applyMatrix3(this.spaces[r].toXYZ),s.applyMatrix3(this.spaces[a].fromXYZ)),this.spaces[a].transfer===it&&(s.r=ys(s.r),s.g=ys(s.g),s.b=ys(s.b))),s},workingToColorSpace:function(s,r){return this.convert(s,this.workingColorSpace,r)},colorSpaceToWorking:function(s,r){return this.convert(s,r,this.workingColorSpace)},getPrimaries:function(s){return this.spaces[s].primaries},getTransfer:function(s){return s===li?nr:this.spaces[s].transfer},getToneMappingMode:function(s){return this.spaces[s].outputColorSpaceConfig.toneMappingMode||"standard"},getLuminanceCoefficients:function(s,r=this.workingColorSpace){return s.fromArray(this.spaces[r].luminanceCoefficients)},define:function(s){Object.assign(this.spaces,s)},_getMatrix:function(s,r,a){return s.copy(this.spaces[a].fromXYZ).multiply(this.spaces[r].toXYZ)},_getDrawingBufferColorSpace:function(s){return this.spaces[s].outputColorSpaceConfig.drawingBufferColorSpace},_getUnpackColorSpace:function(s=this.workingColorSpace){return this.spaces[s].workingColorSpaceConfig.unpackColorSpace}},e=[.64,.33,.3,.6,.15,.06],t=[.2126,.7152,.0722],n=[.3127,.329];return i.define({[tr]:{primaries:e,whitePoint:n,transfer:nr,toXYZ:su,fromXYZ:ru,luminanceCoefficients:t,workingColorSpaceConfig:{unpackColorSpace:sn},outputColorSpaceConfig:{drawingBufferColorSpace:sn}},[sn]:{primaries:e,whitePoint:n,transfer:it,toXYZ:su,fromXYZ:ru,luminanceCoefficients:t,outputColorSpaceConfig:{drawingBufferColorSpace:sn}}}),i}var Ke=Ip();function ii(i){return i<.04045?i*.0773993808:Math.pow(i*.9478672986+.0521327014,2.4)}function ys(i){return i<.0031308?i*12.92:1.055*Math.pow(i,.41666)-.055}var os,Pa=class{static getDataURL(e,t="image/png"){if(/^data:/i.test(e.src)||typeof HTMLCanvasElement>"u")return e.src;let n;if(e instanceof HTMLCanvasElement)n=e;else{os===void 0&&(os=sr("canvas")),os.width=e.width,os.height=e.height;let s=os.getContext("2d");e instanceof ImageData?s.putImageData(e,0,0):s.drawImage(e,0,0,e.width,e.height),n=os}return n.toDataURL(t)}static sRGBToLinear(e){if(typeof HTMLImageElement<"u"&&e instanceof HTMLImageElement||typeof HTMLCanvasElement<"u"&&e instanceof HTMLCanvasElement||typeof ImageBitmap<"u"&&e instanceof ImageBitmap){let t=sr("canvas");t.width=e.width,t.height=e.height;let n=t.getContext("2d");n.drawImage(e,0,0,e.width,e.height);let s=n.getImageData(0,0,e.width,e.height),r=s.data;for(let a=0;a<r.length;a++)r[a]=ii(r[a]/255)*255;return n.putImageData(s,0,0),t}else if(e.data){let t=e.data.slice(0);for(let n=0;n<t.length;n++)t instanceof Uint8Array||t instanceof Uint8ClampedArray?t[n]=Math.floor(ii(t[n]/255)*255):t[n]=ii(t[n]);return{data:t,width:e.width,height:e.height}}else return Oe("ImageUtils.sRGBToLinear(): Unsupported image type. No color space conversion applied."),e}},Lp=0,Ss=class{constructor(e=null){this.isTextureSource=!0,Object.defineProperty(this,"id",{value:Lp++}),this.uuid=wr(),this.data=e,this.dataReady=!0,this.version=0}getSize(e){let t=this.data;return typeof HTMLVideoElement<"u"&&t instanceof HTMLVideoElement?e.set(t.videoWidth,t.videoHeight,0):typeof VideoFrame<"u"&&t instanceof VideoFrame?e.set(t.displayWidth,t.displayHeight,0):t!==null?e.set(t.width||0,t.height||0,t.depth||0):e.set(0,0,0),e}set needsUpdate(e){e===!0&&this.version++}toJSON(e){let t=e===void 0||typeof e=="string";if(!t&&e.images[this.uuid]!==void 0)return e.images[this.uuid];let n={uuid:this.uuid,url:""},s=this.data;if(s!==null){let r;if(Array.isArray(s)){r=[];for(let a=0,o=s.length;a<o;a++)s[a].isDataTexture?r.push(Ml(s[a].image)):r.push(Ml(s[a]))}else r=Ml(s);n.url=r}return t||(e.images[this.uuid]=n),n}};function Ml(i){return typeof HTMLImageElement<"u"&&i instanceof HTMLImageElement||typeof HTMLCanvasElement<"u"&&i instanceof HTMLCanvasElement||typeof ImageBitmap<"u"&&i instanceof ImageBitmap?Pa.getDataURL(i):i.data?{data:Array.from(i.data),width:i.width,height:i.height,type:i.data.constructor.name}:(Oe("Texture: Unable to serialize Texture."),{})}var Np=0,Sl=new G,Kt=class i extends Vn{constructor(e=i.DEFAULT_IMAGE,t=i.DEFAULT_MAPPING,n=Gn,s=Gn,r=Xt,a=ai,o=Nn,l=hn,c=i.DEFAULT_ANISOTROPY,h=li){super(),this.isTexture=!0,Object.defineProperty(this,"id",{value:Np++}),this.uuid=wr(),this.name="",this.source=new Ss(e),this.mipmaps=[],this.mapping=t,this.channel=0,this.wrapS=n,this.wrapT=s,this.magFilter=r,this.minFilter=a,this.anisotropy=c,this.format=o,this.internalFormat=null,this.type=l,this.offset=new et(0,0),this.repeat=new et(1,1),this.center=new et(0,0),this.rotation=0,this.matrixAutoUpdate=!0,this.matrix=new Ge,this.generateMipmaps=!0,this.mipmapsAutoUpdate=!0,this.premultiplyAlpha=!1,this.flipY=!0,this.unpackAlignment=4,this.colorSpace=h,this.userData={},this.updateRanges=[],this.version=0,this.onUpdate=null,this.renderTarget=null,this.isRenderTargetTexture=!1,this.isArrayTexture=!!(e&&e.depth&&e.depth>1),this.pmremVersion=0,this.isPMREMTexture=!1,this.normalized=!1}get width(){return this.source.getSize(Sl).x}get height(){return this.source.getSize(Sl).y}get depth(){return this.source.getSize(Sl).z}get image(){return this.source.data}set image(e){this.source.data=e}updateMatrix(){this.matrix.setUvTransform(this.offset.x,this.offset.y,this.repeat.x,this.repeat.y,this.rotation,this.center.x,this.center.y)}addUpdateRange(e,t){this.updateRanges.push({start:e,count:t})}clearUpdateRanges(){this.updateRanges.length=0}clone(){return new this.constructor().copy(this)}copy(e){return this.name=e.name,this.source=e.source,this.mipmaps=e.mipmaps.slice(0),this.mapping=e.mapping,this.channel=e.channel,this.wrapS=e.wrapS,this.wrapT=e.wrapT,this.magFilter=e.magFilter,this.minFilter=e.minFilter,this.anisotropy=e.anisotropy,this.format=e.format,this.internalFormat=e.internalFormat,this.type=e.type,this.normalized=e.normalized,this.offset.copy(e.offset),this.repeat.copy(e.repeat),this.center.copy(e.center),this.rotation=e.rotation,this.matrixAutoUpdate=e.matrixAutoUpdate,this.matrix.copy(e.matrix),this.generateMipmaps=e.generateMipmaps,this.mipmapsAutoUpdate=e.mipmapsAutoUpdate,this.premultiplyAlpha=e.premultiplyAlpha,this.flipY=e.flipY,this.unpackAlignment=e.unpackAlignment,this.colorSpace=e.colorSpace,this.renderTarget=e.renderTarget,this.isRenderTargetTexture=e.isRenderTargetTexture,this.isPMREMTexture=e.isPMREMTexture,this.isArrayTexture=e.isArrayTexture,this.userData=JSON.parse(JSON.stringify(e.userData)),this.needsUpdate=!0,this}setValues(e){for(let t in e){let n=e[t];if(n===void 0){Oe(`Texture.setValues(): parameter '${t}' has value of undefined.`);continue}let s=this[t];if(s===void 0){Oe(`Texture.setValues(): property '${t}' does not exist.`);continue}s&&n&&s.isVector2&&n.isVector2||s&&n&&s.isVector3&&n.isVector3||s&&n&&s.isMatrix3&&n.isMatrix3?s.copy(n):this[t]=n}}toJSON(e){let t=e===void 0||typeof e=="string";if(!t&&e.textures[this.uuid]!==void 0)return e.textures[this.uuid];let n={metadata:{version:4.7,type:"Texture",generator:"Texture.toJSON"},uuid:this.uuid,name:this.name,image:this.source.toJSON(e).uuid,mapping:this.mapping,channel:this.channel,repeat:[this.repeat.x,this.repeat.y],offset:[this.offset.x,this.offset.y],center:[this.center.x,this.center.y],rotation:this.rotation,wrap:[this.wrapS,this.wrapT],format:this.format,internalFormat:this.internalFormat,type:this.type,normalized:this.normalized,colorSpace:this.colorSpace,minFilter:this.minFilter,magFilter:this.magFilter,anisotropy:this.anisotropy,flipY:this.flipY,generateMipmaps:this.generateMipmaps,mipmapsAutoUpdate:this.mipmapsAutoUpdate,premultiplyAlpha:this.premultiplyAlpha,unpackAlignment:this.unpackAlignment};return Object.keys(this.userData).length>0&&(n.userData=this.userData),t||(e.textures[this.uuid]=n),n}dispose(){this.dispatchEvent({type:"dispose"})}transformUv(e){if(this.mapping!==oc)return e;if(e.applyMatrix3(this.matrix),e.x<0||e.x>1)switch(this.wrapS){case Ea:e.x=e.x-Math.floor(e.x);break;case Gn:e.x=e.x<0?0:1;break;case Aa:Math.abs(Math.floor(e.x)%2)===1?e.x=Math.ceil(e.x)-e.x:e.x=e.x-Math.floor(e.x);break}if(e.y<0||e.y>1)switch(this.wrapT){case Ea:e.y=e.y-Math.floor(e.y);break;case Gn:e.y=e.y<0?0:1;break;case Aa:Math.abs(Math.floor(e.y)%2)===1?e.y=Math.ceil(e.y)-e.y:e.y=e.y-Math.floor(e.y);break}return this.flipY&&(e.y=1-e.y),e}set needsUpdate(e){e===!0&&(this.version++,this.source.needsUpdate=!0)}set needsPMREMUpdate(e){e===!0&&this.pmremVersion++}};Kt.DEFAULT_IMAGE=null;Kt.DEFAULT_MAPPING=oc;Kt.DEFAULT_ANISOTROPY=1;var xt=class{static{this.prototype.isVector4=!0}constructor(e=0,t=0,n=0,s=1){this.x=e,this.y=t,this.z=n,this.w=s}get width(){return this.z}set width(e){this.z=e}get height(){return this.w}set height(e){this.w=e}set(e,t,n,s){return this.x=e,this.y=t,this.z=n,this.w=s,this}setScalar(e){return this.x=e,this.y=e,this.z=e,this.w=e,this}setX(e){return this.x=e,this}setY(e){return this.y=e,this}setZ(e){return this.z=e,this}setW(e){return this.w=e,this}setComponent(e,t){switch(e){case 0:this.x=t;break;case 1:this.y=t;break;case 2:this.z=t;break;case 3:this.w=t;break;default:throw new Error("THREE.Vector4: index is out of range: "+e)}return this}getComponent(e){switch(e){case 0:return this.x;case 1:return this.y;case 2:return this.z;case 3:return this.w;default:throw new Error("THREE.Vector4: index is out of range: "+e)}}clone(){return new this.constructor(this.x,this.y,this.z,this.w)}copy(e){return this.x=e.x,this.y=e.y,this.z=e.z,this.w=e.w!==void 0?e.w:1,this}add(e){return this.x+=e.x,this.y+=e.y,this.z+=e.z,this.w+=e.w,this}addScalar(e){return this.x+=e,this.y+=e,this.z+=e,this.w+=e,this}addVectors(e,t){return this.x=e.x+t.x,this.y=e.y+t.y,this.z=e.z+t.z,this.w=e.w+t.w,this}addScaledVector(e,t){return this.x+=e.x*t,this.y+=e.y*t,this.z+=e.z*t,this.w+=e.w*t,this}sub(e){return this.x-=e.x,this.y-=e.y,this.z-=e.z,this.w-=e.w,this}subScalar(e){return this.x-=e,this.y-=e,this.z-=e,this.w-=e,this}subVectors(e,t){return this.x=e.x-t.x,this.y=e.y-t.y,this.z=e.z-t.z,this.w=e.w-t.w,this}multiply(e){return this.x*=e.x,this.y*=e.y,this.z*=e.z,this.w*=e.w,this}multiplyScalar(e){return this.x*=e,this.y*=e,this.z*=e,this.w*=e,this}applyMatrix4(e){let t=this.x,n=this.y,s=this.z,r=this.w,a=e.elements;return this.x=a[0]*t+a[4]*n+a[8]*s+a[12]*r,this.y=a[1]*t+a[5]*n+a[9]*s+a[13]*r,this.z=a[2]*t+a[6]*n+a[10]*s+a[14]*r,this.w=a[3]*t+a[7]*n+a[11]*s+a[15]*r,this}divide(e){return this.x/=e.x,this.y/=e.y,this.z/=e.z,this.w/=e.w,this}divideScalar(e){return this.multiplyScalar(1/e)}setAxisAngleFromQuaternion(e){this.w=2*Math.acos(e.w);let t=Math.sqrt(1-e.w*e.w);return t<1e-4?(this.x=1,this.y=0,this.z=0):(this.x=e.x/t,this.y=e.y/t,this.z=e.z/t),this}setAxisAngleFromRotationMatrix(e){let t,n,s,r,l=e.elements,c=l[0],h=l[4],d=l[8],u=l[1],f=l[5],g=l[9],v=l[2],_=l[6],p=l[10];if(Math.abs(h-u)<.01&&Math.abs(d-v)<.01&&Math.abs(g-_)<.01){if(Math.abs(h+u)<.1&&Math.abs(d+v)<.1&&Math.abs(g+_)<.1&&Math.abs(c+f+p-3)<.1)return this.set(1,0,0,0),this;t=Math.PI;let C=(c+1)/2,S=(f+1)/2,T=(p+1)/2,A=(h+u)/4,x=(d+v)/4,E=(g+_)/4;return C>S&&C>T?C<.01?(n=0,s=.707106781,r=.707106781):(n=Math.sqrt(C),s=A/n,r=x/n):S>T?S<.01?(n=.707106781,s=0,r=.707106781):(s=Math.sqrt(S),n=A/s,r=E/s):T<.01?(n=.707106781,s=.707106781,r=0):(r=Math.sqrt(T),n=x/r,s=E/r),this.set(n,s,r,t),this}let M=Math.sqrt((_-g)*(_-g)+(d-v)*(d-v)+(u-h)*(u-h));return Math.abs(M)<.001&&(M=1),this.x=(_-g)/M,this.y=(d-v)/M,this.z=(u-h)/M,this.w=Math.acos((c+f+p-1)/2),this}setFromMatrixPosition(e){let t=e.elements;return this.x=t[12],this.y=t[13],this.z=t[14],this.w=t[15],this}min(e){return this.x=Math.min(this.x,e.x),this.y=Math.min(this.y,e.y),this.z=Math.min(this.z,e.z),this.w=Math.min(this.w,e.w),this}max(e){return this.x=Math.max(this.x,e.x),this.y=Math.max(this.y,e.y),this.z=Math.max(this.z,e.z),this.w=Math.max(this.w,e.w),this}clamp(e,t){return this.x=Qe(this.x,e.x,t.x),this.y=Qe(this.y,e.y,t.y),this.z=Qe(this.z,e.z,t.z),this.w=Qe(this.w,e.w,t.w),this}clampScalar(e,t){return this.x=Qe(this.x,e,t),this.y=Qe(this.y,e,t),this.z=Qe(this.z,e,t),this.w=Qe(this.w,e,t),this}clampLength(e,t){let n=this.length();return this.divideScalar(n||1).multiplyScalar(Qe(n,e,t))}floor(){return this.x=Math.floor(this.x),this.y=Math.floor(this.y),this.z=Math.floor(this.z),this.w=Math.floor(this.w),this}ceil(){return this.x=Math.ceil(this.x),this.y=Math.ceil(this.y),this.z=Math.ceil(this.z),this.w=Math.ceil(this.w),this}round(){return this.x=Math.round(this.x),this.y=Math.round(this.y),this.z=Math.round(this.z),this.w=Math.round(this.w),this}roundToZero(){return this.x=Math.trunc(this.x),this.y=Math.trunc(this.y),this.z=Math.trunc(this.z),this.w=Math.trunc(this.w),this}negate(){return this.x=-this.x,this.y=-this.y,this.z=-this.z,this.w=-this.w,this}dot(e){return this.x*e.x+this.y*e.y+this.z*e.z+this.w*e.w}lengthSq(){return this.x*this.x+this.y*this.y+this.z*this.z+this.w*this.w}length(){return Math.sqrt(this.x*this.x+this.y*this.y+this.z*this.z+this.w*this.w)}manhattanLength(){return Math.abs(this.x)+Math.abs(this.y)+Math.abs(this.z)+Math.abs(this.w)}normalize(){return this.divideScalar(this.length()||1)}setLength(e){return this.normalize().multiplyScalar(e)}lerp(e,t){return this.x+=(e.x-this.x)*t,this.y+=(e.y-this.y)*t,this.z+=(e.z-this.z)*t,this.w+=(e.w-this.w)*t,this}lerpVectors(e,t,n){return this.x=e.x+(t.x-e.x)*n,this.y=e.y+(t.y-e.y)*n,this.z=e.z+(t.z-e.z)*n,this.w=e.w+(t.w-e.w)*n,this}equals(e){return e.x===this.x&&e.y===this.y&&e.z===this.z&&e.w===this.w}fromArray(e,t=0){return this.x=e[t],this.y=e[t+1],this.z=e[t+2],this.w=e[t+3],this}toArray(e=[],t=0){return e[t]=this.x,e[t+1]=this.y,e[t+2]=this.z,e[t+3]=this.w,e}fromBufferAttribute(e,t){return this.x=e.getX(t),this.y=e.getY(t),this.z=e.getZ(t),this.w=e.getW(t),this}random(){return this.x=Math.random(),this.y=Math.random(),this.z=Math.random(),this.w=Math.random(),this}*[Symbol.iterator](){yield this.x,yield this.y,yield this.z,yield this.w}},Ia=class extends Vn{constructor(e=1,t=1,n={}){super(),n=Object.assign({generateMipmaps:!1,internalFormat:null,minFilter:Xt,depthBuffer:!0,stencilBuffer:!1,resolveColorBuffer:!0,resolveDepthBuffer:!0,resolveStencilBuffer:!0,storeMultisampledColorBuffer:!0,storeMultisampledDepthBuffer:!0,storeMultisampledStencilBuffer:!0,depthTexture:null,samples:0,count:1,depth:1,multiview:!1,useArrayDepthTexture:!1},n),this.isRenderTarget=!0,this.width=e,this.height=t,this.depth=n.depth,this.scissor=new xt(0,0,e,t),this.scissorTest=!1,this.viewport=new xt(0,0,e,t),this.textures=[];let s=n.count;for(let r=0;r<s;r++)this.textures[r]=new Kt({width:e,height:t,depth:n.depth}),this.textures[r].isRenderTargetTexture=!0,this.textures[r].renderTarget=this;this._setTextureOptions(n),this.depthBuffer=n.depthBuffer,this.stencilBuffer=n.stencilBuffer,this.resolveColorBuffer=n.resolveColorBuffer,this.resolveDepthBuffer=n.resolveDepthBuffer,this.resolveStencilBuffer=n.resolveStencilBuffer,this.storeMultisampledColorBuffer=n.storeMultisampledColorBuffer,this.storeMultisampledDepthBuffer=n.storeMultisampledDepthBuffer,this.storeMultisampledStencilBuffer=n.storeMultisampledStencilBuffer,this._depthTexture=null,this.depthTexture=n.depthTexture,this.samples=n.samples,this.multiview=n.multiview,this.useArrayDepthTexture=n.useArrayDepthTexture}_setTextureOptions(e={}){let t={minFilter:Xt,generateMipmaps:!1,flipY:!1,internalFormat:null};e.mapping!==void 0&&(t.mapping=e.mapping),e.wrapS!==void 0&&(t.wrapS=e.wrapS),e.wrapT!==void 0&&(t.wrapT=e.wrapT),e.wrapR!==void 0&&(t.wrapR=e.wrapR),e.magFilter!==void 0&&(t.magFilter=e.magFilter),e.minFilter!==void 0&&(t.minFilter=e.minFilter),e.format!==void 0&&(t.format=e.format),e.type!==void 0&&(t.type=e.type),e.anisotropy!==void 0&&(t.anisotropy=e.anisotropy),e.colorSpace!==void 0&&(t.colorSpace=e.colorSpace),e.flipY!==void 0&&(t.flipY=e.flipY),e.generateMipmaps!==void 0&&(t.generateMipmaps=e.generateMipmaps),e.mipmapsAutoUpdate!==void 0&&(t.mipmapsAutoUpdate=e.mipmapsAutoUpdate),e.internalFormat!==void 0&&(t.internalFormat=e.internalFormat);for(let n=0;n<this.textures.length;n++)this.textures[n].setValues(t)}get texture(){return this.textures[0]}set texture(e){this.textures[0]=e}set depthTexture(e){this._depthTexture!==null&&this._depthTexture.renderTarget===this&&(this._depthTexture.renderTarget=null),e!==null&&e.renderTarget===null&&(e.renderTarget=this),this._depthTexture=e}get depthTexture(){return this._depthTexture}setSize(e,t,n=1){if(this.width!==e||this.height!==t||this.depth!==n){this.width=e,this.height=t,this.depth=n;for(let s=0,r=this.textures.length;s<r;s++)this.textures[s].image.width=e,this.textures[s].image.height=t,this.textures[s].image.depth=n,this.textures[s].isData3DTexture!==!0&&(this.textures[s].isArrayTexture=this.textures[s].image.depth>1);this.dispose()}this.viewport.set(0,0,e,t),this.scissor.set(0,0,e,t)}clone(){return new this.constructor().copy(this)}copy(e){this.width=e.width,this.height=e.height,this.depth=e.depth,this.scissor.copy(e.scissor),this.scissorTest=e.scissorTest,this.viewport.copy(e.viewport),this.textures.length=0;for(let t=0,n=e.textures.length;t<n;t++){this.textures[t]=e.textures[t].clone(),this.textures[t].isRenderTargetTexture=!0,this.textures[t].renderTarget=this;let s=Object.assign({},e.textures[t].image);this.textures[t].source=new Ss(s)}if(this.depthBuffer=e.depthBuffer,this.stencilBuffer=e.stencilBuffer,this.resolveColorBuffer=e.resolveColorBuffer,this.resolveDepthBuffer=e.resolveDepthBuffer,this.resolveStencilBuffer=e.resolveStencilBuffer,this.storeMultisampledColorBuffer=e.storeMultisampledColorBuffer,this.storeMultisampledDepthBuffer=e.storeMultisampledDepthBuffer,this.storeMultisampledStencilBuffer=e.storeMultisampledStencilBuffer,e.depthTexture!==null)if(e.depthTexture.renderTarget===e){let t=e.depthTexture.clone();t.renderTarget=null,this.depthTexture=t}else this.depthTexture=e.depthTexture;else this.depthTexture=null;return this.samples=e.samples,this.multiview=e.multiview,this.useArrayDepthTexture=e.useArrayDepthTexture,this}dispose(){this.dispatchEvent({type:"dispose"})}},on=class extends Ia{constructor(e=1,t=1,n={}){super(e,t,n),this.isWebGLRenderTarget=!0}},rr=class extends Kt{constructor(e=null,t=1,n=1,s=1){super(null),this.isDataArrayTexture=!0,this.image={data:e,width:t,height:n,depth:s},this.magFilter=Dt,this.minFilter=Dt,this.wrapR=Gn,this.generateMipmaps=!1,this.flipY=!1,this.unpackAlignment=1,this.layerUpdates=new Set}copy(e){return super.copy(e),this.wrapR=e.wrapR,this}addLayerUpdate(e){this.layerUpdates.add(e)}clearLayerUpdates(){this.layerUpdates.clear()}};var La=class extends Kt{constructor(e=null,t=1,n=1,s=1){super(null),this.isData3DTexture=!0,this.image={data:e,width:t,height:n,depth:s},this.magFilter=Dt,this.minFilter=Dt,this.wrapR=Gn,this.generateMipmaps=!1,this.flipY=!1,this.unpackAlignment=1}copy(e){return super.copy(e),this.wrapR=e.wrapR,this}};var mt=class i{static{this.prototype.isMatrix4=!0}constructor(e,t,n,s,r,a,o,l,c,h,d,u,f,g,v,_){this.elements=[1,0,0,0,0,1,0,0,0,0,1,0,0,0,0,1],e!==void 0&&this.set(e,t,n,s,r,a,o,l,c,h,d,u,f,g,v,_)}set(e,t,n,s,r,a,o,l,c,h,d,u,f,g,v,_){let p=this.elements;return p[0]=e,p[4]=t,p[8]=n,p[12]=s,p[1]=r,p[5]=a,p[9]=o,p[13]=l,p[2]=c,p[6]=h,p[10]=d,p[14]=u,p[3]=f,p[7]=g,p[11]=v,p[15]=_,this}identity(){return this.set(1,0,0,0,0,1,0,0,0,0,1,0,0,0,0,1),this}clone(){return new i().fromArray(this.elements)}copy(e){let t=this.elements,n=e.elements;return t[0]=n[0],t[1]=n[1],t[2]=n[2],t[3]=n[3],t[4]=n[4],t[5]=n[5],t[6]=n[6],t[7]=n[7],t[8]=n[8],t[9]=n[9],t[10]=n[10],t[11]=n[11],t[12]=n[12],t[13]=n[13],t[14]=n[14],t[15]=n[15],this}copyPosition(e){let t=this.elements,n=e.elements;return t[12]=n[12],t[13]=n[13],t[14]=n[14],this}setFromMatrix3(e){let t=e.elements;return this.set(t[0],t[3],t[6],0,t[1],t[4],t[7],0,t[2],t[5],t[8],0,0,0,0,1),this}extractBasis(e,t,n){return this.determinantAffine()===0?(e.set(1,0,0),t.set(0,1,0),n.set(0,0,1),this):(e.setFromMatrixColumn(this,0),t.setFromMatrixColumn(this,1),n.setFromMatrixColumn(this,2),this)}makeBasis(e,t,n){return this.set(e.x,t.x,n.x,0,e.y,t.y,n.y,0,e.z,t.z,n.z,0,0,0,0,1),this}extractRotation(e){if(e.determinantAffine()===0)return this.identity();let t=this.elements,n=e.elements,s=1/ls.setFromMatrixColumn(e,0).length(),r=1/ls.setFromMatrixColumn(e,1).length(),a=1/ls.setFromMatrixColumn(e,2).length();return t[0]=n[0]*s,t[1]=n[1]*s,t[2]=n[2]*s,t[3]=0,t[4]=n[4]*r,t[5]=n[5]*r,t[6]=n[6]*r,t[7]=0,t[8]=n[8]*a,t[9]=n[9]*a,t[10]=n[10]*a,t[11]=0,t[12]=0,t[13]=0,t[14]=0,t[15]=1,this}makeRotationFromEuler(e){let t=this.elements,n=e.x,s=e.y,r=e.z,a=Math.cos(n),o=Math.sin(n),l=Math.cos(s),c=Math.sin(s),h=Math.cos(r),d=Math.sin(r);if(e.order==="XYZ"){let u=a*h,f=a*d,g=o*h,v=o*d;t[0]=l*h,t[4]=-l*d,t[8]=c,t[1]=f+g*c,t[5]=u-v*c,t[9]=-o*l,t[2]=v-u*c,t[6]=g+f*c,t[10]=a*l}else if(e.order==="YXZ"){let u=l*h,f=l*d,g=c*h,v=c*d;t[0]=u+v*o,t[4]=g*o-f,t[8]=a*c,t[1]=a*d,t[5]=a*h,t[9]=-o,t[2]=f*o-g,t[6]=v+u*o,t[10]=a*l}else if(e.order==="ZXY"){let u=l*h,f=l*d,g=c*h,v=c*d;t[0]=u-v*o,t[4]=-a*d,t[8]=g+f*o,t[1]=f+g*o,t[5]=a*h,t[9]=v-u*o,t[2]=-a*c,t[6]=o,t[10]=a*l}else if(e.order==="ZYX"){let u=a*h,f=a*d,g=o*h,v=o*d;t[0]=l*h,t[4]=g*c-f,t[8]=u*c+v,t[1]=l*d,t[5]=v*c+u,t[9]=f*c-g,t[2]=-c,t[6]=o*l,t[10]=a*l}else if(e.order==="YZX"){let u=a*l,f=a*c,g=o*l,v=o*c;t[0]=l*h,t[4]=v-u*d,t[8]=g*d+f,t[1]=d,t[5]=a*h,t[9]=-o*h,t[2]=-c*h,t[6]=f*d+g,t[10]=u-v*d}else if(e.order==="XZY"){let u=a*l,f=a*c,g=o*l,v=o*c;t[0]=l*h,t[4]=-d,t[8]=c*h,t[1]=u*d+v,t[5]=a*h,t[9]=f*d-g,t[2]=g*d-f,t[6]=o*h,t[10]=v*d+u}return t[3]=0,t[7]=0,t[11]=0,t[12]=0,t[13]=0,t[14]=0,t[15]=1,this}makeRotationFromQuaternion(e){return this.compose(Dp,e,Up)}lookAt(e,t,n){let s=this.elements;return tn.subVectors(e,t),tn.lengthSq()===0&&(tn.z=1),tn.normalize(),vi.crossVectors(n,tn),vi.lengthSq()===0&&(Math.abs(n.z)===1?tn.x+=1e-4:tn.z+=1e-4,tn.normalize(),vi.crossVectors(n,tn)),vi.normalize(),Zr.crossVectors(tn,vi),s[0]=vi.x,s[4]=Zr.x,s[8]=tn.x,s[1]=vi.y,s[5]=Zr.y,s[9]=tn.y,s[2]=vi.z,s[6]=Zr.z,s[10]=tn.z,this}multiply(e){return this.multiplyMatrices(this,e)}premultiply(e){return this.multiplyMatrices(e,this)}multiplyMatrices(e,t){let n=e.elements,s=t.elements,r=this.elements,a=n[0],o=n[4],l=n[8],c=n[12],h=n[1],d=n[5],u=n[9],f=n[13],g=n[2],v=n[6],_=n[10],p=n[14],M=n[3],C=n[7],S=n[11],T=n[15],A=s[0],x=s[4],E=s[8],H=s[12],F=s[1],N=s[5],V=s[9],Z=s[13],w=s[2],U=s[6],k=s[10],B=s[14],z=s[3],P=s[7],X=s[11],q=s[15];return r[0]=a*A+o*F+l*w+c*z,r[4]=a*x+o*N+l*U+c*P,r[8]=a*E+o*V+l*k+c*X,r[12]=a*H+o*Z+l*B+c*q,r[1]=h*A+d*F+u*w+f*z,r[5]=h*x+d*N+u*U+f*P,r[9]=h*E+d*V+u*k+f*X,r[13]=h*H+d*Z+u*B+f*q,r[2]=g*A+v*F+_*w+p*z,r[6]=g*x+v*N+_*U+p*P,r[10]=g*E+v*V+_*k+p*X,r[14]=g*H+v*Z+_*B+p*q,r[3]=M*A+C*F+S*w+T*z,r[7]=M*x+C*N+S*U+T*P,r[11]=M*E+C*V+S*k+T*X,r[15]=M*H+C*Z+S*B+T*q,this}multiplyScalar(e){let t=this.elements;return t[0]*=e,t[4]*=e,t[8]*=e,t[12]*=e,t[1]*=e,t[5]*=e,t[9]*=e,t[13]*=e,t[2]*=e,t[6]*=e,t[10]*=e,t[14]*=e,t[3]*=e,t[7]*=e,t[11]*=e,t[15]*=e,this}determinant(){let e=this.elements,t=e[0],n=e[4],s=e[8],r=e[12],a=e[1],o=e[5],l=e[9],c=e[13],h=e[2],d=e[6],u=e[10],f=e[14],g=e[3],v=e[7],_=e[11],p=e[15],M=l*f-c*u,C=o*f-c*d,S=o*u-l*d,T=a*f-c*h,A=a*u-l*h,x=a*d-o*h;return t*(v*M-_*C+p*S)-n*(g*M-_*T+p*A)+s*(g*C-v*T+p*x)-r*(g*S-v*A+_*x)}determinantAffine(){let e=this.elements,t=e[0],n=e[4],s=e[8],r=e[1],a=e[5],o=e[9],l=e[2],c=e[6],h=e[10];return t*(a*h-o*c)-n*(r*h-o*l)+s*(r*c-a*l)}transpose(){let e=this.elements,t;return t=e[1],e[1]=e[4],e[4]=t,t=e[2],e[2]=e[8],e[8]=t,t=e[6],e[6]=e[9],e[9]=t,t=e[3],e[3]=e[12],e[12]=t,t=e[7],e[7]=e[13],e[13]=t,t=e[11],e[11]=e[14],e[14]=t,this}setPosition(e,t,n){let s=this.elements;return e.isVector3?(s[12]=e.x,s[13]=e.y,s[14]=e.z):(s[12]=e,s[13]=t,s[14]=n),this}invert(){let e=this.elements,t=e[0],n=e[1],s=e[2],r=e[3],a=e[4],o=e[5],l=e[6],c=e[7],h=e[8],d=e[9],u=e[10],f=e[11],g=e[12],v=e[13],_=e[14],p=e[15],M=t*o-n*a,C=t*l-s*a,S=t*c-r*a,T=n*l-s*o,A=n*c-r*o,x=s*c-r*l,E=h*v-d*g,H=h*_-u*g,F=h*p-f*g,N=d*_-u*v,V=d*p-f*v,Z=u*p-f*_,w=M*Z-C*V+S*N+T*F-A*H+x*E;if(w===0)return this.set(0,0,0,0,0,0,0,0,0,0,0,0,0,0,0,0);let U=1/w;return e[0]=(o*Z-l*V+c*N)*U,e[1]=(s*V-n*Z-r*N)*U,e[2]=(v*x-_*A+p*T)*U,e[3]=(u*A-d*x-f*T)*U,e[4]=(l*F-a*Z-c*H)*U,e[5]=(t*Z-s*F+r*H)*U,e[6]=(_*S-g*x-p*C)*U,e[7]=(h*x-u*S+f*C)*U,e[8]=(a*V-o*F+c*E)*U,e[9]=(n*F-t*V-r*E)*U,e[10]=(g*A-v*S+p*M)*U,e[11]=(d*S-h*A-f*M)*U,e[12]=(o*H-a*N-l*E)*U,e[13]=(t*N-n*H+s*E)*U,e[14]=(v*C-g*T-_*M)*U,e[15]=(h*T-d*C+u*M)*U,this}scale(e){let t=this.elements,n=e.x,s=e.y,r=e.z;return t[0]*=n,t[4]*=s,t[8]*=r,t[1]*=n,t[5]*=s,t[9]*=r,t[2]*=n,t[6]*=s,t[10]*=r,t[3]*=n,t[7]*=s,t[11]*=r,this}getMaxScaleOnAxis(){let e=this.elements,t=e[0]*e[0]+e[1]*e[1]+e[2]*e[2],n=e[4]*e[4]+e[5]*e[5]+e[6]*e[6],s=e[8]*e[8]+e[9]*e[9]+e[10]*e[10];return Math.sqrt(Math.max(t,n,s))}makeTranslation(e,t,n){return e.isVector3?this.set(1,0,0,e.x,0,1,0,e.y,0,0,1,e.z,0,0,0,1):this.set(1,0,0,e,0,1,0,t,0,0,1,n,0,0,0,1),this}makeRotationX(e){let t=Math.cos(e),n=Math.sin(e);return this.set(1,0,0,0,0,t,-n,0,0,n,t,0,0,0,0,1),this}makeRotationY(e){let t=Math.cos(e),n=Math.sin(e);return this.set(t,0,n,0,0,1,0,0,-n,0,t,0,0,0,0,1),this}makeRotationZ(e){let t=Math.cos(e),n=Math.sin(e);return this.set(t,-n,0,0,n,t,0,0,0,0,1,0,0,0,0,1),this}makeRotationAxis(e,t){let n=Math.cos(t),s=Math.sin(t),r=1-n,a=e.x,o=e.y,l=e.z,c=r*a,h=r*o;return this.set(c*a+n,c*o-s*l,c*l+s*o,0,c*o+s*l,h*o+n,h*l-s*a,0,c*l-s*o,h*l+s*a,r*l*l+n,0,0,0,0,1),this}makeScale(e,t,n){return this.set(e,0,0,0,0,t,0,0,0,0,n,0,0,0,0,1),this}makeShear(e,t,n,s,r,a){return this.set(1,n,r,0,e,1,a,0,t,s,1,0,0,0,0,1),this}compose(e,t,n){let s=this.elements,r=t._x,a=t._y,o=t._z,l=t._w,c=r+r,h=a+a,d=o+o,u=r*c,f=r*h,g=r*d,v=a*h,_=a*d,p=o*d,M=l*c,C=l*h,S=l*d,T=n.x,A=n.y,x=n.z;return s[0]=(1-(v+p))*T,s[1]=(f+S)*T,s[2]=(g-C)*T,s[3]=0,s[4]=(f-S)*A,s[5]=(1-(u+p))*A,s[6]=(_+M)*A,s[7]=0,s[8]=(g+C)*x,s[9]=(_-M)*x,s[10]=(1-(u+v))*x,s[11]=0,s[12]=e.x,s[13]=e.y,s[14]=e.z,s[15]=1,this}decompose(e,t,n){let s=this.elements;e.x=s[12],e.y=s[13],e.z=s[14];let r=this.determinantAffine();if(r===0)return n.set(1,1,1),t.identity(),this;let a=ls.set(s[0],s[1],s[2]).length(),o=ls.set(s[4],s[5],s[6]).length(),l=ls.set(s[8],s[9],s[10]).length();r<0&&(a=-a),Tn.copy(this);let c=1/a,h=1/o,d=1/l;return Tn.elements[0]*=c,Tn.elements[1]*=c,Tn.elements[2]*=c,Tn.elements[4]*=h,Tn.elements[5]*=h,Tn.elements[6]*=h,Tn.elements[8]*=d,Tn.elements[9]*=d,Tn.elements[10]*=d,t.setFromRotationMatrix(Tn),n.x=a,n.y=o,n.z=l,this}makePerspective(e,t,n,s,r,a,o=xn,l=!1){let c=this.elements,h=2*r/(t-e),d=2*r/(n-s),u=(t+e)/(t-e),f=(n+s)/(n-s),g,v;if(l)g=r/(a-r),v=a*r/(a-r);else if(o===xn)g=-(a+r)/(a-r),v=-2*a*r/(a-r);else if(o===ir)g=-a/(a-r),v=-a*r/(a-r);else throw new Error("THREE.Matrix4.makePerspective(): Invalid coordinate system: "+o);return c[0]=h,c[4]=0,c[8]=u,c[12]=0,c[1]=0,c[5]=d,c[9]=f,c[13]=0,c[2]=0,c[6]=0,c[10]=g,c[14]=v,c[3]=0,c[7]=0,c[11]=-1,c[15]=0,this}makeOrthographic(e,t,n,s,r,a,o=xn,l=!1){let c=this.elements,h=2/(t-e),d=2/(n-s),u=-(t+e)/(t-e),f=-(n+s)/(n-s),g,v;if(l)g=1/(a-r),v=a/(a-r);else if(o===xn)g=-2/(a-r),v=-(a+r)/(a-r);else if(o===ir)g=-1/(a-r),v=-r/(a-r);else throw new Error("THREE.Matrix4.makeOrthographic(): Invalid coordinate system: "+o);return c[0]=h,c[4]=0,c[8]=0,c[12]=u,c[1]=0,c[5]=d,c[9]=0,c[13]=f,c[2]=0,c[6]=0,c[10]=g,c[14]=v,c[3]=0,c[7]=0,c[11]=0,c[15]=1,this}equals(e){let t=this.elements,n=e.elements;for(let s=0;s<16;s++)if(t[s]!==n[s])return!1;return!0}fromArray(e,t=0){for(let n=0;n<16;n++)this.elements[n]=e[n+t];return this}toArray(e=[],t=0){let n=this.elements;return e[t]=n[0],e[t+1]=n[1],e[t+2]=n[2],e[t+3]=n[3],e[t+4]=n[4],e[t+5]=n[5],e[t+6]=n[6],e[t+7]=n[7],e[t+8]=n[8],e[t+9]=n[9],e[t+10]=n[10],e[t+11]=n[11],e[t+12]=n[12],e[t+13]=n[13],e[t+14]=n[14],e[t+15]=n[15],e}},ls=new G,Tn=new mt,Dp=new G(0,0,0),Up=new G(1,1,1),vi=new G,Zr=new G,tn=new G,au=new mt,ou=new yn,wi=class i{constructor(e=0,t=0,n=0,s=i.DEFAULT_ORDER){this.isEuler=!0,this._x=e,this._y=t,this._z=n,this._order=s}get x(){return this._x}set x(e){this._x=e,this._onChangeCallback()}get y(){return this._y}set y(e){this._y=e,this._onChangeCallback()}get z(){return this._z}set z(e){this._z=e,this._onChangeCallback()}get order(){return this._order}set order(e){this._order=e,this._onChangeCallback()}set(e,t,n,s=this._order){return this._x=e,this._y=t,this._z=n,this._order=s,this._onChangeCallback(),this}clone(){return new this.constructor(this._x,this._y,this._z,this._order)}copy(e){return this._x=e._x,this._y=e._y,this._z=e._z,this._order=e._order,this._onChangeCallback(),this}setFromRotationMatrix(e,t=this._order,n=!0){let s=e.elements,r=s[0],a=s[4],o=s[8],l=s[1],c=s[5],h=s[9],d=s[2],u=s[6],f=s[10];switch(t){case"XYZ":this._y=Math.asin(Qe(o,-1,1)),Math.abs(o)<.9999999?(this._x=Math.atan2(-h,f),this._z=Math.atan2(-a,r)):(this._x=Math.atan2(u,c),this._z=0);break;case"YXZ":this._x=Math.asin(-Qe(h,-1,1)),Math.abs(h)<.9999999?(this._y=Math.atan2(o,f),this._z=Math.atan2(l,c)):(this._y=Math.atan2(-d,r),this._z=0);break;case"ZXY":this._x=Math.asin(Qe(u,-1,1)),Math.abs(u)<.9999999?(this._y=Math.atan2(-d,f),this._z=Math.atan2(-a,c)):(this._y=0,this._z=Math.atan2(l,r));break;case"ZYX":this._y=Math.asin(-Qe(d,-1,1)),Math.abs(d)<.9999999?(this._x=Math.atan2(u,f),this._z=Math.atan2(l,r)):(this._x=0,this._z=Math.atan2(-a,c));break;case"YZX":this._z=Math.asin(Qe(l,-1,1)),Math.abs(l)<.9999999?(this._x=Math.atan2(-h,c),this._y=Math.atan2(-d,r)):(this._x=0,this._y=Math.atan2(o,f));break;case"XZY":this._z=Math.asin(-Qe(a,-1,1)),Math.abs(a)<.9999999?(this._x=Math.atan2(u,c),this._y=Math.atan2(o,r)):(this._x=Math.atan2(-h,f),this._y=0);break;default:Oe("Euler: .setFromRotationMatrix() encountered an unknown order: "+t)}return this._order=t,n===!0&&this._onChangeCallback(),this}setFromQuaternion(e,t,n){return au.makeRotationFromQuaternion(e),this.setFromRotationMatrix(au,t,n)}setFromVector3(e,t=this._order){return this.set(e.x,e.y,e.z,t)}reorder(e){return ou.setFromEuler(this),this.setFromQuaternion(ou,e)}equals(e){return e._x===this._x&&e._y===this._y&&e._z===this._z&&e._order===this._order}fromArray(e){return this._x=e[0],this._y=e[1],this._z=e[2],e[3]!==void 0&&(this._order=e[3]),this._onChangeCallback(),this}toArray(e=[],t=0){return e[t]=this._x,e[t+1]=this._y,e[t+2]=this._z,e[t+3]=this._order,e}_onChange(e){return this._onChangeCallback=e,this}_onChangeCallback(){}*[Symbol.iterator](){yield this._x,yield this._y,yield this._z,yield this._order}};wi.DEFAULT_ORDER="XYZ";var ws=class{constructor(){this.mask=1}set(e){this.mask=(1<<e|0)>>>0}enable(e){this.mask|=1<<e|0}enableAll(){this.mask=-1}toggle(e){this.mask^=1<<e|0}disable(e){this.mask&=~(1<<e|0)}disableAll(){this.mask=0}test(e){return(this.mask&e.mask)!==0}isEnabled(e){return(this.mask&(1<<e|0))!==0}},Fp=0,lu=new G,cs=new yn,jn=new mt,Jr=new G,Ys=new G,Op=new G,kp=new yn,cu=new G(1,0,0),hu=new G(0,1,0),uu=new G(0,0,1),du={type:"added"},Bp={type:"removed"},hs={type:"childadded",child:null},wl={type:"childremoved",child:null},ln=class i extends Vn{constructor(){super(),this.isObject3D=!0,Object.defineProperty(this,"id",{value:Fp++}),this.uuid=wr(),this.name="",this.type="Object3D",this.parent=null,this.children=[],this.up=i.DEFAULT_UP.clone();let e=new G,t=new wi,n=new yn,s=new G(1,1,1);function r(){n.setFromEuler(t,!1)}function a(){t.setFromQuaternion(n,void 0,!1)}t._onChange(r),n._onChange(a),Object.defineProperties(this,{position:{configurable:!0,enumerable:!0,value:e},rotation:{configurable:!0,enumerable:!0,value:t},quaternion:{configurable:!0,enumerable:!0,value:n},scale:{configurable:!0,enumerable:!0,value:s},modelViewMatrix:{value:new mt},normalMatrix:{value:new Ge}}),this.matrix=new mt,this.matrixWorld=new mt,this.matrixAutoUpdate=i.DEFAULT_MATRIX_AUTO_UPDATE,this.matrixWorldAutoUpdate=i.DEFAULT_MATRIX_WORLD_AUTO_UPDATE,this.matrixWorldNeedsUpdate=!1,this.layers=new ws,this.visible=!0,this.castShadow=!1,this.receiveShadow=!1,this.frustumCulled=!0,this.renderOrder=0,this.animations=[],this.customDepthMaterial=void 0,this.customDistanceMaterial=void 0,this.static=!1,this.userData={},this.pivot=null}onBeforeShadow(){}onAfterShadow(){}onBeforeRender(){}onAfterRender(){}applyMatrix4(e){this.matrixAutoUpdate&&this.updateMatrix(),this.matrix.premultiply(e),this.matrix.decompose(this.position,this.quaternion,this.scale),this.pivot!==null&&this.position.copy(this.pivot).applyMatrix4(this.matrix).sub(this.pivot)}applyQuaternion(e){return this.quaternion.premultiply(e),this}setRotationFromAxisAngle(e,t){this.quaternion.setFromAxisAngle(e,t)}setRotationFromEuler(e){this.quaternion.setFromEuler(e,!0)}setRotationFromMatrix(e){this.quaternion.setFromRotationMatrix(e)}setRotationFromQuaternion(e){this.quaternion.copy(e)}rotateOnAxis(e,t){return cs.setFromAxisAngle(e,t),this.quaternion.multiply(cs),this}rotateOnWorldAxis(e,t){return cs.setFromAxisAngle(e,t),this.quaternion.premultiply(cs),this}rotateX(e){return this.rotateOnAxis(cu,e)}rotateY(e){return this.rotateOnAxis(hu,e)}rotateZ(e){return this.rotateOnAxis(uu,e)}translateOnAxis(e,t){return lu.copy(e).applyQuaternion(this.quaternion),this.position.add(lu.multiplyScalar(t)),this}translateX(e){return this.translateOnAxis(cu,e)}translateY(e){return this.translateOnAxis(hu,e)}translateZ(e){return this.translateOnAxis(uu,e)}localToWorld(e){return this.updateWorldMatrix(!0,!1),e.applyMatrix4(this.matrixWorld)}worldToLocal(e){return this.updateWorldMatrix(!0,!1),e.applyMatrix4(jn.copy(this.matrixWorld).invert())}lookAt(e,t,n){e.isVector3?Jr.copy(e):Jr.set(e,t,n);let s=this.parent;this.updateWorldMatrix(!0,!1),Ys.setFromMatrixPosition(this.matrixWorld),this.isCamera||this.isLight?jn.lookAt(Ys,Jr,this.up):jn.lookAt(Jr,Ys,this.up),this.quaternion.setFromRotationMatrix(jn),s&&(jn.extractRotation(s.matrixWorld),cs.setFromRotationMatrix(jn),this.quaternion.premultiply(cs.invert()))}add(e){if(arguments.length>1){for(let t=0;t<arguments.length;t++)this.add(arguments[t]);return this}return e===this?(ze("Object3D.add: object can't be added as a child of itself.",e),this):(e&&e.isObject3D?(e.removeFromParent(),e.parent=this,this.children.push(e),e.dispatchEvent(du),hs.child=e,this.dispatchEvent(hs),hs.child=null):ze("Object3D.add: object not an instance of THREE.Object3D.",e),this)}remove(e){if(arguments.length>1){for(let n=0;n<arguments.length;n++)this.remove(arguments[n]);return this}let t=this.children.indexOf(e);return t!==-1&&(e.parent=null,this.children.splice(t,1),e.dispatchEvent(Bp),wl.child=e,this.dispatchEvent(wl),wl.child=null),this}removeFromParent(){let e=this.parent;return e!==null&&e.remove(this),this}clear(){return this.remove(...this.children)}attach(e){return this.updateWorldMatrix(!0,!1),jn.copy(this.matrixWorld).invert(),e.parent!==null&&(e.parent.updateWorldMatrix(!0,!1),jn.multiply(e.parent.matrixWorld)),e.applyMatrix4(jn),e.removeFromParent(),e.parent=this,this.children.push(e),e.updateWorldMatrix(!1,!0),e.dispatchEvent(du),hs.child=e,this.dispatchEvent(hs),hs.child=null,this}getObjectById(e){return this.getObjectByProperty("id",e)}getObjectByName(e){return this.getObjectByProperty("name",e)}getObjectByProperty(e,t){if(this[e]===t)return this;for(let n=0,s=this.children.length;n<s;n++){let a=this.children[n].getObjectByProperty(e,t);if(a!==void 0)return a}}getObjectsByProperty(e,t,n=[]){this[e]===t&&n.push(this);let s=this.children;for(let r=0,a=s.length;r<a;r++)s[r].getObjectsByProperty(e,t,n);return n}getWorldPosition(e){return this.updateWorldMatrix(!0,!1),e.setFromMatrixPosition(this.matrixWorld)}getWorldQuaternion(e){return this.updateWorldMatrix(!0,!1),this.matrixWorld.decompose(Ys,e,Op),e}getWorldScale(e){return this.updateWorldMatrix(!0,!1),this.matrixWorld.decompose(Ys,kp,e),e}getWorldDirection(e){this.updateWorldMatrix(!0,!1);let t=this.matrixWorld.elements;return e.set(t[8],t[9],t[10]).normalize()}raycast(){}intersectsFrustum(){return!0}traverse(e){e(this);let t=this.children;for(let n=0,s=t.length;n<s;n++)t[n].traverse(e)}traverseVisible(e){if(this.visible===!1)return;e(this);let t=this.children;for(let n=0,s=t.length;n<s;n++)t[n].traverseVisible(e)}traverseAncestors(e){let t=this.parent;t!==null&&(e(t),t.traverseAncestors(e))}updateMatrix(){this.matrix.compose(this.position,this.quaternion,this.scale);let e=this.pivot;if(e!==null){let t=e.x,n=e.y,s=e.z,r=this.matrix.elements;r[12]+=t-r[0]*t-r[4]*n-r[8]*s,r[13]+=n-r[1]*t-r[5]*n-r[9]*s,r[14]+=s-r[2]*t-r[6]*n-r[10]*s}this.matrixWorldNeedsUpdate=!0}updateMatrixWorld(e){this.matrixAutoUpdate&&this.updateMatrix(),(this.matrixWorldNeedsUpdate||e)&&(this.matrixWorldAutoUpdate===!0&&(this.parent===null?this.matrixWorld.copy(this.matrix):this.matrixWorld.multiplyMatrices(this.parent.matrixWorld,this.matrix)),this.matrixWorldNeedsUpdate=!1,e=!0);let t=this.children;for(let n=0,s=t.length;n<s;n++)t[n].updateMatrixWorld(e)}updateWorldMatrix(e,t,n=!1){let s=this.parent;if(e===!0&&s!==null&&s.updateWorldMatrix(!0,!1),this.matrixAutoUpdate&&this.updateMatrix(),(this.matrixWorldNeedsUpdate||n)&&(this.matrixWorldAutoUpdate===!0&&(this.parent===null?this.matrixWorld.copy(this.matrix):this.matrixWorld.multiplyMatrices(this.parent.matrixWorld,this.matrix)),this.matrixWorldNeedsUpdate=!1,n=!0),t===!0){let r=this.children;for(let a=0,o=r.length;a<o;a++)r[a].updateWorldMatrix(!1,!0,n)}}toJSON(e){let t=e===void 0||typeof e=="string",n={};t&&(e={geometries:{},materials:{},textures:{},images:{},shapes:{},skeletons:{},animations:{},nodes:{}},n.metadata={version:4.7,type:"Object",generator:"Object3D.toJSON"});let s={};s.uuid=this.uuid,s.type=this.type,s.name=this.name,s.castShadow=this.castShadow,s.receiveShadow=this.receiveShadow,s.visible=this.visible,s.frustumCulled=this.frustumCulled,s.renderOrder=this.renderOrder,s.static=this.static,s.matrixAutoUpdate=this.matrixAutoUpdate,Object.keys(this.userData).length>0&&(s.userData=this.userData),s.layers=this.layers.mask,s.matrix=this.matrix.toArray(),s.up=this.up.toArray(),this.pivot!==null&&(s.pivot=this.pivot.toArray()),this.morphTargetDictionary!==void 0&&(s.morphTargetDictionary=Object.assign({},this.morphTargetDictionary)),this.morphTargetInfluences!==void 0&&(s.morphTargetInfluences=this.morphTargetInfluences.slice()),this.isInstancedMesh&&(s.type="InstancedMesh",s.count=this.count,s.instanceMatrix=this.instanceMatrix.toJSON(),this.instanceColor!==null&&(s.instanceColor=this.instanceColor.toJSON())),this.isBatchedMesh&&(s.type="BatchedMesh",s.perObjectFrustumCulled=this.perObjectFrustumCulled,s.sortObjects=this.sortObjects,s.drawRanges=this._drawRanges,s.reservedRanges=this._reservedRanges,s.geometryInfo=this._geometryInfo.map(o=>({...o,boundingBox:o.boundingBox?o.boundingBox.toJSON():void 0,boundingSphere:o.boundingSphere?o.boundingSphere.toJSON():void 0})),s.instanceInfo=this._instanceInfo.map(o=>({...o})),s.availableInstanceIds=this._availableInstanceIds.slice(),s.availableGeometryIds=this._availableGeometryIds.slice(),s.nextIndexStart=this._nextIndexStart,s.nextVertexStart=this._nextVertexStart,s.geometryCount=this._geometryCount,s.maxInstanceCount=this._maxInstanceCount,s.maxVertexCount=this._maxVertexCount,s.maxIndexCount=this._maxIndexCount,s.geometryInitialized=this._geometryInitialized,s.matricesTexture=this._matricesTexture.toJSON(e),s.indirectTexture=this._indirectTexture.toJSON(e),this._colorsTexture!==null&&(s.colorsTexture=this._colorsTexture.toJSON(e)),this.boundingSphere!==null&&(s.boundingSphere=this.boundingSphere.toJSON()),this.boundingBox!==null&&(s.boundingBox=this.boundingBox.toJSON()));function r(o,l){return o[l.uuid]===void 0&&(o[l.uuid]=l.toJSON(e)),l.uuid}if(this.isScene)this.background&&(this.background.isColor?s.background=this.background.toJSON():this.background.isTexture&&(s.background=this.background.toJSON(e).uuid)),this.environment&&this.environment.isTexture&&this.environment.isRenderTargetTexture!==!0&&(s.environment=this.environment.toJSON(e).uuid);else if(this.isMesh||this.isLine||this.isPoints){s.geometry=r(e.geometries,this.geometry);let o=this.geometry.parameters;if(o!==void 0&&o.shapes!==void 0){let l=o.shapes;if(Array.isArray(l))for(let c=0,h=l.length;c<h;c++){let d=l[c];r(e.shapes,d)}else r(e.shapes,l)}}if(this.isSkinnedMesh&&(s.bindMode=this.bindMode,s.bindMatrix=this.bindMatrix.toArray(),this.skeleton!==void 0&&(r(e.skeletons,this.skeleton),s.skeleton=this.skeleton.uuid)),this.material!==void 0)if(Array.isArray(this.material)){let o=[];for(let l=0,c=this.material.length;l<c;l++)o.push(r(e.materials,this.material[l]));s.material=o}else s.material=r(e.materials,this.material);if(this.children.length>0){s.children=[];for(let o=0;o<this.children.length;o++)s.children.push(this.children[o].toJSON(e).object)}if(this.animations.length>0){s.animations=[];for(let o=0;o<this.animations.length;o++){let l=this.animations[o];s.animations.push(r(e.animations,l))}}if(t){let o=a(e.geometries),l=a(e.materials),c=a(e.textures),h=a(e.images),d=a(e.shapes),u=a(e.skeletons),f=a(e.animations),g=a(e.nodes);o.length>0&&(n.geometries=o),l.length>0&&(n.materials=l),c.length>0&&(n.textures=c),h.length>0&&(n.images=h),d.length>0&&(n.shapes=d),u.length>0&&(n.skeletons=u),f.length>0&&(n.animations=f),g.length>0&&(n.nodes=g)}return n.object=s,n;function a(o){let l=[];for(let c in o){let h=o[c];delete h.metadata,l.push(h)}return l}}clone(e){return new this.constructor().copy(this,e)}copy(e,t=!0){if(this.name=e.name,this.up.copy(e.up),this.position.copy(e.position),this.rotation.order=e.rotation.order,this.quaternion.copy(e.quaternion),this.scale.copy(e.scale),this.pivot=e.pivot!==null?e.pivot.clone():null,this.matrix.copy(e.matrix),this.matrixWorld.copy(e.matrixWorld),this.matrixAutoUpdate=e.matrixAutoUpdate,this.matrixWorldAutoUpdate=e.matrixWorldAutoUpdate,this.matrixWorldNeedsUpdate=e.matrixWorldNeedsUpdate,this.layers.mask=e.layers.mask,this.visible=e.visible,this.castShadow=e.castShadow,this.receiveShadow=e.receiveShadow,this.frustumCulled=e.frustumCulled,this.renderOrder=e.renderOrder,this.static=e.static,this.animations=e.animations.slice(),this.userData=JSON.parse(JSON.stringify(e.userData)),t===!0)for(let n=0;n<e.children.length;n++){let s=e.children[n];this.add(s.clone())}return this}dispose(){this.dispatchEvent({type:"dispose"})}};ln.DEFAULT_UP=new G(0,1,0);ln.DEFAULT_MATRIX_AUTO_UPDATE=!0;ln.DEFAULT_MATRIX_WORLD_AUTO_UPDATE=!0;var Zt=class extends ln{constructor(){super(),this.isGroup=!0,this.type="Group"}},zp={type:"move"},Ts=class{constructor(){this._targetRay=null,this._grip=null,this._hand=null}getHandSpace(){return this._hand===null&&(this._hand=new Zt,this._hand.matrixAutoUpdate=!1,this._hand.visible=!1,this._hand.joints={},this._hand.inputState={pinching:!1}),this._hand}getTargetRaySpace(){return this._targetRay===null&&(this._targetRay=new Zt,this._targetRay.matrixAutoUpdate=!1,this._targetRay.visible=!1,this._targetRay.hasLinearVelocity=!1,this._targetRay.linearVelocity=new G,this._targetRay.hasAngularVelocity=!1,this._targetRay.angularVelocity=new G),this._targetRay}getGripSpace(){return this._grip===null&&(this._grip=new Zt,this._grip.matrixAutoUpdate=!1,this._grip.visible=!1,this._grip.hasLinearVelocity=!1,this._grip.linearVelocity=new G,this._grip.hasAngularVelocity=!1,this._grip.angularVelocity=new G,this._grip.eventsEnabled=!1),this._grip}dispatchEvent(e){return this._targetRay!==null&&this._targetRay.dispatchEvent(e),this._grip!==null&&this._grip.dispatchEvent(e),this._hand!==null&&this._hand.dispatchEvent(e),this}connect(e){if(e&&e.hand){let t=this._hand;if(t)for(let n of e.hand.values())this._getHandJoint(t,n)}return this.dispatchEvent({type:"connected",data:e}),this}disconnect(e){return this.dispatchEvent({type:"disconnected",data:e}),this._targetRay!==null&&(this._targetRay.visible=!1),this._grip!==null&&(this._grip.visible=!1),this._hand!==null&&(this._hand.visible=!1),this}update(e,t,n){let s=null,r=null,a=null,o=this._targetRay,l=this._grip,c=this._hand;if(e&&t.session.visibilityState!=="visible-blurred"){if(c&&e.hand){a=!0;for(let v of e.hand.values()){let _=t.getJointPose(v,n),p=this._getHandJoint(c,v);_!==null&&(p.matrix.fromArray(_.transform.matrix),p.matrix.decompose(p.position,p.quaternion,p.scale),p.matrixWorldNeedsUpdate=!0,p.jointRadius=_.radius),p.visible=_!==null}let h=c.joints["index-finger-tip"],d=c.joints["thumb-tip"],u=h.position.distanceTo(d.position),f=.02,g=.005;c.inputState.pinching&&u>f+g?(c.inputState.pinching=!1,this.dispatchEvent({type:"pinchend",handedness:e.handedness,target:this})):!c.inputState.pinching&&u<=f-g&&(c.inputState.pinching=!0,this.dispatchEvent({type:"pinchstart",handedness:e.handedness,target:this}))}else l!==null&&e.gripSpace&&(r=t.getPose(e.gripSpace,n),r!==null&&(l.matrix.fromArray(r.transform.matrix),l.matrix.decompose(l.position,l.quaternion,l.scale),l.matrixWorldNeedsUpdate=!0,r.linearVelocity?(l.hasLinearVelocity=!0,l.linearVelocity.copy(r.linearVelocity)):l.hasLinearVelocity=!1,r.angularVelocity?(l.hasAngularVelocity=!0,l.angularVelocity.copy(r.angularVelocity)):l.hasAngularVelocity=!1,l.eventsEnabled&&l.dispatchEvent({type:"gripUpdated",data:e,target:this})));o!==null&&(s=t.getPose(e.targetRaySpace,n),s===null&&r!==null&&(s=r),s!==null&&(o.matrix.fromArray(s.transform.matrix),o.matrix.decompose(o.position,o.quaternion,o.scale),o.matrixWorldNeedsUpdate=!0,s.linearVelocity?(o.hasLinearVelocity=!0,o.linearVelocity.copy(s.linearVelocity)):o.hasLinearVelocity=!1,s.angularVelocity?(o.hasAngularVelocity=!0,o.angularVelocity.copy(s.angularVelocity)):o.hasAngularVelocity=!1,this.dispatchEvent(zp)))}return o!==null&&(o.visible=s!==null),l!==null&&(l.visible=r!==null),c!==null&&(c.visible=a!==null),this}_getHandJoint(e,t){if(e.joints[t.jointName]===void 0){let n=new Zt;n.matrixAutoUpdate=!1,n.visible=!1,e.joints[t.jointName]=n,e.add(n)}return e.joints[t.jointName]}},fd={aliceblue:15792383,antiquewhite:16444375,aqua:65535,aquamarine:8388564,azure:15794175,beige:16119260,bisque:16770244,black:0,blanchedalmond:16772045,blue:255,blueviolet:9055202,brown:10824234,burlywood:14596231,cadetblue:6266528,chartreuse:8388352,chocolate:13789470,coral:16744272,cornflowerblue:6591981,cornsilk:16775388,crimson:14423100,cyan:65535,darkblue:139,darkcyan:35723,darkgoldenrod:12092939,darkgray:11119017,darkgreen:25600,darkgrey:11119017,darkkhaki:12433259,darkmagenta:9109643,darkolivegreen:5597999,darkorange:16747520,darkorchid:10040012,darkred:9109504,darksalmon:15308410,darkseagreen:9419919,darkslateblue:4734347,darkslategray:3100495,darkslategrey:3100495,darkturquoise:52945,darkviolet:9699539,deeppink:16716947,deepskyblue:49151,dimgray:6908265,dimgrey:6908265,dodgerblue:2003199,firebrick:11674146,floralwhite:16775920,forestgreen:2263842,fuchsia:16711935,gainsboro:14474460,ghostwhite:16316671,gold:16766720,goldenrod:14329120,gray:8421504,green:32768,greenyellow:11403055,grey:8421504,honeydew:15794160,hotpink:16738740,indianred:13458524,indigo:4915330,ivory:16777200,khaki:15787660,lavender:15132410,lavenderblush:16773365,lawngreen:8190976,lemonchiffon:16775885,lightblue:11393254,lightcoral:15761536,lightcyan:14745599,lightgoldenrodyellow:16448210,lightgray:13882323,lightgreen:9498256,lightgrey:13882323,lightpink:16758465,lightsalmon:16752762,lightseagreen:2142890,lightskyblue:8900346,lightslategray:7833753,lightslategrey:7833753,lightsteelblue:11584734,lightyellow:16777184,lime:65280,limegreen:3329330,linen:16445670,magenta:16711935,maroon:8388608,mediumaquamarine:6737322,mediumblue:205,mediumorchid:12211667,mediumpurple:9662683,mediumseagreen:3978097,mediumslateblue:8087790,mediumspringgreen:64154,mediumturquoise:4772300,mediumvioletred:13047173,midnightblue:1644912,mintcream:16121850,mistyrose:16770273,moccasin:16770229,navajowhite:16768685,navy:128,oldlace:16643558,olive:8421376,olivedrab:7048739,orange:16753920,orangered:16729344,orchid:14315734,palegoldenrod:15657130,palegreen:10025880,paleturquoise:11529966,palevioletred:14381203,papayawhip:16773077,peachpuff:16767673,peru:13468991,pink:16761035,plum:14524637,powderblue:11591910,purple:8388736,rebeccapurple:6697881,red:16711680,rosybrown:12357519,royalblue:4286945,saddlebrown:9127187,salmon:16416882,sandybrown:16032864,seagreen:3050327,seashell:16774638,sienna:10506797,silver:12632256,skyblue:8900331,slateblue:6970061,slategray:7372944,slategrey:7372944,snow:16775930,springgreen:65407,steelblue:4620980,tan:13808780,teal:32896,thistle:14204888,tomato:16737095,turquoise:4251856,violet:15631086,wheat:16113331,white:16777215,whitesmoke:16119285,yellow:16776960,yellowgreen:10145074},xi={h:0,s:0,l:0},Kr={h:0,s:0,l:0};function Tl(i,e,t){return t<0&&(t+=1),t>1&&(t-=1),t<1/6?i+(e-i)*6*t:t<1/2?e:t<2/3?i+(e-i)*6*(2/3-t):i}var je=class{constructor(e,t,n){return this.isColor=!0,this.r=1,this.g=1,this.b=1,this.set(e,t,n)}set(e,t,n){if(t===void 0&&n===void 0){let s=e;s&&s.isColor?this.copy(s):typeof s=="number"?this.setHex(s):typeof s=="string"&&this.setStyle(s)}else this.setRGB(e,t,n);return this}setScalar(e){return this.r=e,this.g=e,this.b=e,this}setHex(e,t=sn){return e=Math.floor(e),this.r=(e>>16&255)/255,this.g=(e>>8&255)/255,this.b=(e&255)/255,Ke.colorSpaceToWorking(this,t),this}setRGB(e,t,n,s=Ke.workingColorSpace){return this.r=e,this.g=t,this.b=n,Ke.colorSpaceToWorking(this,s),this}setHSL(e,t,n,s=Ke.workingColorSpace){if(e=Rp(e,1),t=Qe(t,0,1),n=Qe(n,0,1),t===0)this.r=this.g=this.b=n;else{let r=n<=.5?n*(1+t):n+t-n*t,a=2*n-r;this.r=Tl(a,r,e+1/3),this.g=Tl(a,r,e),this.b=Tl(a,r,e-1/3)}return Ke.colorSpaceToWorking(this,s),this}setStyle(e,t=sn){function n(r){r!==void 0&&parseFloat(r)<1&&Oe("Color: Alpha component of "+e+" will be ignored.")}let s;if(s=/^(\w+)\(([^\)]*)\)/.exec(e)){let r,a=s[1],o=s[2];switch(a){case"rgb":case"rgba":if(r=/^\s*(\d+)\s*,\s*(\d+)\s*,\s*(\d+)\s*(?:,\s*(\d+(?:\.\d+)?|\.\d+)\s*)?$/.exec(o))return n(r[4]),this.setRGB(Math.min(255,parseInt(r[1],10))/255,Math.min(255,parseInt(r[2],10))/255,Math.min(255,parseInt(r[3],10))/255,t);if(r=/^\s*(\d+(?:\.\d+)?|\.\d+)\%\s*,\s*(\d+(?:\.\d+)?|\.\d+)\%\s*,\s*(\d+(?:\.\d+)?|\.\d+)\%\s*(?:,\s*(\d+(?:\.\d+)?|\.\d+)\s*)?$/.exec(o))return n(r[4]),this.setRGB(Math.min(100,parseFloat(r[1]))/100,Math.min(100,parseFloat(r[2]))/100,Math.min(100,parseFloat(r[3]))/100,t);break;case"hsl":case"hsla":if(r=/^\s*([+-]?(?:\d+(?:\.\d+)?|\.\d+))\s*,\s*(\d+(?:\.\d+)?|\.\d+)\%\s*,\s*(\d+(?:\.\d+)?|\.\d+)\%\s*(?:,\s*(\d+(?:\.\d+)?|\.\d+)\s*)?$/.exec(o))return n(r[4]),this.setHSL(parseFloat(r[1])/360,parseFloat(r[2])/100,parseFloat(r[3])/100,t);break;default:Oe("Color: Unknown color model "+e)}}else if(s=/^\#([A-Fa-f\d]+)$/.exec(e)){let r=s[1],a=r.length;if(a===3)return this.setRGB(parseInt(r.charAt(0),16)/15,parseInt(r.charAt(1),16)/15,parseInt(r.charAt(2),16)/15,t);if(a===6)return this.setHex(parseInt(r,16),t);Oe("Color: Invalid hex color "+e)}else if(e&&e.length>0)return this.setColorName(e,t);return this}setColorName(e,t=sn){let n=fd[e.toLowerCase()];return n!==void 0?this.setHex(n,t):Oe("Color: Unknown color "+e),this}clone(){return new this.constructor(this.r,this.g,this.b)}copy(e){return this.r=e.r,this.g=e.g,this.b=e.b,this}copySRGBToLinear(e){return this.r=ii(e.r),this.g=ii(e.g),this.b=ii(e.b),this}copyLinearToSRGB(e){return this.r=ys(e.r),this.g=ys(e.g),this.b=ys(e.b),this}convertSRGBToLinear(){return this.copySRGBToLinear(this),this}convertLinearToSRGB(){return this.copyLinearToSRGB(this),this}getHex(e=sn){return Ke.workingToColorSpace(zt.copy(this),e),Math.round(Qe(zt.r*255,0,255))*65536+Math.round(Qe(zt.g*255,0,255))*256+Math.round(Qe(zt.b*255,0,255))}getHexString(e=sn){return("000000"+this.getHex(e).toString(16)).slice(-6)}getHSL(e,t=Ke.workingColorSpace){Ke.workingToColorSpace(zt.copy(this),t);let n=zt.r,s=zt.g,r=zt.b,a=Math.max(n,s,r),o=Math.min(n,s,r),l,c,h=(o+a)/2;if(o===a)l=0,c=0;else{let d=a-o;switch(c=h<=.5?d/(a+o):d/(2-a-o),a){case n:l=(s-r)/d+(s<r?6:0);break;case s:l=(r-n)/d+2;break;case r:l=(n-s)/d+4;break}l/=6}return e.h=l,e.s=c,e.l=h,e}getRGB(e,t=Ke.workingColorSpace){return Ke.workingToColorSpace(zt.copy(this),t),e.r=zt.r,e.g=zt.g,e.b=zt.b,e}getStyle(e=sn){Ke.workingToColorSpace(zt.copy(this),e);let t=zt.r,n=zt.g,s=zt.b;return e!==sn?`color(${e} ${t.toFixed(3)} ${n.toFixed(3)} ${s.toFixed(3)})`:`rgb(${Math.round(t*255)},${Math.round(n*255)},${Math.round(s*255)})`}offsetHSL(e,t,n){return this.getHSL(xi),this.setHSL(xi.h+e,xi.s+t,xi.l+n)}add(e){return this.r+=e.r,this.g+=e.g,this.b+=e.b,this}addColors(e,t){return this.r=e.r+t.r,this.g=e.g+t.g,this.b=e.b+t.b,this}addScalar(e){return this.r+=e,this.g+=e,this.b+=e,this}sub(e){return this.r=Math.max(0,this.r-e.r),this.g=Math.max(0,this.g-e.g),this.b=Math.max(0,this.b-e.b),this}multiply(e){return this.r*=e.r,this.g*=e.g,this.b*=e.b,this}multiplyScalar(e){return this.r*=e,this.g*=e,this.b*=e,this}lerp(e,t){return this.r+=(e.r-this.r)*t,this.g+=(e.g-this.g)*t,this.b+=(e.b-this.b)*t,this}lerpColors(e,t,n){return this.r=e.r+(t.r-e.r)*n,this.g=e.g+(t.g-e.g)*n,this.b=e.b+(t.b-e.b)*n,this}lerpHSL(e,t){this.getHSL(xi),e.getHSL(Kr);let n=xl(xi.h,Kr.h,t),s=xl(xi.s,Kr.s,t),r=xl(xi.l,Kr.l,t);return this.setHSL(n,s,r),this}setFromVector3(e){return this.r=e.x,this.g=e.y,this.b=e.z,this}applyMatrix3(e){let t=this.r,n=this.g,s=this.b,r=e.elements;return this.r=r[0]*t+r[3]*n+r[6]*s,this.g=r[1]*t+r[4]*n+r[7]*s,this.b=r[2]*t+r[5]*n+r[8]*s,this}equals(e){return e.r===this.r&&e.g===this.g&&e.b===this.b}fromArray(e,t=0){return this.r=e[t],this.g=e[t+1],this.b=e[t+2],this}toArray(e=[],t=0){return e[t]=this.r,e[t+1]=this.g,e[t+2]=this.b,e}fromBufferAttribute(e,t){return this.r=e.getX(t),this.g=e.getY(t),this.b=e.getZ(t),this}toJSON(){return this.getHex()}*[Symbol.iterator](){yield this.r,yield this.g,yield this.b}},zt=new je;je.NAMES=fd;var ar=class extends ln{constructor(){super(),this.isScene=!0,this.type="Scene",this.background=null,this.environment=null,this.fog=null,this.backgroundBlurriness=0,this.backgroundIntensity=1,this.backgroundRotation=new wi,this.environmentIntensity=1,this.environmentRotation=new wi,this.overrideMaterial=null,typeof __THREE_DEVTOOLS__<"u"&&__THREE_DEVTOOLS__.dispatchEvent(new CustomEvent("observe",{detail:this}))}copy(e,t){return super.copy(e,t),this.background=e.background!==null?e.background.clone():null,this.environment=e.environment!==null?e.environment.clone():null,this.fog=e.fog!==null?e.fog.clone():null,this.backgroundBlurriness=e.backgroundBlurriness,this.backgroundIntensity=e.backgroundIntensity,this.backgroundRotation.copy(e.backgroundRotation),this.environmentIntensity=e.environmentIntensity,this.environmentRotation.copy(e.environmentRotation),this.overrideMaterial=e.overrideMaterial!==null?e.overrideMaterial.clone():null,this.matrixAutoUpdate=e.matrixAutoUpdate,this}toJSON(e){let t=super.toJSON(e);return this.fog!==null&&(t.object.fog=this.fog.toJSON()),t.object.backgroundBlurriness=this.backgroundBlurriness,t.object.backgroundIntensity=this.backgroundIntensity,t.object.backgroundRotation=this.backgroundRotation.toArray(),t.object.environmentIntensity=this.environmentIntensity,t.object.environmentRotation=this.environmentRotation.toArray(),t}},En=new G,Qn=new G,El=new G,ei=new G,us=new G,ds=new G,fu=new G,Al=new G,Rl=new G,Cl=new G,Pl=new xt,Il=new xt,Ll=new xt,Si=class i{constructor(e=new G,t=new G,n=new G){this.a=e,this.b=t,this.c=n}static getNormal(e,t,n,s){s.subVectors(n,t),En.subVectors(e,t),s.cross(En);let r=s.lengthSq();return r>0?s.multiplyScalar(1/Math.sqrt(r)):s.set(0,0,0)}static getBarycoord(e,t,n,s,r){En.subVectors(s,t),Qn.subVectors(n,t),El.subVectors(e,t);let a=En.dot(En),o=En.dot(Qn),l=En.dot(El),c=Qn.dot(Qn),h=Qn.dot(El),d=a*c-o*o;if(d===0)return r.set(0,0,0),null;let u=1/d,f=(c*l-o*h)*u,g=(a*h-o*l)*u;return r.set(1-f-g,g,f)}static containsPoint(e,t,n,s){return this.getBarycoord(e,t,n,s,ei)===null?!1:ei.x>=0&&ei.y>=0&&ei.x+ei.y<=1}static getInterpolation(e,t,n,s,r,a,o,l){return this.getBarycoord(e,t,n,s,ei)===null?(l.x=0,l.y=0,"z"in l&&(l.z=0),"w"in l&&(l.w=0),null):(l.setScalar(0),l.addScaledVector(r,ei.x),l.addScaledVector(a,ei.y),l.addScaledVector(o,ei.z),l)}static getInterpolatedAttribute(e,t,n,s,r,a){return Pl.setScalar(0),Il.setScalar(0),Ll.setScalar(0),Pl.fromBufferAttribute(e,t),Il.fromBufferAttribute(e,n),Ll.fromBufferAttribute(e,s),a.setScalar(0),a.addScaledVector(Pl,r.x),a.addScaledVector(Il,r.y),a.addScaledVector(Ll,r.z),a}static isFrontFacing(e,t,n,s){return En.subVectors(n,t),Qn.subVectors(e,t),En.cross(Qn).dot(s)<0}set(e,t,n){return this.a.copy(e),this.b.copy(t),this.c.copy(n),this}setFromPointsAndIndices(e,t,n,s){return this.a.copy(e[t]),this.b.copy(e[n]),this.c.copy(e[s]),this}setFromAttributeAndIndices(e,t,n,s){return this.a.fromBufferAttribute(e,t),this.b.fromBufferAttribute(e,n),this.c.fromBufferAttribute(e,s),this}clone(){return new this.constructor().copy(this)}copy(e){return this.a.copy(e.a),this.b.copy(e.b),this.c.copy(e.c),this}getArea(){return En.subVectors(this.c,this.b),Qn.subVectors(this.a,this.b),En.cross(Qn).length()*.5}getMidpoint(e){return e.addVectors(this.a,this.b).add(this.c).multiplyScalar(1/3)}getNormal(e){return i.getNormal(this.a,this.b,this.c,e)}getPlane(e){return e.setFromCoplanarPoints(this.a,this.b,this.c)}getBarycoord(e,t){return i.getBarycoord(e,this.a,this.b,this.c,t)}getInterpolation(e,t,n,s,r){return i.getInterpolation(e,this.a,this.b,this.c,t,n,s,r)}containsPoint(e){return i.containsPoint(e,this.a,this.b,this.c)}isFrontFacing(e){return i.isFrontFacing(this.a,this.b,this.c,e)}intersectsBox(e){return e.intersectsTriangle(this)}closestPointToPoint(e,t){let n=this.a,s=this.b,r=this.c,a,o;us.subVectors(s,n),ds.subVectors(r,n),Al.subVectors(e,n);let l=us.dot(Al),c=ds.dot(Al);if(l<=0&&c<=0)return t.copy(n);Rl.subVectors(e,s);let h=us.dot(Rl),d=ds.dot(Rl);if(h>=0&&d<=h)return t.copy(s);let u=l*d-h*c;if(u<=0&&l>=0&&h<=0&&l-h>0)return a=l/(l-h),t.copy(n).addScaledVector(us,a);Cl.subVectors(e,r);let f=us.dot(Cl),g=ds.dot(Cl);if(g>=0&&f<=g)return t.copy(r);let v=f*c-l*g;if(v<=0&&c>=0&&g<=0)return o=c/(c-g),t.copy(n).addScaledVector(ds,o);let _=h*g-f*d;if(_<=0&&d-h>=0&&f-g>=0)return fu.subVectors(r,s),o=(d-h)/(d-h+(f-g)),t.copy(s).addScaledVector(fu,o);let p=1/(_+v+u);return a=v*p,o=u*p,t.copy(n).addScaledVector(us,a).addScaledVector(ds,o)}equals(e){return e.a.equals(this.a)&&e.b.equals(this.b)&&e.c.equals(this.c)}},Ti=class{constructor(e=new G(1/0,1/0,1/0),t=new G(-1/0,-1/0,-1/0)){this.isBox3=!0,this.min=e,this.max=t}set(e,t){return this.min.copy(e),this.max.copy(t),this}setFromArray(e){this.makeEmpty();for(let t=0,n=e.length;t<n;t+=3)this.expandByPoint(An.fromArray(e,t));return this}setFromBufferAttribute(e){this.makeEmpty();for(let t=0,n=e.count;t<n;t++)this.expandByPoint(An.fromBufferAttribute(e,t));return this}setFromPoints(e){this.makeEmpty();for(let t=0,n=e.length;t<n;t++)this.expandByPoint(e[t]);return this}setFromCenterAndSize(e,t){let n=An.copy(t).multiplyScalar(.5);return this.min.copy(e).sub(n),this.max.copy(e).add(n),this}setFromObject(e,t=!1){return this.makeEmpty(),this.expandByObject(e,t)}clone(){return new this.constructor().copy(this)}copy(e){return this.min.copy(e.min),this.max.copy(e.max),this}makeEmpty(){return this.min.x=this.min.y=this.min.z=1/0,this.max.x=this.max.y=this.max.z=-1/0,this}isEmpty(){return this.max.x<this.min.x||this.max.y<this.min.y||this.max.z<this.min.z}getCenter(e){return this.isEmpty()?e.set(0,0,0):e.addVectors(this.min,this.max).multiplyScalar(.5)}getSize(e){return this.isEmpty()?e.set(0,0,0):e.subVectors(this.max,this.min)}expandByPoint(e){return this.min.min(e),this.max.max(e),this}expandByVector(e){return this.min.sub(e),this.max.add(e),this}expandByScalar(e){return this.min.addScalar(-e),this.max.addScalar(e),this}expandByObject(e,t=!1){e.updateWorldMatrix(!1,!1);let n=e.geometry;if(n!==void 0){let r=n.getAttribute("position");if(t===!0&&r!==void 0&&e.isInstancedMesh!==!0&&e.isBatchedMesh!==!0)for(let a=0,o=r.count;a<o;a++)e.isMesh===!0?e.getVertexPosition(a,An):An.fromBufferAttribute(r,a),An.applyMatrix4(e.matrixWorld),this.expandByPoint(An);else e.boundingBox!==void 0?(e.boundingBox===null&&e.computeBoundingBox(),jr.copy(e.boundingBox)):(n.boundingBox===null&&n.computeBoundingBox(),jr.copy(n.boundingBox)),jr.applyMatrix4(e.matrixWorld),this.union(jr)}let s=e.children;for(let r=0,a=s.length;r<a;r++)this.expandByObject(s[r],t);return this}containsPoint(e){return e.x>=this.min.x&&e.x<=this.max.x&&e.y>=this.min.y&&e.y<=this.max.y&&e.z>=this.min.z&&e.z<=this.max.z}containsBox(e){return this.min.x<=e.min.x&&e.max.x<=this.max.x&&this.min.y<=e.min.y&&e.max.y<=this.max.y&&this.min.z<=e.min.z&&e.max.z<=this.max.z}getParameter(e,t){return t.set((e.x-this.min.x)/(this.max.x-this.min.x),(e.y-this.min.y)/(this.max.y-this.min.y),(e.z-this.min.z)/(this.max.z-this.min.z))}intersectsBox(e){return e.max.x>=this.min.x&&e.min.x<=this.max.x&&e.max.y>=this.min.y&&e.min.y<=this.max.y&&e.max.z>=this.min.z&&e.min.z<=this.max.z}intersectsSphere(e){return this.clampPoint(e.center,An),An.distanceToSquared(e.center)<=e.radius*e.radius}intersectsPlane(e){let t,n;return e.normal.x>0?(t=e.normal.x*this.min.x,n=e.normal.x*this.max.x):(t=e.normal.x*this.max.x,n=e.normal.x*this.min.x),e.normal.y>0?(t+=e.normal.y*this.min.y,n+=e.normal.y*this.max.y):(t+=e.normal.y*this.max.y,n+=e.normal.y*this.min.y),e.normal.z>0?(t+=e.normal.z*this.min.z,n+=e.normal.z*this.max.z):(t+=e.normal.z*this.max.z,n+=e.normal.z*this.min.z),t<=-e.constant&&n>=-e.constant}intersectsTriangle(e){if(this.isEmpty())return!1;this.getCenter(Zs),Qr.subVectors(this.max,Zs),fs.subVectors(e.a,Zs),ps.subVectors(e.b,Zs),ms.subVectors(e.c,Zs),yi.subVectors(ps,fs),bi.subVectors(ms,ps),Hi.subVectors(fs,ms);let t=[0,-yi.z,yi.y,0,-bi.z,bi.y,0,-Hi.z,Hi.y,yi.z,0,-yi.x,bi.z,0,-bi.x,Hi.z,0,-Hi.x,-yi.y,yi.x,0,-bi.y,bi.x,0,-Hi.y,Hi.x,0];return!Nl(t,fs,ps,ms,Qr)||(t=[1,0,0,0,1,0,0,0,1],!Nl(t,fs,ps,ms,Qr))?!1:(ea.crossVectors(yi,bi),t=[ea.x,ea.y,ea.z],Nl(t,fs,ps,ms,Qr))}clampPoint(e,t){return t.copy(e).clamp(this.min,this.max)}distanceToPoint(e){return this.clampPoint(e,An).distanceTo(e)}getBoundingSphere(e){return this.isEmpty()?e.makeEmpty():(this.getCenter(e.center),e.radius=this.getSize(An).length()*.5),e}intersect(e){return this.min.max(e.min),this.max.min(e.max),this.isEmpty()&&this.makeEmpty(),this}union(e){return this.min.min(e.min),this.max.max(e.max),this}applyMatrix4(e){return this.isEmpty()?this:(ti[0].set(this.min.x,this.min.y,this.min.z).applyMatrix4(e),ti[1].set(this.min.x,this.min.y,this.max.z).applyMatrix4(e),ti[2].set(this.min.x,this.max.y,this.min.z).applyMatrix4(e),ti[3].set(this.min.x,this.max.y,this.max.z).applyMatrix4(e),ti[4].set(this.max.x,this.min.y,this.min.z).applyMatrix4(e),ti[5].set(this.max.x,this.min.y,this.max.z).applyMatrix4(e),ti[6].set(this.max.x,this.max.y,this.min.z).applyMatrix4(e),ti[7].set(this.max.x,this.max.y,this.max.z).applyMatrix4(e),this.setFromPoints(ti),this)}translate(e){return this.min.add(e),this.max.add(e),this}equals(e){return e.min.equals(this.min)&&e.max.equals(this.max)}toJSON(){return{min:this.min.toArray(),max:this.max.toArray()}}fromJSON(e){return this.min.fromArray(e.min),this.max.fromArray(e.max),this}},ti=[new G,new G,new G,new G,new G,new G,new G,new G],An=new G,jr=new Ti,fs=new G,ps=new G,ms=new G,yi=new G,bi=new G,Hi=new G,Zs=new G,Qr=new G,ea=new G,Wi=new G;function Nl(i,e,t,n,s){for(let r=0,a=i.length-3;r<=a;r+=3){Wi.fromArray(i,r);let o=s.x*Math.abs(Wi.x)+s.y*Math.abs(Wi.y)+s.z*Math.abs(Wi.z),l=e.dot(Wi),c=t.dot(Wi),h=n.dot(Wi);if(Math.max(-Math.max(l,c,h),Math.min(l,c,h))>o)return!1}return!0}var wt=new G,ta=new et,Gp=0,an=class extends Vn{constructor(e,t,n=!1){if(super(),Array.isArray(e))throw new TypeError("THREE.BufferAttribute: array should be a Typed Array.");this.isBufferAttribute=!0,Object.defineProperty(this,"id",{value:Gp++}),this.name="",this.array=e,this.itemSize=t,this.count=e!==void 0?e.length/t:0,this.normalized=n,this.usage=od,this.updateRanges=[],this.gpuType=In,this.version=0,this._normalizationScale=e!==void 0?bc(e):void 0}onUploadCallback(){}set needsUpdate(e){e===!0&&this.version++}setUsage(e){return this.usage=e,this}addUpdateRange(e,t){this.updateRanges.push({start:e,count:t})}clearUpdateRanges(){this.updateRanges.length=0}copy(e){return this.name=e.name,this.array=new e.array.constructor(e.array),this.itemSize=e.itemSize,this.count=e.count,this.normalized=e.normalized,this.usage=e.usage,this.gpuType=e.gpuType,this._normalizationScale=e._normalizationScale,this}copyAt(e,t,n){e*=this.itemSize,n*=t.itemSize;for(let s=0,r=this.itemSize;s<r;s++)this.array[e+s]=t.array[n+s];return this}copyArray(e){return this.array.set(e),this}applyMatrix3(e){if(this.itemSize===2)for(let t=0,n=this.count;t<n;t++)ta.fromBufferAttribute(this,t),ta.applyMatrix3(e),this.setXY(t,ta.x,ta.y);else if(this.itemSize===3)for(let t=0,n=this.count;t<n;t++)wt.fromBufferAttribute(this,t),wt.applyMatrix3(e),this.setXYZ(t,wt.x,wt.y,wt.z);return this}applyMatrix4(e){for(let t=0,n=this.count;t<n;t++)wt.fromBufferAttribute(this,t),wt.applyMatrix4(e),this.setXYZ(t,wt.x,wt.y,wt.z);return this}applyNormalMatrix(e){for(let t=0,n=this.count;t<n;t++)wt.fromBufferAttribute(this,t),wt.applyNormalMatrix(e),this.setXYZ(t,wt.x,wt.y,wt.z);return this}transformDirection(e){for(let t=0,n=this.count;t<n;t++)wt.fromBufferAttribute(this,t),wt.transformDirection(e),this.setXYZ(t,wt.x,wt.y,wt.z);return this}set(e,t=0){return this.array.set(e,t),this}getComponent(e,t){let n=this.array[e*this.itemSize+t];return this.normalized&&(n=this._denormalize(n)),n}setComponent(e,t,n){return this.normalized&&(n=this._normalize(n)),this.array[e*this.itemSize+t]=n,this}getX(e){let t=this.array[e*this.itemSize];return this.normalized&&(t=this._denormalize(t)),t}setX(e,t){return this.normalized&&(t=this._normalize(t)),this.array[e*this.itemSize]=t,this}getY(e){let t=this.array[e*this.itemSize+1];return this.normalized&&(t=this._denormalize(t)),t}setY(e,t){return this.normalized&&(t=this._normalize(t)),this.array[e*this.itemSize+1]=t,this}getZ(e){let t=this.array[e*this.itemSize+2];return this.normalized&&(t=this._denormalize(t)),t}setZ(e,t){return this.normalized&&(t=this._normalize(t)),this.array[e*this.itemSize+2]=t,this}getW(e){let t=this.array[e*this.itemSize+3];return this.normalized&&(t=this._denormalize(t)),t}setW(e,t){return this.normalized&&(t=this._normalize(t)),this.array[e*this.itemSize+3]=t,this}setXY(e,t,n){return e*=this.itemSize,this.normalized&&(t=this._normalize(t),n=this._normalize(n)),this.array[e+0]=t,this.array[e+1]=n,this}setXYZ(e,t,n,s){return e*=this.itemSize,this.normalized&&(t=this._normalize(t),n=this._normalize(n),s=this._normalize(s)),this.array[e+0]=t,this.array[e+1]=n,this.array[e+2]=s,this}setXYZW(e,t,n,s,r){return e*=this.itemSize,this.normalized&&(t=this._normalize(t),n=this._normalize(n),s=this._normalize(s),r=this._normalize(r)),this.array[e+0]=t,this.array[e+1]=n,this.array[e+2]=s,this.array[e+3]=r,this}onUpload(e){return this.onUploadCallback=e,this}clone(){return new this.constructor(this.array,this.itemSize).copy(this)}toJSON(){let e={itemSize:this.itemSize,type:this.array.constructor.name,array:Array.from(this.array),normalized:this.normalized};return e.name=this.name,e.usage=this.usage,e.gpuType=this.gpuType,e}dispose(){this.dispatchEvent({type:"dispose"})}_denormalize(e){let t=this._normalizationScale;return t!==void 0?Math.max(e/t,-1):Cp(e,this.array)}_normalize(e){let t=this._normalizationScale;return t!==void 0?Math.round(e*t):Pp(e,this.array)}};var or=class extends an{constructor(e,t,n){super(new Uint16Array(e),t,n)}};var lr=class extends an{constructor(e,t,n){super(new Uint32Array(e),t,n)}};var Jt=class extends an{constructor(e,t,n){super(new Float32Array(e),t,n)}},Vp=new Ti,Js=new G,Dl=new G,qi=class{constructor(e=new G,t=-1){this.isSphere=!0,this.center=e,this.radius=t}set(e,t){return this.center.copy(e),this.radius=t,this}setFromPoints(e,t){let n=this.center;t!==void 0?n.copy(t):Vp.setFromPoints(e).getCenter(n);let s=0;for(let r=0,a=e.length;r<a;r++)s=Math.max(s,n.distanceToSquared(e[r]));return this.radius=Math.sqrt(s),this}copy(e){return this.center.copy(e.center),this.radius=e.radius,this}isEmpty(){return this.radius<0}makeEmpty(){return this.center.set(0,0,0),this.radius=-1,this}containsPoint(e){return e.distanceToSquared(this.center)<=this.radius*this.radius}distanceToPoint(e){return e.distanceTo(this.center)-this.radius}intersectsSphere(e){let t=this.radius+e.radius;return e.center.distanceToSquared(this.center)<=t*t}intersectsBox(e){return e.intersectsSphere(this)}intersectsPlane(e){return Math.abs(e.distanceToPoint(this.center))<=this.radius}clampPoint(e,t){let n=this.center.distanceToSquared(e);return t.copy(e),n>this.radius*this.radius&&(t.sub(this.center).normalize(),t.multiplyScalar(this.radius).add(this.center)),t}getBoundingBox(e){return this.isEmpty()?(e.makeEmpty(),e):(e.set(this.center,this.center),e.expandByScalar(this.radius),e)}applyMatrix4(e){return this.center.applyMatrix4(e),this.radius=this.radius*e.getMaxScaleOnAxis(),this}translate(e){return this.center.add(e),this}expandByPoint(e){if(this.isEmpty())return this.center.copy(e),this.radius=0,this;Js.subVectors(e,this.center);let t=Js.lengthSq();if(t>this.radius*this.radius){let n=Math.sqrt(t),s=(n-this.radius)*.5;this.center.addScaledVector(Js,s/n),this.radius+=s}return this}union(e){return e.isEmpty()?this:this.isEmpty()?(this.copy(e),this):(this.center.equals(e.center)===!0?this.radius=Math.max(this.radius,e.radius):(Dl.subVectors(e.center,this.center).setLength(e.radius),this.expandByPoint(Js.copy(e.center).add(Dl)),this.expandByPoint(Js.copy(e.center).sub(Dl))),this)}equals(e){return e.center.equals(this.center)&&e.radius===this.radius}clone(){return new this.constructor().copy(this)}toJSON(){return{radius:this.radius,center:this.center.toArray()}}fromJSON(e){return this.radius=e.radius,this.center.fromArray(e.center),this}},Hp=0,vn=new mt,Ul=new ln,gs=new G,nn=new Ti,Ks=new Ti,Nt=new G,Cn=class i extends Vn{constructor(){super(),this.isBufferGeometry=!0,Object.defineProperty(this,"id",{value:Hp++}),this.uuid=wr(),this.name="",this.type="BufferGeometry",this.index=null,this.indirect=null,this.indirectOffset=0,this.attributes={},this.morphAttributes={},this.morphTargetsRelative=!1,this.groups=[],this.boundingBox=null,this.boundingSphere=null,this.drawRange={start:0,count:1/0},this.userData={},this._transformed=!1}getIndex(){return this.index}setIndex(e){return Array.isArray(e)?this.index=new(Ep(e)?lr:or)(e,1):this.index=e,this}setIndirect(e,t=0){return this.indirect=e,this.indirectOffset=t,this}getIndirect(){return this.indirect}getAttribute(e){return this.attributes[e]}setAttribute(e,t){return this.attributes[e]=t,this}deleteAttribute(e){return delete this.attributes[e],this}hasAttribute(e){return this.attributes[e]!==void 0}addGroup(e,t,n=0){this.groups.push({start:e,count:t,materialIndex:n})}clearGroups(){this.groups=[]}setDrawRange(e,t){this.drawRange.start=e,this.drawRange.count=t}applyMatrix4(e){let t=this.attributes.position;t!==void 0&&(t.applyMatrix4(e),t.needsUpdate=!0);let n=this.attributes.normal;if(n!==void 0){let r=new Ge().getNormalMatrix(e);n.applyNormalMatrix(r),n.needsUpdate=!0}let s=this.attributes.tangent;return s!==void 0&&(s.transformDirection(e),s.needsUpdate=!0),this.boundingBox!==null&&this.computeBoundingBox(),this.boundingSphere!==null&&this.computeBoundingSphere(),this._transformed=!0,this}applyQuaternion(e){return vn.makeRotationFromQuaternion(e),this.applyMatrix4(vn),this}rotateX(e){return vn.makeRotationX(e),this.applyMatrix4(vn),this}rotateY(e){return vn.makeRotationY(e),this.applyMatrix4(vn),this}rotateZ(e){return vn.makeRotationZ(e),this.applyMatrix4(vn),this}translate(e,t,n){return vn.makeTranslation(e,t,n),this.applyMatrix4(vn),this}scale(e,t,n){return vn.makeScale(e,t,n),this.applyMatrix4(vn),this}lookAt(e){return Ul.lookAt(e),Ul.updateMatrix(),this.applyMatrix4(Ul.matrix),this}center(){return this.computeBoundingBox(),this.boundingBox.getCenter(gs).negate(),this.translate(gs.x,gs.y,gs.z),this}setFromPoints(e){let t=this.getAttribute("position");if(t===void 0){let n=[];for(let s=0,r=e.length;s<r;s++){let a=e[s];n.push(a.x,a.y,a.z||0)}this.setAttribute("position",new Jt(n,3))}else{let n=Math.min(e.length,t.count);for(let s=0;s<n;s++){let r=e[s];t.setXYZ(s,r.x,r.y,r.z||0)}e.length>t.count&&Oe("BufferGeometry: Buffer size too small for points data. Use .dispose() and create a new geometry."),t.needsUpdate=!0}return this}computeBoundingBox(){this.boundingBox===null&&(this.boundingBox=new Ti);let e=this.attributes.position,t=this.morphAttributes.position;if(e&&e.isGLBufferAttribute){ze("BufferGeometry.computeBoundingBox(): GLBufferAttribute requires a manual bounding box.",this),this.boundingBox.set(new G(-1/0,-1/0,-1/0),new G(1/0,1/0,1/0));return}if(e!==void 0){if(this.boundingBox.setFromBufferAttribute(e),t)for(let n=0,s=t.length;n<s;n++){let r=t[n];nn.setFromBufferAttribute(r),this.morphTargetsRelative?(Nt.addVectors(this.boundingBox.min,nn.min),this.boundingBox.expandByPoint(Nt),Nt.addVectors(this.boundingBox.max,nn.max),this.boundingBox.expandByPoint(Nt)):(this.boundingBox.expandByPoint(nn.min),this.boundingBox.expandByPoint(nn.max))}}else this.boundingBox.makeEmpty();(isNaN(this.boundingBox.min.x)||isNaN(this.boundingBox.min.y)||isNaN(this.boundingBox.min.z))&&ze('BufferGeometry.computeBoundingBox(): Computed min/max have NaN values. The "position" attribute is likely to have NaN values.',this)}computeBoundingSphere(){this.boundingSphere===null&&(this.boundingSphere=new qi);let e=this.attributes.position,t=this.morphAttributes.position;if(e&&e.isGLBufferAttribute){ze("BufferGeometry.computeBoundingSphere(): GLBufferAttribute requires a manual bounding sphere.",this),this.boundingSphere.set(new G,1/0);return}if(e){let n=this.boundingSphere.center;if(nn.setFromBufferAttribute(e),t)for(let r=0,a=t.length;r<a;r++){let o=t[r];Ks.setFromBufferAttribute(o),this.morphTargetsRelative?(Nt.addVectors(nn.min,Ks.min),nn.expandByPoint(Nt),Nt.addVectors(nn.max,Ks.max),nn.expandByPoint(Nt)):(nn.expandByPoint(Ks.min),nn.expandByPoint(Ks.max))}nn.getCenter(n);let s=0;for(let r=0,a=e.count;r<a;r++)Nt.fromBufferAttribute(e,r),s=Math.max(s,n.distanceToSquared(Nt));if(t)for(let r=0,a=t.length;r<a;r++){let o=t[r],l=this.morphTargetsRelative;for(let c=0,h=o.count;c<h;c++)Nt.fromBufferAttribute(o,c),l&&(gs.fromBufferAttribute(e,c),Nt.add(gs)),s=Math.max(s,n.distanceToSquared(Nt))}this.boundingSphere.radius=Math.sqrt(s),isNaN(this.boundingSphere.radius)&&ze('BufferGeometry.computeBoundingSphere(): Computed radius is NaN. The "position" attribute is likely to have NaN values.',this)}}computeTangents(){let e=this.index,t=this.attributes;if(e===null||t.position===void 0||t.normal===void 0||t.uv===void 0){ze("BufferGeometry: .computeTangents() failed. Missing required attributes (index, position, normal or uv)");return}let n=t.position,s=t.normal,r=t.uv,a=this.getAttribute("tangent");(a===void 0||a.count!==n.count)&&(a=new an(new Float32Array(4*n.count),4),this.setAttribute("tangent",a));let o=[],l=[],c=new Uint8Array(n.count);for(let H=0;H<n.count;H++)o[H]=new G,l[H]=new G;let h=new G,d=new G,u=new G,f=new et,g=new et,v=new et,_=new G,p=new G;function M(H,F,N){c[H]=c[F]=c[N]=1,h.fromBufferAttribute(n,H),d.fromBufferAttribute(n,F),u.fromBufferAttribute(n,N),f.fromBufferAttribute(r,H),g.fromBufferAttribute(r,F),v.fromBufferAttribute(r,N),d.sub(h),u.sub(h),g.sub(f),v.sub(f);let V=1/(g.x*v.y-v.x*g.y);isFinite(V)&&(_.copy(d).multiplyScalar(v.y).addScaledVector(u,-g.y).multiplyScalar(V),p.copy(u).multiplyScalar(g.x).addScaledVector(d,-v.x).multiplyScalar(V),o[H].add(_),o[F].add(_),o[N].add(_),l[H].add(p),l[F].add(p),l[N].add(p))}let C=this.groups;C.length===0&&(C=[{start:0,count:e.count}]);for(let H=0,F=C.length;H<F;++H){let N=C[H],V=N.start,Z=N.count;for(let w=V,U=V+Z;w<U;w+=3)M(e.getX(w+0),e.getX(w+1),e.getX(w+2))}let S=new G,T=new G,A=new G,x=new G;function E(H){A.fromBufferAttribute(s,H),x.copy(A);let F=o[H];S.copy(F),S.sub(A.multiplyScalar(A.dot(F))).normalize(),T.crossVectors(x,F);let V=T.dot(l[H])<0?-1:1;a.setXYZW(H,S.x,S.y,S.z,V)}for(let H=0,F=n.count;H<F;++H)c[H]&&E(H);this._transformed=!0}computeVertexNormals(){let e=this.index,t=this.getAttribute("position");if(t!==void 0){let n=this.getAttribute("normal");if(n===void 0||n.count!==t.count)n=new an(new Float32Array(t.count*3),3),this.setAttribute("normal",n);else for(let u=0,f=n.count;u<f;u++)n.setXYZ(u,0,0,0);let s=new G,r=new G,a=new G,o=new G,l=new G,c=new G,h=new G,d=new G;if(e)for(let u=0,f=e.count;u<f;u+=3){let g=e.getX(u+0),v=e.getX(u+1),_=e.getX(u+2);s.fromBufferAttribute(t,g),r.fromBufferAttribute(t,v),a.fromBufferAttribute(t,_),h.subVectors(a,r),d.subVectors(s,r),h.cross(d),o.fromBufferAttribute(n,g),l.fromBufferAttribute(n,v),c.fromBufferAttribute(n,_),o.add(h),l.add(h),c.add(h),n.setXYZ(g,o.x,o.y,o.z),n.setXYZ(v,l.x,l.y,l.z),n.setXYZ(_,c.x,c.y,c.z)}else for(let u=0,f=t.count;u<f;u+=3)s.fromBufferAttribute(t,u+0),r.fromBufferAttribute(t,u+1),a.fromBufferAttribute(t,u+2),h.subVectors(a,r),d.subVectors(s,r),h.cross(d),n.setXYZ(u+0,h.x,h.y,h.z),n.setXYZ(u+1,h.x,h.y,h.z),n.setXYZ(u+2,h.x,h.y,h.z);this.normalizeNormals(),n.needsUpdate=!0}}normalizeNormals(){let e=this.attributes.normal;for(let t=0,n=e.count;t<n;t++)Nt.fromBufferAttribute(e,t),Nt.normalize(),e.setXYZ(t,Nt.x,Nt.y,Nt.z)}toNonIndexed(){function e(o,l){let c=o.array,h=o.itemSize,d=o.normalized,u=new c.constructor(l.length*h),f=0,g=0;for(let v=0,_=l.length;v<_;v++){o.isInterleavedBufferAttribute?f=l[v]*o.data.stride+o.offset:f=l[v]*h;for(let p=0;p<h;p++)u[g++]=c[f++]}return new an(u,h,d)}if(this.index===null)return Oe("BufferGeometry.toNonIndexed(): BufferGeometry is already non-indexed."),this;let t=new i,n=this.index.array,s=this.attributes;for(let o in s){let l=s[o],c=e(l,n);t.setAttribute(o,c)}let r=this.morphAttributes;for(let o in r){let l=[],c=r[o];for(let h=0,d=c.length;h<d;h++){let u=c[h],f=e(u,n);l.push(f)}t.morphAttributes[o]=l}t.morphTargetsRelative=this.morphTargetsRelative;let a=this.groups;for(let o=0,l=a.length;o<l;o++){let c=a[o];t.addGroup(c.start,c.count,c.materialIndex)}return t}toJSON(){let e={metadata:{version:4.7,type:"BufferGeometry",generator:"BufferGeometry.toJSON"}};if(e.uuid=this.uuid,e.type=this.parameters!==void 0&&this._transformed===!0?"BufferGeometry":this.type,e.name=this.name,Object.keys(this.userData).length>0&&(e.userData=this.userData),this.parameters!==void 0&&this._transformed!==!0){let l=this.parameters;for(let c in l)l[c]!==void 0&&(e[c]=l[c]);return e}e.data={attributes:{}};let t=this.index;t!==null&&(e.data.index={type:t.array.constructor.name,array:Array.prototype.slice.call(t.array)});let n=this.attributes;for(let l in n){let c=n[l];e.data.attributes[l]=c.toJSON(e.data)}let s={},r=!1;for(let l in this.morphAttributes){let c=this.morphAttributes[l],h=[];for(let d=0,u=c.length;d<u;d++){let f=c[d];h.push(f.toJSON(e.data))}h.length>0&&(s[l]=h,r=!0)}r&&(e.data.morphAttributes=s,e.data.morphTargetsRelative=this.morphTargetsRelative);let a=this.groups;a.length>0&&(e.data.groups=JSON.parse(JSON.stringify(a)));let o=this.boundingSphere;return o!==null&&(e.data.boundingSphere=o.toJSON()),e}clone(){return new this.constructor().copy(this)}copy(e){this.index=null,this.attributes={},this.morphAttributes={},this.groups=[],this.boundingBox=null,this.boundingSphere=null;let t={};this.name=e.name;let n=e.index;n!==null&&this.setIndex(n.clone());let s=e.attributes;for(let c in s){let h=s[c];this.setAttribute(c,h.clone(t))}let r=e.morphAttributes;for(let c in r){let h=[],d=r[c];for(let u=0,f=d.length;u<f;u++)h.push(d[u].clone(t));this.morphAttributes[c]=h}this.morphTargetsRelative=e.morphTargetsRelative;let a=e.groups;for(let c=0,h=a.length;c<h;c++){let d=a[c];this.addGroup(d.start,d.count,d.materialIndex)}let o=e.boundingBox;o!==null&&(this.boundingBox=o.clone());let l=e.boundingSphere;return l!==null&&(this.boundingSphere=l.clone()),this.drawRange.start=e.drawRange.start,this.drawRange.count=e.drawRange.count,this.userData=e.userData,this._transformed=e._transformed,this}dispose(){this.dispatchEvent({type:"dispose"})}};var Fl=new G,Wp=new G,$p=new Ge,Rn=class{constructor(e=new G(1,0,0),t=0){this.isPlane=!0,this.normal=e,this.constant=t}set(e,t){return this.normal.copy(e),this.constant=t,this}setComponents(e,t,n,s){return this.normal.set(e,t,n),this.constant=s,this}setFromNormalAndCoplanarPoint(e,t){return this.normal.copy(e),this.constant=-t.dot(this.normal),this}setFromCoplanarPoints(e,t,n){let s=Fl.subVectors(n,t).cross(Wp.subVectors(e,t)).normalize();return this.setFromNormalAndCoplanarPoint(s,e),this}copy(e){return this.normal.copy(e.normal),this.constant=e.constant,this}normalize(){let e=1/this.normal.length();return this.normal.multiplyScalar(e),this.constant*=e,this}negate(){return this.constant*=-1,this.normal.negate(),this}distanceToPoint(e){return this.normal.dot(e)+this.constant}distanceToSphere(e){return this.distanceToPoint(e.center)-e.radius}projectPoint(e,t){return t.copy(e).addScaledVector(this.normal,-this.distanceToPoint(e))}intersectLine(e,t,n=!0){let s=e.delta(Fl),r=this.normal.dot(s);if(r===0)return this.distanceToPoint(e.start)===0?t.copy(e.start):null;let a=-(e.start.dot(this.normal)+this.constant)/r;return n===!0&&(a<0||a>1)?null:t.copy(e.start).addScaledVector(s,a)}intersectsLine(e){let t=this.distanceToPoint(e.start),n=this.distanceToPoint(e.end);return t<0&&n>0||n<0&&t>0}intersectsBox(e){return e.intersectsPlane(this)}intersectsSphere(e){return e.intersectsPlane(this)}coplanarPoint(e){return e.copy(this.normal).multiplyScalar(-this.constant)}applyMatrix4(e,t){let n=t||$p.getNormalMatrix(e),s=this.coplanarPoint(Fl).applyMatrix4(e),r=this.normal.applyMatrix3(n).normalize();return this.constant=-s.dot(r),this}translate(e){return this.constant-=e.dot(this.normal),this}equals(e){return e.normal.equals(this.normal)&&e.constant===this.constant}clone(){return new this.constructor().copy(this)}toJSON(){return{normal:this.normal.toArray(),constant:this.constant}}fromJSON(e){return this.normal.fromArray(e.normal),this.constant=e.constant,this}},Xp=0,Ei=class extends Vn{constructor(){super(),this.isMaterial=!0,Object.defineProperty(this,"id",{value:Xp++}),this.uuid=wr(),this.name="",this.type="Material",this.blending=Ls,this.side=Ii,this.vertexColors=!1,this.opacity=1,this.transparent=!1,this.alphaHash=!1,this.blendSrc=Kl,this.blendDst=jl,this.blendEquation=Ki,this.blendSrcAlpha=null,this.blendDstAlpha=null,this.blendEquationAlpha=null,this.blendColor=new je(0,0,0),this.blendAlpha=0,this.depthFunc=bs,this.depthTest=!0,this.depthWrite=!0,this.stencilWriteMask=255,this.stencilFunc=td,this.stencilRef=0,this.stencilFuncMask=255,this.stencilFail=va,this.stencilZFail=va,this.stencilZPass=va,this.stencilWrite=!1,this.clippingPlanes=null,this.clipIntersection=!1,this.clipShadows=!1,this.shadowSide=null,this.colorWrite=!0,this.precision=null,this.polygonOffset=!1,this.polygonOffsetFactor=0,this.polygonOffsetUnits=0,this.dithering=!1,this.alphaToCoverage=!1,this.premultipliedAlpha=!1,this.forceSinglePass=!1,this.allowOverride=!0,this.visible=!0,this.toneMapped=!0,this.userData={},this.version=0,this._alphaTest=0}get alphaTest(){return this._alphaTest}set alphaTest(e){this._alphaTest>0!=e>0&&this.version++,this._alphaTest=e}onBeforeRender(){}onBeforeCompile(){}customProgramCacheKey(){return this.onBeforeCompile.toString()}setValues(e){if(e!==void 0)for(let t in e){let n=e[t];if(n===void 0){Oe(`Material: parameter '${t}' has value of undefined.`);continue}let s=this[t];if(s===void 0){Oe(`Material: '${t}' is not a property of THREE.${this.type}.`);continue}s&&s.isColor?s.set(n):s&&s.isVector2&&n&&n.isVector2||s&&s.isEuler&&n&&n.isEuler||s&&s.isVector3&&n&&n.isVector3?s.copy(n):this[t]=n}}toJSON(e){let t=e===void 0||typeof e=="string";t&&(e={textures:{},images:{}});let n={metadata:{version:4.7,type:"Material",generator:"Material.toJSON"}};n.uuid=this.uuid,n.type=this.type,n.blending=this.blending,n.side=this.side,n.shadowSide=this.shadowSide,n.vertexColors=this.vertexColors,n.opacity=this.opacity,n.transparent=this.transparent,n.blendSrc=this.blendSrc,n.blendDst=this.blendDst,n.blendEquation=this.blendEquation,n.blendSrcAlpha=this.blendSrcAlpha,n.blendDstAlpha=this.blendDstAlpha,n.blendEquationAlpha=this.blendEquationAlpha,n.blendColor=this.blendColor.getHex(),n.blendAlpha=this.blendAlpha,n.depthFunc=this.depthFunc,n.depthTest=this.depthTest,n.depthWrite=this.depthWrite,n.colorWrite=this.colorWrite,n.clipIntersection=this.clipIntersection,n.clipShadows=this.clipShadows,n.stencilWriteMask=this.stencilWriteMask,n.stencilFunc=this.stencilFunc,n.stencilRef=this.stencilRef,n.stencilFuncMask=this.stencilFuncMask,n.stencilFail=this.stencilFail,n.stencilZFail=this.stencilZFail,n.stencilZPass=this.stencilZPass,n.stencilWrite=this.stencilWrite,n.polygonOffset=this.polygonOffset,n.polygonOffsetFactor=this.polygonOffsetFactor,n.polygonOffsetUnits=this.polygonOffsetUnits,n.dithering=this.dithering,n.alphaTest=this.alphaTest,n.alphaHash=this.alphaHash,n.alphaToCoverage=this.alphaToCoverage,n.premultipliedAlpha=this.premultipliedAlpha,n.forceSinglePass=this.forceSinglePass,n.allowOverride=this.allowOverride,n.visible=this.visible,n.toneMapped=this.toneMapped,n.name=this.name,this.color&&this.color.isColor&&(n.color=this.color.getHex()),this.roughness!==void 0&&(n.roughness=this.roughness),this.metalness!==void 0&&(n.metalness=this.metalness),this.sheen!==void 0&&(n.sheen=this.sheen),this.sheenColor&&this.sheenColor.isColor&&(n.sheenColor=this.sheenColor.getHex()),this.sheenRoughness!==void 0&&(n.sheenRoughness=this.sheenRoughness),this.emissive&&this.emissive.isColor&&(n.emissive=this.emissive.getHex()),this.emissiveIntensity!==void 0&&(n.emissiveIntensity=this.emissiveIntensity),this.specular&&this.specular.isColor&&(n.specular=this.specular.getHex()),this.specularIntensity!==void 0&&(n.specularIntensity=this.specularIntensity),this.specularColor&&this.specularColor.isColor&&(n.specularColor=this.specularColor.getHex()),this.shininess!==void 0&&(n.shininess=this.shininess),this.clearcoat!==void 0&&(n.clearcoat=this.clearcoat),this.clearcoatRoughness!==void 0&&(n.clearcoatRoughness=this.clearcoatRoughness),this.diffuseRoughness!==void 0&&(n.diffuseRoughness=this.diffuseRoughness),this.diffuseRoughnessMap&&this.diffuseRoughnessMap.isTexture&&(n.diffuseRoughnessMap=this.diffuseRoughnessMap.toJSON(e).uuid),this.clearcoatMap&&this.clearcoatMap.isTexture&&(n.clearcoatMap=this.clearcoatMap.toJSON(e).uuid),this.clearcoatRoughnessMap&&this.clearcoatRoughnessMap.isTexture&&(n.clearcoatRoughnessMap=this.clearcoatRoughnessMap.toJSON(e).uuid),this.clearcoatNormalMap&&this.clearcoatNormalMap.isTexture&&(n.clearcoatNormalMap=this.clearcoatNormalMap.toJSON(e).uuid,n.clearcoatNormalScale=this.clearcoatNormalScale.toArray()),this.sheenColorMap&&this.sheenColorMap.isTexture&&(n.sheenColorMap=this.sheenColorMap.toJSON(e).uuid),this.sheenRoughnessMap&&this.sheenRoughnessMap.isTexture&&(n.sheenRoughnessMap=this.sheenRoughnessMap.toJSON(e).uuid),this.dispersion!==void 0&&(n.dispersion=this.dispersion),this.retroreflectivity!==void 0&&(n.retroreflectivity=this.retroreflectivity),this.iridescence!==void 0&&(n.iridescence=this.iridescence),this.iridescenceIOR!==void 0&&(n.iridescenceIOR=this.iridescenceIOR),this.iridescenceThicknessMinimum!==void 0&&(n.iridescenceThicknessMinimum=this.iridescenceThicknessMinimum),this.iridescenceThicknessMaximum!==void 0&&(n.iridescenceThicknessMaximum=this.iridescenceThicknessMaximum),this.iridescenceMap&&this.iridescenceMap.isTexture&&(n.iridescenceMap=this.iridescenceMap.toJSON(e).uuid),this.iridescenceThicknessMap&&this.iridescenceThicknessMap.isTexture&&(n.iridescenceThicknessMap=this.iridescenceThicknessMap.toJSON(e).uuid),this.anisotropy!==void 0&&(n.anisotropy=this.anisotropy),this.anisotropyRotation!==void 0&&(n.anisotropyRotation=this.anisotropyRotation),this.anisotropyMap&&this.anisotropyMap.isTexture&&(n.anisotropyMap=this.anisotropyMap.toJSON(e).uuid),this.map&&this.map.isTexture&&(n.map=this.map.toJSON(e).uuid),this.matcap&&this.matcap.isTexture&&(n.matcap=this.matcap.toJSON(e).uuid),this.alphaMap&&this.alphaMap.isTexture&&(n.alphaMap=this.alphaMap.toJSON(e).uuid),this.lightMap&&this.lightMap.isTexture&&(n.lightMap=this.lightMap.toJSON(e).uuid,n.lightMapIntensity=this.lightMapIntensity),this.aoMap&&this.aoMap.isTexture&&(n.aoMap=this.aoMap.toJSON(e).uuid,n.aoMapIntensity=this.aoMapIntensity),this.bumpMap&&this.bumpMap.isTexture&&(n.bumpMap=this.bumpMap.toJSON(e).uuid,n.bumpScale=this.bumpScale),this.normalMap&&this.normalMap.isTexture&&(n.normalMap=this.normalMap.toJSON(e).uuid,n.normalMapType=this.normalMapType,n.normalScale=this.normalScale.toArray()),this.displacementMap&&this.displacementMap.isTexture&&(n.displacementMap=this.displacementMap.toJSON(e).uuid,n.displacementScale=this.displacementScale,n.displacementBias=this.displacementBias),this.roughnessMap&&this.roughnessMap.isTexture&&(n.roughnessMap=this.roughnessMap.toJSON(e).uuid),this.metalnessMap&&this.metalnessMap.isTexture&&(n.metalnessMap=this.metalnessMap.toJSON(e).uuid),this.emissiveMap&&this.emissiveMap.isTexture&&(n.emissiveMap=this.emissiveMap.toJSON(e).uuid),this.specularMap&&this.specularMap.isTexture&&(n.specularMap=this.specularMap.toJSON(e).uuid),this.specularIntensityMap&&this.specularIntensityMap.isTexture&&(n.specularIntensityMap=this.specularIntensityMap.toJSON(e).uuid),this.specularColorMap&&this.specularColorMap.isTexture&&(n.specularColorMap=this.specularColorMap.toJSON(e).uuid),this.envMap&&this.envMap.isTexture&&(n.envMap=this.envMap.toJSON(e).uuid,this.combine!==void 0&&(n.combine=this.combine)),this.envMapRotation!==void 0&&(n.envMapRotation=this.envMapRotation.toArray()),this.envMapIntensity!==void 0&&(n.envMapIntensity=this.envMapIntensity),this.reflectivity!==void 0&&(n.reflectivity=this.reflectivity),this.refractionRatio!==void 0&&(n.refractionRatio=this.refractionRatio),this.gradientMap&&this.gradientMap.isTexture&&(n.gradientMap=this.gradientMap.toJSON(e).uuid),this.transmission!==void 0&&(n.transmission=this.transmission),this.transmissionMap&&this.transmissionMap.isTexture&&(n.transmissionMap=this.transmissionMap.toJSON(e).uuid),this.thickness!==void 0&&(n.thickness=this.thickness),this.thicknessMap&&this.thicknessMap.isTexture&&(n.thicknessMap=this.thicknessMap.toJSON(e).uuid),this.attenuationDistance!==void 0&&(n.attenuationDistance=this.attenuationDistance),this.attenuationColor!==void 0&&(n.attenuationColor=this.attenuationColor.getHex()),this.size!==void 0&&(n.size=this.size),this.sizeAttenuation!==void 0&&(n.sizeAttenuation=this.sizeAttenuation),Array.isArray(this.clippingPlanes)&&this.clippingPlanes.length>0&&(n.clippingPlanes=this.clippingPlanes.map(r=>r.toJSON())),this.rotation!==void 0&&(n.rotation=this.rotation),this.depthPacking!==void 0&&(n.depthPacking=this.depthPacking),this.linewidth!==void 0&&(n.linewidth=this.linewidth),this.linecap!==void 0&&(n.linecap=this.linecap),this.linejoin!==void 0&&(n.linejoin=this.linejoin),this.dashSize!==void 0&&(n.dashSize=this.dashSize),this.gapSize!==void 0&&(n.gapSize=this.gapSize),this.scale!==void 0&&(n.scale=this.scale),this.wireframe!==void 0&&(n.wireframe=this.wireframe),this.wireframeLinewidth!==void 0&&(n.wireframeLinewidth=this.wireframeLinewidth),this.wireframeLinecap!==void 0&&(n.wireframeLinecap=this.wireframeLinecap),this.wireframeLinejoin!==void 0&&(n.wireframeLinejoin=this.wireframeLinejoin),this.flatShading!==void 0&&(n.flatShading=this.flatShading),this.fog!==void 0&&(n.fog=this.fog),Object.keys(this.userData).length>0&&(n.userData=this.userData);function s(r){let a=[];for(let o in r){let l=r[o];delete l.metadata,a.push(l)}return a}if(t){let r=s(e.textures),a=s(e.images);r.length>0&&(n.textures=r),a.length>0&&(n.images=a)}return n}fromJSON(e,t){if(e.uuid!==void 0&&(this.uuid=e.uuid),e.name!==void 0&&(this.name=e.name),e.color!==void 0&&this.color!==void 0&&this.color.setHex(e.color),e.roughness!==void 0&&(this.roughness=e.roughness),e.metalness!==void 0&&(this.metalness=e.metalness),e.sheen!==void 0&&(this.sheen=e.sheen),e.sheenColor!==void 0&&(this.sheenColor=new je().setHex(e.sheenColor)),e.sheenRoughness!==void 0&&(this.sheenRoughness=e.sheenRoughness),e.emissive!==void 0&&this.emissive!==void 0&&this.emissive.setHex(e.emissive),e.specular!==void 0&&this.specular!==void 0&&this.specular.setHex(e.specular),e.specularIntensity!==void 0&&(this.specularIntensity=e.specularIntensity),e.specularColor!==void 0&&this.specularColor!==void 0&&this.specularColor.setHex(e.specularColor),e.shininess!==void 0&&(this.shininess=e.shininess),e.clearcoat!==void 0&&(this.clearcoat=e.clearcoat),e.clearcoatRoughness!==void 0&&(this.clearcoatRoughness=e.clearcoatRoughness),e.diffuseRoughness!==void 0&&(this.diffuseRoughness=e.diffuseRoughness),e.dispersion!==void 0&&(this.dispersion=e.dispersion),e.retroreflectivity!==void 0&&(this.retroreflectivity=e.retroreflectivity),e.iridescence!==void 0&&(this.iridescence=e.iridescence),e.iridescenceIOR!==void 0&&(this.iridescenceIOR=e.iridescenceIOR),e.iridescenceThicknessMinimum!==void 0&&(this.iridescenceThicknessMinimum=e.iridescenceThicknessMinimum),e.iridescenceThicknessMaximum!==void 0&&(this.iridescenceThicknessMaximum=e.iridescenceThicknessMaximum),e.iridescenceThicknessRange!==void 0&&(this.iridescenceThicknessMinimum=e.iridescenceThicknessRange[0],this.iridescenceThicknessMaximum=e.iridescenceThicknessRange[1]),e.transmission!==void 0&&(this.transmission=e.transmission),e.thickness!==void 0&&(this.thickness=e.thickness),e.attenuationDistance!==void 0&&(this.attenuationDistance=e.attenuationDistance),e.attenuationColor!==void 0&&this.attenuationColor!==void 0&&this.attenuationColor.setHex(e.attenuationColor),e.anisotropy!==void 0&&(this.anisotropy=e.anisotropy),e.anisotropyRotation!==void 0&&(this.anisotropyRotation=e.anisotropyRotation),e.fog!==void 0&&(this.fog=e.fog),e.flatShading!==void 0&&(this.flatShading=e.flatShading),e.blending!==void 0&&(this.blending=e.blending),e.combine!==void 0&&(this.combine=e.combine),e.side!==void 0&&(this.side=e.side),e.shadowSide!==void 0&&(this.shadowSide=e.shadowSide),e.opacity!==void 0&&(this.opacity=e.opacity),e.transparent!==void 0&&(this.transparent=e.transparent),e.alphaTest!==void 0&&(this.alphaTest=e.alphaTest),e.alphaHash!==void 0&&(this.alphaHash=e.alphaHash),e.depthFunc!==void 0&&(this.depthFunc=e.depthFunc),e.depthTest!==void 0&&(this.depthTest=e.depthTest),e.depthWrite!==void 0&&(this.depthWrite=e.depthWrite),e.colorWrite!==void 0&&(this.colorWrite=e.colorWrite),e.clippingPlanes!==void 0&&(this.clippingPlanes=e.clippingPlanes.map(n=>new Rn().fromJSON(n))),e.clipIntersection!==void 0&&(this.clipIntersection=e.clipIntersection),e.clipShadows!==void 0&&(this.clipShadows=e.clipShadows),e.depthPacking!==void 0&&(this.depthPacking=e.depthPacking),e.blendSrc!==void 0&&(this.blendSrc=e.blendSrc),e.blendDst!==void 0&&(this.blendDst=e.blendDst),e.blendEquation!==void 0&&(this.blendEquation=e.blendEquation),e.blendSrcAlpha!==void 0&&(this.blendSrcAlpha=e.blendSrcAlpha),e.blendDstAlpha!==void 0&&(this.blendDstAlpha=e.blendDstAlpha),e.blendEquationAlpha!==void 0&&(this.blendEquationAlpha=e.blendEquationAlpha),e.blendColor!==void 0&&this.blendColor!==void 0&&this.blendColor.setHex(e.blendColor),e.blendAlpha!==void 0&&(this.blendAlpha=e.blendAlpha),e.stencilWriteMask!==void 0&&(this.stencilWriteMask=e.stencilWriteMask),e.stencilFunc!==void 0&&(this.stencilFunc=e.stencilFunc),e.stencilRef!==void 0&&(this.stencilRef=e.stencilRef),e.stencilFuncMask!==void 0&&(this.stencilFuncMask=e.stencilFuncMask),e.stencilFail!==void 0&&(this.stencilFail=e.stencilFail),e.stencilZFail!==void 0&&(this.stencilZFail=e.stencilZFail),e.stencilZPass!==void 0&&(this.stencilZPass=e.stencilZPass),e.stencilWrite!==void 0&&(this.stencilWrite=e.stencilWrite),e.wireframe!==void 0&&(this.wireframe=e.wireframe),e.wireframeLinewidth!==void 0&&(this.wireframeLinewidth=e.wireframeLinewidth),e.wireframeLinecap!==void 0&&(this.wireframeLinecap=e.wireframeLinecap),e.wireframeLinejoin!==void 0&&(this.wireframeLinejoin=e.wireframeLinejoin),e.rotation!==void 0&&(this.rotation=e.rotation),e.linewidth!==void 0&&(this.linewidth=e.linewidth),e.linecap!==void 0&&(this.linecap=e.linecap),e.linejoin!==void 0&&(this.linejoin=e.linejoin),e.dashSize!==void 0&&(this.dashSize=e.dashSize),e.gapSize!==void 0&&(this.gapSize=e.gapSize),e.scale!==void 0&&(this.scale=e.scale),e.polygonOffset!==void 0&&(this.polygonOffset=e.polygonOffset),e.polygonOffsetFactor!==void 0&&(this.polygonOffsetFactor=e.polygonOffsetFactor),e.polygonOffsetUnits!==void 0&&(this.polygonOffsetUnits=e.polygonOffsetUnits),e.dithering!==void 0&&(this.dithering=e.dithering),e.alphaToCoverage!==void 0&&(this.alphaToCoverage=e.alphaToCoverage),e.premultipliedAlpha!==void 0&&(this.premultipliedAlpha=e.premultipliedAlpha),e.forceSinglePass!==void 0&&(this.forceSinglePass=e.forceSinglePass),e.allowOverride!==void 0&&(this.allowOverride=e.allowOverride),e.visible!==void 0&&(this.visible=e.visible),e.toneMapped!==void 0&&(this.toneMapped=e.toneMapped),e.userData!==void 0&&(this.userData=e.userData),e.vertexColors!==void 0&&(typeof e.vertexColors=="number"?this.vertexColors=e.vertexColors>0:this.vertexColors=e.vertexColors),e.size!==void 0&&(this.size=e.size),e.sizeAttenuation!==void 0&&(this.sizeAttenuation=e.sizeAttenuation),e.map!==void 0&&(this.map=t[e.map]||null),e.matcap!==void 0&&(this.matcap=t[e.matcap]||null),e.alphaMap!==void 0&&(this.alphaMap=t[e.alphaMap]||null),e.bumpMap!==void 0&&(this.bumpMap=t[e.bumpMap]||null),e.bumpScale!==void 0&&(this.bumpScale=e.bumpScale),e.normalMap!==void 0&&(this.normalMap=t[e.normalMap]||null),e.normalMapType!==void 0&&(this.normalMapType=e.normalMapType),e.normalScale!==void 0){let n=e.normalScale;Array.isArray(n)===!1&&(n=[n,n]),this.normalScale=new et().fromArray(n)}return e.displacementMap!==void 0&&(this.displacementMap=t[e.displacementMap]||null),e.displacementScale!==void 0&&(this.displacementScale=e.displacementScale),e.displacementBias!==void 0&&(this.displacementBias=e.displacementBias),e.roughnessMap!==void 0&&(this.roughnessMap=t[e.roughnessMap]||null),e.metalnessMap!==void 0&&(this.metalnessMap=t[e.metalnessMap]||null),e.emissiveMap!==void 0&&(this.emissiveMap=t[e.emissiveMap]||null),e.emissiveIntensity!==void 0&&(this.emissiveIntensity=e.emissiveIntensity),e.specularMap!==void 0&&(this.specularMap=t[e.specularMap]||null),e.specularIntensityMap!==void 0&&(this.specularIntensityMap=t[e.specularIntensityMap]||null),e.specularColorMap!==void 0&&(this.specularColorMap=t[e.specularColorMap]||null),e.envMap!==void 0&&(this.envMap=t[e.envMap]||null),e.envMapRotation!==void 0&&this.envMapRotation.fromArray(e.envMapRotation),e.envMapIntensity!==void 0&&(this.envMapIntensity=e.envMapIntensity),e.reflectivity!==void 0&&(this.reflectivity=e.reflectivity),e.refractionRatio!==void 0&&(this.refractionRatio=e.refractionRatio),e.lightMap!==void 0&&(this.lightMap=t[e.lightMap]||null),e.lightMapIntensity!==void 0&&(this.lightMapIntensity=e.lightMapIntensity),e.aoMap!==void 0&&(this.aoMap=t[e.aoMap]||null),e.aoMapIntensity!==void 0&&(this.aoMapIntensity=e.aoMapIntensity),e.gradientMap!==void 0&&(this.gradientMap=t[e.gradientMap]||null),e.clearcoatMap!==void 0&&(this.clearcoatMap=t[e.clearcoatMap]||null),e.clearcoatRoughnessMap!==void 0&&(this.clearcoatRoughnessMap=t[e.clearcoatRoughnessMap]||null),e.clearcoatNormalMap!==void 0&&(this.clearcoatNormalMap=t[e.clearcoatNormalMap]||null),e.clearcoatNormalScale!==void 0&&(this.clearcoatNormalScale=new et().fromArray(e.clearcoatNormalScale)),e.diffuseRoughnessMap!==void 0&&(this.diffuseRoughnessMap=t[e.diffuseRoughnessMap]||null),e.iridescenceMap!==void 0&&(this.iridescenceMap=t[e.iridescenceMap]||null),e.iridescenceThicknessMap!==void 0&&(this.iridescenceThicknessMap=t[e.iridescenceThicknessMap]||null),e.transmissionMap!==void 0&&(this.transmissionMap=t[e.transmissionMap]||null),e.thicknessMap!==void 0&&(this.thicknessMap=t[e.thicknessMap]||null),e.anisotropyMap!==void 0&&(this.anisotropyMap=t[e.anisotropyMap]||null),e.sheenColorMap!==void 0&&(this.sheenColorMap=t[e.sheenColorMap]||null),e.sheenRoughnessMap!==void 0&&(this.sheenRoughnessMap=t[e.sheenRoughnessMap]||null),this}clone(){return new this.constructor().copy(this)}copy(e){this.name=e.name,this.blending=e.blending,this.side=e.side,this.vertexColors=e.vertexColors,this.opacity=e.opacity,this.transparent=e.transparent,this.blendSrc=e.blendSrc,this.blendDst=e.blendDst,this.blendEquation=e.blendEquation,this.blendSrcAlpha=e.blendSrcAlpha,this.blendDstAlpha=e.blendDstAlpha,this.blendEquationAlpha=e.blendEquationAlpha,this.blendColor.copy(e.blendColor),this.blendAlpha=e.blendAlpha,this.depthFunc=e.depthFunc,this.depthTest=e.depthTest,this.depthWrite=e.depthWrite,this.stencilWriteMask=e.stencilWriteMask,this.stencilFunc=e.stencilFunc,this.stencilRef=e.stencilRef,this.stencilFuncMask=e.stencilFuncMask,this.stencilFail=e.stencilFail,this.stencilZFail=e.stencilZFail,this.stencilZPass=e.stencilZPass,this.stencilWrite=e.stencilWrite;let t=e.clippingPlanes,n=null;if(t!==null){let s=t.length;n=new Array(s);for(let r=0;r!==s;++r)n[r]=t[r].clone()}return this.clippingPlanes=n,this.clipIntersection=e.clipIntersection,this.clipShadows=e.clipShadows,this.shadowSide=e.shadowSide,this.colorWrite=e.colorWrite,this.precision=e.precision,this.polygonOffset=e.polygonOffset,this.polygonOffsetFactor=e.polygonOffsetFactor,this.polygonOffsetUnits=e.polygonOffsetUnits,this.dithering=e.dithering,this.alphaTest=e.alphaTest,this.alphaHash=e.alphaHash,this.alphaToCoverage=e.alphaToCoverage,this.premultipliedAlpha=e.premultipliedAlpha,this.forceSinglePass=e.forceSinglePass,this.allowOverride=e.allowOverride,this.visible=e.visible,this.toneMapped=e.toneMapped,this.userData=JSON.parse(JSON.stringify(e.userData)),this}dispose(){this.dispatchEvent({type:"dispose"})}set needsUpdate(e){e===!0&&this.version++}};var ni=new G,Ol=new G,na=new G,ia=new G,Es=class{constructor(e=new G,t=new G(0,0,-1)){this.origin=e,this.direction=t}set(e,t){return this.origin.copy(e),this.direction.copy(t),this}copy(e){return this.origin.copy(e.origin),this.direction.copy(e.direction),this}at(e,t){return t.copy(this.origin).addScaledVector(this.direction,e)}lookAt(e){return this.direction.copy(e).sub(this.origin).normalize(),this}recast(e){return this.origin.copy(this.at(e,ni)),this}closestPointToPoint(e,t){t.subVectors(e,this.origin);let n=t.dot(this.direction);return n<0?t.copy(this.origin):t.copy(this.origin).addScaledVector(this.direction,n)}distanceToPoint(e){return Math.sqrt(this.distanceSqToPoint(e))}distanceSqToPoint(e){let t=ni.subVectors(e,this.origin).dot(this.direction);return t<0?this.origin.distanceToSquared(e):(ni.copy(this.origin).addScaledVector(this.direction,t),ni.distanceToSquared(e))}distanceSqToSegment(e,t,n,s){Ol.copy(e).add(t).multiplyScalar(.5),na.copy(t).sub(e).normalize(),ia.copy(this.origin).sub(Ol);let r=e.distanceTo(t)*.5,a=-this.direction.dot(na),o=ia.dot(this.direction),l=-ia.dot(na),c=ia.lengthSq(),h=Math.abs(1-a*a),d,u,f,g;if(h>0)if(d=a*l-o,u=a*o-l,g=r*h,d>=0)if(u>=-g)if(u<=g){let v=1/h;d*=v,u*=v,f=d*(d+a*u+2*o)+u*(a*d+u+2*l)+c}else u=r,d=Math.max(0,-(a*u+o)),f=-d*d+u*(u+2*l)+c;else u=-r,d=Math.max(0,-(a*u+o)),f=-d*d+u*(u+2*l)+c;else u<=-g?(d=Math.max(0,-(-a*r+o)),u=d>0?-r:Math.min(Math.max(-r,-l),r),f=-d*d+u*(u+2*l)+c):u<=g?(d=0,u=Math.min(Math.max(-r,-l),r),f=u*(u+2*l)+c):(d=Math.max(0,-(a*r+o)),u=d>0?r:Math.min(Math.max(-r,-l),r),f=-d*d+u*(u+2*l)+c);else u=a>0?-r:r,d=Math.max(0,-(a*u+o)),f=-d*d+u*(u+2*l)+c;return n&&n.copy(this.origin).addScaledVector(this.direction,d),s&&s.copy(Ol).addScaledVector(na,u),f}intersectSphere(e,t){if(e.radius<0)return null;ni.subVectors(e.center,this.origin);let n=ni.dot(this.direction),s=ni.dot(ni)-n*n,r=e.radius*e.radius;if(s>r)return null;let a=Math.sqrt(r-s),o=n-a,l=n+a;return l<0?null:o<0?this.at(l,t):this.at(o,t)}intersectsSphere(e){return e.radius<0?!1:this.distanceSqToPoint(e.center)<=e.radius*e.radius}distanceToPlane(e){let t=e.normal.dot(this.direction);if(t===0)return e.distanceToPoint(this.origin)===0?0:null;let n=-(this.origin.dot(e.normal)+e.constant)/t;return n>=0?n:null}intersectPlane(e,t){let n=this.distanceToPlane(e);return n===null?null:this.at(n,t)}intersectsPlane(e){let t=e.distanceToPoint(this.origin);return t===0||e.normal.dot(this.direction)*t<0}intersectBox(e,t){let n,s,r,a,o,l,c=1/this.direction.x,h=1/this.direction.y,d=1/this.direction.z,u=this.origin;return c>=0?(n=(e.min.x-u.x)*c,s=(e.max.x-u.x)*c):(n=(e.max.x-u.x)*c,s=(e.min.x-u.x)*c),h>=0?(r=(e.min.y-u.y)*h,a=(e.max.y-u.y)*h):(r=(e.max.y-u.y)*h,a=(e.min.y-u.y)*h),n>a||r>s||((r>n||isNaN(n))&&(n=r),(a<s||isNaN(s))&&(s=a),d>=0?(o=(e.min.z-u.z)*d,l=(e.max.z-u.z)*d):(o=(e.max.z-u.z)*d,l=(e.min.z-u.z)*d),n>l||o>s)||((o>n||n!==n)&&(n=o),(l<s||s!==s)&&(s=l),s<0)?null:this.at(n>=0?n:s,t)}intersectsBox(e){return this.intersectBox(e,ni)!==null}intersectTriangle(e,t,n,s,r){let a=this.origin,o=this.direction,l=o.x,c=o.y,h=o.z,d=e.x-a.x,u=e.y-a.y,f=e.z-a.z,g=t.x-a.x,v=t.y-a.y,_=t.z-a.z,p=n.x-a.x,M=n.y-a.y,C=n.z-a.z,S=Math.abs(l),T=Math.abs(c),A=Math.abs(h),x,E,H,F,N,V,Z,w,U,k,B,z;if(S>=T&&S>=A?(H=l,V=d,U=g,z=p,l>=0?(x=c,E=h,F=u,N=f,Z=v,w=_,k=M,B=C):(x=h,E=c,F=f,N=u,Z=_,w=v,k=C,B=M)):T>=A?(H=c,V=u,U=v,z=M,c>=0?(x=h,E=l,F=f,N=d,Z=_,w=g,k=C,B=p):(x=l,E=h,F=d,N=f,Z=g,w=_,k=p,B=C)):(H=h,V=f,U=_,z=C,h>=0?(x=l,E=c,F=d,N=u,Z=g,w=v,k=p,B=M):(x=c,E=l,F=u,N=d,Z=v,w=g,k=M,B=p)),H===0)return null;let P=x/H,X=E/H,q=1/H,re=F-P*V,Me=N-X*V,K=Z-P*U,ve=w-X*U,Te=k-P*z,Ue=B-X*z,Se=Te*ve-Ue*K,We=re*Ue-Me*Te,bt=K*Me-ve*re;if(s){if(Se<0||We<0||bt<0)return null}else if((Se<0||We<0||bt<0)&&(Se>0||We>0||bt>0))return null;let Be=Se+We+bt;if(Be===0)return null;let st=q*(Se*V+We*U+bt*z);return(Be>0?st<0:st>0)?null:this.at(st/Be,r)}applyMatrix4(e){return this.origin.applyMatrix4(e),this.direction.transformDirection(e),this}equals(e){return e.origin.equals(this.origin)&&e.direction.equals(this.direction)}clone(){return new this.constructor().copy(this)}},Ai=class extends Ei{constructor(e){super(),this.isMeshBasicMaterial=!0,this.type="MeshBasicMaterial",this.color=new je(16777215),this.map=null,this.lightMap=null,this.lightMapIntensity=1,this.aoMap=null,this.aoMapIntensity=1,this.specularMap=null,this.alphaMap=null,this.envMap=null,this.envMapRotation=new wi,this.combine=Ql,this.reflectivity=1,this.refractionRatio=.98,this.wireframe=!1,this.wireframeLinewidth=1,this.wireframeLinecap="round",this.wireframeLinejoin="round",this.fog=!0,this.setValues(e)}copy(e){return super.copy(e),this.color.copy(e.color),this.map=e.map,this.lightMap=e.lightMap,this.lightMapIntensity=e.lightMapIntensity,this.aoMap=e.aoMap,this.aoMapIntensity=e.aoMapIntensity,this.specularMap=e.specularMap,this.alphaMap=e.alphaMap,this.envMap=e.envMap,this.envMapRotation.copy(e.envMapRotation),this.combine=e.combine,this.reflectivity=e.reflectivity,this.refractionRatio=e.refractionRatio,this.wireframe=e.wireframe,this.wireframeLinewidth=e.wireframeLinewidth,this.wireframeLinecap=e.wireframeLinecap,this.wireframeLinejoin=e.wireframeLinejoin,this.fog=e.fog,this}},pu=new mt,$i=new Es,sa=new qi,mu=new G,ra=new G,aa=new G,oa=new G,kl=new G,la=new G,gu=new G,ca=new G,At=class extends ln{constructor(e=new Cn,t=new Ai){super(),this.isMesh=!0,this.type="Mesh",this.geometry=e,this.material=t,this.morphTargetDictionary=void 0,this.morphTargetInfluences=void 0,this.count=1,this.updateMorphTargets()}copy(e,t){return super.copy(e,t),e.morphTargetInfluences!==void 0?this.morphTargetInfluences=e.morphTargetInfluences.slice():this.morphTargetInfluences=void 0,e.morphTargetDictionary!==void 0?this.morphTargetDictionary=Object.assign({},e.morphTargetDictionary):this.morphTargetDictionary=void 0,this.material=Array.isArray(e.material)?e.material.slice():e.material,this.geometry=e.geometry,this}updateMorphTargets(){let t=this.geometry.morphAttributes,n=Object.keys(t);if(n.length>0){let s=t[n[0]];if(s!==void 0){this.morphTargetInfluences=[],this.morphTargetDictionary={};for(let r=0,a=s.length;r<a;r++){let o=s[r].name||String(r);this.morphTargetInfluences.push(0),this.morphTargetDictionary[o]=r}}}}getVertexPosition(e,t){let n=this.geometry,s=n.attributes.position,r=n.morphAttributes.position,a=n.morphTargetsRelative;t.fromBufferAttribute(s,e);let o=this.morphTargetInfluences;if(r&&o){la.set(0,0,0);for(let l=0,c=r.length;l<c;l++){let h=o[l],d=r[l];h!==0&&(kl.fromBufferAttribute(d,e),a?la.addScaledVector(kl,h):la.addScaledVector(kl.sub(t),h))}t.add(la)}return t}intersectsFrustum(e){return e.intersectsObject(this)}raycast(e,t){let n=this.geometry,s=this.material,r=this.matrixWorld;s!==void 0&&(n.boundingSphere===null&&n.computeBoundingSphere(),sa.copy(n.boundingSphere),sa.applyMatrix4(r),$i.copy(e.ray).recast(e.near),!(sa.containsPoint($i.origin)===!1&&($i.intersectSphere(sa,mu)===null||$i.origin.distanceToSquared(mu)>(e.far-e.near)**2))&&(pu.copy(r).invert(),$i.copy(e.ray).applyMatrix4(pu),!(n.boundingBox!==null&&$i.intersectsBox(n.boundingBox)===!1)&&this._computeIntersections(e,t,$i)))}_computeIntersections(e,t,n){let s,r=this.geometry,a=this.material,o=r.index,l=r.attributes.position,c=r.attributes.uv,h=r.attributes.uv1,d=r.attributes.normal,u=r.groups,f=r.drawRange;if(o!==null)if(Array.isArray(a))for(let g=0,v=u.length;g<v;g++){let _=u[g],p=a[_.materialIndex],M=Math.max(_.start,f.start),C=Math.min(o.count,Math.min(_.start+_.count,f.start+f.count));for(let S=M,T=C;S<T;S+=3){let A=o.getX(S),x=o.getX(S+1),E=o.getX(S+2);s=ha(this,p,e,n,c,h,d,A,x,E),s&&(s.faceIndex=Math.floor(S/3),s.face.materialIndex=_.materialIndex,t.push(s))}}else{let g=Math.max(0,f.start),v=Math.min(o.count,f.start+f.count);for(let _=g,p=v;_<p;_+=3){let M=o.getX(_),C=o.getX(_+1),S=o.getX(_+2);s=ha(this,a,e,n,c,h,d,M,C,S),s&&(s.faceIndex=Math.floor(_/3),t.push(s))}}else if(l!==void 0)if(Array.isArray(a))for(let g=0,v=u.length;g<v;g++){let _=u[g],p=a[_.materialIndex],M=Math.max(_.start,f.start),C=Math.min(l.count,Math.min(_.start+_.count,f.start+f.count));for(let S=M,T=C;S<T;S+=3){let A=S,x=S+1,E=S+2;s=ha(this,p,e,n,c,h,d,A,x,E),s&&(s.faceIndex=Math.floor(S/3),s.face.materialIndex=_.materialIndex,t.push(s))}}else{let g=Math.max(0,f.start),v=Math.min(l.count,f.start+f.count);for(let _=g,p=v;_<p;_+=3){let M=_,C=_+1,S=_+2;s=ha(this,a,e,n,c,h,d,M,C,S),s&&(s.faceIndex=Math.floor(_/3),t.push(s))}}}};function qp(i,e,t,n,s,r,a,o){let l;if(e.side===qt?l=n.intersectTriangle(a,r,s,!0,o):l=n.intersectTriangle(s,r,a,e.side===Ii,o),l===null)return null;ca.copy(o),ca.applyMatrix4(i.matrixWorld);let c=t.ray.origin.distanceTo(ca);return c<t.near||c>t.far?null:{distance:c,point:ca.clone(),object:i}}function ha(i,e,t,n,s,r,a,o,l,c){i.getVertexPosition(o,ra),i.getVertexPosition(l,aa),i.getVertexPosition(c,oa);let h=qp(i,e,t,n,ra,aa,oa,gu);if(h){let d=new G;Si.getBarycoord(gu,ra,aa,oa,d),s&&(h.uv=Si.getInterpolatedAttribute(s,o,l,c,d,new et)),r&&(h.uv1=Si.getInterpolatedAttribute(r,o,l,c,d,new et)),a&&(h.normal=Si.getInterpolatedAttribute(a,o,l,c,d,new G),h.normal.dot(n.direction)>0&&h.normal.multiplyScalar(-1));let u={a:o,b:l,c,normal:new G,materialIndex:0};Si.getNormal(ra,aa,oa,u.normal),h.face=u,h.barycoord=d}return h}var Na=class extends Kt{constructor(e=null,t=1,n=1,s,r,a,o,l,c=Dt,h=Dt,d,u){super(null,a,o,l,c,h,s,r,d,u),this.isDataTexture=!0,this.image={data:e,width:t,height:n},this.generateMipmaps=!1,this.flipY=!1,this.unpackAlignment=1}};var Xi=new qi,Yp=new et(.5,.5),ua=new G,Yi=class{constructor(e=new Rn,t=new Rn,n=new Rn,s=new Rn,r=new Rn,a=new Rn){this.planes=[e,t,n,s,r,a]}set(e,t,n,s,r,a){let o=this.planes;return o[0].copy(e),o[1].copy(t),o[2].copy(n),o[3].copy(s),o[4].copy(r),o[5].copy(a),this}copy(e){let t=this.planes;for(let n=0;n<6;n++)t[n].copy(e.planes[n]);return this}setFromProjectionMatrix(e,t=xn,n=!1){let s=this.planes,r=e.elements,a=r[0],o=r[1],l=r[2],c=r[3],h=r[4],d=r[5],u=r[6],f=r[7],g=r[8],v=r[9],_=r[10],p=r[11],M=r[12],C=r[13],S=r[14],T=r[15];if(s[0].setComponents(c-a,f-h,p-g,T-M).normalize(),s[1].setComponents(c+a,f+h,p+g,T+M).normalize(),s[2].setComponents(c+o,f+d,p+v,T+C).normalize(),s[3].setComponents(c-o,f-d,p-v,T-C).normalize(),n)s[4].setComponents(l,u,_,S).normalize(),s[5].setComponents(c-l,f-u,p-_,T-S).normalize();else if(s[4].setComponents(c-l,f-u,p-_,T-S).normalize(),t===xn)s[5].setComponents(c+l,f+u,p+_,T+S).normalize();else if(t===ir)s[5].setComponents(l,u,_,S).normalize();else throw new Error("THREE.Frustum.setFromProjectionMatrix(): Invalid coordinate system: "+t);return this}intersectsObject(e){if(e.boundingSphere!==void 0)e.boundingSphere===null&&e.computeBoundingSphere(),Xi.copy(e.boundingSphere).applyMatrix4(e.matrixWorld);else{let t=e.geometry;t.boundingSphere===null&&t.computeBoundingSphere(),Xi.copy(t.boundingSphere).applyMatrix4(e.matrixWorld)}return this.intersectsSphere(Xi)}intersectsSprite(e){Xi.center.set(0,0,0);let t=Yp.distanceTo(e.center);return Xi.radius=.7071067811865476+t,Xi.applyMatrix4(e.matrixWorld),this.intersectsSphere(Xi)}intersectsSphere(e){let t=this.planes,n=e.center,s=-e.radius;for(let r=0;r<6;r++)if(t[r].distanceToPoint(n)<s)return!1;return!0}intersectsBox(e){let t=this.planes;for(let n=0;n<6;n++){let s=t[n];if(ua.x=s.normal.x>0?e.max.x:e.min.x,ua.y=s.normal.y>0?e.max.y:e.min.y,ua.z=s.normal.z>0?e.max.z:e.min.z,s.distanceToPoint(ua)<0)return!1}return!0}containsPoint(e){let t=this.planes;for(let n=0;n<6;n++)if(t[n].distanceToPoint(e)<0)return!1;return!0}clone(){return new this.constructor().copy(this)}},_u=new mt,Da=class i{constructor(){this.coordinateSystem=xn,this._frustums=[],this._count=0}setFromArrayCamera(e){let t=e.cameras,n=this._frustums;for(let s=0;s<t.length;s++){let r=t[s];_u.multiplyMatrices(r.projectionMatrix,r.matrixWorldInverse),n[s]===void 0&&(n[s]=new Yi),n[s].setFromProjectionMatrix(_u,r.coordinateSystem,r.reversedDepth)}return this._count=t.length,this}getFrustum(e){return this._frustums[e]}intersectsObject(e){let t=this._frustums;for(let n=0;n<this._count;n++)if(t[n].intersectsObject(e))return!0;return!1}intersectsSprite(e){let t=this._frustums;for(let n=0;n<this._count;n++)if(t[n].intersectsSprite(e))return!0;return!1}intersectsSphere(e){let t=this._frustums;for(let n=0;n<this._count;n++)if(t[n].intersectsSphere(e))return!0;return!1}intersectsBox(e){let t=this._frustums;for(let n=0;n<this._count;n++)if(t[n].intersectsBox(e))return!0;return!1}containsPoint(e){let t=this._frustums;for(let n=0;n<this._count;n++)if(t[n].containsPoint(e))return!0;return!1}copy(e){this.coordinateSystem=e.coordinateSystem;let t=this._frustums,n=e._frustums;for(let s=0;s<e._count;s++)t[s]===void 0&&(t[s]=new Yi),t[s].copy(n[s]);return this._count=e._count,this}clone(){return new i().copy(this)}};var Zi=class extends Ei{constructor(e){super(),this.isLineBasicMaterial=!0,this.type="LineBasicMaterial",this.color=new je(16777215),this.map=null,this.linewidth=1,this.linecap="round",this.linejoin="round",this.fog=!0,this.setValues(e)}copy(e){return super.copy(e),this.color.copy(e.color),this.map=e.map,this.linewidth=e.linewidth,this.linecap=e.linecap,this.linejoin=e.linejoin,this.fog=e.fog,this}},Ua=new G,Fa=new G,vu=new mt,js=new Es,da=new qi,Bl=new G,xu=new G,Oa=class extends ln{constructor(e=new Cn,t=new Zi){super(),this.isLine=!0,this.type="Line",this.geometry=e,this.material=t,this.morphTargetDictionary=void 0,this.morphTargetInfluences=void 0,this.updateMorphTargets()}copy(e,t){return super.copy(e,t),e.morphTargetInfluences!==void 0?this.morphTargetInfluences=e.morphTargetInfluences.slice():this.morphTargetInfluences=void 0,e.morphTargetDictionary!==void 0?this.morphTargetDictionary=Object.assign({},e.morphTargetDictionary):this.morphTargetDictionary=void 0,this.material=Array.isArray(e.material)?e.material.slice():e.material,this.geometry=e.geometry,this}computeLineDistances(){let e=this.geometry;if(e.index===null){let t=e.attributes.position,n=[0];for(let s=1,r=t.count;s<r;s++)Ua.fromBufferAttribute(t,s-1),Fa.fromBufferAttribute(t,s),n[s]=n[s-1],n[s]+=Ua.distanceTo(Fa);e.setAttribute("lineDistance",new Jt(n,1))}else Oe("Line.computeLineDistances(): Computation only possible with non-indexed BufferGeometry.");return this}intersectsFrustum(e){return e.intersectsObject(this)}raycast(e,t){let n=this.geometry,s=this.matrixWorld,r=e.params.Line.threshold,a=n.drawRange;if(n.boundingSphere===null&&n.computeBoundingSphere(),da.copy(n.boundingSphere),da.applyMatrix4(s),da.radius+=r,e.ray.intersectsSphere(da)===!1)return;vu.copy(s).invert(),js.copy(e.ray).applyMatrix4(vu);let o=r/((this.scale.x+this.scale.y+this.scale.z)/3),l=o*o,c=this.isLineSegments?2:1,h=n.index,u=n.attributes.position;if(h!==null){let f=Math.max(0,a.start),g=Math.min(h.count,a.start+a.count);for(let v=f,_=g-1;v<_;v+=c){let p=h.getX(v),M=h.getX(v+1),C=fa(this,e,js,l,p,M,v);C&&t.push(C)}if(this.isLineLoop){let v=h.getX(g-1),_=h.getX(f),p=fa(this,e,js,l,v,_,g-1);p&&t.push(p)}}else{let f=Math.max(0,a.start),g=Math.min(u.count,a.start+a.count);for(let v=f,_=g-1;v<_;v+=c){let p=fa(this,e,js,l,v,v+1,v);p&&t.push(p)}if(this.isLineLoop){let v=fa(this,e,js,l,g-1,f,g-1);v&&t.push(v)}}}updateMorphTargets(){let t=this.geometry.morphAttributes,n=Object.keys(t);if(n.length>0){let s=t[n[0]];if(s!==void 0){this.morphTargetInfluences=[],this.morphTargetDictionary={};for(let r=0,a=s.length;r<a;r++){let o=s[r].name||String(r);this.morphTargetInfluences.push(0),this.morphTargetDictionary[o]=r}}}}};function fa(i,e,t,n,s,r,a){let o=i.geometry.attributes.position;if(Ua.fromBufferAttribute(o,s),Fa.fromBufferAttribute(o,r),t.distanceSqToSegment(Ua,Fa,Bl,xu)>n)return;Bl.applyMatrix4(i.matrixWorld);let c=e.ray.origin.distanceTo(Bl);if(!(c<e.near||c>e.far))return{distance:c,point:xu.clone().applyMatrix4(i.matrixWorld),index:a,face:null,faceIndex:null,barycoord:null,object:i}}var yu=new G,bu=new G,As=class extends Oa{constructor(e,t){super(e,t),this.isLineSegments=!0,this.type="LineSegments"}computeLineDistances(){let e=this.geometry;if(e.index===null){let t=e.attributes.position,n=[];for(let s=0,r=t.count;s<r;s+=2)yu.fromBufferAttribute(t,s),bu.fromBufferAttribute(t,s+1),n[s]=s===0?0:n[s-1],n[s+1]=n[s]+yu.distanceTo(bu);e.setAttribute("lineDistance",new Jt(n,1))}else Oe("LineSegments.computeLineDistances(): Computation only possible with non-indexed BufferGeometry.");return this}};var cr=class extends Kt{constructor(e=[],t=ji,n,s,r,a,o,l,c,h){super(e,t,n,s,r,a,o,l,c,h),this.isCubeTexture=!0,this.flipY=!1}get images(){return this.image}set images(e){this.image=e}};var ri=class extends Kt{constructor(e,t,n=Pn,s,r,a,o=Dt,l=Dt,c,h=si,d=1){if(h!==si&&h!==oi)throw new Error("THREE.DepthTexture: format must be either THREE.DepthFormat or THREE.DepthStencilFormat");let u={width:e,height:t,depth:d};super(u,s,r,a,o,l,h,n,c),this.isDepthTexture=!0,this.flipY=!1,this.generateMipmaps=!1,this.compareFunction=null}copy(e){return super.copy(e),this.source=new Ss(Object.assign({},e.image)),this.compareFunction=e.compareFunction,this}toJSON(e){let t=super.toJSON(e);return t.compareFunction=this.compareFunction,t}},hr=class extends ri{constructor(e,t=Pn,n=ji,s,r,a=Dt,o=Dt,l,c=si){let h={width:e,height:e,depth:1},d=[h,h,h,h,h,h];super(e,e,t,n,s,r,a,o,l,c),this.image=d,this.isCubeDepthTexture=!0,this.isCubeTexture=!0}get images(){return this.image}set images(e){this.image=e}},ur=class extends Kt{constructor(e=null){super(),this.sourceTexture=e,this.isExternalTexture=!0}copy(e){return super.copy(e),this.sourceTexture=e.sourceTexture,this}},Rs=class i extends Cn{constructor(e=1,t=1,n=1,s=1,r=1,a=1){super(),this.type="BoxGeometry",this.parameters={width:e,height:t,depth:n,widthSegments:s,heightSegments:r,depthSegments:a};let o=this;s=Math.floor(s),r=Math.floor(r),a=Math.floor(a);let l=[],c=[],h=[],d=[],u=0,f=0;g("z","y","x",-1,-1,n,t,e,a,r,0),g("z","y","x",1,-1,n,t,-e,a,r,1),g("x","z","y",1,1,e,n,t,s,a,2),g("x","z","y",1,-1,e,n,-t,s,a,3),g("x","y","z",1,-1,e,t,n,s,r,4),g("x","y","z",-1,-1,e,t,-n,s,r,5),this.setIndex(l),this.setAttribute("position",new Jt(c,3)),this.setAttribute("normal",new Jt(h,3)),this.setAttribute("uv",new Jt(d,2));function g(v,_,p,M,C,S,T,A,x,E,H){let F=S/x,N=T/E,V=S/2,Z=T/2,w=A/2,U=x+1,k=E+1,B=0,z=0,P=new G;for(let X=0;X<k;X++){let q=X*N-Z;for(let re=0;re<U;re++){let Me=re*F-V;P[v]=Me*M,P[_]=q*C,P[p]=w,c.push(P.x,P.y,P.z),P[v]=0,P[_]=0,P[p]=A>0?1:-1,h.push(P.x,P.y,P.z),d.push(re/x),d.push(1-X/E),B+=1}}for(let X=0;X<E;X++)for(let q=0;q<x;q++){let re=u+q+U*X,Me=u+q+U*(X+1),K=u+(q+1)+U*(X+1),ve=u+(q+1)+U*X;l.push(re,Me,ve),l.push(Me,K,ve),z+=6}o.addGroup(f,z,H),f+=z,u+=B}}copy(e){return super.copy(e),this.parameters=Object.assign({},e.parameters),this}static fromJSON(e){return new i(e.width,e.height,e.depth,e.widthSegments,e.heightSegments,e.depthSegments)}};var dr=class i extends Cn{constructor(e=1,t=1,n=1,s=1){super(),this.type="PlaneGeometry",this.parameters={width:e,height:t,widthSegments:n,heightSegments:s};let r=e/2,a=t/2,o=Math.floor(n),l=Math.floor(s),c=o+1,h=l+1,d=e/o,u=t/l,f=[],g=[],v=[],_=[];for(let p=0;p<h;p++){let M=p*u-a;for(let C=0;C<c;C++){let S=C*d-r;g.push(S,-M,0),v.push(0,0,1),_.push(C/o),_.push(1-p/l)}}for(let p=0;p<l;p++)for(let M=0;M<o;M++){let C=M+c*p,S=M+c*(p+1),T=M+1+c*(p+1),A=M+1+c*p;f.push(C,S,A),f.push(S,T,A)}this.setIndex(f),this.setAttribute("position",new Jt(g,3)),this.setAttribute("normal",new Jt(v,3)),this.setAttribute("uv",new Jt(_,2))}copy(e){return super.copy(e),this.parameters=Object.assign({},e.parameters),this}static fromJSON(e){return new i(e.width,e.height,e.widthSegments,e.heightSegments)}};function es(i){let e={};for(let t in i){e[t]={};for(let n in i[t]){let s=i[t][n];if(Mu(s))s.isRenderTargetTexture?(Oe("UniformsUtils: Textures of render targets cannot be cloned via cloneUniforms() or mergeUniforms()."),e[t][n]=null):e[t][n]=s.clone();else if(Array.isArray(s))if(Mu(s[0])){let r=[];for(let a=0,o=s.length;a<o;a++)r[a]=s[a].clone();e[t][n]=r}else e[t][n]=s.slice();else e[t][n]=s}}return e}function Gt(i){let e={};for(let t=0;t<i.length;t++){let n=es(i[t]);for(let s in n)e[s]=n[s]}return e}function Mu(i){return i&&(i.isColor||i.isMatrix3||i.isMatrix4||i.isVector2||i.isVector3||i.isVector4||i.isTexture||i.isQuaternion)}function Zp(i){let e=[];for(let t=0;t<i.length;t++)e.push(i[t].clone());return e}function Mc(i){let e=i.getRenderTarget();return e===null?i.outputColorSpace:e.isXRRenderTarget===!0?e.texture.colorSpace:Ke.workingColorSpace}var pd={clone:es,merge:Gt},Jp=`void main() {
	gl_Position = projectionMatrix * modelViewMatrix * vec4( position, 1.0 );
}`,Kp=`void main() {
	gl_FragColor = vec4( 1.0, 0.0, 0.0, 1.0 );
}`,Hn=class extends Ei{constructor(e){super(),this.isShaderMaterial=!0,this.type="ShaderMaterial",this.defines={},this.uniforms={},this.uniformsGroups=[],this.vertexShader=Jp,this.fragmentShader=Kp,this.linewidth=1,this.wireframe=!1,this.wireframeLinewidth=1,this.fog=!1,this.lights=!1,this.clipping=!1,this.forceSinglePass=!0,this.extensions={clipCullDistance:!1,multiDraw:!1},this.defaultAttributeValues={color:[1,1,1],uv:[0,0],uv1:[0,0]},this.index0AttributeName=void 0,this.uniformsNeedUpdate=!1,this.glslVersion=null,e!==void 0&&this.setValues(e)}copy(e){return super.copy(e),this.fragmentShader=e.fragmentShader,this.vertexShader=e.vertexShader,this.uniforms=es(e.uniforms),this.uniformsGroups=Zp(e.uniformsGroups),this.defines=Object.assign({},e.defines),this.wireframe=e.wireframe,this.wireframeLinewidth=e.wireframeLinewidth,this.fog=e.fog,this.lights=e.lights,this.clipping=e.clipping,this.extensions=Object.assign({},e.extensions),this.glslVersion=e.glslVersion,this.defaultAttributeValues=Object.assign({},e.defaultAttributeValues),this.index0AttributeName=e.index0AttributeName,this.uniformsNeedUpdate=e.uniformsNeedUpdate,this}toJSON(e){let t=super.toJSON(e);t.glslVersion=this.glslVersion,t.uniforms={};for(let s in this.uniforms){let a=this.uniforms[s].value;a&&a.isTexture?t.uniforms[s]={type:"t",value:a.toJSON(e).uuid}:a&&a.isColor?t.uniforms[s]={type:"c",value:a.getHex()}:a&&a.isVector2?t.uniforms[s]={type:"v2",value:a.toArray()}:a&&a.isVector3?t.uniforms[s]={type:"v3",value:a.toArray()}:a&&a.isVector4?t.uniforms[s]={type:"v4",value:a.toArray()}:a&&a.isMatrix3?t.uniforms[s]={type:"m3",value:a.toArray()}:a&&a.isMatrix4?t.uniforms[s]={type:"m4",value:a.toArray()}:t.uniforms[s]={value:a}}Object.keys(this.defines).length>0&&(t.defines=this.defines),t.vertexShader=this.vertexShader,t.fragmentShader=this.fragmentShader,t.lights=this.lights,t.clipping=this.clipping;let n={};for(let s in this.extensions)this.extensions[s]===!0&&(n[s]=!0);return Object.keys(n).length>0&&(t.extensions=n),t}fromJSON(e,t){if(super.fromJSON(e,t),e.uniforms!==void 0)for(let n in e.uniforms){let s=e.uniforms[n];switch(this.uniforms[n]={},s.type){case"t":this.uniforms[n].value=t[s.value]||null;break;case"c":this.uniforms[n].value=new je().setHex(s.value);break;case"v2":this.uniforms[n].value=new et().fromArray(s.value);break;case"v3":this.uniforms[n].value=new G().fromArray(s.value);break;case"v4":this.uniforms[n].value=new xt().fromArray(s.value);break;case"m3":this.uniforms[n].value=new Ge().fromArray(s.value);break;case"m4":this.uniforms[n].value=new mt().fromArray(s.value);break;default:this.uniforms[n].value=s.value}}if(e.defines!==void 0&&(this.defines=e.defines),e.vertexShader!==void 0&&(this.vertexShader=e.vertexShader),e.fragmentShader!==void 0&&(this.fragmentShader=e.fragmentShader),e.glslVersion!==void 0&&(this.glslVersion=e.glslVersion),e.extensions!==void 0)for(let n in e.extensions)this.extensions[n]=e.extensions[n];return e.lights!==void 0&&(this.lights=e.lights),e.clipping!==void 0&&(this.clipping=e.clipping),this}},ka=class extends Hn{constructor(e){super(e),this.isRawShaderMaterial=!0,this.type="RawShaderMaterial"}};var Ba=class extends Ei{constructor(e){super(),this.isMeshDepthMaterial=!0,this.type="MeshDepthMaterial",this.depthPacking=Qu,this.map=null,this.alphaMap=null,this.displacementMap=null,this.displacementScale=1,this.displacementBias=0,this.wireframe=!1,this.wireframeLinewidth=1,this.setValues(e)}copy(e){return super.copy(e),this.depthPacking=e.depthPacking,this.map=e.map,this.alphaMap=e.alphaMap,this.displacementMap=e.displacementMap,this.displacementScale=e.displacementScale,this.displacementBias=e.displacementBias,this.wireframe=e.wireframe,this.wireframeLinewidth=e.wireframeLinewidth,this}},za=class extends Ei{constructor(e){super(),this.isMeshDistanceMaterial=!0,this.type="MeshDistanceMaterial",this.map=null,this.alphaMap=null,this.displacementMap=null,this.displacementScale=1,this.displacementBias=0,this.setValues(e)}copy(e){return super.copy(e),this.map=e.map,this.alphaMap=e.alphaMap,this.displacementMap=e.displacementMap,this.displacementScale=e.displacementScale,this.displacementBias=e.displacementBias,this}};function _s(i,e){return!i||i.constructor===e?i:typeof e.BYTES_PER_ELEMENT=="number"?new e(i):Array.prototype.slice.call(i)}function pa(i){return i!==void 0&&i.inTangents!==void 0&&i.outTangents!==void 0}var Ri=class{constructor(e,t,n,s){this.parameterPositions=e,this._cachedIndex=0,this.resultBuffer=s!==void 0?s:new t.constructor(n),this.sampleValues=t,this.valueSize=n,this.settings=null,this.DefaultSettings_={}}evaluate(e){let t=this.parameterPositions,n=this._cachedIndex,s=t[n],r=t[n-1];n:{e:{let a;t:{i:if(!(e<s)){for(let o=n+2;;){if(s===void 0){if(e<r)break i;return n=t.length,this._cachedIndex=n,this.copySampleValue_(n-1)}if(n===o)break;if(r=s,s=t[++n],e<s)break e}a=t.length;break t}if(!(e>=r)){let o=t[1];e<o&&(n=2,r=o);for(let l=n-2;;){if(r===void 0)return this._cachedIndex=0,this.copySampleValue_(0);if(n===l)break;if(s=r,r=t[--n-1],e>=r)break e}a=n,n=0;break t}break n}for(;n<a;){let o=n+a>>>1;e<t[o]?a=o:n=o+1}if(s=t[n],r=t[n-1],r===void 0)return this._cachedIndex=0,this.copySampleValue_(0);if(s===void 0)return n=t.length,this._cachedIndex=n,this.copySampleValue_(n-1)}this._cachedIndex=n,this.intervalChanged_(n,r,s)}return this.interpolate_(n,r,e,s)}getSettings_(){return this.settings||this.DefaultSettings_}copySampleValue_(e){let t=this.resultBuffer,n=this.sampleValues,s=this.valueSize,r=e*s;for(let a=0;a!==s;++a)t[a]=n[r+a];return t}interpolate_(){throw new Error("THREE.Interpolant: Call to abstract method.")}intervalChanged_(){}},Ga=class extends Ri{constructor(e,t,n,s){super(e,t,n,s),this._weightPrev=-0,this._offsetPrev=-0,this._weightNext=-0,this._offsetNext=-0,this.DefaultSettings_={endingStart:Gl,endingEnd:Gl}}intervalChanged_(e,t,n){let s=this.parameterPositions,r=e-2,a=e+1,o=s[r],l=s[a];if(o===void 0)switch(this.getSettings_().endingStart){case Vl:r=e,o=2*t-n;break;case Hl:r=s.length-2,o=t+s[r]-s[r+1];break;default:r=e,o=n}if(l===void 0)switch(this.getSettings_().endingEnd){case Vl:a=e,l=2*n-t;break;case Hl:a=1,l=n+s[1]-s[0];break;default:a=e-1,l=t}let c=(n-t)*.5,h=this.valueSize;this._weightPrev=c/(t-o),this._weightNext=c/(l-n),this._offsetPrev=r*h,this._offsetNext=a*h}interpolate_(e,t,n,s){let r=this.resultBuffer,a=this.sampleValues,o=this.valueSize,l=e*o,c=l-o,h=this._offsetPrev,d=this._offsetNext,u=this._weightPrev,f=this._weightNext,g=(n-t)/(s-t),v=g*g,_=v*g,p=-u*_+2*u*v-u*g,M=(1+u)*_+(-1.5-2*u)*v+(-.5+u)*g+1,C=(-1-f)*_+(1.5+f)*v+.5*g,S=f*_-f*v;for(let T=0;T!==o;++T)r[T]=p*a[h+T]+M*a[c+T]+C*a[l+T]+S*a[d+T];return r}},Va=class extends Ri{constructor(e,t,n,s){super(e,t,n,s)}interpolate_(e,t,n,s){let r=this.resultBuffer,a=this.sampleValues,o=this.valueSize,l=e*o,c=l-o,h=(n-t)/(s-t),d=1-h;for(let u=0;u!==o;++u)r[u]=a[c+u]*d+a[l+u]*h;return r}},Ha=class extends Ri{constructor(e,t,n,s){super(e,t,n,s)}interpolate_(e){return this.copySampleValue_(e-1)}},Wa=class extends Ri{interpolate_(e,t,n,s){let r=this.resultBuffer,a=this.sampleValues,o=this.valueSize,l=e*o,c=l-o,h=this.inTangents,d=this.outTangents;if(!h||!d){let g=(n-t)/(s-t),v=1-g;for(let _=0;_!==o;++_)r[_]=a[c+_]*v+a[l+_]*g;return r}let u=o*2,f=e-1;for(let g=0;g!==o;++g){let v=a[c+g],_=a[l+g],p=f*u+g*2,M=d[p],C=d[p+1],S=e*u+g*2,T=h[S],A=h[S+1],x=Qp(n,t,M,T,s);r[g]=md(x,v,C,A,_)}return r}};function md(i,e,t,n,s){let r=1-i;return r*r*r*e+3*r*r*i*t+3*r*i*i*n+i*i*i*s}function jp(i,e,t,n,s){let r=1-i;return 3*r*r*(t-e)+6*r*i*(n-t)+3*i*i*(s-n)}function Qp(i,e,t,n,s){let r=(i-e)/(s-e);for(let a=0;a<8;a++){let o=md(r,e,t,n,s)-i;if(Math.abs(o)<1e-10)break;let l=jp(r,e,t,n,s);if(Math.abs(l)<1e-10)break;r=Math.max(0,Math.min(1,r-o/l))}return r}var cn=class{constructor(e,t,n,s){if(e===void 0)throw new Error("THREE.KeyframeTrack: track name is undefined");if(t===void 0||t.length===0)throw new Error("THREE.KeyframeTrack: no keyframes in track named "+e);this.name=e,this.times=_s(t,this.TimeBufferType),this.values=_s(n,this.ValueBufferType),this.setInterpolation(s||this.DefaultInterpolation)}static toJSON(e){let t=e.constructor,n;if(t.toJSON!==this.toJSON)n=t.toJSON(e);else{n={name:e.name,times:_s(e.times,Array),values:_s(e.values,Array)};let s=e.getInterpolation();s!==e.DefaultInterpolation&&(n.interpolation=s),pa(e.settings)&&(n.settings={inTangents:_s(e.settings.inTangents,Array),outTangents:_s(e.settings.outTangents,Array)})}return n.type=e.ValueTypeName,n}InterpolantFactoryMethodDiscrete(e){return new Ha(this.times,this.values,this.getValueSize(),e)}InterpolantFactoryMethodLinear(e){return new Va(this.times,this.values,this.getValueSize(),e)}InterpolantFactoryMethodSmooth(e){return new Ga(this.times,this.values,this.getValueSize(),e)}InterpolantFactoryMethodBezier(e){let t=new Wa(this.times,this.values,this.getValueSize(),e);return this.settings&&(t.inTangents=this.settings.inTangents,t.outTangents=this.settings.outTangents),t}setInterpolation(e){let t;switch(e){case er:t=this.InterpolantFactoryMethodDiscrete;break;case Ra:t=this.InterpolantFactoryMethodLinear;break;case _a:t=this.InterpolantFactoryMethodSmooth;break;case zl:t=this.InterpolantFactoryMethodBezier;break}if(t===void 0){let n="unsupported interpolation for "+this.ValueTypeName+" keyframe track named "+this.name;if(this.createInterpolant===void 0)if(e!==this.DefaultInterpolation)this.setInterpolation(this.DefaultInterpolation);else throw new Error(n);return Oe("KeyframeTrack:",n),this}return this.createInterpolant=t,this}getInterpolation(){switch(this.createInterpolant){case this.InterpolantFactoryMethodDiscrete:return er;case this.InterpolantFactoryMethodLinear:return Ra;case this.InterpolantFactoryMethodSmooth:return _a;case this.InterpolantFactoryMethodBezier:return zl}}getValueSize(){return this.values.length/this.times.length}shift(e){if(e!==0){let t=this.times;for(let n=0,s=t.length;n!==s;++n)t[n]+=e;pa(this.settings)&&(Su(this.settings.inTangents,e),Su(this.settings.outTangents,e))}return this}scale(e){if(e!==1){let t=this.times;for(let n=0,s=t.length;n!==s;++n)t[n]*=e;pa(this.settings)&&(wu(this.settings.inTangents,e),wu(this.settings.outTangents,e))}return this}trim(e,t){let n=this.times,s=n.length,r=0,a=s-1;for(;r!==s&&n[r]<e;)++r;for(;a!==-1&&n[a]>t;)--a;if(++a,r!==0||a!==s){r>=a&&(a=Math.max(a,1),r=a-1);let o=this.getValueSize();this.times=n.slice(r,a),this.values=this.values.slice(r*o,a*o)}return this}validate(){let e=!0,t=this.getValueSize();t-Math.floor(t)!==0&&(ze("KeyframeTrack: Invalid value size in track.",this),e=!1);let n=this.times,s=this.values,r=n.length;r===0&&(ze("KeyframeTrack: Track is empty.",this),e=!1);let a=null;for(let o=0;o!==r;o++){let l=n[o];if(typeof l=="number"&&isNaN(l)){ze("KeyframeTrack: Time is not a valid number.",this,o,l),e=!1;break}if(a!==null&&a>l){ze("KeyframeTrack: Out of order keys.",this,o,l,a),e=!1;break}a=l}if(s!==void 0&&Ap(s))for(let o=0,l=s.length;o!==l;++o){let c=s[o];if(isNaN(c)){ze("KeyframeTrack: Value is not a valid number.",this,o,c),e=!1;break}}return e}optimize(){let e=this.times.slice(),t=this.values.slice(),n=this.getValueSize(),s=this.getInterpolation()===_a,r=e.length-1,a=1;for(let o=1;o<r;++o){let l=!1,c=e[o],h=e[o+1];if(c!==h&&(o!==1||c!==e[0]))if(s)l=!0;else{let d=o*n,u=d-n,f=d+n;for(let g=0;g!==n;++g){let v=t[d+g];if(v!==t[u+g]||v!==t[f+g]){l=!0;break}}}if(l){if(o!==a){e[a]=e[o];let d=o*n,u=a*n;for(let f=0;f!==n;++f)t[u+f]=t[d+f]}++a}}if(r>0){e[a]=e[r];for(let o=r*n,l=a*n,c=0;c!==n;++c)t[l+c]=t[o+c];++a}return a!==e.length?(this.times=e.slice(0,a),this.values=t.slice(0,a*n)):(this.times=e,this.values=t),this}clone(){let e=this.times.slice(),t=this.values.slice(),n=this.constructor,s=new n(this.name,e,t);return s.createInterpolant=this.createInterpolant,pa(this.settings)&&(s.settings={inTangents:this.settings.inTangents.slice(),outTangents:this.settings.outTangents.slice()}),s}};function Su(i,e){for(let t=0,n=i.length;t!==n;t+=2)i[t]+=e}function wu(i,e){for(let t=0,n=i.length;t!==n;t+=2)i[t]*=e}cn.prototype.ValueTypeName="";cn.prototype.TimeBufferType=Float32Array;cn.prototype.ValueBufferType=Float32Array;cn.prototype.DefaultInterpolation=Ra;var Ci=class extends cn{constructor(e,t,n){super(e,t,n)}};Ci.prototype.ValueTypeName="bool";Ci.prototype.ValueBufferType=Array;Ci.prototype.DefaultInterpolation=er;Ci.prototype.InterpolantFactoryMethodLinear=void 0;Ci.prototype.InterpolantFactoryMethodSmooth=void 0;var $a=class extends cn{constructor(e,t,n,s){super(e,t,n,s)}};$a.prototype.ValueTypeName="color";var Xa=class extends cn{constructor(e,t,n,s){super(e,t,n,s)}};Xa.prototype.ValueTypeName="number";var qa=class extends Ri{constructor(e,t,n,s){super(e,t,n,s)}interpolate_(e,t,n,s){let r=this.resultBuffer,a=this.sampleValues,o=this.valueSize,l=(n-t)/(s-t),c=e*o;for(let h=c+o;c!==h;c+=4)yn.slerpFlat(r,0,a,c-o,a,c,l);return r}},fr=class extends cn{constructor(e,t,n,s){super(e,t,n,s)}InterpolantFactoryMethodLinear(e){return new qa(this.times,this.values,this.getValueSize(),e)}};fr.prototype.ValueTypeName="quaternion";fr.prototype.InterpolantFactoryMethodSmooth=void 0;var Pi=class extends cn{constructor(e,t,n){super(e,t,n)}};Pi.prototype.ValueTypeName="string";Pi.prototype.ValueBufferType=Array;Pi.prototype.DefaultInterpolation=er;Pi.prototype.InterpolantFactoryMethodLinear=void 0;Pi.prototype.InterpolantFactoryMethodSmooth=void 0;var Ya=class extends cn{constructor(e,t,n,s){super(e,t,n,s)}};Ya.prototype.ValueTypeName="vector";var Za=class{constructor(e,t,n){let s=this,r=!1,a=0,o=0,l,c=[];this.onStart=void 0,this.onLoad=e,this.onProgress=t,this.onError=n,this._abortController=null,this.itemStart=function(h){o++,r===!1&&s.onStart!==void 0&&s.onStart(h,a,o),r=!0},this.itemEnd=function(h){a++,s.onProgress!==void 0&&s.onProgress(h,a,o),a===o&&(r=!1,s.onLoad!==void 0&&s.onLoad())},this.itemError=function(h){s.onError!==void 0&&s.onError(h)},this.resolveURL=function(h){return h=h.normalize("NFC"),l?l(h):h},this.setURLModifier=function(h){return l=h,this},this.addHandler=function(h,d){return c.push(h,d),this},this.removeHandler=function(h){let d=c.indexOf(h);return d!==-1&&c.splice(d,2),this},this.getHandler=function(h){for(let d=0,u=c.length;d<u;d+=2){let f=c[d],g=c[d+1];if(f.global&&(f.lastIndex=0),f.test(h))return g}return null},this.abort=function(){return this.abortController.abort(),this._abortController=null,this}}get abortController(){return this._abortController||(this._abortController=new AbortController),this._abortController}},gd=new Za,Ja=class{constructor(e){this.manager=e!==void 0?e:gd,this.crossOrigin="anonymous",this.withCredentials=!1,this.path="",this.resourcePath="",this.requestHeader={},this.priority="auto",this.cache="default",typeof __THREE_DEVTOOLS__<"u"&&__THREE_DEVTOOLS__.dispatchEvent(new CustomEvent("observe",{detail:this}))}load(){}loadAsync(e,t){let n=this;return new Promise(function(s,r){n.load(e,s,t,r)})}parse(){}setCrossOrigin(e){return this.crossOrigin=e,this}setWithCredentials(e){return this.withCredentials=e,this}setPath(e){return this.path=e,this}setResourcePath(e){return this.resourcePath=e,this}setRequestHeader(e){return this.requestHeader=e,this}setPriority(e){return this.priority=e,this}setCache(e){return this.cache=e,this}abort(){return this}};Ja.DEFAULT_MATERIAL_NAME="__DEFAULT";var ma=new G,ga=new yn,zn=new G,pr=class extends ln{constructor(){super(),this.isCamera=!0,this.type="Camera",this.matrixWorldInverse=new mt,this.projectionMatrix=new mt,this.projectionMatrixInverse=new mt,this.coordinateSystem=xn,this._reversedDepth=!1}get reversedDepth(){return this._reversedDepth}copy(e,t){return super.copy(e,t),this.matrixWorldInverse.copy(e.matrixWorldInverse),this.projectionMatrix.copy(e.projectionMatrix),this.projectionMatrixInverse.copy(e.projectionMatrixInverse),this.coordinateSystem=e.coordinateSystem,this}getWorldDirection(e){return super.getWorldDirection(e).negate()}updateMatrixWorld(e){super.updateMatrixWorld(e),this.matrixWorld.decompose(ma,ga,zn),zn.x===1&&zn.y===1&&zn.z===1?this.matrixWorldInverse.copy(this.matrixWorld).invert():this.matrixWorldInverse.compose(ma,ga,zn.set(1,1,1)).invert()}updateWorldMatrix(e,t,n=!1){super.updateWorldMatrix(e,t,n),this.matrixWorld.decompose(ma,ga,zn),zn.x===1&&zn.y===1&&zn.z===1?this.matrixWorldInverse.copy(this.matrixWorld).invert():this.matrixWorldInverse.compose(ma,ga,zn.set(1,1,1)).invert()}clone(){return new this.constructor().copy(this)}},Mi=new G,Tu=new et,Eu=new et,rn=class extends pr{constructor(e=50,t=1,n=.1,s=2e3){super(),this.isPerspectiveCamera=!0,this.type="PerspectiveCamera",this.fov=e,this.zoom=1,this.near=n,this.far=s,this.focus=10,this.aspect=t,this.view=null,this.filmGauge=35,this.filmOffset=0,this.updateProjectionMatrix()}copy(e,t){return super.copy(e,t),this.fov=e.fov,this.zoom=e.zoom,this.near=e.near,this.far=e.far,this.focus=e.focus,this.aspect=e.aspect,this.view=e.view===null?null:Object.assign({},e.view),this.filmGauge=e.filmGauge,this.filmOffset=e.filmOffset,this}setFocalLength(e){let t=.5*this.getFilmHeight()/e;this.fov=Ca*2*Math.atan(t),this.updateProjectionMatrix()}getFocalLength(){let e=Math.tan(vl*.5*this.fov);return .5*this.getFilmHeight()/e}getEffectiveFOV(){return Ca*2*Math.atan(Math.tan(vl*.5*this.fov)/this.zoom)}getFilmWidth(){return this.filmGauge*Math.min(this.aspect,1)}getFilmHeight(){return this.filmGauge/Math.max(this.aspect,1)}getViewBounds(e,t,n){Mi.set(-1,-1,.5).applyMatrix4(this.projectionMatrixInverse),t.set(Mi.x,Mi.y).multiplyScalar(-e/Mi.z),Mi.set(1,1,.5).applyMatrix4(this.projectionMatrixInverse),n.set(Mi.x,Mi.y).multiplyScalar(-e/Mi.z)}getViewSize(e,t){return this.getViewBounds(e,Tu,Eu),t.subVectors(Eu,Tu)}setViewOffset(e,t,n,s,r,a){this.aspect=e/t,this.view===null&&(this.view={enabled:!0,fullWidth:1,fullHeight:1,offsetX:0,offsetY:0,width:1,height:1}),this.view.enabled=!0,this.view.fullWidth=e,this.view.fullHeight=t,this.view.offsetX=n,this.view.offsetY=s,this.view.width=r,this.view.height=a,this.updateProjectionMatrix()}clearViewOffset(){this.view!==null&&(this.view.enabled=!1),this.updateProjectionMatrix()}updateProjectionMatrix(){let e=this.near,t=e*Math.tan(vl*.5*this.fov)/this.zoom,n=2*t,s=this.aspect*n,r=-.5*s,a=this.view;if(this.view!==null&&this.view.enabled){let l=a.fullWidth,c=a.fullHeight;r+=a.offsetX*s/l,t-=a.offsetY*n/c,s*=a.width/l,n*=a.height/c}let o=this.filmOffset;o!==0&&(r+=e*o/this.getFilmWidth()),this.projectionMatrix.makePerspective(r,r+s,t,t-n,e,this.far,this.coordinateSystem,this.reversedDepth),this.projectionMatrixInverse.copy(this.projectionMatrix).invert()}toJSON(e){let t=super.toJSON(e);return t.object.fov=this.fov,t.object.zoom=this.zoom,t.object.near=this.near,t.object.far=this.far,t.object.focus=this.focus,t.object.aspect=this.aspect,this.view!==null&&(t.object.view=Object.assign({},this.view)),t.object.filmGauge=this.filmGauge,t.object.filmOffset=this.filmOffset,t}};var Cs=class extends pr{constructor(e=-1,t=1,n=1,s=-1,r=.1,a=2e3){super(),this.isOrthographicCamera=!0,this.type="OrthographicCamera",this.zoom=1,this.view=null,this.left=e,this.right=t,this.top=n,this.bottom=s,this.near=r,this.far=a,this.updateProjectionMatrix()}copy(e,t){return super.copy(e,t),this.left=e.left,this.right=e.right,this.top=e.top,this.bottom=e.bottom,this.near=e.near,this.far=e.far,this.zoom=e.zoom,this.view=e.view===null?null:Object.assign({},e.view),this}setViewOffset(e,t,n,s,r,a){this.view===null&&(this.view={enabled:!0,fullWidth:1,fullHeight:1,offsetX:0,offsetY:0,width:1,height:1}),this.view.enabled=!0,this.view.fullWidth=e,this.view.fullHeight=t,this.view.offsetX=n,this.view.offsetY=s,this.view.width=r,this.view.height=a,this.updateProjectionMatrix()}clearViewOffset(){this.view!==null&&(this.view.enabled=!1),this.updateProjectionMatrix()}updateProjectionMatrix(){let e=(this.right-this.left)/(2*this.zoom),t=(this.top-this.bottom)/(2*this.zoom),n=(this.right+this.left)/2,s=(this.top+this.bottom)/2,r=n-e,a=n+e,o=s+t,l=s-t;if(this.view!==null&&this.view.enabled){let c=(this.right-this.left)/this.view.fullWidth/this.zoom,h=(this.top-this.bottom)/this.view.fullHeight/this.zoom;r+=c*this.view.offsetX,a=r+c*this.view.width,o-=h*this.view.offsetY,l=o-h*this.view.height}this.projectionMatrix.makeOrthographic(r,a,o,l,this.near,this.far,this.coordinateSystem,this.reversedDepth),this.projectionMatrixInverse.copy(this.projectionMatrix).invert()}toJSON(e){let t=super.toJSON(e);return t.object.zoom=this.zoom,t.object.left=this.left,t.object.right=this.right,t.object.top=this.top,t.object.bottom=this.bottom,t.object.near=this.near,t.object.far=this.far,this.view!==null&&(t.object.view=Object.assign({},this.view)),t}};var vs=-90,xs=1,Ps=class extends ln{constructor(e,t,n){super(),this.type="CubeCamera",this.renderTarget=n,this.coordinateSystem=null,this.activeMipmapLevel=0;let s=new rn(vs,xs,e,t);s.layers=this.layers,this.add(s);let r=new rn(vs,xs,e,t);r.layers=this.layers,this.add(r);let a=new rn(vs,xs,e,t);a.layers=this.layers,this.add(a);let o=new rn(vs,xs,e,t);o.layers=this.layers,this.add(o);let l=new rn(vs,xs,e,t);l.layers=this.layers,this.add(l);let c=new rn(vs,xs,e,t);c.layers=this.layers,this.add(c)}updateCoordinateSystem(){let e=this.coordinateSystem,t=this.children.concat(),[n,s,r,a,o,l]=t;for(let c of t)this.remove(c);if(e===xn)n.up.set(0,1,0),n.lookAt(1,0,0),s.up.set(0,1,0),s.lookAt(-1,0,0),r.up.set(0,0,-1),r.lookAt(0,1,0),a.up.set(0,0,1),a.lookAt(0,-1,0),o.up.set(0,1,0),o.lookAt(0,0,1),l.up.set(0,1,0),l.lookAt(0,0,-1);else if(e===ir)n.up.set(0,-1,0),n.lookAt(-1,0,0),s.up.set(0,-1,0),s.lookAt(1,0,0),r.up.set(0,0,1),r.lookAt(0,1,0),a.up.set(0,0,-1),a.lookAt(0,-1,0),o.up.set(0,-1,0),o.lookAt(0,0,1),l.up.set(0,-1,0),l.lookAt(0,0,-1);else throw new Error("THREE.CubeCamera.updateCoordinateSystem(): Invalid coordinate system: "+e);for(let c of t)this.add(c),c.updateMatrixWorld()}update(e,t){this.parent===null&&this.updateMatrixWorld();let{renderTarget:n,activeMipmapLevel:s}=this;this.coordinateSystem!==e.coordinateSystem&&(this.coordinateSystem=e.coordinateSystem,this.updateCoordinateSystem());let[r,a,o,l,c,h]=this.children,d=e.getRenderTarget(),u=e.getActiveCubeFace(),f=e.getActiveMipmapLevel(),g=e.xr.enabled;e.xr.enabled=!1;let v=n.texture.mipmapsAutoUpdate;n.texture.mipmapsAutoUpdate=!1;let _=!1;e.isWebGLRenderer===!0?_=e.state.buffers.depth.getReversed():_=e.reversedDepthBuffer,e.setRenderTarget(n,0,s),_&&e.autoClear===!1&&e.clearDepth(),e.render(t,r),e.setRenderTarget(n,1,s),_&&e.autoClear===!1&&e.clearDepth(),e.render(t,a),e.setRenderTarget(n,2,s),_&&e.autoClear===!1&&e.clearDepth(),e.render(t,o),e.setRenderTarget(n,3,s),_&&e.autoClear===!1&&e.clearDepth(),e.render(t,l),e.setRenderTarget(n,4,s),_&&e.autoClear===!1&&e.clearDepth(),e.render(t,c),n.texture.mipmapsAutoUpdate=v,e.setRenderTarget(n,5,s),_&&e.autoClear===!1&&e.clearDepth(),e.render(t,h),e.setRenderTarget(d,u,f),e.xr.enabled=g,n.texture.needsPMREMUpdate=!0}},Ka=class extends rn{constructor(e=[]){super(),this.isArrayCamera=!0,this.isMultiViewCamera=!1,this.cameras=e,this.perCameraFrustumCulled=!1}};var Sc="\\[\\]\\.:\\/",em=new RegExp("["+Sc+"]","g"),wc="[^"+Sc+"]",tm="[^"+Sc.replace("\\.","")+"]",nm=/((?:WC+[\/:])*)/.source.replace("WC",wc),im=/(WCOD+)?/.source.replace("WCOD",tm),sm=/(?:\.(WC+)(?:\[(.+)\])?)?/.source.replace("WC",wc),rm=/\.(WC+)(?:\[(.+)\])?/.source.replace("WC",wc),am=new RegExp("^"+nm+im+sm+rm+"$"),om=["material","materials","bones","map"],Wl=class{constructor(e,t,n){let s=n||ut.parseTrackName(t);this._targetGroup=e,this._bindings=e.subscribe_(t,s)}getValue(e,t){this.bind();let n=this._targetGroup.nCachedObjects_,s=this._bindings[n];s!==void 0&&s.getValue(e,t)}setValue(e,t){let n=this._bindings;for(let s=this._targetGroup.nCachedObjects_,r=n.length;s!==r;++s)n[s].setValue(e,t)}bind(){let e=this._bindings;for(let t=this._targetGroup.nCachedObjects_,n=e.length;t!==n;++t)e[t].bind()}unbind(){let e=this._bindings;for(let t=this._targetGroup.nCachedObjects_,n=e.length;t!==n;++t)e[t].unbind()}},ut=class i{constructor(e,t,n){this.path=t,this.parsedPath=n||i.parseTrackName(t),this.node=i.findNode(e,this.parsedPath.nodeName),this.rootNode=e,this.getValue=this._getValue_unbound,this.setValue=this._setValue_unbound}static create(e,t,n){return e&&e.isAnimationObjectGroup?new i.Composite(e,t,n):new i(e,t,n)}static sanitizeNodeName(e){return e.replace(/\s/g,"_").replace(em,"")}static parseTrackName(e){let t=am.exec(e);if(t===null)throw new Error("THREE.PropertyBinding: Cannot parse trackName: "+e);let n={nodeName:t[2],objectName:t[3],objectIndex:t[4],propertyName:t[5],propertyIndex:t[6]},s=n.nodeName&&n.nodeName.lastIndexOf(".");if(s!==void 0&&s!==-1){let r=n.nodeName.substring(s+1);om.indexOf(r)!==-1&&(n.nodeName=n.nodeName.substring(0,s),n.objectName=r)}if(n.propertyName===null||n.propertyName.length===0)throw new Error("THREE.PropertyBinding: can not parse propertyName from trackName: "+e);return n}static findNode(e,t){if(t===void 0||t===""||t==="."||t===-1||t===e.name||t===e.uuid)return e;if(e.skeleton){let n=e.skeleton.getBoneByName(t);if(n!==void 0)return n}if(e.children){let n=function(r){for(let a=0;a<r.length;a++){let o=r[a];if(o.name===t||o.uuid===t)return o;let l=n(o.children);if(l)return l}return null},s=n(e.children);if(s)return s}return null}_getValue_unavailable(){}_setValue_unavailable(){}_getValue_direct(e,t){e[t]=this.targetObject[this.propertyName]}_getValue_array(e,t){let n=this.resolvedProperty;for(let s=0,r=n.length;s!==r;++s)e[t++]=n[s]}_getValue_arrayElement(e,t){e[t]=this.resolvedProperty[this.propertyIndex]}_getValue_toArray(e,t){this.resolvedProperty.toArray(e,t)}_setValue_direct(e,t){this.targetObject[this.propertyName]=e[t]}_setValue_direct_setNeedsUpdate(e,t){this.targetObject[this.propertyName]=e[t],this.targetObject.needsUpdate=!0}_setValue_direct_setMatrixWorldNeedsUpdate(e,t){this.targetObject[this.propertyName]=e[t],this.targetObject.matrixWorldNeedsUpdate=!0}_setValue_array(e,t){let n=this.resolvedProperty;for(let s=0,r=n.length;s!==r;++s)n[s]=e[t++]}_setValue_array_setNeedsUpdate(e,t){let n=this.resolvedProperty;for(let s=0,r=n.length;s!==r;++s)n[s]=e[t++];this.targetObject.needsUpdate=!0}_setValue_array_setMatrixWorldNeedsUpdate(e,t){let n=this.resolvedProperty;for(let s=0,r=n.length;s!==r;++s)n[s]=e[t++];this.targetObject.matrixWorldNeedsUpdate=!0}_setValue_arrayElement(e,t){this.resolvedProperty[this.propertyIndex]=e[t]}_setValue_arrayElement_setNeedsUpdate(e,t){this.resolvedProperty[this.propertyIndex]=e[t],this.targetObject.needsUpdate=!0}_setValue_arrayElement_setMatrixWorldNeedsUpdate(e,t){this.resolvedProperty[this.propertyIndex]=e[t],this.targetObject.matrixWorldNeedsUpdate=!0}_setValue_fromArray(e,t){this.resolvedProperty.fromArray(e,t)}_setValue_fromArray_setNeedsUpdate(e,t){this.resolvedProperty.fromArray(e,t),this.targetObject.needsUpdate=!0}_setValue_fromArray_setMatrixWorldNeedsUpdate(e,t){this.resolvedProperty.fromArray(e,t),this.targetObject.matrixWorldNeedsUpdate=!0}_getValue_unbound(e,t){this.bind(),this.getValue(e,t)}_setValue_unbound(e,t){this.bind(),this.setValue(e,t)}bind(){let e=this.node,t=this.parsedPath,n=t.objectName,s=t.propertyName,r=t.propertyIndex;if(e||(e=i.findNode(this.rootNode,t.nodeName),this.node=e),this.getValue=this._getValue_unavailable,this.setValue=this._setValue_unavailable,!e){Oe("PropertyBinding: No target node found for track: "+this.path+".");return}if(n){let c=t.objectIndex;switch(n){case"materials":if(!e.material){ze("PropertyBinding: Can not bind to material as node does not have a material.",this);return}if(!e.material.materials){ze("PropertyBinding: Can not bind to material.materials as node.material does not have a materials array.",this);return}e=e.material.materials;break;case"bones":if(!e.skeleton){ze("PropertyBinding: Can not bind to bones as node does not have a skeleton.",this);return}e=e.skeleton.bones;for(let h=0;h<e.length;h++)if(e[h].name===c){c=h;break}break;case"map":if("map"in e){e=e.map;break}if(!e.material){ze("PropertyBinding: Can not bind to material as node does not have a material.",this);return}if(!e.material.map){ze("PropertyBinding: Can not bind to material.map as node.material does not have a map.",this);return}e=e.material.map;break;default:if(e[n]===void 0){ze("PropertyBinding: Can not bind to objectName of node undefined.",this);return}e=e[n]}if(c!==void 0){if(e[c]===void 0){ze("PropertyBinding: Trying to bind to objectIndex of objectName, but is undefined.",this,e);return}e=e[c]}}let a=e[s];if(a===void 0){let c=t.nodeName;ze("PropertyBinding: Trying to update property for track: "+c+"."+s+" but it wasn't found.",e);return}let o=this.Versioning.None;this.targetObject=e,e.isMaterial===!0?o=this.Versioning.NeedsUpdate:e.isObject3D===!0&&(o=this.Versioning.MatrixWorldNeedsUpdate);let l=this.BindingType.Direct;if(r!==void 0){if(s==="morphTargetInfluences"){if(!e.geometry){ze("PropertyBinding: Can not bind to morphTargetInfluences because node does not have a geometry.",this);return}if(!e.geometry.morphAttributes){ze("PropertyBinding: Can not bind to morphTargetInfluences because node does not have a geometry.morphAttributes.",this);return}e.morphTargetDictionary[r]!==void 0&&(r=e.morphTargetDictionary[r])}l=this.BindingType.ArrayElement,this.resolvedProperty=a,this.propertyIndex=r}else a.fromArray!==void 0&&a.toArray!==void 0?(l=this.BindingType.HasFromToArray,this.resolvedProperty=a):Array.isArray(a)?(l=this.BindingType.EntireArray,this.resolvedProperty=a):this.propertyName=s;this.getValue=this.GetterByBindingType[l],this.setValue=this.SetterByBindingTypeAndVersioning[l][o]}unbind(){this.node=null,this.getValue=this._getValue_unbound,this.setValue=this._setValue_unbound}};ut.Composite=Wl;ut.prototype.BindingType={Direct:0,EntireArray:1,ArrayElement:2,HasFromToArray:3};ut.prototype.Versioning={None:0,NeedsUpdate:1,MatrixWorldNeedsUpdate:2};ut.prototype.GetterByBindingType=[ut.prototype._getValue_direct,ut.prototype._getValue_array,ut.prototype._getValue_arrayElement,ut.prototype._getValue_toArray];ut.prototype.SetterByBindingTypeAndVersioning=[[ut.prototype._setValue_direct,ut.prototype._setValue_direct_setNeedsUpdate,ut.prototype._setValue_direct_setMatrixWorldNeedsUpdate],[ut.prototype._setValue_array,ut.prototype._setValue_array_setNeedsUpdate,ut.prototype._setValue_array_setMatrixWorldNeedsUpdate],[ut.prototype._setValue_arrayElement,ut.prototype._setValue_arrayElement_setNeedsUpdate,ut.prototype._setValue_arrayElement_setMatrixWorldNeedsUpdate],[ut.prototype._setValue_fromArray,ut.prototype._setValue_fromArray_setNeedsUpdate,ut.prototype._setValue_fromArray_setMatrixWorldNeedsUpdate]];var Qy=new Float32Array(1);var Au=new mt,mr=class{constructor(e,t,n=0,s=1/0){this.ray=new Es(e,t),this.near=n,this.far=s,this.camera=null,this.layers=new ws,this.params={Mesh:{},Line:{threshold:1},LOD:{},Points:{threshold:1},Sprite:{}}}set(e,t){this.ray.set(e,t)}setFromCamera(e,t){t.isPerspectiveCamera?(this.ray.origin.setFromMatrixPosition(t.matrixWorld),this.ray.direction.set(e.x,e.y,.5).unproject(t).sub(this.ray.origin).normalize(),this.camera=t):t.isOrthographicCamera?(this.ray.origin.set(e.x,e.y,t.projectionMatrix.elements[14]).unproject(t),this.ray.direction.set(0,0,-1).transformDirection(t.matrixWorld),this.camera=t):ze("Raycaster: Unsupported camera type: "+t.type)}setFromXRController(e){return Au.identity().extractRotation(e.matrixWorld),this.ray.origin.setFromMatrixPosition(e.matrixWorld),this.ray.direction.set(0,0,-1).applyMatrix4(Au),this}intersectObject(e,t=!0,n=[]){return $l(e,this,n,t),n.sort(Ru),n}intersectObjects(e,t=!0,n=[]){for(let s=0,r=e.length;s<r;s++)$l(e[s],this,n,t);return n.sort(Ru),n}};function Ru(i,e){return i.distance-e.distance}function $l(i,e,t,n){let s=!0;if(i.layers.test(e.layers)&&i.raycast(e,t)===!1&&(s=!1),s===!0&&n===!0){let r=i.children;for(let a=0,o=r.length;a<o;a++)$l(r[a],e,t,!0)}}var Xl=class{static{this.prototype.isMatrix2=!0}constructor(e,t,n,s){this.elements=[1,0,0,1],e!==void 0&&this.set(e,t,n,s)}identity(){return this.set(1,0,0,1),this}fromArray(e,t=0){for(let n=0;n<4;n++)this.elements[n]=e[n+t];return this}set(e,t,n,s){let r=this.elements;return r[0]=e,r[2]=t,r[1]=n,r[3]=s,this}};function Tc(i,e,t,n){let s=lm(n);switch(t){case dc:return i*e;case pc:return i*e/s.components*s.byteLength;case so:return i*e/s.components*s.byteLength;case Li:return i*e*2/s.components*s.byteLength;case ro:return i*e*2/s.components*s.byteLength;case fc:return i*e*3/s.components*s.byteLength;case Nn:return i*e*4/s.components*s.byteLength;case ao:return i*e*4/s.components*s.byteLength;case vr:case xr:return Math.floor((i+3)/4)*Math.floor((e+3)/4)*8;case yr:case br:return Math.floor((i+3)/4)*Math.floor((e+3)/4)*16;case lo:case ho:return Math.max(i,16)*Math.max(e,8)/4;case oo:case co:return Math.max(i,8)*Math.max(e,8)/2;case uo:case fo:case mo:case go:return Math.floor((i+3)/4)*Math.floor((e+3)/4)*8;case po:case Mr:case _o:return Math.floor((i+3)/4)*Math.floor((e+3)/4)*16;case vo:return Math.floor((i+3)/4)*Math.floor((e+3)/4)*16;case xo:return Math.floor((i+4)/5)*Math.floor((e+3)/4)*16;case yo:return Math.floor((i+4)/5)*Math.floor((e+4)/5)*16;case bo:return Math.floor((i+5)/6)*Math.floor((e+4)/5)*16;case Mo:return Math.floor((i+5)/6)*Math.floor((e+5)/6)*16;case So:return Math.floor((i+7)/8)*Math.floor((e+4)/5)*16;case wo:return Math.floor((i+7)/8)*Math.floor((e+5)/6)*16;case To:return Math.floor((i+7)/8)*Math.floor((e+7)/8)*16;case Eo:return Math.floor((i+9)/10)*Math.floor((e+4)/5)*16;case Ao:return Math.floor((i+9)/10)*Math.floor((e+5)/6)*16;case Ro:return Math.floor((i+9)/10)*Math.floor((e+7)/8)*16;case Co:return Math.floor((i+9)/10)*Math.floor((e+9)/10)*16;case Po:return Math.floor((i+11)/12)*Math.floor((e+9)/10)*16;case Io:return Math.floor((i+11)/12)*Math.floor((e+11)/12)*16;case Lo:case No:case Do:return Math.ceil(i/4)*Math.ceil(e/4)*16;case Uo:case Fo:return Math.ceil(i/4)*Math.ceil(e/4)*8;case Sr:case Oo:return Math.ceil(i/4)*Math.ceil(e/4)*16}throw new Error(`Unable to determine texture byte length for ${t} format.`)}function lm(i){switch(i){case hn:case lc:return{byteLength:1,components:1};case Ds:case cc:case Ln:return{byteLength:2,components:1};case no:case io:return{byteLength:2,components:4};case Pn:case to:case In:return{byteLength:4,components:1};case hc:case uc:return{byteLength:4,components:3}}throw new Error(`THREE.TextureUtils: Unknown texture type ${i}.`)}typeof __THREE_DEVTOOLS__<"u"&&__THREE_DEVTOOLS__.dispatchEvent(new CustomEvent("register",{detail:{revision:"187"}}));typeof window<"u"&&(window.__THREE__?Oe("WARNING: Multiple instances of Three.js being imported."):window.__THREE__="187");/**
 * @license
 * Copyright 2010-2026 Three.js Authors
 * SPDX-License-Identifier: MIT
 */function kd(){let i=null,e=!1,t=null,n=null;function s(r,a){n=i.requestAnimationFrame(s),t(r,a)}return{start:function(){e!==!0&&t!==null&&i!==null&&(n=i.requestAnimationFrame(s),e=!0)},stop:function(){i!==null&&i.cancelAnimationFrame(n),e=!1},setAnimationLoop:function(r){t=r},setContext:function(r){i=r}}}function hm(i){let e=new WeakMap;function t(o,l){let c=o.array,h=o.usage,d=c.byteLength,u=i.createBuffer();i.bindBuffer(l,u),i.bufferData(l,c,h),o.onUploadCallback();let f;if(c instanceof Float32Array)f=i.FLOAT;else if(typeof Float16Array<"u"&&c instanceof Float16Array)f=i.HALF_FLOAT;else if(c instanceof Uint16Array)o.isFloat16BufferAttribute?f=i.HALF_FLOAT:f=i.UNSIGNED_SHORT;else if(c instanceof Int16Array)f=i.SHORT;else if(c instanceof Uint32Array)f=i.UNSIGNED_INT;else if(c instanceof Int32Array)f=i.INT;else if(c instanceof Int8Array)f=i.BYTE;else if(c instanceof Uint8Array)f=i.UNSIGNED_BYTE;else if(c instanceof Uint8ClampedArray)f=i.UNSIGNED_BYTE;else throw new Error("THREE.WebGLAttributes: Unsupported buffer data format: "+c);return{buffer:u,type:f,bytesPerElement:c.BYTES_PER_ELEMENT,version:o.version,size:d}}function n(o,l,c){let h=l.array,d=l.updateRanges;if(i.bindBuffer(c,o),d.length===0)i.bufferSubData(c,0,h);else{d.sort((f,g)=>f.start-g.start);let u=0;for(let f=1;f<d.length;f++){let g=d[u],v=d[f];v.start<=g.start+g.count+1?g.count=Math.max(g.count,v.start+v.count-g.start):(++u,d[u]=v)}d.length=u+1;for(let f=0,g=d.length;f<g;f++){let v=d[f];i.bufferSubData(c,v.start*h.BYTES_PER_ELEMENT,h,v.start,v.count)}l.clearUpdateRanges()}l.onUploadCallback()}function s(o){return o.isInterleavedBufferAttribute&&(o=o.data),e.get(o)}function r(o){o.isInterleavedBufferAttribute&&(o=o.data);let l=e.get(o);l&&(i.deleteBuffer(l.buffer),e.delete(o))}function a(o,l){if(o.isInterleavedBufferAttribute&&(o=o.data),o.isGLBufferAttribute){let h=e.get(o);(!h||h.version<o.version)&&e.set(o,{buffer:o.buffer,type:o.type,bytesPerElement:o.elementSize,version:o.version});return}let c=e.get(o);if(c===void 0)e.set(o,t(o,l));else if(c.version<o.version){if(c.size!==o.array.byteLength)throw new Error("THREE.WebGLAttributes: The size of the buffer attribute's array buffer does not match the original size. Resizing buffer attributes is not supported.");n(c.buffer,o,l),c.version=o.version}}return{get:s,remove:r,update:a}}var um=`#ifdef USE_ALPHAHASH
	if ( diffuseColor.a < getAlphaHashThreshold( vPosition ) ) discard;
#endif`,dm=`#ifdef USE_ALPHAHASH
	const float ALPHA_HASH_SCALE = 0.05;
	float hash2D( vec2 value ) {
		return fract( 1.0e4 * sin( 17.0 * value.x + 0.1 * value.y ) * ( 0.1 + abs( sin( 13.0 * value.y + value.x ) ) ) );
	}
	float hash3D( vec3 value ) {
		return hash2D( vec2( hash2D( value.xy ), value.z ) );
	}
	float getAlphaHashThreshold( vec3 position ) {
		float maxDeriv = max(
			length( dFdx( position.xyz ) ),
			length( dFdy( position.xyz ) )
		);
		float pixScale = 1.0 / ( ALPHA_HASH_SCALE * maxDeriv );
		vec2 pixScales = vec2(
			exp2( floor( log2( pixScale ) ) ),
			exp2( ceil( log2( pixScale ) ) )
		);
		vec2 alpha = vec2(
			hash3D( floor( pixScales.x * position.xyz ) ),
			hash3D( floor( pixScales.y * position.xyz ) )
		);
		float lerpFactor = fract( log2( pixScale ) );
		float x = ( 1.0 - lerpFactor ) * alpha.x + lerpFactor * alpha.y;
		float a = min( lerpFactor, 1.0 - lerpFactor );
		vec3 cases = vec3(
			x * x / ( 2.0 * a * ( 1.0 - a ) ),
			( x - 0.5 * a ) / ( 1.0 - a ),
			1.0 - ( ( 1.0 - x ) * ( 1.0 - x ) / ( 2.0 * a * ( 1.0 - a ) ) )
		);
		float threshold = ( x < ( 1.0 - a ) )
			? ( ( x < a ) ? cases.x : cases.y )
			: cases.z;
		return clamp( threshold , 1.0e-6, 1.0 );
	}
#endif`,fm=`#ifdef USE_ALPHAMAP
	diffuseColor.a *= texture2D( alphaMap, vAlphaMapUv ).g;
#endif`,pm=`#ifdef USE_ALPHAMAP
	uniform sampler2D alphaMap;
#endif`,mm=`#ifdef USE_ALPHATEST
	#ifdef ALPHA_TO_COVERAGE
	diffuseColor.a = smoothstep( alphaTest, alphaTest + fwidth( diffuseColor.a ), diffuseColor.a );
	if ( diffuseColor.a == 0.0 ) discard;
	#else
	if ( diffuseColor.a < alphaTest ) discard;
	#endif
#endif`,gm=`#ifdef USE_ALPHATEST
	uniform float alphaTest;
#endif`,_m=`#ifdef USE_AOMAP
	float ambientOcclusion = ( texture2D( aoMap, vAoMapUv ).r - 1.0 ) * aoMapIntensity + 1.0;
	reflectedLight.indirectDiffuse *= ambientOcclusion;
	#if defined( USE_CLEARCOAT ) 
		clearcoatSpecularIndirect *= ambientOcclusion;
	#endif
	#if defined( USE_SHEEN ) 
		sheenSpecularIndirect *= ambientOcclusion;
	#endif
	#if defined( USE_ENVMAP ) && defined( STANDARD )
		float dotNV = saturate( dot( geometryNormal, geometryViewDir ) );
		reflectedLight.indirectSpecular *= computeSpecularOcclusion( dotNV, ambientOcclusion, material.roughness );
	#endif
#endif`,vm=`#ifdef USE_AOMAP
	uniform sampler2D aoMap;
	uniform float aoMapIntensity;
#endif`,xm=`#ifdef USE_BATCHING
	#if ! defined( GL_ANGLE_multi_draw )
	#define gl_DrawID _gl_DrawID
	uniform int _gl_DrawID;
	#endif
	uniform highp sampler2D batchingTexture;
	uniform highp usampler2D batchingIdTexture;
	mat4 getBatchingMatrix( const in float i ) {
		int size = textureSize( batchingTexture, 0 ).x;
		int j = int( i ) * 4;
		int x = j % size;
		int y = j / size;
		vec4 v1 = texelFetch( batchingTexture, ivec2( x, y ), 0 );
		vec4 v2 = texelFetch( batchingTexture, ivec2( x + 1, y ), 0 );
		vec4 v3 = texelFetch( batchingTexture, ivec2( x + 2, y ), 0 );
		vec4 v4 = texelFetch( batchingTexture, ivec2( x + 3, y ), 0 );
		return mat4( v1, v2, v3, v4 );
	}
	float getIndirectIndex( const in int i ) {
		int size = textureSize( batchingIdTexture, 0 ).x;
		int x = i % size;
		int y = i / size;
		return float( texelFetch( batchingIdTexture, ivec2( x, y ), 0 ).r );
	}
#endif
#ifdef USE_BATCHING_COLOR
	uniform sampler2D batchingColorTexture;
	vec4 getBatchingColor( const in float i ) {
		int size = textureSize( batchingColorTexture, 0 ).x;
		int j = int( i );
		int x = j % size;
		int y = j / size;
		return texelFetch( batchingColorTexture, ivec2( x, y ), 0 );
	}
#endif`,ym=`#ifdef USE_BATCHING
	mat4 batchingMatrix = getBatchingMatrix( getIndirectIndex( gl_DrawID ) );
#endif`,bm=`vec3 transformed = vec3( position );
#ifdef USE_ALPHAHASH
	vPosition = vec3( position );
#endif`,Mm=`vec3 objectNormal = vec3( normal );
#ifdef USE_TANGENT
	vec3 objectTangent = vec3( tangent.xyz );
#endif`,Sm=`float G_BlinnPhong_Implicit( ) {
	return 0.25;
}
float D_BlinnPhong( const in float shininess, const in float dotNH ) {
	return RECIPROCAL_PI * ( shininess * 0.5 + 1.0 ) * pow( dotNH, shininess );
}
vec3 BRDF_BlinnPhong( const in vec3 lightDir, const in vec3 viewDir, const in vec3 normal, const in vec3 specularColor, const in float shininess ) {
	vec3 halfDir = normalize( lightDir + viewDir );
	float dotNH = saturate( dot( normal, halfDir ) );
	float dotVH = saturate( dot( viewDir, halfDir ) );
	vec3 F = F_Schlick( specularColor, 1.0, dotVH );
	float G = G_BlinnPhong_Implicit( );
	float D = D_BlinnPhong( shininess, dotNH );
	return F * ( G * D );
} // validated`,wm=`#ifdef USE_IRIDESCENCE
	const mat3 XYZ_TO_REC709 = mat3(
		 3.2404542, -0.9692660,  0.0556434,
		-1.5371385,  1.8760108, -0.2040259,
		-0.4985314,  0.0415560,  1.0572252
	);
	vec3 Fresnel0ToIor( vec3 fresnel0 ) {
		vec3 sqrtF0 = sqrt( fresnel0 );
		return ( vec3( 1.0 ) + sqrtF0 ) / ( vec3( 1.0 ) - sqrtF0 );
	}
	vec3 IorToFresnel0( vec3 transmittedIor, float incidentIor ) {
		return pow2( ( transmittedIor - vec3( incidentIor ) ) / ( transmittedIor + vec3( incidentIor ) ) );
	}
	float IorToFresnel0( float transmittedIor, float incidentIor ) {
		return pow2( ( transmittedIor - incidentIor ) / ( transmittedIor + incidentIor ));
	}
	vec3 evalSensitivity( float OPD, vec3 shift ) {
		float phase = 2.0 * PI * OPD * 1.0e-9;
		vec3 val = vec3( 5.4856e-13, 4.4201e-13, 5.2481e-13 );
		vec3 pos = vec3( 1.6810e+06, 1.7953e+06, 2.2084e+06 );
		vec3 var = vec3( 4.3278e+09, 9.3046e+09, 6.6121e+09 );
		vec3 xyz = val * sqrt( 2.0 * PI * var ) * cos( pos * phase + shift ) * exp( - pow2( phase ) * var );
		xyz.x += 9.7470e-14 * sqrt( 2.0 * PI * 4.5282e+09 ) * cos( 2.2399e+06 * phase + shift[ 0 ] ) * exp( - 4.5282e+09 * pow2( phase ) );
		xyz /= 1.0685e-7;
		vec3 rgb = XYZ_TO_REC709 * xyz;
		return rgb;
	}
	vec3 evalIridescence( float outsideIOR, float eta2, float cosTheta1, float thinFilmThickness, vec3 baseF0 ) {
		vec3 I;
		float iridescenceIOR = mix( outsideIOR, eta2, smoothstep( 0.0, 0.03, thinFilmThickness ) );
		float sinTheta2Sq = pow2( outsideIOR / iridescenceIOR ) * ( 1.0 - pow2( cosTheta1 ) );
		float cosTheta2Sq = 1.0 - sinTheta2Sq;
		if ( cosTheta2Sq < 0.0 ) {
			return vec3( 1.0 );
		}
		float cosTheta2 = sqrt( cosTheta2Sq );
		float R0 = IorToFresnel0( iridescenceIOR, outsideIOR );
		float R12 = F_Schlick( R0, 1.0, cosTheta1 );
		float T121 = 1.0 - R12;
		float phi12 = 0.0;
		if ( iridescenceIOR < outsideIOR ) phi12 = PI;
		float phi21 = PI - phi12;
		vec3 baseIOR = Fresnel0ToIor( clamp( baseF0, 0.0, 0.9999 ) );		vec3 R1 = IorToFresnel0( baseIOR, iridescenceIOR );
		vec3 R23 = F_Schlick( R1, 1.0, cosTheta2 );
		vec3 phi23 = vec3( 0.0 );
		if ( baseIOR[ 0 ] < iridescenceIOR ) phi23[ 0 ] = PI;
		if ( baseIOR[ 1 ] < iridescenceIOR ) phi23[ 1 ] = PI;
		if ( baseIOR[ 2 ] < iridescenceIOR ) phi23[ 2 ] = PI;
		float OPD = 2.0 * iridescenceIOR * thinFilmThickness * cosTheta2;
		vec3 phi = vec3( phi21 ) + phi23;
		vec3 R123 = clamp( R12 * R23, 1e-5, 0.9999 );
		vec3 r123 = sqrt( R123 );
		vec3 Rs = pow2( T121 ) * R23 / ( vec3( 1.0 ) - R123 );
		vec3 C0 = R12 + Rs;
		I = C0;
		vec3 Cm = Rs - T121;
		for ( int m = 1; m <= 2; ++ m ) {
			Cm *= r123;
			vec3 Sm = 2.0 * evalSensitivity( float( m ) * OPD, float( m ) * phi );
			I += Cm * Sm;
		}
		return max( I, vec3( 0.0 ) );
	}
#endif`,Tm=`#ifdef USE_BUMPMAP
	uniform sampler2D bumpMap;
	uniform float bumpScale;
	vec2 dHdxy_fwd() {
		vec2 dSTdx = dFdx( vBumpMapUv );
		vec2 dSTdy = dFdy( vBumpMapUv );
		float Hll = bumpScale * texture2D( bumpMap, vBumpMapUv ).x;
		float dBx = bumpScale * texture2D( bumpMap, vBumpMapUv + dSTdx ).x - Hll;
		float dBy = bumpScale * texture2D( bumpMap, vBumpMapUv + dSTdy ).x - Hll;
		return vec2( dBx, dBy );
	}
	vec3 perturbNormalArb( vec3 surf_pos, vec3 surf_norm, vec2 dHdxy, float faceDirection ) {
		vec3 vSigmaX = normalize( dFdx( surf_pos.xyz ) );
		vec3 vSigmaY = normalize( dFdy( surf_pos.xyz ) );
		vec3 vN = surf_norm;
		vec3 R1 = cross( vSigmaY, vN );
		vec3 R2 = cross( vN, vSigmaX );
		float fDet = dot( vSigmaX, R1 ) * faceDirection;
		vec3 vGrad = sign( fDet ) * ( dHdxy.x * R1 + dHdxy.y * R2 );
		return normalize( abs( fDet ) * surf_norm - vGrad );
	}
#endif`,Em=`#if NUM_CLIPPING_PLANES > 0
	vec4 plane;
	#ifdef ALPHA_TO_COVERAGE
		float distanceToPlane, distanceGradient;
		float clipOpacity = 1.0;
		#pragma unroll_loop_start
		for ( int i = 0; i < UNION_CLIPPING_PLANES; i ++ ) {
			plane = clippingPlanes[ i ];
			distanceToPlane = - dot( vClipPosition, plane.xyz ) + plane.w;
			distanceGradient = fwidth( distanceToPlane ) / 2.0;
			clipOpacity *= smoothstep( - distanceGradient, distanceGradient, distanceToPlane );
			if ( clipOpacity == 0.0 ) discard;
		}
		#pragma unroll_loop_end
		#if UNION_CLIPPING_PLANES < NUM_CLIPPING_PLANES
			float unionClipOpacity = 1.0;
			#pragma unroll_loop_start
			for ( int i = UNION_CLIPPING_PLANES; i < NUM_CLIPPING_PLANES; i ++ ) {
				plane = clippingPlanes[ i ];
				distanceToPlane = - dot( vClipPosition, plane.xyz ) + plane.w;
				distanceGradient = fwidth( distanceToPlane ) / 2.0;
				unionClipOpacity *= 1.0 - smoothstep( - distanceGradient, distanceGradient, distanceToPlane );
			}
			#pragma unroll_loop_end
			clipOpacity *= 1.0 - unionClipOpacity;
		#endif
		diffuseColor.a *= clipOpacity;
		if ( diffuseColor.a == 0.0 ) discard;
	#else
		#pragma unroll_loop_start
		for ( int i = 0; i < UNION_CLIPPING_PLANES; i ++ ) {
			plane = clippingPlanes[ i ];
			if ( dot( vClipPosition, plane.xyz ) > plane.w ) discard;
		}
		#pragma unroll_loop_end
		#if UNION_CLIPPING_PLANES < NUM_CLIPPING_PLANES
			bool clipped = true;
			#pragma unroll_loop_start
			for ( int i = UNION_CLIPPING_PLANES; i < NUM_CLIPPING_PLANES; i ++ ) {
				plane = clippingPlanes[ i ];
				clipped = ( dot( vClipPosition, plane.xyz ) > plane.w ) && clipped;
			}
			#pragma unroll_loop_end
			if ( clipped ) discard;
		#endif
	#endif
#endif`,Am=`#if NUM_CLIPPING_PLANES > 0
	varying vec3 vClipPosition;
	uniform vec4 clippingPlanes[ NUM_CLIPPING_PLANES ];
#endif`,Rm=`#if NUM_CLIPPING_PLANES > 0
	varying vec3 vClipPosition;
#endif`,Cm=`#if NUM_CLIPPING_PLANES > 0
	vClipPosition = - mvPosition.xyz;
#endif`,Pm=`#if defined( USE_COLOR ) || defined( USE_COLOR_ALPHA )
	diffuseColor *= vColor;
#endif`,Im=`#if defined( USE_COLOR ) || defined( USE_COLOR_ALPHA )
	varying vec4 vColor;
#endif`,Lm=`#if defined( USE_COLOR ) || defined( USE_COLOR_ALPHA ) || defined( USE_INSTANCING_COLOR ) || defined( USE_BATCHING_COLOR )
	varying vec4 vColor;
#endif`,Nm=`#if defined( USE_COLOR ) || defined( USE_COLOR_ALPHA ) || defined( USE_INSTANCING_COLOR ) || defined( USE_BATCHING_COLOR )
	vColor = vec4( 1.0 );
#endif
#ifdef USE_COLOR_ALPHA
	vColor *= color;
#elif defined( USE_COLOR )
	vColor.rgb *= color;
#endif
#ifdef USE_INSTANCING_COLOR
	vColor.rgb *= instanceColor.rgb;
#endif
#ifdef USE_BATCHING_COLOR
	vColor *= getBatchingColor( getIndirectIndex( gl_DrawID ) );
#endif`,Dm=`#define PI 3.141592653589793
#define PI2 6.283185307179586
#define PI_HALF 1.5707963267948966
#define RECIPROCAL_PI 0.3183098861837907
#define RECIPROCAL_PI2 0.15915494309189535
#define EPSILON 1e-6
#ifndef saturate
#define saturate( a ) clamp( a, 0.0, 1.0 )
#endif
#define whiteComplement( a ) ( 1.0 - saturate( a ) )
float pow2( const in float x ) { return x*x; }
vec3 pow2( const in vec3 x ) { return x*x; }
float pow3( const in float x ) { return x*x*x; }
float pow4( const in float x ) { float x2 = x*x; return x2*x2; }
float max3( const in vec3 v ) { return max( max( v.x, v.y ), v.z ); }
float average( const in vec3 v ) { return dot( v, vec3( 0.3333333 ) ); }
highp float rand( const in vec2 uv ) {
	const highp float a = 12.9898, b = 78.233, c = 43758.5453;
	highp float dt = dot( uv.xy, vec2( a,b ) ), sn = mod( dt, PI );
	return fract( sin( sn ) * c );
}
#ifdef HIGH_PRECISION
	float precisionSafeLength( vec3 v ) { return length( v ); }
#else
	float precisionSafeLength( vec3 v ) {
		float maxComponent = max3( abs( v ) );
		return length( v / maxComponent ) * maxComponent;
	}
#endif
struct IncidentLight {
	vec3 color;
	vec3 direction;
	bool visible;
};
struct ReflectedLight {
	vec3 directDiffuse;
	vec3 directSpecular;
	vec3 indirectDiffuse;
	vec3 indirectSpecular;
};
#ifdef USE_ALPHAHASH
	varying vec3 vPosition;
#endif
vec3 transformDirection( in vec3 dir, in mat4 matrix ) {
	return normalize( ( matrix * vec4( dir, 0.0 ) ).xyz );
}
#define inverseTransformDirection transformDirectionByInverseViewMatrix
vec3 transformNormalByInverseViewMatrix( in vec3 normal, in mat4 viewMatrix ) {
	return normalize( ( vec4( normal, 0.0 ) * viewMatrix ).xyz );
}
vec3 transformDirectionByInverseViewMatrix( in vec3 dir, in mat4 viewMatrix ) {
	return normalize( ( vec4( dir, 0.0 ) * viewMatrix ).xyz );
}
bool isPerspectiveMatrix( mat4 m ) {
	return m[ 2 ][ 3 ] == - 1.0;
}
vec2 equirectUv( in vec3 dir ) {
	float u = atan( dir.z, dir.x ) * RECIPROCAL_PI2 + 0.5;
	float v = asin( clamp( dir.y, - 1.0, 1.0 ) ) * RECIPROCAL_PI + 0.5;
	return vec2( u, v );
}
vec3 BRDF_Lambert( const in vec3 diffuseColor ) {
	return RECIPROCAL_PI * diffuseColor;
}
vec3 F_Schlick( const in vec3 f0, const in float f90, const in float dotVH ) {
	float fresnel = exp2( ( - 5.55473 * dotVH - 6.98316 ) * dotVH );
	return f0 * ( 1.0 - fresnel ) + ( f90 * fresnel );
}
float F_Schlick( const in float f0, const in float f90, const in float dotVH ) {
	float fresnel = exp2( ( - 5.55473 * dotVH - 6.98316 ) * dotVH );
	return f0 * ( 1.0 - fresnel ) + ( f90 * fresnel );
} // validated`,Um=`vec3 transformedNormal = objectNormal;
#ifdef USE_TANGENT
	vec3 transformedTangent = objectTangent;
#endif
#ifdef USE_BATCHING
	mat3 bm = mat3( batchingMatrix );
	transformedNormal /= vec3( dot( bm[ 0 ], bm[ 0 ] ), dot( bm[ 1 ], bm[ 1 ] ), dot( bm[ 2 ], bm[ 2 ] ) );
	transformedNormal = bm * transformedNormal;
	#ifdef USE_TANGENT
		transformedTangent = bm * transformedTangent;
	#endif
#endif
#ifdef USE_INSTANCING
	mat3 im = mat3( instanceMatrix );
	transformedNormal /= vec3( dot( im[ 0 ], im[ 0 ] ), dot( im[ 1 ], im[ 1 ] ), dot( im[ 2 ], im[ 2 ] ) );
	transformedNormal = im * transformedNormal;
	#ifdef USE_TANGENT
		transformedTangent = im * transformedTangent;
	#endif
#endif
transformedNormal = normalMatrix * transformedNormal;
#ifdef FLIP_SIDED
	transformedNormal = - transformedNormal;
#endif
#ifdef USE_TANGENT
	transformedTangent = ( modelViewMatrix * vec4( transformedTangent, 0.0 ) ).xyz;
#endif`,Fm=`#ifdef USE_DISPLACEMENTMAP
	uniform sampler2D displacementMap;
	uniform float displacementScale;
	uniform float displacementBias;
#endif`,Om=`#ifdef USE_DISPLACEMENTMAP
	transformed += normalize( objectNormal ) * ( texture2D( displacementMap, vDisplacementMapUv ).x * displacementScale + displacementBias );
#endif`,km=`#ifdef USE_EMISSIVEMAP
	vec4 emissiveColor = texture2D( emissiveMap, vEmissiveMapUv );
	#ifdef DECODE_VIDEO_TEXTURE_EMISSIVE
		emissiveColor = sRGBTransferEOTF( emissiveColor );
	#endif
	totalEmissiveRadiance *= emissiveColor.rgb;
#endif`,Bm=`#ifdef USE_EMISSIVEMAP
	uniform sampler2D emissiveMap;
#endif`,zm="gl_FragColor = linearToOutputTexel( gl_FragColor );",Gm=`vec4 LinearTransferOETF( in vec4 value ) {
	return value;
}
vec4 sRGBTransferEOTF( in vec4 value ) {
	return vec4( mix( pow( value.rgb * 0.9478672986 + vec3( 0.0521327014 ), vec3( 2.4 ) ), value.rgb * 0.0773993808, vec3( lessThanEqual( value.rgb, vec3( 0.04045 ) ) ) ), value.a );
}
vec4 sRGBTransferOETF( in vec4 value ) {
	return vec4( mix( pow( value.rgb, vec3( 0.41666 ) ) * 1.055 - vec3( 0.055 ), value.rgb * 12.92, vec3( lessThanEqual( value.rgb, vec3( 0.0031308 ) ) ) ), value.a );
}`,Vm=`#ifdef USE_ENVMAP
	#ifdef ENV_WORLDPOS
		vec3 cameraToFrag;
		if ( isOrthographic ) {
			cameraToFrag = normalize( vec3( - viewMatrix[ 0 ][ 2 ], - viewMatrix[ 1 ][ 2 ], - viewMatrix[ 2 ][ 2 ] ) );
		} else {
			cameraToFrag = normalize( vWorldPosition - cameraPosition );
		}
		vec3 worldNormal = transformNormalByInverseViewMatrix( normal, viewMatrix );
		#ifdef ENVMAP_MODE_REFLECTION
			vec3 reflectVec = reflect( cameraToFrag, worldNormal );
		#else
			vec3 reflectVec = refract( cameraToFrag, worldNormal, refractionRatio );
		#endif
	#else
		vec3 reflectVec = vReflect;
	#endif
	#ifdef ENVMAP_TYPE_CUBE
		vec4 envColor = textureCube( envMap, envMapRotation * reflectVec );
		#ifdef ENVMAP_BLENDING_MULTIPLY
			outgoingLight = mix( outgoingLight, outgoingLight * envColor.xyz, specularStrength * reflectivity );
		#elif defined( ENVMAP_BLENDING_MIX )
			outgoingLight = mix( outgoingLight, envColor.xyz, specularStrength * reflectivity );
		#elif defined( ENVMAP_BLENDING_ADD )
			outgoingLight += envColor.xyz * specularStrength * reflectivity;
		#endif
	#endif
#endif`,Hm=`#ifdef USE_ENVMAP
	uniform float envMapIntensity;
	uniform mat3 envMapRotation;
	uniform samplerCube envMap;
	#ifdef ENVMAP_TYPE_PMREM
		float roughnessToMip( const in float roughness ) {
			float r = clamp( roughness, 0.0, 1.0 );
			return ENVMAP_MAX_LOD * r * ( 2.0 - r );
		}
	#endif
#endif`,Wm=`#ifdef USE_ENVMAP
	uniform float reflectivity;
	#if defined( USE_BUMPMAP ) || defined( USE_NORMALMAP ) || defined( PHONG ) || defined( LAMBERT )
		#define ENV_WORLDPOS
	#endif
	#ifdef ENV_WORLDPOS
		varying vec3 vWorldPosition;
		uniform float refractionRatio;
	#else
		varying vec3 vReflect;
	#endif
#endif`,$m=`#ifdef USE_ENVMAP
	#if defined( USE_BUMPMAP ) || defined( USE_NORMALMAP ) || defined( PHONG ) || defined( LAMBERT )
		#define ENV_WORLDPOS
	#endif
	#ifdef ENV_WORLDPOS
		
		varying vec3 vWorldPosition;
	#else
		varying vec3 vReflect;
		uniform float refractionRatio;
	#endif
#endif`,Xm=`#ifdef USE_ENVMAP
	#ifdef ENV_WORLDPOS
		vWorldPosition = worldPosition.xyz;
	#else
		vec3 cameraToVertex;
		if ( isOrthographic ) {
			cameraToVertex = normalize( vec3( - viewMatrix[ 0 ][ 2 ], - viewMatrix[ 1 ][ 2 ], - viewMatrix[ 2 ][ 2 ] ) );
		} else {
			cameraToVertex = normalize( worldPosition.xyz - cameraPosition );
		}
		vec3 worldNormal = transformNormalByInverseViewMatrix( transformedNormal, viewMatrix );
		#ifdef ENVMAP_MODE_REFLECTION
			vReflect = reflect( cameraToVertex, worldNormal );
		#else
			vReflect = refract( cameraToVertex, worldNormal, refractionRatio );
		#endif
	#endif
#endif`,qm=`#ifdef USE_FOG
	vFogDepth = - mvPosition.z;
#endif`,Ym=`#ifdef USE_FOG
	varying float vFogDepth;
#endif`,Zm=`#ifdef USE_FOG
	#ifdef FOG_EXP2
		float fogFactor = 1.0 - exp( - fogDensity * fogDensity * vFogDepth * vFogDepth );
	#else
		float fogFactor = smoothstep( fogNear, fogFar, vFogDepth );
	#endif
	gl_FragColor.rgb = mix( gl_FragColor.rgb, fogColor, fogFactor );
#endif`,Jm=`#ifdef USE_FOG
	uniform vec3 fogColor;
	varying float vFogDepth;
	#ifdef FOG_EXP2
		uniform float fogDensity;
	#else
		uniform float fogNear;
		uniform float fogFar;
	#endif
#endif`,Km=`#ifdef USE_GRADIENTMAP
	uniform sampler2D gradientMap;
#endif
vec3 getGradientIrradiance( vec3 normal, vec3 lightDirection ) {
	float dotNL = dot( normal, lightDirection );
	vec2 coord = vec2( dotNL * 0.5 + 0.5, 0.0 );
	#ifdef USE_GRADIENTMAP
		return vec3( texture2D( gradientMap, coord ).r );
	#else
		vec2 fw = fwidth( coord ) * 0.5;
		return mix( vec3( 0.7 ), vec3( 1.0 ), smoothstep( 0.7 - fw.x, 0.7 + fw.x, coord.x ) );
	#endif
}`,jm=`#ifdef USE_LIGHTMAP
	uniform sampler2D lightMap;
	uniform float lightMapIntensity;
#endif`,Qm=`LambertMaterial material;
material.diffuseColor = diffuseColor.rgb;
material.specularStrength = specularStrength;`,eg=`varying vec3 vViewPosition;
struct LambertMaterial {
	vec3 diffuseColor;
	float specularStrength;
};
void RE_Direct_Lambert( const in IncidentLight directLight, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in LambertMaterial material, inout ReflectedLight reflectedLight ) {
	float dotNL = saturate( dot( geometryNormal, directLight.direction ) );
	vec3 irradiance = dotNL * directLight.color;
	reflectedLight.directDiffuse += irradiance * BRDF_Lambert( material.diffuseColor );
}
void RE_IndirectDiffuse_Lambert( const in vec3 irradiance, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in LambertMaterial material, inout ReflectedLight reflectedLight ) {
	reflectedLight.indirectDiffuse += irradiance * BRDF_Lambert( material.diffuseColor );
}
#define RE_Direct				RE_Direct_Lambert
#define RE_IndirectDiffuse		RE_IndirectDiffuse_Lambert`,tg=`uniform bool receiveShadow;
uniform vec3 ambientLightColor;
#if defined( USE_LIGHT_PROBES )
	uniform vec3 lightProbe[ 9 ];
#endif
vec3 shGetIrradianceAt( in vec3 normal, in vec3 shCoefficients[ 9 ] ) {
	float x = normal.x, y = normal.y, z = normal.z;
	vec3 result = shCoefficients[ 0 ] * 0.886227;
	result += shCoefficients[ 1 ] * 2.0 * 0.511664 * y;
	result += shCoefficients[ 2 ] * 2.0 * 0.511664 * z;
	result += shCoefficients[ 3 ] * 2.0 * 0.511664 * x;
	result += shCoefficients[ 4 ] * 2.0 * 0.429043 * x * y;
	result += shCoefficients[ 5 ] * 2.0 * 0.429043 * y * z;
	result += shCoefficients[ 6 ] * ( 0.743125 * z * z - 0.247708 );
	result += shCoefficients[ 7 ] * 2.0 * 0.429043 * x * z;
	result += shCoefficients[ 8 ] * 0.429043 * ( x * x - y * y );
	return result;
}
vec3 getLightProbeIrradiance( const in vec3 lightProbe[ 9 ], const in vec3 normal ) {
	vec3 worldNormal = transformNormalByInverseViewMatrix( normal, viewMatrix );
	vec3 irradiance = shGetIrradianceAt( worldNormal, lightProbe );
	return irradiance;
}
vec3 getAmbientLightIrradiance( const in vec3 ambientLightColor ) {
	vec3 irradiance = ambientLightColor;
	return irradiance;
}
float getDistanceAttenuation( const in float lightDistance, const in float cutoffDistance, const in float decayExponent ) {
	float distanceFalloff = 1.0 / max( pow( lightDistance, decayExponent ), 0.01 );
	if ( cutoffDistance > 0.0 ) {
		distanceFalloff *= pow2( saturate( 1.0 - pow4( lightDistance / cutoffDistance ) ) );
	}
	return distanceFalloff;
}
float getSpotAttenuation( const in float coneCosine, const in float penumbraCosine, const in float angleCosine ) {
	return smoothstep( coneCosine, penumbraCosine, angleCosine );
}
#if NUM_SUN_LIGHTS > 0
	struct SunLight {
		vec3 direction;
		vec3 color;
	};
	uniform SunLight sunLights[ NUM_SUN_LIGHTS ];
	void getSunLightInfo( const in SunLight sunLight, out IncidentLight light ) {
		light.color = sunLight.color;
		light.direction = sunLight.direction;
		light.visible = true;
	}
#endif
#if NUM_DIR_LIGHTS > 0
	struct DirectionalLight {
		vec3 direction;
		vec3 color;
	};
	uniform DirectionalLight directionalLights[ NUM_DIR_LIGHTS ];
	void getDirectionalLightInfo( const in DirectionalLight directionalLight, out IncidentLight light ) {
		light.color = directionalLight.color;
		light.direction = directionalLight.direction;
		light.visible = true;
	}
#endif
#if NUM_POINT_LIGHTS > 0
	struct PointLight {
		vec3 position;
		vec3 color;
		float distance;
		float decay;
	};
	uniform PointLight pointLights[ NUM_POINT_LIGHTS ];
	void getPointLightInfo( const in PointLight pointLight, const in vec3 geometryPosition, out IncidentLight light ) {
		vec3 lVector = pointLight.position - geometryPosition;
		light.direction = normalize( lVector );
		float lightDistance = length( lVector );
		light.color = pointLight.color;
		light.color *= getDistanceAttenuation( lightDistance, pointLight.distance, pointLight.decay );
		light.visible = ( light.color != vec3( 0.0 ) );
	}
#endif
#if NUM_SPOT_LIGHTS > 0
	struct SpotLight {
		vec3 position;
		vec3 direction;
		vec3 color;
		float distance;
		float decay;
		float coneCos;
		float penumbraCos;
	};
	uniform SpotLight spotLights[ NUM_SPOT_LIGHTS ];
	void getSpotLightInfo( const in SpotLight spotLight, const in vec3 geometryPosition, out IncidentLight light ) {
		vec3 lVector = spotLight.position - geometryPosition;
		light.direction = normalize( lVector );
		float angleCos = dot( light.direction, spotLight.direction );
		float spotAttenuation = getSpotAttenuation( spotLight.coneCos, spotLight.penumbraCos, angleCos );
		if ( spotAttenuation > 0.0 ) {
			float lightDistance = length( lVector );
			light.color = spotLight.color * spotAttenuation;
			light.color *= getDistanceAttenuation( lightDistance, spotLight.distance, spotLight.decay );
			light.visible = ( light.color != vec3( 0.0 ) );
		} else {
			light.color = vec3( 0.0 );
			light.visible = false;
		}
	}
#endif
#if NUM_RECT_AREA_LIGHTS > 0
	struct RectAreaLight {
		vec3 color;
		vec3 position;
		vec3 halfWidth;
		vec3 halfHeight;
	};
	uniform sampler2D ltc_1;	uniform sampler2D ltc_2;
	uniform RectAreaLight rectAreaLights[ NUM_RECT_AREA_LIGHTS ];
#endif
#if NUM_HEMI_LIGHTS > 0
	struct HemisphereLight {
		vec3 direction;
		vec3 skyColor;
		vec3 groundColor;
	};
	uniform HemisphereLight hemisphereLights[ NUM_HEMI_LIGHTS ];
	vec3 getHemisphereLightIrradiance( const in HemisphereLight hemiLight, const in vec3 normal ) {
		float dotNL = dot( normal, hemiLight.direction );
		float hemiDiffuseWeight = 0.5 * dotNL + 0.5;
		vec3 irradiance = mix( hemiLight.groundColor, hemiLight.skyColor, hemiDiffuseWeight );
		return irradiance;
	}
#endif
#include <lightprobes_pars_fragment>`,ng=`#ifdef USE_ENVMAP
	vec3 getIBLIrradiance( const in vec3 normal ) {
		#ifdef ENVMAP_TYPE_PMREM
			vec3 worldNormal = transformNormalByInverseViewMatrix( normal, viewMatrix );
			vec4 envMapColor = textureLod( envMap, envMapRotation * worldNormal, ENVMAP_MAX_LOD );
			return PI * envMapColor.rgb * envMapIntensity;
		#else
			return vec3( 0.0 );
		#endif
	}
	vec3 getIBLRadiance( const in vec3 viewDir, const in vec3 normal, const in float roughness ) {
		#ifdef ENVMAP_TYPE_PMREM
			vec3 reflectVec = reflect( - viewDir, normal );
			reflectVec = normalize( mix( reflectVec, normal, pow4( roughness ) ) );
			reflectVec = transformDirectionByInverseViewMatrix( reflectVec, viewMatrix );
			vec4 envMapColor = textureLod( envMap, envMapRotation * reflectVec, roughnessToMip( roughness ) );
			return envMapColor.rgb * envMapIntensity;
		#else
			return vec3( 0.0 );
		#endif
	}
	#ifdef USE_RETROREFLECTION
		vec3 getIBLRetroRadiance( const in vec3 viewDir, const in vec3 normal, const in float roughness ) {
			#ifdef ENVMAP_TYPE_PMREM
				vec3 retroVec = normalize( mix( viewDir, normal, pow4( roughness ) ) );
				retroVec = transformDirectionByInverseViewMatrix( retroVec, viewMatrix );
				vec4 envMapColor = textureLod( envMap, envMapRotation * retroVec, roughnessToMip( roughness ) );
				return envMapColor.rgb * envMapIntensity;
			#else
				return vec3( 0.0 );
			#endif
		}
	#endif
	#ifdef USE_ANISOTROPY
		vec3 getIBLAnisotropyRadiance( const in vec3 viewDir, const in vec3 normal, const in float roughness, const in vec3 bitangent, const in float anisotropy ) {
			#ifdef ENVMAP_TYPE_PMREM
				vec3 bentNormal = cross( bitangent, viewDir );
				bentNormal = normalize( cross( bentNormal, bitangent ) );
				bentNormal = normalize( mix( bentNormal, normal, pow2( pow2( 1.0 - anisotropy * ( 1.0 - roughness ) ) ) ) );
				return getIBLRadiance( viewDir, bentNormal, roughness );
			#else
				return vec3( 0.0 );
			#endif
		}
		#ifdef USE_RETROREFLECTION
			vec3 getIBLAnisotropyRetroRadiance( const in vec3 viewDir, const in vec3 normal, const in float roughness, const in vec3 bitangent, const in float anisotropy ) {
				#ifdef ENVMAP_TYPE_PMREM
					vec3 bentNormal = cross( bitangent, viewDir );
					bentNormal = normalize( cross( bentNormal, bitangent ) );
					bentNormal = normalize( mix( bentNormal, normal, pow2( pow2( 1.0 - anisotropy * ( 1.0 - roughness ) ) ) ) );
					return getIBLRetroRadiance( viewDir, bentNormal, roughness );
				#else
					return vec3( 0.0 );
				#endif
			}
		#endif
	#endif
#endif`,ig=`ToonMaterial material;
material.diffuseColor = diffuseColor.rgb;`,sg=`varying vec3 vViewPosition;
struct ToonMaterial {
	vec3 diffuseColor;
};
void RE_Direct_Toon( const in IncidentLight directLight, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in ToonMaterial material, inout ReflectedLight reflectedLight ) {
	vec3 irradiance = getGradientIrradiance( geometryNormal, directLight.direction ) * directLight.color;
	reflectedLight.directDiffuse += irradiance * BRDF_Lambert( material.diffuseColor );
}
void RE_IndirectDiffuse_Toon( const in vec3 irradiance, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in ToonMaterial material, inout ReflectedLight reflectedLight ) {
	reflectedLight.indirectDiffuse += irradiance * BRDF_Lambert( material.diffuseColor );
}
#define RE_Direct				RE_Direct_Toon
#define RE_IndirectDiffuse		RE_IndirectDiffuse_Toon`,rg=`BlinnPhongMaterial material;
material.diffuseColor = diffuseColor.rgb;
material.specularColor = specular;
material.specularShininess = shininess;
material.specularStrength = specularStrength;`,ag=`varying vec3 vViewPosition;
struct BlinnPhongMaterial {
	vec3 diffuseColor;
	vec3 specularColor;
	float specularShininess;
	float specularStrength;
};
void RE_Direct_BlinnPhong( const in IncidentLight directLight, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in BlinnPhongMaterial material, inout ReflectedLight reflectedLight ) {
	float dotNL = saturate( dot( geometryNormal, directLight.direction ) );
	vec3 irradiance = dotNL * directLight.color;
	reflectedLight.directDiffuse += irradiance * BRDF_Lambert( material.diffuseColor );
	reflectedLight.directSpecular += irradiance * BRDF_BlinnPhong( directLight.direction, geometryViewDir, geometryNormal, material.specularColor, material.specularShininess ) * material.specularStrength;
}
void RE_IndirectDiffuse_BlinnPhong( const in vec3 irradiance, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in BlinnPhongMaterial material, inout ReflectedLight reflectedLight ) {
	reflectedLight.indirectDiffuse += irradiance * BRDF_Lambert( material.diffuseColor );
}
#define RE_Direct				RE_Direct_BlinnPhong
#define RE_IndirectDiffuse		RE_IndirectDiffuse_BlinnPhong`,og=`PhysicalMaterial material;
material.diffuseColor = diffuseColor.rgb;
material.diffuseContribution = diffuseColor.rgb * ( 1.0 - metalnessFactor );
material.metalness = metalnessFactor;
vec3 dxy = max( abs( dFdx( nonPerturbedNormal ) ), abs( dFdy( nonPerturbedNormal ) ) );
float geometryRoughness = max( max( dxy.x, dxy.y ), dxy.z );
material.roughness = max( roughnessFactor, 0.045 );
material.roughness += geometryRoughness;
material.roughness = min( material.roughness, 1.0 );
#ifdef USE_DIFFUSE_ROUGHNESS
	float diffuseRoughnessFactor = diffuseRoughness;
	#ifdef USE_DIFFUSE_ROUGHNESSMAP
		diffuseRoughnessFactor *= texture2D( diffuseRoughnessMap, vDiffuseRoughnessMapUv ).r;
	#endif
	material.diffuseRoughness = saturate( diffuseRoughnessFactor );
#endif
#ifdef IOR
	material.ior = ior;
	#ifdef USE_SPECULAR
		float specularIntensityFactor = specularIntensity;
		vec3 specularColorFactor = specularColor;
		#ifdef USE_SPECULAR_COLORMAP
			specularColorFactor *= texture2D( specularColorMap, vSpecularColorMapUv ).rgb;
		#endif
		#ifdef USE_SPECULAR_INTENSITYMAP
			specularIntensityFactor *= texture2D( specularIntensityMap, vSpecularIntensityMapUv ).a;
		#endif
		material.specularF90 = mix( specularIntensityFactor, 1.0, metalnessFactor );
	#else
		float specularIntensityFactor = 1.0;
		vec3 specularColorFactor = vec3( 1.0 );
		material.specularF90 = 1.0;
	#endif
	material.specularColor = min( pow2( ( material.ior - 1.0 ) / ( material.ior + 1.0 ) ) * specularColorFactor, vec3( 1.0 ) ) * specularIntensityFactor;
	material.specularColorBlended = mix( material.specularColor, diffuseColor.rgb, metalnessFactor );
#else
	material.specularColor = vec3( 0.04 );
	material.specularColorBlended = mix( material.specularColor, diffuseColor.rgb, metalnessFactor );
	material.specularF90 = 1.0;
#endif
#ifdef USE_CLEARCOAT
	material.clearcoat = clearcoat;
	material.clearcoatRoughness = clearcoatRoughness;
	material.clearcoatF0 = vec3( 0.04 );
	material.clearcoatF90 = 1.0;
	#ifdef USE_CLEARCOATMAP
		material.clearcoat *= texture2D( clearcoatMap, vClearcoatMapUv ).x;
	#endif
	#ifdef USE_CLEARCOAT_ROUGHNESSMAP
		material.clearcoatRoughness *= texture2D( clearcoatRoughnessMap, vClearcoatRoughnessMapUv ).y;
	#endif
	material.clearcoat = saturate( material.clearcoat );	material.clearcoatRoughness = max( material.clearcoatRoughness, 0.045 );
	material.clearcoatRoughness += geometryRoughness;
	material.clearcoatRoughness = min( material.clearcoatRoughness, 1.0 );
#endif
#ifdef USE_DISPERSION
	material.dispersion = dispersion;
#endif
#ifdef USE_RETROREFLECTION
	material.retroreflectivity = retroreflectivity;
#endif
#ifdef USE_IRIDESCENCE
	material.iridescence = iridescence;
	material.iridescenceIOR = iridescenceIOR;
	#ifdef USE_IRIDESCENCEMAP
		material.iridescence *= texture2D( iridescenceMap, vIridescenceMapUv ).r;
	#endif
	#ifdef USE_IRIDESCENCE_THICKNESSMAP
		material.iridescenceThickness = (iridescenceThicknessMaximum - iridescenceThicknessMinimum) * texture2D( iridescenceThicknessMap, vIridescenceThicknessMapUv ).g + iridescenceThicknessMinimum;
	#else
		material.iridescenceThickness = iridescenceThicknessMaximum;
	#endif
#endif
#ifdef USE_SHEEN
	material.sheenColor = sheenColor;
	#ifdef USE_SHEEN_COLORMAP
		material.sheenColor *= texture2D( sheenColorMap, vSheenColorMapUv ).rgb;
	#endif
	material.sheenRoughness = clamp( sheenRoughness, 0.0001, 1.0 );
	#ifdef USE_SHEEN_ROUGHNESSMAP
		material.sheenRoughness *= texture2D( sheenRoughnessMap, vSheenRoughnessMapUv ).a;
	#endif
#endif
#ifdef USE_ANISOTROPY
	#ifdef USE_ANISOTROPYMAP
		mat2 anisotropyMat = mat2( anisotropyVector.x, anisotropyVector.y, - anisotropyVector.y, anisotropyVector.x );
		vec3 anisotropyPolar = texture2D( anisotropyMap, vAnisotropyMapUv ).rgb;
		vec2 anisotropyV = anisotropyMat * normalize( 2.0 * anisotropyPolar.rg - vec2( 1.0 ) ) * anisotropyPolar.b;
	#else
		vec2 anisotropyV = anisotropyVector;
	#endif
	material.anisotropy = length( anisotropyV );
	if( material.anisotropy == 0.0 ) {
		anisotropyV = vec2( 1.0, 0.0 );
	} else {
		anisotropyV /= material.anisotropy;
		material.anisotropy = saturate( material.anisotropy );
	}
	material.alphaT = mix( pow2( material.roughness ), 1.0, pow2( material.anisotropy ) );
	material.anisotropyT = tbn[ 0 ] * anisotropyV.x + tbn[ 1 ] * anisotropyV.y;
	material.anisotropyB = tbn[ 1 ] * anisotropyV.x - tbn[ 0 ] * anisotropyV.y;
#endif`,lg=`uniform sampler2D dfgLUT;
struct PhysicalMaterial {
	vec3 diffuseColor;
	vec3 diffuseContribution;
	vec3 specularColor;
	vec3 specularColorBlended;
	float roughness;
	float metalness;
	float specularF90;
	float dispersion;
	vec2 dfg;
	vec3 multiScatteringCompensation;
	#ifdef USE_DIFFUSE_ROUGHNESS
		float diffuseRoughness;
	#endif
	#ifdef USE_RETROREFLECTION
		float retroreflectivity;
	#endif
	#ifdef USE_CLEARCOAT
		float clearcoat;
		float clearcoatRoughness;
		vec3 clearcoatF0;
		float clearcoatF90;
	#endif
	#ifdef USE_IRIDESCENCE
		float iridescence;
		float iridescenceIOR;
		float iridescenceThickness;
		vec3 iridescenceFresnel;
		vec3 iridescenceF0Dielectric;
		vec3 iridescenceF0Metallic;
	#endif
	#ifdef USE_SHEEN
		vec3 sheenColor;
		float sheenRoughness;
	#endif
	#ifdef IOR
		float ior;
	#endif
	#ifdef USE_TRANSMISSION
		float transmission;
		float transmissionAlpha;
		float thickness;
		float attenuationDistance;
		vec3 attenuationColor;
	#endif
	#ifdef USE_ANISOTROPY
		float anisotropy;
		float alphaT;
		vec3 anisotropyT;
		vec3 anisotropyB;
	#endif
};
vec3 clearcoatSpecularDirect = vec3( 0.0 );
vec3 clearcoatSpecularIndirect = vec3( 0.0 );
vec3 sheenSpecularDirect = vec3( 0.0 );
vec3 sheenSpecularIndirect = vec3(0.0 );
vec3 Schlick_to_F0( const in vec3 f, const in float f90, const in float dotVH ) {
    float x = clamp( 1.0 - dotVH, 0.0, 1.0 );
    float x2 = x * x;
    float x5 = clamp( x * x2 * x2, 0.0, 0.9999 );
    return ( f - vec3( f90 ) * x5 ) / ( 1.0 - x5 );
}
#ifdef USE_DIFFUSE_ROUGHNESS
	const float EON_EPSILON = 1e-7;
	float FON_DirectionalAlbedo( const in float mu, const in float roughness, const in float A ) {
		float muComp = 1.0 - mu;
		float gOverPi = muComp * ( 0.0571085289 + muComp * ( 0.491881867 + muComp * ( - 0.332181442 + muComp * 0.0714429953 ) ) );
		return A * ( 1.0 + roughness * gOverPi );
	}
	vec3 BRDF_EON( const in vec3 lightDir, const in vec3 viewDir, const in vec3 normal, const in vec3 diffuseColor, const in float roughness ) {
		vec3 rho = saturate( diffuseColor );
		if ( roughness <= EON_EPSILON ) return BRDF_Lambert( rho );
		float dotNL = saturate( dot( normal, lightDir ) );
		float dotNV = saturate( dot( normal, viewDir ) );
		float s = dot( lightDir, viewDir ) - dotNL * dotNV;
		float sOverT = ( s > 0.0 ) ? s / max( max( dotNL, dotNV ), EON_EPSILON ) : s;
		float A = 1.0 / ( 1.0 + ( 0.5 - 2.0 / ( 3.0 * PI ) ) * roughness );
		vec3 singleScatter = rho * RECIPROCAL_PI * A * ( 1.0 + roughness * sOverT );
		float averageAlbedo = A * ( 1.0 + ( 2.0 / 3.0 - 28.0 / ( 15.0 * PI ) ) * roughness );
		float albedoV = FON_DirectionalAlbedo( dotNV, roughness, A );
		float albedoL = FON_DirectionalAlbedo( dotNL, roughness, A );
		vec3 rhoMultiScatter = rho * rho * averageAlbedo / max( vec3( EON_EPSILON ), vec3( 1.0 ) - rho * ( 1.0 - averageAlbedo ) );
		vec3 multiScatter = rhoMultiScatter * RECIPROCAL_PI
			* max( EON_EPSILON, 1.0 - albedoV )
			* max( EON_EPSILON, 1.0 - albedoL )
			/ max( EON_EPSILON, 1.0 - averageAlbedo );
		return singleScatter + multiScatter;
	}
	vec3 EON_DirectionalAlbedo( const in vec3 diffuseColor, const in float roughness, const in float dotNV ) {
		vec3 rho = saturate( diffuseColor );
		if ( roughness <= EON_EPSILON ) return rho;
		float A = 1.0 / ( 1.0 + ( 0.5 - 2.0 / ( 3.0 * PI ) ) * roughness );
		float directionalAlbedo = FON_DirectionalAlbedo( dotNV, roughness, A );
		float averageAlbedo = A * ( 1.0 + ( 2.0 / 3.0 - 28.0 / ( 15.0 * PI ) ) * roughness );
		vec3 rhoMultiScatter = rho * rho * averageAlbedo / max( vec3( EON_EPSILON ), vec3( 1.0 ) - rho * ( 1.0 - averageAlbedo ) );
		return rho * directionalAlbedo + rhoMultiScatter * ( 1.0 - directionalAlbedo );
	}
#endif
float V_GGX_SmithCorrelated( const in float alpha, const in float dotNL, const in float dotNV ) {
	float a2 = pow2( alpha );
	float gv = dotNL * sqrt( a2 + ( 1.0 - a2 ) * pow2( dotNV ) );
	float gl = dotNV * sqrt( a2 + ( 1.0 - a2 ) * pow2( dotNL ) );
	return 0.5 / max( gv + gl, EPSILON );
}
float D_GGX( const in float alpha, const in float dotNH ) {
	float a2 = pow2( alpha );
	float denom = pow2( dotNH ) * ( a2 - 1.0 ) + 1.0;
	return RECIPROCAL_PI * a2 / pow2( denom );
}
#ifdef USE_ANISOTROPY
	float V_GGX_SmithCorrelated_Anisotropic( const in float alphaT, const in float alphaB, const in float dotTV, const in float dotBV, const in float dotTL, const in float dotBL, const in float dotNV, const in float dotNL ) {
		float gv = dotNL * length( vec3( alphaT * dotTV, alphaB * dotBV, dotNV ) );
		float gl = dotNV * length( vec3( alphaT * dotTL, alphaB * dotBL, dotNL ) );
		return 0.5 / max( gv + gl, EPSILON );
	}
	float D_GGX_Anisotropic( const in float alphaT, const in float alphaB, const in float dotNH, const in float dotTH, const in float dotBH ) {
		float a2 = alphaT * alphaB;
		highp vec3 v = vec3( alphaB * dotTH, alphaT * dotBH, a2 * dotNH );
		highp float v2 = dot( v, v );
		float w2 = a2 / v2;
		return RECIPROCAL_PI * a2 * pow2 ( w2 );
	}
#endif
#ifdef USE_CLEARCOAT
	vec3 BRDF_GGX_Clearcoat( const in vec3 lightDir, const in vec3 viewDir, const in vec3 normal, const in PhysicalMaterial material) {
		vec3 f0 = material.clearcoatF0;
		float f90 = material.clearcoatF90;
		float roughness = max( material.clearcoatRoughness, 0.045 );
		float alpha = pow2( roughness );
		vec3 halfDir = normalize( lightDir + viewDir );
		float dotNL = saturate( dot( normal, lightDir ) );
		float dotNV = saturate( dot( normal, viewDir ) );
		float dotNH = saturate( dot( normal, halfDir ) );
		float dotVH = saturate( dot( viewDir, halfDir ) );
		vec3 F = F_Schlick( f0, f90, dotVH );
		float V = V_GGX_SmithCorrelated( alpha, dotNL, dotNV );
		float D = D_GGX( alpha, dotNH );
		return F * ( V * D );
	}
#endif
vec3 BRDF_GGX( const in vec3 lightDir, const in vec3 viewDir, const in vec3 normal, const in PhysicalMaterial material ) {
	vec3 f0 = material.specularColorBlended;
	float f90 = material.specularF90;
	float roughness = max( material.roughness, 0.045 );
	float alpha = pow2( roughness );
	vec3 halfDir = normalize( lightDir + viewDir );
	float dotNL = saturate( dot( normal, lightDir ) );
	float dotNV = saturate( dot( normal, viewDir ) );
	float dotNH = saturate( dot( normal, halfDir ) );
	float dotVH = saturate( dot( viewDir, halfDir ) );
	vec3 F = F_Schlick( f0, f90, dotVH );
	#ifdef USE_IRIDESCENCE
		F = mix( F, material.iridescenceFresnel, material.iridescence );
	#endif
	#ifdef USE_ANISOTROPY
		float dotTL = dot( material.anisotropyT, lightDir );
		float dotTV = dot( material.anisotropyT, viewDir );
		float dotTH = dot( material.anisotropyT, halfDir );
		float dotBL = dot( material.anisotropyB, lightDir );
		float dotBV = dot( material.anisotropyB, viewDir );
		float dotBH = dot( material.anisotropyB, halfDir );
		float alphaT = max( material.alphaT, alpha );
		float V = V_GGX_SmithCorrelated_Anisotropic( alphaT, alpha, dotTV, dotBV, dotTL, dotBL, dotNV, dotNL );
		float D = D_GGX_Anisotropic( alphaT, alpha, dotNH, dotTH, dotBH );
	#else
		float V = V_GGX_SmithCorrelated( alpha, dotNL, dotNV );
		float D = D_GGX( alpha, dotNH );
	#endif
	return F * ( V * D );
}
vec2 LTC_Uv( const in vec3 N, const in vec3 V, const in float roughness ) {
	const float LUT_SIZE = 64.0;
	const float LUT_SCALE = ( LUT_SIZE - 1.0 ) / LUT_SIZE;
	const float LUT_BIAS = 0.5 / LUT_SIZE;
	float dotNV = saturate( dot( N, V ) );
	vec2 uv = vec2( roughness, sqrt( 1.0 - dotNV ) );
	uv = uv * LUT_SCALE + LUT_BIAS;
	return uv;
}
float LTC_ClippedSphereFormFactor( const in vec3 f ) {
	float l = length( f );
	return max( ( l * l + f.z ) / ( l + 1.0 ), 0.0 );
}
vec3 LTC_EdgeVectorFormFactor( const in vec3 v1, const in vec3 v2 ) {
	float x = dot( v1, v2 );
	float y = abs( x );
	float a = 0.8543985 + ( 0.4965155 + 0.0145206 * y ) * y;
	float b = 3.4175940 + ( 4.1616724 + y ) * y;
	float v = a / b;
	float theta_sintheta = ( x > 0.0 ) ? v : 0.5 * inversesqrt( max( 1.0 - x * x, 1e-7 ) ) - v;
	return cross( v1, v2 ) * theta_sintheta;
}
vec3 LTC_Evaluate( const in vec3 N, const in vec3 V, const in vec3 P, const in mat3 mInv, const in vec3 rectCoords[ 4 ] ) {
	vec3 v1 = rectCoords[ 1 ] - rectCoords[ 0 ];
	vec3 v2 = rectCoords[ 3 ] - rectCoords[ 0 ];
	vec3 lightNormal = cross( v1, v2 );
	if( dot( lightNormal, P - rectCoords[ 0 ] ) < 0.0 ) return vec3( 0.0 );
	vec3 T1, T2;
	T1 = normalize( V - N * dot( V, N ) );
	T2 = - cross( N, T1 );
	mat3 mat = mInv * transpose( mat3( T1, T2, N ) );
	vec3 coords[ 4 ];
	coords[ 0 ] = mat * ( rectCoords[ 0 ] - P );
	coords[ 1 ] = mat * ( rectCoords[ 1 ] - P );
	coords[ 2 ] = mat * ( rectCoords[ 2 ] - P );
	coords[ 3 ] = mat * ( rectCoords[ 3 ] - P );
	coords[ 0 ] = normalize( coords[ 0 ] );
	coords[ 1 ] = normalize( coords[ 1 ] );
	coords[ 2 ] = normalize( coords[ 2 ] );
	coords[ 3 ] = normalize( coords[ 3 ] );
	vec3 vectorFormFactor = vec3( 0.0 );
	vectorFormFactor += LTC_EdgeVectorFormFactor( coords[ 0 ], coords[ 1 ] );
	vectorFormFactor += LTC_EdgeVectorFormFactor( coords[ 1 ], coords[ 2 ] );
	vectorFormFactor += LTC_EdgeVectorFormFactor( coords[ 2 ], coords[ 3 ] );
	vectorFormFactor += LTC_EdgeVectorFormFactor( coords[ 3 ], coords[ 0 ] );
	float result = LTC_ClippedSphereFormFactor( vectorFormFactor );
	return vec3( result );
}
#if defined( USE_SHEEN )
float D_Charlie( float roughness, float dotNH ) {
	float alpha = pow2( roughness );
	float invAlpha = 1.0 / alpha;
	float cos2h = dotNH * dotNH;
	float sin2h = max( 1.0 - cos2h, 0.0078125 );
	return ( 2.0 + invAlpha ) * pow( sin2h, invAlpha * 0.5 ) / ( 2.0 * PI );
}
float V_Neubelt( float dotNV, float dotNL ) {
	return saturate( 1.0 / ( 4.0 * ( dotNL + dotNV - dotNL * dotNV ) ) );
}
vec3 BRDF_Sheen( const in vec3 lightDir, const in vec3 viewDir, const in vec3 normal, vec3 sheenColor, const in float sheenRoughness ) {
	vec3 halfDir = normalize( lightDir + viewDir );
	float dotNL = saturate( dot( normal, lightDir ) );
	float dotNV = saturate( dot( normal, viewDir ) );
	float dotNH = saturate( dot( normal, halfDir ) );
	float D = D_Charlie( sheenRoughness, dotNH );
	float V = V_Neubelt( dotNV, dotNL );
	return sheenColor * ( D * V );
}
#endif
float IBLSheenBRDF( const in vec3 normal, const in vec3 viewDir, const in float roughness ) {
	float dotNV = saturate( dot( normal, viewDir ) );
	float r2 = roughness * roughness;
	float rInv = 1.0 / ( roughness + 0.1 );
	float a = -1.9362 + 1.0678 * roughness + 0.4573 * r2 - 0.8469 * rInv;
	float b = -0.6014 + 0.5538 * roughness - 0.4670 * r2 - 0.1255 * rInv;
	float DG = exp( a * dotNV + b );
	return saturate( DG );
}
vec3 EnvironmentBRDF( const in vec3 normal, const in vec3 viewDir, const in vec3 specularColor, const in float specularF90, const in float roughness ) {
	float dotNV = saturate( dot( normal, viewDir ) );
	vec2 fab = texture2D( dfgLUT, vec2( roughness, dotNV ) ).rg;
	return specularColor * fab.x + specularF90 * fab.y;
}
#ifdef USE_IRIDESCENCE
void computeMultiscatteringIridescence( const in vec2 fab, const in vec3 specularColor, const in float specularF90, const in float iridescence, const in vec3 iridescenceF0, inout vec3 singleScatter, inout vec3 multiScatter ) {
#else
void computeMultiscattering( const in vec2 fab, const in vec3 specularColor, const in float specularF90, inout vec3 singleScatter, inout vec3 multiScatter ) {
#endif
	#ifdef USE_IRIDESCENCE
		vec3 Fr = mix( specularColor, iridescenceF0, iridescence );
	#else
		vec3 Fr = specularColor;
	#endif
	vec3 FssEss = Fr * fab.x + specularF90 * fab.y;
	float Ess = fab.x + fab.y;
	float Ems = 1.0 - Ess;
	vec3 Favg = Fr + ( 1.0 - Fr ) * 0.047619;	vec3 Fms = FssEss * Favg / ( 1.0 - Ems * Favg );
	singleScatter += FssEss;
	multiScatter += Fms * Ems;
}
#if NUM_RECT_AREA_LIGHTS > 0
	void RE_Direct_RectArea_Physical( const in RectAreaLight rectAreaLight, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in PhysicalMaterial material, inout ReflectedLight reflectedLight ) {
		vec3 normal = geometryNormal;
		vec3 viewDir = geometryViewDir;
		vec3 position = geometryPosition;
		vec3 lightPos = rectAreaLight.position;
		vec3 halfWidth = rectAreaLight.halfWidth;
		vec3 halfHeight = rectAreaLight.halfHeight;
		vec3 lightColor = rectAreaLight.color;
		float roughness = material.roughness;
		vec3 rectCoords[ 4 ];
		rectCoords[ 0 ] = lightPos + halfWidth - halfHeight;		rectCoords[ 1 ] = lightPos - halfWidth - halfHeight;
		rectCoords[ 2 ] = lightPos - halfWidth + halfHeight;
		rectCoords[ 3 ] = lightPos + halfWidth + halfHeight;
		vec2 uv = LTC_Uv( normal, viewDir, roughness );
		vec4 t1 = texture2D( ltc_1, uv );
		vec4 t2 = texture2D( ltc_2, uv );
		mat3 mInv = mat3(
			vec3( t1.x, 0, t1.y ),
			vec3(    0, 1,    0 ),
			vec3( t1.z, 0, t1.w )
		);
		vec3 fresnel = ( material.specularColorBlended * t2.x + ( material.specularF90 - material.specularColorBlended ) * t2.y );
		reflectedLight.directSpecular += lightColor * fresnel * LTC_Evaluate( normal, viewDir, position, mInv, rectCoords );
		reflectedLight.directDiffuse += lightColor * material.diffuseContribution * LTC_Evaluate( normal, viewDir, position, mat3( 1.0 ), rectCoords );
		#ifdef USE_CLEARCOAT
			vec3 Ncc = geometryClearcoatNormal;
			vec2 uvClearcoat = LTC_Uv( Ncc, viewDir, material.clearcoatRoughness );
			vec4 t1Clearcoat = texture2D( ltc_1, uvClearcoat );
			vec4 t2Clearcoat = texture2D( ltc_2, uvClearcoat );
			mat3 mInvClearcoat = mat3(
				vec3( t1Clearcoat.x, 0, t1Clearcoat.y ),
				vec3(             0, 1,             0 ),
				vec3( t1Clearcoat.z, 0, t1Clearcoat.w )
			);
			vec3 fresnelClearcoat = material.clearcoatF0 * t2Clearcoat.x + ( material.clearcoatF90 - material.clearcoatF0 ) * t2Clearcoat.y;
			clearcoatSpecularDirect += lightColor * fresnelClearcoat * LTC_Evaluate( Ncc, viewDir, position, mInvClearcoat, rectCoords );
		#endif
	}
#endif
void RE_Direct_Physical( const in IncidentLight directLight, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in PhysicalMaterial material, inout ReflectedLight reflectedLight ) {
	float dotNL = saturate( dot( geometryNormal, directLight.direction ) );
	vec3 irradiance = dotNL * directLight.color;
	#ifdef USE_CLEARCOAT
		float dotNLcc = saturate( dot( geometryClearcoatNormal, directLight.direction ) );
		vec3 ccIrradiance = dotNLcc * directLight.color;
		clearcoatSpecularDirect += ccIrradiance * BRDF_GGX_Clearcoat( directLight.direction, geometryViewDir, geometryClearcoatNormal, material );
	#endif
	#ifdef USE_SHEEN
 
 		sheenSpecularDirect += irradiance * BRDF_Sheen( directLight.direction, geometryViewDir, geometryNormal, material.sheenColor, material.sheenRoughness );
 
 		float sheenAlbedoV = IBLSheenBRDF( geometryNormal, geometryViewDir, material.sheenRoughness );
 		float sheenAlbedoL = IBLSheenBRDF( geometryNormal, directLight.direction, material.sheenRoughness );
 
 		float sheenEnergyComp = 1.0 - max3( material.sheenColor ) * max( sheenAlbedoV, sheenAlbedoL );
 
 		irradiance *= sheenEnergyComp;
 
 	#endif
	vec3 specularBRDF = BRDF_GGX( directLight.direction, geometryViewDir, geometryNormal, material );
	#ifdef USE_RETROREFLECTION
		vec3 retroViewDir = reflect( - geometryViewDir, geometryNormal );
		vec3 retroSpecularBRDF = BRDF_GGX( directLight.direction, retroViewDir, geometryNormal, material );
		specularBRDF = mix( specularBRDF, retroSpecularBRDF, saturate( material.retroreflectivity ) );
	#endif
	reflectedLight.directSpecular += irradiance * specularBRDF * material.multiScatteringCompensation;
	vec3 halfDir = normalize( directLight.direction + geometryViewDir );
	float dotVH = saturate( dot( geometryViewDir, halfDir ) );
	vec3 F = F_Schlick( material.specularColor, material.specularF90, dotVH );
	#ifdef USE_RETROREFLECTION
		vec3 retroHalfDir = normalize( directLight.direction + retroViewDir );
		float dotRetroVH = saturate( dot( retroViewDir, retroHalfDir ) );
		vec3 retroF = F_Schlick( material.specularColor, material.specularF90, dotRetroVH );
		F = mix( F, retroF, saturate( material.retroreflectivity ) );
	#endif
	#ifdef USE_DIFFUSE_ROUGHNESS
		vec3 diffuseBRDF = BRDF_EON( directLight.direction, geometryViewDir, geometryNormal, material.diffuseColor, material.diffuseRoughness ) * ( 1.0 - material.metalness );
	#else
		vec3 diffuseBRDF = BRDF_Lambert( material.diffuseContribution );
	#endif
	reflectedLight.directDiffuse += irradiance * diffuseBRDF * ( 1.0 - F );
}
void RE_IndirectDiffuse_Physical( const in vec3 irradiance, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in PhysicalMaterial material, inout ReflectedLight reflectedLight ) {
	vec3 singleScattering = vec3( 0.0 );
	vec3 multiScattering = vec3( 0.0 );
	#ifdef USE_IRIDESCENCE
		computeMultiscatteringIridescence( material.dfg, material.specularColor, material.specularF90, material.iridescence, material.iridescenceF0Dielectric, singleScattering, multiScattering );
	#else
		computeMultiscattering( material.dfg, material.specularColor, material.specularF90, singleScattering, multiScattering );
	#endif
	#ifdef USE_DIFFUSE_ROUGHNESS
		float dotNV = saturate( dot( geometryNormal, geometryViewDir ) );
		vec3 diffuseAlbedo = EON_DirectionalAlbedo( material.diffuseColor, material.diffuseRoughness, dotNV ) * ( 1.0 - material.metalness );
		vec3 diffuse = irradiance * RECIPROCAL_PI * diffuseAlbedo * ( 1.0 - singleScattering - multiScattering );
	#else
		vec3 diffuse = irradiance * BRDF_Lambert( material.diffuseContribution ) * ( 1.0 - singleScattering - multiScattering );
	#endif
	#ifdef USE_SHEEN
		float sheenAlbedo = IBLSheenBRDF( geometryNormal, geometryViewDir, material.sheenRoughness );
		sheenSpecularIndirect += irradiance * material.sheenColor * sheenAlbedo * RECIPROCAL_PI;
		float sheenEnergyComp = 1.0 - max3( material.sheenColor ) * sheenAlbedo;
		diffuse *= sheenEnergyComp;
	#endif
	reflectedLight.indirectDiffuse += diffuse;
}
void RE_IndirectSpecular_Physical( const in vec3 radiance, const in vec3 irradiance, const in vec3 clearcoatRadiance, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in PhysicalMaterial material, inout ReflectedLight reflectedLight) {
	#ifdef USE_CLEARCOAT
		clearcoatSpecularIndirect += clearcoatRadiance * EnvironmentBRDF( geometryClearcoatNormal, geometryViewDir, material.clearcoatF0, material.clearcoatF90, material.clearcoatRoughness );
	#endif
	#ifdef USE_SHEEN
		sheenSpecularIndirect += irradiance * material.sheenColor * IBLSheenBRDF( geometryNormal, geometryViewDir, material.sheenRoughness ) * RECIPROCAL_PI;
 	#endif
	vec3 singleScatteringDielectric = vec3( 0.0 );
	vec3 multiScatteringDielectric = vec3( 0.0 );
	vec3 singleScatteringMetallic = vec3( 0.0 );
	vec3 multiScatteringMetallic = vec3( 0.0 );
	#ifdef USE_IRIDESCENCE
		computeMultiscatteringIridescence( material.dfg, material.specularColor, material.specularF90, material.iridescence, material.iridescenceF0Dielectric, singleScatteringDielectric, multiScatteringDielectric );
		computeMultiscatteringIridescence( material.dfg, material.diffuseColor, material.specularF90, material.iridescence, material.iridescenceF0Metallic, singleScatteringMetallic, multiScatteringMetallic );
	#else
		computeMultiscattering( material.dfg, material.specularColor, material.specularF90, singleScatteringDielectric, multiScatteringDielectric );
		computeMultiscattering( material.dfg, material.diffuseColor, material.specularF90, singleScatteringMetallic, multiScatteringMetallic );
	#endif
	vec3 singleScattering = mix( singleScatteringDielectric, singleScatteringMetallic, material.metalness );
	vec3 multiScattering = mix( multiScatteringDielectric, multiScatteringMetallic, material.metalness );
	vec3 totalScatteringDielectric = singleScatteringDielectric + multiScatteringDielectric;
	#ifdef USE_DIFFUSE_ROUGHNESS
		float dotNV = saturate( dot( geometryNormal, geometryViewDir ) );
		vec3 diffuse = EON_DirectionalAlbedo( material.diffuseColor, material.diffuseRoughness, dotNV ) * ( 1.0 - material.metalness ) * ( 1.0 - totalScatteringDielectric );
	#else
		vec3 diffuse = material.diffuseContribution * ( 1.0 - totalScatteringDielectric );
	#endif
	vec3 cosineWeightedIrradiance = irradiance * RECIPROCAL_PI;
	vec3 indirectSpecular = radiance * singleScattering;
	indirectSpecular += multiScattering * cosineWeightedIrradiance;
	vec3 indirectDiffuse = diffuse * cosineWeightedIrradiance;
	#ifdef USE_SHEEN
		float sheenAlbedo = IBLSheenBRDF( geometryNormal, geometryViewDir, material.sheenRoughness );
		float sheenEnergyComp = 1.0 - max3( material.sheenColor ) * sheenAlbedo;
		indirectSpecular *= sheenEnergyComp;
		indirectDiffuse *= sheenEnergyComp;
	#endif
	reflectedLight.indirectSpecular += indirectSpecular;
	reflectedLight.indirectDiffuse += indirectDiffuse;
}
#define RE_Direct				RE_Direct_Physical
#define RE_Direct_RectArea		RE_Direct_RectArea_Physical
#define RE_IndirectDiffuse		RE_IndirectDiffuse_Physical
#define RE_IndirectSpecular		RE_IndirectSpecular_Physical
float computeSpecularOcclusion( const in float dotNV, const in float ambientOcclusion, const in float roughness ) {
	return saturate( pow( dotNV + ambientOcclusion, exp2( - 16.0 * roughness - 1.0 ) ) - 1.0 + ambientOcclusion );
}`,cg=`
vec3 geometryPosition = - vViewPosition;
vec3 geometryNormal = normal;
vec3 geometryViewDir = ( isOrthographic ) ? vec3( 0, 0, 1 ) : normalize( vViewPosition );
vec3 geometryClearcoatNormal = vec3( 0.0 );
#ifdef USE_CLEARCOAT
	geometryClearcoatNormal = clearcoatNormal;
#endif
#ifdef USE_IRIDESCENCE
	float dotNVi = saturate( dot( normal, geometryViewDir ) );
	if ( material.iridescenceThickness == 0.0 ) {
		material.iridescence = 0.0;
	} else {
		material.iridescence = saturate( material.iridescence );
	}
	if ( material.iridescence > 0.0 ) {
		vec3 iridescenceFresnelDielectric = evalIridescence( 1.0, material.iridescenceIOR, dotNVi, material.iridescenceThickness, material.specularColor );
		vec3 iridescenceFresnelMetallic = evalIridescence( 1.0, material.iridescenceIOR, dotNVi, material.iridescenceThickness, material.diffuseColor );
		material.iridescenceFresnel = mix( iridescenceFresnelDielectric, iridescenceFresnelMetallic, material.metalness );
		material.iridescenceF0Dielectric = Schlick_to_F0( iridescenceFresnelDielectric, 1.0, dotNVi );
		material.iridescenceF0Metallic = Schlick_to_F0( iridescenceFresnelMetallic, 1.0, dotNVi );
	}
#endif
#ifdef STANDARD
	float dotNVms = saturate( dot( geometryNormal, geometryViewDir ) );
	material.dfg = texture2D( dfgLUT, vec2( material.roughness, dotNVms ) ).rg;
	#if ( NUM_SUN_LIGHTS > 0 || NUM_DIR_LIGHTS > 0 || NUM_POINT_LIGHTS > 0 || NUM_SPOT_LIGHTS > 0 )
		float EssMs = material.dfg.x + material.dfg.y;
		material.multiScatteringCompensation = 1.0 + material.specularColorBlended * ( 1.0 / EssMs - 1.0 );
	#endif
#endif
IncidentLight directLight;
#if ( NUM_POINT_LIGHTS > 0 ) && defined( RE_Direct )
	PointLight pointLight;
	#if defined( USE_SHADOWMAP ) && NUM_POINT_LIGHT_SHADOWS > 0
	PointLightShadow pointLightShadow;
	#endif
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_POINT_LIGHTS; i ++ ) {
		pointLight = pointLights[ i ];
		getPointLightInfo( pointLight, geometryPosition, directLight );
		#if defined( USE_SHADOWMAP ) && ( UNROLLED_LOOP_INDEX < NUM_POINT_LIGHT_SHADOWS ) && ( defined( SHADOWMAP_TYPE_PCF ) || defined( SHADOWMAP_TYPE_BASIC ) )
		pointLightShadow = pointLightShadows[ i ];
		directLight.color *= ( directLight.visible && receiveShadow ) ? getPointShadow( pointShadowMap[ i ], pointLightShadow.shadowMapSize, pointLightShadow.shadowIntensity, pointLightShadow.shadowBias, pointLightShadow.shadowRadius, vPointShadowCoord[ i ], pointLightShadow.shadowCameraNear, pointLightShadow.shadowCameraFar ) : 1.0;
		#endif
		RE_Direct( directLight, geometryPosition, geometryNormal, geometryViewDir, geometryClearcoatNormal, material, reflectedLight );
	}
	#pragma unroll_loop_end
#endif
#if ( NUM_SPOT_LIGHTS > 0 ) && defined( RE_Direct )
	SpotLight spotLight;
	vec4 spotColor;
	vec3 spotLightCoord;
	bool inSpotLightMap;
	#if defined( USE_SHADOWMAP ) && NUM_SPOT_LIGHT_SHADOWS > 0
	SpotLightShadow spotLightShadow;
	#endif
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_SPOT_LIGHTS; i ++ ) {
		spotLight = spotLights[ i ];
		getSpotLightInfo( spotLight, geometryPosition, directLight );
		#if ( UNROLLED_LOOP_INDEX < NUM_SPOT_LIGHT_SHADOWS_WITH_MAPS )
		#define SPOT_LIGHT_MAP_INDEX UNROLLED_LOOP_INDEX
		#elif ( UNROLLED_LOOP_INDEX < NUM_SPOT_LIGHT_SHADOWS )
		#define SPOT_LIGHT_MAP_INDEX NUM_SPOT_LIGHT_MAPS
		#else
		#define SPOT_LIGHT_MAP_INDEX ( UNROLLED_LOOP_INDEX - NUM_SPOT_LIGHT_SHADOWS + NUM_SPOT_LIGHT_SHADOWS_WITH_MAPS )
		#endif
		#if ( SPOT_LIGHT_MAP_INDEX < NUM_SPOT_LIGHT_MAPS )
			spotLightCoord = vSpotLightCoord[ i ].xyz / vSpotLightCoord[ i ].w;
			inSpotLightMap = all( lessThan( abs( spotLightCoord * 2. - 1. ), vec3( 1.0 ) ) );
			spotColor = texture2D( spotLightMap[ SPOT_LIGHT_MAP_INDEX ], spotLightCoord.xy );
			directLight.color = inSpotLightMap ? directLight.color * spotColor.rgb : directLight.color;
		#endif
		#undef SPOT_LIGHT_MAP_INDEX
		#if defined( USE_SHADOWMAP ) && ( UNROLLED_LOOP_INDEX < NUM_SPOT_LIGHT_SHADOWS )
		spotLightShadow = spotLightShadows[ i ];
		directLight.color *= ( directLight.visible && receiveShadow ) ? getShadow( spotShadowMap[ i ], spotLightShadow.shadowMapSize, spotLightShadow.shadowIntensity, spotLightShadow.shadowBias, spotLightShadow.shadowRadius, vSpotLightCoord[ i ] ) : 1.0;
		#endif
		RE_Direct( directLight, geometryPosition, geometryNormal, geometryViewDir, geometryClearcoatNormal, material, reflectedLight );
	}
	#pragma unroll_loop_end
#endif
#if ( NUM_SUN_LIGHTS > 0 ) && defined( RE_Direct )
	SunLight sunLight;
	#if defined( USE_SHADOWMAP ) && NUM_SUN_LIGHT_SHADOWS > 0
	SunLightShadow sunLightShadow;
	#endif
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_SUN_LIGHTS; i ++ ) {
		sunLight = sunLights[ i ];
		getSunLightInfo( sunLight, directLight );
		#if defined( USE_SHADOWMAP ) && ( UNROLLED_LOOP_INDEX < NUM_SUN_LIGHT_SHADOWS )
		sunLightShadow = sunLightShadows[ i ];
		directLight.color *= ( directLight.visible && receiveShadow ) ? getSunShadow( sunShadowMap[ i ], sunLightShadow, UNROLLED_LOOP_INDEX ) : 1.0;
		#endif
		RE_Direct( directLight, geometryPosition, geometryNormal, geometryViewDir, geometryClearcoatNormal, material, reflectedLight );
	}
	#pragma unroll_loop_end
#endif
#if ( NUM_DIR_LIGHTS > 0 ) && defined( RE_Direct )
	DirectionalLight directionalLight;
	#if defined( USE_SHADOWMAP ) && NUM_DIR_LIGHT_SHADOWS > 0
	DirectionalLightShadow directionalLightShadow;
	#endif
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_DIR_LIGHTS; i ++ ) {
		directionalLight = directionalLights[ i ];
		getDirectionalLightInfo( directionalLight, directLight );
		#if defined( USE_SHADOWMAP ) && ( UNROLLED_LOOP_INDEX < NUM_DIR_LIGHT_SHADOWS )
		directionalLightShadow = directionalLightShadows[ i ];
		directLight.color *= ( directLight.visible && receiveShadow ) ? getShadow( directionalShadowMap[ i ], directionalLightShadow.shadowMapSize, directionalLightShadow.shadowIntensity, directionalLightShadow.shadowBias, directionalLightShadow.shadowRadius, vDirectionalShadowCoord[ i ] ) : 1.0;
		#endif
		RE_Direct( directLight, geometryPosition, geometryNormal, geometryViewDir, geometryClearcoatNormal, material, reflectedLight );
	}
	#pragma unroll_loop_end
#endif
#if ( NUM_RECT_AREA_LIGHTS > 0 ) && defined( RE_Direct_RectArea )
	RectAreaLight rectAreaLight;
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_RECT_AREA_LIGHTS; i ++ ) {
		rectAreaLight = rectAreaLights[ i ];
		RE_Direct_RectArea( rectAreaLight, geometryPosition, geometryNormal, geometryViewDir, geometryClearcoatNormal, material, reflectedLight );
	}
	#pragma unroll_loop_end
#endif
#if defined( RE_IndirectDiffuse )
	vec3 iblIrradiance = vec3( 0.0 );
	vec3 irradiance = getAmbientLightIrradiance( ambientLightColor );
	#if defined( USE_LIGHT_PROBES )
		irradiance += getLightProbeIrradiance( lightProbe, geometryNormal );
	#endif
	#if ( NUM_HEMI_LIGHTS > 0 )
		#pragma unroll_loop_start
		for ( int i = 0; i < NUM_HEMI_LIGHTS; i ++ ) {
			irradiance += getHemisphereLightIrradiance( hemisphereLights[ i ], geometryNormal );
		}
		#pragma unroll_loop_end
	#endif
	#if NUM_LIGHT_PROBE_GRIDS > 0
		vec3 probeWorldPos = ( ( vec4( geometryPosition, 1.0 ) - viewMatrix[ 3 ] ) * viewMatrix ).xyz;
		vec3 probeWorldNormal = transformNormalByInverseViewMatrix( geometryNormal, viewMatrix );
		int probeGrid = - 1;
		#pragma unroll_loop_start
		for ( int i = 0; i < NUM_LIGHT_PROBE_GRIDS; i ++ ) {
			if ( isInsideLightProbeGrid( probeWorldPos, probeWorldNormal, probesMin[ i ], probesMax[ i ], probesResolution[ i ] ) ) probeGrid = UNROLLED_LOOP_INDEX;
		}
		#pragma unroll_loop_end
		#pragma unroll_loop_start
		for ( int i = 0; i < NUM_LIGHT_PROBE_GRIDS; i ++ ) {
			if ( probeGrid == UNROLLED_LOOP_INDEX ) irradiance += getLightProbeGridIrradiance( probesSH[ i ], probesMin[ i ], probesMax[ i ], probesResolution[ i ], probeWorldPos, probeWorldNormal );
		}
		#pragma unroll_loop_end
	#endif
#endif
#if defined( RE_IndirectSpecular )
	vec3 radiance = vec3( 0.0 );
	vec3 clearcoatRadiance = vec3( 0.0 );
#endif`,hg=`#if defined( RE_IndirectDiffuse )
	#ifdef USE_LIGHTMAP
		vec4 lightMapTexel = texture2D( lightMap, vLightMapUv );
		vec3 lightMapIrradiance = lightMapTexel.rgb * lightMapIntensity;
		irradiance += lightMapIrradiance;
	#endif
	#if defined( USE_ENVMAP ) && defined( ENVMAP_TYPE_PMREM )
		#if defined( STANDARD ) || defined( LAMBERT ) || defined( PHONG )
			iblIrradiance += getIBLIrradiance( geometryNormal );
		#endif
	#endif
#endif
#if defined( USE_ENVMAP ) && defined( RE_IndirectSpecular )
	#ifdef USE_ANISOTROPY
		vec3 iblRadiance = getIBLAnisotropyRadiance( geometryViewDir, geometryNormal, material.roughness, material.anisotropyB, material.anisotropy );
	#else
		vec3 iblRadiance = getIBLRadiance( geometryViewDir, geometryNormal, material.roughness );
	#endif
	#ifdef USE_RETROREFLECTION
		#ifdef USE_ANISOTROPY
			vec3 retroIBLRadiance = getIBLAnisotropyRetroRadiance( geometryViewDir, geometryNormal, material.roughness, material.anisotropyB, material.anisotropy );
		#else
			vec3 retroIBLRadiance = getIBLRetroRadiance( geometryViewDir, geometryNormal, material.roughness );
		#endif
		iblRadiance = mix( iblRadiance, retroIBLRadiance, saturate( material.retroreflectivity ) );
	#endif
	radiance += iblRadiance;
	#ifdef USE_CLEARCOAT
		clearcoatRadiance += getIBLRadiance( geometryViewDir, geometryClearcoatNormal, material.clearcoatRoughness );
	#endif
#endif`,ug=`#if defined( RE_IndirectDiffuse )
	#if defined( LAMBERT ) || defined( PHONG )
		irradiance += iblIrradiance;
	#endif
	RE_IndirectDiffuse( irradiance, geometryPosition, geometryNormal, geometryViewDir, geometryClearcoatNormal, material, reflectedLight );
#endif
#if defined( RE_IndirectSpecular )
	RE_IndirectSpecular( radiance, iblIrradiance, clearcoatRadiance, geometryPosition, geometryNormal, geometryViewDir, geometryClearcoatNormal, material, reflectedLight );
#endif`,dg=`#if NUM_LIGHT_PROBE_GRIDS > 0
uniform highp sampler3D probesSH[ NUM_LIGHT_PROBE_GRIDS ];
uniform vec3 probesMin[ NUM_LIGHT_PROBE_GRIDS ];
uniform vec3 probesMax[ NUM_LIGHT_PROBE_GRIDS ];
uniform vec3 probesResolution[ NUM_LIGHT_PROBE_GRIDS ];
bool isInsideLightProbeGrid( vec3 worldPos, vec3 worldNormal, vec3 probesMin, vec3 probesMax, vec3 probesResolution ) {
	vec3 spacing = ( probesMax - probesMin ) / probesResolution;
	vec3 samplePos = worldPos + worldNormal * spacing * 0.5;
	vec3 margin = spacing * 0.01;
	return all( greaterThanEqual( samplePos, probesMin - margin ) ) && all( lessThanEqual( samplePos, probesMax + margin ) );
}
vec3 getLightProbeGridIrradiance( highp sampler3D probesSH, vec3 probesMin, vec3 probesMax, vec3 probesResolution, vec3 worldPos, vec3 worldNormal ) {
	vec3 res = probesResolution;
	vec3 gridRange = probesMax - probesMin;
	vec3 probeSpacing = gridRange / res;
	vec3 samplePos = worldPos + worldNormal * probeSpacing * 0.5;
	vec3 uvw = clamp( ( samplePos - probesMin ) / gridRange, 0.5 / res, 1.0 - 0.5 / res );
	float nz          = res.z;
	float paddedSlices = nz + 2.0;
	float atlasDepth  = 7.0 * paddedSlices;
	float uvZBase     = uvw.z * nz + 1.0;
	vec4 s0 = texture( probesSH, vec3( uvw.xy, ( uvZBase                       ) / atlasDepth ) );
	vec4 s1 = texture( probesSH, vec3( uvw.xy, ( uvZBase +       paddedSlices   ) / atlasDepth ) );
	vec4 s2 = texture( probesSH, vec3( uvw.xy, ( uvZBase + 2.0 * paddedSlices   ) / atlasDepth ) );
	vec4 s3 = texture( probesSH, vec3( uvw.xy, ( uvZBase + 3.0 * paddedSlices   ) / atlasDepth ) );
	vec4 s4 = texture( probesSH, vec3( uvw.xy, ( uvZBase + 4.0 * paddedSlices   ) / atlasDepth ) );
	vec4 s5 = texture( probesSH, vec3( uvw.xy, ( uvZBase + 5.0 * paddedSlices   ) / atlasDepth ) );
	vec4 s6 = texture( probesSH, vec3( uvw.xy, ( uvZBase + 6.0 * paddedSlices   ) / atlasDepth ) );
	vec3 c0 = s0.xyz;
	vec3 c1 = vec3( s0.w, s1.xy );
	vec3 c2 = vec3( s1.zw, s2.x );
	vec3 c3 = s2.yzw;
	vec3 c4 = s3.xyz;
	vec3 c5 = vec3( s3.w, s4.xy );
	vec3 c6 = vec3( s4.zw, s5.x );
	vec3 c7 = s5.yzw;
	vec3 c8 = s6.xyz;
	float x = worldNormal.x, y = worldNormal.y, z = worldNormal.z;
	vec3 result = c0 * 0.886227;
	result += c1 * 2.0 * 0.511664 * y;
	result += c2 * 2.0 * 0.511664 * z;
	result += c3 * 2.0 * 0.511664 * x;
	result += c4 * 2.0 * 0.429043 * x * y;
	result += c5 * 2.0 * 0.429043 * y * z;
	result += c6 * ( 0.743125 * z * z - 0.247708 );
	result += c7 * 2.0 * 0.429043 * x * z;
	result += c8 * 0.429043 * ( x * x - y * y );
	return max( result, vec3( 0.0 ) );
}
#endif`,fg=`#if defined( USE_LOGARITHMIC_DEPTH_BUFFER )
	gl_FragDepth = vIsPerspective == 0.0 ? gl_FragCoord.z : log2( vFragDepth ) * logDepthBufFC * 0.5;
#endif`,pg=`#if defined( USE_LOGARITHMIC_DEPTH_BUFFER )
	uniform float logDepthBufFC;
	varying float vFragDepth;
	varying float vIsPerspective;
#endif`,mg=`#ifdef USE_LOGARITHMIC_DEPTH_BUFFER
	varying float vFragDepth;
	varying float vIsPerspective;
#endif`,gg=`#ifdef USE_LOGARITHMIC_DEPTH_BUFFER
	vFragDepth = 1.0 + gl_Position.w;
	vIsPerspective = float( isPerspectiveMatrix( projectionMatrix ) );
#endif`,_g=`#ifdef USE_MAP
	vec4 sampledDiffuseColor = texture2D( map, vMapUv );
	#ifdef DECODE_VIDEO_TEXTURE
		sampledDiffuseColor = sRGBTransferEOTF( sampledDiffuseColor );
	#endif
	diffuseColor *= sampledDiffuseColor;
#endif`,vg=`#ifdef USE_MAP
	uniform sampler2D map;
#endif`,xg=`#if defined( USE_MAP ) || defined( USE_ALPHAMAP )
	#if defined( USE_POINTS_UV )
		vec2 uv = vUv;
	#else
		vec2 uv = ( uvTransform * vec3( gl_PointCoord.x, 1.0 - gl_PointCoord.y, 1 ) ).xy;
	#endif
#endif
#ifdef USE_MAP
	diffuseColor *= texture2D( map, uv );
#endif
#ifdef USE_ALPHAMAP
	diffuseColor.a *= texture2D( alphaMap, uv ).g;
#endif`,yg=`#if defined( USE_POINTS_UV )
	varying vec2 vUv;
#else
	#if defined( USE_MAP ) || defined( USE_ALPHAMAP )
		uniform mat3 uvTransform;
	#endif
#endif
#ifdef USE_MAP
	uniform sampler2D map;
#endif
#ifdef USE_ALPHAMAP
	uniform sampler2D alphaMap;
#endif`,bg=`float metalnessFactor = metalness;
#ifdef USE_METALNESSMAP
	vec4 texelMetalness = texture2D( metalnessMap, vMetalnessMapUv );
	metalnessFactor *= texelMetalness.b;
#endif`,Mg=`#ifdef USE_METALNESSMAP
	uniform sampler2D metalnessMap;
#endif`,Sg=`#ifdef USE_INSTANCING_MORPH
	float morphTargetInfluences[ MORPHTARGETS_COUNT ];
	float morphTargetBaseInfluence = texelFetch( morphTexture, ivec2( 0, gl_InstanceID ), 0 ).r;
	for ( int i = 0; i < MORPHTARGETS_COUNT; i ++ ) {
		morphTargetInfluences[i] =  texelFetch( morphTexture, ivec2( i + 1, gl_InstanceID ), 0 ).r;
	}
#endif`,wg=`#if defined( USE_MORPHCOLORS )
	#if defined( USE_COLOR_ALPHA )
		vColor *= morphTargetBaseInfluence;
	#elif defined( USE_COLOR )
		vColor.rgb *= morphTargetBaseInfluence;
	#endif
	for ( int i = 0; i < MORPHTARGETS_COUNT; i ++ ) {
		#if defined( USE_COLOR_ALPHA )
			if ( morphTargetInfluences[ i ] != 0.0 ) vColor += getMorph( gl_VertexID, i, 2 ) * morphTargetInfluences[ i ];
		#elif defined( USE_COLOR )
			if ( morphTargetInfluences[ i ] != 0.0 ) vColor.rgb += getMorph( gl_VertexID, i, 2 ).rgb * morphTargetInfluences[ i ];
		#endif
	}
#endif`,Tg=`#ifdef USE_MORPHNORMALS
	objectNormal *= morphTargetBaseInfluence;
	for ( int i = 0; i < MORPHTARGETS_COUNT; i ++ ) {
		if ( morphTargetInfluences[ i ] != 0.0 ) objectNormal += getMorph( gl_VertexID, i, 1 ).xyz * morphTargetInfluences[ i ];
	}
#endif`,Eg=`#ifdef USE_MORPHTARGETS
	#ifndef USE_INSTANCING_MORPH
		uniform float morphTargetBaseInfluence;
		uniform float morphTargetInfluences[ MORPHTARGETS_COUNT ];
	#endif
	uniform sampler2DArray morphTargetsTexture;
	uniform ivec2 morphTargetsTextureSize;
	vec4 getMorph( const in int vertexIndex, const in int morphTargetIndex, const in int offset ) {
		int texelIndex = vertexIndex * MORPHTARGETS_TEXTURE_STRIDE + offset;
		int y = texelIndex / morphTargetsTextureSize.x;
		int x = texelIndex - y * morphTargetsTextureSize.x;
		ivec3 morphUV = ivec3( x, y, morphTargetIndex );
		return texelFetch( morphTargetsTexture, morphUV, 0 );
	}
#endif`,Ag=`#ifdef USE_MORPHTARGETS
	transformed *= morphTargetBaseInfluence;
	for ( int i = 0; i < MORPHTARGETS_COUNT; i ++ ) {
		if ( morphTargetInfluences[ i ] != 0.0 ) transformed += getMorph( gl_VertexID, i, 0 ).xyz * morphTargetInfluences[ i ];
	}
#endif`,Rg=`float faceDirection = gl_FrontFacing ? 1.0 : - 1.0;
#ifdef FLAT_SHADED
	vec3 fdx = dFdx( vViewPosition );
	vec3 fdy = dFdy( vViewPosition );
	vec3 normal = normalize( cross( fdx, fdy ) );
#else
	vec3 normal = normalize( vNormal );
	#ifdef DOUBLE_SIDED
		normal *= faceDirection;
	#endif
#endif
#if defined( USE_NORMALMAP_TANGENTSPACE ) || defined( USE_CLEARCOAT_NORMALMAP ) || defined( USE_ANISOTROPY )
	#ifdef USE_TANGENT
		mat3 tbn = mat3( normalize( vTangent ), normalize( vBitangent ), normal );
	#else
		mat3 tbn = getTangentFrame( - vViewPosition, normal,
		#if defined( USE_NORMALMAP )
			vNormalMapUv
		#elif defined( USE_CLEARCOAT_NORMALMAP )
			vClearcoatNormalMapUv
		#else
			vUv
		#endif
		);
	#endif
	#ifdef DOUBLE_SIDED
		tbn[0] *= faceDirection;
		tbn[1] *= faceDirection;
	#endif
#endif
#ifdef USE_CLEARCOAT_NORMALMAP
	#ifdef USE_TANGENT
		mat3 tbn2 = mat3( normalize( vTangent ), normalize( vBitangent ), normal );
	#else
		mat3 tbn2 = getTangentFrame( - vViewPosition, normal, vClearcoatNormalMapUv );
	#endif
	#ifdef DOUBLE_SIDED
		tbn2[0] *= faceDirection;
		tbn2[1] *= faceDirection;
	#endif
#endif
vec3 nonPerturbedNormal = normal;`,Cg=`#ifdef USE_NORMALMAP_OBJECTSPACE
	normal = texture2D( normalMap, vNormalMapUv ).xyz * 2.0 - 1.0;
	#ifdef FLIP_SIDED
		normal = - normal;
	#endif
	#ifdef DOUBLE_SIDED
		normal = normal * faceDirection;
	#endif
	normal = normalize( normalMatrix * normal );
#elif defined( USE_NORMALMAP_TANGENTSPACE )
	vec3 mapN = texture2D( normalMap, vNormalMapUv ).xyz * 2.0 - 1.0;
	#if defined( USE_PACKED_NORMALMAP )
		mapN = vec3( mapN.xy, sqrt( saturate( 1.0 - dot( mapN.xy, mapN.xy ) ) ) );
	#endif
	mapN.xy *= normalScale;
	normal = normalize( tbn * mapN );
#elif defined( USE_BUMPMAP )
	normal = perturbNormalArb( - vViewPosition, normal, dHdxy_fwd(), faceDirection );
#endif`,Pg=`#ifndef FLAT_SHADED
	varying vec3 vNormal;
	#ifdef USE_TANGENT
		varying vec3 vTangent;
		varying vec3 vBitangent;
	#endif
#endif`,Ig=`#ifndef FLAT_SHADED
	varying vec3 vNormal;
	#ifdef USE_TANGENT
		varying vec3 vTangent;
		varying vec3 vBitangent;
	#endif
#endif`,Lg=`#ifndef FLAT_SHADED
	vNormal = normalize( transformedNormal );
	#ifdef USE_TANGENT
		vTangent = normalize( transformedTangent );
		vBitangent = normalize( cross( vNormal, vTangent ) * tangent.w );
		#ifdef FLIP_SIDED
			vBitangent = - vBitangent;
		#endif
	#endif
#endif`,Ng=`#ifdef USE_NORMALMAP
	uniform sampler2D normalMap;
	uniform vec2 normalScale;
#endif
#ifdef USE_NORMALMAP_OBJECTSPACE
	uniform mat3 normalMatrix;
#endif
#if ! defined ( USE_TANGENT ) && ( defined ( USE_NORMALMAP_TANGENTSPACE ) || defined ( USE_CLEARCOAT_NORMALMAP ) || defined( USE_ANISOTROPY ) )
	mat3 getTangentFrame( vec3 eye_pos, vec3 surf_norm, vec2 uv ) {
		vec3 q0 = dFdx( eye_pos.xyz );
		vec3 q1 = dFdy( eye_pos.xyz );
		vec2 st0 = dFdx( uv.st );
		vec2 st1 = dFdy( uv.st );
		vec3 N = surf_norm;
		vec3 q1perp = cross( q1, N );
		vec3 q0perp = cross( N, q0 );
		vec3 T = q1perp * st0.x + q0perp * st1.x;
		vec3 B = q1perp * st0.y + q0perp * st1.y;
		float det = max( dot( T, T ), dot( B, B ) );
		float scale = ( det == 0.0 ) ? 0.0 : inversesqrt( det );
		return mat3( T * scale, B * scale, N );
	}
#endif`,Dg=`#ifdef USE_CLEARCOAT
	vec3 clearcoatNormal = nonPerturbedNormal;
#endif`,Ug=`#ifdef USE_CLEARCOAT_NORMALMAP
	vec3 clearcoatMapN = texture2D( clearcoatNormalMap, vClearcoatNormalMapUv ).xyz * 2.0 - 1.0;
	clearcoatMapN.xy *= clearcoatNormalScale;
	clearcoatNormal = normalize( tbn2 * clearcoatMapN );
#endif`,Fg=`#ifdef USE_CLEARCOATMAP
	uniform sampler2D clearcoatMap;
#endif
#ifdef USE_CLEARCOAT_NORMALMAP
	uniform sampler2D clearcoatNormalMap;
	uniform vec2 clearcoatNormalScale;
#endif
#ifdef USE_CLEARCOAT_ROUGHNESSMAP
	uniform sampler2D clearcoatRoughnessMap;
#endif`,Og=`#ifdef USE_IRIDESCENCEMAP
	uniform sampler2D iridescenceMap;
#endif
#ifdef USE_IRIDESCENCE_THICKNESSMAP
	uniform sampler2D iridescenceThicknessMap;
#endif`,kg=`#ifdef OPAQUE
diffuseColor.a = 1.0;
#endif
#ifdef USE_TRANSMISSION
diffuseColor.a *= material.transmissionAlpha;
#endif
gl_FragColor = vec4( outgoingLight, diffuseColor.a );`,Bg=`vec3 packNormalToRGB( const in vec3 normal ) {
	return normalize( normal ) * 0.5 + 0.5;
}
vec3 unpackRGBToNormal( const in vec3 rgb ) {
	return 2.0 * rgb.xyz - 1.0;
}
const float PackUpscale = 256. / 255.;const float UnpackDownscale = 255. / 256.;const float ShiftRight8 = 1. / 256.;
const float Inv255 = 1. / 255.;
const vec4 PackFactors = vec4( 1.0, 256.0, 256.0 * 256.0, 256.0 * 256.0 * 256.0 );
const vec2 UnpackFactors2 = vec2( UnpackDownscale, 1.0 / PackFactors.g );
const vec3 UnpackFactors3 = vec3( UnpackDownscale / PackFactors.rg, 1.0 / PackFactors.b );
const vec4 UnpackFactors4 = vec4( UnpackDownscale / PackFactors.rgb, 1.0 / PackFactors.a );
vec4 packDepthToRGBA( const in float v ) {
	if( v <= 0.0 )
		return vec4( 0., 0., 0., 0. );
	if( v >= 1.0 )
		return vec4( 1., 1., 1., 1. );
	float vuf;
	float af = modf( v * PackFactors.a, vuf );
	float bf = modf( vuf * ShiftRight8, vuf );
	float gf = modf( vuf * ShiftRight8, vuf );
	return vec4( vuf * Inv255, gf * PackUpscale, bf * PackUpscale, af );
}
vec3 packDepthToRGB( const in float v ) {
	if( v <= 0.0 )
		return vec3( 0., 0., 0. );
	if( v >= 1.0 )
		return vec3( 1., 1., 1. );
	float vuf;
	float bf = modf( v * PackFactors.b, vuf );
	float gf = modf( vuf * ShiftRight8, vuf );
	return vec3( vuf * Inv255, gf * PackUpscale, bf );
}
vec2 packDepthToRG( const in float v ) {
	if( v <= 0.0 )
		return vec2( 0., 0. );
	if( v >= 1.0 )
		return vec2( 1., 1. );
	float vuf;
	float gf = modf( v * 256., vuf );
	return vec2( vuf * Inv255, gf );
}
float unpackRGBAToDepth( const in vec4 v ) {
	return dot( v, UnpackFactors4 );
}
float unpackRGBToDepth( const in vec3 v ) {
	return dot( v, UnpackFactors3 );
}
float unpackRGToDepth( const in vec2 v ) {
	return v.r * UnpackFactors2.r + v.g * UnpackFactors2.g;
}
vec4 pack2HalfToRGBA( const in vec2 v ) {
	vec4 r = vec4( v.x, fract( v.x * 255.0 ), v.y, fract( v.y * 255.0 ) );
	return vec4( r.x - r.y / 255.0, r.y, r.z - r.w / 255.0, r.w );
}
vec2 unpackRGBATo2Half( const in vec4 v ) {
	return vec2( v.x + ( v.y / 255.0 ), v.z + ( v.w / 255.0 ) );
}
float viewZToOrthographicDepth( const in float viewZ, const in float near, const in float far ) {
	return ( viewZ + near ) / ( near - far );
}
float orthographicDepthToViewZ( const in float depth, const in float near, const in float far ) {
	#ifdef USE_REVERSED_DEPTH_BUFFER
	
		return depth * ( far - near ) - far;
	#else
		return depth * ( near - far ) - near;
	#endif
}
float viewZToPerspectiveDepth( const in float viewZ, const in float near, const in float far ) {
	return ( ( near + viewZ ) * far ) / ( ( far - near ) * viewZ );
}
float perspectiveDepthToViewZ( const in float depth, const in float near, const in float far ) {
	
	#ifdef USE_REVERSED_DEPTH_BUFFER
		return ( near * far ) / ( ( near - far ) * depth - near );
	#else
		return ( near * far ) / ( ( far - near ) * depth - far );
	#endif
}`,zg=`#ifdef PREMULTIPLIED_ALPHA
	gl_FragColor.rgb *= gl_FragColor.a;
#endif`,Gg=`vec4 mvPosition = vec4( transformed, 1.0 );
#ifdef USE_BATCHING
	mvPosition = batchingMatrix * mvPosition;
#endif
#ifdef USE_INSTANCING
	mvPosition = instanceMatrix * mvPosition;
#endif
mvPosition = modelViewMatrix * mvPosition;
gl_Position = projectionMatrix * mvPosition;`,Vg=`#ifdef DITHERING
	gl_FragColor.rgb = dithering( gl_FragColor.rgb );
#endif`,Hg=`#ifdef DITHERING
	vec3 dithering( vec3 color ) {
		float grid_position = rand( gl_FragCoord.xy );
		vec3 dither_shift_RGB = vec3( 0.25 / 255.0, -0.25 / 255.0, 0.25 / 255.0 );
		dither_shift_RGB = mix( 2.0 * dither_shift_RGB, -2.0 * dither_shift_RGB, grid_position );
		return color + dither_shift_RGB;
	}
#endif`,Wg=`float roughnessFactor = roughness;
#ifdef USE_ROUGHNESSMAP
	vec4 texelRoughness = texture2D( roughnessMap, vRoughnessMapUv );
	roughnessFactor *= texelRoughness.g;
#endif`,$g=`#ifdef USE_ROUGHNESSMAP
	uniform sampler2D roughnessMap;
#endif`,Xg=`#if NUM_SPOT_LIGHT_COORDS > 0
	varying vec4 vSpotLightCoord[ NUM_SPOT_LIGHT_COORDS ];
#endif
#if NUM_SPOT_LIGHT_MAPS > 0
	uniform sampler2D spotLightMap[ NUM_SPOT_LIGHT_MAPS ];
#endif
#ifdef USE_SHADOWMAP
	#if NUM_SUN_LIGHT_SHADOWS > 0
		#define SUN_LIGHT_CASCADES 2
		#if defined( SHADOWMAP_TYPE_PCF )
			uniform sampler2DShadow sunShadowMap[ NUM_SUN_LIGHT_SHADOWS ];
		#else
			uniform sampler2D sunShadowMap[ NUM_SUN_LIGHT_SHADOWS ];
		#endif
		uniform mat4 sunShadowMatrix[ NUM_SUN_LIGHT_SHADOWS * SUN_LIGHT_CASCADES ];
		uniform vec4 sunShadowCascade[ NUM_SUN_LIGHT_SHADOWS * SUN_LIGHT_CASCADES ];
		varying vec4 vSunShadowWorldPosition;
		varying vec3 vSunShadowWorldNormal;
		struct SunLightShadow {
			float shadowIntensity;
			float shadowBias;
			float shadowNormalBias;
			float shadowRadius;
			vec2 shadowMapSize;
		};
		uniform SunLightShadow sunLightShadows[ NUM_SUN_LIGHT_SHADOWS ];
	#endif
	#if NUM_DIR_LIGHT_SHADOWS > 0
		#if defined( SHADOWMAP_TYPE_PCF )
			uniform sampler2DShadow directionalShadowMap[ NUM_DIR_LIGHT_SHADOWS ];
		#else
			uniform sampler2D directionalShadowMap[ NUM_DIR_LIGHT_SHADOWS ];
		#endif
		varying vec4 vDirectionalShadowCoord[ NUM_DIR_LIGHT_SHADOWS ];
		struct DirectionalLightShadow {
			float shadowIntensity;
			float shadowBias;
			float shadowNormalBias;
			float shadowRadius;
			vec2 shadowMapSize;
		};
		uniform DirectionalLightShadow directionalLightShadows[ NUM_DIR_LIGHT_SHADOWS ];
	#endif
	#if NUM_SPOT_LIGHT_SHADOWS > 0
		#if defined( SHADOWMAP_TYPE_PCF )
			uniform sampler2DShadow spotShadowMap[ NUM_SPOT_LIGHT_SHADOWS ];
		#else
			uniform sampler2D spotShadowMap[ NUM_SPOT_LIGHT_SHADOWS ];
		#endif
		struct SpotLightShadow {
			float shadowIntensity;
			float shadowBias;
			float shadowNormalBias;
			float shadowRadius;
			vec2 shadowMapSize;
		};
		uniform SpotLightShadow spotLightShadows[ NUM_SPOT_LIGHT_SHADOWS ];
	#endif
	#if NUM_POINT_LIGHT_SHADOWS > 0
		#if defined( SHADOWMAP_TYPE_PCF )
			uniform samplerCubeShadow pointShadowMap[ NUM_POINT_LIGHT_SHADOWS ];
		#elif defined( SHADOWMAP_TYPE_BASIC )
			uniform samplerCube pointShadowMap[ NUM_POINT_LIGHT_SHADOWS ];
		#endif
		varying vec4 vPointShadowCoord[ NUM_POINT_LIGHT_SHADOWS ];
		struct PointLightShadow {
			float shadowIntensity;
			float shadowBias;
			float shadowNormalBias;
			float shadowRadius;
			vec2 shadowMapSize;
			float shadowCameraNear;
			float shadowCameraFar;
		};
		uniform PointLightShadow pointLightShadows[ NUM_POINT_LIGHT_SHADOWS ];
	#endif
	#if defined( SHADOWMAP_TYPE_PCF )
		float interleavedGradientNoise( vec2 position ) {
			return fract( 52.9829189 * fract( dot( position, vec2( 0.06711056, 0.00583715 ) ) ) );
		}
		vec2 vogelDiskSample( int sampleIndex, int samplesCount, float phi ) {
			const float goldenAngle = 2.399963229728653;
			float r = sqrt( ( float( sampleIndex ) + 0.5 ) / float( samplesCount ) );
			float theta = float( sampleIndex ) * goldenAngle + phi;
			return vec2( cos( theta ), sin( theta ) ) * r;
		}
	#endif
	#if defined( SHADOWMAP_TYPE_PCF )
		float getShadow( sampler2DShadow shadowMap, vec2 shadowMapSize, float shadowIntensity, float shadowBias, float shadowRadius, vec4 shadowCoord ) {
			float shadow = 1.0;
			shadowCoord.xyz /= shadowCoord.w;
			#ifdef USE_REVERSED_DEPTH_BUFFER
				shadowCoord.z -= shadowBias;
			#else
				shadowCoord.z += shadowBias;
			#endif
			bool inFrustum = shadowCoord.x >= 0.0 && shadowCoord.x <= 1.0 && shadowCoord.y >= 0.0 && shadowCoord.y <= 1.0;
			bool frustumTest = inFrustum && shadowCoord.z <= 1.0;
			if ( frustumTest ) {
				vec2 texelSize = vec2( 1.0 ) / shadowMapSize;
				vec2 radius = shadowRadius * texelSize;
				float phi = interleavedGradientNoise( gl_FragCoord.xy ) * PI2;
				shadow = (
					texture( shadowMap, vec3( shadowCoord.xy + vogelDiskSample( 0, 5, phi ) * radius, shadowCoord.z ) ) +
					texture( shadowMap, vec3( shadowCoord.xy + vogelDiskSample( 1, 5, phi ) * radius, shadowCoord.z ) ) +
					texture( shadowMap, vec3( shadowCoord.xy + vogelDiskSample( 2, 5, phi ) * radius, shadowCoord.z ) ) +
					texture( shadowMap, vec3( shadowCoord.xy + vogelDiskSample( 3, 5, phi ) * radius, shadowCoord.z ) ) +
					texture( shadowMap, vec3( shadowCoord.xy + vogelDiskSample( 4, 5, phi ) * radius, shadowCoord.z ) )
				) * 0.2;
			}
			return mix( 1.0, shadow, shadowIntensity );
		}
	#elif defined( SHADOWMAP_TYPE_VSM )
		float getShadow( sampler2D shadowMap, vec2 shadowMapSize, float shadowIntensity, float shadowBias, float shadowRadius, vec4 shadowCoord ) {
			float shadow = 1.0;
			shadowCoord.xyz /= shadowCoord.w;
			#ifdef USE_REVERSED_DEPTH_BUFFER
				shadowCoord.z -= shadowBias;
			#else
				shadowCoord.z += shadowBias;
			#endif
			bool inFrustum = shadowCoord.x >= 0.0 && shadowCoord.x <= 1.0 && shadowCoord.y >= 0.0 && shadowCoord.y <= 1.0;
			bool frustumTest = inFrustum && shadowCoord.z <= 1.0;
			if ( frustumTest ) {
				vec2 distribution = texture2D( shadowMap, shadowCoord.xy ).rg;
				float mean = distribution.x;
				float variance = distribution.y * distribution.y;
				#ifdef USE_REVERSED_DEPTH_BUFFER
					float hard_shadow = step( mean, shadowCoord.z );
				#else
					float hard_shadow = step( shadowCoord.z, mean );
				#endif
				
				if ( hard_shadow == 1.0 ) {
					shadow = 1.0;
				} else {
					variance = max( variance, 0.0000001 );
					float d = shadowCoord.z - mean;
					float p_max = variance / ( variance + d * d );
					p_max = clamp( ( p_max - 0.3 ) / 0.65, 0.0, 1.0 );
					shadow = max( hard_shadow, p_max );
				}
			}
			return mix( 1.0, shadow, shadowIntensity );
		}
	#else
		float getShadow( sampler2D shadowMap, vec2 shadowMapSize, float shadowIntensity, float shadowBias, float shadowRadius, vec4 shadowCoord ) {
			float shadow = 1.0;
			shadowCoord.xyz /= shadowCoord.w;
			#ifdef USE_REVERSED_DEPTH_BUFFER
				shadowCoord.z -= shadowBias;
			#else
				shadowCoord.z += shadowBias;
			#endif
			bool inFrustum = shadowCoord.x >= 0.0 && shadowCoord.x <= 1.0 && shadowCoord.y >= 0.0 && shadowCoord.y <= 1.0;
			bool frustumTest = inFrustum && shadowCoord.z <= 1.0;
			if ( frustumTest ) {
				float depth = texture2D( shadowMap, shadowCoord.xy ).r;
				#ifdef USE_REVERSED_DEPTH_BUFFER
					shadow = step( depth, shadowCoord.z );
				#else
					shadow = step( shadowCoord.z, depth );
				#endif
			}
			return mix( 1.0, shadow, shadowIntensity );
		}
	#endif
	#if NUM_SUN_LIGHT_SHADOWS > 0
		float getSunShadow(
			#if defined( SHADOWMAP_TYPE_PCF )
				sampler2DShadow shadowMap,
			#else
				sampler2D shadowMap,
			#endif
			SunLightShadow sunLightShadow,
			int shadowIndex
		) {
			vec4 shadowWorldPosition = vec4( vSunShadowWorldPosition.xyz + vSunShadowWorldNormal * sunLightShadow.shadowNormalBias, 1.0 );
			float viewDepth = vSunShadowWorldPosition.w;
			int cascadeOffset = shadowIndex * SUN_LIGHT_CASCADES;
			float shadow = 1.0;
			for ( int i = SUN_LIGHT_CASCADES - 1; i >= 0; i -- ) {
				vec4 cascade = sunShadowCascade[ cascadeOffset + i ];
				if ( viewDepth >= cascade.x && viewDepth < cascade.y ) {
					float cascadeShadow = getShadow(
						shadowMap,
						sunLightShadow.shadowMapSize,
						sunLightShadow.shadowIntensity,
						sunLightShadow.shadowBias,
						sunLightShadow.shadowRadius,
						sunShadowMatrix[ cascadeOffset + i ] * shadowWorldPosition
					);
					shadow = mix( cascadeShadow, shadow, smoothstep( cascade.z, cascade.y, viewDepth ) );
				}
			}
			return shadow;
		}
	#endif
	#if NUM_POINT_LIGHT_SHADOWS > 0
	#if defined( SHADOWMAP_TYPE_PCF )
	float getPointShadow( samplerCubeShadow shadowMap, vec2 shadowMapSize, float shadowIntensity, float shadowBias, float shadowRadius, vec4 shadowCoord, float shadowCameraNear, float shadowCameraFar ) {
		float shadow = 1.0;
		vec3 lightToPosition = shadowCoord.xyz;
		vec3 bd3D = normalize( lightToPosition );
		vec3 absVec = abs( lightToPosition );
		float viewSpaceZ = max( max( absVec.x, absVec.y ), absVec.z );
		if ( viewSpaceZ - shadowCameraFar <= 0.0 && viewSpaceZ - shadowCameraNear >= 0.0 ) {
			float lightDistance = length( lightToPosition );
			float depthRange = shadowCameraFar - shadowCameraNear;
			#ifdef USE_REVERSED_DEPTH_BUFFER
				float depthA = - shadowCameraNear / depthRange - shadowBias;
				float depthB = shadowCameraNear * shadowCameraFar / ( depthRange * lightDistance );
			#else
				float depthA = shadowCameraFar / depthRange + shadowBias;
				float depthB = - shadowCameraNear * shadowCameraFar / ( depthRange * lightDistance );
			#endif
			float texelSize = shadowRadius / shadowMapSize.x;
			vec3 absDir = abs( bd3D );
			vec3 tangent = absDir.x > absDir.z ? vec3( 0.0, 1.0, 0.0 ) : vec3( 1.0, 0.0, 0.0 );
			tangent = normalize( cross( bd3D, tangent ) );
			vec3 bitangent = cross( bd3D, tangent );
			float phi = interleavedGradientNoise( gl_FragCoord.xy ) * PI2;
			shadow = 0.0;
			for ( int i = 0; i < 5; i ++ ) {
				vec2 offset = vogelDiskSample( i, 5, phi );
				vec3 direction = bd3D + ( tangent * offset.x + bitangent * offset.y ) * texelSize;
				vec3 absDirection = abs( direction );
				float dp = depthA + depthB / max( max( absDirection.x, absDirection.y ), absDirection.z );
				shadow += texture( shadowMap, vec4( direction, dp ) );
			}
			shadow *= 0.2;
		}
		return mix( 1.0, shadow, shadowIntensity );
	}
	#elif defined( SHADOWMAP_TYPE_BASIC )
	float getPointShadow( samplerCube shadowMap, vec2 shadowMapSize, float shadowIntensity, float shadowBias, float shadowRadius, vec4 shadowCoord, float shadowCameraNear, float shadowCameraFar ) {
		float shadow = 1.0;
		vec3 lightToPosition = shadowCoord.xyz;
		vec3 absVec = abs( lightToPosition );
		float viewSpaceZ = max( max( absVec.x, absVec.y ), absVec.z );
		if ( viewSpaceZ - shadowCameraFar <= 0.0 && viewSpaceZ - shadowCameraNear >= 0.0 ) {
			float dp = ( shadowCameraFar * ( viewSpaceZ - shadowCameraNear ) ) / ( viewSpaceZ * ( shadowCameraFar - shadowCameraNear ) );
			dp += shadowBias;
			vec3 bd3D = normalize( lightToPosition );
			float depth = textureCube( shadowMap, bd3D ).r;
			#ifdef USE_REVERSED_DEPTH_BUFFER
				depth = 1.0 - depth;
			#endif
			shadow = step( dp, depth );
		}
		return mix( 1.0, shadow, shadowIntensity );
	}
	#endif
	#endif
#endif`,qg=`#if NUM_SPOT_LIGHT_COORDS > 0
	uniform mat4 spotLightMatrix[ NUM_SPOT_LIGHT_COORDS ];
	varying vec4 vSpotLightCoord[ NUM_SPOT_LIGHT_COORDS ];
#endif
#ifdef USE_SHADOWMAP
	#if NUM_SUN_LIGHT_SHADOWS > 0
		varying vec4 vSunShadowWorldPosition;
		varying vec3 vSunShadowWorldNormal;
	#endif
	#if NUM_DIR_LIGHT_SHADOWS > 0
		uniform mat4 directionalShadowMatrix[ NUM_DIR_LIGHT_SHADOWS ];
		varying vec4 vDirectionalShadowCoord[ NUM_DIR_LIGHT_SHADOWS ];
		struct DirectionalLightShadow {
			float shadowIntensity;
			float shadowBias;
			float shadowNormalBias;
			float shadowRadius;
			vec2 shadowMapSize;
		};
		uniform DirectionalLightShadow directionalLightShadows[ NUM_DIR_LIGHT_SHADOWS ];
	#endif
	#if NUM_SPOT_LIGHT_SHADOWS > 0
		struct SpotLightShadow {
			float shadowIntensity;
			float shadowBias;
			float shadowNormalBias;
			float shadowRadius;
			vec2 shadowMapSize;
		};
		uniform SpotLightShadow spotLightShadows[ NUM_SPOT_LIGHT_SHADOWS ];
	#endif
	#if NUM_POINT_LIGHT_SHADOWS > 0
		uniform mat4 pointShadowMatrix[ NUM_POINT_LIGHT_SHADOWS ];
		varying vec4 vPointShadowCoord[ NUM_POINT_LIGHT_SHADOWS ];
		struct PointLightShadow {
			float shadowIntensity;
			float shadowBias;
			float shadowNormalBias;
			float shadowRadius;
			vec2 shadowMapSize;
			float shadowCameraNear;
			float shadowCameraFar;
		};
		uniform PointLightShadow pointLightShadows[ NUM_POINT_LIGHT_SHADOWS ];
	#endif
#endif`,Yg=`#if ( defined( USE_SHADOWMAP ) && ( NUM_DIR_LIGHT_SHADOWS > 0 || NUM_SUN_LIGHT_SHADOWS > 0 || NUM_POINT_LIGHT_SHADOWS > 0 ) ) || ( NUM_SPOT_LIGHT_COORDS > 0 )
	#ifdef HAS_NORMAL
		vec3 shadowWorldNormal = transformNormalByInverseViewMatrix( transformedNormal, viewMatrix );
	#else
		vec3 shadowWorldNormal = vec3( 0.0 );
	#endif
	vec4 shadowWorldPosition;
#endif
#if defined( USE_SHADOWMAP )
	#if NUM_SUN_LIGHT_SHADOWS > 0
		vSunShadowWorldPosition = vec4( worldPosition.xyz, - mvPosition.z );
		vSunShadowWorldNormal = shadowWorldNormal;
	#endif
	#if NUM_DIR_LIGHT_SHADOWS > 0
		#pragma unroll_loop_start
		for ( int i = 0; i < NUM_DIR_LIGHT_SHADOWS; i ++ ) {
			shadowWorldPosition = worldPosition + vec4( shadowWorldNormal * directionalLightShadows[ i ].shadowNormalBias, 0 );
			vDirectionalShadowCoord[ i ] = directionalShadowMatrix[ i ] * shadowWorldPosition;
		}
		#pragma unroll_loop_end
	#endif
	#if NUM_POINT_LIGHT_SHADOWS > 0
		#pragma unroll_loop_start
		for ( int i = 0; i < NUM_POINT_LIGHT_SHADOWS; i ++ ) {
			shadowWorldPosition = worldPosition + vec4( shadowWorldNormal * pointLightShadows[ i ].shadowNormalBias, 0 );
			vPointShadowCoord[ i ] = pointShadowMatrix[ i ] * shadowWorldPosition;
		}
		#pragma unroll_loop_end
	#endif
#endif
#if NUM_SPOT_LIGHT_COORDS > 0
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_SPOT_LIGHT_COORDS; i ++ ) {
		shadowWorldPosition = worldPosition;
		#if ( defined( USE_SHADOWMAP ) && UNROLLED_LOOP_INDEX < NUM_SPOT_LIGHT_SHADOWS )
			shadowWorldPosition.xyz += shadowWorldNormal * spotLightShadows[ i ].shadowNormalBias;
		#endif
		vSpotLightCoord[ i ] = spotLightMatrix[ i ] * shadowWorldPosition;
	}
	#pragma unroll_loop_end
#endif`,Zg=`float getShadowMask() {
	float shadow = 1.0;
	#ifdef USE_SHADOWMAP
	#if NUM_SUN_LIGHT_SHADOWS > 0
	SunLightShadow sunLight;
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_SUN_LIGHT_SHADOWS; i ++ ) {
		sunLight = sunLightShadows[ i ];
		shadow *= receiveShadow ? getSunShadow( sunShadowMap[ i ], sunLight, UNROLLED_LOOP_INDEX ) : 1.0;
	}
	#pragma unroll_loop_end
	#endif
	#if NUM_DIR_LIGHT_SHADOWS > 0
	DirectionalLightShadow directionalLight;
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_DIR_LIGHT_SHADOWS; i ++ ) {
		directionalLight = directionalLightShadows[ i ];
		shadow *= receiveShadow ? getShadow( directionalShadowMap[ i ], directionalLight.shadowMapSize, directionalLight.shadowIntensity, directionalLight.shadowBias, directionalLight.shadowRadius, vDirectionalShadowCoord[ i ] ) : 1.0;
	}
	#pragma unroll_loop_end
	#endif
	#if NUM_SPOT_LIGHT_SHADOWS > 0
	SpotLightShadow spotLight;
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_SPOT_LIGHT_SHADOWS; i ++ ) {
		spotLight = spotLightShadows[ i ];
		shadow *= receiveShadow ? getShadow( spotShadowMap[ i ], spotLight.shadowMapSize, spotLight.shadowIntensity, spotLight.shadowBias, spotLight.shadowRadius, vSpotLightCoord[ i ] ) : 1.0;
	}
	#pragma unroll_loop_end
	#endif
	#if NUM_POINT_LIGHT_SHADOWS > 0 && ( defined( SHADOWMAP_TYPE_PCF ) || defined( SHADOWMAP_TYPE_BASIC ) )
	PointLightShadow pointLight;
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_POINT_LIGHT_SHADOWS; i ++ ) {
		pointLight = pointLightShadows[ i ];
		shadow *= receiveShadow ? getPointShadow( pointShadowMap[ i ], pointLight.shadowMapSize, pointLight.shadowIntensity, pointLight.shadowBias, pointLight.shadowRadius, vPointShadowCoord[ i ], pointLight.shadowCameraNear, pointLight.shadowCameraFar ) : 1.0;
	}
	#pragma unroll_loop_end
	#endif
	#endif
	return shadow;
}`,Jg=`#ifdef USE_SKINNING
	mat4 boneMatX = getBoneMatrix( skinIndex.x );
	mat4 boneMatY = getBoneMatrix( skinIndex.y );
	mat4 boneMatZ = getBoneMatrix( skinIndex.z );
	mat4 boneMatW = getBoneMatrix( skinIndex.w );
#endif`,Kg=`#ifdef USE_SKINNING
	uniform mat4 bindMatrix;
	uniform mat4 bindMatrixInverse;
	uniform highp sampler2D boneTexture;
	mat4 getBoneMatrix( const in float i ) {
		int size = textureSize( boneTexture, 0 ).x;
		int j = int( i ) * 4;
		int x = j % size;
		int y = j / size;
		vec4 v1 = texelFetch( boneTexture, ivec2( x, y ), 0 );
		vec4 v2 = texelFetch( boneTexture, ivec2( x + 1, y ), 0 );
		vec4 v3 = texelFetch( boneTexture, ivec2( x + 2, y ), 0 );
		vec4 v4 = texelFetch( boneTexture, ivec2( x + 3, y ), 0 );
		return mat4( v1, v2, v3, v4 );
	}
#endif`,jg=`#ifdef USE_SKINNING
	vec4 skinVertex = bindMatrix * vec4( transformed, 1.0 );
	vec4 skinned = vec4( 0.0 );
	skinned += boneMatX * skinVertex * skinWeight.x;
	skinned += boneMatY * skinVertex * skinWeight.y;
	skinned += boneMatZ * skinVertex * skinWeight.z;
	skinned += boneMatW * skinVertex * skinWeight.w;
	transformed = ( bindMatrixInverse * skinned ).xyz;
#endif`,Qg=`#ifdef USE_SKINNING
	mat4 skinMatrix = mat4( 0.0 );
	skinMatrix += skinWeight.x * boneMatX;
	skinMatrix += skinWeight.y * boneMatY;
	skinMatrix += skinWeight.z * boneMatZ;
	skinMatrix += skinWeight.w * boneMatW;
	skinMatrix = bindMatrixInverse * skinMatrix * bindMatrix;
	objectNormal = vec4( skinMatrix * vec4( objectNormal, 0.0 ) ).xyz;
	#ifdef USE_TANGENT
		objectTangent = vec4( skinMatrix * vec4( objectTangent, 0.0 ) ).xyz;
	#endif
#endif`,e0=`float specularStrength;
#ifdef USE_SPECULARMAP
	vec4 texelSpecular = texture2D( specularMap, vSpecularMapUv );
	specularStrength = texelSpecular.r;
#else
	specularStrength = 1.0;
#endif`,t0=`#ifdef USE_SPECULARMAP
	uniform sampler2D specularMap;
#endif`,n0=`#if defined( TONE_MAPPING )
	gl_FragColor.rgb = toneMapping( gl_FragColor.rgb );
#endif`,i0=`#ifndef saturate
#define saturate( a ) clamp( a, 0.0, 1.0 )
#endif
uniform float toneMappingExposure;
vec3 LinearToneMapping( vec3 color ) {
	return saturate( toneMappingExposure * color );
}
vec3 ReinhardToneMapping( vec3 color ) {
	color *= toneMappingExposure;
	return saturate( color / ( vec3( 1.0 ) + color ) );
}
vec3 CineonToneMapping( vec3 color ) {
	color *= toneMappingExposure;
	color = max( vec3( 0.0 ), color - 0.004 );
	return pow( ( color * ( 6.2 * color + 0.5 ) ) / ( color * ( 6.2 * color + 1.7 ) + 0.06 ), vec3( 2.2 ) );
}
vec3 RRTAndODTFit( vec3 v ) {
	vec3 a = v * ( v + 0.0245786 ) - 0.000090537;
	vec3 b = v * ( 0.983729 * v + 0.4329510 ) + 0.238081;
	return a / b;
}
vec3 ACESFilmicToneMapping( vec3 color ) {
	const mat3 ACESInputMat = mat3(
		vec3( 0.59719, 0.07600, 0.02840 ),		vec3( 0.35458, 0.90834, 0.13383 ),
		vec3( 0.04823, 0.01566, 0.83777 )
	);
	const mat3 ACESOutputMat = mat3(
		vec3(  1.60475, -0.10208, -0.00327 ),		vec3( -0.53108,  1.10813, -0.07276 ),
		vec3( -0.07367, -0.00605,  1.07602 )
	);
	color *= toneMappingExposure / 0.6;
	color = ACESInputMat * color;
	color = RRTAndODTFit( color );
	color = ACESOutputMat * color;
	return saturate( color );
}
const mat3 LINEAR_REC2020_TO_LINEAR_SRGB = mat3(
	vec3( 1.6605, - 0.1246, - 0.0182 ),
	vec3( - 0.5876, 1.1329, - 0.1006 ),
	vec3( - 0.0728, - 0.0083, 1.1187 )
);
const mat3 LINEAR_SRGB_TO_LINEAR_REC2020 = mat3(
	vec3( 0.6274, 0.0691, 0.0164 ),
	vec3( 0.3293, 0.9195, 0.0880 ),
	vec3( 0.0433, 0.0113, 0.8956 )
);
vec3 agxDefaultContrastApprox( vec3 x ) {
	vec3 x2 = x * x;
	vec3 x4 = x2 * x2;
	return + 15.5 * x4 * x2
		- 40.14 * x4 * x
		+ 31.96 * x4
		- 6.868 * x2 * x
		+ 0.4298 * x2
		+ 0.1191 * x
		- 0.00232;
}
vec3 AgXToneMapping( vec3 color ) {
	const mat3 AgXInsetMatrix = mat3(
		vec3( 0.856627153315983, 0.137318972929847, 0.11189821299995 ),
		vec3( 0.0951212405381588, 0.761241990602591, 0.0767994186031903 ),
		vec3( 0.0482516061458583, 0.101439036467562, 0.811302368396859 )
	);
	const mat3 AgXOutsetMatrix = mat3(
		vec3( 1.1271005818144368, - 0.1413297634984383, - 0.14132976349843826 ),
		vec3( - 0.11060664309660323, 1.157823702216272, - 0.11060664309660294 ),
		vec3( - 0.016493938717834573, - 0.016493938717834257, 1.2519364065950405 )
	);
	const float AgxMinEv = - 12.47393;	const float AgxMaxEv = 4.026069;
	color *= toneMappingExposure;
	color = LINEAR_SRGB_TO_LINEAR_REC2020 * color;
	color = AgXInsetMatrix * color;
	color = max( color, 1e-10 );	color = log2( color );
	color = ( color - AgxMinEv ) / ( AgxMaxEv - AgxMinEv );
	color = clamp( color, 0.0, 1.0 );
	color = agxDefaultContrastApprox( color );
	color = AgXOutsetMatrix * color;
	color = pow( max( vec3( 0.0 ), color ), vec3( 2.2 ) );
	color = LINEAR_REC2020_TO_LINEAR_SRGB * color;
	color = clamp( color, 0.0, 1.0 );
	return color;
}
vec3 NeutralToneMapping( vec3 color ) {
	const float StartCompression = 0.8 - 0.04;
	const float Desaturation = 0.15;
	color *= toneMappingExposure;
	float x = min( color.r, min( color.g, color.b ) );
	float offset = x < 0.08 ? x - 6.25 * x * x : 0.04;
	color -= offset;
	float peak = max( color.r, max( color.g, color.b ) );
	if ( peak < StartCompression ) return color;
	float d = 1. - StartCompression;
	float newPeak = 1. - d * d / ( peak + d - StartCompression );
	color *= newPeak / peak;
	float g = 1. - 1. / ( Desaturation * ( peak - newPeak ) + 1. );
	return mix( color, vec3( newPeak ), g );
}
vec3 CustomToneMapping( vec3 color ) { return color; }`,s0=`#ifdef USE_TRANSMISSION
	material.transmission = transmission;
	material.transmissionAlpha = 1.0;
	material.thickness = thickness;
	material.attenuationDistance = attenuationDistance;
	material.attenuationColor = attenuationColor;
	#ifdef USE_TRANSMISSIONMAP
		material.transmission *= texture2D( transmissionMap, vTransmissionMapUv ).r;
	#endif
	#ifdef USE_THICKNESSMAP
		material.thickness *= texture2D( thicknessMap, vThicknessMapUv ).g;
	#endif
	vec3 pos = vWorldPosition;
	vec3 v = normalize( cameraPosition - pos );
	vec3 n = transformNormalByInverseViewMatrix( normal, viewMatrix );
	vec4 transmitted = getIBLVolumeRefraction(
		n, v, material.roughness, material.diffuseContribution, material.specularColorBlended, material.specularF90,
		pos, modelMatrix, viewMatrix, projectionMatrix, material.dispersion, material.ior, material.thickness,
		material.attenuationColor, material.attenuationDistance );
	material.transmissionAlpha = mix( material.transmissionAlpha, transmitted.a, material.transmission );
	totalDiffuse = mix( totalDiffuse, transmitted.rgb, material.transmission );
#endif`,r0=`#ifdef USE_TRANSMISSION
	uniform float transmission;
	uniform float thickness;
	uniform float attenuationDistance;
	uniform vec3 attenuationColor;
	#ifdef USE_TRANSMISSIONMAP
		uniform sampler2D transmissionMap;
	#endif
	#ifdef USE_THICKNESSMAP
		uniform sampler2D thicknessMap;
	#endif
	uniform vec2 transmissionSamplerSize;
	uniform sampler2D transmissionSamplerMap;
	uniform mat4 modelMatrix;
	uniform mat4 projectionMatrix;
	varying vec3 vWorldPosition;
	float w0( float a ) {
		return ( 1.0 / 6.0 ) * ( a * ( a * ( - a + 3.0 ) - 3.0 ) + 1.0 );
	}
	float w1( float a ) {
		return ( 1.0 / 6.0 ) * ( a *  a * ( 3.0 * a - 6.0 ) + 4.0 );
	}
	float w2( float a ){
		return ( 1.0 / 6.0 ) * ( a * ( a * ( - 3.0 * a + 3.0 ) + 3.0 ) + 1.0 );
	}
	float w3( float a ) {
		return ( 1.0 / 6.0 ) * ( a * a * a );
	}
	float g0( float a ) {
		return w0( a ) + w1( a );
	}
	float g1( float a ) {
		return w2( a ) + w3( a );
	}
	float h0( float a ) {
		return - 1.0 + w1( a ) / ( w0( a ) + w1( a ) );
	}
	float h1( float a ) {
		return 1.0 + w3( a ) / ( w2( a ) + w3( a ) );
	}
	vec4 bicubic( sampler2D tex, vec2 uv, vec4 texelSize, float lod ) {
		uv = uv * texelSize.zw + 0.5;
		vec2 iuv = floor( uv );
		vec2 fuv = fract( uv );
		float g0x = g0( fuv.x );
		float g1x = g1( fuv.x );
		float h0x = h0( fuv.x );
		float h1x = h1( fuv.x );
		float h0y = h0( fuv.y );
		float h1y = h1( fuv.y );
		vec2 p0 = ( vec2( iuv.x + h0x, iuv.y + h0y ) - 0.5 ) * texelSize.xy;
		vec2 p1 = ( vec2( iuv.x + h1x, iuv.y + h0y ) - 0.5 ) * texelSize.xy;
		vec2 p2 = ( vec2( iuv.x + h0x, iuv.y + h1y ) - 0.5 ) * texelSize.xy;
		vec2 p3 = ( vec2( iuv.x + h1x, iuv.y + h1y ) - 0.5 ) * texelSize.xy;
		return g0( fuv.y ) * ( g0x * textureLod( tex, p0, lod ) + g1x * textureLod( tex, p1, lod ) ) +
			g1( fuv.y ) * ( g0x * textureLod( tex, p2, lod ) + g1x * textureLod( tex, p3, lod ) );
	}
	vec4 textureBicubic( sampler2D sampler, vec2 uv, float lod ) {
		vec2 fLodSize = vec2( textureSize( sampler, int( lod ) ) );
		vec2 cLodSize = vec2( textureSize( sampler, int( lod + 1.0 ) ) );
		vec2 fLodSizeInv = 1.0 / fLodSize;
		vec2 cLodSizeInv = 1.0 / cLodSize;
		vec4 fSample = bicubic( sampler, uv, vec4( fLodSizeInv, fLodSize ), floor( lod ) );
		vec4 cSample = bicubic( sampler, uv, vec4( cLodSizeInv, cLodSize ), ceil( lod ) );
		return mix( fSample, cSample, fract( lod ) );
	}
	vec3 getVolumeTransmissionRay( const in vec3 n, const in vec3 v, const in float thickness, const in float ior, const in mat4 modelMatrix ) {
		vec3 refractionVector = refract( - v, normalize( n ), 1.0 / ior );
		vec3 modelScale;
		modelScale.x = length( vec3( modelMatrix[ 0 ].xyz ) );
		modelScale.y = length( vec3( modelMatrix[ 1 ].xyz ) );
		modelScale.z = length( vec3( modelMatrix[ 2 ].xyz ) );
		return normalize( refractionVector ) * thickness * modelScale;
	}
	float applyIorToRoughness( const in float roughness, const in float ior ) {
		return roughness * clamp( ior * 2.0 - 2.0, 0.0, 1.0 );
	}
	vec4 getTransmissionSample( const in vec2 fragCoord, const in float roughness, const in float ior ) {
		float lod = log2( transmissionSamplerSize.x ) * applyIorToRoughness( roughness, ior );
		return textureBicubic( transmissionSamplerMap, fragCoord.xy, lod );
	}
	vec3 volumeAttenuation( const in float transmissionDistance, const in vec3 attenuationColor, const in float attenuationDistance ) {
		if ( isinf( attenuationDistance ) ) {
			return vec3( 1.0 );
		} else {
			vec3 attenuationCoefficient = -log( attenuationColor ) / attenuationDistance;
			vec3 transmittance = exp( - attenuationCoefficient * transmissionDistance );			return transmittance;
		}
	}
	vec4 getIBLVolumeRefraction( const in vec3 n, const in vec3 v, const in float roughness, const in vec3 diffuseColor,
		const in vec3 specularColor, const in float specularF90, const in vec3 position, const in mat4 modelMatrix,
		const in mat4 viewMatrix, const in mat4 projMatrix, const in float dispersion, const in float ior, const in float thickness,
		const in vec3 attenuationColor, const in float attenuationDistance ) {
		vec4 transmittedLight;
		vec3 transmittance;
		#ifdef USE_DISPERSION
			float halfSpread = ( ior - 1.0 ) * 0.025 * dispersion;
			vec3 iors = vec3( ior - halfSpread, ior, ior + halfSpread );
			for ( int i = 0; i < 3; i ++ ) {
				vec3 transmissionRay = getVolumeTransmissionRay( n, v, thickness, iors[ i ], modelMatrix );
				vec3 refractedRayExit = position + transmissionRay;
				vec4 ndcPos = projMatrix * viewMatrix * vec4( refractedRayExit, 1.0 );
				vec2 refractionCoords = ndcPos.xy / ndcPos.w;
				refractionCoords += 1.0;
				refractionCoords /= 2.0;
				vec4 transmissionSample = getTransmissionSample( refractionCoords, roughness, iors[ i ] );
				transmittedLight[ i ] = transmissionSample[ i ];
				transmittedLight.a += transmissionSample.a;
				transmittance[ i ] = diffuseColor[ i ] * volumeAttenuation( length( transmissionRay ), attenuationColor, attenuationDistance )[ i ];
			}
			transmittedLight.a /= 3.0;
		#else
			vec3 transmissionRay = getVolumeTransmissionRay( n, v, thickness, ior, modelMatrix );
			vec3 refractedRayExit = position + transmissionRay;
			vec4 ndcPos = projMatrix * viewMatrix * vec4( refractedRayExit, 1.0 );
			vec2 refractionCoords = ndcPos.xy / ndcPos.w;
			refractionCoords += 1.0;
			refractionCoords /= 2.0;
			transmittedLight = getTransmissionSample( refractionCoords, roughness, ior );
			transmittance = diffuseColor * volumeAttenuation( length( transmissionRay ), attenuationColor, attenuationDistance );
		#endif
		vec3 attenuatedColor = transmittance * transmittedLight.rgb;
		vec3 F = EnvironmentBRDF( n, v, specularColor, specularF90, roughness );
		float transmittanceFactor = ( transmittance.r + transmittance.g + transmittance.b ) / 3.0;
		return vec4( ( 1.0 - F ) * attenuatedColor, 1.0 - ( 1.0 - transmittedLight.a ) * transmittanceFactor );
	}
#endif`,a0=`#if defined( USE_UV ) || defined( USE_ANISOTROPY )
	varying vec2 vUv;
#endif
#ifdef USE_MAP
	varying vec2 vMapUv;
#endif
#ifdef USE_ALPHAMAP
	varying vec2 vAlphaMapUv;
#endif
#ifdef USE_LIGHTMAP
	varying vec2 vLightMapUv;
#endif
#ifdef USE_AOMAP
	varying vec2 vAoMapUv;
#endif
#ifdef USE_BUMPMAP
	varying vec2 vBumpMapUv;
#endif
#ifdef USE_NORMALMAP
	varying vec2 vNormalMapUv;
#endif
#ifdef USE_EMISSIVEMAP
	varying vec2 vEmissiveMapUv;
#endif
#ifdef USE_METALNESSMAP
	varying vec2 vMetalnessMapUv;
#endif
#ifdef USE_ROUGHNESSMAP
	varying vec2 vRoughnessMapUv;
#endif
#ifdef USE_DIFFUSE_ROUGHNESSMAP
	varying vec2 vDiffuseRoughnessMapUv;
#endif
#ifdef USE_ANISOTROPYMAP
	varying vec2 vAnisotropyMapUv;
#endif
#ifdef USE_CLEARCOATMAP
	varying vec2 vClearcoatMapUv;
#endif
#ifdef USE_CLEARCOAT_NORMALMAP
	varying vec2 vClearcoatNormalMapUv;
#endif
#ifdef USE_CLEARCOAT_ROUGHNESSMAP
	varying vec2 vClearcoatRoughnessMapUv;
#endif
#ifdef USE_IRIDESCENCEMAP
	varying vec2 vIridescenceMapUv;
#endif
#ifdef USE_IRIDESCENCE_THICKNESSMAP
	varying vec2 vIridescenceThicknessMapUv;
#endif
#ifdef USE_SHEEN_COLORMAP
	varying vec2 vSheenColorMapUv;
#endif
#ifdef USE_SHEEN_ROUGHNESSMAP
	varying vec2 vSheenRoughnessMapUv;
#endif
#ifdef USE_SPECULARMAP
	varying vec2 vSpecularMapUv;
#endif
#ifdef USE_SPECULAR_COLORMAP
	varying vec2 vSpecularColorMapUv;
#endif
#ifdef USE_SPECULAR_INTENSITYMAP
	varying vec2 vSpecularIntensityMapUv;
#endif
#ifdef USE_TRANSMISSIONMAP
	uniform mat3 transmissionMapTransform;
	varying vec2 vTransmissionMapUv;
#endif
#ifdef USE_THICKNESSMAP
	uniform mat3 thicknessMapTransform;
	varying vec2 vThicknessMapUv;
#endif`,o0=`#if defined( USE_UV ) || defined( USE_ANISOTROPY )
	varying vec2 vUv;
#endif
#ifdef USE_MAP
	uniform mat3 mapTransform;
	varying vec2 vMapUv;
#endif
#ifdef USE_ALPHAMAP
	uniform mat3 alphaMapTransform;
	varying vec2 vAlphaMapUv;
#endif
#ifdef USE_LIGHTMAP
	uniform mat3 lightMapTransform;
	varying vec2 vLightMapUv;
#endif
#ifdef USE_AOMAP
	uniform mat3 aoMapTransform;
	varying vec2 vAoMapUv;
#endif
#ifdef USE_BUMPMAP
	uniform mat3 bumpMapTransform;
	varying vec2 vBumpMapUv;
#endif
#ifdef USE_NORMALMAP
	uniform mat3 normalMapTransform;
	varying vec2 vNormalMapUv;
#endif
#ifdef USE_DISPLACEMENTMAP
	uniform mat3 displacementMapTransform;
	varying vec2 vDisplacementMapUv;
#endif
#ifdef USE_EMISSIVEMAP
	uniform mat3 emissiveMapTransform;
	varying vec2 vEmissiveMapUv;
#endif
#ifdef USE_METALNESSMAP
	uniform mat3 metalnessMapTransform;
	varying vec2 vMetalnessMapUv;
#endif
#ifdef USE_ROUGHNESSMAP
	uniform mat3 roughnessMapTransform;
	varying vec2 vRoughnessMapUv;
#endif
#ifdef USE_DIFFUSE_ROUGHNESSMAP
	uniform mat3 diffuseRoughnessMapTransform;
	varying vec2 vDiffuseRoughnessMapUv;
#endif
#ifdef USE_ANISOTROPYMAP
	uniform mat3 anisotropyMapTransform;
	varying vec2 vAnisotropyMapUv;
#endif
#ifdef USE_CLEARCOATMAP
	uniform mat3 clearcoatMapTransform;
	varying vec2 vClearcoatMapUv;
#endif
#ifdef USE_CLEARCOAT_NORMALMAP
	uniform mat3 clearcoatNormalMapTransform;
	varying vec2 vClearcoatNormalMapUv;
#endif
#ifdef USE_CLEARCOAT_ROUGHNESSMAP
	uniform mat3 clearcoatRoughnessMapTransform;
	varying vec2 vClearcoatRoughnessMapUv;
#endif
#ifdef USE_SHEEN_COLORMAP
	uniform mat3 sheenColorMapTransform;
	varying vec2 vSheenColorMapUv;
#endif
#ifdef USE_SHEEN_ROUGHNESSMAP
	uniform mat3 sheenRoughnessMapTransform;
	varying vec2 vSheenRoughnessMapUv;
#endif
#ifdef USE_IRIDESCENCEMAP
	uniform mat3 iridescenceMapTransform;
	varying vec2 vIridescenceMapUv;
#endif
#ifdef USE_IRIDESCENCE_THICKNESSMAP
	uniform mat3 iridescenceThicknessMapTransform;
	varying vec2 vIridescenceThicknessMapUv;
#endif
#ifdef USE_SPECULARMAP
	uniform mat3 specularMapTransform;
	varying vec2 vSpecularMapUv;
#endif
#ifdef USE_SPECULAR_COLORMAP
	uniform mat3 specularColorMapTransform;
	varying vec2 vSpecularColorMapUv;
#endif
#ifdef USE_SPECULAR_INTENSITYMAP
	uniform mat3 specularIntensityMapTransform;
	varying vec2 vSpecularIntensityMapUv;
#endif
#ifdef USE_TRANSMISSIONMAP
	uniform mat3 transmissionMapTransform;
	varying vec2 vTransmissionMapUv;
#endif
#ifdef USE_THICKNESSMAP
	uniform mat3 thicknessMapTransform;
	varying vec2 vThicknessMapUv;
#endif`,l0=`#if defined( USE_UV ) || defined( USE_ANISOTROPY )
	vUv = vec3( uv, 1 ).xy;
#endif
#ifdef USE_MAP
	vMapUv = ( mapTransform * vec3( MAP_UV, 1 ) ).xy;
#endif
#ifdef USE_ALPHAMAP
	vAlphaMapUv = ( alphaMapTransform * vec3( ALPHAMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_LIGHTMAP
	vLightMapUv = ( lightMapTransform * vec3( LIGHTMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_AOMAP
	vAoMapUv = ( aoMapTransform * vec3( AOMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_BUMPMAP
	vBumpMapUv = ( bumpMapTransform * vec3( BUMPMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_NORMALMAP
	vNormalMapUv = ( normalMapTransform * vec3( NORMALMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_DISPLACEMENTMAP
	vDisplacementMapUv = ( displacementMapTransform * vec3( DISPLACEMENTMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_EMISSIVEMAP
	vEmissiveMapUv = ( emissiveMapTransform * vec3( EMISSIVEMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_METALNESSMAP
	vMetalnessMapUv = ( metalnessMapTransform * vec3( METALNESSMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_ROUGHNESSMAP
	vRoughnessMapUv = ( roughnessMapTransform * vec3( ROUGHNESSMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_DIFFUSE_ROUGHNESSMAP
	vDiffuseRoughnessMapUv = ( diffuseRoughnessMapTransform * vec3( DIFFUSE_ROUGHNESSMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_ANISOTROPYMAP
	vAnisotropyMapUv = ( anisotropyMapTransform * vec3( ANISOTROPYMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_CLEARCOATMAP
	vClearcoatMapUv = ( clearcoatMapTransform * vec3( CLEARCOATMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_CLEARCOAT_NORMALMAP
	vClearcoatNormalMapUv = ( clearcoatNormalMapTransform * vec3( CLEARCOAT_NORMALMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_CLEARCOAT_ROUGHNESSMAP
	vClearcoatRoughnessMapUv = ( clearcoatRoughnessMapTransform * vec3( CLEARCOAT_ROUGHNESSMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_IRIDESCENCEMAP
	vIridescenceMapUv = ( iridescenceMapTransform * vec3( IRIDESCENCEMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_IRIDESCENCE_THICKNESSMAP
	vIridescenceThicknessMapUv = ( iridescenceThicknessMapTransform * vec3( IRIDESCENCE_THICKNESSMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_SHEEN_COLORMAP
	vSheenColorMapUv = ( sheenColorMapTransform * vec3( SHEEN_COLORMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_SHEEN_ROUGHNESSMAP
	vSheenRoughnessMapUv = ( sheenRoughnessMapTransform * vec3( SHEEN_ROUGHNESSMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_SPECULARMAP
	vSpecularMapUv = ( specularMapTransform * vec3( SPECULARMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_SPECULAR_COLORMAP
	vSpecularColorMapUv = ( specularColorMapTransform * vec3( SPECULAR_COLORMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_SPECULAR_INTENSITYMAP
	vSpecularIntensityMapUv = ( specularIntensityMapTransform * vec3( SPECULAR_INTENSITYMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_TRANSMISSIONMAP
	vTransmissionMapUv = ( transmissionMapTransform * vec3( TRANSMISSIONMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_THICKNESSMAP
	vThicknessMapUv = ( thicknessMapTransform * vec3( THICKNESSMAP_UV, 1 ) ).xy;
#endif`,c0=`#if defined( USE_ENVMAP ) || defined( DISTANCE ) || defined ( USE_SHADOWMAP ) || defined ( USE_TRANSMISSION ) || NUM_SPOT_LIGHT_COORDS > 0
	vec4 worldPosition = vec4( transformed, 1.0 );
	#ifdef USE_BATCHING
		worldPosition = batchingMatrix * worldPosition;
	#endif
	#ifdef USE_INSTANCING
		worldPosition = instanceMatrix * worldPosition;
	#endif
	worldPosition = modelMatrix * worldPosition;
#endif`,h0=`varying vec2 vUv;
uniform mat3 uvTransform;
void main() {
	vUv = ( uvTransform * vec3( uv, 1 ) ).xy;
	gl_Position = vec4( position.xy, 1.0, 1.0 );
}`,u0=`uniform sampler2D t2D;
uniform float backgroundIntensity;
varying vec2 vUv;
void main() {
	vec4 texColor = texture2D( t2D, vUv );
	#ifdef DECODE_VIDEO_TEXTURE
		texColor = vec4( mix( pow( texColor.rgb * 0.9478672986 + vec3( 0.0521327014 ), vec3( 2.4 ) ), texColor.rgb * 0.0773993808, vec3( lessThanEqual( texColor.rgb, vec3( 0.04045 ) ) ) ), texColor.w );
	#endif
	texColor.rgb *= backgroundIntensity;
	gl_FragColor = texColor;
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
}`,d0=`varying vec3 vWorldDirection;
#include <common>
void main() {
	vWorldDirection = transformDirection( position, modelMatrix );
	#include <begin_vertex>
	#include <project_vertex>
	gl_Position.z = gl_Position.w;
}`,f0=`uniform float backgroundBlurriness;
uniform float backgroundIntensity;
uniform mat3 backgroundRotation;
varying vec3 vWorldDirection;
#include <envmap_common_pars_fragment>
void main() {
	#ifdef ENVMAP_TYPE_PMREM
		vec4 texColor = textureLod( envMap, backgroundRotation * vWorldDirection, roughnessToMip( backgroundBlurriness ) );
	#else
		vec4 texColor = textureCube( envMap, backgroundRotation * vWorldDirection );
	#endif
	texColor.rgb *= backgroundIntensity;
	gl_FragColor = texColor;
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
}`,p0=`varying vec3 vWorldDirection;
#include <common>
void main() {
	vWorldDirection = transformDirection( position, modelMatrix );
	#include <begin_vertex>
	#include <project_vertex>
	gl_Position.z = gl_Position.w;
}`,m0=`uniform samplerCube tCube;
uniform float tFlip;
uniform float opacity;
varying vec3 vWorldDirection;
void main() {
	vec4 texColor = textureCube( tCube, vec3( tFlip * vWorldDirection.x, vWorldDirection.yz ) );
	gl_FragColor = texColor;
	gl_FragColor.a *= opacity;
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
}`,g0=`#include <common>
#include <batching_pars_vertex>
#include <uv_pars_vertex>
#include <displacementmap_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
varying vec2 vHighPrecisionZW;
void main() {
	#include <uv_vertex>
	#include <batching_vertex>
	#include <skinbase_vertex>
	#include <morphinstance_vertex>
	#ifdef USE_DISPLACEMENTMAP
		#include <beginnormal_vertex>
		#include <morphnormal_vertex>
		#include <skinnormal_vertex>
	#endif
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <displacementmap_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	vHighPrecisionZW = gl_Position.zw;
}`,_0=`#if DEPTH_PACKING == 3200
	uniform float opacity;
#endif
#include <common>
#include <packing>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <alphamap_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
varying vec2 vHighPrecisionZW;
void main() {
	vec4 diffuseColor = vec4( 1.0 );
	#include <clipping_planes_fragment>
	#if DEPTH_PACKING == 3200
		diffuseColor.a = opacity;
	#endif
	#include <map_fragment>
	#include <alphamap_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	#include <logdepthbuf_fragment>
	#ifdef USE_REVERSED_DEPTH_BUFFER
		float fragCoordZ = vHighPrecisionZW[ 0 ] / vHighPrecisionZW[ 1 ];
	#else
		float fragCoordZ = 0.5 * vHighPrecisionZW[ 0 ] / vHighPrecisionZW[ 1 ] + 0.5;
	#endif
	#if DEPTH_PACKING == 3200
		gl_FragColor = vec4( vec3( 1.0 - fragCoordZ ), opacity );
	#elif DEPTH_PACKING == 3201
		gl_FragColor = packDepthToRGBA( fragCoordZ );
	#elif DEPTH_PACKING == 3202
		gl_FragColor = vec4( packDepthToRGB( fragCoordZ ), 1.0 );
	#elif DEPTH_PACKING == 3203
		gl_FragColor = vec4( packDepthToRG( fragCoordZ ), 0.0, 1.0 );
	#endif
}`,v0=`#define DISTANCE
varying vec3 vWorldPosition;
#include <common>
#include <batching_pars_vertex>
#include <uv_pars_vertex>
#include <displacementmap_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	#include <uv_vertex>
	#include <batching_vertex>
	#include <skinbase_vertex>
	#include <morphinstance_vertex>
	#ifdef USE_DISPLACEMENTMAP
		#include <beginnormal_vertex>
		#include <morphnormal_vertex>
		#include <skinnormal_vertex>
	#endif
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <displacementmap_vertex>
	#include <project_vertex>
	#include <worldpos_vertex>
	#include <clipping_planes_vertex>
	vWorldPosition = worldPosition.xyz;
}`,x0=`#define DISTANCE
uniform vec3 referencePosition;
uniform float nearDistance;
uniform float farDistance;
varying vec3 vWorldPosition;
#include <common>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <alphamap_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( 1.0 );
	#include <clipping_planes_fragment>
	#include <map_fragment>
	#include <alphamap_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	float dist = length( vWorldPosition - referencePosition );
	dist = ( dist - nearDistance ) / ( farDistance - nearDistance );
	dist = saturate( dist );
	gl_FragColor = vec4( dist, 0.0, 0.0, 1.0 );
}`,y0=`varying vec3 vWorldDirection;
#include <common>
void main() {
	vWorldDirection = transformDirection( position, modelMatrix );
	#include <begin_vertex>
	#include <project_vertex>
}`,b0=`uniform sampler2D tEquirect;
varying vec3 vWorldDirection;
#include <common>
void main() {
	vec3 direction = normalize( vWorldDirection );
	vec2 sampleUV = equirectUv( direction );
	gl_FragColor = texture2D( tEquirect, sampleUV );
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
}`,M0=`uniform float scale;
attribute float lineDistance;
varying float vLineDistance;
#include <common>
#include <uv_pars_vertex>
#include <color_pars_vertex>
#include <fog_pars_vertex>
#include <morphtarget_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	vLineDistance = scale * lineDistance;
	#include <uv_vertex>
	#include <color_vertex>
	#include <morphinstance_vertex>
	#include <morphcolor_vertex>
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	#include <fog_vertex>
}`,S0=`uniform vec3 diffuse;
uniform float opacity;
uniform float dashSize;
uniform float totalSize;
varying float vLineDistance;
#include <common>
#include <color_pars_fragment>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <fog_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( diffuse, opacity );
	#include <clipping_planes_fragment>
	if ( mod( vLineDistance, totalSize ) > dashSize ) {
		discard;
	}
	vec3 outgoingLight = vec3( 0.0 );
	#include <logdepthbuf_fragment>
	#include <map_fragment>
	#include <color_fragment>
	outgoingLight = diffuseColor.rgb;
	#include <opaque_fragment>
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
	#include <premultiplied_alpha_fragment>
}`,w0=`#include <common>
#include <batching_pars_vertex>
#include <uv_pars_vertex>
#include <envmap_pars_vertex>
#include <color_pars_vertex>
#include <fog_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	#include <uv_vertex>
	#include <color_vertex>
	#include <morphinstance_vertex>
	#include <morphcolor_vertex>
	#include <batching_vertex>
	#if defined ( USE_ENVMAP ) || defined ( USE_SKINNING )
		#include <beginnormal_vertex>
		#include <morphnormal_vertex>
		#include <skinbase_vertex>
		#include <skinnormal_vertex>
		#include <defaultnormal_vertex>
	#endif
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	#include <worldpos_vertex>
	#include <envmap_vertex>
	#include <fog_vertex>
}`,T0=`uniform vec3 diffuse;
uniform float opacity;
#ifndef FLAT_SHADED
	varying vec3 vNormal;
#endif
#include <common>
#include <dithering_pars_fragment>
#include <color_pars_fragment>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <alphamap_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <aomap_pars_fragment>
#include <lightmap_pars_fragment>
#include <envmap_common_pars_fragment>
#include <envmap_pars_fragment>
#include <fog_pars_fragment>
#include <specularmap_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( diffuse, opacity );
	#include <clipping_planes_fragment>
	#include <logdepthbuf_fragment>
	#include <map_fragment>
	#include <color_fragment>
	#include <alphamap_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	#include <specularmap_fragment>
	ReflectedLight reflectedLight = ReflectedLight( vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ) );
	#ifdef USE_LIGHTMAP
		vec4 lightMapTexel = texture2D( lightMap, vLightMapUv );
		reflectedLight.indirectDiffuse += lightMapTexel.rgb * lightMapIntensity * RECIPROCAL_PI;
	#else
		reflectedLight.indirectDiffuse += vec3( 1.0 );
	#endif
	#include <aomap_fragment>
	reflectedLight.indirectDiffuse *= diffuseColor.rgb;
	vec3 outgoingLight = reflectedLight.indirectDiffuse;
	#include <envmap_fragment>
	#include <opaque_fragment>
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
	#include <premultiplied_alpha_fragment>
	#include <dithering_fragment>
}`,E0=`#define LAMBERT
varying vec3 vViewPosition;
#include <common>
#include <batching_pars_vertex>
#include <uv_pars_vertex>
#include <displacementmap_pars_vertex>
#include <envmap_pars_vertex>
#include <color_pars_vertex>
#include <fog_pars_vertex>
#include <normal_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <shadowmap_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	#include <uv_vertex>
	#include <color_vertex>
	#include <morphinstance_vertex>
	#include <morphcolor_vertex>
	#include <batching_vertex>
	#include <beginnormal_vertex>
	#include <morphnormal_vertex>
	#include <skinbase_vertex>
	#include <skinnormal_vertex>
	#include <defaultnormal_vertex>
	#include <normal_vertex>
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <displacementmap_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	vViewPosition = - mvPosition.xyz;
	#include <worldpos_vertex>
	#include <envmap_vertex>
	#include <shadowmap_vertex>
	#include <fog_vertex>
}`,A0=`#define LAMBERT
uniform vec3 diffuse;
uniform vec3 emissive;
uniform float opacity;
#include <common>
#include <dithering_pars_fragment>
#include <color_pars_fragment>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <alphamap_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <aomap_pars_fragment>
#include <lightmap_pars_fragment>
#include <emissivemap_pars_fragment>
#include <envmap_common_pars_fragment>
#include <envmap_pars_fragment>
#include <envmap_physical_pars_fragment>
#include <fog_pars_fragment>
#include <bsdfs>
#include <lights_pars_begin>
#include <normal_pars_fragment>
#include <lights_lambert_pars_fragment>
#include <shadowmap_pars_fragment>
#include <bumpmap_pars_fragment>
#include <normalmap_pars_fragment>
#include <specularmap_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( diffuse, opacity );
	#include <clipping_planes_fragment>
	ReflectedLight reflectedLight = ReflectedLight( vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ) );
	vec3 totalEmissiveRadiance = emissive;
	#include <logdepthbuf_fragment>
	#include <map_fragment>
	#include <color_fragment>
	#include <alphamap_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	#include <specularmap_fragment>
	#include <normal_fragment_begin>
	#include <normal_fragment_maps>
	#include <emissivemap_fragment>
	#include <lights_lambert_fragment>
	#include <lights_fragment_begin>
	#include <lights_fragment_maps>
	#include <lights_fragment_end>
	#include <aomap_fragment>
	vec3 outgoingLight = reflectedLight.directDiffuse + reflectedLight.indirectDiffuse + totalEmissiveRadiance;
	#include <envmap_fragment>
	#include <opaque_fragment>
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
	#include <premultiplied_alpha_fragment>
	#include <dithering_fragment>
}`,R0=`#define MATCAP
varying vec3 vViewPosition;
#include <common>
#include <batching_pars_vertex>
#include <uv_pars_vertex>
#include <color_pars_vertex>
#include <displacementmap_pars_vertex>
#include <fog_pars_vertex>
#include <normal_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	#include <uv_vertex>
	#include <color_vertex>
	#include <morphinstance_vertex>
	#include <morphcolor_vertex>
	#include <batching_vertex>
	#include <beginnormal_vertex>
	#include <morphnormal_vertex>
	#include <skinbase_vertex>
	#include <skinnormal_vertex>
	#include <defaultnormal_vertex>
	#include <normal_vertex>
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <displacementmap_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	#include <fog_vertex>
	vViewPosition = - mvPosition.xyz;
}`,C0=`#define MATCAP
uniform vec3 diffuse;
uniform float opacity;
uniform sampler2D matcap;
varying vec3 vViewPosition;
#include <common>
#include <dithering_pars_fragment>
#include <color_pars_fragment>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <alphamap_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <fog_pars_fragment>
#include <normal_pars_fragment>
#include <bumpmap_pars_fragment>
#include <normalmap_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( diffuse, opacity );
	#include <clipping_planes_fragment>
	#include <logdepthbuf_fragment>
	#include <map_fragment>
	#include <color_fragment>
	#include <alphamap_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	#include <normal_fragment_begin>
	#include <normal_fragment_maps>
	vec3 viewDir = normalize( vViewPosition );
	vec3 x = normalize( vec3( viewDir.z, 0.0, - viewDir.x ) );
	vec3 y = cross( viewDir, x );
	vec2 uv = vec2( dot( x, normal ), dot( y, normal ) ) * 0.495 + 0.5;
	#ifdef USE_MATCAP
		vec4 matcapColor = texture2D( matcap, uv );
	#else
		vec4 matcapColor = vec4( vec3( mix( 0.2, 0.8, uv.y ) ), 1.0 );
	#endif
	vec3 outgoingLight = diffuseColor.rgb * matcapColor.rgb;
	#include <opaque_fragment>
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
	#include <premultiplied_alpha_fragment>
	#include <dithering_fragment>
}`,P0=`#define NORMAL
#if defined( FLAT_SHADED ) || defined( USE_BUMPMAP ) || defined( USE_NORMALMAP_TANGENTSPACE )
	varying vec3 vViewPosition;
#endif
#include <common>
#include <batching_pars_vertex>
#include <uv_pars_vertex>
#include <displacementmap_pars_vertex>
#include <normal_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	#include <uv_vertex>
	#include <batching_vertex>
	#include <beginnormal_vertex>
	#include <morphinstance_vertex>
	#include <morphnormal_vertex>
	#include <skinbase_vertex>
	#include <skinnormal_vertex>
	#include <defaultnormal_vertex>
	#include <normal_vertex>
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <displacementmap_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
#if defined( FLAT_SHADED ) || defined( USE_BUMPMAP ) || defined( USE_NORMALMAP_TANGENTSPACE )
	vViewPosition = - mvPosition.xyz;
#endif
}`,I0=`#define NORMAL
uniform float opacity;
#if defined( FLAT_SHADED ) || defined( USE_BUMPMAP ) || defined( USE_NORMALMAP_TANGENTSPACE )
	varying vec3 vViewPosition;
#endif
#include <uv_pars_fragment>
#include <normal_pars_fragment>
#include <bumpmap_pars_fragment>
#include <normalmap_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( 0.0, 0.0, 0.0, opacity );
	#include <clipping_planes_fragment>
	#include <logdepthbuf_fragment>
	#include <normal_fragment_begin>
	#include <normal_fragment_maps>
	gl_FragColor = vec4( normalize( normal ) * 0.5 + 0.5, diffuseColor.a );
	#ifdef OPAQUE
		gl_FragColor.a = 1.0;
	#endif
}`,L0=`#define PHONG
varying vec3 vViewPosition;
#include <common>
#include <batching_pars_vertex>
#include <uv_pars_vertex>
#include <displacementmap_pars_vertex>
#include <envmap_pars_vertex>
#include <color_pars_vertex>
#include <fog_pars_vertex>
#include <normal_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <shadowmap_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	#include <uv_vertex>
	#include <color_vertex>
	#include <morphcolor_vertex>
	#include <batching_vertex>
	#include <beginnormal_vertex>
	#include <morphinstance_vertex>
	#include <morphnormal_vertex>
	#include <skinbase_vertex>
	#include <skinnormal_vertex>
	#include <defaultnormal_vertex>
	#include <normal_vertex>
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <displacementmap_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	vViewPosition = - mvPosition.xyz;
	#include <worldpos_vertex>
	#include <envmap_vertex>
	#include <shadowmap_vertex>
	#include <fog_vertex>
}`,N0=`#define PHONG
uniform vec3 diffuse;
uniform vec3 emissive;
uniform vec3 specular;
uniform float shininess;
uniform float opacity;
#include <common>
#include <dithering_pars_fragment>
#include <color_pars_fragment>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <alphamap_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <aomap_pars_fragment>
#include <lightmap_pars_fragment>
#include <emissivemap_pars_fragment>
#include <envmap_common_pars_fragment>
#include <envmap_pars_fragment>
#include <envmap_physical_pars_fragment>
#include <fog_pars_fragment>
#include <bsdfs>
#include <lights_pars_begin>
#include <normal_pars_fragment>
#include <lights_phong_pars_fragment>
#include <shadowmap_pars_fragment>
#include <bumpmap_pars_fragment>
#include <normalmap_pars_fragment>
#include <specularmap_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( diffuse, opacity );
	#include <clipping_planes_fragment>
	ReflectedLight reflectedLight = ReflectedLight( vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ) );
	vec3 totalEmissiveRadiance = emissive;
	#include <logdepthbuf_fragment>
	#include <map_fragment>
	#include <color_fragment>
	#include <alphamap_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	#include <specularmap_fragment>
	#include <normal_fragment_begin>
	#include <normal_fragment_maps>
	#include <emissivemap_fragment>
	#include <lights_phong_fragment>
	#include <lights_fragment_begin>
	#include <lights_fragment_maps>
	#include <lights_fragment_end>
	#include <aomap_fragment>
	vec3 outgoingLight = reflectedLight.directDiffuse + reflectedLight.indirectDiffuse + reflectedLight.directSpecular + reflectedLight.indirectSpecular + totalEmissiveRadiance;
	#include <envmap_fragment>
	#include <opaque_fragment>
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
	#include <premultiplied_alpha_fragment>
	#include <dithering_fragment>
}`,D0=`#define STANDARD
varying vec3 vViewPosition;
#ifdef USE_TRANSMISSION
	varying vec3 vWorldPosition;
#endif
#include <common>
#include <batching_pars_vertex>
#include <uv_pars_vertex>
#include <displacementmap_pars_vertex>
#include <color_pars_vertex>
#include <fog_pars_vertex>
#include <normal_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <shadowmap_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	#include <uv_vertex>
	#include <color_vertex>
	#include <morphinstance_vertex>
	#include <morphcolor_vertex>
	#include <batching_vertex>
	#include <beginnormal_vertex>
	#include <morphnormal_vertex>
	#include <skinbase_vertex>
	#include <skinnormal_vertex>
	#include <defaultnormal_vertex>
	#include <normal_vertex>
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <displacementmap_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	vViewPosition = - mvPosition.xyz;
	#include <worldpos_vertex>
	#include <shadowmap_vertex>
	#include <fog_vertex>
#ifdef USE_TRANSMISSION
	vWorldPosition = worldPosition.xyz;
#endif
}`,U0=`#define STANDARD
#ifdef PHYSICAL
	#define IOR
	#define USE_SPECULAR
#endif
uniform vec3 diffuse;
uniform vec3 emissive;
uniform float roughness;
uniform float metalness;
uniform float opacity;
#ifdef IOR
	uniform float ior;
#endif
#ifdef USE_SPECULAR
	uniform float specularIntensity;
	uniform vec3 specularColor;
	#ifdef USE_SPECULAR_COLORMAP
		uniform sampler2D specularColorMap;
	#endif
	#ifdef USE_SPECULAR_INTENSITYMAP
		uniform sampler2D specularIntensityMap;
	#endif
#endif
#ifdef USE_CLEARCOAT
	uniform float clearcoat;
	uniform float clearcoatRoughness;
#endif
#ifdef USE_DIFFUSE_ROUGHNESS
	uniform float diffuseRoughness;
	#ifdef USE_DIFFUSE_ROUGHNESSMAP
		uniform sampler2D diffuseRoughnessMap;
	#endif
#endif
#ifdef USE_DISPERSION
	uniform float dispersion;
#endif
#ifdef USE_RETROREFLECTION
	uniform float retroreflectivity;
#endif
#ifdef USE_IRIDESCENCE
	uniform float iridescence;
	uniform float iridescenceIOR;
	uniform float iridescenceThicknessMinimum;
	uniform float iridescenceThicknessMaximum;
#endif
#ifdef USE_SHEEN
	uniform vec3 sheenColor;
	uniform float sheenRoughness;
	#ifdef USE_SHEEN_COLORMAP
		uniform sampler2D sheenColorMap;
	#endif
	#ifdef USE_SHEEN_ROUGHNESSMAP
		uniform sampler2D sheenRoughnessMap;
	#endif
#endif
#ifdef USE_ANISOTROPY
	uniform vec2 anisotropyVector;
	#ifdef USE_ANISOTROPYMAP
		uniform sampler2D anisotropyMap;
	#endif
#endif
varying vec3 vViewPosition;
#include <common>
#include <dithering_pars_fragment>
#include <color_pars_fragment>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <alphamap_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <aomap_pars_fragment>
#include <lightmap_pars_fragment>
#include <emissivemap_pars_fragment>
#include <iridescence_fragment>
#include <envmap_common_pars_fragment>
#include <envmap_physical_pars_fragment>
#include <fog_pars_fragment>
#include <lights_pars_begin>
#include <normal_pars_fragment>
#include <lights_physical_pars_fragment>
#include <transmission_pars_fragment>
#include <shadowmap_pars_fragment>
#include <bumpmap_pars_fragment>
#include <normalmap_pars_fragment>
#include <clearcoat_pars_fragment>
#include <iridescence_pars_fragment>
#include <roughnessmap_pars_fragment>
#include <metalnessmap_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( diffuse, opacity );
	#include <clipping_planes_fragment>
	ReflectedLight reflectedLight = ReflectedLight( vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ) );
	vec3 totalEmissiveRadiance = emissive;
	#include <logdepthbuf_fragment>
	#include <map_fragment>
	#include <color_fragment>
	#include <alphamap_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	#include <roughnessmap_fragment>
	#include <metalnessmap_fragment>
	#include <normal_fragment_begin>
	#include <normal_fragment_maps>
	#include <clearcoat_normal_fragment_begin>
	#include <clearcoat_normal_fragment_maps>
	#include <emissivemap_fragment>
	#include <lights_physical_fragment>
	#include <lights_fragment_begin>
	#include <lights_fragment_maps>
	#include <lights_fragment_end>
	#include <aomap_fragment>
	vec3 totalDiffuse = reflectedLight.directDiffuse + reflectedLight.indirectDiffuse;
	vec3 totalSpecular = reflectedLight.directSpecular + reflectedLight.indirectSpecular;
	#include <transmission_fragment>
	vec3 outgoingLight = totalDiffuse + totalSpecular + totalEmissiveRadiance;
	#ifdef USE_SHEEN
 
		outgoingLight = outgoingLight + sheenSpecularDirect + sheenSpecularIndirect;
 
 	#endif
	#ifdef USE_CLEARCOAT
		float dotNVcc = saturate( dot( geometryClearcoatNormal, geometryViewDir ) );
		vec3 Fcc = F_Schlick( material.clearcoatF0, material.clearcoatF90, dotNVcc );
		outgoingLight = outgoingLight * ( 1.0 - material.clearcoat * Fcc ) + ( clearcoatSpecularDirect + clearcoatSpecularIndirect ) * material.clearcoat;
	#endif
	#include <opaque_fragment>
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
	#include <premultiplied_alpha_fragment>
	#include <dithering_fragment>
}`,F0=`#define TOON
varying vec3 vViewPosition;
#include <common>
#include <batching_pars_vertex>
#include <uv_pars_vertex>
#include <displacementmap_pars_vertex>
#include <color_pars_vertex>
#include <fog_pars_vertex>
#include <normal_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <shadowmap_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	#include <uv_vertex>
	#include <color_vertex>
	#include <morphinstance_vertex>
	#include <morphcolor_vertex>
	#include <batching_vertex>
	#include <beginnormal_vertex>
	#include <morphnormal_vertex>
	#include <skinbase_vertex>
	#include <skinnormal_vertex>
	#include <defaultnormal_vertex>
	#include <normal_vertex>
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <displacementmap_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	vViewPosition = - mvPosition.xyz;
	#include <worldpos_vertex>
	#include <shadowmap_vertex>
	#include <fog_vertex>
}`,O0=`#define TOON
uniform vec3 diffuse;
uniform vec3 emissive;
uniform float opacity;
#include <common>
#include <dithering_pars_fragment>
#include <color_pars_fragment>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <alphamap_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <aomap_pars_fragment>
#include <lightmap_pars_fragment>
#include <emissivemap_pars_fragment>
#include <gradientmap_pars_fragment>
#include <fog_pars_fragment>
#include <bsdfs>
#include <lights_pars_begin>
#include <normal_pars_fragment>
#include <lights_toon_pars_fragment>
#include <shadowmap_pars_fragment>
#include <bumpmap_pars_fragment>
#include <normalmap_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( diffuse, opacity );
	#include <clipping_planes_fragment>
	ReflectedLight reflectedLight = ReflectedLight( vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ) );
	vec3 totalEmissiveRadiance = emissive;
	#include <logdepthbuf_fragment>
	#include <map_fragment>
	#include <color_fragment>
	#include <alphamap_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	#include <normal_fragment_begin>
	#include <normal_fragment_maps>
	#include <emissivemap_fragment>
	#include <lights_toon_fragment>
	#include <lights_fragment_begin>
	#include <lights_fragment_maps>
	#include <lights_fragment_end>
	#include <aomap_fragment>
	vec3 outgoingLight = reflectedLight.directDiffuse + reflectedLight.indirectDiffuse + totalEmissiveRadiance;
	#include <opaque_fragment>
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
	#include <premultiplied_alpha_fragment>
	#include <dithering_fragment>
}`,k0=`uniform float size;
uniform float scale;
#include <common>
#include <color_pars_vertex>
#include <fog_pars_vertex>
#include <morphtarget_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
#ifdef USE_POINTS_UV
	varying vec2 vUv;
	uniform mat3 uvTransform;
#endif
void main() {
	#ifdef USE_POINTS_UV
		vUv = ( uvTransform * vec3( uv, 1 ) ).xy;
	#endif
	#include <color_vertex>
	#include <morphinstance_vertex>
	#include <morphcolor_vertex>
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <project_vertex>
	gl_PointSize = size;
	#ifdef USE_SIZEATTENUATION
		bool isPerspective = isPerspectiveMatrix( projectionMatrix );
		if ( isPerspective ) gl_PointSize *= ( scale / - mvPosition.z );
	#endif
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	#include <worldpos_vertex>
	#include <fog_vertex>
}`,B0=`uniform vec3 diffuse;
uniform float opacity;
#include <common>
#include <color_pars_fragment>
#include <map_particle_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <fog_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( diffuse, opacity );
	#include <clipping_planes_fragment>
	vec3 outgoingLight = vec3( 0.0 );
	#include <logdepthbuf_fragment>
	#include <map_particle_fragment>
	#include <color_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	outgoingLight = diffuseColor.rgb;
	#include <opaque_fragment>
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
	#include <premultiplied_alpha_fragment>
}`,z0=`#include <common>
#include <batching_pars_vertex>
#include <fog_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <shadowmap_pars_vertex>
void main() {
	#include <batching_vertex>
	#include <beginnormal_vertex>
	#include <morphinstance_vertex>
	#include <morphnormal_vertex>
	#include <skinbase_vertex>
	#include <skinnormal_vertex>
	#include <defaultnormal_vertex>
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <worldpos_vertex>
	#include <shadowmap_vertex>
	#include <fog_vertex>
}`,G0=`uniform vec3 color;
uniform float opacity;
#include <common>
#include <fog_pars_fragment>
#include <bsdfs>
#include <lights_pars_begin>
#include <logdepthbuf_pars_fragment>
#include <shadowmap_pars_fragment>
#include <shadowmask_pars_fragment>
void main() {
	#include <logdepthbuf_fragment>
	gl_FragColor = vec4( color, opacity * ( 1.0 - getShadowMask() ) );
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
	#include <premultiplied_alpha_fragment>
}`,V0=`uniform float rotation;
uniform vec2 center;
#include <common>
#include <uv_pars_vertex>
#include <fog_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	#include <uv_vertex>
	vec4 mvPosition = modelViewMatrix[ 3 ];
	vec2 scale = vec2( length( modelMatrix[ 0 ].xyz ), length( modelMatrix[ 1 ].xyz ) );
	#ifndef USE_SIZEATTENUATION
		bool isPerspective = isPerspectiveMatrix( projectionMatrix );
		if ( isPerspective ) scale *= - mvPosition.z;
	#endif
	vec2 alignedPosition = ( position.xy - ( center - vec2( 0.5 ) ) ) * scale;
	vec2 rotatedPosition;
	rotatedPosition.x = cos( rotation ) * alignedPosition.x - sin( rotation ) * alignedPosition.y;
	rotatedPosition.y = sin( rotation ) * alignedPosition.x + cos( rotation ) * alignedPosition.y;
	mvPosition.xy += rotatedPosition;
	gl_Position = projectionMatrix * mvPosition;
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	#include <fog_vertex>
}`,H0=`uniform vec3 diffuse;
uniform float opacity;
#include <common>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <alphamap_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <fog_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( diffuse, opacity );
	#include <clipping_planes_fragment>
	vec3 outgoingLight = vec3( 0.0 );
	#include <logdepthbuf_fragment>
	#include <map_fragment>
	#include <alphamap_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	outgoingLight = diffuseColor.rgb;
	#include <opaque_fragment>
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
}`,qe={alphahash_fragment:um,alphahash_pars_fragment:dm,alphamap_fragment:fm,alphamap_pars_fragment:pm,alphatest_fragment:mm,alphatest_pars_fragment:gm,aomap_fragment:_m,aomap_pars_fragment:vm,batching_pars_vertex:xm,batching_vertex:ym,begin_vertex:bm,beginnormal_vertex:Mm,bsdfs:Sm,iridescence_fragment:wm,bumpmap_pars_fragment:Tm,clipping_planes_fragment:Em,clipping_planes_pars_fragment:Am,clipping_planes_pars_vertex:Rm,clipping_planes_vertex:Cm,color_fragment:Pm,color_pars_fragment:Im,color_pars_vertex:Lm,color_vertex:Nm,common:Dm,defaultnormal_vertex:Um,displacementmap_pars_vertex:Fm,displacementmap_vertex:Om,emissivemap_fragment:km,emissivemap_pars_fragment:Bm,colorspace_fragment:zm,colorspace_pars_fragment:Gm,envmap_fragment:Vm,envmap_common_pars_fragment:Hm,envmap_pars_fragment:Wm,envmap_pars_vertex:$m,envmap_physical_pars_fragment:ng,envmap_vertex:Xm,fog_vertex:qm,fog_pars_vertex:Ym,fog_fragment:Zm,fog_pars_fragment:Jm,gradientmap_pars_fragment:Km,lightmap_pars_fragment:jm,lights_lambert_fragment:Qm,lights_lambert_pars_fragment:eg,lights_pars_begin:tg,lights_toon_fragment:ig,lights_toon_pars_fragment:sg,lights_phong_fragment:rg,lights_phong_pars_fragment:ag,lights_physical_fragment:og,lights_physical_pars_fragment:lg,lights_fragment_begin:cg,lights_fragment_maps:hg,lights_fragment_end:ug,lightprobes_pars_fragment:dg,logdepthbuf_fragment:fg,logdepthbuf_pars_fragment:pg,logdepthbuf_pars_vertex:mg,logdepthbuf_vertex:gg,map_fragment:_g,map_pars_fragment:vg,map_particle_fragment:xg,map_particle_pars_fragment:yg,metalnessmap_fragment:bg,metalnessmap_pars_fragment:Mg,morphinstance_vertex:Sg,morphcolor_vertex:wg,morphnormal_vertex:Tg,morphtarget_pars_vertex:Eg,morphtarget_vertex:Ag,normal_fragment_begin:Rg,normal_fragment_maps:Cg,normal_pars_fragment:Pg,normal_pars_vertex:Ig,normal_vertex:Lg,normalmap_pars_fragment:Ng,clearcoat_normal_fragment_begin:Dg,clearcoat_normal_fragment_maps:Ug,clearcoat_pars_fragment:Fg,iridescence_pars_fragment:Og,opaque_fragment:kg,packing:Bg,premultiplied_alpha_fragment:zg,project_vertex:Gg,dithering_fragment:Vg,dithering_pars_fragment:Hg,roughnessmap_fragment:Wg,roughnessmap_pars_fragment:$g,shadowmap_pars_fragment:Xg,shadowmap_pars_vertex:qg,shadowmap_vertex:Yg,shadowmask_pars_fragment:Zg,skinbase_vertex:Jg,skinning_pars_vertex:Kg,skinning_vertex:jg,skinnormal_vertex:Qg,specularmap_fragment:e0,specularmap_pars_fragment:t0,tonemapping_fragment:n0,tonemapping_pars_fragment:i0,transmission_fragment:s0,transmission_pars_fragment:r0,uv_pars_fragment:a0,uv_pars_vertex:o0,uv_vertex:l0,worldpos_vertex:c0,background_vert:h0,background_frag:u0,backgroundCube_vert:d0,backgroundCube_frag:f0,cube_vert:p0,cube_frag:m0,depth_vert:g0,depth_frag:_0,distance_vert:v0,distance_frag:x0,equirect_vert:y0,equirect_frag:b0,linedashed_vert:M0,linedashed_frag:S0,meshbasic_vert:w0,meshbasic_frag:T0,meshlambert_vert:E0,meshlambert_frag:A0,meshmatcap_vert:R0,meshmatcap_frag:C0,meshnormal_vert:P0,meshnormal_frag:I0,meshphong_vert:L0,meshphong_frag:N0,meshphysical_vert:D0,meshphysical_frag:U0,meshtoon_vert:F0,meshtoon_frag:O0,points_vert:k0,points_frag:B0,shadow_vert:z0,shadow_frag:G0,sprite_vert:V0,sprite_frag:H0},be={common:{diffuse:{value:new je(16777215)},opacity:{value:1},map:{value:null},mapTransform:{value:new Ge},alphaMap:{value:null},alphaMapTransform:{value:new Ge},alphaTest:{value:0}},specularmap:{specularMap:{value:null},specularMapTransform:{value:new Ge}},envmap:{envMap:{value:null},envMapRotation:{value:new Ge},reflectivity:{value:1},ior:{value:1.5},refractionRatio:{value:.98},dfgLUT:{value:null}},aomap:{aoMap:{value:null},aoMapIntensity:{value:1},aoMapTransform:{value:new Ge}},lightmap:{lightMap:{value:null},lightMapIntensity:{value:1},lightMapTransform:{value:new Ge}},bumpmap:{bumpMap:{value:null},bumpMapTransform:{value:new Ge},bumpScale:{value:1}},normalmap:{normalMap:{value:null},normalMapTransform:{value:new Ge},normalScale:{value:new et(1,1)}},displacementmap:{displacementMap:{value:null},displacementMapTransform:{value:new Ge},displacementScale:{value:1},displacementBias:{value:0}},emissivemap:{emissiveMap:{value:null},emissiveMapTransform:{value:new Ge}},metalnessmap:{metalnessMap:{value:null},metalnessMapTransform:{value:new Ge}},roughnessmap:{roughnessMap:{value:null},roughnessMapTransform:{value:new Ge}},gradientmap:{gradientMap:{value:null}},fog:{fogDensity:{value:25e-5},fogNear:{value:1},fogFar:{value:2e3},fogColor:{value:new je(16777215)}},lights:{ambientLightColor:{value:[]},lightProbe:{value:[]},sunLights:{value:[],properties:{direction:{},color:{}}},sunLightShadows:{value:[],properties:{shadowIntensity:1,shadowBias:{},shadowNormalBias:{},shadowRadius:{},shadowMapSize:{}}},sunShadowMatrix:{value:[]},sunShadowCascade:{value:[]},directionalLights:{value:[],properties:{direction:{},color:{}}},directionalLightShadows:{value:[],properties:{shadowIntensity:1,shadowBias:{},shadowNormalBias:{},shadowRadius:{},shadowMapSize:{}}},directionalShadowMatrix:{value:[]},spotLights:{value:[],properties:{color:{},position:{},direction:{},distance:{},coneCos:{},penumbraCos:{},decay:{}}},spotLightShadows:{value:[],properties:{shadowIntensity:1,shadowBias:{},shadowNormalBias:{},shadowRadius:{},shadowMapSize:{}}},spotLightMap:{value:[]},spotLightMatrix:{value:[]},pointLights:{value:[],properties:{color:{},position:{},decay:{},distance:{}}},pointLightShadows:{value:[],properties:{shadowIntensity:1,shadowBias:{},shadowNormalBias:{},shadowRadius:{},shadowMapSize:{},shadowCameraNear:{},shadowCameraFar:{}}},pointShadowMatrix:{value:[]},hemisphereLights:{value:[],properties:{direction:{},skyColor:{},groundColor:{}}},rectAreaLights:{value:[],properties:{color:{},position:{},width:{},height:{}}},ltc_1:{value:null},ltc_2:{value:null},probesSH:{value:[]},probesMin:{value:[]},probesMax:{value:[]},probesResolution:{value:[]}},points:{diffuse:{value:new je(16777215)},opacity:{value:1},size:{value:1},scale:{value:1},map:{value:null},alphaMap:{value:null},alphaMapTransform:{value:new Ge},alphaTest:{value:0},uvTransform:{value:new Ge}},sprite:{diffuse:{value:new je(16777215)},opacity:{value:1},center:{value:new et(.5,.5)},rotation:{value:0},map:{value:null},mapTransform:{value:new Ge},alphaMap:{value:null},alphaMapTransform:{value:new Ge},alphaTest:{value:0}}},qn={basic:{uniforms:Gt([be.common,be.specularmap,be.envmap,be.aomap,be.lightmap,be.fog]),vertexShader:qe.meshbasic_vert,fragmentShader:qe.meshbasic_frag},lambert:{uniforms:Gt([be.common,be.specularmap,be.envmap,be.aomap,be.lightmap,be.emissivemap,be.bumpmap,be.normalmap,be.displacementmap,be.fog,be.lights,{emissive:{value:new je(0)},envMapIntensity:{value:1}}]),vertexShader:qe.meshlambert_vert,fragmentShader:qe.meshlambert_frag},phong:{uniforms:Gt([be.common,be.specularmap,be.envmap,be.aomap,be.lightmap,be.emissivemap,be.bumpmap,be.normalmap,be.displacementmap,be.fog,be.lights,{emissive:{value:new je(0)},specular:{value:new je(1118481)},shininess:{value:30},envMapIntensity:{value:1}}]),vertexShader:qe.meshphong_vert,fragmentShader:qe.meshphong_frag},standard:{uniforms:Gt([be.common,be.envmap,be.aomap,be.lightmap,be.emissivemap,be.bumpmap,be.normalmap,be.displacementmap,be.roughnessmap,be.metalnessmap,be.fog,be.lights,{emissive:{value:new je(0)},roughness:{value:1},metalness:{value:0},envMapIntensity:{value:1}}]),vertexShader:qe.meshphysical_vert,fragmentShader:qe.meshphysical_frag},toon:{uniforms:Gt([be.common,be.aomap,be.lightmap,be.emissivemap,be.bumpmap,be.normalmap,be.displacementmap,be.gradientmap,be.fog,be.lights,{emissive:{value:new je(0)}}]),vertexShader:qe.meshtoon_vert,fragmentShader:qe.meshtoon_frag},matcap:{uniforms:Gt([be.common,be.bumpmap,be.normalmap,be.displacementmap,be.fog,{matcap:{value:null}}]),vertexShader:qe.meshmatcap_vert,fragmentShader:qe.meshmatcap_frag},points:{uniforms:Gt([be.points,be.fog]),vertexShader:qe.points_vert,fragmentShader:qe.points_frag},dashed:{uniforms:Gt([be.common,be.fog,{scale:{value:1},dashSize:{value:1},totalSize:{value:2}}]),vertexShader:qe.linedashed_vert,fragmentShader:qe.linedashed_frag},depth:{uniforms:Gt([be.common,be.displacementmap]),vertexShader:qe.depth_vert,fragmentShader:qe.depth_frag},normal:{uniforms:Gt([be.common,be.bumpmap,be.normalmap,be.displacementmap,{opacity:{value:1}}]),vertexShader:qe.meshnormal_vert,fragmentShader:qe.meshnormal_frag},sprite:{uniforms:Gt([be.sprite,be.fog]),vertexShader:qe.sprite_vert,fragmentShader:qe.sprite_frag},background:{uniforms:{uvTransform:{value:new Ge},t2D:{value:null},backgroundIntensity:{value:1}},vertexShader:qe.background_vert,fragmentShader:qe.background_frag},backgroundCube:{uniforms:{envMap:{value:null},backgroundBlurriness:{value:0},backgroundIntensity:{value:1},backgroundRotation:{value:new Ge}},vertexShader:qe.backgroundCube_vert,fragmentShader:qe.backgroundCube_frag},cube:{uniforms:{tCube:{value:null},tFlip:{value:-1},opacity:{value:1}},vertexShader:qe.cube_vert,fragmentShader:qe.cube_frag},equirect:{uniforms:{tEquirect:{value:null}},vertexShader:qe.equirect_vert,fragmentShader:qe.equirect_frag},distance:{uniforms:Gt([be.common,be.displacementmap,{referencePosition:{value:new G},nearDistance:{value:1},farDistance:{value:1e3}}]),vertexShader:qe.distance_vert,fragmentShader:qe.distance_frag},shadow:{uniforms:Gt([be.lights,be.fog,{color:{value:new je(0)},opacity:{value:1}}]),vertexShader:qe.shadow_vert,fragmentShader:qe.shadow_frag}};qn.physical={uniforms:Gt([qn.standard.uniforms,{clearcoat:{value:0},clearcoatMap:{value:null},clearcoatMapTransform:{value:new Ge},clearcoatNormalMap:{value:null},clearcoatNormalMapTransform:{value:new Ge},clearcoatNormalScale:{value:new et(1,1)},clearcoatRoughness:{value:0},clearcoatRoughnessMap:{value:null},clearcoatRoughnessMapTransform:{value:new Ge},diffuseRoughness:{value:0},diffuseRoughnessMap:{value:null},diffuseRoughnessMapTransform:{value:new Ge},dispersion:{value:0},retroreflectivity:{value:0},iridescence:{value:0},iridescenceMap:{value:null},iridescenceMapTransform:{value:new Ge},iridescenceIOR:{value:1.3},iridescenceThicknessMinimum:{value:100},iridescenceThicknessMaximum:{value:400},iridescenceThicknessMap:{value:null},iridescenceThicknessMapTransform:{value:new Ge},sheen:{value:0},sheenColor:{value:new je(0)},sheenColorMap:{value:null},sheenColorMapTransform:{value:new Ge},sheenRoughness:{value:1},sheenRoughnessMap:{value:null},sheenRoughnessMapTransform:{value:new Ge},transmission:{value:0},transmissionMap:{value:null},transmissionMapTransform:{value:new Ge},transmissionSamplerSize:{value:new et},transmissionSamplerMap:{value:null},thickness:{value:0},thicknessMap:{value:null},thicknessMapTransform:{value:new Ge},attenuationDistance:{value:0},attenuationColor:{value:new je(0)},specularColor:{value:new je(1,1,1)},specularColorMap:{value:null},specularColorMapTransform:{value:new Ge},specularIntensity:{value:1},specularIntensityMap:{value:null},specularIntensityMapTransform:{value:new Ge},anisotropyVector:{value:new et},anisotropyMap:{value:null},anisotropyMapTransform:{value:new Ge}}]),vertexShader:qe.meshphysical_vert,fragmentShader:qe.meshphysical_frag};var ko={r:0,b:0,g:0},W0=new mt,Bd=new Ge;Bd.set(-1,0,0,0,1,0,0,0,1);function $0(i,e,t,n,s,r){let a=new je(0),o=s===!0?0:1,l,c,h=null,d=0,u=null;function f(M){let C=M.isScene===!0?M.background:null;if(C&&C.isTexture){let S=M.backgroundBlurriness>0;C=e.get(C,S)}return C}function g(M){let C=!1,S=f(M);S===null?_(a,o):S&&S.isColor&&(_(S,1),C=!0);let T=i.xr.getEnvironmentBlendMode();T==="additive"?t.buffers.color.setClear(0,0,0,1,r):T==="alpha-blend"&&t.buffers.color.setClear(0,0,0,0,r),(i.autoClear||C)&&(t.buffers.depth.setTest(!0),t.buffers.depth.setMask(!0),t.buffers.color.setMask(!0),i.clear(i.autoClearColor,i.autoClearDepth,i.autoClearStencil))}function v(M,C){let S=f(C);S&&S.isCubeTexture?(c===void 0&&(c=new At(new Rs(1,1,1),new Hn({name:"BackgroundCubeMaterial",uniforms:es(qn.backgroundCube.uniforms),vertexShader:qn.backgroundCube.vertexShader,fragmentShader:qn.backgroundCube.fragmentShader,side:qt,depthTest:!1,depthWrite:!1,fog:!1,allowOverride:!1})),c.geometry.deleteAttribute("normal"),c.geometry.deleteAttribute("uv"),c.onBeforeRender=function(T,A,x){this.matrixWorld.copyPosition(x.matrixWorld)},Object.defineProperty(c.material,"envMap",{get:function(){return this.uniforms.envMap.value}}),n.update(c)),c.material.uniforms.envMap.value=S,c.material.uniforms.backgroundBlurriness.value=C.backgroundBlurriness,c.material.uniforms.backgroundIntensity.value=C.backgroundIntensity,c.material.uniforms.backgroundRotation.value.setFromMatrix4(W0.makeRotationFromEuler(C.backgroundRotation)).transpose(),S.isRenderTargetTexture===!1&&c.material.uniforms.backgroundRotation.value.premultiply(Bd),c.material.toneMapped=Ke.getTransfer(S.colorSpace)!==it,(h!==S||d!==S.version||u!==i.toneMapping)&&(c.material.needsUpdate=!0,h=S,d=S.version,u=i.toneMapping),c.layers.enableAll(),M.unshift(c,c.geometry,c.material,0,0,null)):S&&S.isTexture&&(l===void 0&&(l=new At(new dr(2,2),new Hn({name:"BackgroundMaterial",uniforms:es(qn.background.uniforms),vertexShader:qn.background.vertexShader,fragmentShader:qn.background.fragmentShader,side:Ii,depthTest:!1,depthWrite:!1,fog:!1,allowOverride:!1})),l.geometry.deleteAttribute("normal"),Object.defineProperty(l.material,"map",{get:function(){return this.uniforms.t2D.value}}),n.update(l)),l.material.uniforms.t2D.value=S,l.material.uniforms.backgroundIntensity.value=C.backgroundIntensity,l.material.toneMapped=Ke.getTransfer(S.colorSpace)!==it,S.matrixAutoUpdate===!0&&S.updateMatrix(),l.material.uniforms.uvTransform.value.copy(S.matrix),(h!==S||d!==S.version||u!==i.toneMapping)&&(l.material.needsUpdate=!0,h=S,d=S.version,u=i.toneMapping),l.layers.enableAll(),M.unshift(l,l.geometry,l.material,0,0,null))}function _(M,C){M.getRGB(ko,Mc(i)),t.buffers.color.setClear(ko.r,ko.g,ko.b,C,r)}function p(){c!==void 0&&(c.geometry.dispose(),c.material.dispose(),c=void 0),l!==void 0&&(l.geometry.dispose(),l.material.dispose(),l=void 0)}return{getClearColor:function(){return a},setClearColor:function(M,C=1){a.set(M),o=C,_(a,o)},getClearAlpha:function(){return o},setClearAlpha:function(M){o=M,_(a,o)},render:g,addToRenderList:v,dispose:p}}function X0(i,e){let t=i.getParameter(i.MAX_VERTEX_ATTRIBS),n={},s=u(null),r=s,a=!1;function o(N,V,Z,w,U){let k=!1,B=d(N,w,Z,V);r!==B&&(r=B,c(r.object)),k=f(N,w,Z,U),k&&g(N,w,Z,U),U!==null&&e.update(U,i.ELEMENT_ARRAY_BUFFER),(k||a)&&(a=!1,S(N,V,Z,w),U!==null&&i.bindBuffer(i.ELEMENT_ARRAY_BUFFER,e.get(U).buffer))}function l(){return i.createVertexArray()}function c(N){return i.bindVertexArray(N)}function h(N){return i.deleteVertexArray(N)}function d(N,V,Z,w){let U=w.wireframe===!0,k=n[V.id];k===void 0&&(k={},n[V.id]=k);let B=N.isInstancedMesh===!0?N.id:0,z=k[B];z===void 0&&(z={},k[B]=z);let P=z[Z.id];P===void 0&&(P={},z[Z.id]=P);let X=P[U];return X===void 0&&(X=u(l()),P[U]=X),X}function u(N){let V=[],Z=[],w=[];for(let U=0;U<t;U++)V[U]=0,Z[U]=0,w[U]=0;return{geometry:null,program:null,wireframe:!1,newAttributes:V,enabledAttributes:Z,attributeDivisors:w,object:N,attributes:{},index:null}}function f(N,V,Z,w){let U=r.attributes,k=V.attributes,B=0,z=Z.getAttributes();for(let P in z)if(z[P].location>=0){let q=U[P],re=k[P];if(re===void 0&&(P==="instanceMatrix"&&N.instanceMatrix&&(re=N.instanceMatrix),P==="instanceColor"&&N.instanceColor&&(re=N.instanceColor)),q===void 0||q.attribute!==re||re&&q.data!==re.data)return!0;B++}return r.attributesNum!==B||r.index!==w}function g(N,V,Z,w){let U={},k=V.attributes,B=0,z=Z.getAttributes();for(let P in z)if(z[P].location>=0){let q=k[P];q===void 0&&(P==="instanceMatrix"&&N.instanceMatrix&&(q=N.instanceMatrix),P==="instanceColor"&&N.instanceColor&&(q=N.instanceColor));let re={};re.attribute=q,q&&q.data&&(re.data=q.data),U[P]=re,B++}r.attributes=U,r.attributesNum=B,r.index=w}function v(){let N=r.newAttributes;for(let V=0,Z=N.length;V<Z;V++)N[V]=0}function _(N){p(N,0)}function p(N,V){let Z=r.newAttributes,w=r.enabledAttributes,U=r.attributeDivisors;Z[N]=1,w[N]===0&&(i.enableVertexAttribArray(N),w[N]=1),U[N]!==V&&(i.vertexAttribDivisor(N,V),U[N]=V)}function M(){let N=r.newAttributes,V=r.enabledAttributes;for(let Z=0,w=V.length;Z<w;Z++)V[Z]!==N[Z]&&(i.disableVertexAttribArray(Z),V[Z]=0)}function C(N,V,Z,w,U,k,B){B===!0?i.vertexAttribIPointer(N,V,Z,U,k):i.vertexAttribPointer(N,V,Z,w,U,k)}function S(N,V,Z,w){v();let U=w.attributes,k=Z.getAttributes(),B=V.defaultAttributeValues;for(let z in k){let P=k[z];if(P.location>=0){let X=U[z];if(X===void 0&&(z==="instanceMatrix"&&N.instanceMatrix&&(X=N.instanceMatrix),z==="instanceColor"&&N.instanceColor&&(X=N.instanceColor)),X!==void 0){let q=X.normalized,re=X.itemSize,Me=e.get(X);if(Me===void 0)continue;let K=Me.buffer,ve=Me.type,Te=Me.bytesPerElement,Ue=ve===i.INT||ve===i.UNSIGNED_INT||X.gpuType===to;if(X.isInterleavedBufferAttribute){let Se=X.data,We=Se.isInterleavedBuffer===!0?Se.stride:Se.itemSize,bt=X.offset;if(Se.isInstancedInterleavedBuffer||Se.isInstancedBufferAttribute){for(let Be=0;Be<P.locationSize;Be++)p(P.location+Be,Se.meshPerAttribute);N.isInstancedMesh!==!0&&w._maxInstanceCount===void 0&&(w._maxInstanceCount=Se.meshPerAttribute*Se.count)}else for(let Be=0;Be<P.locationSize;Be++)_(P.location+Be);i.bindBuffer(i.ARRAY_BUFFER,K);for(let Be=0;Be<P.locationSize;Be++)C(P.location+Be,re/P.locationSize,ve,q,We*Te,(bt+re/P.locationSize*Be)*Te,Ue)}else{if(X.isInstancedBufferAttribute){for(let Se=0;Se<P.locationSize;Se++)p(P.location+Se,X.meshPerAttribute);N.isInstancedMesh!==!0&&w._maxInstanceCount===void 0&&(w._maxInstanceCount=X.meshPerAttribute*X.count)}else for(let Se=0;Se<P.locationSize;Se++)_(P.location+Se);i.bindBuffer(i.ARRAY_BUFFER,K);for(let Se=0;Se<P.locationSize;Se++)C(P.location+Se,re/P.locationSize,ve,q,re*Te,re/P.locationSize*Se*Te,Ue)}}else if(B!==void 0){let q=B[z];if(q!==void 0)switch(q.length){case 2:i.vertexAttrib2fv(P.location,q);break;case 3:i.vertexAttrib3fv(P.location,q);break;case 4:i.vertexAttrib4fv(P.location,q);break;default:i.vertexAttrib1fv(P.location,q)}}}}M()}function T(){H();for(let N in n){let V=n[N];for(let Z in V){let w=V[Z];for(let U in w){let k=w[U];for(let B in k)h(k[B].object),delete k[B];delete w[U]}}delete n[N]}}function A(N){if(n[N.id]===void 0)return;let V=n[N.id];for(let Z in V){let w=V[Z];for(let U in w){let k=w[U];for(let B in k)h(k[B].object),delete k[B];delete w[U]}}delete n[N.id]}function x(N){for(let V in n){let Z=n[V];for(let w in Z){let U=Z[w];if(U[N.id]===void 0)continue;let k=U[N.id];for(let B in k)h(k[B].object),delete k[B];delete U[N.id]}}}function E(N){for(let V in n){let Z=n[V],w=N.isInstancedMesh===!0?N.id:0,U=Z[w];if(U!==void 0){for(let k in U){let B=U[k];for(let z in B)h(B[z].object),delete B[z];delete U[k]}delete Z[w],Object.keys(Z).length===0&&delete n[V]}}}function H(){F(),a=!0,r!==s&&(r=s,c(r.object))}function F(){s.geometry=null,s.program=null,s.wireframe=!1}return{setup:o,reset:H,resetDefaultState:F,dispose:T,releaseStatesOfGeometry:A,releaseStatesOfObject:E,releaseStatesOfProgram:x,initAttributes:v,enableAttribute:_,disableUnusedAttributes:M}}function q0(i,e,t){let n;function s(l){n=l}function r(l,c){i.drawArrays(n,l,c),t.update(c,n,1)}function a(l,c,h){h!==0&&(i.drawArraysInstanced(n,l,c,h),t.update(c,n,h))}function o(l,c,h){if(h===0)return;e.get("WEBGL_multi_draw").multiDrawArraysWEBGL(n,l,0,c,0,h);let u=0;for(let f=0;f<h;f++)u+=c[f];t.update(u,n,1)}this.setMode=s,this.render=r,this.renderInstances=a,this.renderMultiDraw=o}function Y0(i,e,t,n){let s;function r(){if(s!==void 0)return s;if(e.has("EXT_texture_filter_anisotropic")===!0){let x=e.get("EXT_texture_filter_anisotropic");s=i.getParameter(x.MAX_TEXTURE_MAX_ANISOTROPY_EXT)}else s=0;return s}function a(x){return!(x!==Nn&&n.convert(x)!==i.getParameter(i.IMPLEMENTATION_COLOR_READ_FORMAT))}function o(x){let E=x===Ln&&(e.has("EXT_color_buffer_half_float")||e.has("EXT_color_buffer_float"));return!(x!==hn&&x!==In&&!E&&n.convert(x)!==i.getParameter(i.IMPLEMENTATION_COLOR_READ_TYPE))}function l(x){if(x==="highp"){if(i.getShaderPrecisionFormat(i.VERTEX_SHADER,i.HIGH_FLOAT).precision>0&&i.getShaderPrecisionFormat(i.FRAGMENT_SHADER,i.HIGH_FLOAT).precision>0)return"highp";x="mediump"}return x==="mediump"&&i.getShaderPrecisionFormat(i.VERTEX_SHADER,i.MEDIUM_FLOAT).precision>0&&i.getShaderPrecisionFormat(i.FRAGMENT_SHADER,i.MEDIUM_FLOAT).precision>0?"mediump":"lowp"}let c=t.precision!==void 0?t.precision:"highp",h=l(c);h!==c&&(Oe("WebGLRenderer:",c,"not supported, using",h,"instead."),c=h);let d=t.reversedDepthBuffer===!0&&e.has("EXT_clip_control"),u=t.logarithmicDepthBuffer===!0&&d===!1;t.reversedDepthBuffer===!0&&d===!1&&Oe("WebGLRenderer: Unable to use reversed depth buffer due to missing EXT_clip_control extension. Fallback to default depth buffer."),t.logarithmicDepthBuffer===!0&&d===!0&&Oe("WebGLRenderer: Logarithmic depth buffer is ignored when reversed depth buffer is enabled.");let f=i.getParameter(i.MAX_TEXTURE_IMAGE_UNITS),g=i.getParameter(i.MAX_VERTEX_TEXTURE_IMAGE_UNITS),v=i.getParameter(i.MAX_TEXTURE_SIZE),_=i.getParameter(i.MAX_CUBE_MAP_TEXTURE_SIZE),p=i.getParameter(i.MAX_VERTEX_ATTRIBS),M=i.getParameter(i.MAX_VERTEX_UNIFORM_VECTORS),C=i.getParameter(i.MAX_VARYING_VECTORS),S=i.getParameter(i.MAX_FRAGMENT_UNIFORM_VECTORS),T=i.getParameter(i.MAX_SAMPLES),A=i.getParameter(i.SAMPLES);return{isWebGL2:!0,getMaxAnisotropy:r,getMaxPrecision:l,textureFormatReadable:a,textureTypeReadable:o,precision:c,logarithmicDepthBuffer:u,reversedDepthBuffer:d,maxTextures:f,maxVertexTextures:g,maxTextureSize:v,maxCubemapSize:_,maxAttributes:p,maxVertexUniforms:M,maxVaryings:C,maxFragmentUniforms:S,maxSamples:T,samples:A}}function Z0(i){let e=this,t=null,n=0,s=!1,r=!1,a=new Rn,o=new Ge,l={value:null,needsUpdate:!1};this.uniform=l,this.numPlanes=0,this.numIntersection=0,this.init=function(d,u){let f=d.length!==0||u||n!==0||s;return s=u,n=d.length,f},this.beginShadows=function(){r=!0,h(null)},this.endShadows=function(){r=!1},this.setGlobalState=function(d,u){t=h(d,u,0)},this.setState=function(d,u,f){let g=d.clippingPlanes,v=d.clipIntersection,_=d.clipShadows,p=i.get(d);if(!s||g===null||g.length===0||r&&!_)r?h(null):c();else{let M=r?0:n,C=M*4,S=p.clippingState||null;l.value=S,S=h(g,u,C,f);for(let T=0;T!==C;++T)S[T]=t[T];p.clippingState=S,this.numIntersection=v?this.numPlanes:0,this.numPlanes+=M}};function c(){l.value!==t&&(l.value=t,l.needsUpdate=n>0),e.numPlanes=n,e.numIntersection=0}function h(d,u,f,g){let v=d!==null?d.length:0,_=null;if(v!==0){if(_=l.value,g!==!0||_===null){let p=f+v*4,M=u.matrixWorldInverse;o.getNormalMatrix(M),(_===null||_.length<p)&&(_=new Float32Array(p));for(let C=0,S=f;C!==v;++C,S+=4)a.copy(d[C]).applyMatrix4(M,o),a.normal.toArray(_,S),_[S+3]=a.constant}l.value=_,l.needsUpdate=!0}return e.numPlanes=v,e.numIntersection=0,_}}var Ar=class extends on{constructor(e=1,t={}){super(e,e,t),this.isWebGLCubeRenderTarget=!0;let n={width:e,height:e,depth:1},s=[n,n,n,n,n,n];this.texture=new cr(s),this._setTextureOptions(t),this.texture.isRenderTargetTexture=!0}fromEquirectangularTexture(e,t){this.texture.type=t.type,this.texture.colorSpace=t.colorSpace,this.texture.generateMipmaps=t.generateMipmaps,this.texture.minFilter=t.minFilter,this.texture.magFilter=t.magFilter;let n={uniforms:{tEquirect:{value:null}},vertexShader:`

				varying vec3 vWorldDirection;

				vec3 transformDirection( in vec3 dir, in mat4 matrix ) {

					return normalize( ( matrix * vec4( dir, 0.0 ) ).xyz );

				}

				void main() {

					vWorldDirection = transformDirection( position, modelMatrix );

					#include <begin_vertex>
					#include <project_vertex>

				}
			`,fragmentShader:`

				uniform sampler2D tEquirect;

				varying vec3 vWorldDirection;

				#include <common>

				void main() {

					vec3 direction = normalize( vWorldDirection );

					vec2 sampleUV = equirectUv( direction );

					gl_FragColor = texture2D( tEquirect, sampleUV );

				}
			`},s=new Rs(5,5,5),r=new Hn({name:"CubemapFromEquirect",uniforms:es(n.uniforms),vertexShader:n.vertexShader,fragmentShader:n.fragmentShader,side:qt,blending:Ji});r.uniforms.tEquirect.value=t;let a=new At(s,r),o=t.minFilter;return t.minFilter===ai&&(t.minFilter=Xt),new Ps(1,10,this).update(e,a),t.minFilter=o,a.geometry.dispose(),a.material.dispose(),this}clear(e,t=!0,n=!0,s=!0){let r=e.getRenderTarget();for(let a=0;a<6;a++)e.setRenderTarget(this,a),e.clear(t,n,s);e.setRenderTarget(r)}},_d=256,J0=3,K0=20,zd=256,Gd=16,j0=3,Q0=new G,e_=new je,zo=class i{constructor(e){this._renderer=e,this._cubeSize=0,this._sourceTarget=null,this._cubeCamera=new Ps(1,10,null),this._boxMesh=new At(new Rs(5,5,5),null),this._cubemapMaterial=null,this._equirectMaterial=null,this._blurMaterial=null,this._ggxMaterial=null,this._integrationMaterial=null}fromScene(e,t=0,n=.1,s=100,r={}){let{size:a=256,position:o=Q0}=r,l=this._renderer;this._setSize(a);let c=this._allocateTarget(),h=this._getSourceTarget(!0);t>0&&(h.texture.mipmapsAutoUpdate=!1);let d=l.autoClear,u=l.autoClearColor,f=l.autoClearDepth,g=l.autoClearStencil,v=e.background;l.autoClear=!0,l.autoClearColor=!0,l.autoClearDepth=!0,l.autoClearStencil=!0,v===null&&(e.background=l.getClearColor(e_));let _=new Ps(n,s,h);return _.position.copy(o),_.update(l,e),l.autoClear=d,l.autoClearColor=u,l.autoClearDepth=f,l.autoClearStencil=g,e.background=v,t>0&&(h.texture.mipmapsAutoUpdate=!0,this._blur(c,t)),this._applyPMREM(c),c}fromEquirectangular(e,t=null){return this._fromTexture(e,t)}fromCubemap(e,t=null){return this._fromTexture(e,t)}compileCubemapShader(){this._cubemapMaterial===null&&(this._cubemapMaterial=yd(),this._compileMaterial(this._cubemapMaterial))}compileEquirectangularShader(){this._equirectMaterial===null&&(this._equirectMaterial=xd(),this._compileMaterial(this._equirectMaterial))}dispose(){this._sourceTarget!==null&&this._sourceTarget.dispose(),this._cubemapMaterial!==null&&this._cubemapMaterial.dispose(),this._equirectMaterial!==null&&this._equirectMaterial.dispose(),this._blurMaterial!==null&&this._blurMaterial.dispose(),this._ggxMaterial!==null&&this._ggxMaterial.dispose(),this._integrationMaterial!==null&&this._integrationMaterial.dispose(),this._boxMesh.geometry.dispose()}static lodToRoughness(e,t){return t>0?1-Math.sqrt(1-e/t):0}_setSize(e){this._cubeSize=Math.max(_d,dd(e))}_fromTexture(e,t){e.mapping===ji||e.mapping===Ns?this._setSize(e.image.length===0?_d:e.image[0].width||e.image[0].image.width):this._setSize(e.image.width/4);let n=t||this._allocateTarget();return this._textureToCubemap(e),this._applyPMREM(n),n}_allocateTarget(){let e=this._cubeSize,t=vd(e,!1,!1),n=Math.log2(e)-J0;for(let s=0;s<=n;s++)t.texture.mipmaps.push({width:e>>s,height:e>>s});return t.texture.name="PMREM",t.texture.isPMREMTexture=!0,t}_getSourceTarget(e=!1){let t=this._cubeSize,n=this._sourceTarget;return(n===null||n.width!==t||e&&n.depthBuffer===!1)&&(n!==null&&n.dispose(),this._sourceTarget=vd(t,!0,e)),this._sourceTarget}_compileMaterial(e){this._boxMesh.material=e,this._renderer.compile(this._boxMesh,this._cubeCamera.children[0])}_renderCube(e,t,n){let s=this._boxMesh,r=this._cubeCamera;s.material=n,r.renderTarget=e,r.activeMipmapLevel=t;let a=e.width>>t;e.viewport.set(0,0,a,a),r.update(this._renderer,s),e.viewport.set(0,0,e.width,e.height)}_textureToCubemap(e){let t;e.mapping===ji||e.mapping===Ns?(this._cubemapMaterial===null&&(this._cubemapMaterial=yd()),t=this._cubemapMaterial,t.uniforms.flipEnvMap.value=e.isRenderTargetTexture===!1?-1:1):(this._equirectMaterial===null&&(this._equirectMaterial=xd()),t=this._equirectMaterial),t.uniforms.envMap.value=e,this._renderCube(this._getSourceTarget(),0,t)}_applyPMREM(e){this._ggxMaterial===null&&(this._ggxMaterial=t_(),this._integrationMaterial=n_());let t=this._cubeSize,n=e.texture.mipmaps.length-1,s=this._ggxMaterial.uniforms;s.envMap.value=this._sourceTarget.texture;let r=this._integrationMaterial.uniforms;r.envMap.value=this._sourceTarget.texture,r.sourceLod.value=Math.log2(t/Gd);for(let a=0;a<=n;a++){let o=i.lodToRoughness(a,n);if(a>n-j0)r.roughness.value=o,this._renderCube(e,a,this._integrationMaterial);else{let l=o>0?Math.log2(t)+.5*Math.log2(6/(zd*Math.pow(o,4)))+.5:0;s.roughness.value=o,s.lodBias.value=l,this._renderCube(e,a,this._ggxMaterial)}}}_blur(e,t){this._blurMaterial===null&&(this._blurMaterial=i_());let n=this._blurMaterial,s=n.uniforms,r=this._sourceTarget;s.sigma.value=Math.min(t,Math.PI)/Math.SQRT2,s.envMap.value=r.texture,this._renderCube(e,0,n),s.envMap.value=e.texture,this._renderCube(r,0,n)}};function vd(i,e,t){return new Ar(i,{minFilter:ai,generateMipmaps:e,type:Ln,colorSpace:tr,depthBuffer:t})}function Rr(i,e,t){return new Hn({name:i,uniforms:e,vertexShader:qe.cube_vert,fragmentShader:t,side:qt,blending:Ji,depthTest:!1,depthWrite:!1})}function t_(){return Rr("PMREMGGXConvolution",{envMap:{value:null},roughness:{value:0},lodBias:{value:0}},`

		#define GGX_SAMPLES ${zd}u

		varying vec3 vWorldDirection;

		uniform samplerCube envMap;
		uniform float roughness;
		uniform float lodBias;

		#include <common>

		// Van der Corput radical inverse
		float radicalInverse_VdC( uint bits ) {

			bits = ( bits << 16u ) | ( bits >> 16u );
			bits = ( ( bits & 0x55555555u ) << 1u ) | ( ( bits & 0xAAAAAAAAu ) >> 1u );
			bits = ( ( bits & 0x33333333u ) << 2u ) | ( ( bits & 0xCCCCCCCCu ) >> 2u );
			bits = ( ( bits & 0x0F0F0F0Fu ) << 4u ) | ( ( bits & 0xF0F0F0F0u ) >> 4u );
			bits = ( ( bits & 0x00FF00FFu ) << 8u ) | ( ( bits & 0xFF00FF00u ) >> 8u );
			return float( bits ) * 2.3283064365386963e-10; // / 0x100000000

		}

		// Hammersley sequence
		vec2 hammersley( uint i, uint N ) {

			return vec2( float( i ) / float( N ), radicalInverse_VdC( i ) );

		}

		void main() {

			vec3 N = normalize( vWorldDirection );

			// For very low roughness, just sample the environment directly
			if ( roughness < 0.001 ) {

				gl_FragColor = vec4( textureLod( envMap, N, 0.0 ).rgb, 1.0 );
				return;

			}

			float alpha = roughness * roughness;
			float alpha2 = alpha * alpha;

			// Tangent space basis for VNDF sampling
			vec3 up = abs( N.z ) < 0.999 ? vec3( 0.0, 0.0, 1.0 ) : vec3( 1.0, 0.0, 0.0 );
			vec3 tangent = normalize( cross( up, N ) );
			vec3 bitangent = cross( N, tangent );

			vec3 prefilteredColor = vec3( 0.0 );
			float totalWeight = 0.0;

			for ( uint i = 0u; i < GGX_SAMPLES; i ++ ) {

				vec2 Xi = hammersley( i, GGX_SAMPLES );

				// With V = N, sample the reflected direction directly.
				float invQ = 1.0 / ( 1.0 - Xi.x + alpha2 * Xi.x );
				float NdotL = ( 1.0 - Xi.x - alpha2 * Xi.x ) * invQ;

				if ( NdotL > 0.0 ) {

					float phi = 2.0 * PI * Xi.y;
					float sinTheta = 2.0 * alpha * sqrt( Xi.x * ( 1.0 - Xi.x ) ) * invQ;
					vec3 L = N * NdotL + ( tangent * cos( phi ) + bitangent * sin( phi ) ) * sinTheta;

					// Match the source mip to the sample's solid angle. The terms
					// independent of the sample are precomputed in lodBias.
					float d = alpha2 * invQ;
					float lod = max( log2( d ) + lodBias, 0.0 );

					// Weight by NdotL for the split-sum approximation
					prefilteredColor += textureLod( envMap, L, lod ).rgb * NdotL;
					totalWeight += NdotL;

				}

			}

			gl_FragColor = vec4( prefilteredColor / totalWeight, 1.0 );

		}
	`)}function n_(){return Rr("PMREMGGXIntegration",{envMap:{value:null},roughness:{value:0},sourceLod:{value:0},sourceSize:{value:Gd}},`

		varying vec3 vWorldDirection;

		uniform samplerCube envMap;
		uniform float roughness;
		uniform float sourceLod;
		uniform int sourceSize;

		void main() {

			vec3 N = normalize( vWorldDirection );

			float alpha = roughness * roughness;
			float alpha2 = alpha * alpha;

			float texelSize = 2.0 / float( sourceSize );

			vec3 prefilteredColor = vec3( 0.0 );
			float totalWeight = 0.0;

			// Pair opposite texels: only the one in N's hemisphere contributes.
			for ( int face = 0; face < 3; face ++ ) {

				for ( int y = 0; y < sourceSize; y ++ ) {

					for ( int x = 0; x < sourceSize; x ++ ) {

						vec2 uv = ( vec2( x, y ) + 0.5 ) * texelSize - 1.0;
						vec3 texelDirection = face == 0 ? vec3( 1.0, uv ) : ( face == 1 ? vec3( uv.x, 1.0, uv.y ) : vec3( uv, 1.0 ) );

						float invDistance = inversesqrt( 1.0 + dot( uv, uv ) );
						float NdotL = dot( N, texelDirection );
						texelDirection *= NdotL < 0.0 ? - 1.0 : 1.0;
						NdotL = abs( NdotL ) * invDistance;

						// With V = N, NdotH squared is ( 1 + NdotL ) / 2. Common factors
						// in the GGX distribution and texel solid angle cancel when normalized.
						float d = 1.0 + alpha2 + ( alpha2 - 1.0 ) * NdotL;
						float weight = NdotL * invDistance * invDistance * invDistance / ( d * d );

						prefilteredColor += textureLod( envMap, texelDirection, sourceLod ).rgb * weight;
						totalWeight += weight;

					}

				}

			}

			gl_FragColor = vec4( prefilteredColor / totalWeight, 1.0 );

		}
	`)}function i_(){return Rr("PMREMSphericalGaussianBlur",{envMap:{value:null},sigma:{value:0}},`

		#define SAMPLES ${K0}
		#define GOLDEN_ANGLE 2.39996322973

		varying vec3 vWorldDirection;

		uniform samplerCube envMap;
		uniform float sigma;

		#include <common>

		void main() {

			vec3 outputDirection = normalize( vWorldDirection );

			vec3 up = abs( outputDirection.z ) < 0.999 ? vec3( 0.0, 0.0, 1.0 ) : vec3( 1.0, 0.0, 0.0 );
			vec3 tangent = normalize( cross( up, outputDirection ) );
			vec3 bitangent = cross( outputDirection, tangent );

			// Truncate the kernel at three standard deviations or at the antipode.
			float thetaMax = min( 3.0 * sigma, PI );
			float truncation = 1.0 - exp( - 0.5 * thetaMax * thetaMax / ( sigma * sigma ) );

			vec3 accumColor = vec3( 0.0 );
			float accumWeight = 0.0;

			for ( int i = 0; i < SAMPLES; i ++ ) {

				// Stratified inverse-CDF sampling of the Gaussian, placed on a golden-angle spiral.
				float stratum = ( float( i ) + 0.5 ) / float( SAMPLES );
				float theta = sigma * sqrt( - 2.0 * log( 1.0 - stratum * truncation ) );
				float phi = float( i ) * GOLDEN_ANGLE;

				vec3 offset = cos( phi ) * tangent + sin( phi ) * bitangent;
				vec3 sampleDirection = cos( theta ) * outputDirection + sin( theta ) * offset;

				// Correct the planar sample density to solid angle.
				float weight = sin( theta ) / theta;

				accumColor += weight * textureLod( envMap, sampleDirection, 0.0 ).rgb;
				accumWeight += weight;

			}

			gl_FragColor = vec4( accumColor / accumWeight, 1.0 );

		}
	`)}function xd(){return Rr("PMREMEquirectangularToCubemap",{envMap:{value:null}},`

		varying vec3 vWorldDirection;

		uniform sampler2D envMap;

		#include <common>

		void main() {

			// Average four subpixel samples to preserve small, bright features.
			vec3 direction = normalize( vWorldDirection );
			vec3 dx = dFdx( direction ) * 0.25;
			vec3 dy = dFdy( direction ) * 0.25;

			vec3 color = textureLod( envMap, equirectUv( normalize( direction - dx - dy ) ), 0.0 ).rgb;
			color += textureLod( envMap, equirectUv( normalize( direction + dx - dy ) ), 0.0 ).rgb;
			color += textureLod( envMap, equirectUv( normalize( direction - dx + dy ) ), 0.0 ).rgb;
			color += textureLod( envMap, equirectUv( normalize( direction + dx + dy ) ), 0.0 ).rgb;
			gl_FragColor = vec4( color * 0.25, 1.0 );

		}
	`)}function yd(){return Rr("PMREMCubemapToCubemap",{envMap:{value:null},flipEnvMap:{value:-1}},`

		varying vec3 vWorldDirection;

		uniform samplerCube envMap;
		uniform float flipEnvMap;

		void main() {

			gl_FragColor = vec4( textureCube( envMap, vec3( flipEnvMap * vWorldDirection.x, vWorldDirection.yz ) ).rgb, 1.0 );

		}
	`)}function s_(i){let e=new WeakMap,t=new WeakMap,n=null;function s(u,f=!1){return u==null?null:f?a(u):r(u)}function r(u){if(u&&u.isTexture){let f=u.mapping;if(f===ja||f===Qa)if(e.has(u)){let g=e.get(u).texture;return o(g,u.mapping)}else{let g=u.image;if(g&&g.height>0){let v=new Ar(g.height);return v.fromEquirectangularTexture(i,u),e.set(u,v),u.addEventListener("dispose",c),o(v.texture,u.mapping)}else return null}}return u}function a(u){if(u&&u.isTexture&&u.isPMREMTexture!==!0){let f=u.mapping,g=f===ja||f===Qa,v=f===ji||f===Ns;if(g||v){let _=t.get(u),p=_!==void 0?_.texture.pmremVersion:0;if(u.isRenderTargetTexture&&u.pmremVersion!==p)return n===null&&(n=new zo(i)),_=g?n.fromEquirectangular(u,_):n.fromCubemap(u,_),_.texture.pmremVersion=u.pmremVersion,t.set(u,_),_.texture;if(_!==void 0)return _.texture;{let M=u.image;return g&&M&&M.height>0||v&&M&&l(M)?(n===null&&(n=new zo(i)),_=g?n.fromEquirectangular(u):n.fromCubemap(u),_.texture.pmremVersion=u.pmremVersion,t.set(u,_),u.addEventListener("dispose",h),_.texture):null}}}return u}function o(u,f){return f===ja?u.mapping=ji:f===Qa&&(u.mapping=Ns),u}function l(u){let f=0,g=6;for(let v=0;v<g;v++)u[v]!==void 0&&f++;return f===g}function c(u){let f=u.target;f.removeEventListener("dispose",c);let g=e.get(f);g!==void 0&&(e.delete(f),g.dispose())}function h(u){let f=u.target;f.removeEventListener("dispose",h);let g=t.get(f);g!==void 0&&(t.delete(f),g.dispose())}function d(){e=new WeakMap,t=new WeakMap,n!==null&&(n.dispose(),n=null)}return{get:s,dispose:d}}function r_(i){let e={};function t(n){if(e[n]!==void 0)return e[n];let s=i.getExtension(n);return e[n]=s,s}return{has:function(n){return t(n)!==null},init:function(){t("EXT_color_buffer_float"),t("WEBGL_clip_cull_distance"),t("OES_texture_float_linear"),t("EXT_color_buffer_half_float"),t("WEBGL_multisampled_render_to_texture"),t("WEBGL_render_shared_exponent")},get:function(n){let s=t(n);return s===null&&Qs("WebGLRenderer: "+n+" extension not supported."),s}}}function a_(i,e,t,n){let s={},r=new WeakMap,a=new FinalizationRegistry(g=>delete s[g]);function o(g){l(g.target)}function l(g){g.index!==null&&e.remove(g.index);for(let _ in g.attributes)e.remove(g.attributes[_]);g.removeEventListener("dispose",o),delete s[g.id],a.unregister(g);let v=r.get(g);v&&(e.remove(v),r.delete(g)),n.releaseStatesOfGeometry(g),g.isInstancedBufferGeometry===!0&&delete g._maxInstanceCount,t.memory.geometries--}function c(g,v){return s[v.id]!==void 0||(v.addEventListener("dispose",o),s[v.id]=new WeakRef(v),a.register(v,v.id,v),t.memory.geometries++),v}function h(g){let v=g.attributes;for(let _ in v)e.update(v[_],i.ARRAY_BUFFER)}function d(g){let v=g.index,_=g.attributes.position,p=0;if(_===void 0)return;let M=v!==null?v.array.length:_.array.length/3-1,C=_.count>=65535?lr:or,S=new C(Math.ceil(M/3)*6,1),T=S.array;if(v!==null){let x=v.array;p=v.version;for(let E=0,H=0;E<M;E+=3){let F=x[E+0],N=x[E+1],V=x[E+2];T[H++]=F,T[H++]=N,T[H++]=N,T[H++]=V,T[H++]=V,T[H++]=F}}else{p=_.version;for(let x=0,E=0;x<M;x+=3){let H=x+0,F=x+1,N=x+2;T[E++]=H,T[E++]=F,T[E++]=F,T[E++]=N,T[E++]=N,T[E++]=H}}S.version=p;let A=r.get(g);A&&e.remove(A),r.set(g,S)}function u(g){let v=r.get(g);if(v){let _=g.index;_!==null&&v.version<_.version&&d(g)}else d(g);return r.get(g)}function f(){for(let g in s){let v=s[g].deref();v!==void 0&&l(v)}}return{get:c,update:h,getWireframeAttribute:u,dispose:f}}function o_(i,e,t){let n;function s(d){n=d}let r,a;function o(d){r=d.type,a=d.bytesPerElement}function l(d,u){i.drawElements(n,u,r,d*a),t.update(u,n,1)}function c(d,u,f){f!==0&&(i.drawElementsInstanced(n,u,r,d*a,f),t.update(u,n,f))}function h(d,u,f){if(f===0)return;e.get("WEBGL_multi_draw").multiDrawElementsWEBGL(n,u,0,r,d,0,f);let v=0;for(let _=0;_<f;_++)v+=u[_];t.update(v,n,1)}this.setMode=s,this.setIndex=o,this.render=l,this.renderInstances=c,this.renderMultiDraw=h}function l_(i){let e={geometries:0,textures:0},t={frame:0,calls:0,triangles:0,points:0,lines:0};function n(r,a,o){switch(t.calls++,a){case i.TRIANGLES:t.triangles+=o*(r/3);break;case i.LINES:t.lines+=o*(r/2);break;case i.LINE_STRIP:t.lines+=o*(r-1);break;case i.LINE_LOOP:t.lines+=o*r;break;case i.POINTS:t.points+=o*r;break;default:ze("WebGLInfo: Unknown draw mode:",a);break}}function s(){t.calls=0,t.triangles=0,t.points=0,t.lines=0}return{memory:e,render:t,programs:null,autoReset:!0,reset:s,update:n}}function c_(i,e,t){let n=new WeakMap,s=new xt;function r(a,o,l){let c=a.morphTargetInfluences,h=o.morphAttributes.position||o.morphAttributes.normal||o.morphAttributes.color,d=h!==void 0?h.length:0,u=n.get(o);if(u===void 0||u.count!==d){let H=function(){x.dispose(),n.delete(o),o.removeEventListener("dispose",H)};u!==void 0&&u.texture.dispose();let f=o.morphAttributes.position!==void 0,g=o.morphAttributes.normal!==void 0,v=o.morphAttributes.color!==void 0,_=o.morphAttributes.position||[],p=o.morphAttributes.normal||[],M=o.morphAttributes.color||[],C=0;f===!0&&(C=1),g===!0&&(C=2),v===!0&&(C=3);let S=o.attributes.position.count*C,T=1;S>e.maxTextureSize&&(T=Math.ceil(S/e.maxTextureSize),S=e.maxTextureSize);let A=new Float32Array(S*T*4*d),x=new rr(A,S,T,d);x.type=In,x.needsUpdate=!0;let E=C*4;for(let F=0;F<d;F++){let N=_[F],V=p[F],Z=M[F],w=S*T*4*F;for(let U=0;U<N.count;U++){let k=U*E;f===!0&&(s.fromBufferAttribute(N,U),A[w+k+0]=s.x,A[w+k+1]=s.y,A[w+k+2]=s.z,A[w+k+3]=0),g===!0&&(s.fromBufferAttribute(V,U),A[w+k+4]=s.x,A[w+k+5]=s.y,A[w+k+6]=s.z,A[w+k+7]=0),v===!0&&(s.fromBufferAttribute(Z,U),A[w+k+8]=s.x,A[w+k+9]=s.y,A[w+k+10]=s.z,A[w+k+11]=Z.itemSize===4?s.w:1)}}u={count:d,texture:x,size:new et(S,T)},n.set(o,u),o.addEventListener("dispose",H)}if(a.isInstancedMesh===!0&&a.morphTexture!==null)l.getUniforms().setValue(i,"morphTexture",a.morphTexture,t);else{let f=0;for(let v=0;v<c.length;v++)f+=c[v];let g=o.morphTargetsRelative?1:1-f;l.getUniforms().setValue(i,"morphTargetBaseInfluence",g),l.getUniforms().setValue(i,"morphTargetInfluences",c)}l.getUniforms().setValue(i,"morphTargetsTexture",u.texture,t),l.getUniforms().setValue(i,"morphTargetsTextureSize",u.size)}return{update:r}}function h_(i,e,t,n,s){let r=new WeakMap;function a(c){let h=s.render.frame,d=c.geometry,u=e.get(c,d);if(r.get(u)!==h&&(e.update(u),r.set(u,h)),c.isInstancedMesh&&(c.hasEventListener("dispose",l)===!1&&c.addEventListener("dispose",l),r.get(c)!==h&&(t.update(c.instanceMatrix,i.ARRAY_BUFFER),c.instanceColor!==null&&t.update(c.instanceColor,i.ARRAY_BUFFER),r.set(c,h))),c.isSkinnedMesh){let f=c.skeleton;r.get(f)!==h&&(f.update(),r.set(f,h))}return u}function o(){r=new WeakMap}function l(c){let h=c.target;h.removeEventListener("dispose",l),n.releaseStatesOfObject(h),t.remove(h.instanceMatrix),h.instanceColor!==null&&t.remove(h.instanceColor)}return{update:a,dispose:o}}var u_={[ec]:"LINEAR_TONE_MAPPING",[tc]:"REINHARD_TONE_MAPPING",[nc]:"CINEON_TONE_MAPPING",[ic]:"ACES_FILMIC_TONE_MAPPING",[rc]:"AGX_TONE_MAPPING",[ac]:"NEUTRAL_TONE_MAPPING",[sc]:"CUSTOM_TONE_MAPPING"};function d_(i,e,t,n,s,r){let a=new on(e,t,{type:i,depthBuffer:s,stencilBuffer:r,samples:n?4:0,storeMultisampledDepthBuffer:!1,storeMultisampledStencilBuffer:!1,resolveDepthBuffer:!1,resolveStencilBuffer:!1}),o=null,l=null,c=null,h=new Cn;h.setAttribute("position",new Jt([-1,3,0,-1,-1,0,3,-1,0],3)),h.setAttribute("uv",new Jt([0,2,0,0,2,0],2));let d=new ka({uniforms:{tDiffuse:{value:null}},vertexShader:`
			precision highp float;

			uniform mat4 modelViewMatrix;
			uniform mat4 projectionMatrix;

			attribute vec3 position;
			attribute vec2 uv;

			varying vec2 vUv;

			void main() {
				vUv = uv;
				gl_Position = projectionMatrix * modelViewMatrix * vec4( position, 1.0 );
			}`,fragmentShader:`
			precision highp float;

			uniform sampler2D tDiffuse;

			varying vec2 vUv;

			#include <tonemapping_pars_fragment>
			#include <colorspace_pars_fragment>

			void main() {
				gl_FragColor = texture2D( tDiffuse, vUv );

				#ifdef LINEAR_TONE_MAPPING
					gl_FragColor.rgb = LinearToneMapping( gl_FragColor.rgb );
				#elif defined( REINHARD_TONE_MAPPING )
					gl_FragColor.rgb = ReinhardToneMapping( gl_FragColor.rgb );
				#elif defined( CINEON_TONE_MAPPING )
					gl_FragColor.rgb = CineonToneMapping( gl_FragColor.rgb );
				#elif defined( ACES_FILMIC_TONE_MAPPING )
					gl_FragColor.rgb = ACESFilmicToneMapping( gl_FragColor.rgb );
				#elif defined( AGX_TONE_MAPPING )
					gl_FragColor.rgb = AgXToneMapping( gl_FragColor.rgb );
				#elif defined( NEUTRAL_TONE_MAPPING )
					gl_FragColor.rgb = NeutralToneMapping( gl_FragColor.rgb );
				#elif defined( CUSTOM_TONE_MAPPING )
					gl_FragColor.rgb = CustomToneMapping( gl_FragColor.rgb );
				#endif

				#ifdef SRGB_TRANSFER
					gl_FragColor = sRGBTransferOETF( gl_FragColor );
				#endif
			}`,depthTest:!1,depthWrite:!1}),u=new At(h,d),f=new Cs(-1,1,1,-1,0,1),g=null,v=null,_=!1,p,M=null,C=[],S=!1;this.setSize=function(T,A){a.setSize(T,A),o!==null&&o.setSize(T,A),l!==null&&l.setSize(T,A);for(let x=0;x<C.length;x++){let E=C[x];E.setSize&&E.setSize(T,A)}},this.setEffects=function(T){C=T,S=C.length>0&&C[0].isRenderPass===!0;let A=a.width,x=a.height;C.length>0&&o===null&&(o=new on(A,x,{type:Ln,depthBuffer:!1,stencilBuffer:!1}),l=new on(A,x,{type:Ln,depthBuffer:!1,stencilBuffer:!1}));let E=s===!0&&C.some(H=>H.needsDepthTexture===!0);E!==(a.depthTexture!==null)&&(E===!0&&c===null&&(c=new ri(A,x),r===!0&&(c.format=oi,c.type=Qi)),a.dispose(),a.depthTexture=E?c:null,a.resolveDepthBuffer=E,a.storeMultisampledDepthBuffer=E);for(let H=0;H<C.length;H++){let F=C[H];F.setSize&&F.setSize(A,x),E&&F.needsDepthTexture===!0&&F.setDepthTexture&&F.setDepthTexture(c)}},this.begin=function(T,A){if(_||T.toneMapping===$n&&C.length===0)return!1;if(M=A,A!==null){let x=A.width,E=A.height;(a.width!==x||a.height!==E)&&this.setSize(x,E)}return S===!1&&T.setRenderTarget(a),p=T.toneMapping,T.toneMapping=$n,!0},this.hasRenderPass=function(){return S},this.end=function(T,A){T.toneMapping=p,_=!0;let x=a,E=o;for(let H=0;H<C.length;H++){let F=C[H];F.enabled!==!1&&(F.render(T,E,x,A),F.needsSwap!==!1&&(x=E,E=E===o?l:o))}if(g!==T.outputColorSpace||v!==T.toneMapping){g=T.outputColorSpace,v=T.toneMapping,d.defines={},Ke.getTransfer(g)===it&&(d.defines.SRGB_TRANSFER="");let H=u_[v];H&&(d.defines[H]=""),d.needsUpdate=!0}d.uniforms.tDiffuse.value=x.texture,T.setRenderTarget(M),T.render(u,f),M=null,_=!1},this.isCompositing=function(){return _},this.dispose=function(){a.dispose(),o!==null&&o.dispose(),l!==null&&l.dispose(),h.dispose(),d.dispose()}}var Vd=new Kt,Hd=new ri(1,1),Wd=new hr(1),$d=new rr,Xd=new La,qd=new cr,bd=[],Md=[],Sd=new Float32Array(16),wd=new Float32Array(9),Td=new Float32Array(4);function Fs(i,e,t){let n=i[0];if(n<=0||n>0)return i;let s=e*t,r=bd[s];if(r===void 0&&(r=new Float32Array(s),bd[s]=r),e!==0){n.toArray(r,0);for(let a=1,o=0;a!==e;++a)o+=t,i[a].toArray(r,o)}return r}function Rt(i,e){if(i.length!==e.length)return!1;for(let t=0,n=i.length;t<n;t++)if(i[t]!==e[t])return!1;return!0}function Ct(i,e){for(let t=0,n=e.length;t<n;t++)i[t]=e[t]}function Vo(i,e){let t=Md[e];t===void 0&&(t=new Int32Array(e),Md[e]=t);for(let n=0;n!==e;++n)t[n]=i.allocateTextureUnit();return t}function f_(i,e){let t=this.cache;t[0]!==e&&(i.uniform1f(this.addr,e),t[0]=e)}function p_(i,e){let t=this.cache;if(e.x!==void 0)(t[0]!==e.x||t[1]!==e.y)&&(i.uniform2f(this.addr,e.x,e.y),t[0]=e.x,t[1]=e.y);else{if(Rt(t,e))return;i.uniform2fv(this.addr,e),Ct(t,e)}}function m_(i,e){let t=this.cache;if(e.x!==void 0)(t[0]!==e.x||t[1]!==e.y||t[2]!==e.z)&&(i.uniform3f(this.addr,e.x,e.y,e.z),t[0]=e.x,t[1]=e.y,t[2]=e.z);else if(e.r!==void 0)(t[0]!==e.r||t[1]!==e.g||t[2]!==e.b)&&(i.uniform3f(this.addr,e.r,e.g,e.b),t[0]=e.r,t[1]=e.g,t[2]=e.b);else{if(Rt(t,e))return;i.uniform3fv(this.addr,e),Ct(t,e)}}function g_(i,e){let t=this.cache;if(e.x!==void 0)(t[0]!==e.x||t[1]!==e.y||t[2]!==e.z||t[3]!==e.w)&&(i.uniform4f(this.addr,e.x,e.y,e.z,e.w),t[0]=e.x,t[1]=e.y,t[2]=e.z,t[3]=e.w);else{if(Rt(t,e))return;i.uniform4fv(this.addr,e),Ct(t,e)}}function __(i,e){let t=this.cache,n=e.elements;if(n===void 0){if(Rt(t,e))return;i.uniformMatrix2fv(this.addr,!1,e),Ct(t,e)}else{if(Rt(t,n))return;Td.set(n),i.uniformMatrix2fv(this.addr,!1,Td),Ct(t,n)}}function v_(i,e){let t=this.cache,n=e.elements;if(n===void 0){if(Rt(t,e))return;i.uniformMatrix3fv(this.addr,!1,e),Ct(t,e)}else{if(Rt(t,n))return;wd.set(n),i.uniformMatrix3fv(this.addr,!1,wd),Ct(t,n)}}function x_(i,e){let t=this.cache,n=e.elements;if(n===void 0){if(Rt(t,e))return;i.uniformMatrix4fv(this.addr,!1,e),Ct(t,e)}else{if(Rt(t,n))return;Sd.set(n),i.uniformMatrix4fv(this.addr,!1,Sd),Ct(t,n)}}function y_(i,e){let t=this.cache;t[0]!==e&&(i.uniform1i(this.addr,e),t[0]=e)}function b_(i,e){let t=this.cache;if(e.x!==void 0)(t[0]!==e.x||t[1]!==e.y)&&(i.uniform2i(this.addr,e.x,e.y),t[0]=e.x,t[1]=e.y);else{if(Rt(t,e))return;i.uniform2iv(this.addr,e),Ct(t,e)}}function M_(i,e){let t=this.cache;if(e.x!==void 0)(t[0]!==e.x||t[1]!==e.y||t[2]!==e.z)&&(i.uniform3i(this.addr,e.x,e.y,e.z),t[0]=e.x,t[1]=e.y,t[2]=e.z);else{if(Rt(t,e))return;i.uniform3iv(this.addr,e),Ct(t,e)}}function S_(i,e){let t=this.cache;if(e.x!==void 0)(t[0]!==e.x||t[1]!==e.y||t[2]!==e.z||t[3]!==e.w)&&(i.uniform4i(this.addr,e.x,e.y,e.z,e.w),t[0]=e.x,t[1]=e.y,t[2]=e.z,t[3]=e.w);else{if(Rt(t,e))return;i.uniform4iv(this.addr,e),Ct(t,e)}}function w_(i,e){let t=this.cache;t[0]!==e&&(i.uniform1ui(this.addr,e),t[0]=e)}function T_(i,e){let t=this.cache;if(e.x!==void 0)(t[0]!==e.x||t[1]!==e.y)&&(i.uniform2ui(this.addr,e.x,e.y),t[0]=e.x,t[1]=e.y);else{if(Rt(t,e))return;i.uniform2uiv(this.addr,e),Ct(t,e)}}function E_(i,e){let t=this.cache;if(e.x!==void 0)(t[0]!==e.x||t[1]!==e.y||t[2]!==e.z)&&(i.uniform3ui(this.addr,e.x,e.y,e.z),t[0]=e.x,t[1]=e.y,t[2]=e.z);else{if(Rt(t,e))return;i.uniform3uiv(this.addr,e),Ct(t,e)}}function A_(i,e){let t=this.cache;if(e.x!==void 0)(t[0]!==e.x||t[1]!==e.y||t[2]!==e.z||t[3]!==e.w)&&(i.uniform4ui(this.addr,e.x,e.y,e.z,e.w),t[0]=e.x,t[1]=e.y,t[2]=e.z,t[3]=e.w);else{if(Rt(t,e))return;i.uniform4uiv(this.addr,e),Ct(t,e)}}function Ho(i){return i.version===0&&(i.compareFunction=vc,i.needsUpdate=!0),i}function R_(i,e,t){let n=this.cache,s=t.allocateTextureUnit();n[0]!==s&&(i.uniform1i(this.addr,s),n[0]=s);let r;this.type===i.SAMPLER_2D_SHADOW?r=Ho(Hd):r=Vd,t.setTexture2D(e||r,s)}function C_(i,e,t){let n=this.cache,s=t.allocateTextureUnit();n[0]!==s&&(i.uniform1i(this.addr,s),n[0]=s),t.setTexture3D(e||Xd,s)}function P_(i,e,t){let n=this.cache,s=t.allocateTextureUnit();n[0]!==s&&(i.uniform1i(this.addr,s),n[0]=s);let r;this.type===i.SAMPLER_CUBE_SHADOW?r=Ho(Wd):r=qd,t.setTextureCube(e||r,s)}function I_(i,e,t){let n=this.cache,s=t.allocateTextureUnit();n[0]!==s&&(i.uniform1i(this.addr,s),n[0]=s),t.setTexture2DArray(e||$d,s)}function L_(i){switch(i){case 5126:return f_;case 35664:return p_;case 35665:return m_;case 35666:return g_;case 35674:return __;case 35675:return v_;case 35676:return x_;case 5124:case 35670:return y_;case 35667:case 35671:return b_;case 35668:case 35672:return M_;case 35669:case 35673:return S_;case 5125:return w_;case 36294:return T_;case 36295:return E_;case 36296:return A_;case 35678:case 36198:case 36298:case 36306:case 35682:return R_;case 35679:case 36299:case 36307:return C_;case 35680:case 36300:case 36308:case 36293:return P_;case 36289:case 36303:case 36311:case 36292:return I_}}function N_(i,e){i.uniform1fv(this.addr,e)}function D_(i,e){let t=Fs(e,this.size,2);i.uniform2fv(this.addr,t)}function U_(i,e){let t=Fs(e,this.size,3);i.uniform3fv(this.addr,t)}function F_(i,e){let t=Fs(e,this.size,4);i.uniform4fv(this.addr,t)}function O_(i,e){let t=Fs(e,this.size,4);i.uniformMatrix2fv(this.addr,!1,t)}function k_(i,e){let t=Fs(e,this.size,9);i.uniformMatrix3fv(this.addr,!1,t)}function B_(i,e){let t=Fs(e,this.size,16);i.uniformMatrix4fv(this.addr,!1,t)}function z_(i,e){i.uniform1iv(this.addr,e)}function G_(i,e){i.uniform2iv(this.addr,e)}function V_(i,e){i.uniform3iv(this.addr,e)}function H_(i,e){i.uniform4iv(this.addr,e)}function W_(i,e){i.uniform1uiv(this.addr,e)}function $_(i,e){i.uniform2uiv(this.addr,e)}function X_(i,e){i.uniform3uiv(this.addr,e)}function q_(i,e){i.uniform4uiv(this.addr,e)}function Y_(i,e,t){let n=this.cache,s=e.length,r=Vo(t,s);Rt(n,r)||(i.uniform1iv(this.addr,r),Ct(n,r));let a;this.type===i.SAMPLER_2D_SHADOW?a=Ho(Hd):a=Vd;for(let o=0;o!==s;++o)t.setTexture2D(e[o]||a,r[o])}function Z_(i,e,t){let n=this.cache,s=e.length,r=Vo(t,s);Rt(n,r)||(i.uniform1iv(this.addr,r),Ct(n,r));for(let a=0;a!==s;++a)t.setTexture3D(e[a]||Xd,r[a])}function J_(i,e,t){let n=this.cache,s=e.length,r=Vo(t,s);Rt(n,r)||(i.uniform1iv(this.addr,r),Ct(n,r));let a;this.type===i.SAMPLER_CUBE_SHADOW?a=Ho(Wd):a=qd;for(let o=0;o!==s;++o)t.setTextureCube(e[o]||a,r[o])}function K_(i,e,t){let n=this.cache,s=e.length,r=Vo(t,s);Rt(n,r)||(i.uniform1iv(this.addr,r),Ct(n,r));for(let a=0;a!==s;++a)t.setTexture2DArray(e[a]||$d,r[a])}function j_(i){switch(i){case 5126:return N_;case 35664:return D_;case 35665:return U_;case 35666:return F_;case 35674:return O_;case 35675:return k_;case 35676:return B_;case 5124:case 35670:return z_;case 35667:case 35671:return G_;case 35668:case 35672:return V_;case 35669:case 35673:return H_;case 5125:return W_;case 36294:return $_;case 36295:return X_;case 36296:return q_;case 35678:case 36198:case 36298:case 36306:case 35682:return Y_;case 35679:case 36299:case 36307:return Z_;case 35680:case 36300:case 36308:case 36293:return J_;case 36289:case 36303:case 36311:case 36292:return K_}}var Rc=class{constructor(e,t,n){this.id=e,this.addr=n,this.cache=[],this.type=t.type,this.setValue=L_(t.type)}},Cc=class{constructor(e,t,n){this.id=e,this.addr=n,this.cache=[],this.type=t.type,this.size=t.size,this.setValue=j_(t.type)}},Pc=class{constructor(e){this.id=e,this.seq=[],this.map={}}setValue(e,t,n){let s=this.seq;for(let r=0,a=s.length;r!==a;++r){let o=s[r];o.setValue(e,t[o.id],n)}}},Ec=/(\w+)(\])?(\[|\.)?/g;function Ed(i,e){i.seq.push(e),i.map[e.id]=e}function Q_(i,e,t){let n=i.name,s=n.length;for(Ec.lastIndex=0;;){let r=Ec.exec(n),a=Ec.lastIndex,o=r[1],l=r[2]==="]",c=r[3];if(l&&(o=o|0),c===void 0||c==="["&&a+2===s){Ed(t,c===void 0?new Rc(o,i,e):new Cc(o,i,e));break}else{let d=t.map[o];d===void 0&&(d=new Pc(o),Ed(t,d)),t=d}}}var Us=class{constructor(e,t){this.seq=[],this.map={};let n=e.getProgramParameter(t,e.ACTIVE_UNIFORMS);for(let a=0;a<n;++a){let o=e.getActiveUniform(t,a),l=e.getUniformLocation(t,o.name);Q_(o,l,this)}let s=[],r=[];for(let a of this.seq)a.type===e.SAMPLER_2D_SHADOW||a.type===e.SAMPLER_CUBE_SHADOW||a.type===e.SAMPLER_2D_ARRAY_SHADOW?s.push(a):r.push(a);s.length>0&&(this.seq=s.concat(r))}setValue(e,t,n,s){let r=this.map[t];r!==void 0&&r.setValue(e,n,s)}setOptional(e,t,n){let s=t[n];s!==void 0&&this.setValue(e,n,s)}static upload(e,t,n,s){for(let r=0,a=t.length;r!==a;++r){let o=t[r],l=n[o.id];l.needsUpdate!==!1&&o.setValue(e,l.value,s)}}static seqWithValue(e,t){let n=[];for(let s=0,r=e.length;s!==r;++s){let a=e[s];a.id in t&&n.push(a)}return n}};function Ad(i,e,t){let n=i.createShader(e);return i.shaderSource(n,t),i.compileShader(n),n}var ev=37297,tv=0;function nv(i,e){let t=i.split(`
`),n=[],s=Math.max(e-6,0),r=Math.min(e+6,t.length);for(let a=s;a<r;a++){let o=a+1;n.push(`${o===e?">":" "} ${o}: ${t[a]}`)}return n.join(`
`)}var Rd=new Ge;function iv(i){Ke._getMatrix(Rd,Ke.workingColorSpace,i);let e=`mat3( ${Rd.elements.map(t=>t.toFixed(4))} )`;switch(Ke.getTransfer(i)){case nr:return[e,"LinearTransferOETF"];case it:return[e,"sRGBTransferOETF"];default:return Oe("WebGLProgram: Unsupported color space: ",i),[e,"LinearTransferOETF"]}}function Cd(i,e,t){let n=i.getShaderParameter(e,i.COMPILE_STATUS),r=(i.getShaderInfoLog(e)||"").trim();if(n&&r==="")return"";let a=/ERROR: 0:(\d+)/.exec(r);if(a){let o=parseInt(a[1]);return t.toUpperCase()+`

`+r+`

`+nv(i.getShaderSource(e),o)}else return r}function sv(i,e){let t=iv(e);return[`vec4 ${i}( vec4 value ) {`,`	return ${t[1]}( vec4( ${t[0]} * value.rgb, value.a ) );`,"}"].join(`
`)}var rv={[ec]:"Linear",[tc]:"Reinhard",[nc]:"Cineon",[ic]:"ACESFilmic",[rc]:"AgX",[ac]:"Neutral",[sc]:"Custom"};function av(i,e){let t=rv[e];return t===void 0?(Oe("WebGLProgram: Unsupported toneMapping:",e),"vec3 "+i+"( vec3 color ) { return LinearToneMapping( color ); }"):"vec3 "+i+"( vec3 color ) { return "+t+"ToneMapping( color ); }"}var Bo=new G;function ov(){Ke.getLuminanceCoefficients(Bo);let i=Bo.x.toFixed(4),e=Bo.y.toFixed(4),t=Bo.z.toFixed(4);return["float luminance( const in vec3 rgb ) {",`	const vec3 weights = vec3( ${i}, ${e}, ${t} );`,"	return dot( weights, rgb );","}"].join(`
`)}function lv(i){return[i.extensionClipCullDistance?"#extension GL_ANGLE_clip_cull_distance : require":"",i.extensionMultiDraw?"#extension GL_ANGLE_multi_draw : require":""].filter(Er).join(`
`)}function cv(i){let e=[];for(let t in i){let n=i[t];n!==!1&&e.push("#define "+t+" "+n)}return e.join(`
`)}function hv(i,e){let t={},n=i.getProgramParameter(e,i.ACTIVE_ATTRIBUTES);for(let s=0;s<n;s++){let r=i.getActiveAttrib(e,s),a=r.name,o=1;r.type===i.FLOAT_MAT2&&(o=2),r.type===i.FLOAT_MAT3&&(o=3),r.type===i.FLOAT_MAT4&&(o=4),t[a]={type:r.type,location:i.getAttribLocation(e,a),locationSize:o}}return t}function Er(i){return i!==""}function Pd(i,e){let t=e.numSpotLightShadows+e.numSpotLightMaps-e.numSpotLightShadowsWithMaps;return i.replace(/NUM_SUN_LIGHTS/g,e.numSunLights).replace(/NUM_DIR_LIGHTS/g,e.numDirLights).replace(/NUM_SPOT_LIGHTS/g,e.numSpotLights).replace(/NUM_SPOT_LIGHT_MAPS/g,e.numSpotLightMaps).replace(/NUM_SPOT_LIGHT_COORDS/g,t).replace(/NUM_RECT_AREA_LIGHTS/g,e.numRectAreaLights).replace(/NUM_POINT_LIGHTS/g,e.numPointLights).replace(/NUM_HEMI_LIGHTS/g,e.numHemiLights).replace(/NUM_SUN_LIGHT_SHADOWS/g,e.numSunLightShadows).replace(/NUM_DIR_LIGHT_SHADOWS/g,e.numDirLightShadows).replace(/NUM_SPOT_LIGHT_SHADOWS_WITH_MAPS/g,e.numSpotLightShadowsWithMaps).replace(/NUM_SPOT_LIGHT_SHADOWS/g,e.numSpotLightShadows).replace(/NUM_POINT_LIGHT_SHADOWS/g,e.numPointLightShadows).replace(/NUM_LIGHT_PROBE_GRIDS/g,e.numLightProbeGrids)}function Id(i,e){return i.replace(/NUM_CLIPPING_PLANES/g,e.numClippingPlanes).replace(/UNION_CLIPPING_PLANES/g,e.numClippingPlanes-e.numClipIntersection)}var uv=/^[ \t]*#include +<([\w\d./]+)>/gm;function Ic(i){return i.replace(uv,dv)}function dv(i,e){let t=qe[e];if(t===void 0)throw new Error("THREE.WebGLProgram: Can not resolve #include <"+e+">");return Ic(t)}var fv=/#pragma unroll_loop_start\s+for\s*\(\s*int\s+i\s*=\s*(\d+)\s*;\s*i\s*<\s*(\d+)\s*;\s*i\s*\+\+\s*\)\s*{([\s\S]+?)}\s+#pragma unroll_loop_end/g;function Ld(i){return i.replace(fv,pv)}function pv(i,e,t,n){let s="";for(let r=parseInt(e);r<parseInt(t);r++)s+=n.replace(/\[\s*i\s*\]/g,"[ "+r+" ]").replace(/UNROLLED_LOOP_INDEX/g,r);return s}function Nd(i){let e=`precision ${i.precision} float;
	precision ${i.precision} int;
	precision ${i.precision} sampler2D;
	precision ${i.precision} samplerCube;
	precision ${i.precision} sampler3D;
	precision ${i.precision} sampler2DArray;
	precision ${i.precision} sampler2DShadow;
	precision ${i.precision} samplerCubeShadow;
	precision ${i.precision} sampler2DArrayShadow;
	precision ${i.precision} isampler2D;
	precision ${i.precision} isampler3D;
	precision ${i.precision} isamplerCube;
	precision ${i.precision} isampler2DArray;
	precision ${i.precision} usampler2D;
	precision ${i.precision} usampler3D;
	precision ${i.precision} usamplerCube;
	precision ${i.precision} usampler2DArray;
	`;return i.precision==="highp"?e+=`
#define HIGH_PRECISION`:i.precision==="mediump"?e+=`
#define MEDIUM_PRECISION`:i.precision==="lowp"&&(e+=`
#define LOW_PRECISION`),e}var mv={[gr]:"SHADOWMAP_TYPE_PCF",[Is]:"SHADOWMAP_TYPE_VSM"};function gv(i){return mv[i.shadowMapType]||"SHADOWMAP_TYPE_BASIC"}var _v={[Ns]:"ENVMAP_MODE_REFRACTION"};function vv(i){return i.envMap===!1?"ENVMAP_MODE_REFLECTION":_v[i.envMapMode]||"ENVMAP_MODE_REFLECTION"}var xv={[Ql]:"ENVMAP_BLENDING_MULTIPLY",[Ju]:"ENVMAP_BLENDING_MIX",[Ku]:"ENVMAP_BLENDING_ADD"};function yv(i){return i.envMap===!1?"ENVMAP_BLENDING_NONE":xv[i.combine]||"ENVMAP_BLENDING_NONE"}function bv(i,e,t,n){let s=i.getContext(),r=t.defines,a=t.vertexShader,o=t.fragmentShader,l=gv(t),c=t.envMapPMREM===!0?"ENVMAP_TYPE_PMREM":"ENVMAP_TYPE_CUBE",h=vv(t),d=yv(t),u=lv(t),f=cv(r),g=s.createProgram(),v,_,p=t.glslVersion?"#version "+t.glslVersion+`
`:"";t.isRawShaderMaterial?(v=["#define SHADER_TYPE "+t.shaderType,"#define SHADER_NAME "+t.shaderName,f].filter(Er).join(`
`),v.length>0&&(v+=`
`),_=["#define SHADER_TYPE "+t.shaderType,"#define SHADER_NAME "+t.shaderName,f].filter(Er).join(`
`),_.length>0&&(_+=`
`)):(v=[Nd(t),"#define SHADER_TYPE "+t.shaderType,"#define SHADER_NAME "+t.shaderName,f,t.extensionClipCullDistance?"#define USE_CLIP_DISTANCE":"",t.batching?"#define USE_BATCHING":"",t.batchingColor?"#define USE_BATCHING_COLOR":"",t.instancing?"#define USE_INSTANCING":"",t.instancingColor?"#define USE_INSTANCING_COLOR":"",t.instancingMorph?"#define USE_INSTANCING_MORPH":"",t.useFog&&t.fog?"#define USE_FOG":"",t.useFog&&t.fogExp2?"#define FOG_EXP2":"",t.map?"#define USE_MAP":"",t.envMap?"#define USE_ENVMAP":"",t.envMap?"#define "+h:"",t.lightMap?"#define USE_LIGHTMAP":"",t.aoMap?"#define USE_AOMAP":"",t.bumpMap?"#define USE_BUMPMAP":"",t.normalMap?"#define USE_NORMALMAP":"",t.normalMapObjectSpace?"#define USE_NORMALMAP_OBJECTSPACE":"",t.normalMapTangentSpace?"#define USE_NORMALMAP_TANGENTSPACE":"",t.displacementMap?"#define USE_DISPLACEMENTMAP":"",t.emissiveMap?"#define USE_EMISSIVEMAP":"",t.anisotropy?"#define USE_ANISOTROPY":"",t.anisotropyMap?"#define USE_ANISOTROPYMAP":"",t.clearcoatMap?"#define USE_CLEARCOATMAP":"",t.clearcoatRoughnessMap?"#define USE_CLEARCOAT_ROUGHNESSMAP":"",t.clearcoatNormalMap?"#define USE_CLEARCOAT_NORMALMAP":"",t.diffuseRoughnessMap?"#define USE_DIFFUSE_ROUGHNESSMAP":"",t.iridescenceMap?"#define USE_IRIDESCENCEMAP":"",t.iridescenceThicknessMap?"#define USE_IRIDESCENCE_THICKNESSMAP":"",t.specularMap?"#define USE_SPECULARMAP":"",t.specularColorMap?"#define USE_SPECULAR_COLORMAP":"",t.specularIntensityMap?"#define USE_SPECULAR_INTENSITYMAP":"",t.roughnessMap?"#define USE_ROUGHNESSMAP":"",t.metalnessMap?"#define USE_METALNESSMAP":"",t.alphaMap?"#define USE_ALPHAMAP":"",t.alphaHash?"#define USE_ALPHAHASH":"",t.transmission?"#define USE_TRANSMISSION":"",t.transmissionMap?"#define USE_TRANSMISSIONMAP":"",t.thicknessMap?"#define USE_THICKNESSMAP":"",t.sheenColorMap?"#define USE_SHEEN_COLORMAP":"",t.sheenRoughnessMap?"#define USE_SHEEN_ROUGHNESSMAP":"",t.mapUv?"#define MAP_UV "+t.mapUv:"",t.alphaMapUv?"#define ALPHAMAP_UV "+t.alphaMapUv:"",t.lightMapUv?"#define LIGHTMAP_UV "+t.lightMapUv:"",t.aoMapUv?"#define AOMAP_UV "+t.aoMapUv:"",t.emissiveMapUv?"#define EMISSIVEMAP_UV "+t.emissiveMapUv:"",t.bumpMapUv?"#define BUMPMAP_UV "+t.bumpMapUv:"",t.normalMapUv?"#define NORMALMAP_UV "+t.normalMapUv:"",t.displacementMapUv?"#define DISPLACEMENTMAP_UV "+t.displacementMapUv:"",t.metalnessMapUv?"#define METALNESSMAP_UV "+t.metalnessMapUv:"",t.roughnessMapUv?"#define ROUGHNESSMAP_UV "+t.roughnessMapUv:"",t.anisotropyMapUv?"#define ANISOTROPYMAP_UV "+t.anisotropyMapUv:"",t.clearcoatMapUv?"#define CLEARCOATMAP_UV "+t.clearcoatMapUv:"",t.clearcoatNormalMapUv?"#define CLEARCOAT_NORMALMAP_UV "+t.clearcoatNormalMapUv:"",t.clearcoatRoughnessMapUv?"#define CLEARCOAT_ROUGHNESSMAP_UV "+t.clearcoatRoughnessMapUv:"",t.diffuseRoughnessMapUv?"#define DIFFUSE_ROUGHNESSMAP_UV "+t.diffuseRoughnessMapUv:"",t.iridescenceMapUv?"#define IRIDESCENCEMAP_UV "+t.iridescenceMapUv:"",t.iridescenceThicknessMapUv?"#define IRIDESCENCE_THICKNESSMAP_UV "+t.iridescenceThicknessMapUv:"",t.sheenColorMapUv?"#define SHEEN_COLORMAP_UV "+t.sheenColorMapUv:"",t.sheenRoughnessMapUv?"#define SHEEN_ROUGHNESSMAP_UV "+t.sheenRoughnessMapUv:"",t.specularMapUv?"#define SPECULARMAP_UV "+t.specularMapUv:"",t.specularColorMapUv?"#define SPECULAR_COLORMAP_UV "+t.specularColorMapUv:"",t.specularIntensityMapUv?"#define SPECULAR_INTENSITYMAP_UV "+t.specularIntensityMapUv:"",t.transmissionMapUv?"#define TRANSMISSIONMAP_UV "+t.transmissionMapUv:"",t.thicknessMapUv?"#define THICKNESSMAP_UV "+t.thicknessMapUv:"",t.vertexTangents&&t.flatShading===!1?"#define USE_TANGENT":"",t.vertexNormals?"#define HAS_NORMAL":"",t.vertexColors?"#define USE_COLOR":"",t.vertexAlphas?"#define USE_COLOR_ALPHA":"",t.vertexUv1s?"#define USE_UV1":"",t.vertexUv2s?"#define USE_UV2":"",t.vertexUv3s?"#define USE_UV3":"",t.pointsUvs?"#define USE_POINTS_UV":"",t.flatShading?"#define FLAT_SHADED":"",t.skinning?"#define USE_SKINNING":"",t.morphTargets?"#define USE_MORPHTARGETS":"",t.morphNormals&&t.flatShading===!1?"#define USE_MORPHNORMALS":"",t.morphColors?"#define USE_MORPHCOLORS":"",t.morphTargetsCount>0?"#define MORPHTARGETS_TEXTURE_STRIDE "+t.morphTextureStride:"",t.morphTargetsCount>0?"#define MORPHTARGETS_COUNT "+t.morphTargetsCount:"",t.doubleSided?"#define DOUBLE_SIDED":"",t.flipSided?"#define FLIP_SIDED":"",t.shadowMapEnabled?"#define USE_SHADOWMAP":"",t.shadowMapEnabled?"#define "+l:"",t.sizeAttenuation?"#define USE_SIZEATTENUATION":"",t.numLightProbes>0?"#define USE_LIGHT_PROBES":"",t.logarithmicDepthBuffer?"#define USE_LOGARITHMIC_DEPTH_BUFFER":"",t.reversedDepthBuffer?"#define USE_REVERSED_DEPTH_BUFFER":"","uniform mat4 modelMatrix;","uniform mat4 modelViewMatrix;","uniform mat4 projectionMatrix;","uniform mat4 viewMatrix;","uniform mat3 normalMatrix;","uniform vec3 cameraPosition;","uniform bool isOrthographic;","#ifdef USE_INSTANCING","	attribute mat4 instanceMatrix;","#endif","#ifdef USE_INSTANCING_COLOR","	attribute vec3 instanceColor;","#endif","#ifdef USE_INSTANCING_MORPH","	uniform sampler2D morphTexture;","#endif","attribute vec3 position;","attribute vec3 normal;","attribute vec2 uv;","#ifdef USE_UV1","	attribute vec2 uv1;","#endif","#ifdef USE_UV2","	attribute vec2 uv2;","#endif","#ifdef USE_UV3","	attribute vec2 uv3;","#endif","#ifdef USE_TANGENT","	attribute vec4 tangent;","#endif","#if defined( USE_COLOR_ALPHA )","	attribute vec4 color;","#elif defined( USE_COLOR )","	attribute vec3 color;","#endif","#ifdef USE_SKINNING","	attribute vec4 skinIndex;","	attribute vec4 skinWeight;","#endif",`
`].filter(Er).join(`
`),_=[Nd(t),"#define SHADER_TYPE "+t.shaderType,"#define SHADER_NAME "+t.shaderName,f,t.useFog&&t.fog?"#define USE_FOG":"",t.useFog&&t.fogExp2?"#define FOG_EXP2":"",t.alphaToCoverage?"#define ALPHA_TO_COVERAGE":"",t.map?"#define USE_MAP":"",t.matcap?"#define USE_MATCAP":"",t.envMap?"#define USE_ENVMAP":"",t.envMap?"#define "+c:"",t.envMap?"#define "+h:"",t.envMap?"#define "+d:"",t.envMapPMREM?"#define ENVMAP_MAX_LOD "+t.envMapMaxLod+".0":"",t.envMapPMREM?"#define ENVMAP_SIZE "+t.envMapSize+".0":"",t.lightMap?"#define USE_LIGHTMAP":"",t.aoMap?"#define USE_AOMAP":"",t.bumpMap?"#define USE_BUMPMAP":"",t.normalMap?"#define USE_NORMALMAP":"",t.normalMapObjectSpace?"#define USE_NORMALMAP_OBJECTSPACE":"",t.normalMapTangentSpace?"#define USE_NORMALMAP_TANGENTSPACE":"",t.packedNormalMap?"#define USE_PACKED_NORMALMAP":"",t.emissiveMap?"#define USE_EMISSIVEMAP":"",t.anisotropy?"#define USE_ANISOTROPY":"",t.anisotropyMap?"#define USE_ANISOTROPYMAP":"",t.clearcoat?"#define USE_CLEARCOAT":"",t.clearcoatMap?"#define USE_CLEARCOATMAP":"",t.clearcoatRoughnessMap?"#define USE_CLEARCOAT_ROUGHNESSMAP":"",t.clearcoatNormalMap?"#define USE_CLEARCOAT_NORMALMAP":"",t.diffuseRoughness?"#define USE_DIFFUSE_ROUGHNESS":"",t.diffuseRoughnessMap?"#define USE_DIFFUSE_ROUGHNESSMAP":"",t.dispersion?"#define USE_DISPERSION":"",t.retroreflection?"#define USE_RETROREFLECTION":"",t.iridescence?"#define USE_IRIDESCENCE":"",t.iridescenceMap?"#define USE_IRIDESCENCEMAP":"",t.iridescenceThicknessMap?"#define USE_IRIDESCENCE_THICKNESSMAP":"",t.specularMap?"#define USE_SPECULARMAP":"",t.specularColorMap?"#define USE_SPECULAR_COLORMAP":"",t.specularIntensityMap?"#define USE_SPECULAR_INTENSITYMAP":"",t.roughnessMap?"#define USE_ROUGHNESSMAP":"",t.metalnessMap?"#define USE_METALNESSMAP":"",t.alphaMap?"#define USE_ALPHAMAP":"",t.alphaTest?"#define USE_ALPHATEST":"",t.alphaHash?"#define USE_ALPHAHASH":"",t.sheen?"#define USE_SHEEN":"",t.sheenColorMap?"#define USE_SHEEN_COLORMAP":"",t.sheenRoughnessMap?"#define USE_SHEEN_ROUGHNESSMAP":"",t.transmission?"#define USE_TRANSMISSION":"",t.transmissionMap?"#define USE_TRANSMISSIONMAP":"",t.thicknessMap?"#define USE_THICKNESSMAP":"",t.vertexTangents&&t.flatShading===!1?"#define USE_TANGENT":"",t.vertexColors||t.instancingColor?"#define USE_COLOR":"",t.vertexAlphas||t.batchingColor?"#define USE_COLOR_ALPHA":"",t.vertexUv1s?"#define USE_UV1":"",t.vertexUv2s?"#define USE_UV2":"",t.vertexUv3s?"#define USE_UV3":"",t.pointsUvs?"#define USE_POINTS_UV":"",t.gradientMap?"#define USE_GRADIENTMAP":"",t.flatShading?"#define FLAT_SHADED":"",t.doubleSided?"#define DOUBLE_SIDED":"",t.flipSided?"#define FLIP_SIDED":"",t.shadowMapEnabled?"#define USE_SHADOWMAP":"",t.shadowMapEnabled?"#define "+l:"",t.premultipliedAlpha?"#define PREMULTIPLIED_ALPHA":"",t.numLightProbes>0?"#define USE_LIGHT_PROBES":"",t.decodeVideoTexture?"#define DECODE_VIDEO_TEXTURE":"",t.decodeVideoTextureEmissive?"#define DECODE_VIDEO_TEXTURE_EMISSIVE":"",t.logarithmicDepthBuffer?"#define USE_LOGARITHMIC_DEPTH_BUFFER":"",t.reversedDepthBuffer?"#define USE_REVERSED_DEPTH_BUFFER":"","uniform mat4 viewMatrix;","uniform vec3 cameraPosition;","uniform bool isOrthographic;",t.toneMapping!==$n?"#define TONE_MAPPING":"",t.toneMapping!==$n?qe.tonemapping_pars_fragment:"",t.toneMapping!==$n?av("toneMapping",t.toneMapping):"",t.dithering?"#define DITHERING":"",t.opaque?"#define OPAQUE":"",qe.colorspace_pars_fragment,sv("linearToOutputTexel",t.outputColorSpace),ov(),t.useDepthPacking?"#define DEPTH_PACKING "+t.depthPacking:"",`
`].filter(Er).join(`
`)),a=Ic(a),a=Pd(a,t),a=Id(a,t),o=Ic(o),o=Pd(o,t),o=Id(o,t),a=Ld(a),o=Ld(o),t.isRawShaderMaterial!==!0&&(p=`#version 300 es
`,v=[u,"#define attribute in","#define varying out","#define texture2D texture"].join(`
`)+`
`+v,_=["#define varying in",t.glslVersion===xc?"":"layout(location = 0) out highp vec4 pc_fragColor;",t.glslVersion===xc?"":"#define gl_FragColor pc_fragColor","#define gl_FragDepthEXT gl_FragDepth","#define texture2D texture","#define textureCube texture","#define texture2DProj textureProj","#define texture2DLodEXT textureLod","#define texture2DProjLodEXT textureProjLod","#define textureCubeLodEXT textureLod","#define texture2DGradEXT textureGrad","#define texture2DProjGradEXT textureProjGrad","#define textureCubeGradEXT textureGrad"].join(`
`)+`
`+_);let M=p+v+a,C=p+_+o,S=Ad(s,s.VERTEX_SHADER,M),T=Ad(s,s.FRAGMENT_SHADER,C);s.attachShader(g,S),s.attachShader(g,T),t.index0AttributeName!==void 0?s.bindAttribLocation(g,0,t.index0AttributeName):t.hasPositionAttribute===!0&&s.bindAttribLocation(g,0,"position"),s.linkProgram(g);function A(F){if(i.debug.checkShaderErrors){let N=s.getProgramInfoLog(g)||"",V=s.getShaderInfoLog(S)||"",Z=s.getShaderInfoLog(T)||"",w=N.trim(),U=V.trim(),k=Z.trim(),B=!0,z=!0;if(s.getProgramParameter(g,s.LINK_STATUS)===!1)if(B=!1,typeof i.debug.onShaderError=="function")i.debug.onShaderError(s,g,S,T);else{let P=Cd(s,S,"vertex"),X=Cd(s,T,"fragment");ze("WebGLProgram: Shader Error "+s.getError()+" - VALIDATE_STATUS "+s.getProgramParameter(g,s.VALIDATE_STATUS)+`

Material Name: `+F.name+`
Material Type: `+F.type+`

Program Info Log: `+w+`
`+P+`
`+X)}else w!==""?Oe("WebGLProgram: Program Info Log:",w):(U===""||k==="")&&(z=!1);z&&(F.diagnostics={runnable:B,programLog:w,vertexShader:{log:U,prefix:v},fragmentShader:{log:k,prefix:_}})}s.deleteShader(S),s.deleteShader(T),x=new Us(s,g),E=hv(s,g)}let x;this.getUniforms=function(){return x===void 0&&A(this),x};let E;this.getAttributes=function(){return E===void 0&&A(this),E};let H=t.rendererExtensionParallelShaderCompile===!1;return this.isReady=function(){return H===!1&&(H=s.getProgramParameter(g,ev)),H},this.destroy=function(){n.releaseStatesOfProgram(this),s.deleteProgram(g),this.program=void 0},this.type=t.shaderType,this.name=t.shaderName,this.id=tv++,this.cacheKey=e,this.usedTimes=1,this.program=g,this.vertexShader=S,this.fragmentShader=T,this}var Mv=0,Lc=class{constructor(){this.shaderCache=new Map,this.materialCache=new Map}update(e,t,n){let s=this._getShaderCacheForMaterial(e);return s.has(t)===!1&&(s.add(t),t.usedTimes++),s.has(n)===!1&&(s.add(n),n.usedTimes++),this}remove(e){let t=this.materialCache.get(e);for(let n of t)n.usedTimes--,n.usedTimes===0&&this.shaderCache.delete(n.code);return this.materialCache.delete(e),this}getVertexShaderStage(e){return this._getShaderStage(e.vertexShader)}getFragmentShaderStage(e){return this._getShaderStage(e.fragmentShader)}dispose(){this.shaderCache.clear(),this.materialCache.clear()}_getShaderCacheForMaterial(e){let t=this.materialCache,n=t.get(e);return n===void 0&&(n=new Set,t.set(e,n)),n}_getShaderStage(e){let t=this.shaderCache,n=t.get(e);return n===void 0&&(n=new Nc(e),t.set(e,n)),n}},Nc=class{constructor(e){this.id=Mv++,this.code=e,this.usedTimes=0}};function Sv(i){return i===Li||i===Mr||i===Sr}function wv(i,e,t,n,s,r){let a=new ws,o=new Lc,l=new Set,c=[],h=new Map,d=n.logarithmicDepthBuffer,u={MeshDepthMaterial:"depth",MeshDistanceMaterial:"distance",MeshNormalMaterial:"normal",MeshBasicMaterial:"basic",MeshLambertMaterial:"lambert",MeshPhongMaterial:"phong",MeshToonMaterial:"toon",MeshStandardMaterial:"physical",MeshPhysicalMaterial:"physical",MeshMatcapMaterial:"matcap",LineBasicMaterial:"basic",LineDashedMaterial:"dashed",PointsMaterial:"points",ShadowMaterial:"shadow",SpriteMaterial:"sprite"};function f(x){return l.add(x),x===0?"uv":`uv${x}`}function g(x,E,H,F,N,V){let Z=F.fog,w=N.geometry,U=x.isMeshStandardMaterial||x.isMeshLambertMaterial||x.isMeshPhongMaterial?F.environment:null,k=x.isMeshStandardMaterial||x.isMeshLambertMaterial&&!x.envMap||x.isMeshPhongMaterial&&!x.envMap,B=e.get(x.envMap||U,k),z=u[x.type],P=n.precision;x.precision!==null&&(P=n.getMaxPrecision(x.precision),P!==x.precision&&Oe("WebGLProgram.getParameters:",x.precision,"not supported, using",P,"instead."));let X=w.morphAttributes.position||w.morphAttributes.normal||w.morphAttributes.color,q=X!==void 0?X.length:0,re=0;w.morphAttributes.position!==void 0&&(re=1),w.morphAttributes.normal!==void 0&&(re=2),w.morphAttributes.color!==void 0&&(re=3);let Me,K,ve,Te;if(z){let ye=qn[z];Me=ye.vertexShader,K=ye.fragmentShader}else{Me=x.vertexShader,K=x.fragmentShader;let ye=o.getVertexShaderStage(x),rt=o.getFragmentShaderStage(x);o.update(x,ye,rt),ve=ye.id,Te=rt.id}let Ue=i.getRenderTarget(),Se=i.state.buffers.depth.getReversed(),We=N.isInstancedMesh===!0,bt=N.isBatchedMesh===!0,Be=!!x.map,st=!!x.matcap,at=!!B,Ye=at&&B.isPMREMTexture===!0,Ut=!!x.aoMap,Tt=!!x.lightMap,Yt=!!x.bumpMap&&x.wireframe===!1,gt=!!x.normalMap,Dn=!!x.displacementMap,Pt=!!x.emissiveMap,dn=!!x.metalnessMap,fn=!!x.roughnessMap,pn=x.anisotropy>0,O=x.clearcoat>0,mn=x.diffuseRoughness>0,dt=x.dispersion>0,ft=x.retroreflectivity>0,ge=x.iridescence>0,Et=x.sheen>0,Fe=x.transmission>0,Ve=pn&&!!x.anisotropyMap,R=O&&!!x.clearcoatMap,y=O&&!!x.clearcoatNormalMap,$=O&&!!x.clearcoatRoughnessMap,ae=mn&&!!x.diffuseRoughnessMap,se=ge&&!!x.iridescenceMap,ce=ge&&!!x.iridescenceThicknessMap,pe=Et&&!!x.sheenColorMap,ee=Et&&!!x.sheenRoughnessMap,ne=!!x.specularMap,ue=!!x.specularColorMap,L=!!x.specularIntensityMap,ie=Fe&&!!x.transmissionMap,Q=Fe&&!!x.thicknessMap,de=!!x.gradientMap,le=!!x.alphaMap,he=x.alphaTest>0,Ie=!!x.alphaHash,Xe=!!x.extensions,oe=$n;x.toneMapped&&(Ue===null||Ue.isXRRenderTarget===!0)&&(oe=i.toneMapping);let De=Ye?B.isCompressedCubeTexture?B.image[0].mipmaps:B.mipmaps:null,$e={shaderID:z,shaderType:x.type,shaderName:x.name,vertexShader:Me,fragmentShader:K,defines:x.defines,customVertexShaderID:ve,customFragmentShaderID:Te,isRawShaderMaterial:x.isRawShaderMaterial===!0,glslVersion:x.glslVersion,precision:P,batching:bt,batchingColor:bt&&N._colorsTexture!==null,instancing:We,instancingColor:We&&N.instanceColor!==null,instancingMorph:We&&N.morphTexture!==null,outputColorSpace:Ue===null?i.outputColorSpace:Ue.isXRRenderTarget===!0?Ue.texture.colorSpace:Ke.workingColorSpace,alphaToCoverage:!!x.alphaToCoverage,map:Be,matcap:st,envMap:at,envMapMode:at&&B.mapping,envMapPMREM:Ye,envMapMaxLod:Ye?De.length-1:null,envMapSize:Ye?De[0].width:null,aoMap:Ut,lightMap:Tt,bumpMap:Yt,normalMap:gt,displacementMap:Dn,emissiveMap:Pt,normalMapObjectSpace:gt&&x.normalMapType===ed,normalMapTangentSpace:gt&&x.normalMapType===mc,packedNormalMap:gt&&x.normalMapType===mc&&Sv(x.normalMap.format),metalnessMap:dn,roughnessMap:fn,anisotropy:pn,anisotropyMap:Ve,clearcoat:O,clearcoatMap:R,clearcoatNormalMap:y,clearcoatRoughnessMap:$,diffuseRoughness:mn,diffuseRoughnessMap:ae,dispersion:dt,retroreflection:ft,iridescence:ge,iridescenceMap:se,iridescenceThicknessMap:ce,sheen:Et,sheenColorMap:pe,sheenRoughnessMap:ee,specularMap:ne,specularColorMap:ue,specularIntensityMap:L,transmission:Fe,transmissionMap:ie,thicknessMap:Q,gradientMap:de,opaque:x.transparent===!1&&x.blending===Ls&&x.alphaToCoverage===!1,alphaMap:le,alphaTest:he,alphaHash:Ie,combine:x.combine,mapUv:Be&&f(x.map.channel),aoMapUv:Ut&&f(x.aoMap.channel),lightMapUv:Tt&&f(x.lightMap.channel),bumpMapUv:Yt&&f(x.bumpMap.channel),normalMapUv:gt&&f(x.normalMap.channel),displacementMapUv:Dn&&f(x.displacementMap.channel),emissiveMapUv:Pt&&f(x.emissiveMap.channel),metalnessMapUv:dn&&f(x.metalnessMap.channel),roughnessMapUv:fn&&f(x.roughnessMap.channel),anisotropyMapUv:Ve&&f(x.anisotropyMap.channel),clearcoatMapUv:R&&f(x.clearcoatMap.channel),clearcoatNormalMapUv:y&&f(x.clearcoatNormalMap.channel),clearcoatRoughnessMapUv:$&&f(x.clearcoatRoughnessMap.channel),diffuseRoughnessMapUv:ae&&f(x.diffuseRoughnessMap.channel),iridescenceMapUv:se&&f(x.iridescenceMap.channel),iridescenceThicknessMapUv:ce&&f(x.iridescenceThicknessMap.channel),sheenColorMapUv:pe&&f(x.sheenColorMap.channel),sheenRoughnessMapUv:ee&&f(x.sheenRoughnessMap.channel),specularMapUv:ne&&f(x.specularMap.channel),specularColorMapUv:ue&&f(x.specularColorMap.channel),specularIntensityMapUv:L&&f(x.specularIntensityMap.channel),transmissionMapUv:ie&&f(x.transmissionMap.channel),thicknessMapUv:Q&&f(x.thicknessMap.channel),alphaMapUv:le&&f(x.alphaMap.channel),vertexTangents:!!w.attributes.tangent&&(gt||pn),vertexNormals:!!w.attributes.normal,vertexColors:x.vertexColors,vertexAlphas:x.vertexColors===!0&&!!w.attributes.color&&w.attributes.color.itemSize===4,pointsUvs:N.isPoints===!0&&!!w.attributes.uv&&(Be||le),fog:!!Z,useFog:x.fog===!0,fogExp2:!!Z&&Z.isFogExp2,flatShading:x.wireframe===!1&&(x.flatShading===!0||w.attributes.normal===void 0&&gt===!1&&(x.isMeshLambertMaterial||x.isMeshPhongMaterial||x.isMeshStandardMaterial||x.isMeshPhysicalMaterial)),sizeAttenuation:x.sizeAttenuation===!0,logarithmicDepthBuffer:d,reversedDepthBuffer:Se,skinning:N.isSkinnedMesh===!0,hasPositionAttribute:w.attributes.position!==void 0,morphTargets:w.morphAttributes.position!==void 0,morphNormals:w.morphAttributes.normal!==void 0,morphColors:w.morphAttributes.color!==void 0,morphTargetsCount:q,morphTextureStride:re,numSunLights:E.sun.length,numDirLights:E.directional.length,numPointLights:E.point.length,numSpotLights:E.spot.length,numSpotLightMaps:E.spotLightMap.length,numRectAreaLights:E.rectArea.length,numHemiLights:E.hemi.length,numSunLightShadows:E.sunShadowMap.length,numDirLightShadows:E.directionalShadowMap.length,numPointLightShadows:E.pointShadowMap.length,numSpotLightShadows:E.spotShadowMap.length,numSpotLightShadowsWithMaps:E.numSpotLightShadowsWithMaps,numLightProbes:E.numLightProbes,numLightProbeGrids:V.filter(ye=>ye.texture!==null).length,numClippingPlanes:r.numPlanes,numClipIntersection:r.numIntersection,dithering:x.dithering,shadowMapEnabled:i.shadowMap.enabled&&H.length>0,shadowMapType:i.shadowMap.type,toneMapping:oe,decodeVideoTexture:Be&&x.map.isVideoTexture===!0&&Ke.getTransfer(x.map.colorSpace)===it,decodeVideoTextureEmissive:Pt&&x.emissiveMap.isVideoTexture===!0&&Ke.getTransfer(x.emissiveMap.colorSpace)===it,premultipliedAlpha:x.premultipliedAlpha,doubleSided:x.side===Wn,flipSided:x.side===qt,useDepthPacking:x.depthPacking>=0,depthPacking:x.depthPacking||0,index0AttributeName:x.index0AttributeName,extensionClipCullDistance:Xe&&x.extensions.clipCullDistance===!0&&t.has("WEBGL_clip_cull_distance"),extensionMultiDraw:(Xe&&x.extensions.multiDraw===!0||bt)&&t.has("WEBGL_multi_draw"),rendererExtensionParallelShaderCompile:t.has("KHR_parallel_shader_compile"),customProgramCacheKey:x.customProgramCacheKey()};return $e.vertexUv1s=l.has(1),$e.vertexUv2s=l.has(2),$e.vertexUv3s=l.has(3),l.clear(),$e}function v(x){let E=[];if(x.shaderID?E.push(x.shaderID):(E.push(x.customVertexShaderID),E.push(x.customFragmentShaderID)),x.defines!==void 0)for(let H in x.defines)E.push(H),E.push(x.defines[H]);return x.isRawShaderMaterial===!1&&(_(E,x),p(E,x),E.push(i.outputColorSpace)),E.push(x.customProgramCacheKey),E.join()}function _(x,E){x.push(E.precision),x.push(E.outputColorSpace),x.push(E.envMapMode),x.push(E.envMapPMREM),x.push(E.envMapMaxLod),x.push(E.envMapSize),x.push(E.mapUv),x.push(E.alphaMapUv),x.push(E.lightMapUv),x.push(E.aoMapUv),x.push(E.bumpMapUv),x.push(E.normalMapUv),x.push(E.displacementMapUv),x.push(E.emissiveMapUv),x.push(E.metalnessMapUv),x.push(E.roughnessMapUv),x.push(E.anisotropyMapUv),x.push(E.clearcoatMapUv),x.push(E.clearcoatNormalMapUv),x.push(E.clearcoatRoughnessMapUv),x.push(E.diffuseRoughnessMapUv),x.push(E.iridescenceMapUv),x.push(E.iridescenceThicknessMapUv),x.push(E.sheenColorMapUv),x.push(E.sheenRoughnessMapUv),x.push(E.specularMapUv),x.push(E.specularColorMapUv),x.push(E.specularIntensityMapUv),x.push(E.transmissionMapUv),x.push(E.thicknessMapUv),x.push(E.combine),x.push(E.fogExp2),x.push(E.sizeAttenuation),x.push(E.morphTargetsCount),x.push(E.numSunLights),x.push(E.numDirLights),x.push(E.numPointLights),x.push(E.numSpotLights),x.push(E.numSpotLightMaps),x.push(E.numHemiLights),x.push(E.numRectAreaLights),x.push(E.numSunLightShadows),x.push(E.numDirLightShadows),x.push(E.numPointLightShadows),x.push(E.numSpotLightShadows),x.push(E.numSpotLightShadowsWithMaps),x.push(E.numLightProbes),x.push(E.numLightProbeGrids),x.push(E.shadowMapType),x.push(E.toneMapping),x.push(E.numClippingPlanes),x.push(E.numClipIntersection),x.push(E.depthPacking)}function p(x,E){a.disableAll(),E.instancing&&a.enable(0),E.instancingColor&&a.enable(1),E.instancingMorph&&a.enable(2),E.matcap&&a.enable(3),E.envMap&&a.enable(4),E.normalMapObjectSpace&&a.enable(5),E.normalMapTangentSpace&&a.enable(6),E.clearcoat&&a.enable(7),E.iridescence&&a.enable(8),E.alphaTest&&a.enable(9),E.vertexColors&&a.enable(10),E.vertexAlphas&&a.enable(11),E.vertexUv1s&&a.enable(12),E.vertexUv2s&&a.enable(13),E.vertexUv3s&&a.enable(14),E.vertexTangents&&a.enable(15),E.anisotropy&&a.enable(16),E.alphaHash&&a.enable(17),E.batching&&a.enable(18),E.dispersion&&a.enable(19),E.retroreflection&&a.enable(24),E.diffuseRoughness&&a.enable(25),E.batchingColor&&a.enable(20),E.gradientMap&&a.enable(21),E.packedNormalMap&&a.enable(22),E.vertexNormals&&a.enable(23),x.push(a.mask),a.disableAll(),E.fog&&a.enable(0),E.useFog&&a.enable(1),E.flatShading&&a.enable(2),E.logarithmicDepthBuffer&&a.enable(3),E.reversedDepthBuffer&&a.enable(4),E.skinning&&a.enable(5),E.morphTargets&&a.enable(6),E.morphNormals&&a.enable(7),E.morphColors&&a.enable(8),E.premultipliedAlpha&&a.enable(9),E.shadowMapEnabled&&a.enable(10),E.doubleSided&&a.enable(11),E.flipSided&&a.enable(12),E.useDepthPacking&&a.enable(13),E.dithering&&a.enable(14),E.transmission&&a.enable(15),E.sheen&&a.enable(16),E.opaque&&a.enable(17),E.pointsUvs&&a.enable(18),E.decodeVideoTexture&&a.enable(19),E.decodeVideoTextureEmissive&&a.enable(20),E.alphaToCoverage&&a.enable(21),E.numLightProbeGrids>0&&a.enable(22),E.hasPositionAttribute&&a.enable(23),x.push(a.mask)}function M(x){let E=u[x.type],H;if(E){let F=qn[E];H=pd.clone(F.uniforms)}else H=x.uniforms;return H}function C(x,E){let H=h.get(E);return H!==void 0?++H.usedTimes:(H=new bv(i,E,x,s),c.push(H),h.set(E,H)),H}function S(x){if(--x.usedTimes===0){let E=c.indexOf(x);c[E]=c[c.length-1],c.pop(),h.delete(x.cacheKey),x.destroy()}}function T(x){o.remove(x)}function A(){o.dispose()}return{getParameters:g,getProgramCacheKey:v,getUniforms:M,acquireProgram:C,releaseProgram:S,releaseShaderCache:T,programs:c,dispose:A}}function Tv(){let i=new WeakMap;function e(a){return i.has(a)}function t(a){let o=i.get(a);return o===void 0&&(o={},i.set(a,o)),o}function n(a){i.delete(a)}function s(a,o,l){i.get(a)[o]=l}function r(){i=new WeakMap}return{has:e,get:t,remove:n,update:s,dispose:r}}function Ev(i,e){return i.groupOrder!==e.groupOrder?i.groupOrder-e.groupOrder:i.renderOrder!==e.renderOrder?i.renderOrder-e.renderOrder:i.material.id!==e.material.id?i.material.id-e.material.id:i.materialVariant!==e.materialVariant?i.materialVariant-e.materialVariant:i.z!==e.z?i.z-e.z:i.id-e.id}function Dd(i,e){return i.groupOrder!==e.groupOrder?i.groupOrder-e.groupOrder:i.renderOrder!==e.renderOrder?i.renderOrder-e.renderOrder:i.z!==e.z?e.z-i.z:i.id-e.id}function Ud(){let i=[],e=0,t=[],n=[],s=[];function r(){e=0,t.length=0,n.length=0,s.length=0}function a(u){let f=0;return u.isInstancedMesh&&(f+=2),u.isSkinnedMesh&&(f+=1),f}function o(u,f,g,v,_,p){let M=i[e];return M===void 0?(M={id:u.id,object:u,geometry:f,material:g,materialVariant:a(u),groupOrder:v,renderOrder:u.renderOrder,z:_,group:p},i[e]=M):(M.id=u.id,M.object=u,M.geometry=f,M.material=g,M.materialVariant=a(u),M.groupOrder=v,M.renderOrder=u.renderOrder,M.z=_,M.group=p),e++,M}function l(u,f,g,v,_,p,M){M.reversedDepth===!0&&(_=-_);let C=o(u,f,g,v,_,p);g.transmission>0?n.push(C):g.transparent===!0?s.push(C):t.push(C)}function c(u,f,g,v,_,p){let M=o(u,f,g,v,_,p);g.transmission>0?n.unshift(M):g.transparent===!0?s.unshift(M):t.unshift(M)}function h(u,f){t.length>1&&t.sort(u||Ev),n.length>1&&n.sort(f||Dd),s.length>1&&s.sort(f||Dd)}function d(){for(let u=e,f=i.length;u<f;u++){let g=i[u];if(g.id===null)break;g.id=null,g.object=null,g.geometry=null,g.material=null,g.group=null}}return{opaque:t,transmissive:n,transparent:s,init:r,push:l,unshift:c,finish:d,sort:h}}function Av(){let i=new WeakMap;function e(n,s){let r=i.get(n),a;return r===void 0?(a=new Ud,i.set(n,[a])):s>=r.length?(a=new Ud,r.push(a)):a=r[s],a}function t(){i=new WeakMap}return{get:e,dispose:t}}function Rv(){let i={};return{get:function(e){if(i[e.id]!==void 0)return i[e.id];let t;switch(e.type){case"SunLight":case"DirectionalLight":t={direction:new G,color:new je};break;case"SpotLight":t={position:new G,direction:new G,color:new je,distance:0,coneCos:0,penumbraCos:0,decay:0};break;case"PointLight":t={position:new G,color:new je,distance:0,decay:0};break;case"HemisphereLight":t={direction:new G,skyColor:new je,groundColor:new je};break;case"RectAreaLight":t={color:new je,position:new G,halfWidth:new G,halfHeight:new G};break}return i[e.id]=t,t}}}function Cv(){let i={};return{get:function(e){if(i[e.id]!==void 0)return i[e.id];let t;switch(e.type){case"SunLight":case"DirectionalLight":t={shadowIntensity:1,shadowBias:0,shadowNormalBias:0,shadowRadius:1,shadowMapSize:new et};break;case"SpotLight":t={shadowIntensity:1,shadowBias:0,shadowNormalBias:0,shadowRadius:1,shadowMapSize:new et};break;case"PointLight":t={shadowIntensity:1,shadowBias:0,shadowNormalBias:0,shadowRadius:1,shadowMapSize:new et,shadowCameraNear:1,shadowCameraFar:1e3};break}return i[e.id]=t,t}}}var Pv=0;function Iv(i,e){return(e.castShadow?2:0)-(i.castShadow?2:0)+(e.map?1:0)-(i.map?1:0)}function Lv(i){let e=new Rv,t=Cv(),n={version:0,hash:{sunLength:-1,directionalLength:-1,pointLength:-1,spotLength:-1,rectAreaLength:-1,hemiLength:-1,numSunShadows:-1,numDirectionalShadows:-1,numPointShadows:-1,numSpotShadows:-1,numSpotMaps:-1,numLightProbes:-1},ambient:[0,0,0],probe:[],sun:[],sunShadow:[],sunShadowMap:[],sunShadowMatrix:[],sunShadowCascade:[],directional:[],directionalShadow:[],directionalShadowMap:[],directionalShadowMatrix:[],spot:[],spotLightMap:[],spotShadow:[],spotShadowMap:[],spotLightMatrix:[],rectArea:[],rectAreaLTC1:null,rectAreaLTC2:null,point:[],pointShadow:[],pointShadowMap:[],pointShadowMatrix:[],hemi:[],numSpotLightShadowsWithMaps:0,numLightProbes:0};for(let c=0;c<9;c++)n.probe.push(new G);let s=new G,r=new mt,a=new mt;function o(c){let h=0,d=0,u=0;for(let V=0;V<9;V++)n.probe[V].set(0,0,0);let f=0,g=0,v=0,_=0,p=0,M=0,C=0,S=0,T=0,A=0,x=0,E=0,H=0,F=0;c.sort(Iv);for(let V=0,Z=c.length;V<Z;V++){let w=c[V],U=w.color,k=w.intensity,B=w.distance,z=null;if(w.shadow&&w.shadow.map&&(w.shadow.map.texture.format===Li?z=w.shadow.map.texture:z=w.shadow.map.depthTexture||w.shadow.map.texture),w.isAmbientLight)h+=U.r*k,d+=U.g*k,u+=U.b*k;else if(w.isLightProbe){for(let P=0;P<9;P++)n.probe[P].addScaledVector(w.sh.coefficients[P],k);F++}else if(w.isSunLight){let P=e.get(w);if(P.color.copy(w.color).multiplyScalar(w.intensity),w.castShadow){let X=w.shadow,q=t.get(w);q.shadowIntensity=X.intensity,q.shadowBias=X.bias,q.shadowNormalBias=X.normalBias,q.shadowRadius=X.radius,q.shadowMapSize.copy(X.mapSize).multiply(X.getFrameExtents()),n.sunShadow[g]=q,n.sunShadowMap[g]=z;let re=X.getViewportCount();for(let Me=0;Me<re;Me++)n.sunShadowMatrix[v+Me]=X.getMatrix(Me),n.sunShadowCascade[v+Me]=X._cascadeData[Me];v+=re,g++}n.sun[f]=P,f++}else if(w.isDirectionalLight){let P=e.get(w);if(P.color.copy(w.color).multiplyScalar(w.intensity),w.castShadow){let X=w.shadow,q=t.get(w);q.shadowIntensity=X.intensity,q.shadowBias=X.bias,q.shadowNormalBias=X.normalBias,q.shadowRadius=X.radius,q.shadowMapSize=X.mapSize,n.directionalShadow[_]=q,n.directionalShadowMap[_]=z,n.directionalShadowMatrix[_]=w.shadow.matrix,T++}n.directional[_]=P,_++}else if(w.isSpotLight){let P=e.get(w);P.position.setFromMatrixPosition(w.matrixWorld),P.color.copy(U).multiplyScalar(k),P.distance=B,P.coneCos=Math.cos(w.angle),P.penumbraCos=Math.cos(w.angle*(1-w.penumbra)),P.decay=w.decay,n.spot[M]=P;let X=w.shadow;if(w.map&&(n.spotLightMap[E]=w.map,E++,X.updateMatrices(w),w.castShadow&&H++),n.spotLightMatrix[M]=X.matrix,w.castShadow){let q=t.get(w);q.shadowIntensity=X.intensity,q.shadowBias=X.bias,q.shadowNormalBias=X.normalBias,q.shadowRadius=X.radius,q.shadowMapSize=X.mapSize,n.spotShadow[M]=q,n.spotShadowMap[M]=z,x++}M++}else if(w.isRectAreaLight){let P=e.get(w);P.color.copy(U).multiplyScalar(k),P.halfWidth.set(w.width*.5,0,0),P.halfHeight.set(0,w.height*.5,0),n.rectArea[C]=P,C++}else if(w.isPointLight){let P=e.get(w);if(P.color.copy(w.color).multiplyScalar(w.intensity),P.distance=w.distance,P.decay=w.decay,w.castShadow){let X=w.shadow,q=t.get(w);q.shadowIntensity=X.intensity,q.shadowBias=X.bias,q.shadowNormalBias=X.normalBias,q.shadowRadius=X.radius,q.shadowMapSize=X.mapSize,q.shadowCameraNear=X.camera.near,q.shadowCameraFar=X.camera.far,n.pointShadow[p]=q,n.pointShadowMap[p]=z,n.pointShadowMatrix[p]=w.shadow.matrix,A++}n.point[p]=P,p++}else if(w.isHemisphereLight){let P=e.get(w);P.skyColor.copy(w.color).multiplyScalar(k),P.groundColor.copy(w.groundColor).multiplyScalar(k),n.hemi[S]=P,S++}}C>0&&(i.has("OES_texture_float_linear")===!0?(n.rectAreaLTC1=be.LTC_FLOAT_1,n.rectAreaLTC2=be.LTC_FLOAT_2):(n.rectAreaLTC1=be.LTC_HALF_1,n.rectAreaLTC2=be.LTC_HALF_2)),n.ambient[0]=h,n.ambient[1]=d,n.ambient[2]=u;let N=n.hash;(N.sunLength!==f||N.directionalLength!==_||N.pointLength!==p||N.spotLength!==M||N.rectAreaLength!==C||N.hemiLength!==S||N.numSunShadows!==g||N.numDirectionalShadows!==T||N.numPointShadows!==A||N.numSpotShadows!==x||N.numSpotMaps!==E||N.numLightProbes!==F)&&(n.sun.length=f,n.directional.length=_,n.spot.length=M,n.rectArea.length=C,n.point.length=p,n.hemi.length=S,n.sunShadow.length=g,n.sunShadowMap.length=g,n.sunShadowMatrix.length=v,n.sunShadowCascade.length=v,n.directionalShadow.length=T,n.directionalShadowMap.length=T,n.directionalShadowMatrix.length=T,n.pointShadow.length=A,n.pointShadowMap.length=A,n.pointShadowMatrix.length=A,n.spotShadow.length=x,n.spotShadowMap.length=x,n.spotLightMatrix.length=x+E-H,n.spotLightMap.length=E,n.numSpotLightShadowsWithMaps=H,n.numLightProbes=F,N.sunLength=f,N.directionalLength=_,N.pointLength=p,N.spotLength=M,N.rectAreaLength=C,N.hemiLength=S,N.numSunShadows=g,N.numDirectionalShadows=T,N.numPointShadows=A,N.numSpotShadows=x,N.numSpotMaps=E,N.numLightProbes=F,n.version=Pv++)}function l(c,h){let d=0,u=0,f=0,g=0,v=0,_=0,p=h.matrixWorldInverse;for(let M=0,C=c.length;M<C;M++){let S=c[M];if(S.isSunLight){let T=n.sun[d];T.direction.setFromMatrixPosition(S.matrixWorld),T.direction.transformDirection(p),d++}else if(S.isDirectionalLight){let T=n.directional[u];T.direction.setFromMatrixPosition(S.matrixWorld),s.setFromMatrixPosition(S.target.matrixWorld),T.direction.sub(s),T.direction.transformDirection(p),u++}else if(S.isSpotLight){let T=n.spot[g];T.position.setFromMatrixPosition(S.matrixWorld),T.position.applyMatrix4(p),T.direction.setFromMatrixPosition(S.matrixWorld),s.setFromMatrixPosition(S.target.matrixWorld),T.direction.sub(s),T.direction.transformDirection(p),g++}else if(S.isRectAreaLight){let T=n.rectArea[v];T.position.setFromMatrixPosition(S.matrixWorld),T.position.applyMatrix4(p),a.identity(),r.copy(S.matrixWorld),r.premultiply(p),a.extractRotation(r),T.halfWidth.set(S.width*.5,0,0),T.halfHeight.set(0,S.height*.5,0),T.halfWidth.applyMatrix4(a),T.halfHeight.applyMatrix4(a),v++}else if(S.isPointLight){let T=n.point[f];T.position.setFromMatrixPosition(S.matrixWorld),T.position.applyMatrix4(p),f++}else if(S.isHemisphereLight){let T=n.hemi[_];T.direction.setFromMatrixPosition(S.matrixWorld),T.direction.transformDirection(p),_++}}}return{setup:o,setupView:l,state:n}}function Fd(i){let e=new Lv(i),t=[],n=[],s=[];function r(d){h.camera=d,t.length=0,n.length=0,s.length=0}function a(d){d.isLightProbeGrid?s.push(d):t.push(d)}function o(d){n.push(d)}function l(){e.setup(t),s.sort((d,u)=>d.priority-u.priority||d.id-u.id)}function c(d){e.setupView(t,d)}let h={lightsArray:t,shadowsArray:n,lightProbeGridArray:s,camera:null,lights:e,transmissionRenderTarget:{},textureUnits:0};return{init:r,state:h,setupLights:l,setupLightsView:c,pushLight:a,pushShadow:o}}function Nv(i){let e=new WeakMap;function t(s,r=0){let a=e.get(s),o;return a===void 0?(o=new Fd(i),e.set(s,[o])):r>=a.length?(o=new Fd(i),a.push(o)):o=a[r],o}function n(){e=new WeakMap}return{get:t,dispose:n}}var Dv=`void main() {
	gl_Position = vec4( position, 1.0 );
}`,Uv=`uniform sampler2D shadow_pass;
uniform vec2 resolution;
uniform float radius;
void main() {
	const float samples = float( VSM_SAMPLES );
	float mean = 0.0;
	float squared_mean = 0.0;
	float uvStride = samples <= 1.0 ? 0.0 : 2.0 / ( samples - 1.0 );
	float uvStart = samples <= 1.0 ? 0.0 : - 1.0;
	for ( float i = 0.0; i < samples; i ++ ) {
		float uvOffset = uvStart + i * uvStride;
		#ifdef HORIZONTAL_PASS
			vec2 distribution = texture2D( shadow_pass, ( gl_FragCoord.xy + vec2( uvOffset, 0.0 ) * radius ) / resolution ).rg;
			mean += distribution.x;
			squared_mean += distribution.y * distribution.y + distribution.x * distribution.x;
		#else
			float depth = texture2D( shadow_pass, ( gl_FragCoord.xy + vec2( 0.0, uvOffset ) * radius ) / resolution ).r;
			mean += depth;
			squared_mean += depth * depth;
		#endif
	}
	mean = mean / samples;
	squared_mean = squared_mean / samples;
	float std_dev = sqrt( max( 0.0, squared_mean - mean * mean ) );
	gl_FragColor = vec4( mean, std_dev, 0.0, 1.0 );
}`,Fv=[new G(1,0,0),new G(-1,0,0),new G(0,1,0),new G(0,-1,0),new G(0,0,1),new G(0,0,-1)],Ov=[new G(0,-1,0),new G(0,-1,0),new G(0,0,1),new G(0,0,-1),new G(0,-1,0),new G(0,-1,0)],Od=new mt,Tr=new G,Ac=new G;function kv(i,e,t){let n=new Yi,s=new et,r=new et,a=new xt,o=new Ba,l=new za,c={},h=t.maxTextureSize,d={[Ii]:qt,[qt]:Ii,[Wn]:Wn},u=new Hn({defines:{VSM_SAMPLES:8},uniforms:{shadow_pass:{value:null},resolution:{value:new et},radius:{value:4}},vertexShader:Dv,fragmentShader:Uv}),f=u.clone();f.defines.HORIZONTAL_PASS=1;let g=new Cn;g.setAttribute("position",new an(new Float32Array([-1,-1,.5,3,-1,.5,-1,3,.5]),3));let v=new At(g,u),_=this;this.enabled=!1,this.autoUpdate=!0,this.needsUpdate=!1,this.type=gr;let p=this.type;this.render=function(A,x,E){if(_.enabled===!1||_.autoUpdate===!1&&_.needsUpdate===!1||A.length===0)return;this.type===Iu&&(Oe("WebGLShadowMap: PCFSoftShadowMap has been removed. Using PCFShadowMap instead."),this.type=gr);let H=i.getRenderTarget(),F=i.getActiveCubeFace(),N=i.getActiveMipmapLevel(),V=i.state;V.setBlending(Ji),V.buffers.depth.getReversed()===!0?V.buffers.color.setClear(0,0,0,0):V.buffers.color.setClear(1,1,1,1),V.buffers.depth.setTest(!0),V.setScissorTest(!1);let Z=p!==this.type;Z&&x.traverse(function(w){w.material&&(Array.isArray(w.material)?w.material.forEach(U=>U.needsUpdate=!0):w.material.needsUpdate=!0)});for(let w=0,U=A.length;w<U;w++){let k=A[w],B=k.shadow;if(B===void 0){Oe("WebGLShadowMap:",k,"has no shadow.");continue}if(B.autoUpdate===!1&&B.needsUpdate===!1)continue;s.copy(B.mapSize);let z=B.getFrameExtents();s.multiply(z),r.copy(B.mapSize),(s.x>h||s.y>h)&&(s.x>h&&(r.x=Math.floor(h/z.x),s.x=r.x*z.x,B.mapSize.x=r.x),s.y>h&&(r.y=Math.floor(h/z.y),s.y=r.y*z.y,B.mapSize.y=r.y));let P=i.state.buffers.depth.getReversed();if(B.camera._reversedDepth=P,B.map===null||Z===!0){if(B.map!==null&&(B.map.depthTexture!==null&&(B.map.depthTexture.dispose(),B.map.depthTexture=null),B.map.dispose()),this.type===Is){if(k.isPointLight){Oe("WebGLShadowMap: VSM shadow maps are not supported for PointLights. Use PCF or BasicShadowMap instead.");continue}B.map=new on(s.x,s.y,{format:Li,type:Ln,minFilter:Xt,magFilter:Xt,generateMipmaps:!1}),B.map.texture.name=k.name+".shadowMap",B.map.depthTexture=new ri(s.x,s.y,In),B.map.depthTexture.name=k.name+".shadowMapDepth",B.map.depthTexture.format=si,B.map.depthTexture.compareFunction=null,B.map.depthTexture.minFilter=Dt,B.map.depthTexture.magFilter=Dt}else k.isPointLight?(B.map=new Ar(s.x),B.map.depthTexture=new hr(s.x,Pn)):(B.map=new on(s.x,s.y),B.map.depthTexture=new ri(s.x,s.y,Pn)),B.map.depthTexture.name=k.name+".shadowMap",B.map.depthTexture.format=si,this.type===gr?(B.map.depthTexture.compareFunction=P?_c:gc,B.map.depthTexture.minFilter=Xt,B.map.depthTexture.magFilter=Xt):(B.map.depthTexture.compareFunction=null,B.map.depthTexture.minFilter=Dt,B.map.depthTexture.magFilter=Dt);B.camera.updateProjectionMatrix()}B.map.isWebGLCubeRenderTarget!==!0&&(B.map.width!==s.x||B.map.height!==s.y)&&B.map.setSize(s.x,s.y);let X=B.map.isWebGLCubeRenderTarget?6:B.getViewportCount();k.isPointLight!==!0&&B.updateMatrices(k,E);let q=(B.camera.layers.mask&4294967294)!==0?B.camera.layers:E.layers;for(let re=0;re<X;re++){let Me=B.getCamera(re);if(k.isPointLight){let K=B.camera,ve=B.matrix,Te=k.distance||K.far;Te!==K.far&&(K.far=Te,K.updateProjectionMatrix()),Tr.setFromMatrixPosition(k.matrixWorld),K.position.copy(Tr),Ac.copy(K.position),Ac.add(Fv[re]),K.up.copy(Ov[re]),K.lookAt(Ac),K.updateMatrixWorld(),ve.makeTranslation(-Tr.x,-Tr.y,-Tr.z),Od.multiplyMatrices(K.projectionMatrix,K.matrixWorldInverse),B._frustum.setFromProjectionMatrix(Od,K.coordinateSystem,K.reversedDepth)}if(B.map.isWebGLCubeRenderTarget)i.setRenderTarget(B.map,re),i.clear();else{re===0&&(i.setRenderTarget(B.map),i.clear());let K=B.getViewport(re);a.set(r.x*K.x,r.y*K.y,r.x*K.z,r.y*K.w),V.viewport(a)}n=B.getFrustum(re),S(x,E,Me,k,q,this.type)}B.isPointLightShadow!==!0&&this.type===Is&&M(B,E),B.needsUpdate=!1}p=this.type,_.needsUpdate=!1,i.setRenderTarget(H,F,N)};function M(A,x){let E=e.update(v);u.defines.VSM_SAMPLES!==A.blurSamples&&(u.defines.VSM_SAMPLES=A.blurSamples,f.defines.VSM_SAMPLES=A.blurSamples,u.needsUpdate=!0,f.needsUpdate=!0),A.mapPass===null?A.mapPass=new on(s.x,s.y,{format:Li,type:Ln}):(A.mapPass.width!==A.map.width||A.mapPass.height!==A.map.height)&&A.mapPass.setSize(A.map.width,A.map.height),u.uniforms.shadow_pass.value=A.map.depthTexture,u.uniforms.resolution.value.set(A.map.width,A.map.height),u.uniforms.radius.value=A.radius,i.setRenderTarget(A.mapPass),i.clear(),i.renderBufferDirect(x,null,E,u,v,null),f.uniforms.shadow_pass.value=A.mapPass.texture,f.uniforms.resolution.value.set(A.map.width,A.map.height),f.uniforms.radius.value=A.radius,i.setRenderTarget(A.map),i.clear(),i.renderBufferDirect(x,null,E,f,v,null)}function C(A,x,E,H){let F=null,N=E.isPointLight===!0?A.customDistanceMaterial:A.customDepthMaterial;if(N!==void 0)F=N;else if(F=E.isPointLight===!0?l:o,i.localClippingEnabled&&x.clipShadows===!0&&Array.isArray(x.clippingPlanes)&&x.clippingPlanes.length!==0||x.displacementMap&&x.displacementScale!==0||x.alphaMap&&x.alphaTest>0||x.map&&x.alphaTest>0||x.alphaToCoverage===!0){let V=F.uuid,Z=x.uuid,w=c[V];w===void 0&&(w={},c[V]=w);let U=w[Z];U===void 0&&(U=F.clone(),w[Z]=U,x.addEventListener("dispose",T)),F=U}if(F.visible=x.visible,F.wireframe=x.wireframe,H===Is?F.side=x.shadowSide!==null?x.shadowSide:x.side:F.side=x.shadowSide!==null?x.shadowSide:d[x.side],F.alphaMap=x.alphaMap,F.alphaTest=x.alphaToCoverage===!0?.5:x.alphaTest,F.map=x.map,F.clipShadows=x.clipShadows,F.clippingPlanes=x.clippingPlanes,F.clipIntersection=x.clipIntersection,F.displacementMap=x.displacementMap,F.displacementScale=x.displacementScale,F.displacementBias=x.displacementBias,F.wireframeLinewidth=x.wireframeLinewidth,F.linewidth=x.linewidth,E.isPointLight===!0&&F.isMeshDistanceMaterial===!0){let V=i.properties.get(F);V.light=E}return F}function S(A,x,E,H,F,N){if(A.visible===!1)return;if(A.layers.test(F)&&(A.isMesh||A.isLine||A.isPoints)&&(A.castShadow||A.receiveShadow&&N===Is)&&(!A.frustumCulled||A.intersectsFrustum(n))){A.modelViewMatrix.multiplyMatrices(E.matrixWorldInverse,A.matrixWorld);let w=e.update(A),U=A.material;if(Array.isArray(U)){let k=w.groups;for(let B=0,z=k.length;B<z;B++){let P=k[B],X=U[P.materialIndex];if(X&&X.visible){let q=C(A,X,H,N);A.onBeforeShadow(i,A,x,E,w,q,P),i.renderBufferDirect(E,null,w,q,A,P),A.onAfterShadow(i,A,x,E,w,q,P)}}}else if(U.visible){let k=C(A,U,H,N);A.onBeforeShadow(i,A,x,E,w,k,null),i.renderBufferDirect(E,null,w,k,A,null),A.onAfterShadow(i,A,x,E,w,k,null)}}let Z=A.children;for(let w=0,U=Z.length;w<U;w++)S(Z[w],x,E,H,F,N)}function T(A){A.target.removeEventListener("dispose",T);for(let E in c){let H=c[E],F=A.target.uuid;F in H&&(H[F].dispose(),delete H[F])}}}function Bv(i,e){function t(){let L=!1,ie=new xt,Q=null,de=new xt(0,0,0,0);return{setMask:function(le){Q!==le&&!L&&(i.colorMask(le,le,le,le),Q=le)},setLocked:function(le){L=le},setClear:function(le,he,Ie,Xe,oe){oe===!0&&(le*=Xe,he*=Xe,Ie*=Xe),ie.set(le,he,Ie,Xe),de.equals(ie)===!1&&(i.clearColor(le,he,Ie,Xe),de.copy(ie))},reset:function(){L=!1,Q=null,de.set(-1,0,0,0)}}}function n(){let L=!1,ie=!1,Q=null,de=null,le=null;return{setReversed:function(he){if(ie!==he){let Ie=e.get("EXT_clip_control");he?Ie.clipControlEXT(Ie.LOWER_LEFT_EXT,Ie.ZERO_TO_ONE_EXT):Ie.clipControlEXT(Ie.LOWER_LEFT_EXT,Ie.NEGATIVE_ONE_TO_ONE_EXT),ie=he;let Xe=le;le=null,this.setClear(Xe)}},getReversed:function(){return ie},setTest:function(he){he?Se(i.DEPTH_TEST):We(i.DEPTH_TEST)},setMask:function(he){Q!==he&&!L&&(i.depthMask(he),Q=he)},setFunc:function(he){if(ie&&(he=ud[he]),de!==he){switch(he){case xa:i.depthFunc(i.NEVER);break;case ya:i.depthFunc(i.ALWAYS);break;case ba:i.depthFunc(i.LESS);break;case bs:i.depthFunc(i.LEQUAL);break;case Ma:i.depthFunc(i.EQUAL);break;case Sa:i.depthFunc(i.GEQUAL);break;case wa:i.depthFunc(i.GREATER);break;case Ta:i.depthFunc(i.NOTEQUAL);break;default:i.depthFunc(i.LEQUAL)}de=he}},setLocked:function(he){L=he},setClear:function(he){le!==he&&(le=he,ie&&(he=1-he),i.clearDepth(he))},reset:function(){L=!1,Q=null,de=null,le=null,ie=!1}}}function s(){let L=!1,ie=null,Q=null,de=null,le=null,he=null,Ie=null,Xe=null,oe=null;return{setTest:function(De){L||(De?Se(i.STENCIL_TEST):We(i.STENCIL_TEST))},setMask:function(De){ie!==De&&!L&&(i.stencilMask(De),ie=De)},setFunc:function(De,$e,ye){(Q!==De||de!==$e||le!==ye)&&(i.stencilFunc(De,$e,ye),Q=De,de=$e,le=ye)},setOp:function(De,$e,ye){(he!==De||Ie!==$e||Xe!==ye)&&(i.stencilOp(De,$e,ye),he=De,Ie=$e,Xe=ye)},setLocked:function(De){L=De},setClear:function(De){oe!==De&&(i.clearStencil(De),oe=De)},reset:function(){L=!1,ie=null,Q=null,de=null,le=null,he=null,Ie=null,Xe=null,oe=null}}}let r=new t,a=new n,o=new s,l={},c=new WeakMap,h={},d={},u={},f=new WeakMap,g=[],v=null,_=!1,p=null,M=null,C=null,S=null,T=null,A=null,x=null,E=new je(0,0,0),H=0,F=!1,N=null,V=null,Z=null,w=null,U=null,k=i.getParameter(i.MAX_COMBINED_TEXTURE_IMAGE_UNITS),B=!1,z=0,P=i.getParameter(i.VERSION);P.indexOf("WebGL")!==-1?(z=parseFloat(/^WebGL (\d)/.exec(P)[1]),B=z>=1):P.indexOf("OpenGL ES")!==-1&&(z=parseFloat(/^OpenGL ES (\d)/.exec(P)[1]),B=z>=2);let X=null,q={},re=i.getParameter(i.SCISSOR_BOX),Me=i.getParameter(i.VIEWPORT),K=new xt().fromArray(re),ve=new xt().fromArray(Me);function Te(L,ie,Q,de){let le=new Uint8Array(4),he=i.createTexture();i.bindTexture(L,he),i.texParameteri(L,i.TEXTURE_MIN_FILTER,i.NEAREST),i.texParameteri(L,i.TEXTURE_MAG_FILTER,i.NEAREST);for(let Ie=0;Ie<Q;Ie++)L===i.TEXTURE_3D||L===i.TEXTURE_2D_ARRAY?i.texImage3D(ie,0,i.RGBA,1,1,de,0,i.RGBA,i.UNSIGNED_BYTE,le):i.texImage2D(ie+Ie,0,i.RGBA,1,1,0,i.RGBA,i.UNSIGNED_BYTE,le);return he}let Ue={};Ue[i.TEXTURE_2D]=Te(i.TEXTURE_2D,i.TEXTURE_2D,1),Ue[i.TEXTURE_CUBE_MAP]=Te(i.TEXTURE_CUBE_MAP,i.TEXTURE_CUBE_MAP_POSITIVE_X,6),Ue[i.TEXTURE_2D_ARRAY]=Te(i.TEXTURE_2D_ARRAY,i.TEXTURE_2D_ARRAY,1,1),Ue[i.TEXTURE_3D]=Te(i.TEXTURE_3D,i.TEXTURE_3D,1,1),r.setClear(0,0,0,1),a.setClear(1),o.setClear(0),Se(i.DEPTH_TEST),a.setFunc(bs),Yt(!1),gt(ql),Se(i.CULL_FACE),Ut(Ji);function Se(L){h[L]!==!0&&(i.enable(L),h[L]=!0)}function We(L){h[L]!==!1&&(i.disable(L),h[L]=!1)}function bt(L,ie){return u[L]!==ie?(i.bindFramebuffer(L,ie),u[L]=ie,L===i.DRAW_FRAMEBUFFER&&(u[i.FRAMEBUFFER]=ie),L===i.FRAMEBUFFER&&(u[i.DRAW_FRAMEBUFFER]=ie),!0):!1}function Be(L,ie){let Q=g,de=!1;if(L){Q=f.get(ie),Q===void 0&&(Q=[],f.set(ie,Q));let le=L.textures;if(Q.length!==le.length||Q[0]!==i.COLOR_ATTACHMENT0){for(let he=0,Ie=le.length;he<Ie;he++)Q[he]=i.COLOR_ATTACHMENT0+he;Q.length=le.length,de=!0}}else Q[0]!==i.BACK&&(Q[0]=i.BACK,de=!0);de&&i.drawBuffers(Q)}function st(L){return v!==L?(i.useProgram(L),v=L,!0):!1}let at={[Ki]:i.FUNC_ADD,[Nu]:i.FUNC_SUBTRACT,[Du]:i.FUNC_REVERSE_SUBTRACT};at[Uu]=i.MIN,at[Fu]=i.MAX;let Ye={[Ou]:i.ZERO,[ku]:i.ONE,[Bu]:i.SRC_COLOR,[Kl]:i.SRC_ALPHA,[$u]:i.SRC_ALPHA_SATURATE,[Hu]:i.DST_COLOR,[Gu]:i.DST_ALPHA,[zu]:i.ONE_MINUS_SRC_COLOR,[jl]:i.ONE_MINUS_SRC_ALPHA,[Wu]:i.ONE_MINUS_DST_COLOR,[Vu]:i.ONE_MINUS_DST_ALPHA,[Xu]:i.CONSTANT_COLOR,[qu]:i.ONE_MINUS_CONSTANT_COLOR,[Yu]:i.CONSTANT_ALPHA,[Zu]:i.ONE_MINUS_CONSTANT_ALPHA};function Ut(L,ie,Q,de,le,he,Ie,Xe,oe,De){if(L===Ji){_===!0&&(We(i.BLEND),_=!1);return}if(_===!1&&(Se(i.BLEND),_=!0),L!==Lu){if(L!==p||De!==F){if((M!==Ki||T!==Ki)&&(i.blendEquation(i.FUNC_ADD),M=Ki,T=Ki),De)switch(L){case Ls:i.blendFuncSeparate(i.ONE,i.ONE_MINUS_SRC_ALPHA,i.ONE,i.ONE_MINUS_SRC_ALPHA);break;case Yl:i.blendFunc(i.ONE,i.ONE);break;case Zl:i.blendFuncSeparate(i.ZERO,i.ONE_MINUS_SRC_COLOR,i.ZERO,i.ONE);break;case Jl:i.blendFuncSeparate(i.DST_COLOR,i.ONE_MINUS_SRC_ALPHA,i.ZERO,i.ONE);break;default:ze("WebGLState: Invalid blending: ",L);break}else switch(L){case Ls:i.blendFuncSeparate(i.SRC_ALPHA,i.ONE_MINUS_SRC_ALPHA,i.ONE,i.ONE_MINUS_SRC_ALPHA);break;case Yl:i.blendFuncSeparate(i.SRC_ALPHA,i.ONE,i.ONE,i.ONE);break;case Zl:ze("WebGLState: SubtractiveBlending requires material.premultipliedAlpha = true");break;case Jl:ze("WebGLState: MultiplyBlending requires material.premultipliedAlpha = true");break;default:ze("WebGLState: Invalid blending: ",L);break}C=null,S=null,A=null,x=null,E.set(0,0,0),H=0,p=L,F=De}return}le=le||ie,he=he||Q,Ie=Ie||de,(ie!==M||le!==T)&&(i.blendEquationSeparate(at[ie],at[le]),M=ie,T=le),(Q!==C||de!==S||he!==A||Ie!==x)&&(i.blendFuncSeparate(Ye[Q],Ye[de],Ye[he],Ye[Ie]),C=Q,S=de,A=he,x=Ie),(Xe.equals(E)===!1||oe!==H)&&(i.blendColor(Xe.r,Xe.g,Xe.b,oe),E.copy(Xe),H=oe),p=L,F=!1}function Tt(L,ie){L.side===Wn?We(i.CULL_FACE):Se(i.CULL_FACE);let Q=L.side===qt;ie&&(Q=!Q),Yt(Q),L.blending===Ls&&L.transparent===!1?Ut(Ji):Ut(L.blending,L.blendEquation,L.blendSrc,L.blendDst,L.blendEquationAlpha,L.blendSrcAlpha,L.blendDstAlpha,L.blendColor,L.blendAlpha,L.premultipliedAlpha),a.setFunc(L.depthFunc),a.setTest(L.depthTest),a.setMask(L.depthWrite),r.setMask(L.colorWrite);let de=L.stencilWrite;o.setTest(de),de&&(o.setMask(L.stencilWriteMask),o.setFunc(L.stencilFunc,L.stencilRef,L.stencilFuncMask),o.setOp(L.stencilFail,L.stencilZFail,L.stencilZPass)),Pt(L.polygonOffset,L.polygonOffsetFactor,L.polygonOffsetUnits),L.alphaToCoverage===!0?Se(i.SAMPLE_ALPHA_TO_COVERAGE):We(i.SAMPLE_ALPHA_TO_COVERAGE)}function Yt(L){N!==L&&(L?i.frontFace(i.CW):i.frontFace(i.CCW),N=L)}function gt(L){L!==Cu?(Se(i.CULL_FACE),L!==V&&(L===ql?i.cullFace(i.BACK):L===Pu?i.cullFace(i.FRONT):i.cullFace(i.FRONT_AND_BACK))):We(i.CULL_FACE),V=L}function Dn(L){L!==Z&&(B&&i.lineWidth(L),Z=L)}function Pt(L,ie,Q){L?(Se(i.POLYGON_OFFSET_FILL),(w!==ie||U!==Q)&&(w=ie,U=Q,a.getReversed()&&(ie=-ie,Q=-Q),i.polygonOffset(ie,Q))):We(i.POLYGON_OFFSET_FILL)}function dn(L){L?Se(i.SCISSOR_TEST):We(i.SCISSOR_TEST)}function fn(L){L===void 0&&(L=i.TEXTURE0+k-1),X!==L&&(i.activeTexture(L),X=L)}function pn(L,ie,Q){Q===void 0&&(X===null?Q=i.TEXTURE0+k-1:Q=X);let de=q[Q];de===void 0&&(de={type:void 0,texture:void 0},q[Q]=de),(de.type!==L||de.texture!==ie)&&(X!==Q&&(i.activeTexture(Q),X=Q),i.bindTexture(L,ie||Ue[L]),de.type=L,de.texture=ie)}function O(){let L=q[X];L!==void 0&&L.type!==void 0&&(i.bindTexture(L.type,null),L.type=void 0,L.texture=void 0)}function mn(){try{i.compressedTexImage2D(...arguments)}catch(L){ze("WebGLState:",L)}}function dt(){try{i.compressedTexImage3D(...arguments)}catch(L){ze("WebGLState:",L)}}function ft(){try{i.texSubImage2D(...arguments)}catch(L){ze("WebGLState:",L)}}function ge(){try{i.texSubImage3D(...arguments)}catch(L){ze("WebGLState:",L)}}function Et(){try{i.compressedTexSubImage2D(...arguments)}catch(L){ze("WebGLState:",L)}}function Fe(){try{i.compressedTexSubImage3D(...arguments)}catch(L){ze("WebGLState:",L)}}function Ve(){try{i.texStorage2D(...arguments)}catch(L){ze("WebGLState:",L)}}function R(){try{i.texStorage3D(...arguments)}catch(L){ze("WebGLState:",L)}}function y(){try{i.texImage2D(...arguments)}catch(L){ze("WebGLState:",L)}}function $(){try{i.texImage3D(...arguments)}catch(L){ze("WebGLState:",L)}}function ae(L){return d[L]!==void 0?d[L]:i.getParameter(L)}function se(L,ie){d[L]!==ie&&(i.pixelStorei(L,ie),d[L]=ie)}function ce(L){K.equals(L)===!1&&(i.scissor(L.x,L.y,L.z,L.w),K.copy(L))}function pe(L){ve.equals(L)===!1&&(i.viewport(L.x,L.y,L.z,L.w),ve.copy(L))}function ee(L,ie){let Q=c.get(ie);Q===void 0&&(Q=new WeakMap,c.set(ie,Q));let de=Q.get(L);de===void 0&&(de=i.getUniformBlockIndex(ie,L.name),i.uniformBlockBinding(ie,de,de),Q.set(L,de))}function ne(L,ie,Q){let le=c.get(ie).get(L);l[le]!==Q&&(i.bindBufferBase(i.UNIFORM_BUFFER,le,Q),l[le]=Q)}function ue(){i.disable(i.BLEND),i.disable(i.CULL_FACE),i.disable(i.DEPTH_TEST),i.disable(i.POLYGON_OFFSET_FILL),i.disable(i.SCISSOR_TEST),i.disable(i.STENCIL_TEST),i.disable(i.SAMPLE_ALPHA_TO_COVERAGE),i.blendEquation(i.FUNC_ADD),i.blendFunc(i.ONE,i.ZERO),i.blendFuncSeparate(i.ONE,i.ZERO,i.ONE,i.ZERO),i.blendColor(0,0,0,0),i.colorMask(!0,!0,!0,!0),i.clearColor(0,0,0,0),i.depthMask(!0),i.depthFunc(i.LESS),a.setReversed(!1),i.clearDepth(1),i.stencilMask(4294967295),i.stencilFunc(i.ALWAYS,0,4294967295),i.stencilOp(i.KEEP,i.KEEP,i.KEEP),i.clearStencil(0),i.cullFace(i.BACK),i.frontFace(i.CCW),i.polygonOffset(0,0),i.activeTexture(i.TEXTURE0),i.bindFramebuffer(i.FRAMEBUFFER,null),i.bindFramebuffer(i.DRAW_FRAMEBUFFER,null),i.bindFramebuffer(i.READ_FRAMEBUFFER,null),i.useProgram(null),i.lineWidth(1),i.scissor(0,0,i.canvas.width,i.canvas.height),i.viewport(0,0,i.canvas.width,i.canvas.height),i.pixelStorei(i.PACK_ALIGNMENT,4),i.pixelStorei(i.UNPACK_ALIGNMENT,4),i.pixelStorei(i.UNPACK_FLIP_Y_WEBGL,!1),i.pixelStorei(i.UNPACK_PREMULTIPLY_ALPHA_WEBGL,!1),i.pixelStorei(i.UNPACK_COLORSPACE_CONVERSION_WEBGL,i.BROWSER_DEFAULT_WEBGL),i.pixelStorei(i.PACK_ROW_LENGTH,0),i.pixelStorei(i.PACK_SKIP_PIXELS,0),i.pixelStorei(i.PACK_SKIP_ROWS,0),i.pixelStorei(i.UNPACK_ROW_LENGTH,0),i.pixelStorei(i.UNPACK_IMAGE_HEIGHT,0),i.pixelStorei(i.UNPACK_SKIP_PIXELS,0),i.pixelStorei(i.UNPACK_SKIP_ROWS,0),i.pixelStorei(i.UNPACK_SKIP_IMAGES,0),h={},d={},X=null,q={},u={},l={},f=new WeakMap,g=[],v=null,_=!1,p=null,M=null,C=null,S=null,T=null,A=null,x=null,E=new je(0,0,0),H=0,F=!1,N=null,V=null,Z=null,w=null,U=null,K.set(0,0,i.canvas.width,i.canvas.height),ve.set(0,0,i.canvas.width,i.canvas.height),r.reset(),a.reset(),o.reset()}return{buffers:{color:r,depth:a,stencil:o},enable:Se,disable:We,bindFramebuffer:bt,drawBuffers:Be,useProgram:st,setBlending:Ut,setMaterial:Tt,setFlipSided:Yt,setCullFace:gt,setLineWidth:Dn,setPolygonOffset:Pt,setScissorTest:dn,activeTexture:fn,bindTexture:pn,unbindTexture:O,compressedTexImage2D:mn,compressedTexImage3D:dt,texImage2D:y,texImage3D:$,pixelStorei:se,getParameter:ae,updateUBOMapping:ee,uniformBlockBinding:ne,texStorage2D:Ve,texStorage3D:R,texSubImage2D:ft,texSubImage3D:ge,compressedTexSubImage2D:Et,compressedTexSubImage3D:Fe,scissor:ce,viewport:pe,reset:ue}}function zv(i,e,t,n,s,r,a){let o=e.has("WEBGL_multisampled_render_to_texture")?e.get("WEBGL_multisampled_render_to_texture"):null,l=typeof navigator>"u"?!1:/OculusBrowser/g.test(navigator.userAgent),c=new et,h=new WeakMap,d=new Set,u,f=new WeakMap,g=new Set,v=new FinalizationRegistry(R=>g.delete(R)),_=!1;try{_=typeof OffscreenCanvas<"u"&&new OffscreenCanvas(1,1).getContext("2d")!==null}catch{}function p(R,y){return _?new OffscreenCanvas(R,y):sr("canvas")}function M(R,y,$){let ae=1,se=Ve(R);if((se.width>$||se.height>$)&&(ae=$/Math.max(se.width,se.height)),ae<1)if(typeof HTMLImageElement<"u"&&R instanceof HTMLImageElement||typeof HTMLCanvasElement<"u"&&R instanceof HTMLCanvasElement||typeof ImageBitmap<"u"&&R instanceof ImageBitmap||typeof VideoFrame<"u"&&R instanceof VideoFrame){let ce=Math.floor(ae*se.width),pe=Math.floor(ae*se.height);u===void 0&&(u=p(ce,pe));let ee=y?p(ce,pe):u;return ee.width=ce,ee.height=pe,ee.getContext("2d").drawImage(R,0,0,ce,pe),Oe("WebGLRenderer: Texture has been resized from ("+se.width+"x"+se.height+") to ("+ce+"x"+pe+")."),ee}else return"data"in R&&Oe("WebGLRenderer: Image in DataTexture is too big ("+se.width+"x"+se.height+")."),R;return R}function C(R){return R.generateMipmaps}function S(R){i.generateMipmap(R)}function T(R){return R.isWebGLCubeRenderTarget?i.TEXTURE_CUBE_MAP:R.isWebGL3DRenderTarget?i.TEXTURE_3D:R.isWebGLArrayRenderTarget||R.isCompressedArrayTexture?i.TEXTURE_2D_ARRAY:i.TEXTURE_2D}function A(R,y,$,ae,se,ce=!1){if(R!==null){if(i[R]!==void 0)return i[R];Oe("WebGLRenderer: Attempt to use non-existing WebGL internal format '"+R+"'")}let pe;ae&&(pe=e.get("EXT_texture_norm16"),pe||Oe("WebGLRenderer: Unable to use normalized textures without EXT_texture_norm16 extension"));let ee=y;if(y===i.RED&&($===i.FLOAT&&(ee=i.R32F),$===i.HALF_FLOAT&&(ee=i.R16F),$===i.UNSIGNED_BYTE&&(ee=i.R8),$===i.UNSIGNED_SHORT&&pe&&(ee=pe.R16_EXT),$===i.SHORT&&pe&&(ee=pe.R16_SNORM_EXT)),y===i.RED_INTEGER&&($===i.UNSIGNED_BYTE&&(ee=i.R8UI),$===i.UNSIGNED_SHORT&&(ee=i.R16UI),$===i.UNSIGNED_INT&&(ee=i.R32UI),$===i.BYTE&&(ee=i.R8I),$===i.SHORT&&(ee=i.R16I),$===i.INT&&(ee=i.R32I)),y===i.RG&&($===i.FLOAT&&(ee=i.RG32F),$===i.HALF_FLOAT&&(ee=i.RG16F),$===i.UNSIGNED_BYTE&&(ee=i.RG8),$===i.UNSIGNED_SHORT&&pe&&(ee=pe.RG16_EXT),$===i.SHORT&&pe&&(ee=pe.RG16_SNORM_EXT)),y===i.RG_INTEGER&&($===i.UNSIGNED_BYTE&&(ee=i.RG8UI),$===i.UNSIGNED_SHORT&&(ee=i.RG16UI),$===i.UNSIGNED_INT&&(ee=i.RG32UI),$===i.BYTE&&(ee=i.RG8I),$===i.SHORT&&(ee=i.RG16I),$===i.INT&&(ee=i.RG32I)),y===i.RGB_INTEGER&&($===i.UNSIGNED_BYTE&&(ee=i.RGB8UI),$===i.UNSIGNED_SHORT&&(ee=i.RGB16UI),$===i.UNSIGNED_INT&&(ee=i.RGB32UI),$===i.BYTE&&(ee=i.RGB8I),$===i.SHORT&&(ee=i.RGB16I),$===i.INT&&(ee=i.RGB32I)),y===i.RGBA_INTEGER&&($===i.UNSIGNED_BYTE&&(ee=i.RGBA8UI),$===i.UNSIGNED_SHORT&&(ee=i.RGBA16UI),$===i.UNSIGNED_INT&&(ee=i.RGBA32UI),$===i.BYTE&&(ee=i.RGBA8I),$===i.SHORT&&(ee=i.RGBA16I),$===i.INT&&(ee=i.RGBA32I)),y===i.RGB&&($===i.UNSIGNED_SHORT&&pe&&(ee=pe.RGB16_EXT),$===i.SHORT&&pe&&(ee=pe.RGB16_SNORM_EXT),$===i.UNSIGNED_INT_5_9_9_9_REV&&(ee=i.RGB9_E5),$===i.UNSIGNED_INT_10F_11F_11F_REV&&(ee=i.R11F_G11F_B10F)),y===i.RGBA){let ne=ce?nr:Ke.getTransfer(se);$===i.FLOAT&&(ee=i.RGBA32F),$===i.HALF_FLOAT&&(ee=i.RGBA16F),$===i.UNSIGNED_BYTE&&(ee=ne===it?i.SRGB8_ALPHA8:i.RGBA8),$===i.UNSIGNED_SHORT&&pe&&(ee=pe.RGBA16_EXT),$===i.SHORT&&pe&&(ee=pe.RGBA16_SNORM_EXT),$===i.UNSIGNED_SHORT_4_4_4_4&&(ee=i.RGBA4),$===i.UNSIGNED_SHORT_5_5_5_1&&(ee=i.RGB5_A1)}return(ee===i.R16F||ee===i.R32F||ee===i.RG16F||ee===i.RG32F||ee===i.RGBA16F||ee===i.RGBA32F)&&e.get("EXT_color_buffer_float"),ee}function x(R,y){let $;return R?y===null||y===Pn||y===Qi?$=i.DEPTH24_STENCIL8:y===In?$=i.DEPTH32F_STENCIL8:y===Ds&&($=i.DEPTH24_STENCIL8,Oe("DepthTexture: 16 bit depth attachment is not supported with stencil. Using 24-bit attachment.")):y===null||y===Pn||y===Qi?$=i.DEPTH_COMPONENT24:y===In?$=i.DEPTH_COMPONENT32F:y===Ds&&($=i.DEPTH_COMPONENT16),$}function E(R,y){return C(R)===!0||R.isFramebufferTexture&&R.minFilter!==Dt&&R.minFilter!==Xt?Math.log2(Math.max(y.width,y.height))+1:R.mipmaps.length>0?R.mipmaps.length:R.isCompressedTexture&&Array.isArray(R.image)?y.mipmaps.length:1}function H(R){let y=new WeakRef(R);n.get(R).__ref=y,g.add(y),v.register(R,y,y)}function F(R){let y=n.get(R).__ref;y!==void 0&&(g.delete(y),v.unregister(y))}function N(R){Z(R.target)}function V(R){w(R.target)}function Z(R){R.removeEventListener("dispose",N),F(R),k(R),R.isVideoTexture&&h.delete(R),R.isHTMLTexture&&d.delete(R)}function w(R){R.removeEventListener("dispose",V),F(R),z(R)}function U(){for(let R of g){let y=R.deref();y!==void 0&&(y.isRenderTarget===!0?w(y):Z(y))}g.clear(),d.clear()}function k(R){let y=n.get(R);if(y.__webglInit===void 0)return;let $=R.source,ae=f.get($);if(ae){let se=ae[y.__cacheKey];se.usedTimes--,se.usedTimes===0&&B(R),Object.keys(ae).length===0&&f.delete($)}n.remove(R)}function B(R){let y=n.get(R);i.deleteTexture(y.__webglTexture);let $=R.source,ae=f.get($);delete ae[y.__cacheKey],a.memory.textures--}function z(R){let y=n.get(R);y.__depthDisposeCallback&&y.__depthDisposeCallback();let $=R.depthTexture;if($&&$.renderTarget===R&&Z($),R.isWebGLCubeRenderTarget)for(let se=0;se<6;se++){if(Array.isArray(y.__webglFramebuffer[se]))for(let ce=0;ce<y.__webglFramebuffer[se].length;ce++)i.deleteFramebuffer(y.__webglFramebuffer[se][ce]);else i.deleteFramebuffer(y.__webglFramebuffer[se]);y.__webglDepthbuffer&&i.deleteRenderbuffer(y.__webglDepthbuffer[se])}else{if(Array.isArray(y.__webglFramebuffer))for(let se=0;se<y.__webglFramebuffer.length;se++)i.deleteFramebuffer(y.__webglFramebuffer[se]);else i.deleteFramebuffer(y.__webglFramebuffer);if(y.__webglDepthbuffer&&i.deleteRenderbuffer(y.__webglDepthbuffer),y.__webglMultisampledFramebuffer&&i.deleteFramebuffer(y.__webglMultisampledFramebuffer),y.__webglColorRenderbuffer)for(let se=0;se<y.__webglColorRenderbuffer.length;se++)y.__webglColorRenderbuffer[se]&&i.deleteRenderbuffer(y.__webglColorRenderbuffer[se]);y.__webglDepthRenderbuffer&&i.deleteRenderbuffer(y.__webglDepthRenderbuffer)}let ae=R.textures;for(let se=0,ce=ae.length;se<ce;se++){let pe=n.get(ae[se]);pe.__webglTexture&&(i.deleteTexture(pe.__webglTexture),a.memory.textures--),n.remove(ae[se])}n.remove(R)}let P=0;function X(){P=0}function q(){return P}function re(R){P=R}function Me(){let R=P;return R>=s.maxTextures&&Oe("WebGLTextures: Trying to use "+(R+1)+" texture units while this GPU supports only "+s.maxTextures),P+=1,R}function K(R){let y=[];return y.push(R.wrapS),y.push(R.wrapT),y.push(R.wrapR||0),y.push(R.magFilter),y.push(R.minFilter),y.push(R.anisotropy),y.push(R.internalFormat),y.push(R.format),y.push(R.type),y.push(R.generateMipmaps),y.push(R.mipmapsAutoUpdate),y.push(R.premultiplyAlpha),y.push(R.flipY),y.push(R.unpackAlignment),y.push(R.colorSpace),y.join()}function ve(R,y){let $=n.get(R);if(R.isVideoTexture&&Et(R),R.isRenderTargetTexture===!1&&R.isExternalTexture!==!0&&R.version>0&&$.__version!==R.version){let ae=R.image;if(ae===null)Oe("WebGLRenderer: Texture marked for update but no image data found.");else if(ae.complete===!1)Oe("WebGLRenderer: Texture marked for update but image is incomplete");else{Tt($,R,y);return}}else R.isExternalTexture&&($.__webglTexture=R.sourceTexture?R.sourceTexture:null);t.bindTexture(i.TEXTURE_2D,$.__webglTexture,i.TEXTURE0+y)}function Te(R,y){let $=n.get(R);if(R.isRenderTargetTexture===!1&&R.version>0&&$.__version!==R.version){Tt($,R,y);return}else R.isExternalTexture&&($.__webglTexture=R.sourceTexture?R.sourceTexture:null);t.bindTexture(i.TEXTURE_2D_ARRAY,$.__webglTexture,i.TEXTURE0+y)}function Ue(R,y){let $=n.get(R);if(R.isRenderTargetTexture===!1&&R.version>0&&$.__version!==R.version){Tt($,R,y);return}t.bindTexture(i.TEXTURE_3D,$.__webglTexture,i.TEXTURE0+y)}function Se(R,y){let $=n.get(R);if(R.version>0&&$.__version!==R.version){Yt($,R,y);return}t.bindTexture(i.TEXTURE_CUBE_MAP,$.__webglTexture,i.TEXTURE0+y)}let We={[Ea]:i.REPEAT,[Gn]:i.CLAMP_TO_EDGE,[Aa]:i.MIRRORED_REPEAT},bt={[Dt]:i.NEAREST,[ju]:i.NEAREST_MIPMAP_NEAREST,[_r]:i.NEAREST_MIPMAP_LINEAR,[Xt]:i.LINEAR,[eo]:i.LINEAR_MIPMAP_NEAREST,[ai]:i.LINEAR_MIPMAP_LINEAR},Be={[nd]:i.NEVER,[vc]:i.ALWAYS,[id]:i.LESS,[gc]:i.LEQUAL,[sd]:i.EQUAL,[_c]:i.GEQUAL,[rd]:i.GREATER,[ad]:i.NOTEQUAL};function st(R,y){if(y.type===In&&e.has("OES_texture_float_linear")===!1&&(y.magFilter===Xt||y.magFilter===eo||y.magFilter===_r||y.magFilter===ai||y.minFilter===Xt||y.minFilter===eo||y.minFilter===_r||y.minFilter===ai)&&Oe("WebGLRenderer: Unable to use linear filtering with floating point textures. OES_texture_float_linear not supported on this device."),i.texParameteri(R,i.TEXTURE_WRAP_S,We[y.wrapS]),i.texParameteri(R,i.TEXTURE_WRAP_T,We[y.wrapT]),(R===i.TEXTURE_3D||R===i.TEXTURE_2D_ARRAY)&&i.texParameteri(R,i.TEXTURE_WRAP_R,We[y.wrapR]),i.texParameteri(R,i.TEXTURE_MAG_FILTER,bt[y.magFilter]),i.texParameteri(R,i.TEXTURE_MIN_FILTER,bt[y.minFilter]),y.compareFunction&&(i.texParameteri(R,i.TEXTURE_COMPARE_MODE,i.COMPARE_REF_TO_TEXTURE),i.texParameteri(R,i.TEXTURE_COMPARE_FUNC,Be[y.compareFunction])),e.has("EXT_texture_filter_anisotropic")===!0){if(y.magFilter===Dt||y.minFilter!==_r&&y.minFilter!==ai||y.type===In&&e.has("OES_texture_float_linear")===!1)return;if(y.anisotropy>1||n.get(y).__currentAnisotropy){let $=e.get("EXT_texture_filter_anisotropic");i.texParameterf(R,$.TEXTURE_MAX_ANISOTROPY_EXT,Math.min(y.anisotropy,s.getMaxAnisotropy())),n.get(y).__currentAnisotropy=y.anisotropy}}}function at(R,y){let $=!1;R.__webglInit===void 0&&(R.__webglInit=!0,y.addEventListener("dispose",N),H(y));let ae=y.source,se=f.get(ae);se===void 0&&(se={},f.set(ae,se));let ce=K(y);if(ce!==R.__cacheKey){se[ce]===void 0&&(se[ce]={texture:i.createTexture(),usedTimes:0},a.memory.textures++,$=!0),se[ce].usedTimes++;let pe=se[R.__cacheKey];pe!==void 0&&(se[R.__cacheKey].usedTimes--,pe.usedTimes===0&&B(y)),R.__cacheKey=ce,R.__webglTexture=se[ce].texture}return $}function Ye(R,y,$){return Math.floor(Math.floor(R/$)/y)}function Ut(R,y,$,ae){let ce=R.updateRanges;if(ce.length===0)t.texSubImage2D(i.TEXTURE_2D,0,0,0,y.width,y.height,$,ae,y.data);else{ce.sort((L,ie)=>L.start-ie.start);let pe=0;for(let L=1;L<ce.length;L++){let ie=ce[pe],Q=ce[L],de=ie.start+ie.count,le=Ye(Q.start,y.width,4),he=Ye(ie.start,y.width,4);Q.start<=de+1&&le===he&&Ye(Q.start+Q.count-1,y.width,4)===le?ie.count=Math.max(ie.count,Q.start+Q.count-ie.start):(++pe,ce[pe]=Q)}ce.length=pe+1;let ee=t.getParameter(i.UNPACK_ROW_LENGTH),ne=t.getParameter(i.UNPACK_SKIP_PIXELS),ue=t.getParameter(i.UNPACK_SKIP_ROWS);t.pixelStorei(i.UNPACK_ROW_LENGTH,y.width);for(let L=0,ie=ce.length;L<ie;L++){let Q=ce[L],de=Math.floor(Q.start/4),le=Math.ceil(Q.count/4),he=de%y.width,Ie=Math.floor(de/y.width),Xe=le,oe=1;t.pixelStorei(i.UNPACK_SKIP_PIXELS,he),t.pixelStorei(i.UNPACK_SKIP_ROWS,Ie),t.texSubImage2D(i.TEXTURE_2D,0,he,Ie,Xe,oe,$,ae,y.data)}R.clearUpdateRanges(),t.pixelStorei(i.UNPACK_ROW_LENGTH,ee),t.pixelStorei(i.UNPACK_SKIP_PIXELS,ne),t.pixelStorei(i.UNPACK_SKIP_ROWS,ue)}}function Tt(R,y,$){let ae=i.TEXTURE_2D;(y.isDataArrayTexture||y.isCompressedArrayTexture)&&(ae=i.TEXTURE_2D_ARRAY),y.isData3DTexture&&(ae=i.TEXTURE_3D);let se=at(R,y),ce=y.source;t.bindTexture(ae,R.__webglTexture,i.TEXTURE0+$);let pe=n.get(ce);if(ce.version!==pe.__version||se===!0){if(t.activeTexture(i.TEXTURE0+$),(typeof ImageBitmap<"u"&&y.image instanceof ImageBitmap)===!1){let oe=Ke.getPrimaries(Ke.workingColorSpace),De=y.colorSpace===li?null:Ke.getPrimaries(y.colorSpace),$e=y.colorSpace===li||oe===De?i.NONE:i.BROWSER_DEFAULT_WEBGL;t.pixelStorei(i.UNPACK_FLIP_Y_WEBGL,y.flipY),t.pixelStorei(i.UNPACK_PREMULTIPLY_ALPHA_WEBGL,y.premultiplyAlpha),t.pixelStorei(i.UNPACK_COLORSPACE_CONVERSION_WEBGL,$e)}t.pixelStorei(i.UNPACK_ALIGNMENT,y.unpackAlignment);let ne=M(y.image,!1,s.maxTextureSize);ne=Fe(y,ne);let ue=r.convert(y.format,y.colorSpace),L=r.convert(y.type),ie=A(y.internalFormat,ue,L,y.normalized,y.colorSpace,y.isVideoTexture);st(ae,y);let Q,de=y.mipmaps,le=y.isVideoTexture!==!0,he=pe.__version===void 0||se===!0,Ie=ce.dataReady,Xe=E(y,ne);if(y.isDepthTexture)ie=x(y.format===oi,y.type),he&&(le?t.texStorage2D(i.TEXTURE_2D,1,ie,ne.width,ne.height):t.texImage2D(i.TEXTURE_2D,0,ie,ne.width,ne.height,0,ue,L,null));else if(y.isDataTexture)if(de.length>0){le&&he&&t.texStorage2D(i.TEXTURE_2D,Xe,ie,de[0].width,de[0].height);for(let oe=0,De=de.length;oe<De;oe++)Q=de[oe],le?Ie&&t.texSubImage2D(i.TEXTURE_2D,oe,0,0,Q.width,Q.height,ue,L,Q.data):t.texImage2D(i.TEXTURE_2D,oe,ie,Q.width,Q.height,0,ue,L,Q.data);y.generateMipmaps=!1}else le?(he&&t.texStorage2D(i.TEXTURE_2D,Xe,ie,ne.width,ne.height),Ie&&Ut(y,ne,ue,L)):t.texImage2D(i.TEXTURE_2D,0,ie,ne.width,ne.height,0,ue,L,ne.data);else if(y.isCompressedTexture)if(y.isCompressedArrayTexture){le&&he&&t.texStorage3D(i.TEXTURE_2D_ARRAY,Xe,ie,de[0].width,de[0].height,ne.depth);for(let oe=0,De=de.length;oe<De;oe++)if(Q=de[oe],y.format!==Nn)if(ue!==null)if(le){if(Ie)if(y.layerUpdates.size>0){let $e=Tc(Q.width,Q.height,y.format,y.type);for(let ye of y.layerUpdates){let rt=Q.data.subarray(ye*$e/Q.data.BYTES_PER_ELEMENT,(ye+1)*$e/Q.data.BYTES_PER_ELEMENT);t.compressedTexSubImage3D(i.TEXTURE_2D_ARRAY,oe,0,0,ye,Q.width,Q.height,1,ue,rt)}}else t.compressedTexSubImage3D(i.TEXTURE_2D_ARRAY,oe,0,0,0,Q.width,Q.height,ne.depth,ue,Q.data)}else t.compressedTexImage3D(i.TEXTURE_2D_ARRAY,oe,ie,Q.width,Q.height,ne.depth,0,Q.data,0,0);else Oe("WebGLRenderer: Attempt to load unsupported compressed texture format in .uploadTexture()");else le?Ie&&t.texSubImage3D(i.TEXTURE_2D_ARRAY,oe,0,0,0,Q.width,Q.height,ne.depth,ue,L,Q.data):t.texImage3D(i.TEXTURE_2D_ARRAY,oe,ie,Q.width,Q.height,ne.depth,0,ue,L,Q.data);y.layerUpdates.size>0&&y.clearLayerUpdates()}else{le&&he&&t.texStorage2D(i.TEXTURE_2D,Xe,ie,de[0].width,de[0].height);for(let oe=0,De=de.length;oe<De;oe++)Q=de[oe],y.format!==Nn?ue!==null?le?Ie&&t.compressedTexSubImage2D(i.TEXTURE_2D,oe,0,0,Q.width,Q.height,ue,Q.data):t.compressedTexImage2D(i.TEXTURE_2D,oe,ie,Q.width,Q.height,0,Q.data):Oe("WebGLRenderer: Attempt to load unsupported compressed texture format in .uploadTexture()"):le?Ie&&t.texSubImage2D(i.TEXTURE_2D,oe,0,0,Q.width,Q.height,ue,L,Q.data):t.texImage2D(i.TEXTURE_2D,oe,ie,Q.width,Q.height,0,ue,L,Q.data)}else if(y.isDataArrayTexture)if(le){if(he&&t.texStorage3D(i.TEXTURE_2D_ARRAY,Xe,ie,ne.width,ne.height,ne.depth),Ie)if(y.layerUpdates.size>0){let oe=Tc(ne.width,ne.height,y.format,y.type);for(let De of y.layerUpdates){let $e=ne.data.subarray(De*oe/ne.data.BYTES_PER_ELEMENT,(De+1)*oe/ne.data.BYTES_PER_ELEMENT);t.texSubImage3D(i.TEXTURE_2D_ARRAY,0,0,0,De,ne.width,ne.height,1,ue,L,$e)}y.clearLayerUpdates()}else t.texSubImage3D(i.TEXTURE_2D_ARRAY,0,0,0,0,ne.width,ne.height,ne.depth,ue,L,ne.data)}else t.texImage3D(i.TEXTURE_2D_ARRAY,0,ie,ne.width,ne.height,ne.depth,0,ue,L,ne.data);else if(y.isData3DTexture)le?(he&&t.texStorage3D(i.TEXTURE_3D,Xe,ie,ne.width,ne.height,ne.depth),Ie&&t.texSubImage3D(i.TEXTURE_3D,0,0,0,0,ne.width,ne.height,ne.depth,ue,L,ne.data)):t.texImage3D(i.TEXTURE_3D,0,ie,ne.width,ne.height,ne.depth,0,ue,L,ne.data);else if(y.isFramebufferTexture){if(he)if(le)t.texStorage2D(i.TEXTURE_2D,Xe,ie,ne.width,ne.height);else{let oe=ne.width,De=ne.height;for(let $e=0;$e<Xe;$e++)t.texImage2D(i.TEXTURE_2D,$e,ie,oe,De,0,ue,L,null),oe>>=1,De>>=1}}else if(y.isHTMLTexture){if("texElementImage2D"in i){let oe=i.canvas;if(oe.hasAttribute("layoutsubtree")||oe.setAttribute("layoutsubtree","true"),ne.parentNode!==oe){oe.appendChild(ne),d.add(y),oe.onpaint=De=>{let $e=De.changedElements;for(let ye of d)$e.includes(ye.image)&&(ye.needsUpdate=!0)},oe.requestPaint();return}if(i.texElementImage2D.length===3)i.texElementImage2D(i.TEXTURE_2D,i.RGBA8,ne);else{let $e=i.RGBA,ye=i.RGBA,rt=i.UNSIGNED_BYTE;i.texElementImage2D(i.TEXTURE_2D,0,$e,ye,rt,ne)}i.texParameteri(i.TEXTURE_2D,i.TEXTURE_MIN_FILTER,i.LINEAR),i.texParameteri(i.TEXTURE_2D,i.TEXTURE_WRAP_S,i.CLAMP_TO_EDGE),i.texParameteri(i.TEXTURE_2D,i.TEXTURE_WRAP_T,i.CLAMP_TO_EDGE)}}else if(de.length>0){if(le&&he){let oe=Ve(de[0]);t.texStorage2D(i.TEXTURE_2D,Xe,ie,oe.width,oe.height)}for(let oe=0,De=de.length;oe<De;oe++)Q=de[oe],le?Ie&&t.texSubImage2D(i.TEXTURE_2D,oe,0,0,ue,L,Q):t.texImage2D(i.TEXTURE_2D,oe,ie,ue,L,Q);y.generateMipmaps=!1}else if(le){if(he){let oe=Ve(ne);t.texStorage2D(i.TEXTURE_2D,Xe,ie,oe.width,oe.height)}Ie&&t.texSubImage2D(i.TEXTURE_2D,0,0,0,ue,L,ne)}else t.texImage2D(i.TEXTURE_2D,0,ie,ue,L,ne);C(y)&&y.mipmapsAutoUpdate===!0&&S(ae),pe.__version=ce.version,y.onUpdate&&y.onUpdate(y)}R.__version=y.version}function Yt(R,y,$){if(y.image.length!==6)return;let ae=at(R,y),se=y.source;t.bindTexture(i.TEXTURE_CUBE_MAP,R.__webglTexture,i.TEXTURE0+$);let ce=n.get(se);if(se.version!==ce.__version||ae===!0){t.activeTexture(i.TEXTURE0+$);let pe=Ke.getPrimaries(Ke.workingColorSpace),ee=y.colorSpace===li?null:Ke.getPrimaries(y.colorSpace),ne=y.colorSpace===li||pe===ee?i.NONE:i.BROWSER_DEFAULT_WEBGL;t.pixelStorei(i.UNPACK_FLIP_Y_WEBGL,y.flipY),t.pixelStorei(i.UNPACK_PREMULTIPLY_ALPHA_WEBGL,y.premultiplyAlpha),t.pixelStorei(i.UNPACK_ALIGNMENT,y.unpackAlignment),t.pixelStorei(i.UNPACK_COLORSPACE_CONVERSION_WEBGL,ne);let ue=y.isCompressedTexture||y.image[0].isCompressedTexture,L=y.image[0]&&y.image[0].isDataTexture,ie=[];for(let ye=0;ye<6;ye++)!ue&&!L?ie[ye]=M(y.image[ye],!0,s.maxCubemapSize):ie[ye]=L?y.image[ye].image:y.image[ye],ie[ye]=Fe(y,ie[ye]);let Q=ie[0],de=r.convert(y.format,y.colorSpace),le=r.convert(y.type),he=A(y.internalFormat,de,le,y.normalized,y.colorSpace),Ie=y.isVideoTexture!==!0,Xe=ce.__version===void 0||ae===!0,oe=se.dataReady,De=E(y,Q);st(i.TEXTURE_CUBE_MAP,y);let $e;if(y.isDepthTexture){if(he=x(y.format===oi,y.type),Xe)if(Ie)t.texStorage2D(i.TEXTURE_CUBE_MAP,1,he,Q.width,Q.height);else for(let ye=0;ye<6;ye++)t.texImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+ye,0,he,Q.width,Q.height,0,de,le,null)}else if(ue){Ie&&Xe&&t.texStorage2D(i.TEXTURE_CUBE_MAP,De,he,Q.width,Q.height);for(let ye=0;ye<6;ye++){$e=ie[ye].mipmaps;for(let rt=0;rt<$e.length;rt++){let It=$e[rt];y.format!==Nn?de!==null?Ie?oe&&t.compressedTexSubImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+ye,rt,0,0,It.width,It.height,de,It.data):t.compressedTexImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+ye,rt,he,It.width,It.height,0,It.data):Oe("WebGLRenderer: Attempt to load unsupported compressed texture format in .setTextureCube()"):Ie?oe&&t.texSubImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+ye,rt,0,0,It.width,It.height,de,le,It.data):t.texImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+ye,rt,he,It.width,It.height,0,de,le,It.data)}}}else{if($e=y.mipmaps,Ie&&Xe){$e.length>0&&De++;let ye=Ve(ie[0]);t.texStorage2D(i.TEXTURE_CUBE_MAP,De,he,ye.width,ye.height)}for(let ye=0;ye<6;ye++)if(L){Ie?oe&&t.texSubImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+ye,0,0,0,ie[ye].width,ie[ye].height,de,le,ie[ye].data):t.texImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+ye,0,he,ie[ye].width,ie[ye].height,0,de,le,ie[ye].data);for(let rt=0;rt<$e.length;rt++){let ci=$e[rt].image[ye].image;Ie?oe&&t.texSubImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+ye,rt+1,0,0,ci.width,ci.height,de,le,ci.data):t.texImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+ye,rt+1,he,ci.width,ci.height,0,de,le,ci.data)}}else{Ie?oe&&t.texSubImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+ye,0,0,0,de,le,ie[ye]):t.texImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+ye,0,he,de,le,ie[ye]);for(let rt=0;rt<$e.length;rt++){let It=$e[rt];Ie?oe&&t.texSubImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+ye,rt+1,0,0,de,le,It.image[ye]):t.texImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+ye,rt+1,he,de,le,It.image[ye])}}}C(y)&&y.mipmapsAutoUpdate===!0&&S(i.TEXTURE_CUBE_MAP),ce.__version=se.version,y.onUpdate&&y.onUpdate(y)}R.__version=y.version}function gt(R,y,$,ae,se,ce){let pe=r.convert($.format,$.colorSpace),ee=r.convert($.type),ne=A($.internalFormat,pe,ee,$.normalized,$.colorSpace),ue=n.get(y),L=n.get($);if(L.__renderTarget=y,!ue.__hasExternalTextures){let ie=Math.max(1,y.width>>ce),Q=Math.max(1,y.height>>ce);se===i.TEXTURE_3D||se===i.TEXTURE_2D_ARRAY?t.texImage3D(se,ce,ne,ie,Q,y.depth,0,pe,ee,null):t.texImage2D(se,ce,ne,ie,Q,0,pe,ee,null)}t.bindFramebuffer(i.FRAMEBUFFER,R),ge(y)?o.framebufferTexture2DMultisampleEXT(i.FRAMEBUFFER,ae,se,L.__webglTexture,0,ft(y)):(se===i.TEXTURE_2D||se>=i.TEXTURE_CUBE_MAP_POSITIVE_X&&se<=i.TEXTURE_CUBE_MAP_NEGATIVE_Z)&&i.framebufferTexture2D(i.FRAMEBUFFER,ae,se,L.__webglTexture,ce),t.bindFramebuffer(i.FRAMEBUFFER,null)}function Dn(R,y,$){if(i.bindRenderbuffer(i.RENDERBUFFER,R),y.depthBuffer){let ae=y.depthTexture,se=ae&&ae.isDepthTexture?ae.type:null,ce=x(y.stencilBuffer,se),pe=y.stencilBuffer?i.DEPTH_STENCIL_ATTACHMENT:i.DEPTH_ATTACHMENT;ge(y)?o.renderbufferStorageMultisampleEXT(i.RENDERBUFFER,ft(y),ce,y.width,y.height):$?i.renderbufferStorageMultisample(i.RENDERBUFFER,ft(y),ce,y.width,y.height):i.renderbufferStorage(i.RENDERBUFFER,ce,y.width,y.height),i.framebufferRenderbuffer(i.FRAMEBUFFER,pe,i.RENDERBUFFER,R)}else{let ae=y.textures;for(let se=0;se<ae.length;se++){let ce=ae[se],pe=r.convert(ce.format,ce.colorSpace),ee=r.convert(ce.type),ne=A(ce.internalFormat,pe,ee,ce.normalized,ce.colorSpace);ge(y)?o.renderbufferStorageMultisampleEXT(i.RENDERBUFFER,ft(y),ne,y.width,y.height):$?i.renderbufferStorageMultisample(i.RENDERBUFFER,ft(y),ne,y.width,y.height):i.renderbufferStorage(i.RENDERBUFFER,ne,y.width,y.height)}}i.bindRenderbuffer(i.RENDERBUFFER,null)}function Pt(R,y,$){let ae=y.isWebGLCubeRenderTarget===!0;if(t.bindFramebuffer(i.FRAMEBUFFER,R),!(y.depthTexture&&y.depthTexture.isDepthTexture))throw new Error("THREE.WebGLTextures: renderTarget.depthTexture must be an instance of THREE.DepthTexture.");let se=n.get(y.depthTexture);se.__renderTarget=y;let ce=ae?y.depthTexture.image[0]:y.depthTexture.image;(!se.__webglTexture||ce.width!==y.width||ce.height!==y.height)&&(ce.width=y.width,ce.height=y.height,y.depthTexture.needsUpdate=!0),ae?Se(y.depthTexture,0):ve(y.depthTexture,0);let pe=se.__webglTexture,ee=ft(y),ne=ae?i.TEXTURE_CUBE_MAP_POSITIVE_X+$:i.TEXTURE_2D,ue=y.depthTexture.format===oi?i.DEPTH_STENCIL_ATTACHMENT:i.DEPTH_ATTACHMENT;if(y.depthTexture.format===si)ge(y)?o.framebufferTexture2DMultisampleEXT(i.FRAMEBUFFER,ue,ne,pe,0,ee):i.framebufferTexture2D(i.FRAMEBUFFER,ue,ne,pe,0);else if(y.depthTexture.format===oi)ge(y)?o.framebufferTexture2DMultisampleEXT(i.FRAMEBUFFER,ue,ne,pe,0,ee):i.framebufferTexture2D(i.FRAMEBUFFER,ue,ne,pe,0);else throw new Error("THREE.WebGLTextures: Unknown depthTexture format.")}function dn(R){let y=n.get(R),$=R.isWebGLCubeRenderTarget===!0;if(y.__boundDepthTexture!==R.depthTexture){let ae=R.depthTexture;if(y.__depthDisposeCallback&&y.__depthDisposeCallback(),ae){let se=()=>{delete y.__boundDepthTexture,delete y.__depthDisposeCallback,ae.removeEventListener("dispose",se)};ae.addEventListener("dispose",se),y.__depthDisposeCallback=se}y.__boundDepthTexture=ae}if(R.depthTexture&&!y.__autoAllocateDepthBuffer)if($)for(let ae=0;ae<6;ae++)Pt(y.__webglFramebuffer[ae],R,ae);else R.texture.mipmaps.length>0?Pt(y.__webglFramebuffer[0],R,0):Pt(y.__webglFramebuffer,R,0);else if($){y.__webglDepthbuffer=[];for(let ae=0;ae<6;ae++)if(t.bindFramebuffer(i.FRAMEBUFFER,y.__webglFramebuffer[ae]),y.__webglDepthbuffer[ae]===void 0)y.__webglDepthbuffer[ae]=i.createRenderbuffer(),Dn(y.__webglDepthbuffer[ae],R,!1);else{let se=R.stencilBuffer?i.DEPTH_STENCIL_ATTACHMENT:i.DEPTH_ATTACHMENT,ce=y.__webglDepthbuffer[ae];i.bindRenderbuffer(i.RENDERBUFFER,ce),i.framebufferRenderbuffer(i.FRAMEBUFFER,se,i.RENDERBUFFER,ce)}}else if(R.texture.mipmaps.length>0?t.bindFramebuffer(i.FRAMEBUFFER,y.__webglFramebuffer[0]):t.bindFramebuffer(i.FRAMEBUFFER,y.__webglFramebuffer),y.__webglDepthbuffer===void 0)y.__webglDepthbuffer=i.createRenderbuffer(),Dn(y.__webglDepthbuffer,R,!1);else{let se=R.stencilBuffer?i.DEPTH_STENCIL_ATTACHMENT:i.DEPTH_ATTACHMENT,ce=y.__webglDepthbuffer;i.bindRenderbuffer(i.RENDERBUFFER,ce),i.framebufferRenderbuffer(i.FRAMEBUFFER,se,i.RENDERBUFFER,ce)}t.bindFramebuffer(i.FRAMEBUFFER,null)}function fn(R,y,$){let ae=n.get(R);y!==void 0&&gt(ae.__webglFramebuffer,R,R.texture,i.COLOR_ATTACHMENT0,i.TEXTURE_2D,0),$!==void 0&&dn(R)}function pn(R){let y=R.texture,$=n.get(R),ae=n.get(y);R.addEventListener("dispose",V),H(R);let se=R.textures,ce=R.isWebGLCubeRenderTarget===!0,pe=se.length>1;if(pe||(ae.__webglTexture===void 0&&(ae.__webglTexture=i.createTexture()),ae.__version=y.version,a.memory.textures++),ce){$.__webglFramebuffer=[];for(let ee=0;ee<6;ee++)if(y.mipmaps.length>0){$.__webglFramebuffer[ee]=[];for(let ne=0;ne<y.mipmaps.length;ne++)$.__webglFramebuffer[ee][ne]=i.createFramebuffer()}else $.__webglFramebuffer[ee]=i.createFramebuffer()}else{if(y.mipmaps.length>0){$.__webglFramebuffer=[];for(let ee=0;ee<y.mipmaps.length;ee++)$.__webglFramebuffer[ee]=i.createFramebuffer()}else $.__webglFramebuffer=i.createFramebuffer();if(pe)for(let ee=0,ne=se.length;ee<ne;ee++){let ue=n.get(se[ee]);ue.__webglTexture===void 0&&(ue.__webglTexture=i.createTexture(),a.memory.textures++)}if(R.samples>0&&ge(R)===!1){$.__webglMultisampledFramebuffer=i.createFramebuffer(),$.__webglColorRenderbuffer=[],t.bindFramebuffer(i.FRAMEBUFFER,$.__webglMultisampledFramebuffer);for(let ee=0;ee<se.length;ee++){let ne=se[ee];$.__webglColorRenderbuffer[ee]=i.createRenderbuffer(),i.bindRenderbuffer(i.RENDERBUFFER,$.__webglColorRenderbuffer[ee]);let ue=r.convert(ne.format,ne.colorSpace),L=r.convert(ne.type),ie=A(ne.internalFormat,ue,L,ne.normalized,ne.colorSpace,R.isXRRenderTarget===!0),Q=ft(R);i.renderbufferStorageMultisample(i.RENDERBUFFER,Q,ie,R.width,R.height),i.framebufferRenderbuffer(i.FRAMEBUFFER,i.COLOR_ATTACHMENT0+ee,i.RENDERBUFFER,$.__webglColorRenderbuffer[ee])}i.bindRenderbuffer(i.RENDERBUFFER,null),R.depthBuffer&&($.__webglDepthRenderbuffer=i.createRenderbuffer(),Dn($.__webglDepthRenderbuffer,R,!0)),t.bindFramebuffer(i.FRAMEBUFFER,null)}}if(ce){t.bindTexture(i.TEXTURE_CUBE_MAP,ae.__webglTexture),st(i.TEXTURE_CUBE_MAP,y);for(let ee=0;ee<6;ee++)if(y.mipmaps.length>0)for(let ne=0;ne<y.mipmaps.length;ne++)gt($.__webglFramebuffer[ee][ne],R,y,i.COLOR_ATTACHMENT0,i.TEXTURE_CUBE_MAP_POSITIVE_X+ee,ne);else gt($.__webglFramebuffer[ee],R,y,i.COLOR_ATTACHMENT0,i.TEXTURE_CUBE_MAP_POSITIVE_X+ee,0);C(y)?S(i.TEXTURE_CUBE_MAP):y.mipmaps.length>0&&i.texParameteri(i.TEXTURE_CUBE_MAP,i.TEXTURE_MAX_LEVEL,y.mipmaps.length-1),t.unbindTexture()}else if(pe){for(let ee=0,ne=se.length;ee<ne;ee++){let ue=se[ee],L=n.get(ue),ie=i.TEXTURE_2D;(R.isWebGL3DRenderTarget||R.isWebGLArrayRenderTarget)&&(ie=R.isWebGL3DRenderTarget?i.TEXTURE_3D:i.TEXTURE_2D_ARRAY),t.bindTexture(ie,L.__webglTexture),st(ie,ue),gt($.__webglFramebuffer,R,ue,i.COLOR_ATTACHMENT0+ee,ie,0),C(ue)&&S(ie)}t.unbindTexture()}else{let ee=i.TEXTURE_2D;if((R.isWebGL3DRenderTarget||R.isWebGLArrayRenderTarget)&&(ee=R.isWebGL3DRenderTarget?i.TEXTURE_3D:i.TEXTURE_2D_ARRAY),t.bindTexture(ee,ae.__webglTexture),st(ee,y),y.mipmaps.length>0)for(let ne=0;ne<y.mipmaps.length;ne++)gt($.__webglFramebuffer[ne],R,y,i.COLOR_ATTACHMENT0,ee,ne);else gt($.__webglFramebuffer,R,y,i.COLOR_ATTACHMENT0,ee,0);C(y)?S(ee):y.mipmaps.length>0&&i.texParameteri(ee,i.TEXTURE_MAX_LEVEL,y.mipmaps.length-1),t.unbindTexture()}R.depthBuffer&&dn(R)}function O(R){let y=R.textures;for(let $=0,ae=y.length;$<ae;$++){let se=y[$];if(C(se)&&se.mipmapsAutoUpdate===!0){let ce=T(R),pe=n.get(se).__webglTexture;t.bindTexture(ce,pe),S(ce),t.unbindTexture()}}}let mn=[];function dt(R){if(R.samples>0){if(ge(R)===!1){let y=R.textures,$=R.width,ae=R.height,se=i.COLOR_BUFFER_BIT,ce=R.stencilBuffer?i.DEPTH_STENCIL_ATTACHMENT:i.DEPTH_ATTACHMENT,pe=n.get(R),ee=y.length>1;if(ee)for(let ue=0;ue<y.length;ue++)t.bindFramebuffer(i.FRAMEBUFFER,pe.__webglMultisampledFramebuffer),i.framebufferRenderbuffer(i.FRAMEBUFFER,i.COLOR_ATTACHMENT0+ue,i.RENDERBUFFER,null),t.bindFramebuffer(i.FRAMEBUFFER,pe.__webglFramebuffer),i.framebufferTexture2D(i.DRAW_FRAMEBUFFER,i.COLOR_ATTACHMENT0+ue,i.TEXTURE_2D,null,0);t.bindFramebuffer(i.READ_FRAMEBUFFER,pe.__webglMultisampledFramebuffer),R.texture.mipmaps.length>0?t.bindFramebuffer(i.DRAW_FRAMEBUFFER,pe.__webglFramebuffer[0]):t.bindFramebuffer(i.DRAW_FRAMEBUFFER,pe.__webglFramebuffer);for(let ue=0;ue<y.length;ue++){if(R.resolveDepthBuffer&&(R.depthBuffer&&(se|=i.DEPTH_BUFFER_BIT),R.stencilBuffer&&R.resolveStencilBuffer&&(se|=i.STENCIL_BUFFER_BIT)),ee){i.framebufferRenderbuffer(i.READ_FRAMEBUFFER,i.COLOR_ATTACHMENT0,i.RENDERBUFFER,pe.__webglColorRenderbuffer[ue]);let L=n.get(y[ue]).__webglTexture;i.framebufferTexture2D(i.DRAW_FRAMEBUFFER,i.COLOR_ATTACHMENT0,i.TEXTURE_2D,L,0)}i.blitFramebuffer(0,0,$,ae,0,0,$,ae,se,i.NEAREST),l===!0&&(mn.length=0,mn.push(i.COLOR_ATTACHMENT0+ue),R.depthBuffer&&R.storeMultisampledDepthBuffer===!1&&mn.push(ce),i.invalidateFramebuffer(i.READ_FRAMEBUFFER,mn))}if(t.bindFramebuffer(i.READ_FRAMEBUFFER,null),t.bindFramebuffer(i.DRAW_FRAMEBUFFER,null),ee)for(let ue=0;ue<y.length;ue++){t.bindFramebuffer(i.FRAMEBUFFER,pe.__webglMultisampledFramebuffer),i.framebufferRenderbuffer(i.FRAMEBUFFER,i.COLOR_ATTACHMENT0+ue,i.RENDERBUFFER,pe.__webglColorRenderbuffer[ue]);let L=n.get(y[ue]).__webglTexture;t.bindFramebuffer(i.FRAMEBUFFER,pe.__webglFramebuffer),i.framebufferTexture2D(i.DRAW_FRAMEBUFFER,i.COLOR_ATTACHMENT0+ue,i.TEXTURE_2D,L,0)}t.bindFramebuffer(i.DRAW_FRAMEBUFFER,pe.__webglMultisampledFramebuffer)}else if(R.depthBuffer&&R.storeMultisampledDepthBuffer===!1&&l){let y=R.stencilBuffer?i.DEPTH_STENCIL_ATTACHMENT:i.DEPTH_ATTACHMENT;i.invalidateFramebuffer(i.DRAW_FRAMEBUFFER,[y])}}}function ft(R){return Math.min(s.maxSamples,R.samples)}function ge(R){let y=n.get(R);return R.samples>0&&e.has("WEBGL_multisampled_render_to_texture")===!0&&y.__useRenderToTexture!==!1}function Et(R){let y=a.render.frame;h.get(R)!==y&&(h.set(R,y),R.update())}function Fe(R,y){let $=R.colorSpace,ae=R.format,se=R.type;return R.isCompressedTexture===!0||R.isVideoTexture===!0||$!==tr&&$!==li&&(Ke.getTransfer($)===it?(ae!==Nn||se!==hn)&&Oe("WebGLTextures: sRGB encoded textures have to use RGBAFormat and UnsignedByteType."):ze("WebGLTextures: Unsupported texture color space:",$)),y}function Ve(R){return typeof HTMLImageElement<"u"&&R instanceof HTMLImageElement?(c.width=R.naturalWidth||R.width,c.height=R.naturalHeight||R.height):typeof VideoFrame<"u"&&R instanceof VideoFrame?(c.width=R.displayWidth,c.height=R.displayHeight):(c.width=R.width,c.height=R.height),c}this.allocateTextureUnit=Me,this.resetTextureUnits=X,this.getTextureUnits=q,this.setTextureUnits=re,this.setTexture2D=ve,this.setTexture2DArray=Te,this.setTexture3D=Ue,this.setTextureCube=Se,this.rebindTextures=fn,this.setupRenderTarget=pn,this.updateRenderTargetMipmap=O,this.updateMultisampleRenderTarget=dt,this.setupDepthRenderbuffer=dn,this.setupFrameBufferTexture=gt,this.useMultisampledRTT=ge,this.dispose=U}function Gv(i,e){function t(n,s=li){let r,a=Ke.getTransfer(s);if(n===hn)return i.UNSIGNED_BYTE;if(n===no)return i.UNSIGNED_SHORT_4_4_4_4;if(n===io)return i.UNSIGNED_SHORT_5_5_5_1;if(n===hc)return i.UNSIGNED_INT_5_9_9_9_REV;if(n===uc)return i.UNSIGNED_INT_10F_11F_11F_REV;if(n===lc)return i.BYTE;if(n===cc)return i.SHORT;if(n===Ds)return i.UNSIGNED_SHORT;if(n===to)return i.INT;if(n===Pn)return i.UNSIGNED_INT;if(n===In)return i.FLOAT;if(n===Ln)return i.HALF_FLOAT;if(n===dc)return i.ALPHA;if(n===fc)return i.RGB;if(n===Nn)return i.RGBA;if(n===si)return i.DEPTH_COMPONENT;if(n===oi)return i.DEPTH_STENCIL;if(n===pc)return i.RED;if(n===so)return i.RED_INTEGER;if(n===Li)return i.RG;if(n===ro)return i.RG_INTEGER;if(n===ao)return i.RGBA_INTEGER;if(n===vr||n===xr||n===yr||n===br)if(a===it)if(r=e.get("WEBGL_compressed_texture_s3tc_srgb"),r!==null){if(n===vr)return r.COMPRESSED_SRGB_S3TC_DXT1_EXT;if(n===xr)return r.COMPRESSED_SRGB_ALPHA_S3TC_DXT1_EXT;if(n===yr)return r.COMPRESSED_SRGB_ALPHA_S3TC_DXT3_EXT;if(n===br)return r.COMPRESSED_SRGB_ALPHA_S3TC_DXT5_EXT}else return null;else if(r=e.get("WEBGL_compressed_texture_s3tc"),r!==null){if(n===vr)return r.COMPRESSED_RGB_S3TC_DXT1_EXT;if(n===xr)return r.COMPRESSED_RGBA_S3TC_DXT1_EXT;if(n===yr)return r.COMPRESSED_RGBA_S3TC_DXT3_EXT;if(n===br)return r.COMPRESSED_RGBA_S3TC_DXT5_EXT}else return null;if(n===oo||n===lo||n===co||n===ho)if(r=e.get("WEBGL_compressed_texture_pvrtc"),r!==null){if(n===oo)return r.COMPRESSED_RGB_PVRTC_4BPPV1_IMG;if(n===lo)return r.COMPRESSED_RGB_PVRTC_2BPPV1_IMG;if(n===co)return r.COMPRESSED_RGBA_PVRTC_4BPPV1_IMG;if(n===ho)return r.COMPRESSED_RGBA_PVRTC_2BPPV1_IMG}else return null;if(n===uo||n===fo||n===po||n===mo||n===go||n===Mr||n===_o)if(r=e.get("WEBGL_compressed_texture_etc"),r!==null){if(n===uo||n===fo)return a===it?r.COMPRESSED_SRGB8_ETC2:r.COMPRESSED_RGB8_ETC2;if(n===po)return a===it?r.COMPRESSED_SRGB8_ALPHA8_ETC2_EAC:r.COMPRESSED_RGBA8_ETC2_EAC;if(n===mo)return r.COMPRESSED_R11_EAC;if(n===go)return r.COMPRESSED_SIGNED_R11_EAC;if(n===Mr)return r.COMPRESSED_RG11_EAC;if(n===_o)return r.COMPRESSED_SIGNED_RG11_EAC}else return null;if(n===vo||n===xo||n===yo||n===bo||n===Mo||n===So||n===wo||n===To||n===Eo||n===Ao||n===Ro||n===Co||n===Po||n===Io)if(r=e.get("WEBGL_compressed_texture_astc"),r!==null){if(n===vo)return a===it?r.COMPRESSED_SRGB8_ALPHA8_ASTC_4x4_KHR:r.COMPRESSED_RGBA_ASTC_4x4_KHR;if(n===xo)return a===it?r.COMPRESSED_SRGB8_ALPHA8_ASTC_5x4_KHR:r.COMPRESSED_RGBA_ASTC_5x4_KHR;if(n===yo)return a===it?r.COMPRESSED_SRGB8_ALPHA8_ASTC_5x5_KHR:r.COMPRESSED_RGBA_ASTC_5x5_KHR;if(n===bo)return a===it?r.COMPRESSED_SRGB8_ALPHA8_ASTC_6x5_KHR:r.COMPRESSED_RGBA_ASTC_6x5_KHR;if(n===Mo)return a===it?r.COMPRESSED_SRGB8_ALPHA8_ASTC_6x6_KHR:r.COMPRESSED_RGBA_ASTC_6x6_KHR;if(n===So)return a===it?r.COMPRESSED_SRGB8_ALPHA8_ASTC_8x5_KHR:r.COMPRESSED_RGBA_ASTC_8x5_KHR;if(n===wo)return a===it?r.COMPRESSED_SRGB8_ALPHA8_ASTC_8x6_KHR:r.COMPRESSED_RGBA_ASTC_8x6_KHR;if(n===To)return a===it?r.COMPRESSED_SRGB8_ALPHA8_ASTC_8x8_KHR:r.COMPRESSED_RGBA_ASTC_8x8_KHR;if(n===Eo)return a===it?r.COMPRESSED_SRGB8_ALPHA8_ASTC_10x5_KHR:r.COMPRESSED_RGBA_ASTC_10x5_KHR;if(n===Ao)return a===it?r.COMPRESSED_SRGB8_ALPHA8_ASTC_10x6_KHR:r.COMPRESSED_RGBA_ASTC_10x6_KHR;if(n===Ro)return a===it?r.COMPRESSED_SRGB8_ALPHA8_ASTC_10x8_KHR:r.COMPRESSED_RGBA_ASTC_10x8_KHR;if(n===Co)return a===it?r.COMPRESSED_SRGB8_ALPHA8_ASTC_10x10_KHR:r.COMPRESSED_RGBA_ASTC_10x10_KHR;if(n===Po)return a===it?r.COMPRESSED_SRGB8_ALPHA8_ASTC_12x10_KHR:r.COMPRESSED_RGBA_ASTC_12x10_KHR;if(n===Io)return a===it?r.COMPRESSED_SRGB8_ALPHA8_ASTC_12x12_KHR:r.COMPRESSED_RGBA_ASTC_12x12_KHR}else return null;if(n===Lo||n===No||n===Do)if(r=e.get("EXT_texture_compression_bptc"),r!==null){if(n===Lo)return a===it?r.COMPRESSED_SRGB_ALPHA_BPTC_UNORM_EXT:r.COMPRESSED_RGBA_BPTC_UNORM_EXT;if(n===No)return r.COMPRESSED_RGB_BPTC_SIGNED_FLOAT_EXT;if(n===Do)return r.COMPRESSED_RGB_BPTC_UNSIGNED_FLOAT_EXT}else return null;if(n===Uo||n===Fo||n===Sr||n===Oo)if(r=e.get("EXT_texture_compression_rgtc"),r!==null){if(n===Uo)return r.COMPRESSED_RED_RGTC1_EXT;if(n===Fo)return r.COMPRESSED_SIGNED_RED_RGTC1_EXT;if(n===Sr)return r.COMPRESSED_RED_GREEN_RGTC2_EXT;if(n===Oo)return r.COMPRESSED_SIGNED_RED_GREEN_RGTC2_EXT}else return null;return n===Qi?i.UNSIGNED_INT_24_8:i[n]!==void 0?i[n]:null}return{convert:t}}var Vv=`
void main() {

	gl_Position = vec4( position, 1.0 );

}`,Hv=`
uniform sampler2DArray depthColor;
uniform float depthWidth;
uniform float depthHeight;

void main() {

	vec2 coord = vec2( gl_FragCoord.x / depthWidth, gl_FragCoord.y / depthHeight );

	if ( coord.x >= 1.0 ) {

		gl_FragDepth = texture( depthColor, vec3( coord.x - 1.0, coord.y, 1 ) ).r;

	} else {

		gl_FragDepth = texture( depthColor, vec3( coord.x, coord.y, 0 ) ).r;

	}

}`,Dc=class{constructor(){this.texture=null,this.mesh=null,this.depthNear=0,this.depthFar=0}init(e,t){if(this.texture===null){let n=new ur(e.texture);(e.depthNear!==t.depthNear||e.depthFar!==t.depthFar)&&(this.depthNear=e.depthNear,this.depthFar=e.depthFar),this.texture=n}}getMesh(e){if(this.texture!==null&&this.mesh===null){let t=e.cameras[0].viewport,n=new Hn({vertexShader:Vv,fragmentShader:Hv,uniforms:{depthColor:{value:this.texture},depthWidth:{value:t.z},depthHeight:{value:t.w}}});this.mesh=new At(new dr(20,20),n)}return this.mesh}reset(){this.texture=null,this.mesh=null}getDepthTexture(){return this.texture}},Uc=class extends Vn{constructor(e,t){super();let n=this,s=null,r=1,a=null,o="local-floor",l=1,c=null,h=null,d=null,u=null,f=null,g=null,v=typeof XRWebGLBinding<"u",_=new Dc,p={},M=t.getContextAttributes(),C=null,S=null,T=[],A=[],x=new et,E=null,H=null,F=new rn;F.viewport=new xt;let N=new rn;N.viewport=new xt;let V=[F,N],Z=new Ka,w=null,U=null;this.cameraAutoUpdate=!0,this.enabled=!1,this.isPresenting=!1,this.getController=function(K){let ve=T[K];return ve===void 0&&(ve=new Ts,T[K]=ve),ve.getTargetRaySpace()},this.getControllerGrip=function(K){let ve=T[K];return ve===void 0&&(ve=new Ts,T[K]=ve),ve.getGripSpace()},this.getHand=function(K){let ve=T[K];return ve===void 0&&(ve=new Ts,T[K]=ve),ve.getHandSpace()};function k(K){let ve=A.indexOf(K.inputSource);if(ve===-1)return;let Te=T[ve];Te!==void 0&&(Te.update(K.inputSource,K.frame,c||a),Te.dispatchEvent({type:K.type,data:K.inputSource}))}function B(){s.removeEventListener("select",k),s.removeEventListener("selectstart",k),s.removeEventListener("selectend",k),s.removeEventListener("squeeze",k),s.removeEventListener("squeezestart",k),s.removeEventListener("squeezeend",k),s.removeEventListener("end",B),s.removeEventListener("inputsourceschange",z);for(let K=0;K<T.length;K++){let ve=A[K];ve!==null&&(A[K]=null,T[K].disconnect(ve))}w=null,U=null,_.reset();for(let K in p)delete p[K];if(e.setRenderTarget(C),f=null,u=null,d=null,s=null,S=null,Me.stop(),n.isPresenting=!1,e.setPixelRatio(E),e.setSize(x.width,x.height,!1),H!==null){let K=H.camera;K.fov=H.fov,K.zoom=H.zoom,K.updateProjectionMatrix(),H=null}n.dispatchEvent({type:"sessionend"})}this.setFramebufferScaleFactor=function(K){r=K,n.isPresenting===!0&&Oe("WebXRManager: Cannot change framebuffer scale while presenting.")},this.setReferenceSpaceType=function(K){o=K,n.isPresenting===!0&&Oe("WebXRManager: Cannot change reference space type while presenting.")},this.getReferenceSpace=function(){return c||a},this.setReferenceSpace=function(K){c=K},this.getBaseLayer=function(){return u!==null?u:f},this.getBinding=function(){return d===null&&v&&(d=new XRWebGLBinding(s,t)),d},this.getFrame=function(){return g},this.getSession=function(){return s},this.setSession=async function(K){if(s=K,s!==null){if(C=e.getRenderTarget(),s.addEventListener("select",k),s.addEventListener("selectstart",k),s.addEventListener("selectend",k),s.addEventListener("squeeze",k),s.addEventListener("squeezestart",k),s.addEventListener("squeezeend",k),s.addEventListener("end",B),s.addEventListener("inputsourceschange",z),M.xrCompatible!==!0&&await t.makeXRCompatible(),E=e.getPixelRatio(),e.getSize(x),v&&"createProjectionLayer"in XRWebGLBinding.prototype){let Te=null,Ue=null,Se=null;M.depth&&(Se=M.stencil?t.DEPTH24_STENCIL8:t.DEPTH_COMPONENT24,Te=M.stencil?oi:si,Ue=M.stencil?Qi:Pn);let We={colorFormat:t.RGBA8,depthFormat:Se,scaleFactor:r};d=this.getBinding(),u=d.createProjectionLayer(We),s.updateRenderState({layers:[u]}),e.setPixelRatio(1),e.setSize(u.textureWidth,u.textureHeight,!1),S=new on(u.textureWidth,u.textureHeight,{format:Nn,type:hn,depthTexture:new ri(u.textureWidth,u.textureHeight,Ue,void 0,void 0,void 0,void 0,void 0,void 0,Te),stencilBuffer:M.stencil,colorSpace:e.outputColorSpace,samples:M.antialias?4:0,resolveDepthBuffer:u.ignoreDepthValues===!1,resolveStencilBuffer:u.ignoreDepthValues===!1,storeMultisampledDepthBuffer:u.ignoreDepthValues===!1,storeMultisampledStencilBuffer:u.ignoreDepthValues===!1})}else{let Te={antialias:M.antialias,alpha:!0,depth:M.depth,stencil:M.stencil,framebufferScaleFactor:r};f=new XRWebGLLayer(s,t,Te),s.updateRenderState({baseLayer:f}),e.setPixelRatio(1),e.setSize(f.framebufferWidth,f.framebufferHeight,!1),S=new on(f.framebufferWidth,f.framebufferHeight,{format:Nn,type:hn,colorSpace:e.outputColorSpace,stencilBuffer:M.stencil,resolveDepthBuffer:f.ignoreDepthValues===!1,resolveStencilBuffer:f.ignoreDepthValues===!1,storeMultisampledDepthBuffer:f.ignoreDepthValues===!1,storeMultisampledStencilBuffer:f.ignoreDepthValues===!1})}S.isXRRenderTarget=!0,this.setFoveation(l),c=null,a=await s.requestReferenceSpace(o),Me.setContext(s),Me.start(),n.isPresenting=!0,n.dispatchEvent({type:"sessionstart"})}},this.getEnvironmentBlendMode=function(){if(s!==null)return s.environmentBlendMode},this.getDepthTexture=function(){return _.getDepthTexture()};function z(K){for(let ve=0;ve<K.removed.length;ve++){let Te=K.removed[ve],Ue=A.indexOf(Te);Ue>=0&&(A[Ue]=null,T[Ue].disconnect(Te))}for(let ve=0;ve<K.added.length;ve++){let Te=K.added[ve],Ue=A.indexOf(Te);if(Ue===-1){for(let We=0;We<T.length;We++)if(We>=A.length){A.push(Te),Ue=We;break}else if(A[We]===null){A[We]=Te,Ue=We;break}if(Ue===-1)break}let Se=T[Ue];Se&&Se.connect(Te)}}function P(K,ve){ve===null?K.matrixWorld.copy(K.matrix):K.matrixWorld.multiplyMatrices(ve.matrixWorld,K.matrix),K.matrixWorldInverse.copy(K.matrixWorld).invert()}this.updateCamera=function(K){if(s===null)return;let ve=K.near,Te=K.far;_.texture!==null&&(_.depthNear>0&&(ve=_.depthNear),_.depthFar>0&&(Te=_.depthFar)),Z.near=N.near=F.near=ve,Z.far=N.far=F.far=Te,(w!==Z.near||U!==Z.far)&&(s.updateRenderState({depthNear:Z.near,depthFar:Z.far}),w=Z.near,U=Z.far),Z.layers.mask=K.layers.mask|6,F.layers.mask=Z.layers.mask&-5,N.layers.mask=Z.layers.mask&-3;let Ue=K.parent,Se=Z.cameras;P(Z,Ue);for(let We=0;We<Se.length;We++)P(Se[We],Ue);Z.projectionMatrix.copy(F.projectionMatrix),Z.projectionMatrixInverse.copy(F.projectionMatrixInverse),H===null&&K.isPerspectiveCamera&&(H={camera:K,fov:K.fov,zoom:K.zoom}),X(K,Z,Ue)};function X(K,ve,Te){Te===null?K.matrix.copy(ve.matrixWorld):(K.matrix.copy(Te.matrixWorld),K.matrix.invert(),K.matrix.multiply(ve.matrixWorld)),K.matrix.decompose(K.position,K.quaternion,K.scale),K.updateMatrixWorld(!0),K.projectionMatrix.copy(ve.projectionMatrix),K.projectionMatrixInverse.copy(ve.projectionMatrixInverse),K.isPerspectiveCamera&&(K.fov=Ca*2*Math.atan(1/K.projectionMatrix.elements[5]),K.zoom=1)}this.getCamera=function(){return Z},this.getFoveation=function(){if(!(u===null&&f===null))return l},this.setFoveation=function(K){l=K,u!==null&&(u.fixedFoveation=K),f!==null&&f.fixedFoveation!==void 0&&(f.fixedFoveation=K)},this.hasDepthSensing=function(){return _.texture!==null},this.getDepthSensingMesh=function(){return _.getMesh(Z)},this.getCameraTexture=function(K){return p[K]};let q=null;function re(K,ve){if(h=ve.getViewerPose(c||a),g=ve,h!==null){let Te=h.views;f!==null&&(e.setRenderTargetFramebuffer(S,f.framebuffer),e.setRenderTarget(S));let Ue=!1;Te.length!==Z.cameras.length&&(Z.cameras.length=0,Ue=!0);for(let Be=0;Be<Te.length;Be++){let st=Te[Be],at=null;if(f!==null)at=f.getViewport(st);else{let Ut=d.getViewSubImage(u,st);at=Ut.viewport,Be===0&&(e.setRenderTargetTextures(S,Ut.colorTexture,Ut.depthStencilTexture),e.setRenderTarget(S))}let Ye=V[Be];Ye===void 0&&(Ye=new rn,Ye.layers.enable(Be),Ye.viewport=new xt,V[Be]=Ye),Ye.matrix.fromArray(st.transform.matrix),Ye.matrix.decompose(Ye.position,Ye.quaternion,Ye.scale),Ye.projectionMatrix.fromArray(st.projectionMatrix),Ye.projectionMatrixInverse.copy(Ye.projectionMatrix).invert(),Ye.viewport.set(at.x,at.y,at.width,at.height),Be===0&&(Z.matrix.copy(Ye.matrix),Z.matrix.decompose(Z.position,Z.quaternion,Z.scale)),Ue===!0&&Z.cameras.push(Ye)}let Se=s.enabledFeatures;if(Se&&Se.includes("depth-sensing")&&s.depthUsage=="gpu-optimized"&&v){d=n.getBinding();let Be=d.getDepthInformation(Te[0]);Be&&Be.isValid&&Be.texture&&_.init(Be,s.renderState)}if(Se&&Se.includes("camera-access")&&v){e.state.unbindTexture(),d=n.getBinding();for(let Be=0;Be<Te.length;Be++){let st=Te[Be].camera;if(st){let at=p[st];at||(at=new ur,p[st]=at);let Ye=d.getCameraImage(st);at.sourceTexture=Ye}}}}for(let Te=0;Te<T.length;Te++){let Ue=A[Te],Se=T[Te];Ue!==null&&Se!==void 0&&Se.update(Ue,ve,c||a)}q&&q(K,ve),ve.detectedPlanes&&n.dispatchEvent({type:"planesdetected",data:ve}),g=null}let Me=new kd;Me.setAnimationLoop(re),this.setAnimationLoop=function(K){q=K},this.dispose=function(){}}},Wv=new mt,Yd=new Ge;Yd.set(-1,0,0,0,1,0,0,0,1);function $v(i,e){function t(_,p){_.matrixAutoUpdate===!0&&_.updateMatrix(),p.value.copy(_.matrix)}function n(_,p){p.color.getRGB(_.fogColor.value,Mc(i)),p.isFog?(_.fogNear.value=p.near,_.fogFar.value=p.far):p.isFogExp2&&(_.fogDensity.value=p.density)}function s(_,p,M,C,S){p.isNodeMaterial?p.uniformsNeedUpdate=!1:p.isMeshBasicMaterial?r(_,p):p.isMeshLambertMaterial?(r(_,p),p.envMap&&(_.envMapIntensity.value=p.envMapIntensity)):p.isMeshToonMaterial?(r(_,p),d(_,p)):p.isMeshPhongMaterial?(r(_,p),h(_,p),p.envMap&&(_.envMapIntensity.value=p.envMapIntensity)):p.isMeshStandardMaterial?(r(_,p),u(_,p),p.isMeshPhysicalMaterial&&f(_,p,S)):p.isMeshMatcapMaterial?(r(_,p),g(_,p)):p.isMeshDepthMaterial?r(_,p):p.isMeshDistanceMaterial?(r(_,p),v(_,p)):p.isMeshNormalMaterial?r(_,p):p.isLineBasicMaterial?(a(_,p),p.isLineDashedMaterial&&o(_,p)):p.isPointsMaterial?l(_,p,M,C):p.isSpriteMaterial?c(_,p):p.isShadowMaterial?(_.color.value.copy(p.color),_.opacity.value=p.opacity):p.isShaderMaterial&&(p.uniformsNeedUpdate=!1)}function r(_,p){_.opacity.value=p.opacity,p.color&&_.diffuse.value.copy(p.color),p.emissive&&_.emissive.value.copy(p.emissive).multiplyScalar(p.emissiveIntensity),p.map&&(_.map.value=p.map,t(p.map,_.mapTransform)),p.alphaMap&&(_.alphaMap.value=p.alphaMap,t(p.alphaMap,_.alphaMapTransform)),p.bumpMap&&(_.bumpMap.value=p.bumpMap,t(p.bumpMap,_.bumpMapTransform),_.bumpScale.value=p.bumpScale,p.side===qt&&(_.bumpScale.value*=-1)),p.normalMap&&(_.normalMap.value=p.normalMap,t(p.normalMap,_.normalMapTransform),_.normalScale.value.copy(p.normalScale),p.side===qt&&_.normalScale.value.negate()),p.displacementMap&&(_.displacementMap.value=p.displacementMap,t(p.displacementMap,_.displacementMapTransform),_.displacementScale.value=p.displacementScale,_.displacementBias.value=p.displacementBias),p.emissiveMap&&(_.emissiveMap.value=p.emissiveMap,t(p.emissiveMap,_.emissiveMapTransform)),p.specularMap&&(_.specularMap.value=p.specularMap,t(p.specularMap,_.specularMapTransform)),p.alphaTest>0&&(_.alphaTest.value=p.alphaTest);let M=e.get(p),C=M.envMap,S=M.envMapRotation;C&&(_.envMap.value=C,_.envMapRotation.value.setFromMatrix4(Wv.makeRotationFromEuler(S)).transpose(),C.isCubeTexture&&C.isRenderTargetTexture===!1&&_.envMapRotation.value.premultiply(Yd),_.reflectivity.value=p.reflectivity,_.ior.value=p.ior,_.refractionRatio.value=p.refractionRatio),p.lightMap&&(_.lightMap.value=p.lightMap,_.lightMapIntensity.value=p.lightMapIntensity,t(p.lightMap,_.lightMapTransform)),p.aoMap&&(_.aoMap.value=p.aoMap,_.aoMapIntensity.value=p.aoMapIntensity,t(p.aoMap,_.aoMapTransform))}function a(_,p){_.diffuse.value.copy(p.color),_.opacity.value=p.opacity,p.map&&(_.map.value=p.map,t(p.map,_.mapTransform))}function o(_,p){_.dashSize.value=p.dashSize,_.totalSize.value=p.dashSize+p.gapSize,_.scale.value=p.scale}function l(_,p,M,C){_.diffuse.value.copy(p.color),_.opacity.value=p.opacity,_.size.value=p.size*M,_.scale.value=C*.5,p.map&&(_.map.value=p.map,t(p.map,_.uvTransform)),p.alphaMap&&(_.alphaMap.value=p.alphaMap,t(p.alphaMap,_.alphaMapTransform)),p.alphaTest>0&&(_.alphaTest.value=p.alphaTest)}function c(_,p){_.diffuse.value.copy(p.color),_.opacity.value=p.opacity,_.rotation.value=p.rotation,p.map&&(_.map.value=p.map,t(p.map,_.mapTransform)),p.alphaMap&&(_.alphaMap.value=p.alphaMap,t(p.alphaMap,_.alphaMapTransform)),p.alphaTest>0&&(_.alphaTest.value=p.alphaTest)}function h(_,p){_.specular.value.copy(p.specular),_.shininess.value=Math.max(p.shininess,1e-4)}function d(_,p){p.gradientMap&&(_.gradientMap.value=p.gradientMap)}function u(_,p){_.metalness.value=p.metalness,p.metalnessMap&&(_.metalnessMap.value=p.metalnessMap,t(p.metalnessMap,_.metalnessMapTransform)),_.roughness.value=p.roughness,p.roughnessMap&&(_.roughnessMap.value=p.roughnessMap,t(p.roughnessMap,_.roughnessMapTransform)),p.envMap&&(_.envMapIntensity.value=p.envMapIntensity)}function f(_,p,M){_.ior.value=p.ior,p.diffuseRoughness>0&&(_.diffuseRoughness.value=p.diffuseRoughness,p.diffuseRoughnessMap&&(_.diffuseRoughnessMap.value=p.diffuseRoughnessMap,t(p.diffuseRoughnessMap,_.diffuseRoughnessMapTransform))),p.sheen>0&&(_.sheenColor.value.copy(p.sheenColor).multiplyScalar(p.sheen),_.sheenRoughness.value=p.sheenRoughness,p.sheenColorMap&&(_.sheenColorMap.value=p.sheenColorMap,t(p.sheenColorMap,_.sheenColorMapTransform)),p.sheenRoughnessMap&&(_.sheenRoughnessMap.value=p.sheenRoughnessMap,t(p.sheenRoughnessMap,_.sheenRoughnessMapTransform))),p.clearcoat>0&&(_.clearcoat.value=p.clearcoat,_.clearcoatRoughness.value=p.clearcoatRoughness,p.clearcoatMap&&(_.clearcoatMap.value=p.clearcoatMap,t(p.clearcoatMap,_.clearcoatMapTransform)),p.clearcoatRoughnessMap&&(_.clearcoatRoughnessMap.value=p.clearcoatRoughnessMap,t(p.clearcoatRoughnessMap,_.clearcoatRoughnessMapTransform)),p.clearcoatNormalMap&&(_.clearcoatNormalMap.value=p.clearcoatNormalMap,t(p.clearcoatNormalMap,_.clearcoatNormalMapTransform),_.clearcoatNormalScale.value.copy(p.clearcoatNormalScale),p.side===qt&&_.clearcoatNormalScale.value.negate())),p.dispersion>0&&(_.dispersion.value=p.dispersion),p.retroreflectivity>0&&(_.retroreflectivity.value=p.retroreflectivity),p.iridescence>0&&(_.iridescence.value=p.iridescence,_.iridescenceIOR.value=p.iridescenceIOR,_.iridescenceThicknessMinimum.value=p.iridescenceThicknessMinimum,_.iridescenceThicknessMaximum.value=p.iridescenceThicknessMaximum,p.iridescenceMap&&(_.iridescenceMap.value=p.iridescenceMap,t(p.iridescenceMap,_.iridescenceMapTransform)),p.iridescenceThicknessMap&&(_.iridescenceThicknessMap.value=p.iridescenceThicknessMap,t(p.iridescenceThicknessMap,_.iridescenceThicknessMapTransform))),p.transmission>0&&(_.transmission.value=p.transmission,_.transmissionSamplerMap.value=M.texture,_.transmissionSamplerSize.value.set(M.width,M.height),p.transmissionMap&&(_.transmissionMap.value=p.transmissionMap,t(p.transmissionMap,_.transmissionMapTransform)),_.thickness.value=p.thickness,p.thicknessMap&&(_.thicknessMap.value=p.thicknessMap,t(p.thicknessMap,_.thicknessMapTransform)),_.attenuationDistance.value=p.attenuationDistance,_.attenuationColor.value.copy(p.attenuationColor)),p.anisotropy>0&&(_.anisotropyVector.value.set(p.anisotropy*Math.cos(p.anisotropyRotation),p.anisotropy*Math.sin(p.anisotropyRotation)),p.anisotropyMap&&(_.anisotropyMap.value=p.anisotropyMap,t(p.anisotropyMap,_.anisotropyMapTransform))),_.specularIntensity.value=p.specularIntensity,_.specularColor.value.copy(p.specularColor),p.specularColorMap&&(_.specularColorMap.value=p.specularColorMap,t(p.specularColorMap,_.specularColorMapTransform)),p.specularIntensityMap&&(_.specularIntensityMap.value=p.specularIntensityMap,t(p.specularIntensityMap,_.specularIntensityMapTransform))}function g(_,p){p.matcap&&(_.matcap.value=p.matcap)}function v(_,p){let M=e.get(p).light;_.referencePosition.value.setFromMatrixPosition(M.matrixWorld),_.nearDistance.value=M.shadow.camera.near,_.farDistance.value=M.shadow.camera.far}return{refreshFogUniforms:n,refreshMaterialUniforms:s}}function Xv(i,e,t,n){let s={},r={};function a(M,C){let S=C.program;n.uniformBlockBinding(M,S,s[M.id])}function o(M,C){let S=s[M.id];S===void 0&&(g(M),S=l(M),s[M.id]=S,M.addEventListener("dispose",_));let T=C.program;n.updateUBOMapping(M,T);let A=e.render.frame;r[M.id]!==A&&(c(M),r[M.id]=A)}function l(M){let C=i.createBuffer(),S=M.__size,T=M.usage;return i.bindBuffer(i.UNIFORM_BUFFER,C),i.bufferData(i.UNIFORM_BUFFER,S,T),i.bindBuffer(i.UNIFORM_BUFFER,null),C}function c(M){let C=s[M.id],S=M.uniforms,T=M.__cache;i.bindBuffer(i.UNIFORM_BUFFER,C);for(let A=0,x=S.length;A<x;A++){let E=S[A];if(Array.isArray(E))for(let H=0,F=E.length;H<F;H++)h(E[H],A,H,T);else h(E,A,0,T)}i.bindBuffer(i.UNIFORM_BUFFER,null)}function h(M,C,S,T){if(u(M,C,S,T)===!0){let A=M.__offset,x=M.value;if(Array.isArray(x)){let E=0;for(let H=0;H<x.length;H++){let F=x[H],N=v(F,!0);d(F,M.__data,E),E+=N.storage/Float32Array.BYTES_PER_ELEMENT}}else d(x,M.__data,0);i.bufferSubData(i.UNIFORM_BUFFER,A,M.__data)}}function d(M,C,S){typeof M=="number"||typeof M=="boolean"?C[S]=M:M.isMatrix3?(C[S]=M.elements[0],C[S+1]=M.elements[1],C[S+2]=M.elements[2],C[S+3]=0,C[S+4]=M.elements[3],C[S+5]=M.elements[4],C[S+6]=M.elements[5],C[S+7]=0,C[S+8]=M.elements[6],C[S+9]=M.elements[7],C[S+10]=M.elements[8],C[S+11]=0):ArrayBuffer.isView(M)?C.set(M.subarray(0,C.length-S),S):M.toArray(C,S)}function u(M,C,S,T){let A=M.value,x=C+"_"+S;if(Array.isArray(A)){T[x]===void 0&&(T[x]=[]);let E=T[x],H=!1;for(let F=0;F<A.length;F++)f(A[F],E,F)===!0&&(H=!0);return H}return f(A,T,x)}function f(M,C,S){if(C[S]===void 0)return typeof M=="number"||typeof M=="boolean"?C[S]=M:ArrayBuffer.isView(M)?C[S]=M.slice():C[S]=M.clone(),!0;{let T=C[S];if(typeof M=="number"||typeof M=="boolean"){if(T!==M)return C[S]=M,!0}else{if(ArrayBuffer.isView(M))return!0;if(T.equals(M)===!1)return T.copy(M),!0}}return!1}function g(M){let C=M.uniforms,S=0,T=16;for(let x=0,E=C.length;x<E;x++){let H=Array.isArray(C[x])?C[x]:[C[x]];for(let F=0,N=H.length;F<N;F++){let V=H[F],Z=Array.isArray(V.value)?V.value:[V.value],w=Array.isArray(C[x])||Array.isArray(V.value),U=S;for(let B=0,z=Z.length;B<z;B++){let P=Z[B],X=v(P,w),q=S%T,re=q%X.boundary,Me=q+re;S+=re,Me!==0&&T-Me<X.storage&&(S+=T-Me),B===0&&(U=S),S+=X.storage}let k=V.type==="int"?Int32Array:V.type==="uint"?Uint32Array:Float32Array;V.__data=new k((S-U)/Float32Array.BYTES_PER_ELEMENT),V.__offset=U}}let A=S%T;return A>0&&(S+=T-A),M.__size=S,M.__cache={},this}function v(M,C){let S={boundary:0,storage:0};return typeof M=="number"||typeof M=="boolean"?(S.boundary=4,S.storage=4):M.isVector2?(S.boundary=8,S.storage=8):M.isVector3||M.isColor?(S.boundary=16,S.storage=12):M.isVector4?(S.boundary=16,S.storage=16):M.isMatrix3?(S.boundary=16,S.storage=48):M.isMatrix4?(S.boundary=16,S.storage=64):M.isTexture?Oe("WebGLRenderer: Texture samplers can not be part of an uniforms group."):ArrayBuffer.isView(M)?(S.boundary=16,S.storage=M.byteLength):Oe("WebGLRenderer: Unsupported uniform value type.",M),C===!0&&(S.boundary=16,S.storage=Math.ceil(S.storage/16)*16),S}function _(M){let C=M.target;C.removeEventListener("dispose",_),i.deleteBuffer(s[C.id]),delete s[C.id],delete r[C.id]}function p(){for(let M in s)i.deleteBuffer(s[M]);s={},r={}}return{bind:a,update:o,dispose:p}}var qv=new Uint16Array([12469,15057,12620,14925,13266,14620,13807,14376,14323,13990,14545,13625,14713,13328,14840,12882,14931,12528,14996,12233,15039,11829,15066,11525,15080,11295,15085,10976,15082,10705,15073,10495,13880,14564,13898,14542,13977,14430,14158,14124,14393,13732,14556,13410,14702,12996,14814,12596,14891,12291,14937,11834,14957,11489,14958,11194,14943,10803,14921,10506,14893,10278,14858,9960,14484,14039,14487,14025,14499,13941,14524,13740,14574,13468,14654,13106,14743,12678,14818,12344,14867,11893,14889,11509,14893,11180,14881,10751,14852,10428,14812,10128,14765,9754,14712,9466,14764,13480,14764,13475,14766,13440,14766,13347,14769,13070,14786,12713,14816,12387,14844,11957,14860,11549,14868,11215,14855,10751,14825,10403,14782,10044,14729,9651,14666,9352,14599,9029,14967,12835,14966,12831,14963,12804,14954,12723,14936,12564,14917,12347,14900,11958,14886,11569,14878,11247,14859,10765,14828,10401,14784,10011,14727,9600,14660,9289,14586,8893,14508,8533,15111,12234,15110,12234,15104,12216,15092,12156,15067,12010,15028,11776,14981,11500,14942,11205,14902,10752,14861,10393,14812,9991,14752,9570,14682,9252,14603,8808,14519,8445,14431,8145,15209,11449,15208,11451,15202,11451,15190,11438,15163,11384,15117,11274,15055,10979,14994,10648,14932,10343,14871,9936,14803,9532,14729,9218,14645,8742,14556,8381,14461,8020,14365,7603,15273,10603,15272,10607,15267,10619,15256,10631,15231,10614,15182,10535,15118,10389,15042,10167,14963,9787,14883,9447,14800,9115,14710,8665,14615,8318,14514,7911,14411,7507,14279,7198,15314,9675,15313,9683,15309,9712,15298,9759,15277,9797,15229,9773,15166,9668,15084,9487,14995,9274,14898,8910,14800,8539,14697,8234,14590,7790,14479,7409,14367,7067,14178,6621,15337,8619,15337,8631,15333,8677,15325,8769,15305,8871,15264,8940,15202,8909,15119,8775,15022,8565,14916,8328,14804,8009,14688,7614,14569,7287,14448,6888,14321,6483,14088,6171,15350,7402,15350,7419,15347,7480,15340,7613,15322,7804,15287,7973,15229,8057,15148,8012,15046,7846,14933,7611,14810,7357,14682,7069,14552,6656,14421,6316,14251,5948,14007,5528,15356,5942,15356,5977,15353,6119,15348,6294,15332,6551,15302,6824,15249,7044,15171,7122,15070,7050,14949,6861,14818,6611,14679,6349,14538,6067,14398,5651,14189,5311,13935,4958,15359,4123,15359,4153,15356,4296,15353,4646,15338,5160,15311,5508,15263,5829,15188,6042,15088,6094,14966,6001,14826,5796,14678,5543,14527,5287,14377,4985,14133,4586,13869,4257,15360,1563,15360,1642,15358,2076,15354,2636,15341,3350,15317,4019,15273,4429,15203,4732,15105,4911,14981,4932,14836,4818,14679,4621,14517,4386,14359,4156,14083,3795,13808,3437,15360,122,15360,137,15358,285,15355,636,15344,1274,15322,2177,15281,2765,15215,3223,15120,3451,14995,3569,14846,3567,14681,3466,14511,3305,14344,3121,14037,2800,13753,2467,15360,0,15360,1,15359,21,15355,89,15346,253,15325,479,15287,796,15225,1148,15133,1492,15008,1749,14856,1882,14685,1886,14506,1783,14324,1608,13996,1398,13702,1183]),Xn=null;function Yv(){return Xn===null&&(Xn=new Na(qv,16,16,Li,Ln),Xn.name="DFG_LUT",Xn.minFilter=Xt,Xn.magFilter=Xt,Xn.wrapS=Gn,Xn.wrapT=Gn,Xn.generateMipmaps=!1,Xn.needsUpdate=!0),Xn}var Go=class{constructor(e={}){let{canvas:t=ld(),context:n=null,depth:s=!0,stencil:r=!1,alpha:a=!1,antialias:o=!1,premultipliedAlpha:l=!0,preserveDrawingBuffer:c=!1,powerPreference:h="default",failIfMajorPerformanceCaveat:d=!1,reversedDepthBuffer:u=!1,outputBufferType:f=hn}=e;this.isWebGLRenderer=!0;let g;if(n!==null){if(typeof WebGLRenderingContext<"u"&&n instanceof WebGLRenderingContext)throw new Error("THREE.WebGLRenderer: WebGL 1 is not supported since r163.");g=n.getContextAttributes().alpha}else g=a;let v=f,_=new Set([ao,ro,so]),p=new Set([hn,Pn,Ds,Qi,no,io]),M=new Uint32Array(4),C=new Int32Array(4),S={textures:[],min:[],max:[],resolution:[]},T=null,A=null,x=[],E=[],H=null;this.domElement=t,this.debug={checkShaderErrors:!0,diagnostics:{keywords:!1},onShaderError:null},this.autoClear=!0,this.autoClearColor=!0,this.autoClearDepth=!0,this.autoClearStencil=!0,this.sortObjects=!0,this.clippingPlanes=[],this.localClippingEnabled=!1,this.toneMapping=$n,this.toneMappingExposure=1,this.transmissionResolutionScale=1;let F=this,N=!1,V=null,Z=null,w=null,U=null;this._outputColorSpace=sn;let k=0,B=0,z=null,P=-1,X=null,q=new xt,re=new xt,Me=null,K=new je(0),ve=0,Te=t.width,Ue=t.height,Se=1,We=null,bt=null,Be=new xt(0,0,Te,Ue),st=new xt(0,0,Te,Ue),at=!1,Ye=new Yi,Ut=new Da,Tt=!1,Yt=!1,gt=new mt,Dn=new G,Pt=new xt,dn={background:null,fog:null,environment:null,overrideMaterial:null,isScene:!0},fn=!1;function pn(){return z===null?Se:1}let O=n;function mn(b,D){return t.getContext(b,D)}let dt,ft,ge,Et,Fe,Ve,R,y,$,ae,se,ce,pe,ee,ne,ue,L,ie,Q,de,le,he,Ie;try{let b={alpha:!0,depth:s,stencil:r,antialias:o,premultipliedAlpha:l,preserveDrawingBuffer:c,powerPreference:h,failIfMajorPerformanceCaveat:d};if("setAttribute"in t&&t.setAttribute("data-engine",`three.js r${"187"}`),t.addEventListener("webglcontextlost",De,!1),t.addEventListener("webglcontextrestored",$e,!1),t.addEventListener("webglcontextcreationerror",ye,!1),O===null){let D="webgl2";if(O=mn(D,b),O===null)throw mn(D)?new Error("THREE.WebGLRenderer: Error creating WebGL context with your selected attributes."):new Error("THREE.WebGLRenderer: Error creating WebGL context.")}Xe()}catch(b){throw t.removeEventListener("webglcontextlost",De,!1),t.removeEventListener("webglcontextrestored",$e,!1),t.removeEventListener("webglcontextcreationerror",ye,!1),ze("WebGLRenderer: "+b.message),b}function Xe(){dt=new r_(O),dt.init(),le=new Gv(O,dt),ft=new Y0(O,dt,e,le),ge=new Bv(O,dt),ft.reversedDepthBuffer&&u&&ge.buffers.depth.setReversed(!0),Z=O.createFramebuffer(),w=O.createFramebuffer(),U=O.createFramebuffer(),Et=new l_(O),Fe=new Tv,Ve=new zv(O,dt,ge,Fe,ft,le,Et),R=new s_(F),y=new hm(O),he=new X0(O,y),$=new a_(O,y,Et,he),ae=new h_(O,$,y,he,Et),ie=new c_(O,ft,Ve),ne=new Z0(Fe),se=new wv(F,R,dt,ft,he,ne),ce=new $v(F,Fe),pe=new Av,ee=new Nv(dt),L=new $0(F,R,ge,ae,g,l),ue=new kv(F,ae,ft),Ie=new Xv(O,Et,ft,ge),Q=new q0(O,dt,Et),de=new o_(O,dt,Et),Et.programs=se.programs,F.capabilities=ft,F.extensions=dt,F.properties=Fe,F.renderLists=pe,F.shadowMap=ue,F.state=ge,F.info=Et}v!==hn&&(H=new d_(v,t.width,t.height,o,s,r));let oe=new Uc(F,O);this.xr=oe,this.getContext=function(){return O},this.getContextAttributes=function(){return O.getContextAttributes()},this.forceContextLoss=function(){let b=dt.get("WEBGL_lose_context");b&&b.loseContext()},this.forceContextRestore=function(){let b=dt.get("WEBGL_lose_context");b&&b.restoreContext()},this.getPixelRatio=function(){return Se},this.setPixelRatio=function(b){b!==void 0&&(Se=b,this.setSize(Te,Ue,!1))},this.getSize=function(b){return b.set(Te,Ue)},this.setSize=function(b,D,J=!0){if(oe.isPresenting){Oe("WebGLRenderer: Can't change size while VR device is presenting.");return}Te=b,Ue=D,t.width=Math.floor(b*Se),t.height=Math.floor(D*Se),J===!0&&(t.style.width=b+"px",t.style.height=D+"px"),H!==null&&H.setSize(t.width,t.height),this.setViewport(0,0,b,D)},this.getDrawingBufferSize=function(b){return b.set(Te*Se,Ue*Se).floor()},this.setDrawingBufferSize=function(b,D,J){Te=b,Ue=D,Se=J,t.width=Math.floor(b*J),t.height=Math.floor(D*J),this.setViewport(0,0,b,D)},this.setEffects=function(b){if(v===hn){ze("WebGLRenderer: setEffects() requires outputBufferType set to HalfFloatType or FloatType.");return}if(b){for(let D=0;D<b.length;D++)if(b[D].isOutputPass===!0){Oe("WebGLRenderer: OutputPass is not needed in setEffects(). Tone mapping and color space conversion are applied automatically.");break}}H.setEffects(b||[])},this.getCurrentViewport=function(b){return b.copy(q)},this.getViewport=function(b){return b.copy(Be)},this.setViewport=function(b,D,J,W){b.isVector4?Be.set(b.x,b.y,b.z,b.w):Be.set(b,D,J,W),ge.viewport(q.copy(Be).multiplyScalar(pn()).round())},this.getScissor=function(b){return b.copy(st)},this.setScissor=function(b,D,J,W){b.isVector4?st.set(b.x,b.y,b.z,b.w):st.set(b,D,J,W),ge.scissor(re.copy(st).multiplyScalar(pn()).round())},this.getScissorTest=function(){return at},this.setScissorTest=function(b){ge.setScissorTest(at=b)},this.setOpaqueSort=function(b){We=b},this.setTransparentSort=function(b){bt=b},this.getClearColor=function(b){return b.copy(L.getClearColor())},this.setClearColor=function(){L.setClearColor(...arguments)},this.getClearAlpha=function(){return L.getClearAlpha()},this.setClearAlpha=function(){L.setClearAlpha(...arguments)},this.clear=function(b=!0,D=!0,J=!0){let W=0;if(b){let Y=!1;if(z!==null){let me=z.texture.format;Y=_.has(me)}if(Y){let me=z.texture.type,Ae=p.has(me),fe=L.getClearColor(),we=L.getClearAlpha(),Pe=fe.r,He=fe.g,Ze=fe.b;Ae?(M[0]=Pe,M[1]=He,M[2]=Ze,M[3]=we,O.clearBufferuiv(O.COLOR,0,M)):(C[0]=Pe,C[1]=He,C[2]=Ze,C[3]=we,O.clearBufferiv(O.COLOR,0,C))}else W|=O.COLOR_BUFFER_BIT}D&&(W|=O.DEPTH_BUFFER_BIT,this.state.buffers.depth.setMask(!0)),J&&(W|=O.STENCIL_BUFFER_BIT,this.state.buffers.stencil.setMask(4294967295)),W!==0&&O.clear(W)},this.clearColor=function(){this.clear(!0,!1,!1)},this.clearDepth=function(){this.clear(!1,!0,!1)},this.clearStencil=function(){this.clear(!1,!1,!0)},this.setNodesHandler=function(b){b.setRenderer(this),V=b},this.dispose=function(){t.removeEventListener("webglcontextlost",De,!1),t.removeEventListener("webglcontextrestored",$e,!1),t.removeEventListener("webglcontextcreationerror",ye,!1),L.dispose(),pe.dispose(),ee.dispose(),Ve.dispose(),Fe.dispose(),R.dispose(),ae.dispose(),$.dispose(),he.dispose(),Ie.dispose(),se.dispose(),oe.dispose(),oe.removeEventListener("sessionstart",Zc),oe.removeEventListener("sessionend",Jc),Di.stop()};function De(b){b.preventDefault(),yc("WebGLRenderer: Context Lost."),N=!0}function $e(){yc("WebGLRenderer: Context Restored."),N=!1;let b=Et.autoReset,D=ue.enabled,J=ue.autoUpdate,W=ue.needsUpdate,Y=ue.type;Xe(),Et.autoReset=b,ue.enabled=D,ue.autoUpdate=J,ue.needsUpdate=W,ue.type=Y}function ye(b){ze("WebGLRenderer: A WebGL context could not be created. Reason: ",b.statusMessage)}function rt(b){let D=b.target;D.removeEventListener("dispose",rt),It(D)}function It(b){ci(b),Fe.remove(b)}function ci(b){let D=Fe.get(b).programs;D!==void 0&&(D.forEach(function(J){se.releaseProgram(J)}),b.isShaderMaterial&&se.releaseShaderCache(b))}this.renderBufferDirect=function(b,D,J,W,Y,me){D===null&&(D=dn);let Ae=Y.isMesh&&Y.matrixWorld.determinantAffine()<0,fe=Ef(b,D,J,W,Y);ge.setMaterial(W,Ae);let we=J.index,Pe=1;if(W.wireframe===!0){if(we=$.getWireframeAttribute(J),we===void 0)return;Pe=2}let He=J.drawRange,Ze=J.attributes.position,Re=He.start*Pe,Je=(He.start+He.count)*Pe;me!==null&&(Re=Math.max(Re,me.start*Pe),Je=Math.min(Je,(me.start+me.count)*Pe)),we!==null?(Re=Math.max(Re,0),Je=Math.min(Je,we.count)):Ze!=null&&(Re=Math.max(Re,0),Je=Math.min(Je,Ze.count));let Mt=Je-Re;if(Mt<0||Mt===1/0)return;he.setup(Y,W,fe,J,we);let lt,ot=Q;if(we!==null&&(lt=y.get(we),ot=de,ot.setIndex(lt)),Y.isMesh)W.wireframe===!0?(ge.setLineWidth(W.wireframeLinewidth*pn()),ot.setMode(O.LINES)):ot.setMode(O.TRIANGLES);else if(Y.isLine){let Ot=W.linewidth;Ot===void 0&&(Ot=1),ge.setLineWidth(Ot*pn()),Y.isLineSegments?ot.setMode(O.LINES):Y.isLineLoop?ot.setMode(O.LINE_LOOP):ot.setMode(O.LINE_STRIP)}else Y.isPoints?ot.setMode(O.POINTS):Y.isSprite&&ot.setMode(O.TRIANGLES);if(Y.isBatchedMesh)if(dt.get("WEBGL_multi_draw"))ot.renderMultiDraw(Y._multiDrawStarts,Y._multiDrawCounts,Y._multiDrawCount);else{let Ot=Y._multiDrawStarts,Ce=Y._multiDrawCounts,Vt=Y._multiDrawCount,nt=we?y.get(we).bytesPerElement:1,Ui=Fe.get(W).currentProgram.getUniforms();for(let kt=0;kt<Vt;kt++)Ui.setValue(O,"_gl_DrawID",kt),ot.render(Ot[kt]/nt,Ce[kt])}else if(Y.isInstancedMesh)ot.renderInstances(Re,Mt,Y.count);else if(J.isInstancedBufferGeometry){let Ot=J._maxInstanceCount!==void 0?J._maxInstanceCount:1/0,Ce=Math.min(J.instanceCount,Ot);ot.renderInstances(Re,Mt,Ce)}else ot.render(Re,Mt)};function Yc(b,D,J,W){V!==null&&b.isNodeMaterial&&V.setObject(W,b),Tt===!0&&ne.setState(b,J,!1),b.transparent===!0&&b.side===Wn&&b.forceSinglePass===!1?(b.side=qt,b.needsUpdate=!0,Bs(b,D,W),b.side=Ii,b.needsUpdate=!0,Bs(b,D,W),b.side=Wn):Bs(b,D,W)}this.compile=function(b,D,J=null){J===null&&(J=b),V!==null&&V.renderStart(b,D,J),A=ee.get(J),A.init(D),E.push(A),J.traverseVisible(function(Y){Y.isLight&&Y.layers.test(D.layers)&&(A.pushLight(Y),Y.castShadow&&A.pushShadow(Y))}),b!==J&&b.traverseVisible(function(Y){Y.isLight&&Y.layers.test(D.layers)&&(A.pushLight(Y),Y.castShadow&&A.pushShadow(Y))}),A.setupLights(),V!==null&&V.updateLights(A.state.lightsArray),Yt=this.localClippingEnabled,Tt=ne.init(this.clippingPlanes,Yt),Tt===!0&&ne.setGlobalState(this.clippingPlanes,D),V!==null&&ue.render(A.state.shadowsArray,J,D);let W=new Set;return b.traverse(function(Y){if(!(Y.isMesh||Y.isPoints||Y.isLine||Y.isSprite))return;let me=Y.material;if(me)if(Array.isArray(me))for(let Ae=0;Ae<me.length;Ae++){let fe=me[Ae];Yc(fe,J,D,Y),W.add(fe)}else Yc(me,J,D,Y),W.add(me)}),A=E.pop(),V!==null&&V.renderEnd(),W},this.compileAsync=function(b,D,J=null){let W=this.compile(b,D,J);return new Promise(Y=>{function me(){if(W.forEach(function(Ae){let we=Fe.get(Ae).currentProgram;(we===void 0||we.isReady())&&W.delete(Ae)}),W.size===0){Y(b);return}setTimeout(me,10)}dt.get("KHR_parallel_shader_compile")!==null?me():setTimeout(me,10)})};let Qo=null;function wf(b){Qo&&Qo(b)}function Zc(){Di.stop()}function Jc(){Di.start()}let Di=new kd;Di.setAnimationLoop(wf),typeof self<"u"&&Di.setContext(self),this.setAnimationLoop=function(b){Qo=b,oe.setAnimationLoop(b),b===null?Di.stop():Di.start()},oe.addEventListener("sessionstart",Zc),oe.addEventListener("sessionend",Jc),this.render=function(b,D){if(D!==void 0&&D.isCamera!==!0){ze("WebGLRenderer.render: camera is not an instance of THREE.Camera.");return}if(N===!0)return;V!==null&&V.renderStart(b,D);let J=oe.enabled===!0&&oe.isPresenting===!0,W=H!==null&&(z===null||J)&&H.begin(F,z);if(b.matrixWorldAutoUpdate===!0&&b.updateMatrixWorld(),D.parent===null&&D.matrixWorldAutoUpdate===!0&&D.updateMatrixWorld(),oe.enabled===!0&&oe.isPresenting===!0&&(H===null||H.isCompositing()===!1)&&(oe.cameraAutoUpdate===!0&&oe.updateCamera(D),D=oe.getCamera()),b.isScene===!0&&b.onBeforeRender(F,b,D,z),A=ee.get(b,E.length),A.init(D),A.state.textureUnits=Ve.getTextureUnits(),E.push(A),gt.multiplyMatrices(D.projectionMatrix,D.matrixWorldInverse),D.isArrayCamera?Ut.setFromArrayCamera(D):Ye.setFromProjectionMatrix(gt,xn,D.reversedDepth),Yt=this.localClippingEnabled,Tt=ne.init(this.clippingPlanes,Yt),T=pe.get(b,x.length),T.init(),x.push(T),this.info.render.frame++,oe.enabled===!0&&oe.isPresenting===!0){let Ae=F.xr.getDepthSensingMesh();Ae!==null&&el(Ae,D,-1/0,F.sortObjects)}el(b,D,0,F.sortObjects),T.finish(),V!==null&&V.updateLights(A.state.lightsArray),F.sortObjects===!0&&T.sort(We,bt),fn=oe.enabled===!1||oe.isPresenting===!1||oe.hasDepthSensing()===!1,fn&&L.addToRenderList(T,b),this.info.autoReset===!0&&this.info.reset(),Tt===!0&&ne.beginShadows();let Y=A.state.shadowsArray;if(ue.render(Y,b,D),Tt===!0&&ne.endShadows(),(W&&H.hasRenderPass())===!1){let Ae=T.opaque,fe=T.transmissive;if(A.setupLights(),D.isArrayCamera){let we=D.cameras;if(fe.length>0)for(let Pe=0,He=we.length;Pe<He;Pe++){let Ze=we[Pe];jc(Ae,fe,b,Ze)}fn&&L.render(b);for(let Pe=0,He=we.length;Pe<He;Pe++){let Ze=we[Pe];Kc(T,b,Ze,Ze.viewport)}}else fe.length>0&&jc(Ae,fe,b,D),fn&&L.render(b),Kc(T,b,D)}z!==null&&B===0&&(Ve.updateMultisampleRenderTarget(z),Ve.updateRenderTargetMipmap(z)),W&&H.end(F),b.isScene===!0&&b.onAfterRender(F,b,D),he.resetDefaultState(),P=-1,X=null,E.pop(),E.length>0?(A=E[E.length-1],Ve.setTextureUnits(A.state.textureUnits),Tt===!0&&ne.setGlobalState(F.clippingPlanes,A.state.camera)):A=null,x.pop(),x.length>0?T=x[x.length-1]:T=null,V!==null&&V.renderEnd()};function el(b,D,J,W){if(b.visible===!1)return;if(b.layers.test(D.layers)){if(b.isGroup)J=b.renderOrder;else if(b.isLOD)b.autoUpdate===!0&&b.update(D);else if(b.isLight)A.pushLight(b),b.castShadow&&A.pushShadow(b);else if(b.isSprite){let Ae=D.isArrayCamera?Ut:Ye;if(!b.frustumCulled||b.intersectsFrustum(Ae)){W&&Pt.setFromMatrixPosition(b.matrixWorld).applyMatrix4(gt);let fe=ae.update(b),we=b.material;we.visible&&T.push(b,fe,we,J,Pt.z,null,D)}}else if(b.isMesh||b.isLine||b.isPoints){let Ae=D.isArrayCamera?Ut:Ye;if(!b.frustumCulled||b.intersectsFrustum(Ae)){let fe=ae.update(b),we=b.material;if(W&&(b.boundingSphere!==void 0?(b.boundingSphere===null&&b.computeBoundingSphere(),Pt.copy(b.boundingSphere.center)):(fe.boundingSphere===null&&fe.computeBoundingSphere(),Pt.copy(fe.boundingSphere.center)),Pt.applyMatrix4(b.matrixWorld).applyMatrix4(gt)),Array.isArray(we)){let Pe=fe.groups;for(let He=0,Ze=Pe.length;He<Ze;He++){let Re=Pe[He],Je=we[Re.materialIndex];Je&&Je.visible&&T.push(b,fe,Je,J,Pt.z,Re,D)}}else we.visible&&T.push(b,fe,we,J,Pt.z,null,D)}}}let me=b.children;for(let Ae=0,fe=me.length;Ae<fe;Ae++)el(me[Ae],D,J,W)}function Kc(b,D,J,W){let{opaque:Y,transmissive:me,transparent:Ae}=b;A.setupLightsView(J),Tt===!0&&ne.setGlobalState(F.clippingPlanes,J),W&&ge.viewport(q.copy(W)),Y.length>0&&Lr(Y,D,J),me.length>0&&Lr(me,D,J),Ae.length>0&&Lr(Ae,D,J),ge.buffers.depth.setTest(!0),ge.buffers.depth.setMask(!0),ge.buffers.color.setMask(!0),ge.setPolygonOffset(!1)}function jc(b,D,J,W){if((J.isScene===!0?J.overrideMaterial:null)!==null)return;if(A.state.transmissionRenderTarget[W.id]===void 0){let Re=dt.has("EXT_color_buffer_half_float")||dt.has("EXT_color_buffer_float");A.state.transmissionRenderTarget[W.id]=new on(1,1,{generateMipmaps:!0,type:Re?Ln:hn,minFilter:ai,samples:Math.max(4,ft.samples),stencilBuffer:r,resolveDepthBuffer:!1,resolveStencilBuffer:!1,storeMultisampledDepthBuffer:!1,storeMultisampledStencilBuffer:!1,colorSpace:Ke.workingColorSpace})}let me=A.state.transmissionRenderTarget[W.id],Ae=W.viewport||q;me.setSize(Ae.z*F.transmissionResolutionScale,Ae.w*F.transmissionResolutionScale);let fe=F.getRenderTarget(),we=F.getActiveCubeFace(),Pe=F.getActiveMipmapLevel();F.setRenderTarget(me),F.getClearColor(K),ve=F.getClearAlpha(),ve<1&&F.setClearColor(16777215,.5),F.clear(),fn&&L.render(J);let He=F.toneMapping;F.toneMapping=$n;let Ze=W.viewport;if(W.viewport!==void 0&&(W.viewport=void 0),A.setupLightsView(W),Tt===!0&&ne.setGlobalState(F.clippingPlanes,W),Lr(b,J,W),Ve.updateMultisampleRenderTarget(me),Ve.updateRenderTargetMipmap(me),dt.has("WEBGL_multisampled_render_to_texture")===!1){let Re=!1;for(let Je=0,Mt=D.length;Je<Mt;Je++){let lt=D[Je],{object:ot,geometry:Ot,material:Ce,group:Vt}=lt;if(Ce.side===Wn&&ot.layers.test(W.layers)){let nt=Ce.side;Ce.side=qt,Ce.needsUpdate=!0,Qc(ot,J,W,Ot,Ce,Vt),Ce.side=nt,Ce.needsUpdate=!0,Re=!0}}Re===!0&&(Ve.updateMultisampleRenderTarget(me),Ve.updateRenderTargetMipmap(me))}F.setRenderTarget(fe,we,Pe),F.setClearColor(K,ve),Ze!==void 0&&(W.viewport=Ze),F.toneMapping=He}function Lr(b,D,J){let W=D.isScene===!0?D.overrideMaterial:null;for(let Y=0,me=b.length;Y<me;Y++){let Ae=b[Y],{object:fe,geometry:we,group:Pe}=Ae,He=Ae.material;He.allowOverride===!0&&W!==null&&(He=W),fe.layers.test(J.layers)&&Qc(fe,D,J,we,He,Pe)}}function Qc(b,D,J,W,Y,me){V!==null&&Y.isNodeMaterial&&V.setObject(b,Y),b.onBeforeRender(F,D,J,W,Y,me),b.modelViewMatrix.multiplyMatrices(J.matrixWorldInverse,b.matrixWorld),b.normalMatrix.getNormalMatrix(b.modelViewMatrix),Y.onBeforeRender(F,D,J,W,b,me),Y.transparent===!0&&Y.side===Wn&&Y.forceSinglePass===!1?(Y.side=qt,Y.needsUpdate=!0,F.renderBufferDirect(J,D,W,Y,b,me),Y.side=Ii,Y.needsUpdate=!0,F.renderBufferDirect(J,D,W,Y,b,me),Y.side=Wn):F.renderBufferDirect(J,D,W,Y,b,me),b.onAfterRender(F,D,J,W,Y,me)}function eh(b){let D=0;for(let J of b)J.texture!==null&&D++;return D}function Bs(b,D,J){D.isScene!==!0&&(D=dn);let W=Fe.get(b),Y=A.state.lights,me=A.state.shadowsArray,Ae=Y.state.version,fe=se.getParameters(b,Y.state,me,D,J,A.state.lightProbeGridArray),we=se.getProgramCacheKey(fe),Pe=W.programs;W.environment=b.isMeshStandardMaterial||b.isMeshLambertMaterial||b.isMeshPhongMaterial?D.environment:null,W.fog=D.fog;let He=b.isMeshStandardMaterial||b.isMeshLambertMaterial&&!b.envMap||b.isMeshPhongMaterial&&!b.envMap;W.envMap=R.get(b.envMap||W.environment,He),W.envMapRotation=W.environment!==null&&b.envMap===null?D.environmentRotation:b.envMapRotation,Pe===void 0&&(b.addEventListener("dispose",rt),Pe=new Map,W.programs=Pe,W.programVariants=new Map);let Ze=Pe.get(we);if(Ze!==void 0){if(W.currentProgram===Ze&&W.lightsStateVersion===Ae)return nh(b,fe),Ze}else fe.uniforms=se.getUniforms(b),V!==null&&b.isNodeMaterial&&V.build(b,J,fe),b.onBeforeCompile(fe,F),Ze=se.acquireProgram(fe,we),Pe.set(we,Ze),W.uniforms=fe.uniforms;let Re=W.uniforms;return(!b.isShaderMaterial&&!b.isRawShaderMaterial||b.clipping===!0)&&(Re.clippingPlanes=ne.uniform),nh(b,fe),W.needsLights=Rf(b),W.lightsStateVersion=Ae,W.needsLights&&(Re.ambientLightColor.value=Y.state.ambient,Re.lightProbe.value=Y.state.probe,Re.sunLights.value=Y.state.sun,Re.sunLightShadows.value=Y.state.sunShadow,Re.directionalLights.value=Y.state.directional,Re.directionalLightShadows.value=Y.state.directionalShadow,Re.spotLights.value=Y.state.spot,Re.spotLightShadows.value=Y.state.spotShadow,Re.rectAreaLights.value=Y.state.rectArea,Re.ltc_1.value=Y.state.rectAreaLTC1,Re.ltc_2.value=Y.state.rectAreaLTC2,Re.pointLights.value=Y.state.point,Re.pointLightShadows.value=Y.state.pointShadow,Re.hemisphereLights.value=Y.state.hemi,Re.sunShadowMatrix.value=Y.state.sunShadowMatrix,Re.sunShadowCascade.value=Y.state.sunShadowCascade,Re.directionalShadowMatrix.value=Y.state.directionalShadowMatrix,Re.spotLightMatrix.value=Y.state.spotLightMatrix,Re.spotLightMap.value=Y.state.spotLightMap,Re.pointShadowMatrix.value=Y.state.pointShadowMatrix),W.numLightProbeGrids=eh(A.state.lightProbeGridArray),W.currentProgram=Ze,W.uniformsList=null,Ze}function Tf(b,D,J,W,Y){let me=Fe.get(b),Ae=me.currentProgram.id+","+W+","+Y,fe=me.programVariants.get(Ae);return fe===void 0?(fe=Bs(b,D,J),me.programVariants.set(Ae,fe)):(me.currentProgram=fe,me.uniformsList=null,me.outputColorSpace=W,me.toneMapping=Y),fe}function th(b){if(b.uniformsList===null){let D=b.currentProgram.getUniforms();b.uniformsList=Us.seqWithValue(D.seq,b.uniforms)}return b.uniformsList}function nh(b,D){let J=Fe.get(b);J.outputColorSpace=D.outputColorSpace,J.batching=D.batching,J.batchingColor=D.batchingColor,J.instancing=D.instancing,J.instancingColor=D.instancingColor,J.instancingMorph=D.instancingMorph,J.skinning=D.skinning,J.morphTargets=D.morphTargets,J.morphNormals=D.morphNormals,J.morphColors=D.morphColors,J.morphTargetsCount=D.morphTargetsCount,J.numClippingPlanes=D.numClippingPlanes,J.numIntersection=D.numClipIntersection,J.vertexAlphas=D.vertexAlphas,J.vertexTangents=D.vertexTangents,J.toneMapping=D.toneMapping}function Ef(b,D,J,W,Y){D.isScene!==!0&&(D=dn),Ve.resetTextureUnits();let me=D.fog,Ae=W.isMeshStandardMaterial||W.isMeshLambertMaterial||W.isMeshPhongMaterial?D.environment:null,fe=z===null?F.outputColorSpace:z.isXRRenderTarget===!0?z.texture.colorSpace:Ke.workingColorSpace,we=W.isMeshStandardMaterial||W.isMeshLambertMaterial&&!W.envMap||W.isMeshPhongMaterial&&!W.envMap,Pe=R.get(W.envMap||Ae,we),He=W.vertexColors===!0&&!!J.attributes.color&&J.attributes.color.itemSize===4,Ze=!!J.attributes.tangent&&(!!W.normalMap||W.anisotropy>0),Re=!!J.morphAttributes.position,Je=!!J.morphAttributes.normal,Mt=!!J.morphAttributes.color,lt=$n;W.toneMapped&&(z===null||z.isXRRenderTarget===!0)&&(lt=F.toneMapping);let ot=J.morphAttributes.position||J.morphAttributes.normal||J.morphAttributes.color,Ot=ot!==void 0?ot.length:0,Ce=Fe.get(W),Vt=A.state.lights;if(Tt===!0&&(Yt===!0||b!==X)){let _t=b===X&&W.id===P;ne.setState(W,b,_t)}let nt=!1,Ui=!1;W.version===Ce.__version?Ce.needsLights&&Ce.lightsStateVersion!==Vt.state.version||Y.isBatchedMesh&&Ce.batching===!1||!Y.isBatchedMesh&&Ce.batching===!0||Y.isBatchedMesh&&Ce.batchingColor===!0&&Y._colorsTexture===null||Y.isBatchedMesh&&Ce.batchingColor===!1&&Y._colorsTexture!==null||Y.isInstancedMesh&&Ce.instancing===!1||!Y.isInstancedMesh&&Ce.instancing===!0||Y.isSkinnedMesh&&Ce.skinning===!1||!Y.isSkinnedMesh&&Ce.skinning===!0||Y.isInstancedMesh&&Ce.instancingColor===!0&&Y.instanceColor===null||Y.isInstancedMesh&&Ce.instancingColor===!1&&Y.instanceColor!==null||Y.isInstancedMesh&&Ce.instancingMorph===!0&&Y.morphTexture===null||Y.isInstancedMesh&&Ce.instancingMorph===!1&&Y.morphTexture!==null||Ce.envMap!==Pe||W.fog===!0&&Ce.fog!==me||Ce.numClippingPlanes!==void 0&&(Ce.numClippingPlanes!==ne.numPlanes||Ce.numIntersection!==ne.numIntersection)||Ce.vertexAlphas!==He||Ce.vertexTangents!==Ze||Ce.morphTargets!==Re||Ce.morphNormals!==Je||Ce.morphColors!==Mt||Ce.morphTargetsCount!==Ot||Ce.numLightProbeGrids!==eh(A.state.lightProbeGridArray)?nt=!0:(Ce.outputColorSpace!==fe||Ce.toneMapping!==lt)&&(Ui=!0):(nt=!0,Ce.__version=W.version);let kt=Ce.currentProgram;(nt===!0||Ui===!0)&&(kt=Ui===!0?Tf(W,D,Y,fe,lt):Bs(W,D,Y),V&&W.isNodeMaterial&&V.onUpdateProgram(W,kt,Ce));let Nr=!1,hi=!1,Fi=!1,tt=kt.getUniforms(),Ft=Ce.uniforms;if(ge.useProgram(kt.program)&&(Nr=!0,hi=!0,Fi=!0),W.id!==P&&(P=W.id,hi=!0),Nr||X!==b){ge.buffers.depth.getReversed()&&b.reversedDepth!==!0&&(b._reversedDepth=!0,b.updateProjectionMatrix()),tt.setValue(O,"projectionMatrix",b.projectionMatrix),tt.setValue(O,"viewMatrix",b.matrixWorldInverse);let Lt=tt.map.cameraPosition;Lt!==void 0&&Lt.setValue(O,Dn.setFromMatrixPosition(b.matrixWorld)),ft.logarithmicDepthBuffer&&tt.setValue(O,"logDepthBufFC",2/(Math.log(b.far+1)/Math.LN2)),(W.isMeshPhongMaterial||W.isMeshToonMaterial||W.isMeshLambertMaterial||W.isMeshBasicMaterial||W.isMeshStandardMaterial||W.isShaderMaterial)&&tt.setValue(O,"isOrthographic",b.isOrthographicCamera===!0),X!==b&&(X=b,hi=!0,Fi=!0)}if(Ce.needsLights&&(Vt.state.sunShadowMap.length>0&&tt.setValue(O,"sunShadowMap",Vt.state.sunShadowMap,Ve),Vt.state.directionalShadowMap.length>0&&tt.setValue(O,"directionalShadowMap",Vt.state.directionalShadowMap,Ve),Vt.state.spotShadowMap.length>0&&tt.setValue(O,"spotShadowMap",Vt.state.spotShadowMap,Ve),Vt.state.pointShadowMap.length>0&&tt.setValue(O,"pointShadowMap",Vt.state.pointShadowMap,Ve)),Y.isSkinnedMesh){tt.setOptional(O,Y,"bindMatrix"),tt.setOptional(O,Y,"bindMatrixInverse");let _t=Y.skeleton;_t&&(_t.boneTexture===null&&_t.computeBoneTexture(),tt.setValue(O,"boneTexture",_t.boneTexture,Ve))}Y.isBatchedMesh&&(tt.setOptional(O,Y,"batchingTexture"),tt.setValue(O,"batchingTexture",Y._matricesTexture,Ve),tt.setOptional(O,Y,"batchingIdTexture"),tt.setValue(O,"batchingIdTexture",Y._indirectTexture,Ve),tt.setOptional(O,Y,"batchingColorTexture"),Y._colorsTexture!==null&&tt.setValue(O,"batchingColorTexture",Y._colorsTexture,Ve));let Mn=J.morphAttributes;if((Mn.position!==void 0||Mn.normal!==void 0||Mn.color!==void 0)&&ie.update(Y,J,kt),(hi||Ce.receiveShadow!==Y.receiveShadow)&&(Ce.receiveShadow=Y.receiveShadow,tt.setValue(O,"receiveShadow",Y.receiveShadow)),(W.isMeshStandardMaterial||W.isMeshLambertMaterial||W.isMeshPhongMaterial)&&W.envMap===null&&D.environment!==null&&(Ft.envMapIntensity.value=D.environmentIntensity),Ft.dfgLUT!==void 0&&(Ft.dfgLUT.value=Yv()),hi){if(tt.setValue(O,"toneMappingExposure",F.toneMappingExposure),Ce.needsLights&&Af(Ft,Fi),me&&W.fog===!0&&ce.refreshFogUniforms(Ft,me),ce.refreshMaterialUniforms(Ft,W,Se,Ue,A.state.transmissionRenderTarget[b.id]),Ce.needsLights&&Ce.numLightProbeGrids>0){let _t=S,Lt=0;for(let Yn of A.state.lightProbeGridArray)Yn.texture!==null&&(_t.textures[Lt]=Yn.texture,_t.min[Lt]=Yn.boundingBox.min,_t.max[Lt]=Yn.boundingBox.max,_t.resolution[Lt]=Yn.resolution,Lt++);for(let Yn in _t)_t[Yn].length=Lt;Ft.probesSH.value=_t.textures,Ft.probesMin.value=_t.min,Ft.probesMax.value=_t.max,Ft.probesResolution.value=_t.resolution}Us.upload(O,th(Ce),Ft,Ve)}if(W.isShaderMaterial&&W.uniformsNeedUpdate===!0&&(Us.upload(O,th(Ce),Ft,Ve),W.uniformsNeedUpdate=!1),W.isSpriteMaterial&&tt.setValue(O,"center",Y.center),tt.setValue(O,"modelViewMatrix",Y.modelViewMatrix),tt.setValue(O,"normalMatrix",Y.normalMatrix),tt.setValue(O,"modelMatrix",Y.matrixWorld),W.uniformsGroups!==void 0){let _t=W.uniformsGroups;for(let Lt=0,Yn=_t.length;Lt<Yn;Lt++){let sh=_t[Lt];Ie.update(sh,kt),Ie.bind(sh,kt)}}return kt}function Af(b,D){b.ambientLightColor.needsUpdate=D,b.lightProbe.needsUpdate=D,b.sunLights.needsUpdate=D,b.sunLightShadows.needsUpdate=D,b.directionalLights.needsUpdate=D,b.directionalLightShadows.needsUpdate=D,b.pointLights.needsUpdate=D,b.pointLightShadows.needsUpdate=D,b.spotLights.needsUpdate=D,b.spotLightShadows.needsUpdate=D,b.rectAreaLights.needsUpdate=D,b.hemisphereLights.needsUpdate=D}function Rf(b){return b.isMeshLambertMaterial||b.isMeshToonMaterial||b.isMeshPhongMaterial||b.isMeshStandardMaterial||b.isShadowMaterial||b.isShaderMaterial&&b.lights===!0}this.getActiveCubeFace=function(){return k},this.getActiveMipmapLevel=function(){return B},this.getRenderTarget=function(){return z},this.setRenderTargetTextures=function(b,D,J){let W=Fe.get(b);W.__autoAllocateDepthBuffer=b.resolveDepthBuffer===!1,W.__autoAllocateDepthBuffer===!1&&(W.__useRenderToTexture=!1),Fe.get(b.texture).__webglTexture=D,Fe.get(b.depthTexture).__webglTexture=W.__autoAllocateDepthBuffer?void 0:J,W.__hasExternalTextures=!0},this.setRenderTargetFramebuffer=function(b,D){let J=Fe.get(b);J.__webglFramebuffer=D,J.__useDefaultFramebuffer=D===void 0},this.setRenderTarget=function(b,D=0,J=0){z=b,k=D,B=J;let W=null,Y=!1,me=!1;if(b){let fe=Fe.get(b);if(fe.__useDefaultFramebuffer!==void 0){ge.bindFramebuffer(O.FRAMEBUFFER,fe.__webglFramebuffer),q.copy(b.viewport),re.copy(b.scissor),Me=b.scissorTest,ge.viewport(q),ge.scissor(re),ge.setScissorTest(Me),P=-1;return}else if(fe.__webglFramebuffer===void 0)Ve.setupRenderTarget(b);else if(fe.__hasExternalTextures)Ve.rebindTextures(b,Fe.get(b.texture).__webglTexture,Fe.get(b.depthTexture).__webglTexture);else if(b.depthBuffer){let He=b.depthTexture;if(fe.__boundDepthTexture!==He){if(He!==null&&Fe.has(He)&&(b.width!==He.image.width||b.height!==He.image.height))throw new Error("THREE.WebGLRenderer: Attached DepthTexture is initialized to the incorrect size.");Ve.setupDepthRenderbuffer(b)}}let we=b.texture;(we.isData3DTexture||we.isDataArrayTexture||we.isCompressedArrayTexture)&&(me=!0);let Pe=Fe.get(b).__webglFramebuffer;b.isWebGLCubeRenderTarget?(Array.isArray(Pe[D])?W=Pe[D][J]:W=Pe[D],Y=!0):b.samples>0&&Ve.useMultisampledRTT(b)===!1?W=Fe.get(b).__webglMultisampledFramebuffer:Array.isArray(Pe)?W=Pe[J]:W=Pe,q.copy(b.viewport),re.copy(b.scissor),Me=b.scissorTest}else q.copy(Be).multiplyScalar(Se).floor(),re.copy(st).multiplyScalar(Se).floor(),Me=at;if(J!==0&&(W=Z),ge.bindFramebuffer(O.FRAMEBUFFER,W)&&ge.drawBuffers(b,W),ge.viewport(q),ge.scissor(re),ge.setScissorTest(Me),Y){let fe=Fe.get(b.texture);O.framebufferTexture2D(O.FRAMEBUFFER,O.COLOR_ATTACHMENT0,O.TEXTURE_CUBE_MAP_POSITIVE_X+D,fe.__webglTexture,J)}else if(me){let fe=D;for(let we=0;we<b.textures.length;we++){let Pe=Fe.get(b.textures[we]);O.framebufferTextureLayer(O.FRAMEBUFFER,O.COLOR_ATTACHMENT0+we,Pe.__webglTexture,J,fe)}}else if(b!==null&&J!==0){let fe=Fe.get(b.texture);O.framebufferTexture2D(O.FRAMEBUFFER,O.COLOR_ATTACHMENT0,O.TEXTURE_2D,fe.__webglTexture,J)}P=-1};function ih(b){let D=Fe.get(b);return(D.__readFormat!==b.format||D.__readType!==b.type)&&(D.__readFormat=b.format,D.__readType=b.type,D.__formatReadable=ft.textureFormatReadable(b.format),D.__typeReadable=ft.textureTypeReadable(b.type)),D}this.readRenderTargetPixels=function(b,D,J,W,Y,me,Ae,fe=0){if(!(b&&b.isWebGLRenderTarget)){ze("WebGLRenderer.readRenderTargetPixels: renderTarget is not THREE.WebGLRenderTarget.");return}let we=Fe.get(b).__webglFramebuffer;if(b.isWebGLCubeRenderTarget&&Ae!==void 0&&(we=we[Ae],Array.isArray(we)&&(we=we[0])),we){ge.bindFramebuffer(O.FRAMEBUFFER,we);try{let Pe=b.textures[fe],He=Pe.format,Ze=Pe.type;b.textures.length>1&&O.readBuffer(O.COLOR_ATTACHMENT0+fe);let Re=ih(Pe);if(Re.__formatReadable===!1){ze("WebGLRenderer.readRenderTargetPixels: renderTarget is not in RGBA or implementation defined format.");return}if(Re.__typeReadable===!1){ze("WebGLRenderer.readRenderTargetPixels: renderTarget is not in UnsignedByteType or implementation defined type.");return}D>=0&&D<=b.width-W&&J>=0&&J<=b.height-Y&&O.readPixels(D,J,W,Y,le.convert(He),le.convert(Ze),me)}finally{let Pe=z!==null?Fe.get(z).__webglFramebuffer:null;ge.bindFramebuffer(O.FRAMEBUFFER,Pe)}}},this.readRenderTargetPixelsAsync=async function(b,D,J,W,Y,me,Ae,fe=0){if(!(b&&b.isWebGLRenderTarget))throw new Error("THREE.WebGLRenderer.readRenderTargetPixels: renderTarget is not THREE.WebGLRenderTarget.");let we=Fe.get(b).__webglFramebuffer;if(b.isWebGLCubeRenderTarget&&Ae!==void 0&&(we=we[Ae],Array.isArray(we)&&(we=we[0])),we)if(D>=0&&D<=b.width-W&&J>=0&&J<=b.height-Y){ge.bindFramebuffer(O.FRAMEBUFFER,we);let Pe=b.textures[fe],He=Pe.format,Ze=Pe.type;b.textures.length>1&&O.readBuffer(O.COLOR_ATTACHMENT0+fe);let Re=ih(Pe);if(Re.__formatReadable===!1)throw new Error("THREE.WebGLRenderer.readRenderTargetPixelsAsync: renderTarget is not in RGBA or implementation defined format.");if(Re.__typeReadable===!1)throw new Error("THREE.WebGLRenderer.readRenderTargetPixelsAsync: renderTarget is not in UnsignedByteType or implementation defined type.");let Je=O.createBuffer();O.bindBuffer(O.PIXEL_PACK_BUFFER,Je),O.bufferData(O.PIXEL_PACK_BUFFER,me.byteLength,O.STREAM_READ),O.readPixels(D,J,W,Y,le.convert(He),le.convert(Ze),0),O.bindBuffer(O.PIXEL_PACK_BUFFER,null);let Mt=z!==null?Fe.get(z).__webglFramebuffer:null;ge.bindFramebuffer(O.FRAMEBUFFER,Mt);let lt=O.fenceSync(O.SYNC_GPU_COMMANDS_COMPLETE,0);return O.flush(),await hd(O,lt,4),O.bindBuffer(O.PIXEL_PACK_BUFFER,Je),O.getBufferSubData(O.PIXEL_PACK_BUFFER,0,me),O.bindBuffer(O.PIXEL_PACK_BUFFER,null),O.deleteBuffer(Je),O.deleteSync(lt),me}else throw new Error("THREE.WebGLRenderer.readRenderTargetPixelsAsync: requested read bounds are out of range.")},this.copyFramebufferToTexture=function(b,D=null,J=0){let W=Math.pow(2,-J),Y=Math.floor(b.image.width*W),me=Math.floor(b.image.height*W),Ae=D!==null?D.x:0,fe=D!==null?D.y:0;Ve.setTexture2D(b,0),O.copyTexSubImage2D(O.TEXTURE_2D,J,0,0,Ae,fe,Y,me),ge.unbindTexture()},this.copyTextureToTexture=function(b,D,J=null,W=null,Y=0,me=0){let Ae,fe,we,Pe,He,Ze,Re,Je,Mt,lt=b.isCompressedTexture?b.mipmaps[me]:b.image;if(J!==null)Ae=J.max.x-J.min.x,fe=J.max.y-J.min.y,we=J.isBox3?J.max.z-J.min.z:1,Pe=J.min.x,He=J.min.y,Ze=J.isBox3?J.min.z:0;else{let tt=Math.pow(2,-Y);Ae=Math.floor(lt.width*tt),fe=Math.floor(lt.height*tt),b.isDataArrayTexture?we=lt.depth:b.isData3DTexture?we=Math.floor(lt.depth*tt):we=1,Pe=0,He=0,Ze=0}W!==null?(Re=W.x,Je=W.y,Mt=W.z):(Re=0,Je=0,Mt=0);let ot=le.convert(D.format),Ot=le.convert(D.type),Ce;D.isData3DTexture?(Ve.setTexture3D(D,0),Ce=O.TEXTURE_3D):D.isDataArrayTexture||D.isCompressedArrayTexture?(Ve.setTexture2DArray(D,0),Ce=O.TEXTURE_2D_ARRAY):(Ve.setTexture2D(D,0),Ce=O.TEXTURE_2D),ge.activeTexture(O.TEXTURE0),ge.pixelStorei(O.UNPACK_FLIP_Y_WEBGL,D.flipY),ge.pixelStorei(O.UNPACK_PREMULTIPLY_ALPHA_WEBGL,D.premultiplyAlpha),ge.pixelStorei(O.UNPACK_ALIGNMENT,D.unpackAlignment);let Vt=ge.getParameter(O.UNPACK_ROW_LENGTH),nt=ge.getParameter(O.UNPACK_IMAGE_HEIGHT),Ui=ge.getParameter(O.UNPACK_SKIP_PIXELS),kt=ge.getParameter(O.UNPACK_SKIP_ROWS),Nr=ge.getParameter(O.UNPACK_SKIP_IMAGES);ge.pixelStorei(O.UNPACK_ROW_LENGTH,lt.width),ge.pixelStorei(O.UNPACK_IMAGE_HEIGHT,lt.height),ge.pixelStorei(O.UNPACK_SKIP_PIXELS,Pe),ge.pixelStorei(O.UNPACK_SKIP_ROWS,He),ge.pixelStorei(O.UNPACK_SKIP_IMAGES,Ze);let hi=b.isDataArrayTexture||b.isData3DTexture,Fi=D.isDataArrayTexture||D.isData3DTexture;if(b.isDepthTexture){let tt=Fe.get(b),Ft=Fe.get(D),Mn=Fe.get(tt.__renderTarget),_t=Fe.get(Ft.__renderTarget);ge.bindFramebuffer(O.READ_FRAMEBUFFER,Mn.__webglFramebuffer),ge.bindFramebuffer(O.DRAW_FRAMEBUFFER,_t.__webglFramebuffer);for(let Lt=0;Lt<we;Lt++)hi&&(O.framebufferTextureLayer(O.READ_FRAMEBUFFER,O.COLOR_ATTACHMENT0,Fe.get(b).__webglTexture,Y,Ze+Lt),O.framebufferTextureLayer(O.DRAW_FRAMEBUFFER,O.COLOR_ATTACHMENT0,Fe.get(D).__webglTexture,me,Mt+Lt)),O.blitFramebuffer(Pe,He,Pe+Ae,He+fe,Re,Je,Re+Ae,Je+fe,O.DEPTH_BUFFER_BIT,O.NEAREST);ge.bindFramebuffer(O.READ_FRAMEBUFFER,null),ge.bindFramebuffer(O.DRAW_FRAMEBUFFER,null)}else if(Y!==0||b.isRenderTargetTexture||Fe.has(b)){let tt=Fe.get(b),Ft=Fe.get(D);ge.bindFramebuffer(O.READ_FRAMEBUFFER,w),ge.bindFramebuffer(O.DRAW_FRAMEBUFFER,U);for(let Mn=0;Mn<we;Mn++)hi?O.framebufferTextureLayer(O.READ_FRAMEBUFFER,O.COLOR_ATTACHMENT0,tt.__webglTexture,Y,Ze+Mn):O.framebufferTexture2D(O.READ_FRAMEBUFFER,O.COLOR_ATTACHMENT0,O.TEXTURE_2D,tt.__webglTexture,Y),Fi?O.framebufferTextureLayer(O.DRAW_FRAMEBUFFER,O.COLOR_ATTACHMENT0,Ft.__webglTexture,me,Mt+Mn):O.framebufferTexture2D(O.DRAW_FRAMEBUFFER,O.COLOR_ATTACHMENT0,O.TEXTURE_2D,Ft.__webglTexture,me),Y!==0?O.blitFramebuffer(Pe,He,Pe+Ae,He+fe,Re,Je,Re+Ae,Je+fe,O.COLOR_BUFFER_BIT,O.NEAREST):Fi?O.copyTexSubImage3D(Ce,me,Re,Je,Mt+Mn,Pe,He,Ae,fe):O.copyTexSubImage2D(Ce,me,Re,Je,Pe,He,Ae,fe);ge.bindFramebuffer(O.READ_FRAMEBUFFER,null),ge.bindFramebuffer(O.DRAW_FRAMEBUFFER,null)}else Fi?b.isDataTexture||b.isData3DTexture?O.texSubImage3D(Ce,me,Re,Je,Mt,Ae,fe,we,ot,Ot,lt.data):D.isCompressedArrayTexture?O.compressedTexSubImage3D(Ce,me,Re,Je,Mt,Ae,fe,we,ot,lt.data):O.texSubImage3D(Ce,me,Re,Je,Mt,Ae,fe,we,ot,Ot,lt):b.isDataTexture?O.texSubImage2D(O.TEXTURE_2D,me,Re,Je,Ae,fe,ot,Ot,lt.data):b.isCompressedTexture?O.compressedTexSubImage2D(O.TEXTURE_2D,me,Re,Je,lt.width,lt.height,ot,lt.data):O.texSubImage2D(O.TEXTURE_2D,me,Re,Je,Ae,fe,ot,Ot,lt);ge.pixelStorei(O.UNPACK_ROW_LENGTH,Vt),ge.pixelStorei(O.UNPACK_IMAGE_HEIGHT,nt),ge.pixelStorei(O.UNPACK_SKIP_PIXELS,Ui),ge.pixelStorei(O.UNPACK_SKIP_ROWS,kt),ge.pixelStorei(O.UNPACK_SKIP_IMAGES,Nr),me===0&&D.generateMipmaps===!0&&D.mipmapsAutoUpdate===!0&&O.generateMipmap(Ce),ge.unbindTexture()},this.initRenderTarget=function(b){Fe.get(b).__webglFramebuffer===void 0&&Ve.setupRenderTarget(b)},this.initTexture=function(b){b.isCubeTexture?Ve.setTextureCube(b,0):b.isData3DTexture?Ve.setTexture3D(b,0):b.isDataArrayTexture||b.isCompressedArrayTexture?Ve.setTexture2DArray(b,0):Ve.setTexture2D(b,0),ge.unbindTexture()},this.resetState=function(){k=0,B=0,z=null,ge.reset(),he.reset()},typeof __THREE_DEVTOOLS__<"u"&&__THREE_DEVTOOLS__.dispatchEvent(new CustomEvent("observe",{detail:this}))}get coordinateSystem(){return xn}get outputColorSpace(){return this._outputColorSpace}set outputColorSpace(e){this._outputColorSpace=e;let t=this.getContext();t.drawingBufferColorSpace=Ke._getDrawingBufferColorSpace(e),t.unpackColorSpace=Ke._getUnpackColorSpace()}};var Zd=.016666666666666666,Zv=2.2,Jv=3e4,Kv=150,jv=.05,Qv=.02;function Jd(i,e,t,n,s,r){let a=i.map(([C,S,T])=>[C-e[0],S-e[1],T]),o=C=>Math.max(...a.map(S=>S[C]))-Math.min(...a.map(S=>S[C])),l=(o(0)**2+o(1)**2)/12,[c,h]=r?ex(i,e,n,l):[e,0],[d,u,f,g]=[e[0],e[1],0,h],[v,_]=r?[g*(e[1]-c[1]),-g*(e[0]-c[0])]:[jv,0],p=[{along:0,up:0,turned:0}],M=0;for(let C=1;C*25e-5<Zv&&M<.15;C++){let[S,T,A]=[n[0],n[1],0],[x,E]=[Math.cos(f),Math.sin(f)];for(let[H,F,N]of a){let[V,Z]=[H*x+F*E,-H*E+F*x];for(let{n:w,aside:U,c:k}of t){let B=k-U*N-w[0]*(d+V)-w[1]*(u+Z);if(B<=0)continue;let[z,P]=[v+g*Z,_-g*V],X=Math.max(0,Jv*B-Kv*(z*w[0]+P*w[1])),q=z*w[1]-P*w[0],re=-s*X*Math.max(-1,Math.min(1,q/Qv)),[Me,K]=[X*w[0]+re*w[1],X*w[1]-re*w[0]];S+=Me,T+=K,A+=Z*Me-V*K}}v+=S*25e-5,_+=T*25e-5,g+=A/l*25e-5,d+=v*25e-5,u+=_*25e-5,f+=g*25e-5,M=Math.hypot(v,_)+Math.abs(g)*Math.sqrt(l)<.03&&C*25e-5>.2?M+25e-5:0,Math.floor(C*25e-5/Zd)>Math.floor((C-1)*25e-5/Zd)&&p.push({along:d-e[0],up:u-e[1],turned:f})}return p.push(tx({along:d-e[0],up:u-e[1],turned:f},a,e,t)),p}function ex(i,e,t,n){let s=Math.min(...i.map(g=>g[1])),[r,a]=i.filter(g=>g[1]<s+.004).reduce((g,v)=>v[0]>g[0]?v:g),o=[r,a],[l,c]=[e[0]-o[0],e[1]-o[1]],h=Math.hypot(...t),d=-(l*t[0]+c*t[1])/h,u=Math.hypot(l,c),f=l*t[1]-c*t[0]>0;return[o,.4+Math.sqrt(2*h*(f?u-d:0)/(n+u**2))*1.1]}function tx(i,e,t,n){let[s,r]=[Math.cos(i.turned),Math.sin(i.turned)],a={...i};for(let o=0;o<20;o++)for(let{n:l,aside:c,c:h}of n){let d=Math.max(...e.map(([u,f,g])=>h-c*g-l[0]*(t[0]+a.along+u*s+f*r)-l[1]*(t[1]+a.up-u*r+f*s)));d<=0||(a.along+=l[0]*d,a.up+=l[1]*d)}return a}var Fc=["chassis","front axle","rear axle","front left","front right","rear left","rear right"],Oc=Fc.slice(3),jd={chassis:"body","axle front":"front axle","axle rear":"rear axle",wheel:"wheels"},Kd={paper:"--sheet",ink:"--ink",faint:"--rule",soft:"--soft",board:"--board",chassis:"--chassis","axle front":"--axle-front","axle rear":"--axle-rear",wheel:"--wheel",picked:"--picked",over:"--red",load:"--blue",pack:"--pack"},Wo=class{ink=Object.fromEntries(Object.keys(Kd).map(e=>[e,new je]));face=new Ai({vertexColors:!0,polygonOffset:!0,polygonOffsetFactor:1,polygonOffsetUnits:1});glass=new Ai({vertexColors:!0,transparent:!0,opacity:.16,depthWrite:!1});pack=new Zi({depthTest:!1,transparent:!0});lined=new Map;filled=new Map;times=0;repaint(){let e=getComputedStyle(document.documentElement);for(let[t,n]of Object.entries(Kd))this.ink[t].set(e.getPropertyValue(n).trim());for(let[t,n]of[...this.lined,...this.filled])n.color.copy(this.ink[t]);this.pack.color.copy(this.ink.pack),this.times+=1}line(e){let t=this.lined.get(e);return t||this.lined.set(e,t=new Zi({color:this.ink[e]})),t}fill(e,t=0){let n=this.filled.get(e);return n||this.filled.set(e,n=new Ai({color:this.ink[e],polygonOffset:t>0,polygonOffsetFactor:t,polygonOffsetUnits:t})),n}},$o=class{constructor(e){this.paints=e;this.root.add(...this.bodies)}paints;root=new Zt;bodies=Fc.map(()=>new Zt);built=[];dress(e,t){Fc.forEach((n,s)=>{let r=e.parts.filter(d=>d.carrier===n&&d.shape),a=new Set(r.map(Bn)),o=(t.before?.parts??[]).filter(d=>d.carrier===n&&d.shape&&!a.has(Bn(d))),l=`${this.paints.times}|${t.glass}|${t.ghost}|${r.map(d=>`${Bn(d)} ${d.row===t.picked} ${d.row===t.pack}`).join("|")}|${o.map(Bn).join("|")}`;if(this.built[s]===l)return;this.built[s]=l;let c=this.bodies[s];kc(c);let h=d=>t.glass&&n==="chassis"&&!(d.row>=0&&(d.row===t.picked||d.row===t.pack));t.ghost?this.edges(c,r,this.paints.line("load")):(this.meshes(c,r.filter(d=>!h(d)),n,t.picked,this.paints.face,this.paints.line("ink")),this.meshes(c,r.filter(h),n,t.picked,this.paints.glass,this.paints.line("soft")),this.edges(c,r.filter(d=>d.row>=0&&d.row===t.pack),this.paints.pack,5)),this.edges(c,o,this.paints.line("load"))})}meshes(e,t,n,s,r,a){let o=[],l=[],c=[],h=this.paints.ink[pl(n)];for(let f of t){let g=gi(f.shape).triangles;for(let v=0;v<g.length;v+=3)o.push(...Xs(g.slice(v,v+3),f.turn,f.centre_mm)),v%9===0&&c.push(f);ix(o,l,f.row>=0&&f.row===s?this.paints.ink.picked:h)}if(o.length===0)return;let d=Os(o);d.setAttribute("color",new an(new Float32Array(l),3));let u=new At(d,r);u.userData.owner=c,u.frustumCulled=!1,e.add(u),this.edges(e,t,a)}edges(e,t,n,s=0){let r=[];for(let o of t){let l=gi(o.shape).lines;for(let c=0;c<l.length;c+=3)r.push(...Xs(l.slice(c,c+3),o.turn,o.centre_mm))}if(r.length===0)return;let a=ts(r,n);a.renderOrder=s,e.add(a)}pose(e){this.bodies.forEach((t,n)=>{let s=e[n]??e[n<3?n:n<5?1:2];t.position.set(s?.[0]??0,s?.[1]??0,s?.[2]??0),t.quaternion.set(s?.[3]??0,s?.[4]??0,s?.[5]??0,s?.[6]??1)})}corners(){let e=[];for(let t of this.bodies){t.updateMatrix();for(let n of t.children){if(!(n instanceof At))continue;let s=n.geometry.getAttribute("position");for(let r=0;r<s.count;r++)e.push(new G().fromBufferAttribute(s,r).applyMatrix4(t.matrix))}}return e}},nx=new G(.25,.55,.85).normalize();function ix(i,e,t){let[n,s,r]=[new G,new G,new G];for(let a=e.length;a<i.length;a+=9){n.fromArray(i,a),s.fromArray(i,a+3).sub(n),r.fromArray(i,a+6).sub(n);let o=s.cross(r).normalize(),l=.88+.2*o.dot(nx)+.12*o.z,[c,h,d]=[t.r,t.g,t.b].map(u=>Math.min(1,u*l**1.3));for(let u=0;u<3;u++)e.push(c,h,d)}}function Os(i){let e=new Cn;return e.setAttribute("position",new an(new Float32Array(i),3)),e}function ts(i,e){let t=new As(Os(i),e);return t.frustumCulled=!1,t}function kc(i){for(let e of[...i.children])i.remove(e),(e instanceof At||e instanceof As)&&e.geometry.dispose()}var Xo=class{frames=0;moment={theta_deg:0,poses:[],load_g:[0,0,0,0],cg_mm:null,heading_deg:0};views={side:new Kn("side"),rear:new Kn("rear")};table=te("g");truck=te("g");marks=te("g");angle=te("text",{class:"reading",x:-262,y:-12});over=null;constructor(e,t){t.hidden=!0,this.table.append(te("path",{class:"ground",d:"M-300 0H300"}),this.truck,this.marks),e.append(te("svg",{class:"flat view",viewBox:"-320 -330 640 400",role:"img","aria-label":"The truck on the table, as a flat view"},te("path",{class:"wedge",d:"M-300 0H300"}),this.table,this.angle),m("p",{class:"flat-note"},"This browser offers no WebGL, so the truck is drawn flat: from behind where it stands across the slope, from its right side else.")),Ne(["shown","pick"],()=>this.render())}show(e,t=null){this.moment=e,this.over=t,this.render()}repaint(){}render(){let e=I.scene;if(!e)return;let{theta_deg:t,heading_deg:n}=this.moment,s=n*Math.PI/180,r=Math.abs(Math.sin(s))>.7?"rear":"side",a=(r==="rear"?Math.sin(s):Math.cos(s))>=0?-1:1;this.table.setAttribute("transform",`rotate(${(a*t).toFixed(2)} ${a*300} 0)`);let o=this.views[r];o.draw(e.parts,I.view.row);let l=e.tip_points_mm.map(([g,v])=>kn[r]([g,v,0])[0]),c=a<0?Math.min(...l):Math.max(...l);this.truck.setAttribute("transform",this.over===null?"":this.over==="away"?`translate(${a*90} 0)`:`rotate(${a*86} ${c} 0) translate(0 -14)`),this.truck.replaceChildren(o.root);let[h,d]=kn[r](this.moment.cg_mm??e.cg_mm),u=this.moment.load_g,f=r==="rear"?[[0,2],[1,3]]:[[2,3],[0,1]];this.marks.replaceChildren(te("g",{transform:`translate(${h} ${d})`},te("circle",{r:8,class:"cg-back"}),te("path",{d:"M0 0V-8A8 8 0 0 1 8 0ZM0 0V8A8 8 0 0 1 -8 0Z",class:"cg-dark"}),te("circle",{r:8,class:"cg-ring"})),...f.map(([g,v],_)=>te("text",{class:"reading",x:(_?Math.max:Math.min)(...l),y:18,"text-anchor":"middle"},`${j(Math.max(0,(u[g]??0)+(u[v]??0)),0)} g`))),this.marks.setAttribute("visibility",this.over===null?"visible":"hidden"),this.angle.textContent=`${j(t)}°`,this.frames+=1}};var Ni={ahead:{axes:[0],words:"ahead, back"},left:{axes:[1],words:"left, right"},up:{axes:[2],words:"up, down"},side:{axes:[0,2],words:"side plane"},rear:{axes:[1,2],words:"rear plane"},floor:{axes:[0,1],words:"floor plane"}},sx=["ahead","left","up"],qo=[["ahead","back"],["left","right"],["up","down"]],Qd=52,zc=.25,Yo=class{constructor(e,t,n,s){this.holder=e;this.drawn=t;this.changed=n;this.back=s;this.grip=te("g",{role:"slider",tabindex:-1,id:"grip-3d",class:"grip-3d","aria-valuenow":0},te("circle",{r:15,class:"handle-reach"}),te("circle",{r:6,class:"handle"})),this.root=te("svg",{class:"handles",role:"group","aria-label":"The picked part on the table"},...this.arms.map(r=>r.root),this.grip),e.append(this.root,this.readout),this.grip.addEventListener("pointerdown",r=>this.take(r,this.along)),this.grip.addEventListener("keydown",r=>this.nudge(r)),this.root.addEventListener("pointermove",r=>this.drag(r));for(let r of["pointerup","pointercancel"])this.root.addEventListener(r,()=>this.drop());Ne("bench",()=>{this.held||this.say(null)}),Ne("shown",()=>{this.held&&this.read(this.held)})}holder;drawn;changed;back;along="side";root;grip;arms=sx.map(e=>this.arm(e));readout=m("div",{class:"stage-readout","aria-hidden":"true",hidden:!0});held=null;readTimer=0;movable(){if($t)return null;let e=I.bench?.rows.find(n=>n.row===I.view.row),t=I.scene?.parts.find(n=>n.row===I.view.row);return e&&t&&e.at_mm&&e.here?{part:t,row:e}:null}focus(){this.movable()&&this.grip.focus()}next(){let e=Object.keys(Ni);this.choose(e[(e.indexOf(this.along)+1)%e.length])}choose(e){this.along=e,this.changed()}arm(e){let[t,n,s]=[te("path"),te("circle",{r:7}),te("text",{},e)],r=te("g",{class:"arm","aria-hidden":"true"},t,n,s);return r.addEventListener("pointerdown",a=>this.take(a,e)),{root:r,line:t,tip:n,name:s}}place(e){let t=e?null:this.movable();if(this.root.toggleAttribute("hidden",!t),!t)return;let{part:n,row:s}=t,r=this.drawn(n.cg_mm,n.carrier),a=this.pixels(n),o=Math.max(...a.map(v=>Math.hypot(...v)));this.grip.setAttribute("transform",`translate(${r[0].toFixed(1)} ${r[1].toFixed(1)})`),this.arms.forEach((v,_)=>{let[p,M]=a[_],C=Math.hypot(p,M);v.root.toggleAttribute("hidden",C<zc*o);let[S,T]=[r[0]+p/C*Qd,r[1]+M/C*Qd];v.line.setAttribute("d",`M${r[0].toFixed(1)} ${r[1].toFixed(1)}L${S.toFixed(1)} ${T.toFixed(1)}`);for(let[A,x,E]of[[v.tip,"cx","cy"],[v.name,"x","y"]])A.setAttribute(x,S.toFixed(1)),A.setAttribute(E,(T-(A===v.name?10:0)).toFixed(1));v.root.classList.toggle("chosen",Ni[this.along].axes.includes(_))});let[l,c,h]=s.at_mm,{axes:d,words:u}=Ni[this.along],f=d.length===1?"arrow keys move it a millimetre":`left and right move it ${qo[d[0]].join(" or ")}, up and down ${qo[d[1]].join(" or ")}, a millimetre each`;this.grip.setAttribute("aria-label",`${s.name} in three dimensions, ${u}: ${f}. M changes the way, Escape goes back to the table.`),this.grip.setAttribute("aria-valuetext",`${j(l)} ahead, ${j(c)} left, ${j(h)} up`)}pixels(e){let t=this.drawn(e.cg_mm,e.carrier);return[0,1,2].map(n=>{let s=[...e.cg_mm];s[n]+=20;let[r,a]=this.drawn(s,e.carrier);return[(r-t[0])/20,(a-t[1])/20]})}take(e,t=this.along){let n=this.movable();return n?(e.preventDefault(),e.stopPropagation(),this.root.setPointerCapture(e.pointerId),t!==this.along&&this.choose(t),this.held={...n,along:t,from:[e.clientX,e.clientY],moved:[0,0,0],pixels:this.pixels(n.part)},this.read(this.held),!0):!1}drag(e){let t=this.held;if(!t)return;let n=rx(t,[e.clientX-t.from[0],e.clientY-t.from[1]]);n.every((s,r)=>s===t.moved[r])||(t.moved=n,mi(Bc(t.row,t.part,n)),this.read(t))}drop(){let e=this.held;e&&(this.held=null,this.say(null),!e.moved.every(t=>t===0)&&en(Bc(e.row,e.part,e.moved),`moved ${e.row.name}`).then(t=>{t||Sn()}))}nudge(e){if(e.key==="Escape"||e.key==="Enter")return e.preventDefault(),this.back();if(e.key==="m")return this.next();let t=this.movable(),{axes:n}=Ni[this.along],s=e.shiftKey?10:1,[r,a]=[n[0],n[1]??n[0]],o=r===1?-1:1,c={ArrowRight:[r,o*s],ArrowLeft:[r,-o*s],ArrowUp:[a,a===1&&n.length===1?-s:s],ArrowDown:[a,a===1&&n.length===1?s:-s]}[e.key];if(!c||!t)return;e.preventDefault();let h=[0,0,0];h[c[0]]=c[1],en(Bc(t.row,t.part,h),`moved ${t.row.name}`).then(d=>{d&&this.read({...t,along:this.along,from:[0,0],moved:h,pixels:[]},1600)})}read(e,t=0){let{moved:n,row:s}=e,r=Object.values(pt).find(h=>h.heading===I.view.heading)?.short??`Turned ${j(I.view.heading,0)}°`,[a,o]=[Qt(I.answers,I.view.heading),Qt(I.bench.answers,I.view.heading)],l=a&&o&&this.held?` (${vt(a.deg-o.deg)}°)`:"",c=Ni[e.along].axes.map(h=>`${n[h]<0?qo[h][1]:qo[h][0]} ${j(Math.abs(n[h]),0)} mm`);this.say([m("b",{},s.name),c.join(", "),a?`${r} ${a.slides?"slides":"tips"} ${I.answers.exact?"":"≈ "}${j(a.deg)}°${l}`:""],e,t)}say(e,t=null,n=0){if(clearTimeout(this.readTimer),this.readout.hidden=e===null,e===null||!t)return;xe(this.readout,...e.map(f=>m("div",{},f)));let s=I.scene.parts.find(f=>f.row===t.row.row)??t.part,[r,a]=this.drawn(s.cg_mm,s.carrier),[o,l]=[this.holder.clientWidth,this.holder.clientHeight],{offsetWidth:c,offsetHeight:h}=this.readout,[d,u]=[r+26+c>o?r-26-c:r+26,Math.min(l-h-4,Math.max(4,a+18))];this.readout.style.transform=`translate(${Math.max(4,d).toFixed(0)}px, ${u.toFixed(0)}px)`,n&&(this.readTimer=window.setTimeout(()=>this.say(null),n))}};function rx(i,[e,t]){let n=[0,0,0],s=Math.max(...i.pixels.map(d=>Math.hypot(...d))),r=Ni[i.along].axes.filter(d=>Math.hypot(...i.pixels[d])>=zc*s),[a,o]=r;if(a===void 0)return n;let[l,c]=[i.pixels[a],o===void 0?null:i.pixels[o]],h=c?l[0]*c[1]-l[1]*c[0]:0;return c&&o!==void 0&&Math.abs(h)>zc**2*s**2?(n[a]=Math.round((e*c[1]-t*c[0])/h),n[o]=Math.round((l[0]*t-l[1]*e)/h)):n[a]=Math.round((e*l[0]+t*l[1])/(l[0]**2+l[1]**2)),n}function Bc(i,e,t){return[0,1,2].filter(n=>t[n]!==0).map(n=>({do:"set",part:i.name,key:`at_mm.${"xyz"[n]}`,value:Number((i.at_mm[n]+(n===1&&e.mirrored?-t[n]:t[n])).toFixed(3))}))}var ks={corner:{words:"Corner",round:null,up:20},side:{words:"Side",round:-90,up:0},rear:{words:"Rear",round:180,up:0},front:{words:"Front",round:0,up:0},top:{words:"Top",round:180,up:88}};function ef(i,e){let t=Object.keys(ks).map((l,c)=>m("button",{type:"button",id:`look-${l}`,"data-from":l,title:`Look from there: key ${c+1} on the table`,onclick:()=>i.look(l)},ks[l].words)),n=m("button",{type:"button",id:"see-through",title:"Key t on the table",onclick:()=>i.seeThrough(!i.glass)},"See through"),s=m("button",{type:"button",id:"move-along",class:"moves",title:"Key m at the part",onclick:()=>e.next()}),r=m("div",{class:"looks",role:"toolbar","aria-label":"How to look at the table, and which way the picked part moves"},...t,n,s);Ht(r);let a=m("div",{class:"stage-bar"},r),o=()=>{t.forEach(l=>l.setAttribute("aria-pressed",String(l.dataset.from===i.from))),n.setAttribute("aria-pressed",String(i.glass)),s.hidden=e.movable()===null,s.textContent=`Moves: ${Ni[e.along].words}`};return Ne(["pick","bench"],o),o(),{follow:o,root:a}}var yt=250,un=210,jt=12,Gc=300,tf=-62,ax=60,nf=9.80665,ox=.6,Vc=class{constructor(e,t){this.holder=e;this.canvas=t;this.slow=zs(),this.renderer=new Go({canvas:t,antialias:!this.slow,powerPreference:"low-power"}),this.camera.up.set(0,0,1),this.world.add(this.table),this.turn.position.set(yt,0,0),this.table.position.set(-yt,0,0),this.table.add(this.turn),this.turn.add(this.fall,this.tipLines),this.furnish(),this.plumb=ts([0,0,0,0,0,1],this.paints.line("over")),this.world.add(this.plumb),this.mark=te("svg",{class:"cg-mark",viewBox:"-10 -10 20 20","aria-hidden":"true"},te("circle",{r:8,class:"cg-back"}),te("path",{d:"M0 0V-8A8 8 0 0 1 8 0ZM0 0V8A8 8 0 0 1 -8 0Z",class:"cg-dark"}),te("circle",{r:8,class:"cg-ring"})),this.angle=m("div",{class:"stage-angle","aria-hidden":"true"});let n=s=>m("div",{class:`stage-tag ${s}`,"aria-hidden":"true"},s==="cg"?"CG":s);this.tags={cg:n("cg"),pack:n("pack")},e.append(this.mark,this.tags.cg,this.tags.pack,this.angle,lx());for(let s of Oc){let r=m("b"),a=m("div",{class:"stage-load","aria-hidden":"true"},`${s} `,r);this.labels.push({root:a,grams:r}),e.append(a)}this.handles=new Yo(e,(s,r)=>this.drawnAt(s,r),()=>{this.bar.follow(),this.draw()},()=>this.canvas.focus()),this.bar=ef(this,this.handles),e.before(this.bar.root),this.repaint(),this.listen(),new ResizeObserver(()=>this.resize()).observe(e),this.resize()}holder;canvas;world=new ar;camera=new Cs(-1,1,1,-1,-4e3,4e3);renderer;paints=new Wo;figure=new $o(this.paints);table=new Zt;turn=new Zt;fall=this.figure.root;bodies=this.figure.bodies;columns=[];tipLines=new Zt;plumb;labels=[];mark;tags;angle;handles;bar;azimuth=tf;elevation=ks.corner.up;zoom=1;from="corner";glass=!1;wanted=!1;slow;fine=!0;restTimer=0;falls=null;fallen=0;fallTimer=0;size=new et(1,1);frames=0;moment={theta_deg:0,poses:[],load_g:[0,0,0,0],cg_mm:null,heading_deg:0};listen(){Ne("shown",ns(()=>this.build(),()=>this.slow?2e3:50)),Ne("pick",()=>this.build());let e=null;this.canvas.addEventListener("pointerdown",t=>{this.partsAt(t)[0]?.row===I.view.row&&this.handles.take(t)||(e={x:t.clientX,y:t.clientY,far:!1},this.canvas.setPointerCapture(t.pointerId))}),this.canvas.addEventListener("pointermove",t=>{if(!e)return;let[n,s]=[t.clientX-e.x,t.clientY-e.y];!e.far&&Math.hypot(n,s)<4||(e={x:t.clientX,y:t.clientY,far:!0},this.orbit(-n*.4,s*.4))}),this.canvas.addEventListener("pointerup",t=>{e&&!e.far&&this.pickAt(t),e=null}),this.canvas.addEventListener("pointercancel",()=>e=null),this.canvas.addEventListener("wheel",t=>{t.preventDefault(),this.enlarge(Math.exp(-t.deltaY*.001))},{passive:!1}),this.canvas.addEventListener("keydown",t=>{let n=t.shiftKey?20:5,s={ArrowLeft:()=>this.orbit(-n,0),ArrowRight:()=>this.orbit(n,0),ArrowUp:()=>this.orbit(0,n),ArrowDown:()=>this.orbit(0,-n),"+":()=>this.enlarge(1.15),"=":()=>this.enlarge(1.15),"-":()=>this.enlarge(1/1.15),Home:()=>{this.zoom=1,this.look("corner")},t:()=>this.seeThrough(!this.glass),Enter:()=>this.handles.focus(),Escape:()=>ct({row:null})};Object.keys(ks).forEach((a,o)=>{s[String(o+1)]=()=>this.look(a)});let r=s[t.key];r&&(t.preventDefault(),r())}),this.canvas.addEventListener("webglcontextlost",t=>t.preventDefault()),this.canvas.addEventListener("webglcontextrestored",()=>this.draw())}orbit(e,t){this.azimuth+=e,this.elevation=Math.max(-5,Math.min(88,this.elevation+t)),this.from=null,this.bar.follow(),this.draw()}look(e){this.from=e,this.bar.follow(),this.draw()}seeThrough(e){this.glass=e,this.bar.follow(),this.build()}enlarge(e){this.zoom=Math.max(.5,Math.min(4,this.zoom*e)),this.draw()}repaint(){this.paints.repaint(),this.world.background=this.paints.ink.paper,I.scene&&this.build(),this.draw()}furnish(){let e=gi({kind:"box",size_mm:[2*yt,2*un,jt]}),t=(l,c,h)=>l.map((d,u)=>u%3===0?d+c:u%3===2?d+h:d),n=new At(Os(t(e.triangles,yt,-jt/2)),this.paints.fill("board",2)),s=[];for(let l=50;l<2*yt;l+=50)s.push(l,-un,.4,l,un,.4);for(let l=-200;l<=200;l+=50)s.push(0,l,.4,2*yt,l,.4);this.table.add(n,ts(t(e.lines,yt,-jt/2),this.paints.line("ink")),ts(s,this.paints.line("faint")));let r=[],a=(l,c)=>[l*Math.cos(bn(c))-yt,-un,l*Math.sin(bn(c))-jt];for(let l=0;l<90;l+=2)r.push(...a(150,l),...a(150,l+2));for(let l=0;l<=90;l+=5)r.push(...a(150,l),...a(l%10?155:162,l));let o=[];for(let l of[-un,un])o.push(-yt-Gc,l,-jt,yt,l,-jt);o.push(-yt-Gc,-un,-jt,-yt-Gc,un,-jt),o.push(-yt,-un,-jt,-yt,un,-jt,yt,-un,-jt,yt,un,-jt),this.world.add(ts(r,this.paints.line("ink")),ts(o,this.paints.line("faint")));for(let l=0;l<4;l++){let c=new At(Os(t(gi({kind:"box",size_mm:[9,9,1]}).triangles,0,.5)),this.paints.fill("load"));this.columns.push(c),this.turn.add(c)}}build(){let e=I.scene;if(!e)return;this.figure.dress(e,{picked:I.view.row,pack:sf(),glass:this.glass,before:I.bench.before?.scene??null}),kc(this.tipLines);let t=e.tip_points_mm,n=[0,1,3,2];n.forEach((s,r)=>this.tipLines.add(this.strip(t[s],t[n[(r+1)%4]]))),this.draw()}strip(e,t){let[n,s]=[t[0]-e[0],t[1]-e[1]],r=Math.hypot(n,s)||1,[a,o]=[-s/r*1.3,n/r*1.3],l=(f,g)=>[f[0]+g*a,f[1]+g*o,.8],[c,h,d,u]=[l(e,1),l(e,-1),l(t,-1),l(t,1)];return new At(Os([...c,...h,...d,...c,...d,...u]),this.paints.fill("over"))}partsAt(e){let t=this.canvas.getBoundingClientRect(),n=new et((e.clientX-t.left)/t.width*2-1,1-(e.clientY-t.top)/t.height*2),s=new mr;s.setFromCamera(n,this.camera);let a=s.intersectObjects(this.bodies,!0).filter(o=>o.object instanceof At).map(o=>o.object.userData.owner[o.faceIndex??0]).filter(o=>o.row>=0);return a.filter((o,l)=>a.findIndex(c=>c.row===o.row)===l)}pickAt(e){let t=this.partsAt(e).map(s=>s.row),n=this.glass?t.indexOf(I.view.row??-1):-1;ct({row:t[(n+1)%Math.max(1,t.length)]??null})}show(e,t=null){this.moment=e,this.table.rotation.y=-bn(e.theta_deg),this.turn.rotation.z=bn(e.heading_deg),this.figure.pose(e.poses),this.topple(t),this.draw()}topple(e){if(cancelAnimationFrame(this.fallTimer),e===null||!I.scene){this.falls=null,this.fallen=0,this.fall.position.set(0,0,0),this.fall.quaternion.identity();return}let t=`${e} ${this.moment.theta_deg.toFixed(2)} ${this.moment.heading_deg} ${I.bench.truck} ${JSON.stringify(this.moment.poses[0]??[])}`;this.falls?.key!==t&&(this.falls={key:t,...this.fate(e)});let n=(this.falls.frames.length-1)/60;ah()&&(this.fallen=n);let s=performance.now()-this.fallen*1e3,r=a=>{this.fallen=Math.min(n,Math.max(0,(a-s)/1e3)),this.setFall(),this.draw(),this.fallen<n&&(this.fallTimer=requestAnimationFrame(r))};r(performance.now())}fate(e){let[t,n]=[bn(this.moment.heading_deg),bn(this.moment.theta_deg)],s=new G(-Math.cos(t),Math.sin(t),0);if(e!=="away"){let M=I.scene.tip_points_mm,C={rear:[3,2],left:[2,0],front:[0,1],right:[1,3]},[S,T]=(C[e]??[2,0]).map(A=>M[A]);s.set(-(T[1]-S[1]),T[0]-S[0],0).normalize(),s.x*(S[0]+T[0])+s.y*(S[1]+T[1])<0&&s.negate()}let r=new G(...this.moment.cg_mm??I.scene.cg_mm),a=M=>[M.dot(s)/1e3,M.z/1e3],o=new G(-s.y,s.x,0),l=M=>M.x*Math.cos(t)-M.y*Math.sin(t),c=this.corners(a,o),h=Math.min(...c.map(M=>M[1])),d=l(s),u=Math.hypot(d*Math.sin(n),Math.cos(n)),f={n:[d*Math.sin(n)/u,Math.cos(n)/u],aside:l(o)*Math.sin(n)/u,c:-((yt*Math.sin(n)+jt)/1e3)/u},g=e==="away"?Math.min(I.answers.grip_range.likely,Math.tan(n)-.1):ox,v=[-nf*Math.sin(n)*d,-nf*Math.cos(n)],_=Jd(c,a(r),[{n:[0,1],aside:0,c:Math.min(0,h)},f],v,Math.max(.05,g),e!=="away"),p=_[_.length-1];return p.up-=Math.min(0,h),{frames:_,along:s,cg:r}}corners(e,t){let n=new Map;for(let s of this.figure.corners()){let r=Math.floor(s.dot(t)/ax);n.set(r,[...n.get(r)??[],s])}return[...n].flatMap(([,s])=>{let r=s.map(o=>o.dot(t)/1e3),a=[...new Set([Math.min(...r),Math.max(...r)])];return ml(s.map(e)).flatMap(([o,l])=>a.map(c=>[o,l,c]))})}setFall(){let{frames:e,along:t,cg:n}=this.falls,s=Math.min(e.length-1,this.fallen*60),[r,a]=[e[Math.floor(s)],e[Math.ceil(s)]],o=c=>r[c]+(a[c]-r[c])*(s%1),l=new G(0,0,1).cross(t);this.fall.quaternion.copy(new yn().setFromAxisAngle(l,o("turned"))),this.fall.position.copy(n).addScaledVector(t,o("along")*1e3).add(new G(0,0,o("up")*1e3)),this.fall.position.sub(n.clone().applyQuaternion(this.fall.quaternion))}drawnAt(e,t){let s=(this.bodies[["chassis","front axle","rear axle",...Oc].indexOf(t)]??this.bodies[0]).localToWorld(new G(...e)).project(this.camera);return[(s.x+1)/2*this.size.x,(1-s.y)/2*this.size.y]}resize(){let{clientWidth:e,clientHeight:t}=this.holder;e<2||t<2||(this.size.set(e,t),this.sharpen(this.fine),this.draw())}sharpen(e){this.fine=e,this.renderer.setPixelRatio(this.slow?e?2:1:Math.min(devicePixelRatio,2)),this.renderer.setSize(this.size.x,this.size.y,!1)}draw(){this.slow&&(this.fine&&this.sharpen(!1),clearTimeout(this.restTimer),this.restTimer=window.setTimeout(()=>{this.sharpen(!0),this.render()},350)),!this.wanted&&(this.wanted=!0,requestAnimationFrame(()=>{this.wanted=!1,this.render()}))}render(){let{x:e,y:t}=this.size,n=bn(this.moment.theta_deg),s=new G(-yt+yt*Math.cos(n)-55*Math.sin(n),0,yt*Math.sin(n)+55*Math.cos(n));this.falls&&(this.world.updateMatrixWorld(),s.lerp(this.fall.localToWorld(this.falls.cg.clone()),.75));let r=(e/t>1?285:285*Math.min(1.35,t/e))/this.zoom;if(this.camera.left=-r*e/t,this.camera.right=r*e/t,this.camera.top=r,this.camera.bottom=-r,this.from){let{round:l,up:c}=ks[this.from];this.azimuth=l===null?tf:this.moment.heading_deg+l,this.elevation=c}let[a,o]=[bn(this.azimuth),bn(this.elevation)];this.camera.position.copy(s).add(new G(Math.cos(a)*Math.cos(o),Math.sin(a)*Math.cos(o),Math.sin(o)).multiplyScalar(1e3)),this.camera.lookAt(s),this.camera.updateProjectionMatrix(),this.placeLoads(),this.world.updateMatrixWorld(),this.placeMarks(),this.renderer.render(this.world,this.camera),this.frames+=1}placeLoads(){let e=I.scene;e&&e.tip_points_mm.forEach((t,n)=>{let s=Math.max(0,this.moment.load_g[n]??0),r=e.axles[n<2?0:1],a=(n%2===0?1:-1)*(r.track_mm/2+r.width_mm/2+16);this.columns[n].position.set(t[0],a,0),this.columns[n].scale.z=Math.max(.5,s/12),this.columns[n].visible=this.falls===null})}placeMarks(){let e=this.moment.cg_mm??I.scene?.cg_mm??[0,0,0],t=this.fall.localToWorld(new G(...e));this.put(this.mark,t,0,0),this.put(this.tags.cg,t,20,0);let n=I.scene?.parts.find(o=>o.row>=0&&o.row===sf());if(this.tags.pack.hidden=!n,n){let[o,l]=this.drawnAt(n.cg_mm,n.carrier);this.move(this.tags.pack,o,l-15)}let s=this.plumbFoot(t),r=this.plumb.geometry.getAttribute("position");r.setXYZ(0,t.x,t.y,t.z),r.setXYZ(1,s.x,s.y,s.z),r.needsUpdate=!0,this.plumb.visible=this.falls===null,this.columns.forEach((o,l)=>{let{root:c,grams:h}=this.labels[l],d=Math.max(0,this.moment.load_g[l]??0);h.textContent=`${j(d,0)} g`,c.classList.toggle("light",d<1),c.hidden=!o.visible,this.put(c,o.localToWorld(new G(0,0,0)),0,10)}),this.handles.place(this.falls!==null),this.angle.textContent=`${j(this.moment.theta_deg,1)}°`;let a=bn(this.moment.theta_deg/2);this.put(this.angle,new G(110*Math.cos(a)-yt,-un,110*Math.sin(a)-jt),0,0)}plumbFoot(e){let t=this.table.worldToLocal(e.clone()),n=bn(this.moment.theta_deg);return t.x-=t.z*Math.tan(Math.min(n,bn(85))),t.z=1,this.table.localToWorld(t)}put(e,t,n,s){let r=t.clone().project(this.camera);this.move(e,(r.x+1)/2*this.size.x+n,(1-r.y)/2*this.size.y+s)}move(e,t,n){e.style.transform=`translate(${t.toFixed(1)}px, ${n.toFixed(1)}px) translate(-50%, -50%)`}},sf=()=>I.bench.rows.find(i=>i.name===I.bench.scene.pack)?.row??null;function lx(){return m("ul",{class:"stage-key","aria-label":"Colours by what a part rides on"},...Object.entries(jd).map(([i,e])=>m("li",{},te("svg",{viewBox:"0 0 10 10","aria-hidden":"true"},te("rect",{class:`part ${i}`,width:10,height:10})),e)))}function rf(i,e){if(i.length===0)return null;let t=0;for(;t<i.length-2&&i[t+1].theta_deg<e;)t++;let[n,s]=[i[t],i[Math.min(t+1,i.length-1)]],r=s.theta_deg-n.theta_deg,a=r>0?Math.max(0,Math.min(1,(e-n.theta_deg)/r)):0,o=(l,c)=>l.map((h,d)=>h+((c[d]??h)-h)*a);return{theta_deg:e,poses:n.poses.map((l,c)=>o(l,s.poses[c])),load_g:o(n.load_g,s.load_g),cg_mm:o(n.cg_mm,s.cg_mm)}}var bn=i=>i*Math.PI/180;function af(){let[i,e]=[Ee("stage"),Ee("stage-canvas")];return lh()?new Xo(i,e):new Vc(i,e)}var cx=["front left","front right","rear left","rear right"],of=9,Hc=class{about;rows;columns;values;constructor(e){let t=new DataView(e);if(new TextDecoder().decode(new Uint8Array(e,0,4))!=="CFP1")throw new Error("That is no recording.");let n=t.getUint32(4,!0),s=JSON.parse(new TextDecoder().decode(new Uint8Array(e,8,n)));this.about=s,this.rows=s.rows,this.columns=s.columns,this.values=new Float32Array(e,8+n)}get seconds(){return this.values[(this.rows-1)*this.columns]??0}rowAt(e){let[t,n]=[0,this.rows-1];for(;t<n;){let s=t+n+1>>1;(this.values[s*this.columns]??0)<=e?t=s:n=s-1}return t}events(){let e=[];for(let n=0;n<4;n++)for(let s=0;s<this.rows;s++){if(this.at(s).load_g[n]>=1)continue;let{theta:r,time:a}={theta:this.at(s).theta,time:this.values[s*this.columns]};if(Array.from({length:this.rows-s},(o,l)=>this.at(s+l).load_g[n]).every(o=>o<1)){e.push({what:`${cx[n]} lifts at ${j(r)}°`,time:a});break}}let t=this.at(this.rows-1).theta;return this.about.trial_outcome==="tips"&&e.push({what:`goes over at ${j(this.about.trial_deg??t)}°`,time:this.seconds}),this.about.trial_outcome==="slides"&&e.push({what:`slides away at ${j(this.about.trial_slide_deg??t)}°`,time:this.seconds}),e.sort((n,s)=>n.time-s.time)}get end(){if(this.about.trial_outcome==="slides")return"away";if(this.about.trial_outcome!=="tips")return null;let[e,t,n,s]=this.at(this.rows-1).load_g.map(a=>Math.max(0,a));return[["left",e+n],["right",t+s],["front",e+t],["rear",n+s]].sort((a,o)=>o[1]-a[1])[0][0]}at(e){let t=this.values.subarray(e*this.columns,(e+1)*this.columns),n=Array.from({length:7},(s,r)=>Array.from(t.subarray(of+7*r,of+7*r+7)));return{theta:t[1],load_g:Array.from(t.subarray(2,6)),cg_mm:[t[6],t[7],t[8]],poses:n}}},Zo=class{constructor(e,t){this.stage=e;this.tilt=t;Ne("bench",()=>{this.state&&this.state.truck!==I.bench.truck&&this.recording&&this.leave(),I.trials=this.state&&cf(this.state)?this.state.found:[],Zn("trials"),this.recording||this.draw()}),this.draw(),this.poll()}stage;tilt;recording=null;events=[];time=0;speed=1;running=!1;last=0;drawn=0;since=0;state=null;timer=0;rate=0;async poll(){clearTimeout(this.timer);try{this.take(await _e.trial())}catch{return}this.state?.state==="running"&&(this.timer=window.setTimeout(()=>{this.poll()},250))}take(e){let t=this.state;if(this.state=e,I.trials=cf(e)?e.found:[],Zn("trials"),t?.state==="running"&&e.state!=="running"){let n={done:`Trials done: ${e.done} of ${e.total}.`,stopped:`Trials stopped; ${e.done} of ${e.total} are kept.`,failed:`The trials failed: ${e.words}`};Le(n[e.state]??"",e.state==="failed"?"wrong":"note")}this.recording||this.draw()}async run(e){let{rail:t}=I.view;try{this.take(await _e.runTrial(e,t)),Le("The trial is running."),this.poll()}catch(n){if(n instanceof ke)Le(n.message,"wrong");else throw n}}async open(e){try{this.recording=new Hc(await _e.poses(e))}catch(t){return Le(t instanceof Error?t.message:String(t),"wrong")}this.events=this.recording.events(),this.playing(!0),this.recording.about.heading_deg!==null&&ct({heading:this.recording.about.heading_deg}),this.time=0,this.draw(),this.play()}playing(e){this.tilt.playing=e;for(let t of document.querySelectorAll(".sliders input, .ways button"))t.disabled=e}leave(){this.pause(),this.recording=null,this.playing(!1),ct({tilt:I.view.tilt}),this.draw()}play(){let e=this.recording;e&&(this.time>=e.seconds&&(this.time=0),this.running=!0,this.last=this.since=performance.now(),this.drawn=0,this.drawControls(),requestAnimationFrame(t=>this.step(t)))}pause(){this.running=!1,this.recording&&this.drawControls()}step(e){let t=this.recording;if(!(!t||!this.running)){if(this.time=Math.min(t.seconds,this.time+(e-this.last)/1e3*this.speed),this.last=e,this.show(),this.drawn+=1,e-this.since>500&&(this.rate=this.drawn*1e3/(e-this.since),this.since=e,this.drawn=0),this.time>=t.seconds)return this.pause();requestAnimationFrame(n=>this.step(n))}}show(){let e=this.recording,t=e.at(e.rowAt(this.time)),n=this.time>=e.seconds?e.end:null;ct({tilt:Math.max(0,Math.min(90,t.theta))}),this.stage.show({theta_deg:t.theta,poses:t.poses,load_g:t.load_g,cg_mm:t.cg_mm,heading_deg:I.view.heading},n);let s=t.load_g.filter(c=>c<1).length,r=s===0?"all four tyres down":`${s} of 4 tyres off the table`,a=n===null?"":n==="away"?"; it slides away":`; it goes over its ${n} tyres`;Ee("standing").textContent=`Replay: table at ${j(t.theta)}°, ${r}${a}.`,Ee("standing").classList.toggle("over",s>=2||n!==null);let o=document.getElementById("scrub");o&&(o.value=this.time.toFixed(2),o.setAttribute("aria-valuetext",`${j(this.time)} seconds, table at ${j(t.theta)} degrees${a}`));let l=document.getElementById("replay-clock");l&&(l.textContent=`${j(this.time,1)} s`)}draw(){if(this.recording)return this.drawControls();let e=this.state,t=e?.state==="running",s=I.trials.map(h=>m("option",{value:h.file},`${lf(h.heading_deg)}: ${hf(h)}`)),r=(e?.records??[]).map(h=>m("option",{value:h},`kept record ${h}`)),a=m("select",{id:"replay-choice","aria-label":"Recorded trial",class:"grow"},...s,...r),o=m("input",{type:"checkbox",id:"trial-rail","data-key":"rail",checked:I.view.rail});o.addEventListener("change",()=>ct({rail:o.checked}));let l=m("label",{class:"tick"},o,"against a rail"),c=m("div",{class:"tries",role:"toolbar","aria-label":"Virtual trials"},m("button",{type:"button",id:"trial-one","data-key":"trial-one",onclick:()=>{this.run([I.view.heading])}},"Try it this way"),m("button",{type:"button",id:"trial-four","data-key":"trial-four",onclick:()=>{this.run(Object.values(pt).map(h=>h.heading))}},"Try all four"),l);Ht(c,"button, input"),xe(Ee("trial"),t?m("progress",{class:"grow",max:e.total,value:e.done,"aria-label":"Trials done"}):null,t?m("span",{},`${e.done} of ${e.total}`):null,t?m("button",{type:"button",id:"trial-stop",onclick:()=>{_e.stopTrial().then(h=>this.take(h))}},"Stop"):null,t?null:c,s.length+r.length?a:null,s.length+r.length?m("button",{type:"button",id:"replay-open",onclick:()=>{this.open(a.value)}},"Replay"):null)}drawControls(){let e=this.recording,t=m("input",{type:"range",id:"scrub","data-key":"scrub",class:"grow",min:0,max:e.seconds.toFixed(2),step:.01,value:this.time.toFixed(2),"aria-label":"Moment of the recording"});t.addEventListener("input",()=>{this.time=Number(t.value),this.show()});let n=m("select",{id:"replay-speed","data-key":"speed","aria-label":"Speed"},...[.25,.5,1,2,4].map(s=>m("option",{value:s,selected:s===this.speed},s===1?"real time":s<1?`${s*100} %`:`${s} times`)));n.addEventListener("change",()=>{this.speed=Number(n.value)}),xe(Ee("trial"),m("button",{type:"button",id:"play","data-key":"play",onclick:()=>this.running?this.pause():this.play()},this.running?"Pause":"Play"),t,m("output",{id:"replay-clock"},`${j(this.time)} s`),n,m("button",{type:"button",id:"replay-leave",onclick:()=>this.leave()},"Back to the sliders"),m("div",{class:"events",role:"group","aria-label":"Moments of the recording"},...this.events.map(({what:s,time:r})=>m("button",{type:"button","data-key":`event-${r.toFixed(2)}-${s}`,onclick:()=>{this.pause(),this.time=r,this.show()}},s))),m("p",{},`Recorded trial${e.about.heading_deg===null?"":`, ${lf(e.about.heading_deg)}`}: ${hf(e.about)}.`)),this.show()}};function lf(i){let e=Object.values(pt).find(t=>t.heading===i);return e?e.name.toLowerCase():`turned ${j(i,0)}°`}var cf=i=>i.truck===I.bench.truck&&i.surface===I.bench.answers.surface;function hf(i){let e=i.hold==="rail"?" against a rail":"";if(i.trial_outcome==="tips"){let[t,n]=i.trial_ci_deg??[null,null];return`tips${e} at ${j(i.trial_deg)}°, ${j(t)} to ${j(n)}`}return i.trial_outcome==="slides"?`slides away at ${j(i.trial_slide_deg)}°`:i.trial_outcome}var hx={rear:"its rear tyres",left:"its left tyres",front:"its front tyres",right:"its right tyres"},Jo=class{constructor(e){this.stage=e;let[t,n]=[Ee("tilt"),Ee("turn")];t.addEventListener("input",()=>ct({tilt:Number(t.value)})),n.addEventListener("input",()=>ct({heading:Number(n.value)%360})),Ee("ways").append(...Object.values(pt).map(({heading:r,name:a})=>m("button",{type:"button","data-heading":r,onclick:()=>ct({heading:r})},a))),Ht(Ee("ways")),Ne("view",()=>this.follow()),Ne("shown",()=>this.fetchPath()),Ne("path",()=>this.pose());let s=-1;Ne("view",()=>{s!==I.view.heading&&this.fetchPath(),s=I.view.heading})}stage;asked=null;timer=0;wasOver=!1;playing=!1;follow(){let{tilt:e,heading:t}=I.view,[n,s]=[Ee("tilt"),Ee("turn")];n.value=String(e),s.value=String(t),Ee("tilt-value").textContent=`${j(e)}°`,Ee("turn-value").textContent=`${j(t,0)}°`,n.setAttribute("aria-valuetext",`${j(e)} degrees`),s.setAttribute("aria-valuetext",`${j(t,0)} degrees to the left from nose uphill`);for(let r of Ee("ways").querySelectorAll("button"))r.setAttribute("aria-pressed",String(Number(r.dataset.heading)===t));this.pose()}fetchPath(){if(clearTimeout(this.timer),I.trying||!I.bench)return this.pose();I.path||this.pose(),this.timer=window.setTimeout(()=>{this.asked?.abort(),this.asked=new AbortController,_e.path(I.view.heading,this.asked.signal).then(e=>{I.path=e,this.pose()},e=>{e instanceof ke&&(e.status===409||e.status===0)||e instanceof DOMException||Le(String(e instanceof Error?e.message:e),"wrong")})},15)}pose(){if(this.playing)return;let{tilt:e,heading:t}=I.view,n=I.path,s=n!==null&&n.surface===I.answers?.surface,r=n!==null&&s&&Math.abs(n.heading_deg-t)<3&&!I.trying,a=n!==null&&n.rail_deg!==null&&!I.view.rail,o=(a?n?.goes_at_deg:n?.compliant_deg??n?.rail_deg)??90,l=n&&r?rf(n.points,Math.min(e,o)):null,c=n!==null&&r&&e>o?a?"away":n.over:null;this.stage.show({theta_deg:e,heading_deg:t,poses:l?.poses??[],load_g:c?[0,0,0,0]:l?.load_g??I.answers?.numbers.corner_g??[0,0,0,0],cg_mm:l?.cg_mm??null},c);let h=Ee("standing"),d=n!==null&&r&&e>(n.goes_at_deg??90);n&&r?h.textContent=ux(n,e):s||(h.textContent="Working out how it stands…"),h.classList.toggle("over",d),d&&!this.wasOver&&Le(h.textContent??""),this.wasOver=d;let u=`The truck on the table, tilted ${j(e)} degrees, turned ${j(t,0)}. ${h.textContent??""} Arrow keys look round it, Enter takes the picked part.`;Ee("stage-canvas").setAttribute("aria-label",u)}};function ux(i,e){let t=hx[i.over]??i.over,{compliant_deg:n,rail_deg:s,slide_deg:r,goes_at_deg:a}=i;if(a===null||n===null&&s===null)return"No tip was found on this heading.";let o=s!==null&&r!==null;if(e<=a){let c=o?`its tyres slide; against a rail it tips over ${t} at ${j(s)}°`:`it tips over ${t}`;return`Stands, with ${fx(i,e,a)} in hand before ${dx(i)?`it slides or tips over ${t}, which is too close to call`:c}.`}if(!o)return`Gone over ${t}. It tips at ${j(n)}°.`;let l=I.view.rail?"Held by a rail as here, it has":"Against a rail it would have";return e<=s?`Slides away at ${j(r)}°. ${l} ${j(s-e)}° in hand before it tips over ${t}.`:`Gone. It slides away at ${j(r)}°, and tips over ${t} at ${j(s)}° where a rail holds it.`}var uf=i=>I.trying?void 0:I.answers?.ways?.find(e=>e.heading_deg===i.heading_deg),dx=i=>uf(i)?.outcome==="too close to call";function fx(i,e,t){let[n,s]=uf(i)?.goes_at_range_deg??[null,null],r=`${j(t-e)}°`;return n===null||s===null?r:n<e?`${r} (perhaps nothing, at most ${j(s-e)}°)`:`${r} (${j(n-e)} to ${j(s-e)})`}var Ko=null,df=()=>Ko!==null,ff=i=>Ko?.(i),Cr=1e4,px=i=>Math.round(i*2)/2;function mx(i){let e=I.measures.find(s=>s.key==="chassis.raise_mm")?.value??0;if(i==="chassis")return{at:[0,0,e],out:1};let t=I.scene.axles[i.includes("rear")?1:0];if(i.endsWith("axle"))return{at:[t.x_mm,0,t.radius_mm],out:1};let n=i.endsWith("right");return{at:[t.x_mm,(n?-1:1)*t.track_mm/2,t.radius_mm],out:n?-1:1}}async function pf(i,e,t,n=""){let s;try{s=await _e.partForm()}catch(P){if(!(P instanceof ke))throw P;return Le(P.message,"wrong")}let r=P=>{let X=new Set(I.bench.rows.map(re=>re.name)),q=1;for(;X.has(q>1?`${P} ${q}`:P);)q+=1;return q>1?`${P} ${q}`:P},a=I.bench.rows.find(P=>P.name===n),o=(P,X,q)=>m("input",{id:`new-${P}`,"aria-label":X,"data-key":`new-${P}`,...q}),l=(P,X,q,re={})=>o(P,X,{type:"number",step:"any",value:q,...re}),c=o("name","Name",{required:!0,maxlength:60,value:r(n?"weighed part":"brass weight"),pattern:'[^.\\[\\]"]+'}),h=l("mass","Mass of one, g",20,{min:.001,max:1e5,required:!0}),d=m("select",{id:"new-material","aria-label":"Weighed, or out of what"},m("option",{value:""},"as weighed"),...s.materials.map(P=>m("option",{value:P},P))),u=l("price","Price of one",0,{min:0,max:1e7}),f=m("select",{id:"new-on","aria-label":"Rides on"},...I.bench.carriers.filter(P=>!P.endsWith("link")).map(P=>m("option",{value:P,selected:P===a?.on},P))),g=l("count","How many in a row",1,{min:1,max:500,step:1,required:!0}),v=["ahead","to the left","up"].map((P,X)=>l(`step${X}`,`Each further on by, ${P}, mm`,0,{min:-Cr,max:Cr})),_=o("mirror","Also on the other side",{type:"checkbox"}),p=a?.at_mm??[0,0,60],M=["x","y","z"].map((P,X)=>l(P,["Ahead, mm","To the left, mm","Up, mm"][X],p[X],{min:-Cr,max:Cr,required:!0})),C=["x","y","z"].map(P=>l(`turn-${P}`,`Turned about ${P}, degrees`,0,{min:-360,max:360})),S=m("select",{id:"new-kind","aria-label":"Shape"},m("option",{value:""},"a point"),...s.kinds.filter(P=>P.kind!=="mesh"||s.meshes.length).map(P=>m("option",{value:P.kind,selected:P.kind==="box"},P.kind))),T=m("select",{id:"new-out-of","aria-label":"Was counted in"},m("option",{value:""},"nothing: it is new"),...s.lumps.map(P=>m("option",{value:P,selected:P===n},P))),A=m("div",{class:"new-shape"}),x=m("div",{class:"new-line",hidden:!0},m("span",{},"each on by"),...v,m("span",{class:"soft"},"mm ahead, left, up")),E=()=>s.kinds.find(P=>P.kind===S.value),H=()=>xe(A,...(E()?.fields??[]).flatMap(P=>{let X=`${P.key.replace(/_(mm|g_per_m)$/,"").replace(/_/g," ")}${P.key.endsWith("_mm")?", mm":P.key==="g_per_m"?", g per m":""}`,q=Array.isArray(P.start)?P.start:[P.start];if(P.key==="file"||P.choices.length){let re=P.key==="file"?s.meshes:P.choices;return[m("label",{},X,m("select",{"data-field":P.key,"aria-label":`${X}: ${P.meaning}`},...re.map(Me=>m("option",{value:Me,selected:Me===P.start},Me))))]}return[m("label",{},X,...q.map((re,Me)=>m("input",{type:"number",step:"any",min:.001,max:Cr,required:P.needed,value:re??"","data-field":P.key,"aria-label":P.many>1?`${X}, ${["ahead","across","up"][Me]}`:`${X}: ${P.meaning}`})))]})),F=()=>{let P=E();if(!P)return null;let X={kind:P.kind};for(let q of P.fields){let Me=[...A.querySelectorAll(`[data-field="${q.key}"]`)].map(K=>K instanceof HTMLSelectElement?K.value:K.value===""?null:Number(K.value));Me.some(K=>K===null)||(X[q.key]=q.many>1?Me:Me[0])}return X},N=()=>S.value==="strip"&&A.querySelector('[data-field="g_per_m"]')?.value!=="",V=()=>{let P={name:c.value.trim(),on:f.value};d.value===""&&!N()&&(P.mass_g=Number(h.value)),d.value&&(P.material=d.value);let q=F();return q&&(P.shape=q),P.at_mm=M.map(re=>Number(re.value)),C.some(re=>Number(re.value))&&(P.turn_deg=C.map(re=>Number(re.value))),Number(g.value)>1&&Object.assign(P,{count:Number(g.value),step_mm:v.map(re=>Number(re.value))}),_.checked&&(P.mirror=!0),Number(u.value)&&(P.price=Number(u.value)),{do:"add",part:P,...T.value?{out_of:T.value}:{}}},Z=()=>/wheel|left|right/.test(f.value),w=()=>{x.hidden=Number(g.value)<=1,_.disabled=Z(),h.disabled=d.value!==""||N(),d.disabled=S.value===""||N(),S.value===""&&(d.value=""),M[1].setAttribute("aria-label",Z()?"Outwards, mm":"To the left, mm"),k.textContent=Z()?"outwards":"left",I.view.row=I.bench.rows.length,z.checkValidity()&&mi([V()])},U=()=>{Ko=null,Pr=null,t.classList.remove("placing"),i.replaceChildren(),i.hidden=!0;for(let P of e)P.hidden=!1},k=m("span",{class:"soft"},"left"),B=(P,...X)=>m("div",{class:"new-line"},m("span",{class:"new-label"},P),...X),z=m("form",{class:"new-part","aria-label":"A new part"},m("h3",{},n?`A part out of ${n}`:"A new part"),B("Name",c,m("label",{},"price ",u,` ${s.currency}`)),B("Shape",S,A),B("Weighs",h,m("span",{},"g,"),d),B("Rides on",f,m("label",{class:"tick"},_,"also on the other side")),B("Stands",M[0],m("span",{class:"soft"},"ahead"),M[1],k,M[2],m("span",{class:"soft"},"up, mm")),m("p",{class:"about"},"Click in a drawing to put it there."),B("How many",g,x),m("details",{},m("summary",{},"Turned"),B("by, degrees",...C.flatMap((P,X)=>[P,m("span",{class:"soft"},`about ${"xyz"[X]}`)]))),B("Counted in",T),m("p",{class:"about"},"What was weighed on its own and stood in a lump until now comes out of it: mass and CG of the whole stay as they are."),m("div",{class:"bar"},m("button",{type:"submit",class:"main",id:"new-add"},"Add it"),m("button",{type:"button",id:"new-leave",onclick:()=>{U(),ct({row:null}),Sn(),document.getElementById("add-part")?.focus()}},"Leave it")));S.addEventListener("change",()=>{H()}),z.addEventListener("input",w),z.addEventListener("submit",P=>{P.preventDefault();let X=c.value.trim(),q=T.value?`took ${X} out of ${T.value}`:`added ${X}`;en([V()],q).then(re=>{re&&(U(),ct({row:I.bench.rows.find(Me=>Me.name===X)?.row??null}),document.getElementById("add-part")?.focus())})}),Ko=P=>{let{at:X,out:q}=mx(f.value);P.forEach((re,Me)=>{re!==null&&(M[Me].value=String(px((re-X[Me])*(Me===1?q:1))))}),w()},Pr={file:I.bench.file,close:U};for(let P of e)P.hidden=!0;xe(i,z),i.hidden=!1,t.classList.add("placing"),H(),w(),c.focus(),c.select()}var Pr=null;Ne("bench",()=>{Pr&&Pr.file!==I.bench.file&&Pr.close()});var jo=16,mf=[60,32],Wc={light:"",helps:[0,0,0],hurts:[0,0,0]};function gx(){let i=document.documentElement.dataset.light??"";if(Wc.light!==i){let e=getComputedStyle(document.documentElement),t=n=>{let s=e.getPropertyValue(n).trim();return[1,3,5].map(r=>parseInt(s.slice(r,r+2),16))};Wc={light:i,helps:t("--helps"),hurts:t("--hurts")}}return Wc}function $c(i,e,t="chassis"){let n=s=>{let r=I.answers.gain[s]?.[t];return r?r[0]+r[1]*e[0]+r[2]*e[1]+r[3]*e[2]:0};return i==="all"?Math.min(...Object.keys(pt).map(n)):n(i)}var Ir=class{constructor(e){this.face=e;let t=e==="side"?"Side view, nose to the right":"Rear view";this.parts=new Kn(e,1,!0),this.root=te("svg",{class:"view",role:"group","aria-label":t},this.field,this.ground,this.parts.root,this.ghost,this.truck,this.grips),this.figure=m("figure",{},this.root,m("figcaption",{},t)),[this.canvas.width,this.canvas.height]=mf,Ne("bench",()=>this.box=this.frame()),Ne("shown",ns(()=>this.draw(),()=>this.held?0:zs()?2e3:50)),Ne("pick",()=>this.draw());let n=I.view.direction;Ne("view",()=>{I.view.direction!==n&&this.paintField(),n=I.view.direction}),this.box=this.frame(),this.draw(),this.root.addEventListener("pointermove",s=>this.drag(s));for(let s of["pointerup","pointercancel"])this.root.addEventListener(s,()=>this.drop());this.root.addEventListener("click",s=>{if(df()){let[a,o]=this.point(s);return ff(this.face==="side"?[a,null,-o]:[null,-a,-o])}let r=s.target.getAttribute("data-row");r!==null&&!this.held&&ct({row:Number(r)})})}face;figure;root;field=te("image",{preserveAspectRatio:"none"});ground=te("g");parts;truck=te("g");grips=te("g");ghost=te("g",{class:"ghost"});canvas=document.createElement("canvas");box=[0,0,1,1];held=null;frame(){let[e,,t]=qr(I.scene,this.face),n=Math.min(qr(I.scene,"side")[1],qr(I.scene,"rear")[1]);return[e-jo,n-jo,t+jo,jo]}draw(){let e=I.scene,[t,n,s,r]=this.box;this.root.setAttribute("viewBox",`${t} ${n} ${s-t} ${r-n}`),this.figure.style.flexGrow=String(Math.round(s-t));let a=[te("path",{class:"ground",d:`M${t} 0H${s}`})];for(let c of e.axles)if(this.face==="side")a.push(te("circle",{class:"tyre",cx:c.x_mm,cy:-c.radius_mm,r:c.radius_mm}));else for(let h of[-1,1])a.push(te("rect",{class:"tyre",x:(h*c.track_mm-c.width_mm)/2,y:-2*c.radius_mm,width:c.width_mm,height:2*c.radius_mm}));this.parts.draw(e.parts,I.view.row),this.drawGhost(),this.ground.replaceChildren(...a.splice(0));for(let c of this.face==="side"?[e.wedge_mm[0],e.wedge_mm[2]]:[e.wedge_mm[1],e.wedge_mm[3]])a.push(this.wedge(c));let[o,l]=kn[this.face](e.cg_mm);a.push(te("g",{transform:`translate(${o} ${l})`},te("circle",{r:7,class:"cg-back"}),te("path",{d:"M0 0V-7A7 7 0 0 1 7 0ZM0 0V7A7 7 0 0 1 -7 0Z",class:"cg-dark"}),te("circle",{r:7,class:"cg-ring"}))),this.truck.replaceChildren(...a),I.trying||this.paintField(),this.drawGrips()}drawGhost(){let e=I.bench.before?.scene;if(!e)return this.ghost.replaceChildren();let t=new Set(I.scene.parts.map(Bn)),[n,s]=kn[this.face](e.cg_mm);this.ghost.replaceChildren(...e.parts.filter(r=>r.shape&&!t.has(Bn(r))).map(r=>te("path",{d:Gi(Xr(r,this.face))})),te("path",{d:`M${n-9} ${s}H${n+9}M${n} ${s-9}V${s+9}`}))}wedge([e,t]){let n=this.face==="rear"?-1:1,s=(-this.box[1]+40)/Math.max(1,t[1]-e[1]),[r,a]=[(t[0]-e[0])*s,(t[1]-e[1])*s];return te("path",{class:"wedge",d:`M${n*e[0]} ${-e[1]}L${n*(e[0]+r)} ${-(e[1]+a)}`})}paintField(){let[e,t,n,s]=this.box,[r,a]=mf,{helps:o,hurts:l}=gx(),c=new ImageData(r,a),h=I.scene.cg_mm;for(let d=0;d<a;d++)for(let u=0;u<r;u++){let[f,g]=[e+(u+.5)/r*(n-e),t+(d+.5)/a*(s-t)],v=this.face==="side"?[f,h[1],-g]:[h[0],-f,-g],_=g>0?0:$c(I.view.direction,v),[p,M,C]=_>0?o:l,S=Math.min(6,Math.ceil(Math.abs(_)/.05));c.data.set([p,M,C,g>0?0:S*24],4*(d*r+u))}this.canvas.getContext("2d").putImageData(c,0,0),this.field.setAttribute("href",this.canvas.toDataURL());for(let[d,u]of Object.entries({x:e,y:t,width:n-e,height:s-t}))this.field.setAttribute(d,String(u))}movable(){let e=I.bench.rows.find(n=>n.row===I.view.row),t=I.scene.parts.find(n=>n.row===I.view.row);return e&&t&&e.at_mm&&e.here?{part:t,row:e}:null}drawGrips(){let e=this.movable();if(!e)return this.grips.replaceChildren();let[t,n]=kn[this.face](e.part.cg_mm),s=this.grips.firstElementChild;s||(s=te("g",{role:"slider",tabindex:0,"data-key":`grip-${this.face}`,"aria-valuenow":0},te("circle",{r:18,class:"handle-reach"}),te("circle",{r:7,class:"handle"})),s.addEventListener("pointerdown",a=>this.take(a)),s.addEventListener("keydown",a=>this.nudge(a)),this.grips.append(s)),s.setAttribute("transform",`translate(${t} ${n})`);let r=e.row.at_mm;s.setAttribute("aria-label",`${e.row.name}, ${this.face==="side"?"along and up":"across and up"}: arrow keys move it a millimetre`),s.setAttribute("aria-valuetext",`${j(r[0])} ahead, ${j(r[1])} left, ${j(r[2])} up`)}point(e){let t=new DOMPoint(e.clientX,e.clientY).matrixTransform(this.root.getScreenCTM().inverse());return[t.x,t.y]}take(e){let t=this.movable();t&&(e.preventDefault(),this.root.setPointerCapture(e.pointerId),this.held={...t,from:this.point(e),moved:[0,0]})}drag(e){if(!this.held)return;let[t,n]=this.point(e),s=[Math.round(t-this.held.from[0]),Math.round(n-this.held.from[1])];s[0]===this.held.moved[0]&&s[1]===this.held.moved[1]||(this.held.moved=s,mi(this.moveEdit(this.held.row,this.held.part,s)))}drop(){let e=this.held;e&&(this.held=null,!(e.moved[0]===0&&e.moved[1]===0)&&en(this.moveEdit(e.row,e.part,e.moved),`moved ${e.row.name}`).then(t=>{t||Sn()}))}nudge(e){let t=e.shiftKey?10:1,s={ArrowLeft:[-t,0],ArrowRight:[t,0],ArrowUp:[0,-t],ArrowDown:[0,t]}[e.key],r=this.movable();!s||!r||(e.preventDefault(),en(this.moveEdit(r.row,r.part,s),`moved ${r.row.name}`))}moveEdit(e,t,[n,s]){let r=e.at_mm,a=(l,c)=>({do:"set",part:e.name,key:`at_mm.${l}`,value:Number(c.toFixed(3))}),o=[];return n&&this.face==="side"&&o.push(a("x",r[0]+n)),n&&this.face==="rear"&&o.push(a("y",r[1]+(t.mirrored?n:-n))),(s||!n)&&o.push(a("z",r[2]-s)),o}};var gf=1e4;function vf(i){i.classList.add("weights");let e=m("div",{class:"views"}),t=m("div",{id:"picked"}),n=m("div",{class:"parts-holder"}),s=m("div",{id:"measures",hidden:!0});e.append(new Ir("side").figure,new Ir("rear").figure);let r=m("div",{class:"below"},s,n),a=m("div",{id:"new-part",class:"below",hidden:!0}),o=(g="")=>{pf(a,[t,l,r],e,g)},l=_x(s,r,()=>o());i.append(xx(),e,t,l,r,a);let c=()=>xe(t,yx(o)),h=()=>{let{scrollTop:g}=r;xe(n,bx()),r.scrollTop=g},d="";Ne(["bench","pick"],()=>{let g=I.bench.rows.find(_=>_.row===I.view.row),v=JSON.stringify(g??null);v!==d&&c(),d=v}),Ne("bench",h),Ne("shown",()=>bf()),Ne("shown",ns(vx,()=>100)),Ne("bench",()=>xe(s,_f())),c(),h(),xe(s,_f()),Ne("pick",()=>{for(let g of n.querySelectorAll("tr[data-row]"))g.classList.toggle("picked",Number(g.dataset.row)===I.view.row);requestAnimationFrame(f)});let f=()=>{let g=n.querySelector("tr.picked");if(!g||r.scrollHeight<=r.clientHeight)return;let[v,_]=[g.getBoundingClientRect(),r.getBoundingClientRect()],p=28;v.top<_.top+p?r.scrollTop-=_.top+p-v.top:v.bottom>_.bottom&&(r.scrollTop+=v.bottom-_.bottom)}}function _x(i,e,t){let n=m("button",{type:"button",id:"measures-fold","aria-expanded":"false","aria-controls":"measures"},"Measures of the truck");n.addEventListener("click",()=>{i.hidden=!i.hidden,n.setAttribute("aria-expanded",String(!i.hidden)),e.scrollTop=0});let s=m("div",{class:"bar list-bar",role:"toolbar","aria-label":"Parts and measures"},n,m("button",{type:"button",id:"add-part",onclick:t},"Add a part"));return Ht(s),s}function vx(){let i=document.activeElement,e=(s,r)=>{let a=document.querySelector(`#leaf-weights [data-key="${CSS.escape(s)}"]`);!a||a===i||a.value===r||(a.value=r)};for(let s of I.rows)e(`mass_g-${s.row}`,xf(s)),s.at_mm?.forEach((r,a)=>e(`at${a}-${s.row}`,String(r)));let t=(s,r)=>{let a=document.getElementById(`dial-${s}`);!a||a===i||r===void 0||Number(a.value)===r||(a.value=String(r),yf(a,r))};for(let s of I.measures)t(s.key,s.value);let n=I.rows.find(s=>s.row===I.view.row);n&&(t("mass",n.mass_g),n.at_mm?.forEach((s,r)=>t(`at${r}`,s)))}var xf=i=>i.mass_g.toFixed(i.mass_g<10?2:1);function yf(i,e){let t=`${j(e,Number(i.dataset.digits))} ${i.dataset.unit}`;i.setAttribute("aria-valuetext",t);let n=document.querySelector(`output[for="${CSS.escape(i.id)}"]`);n&&(n.textContent=t)}function xx(){let i=s=>()=>{ct({direction:s});for(let r of n.querySelectorAll("button"))r.setAttribute("aria-pressed",String(r.dataset.direction===s))},e=(s,r)=>m("button",{type:"button","data-direction":s,"aria-pressed":String(s===I.view.direction),onclick:i(s)},r),t=m("span",{},I.answers.gain_of==="compliant"?"springs and tyres at work":"if nothing gives"),n=m("div",{class:"bar",role:"toolbar","aria-label":"Where a gram helps, for which way to stand"},e("all","All ways"),...Object.entries(pt).map(([s,{short:r}])=>e(s,r)),m("span",{class:"gain-key"},m("i",{class:"helps"}),"helps",m("i",{class:"hurts"}),"hurts, a step is 0.05° per 10 g,",t));return Ht(n),Ne("shown",()=>{t.textContent=I.answers.gain_of==="compliant"?"springs and tyres at work":"if nothing gives"}),n}function Xc(i,e,t,n,s,r){let[a,o,l]=s,c=`dial-${i}`,h=Math.max(ch(l),Math.min(3,String(n).split(".")[1]?.length??0),t==="mm"||t==="g"?1:0),d=`${j(n,h)} ${t}`,u=m("input",{type:"range",id:c,"data-key":c,"data-digits":h,"data-unit":t,min:Math.min(a,n),max:Math.max(o,n),step:"any",value:n,"aria-valuetext":d}),f=()=>Number((Math.round(Number(u.value)/l)*l).toFixed(4));return u.addEventListener("keydown",g=>{let v={ArrowRight:l,ArrowUp:l,ArrowLeft:-l,ArrowDown:-l,PageUp:10*l,PageDown:-10*l}[g.key];v!==void 0&&(g.preventDefault(),u.value=String(f()+v),u.dispatchEvent(new Event("input")),u.dispatchEvent(new Event("change")))}),u.addEventListener("input",()=>{yf(u,f()),mi(r(f()).edit)}),u.addEventListener("change",()=>{let{edit:g,what:v}=r(f());en(g,v)}),[m("label",{for:c},e),u,m("output",{for:c},d)]}function yx(i){let e=I.bench.rows.find(s=>s.row===I.view.row);if(!e)return m("p",{class:"text soft"},"Pick a part in the list, the drawings or on the table to weigh and move it.");let t=m("div",{class:"one"},m("h3",{},e.name));if(e.here){let s=Math.max(60,Math.ceil(e.mass_g*2/50)*50);t.append(...Xc("mass","Mass","g",e.mass_g,[Math.min(1,e.mass_g),s,e.mass_g<20?.1:1],r=>({edit:[{do:"set",part:e.name,key:"mass_g",value:r}],what:`mass of ${e.name} ${j(r)} g`}))),e.at_mm&&["Ahead","To the left","Up"].forEach((r,a)=>{let o=e.at_mm;t.append(...Xc(`at${a}`,r,"mm",o[a],[o[a]-60,o[a]+60,.5],l=>({edit:[{do:"set",part:e.name,key:`at_mm.${"xyz"[a]}`,value:l}],what:`moved ${e.name}`})))})}let n=m("p",{class:"gain-words about",id:"gain-words"});return t.append(n),e.here&&e.at_mm&&e.count===1&&!e.mirror&&t.append(m("button",{type:"button",class:"about",id:"take-out",title:"A part that was weighed on its own since: mass and CG of the whole stay as they are",onclick:()=>i(e.name)},"Take a part out of it…")),e.here||t.append(m("p",{class:"about"},"This part stands in an included file; edit it there.")),queueMicrotask(bf),t}function bf(){let i=document.getElementById("gain-words"),e=I.scene.parts.filter(n=>n.row===I.view.row);if(!i||e.length===0)return;let t=[0,1,2].map(n=>e.reduce((s,r)=>s+r.cg_mm[n],0)/e.length);xe(i,"10 g more here:",...Object.entries(pt).map(([n,{short:s}])=>m("span",{},`${s} `,m("b",{},`${vt($c(n,t,e[0].carrier),2)}°`))))}function bx(){let i=["Part","Mass, g","Ahead","Left","Up","Rides on","",""],e=m("table",{class:"parts",id:"parts"},m("caption",{class:"visually-hidden"},"Parts of the truck; places in mm from where the part's carrier counts. Arrow keys go through the list."),m("thead",{},m("tr",{},...i.map((t,n)=>m(t?"th":"td",t?{scope:"col",class:n>0&&n<5?"n":""}:{},t)))),m("tbody",{},...I.bench.rows.map(Sx)));return ss(e,"tr",Mx),e}var Mx={key:""};function Sx(i){let e=()=>ct({row:i.row}),t=(a,o,l,c,h,d={})=>{let u=m("input",{type:c,value:l,"aria-label":`${o} of ${i.name}`,"data-key":`${a}-${i.row}`,disabled:!i.here,onfocus:e,...d});return u.addEventListener("change",()=>u.checkValidity()?(en([{do:"set",part:i.name,key:a.startsWith("at")?`at_mm.${"xyz"[Number(a[2])]}`:a,value:h(u.value)}],`${o.toLowerCase()} of ${i.name}`).then(f=>{f||u.setAttribute("aria-invalid","true")}),!0):u.reportValidity()),u},n=(a,o)=>m("td",{class:"n"},i.at_mm?t(`at${a}`,o,String(i.at_mm[a]),"number",Number,{step:"any",min:-gf,max:gf,required:!0}):"–"),s=m("select",{"aria-label":`What ${i.name} rides on`,"data-key":`on-${i.row}`,disabled:!i.here||i.at_mm===null,onfocus:e},...I.bench.carriers.filter(a=>i.at_mm===null===a.endsWith("link")).map(a=>m("option",{value:a,selected:a===i.on},a)));s.addEventListener("change",()=>{en([{do:"set",part:i.name,key:"on",value:s.value}],`${i.name} rides on ${s.value}`)});let r=m("button",{type:"button","aria-label":`Remove ${i.name}`,"data-key":`remove-${i.row}`,disabled:!i.here,title:"Remove",onclick:()=>{en([{do:"remove",part:i.name}],`removed ${i.name}`)}},"✕");return m("tr",{class:`${i.row===I.view.row?"picked":""}${i.weighed?"":" computed"}`,"data-row":i.row},m("td",{},t("name","Name",i.name,"text",a=>a,{required:!0,maxlength:60})),m("td",{class:"n"},t("mass_g","Mass",xf(i),"number",Number,{step:"any",min:.001,max:1e5,required:!0,title:i.weighed?"as weighed":"from shape and material"})),n(0,"Place ahead"),n(1,"Place to the left"),n(2,"Height"),m("td",{},s),m("td",{class:"times"},i.pieces>1?`× ${i.pieces}`:""),m("td",{},r))}function _f(){let i=e=>Xc(e.key,e.name,e.unit,e.value,[e.low,e.high,e.step],t=>({edit:[{do:"measure",key:e.key,value:t}],what:`${e.name.toLowerCase()} ${j(t,2)} ${e.unit}`}));return m("div",{class:"one"},m("h3",{},"Measures of the truck"),...I.bench.measures.flatMap(i))}var wx=[["file","A file"],["scale","The scale"],["board","The board"],["agree","They agree"]],qc="crossfall-begin";function Tx(){try{return JSON.parse(localStorage.getItem(qc)??"null")}catch{return null}}function Mf(i){try{i?localStorage.setItem(qc,JSON.stringify(i)):localStorage.removeItem(qc)}catch{}}function Sf(i){let e,t="file",n="",s={},r=m("div",{class:"stages",role:"toolbar","aria-label":"Steps to a file that agrees"}),a=m("div",{class:"asks","aria-live":"polite"});i.append(r,a);for(let[w,U]of wx)r.append(m("button",{type:"button","data-stage":w,onclick:()=>h(w)},U));Ht(r);let o=w=>{if(!(w instanceof ke))throw w;return w.sentences.slice(0,3).join(" ")},l=()=>{let w={file:!0,scale:e.weighed,board:e.tilted,agree:!1};for(let U of r.querySelectorAll("button")){let k=U.dataset.stage;U.setAttribute("aria-pressed",String(k===t)),U.classList.toggle("done",w[k]),U.setAttribute("aria-label",`${U.textContent}${w[k]?", done":""}`)}},c=async()=>{try{return e=await _e.wizard(),n!==I.bench.file&&(s={}),n=I.bench.file,!0}catch(w){return xe(a,m("p",{class:"text wrong"},o(w))),!1}},h=w=>{t=w,l(),{file:g,scale:A,board:H,agree:F}[w]()},d=w=>w?m("p",{class:"caution",role:"note"},e.cautions[w]??""):null,u=w=>{let U=e.pictures[w];if(!U)return null;let k=new DOMParser().parseFromString(U.replace("<svg ",'<svg xmlns="http://www.w3.org/2000/svg" '),"image/svg+xml");return m("div",{class:"pict"},document.importNode(k.documentElement,!0))},f=(w,U,k,B,z=()=>{})=>{let P=w[U];if(z(U),!P)return B();let X=m("p",{class:"wrong",role:"alert",id:"ask-wrong"}),q=K=>f(w,K,k,B,z),re=P.choices.length?m("select",{id:"ask-value","aria-label":P.title},...P.choices.map(K=>m("option",{value:K,selected:K===P.value},K))):m("input",{id:"ask-value",type:"text",inputmode:"decimal",autocomplete:"off","aria-label":`${P.title}${P.unit?`, ${P.unit}`:""}`,"aria-describedby":"ask-wrong",value:P.value}),Me=m("form",{class:"ask-one"},m("p",{class:"soft"},`${k}, ${U+1} of ${w.length}`),m("h3",{tabindex:-1},P.title),P.help?m("p",{},P.help):null,d(P.caution),u(P.picture),m("div",{class:"new-line"},re,m("span",{class:"soft"},P.unit)),X,m("div",{class:"bar"},m("button",{type:"submit",class:"main",id:"ask-next"},"Next"),U>0?m("button",{type:"button",id:"ask-back",onclick:()=>q(U-1)},"Back"):null,P.needed?null:m("button",{type:"button",id:"ask-skip",onclick:()=>{P.take("").then(()=>q(U+1))}},"Leave it out")));Me.addEventListener("submit",K=>{K.preventDefault();let ve=re.value.trim();if(!ve&&P.needed)return X.textContent="This one is needed.",re.setAttribute("aria-invalid","true"),re.focus();P.take(ve).then(Te=>{if(Te===null)return q(U+1);X.textContent=Te,re.setAttribute("aria-invalid","true"),re.focus()})}),xe(a,Me),re.focus(),re instanceof HTMLInputElement&&re.select()},g=()=>{let w=Tx();xe(a,m("h3",{},"A truck that has no file yet"),m("p",{class:"text"},"A kitchen scale, a ruler and a block of 80 to 120 mm make one, in about ten minutes. Every question shows what to do; what you cannot measure now may be left out and added later."),...["pack","block","dust","models"].map(d),m("div",{class:"bar"},m("button",{type:"button",class:"main",id:"begin-new",onclick:()=>v(null)},"Begin a new truck"),w?m("button",{type:"button",id:"begin-on",onclick:()=>v(w)},`Go on with ${w.name}`):null),m("h3",{},`${I.bench.file.replace(".toml","")} is on the bench`),m("p",{class:"text"},e.begun&&!e.as_begun?"It was begun here and changed by hand since: measure what matters on the scale and the board now.":"Bring it together with what scale and board say."),m("div",{class:"bar"},m("button",{type:"button",id:"to-scale",onclick:()=>h("scale")},"Go on to the scale")),e.as_begun?m("p",{class:"text soft"},"It is as it was begun: a further reading makes it surer."):null,e.as_begun?m("div",{class:"bar"},m("button",{type:"button",id:"begin-more",onclick:()=>S()},"What to measure next")):null)},v=w=>{let U=w??{name:"",typed:{},at:0},k={key:"name",title:"What is the truck called?",help:"Its file is called so as well.",picture:"",caution:"",unit:"",choices:[],needed:!0,value:U.name,take:async q=>/[.[\]"\\/]/.test(q)||q.length>60?"Up to 60 letters, no dots, quotes, slashes or brackets.":I.bench.trucks.includes(`${q}.toml`)?`There is a ${q}.toml already: choose another name.`:(U.name=q,null)},B=()=>[k,...e.questions.filter(q=>q.first&&!(q.after&&!U.typed[q.after])).map(q=>_(q.key,U.typed))],z=Math.min(U.at,B().length-1),P=q=>{let re=B();if(q>=re.length)return X();f(re.slice(0),q,"Beginning",X,Me=>{U.at=Me,Mf(U),Me!==q&&P(Me)})},X=()=>{xe(a,m("h3",{},`What you read off ${U.name}`),m("table",{},m("tbody",{},...e.questions.filter(q=>U.typed[q.key]).map(q=>m("tr",{},m("th",{scope:"row"},q.words),m("td",{class:"n"},`${U.typed[q.key]}${["mm","g"].includes(q.kind)?` ${q.kind}`:""}`))))),m("div",{class:"bar"},m("button",{type:"button",class:"main",id:"begin-make",onclick:()=>p(U.name,U.typed,!1)},"Make the file"),m("button",{type:"button",id:"ask-back",onclick:()=>P(0)},"Go through it again")),m("p",{class:"wrong text",role:"alert",id:"ask-wrong"})),document.getElementById("begin-make")?.focus()};P(w?z:0)},_=(w,U)=>{let k=e.questions.find(z=>z.key===w),B={mm:"mm",g:"g","N/mm":"N/mm",place:"mm: ahead of mid-wheelbase, left of the middle, above the ground"}[k.kind]??"";return{key:w,title:k.do,help:k.kind==="place"?"Three numbers, as 20, 0, 95.":k.hint?`${k.hint[0].toUpperCase()}${k.hint.slice(1)}.`:"",picture:k.picture,caution:k.caution,unit:B,choices:k.choices,needed:k.needed,value:U[w]??"",take:async z=>{if(!z)return delete U[w],null;try{await _e.reading(w,z)}catch(P){return o(P)}return U[w]=z,null}}},p=async(w,U,k)=>{let B=document.getElementById("ask-wrong");Le("Making the file…");try{let{begun:z,bench:P}=await _e.begin(w,U,k);k||Mf(null),n=P.file,Wt(P),Le(`${z.file} is made and on the bench.`),await c()&&M(z)}catch(z){let P=o(z);B?B.textContent=P:xe(a,m("p",{class:"wrong text",role:"alert"},P)),Le(P,"wrong")}},M=w=>{let[U,k,B]=w.cg_mm;xe(a,m("h3",{tabindex:-1,id:"begun"},`${w.file} is on the bench`),m("p",{class:"text"},`${j(w.mass_g,0)} ± ${j(w.mass_pm_g,0)} g; CG ${vt(U)} ± ${j(w.cg_pm_mm[0])} mm ahead of mid-wheelbase, ${vt(k)} ± ${j(w.cg_pm_mm[1])} to the left, ${j(B)} ± ${j(w.cg_pm_mm[2])} up (95 %).`),...w.doubts.map(z=>m("p",{class:"text wrong"},`${z[0].toUpperCase()}${z.slice(1)}.`)),w.next.length?m("h3",{},"What to measure next"):null,w.next.length?m("p",{class:"text soft"},"By how much it narrows the ± of the tip angle, for its minutes."):null,...w.next.slice(0,4).map((z,P)=>m("div",{class:"change"},m("span",{}),m("span",{},z.do),m("button",{type:"button",id:`measure-${P}`,onclick:()=>C(z.readings)},"Measure it"),m("p",{class:"note"},`±${j(z.narrows_pm_deg,2)}° in ${j(z.minutes,z.minutes%1?1:0)} min`))),w.typical.length?m("details",{class:"text"},m("summary",{},`${w.typical.length} numbers are typical, not measured`),m("p",{},`${w.typical.join(", ")}.`)):null,m("div",{class:"bar"},m("button",{type:"button",class:"main",id:"to-scale",onclick:()=>h("scale")},"Go on to the scale"))),document.getElementById("begun")?.focus()},C=w=>{let U={},k=I.bench.file.replace(".toml",""),B=w.filter(z=>e.questions.some(P=>P.key===z));f(B.map(z=>({..._(z,U),needed:!0})),0,"One more reading",()=>{p(k,U,!0)})},S=()=>{xe(a,m("p",{class:"text soft"},"Working out which reading would help most…")),p(I.bench.file.replace(".toml",""),{},!0)},T=[["front","","Stand the front axle on the scale, the rear on blocks just as high","level front","pack"],["rear","","Turn it round: the rear axle on the scale, the front on the blocks","level rear",""],["left","","Both left wheels on the scale, the right ones on the blocks","side left",""],["rear","front","Raise the front on a tall block, and weigh the rear","raised","block"]],A=()=>{let w=T.flatMap(([U,k,B,z,P])=>{let X=`${U} ${k}`,q={key:X,title:B,help:k?"":"Lift it and put it down again once or twice: more than one number says how far the scale scatters.",picture:z,caution:P,unit:"g, repeats apart by spaces",choices:[],needed:!1,value:s[X]??"",take:async Me=>(s[X]=Me,null)};return k?[{key:"block",title:"How tall is that block?",help:"From the ground of the lower wheels to that of the raised ones.",picture:z,caution:P,unit:"mm",choices:[],needed:!1,value:s.block??"90",take:async Me=>(s.block=Me,null)},q]:[q]});w.push({key:"tied",title:"Was the suspension tied, so that nothing sank or rose?",help:"Cable ties round the dampers, at ride height.",picture:"damper",caution:"",unit:"",choices:["yes","no"],needed:!0,value:s.tied??"yes",take:async U=>(s.tied=U,null)}),f(w,0,"On the scale",()=>{x()})},x=async()=>{let w=T.map(([z,P])=>({at:z,raised:P,block_mm:P?s.block??"":"",loads:s[`${z} ${P}`]??""})).filter(z=>z.loads),U={step_g:1,locked:s.tied!=="no",readings:w},k=m("div",{}),B=m("button",{type:"button",id:"ask-back",onclick:A},"Go through it again");try{_l(k,await _e.weigh(U,!0)),Le("The readings are kept beside the truck."),await c()&&l(),xe(a,k,m("div",{class:"bar"},m("button",{type:"button",class:"main",id:"to-board",onclick:()=>h("board")},"Go on to the board"),m("button",{type:"button",id:"to-agree",onclick:()=>h("agree")},"No board: bring file and scale together"),B)),document.getElementById("to-board")?.focus()}catch(z){xe(a,m("p",{class:"text wrong",role:"alert"},o(z)),m("div",{class:"bar"},B)),B.focus()}},E=[[90,"Across, left side down"],[270,"Across, right side down"],[0,"Climbing, nose uphill"],[180,"Descending, nose downhill"]],H=()=>{let w=[],U=E.map(([k,B])=>({key:String(k),title:`${B}: at what angle does the last uphill tyre leave the board?`,help:"A strip under the downhill tyres keeps them from sliding. Raise the board slowly, and read the phone on it.",picture:k===90?"board":"headings",caution:"fall",unit:"°",choices:[],needed:!1,value:"",take:async z=>{if(!z)return null;let P=Number(z.replace(",",".").replace("°",""));if(!(P>0&&P<90))return"An angle between 0 and 90 degrees.";try{let q=(await _e.board({heading_deg:k,angle_deg:P})).readings.filter(re=>re.heading_deg===k).pop();q&&w.push(`${B}: ${j(q.measured_deg)}°, foretold ${j(q.predicted_deg)}°, which ${q.agrees?"agrees":"does not agree"}.`)}catch(X){return o(X)}return null}}));f(U,0,"On the board",()=>{xe(a,m("h3",{},w.length?"What the board said":"Nothing was noted"),...w.map(k=>m("p",{class:"text"},k)),m("div",{class:"bar"},m("button",{type:"button",class:"main",id:"to-agree",onclick:()=>h("agree")},"Bring them together"),m("button",{type:"button",id:"ask-back",onclick:H},"Go through it again"))),c().then(k=>{k&&l()}),document.getElementById("to-agree")?.focus()})},F=()=>{xe(a,m("p",{class:"text soft"},"Looking for what has to move, within its tolerance, for the file to agree with what was read…")),_e.agreement(!1).then(({found:w})=>N(w),w=>xe(a,m("p",{class:"text wrong",role:"alert"},o(w))))},N=w=>{let U=[w.scales?"scale":"",w.board?"board":""].filter(Boolean).join(" and "),k=w.moves.length===0||w.counted==="all",B=z=>z.map(P=>vt(P)).join(", ");xe(a,m("h3",{id:"agreement"},w.agrees&&k?`The file agrees with ${U}`:w.agrees?`With these moves the file agrees with ${U}`:`The file and ${U} do not agree`),m("table",{},m("thead",{},m("tr",{},...["","by the file","± 95 %","together","± 95 %"].map(z=>m(z?"th":"td",z?{scope:"col",class:"n"}:{},z)))),m("tbody",{},...w.sums.map(z=>m("tr",{},m("th",{scope:"row"},`${z.what}, ${z.unit}`),...[z.before,z.before_pm,z.after,z.after_pm].map(P=>m("td",{class:"n"},j(P))))))),...w.left_out.map(z=>m("p",{class:"text wrong"},`Cannot be believed and was left out: ${z.reading}, ${vt(z.off)} ${z.unit} from what the rest make of the truck.`)),w.agrees?null:m("p",{class:"text"},"Some tolerance in the file is too small, a part is missing from it, or a reading is wrong: weigh again what stands out."),k?null:m("table",{},m("caption",{},"What has to move"),m("thead",{},m("tr",{},...["part","by, g","ahead, left, up, mm"].map(z=>m("th",{scope:"col"},z)))),m("tbody",{},...w.moves.slice(0,12).map(z=>m("tr",{},m("th",{scope:"row"},z.part),m("td",{},vt(z.mass_by_g)),m("td",{},B(z.place_by_mm)))))),w.counted==="some"?m("p",{class:"text wrong"},"The file was brought together with some of these readings before, and they would count twice: undo that first, or go on from a file that has not seen them."):null,w.at_limit.length?m("p",{class:"text soft"},`At the limit of its tolerance: ${w.at_limit.slice(0,6).join(", ")}.`):null,m("div",{class:"bar"},k?null:m("button",{type:"button",class:"main",id:"agree-put",onclick:()=>{V()}},"Put it into the file"),m("button",{type:"button",id:"agree-scale",onclick:()=>h("scale")},"Weigh again"))),document.getElementById("agree-put")?.focus()},V=async()=>{let w=null;await ht(async()=>{let k=await _e.agreement(!0);return w=k.found,k.bench},"brought the file together with what was read")&&(xe(a,m("h3",{id:"agreement",tabindex:-1},w.agrees?"The file agrees with what was read":"The file is as near as its tolerances let it come"),m("p",{class:"text"},"Save it to keep it; undo brings back what it was."),m("div",{class:"bar"},m("button",{type:"button",id:"agree-again",onclick:F},"Look again"))),document.getElementById("agreement")?.focus())},Z=async()=>{await c()&&h(t)};wn(i,()=>{n!==I.bench.file&&(t="file",Z())}),xe(a,m("p",{class:"text soft"},"…")),Z()}async function Ex(){let i=await _e.bench();I.bench=i,I.rows=i.rows,I.measures=i.measures,I.scene=i.scene,I.answers=i.answers;let e=af();Ch(()=>e.repaint()),qh(),fh();let t=new Jo(e);Mh(),eu(e),$t?(document.documentElement.dataset.frozen="",Ee("turn").step=String($t.turn_deg)):xh([{id:"weights",name:"Weights",make:vf},{id:"tune",name:"Changes",make:cl("Changes",[{id:"changes",name:"Switches",make:Th},{id:"plan",name:"Best set",make:Hh},{id:"list",name:"The list",make:Nh}])},{id:"measure",name:"Scale and board",make:cl("Scale and board",[{id:"wizard",name:"Step by step",make:Sf},{id:"scales",name:"On the scale",make:Zh},{id:"board",name:"On the board",make:Jh}])},{id:"maps",name:"Sweeps",make:Gh}]),$t||(vh(),Fh(),Dh()),Wt(i),ct({tilt:25,heading:90}),i.recovered&&Le("Unsaved work from last time is back on the bench. Undo steps through it.");let n=new Zo(e,t);performance.mark("bench-ready"),document.documentElement.dataset.ready="",Object.assign(window,{benchWatch:{stage:e,lags:Ws,replay:n}})}addEventListener("unhandledrejection",i=>{i.reason instanceof ke&&(i.preventDefault(),i.reason.status!==0&&i.reason.status!==409&&Le(i.reason.message,"wrong"))});Ex().catch(i=>{Ee("notice").textContent=i instanceof Error?i.message:String(i),Ee("notice").hidden=!1});
