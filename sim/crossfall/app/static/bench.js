function Oh(i,e,t){for(let[n,s]of Object.entries(e))s==null||s===!1||(n.startsWith("on")&&typeof s=="function"?i.addEventListener(n.slice(2),s):i.setAttribute(n,s===!0?"":String(s)));i.append(...t.filter(n=>n!=null&&n!==!1))}function f(i,e={},...t){let n=document.createElement(i);return Oh(n,e,t),n}function O(i,e={},...t){let n=document.createElementNS("http://www.w3.org/2000/svg",i);return Oh(n,e,t),n}function Ce(i){let e=document.getElementById(i);if(e===null)throw new Error(`no element ${i}`);return e}function re(i,...e){let t=document.activeElement,n=t&&i.contains(t)?t.getAttribute("data-key"):null;i.replaceChildren(...e.filter(s=>!!s)),n!==null&&i.querySelector(`[data-key="${CSS.escape(n)}"]`)?.focus({preventScroll:!0})}var Ml=null;function Ee(i,e="note"){Ml??=Ce("say"),Ml.textContent=i,Ml.dataset.kind=e}function ms(i,e,t,n,s,r,a={required:!0,maxlength:80}){let o=Ce("ask"),l=f("input",{id:i,...a,value:n});re(o,f("form",{method:"dialog"},f("h2",{},e),f("label",{for:i},t),l,f("div",{class:"bar"},f("button",{value:"no",formnovalidate:!0},"Leave it"),f("button",{value:"yes",class:"main"},s)))),o.onclose=()=>{o.returnValue==="yes"&&r(l.value)},o.returnValue="no",o.showModal(),l.select()}function gt(i,e="button"){let t=()=>[...i.querySelectorAll(e)].filter(r=>!r.disabled&&!r.hidden),n=null,s=()=>{let r=t(),a=n&&r.includes(n)?n:r.find(o=>o.getAttribute("aria-pressed")==="true")??r[0];for(let o of r){let l=o===a?0:-1;o.tabIndex!==l&&(o.tabIndex=l)}};i.addEventListener("focusin",r=>{n=r.target.closest(e),s()}),i.addEventListener("keydown",r=>{let a=r.key,o=t(),l=o.indexOf(document.activeElement);if(l<0)return;let h={ArrowRight:l+1,ArrowDown:l+1,ArrowLeft:l-1,ArrowUp:l-1,Home:0,End:o.length-1}[a];h!==void 0&&(r.preventDefault(),o[(h+o.length)%o.length].focus())}),new MutationObserver(s).observe(i,{childList:!0,subtree:!0,attributes:!0,attributeFilter:["disabled","hidden","aria-pressed"]}),s()}var Qr=()=>matchMedia("(prefers-reduced-motion: reduce)").matches,V=(i,e=1)=>i==null||!Number.isFinite(i)?"–":i.toFixed(e).replace(/^-(0(\.0*)?)$/,"$1").replace("-","−"),ht=(i,e=1)=>{let t=V(i,e);return i>0&&Number(i.toFixed(e))!==0?`+${t}`:t},wl=null,Bh=!1;function xi(){return yi(),Bh}function yi(){if(wl===null){let i=document.createElement("canvas").getContext("webgl2");Bh=i===null;let e=i?.getExtension("WEBGL_debug_renderer_info"),t=e?String(i?.getParameter(e.UNMASKED_RENDERER_WEBGL)):"";i?.getExtension("WEBGL_lose_context")?.loseContext(),wl=/swiftshader|llvmpipe|software|basic render/i.test(t)}return wl}var zh=i=>Math.max(0,Math.min(3,-Math.floor(Math.log10(i)+1e-9))),Ji=(i,e)=>`${V(i,Number.isInteger(Math.round(i*100)/100)?0:2)} ${e}`.trim();var _t={climb:{heading:0,name:"Climb",short:"Climb"},left:{heading:90,name:"Left side down",short:"Left down"},descent:{heading:180,name:"Descent",short:"Descent"},right:{heading:270,name:"Right side down",short:"Right down"}},P={bench:null,scene:null,answers:null,rows:[],measures:[],path:null,trials:[],view:{tilt:0,heading:90,row:null,direction:"all",rail:!1},trying:!1},ea=new Map;function Ne(i,e){for(let t of Array.isArray(i)?i:[i])ea.has(t)||ea.set(t,new Set),ea.get(t).add(e)}function ii(...i){let e=new Set;for(let t of i)for(let n of ea.get(t)??[])e.add(n);for(let t of e)t()}var xp=150;function gs(i,e){let t=0,n=0,s=()=>{clearTimeout(t),n=performance.now(),i()};return()=>{if(!P.trying)return s();clearTimeout(t),t=window.setTimeout(s,Math.max(20,Math.min(xp,n+e()-performance.now())))}}function Xt(i){if(P.bench?.document===i.document&&i.revision<P.bench.revision)return;let e=P.bench?.file===i.file?P.bench.rows.find(t=>t.row===P.view.row)?.name:void 0;(e!==void 0||P.bench?.file!==i.file)&&(P.view.row=i.rows.find(t=>t.name===e)?.row??null),P.path&&P.bench?.truck!==i.truck&&(P.path=null),P.bench=i,P.scene=i.scene,P.answers=i.answers,P.rows=i.rows,P.measures=i.measures,P.trying=!1,ii("bench","shown","pick")}function Sl(i){P.scene=i.scene,P.answers=i.answers,P.rows=i.rows,P.measures=i.measures,P.trying=!0,ii("shown")}function ut(i){let e=i.heading!==void 0&&i.heading!==P.view.heading,t=i.row!==void 0&&i.row!==P.view.row;Object.assign(P.view,i),(e||i.tilt!==void 0||i.direction!==void 0||i.rail!==void 0)&&ii("view"),t&&ii("pick")}function Gn(i,e,t){if(i.length===0)return null;let n=360/i.length,s=(t%360+360)%360/n,r=Math.floor(s)%i.length,a=e[r]??null,o=e[(r+1)%i.length]??null;return a===null||o===null?a??o:a+(o-a)*(s-Math.floor(s))}var Cn=i=>i.compliant_deg.map((e,t)=>e??i.rail_deg[t]??null);function on(i,e){let t=Gn(i.heading_deg,Cn(i),e);if(t===null)return null;let n=i.heading_deg.length,s=i.rail_deg[Math.round(e*n/360)%n]!==null,r=s?i.slide_deg.likely:t;return{slides:s,deg:i.goes_at_deg===null?r:Gn(i.heading_deg,i.goes_at_deg,e)??r}}function tr(i){let[e,t]=i?.compliant_range_deg??i?.rail_range_deg??[null,null];return e===null||t===null?null:[e,t]}var yp=2,Tl=i=>i!==null&&i[1]-i[0]>yp,Ki=(i,e)=>Tl(e)?`${V(e[0],0)}–${V(e[1],0)}`:V(i),nr=()=>P.bench.rows.find(i=>i.name===P.bench.scene.pack)?.row??null;var De=class extends Error{constructor(t,n,s){super(n.join(" "));this.status=t;this.sentences=n;this.where=s}status;sentences;where},en=class extends De{constructor(){super(0,["The bench does not answer."],"gone")}},qt=(()=>{let i=document.getElementById("frozen");return i?.textContent?JSON.parse(i.textContent):null})(),ji=qt?qt.turn_deg:5;function bp(i,e){let{bench:t,paths:n}=qt;return i==="/api/bench"?t:i==="/api/path"?n[Math.round(Number(e.heading_deg)/ji)*ji%360]:i==="/api/reference"?t.before:/exact|ways|gains/.test(i)?t.answers:null}var El=new AbortController,Gh=new EventTarget;function Mp(){El.abort(new en),El=new AbortController,Gh.dispatchEvent(new Event("gone"))}function Vh(i){Gh.addEventListener("gone",i)}async function Al(i,e={},t){if(qt)throw new De(403,["This is a copy to look at, without a bench behind it."],"copy");let n=El,s;try{s=await fetch(i,{...e,signal:t?AbortSignal.any([t,n.signal]):n.signal})}catch(r){throw t?.aborted&&!n.signal.aborted&&!(t.reason instanceof DOMException&&t.reason.name==="TimeoutError")?r:(n.signal.aborted||Mp(),new en)}if(!s.ok)throw new De(s.status,[await s.text()||s.statusText],null);return s}async function Cl(i){let e;try{e=await i.json()}catch{throw new en}if(typeof e=="object"&&e!==null&&"refused"in e)throw new De(e.refused,e.problems,e.where);return e}async function si(i,e={},t){if(qt){let n=bp(i,e);if(n==null)throw new De(409,["This is a copy to look at, without a bench behind it."],"copy");return n}return Cl(await Al(Hh(i,e),{},t))}function Hh(i,e){let t=new URLSearchParams(Object.entries(e).map(([n,s])=>[n,String(s)])).toString();return t?`${i}?${t}`:i}async function ta(i,e){let t=await Al(Hh(i,e));return t.headers.get("content-type")?.includes("json")&&await Cl(t),t}async function bi(i,e){return Cl(await Al(i,{method:"POST",headers:{"Content-Type":"application/json"},body:JSON.stringify(e)}))}var ir=()=>({document:P.bench.document,revision:P.bench.revision}),Qt=(i,e={},t)=>si(i,{...ir(),...e},t),bt=(i,e={})=>bi(i,{...ir(),...e}),ce={bench:()=>si("/api/bench"),pulse:()=>si("/api/pulse",{},AbortSignal.timeout(15e3)),edit:(i,e)=>bt("/api/edit",{edits:i,what:e}),attempt:(i,e=!1)=>bt("/api/try",{edits:i,full:e}),undo:()=>bt("/api/undo"),redo:()=>bt("/api/redo"),history:()=>Qt("/api/history"),go:i=>bt("/api/go",{to:i}),nameStep:(i,e)=>bt("/api/name-step",{step:i,name:e}),pin:i=>bt("/api/pin",{key:i}),reference:()=>Qt("/api/reference"),save:(i,e)=>bt("/api/save",{name:i,over:e}),discard:()=>bt("/api/discard"),open:i=>bi("/api/open",{name:i}),path:(i,e)=>Qt("/api/path",{heading_deg:i},e),partForm:()=>Qt("/api/part-form"),changes:()=>Qt("/api/changes"),editChanges:(i,e)=>bt("/api/edit-changes",{seen:i,asked:e}),keepEdits:(i,e)=>bt("/api/keep-edits",{seen:i,asked:e}),bought:()=>Qt("/api/bought"),fit:i=>bt("/api/fit",{chosen:i}),plan:i=>bt("/api/plan",{asked:i}),readings:()=>Qt("/api/readings"),weigh:(i,e)=>bt("/api/weigh",{form:i,keep:e}),board:i=>i?bt("/api/board",{asked:i}):Qt("/api/board"),wizard:()=>Qt("/api/wizard"),reading:(i,e)=>bi("/api/reading",{key:i,typed:e}),begin:(i,e,t)=>bi("/api/begin",{name:i,typed:e,again:t}),agreement:i=>bt("/api/agreement",{put:i}),sheet:async()=>(await ta("/api/sheet",ir())).blob(),share:async()=>(await ta("/api/share",ir())).blob(),sweeps:()=>si("/api/sweeps"),sweep:i=>si("/api/sweep",{name:i}),runSweep:i=>bt("/api/sweep-run",{asked:i}),sweepState:()=>si("/api/sweep-state"),stopSweep:()=>bi("/api/sweep-stop",{}),place:i=>bt("/api/place",{values:i}),trial:()=>si("/api/trial"),runTrial:(i,e)=>bt("/api/trial",{headings:i,rail:e}),stopTrial:()=>bi("/api/trial-stop",{}),poses:async i=>(await ta("/api/poses",{...ir(),file:i})).arrayBuffer(),suspension:()=>Qt("/api/suspension"),suspensionMoves:()=>Qt("/api/suspension-moves"),courseStanding:i=>bt("/api/course-standing",{course:i}),driveCourse:i=>bt("/api/course",{course:i}),courseState:()=>si("/api/course"),courses:()=>si("/api/courses"),keepCourse:(i,e,t)=>bi("/api/keep-course",{name:i,course:e,over:t}),keepStill:(i,e)=>bt("/api/course-still",{picture:i,words:e}),stopCourse:()=>bi("/api/course-stop",{}),coursePoses:async i=>(await ta("/api/course-poses",{file:i})).arrayBuffer(),exact:()=>Qt("/api/exact"),gains:()=>Qt("/api/gains"),ways:()=>Qt("/api/ways"),surface:i=>bt("/api/surface",{surface:i})};function ia(i,e,t){return i===null||e===null||e===void 0||Number((i-e).toFixed(t))===0?null:f("span",{class:"diff"},ht(i-e,t))}var sa=()=>P.bench.before;function wp(){let i=t=>100*(t.corner_g[0]+t.corner_g[2])/t.mass_g,e=(t,n,s,r)=>{let[a,o]=[n(P.answers.numbers),sa()?n(sa().numbers):void 0];return f("div",{},f("dt",{},`${t}, ${r}`),f("dd",{},V(a,s)," ",ia(a,o,s)))};return f("dl",{class:"cells",id:"numbers"},e("All up",t=>t.mass_g,0,"g"),e("CG height",t=>t.cg_mm[2],1,"mm"),e("On the front",t=>t.front_percent,1,"%"),e("On the left",i,1,"%"),e("CG ahead",t=>t.cg_mm[0],1,"mm"),e("CG left",t=>t.cg_mm[1],1,"mm"),e("On springs",t=>t.sprung_g,0,"g"),e("Off springs",t=>t.unsprung_g,0,"g"))}var na=["squash","along","rise","lean"];function Rl(i){return Object.entries(_t).map(([e,{heading:t,short:n}],s)=>{let r=o=>Gn(i.heading_deg,o,t),a=r(Cn(i));return{name:e,short:n,rigid:r(i.rigid_deg)??0,tip:a,slides:on(i,t)?.slides??!1,way:i.ways?.[s]??null}})}function Sp(i,e,t){let n=a=>Math.max(0,a)/t*200,s=[...$h(i,n,3,9),O("line",{x1:n(i.rigid),x2:n(i.rigid),y1:0,y2:15})];e&&s.push(O("g",{class:"then"},...$h(e,n,14,4)));let r=Pl(i).map((a,o)=>`${i.way?.budget_steps[o]?.name} ${ht(a)}°`).join(", ");return O("svg",{viewBox:`0 0 200 ${e?19:15}`,class:e?"budget-bar both":"budget-bar",preserveAspectRatio:"none",role:"img","aria-label":r||"no budget yet"},...s)}function $h(i,e,t,n){let s=[O("rect",{class:"keep",x:0,y:t,width:e(i.tip??i.rigid),height:n})],r=i.rigid;return Pl(i).forEach((a,o)=>{let[l,c]=[e(r+Math.min(0,a)),e(r+Math.max(0,a))];s.push(O("rect",{class:`loss${o}`,x:l,y:t,width:Math.max(0,c-l),height:n})),r+=a}),s}function Pl(i){return(i.way?.budget_steps??[]).slice(0,na.length).map(e=>e.gained_deg??0)}function Tp(i){let e=tr(i.way),t=i.way?.uncertain_by.slice(0,4).map(s=>`${s.name} ±${V(s.pm_deg,2)}°`).join(", "),n=e?Tl(e)?`likely ${V(i.tip)}`:`${V(e[0])} to ${V(e[1])}`:"…";return f("td",{class:"n range-cell",title:t?`95 %. Behind it: ${t}`:void 0},n)}function Ep(i,e){let t=Ki(i.tip,tr(i.way));return f("td",{class:"n"},f("b",{},i.slides?`[${t}]`:t)," ",ia(i.tip,e?.tip,1))}function Ap(){let i=Rl(P.answers),e=sa(),t=e?Rl(e):[],n=Math.max(...[...i,...t].map(r=>Math.max(r.rigid,r.tip??0)))*1.02,s=r=>na.map((a,o)=>f("td",{class:"n"},r.way?ht(Pl(r)[o]??0):"…"));return f("table",{id:"budget"},f("caption",{},"Where the degrees go",e?f("span",{class:"soft"},`, thin bars: ${e.what}`):null),f("thead",{},f("tr",{},...["","stiff",...na,"tips, 95 %"].map((r,a)=>f(r?"th":"td",r?{scope:"col",class:a?"n":""}:{},r)))),...i.map((r,a)=>f("tbody",{"data-case":r.name},f("tr",{},f("th",{scope:"row",rowspan:2},r.short),f("td",{class:"n"},V(r.rigid)),...s(r),Ep(r,t[a]??null)),f("tr",{},f("td",{class:"bar-cell",colspan:na.length+1},Sp(r,t[a]??null,n)),Tp(r)))))}function Cp(i){return i.outcome!=="too close to call"?`${i.outcome} first`:`too close to call, ${V(100*i.tips_first_share,0)} % tips`}function Rp(){let{surface:i,grip_range:e,slide_deg:t,goes_at_deg:n,ways:s}=P.answers,r=(c,h,u)=>h>c?` (${V(c,u)} to ${V(h,u)})`:"",a=Rl(P.answers),o=c=>c.way?`${c.short} ${V(c.way.slide_deg.likely)}°${r(c.way.slide_deg.low??0,c.way.slide_deg.high??0,1)}`:`${c.short} …`,l=n===null?`it slides at ${V(t.likely)}°${r(t.low,t.high,1)}`:`it slides or rolls away by heading: ${a.map(o).join(", ")}`;return f("p",{class:"text soft",id:"sliding"},`On ${i}, grip ${V(e.likely,2)}${r(e.low,e.high,2)}, ${l}. `,s?`${a.map(c=>`${c.short}: ${Cp(c.way)}`).join("; ")}. `:"",a.some(c=>c.slides)?"In brackets: it slides first, and would tip there against a rail.":"")}function Pp(){let i=P.answers,e=P.view.heading,t=P.trying?void 0:i.ways?.find(c=>c.heading_deg===e),[n,s]=t?.goes_at_range_deg??[null,null],r=on(i,e),a=sa(),o=Object.values(_t).find(c=>c.heading===e)?.short??`Turned ${V(e,0)}°`,l=a?on(a,e)?.deg:void 0;re(Ce("readout"),f("span",{},`${o}: ${r?.slides?"slides":"tips"} at ${Ki(r?.deg??null,n===null||s===null?null:[n,s])}° `,ia(r?.deg??null,l,1)),f("span",{},`${V(i.numbers.mass_g,0)} g `,ia(i.numbers.mass_g,a?.numbers.mass_g,0)))}function Wh(){Ne(["shown","view"],()=>{P.answers&&Pp()}),Ne("shown",()=>{P.answers&&re(Ce("block"),wp(),Ap(),Rp())})}var wi=null,Mi=null,Xh=0,sr=[];function Si(i){Mi=i,clearTimeout(ra),wi===null&&Ip()}async function Ip(){for(;Mi!==null;){let i=Mi;Mi=null;let e=wi=new AbortController;if(rr()&&await Il,e.signal.aborted)return;let t=performance.now();try{let n=await ce.attempt(i);if(e.signal.aborted)return;Sl(n),sr.push(performance.now()-t),sr.length>400&&sr.shift(),clearTimeout(ra),ra=window.setTimeout(()=>{Lp(i,e)},250)}catch(n){if(e.signal.aborted)return;if(!(n instanceof De))throw n;if(n instanceof en)return Rn();if(n.status===409)return wi=null,Mi=null,void Zh(n,"what you were trying",null);Ee(n.sentences.slice(0,3).join(" "),"wrong")}}wi=null}var ra=0;async function Lp(i,e){if(!(!P.trying||wi!==null||e.signal.aborted||Mi!==null))try{let t=await ce.attempt(i,!0);P.trying&&wi===null&&Mi===null&&!e.signal.aborted&&Sl(t)}catch(t){if(!(t instanceof De))throw t}}function qh(){clearTimeout(ra),wi?.abort(),wi=null,Mi=null}async function Gt(i,e){return qh(),dt(()=>ce.edit(i,e),e,()=>ce.edit(i,e))}var Il=Promise.resolve(),Ll=0,aa=0,rr=()=>Ll>0;function dt(i,e,t){let n=aa;return Dl(async()=>aa===n?Np(i,e,t):!1)}function Dl(i){Ll+=1;let e=Il.then(i).finally(()=>{Ll-=1});return Il=e.catch(()=>{}),e}var Nl="";function Yh(){let i=Nl;return Nl="",i}async function Np(i,e,t){try{return Xt(await i()),Ee(e?`${e[0].toUpperCase()}${e.slice(1)}.`:""),Ce("notice").hidden=!0,!0}catch(n){if(!(n instanceof De))throw n;return n instanceof en?(aa+=1,Nl=e,Rn()):n.status===409&&n.where!=="disk"?await Zh(n,e,t??null):(Ee(n.sentences.slice(0,3).join(" "),"wrong"),Rn()),!1}}function Rn(){qh(),Xt(P.bench)}async function Zh(i,e,t){aa+=1;let n=P.bench;try{Xt(await ce.bench())}catch(a){if(!(a instanceof De))throw a;return}let s=P.bench,r=[["Leave it as it is",()=>{}]];if(s.file!==n.file){r.unshift([`Put ${n.file} back on the bench`,()=>{dt(()=>ce.open(n.file),`on the bench: ${n.file}`)}]),Vn(`${s.file} is on the bench now, put there from another tab. Your last change was meant for ${n.file} and was not put down.`,r);return}t&&r.unshift([`Do mine on top: ${e}`,()=>{dt(()=>P.bench.file===n.file?t():Promise.reject(i),e)}]),Vn("This truck was changed in another tab or on disk. You see that state now; your last change was not put down.",r)}function Vn(i,e){let t=Ce("notice");re(t,f("p",{},i),...e.map(([n,s])=>f("button",{type:"button",onclick:()=>{t.hidden=!0,s()}},n))),t.hidden=!1,t.querySelector("button")?.focus()}function Jh(){Ne("bench",()=>{clearTimeout(Xh);let i=P.bench;Xh=window.setTimeout(()=>{Dp(i)},i.answers.exact?400:120)})}async function Dp(i){let e=()=>P.bench!==i,t=()=>{P.trying||(P.answers=i.answers,ii("shown"))};try{for(let s of[ce.exact,ce.ways]){if(e())return;if(s===ce.exact&&i.answers.exact)continue;let r=await s();if(e())return;i.answers=r,t()}if(i.before&&!(i.before.exact&&i.before.ways)){let s=await ce.reference();if(e())return;i.before=s,t()}let n=await ce.gains();if(e())return;i.answers=n,t()}catch(n){if(!(n instanceof De)||n.status!==409&&n.status!==0)throw n}}function Ti(i,e,t){let n="input, select, button",s=l=>[...l.querySelectorAll(n)],r=l=>{l&&(l.focus(),l instanceof HTMLInputElement&&l.select())},a=l=>{for(let c of i.querySelectorAll("[tabindex='0']"))c.tabIndex=-1;l.tabIndex=0};for(let l of s(i))l.tabIndex=-1;let o=i.querySelector(t.key?`[data-key="${CSS.escape(t.key)}"]`:"input")??i.querySelector(n);o&&a(o),i.addEventListener("focusin",l=>{a(l.target),t.key=l.target.getAttribute("data-key")??""}),i.addEventListener("input",l=>l.target.toggleAttribute("data-typing",!0));for(let l of["change","focusout"])i.addEventListener(l,c=>c.target.removeAttribute("data-typing"));i.addEventListener("keydown",l=>{let c=l.target,h=c.closest(e),u=s(h).indexOf(c);if(l.altKey||l.ctrlKey||l.metaKey)return;let d=l.key==="ArrowLeft"?-1:l.key==="ArrowRight"?1:0,p=l.key==="ArrowUp"?-1:l.key==="ArrowDown"?1:0;if(p){l.preventDefault();let _=p>0?h.nextElementSibling:h.previousElementSibling;_&&r(s(_)[Math.min(u,s(_).length-1)])}else d&&!c.hasAttribute("data-typing")&&(l.preventDefault(),r(s(h)[u+d]))})}var oa=i=>i.closest("[hidden]")===null;function Yt(i,e,t=0){let n=!1,s=0,r=()=>{clearTimeout(s),!(!n||!oa(i))&&(n=!1,e())};Ne("bench",()=>{n=!0,clearTimeout(s),s=window.setTimeout(r,t)}),i.addEventListener("open",r)}function Kh(i){Qh(Ce("tabs"),Ce("leaf"),i)}function kl(i,e){return t=>{let n=f("div",{class:"subtabs",role:"tablist","aria-label":i});t.classList.add("several"),t.append(n),Qh(n,t,e)}}function jh(...i){for(let e of i)document.getElementById(`tab-${e}`)?.click()}function Qh(i,e,t){let n=new Map,s=t.map((a,o)=>{let l=f("button",{type:"button",role:"tab",id:`tab-${a.id}`,onclick:()=>r(a.id)},a.name);return l.addEventListener("keydown",c=>{let h={ArrowRight:o+1,ArrowLeft:o-1,Home:0,End:t.length-1}[c.key];h!==void 0&&(c.preventDefault(),r(t[(h+t.length)%t.length].id,!0))}),i.append(l),l}),r=(a,o=!1)=>{t.forEach((l,c)=>{let h=s[c],u=l.id===a,d=n.get(l.id);if(h.setAttribute("aria-selected",String(u)),h.tabIndex=u?0:-1,d&&(d.hidden=!u),!!u)if(o&&h.focus(),d)for(let p of[d,...d.querySelectorAll('[role="tabpanel"]')])oa(p)&&p.dispatchEvent(new Event("open"));else{let p=f("div",{role:"tabpanel",id:`leaf-${a}`,"aria-labelledby":`tab-${a}`});e.append(p),n.set(a,p),h.setAttribute("aria-controls",p.id),l.make(p),p.querySelector("a, button, input, select, [tabindex]")||(p.tabIndex=0)}})};r(t[0].id)}function eu(){let i=document.querySelector(".bench"),e=[...document.querySelectorAll(".places button")];for(let t of e)t.addEventListener("click",()=>{i.dataset.place=t.dataset.place;for(let n of e)n.setAttribute("aria-pressed",String(n===t))})}var nu=[["side","Side slope"],["climb","Climb"],["descent","Descent"],["worst","Weakest way"]];function iu(i){let e=null,t=null,n="",s="side",r=f("div",{class:"total",id:"change-total"}),a=f("div",{id:"changes"}),o={key:""},l=f("select",{id:"change-order","aria-label":"Best first for"},...nu.map(([u,d])=>f("option",{value:u},d)));l.addEventListener("change",()=>{s=l.value,c()}),i.append(f("div",{class:"bar"},f("label",{for:"change-order"},"Best first for"),l),r,a);let c=()=>{if(re(r,...tu(e)),!e)return re(a,f("p",{class:"text soft"},"Reading the change file…"));if(e.changes.length===0)return re(a,f("p",{class:"text"},`There is no ${e.file} beside this truck. It lists what you could do, with prices: begin one under "The list", where what you edited by hand becomes a change as well.`));let u=p=>t?.changes[p.name]?.gain_deg[s]??-99,d=f("div",{},...[...e.changes].sort((p,_)=>u(_)-u(p)).map(p=>Up(p,e,t)));Ti(d,".change",o),re(a,d)},h=async()=>{try{if(e=await ce.changes(),c(),e.changes.length===0)return;let u=`${P.bench.file} ${P.bench.answers.surface} ${e.stamp}`;if(t&&u===n&&Object.keys(P.bench.fitted).length)return;n=u,t=await ce.bought(),c()}catch(u){if(!(u instanceof De))throw u;u.status!==409&&u.status!==0&&Ee(u.message,"wrong")}};Ne("bench",c),Yt(i,()=>{h()},250),i.addEventListener("open",()=>{h()}),Ne("shown",()=>re(r,...tu(e))),c(),h()}function tu(i){let{fitted:e,before:t,answers:n}=P.bench,s=Object.keys(e),r=(i?.changes??[]).reduce((o,l)=>o+l.price*(e[l.name]??0),0),a=[f("span",{},s.length?`${s.length} fitted, `:"Nothing fitted, ",f("b",{},Ji(r,i?.currency??"")))];if(t){a.push(f("span",{},`${ht(n.numbers.mass_g-t.numbers.mass_g,0)} g`));for(let{heading:o,short:l}of Object.values(_t)){let c=(p,_)=>Gn(p.heading_deg,_,o),[h,u]=[c(n,Cn(n)),c(t,Cn(t))],d=h!==null&&u!==null?h-u:(c(n,n.rigid_deg)??0)-(c(t,t.rigid_deg)??0);a.push(f("span",{class:"one-gain"},`${l} `,f("b",{class:d>.05?"gain-up":d<-.05?"gain-down":""},`${ht(d,1)}°`)))}a.push(f("span",{class:"soft"},`against ${kp(t.what)}`))}return s.length&&a.push(f("button",{type:"button",id:"fit-none","data-key":"fit-none",onclick:()=>{su({},"took all changes off")}},"Take all off")),a}var kp=i=>i==="before these changes"?"the truck before":i.startsWith("as ")?`the truck ${i}`:i;function su(i,e){return dt(()=>ce.fit(i),e)}function Up(i,e,t){let n=P.bench.fitted[i.name]??0,s=t?.changes[i.name],r=`change-${i.name.replace(/\W+/g,"-")}`,a=u=>{let d={...P.bench.fitted};if(u>0?d[i.name]=u:delete d[i.name],u>0&&i.group)for(let p of e.changes)p.group===i.group&&p.name!==i.name&&delete d[p.name];if(u>0)for(let p of i.requires)d[p]??=1;su(d,u>0?`fitted ${i.name}`:`took ${i.name} off`).then(p=>{p||(o.checked=n>0)})},o=f("input",{type:"checkbox",id:r,"data-key":r,checked:n>0,role:"switch"});o.addEventListener("change",()=>a(o.checked?1:0));let l=null;i.most>1&&(l=f("input",{type:"number",min:0,max:i.most,step:1,value:n,"aria-label":`How many of ${i.label}`,"data-key":`${r}-many`}),l.addEventListener("change",()=>a(Math.max(0,Math.min(i.most,Math.round(Number(l.value)))))));let c=s?nu.slice(0,3).map(([u,d])=>{let p=s.gain_deg[u]??null,v=!s.turns[u]&&Math.abs(p??0)>2*(s.gain_sd_deg[u]??0)&&Math.abs(p??0)>=.05?(p??0)>0?"gain-up":"gain-down":"";return f("span",{},`${d} `,f("b",{class:v},p===null?"–":`${ht(p,2)}°`))}):[],h=t?.impossible[i.name];return f("div",{class:`change${n>0?" on":""}`,"data-change":i.name},o,f("label",{for:r},i.label),f("span",{class:"price"},l,l?" × ":"",Ji(i.price,e.currency)),f("div",{class:"buys"},...t?c:[f("span",{class:"soft"},"working out what it buys…")],...(s?.side??[]).map(u=>f("span",{class:"soft"},`${u.what} ${ht(u.by,Math.abs(u.by)<10?1:0)} ${u.unit}`))),s?.words||h||i.requires.length?f("p",{class:"note"},[h??"",s?.words?`${s.words[0].toUpperCase()}${s.words.slice(1)}.`:"",i.requires.length?`Needs ${i.requires.join(", ")}.`:""].filter(Boolean).join(" ")):null)}async function ru(i,e,t){let{width:n,height:s}=i.sheet,r=Math.max(2,Math.round(i.seconds*12)+1),a=[];for(let u=0;u<r;u++){if(t())return null;i.draw(u*i.seconds/(r-1));let d=await new Promise(p=>i.sheet.toBlob(p,"image/webp",.72));if(!d||d.type!=="image/webp")throw new Error("This browser cannot write such a clip.");a.push(Fp(new Uint8Array(await d.arrayBuffer()),n,s,u===r-1?1500:Math.round(1e3/12))),e((u+1)/r)}let o=new Uint8Array(10);o[0]=2,ar(o,4,n-1),ar(o,7,s-1);let l=[Ul("VP8X",o),Ul("ANIM",new Uint8Array(6)),...a],c=l.reduce((u,d)=>u+d.length,4),h=new Uint8Array(12);return h.set(Fl("RIFF")),new DataView(h.buffer).setUint32(4,c,!0),h.set(Fl("WEBP"),8),new Blob([h,...l],{type:"image/webp"})}function au(){return typeof MediaRecorder>"u"?null:["video/mp4;codecs=avc1.42E01F","video/mp4"].find(i=>MediaRecorder.isTypeSupported(i))??null}async function ou(i,e,t,n){let s=i.sheet.captureStream(24),r=new MediaRecorder(s,{mimeType:e,videoBitsPerSecond:25e5}),a=[];r.ondataavailable=c=>a.push(c.data);let o=new Promise(c=>{r.onstop=()=>c()});i.draw(0),r.start();let l=performance.now();for(;;){let c=Math.min(i.seconds,(performance.now()-l)/1e3);if(i.draw(c),t(c/i.seconds),c>=i.seconds||n())break;await new Promise(h=>requestAnimationFrame(h))}r.stop(),await o;for(let c of s.getTracks())c.stop();return n()?null:new Blob(a,{type:e.split(";")[0]})}function Fp(i,e,t,n){let s=[],r=new DataView(i.buffer,i.byteOffset);for(let o=12;o+8<=i.length;){let l=String.fromCharCode(...i.subarray(o,o+4)),c=r.getUint32(o+4,!0),h=o+8+c+c%2;(l==="VP8 "||l==="VP8L"||l==="ALPH")&&s.push(i.subarray(o,h)),o=h}let a=new Uint8Array(16);return ar(a,6,e-1),ar(a,9,t-1),ar(a,12,n),a[15]=2,Ul("ANMF",Op([a,...s]))}function Ul(i,e){let t=new Uint8Array(8+e.length+e.length%2);return t.set(Fl(i)),new DataView(t.buffer).setUint32(4,e.length,!0),t.set(e,8),t}function Op(i){let e=new Uint8Array(i.reduce((n,s)=>n+s.length,0)),t=0;for(let n of i)e.set(n,t),t+=n.length;return e}var Fl=i=>new Uint8Array([...i].map(e=>e.charCodeAt(0))),ar=(i,e,t)=>i.set([t&255,t>>8&255,t>>16&255],e);function _s(i,e){let{along_mm:t,places_mm:n,heading_deg:s}=i,r=0;for(;r<t.length-2&&t[r+1]<e;)r++;let a=(e-t[r])/(t[r+1]-t[r]||1),o=(c,h,u)=>c+(h-c)*u,l=Math.max(0,Math.min(1,a));return{place:[o(n[r][0],n[r+1][0],a),o(n[r][1],n[r+1][1],a)],heading:o(s[r],s[r+1],l)*Math.PI/180}}var Bp=(i,e,t)=>({at_mm:i,turned_deg:e,angle_deg:t,flank_mm:220,top_mm:140,width_mm:560}),or={"Along the bank, over stones":{slope_deg:22,speed_mm_per_s:250,points_mm:[[-950,40],[-320,0],[300,70],[950,0]],stones:[{at_mm:[-330,92],height_mm:18},{at_mm:[150,-34],height_mm:22},{at_mm:[560,132],height_mm:26}],ramps:[]},"Askew over a ramp":{slope_deg:12,speed_mm_per_s:250,points_mm:[[-930,-160],[0,0],[930,160]],stones:[{at_mm:[-420,0],height_mm:16}],ramps:[Bp([120,20],-65,18)]},"Up the switchback":{slope_deg:24,speed_mm_per_s:350,points_mm:[[-850,-360],[250,-300],[640,-40],[250,230],[-700,300]],stones:[{at_mm:[-200,-250],height_mm:20},{at_mm:[0,350],height_mm:24}],ramps:[]}};var[Ei,vs]=[1150,430],zp=110,la=class{constructor(e,t){this.course=e;this.changed=t;let n=Array.from({length:9},(s,r)=>`M${-Ei} ${(r-4)*100}H${Ei}`).join("");this.ground.append(O("path",{class:"contour",d:n}),O("text",{class:"hill-word",x:-Ei+20,y:-vs+50},"uphill"),O("text",{class:"hill-word",x:-Ei+20,y:vs-22},"downhill")),this.svg.append(this.ground,this.line,this.things,this.marks,this.cart),this.root=f("div",{},this.svg),this.svg.addEventListener("pointerdown",s=>this.down(s)),this.svg.addEventListener("pointermove",s=>this.move(s));for(let s of["pointerup","pointercancel"])this.svg.addEventListener(s,()=>this.up());this.svg.addEventListener("keydown",s=>this.key(s)),this.draw()}course;changed;root;svg=O("svg",{class:"hill",viewBox:`${-Ei} ${-vs} ${2*Ei} ${2*vs}`,role:"group","aria-label":"The hill from above, uphill at the top"});ground=O("g");things=O("g");line=O("path",{class:"way"});marks=O("g");cart=O("g",{class:"cart",visibility:"hidden"},O("path",{d:"M-70 -40H60L95 0L60 40H-70Z"}));form=f("div",{class:"bar hill-form"});picked={kind:"points_mm",index:0};held=!1;sketch=null;drawing=!1;take(e){this.course=e,this.picked={kind:"points_mm",index:0},this.draw()}show(e,t){this.line.setAttribute("d",Ol(e?e.places_mm:this.course.points_mm)),this.marks.replaceChildren(...(e?t:[]).map(({whose:n,event:s})=>{let{place:[r,a],heading:o}=_s(e,s.at_mm),l=n==="truck"?34:-34;return O("g",{class:`mark ${s.what.replace(" ","-")} ${n}`,transform:`translate(${r+l*-Math.cos(o)} ${-(a+l*-Math.sin(o))})`},O("circle",{r:s.what==="lifts"?11:20}),O("title",{},`${n==="truck"?"":"reference: "}${s.wheel??"it"} ${s.what}`))}))}follow(e,t){if(this.cart.setAttribute("visibility",e?"visible":"hidden"),!e)return;let{place:[n,s],heading:r}=_s(e,t);this.cart.setAttribute("transform",`translate(${n.toFixed(1)} ${(-s).toFixed(1)}) rotate(${(-90-r*180/Math.PI).toFixed(1)})`)}begin(){this.drawing=!0,this.svg.classList.add("drawing")}add(e){let{points_mm:t}=this.course,n=t[Math.floor(t.length/2)];e==="stones"?this.course.stones.push({at_mm:[n[0]+60,n[1]+88],height_mm:20}):this.course.ramps.push({at_mm:[...n],turned_deg:-90,angle_deg:15,flank_mm:220,top_mm:140,width_mm:560}),this.pick({kind:e,index:this.course[e].length-1}),this.changed(!0)}all(){return["points_mm","stones","ramps"].flatMap(e=>this.course[e].map((t,n)=>({kind:e,index:n})))}place({kind:e,index:t}){let s=this.course[e][t];return Array.isArray(s)?s:s.at_mm}put({kind:e,index:t},n){let s=[Math.max(-Ei,Math.min(Ei,Math.round(n[0]))),Math.max(-vs,Math.min(vs,Math.round(n[1])))];e==="points_mm"?this.course.points_mm[t]=s:this.course[e][t].at_mm=s}pick(e){this.picked=e,this.draw()}words({kind:e,index:t}){return e==="points_mm"?`Point ${t+1} of the way`:e==="stones"?`Stone ${t+1}`:`Ramp ${t+1}`}draw(){let e=document.activeElement===this.things.querySelector("[tabindex='0']"),t=[...this.all()].sort((n,s)=>(n.kind==="ramps"?0:1)-(s.kind==="ramps"?0:1));this.things.replaceChildren(...t.map(n=>{let[s,r]=this.place(n),a=n.kind===this.picked.kind&&n.index===this.picked.index,o=O("g",{role:"slider",class:`thing ${n.kind}${a?" picked":""}`,tabindex:a?0:-1,"data-thing":`${n.kind} ${n.index}`,transform:`translate(${s} ${-r})`,"aria-valuenow":0,"aria-valuetext":`${V(s,0)} mm to the right, ${V(r,0)} up the hill`,"aria-label":`${this.words(n)}: arrow keys move it, Page Down goes to the next, Delete takes it away`});if(n.kind==="points_mm")o.append(O("circle",{r:46,class:"thing-reach"}),O("circle",{r:20}));else if(n.kind==="stones"){let{height_mm:l}=this.course.stones[n.index];o.append(O("circle",{r:52,class:"thing-reach"}),O("ellipse",{rx:18+l*.8,ry:16+l*.6}),O("text",{y:-30-l*.5},`${V(l,0)}`))}else o.append(this.ramp(n.index));return o})),e&&this.things.querySelector("[tabindex='0']")?.focus(),this.drawForm(),this.held||this.show(null,[])}ramp(e){let t=this.course.ramps[e],[n,s,r]=[t.flank_mm+t.top_mm/2,t.top_mm/2,t.width_mm/2];return O("g",{transform:`rotate(${-t.turned_deg})`},O("rect",{x:-r,y:-n,width:2*r,height:2*n}),O("path",{d:`M${-r} ${-s}H${r}M${-r} ${s}H${r}M0 ${n-20}V${s+30}M-26 ${s+62}L0 ${s+28}L26 ${s+62}`}))}drawForm(){let{kind:e,index:t}=this.picked,n=(o,l,c,h,u,d)=>{let p=f("input",{type:"number","data-key":`hill-${l}`,min:h,max:u,step:1,value:d[l]});return p.addEventListener("change",()=>p.checkValidity()?(d[l]=Number(p.value),this.draw(),this.changed(!0),!0):p.reportValidity()),f("label",{},`${o} `,p,` ${c}`)},s=[];if(e==="stones"&&s.push(n("height","height_mm","mm",2,80,this.course.stones[t])),e==="ramps"){let o=this.course.ramps[t];s.push(n("steep","angle_deg","°",1,45,o),n("up points, from uphill to the left,","turned_deg","°",-180,180,o))}let r=f("button",{type:"button","data-key":"hill-remove",disabled:e==="points_mm"&&this.course.points_mm.length<3,onclick:()=>this.remove()},"Take it away"),a=e==="points_mm"?f("button",{type:"button","data-key":"hill-more",onclick:()=>this.split()},"A point after it"):null;re(this.form,f("b",{},this.words(this.picked)),...s,a,r)}remove(){let{kind:e,index:t}=this.picked;e==="points_mm"&&this.course.points_mm.length<3||(this.course[e].splice(t,1),this.pick({kind:"points_mm",index:e==="points_mm"?Math.max(0,t-1):0}),this.changed(!0))}split(){let{index:e}=this.picked,{points_mm:t}=this.course,[n,s]=e+1<t.length?[t[e],t[e+1]]:[t[e-1],t[e]];t.splice(e+1<t.length?e+1:e,0,[(n[0]+s[0])/2,(n[1]+s[1])/2]),this.pick({kind:"points_mm",index:e+1}),this.changed(!0)}point(e){let t=new DOMPoint(e.clientX,e.clientY).matrixTransform(this.svg.getScreenCTM().inverse());return[t.x,-t.y]}down(e){if(e.preventDefault(),this.svg.setPointerCapture(e.pointerId),this.drawing){this.sketch=[this.point(e)];return}let t=e.target.closest("[data-thing]")?.getAttribute("data-thing");if(!t)return;let[n,s]=t.split(" ");this.pick({kind:n,index:Number(s)}),this.held=!0,this.things.querySelector("[tabindex='0']")?.focus({preventScroll:!0})}move(e){let t=this.point(e);if(this.sketch){let n=this.sketch[this.sketch.length-1];Math.hypot(t[0]-n[0],t[1]-n[1])>zp&&this.sketch.push(t),this.line.setAttribute("d",Ol([...this.sketch,t]))}else this.held&&(this.put(this.picked,t),this.draw(),this.line.setAttribute("d",Ol(this.course.points_mm)),this.changed(!1))}up(){let e=this.sketch;if(this.sketch=null,e)this.drawing=!1,this.svg.classList.remove("drawing"),e.length>1&&(this.course.points_mm=e.slice(0,60).map(([t,n])=>[Math.round(t),Math.round(n)])),this.pick({kind:"points_mm",index:0});else if(!this.held)return;this.held=!1,this.changed(!0)}key(e){if(!e.target.hasAttribute("data-thing"))return;let t=e.shiftKey?50:10,n=this.all(),s=n.findIndex(l=>l.kind===this.picked.kind&&l.index===this.picked.index),r=l=>this.pick(n[(s+l+n.length)%n.length]),a=(l,c)=>{let[h,u]=this.place(this.picked);this.put(this.picked,[h+l,u+c]),this.draw(),this.changed(!0)},o={ArrowLeft:()=>a(-t,0),ArrowRight:()=>a(t,0),ArrowUp:()=>a(0,t),ArrowDown:()=>a(0,-t),PageDown:()=>r(1),PageUp:()=>r(-1),Delete:()=>this.remove()};o[e.key]&&(e.preventDefault(),o[e.key]())}},Ol=i=>`M${i.map(([e,t])=>`${e.toFixed(0)} ${(-t).toFixed(0)}`).join("L")}`;var[Bl,lr,ca,zl,ha]=[600,150,34,22,10],ua=class{root;svg=O("svg",{class:"course-strip",viewBox:`0 0 ${Bl} ${lr}`,role:"img","aria-label":"Degrees in hand along the course"});cursor=O("path",{class:"strip-now"});words=f("p",{class:"text soft strip-words"});x=()=>0;constructor(){let e=s=>O("svg",{viewBox:"0 0 10 10","aria-hidden":"true"},O("g",{class:`mark ${s}`},O("circle",{cx:5,cy:5,r:s==="lifts"?3:5}))),t=s=>O("svg",{viewBox:"0 0 24 10",class:"long","aria-hidden":"true"},O("path",{class:`strip-${s}`,d:"M0 5H24"})),n=[[t("truck"),"the truck"],[t("reference"),"the reference"],[e("lifts"),"a wheel lifts"],[e("slides"),"slides, is stuck"],[e("goes-over"),"goes over"]];this.root=f("div",{},f("h3",{},"In hand, standing there"),this.svg,f("ul",{class:"strip-key"},...n.map(([s,r])=>f("li",{},s,r))),this.words)}draw(e,t){let{along_mm:n}=e.way,s=n[n.length-1],r=[["reference",e.reference],["truck",e.truck]].filter(m=>!!m[1]),a=r.flatMap(([,m])=>m.in_hand_deg).filter(m=>m!==null),[o,l]=[Math.min(0,Math.floor(Math.min(...a)/5)*5),Math.max(10,Math.ceil(Math.max(...a)/5)*5)],c=this.x=m=>ca+m/s*(Bl-ca-8),h=m=>ha+(l-m)/(l-o)*(lr-ha-zl),u=l-o>40?20:l-o>20?10:5,d=[];for(let m=Math.ceil(o/u)*u;m<=l;m+=u)d.push(O("path",{class:m===0?"strip-zero":"strip-grid",d:`M${ca} ${h(m)}H${Bl-8}`}),O("text",{class:"strip-text",x:ca-5,y:h(m)+3.5,"text-anchor":"end"},`${V(m,0)}°`));for(let m=0;m<=s;m+=500)d.push(O("text",{class:"strip-text",x:c(m),y:lr-6,"text-anchor":m===0?"start":"middle"},m===0?"start":`${m} mm`));let p=r.map(([m,g])=>O("path",{class:`strip-${m}`,d:Gp(g.in_hand_deg.map((M,C)=>M===null?null:[c(n[C]),h(M)]))})),_=t.map(({whose:m,event:g})=>O("g",{class:`mark ${g.what.replace(" ","-")} ${m}`},O("circle",{cx:c(Math.max(0,g.at_mm)),cy:m==="truck"?lr-zl-4:ha+4,r:g.what==="lifts"?3.5:6})));this.svg.replaceChildren(...d,...p,..._,this.cursor);let v=r.map(([m,g])=>{let M=g.in_hand_deg.reduce((C,w,E)=>w!==null&&w<(g.in_hand_deg[C]??1/0)?E:C,0);return`${m==="truck"?"The truck":"the reference"} has least at ${V(n[M],0)} mm: ${V(g.in_hand_deg[M])}° (ground ${V(g.slope_deg[M])}°, turned ${V((g.local_heading_deg[M]+360)%360,0)}°)`});this.words.textContent=`${v.reverse().join("; ")}. The ground's own slope under the middle of the truck; stones are left out here.`,this.svg.setAttribute("aria-label",`Degrees in hand along the course. ${this.words.textContent}`)}now(e){this.cursor.setAttribute("d",e===null?"":`M${this.x(Math.max(0,e)).toFixed(1)} ${ha}V${lr-zl}`)}};function Gp(i){let e=!1;return i.map(t=>{if(!t)return e=!1,"";let n=`${e?"L":"M"}${t[0].toFixed(1)} ${t[1].toFixed(1)}`;return e=!0,n}).join("")}/**
 * @license
 * Copyright 2010-2026 Three.js Authors
 * SPDX-License-Identifier: MIT
 */var ku=0,gc=1,Uu=2;var Pr=1,Fu=2,Vs=3,Gi=0,Kt=1,qn=2,os=0,Hs=1,_c=2,vc=3,xc=4,Ou=5;var ls=100,Bu=101,zu=102,Gu=103,Vu=104,Hu=200,$u=201,Wu=202,Xu=203,yc=204,bc=205,qu=206,Yu=207,Zu=208,Ju=209,Ku=210,ju=211,Qu=212,ed=213,td=214,Ua=0,Fa=1,Oa=2,Ns=3,Ba=4,za=5,Ga=6,Va=7,Mc=0,nd=1,id=2,Yn=0,wc=1,Sc=2,Tc=3,Ec=4,Ac=5,Cc=6,Rc=7;var Pc=300,cs=301,$s=302,go=303,_o=304,Ha=1e3,$n=1001,$a=1002,kt=1003,sd=1004;var Ir=1005;var Jt=1006,vo=1007;var fi=1008;var mn=1009,Ic=1010,Lc=1011,Ws=1012,xo=1013,kn=1014,Un=1015,Fn=1016,yo=1017,bo=1018,hs=1020,Nc=35902,Dc=35899,kc=1021,Uc=1022,On=1023,ui=1026,pi=1027,Fc=1028,Mo=1029,Vi=1030,wo=1031;var So=1033,Lr=33776,Nr=33777,Dr=33778,kr=33779,To=35840,Eo=35841,Ao=35842,Co=35843,Ro=36196,Po=37492,Io=37496,Lo=37488,No=37489,Ur=37490,Do=37491,ko=37808,Uo=37809,Fo=37810,Oo=37811,Bo=37812,zo=37813,Go=37814,Vo=37815,Ho=37816,$o=37817,Wo=37818,Xo=37819,qo=37820,Yo=37821,Zo=36492,Jo=36494,Ko=36495,jo=36283,Qo=36284,Fr=36285,el=36286;var mr=2300,Wa=2301,Da=2302,cc=2303,hc=2400,uc=2401,dc=2402;var rd=3200;var Oc=0,ad=1,mi="",hn="srgb",gr="srgb-linear",_r="linear",it="srgb";var ka=7680;var od=519,ld=512,cd=513,hd=514,Bc=515,ud=516,dd=517,zc=518,Gc=519,fd=35044;var Vc="300 es",Mn=2e3,vr=2001;function Vp(i){for(let e=i.length-1;e>=0;--e)if(i[e]>=65535)return!0;return!1}function Hp(i){return ArrayBuffer.isView(i)&&!(i instanceof DataView)}function xr(i){return document.createElementNS("http://www.w3.org/1999/xhtml",i)}function pd(){let i=xr("canvas");return i.style.display="block",i}var lu={},Ds=null;function Hc(...i){let e="THREE."+i.shift();Ds?Ds("log",e,...i):console.log(e,...i)}function md(i){let e=i[0];if(typeof e=="string"&&e.startsWith("TSL:")){let t=i[1];t&&t.isStackTrace?i[0]+=" "+t.getLocation():i[1]='Stack trace not available. Enable "THREE.Node.captureStackTrace" to capture stack traces.'}return i}function Oe(...i){i=md(i);let e="THREE."+i.shift();if(Ds)Ds("warn",e,...i);else{let t=i[0];t&&t.isStackTrace?console.warn(t.getError(e)):console.warn(e,...i)}}function ze(...i){i=md(i);let e="THREE."+i.shift();if(Ds)Ds("error",e,...i);else{let t=i[0];t&&t.isStackTrace?console.error(t.getError(e)):console.error(e,...i)}}function pr(...i){let e=i.join(" ");e in lu||(lu[e]=!0,Oe(...i))}function gd(i,e,t){return new Promise(function(n,s){function r(){switch(i.clientWaitSync(e,i.SYNC_FLUSH_COMMANDS_BIT,0)){case i.WAIT_FAILED:s();break;case i.TIMEOUT_EXPIRED:setTimeout(r,t);break;default:n()}}setTimeout(r,t)})}var _d={[Ua]:Ua,[Oa]:Ga,[Ba]:Ba,[Ns]:za,[Fa]:Fa,[Ga]:Oa,[Va]:Va,[za]:Ns},Wn=class{addEventListener(e,t){this._listeners===void 0&&(this._listeners={});let n=this._listeners;n[e]===void 0&&(n[e]=[]),n[e].indexOf(t)===-1&&n[e].push(t)}hasEventListener(e,t){let n=this._listeners;return n===void 0?!1:n[e]!==void 0&&n[e].indexOf(t)!==-1}removeEventListener(e,t){let n=this._listeners;if(n===void 0)return;let s=n[e];if(s!==void 0){let r=s.indexOf(t);r!==-1&&s.splice(r,1)}}dispatchEvent(e){let t=this._listeners;if(t===void 0)return;let n=t[e.type];if(n!==void 0){e.target=this;let s=n.slice(0);for(let r=0,a=s.length;r<a;r++)s[r].call(this,e);e.target=null}}},Vt=["00","01","02","03","04","05","06","07","08","09","0a","0b","0c","0d","0e","0f","10","11","12","13","14","15","16","17","18","19","1a","1b","1c","1d","1e","1f","20","21","22","23","24","25","26","27","28","29","2a","2b","2c","2d","2e","2f","30","31","32","33","34","35","36","37","38","39","3a","3b","3c","3d","3e","3f","40","41","42","43","44","45","46","47","48","49","4a","4b","4c","4d","4e","4f","50","51","52","53","54","55","56","57","58","59","5a","5b","5c","5d","5e","5f","60","61","62","63","64","65","66","67","68","69","6a","6b","6c","6d","6e","6f","70","71","72","73","74","75","76","77","78","79","7a","7b","7c","7d","7e","7f","80","81","82","83","84","85","86","87","88","89","8a","8b","8c","8d","8e","8f","90","91","92","93","94","95","96","97","98","99","9a","9b","9c","9d","9e","9f","a0","a1","a2","a3","a4","a5","a6","a7","a8","a9","aa","ab","ac","ad","ae","af","b0","b1","b2","b3","b4","b5","b6","b7","b8","b9","ba","bb","bc","bd","be","bf","c0","c1","c2","c3","c4","c5","c6","c7","c8","c9","ca","cb","cc","cd","ce","cf","d0","d1","d2","d3","d4","d5","d6","d7","d8","d9","da","db","dc","dd","de","df","e0","e1","e2","e3","e4","e5","e6","e7","e8","e9","ea","eb","ec","ed","ee","ef","f0","f1","f2","f3","f4","f5","f6","f7","f8","f9","fa","fb","fc","fd","fe","ff"];var Gl=Math.PI/180,Xa=180/Math.PI;function Or(){let i=Math.random()*4294967295|0,e=Math.random()*4294967295|0,t=Math.random()*4294967295|0,n=Math.random()*4294967295|0;return(Vt[i&255]+Vt[i>>8&255]+Vt[i>>16&255]+Vt[i>>24&255]+"-"+Vt[e&255]+Vt[e>>8&255]+"-"+Vt[e>>16&15|64]+Vt[e>>24&255]+"-"+Vt[t&63|128]+Vt[t>>8&255]+"-"+Vt[t>>16&255]+Vt[t>>24&255]+Vt[n&255]+Vt[n>>8&255]+Vt[n>>16&255]+Vt[n>>24&255]).toLowerCase()}function Qe(i,e,t){return Math.max(e,Math.min(t,i))}function $p(i,e){return(i%e+e)%e}function Vl(i,e,t){return(1-t)*i+t*e}function vd(i){return Math.pow(2,Math.floor(Math.log(i)/Math.LN2))}function $c(i){switch(i.constructor){case Uint32Array:return 4294967295;case Uint16Array:return 65535;case Uint8Array:case Uint8ClampedArray:return 255;case Int32Array:return 2147483647;case Int16Array:return 32767;case Int8Array:return 127;default:return}}function Wp(i,e){if(e.constructor===Float32Array)return i;let t=$c(e);if(t===void 0)throw new Error("THREE.MathUtils: Invalid component type.");return Math.max(i/t,-1)}function Xp(i,e){if(e.constructor===Float32Array)return i;let t=$c(e);if(t===void 0)throw new Error("THREE.MathUtils: Invalid component type.");return Math.round(i*t)}var et=class{static{this.prototype.isVector2=!0}constructor(e=0,t=0){this.x=e,this.y=t}get width(){return this.x}set width(e){this.x=e}get height(){return this.y}set height(e){this.y=e}set(e,t){return this.x=e,this.y=t,this}setScalar(e){return this.x=e,this.y=e,this}setX(e){return this.x=e,this}setY(e){return this.y=e,this}setComponent(e,t){switch(e){case 0:this.x=t;break;case 1:this.y=t;break;default:throw new Error("THREE.Vector2: index is out of range: "+e)}return this}getComponent(e){switch(e){case 0:return this.x;case 1:return this.y;default:throw new Error("THREE.Vector2: index is out of range: "+e)}}clone(){return new this.constructor(this.x,this.y)}copy(e){return this.x=e.x,this.y=e.y,this}add(e){return this.x+=e.x,this.y+=e.y,this}addScalar(e){return this.x+=e,this.y+=e,this}addVectors(e,t){return this.x=e.x+t.x,this.y=e.y+t.y,this}addScaledVector(e,t){return this.x+=e.x*t,this.y+=e.y*t,this}sub(e){return this.x-=e.x,this.y-=e.y,this}subScalar(e){return this.x-=e,this.y-=e,this}subVectors(e,t){return this.x=e.x-t.x,this.y=e.y-t.y,this}multiply(e){return this.x*=e.x,this.y*=e.y,this}multiplyScalar(e){return this.x*=e,this.y*=e,this}divide(e){return this.x/=e.x,this.y/=e.y,this}divideScalar(e){return this.multiplyScalar(1/e)}applyMatrix3(e){let t=this.x,n=this.y,s=e.elements;return this.x=s[0]*t+s[3]*n+s[6],this.y=s[1]*t+s[4]*n+s[7],this}min(e){return this.x=Math.min(this.x,e.x),this.y=Math.min(this.y,e.y),this}max(e){return this.x=Math.max(this.x,e.x),this.y=Math.max(this.y,e.y),this}clamp(e,t){return this.x=Qe(this.x,e.x,t.x),this.y=Qe(this.y,e.y,t.y),this}clampScalar(e,t){return this.x=Qe(this.x,e,t),this.y=Qe(this.y,e,t),this}clampLength(e,t){let n=this.length();return this.divideScalar(n||1).multiplyScalar(Qe(n,e,t))}floor(){return this.x=Math.floor(this.x),this.y=Math.floor(this.y),this}ceil(){return this.x=Math.ceil(this.x),this.y=Math.ceil(this.y),this}round(){return this.x=Math.round(this.x),this.y=Math.round(this.y),this}roundToZero(){return this.x=Math.trunc(this.x),this.y=Math.trunc(this.y),this}negate(){return this.x=-this.x,this.y=-this.y,this}dot(e){return this.x*e.x+this.y*e.y}cross(e){return this.x*e.y-this.y*e.x}lengthSq(){return this.x*this.x+this.y*this.y}length(){return Math.sqrt(this.x*this.x+this.y*this.y)}manhattanLength(){return Math.abs(this.x)+Math.abs(this.y)}normalize(){return this.divideScalar(this.length()||1)}angle(){return Math.atan2(-this.y,-this.x)+Math.PI}angleTo(e){let t=Math.sqrt(this.lengthSq()*e.lengthSq());if(t===0)return Math.PI/2;let n=this.dot(e)/t;return Math.acos(Qe(n,-1,1))}distanceTo(e){return Math.sqrt(this.distanceToSquared(e))}distanceToSquared(e){let t=this.x-e.x,n=this.y-e.y;return t*t+n*n}manhattanDistanceTo(e){return Math.abs(this.x-e.x)+Math.abs(this.y-e.y)}setLength(e){return this.normalize().multiplyScalar(e)}lerp(e,t){return this.x+=(e.x-this.x)*t,this.y+=(e.y-this.y)*t,this}lerpVectors(e,t,n){return this.x=e.x+(t.x-e.x)*n,this.y=e.y+(t.y-e.y)*n,this}equals(e){return e.x===this.x&&e.y===this.y}fromArray(e,t=0){return this.x=e[t],this.y=e[t+1],this}toArray(e=[],t=0){return e[t]=this.x,e[t+1]=this.y,e}fromBufferAttribute(e,t){return this.x=e.getX(t),this.y=e.getY(t),this}rotateAround(e,t){let n=Math.cos(t),s=Math.sin(t),r=this.x-e.x,a=this.y-e.y;return this.x=r*n-a*s+e.x,this.y=r*s+a*n+e.y,this}random(){return this.x=Math.random(),this.y=Math.random(),this}*[Symbol.iterator](){yield this.x,yield this.y}},wn=class{constructor(e=0,t=0,n=0,s=1){this.isQuaternion=!0,this._x=e,this._y=t,this._z=n,this._w=s}static slerpFlat(e,t,n,s,r,a,o){let l=n[s+0],c=n[s+1],h=n[s+2],u=n[s+3],d=r[a+0],p=r[a+1],_=r[a+2],v=r[a+3];if(u!==v||l!==d||c!==p||h!==_){let m=l*d+c*p+h*_+u*v;m<0&&(d=-d,p=-p,_=-_,v=-v,m=-m);let g=1-o;if(m<.9995){let M=Math.acos(m),C=Math.sin(M);g=Math.sin(g*M)/C,o=Math.sin(o*M)/C,l=l*g+d*o,c=c*g+p*o,h=h*g+_*o,u=u*g+v*o}else{l=l*g+d*o,c=c*g+p*o,h=h*g+_*o,u=u*g+v*o;let M=1/Math.sqrt(l*l+c*c+h*h+u*u);l*=M,c*=M,h*=M,u*=M}}e[t]=l,e[t+1]=c,e[t+2]=h,e[t+3]=u}static multiplyQuaternionsFlat(e,t,n,s,r,a){let o=n[s],l=n[s+1],c=n[s+2],h=n[s+3],u=r[a],d=r[a+1],p=r[a+2],_=r[a+3];return e[t]=o*_+h*u+l*p-c*d,e[t+1]=l*_+h*d+c*u-o*p,e[t+2]=c*_+h*p+o*d-l*u,e[t+3]=h*_-o*u-l*d-c*p,e}get x(){return this._x}set x(e){this._x=e,this._onChangeCallback()}get y(){return this._y}set y(e){this._y=e,this._onChangeCallback()}get z(){return this._z}set z(e){this._z=e,this._onChangeCallback()}get w(){return this._w}set w(e){this._w=e,this._onChangeCallback()}set(e,t,n,s){return this._x=e,this._y=t,this._z=n,this._w=s,this._onChangeCallback(),this}clone(){return new this.constructor(this._x,this._y,this._z,this._w)}copy(e){return this._x=e.x,this._y=e.y,this._z=e.z,this._w=e.w,this._onChangeCallback(),this}setFromEuler(e,t=!0){let n=e._x,s=e._y,r=e._z,a=e._order,o=Math.cos,l=Math.sin,c=o(n/2),h=o(s/2),u=o(r/2),d=l(n/2),p=l(s/2),_=l(r/2);switch(a){case"XYZ":this._x=d*h*u+c*p*_,this._y=c*p*u-d*h*_,this._z=c*h*_+d*p*u,this._w=c*h*u-d*p*_;break;case"YXZ":this._x=d*h*u+c*p*_,this._y=c*p*u-d*h*_,this._z=c*h*_-d*p*u,this._w=c*h*u+d*p*_;break;case"ZXY":this._x=d*h*u-c*p*_,this._y=c*p*u+d*h*_,this._z=c*h*_+d*p*u,this._w=c*h*u-d*p*_;break;case"ZYX":this._x=d*h*u-c*p*_,this._y=c*p*u+d*h*_,this._z=c*h*_-d*p*u,this._w=c*h*u+d*p*_;break;case"YZX":this._x=d*h*u+c*p*_,this._y=c*p*u+d*h*_,this._z=c*h*_-d*p*u,this._w=c*h*u-d*p*_;break;case"XZY":this._x=d*h*u-c*p*_,this._y=c*p*u-d*h*_,this._z=c*h*_+d*p*u,this._w=c*h*u+d*p*_;break;default:Oe("Quaternion: .setFromEuler() encountered an unknown order: "+a)}return t===!0&&this._onChangeCallback(),this}setFromAxisAngle(e,t){let n=t/2,s=Math.sin(n);return this._x=e.x*s,this._y=e.y*s,this._z=e.z*s,this._w=Math.cos(n),this._onChangeCallback(),this}setFromRotationMatrix(e){let t=e.elements,n=t[0],s=t[4],r=t[8],a=t[1],o=t[5],l=t[9],c=t[2],h=t[6],u=t[10],d=n+o+u;if(d>0){let p=.5/Math.sqrt(d+1);this._w=.25/p,this._x=(h-l)*p,this._y=(r-c)*p,this._z=(a-s)*p}else if(n>o&&n>u){let p=2*Math.sqrt(1+n-o-u);this._w=(h-l)/p,this._x=.25*p,this._y=(s+a)/p,this._z=(r+c)/p}else if(o>u){let p=2*Math.sqrt(1+o-n-u);this._w=(r-c)/p,this._x=(s+a)/p,this._y=.25*p,this._z=(l+h)/p}else{let p=2*Math.sqrt(1+u-n-o);this._w=(a-s)/p,this._x=(r+c)/p,this._y=(l+h)/p,this._z=.25*p}return this._onChangeCallback(),this}setFromUnitVectors(e,t){let n=e.dot(t)+1;return n<1e-8?(n=0,Math.abs(e.x)>Math.abs(e.z)?(this._x=-e.y,this._y=e.x,this._z=0,this._w=n):(this._x=0,this._y=-e.z,this._z=e.y,this._w=n)):(this._x=e.y*t.z-e.z*t.y,this._y=e.z*t.x-e.x*t.z,this._z=e.x*t.y-e.y*t.x,this._w=n),this.normalize()}angleTo(e){return 2*Math.acos(Math.abs(Qe(this.dot(e),-1,1)))}rotateTowards(e,t){let n=this.angleTo(e);if(n===0)return this;let s=Math.min(1,t/n);return this.slerp(e,s),this}identity(){return this.set(0,0,0,1)}invert(){return this.conjugate()}conjugate(){return this._x*=-1,this._y*=-1,this._z*=-1,this._onChangeCallback(),this}dot(e){return this._x*e._x+this._y*e._y+this._z*e._z+this._w*e._w}lengthSq(){return this._x*this._x+this._y*this._y+this._z*this._z+this._w*this._w}length(){return Math.sqrt(this._x*this._x+this._y*this._y+this._z*this._z+this._w*this._w)}normalize(){let e=this.length();return e===0?(this._x=0,this._y=0,this._z=0,this._w=1):(e=1/e,this._x=this._x*e,this._y=this._y*e,this._z=this._z*e,this._w=this._w*e),this._onChangeCallback(),this}multiply(e){return this.multiplyQuaternions(this,e)}premultiply(e){return this.multiplyQuaternions(e,this)}multiplyQuaternions(e,t){let n=e._x,s=e._y,r=e._z,a=e._w,o=t._x,l=t._y,c=t._z,h=t._w;return this._x=n*h+a*o+s*c-r*l,this._y=s*h+a*l+r*o-n*c,this._z=r*h+a*c+n*l-s*o,this._w=a*h-n*o-s*l-r*c,this._onChangeCallback(),this}slerp(e,t){let n=e._x,s=e._y,r=e._z,a=e._w,o=this.dot(e);o<0&&(n=-n,s=-s,r=-r,a=-a,o=-o);let l=1-t;if(o<.9995){let c=Math.acos(o),h=Math.sin(c);l=Math.sin(l*c)/h,t=Math.sin(t*c)/h,this._x=this._x*l+n*t,this._y=this._y*l+s*t,this._z=this._z*l+r*t,this._w=this._w*l+a*t,this._onChangeCallback()}else this._x=this._x*l+n*t,this._y=this._y*l+s*t,this._z=this._z*l+r*t,this._w=this._w*l+a*t,this.normalize();return this}slerpQuaternions(e,t,n){return this.copy(e).slerp(t,n)}random(){let e=2*Math.PI*Math.random(),t=2*Math.PI*Math.random(),n=Math.random(),s=Math.sqrt(1-n),r=Math.sqrt(n);return this.set(s*Math.sin(e),s*Math.cos(e),r*Math.sin(t),r*Math.cos(t))}equals(e){return e._x===this._x&&e._y===this._y&&e._z===this._z&&e._w===this._w}fromArray(e,t=0){return this._x=e[t],this._y=e[t+1],this._z=e[t+2],this._w=e[t+3],this._onChangeCallback(),this}toArray(e=[],t=0){return e[t]=this._x,e[t+1]=this._y,e[t+2]=this._z,e[t+3]=this._w,e}fromBufferAttribute(e,t){return this._x=e.getX(t),this._y=e.getY(t),this._z=e.getZ(t),this._w=e.getW(t),this._onChangeCallback(),this}toJSON(){return this.toArray()}_onChange(e){return this._onChangeCallback=e,this}_onChangeCallback(){}*[Symbol.iterator](){yield this._x,yield this._y,yield this._z,yield this._w}},W=class{static{this.prototype.isVector3=!0}constructor(e=0,t=0,n=0){this.x=e,this.y=t,this.z=n}set(e,t,n){return n===void 0&&(n=this.z),this.x=e,this.y=t,this.z=n,this}setScalar(e){return this.x=e,this.y=e,this.z=e,this}setX(e){return this.x=e,this}setY(e){return this.y=e,this}setZ(e){return this.z=e,this}setComponent(e,t){switch(e){case 0:this.x=t;break;case 1:this.y=t;break;case 2:this.z=t;break;default:throw new Error("THREE.Vector3: index is out of range: "+e)}return this}getComponent(e){switch(e){case 0:return this.x;case 1:return this.y;case 2:return this.z;default:throw new Error("THREE.Vector3: index is out of range: "+e)}}clone(){return new this.constructor(this.x,this.y,this.z)}copy(e){return this.x=e.x,this.y=e.y,this.z=e.z,this}add(e){return this.x+=e.x,this.y+=e.y,this.z+=e.z,this}addScalar(e){return this.x+=e,this.y+=e,this.z+=e,this}addVectors(e,t){return this.x=e.x+t.x,this.y=e.y+t.y,this.z=e.z+t.z,this}addScaledVector(e,t){return this.x+=e.x*t,this.y+=e.y*t,this.z+=e.z*t,this}sub(e){return this.x-=e.x,this.y-=e.y,this.z-=e.z,this}subScalar(e){return this.x-=e,this.y-=e,this.z-=e,this}subVectors(e,t){return this.x=e.x-t.x,this.y=e.y-t.y,this.z=e.z-t.z,this}multiply(e){return this.x*=e.x,this.y*=e.y,this.z*=e.z,this}multiplyScalar(e){return this.x*=e,this.y*=e,this.z*=e,this}multiplyVectors(e,t){return this.x=e.x*t.x,this.y=e.y*t.y,this.z=e.z*t.z,this}applyEuler(e){return this.applyQuaternion(cu.setFromEuler(e))}applyAxisAngle(e,t){return this.applyQuaternion(cu.setFromAxisAngle(e,t))}applyMatrix3(e){let t=this.x,n=this.y,s=this.z,r=e.elements;return this.x=r[0]*t+r[3]*n+r[6]*s,this.y=r[1]*t+r[4]*n+r[7]*s,this.z=r[2]*t+r[5]*n+r[8]*s,this}applyNormalMatrix(e){return this.applyMatrix3(e).normalize()}applyMatrix4(e){let t=this.x,n=this.y,s=this.z,r=e.elements,a=1/(r[3]*t+r[7]*n+r[11]*s+r[15]);return this.x=(r[0]*t+r[4]*n+r[8]*s+r[12])*a,this.y=(r[1]*t+r[5]*n+r[9]*s+r[13])*a,this.z=(r[2]*t+r[6]*n+r[10]*s+r[14])*a,this}applyQuaternion(e){let t=this.x,n=this.y,s=this.z,r=e.x,a=e.y,o=e.z,l=e.w,c=2*(a*s-o*n),h=2*(o*t-r*s),u=2*(r*n-a*t);return this.x=t+l*c+a*u-o*h,this.y=n+l*h+o*c-r*u,this.z=s+l*u+r*h-a*c,this}project(e){return this.applyMatrix4(e.matrixWorldInverse).applyMatrix4(e.projectionMatrix)}unproject(e){return this.applyMatrix4(e.projectionMatrixInverse).applyMatrix4(e.matrixWorld)}transformDirection(e){let t=this.x,n=this.y,s=this.z,r=e.elements;return this.x=r[0]*t+r[4]*n+r[8]*s,this.y=r[1]*t+r[5]*n+r[9]*s,this.z=r[2]*t+r[6]*n+r[10]*s,this.normalize()}divide(e){return this.x/=e.x,this.y/=e.y,this.z/=e.z,this}divideScalar(e){return this.multiplyScalar(1/e)}min(e){return this.x=Math.min(this.x,e.x),this.y=Math.min(this.y,e.y),this.z=Math.min(this.z,e.z),this}max(e){return this.x=Math.max(this.x,e.x),this.y=Math.max(this.y,e.y),this.z=Math.max(this.z,e.z),this}clamp(e,t){return this.x=Qe(this.x,e.x,t.x),this.y=Qe(this.y,e.y,t.y),this.z=Qe(this.z,e.z,t.z),this}clampScalar(e,t){return this.x=Qe(this.x,e,t),this.y=Qe(this.y,e,t),this.z=Qe(this.z,e,t),this}clampLength(e,t){let n=this.length();return this.divideScalar(n||1).multiplyScalar(Qe(n,e,t))}floor(){return this.x=Math.floor(this.x),this.y=Math.floor(this.y),this.z=Math.floor(this.z),this}ceil(){return this.x=Math.ceil(this.x),this.y=Math.ceil(this.y),this.z=Math.ceil(this.z),this}round(){return this.x=Math.round(this.x),this.y=Math.round(this.y),this.z=Math.round(this.z),this}roundToZero(){return this.x=Math.trunc(this.x),this.y=Math.trunc(this.y),this.z=Math.trunc(this.z),this}negate(){return this.x=-this.x,this.y=-this.y,this.z=-this.z,this}dot(e){return this.x*e.x+this.y*e.y+this.z*e.z}lengthSq(){return this.x*this.x+this.y*this.y+this.z*this.z}length(){return Math.sqrt(this.x*this.x+this.y*this.y+this.z*this.z)}manhattanLength(){return Math.abs(this.x)+Math.abs(this.y)+Math.abs(this.z)}normalize(){return this.divideScalar(this.length()||1)}setLength(e){return this.normalize().multiplyScalar(e)}lerp(e,t){return this.x+=(e.x-this.x)*t,this.y+=(e.y-this.y)*t,this.z+=(e.z-this.z)*t,this}lerpVectors(e,t,n){return this.x=e.x+(t.x-e.x)*n,this.y=e.y+(t.y-e.y)*n,this.z=e.z+(t.z-e.z)*n,this}cross(e){return this.crossVectors(this,e)}crossVectors(e,t){let n=e.x,s=e.y,r=e.z,a=t.x,o=t.y,l=t.z;return this.x=s*l-r*o,this.y=r*a-n*l,this.z=n*o-s*a,this}projectOnVector(e){let t=e.lengthSq();if(t===0)return this.set(0,0,0);let n=e.dot(this)/t;return this.copy(e).multiplyScalar(n)}projectOnPlane(e){return Hl.copy(this).projectOnVector(e),this.sub(Hl)}reflect(e){return this.sub(Hl.copy(e).multiplyScalar(2*this.dot(e)))}angleTo(e){let t=Math.sqrt(this.lengthSq()*e.lengthSq());if(t===0)return Math.PI/2;let n=this.dot(e)/t;return Math.acos(Qe(n,-1,1))}distanceTo(e){return Math.sqrt(this.distanceToSquared(e))}distanceToSquared(e){let t=this.x-e.x,n=this.y-e.y,s=this.z-e.z;return t*t+n*n+s*s}manhattanDistanceTo(e){return Math.abs(this.x-e.x)+Math.abs(this.y-e.y)+Math.abs(this.z-e.z)}setFromSpherical(e){return this.setFromSphericalCoords(e.radius,e.phi,e.theta)}setFromSphericalCoords(e,t,n){let s=Math.sin(t)*e;return this.x=s*Math.sin(n),this.y=Math.cos(t)*e,this.z=s*Math.cos(n),this}setFromCylindrical(e){return this.setFromCylindricalCoords(e.radius,e.theta,e.y)}setFromCylindricalCoords(e,t,n){return this.x=e*Math.sin(t),this.y=n,this.z=e*Math.cos(t),this}setFromMatrixPosition(e){let t=e.elements;return this.x=t[12],this.y=t[13],this.z=t[14],this}setFromMatrixScale(e){let t=this.setFromMatrixColumn(e,0).length(),n=this.setFromMatrixColumn(e,1).length(),s=this.setFromMatrixColumn(e,2).length();return this.x=t,this.y=n,this.z=s,this}setFromMatrixColumn(e,t){return this.fromArray(e.elements,t*4)}setFromMatrix3Column(e,t){return this.fromArray(e.elements,t*3)}setFromEuler(e){return this.x=e._x,this.y=e._y,this.z=e._z,this}setFromColor(e){return this.x=e.r,this.y=e.g,this.z=e.b,this}equals(e){return e.x===this.x&&e.y===this.y&&e.z===this.z}fromArray(e,t=0){return this.x=e[t],this.y=e[t+1],this.z=e[t+2],this}toArray(e=[],t=0){return e[t]=this.x,e[t+1]=this.y,e[t+2]=this.z,e}fromBufferAttribute(e,t){return this.x=e.getX(t),this.y=e.getY(t),this.z=e.getZ(t),this}random(){return this.x=Math.random(),this.y=Math.random(),this.z=Math.random(),this}randomDirection(){let e=Math.random()*Math.PI*2,t=Math.random()*2-1,n=Math.sqrt(1-t*t);return this.x=n*Math.cos(e),this.y=t,this.z=n*Math.sin(e),this}*[Symbol.iterator](){yield this.x,yield this.y,yield this.z}},Hl=new W,cu=new wn,Ge=class{static{this.prototype.isMatrix3=!0}constructor(e,t,n,s,r,a,o,l,c){this.elements=[1,0,0,0,1,0,0,0,1],e!==void 0&&this.set(e,t,n,s,r,a,o,l,c)}set(e,t,n,s,r,a,o,l,c){let h=this.elements;return h[0]=e,h[1]=s,h[2]=o,h[3]=t,h[4]=r,h[5]=l,h[6]=n,h[7]=a,h[8]=c,this}identity(){return this.set(1,0,0,0,1,0,0,0,1),this}copy(e){let t=this.elements,n=e.elements;return t[0]=n[0],t[1]=n[1],t[2]=n[2],t[3]=n[3],t[4]=n[4],t[5]=n[5],t[6]=n[6],t[7]=n[7],t[8]=n[8],this}extractBasis(e,t,n){return e.setFromMatrix3Column(this,0),t.setFromMatrix3Column(this,1),n.setFromMatrix3Column(this,2),this}setFromMatrix4(e){let t=e.elements;return this.set(t[0],t[4],t[8],t[1],t[5],t[9],t[2],t[6],t[10]),this}multiply(e){return this.multiplyMatrices(this,e)}premultiply(e){return this.multiplyMatrices(e,this)}multiplyMatrices(e,t){let n=e.elements,s=t.elements,r=this.elements,a=n[0],o=n[3],l=n[6],c=n[1],h=n[4],u=n[7],d=n[2],p=n[5],_=n[8],v=s[0],m=s[3],g=s[6],M=s[1],C=s[4],w=s[7],E=s[2],T=s[5],x=s[8];return r[0]=a*v+o*M+l*E,r[3]=a*m+o*C+l*T,r[6]=a*g+o*w+l*x,r[1]=c*v+h*M+u*E,r[4]=c*m+h*C+u*T,r[7]=c*g+h*w+u*x,r[2]=d*v+p*M+_*E,r[5]=d*m+p*C+_*T,r[8]=d*g+p*w+_*x,this}multiplyScalar(e){let t=this.elements;return t[0]*=e,t[3]*=e,t[6]*=e,t[1]*=e,t[4]*=e,t[7]*=e,t[2]*=e,t[5]*=e,t[8]*=e,this}determinant(){let e=this.elements,t=e[0],n=e[1],s=e[2],r=e[3],a=e[4],o=e[5],l=e[6],c=e[7],h=e[8];return t*a*h-t*o*c-n*r*h+n*o*l+s*r*c-s*a*l}invert(){let e=this.elements,t=e[0],n=e[1],s=e[2],r=e[3],a=e[4],o=e[5],l=e[6],c=e[7],h=e[8],u=h*a-o*c,d=o*l-h*r,p=c*r-a*l,_=t*u+n*d+s*p;if(_===0)return this.set(0,0,0,0,0,0,0,0,0);let v=1/_;return e[0]=u*v,e[1]=(s*c-h*n)*v,e[2]=(o*n-s*a)*v,e[3]=d*v,e[4]=(h*t-s*l)*v,e[5]=(s*r-o*t)*v,e[6]=p*v,e[7]=(n*l-c*t)*v,e[8]=(a*t-n*r)*v,this}transpose(){let e,t=this.elements;return e=t[1],t[1]=t[3],t[3]=e,e=t[2],t[2]=t[6],t[6]=e,e=t[5],t[5]=t[7],t[7]=e,this}getNormalMatrix(e){return this.setFromMatrix4(e).invert().transpose()}transposeIntoArray(e){let t=this.elements;return e[0]=t[0],e[1]=t[3],e[2]=t[6],e[3]=t[1],e[4]=t[4],e[5]=t[7],e[6]=t[2],e[7]=t[5],e[8]=t[8],this}setUvTransform(e,t,n,s,r,a,o){let l=Math.cos(r),c=Math.sin(r);return this.set(n*l,n*c,-n*(l*a+c*o)+a+e,-s*c,s*l,-s*(-c*a+l*o)+o+t,0,0,1),this}scale(e,t){return pr("Matrix3: .scale() is deprecated. Use .makeScale() instead."),this.premultiply($l.makeScale(e,t)),this}rotate(e){return pr("Matrix3: .rotate() is deprecated. Use .makeRotation() instead."),this.premultiply($l.makeRotation(-e)),this}translate(e,t){return pr("Matrix3: .translate() is deprecated. Use .makeTranslation() instead."),this.premultiply($l.makeTranslation(e,t)),this}makeTranslation(e,t){return e.isVector2?this.set(1,0,e.x,0,1,e.y,0,0,1):this.set(1,0,e,0,1,t,0,0,1),this}makeRotation(e){let t=Math.cos(e),n=Math.sin(e);return this.set(t,-n,0,n,t,0,0,0,1),this}makeScale(e,t){return this.set(e,0,0,0,t,0,0,0,1),this}equals(e){let t=this.elements,n=e.elements;for(let s=0;s<9;s++)if(t[s]!==n[s])return!1;return!0}fromArray(e,t=0){for(let n=0;n<9;n++)this.elements[n]=e[n+t];return this}toArray(e=[],t=0){let n=this.elements;return e[t]=n[0],e[t+1]=n[1],e[t+2]=n[2],e[t+3]=n[3],e[t+4]=n[4],e[t+5]=n[5],e[t+6]=n[6],e[t+7]=n[7],e[t+8]=n[8],e}clone(){return new this.constructor().fromArray(this.elements)}},$l=new Ge,hu=new Ge().set(.4123908,.3575843,.1804808,.212639,.7151687,.0721923,.0193308,.1191948,.9505322),uu=new Ge().set(3.2409699,-1.5373832,-.4986108,-.9692436,1.8759675,.0415551,.0556301,-.203977,1.0569715);function qp(){let i={enabled:!0,workingColorSpace:gr,spaces:{},convert:function(s,r,a){return this.enabled===!1||r===a||!r||!a||(this.spaces[r].transfer===it&&(s.r=hi(s.r),s.g=hi(s.g),s.b=hi(s.b)),this.spaces[r].primaries!==this.spaces[a].primaries&&(s.applyMatrix3(this.spaces[r].toXYZ),s.applyMatrix3(this.spaces[a].fromXYZ)),this.spaces[a].transfer===it&&(s.r=Ls(s.r),s.g=Ls(s.g),s.b=Ls(s.b))),s},workingToColorSpace:function(s,r){return this.convert(s,this.workingColorSpace,r)},colorSpaceToWorking:function(s,r){return this.convert(s,r,this.workingColorSpace)},getPrimaries:function(s){return this.spaces[s].primaries},getTransfer:function(s){return s===mi?_r:this.spaces[s].transfer},getToneMappingMode:function(s){return this.spaces[s].outputColorSpaceConfig.toneMappingMode||"standard"},getLuminanceCoefficients:function(s,r=this.workingColorSpace){return s.fromArray(this.spaces[r].luminanceCoefficients)},define:function(s){Object.assign(this.spaces,s)},_getMatrix:function(s,r,a){return s.copy(this.spaces[a].fromXYZ).multiply(this.spaces[r].toXYZ)},_getDrawingBufferColorSpace:function(s){return this.spaces[s].outputColorSpaceConfig.drawingBufferColorSpace},_getUnpackColorSpace:function(s=this.workingColorSpace){return this.spaces[s].workingColorSpaceConfig.unpackColorSpace}},e=[.64,.33,.3,.6,.15,.06],t=[.2126,.7152,.0722],n=[.3127,.329];return i.define({[gr]:{primaries:e,whitePoint:n,transfer:_r,toXYZ:hu,fromXYZ:uu,luminanceCoefficients:t,workingColorSpaceConfig:{unpackColorSpace:hn},outputColorSpaceConfig:{drawingBufferColorSpace:hn}},[hn]:{primaries:e,whitePoint:n,transfer:it,toXYZ:hu,fromXYZ:uu,luminanceCoefficients:t,outputColorSpaceConfig:{drawingBufferColorSpace:hn}}}),i}var Ke=qp();function hi(i){return i<.04045?i*.0773993808:Math.pow(i*.9478672986+.0521327014,2.4)}function Ls(i){return i<.0031308?i*12.92:1.055*Math.pow(i,.41666)-.055}var xs,qa=class{static getDataURL(e,t="image/png"){if(/^data:/i.test(e.src)||typeof HTMLCanvasElement>"u")return e.src;let n;if(e instanceof HTMLCanvasElement)n=e;else{xs===void 0&&(xs=xr("canvas")),xs.width=e.width,xs.height=e.height;let s=xs.getContext("2d");e instanceof ImageData?s.putImageData(e,0,0):s.drawImage(e,0,0,e.width,e.height),n=xs}return n.toDataURL(t)}static sRGBToLinear(e){if(typeof HTMLImageElement<"u"&&e instanceof HTMLImageElement||typeof HTMLCanvasElement<"u"&&e instanceof HTMLCanvasElement||typeof ImageBitmap<"u"&&e instanceof ImageBitmap){let t=xr("canvas");t.width=e.width,t.height=e.height;let n=t.getContext("2d");n.drawImage(e,0,0,e.width,e.height);let s=n.getImageData(0,0,e.width,e.height),r=s.data;for(let a=0;a<r.length;a++)r[a]=hi(r[a]/255)*255;return n.putImageData(s,0,0),t}else if(e.data){let t=e.data.slice(0);for(let n=0;n<t.length;n++)t instanceof Uint8Array||t instanceof Uint8ClampedArray?t[n]=Math.floor(hi(t[n]/255)*255):t[n]=hi(t[n]);return{data:t,width:e.width,height:e.height}}else return Oe("ImageUtils.sRGBToLinear(): Unsupported image type. No color space conversion applied."),e}},Yp=0,ks=class{constructor(e=null){this.isTextureSource=!0,Object.defineProperty(this,"id",{value:Yp++}),this.uuid=Or(),this.data=e,this.dataReady=!0,this.version=0}getSize(e){let t=this.data;return typeof HTMLVideoElement<"u"&&t instanceof HTMLVideoElement?e.set(t.videoWidth,t.videoHeight,0):typeof VideoFrame<"u"&&t instanceof VideoFrame?e.set(t.displayWidth,t.displayHeight,0):t!==null?e.set(t.width||0,t.height||0,t.depth||0):e.set(0,0,0),e}set needsUpdate(e){e===!0&&this.version++}toJSON(e){let t=e===void 0||typeof e=="string";if(!t&&e.images[this.uuid]!==void 0)return e.images[this.uuid];let n={uuid:this.uuid,url:""},s=this.data;if(s!==null){let r;if(Array.isArray(s)){r=[];for(let a=0,o=s.length;a<o;a++)s[a].isDataTexture?r.push(Wl(s[a].image)):r.push(Wl(s[a]))}else r=Wl(s);n.url=r}return t||(e.images[this.uuid]=n),n}};function Wl(i){return typeof HTMLImageElement<"u"&&i instanceof HTMLImageElement||typeof HTMLCanvasElement<"u"&&i instanceof HTMLCanvasElement||typeof ImageBitmap<"u"&&i instanceof ImageBitmap?qa.getDataURL(i):i.data?{data:Array.from(i.data),width:i.width,height:i.height,type:i.data.constructor.name}:(Oe("Texture: Unable to serialize Texture."),{})}var Zp=0,Xl=new W,nn=class i extends Wn{constructor(e=i.DEFAULT_IMAGE,t=i.DEFAULT_MAPPING,n=$n,s=$n,r=Jt,a=fi,o=On,l=mn,c=i.DEFAULT_ANISOTROPY,h=mi){super(),this.isTexture=!0,Object.defineProperty(this,"id",{value:Zp++}),this.uuid=Or(),this.name="",this.source=new ks(e),this.mipmaps=[],this.mapping=t,this.channel=0,this.wrapS=n,this.wrapT=s,this.magFilter=r,this.minFilter=a,this.anisotropy=c,this.format=o,this.internalFormat=null,this.type=l,this.offset=new et(0,0),this.repeat=new et(1,1),this.center=new et(0,0),this.rotation=0,this.matrixAutoUpdate=!0,this.matrix=new Ge,this.generateMipmaps=!0,this.mipmapsAutoUpdate=!0,this.premultiplyAlpha=!1,this.flipY=!0,this.unpackAlignment=4,this.colorSpace=h,this.userData={},this.updateRanges=[],this.version=0,this.onUpdate=null,this.renderTarget=null,this.isRenderTargetTexture=!1,this.isArrayTexture=!!(e&&e.depth&&e.depth>1),this.pmremVersion=0,this.isPMREMTexture=!1,this.normalized=!1}get width(){return this.source.getSize(Xl).x}get height(){return this.source.getSize(Xl).y}get depth(){return this.source.getSize(Xl).z}get image(){return this.source.data}set image(e){this.source.data=e}updateMatrix(){this.matrix.setUvTransform(this.offset.x,this.offset.y,this.repeat.x,this.repeat.y,this.rotation,this.center.x,this.center.y)}addUpdateRange(e,t){this.updateRanges.push({start:e,count:t})}clearUpdateRanges(){this.updateRanges.length=0}clone(){return new this.constructor().copy(this)}copy(e){return this.name=e.name,this.source=e.source,this.mipmaps=e.mipmaps.slice(0),this.mapping=e.mapping,this.channel=e.channel,this.wrapS=e.wrapS,this.wrapT=e.wrapT,this.magFilter=e.magFilter,this.minFilter=e.minFilter,this.anisotropy=e.anisotropy,this.format=e.format,this.internalFormat=e.internalFormat,this.type=e.type,this.normalized=e.normalized,this.offset.copy(e.offset),this.repeat.copy(e.repeat),this.center.copy(e.center),this.rotation=e.rotation,this.matrixAutoUpdate=e.matrixAutoUpdate,this.matrix.copy(e.matrix),this.generateMipmaps=e.generateMipmaps,this.mipmapsAutoUpdate=e.mipmapsAutoUpdate,this.premultiplyAlpha=e.premultiplyAlpha,this.flipY=e.flipY,this.unpackAlignment=e.unpackAlignment,this.colorSpace=e.colorSpace,this.renderTarget=e.renderTarget,this.isRenderTargetTexture=e.isRenderTargetTexture,this.isPMREMTexture=e.isPMREMTexture,this.isArrayTexture=e.isArrayTexture,this.userData=JSON.parse(JSON.stringify(e.userData)),this.needsUpdate=!0,this}setValues(e){for(let t in e){let n=e[t];if(n===void 0){Oe(`Texture.setValues(): parameter '${t}' has value of undefined.`);continue}let s=this[t];if(s===void 0){Oe(`Texture.setValues(): property '${t}' does not exist.`);continue}s&&n&&s.isVector2&&n.isVector2||s&&n&&s.isVector3&&n.isVector3||s&&n&&s.isMatrix3&&n.isMatrix3?s.copy(n):this[t]=n}}toJSON(e){let t=e===void 0||typeof e=="string";if(!t&&e.textures[this.uuid]!==void 0)return e.textures[this.uuid];let n={metadata:{version:4.7,type:"Texture",generator:"Texture.toJSON"},uuid:this.uuid,name:this.name,image:this.source.toJSON(e).uuid,mapping:this.mapping,channel:this.channel,repeat:[this.repeat.x,this.repeat.y],offset:[this.offset.x,this.offset.y],center:[this.center.x,this.center.y],rotation:this.rotation,wrap:[this.wrapS,this.wrapT],format:this.format,internalFormat:this.internalFormat,type:this.type,normalized:this.normalized,colorSpace:this.colorSpace,minFilter:this.minFilter,magFilter:this.magFilter,anisotropy:this.anisotropy,flipY:this.flipY,generateMipmaps:this.generateMipmaps,mipmapsAutoUpdate:this.mipmapsAutoUpdate,premultiplyAlpha:this.premultiplyAlpha,unpackAlignment:this.unpackAlignment};return Object.keys(this.userData).length>0&&(n.userData=this.userData),t||(e.textures[this.uuid]=n),n}dispose(){this.dispatchEvent({type:"dispose"})}transformUv(e){if(this.mapping!==Pc)return e;if(e.applyMatrix3(this.matrix),e.x<0||e.x>1)switch(this.wrapS){case Ha:e.x=e.x-Math.floor(e.x);break;case $n:e.x=e.x<0?0:1;break;case $a:Math.abs(Math.floor(e.x)%2)===1?e.x=Math.ceil(e.x)-e.x:e.x=e.x-Math.floor(e.x);break}if(e.y<0||e.y>1)switch(this.wrapT){case Ha:e.y=e.y-Math.floor(e.y);break;case $n:e.y=e.y<0?0:1;break;case $a:Math.abs(Math.floor(e.y)%2)===1?e.y=Math.ceil(e.y)-e.y:e.y=e.y-Math.floor(e.y);break}return this.flipY&&(e.y=1-e.y),e}set needsUpdate(e){e===!0&&(this.version++,this.source.needsUpdate=!0)}set needsPMREMUpdate(e){e===!0&&this.pmremVersion++}};nn.DEFAULT_IMAGE=null;nn.DEFAULT_MAPPING=Pc;nn.DEFAULT_ANISOTROPY=1;var Mt=class{static{this.prototype.isVector4=!0}constructor(e=0,t=0,n=0,s=1){this.x=e,this.y=t,this.z=n,this.w=s}get width(){return this.z}set width(e){this.z=e}get height(){return this.w}set height(e){this.w=e}set(e,t,n,s){return this.x=e,this.y=t,this.z=n,this.w=s,this}setScalar(e){return this.x=e,this.y=e,this.z=e,this.w=e,this}setX(e){return this.x=e,this}setY(e){return this.y=e,this}setZ(e){return this.z=e,this}setW(e){return this.w=e,this}setComponent(e,t){switch(e){case 0:this.x=t;break;case 1:this.y=t;break;case 2:this.z=t;break;case 3:this.w=t;break;default:throw new Error("THREE.Vector4: index is out of range: "+e)}return this}getComponent(e){switch(e){case 0:return this.x;case 1:return this.y;case 2:return this.z;case 3:return this.w;default:throw new Error("THREE.Vector4: index is out of range: "+e)}}clone(){return new this.constructor(this.x,this.y,this.z,this.w)}copy(e){return this.x=e.x,this.y=e.y,this.z=e.z,this.w=e.w!==void 0?e.w:1,this}add(e){return this.x+=e.x,this.y+=e.y,this.z+=e.z,this.w+=e.w,this}addScalar(e){return this.x+=e,this.y+=e,this.z+=e,this.w+=e,this}addVectors(e,t){return this.x=e.x+t.x,this.y=e.y+t.y,this.z=e.z+t.z,this.w=e.w+t.w,this}addScaledVector(e,t){return this.x+=e.x*t,this.y+=e.y*t,this.z+=e.z*t,this.w+=e.w*t,this}sub(e){return this.x-=e.x,this.y-=e.y,this.z-=e.z,this.w-=e.w,this}subScalar(e){return this.x-=e,this.y-=e,this.z-=e,this.w-=e,this}subVectors(e,t){return this.x=e.x-t.x,this.y=e.y-t.y,this.z=e.z-t.z,this.w=e.w-t.w,this}multiply(e){return this.x*=e.x,this.y*=e.y,this.z*=e.z,this.w*=e.w,this}multiplyScalar(e){return this.x*=e,this.y*=e,this.z*=e,this.w*=e,this}applyMatrix4(e){let t=this.x,n=this.y,s=this.z,r=this.w,a=e.elements;return this.x=a[0]*t+a[4]*n+a[8]*s+a[12]*r,this.y=a[1]*t+a[5]*n+a[9]*s+a[13]*r,this.z=a[2]*t+a[6]*n+a[10]*s+a[14]*r,this.w=a[3]*t+a[7]*n+a[11]*s+a[15]*r,this}divide(e){return this.x/=e.x,this.y/=e.y,this.z/=e.z,this.w/=e.w,this}divideScalar(e){return this.multiplyScalar(1/e)}setAxisAngleFromQuaternion(e){this.w=2*Math.acos(e.w);let t=Math.sqrt(1-e.w*e.w);return t<1e-4?(this.x=1,this.y=0,this.z=0):(this.x=e.x/t,this.y=e.y/t,this.z=e.z/t),this}setAxisAngleFromRotationMatrix(e){let t,n,s,r,l=e.elements,c=l[0],h=l[4],u=l[8],d=l[1],p=l[5],_=l[9],v=l[2],m=l[6],g=l[10];if(Math.abs(h-d)<.01&&Math.abs(u-v)<.01&&Math.abs(_-m)<.01){if(Math.abs(h+d)<.1&&Math.abs(u+v)<.1&&Math.abs(_+m)<.1&&Math.abs(c+p+g-3)<.1)return this.set(1,0,0,0),this;t=Math.PI;let C=(c+1)/2,w=(p+1)/2,E=(g+1)/2,T=(h+d)/4,x=(u+v)/4,A=(_+m)/4;return C>w&&C>E?C<.01?(n=0,s=.707106781,r=.707106781):(n=Math.sqrt(C),s=T/n,r=x/n):w>E?w<.01?(n=.707106781,s=0,r=.707106781):(s=Math.sqrt(w),n=T/s,r=A/s):E<.01?(n=.707106781,s=.707106781,r=0):(r=Math.sqrt(E),n=x/r,s=A/r),this.set(n,s,r,t),this}let M=Math.sqrt((m-_)*(m-_)+(u-v)*(u-v)+(d-h)*(d-h));return Math.abs(M)<.001&&(M=1),this.x=(m-_)/M,this.y=(u-v)/M,this.z=(d-h)/M,this.w=Math.acos((c+p+g-1)/2),this}setFromMatrixPosition(e){let t=e.elements;return this.x=t[12],this.y=t[13],this.z=t[14],this.w=t[15],this}min(e){return this.x=Math.min(this.x,e.x),this.y=Math.min(this.y,e.y),this.z=Math.min(this.z,e.z),this.w=Math.min(this.w,e.w),this}max(e){return this.x=Math.max(this.x,e.x),this.y=Math.max(this.y,e.y),this.z=Math.max(this.z,e.z),this.w=Math.max(this.w,e.w),this}clamp(e,t){return this.x=Qe(this.x,e.x,t.x),this.y=Qe(this.y,e.y,t.y),this.z=Qe(this.z,e.z,t.z),this.w=Qe(this.w,e.w,t.w),this}clampScalar(e,t){return this.x=Qe(this.x,e,t),this.y=Qe(this.y,e,t),this.z=Qe(this.z,e,t),this.w=Qe(this.w,e,t),this}clampLength(e,t){let n=this.length();return this.divideScalar(n||1).multiplyScalar(Qe(n,e,t))}floor(){return this.x=Math.floor(this.x),this.y=Math.floor(this.y),this.z=Math.floor(this.z),this.w=Math.floor(this.w),this}ceil(){return this.x=Math.ceil(this.x),this.y=Math.ceil(this.y),this.z=Math.ceil(this.z),this.w=Math.ceil(this.w),this}round(){return this.x=Math.round(this.x),this.y=Math.round(this.y),this.z=Math.round(this.z),this.w=Math.round(this.w),this}roundToZero(){return this.x=Math.trunc(this.x),this.y=Math.trunc(this.y),this.z=Math.trunc(this.z),this.w=Math.trunc(this.w),this}negate(){return this.x=-this.x,this.y=-this.y,this.z=-this.z,this.w=-this.w,this}dot(e){return this.x*e.x+this.y*e.y+this.z*e.z+this.w*e.w}lengthSq(){return this.x*this.x+this.y*this.y+this.z*this.z+this.w*this.w}length(){return Math.sqrt(this.x*this.x+this.y*this.y+this.z*this.z+this.w*this.w)}manhattanLength(){return Math.abs(this.x)+Math.abs(this.y)+Math.abs(this.z)+Math.abs(this.w)}normalize(){return this.divideScalar(this.length()||1)}setLength(e){return this.normalize().multiplyScalar(e)}lerp(e,t){return this.x+=(e.x-this.x)*t,this.y+=(e.y-this.y)*t,this.z+=(e.z-this.z)*t,this.w+=(e.w-this.w)*t,this}lerpVectors(e,t,n){return this.x=e.x+(t.x-e.x)*n,this.y=e.y+(t.y-e.y)*n,this.z=e.z+(t.z-e.z)*n,this.w=e.w+(t.w-e.w)*n,this}equals(e){return e.x===this.x&&e.y===this.y&&e.z===this.z&&e.w===this.w}fromArray(e,t=0){return this.x=e[t],this.y=e[t+1],this.z=e[t+2],this.w=e[t+3],this}toArray(e=[],t=0){return e[t]=this.x,e[t+1]=this.y,e[t+2]=this.z,e[t+3]=this.w,e}fromBufferAttribute(e,t){return this.x=e.getX(t),this.y=e.getY(t),this.z=e.getZ(t),this.w=e.getW(t),this}random(){return this.x=Math.random(),this.y=Math.random(),this.z=Math.random(),this.w=Math.random(),this}*[Symbol.iterator](){yield this.x,yield this.y,yield this.z,yield this.w}},Ya=class extends Wn{constructor(e=1,t=1,n={}){super(),n=Object.assign({generateMipmaps:!1,internalFormat:null,minFilter:Jt,depthBuffer:!0,stencilBuffer:!1,resolveColorBuffer:!0,resolveDepthBuffer:!0,resolveStencilBuffer:!0,storeMultisampledColorBuffer:!0,storeMultisampledDepthBuffer:!0,storeMultisampledStencilBuffer:!0,depthTexture:null,samples:0,count:1,depth:1,multiview:!1,useArrayDepthTexture:!1},n),this.isRenderTarget=!0,this.width=e,this.height=t,this.depth=n.depth,this.scissor=new Mt(0,0,e,t),this.scissorTest=!1,this.viewport=new Mt(0,0,e,t),this.textures=[];let s=n.count;for(let r=0;r<s;r++)this.textures[r]=new nn({width:e,height:t,depth:n.depth}),this.textures[r].isRenderTargetTexture=!0,this.textures[r].renderTarget=this;this._setTextureOptions(n),this.depthBuffer=n.depthBuffer,this.stencilBuffer=n.stencilBuffer,this.resolveColorBuffer=n.resolveColorBuffer,this.resolveDepthBuffer=n.resolveDepthBuffer,this.resolveStencilBuffer=n.resolveStencilBuffer,this.storeMultisampledColorBuffer=n.storeMultisampledColorBuffer,this.storeMultisampledDepthBuffer=n.storeMultisampledDepthBuffer,this.storeMultisampledStencilBuffer=n.storeMultisampledStencilBuffer,this._depthTexture=null,this.depthTexture=n.depthTexture,this.samples=n.samples,this.multiview=n.multiview,this.useArrayDepthTexture=n.useArrayDepthTexture}_setTextureOptions(e={}){let t={minFilter:Jt,generateMipmaps:!1,flipY:!1,internalFormat:null};e.mapping!==void 0&&(t.mapping=e.mapping),e.wrapS!==void 0&&(t.wrapS=e.wrapS),e.wrapT!==void 0&&(t.wrapT=e.wrapT),e.wrapR!==void 0&&(t.wrapR=e.wrapR),e.magFilter!==void 0&&(t.magFilter=e.magFilter),e.minFilter!==void 0&&(t.minFilter=e.minFilter),e.format!==void 0&&(t.format=e.format),e.type!==void 0&&(t.type=e.type),e.anisotropy!==void 0&&(t.anisotropy=e.anisotropy),e.colorSpace!==void 0&&(t.colorSpace=e.colorSpace),e.flipY!==void 0&&(t.flipY=e.flipY),e.generateMipmaps!==void 0&&(t.generateMipmaps=e.generateMipmaps),e.mipmapsAutoUpdate!==void 0&&(t.mipmapsAutoUpdate=e.mipmapsAutoUpdate),e.internalFormat!==void 0&&(t.internalFormat=e.internalFormat);for(let n=0;n<this.textures.length;n++)this.textures[n].setValues(t)}get texture(){return this.textures[0]}set texture(e){this.textures[0]=e}set depthTexture(e){this._depthTexture!==null&&this._depthTexture.renderTarget===this&&(this._depthTexture.renderTarget=null),e!==null&&e.renderTarget===null&&(e.renderTarget=this),this._depthTexture=e}get depthTexture(){return this._depthTexture}setSize(e,t,n=1){if(this.width!==e||this.height!==t||this.depth!==n){this.width=e,this.height=t,this.depth=n;for(let s=0,r=this.textures.length;s<r;s++)this.textures[s].image.width=e,this.textures[s].image.height=t,this.textures[s].image.depth=n,this.textures[s].isData3DTexture!==!0&&(this.textures[s].isArrayTexture=this.textures[s].image.depth>1);this.dispose()}this.viewport.set(0,0,e,t),this.scissor.set(0,0,e,t)}clone(){return new this.constructor().copy(this)}copy(e){this.width=e.width,this.height=e.height,this.depth=e.depth,this.scissor.copy(e.scissor),this.scissorTest=e.scissorTest,this.viewport.copy(e.viewport),this.textures.length=0;for(let t=0,n=e.textures.length;t<n;t++){this.textures[t]=e.textures[t].clone(),this.textures[t].isRenderTargetTexture=!0,this.textures[t].renderTarget=this;let s=Object.assign({},e.textures[t].image);this.textures[t].source=new ks(s)}if(this.depthBuffer=e.depthBuffer,this.stencilBuffer=e.stencilBuffer,this.resolveColorBuffer=e.resolveColorBuffer,this.resolveDepthBuffer=e.resolveDepthBuffer,this.resolveStencilBuffer=e.resolveStencilBuffer,this.storeMultisampledColorBuffer=e.storeMultisampledColorBuffer,this.storeMultisampledDepthBuffer=e.storeMultisampledDepthBuffer,this.storeMultisampledStencilBuffer=e.storeMultisampledStencilBuffer,e.depthTexture!==null)if(e.depthTexture.renderTarget===e){let t=e.depthTexture.clone();t.renderTarget=null,this.depthTexture=t}else this.depthTexture=e.depthTexture;else this.depthTexture=null;return this.samples=e.samples,this.multiview=e.multiview,this.useArrayDepthTexture=e.useArrayDepthTexture,this}dispose(){this.dispatchEvent({type:"dispose"})}},dn=class extends Ya{constructor(e=1,t=1,n={}){super(e,t,n),this.isWebGLRenderTarget=!0}},yr=class extends nn{constructor(e=null,t=1,n=1,s=1){super(null),this.isDataArrayTexture=!0,this.image={data:e,width:t,height:n,depth:s},this.magFilter=kt,this.minFilter=kt,this.wrapR=$n,this.generateMipmaps=!1,this.flipY=!1,this.unpackAlignment=1,this.layerUpdates=new Set}copy(e){return super.copy(e),this.wrapR=e.wrapR,this}addLayerUpdate(e){this.layerUpdates.add(e)}clearLayerUpdates(){this.layerUpdates.clear()}};var Za=class extends nn{constructor(e=null,t=1,n=1,s=1){super(null),this.isData3DTexture=!0,this.image={data:e,width:t,height:n,depth:s},this.magFilter=kt,this.minFilter=kt,this.wrapR=$n,this.generateMipmaps=!1,this.flipY=!1,this.unpackAlignment=1}copy(e){return super.copy(e),this.wrapR=e.wrapR,this}};var at=class i{static{this.prototype.isMatrix4=!0}constructor(e,t,n,s,r,a,o,l,c,h,u,d,p,_,v,m){this.elements=[1,0,0,0,0,1,0,0,0,0,1,0,0,0,0,1],e!==void 0&&this.set(e,t,n,s,r,a,o,l,c,h,u,d,p,_,v,m)}set(e,t,n,s,r,a,o,l,c,h,u,d,p,_,v,m){let g=this.elements;return g[0]=e,g[4]=t,g[8]=n,g[12]=s,g[1]=r,g[5]=a,g[9]=o,g[13]=l,g[2]=c,g[6]=h,g[10]=u,g[14]=d,g[3]=p,g[7]=_,g[11]=v,g[15]=m,this}identity(){return this.set(1,0,0,0,0,1,0,0,0,0,1,0,0,0,0,1),this}clone(){return new i().fromArray(this.elements)}copy(e){let t=this.elements,n=e.elements;return t[0]=n[0],t[1]=n[1],t[2]=n[2],t[3]=n[3],t[4]=n[4],t[5]=n[5],t[6]=n[6],t[7]=n[7],t[8]=n[8],t[9]=n[9],t[10]=n[10],t[11]=n[11],t[12]=n[12],t[13]=n[13],t[14]=n[14],t[15]=n[15],this}copyPosition(e){let t=this.elements,n=e.elements;return t[12]=n[12],t[13]=n[13],t[14]=n[14],this}setFromMatrix3(e){let t=e.elements;return this.set(t[0],t[3],t[6],0,t[1],t[4],t[7],0,t[2],t[5],t[8],0,0,0,0,1),this}extractBasis(e,t,n){return this.determinantAffine()===0?(e.set(1,0,0),t.set(0,1,0),n.set(0,0,1),this):(e.setFromMatrixColumn(this,0),t.setFromMatrixColumn(this,1),n.setFromMatrixColumn(this,2),this)}makeBasis(e,t,n){return this.set(e.x,t.x,n.x,0,e.y,t.y,n.y,0,e.z,t.z,n.z,0,0,0,0,1),this}extractRotation(e){if(e.determinantAffine()===0)return this.identity();let t=this.elements,n=e.elements,s=1/ys.setFromMatrixColumn(e,0).length(),r=1/ys.setFromMatrixColumn(e,1).length(),a=1/ys.setFromMatrixColumn(e,2).length();return t[0]=n[0]*s,t[1]=n[1]*s,t[2]=n[2]*s,t[3]=0,t[4]=n[4]*r,t[5]=n[5]*r,t[6]=n[6]*r,t[7]=0,t[8]=n[8]*a,t[9]=n[9]*a,t[10]=n[10]*a,t[11]=0,t[12]=0,t[13]=0,t[14]=0,t[15]=1,this}makeRotationFromEuler(e){let t=this.elements,n=e.x,s=e.y,r=e.z,a=Math.cos(n),o=Math.sin(n),l=Math.cos(s),c=Math.sin(s),h=Math.cos(r),u=Math.sin(r);if(e.order==="XYZ"){let d=a*h,p=a*u,_=o*h,v=o*u;t[0]=l*h,t[4]=-l*u,t[8]=c,t[1]=p+_*c,t[5]=d-v*c,t[9]=-o*l,t[2]=v-d*c,t[6]=_+p*c,t[10]=a*l}else if(e.order==="YXZ"){let d=l*h,p=l*u,_=c*h,v=c*u;t[0]=d+v*o,t[4]=_*o-p,t[8]=a*c,t[1]=a*u,t[5]=a*h,t[9]=-o,t[2]=p*o-_,t[6]=v+d*o,t[10]=a*l}else if(e.order==="ZXY"){let d=l*h,p=l*u,_=c*h,v=c*u;t[0]=d-v*o,t[4]=-a*u,t[8]=_+p*o,t[1]=p+_*o,t[5]=a*h,t[9]=v-d*o,t[2]=-a*c,t[6]=o,t[10]=a*l}else if(e.order==="ZYX"){let d=a*h,p=a*u,_=o*h,v=o*u;t[0]=l*h,t[4]=_*c-p,t[8]=d*c+v,t[1]=l*u,t[5]=v*c+d,t[9]=p*c-_,t[2]=-c,t[6]=o*l,t[10]=a*l}else if(e.order==="YZX"){let d=a*l,p=a*c,_=o*l,v=o*c;t[0]=l*h,t[4]=v-d*u,t[8]=_*u+p,t[1]=u,t[5]=a*h,t[9]=-o*h,t[2]=-c*h,t[6]=p*u+_,t[10]=d-v*u}else if(e.order==="XZY"){let d=a*l,p=a*c,_=o*l,v=o*c;t[0]=l*h,t[4]=-u,t[8]=c*h,t[1]=d*u+v,t[5]=a*h,t[9]=p*u-_,t[2]=_*u-p,t[6]=o*h,t[10]=v*u+d}return t[3]=0,t[7]=0,t[11]=0,t[12]=0,t[13]=0,t[14]=0,t[15]=1,this}makeRotationFromQuaternion(e){return this.compose(Jp,e,Kp)}lookAt(e,t,n){let s=this.elements;return ln.subVectors(e,t),ln.lengthSq()===0&&(ln.z=1),ln.normalize(),Ai.crossVectors(n,ln),Ai.lengthSq()===0&&(Math.abs(n.z)===1?ln.x+=1e-4:ln.z+=1e-4,ln.normalize(),Ai.crossVectors(n,ln)),Ai.normalize(),da.crossVectors(ln,Ai),s[0]=Ai.x,s[4]=da.x,s[8]=ln.x,s[1]=Ai.y,s[5]=da.y,s[9]=ln.y,s[2]=Ai.z,s[6]=da.z,s[10]=ln.z,this}multiply(e){return this.multiplyMatrices(this,e)}premultiply(e){return this.multiplyMatrices(e,this)}multiplyMatrices(e,t){let n=e.elements,s=t.elements,r=this.elements,a=n[0],o=n[4],l=n[8],c=n[12],h=n[1],u=n[5],d=n[9],p=n[13],_=n[2],v=n[6],m=n[10],g=n[14],M=n[3],C=n[7],w=n[11],E=n[15],T=s[0],x=s[4],A=s[8],X=s[12],k=s[1],z=s[5],U=s[9],J=s[13],S=s[2],D=s[6],F=s[10],G=s[14],H=s[3],$=s[7],I=s[11],K=s[15];return r[0]=a*T+o*k+l*S+c*H,r[4]=a*x+o*z+l*D+c*$,r[8]=a*A+o*U+l*F+c*I,r[12]=a*X+o*J+l*G+c*K,r[1]=h*T+u*k+d*S+p*H,r[5]=h*x+u*z+d*D+p*$,r[9]=h*A+u*U+d*F+p*I,r[13]=h*X+u*J+d*G+p*K,r[2]=_*T+v*k+m*S+g*H,r[6]=_*x+v*z+m*D+g*$,r[10]=_*A+v*U+m*F+g*I,r[14]=_*X+v*J+m*G+g*K,r[3]=M*T+C*k+w*S+E*H,r[7]=M*x+C*z+w*D+E*$,r[11]=M*A+C*U+w*F+E*I,r[15]=M*X+C*J+w*G+E*K,this}multiplyScalar(e){let t=this.elements;return t[0]*=e,t[4]*=e,t[8]*=e,t[12]*=e,t[1]*=e,t[5]*=e,t[9]*=e,t[13]*=e,t[2]*=e,t[6]*=e,t[10]*=e,t[14]*=e,t[3]*=e,t[7]*=e,t[11]*=e,t[15]*=e,this}determinant(){let e=this.elements,t=e[0],n=e[4],s=e[8],r=e[12],a=e[1],o=e[5],l=e[9],c=e[13],h=e[2],u=e[6],d=e[10],p=e[14],_=e[3],v=e[7],m=e[11],g=e[15],M=l*p-c*d,C=o*p-c*u,w=o*d-l*u,E=a*p-c*h,T=a*d-l*h,x=a*u-o*h;return t*(v*M-m*C+g*w)-n*(_*M-m*E+g*T)+s*(_*C-v*E+g*x)-r*(_*w-v*T+m*x)}determinantAffine(){let e=this.elements,t=e[0],n=e[4],s=e[8],r=e[1],a=e[5],o=e[9],l=e[2],c=e[6],h=e[10];return t*(a*h-o*c)-n*(r*h-o*l)+s*(r*c-a*l)}transpose(){let e=this.elements,t;return t=e[1],e[1]=e[4],e[4]=t,t=e[2],e[2]=e[8],e[8]=t,t=e[6],e[6]=e[9],e[9]=t,t=e[3],e[3]=e[12],e[12]=t,t=e[7],e[7]=e[13],e[13]=t,t=e[11],e[11]=e[14],e[14]=t,this}setPosition(e,t,n){let s=this.elements;return e.isVector3?(s[12]=e.x,s[13]=e.y,s[14]=e.z):(s[12]=e,s[13]=t,s[14]=n),this}invert(){let e=this.elements,t=e[0],n=e[1],s=e[2],r=e[3],a=e[4],o=e[5],l=e[6],c=e[7],h=e[8],u=e[9],d=e[10],p=e[11],_=e[12],v=e[13],m=e[14],g=e[15],M=t*o-n*a,C=t*l-s*a,w=t*c-r*a,E=n*l-s*o,T=n*c-r*o,x=s*c-r*l,A=h*v-u*_,X=h*m-d*_,k=h*g-p*_,z=u*m-d*v,U=u*g-p*v,J=d*g-p*m,S=M*J-C*U+w*z+E*k-T*X+x*A;if(S===0)return this.set(0,0,0,0,0,0,0,0,0,0,0,0,0,0,0,0);let D=1/S;return e[0]=(o*J-l*U+c*z)*D,e[1]=(s*U-n*J-r*z)*D,e[2]=(v*x-m*T+g*E)*D,e[3]=(d*T-u*x-p*E)*D,e[4]=(l*k-a*J-c*X)*D,e[5]=(t*J-s*k+r*X)*D,e[6]=(m*w-_*x-g*C)*D,e[7]=(h*x-d*w+p*C)*D,e[8]=(a*U-o*k+c*A)*D,e[9]=(n*k-t*U-r*A)*D,e[10]=(_*T-v*w+g*M)*D,e[11]=(u*w-h*T-p*M)*D,e[12]=(o*X-a*z-l*A)*D,e[13]=(t*z-n*X+s*A)*D,e[14]=(v*C-_*E-m*M)*D,e[15]=(h*E-u*C+d*M)*D,this}scale(e){let t=this.elements,n=e.x,s=e.y,r=e.z;return t[0]*=n,t[4]*=s,t[8]*=r,t[1]*=n,t[5]*=s,t[9]*=r,t[2]*=n,t[6]*=s,t[10]*=r,t[3]*=n,t[7]*=s,t[11]*=r,this}getMaxScaleOnAxis(){let e=this.elements,t=e[0]*e[0]+e[1]*e[1]+e[2]*e[2],n=e[4]*e[4]+e[5]*e[5]+e[6]*e[6],s=e[8]*e[8]+e[9]*e[9]+e[10]*e[10];return Math.sqrt(Math.max(t,n,s))}makeTranslation(e,t,n){return e.isVector3?this.set(1,0,0,e.x,0,1,0,e.y,0,0,1,e.z,0,0,0,1):this.set(1,0,0,e,0,1,0,t,0,0,1,n,0,0,0,1),this}makeRotationX(e){let t=Math.cos(e),n=Math.sin(e);return this.set(1,0,0,0,0,t,-n,0,0,n,t,0,0,0,0,1),this}makeRotationY(e){let t=Math.cos(e),n=Math.sin(e);return this.set(t,0,n,0,0,1,0,0,-n,0,t,0,0,0,0,1),this}makeRotationZ(e){let t=Math.cos(e),n=Math.sin(e);return this.set(t,-n,0,0,n,t,0,0,0,0,1,0,0,0,0,1),this}makeRotationAxis(e,t){let n=Math.cos(t),s=Math.sin(t),r=1-n,a=e.x,o=e.y,l=e.z,c=r*a,h=r*o;return this.set(c*a+n,c*o-s*l,c*l+s*o,0,c*o+s*l,h*o+n,h*l-s*a,0,c*l-s*o,h*l+s*a,r*l*l+n,0,0,0,0,1),this}makeScale(e,t,n){return this.set(e,0,0,0,0,t,0,0,0,0,n,0,0,0,0,1),this}makeShear(e,t,n,s,r,a){return this.set(1,n,r,0,e,1,a,0,t,s,1,0,0,0,0,1),this}compose(e,t,n){let s=this.elements,r=t._x,a=t._y,o=t._z,l=t._w,c=r+r,h=a+a,u=o+o,d=r*c,p=r*h,_=r*u,v=a*h,m=a*u,g=o*u,M=l*c,C=l*h,w=l*u,E=n.x,T=n.y,x=n.z;return s[0]=(1-(v+g))*E,s[1]=(p+w)*E,s[2]=(_-C)*E,s[3]=0,s[4]=(p-w)*T,s[5]=(1-(d+g))*T,s[6]=(m+M)*T,s[7]=0,s[8]=(_+C)*x,s[9]=(m-M)*x,s[10]=(1-(d+v))*x,s[11]=0,s[12]=e.x,s[13]=e.y,s[14]=e.z,s[15]=1,this}decompose(e,t,n){let s=this.elements;e.x=s[12],e.y=s[13],e.z=s[14];let r=this.determinantAffine();if(r===0)return n.set(1,1,1),t.identity(),this;let a=ys.set(s[0],s[1],s[2]).length(),o=ys.set(s[4],s[5],s[6]).length(),l=ys.set(s[8],s[9],s[10]).length();r<0&&(a=-a),Pn.copy(this);let c=1/a,h=1/o,u=1/l;return Pn.elements[0]*=c,Pn.elements[1]*=c,Pn.elements[2]*=c,Pn.elements[4]*=h,Pn.elements[5]*=h,Pn.elements[6]*=h,Pn.elements[8]*=u,Pn.elements[9]*=u,Pn.elements[10]*=u,t.setFromRotationMatrix(Pn),n.x=a,n.y=o,n.z=l,this}makePerspective(e,t,n,s,r,a,o=Mn,l=!1){let c=this.elements,h=2*r/(t-e),u=2*r/(n-s),d=(t+e)/(t-e),p=(n+s)/(n-s),_,v;if(l)_=r/(a-r),v=a*r/(a-r);else if(o===Mn)_=-(a+r)/(a-r),v=-2*a*r/(a-r);else if(o===vr)_=-a/(a-r),v=-a*r/(a-r);else throw new Error("THREE.Matrix4.makePerspective(): Invalid coordinate system: "+o);return c[0]=h,c[4]=0,c[8]=d,c[12]=0,c[1]=0,c[5]=u,c[9]=p,c[13]=0,c[2]=0,c[6]=0,c[10]=_,c[14]=v,c[3]=0,c[7]=0,c[11]=-1,c[15]=0,this}makeOrthographic(e,t,n,s,r,a,o=Mn,l=!1){let c=this.elements,h=2/(t-e),u=2/(n-s),d=-(t+e)/(t-e),p=-(n+s)/(n-s),_,v;if(l)_=1/(a-r),v=a/(a-r);else if(o===Mn)_=-2/(a-r),v=-(a+r)/(a-r);else if(o===vr)_=-1/(a-r),v=-r/(a-r);else throw new Error("THREE.Matrix4.makeOrthographic(): Invalid coordinate system: "+o);return c[0]=h,c[4]=0,c[8]=0,c[12]=d,c[1]=0,c[5]=u,c[9]=0,c[13]=p,c[2]=0,c[6]=0,c[10]=_,c[14]=v,c[3]=0,c[7]=0,c[11]=0,c[15]=1,this}equals(e){let t=this.elements,n=e.elements;for(let s=0;s<16;s++)if(t[s]!==n[s])return!1;return!0}fromArray(e,t=0){for(let n=0;n<16;n++)this.elements[n]=e[n+t];return this}toArray(e=[],t=0){let n=this.elements;return e[t]=n[0],e[t+1]=n[1],e[t+2]=n[2],e[t+3]=n[3],e[t+4]=n[4],e[t+5]=n[5],e[t+6]=n[6],e[t+7]=n[7],e[t+8]=n[8],e[t+9]=n[9],e[t+10]=n[10],e[t+11]=n[11],e[t+12]=n[12],e[t+13]=n[13],e[t+14]=n[14],e[t+15]=n[15],e}},ys=new W,Pn=new at,Jp=new W(0,0,0),Kp=new W(1,1,1),Ai=new W,da=new W,ln=new W,du=new at,fu=new wn,Ni=class i{constructor(e=0,t=0,n=0,s=i.DEFAULT_ORDER){this.isEuler=!0,this._x=e,this._y=t,this._z=n,this._order=s}get x(){return this._x}set x(e){this._x=e,this._onChangeCallback()}get y(){return this._y}set y(e){this._y=e,this._onChangeCallback()}get z(){return this._z}set z(e){this._z=e,this._onChangeCallback()}get order(){return this._order}set order(e){this._order=e,this._onChangeCallback()}set(e,t,n,s=this._order){return this._x=e,this._y=t,this._z=n,this._order=s,this._onChangeCallback(),this}clone(){return new this.constructor(this._x,this._y,this._z,this._order)}copy(e){return this._x=e._x,this._y=e._y,this._z=e._z,this._order=e._order,this._onChangeCallback(),this}setFromRotationMatrix(e,t=this._order,n=!0){let s=e.elements,r=s[0],a=s[4],o=s[8],l=s[1],c=s[5],h=s[9],u=s[2],d=s[6],p=s[10];switch(t){case"XYZ":this._y=Math.asin(Qe(o,-1,1)),Math.abs(o)<.9999999?(this._x=Math.atan2(-h,p),this._z=Math.atan2(-a,r)):(this._x=Math.atan2(d,c),this._z=0);break;case"YXZ":this._x=Math.asin(-Qe(h,-1,1)),Math.abs(h)<.9999999?(this._y=Math.atan2(o,p),this._z=Math.atan2(l,c)):(this._y=Math.atan2(-u,r),this._z=0);break;case"ZXY":this._x=Math.asin(Qe(d,-1,1)),Math.abs(d)<.9999999?(this._y=Math.atan2(-u,p),this._z=Math.atan2(-a,c)):(this._y=0,this._z=Math.atan2(l,r));break;case"ZYX":this._y=Math.asin(-Qe(u,-1,1)),Math.abs(u)<.9999999?(this._x=Math.atan2(d,p),this._z=Math.atan2(l,r)):(this._x=0,this._z=Math.atan2(-a,c));break;case"YZX":this._z=Math.asin(Qe(l,-1,1)),Math.abs(l)<.9999999?(this._x=Math.atan2(-h,c),this._y=Math.atan2(-u,r)):(this._x=0,this._y=Math.atan2(o,p));break;case"XZY":this._z=Math.asin(-Qe(a,-1,1)),Math.abs(a)<.9999999?(this._x=Math.atan2(d,c),this._y=Math.atan2(o,r)):(this._x=Math.atan2(-h,p),this._y=0);break;default:Oe("Euler: .setFromRotationMatrix() encountered an unknown order: "+t)}return this._order=t,n===!0&&this._onChangeCallback(),this}setFromQuaternion(e,t,n){return du.makeRotationFromQuaternion(e),this.setFromRotationMatrix(du,t,n)}setFromVector3(e,t=this._order){return this.set(e.x,e.y,e.z,t)}reorder(e){return fu.setFromEuler(this),this.setFromQuaternion(fu,e)}equals(e){return e._x===this._x&&e._y===this._y&&e._z===this._z&&e._order===this._order}fromArray(e){return this._x=e[0],this._y=e[1],this._z=e[2],e[3]!==void 0&&(this._order=e[3]),this._onChangeCallback(),this}toArray(e=[],t=0){return e[t]=this._x,e[t+1]=this._y,e[t+2]=this._z,e[t+3]=this._order,e}_onChange(e){return this._onChangeCallback=e,this}_onChangeCallback(){}*[Symbol.iterator](){yield this._x,yield this._y,yield this._z,yield this._order}};Ni.DEFAULT_ORDER="XYZ";var Us=class{constructor(){this.mask=1}set(e){this.mask=(1<<e|0)>>>0}enable(e){this.mask|=1<<e|0}enableAll(){this.mask=-1}toggle(e){this.mask^=1<<e|0}disable(e){this.mask&=~(1<<e|0)}disableAll(){this.mask=0}test(e){return(this.mask&e.mask)!==0}isEnabled(e){return(this.mask&(1<<e|0))!==0}},jp=0,pu=new W,bs=new wn,ri=new at,fa=new W,cr=new W,Qp=new W,em=new wn,mu=new W(1,0,0),gu=new W(0,1,0),_u=new W(0,0,1),vu={type:"added"},tm={type:"removed"},Ms={type:"childadded",child:null},ql={type:"childremoved",child:null},fn=class i extends Wn{constructor(){super(),this.isObject3D=!0,Object.defineProperty(this,"id",{value:jp++}),this.uuid=Or(),this.name="",this.type="Object3D",this.parent=null,this.children=[],this.up=i.DEFAULT_UP.clone();let e=new W,t=new Ni,n=new wn,s=new W(1,1,1);function r(){n.setFromEuler(t,!1)}function a(){t.setFromQuaternion(n,void 0,!1)}t._onChange(r),n._onChange(a),Object.defineProperties(this,{position:{configurable:!0,enumerable:!0,value:e},rotation:{configurable:!0,enumerable:!0,value:t},quaternion:{configurable:!0,enumerable:!0,value:n},scale:{configurable:!0,enumerable:!0,value:s},modelViewMatrix:{value:new at},normalMatrix:{value:new Ge}}),this.matrix=new at,this.matrixWorld=new at,this.matrixAutoUpdate=i.DEFAULT_MATRIX_AUTO_UPDATE,this.matrixWorldAutoUpdate=i.DEFAULT_MATRIX_WORLD_AUTO_UPDATE,this.matrixWorldNeedsUpdate=!1,this.layers=new Us,this.visible=!0,this.castShadow=!1,this.receiveShadow=!1,this.frustumCulled=!0,this.renderOrder=0,this.animations=[],this.customDepthMaterial=void 0,this.customDistanceMaterial=void 0,this.static=!1,this.userData={},this.pivot=null}onBeforeShadow(){}onAfterShadow(){}onBeforeRender(){}onAfterRender(){}applyMatrix4(e){this.matrixAutoUpdate&&this.updateMatrix(),this.matrix.premultiply(e),this.matrix.decompose(this.position,this.quaternion,this.scale),this.pivot!==null&&this.position.copy(this.pivot).applyMatrix4(this.matrix).sub(this.pivot)}applyQuaternion(e){return this.quaternion.premultiply(e),this}setRotationFromAxisAngle(e,t){this.quaternion.setFromAxisAngle(e,t)}setRotationFromEuler(e){this.quaternion.setFromEuler(e,!0)}setRotationFromMatrix(e){this.quaternion.setFromRotationMatrix(e)}setRotationFromQuaternion(e){this.quaternion.copy(e)}rotateOnAxis(e,t){return bs.setFromAxisAngle(e,t),this.quaternion.multiply(bs),this}rotateOnWorldAxis(e,t){return bs.setFromAxisAngle(e,t),this.quaternion.premultiply(bs),this}rotateX(e){return this.rotateOnAxis(mu,e)}rotateY(e){return this.rotateOnAxis(gu,e)}rotateZ(e){return this.rotateOnAxis(_u,e)}translateOnAxis(e,t){return pu.copy(e).applyQuaternion(this.quaternion),this.position.add(pu.multiplyScalar(t)),this}translateX(e){return this.translateOnAxis(mu,e)}translateY(e){return this.translateOnAxis(gu,e)}translateZ(e){return this.translateOnAxis(_u,e)}localToWorld(e){return this.updateWorldMatrix(!0,!1),e.applyMatrix4(this.matrixWorld)}worldToLocal(e){return this.updateWorldMatrix(!0,!1),e.applyMatrix4(ri.copy(this.matrixWorld).invert())}lookAt(e,t,n){e.isVector3?fa.copy(e):fa.set(e,t,n);let s=this.parent;this.updateWorldMatrix(!0,!1),cr.setFromMatrixPosition(this.matrixWorld),this.isCamera||this.isLight?ri.lookAt(cr,fa,this.up):ri.lookAt(fa,cr,this.up),this.quaternion.setFromRotationMatrix(ri),s&&(ri.extractRotation(s.matrixWorld),bs.setFromRotationMatrix(ri),this.quaternion.premultiply(bs.invert()))}add(e){if(arguments.length>1){for(let t=0;t<arguments.length;t++)this.add(arguments[t]);return this}return e===this?(ze("Object3D.add: object can't be added as a child of itself.",e),this):(e&&e.isObject3D?(e.removeFromParent(),e.parent=this,this.children.push(e),e.dispatchEvent(vu),Ms.child=e,this.dispatchEvent(Ms),Ms.child=null):ze("Object3D.add: object not an instance of THREE.Object3D.",e),this)}remove(e){if(arguments.length>1){for(let n=0;n<arguments.length;n++)this.remove(arguments[n]);return this}let t=this.children.indexOf(e);return t!==-1&&(e.parent=null,this.children.splice(t,1),e.dispatchEvent(tm),ql.child=e,this.dispatchEvent(ql),ql.child=null),this}removeFromParent(){let e=this.parent;return e!==null&&e.remove(this),this}clear(){return this.remove(...this.children)}attach(e){return this.updateWorldMatrix(!0,!1),ri.copy(this.matrixWorld).invert(),e.parent!==null&&(e.parent.updateWorldMatrix(!0,!1),ri.multiply(e.parent.matrixWorld)),e.applyMatrix4(ri),e.removeFromParent(),e.parent=this,this.children.push(e),e.updateWorldMatrix(!1,!0),e.dispatchEvent(vu),Ms.child=e,this.dispatchEvent(Ms),Ms.child=null,this}getObjectById(e){return this.getObjectByProperty("id",e)}getObjectByName(e){return this.getObjectByProperty("name",e)}getObjectByProperty(e,t){if(this[e]===t)return this;for(let n=0,s=this.children.length;n<s;n++){let a=this.children[n].getObjectByProperty(e,t);if(a!==void 0)return a}}getObjectsByProperty(e,t,n=[]){this[e]===t&&n.push(this);let s=this.children;for(let r=0,a=s.length;r<a;r++)s[r].getObjectsByProperty(e,t,n);return n}getWorldPosition(e){return this.updateWorldMatrix(!0,!1),e.setFromMatrixPosition(this.matrixWorld)}getWorldQuaternion(e){return this.updateWorldMatrix(!0,!1),this.matrixWorld.decompose(cr,e,Qp),e}getWorldScale(e){return this.updateWorldMatrix(!0,!1),this.matrixWorld.decompose(cr,em,e),e}getWorldDirection(e){this.updateWorldMatrix(!0,!1);let t=this.matrixWorld.elements;return e.set(t[8],t[9],t[10]).normalize()}raycast(){}intersectsFrustum(){return!0}traverse(e){e(this);let t=this.children;for(let n=0,s=t.length;n<s;n++)t[n].traverse(e)}traverseVisible(e){if(this.visible===!1)return;e(this);let t=this.children;for(let n=0,s=t.length;n<s;n++)t[n].traverseVisible(e)}traverseAncestors(e){let t=this.parent;t!==null&&(e(t),t.traverseAncestors(e))}updateMatrix(){this.matrix.compose(this.position,this.quaternion,this.scale);let e=this.pivot;if(e!==null){let t=e.x,n=e.y,s=e.z,r=this.matrix.elements;r[12]+=t-r[0]*t-r[4]*n-r[8]*s,r[13]+=n-r[1]*t-r[5]*n-r[9]*s,r[14]+=s-r[2]*t-r[6]*n-r[10]*s}this.matrixWorldNeedsUpdate=!0}updateMatrixWorld(e){this.matrixAutoUpdate&&this.updateMatrix(),(this.matrixWorldNeedsUpdate||e)&&(this.matrixWorldAutoUpdate===!0&&(this.parent===null?this.matrixWorld.copy(this.matrix):this.matrixWorld.multiplyMatrices(this.parent.matrixWorld,this.matrix)),this.matrixWorldNeedsUpdate=!1,e=!0);let t=this.children;for(let n=0,s=t.length;n<s;n++)t[n].updateMatrixWorld(e)}updateWorldMatrix(e,t,n=!1){let s=this.parent;if(e===!0&&s!==null&&s.updateWorldMatrix(!0,!1),this.matrixAutoUpdate&&this.updateMatrix(),(this.matrixWorldNeedsUpdate||n)&&(this.matrixWorldAutoUpdate===!0&&(this.parent===null?this.matrixWorld.copy(this.matrix):this.matrixWorld.multiplyMatrices(this.parent.matrixWorld,this.matrix)),this.matrixWorldNeedsUpdate=!1,n=!0),t===!0){let r=this.children;for(let a=0,o=r.length;a<o;a++)r[a].updateWorldMatrix(!1,!0,n)}}toJSON(e){let t=e===void 0||typeof e=="string",n={};t&&(e={geometries:{},materials:{},textures:{},images:{},shapes:{},skeletons:{},animations:{},nodes:{}},n.metadata={version:4.7,type:"Object",generator:"Object3D.toJSON"});let s={};s.uuid=this.uuid,s.type=this.type,s.name=this.name,s.castShadow=this.castShadow,s.receiveShadow=this.receiveShadow,s.visible=this.visible,s.frustumCulled=this.frustumCulled,s.renderOrder=this.renderOrder,s.static=this.static,s.matrixAutoUpdate=this.matrixAutoUpdate,Object.keys(this.userData).length>0&&(s.userData=this.userData),s.layers=this.layers.mask,s.matrix=this.matrix.toArray(),s.up=this.up.toArray(),this.pivot!==null&&(s.pivot=this.pivot.toArray()),this.morphTargetDictionary!==void 0&&(s.morphTargetDictionary=Object.assign({},this.morphTargetDictionary)),this.morphTargetInfluences!==void 0&&(s.morphTargetInfluences=this.morphTargetInfluences.slice()),this.isInstancedMesh&&(s.type="InstancedMesh",s.count=this.count,s.instanceMatrix=this.instanceMatrix.toJSON(),this.instanceColor!==null&&(s.instanceColor=this.instanceColor.toJSON())),this.isBatchedMesh&&(s.type="BatchedMesh",s.perObjectFrustumCulled=this.perObjectFrustumCulled,s.sortObjects=this.sortObjects,s.drawRanges=this._drawRanges,s.reservedRanges=this._reservedRanges,s.geometryInfo=this._geometryInfo.map(o=>({...o,boundingBox:o.boundingBox?o.boundingBox.toJSON():void 0,boundingSphere:o.boundingSphere?o.boundingSphere.toJSON():void 0})),s.instanceInfo=this._instanceInfo.map(o=>({...o})),s.availableInstanceIds=this._availableInstanceIds.slice(),s.availableGeometryIds=this._availableGeometryIds.slice(),s.nextIndexStart=this._nextIndexStart,s.nextVertexStart=this._nextVertexStart,s.geometryCount=this._geometryCount,s.maxInstanceCount=this._maxInstanceCount,s.maxVertexCount=this._maxVertexCount,s.maxIndexCount=this._maxIndexCount,s.geometryInitialized=this._geometryInitialized,s.matricesTexture=this._matricesTexture.toJSON(e),s.indirectTexture=this._indirectTexture.toJSON(e),this._colorsTexture!==null&&(s.colorsTexture=this._colorsTexture.toJSON(e)),this.boundingSphere!==null&&(s.boundingSphere=this.boundingSphere.toJSON()),this.boundingBox!==null&&(s.boundingBox=this.boundingBox.toJSON()));function r(o,l){return o[l.uuid]===void 0&&(o[l.uuid]=l.toJSON(e)),l.uuid}if(this.isScene)this.background&&(this.background.isColor?s.background=this.background.toJSON():this.background.isTexture&&(s.background=this.background.toJSON(e).uuid)),this.environment&&this.environment.isTexture&&this.environment.isRenderTargetTexture!==!0&&(s.environment=this.environment.toJSON(e).uuid);else if(this.isMesh||this.isLine||this.isPoints){s.geometry=r(e.geometries,this.geometry);let o=this.geometry.parameters;if(o!==void 0&&o.shapes!==void 0){let l=o.shapes;if(Array.isArray(l))for(let c=0,h=l.length;c<h;c++){let u=l[c];r(e.shapes,u)}else r(e.shapes,l)}}if(this.isSkinnedMesh&&(s.bindMode=this.bindMode,s.bindMatrix=this.bindMatrix.toArray(),this.skeleton!==void 0&&(r(e.skeletons,this.skeleton),s.skeleton=this.skeleton.uuid)),this.material!==void 0)if(Array.isArray(this.material)){let o=[];for(let l=0,c=this.material.length;l<c;l++)o.push(r(e.materials,this.material[l]));s.material=o}else s.material=r(e.materials,this.material);if(this.children.length>0){s.children=[];for(let o=0;o<this.children.length;o++)s.children.push(this.children[o].toJSON(e).object)}if(this.animations.length>0){s.animations=[];for(let o=0;o<this.animations.length;o++){let l=this.animations[o];s.animations.push(r(e.animations,l))}}if(t){let o=a(e.geometries),l=a(e.materials),c=a(e.textures),h=a(e.images),u=a(e.shapes),d=a(e.skeletons),p=a(e.animations),_=a(e.nodes);o.length>0&&(n.geometries=o),l.length>0&&(n.materials=l),c.length>0&&(n.textures=c),h.length>0&&(n.images=h),u.length>0&&(n.shapes=u),d.length>0&&(n.skeletons=d),p.length>0&&(n.animations=p),_.length>0&&(n.nodes=_)}return n.object=s,n;function a(o){let l=[];for(let c in o){let h=o[c];delete h.metadata,l.push(h)}return l}}clone(e){return new this.constructor().copy(this,e)}copy(e,t=!0){if(this.name=e.name,this.up.copy(e.up),this.position.copy(e.position),this.rotation.order=e.rotation.order,this.quaternion.copy(e.quaternion),this.scale.copy(e.scale),this.pivot=e.pivot!==null?e.pivot.clone():null,this.matrix.copy(e.matrix),this.matrixWorld.copy(e.matrixWorld),this.matrixAutoUpdate=e.matrixAutoUpdate,this.matrixWorldAutoUpdate=e.matrixWorldAutoUpdate,this.matrixWorldNeedsUpdate=e.matrixWorldNeedsUpdate,this.layers.mask=e.layers.mask,this.visible=e.visible,this.castShadow=e.castShadow,this.receiveShadow=e.receiveShadow,this.frustumCulled=e.frustumCulled,this.renderOrder=e.renderOrder,this.static=e.static,this.animations=e.animations.slice(),this.userData=JSON.parse(JSON.stringify(e.userData)),t===!0)for(let n=0;n<e.children.length;n++){let s=e.children[n];this.add(s.clone())}return this}dispose(){this.dispatchEvent({type:"dispose"})}};fn.DEFAULT_UP=new W(0,1,0);fn.DEFAULT_MATRIX_AUTO_UPDATE=!0;fn.DEFAULT_MATRIX_WORLD_AUTO_UPDATE=!0;var Ot=class extends fn{constructor(){super(),this.isGroup=!0,this.type="Group"}},nm={type:"move"},Fs=class{constructor(){this._targetRay=null,this._grip=null,this._hand=null}getHandSpace(){return this._hand===null&&(this._hand=new Ot,this._hand.matrixAutoUpdate=!1,this._hand.visible=!1,this._hand.joints={},this._hand.inputState={pinching:!1}),this._hand}getTargetRaySpace(){return this._targetRay===null&&(this._targetRay=new Ot,this._targetRay.matrixAutoUpdate=!1,this._targetRay.visible=!1,this._targetRay.hasLinearVelocity=!1,this._targetRay.linearVelocity=new W,this._targetRay.hasAngularVelocity=!1,this._targetRay.angularVelocity=new W),this._targetRay}getGripSpace(){return this._grip===null&&(this._grip=new Ot,this._grip.matrixAutoUpdate=!1,this._grip.visible=!1,this._grip.hasLinearVelocity=!1,this._grip.linearVelocity=new W,this._grip.hasAngularVelocity=!1,this._grip.angularVelocity=new W,this._grip.eventsEnabled=!1),this._grip}dispatchEvent(e){return this._targetRay!==null&&this._targetRay.dispatchEvent(e),this._grip!==null&&this._grip.dispatchEvent(e),this._hand!==null&&this._hand.dispatchEvent(e),this}connect(e){if(e&&e.hand){let t=this._hand;if(t)for(let n of e.hand.values())this._getHandJoint(t,n)}return this.dispatchEvent({type:"connected",data:e}),this}disconnect(e){return this.dispatchEvent({type:"disconnected",data:e}),this._targetRay!==null&&(this._targetRay.visible=!1),this._grip!==null&&(this._grip.visible=!1),this._hand!==null&&(this._hand.visible=!1),this}update(e,t,n){let s=null,r=null,a=null,o=this._targetRay,l=this._grip,c=this._hand;if(e&&t.session.visibilityState!=="visible-blurred"){if(c&&e.hand){a=!0;for(let v of e.hand.values()){let m=t.getJointPose(v,n),g=this._getHandJoint(c,v);m!==null&&(g.matrix.fromArray(m.transform.matrix),g.matrix.decompose(g.position,g.quaternion,g.scale),g.matrixWorldNeedsUpdate=!0,g.jointRadius=m.radius),g.visible=m!==null}let h=c.joints["index-finger-tip"],u=c.joints["thumb-tip"],d=h.position.distanceTo(u.position),p=.02,_=.005;c.inputState.pinching&&d>p+_?(c.inputState.pinching=!1,this.dispatchEvent({type:"pinchend",handedness:e.handedness,target:this})):!c.inputState.pinching&&d<=p-_&&(c.inputState.pinching=!0,this.dispatchEvent({type:"pinchstart",handedness:e.handedness,target:this}))}else l!==null&&e.gripSpace&&(r=t.getPose(e.gripSpace,n),r!==null&&(l.matrix.fromArray(r.transform.matrix),l.matrix.decompose(l.position,l.quaternion,l.scale),l.matrixWorldNeedsUpdate=!0,r.linearVelocity?(l.hasLinearVelocity=!0,l.linearVelocity.copy(r.linearVelocity)):l.hasLinearVelocity=!1,r.angularVelocity?(l.hasAngularVelocity=!0,l.angularVelocity.copy(r.angularVelocity)):l.hasAngularVelocity=!1,l.eventsEnabled&&l.dispatchEvent({type:"gripUpdated",data:e,target:this})));o!==null&&(s=t.getPose(e.targetRaySpace,n),s===null&&r!==null&&(s=r),s!==null&&(o.matrix.fromArray(s.transform.matrix),o.matrix.decompose(o.position,o.quaternion,o.scale),o.matrixWorldNeedsUpdate=!0,s.linearVelocity?(o.hasLinearVelocity=!0,o.linearVelocity.copy(s.linearVelocity)):o.hasLinearVelocity=!1,s.angularVelocity?(o.hasAngularVelocity=!0,o.angularVelocity.copy(s.angularVelocity)):o.hasAngularVelocity=!1,this.dispatchEvent(nm)))}return o!==null&&(o.visible=s!==null),l!==null&&(l.visible=r!==null),c!==null&&(c.visible=a!==null),this}_getHandJoint(e,t){if(e.joints[t.jointName]===void 0){let n=new Ot;n.matrixAutoUpdate=!1,n.visible=!1,e.joints[t.jointName]=n,e.add(n)}return e.joints[t.jointName]}},xd={aliceblue:15792383,antiquewhite:16444375,aqua:65535,aquamarine:8388564,azure:15794175,beige:16119260,bisque:16770244,black:0,blanchedalmond:16772045,blue:255,blueviolet:9055202,brown:10824234,burlywood:14596231,cadetblue:6266528,chartreuse:8388352,chocolate:13789470,coral:16744272,cornflowerblue:6591981,cornsilk:16775388,crimson:14423100,cyan:65535,darkblue:139,darkcyan:35723,darkgoldenrod:12092939,darkgray:11119017,darkgreen:25600,darkgrey:11119017,darkkhaki:12433259,darkmagenta:9109643,darkolivegreen:5597999,darkorange:16747520,darkorchid:10040012,darkred:9109504,darksalmon:15308410,darkseagreen:9419919,darkslateblue:4734347,darkslategray:3100495,darkslategrey:3100495,darkturquoise:52945,darkviolet:9699539,deeppink:16716947,deepskyblue:49151,dimgray:6908265,dimgrey:6908265,dodgerblue:2003199,firebrick:11674146,floralwhite:16775920,forestgreen:2263842,fuchsia:16711935,gainsboro:14474460,ghostwhite:16316671,gold:16766720,goldenrod:14329120,gray:8421504,green:32768,greenyellow:11403055,grey:8421504,honeydew:15794160,hotpink:16738740,indianred:13458524,indigo:4915330,ivory:16777200,khaki:15787660,lavender:15132410,lavenderblush:16773365,lawngreen:8190976,lemonchiffon:16775885,lightblue:11393254,lightcoral:15761536,lightcyan:14745599,lightgoldenrodyellow:16448210,lightgray:13882323,lightgreen:9498256,lightgrey:13882323,lightpink:16758465,lightsalmon:16752762,lightseagreen:2142890,lightskyblue:8900346,lightslategray:7833753,lightslategrey:7833753,lightsteelblue:11584734,lightyellow:16777184,lime:65280,limegreen:3329330,linen:16445670,magenta:16711935,maroon:8388608,mediumaquamarine:6737322,mediumblue:205,mediumorchid:12211667,mediumpurple:9662683,mediumseagreen:3978097,mediumslateblue:8087790,mediumspringgreen:64154,mediumturquoise:4772300,mediumvioletred:13047173,midnightblue:1644912,mintcream:16121850,mistyrose:16770273,moccasin:16770229,navajowhite:16768685,navy:128,oldlace:16643558,olive:8421376,olivedrab:7048739,orange:16753920,orangered:16729344,orchid:14315734,palegoldenrod:15657130,palegreen:10025880,paleturquoise:11529966,palevioletred:14381203,papayawhip:16773077,peachpuff:16767673,peru:13468991,pink:16761035,plum:14524637,powderblue:11591910,purple:8388736,rebeccapurple:6697881,red:16711680,rosybrown:12357519,royalblue:4286945,saddlebrown:9127187,salmon:16416882,sandybrown:16032864,seagreen:3050327,seashell:16774638,sienna:10506797,silver:12632256,skyblue:8900331,slateblue:6970061,slategray:7372944,slategrey:7372944,snow:16775930,springgreen:65407,steelblue:4620980,tan:13808780,teal:32896,thistle:14204888,tomato:16737095,turquoise:4251856,violet:15631086,wheat:16113331,white:16777215,whitesmoke:16119285,yellow:16776960,yellowgreen:10145074},Ci={h:0,s:0,l:0},pa={h:0,s:0,l:0};function Yl(i,e,t){return t<0&&(t+=1),t>1&&(t-=1),t<1/6?i+(e-i)*6*t:t<1/2?e:t<2/3?i+(e-i)*6*(2/3-t):i}var je=class{constructor(e,t,n){return this.isColor=!0,this.r=1,this.g=1,this.b=1,this.set(e,t,n)}set(e,t,n){if(t===void 0&&n===void 0){let s=e;s&&s.isColor?this.copy(s):typeof s=="number"?this.setHex(s):typeof s=="string"&&this.setStyle(s)}else this.setRGB(e,t,n);return this}setScalar(e){return this.r=e,this.g=e,this.b=e,this}setHex(e,t=hn){return e=Math.floor(e),this.r=(e>>16&255)/255,this.g=(e>>8&255)/255,this.b=(e&255)/255,Ke.colorSpaceToWorking(this,t),this}setRGB(e,t,n,s=Ke.workingColorSpace){return this.r=e,this.g=t,this.b=n,Ke.colorSpaceToWorking(this,s),this}setHSL(e,t,n,s=Ke.workingColorSpace){if(e=$p(e,1),t=Qe(t,0,1),n=Qe(n,0,1),t===0)this.r=this.g=this.b=n;else{let r=n<=.5?n*(1+t):n+t-n*t,a=2*n-r;this.r=Yl(a,r,e+1/3),this.g=Yl(a,r,e),this.b=Yl(a,r,e-1/3)}return Ke.colorSpaceToWorking(this,s),this}setStyle(e,t=hn){function n(r){r!==void 0&&parseFloat(r)<1&&Oe("Color: Alpha component of "+e+" will be ignored.")}let s;if(s=/^(\w+)\(([^\)]*)\)/.exec(e)){let r,a=s[1],o=s[2];switch(a){case"rgb":case"rgba":if(r=/^\s*(\d+)\s*,\s*(\d+)\s*,\s*(\d+)\s*(?:,\s*(\d+(?:\.\d+)?|\.\d+)\s*)?$/.exec(o))return n(r[4]),this.setRGB(Math.min(255,parseInt(r[1],10))/255,Math.min(255,parseInt(r[2],10))/255,Math.min(255,parseInt(r[3],10))/255,t);if(r=/^\s*(\d+(?:\.\d+)?|\.\d+)\%\s*,\s*(\d+(?:\.\d+)?|\.\d+)\%\s*,\s*(\d+(?:\.\d+)?|\.\d+)\%\s*(?:,\s*(\d+(?:\.\d+)?|\.\d+)\s*)?$/.exec(o))return n(r[4]),this.setRGB(Math.min(100,parseFloat(r[1]))/100,Math.min(100,parseFloat(r[2]))/100,Math.min(100,parseFloat(r[3]))/100,t);break;case"hsl":case"hsla":if(r=/^\s*([+-]?(?:\d+(?:\.\d+)?|\.\d+))\s*,\s*(\d+(?:\.\d+)?|\.\d+)\%\s*,\s*(\d+(?:\.\d+)?|\.\d+)\%\s*(?:,\s*(\d+(?:\.\d+)?|\.\d+)\s*)?$/.exec(o))return n(r[4]),this.setHSL(parseFloat(r[1])/360,parseFloat(r[2])/100,parseFloat(r[3])/100,t);break;default:Oe("Color: Unknown color model "+e)}}else if(s=/^\#([A-Fa-f\d]+)$/.exec(e)){let r=s[1],a=r.length;if(a===3)return this.setRGB(parseInt(r.charAt(0),16)/15,parseInt(r.charAt(1),16)/15,parseInt(r.charAt(2),16)/15,t);if(a===6)return this.setHex(parseInt(r,16),t);Oe("Color: Invalid hex color "+e)}else if(e&&e.length>0)return this.setColorName(e,t);return this}setColorName(e,t=hn){let n=xd[e.toLowerCase()];return n!==void 0?this.setHex(n,t):Oe("Color: Unknown color "+e),this}clone(){return new this.constructor(this.r,this.g,this.b)}copy(e){return this.r=e.r,this.g=e.g,this.b=e.b,this}copySRGBToLinear(e){return this.r=hi(e.r),this.g=hi(e.g),this.b=hi(e.b),this}copyLinearToSRGB(e){return this.r=Ls(e.r),this.g=Ls(e.g),this.b=Ls(e.b),this}convertSRGBToLinear(){return this.copySRGBToLinear(this),this}convertLinearToSRGB(){return this.copyLinearToSRGB(this),this}getHex(e=hn){return Ke.workingToColorSpace(Ht.copy(this),e),Math.round(Qe(Ht.r*255,0,255))*65536+Math.round(Qe(Ht.g*255,0,255))*256+Math.round(Qe(Ht.b*255,0,255))}getHexString(e=hn){return("000000"+this.getHex(e).toString(16)).slice(-6)}getHSL(e,t=Ke.workingColorSpace){Ke.workingToColorSpace(Ht.copy(this),t);let n=Ht.r,s=Ht.g,r=Ht.b,a=Math.max(n,s,r),o=Math.min(n,s,r),l,c,h=(o+a)/2;if(o===a)l=0,c=0;else{let u=a-o;switch(c=h<=.5?u/(a+o):u/(2-a-o),a){case n:l=(s-r)/u+(s<r?6:0);break;case s:l=(r-n)/u+2;break;case r:l=(n-s)/u+4;break}l/=6}return e.h=l,e.s=c,e.l=h,e}getRGB(e,t=Ke.workingColorSpace){return Ke.workingToColorSpace(Ht.copy(this),t),e.r=Ht.r,e.g=Ht.g,e.b=Ht.b,e}getStyle(e=hn){Ke.workingToColorSpace(Ht.copy(this),e);let t=Ht.r,n=Ht.g,s=Ht.b;return e!==hn?`color(${e} ${t.toFixed(3)} ${n.toFixed(3)} ${s.toFixed(3)})`:`rgb(${Math.round(t*255)},${Math.round(n*255)},${Math.round(s*255)})`}offsetHSL(e,t,n){return this.getHSL(Ci),this.setHSL(Ci.h+e,Ci.s+t,Ci.l+n)}add(e){return this.r+=e.r,this.g+=e.g,this.b+=e.b,this}addColors(e,t){return this.r=e.r+t.r,this.g=e.g+t.g,this.b=e.b+t.b,this}addScalar(e){return this.r+=e,this.g+=e,this.b+=e,this}sub(e){return this.r=Math.max(0,this.r-e.r),this.g=Math.max(0,this.g-e.g),this.b=Math.max(0,this.b-e.b),this}multiply(e){return this.r*=e.r,this.g*=e.g,this.b*=e.b,this}multiplyScalar(e){return this.r*=e,this.g*=e,this.b*=e,this}lerp(e,t){return this.r+=(e.r-this.r)*t,this.g+=(e.g-this.g)*t,this.b+=(e.b-this.b)*t,this}lerpColors(e,t,n){return this.r=e.r+(t.r-e.r)*n,this.g=e.g+(t.g-e.g)*n,this.b=e.b+(t.b-e.b)*n,this}lerpHSL(e,t){this.getHSL(Ci),e.getHSL(pa);let n=Vl(Ci.h,pa.h,t),s=Vl(Ci.s,pa.s,t),r=Vl(Ci.l,pa.l,t);return this.setHSL(n,s,r),this}setFromVector3(e){return this.r=e.x,this.g=e.y,this.b=e.z,this}applyMatrix3(e){let t=this.r,n=this.g,s=this.b,r=e.elements;return this.r=r[0]*t+r[3]*n+r[6]*s,this.g=r[1]*t+r[4]*n+r[7]*s,this.b=r[2]*t+r[5]*n+r[8]*s,this}equals(e){return e.r===this.r&&e.g===this.g&&e.b===this.b}fromArray(e,t=0){return this.r=e[t],this.g=e[t+1],this.b=e[t+2],this}toArray(e=[],t=0){return e[t]=this.r,e[t+1]=this.g,e[t+2]=this.b,e}fromBufferAttribute(e,t){return this.r=e.getX(t),this.g=e.getY(t),this.b=e.getZ(t),this}toJSON(){return this.getHex()}*[Symbol.iterator](){yield this.r,yield this.g,yield this.b}},Ht=new je;je.NAMES=xd;var is=class extends fn{constructor(){super(),this.isScene=!0,this.type="Scene",this.background=null,this.environment=null,this.fog=null,this.backgroundBlurriness=0,this.backgroundIntensity=1,this.backgroundRotation=new Ni,this.environmentIntensity=1,this.environmentRotation=new Ni,this.overrideMaterial=null,typeof __THREE_DEVTOOLS__<"u"&&__THREE_DEVTOOLS__.dispatchEvent(new CustomEvent("observe",{detail:this}))}copy(e,t){return super.copy(e,t),this.background=e.background!==null?e.background.clone():null,this.environment=e.environment!==null?e.environment.clone():null,this.fog=e.fog!==null?e.fog.clone():null,this.backgroundBlurriness=e.backgroundBlurriness,this.backgroundIntensity=e.backgroundIntensity,this.backgroundRotation.copy(e.backgroundRotation),this.environmentIntensity=e.environmentIntensity,this.environmentRotation.copy(e.environmentRotation),this.overrideMaterial=e.overrideMaterial!==null?e.overrideMaterial.clone():null,this.matrixAutoUpdate=e.matrixAutoUpdate,this}toJSON(e){let t=super.toJSON(e);return this.fog!==null&&(t.object.fog=this.fog.toJSON()),t.object.backgroundBlurriness=this.backgroundBlurriness,t.object.backgroundIntensity=this.backgroundIntensity,t.object.backgroundRotation=this.backgroundRotation.toArray(),t.object.environmentIntensity=this.environmentIntensity,t.object.environmentRotation=this.environmentRotation.toArray(),t}},In=new W,ai=new W,Zl=new W,oi=new W,ws=new W,Ss=new W,xu=new W,Jl=new W,Kl=new W,jl=new W,Ql=new Mt,ec=new Mt,tc=new Mt,Li=class i{constructor(e=new W,t=new W,n=new W){this.a=e,this.b=t,this.c=n}static getNormal(e,t,n,s){s.subVectors(n,t),In.subVectors(e,t),s.cross(In);let r=s.lengthSq();return r>0?s.multiplyScalar(1/Math.sqrt(r)):s.set(0,0,0)}static getBarycoord(e,t,n,s,r){In.subVectors(s,t),ai.subVectors(n,t),Zl.subVectors(e,t);let a=In.dot(In),o=In.dot(ai),l=In.dot(Zl),c=ai.dot(ai),h=ai.dot(Zl),u=a*c-o*o;if(u===0)return r.set(0,0,0),null;let d=1/u,p=(c*l-o*h)*d,_=(a*h-o*l)*d;return r.set(1-p-_,_,p)}static containsPoint(e,t,n,s){return this.getBarycoord(e,t,n,s,oi)===null?!1:oi.x>=0&&oi.y>=0&&oi.x+oi.y<=1}static getInterpolation(e,t,n,s,r,a,o,l){return this.getBarycoord(e,t,n,s,oi)===null?(l.x=0,l.y=0,"z"in l&&(l.z=0),"w"in l&&(l.w=0),null):(l.setScalar(0),l.addScaledVector(r,oi.x),l.addScaledVector(a,oi.y),l.addScaledVector(o,oi.z),l)}static getInterpolatedAttribute(e,t,n,s,r,a){return Ql.setScalar(0),ec.setScalar(0),tc.setScalar(0),Ql.fromBufferAttribute(e,t),ec.fromBufferAttribute(e,n),tc.fromBufferAttribute(e,s),a.setScalar(0),a.addScaledVector(Ql,r.x),a.addScaledVector(ec,r.y),a.addScaledVector(tc,r.z),a}static isFrontFacing(e,t,n,s){return In.subVectors(n,t),ai.subVectors(e,t),In.cross(ai).dot(s)<0}set(e,t,n){return this.a.copy(e),this.b.copy(t),this.c.copy(n),this}setFromPointsAndIndices(e,t,n,s){return this.a.copy(e[t]),this.b.copy(e[n]),this.c.copy(e[s]),this}setFromAttributeAndIndices(e,t,n,s){return this.a.fromBufferAttribute(e,t),this.b.fromBufferAttribute(e,n),this.c.fromBufferAttribute(e,s),this}clone(){return new this.constructor().copy(this)}copy(e){return this.a.copy(e.a),this.b.copy(e.b),this.c.copy(e.c),this}getArea(){return In.subVectors(this.c,this.b),ai.subVectors(this.a,this.b),In.cross(ai).length()*.5}getMidpoint(e){return e.addVectors(this.a,this.b).add(this.c).multiplyScalar(1/3)}getNormal(e){return i.getNormal(this.a,this.b,this.c,e)}getPlane(e){return e.setFromCoplanarPoints(this.a,this.b,this.c)}getBarycoord(e,t){return i.getBarycoord(e,this.a,this.b,this.c,t)}getInterpolation(e,t,n,s,r){return i.getInterpolation(e,this.a,this.b,this.c,t,n,s,r)}containsPoint(e){return i.containsPoint(e,this.a,this.b,this.c)}isFrontFacing(e){return i.isFrontFacing(this.a,this.b,this.c,e)}intersectsBox(e){return e.intersectsTriangle(this)}closestPointToPoint(e,t){let n=this.a,s=this.b,r=this.c,a,o;ws.subVectors(s,n),Ss.subVectors(r,n),Jl.subVectors(e,n);let l=ws.dot(Jl),c=Ss.dot(Jl);if(l<=0&&c<=0)return t.copy(n);Kl.subVectors(e,s);let h=ws.dot(Kl),u=Ss.dot(Kl);if(h>=0&&u<=h)return t.copy(s);let d=l*u-h*c;if(d<=0&&l>=0&&h<=0&&l-h>0)return a=l/(l-h),t.copy(n).addScaledVector(ws,a);jl.subVectors(e,r);let p=ws.dot(jl),_=Ss.dot(jl);if(_>=0&&p<=_)return t.copy(r);let v=p*c-l*_;if(v<=0&&c>=0&&_<=0)return o=c/(c-_),t.copy(n).addScaledVector(Ss,o);let m=h*_-p*u;if(m<=0&&u-h>=0&&p-_>=0)return xu.subVectors(r,s),o=(u-h)/(u-h+(p-_)),t.copy(s).addScaledVector(xu,o);let g=1/(m+v+d);return a=v*g,o=d*g,t.copy(n).addScaledVector(ws,a).addScaledVector(Ss,o)}equals(e){return e.a.equals(this.a)&&e.b.equals(this.b)&&e.c.equals(this.c)}},Di=class{constructor(e=new W(1/0,1/0,1/0),t=new W(-1/0,-1/0,-1/0)){this.isBox3=!0,this.min=e,this.max=t}set(e,t){return this.min.copy(e),this.max.copy(t),this}setFromArray(e){this.makeEmpty();for(let t=0,n=e.length;t<n;t+=3)this.expandByPoint(Ln.fromArray(e,t));return this}setFromBufferAttribute(e){this.makeEmpty();for(let t=0,n=e.count;t<n;t++)this.expandByPoint(Ln.fromBufferAttribute(e,t));return this}setFromPoints(e){this.makeEmpty();for(let t=0,n=e.length;t<n;t++)this.expandByPoint(e[t]);return this}setFromCenterAndSize(e,t){let n=Ln.copy(t).multiplyScalar(.5);return this.min.copy(e).sub(n),this.max.copy(e).add(n),this}setFromObject(e,t=!1){return this.makeEmpty(),this.expandByObject(e,t)}clone(){return new this.constructor().copy(this)}copy(e){return this.min.copy(e.min),this.max.copy(e.max),this}makeEmpty(){return this.min.x=this.min.y=this.min.z=1/0,this.max.x=this.max.y=this.max.z=-1/0,this}isEmpty(){return this.max.x<this.min.x||this.max.y<this.min.y||this.max.z<this.min.z}getCenter(e){return this.isEmpty()?e.set(0,0,0):e.addVectors(this.min,this.max).multiplyScalar(.5)}getSize(e){return this.isEmpty()?e.set(0,0,0):e.subVectors(this.max,this.min)}expandByPoint(e){return this.min.min(e),this.max.max(e),this}expandByVector(e){return this.min.sub(e),this.max.add(e),this}expandByScalar(e){return this.min.addScalar(-e),this.max.addScalar(e),this}expandByObject(e,t=!1){e.updateWorldMatrix(!1,!1);let n=e.geometry;if(n!==void 0){let r=n.getAttribute("position");if(t===!0&&r!==void 0&&e.isInstancedMesh!==!0&&e.isBatchedMesh!==!0)for(let a=0,o=r.count;a<o;a++)e.isMesh===!0?e.getVertexPosition(a,Ln):Ln.fromBufferAttribute(r,a),Ln.applyMatrix4(e.matrixWorld),this.expandByPoint(Ln);else e.boundingBox!==void 0?(e.boundingBox===null&&e.computeBoundingBox(),ma.copy(e.boundingBox)):(n.boundingBox===null&&n.computeBoundingBox(),ma.copy(n.boundingBox)),ma.applyMatrix4(e.matrixWorld),this.union(ma)}let s=e.children;for(let r=0,a=s.length;r<a;r++)this.expandByObject(s[r],t);return this}containsPoint(e){return e.x>=this.min.x&&e.x<=this.max.x&&e.y>=this.min.y&&e.y<=this.max.y&&e.z>=this.min.z&&e.z<=this.max.z}containsBox(e){return this.min.x<=e.min.x&&e.max.x<=this.max.x&&this.min.y<=e.min.y&&e.max.y<=this.max.y&&this.min.z<=e.min.z&&e.max.z<=this.max.z}getParameter(e,t){return t.set((e.x-this.min.x)/(this.max.x-this.min.x),(e.y-this.min.y)/(this.max.y-this.min.y),(e.z-this.min.z)/(this.max.z-this.min.z))}intersectsBox(e){return e.max.x>=this.min.x&&e.min.x<=this.max.x&&e.max.y>=this.min.y&&e.min.y<=this.max.y&&e.max.z>=this.min.z&&e.min.z<=this.max.z}intersectsSphere(e){return this.clampPoint(e.center,Ln),Ln.distanceToSquared(e.center)<=e.radius*e.radius}intersectsPlane(e){let t,n;return e.normal.x>0?(t=e.normal.x*this.min.x,n=e.normal.x*this.max.x):(t=e.normal.x*this.max.x,n=e.normal.x*this.min.x),e.normal.y>0?(t+=e.normal.y*this.min.y,n+=e.normal.y*this.max.y):(t+=e.normal.y*this.max.y,n+=e.normal.y*this.min.y),e.normal.z>0?(t+=e.normal.z*this.min.z,n+=e.normal.z*this.max.z):(t+=e.normal.z*this.max.z,n+=e.normal.z*this.min.z),t<=-e.constant&&n>=-e.constant}intersectsTriangle(e){if(this.isEmpty())return!1;this.getCenter(hr),ga.subVectors(this.max,hr),Ts.subVectors(e.a,hr),Es.subVectors(e.b,hr),As.subVectors(e.c,hr),Ri.subVectors(Es,Ts),Pi.subVectors(As,Es),Qi.subVectors(Ts,As);let t=[0,-Ri.z,Ri.y,0,-Pi.z,Pi.y,0,-Qi.z,Qi.y,Ri.z,0,-Ri.x,Pi.z,0,-Pi.x,Qi.z,0,-Qi.x,-Ri.y,Ri.x,0,-Pi.y,Pi.x,0,-Qi.y,Qi.x,0];return!nc(t,Ts,Es,As,ga)||(t=[1,0,0,0,1,0,0,0,1],!nc(t,Ts,Es,As,ga))?!1:(_a.crossVectors(Ri,Pi),t=[_a.x,_a.y,_a.z],nc(t,Ts,Es,As,ga))}clampPoint(e,t){return t.copy(e).clamp(this.min,this.max)}distanceToPoint(e){return this.clampPoint(e,Ln).distanceTo(e)}getBoundingSphere(e){return this.isEmpty()?e.makeEmpty():(this.getCenter(e.center),e.radius=this.getSize(Ln).length()*.5),e}intersect(e){return this.min.max(e.min),this.max.min(e.max),this.isEmpty()&&this.makeEmpty(),this}union(e){return this.min.min(e.min),this.max.max(e.max),this}applyMatrix4(e){return this.isEmpty()?this:(li[0].set(this.min.x,this.min.y,this.min.z).applyMatrix4(e),li[1].set(this.min.x,this.min.y,this.max.z).applyMatrix4(e),li[2].set(this.min.x,this.max.y,this.min.z).applyMatrix4(e),li[3].set(this.min.x,this.max.y,this.max.z).applyMatrix4(e),li[4].set(this.max.x,this.min.y,this.min.z).applyMatrix4(e),li[5].set(this.max.x,this.min.y,this.max.z).applyMatrix4(e),li[6].set(this.max.x,this.max.y,this.min.z).applyMatrix4(e),li[7].set(this.max.x,this.max.y,this.max.z).applyMatrix4(e),this.setFromPoints(li),this)}translate(e){return this.min.add(e),this.max.add(e),this}equals(e){return e.min.equals(this.min)&&e.max.equals(this.max)}toJSON(){return{min:this.min.toArray(),max:this.max.toArray()}}fromJSON(e){return this.min.fromArray(e.min),this.max.fromArray(e.max),this}},li=[new W,new W,new W,new W,new W,new W,new W,new W],Ln=new W,ma=new Di,Ts=new W,Es=new W,As=new W,Ri=new W,Pi=new W,Qi=new W,hr=new W,ga=new W,_a=new W,es=new W;function nc(i,e,t,n,s){for(let r=0,a=i.length-3;r<=a;r+=3){es.fromArray(i,r);let o=s.x*Math.abs(es.x)+s.y*Math.abs(es.y)+s.z*Math.abs(es.z),l=e.dot(es),c=t.dot(es),h=n.dot(es);if(Math.max(-Math.max(l,c,h),Math.min(l,c,h))>o)return!1}return!0}var Et=new W,va=new et,im=0,Zt=class extends Wn{constructor(e,t,n=!1){if(super(),Array.isArray(e))throw new TypeError("THREE.BufferAttribute: array should be a Typed Array.");this.isBufferAttribute=!0,Object.defineProperty(this,"id",{value:im++}),this.name="",this.array=e,this.itemSize=t,this.count=e!==void 0?e.length/t:0,this.normalized=n,this.usage=fd,this.updateRanges=[],this.gpuType=Un,this.version=0,this._normalizationScale=e!==void 0?$c(e):void 0}onUploadCallback(){}set needsUpdate(e){e===!0&&this.version++}setUsage(e){return this.usage=e,this}addUpdateRange(e,t){this.updateRanges.push({start:e,count:t})}clearUpdateRanges(){this.updateRanges.length=0}copy(e){return this.name=e.name,this.array=new e.array.constructor(e.array),this.itemSize=e.itemSize,this.count=e.count,this.normalized=e.normalized,this.usage=e.usage,this.gpuType=e.gpuType,this._normalizationScale=e._normalizationScale,this}copyAt(e,t,n){e*=this.itemSize,n*=t.itemSize;for(let s=0,r=this.itemSize;s<r;s++)this.array[e+s]=t.array[n+s];return this}copyArray(e){return this.array.set(e),this}applyMatrix3(e){if(this.itemSize===2)for(let t=0,n=this.count;t<n;t++)va.fromBufferAttribute(this,t),va.applyMatrix3(e),this.setXY(t,va.x,va.y);else if(this.itemSize===3)for(let t=0,n=this.count;t<n;t++)Et.fromBufferAttribute(this,t),Et.applyMatrix3(e),this.setXYZ(t,Et.x,Et.y,Et.z);return this}applyMatrix4(e){for(let t=0,n=this.count;t<n;t++)Et.fromBufferAttribute(this,t),Et.applyMatrix4(e),this.setXYZ(t,Et.x,Et.y,Et.z);return this}applyNormalMatrix(e){for(let t=0,n=this.count;t<n;t++)Et.fromBufferAttribute(this,t),Et.applyNormalMatrix(e),this.setXYZ(t,Et.x,Et.y,Et.z);return this}transformDirection(e){for(let t=0,n=this.count;t<n;t++)Et.fromBufferAttribute(this,t),Et.transformDirection(e),this.setXYZ(t,Et.x,Et.y,Et.z);return this}set(e,t=0){return this.array.set(e,t),this}getComponent(e,t){let n=this.array[e*this.itemSize+t];return this.normalized&&(n=this._denormalize(n)),n}setComponent(e,t,n){return this.normalized&&(n=this._normalize(n)),this.array[e*this.itemSize+t]=n,this}getX(e){let t=this.array[e*this.itemSize];return this.normalized&&(t=this._denormalize(t)),t}setX(e,t){return this.normalized&&(t=this._normalize(t)),this.array[e*this.itemSize]=t,this}getY(e){let t=this.array[e*this.itemSize+1];return this.normalized&&(t=this._denormalize(t)),t}setY(e,t){return this.normalized&&(t=this._normalize(t)),this.array[e*this.itemSize+1]=t,this}getZ(e){let t=this.array[e*this.itemSize+2];return this.normalized&&(t=this._denormalize(t)),t}setZ(e,t){return this.normalized&&(t=this._normalize(t)),this.array[e*this.itemSize+2]=t,this}getW(e){let t=this.array[e*this.itemSize+3];return this.normalized&&(t=this._denormalize(t)),t}setW(e,t){return this.normalized&&(t=this._normalize(t)),this.array[e*this.itemSize+3]=t,this}setXY(e,t,n){return e*=this.itemSize,this.normalized&&(t=this._normalize(t),n=this._normalize(n)),this.array[e+0]=t,this.array[e+1]=n,this}setXYZ(e,t,n,s){return e*=this.itemSize,this.normalized&&(t=this._normalize(t),n=this._normalize(n),s=this._normalize(s)),this.array[e+0]=t,this.array[e+1]=n,this.array[e+2]=s,this}setXYZW(e,t,n,s,r){return e*=this.itemSize,this.normalized&&(t=this._normalize(t),n=this._normalize(n),s=this._normalize(s),r=this._normalize(r)),this.array[e+0]=t,this.array[e+1]=n,this.array[e+2]=s,this.array[e+3]=r,this}onUpload(e){return this.onUploadCallback=e,this}clone(){return new this.constructor(this.array,this.itemSize).copy(this)}toJSON(){let e={itemSize:this.itemSize,type:this.array.constructor.name,array:Array.from(this.array),normalized:this.normalized};return e.name=this.name,e.usage=this.usage,e.gpuType=this.gpuType,e}dispose(){this.dispatchEvent({type:"dispose"})}_denormalize(e){let t=this._normalizationScale;return t!==void 0?Math.max(e/t,-1):Wp(e,this.array)}_normalize(e){let t=this._normalizationScale;return t!==void 0?Math.round(e*t):Xp(e,this.array)}};var br=class extends Zt{constructor(e,t,n){super(new Uint16Array(e),t,n)}};var Mr=class extends Zt{constructor(e,t,n){super(new Uint32Array(e),t,n)}};var tn=class extends Zt{constructor(e,t,n){super(new Float32Array(e),t,n)}},sm=new Di,ur=new W,ic=new W,ss=class{constructor(e=new W,t=-1){this.isSphere=!0,this.center=e,this.radius=t}set(e,t){return this.center.copy(e),this.radius=t,this}setFromPoints(e,t){let n=this.center;t!==void 0?n.copy(t):sm.setFromPoints(e).getCenter(n);let s=0;for(let r=0,a=e.length;r<a;r++)s=Math.max(s,n.distanceToSquared(e[r]));return this.radius=Math.sqrt(s),this}copy(e){return this.center.copy(e.center),this.radius=e.radius,this}isEmpty(){return this.radius<0}makeEmpty(){return this.center.set(0,0,0),this.radius=-1,this}containsPoint(e){return e.distanceToSquared(this.center)<=this.radius*this.radius}distanceToPoint(e){return e.distanceTo(this.center)-this.radius}intersectsSphere(e){let t=this.radius+e.radius;return e.center.distanceToSquared(this.center)<=t*t}intersectsBox(e){return e.intersectsSphere(this)}intersectsPlane(e){return Math.abs(e.distanceToPoint(this.center))<=this.radius}clampPoint(e,t){let n=this.center.distanceToSquared(e);return t.copy(e),n>this.radius*this.radius&&(t.sub(this.center).normalize(),t.multiplyScalar(this.radius).add(this.center)),t}getBoundingBox(e){return this.isEmpty()?(e.makeEmpty(),e):(e.set(this.center,this.center),e.expandByScalar(this.radius),e)}applyMatrix4(e){return this.center.applyMatrix4(e),this.radius=this.radius*e.getMaxScaleOnAxis(),this}translate(e){return this.center.add(e),this}expandByPoint(e){if(this.isEmpty())return this.center.copy(e),this.radius=0,this;ur.subVectors(e,this.center);let t=ur.lengthSq();if(t>this.radius*this.radius){let n=Math.sqrt(t),s=(n-this.radius)*.5;this.center.addScaledVector(ur,s/n),this.radius+=s}return this}union(e){return e.isEmpty()?this:this.isEmpty()?(this.copy(e),this):(this.center.equals(e.center)===!0?this.radius=Math.max(this.radius,e.radius):(ic.subVectors(e.center,this.center).setLength(e.radius),this.expandByPoint(ur.copy(e.center).add(ic)),this.expandByPoint(ur.copy(e.center).sub(ic))),this)}equals(e){return e.center.equals(this.center)&&e.radius===this.radius}clone(){return new this.constructor().copy(this)}toJSON(){return{radius:this.radius,center:this.center.toArray()}}fromJSON(e){return this.radius=e.radius,this.center.fromArray(e.center),this}},rm=0,bn=new at,sc=new fn,Cs=new W,cn=new Di,dr=new Di,Dt=new W,Dn=class i extends Wn{constructor(){super(),this.isBufferGeometry=!0,Object.defineProperty(this,"id",{value:rm++}),this.uuid=Or(),this.name="",this.type="BufferGeometry",this.index=null,this.indirect=null,this.indirectOffset=0,this.attributes={},this.morphAttributes={},this.morphTargetsRelative=!1,this.groups=[],this.boundingBox=null,this.boundingSphere=null,this.drawRange={start:0,count:1/0},this.userData={},this._transformed=!1}getIndex(){return this.index}setIndex(e){return Array.isArray(e)?this.index=new(Vp(e)?Mr:br)(e,1):this.index=e,this}setIndirect(e,t=0){return this.indirect=e,this.indirectOffset=t,this}getIndirect(){return this.indirect}getAttribute(e){return this.attributes[e]}setAttribute(e,t){return this.attributes[e]=t,this}deleteAttribute(e){return delete this.attributes[e],this}hasAttribute(e){return this.attributes[e]!==void 0}addGroup(e,t,n=0){this.groups.push({start:e,count:t,materialIndex:n})}clearGroups(){this.groups=[]}setDrawRange(e,t){this.drawRange.start=e,this.drawRange.count=t}applyMatrix4(e){let t=this.attributes.position;t!==void 0&&(t.applyMatrix4(e),t.needsUpdate=!0);let n=this.attributes.normal;if(n!==void 0){let r=new Ge().getNormalMatrix(e);n.applyNormalMatrix(r),n.needsUpdate=!0}let s=this.attributes.tangent;return s!==void 0&&(s.transformDirection(e),s.needsUpdate=!0),this.boundingBox!==null&&this.computeBoundingBox(),this.boundingSphere!==null&&this.computeBoundingSphere(),this._transformed=!0,this}applyQuaternion(e){return bn.makeRotationFromQuaternion(e),this.applyMatrix4(bn),this}rotateX(e){return bn.makeRotationX(e),this.applyMatrix4(bn),this}rotateY(e){return bn.makeRotationY(e),this.applyMatrix4(bn),this}rotateZ(e){return bn.makeRotationZ(e),this.applyMatrix4(bn),this}translate(e,t,n){return bn.makeTranslation(e,t,n),this.applyMatrix4(bn),this}scale(e,t,n){return bn.makeScale(e,t,n),this.applyMatrix4(bn),this}lookAt(e){return sc.lookAt(e),sc.updateMatrix(),this.applyMatrix4(sc.matrix),this}center(){return this.computeBoundingBox(),this.boundingBox.getCenter(Cs).negate(),this.translate(Cs.x,Cs.y,Cs.z),this}setFromPoints(e){let t=this.getAttribute("position");if(t===void 0){let n=[];for(let s=0,r=e.length;s<r;s++){let a=e[s];n.push(a.x,a.y,a.z||0)}this.setAttribute("position",new tn(n,3))}else{let n=Math.min(e.length,t.count);for(let s=0;s<n;s++){let r=e[s];t.setXYZ(s,r.x,r.y,r.z||0)}e.length>t.count&&Oe("BufferGeometry: Buffer size too small for points data. Use .dispose() and create a new geometry."),t.needsUpdate=!0}return this}computeBoundingBox(){this.boundingBox===null&&(this.boundingBox=new Di);let e=this.attributes.position,t=this.morphAttributes.position;if(e&&e.isGLBufferAttribute){ze("BufferGeometry.computeBoundingBox(): GLBufferAttribute requires a manual bounding box.",this),this.boundingBox.set(new W(-1/0,-1/0,-1/0),new W(1/0,1/0,1/0));return}if(e!==void 0){if(this.boundingBox.setFromBufferAttribute(e),t)for(let n=0,s=t.length;n<s;n++){let r=t[n];cn.setFromBufferAttribute(r),this.morphTargetsRelative?(Dt.addVectors(this.boundingBox.min,cn.min),this.boundingBox.expandByPoint(Dt),Dt.addVectors(this.boundingBox.max,cn.max),this.boundingBox.expandByPoint(Dt)):(this.boundingBox.expandByPoint(cn.min),this.boundingBox.expandByPoint(cn.max))}}else this.boundingBox.makeEmpty();(isNaN(this.boundingBox.min.x)||isNaN(this.boundingBox.min.y)||isNaN(this.boundingBox.min.z))&&ze('BufferGeometry.computeBoundingBox(): Computed min/max have NaN values. The "position" attribute is likely to have NaN values.',this)}computeBoundingSphere(){this.boundingSphere===null&&(this.boundingSphere=new ss);let e=this.attributes.position,t=this.morphAttributes.position;if(e&&e.isGLBufferAttribute){ze("BufferGeometry.computeBoundingSphere(): GLBufferAttribute requires a manual bounding sphere.",this),this.boundingSphere.set(new W,1/0);return}if(e){let n=this.boundingSphere.center;if(cn.setFromBufferAttribute(e),t)for(let r=0,a=t.length;r<a;r++){let o=t[r];dr.setFromBufferAttribute(o),this.morphTargetsRelative?(Dt.addVectors(cn.min,dr.min),cn.expandByPoint(Dt),Dt.addVectors(cn.max,dr.max),cn.expandByPoint(Dt)):(cn.expandByPoint(dr.min),cn.expandByPoint(dr.max))}cn.getCenter(n);let s=0;for(let r=0,a=e.count;r<a;r++)Dt.fromBufferAttribute(e,r),s=Math.max(s,n.distanceToSquared(Dt));if(t)for(let r=0,a=t.length;r<a;r++){let o=t[r],l=this.morphTargetsRelative;for(let c=0,h=o.count;c<h;c++)Dt.fromBufferAttribute(o,c),l&&(Cs.fromBufferAttribute(e,c),Dt.add(Cs)),s=Math.max(s,n.distanceToSquared(Dt))}this.boundingSphere.radius=Math.sqrt(s),isNaN(this.boundingSphere.radius)&&ze('BufferGeometry.computeBoundingSphere(): Computed radius is NaN. The "position" attribute is likely to have NaN values.',this)}}computeTangents(){let e=this.index,t=this.attributes;if(e===null||t.position===void 0||t.normal===void 0||t.uv===void 0){ze("BufferGeometry: .computeTangents() failed. Missing required attributes (index, position, normal or uv)");return}let n=t.position,s=t.normal,r=t.uv,a=this.getAttribute("tangent");(a===void 0||a.count!==n.count)&&(a=new Zt(new Float32Array(4*n.count),4),this.setAttribute("tangent",a));let o=[],l=[],c=new Uint8Array(n.count);for(let X=0;X<n.count;X++)o[X]=new W,l[X]=new W;let h=new W,u=new W,d=new W,p=new et,_=new et,v=new et,m=new W,g=new W;function M(X,k,z){c[X]=c[k]=c[z]=1,h.fromBufferAttribute(n,X),u.fromBufferAttribute(n,k),d.fromBufferAttribute(n,z),p.fromBufferAttribute(r,X),_.fromBufferAttribute(r,k),v.fromBufferAttribute(r,z),u.sub(h),d.sub(h),_.sub(p),v.sub(p);let U=1/(_.x*v.y-v.x*_.y);isFinite(U)&&(m.copy(u).multiplyScalar(v.y).addScaledVector(d,-_.y).multiplyScalar(U),g.copy(d).multiplyScalar(_.x).addScaledVector(u,-v.x).multiplyScalar(U),o[X].add(m),o[k].add(m),o[z].add(m),l[X].add(g),l[k].add(g),l[z].add(g))}let C=this.groups;C.length===0&&(C=[{start:0,count:e.count}]);for(let X=0,k=C.length;X<k;++X){let z=C[X],U=z.start,J=z.count;for(let S=U,D=U+J;S<D;S+=3)M(e.getX(S+0),e.getX(S+1),e.getX(S+2))}let w=new W,E=new W,T=new W,x=new W;function A(X){T.fromBufferAttribute(s,X),x.copy(T);let k=o[X];w.copy(k),w.sub(T.multiplyScalar(T.dot(k))).normalize(),E.crossVectors(x,k);let U=E.dot(l[X])<0?-1:1;a.setXYZW(X,w.x,w.y,w.z,U)}for(let X=0,k=n.count;X<k;++X)c[X]&&A(X);this._transformed=!0}computeVertexNormals(){let e=this.index,t=this.getAttribute("position");if(t!==void 0){let n=this.getAttribute("normal");if(n===void 0||n.count!==t.count)n=new Zt(new Float32Array(t.count*3),3),this.setAttribute("normal",n);else for(let d=0,p=n.count;d<p;d++)n.setXYZ(d,0,0,0);let s=new W,r=new W,a=new W,o=new W,l=new W,c=new W,h=new W,u=new W;if(e)for(let d=0,p=e.count;d<p;d+=3){let _=e.getX(d+0),v=e.getX(d+1),m=e.getX(d+2);s.fromBufferAttribute(t,_),r.fromBufferAttribute(t,v),a.fromBufferAttribute(t,m),h.subVectors(a,r),u.subVectors(s,r),h.cross(u),o.fromBufferAttribute(n,_),l.fromBufferAttribute(n,v),c.fromBufferAttribute(n,m),o.add(h),l.add(h),c.add(h),n.setXYZ(_,o.x,o.y,o.z),n.setXYZ(v,l.x,l.y,l.z),n.setXYZ(m,c.x,c.y,c.z)}else for(let d=0,p=t.count;d<p;d+=3)s.fromBufferAttribute(t,d+0),r.fromBufferAttribute(t,d+1),a.fromBufferAttribute(t,d+2),h.subVectors(a,r),u.subVectors(s,r),h.cross(u),n.setXYZ(d+0,h.x,h.y,h.z),n.setXYZ(d+1,h.x,h.y,h.z),n.setXYZ(d+2,h.x,h.y,h.z);this.normalizeNormals(),n.needsUpdate=!0}}normalizeNormals(){let e=this.attributes.normal;for(let t=0,n=e.count;t<n;t++)Dt.fromBufferAttribute(e,t),Dt.normalize(),e.setXYZ(t,Dt.x,Dt.y,Dt.z)}toNonIndexed(){function e(o,l){let c=o.array,h=o.itemSize,u=o.normalized,d=new c.constructor(l.length*h),p=0,_=0;for(let v=0,m=l.length;v<m;v++){o.isInterleavedBufferAttribute?p=l[v]*o.data.stride+o.offset:p=l[v]*h;for(let g=0;g<h;g++)d[_++]=c[p++]}return new Zt(d,h,u)}if(this.index===null)return Oe("BufferGeometry.toNonIndexed(): BufferGeometry is already non-indexed."),this;let t=new i,n=this.index.array,s=this.attributes;for(let o in s){let l=s[o],c=e(l,n);t.setAttribute(o,c)}let r=this.morphAttributes;for(let o in r){let l=[],c=r[o];for(let h=0,u=c.length;h<u;h++){let d=c[h],p=e(d,n);l.push(p)}t.morphAttributes[o]=l}t.morphTargetsRelative=this.morphTargetsRelative;let a=this.groups;for(let o=0,l=a.length;o<l;o++){let c=a[o];t.addGroup(c.start,c.count,c.materialIndex)}return t}toJSON(){let e={metadata:{version:4.7,type:"BufferGeometry",generator:"BufferGeometry.toJSON"}};if(e.uuid=this.uuid,e.type=this.parameters!==void 0&&this._transformed===!0?"BufferGeometry":this.type,e.name=this.name,Object.keys(this.userData).length>0&&(e.userData=this.userData),this.parameters!==void 0&&this._transformed!==!0){let l=this.parameters;for(let c in l)l[c]!==void 0&&(e[c]=l[c]);return e}e.data={attributes:{}};let t=this.index;t!==null&&(e.data.index={type:t.array.constructor.name,array:Array.prototype.slice.call(t.array)});let n=this.attributes;for(let l in n){let c=n[l];e.data.attributes[l]=c.toJSON(e.data)}let s={},r=!1;for(let l in this.morphAttributes){let c=this.morphAttributes[l],h=[];for(let u=0,d=c.length;u<d;u++){let p=c[u];h.push(p.toJSON(e.data))}h.length>0&&(s[l]=h,r=!0)}r&&(e.data.morphAttributes=s,e.data.morphTargetsRelative=this.morphTargetsRelative);let a=this.groups;a.length>0&&(e.data.groups=JSON.parse(JSON.stringify(a)));let o=this.boundingSphere;return o!==null&&(e.data.boundingSphere=o.toJSON()),e}clone(){return new this.constructor().copy(this)}copy(e){this.index=null,this.attributes={},this.morphAttributes={},this.groups=[],this.boundingBox=null,this.boundingSphere=null;let t={};this.name=e.name;let n=e.index;n!==null&&this.setIndex(n.clone());let s=e.attributes;for(let c in s){let h=s[c];this.setAttribute(c,h.clone(t))}let r=e.morphAttributes;for(let c in r){let h=[],u=r[c];for(let d=0,p=u.length;d<p;d++)h.push(u[d].clone(t));this.morphAttributes[c]=h}this.morphTargetsRelative=e.morphTargetsRelative;let a=e.groups;for(let c=0,h=a.length;c<h;c++){let u=a[c];this.addGroup(u.start,u.count,u.materialIndex)}let o=e.boundingBox;o!==null&&(this.boundingBox=o.clone());let l=e.boundingSphere;return l!==null&&(this.boundingSphere=l.clone()),this.drawRange.start=e.drawRange.start,this.drawRange.count=e.drawRange.count,this.userData=e.userData,this._transformed=e._transformed,this}dispose(){this.dispatchEvent({type:"dispose"})}};var rc=new W,am=new W,om=new Ge,Nn=class{constructor(e=new W(1,0,0),t=0){this.isPlane=!0,this.normal=e,this.constant=t}set(e,t){return this.normal.copy(e),this.constant=t,this}setComponents(e,t,n,s){return this.normal.set(e,t,n),this.constant=s,this}setFromNormalAndCoplanarPoint(e,t){return this.normal.copy(e),this.constant=-t.dot(this.normal),this}setFromCoplanarPoints(e,t,n){let s=rc.subVectors(n,t).cross(am.subVectors(e,t)).normalize();return this.setFromNormalAndCoplanarPoint(s,e),this}copy(e){return this.normal.copy(e.normal),this.constant=e.constant,this}normalize(){let e=1/this.normal.length();return this.normal.multiplyScalar(e),this.constant*=e,this}negate(){return this.constant*=-1,this.normal.negate(),this}distanceToPoint(e){return this.normal.dot(e)+this.constant}distanceToSphere(e){return this.distanceToPoint(e.center)-e.radius}projectPoint(e,t){return t.copy(e).addScaledVector(this.normal,-this.distanceToPoint(e))}intersectLine(e,t,n=!0){let s=e.delta(rc),r=this.normal.dot(s);if(r===0)return this.distanceToPoint(e.start)===0?t.copy(e.start):null;let a=-(e.start.dot(this.normal)+this.constant)/r;return n===!0&&(a<0||a>1)?null:t.copy(e.start).addScaledVector(s,a)}intersectsLine(e){let t=this.distanceToPoint(e.start),n=this.distanceToPoint(e.end);return t<0&&n>0||n<0&&t>0}intersectsBox(e){return e.intersectsPlane(this)}intersectsSphere(e){return e.intersectsPlane(this)}coplanarPoint(e){return e.copy(this.normal).multiplyScalar(-this.constant)}applyMatrix4(e,t){let n=t||om.getNormalMatrix(e),s=this.coplanarPoint(rc).applyMatrix4(e),r=this.normal.applyMatrix3(n).normalize();return this.constant=-s.dot(r),this}translate(e){return this.constant-=e.dot(this.normal),this}equals(e){return e.normal.equals(this.normal)&&e.constant===this.constant}clone(){return new this.constructor().copy(this)}toJSON(){return{normal:this.normal.toArray(),constant:this.constant}}fromJSON(e){return this.normal.fromArray(e.normal),this.constant=e.constant,this}},lm=0,ki=class extends Wn{constructor(){super(),this.isMaterial=!0,Object.defineProperty(this,"id",{value:lm++}),this.uuid=Or(),this.name="",this.type="Material",this.blending=Hs,this.side=Gi,this.vertexColors=!1,this.opacity=1,this.transparent=!1,this.alphaHash=!1,this.blendSrc=yc,this.blendDst=bc,this.blendEquation=ls,this.blendSrcAlpha=null,this.blendDstAlpha=null,this.blendEquationAlpha=null,this.blendColor=new je(0,0,0),this.blendAlpha=0,this.depthFunc=Ns,this.depthTest=!0,this.depthWrite=!0,this.stencilWriteMask=255,this.stencilFunc=od,this.stencilRef=0,this.stencilFuncMask=255,this.stencilFail=ka,this.stencilZFail=ka,this.stencilZPass=ka,this.stencilWrite=!1,this.clippingPlanes=null,this.clipIntersection=!1,this.clipShadows=!1,this.shadowSide=null,this.colorWrite=!0,this.precision=null,this.polygonOffset=!1,this.polygonOffsetFactor=0,this.polygonOffsetUnits=0,this.dithering=!1,this.alphaToCoverage=!1,this.premultipliedAlpha=!1,this.forceSinglePass=!1,this.allowOverride=!0,this.visible=!0,this.toneMapped=!0,this.userData={},this.version=0,this._alphaTest=0}get alphaTest(){return this._alphaTest}set alphaTest(e){this._alphaTest>0!=e>0&&this.version++,this._alphaTest=e}onBeforeRender(){}onBeforeCompile(){}customProgramCacheKey(){return this.onBeforeCompile.toString()}setValues(e){if(e!==void 0)for(let t in e){let n=e[t];if(n===void 0){Oe(`Material: parameter '${t}' has value of undefined.`);continue}let s=this[t];if(s===void 0){Oe(`Material: '${t}' is not a property of THREE.${this.type}.`);continue}s&&s.isColor?s.set(n):s&&s.isVector2&&n&&n.isVector2||s&&s.isEuler&&n&&n.isEuler||s&&s.isVector3&&n&&n.isVector3?s.copy(n):this[t]=n}}toJSON(e){let t=e===void 0||typeof e=="string";t&&(e={textures:{},images:{}});let n={metadata:{version:4.7,type:"Material",generator:"Material.toJSON"}};n.uuid=this.uuid,n.type=this.type,n.blending=this.blending,n.side=this.side,n.shadowSide=this.shadowSide,n.vertexColors=this.vertexColors,n.opacity=this.opacity,n.transparent=this.transparent,n.blendSrc=this.blendSrc,n.blendDst=this.blendDst,n.blendEquation=this.blendEquation,n.blendSrcAlpha=this.blendSrcAlpha,n.blendDstAlpha=this.blendDstAlpha,n.blendEquationAlpha=this.blendEquationAlpha,n.blendColor=this.blendColor.getHex(),n.blendAlpha=this.blendAlpha,n.depthFunc=this.depthFunc,n.depthTest=this.depthTest,n.depthWrite=this.depthWrite,n.colorWrite=this.colorWrite,n.clipIntersection=this.clipIntersection,n.clipShadows=this.clipShadows,n.stencilWriteMask=this.stencilWriteMask,n.stencilFunc=this.stencilFunc,n.stencilRef=this.stencilRef,n.stencilFuncMask=this.stencilFuncMask,n.stencilFail=this.stencilFail,n.stencilZFail=this.stencilZFail,n.stencilZPass=this.stencilZPass,n.stencilWrite=this.stencilWrite,n.polygonOffset=this.polygonOffset,n.polygonOffsetFactor=this.polygonOffsetFactor,n.polygonOffsetUnits=this.polygonOffsetUnits,n.dithering=this.dithering,n.alphaTest=this.alphaTest,n.alphaHash=this.alphaHash,n.alphaToCoverage=this.alphaToCoverage,n.premultipliedAlpha=this.premultipliedAlpha,n.forceSinglePass=this.forceSinglePass,n.allowOverride=this.allowOverride,n.visible=this.visible,n.toneMapped=this.toneMapped,n.name=this.name,this.color&&this.color.isColor&&(n.color=this.color.getHex()),this.roughness!==void 0&&(n.roughness=this.roughness),this.metalness!==void 0&&(n.metalness=this.metalness),this.sheen!==void 0&&(n.sheen=this.sheen),this.sheenColor&&this.sheenColor.isColor&&(n.sheenColor=this.sheenColor.getHex()),this.sheenRoughness!==void 0&&(n.sheenRoughness=this.sheenRoughness),this.emissive&&this.emissive.isColor&&(n.emissive=this.emissive.getHex()),this.emissiveIntensity!==void 0&&(n.emissiveIntensity=this.emissiveIntensity),this.specular&&this.specular.isColor&&(n.specular=this.specular.getHex()),this.specularIntensity!==void 0&&(n.specularIntensity=this.specularIntensity),this.specularColor&&this.specularColor.isColor&&(n.specularColor=this.specularColor.getHex()),this.shininess!==void 0&&(n.shininess=this.shininess),this.clearcoat!==void 0&&(n.clearcoat=this.clearcoat),this.clearcoatRoughness!==void 0&&(n.clearcoatRoughness=this.clearcoatRoughness),this.diffuseRoughness!==void 0&&(n.diffuseRoughness=this.diffuseRoughness),this.diffuseRoughnessMap&&this.diffuseRoughnessMap.isTexture&&(n.diffuseRoughnessMap=this.diffuseRoughnessMap.toJSON(e).uuid),this.clearcoatMap&&this.clearcoatMap.isTexture&&(n.clearcoatMap=this.clearcoatMap.toJSON(e).uuid),this.clearcoatRoughnessMap&&this.clearcoatRoughnessMap.isTexture&&(n.clearcoatRoughnessMap=this.clearcoatRoughnessMap.toJSON(e).uuid),this.clearcoatNormalMap&&this.clearcoatNormalMap.isTexture&&(n.clearcoatNormalMap=this.clearcoatNormalMap.toJSON(e).uuid,n.clearcoatNormalScale=this.clearcoatNormalScale.toArray()),this.sheenColorMap&&this.sheenColorMap.isTexture&&(n.sheenColorMap=this.sheenColorMap.toJSON(e).uuid),this.sheenRoughnessMap&&this.sheenRoughnessMap.isTexture&&(n.sheenRoughnessMap=this.sheenRoughnessMap.toJSON(e).uuid),this.dispersion!==void 0&&(n.dispersion=this.dispersion),this.retroreflectivity!==void 0&&(n.retroreflectivity=this.retroreflectivity),this.iridescence!==void 0&&(n.iridescence=this.iridescence),this.iridescenceIOR!==void 0&&(n.iridescenceIOR=this.iridescenceIOR),this.iridescenceThicknessMinimum!==void 0&&(n.iridescenceThicknessMinimum=this.iridescenceThicknessMinimum),this.iridescenceThicknessMaximum!==void 0&&(n.iridescenceThicknessMaximum=this.iridescenceThicknessMaximum),this.iridescenceMap&&this.iridescenceMap.isTexture&&(n.iridescenceMap=this.iridescenceMap.toJSON(e).uuid),this.iridescenceThicknessMap&&this.iridescenceThicknessMap.isTexture&&(n.iridescenceThicknessMap=this.iridescenceThicknessMap.toJSON(e).uuid),this.anisotropy!==void 0&&(n.anisotropy=this.anisotropy),this.anisotropyRotation!==void 0&&(n.anisotropyRotation=this.anisotropyRotation),this.anisotropyMap&&this.anisotropyMap.isTexture&&(n.anisotropyMap=this.anisotropyMap.toJSON(e).uuid),this.map&&this.map.isTexture&&(n.map=this.map.toJSON(e).uuid),this.matcap&&this.matcap.isTexture&&(n.matcap=this.matcap.toJSON(e).uuid),this.alphaMap&&this.alphaMap.isTexture&&(n.alphaMap=this.alphaMap.toJSON(e).uuid),this.lightMap&&this.lightMap.isTexture&&(n.lightMap=this.lightMap.toJSON(e).uuid,n.lightMapIntensity=this.lightMapIntensity),this.aoMap&&this.aoMap.isTexture&&(n.aoMap=this.aoMap.toJSON(e).uuid,n.aoMapIntensity=this.aoMapIntensity),this.bumpMap&&this.bumpMap.isTexture&&(n.bumpMap=this.bumpMap.toJSON(e).uuid,n.bumpScale=this.bumpScale),this.normalMap&&this.normalMap.isTexture&&(n.normalMap=this.normalMap.toJSON(e).uuid,n.normalMapType=this.normalMapType,n.normalScale=this.normalScale.toArray()),this.displacementMap&&this.displacementMap.isTexture&&(n.displacementMap=this.displacementMap.toJSON(e).uuid,n.displacementScale=this.displacementScale,n.displacementBias=this.displacementBias),this.roughnessMap&&this.roughnessMap.isTexture&&(n.roughnessMap=this.roughnessMap.toJSON(e).uuid),this.metalnessMap&&this.metalnessMap.isTexture&&(n.metalnessMap=this.metalnessMap.toJSON(e).uuid),this.emissiveMap&&this.emissiveMap.isTexture&&(n.emissiveMap=this.emissiveMap.toJSON(e).uuid),this.specularMap&&this.specularMap.isTexture&&(n.specularMap=this.specularMap.toJSON(e).uuid),this.specularIntensityMap&&this.specularIntensityMap.isTexture&&(n.specularIntensityMap=this.specularIntensityMap.toJSON(e).uuid),this.specularColorMap&&this.specularColorMap.isTexture&&(n.specularColorMap=this.specularColorMap.toJSON(e).uuid),this.envMap&&this.envMap.isTexture&&(n.envMap=this.envMap.toJSON(e).uuid,this.combine!==void 0&&(n.combine=this.combine)),this.envMapRotation!==void 0&&(n.envMapRotation=this.envMapRotation.toArray()),this.envMapIntensity!==void 0&&(n.envMapIntensity=this.envMapIntensity),this.reflectivity!==void 0&&(n.reflectivity=this.reflectivity),this.refractionRatio!==void 0&&(n.refractionRatio=this.refractionRatio),this.gradientMap&&this.gradientMap.isTexture&&(n.gradientMap=this.gradientMap.toJSON(e).uuid),this.transmission!==void 0&&(n.transmission=this.transmission),this.transmissionMap&&this.transmissionMap.isTexture&&(n.transmissionMap=this.transmissionMap.toJSON(e).uuid),this.thickness!==void 0&&(n.thickness=this.thickness),this.thicknessMap&&this.thicknessMap.isTexture&&(n.thicknessMap=this.thicknessMap.toJSON(e).uuid),this.attenuationDistance!==void 0&&(n.attenuationDistance=this.attenuationDistance),this.attenuationColor!==void 0&&(n.attenuationColor=this.attenuationColor.getHex()),this.size!==void 0&&(n.size=this.size),this.sizeAttenuation!==void 0&&(n.sizeAttenuation=this.sizeAttenuation),Array.isArray(this.clippingPlanes)&&this.clippingPlanes.length>0&&(n.clippingPlanes=this.clippingPlanes.map(r=>r.toJSON())),this.rotation!==void 0&&(n.rotation=this.rotation),this.depthPacking!==void 0&&(n.depthPacking=this.depthPacking),this.linewidth!==void 0&&(n.linewidth=this.linewidth),this.linecap!==void 0&&(n.linecap=this.linecap),this.linejoin!==void 0&&(n.linejoin=this.linejoin),this.dashSize!==void 0&&(n.dashSize=this.dashSize),this.gapSize!==void 0&&(n.gapSize=this.gapSize),this.scale!==void 0&&(n.scale=this.scale),this.wireframe!==void 0&&(n.wireframe=this.wireframe),this.wireframeLinewidth!==void 0&&(n.wireframeLinewidth=this.wireframeLinewidth),this.wireframeLinecap!==void 0&&(n.wireframeLinecap=this.wireframeLinecap),this.wireframeLinejoin!==void 0&&(n.wireframeLinejoin=this.wireframeLinejoin),this.flatShading!==void 0&&(n.flatShading=this.flatShading),this.fog!==void 0&&(n.fog=this.fog),Object.keys(this.userData).length>0&&(n.userData=this.userData);function s(r){let a=[];for(let o in r){let l=r[o];delete l.metadata,a.push(l)}return a}if(t){let r=s(e.textures),a=s(e.images);r.length>0&&(n.textures=r),a.length>0&&(n.images=a)}return n}fromJSON(e,t){if(e.uuid!==void 0&&(this.uuid=e.uuid),e.name!==void 0&&(this.name=e.name),e.color!==void 0&&this.color!==void 0&&this.color.setHex(e.color),e.roughness!==void 0&&(this.roughness=e.roughness),e.metalness!==void 0&&(this.metalness=e.metalness),e.sheen!==void 0&&(this.sheen=e.sheen),e.sheenColor!==void 0&&(this.sheenColor=new je().setHex(e.sheenColor)),e.sheenRoughness!==void 0&&(this.sheenRoughness=e.sheenRoughness),e.emissive!==void 0&&this.emissive!==void 0&&this.emissive.setHex(e.emissive),e.specular!==void 0&&this.specular!==void 0&&this.specular.setHex(e.specular),e.specularIntensity!==void 0&&(this.specularIntensity=e.specularIntensity),e.specularColor!==void 0&&this.specularColor!==void 0&&this.specularColor.setHex(e.specularColor),e.shininess!==void 0&&(this.shininess=e.shininess),e.clearcoat!==void 0&&(this.clearcoat=e.clearcoat),e.clearcoatRoughness!==void 0&&(this.clearcoatRoughness=e.clearcoatRoughness),e.diffuseRoughness!==void 0&&(this.diffuseRoughness=e.diffuseRoughness),e.dispersion!==void 0&&(this.dispersion=e.dispersion),e.retroreflectivity!==void 0&&(this.retroreflectivity=e.retroreflectivity),e.iridescence!==void 0&&(this.iridescence=e.iridescence),e.iridescenceIOR!==void 0&&(this.iridescenceIOR=e.iridescenceIOR),e.iridescenceThicknessMinimum!==void 0&&(this.iridescenceThicknessMinimum=e.iridescenceThicknessMinimum),e.iridescenceThicknessMaximum!==void 0&&(this.iridescenceThicknessMaximum=e.iridescenceThicknessMaximum),e.iridescenceThicknessRange!==void 0&&(this.iridescenceThicknessMinimum=e.iridescenceThicknessRange[0],this.iridescenceThicknessMaximum=e.iridescenceThicknessRange[1]),e.transmission!==void 0&&(this.transmission=e.transmission),e.thickness!==void 0&&(this.thickness=e.thickness),e.attenuationDistance!==void 0&&(this.attenuationDistance=e.attenuationDistance),e.attenuationColor!==void 0&&this.attenuationColor!==void 0&&this.attenuationColor.setHex(e.attenuationColor),e.anisotropy!==void 0&&(this.anisotropy=e.anisotropy),e.anisotropyRotation!==void 0&&(this.anisotropyRotation=e.anisotropyRotation),e.fog!==void 0&&(this.fog=e.fog),e.flatShading!==void 0&&(this.flatShading=e.flatShading),e.blending!==void 0&&(this.blending=e.blending),e.combine!==void 0&&(this.combine=e.combine),e.side!==void 0&&(this.side=e.side),e.shadowSide!==void 0&&(this.shadowSide=e.shadowSide),e.opacity!==void 0&&(this.opacity=e.opacity),e.transparent!==void 0&&(this.transparent=e.transparent),e.alphaTest!==void 0&&(this.alphaTest=e.alphaTest),e.alphaHash!==void 0&&(this.alphaHash=e.alphaHash),e.depthFunc!==void 0&&(this.depthFunc=e.depthFunc),e.depthTest!==void 0&&(this.depthTest=e.depthTest),e.depthWrite!==void 0&&(this.depthWrite=e.depthWrite),e.colorWrite!==void 0&&(this.colorWrite=e.colorWrite),e.clippingPlanes!==void 0&&(this.clippingPlanes=e.clippingPlanes.map(n=>new Nn().fromJSON(n))),e.clipIntersection!==void 0&&(this.clipIntersection=e.clipIntersection),e.clipShadows!==void 0&&(this.clipShadows=e.clipShadows),e.depthPacking!==void 0&&(this.depthPacking=e.depthPacking),e.blendSrc!==void 0&&(this.blendSrc=e.blendSrc),e.blendDst!==void 0&&(this.blendDst=e.blendDst),e.blendEquation!==void 0&&(this.blendEquation=e.blendEquation),e.blendSrcAlpha!==void 0&&(this.blendSrcAlpha=e.blendSrcAlpha),e.blendDstAlpha!==void 0&&(this.blendDstAlpha=e.blendDstAlpha),e.blendEquationAlpha!==void 0&&(this.blendEquationAlpha=e.blendEquationAlpha),e.blendColor!==void 0&&this.blendColor!==void 0&&this.blendColor.setHex(e.blendColor),e.blendAlpha!==void 0&&(this.blendAlpha=e.blendAlpha),e.stencilWriteMask!==void 0&&(this.stencilWriteMask=e.stencilWriteMask),e.stencilFunc!==void 0&&(this.stencilFunc=e.stencilFunc),e.stencilRef!==void 0&&(this.stencilRef=e.stencilRef),e.stencilFuncMask!==void 0&&(this.stencilFuncMask=e.stencilFuncMask),e.stencilFail!==void 0&&(this.stencilFail=e.stencilFail),e.stencilZFail!==void 0&&(this.stencilZFail=e.stencilZFail),e.stencilZPass!==void 0&&(this.stencilZPass=e.stencilZPass),e.stencilWrite!==void 0&&(this.stencilWrite=e.stencilWrite),e.wireframe!==void 0&&(this.wireframe=e.wireframe),e.wireframeLinewidth!==void 0&&(this.wireframeLinewidth=e.wireframeLinewidth),e.wireframeLinecap!==void 0&&(this.wireframeLinecap=e.wireframeLinecap),e.wireframeLinejoin!==void 0&&(this.wireframeLinejoin=e.wireframeLinejoin),e.rotation!==void 0&&(this.rotation=e.rotation),e.linewidth!==void 0&&(this.linewidth=e.linewidth),e.linecap!==void 0&&(this.linecap=e.linecap),e.linejoin!==void 0&&(this.linejoin=e.linejoin),e.dashSize!==void 0&&(this.dashSize=e.dashSize),e.gapSize!==void 0&&(this.gapSize=e.gapSize),e.scale!==void 0&&(this.scale=e.scale),e.polygonOffset!==void 0&&(this.polygonOffset=e.polygonOffset),e.polygonOffsetFactor!==void 0&&(this.polygonOffsetFactor=e.polygonOffsetFactor),e.polygonOffsetUnits!==void 0&&(this.polygonOffsetUnits=e.polygonOffsetUnits),e.dithering!==void 0&&(this.dithering=e.dithering),e.alphaToCoverage!==void 0&&(this.alphaToCoverage=e.alphaToCoverage),e.premultipliedAlpha!==void 0&&(this.premultipliedAlpha=e.premultipliedAlpha),e.forceSinglePass!==void 0&&(this.forceSinglePass=e.forceSinglePass),e.allowOverride!==void 0&&(this.allowOverride=e.allowOverride),e.visible!==void 0&&(this.visible=e.visible),e.toneMapped!==void 0&&(this.toneMapped=e.toneMapped),e.userData!==void 0&&(this.userData=e.userData),e.vertexColors!==void 0&&(typeof e.vertexColors=="number"?this.vertexColors=e.vertexColors>0:this.vertexColors=e.vertexColors),e.size!==void 0&&(this.size=e.size),e.sizeAttenuation!==void 0&&(this.sizeAttenuation=e.sizeAttenuation),e.map!==void 0&&(this.map=t[e.map]||null),e.matcap!==void 0&&(this.matcap=t[e.matcap]||null),e.alphaMap!==void 0&&(this.alphaMap=t[e.alphaMap]||null),e.bumpMap!==void 0&&(this.bumpMap=t[e.bumpMap]||null),e.bumpScale!==void 0&&(this.bumpScale=e.bumpScale),e.normalMap!==void 0&&(this.normalMap=t[e.normalMap]||null),e.normalMapType!==void 0&&(this.normalMapType=e.normalMapType),e.normalScale!==void 0){let n=e.normalScale;Array.isArray(n)===!1&&(n=[n,n]),this.normalScale=new et().fromArray(n)}return e.displacementMap!==void 0&&(this.displacementMap=t[e.displacementMap]||null),e.displacementScale!==void 0&&(this.displacementScale=e.displacementScale),e.displacementBias!==void 0&&(this.displacementBias=e.displacementBias),e.roughnessMap!==void 0&&(this.roughnessMap=t[e.roughnessMap]||null),e.metalnessMap!==void 0&&(this.metalnessMap=t[e.metalnessMap]||null),e.emissiveMap!==void 0&&(this.emissiveMap=t[e.emissiveMap]||null),e.emissiveIntensity!==void 0&&(this.emissiveIntensity=e.emissiveIntensity),e.specularMap!==void 0&&(this.specularMap=t[e.specularMap]||null),e.specularIntensityMap!==void 0&&(this.specularIntensityMap=t[e.specularIntensityMap]||null),e.specularColorMap!==void 0&&(this.specularColorMap=t[e.specularColorMap]||null),e.envMap!==void 0&&(this.envMap=t[e.envMap]||null),e.envMapRotation!==void 0&&this.envMapRotation.fromArray(e.envMapRotation),e.envMapIntensity!==void 0&&(this.envMapIntensity=e.envMapIntensity),e.reflectivity!==void 0&&(this.reflectivity=e.reflectivity),e.refractionRatio!==void 0&&(this.refractionRatio=e.refractionRatio),e.lightMap!==void 0&&(this.lightMap=t[e.lightMap]||null),e.lightMapIntensity!==void 0&&(this.lightMapIntensity=e.lightMapIntensity),e.aoMap!==void 0&&(this.aoMap=t[e.aoMap]||null),e.aoMapIntensity!==void 0&&(this.aoMapIntensity=e.aoMapIntensity),e.gradientMap!==void 0&&(this.gradientMap=t[e.gradientMap]||null),e.clearcoatMap!==void 0&&(this.clearcoatMap=t[e.clearcoatMap]||null),e.clearcoatRoughnessMap!==void 0&&(this.clearcoatRoughnessMap=t[e.clearcoatRoughnessMap]||null),e.clearcoatNormalMap!==void 0&&(this.clearcoatNormalMap=t[e.clearcoatNormalMap]||null),e.clearcoatNormalScale!==void 0&&(this.clearcoatNormalScale=new et().fromArray(e.clearcoatNormalScale)),e.diffuseRoughnessMap!==void 0&&(this.diffuseRoughnessMap=t[e.diffuseRoughnessMap]||null),e.iridescenceMap!==void 0&&(this.iridescenceMap=t[e.iridescenceMap]||null),e.iridescenceThicknessMap!==void 0&&(this.iridescenceThicknessMap=t[e.iridescenceThicknessMap]||null),e.transmissionMap!==void 0&&(this.transmissionMap=t[e.transmissionMap]||null),e.thicknessMap!==void 0&&(this.thicknessMap=t[e.thicknessMap]||null),e.anisotropyMap!==void 0&&(this.anisotropyMap=t[e.anisotropyMap]||null),e.sheenColorMap!==void 0&&(this.sheenColorMap=t[e.sheenColorMap]||null),e.sheenRoughnessMap!==void 0&&(this.sheenRoughnessMap=t[e.sheenRoughnessMap]||null),this}clone(){return new this.constructor().copy(this)}copy(e){this.name=e.name,this.blending=e.blending,this.side=e.side,this.vertexColors=e.vertexColors,this.opacity=e.opacity,this.transparent=e.transparent,this.blendSrc=e.blendSrc,this.blendDst=e.blendDst,this.blendEquation=e.blendEquation,this.blendSrcAlpha=e.blendSrcAlpha,this.blendDstAlpha=e.blendDstAlpha,this.blendEquationAlpha=e.blendEquationAlpha,this.blendColor.copy(e.blendColor),this.blendAlpha=e.blendAlpha,this.depthFunc=e.depthFunc,this.depthTest=e.depthTest,this.depthWrite=e.depthWrite,this.stencilWriteMask=e.stencilWriteMask,this.stencilFunc=e.stencilFunc,this.stencilRef=e.stencilRef,this.stencilFuncMask=e.stencilFuncMask,this.stencilFail=e.stencilFail,this.stencilZFail=e.stencilZFail,this.stencilZPass=e.stencilZPass,this.stencilWrite=e.stencilWrite;let t=e.clippingPlanes,n=null;if(t!==null){let s=t.length;n=new Array(s);for(let r=0;r!==s;++r)n[r]=t[r].clone()}return this.clippingPlanes=n,this.clipIntersection=e.clipIntersection,this.clipShadows=e.clipShadows,this.shadowSide=e.shadowSide,this.colorWrite=e.colorWrite,this.precision=e.precision,this.polygonOffset=e.polygonOffset,this.polygonOffsetFactor=e.polygonOffsetFactor,this.polygonOffsetUnits=e.polygonOffsetUnits,this.dithering=e.dithering,this.alphaTest=e.alphaTest,this.alphaHash=e.alphaHash,this.alphaToCoverage=e.alphaToCoverage,this.premultipliedAlpha=e.premultipliedAlpha,this.forceSinglePass=e.forceSinglePass,this.allowOverride=e.allowOverride,this.visible=e.visible,this.toneMapped=e.toneMapped,this.userData=JSON.parse(JSON.stringify(e.userData)),this}dispose(){this.dispatchEvent({type:"dispose"})}set needsUpdate(e){e===!0&&this.version++}};var ci=new W,ac=new W,xa=new W,ya=new W,Os=class{constructor(e=new W,t=new W(0,0,-1)){this.origin=e,this.direction=t}set(e,t){return this.origin.copy(e),this.direction.copy(t),this}copy(e){return this.origin.copy(e.origin),this.direction.copy(e.direction),this}at(e,t){return t.copy(this.origin).addScaledVector(this.direction,e)}lookAt(e){return this.direction.copy(e).sub(this.origin).normalize(),this}recast(e){return this.origin.copy(this.at(e,ci)),this}closestPointToPoint(e,t){t.subVectors(e,this.origin);let n=t.dot(this.direction);return n<0?t.copy(this.origin):t.copy(this.origin).addScaledVector(this.direction,n)}distanceToPoint(e){return Math.sqrt(this.distanceSqToPoint(e))}distanceSqToPoint(e){let t=ci.subVectors(e,this.origin).dot(this.direction);return t<0?this.origin.distanceToSquared(e):(ci.copy(this.origin).addScaledVector(this.direction,t),ci.distanceToSquared(e))}distanceSqToSegment(e,t,n,s){ac.copy(e).add(t).multiplyScalar(.5),xa.copy(t).sub(e).normalize(),ya.copy(this.origin).sub(ac);let r=e.distanceTo(t)*.5,a=-this.direction.dot(xa),o=ya.dot(this.direction),l=-ya.dot(xa),c=ya.lengthSq(),h=Math.abs(1-a*a),u,d,p,_;if(h>0)if(u=a*l-o,d=a*o-l,_=r*h,u>=0)if(d>=-_)if(d<=_){let v=1/h;u*=v,d*=v,p=u*(u+a*d+2*o)+d*(a*u+d+2*l)+c}else d=r,u=Math.max(0,-(a*d+o)),p=-u*u+d*(d+2*l)+c;else d=-r,u=Math.max(0,-(a*d+o)),p=-u*u+d*(d+2*l)+c;else d<=-_?(u=Math.max(0,-(-a*r+o)),d=u>0?-r:Math.min(Math.max(-r,-l),r),p=-u*u+d*(d+2*l)+c):d<=_?(u=0,d=Math.min(Math.max(-r,-l),r),p=d*(d+2*l)+c):(u=Math.max(0,-(a*r+o)),d=u>0?r:Math.min(Math.max(-r,-l),r),p=-u*u+d*(d+2*l)+c);else d=a>0?-r:r,u=Math.max(0,-(a*d+o)),p=-u*u+d*(d+2*l)+c;return n&&n.copy(this.origin).addScaledVector(this.direction,u),s&&s.copy(ac).addScaledVector(xa,d),p}intersectSphere(e,t){if(e.radius<0)return null;ci.subVectors(e.center,this.origin);let n=ci.dot(this.direction),s=ci.dot(ci)-n*n,r=e.radius*e.radius;if(s>r)return null;let a=Math.sqrt(r-s),o=n-a,l=n+a;return l<0?null:o<0?this.at(l,t):this.at(o,t)}intersectsSphere(e){return e.radius<0?!1:this.distanceSqToPoint(e.center)<=e.radius*e.radius}distanceToPlane(e){let t=e.normal.dot(this.direction);if(t===0)return e.distanceToPoint(this.origin)===0?0:null;let n=-(this.origin.dot(e.normal)+e.constant)/t;return n>=0?n:null}intersectPlane(e,t){let n=this.distanceToPlane(e);return n===null?null:this.at(n,t)}intersectsPlane(e){let t=e.distanceToPoint(this.origin);return t===0||e.normal.dot(this.direction)*t<0}intersectBox(e,t){let n,s,r,a,o,l,c=1/this.direction.x,h=1/this.direction.y,u=1/this.direction.z,d=this.origin;return c>=0?(n=(e.min.x-d.x)*c,s=(e.max.x-d.x)*c):(n=(e.max.x-d.x)*c,s=(e.min.x-d.x)*c),h>=0?(r=(e.min.y-d.y)*h,a=(e.max.y-d.y)*h):(r=(e.max.y-d.y)*h,a=(e.min.y-d.y)*h),n>a||r>s||((r>n||isNaN(n))&&(n=r),(a<s||isNaN(s))&&(s=a),u>=0?(o=(e.min.z-d.z)*u,l=(e.max.z-d.z)*u):(o=(e.max.z-d.z)*u,l=(e.min.z-d.z)*u),n>l||o>s)||((o>n||n!==n)&&(n=o),(l<s||s!==s)&&(s=l),s<0)?null:this.at(n>=0?n:s,t)}intersectsBox(e){return this.intersectBox(e,ci)!==null}intersectTriangle(e,t,n,s,r){let a=this.origin,o=this.direction,l=o.x,c=o.y,h=o.z,u=e.x-a.x,d=e.y-a.y,p=e.z-a.z,_=t.x-a.x,v=t.y-a.y,m=t.z-a.z,g=n.x-a.x,M=n.y-a.y,C=n.z-a.z,w=Math.abs(l),E=Math.abs(c),T=Math.abs(h),x,A,X,k,z,U,J,S,D,F,G,H;if(w>=E&&w>=T?(X=l,U=u,D=_,H=g,l>=0?(x=c,A=h,k=d,z=p,J=v,S=m,F=M,G=C):(x=h,A=c,k=p,z=d,J=m,S=v,F=C,G=M)):E>=T?(X=c,U=d,D=v,H=M,c>=0?(x=h,A=l,k=p,z=u,J=m,S=_,F=C,G=g):(x=l,A=h,k=u,z=p,J=_,S=m,F=g,G=C)):(X=h,U=p,D=m,H=C,h>=0?(x=l,A=c,k=u,z=d,J=_,S=v,F=g,G=M):(x=c,A=l,k=d,z=u,J=v,S=_,F=M,G=g)),X===0)return null;let $=x/X,I=A/X,K=1/X,oe=k-$*U,pe=z-I*U,Q=J-$*D,he=S-I*D,Te=F-$*H,ke=G-I*H,we=Te*he-ke*Q,$e=oe*ke-pe*Te,St=Q*pe-he*oe;if(s){if(we<0||$e<0||St<0)return null}else if((we<0||$e<0||St<0)&&(we>0||$e>0||St>0))return null;let Be=we+$e+St;if(Be===0)return null;let st=K*(we*U+$e*D+St*H);return(Be>0?st<0:st>0)?null:this.at(st/Be,r)}applyMatrix4(e){return this.origin.applyMatrix4(e),this.direction.transformDirection(e),this}equals(e){return e.origin.equals(this.origin)&&e.direction.equals(this.direction)}clone(){return new this.constructor().copy(this)}},Ui=class extends ki{constructor(e){super(),this.isMeshBasicMaterial=!0,this.type="MeshBasicMaterial",this.color=new je(16777215),this.map=null,this.lightMap=null,this.lightMapIntensity=1,this.aoMap=null,this.aoMapIntensity=1,this.specularMap=null,this.alphaMap=null,this.envMap=null,this.envMapRotation=new Ni,this.combine=Mc,this.reflectivity=1,this.refractionRatio=.98,this.wireframe=!1,this.wireframeLinewidth=1,this.wireframeLinecap="round",this.wireframeLinejoin="round",this.fog=!0,this.setValues(e)}copy(e){return super.copy(e),this.color.copy(e.color),this.map=e.map,this.lightMap=e.lightMap,this.lightMapIntensity=e.lightMapIntensity,this.aoMap=e.aoMap,this.aoMapIntensity=e.aoMapIntensity,this.specularMap=e.specularMap,this.alphaMap=e.alphaMap,this.envMap=e.envMap,this.envMapRotation.copy(e.envMapRotation),this.combine=e.combine,this.reflectivity=e.reflectivity,this.refractionRatio=e.refractionRatio,this.wireframe=e.wireframe,this.wireframeLinewidth=e.wireframeLinewidth,this.wireframeLinecap=e.wireframeLinecap,this.wireframeLinejoin=e.wireframeLinejoin,this.fog=e.fog,this}},yu=new at,ts=new Os,ba=new ss,bu=new W,Ma=new W,wa=new W,Sa=new W,oc=new W,Ta=new W,Mu=new W,Ea=new W,vt=class extends fn{constructor(e=new Dn,t=new Ui){super(),this.isMesh=!0,this.type="Mesh",this.geometry=e,this.material=t,this.morphTargetDictionary=void 0,this.morphTargetInfluences=void 0,this.count=1,this.updateMorphTargets()}copy(e,t){return super.copy(e,t),e.morphTargetInfluences!==void 0?this.morphTargetInfluences=e.morphTargetInfluences.slice():this.morphTargetInfluences=void 0,e.morphTargetDictionary!==void 0?this.morphTargetDictionary=Object.assign({},e.morphTargetDictionary):this.morphTargetDictionary=void 0,this.material=Array.isArray(e.material)?e.material.slice():e.material,this.geometry=e.geometry,this}updateMorphTargets(){let t=this.geometry.morphAttributes,n=Object.keys(t);if(n.length>0){let s=t[n[0]];if(s!==void 0){this.morphTargetInfluences=[],this.morphTargetDictionary={};for(let r=0,a=s.length;r<a;r++){let o=s[r].name||String(r);this.morphTargetInfluences.push(0),this.morphTargetDictionary[o]=r}}}}getVertexPosition(e,t){let n=this.geometry,s=n.attributes.position,r=n.morphAttributes.position,a=n.morphTargetsRelative;t.fromBufferAttribute(s,e);let o=this.morphTargetInfluences;if(r&&o){Ta.set(0,0,0);for(let l=0,c=r.length;l<c;l++){let h=o[l],u=r[l];h!==0&&(oc.fromBufferAttribute(u,e),a?Ta.addScaledVector(oc,h):Ta.addScaledVector(oc.sub(t),h))}t.add(Ta)}return t}intersectsFrustum(e){return e.intersectsObject(this)}raycast(e,t){let n=this.geometry,s=this.material,r=this.matrixWorld;s!==void 0&&(n.boundingSphere===null&&n.computeBoundingSphere(),ba.copy(n.boundingSphere),ba.applyMatrix4(r),ts.copy(e.ray).recast(e.near),!(ba.containsPoint(ts.origin)===!1&&(ts.intersectSphere(ba,bu)===null||ts.origin.distanceToSquared(bu)>(e.far-e.near)**2))&&(yu.copy(r).invert(),ts.copy(e.ray).applyMatrix4(yu),!(n.boundingBox!==null&&ts.intersectsBox(n.boundingBox)===!1)&&this._computeIntersections(e,t,ts)))}_computeIntersections(e,t,n){let s,r=this.geometry,a=this.material,o=r.index,l=r.attributes.position,c=r.attributes.uv,h=r.attributes.uv1,u=r.attributes.normal,d=r.groups,p=r.drawRange;if(o!==null)if(Array.isArray(a))for(let _=0,v=d.length;_<v;_++){let m=d[_],g=a[m.materialIndex],M=Math.max(m.start,p.start),C=Math.min(o.count,Math.min(m.start+m.count,p.start+p.count));for(let w=M,E=C;w<E;w+=3){let T=o.getX(w),x=o.getX(w+1),A=o.getX(w+2);s=Aa(this,g,e,n,c,h,u,T,x,A),s&&(s.faceIndex=Math.floor(w/3),s.face.materialIndex=m.materialIndex,t.push(s))}}else{let _=Math.max(0,p.start),v=Math.min(o.count,p.start+p.count);for(let m=_,g=v;m<g;m+=3){let M=o.getX(m),C=o.getX(m+1),w=o.getX(m+2);s=Aa(this,a,e,n,c,h,u,M,C,w),s&&(s.faceIndex=Math.floor(m/3),t.push(s))}}else if(l!==void 0)if(Array.isArray(a))for(let _=0,v=d.length;_<v;_++){let m=d[_],g=a[m.materialIndex],M=Math.max(m.start,p.start),C=Math.min(l.count,Math.min(m.start+m.count,p.start+p.count));for(let w=M,E=C;w<E;w+=3){let T=w,x=w+1,A=w+2;s=Aa(this,g,e,n,c,h,u,T,x,A),s&&(s.faceIndex=Math.floor(w/3),s.face.materialIndex=m.materialIndex,t.push(s))}}else{let _=Math.max(0,p.start),v=Math.min(l.count,p.start+p.count);for(let m=_,g=v;m<g;m+=3){let M=m,C=m+1,w=m+2;s=Aa(this,a,e,n,c,h,u,M,C,w),s&&(s.faceIndex=Math.floor(m/3),t.push(s))}}}};function cm(i,e,t,n,s,r,a,o){let l;if(e.side===Kt?l=n.intersectTriangle(a,r,s,!0,o):l=n.intersectTriangle(s,r,a,e.side===Gi,o),l===null)return null;Ea.copy(o),Ea.applyMatrix4(i.matrixWorld);let c=t.ray.origin.distanceTo(Ea);return c<t.near||c>t.far?null:{distance:c,point:Ea.clone(),object:i}}function Aa(i,e,t,n,s,r,a,o,l,c){i.getVertexPosition(o,Ma),i.getVertexPosition(l,wa),i.getVertexPosition(c,Sa);let h=cm(i,e,t,n,Ma,wa,Sa,Mu);if(h){let u=new W;Li.getBarycoord(Mu,Ma,wa,Sa,u),s&&(h.uv=Li.getInterpolatedAttribute(s,o,l,c,u,new et)),r&&(h.uv1=Li.getInterpolatedAttribute(r,o,l,c,u,new et)),a&&(h.normal=Li.getInterpolatedAttribute(a,o,l,c,u,new W),h.normal.dot(n.direction)>0&&h.normal.multiplyScalar(-1));let d={a:o,b:l,c,normal:new W,materialIndex:0};Li.getNormal(Ma,wa,Sa,d.normal),h.face=d,h.barycoord=u}return h}var Ja=class extends nn{constructor(e=null,t=1,n=1,s,r,a,o,l,c=kt,h=kt,u,d){super(null,a,o,l,c,h,s,r,u,d),this.isDataTexture=!0,this.image={data:e,width:t,height:n},this.generateMipmaps=!1,this.flipY=!1,this.unpackAlignment=1}};var ns=new ss,hm=new et(.5,.5),Ca=new W,rs=class{constructor(e=new Nn,t=new Nn,n=new Nn,s=new Nn,r=new Nn,a=new Nn){this.planes=[e,t,n,s,r,a]}set(e,t,n,s,r,a){let o=this.planes;return o[0].copy(e),o[1].copy(t),o[2].copy(n),o[3].copy(s),o[4].copy(r),o[5].copy(a),this}copy(e){let t=this.planes;for(let n=0;n<6;n++)t[n].copy(e.planes[n]);return this}setFromProjectionMatrix(e,t=Mn,n=!1){let s=this.planes,r=e.elements,a=r[0],o=r[1],l=r[2],c=r[3],h=r[4],u=r[5],d=r[6],p=r[7],_=r[8],v=r[9],m=r[10],g=r[11],M=r[12],C=r[13],w=r[14],E=r[15];if(s[0].setComponents(c-a,p-h,g-_,E-M).normalize(),s[1].setComponents(c+a,p+h,g+_,E+M).normalize(),s[2].setComponents(c+o,p+u,g+v,E+C).normalize(),s[3].setComponents(c-o,p-u,g-v,E-C).normalize(),n)s[4].setComponents(l,d,m,w).normalize(),s[5].setComponents(c-l,p-d,g-m,E-w).normalize();else if(s[4].setComponents(c-l,p-d,g-m,E-w).normalize(),t===Mn)s[5].setComponents(c+l,p+d,g+m,E+w).normalize();else if(t===vr)s[5].setComponents(l,d,m,w).normalize();else throw new Error("THREE.Frustum.setFromProjectionMatrix(): Invalid coordinate system: "+t);return this}intersectsObject(e){if(e.boundingSphere!==void 0)e.boundingSphere===null&&e.computeBoundingSphere(),ns.copy(e.boundingSphere).applyMatrix4(e.matrixWorld);else{let t=e.geometry;t.boundingSphere===null&&t.computeBoundingSphere(),ns.copy(t.boundingSphere).applyMatrix4(e.matrixWorld)}return this.intersectsSphere(ns)}intersectsSprite(e){ns.center.set(0,0,0);let t=hm.distanceTo(e.center);return ns.radius=.7071067811865476+t,ns.applyMatrix4(e.matrixWorld),this.intersectsSphere(ns)}intersectsSphere(e){let t=this.planes,n=e.center,s=-e.radius;for(let r=0;r<6;r++)if(t[r].distanceToPoint(n)<s)return!1;return!0}intersectsBox(e){let t=this.planes;for(let n=0;n<6;n++){let s=t[n];if(Ca.x=s.normal.x>0?e.max.x:e.min.x,Ca.y=s.normal.y>0?e.max.y:e.min.y,Ca.z=s.normal.z>0?e.max.z:e.min.z,s.distanceToPoint(Ca)<0)return!1}return!0}containsPoint(e){let t=this.planes;for(let n=0;n<6;n++)if(t[n].distanceToPoint(e)<0)return!1;return!0}clone(){return new this.constructor().copy(this)}},wu=new at,Ka=class i{constructor(){this.coordinateSystem=Mn,this._frustums=[],this._count=0}setFromArrayCamera(e){let t=e.cameras,n=this._frustums;for(let s=0;s<t.length;s++){let r=t[s];wu.multiplyMatrices(r.projectionMatrix,r.matrixWorldInverse),n[s]===void 0&&(n[s]=new rs),n[s].setFromProjectionMatrix(wu,r.coordinateSystem,r.reversedDepth)}return this._count=t.length,this}getFrustum(e){return this._frustums[e]}intersectsObject(e){let t=this._frustums;for(let n=0;n<this._count;n++)if(t[n].intersectsObject(e))return!0;return!1}intersectsSprite(e){let t=this._frustums;for(let n=0;n<this._count;n++)if(t[n].intersectsSprite(e))return!0;return!1}intersectsSphere(e){let t=this._frustums;for(let n=0;n<this._count;n++)if(t[n].intersectsSphere(e))return!0;return!1}intersectsBox(e){let t=this._frustums;for(let n=0;n<this._count;n++)if(t[n].intersectsBox(e))return!0;return!1}containsPoint(e){let t=this._frustums;for(let n=0;n<this._count;n++)if(t[n].containsPoint(e))return!0;return!1}copy(e){this.coordinateSystem=e.coordinateSystem;let t=this._frustums,n=e._frustums;for(let s=0;s<e._count;s++)t[s]===void 0&&(t[s]=new rs),t[s].copy(n[s]);return this._count=e._count,this}clone(){return new i().copy(this)}};var as=class extends ki{constructor(e){super(),this.isLineBasicMaterial=!0,this.type="LineBasicMaterial",this.color=new je(16777215),this.map=null,this.linewidth=1,this.linecap="round",this.linejoin="round",this.fog=!0,this.setValues(e)}copy(e){return super.copy(e),this.color.copy(e.color),this.map=e.map,this.linewidth=e.linewidth,this.linecap=e.linecap,this.linejoin=e.linejoin,this.fog=e.fog,this}},ja=new W,Qa=new W,Su=new at,fr=new Os,Ra=new ss,lc=new W,Tu=new W,eo=class extends fn{constructor(e=new Dn,t=new as){super(),this.isLine=!0,this.type="Line",this.geometry=e,this.material=t,this.morphTargetDictionary=void 0,this.morphTargetInfluences=void 0,this.updateMorphTargets()}copy(e,t){return super.copy(e,t),e.morphTargetInfluences!==void 0?this.morphTargetInfluences=e.morphTargetInfluences.slice():this.morphTargetInfluences=void 0,e.morphTargetDictionary!==void 0?this.morphTargetDictionary=Object.assign({},e.morphTargetDictionary):this.morphTargetDictionary=void 0,this.material=Array.isArray(e.material)?e.material.slice():e.material,this.geometry=e.geometry,this}computeLineDistances(){let e=this.geometry;if(e.index===null){let t=e.attributes.position,n=[0];for(let s=1,r=t.count;s<r;s++)ja.fromBufferAttribute(t,s-1),Qa.fromBufferAttribute(t,s),n[s]=n[s-1],n[s]+=ja.distanceTo(Qa);e.setAttribute("lineDistance",new tn(n,1))}else Oe("Line.computeLineDistances(): Computation only possible with non-indexed BufferGeometry.");return this}intersectsFrustum(e){return e.intersectsObject(this)}raycast(e,t){let n=this.geometry,s=this.matrixWorld,r=e.params.Line.threshold,a=n.drawRange;if(n.boundingSphere===null&&n.computeBoundingSphere(),Ra.copy(n.boundingSphere),Ra.applyMatrix4(s),Ra.radius+=r,e.ray.intersectsSphere(Ra)===!1)return;Su.copy(s).invert(),fr.copy(e.ray).applyMatrix4(Su);let o=r/((this.scale.x+this.scale.y+this.scale.z)/3),l=o*o,c=this.isLineSegments?2:1,h=n.index,d=n.attributes.position;if(h!==null){let p=Math.max(0,a.start),_=Math.min(h.count,a.start+a.count);for(let v=p,m=_-1;v<m;v+=c){let g=h.getX(v),M=h.getX(v+1),C=Pa(this,e,fr,l,g,M,v);C&&t.push(C)}if(this.isLineLoop){let v=h.getX(_-1),m=h.getX(p),g=Pa(this,e,fr,l,v,m,_-1);g&&t.push(g)}}else{let p=Math.max(0,a.start),_=Math.min(d.count,a.start+a.count);for(let v=p,m=_-1;v<m;v+=c){let g=Pa(this,e,fr,l,v,v+1,v);g&&t.push(g)}if(this.isLineLoop){let v=Pa(this,e,fr,l,_-1,p,_-1);v&&t.push(v)}}}updateMorphTargets(){let t=this.geometry.morphAttributes,n=Object.keys(t);if(n.length>0){let s=t[n[0]];if(s!==void 0){this.morphTargetInfluences=[],this.morphTargetDictionary={};for(let r=0,a=s.length;r<a;r++){let o=s[r].name||String(r);this.morphTargetInfluences.push(0),this.morphTargetDictionary[o]=r}}}}};function Pa(i,e,t,n,s,r,a){let o=i.geometry.attributes.position;if(ja.fromBufferAttribute(o,s),Qa.fromBufferAttribute(o,r),t.distanceSqToSegment(ja,Qa,lc,Tu)>n)return;lc.applyMatrix4(i.matrixWorld);let c=e.ray.origin.distanceTo(lc);if(!(c<e.near||c>e.far))return{distance:c,point:Tu.clone().applyMatrix4(i.matrixWorld),index:a,face:null,faceIndex:null,barycoord:null,object:i}}var Eu=new W,Au=new W,Bs=class extends eo{constructor(e,t){super(e,t),this.isLineSegments=!0,this.type="LineSegments"}computeLineDistances(){let e=this.geometry;if(e.index===null){let t=e.attributes.position,n=[];for(let s=0,r=t.count;s<r;s+=2)Eu.fromBufferAttribute(t,s),Au.fromBufferAttribute(t,s+1),n[s]=s===0?0:n[s-1],n[s+1]=n[s]+Eu.distanceTo(Au);e.setAttribute("lineDistance",new tn(n,1))}else Oe("LineSegments.computeLineDistances(): Computation only possible with non-indexed BufferGeometry.");return this}};var wr=class extends nn{constructor(e=[],t=cs,n,s,r,a,o,l,c,h){super(e,t,n,s,r,a,o,l,c,h),this.isCubeTexture=!0,this.flipY=!1}get images(){return this.image}set images(e){this.image=e}};var di=class extends nn{constructor(e,t,n=kn,s,r,a,o=kt,l=kt,c,h=ui,u=1){if(h!==ui&&h!==pi)throw new Error("THREE.DepthTexture: format must be either THREE.DepthFormat or THREE.DepthStencilFormat");let d={width:e,height:t,depth:u};super(d,s,r,a,o,l,h,n,c),this.isDepthTexture=!0,this.flipY=!1,this.generateMipmaps=!1,this.compareFunction=null}copy(e){return super.copy(e),this.source=new ks(Object.assign({},e.image)),this.compareFunction=e.compareFunction,this}toJSON(e){let t=super.toJSON(e);return t.compareFunction=this.compareFunction,t}},Sr=class extends di{constructor(e,t=kn,n=cs,s,r,a=kt,o=kt,l,c=ui){let h={width:e,height:e,depth:1},u=[h,h,h,h,h,h];super(e,e,t,n,s,r,a,o,l,c),this.image=u,this.isCubeDepthTexture=!0,this.isCubeTexture=!0}get images(){return this.image}set images(e){this.image=e}},Tr=class extends nn{constructor(e=null){super(),this.sourceTexture=e,this.isExternalTexture=!0}copy(e){return super.copy(e),this.sourceTexture=e.sourceTexture,this}},zs=class i extends Dn{constructor(e=1,t=1,n=1,s=1,r=1,a=1){super(),this.type="BoxGeometry",this.parameters={width:e,height:t,depth:n,widthSegments:s,heightSegments:r,depthSegments:a};let o=this;s=Math.floor(s),r=Math.floor(r),a=Math.floor(a);let l=[],c=[],h=[],u=[],d=0,p=0;_("z","y","x",-1,-1,n,t,e,a,r,0),_("z","y","x",1,-1,n,t,-e,a,r,1),_("x","z","y",1,1,e,n,t,s,a,2),_("x","z","y",1,-1,e,n,-t,s,a,3),_("x","y","z",1,-1,e,t,n,s,r,4),_("x","y","z",-1,-1,e,t,-n,s,r,5),this.setIndex(l),this.setAttribute("position",new tn(c,3)),this.setAttribute("normal",new tn(h,3)),this.setAttribute("uv",new tn(u,2));function _(v,m,g,M,C,w,E,T,x,A,X){let k=w/x,z=E/A,U=w/2,J=E/2,S=T/2,D=x+1,F=A+1,G=0,H=0,$=new W;for(let I=0;I<F;I++){let K=I*z-J;for(let oe=0;oe<D;oe++){let pe=oe*k-U;$[v]=pe*M,$[m]=K*C,$[g]=S,c.push($.x,$.y,$.z),$[v]=0,$[m]=0,$[g]=T>0?1:-1,h.push($.x,$.y,$.z),u.push(oe/x),u.push(1-I/A),G+=1}}for(let I=0;I<A;I++)for(let K=0;K<x;K++){let oe=d+K+D*I,pe=d+K+D*(I+1),Q=d+(K+1)+D*(I+1),he=d+(K+1)+D*I;l.push(oe,pe,he),l.push(pe,Q,he),H+=6}o.addGroup(p,H,X),p+=H,d+=G}}copy(e){return super.copy(e),this.parameters=Object.assign({},e.parameters),this}static fromJSON(e){return new i(e.width,e.height,e.depth,e.widthSegments,e.heightSegments,e.depthSegments)}};var Er=class i extends Dn{constructor(e=1,t=1,n=1,s=1){super(),this.type="PlaneGeometry",this.parameters={width:e,height:t,widthSegments:n,heightSegments:s};let r=e/2,a=t/2,o=Math.floor(n),l=Math.floor(s),c=o+1,h=l+1,u=e/o,d=t/l,p=[],_=[],v=[],m=[];for(let g=0;g<h;g++){let M=g*d-a;for(let C=0;C<c;C++){let w=C*u-r;_.push(w,-M,0),v.push(0,0,1),m.push(C/o),m.push(1-g/l)}}for(let g=0;g<l;g++)for(let M=0;M<o;M++){let C=M+c*g,w=M+c*(g+1),E=M+1+c*(g+1),T=M+1+c*g;p.push(C,w,T),p.push(w,E,T)}this.setIndex(p),this.setAttribute("position",new tn(_,3)),this.setAttribute("normal",new tn(v,3)),this.setAttribute("uv",new tn(m,2))}copy(e){return super.copy(e),this.parameters=Object.assign({},e.parameters),this}static fromJSON(e){return new i(e.width,e.height,e.widthSegments,e.heightSegments)}};function us(i){let e={};for(let t in i){e[t]={};for(let n in i[t]){let s=i[t][n];if(Cu(s))s.isRenderTargetTexture?(Oe("UniformsUtils: Textures of render targets cannot be cloned via cloneUniforms() or mergeUniforms()."),e[t][n]=null):e[t][n]=s.clone();else if(Array.isArray(s))if(Cu(s[0])){let r=[];for(let a=0,o=s.length;a<o;a++)r[a]=s[a].clone();e[t][n]=r}else e[t][n]=s.slice();else e[t][n]=s}}return e}function $t(i){let e={};for(let t=0;t<i.length;t++){let n=us(i[t]);for(let s in n)e[s]=n[s]}return e}function Cu(i){return i&&(i.isColor||i.isMatrix3||i.isMatrix4||i.isVector2||i.isVector3||i.isVector4||i.isTexture||i.isQuaternion)}function um(i){let e=[];for(let t=0;t<i.length;t++)e.push(i[t].clone());return e}function Wc(i){let e=i.getRenderTarget();return e===null?i.outputColorSpace:e.isXRRenderTarget===!0?e.texture.colorSpace:Ke.workingColorSpace}var yd={clone:us,merge:$t},dm=`void main() {
	gl_Position = projectionMatrix * modelViewMatrix * vec4( position, 1.0 );
}`,fm=`void main() {
	gl_FragColor = vec4( 1.0, 0.0, 0.0, 1.0 );
}`,Xn=class extends ki{constructor(e){super(),this.isShaderMaterial=!0,this.type="ShaderMaterial",this.defines={},this.uniforms={},this.uniformsGroups=[],this.vertexShader=dm,this.fragmentShader=fm,this.linewidth=1,this.wireframe=!1,this.wireframeLinewidth=1,this.fog=!1,this.lights=!1,this.clipping=!1,this.forceSinglePass=!0,this.extensions={clipCullDistance:!1,multiDraw:!1},this.defaultAttributeValues={color:[1,1,1],uv:[0,0],uv1:[0,0]},this.index0AttributeName=void 0,this.uniformsNeedUpdate=!1,this.glslVersion=null,e!==void 0&&this.setValues(e)}copy(e){return super.copy(e),this.fragmentShader=e.fragmentShader,this.vertexShader=e.vertexShader,this.uniforms=us(e.uniforms),this.uniformsGroups=um(e.uniformsGroups),this.defines=Object.assign({},e.defines),this.wireframe=e.wireframe,this.wireframeLinewidth=e.wireframeLinewidth,this.fog=e.fog,this.lights=e.lights,this.clipping=e.clipping,this.extensions=Object.assign({},e.extensions),this.glslVersion=e.glslVersion,this.defaultAttributeValues=Object.assign({},e.defaultAttributeValues),this.index0AttributeName=e.index0AttributeName,this.uniformsNeedUpdate=e.uniformsNeedUpdate,this}toJSON(e){let t=super.toJSON(e);t.glslVersion=this.glslVersion,t.uniforms={};for(let s in this.uniforms){let a=this.uniforms[s].value;a&&a.isTexture?t.uniforms[s]={type:"t",value:a.toJSON(e).uuid}:a&&a.isColor?t.uniforms[s]={type:"c",value:a.getHex()}:a&&a.isVector2?t.uniforms[s]={type:"v2",value:a.toArray()}:a&&a.isVector3?t.uniforms[s]={type:"v3",value:a.toArray()}:a&&a.isVector4?t.uniforms[s]={type:"v4",value:a.toArray()}:a&&a.isMatrix3?t.uniforms[s]={type:"m3",value:a.toArray()}:a&&a.isMatrix4?t.uniforms[s]={type:"m4",value:a.toArray()}:t.uniforms[s]={value:a}}Object.keys(this.defines).length>0&&(t.defines=this.defines),t.vertexShader=this.vertexShader,t.fragmentShader=this.fragmentShader,t.lights=this.lights,t.clipping=this.clipping;let n={};for(let s in this.extensions)this.extensions[s]===!0&&(n[s]=!0);return Object.keys(n).length>0&&(t.extensions=n),t}fromJSON(e,t){if(super.fromJSON(e,t),e.uniforms!==void 0)for(let n in e.uniforms){let s=e.uniforms[n];switch(this.uniforms[n]={},s.type){case"t":this.uniforms[n].value=t[s.value]||null;break;case"c":this.uniforms[n].value=new je().setHex(s.value);break;case"v2":this.uniforms[n].value=new et().fromArray(s.value);break;case"v3":this.uniforms[n].value=new W().fromArray(s.value);break;case"v4":this.uniforms[n].value=new Mt().fromArray(s.value);break;case"m3":this.uniforms[n].value=new Ge().fromArray(s.value);break;case"m4":this.uniforms[n].value=new at().fromArray(s.value);break;default:this.uniforms[n].value=s.value}}if(e.defines!==void 0&&(this.defines=e.defines),e.vertexShader!==void 0&&(this.vertexShader=e.vertexShader),e.fragmentShader!==void 0&&(this.fragmentShader=e.fragmentShader),e.glslVersion!==void 0&&(this.glslVersion=e.glslVersion),e.extensions!==void 0)for(let n in e.extensions)this.extensions[n]=e.extensions[n];return e.lights!==void 0&&(this.lights=e.lights),e.clipping!==void 0&&(this.clipping=e.clipping),this}},to=class extends Xn{constructor(e){super(e),this.isRawShaderMaterial=!0,this.type="RawShaderMaterial"}};var no=class extends ki{constructor(e){super(),this.isMeshDepthMaterial=!0,this.type="MeshDepthMaterial",this.depthPacking=rd,this.map=null,this.alphaMap=null,this.displacementMap=null,this.displacementScale=1,this.displacementBias=0,this.wireframe=!1,this.wireframeLinewidth=1,this.setValues(e)}copy(e){return super.copy(e),this.depthPacking=e.depthPacking,this.map=e.map,this.alphaMap=e.alphaMap,this.displacementMap=e.displacementMap,this.displacementScale=e.displacementScale,this.displacementBias=e.displacementBias,this.wireframe=e.wireframe,this.wireframeLinewidth=e.wireframeLinewidth,this}},io=class extends ki{constructor(e){super(),this.isMeshDistanceMaterial=!0,this.type="MeshDistanceMaterial",this.map=null,this.alphaMap=null,this.displacementMap=null,this.displacementScale=1,this.displacementBias=0,this.setValues(e)}copy(e){return super.copy(e),this.map=e.map,this.alphaMap=e.alphaMap,this.displacementMap=e.displacementMap,this.displacementScale=e.displacementScale,this.displacementBias=e.displacementBias,this}};function Rs(i,e){return!i||i.constructor===e?i:typeof e.BYTES_PER_ELEMENT=="number"?new e(i):Array.prototype.slice.call(i)}function Ia(i){return i!==void 0&&i.inTangents!==void 0&&i.outTangents!==void 0}var Fi=class{constructor(e,t,n,s){this.parameterPositions=e,this._cachedIndex=0,this.resultBuffer=s!==void 0?s:new t.constructor(n),this.sampleValues=t,this.valueSize=n,this.settings=null,this.DefaultSettings_={}}evaluate(e){let t=this.parameterPositions,n=this._cachedIndex,s=t[n],r=t[n-1];n:{e:{let a;t:{i:if(!(e<s)){for(let o=n+2;;){if(s===void 0){if(e<r)break i;return n=t.length,this._cachedIndex=n,this.copySampleValue_(n-1)}if(n===o)break;if(r=s,s=t[++n],e<s)break e}a=t.length;break t}if(!(e>=r)){let o=t[1];e<o&&(n=2,r=o);for(let l=n-2;;){if(r===void 0)return this._cachedIndex=0,this.copySampleValue_(0);if(n===l)break;if(s=r,r=t[--n-1],e>=r)break e}a=n,n=0;break t}break n}for(;n<a;){let o=n+a>>>1;e<t[o]?a=o:n=o+1}if(s=t[n],r=t[n-1],r===void 0)return this._cachedIndex=0,this.copySampleValue_(0);if(s===void 0)return n=t.length,this._cachedIndex=n,this.copySampleValue_(n-1)}this._cachedIndex=n,this.intervalChanged_(n,r,s)}return this.interpolate_(n,r,e,s)}getSettings_(){return this.settings||this.DefaultSettings_}copySampleValue_(e){let t=this.resultBuffer,n=this.sampleValues,s=this.valueSize,r=e*s;for(let a=0;a!==s;++a)t[a]=n[r+a];return t}interpolate_(){throw new Error("THREE.Interpolant: Call to abstract method.")}intervalChanged_(){}},so=class extends Fi{constructor(e,t,n,s){super(e,t,n,s),this._weightPrev=-0,this._offsetPrev=-0,this._weightNext=-0,this._offsetNext=-0,this.DefaultSettings_={endingStart:hc,endingEnd:hc}}intervalChanged_(e,t,n){let s=this.parameterPositions,r=e-2,a=e+1,o=s[r],l=s[a];if(o===void 0)switch(this.getSettings_().endingStart){case uc:r=e,o=2*t-n;break;case dc:r=s.length-2,o=t+s[r]-s[r+1];break;default:r=e,o=n}if(l===void 0)switch(this.getSettings_().endingEnd){case uc:a=e,l=2*n-t;break;case dc:a=1,l=n+s[1]-s[0];break;default:a=e-1,l=t}let c=(n-t)*.5,h=this.valueSize;this._weightPrev=c/(t-o),this._weightNext=c/(l-n),this._offsetPrev=r*h,this._offsetNext=a*h}interpolate_(e,t,n,s){let r=this.resultBuffer,a=this.sampleValues,o=this.valueSize,l=e*o,c=l-o,h=this._offsetPrev,u=this._offsetNext,d=this._weightPrev,p=this._weightNext,_=(n-t)/(s-t),v=_*_,m=v*_,g=-d*m+2*d*v-d*_,M=(1+d)*m+(-1.5-2*d)*v+(-.5+d)*_+1,C=(-1-p)*m+(1.5+p)*v+.5*_,w=p*m-p*v;for(let E=0;E!==o;++E)r[E]=g*a[h+E]+M*a[c+E]+C*a[l+E]+w*a[u+E];return r}},ro=class extends Fi{constructor(e,t,n,s){super(e,t,n,s)}interpolate_(e,t,n,s){let r=this.resultBuffer,a=this.sampleValues,o=this.valueSize,l=e*o,c=l-o,h=(n-t)/(s-t),u=1-h;for(let d=0;d!==o;++d)r[d]=a[c+d]*u+a[l+d]*h;return r}},ao=class extends Fi{constructor(e,t,n,s){super(e,t,n,s)}interpolate_(e){return this.copySampleValue_(e-1)}},oo=class extends Fi{interpolate_(e,t,n,s){let r=this.resultBuffer,a=this.sampleValues,o=this.valueSize,l=e*o,c=l-o,h=this.inTangents,u=this.outTangents;if(!h||!u){let _=(n-t)/(s-t),v=1-_;for(let m=0;m!==o;++m)r[m]=a[c+m]*v+a[l+m]*_;return r}let d=o*2,p=e-1;for(let _=0;_!==o;++_){let v=a[c+_],m=a[l+_],g=p*d+_*2,M=u[g],C=u[g+1],w=e*d+_*2,E=h[w],T=h[w+1],x=mm(n,t,M,E,s);r[_]=bd(x,v,C,T,m)}return r}};function bd(i,e,t,n,s){let r=1-i;return r*r*r*e+3*r*r*i*t+3*r*i*i*n+i*i*i*s}function pm(i,e,t,n,s){let r=1-i;return 3*r*r*(t-e)+6*r*i*(n-t)+3*i*i*(s-n)}function mm(i,e,t,n,s){let r=(i-e)/(s-e);for(let a=0;a<8;a++){let o=bd(r,e,t,n,s)-i;if(Math.abs(o)<1e-10)break;let l=pm(r,e,t,n,s);if(Math.abs(l)<1e-10)break;r=Math.max(0,Math.min(1,r-o/l))}return r}var pn=class{constructor(e,t,n,s){if(e===void 0)throw new Error("THREE.KeyframeTrack: track name is undefined");if(t===void 0||t.length===0)throw new Error("THREE.KeyframeTrack: no keyframes in track named "+e);this.name=e,this.times=Rs(t,this.TimeBufferType),this.values=Rs(n,this.ValueBufferType),this.setInterpolation(s||this.DefaultInterpolation)}static toJSON(e){let t=e.constructor,n;if(t.toJSON!==this.toJSON)n=t.toJSON(e);else{n={name:e.name,times:Rs(e.times,Array),values:Rs(e.values,Array)};let s=e.getInterpolation();s!==e.DefaultInterpolation&&(n.interpolation=s),Ia(e.settings)&&(n.settings={inTangents:Rs(e.settings.inTangents,Array),outTangents:Rs(e.settings.outTangents,Array)})}return n.type=e.ValueTypeName,n}InterpolantFactoryMethodDiscrete(e){return new ao(this.times,this.values,this.getValueSize(),e)}InterpolantFactoryMethodLinear(e){return new ro(this.times,this.values,this.getValueSize(),e)}InterpolantFactoryMethodSmooth(e){return new so(this.times,this.values,this.getValueSize(),e)}InterpolantFactoryMethodBezier(e){let t=new oo(this.times,this.values,this.getValueSize(),e);return this.settings&&(t.inTangents=this.settings.inTangents,t.outTangents=this.settings.outTangents),t}setInterpolation(e){let t;switch(e){case mr:t=this.InterpolantFactoryMethodDiscrete;break;case Wa:t=this.InterpolantFactoryMethodLinear;break;case Da:t=this.InterpolantFactoryMethodSmooth;break;case cc:t=this.InterpolantFactoryMethodBezier;break}if(t===void 0){let n="unsupported interpolation for "+this.ValueTypeName+" keyframe track named "+this.name;if(this.createInterpolant===void 0)if(e!==this.DefaultInterpolation)this.setInterpolation(this.DefaultInterpolation);else throw new Error(n);return Oe("KeyframeTrack:",n),this}return this.createInterpolant=t,this}getInterpolation(){switch(this.createInterpolant){case this.InterpolantFactoryMethodDiscrete:return mr;case this.InterpolantFactoryMethodLinear:return Wa;case this.InterpolantFactoryMethodSmooth:return Da;case this.InterpolantFactoryMethodBezier:return cc}}getValueSize(){return this.values.length/this.times.length}shift(e){if(e!==0){let t=this.times;for(let n=0,s=t.length;n!==s;++n)t[n]+=e;Ia(this.settings)&&(Ru(this.settings.inTangents,e),Ru(this.settings.outTangents,e))}return this}scale(e){if(e!==1){let t=this.times;for(let n=0,s=t.length;n!==s;++n)t[n]*=e;Ia(this.settings)&&(Pu(this.settings.inTangents,e),Pu(this.settings.outTangents,e))}return this}trim(e,t){let n=this.times,s=n.length,r=0,a=s-1;for(;r!==s&&n[r]<e;)++r;for(;a!==-1&&n[a]>t;)--a;if(++a,r!==0||a!==s){r>=a&&(a=Math.max(a,1),r=a-1);let o=this.getValueSize();this.times=n.slice(r,a),this.values=this.values.slice(r*o,a*o)}return this}validate(){let e=!0,t=this.getValueSize();t-Math.floor(t)!==0&&(ze("KeyframeTrack: Invalid value size in track.",this),e=!1);let n=this.times,s=this.values,r=n.length;r===0&&(ze("KeyframeTrack: Track is empty.",this),e=!1);let a=null;for(let o=0;o!==r;o++){let l=n[o];if(typeof l=="number"&&isNaN(l)){ze("KeyframeTrack: Time is not a valid number.",this,o,l),e=!1;break}if(a!==null&&a>l){ze("KeyframeTrack: Out of order keys.",this,o,l,a),e=!1;break}a=l}if(s!==void 0&&Hp(s))for(let o=0,l=s.length;o!==l;++o){let c=s[o];if(isNaN(c)){ze("KeyframeTrack: Value is not a valid number.",this,o,c),e=!1;break}}return e}optimize(){let e=this.times.slice(),t=this.values.slice(),n=this.getValueSize(),s=this.getInterpolation()===Da,r=e.length-1,a=1;for(let o=1;o<r;++o){let l=!1,c=e[o],h=e[o+1];if(c!==h&&(o!==1||c!==e[0]))if(s)l=!0;else{let u=o*n,d=u-n,p=u+n;for(let _=0;_!==n;++_){let v=t[u+_];if(v!==t[d+_]||v!==t[p+_]){l=!0;break}}}if(l){if(o!==a){e[a]=e[o];let u=o*n,d=a*n;for(let p=0;p!==n;++p)t[d+p]=t[u+p]}++a}}if(r>0){e[a]=e[r];for(let o=r*n,l=a*n,c=0;c!==n;++c)t[l+c]=t[o+c];++a}return a!==e.length?(this.times=e.slice(0,a),this.values=t.slice(0,a*n)):(this.times=e,this.values=t),this}clone(){let e=this.times.slice(),t=this.values.slice(),n=this.constructor,s=new n(this.name,e,t);return s.createInterpolant=this.createInterpolant,Ia(this.settings)&&(s.settings={inTangents:this.settings.inTangents.slice(),outTangents:this.settings.outTangents.slice()}),s}};function Ru(i,e){for(let t=0,n=i.length;t!==n;t+=2)i[t]+=e}function Pu(i,e){for(let t=0,n=i.length;t!==n;t+=2)i[t]*=e}pn.prototype.ValueTypeName="";pn.prototype.TimeBufferType=Float32Array;pn.prototype.ValueBufferType=Float32Array;pn.prototype.DefaultInterpolation=Wa;var Oi=class extends pn{constructor(e,t,n){super(e,t,n)}};Oi.prototype.ValueTypeName="bool";Oi.prototype.ValueBufferType=Array;Oi.prototype.DefaultInterpolation=mr;Oi.prototype.InterpolantFactoryMethodLinear=void 0;Oi.prototype.InterpolantFactoryMethodSmooth=void 0;var lo=class extends pn{constructor(e,t,n,s){super(e,t,n,s)}};lo.prototype.ValueTypeName="color";var co=class extends pn{constructor(e,t,n,s){super(e,t,n,s)}};co.prototype.ValueTypeName="number";var ho=class extends Fi{constructor(e,t,n,s){super(e,t,n,s)}interpolate_(e,t,n,s){let r=this.resultBuffer,a=this.sampleValues,o=this.valueSize,l=(n-t)/(s-t),c=e*o;for(let h=c+o;c!==h;c+=4)wn.slerpFlat(r,0,a,c-o,a,c,l);return r}},Ar=class extends pn{constructor(e,t,n,s){super(e,t,n,s)}InterpolantFactoryMethodLinear(e){return new ho(this.times,this.values,this.getValueSize(),e)}};Ar.prototype.ValueTypeName="quaternion";Ar.prototype.InterpolantFactoryMethodSmooth=void 0;var Bi=class extends pn{constructor(e,t,n){super(e,t,n)}};Bi.prototype.ValueTypeName="string";Bi.prototype.ValueBufferType=Array;Bi.prototype.DefaultInterpolation=mr;Bi.prototype.InterpolantFactoryMethodLinear=void 0;Bi.prototype.InterpolantFactoryMethodSmooth=void 0;var uo=class extends pn{constructor(e,t,n,s){super(e,t,n,s)}};uo.prototype.ValueTypeName="vector";var fo=class{constructor(e,t,n){let s=this,r=!1,a=0,o=0,l,c=[];this.onStart=void 0,this.onLoad=e,this.onProgress=t,this.onError=n,this._abortController=null,this.itemStart=function(h){o++,r===!1&&s.onStart!==void 0&&s.onStart(h,a,o),r=!0},this.itemEnd=function(h){a++,s.onProgress!==void 0&&s.onProgress(h,a,o),a===o&&(r=!1,s.onLoad!==void 0&&s.onLoad())},this.itemError=function(h){s.onError!==void 0&&s.onError(h)},this.resolveURL=function(h){return h=h.normalize("NFC"),l?l(h):h},this.setURLModifier=function(h){return l=h,this},this.addHandler=function(h,u){return c.push(h,u),this},this.removeHandler=function(h){let u=c.indexOf(h);return u!==-1&&c.splice(u,2),this},this.getHandler=function(h){for(let u=0,d=c.length;u<d;u+=2){let p=c[u],_=c[u+1];if(p.global&&(p.lastIndex=0),p.test(h))return _}return null},this.abort=function(){return this.abortController.abort(),this._abortController=null,this}}get abortController(){return this._abortController||(this._abortController=new AbortController),this._abortController}},Md=new fo,po=class{constructor(e){this.manager=e!==void 0?e:Md,this.crossOrigin="anonymous",this.withCredentials=!1,this.path="",this.resourcePath="",this.requestHeader={},this.priority="auto",this.cache="default",typeof __THREE_DEVTOOLS__<"u"&&__THREE_DEVTOOLS__.dispatchEvent(new CustomEvent("observe",{detail:this}))}load(){}loadAsync(e,t){let n=this;return new Promise(function(s,r){n.load(e,s,t,r)})}parse(){}setCrossOrigin(e){return this.crossOrigin=e,this}setWithCredentials(e){return this.withCredentials=e,this}setPath(e){return this.path=e,this}setResourcePath(e){return this.resourcePath=e,this}setRequestHeader(e){return this.requestHeader=e,this}setPriority(e){return this.priority=e,this}setCache(e){return this.cache=e,this}abort(){return this}};po.DEFAULT_MATERIAL_NAME="__DEFAULT";var La=new W,Na=new wn,Hn=new W,Cr=class extends fn{constructor(){super(),this.isCamera=!0,this.type="Camera",this.matrixWorldInverse=new at,this.projectionMatrix=new at,this.projectionMatrixInverse=new at,this.coordinateSystem=Mn,this._reversedDepth=!1}get reversedDepth(){return this._reversedDepth}copy(e,t){return super.copy(e,t),this.matrixWorldInverse.copy(e.matrixWorldInverse),this.projectionMatrix.copy(e.projectionMatrix),this.projectionMatrixInverse.copy(e.projectionMatrixInverse),this.coordinateSystem=e.coordinateSystem,this}getWorldDirection(e){return super.getWorldDirection(e).negate()}updateMatrixWorld(e){super.updateMatrixWorld(e),this.matrixWorld.decompose(La,Na,Hn),Hn.x===1&&Hn.y===1&&Hn.z===1?this.matrixWorldInverse.copy(this.matrixWorld).invert():this.matrixWorldInverse.compose(La,Na,Hn.set(1,1,1)).invert()}updateWorldMatrix(e,t,n=!1){super.updateWorldMatrix(e,t,n),this.matrixWorld.decompose(La,Na,Hn),Hn.x===1&&Hn.y===1&&Hn.z===1?this.matrixWorldInverse.copy(this.matrixWorld).invert():this.matrixWorldInverse.compose(La,Na,Hn.set(1,1,1)).invert()}clone(){return new this.constructor().copy(this)}},Ii=new W,Iu=new et,Lu=new et,un=class extends Cr{constructor(e=50,t=1,n=.1,s=2e3){super(),this.isPerspectiveCamera=!0,this.type="PerspectiveCamera",this.fov=e,this.zoom=1,this.near=n,this.far=s,this.focus=10,this.aspect=t,this.view=null,this.filmGauge=35,this.filmOffset=0,this.updateProjectionMatrix()}copy(e,t){return super.copy(e,t),this.fov=e.fov,this.zoom=e.zoom,this.near=e.near,this.far=e.far,this.focus=e.focus,this.aspect=e.aspect,this.view=e.view===null?null:Object.assign({},e.view),this.filmGauge=e.filmGauge,this.filmOffset=e.filmOffset,this}setFocalLength(e){let t=.5*this.getFilmHeight()/e;this.fov=Xa*2*Math.atan(t),this.updateProjectionMatrix()}getFocalLength(){let e=Math.tan(Gl*.5*this.fov);return .5*this.getFilmHeight()/e}getEffectiveFOV(){return Xa*2*Math.atan(Math.tan(Gl*.5*this.fov)/this.zoom)}getFilmWidth(){return this.filmGauge*Math.min(this.aspect,1)}getFilmHeight(){return this.filmGauge/Math.max(this.aspect,1)}getViewBounds(e,t,n){Ii.set(-1,-1,.5).applyMatrix4(this.projectionMatrixInverse),t.set(Ii.x,Ii.y).multiplyScalar(-e/Ii.z),Ii.set(1,1,.5).applyMatrix4(this.projectionMatrixInverse),n.set(Ii.x,Ii.y).multiplyScalar(-e/Ii.z)}getViewSize(e,t){return this.getViewBounds(e,Iu,Lu),t.subVectors(Lu,Iu)}setViewOffset(e,t,n,s,r,a){this.aspect=e/t,this.view===null&&(this.view={enabled:!0,fullWidth:1,fullHeight:1,offsetX:0,offsetY:0,width:1,height:1}),this.view.enabled=!0,this.view.fullWidth=e,this.view.fullHeight=t,this.view.offsetX=n,this.view.offsetY=s,this.view.width=r,this.view.height=a,this.updateProjectionMatrix()}clearViewOffset(){this.view!==null&&(this.view.enabled=!1),this.updateProjectionMatrix()}updateProjectionMatrix(){let e=this.near,t=e*Math.tan(Gl*.5*this.fov)/this.zoom,n=2*t,s=this.aspect*n,r=-.5*s,a=this.view;if(this.view!==null&&this.view.enabled){let l=a.fullWidth,c=a.fullHeight;r+=a.offsetX*s/l,t-=a.offsetY*n/c,s*=a.width/l,n*=a.height/c}let o=this.filmOffset;o!==0&&(r+=e*o/this.getFilmWidth()),this.projectionMatrix.makePerspective(r,r+s,t,t-n,e,this.far,this.coordinateSystem,this.reversedDepth),this.projectionMatrixInverse.copy(this.projectionMatrix).invert()}toJSON(e){let t=super.toJSON(e);return t.object.fov=this.fov,t.object.zoom=this.zoom,t.object.near=this.near,t.object.far=this.far,t.object.focus=this.focus,t.object.aspect=this.aspect,this.view!==null&&(t.object.view=Object.assign({},this.view)),t.object.filmGauge=this.filmGauge,t.object.filmOffset=this.filmOffset,t}};var zi=class extends Cr{constructor(e=-1,t=1,n=1,s=-1,r=.1,a=2e3){super(),this.isOrthographicCamera=!0,this.type="OrthographicCamera",this.zoom=1,this.view=null,this.left=e,this.right=t,this.top=n,this.bottom=s,this.near=r,this.far=a,this.updateProjectionMatrix()}copy(e,t){return super.copy(e,t),this.left=e.left,this.right=e.right,this.top=e.top,this.bottom=e.bottom,this.near=e.near,this.far=e.far,this.zoom=e.zoom,this.view=e.view===null?null:Object.assign({},e.view),this}setViewOffset(e,t,n,s,r,a){this.view===null&&(this.view={enabled:!0,fullWidth:1,fullHeight:1,offsetX:0,offsetY:0,width:1,height:1}),this.view.enabled=!0,this.view.fullWidth=e,this.view.fullHeight=t,this.view.offsetX=n,this.view.offsetY=s,this.view.width=r,this.view.height=a,this.updateProjectionMatrix()}clearViewOffset(){this.view!==null&&(this.view.enabled=!1),this.updateProjectionMatrix()}updateProjectionMatrix(){let e=(this.right-this.left)/(2*this.zoom),t=(this.top-this.bottom)/(2*this.zoom),n=(this.right+this.left)/2,s=(this.top+this.bottom)/2,r=n-e,a=n+e,o=s+t,l=s-t;if(this.view!==null&&this.view.enabled){let c=(this.right-this.left)/this.view.fullWidth/this.zoom,h=(this.top-this.bottom)/this.view.fullHeight/this.zoom;r+=c*this.view.offsetX,a=r+c*this.view.width,o-=h*this.view.offsetY,l=o-h*this.view.height}this.projectionMatrix.makeOrthographic(r,a,o,l,this.near,this.far,this.coordinateSystem,this.reversedDepth),this.projectionMatrixInverse.copy(this.projectionMatrix).invert()}toJSON(e){let t=super.toJSON(e);return t.object.zoom=this.zoom,t.object.left=this.left,t.object.right=this.right,t.object.top=this.top,t.object.bottom=this.bottom,t.object.near=this.near,t.object.far=this.far,this.view!==null&&(t.object.view=Object.assign({},this.view)),t}};var Ps=-90,Is=1,Gs=class extends fn{constructor(e,t,n){super(),this.type="CubeCamera",this.renderTarget=n,this.coordinateSystem=null,this.activeMipmapLevel=0;let s=new un(Ps,Is,e,t);s.layers=this.layers,this.add(s);let r=new un(Ps,Is,e,t);r.layers=this.layers,this.add(r);let a=new un(Ps,Is,e,t);a.layers=this.layers,this.add(a);let o=new un(Ps,Is,e,t);o.layers=this.layers,this.add(o);let l=new un(Ps,Is,e,t);l.layers=this.layers,this.add(l);let c=new un(Ps,Is,e,t);c.layers=this.layers,this.add(c)}updateCoordinateSystem(){let e=this.coordinateSystem,t=this.children.concat(),[n,s,r,a,o,l]=t;for(let c of t)this.remove(c);if(e===Mn)n.up.set(0,1,0),n.lookAt(1,0,0),s.up.set(0,1,0),s.lookAt(-1,0,0),r.up.set(0,0,-1),r.lookAt(0,1,0),a.up.set(0,0,1),a.lookAt(0,-1,0),o.up.set(0,1,0),o.lookAt(0,0,1),l.up.set(0,1,0),l.lookAt(0,0,-1);else if(e===vr)n.up.set(0,-1,0),n.lookAt(-1,0,0),s.up.set(0,-1,0),s.lookAt(1,0,0),r.up.set(0,0,1),r.lookAt(0,1,0),a.up.set(0,0,-1),a.lookAt(0,-1,0),o.up.set(0,-1,0),o.lookAt(0,0,1),l.up.set(0,-1,0),l.lookAt(0,0,-1);else throw new Error("THREE.CubeCamera.updateCoordinateSystem(): Invalid coordinate system: "+e);for(let c of t)this.add(c),c.updateMatrixWorld()}update(e,t){this.parent===null&&this.updateMatrixWorld();let{renderTarget:n,activeMipmapLevel:s}=this;this.coordinateSystem!==e.coordinateSystem&&(this.coordinateSystem=e.coordinateSystem,this.updateCoordinateSystem());let[r,a,o,l,c,h]=this.children,u=e.getRenderTarget(),d=e.getActiveCubeFace(),p=e.getActiveMipmapLevel(),_=e.xr.enabled;e.xr.enabled=!1;let v=n.texture.mipmapsAutoUpdate;n.texture.mipmapsAutoUpdate=!1;let m=!1;e.isWebGLRenderer===!0?m=e.state.buffers.depth.getReversed():m=e.reversedDepthBuffer,e.setRenderTarget(n,0,s),m&&e.autoClear===!1&&e.clearDepth(),e.render(t,r),e.setRenderTarget(n,1,s),m&&e.autoClear===!1&&e.clearDepth(),e.render(t,a),e.setRenderTarget(n,2,s),m&&e.autoClear===!1&&e.clearDepth(),e.render(t,o),e.setRenderTarget(n,3,s),m&&e.autoClear===!1&&e.clearDepth(),e.render(t,l),e.setRenderTarget(n,4,s),m&&e.autoClear===!1&&e.clearDepth(),e.render(t,c),n.texture.mipmapsAutoUpdate=v,e.setRenderTarget(n,5,s),m&&e.autoClear===!1&&e.clearDepth(),e.render(t,h),e.setRenderTarget(u,d,p),e.xr.enabled=_,n.texture.needsPMREMUpdate=!0}},mo=class extends un{constructor(e=[]){super(),this.isArrayCamera=!0,this.isMultiViewCamera=!1,this.cameras=e,this.perCameraFrustumCulled=!1}};var Xc="\\[\\]\\.:\\/",gm=new RegExp("["+Xc+"]","g"),qc="[^"+Xc+"]",_m="[^"+Xc.replace("\\.","")+"]",vm=/((?:WC+[\/:])*)/.source.replace("WC",qc),xm=/(WCOD+)?/.source.replace("WCOD",_m),ym=/(?:\.(WC+)(?:\[(.+)\])?)?/.source.replace("WC",qc),bm=/\.(WC+)(?:\[(.+)\])?/.source.replace("WC",qc),Mm=new RegExp("^"+vm+xm+ym+bm+"$"),wm=["material","materials","bones","map"],fc=class{constructor(e,t,n){let s=n||ft.parseTrackName(t);this._targetGroup=e,this._bindings=e.subscribe_(t,s)}getValue(e,t){this.bind();let n=this._targetGroup.nCachedObjects_,s=this._bindings[n];s!==void 0&&s.getValue(e,t)}setValue(e,t){let n=this._bindings;for(let s=this._targetGroup.nCachedObjects_,r=n.length;s!==r;++s)n[s].setValue(e,t)}bind(){let e=this._bindings;for(let t=this._targetGroup.nCachedObjects_,n=e.length;t!==n;++t)e[t].bind()}unbind(){let e=this._bindings;for(let t=this._targetGroup.nCachedObjects_,n=e.length;t!==n;++t)e[t].unbind()}},ft=class i{constructor(e,t,n){this.path=t,this.parsedPath=n||i.parseTrackName(t),this.node=i.findNode(e,this.parsedPath.nodeName),this.rootNode=e,this.getValue=this._getValue_unbound,this.setValue=this._setValue_unbound}static create(e,t,n){return e&&e.isAnimationObjectGroup?new i.Composite(e,t,n):new i(e,t,n)}static sanitizeNodeName(e){return e.replace(/\s/g,"_").replace(gm,"")}static parseTrackName(e){let t=Mm.exec(e);if(t===null)throw new Error("THREE.PropertyBinding: Cannot parse trackName: "+e);let n={nodeName:t[2],objectName:t[3],objectIndex:t[4],propertyName:t[5],propertyIndex:t[6]},s=n.nodeName&&n.nodeName.lastIndexOf(".");if(s!==void 0&&s!==-1){let r=n.nodeName.substring(s+1);wm.indexOf(r)!==-1&&(n.nodeName=n.nodeName.substring(0,s),n.objectName=r)}if(n.propertyName===null||n.propertyName.length===0)throw new Error("THREE.PropertyBinding: can not parse propertyName from trackName: "+e);return n}static findNode(e,t){if(t===void 0||t===""||t==="."||t===-1||t===e.name||t===e.uuid)return e;if(e.skeleton){let n=e.skeleton.getBoneByName(t);if(n!==void 0)return n}if(e.children){let n=function(r){for(let a=0;a<r.length;a++){let o=r[a];if(o.name===t||o.uuid===t)return o;let l=n(o.children);if(l)return l}return null},s=n(e.children);if(s)return s}return null}_getValue_unavailable(){}_setValue_unavailable(){}_getValue_direct(e,t){e[t]=this.targetObject[this.propertyName]}_getValue_array(e,t){let n=this.resolvedProperty;for(let s=0,r=n.length;s!==r;++s)e[t++]=n[s]}_getValue_arrayElement(e,t){e[t]=this.resolvedProperty[this.propertyIndex]}_getValue_toArray(e,t){this.resolvedProperty.toArray(e,t)}_setValue_direct(e,t){this.targetObject[this.propertyName]=e[t]}_setValue_direct_setNeedsUpdate(e,t){this.targetObject[this.propertyName]=e[t],this.targetObject.needsUpdate=!0}_setValue_direct_setMatrixWorldNeedsUpdate(e,t){this.targetObject[this.propertyName]=e[t],this.targetObject.matrixWorldNeedsUpdate=!0}_setValue_array(e,t){let n=this.resolvedProperty;for(let s=0,r=n.length;s!==r;++s)n[s]=e[t++]}_setValue_array_setNeedsUpdate(e,t){let n=this.resolvedProperty;for(let s=0,r=n.length;s!==r;++s)n[s]=e[t++];this.targetObject.needsUpdate=!0}_setValue_array_setMatrixWorldNeedsUpdate(e,t){let n=this.resolvedProperty;for(let s=0,r=n.length;s!==r;++s)n[s]=e[t++];this.targetObject.matrixWorldNeedsUpdate=!0}_setValue_arrayElement(e,t){this.resolvedProperty[this.propertyIndex]=e[t]}_setValue_arrayElement_setNeedsUpdate(e,t){this.resolvedProperty[this.propertyIndex]=e[t],this.targetObject.needsUpdate=!0}_setValue_arrayElement_setMatrixWorldNeedsUpdate(e,t){this.resolvedProperty[this.propertyIndex]=e[t],this.targetObject.matrixWorldNeedsUpdate=!0}_setValue_fromArray(e,t){this.resolvedProperty.fromArray(e,t)}_setValue_fromArray_setNeedsUpdate(e,t){this.resolvedProperty.fromArray(e,t),this.targetObject.needsUpdate=!0}_setValue_fromArray_setMatrixWorldNeedsUpdate(e,t){this.resolvedProperty.fromArray(e,t),this.targetObject.matrixWorldNeedsUpdate=!0}_getValue_unbound(e,t){this.bind(),this.getValue(e,t)}_setValue_unbound(e,t){this.bind(),this.setValue(e,t)}bind(){let e=this.node,t=this.parsedPath,n=t.objectName,s=t.propertyName,r=t.propertyIndex;if(e||(e=i.findNode(this.rootNode,t.nodeName),this.node=e),this.getValue=this._getValue_unavailable,this.setValue=this._setValue_unavailable,!e){Oe("PropertyBinding: No target node found for track: "+this.path+".");return}if(n){let c=t.objectIndex;switch(n){case"materials":if(!e.material){ze("PropertyBinding: Can not bind to material as node does not have a material.",this);return}if(!e.material.materials){ze("PropertyBinding: Can not bind to material.materials as node.material does not have a materials array.",this);return}e=e.material.materials;break;case"bones":if(!e.skeleton){ze("PropertyBinding: Can not bind to bones as node does not have a skeleton.",this);return}e=e.skeleton.bones;for(let h=0;h<e.length;h++)if(e[h].name===c){c=h;break}break;case"map":if("map"in e){e=e.map;break}if(!e.material){ze("PropertyBinding: Can not bind to material as node does not have a material.",this);return}if(!e.material.map){ze("PropertyBinding: Can not bind to material.map as node.material does not have a map.",this);return}e=e.material.map;break;default:if(e[n]===void 0){ze("PropertyBinding: Can not bind to objectName of node undefined.",this);return}e=e[n]}if(c!==void 0){if(e[c]===void 0){ze("PropertyBinding: Trying to bind to objectIndex of objectName, but is undefined.",this,e);return}e=e[c]}}let a=e[s];if(a===void 0){let c=t.nodeName;ze("PropertyBinding: Trying to update property for track: "+c+"."+s+" but it wasn't found.",e);return}let o=this.Versioning.None;this.targetObject=e,e.isMaterial===!0?o=this.Versioning.NeedsUpdate:e.isObject3D===!0&&(o=this.Versioning.MatrixWorldNeedsUpdate);let l=this.BindingType.Direct;if(r!==void 0){if(s==="morphTargetInfluences"){if(!e.geometry){ze("PropertyBinding: Can not bind to morphTargetInfluences because node does not have a geometry.",this);return}if(!e.geometry.morphAttributes){ze("PropertyBinding: Can not bind to morphTargetInfluences because node does not have a geometry.morphAttributes.",this);return}e.morphTargetDictionary[r]!==void 0&&(r=e.morphTargetDictionary[r])}l=this.BindingType.ArrayElement,this.resolvedProperty=a,this.propertyIndex=r}else a.fromArray!==void 0&&a.toArray!==void 0?(l=this.BindingType.HasFromToArray,this.resolvedProperty=a):Array.isArray(a)?(l=this.BindingType.EntireArray,this.resolvedProperty=a):this.propertyName=s;this.getValue=this.GetterByBindingType[l],this.setValue=this.SetterByBindingTypeAndVersioning[l][o]}unbind(){this.node=null,this.getValue=this._getValue_unbound,this.setValue=this._setValue_unbound}};ft.Composite=fc;ft.prototype.BindingType={Direct:0,EntireArray:1,ArrayElement:2,HasFromToArray:3};ft.prototype.Versioning={None:0,NeedsUpdate:1,MatrixWorldNeedsUpdate:2};ft.prototype.GetterByBindingType=[ft.prototype._getValue_direct,ft.prototype._getValue_array,ft.prototype._getValue_arrayElement,ft.prototype._getValue_toArray];ft.prototype.SetterByBindingTypeAndVersioning=[[ft.prototype._setValue_direct,ft.prototype._setValue_direct_setNeedsUpdate,ft.prototype._setValue_direct_setMatrixWorldNeedsUpdate],[ft.prototype._setValue_array,ft.prototype._setValue_array_setNeedsUpdate,ft.prototype._setValue_array_setMatrixWorldNeedsUpdate],[ft.prototype._setValue_arrayElement,ft.prototype._setValue_arrayElement_setNeedsUpdate,ft.prototype._setValue_arrayElement_setMatrixWorldNeedsUpdate],[ft.prototype._setValue_fromArray,ft.prototype._setValue_fromArray_setNeedsUpdate,ft.prototype._setValue_fromArray_setMatrixWorldNeedsUpdate]];var xb=new Float32Array(1);var Nu=new at,Rr=class{constructor(e,t,n=0,s=1/0){this.ray=new Os(e,t),this.near=n,this.far=s,this.camera=null,this.layers=new Us,this.params={Mesh:{},Line:{threshold:1},LOD:{},Points:{threshold:1},Sprite:{}}}set(e,t){this.ray.set(e,t)}setFromCamera(e,t){t.isPerspectiveCamera?(this.ray.origin.setFromMatrixPosition(t.matrixWorld),this.ray.direction.set(e.x,e.y,.5).unproject(t).sub(this.ray.origin).normalize(),this.camera=t):t.isOrthographicCamera?(this.ray.origin.set(e.x,e.y,t.projectionMatrix.elements[14]).unproject(t),this.ray.direction.set(0,0,-1).transformDirection(t.matrixWorld),this.camera=t):ze("Raycaster: Unsupported camera type: "+t.type)}setFromXRController(e){return Nu.identity().extractRotation(e.matrixWorld),this.ray.origin.setFromMatrixPosition(e.matrixWorld),this.ray.direction.set(0,0,-1).applyMatrix4(Nu),this}intersectObject(e,t=!0,n=[]){return pc(e,this,n,t),n.sort(Du),n}intersectObjects(e,t=!0,n=[]){for(let s=0,r=e.length;s<r;s++)pc(e[s],this,n,t);return n.sort(Du),n}};function Du(i,e){return i.distance-e.distance}function pc(i,e,t,n){let s=!0;if(i.layers.test(e.layers)&&i.raycast(e,t)===!1&&(s=!1),s===!0&&n===!0){let r=i.children;for(let a=0,o=r.length;a<o;a++)pc(r[a],e,t,!0)}}var mc=class{static{this.prototype.isMatrix2=!0}constructor(e,t,n,s){this.elements=[1,0,0,1],e!==void 0&&this.set(e,t,n,s)}identity(){return this.set(1,0,0,1),this}fromArray(e,t=0){for(let n=0;n<4;n++)this.elements[n]=e[n+t];return this}set(e,t,n,s){let r=this.elements;return r[0]=e,r[2]=t,r[1]=n,r[3]=s,this}};function Yc(i,e,t,n){let s=Sm(n);switch(t){case kc:return i*e;case Fc:return i*e/s.components*s.byteLength;case Mo:return i*e/s.components*s.byteLength;case Vi:return i*e*2/s.components*s.byteLength;case wo:return i*e*2/s.components*s.byteLength;case Uc:return i*e*3/s.components*s.byteLength;case On:return i*e*4/s.components*s.byteLength;case So:return i*e*4/s.components*s.byteLength;case Lr:case Nr:return Math.floor((i+3)/4)*Math.floor((e+3)/4)*8;case Dr:case kr:return Math.floor((i+3)/4)*Math.floor((e+3)/4)*16;case Eo:case Co:return Math.max(i,16)*Math.max(e,8)/4;case To:case Ao:return Math.max(i,8)*Math.max(e,8)/2;case Ro:case Po:case Lo:case No:return Math.floor((i+3)/4)*Math.floor((e+3)/4)*8;case Io:case Ur:case Do:return Math.floor((i+3)/4)*Math.floor((e+3)/4)*16;case ko:return Math.floor((i+3)/4)*Math.floor((e+3)/4)*16;case Uo:return Math.floor((i+4)/5)*Math.floor((e+3)/4)*16;case Fo:return Math.floor((i+4)/5)*Math.floor((e+4)/5)*16;case Oo:return Math.floor((i+5)/6)*Math.floor((e+4)/5)*16;case Bo:return Math.floor((i+5)/6)*Math.floor((e+5)/6)*16;case zo:return Math.floor((i+7)/8)*Math.floor((e+4)/5)*16;case Go:return Math.floor((i+7)/8)*Math.floor((e+5)/6)*16;case Vo:return Math.floor((i+7)/8)*Math.floor((e+7)/8)*16;case Ho:return Math.floor((i+9)/10)*Math.floor((e+4)/5)*16;case $o:return Math.floor((i+9)/10)*Math.floor((e+5)/6)*16;case Wo:return Math.floor((i+9)/10)*Math.floor((e+7)/8)*16;case Xo:return Math.floor((i+9)/10)*Math.floor((e+9)/10)*16;case qo:return Math.floor((i+11)/12)*Math.floor((e+9)/10)*16;case Yo:return Math.floor((i+11)/12)*Math.floor((e+11)/12)*16;case Zo:case Jo:case Ko:return Math.ceil(i/4)*Math.ceil(e/4)*16;case jo:case Qo:return Math.ceil(i/4)*Math.ceil(e/4)*8;case Fr:case el:return Math.ceil(i/4)*Math.ceil(e/4)*16}throw new Error(`Unable to determine texture byte length for ${t} format.`)}function Sm(i){switch(i){case mn:case Ic:return{byteLength:1,components:1};case Ws:case Lc:case Fn:return{byteLength:2,components:1};case yo:case bo:return{byteLength:2,components:4};case kn:case xo:case Un:return{byteLength:4,components:1};case Nc:case Dc:return{byteLength:4,components:3}}throw new Error(`THREE.TextureUtils: Unknown texture type ${i}.`)}typeof __THREE_DEVTOOLS__<"u"&&__THREE_DEVTOOLS__.dispatchEvent(new CustomEvent("register",{detail:{revision:"187"}}));typeof window<"u"&&(window.__THREE__?Oe("WARNING: Multiple instances of Three.js being imported."):window.__THREE__="187");/**
 * @license
 * Copyright 2010-2026 Three.js Authors
 * SPDX-License-Identifier: MIT
 */function $d(){let i=null,e=!1,t=null,n=null;function s(r,a){n=i.requestAnimationFrame(s),t(r,a)}return{start:function(){e!==!0&&t!==null&&i!==null&&(n=i.requestAnimationFrame(s),e=!0)},stop:function(){i!==null&&i.cancelAnimationFrame(n),e=!1},setAnimationLoop:function(r){t=r},setContext:function(r){i=r}}}function Em(i){let e=new WeakMap;function t(o,l){let c=o.array,h=o.usage,u=c.byteLength,d=i.createBuffer();i.bindBuffer(l,d),i.bufferData(l,c,h),o.onUploadCallback();let p;if(c instanceof Float32Array)p=i.FLOAT;else if(typeof Float16Array<"u"&&c instanceof Float16Array)p=i.HALF_FLOAT;else if(c instanceof Uint16Array)o.isFloat16BufferAttribute?p=i.HALF_FLOAT:p=i.UNSIGNED_SHORT;else if(c instanceof Int16Array)p=i.SHORT;else if(c instanceof Uint32Array)p=i.UNSIGNED_INT;else if(c instanceof Int32Array)p=i.INT;else if(c instanceof Int8Array)p=i.BYTE;else if(c instanceof Uint8Array)p=i.UNSIGNED_BYTE;else if(c instanceof Uint8ClampedArray)p=i.UNSIGNED_BYTE;else throw new Error("THREE.WebGLAttributes: Unsupported buffer data format: "+c);return{buffer:d,type:p,bytesPerElement:c.BYTES_PER_ELEMENT,version:o.version,size:u}}function n(o,l,c){let h=l.array,u=l.updateRanges;if(i.bindBuffer(c,o),u.length===0)i.bufferSubData(c,0,h);else{u.sort((p,_)=>p.start-_.start);let d=0;for(let p=1;p<u.length;p++){let _=u[d],v=u[p];v.start<=_.start+_.count+1?_.count=Math.max(_.count,v.start+v.count-_.start):(++d,u[d]=v)}u.length=d+1;for(let p=0,_=u.length;p<_;p++){let v=u[p];i.bufferSubData(c,v.start*h.BYTES_PER_ELEMENT,h,v.start,v.count)}l.clearUpdateRanges()}l.onUploadCallback()}function s(o){return o.isInterleavedBufferAttribute&&(o=o.data),e.get(o)}function r(o){o.isInterleavedBufferAttribute&&(o=o.data);let l=e.get(o);l&&(i.deleteBuffer(l.buffer),e.delete(o))}function a(o,l){if(o.isInterleavedBufferAttribute&&(o=o.data),o.isGLBufferAttribute){let h=e.get(o);(!h||h.version<o.version)&&e.set(o,{buffer:o.buffer,type:o.type,bytesPerElement:o.elementSize,version:o.version});return}let c=e.get(o);if(c===void 0)e.set(o,t(o,l));else if(c.version<o.version){if(c.size!==o.array.byteLength)throw new Error("THREE.WebGLAttributes: The size of the buffer attribute's array buffer does not match the original size. Resizing buffer attributes is not supported.");n(c.buffer,o,l),c.version=o.version}}return{get:s,remove:r,update:a}}var Am=`#ifdef USE_ALPHAHASH
	if ( diffuseColor.a < getAlphaHashThreshold( vPosition ) ) discard;
#endif`,Cm=`#ifdef USE_ALPHAHASH
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
#endif`,Rm=`#ifdef USE_ALPHAMAP
	diffuseColor.a *= texture2D( alphaMap, vAlphaMapUv ).g;
#endif`,Pm=`#ifdef USE_ALPHAMAP
	uniform sampler2D alphaMap;
#endif`,Im=`#ifdef USE_ALPHATEST
	#ifdef ALPHA_TO_COVERAGE
	diffuseColor.a = smoothstep( alphaTest, alphaTest + fwidth( diffuseColor.a ), diffuseColor.a );
	if ( diffuseColor.a == 0.0 ) discard;
	#else
	if ( diffuseColor.a < alphaTest ) discard;
	#endif
#endif`,Lm=`#ifdef USE_ALPHATEST
	uniform float alphaTest;
#endif`,Nm=`#ifdef USE_AOMAP
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
#endif`,Dm=`#ifdef USE_AOMAP
	uniform sampler2D aoMap;
	uniform float aoMapIntensity;
#endif`,km=`#ifdef USE_BATCHING
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
#endif`,Um=`#ifdef USE_BATCHING
	mat4 batchingMatrix = getBatchingMatrix( getIndirectIndex( gl_DrawID ) );
#endif`,Fm=`vec3 transformed = vec3( position );
#ifdef USE_ALPHAHASH
	vPosition = vec3( position );
#endif`,Om=`vec3 objectNormal = vec3( normal );
#ifdef USE_TANGENT
	vec3 objectTangent = vec3( tangent.xyz );
#endif`,Bm=`float G_BlinnPhong_Implicit( ) {
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
} // validated`,zm=`#ifdef USE_IRIDESCENCE
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
#endif`,Gm=`#ifdef USE_BUMPMAP
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
#endif`,Vm=`#if NUM_CLIPPING_PLANES > 0
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
#endif`,Hm=`#if NUM_CLIPPING_PLANES > 0
	varying vec3 vClipPosition;
	uniform vec4 clippingPlanes[ NUM_CLIPPING_PLANES ];
#endif`,$m=`#if NUM_CLIPPING_PLANES > 0
	varying vec3 vClipPosition;
#endif`,Wm=`#if NUM_CLIPPING_PLANES > 0
	vClipPosition = - mvPosition.xyz;
#endif`,Xm=`#if defined( USE_COLOR ) || defined( USE_COLOR_ALPHA )
	diffuseColor *= vColor;
#endif`,qm=`#if defined( USE_COLOR ) || defined( USE_COLOR_ALPHA )
	varying vec4 vColor;
#endif`,Ym=`#if defined( USE_COLOR ) || defined( USE_COLOR_ALPHA ) || defined( USE_INSTANCING_COLOR ) || defined( USE_BATCHING_COLOR )
	varying vec4 vColor;
#endif`,Zm=`#if defined( USE_COLOR ) || defined( USE_COLOR_ALPHA ) || defined( USE_INSTANCING_COLOR ) || defined( USE_BATCHING_COLOR )
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
#endif`,Jm=`#define PI 3.141592653589793
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
} // validated`,Km=`vec3 transformedNormal = objectNormal;
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
#endif`,jm=`#ifdef USE_DISPLACEMENTMAP
	uniform sampler2D displacementMap;
	uniform float displacementScale;
	uniform float displacementBias;
#endif`,Qm=`#ifdef USE_DISPLACEMENTMAP
	transformed += normalize( objectNormal ) * ( texture2D( displacementMap, vDisplacementMapUv ).x * displacementScale + displacementBias );
#endif`,eg=`#ifdef USE_EMISSIVEMAP
	vec4 emissiveColor = texture2D( emissiveMap, vEmissiveMapUv );
	#ifdef DECODE_VIDEO_TEXTURE_EMISSIVE
		emissiveColor = sRGBTransferEOTF( emissiveColor );
	#endif
	totalEmissiveRadiance *= emissiveColor.rgb;
#endif`,tg=`#ifdef USE_EMISSIVEMAP
	uniform sampler2D emissiveMap;
#endif`,ng="gl_FragColor = linearToOutputTexel( gl_FragColor );",ig=`vec4 LinearTransferOETF( in vec4 value ) {
	return value;
}
vec4 sRGBTransferEOTF( in vec4 value ) {
	return vec4( mix( pow( value.rgb * 0.9478672986 + vec3( 0.0521327014 ), vec3( 2.4 ) ), value.rgb * 0.0773993808, vec3( lessThanEqual( value.rgb, vec3( 0.04045 ) ) ) ), value.a );
}
vec4 sRGBTransferOETF( in vec4 value ) {
	return vec4( mix( pow( value.rgb, vec3( 0.41666 ) ) * 1.055 - vec3( 0.055 ), value.rgb * 12.92, vec3( lessThanEqual( value.rgb, vec3( 0.0031308 ) ) ) ), value.a );
}`,sg=`#ifdef USE_ENVMAP
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
#endif`,rg=`#ifdef USE_ENVMAP
	uniform float envMapIntensity;
	uniform mat3 envMapRotation;
	uniform samplerCube envMap;
	#ifdef ENVMAP_TYPE_PMREM
		float roughnessToMip( const in float roughness ) {
			float r = clamp( roughness, 0.0, 1.0 );
			return ENVMAP_MAX_LOD * r * ( 2.0 - r );
		}
	#endif
#endif`,ag=`#ifdef USE_ENVMAP
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
#endif`,og=`#ifdef USE_ENVMAP
	#if defined( USE_BUMPMAP ) || defined( USE_NORMALMAP ) || defined( PHONG ) || defined( LAMBERT )
		#define ENV_WORLDPOS
	#endif
	#ifdef ENV_WORLDPOS
		
		varying vec3 vWorldPosition;
	#else
		varying vec3 vReflect;
		uniform float refractionRatio;
	#endif
#endif`,lg=`#ifdef USE_ENVMAP
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
#endif`,cg=`#ifdef USE_FOG
	vFogDepth = - mvPosition.z;
#endif`,hg=`#ifdef USE_FOG
	varying float vFogDepth;
#endif`,ug=`#ifdef USE_FOG
	#ifdef FOG_EXP2
		float fogFactor = 1.0 - exp( - fogDensity * fogDensity * vFogDepth * vFogDepth );
	#else
		float fogFactor = smoothstep( fogNear, fogFar, vFogDepth );
	#endif
	gl_FragColor.rgb = mix( gl_FragColor.rgb, fogColor, fogFactor );
#endif`,dg=`#ifdef USE_FOG
	uniform vec3 fogColor;
	varying float vFogDepth;
	#ifdef FOG_EXP2
		uniform float fogDensity;
	#else
		uniform float fogNear;
		uniform float fogFar;
	#endif
#endif`,fg=`#ifdef USE_GRADIENTMAP
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
}`,pg=`#ifdef USE_LIGHTMAP
	uniform sampler2D lightMap;
	uniform float lightMapIntensity;
#endif`,mg=`LambertMaterial material;
material.diffuseColor = diffuseColor.rgb;
material.specularStrength = specularStrength;`,gg=`varying vec3 vViewPosition;
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
#define RE_IndirectDiffuse		RE_IndirectDiffuse_Lambert`,_g=`uniform bool receiveShadow;
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
#include <lightprobes_pars_fragment>`,vg=`#ifdef USE_ENVMAP
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
#endif`,xg=`ToonMaterial material;
material.diffuseColor = diffuseColor.rgb;`,yg=`varying vec3 vViewPosition;
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
#define RE_IndirectDiffuse		RE_IndirectDiffuse_Toon`,bg=`BlinnPhongMaterial material;
material.diffuseColor = diffuseColor.rgb;
material.specularColor = specular;
material.specularShininess = shininess;
material.specularStrength = specularStrength;`,Mg=`varying vec3 vViewPosition;
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
#define RE_IndirectDiffuse		RE_IndirectDiffuse_BlinnPhong`,wg=`PhysicalMaterial material;
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
#endif`,Sg=`uniform sampler2D dfgLUT;
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
}`,Tg=`
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
#endif`,Eg=`#if defined( RE_IndirectDiffuse )
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
#endif`,Ag=`#if defined( RE_IndirectDiffuse )
	#if defined( LAMBERT ) || defined( PHONG )
		irradiance += iblIrradiance;
	#endif
	RE_IndirectDiffuse( irradiance, geometryPosition, geometryNormal, geometryViewDir, geometryClearcoatNormal, material, reflectedLight );
#endif
#if defined( RE_IndirectSpecular )
	RE_IndirectSpecular( radiance, iblIrradiance, clearcoatRadiance, geometryPosition, geometryNormal, geometryViewDir, geometryClearcoatNormal, material, reflectedLight );
#endif`,Cg=`#if NUM_LIGHT_PROBE_GRIDS > 0
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
#endif`,Rg=`#if defined( USE_LOGARITHMIC_DEPTH_BUFFER )
	gl_FragDepth = vIsPerspective == 0.0 ? gl_FragCoord.z : log2( vFragDepth ) * logDepthBufFC * 0.5;
#endif`,Pg=`#if defined( USE_LOGARITHMIC_DEPTH_BUFFER )
	uniform float logDepthBufFC;
	varying float vFragDepth;
	varying float vIsPerspective;
#endif`,Ig=`#ifdef USE_LOGARITHMIC_DEPTH_BUFFER
	varying float vFragDepth;
	varying float vIsPerspective;
#endif`,Lg=`#ifdef USE_LOGARITHMIC_DEPTH_BUFFER
	vFragDepth = 1.0 + gl_Position.w;
	vIsPerspective = float( isPerspectiveMatrix( projectionMatrix ) );
#endif`,Ng=`#ifdef USE_MAP
	vec4 sampledDiffuseColor = texture2D( map, vMapUv );
	#ifdef DECODE_VIDEO_TEXTURE
		sampledDiffuseColor = sRGBTransferEOTF( sampledDiffuseColor );
	#endif
	diffuseColor *= sampledDiffuseColor;
#endif`,Dg=`#ifdef USE_MAP
	uniform sampler2D map;
#endif`,kg=`#if defined( USE_MAP ) || defined( USE_ALPHAMAP )
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
#endif`,Ug=`#if defined( USE_POINTS_UV )
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
#endif`,Fg=`float metalnessFactor = metalness;
#ifdef USE_METALNESSMAP
	vec4 texelMetalness = texture2D( metalnessMap, vMetalnessMapUv );
	metalnessFactor *= texelMetalness.b;
#endif`,Og=`#ifdef USE_METALNESSMAP
	uniform sampler2D metalnessMap;
#endif`,Bg=`#ifdef USE_INSTANCING_MORPH
	float morphTargetInfluences[ MORPHTARGETS_COUNT ];
	float morphTargetBaseInfluence = texelFetch( morphTexture, ivec2( 0, gl_InstanceID ), 0 ).r;
	for ( int i = 0; i < MORPHTARGETS_COUNT; i ++ ) {
		morphTargetInfluences[i] =  texelFetch( morphTexture, ivec2( i + 1, gl_InstanceID ), 0 ).r;
	}
#endif`,zg=`#if defined( USE_MORPHCOLORS )
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
#endif`,Gg=`#ifdef USE_MORPHNORMALS
	objectNormal *= morphTargetBaseInfluence;
	for ( int i = 0; i < MORPHTARGETS_COUNT; i ++ ) {
		if ( morphTargetInfluences[ i ] != 0.0 ) objectNormal += getMorph( gl_VertexID, i, 1 ).xyz * morphTargetInfluences[ i ];
	}
#endif`,Vg=`#ifdef USE_MORPHTARGETS
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
#endif`,Hg=`#ifdef USE_MORPHTARGETS
	transformed *= morphTargetBaseInfluence;
	for ( int i = 0; i < MORPHTARGETS_COUNT; i ++ ) {
		if ( morphTargetInfluences[ i ] != 0.0 ) transformed += getMorph( gl_VertexID, i, 0 ).xyz * morphTargetInfluences[ i ];
	}
#endif`,$g=`float faceDirection = gl_FrontFacing ? 1.0 : - 1.0;
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
vec3 nonPerturbedNormal = normal;`,Wg=`#ifdef USE_NORMALMAP_OBJECTSPACE
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
#endif`,Xg=`#ifndef FLAT_SHADED
	varying vec3 vNormal;
	#ifdef USE_TANGENT
		varying vec3 vTangent;
		varying vec3 vBitangent;
	#endif
#endif`,qg=`#ifndef FLAT_SHADED
	varying vec3 vNormal;
	#ifdef USE_TANGENT
		varying vec3 vTangent;
		varying vec3 vBitangent;
	#endif
#endif`,Yg=`#ifndef FLAT_SHADED
	vNormal = normalize( transformedNormal );
	#ifdef USE_TANGENT
		vTangent = normalize( transformedTangent );
		vBitangent = normalize( cross( vNormal, vTangent ) * tangent.w );
		#ifdef FLIP_SIDED
			vBitangent = - vBitangent;
		#endif
	#endif
#endif`,Zg=`#ifdef USE_NORMALMAP
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
#endif`,Jg=`#ifdef USE_CLEARCOAT
	vec3 clearcoatNormal = nonPerturbedNormal;
#endif`,Kg=`#ifdef USE_CLEARCOAT_NORMALMAP
	vec3 clearcoatMapN = texture2D( clearcoatNormalMap, vClearcoatNormalMapUv ).xyz * 2.0 - 1.0;
	clearcoatMapN.xy *= clearcoatNormalScale;
	clearcoatNormal = normalize( tbn2 * clearcoatMapN );
#endif`,jg=`#ifdef USE_CLEARCOATMAP
	uniform sampler2D clearcoatMap;
#endif
#ifdef USE_CLEARCOAT_NORMALMAP
	uniform sampler2D clearcoatNormalMap;
	uniform vec2 clearcoatNormalScale;
#endif
#ifdef USE_CLEARCOAT_ROUGHNESSMAP
	uniform sampler2D clearcoatRoughnessMap;
#endif`,Qg=`#ifdef USE_IRIDESCENCEMAP
	uniform sampler2D iridescenceMap;
#endif
#ifdef USE_IRIDESCENCE_THICKNESSMAP
	uniform sampler2D iridescenceThicknessMap;
#endif`,e0=`#ifdef OPAQUE
diffuseColor.a = 1.0;
#endif
#ifdef USE_TRANSMISSION
diffuseColor.a *= material.transmissionAlpha;
#endif
gl_FragColor = vec4( outgoingLight, diffuseColor.a );`,t0=`vec3 packNormalToRGB( const in vec3 normal ) {
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
}`,n0=`#ifdef PREMULTIPLIED_ALPHA
	gl_FragColor.rgb *= gl_FragColor.a;
#endif`,i0=`vec4 mvPosition = vec4( transformed, 1.0 );
#ifdef USE_BATCHING
	mvPosition = batchingMatrix * mvPosition;
#endif
#ifdef USE_INSTANCING
	mvPosition = instanceMatrix * mvPosition;
#endif
mvPosition = modelViewMatrix * mvPosition;
gl_Position = projectionMatrix * mvPosition;`,s0=`#ifdef DITHERING
	gl_FragColor.rgb = dithering( gl_FragColor.rgb );
#endif`,r0=`#ifdef DITHERING
	vec3 dithering( vec3 color ) {
		float grid_position = rand( gl_FragCoord.xy );
		vec3 dither_shift_RGB = vec3( 0.25 / 255.0, -0.25 / 255.0, 0.25 / 255.0 );
		dither_shift_RGB = mix( 2.0 * dither_shift_RGB, -2.0 * dither_shift_RGB, grid_position );
		return color + dither_shift_RGB;
	}
#endif`,a0=`float roughnessFactor = roughness;
#ifdef USE_ROUGHNESSMAP
	vec4 texelRoughness = texture2D( roughnessMap, vRoughnessMapUv );
	roughnessFactor *= texelRoughness.g;
#endif`,o0=`#ifdef USE_ROUGHNESSMAP
	uniform sampler2D roughnessMap;
#endif`,l0=`#if NUM_SPOT_LIGHT_COORDS > 0
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
#endif`,c0=`#if NUM_SPOT_LIGHT_COORDS > 0
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
#endif`,h0=`#if ( defined( USE_SHADOWMAP ) && ( NUM_DIR_LIGHT_SHADOWS > 0 || NUM_SUN_LIGHT_SHADOWS > 0 || NUM_POINT_LIGHT_SHADOWS > 0 ) ) || ( NUM_SPOT_LIGHT_COORDS > 0 )
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
#endif`,u0=`float getShadowMask() {
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
}`,d0=`#ifdef USE_SKINNING
	mat4 boneMatX = getBoneMatrix( skinIndex.x );
	mat4 boneMatY = getBoneMatrix( skinIndex.y );
	mat4 boneMatZ = getBoneMatrix( skinIndex.z );
	mat4 boneMatW = getBoneMatrix( skinIndex.w );
#endif`,f0=`#ifdef USE_SKINNING
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
#endif`,p0=`#ifdef USE_SKINNING
	vec4 skinVertex = bindMatrix * vec4( transformed, 1.0 );
	vec4 skinned = vec4( 0.0 );
	skinned += boneMatX * skinVertex * skinWeight.x;
	skinned += boneMatY * skinVertex * skinWeight.y;
	skinned += boneMatZ * skinVertex * skinWeight.z;
	skinned += boneMatW * skinVertex * skinWeight.w;
	transformed = ( bindMatrixInverse * skinned ).xyz;
#endif`,m0=`#ifdef USE_SKINNING
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
#endif`,g0=`float specularStrength;
#ifdef USE_SPECULARMAP
	vec4 texelSpecular = texture2D( specularMap, vSpecularMapUv );
	specularStrength = texelSpecular.r;
#else
	specularStrength = 1.0;
#endif`,_0=`#ifdef USE_SPECULARMAP
	uniform sampler2D specularMap;
#endif`,v0=`#if defined( TONE_MAPPING )
	gl_FragColor.rgb = toneMapping( gl_FragColor.rgb );
#endif`,x0=`#ifndef saturate
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
vec3 CustomToneMapping( vec3 color ) { return color; }`,y0=`#ifdef USE_TRANSMISSION
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
#endif`,b0=`#ifdef USE_TRANSMISSION
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
#endif`,M0=`#if defined( USE_UV ) || defined( USE_ANISOTROPY )
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
#endif`,w0=`#if defined( USE_UV ) || defined( USE_ANISOTROPY )
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
#endif`,S0=`#if defined( USE_UV ) || defined( USE_ANISOTROPY )
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
#endif`,T0=`#if defined( USE_ENVMAP ) || defined( DISTANCE ) || defined ( USE_SHADOWMAP ) || defined ( USE_TRANSMISSION ) || NUM_SPOT_LIGHT_COORDS > 0
	vec4 worldPosition = vec4( transformed, 1.0 );
	#ifdef USE_BATCHING
		worldPosition = batchingMatrix * worldPosition;
	#endif
	#ifdef USE_INSTANCING
		worldPosition = instanceMatrix * worldPosition;
	#endif
	worldPosition = modelMatrix * worldPosition;
#endif`,E0=`varying vec2 vUv;
uniform mat3 uvTransform;
void main() {
	vUv = ( uvTransform * vec3( uv, 1 ) ).xy;
	gl_Position = vec4( position.xy, 1.0, 1.0 );
}`,A0=`uniform sampler2D t2D;
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
}`,C0=`varying vec3 vWorldDirection;
#include <common>
void main() {
	vWorldDirection = transformDirection( position, modelMatrix );
	#include <begin_vertex>
	#include <project_vertex>
	gl_Position.z = gl_Position.w;
}`,R0=`uniform float backgroundBlurriness;
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
}`,P0=`varying vec3 vWorldDirection;
#include <common>
void main() {
	vWorldDirection = transformDirection( position, modelMatrix );
	#include <begin_vertex>
	#include <project_vertex>
	gl_Position.z = gl_Position.w;
}`,I0=`uniform samplerCube tCube;
uniform float tFlip;
uniform float opacity;
varying vec3 vWorldDirection;
void main() {
	vec4 texColor = textureCube( tCube, vec3( tFlip * vWorldDirection.x, vWorldDirection.yz ) );
	gl_FragColor = texColor;
	gl_FragColor.a *= opacity;
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
}`,L0=`#include <common>
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
}`,N0=`#if DEPTH_PACKING == 3200
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
}`,D0=`#define DISTANCE
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
}`,k0=`#define DISTANCE
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
}`,U0=`varying vec3 vWorldDirection;
#include <common>
void main() {
	vWorldDirection = transformDirection( position, modelMatrix );
	#include <begin_vertex>
	#include <project_vertex>
}`,F0=`uniform sampler2D tEquirect;
varying vec3 vWorldDirection;
#include <common>
void main() {
	vec3 direction = normalize( vWorldDirection );
	vec2 sampleUV = equirectUv( direction );
	gl_FragColor = texture2D( tEquirect, sampleUV );
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
}`,O0=`uniform float scale;
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
}`,B0=`uniform vec3 diffuse;
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
}`,z0=`#include <common>
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
}`,G0=`uniform vec3 diffuse;
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
}`,V0=`#define LAMBERT
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
}`,H0=`#define LAMBERT
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
}`,$0=`#define MATCAP
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
}`,W0=`#define MATCAP
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
}`,X0=`#define NORMAL
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
}`,q0=`#define NORMAL
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
}`,Y0=`#define PHONG
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
}`,Z0=`#define PHONG
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
}`,J0=`#define STANDARD
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
}`,K0=`#define STANDARD
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
}`,j0=`#define TOON
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
}`,Q0=`#define TOON
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
}`,e_=`uniform float size;
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
}`,t_=`uniform vec3 diffuse;
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
}`,n_=`#include <common>
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
}`,i_=`uniform vec3 color;
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
}`,s_=`uniform float rotation;
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
}`,r_=`uniform vec3 diffuse;
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
}`,qe={alphahash_fragment:Am,alphahash_pars_fragment:Cm,alphamap_fragment:Rm,alphamap_pars_fragment:Pm,alphatest_fragment:Im,alphatest_pars_fragment:Lm,aomap_fragment:Nm,aomap_pars_fragment:Dm,batching_pars_vertex:km,batching_vertex:Um,begin_vertex:Fm,beginnormal_vertex:Om,bsdfs:Bm,iridescence_fragment:zm,bumpmap_pars_fragment:Gm,clipping_planes_fragment:Vm,clipping_planes_pars_fragment:Hm,clipping_planes_pars_vertex:$m,clipping_planes_vertex:Wm,color_fragment:Xm,color_pars_fragment:qm,color_pars_vertex:Ym,color_vertex:Zm,common:Jm,defaultnormal_vertex:Km,displacementmap_pars_vertex:jm,displacementmap_vertex:Qm,emissivemap_fragment:eg,emissivemap_pars_fragment:tg,colorspace_fragment:ng,colorspace_pars_fragment:ig,envmap_fragment:sg,envmap_common_pars_fragment:rg,envmap_pars_fragment:ag,envmap_pars_vertex:og,envmap_physical_pars_fragment:vg,envmap_vertex:lg,fog_vertex:cg,fog_pars_vertex:hg,fog_fragment:ug,fog_pars_fragment:dg,gradientmap_pars_fragment:fg,lightmap_pars_fragment:pg,lights_lambert_fragment:mg,lights_lambert_pars_fragment:gg,lights_pars_begin:_g,lights_toon_fragment:xg,lights_toon_pars_fragment:yg,lights_phong_fragment:bg,lights_phong_pars_fragment:Mg,lights_physical_fragment:wg,lights_physical_pars_fragment:Sg,lights_fragment_begin:Tg,lights_fragment_maps:Eg,lights_fragment_end:Ag,lightprobes_pars_fragment:Cg,logdepthbuf_fragment:Rg,logdepthbuf_pars_fragment:Pg,logdepthbuf_pars_vertex:Ig,logdepthbuf_vertex:Lg,map_fragment:Ng,map_pars_fragment:Dg,map_particle_fragment:kg,map_particle_pars_fragment:Ug,metalnessmap_fragment:Fg,metalnessmap_pars_fragment:Og,morphinstance_vertex:Bg,morphcolor_vertex:zg,morphnormal_vertex:Gg,morphtarget_pars_vertex:Vg,morphtarget_vertex:Hg,normal_fragment_begin:$g,normal_fragment_maps:Wg,normal_pars_fragment:Xg,normal_pars_vertex:qg,normal_vertex:Yg,normalmap_pars_fragment:Zg,clearcoat_normal_fragment_begin:Jg,clearcoat_normal_fragment_maps:Kg,clearcoat_pars_fragment:jg,iridescence_pars_fragment:Qg,opaque_fragment:e0,packing:t0,premultiplied_alpha_fragment:n0,project_vertex:i0,dithering_fragment:s0,dithering_pars_fragment:r0,roughnessmap_fragment:a0,roughnessmap_pars_fragment:o0,shadowmap_pars_fragment:l0,shadowmap_pars_vertex:c0,shadowmap_vertex:h0,shadowmask_pars_fragment:u0,skinbase_vertex:d0,skinning_pars_vertex:f0,skinning_vertex:p0,skinnormal_vertex:m0,specularmap_fragment:g0,specularmap_pars_fragment:_0,tonemapping_fragment:v0,tonemapping_pars_fragment:x0,transmission_fragment:y0,transmission_pars_fragment:b0,uv_pars_fragment:M0,uv_pars_vertex:w0,uv_vertex:S0,worldpos_vertex:T0,background_vert:E0,background_frag:A0,backgroundCube_vert:C0,backgroundCube_frag:R0,cube_vert:P0,cube_frag:I0,depth_vert:L0,depth_frag:N0,distance_vert:D0,distance_frag:k0,equirect_vert:U0,equirect_frag:F0,linedashed_vert:O0,linedashed_frag:B0,meshbasic_vert:z0,meshbasic_frag:G0,meshlambert_vert:V0,meshlambert_frag:H0,meshmatcap_vert:$0,meshmatcap_frag:W0,meshnormal_vert:X0,meshnormal_frag:q0,meshphong_vert:Y0,meshphong_frag:Z0,meshphysical_vert:J0,meshphysical_frag:K0,meshtoon_vert:j0,meshtoon_frag:Q0,points_vert:e_,points_frag:t_,shadow_vert:n_,shadow_frag:i_,sprite_vert:s_,sprite_frag:r_},Me={common:{diffuse:{value:new je(16777215)},opacity:{value:1},map:{value:null},mapTransform:{value:new Ge},alphaMap:{value:null},alphaMapTransform:{value:new Ge},alphaTest:{value:0}},specularmap:{specularMap:{value:null},specularMapTransform:{value:new Ge}},envmap:{envMap:{value:null},envMapRotation:{value:new Ge},reflectivity:{value:1},ior:{value:1.5},refractionRatio:{value:.98},dfgLUT:{value:null}},aomap:{aoMap:{value:null},aoMapIntensity:{value:1},aoMapTransform:{value:new Ge}},lightmap:{lightMap:{value:null},lightMapIntensity:{value:1},lightMapTransform:{value:new Ge}},bumpmap:{bumpMap:{value:null},bumpMapTransform:{value:new Ge},bumpScale:{value:1}},normalmap:{normalMap:{value:null},normalMapTransform:{value:new Ge},normalScale:{value:new et(1,1)}},displacementmap:{displacementMap:{value:null},displacementMapTransform:{value:new Ge},displacementScale:{value:1},displacementBias:{value:0}},emissivemap:{emissiveMap:{value:null},emissiveMapTransform:{value:new Ge}},metalnessmap:{metalnessMap:{value:null},metalnessMapTransform:{value:new Ge}},roughnessmap:{roughnessMap:{value:null},roughnessMapTransform:{value:new Ge}},gradientmap:{gradientMap:{value:null}},fog:{fogDensity:{value:25e-5},fogNear:{value:1},fogFar:{value:2e3},fogColor:{value:new je(16777215)}},lights:{ambientLightColor:{value:[]},lightProbe:{value:[]},sunLights:{value:[],properties:{direction:{},color:{}}},sunLightShadows:{value:[],properties:{shadowIntensity:1,shadowBias:{},shadowNormalBias:{},shadowRadius:{},shadowMapSize:{}}},sunShadowMatrix:{value:[]},sunShadowCascade:{value:[]},directionalLights:{value:[],properties:{direction:{},color:{}}},directionalLightShadows:{value:[],properties:{shadowIntensity:1,shadowBias:{},shadowNormalBias:{},shadowRadius:{},shadowMapSize:{}}},directionalShadowMatrix:{value:[]},spotLights:{value:[],properties:{color:{},position:{},direction:{},distance:{},coneCos:{},penumbraCos:{},decay:{}}},spotLightShadows:{value:[],properties:{shadowIntensity:1,shadowBias:{},shadowNormalBias:{},shadowRadius:{},shadowMapSize:{}}},spotLightMap:{value:[]},spotLightMatrix:{value:[]},pointLights:{value:[],properties:{color:{},position:{},decay:{},distance:{}}},pointLightShadows:{value:[],properties:{shadowIntensity:1,shadowBias:{},shadowNormalBias:{},shadowRadius:{},shadowMapSize:{},shadowCameraNear:{},shadowCameraFar:{}}},pointShadowMatrix:{value:[]},hemisphereLights:{value:[],properties:{direction:{},skyColor:{},groundColor:{}}},rectAreaLights:{value:[],properties:{color:{},position:{},width:{},height:{}}},ltc_1:{value:null},ltc_2:{value:null},probesSH:{value:[]},probesMin:{value:[]},probesMax:{value:[]},probesResolution:{value:[]}},points:{diffuse:{value:new je(16777215)},opacity:{value:1},size:{value:1},scale:{value:1},map:{value:null},alphaMap:{value:null},alphaMapTransform:{value:new Ge},alphaTest:{value:0},uvTransform:{value:new Ge}},sprite:{diffuse:{value:new je(16777215)},opacity:{value:1},center:{value:new et(.5,.5)},rotation:{value:0},map:{value:null},mapTransform:{value:new Ge},alphaMap:{value:null},alphaMapTransform:{value:new Ge},alphaTest:{value:0}}},Jn={basic:{uniforms:$t([Me.common,Me.specularmap,Me.envmap,Me.aomap,Me.lightmap,Me.fog]),vertexShader:qe.meshbasic_vert,fragmentShader:qe.meshbasic_frag},lambert:{uniforms:$t([Me.common,Me.specularmap,Me.envmap,Me.aomap,Me.lightmap,Me.emissivemap,Me.bumpmap,Me.normalmap,Me.displacementmap,Me.fog,Me.lights,{emissive:{value:new je(0)},envMapIntensity:{value:1}}]),vertexShader:qe.meshlambert_vert,fragmentShader:qe.meshlambert_frag},phong:{uniforms:$t([Me.common,Me.specularmap,Me.envmap,Me.aomap,Me.lightmap,Me.emissivemap,Me.bumpmap,Me.normalmap,Me.displacementmap,Me.fog,Me.lights,{emissive:{value:new je(0)},specular:{value:new je(1118481)},shininess:{value:30},envMapIntensity:{value:1}}]),vertexShader:qe.meshphong_vert,fragmentShader:qe.meshphong_frag},standard:{uniforms:$t([Me.common,Me.envmap,Me.aomap,Me.lightmap,Me.emissivemap,Me.bumpmap,Me.normalmap,Me.displacementmap,Me.roughnessmap,Me.metalnessmap,Me.fog,Me.lights,{emissive:{value:new je(0)},roughness:{value:1},metalness:{value:0},envMapIntensity:{value:1}}]),vertexShader:qe.meshphysical_vert,fragmentShader:qe.meshphysical_frag},toon:{uniforms:$t([Me.common,Me.aomap,Me.lightmap,Me.emissivemap,Me.bumpmap,Me.normalmap,Me.displacementmap,Me.gradientmap,Me.fog,Me.lights,{emissive:{value:new je(0)}}]),vertexShader:qe.meshtoon_vert,fragmentShader:qe.meshtoon_frag},matcap:{uniforms:$t([Me.common,Me.bumpmap,Me.normalmap,Me.displacementmap,Me.fog,{matcap:{value:null}}]),vertexShader:qe.meshmatcap_vert,fragmentShader:qe.meshmatcap_frag},points:{uniforms:$t([Me.points,Me.fog]),vertexShader:qe.points_vert,fragmentShader:qe.points_frag},dashed:{uniforms:$t([Me.common,Me.fog,{scale:{value:1},dashSize:{value:1},totalSize:{value:2}}]),vertexShader:qe.linedashed_vert,fragmentShader:qe.linedashed_frag},depth:{uniforms:$t([Me.common,Me.displacementmap]),vertexShader:qe.depth_vert,fragmentShader:qe.depth_frag},normal:{uniforms:$t([Me.common,Me.bumpmap,Me.normalmap,Me.displacementmap,{opacity:{value:1}}]),vertexShader:qe.meshnormal_vert,fragmentShader:qe.meshnormal_frag},sprite:{uniforms:$t([Me.sprite,Me.fog]),vertexShader:qe.sprite_vert,fragmentShader:qe.sprite_frag},background:{uniforms:{uvTransform:{value:new Ge},t2D:{value:null},backgroundIntensity:{value:1}},vertexShader:qe.background_vert,fragmentShader:qe.background_frag},backgroundCube:{uniforms:{envMap:{value:null},backgroundBlurriness:{value:0},backgroundIntensity:{value:1},backgroundRotation:{value:new Ge}},vertexShader:qe.backgroundCube_vert,fragmentShader:qe.backgroundCube_frag},cube:{uniforms:{tCube:{value:null},tFlip:{value:-1},opacity:{value:1}},vertexShader:qe.cube_vert,fragmentShader:qe.cube_frag},equirect:{uniforms:{tEquirect:{value:null}},vertexShader:qe.equirect_vert,fragmentShader:qe.equirect_frag},distance:{uniforms:$t([Me.common,Me.displacementmap,{referencePosition:{value:new W},nearDistance:{value:1},farDistance:{value:1e3}}]),vertexShader:qe.distance_vert,fragmentShader:qe.distance_frag},shadow:{uniforms:$t([Me.lights,Me.fog,{color:{value:new je(0)},opacity:{value:1}}]),vertexShader:qe.shadow_vert,fragmentShader:qe.shadow_frag}};Jn.physical={uniforms:$t([Jn.standard.uniforms,{clearcoat:{value:0},clearcoatMap:{value:null},clearcoatMapTransform:{value:new Ge},clearcoatNormalMap:{value:null},clearcoatNormalMapTransform:{value:new Ge},clearcoatNormalScale:{value:new et(1,1)},clearcoatRoughness:{value:0},clearcoatRoughnessMap:{value:null},clearcoatRoughnessMapTransform:{value:new Ge},diffuseRoughness:{value:0},diffuseRoughnessMap:{value:null},diffuseRoughnessMapTransform:{value:new Ge},dispersion:{value:0},retroreflectivity:{value:0},iridescence:{value:0},iridescenceMap:{value:null},iridescenceMapTransform:{value:new Ge},iridescenceIOR:{value:1.3},iridescenceThicknessMinimum:{value:100},iridescenceThicknessMaximum:{value:400},iridescenceThicknessMap:{value:null},iridescenceThicknessMapTransform:{value:new Ge},sheen:{value:0},sheenColor:{value:new je(0)},sheenColorMap:{value:null},sheenColorMapTransform:{value:new Ge},sheenRoughness:{value:1},sheenRoughnessMap:{value:null},sheenRoughnessMapTransform:{value:new Ge},transmission:{value:0},transmissionMap:{value:null},transmissionMapTransform:{value:new Ge},transmissionSamplerSize:{value:new et},transmissionSamplerMap:{value:null},thickness:{value:0},thicknessMap:{value:null},thicknessMapTransform:{value:new Ge},attenuationDistance:{value:0},attenuationColor:{value:new je(0)},specularColor:{value:new je(1,1,1)},specularColorMap:{value:null},specularColorMapTransform:{value:new Ge},specularIntensity:{value:1},specularIntensityMap:{value:null},specularIntensityMapTransform:{value:new Ge},anisotropyVector:{value:new et},anisotropyMap:{value:null},anisotropyMapTransform:{value:new Ge}}]),vertexShader:qe.meshphysical_vert,fragmentShader:qe.meshphysical_frag};var tl={r:0,b:0,g:0},a_=new at,Wd=new Ge;Wd.set(-1,0,0,0,1,0,0,0,1);function o_(i,e,t,n,s,r){let a=new je(0),o=s===!0?0:1,l,c,h=null,u=0,d=null;function p(M){let C=M.isScene===!0?M.background:null;if(C&&C.isTexture){let w=M.backgroundBlurriness>0;C=e.get(C,w)}return C}function _(M){let C=!1,w=p(M);w===null?m(a,o):w&&w.isColor&&(m(w,1),C=!0);let E=i.xr.getEnvironmentBlendMode();E==="additive"?t.buffers.color.setClear(0,0,0,1,r):E==="alpha-blend"&&t.buffers.color.setClear(0,0,0,0,r),(i.autoClear||C)&&(t.buffers.depth.setTest(!0),t.buffers.depth.setMask(!0),t.buffers.color.setMask(!0),i.clear(i.autoClearColor,i.autoClearDepth,i.autoClearStencil))}function v(M,C){let w=p(C);w&&w.isCubeTexture?(c===void 0&&(c=new vt(new zs(1,1,1),new Xn({name:"BackgroundCubeMaterial",uniforms:us(Jn.backgroundCube.uniforms),vertexShader:Jn.backgroundCube.vertexShader,fragmentShader:Jn.backgroundCube.fragmentShader,side:Kt,depthTest:!1,depthWrite:!1,fog:!1,allowOverride:!1})),c.geometry.deleteAttribute("normal"),c.geometry.deleteAttribute("uv"),c.onBeforeRender=function(E,T,x){this.matrixWorld.copyPosition(x.matrixWorld)},Object.defineProperty(c.material,"envMap",{get:function(){return this.uniforms.envMap.value}}),n.update(c)),c.material.uniforms.envMap.value=w,c.material.uniforms.backgroundBlurriness.value=C.backgroundBlurriness,c.material.uniforms.backgroundIntensity.value=C.backgroundIntensity,c.material.uniforms.backgroundRotation.value.setFromMatrix4(a_.makeRotationFromEuler(C.backgroundRotation)).transpose(),w.isRenderTargetTexture===!1&&c.material.uniforms.backgroundRotation.value.premultiply(Wd),c.material.toneMapped=Ke.getTransfer(w.colorSpace)!==it,(h!==w||u!==w.version||d!==i.toneMapping)&&(c.material.needsUpdate=!0,h=w,u=w.version,d=i.toneMapping),c.layers.enableAll(),M.unshift(c,c.geometry,c.material,0,0,null)):w&&w.isTexture&&(l===void 0&&(l=new vt(new Er(2,2),new Xn({name:"BackgroundMaterial",uniforms:us(Jn.background.uniforms),vertexShader:Jn.background.vertexShader,fragmentShader:Jn.background.fragmentShader,side:Gi,depthTest:!1,depthWrite:!1,fog:!1,allowOverride:!1})),l.geometry.deleteAttribute("normal"),Object.defineProperty(l.material,"map",{get:function(){return this.uniforms.t2D.value}}),n.update(l)),l.material.uniforms.t2D.value=w,l.material.uniforms.backgroundIntensity.value=C.backgroundIntensity,l.material.toneMapped=Ke.getTransfer(w.colorSpace)!==it,w.matrixAutoUpdate===!0&&w.updateMatrix(),l.material.uniforms.uvTransform.value.copy(w.matrix),(h!==w||u!==w.version||d!==i.toneMapping)&&(l.material.needsUpdate=!0,h=w,u=w.version,d=i.toneMapping),l.layers.enableAll(),M.unshift(l,l.geometry,l.material,0,0,null))}function m(M,C){M.getRGB(tl,Wc(i)),t.buffers.color.setClear(tl.r,tl.g,tl.b,C,r)}function g(){c!==void 0&&(c.geometry.dispose(),c.material.dispose(),c=void 0),l!==void 0&&(l.geometry.dispose(),l.material.dispose(),l=void 0)}return{getClearColor:function(){return a},setClearColor:function(M,C=1){a.set(M),o=C,m(a,o)},getClearAlpha:function(){return o},setClearAlpha:function(M){o=M,m(a,o)},render:_,addToRenderList:v,dispose:g}}function l_(i,e){let t=i.getParameter(i.MAX_VERTEX_ATTRIBS),n={},s=d(null),r=s,a=!1;function o(z,U,J,S,D){let F=!1,G=u(z,S,J,U);r!==G&&(r=G,c(r.object)),F=p(z,S,J,D),F&&_(z,S,J,D),D!==null&&e.update(D,i.ELEMENT_ARRAY_BUFFER),(F||a)&&(a=!1,w(z,U,J,S),D!==null&&i.bindBuffer(i.ELEMENT_ARRAY_BUFFER,e.get(D).buffer))}function l(){return i.createVertexArray()}function c(z){return i.bindVertexArray(z)}function h(z){return i.deleteVertexArray(z)}function u(z,U,J,S){let D=S.wireframe===!0,F=n[U.id];F===void 0&&(F={},n[U.id]=F);let G=z.isInstancedMesh===!0?z.id:0,H=F[G];H===void 0&&(H={},F[G]=H);let $=H[J.id];$===void 0&&($={},H[J.id]=$);let I=$[D];return I===void 0&&(I=d(l()),$[D]=I),I}function d(z){let U=[],J=[],S=[];for(let D=0;D<t;D++)U[D]=0,J[D]=0,S[D]=0;return{geometry:null,program:null,wireframe:!1,newAttributes:U,enabledAttributes:J,attributeDivisors:S,object:z,attributes:{},index:null}}function p(z,U,J,S){let D=r.attributes,F=U.attributes,G=0,H=J.getAttributes();for(let $ in H)if(H[$].location>=0){let K=D[$],oe=F[$];if(oe===void 0&&($==="instanceMatrix"&&z.instanceMatrix&&(oe=z.instanceMatrix),$==="instanceColor"&&z.instanceColor&&(oe=z.instanceColor)),K===void 0||K.attribute!==oe||oe&&K.data!==oe.data)return!0;G++}return r.attributesNum!==G||r.index!==S}function _(z,U,J,S){let D={},F=U.attributes,G=0,H=J.getAttributes();for(let $ in H)if(H[$].location>=0){let K=F[$];K===void 0&&($==="instanceMatrix"&&z.instanceMatrix&&(K=z.instanceMatrix),$==="instanceColor"&&z.instanceColor&&(K=z.instanceColor));let oe={};oe.attribute=K,K&&K.data&&(oe.data=K.data),D[$]=oe,G++}r.attributes=D,r.attributesNum=G,r.index=S}function v(){let z=r.newAttributes;for(let U=0,J=z.length;U<J;U++)z[U]=0}function m(z){g(z,0)}function g(z,U){let J=r.newAttributes,S=r.enabledAttributes,D=r.attributeDivisors;J[z]=1,S[z]===0&&(i.enableVertexAttribArray(z),S[z]=1),D[z]!==U&&(i.vertexAttribDivisor(z,U),D[z]=U)}function M(){let z=r.newAttributes,U=r.enabledAttributes;for(let J=0,S=U.length;J<S;J++)U[J]!==z[J]&&(i.disableVertexAttribArray(J),U[J]=0)}function C(z,U,J,S,D,F,G){G===!0?i.vertexAttribIPointer(z,U,J,D,F):i.vertexAttribPointer(z,U,J,S,D,F)}function w(z,U,J,S){v();let D=S.attributes,F=J.getAttributes(),G=U.defaultAttributeValues;for(let H in F){let $=F[H];if($.location>=0){let I=D[H];if(I===void 0&&(H==="instanceMatrix"&&z.instanceMatrix&&(I=z.instanceMatrix),H==="instanceColor"&&z.instanceColor&&(I=z.instanceColor)),I!==void 0){let K=I.normalized,oe=I.itemSize,pe=e.get(I);if(pe===void 0)continue;let Q=pe.buffer,he=pe.type,Te=pe.bytesPerElement,ke=he===i.INT||he===i.UNSIGNED_INT||I.gpuType===xo;if(I.isInterleavedBufferAttribute){let we=I.data,$e=we.isInterleavedBuffer===!0?we.stride:we.itemSize,St=I.offset;if(we.isInstancedInterleavedBuffer||we.isInstancedBufferAttribute){for(let Be=0;Be<$.locationSize;Be++)g($.location+Be,we.meshPerAttribute);z.isInstancedMesh!==!0&&S._maxInstanceCount===void 0&&(S._maxInstanceCount=we.meshPerAttribute*we.count)}else for(let Be=0;Be<$.locationSize;Be++)m($.location+Be);i.bindBuffer(i.ARRAY_BUFFER,Q);for(let Be=0;Be<$.locationSize;Be++)C($.location+Be,oe/$.locationSize,he,K,$e*Te,(St+oe/$.locationSize*Be)*Te,ke)}else{if(I.isInstancedBufferAttribute){for(let we=0;we<$.locationSize;we++)g($.location+we,I.meshPerAttribute);z.isInstancedMesh!==!0&&S._maxInstanceCount===void 0&&(S._maxInstanceCount=I.meshPerAttribute*I.count)}else for(let we=0;we<$.locationSize;we++)m($.location+we);i.bindBuffer(i.ARRAY_BUFFER,Q);for(let we=0;we<$.locationSize;we++)C($.location+we,oe/$.locationSize,he,K,oe*Te,oe/$.locationSize*we*Te,ke)}}else if(G!==void 0){let K=G[H];if(K!==void 0)switch(K.length){case 2:i.vertexAttrib2fv($.location,K);break;case 3:i.vertexAttrib3fv($.location,K);break;case 4:i.vertexAttrib4fv($.location,K);break;default:i.vertexAttrib1fv($.location,K)}}}}M()}function E(){X();for(let z in n){let U=n[z];for(let J in U){let S=U[J];for(let D in S){let F=S[D];for(let G in F)h(F[G].object),delete F[G];delete S[D]}}delete n[z]}}function T(z){if(n[z.id]===void 0)return;let U=n[z.id];for(let J in U){let S=U[J];for(let D in S){let F=S[D];for(let G in F)h(F[G].object),delete F[G];delete S[D]}}delete n[z.id]}function x(z){for(let U in n){let J=n[U];for(let S in J){let D=J[S];if(D[z.id]===void 0)continue;let F=D[z.id];for(let G in F)h(F[G].object),delete F[G];delete D[z.id]}}}function A(z){for(let U in n){let J=n[U],S=z.isInstancedMesh===!0?z.id:0,D=J[S];if(D!==void 0){for(let F in D){let G=D[F];for(let H in G)h(G[H].object),delete G[H];delete D[F]}delete J[S],Object.keys(J).length===0&&delete n[U]}}}function X(){k(),a=!0,r!==s&&(r=s,c(r.object))}function k(){s.geometry=null,s.program=null,s.wireframe=!1}return{setup:o,reset:X,resetDefaultState:k,dispose:E,releaseStatesOfGeometry:T,releaseStatesOfObject:A,releaseStatesOfProgram:x,initAttributes:v,enableAttribute:m,disableUnusedAttributes:M}}function c_(i,e,t){let n;function s(l){n=l}function r(l,c){i.drawArrays(n,l,c),t.update(c,n,1)}function a(l,c,h){h!==0&&(i.drawArraysInstanced(n,l,c,h),t.update(c,n,h))}function o(l,c,h){if(h===0)return;e.get("WEBGL_multi_draw").multiDrawArraysWEBGL(n,l,0,c,0,h);let d=0;for(let p=0;p<h;p++)d+=c[p];t.update(d,n,1)}this.setMode=s,this.render=r,this.renderInstances=a,this.renderMultiDraw=o}function h_(i,e,t,n){let s;function r(){if(s!==void 0)return s;if(e.has("EXT_texture_filter_anisotropic")===!0){let x=e.get("EXT_texture_filter_anisotropic");s=i.getParameter(x.MAX_TEXTURE_MAX_ANISOTROPY_EXT)}else s=0;return s}function a(x){return!(x!==On&&n.convert(x)!==i.getParameter(i.IMPLEMENTATION_COLOR_READ_FORMAT))}function o(x){let A=x===Fn&&(e.has("EXT_color_buffer_half_float")||e.has("EXT_color_buffer_float"));return!(x!==mn&&x!==Un&&!A&&n.convert(x)!==i.getParameter(i.IMPLEMENTATION_COLOR_READ_TYPE))}function l(x){if(x==="highp"){if(i.getShaderPrecisionFormat(i.VERTEX_SHADER,i.HIGH_FLOAT).precision>0&&i.getShaderPrecisionFormat(i.FRAGMENT_SHADER,i.HIGH_FLOAT).precision>0)return"highp";x="mediump"}return x==="mediump"&&i.getShaderPrecisionFormat(i.VERTEX_SHADER,i.MEDIUM_FLOAT).precision>0&&i.getShaderPrecisionFormat(i.FRAGMENT_SHADER,i.MEDIUM_FLOAT).precision>0?"mediump":"lowp"}let c=t.precision!==void 0?t.precision:"highp",h=l(c);h!==c&&(Oe("WebGLRenderer:",c,"not supported, using",h,"instead."),c=h);let u=t.reversedDepthBuffer===!0&&e.has("EXT_clip_control"),d=t.logarithmicDepthBuffer===!0&&u===!1;t.reversedDepthBuffer===!0&&u===!1&&Oe("WebGLRenderer: Unable to use reversed depth buffer due to missing EXT_clip_control extension. Fallback to default depth buffer."),t.logarithmicDepthBuffer===!0&&u===!0&&Oe("WebGLRenderer: Logarithmic depth buffer is ignored when reversed depth buffer is enabled.");let p=i.getParameter(i.MAX_TEXTURE_IMAGE_UNITS),_=i.getParameter(i.MAX_VERTEX_TEXTURE_IMAGE_UNITS),v=i.getParameter(i.MAX_TEXTURE_SIZE),m=i.getParameter(i.MAX_CUBE_MAP_TEXTURE_SIZE),g=i.getParameter(i.MAX_VERTEX_ATTRIBS),M=i.getParameter(i.MAX_VERTEX_UNIFORM_VECTORS),C=i.getParameter(i.MAX_VARYING_VECTORS),w=i.getParameter(i.MAX_FRAGMENT_UNIFORM_VECTORS),E=i.getParameter(i.MAX_SAMPLES),T=i.getParameter(i.SAMPLES);return{isWebGL2:!0,getMaxAnisotropy:r,getMaxPrecision:l,textureFormatReadable:a,textureTypeReadable:o,precision:c,logarithmicDepthBuffer:d,reversedDepthBuffer:u,maxTextures:p,maxVertexTextures:_,maxTextureSize:v,maxCubemapSize:m,maxAttributes:g,maxVertexUniforms:M,maxVaryings:C,maxFragmentUniforms:w,maxSamples:E,samples:T}}function u_(i){let e=this,t=null,n=0,s=!1,r=!1,a=new Nn,o=new Ge,l={value:null,needsUpdate:!1};this.uniform=l,this.numPlanes=0,this.numIntersection=0,this.init=function(u,d){let p=u.length!==0||d||n!==0||s;return s=d,n=u.length,p},this.beginShadows=function(){r=!0,h(null)},this.endShadows=function(){r=!1},this.setGlobalState=function(u,d){t=h(u,d,0)},this.setState=function(u,d,p){let _=u.clippingPlanes,v=u.clipIntersection,m=u.clipShadows,g=i.get(u);if(!s||_===null||_.length===0||r&&!m)r?h(null):c();else{let M=r?0:n,C=M*4,w=g.clippingState||null;l.value=w,w=h(_,d,C,p);for(let E=0;E!==C;++E)w[E]=t[E];g.clippingState=w,this.numIntersection=v?this.numPlanes:0,this.numPlanes+=M}};function c(){l.value!==t&&(l.value=t,l.needsUpdate=n>0),e.numPlanes=n,e.numIntersection=0}function h(u,d,p,_){let v=u!==null?u.length:0,m=null;if(v!==0){if(m=l.value,_!==!0||m===null){let g=p+v*4,M=d.matrixWorldInverse;o.getNormalMatrix(M),(m===null||m.length<g)&&(m=new Float32Array(g));for(let C=0,w=p;C!==v;++C,w+=4)a.copy(u[C]).applyMatrix4(M,o),a.normal.toArray(m,w),m[w+3]=a.constant}l.value=m,l.needsUpdate=!0}return e.numPlanes=v,e.numIntersection=0,m}}var Gr=class extends dn{constructor(e=1,t={}){super(e,e,t),this.isWebGLCubeRenderTarget=!0;let n={width:e,height:e,depth:1},s=[n,n,n,n,n,n];this.texture=new wr(s),this._setTextureOptions(t),this.texture.isRenderTargetTexture=!0}fromEquirectangularTexture(e,t){this.texture.type=t.type,this.texture.colorSpace=t.colorSpace,this.texture.generateMipmaps=t.generateMipmaps,this.texture.minFilter=t.minFilter,this.texture.magFilter=t.magFilter;let n={uniforms:{tEquirect:{value:null}},vertexShader:`

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
			`},s=new zs(5,5,5),r=new Xn({name:"CubemapFromEquirect",uniforms:us(n.uniforms),vertexShader:n.vertexShader,fragmentShader:n.fragmentShader,side:Kt,blending:os});r.uniforms.tEquirect.value=t;let a=new vt(s,r),o=t.minFilter;return t.minFilter===fi&&(t.minFilter=Jt),new Gs(1,10,this).update(e,a),t.minFilter=o,a.geometry.dispose(),a.material.dispose(),this}clear(e,t=!0,n=!0,s=!0){let r=e.getRenderTarget();for(let a=0;a<6;a++)e.setRenderTarget(this,a),e.clear(t,n,s);e.setRenderTarget(r)}},wd=256,d_=3,f_=20,Xd=256,qd=16,p_=3,m_=new W,g_=new je,il=class i{constructor(e){this._renderer=e,this._cubeSize=0,this._sourceTarget=null,this._cubeCamera=new Gs(1,10,null),this._boxMesh=new vt(new zs(5,5,5),null),this._cubemapMaterial=null,this._equirectMaterial=null,this._blurMaterial=null,this._ggxMaterial=null,this._integrationMaterial=null}fromScene(e,t=0,n=.1,s=100,r={}){let{size:a=256,position:o=m_}=r,l=this._renderer;this._setSize(a);let c=this._allocateTarget(),h=this._getSourceTarget(!0);t>0&&(h.texture.mipmapsAutoUpdate=!1);let u=l.autoClear,d=l.autoClearColor,p=l.autoClearDepth,_=l.autoClearStencil,v=e.background;l.autoClear=!0,l.autoClearColor=!0,l.autoClearDepth=!0,l.autoClearStencil=!0,v===null&&(e.background=l.getClearColor(g_));let m=new Gs(n,s,h);return m.position.copy(o),m.update(l,e),l.autoClear=u,l.autoClearColor=d,l.autoClearDepth=p,l.autoClearStencil=_,e.background=v,t>0&&(h.texture.mipmapsAutoUpdate=!0,this._blur(c,t)),this._applyPMREM(c),c}fromEquirectangular(e,t=null){return this._fromTexture(e,t)}fromCubemap(e,t=null){return this._fromTexture(e,t)}compileCubemapShader(){this._cubemapMaterial===null&&(this._cubemapMaterial=Ed(),this._compileMaterial(this._cubemapMaterial))}compileEquirectangularShader(){this._equirectMaterial===null&&(this._equirectMaterial=Td(),this._compileMaterial(this._equirectMaterial))}dispose(){this._sourceTarget!==null&&this._sourceTarget.dispose(),this._cubemapMaterial!==null&&this._cubemapMaterial.dispose(),this._equirectMaterial!==null&&this._equirectMaterial.dispose(),this._blurMaterial!==null&&this._blurMaterial.dispose(),this._ggxMaterial!==null&&this._ggxMaterial.dispose(),this._integrationMaterial!==null&&this._integrationMaterial.dispose(),this._boxMesh.geometry.dispose()}static lodToRoughness(e,t){return t>0?1-Math.sqrt(1-e/t):0}_setSize(e){this._cubeSize=Math.max(wd,vd(e))}_fromTexture(e,t){e.mapping===cs||e.mapping===$s?this._setSize(e.image.length===0?wd:e.image[0].width||e.image[0].image.width):this._setSize(e.image.width/4);let n=t||this._allocateTarget();return this._textureToCubemap(e),this._applyPMREM(n),n}_allocateTarget(){let e=this._cubeSize,t=Sd(e,!1,!1),n=Math.log2(e)-d_;for(let s=0;s<=n;s++)t.texture.mipmaps.push({width:e>>s,height:e>>s});return t.texture.name="PMREM",t.texture.isPMREMTexture=!0,t}_getSourceTarget(e=!1){let t=this._cubeSize,n=this._sourceTarget;return(n===null||n.width!==t||e&&n.depthBuffer===!1)&&(n!==null&&n.dispose(),this._sourceTarget=Sd(t,!0,e)),this._sourceTarget}_compileMaterial(e){this._boxMesh.material=e,this._renderer.compile(this._boxMesh,this._cubeCamera.children[0])}_renderCube(e,t,n){let s=this._boxMesh,r=this._cubeCamera;s.material=n,r.renderTarget=e,r.activeMipmapLevel=t;let a=e.width>>t;e.viewport.set(0,0,a,a),r.update(this._renderer,s),e.viewport.set(0,0,e.width,e.height)}_textureToCubemap(e){let t;e.mapping===cs||e.mapping===$s?(this._cubemapMaterial===null&&(this._cubemapMaterial=Ed()),t=this._cubemapMaterial,t.uniforms.flipEnvMap.value=e.isRenderTargetTexture===!1?-1:1):(this._equirectMaterial===null&&(this._equirectMaterial=Td()),t=this._equirectMaterial),t.uniforms.envMap.value=e,this._renderCube(this._getSourceTarget(),0,t)}_applyPMREM(e){this._ggxMaterial===null&&(this._ggxMaterial=__(),this._integrationMaterial=v_());let t=this._cubeSize,n=e.texture.mipmaps.length-1,s=this._ggxMaterial.uniforms;s.envMap.value=this._sourceTarget.texture;let r=this._integrationMaterial.uniforms;r.envMap.value=this._sourceTarget.texture,r.sourceLod.value=Math.log2(t/qd);for(let a=0;a<=n;a++){let o=i.lodToRoughness(a,n);if(a>n-p_)r.roughness.value=o,this._renderCube(e,a,this._integrationMaterial);else{let l=o>0?Math.log2(t)+.5*Math.log2(6/(Xd*Math.pow(o,4)))+.5:0;s.roughness.value=o,s.lodBias.value=l,this._renderCube(e,a,this._ggxMaterial)}}}_blur(e,t){this._blurMaterial===null&&(this._blurMaterial=x_());let n=this._blurMaterial,s=n.uniforms,r=this._sourceTarget;s.sigma.value=Math.min(t,Math.PI)/Math.SQRT2,s.envMap.value=r.texture,this._renderCube(e,0,n),s.envMap.value=e.texture,this._renderCube(r,0,n)}};function Sd(i,e,t){return new Gr(i,{minFilter:fi,generateMipmaps:e,type:Fn,colorSpace:gr,depthBuffer:t})}function Vr(i,e,t){return new Xn({name:i,uniforms:e,vertexShader:qe.cube_vert,fragmentShader:t,side:Kt,blending:os,depthTest:!1,depthWrite:!1})}function __(){return Vr("PMREMGGXConvolution",{envMap:{value:null},roughness:{value:0},lodBias:{value:0}},`

		#define GGX_SAMPLES ${Xd}u

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
	`)}function v_(){return Vr("PMREMGGXIntegration",{envMap:{value:null},roughness:{value:0},sourceLod:{value:0},sourceSize:{value:qd}},`

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
	`)}function x_(){return Vr("PMREMSphericalGaussianBlur",{envMap:{value:null},sigma:{value:0}},`

		#define SAMPLES ${f_}
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
	`)}function Td(){return Vr("PMREMEquirectangularToCubemap",{envMap:{value:null}},`

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
	`)}function Ed(){return Vr("PMREMCubemapToCubemap",{envMap:{value:null},flipEnvMap:{value:-1}},`

		varying vec3 vWorldDirection;

		uniform samplerCube envMap;
		uniform float flipEnvMap;

		void main() {

			gl_FragColor = vec4( textureCube( envMap, vec3( flipEnvMap * vWorldDirection.x, vWorldDirection.yz ) ).rgb, 1.0 );

		}
	`)}function y_(i){let e=new WeakMap,t=new WeakMap,n=null;function s(d,p=!1){return d==null?null:p?a(d):r(d)}function r(d){if(d&&d.isTexture){let p=d.mapping;if(p===go||p===_o)if(e.has(d)){let _=e.get(d).texture;return o(_,d.mapping)}else{let _=d.image;if(_&&_.height>0){let v=new Gr(_.height);return v.fromEquirectangularTexture(i,d),e.set(d,v),d.addEventListener("dispose",c),o(v.texture,d.mapping)}else return null}}return d}function a(d){if(d&&d.isTexture&&d.isPMREMTexture!==!0){let p=d.mapping,_=p===go||p===_o,v=p===cs||p===$s;if(_||v){let m=t.get(d),g=m!==void 0?m.texture.pmremVersion:0;if(d.isRenderTargetTexture&&d.pmremVersion!==g)return n===null&&(n=new il(i)),m=_?n.fromEquirectangular(d,m):n.fromCubemap(d,m),m.texture.pmremVersion=d.pmremVersion,t.set(d,m),m.texture;if(m!==void 0)return m.texture;{let M=d.image;return _&&M&&M.height>0||v&&M&&l(M)?(n===null&&(n=new il(i)),m=_?n.fromEquirectangular(d):n.fromCubemap(d),m.texture.pmremVersion=d.pmremVersion,t.set(d,m),d.addEventListener("dispose",h),m.texture):null}}}return d}function o(d,p){return p===go?d.mapping=cs:p===_o&&(d.mapping=$s),d}function l(d){let p=0,_=6;for(let v=0;v<_;v++)d[v]!==void 0&&p++;return p===_}function c(d){let p=d.target;p.removeEventListener("dispose",c);let _=e.get(p);_!==void 0&&(e.delete(p),_.dispose())}function h(d){let p=d.target;p.removeEventListener("dispose",h);let _=t.get(p);_!==void 0&&(t.delete(p),_.dispose())}function u(){e=new WeakMap,t=new WeakMap,n!==null&&(n.dispose(),n=null)}return{get:s,dispose:u}}function b_(i){let e={};function t(n){if(e[n]!==void 0)return e[n];let s=i.getExtension(n);return e[n]=s,s}return{has:function(n){return t(n)!==null},init:function(){t("EXT_color_buffer_float"),t("WEBGL_clip_cull_distance"),t("OES_texture_float_linear"),t("EXT_color_buffer_half_float"),t("WEBGL_multisampled_render_to_texture"),t("WEBGL_render_shared_exponent")},get:function(n){let s=t(n);return s===null&&pr("WebGLRenderer: "+n+" extension not supported."),s}}}function M_(i,e,t,n){let s={},r=new WeakMap,a=new FinalizationRegistry(_=>delete s[_]);function o(_){l(_.target)}function l(_){_.index!==null&&e.remove(_.index);for(let m in _.attributes)e.remove(_.attributes[m]);_.removeEventListener("dispose",o),delete s[_.id],a.unregister(_);let v=r.get(_);v&&(e.remove(v),r.delete(_)),n.releaseStatesOfGeometry(_),_.isInstancedBufferGeometry===!0&&delete _._maxInstanceCount,t.memory.geometries--}function c(_,v){return s[v.id]!==void 0||(v.addEventListener("dispose",o),s[v.id]=new WeakRef(v),a.register(v,v.id,v),t.memory.geometries++),v}function h(_){let v=_.attributes;for(let m in v)e.update(v[m],i.ARRAY_BUFFER)}function u(_){let v=_.index,m=_.attributes.position,g=0;if(m===void 0)return;let M=v!==null?v.array.length:m.array.length/3-1,C=m.count>=65535?Mr:br,w=new C(Math.ceil(M/3)*6,1),E=w.array;if(v!==null){let x=v.array;g=v.version;for(let A=0,X=0;A<M;A+=3){let k=x[A+0],z=x[A+1],U=x[A+2];E[X++]=k,E[X++]=z,E[X++]=z,E[X++]=U,E[X++]=U,E[X++]=k}}else{g=m.version;for(let x=0,A=0;x<M;x+=3){let X=x+0,k=x+1,z=x+2;E[A++]=X,E[A++]=k,E[A++]=k,E[A++]=z,E[A++]=z,E[A++]=X}}w.version=g;let T=r.get(_);T&&e.remove(T),r.set(_,w)}function d(_){let v=r.get(_);if(v){let m=_.index;m!==null&&v.version<m.version&&u(_)}else u(_);return r.get(_)}function p(){for(let _ in s){let v=s[_].deref();v!==void 0&&l(v)}}return{get:c,update:h,getWireframeAttribute:d,dispose:p}}function w_(i,e,t){let n;function s(u){n=u}let r,a;function o(u){r=u.type,a=u.bytesPerElement}function l(u,d){i.drawElements(n,d,r,u*a),t.update(d,n,1)}function c(u,d,p){p!==0&&(i.drawElementsInstanced(n,d,r,u*a,p),t.update(d,n,p))}function h(u,d,p){if(p===0)return;e.get("WEBGL_multi_draw").multiDrawElementsWEBGL(n,d,0,r,u,0,p);let v=0;for(let m=0;m<p;m++)v+=d[m];t.update(v,n,1)}this.setMode=s,this.setIndex=o,this.render=l,this.renderInstances=c,this.renderMultiDraw=h}function S_(i){let e={geometries:0,textures:0},t={frame:0,calls:0,triangles:0,points:0,lines:0};function n(r,a,o){switch(t.calls++,a){case i.TRIANGLES:t.triangles+=o*(r/3);break;case i.LINES:t.lines+=o*(r/2);break;case i.LINE_STRIP:t.lines+=o*(r-1);break;case i.LINE_LOOP:t.lines+=o*r;break;case i.POINTS:t.points+=o*r;break;default:ze("WebGLInfo: Unknown draw mode:",a);break}}function s(){t.calls=0,t.triangles=0,t.points=0,t.lines=0}return{memory:e,render:t,programs:null,autoReset:!0,reset:s,update:n}}function T_(i,e,t){let n=new WeakMap,s=new Mt;function r(a,o,l){let c=a.morphTargetInfluences,h=o.morphAttributes.position||o.morphAttributes.normal||o.morphAttributes.color,u=h!==void 0?h.length:0,d=n.get(o);if(d===void 0||d.count!==u){let X=function(){x.dispose(),n.delete(o),o.removeEventListener("dispose",X)};d!==void 0&&d.texture.dispose();let p=o.morphAttributes.position!==void 0,_=o.morphAttributes.normal!==void 0,v=o.morphAttributes.color!==void 0,m=o.morphAttributes.position||[],g=o.morphAttributes.normal||[],M=o.morphAttributes.color||[],C=0;p===!0&&(C=1),_===!0&&(C=2),v===!0&&(C=3);let w=o.attributes.position.count*C,E=1;w>e.maxTextureSize&&(E=Math.ceil(w/e.maxTextureSize),w=e.maxTextureSize);let T=new Float32Array(w*E*4*u),x=new yr(T,w,E,u);x.type=Un,x.needsUpdate=!0;let A=C*4;for(let k=0;k<u;k++){let z=m[k],U=g[k],J=M[k],S=w*E*4*k;for(let D=0;D<z.count;D++){let F=D*A;p===!0&&(s.fromBufferAttribute(z,D),T[S+F+0]=s.x,T[S+F+1]=s.y,T[S+F+2]=s.z,T[S+F+3]=0),_===!0&&(s.fromBufferAttribute(U,D),T[S+F+4]=s.x,T[S+F+5]=s.y,T[S+F+6]=s.z,T[S+F+7]=0),v===!0&&(s.fromBufferAttribute(J,D),T[S+F+8]=s.x,T[S+F+9]=s.y,T[S+F+10]=s.z,T[S+F+11]=J.itemSize===4?s.w:1)}}d={count:u,texture:x,size:new et(w,E)},n.set(o,d),o.addEventListener("dispose",X)}if(a.isInstancedMesh===!0&&a.morphTexture!==null)l.getUniforms().setValue(i,"morphTexture",a.morphTexture,t);else{let p=0;for(let v=0;v<c.length;v++)p+=c[v];let _=o.morphTargetsRelative?1:1-p;l.getUniforms().setValue(i,"morphTargetBaseInfluence",_),l.getUniforms().setValue(i,"morphTargetInfluences",c)}l.getUniforms().setValue(i,"morphTargetsTexture",d.texture,t),l.getUniforms().setValue(i,"morphTargetsTextureSize",d.size)}return{update:r}}function E_(i,e,t,n,s){let r=new WeakMap;function a(c){let h=s.render.frame,u=c.geometry,d=e.get(c,u);if(r.get(d)!==h&&(e.update(d),r.set(d,h)),c.isInstancedMesh&&(c.hasEventListener("dispose",l)===!1&&c.addEventListener("dispose",l),r.get(c)!==h&&(t.update(c.instanceMatrix,i.ARRAY_BUFFER),c.instanceColor!==null&&t.update(c.instanceColor,i.ARRAY_BUFFER),r.set(c,h))),c.isSkinnedMesh){let p=c.skeleton;r.get(p)!==h&&(p.update(),r.set(p,h))}return d}function o(){r=new WeakMap}function l(c){let h=c.target;h.removeEventListener("dispose",l),n.releaseStatesOfObject(h),t.remove(h.instanceMatrix),h.instanceColor!==null&&t.remove(h.instanceColor)}return{update:a,dispose:o}}var A_={[wc]:"LINEAR_TONE_MAPPING",[Sc]:"REINHARD_TONE_MAPPING",[Tc]:"CINEON_TONE_MAPPING",[Ec]:"ACES_FILMIC_TONE_MAPPING",[Cc]:"AGX_TONE_MAPPING",[Rc]:"NEUTRAL_TONE_MAPPING",[Ac]:"CUSTOM_TONE_MAPPING"};function C_(i,e,t,n,s,r){let a=new dn(e,t,{type:i,depthBuffer:s,stencilBuffer:r,samples:n?4:0,storeMultisampledDepthBuffer:!1,storeMultisampledStencilBuffer:!1,resolveDepthBuffer:!1,resolveStencilBuffer:!1}),o=null,l=null,c=null,h=new Dn;h.setAttribute("position",new tn([-1,3,0,-1,-1,0,3,-1,0],3)),h.setAttribute("uv",new tn([0,2,0,0,2,0],2));let u=new to({uniforms:{tDiffuse:{value:null}},vertexShader:`
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
			}`,depthTest:!1,depthWrite:!1}),d=new vt(h,u),p=new zi(-1,1,1,-1,0,1),_=null,v=null,m=!1,g,M=null,C=[],w=!1;this.setSize=function(E,T){a.setSize(E,T),o!==null&&o.setSize(E,T),l!==null&&l.setSize(E,T);for(let x=0;x<C.length;x++){let A=C[x];A.setSize&&A.setSize(E,T)}},this.setEffects=function(E){C=E,w=C.length>0&&C[0].isRenderPass===!0;let T=a.width,x=a.height;C.length>0&&o===null&&(o=new dn(T,x,{type:Fn,depthBuffer:!1,stencilBuffer:!1}),l=new dn(T,x,{type:Fn,depthBuffer:!1,stencilBuffer:!1}));let A=s===!0&&C.some(X=>X.needsDepthTexture===!0);A!==(a.depthTexture!==null)&&(A===!0&&c===null&&(c=new di(T,x),r===!0&&(c.format=pi,c.type=hs)),a.dispose(),a.depthTexture=A?c:null,a.resolveDepthBuffer=A,a.storeMultisampledDepthBuffer=A);for(let X=0;X<C.length;X++){let k=C[X];k.setSize&&k.setSize(T,x),A&&k.needsDepthTexture===!0&&k.setDepthTexture&&k.setDepthTexture(c)}},this.begin=function(E,T){if(m||E.toneMapping===Yn&&C.length===0)return!1;if(M=T,T!==null){let x=T.width,A=T.height;(a.width!==x||a.height!==A)&&this.setSize(x,A)}return w===!1&&E.setRenderTarget(a),g=E.toneMapping,E.toneMapping=Yn,!0},this.hasRenderPass=function(){return w},this.end=function(E,T){E.toneMapping=g,m=!0;let x=a,A=o;for(let X=0;X<C.length;X++){let k=C[X];k.enabled!==!1&&(k.render(E,A,x,T),k.needsSwap!==!1&&(x=A,A=A===o?l:o))}if(_!==E.outputColorSpace||v!==E.toneMapping){_=E.outputColorSpace,v=E.toneMapping,u.defines={},Ke.getTransfer(_)===it&&(u.defines.SRGB_TRANSFER="");let X=A_[v];X&&(u.defines[X]=""),u.needsUpdate=!0}u.uniforms.tDiffuse.value=x.texture,E.setRenderTarget(M),E.render(d,p),M=null,m=!1},this.isCompositing=function(){return m},this.dispose=function(){a.dispose(),o!==null&&o.dispose(),l!==null&&l.dispose(),h.dispose(),u.dispose()}}var Yd=new nn,Zd=new di(1,1),Jd=new Sr(1),Kd=new yr,jd=new Za,Qd=new wr,Ad=[],Cd=[],Rd=new Float32Array(16),Pd=new Float32Array(9),Id=new Float32Array(4);function Ys(i,e,t){let n=i[0];if(n<=0||n>0)return i;let s=e*t,r=Ad[s];if(r===void 0&&(r=new Float32Array(s),Ad[s]=r),e!==0){n.toArray(r,0);for(let a=1,o=0;a!==e;++a)o+=t,i[a].toArray(r,o)}return r}function Rt(i,e){if(i.length!==e.length)return!1;for(let t=0,n=i.length;t<n;t++)if(i[t]!==e[t])return!1;return!0}function Pt(i,e){for(let t=0,n=e.length;t<n;t++)i[t]=e[t]}function sl(i,e){let t=Cd[e];t===void 0&&(t=new Int32Array(e),Cd[e]=t);for(let n=0;n!==e;++n)t[n]=i.allocateTextureUnit();return t}function R_(i,e){let t=this.cache;t[0]!==e&&(i.uniform1f(this.addr,e),t[0]=e)}function P_(i,e){let t=this.cache;if(e.x!==void 0)(t[0]!==e.x||t[1]!==e.y)&&(i.uniform2f(this.addr,e.x,e.y),t[0]=e.x,t[1]=e.y);else{if(Rt(t,e))return;i.uniform2fv(this.addr,e),Pt(t,e)}}function I_(i,e){let t=this.cache;if(e.x!==void 0)(t[0]!==e.x||t[1]!==e.y||t[2]!==e.z)&&(i.uniform3f(this.addr,e.x,e.y,e.z),t[0]=e.x,t[1]=e.y,t[2]=e.z);else if(e.r!==void 0)(t[0]!==e.r||t[1]!==e.g||t[2]!==e.b)&&(i.uniform3f(this.addr,e.r,e.g,e.b),t[0]=e.r,t[1]=e.g,t[2]=e.b);else{if(Rt(t,e))return;i.uniform3fv(this.addr,e),Pt(t,e)}}function L_(i,e){let t=this.cache;if(e.x!==void 0)(t[0]!==e.x||t[1]!==e.y||t[2]!==e.z||t[3]!==e.w)&&(i.uniform4f(this.addr,e.x,e.y,e.z,e.w),t[0]=e.x,t[1]=e.y,t[2]=e.z,t[3]=e.w);else{if(Rt(t,e))return;i.uniform4fv(this.addr,e),Pt(t,e)}}function N_(i,e){let t=this.cache,n=e.elements;if(n===void 0){if(Rt(t,e))return;i.uniformMatrix2fv(this.addr,!1,e),Pt(t,e)}else{if(Rt(t,n))return;Id.set(n),i.uniformMatrix2fv(this.addr,!1,Id),Pt(t,n)}}function D_(i,e){let t=this.cache,n=e.elements;if(n===void 0){if(Rt(t,e))return;i.uniformMatrix3fv(this.addr,!1,e),Pt(t,e)}else{if(Rt(t,n))return;Pd.set(n),i.uniformMatrix3fv(this.addr,!1,Pd),Pt(t,n)}}function k_(i,e){let t=this.cache,n=e.elements;if(n===void 0){if(Rt(t,e))return;i.uniformMatrix4fv(this.addr,!1,e),Pt(t,e)}else{if(Rt(t,n))return;Rd.set(n),i.uniformMatrix4fv(this.addr,!1,Rd),Pt(t,n)}}function U_(i,e){let t=this.cache;t[0]!==e&&(i.uniform1i(this.addr,e),t[0]=e)}function F_(i,e){let t=this.cache;if(e.x!==void 0)(t[0]!==e.x||t[1]!==e.y)&&(i.uniform2i(this.addr,e.x,e.y),t[0]=e.x,t[1]=e.y);else{if(Rt(t,e))return;i.uniform2iv(this.addr,e),Pt(t,e)}}function O_(i,e){let t=this.cache;if(e.x!==void 0)(t[0]!==e.x||t[1]!==e.y||t[2]!==e.z)&&(i.uniform3i(this.addr,e.x,e.y,e.z),t[0]=e.x,t[1]=e.y,t[2]=e.z);else{if(Rt(t,e))return;i.uniform3iv(this.addr,e),Pt(t,e)}}function B_(i,e){let t=this.cache;if(e.x!==void 0)(t[0]!==e.x||t[1]!==e.y||t[2]!==e.z||t[3]!==e.w)&&(i.uniform4i(this.addr,e.x,e.y,e.z,e.w),t[0]=e.x,t[1]=e.y,t[2]=e.z,t[3]=e.w);else{if(Rt(t,e))return;i.uniform4iv(this.addr,e),Pt(t,e)}}function z_(i,e){let t=this.cache;t[0]!==e&&(i.uniform1ui(this.addr,e),t[0]=e)}function G_(i,e){let t=this.cache;if(e.x!==void 0)(t[0]!==e.x||t[1]!==e.y)&&(i.uniform2ui(this.addr,e.x,e.y),t[0]=e.x,t[1]=e.y);else{if(Rt(t,e))return;i.uniform2uiv(this.addr,e),Pt(t,e)}}function V_(i,e){let t=this.cache;if(e.x!==void 0)(t[0]!==e.x||t[1]!==e.y||t[2]!==e.z)&&(i.uniform3ui(this.addr,e.x,e.y,e.z),t[0]=e.x,t[1]=e.y,t[2]=e.z);else{if(Rt(t,e))return;i.uniform3uiv(this.addr,e),Pt(t,e)}}function H_(i,e){let t=this.cache;if(e.x!==void 0)(t[0]!==e.x||t[1]!==e.y||t[2]!==e.z||t[3]!==e.w)&&(i.uniform4ui(this.addr,e.x,e.y,e.z,e.w),t[0]=e.x,t[1]=e.y,t[2]=e.z,t[3]=e.w);else{if(Rt(t,e))return;i.uniform4uiv(this.addr,e),Pt(t,e)}}function rl(i){return i.version===0&&(i.compareFunction=Gc,i.needsUpdate=!0),i}function $_(i,e,t){let n=this.cache,s=t.allocateTextureUnit();n[0]!==s&&(i.uniform1i(this.addr,s),n[0]=s);let r;this.type===i.SAMPLER_2D_SHADOW?r=rl(Zd):r=Yd,t.setTexture2D(e||r,s)}function W_(i,e,t){let n=this.cache,s=t.allocateTextureUnit();n[0]!==s&&(i.uniform1i(this.addr,s),n[0]=s),t.setTexture3D(e||jd,s)}function X_(i,e,t){let n=this.cache,s=t.allocateTextureUnit();n[0]!==s&&(i.uniform1i(this.addr,s),n[0]=s);let r;this.type===i.SAMPLER_CUBE_SHADOW?r=rl(Jd):r=Qd,t.setTextureCube(e||r,s)}function q_(i,e,t){let n=this.cache,s=t.allocateTextureUnit();n[0]!==s&&(i.uniform1i(this.addr,s),n[0]=s),t.setTexture2DArray(e||Kd,s)}function Y_(i){switch(i){case 5126:return R_;case 35664:return P_;case 35665:return I_;case 35666:return L_;case 35674:return N_;case 35675:return D_;case 35676:return k_;case 5124:case 35670:return U_;case 35667:case 35671:return F_;case 35668:case 35672:return O_;case 35669:case 35673:return B_;case 5125:return z_;case 36294:return G_;case 36295:return V_;case 36296:return H_;case 35678:case 36198:case 36298:case 36306:case 35682:return $_;case 35679:case 36299:case 36307:return W_;case 35680:case 36300:case 36308:case 36293:return X_;case 36289:case 36303:case 36311:case 36292:return q_}}function Z_(i,e){i.uniform1fv(this.addr,e)}function J_(i,e){let t=Ys(e,this.size,2);i.uniform2fv(this.addr,t)}function K_(i,e){let t=Ys(e,this.size,3);i.uniform3fv(this.addr,t)}function j_(i,e){let t=Ys(e,this.size,4);i.uniform4fv(this.addr,t)}function Q_(i,e){let t=Ys(e,this.size,4);i.uniformMatrix2fv(this.addr,!1,t)}function ev(i,e){let t=Ys(e,this.size,9);i.uniformMatrix3fv(this.addr,!1,t)}function tv(i,e){let t=Ys(e,this.size,16);i.uniformMatrix4fv(this.addr,!1,t)}function nv(i,e){i.uniform1iv(this.addr,e)}function iv(i,e){i.uniform2iv(this.addr,e)}function sv(i,e){i.uniform3iv(this.addr,e)}function rv(i,e){i.uniform4iv(this.addr,e)}function av(i,e){i.uniform1uiv(this.addr,e)}function ov(i,e){i.uniform2uiv(this.addr,e)}function lv(i,e){i.uniform3uiv(this.addr,e)}function cv(i,e){i.uniform4uiv(this.addr,e)}function hv(i,e,t){let n=this.cache,s=e.length,r=sl(t,s);Rt(n,r)||(i.uniform1iv(this.addr,r),Pt(n,r));let a;this.type===i.SAMPLER_2D_SHADOW?a=rl(Zd):a=Yd;for(let o=0;o!==s;++o)t.setTexture2D(e[o]||a,r[o])}function uv(i,e,t){let n=this.cache,s=e.length,r=sl(t,s);Rt(n,r)||(i.uniform1iv(this.addr,r),Pt(n,r));for(let a=0;a!==s;++a)t.setTexture3D(e[a]||jd,r[a])}function dv(i,e,t){let n=this.cache,s=e.length,r=sl(t,s);Rt(n,r)||(i.uniform1iv(this.addr,r),Pt(n,r));let a;this.type===i.SAMPLER_CUBE_SHADOW?a=rl(Jd):a=Qd;for(let o=0;o!==s;++o)t.setTextureCube(e[o]||a,r[o])}function fv(i,e,t){let n=this.cache,s=e.length,r=sl(t,s);Rt(n,r)||(i.uniform1iv(this.addr,r),Pt(n,r));for(let a=0;a!==s;++a)t.setTexture2DArray(e[a]||Kd,r[a])}function pv(i){switch(i){case 5126:return Z_;case 35664:return J_;case 35665:return K_;case 35666:return j_;case 35674:return Q_;case 35675:return ev;case 35676:return tv;case 5124:case 35670:return nv;case 35667:case 35671:return iv;case 35668:case 35672:return sv;case 35669:case 35673:return rv;case 5125:return av;case 36294:return ov;case 36295:return lv;case 36296:return cv;case 35678:case 36198:case 36298:case 36306:case 35682:return hv;case 35679:case 36299:case 36307:return uv;case 35680:case 36300:case 36308:case 36293:return dv;case 36289:case 36303:case 36311:case 36292:return fv}}var Kc=class{constructor(e,t,n){this.id=e,this.addr=n,this.cache=[],this.type=t.type,this.setValue=Y_(t.type)}},jc=class{constructor(e,t,n){this.id=e,this.addr=n,this.cache=[],this.type=t.type,this.size=t.size,this.setValue=pv(t.type)}},Qc=class{constructor(e){this.id=e,this.seq=[],this.map={}}setValue(e,t,n){let s=this.seq;for(let r=0,a=s.length;r!==a;++r){let o=s[r];o.setValue(e,t[o.id],n)}}},Zc=/(\w+)(\])?(\[|\.)?/g;function Ld(i,e){i.seq.push(e),i.map[e.id]=e}function mv(i,e,t){let n=i.name,s=n.length;for(Zc.lastIndex=0;;){let r=Zc.exec(n),a=Zc.lastIndex,o=r[1],l=r[2]==="]",c=r[3];if(l&&(o=o|0),c===void 0||c==="["&&a+2===s){Ld(t,c===void 0?new Kc(o,i,e):new jc(o,i,e));break}else{let u=t.map[o];u===void 0&&(u=new Qc(o),Ld(t,u)),t=u}}}var Xs=class{constructor(e,t){this.seq=[],this.map={};let n=e.getProgramParameter(t,e.ACTIVE_UNIFORMS);for(let a=0;a<n;++a){let o=e.getActiveUniform(t,a),l=e.getUniformLocation(t,o.name);mv(o,l,this)}let s=[],r=[];for(let a of this.seq)a.type===e.SAMPLER_2D_SHADOW||a.type===e.SAMPLER_CUBE_SHADOW||a.type===e.SAMPLER_2D_ARRAY_SHADOW?s.push(a):r.push(a);s.length>0&&(this.seq=s.concat(r))}setValue(e,t,n,s){let r=this.map[t];r!==void 0&&r.setValue(e,n,s)}setOptional(e,t,n){let s=t[n];s!==void 0&&this.setValue(e,n,s)}static upload(e,t,n,s){for(let r=0,a=t.length;r!==a;++r){let o=t[r],l=n[o.id];l.needsUpdate!==!1&&o.setValue(e,l.value,s)}}static seqWithValue(e,t){let n=[];for(let s=0,r=e.length;s!==r;++s){let a=e[s];a.id in t&&n.push(a)}return n}};function Nd(i,e,t){let n=i.createShader(e);return i.shaderSource(n,t),i.compileShader(n),n}var gv=37297,_v=0;function vv(i,e){let t=i.split(`
`),n=[],s=Math.max(e-6,0),r=Math.min(e+6,t.length);for(let a=s;a<r;a++){let o=a+1;n.push(`${o===e?">":" "} ${o}: ${t[a]}`)}return n.join(`
`)}var Dd=new Ge;function xv(i){Ke._getMatrix(Dd,Ke.workingColorSpace,i);let e=`mat3( ${Dd.elements.map(t=>t.toFixed(4))} )`;switch(Ke.getTransfer(i)){case _r:return[e,"LinearTransferOETF"];case it:return[e,"sRGBTransferOETF"];default:return Oe("WebGLProgram: Unsupported color space: ",i),[e,"LinearTransferOETF"]}}function kd(i,e,t){let n=i.getShaderParameter(e,i.COMPILE_STATUS),r=(i.getShaderInfoLog(e)||"").trim();if(n&&r==="")return"";let a=/ERROR: 0:(\d+)/.exec(r);if(a){let o=parseInt(a[1]);return t.toUpperCase()+`

`+r+`

`+vv(i.getShaderSource(e),o)}else return r}function yv(i,e){let t=xv(e);return[`vec4 ${i}( vec4 value ) {`,`	return ${t[1]}( vec4( ${t[0]} * value.rgb, value.a ) );`,"}"].join(`
`)}var bv={[wc]:"Linear",[Sc]:"Reinhard",[Tc]:"Cineon",[Ec]:"ACESFilmic",[Cc]:"AgX",[Rc]:"Neutral",[Ac]:"Custom"};function Mv(i,e){let t=bv[e];return t===void 0?(Oe("WebGLProgram: Unsupported toneMapping:",e),"vec3 "+i+"( vec3 color ) { return LinearToneMapping( color ); }"):"vec3 "+i+"( vec3 color ) { return "+t+"ToneMapping( color ); }"}var nl=new W;function wv(){Ke.getLuminanceCoefficients(nl);let i=nl.x.toFixed(4),e=nl.y.toFixed(4),t=nl.z.toFixed(4);return["float luminance( const in vec3 rgb ) {",`	const vec3 weights = vec3( ${i}, ${e}, ${t} );`,"	return dot( weights, rgb );","}"].join(`
`)}function Sv(i){return[i.extensionClipCullDistance?"#extension GL_ANGLE_clip_cull_distance : require":"",i.extensionMultiDraw?"#extension GL_ANGLE_multi_draw : require":""].filter(zr).join(`
`)}function Tv(i){let e=[];for(let t in i){let n=i[t];n!==!1&&e.push("#define "+t+" "+n)}return e.join(`
`)}function Ev(i,e){let t={},n=i.getProgramParameter(e,i.ACTIVE_ATTRIBUTES);for(let s=0;s<n;s++){let r=i.getActiveAttrib(e,s),a=r.name,o=1;r.type===i.FLOAT_MAT2&&(o=2),r.type===i.FLOAT_MAT3&&(o=3),r.type===i.FLOAT_MAT4&&(o=4),t[a]={type:r.type,location:i.getAttribLocation(e,a),locationSize:o}}return t}function zr(i){return i!==""}function Ud(i,e){let t=e.numSpotLightShadows+e.numSpotLightMaps-e.numSpotLightShadowsWithMaps;return i.replace(/NUM_SUN_LIGHTS/g,e.numSunLights).replace(/NUM_DIR_LIGHTS/g,e.numDirLights).replace(/NUM_SPOT_LIGHTS/g,e.numSpotLights).replace(/NUM_SPOT_LIGHT_MAPS/g,e.numSpotLightMaps).replace(/NUM_SPOT_LIGHT_COORDS/g,t).replace(/NUM_RECT_AREA_LIGHTS/g,e.numRectAreaLights).replace(/NUM_POINT_LIGHTS/g,e.numPointLights).replace(/NUM_HEMI_LIGHTS/g,e.numHemiLights).replace(/NUM_SUN_LIGHT_SHADOWS/g,e.numSunLightShadows).replace(/NUM_DIR_LIGHT_SHADOWS/g,e.numDirLightShadows).replace(/NUM_SPOT_LIGHT_SHADOWS_WITH_MAPS/g,e.numSpotLightShadowsWithMaps).replace(/NUM_SPOT_LIGHT_SHADOWS/g,e.numSpotLightShadows).replace(/NUM_POINT_LIGHT_SHADOWS/g,e.numPointLightShadows).replace(/NUM_LIGHT_PROBE_GRIDS/g,e.numLightProbeGrids)}function Fd(i,e){return i.replace(/NUM_CLIPPING_PLANES/g,e.numClippingPlanes).replace(/UNION_CLIPPING_PLANES/g,e.numClippingPlanes-e.numClipIntersection)}var Av=/^[ \t]*#include +<([\w\d./]+)>/gm;function eh(i){return i.replace(Av,Cv)}function Cv(i,e){let t=qe[e];if(t===void 0)throw new Error("THREE.WebGLProgram: Can not resolve #include <"+e+">");return eh(t)}var Rv=/#pragma unroll_loop_start\s+for\s*\(\s*int\s+i\s*=\s*(\d+)\s*;\s*i\s*<\s*(\d+)\s*;\s*i\s*\+\+\s*\)\s*{([\s\S]+?)}\s+#pragma unroll_loop_end/g;function Od(i){return i.replace(Rv,Pv)}function Pv(i,e,t,n){let s="";for(let r=parseInt(e);r<parseInt(t);r++)s+=n.replace(/\[\s*i\s*\]/g,"[ "+r+" ]").replace(/UNROLLED_LOOP_INDEX/g,r);return s}function Bd(i){let e=`precision ${i.precision} float;
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
#define LOW_PRECISION`),e}var Iv={[Pr]:"SHADOWMAP_TYPE_PCF",[Vs]:"SHADOWMAP_TYPE_VSM"};function Lv(i){return Iv[i.shadowMapType]||"SHADOWMAP_TYPE_BASIC"}var Nv={[$s]:"ENVMAP_MODE_REFRACTION"};function Dv(i){return i.envMap===!1?"ENVMAP_MODE_REFLECTION":Nv[i.envMapMode]||"ENVMAP_MODE_REFLECTION"}var kv={[Mc]:"ENVMAP_BLENDING_MULTIPLY",[nd]:"ENVMAP_BLENDING_MIX",[id]:"ENVMAP_BLENDING_ADD"};function Uv(i){return i.envMap===!1?"ENVMAP_BLENDING_NONE":kv[i.combine]||"ENVMAP_BLENDING_NONE"}function Fv(i,e,t,n){let s=i.getContext(),r=t.defines,a=t.vertexShader,o=t.fragmentShader,l=Lv(t),c=t.envMapPMREM===!0?"ENVMAP_TYPE_PMREM":"ENVMAP_TYPE_CUBE",h=Dv(t),u=Uv(t),d=Sv(t),p=Tv(r),_=s.createProgram(),v,m,g=t.glslVersion?"#version "+t.glslVersion+`
`:"";t.isRawShaderMaterial?(v=["#define SHADER_TYPE "+t.shaderType,"#define SHADER_NAME "+t.shaderName,p].filter(zr).join(`
`),v.length>0&&(v+=`
`),m=["#define SHADER_TYPE "+t.shaderType,"#define SHADER_NAME "+t.shaderName,p].filter(zr).join(`
`),m.length>0&&(m+=`
`)):(v=[Bd(t),"#define SHADER_TYPE "+t.shaderType,"#define SHADER_NAME "+t.shaderName,p,t.extensionClipCullDistance?"#define USE_CLIP_DISTANCE":"",t.batching?"#define USE_BATCHING":"",t.batchingColor?"#define USE_BATCHING_COLOR":"",t.instancing?"#define USE_INSTANCING":"",t.instancingColor?"#define USE_INSTANCING_COLOR":"",t.instancingMorph?"#define USE_INSTANCING_MORPH":"",t.useFog&&t.fog?"#define USE_FOG":"",t.useFog&&t.fogExp2?"#define FOG_EXP2":"",t.map?"#define USE_MAP":"",t.envMap?"#define USE_ENVMAP":"",t.envMap?"#define "+h:"",t.lightMap?"#define USE_LIGHTMAP":"",t.aoMap?"#define USE_AOMAP":"",t.bumpMap?"#define USE_BUMPMAP":"",t.normalMap?"#define USE_NORMALMAP":"",t.normalMapObjectSpace?"#define USE_NORMALMAP_OBJECTSPACE":"",t.normalMapTangentSpace?"#define USE_NORMALMAP_TANGENTSPACE":"",t.displacementMap?"#define USE_DISPLACEMENTMAP":"",t.emissiveMap?"#define USE_EMISSIVEMAP":"",t.anisotropy?"#define USE_ANISOTROPY":"",t.anisotropyMap?"#define USE_ANISOTROPYMAP":"",t.clearcoatMap?"#define USE_CLEARCOATMAP":"",t.clearcoatRoughnessMap?"#define USE_CLEARCOAT_ROUGHNESSMAP":"",t.clearcoatNormalMap?"#define USE_CLEARCOAT_NORMALMAP":"",t.diffuseRoughnessMap?"#define USE_DIFFUSE_ROUGHNESSMAP":"",t.iridescenceMap?"#define USE_IRIDESCENCEMAP":"",t.iridescenceThicknessMap?"#define USE_IRIDESCENCE_THICKNESSMAP":"",t.specularMap?"#define USE_SPECULARMAP":"",t.specularColorMap?"#define USE_SPECULAR_COLORMAP":"",t.specularIntensityMap?"#define USE_SPECULAR_INTENSITYMAP":"",t.roughnessMap?"#define USE_ROUGHNESSMAP":"",t.metalnessMap?"#define USE_METALNESSMAP":"",t.alphaMap?"#define USE_ALPHAMAP":"",t.alphaHash?"#define USE_ALPHAHASH":"",t.transmission?"#define USE_TRANSMISSION":"",t.transmissionMap?"#define USE_TRANSMISSIONMAP":"",t.thicknessMap?"#define USE_THICKNESSMAP":"",t.sheenColorMap?"#define USE_SHEEN_COLORMAP":"",t.sheenRoughnessMap?"#define USE_SHEEN_ROUGHNESSMAP":"",t.mapUv?"#define MAP_UV "+t.mapUv:"",t.alphaMapUv?"#define ALPHAMAP_UV "+t.alphaMapUv:"",t.lightMapUv?"#define LIGHTMAP_UV "+t.lightMapUv:"",t.aoMapUv?"#define AOMAP_UV "+t.aoMapUv:"",t.emissiveMapUv?"#define EMISSIVEMAP_UV "+t.emissiveMapUv:"",t.bumpMapUv?"#define BUMPMAP_UV "+t.bumpMapUv:"",t.normalMapUv?"#define NORMALMAP_UV "+t.normalMapUv:"",t.displacementMapUv?"#define DISPLACEMENTMAP_UV "+t.displacementMapUv:"",t.metalnessMapUv?"#define METALNESSMAP_UV "+t.metalnessMapUv:"",t.roughnessMapUv?"#define ROUGHNESSMAP_UV "+t.roughnessMapUv:"",t.anisotropyMapUv?"#define ANISOTROPYMAP_UV "+t.anisotropyMapUv:"",t.clearcoatMapUv?"#define CLEARCOATMAP_UV "+t.clearcoatMapUv:"",t.clearcoatNormalMapUv?"#define CLEARCOAT_NORMALMAP_UV "+t.clearcoatNormalMapUv:"",t.clearcoatRoughnessMapUv?"#define CLEARCOAT_ROUGHNESSMAP_UV "+t.clearcoatRoughnessMapUv:"",t.diffuseRoughnessMapUv?"#define DIFFUSE_ROUGHNESSMAP_UV "+t.diffuseRoughnessMapUv:"",t.iridescenceMapUv?"#define IRIDESCENCEMAP_UV "+t.iridescenceMapUv:"",t.iridescenceThicknessMapUv?"#define IRIDESCENCE_THICKNESSMAP_UV "+t.iridescenceThicknessMapUv:"",t.sheenColorMapUv?"#define SHEEN_COLORMAP_UV "+t.sheenColorMapUv:"",t.sheenRoughnessMapUv?"#define SHEEN_ROUGHNESSMAP_UV "+t.sheenRoughnessMapUv:"",t.specularMapUv?"#define SPECULARMAP_UV "+t.specularMapUv:"",t.specularColorMapUv?"#define SPECULAR_COLORMAP_UV "+t.specularColorMapUv:"",t.specularIntensityMapUv?"#define SPECULAR_INTENSITYMAP_UV "+t.specularIntensityMapUv:"",t.transmissionMapUv?"#define TRANSMISSIONMAP_UV "+t.transmissionMapUv:"",t.thicknessMapUv?"#define THICKNESSMAP_UV "+t.thicknessMapUv:"",t.vertexTangents&&t.flatShading===!1?"#define USE_TANGENT":"",t.vertexNormals?"#define HAS_NORMAL":"",t.vertexColors?"#define USE_COLOR":"",t.vertexAlphas?"#define USE_COLOR_ALPHA":"",t.vertexUv1s?"#define USE_UV1":"",t.vertexUv2s?"#define USE_UV2":"",t.vertexUv3s?"#define USE_UV3":"",t.pointsUvs?"#define USE_POINTS_UV":"",t.flatShading?"#define FLAT_SHADED":"",t.skinning?"#define USE_SKINNING":"",t.morphTargets?"#define USE_MORPHTARGETS":"",t.morphNormals&&t.flatShading===!1?"#define USE_MORPHNORMALS":"",t.morphColors?"#define USE_MORPHCOLORS":"",t.morphTargetsCount>0?"#define MORPHTARGETS_TEXTURE_STRIDE "+t.morphTextureStride:"",t.morphTargetsCount>0?"#define MORPHTARGETS_COUNT "+t.morphTargetsCount:"",t.doubleSided?"#define DOUBLE_SIDED":"",t.flipSided?"#define FLIP_SIDED":"",t.shadowMapEnabled?"#define USE_SHADOWMAP":"",t.shadowMapEnabled?"#define "+l:"",t.sizeAttenuation?"#define USE_SIZEATTENUATION":"",t.numLightProbes>0?"#define USE_LIGHT_PROBES":"",t.logarithmicDepthBuffer?"#define USE_LOGARITHMIC_DEPTH_BUFFER":"",t.reversedDepthBuffer?"#define USE_REVERSED_DEPTH_BUFFER":"","uniform mat4 modelMatrix;","uniform mat4 modelViewMatrix;","uniform mat4 projectionMatrix;","uniform mat4 viewMatrix;","uniform mat3 normalMatrix;","uniform vec3 cameraPosition;","uniform bool isOrthographic;","#ifdef USE_INSTANCING","	attribute mat4 instanceMatrix;","#endif","#ifdef USE_INSTANCING_COLOR","	attribute vec3 instanceColor;","#endif","#ifdef USE_INSTANCING_MORPH","	uniform sampler2D morphTexture;","#endif","attribute vec3 position;","attribute vec3 normal;","attribute vec2 uv;","#ifdef USE_UV1","	attribute vec2 uv1;","#endif","#ifdef USE_UV2","	attribute vec2 uv2;","#endif","#ifdef USE_UV3","	attribute vec2 uv3;","#endif","#ifdef USE_TANGENT","	attribute vec4 tangent;","#endif","#if defined( USE_COLOR_ALPHA )","	attribute vec4 color;","#elif defined( USE_COLOR )","	attribute vec3 color;","#endif","#ifdef USE_SKINNING","	attribute vec4 skinIndex;","	attribute vec4 skinWeight;","#endif",`
`].filter(zr).join(`
`),m=[Bd(t),"#define SHADER_TYPE "+t.shaderType,"#define SHADER_NAME "+t.shaderName,p,t.useFog&&t.fog?"#define USE_FOG":"",t.useFog&&t.fogExp2?"#define FOG_EXP2":"",t.alphaToCoverage?"#define ALPHA_TO_COVERAGE":"",t.map?"#define USE_MAP":"",t.matcap?"#define USE_MATCAP":"",t.envMap?"#define USE_ENVMAP":"",t.envMap?"#define "+c:"",t.envMap?"#define "+h:"",t.envMap?"#define "+u:"",t.envMapPMREM?"#define ENVMAP_MAX_LOD "+t.envMapMaxLod+".0":"",t.envMapPMREM?"#define ENVMAP_SIZE "+t.envMapSize+".0":"",t.lightMap?"#define USE_LIGHTMAP":"",t.aoMap?"#define USE_AOMAP":"",t.bumpMap?"#define USE_BUMPMAP":"",t.normalMap?"#define USE_NORMALMAP":"",t.normalMapObjectSpace?"#define USE_NORMALMAP_OBJECTSPACE":"",t.normalMapTangentSpace?"#define USE_NORMALMAP_TANGENTSPACE":"",t.packedNormalMap?"#define USE_PACKED_NORMALMAP":"",t.emissiveMap?"#define USE_EMISSIVEMAP":"",t.anisotropy?"#define USE_ANISOTROPY":"",t.anisotropyMap?"#define USE_ANISOTROPYMAP":"",t.clearcoat?"#define USE_CLEARCOAT":"",t.clearcoatMap?"#define USE_CLEARCOATMAP":"",t.clearcoatRoughnessMap?"#define USE_CLEARCOAT_ROUGHNESSMAP":"",t.clearcoatNormalMap?"#define USE_CLEARCOAT_NORMALMAP":"",t.diffuseRoughness?"#define USE_DIFFUSE_ROUGHNESS":"",t.diffuseRoughnessMap?"#define USE_DIFFUSE_ROUGHNESSMAP":"",t.dispersion?"#define USE_DISPERSION":"",t.retroreflection?"#define USE_RETROREFLECTION":"",t.iridescence?"#define USE_IRIDESCENCE":"",t.iridescenceMap?"#define USE_IRIDESCENCEMAP":"",t.iridescenceThicknessMap?"#define USE_IRIDESCENCE_THICKNESSMAP":"",t.specularMap?"#define USE_SPECULARMAP":"",t.specularColorMap?"#define USE_SPECULAR_COLORMAP":"",t.specularIntensityMap?"#define USE_SPECULAR_INTENSITYMAP":"",t.roughnessMap?"#define USE_ROUGHNESSMAP":"",t.metalnessMap?"#define USE_METALNESSMAP":"",t.alphaMap?"#define USE_ALPHAMAP":"",t.alphaTest?"#define USE_ALPHATEST":"",t.alphaHash?"#define USE_ALPHAHASH":"",t.sheen?"#define USE_SHEEN":"",t.sheenColorMap?"#define USE_SHEEN_COLORMAP":"",t.sheenRoughnessMap?"#define USE_SHEEN_ROUGHNESSMAP":"",t.transmission?"#define USE_TRANSMISSION":"",t.transmissionMap?"#define USE_TRANSMISSIONMAP":"",t.thicknessMap?"#define USE_THICKNESSMAP":"",t.vertexTangents&&t.flatShading===!1?"#define USE_TANGENT":"",t.vertexColors||t.instancingColor?"#define USE_COLOR":"",t.vertexAlphas||t.batchingColor?"#define USE_COLOR_ALPHA":"",t.vertexUv1s?"#define USE_UV1":"",t.vertexUv2s?"#define USE_UV2":"",t.vertexUv3s?"#define USE_UV3":"",t.pointsUvs?"#define USE_POINTS_UV":"",t.gradientMap?"#define USE_GRADIENTMAP":"",t.flatShading?"#define FLAT_SHADED":"",t.doubleSided?"#define DOUBLE_SIDED":"",t.flipSided?"#define FLIP_SIDED":"",t.shadowMapEnabled?"#define USE_SHADOWMAP":"",t.shadowMapEnabled?"#define "+l:"",t.premultipliedAlpha?"#define PREMULTIPLIED_ALPHA":"",t.numLightProbes>0?"#define USE_LIGHT_PROBES":"",t.decodeVideoTexture?"#define DECODE_VIDEO_TEXTURE":"",t.decodeVideoTextureEmissive?"#define DECODE_VIDEO_TEXTURE_EMISSIVE":"",t.logarithmicDepthBuffer?"#define USE_LOGARITHMIC_DEPTH_BUFFER":"",t.reversedDepthBuffer?"#define USE_REVERSED_DEPTH_BUFFER":"","uniform mat4 viewMatrix;","uniform vec3 cameraPosition;","uniform bool isOrthographic;",t.toneMapping!==Yn?"#define TONE_MAPPING":"",t.toneMapping!==Yn?qe.tonemapping_pars_fragment:"",t.toneMapping!==Yn?Mv("toneMapping",t.toneMapping):"",t.dithering?"#define DITHERING":"",t.opaque?"#define OPAQUE":"",qe.colorspace_pars_fragment,yv("linearToOutputTexel",t.outputColorSpace),wv(),t.useDepthPacking?"#define DEPTH_PACKING "+t.depthPacking:"",`
`].filter(zr).join(`
`)),a=eh(a),a=Ud(a,t),a=Fd(a,t),o=eh(o),o=Ud(o,t),o=Fd(o,t),a=Od(a),o=Od(o),t.isRawShaderMaterial!==!0&&(g=`#version 300 es
`,v=[d,"#define attribute in","#define varying out","#define texture2D texture"].join(`
`)+`
`+v,m=["#define varying in",t.glslVersion===Vc?"":"layout(location = 0) out highp vec4 pc_fragColor;",t.glslVersion===Vc?"":"#define gl_FragColor pc_fragColor","#define gl_FragDepthEXT gl_FragDepth","#define texture2D texture","#define textureCube texture","#define texture2DProj textureProj","#define texture2DLodEXT textureLod","#define texture2DProjLodEXT textureProjLod","#define textureCubeLodEXT textureLod","#define texture2DGradEXT textureGrad","#define texture2DProjGradEXT textureProjGrad","#define textureCubeGradEXT textureGrad"].join(`
`)+`
`+m);let M=g+v+a,C=g+m+o,w=Nd(s,s.VERTEX_SHADER,M),E=Nd(s,s.FRAGMENT_SHADER,C);s.attachShader(_,w),s.attachShader(_,E),t.index0AttributeName!==void 0?s.bindAttribLocation(_,0,t.index0AttributeName):t.hasPositionAttribute===!0&&s.bindAttribLocation(_,0,"position"),s.linkProgram(_);function T(k){if(i.debug.checkShaderErrors){let z=s.getProgramInfoLog(_)||"",U=s.getShaderInfoLog(w)||"",J=s.getShaderInfoLog(E)||"",S=z.trim(),D=U.trim(),F=J.trim(),G=!0,H=!0;if(s.getProgramParameter(_,s.LINK_STATUS)===!1)if(G=!1,typeof i.debug.onShaderError=="function")i.debug.onShaderError(s,_,w,E);else{let $=kd(s,w,"vertex"),I=kd(s,E,"fragment");ze("WebGLProgram: Shader Error "+s.getError()+" - VALIDATE_STATUS "+s.getProgramParameter(_,s.VALIDATE_STATUS)+`

Material Name: `+k.name+`
Material Type: `+k.type+`

Program Info Log: `+S+`
`+$+`
`+I)}else S!==""?Oe("WebGLProgram: Program Info Log:",S):(D===""||F==="")&&(H=!1);H&&(k.diagnostics={runnable:G,programLog:S,vertexShader:{log:D,prefix:v},fragmentShader:{log:F,prefix:m}})}s.deleteShader(w),s.deleteShader(E),x=new Xs(s,_),A=Ev(s,_)}let x;this.getUniforms=function(){return x===void 0&&T(this),x};let A;this.getAttributes=function(){return A===void 0&&T(this),A};let X=t.rendererExtensionParallelShaderCompile===!1;return this.isReady=function(){return X===!1&&(X=s.getProgramParameter(_,gv)),X},this.destroy=function(){n.releaseStatesOfProgram(this),s.deleteProgram(_),this.program=void 0},this.type=t.shaderType,this.name=t.shaderName,this.id=_v++,this.cacheKey=e,this.usedTimes=1,this.program=_,this.vertexShader=w,this.fragmentShader=E,this}var Ov=0,th=class{constructor(){this.shaderCache=new Map,this.materialCache=new Map}update(e,t,n){let s=this._getShaderCacheForMaterial(e);return s.has(t)===!1&&(s.add(t),t.usedTimes++),s.has(n)===!1&&(s.add(n),n.usedTimes++),this}remove(e){let t=this.materialCache.get(e);for(let n of t)n.usedTimes--,n.usedTimes===0&&this.shaderCache.delete(n.code);return this.materialCache.delete(e),this}getVertexShaderStage(e){return this._getShaderStage(e.vertexShader)}getFragmentShaderStage(e){return this._getShaderStage(e.fragmentShader)}dispose(){this.shaderCache.clear(),this.materialCache.clear()}_getShaderCacheForMaterial(e){let t=this.materialCache,n=t.get(e);return n===void 0&&(n=new Set,t.set(e,n)),n}_getShaderStage(e){let t=this.shaderCache,n=t.get(e);return n===void 0&&(n=new nh(e),t.set(e,n)),n}},nh=class{constructor(e){this.id=Ov++,this.code=e,this.usedTimes=0}};function Bv(i){return i===Vi||i===Ur||i===Fr}function zv(i,e,t,n,s,r){let a=new Us,o=new th,l=new Set,c=[],h=new Map,u=n.logarithmicDepthBuffer,d={MeshDepthMaterial:"depth",MeshDistanceMaterial:"distance",MeshNormalMaterial:"normal",MeshBasicMaterial:"basic",MeshLambertMaterial:"lambert",MeshPhongMaterial:"phong",MeshToonMaterial:"toon",MeshStandardMaterial:"physical",MeshPhysicalMaterial:"physical",MeshMatcapMaterial:"matcap",LineBasicMaterial:"basic",LineDashedMaterial:"dashed",PointsMaterial:"points",ShadowMaterial:"shadow",SpriteMaterial:"sprite"};function p(x){return l.add(x),x===0?"uv":`uv${x}`}function _(x,A,X,k,z,U){let J=k.fog,S=z.geometry,D=x.isMeshStandardMaterial||x.isMeshLambertMaterial||x.isMeshPhongMaterial?k.environment:null,F=x.isMeshStandardMaterial||x.isMeshLambertMaterial&&!x.envMap||x.isMeshPhongMaterial&&!x.envMap,G=e.get(x.envMap||D,F),H=d[x.type],$=n.precision;x.precision!==null&&($=n.getMaxPrecision(x.precision),$!==x.precision&&Oe("WebGLProgram.getParameters:",x.precision,"not supported, using",$,"instead."));let I=S.morphAttributes.position||S.morphAttributes.normal||S.morphAttributes.color,K=I!==void 0?I.length:0,oe=0;S.morphAttributes.position!==void 0&&(oe=1),S.morphAttributes.normal!==void 0&&(oe=2),S.morphAttributes.color!==void 0&&(oe=3);let pe,Q,he,Te;if(H){let be=Jn[H];pe=be.vertexShader,Q=be.fragmentShader}else{pe=x.vertexShader,Q=x.fragmentShader;let be=o.getVertexShaderStage(x),rt=o.getFragmentShaderStage(x);o.update(x,be,rt),he=be.id,Te=rt.id}let ke=i.getRenderTarget(),we=i.state.buffers.depth.getReversed(),$e=z.isInstancedMesh===!0,St=z.isBatchedMesh===!0,Be=!!x.map,st=!!x.matcap,ot=!!G,Ye=ot&&G.isPMREMTexture===!0,Ut=!!x.aoMap,At=!!x.lightMap,jt=!!x.bumpMap&&x.wireframe===!1,xt=!!x.normalMap,zn=!!x.displacementMap,It=!!x.emissiveMap,_n=!!x.metalnessMap,vn=!!x.roughnessMap,xn=x.anisotropy>0,B=x.clearcoat>0,yn=x.diffuseRoughness>0,pt=x.dispersion>0,mt=x.retroreflectivity>0,ye=x.iridescence>0,Ct=x.sheen>0,Fe=x.transmission>0,Ve=xn&&!!x.anisotropyMap,R=B&&!!x.clearcoatMap,y=B&&!!x.clearcoatNormalMap,Y=B&&!!x.clearcoatRoughnessMap,ae=yn&&!!x.diffuseRoughnessMap,se=ye&&!!x.iridescenceMap,de=ye&&!!x.iridescenceThicknessMap,ve=Ct&&!!x.sheenColorMap,te=Ct&&!!x.sheenRoughnessMap,ne=!!x.specularMap,me=!!x.specularColorMap,L=!!x.specularIntensityMap,ie=Fe&&!!x.transmissionMap,ee=Fe&&!!x.thicknessMap,ge=!!x.gradientMap,ue=!!x.alphaMap,fe=x.alphaTest>0,Le=!!x.alphaHash,Xe=!!x.extensions,le=Yn;x.toneMapped&&(ke===null||ke.isXRRenderTarget===!0)&&(le=i.toneMapping);let Ue=Ye?G.isCompressedCubeTexture?G.image[0].mipmaps:G.mipmaps:null,We={shaderID:H,shaderType:x.type,shaderName:x.name,vertexShader:pe,fragmentShader:Q,defines:x.defines,customVertexShaderID:he,customFragmentShaderID:Te,isRawShaderMaterial:x.isRawShaderMaterial===!0,glslVersion:x.glslVersion,precision:$,batching:St,batchingColor:St&&z._colorsTexture!==null,instancing:$e,instancingColor:$e&&z.instanceColor!==null,instancingMorph:$e&&z.morphTexture!==null,outputColorSpace:ke===null?i.outputColorSpace:ke.isXRRenderTarget===!0?ke.texture.colorSpace:Ke.workingColorSpace,alphaToCoverage:!!x.alphaToCoverage,map:Be,matcap:st,envMap:ot,envMapMode:ot&&G.mapping,envMapPMREM:Ye,envMapMaxLod:Ye?Ue.length-1:null,envMapSize:Ye?Ue[0].width:null,aoMap:Ut,lightMap:At,bumpMap:jt,normalMap:xt,displacementMap:zn,emissiveMap:It,normalMapObjectSpace:xt&&x.normalMapType===ad,normalMapTangentSpace:xt&&x.normalMapType===Oc,packedNormalMap:xt&&x.normalMapType===Oc&&Bv(x.normalMap.format),metalnessMap:_n,roughnessMap:vn,anisotropy:xn,anisotropyMap:Ve,clearcoat:B,clearcoatMap:R,clearcoatNormalMap:y,clearcoatRoughnessMap:Y,diffuseRoughness:yn,diffuseRoughnessMap:ae,dispersion:pt,retroreflection:mt,iridescence:ye,iridescenceMap:se,iridescenceThicknessMap:de,sheen:Ct,sheenColorMap:ve,sheenRoughnessMap:te,specularMap:ne,specularColorMap:me,specularIntensityMap:L,transmission:Fe,transmissionMap:ie,thicknessMap:ee,gradientMap:ge,opaque:x.transparent===!1&&x.blending===Hs&&x.alphaToCoverage===!1,alphaMap:ue,alphaTest:fe,alphaHash:Le,combine:x.combine,mapUv:Be&&p(x.map.channel),aoMapUv:Ut&&p(x.aoMap.channel),lightMapUv:At&&p(x.lightMap.channel),bumpMapUv:jt&&p(x.bumpMap.channel),normalMapUv:xt&&p(x.normalMap.channel),displacementMapUv:zn&&p(x.displacementMap.channel),emissiveMapUv:It&&p(x.emissiveMap.channel),metalnessMapUv:_n&&p(x.metalnessMap.channel),roughnessMapUv:vn&&p(x.roughnessMap.channel),anisotropyMapUv:Ve&&p(x.anisotropyMap.channel),clearcoatMapUv:R&&p(x.clearcoatMap.channel),clearcoatNormalMapUv:y&&p(x.clearcoatNormalMap.channel),clearcoatRoughnessMapUv:Y&&p(x.clearcoatRoughnessMap.channel),diffuseRoughnessMapUv:ae&&p(x.diffuseRoughnessMap.channel),iridescenceMapUv:se&&p(x.iridescenceMap.channel),iridescenceThicknessMapUv:de&&p(x.iridescenceThicknessMap.channel),sheenColorMapUv:ve&&p(x.sheenColorMap.channel),sheenRoughnessMapUv:te&&p(x.sheenRoughnessMap.channel),specularMapUv:ne&&p(x.specularMap.channel),specularColorMapUv:me&&p(x.specularColorMap.channel),specularIntensityMapUv:L&&p(x.specularIntensityMap.channel),transmissionMapUv:ie&&p(x.transmissionMap.channel),thicknessMapUv:ee&&p(x.thicknessMap.channel),alphaMapUv:ue&&p(x.alphaMap.channel),vertexTangents:!!S.attributes.tangent&&(xt||xn),vertexNormals:!!S.attributes.normal,vertexColors:x.vertexColors,vertexAlphas:x.vertexColors===!0&&!!S.attributes.color&&S.attributes.color.itemSize===4,pointsUvs:z.isPoints===!0&&!!S.attributes.uv&&(Be||ue),fog:!!J,useFog:x.fog===!0,fogExp2:!!J&&J.isFogExp2,flatShading:x.wireframe===!1&&(x.flatShading===!0||S.attributes.normal===void 0&&xt===!1&&(x.isMeshLambertMaterial||x.isMeshPhongMaterial||x.isMeshStandardMaterial||x.isMeshPhysicalMaterial)),sizeAttenuation:x.sizeAttenuation===!0,logarithmicDepthBuffer:u,reversedDepthBuffer:we,skinning:z.isSkinnedMesh===!0,hasPositionAttribute:S.attributes.position!==void 0,morphTargets:S.morphAttributes.position!==void 0,morphNormals:S.morphAttributes.normal!==void 0,morphColors:S.morphAttributes.color!==void 0,morphTargetsCount:K,morphTextureStride:oe,numSunLights:A.sun.length,numDirLights:A.directional.length,numPointLights:A.point.length,numSpotLights:A.spot.length,numSpotLightMaps:A.spotLightMap.length,numRectAreaLights:A.rectArea.length,numHemiLights:A.hemi.length,numSunLightShadows:A.sunShadowMap.length,numDirLightShadows:A.directionalShadowMap.length,numPointLightShadows:A.pointShadowMap.length,numSpotLightShadows:A.spotShadowMap.length,numSpotLightShadowsWithMaps:A.numSpotLightShadowsWithMaps,numLightProbes:A.numLightProbes,numLightProbeGrids:U.filter(be=>be.texture!==null).length,numClippingPlanes:r.numPlanes,numClipIntersection:r.numIntersection,dithering:x.dithering,shadowMapEnabled:i.shadowMap.enabled&&X.length>0,shadowMapType:i.shadowMap.type,toneMapping:le,decodeVideoTexture:Be&&x.map.isVideoTexture===!0&&Ke.getTransfer(x.map.colorSpace)===it,decodeVideoTextureEmissive:It&&x.emissiveMap.isVideoTexture===!0&&Ke.getTransfer(x.emissiveMap.colorSpace)===it,premultipliedAlpha:x.premultipliedAlpha,doubleSided:x.side===qn,flipSided:x.side===Kt,useDepthPacking:x.depthPacking>=0,depthPacking:x.depthPacking||0,index0AttributeName:x.index0AttributeName,extensionClipCullDistance:Xe&&x.extensions.clipCullDistance===!0&&t.has("WEBGL_clip_cull_distance"),extensionMultiDraw:(Xe&&x.extensions.multiDraw===!0||St)&&t.has("WEBGL_multi_draw"),rendererExtensionParallelShaderCompile:t.has("KHR_parallel_shader_compile"),customProgramCacheKey:x.customProgramCacheKey()};return We.vertexUv1s=l.has(1),We.vertexUv2s=l.has(2),We.vertexUv3s=l.has(3),l.clear(),We}function v(x){let A=[];if(x.shaderID?A.push(x.shaderID):(A.push(x.customVertexShaderID),A.push(x.customFragmentShaderID)),x.defines!==void 0)for(let X in x.defines)A.push(X),A.push(x.defines[X]);return x.isRawShaderMaterial===!1&&(m(A,x),g(A,x),A.push(i.outputColorSpace)),A.push(x.customProgramCacheKey),A.join()}function m(x,A){x.push(A.precision),x.push(A.outputColorSpace),x.push(A.envMapMode),x.push(A.envMapPMREM),x.push(A.envMapMaxLod),x.push(A.envMapSize),x.push(A.mapUv),x.push(A.alphaMapUv),x.push(A.lightMapUv),x.push(A.aoMapUv),x.push(A.bumpMapUv),x.push(A.normalMapUv),x.push(A.displacementMapUv),x.push(A.emissiveMapUv),x.push(A.metalnessMapUv),x.push(A.roughnessMapUv),x.push(A.anisotropyMapUv),x.push(A.clearcoatMapUv),x.push(A.clearcoatNormalMapUv),x.push(A.clearcoatRoughnessMapUv),x.push(A.diffuseRoughnessMapUv),x.push(A.iridescenceMapUv),x.push(A.iridescenceThicknessMapUv),x.push(A.sheenColorMapUv),x.push(A.sheenRoughnessMapUv),x.push(A.specularMapUv),x.push(A.specularColorMapUv),x.push(A.specularIntensityMapUv),x.push(A.transmissionMapUv),x.push(A.thicknessMapUv),x.push(A.combine),x.push(A.fogExp2),x.push(A.sizeAttenuation),x.push(A.morphTargetsCount),x.push(A.numSunLights),x.push(A.numDirLights),x.push(A.numPointLights),x.push(A.numSpotLights),x.push(A.numSpotLightMaps),x.push(A.numHemiLights),x.push(A.numRectAreaLights),x.push(A.numSunLightShadows),x.push(A.numDirLightShadows),x.push(A.numPointLightShadows),x.push(A.numSpotLightShadows),x.push(A.numSpotLightShadowsWithMaps),x.push(A.numLightProbes),x.push(A.numLightProbeGrids),x.push(A.shadowMapType),x.push(A.toneMapping),x.push(A.numClippingPlanes),x.push(A.numClipIntersection),x.push(A.depthPacking)}function g(x,A){a.disableAll(),A.instancing&&a.enable(0),A.instancingColor&&a.enable(1),A.instancingMorph&&a.enable(2),A.matcap&&a.enable(3),A.envMap&&a.enable(4),A.normalMapObjectSpace&&a.enable(5),A.normalMapTangentSpace&&a.enable(6),A.clearcoat&&a.enable(7),A.iridescence&&a.enable(8),A.alphaTest&&a.enable(9),A.vertexColors&&a.enable(10),A.vertexAlphas&&a.enable(11),A.vertexUv1s&&a.enable(12),A.vertexUv2s&&a.enable(13),A.vertexUv3s&&a.enable(14),A.vertexTangents&&a.enable(15),A.anisotropy&&a.enable(16),A.alphaHash&&a.enable(17),A.batching&&a.enable(18),A.dispersion&&a.enable(19),A.retroreflection&&a.enable(24),A.diffuseRoughness&&a.enable(25),A.batchingColor&&a.enable(20),A.gradientMap&&a.enable(21),A.packedNormalMap&&a.enable(22),A.vertexNormals&&a.enable(23),x.push(a.mask),a.disableAll(),A.fog&&a.enable(0),A.useFog&&a.enable(1),A.flatShading&&a.enable(2),A.logarithmicDepthBuffer&&a.enable(3),A.reversedDepthBuffer&&a.enable(4),A.skinning&&a.enable(5),A.morphTargets&&a.enable(6),A.morphNormals&&a.enable(7),A.morphColors&&a.enable(8),A.premultipliedAlpha&&a.enable(9),A.shadowMapEnabled&&a.enable(10),A.doubleSided&&a.enable(11),A.flipSided&&a.enable(12),A.useDepthPacking&&a.enable(13),A.dithering&&a.enable(14),A.transmission&&a.enable(15),A.sheen&&a.enable(16),A.opaque&&a.enable(17),A.pointsUvs&&a.enable(18),A.decodeVideoTexture&&a.enable(19),A.decodeVideoTextureEmissive&&a.enable(20),A.alphaToCoverage&&a.enable(21),A.numLightProbeGrids>0&&a.enable(22),A.hasPositionAttribute&&a.enable(23),x.push(a.mask)}function M(x){let A=d[x.type],X;if(A){let k=Jn[A];X=yd.clone(k.uniforms)}else X=x.uniforms;return X}function C(x,A){let X=h.get(A);return X!==void 0?++X.usedTimes:(X=new Fv(i,A,x,s),c.push(X),h.set(A,X)),X}function w(x){if(--x.usedTimes===0){let A=c.indexOf(x);c[A]=c[c.length-1],c.pop(),h.delete(x.cacheKey),x.destroy()}}function E(x){o.remove(x)}function T(){o.dispose()}return{getParameters:_,getProgramCacheKey:v,getUniforms:M,acquireProgram:C,releaseProgram:w,releaseShaderCache:E,programs:c,dispose:T}}function Gv(){let i=new WeakMap;function e(a){return i.has(a)}function t(a){let o=i.get(a);return o===void 0&&(o={},i.set(a,o)),o}function n(a){i.delete(a)}function s(a,o,l){i.get(a)[o]=l}function r(){i=new WeakMap}return{has:e,get:t,remove:n,update:s,dispose:r}}function Vv(i,e){return i.groupOrder!==e.groupOrder?i.groupOrder-e.groupOrder:i.renderOrder!==e.renderOrder?i.renderOrder-e.renderOrder:i.material.id!==e.material.id?i.material.id-e.material.id:i.materialVariant!==e.materialVariant?i.materialVariant-e.materialVariant:i.z!==e.z?i.z-e.z:i.id-e.id}function zd(i,e){return i.groupOrder!==e.groupOrder?i.groupOrder-e.groupOrder:i.renderOrder!==e.renderOrder?i.renderOrder-e.renderOrder:i.z!==e.z?e.z-i.z:i.id-e.id}function Gd(){let i=[],e=0,t=[],n=[],s=[];function r(){e=0,t.length=0,n.length=0,s.length=0}function a(d){let p=0;return d.isInstancedMesh&&(p+=2),d.isSkinnedMesh&&(p+=1),p}function o(d,p,_,v,m,g){let M=i[e];return M===void 0?(M={id:d.id,object:d,geometry:p,material:_,materialVariant:a(d),groupOrder:v,renderOrder:d.renderOrder,z:m,group:g},i[e]=M):(M.id=d.id,M.object=d,M.geometry=p,M.material=_,M.materialVariant=a(d),M.groupOrder=v,M.renderOrder=d.renderOrder,M.z=m,M.group=g),e++,M}function l(d,p,_,v,m,g,M){M.reversedDepth===!0&&(m=-m);let C=o(d,p,_,v,m,g);_.transmission>0?n.push(C):_.transparent===!0?s.push(C):t.push(C)}function c(d,p,_,v,m,g){let M=o(d,p,_,v,m,g);_.transmission>0?n.unshift(M):_.transparent===!0?s.unshift(M):t.unshift(M)}function h(d,p){t.length>1&&t.sort(d||Vv),n.length>1&&n.sort(p||zd),s.length>1&&s.sort(p||zd)}function u(){for(let d=e,p=i.length;d<p;d++){let _=i[d];if(_.id===null)break;_.id=null,_.object=null,_.geometry=null,_.material=null,_.group=null}}return{opaque:t,transmissive:n,transparent:s,init:r,push:l,unshift:c,finish:u,sort:h}}function Hv(){let i=new WeakMap;function e(n,s){let r=i.get(n),a;return r===void 0?(a=new Gd,i.set(n,[a])):s>=r.length?(a=new Gd,r.push(a)):a=r[s],a}function t(){i=new WeakMap}return{get:e,dispose:t}}function $v(){let i={};return{get:function(e){if(i[e.id]!==void 0)return i[e.id];let t;switch(e.type){case"SunLight":case"DirectionalLight":t={direction:new W,color:new je};break;case"SpotLight":t={position:new W,direction:new W,color:new je,distance:0,coneCos:0,penumbraCos:0,decay:0};break;case"PointLight":t={position:new W,color:new je,distance:0,decay:0};break;case"HemisphereLight":t={direction:new W,skyColor:new je,groundColor:new je};break;case"RectAreaLight":t={color:new je,position:new W,halfWidth:new W,halfHeight:new W};break}return i[e.id]=t,t}}}function Wv(){let i={};return{get:function(e){if(i[e.id]!==void 0)return i[e.id];let t;switch(e.type){case"SunLight":case"DirectionalLight":t={shadowIntensity:1,shadowBias:0,shadowNormalBias:0,shadowRadius:1,shadowMapSize:new et};break;case"SpotLight":t={shadowIntensity:1,shadowBias:0,shadowNormalBias:0,shadowRadius:1,shadowMapSize:new et};break;case"PointLight":t={shadowIntensity:1,shadowBias:0,shadowNormalBias:0,shadowRadius:1,shadowMapSize:new et,shadowCameraNear:1,shadowCameraFar:1e3};break}return i[e.id]=t,t}}}var Xv=0;function qv(i,e){return(e.castShadow?2:0)-(i.castShadow?2:0)+(e.map?1:0)-(i.map?1:0)}function Yv(i){let e=new $v,t=Wv(),n={version:0,hash:{sunLength:-1,directionalLength:-1,pointLength:-1,spotLength:-1,rectAreaLength:-1,hemiLength:-1,numSunShadows:-1,numDirectionalShadows:-1,numPointShadows:-1,numSpotShadows:-1,numSpotMaps:-1,numLightProbes:-1},ambient:[0,0,0],probe:[],sun:[],sunShadow:[],sunShadowMap:[],sunShadowMatrix:[],sunShadowCascade:[],directional:[],directionalShadow:[],directionalShadowMap:[],directionalShadowMatrix:[],spot:[],spotLightMap:[],spotShadow:[],spotShadowMap:[],spotLightMatrix:[],rectArea:[],rectAreaLTC1:null,rectAreaLTC2:null,point:[],pointShadow:[],pointShadowMap:[],pointShadowMatrix:[],hemi:[],numSpotLightShadowsWithMaps:0,numLightProbes:0};for(let c=0;c<9;c++)n.probe.push(new W);let s=new W,r=new at,a=new at;function o(c){let h=0,u=0,d=0;for(let U=0;U<9;U++)n.probe[U].set(0,0,0);let p=0,_=0,v=0,m=0,g=0,M=0,C=0,w=0,E=0,T=0,x=0,A=0,X=0,k=0;c.sort(qv);for(let U=0,J=c.length;U<J;U++){let S=c[U],D=S.color,F=S.intensity,G=S.distance,H=null;if(S.shadow&&S.shadow.map&&(S.shadow.map.texture.format===Vi?H=S.shadow.map.texture:H=S.shadow.map.depthTexture||S.shadow.map.texture),S.isAmbientLight)h+=D.r*F,u+=D.g*F,d+=D.b*F;else if(S.isLightProbe){for(let $=0;$<9;$++)n.probe[$].addScaledVector(S.sh.coefficients[$],F);k++}else if(S.isSunLight){let $=e.get(S);if($.color.copy(S.color).multiplyScalar(S.intensity),S.castShadow){let I=S.shadow,K=t.get(S);K.shadowIntensity=I.intensity,K.shadowBias=I.bias,K.shadowNormalBias=I.normalBias,K.shadowRadius=I.radius,K.shadowMapSize.copy(I.mapSize).multiply(I.getFrameExtents()),n.sunShadow[_]=K,n.sunShadowMap[_]=H;let oe=I.getViewportCount();for(let pe=0;pe<oe;pe++)n.sunShadowMatrix[v+pe]=I.getMatrix(pe),n.sunShadowCascade[v+pe]=I._cascadeData[pe];v+=oe,_++}n.sun[p]=$,p++}else if(S.isDirectionalLight){let $=e.get(S);if($.color.copy(S.color).multiplyScalar(S.intensity),S.castShadow){let I=S.shadow,K=t.get(S);K.shadowIntensity=I.intensity,K.shadowBias=I.bias,K.shadowNormalBias=I.normalBias,K.shadowRadius=I.radius,K.shadowMapSize=I.mapSize,n.directionalShadow[m]=K,n.directionalShadowMap[m]=H,n.directionalShadowMatrix[m]=S.shadow.matrix,E++}n.directional[m]=$,m++}else if(S.isSpotLight){let $=e.get(S);$.position.setFromMatrixPosition(S.matrixWorld),$.color.copy(D).multiplyScalar(F),$.distance=G,$.coneCos=Math.cos(S.angle),$.penumbraCos=Math.cos(S.angle*(1-S.penumbra)),$.decay=S.decay,n.spot[M]=$;let I=S.shadow;if(S.map&&(n.spotLightMap[A]=S.map,A++,I.updateMatrices(S),S.castShadow&&X++),n.spotLightMatrix[M]=I.matrix,S.castShadow){let K=t.get(S);K.shadowIntensity=I.intensity,K.shadowBias=I.bias,K.shadowNormalBias=I.normalBias,K.shadowRadius=I.radius,K.shadowMapSize=I.mapSize,n.spotShadow[M]=K,n.spotShadowMap[M]=H,x++}M++}else if(S.isRectAreaLight){let $=e.get(S);$.color.copy(D).multiplyScalar(F),$.halfWidth.set(S.width*.5,0,0),$.halfHeight.set(0,S.height*.5,0),n.rectArea[C]=$,C++}else if(S.isPointLight){let $=e.get(S);if($.color.copy(S.color).multiplyScalar(S.intensity),$.distance=S.distance,$.decay=S.decay,S.castShadow){let I=S.shadow,K=t.get(S);K.shadowIntensity=I.intensity,K.shadowBias=I.bias,K.shadowNormalBias=I.normalBias,K.shadowRadius=I.radius,K.shadowMapSize=I.mapSize,K.shadowCameraNear=I.camera.near,K.shadowCameraFar=I.camera.far,n.pointShadow[g]=K,n.pointShadowMap[g]=H,n.pointShadowMatrix[g]=S.shadow.matrix,T++}n.point[g]=$,g++}else if(S.isHemisphereLight){let $=e.get(S);$.skyColor.copy(S.color).multiplyScalar(F),$.groundColor.copy(S.groundColor).multiplyScalar(F),n.hemi[w]=$,w++}}C>0&&(i.has("OES_texture_float_linear")===!0?(n.rectAreaLTC1=Me.LTC_FLOAT_1,n.rectAreaLTC2=Me.LTC_FLOAT_2):(n.rectAreaLTC1=Me.LTC_HALF_1,n.rectAreaLTC2=Me.LTC_HALF_2)),n.ambient[0]=h,n.ambient[1]=u,n.ambient[2]=d;let z=n.hash;(z.sunLength!==p||z.directionalLength!==m||z.pointLength!==g||z.spotLength!==M||z.rectAreaLength!==C||z.hemiLength!==w||z.numSunShadows!==_||z.numDirectionalShadows!==E||z.numPointShadows!==T||z.numSpotShadows!==x||z.numSpotMaps!==A||z.numLightProbes!==k)&&(n.sun.length=p,n.directional.length=m,n.spot.length=M,n.rectArea.length=C,n.point.length=g,n.hemi.length=w,n.sunShadow.length=_,n.sunShadowMap.length=_,n.sunShadowMatrix.length=v,n.sunShadowCascade.length=v,n.directionalShadow.length=E,n.directionalShadowMap.length=E,n.directionalShadowMatrix.length=E,n.pointShadow.length=T,n.pointShadowMap.length=T,n.pointShadowMatrix.length=T,n.spotShadow.length=x,n.spotShadowMap.length=x,n.spotLightMatrix.length=x+A-X,n.spotLightMap.length=A,n.numSpotLightShadowsWithMaps=X,n.numLightProbes=k,z.sunLength=p,z.directionalLength=m,z.pointLength=g,z.spotLength=M,z.rectAreaLength=C,z.hemiLength=w,z.numSunShadows=_,z.numDirectionalShadows=E,z.numPointShadows=T,z.numSpotShadows=x,z.numSpotMaps=A,z.numLightProbes=k,n.version=Xv++)}function l(c,h){let u=0,d=0,p=0,_=0,v=0,m=0,g=h.matrixWorldInverse;for(let M=0,C=c.length;M<C;M++){let w=c[M];if(w.isSunLight){let E=n.sun[u];E.direction.setFromMatrixPosition(w.matrixWorld),E.direction.transformDirection(g),u++}else if(w.isDirectionalLight){let E=n.directional[d];E.direction.setFromMatrixPosition(w.matrixWorld),s.setFromMatrixPosition(w.target.matrixWorld),E.direction.sub(s),E.direction.transformDirection(g),d++}else if(w.isSpotLight){let E=n.spot[_];E.position.setFromMatrixPosition(w.matrixWorld),E.position.applyMatrix4(g),E.direction.setFromMatrixPosition(w.matrixWorld),s.setFromMatrixPosition(w.target.matrixWorld),E.direction.sub(s),E.direction.transformDirection(g),_++}else if(w.isRectAreaLight){let E=n.rectArea[v];E.position.setFromMatrixPosition(w.matrixWorld),E.position.applyMatrix4(g),a.identity(),r.copy(w.matrixWorld),r.premultiply(g),a.extractRotation(r),E.halfWidth.set(w.width*.5,0,0),E.halfHeight.set(0,w.height*.5,0),E.halfWidth.applyMatrix4(a),E.halfHeight.applyMatrix4(a),v++}else if(w.isPointLight){let E=n.point[p];E.position.setFromMatrixPosition(w.matrixWorld),E.position.applyMatrix4(g),p++}else if(w.isHemisphereLight){let E=n.hemi[m];E.direction.setFromMatrixPosition(w.matrixWorld),E.direction.transformDirection(g),m++}}}return{setup:o,setupView:l,state:n}}function Vd(i){let e=new Yv(i),t=[],n=[],s=[];function r(u){h.camera=u,t.length=0,n.length=0,s.length=0}function a(u){u.isLightProbeGrid?s.push(u):t.push(u)}function o(u){n.push(u)}function l(){e.setup(t),s.sort((u,d)=>u.priority-d.priority||u.id-d.id)}function c(u){e.setupView(t,u)}let h={lightsArray:t,shadowsArray:n,lightProbeGridArray:s,camera:null,lights:e,transmissionRenderTarget:{},textureUnits:0};return{init:r,state:h,setupLights:l,setupLightsView:c,pushLight:a,pushShadow:o}}function Zv(i){let e=new WeakMap;function t(s,r=0){let a=e.get(s),o;return a===void 0?(o=new Vd(i),e.set(s,[o])):r>=a.length?(o=new Vd(i),a.push(o)):o=a[r],o}function n(){e=new WeakMap}return{get:t,dispose:n}}var Jv=`void main() {
	gl_Position = vec4( position, 1.0 );
}`,Kv=`uniform sampler2D shadow_pass;
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
}`,jv=[new W(1,0,0),new W(-1,0,0),new W(0,1,0),new W(0,-1,0),new W(0,0,1),new W(0,0,-1)],Qv=[new W(0,-1,0),new W(0,-1,0),new W(0,0,1),new W(0,0,-1),new W(0,-1,0),new W(0,-1,0)],Hd=new at,Br=new W,Jc=new W;function ex(i,e,t){let n=new rs,s=new et,r=new et,a=new Mt,o=new no,l=new io,c={},h=t.maxTextureSize,u={[Gi]:Kt,[Kt]:Gi,[qn]:qn},d=new Xn({defines:{VSM_SAMPLES:8},uniforms:{shadow_pass:{value:null},resolution:{value:new et},radius:{value:4}},vertexShader:Jv,fragmentShader:Kv}),p=d.clone();p.defines.HORIZONTAL_PASS=1;let _=new Dn;_.setAttribute("position",new Zt(new Float32Array([-1,-1,.5,3,-1,.5,-1,3,.5]),3));let v=new vt(_,d),m=this;this.enabled=!1,this.autoUpdate=!0,this.needsUpdate=!1,this.type=Pr;let g=this.type;this.render=function(T,x,A){if(m.enabled===!1||m.autoUpdate===!1&&m.needsUpdate===!1||T.length===0)return;this.type===Fu&&(Oe("WebGLShadowMap: PCFSoftShadowMap has been removed. Using PCFShadowMap instead."),this.type=Pr);let X=i.getRenderTarget(),k=i.getActiveCubeFace(),z=i.getActiveMipmapLevel(),U=i.state;U.setBlending(os),U.buffers.depth.getReversed()===!0?U.buffers.color.setClear(0,0,0,0):U.buffers.color.setClear(1,1,1,1),U.buffers.depth.setTest(!0),U.setScissorTest(!1);let J=g!==this.type;J&&x.traverse(function(S){S.material&&(Array.isArray(S.material)?S.material.forEach(D=>D.needsUpdate=!0):S.material.needsUpdate=!0)});for(let S=0,D=T.length;S<D;S++){let F=T[S],G=F.shadow;if(G===void 0){Oe("WebGLShadowMap:",F,"has no shadow.");continue}if(G.autoUpdate===!1&&G.needsUpdate===!1)continue;s.copy(G.mapSize);let H=G.getFrameExtents();s.multiply(H),r.copy(G.mapSize),(s.x>h||s.y>h)&&(s.x>h&&(r.x=Math.floor(h/H.x),s.x=r.x*H.x,G.mapSize.x=r.x),s.y>h&&(r.y=Math.floor(h/H.y),s.y=r.y*H.y,G.mapSize.y=r.y));let $=i.state.buffers.depth.getReversed();if(G.camera._reversedDepth=$,G.map===null||J===!0){if(G.map!==null&&(G.map.depthTexture!==null&&(G.map.depthTexture.dispose(),G.map.depthTexture=null),G.map.dispose()),this.type===Vs){if(F.isPointLight){Oe("WebGLShadowMap: VSM shadow maps are not supported for PointLights. Use PCF or BasicShadowMap instead.");continue}G.map=new dn(s.x,s.y,{format:Vi,type:Fn,minFilter:Jt,magFilter:Jt,generateMipmaps:!1}),G.map.texture.name=F.name+".shadowMap",G.map.depthTexture=new di(s.x,s.y,Un),G.map.depthTexture.name=F.name+".shadowMapDepth",G.map.depthTexture.format=ui,G.map.depthTexture.compareFunction=null,G.map.depthTexture.minFilter=kt,G.map.depthTexture.magFilter=kt}else F.isPointLight?(G.map=new Gr(s.x),G.map.depthTexture=new Sr(s.x,kn)):(G.map=new dn(s.x,s.y),G.map.depthTexture=new di(s.x,s.y,kn)),G.map.depthTexture.name=F.name+".shadowMap",G.map.depthTexture.format=ui,this.type===Pr?(G.map.depthTexture.compareFunction=$?zc:Bc,G.map.depthTexture.minFilter=Jt,G.map.depthTexture.magFilter=Jt):(G.map.depthTexture.compareFunction=null,G.map.depthTexture.minFilter=kt,G.map.depthTexture.magFilter=kt);G.camera.updateProjectionMatrix()}G.map.isWebGLCubeRenderTarget!==!0&&(G.map.width!==s.x||G.map.height!==s.y)&&G.map.setSize(s.x,s.y);let I=G.map.isWebGLCubeRenderTarget?6:G.getViewportCount();F.isPointLight!==!0&&G.updateMatrices(F,A);let K=(G.camera.layers.mask&4294967294)!==0?G.camera.layers:A.layers;for(let oe=0;oe<I;oe++){let pe=G.getCamera(oe);if(F.isPointLight){let Q=G.camera,he=G.matrix,Te=F.distance||Q.far;Te!==Q.far&&(Q.far=Te,Q.updateProjectionMatrix()),Br.setFromMatrixPosition(F.matrixWorld),Q.position.copy(Br),Jc.copy(Q.position),Jc.add(jv[oe]),Q.up.copy(Qv[oe]),Q.lookAt(Jc),Q.updateMatrixWorld(),he.makeTranslation(-Br.x,-Br.y,-Br.z),Hd.multiplyMatrices(Q.projectionMatrix,Q.matrixWorldInverse),G._frustum.setFromProjectionMatrix(Hd,Q.coordinateSystem,Q.reversedDepth)}if(G.map.isWebGLCubeRenderTarget)i.setRenderTarget(G.map,oe),i.clear();else{oe===0&&(i.setRenderTarget(G.map),i.clear());let Q=G.getViewport(oe);a.set(r.x*Q.x,r.y*Q.y,r.x*Q.z,r.y*Q.w),U.viewport(a)}n=G.getFrustum(oe),w(x,A,pe,F,K,this.type)}G.isPointLightShadow!==!0&&this.type===Vs&&M(G,A),G.needsUpdate=!1}g=this.type,m.needsUpdate=!1,i.setRenderTarget(X,k,z)};function M(T,x){let A=e.update(v);d.defines.VSM_SAMPLES!==T.blurSamples&&(d.defines.VSM_SAMPLES=T.blurSamples,p.defines.VSM_SAMPLES=T.blurSamples,d.needsUpdate=!0,p.needsUpdate=!0),T.mapPass===null?T.mapPass=new dn(s.x,s.y,{format:Vi,type:Fn}):(T.mapPass.width!==T.map.width||T.mapPass.height!==T.map.height)&&T.mapPass.setSize(T.map.width,T.map.height),d.uniforms.shadow_pass.value=T.map.depthTexture,d.uniforms.resolution.value.set(T.map.width,T.map.height),d.uniforms.radius.value=T.radius,i.setRenderTarget(T.mapPass),i.clear(),i.renderBufferDirect(x,null,A,d,v,null),p.uniforms.shadow_pass.value=T.mapPass.texture,p.uniforms.resolution.value.set(T.map.width,T.map.height),p.uniforms.radius.value=T.radius,i.setRenderTarget(T.map),i.clear(),i.renderBufferDirect(x,null,A,p,v,null)}function C(T,x,A,X){let k=null,z=A.isPointLight===!0?T.customDistanceMaterial:T.customDepthMaterial;if(z!==void 0)k=z;else if(k=A.isPointLight===!0?l:o,i.localClippingEnabled&&x.clipShadows===!0&&Array.isArray(x.clippingPlanes)&&x.clippingPlanes.length!==0||x.displacementMap&&x.displacementScale!==0||x.alphaMap&&x.alphaTest>0||x.map&&x.alphaTest>0||x.alphaToCoverage===!0){let U=k.uuid,J=x.uuid,S=c[U];S===void 0&&(S={},c[U]=S);let D=S[J];D===void 0&&(D=k.clone(),S[J]=D,x.addEventListener("dispose",E)),k=D}if(k.visible=x.visible,k.wireframe=x.wireframe,X===Vs?k.side=x.shadowSide!==null?x.shadowSide:x.side:k.side=x.shadowSide!==null?x.shadowSide:u[x.side],k.alphaMap=x.alphaMap,k.alphaTest=x.alphaToCoverage===!0?.5:x.alphaTest,k.map=x.map,k.clipShadows=x.clipShadows,k.clippingPlanes=x.clippingPlanes,k.clipIntersection=x.clipIntersection,k.displacementMap=x.displacementMap,k.displacementScale=x.displacementScale,k.displacementBias=x.displacementBias,k.wireframeLinewidth=x.wireframeLinewidth,k.linewidth=x.linewidth,A.isPointLight===!0&&k.isMeshDistanceMaterial===!0){let U=i.properties.get(k);U.light=A}return k}function w(T,x,A,X,k,z){if(T.visible===!1)return;if(T.layers.test(k)&&(T.isMesh||T.isLine||T.isPoints)&&(T.castShadow||T.receiveShadow&&z===Vs)&&(!T.frustumCulled||T.intersectsFrustum(n))){T.modelViewMatrix.multiplyMatrices(A.matrixWorldInverse,T.matrixWorld);let S=e.update(T),D=T.material;if(Array.isArray(D)){let F=S.groups;for(let G=0,H=F.length;G<H;G++){let $=F[G],I=D[$.materialIndex];if(I&&I.visible){let K=C(T,I,X,z);T.onBeforeShadow(i,T,x,A,S,K,$),i.renderBufferDirect(A,null,S,K,T,$),T.onAfterShadow(i,T,x,A,S,K,$)}}}else if(D.visible){let F=C(T,D,X,z);T.onBeforeShadow(i,T,x,A,S,F,null),i.renderBufferDirect(A,null,S,F,T,null),T.onAfterShadow(i,T,x,A,S,F,null)}}let J=T.children;for(let S=0,D=J.length;S<D;S++)w(J[S],x,A,X,k,z)}function E(T){T.target.removeEventListener("dispose",E);for(let A in c){let X=c[A],k=T.target.uuid;k in X&&(X[k].dispose(),delete X[k])}}}function tx(i,e){function t(){let L=!1,ie=new Mt,ee=null,ge=new Mt(0,0,0,0);return{setMask:function(ue){ee!==ue&&!L&&(i.colorMask(ue,ue,ue,ue),ee=ue)},setLocked:function(ue){L=ue},setClear:function(ue,fe,Le,Xe,le){le===!0&&(ue*=Xe,fe*=Xe,Le*=Xe),ie.set(ue,fe,Le,Xe),ge.equals(ie)===!1&&(i.clearColor(ue,fe,Le,Xe),ge.copy(ie))},reset:function(){L=!1,ee=null,ge.set(-1,0,0,0)}}}function n(){let L=!1,ie=!1,ee=null,ge=null,ue=null;return{setReversed:function(fe){if(ie!==fe){let Le=e.get("EXT_clip_control");fe?Le.clipControlEXT(Le.LOWER_LEFT_EXT,Le.ZERO_TO_ONE_EXT):Le.clipControlEXT(Le.LOWER_LEFT_EXT,Le.NEGATIVE_ONE_TO_ONE_EXT),ie=fe;let Xe=ue;ue=null,this.setClear(Xe)}},getReversed:function(){return ie},setTest:function(fe){fe?we(i.DEPTH_TEST):$e(i.DEPTH_TEST)},setMask:function(fe){ee!==fe&&!L&&(i.depthMask(fe),ee=fe)},setFunc:function(fe){if(ie&&(fe=_d[fe]),ge!==fe){switch(fe){case Ua:i.depthFunc(i.NEVER);break;case Fa:i.depthFunc(i.ALWAYS);break;case Oa:i.depthFunc(i.LESS);break;case Ns:i.depthFunc(i.LEQUAL);break;case Ba:i.depthFunc(i.EQUAL);break;case za:i.depthFunc(i.GEQUAL);break;case Ga:i.depthFunc(i.GREATER);break;case Va:i.depthFunc(i.NOTEQUAL);break;default:i.depthFunc(i.LEQUAL)}ge=fe}},setLocked:function(fe){L=fe},setClear:function(fe){ue!==fe&&(ue=fe,ie&&(fe=1-fe),i.clearDepth(fe))},reset:function(){L=!1,ee=null,ge=null,ue=null,ie=!1}}}function s(){let L=!1,ie=null,ee=null,ge=null,ue=null,fe=null,Le=null,Xe=null,le=null;return{setTest:function(Ue){L||(Ue?we(i.STENCIL_TEST):$e(i.STENCIL_TEST))},setMask:function(Ue){ie!==Ue&&!L&&(i.stencilMask(Ue),ie=Ue)},setFunc:function(Ue,We,be){(ee!==Ue||ge!==We||ue!==be)&&(i.stencilFunc(Ue,We,be),ee=Ue,ge=We,ue=be)},setOp:function(Ue,We,be){(fe!==Ue||Le!==We||Xe!==be)&&(i.stencilOp(Ue,We,be),fe=Ue,Le=We,Xe=be)},setLocked:function(Ue){L=Ue},setClear:function(Ue){le!==Ue&&(i.clearStencil(Ue),le=Ue)},reset:function(){L=!1,ie=null,ee=null,ge=null,ue=null,fe=null,Le=null,Xe=null,le=null}}}let r=new t,a=new n,o=new s,l={},c=new WeakMap,h={},u={},d={},p=new WeakMap,_=[],v=null,m=!1,g=null,M=null,C=null,w=null,E=null,T=null,x=null,A=new je(0,0,0),X=0,k=!1,z=null,U=null,J=null,S=null,D=null,F=i.getParameter(i.MAX_COMBINED_TEXTURE_IMAGE_UNITS),G=!1,H=0,$=i.getParameter(i.VERSION);$.indexOf("WebGL")!==-1?(H=parseFloat(/^WebGL (\d)/.exec($)[1]),G=H>=1):$.indexOf("OpenGL ES")!==-1&&(H=parseFloat(/^OpenGL ES (\d)/.exec($)[1]),G=H>=2);let I=null,K={},oe=i.getParameter(i.SCISSOR_BOX),pe=i.getParameter(i.VIEWPORT),Q=new Mt().fromArray(oe),he=new Mt().fromArray(pe);function Te(L,ie,ee,ge){let ue=new Uint8Array(4),fe=i.createTexture();i.bindTexture(L,fe),i.texParameteri(L,i.TEXTURE_MIN_FILTER,i.NEAREST),i.texParameteri(L,i.TEXTURE_MAG_FILTER,i.NEAREST);for(let Le=0;Le<ee;Le++)L===i.TEXTURE_3D||L===i.TEXTURE_2D_ARRAY?i.texImage3D(ie,0,i.RGBA,1,1,ge,0,i.RGBA,i.UNSIGNED_BYTE,ue):i.texImage2D(ie+Le,0,i.RGBA,1,1,0,i.RGBA,i.UNSIGNED_BYTE,ue);return fe}let ke={};ke[i.TEXTURE_2D]=Te(i.TEXTURE_2D,i.TEXTURE_2D,1),ke[i.TEXTURE_CUBE_MAP]=Te(i.TEXTURE_CUBE_MAP,i.TEXTURE_CUBE_MAP_POSITIVE_X,6),ke[i.TEXTURE_2D_ARRAY]=Te(i.TEXTURE_2D_ARRAY,i.TEXTURE_2D_ARRAY,1,1),ke[i.TEXTURE_3D]=Te(i.TEXTURE_3D,i.TEXTURE_3D,1,1),r.setClear(0,0,0,1),a.setClear(1),o.setClear(0),we(i.DEPTH_TEST),a.setFunc(Ns),jt(!1),xt(gc),we(i.CULL_FACE),Ut(os);function we(L){h[L]!==!0&&(i.enable(L),h[L]=!0)}function $e(L){h[L]!==!1&&(i.disable(L),h[L]=!1)}function St(L,ie){return d[L]!==ie?(i.bindFramebuffer(L,ie),d[L]=ie,L===i.DRAW_FRAMEBUFFER&&(d[i.FRAMEBUFFER]=ie),L===i.FRAMEBUFFER&&(d[i.DRAW_FRAMEBUFFER]=ie),!0):!1}function Be(L,ie){let ee=_,ge=!1;if(L){ee=p.get(ie),ee===void 0&&(ee=[],p.set(ie,ee));let ue=L.textures;if(ee.length!==ue.length||ee[0]!==i.COLOR_ATTACHMENT0){for(let fe=0,Le=ue.length;fe<Le;fe++)ee[fe]=i.COLOR_ATTACHMENT0+fe;ee.length=ue.length,ge=!0}}else ee[0]!==i.BACK&&(ee[0]=i.BACK,ge=!0);ge&&i.drawBuffers(ee)}function st(L){return v!==L?(i.useProgram(L),v=L,!0):!1}let ot={[ls]:i.FUNC_ADD,[Bu]:i.FUNC_SUBTRACT,[zu]:i.FUNC_REVERSE_SUBTRACT};ot[Gu]=i.MIN,ot[Vu]=i.MAX;let Ye={[Hu]:i.ZERO,[$u]:i.ONE,[Wu]:i.SRC_COLOR,[yc]:i.SRC_ALPHA,[Ku]:i.SRC_ALPHA_SATURATE,[Zu]:i.DST_COLOR,[qu]:i.DST_ALPHA,[Xu]:i.ONE_MINUS_SRC_COLOR,[bc]:i.ONE_MINUS_SRC_ALPHA,[Ju]:i.ONE_MINUS_DST_COLOR,[Yu]:i.ONE_MINUS_DST_ALPHA,[ju]:i.CONSTANT_COLOR,[Qu]:i.ONE_MINUS_CONSTANT_COLOR,[ed]:i.CONSTANT_ALPHA,[td]:i.ONE_MINUS_CONSTANT_ALPHA};function Ut(L,ie,ee,ge,ue,fe,Le,Xe,le,Ue){if(L===os){m===!0&&($e(i.BLEND),m=!1);return}if(m===!1&&(we(i.BLEND),m=!0),L!==Ou){if(L!==g||Ue!==k){if((M!==ls||E!==ls)&&(i.blendEquation(i.FUNC_ADD),M=ls,E=ls),Ue)switch(L){case Hs:i.blendFuncSeparate(i.ONE,i.ONE_MINUS_SRC_ALPHA,i.ONE,i.ONE_MINUS_SRC_ALPHA);break;case _c:i.blendFunc(i.ONE,i.ONE);break;case vc:i.blendFuncSeparate(i.ZERO,i.ONE_MINUS_SRC_COLOR,i.ZERO,i.ONE);break;case xc:i.blendFuncSeparate(i.DST_COLOR,i.ONE_MINUS_SRC_ALPHA,i.ZERO,i.ONE);break;default:ze("WebGLState: Invalid blending: ",L);break}else switch(L){case Hs:i.blendFuncSeparate(i.SRC_ALPHA,i.ONE_MINUS_SRC_ALPHA,i.ONE,i.ONE_MINUS_SRC_ALPHA);break;case _c:i.blendFuncSeparate(i.SRC_ALPHA,i.ONE,i.ONE,i.ONE);break;case vc:ze("WebGLState: SubtractiveBlending requires material.premultipliedAlpha = true");break;case xc:ze("WebGLState: MultiplyBlending requires material.premultipliedAlpha = true");break;default:ze("WebGLState: Invalid blending: ",L);break}C=null,w=null,T=null,x=null,A.set(0,0,0),X=0,g=L,k=Ue}return}ue=ue||ie,fe=fe||ee,Le=Le||ge,(ie!==M||ue!==E)&&(i.blendEquationSeparate(ot[ie],ot[ue]),M=ie,E=ue),(ee!==C||ge!==w||fe!==T||Le!==x)&&(i.blendFuncSeparate(Ye[ee],Ye[ge],Ye[fe],Ye[Le]),C=ee,w=ge,T=fe,x=Le),(Xe.equals(A)===!1||le!==X)&&(i.blendColor(Xe.r,Xe.g,Xe.b,le),A.copy(Xe),X=le),g=L,k=!1}function At(L,ie){L.side===qn?$e(i.CULL_FACE):we(i.CULL_FACE);let ee=L.side===Kt;ie&&(ee=!ee),jt(ee),L.blending===Hs&&L.transparent===!1?Ut(os):Ut(L.blending,L.blendEquation,L.blendSrc,L.blendDst,L.blendEquationAlpha,L.blendSrcAlpha,L.blendDstAlpha,L.blendColor,L.blendAlpha,L.premultipliedAlpha),a.setFunc(L.depthFunc),a.setTest(L.depthTest),a.setMask(L.depthWrite),r.setMask(L.colorWrite);let ge=L.stencilWrite;o.setTest(ge),ge&&(o.setMask(L.stencilWriteMask),o.setFunc(L.stencilFunc,L.stencilRef,L.stencilFuncMask),o.setOp(L.stencilFail,L.stencilZFail,L.stencilZPass)),It(L.polygonOffset,L.polygonOffsetFactor,L.polygonOffsetUnits),L.alphaToCoverage===!0?we(i.SAMPLE_ALPHA_TO_COVERAGE):$e(i.SAMPLE_ALPHA_TO_COVERAGE)}function jt(L){z!==L&&(L?i.frontFace(i.CW):i.frontFace(i.CCW),z=L)}function xt(L){L!==ku?(we(i.CULL_FACE),L!==U&&(L===gc?i.cullFace(i.BACK):L===Uu?i.cullFace(i.FRONT):i.cullFace(i.FRONT_AND_BACK))):$e(i.CULL_FACE),U=L}function zn(L){L!==J&&(G&&i.lineWidth(L),J=L)}function It(L,ie,ee){L?(we(i.POLYGON_OFFSET_FILL),(S!==ie||D!==ee)&&(S=ie,D=ee,a.getReversed()&&(ie=-ie,ee=-ee),i.polygonOffset(ie,ee))):$e(i.POLYGON_OFFSET_FILL)}function _n(L){L?we(i.SCISSOR_TEST):$e(i.SCISSOR_TEST)}function vn(L){L===void 0&&(L=i.TEXTURE0+F-1),I!==L&&(i.activeTexture(L),I=L)}function xn(L,ie,ee){ee===void 0&&(I===null?ee=i.TEXTURE0+F-1:ee=I);let ge=K[ee];ge===void 0&&(ge={type:void 0,texture:void 0},K[ee]=ge),(ge.type!==L||ge.texture!==ie)&&(I!==ee&&(i.activeTexture(ee),I=ee),i.bindTexture(L,ie||ke[L]),ge.type=L,ge.texture=ie)}function B(){let L=K[I];L!==void 0&&L.type!==void 0&&(i.bindTexture(L.type,null),L.type=void 0,L.texture=void 0)}function yn(){try{i.compressedTexImage2D(...arguments)}catch(L){ze("WebGLState:",L)}}function pt(){try{i.compressedTexImage3D(...arguments)}catch(L){ze("WebGLState:",L)}}function mt(){try{i.texSubImage2D(...arguments)}catch(L){ze("WebGLState:",L)}}function ye(){try{i.texSubImage3D(...arguments)}catch(L){ze("WebGLState:",L)}}function Ct(){try{i.compressedTexSubImage2D(...arguments)}catch(L){ze("WebGLState:",L)}}function Fe(){try{i.compressedTexSubImage3D(...arguments)}catch(L){ze("WebGLState:",L)}}function Ve(){try{i.texStorage2D(...arguments)}catch(L){ze("WebGLState:",L)}}function R(){try{i.texStorage3D(...arguments)}catch(L){ze("WebGLState:",L)}}function y(){try{i.texImage2D(...arguments)}catch(L){ze("WebGLState:",L)}}function Y(){try{i.texImage3D(...arguments)}catch(L){ze("WebGLState:",L)}}function ae(L){return u[L]!==void 0?u[L]:i.getParameter(L)}function se(L,ie){u[L]!==ie&&(i.pixelStorei(L,ie),u[L]=ie)}function de(L){Q.equals(L)===!1&&(i.scissor(L.x,L.y,L.z,L.w),Q.copy(L))}function ve(L){he.equals(L)===!1&&(i.viewport(L.x,L.y,L.z,L.w),he.copy(L))}function te(L,ie){let ee=c.get(ie);ee===void 0&&(ee=new WeakMap,c.set(ie,ee));let ge=ee.get(L);ge===void 0&&(ge=i.getUniformBlockIndex(ie,L.name),i.uniformBlockBinding(ie,ge,ge),ee.set(L,ge))}function ne(L,ie,ee){let ue=c.get(ie).get(L);l[ue]!==ee&&(i.bindBufferBase(i.UNIFORM_BUFFER,ue,ee),l[ue]=ee)}function me(){i.disable(i.BLEND),i.disable(i.CULL_FACE),i.disable(i.DEPTH_TEST),i.disable(i.POLYGON_OFFSET_FILL),i.disable(i.SCISSOR_TEST),i.disable(i.STENCIL_TEST),i.disable(i.SAMPLE_ALPHA_TO_COVERAGE),i.blendEquation(i.FUNC_ADD),i.blendFunc(i.ONE,i.ZERO),i.blendFuncSeparate(i.ONE,i.ZERO,i.ONE,i.ZERO),i.blendColor(0,0,0,0),i.colorMask(!0,!0,!0,!0),i.clearColor(0,0,0,0),i.depthMask(!0),i.depthFunc(i.LESS),a.setReversed(!1),i.clearDepth(1),i.stencilMask(4294967295),i.stencilFunc(i.ALWAYS,0,4294967295),i.stencilOp(i.KEEP,i.KEEP,i.KEEP),i.clearStencil(0),i.cullFace(i.BACK),i.frontFace(i.CCW),i.polygonOffset(0,0),i.activeTexture(i.TEXTURE0),i.bindFramebuffer(i.FRAMEBUFFER,null),i.bindFramebuffer(i.DRAW_FRAMEBUFFER,null),i.bindFramebuffer(i.READ_FRAMEBUFFER,null),i.useProgram(null),i.lineWidth(1),i.scissor(0,0,i.canvas.width,i.canvas.height),i.viewport(0,0,i.canvas.width,i.canvas.height),i.pixelStorei(i.PACK_ALIGNMENT,4),i.pixelStorei(i.UNPACK_ALIGNMENT,4),i.pixelStorei(i.UNPACK_FLIP_Y_WEBGL,!1),i.pixelStorei(i.UNPACK_PREMULTIPLY_ALPHA_WEBGL,!1),i.pixelStorei(i.UNPACK_COLORSPACE_CONVERSION_WEBGL,i.BROWSER_DEFAULT_WEBGL),i.pixelStorei(i.PACK_ROW_LENGTH,0),i.pixelStorei(i.PACK_SKIP_PIXELS,0),i.pixelStorei(i.PACK_SKIP_ROWS,0),i.pixelStorei(i.UNPACK_ROW_LENGTH,0),i.pixelStorei(i.UNPACK_IMAGE_HEIGHT,0),i.pixelStorei(i.UNPACK_SKIP_PIXELS,0),i.pixelStorei(i.UNPACK_SKIP_ROWS,0),i.pixelStorei(i.UNPACK_SKIP_IMAGES,0),h={},u={},I=null,K={},d={},l={},p=new WeakMap,_=[],v=null,m=!1,g=null,M=null,C=null,w=null,E=null,T=null,x=null,A=new je(0,0,0),X=0,k=!1,z=null,U=null,J=null,S=null,D=null,Q.set(0,0,i.canvas.width,i.canvas.height),he.set(0,0,i.canvas.width,i.canvas.height),r.reset(),a.reset(),o.reset()}return{buffers:{color:r,depth:a,stencil:o},enable:we,disable:$e,bindFramebuffer:St,drawBuffers:Be,useProgram:st,setBlending:Ut,setMaterial:At,setFlipSided:jt,setCullFace:xt,setLineWidth:zn,setPolygonOffset:It,setScissorTest:_n,activeTexture:vn,bindTexture:xn,unbindTexture:B,compressedTexImage2D:yn,compressedTexImage3D:pt,texImage2D:y,texImage3D:Y,pixelStorei:se,getParameter:ae,updateUBOMapping:te,uniformBlockBinding:ne,texStorage2D:Ve,texStorage3D:R,texSubImage2D:mt,texSubImage3D:ye,compressedTexSubImage2D:Ct,compressedTexSubImage3D:Fe,scissor:de,viewport:ve,reset:me}}function nx(i,e,t,n,s,r,a){let o=e.has("WEBGL_multisampled_render_to_texture")?e.get("WEBGL_multisampled_render_to_texture"):null,l=typeof navigator>"u"?!1:/OculusBrowser/g.test(navigator.userAgent),c=new et,h=new WeakMap,u=new Set,d,p=new WeakMap,_=new Set,v=new FinalizationRegistry(R=>_.delete(R)),m=!1;try{m=typeof OffscreenCanvas<"u"&&new OffscreenCanvas(1,1).getContext("2d")!==null}catch{}function g(R,y){return m?new OffscreenCanvas(R,y):xr("canvas")}function M(R,y,Y){let ae=1,se=Ve(R);if((se.width>Y||se.height>Y)&&(ae=Y/Math.max(se.width,se.height)),ae<1)if(typeof HTMLImageElement<"u"&&R instanceof HTMLImageElement||typeof HTMLCanvasElement<"u"&&R instanceof HTMLCanvasElement||typeof ImageBitmap<"u"&&R instanceof ImageBitmap||typeof VideoFrame<"u"&&R instanceof VideoFrame){let de=Math.floor(ae*se.width),ve=Math.floor(ae*se.height);d===void 0&&(d=g(de,ve));let te=y?g(de,ve):d;return te.width=de,te.height=ve,te.getContext("2d").drawImage(R,0,0,de,ve),Oe("WebGLRenderer: Texture has been resized from ("+se.width+"x"+se.height+") to ("+de+"x"+ve+")."),te}else return"data"in R&&Oe("WebGLRenderer: Image in DataTexture is too big ("+se.width+"x"+se.height+")."),R;return R}function C(R){return R.generateMipmaps}function w(R){i.generateMipmap(R)}function E(R){return R.isWebGLCubeRenderTarget?i.TEXTURE_CUBE_MAP:R.isWebGL3DRenderTarget?i.TEXTURE_3D:R.isWebGLArrayRenderTarget||R.isCompressedArrayTexture?i.TEXTURE_2D_ARRAY:i.TEXTURE_2D}function T(R,y,Y,ae,se,de=!1){if(R!==null){if(i[R]!==void 0)return i[R];Oe("WebGLRenderer: Attempt to use non-existing WebGL internal format '"+R+"'")}let ve;ae&&(ve=e.get("EXT_texture_norm16"),ve||Oe("WebGLRenderer: Unable to use normalized textures without EXT_texture_norm16 extension"));let te=y;if(y===i.RED&&(Y===i.FLOAT&&(te=i.R32F),Y===i.HALF_FLOAT&&(te=i.R16F),Y===i.UNSIGNED_BYTE&&(te=i.R8),Y===i.UNSIGNED_SHORT&&ve&&(te=ve.R16_EXT),Y===i.SHORT&&ve&&(te=ve.R16_SNORM_EXT)),y===i.RED_INTEGER&&(Y===i.UNSIGNED_BYTE&&(te=i.R8UI),Y===i.UNSIGNED_SHORT&&(te=i.R16UI),Y===i.UNSIGNED_INT&&(te=i.R32UI),Y===i.BYTE&&(te=i.R8I),Y===i.SHORT&&(te=i.R16I),Y===i.INT&&(te=i.R32I)),y===i.RG&&(Y===i.FLOAT&&(te=i.RG32F),Y===i.HALF_FLOAT&&(te=i.RG16F),Y===i.UNSIGNED_BYTE&&(te=i.RG8),Y===i.UNSIGNED_SHORT&&ve&&(te=ve.RG16_EXT),Y===i.SHORT&&ve&&(te=ve.RG16_SNORM_EXT)),y===i.RG_INTEGER&&(Y===i.UNSIGNED_BYTE&&(te=i.RG8UI),Y===i.UNSIGNED_SHORT&&(te=i.RG16UI),Y===i.UNSIGNED_INT&&(te=i.RG32UI),Y===i.BYTE&&(te=i.RG8I),Y===i.SHORT&&(te=i.RG16I),Y===i.INT&&(te=i.RG32I)),y===i.RGB_INTEGER&&(Y===i.UNSIGNED_BYTE&&(te=i.RGB8UI),Y===i.UNSIGNED_SHORT&&(te=i.RGB16UI),Y===i.UNSIGNED_INT&&(te=i.RGB32UI),Y===i.BYTE&&(te=i.RGB8I),Y===i.SHORT&&(te=i.RGB16I),Y===i.INT&&(te=i.RGB32I)),y===i.RGBA_INTEGER&&(Y===i.UNSIGNED_BYTE&&(te=i.RGBA8UI),Y===i.UNSIGNED_SHORT&&(te=i.RGBA16UI),Y===i.UNSIGNED_INT&&(te=i.RGBA32UI),Y===i.BYTE&&(te=i.RGBA8I),Y===i.SHORT&&(te=i.RGBA16I),Y===i.INT&&(te=i.RGBA32I)),y===i.RGB&&(Y===i.UNSIGNED_SHORT&&ve&&(te=ve.RGB16_EXT),Y===i.SHORT&&ve&&(te=ve.RGB16_SNORM_EXT),Y===i.UNSIGNED_INT_5_9_9_9_REV&&(te=i.RGB9_E5),Y===i.UNSIGNED_INT_10F_11F_11F_REV&&(te=i.R11F_G11F_B10F)),y===i.RGBA){let ne=de?_r:Ke.getTransfer(se);Y===i.FLOAT&&(te=i.RGBA32F),Y===i.HALF_FLOAT&&(te=i.RGBA16F),Y===i.UNSIGNED_BYTE&&(te=ne===it?i.SRGB8_ALPHA8:i.RGBA8),Y===i.UNSIGNED_SHORT&&ve&&(te=ve.RGBA16_EXT),Y===i.SHORT&&ve&&(te=ve.RGBA16_SNORM_EXT),Y===i.UNSIGNED_SHORT_4_4_4_4&&(te=i.RGBA4),Y===i.UNSIGNED_SHORT_5_5_5_1&&(te=i.RGB5_A1)}return(te===i.R16F||te===i.R32F||te===i.RG16F||te===i.RG32F||te===i.RGBA16F||te===i.RGBA32F)&&e.get("EXT_color_buffer_float"),te}function x(R,y){let Y;return R?y===null||y===kn||y===hs?Y=i.DEPTH24_STENCIL8:y===Un?Y=i.DEPTH32F_STENCIL8:y===Ws&&(Y=i.DEPTH24_STENCIL8,Oe("DepthTexture: 16 bit depth attachment is not supported with stencil. Using 24-bit attachment.")):y===null||y===kn||y===hs?Y=i.DEPTH_COMPONENT24:y===Un?Y=i.DEPTH_COMPONENT32F:y===Ws&&(Y=i.DEPTH_COMPONENT16),Y}function A(R,y){return C(R)===!0||R.isFramebufferTexture&&R.minFilter!==kt&&R.minFilter!==Jt?Math.log2(Math.max(y.width,y.height))+1:R.mipmaps.length>0?R.mipmaps.length:R.isCompressedTexture&&Array.isArray(R.image)?y.mipmaps.length:1}function X(R){let y=new WeakRef(R);n.get(R).__ref=y,_.add(y),v.register(R,y,y)}function k(R){let y=n.get(R).__ref;y!==void 0&&(_.delete(y),v.unregister(y))}function z(R){J(R.target)}function U(R){S(R.target)}function J(R){R.removeEventListener("dispose",z),k(R),F(R),R.isVideoTexture&&h.delete(R),R.isHTMLTexture&&u.delete(R)}function S(R){R.removeEventListener("dispose",U),k(R),H(R)}function D(){for(let R of _){let y=R.deref();y!==void 0&&(y.isRenderTarget===!0?S(y):J(y))}_.clear(),u.clear()}function F(R){let y=n.get(R);if(y.__webglInit===void 0)return;let Y=R.source,ae=p.get(Y);if(ae){let se=ae[y.__cacheKey];se.usedTimes--,se.usedTimes===0&&G(R),Object.keys(ae).length===0&&p.delete(Y)}n.remove(R)}function G(R){let y=n.get(R);i.deleteTexture(y.__webglTexture);let Y=R.source,ae=p.get(Y);delete ae[y.__cacheKey],a.memory.textures--}function H(R){let y=n.get(R);y.__depthDisposeCallback&&y.__depthDisposeCallback();let Y=R.depthTexture;if(Y&&Y.renderTarget===R&&J(Y),R.isWebGLCubeRenderTarget)for(let se=0;se<6;se++){if(Array.isArray(y.__webglFramebuffer[se]))for(let de=0;de<y.__webglFramebuffer[se].length;de++)i.deleteFramebuffer(y.__webglFramebuffer[se][de]);else i.deleteFramebuffer(y.__webglFramebuffer[se]);y.__webglDepthbuffer&&i.deleteRenderbuffer(y.__webglDepthbuffer[se])}else{if(Array.isArray(y.__webglFramebuffer))for(let se=0;se<y.__webglFramebuffer.length;se++)i.deleteFramebuffer(y.__webglFramebuffer[se]);else i.deleteFramebuffer(y.__webglFramebuffer);if(y.__webglDepthbuffer&&i.deleteRenderbuffer(y.__webglDepthbuffer),y.__webglMultisampledFramebuffer&&i.deleteFramebuffer(y.__webglMultisampledFramebuffer),y.__webglColorRenderbuffer)for(let se=0;se<y.__webglColorRenderbuffer.length;se++)y.__webglColorRenderbuffer[se]&&i.deleteRenderbuffer(y.__webglColorRenderbuffer[se]);y.__webglDepthRenderbuffer&&i.deleteRenderbuffer(y.__webglDepthRenderbuffer)}let ae=R.textures;for(let se=0,de=ae.length;se<de;se++){let ve=n.get(ae[se]);ve.__webglTexture&&(i.deleteTexture(ve.__webglTexture),a.memory.textures--),n.remove(ae[se])}n.remove(R)}let $=0;function I(){$=0}function K(){return $}function oe(R){$=R}function pe(){let R=$;return R>=s.maxTextures&&Oe("WebGLTextures: Trying to use "+(R+1)+" texture units while this GPU supports only "+s.maxTextures),$+=1,R}function Q(R){let y=[];return y.push(R.wrapS),y.push(R.wrapT),y.push(R.wrapR||0),y.push(R.magFilter),y.push(R.minFilter),y.push(R.anisotropy),y.push(R.internalFormat),y.push(R.format),y.push(R.type),y.push(R.generateMipmaps),y.push(R.mipmapsAutoUpdate),y.push(R.premultiplyAlpha),y.push(R.flipY),y.push(R.unpackAlignment),y.push(R.colorSpace),y.join()}function he(R,y){let Y=n.get(R);if(R.isVideoTexture&&Ct(R),R.isRenderTargetTexture===!1&&R.isExternalTexture!==!0&&R.version>0&&Y.__version!==R.version){let ae=R.image;if(ae===null)Oe("WebGLRenderer: Texture marked for update but no image data found.");else if(ae.complete===!1)Oe("WebGLRenderer: Texture marked for update but image is incomplete");else{At(Y,R,y);return}}else R.isExternalTexture&&(Y.__webglTexture=R.sourceTexture?R.sourceTexture:null);t.bindTexture(i.TEXTURE_2D,Y.__webglTexture,i.TEXTURE0+y)}function Te(R,y){let Y=n.get(R);if(R.isRenderTargetTexture===!1&&R.version>0&&Y.__version!==R.version){At(Y,R,y);return}else R.isExternalTexture&&(Y.__webglTexture=R.sourceTexture?R.sourceTexture:null);t.bindTexture(i.TEXTURE_2D_ARRAY,Y.__webglTexture,i.TEXTURE0+y)}function ke(R,y){let Y=n.get(R);if(R.isRenderTargetTexture===!1&&R.version>0&&Y.__version!==R.version){At(Y,R,y);return}t.bindTexture(i.TEXTURE_3D,Y.__webglTexture,i.TEXTURE0+y)}function we(R,y){let Y=n.get(R);if(R.version>0&&Y.__version!==R.version){jt(Y,R,y);return}t.bindTexture(i.TEXTURE_CUBE_MAP,Y.__webglTexture,i.TEXTURE0+y)}let $e={[Ha]:i.REPEAT,[$n]:i.CLAMP_TO_EDGE,[$a]:i.MIRRORED_REPEAT},St={[kt]:i.NEAREST,[sd]:i.NEAREST_MIPMAP_NEAREST,[Ir]:i.NEAREST_MIPMAP_LINEAR,[Jt]:i.LINEAR,[vo]:i.LINEAR_MIPMAP_NEAREST,[fi]:i.LINEAR_MIPMAP_LINEAR},Be={[ld]:i.NEVER,[Gc]:i.ALWAYS,[cd]:i.LESS,[Bc]:i.LEQUAL,[hd]:i.EQUAL,[zc]:i.GEQUAL,[ud]:i.GREATER,[dd]:i.NOTEQUAL};function st(R,y){if(y.type===Un&&e.has("OES_texture_float_linear")===!1&&(y.magFilter===Jt||y.magFilter===vo||y.magFilter===Ir||y.magFilter===fi||y.minFilter===Jt||y.minFilter===vo||y.minFilter===Ir||y.minFilter===fi)&&Oe("WebGLRenderer: Unable to use linear filtering with floating point textures. OES_texture_float_linear not supported on this device."),i.texParameteri(R,i.TEXTURE_WRAP_S,$e[y.wrapS]),i.texParameteri(R,i.TEXTURE_WRAP_T,$e[y.wrapT]),(R===i.TEXTURE_3D||R===i.TEXTURE_2D_ARRAY)&&i.texParameteri(R,i.TEXTURE_WRAP_R,$e[y.wrapR]),i.texParameteri(R,i.TEXTURE_MAG_FILTER,St[y.magFilter]),i.texParameteri(R,i.TEXTURE_MIN_FILTER,St[y.minFilter]),y.compareFunction&&(i.texParameteri(R,i.TEXTURE_COMPARE_MODE,i.COMPARE_REF_TO_TEXTURE),i.texParameteri(R,i.TEXTURE_COMPARE_FUNC,Be[y.compareFunction])),e.has("EXT_texture_filter_anisotropic")===!0){if(y.magFilter===kt||y.minFilter!==Ir&&y.minFilter!==fi||y.type===Un&&e.has("OES_texture_float_linear")===!1)return;if(y.anisotropy>1||n.get(y).__currentAnisotropy){let Y=e.get("EXT_texture_filter_anisotropic");i.texParameterf(R,Y.TEXTURE_MAX_ANISOTROPY_EXT,Math.min(y.anisotropy,s.getMaxAnisotropy())),n.get(y).__currentAnisotropy=y.anisotropy}}}function ot(R,y){let Y=!1;R.__webglInit===void 0&&(R.__webglInit=!0,y.addEventListener("dispose",z),X(y));let ae=y.source,se=p.get(ae);se===void 0&&(se={},p.set(ae,se));let de=Q(y);if(de!==R.__cacheKey){se[de]===void 0&&(se[de]={texture:i.createTexture(),usedTimes:0},a.memory.textures++,Y=!0),se[de].usedTimes++;let ve=se[R.__cacheKey];ve!==void 0&&(se[R.__cacheKey].usedTimes--,ve.usedTimes===0&&G(y)),R.__cacheKey=de,R.__webglTexture=se[de].texture}return Y}function Ye(R,y,Y){return Math.floor(Math.floor(R/Y)/y)}function Ut(R,y,Y,ae){let de=R.updateRanges;if(de.length===0)t.texSubImage2D(i.TEXTURE_2D,0,0,0,y.width,y.height,Y,ae,y.data);else{de.sort((L,ie)=>L.start-ie.start);let ve=0;for(let L=1;L<de.length;L++){let ie=de[ve],ee=de[L],ge=ie.start+ie.count,ue=Ye(ee.start,y.width,4),fe=Ye(ie.start,y.width,4);ee.start<=ge+1&&ue===fe&&Ye(ee.start+ee.count-1,y.width,4)===ue?ie.count=Math.max(ie.count,ee.start+ee.count-ie.start):(++ve,de[ve]=ee)}de.length=ve+1;let te=t.getParameter(i.UNPACK_ROW_LENGTH),ne=t.getParameter(i.UNPACK_SKIP_PIXELS),me=t.getParameter(i.UNPACK_SKIP_ROWS);t.pixelStorei(i.UNPACK_ROW_LENGTH,y.width);for(let L=0,ie=de.length;L<ie;L++){let ee=de[L],ge=Math.floor(ee.start/4),ue=Math.ceil(ee.count/4),fe=ge%y.width,Le=Math.floor(ge/y.width),Xe=ue,le=1;t.pixelStorei(i.UNPACK_SKIP_PIXELS,fe),t.pixelStorei(i.UNPACK_SKIP_ROWS,Le),t.texSubImage2D(i.TEXTURE_2D,0,fe,Le,Xe,le,Y,ae,y.data)}R.clearUpdateRanges(),t.pixelStorei(i.UNPACK_ROW_LENGTH,te),t.pixelStorei(i.UNPACK_SKIP_PIXELS,ne),t.pixelStorei(i.UNPACK_SKIP_ROWS,me)}}function At(R,y,Y){let ae=i.TEXTURE_2D;(y.isDataArrayTexture||y.isCompressedArrayTexture)&&(ae=i.TEXTURE_2D_ARRAY),y.isData3DTexture&&(ae=i.TEXTURE_3D);let se=ot(R,y),de=y.source;t.bindTexture(ae,R.__webglTexture,i.TEXTURE0+Y);let ve=n.get(de);if(de.version!==ve.__version||se===!0){if(t.activeTexture(i.TEXTURE0+Y),(typeof ImageBitmap<"u"&&y.image instanceof ImageBitmap)===!1){let le=Ke.getPrimaries(Ke.workingColorSpace),Ue=y.colorSpace===mi?null:Ke.getPrimaries(y.colorSpace),We=y.colorSpace===mi||le===Ue?i.NONE:i.BROWSER_DEFAULT_WEBGL;t.pixelStorei(i.UNPACK_FLIP_Y_WEBGL,y.flipY),t.pixelStorei(i.UNPACK_PREMULTIPLY_ALPHA_WEBGL,y.premultiplyAlpha),t.pixelStorei(i.UNPACK_COLORSPACE_CONVERSION_WEBGL,We)}t.pixelStorei(i.UNPACK_ALIGNMENT,y.unpackAlignment);let ne=M(y.image,!1,s.maxTextureSize);ne=Fe(y,ne);let me=r.convert(y.format,y.colorSpace),L=r.convert(y.type),ie=T(y.internalFormat,me,L,y.normalized,y.colorSpace,y.isVideoTexture);st(ae,y);let ee,ge=y.mipmaps,ue=y.isVideoTexture!==!0,fe=ve.__version===void 0||se===!0,Le=de.dataReady,Xe=A(y,ne);if(y.isDepthTexture)ie=x(y.format===pi,y.type),fe&&(ue?t.texStorage2D(i.TEXTURE_2D,1,ie,ne.width,ne.height):t.texImage2D(i.TEXTURE_2D,0,ie,ne.width,ne.height,0,me,L,null));else if(y.isDataTexture)if(ge.length>0){ue&&fe&&t.texStorage2D(i.TEXTURE_2D,Xe,ie,ge[0].width,ge[0].height);for(let le=0,Ue=ge.length;le<Ue;le++)ee=ge[le],ue?Le&&t.texSubImage2D(i.TEXTURE_2D,le,0,0,ee.width,ee.height,me,L,ee.data):t.texImage2D(i.TEXTURE_2D,le,ie,ee.width,ee.height,0,me,L,ee.data);y.generateMipmaps=!1}else ue?(fe&&t.texStorage2D(i.TEXTURE_2D,Xe,ie,ne.width,ne.height),Le&&Ut(y,ne,me,L)):t.texImage2D(i.TEXTURE_2D,0,ie,ne.width,ne.height,0,me,L,ne.data);else if(y.isCompressedTexture)if(y.isCompressedArrayTexture){ue&&fe&&t.texStorage3D(i.TEXTURE_2D_ARRAY,Xe,ie,ge[0].width,ge[0].height,ne.depth);for(let le=0,Ue=ge.length;le<Ue;le++)if(ee=ge[le],y.format!==On)if(me!==null)if(ue){if(Le)if(y.layerUpdates.size>0){let We=Yc(ee.width,ee.height,y.format,y.type);for(let be of y.layerUpdates){let rt=ee.data.subarray(be*We/ee.data.BYTES_PER_ELEMENT,(be+1)*We/ee.data.BYTES_PER_ELEMENT);t.compressedTexSubImage3D(i.TEXTURE_2D_ARRAY,le,0,0,be,ee.width,ee.height,1,me,rt)}}else t.compressedTexSubImage3D(i.TEXTURE_2D_ARRAY,le,0,0,0,ee.width,ee.height,ne.depth,me,ee.data)}else t.compressedTexImage3D(i.TEXTURE_2D_ARRAY,le,ie,ee.width,ee.height,ne.depth,0,ee.data,0,0);else Oe("WebGLRenderer: Attempt to load unsupported compressed texture format in .uploadTexture()");else ue?Le&&t.texSubImage3D(i.TEXTURE_2D_ARRAY,le,0,0,0,ee.width,ee.height,ne.depth,me,L,ee.data):t.texImage3D(i.TEXTURE_2D_ARRAY,le,ie,ee.width,ee.height,ne.depth,0,me,L,ee.data);y.layerUpdates.size>0&&y.clearLayerUpdates()}else{ue&&fe&&t.texStorage2D(i.TEXTURE_2D,Xe,ie,ge[0].width,ge[0].height);for(let le=0,Ue=ge.length;le<Ue;le++)ee=ge[le],y.format!==On?me!==null?ue?Le&&t.compressedTexSubImage2D(i.TEXTURE_2D,le,0,0,ee.width,ee.height,me,ee.data):t.compressedTexImage2D(i.TEXTURE_2D,le,ie,ee.width,ee.height,0,ee.data):Oe("WebGLRenderer: Attempt to load unsupported compressed texture format in .uploadTexture()"):ue?Le&&t.texSubImage2D(i.TEXTURE_2D,le,0,0,ee.width,ee.height,me,L,ee.data):t.texImage2D(i.TEXTURE_2D,le,ie,ee.width,ee.height,0,me,L,ee.data)}else if(y.isDataArrayTexture)if(ue){if(fe&&t.texStorage3D(i.TEXTURE_2D_ARRAY,Xe,ie,ne.width,ne.height,ne.depth),Le)if(y.layerUpdates.size>0){let le=Yc(ne.width,ne.height,y.format,y.type);for(let Ue of y.layerUpdates){let We=ne.data.subarray(Ue*le/ne.data.BYTES_PER_ELEMENT,(Ue+1)*le/ne.data.BYTES_PER_ELEMENT);t.texSubImage3D(i.TEXTURE_2D_ARRAY,0,0,0,Ue,ne.width,ne.height,1,me,L,We)}y.clearLayerUpdates()}else t.texSubImage3D(i.TEXTURE_2D_ARRAY,0,0,0,0,ne.width,ne.height,ne.depth,me,L,ne.data)}else t.texImage3D(i.TEXTURE_2D_ARRAY,0,ie,ne.width,ne.height,ne.depth,0,me,L,ne.data);else if(y.isData3DTexture)ue?(fe&&t.texStorage3D(i.TEXTURE_3D,Xe,ie,ne.width,ne.height,ne.depth),Le&&t.texSubImage3D(i.TEXTURE_3D,0,0,0,0,ne.width,ne.height,ne.depth,me,L,ne.data)):t.texImage3D(i.TEXTURE_3D,0,ie,ne.width,ne.height,ne.depth,0,me,L,ne.data);else if(y.isFramebufferTexture){if(fe)if(ue)t.texStorage2D(i.TEXTURE_2D,Xe,ie,ne.width,ne.height);else{let le=ne.width,Ue=ne.height;for(let We=0;We<Xe;We++)t.texImage2D(i.TEXTURE_2D,We,ie,le,Ue,0,me,L,null),le>>=1,Ue>>=1}}else if(y.isHTMLTexture){if("texElementImage2D"in i){let le=i.canvas;if(le.hasAttribute("layoutsubtree")||le.setAttribute("layoutsubtree","true"),ne.parentNode!==le){le.appendChild(ne),u.add(y),le.onpaint=Ue=>{let We=Ue.changedElements;for(let be of u)We.includes(be.image)&&(be.needsUpdate=!0)},le.requestPaint();return}if(i.texElementImage2D.length===3)i.texElementImage2D(i.TEXTURE_2D,i.RGBA8,ne);else{let We=i.RGBA,be=i.RGBA,rt=i.UNSIGNED_BYTE;i.texElementImage2D(i.TEXTURE_2D,0,We,be,rt,ne)}i.texParameteri(i.TEXTURE_2D,i.TEXTURE_MIN_FILTER,i.LINEAR),i.texParameteri(i.TEXTURE_2D,i.TEXTURE_WRAP_S,i.CLAMP_TO_EDGE),i.texParameteri(i.TEXTURE_2D,i.TEXTURE_WRAP_T,i.CLAMP_TO_EDGE)}}else if(ge.length>0){if(ue&&fe){let le=Ve(ge[0]);t.texStorage2D(i.TEXTURE_2D,Xe,ie,le.width,le.height)}for(let le=0,Ue=ge.length;le<Ue;le++)ee=ge[le],ue?Le&&t.texSubImage2D(i.TEXTURE_2D,le,0,0,me,L,ee):t.texImage2D(i.TEXTURE_2D,le,ie,me,L,ee);y.generateMipmaps=!1}else if(ue){if(fe){let le=Ve(ne);t.texStorage2D(i.TEXTURE_2D,Xe,ie,le.width,le.height)}Le&&t.texSubImage2D(i.TEXTURE_2D,0,0,0,me,L,ne)}else t.texImage2D(i.TEXTURE_2D,0,ie,me,L,ne);C(y)&&y.mipmapsAutoUpdate===!0&&w(ae),ve.__version=de.version,y.onUpdate&&y.onUpdate(y)}R.__version=y.version}function jt(R,y,Y){if(y.image.length!==6)return;let ae=ot(R,y),se=y.source;t.bindTexture(i.TEXTURE_CUBE_MAP,R.__webglTexture,i.TEXTURE0+Y);let de=n.get(se);if(se.version!==de.__version||ae===!0){t.activeTexture(i.TEXTURE0+Y);let ve=Ke.getPrimaries(Ke.workingColorSpace),te=y.colorSpace===mi?null:Ke.getPrimaries(y.colorSpace),ne=y.colorSpace===mi||ve===te?i.NONE:i.BROWSER_DEFAULT_WEBGL;t.pixelStorei(i.UNPACK_FLIP_Y_WEBGL,y.flipY),t.pixelStorei(i.UNPACK_PREMULTIPLY_ALPHA_WEBGL,y.premultiplyAlpha),t.pixelStorei(i.UNPACK_ALIGNMENT,y.unpackAlignment),t.pixelStorei(i.UNPACK_COLORSPACE_CONVERSION_WEBGL,ne);let me=y.isCompressedTexture||y.image[0].isCompressedTexture,L=y.image[0]&&y.image[0].isDataTexture,ie=[];for(let be=0;be<6;be++)!me&&!L?ie[be]=M(y.image[be],!0,s.maxCubemapSize):ie[be]=L?y.image[be].image:y.image[be],ie[be]=Fe(y,ie[be]);let ee=ie[0],ge=r.convert(y.format,y.colorSpace),ue=r.convert(y.type),fe=T(y.internalFormat,ge,ue,y.normalized,y.colorSpace),Le=y.isVideoTexture!==!0,Xe=de.__version===void 0||ae===!0,le=se.dataReady,Ue=A(y,ee);st(i.TEXTURE_CUBE_MAP,y);let We;if(y.isDepthTexture){if(fe=x(y.format===pi,y.type),Xe)if(Le)t.texStorage2D(i.TEXTURE_CUBE_MAP,1,fe,ee.width,ee.height);else for(let be=0;be<6;be++)t.texImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+be,0,fe,ee.width,ee.height,0,ge,ue,null)}else if(me){Le&&Xe&&t.texStorage2D(i.TEXTURE_CUBE_MAP,Ue,fe,ee.width,ee.height);for(let be=0;be<6;be++){We=ie[be].mipmaps;for(let rt=0;rt<We.length;rt++){let Lt=We[rt];y.format!==On?ge!==null?Le?le&&t.compressedTexSubImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+be,rt,0,0,Lt.width,Lt.height,ge,Lt.data):t.compressedTexImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+be,rt,fe,Lt.width,Lt.height,0,Lt.data):Oe("WebGLRenderer: Attempt to load unsupported compressed texture format in .setTextureCube()"):Le?le&&t.texSubImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+be,rt,0,0,Lt.width,Lt.height,ge,ue,Lt.data):t.texImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+be,rt,fe,Lt.width,Lt.height,0,ge,ue,Lt.data)}}}else{if(We=y.mipmaps,Le&&Xe){We.length>0&&Ue++;let be=Ve(ie[0]);t.texStorage2D(i.TEXTURE_CUBE_MAP,Ue,fe,be.width,be.height)}for(let be=0;be<6;be++)if(L){Le?le&&t.texSubImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+be,0,0,0,ie[be].width,ie[be].height,ge,ue,ie[be].data):t.texImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+be,0,fe,ie[be].width,ie[be].height,0,ge,ue,ie[be].data);for(let rt=0;rt<We.length;rt++){let _i=We[rt].image[be].image;Le?le&&t.texSubImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+be,rt+1,0,0,_i.width,_i.height,ge,ue,_i.data):t.texImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+be,rt+1,fe,_i.width,_i.height,0,ge,ue,_i.data)}}else{Le?le&&t.texSubImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+be,0,0,0,ge,ue,ie[be]):t.texImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+be,0,fe,ge,ue,ie[be]);for(let rt=0;rt<We.length;rt++){let Lt=We[rt];Le?le&&t.texSubImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+be,rt+1,0,0,ge,ue,Lt.image[be]):t.texImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+be,rt+1,fe,ge,ue,Lt.image[be])}}}C(y)&&y.mipmapsAutoUpdate===!0&&w(i.TEXTURE_CUBE_MAP),de.__version=se.version,y.onUpdate&&y.onUpdate(y)}R.__version=y.version}function xt(R,y,Y,ae,se,de){let ve=r.convert(Y.format,Y.colorSpace),te=r.convert(Y.type),ne=T(Y.internalFormat,ve,te,Y.normalized,Y.colorSpace),me=n.get(y),L=n.get(Y);if(L.__renderTarget=y,!me.__hasExternalTextures){let ie=Math.max(1,y.width>>de),ee=Math.max(1,y.height>>de);se===i.TEXTURE_3D||se===i.TEXTURE_2D_ARRAY?t.texImage3D(se,de,ne,ie,ee,y.depth,0,ve,te,null):t.texImage2D(se,de,ne,ie,ee,0,ve,te,null)}t.bindFramebuffer(i.FRAMEBUFFER,R),ye(y)?o.framebufferTexture2DMultisampleEXT(i.FRAMEBUFFER,ae,se,L.__webglTexture,0,mt(y)):(se===i.TEXTURE_2D||se>=i.TEXTURE_CUBE_MAP_POSITIVE_X&&se<=i.TEXTURE_CUBE_MAP_NEGATIVE_Z)&&i.framebufferTexture2D(i.FRAMEBUFFER,ae,se,L.__webglTexture,de),t.bindFramebuffer(i.FRAMEBUFFER,null)}function zn(R,y,Y){if(i.bindRenderbuffer(i.RENDERBUFFER,R),y.depthBuffer){let ae=y.depthTexture,se=ae&&ae.isDepthTexture?ae.type:null,de=x(y.stencilBuffer,se),ve=y.stencilBuffer?i.DEPTH_STENCIL_ATTACHMENT:i.DEPTH_ATTACHMENT;ye(y)?o.renderbufferStorageMultisampleEXT(i.RENDERBUFFER,mt(y),de,y.width,y.height):Y?i.renderbufferStorageMultisample(i.RENDERBUFFER,mt(y),de,y.width,y.height):i.renderbufferStorage(i.RENDERBUFFER,de,y.width,y.height),i.framebufferRenderbuffer(i.FRAMEBUFFER,ve,i.RENDERBUFFER,R)}else{let ae=y.textures;for(let se=0;se<ae.length;se++){let de=ae[se],ve=r.convert(de.format,de.colorSpace),te=r.convert(de.type),ne=T(de.internalFormat,ve,te,de.normalized,de.colorSpace);ye(y)?o.renderbufferStorageMultisampleEXT(i.RENDERBUFFER,mt(y),ne,y.width,y.height):Y?i.renderbufferStorageMultisample(i.RENDERBUFFER,mt(y),ne,y.width,y.height):i.renderbufferStorage(i.RENDERBUFFER,ne,y.width,y.height)}}i.bindRenderbuffer(i.RENDERBUFFER,null)}function It(R,y,Y){let ae=y.isWebGLCubeRenderTarget===!0;if(t.bindFramebuffer(i.FRAMEBUFFER,R),!(y.depthTexture&&y.depthTexture.isDepthTexture))throw new Error("THREE.WebGLTextures: renderTarget.depthTexture must be an instance of THREE.DepthTexture.");let se=n.get(y.depthTexture);se.__renderTarget=y;let de=ae?y.depthTexture.image[0]:y.depthTexture.image;(!se.__webglTexture||de.width!==y.width||de.height!==y.height)&&(de.width=y.width,de.height=y.height,y.depthTexture.needsUpdate=!0),ae?we(y.depthTexture,0):he(y.depthTexture,0);let ve=se.__webglTexture,te=mt(y),ne=ae?i.TEXTURE_CUBE_MAP_POSITIVE_X+Y:i.TEXTURE_2D,me=y.depthTexture.format===pi?i.DEPTH_STENCIL_ATTACHMENT:i.DEPTH_ATTACHMENT;if(y.depthTexture.format===ui)ye(y)?o.framebufferTexture2DMultisampleEXT(i.FRAMEBUFFER,me,ne,ve,0,te):i.framebufferTexture2D(i.FRAMEBUFFER,me,ne,ve,0);else if(y.depthTexture.format===pi)ye(y)?o.framebufferTexture2DMultisampleEXT(i.FRAMEBUFFER,me,ne,ve,0,te):i.framebufferTexture2D(i.FRAMEBUFFER,me,ne,ve,0);else throw new Error("THREE.WebGLTextures: Unknown depthTexture format.")}function _n(R){let y=n.get(R),Y=R.isWebGLCubeRenderTarget===!0;if(y.__boundDepthTexture!==R.depthTexture){let ae=R.depthTexture;if(y.__depthDisposeCallback&&y.__depthDisposeCallback(),ae){let se=()=>{delete y.__boundDepthTexture,delete y.__depthDisposeCallback,ae.removeEventListener("dispose",se)};ae.addEventListener("dispose",se),y.__depthDisposeCallback=se}y.__boundDepthTexture=ae}if(R.depthTexture&&!y.__autoAllocateDepthBuffer)if(Y)for(let ae=0;ae<6;ae++)It(y.__webglFramebuffer[ae],R,ae);else R.texture.mipmaps.length>0?It(y.__webglFramebuffer[0],R,0):It(y.__webglFramebuffer,R,0);else if(Y){y.__webglDepthbuffer=[];for(let ae=0;ae<6;ae++)if(t.bindFramebuffer(i.FRAMEBUFFER,y.__webglFramebuffer[ae]),y.__webglDepthbuffer[ae]===void 0)y.__webglDepthbuffer[ae]=i.createRenderbuffer(),zn(y.__webglDepthbuffer[ae],R,!1);else{let se=R.stencilBuffer?i.DEPTH_STENCIL_ATTACHMENT:i.DEPTH_ATTACHMENT,de=y.__webglDepthbuffer[ae];i.bindRenderbuffer(i.RENDERBUFFER,de),i.framebufferRenderbuffer(i.FRAMEBUFFER,se,i.RENDERBUFFER,de)}}else if(R.texture.mipmaps.length>0?t.bindFramebuffer(i.FRAMEBUFFER,y.__webglFramebuffer[0]):t.bindFramebuffer(i.FRAMEBUFFER,y.__webglFramebuffer),y.__webglDepthbuffer===void 0)y.__webglDepthbuffer=i.createRenderbuffer(),zn(y.__webglDepthbuffer,R,!1);else{let se=R.stencilBuffer?i.DEPTH_STENCIL_ATTACHMENT:i.DEPTH_ATTACHMENT,de=y.__webglDepthbuffer;i.bindRenderbuffer(i.RENDERBUFFER,de),i.framebufferRenderbuffer(i.FRAMEBUFFER,se,i.RENDERBUFFER,de)}t.bindFramebuffer(i.FRAMEBUFFER,null)}function vn(R,y,Y){let ae=n.get(R);y!==void 0&&xt(ae.__webglFramebuffer,R,R.texture,i.COLOR_ATTACHMENT0,i.TEXTURE_2D,0),Y!==void 0&&_n(R)}function xn(R){let y=R.texture,Y=n.get(R),ae=n.get(y);R.addEventListener("dispose",U),X(R);let se=R.textures,de=R.isWebGLCubeRenderTarget===!0,ve=se.length>1;if(ve||(ae.__webglTexture===void 0&&(ae.__webglTexture=i.createTexture()),ae.__version=y.version,a.memory.textures++),de){Y.__webglFramebuffer=[];for(let te=0;te<6;te++)if(y.mipmaps.length>0){Y.__webglFramebuffer[te]=[];for(let ne=0;ne<y.mipmaps.length;ne++)Y.__webglFramebuffer[te][ne]=i.createFramebuffer()}else Y.__webglFramebuffer[te]=i.createFramebuffer()}else{if(y.mipmaps.length>0){Y.__webglFramebuffer=[];for(let te=0;te<y.mipmaps.length;te++)Y.__webglFramebuffer[te]=i.createFramebuffer()}else Y.__webglFramebuffer=i.createFramebuffer();if(ve)for(let te=0,ne=se.length;te<ne;te++){let me=n.get(se[te]);me.__webglTexture===void 0&&(me.__webglTexture=i.createTexture(),a.memory.textures++)}if(R.samples>0&&ye(R)===!1){Y.__webglMultisampledFramebuffer=i.createFramebuffer(),Y.__webglColorRenderbuffer=[],t.bindFramebuffer(i.FRAMEBUFFER,Y.__webglMultisampledFramebuffer);for(let te=0;te<se.length;te++){let ne=se[te];Y.__webglColorRenderbuffer[te]=i.createRenderbuffer(),i.bindRenderbuffer(i.RENDERBUFFER,Y.__webglColorRenderbuffer[te]);let me=r.convert(ne.format,ne.colorSpace),L=r.convert(ne.type),ie=T(ne.internalFormat,me,L,ne.normalized,ne.colorSpace,R.isXRRenderTarget===!0),ee=mt(R);i.renderbufferStorageMultisample(i.RENDERBUFFER,ee,ie,R.width,R.height),i.framebufferRenderbuffer(i.FRAMEBUFFER,i.COLOR_ATTACHMENT0+te,i.RENDERBUFFER,Y.__webglColorRenderbuffer[te])}i.bindRenderbuffer(i.RENDERBUFFER,null),R.depthBuffer&&(Y.__webglDepthRenderbuffer=i.createRenderbuffer(),zn(Y.__webglDepthRenderbuffer,R,!0)),t.bindFramebuffer(i.FRAMEBUFFER,null)}}if(de){t.bindTexture(i.TEXTURE_CUBE_MAP,ae.__webglTexture),st(i.TEXTURE_CUBE_MAP,y);for(let te=0;te<6;te++)if(y.mipmaps.length>0)for(let ne=0;ne<y.mipmaps.length;ne++)xt(Y.__webglFramebuffer[te][ne],R,y,i.COLOR_ATTACHMENT0,i.TEXTURE_CUBE_MAP_POSITIVE_X+te,ne);else xt(Y.__webglFramebuffer[te],R,y,i.COLOR_ATTACHMENT0,i.TEXTURE_CUBE_MAP_POSITIVE_X+te,0);C(y)?w(i.TEXTURE_CUBE_MAP):y.mipmaps.length>0&&i.texParameteri(i.TEXTURE_CUBE_MAP,i.TEXTURE_MAX_LEVEL,y.mipmaps.length-1),t.unbindTexture()}else if(ve){for(let te=0,ne=se.length;te<ne;te++){let me=se[te],L=n.get(me),ie=i.TEXTURE_2D;(R.isWebGL3DRenderTarget||R.isWebGLArrayRenderTarget)&&(ie=R.isWebGL3DRenderTarget?i.TEXTURE_3D:i.TEXTURE_2D_ARRAY),t.bindTexture(ie,L.__webglTexture),st(ie,me),xt(Y.__webglFramebuffer,R,me,i.COLOR_ATTACHMENT0+te,ie,0),C(me)&&w(ie)}t.unbindTexture()}else{let te=i.TEXTURE_2D;if((R.isWebGL3DRenderTarget||R.isWebGLArrayRenderTarget)&&(te=R.isWebGL3DRenderTarget?i.TEXTURE_3D:i.TEXTURE_2D_ARRAY),t.bindTexture(te,ae.__webglTexture),st(te,y),y.mipmaps.length>0)for(let ne=0;ne<y.mipmaps.length;ne++)xt(Y.__webglFramebuffer[ne],R,y,i.COLOR_ATTACHMENT0,te,ne);else xt(Y.__webglFramebuffer,R,y,i.COLOR_ATTACHMENT0,te,0);C(y)?w(te):y.mipmaps.length>0&&i.texParameteri(te,i.TEXTURE_MAX_LEVEL,y.mipmaps.length-1),t.unbindTexture()}R.depthBuffer&&_n(R)}function B(R){let y=R.textures;for(let Y=0,ae=y.length;Y<ae;Y++){let se=y[Y];if(C(se)&&se.mipmapsAutoUpdate===!0){let de=E(R),ve=n.get(se).__webglTexture;t.bindTexture(de,ve),w(de),t.unbindTexture()}}}let yn=[];function pt(R){if(R.samples>0){if(ye(R)===!1){let y=R.textures,Y=R.width,ae=R.height,se=i.COLOR_BUFFER_BIT,de=R.stencilBuffer?i.DEPTH_STENCIL_ATTACHMENT:i.DEPTH_ATTACHMENT,ve=n.get(R),te=y.length>1;if(te)for(let me=0;me<y.length;me++)t.bindFramebuffer(i.FRAMEBUFFER,ve.__webglMultisampledFramebuffer),i.framebufferRenderbuffer(i.FRAMEBUFFER,i.COLOR_ATTACHMENT0+me,i.RENDERBUFFER,null),t.bindFramebuffer(i.FRAMEBUFFER,ve.__webglFramebuffer),i.framebufferTexture2D(i.DRAW_FRAMEBUFFER,i.COLOR_ATTACHMENT0+me,i.TEXTURE_2D,null,0);t.bindFramebuffer(i.READ_FRAMEBUFFER,ve.__webglMultisampledFramebuffer),R.texture.mipmaps.length>0?t.bindFramebuffer(i.DRAW_FRAMEBUFFER,ve.__webglFramebuffer[0]):t.bindFramebuffer(i.DRAW_FRAMEBUFFER,ve.__webglFramebuffer);for(let me=0;me<y.length;me++){if(R.resolveDepthBuffer&&(R.depthBuffer&&(se|=i.DEPTH_BUFFER_BIT),R.stencilBuffer&&R.resolveStencilBuffer&&(se|=i.STENCIL_BUFFER_BIT)),te){i.framebufferRenderbuffer(i.READ_FRAMEBUFFER,i.COLOR_ATTACHMENT0,i.RENDERBUFFER,ve.__webglColorRenderbuffer[me]);let L=n.get(y[me]).__webglTexture;i.framebufferTexture2D(i.DRAW_FRAMEBUFFER,i.COLOR_ATTACHMENT0,i.TEXTURE_2D,L,0)}i.blitFramebuffer(0,0,Y,ae,0,0,Y,ae,se,i.NEAREST),l===!0&&(yn.length=0,yn.push(i.COLOR_ATTACHMENT0+me),R.depthBuffer&&R.storeMultisampledDepthBuffer===!1&&yn.push(de),i.invalidateFramebuffer(i.READ_FRAMEBUFFER,yn))}if(t.bindFramebuffer(i.READ_FRAMEBUFFER,null),t.bindFramebuffer(i.DRAW_FRAMEBUFFER,null),te)for(let me=0;me<y.length;me++){t.bindFramebuffer(i.FRAMEBUFFER,ve.__webglMultisampledFramebuffer),i.framebufferRenderbuffer(i.FRAMEBUFFER,i.COLOR_ATTACHMENT0+me,i.RENDERBUFFER,ve.__webglColorRenderbuffer[me]);let L=n.get(y[me]).__webglTexture;t.bindFramebuffer(i.FRAMEBUFFER,ve.__webglFramebuffer),i.framebufferTexture2D(i.DRAW_FRAMEBUFFER,i.COLOR_ATTACHMENT0+me,i.TEXTURE_2D,L,0)}t.bindFramebuffer(i.DRAW_FRAMEBUFFER,ve.__webglMultisampledFramebuffer)}else if(R.depthBuffer&&R.storeMultisampledDepthBuffer===!1&&l){let y=R.stencilBuffer?i.DEPTH_STENCIL_ATTACHMENT:i.DEPTH_ATTACHMENT;i.invalidateFramebuffer(i.DRAW_FRAMEBUFFER,[y])}}}function mt(R){return Math.min(s.maxSamples,R.samples)}function ye(R){let y=n.get(R);return R.samples>0&&e.has("WEBGL_multisampled_render_to_texture")===!0&&y.__useRenderToTexture!==!1}function Ct(R){let y=a.render.frame;h.get(R)!==y&&(h.set(R,y),R.update())}function Fe(R,y){let Y=R.colorSpace,ae=R.format,se=R.type;return R.isCompressedTexture===!0||R.isVideoTexture===!0||Y!==gr&&Y!==mi&&(Ke.getTransfer(Y)===it?(ae!==On||se!==mn)&&Oe("WebGLTextures: sRGB encoded textures have to use RGBAFormat and UnsignedByteType."):ze("WebGLTextures: Unsupported texture color space:",Y)),y}function Ve(R){return typeof HTMLImageElement<"u"&&R instanceof HTMLImageElement?(c.width=R.naturalWidth||R.width,c.height=R.naturalHeight||R.height):typeof VideoFrame<"u"&&R instanceof VideoFrame?(c.width=R.displayWidth,c.height=R.displayHeight):(c.width=R.width,c.height=R.height),c}this.allocateTextureUnit=pe,this.resetTextureUnits=I,this.getTextureUnits=K,this.setTextureUnits=oe,this.setTexture2D=he,this.setTexture2DArray=Te,this.setTexture3D=ke,this.setTextureCube=we,this.rebindTextures=vn,this.setupRenderTarget=xn,this.updateRenderTargetMipmap=B,this.updateMultisampleRenderTarget=pt,this.setupDepthRenderbuffer=_n,this.setupFrameBufferTexture=xt,this.useMultisampledRTT=ye,this.dispose=D}function ix(i,e){function t(n,s=mi){let r,a=Ke.getTransfer(s);if(n===mn)return i.UNSIGNED_BYTE;if(n===yo)return i.UNSIGNED_SHORT_4_4_4_4;if(n===bo)return i.UNSIGNED_SHORT_5_5_5_1;if(n===Nc)return i.UNSIGNED_INT_5_9_9_9_REV;if(n===Dc)return i.UNSIGNED_INT_10F_11F_11F_REV;if(n===Ic)return i.BYTE;if(n===Lc)return i.SHORT;if(n===Ws)return i.UNSIGNED_SHORT;if(n===xo)return i.INT;if(n===kn)return i.UNSIGNED_INT;if(n===Un)return i.FLOAT;if(n===Fn)return i.HALF_FLOAT;if(n===kc)return i.ALPHA;if(n===Uc)return i.RGB;if(n===On)return i.RGBA;if(n===ui)return i.DEPTH_COMPONENT;if(n===pi)return i.DEPTH_STENCIL;if(n===Fc)return i.RED;if(n===Mo)return i.RED_INTEGER;if(n===Vi)return i.RG;if(n===wo)return i.RG_INTEGER;if(n===So)return i.RGBA_INTEGER;if(n===Lr||n===Nr||n===Dr||n===kr)if(a===it)if(r=e.get("WEBGL_compressed_texture_s3tc_srgb"),r!==null){if(n===Lr)return r.COMPRESSED_SRGB_S3TC_DXT1_EXT;if(n===Nr)return r.COMPRESSED_SRGB_ALPHA_S3TC_DXT1_EXT;if(n===Dr)return r.COMPRESSED_SRGB_ALPHA_S3TC_DXT3_EXT;if(n===kr)return r.COMPRESSED_SRGB_ALPHA_S3TC_DXT5_EXT}else return null;else if(r=e.get("WEBGL_compressed_texture_s3tc"),r!==null){if(n===Lr)return r.COMPRESSED_RGB_S3TC_DXT1_EXT;if(n===Nr)return r.COMPRESSED_RGBA_S3TC_DXT1_EXT;if(n===Dr)return r.COMPRESSED_RGBA_S3TC_DXT3_EXT;if(n===kr)return r.COMPRESSED_RGBA_S3TC_DXT5_EXT}else return null;if(n===To||n===Eo||n===Ao||n===Co)if(r=e.get("WEBGL_compressed_texture_pvrtc"),r!==null){if(n===To)return r.COMPRESSED_RGB_PVRTC_4BPPV1_IMG;if(n===Eo)return r.COMPRESSED_RGB_PVRTC_2BPPV1_IMG;if(n===Ao)return r.COMPRESSED_RGBA_PVRTC_4BPPV1_IMG;if(n===Co)return r.COMPRESSED_RGBA_PVRTC_2BPPV1_IMG}else return null;if(n===Ro||n===Po||n===Io||n===Lo||n===No||n===Ur||n===Do)if(r=e.get("WEBGL_compressed_texture_etc"),r!==null){if(n===Ro||n===Po)return a===it?r.COMPRESSED_SRGB8_ETC2:r.COMPRESSED_RGB8_ETC2;if(n===Io)return a===it?r.COMPRESSED_SRGB8_ALPHA8_ETC2_EAC:r.COMPRESSED_RGBA8_ETC2_EAC;if(n===Lo)return r.COMPRESSED_R11_EAC;if(n===No)return r.COMPRESSED_SIGNED_R11_EAC;if(n===Ur)return r.COMPRESSED_RG11_EAC;if(n===Do)return r.COMPRESSED_SIGNED_RG11_EAC}else return null;if(n===ko||n===Uo||n===Fo||n===Oo||n===Bo||n===zo||n===Go||n===Vo||n===Ho||n===$o||n===Wo||n===Xo||n===qo||n===Yo)if(r=e.get("WEBGL_compressed_texture_astc"),r!==null){if(n===ko)return a===it?r.COMPRESSED_SRGB8_ALPHA8_ASTC_4x4_KHR:r.COMPRESSED_RGBA_ASTC_4x4_KHR;if(n===Uo)return a===it?r.COMPRESSED_SRGB8_ALPHA8_ASTC_5x4_KHR:r.COMPRESSED_RGBA_ASTC_5x4_KHR;if(n===Fo)return a===it?r.COMPRESSED_SRGB8_ALPHA8_ASTC_5x5_KHR:r.COMPRESSED_RGBA_ASTC_5x5_KHR;if(n===Oo)return a===it?r.COMPRESSED_SRGB8_ALPHA8_ASTC_6x5_KHR:r.COMPRESSED_RGBA_ASTC_6x5_KHR;if(n===Bo)return a===it?r.COMPRESSED_SRGB8_ALPHA8_ASTC_6x6_KHR:r.COMPRESSED_RGBA_ASTC_6x6_KHR;if(n===zo)return a===it?r.COMPRESSED_SRGB8_ALPHA8_ASTC_8x5_KHR:r.COMPRESSED_RGBA_ASTC_8x5_KHR;if(n===Go)return a===it?r.COMPRESSED_SRGB8_ALPHA8_ASTC_8x6_KHR:r.COMPRESSED_RGBA_ASTC_8x6_KHR;if(n===Vo)return a===it?r.COMPRESSED_SRGB8_ALPHA8_ASTC_8x8_KHR:r.COMPRESSED_RGBA_ASTC_8x8_KHR;if(n===Ho)return a===it?r.COMPRESSED_SRGB8_ALPHA8_ASTC_10x5_KHR:r.COMPRESSED_RGBA_ASTC_10x5_KHR;if(n===$o)return a===it?r.COMPRESSED_SRGB8_ALPHA8_ASTC_10x6_KHR:r.COMPRESSED_RGBA_ASTC_10x6_KHR;if(n===Wo)return a===it?r.COMPRESSED_SRGB8_ALPHA8_ASTC_10x8_KHR:r.COMPRESSED_RGBA_ASTC_10x8_KHR;if(n===Xo)return a===it?r.COMPRESSED_SRGB8_ALPHA8_ASTC_10x10_KHR:r.COMPRESSED_RGBA_ASTC_10x10_KHR;if(n===qo)return a===it?r.COMPRESSED_SRGB8_ALPHA8_ASTC_12x10_KHR:r.COMPRESSED_RGBA_ASTC_12x10_KHR;if(n===Yo)return a===it?r.COMPRESSED_SRGB8_ALPHA8_ASTC_12x12_KHR:r.COMPRESSED_RGBA_ASTC_12x12_KHR}else return null;if(n===Zo||n===Jo||n===Ko)if(r=e.get("EXT_texture_compression_bptc"),r!==null){if(n===Zo)return a===it?r.COMPRESSED_SRGB_ALPHA_BPTC_UNORM_EXT:r.COMPRESSED_RGBA_BPTC_UNORM_EXT;if(n===Jo)return r.COMPRESSED_RGB_BPTC_SIGNED_FLOAT_EXT;if(n===Ko)return r.COMPRESSED_RGB_BPTC_UNSIGNED_FLOAT_EXT}else return null;if(n===jo||n===Qo||n===Fr||n===el)if(r=e.get("EXT_texture_compression_rgtc"),r!==null){if(n===jo)return r.COMPRESSED_RED_RGTC1_EXT;if(n===Qo)return r.COMPRESSED_SIGNED_RED_RGTC1_EXT;if(n===Fr)return r.COMPRESSED_RED_GREEN_RGTC2_EXT;if(n===el)return r.COMPRESSED_SIGNED_RED_GREEN_RGTC2_EXT}else return null;return n===hs?i.UNSIGNED_INT_24_8:i[n]!==void 0?i[n]:null}return{convert:t}}var sx=`
void main() {

	gl_Position = vec4( position, 1.0 );

}`,rx=`
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

}`,ih=class{constructor(){this.texture=null,this.mesh=null,this.depthNear=0,this.depthFar=0}init(e,t){if(this.texture===null){let n=new Tr(e.texture);(e.depthNear!==t.depthNear||e.depthFar!==t.depthFar)&&(this.depthNear=e.depthNear,this.depthFar=e.depthFar),this.texture=n}}getMesh(e){if(this.texture!==null&&this.mesh===null){let t=e.cameras[0].viewport,n=new Xn({vertexShader:sx,fragmentShader:rx,uniforms:{depthColor:{value:this.texture},depthWidth:{value:t.z},depthHeight:{value:t.w}}});this.mesh=new vt(new Er(20,20),n)}return this.mesh}reset(){this.texture=null,this.mesh=null}getDepthTexture(){return this.texture}},sh=class extends Wn{constructor(e,t){super();let n=this,s=null,r=1,a=null,o="local-floor",l=1,c=null,h=null,u=null,d=null,p=null,_=null,v=typeof XRWebGLBinding<"u",m=new ih,g={},M=t.getContextAttributes(),C=null,w=null,E=[],T=[],x=new et,A=null,X=null,k=new un;k.viewport=new Mt;let z=new un;z.viewport=new Mt;let U=[k,z],J=new mo,S=null,D=null;this.cameraAutoUpdate=!0,this.enabled=!1,this.isPresenting=!1,this.getController=function(Q){let he=E[Q];return he===void 0&&(he=new Fs,E[Q]=he),he.getTargetRaySpace()},this.getControllerGrip=function(Q){let he=E[Q];return he===void 0&&(he=new Fs,E[Q]=he),he.getGripSpace()},this.getHand=function(Q){let he=E[Q];return he===void 0&&(he=new Fs,E[Q]=he),he.getHandSpace()};function F(Q){let he=T.indexOf(Q.inputSource);if(he===-1)return;let Te=E[he];Te!==void 0&&(Te.update(Q.inputSource,Q.frame,c||a),Te.dispatchEvent({type:Q.type,data:Q.inputSource}))}function G(){s.removeEventListener("select",F),s.removeEventListener("selectstart",F),s.removeEventListener("selectend",F),s.removeEventListener("squeeze",F),s.removeEventListener("squeezestart",F),s.removeEventListener("squeezeend",F),s.removeEventListener("end",G),s.removeEventListener("inputsourceschange",H);for(let Q=0;Q<E.length;Q++){let he=T[Q];he!==null&&(T[Q]=null,E[Q].disconnect(he))}S=null,D=null,m.reset();for(let Q in g)delete g[Q];if(e.setRenderTarget(C),p=null,d=null,u=null,s=null,w=null,pe.stop(),n.isPresenting=!1,e.setPixelRatio(A),e.setSize(x.width,x.height,!1),X!==null){let Q=X.camera;Q.fov=X.fov,Q.zoom=X.zoom,Q.updateProjectionMatrix(),X=null}n.dispatchEvent({type:"sessionend"})}this.setFramebufferScaleFactor=function(Q){r=Q,n.isPresenting===!0&&Oe("WebXRManager: Cannot change framebuffer scale while presenting.")},this.setReferenceSpaceType=function(Q){o=Q,n.isPresenting===!0&&Oe("WebXRManager: Cannot change reference space type while presenting.")},this.getReferenceSpace=function(){return c||a},this.setReferenceSpace=function(Q){c=Q},this.getBaseLayer=function(){return d!==null?d:p},this.getBinding=function(){return u===null&&v&&(u=new XRWebGLBinding(s,t)),u},this.getFrame=function(){return _},this.getSession=function(){return s},this.setSession=async function(Q){if(s=Q,s!==null){if(C=e.getRenderTarget(),s.addEventListener("select",F),s.addEventListener("selectstart",F),s.addEventListener("selectend",F),s.addEventListener("squeeze",F),s.addEventListener("squeezestart",F),s.addEventListener("squeezeend",F),s.addEventListener("end",G),s.addEventListener("inputsourceschange",H),M.xrCompatible!==!0&&await t.makeXRCompatible(),A=e.getPixelRatio(),e.getSize(x),v&&"createProjectionLayer"in XRWebGLBinding.prototype){let Te=null,ke=null,we=null;M.depth&&(we=M.stencil?t.DEPTH24_STENCIL8:t.DEPTH_COMPONENT24,Te=M.stencil?pi:ui,ke=M.stencil?hs:kn);let $e={colorFormat:t.RGBA8,depthFormat:we,scaleFactor:r};u=this.getBinding(),d=u.createProjectionLayer($e),s.updateRenderState({layers:[d]}),e.setPixelRatio(1),e.setSize(d.textureWidth,d.textureHeight,!1),w=new dn(d.textureWidth,d.textureHeight,{format:On,type:mn,depthTexture:new di(d.textureWidth,d.textureHeight,ke,void 0,void 0,void 0,void 0,void 0,void 0,Te),stencilBuffer:M.stencil,colorSpace:e.outputColorSpace,samples:M.antialias?4:0,resolveDepthBuffer:d.ignoreDepthValues===!1,resolveStencilBuffer:d.ignoreDepthValues===!1,storeMultisampledDepthBuffer:d.ignoreDepthValues===!1,storeMultisampledStencilBuffer:d.ignoreDepthValues===!1})}else{let Te={antialias:M.antialias,alpha:!0,depth:M.depth,stencil:M.stencil,framebufferScaleFactor:r};p=new XRWebGLLayer(s,t,Te),s.updateRenderState({baseLayer:p}),e.setPixelRatio(1),e.setSize(p.framebufferWidth,p.framebufferHeight,!1),w=new dn(p.framebufferWidth,p.framebufferHeight,{format:On,type:mn,colorSpace:e.outputColorSpace,stencilBuffer:M.stencil,resolveDepthBuffer:p.ignoreDepthValues===!1,resolveStencilBuffer:p.ignoreDepthValues===!1,storeMultisampledDepthBuffer:p.ignoreDepthValues===!1,storeMultisampledStencilBuffer:p.ignoreDepthValues===!1})}w.isXRRenderTarget=!0,this.setFoveation(l),c=null,a=await s.requestReferenceSpace(o),pe.setContext(s),pe.start(),n.isPresenting=!0,n.dispatchEvent({type:"sessionstart"})}},this.getEnvironmentBlendMode=function(){if(s!==null)return s.environmentBlendMode},this.getDepthTexture=function(){return m.getDepthTexture()};function H(Q){for(let he=0;he<Q.removed.length;he++){let Te=Q.removed[he],ke=T.indexOf(Te);ke>=0&&(T[ke]=null,E[ke].disconnect(Te))}for(let he=0;he<Q.added.length;he++){let Te=Q.added[he],ke=T.indexOf(Te);if(ke===-1){for(let $e=0;$e<E.length;$e++)if($e>=T.length){T.push(Te),ke=$e;break}else if(T[$e]===null){T[$e]=Te,ke=$e;break}if(ke===-1)break}let we=E[ke];we&&we.connect(Te)}}function $(Q,he){he===null?Q.matrixWorld.copy(Q.matrix):Q.matrixWorld.multiplyMatrices(he.matrixWorld,Q.matrix),Q.matrixWorldInverse.copy(Q.matrixWorld).invert()}this.updateCamera=function(Q){if(s===null)return;let he=Q.near,Te=Q.far;m.texture!==null&&(m.depthNear>0&&(he=m.depthNear),m.depthFar>0&&(Te=m.depthFar)),J.near=z.near=k.near=he,J.far=z.far=k.far=Te,(S!==J.near||D!==J.far)&&(s.updateRenderState({depthNear:J.near,depthFar:J.far}),S=J.near,D=J.far),J.layers.mask=Q.layers.mask|6,k.layers.mask=J.layers.mask&-5,z.layers.mask=J.layers.mask&-3;let ke=Q.parent,we=J.cameras;$(J,ke);for(let $e=0;$e<we.length;$e++)$(we[$e],ke);J.projectionMatrix.copy(k.projectionMatrix),J.projectionMatrixInverse.copy(k.projectionMatrixInverse),X===null&&Q.isPerspectiveCamera&&(X={camera:Q,fov:Q.fov,zoom:Q.zoom}),I(Q,J,ke)};function I(Q,he,Te){Te===null?Q.matrix.copy(he.matrixWorld):(Q.matrix.copy(Te.matrixWorld),Q.matrix.invert(),Q.matrix.multiply(he.matrixWorld)),Q.matrix.decompose(Q.position,Q.quaternion,Q.scale),Q.updateMatrixWorld(!0),Q.projectionMatrix.copy(he.projectionMatrix),Q.projectionMatrixInverse.copy(he.projectionMatrixInverse),Q.isPerspectiveCamera&&(Q.fov=Xa*2*Math.atan(1/Q.projectionMatrix.elements[5]),Q.zoom=1)}this.getCamera=function(){return J},this.getFoveation=function(){if(!(d===null&&p===null))return l},this.setFoveation=function(Q){l=Q,d!==null&&(d.fixedFoveation=Q),p!==null&&p.fixedFoveation!==void 0&&(p.fixedFoveation=Q)},this.hasDepthSensing=function(){return m.texture!==null},this.getDepthSensingMesh=function(){return m.getMesh(J)},this.getCameraTexture=function(Q){return g[Q]};let K=null;function oe(Q,he){if(h=he.getViewerPose(c||a),_=he,h!==null){let Te=h.views;p!==null&&(e.setRenderTargetFramebuffer(w,p.framebuffer),e.setRenderTarget(w));let ke=!1;Te.length!==J.cameras.length&&(J.cameras.length=0,ke=!0);for(let Be=0;Be<Te.length;Be++){let st=Te[Be],ot=null;if(p!==null)ot=p.getViewport(st);else{let Ut=u.getViewSubImage(d,st);ot=Ut.viewport,Be===0&&(e.setRenderTargetTextures(w,Ut.colorTexture,Ut.depthStencilTexture),e.setRenderTarget(w))}let Ye=U[Be];Ye===void 0&&(Ye=new un,Ye.layers.enable(Be),Ye.viewport=new Mt,U[Be]=Ye),Ye.matrix.fromArray(st.transform.matrix),Ye.matrix.decompose(Ye.position,Ye.quaternion,Ye.scale),Ye.projectionMatrix.fromArray(st.projectionMatrix),Ye.projectionMatrixInverse.copy(Ye.projectionMatrix).invert(),Ye.viewport.set(ot.x,ot.y,ot.width,ot.height),Be===0&&(J.matrix.copy(Ye.matrix),J.matrix.decompose(J.position,J.quaternion,J.scale)),ke===!0&&J.cameras.push(Ye)}let we=s.enabledFeatures;if(we&&we.includes("depth-sensing")&&s.depthUsage=="gpu-optimized"&&v){u=n.getBinding();let Be=u.getDepthInformation(Te[0]);Be&&Be.isValid&&Be.texture&&m.init(Be,s.renderState)}if(we&&we.includes("camera-access")&&v){e.state.unbindTexture(),u=n.getBinding();for(let Be=0;Be<Te.length;Be++){let st=Te[Be].camera;if(st){let ot=g[st];ot||(ot=new Tr,g[st]=ot);let Ye=u.getCameraImage(st);ot.sourceTexture=Ye}}}}for(let Te=0;Te<E.length;Te++){let ke=T[Te],we=E[Te];ke!==null&&we!==void 0&&we.update(ke,he,c||a)}K&&K(Q,he),he.detectedPlanes&&n.dispatchEvent({type:"planesdetected",data:he}),_=null}let pe=new $d;pe.setAnimationLoop(oe),this.setAnimationLoop=function(Q){K=Q},this.dispose=function(){}}},ax=new at,ef=new Ge;ef.set(-1,0,0,0,1,0,0,0,1);function ox(i,e){function t(m,g){m.matrixAutoUpdate===!0&&m.updateMatrix(),g.value.copy(m.matrix)}function n(m,g){g.color.getRGB(m.fogColor.value,Wc(i)),g.isFog?(m.fogNear.value=g.near,m.fogFar.value=g.far):g.isFogExp2&&(m.fogDensity.value=g.density)}function s(m,g,M,C,w){g.isNodeMaterial?g.uniformsNeedUpdate=!1:g.isMeshBasicMaterial?r(m,g):g.isMeshLambertMaterial?(r(m,g),g.envMap&&(m.envMapIntensity.value=g.envMapIntensity)):g.isMeshToonMaterial?(r(m,g),u(m,g)):g.isMeshPhongMaterial?(r(m,g),h(m,g),g.envMap&&(m.envMapIntensity.value=g.envMapIntensity)):g.isMeshStandardMaterial?(r(m,g),d(m,g),g.isMeshPhysicalMaterial&&p(m,g,w)):g.isMeshMatcapMaterial?(r(m,g),_(m,g)):g.isMeshDepthMaterial?r(m,g):g.isMeshDistanceMaterial?(r(m,g),v(m,g)):g.isMeshNormalMaterial?r(m,g):g.isLineBasicMaterial?(a(m,g),g.isLineDashedMaterial&&o(m,g)):g.isPointsMaterial?l(m,g,M,C):g.isSpriteMaterial?c(m,g):g.isShadowMaterial?(m.color.value.copy(g.color),m.opacity.value=g.opacity):g.isShaderMaterial&&(g.uniformsNeedUpdate=!1)}function r(m,g){m.opacity.value=g.opacity,g.color&&m.diffuse.value.copy(g.color),g.emissive&&m.emissive.value.copy(g.emissive).multiplyScalar(g.emissiveIntensity),g.map&&(m.map.value=g.map,t(g.map,m.mapTransform)),g.alphaMap&&(m.alphaMap.value=g.alphaMap,t(g.alphaMap,m.alphaMapTransform)),g.bumpMap&&(m.bumpMap.value=g.bumpMap,t(g.bumpMap,m.bumpMapTransform),m.bumpScale.value=g.bumpScale,g.side===Kt&&(m.bumpScale.value*=-1)),g.normalMap&&(m.normalMap.value=g.normalMap,t(g.normalMap,m.normalMapTransform),m.normalScale.value.copy(g.normalScale),g.side===Kt&&m.normalScale.value.negate()),g.displacementMap&&(m.displacementMap.value=g.displacementMap,t(g.displacementMap,m.displacementMapTransform),m.displacementScale.value=g.displacementScale,m.displacementBias.value=g.displacementBias),g.emissiveMap&&(m.emissiveMap.value=g.emissiveMap,t(g.emissiveMap,m.emissiveMapTransform)),g.specularMap&&(m.specularMap.value=g.specularMap,t(g.specularMap,m.specularMapTransform)),g.alphaTest>0&&(m.alphaTest.value=g.alphaTest);let M=e.get(g),C=M.envMap,w=M.envMapRotation;C&&(m.envMap.value=C,m.envMapRotation.value.setFromMatrix4(ax.makeRotationFromEuler(w)).transpose(),C.isCubeTexture&&C.isRenderTargetTexture===!1&&m.envMapRotation.value.premultiply(ef),m.reflectivity.value=g.reflectivity,m.ior.value=g.ior,m.refractionRatio.value=g.refractionRatio),g.lightMap&&(m.lightMap.value=g.lightMap,m.lightMapIntensity.value=g.lightMapIntensity,t(g.lightMap,m.lightMapTransform)),g.aoMap&&(m.aoMap.value=g.aoMap,m.aoMapIntensity.value=g.aoMapIntensity,t(g.aoMap,m.aoMapTransform))}function a(m,g){m.diffuse.value.copy(g.color),m.opacity.value=g.opacity,g.map&&(m.map.value=g.map,t(g.map,m.mapTransform))}function o(m,g){m.dashSize.value=g.dashSize,m.totalSize.value=g.dashSize+g.gapSize,m.scale.value=g.scale}function l(m,g,M,C){m.diffuse.value.copy(g.color),m.opacity.value=g.opacity,m.size.value=g.size*M,m.scale.value=C*.5,g.map&&(m.map.value=g.map,t(g.map,m.uvTransform)),g.alphaMap&&(m.alphaMap.value=g.alphaMap,t(g.alphaMap,m.alphaMapTransform)),g.alphaTest>0&&(m.alphaTest.value=g.alphaTest)}function c(m,g){m.diffuse.value.copy(g.color),m.opacity.value=g.opacity,m.rotation.value=g.rotation,g.map&&(m.map.value=g.map,t(g.map,m.mapTransform)),g.alphaMap&&(m.alphaMap.value=g.alphaMap,t(g.alphaMap,m.alphaMapTransform)),g.alphaTest>0&&(m.alphaTest.value=g.alphaTest)}function h(m,g){m.specular.value.copy(g.specular),m.shininess.value=Math.max(g.shininess,1e-4)}function u(m,g){g.gradientMap&&(m.gradientMap.value=g.gradientMap)}function d(m,g){m.metalness.value=g.metalness,g.metalnessMap&&(m.metalnessMap.value=g.metalnessMap,t(g.metalnessMap,m.metalnessMapTransform)),m.roughness.value=g.roughness,g.roughnessMap&&(m.roughnessMap.value=g.roughnessMap,t(g.roughnessMap,m.roughnessMapTransform)),g.envMap&&(m.envMapIntensity.value=g.envMapIntensity)}function p(m,g,M){m.ior.value=g.ior,g.diffuseRoughness>0&&(m.diffuseRoughness.value=g.diffuseRoughness,g.diffuseRoughnessMap&&(m.diffuseRoughnessMap.value=g.diffuseRoughnessMap,t(g.diffuseRoughnessMap,m.diffuseRoughnessMapTransform))),g.sheen>0&&(m.sheenColor.value.copy(g.sheenColor).multiplyScalar(g.sheen),m.sheenRoughness.value=g.sheenRoughness,g.sheenColorMap&&(m.sheenColorMap.value=g.sheenColorMap,t(g.sheenColorMap,m.sheenColorMapTransform)),g.sheenRoughnessMap&&(m.sheenRoughnessMap.value=g.sheenRoughnessMap,t(g.sheenRoughnessMap,m.sheenRoughnessMapTransform))),g.clearcoat>0&&(m.clearcoat.value=g.clearcoat,m.clearcoatRoughness.value=g.clearcoatRoughness,g.clearcoatMap&&(m.clearcoatMap.value=g.clearcoatMap,t(g.clearcoatMap,m.clearcoatMapTransform)),g.clearcoatRoughnessMap&&(m.clearcoatRoughnessMap.value=g.clearcoatRoughnessMap,t(g.clearcoatRoughnessMap,m.clearcoatRoughnessMapTransform)),g.clearcoatNormalMap&&(m.clearcoatNormalMap.value=g.clearcoatNormalMap,t(g.clearcoatNormalMap,m.clearcoatNormalMapTransform),m.clearcoatNormalScale.value.copy(g.clearcoatNormalScale),g.side===Kt&&m.clearcoatNormalScale.value.negate())),g.dispersion>0&&(m.dispersion.value=g.dispersion),g.retroreflectivity>0&&(m.retroreflectivity.value=g.retroreflectivity),g.iridescence>0&&(m.iridescence.value=g.iridescence,m.iridescenceIOR.value=g.iridescenceIOR,m.iridescenceThicknessMinimum.value=g.iridescenceThicknessMinimum,m.iridescenceThicknessMaximum.value=g.iridescenceThicknessMaximum,g.iridescenceMap&&(m.iridescenceMap.value=g.iridescenceMap,t(g.iridescenceMap,m.iridescenceMapTransform)),g.iridescenceThicknessMap&&(m.iridescenceThicknessMap.value=g.iridescenceThicknessMap,t(g.iridescenceThicknessMap,m.iridescenceThicknessMapTransform))),g.transmission>0&&(m.transmission.value=g.transmission,m.transmissionSamplerMap.value=M.texture,m.transmissionSamplerSize.value.set(M.width,M.height),g.transmissionMap&&(m.transmissionMap.value=g.transmissionMap,t(g.transmissionMap,m.transmissionMapTransform)),m.thickness.value=g.thickness,g.thicknessMap&&(m.thicknessMap.value=g.thicknessMap,t(g.thicknessMap,m.thicknessMapTransform)),m.attenuationDistance.value=g.attenuationDistance,m.attenuationColor.value.copy(g.attenuationColor)),g.anisotropy>0&&(m.anisotropyVector.value.set(g.anisotropy*Math.cos(g.anisotropyRotation),g.anisotropy*Math.sin(g.anisotropyRotation)),g.anisotropyMap&&(m.anisotropyMap.value=g.anisotropyMap,t(g.anisotropyMap,m.anisotropyMapTransform))),m.specularIntensity.value=g.specularIntensity,m.specularColor.value.copy(g.specularColor),g.specularColorMap&&(m.specularColorMap.value=g.specularColorMap,t(g.specularColorMap,m.specularColorMapTransform)),g.specularIntensityMap&&(m.specularIntensityMap.value=g.specularIntensityMap,t(g.specularIntensityMap,m.specularIntensityMapTransform))}function _(m,g){g.matcap&&(m.matcap.value=g.matcap)}function v(m,g){let M=e.get(g).light;m.referencePosition.value.setFromMatrixPosition(M.matrixWorld),m.nearDistance.value=M.shadow.camera.near,m.farDistance.value=M.shadow.camera.far}return{refreshFogUniforms:n,refreshMaterialUniforms:s}}function lx(i,e,t,n){let s={},r={};function a(M,C){let w=C.program;n.uniformBlockBinding(M,w,s[M.id])}function o(M,C){let w=s[M.id];w===void 0&&(_(M),w=l(M),s[M.id]=w,M.addEventListener("dispose",m));let E=C.program;n.updateUBOMapping(M,E);let T=e.render.frame;r[M.id]!==T&&(c(M),r[M.id]=T)}function l(M){let C=i.createBuffer(),w=M.__size,E=M.usage;return i.bindBuffer(i.UNIFORM_BUFFER,C),i.bufferData(i.UNIFORM_BUFFER,w,E),i.bindBuffer(i.UNIFORM_BUFFER,null),C}function c(M){let C=s[M.id],w=M.uniforms,E=M.__cache;i.bindBuffer(i.UNIFORM_BUFFER,C);for(let T=0,x=w.length;T<x;T++){let A=w[T];if(Array.isArray(A))for(let X=0,k=A.length;X<k;X++)h(A[X],T,X,E);else h(A,T,0,E)}i.bindBuffer(i.UNIFORM_BUFFER,null)}function h(M,C,w,E){if(d(M,C,w,E)===!0){let T=M.__offset,x=M.value;if(Array.isArray(x)){let A=0;for(let X=0;X<x.length;X++){let k=x[X],z=v(k,!0);u(k,M.__data,A),A+=z.storage/Float32Array.BYTES_PER_ELEMENT}}else u(x,M.__data,0);i.bufferSubData(i.UNIFORM_BUFFER,T,M.__data)}}function u(M,C,w){typeof M=="number"||typeof M=="boolean"?C[w]=M:M.isMatrix3?(C[w]=M.elements[0],C[w+1]=M.elements[1],C[w+2]=M.elements[2],C[w+3]=0,C[w+4]=M.elements[3],C[w+5]=M.elements[4],C[w+6]=M.elements[5],C[w+7]=0,C[w+8]=M.elements[6],C[w+9]=M.elements[7],C[w+10]=M.elements[8],C[w+11]=0):ArrayBuffer.isView(M)?C.set(M.subarray(0,C.length-w),w):M.toArray(C,w)}function d(M,C,w,E){let T=M.value,x=C+"_"+w;if(Array.isArray(T)){E[x]===void 0&&(E[x]=[]);let A=E[x],X=!1;for(let k=0;k<T.length;k++)p(T[k],A,k)===!0&&(X=!0);return X}return p(T,E,x)}function p(M,C,w){if(C[w]===void 0)return typeof M=="number"||typeof M=="boolean"?C[w]=M:ArrayBuffer.isView(M)?C[w]=M.slice():C[w]=M.clone(),!0;{let E=C[w];if(typeof M=="number"||typeof M=="boolean"){if(E!==M)return C[w]=M,!0}else{if(ArrayBuffer.isView(M))return!0;if(E.equals(M)===!1)return E.copy(M),!0}}return!1}function _(M){let C=M.uniforms,w=0,E=16;for(let x=0,A=C.length;x<A;x++){let X=Array.isArray(C[x])?C[x]:[C[x]];for(let k=0,z=X.length;k<z;k++){let U=X[k],J=Array.isArray(U.value)?U.value:[U.value],S=Array.isArray(C[x])||Array.isArray(U.value),D=w;for(let G=0,H=J.length;G<H;G++){let $=J[G],I=v($,S),K=w%E,oe=K%I.boundary,pe=K+oe;w+=oe,pe!==0&&E-pe<I.storage&&(w+=E-pe),G===0&&(D=w),w+=I.storage}let F=U.type==="int"?Int32Array:U.type==="uint"?Uint32Array:Float32Array;U.__data=new F((w-D)/Float32Array.BYTES_PER_ELEMENT),U.__offset=D}}let T=w%E;return T>0&&(w+=E-T),M.__size=w,M.__cache={},this}function v(M,C){let w={boundary:0,storage:0};return typeof M=="number"||typeof M=="boolean"?(w.boundary=4,w.storage=4):M.isVector2?(w.boundary=8,w.storage=8):M.isVector3||M.isColor?(w.boundary=16,w.storage=12):M.isVector4?(w.boundary=16,w.storage=16):M.isMatrix3?(w.boundary=16,w.storage=48):M.isMatrix4?(w.boundary=16,w.storage=64):M.isTexture?Oe("WebGLRenderer: Texture samplers can not be part of an uniforms group."):ArrayBuffer.isView(M)?(w.boundary=16,w.storage=M.byteLength):Oe("WebGLRenderer: Unsupported uniform value type.",M),C===!0&&(w.boundary=16,w.storage=Math.ceil(w.storage/16)*16),w}function m(M){let C=M.target;C.removeEventListener("dispose",m),i.deleteBuffer(s[C.id]),delete s[C.id],delete r[C.id]}function g(){for(let M in s)i.deleteBuffer(s[M]);s={},r={}}return{bind:a,update:o,dispose:g}}var cx=new Uint16Array([12469,15057,12620,14925,13266,14620,13807,14376,14323,13990,14545,13625,14713,13328,14840,12882,14931,12528,14996,12233,15039,11829,15066,11525,15080,11295,15085,10976,15082,10705,15073,10495,13880,14564,13898,14542,13977,14430,14158,14124,14393,13732,14556,13410,14702,12996,14814,12596,14891,12291,14937,11834,14957,11489,14958,11194,14943,10803,14921,10506,14893,10278,14858,9960,14484,14039,14487,14025,14499,13941,14524,13740,14574,13468,14654,13106,14743,12678,14818,12344,14867,11893,14889,11509,14893,11180,14881,10751,14852,10428,14812,10128,14765,9754,14712,9466,14764,13480,14764,13475,14766,13440,14766,13347,14769,13070,14786,12713,14816,12387,14844,11957,14860,11549,14868,11215,14855,10751,14825,10403,14782,10044,14729,9651,14666,9352,14599,9029,14967,12835,14966,12831,14963,12804,14954,12723,14936,12564,14917,12347,14900,11958,14886,11569,14878,11247,14859,10765,14828,10401,14784,10011,14727,9600,14660,9289,14586,8893,14508,8533,15111,12234,15110,12234,15104,12216,15092,12156,15067,12010,15028,11776,14981,11500,14942,11205,14902,10752,14861,10393,14812,9991,14752,9570,14682,9252,14603,8808,14519,8445,14431,8145,15209,11449,15208,11451,15202,11451,15190,11438,15163,11384,15117,11274,15055,10979,14994,10648,14932,10343,14871,9936,14803,9532,14729,9218,14645,8742,14556,8381,14461,8020,14365,7603,15273,10603,15272,10607,15267,10619,15256,10631,15231,10614,15182,10535,15118,10389,15042,10167,14963,9787,14883,9447,14800,9115,14710,8665,14615,8318,14514,7911,14411,7507,14279,7198,15314,9675,15313,9683,15309,9712,15298,9759,15277,9797,15229,9773,15166,9668,15084,9487,14995,9274,14898,8910,14800,8539,14697,8234,14590,7790,14479,7409,14367,7067,14178,6621,15337,8619,15337,8631,15333,8677,15325,8769,15305,8871,15264,8940,15202,8909,15119,8775,15022,8565,14916,8328,14804,8009,14688,7614,14569,7287,14448,6888,14321,6483,14088,6171,15350,7402,15350,7419,15347,7480,15340,7613,15322,7804,15287,7973,15229,8057,15148,8012,15046,7846,14933,7611,14810,7357,14682,7069,14552,6656,14421,6316,14251,5948,14007,5528,15356,5942,15356,5977,15353,6119,15348,6294,15332,6551,15302,6824,15249,7044,15171,7122,15070,7050,14949,6861,14818,6611,14679,6349,14538,6067,14398,5651,14189,5311,13935,4958,15359,4123,15359,4153,15356,4296,15353,4646,15338,5160,15311,5508,15263,5829,15188,6042,15088,6094,14966,6001,14826,5796,14678,5543,14527,5287,14377,4985,14133,4586,13869,4257,15360,1563,15360,1642,15358,2076,15354,2636,15341,3350,15317,4019,15273,4429,15203,4732,15105,4911,14981,4932,14836,4818,14679,4621,14517,4386,14359,4156,14083,3795,13808,3437,15360,122,15360,137,15358,285,15355,636,15344,1274,15322,2177,15281,2765,15215,3223,15120,3451,14995,3569,14846,3567,14681,3466,14511,3305,14344,3121,14037,2800,13753,2467,15360,0,15360,1,15359,21,15355,89,15346,253,15325,479,15287,796,15225,1148,15133,1492,15008,1749,14856,1882,14685,1886,14506,1783,14324,1608,13996,1398,13702,1183]),Zn=null;function hx(){return Zn===null&&(Zn=new Ja(cx,16,16,Vi,Fn),Zn.name="DFG_LUT",Zn.minFilter=Jt,Zn.magFilter=Jt,Zn.wrapS=$n,Zn.wrapT=$n,Zn.generateMipmaps=!1,Zn.needsUpdate=!0),Zn}var qs=class{constructor(e={}){let{canvas:t=pd(),context:n=null,depth:s=!0,stencil:r=!1,alpha:a=!1,antialias:o=!1,premultipliedAlpha:l=!0,preserveDrawingBuffer:c=!1,powerPreference:h="default",failIfMajorPerformanceCaveat:u=!1,reversedDepthBuffer:d=!1,outputBufferType:p=mn}=e;this.isWebGLRenderer=!0;let _;if(n!==null){if(typeof WebGLRenderingContext<"u"&&n instanceof WebGLRenderingContext)throw new Error("THREE.WebGLRenderer: WebGL 1 is not supported since r163.");_=n.getContextAttributes().alpha}else _=a;let v=p,m=new Set([So,wo,Mo]),g=new Set([mn,kn,Ws,hs,yo,bo]),M=new Uint32Array(4),C=new Int32Array(4),w={textures:[],min:[],max:[],resolution:[]},E=null,T=null,x=[],A=[],X=null;this.domElement=t,this.debug={checkShaderErrors:!0,diagnostics:{keywords:!1},onShaderError:null},this.autoClear=!0,this.autoClearColor=!0,this.autoClearDepth=!0,this.autoClearStencil=!0,this.sortObjects=!0,this.clippingPlanes=[],this.localClippingEnabled=!1,this.toneMapping=Yn,this.toneMappingExposure=1,this.transmissionResolutionScale=1;let k=this,z=!1,U=null,J=null,S=null,D=null;this._outputColorSpace=hn;let F=0,G=0,H=null,$=-1,I=null,K=new Mt,oe=new Mt,pe=null,Q=new je(0),he=0,Te=t.width,ke=t.height,we=1,$e=null,St=null,Be=new Mt(0,0,Te,ke),st=new Mt(0,0,Te,ke),ot=!1,Ye=new rs,Ut=new Ka,At=!1,jt=!1,xt=new at,zn=new W,It=new Mt,_n={background:null,fog:null,environment:null,overrideMaterial:null,isScene:!0},vn=!1;function xn(){return H===null?we:1}let B=n;function yn(b,N){return t.getContext(b,N)}let pt,mt,ye,Ct,Fe,Ve,R,y,Y,ae,se,de,ve,te,ne,me,L,ie,ee,ge,ue,fe,Le;try{let b={alpha:!0,depth:s,stencil:r,antialias:o,premultipliedAlpha:l,preserveDrawingBuffer:c,powerPreference:h,failIfMajorPerformanceCaveat:u};if("setAttribute"in t&&t.setAttribute("data-engine",`three.js r${"187"}`),t.addEventListener("webglcontextlost",Ue,!1),t.addEventListener("webglcontextrestored",We,!1),t.addEventListener("webglcontextcreationerror",be,!1),B===null){let N="webgl2";if(B=yn(N,b),B===null)throw yn(N)?new Error("THREE.WebGLRenderer: Error creating WebGL context with your selected attributes."):new Error("THREE.WebGLRenderer: Error creating WebGL context.")}Xe()}catch(b){throw t.removeEventListener("webglcontextlost",Ue,!1),t.removeEventListener("webglcontextrestored",We,!1),t.removeEventListener("webglcontextcreationerror",be,!1),ze("WebGLRenderer: "+b.message),b}function Xe(){pt=new b_(B),pt.init(),ue=new ix(B,pt),mt=new h_(B,pt,e,ue),ye=new tx(B,pt),mt.reversedDepthBuffer&&d&&ye.buffers.depth.setReversed(!0),J=B.createFramebuffer(),S=B.createFramebuffer(),D=B.createFramebuffer(),Ct=new S_(B),Fe=new Gv,Ve=new nx(B,pt,ye,Fe,mt,ue,Ct),R=new y_(k),y=new Em(B),fe=new l_(B,y),Y=new M_(B,y,Ct,fe),ae=new E_(B,Y,y,fe,Ct),ie=new T_(B,mt,Ve),ne=new u_(Fe),se=new zv(k,R,pt,mt,fe,ne),de=new ox(k,Fe),ve=new Hv,te=new Zv(pt),L=new o_(k,R,ye,ae,_,l),me=new ex(k,ae,mt),Le=new lx(B,Ct,mt,ye),ee=new c_(B,pt,Ct),ge=new w_(B,pt,Ct),Ct.programs=se.programs,k.capabilities=mt,k.extensions=pt,k.properties=Fe,k.renderLists=ve,k.shadowMap=me,k.state=ye,k.info=Ct}v!==mn&&(X=new C_(v,t.width,t.height,o,s,r));let le=new sh(k,B);this.xr=le,this.getContext=function(){return B},this.getContextAttributes=function(){return B.getContextAttributes()},this.forceContextLoss=function(){let b=pt.get("WEBGL_lose_context");b&&b.loseContext()},this.forceContextRestore=function(){let b=pt.get("WEBGL_lose_context");b&&b.restoreContext()},this.getPixelRatio=function(){return we},this.setPixelRatio=function(b){b!==void 0&&(we=b,this.setSize(Te,ke,!1))},this.getSize=function(b){return b.set(Te,ke)},this.setSize=function(b,N,j=!0){if(le.isPresenting){Oe("WebGLRenderer: Can't change size while VR device is presenting.");return}Te=b,ke=N,t.width=Math.floor(b*we),t.height=Math.floor(N*we),j===!0&&(t.style.width=b+"px",t.style.height=N+"px"),X!==null&&X.setSize(t.width,t.height),this.setViewport(0,0,b,N)},this.getDrawingBufferSize=function(b){return b.set(Te*we,ke*we).floor()},this.setDrawingBufferSize=function(b,N,j){Te=b,ke=N,we=j,t.width=Math.floor(b*j),t.height=Math.floor(N*j),this.setViewport(0,0,b,N)},this.setEffects=function(b){if(v===mn){ze("WebGLRenderer: setEffects() requires outputBufferType set to HalfFloatType or FloatType.");return}if(b){for(let N=0;N<b.length;N++)if(b[N].isOutputPass===!0){Oe("WebGLRenderer: OutputPass is not needed in setEffects(). Tone mapping and color space conversion are applied automatically.");break}}X.setEffects(b||[])},this.getCurrentViewport=function(b){return b.copy(K)},this.getViewport=function(b){return b.copy(Be)},this.setViewport=function(b,N,j,q){b.isVector4?Be.set(b.x,b.y,b.z,b.w):Be.set(b,N,j,q),ye.viewport(K.copy(Be).multiplyScalar(xn()).round())},this.getScissor=function(b){return b.copy(st)},this.setScissor=function(b,N,j,q){b.isVector4?st.set(b.x,b.y,b.z,b.w):st.set(b,N,j,q),ye.scissor(oe.copy(st).multiplyScalar(xn()).round())},this.getScissorTest=function(){return ot},this.setScissorTest=function(b){ye.setScissorTest(ot=b)},this.setOpaqueSort=function(b){$e=b},this.setTransparentSort=function(b){St=b},this.getClearColor=function(b){return b.copy(L.getClearColor())},this.setClearColor=function(){L.setClearColor(...arguments)},this.getClearAlpha=function(){return L.getClearAlpha()},this.setClearAlpha=function(){L.setClearAlpha(...arguments)},this.clear=function(b=!0,N=!0,j=!0){let q=0;if(b){let Z=!1;if(H!==null){let xe=H.texture.format;Z=m.has(xe)}if(Z){let xe=H.texture.type,Ae=g.has(xe),_e=L.getClearColor(),Se=L.getClearAlpha(),Ie=_e.r,He=_e.g,Ze=_e.b;Ae?(M[0]=Ie,M[1]=He,M[2]=Ze,M[3]=Se,B.clearBufferuiv(B.COLOR,0,M)):(C[0]=Ie,C[1]=He,C[2]=Ze,C[3]=Se,B.clearBufferiv(B.COLOR,0,C))}else q|=B.COLOR_BUFFER_BIT}N&&(q|=B.DEPTH_BUFFER_BIT,this.state.buffers.depth.setMask(!0)),j&&(q|=B.STENCIL_BUFFER_BIT,this.state.buffers.stencil.setMask(4294967295)),q!==0&&B.clear(q)},this.clearColor=function(){this.clear(!0,!1,!1)},this.clearDepth=function(){this.clear(!1,!0,!1)},this.clearStencil=function(){this.clear(!1,!1,!0)},this.setNodesHandler=function(b){b.setRenderer(this),U=b},this.dispose=function(){t.removeEventListener("webglcontextlost",Ue,!1),t.removeEventListener("webglcontextrestored",We,!1),t.removeEventListener("webglcontextcreationerror",be,!1),L.dispose(),ve.dispose(),te.dispose(),Ve.dispose(),Fe.dispose(),R.dispose(),ae.dispose(),Y.dispose(),fe.dispose(),Le.dispose(),se.dispose(),le.dispose(),le.removeEventListener("sessionstart",Ch),le.removeEventListener("sessionend",Rh),qi.stop()};function Ue(b){b.preventDefault(),Hc("WebGLRenderer: Context Lost."),z=!0}function We(){Hc("WebGLRenderer: Context Restored."),z=!1;let b=Ct.autoReset,N=me.enabled,j=me.autoUpdate,q=me.needsUpdate,Z=me.type;Xe(),Ct.autoReset=b,me.enabled=N,me.autoUpdate=j,me.needsUpdate=q,me.type=Z}function be(b){ze("WebGLRenderer: A WebGL context could not be created. Reason: ",b.statusMessage)}function rt(b){let N=b.target;N.removeEventListener("dispose",rt),Lt(N)}function Lt(b){_i(b),Fe.remove(b)}function _i(b){let N=Fe.get(b).programs;N!==void 0&&(N.forEach(function(j){se.releaseProgram(j)}),b.isShaderMaterial&&se.releaseShaderCache(b))}this.renderBufferDirect=function(b,N,j,q,Z,xe){N===null&&(N=_n);let Ae=Z.isMesh&&Z.matrixWorld.determinantAffine()<0,_e=gp(b,N,j,q,Z);ye.setMaterial(q,Ae);let Se=j.index,Ie=1;if(q.wireframe===!0){if(Se=Y.getWireframeAttribute(j),Se===void 0)return;Ie=2}let He=j.drawRange,Ze=j.attributes.position,Re=He.start*Ie,Je=(He.start+He.count)*Ie;xe!==null&&(Re=Math.max(Re,xe.start*Ie),Je=Math.min(Je,(xe.start+xe.count)*Ie)),Se!==null?(Re=Math.max(Re,0),Je=Math.min(Je,Se.count)):Ze!=null&&(Re=Math.max(Re,0),Je=Math.min(Je,Ze.count));let Tt=Je-Re;if(Tt<0||Tt===1/0)return;fe.setup(Z,q,_e,j,Se);let ct,lt=ee;if(Se!==null&&(ct=y.get(Se),lt=ge,lt.setIndex(ct)),Z.isMesh)q.wireframe===!0?(ye.setLineWidth(q.wireframeLinewidth*xn()),lt.setMode(B.LINES)):lt.setMode(B.TRIANGLES);else if(Z.isLine){let Bt=q.linewidth;Bt===void 0&&(Bt=1),ye.setLineWidth(Bt*xn()),Z.isLineSegments?lt.setMode(B.LINES):Z.isLineLoop?lt.setMode(B.LINE_LOOP):lt.setMode(B.LINE_STRIP)}else Z.isPoints?lt.setMode(B.POINTS):Z.isSprite&&lt.setMode(B.TRIANGLES);if(Z.isBatchedMesh)if(pt.get("WEBGL_multi_draw"))lt.renderMultiDraw(Z._multiDrawStarts,Z._multiDrawCounts,Z._multiDrawCount);else{let Bt=Z._multiDrawStarts,Pe=Z._multiDrawCounts,Wt=Z._multiDrawCount,nt=Se?y.get(Se).bytesPerElement:1,Yi=Fe.get(q).currentProgram.getUniforms();for(let zt=0;zt<Wt;zt++)Yi.setValue(B,"_gl_DrawID",zt),lt.render(Bt[zt]/nt,Pe[zt])}else if(Z.isInstancedMesh)lt.renderInstances(Re,Tt,Z.count);else if(j.isInstancedBufferGeometry){let Bt=j._maxInstanceCount!==void 0?j._maxInstanceCount:1/0,Pe=Math.min(j.instanceCount,Bt);lt.renderInstances(Re,Tt,Pe)}else lt.render(Re,Tt)};function Ah(b,N,j,q){U!==null&&b.isNodeMaterial&&U.setObject(q,b),At===!0&&ne.setState(b,j,!1),b.transparent===!0&&b.side===qn&&b.forceSinglePass===!1?(b.side=Kt,b.needsUpdate=!0,er(b,N,q),b.side=Gi,b.needsUpdate=!0,er(b,N,q),b.side=qn):er(b,N,q)}this.compile=function(b,N,j=null){j===null&&(j=b),U!==null&&U.renderStart(b,N,j),T=te.get(j),T.init(N),A.push(T),j.traverseVisible(function(Z){Z.isLight&&Z.layers.test(N.layers)&&(T.pushLight(Z),Z.castShadow&&T.pushShadow(Z))}),b!==j&&b.traverseVisible(function(Z){Z.isLight&&Z.layers.test(N.layers)&&(T.pushLight(Z),Z.castShadow&&T.pushShadow(Z))}),T.setupLights(),U!==null&&U.updateLights(T.state.lightsArray),jt=this.localClippingEnabled,At=ne.init(this.clippingPlanes,jt),At===!0&&ne.setGlobalState(this.clippingPlanes,N),U!==null&&me.render(T.state.shadowsArray,j,N);let q=new Set;return b.traverse(function(Z){if(!(Z.isMesh||Z.isPoints||Z.isLine||Z.isSprite))return;let xe=Z.material;if(xe)if(Array.isArray(xe))for(let Ae=0;Ae<xe.length;Ae++){let _e=xe[Ae];Ah(_e,j,N,Z),q.add(_e)}else Ah(xe,j,N,Z),q.add(xe)}),T=A.pop(),U!==null&&U.renderEnd(),q},this.compileAsync=function(b,N,j=null){let q=this.compile(b,N,j);return new Promise(Z=>{function xe(){if(q.forEach(function(Ae){let Se=Fe.get(Ae).currentProgram;(Se===void 0||Se.isReady())&&q.delete(Ae)}),q.size===0){Z(b);return}setTimeout(xe,10)}pt.get("KHR_parallel_shader_compile")!==null?xe():setTimeout(xe,10)})};let yl=null;function pp(b){yl&&yl(b)}function Ch(){qi.stop()}function Rh(){qi.start()}let qi=new $d;qi.setAnimationLoop(pp),typeof self<"u"&&qi.setContext(self),this.setAnimationLoop=function(b){yl=b,le.setAnimationLoop(b),b===null?qi.stop():qi.start()},le.addEventListener("sessionstart",Ch),le.addEventListener("sessionend",Rh),this.render=function(b,N){if(N!==void 0&&N.isCamera!==!0){ze("WebGLRenderer.render: camera is not an instance of THREE.Camera.");return}if(z===!0)return;U!==null&&U.renderStart(b,N);let j=le.enabled===!0&&le.isPresenting===!0,q=X!==null&&(H===null||j)&&X.begin(k,H);if(b.matrixWorldAutoUpdate===!0&&b.updateMatrixWorld(),N.parent===null&&N.matrixWorldAutoUpdate===!0&&N.updateMatrixWorld(),le.enabled===!0&&le.isPresenting===!0&&(X===null||X.isCompositing()===!1)&&(le.cameraAutoUpdate===!0&&le.updateCamera(N),N=le.getCamera()),b.isScene===!0&&b.onBeforeRender(k,b,N,H),T=te.get(b,A.length),T.init(N),T.state.textureUnits=Ve.getTextureUnits(),A.push(T),xt.multiplyMatrices(N.projectionMatrix,N.matrixWorldInverse),N.isArrayCamera?Ut.setFromArrayCamera(N):Ye.setFromProjectionMatrix(xt,Mn,N.reversedDepth),jt=this.localClippingEnabled,At=ne.init(this.clippingPlanes,jt),E=ve.get(b,x.length),E.init(),x.push(E),this.info.render.frame++,le.enabled===!0&&le.isPresenting===!0){let Ae=k.xr.getDepthSensingMesh();Ae!==null&&bl(Ae,N,-1/0,k.sortObjects)}bl(b,N,0,k.sortObjects),E.finish(),U!==null&&U.updateLights(T.state.lightsArray),k.sortObjects===!0&&E.sort($e,St),vn=le.enabled===!1||le.isPresenting===!1||le.hasDepthSensing()===!1,vn&&L.addToRenderList(E,b),this.info.autoReset===!0&&this.info.reset(),At===!0&&ne.beginShadows();let Z=T.state.shadowsArray;if(me.render(Z,b,N),At===!0&&ne.endShadows(),(q&&X.hasRenderPass())===!1){let Ae=E.opaque,_e=E.transmissive;if(T.setupLights(),N.isArrayCamera){let Se=N.cameras;if(_e.length>0)for(let Ie=0,He=Se.length;Ie<He;Ie++){let Ze=Se[Ie];Ih(Ae,_e,b,Ze)}vn&&L.render(b);for(let Ie=0,He=Se.length;Ie<He;Ie++){let Ze=Se[Ie];Ph(E,b,Ze,Ze.viewport)}}else _e.length>0&&Ih(Ae,_e,b,N),vn&&L.render(b),Ph(E,b,N)}H!==null&&G===0&&(Ve.updateMultisampleRenderTarget(H),Ve.updateRenderTargetMipmap(H)),q&&X.end(k),b.isScene===!0&&b.onAfterRender(k,b,N),fe.resetDefaultState(),$=-1,I=null,A.pop(),A.length>0?(T=A[A.length-1],Ve.setTextureUnits(T.state.textureUnits),At===!0&&ne.setGlobalState(k.clippingPlanes,T.state.camera)):T=null,x.pop(),x.length>0?E=x[x.length-1]:E=null,U!==null&&U.renderEnd()};function bl(b,N,j,q){if(b.visible===!1)return;if(b.layers.test(N.layers)){if(b.isGroup)j=b.renderOrder;else if(b.isLOD)b.autoUpdate===!0&&b.update(N);else if(b.isLight)T.pushLight(b),b.castShadow&&T.pushShadow(b);else if(b.isSprite){let Ae=N.isArrayCamera?Ut:Ye;if(!b.frustumCulled||b.intersectsFrustum(Ae)){q&&It.setFromMatrixPosition(b.matrixWorld).applyMatrix4(xt);let _e=ae.update(b),Se=b.material;Se.visible&&E.push(b,_e,Se,j,It.z,null,N)}}else if(b.isMesh||b.isLine||b.isPoints){let Ae=N.isArrayCamera?Ut:Ye;if(!b.frustumCulled||b.intersectsFrustum(Ae)){let _e=ae.update(b),Se=b.material;if(q&&(b.boundingSphere!==void 0?(b.boundingSphere===null&&b.computeBoundingSphere(),It.copy(b.boundingSphere.center)):(_e.boundingSphere===null&&_e.computeBoundingSphere(),It.copy(_e.boundingSphere.center)),It.applyMatrix4(b.matrixWorld).applyMatrix4(xt)),Array.isArray(Se)){let Ie=_e.groups;for(let He=0,Ze=Ie.length;He<Ze;He++){let Re=Ie[He],Je=Se[Re.materialIndex];Je&&Je.visible&&E.push(b,_e,Je,j,It.z,Re,N)}}else Se.visible&&E.push(b,_e,Se,j,It.z,null,N)}}}let xe=b.children;for(let Ae=0,_e=xe.length;Ae<_e;Ae++)bl(xe[Ae],N,j,q)}function Ph(b,N,j,q){let{opaque:Z,transmissive:xe,transparent:Ae}=b;T.setupLightsView(j),At===!0&&ne.setGlobalState(k.clippingPlanes,j),q&&ye.viewport(K.copy(q)),Z.length>0&&Kr(Z,N,j),xe.length>0&&Kr(xe,N,j),Ae.length>0&&Kr(Ae,N,j),ye.buffers.depth.setTest(!0),ye.buffers.depth.setMask(!0),ye.buffers.color.setMask(!0),ye.setPolygonOffset(!1)}function Ih(b,N,j,q){if((j.isScene===!0?j.overrideMaterial:null)!==null)return;if(T.state.transmissionRenderTarget[q.id]===void 0){let Re=pt.has("EXT_color_buffer_half_float")||pt.has("EXT_color_buffer_float");T.state.transmissionRenderTarget[q.id]=new dn(1,1,{generateMipmaps:!0,type:Re?Fn:mn,minFilter:fi,samples:Math.max(4,mt.samples),stencilBuffer:r,resolveDepthBuffer:!1,resolveStencilBuffer:!1,storeMultisampledDepthBuffer:!1,storeMultisampledStencilBuffer:!1,colorSpace:Ke.workingColorSpace})}let xe=T.state.transmissionRenderTarget[q.id],Ae=q.viewport||K;xe.setSize(Ae.z*k.transmissionResolutionScale,Ae.w*k.transmissionResolutionScale);let _e=k.getRenderTarget(),Se=k.getActiveCubeFace(),Ie=k.getActiveMipmapLevel();k.setRenderTarget(xe),k.getClearColor(Q),he=k.getClearAlpha(),he<1&&k.setClearColor(16777215,.5),k.clear(),vn&&L.render(j);let He=k.toneMapping;k.toneMapping=Yn;let Ze=q.viewport;if(q.viewport!==void 0&&(q.viewport=void 0),T.setupLightsView(q),At===!0&&ne.setGlobalState(k.clippingPlanes,q),Kr(b,j,q),Ve.updateMultisampleRenderTarget(xe),Ve.updateRenderTargetMipmap(xe),pt.has("WEBGL_multisampled_render_to_texture")===!1){let Re=!1;for(let Je=0,Tt=N.length;Je<Tt;Je++){let ct=N[Je],{object:lt,geometry:Bt,material:Pe,group:Wt}=ct;if(Pe.side===qn&&lt.layers.test(q.layers)){let nt=Pe.side;Pe.side=Kt,Pe.needsUpdate=!0,Lh(lt,j,q,Bt,Pe,Wt),Pe.side=nt,Pe.needsUpdate=!0,Re=!0}}Re===!0&&(Ve.updateMultisampleRenderTarget(xe),Ve.updateRenderTargetMipmap(xe))}k.setRenderTarget(_e,Se,Ie),k.setClearColor(Q,he),Ze!==void 0&&(q.viewport=Ze),k.toneMapping=He}function Kr(b,N,j){let q=N.isScene===!0?N.overrideMaterial:null;for(let Z=0,xe=b.length;Z<xe;Z++){let Ae=b[Z],{object:_e,geometry:Se,group:Ie}=Ae,He=Ae.material;He.allowOverride===!0&&q!==null&&(He=q),_e.layers.test(j.layers)&&Lh(_e,N,j,Se,He,Ie)}}function Lh(b,N,j,q,Z,xe){U!==null&&Z.isNodeMaterial&&U.setObject(b,Z),b.onBeforeRender(k,N,j,q,Z,xe),b.modelViewMatrix.multiplyMatrices(j.matrixWorldInverse,b.matrixWorld),b.normalMatrix.getNormalMatrix(b.modelViewMatrix),Z.onBeforeRender(k,N,j,q,b,xe),Z.transparent===!0&&Z.side===qn&&Z.forceSinglePass===!1?(Z.side=Kt,Z.needsUpdate=!0,k.renderBufferDirect(j,N,q,Z,b,xe),Z.side=Gi,Z.needsUpdate=!0,k.renderBufferDirect(j,N,q,Z,b,xe),Z.side=qn):k.renderBufferDirect(j,N,q,Z,b,xe),b.onAfterRender(k,N,j,q,Z,xe)}function Nh(b){let N=0;for(let j of b)j.texture!==null&&N++;return N}function er(b,N,j){N.isScene!==!0&&(N=_n);let q=Fe.get(b),Z=T.state.lights,xe=T.state.shadowsArray,Ae=Z.state.version,_e=se.getParameters(b,Z.state,xe,N,j,T.state.lightProbeGridArray),Se=se.getProgramCacheKey(_e),Ie=q.programs;q.environment=b.isMeshStandardMaterial||b.isMeshLambertMaterial||b.isMeshPhongMaterial?N.environment:null,q.fog=N.fog;let He=b.isMeshStandardMaterial||b.isMeshLambertMaterial&&!b.envMap||b.isMeshPhongMaterial&&!b.envMap;q.envMap=R.get(b.envMap||q.environment,He),q.envMapRotation=q.environment!==null&&b.envMap===null?N.environmentRotation:b.envMapRotation,Ie===void 0&&(b.addEventListener("dispose",rt),Ie=new Map,q.programs=Ie,q.programVariants=new Map);let Ze=Ie.get(Se);if(Ze!==void 0){if(q.currentProgram===Ze&&q.lightsStateVersion===Ae)return kh(b,_e),Ze}else _e.uniforms=se.getUniforms(b),U!==null&&b.isNodeMaterial&&U.build(b,j,_e),b.onBeforeCompile(_e,k),Ze=se.acquireProgram(_e,Se),Ie.set(Se,Ze),q.uniforms=_e.uniforms;let Re=q.uniforms;return(!b.isShaderMaterial&&!b.isRawShaderMaterial||b.clipping===!0)&&(Re.clippingPlanes=ne.uniform),kh(b,_e),q.needsLights=vp(b),q.lightsStateVersion=Ae,q.needsLights&&(Re.ambientLightColor.value=Z.state.ambient,Re.lightProbe.value=Z.state.probe,Re.sunLights.value=Z.state.sun,Re.sunLightShadows.value=Z.state.sunShadow,Re.directionalLights.value=Z.state.directional,Re.directionalLightShadows.value=Z.state.directionalShadow,Re.spotLights.value=Z.state.spot,Re.spotLightShadows.value=Z.state.spotShadow,Re.rectAreaLights.value=Z.state.rectArea,Re.ltc_1.value=Z.state.rectAreaLTC1,Re.ltc_2.value=Z.state.rectAreaLTC2,Re.pointLights.value=Z.state.point,Re.pointLightShadows.value=Z.state.pointShadow,Re.hemisphereLights.value=Z.state.hemi,Re.sunShadowMatrix.value=Z.state.sunShadowMatrix,Re.sunShadowCascade.value=Z.state.sunShadowCascade,Re.directionalShadowMatrix.value=Z.state.directionalShadowMatrix,Re.spotLightMatrix.value=Z.state.spotLightMatrix,Re.spotLightMap.value=Z.state.spotLightMap,Re.pointShadowMatrix.value=Z.state.pointShadowMatrix),q.numLightProbeGrids=Nh(T.state.lightProbeGridArray),q.currentProgram=Ze,q.uniformsList=null,Ze}function mp(b,N,j,q,Z){let xe=Fe.get(b),Ae=xe.currentProgram.id+","+q+","+Z,_e=xe.programVariants.get(Ae);return _e===void 0?(_e=er(b,N,j),xe.programVariants.set(Ae,_e)):(xe.currentProgram=_e,xe.uniformsList=null,xe.outputColorSpace=q,xe.toneMapping=Z),_e}function Dh(b){if(b.uniformsList===null){let N=b.currentProgram.getUniforms();b.uniformsList=Xs.seqWithValue(N.seq,b.uniforms)}return b.uniformsList}function kh(b,N){let j=Fe.get(b);j.outputColorSpace=N.outputColorSpace,j.batching=N.batching,j.batchingColor=N.batchingColor,j.instancing=N.instancing,j.instancingColor=N.instancingColor,j.instancingMorph=N.instancingMorph,j.skinning=N.skinning,j.morphTargets=N.morphTargets,j.morphNormals=N.morphNormals,j.morphColors=N.morphColors,j.morphTargetsCount=N.morphTargetsCount,j.numClippingPlanes=N.numClippingPlanes,j.numIntersection=N.numClipIntersection,j.vertexAlphas=N.vertexAlphas,j.vertexTangents=N.vertexTangents,j.toneMapping=N.toneMapping}function gp(b,N,j,q,Z){N.isScene!==!0&&(N=_n),Ve.resetTextureUnits();let xe=N.fog,Ae=q.isMeshStandardMaterial||q.isMeshLambertMaterial||q.isMeshPhongMaterial?N.environment:null,_e=H===null?k.outputColorSpace:H.isXRRenderTarget===!0?H.texture.colorSpace:Ke.workingColorSpace,Se=q.isMeshStandardMaterial||q.isMeshLambertMaterial&&!q.envMap||q.isMeshPhongMaterial&&!q.envMap,Ie=R.get(q.envMap||Ae,Se),He=q.vertexColors===!0&&!!j.attributes.color&&j.attributes.color.itemSize===4,Ze=!!j.attributes.tangent&&(!!q.normalMap||q.anisotropy>0),Re=!!j.morphAttributes.position,Je=!!j.morphAttributes.normal,Tt=!!j.morphAttributes.color,ct=Yn;q.toneMapped&&(H===null||H.isXRRenderTarget===!0)&&(ct=k.toneMapping);let lt=j.morphAttributes.position||j.morphAttributes.normal||j.morphAttributes.color,Bt=lt!==void 0?lt.length:0,Pe=Fe.get(q),Wt=T.state.lights;if(At===!0&&(jt===!0||b!==I)){let yt=b===I&&q.id===$;ne.setState(q,b,yt)}let nt=!1,Yi=!1;q.version===Pe.__version?Pe.needsLights&&Pe.lightsStateVersion!==Wt.state.version||Z.isBatchedMesh&&Pe.batching===!1||!Z.isBatchedMesh&&Pe.batching===!0||Z.isBatchedMesh&&Pe.batchingColor===!0&&Z._colorsTexture===null||Z.isBatchedMesh&&Pe.batchingColor===!1&&Z._colorsTexture!==null||Z.isInstancedMesh&&Pe.instancing===!1||!Z.isInstancedMesh&&Pe.instancing===!0||Z.isSkinnedMesh&&Pe.skinning===!1||!Z.isSkinnedMesh&&Pe.skinning===!0||Z.isInstancedMesh&&Pe.instancingColor===!0&&Z.instanceColor===null||Z.isInstancedMesh&&Pe.instancingColor===!1&&Z.instanceColor!==null||Z.isInstancedMesh&&Pe.instancingMorph===!0&&Z.morphTexture===null||Z.isInstancedMesh&&Pe.instancingMorph===!1&&Z.morphTexture!==null||Pe.envMap!==Ie||q.fog===!0&&Pe.fog!==xe||Pe.numClippingPlanes!==void 0&&(Pe.numClippingPlanes!==ne.numPlanes||Pe.numIntersection!==ne.numIntersection)||Pe.vertexAlphas!==He||Pe.vertexTangents!==Ze||Pe.morphTargets!==Re||Pe.morphNormals!==Je||Pe.morphColors!==Tt||Pe.morphTargetsCount!==Bt||Pe.numLightProbeGrids!==Nh(T.state.lightProbeGridArray)?nt=!0:(Pe.outputColorSpace!==_e||Pe.toneMapping!==ct)&&(Yi=!0):(nt=!0,Pe.__version=q.version);let zt=Pe.currentProgram;(nt===!0||Yi===!0)&&(zt=Yi===!0?mp(q,N,Z,_e,ct):er(q,N,Z),U&&q.isNodeMaterial&&U.onUpdateProgram(q,zt,Pe));let jr=!1,vi=!1,Zi=!1,tt=zt.getUniforms(),Ft=Pe.uniforms;if(ye.useProgram(zt.program)&&(jr=!0,vi=!0,Zi=!0),q.id!==$&&($=q.id,vi=!0),jr||I!==b){ye.buffers.depth.getReversed()&&b.reversedDepth!==!0&&(b._reversedDepth=!0,b.updateProjectionMatrix()),tt.setValue(B,"projectionMatrix",b.projectionMatrix),tt.setValue(B,"viewMatrix",b.matrixWorldInverse);let Nt=tt.map.cameraPosition;Nt!==void 0&&Nt.setValue(B,zn.setFromMatrixPosition(b.matrixWorld)),mt.logarithmicDepthBuffer&&tt.setValue(B,"logDepthBufFC",2/(Math.log(b.far+1)/Math.LN2)),(q.isMeshPhongMaterial||q.isMeshToonMaterial||q.isMeshLambertMaterial||q.isMeshBasicMaterial||q.isMeshStandardMaterial||q.isShaderMaterial)&&tt.setValue(B,"isOrthographic",b.isOrthographicCamera===!0),I!==b&&(I=b,vi=!0,Zi=!0)}if(Pe.needsLights&&(Wt.state.sunShadowMap.length>0&&tt.setValue(B,"sunShadowMap",Wt.state.sunShadowMap,Ve),Wt.state.directionalShadowMap.length>0&&tt.setValue(B,"directionalShadowMap",Wt.state.directionalShadowMap,Ve),Wt.state.spotShadowMap.length>0&&tt.setValue(B,"spotShadowMap",Wt.state.spotShadowMap,Ve),Wt.state.pointShadowMap.length>0&&tt.setValue(B,"pointShadowMap",Wt.state.pointShadowMap,Ve)),Z.isSkinnedMesh){tt.setOptional(B,Z,"bindMatrix"),tt.setOptional(B,Z,"bindMatrixInverse");let yt=Z.skeleton;yt&&(yt.boneTexture===null&&yt.computeBoneTexture(),tt.setValue(B,"boneTexture",yt.boneTexture,Ve))}Z.isBatchedMesh&&(tt.setOptional(B,Z,"batchingTexture"),tt.setValue(B,"batchingTexture",Z._matricesTexture,Ve),tt.setOptional(B,Z,"batchingIdTexture"),tt.setValue(B,"batchingIdTexture",Z._indirectTexture,Ve),tt.setOptional(B,Z,"batchingColorTexture"),Z._colorsTexture!==null&&tt.setValue(B,"batchingColorTexture",Z._colorsTexture,Ve));let An=j.morphAttributes;if((An.position!==void 0||An.normal!==void 0||An.color!==void 0)&&ie.update(Z,j,zt),(vi||Pe.receiveShadow!==Z.receiveShadow)&&(Pe.receiveShadow=Z.receiveShadow,tt.setValue(B,"receiveShadow",Z.receiveShadow)),(q.isMeshStandardMaterial||q.isMeshLambertMaterial||q.isMeshPhongMaterial)&&q.envMap===null&&N.environment!==null&&(Ft.envMapIntensity.value=N.environmentIntensity),Ft.dfgLUT!==void 0&&(Ft.dfgLUT.value=hx()),vi){if(tt.setValue(B,"toneMappingExposure",k.toneMappingExposure),Pe.needsLights&&_p(Ft,Zi),xe&&q.fog===!0&&de.refreshFogUniforms(Ft,xe),de.refreshMaterialUniforms(Ft,q,we,ke,T.state.transmissionRenderTarget[b.id]),Pe.needsLights&&Pe.numLightProbeGrids>0){let yt=w,Nt=0;for(let ni of T.state.lightProbeGridArray)ni.texture!==null&&(yt.textures[Nt]=ni.texture,yt.min[Nt]=ni.boundingBox.min,yt.max[Nt]=ni.boundingBox.max,yt.resolution[Nt]=ni.resolution,Nt++);for(let ni in yt)yt[ni].length=Nt;Ft.probesSH.value=yt.textures,Ft.probesMin.value=yt.min,Ft.probesMax.value=yt.max,Ft.probesResolution.value=yt.resolution}Xs.upload(B,Dh(Pe),Ft,Ve)}if(q.isShaderMaterial&&q.uniformsNeedUpdate===!0&&(Xs.upload(B,Dh(Pe),Ft,Ve),q.uniformsNeedUpdate=!1),q.isSpriteMaterial&&tt.setValue(B,"center",Z.center),tt.setValue(B,"modelViewMatrix",Z.modelViewMatrix),tt.setValue(B,"normalMatrix",Z.normalMatrix),tt.setValue(B,"modelMatrix",Z.matrixWorld),q.uniformsGroups!==void 0){let yt=q.uniformsGroups;for(let Nt=0,ni=yt.length;Nt<ni;Nt++){let Fh=yt[Nt];Le.update(Fh,zt),Le.bind(Fh,zt)}}return zt}function _p(b,N){b.ambientLightColor.needsUpdate=N,b.lightProbe.needsUpdate=N,b.sunLights.needsUpdate=N,b.sunLightShadows.needsUpdate=N,b.directionalLights.needsUpdate=N,b.directionalLightShadows.needsUpdate=N,b.pointLights.needsUpdate=N,b.pointLightShadows.needsUpdate=N,b.spotLights.needsUpdate=N,b.spotLightShadows.needsUpdate=N,b.rectAreaLights.needsUpdate=N,b.hemisphereLights.needsUpdate=N}function vp(b){return b.isMeshLambertMaterial||b.isMeshToonMaterial||b.isMeshPhongMaterial||b.isMeshStandardMaterial||b.isShadowMaterial||b.isShaderMaterial&&b.lights===!0}this.getActiveCubeFace=function(){return F},this.getActiveMipmapLevel=function(){return G},this.getRenderTarget=function(){return H},this.setRenderTargetTextures=function(b,N,j){let q=Fe.get(b);q.__autoAllocateDepthBuffer=b.resolveDepthBuffer===!1,q.__autoAllocateDepthBuffer===!1&&(q.__useRenderToTexture=!1),Fe.get(b.texture).__webglTexture=N,Fe.get(b.depthTexture).__webglTexture=q.__autoAllocateDepthBuffer?void 0:j,q.__hasExternalTextures=!0},this.setRenderTargetFramebuffer=function(b,N){let j=Fe.get(b);j.__webglFramebuffer=N,j.__useDefaultFramebuffer=N===void 0},this.setRenderTarget=function(b,N=0,j=0){H=b,F=N,G=j;let q=null,Z=!1,xe=!1;if(b){let _e=Fe.get(b);if(_e.__useDefaultFramebuffer!==void 0){ye.bindFramebuffer(B.FRAMEBUFFER,_e.__webglFramebuffer),K.copy(b.viewport),oe.copy(b.scissor),pe=b.scissorTest,ye.viewport(K),ye.scissor(oe),ye.setScissorTest(pe),$=-1;return}else if(_e.__webglFramebuffer===void 0)Ve.setupRenderTarget(b);else if(_e.__hasExternalTextures)Ve.rebindTextures(b,Fe.get(b.texture).__webglTexture,Fe.get(b.depthTexture).__webglTexture);else if(b.depthBuffer){let He=b.depthTexture;if(_e.__boundDepthTexture!==He){if(He!==null&&Fe.has(He)&&(b.width!==He.image.width||b.height!==He.image.height))throw new Error("THREE.WebGLRenderer: Attached DepthTexture is initialized to the incorrect size.");Ve.setupDepthRenderbuffer(b)}}let Se=b.texture;(Se.isData3DTexture||Se.isDataArrayTexture||Se.isCompressedArrayTexture)&&(xe=!0);let Ie=Fe.get(b).__webglFramebuffer;b.isWebGLCubeRenderTarget?(Array.isArray(Ie[N])?q=Ie[N][j]:q=Ie[N],Z=!0):b.samples>0&&Ve.useMultisampledRTT(b)===!1?q=Fe.get(b).__webglMultisampledFramebuffer:Array.isArray(Ie)?q=Ie[j]:q=Ie,K.copy(b.viewport),oe.copy(b.scissor),pe=b.scissorTest}else K.copy(Be).multiplyScalar(we).floor(),oe.copy(st).multiplyScalar(we).floor(),pe=ot;if(j!==0&&(q=J),ye.bindFramebuffer(B.FRAMEBUFFER,q)&&ye.drawBuffers(b,q),ye.viewport(K),ye.scissor(oe),ye.setScissorTest(pe),Z){let _e=Fe.get(b.texture);B.framebufferTexture2D(B.FRAMEBUFFER,B.COLOR_ATTACHMENT0,B.TEXTURE_CUBE_MAP_POSITIVE_X+N,_e.__webglTexture,j)}else if(xe){let _e=N;for(let Se=0;Se<b.textures.length;Se++){let Ie=Fe.get(b.textures[Se]);B.framebufferTextureLayer(B.FRAMEBUFFER,B.COLOR_ATTACHMENT0+Se,Ie.__webglTexture,j,_e)}}else if(b!==null&&j!==0){let _e=Fe.get(b.texture);B.framebufferTexture2D(B.FRAMEBUFFER,B.COLOR_ATTACHMENT0,B.TEXTURE_2D,_e.__webglTexture,j)}$=-1};function Uh(b){let N=Fe.get(b);return(N.__readFormat!==b.format||N.__readType!==b.type)&&(N.__readFormat=b.format,N.__readType=b.type,N.__formatReadable=mt.textureFormatReadable(b.format),N.__typeReadable=mt.textureTypeReadable(b.type)),N}this.readRenderTargetPixels=function(b,N,j,q,Z,xe,Ae,_e=0){if(!(b&&b.isWebGLRenderTarget)){ze("WebGLRenderer.readRenderTargetPixels: renderTarget is not THREE.WebGLRenderTarget.");return}let Se=Fe.get(b).__webglFramebuffer;if(b.isWebGLCubeRenderTarget&&Ae!==void 0&&(Se=Se[Ae],Array.isArray(Se)&&(Se=Se[0])),Se){ye.bindFramebuffer(B.FRAMEBUFFER,Se);try{let Ie=b.textures[_e],He=Ie.format,Ze=Ie.type;b.textures.length>1&&B.readBuffer(B.COLOR_ATTACHMENT0+_e);let Re=Uh(Ie);if(Re.__formatReadable===!1){ze("WebGLRenderer.readRenderTargetPixels: renderTarget is not in RGBA or implementation defined format.");return}if(Re.__typeReadable===!1){ze("WebGLRenderer.readRenderTargetPixels: renderTarget is not in UnsignedByteType or implementation defined type.");return}N>=0&&N<=b.width-q&&j>=0&&j<=b.height-Z&&B.readPixels(N,j,q,Z,ue.convert(He),ue.convert(Ze),xe)}finally{let Ie=H!==null?Fe.get(H).__webglFramebuffer:null;ye.bindFramebuffer(B.FRAMEBUFFER,Ie)}}},this.readRenderTargetPixelsAsync=async function(b,N,j,q,Z,xe,Ae,_e=0){if(!(b&&b.isWebGLRenderTarget))throw new Error("THREE.WebGLRenderer.readRenderTargetPixels: renderTarget is not THREE.WebGLRenderTarget.");let Se=Fe.get(b).__webglFramebuffer;if(b.isWebGLCubeRenderTarget&&Ae!==void 0&&(Se=Se[Ae],Array.isArray(Se)&&(Se=Se[0])),Se)if(N>=0&&N<=b.width-q&&j>=0&&j<=b.height-Z){ye.bindFramebuffer(B.FRAMEBUFFER,Se);let Ie=b.textures[_e],He=Ie.format,Ze=Ie.type;b.textures.length>1&&B.readBuffer(B.COLOR_ATTACHMENT0+_e);let Re=Uh(Ie);if(Re.__formatReadable===!1)throw new Error("THREE.WebGLRenderer.readRenderTargetPixelsAsync: renderTarget is not in RGBA or implementation defined format.");if(Re.__typeReadable===!1)throw new Error("THREE.WebGLRenderer.readRenderTargetPixelsAsync: renderTarget is not in UnsignedByteType or implementation defined type.");let Je=B.createBuffer();B.bindBuffer(B.PIXEL_PACK_BUFFER,Je),B.bufferData(B.PIXEL_PACK_BUFFER,xe.byteLength,B.STREAM_READ),B.readPixels(N,j,q,Z,ue.convert(He),ue.convert(Ze),0),B.bindBuffer(B.PIXEL_PACK_BUFFER,null);let Tt=H!==null?Fe.get(H).__webglFramebuffer:null;ye.bindFramebuffer(B.FRAMEBUFFER,Tt);let ct=B.fenceSync(B.SYNC_GPU_COMMANDS_COMPLETE,0);return B.flush(),await gd(B,ct,4),B.bindBuffer(B.PIXEL_PACK_BUFFER,Je),B.getBufferSubData(B.PIXEL_PACK_BUFFER,0,xe),B.bindBuffer(B.PIXEL_PACK_BUFFER,null),B.deleteBuffer(Je),B.deleteSync(ct),xe}else throw new Error("THREE.WebGLRenderer.readRenderTargetPixelsAsync: requested read bounds are out of range.")},this.copyFramebufferToTexture=function(b,N=null,j=0){let q=Math.pow(2,-j),Z=Math.floor(b.image.width*q),xe=Math.floor(b.image.height*q),Ae=N!==null?N.x:0,_e=N!==null?N.y:0;Ve.setTexture2D(b,0),B.copyTexSubImage2D(B.TEXTURE_2D,j,0,0,Ae,_e,Z,xe),ye.unbindTexture()},this.copyTextureToTexture=function(b,N,j=null,q=null,Z=0,xe=0){let Ae,_e,Se,Ie,He,Ze,Re,Je,Tt,ct=b.isCompressedTexture?b.mipmaps[xe]:b.image;if(j!==null)Ae=j.max.x-j.min.x,_e=j.max.y-j.min.y,Se=j.isBox3?j.max.z-j.min.z:1,Ie=j.min.x,He=j.min.y,Ze=j.isBox3?j.min.z:0;else{let tt=Math.pow(2,-Z);Ae=Math.floor(ct.width*tt),_e=Math.floor(ct.height*tt),b.isDataArrayTexture?Se=ct.depth:b.isData3DTexture?Se=Math.floor(ct.depth*tt):Se=1,Ie=0,He=0,Ze=0}q!==null?(Re=q.x,Je=q.y,Tt=q.z):(Re=0,Je=0,Tt=0);let lt=ue.convert(N.format),Bt=ue.convert(N.type),Pe;N.isData3DTexture?(Ve.setTexture3D(N,0),Pe=B.TEXTURE_3D):N.isDataArrayTexture||N.isCompressedArrayTexture?(Ve.setTexture2DArray(N,0),Pe=B.TEXTURE_2D_ARRAY):(Ve.setTexture2D(N,0),Pe=B.TEXTURE_2D),ye.activeTexture(B.TEXTURE0),ye.pixelStorei(B.UNPACK_FLIP_Y_WEBGL,N.flipY),ye.pixelStorei(B.UNPACK_PREMULTIPLY_ALPHA_WEBGL,N.premultiplyAlpha),ye.pixelStorei(B.UNPACK_ALIGNMENT,N.unpackAlignment);let Wt=ye.getParameter(B.UNPACK_ROW_LENGTH),nt=ye.getParameter(B.UNPACK_IMAGE_HEIGHT),Yi=ye.getParameter(B.UNPACK_SKIP_PIXELS),zt=ye.getParameter(B.UNPACK_SKIP_ROWS),jr=ye.getParameter(B.UNPACK_SKIP_IMAGES);ye.pixelStorei(B.UNPACK_ROW_LENGTH,ct.width),ye.pixelStorei(B.UNPACK_IMAGE_HEIGHT,ct.height),ye.pixelStorei(B.UNPACK_SKIP_PIXELS,Ie),ye.pixelStorei(B.UNPACK_SKIP_ROWS,He),ye.pixelStorei(B.UNPACK_SKIP_IMAGES,Ze);let vi=b.isDataArrayTexture||b.isData3DTexture,Zi=N.isDataArrayTexture||N.isData3DTexture;if(b.isDepthTexture){let tt=Fe.get(b),Ft=Fe.get(N),An=Fe.get(tt.__renderTarget),yt=Fe.get(Ft.__renderTarget);ye.bindFramebuffer(B.READ_FRAMEBUFFER,An.__webglFramebuffer),ye.bindFramebuffer(B.DRAW_FRAMEBUFFER,yt.__webglFramebuffer);for(let Nt=0;Nt<Se;Nt++)vi&&(B.framebufferTextureLayer(B.READ_FRAMEBUFFER,B.COLOR_ATTACHMENT0,Fe.get(b).__webglTexture,Z,Ze+Nt),B.framebufferTextureLayer(B.DRAW_FRAMEBUFFER,B.COLOR_ATTACHMENT0,Fe.get(N).__webglTexture,xe,Tt+Nt)),B.blitFramebuffer(Ie,He,Ie+Ae,He+_e,Re,Je,Re+Ae,Je+_e,B.DEPTH_BUFFER_BIT,B.NEAREST);ye.bindFramebuffer(B.READ_FRAMEBUFFER,null),ye.bindFramebuffer(B.DRAW_FRAMEBUFFER,null)}else if(Z!==0||b.isRenderTargetTexture||Fe.has(b)){let tt=Fe.get(b),Ft=Fe.get(N);ye.bindFramebuffer(B.READ_FRAMEBUFFER,S),ye.bindFramebuffer(B.DRAW_FRAMEBUFFER,D);for(let An=0;An<Se;An++)vi?B.framebufferTextureLayer(B.READ_FRAMEBUFFER,B.COLOR_ATTACHMENT0,tt.__webglTexture,Z,Ze+An):B.framebufferTexture2D(B.READ_FRAMEBUFFER,B.COLOR_ATTACHMENT0,B.TEXTURE_2D,tt.__webglTexture,Z),Zi?B.framebufferTextureLayer(B.DRAW_FRAMEBUFFER,B.COLOR_ATTACHMENT0,Ft.__webglTexture,xe,Tt+An):B.framebufferTexture2D(B.DRAW_FRAMEBUFFER,B.COLOR_ATTACHMENT0,B.TEXTURE_2D,Ft.__webglTexture,xe),Z!==0?B.blitFramebuffer(Ie,He,Ie+Ae,He+_e,Re,Je,Re+Ae,Je+_e,B.COLOR_BUFFER_BIT,B.NEAREST):Zi?B.copyTexSubImage3D(Pe,xe,Re,Je,Tt+An,Ie,He,Ae,_e):B.copyTexSubImage2D(Pe,xe,Re,Je,Ie,He,Ae,_e);ye.bindFramebuffer(B.READ_FRAMEBUFFER,null),ye.bindFramebuffer(B.DRAW_FRAMEBUFFER,null)}else Zi?b.isDataTexture||b.isData3DTexture?B.texSubImage3D(Pe,xe,Re,Je,Tt,Ae,_e,Se,lt,Bt,ct.data):N.isCompressedArrayTexture?B.compressedTexSubImage3D(Pe,xe,Re,Je,Tt,Ae,_e,Se,lt,ct.data):B.texSubImage3D(Pe,xe,Re,Je,Tt,Ae,_e,Se,lt,Bt,ct):b.isDataTexture?B.texSubImage2D(B.TEXTURE_2D,xe,Re,Je,Ae,_e,lt,Bt,ct.data):b.isCompressedTexture?B.compressedTexSubImage2D(B.TEXTURE_2D,xe,Re,Je,ct.width,ct.height,lt,ct.data):B.texSubImage2D(B.TEXTURE_2D,xe,Re,Je,Ae,_e,lt,Bt,ct);ye.pixelStorei(B.UNPACK_ROW_LENGTH,Wt),ye.pixelStorei(B.UNPACK_IMAGE_HEIGHT,nt),ye.pixelStorei(B.UNPACK_SKIP_PIXELS,Yi),ye.pixelStorei(B.UNPACK_SKIP_ROWS,zt),ye.pixelStorei(B.UNPACK_SKIP_IMAGES,jr),xe===0&&N.generateMipmaps===!0&&N.mipmapsAutoUpdate===!0&&B.generateMipmap(Pe),ye.unbindTexture()},this.initRenderTarget=function(b){Fe.get(b).__webglFramebuffer===void 0&&Ve.setupRenderTarget(b)},this.initTexture=function(b){b.isCubeTexture?Ve.setTextureCube(b,0):b.isData3DTexture?Ve.setTexture3D(b,0):b.isDataArrayTexture||b.isCompressedArrayTexture?Ve.setTexture2DArray(b,0):Ve.setTexture2D(b,0),ye.unbindTexture()},this.resetState=function(){F=0,G=0,H=null,ye.reset(),fe.reset()},typeof __THREE_DEVTOOLS__<"u"&&__THREE_DEVTOOLS__.dispatchEvent(new CustomEvent("observe",{detail:this}))}get coordinateSystem(){return Mn}get outputColorSpace(){return this._outputColorSpace}set outputColorSpace(e){this._outputColorSpace=e;let t=this.getContext();t.drawingBufferColorSpace=Ke._getDrawingBufferColorSpace(e),t.unpackColorSpace=Ke._getUnpackColorSpace()}};function Kn(i,...e){for(let t of e)i.push(t[0],t[1],t[2])}function Zs(i,e,t,n,s){Kn(i,e,t,n,e,n,s)}function ux(i,e=[0,0,0]){let[t,n,s]=[0,1,2].map(u=>(i[u]??1)/2),r=u=>[e[0]+(u&1?t:-t),e[1]+(u&2?n:-n),e[2]+(u&4?s:-s)],a=[0,1,2,3,4,5,6,7].map(r),o=u=>a[u],l=[],c=[[0,2,3,1],[4,5,7,6],[0,1,5,4],[2,6,7,3],[0,4,6,2],[1,3,7,5]];for(let[u,d,p,_]of c)Zs(l,o(u),o(d),o(p),o(_));let h=[];for(let u=0;u<8;u++)for(let d of[1,2,4])u&d||Kn(h,o(u),o(u|d));return{triangles:l,lines:h,hull:a}}function tf(i,e,t){let n=(d,p)=>Array.from({length:20},(_,v)=>{let m=2*Math.PI*v/20;return[d*Math.cos(m),d*Math.sin(m),p]}),[s,r]=[-t/2,t/2],[a,o,l,c]=[n(i,s),n(i,r),n(e,s),n(e,r)],h=[],u=[];for(let d=0;d<20;d++){let p=(d+1)%20;Zs(h,a[d],a[p],o[p],o[d]),e>0?(Zs(h,l[p],l[d],c[d],c[p]),Zs(h,o[d],o[p],c[p],c[d]),Zs(h,a[p],a[d],l[d],l[p]),Kn(u,l[d],l[p],c[d],c[p])):(Kn(h,[0,0,r],o[d],o[p]),Kn(h,[0,0,s],a[p],a[d])),Kn(u,a[d],a[p],o[d],o[p])}return{triangles:h,lines:u,hull:[...a,...o]}}function dx(i){let[e,t]=[7,12],n=(o,l)=>{let[c,h]=[Math.PI*o/e,2*Math.PI*l/t];return[i*Math.sin(c)*Math.cos(h),i*Math.sin(c)*Math.sin(h),i*Math.cos(c)]},s=[],r=[],a=[];for(let o=0;o<e;o++)for(let l=0;l<t;l++)Zs(s,n(o,l),n(o+1,l),n(o+1,l+1),n(o,l+1)),a.push(n(o,l));for(let o=0;o<20;o++){let[l,c]=[o,o+1].map(h=>2*Math.PI*h/20);Kn(r,[i*Math.cos(l),i*Math.sin(l),0],[i*Math.cos(c),i*Math.sin(c),0]),Kn(r,[i*Math.cos(l),0,i*Math.sin(l)],[i*Math.cos(c),0,i*Math.sin(c)])}return{triangles:s,lines:r,hull:a}}function fx(i,e){let t=[];for(let n of e)Kn(t,i[n[0]],i[n[1]],i[n[2]]);return{triangles:t,lines:mx(i,e),hull:px(i)}}function px(i){if(i.length<=300)return i;let e=new Set;for(let t=0;t<240;t++){let n=1-(2*t+1)/240,[s,r]=[Math.sqrt(1-n*n),t*2.399963],a=[s*Math.cos(r),s*Math.sin(r),n],o=i[0],l=-1/0;for(let c of i){let h=c[0]*a[0]+c[1]*a[1]+c[2]*a[2];h>l&&([o,l]=[c,h])}e.add(o)}return[...e]}function mx(i,e){let t=new Map,n=[];for(let s of e){let[r,a,o]=s.map(c=>i[c]),l=vx(_x(nf(a,r),nf(o,r)));for(let[c,h]of[[s[0],s[1]],[s[1],s[2]],[s[2],s[0]]]){let u=c<h?`${c} ${h}`:`${h} ${c}`,d=t.get(u);d===void 0?t.set(u,l):gx(d,l)<.8&&Kn(n,i[c],i[h])}}return n}var nf=(i,e)=>[i[0]-e[0],i[1]-e[1],i[2]-e[2]],gx=(i,e)=>i[0]*e[0]+i[1]*e[1]+i[2]*e[2],_x=(i,e)=>[i[1]*e[2]-i[2]*e[1],i[2]*e[0]-i[0]*e[2],i[0]*e[1]-i[1]*e[0]];function vx(i){let e=Math.hypot(...i)||1;return[i[0]/e,i[1]/e,i[2]/e]}function Sn(i){let[e=1,t=1,n=1]=i.size_mm;switch(i.kind){case"box":return ux(i.size_mm,i.middle_mm);case"cylinder":return tf(e,0,t);case"tube":return tf(e,t,n);case"sphere":return dx(e);case"mesh":return fx(i.vertices_mm??[],i.faces??[])}}function ds(i,e,t){return[0,1,2].map(n=>e[3*n]*i[0]+e[3*n+1]*i[1]+e[3*n+2]*i[2]+t[n])}var sn={plan:([i,e])=>[-e,-i],side:([i,,e])=>[i,-e],rear:([,i,e])=>[-i,-e]},al=new Map;function jn(i){let e=i.shape;if(!e)return"";let t=e.vertices_mm?`${e.vertices_mm.length} ${e.vertices_mm[0]} ${e.faces?.length}`:`${e.size_mm} ${e.middle_mm??""}`;return`${i.label}|${e.kind} ${t}|${i.centre_mm}|${i.turn}`}function ol(i,e){let t=`${e}|${jn(i)}`,n=al.get(t);return n||(al.size>4e3&&al.clear(),n=xx(i,e),al.set(t,n)),n}function xx(i,e){return i.shape?ah(Sn(i.shape).hull.map(t=>sn[e](ds(t,i.turn,i.centre_mm)))):[]}function Hi(i){return i.length?`M${i.map(([e,t])=>`${e.toFixed(1)} ${t.toFixed(1)}`).join("L")}Z`:""}function yx(i,e){let t={plan:n=>n.centre_mm[2],side:n=>-n.centre_mm[1],rear:n=>-n.centre_mm[0]};return[...i].sort((n,s)=>t[e](n)-t[e](s))}function rh(i){return i==="chassis"?"chassis":i.endsWith("axle")?`axle ${i.split(" ")[0]}`:"wheel"}function ah(i){let e=[...i].sort((n,s)=>n[0]-s[0]||n[1]-s[1]),t=n=>{let s=[];for(let r of n){for(;s.length>=2&&bx(s[s.length-2],s[s.length-1],r)<=0;)s.pop();s.push(r)}return s.pop(),s};return[...t(e),...t(e.reverse())]}var bx=(i,e,t)=>(e[0]-i[0])*(t[1]-i[1])-(e[1]-i[1])*(t[0]-i[0]);function $i(i,e){let t=[];for(let r of i.parts)t.push(...ol(r,e));for(let r of i.axles)for(let a of[-1,1]){let o=a*(r.track_mm/2+r.width_mm/2);t.push(sn[e]([r.x_mm+a*r.radius_mm,o,0]),sn[e]([r.x_mm,o,2*r.radius_mm]))}let n=t.map(r=>r[0]),s=t.map(r=>r[1]);return[Math.min(...n),Math.min(...s),Math.max(...n),Math.max(...s)]}var Tn=class{constructor(e,t=1,n=!1){this.face=e;this.scale=t;this.named=n}face;scale;named;root=O("g");order="";drawn=[];draw(e,t){let n=yx(e.filter(a=>a.shape),this.face),s=n.map(a=>a.label).join("|");s!==this.order&&(this.order=s,this.drawn=n.map(()=>({path:O("path"),look:"",dress:""})),this.root.replaceChildren(...this.drawn.map(a=>a.path)));let r=typeof this.scale=="number"?this.scale:this.scale();n.forEach((a,o)=>this.one(this.drawn[o],a,t,r))}one(e,t,n,s){let r=`${jn(t)} ${s}`;r!==e.look&&(e.look=r,e.path.setAttribute("d",Hi(ol(t,this.face).map(([c,h])=>[c*s,h*s]))));let a=t.row>=0,o=`part ${rh(t.carrier)}${a&&t.row===n?" picked":""}${a?" here":""}`,l=`${o} ${t.row} ${this.named?t.mass_g:""}`;l!==e.dress&&(e.dress=l,e.path.setAttribute("class",o),a&&e.path.setAttribute("data-row",String(t.row)),this.named&&e.path.replaceChildren(O("title",{},`${t.label}, ${V(t.mass_g)} g`)))}};var oh=["chassis","front axle","rear axle","front left","front right","rear left","rear right"],lh=oh.slice(3),af={chassis:"body","axle front":"front axle","axle rear":"rear axle",wheel:"wheels"},sf={paper:"--sheet",ink:"--ink",faint:"--rule",soft:"--soft",board:"--board",chassis:"--chassis","axle front":"--axle-front","axle rear":"--axle-rear",stone:"--stone",wheel:"--wheel",picked:"--picked",over:"--red",load:"--blue",pack:"--pack"},Js=class{ink=Object.fromEntries(Object.keys(sf).map(e=>[e,new je]));face=new Ui({vertexColors:!0,polygonOffset:!0,polygonOffsetFactor:1,polygonOffsetUnits:1});glass=new Ui({vertexColors:!0,transparent:!0,opacity:.16,depthWrite:!1});pack=new as({depthTest:!1,transparent:!0});lined=new Map;filled=new Map;times=0;repaint(){let e=getComputedStyle(document.documentElement);for(let[t,n]of Object.entries(sf))this.ink[t].set(e.getPropertyValue(n).trim());for(let[t,n]of[...this.lined,...this.filled])n.color.copy(this.ink[t]);this.pack.color.copy(this.ink.pack),this.times+=1}line(e){let t=this.lined.get(e);return t||this.lined.set(e,t=new as({color:this.ink[e]})),t}fill(e,t=0){let n=this.filled.get(e);return n||this.filled.set(e,n=new Ui({color:this.ink[e],polygonOffset:t>0,polygonOffsetFactor:t,polygonOffsetUnits:t})),n}},fs=class{constructor(e){this.paints=e;this.root.add(...this.bodies)}paints;root=new Ot;bodies=oh.map(()=>new Ot);built=[];dress(e,t){oh.forEach((n,s)=>{let r=e.parts.filter(u=>u.carrier===n&&u.shape),a=new Set(r.map(jn)),o=(t.before?.parts??[]).filter(u=>u.carrier===n&&u.shape&&!a.has(jn(u))),l=`${this.paints.times}|${t.glass}|${t.ghost}|${r.map(u=>`${jn(u)} ${u.row===t.picked} ${u.row===t.pack}`).join("|")}|${o.map(jn).join("|")}`;if(this.built[s]===l)return;this.built[s]=l;let c=this.bodies[s];Hr(c);let h=u=>t.glass&&n==="chassis"&&!(u.row>=0&&(u.row===t.picked||u.row===t.pack));if(t.ghost){let u=r.flatMap(d=>rf(d));u.length&&c.add(new vt(Bn(u),this.paints.fill("paper",1))),this.edges(c,r,this.paints.line("load"))}else this.meshes(c,r.filter(u=>!h(u)),n,t.picked,this.paints.face,this.paints.line("ink")),this.meshes(c,r.filter(h),n,t.picked,this.paints.glass,this.paints.line("soft")),this.edges(c,r.filter(u=>u.row>=0&&u.row===t.pack),this.paints.pack,5);this.edges(c,o,this.paints.line("load"))})}meshes(e,t,n,s,r,a){let o=[],l=[],c=[],h=this.paints.ink[rh(n)];for(let p of t){let _=rf(p);o.push(..._);for(let v=0;v<_.length;v+=9)c.push(p);ch(o,l,p.row>=0&&p.row===s?this.paints.ink.picked:h)}if(o.length===0)return;let u=Bn(o);u.setAttribute("color",new Zt(new Float32Array(l),3));let d=new vt(u,r);d.userData.owner=c,d.frustumCulled=!1,e.add(d),this.edges(e,t,a)}edges(e,t,n,s=0){let r=[];for(let o of t){let l=Sn(o.shape).lines;for(let c=0;c<l.length;c+=3)r.push(...ds(l.slice(c,c+3),o.turn,o.centre_mm))}if(r.length===0)return;let a=rn(r,n);a.renderOrder=s,e.add(a)}pose(e){this.bodies.forEach((t,n)=>{let s=e[n]??e[n<3?n:n<5?1:2];t.position.set(s?.[0]??0,s?.[1]??0,s?.[2]??0),t.quaternion.set(s?.[3]??0,s?.[4]??0,s?.[5]??0,s?.[6]??1)})}corners(){let e=[];for(let t of this.bodies){t.updateMatrix();for(let n of t.children){if(!(n instanceof vt))continue;let s=n.geometry.getAttribute("position");for(let r=0;r<s.count;r++)e.push(new W().fromBufferAttribute(s,r).applyMatrix4(t.matrix))}}return e}};function rf(i){let e=Sn(i.shape).triangles;return Array.from({length:e.length/3},(t,n)=>ds(e.slice(3*n,3*n+3),i.turn,i.centre_mm)).flat()}var Mx=new W(.25,.55,.85).normalize();function ch(i,e,t){let[n,s,r]=[new W,new W,new W];for(let a=e.length;a<i.length;a+=9){n.fromArray(i,a),s.fromArray(i,a+3).sub(n),r.fromArray(i,a+6).sub(n);let o=s.cross(r).normalize(),l=.88+.2*o.dot(Mx)+.12*o.z,[c,h,u]=[t.r,t.g,t.b].map(d=>Math.min(1,d*l**1.3));for(let d=0;d<3;d++)e.push(c,h,u)}}function Bn(i){let e=new Dn;return e.setAttribute("position",new Zt(new Float32Array(i),3)),e}function rn(i,e){let t=new Bs(Bn(i),e);return t.frustumCulled=!1,t}function Hr(i){for(let e of[...i.children])i.remove(e),(e instanceof vt||e instanceof Bs)&&e.geometry.dispose()}var[Qn,ei]=[1350,650],of=330,wx=1200,lf=330,Sx=Math.PI/3,ll=class{canvas;renderer;world=new is;camera=new zi(-1,1,1,-1,-6e3,6e3);paints=new Js;hill=new Ot;furniture=new Ot;figures=[new fs(this.paints),new fs(this.paints)];plumb;course=null;way=null;seen=[null,null];time=0;lane=0;constructor(e){this.canvas=e,this.renderer=new qs({canvas:e,antialias:!yi(),powerPreference:"low-power"}),this.camera.up.set(0,0,1),this.plumb=rn([0,0,0,0,0,1],this.paints.line("over")),this.hill.add(this.furniture,...this.figures.map(t=>t.root)),this.world.add(this.hill,this.plumb),this.repaint()}repaint(){this.paints.repaint(),this.world.background=this.paints.ink.paper,this.course&&this.way&&this.take(this.course,this.way,this.seen)}take(e,t,n){Object.assign(this,{course:e,way:t,seen:n});let s=t.heading_deg.reduce((r,a)=>r-Math.sin(a*Math.PI/180),0);this.lane=n[1]?s<0?-lf:lf:0,this.hill.rotation.x=e.slope_deg*Math.PI/180,Hr(this.furniture),this.furnish(e,t),n.forEach((r,a)=>{this.figures[a].root.visible=r!==null,r&&this.figures[a].dress(r.scene,{picked:null,pack:a?null:r.pack,glass:!1,before:null,ghost:a===1})})}furnish(e,t){let n=[-Qn,-ei,0,Qn,-ei,0,Qn,ei,0,-Qn,-ei,0,Qn,ei,0,-Qn,ei,0],s=[];for(let a=-Qn+50;a<=Qn;a+=100)s.push(a,-ei,.5,a,ei,.5);for(let a=-ei+50;a<=ei;a+=100)s.push(-Qn,a,.5,Qn,a,.5);let r=[];t.places_mm.forEach((a,o)=>{o&&r.push(...t.places_mm[o-1],1.5,...a,1.5)}),this.furniture.add(new vt(Bn(n),this.paints.fill("board",2)),rn(s,this.paints.line("faint")),rn(r,this.paints.line("ink"))),this.lane&&this.furniture.add(rn(t.places_mm.flatMap((a,o)=>o?[...this.across(o-1),1.5,...this.across(o),1.5]:[]),this.paints.line("load")));for(let a of e.stones)this.lay(Tx(t,a.at_mm,a.height_mm),a.at_mm);for(let a of e.ramps){let[o,l,c,h]=[a.flank_mm+a.top_mm/2,a.top_mm/2,a.width_mm/2,a.flank_mm*Math.tan(a.angle_deg*Math.PI/180)],u=[[-o,0],[-l,h],[l,h],[o,0]],d=new at().makeRotationZ(a.turned_deg*Math.PI/180+Math.PI/2).setPosition(...a.at_mm,0);this.lay(Ex(u,c),a.at_mm,d)}this.seen.forEach((a,o)=>a?.events.forEach(l=>{let{place:[c,h],heading:u}=_s(t,l.at_mm),d=o?this.lane:26,p=l.what==="lifts"?40:90,_=Sn({kind:"box",size_mm:[5,5,p]}).triangles.map((v,m)=>v+[c-d*Math.cos(u),h-d*Math.sin(u),p/2][m%3]);this.furniture.add(new vt(Bn(_),this.paints.fill(l.what==="lifts"?"load":"over")))}))}across(e,t=this.way.places_mm[e]){let n=this.way.heading_deg[e]*Math.PI/180;return[t[0]-this.lane*Math.cos(n),t[1]-this.lane*Math.sin(n)]}lay(e,t,n=new at){let s=Bn(e.triangles).applyMatrix4(n),r=[];ch([...s.getAttribute("position").array],r,this.paints.ink.stone),s.setAttribute("color",new Zt(new Float32Array(r),3));let a=rn(e.lines,this.paints.line("ink"));if(a.geometry.applyMatrix4(n),this.furniture.add(new vt(s,this.paints.face),a),!this.lane)return;let[o,l]=this.across(cf(this.way,t),t),c=rn(e.lines,this.paints.line("load"));c.geometry.applyMatrix4(n).translate(o-t[0],l-t[1],0),this.furniture.add(c)}get seconds(){return Math.max(0,...this.seen.map(e=>e?.recording.seconds??0))}at(e,t=0){let n=this.seen[t]?.recording;if(!n)return null;let s=n.at(n.rowAt(e));return{along:s.poses[0][0],load_g:s.load_g}}draw(e,t){if(!this.course||!this.way)return;this.time=e;let[n,s]=t??[this.canvas.clientWidth,this.canvas.clientHeight];if(n<2||s<2)return;this.renderer.setPixelRatio(t||yi()?1:Math.min(devicePixelRatio,2)),this.renderer.setSize(n,s,!1);let r=[];this.seen.forEach((u,d)=>{if(!u)return;let p=u.recording.at(u.recording.rowAt(e)),_=this.figures[d].root;if(this.set(this.figures[d],p.poses,d?this.lane:0),this.hill.updateMatrixWorld(!0),r.push(_.localToWorld(new W(p.poses[0][0],p.poses[0][1],60))),d>0)return;let v=_.localToWorld(new W(...p.cg_mm)),m=this.plumb.geometry.getAttribute("position");m.setXYZ(0,v.x,v.y,v.z),m.setXYZ(1,v.x,v.y,v.y*Math.tan(this.hill.rotation.x)),m.needsUpdate=!0});let[a,o]=[r[0]??new W,r[1]??r[0]??new W],l=Math.min(wx,a.distanceTo(o)),c=a.clone().add(o.clone().sub(a).setLength(l/2)),h=Math.max(of,of*1.35*s/n)+l*.3;Object.assign(this.camera,{left:-h*n/s,right:h*n/s,top:h,bottom:-h}),this.camera.position.copy(c).add(new W(-.4,-1,.34).multiplyScalar(1500)),this.camera.lookAt(c),this.camera.updateProjectionMatrix(),this.renderer.render(this.world,this.camera)}again(){this.draw(this.time)}set(e,t,n){let s=t[0][0],{place:[r,a],heading:o}=_s(this.way,s);e.pose(t),e.root.matrixAutoUpdate=!1,e.root.matrix.makeRotationZ(o+Math.PI/2).setPosition(r,a,0).multiply(new at().makeTranslation(-s,n,0)),e.root.matrixWorldNeedsUpdate=!0}};function cf(i,e){let t=i.places_mm.map(n=>Math.hypot(n[0]-e[0],n[1]-e[1]));return t.indexOf(Math.min(...t))}function Tx(i,e,t){let n=i.heading_deg[cf(i,e)]*Math.PI/180+Math.PI,s=t/(1-Math.cos(Sx)),[r,a]=[Math.cos(n),Math.sin(n)],o=[-a,0,r,r,0,a,0,1,0],l={triangles:[],lines:[]},c=(h,u)=>{for(let d of["triangles","lines"])for(let p=0;p<h[d].length;p+=3)l[d].push(...ds(h[d].slice(p,p+3),o,u))};c(Sn({kind:"cylinder",size_mm:[s,60]}),[e[0],e[1],t-s]);for(let h of[-30,30])c({...Sn({kind:"sphere",size_mm:[s]}),lines:[]},[e[0]+h*r,e[1]+h*a,t-s]);return l}function Ex(i,e){let t={triangles:[],lines:[]},n=([s,r],a)=>[s,a*e,r];return i.forEach((s,r)=>{t.lines.push(...n(s,-1),...n(s,1));let a=i[r+1];if(a){t.triangles.push(...n(s,1),...n(s,-1),...n(a,-1),...n(s,1),...n(a,-1),...n(a,1));for(let o of[-1,1])t.lines.push(...n(s,o),...n(a,o)),r>0&&t.triangles.push(...n(i[0],o),...o>0?[...n(s,o),...n(a,o)]:[...n(a,o),...n(s,o)])}}),t}var Ax=["front left","front right","rear left","rear right"],hf=9,$r=class{about;rows;columns;values;constructor(e){let t=new DataView(e);if(new TextDecoder().decode(new Uint8Array(e,0,4))!=="CFP1")throw new Error("That is no recording.");let n=t.getUint32(4,!0),s=JSON.parse(new TextDecoder().decode(new Uint8Array(e,8,n)));this.about=s,this.rows=s.rows,this.columns=s.columns,this.values=new Float32Array(e,8+n)}get seconds(){return this.values[(this.rows-1)*this.columns]??0}rowAt(e){let[t,n]=[0,this.rows-1];for(;t<n;){let s=t+n+1>>1;(this.values[s*this.columns]??0)<=e?t=s:n=s-1}return t}events(){let e=[];for(let n=0;n<4;n++)for(let s=0;s<this.rows;s++){if(this.at(s).load_g[n]>=1)continue;let{theta:r,time:a}={theta:this.at(s).theta,time:this.values[s*this.columns]};if(Array.from({length:this.rows-s},(o,l)=>this.at(s+l).load_g[n]).every(o=>o<1)){e.push({what:`${Ax[n]} lifts at ${V(r)}°`,time:a});break}}let t=this.at(this.rows-1).theta;return this.about.trial_outcome==="tips"&&e.push({what:`goes over at ${V(this.about.trial_deg??t)}°`,time:this.seconds}),this.about.trial_outcome==="slides"&&e.push({what:`slides away at ${V(this.about.trial_slide_deg??t)}°`,time:this.seconds}),e.sort((n,s)=>n.time-s.time)}get end(){if(this.about.trial_outcome==="slides")return"away";if(this.about.trial_outcome!=="tips")return null;let[e,t,n,s]=this.at(this.rows-1).load_g.map(a=>Math.max(0,a));return[["left",e+n],["right",t+s],["front",e+t],["rear",n+s]].sort((a,o)=>o[1]-a[1])[0][0]}at(e){let t=this.values.subarray(e*this.columns,(e+1)*this.columns),n=Array.from({length:7},(s,r)=>Array.from(t.subarray(hf+7*r,hf+7*r+7)));return{theta:t[1],load_g:Array.from(t.subarray(2,6)),cg_mm:[t[6],t[7],t[8]],poses:n}}},cl=class{constructor(e,t){this.stage=e;this.tilt=t;Ne("bench",()=>{this.state&&this.state.truck!==P.bench.truck&&this.recording&&this.leave(),P.trials=this.state&&df(this.state)?this.state.found:[],ii("trials"),this.recording||this.draw()}),this.draw(),this.poll()}stage;tilt;recording=null;events=[];time=0;speed=1;running=!1;last=0;drawn=0;since=0;state=null;timer=0;rate=0;async poll(){clearTimeout(this.timer);try{this.take(await ce.trial())}catch{return}this.state?.state==="running"&&(this.timer=window.setTimeout(()=>{this.poll()},250))}take(e){let t=this.state;if(this.state=e,P.trials=df(e)?e.found:[],ii("trials"),t?.state==="running"&&e.state!=="running"){let n={done:`Trials done: ${e.done} of ${e.total}.`,stopped:`Trials stopped; ${e.done} of ${e.total} are kept.`,failed:`The trials failed: ${e.words}`};Ee(n[e.state]??"",e.state==="failed"?"wrong":"note")}this.recording||this.draw()}async run(e){let{rail:t}=P.view;try{this.take(await ce.runTrial(e,t)),Ee("The trial is running."),this.poll()}catch(n){if(n instanceof De)Ee(n.message,"wrong");else throw n}}async open(e){try{this.recording=new $r(await ce.poses(e))}catch(t){return Ee(t instanceof Error?t.message:String(t),"wrong")}this.events=this.recording.events(),this.playing(!0),this.recording.about.heading_deg!==null&&ut({heading:this.recording.about.heading_deg}),this.time=0,this.draw(),this.play()}playing(e){this.tilt.playing=e;for(let t of document.querySelectorAll(".sliders input, .ways button"))t.disabled=e}leave(){this.pause(),this.recording=null,this.playing(!1),ut({tilt:P.view.tilt}),this.draw()}play(){let e=this.recording;e&&(this.time>=e.seconds&&(this.time=0),this.running=!0,this.last=this.since=performance.now(),this.drawn=0,this.drawControls(),requestAnimationFrame(t=>this.step(t)))}pause(){this.running=!1,this.recording&&this.drawControls()}step(e){let t=this.recording;if(!(!t||!this.running)){if(this.time=Math.min(t.seconds,this.time+(e-this.last)/1e3*this.speed),this.last=e,this.show(),this.drawn+=1,e-this.since>500&&(this.rate=this.drawn*1e3/(e-this.since),this.since=e,this.drawn=0),this.time>=t.seconds)return this.pause();requestAnimationFrame(n=>this.step(n))}}show(){let e=this.recording,t=e.at(e.rowAt(this.time)),n=this.time>=e.seconds?e.end:null;ut({tilt:Math.max(0,Math.min(90,t.theta))}),this.stage.show({theta_deg:t.theta,poses:t.poses,load_g:t.load_g,cg_mm:t.cg_mm,heading_deg:P.view.heading},n);let s=t.load_g.filter(c=>c<1).length,r=s===0?"all four tyres down":`${s} of 4 tyres off the table`,a=n===null?"":n==="away"?"; it slides away":`; it goes over its ${n} tyres`;Ce("standing").textContent=`Replay: table at ${V(t.theta)}°, ${r}${a}.`,Ce("standing").classList.toggle("over",s>=2||n!==null);let o=document.getElementById("scrub");o&&(o.value=this.time.toFixed(2),o.setAttribute("aria-valuetext",`${V(this.time)} seconds, table at ${V(t.theta)} degrees${a}`));let l=document.getElementById("replay-clock");l&&(l.textContent=`${V(this.time,1)} s`)}draw(){if(this.recording)return this.drawControls();let e=this.state,t=e?.state==="running",s=P.trials.map(h=>f("option",{value:h.file},`${uf(h.heading_deg)}: ${ff(h)}`)),r=(e?.records??[]).map(h=>f("option",{value:h},`kept record ${h}`)),a=f("select",{id:"replay-choice","aria-label":"Recorded trial",class:"grow"},...s,...r),o=f("input",{type:"checkbox",id:"trial-rail","data-key":"rail",checked:P.view.rail});o.addEventListener("change",()=>ut({rail:o.checked}));let l=f("label",{class:"tick"},o,"against a rail"),c=f("div",{class:"tries",role:"toolbar","aria-label":"Virtual trials"},f("button",{type:"button",id:"trial-one","data-key":"trial-one",onclick:()=>{this.run([P.view.heading])}},"Try it this way"),f("button",{type:"button",id:"trial-four","data-key":"trial-four",onclick:()=>{this.run(Object.values(_t).map(h=>h.heading))}},"Try all four"),l);gt(c,"button, input"),re(Ce("trial"),t?f("progress",{class:"grow",max:e.total,value:e.done,"aria-label":"Trials done"}):null,t?f("span",{},`${e.done} of ${e.total}`):null,t?f("button",{type:"button",id:"trial-stop",onclick:()=>{ce.stopTrial().then(h=>this.take(h))}},"Stop"):null,t?null:c,s.length+r.length?a:null,s.length+r.length?f("button",{type:"button",id:"replay-open",onclick:()=>{this.open(a.value)}},"Replay"):null)}drawControls(){let e=this.recording,t=f("input",{type:"range",id:"scrub","data-key":"scrub",class:"grow",min:0,max:e.seconds.toFixed(2),step:.01,value:this.time.toFixed(2),"aria-label":"Moment of the recording"});t.addEventListener("input",()=>{this.time=t.value===t.max?e.seconds:Number(t.value),this.show()});let n=f("select",{id:"replay-speed","data-key":"speed","aria-label":"Speed"},...[.25,.5,1,2,4].map(s=>f("option",{value:s,selected:s===this.speed},s===1?"real time":s<1?`${s*100} %`:`${s} times`)));n.addEventListener("change",()=>{this.speed=Number(n.value)}),re(Ce("trial"),f("button",{type:"button",id:"play","data-key":"play",onclick:()=>this.running?this.pause():this.play()},this.running?"Pause":"Play"),t,f("output",{id:"replay-clock"},`${V(this.time)} s`),n,f("button",{type:"button",id:"replay-leave",onclick:()=>this.leave()},"Back to the sliders"),f("div",{class:"events",role:"group","aria-label":"Moments of the recording"},...this.events.map(({what:s,time:r})=>f("button",{type:"button","data-key":`event-${r.toFixed(2)}-${s}`,onclick:()=>{this.pause(),this.time=r,this.show()}},s))),f("p",{},`Recorded trial${e.about.heading_deg===null?"":`, ${uf(e.about.heading_deg)}`}: ${ff(e.about)}.`)),this.show()}};function uf(i){let e=Object.values(_t).find(t=>t.heading===i);return e?e.name.toLowerCase():`turned ${V(i,0)}°`}var df=i=>i.truck===P.bench.truck&&i.surface===P.bench.answers.surface;function ff(i){let e=i.hold==="rail"?" against a rail":"";if(i.trial_outcome==="tips"){let[t,n]=i.trial_ci_deg??[null,null];return`tips${e} at ${V(i.trial_deg)}°, ${V(t)} to ${V(n)}`}return i.trial_outcome==="slides"?`slides away at ${V(i.trial_slide_deg)}°`:i.trial_outcome}var[pf,mf]=[1600,900],Cx=["fill","fill-opacity","fill-rule","stroke","stroke-width","stroke-opacity","stroke-dasharray","stroke-linecap","stroke-linejoin","paint-order","font","text-anchor","visibility","vector-effect","letter-spacing"];function _f(i){if(Ce("share-picture").addEventListener("click",()=>{Px(i)}),Ce("share-page").addEventListener("click",()=>{Rx()}),!qt)return;let e=f("p",{class:"frozen-note"});document.querySelector(".head").append(e),Ne("bench",()=>{e.textContent=`${P.bench.file.replace(/\.toml$/,"")}, as it was on ${qt.date}: a copy to look at`})}function Wr(i,e){let t=f("a",{href:URL.createObjectURL(i),download:e});t.click(),URL.revokeObjectURL(t.href),Ee(`${e} is in your downloads.`)}var gi=()=>P.bench.file.replace(/\.toml$/,"");async function Rx(){Ee("Working out every way to stand, for the copy…");try{Wr(await ce.share(),`${gi()}-bench.html`)}catch(i){if(!(i instanceof De))throw i;Ee(`No copy was made: ${i.message}`,"wrong")}}async function gf(i,e,t){let n=i.cloneNode(!0),[s,r]=[[i,...i.querySelectorAll("*")],[n,...n.querySelectorAll("*")]];s.forEach((l,c)=>{let h=getComputedStyle(l);for(let u of Cx)r[c].style.setProperty(u,h.getPropertyValue(u))}),n.setAttribute("width",String(e)),n.setAttribute("height",String(t)),n.setAttribute("xmlns","http://www.w3.org/2000/svg");let a=new Image,o=URL.createObjectURL(new Blob([new XMLSerializer().serializeToString(n)],{type:"image/svg+xml"}));return a.src=o,await a.decode(),URL.revokeObjectURL(o),a}async function Px(i){let e=f("canvas",{width:pf,height:mf}),t=e.getContext("2d"),n=getComputedStyle(document.documentElement),s=M=>n.getPropertyValue(M).trim();t.fillStyle=s("--sheet"),t.fillRect(0,0,pf,mf),i.render();let r=document.querySelector("#stage .flat"),a=Ce("stage-canvas"),o=r?r.getBoundingClientRect():a,[l,c]=[o.width,o.height],h=Math.min(790/l,700/c);t.drawImage(r?await gf(r,l*2,c*2):a,20,90,l*h,c*h);let u=document.querySelector("svg.polar");t.drawImage(await gf(u,1560,1374),820,84,760,669);let d=(M,C,w,E,T="--ink")=>{t.font=E,t.fillStyle=s(T),t.fillText(M,C,w)},p=n.getPropertyValue("--plain")||"sans-serif",{numbers:_,surface:v,grip_range:m}=P.answers;d(gi(),30,56,`600 38px ${p}`),d(`on ${v}, grip ${V(m.likely,2)}, ${qt?.date??new Date().toISOString().slice(0,10)}`,60+Ix(t,gi(),`600 38px ${p}`),56,`22px ${p}`,"--soft"),d(`${V(_.mass_g,0)} g, CG ${V(_.cg_mm[2])} mm high, ${V(_.front_percent)} % on the front`,30,820,`24px ${p}`);let g=Object.values(_t).map(({heading:M,short:C})=>{let w=on(P.answers,M),E=P.answers.ways?.find(T=>T.heading_deg===M);return`${C} ${w?.slides?"slides":"tips"} ${Ki(w?.deg??null,w?.slides?null:tr(E))}°`});d(g.join("   "),30,862,`600 24px ${p}`),e.toBlob(M=>{M&&Wr(M,`${gi()}.png`)})}function Ix(i,e,t){return i.font=t,i.measureText(e).width}var Ks=[640,400],Lx=`Driven in the engine: the truck goes straight on while the hill turns under it as the way does, with stones and ramps
  where the way has them. It is steered to stay on its line; the reference has the same way beside it. Left out: that bends turn the front wheels, and what they cost. The curve above is no drive: it is the one answer for standing there.`;function vf(i){new hh(i)}var hh=class{map;strip=new ua;view=null;canvas=f("canvas",{class:"course-canvas",role:"img","aria-label":"The drive in three dimensions"});told=f("div",{class:"course-told"});controls=f("div",{class:"bar course-controls"});drive=f("button",{type:"button",class:"main",id:"course-drive",onclick:()=>{this.run()}},"Drive it");slope=f("input",{type:"number",id:"course-slope",min:0,max:60,step:1,value:0});speed=f("input",{type:"number",id:"course-speed",min:50,max:1e3,step:10,value:0});choice=f("select",{id:"course-choice","aria-label":"Course"});kept={};standing=null;state=null;shown=null;time=0;playing=!1;filming=!1;timer=0;asked=0;constructor(e){e.classList.add("course");let t=Object.keys(or)[0];this.map=new la(structuredClone(or[t]),o=>this.changed(o));let n=this.choice;n.addEventListener("change",()=>{let[o,l]=[n.value[0],n.value.slice(1)],c=o==="k"?this.kept[l]:or[l];c&&(this.map.take(structuredClone(c)),this.dials(),this.changed(!0))}),this.offer({courses:{},wrong:[]},`g${t}`),n.addEventListener("focus",()=>{this.fetchKept()}),this.fetchKept();for(let[o,l]of[[this.slope,"slope_deg"],[this.speed,"speed_mm_per_s"]])o.addEventListener("change",()=>o.checkValidity()?(this.map.course[l]=Number(o.value),this.changed(!0),!0):o.reportValidity());let s=f("div",{class:"hill-tools",role:"toolbar","aria-label":"What lies on the hill"},f("button",{type:"button",id:"course-draw",onclick:()=>{this.map.begin(),Ee("Draw the way on the hill with one stroke.")}},"Draw a way"),f("button",{type:"button",id:"course-stone",onclick:()=>this.map.add("stones")},"Add a stone"),f("button",{type:"button",id:"course-ramp",onclick:()=>this.map.add("ramps")},"Add a ramp"),f("button",{type:"button",id:"course-keep",title:"As a file in the opened folder",onclick:()=>this.askName()},"Keep course…"));gt(s),e.append(f("div",{class:"bar"},n,f("label",{},"hill ",this.slope," °"),f("label",{},"at ",this.speed," mm/s"),this.drive),this.map.root,f("div",{class:"hill-row"},this.map.form,s),f("div",{class:"course-stage",hidden:!0},this.canvas),this.controls,this.told,this.strip.root,f("p",{class:"text soft"},Lx.replace(/\s+/g," "))),this.dials();let r=()=>{let{truck:o,answers:l,before:c}=P.bench;return`${o} ${l.surface} ${c?.key} ${c?.what}`},a=r();Yt(e,()=>{r()!==a&&this.changed(!0),a=r()}),new MutationObserver(()=>{this.view?.repaint(),this.view?.again()}).observe(document.documentElement,{attributes:!0,attributeFilter:["data-light"]}),new ResizeObserver(()=>this.view?.again()).observe(this.canvas),this.changed(!0)}offer(e,t){this.kept=e.courses;let n=(r,a)=>f("option",{value:r+a,selected:r+a===t},a),s=Object.keys(this.kept).map(r=>n("k",r));re(this.choice,f("optgroup",{label:"Given"},...Object.keys(or).map(r=>n("g",r))),s.length?f("optgroup",{label:"Kept in this folder"},...s):null),e.wrong.length&&Ee(e.wrong.slice(0,2).join(" "),"wrong")}async fetchKept(){try{let e=await ce.courses();(JSON.stringify(e.courses)!==JSON.stringify(this.kept)||e.wrong.length)&&this.offer(e,this.choice.value)}catch(e){this.refused(e)}}askName(){let e=this.choice.value.startsWith("k")?this.choice.value.slice(1):"";ms("course-name","Keep this course","Name, in the opened folder",e||"my course","Keep it",t=>{this.keep(t.trim(),t.trim()===e)})}async keep(e,t){try{this.offer(await ce.keepCourse(e,this.map.course,t),`k${e}`),Ee(`Kept as ${e}.course.toml.`)}catch(n){if(!(n instanceof De))throw n;n.where==="disk"?Vn(`Not kept: ${n.message}.`,[["Write mine over it",()=>{this.keep(e,!0)}],["Leave it as it is",()=>{}]]):n.status!==0&&Ee(n.message,"wrong")}}dials(){this.slope.value=String(this.map.course.slope_deg),this.speed.value=String(this.map.course.speed_mm_per_s)}changed(e){e&&this.leave(),clearTimeout(this.timer),this.timer=window.setTimeout(()=>{this.ask()},e?20:120)}leave(){this.playing=!1,this.shown=null,this.state=null,this.canvas.parentElement?.toggleAttribute("hidden",!0),this.map.follow(null,0),this.strip.now(null),re(this.controls),re(this.told)}async ask(){let e=++this.asked;try{let t=await ce.courseStanding(this.map.course);if(e!==this.asked)return;this.standing=t,this.map.show(t.way,[]),this.strip.draw(t,[]),this.drive.title=`${V(t.way.seconds)} s on the way`}catch(t){this.refused(t)}}refused(e){if(!(e instanceof De))throw e;e instanceof en||e.status===409||re(this.told,f("p",{class:"text wrong"},e.message))}async run(){if(this.drive.getAttribute("aria-disabled")==="true")return;this.leave(),this.drive.setAttribute("aria-disabled","true");let e=structuredClone(this.map.course),t=P.bench;try{let n=await ce.driveCourse(e),{number:s}=n;for(;n.state==="running"&&n.number===s;)re(this.controls,f("progress",{max:n.total,value:n.done,"aria-label":"Drives done"}),f("button",{type:"button",id:"course-stop",onclick:()=>{ce.stopCourse()}},"Stop")),await new Promise(r=>setTimeout(r,150)),n=await ce.courseState();if(re(this.controls),n.number!==s&&re(this.told,f("p",{class:"text"},"Another tab drives a course meanwhile.")),t!==P.bench||n.number!==s)return;n.state==="failed"&&re(this.told,f("p",{class:"text wrong"},`It was not driven: ${n.words}`)),n.found.length&&await this.take(e,n)}catch(n){re(this.controls),this.refused(n)}finally{this.drive.removeAttribute("aria-disabled")}}async take(e,t){let n=async a=>{let o=t.found.find(c=>c.whose===a),l=a==="truck"?P.bench.scene:P.bench.before?.scene;return!o||!l?null:{scene:l,pack:nr(),recording:new $r(await ce.coursePoses(o.file)),events:o.events}},s=[await n("truck"),await n("reference")];if(this.map.course.points_mm.length===0||!s[0])return;this.state=t,this.shown={course:e,seen:s},this.time=0;let r=this.events();this.map.show(t.way,r),this.standing&&this.strip.draw(this.standing,r),this.tell(),xi()||(this.canvas.parentElement.hidden=!1,this.view??=new ll(this.canvas),this.view.take(e,t.way,s)),this.buttons(),this.show(),Ee(this.outcome(t.found[0],"The truck")),!Qr()&&this.play()}events(){return(this.state?.found??[]).flatMap(e=>e.events.map(t=>({whose:e.whose,event:t})))}outcome(e,t){let n=e.events.find(a=>a.what===e.outcome),s=e.events.filter(a=>a.what==="lifts"),r=Math.abs(e.off_line_mm)>=5&&!n?`, ${V(Math.abs(e.off_line_mm),0)} mm off its line at the end`:"";return`${t} ${e.outcome}${n?` at ${V(n.at_mm,0)} mm`:""}${r}; ${s.length===0?"no wheel lifts":`${s.length} ${s.length===1?"lift":"lifts"} of a wheel`}.`}tell(){let e=this.state,t=n=>f("button",{type:"button",class:"event",title:`after ${V(n.begin_s)} s`,onclick:()=>{this.playing=!1,this.time=n.begin_s,this.show(),this.buttons()}},`${n.wheel?`${n.wheel} ${n.what}`:n.what}, ${V(n.at_mm,0)} mm`);re(this.told,...e.found.flatMap(n=>{let s=n.whose==="truck"?"The truck":`The reference (${e.against})`,r=f("div",{class:`events ${n.whose}`,role:"toolbar","aria-label":`What happened to ${s.toLowerCase()}`},...n.events.map(t));return gt(r),[f("p",{class:`text outcome ${n.whose}${n.outcome==="comes through"?"":" bad"}`},this.outcome(n,s)),n.events.length?r:null]}))}get seconds(){return Math.max(.1,...(this.shown?.seen??[]).map(e=>e?.recording.seconds??0))}buttons(){let e=f("input",{type:"range",id:"course-time","data-key":"course-time",class:"grow",min:0,max:this.seconds.toFixed(2),step:.02,value:this.time.toFixed(2),"aria-label":"Moment of the drive"});e.addEventListener("input",()=>{this.playing=!1,this.time=Number(e.value),this.show()});let t=xi()?null:au();re(this.controls,f("button",{type:"button",id:"course-play","data-key":"course-play",onclick:()=>this.playing?this.pause():this.play()},this.playing?"Pause":"Play"),e,f("output",{id:"course-clock"},""),xi()?null:f("button",{type:"button",id:"course-clip","data-key":"course-clip",title:"An animated picture (WebP)",onclick:()=>{this.clip(null)}},"Clip"),t?f("button",{type:"button",id:"course-film","data-key":"course-film",title:"A film (MP4), which takes as long as it plays",onclick:()=>{this.clip(t)}},"MP4"):null,xi()?null:f("button",{type:"button",id:"course-still","data-key":"course-still",title:"This moment as a picture",onclick:()=>this.still()},"Still"),xi()?null:f("button",{type:"button",id:"course-sheet","data-key":"course-sheet",title:"This moment as a second page of the set-up sheet, as long as the truck stays as it is",onclick:()=>{this.onSheet()}},"Sheet")),this.show()}play(){this.time>=this.seconds&&(this.time=0),this.playing=!0,this.buttons();let e=performance.now(),t=n=>{if(!(!this.playing||!this.shown)){if(this.time=Math.min(this.seconds,this.time+(n-e)/1e3),e=n,this.show(),this.time>=this.seconds)return this.pause();requestAnimationFrame(t)}};requestAnimationFrame(t)}pause(){this.playing=!1,this.buttons()}show(){if(!this.shown||!this.state?.way)return;let e=this.shown.seen[0].recording,t=e.at(e.rowAt(this.time)),n=t.poses[0][0];this.filming||this.view?.draw(this.time),this.map.follow(this.state.way,n),this.strip.now(n);let s=document.getElementById("course-time"),r=t.load_g.filter(o=>o<1).length;s&&(s.value=this.time.toFixed(2),s.setAttribute("aria-valuetext",`${V(this.time)} seconds, ${V(n,0)} millimetres along, ${r===0?"all wheels down":`${r} of 4 wheels off the ground`}`));let a=document.getElementById("course-clock");a&&(a.textContent=`${V(this.time)} s`)}film(){let e=f("canvas",{width:Ks[0],height:Ks[1]}),t=e.getContext("2d",{alpha:!1}),n=getComputedStyle(document.documentElement),s=u=>n.getPropertyValue(u).trim(),{course:r,seen:a}=this.shown,[o,l]=[this.view,this.state],c=(u,d,p,_,v,m="left")=>{t.font=`${_} ${n.getPropertyValue("--plain")}`,t.textAlign=m,t.lineWidth=4,t.strokeStyle=s("--sheet"),t.strokeText(u,d,p),t.fillStyle=s(v),t.fillText(u,d,p)},h=u=>{o.draw(u,Ks),t.drawImage(o.canvas,0,0,...Ks),c(gi(),14,28,"600 20px","--ink"),c(`hill of ${V(r.slope_deg,0)}°, ${l.surface}`,14,48,"13px","--soft"),a[1]&&c(`blue edges: ${l.against}`,14,66,"13px","--blue"),c(`${V(u)} s`,Ks[0]-14,28,"600 18px","--ink","right"),l.found.forEach((d,p)=>{let v=d.events.filter(m=>m.begin_s<=u&&(m.what!=="lifts"||m.end_s>=u)).map(m=>m.wheel?`${m.wheel} ${m.what}`:m.what);v.length&&c(`${d.whose==="truck"?"":"reference: "}${[...new Set(v)].slice(-3).join(", ")}`,14,Ks[1]-16-22*p,"600 15px",d.whose==="truck"?"--red":"--blue")})};return{seconds:this.seconds,draw:h,sheet:e}}async clip(e){this.playing=!1,this.filming=!0;let t=performance.now(),n=this.shown,s=f("progress",{max:1,value:0,"aria-label":"Clip made"}),r=!1;re(this.controls,s,f("button",{type:"button",id:"course-clip-stop",onclick:()=>{r=!0}},"Stop"));try{let a=this.film(),o=()=>r||this.shown!==n,l=h=>{s.value=h},c=e?await ou(a,e,l,o):await ru(a,l,o);c&&(Wr(c,`${gi()}-course.${e?"mp4":"webp"}`),Ee(`${gi()}-course.${e?"mp4":"webp"} is in your downloads: ${V(c.size/1e6,2)} MB, made in ${V((performance.now()-t)/1e3,0)} s.`))}catch(a){Ee(a instanceof Error?a.message:String(a),"wrong")}finally{this.filming=!1,this.shown===n&&n&&(this.buttons(),document.activeElement===document.body&&document.getElementById(e?"course-film":"course-clip")?.focus())}}still(){let e=this.film();e.draw(this.time),e.sheet.toBlob(t=>{t&&Wr(t,`${gi()}-course.png`)}),this.view?.again()}async onSheet(){let{course:e}=this.shown,t=this.film();t.draw(this.time),this.view?.again();let n=t.sheet.toDataURL("image/png").split(",")[1],s=this.state.found.flatMap(a=>{let o=a.whose==="truck"?"The truck":`The reference (${this.state.against})`,l=a.events.map(c=>`${c.wheel?`${c.wheel} ${c.what}`:c.what} at ${V(c.at_mm,0)} mm`);return[this.outcome(a,o),...l.length?[Nx(`${l.join(", ")}.`)]:[]]}),r=`A hill of ${V(e.slope_deg,0)}° on ${this.state.surface}, driven at ${V(e.speed_mm_per_s,0)} mm/s over ${e.stones.length} stones and ${e.ramps.length} ramps; here after ${V(this.time)} s.`;try{await ce.keepStill(n,[r,...s,"Driven in the engine: see the page for what is left out."]),Ee("This moment is the second page of the set-up sheet, as long as the truck stays as it is.")}catch(a){if(!(a instanceof De))throw a;Ee(a.message,"wrong")}}},Nx=i=>i.length>230?`${i.slice(0,226)} …`:i;function bf(i){Ce("undo").addEventListener("click",xf),Ce("redo").addEventListener("click",uh),Ce("save").addEventListener("click",()=>{yf()}),Ce("save-as").addEventListener("click",dh),Ce("sheet").addEventListener("click",()=>{Dx()});let e=Ce("truck");e.addEventListener("change",()=>{wf(e.value)});let t=Ce("surface");t.addEventListener("change",()=>{dt(()=>ce.surface(t.value),`on ${t.value}`)});let n=Ce("reference");n.addEventListener("change",()=>{dt(()=>ce.pin(n.value),`compared with: ${n.selectedOptions[0]?.textContent??""}`)}),Ux(i),addEventListener("keydown",s=>{if(!(s.ctrlKey||s.metaKey))return;let r=s.key.toLowerCase(),a=s.target.matches("input[type=text], input[type=number], textarea");if(r==="s"&&a)s.target.blur();else if(a)return;r==="z"&&(s.preventDefault(),(s.shiftKey?uh:xf)()),r==="y"&&(s.preventDefault(),uh()),r==="s"&&(s.preventDefault(),yf())}),gt(document.querySelector(".tools")),Ne("bench",Mf)}function Mf(){let i=P.bench;re(Ce("truck"),...i.trucks.map(s=>f("option",{value:s,selected:s===i.file},s.replace(/\.toml$/,"")))),re(Ce("surface"),...(i.surfaces.length?i.surfaces:[i.answers.surface]).map(s=>f("option",{value:s,selected:s===i.answers.surface},s))),Ce("surface").disabled=i.surfaces.length<2,re(Ce("reference"),...i.references.map(s=>f("option",{value:s.key,selected:s.key===i.reference},s.words)));let e=Ce("state");e.textContent=i.needs_name?i.unsaved?"demo truck, changed: save it under a name":"demo truck":i.unsaved?"changed, not saved yet":"saved",e.classList.toggle("unsaved",i.unsaved);let[t,n]=[Ce("undo"),Ce("redo")];t.disabled=i.undo===null,n.disabled=i.redo===null,t.title=i.undo===null?"Nothing to undo":`Undo: ${i.undo}`,n.title=i.redo===null?"Nothing to redo":`Redo: ${i.redo}`,Ce("save").disabled=!i.unsaved&&!i.needs_name,document.title=`${i.unsaved?"• ":""}${i.file.replace(/\.toml$/,"")} – crossfall bench`}async function Dx(){Ee("Drawing the set-up sheet…");try{let i=f("a",{href:URL.createObjectURL(await ce.sheet()),download:`${P.bench.file.replace(/\.toml$/,"")}-sheet.pdf`});i.click(),URL.revokeObjectURL(i.href),Ee("The set-up sheet is in your downloads.")}catch(i){if(!(i instanceof De))throw i;Ee(`The sheet was not drawn: ${i.message}`,"wrong")}}function xf(){dt(()=>ce.undo(),`undone: ${P.bench.undo??"nothing"}`)}function uh(){dt(()=>ce.redo(),`done again: ${P.bench.redo??"nothing"}`)}async function yf(){if(P.bench.needs_name)return dh();await hl(null,!1)}var hl=(i,e)=>Dl(()=>kx(i,e));async function kx(i,e){try{Xt(await ce.save(i,e)),Ee(`Saved as ${P.bench.file}.`)}catch(t){if(!(t instanceof De))throw t;if(t.status===409&&t.where==="disk")Vn(`Not saved: ${t.message}.`,[["Save under a new name",dh],["Write mine over it",()=>{hl(i,!0)}],["Take the file as it is on disk",()=>{dt(()=>ce.discard(),"taken from disk")}]]);else if(t.status===409){let n=P.bench.file;Xt(await ce.bench()),P.bench.file!==n?Vn(`${P.bench.file} is on the bench now, put there from another tab; ${n} was not saved.`,[[`Put ${n} back on the bench`,()=>{wf(n)}]]):Vn("This truck was changed in another tab or on disk. You see that state now; nothing was saved.",[["Save this state",()=>{hl(i,e)}]])}else t.status!==0&&Ee(t.message,"wrong")}}function dh(){ms("new-file","Save as a new file","Name, in the opened folder",P.bench.file.replace(/\.toml$/,"")+"-2","Save",i=>{hl(i.trim(),!1)})}async function wf(i){Ee(`Fetching ${i.replace(/\.toml$/,"")}…`),await dt(()=>ce.open(i),`on the bench: ${i.replace(/\.toml$/,"")}`)&&Mf()}function Ux(i){let e=document.documentElement,t=Ce("light"),n=matchMedia("(prefers-color-scheme: dark)"),s=null;try{s=localStorage.getItem("crossfall-light")}catch{}let r=()=>{let a=s??(n.matches?"dark":"light");e.dataset.light=a,t.textContent=a==="dark"?"Light":"Dark",i()};t.addEventListener("click",()=>{s=e.dataset.light==="dark"?"light":"dark";try{localStorage.setItem("crossfall-light",s)}catch{}r()}),n.addEventListener("change",r),r()}function Tf(i){let e=null,t=null,n={key:""},s=f("div",{id:"change-list"}),r=f("div",{hidden:!0}),a=f("datalist",{id:"change-groups"}),o=f("button",{type:"button",id:"change-new"},"New change"),l=f("button",{type:"button",id:"change-keep",title:"What you edited by hand since the state it is compared with"},"Keep my edits as a change"),c=f("button",{type:"button",id:"change-back",hidden:!0});i.append(f("div",{class:"bar"},o,l,c),r,s,a);let h=()=>{if(!e)return;if(c.hidden=t===null||t.stamp!==e.stamp,c.textContent=`Take back: ${t?.what??""}`,re(a,...[...new Set(e.changes.map(g=>g.group).filter(Boolean))].map(g=>f("option",{value:g}))),e.changes.length===0)return re(s,f("p",{class:"text"},`There is no ${e.file} yet. Begin it with a new change, or edit the truck (move the pack, weigh something lighter, add a part) and keep that as a change: it becomes a switch with a price.`));let v=f("tbody",{},...e.changes.map(u)),m=f("table",{class:"parts listed"},f("caption",{class:"visually-hidden"},"The list of changes. Arrow keys go through it."),f("thead",{},f("tr",{},...["Change, and what it does",`Price, ${e.currency||"money"}`,"One of a group",""].map(g=>f(g?"th":"td",g?{scope:"col"}:{},g)))),v);Ti(v,"tr",n),re(s,m,f("p",{class:"text soft"},`Kept in ${e.file}. Of a group only one can be on the truck.`))},u=v=>{let m=v.name in P.bench.fitted,g=(M,C,w,E)=>{let T=f("input",{value:w,"aria-label":`${C} of ${v.name}`,"data-key":`list-${M}-${v.name}`,...E});return T.addEventListener("change",()=>{if(!T.checkValidity())return void T.reportValidity();let x=M==="price"?Number(T.value||0):T.value.trim()||null;p({do:"field",name:v.name,field:M,value:x},`${C.toLowerCase()} of ${v.name}`).then(A=>{A||(T.value=w)})}),T};return f("tr",{"data-listed":v.name},f("td",{},g("label","Words",v.label,{required:!0,maxlength:200}),f("small",{class:"soft"},v.does)),f("td",{class:"n"},g("price","Price",String(v.price),{type:"number",min:0,max:1e7,step:"any"})),f("td",{},g("group","Group",v.group??"",{list:"change-groups",maxlength:60})),f("td",{},f("button",{type:"button","aria-label":`Remove ${v.name} from the list`,"data-key":`list-remove-${v.name}`,disabled:m,title:m?"It is on the truck: take it off first":"Remove",onclick:()=>{p({do:"remove",name:v.name},`removed ${v.name}`)}},"✕")))},d=(v,m)=>{e=v,t=v.was===void 0?null:{text:v.was,stamp:v.stamp,what:m},h()},p=async(v,m)=>{try{return d(await ce.editChanges(e?.stamp??"",v),m),Ee(`${m[0].toUpperCase()}${m.slice(1)}, written to ${e.file}.`),!0}catch(g){if(!(g instanceof De))throw g;return Ee(g.sentences.slice(0,3).join(" "),"wrong"),g.status!==0&&_(),!1}},_=async()=>{try{e=await ce.changes(),h()}catch(v){if(!(v instanceof De))throw v;v.status!==409&&v.status!==0&&Ee(v.message,"wrong")}};c.addEventListener("click",()=>{t&&p({do:"text",text:t.text},`took back: ${t.what}`).then(v=>{v&&(t=null,h(),o.focus())})}),o.addEventListener("click",()=>Sf(r,"A new change",!0,v=>p({do:"new",change:v},`new change ${v.name}`))),l.addEventListener("click",()=>Sf(r,"Your edits as a change",!1,async v=>{let m=await dt(()=>ce.keepEdits(e?.stamp??"",v),`kept your edits as ${v.name}, switched on`);return m&&jh("changes"),m})),Yt(i,()=>{_()},100),i.addEventListener("open",()=>{_()}),_()}var Fx=[["move","moves a part"],["mass","makes a part weigh"],["remove","takes a part off"],["set","sets a measure"]];function Sf(i,e,t,n){let s=(E,T)=>f("input",{id:`change-${E}`,...T}),r=s("name",{required:!0,maxlength:60,pattern:'[^.\\[\\]"]+',"aria-label":"Name"}),a=s("label",{maxlength:200,"aria-label":"In words"}),o=s("price",{type:"number",min:0,max:1e7,step:"any",value:0,"aria-label":"Price"}),l=s("group",{list:"change-groups",maxlength:60,"aria-label":"Group, of which only one can be chosen"}),c=f("select",{id:"change-act","aria-label":"What it does"},...Fx.map(([E,T])=>f("option",{value:E},T))),h=P.bench.rows.find(E=>E.row===P.view.row)?.name,u=f("select",{id:"change-part","aria-label":"Which part"},...P.bench.rows.map(E=>f("option",{value:E.name,selected:E.name===h},E.name))),d=f("select",{id:"change-measure","aria-label":"Which measure"},...P.bench.measures.map(E=>f("option",{value:E.key},`${E.name}, ${E.unit}`))),p=["ahead","to the left","up"].map((E,T)=>s(`by${T}`,{type:"number",step:"any",value:0,"aria-label":`Moved by, ${E}, mm`})),_=s("value",{type:"number",step:"any","aria-label":"To"}),v=f("div",{class:"new-line"}),m=()=>{let E=c.value;_.required=E==="mass"||E==="set",re(v,f("span",{class:"new-label"},"It"),c,...E==="set"?[d,_]:[u],...E==="move"?[...p,f("span",{class:"soft"},"mm ahead, left, up")]:[],...E==="mass"?[_,f("span",{class:"soft"},"g")]:[])};c.addEventListener("change",()=>{m(),c.focus()});let g=()=>c.value==="move"?{move:[{part:u.value,by_mm:p.map(E=>Number(E.value))}]}:c.value==="mass"?{swap:[{part:u.value,new:{mass_g:Number(_.value)}}]}:c.value==="remove"?{remove:[u.value]}:{set:{[d.value]:Number(_.value)}},M=()=>{i.hidden=!0,i.replaceChildren(),document.getElementById(t?"change-new":"change-keep")?.focus()},C=(E,...T)=>f("div",{class:"new-line"},f("span",{class:"new-label"},E),...T),w=f("form",{class:"new-part","aria-label":e},f("h3",{},e),C("Name",r,f("label",{},"price ",o)),t?C("In words",a):null,C("One of",l,f("span",{class:"soft"},"leave empty if it goes with all others")),t?v:null,f("p",{class:"about"},t?"What is more than this (a part added, several things at once): edit the truck, then keep that as a change.":"What differs from the state your truck is compared with goes into the list, and is switched on in its place."),f("div",{class:"bar"},f("button",{type:"submit",class:"main",id:"change-add"},t?"Put it in the list":"Keep them"),f("button",{type:"button",id:"change-leave",onclick:M},"Leave it")));w.addEventListener("submit",E=>{E.preventDefault();let T={name:r.value.trim(),label:a.value.trim(),price:Number(o.value||0),group:l.value.trim(),...t?g():{}};n(T).then(x=>{x&&M()})}),m(),re(i,w),i.hidden=!1,r.focus()}function Ef(){let i=Ce("history"),e=f("div",{class:"steps"}),t=f("button",{type:"button",id:"step-name",onclick:()=>h()},"Name this step…"),n=f("button",{type:"button",id:"step-pin",title:"Compare everything with the truck as it is now",onclick:()=>{dt(()=>ce.pin("now"),"compared with this step from now on")}},"Compare with this");i.append(e,f("div",{class:"step-tools"},t,n)),gt(i);let s=null,r=0,a=()=>{let u=s?.steps??[];if(i.hidden=u.length<2,!s||i.hidden)return;let d=u.map(v=>v.weakest_deg).filter(v=>v!==null),[p,_]=[Math.min(...d)-.5,Math.max(...d)+.5];re(e,...u.map((v,m)=>{let g=v.weakest_deg,M=m?u[m-1].weakest_deg:null,C=g!==null&&M!==null?`, ${ht(g-M,1)}°`:"",w=`${v.name||v.what}${g===null?"":`: weakest ${V(g)}°${C}`}${v.saved?", as saved":""}`,E=f("i",{class:"step-bar","aria-hidden":"true"});return E.style.height=`${g===null?2:Math.round(3+15*(g-p)/(_-p))}px`,f("button",{type:"button",class:`step${v.saved?" saved":""}${m>s.now?" undone":""}`,"data-key":`step-${m}`,"aria-pressed":String(m===s.now),title:w,"aria-label":`Step ${m}: ${w}`,onclick:()=>{dt(()=>ce.go(m),m===0?"back at the start":`at the step: ${v.name||v.what}`)}},E,f("span",{},v.name?v.name:g===null?"…":`${V(g)}°`))})),t.disabled=s.now===0,e.querySelector("[aria-pressed='true']")?.scrollIntoView({block:"nearest",inline:"nearest"})},o=async()=>{try{s=await ce.history(),a()}catch(u){if(!(u instanceof De))throw u}},l=()=>{clearTimeout(r),r=window.setTimeout(()=>{o()},150)};Ne("bench",l);let c="";Ne("shown",()=>{P.trying||!P.answers.exact||c===P.bench.truck+P.answers.surface||(c=P.bench.truck+P.answers.surface,l())});let h=()=>{if(!s||s.now===0)return;let u=s.now;ms("new-step","Name this step",`What to call the truck after “${s.steps[u].what}”`,s.steps[u].name,"Name it",d=>{ce.nameStep(u,d).then(p=>{s=p,a()},p=>{if(!(p instanceof De))throw p;Ee(p.message,"wrong")})},{maxlength:60})}}var Af=1500,dl=!1,ul="";function Cf(){Vh(()=>{if(dl)return;dl=!0,document.documentElement.dataset.lost="",Rn();let i=Ce("notice");i.replaceChildren(f("p",{},"The bench does not answer. What you see is the last state it took; your work up to there is kept. Start it again with crossfall bench: this page finds it by itself.")),i.hidden=!1}),window.setTimeout(()=>{Rf()},Af)}async function Rf(){try{await Ox()}catch(i){if(!(i instanceof De))throw i;i instanceof en||Ee(i.message,"wrong")}finally{window.setTimeout(()=>{Rf()},Af)}}async function Ox(){let i=P.bench,e=await ce.pulse();if(dl)return Bx();if(!(P.trying||rr()||P.bench!==i)){if(e.document!==i.document||e.revision!==i.revision){let t=await ce.bench();if(P.trying||rr()||P.bench!==i)return;Xt(t),Ee(t.document!==i.document?`${t.file} was put on the bench by another tab.`:`Changed elsewhere: ${t.undo??"an older state"}.`)}else if(e.unsaved!==i.unsaved||e.surface!==i.answers.surface||e.reference!==(i.reference??"auto")){let t=await ce.bench();!P.trying&&!rr()&&P.bench===i&&Xt(t)}e.disk!==ul&&(ul=e.disk,ul&&Vn(`${ul}.`,[["Take the file as it is on disk",()=>{dt(()=>ce.discard(),"taken from disk")}],["Keep what is here",()=>{}]]))}}async function Bx(){let i=P.bench,e=await ce.bench();dl=!1,delete document.documentElement.dataset.lost,Ce("notice").hidden=!0,Xt(e);let t=Yh();Ee(e.document===i.document&&e.revision===i.revision?`The bench is back, with everything as it was${t?`; not put down: ${t}`:""}.`:`The bench is back, with ${e.file} as it is there now.`)}var Pf=[["mass_g","mass of a part, g",0],["at_mm.x","a part's place ahead, mm",30],["at_mm.y","a part's place to the left, mm",20],["at_mm.z","a part's place up, mm",25]],fh={heading_deg:["way it stands, turned by °",0,180,13],grip:["grip of the ground",.5,1.2,8]};function Lf(i,e){let t=[If("x","Across","both.track_mm"),If("y","Up","chassis.raise_mm")],n=f("select",{id:"sweep-heading","aria-label":"Which way to stand"},...Object.values(_t).map(g=>f("option",{value:g.heading,selected:g.heading===90},g.name)),f("option",{value:"all"},"all four ways")),s=f("select",{id:"sweep-method","aria-label":"By which method"},f("option",{value:"compliant"},"springs and tyres"),f("option",{value:"closed form"},"as if nothing gave, at once")),r=f("span",{class:"soft",id:"sweep-count"}),a=f("button",{type:"submit",class:"main",id:"sweep-run"},"Run"),o=f("button",{type:"button",id:"sweep-stop",hidden:!0},"Stop"),l=f("progress",{id:"sweep-bar",max:1,value:0,"aria-label":"How far the sweep is",hidden:!0}),c=f("p",{class:"text",id:"sweep-words",role:"status",hidden:!0}),h=f("form",{class:"new-part sweep-form","aria-label":"A new sweep"},f("h3",{},"A new sweep"),...t.map(g=>g.node),f("div",{class:"new-line"},f("span",{class:"new-label"},"Standing"),n),f("div",{class:"new-line"},f("span",{class:"new-label"},"By"),s),f("div",{class:"bar"},a,o,r),l,c);i.append(h);let u=()=>t.reduce((g,M)=>g*Number(M.asked().steps),1)*(n.disabled||n.value!=="all"?1:4),d=()=>{n.disabled=t.some(g=>g.key()==="heading_deg"),r.textContent=`${u()} trucks to answer`};h.addEventListener("input",d),h.addEventListener("change",d),Ne("bench",d);let p="",_=g=>{let M=g.state==="running"||g.state==="stopping";a.disabled=M,o.hidden=!M,o.disabled=g.state==="stopping",l.hidden=!M,l.max=Math.max(1,g.total),l.value=g.done,c.hidden=g.state==="none",c.classList.toggle("wrong",g.state==="failed");let C=g.left_s===null||g.left_s<1?"":`, about ${g.left_s<90?`${V(g.left_s,0)} s`:`${V(g.left_s/60,0)} min`} left`,w={none:"",running:g.done?`${g.done} of ${g.total}${C}.`:"Starting…",stopping:"Stopping; what is done is kept.",stopped:`Stopped at ${g.done} of ${g.total}; what is done is in the map.`,done:`${g.total} done; the map is below.`,failed:`It failed: ${g.words}`}[g.state];c.textContent!==w&&(c.textContent=w),!M&&p&&(p="",g.table&&e(g.table),g.state==="done"&&Ee("The sweep is done."))},v=0,m=async()=>{clearTimeout(v);try{let g=await ce.sweepState();(g.state==="running"||g.state==="stopping")&&(p="yes"),_(g)}catch(g){if(!(g instanceof De))throw g}p&&(v=window.setTimeout(()=>{m()},oa(i)?500:3e3))};h.addEventListener("submit",g=>{g.preventDefault();let[M,C]=t.map(E=>E.key());if(M===C)return Ee("The two are the same: vary two different things.","wrong");let w=n.value==="all"?Object.values(_t).map(E=>E.heading):[Number(n.value)];a.disabled=!0,ce.runSweep({axes:t.map(E=>E.asked()),headings:w,method:s.value}).then(E=>{p="yes",_(E),m()},E=>{if(a.disabled=!1,!(E instanceof De))throw E;Ee(E.sentences.slice(0,2).join(" "),"wrong")})}),o.addEventListener("click",()=>{ce.stopSweep().then(_)}),d(),m()}function If(i,e,t){let n=()=>[f("optgroup",{label:"The truck"},f("option",{value:"both.track_mm"},"both tracks, mm"),...P.bench.measures.map(m=>f("option",{value:m.key},`${m.name.toLowerCase()}, ${m.unit}`))),f("optgroup",{label:"Its parts"},...Pf.map(([m,g])=>f("option",{value:`part.${m}`},g))),f("optgroup",{label:"The conditions"},...Object.entries(fh).map(([m,[g]])=>f("option",{value:m},g)))],s=f("select",{id:`sweep-${i}`,"aria-label":`${e}: what to vary`},...n());s.value=t;let r=f("select",{id:`sweep-${i}-part`,"aria-label":`${e}: of which part`,hidden:!0}),a=(m,g,M={})=>f("input",{id:`sweep-${i}-${m}`,type:"number",step:"any",required:!0,"aria-label":`${e}: ${g}`,...M}),[o,l,c]=[a("first","from"),a("last","to"),a("steps","in how many steps",{min:2,max:500,step:1,value:11})],h=()=>s.value.startsWith("part."),u=()=>h()?`part.${r.value}.${s.value.slice(5)}`:s.value,d=()=>{if(s.value in fh)return fh[s.value].slice(1);if(h()){let C=P.bench.rows.find(x=>x.name===r.value),[w,,E]=Pf.find(([x])=>`part.${x}`===s.value);if(!C)return[0,1,11];if(w==="mass_g")return[Math.round(C.mass_g/2),Math.round(C.mass_g*1.5),11];let T=C.at_mm?.["xyz".indexOf(w.slice(-1))]??0;return[T-E,T+E,11]}let m=P.bench.measures.find(C=>C.key===(s.value==="both.track_mm"?"front.track_mm":s.value));if(!m)return[0,1,11];let g=Math.min((m.high-m.low)/4,20),M=C=>Number((Math.round(Math.min(m.high,Math.max(m.low,C))/m.step)*m.step).toFixed(3));return[M(m.value-g),M(m.value+g),11]},p=()=>{if(r.hidden=!h(),!r.hidden){let C=r.value||P.bench.rows.find(E=>E.row===P.view.row)?.name,w=s.value==="part.mass_g";re(r,...P.bench.rows.filter(E=>w||E.at_mm).map(E=>f("option",{value:E.name,selected:E.name===C},E.name)))}let[m,g,M]=d();[o.value,l.value,c.value]=[String(m),String(g),String(M)]};s.addEventListener("change",p),r.addEventListener("change",p);let _="";return Ne("bench",()=>{if(_===P.bench.file)return;_=P.bench.file;let m=s.value;re(s,...n()),s.value=m,s.value||(s.value=t),p()}),_=P.bench.file,p(),{node:f("div",{class:"new-line"},f("span",{class:"new-label"},e),s,r,f("span",{class:"sweep-range"},f("span",{class:"soft"},"from"),o,f("span",{class:"soft"},"to"),l,f("span",{class:"soft"},"in"),c,f("span",{class:"soft"},"steps"))),key:u,asked:()=>({key:u(),first:Number(o.value),last:Number(l.value),steps:Number(c.value)})}}function Nf(i){let e=f("div",{id:"map-holder"}),t=f("div",{}),n=f("select",{id:"sweep-choice",class:"grow","aria-label":"Finished sweep"}),s=async()=>{try{re(e,zx(await ce.sweep(n.value)))}catch(l){if(!(l instanceof De))throw l;re(e,f("p",{class:"text wrong"},l.message))}},r=f("div",{class:"bar",hidden:!0},f("label",{for:"sweep-choice"},"Finished"),n,f("button",{type:"button",id:"sweep-open",onclick:()=>{s()}},"Open")),a=f("p",{class:"text soft",hidden:!0},"No finished sweep in this folder yet: run one here, or with crossfall sweep.");i.append(t,r,a,e);let o=async(l="")=>{try{let{tables:c}=await ce.sweeps(),h=l||n.value;re(n,...c.map(u=>f("option",{value:u,selected:u===h},u.replace(/^crossfall-out\//,"").replace(/\/table\.csv$/,"")))),r.hidden=c.length===0,a.hidden=c.length>0,l&&await s()}catch(c){if(!(c instanceof De))throw c}};Lf(t,l=>{o(l)}),i.addEventListener("open",()=>{o()}),o()}function zx(i){let e=Object.entries(i.columns).filter(([,d])=>d.every(p=>p===null||typeof p=="number")).map(([d])=>d),t=e.filter(d=>new Set(i.columns[d]).size>1),n=t.filter(d=>d.includes(".")&&!d.startsWith("slide")),s=e.filter(d=>/tip|compliant|rigid|critical|angle/.test(d)&&d.endsWith("_deg")),r={x:n[0]??t[0]??"",y:n[1]??t[1]??"",z:s.find(d=>d==="tip_deg")??s[0]??t[t.length-1]??""},a=[...new Set(i.columns.heading_deg??[])].filter(d=>typeof d=="number"),o=a[0]??null,l=f("div",{}),c=(d,p)=>{let _=f("select",{id:`map-${d}`},...t.map(v=>f("option",{value:v,selected:v===r[d]},Gx(v))));return _.addEventListener("change",()=>{r[d]=_.value,u()}),[f("label",{for:`map-${d}`},p),_]},h=f("select",{id:"map-way","aria-label":"Heading"},...a.map(d=>f("option",{value:d},`turned ${d}°`)));h.addEventListener("change",()=>{o=Number(h.value),u()});let u=()=>re(l,Vx(i,r,o,n));return u(),f("div",{},f("div",{class:"bar map-bar"},...c("x","Across"),...c("y","Up"),...c("z","Colour"),a.length>1?h:null),l,f("p",{class:"text soft"},`${i.rows} lines${i.cut?", the first of more":""}. A point puts that truck on the table; undo brings yours back.`))}function Gx(i){return i.replace(/^part\./,"").replace(/\.at_mm\./," ").replace(/\./g," ").replace(/_(mm|deg|g)$/," ($1)").replace(/_/g," ")}function Vx(i,e,t,n){let s=i.columns,r=[];for(let U=0;U<i.rows;U++)[e.x,e.y,e.z].every(S=>typeof s[S]?.[U]=="number")&&(t===null||s.heading_deg?.[U]===t)&&r.push(U);let a=(U,J)=>s[U][J],o=U=>{let J=r.map(F=>a(U,F)),[S,D]=[Math.min(...J),Math.max(...J)];return D>S?[S,D]:[S-1,D+1]},[l,c,h]=[420,320,46];if(r.length===0)return O("svg",{viewBox:`0 0 ${l} 40`},O("text",{x:10,y:24,class:"ring-name"},"nothing to draw"));let[[u,d],[p,_],[v,m]]=[o(e.x),o(e.y),o(e.z)],g=U=>h+(U-u)/(d-u)*(l-h-70),M=U=>c-40-(U-p)/(_-p)*(c-60),C=U=>{let J=[[31,56,84],[88,124,144],[176,184,164],[243,228,178]],S=Math.max(0,Math.min(2.999,U*3)),[D,F]=[J[Math.floor(S)],J[Math.floor(S)+1]];return`rgb(${D.map((G,H)=>Math.round(G+(F[H]-G)*(S%1))).join(" ")})`},[w,E]=[new Set(r.map(U=>a(e.x,U))).size,new Set(r.map(U=>a(e.y,U))).size],T=w*E<=r.length*1.5&&w>1&&E>1,[x,A]=T?[(l-h-70)/(w-1)*1.02,(c-60)/(E-1)*1.02]:[11,11],X=r.map(U=>{let J=`${e.x} ${V(a(e.x,U),2)}, ${e.y} ${V(a(e.y,U),2)}: ${e.z} ${V(a(e.z,U),2)}`,S=O("rect",{x:g(a(e.x,U))-x/2,y:M(a(e.y,U))-A/2,width:x,height:A,fill:C((a(e.z,U)-v)/(m-v)),class:"map-point",tabindex:-1,role:"button","aria-label":J},O("title",{},J)),D=()=>{let F={};for(let G of n)F[G]=a(G,U);dt(()=>ce.place(F),"put a point of the sweep on the table").then(G=>{G&&Ee(J)})};return S.addEventListener("click",D),S.addEventListener("keydown",F=>{(F.key==="Enter"||F.key===" ")&&(F.preventDefault(),D())}),S}),k=[];for(let U=0;U<=4;U++)k.push(O("text",{class:"ring-name",x:g(u+(d-u)*U/4),y:c-12,"text-anchor":"middle"},V(u+(d-u)*U/4,d-u<8?2:0)),O("text",{class:"ring-name",x:h-14,y:M(p+(_-p)*U/4)+3,"text-anchor":"end"},V(p+(_-p)*U/4,_-p<8?2:0)),O("rect",{x:l-38,y:24+(4-U)*30,width:12,height:30,fill:C(U/4)}),O("text",{class:"ring-name",x:l-22,y:24+(4-U)*30+18},V(v+(m-v)*U/4,1)));k.push(O("text",{class:"ring-name",x:l-38,y:16},e.z.replace(/_/g," ")));let z=O("svg",{viewBox:`0 0 ${l} ${c}`,id:"map",role:"group","aria-label":`${e.z} over ${e.x} and ${e.y}; arrow keys go from point to point`},...X,...k);return gt(z,".map-point"),z}var Hx=[["budget","At most, money","100"],["added_g","At most heavier, g",""],["run_min","Run time at least, min",""],["front_least","On the front axle at least, %",""],["front_most","On the front axle at most, %",""],["reach_deg","Reach this angle, °",""]],Xr="";function kf(i){let e=f("select",{id:"plan-aim"},...[["worst","the weakest way"],["side","the side slope"],["climb","the climb"],["descent","the descent"]].map(([c,h])=>f("option",{value:c},h))),t=Hx.map(([c,h,u])=>{let d=f("input",{id:`plan-${c}`,type:"number",step:"any",min:c==="added_g"?void 0:0,value:u});return[c,f("label",{for:`plan-${c}`},h),d]}),n=f("select",{id:"plan-limits"},f("option",{value:""},"no class")),s="",r=async()=>{if(s===P.bench.document)return;s=P.bench.document;let c=await ce.changes();Xr=c.currency;let h=l.querySelector("label[for='plan-budget']");h&&(h.textContent=`At most, ${Xr||"money"}`),re(n,f("option",{value:""},"no class"),...c.limits.map(u=>f("option",{value:u},u.replace(".limits.toml",""))))},a=f("div",{id:"plan-answer","aria-live":"polite"}),o=f("button",{type:"submit",class:"main",id:"plan-go"},"Find the best set"),l=f("form",{class:"plan-form"},f("label",{for:"plan-aim"},"Raise"),e,...t.flatMap(([,c,h])=>[c,h]),f("label",{for:"plan-limits"},"Within the limits of"),n,o);l.addEventListener("submit",c=>{c.preventDefault();let h={aim:e.value};for(let[u,,d]of t)d.value!==""&&(h[u]=Number(d.value));n.value&&(h.limits=n.value),o.disabled=!0,re(a,f("p",{class:"text soft"},"Looking through every set that may go together…")),ce.plan(h).then(u=>$x(a,u),u=>{if(!(u instanceof De))throw u;re(a,f("p",{class:"text wrong"},u.message))}).finally(()=>{o.disabled=!1})}),i.append(l,a),i.addEventListener("open",()=>{r()}),Yt(i,()=>{r()}),r()}function $x(i,e){let t=e.best;re(i,t?f("div",{},f("h3",{},`Best: ${V(t.deg,2)}° for ${Ji(t.price,Xr)}`),Df(t,"best")):f("p",{class:"text"},"No set of these changes does what is asked."),e.front.length>1?Wx(e):null,f("p",{class:"text soft"},`${e.scored} sets were scored with springs and tyres${e.proven?"; this is proven to be the best of them all":""}.`),e.runners.length?f("h3",{},"Next best"):null,...e.runners.map((n,s)=>Df(n,`runner-${s}`)))}function Df(i,e){return f("div",{class:"change"},f("span",{}),f("span",{},i.labels.join("; ")||"nothing"),f("button",{type:"button",id:`fit-${e}`,onclick:()=>{ph(i)}},"Fit"),f("p",{class:"note"},`${V(i.deg,2)}° ± ${V(1.96*i.sd_deg,2)}${i.slides?" against a rail: it slides first":""}, ${Ji(i.price,Xr)}, ${V(i.added_g,0)} g heavier${i.tied?"; as good as the best, as far as the masses are known":""}`))}function ph(i){return dt(()=>ce.fit(i.chosen),"fitted the set")}function Wx(i){let e=i.front,[t,n,s]=[420,200,38],[r,a]=[0,Math.max(...e.map(v=>v.price),1)],o=[...e.map(v=>v.deg),i.now.deg],[l,c]=[Math.floor(Math.min(...o)),Math.ceil(Math.max(...o))],h=v=>s+(v-r)/(a-r)*(t-s-14),u=v=>n-28-(v-l)/Math.max(1,c-l)*(n-44),d=[];for(let v=l;v<=c;v+=Math.max(1,Math.round((c-l)/5)))d.push(O("path",{class:"ring",d:`M${s} ${u(v)}H${t-10}`}),O("text",{class:"ring-name",x:s-5,y:u(v)+3,"text-anchor":"end"},`${v}°`));for(let v=0;v<=4;v++)d.push(O("text",{class:"ring-name",x:h(a*v/4),y:n-12,"text-anchor":"middle"},V(a*v/4,0)));let p=`M${h(0)} ${u(e[0].deg)}`;e.forEach((v,m)=>{p+=`${m?`H${h(v.price)}`:""}L${h(v.price)} ${u(v.deg)}`}),d.push(O("path",{class:"compliant",d:p}));for(let v of e){let m=`${Ji(v.price,Xr)}: ${V(v.deg,2)}°, ${v.labels.join("; ")||"nothing"}`,g=O("circle",{cx:h(v.price),cy:u(v.deg),r:5,class:"front-point",tabindex:0,role:"button","aria-label":`Fit: ${m}`},O("title",{},m));g.addEventListener("click",()=>{ph(v)}),g.addEventListener("keydown",M=>{(M.key==="Enter"||M.key===" ")&&(M.preventDefault(),ph(v))}),d.push(g)}let _=O("svg",{viewBox:`0 0 ${t} ${n}`,id:"front",role:"group","aria-label":"Money against degrees; arrow keys go from point to point"},...d);return gt(_,".front-point"),f("figure",{class:"front"},f("figcaption",{class:"text soft"},"The most degrees for every price; a point fits its set."),_)}var En=74,Wi=178,ps=15,Xx=[["key-compliant","tips on springs and tyres"],["key-rail","against a rail"],["key-range","its 95 % range"],["key-rigid","tips, nothing gives"],["key-slide","slides, low to high grip"],["key-lift","first wheel lifts"],["key-tried","virtual trial"],["key-before","before"]],qx={"key-tried":"M13 0L18 5L13 10L8 5Z","key-range":"M3 5H23M3 1V9M23 1V9"},mh=class{root;back=O("g");curves=O("g");parts=new Tn("plan",()=>this.scale());marks=O("g");plan=O("g",{class:"polar-plan"},this.parts.root,this.marks);puck=O("g",{class:"puck"});high=75;constructor(e){this.root=O("svg",{viewBox:"-234 -206 468 412",class:"polar",role:"slider",tabindex:0,"data-key":"puck","aria-label":"Slope under the truck: arrows left and right turn it, up and down tilt it","aria-valuemin":0,"aria-valuemax":90},this.back,this.plan,this.curves,this.puck);let t=document.createElement("ul");t.className="legend";for(let[n,s]of Xx){let r=O("svg",{viewBox:"0 0 26 10",class:n,"aria-hidden":"true"},n==="key-slide"?O("rect",{width:26,height:10}):O("path",{d:qx[n]??"M0 5H26"})),a=document.createElement("li");a.append(r,s),t.append(a)}e.append(this.root,t),Ne(["shown","trials"],()=>this.draw()),Ne("view",()=>this.drawPuck()),Ne("pick",()=>this.drawPlan()),this.listen()}listen(){let e=!1,t=n=>{let s=new DOMPoint(n.clientX,n.clientY).matrixTransform(this.root.getScreenCTM().inverse()),r=Math.hypot(s.x,s.y),a=(Zx(Math.atan2(-s.x,s.y))+360)%360;ut({heading:Math.round(a/ji)*ji%360,tilt:Math.max(0,Math.min(90,Jx(this.angleAt(r),1)))})};this.root.addEventListener("pointerdown",n=>{e=!0,this.root.setPointerCapture(n.pointerId),t(n)}),this.root.addEventListener("pointermove",n=>{e&&t(n)});for(let n of["pointerup","pointercancel"])this.root.addEventListener(n,()=>e=!1);this.root.addEventListener("keydown",n=>{let s=n.shiftKey?10:1,{tilt:r,heading:a}=P.view,l={ArrowUp:{tilt:Math.min(90,r+s)},ArrowDown:{tilt:Math.max(0,r-s)},ArrowLeft:{heading:(a+360-ji*s)%360},ArrowRight:{heading:(a+ji*s)%360},Home:{tilt:0}}[n.key];l&&(n.preventDefault(),ut(l),Ee(`Tilt ${V(P.view.tilt)}°, turned ${V(P.view.heading,0)}°; ${Uf(P.view.heading)}.`))})}radius(e){return e<ps?e/ps*En:En+(e-ps)/(this.high-ps)*(Wi-En)}angleAt(e){return e<En?e/En*ps:ps+(e-En)/(Wi-En)*(this.high-ps)}at(e,t){let n=e*Math.PI/180;return[-Math.sin(n)*t,Math.cos(n)*t]}curve(e,t){return e.flatMap((n,s)=>{let r=t[s];return r==null?[]:[this.at(n,this.radius(Math.min(r,90)))]})}draw(){let e=P.answers;if(!e)return;let t=this.high,n=Cn(e),s=Math.max(...e.rigid_deg,...n.map(c=>c??0));this.high=Math.max(this.high,Math.min(95,Math.ceil((s+2)/10)*10)),(this.high!==t||!this.back.hasChildNodes())&&this.drawBack(),this.drawPlan();let r=[...this.sliding(e),O("path",{class:"lift",d:this.pieces(e.heading_deg,e.first_lift_deg)})],a=P.bench.before;if(a){let c=Cn(a);r.push(O("path",{class:"before",d:Hi(this.curve(a.heading_deg,c.some(h=>h!==null)?c:a.rigid_deg))}))}let[o,l]=this.cutAt(e);r.push(O("path",{class:"rigid",d:Hi(this.curve(e.heading_deg,e.rigid_deg))}),O("path",{class:"railed",d:l}),O("path",{class:"compliant",d:o}));for(let c of e.ways??[])r.push(this.range(c));for(let c of P.trying?[]:P.trials)r.push(...this.tried(c));for(let{heading:c}of Object.values(_t))r.push(this.reading(c),this.wayName(c));for(let[c,h,u]of[["nose",0,-En-1],["tail",0,En+7],["left",14-En,-5],["right",En-14,-5]])r.push(O("text",{x:h,y:u,class:"side-name","text-anchor":"middle"},c));this.curves.replaceChildren(...r),this.curves.classList.toggle("trying",P.trying),this.curves.classList.toggle("inexact",!e.exact),this.drawPuck()}sliding(e){if(e.goes_at_deg!==null){let r=e.goes_at_deg.map((a,o)=>e.rail_deg[o]===null?e.slide_deg.likely:a);return Cn(e).some(a=>a!==null)?[O("path",{class:"slide-likely",d:Hi(this.curve(e.heading_deg,r))})]:[]}let[t,n,s]=[e.slide_deg.low,e.slide_deg.likely,e.slide_deg.high].map(r=>Yx(this.radius(r)));return[O("path",{class:"slide-band",d:`${s}${t}`,"fill-rule":"evenodd"}),O("path",{class:"slide-likely",d:n})]}pieces(e,t){let n="",s=!1;for(let r=0;r<=e.length;r++){let a=t[r%e.length]??null;a!==null&&(n+=`${s?"L":"M"}${js(this.at(e[r%e.length],this.radius(Math.min(a,90))))}`),s=a!==null}return n}cutAt(e){let[t,n]=[e.heading_deg,Cn(e)],s=["",""],r=360/t.length,a=-1,o=(l,c,h)=>{s[l]+=`${a===l?"L":"M"}${js(this.at(c,this.radius(Math.min(h,90))))}`,a=l};return t.forEach((l,c)=>{let[h,u]=[n[c]??null,n[(c+1)%t.length]??null];if(h===null||u===null){a=-1;return}let[d,p]=[c,(c+1)%t.length].map(_=>e.rail_deg[_]===null?0:1);if(a!==d&&o(d,l,h),d!==p){let _=e.goes_at_deg===null?e.slide_deg.likely:(h+u)/2,v=u===h?.5:Math.max(0,Math.min(1,(_-h)/(u-h))),m=l+r*v;o(d,m,_),o(p,m,_)}o(p,l+r,u)}),s}range(e){let[t,n]=e.compliant_range_deg??e.rail_range_deg??[null,null];if(t===null||n===null)return O("g");let[[s,r],[a,o]]=[t,n].map(h=>this.at(e.heading_deg,this.radius(h))),l=this.at(e.heading_deg+90,5),c=([h,u])=>`M${js([h-l[0],u-l[1]])}L${js([h+l[0],u+l[1]])}`;return O("path",{class:e.compliant_deg===null?"range of-rail":"range",d:`M${js([s,r])}L${js([a,o])}${c([s,r])}${c([a,o])}`},O("title",{},`95 % range: ${V(t)} to ${V(n)}°`))}tried(e){let t=e.trial_deg??e.trial_slide_deg;if(t===null)return[];let[n,s]=this.at(e.heading_deg,this.radius(t)),[r,a]=(e.trial_ci_deg??[t,t]).map(c=>this.at(e.heading_deg,this.radius(c??t))),o=e.hold==="rail"?" against a rail":"",l=O("title",{},`virtual trial: ${e.trial_outcome}${o} at ${V(t)}°`);return[O("path",{class:"tried-line",d:`M${r[0]} ${r[1]}L${a[0]} ${a[1]}`}),O("path",{class:`tried ${e.trial_outcome}`,d:`M${n} ${s-5}L${n+5} ${s}L${n} ${s+5}L${n-5} ${s}Z`},l)]}reading(e){let t=P.answers,n=on(t,e),s=n?.deg??Gn(t.heading_deg,t.rigid_deg,e),[r,a]=this.at(e,Wi+14),o=Math.abs(r)<20?"middle":r<0?"start":"end",l=e===90?-231:e===270?231:r,c={x:l,y:a+(Math.abs(a)<20?-6:a>0?10:0),"text-anchor":o},h=O("tspan",{class:"reading-slides"},"slides "),u=P.trying?void 0:t.ways?.find(_=>_.heading_deg===e),[d,p]=u?.goes_at_range_deg??[null,null];return O("text",{...c,class:"reading"},n?.slides&&o==="middle"?h:null,`${Ki(s,d===null||p===null?null:[d,p])}°`,n?.slides&&o!=="middle"?O("tspan",{class:"reading-slides",x:l,dy:12},"slides"):null)}wayName(e){let t={0:"tail downhill",90:"left side",180:"nose downhill",270:"right side"}[e],[n,s]=this.at(e,Wi+14);if(Math.abs(n)<20)return O("text",{x:44,y:s+(s>0?10:0),class:"way-name"},t);let r={x:n<0?-231:231,"text-anchor":n<0?"start":"end"};return O("text",{class:"way-name",y:s+24},O("tspan",r,t),O("tspan",{...r,dy:12},"downhill"))}drawBack(){let e=[];for(let t=20;t<=this.high;t+=10){let n=this.radius(t),[s,r]=this.at(134,n);e.push(O("circle",{r:n,class:t%30===0?"ring strong":"ring"}),O("text",{x:s,y:r+3,class:"ring-name","text-anchor":"middle"},`${t}°`))}for(let t=0;t<360;t+=15){let[n,s]=this.at(t,Wi),[r,a]=this.at(t,Wi+(t%45===0?7:4));e.push(O("path",{d:`M${n} ${s}L${r} ${a}`,class:"tick"}))}e.push(O("circle",{r:Wi,class:"rim"})),this.back.replaceChildren(...e)}scale(){return Math.min(.42,(En-8)/(P.scene.wheelbase_mm/2+60))}drawPlan(){let e=P.scene;if(!e)return;let t=this.scale();this.parts.draw(e.parts,P.view.row);let n=[],s=[0,1,3,2].map(o=>e.tip_points_mm[o]).map(([o,l])=>[-l*t,-o*t]);n.push(O("path",{d:Hi(s),class:"tip-line"}));let[r,a]=[-e.cg_mm[1]*t,-e.cg_mm[0]*t];n.push(O("g",{transform:`translate(${r.toFixed(2)} ${a.toFixed(2)})`,class:"cg"},O("circle",{r:5,class:"cg-back"}),O("path",{d:"M0 0V-5A5 5 0 0 1 5 0ZM0 0V5A5 5 0 0 1 -5 0Z",class:"cg-dark"}),O("circle",{r:5,class:"cg-ring"}))),this.marks.replaceChildren(...n)}drawPuck(){let{tilt:e,heading:t}=P.view,n=P.answers;if(!n)return;let s=this.radius(e),[r,a]=this.at(t,s),[o,l]=this.at(t,Wi),c=on(n,t)?.deg??Gn(n.heading_deg,n.rigid_deg,t)??90;this.puck.classList.toggle("over",e>c),this.puck.replaceChildren(O("path",{d:`M0 0L${o.toFixed(1)} ${l.toFixed(1)}`,class:"puck-line"}),O("circle",{cx:r.toFixed(1),cy:a.toFixed(1),r:15,class:"puck-reach"}),O("circle",{cx:r.toFixed(1),cy:a.toFixed(1),r:6.5,class:"puck-dot"})),this.root.setAttribute("aria-valuenow",V(e).replace("−","-")),this.root.setAttribute("aria-valuetext",`tilted ${V(e)} degrees, turned ${V(t,0)}; ${Uf(t)}`)}};function Uf(i){let e=P.answers,t=on(e,i);return t===null?`tips at ${V(Gn(e.heading_deg,e.rigid_deg,i))}° if nothing gives`:`${t.slides?"slides":"tips"} at ${V(t.deg)}°`}var Yx=i=>`M${i} 0A${i} ${i} 0 1 0 ${-i} 0A${i} ${i} 0 1 0 ${i} 0Z`,js=([i,e])=>`${i.toFixed(2)} ${e.toFixed(2)}`,Zx=i=>i*180/Math.PI,Jx=(i,e)=>Number(i.toFixed(e)),Ff=()=>new mh(Ce("polar"));var Kx=["front","rear","left","right","front left","front right","rear left","rear right","all"],jx=["","front","rear","left","right"],qr=(i,e="",t="")=>({at:i,raised:e,block_mm:t,loads:""});function Bf(i){let e=[qr("front"),qr("rear"),qr("left"),qr("rear","front","90")],t="",n=f("tbody",{}),s={key:""},r=f("div",{id:"weigh-answer","aria-live":"polite"}),a=f("input",{id:"weigh-step",type:"number",min:.01,step:"any",value:1,required:!0}),o=f("input",{id:"weigh-locked",type:"checkbox",checked:!0}),l=()=>{let u=f("tbody",{},...e.map((d,p)=>{let _=f("td",{},Of(d)),v=m=>g=>{d[m]=g.target.value,re(_,Of(d))};return f("tr",{},_,f("td",{},f("select",{"aria-label":`Reading ${p+1}: what stands on the scale`,onchange:v("at")},...Kx.map(m=>f("option",{value:m,selected:m===d.at},m==="all"?"the whole truck":m.includes(" ")?`${m} wheel`:m==="front"||m==="rear"?`${m} axle`:`${m} side`)))),f("td",{},f("select",{"aria-label":`Reading ${p+1}: which end is raised`,onchange:v("raised")},...jx.map(m=>f("option",{value:m,selected:m===d.raised},m?`${m} raised`:"level")))),f("td",{},f("input",{type:"number",min:1,step:"any",value:d.block_mm,"aria-label":`Reading ${p+1}: block height in mm`,onchange:v("block_mm")})),f("td",{},f("input",{type:"text",inputmode:"decimal",value:d.loads,placeholder:"1342; 1345","aria-label":`Reading ${p+1}: scale shows, in g, repeats apart by semicolons or spaces`,onchange:v("loads")})),f("td",{},f("button",{type:"button","aria-label":`Remove reading ${p+1}`,onclick:()=>{e.splice(p,1),l()}},"✕")))}));Ti(u,"tr",s),n.replaceWith(u),n=u},c=async u=>{try{gh(r,await ce.weigh({step_g:Number(a.value),locked:o.checked,readings:e},u)),u&&Ee("The readings are kept beside the truck.")}catch(d){if(!(d instanceof De))throw d;re(r,f("p",{class:"text wrong"},d.sentences.slice(0,3).join(" ")))}};i.append(f("p",{class:"text"},"One kitchen scale will do: put it under one axle, the other on a block of the scale's height, and write down what it shows. Then raise one end on a block you have measured, and weigh the other end again: that gives the height."),f("div",{class:"parts-holder"},f("table",{class:"parts",id:"readings"},f("thead",{},f("tr",{},...["","On the scale","Stands","Block, mm","Scale shows, g",""].map(u=>f(u?"th":"td",u?{scope:"col"}:{},u)))),n)),f("div",{class:"bar"},f("button",{type:"button",id:"reading-add",onclick:()=>{e.push(qr("front")),l()}},"Another reading"),f("label",{for:"weigh-step"},"Scale's step, g"),a,f("label",{class:"tick"},o,"suspension tied up"),f("button",{type:"button",class:"main",id:"weigh-go",onclick:()=>{c(!1)}},"Weigh"),f("button",{type:"button",id:"weigh-keep",onclick:()=>{c(!0)}},"Keep readings")),r),l();let h=async()=>{if(t!==P.bench.file){t=P.bench.file;try{let u=await ce.readings();u.form?(e=u.form.readings,a.value=String(u.form.step_g),o.checked=u.form.locked,l(),re(r,f("p",{class:"text soft"},`Read back from ${u.file}.`))):re(r,u.there?f("p",{class:"text"},`${u.file} says more than this form shows, and is left as it is: crossfall weigh-in ${u.file} reads it. Keeping readings here puts it aside as a copy first.`):null)}catch(u){if(!(u instanceof De))throw u;t=""}}};Yt(i,()=>{h()}),h()}function Of(i){let e=["left","right"].includes(i.at)||["left","right"].includes(i.raised),[t,n]=e?["left","right"]:["rear","front"],s=o=>i.raised===o?16:0,r=o=>i.at===o||i.at==="all"||i.at.startsWith(`${o} `)||i.at.endsWith(` ${o}`),a=(o,l)=>[...s(l)?[O("rect",{class:"sk-block",x:o-9,y:40-s(l),width:18,height:s(l)})]:[],O("rect",{class:r(l)?"sk-scale":"sk-block",x:o-11,y:40,width:22,height:5}),O("circle",{class:"sk-line",cx:o,cy:32-s(l),r:8})];return O("svg",{class:"sketch",viewBox:"0 -8 92 56",role:"img","aria-label":`${i.at} on the scale${i.raised?`, ${i.raised} raised`:""}`},...a(20,t),...a(72,n),O("path",{class:"sk-body",d:`M14 ${24-s(t)}L78 ${24-s(n)}L74 ${14-s(n)}L18 ${12-s(t)}Z`}))}function gh(i,e){let t=P.answers.numbers,n=[t.mass_g,t.cg_mm[0],t.cg_mm[1],t.cg_mm[2]];re(i,f("table",{id:"weighed"},f("caption",{},"What the scale says"),f("thead",{},f("tr",{},...["","found","95 % between","in the file","difference"].map(s=>f(s?"th":"td",s?{scope:"col",class:"n"}:{},s)))),f("tbody",{},...e.found.map((s,r)=>f("tr",{},f("th",{scope:"row"},`${s.what}, ${s.unit}`),f("td",{class:"n"},f("b",{},s.value===null?"not measured":V(s.value))),f("td",{class:"n"},s.value===null?"–":`${V(s.low)} to ${V(s.high)}`),f("td",{class:"n"},V(n[r])),f("td",{class:"n"},s.value===null?"–":ht(s.value-n[r])))))),...[...e.outliers,...e.warnings].map(s=>f("p",{class:"text wrong"},s)),e.next.length?f("p",{class:"text soft"},`What would help most now: ${e.next.join("; ")}.`):null)}function zf(i){let e=f("div",{id:"board"});i.append(f("p",{class:"text"},"Lay a strip under the downhill tyres so that they do not slide, raise the board slowly, and read the angle at which the last uphill tyre leaves it."),e,f("p",{class:"text soft"},"Have a hand ready to catch the truck, take loose weights off first, and mind the pack. Scale models only: nothing here is a basis for a vehicle that carries people."));let t=s=>{ce.board(s).then(r=>n(r),r=>{if(!(r instanceof De))throw r;r.status!==409&&r.status!==0&&Ee(r.message,"wrong")})},n=s=>re(e,f("table",{},f("caption",{},"Tilt-board card"),f("thead",{},f("tr",{},...["","predicted","measured before","measured now"].map(r=>f(r?"th":"td",r?{scope:"col",class:"n"}:{},r)))),f("tbody",{},...s.card.map(r=>{let a=s.readings.filter(l=>l.heading_deg===r.heading_deg),o=f("input",{type:"number",min:1,max:89,step:.1,id:`board-${r.heading_deg}`,"aria-label":`Measured angle, ${r.name}`});return f("tr",{},f("th",{scope:"row"},r.name),f("td",{class:"n"},r.high_deg-r.low_deg>.15?`${V(r.low_deg)} to ${V(r.high_deg)}°`:`${V(r.deg)}°`,f("small",{class:"soft"},`± ${V(2*r.u_deg)}`)),f("td",{class:"n"},...a.length?a.map(l=>f("span",{class:l.agrees?"":"wrong"},`${V(l.measured_deg)}° ${l.agrees?"agrees":"does not"} `,f("button",{type:"button",class:"small",title:"Take this reading out","aria-label":`Take out ${V(l.measured_deg)}°, ${r.name}`,onclick:()=>t({remove:l.number,angles_deg:l.angles_deg})},"✕"))):["–"]),f("td",{class:"n"},o," ",f("button",{type:"button","aria-label":`Note ${r.name}`,onclick:()=>{o.value!==""&&o.reportValidity()&&t({heading_deg:r.heading_deg,angle_deg:Number(o.value)})}},"Note")))}))),s.agrees===null?null:f("p",{class:"text"},f("b",{},s.agrees?"Prediction and board agree.":"Prediction and board do not agree.")),...s.causes.map(r=>f("p",{class:"text"},r)),f("p",{class:"text soft"},`Readings are kept in ${s.file}.`));Yt(i,()=>t(),900),re(e,f("p",{class:"text soft"},"Working out what the board should show…")),t()}var Gf=.016666666666666666,Qx=2.2,ey=3e4,ty=150,ny=.05,iy=.02;function Vf(i,e,t,n,s,r){let a=i.map(([C,w,E])=>[C-e[0],w-e[1],E]),o=C=>Math.max(...a.map(w=>w[C]))-Math.min(...a.map(w=>w[C])),l=(o(0)**2+o(1)**2)/12,[c,h]=r?sy(i,e,n,l):[e,0],[u,d,p,_]=[e[0],e[1],0,h],[v,m]=r?[_*(e[1]-c[1]),-_*(e[0]-c[0])]:[ny,0],g=[{along:0,up:0,turned:0}],M=0;for(let C=1;C*25e-5<Qx&&M<.15;C++){let[w,E,T]=[n[0],n[1],0],[x,A]=[Math.cos(p),Math.sin(p)];for(let[X,k,z]of a){let[U,J]=[X*x+k*A,-X*A+k*x];for(let{n:S,aside:D,c:F}of t){let G=F-D*z-S[0]*(u+U)-S[1]*(d+J);if(G<=0)continue;let[H,$]=[v+_*J,m-_*U],I=Math.max(0,ey*G-ty*(H*S[0]+$*S[1])),K=H*S[1]-$*S[0],oe=-s*I*Math.max(-1,Math.min(1,K/iy)),[pe,Q]=[I*S[0]+oe*S[1],I*S[1]-oe*S[0]];w+=pe,E+=Q,T+=J*pe-U*Q}}v+=w*25e-5,m+=E*25e-5,_+=T/l*25e-5,u+=v*25e-5,d+=m*25e-5,p+=_*25e-5,M=Math.hypot(v,m)+Math.abs(_)*Math.sqrt(l)<.03&&C*25e-5>.2?M+25e-5:0,Math.floor(C*25e-5/Gf)>Math.floor((C-1)*25e-5/Gf)&&g.push({along:u-e[0],up:d-e[1],turned:p})}return g.push(ry({along:u-e[0],up:d-e[1],turned:p},a,e,t)),g}function sy(i,e,t,n){let s=Math.min(...i.map(_=>_[1])),[r,a]=i.filter(_=>_[1]<s+.004).reduce((_,v)=>v[0]>_[0]?v:_),o=[r,a],[l,c]=[e[0]-o[0],e[1]-o[1]],h=Math.hypot(...t),u=-(l*t[0]+c*t[1])/h,d=Math.hypot(l,c),p=l*t[1]-c*t[0]>0;return[o,.4+Math.sqrt(2*h*(p?d-u:0)/(n+d**2))*1.1]}function ry(i,e,t,n){let[s,r]=[Math.cos(i.turned),Math.sin(i.turned)],a={...i};for(let o=0;o<20;o++)for(let{n:l,aside:c,c:h}of n){let u=Math.max(...e.map(([d,p,_])=>h-c*_-l[0]*(t[0]+a.along+d*s+p*r)-l[1]*(t[1]+a.up-d*r+p*s)));u<=0||(a.along+=l[0]*u,a.up+=l[1]*u)}return a}var ay=60,Hf=9.80665,oy=.6;function Wf(i,e,t,{hinge:n,board:s}){let[r,a]=[$f(e.heading_deg),$f(e.theta_deg)],o=t==="away"?new W(-Math.cos(r),Math.sin(r),0):ly(t),l=new W(-o.y,o.x,0),c=new W(...e.cg_mm??P.scene.cg_mm),h=C=>C.x*Math.cos(r)-C.y*Math.sin(r),u=cy(i,o,l),d=Math.min(0,...u.map(C=>C[1])),p=h(o),_=Math.hypot(p*Math.sin(a),Math.cos(a)),v={n:[p*Math.sin(a)/_,Math.cos(a)/_],aside:h(l)*Math.sin(a)/_,c:-((n*Math.sin(a)+s)/1e3)/_},m=t==="away"?Math.min(P.answers.grip_range.likely,Math.tan(a)-.1):oy,g=[-Hf*Math.sin(a)*p,-Hf*Math.cos(a)],M=Vf(u,qf(c,o),[{n:[0,1],aside:0,c:d},v],g,Math.max(.05,m),t!=="away");return M[M.length-1].up-=d,{frames:M,along:o,cg:c}}function Xf(i,{frames:e,along:t,cg:n},s){let r=Math.min(e.length-1,s*60),[a,o]=[e[Math.floor(r)],e[Math.ceil(r)]],l=c=>a[c]+(o[c]-a[c])*(r%1);i.quaternion.copy(new wn().setFromAxisAngle(new W(0,0,1).cross(t),l("turned"))),i.position.copy(n).addScaledVector(t,l("along")*1e3).add(new W(0,0,l("up")*1e3)),i.position.sub(n.clone().applyQuaternion(i.quaternion))}function ly(i){let e=P.scene.tip_points_mm,t={rear:[3,2],left:[2,0],front:[0,1],right:[1,3]},[n,s]=(t[i]??[2,0]).map(a=>e[a]),r=new W(-(s[1]-n[1]),s[0]-n[0],0).normalize();return r.x*(n[0]+s[0])+r.y*(n[1]+s[1])<0?r.negate():r}var qf=(i,e)=>[i.dot(e)/1e3,i.z/1e3];function cy(i,e,t){let n=new Map;for(let s of i){let r=Math.floor(s.dot(t)/ay),a=n.get(r);a?a.push(s):n.set(r,[s])}return[...n.values()].flatMap(s=>{let r=s.map(o=>o.dot(t)/1e3),a=[...new Set([Math.min(...r),Math.max(...r)])];return ah(s.map(o=>qf(o,e))).flatMap(([o,l])=>a.map(c=>[o,l,c]))})}var $f=i=>i*Math.PI/180;var fl=class{frames=0;moment={theta_deg:0,poses:[],load_g:[0,0,0,0],cg_mm:null,heading_deg:0};views={side:new Tn("side"),rear:new Tn("rear")};table=O("g");truck=O("g");marks=O("g");angle=O("text",{class:"reading",x:-262,y:-12});over=null;constructor(e,t){t.hidden=!0,this.table.append(O("path",{class:"ground",d:"M-300 0H300"}),this.truck,this.marks),e.append(O("svg",{class:"flat view",viewBox:"-320 -330 640 400",role:"img","aria-label":"The truck on the table, as a flat view"},O("path",{class:"wedge",d:"M-300 0H300"}),this.table,this.angle),f("p",{class:"flat-note"},"This browser offers no WebGL, so the truck is drawn flat: from behind where it stands across the slope, from its right side else.")),Ne(["shown","pick"],()=>this.render())}show(e,t=null){this.moment=e,this.over=t,this.render()}repaint(){}render(){let e=P.scene;if(!e)return;let{theta_deg:t,heading_deg:n}=this.moment,s=n*Math.PI/180,r=Math.abs(Math.sin(s))>.7?"rear":"side",a=(r==="rear"?Math.sin(s):Math.cos(s))>=0?-1:1;this.table.setAttribute("transform",`rotate(${(a*t).toFixed(2)} ${a*300} 0)`);let o=this.views[r];o.draw(e.parts,P.view.row);let l=e.tip_points_mm.map(([_,v])=>sn[r]([_,v,0])[0]),c=a<0?Math.min(...l):Math.max(...l);this.truck.setAttribute("transform",this.over===null?"":this.over==="away"?`translate(${a*90} 0)`:`rotate(${a*86} ${c} 0) translate(0 -14)`),this.truck.replaceChildren(o.root);let[h,u]=sn[r](this.moment.cg_mm??e.cg_mm),d=this.moment.load_g,p=r==="rear"?[[0,2],[1,3]]:[[2,3],[0,1]];this.marks.replaceChildren(O("g",{transform:`translate(${h} ${u})`},O("circle",{r:8,class:"cg-back"}),O("path",{d:"M0 0V-8A8 8 0 0 1 8 0ZM0 0V8A8 8 0 0 1 -8 0Z",class:"cg-dark"}),O("circle",{r:8,class:"cg-ring"})),...p.map(([_,v],m)=>O("text",{class:"reading",x:(m?Math.max:Math.min)(...l),y:18,"text-anchor":"middle"},`${V(Math.max(0,(d[_]??0)+(d[v]??0)),0)} g`))),this.marks.setAttribute("visibility",this.over===null?"visible":"hidden"),this.angle.textContent=`${V(t)}°`,this.frames+=1}};var Xi={ahead:{axes:[0],words:"ahead, back"},left:{axes:[1],words:"left, right"},up:{axes:[2],words:"up, down"},side:{axes:[0,2],words:"side plane"},rear:{axes:[1,2],words:"rear plane"},floor:{axes:[0,1],words:"floor plane"}},hy=["ahead","left","up"],pl=[["ahead","back"],["left","right"],["up","down"]],Yf=52,vh=.25,ml=class{constructor(e,t,n,s){this.holder=e;this.drawn=t;this.changed=n;this.back=s;this.grip=O("g",{role:"slider",tabindex:-1,id:"grip-3d",class:"grip-3d","aria-valuenow":0},O("circle",{r:15,class:"handle-reach"}),O("circle",{r:6,class:"handle"})),this.root=O("svg",{class:"handles",role:"group","aria-label":"The picked part on the table"},...this.arms.map(r=>r.root),this.grip),e.append(this.root,this.readout),this.grip.addEventListener("pointerdown",r=>this.take(r,this.along)),this.grip.addEventListener("keydown",r=>this.nudge(r)),this.root.addEventListener("pointermove",r=>this.drag(r));for(let r of["pointerup","pointercancel"])this.root.addEventListener(r,()=>this.drop());Ne("bench",()=>{this.held||this.say(null)}),Ne("shown",()=>{this.held&&this.read(this.held)})}holder;drawn;changed;back;along="side";root;grip;arms=hy.map(e=>this.arm(e));readout=f("div",{class:"stage-readout","aria-hidden":"true",hidden:!0});held=null;readTimer=0;movable(){if(qt)return null;let e=P.bench?.rows.find(n=>n.row===P.view.row),t=P.scene?.parts.find(n=>n.row===P.view.row);return e&&t&&e.at_mm&&e.here?{part:t,row:e}:null}focus(){this.movable()&&this.grip.focus()}next(){let e=Object.keys(Xi);this.choose(e[(e.indexOf(this.along)+1)%e.length])}choose(e){this.along=e,this.changed()}arm(e){let[t,n,s]=[O("path"),O("circle",{r:7}),O("text",{},e)],r=O("g",{class:"arm","aria-hidden":"true"},t,n,s);return r.addEventListener("pointerdown",a=>this.take(a,e)),{root:r,line:t,tip:n,name:s}}place(e){let t=e?null:this.movable();if(this.root.toggleAttribute("hidden",!t),!t)return;let{part:n,row:s}=t,r=this.drawn(n.cg_mm,n.carrier),a=this.pixels(n),o=Math.max(...a.map(v=>Math.hypot(...v)));this.grip.setAttribute("transform",`translate(${r[0].toFixed(1)} ${r[1].toFixed(1)})`),this.arms.forEach((v,m)=>{let[g,M]=a[m],C=Math.hypot(g,M);v.root.toggleAttribute("hidden",C<vh*o);let[w,E]=[r[0]+g/C*Yf,r[1]+M/C*Yf];v.line.setAttribute("d",`M${r[0].toFixed(1)} ${r[1].toFixed(1)}L${w.toFixed(1)} ${E.toFixed(1)}`);for(let[T,x,A]of[[v.tip,"cx","cy"],[v.name,"x","y"]])T.setAttribute(x,w.toFixed(1)),T.setAttribute(A,(E-(T===v.name?10:0)).toFixed(1));v.root.classList.toggle("chosen",Xi[this.along].axes.includes(m))});let[l,c,h]=s.at_mm,{axes:u,words:d}=Xi[this.along],p=u.length===1?"arrow keys move it a millimetre":`left and right move it ${pl[u[0]].join(" or ")}, up and down ${pl[u[1]].join(" or ")}, a millimetre each`;this.grip.setAttribute("aria-label",`${s.name} in three dimensions, ${d}: ${p}. M changes the way, Escape goes back to the table.`),this.grip.setAttribute("aria-valuetext",`${V(l)} ahead, ${V(c)} left, ${V(h)} up`)}pixels(e){let t=this.drawn(e.cg_mm,e.carrier);return[0,1,2].map(n=>{let s=[...e.cg_mm];s[n]+=20;let[r,a]=this.drawn(s,e.carrier);return[(r-t[0])/20,(a-t[1])/20]})}take(e,t=this.along){let n=this.movable();return n?(e.preventDefault(),e.stopPropagation(),this.root.setPointerCapture(e.pointerId),t!==this.along&&this.choose(t),this.held={...n,along:t,from:[e.clientX,e.clientY],moved:[0,0,0],pixels:this.pixels(n.part)},this.read(this.held),!0):!1}drag(e){let t=this.held;if(!t)return;let n=uy(t,[e.clientX-t.from[0],e.clientY-t.from[1]]);n.every((s,r)=>s===t.moved[r])||(t.moved=n,Si(_h(t.row,t.part,n)),this.read(t))}drop(){let e=this.held;e&&(this.held=null,this.say(null),!e.moved.every(t=>t===0)&&Gt(_h(e.row,e.part,e.moved),`moved ${e.row.name}`).then(t=>{t||Rn()}))}nudge(e){if(e.key==="Escape"||e.key==="Enter")return e.preventDefault(),this.back();if(e.key==="m")return this.next();let t=this.movable(),{axes:n}=Xi[this.along],s=e.shiftKey?10:1,[r,a]=[n[0],n[1]??n[0]],o=r===1?-1:1,c={ArrowRight:[r,o*s],ArrowLeft:[r,-o*s],ArrowUp:[a,a===1&&n.length===1?-s:s],ArrowDown:[a,a===1&&n.length===1?s:-s]}[e.key];if(!c||!t)return;e.preventDefault();let h=[0,0,0];h[c[0]]=c[1],Gt(_h(t.row,t.part,h),`moved ${t.row.name}`).then(u=>{u&&this.read({...t,along:this.along,from:[0,0],moved:h,pixels:[]},1600)})}read(e,t=0){let{moved:n,row:s}=e,r=Object.values(_t).find(h=>h.heading===P.view.heading)?.short??`Turned ${V(P.view.heading,0)}°`,[a,o]=[on(P.answers,P.view.heading),on(P.bench.answers,P.view.heading)],l=a&&o&&this.held?` (${ht(a.deg-o.deg)}°)`:"",c=Xi[e.along].axes.map(h=>`${n[h]<0?pl[h][1]:pl[h][0]} ${V(Math.abs(n[h]),0)} mm`);this.say([f("b",{},s.name),c.join(", "),a?`${r} ${a.slides?"slides":"tips"} ${P.answers.exact?"":"≈ "}${V(a.deg)}°${l}`:""],e,t)}say(e,t=null,n=0){if(clearTimeout(this.readTimer),this.readout.hidden=e===null,e===null||!t)return;re(this.readout,...e.map(p=>f("div",{},p)));let s=P.scene.parts.find(p=>p.row===t.row.row)??t.part,[r,a]=this.drawn(s.cg_mm,s.carrier),[o,l]=[this.holder.clientWidth,this.holder.clientHeight],{offsetWidth:c,offsetHeight:h}=this.readout,[u,d]=[r+26+c>o?r-26-c:r+26,Math.min(l-h-4,Math.max(4,a+18))];this.readout.style.transform=`translate(${Math.max(4,u).toFixed(0)}px, ${d.toFixed(0)}px)`,n&&(this.readTimer=window.setTimeout(()=>this.say(null),n))}};function uy(i,[e,t]){let n=[0,0,0],s=Math.max(...i.pixels.map(u=>Math.hypot(...u))),r=Xi[i.along].axes.filter(u=>Math.hypot(...i.pixels[u])>=vh*s),[a,o]=r;if(a===void 0)return n;let[l,c]=[i.pixels[a],o===void 0?null:i.pixels[o]],h=c?l[0]*c[1]-l[1]*c[0]:0;return c&&o!==void 0&&Math.abs(h)>vh**2*s**2?(n[a]=Math.round((e*c[1]-t*c[0])/h),n[o]=Math.round((l[0]*t-l[1]*e)/h)):n[a]=Math.round((e*l[0]+t*l[1])/(l[0]**2+l[1]**2)),n}function _h(i,e,t){return[0,1,2].filter(n=>t[n]!==0).map(n=>({do:"set",part:i.name,key:`at_mm.${"xyz"[n]}`,value:Number((i.at_mm[n]+(n===1&&e.mirrored?-t[n]:t[n])).toFixed(3))}))}var Qs={corner:{words:"Corner",round:null,up:20},side:{words:"Side",round:-90,up:0},rear:{words:"Rear",round:180,up:0},front:{words:"Front",round:0,up:0},top:{words:"Top",round:180,up:88}};function Zf(i,e){let t=Object.keys(Qs).map((l,c)=>f("button",{type:"button",id:`look-${l}`,"data-from":l,title:`Look from there: key ${c+1} on the table`,onclick:()=>i.look(l)},Qs[l].words)),n=f("button",{type:"button",id:"see-through",title:"Key t on the table",onclick:()=>i.seeThrough(!i.glass)},"See through"),s=f("button",{type:"button",id:"move-along",class:"moves",title:"Key m at the part",onclick:()=>e.next()}),r=f("div",{class:"looks",role:"toolbar","aria-label":"How to look at the table, and which way the picked part moves"},...t,n,s);gt(r);let a=f("div",{class:"stage-bar"},r),o=()=>{t.forEach(l=>l.setAttribute("aria-pressed",String(l.dataset.from===i.from))),n.setAttribute("aria-pressed",String(i.glass)),s.hidden=e.movable()===null,s.textContent=`Moves: ${Xi[e.along].words}`};return Ne(["pick","bench"],o),o(),{follow:o,root:a}}var wt=250,gn=210,an=12,xh=300,Jf=-62,yh=class{constructor(e,t){this.holder=e;this.canvas=t;this.slow=yi(),this.renderer=new qs({canvas:t,antialias:!this.slow,powerPreference:"low-power"}),this.camera.up.set(0,0,1),this.world.add(this.table),this.turn.position.set(wt,0,0),this.table.position.set(-wt,0,0),this.table.add(this.turn),this.turn.add(this.fall,this.tipLines),this.furnish(),this.plumb=rn([0,0,0,0,0,1],this.paints.line("over")),this.world.add(this.plumb),this.mark=O("svg",{class:"cg-mark",viewBox:"-10 -10 20 20","aria-hidden":"true"},O("circle",{r:8,class:"cg-back"}),O("path",{d:"M0 0V-8A8 8 0 0 1 8 0ZM0 0V8A8 8 0 0 1 -8 0Z",class:"cg-dark"}),O("circle",{r:8,class:"cg-ring"})),this.angle=f("div",{class:"stage-angle","aria-hidden":"true"});let n=s=>f("div",{class:`stage-tag ${s}`,"aria-hidden":"true"},s==="cg"?"CG":s);this.tags={cg:n("cg"),pack:n("pack")},e.append(this.mark,this.tags.cg,this.tags.pack,this.angle,dy());for(let s of lh){let r=f("b"),a=f("div",{class:"stage-load","aria-hidden":"true",title:`load on the ${s} wheel`},f("span",{},`${s} `),r);this.labels.push({root:a,grams:r}),e.append(a)}this.handles=new ml(e,(s,r)=>this.drawnAt(s,r),()=>{this.bar.follow(),this.draw()},()=>this.canvas.focus()),this.bar=Zf(this,this.handles),e.before(this.bar.root),this.repaint(),this.listen(),new ResizeObserver(()=>this.resize()).observe(e),this.resize()}holder;canvas;world=new is;camera=new zi(-1,1,1,-1,-4e3,4e3);renderer;paints=new Js;figure=new fs(this.paints);table=new Ot;turn=new Ot;fall=this.figure.root;bodies=this.figure.bodies;columns=[];tipLines=new Ot;plumb;labels=[];mark;tags;angle;handles;bar;azimuth=Jf;elevation=Qs.corner.up;zoom=1;from="corner";glass=!1;wanted=!1;slow;fine=!0;restTimer=0;falls=null;fallen=0;fallTimer=0;size=new et(1,1);frames=0;moment={theta_deg:0,poses:[],load_g:[0,0,0,0],cg_mm:null,heading_deg:0};listen(){Ne("shown",gs(()=>this.build(),()=>this.slow?2e3:50)),Ne("pick",()=>this.build());let e=null;this.canvas.addEventListener("pointerdown",t=>{this.partsAt(t)[0]?.row===P.view.row&&this.handles.take(t)||(e={x:t.clientX,y:t.clientY,far:!1},this.canvas.setPointerCapture(t.pointerId))}),this.canvas.addEventListener("pointermove",t=>{if(!e)return;let[n,s]=[t.clientX-e.x,t.clientY-e.y];!e.far&&Math.hypot(n,s)<4||(e={x:t.clientX,y:t.clientY,far:!0},this.orbit(-n*.4,s*.4))}),this.canvas.addEventListener("pointerup",t=>{e&&!e.far&&this.pickAt(t),e=null}),this.canvas.addEventListener("pointercancel",()=>e=null),this.canvas.addEventListener("wheel",t=>{t.preventDefault(),this.enlarge(Math.exp(-t.deltaY*.001))},{passive:!1}),this.canvas.addEventListener("keydown",t=>{let n=t.shiftKey?20:5,s={ArrowLeft:()=>this.orbit(-n,0),ArrowRight:()=>this.orbit(n,0),ArrowUp:()=>this.orbit(0,n),ArrowDown:()=>this.orbit(0,-n),"+":()=>this.enlarge(1.15),"=":()=>this.enlarge(1.15),"-":()=>this.enlarge(1/1.15),Home:()=>{this.zoom=1,this.look("corner")},t:()=>this.seeThrough(!this.glass),Enter:()=>this.handles.focus(),Escape:()=>ut({row:null})};Object.keys(Qs).forEach((a,o)=>{s[String(o+1)]=()=>this.look(a)});let r=s[t.key];r&&(t.preventDefault(),r())}),this.canvas.addEventListener("webglcontextlost",t=>t.preventDefault()),this.canvas.addEventListener("webglcontextrestored",()=>this.draw())}orbit(e,t){this.azimuth+=e,this.elevation=Math.max(-5,Math.min(88,this.elevation+t)),this.from=null,this.bar.follow(),this.draw()}look(e){this.from=e,this.bar.follow(),this.draw()}seeThrough(e){this.glass=e,this.bar.follow(),this.build()}enlarge(e){this.zoom=Math.max(.5,Math.min(4,this.zoom*e)),this.draw()}repaint(){this.paints.repaint(),this.world.background=this.paints.ink.paper,P.scene&&this.build(),this.draw()}furnish(){let e=Sn({kind:"box",size_mm:[2*wt,2*gn,an]}),t=(l,c,h)=>l.map((u,d)=>d%3===0?u+c:d%3===2?u+h:u),n=new vt(Bn(t(e.triangles,wt,-an/2)),this.paints.fill("board",2)),s=[];for(let l=50;l<2*wt;l+=50)s.push(l,-gn,.4,l,gn,.4);for(let l=-200;l<=200;l+=50)s.push(0,l,.4,2*wt,l,.4);this.table.add(n,rn(t(e.lines,wt,-an/2),this.paints.line("ink")),rn(s,this.paints.line("faint")));let r=[],a=(l,c)=>[l*Math.cos(ti(c))-wt,-gn,l*Math.sin(ti(c))-an];for(let l=0;l<90;l+=2)r.push(...a(150,l),...a(150,l+2));for(let l=0;l<=90;l+=5)r.push(...a(150,l),...a(l%10?155:162,l));let o=[];for(let l of[-gn,gn])o.push(-wt-xh,l,-an,wt,l,-an);o.push(-wt-xh,-gn,-an,-wt-xh,gn,-an),o.push(-wt,-gn,-an,-wt,gn,-an,wt,-gn,-an,wt,gn,-an),this.world.add(rn(r,this.paints.line("ink")),rn(o,this.paints.line("faint")));for(let l=0;l<4;l++){let c=new vt(Bn(t(Sn({kind:"box",size_mm:[9,9,1]}).triangles,0,.5)),this.paints.fill("load"));this.columns.push(c),this.turn.add(c)}}build(){let e=P.scene;if(!e)return;this.figure.dress(e,{picked:P.view.row,pack:nr(),glass:this.glass,before:P.bench.before?.scene??null}),Hr(this.tipLines);let t=e.tip_points_mm,n=[0,1,3,2];n.forEach((s,r)=>this.tipLines.add(this.strip(t[s],t[n[(r+1)%4]]))),this.draw()}strip(e,t){let[n,s]=[t[0]-e[0],t[1]-e[1]],r=Math.hypot(n,s)||1,[a,o]=[-s/r*1.3,n/r*1.3],l=(p,_)=>[p[0]+_*a,p[1]+_*o,.8],[c,h,u,d]=[l(e,1),l(e,-1),l(t,-1),l(t,1)];return new vt(Bn([...c,...h,...u,...c,...u,...d]),this.paints.fill("over"))}partsAt(e){let t=this.canvas.getBoundingClientRect(),n=new et((e.clientX-t.left)/t.width*2-1,1-(e.clientY-t.top)/t.height*2),s=new Rr;s.setFromCamera(n,this.camera);let a=s.intersectObjects(this.bodies,!0).filter(o=>o.object instanceof vt).map(o=>o.object.userData.owner[o.faceIndex??0]).filter(o=>o.row>=0);return a.filter((o,l)=>a.findIndex(c=>c.row===o.row)===l)}pickAt(e){let t=this.partsAt(e).map(s=>s.row),n=this.glass?t.indexOf(P.view.row??-1):-1;ut({row:t[(n+1)%Math.max(1,t.length)]??null})}show(e,t=null){this.moment=e,this.table.rotation.y=-ti(e.theta_deg),this.turn.rotation.z=ti(e.heading_deg),this.figure.pose(e.poses),this.topple(t),this.draw()}topple(e){if(cancelAnimationFrame(this.fallTimer),e===null||!P.scene){this.falls=null,this.fallen=0,this.fall.position.set(0,0,0),this.fall.quaternion.identity();return}let t=`${e} ${this.moment.theta_deg.toFixed(2)} ${this.moment.heading_deg} ${P.bench.truck} ${JSON.stringify(this.moment.poses[0]??[])}`;this.falls?.key!==t&&(this.falls={key:t,...Wf(this.figure.corners(),this.moment,e,{hinge:wt,board:an})});let n=(this.falls.frames.length-1)/60;Qr()&&(this.fallen=n);let s=performance.now()-this.fallen*1e3,r=a=>{this.fallen=Math.min(n,Math.max(0,(a-s)/1e3)),Xf(this.fall,this.falls,this.fallen),this.draw(),this.fallen<n&&(this.fallTimer=requestAnimationFrame(r))};r(performance.now())}drawnAt(e,t){let s=(this.bodies[["chassis","front axle","rear axle",...lh].indexOf(t)]??this.bodies[0]).localToWorld(new W(...e)).project(this.camera);return[(s.x+1)/2*this.size.x,(1-s.y)/2*this.size.y]}resize(){let{clientWidth:e,clientHeight:t}=this.holder;e<2||t<2||(this.size.set(e,t),this.sharpen(this.fine),this.draw())}sharpen(e){this.fine=e,this.renderer.setPixelRatio(this.slow?e?2:1:Math.min(devicePixelRatio,2)),this.renderer.setSize(this.size.x,this.size.y,!1)}draw(){this.slow&&(this.fine&&this.sharpen(!1),clearTimeout(this.restTimer),this.restTimer=window.setTimeout(()=>{this.sharpen(!0),this.render()},350)),!this.wanted&&(this.wanted=!0,requestAnimationFrame(()=>{this.wanted=!1,this.render()}))}render(){let{x:e,y:t}=this.size,n=ti(this.moment.theta_deg),s=new W(-wt+wt*Math.cos(n)-55*Math.sin(n),0,wt*Math.sin(n)+55*Math.cos(n));this.falls&&(this.world.updateMatrixWorld(),s.lerp(this.fall.localToWorld(this.falls.cg.clone()),.75));let r=(e/t>1?285:285*Math.min(1.35,t/e))/this.zoom;if(this.camera.left=-r*e/t,this.camera.right=r*e/t,this.camera.top=r,this.camera.bottom=-r,this.from){let{round:l,up:c}=Qs[this.from];this.azimuth=l===null?Jf:this.moment.heading_deg+l,this.elevation=c}let[a,o]=[ti(this.azimuth),ti(this.elevation)];this.camera.position.copy(s).add(new W(Math.cos(a)*Math.cos(o),Math.sin(a)*Math.cos(o),Math.sin(o)).multiplyScalar(1e3)),this.camera.lookAt(s),this.camera.updateProjectionMatrix(),this.placeLoads(),this.world.updateMatrixWorld(),this.placeMarks(),this.renderer.render(this.world,this.camera),this.frames+=1}placeLoads(){let e=P.scene;e&&e.tip_points_mm.forEach((t,n)=>{let s=Math.max(0,this.moment.load_g[n]??0),r=e.axles[n<2?0:1],a=(n%2===0?1:-1)*(r.track_mm/2+r.width_mm/2+16);this.columns[n].position.set(t[0],a,0),this.columns[n].scale.z=Math.max(.5,s/12),this.columns[n].visible=this.falls===null})}placeMarks(){let e=this.moment.cg_mm??P.scene?.cg_mm??[0,0,0],t=this.fall.localToWorld(new W(...e));this.put(this.mark,t,0,0),this.put(this.tags.cg,t,20,0);let n=P.scene?.parts.find(o=>o.row>=0&&o.row===nr());if(this.tags.pack.hidden=!n,n){let[o,l]=this.drawnAt(n.cg_mm,n.carrier);this.move(this.tags.pack,o,l-15)}let s=this.plumbFoot(t),r=this.plumb.geometry.getAttribute("position");r.setXYZ(0,t.x,t.y,t.z),r.setXYZ(1,s.x,s.y,s.z),r.needsUpdate=!0,this.plumb.visible=this.falls===null,this.columns.forEach((o,l)=>{let{root:c,grams:h}=this.labels[l],u=Math.max(0,this.moment.load_g[l]??0);h.textContent=`${V(u,0)} g`,c.classList.toggle("light",u<1),c.hidden=!o.visible,this.put(c,o.localToWorld(new W(0,0,0)),0,10)}),this.handles.place(this.falls!==null),this.angle.textContent=`${V(this.moment.theta_deg,1)}°`;let a=ti(this.moment.theta_deg/2);this.put(this.angle,new W(110*Math.cos(a)-wt,-gn,110*Math.sin(a)-an),0,0)}plumbFoot(e){let t=this.table.worldToLocal(e.clone()),n=ti(this.moment.theta_deg);return t.x-=t.z*Math.tan(Math.min(n,ti(85))),t.z=1,this.table.localToWorld(t)}put(e,t,n,s){let r=t.clone().project(this.camera);this.move(e,(r.x+1)/2*this.size.x+n,(1-r.y)/2*this.size.y+s)}move(e,t,n){e.style.transform=`translate(${t.toFixed(1)}px, ${n.toFixed(1)}px) translate(-50%, -50%)`}};function dy(){return f("ul",{class:"stage-key","aria-label":"Colours by what a part rides on"},...Object.entries(af).map(([i,e])=>f("li",{},O("svg",{viewBox:"0 0 10 10","aria-hidden":"true"},O("rect",{class:`part ${i}`,width:10,height:10})),e)))}function Kf(i,e){if(i.length===0)return null;let t=0;for(;t<i.length-2&&i[t+1].theta_deg<e;)t++;let[n,s]=[i[t],i[Math.min(t+1,i.length-1)]],r=s.theta_deg-n.theta_deg,a=r>0?Math.max(0,Math.min(1,(e-n.theta_deg)/r)):0,o=(l,c)=>l.map((h,u)=>h+((c[u]??h)-h)*a);return{theta_deg:e,poses:n.poses.map((l,c)=>o(l,s.poses[c])),load_g:o(n.load_g,s.load_g),cg_mm:o(n.cg_mm,s.cg_mm)}}var ti=i=>i*Math.PI/180;function jf(){let[i,e]=[Ce("stage"),Ce("stage-canvas")];return xi()?new fl(i,e):new yh(i,e)}var gl=null,Qf=()=>gl!==null,ep=i=>gl?.(i),Yr=1e4,fy=i=>Math.round(i*2)/2;function py(i){let e=P.measures.find(s=>s.key==="chassis.raise_mm")?.value??0;if(i==="chassis")return{at:[0,0,e],out:1};let t=P.scene.axles[i.includes("rear")?1:0];if(i.endsWith("axle"))return{at:[t.x_mm,0,t.radius_mm],out:1};let n=i.endsWith("right");return{at:[t.x_mm,(n?-1:1)*t.track_mm/2,t.radius_mm],out:n?-1:1}}async function tp(i,e,t,n=""){let s;try{s=await ce.partForm()}catch(I){if(!(I instanceof De))throw I;return Ee(I.message,"wrong")}let r=I=>{let K=new Set(P.bench.rows.map(pe=>pe.name)),oe=1;for(;K.has(oe>1?`${I} ${oe}`:I);)oe+=1;return oe>1?`${I} ${oe}`:I},a=P.bench.rows.find(I=>I.name===n),o=(I,K,oe)=>f("input",{id:`new-${I}`,"aria-label":K,"data-key":`new-${I}`,...oe}),l=(I,K,oe,pe={})=>o(I,K,{type:"number",step:"any",value:oe,...pe}),c=o("name","Name",{required:!0,maxlength:60,value:r(n?"weighed part":"added weight"),pattern:'[^.\\[\\]"]+'}),h=l("mass","Mass of one, g",20,{min:.001,max:1e5,required:!0}),u=f("select",{id:"new-material","aria-label":"Weighed, or out of what"},f("option",{value:""},"as weighed"),...s.materials.map(I=>f("option",{value:I},I))),d=l("price","Price of one",0,{min:0,max:1e7}),p=f("select",{id:"new-on","aria-label":"Rides on"},...P.bench.carriers.filter(I=>!I.endsWith("link")).map(I=>f("option",{value:I,selected:I===a?.on},I))),_=l("count","How many in a row",1,{min:1,max:500,step:1,required:!0}),v=["ahead","to the left","up"].map((I,K)=>l(`step${K}`,`Each further on by, ${I}, mm`,0,{min:-Yr,max:Yr})),m=o("mirror","Also on the other side",{type:"checkbox"}),g=a?.at_mm??[0,0,60],M=["x","y","z"].map((I,K)=>l(I,["Ahead, mm","To the left, mm","Up, mm"][K],g[K],{min:-Yr,max:Yr,required:!0})),C=["x","y","z"].map(I=>l(`turn-${I}`,`Turned about ${I}, degrees`,0,{min:-360,max:360})),w=f("select",{id:"new-kind","aria-label":"Shape"},f("option",{value:""},"a point"),...s.kinds.filter(I=>I.kind!=="mesh"||s.meshes.length).map(I=>f("option",{value:I.kind,selected:I.kind==="box"},I.kind))),E=f("select",{id:"new-out-of","aria-label":"Was counted in"},f("option",{value:""},"nothing: it is new"),...s.lumps.map(I=>f("option",{value:I,selected:I===n},I))),T=f("div",{class:"new-shape"}),x=f("div",{class:"new-line",hidden:!0},f("span",{},"each on by"),...v,f("span",{class:"soft"},"mm ahead, left, up")),A=()=>s.kinds.find(I=>I.kind===w.value),X=()=>re(T,...(A()?.fields??[]).flatMap(I=>{let K=`${I.key.replace(/_(mm|g_per_m)$/,"").replace(/_/g," ")}${I.key.endsWith("_mm")?", mm":I.key==="g_per_m"?", g per m":""}`,oe=Array.isArray(I.start)?I.start:[I.start];if(I.key==="file"||I.choices.length){let pe=I.key==="file"?s.meshes:I.choices;return[f("label",{},K,f("select",{"data-field":I.key,"aria-label":`${K}: ${I.meaning}`},...pe.map(Q=>f("option",{value:Q,selected:Q===I.start},Q))))]}return[f("label",{},K,...oe.map((pe,Q)=>f("input",{type:"number",step:"any",min:.001,max:Yr,required:I.needed,value:pe??"","data-field":I.key,"aria-label":I.many>1?`${K}, ${["ahead","across","up"][Q]}`:`${K}: ${I.meaning}`})))]})),k=()=>{let I=A();if(!I)return null;let K={kind:I.kind};for(let oe of I.fields){let Q=[...T.querySelectorAll(`[data-field="${oe.key}"]`)].map(he=>he instanceof HTMLSelectElement?he.value:he.value===""?null:Number(he.value));Q.some(he=>he===null)||(K[oe.key]=oe.many>1?Q:Q[0])}return K},z=()=>w.value==="strip"&&T.querySelector('[data-field="g_per_m"]')?.value!=="",U=()=>{let I={name:c.value.trim(),on:p.value};u.value===""&&!z()&&(I.mass_g=Number(h.value)),u.value&&(I.material=u.value);let oe=k();return oe&&(I.shape=oe),I.at_mm=M.map(pe=>Number(pe.value)),C.some(pe=>Number(pe.value))&&(I.turn_deg=C.map(pe=>Number(pe.value))),Number(_.value)>1&&Object.assign(I,{count:Number(_.value),step_mm:v.map(pe=>Number(pe.value))}),m.checked&&(I.mirror=!0),Number(d.value)&&(I.price=Number(d.value)),{do:"add",part:I,...E.value?{out_of:E.value}:{}}},J=()=>/wheel|left|right/.test(p.value),S=()=>{x.hidden=Number(_.value)<=1,m.disabled=J(),h.disabled=u.value!==""||z(),u.disabled=w.value===""||z(),w.value===""&&(u.value=""),F.hidden=!/lead|brass/i.test(`${c.value} ${u.value}`),M[1].setAttribute("aria-label",J()?"Outwards, mm":"To the left, mm"),G.textContent=J()?"outwards":"left",P.view.row=P.bench.rows.length,$.checkValidity()&&Si([U()])},D=()=>{gl=null,Zr=null,t.classList.remove("placing"),i.replaceChildren(),i.hidden=!0;for(let I of e)I.hidden=!1},F=f("p",{class:"caution",role:"note",hidden:!0},"Do not file or drill lead or brass dry: the dust is harmful. Wash your hands after handling lead."),G=f("span",{class:"soft"},"left"),H=(I,...K)=>f("div",{class:"new-line"},f("span",{class:"new-label"},I),...K),$=f("form",{class:"new-part","aria-label":"A new part"},f("h3",{},n?`A part out of ${n}`:"A new part"),H("Name",c,f("label",{},"price ",d,` ${s.currency}`)),H("Shape",w,T),H("Weighs",h,f("span",{},"g,"),u),F,H("Rides on",p,f("label",{class:"tick"},m,"also on the other side")),H("Stands",M[0],f("span",{class:"soft"},"ahead"),M[1],G,M[2],f("span",{class:"soft"},"up, mm")),f("p",{class:"about"},"Click in a drawing to put it there."),H("How many",_,x),f("details",{},f("summary",{},"Turned"),H("by, degrees",...C.flatMap((I,K)=>[I,f("span",{class:"soft"},`about ${"xyz"[K]}`)]))),H("Counted in",E),f("p",{class:"about"},"What was weighed on its own and stood in a lump until now comes out of it: mass and CG of the whole stay as they are."),f("div",{class:"bar"},f("button",{type:"submit",class:"main",id:"new-add"},"Add it"),f("button",{type:"button",id:"new-leave",onclick:()=>{D(),ut({row:null}),Rn(),document.getElementById("add-part")?.focus()}},"Leave it")));w.addEventListener("change",()=>{X()}),$.addEventListener("input",S),$.addEventListener("submit",I=>{I.preventDefault();let K=c.value.trim(),oe=E.value?`took ${K} out of ${E.value}`:`added ${K}`;Gt([U()],oe).then(pe=>{pe&&(D(),ut({row:P.bench.rows.find(Q=>Q.name===K)?.row??null}),document.getElementById("add-part")?.focus())})}),gl=I=>{let{at:K,out:oe}=py(p.value);I.forEach((pe,Q)=>{pe!==null&&(M[Q].value=String(fy((pe-K[Q])*(Q===1?oe:1))))}),S()},Zr={file:P.bench.file,close:D};for(let I of e)I.hidden=!0;re(i,$),i.hidden=!1,t.classList.add("placing"),X(),S(),c.focus(),c.select()}var Zr=null;Ne("bench",()=>{Zr&&Zr.file!==P.bench.file&&Zr.close()});var _l=16,np=[60,32],bh={light:"",helps:[0,0,0],hurts:[0,0,0]};function my(){let i=document.documentElement.dataset.light??"";if(bh.light!==i){let e=getComputedStyle(document.documentElement),t=n=>{let s=e.getPropertyValue(n).trim();return[1,3,5].map(r=>parseInt(s.slice(r,r+2),16))};bh={light:i,helps:t("--helps"),hurts:t("--hurts")}}return bh}function Mh(i,e,t="chassis"){let n=s=>{let r=P.answers.gain[s]?.[t];return r?r[0]+r[1]*e[0]+r[2]*e[1]+r[3]*e[2]:0};return i==="all"?Math.min(...Object.keys(_t).map(n)):n(i)}var Jr=class{constructor(e){this.face=e;let t=e==="side"?"Side view, nose to the right":"Rear view";this.parts=new Tn(e,1,!0),this.root=O("svg",{class:"view",role:"group","aria-label":t},this.field,this.ground,this.parts.root,this.ghost,this.truck,this.grips),this.figure=f("figure",{},this.root,f("figcaption",{},t)),[this.canvas.width,this.canvas.height]=np,Ne("bench",()=>this.box=this.frame()),Ne("shown",gs(()=>this.draw(),()=>this.held?0:yi()?2e3:50)),Ne("pick",()=>this.draw());let n=P.view.direction;Ne("view",()=>{P.view.direction!==n&&this.paintField(),n=P.view.direction}),this.box=this.frame(),this.draw(),this.root.addEventListener("pointermove",s=>this.drag(s));for(let s of["pointerup","pointercancel"])this.root.addEventListener(s,()=>this.drop());this.root.addEventListener("click",s=>{if(Qf()){let[a,o]=this.point(s);return ep(this.face==="side"?[a,null,-o]:[null,-a,-o])}let r=s.target.getAttribute("data-row");r!==null&&!this.held&&ut({row:Number(r)})})}face;figure;root;field=O("image",{preserveAspectRatio:"none"});ground=O("g");parts;truck=O("g");grips=O("g");ghost=O("g",{class:"ghost"});canvas=document.createElement("canvas");box=[0,0,1,1];held=null;frame(){let[e,,t]=$i(P.scene,this.face),n=Math.min($i(P.scene,"side")[1],$i(P.scene,"rear")[1]);return[e-_l,n-_l,t+_l,_l]}draw(){let e=P.scene,[t,n,s,r]=this.box;this.root.setAttribute("viewBox",`${t} ${n} ${s-t} ${r-n}`),this.figure.style.flexGrow=String(Math.round(s-t));let a=[O("path",{class:"ground",d:`M${t} 0H${s}`})];for(let c of e.axles)if(this.face==="side")a.push(O("circle",{class:"tyre",cx:c.x_mm,cy:-c.radius_mm,r:c.radius_mm}));else for(let h of[-1,1])a.push(O("rect",{class:"tyre",x:(h*c.track_mm-c.width_mm)/2,y:-2*c.radius_mm,width:c.width_mm,height:2*c.radius_mm}));this.parts.draw(e.parts,P.view.row),this.drawGhost(),this.ground.replaceChildren(...a.splice(0));for(let c of this.face==="side"?[e.wedge_mm[0],e.wedge_mm[2]]:[e.wedge_mm[1],e.wedge_mm[3]])a.push(this.wedge(c));let[o,l]=sn[this.face](e.cg_mm);a.push(O("g",{transform:`translate(${o} ${l})`},O("circle",{r:7,class:"cg-back"}),O("path",{d:"M0 0V-7A7 7 0 0 1 7 0ZM0 0V7A7 7 0 0 1 -7 0Z",class:"cg-dark"}),O("circle",{r:7,class:"cg-ring"}))),this.truck.replaceChildren(...a),P.trying||this.paintField(),this.drawGrips()}drawGhost(){let e=P.bench.before?.scene;if(!e)return this.ghost.replaceChildren();let t=new Set(P.scene.parts.map(jn)),[n,s]=sn[this.face](e.cg_mm);this.ghost.replaceChildren(...e.parts.filter(r=>r.shape&&!t.has(jn(r))).map(r=>O("path",{d:Hi(ol(r,this.face))})),O("path",{d:`M${n-9} ${s}H${n+9}M${n} ${s-9}V${s+9}`}))}wedge([e,t]){let n=this.face==="rear"?-1:1,s=(-this.box[1]+40)/Math.max(1,t[1]-e[1]),[r,a]=[(t[0]-e[0])*s,(t[1]-e[1])*s];return O("path",{class:"wedge",d:`M${n*e[0]} ${-e[1]}L${n*(e[0]+r)} ${-(e[1]+a)}`})}paintField(){let[e,t,n,s]=this.box,[r,a]=np,{helps:o,hurts:l}=my(),c=new ImageData(r,a),h=P.scene.cg_mm;for(let u=0;u<a;u++)for(let d=0;d<r;d++){let[p,_]=[e+(d+.5)/r*(n-e),t+(u+.5)/a*(s-t)],v=this.face==="side"?[p,h[1],-_]:[h[0],-p,-_],m=_>0?0:Mh(P.view.direction,v),[g,M,C]=m>0?o:l,w=Math.min(6,Math.ceil(Math.abs(m)/.05));c.data.set([g,M,C,_>0?0:w*24],4*(u*r+d))}this.canvas.getContext("2d").putImageData(c,0,0),this.field.setAttribute("href",this.canvas.toDataURL());for(let[u,d]of Object.entries({x:e,y:t,width:n-e,height:s-t}))this.field.setAttribute(u,String(d))}movable(){let e=P.bench.rows.find(n=>n.row===P.view.row),t=P.scene.parts.find(n=>n.row===P.view.row);return e&&t&&e.at_mm&&e.here?{part:t,row:e}:null}drawGrips(){let e=this.movable();if(!e)return this.grips.replaceChildren();let[t,n]=sn[this.face](e.part.cg_mm),s=this.grips.firstElementChild;s||(s=O("g",{role:"slider",tabindex:0,"data-key":`grip-${this.face}`,"aria-valuenow":0},O("circle",{r:18,class:"handle-reach"}),O("circle",{r:7,class:"handle"})),s.addEventListener("pointerdown",a=>this.take(a)),s.addEventListener("keydown",a=>this.nudge(a)),this.grips.append(s)),s.setAttribute("transform",`translate(${t} ${n})`);let r=e.row.at_mm;s.setAttribute("aria-label",`${e.row.name}, ${this.face==="side"?"along and up":"across and up"}: arrow keys move it a millimetre`),s.setAttribute("aria-valuetext",`${V(r[0])} ahead, ${V(r[1])} left, ${V(r[2])} up`)}point(e){let t=new DOMPoint(e.clientX,e.clientY).matrixTransform(this.root.getScreenCTM().inverse());return[t.x,t.y]}take(e){let t=this.movable();t&&(e.preventDefault(),this.root.setPointerCapture(e.pointerId),this.held={...t,from:this.point(e),moved:[0,0]})}drag(e){if(!this.held)return;let[t,n]=this.point(e),s=[Math.round(t-this.held.from[0]),Math.round(n-this.held.from[1])];s[0]===this.held.moved[0]&&s[1]===this.held.moved[1]||(this.held.moved=s,Si(this.moveEdit(this.held.row,this.held.part,s)))}drop(){let e=this.held;e&&(this.held=null,!(e.moved[0]===0&&e.moved[1]===0)&&Gt(this.moveEdit(e.row,e.part,e.moved),`moved ${e.row.name}`).then(t=>{t||Rn()}))}nudge(e){let t=e.shiftKey?10:1,s={ArrowLeft:[-t,0],ArrowRight:[t,0],ArrowUp:[0,-t],ArrowDown:[0,t]}[e.key],r=this.movable();!s||!r||(e.preventDefault(),Gt(this.moveEdit(r.row,r.part,s),`moved ${r.row.name}`))}moveEdit(e,t,[n,s]){let r=e.at_mm,a=(l,c)=>({do:"set",part:e.name,key:`at_mm.${l}`,value:Number(c.toFixed(3))}),o=[];return n&&this.face==="side"&&o.push(a("x",r[0]+n)),n&&this.face==="rear"&&o.push(a("y",r[1]+(t.mirrored?n:-n))),(s||!n)&&o.push(a("z",r[2]-s)),o}};var ip=1e4;function rp(i){i.classList.add("weights");let e=f("div",{class:"views"}),t=f("div",{id:"picked"}),n=f("div",{class:"parts-holder"}),s=f("div",{id:"measures",hidden:!0});e.append(new Jr("side").figure,new Jr("rear").figure);let r=f("div",{class:"below"},s,n),a=f("div",{id:"new-part",class:"below",hidden:!0}),o=(_="")=>{tp(a,[t,l,r],e,_)},l=gy(s,r,()=>o());i.append(vy(),e,t,l,r,a);let c=()=>re(t,xy(o)),h=()=>{let{scrollTop:_}=r;re(n,yy()),r.scrollTop=_},u="";Ne(["bench","pick"],()=>{let _=P.bench.rows.find(m=>m.row===P.view.row),v=JSON.stringify(_??null);v!==u&&c(),u=v}),Ne("bench",h),Ne("shown",()=>lp()),Ne("shown",gs(_y,()=>100)),Ne("bench",()=>re(s,sp())),c(),h(),re(s,sp()),Ne("pick",()=>{for(let _ of n.querySelectorAll("tr[data-row]"))_.classList.toggle("picked",Number(_.dataset.row)===P.view.row);requestAnimationFrame(p)});let p=()=>{let _=n.querySelector("tr.picked");if(!_||r.scrollHeight<=r.clientHeight)return;let[v,m]=[_.getBoundingClientRect(),r.getBoundingClientRect()],g=28;v.top<m.top+g?r.scrollTop-=m.top+g-v.top:v.bottom>m.bottom&&(r.scrollTop+=v.bottom-m.bottom)}}function gy(i,e,t){let n=f("button",{type:"button",id:"measures-fold","aria-expanded":"false","aria-controls":"measures"},"Measures of the truck");n.addEventListener("click",()=>{i.hidden=!i.hidden,n.setAttribute("aria-expanded",String(!i.hidden)),e.scrollTop=0});let s=f("div",{class:"bar list-bar",role:"toolbar","aria-label":"Parts and measures"},n,f("button",{type:"button",id:"add-part",onclick:t},"Add a part"));return gt(s),s}function _y(){let i=document.activeElement,e=(s,r)=>{let a=document.querySelector(`#leaf-weights [data-key="${CSS.escape(s)}"]`);!a||a===i||a.value===r||(a.value=r)};for(let s of P.rows)e(`mass_g-${s.row}`,ap(s)),s.at_mm?.forEach((r,a)=>e(`at${a}-${s.row}`,String(r)));let t=(s,r)=>{let a=document.getElementById(`dial-${s}`);!a||a===i||r===void 0||Number(a.value)===r||(a.value=String(r),op(a,r))};for(let s of P.measures)t(s.key,s.value);let n=P.rows.find(s=>s.row===P.view.row);n&&(t("mass",n.mass_g),n.at_mm?.forEach((s,r)=>t(`at${r}`,s)))}var ap=i=>i.mass_g.toFixed(i.mass_g<10?2:1);function op(i,e){let t=`${V(e,Number(i.dataset.digits))} ${i.dataset.unit}`;i.setAttribute("aria-valuetext",t);let n=document.querySelector(`output[for="${CSS.escape(i.id)}"]`);n&&(n.textContent=t)}function vy(){let i=s=>()=>{ut({direction:s});for(let r of n.querySelectorAll("button"))r.setAttribute("aria-pressed",String(r.dataset.direction===s))},e=(s,r)=>f("button",{type:"button","data-direction":s,"aria-pressed":String(s===P.view.direction),onclick:i(s)},r),t=f("span",{},P.answers.gain_of==="compliant"?"springs and tyres at work":"if nothing gives"),n=f("div",{class:"bar",role:"toolbar","aria-label":"Where a gram helps, for which way to stand"},e("all","All ways"),...Object.entries(_t).map(([s,{short:r}])=>e(s,r)),f("span",{class:"gain-key"},f("i",{class:"helps"}),"helps",f("i",{class:"hurts"}),"hurts, a step is 0.05° per 10 g,",t));return gt(n),Ne("shown",()=>{t.textContent=P.answers.gain_of==="compliant"?"springs and tyres at work":"if nothing gives"}),n}function wh(i,e,t,n,s,r){let[a,o,l]=s,c=`dial-${i}`,h=Math.max(zh(l),Math.min(3,String(n).split(".")[1]?.length??0),t==="mm"||t==="g"?1:0),u=`${V(n,h)} ${t}`,d=f("input",{type:"range",id:c,"data-key":c,"data-digits":h,"data-unit":t,min:Math.min(a,n),max:Math.max(o,n),step:"any",value:n,"aria-valuetext":u}),p=()=>Number((Math.round(Number(d.value)/l)*l).toFixed(4));return d.addEventListener("keydown",_=>{let v={ArrowRight:l,ArrowUp:l,ArrowLeft:-l,ArrowDown:-l,PageUp:10*l,PageDown:-10*l}[_.key];v!==void 0&&(_.preventDefault(),d.value=String(p()+v),d.dispatchEvent(new Event("input")),d.dispatchEvent(new Event("change")))}),d.addEventListener("input",()=>{op(d,p()),Si(r(p()).edit)}),d.addEventListener("change",()=>{let{edit:_,what:v}=r(p());Gt(_,v)}),[f("label",{for:c},e),d,f("output",{for:c},u)]}function xy(i){let e=P.bench.rows.find(s=>s.row===P.view.row);if(!e)return f("p",{class:"text soft"},"Pick a part in the list, the drawings or on the table to weigh and move it.");let t=f("div",{class:"one"},f("h3",{},e.name));if(e.here){let s=Math.max(60,Math.ceil(e.mass_g*2/50)*50);t.append(...wh("mass","Mass","g",e.mass_g,[Math.min(1,e.mass_g),s,e.mass_g<20?.1:1],r=>({edit:[{do:"set",part:e.name,key:"mass_g",value:r}],what:`mass of ${e.name} ${V(r)} g`}))),e.at_mm&&["Ahead","To the left","Up"].forEach((r,a)=>{let o=e.at_mm;t.append(...wh(`at${a}`,r,"mm",o[a],[o[a]-60,o[a]+60,.5],l=>({edit:[{do:"set",part:e.name,key:`at_mm.${"xyz"[a]}`,value:l}],what:`moved ${e.name}`})))})}let n=f("p",{class:"gain-words about",id:"gain-words"});return t.append(n),e.here&&e.at_mm&&e.count===1&&!e.mirror&&t.append(f("button",{type:"button",class:"about",id:"take-out",title:"A part that was weighed on its own since: mass and CG of the whole stay as they are",onclick:()=>i(e.name)},"Take a part out of it…")),e.here||t.append(f("p",{class:"about"},"This part stands in an included file; edit it there.")),queueMicrotask(lp),t}function lp(){let i=document.getElementById("gain-words"),e=P.scene.parts.filter(n=>n.row===P.view.row);if(!i||e.length===0)return;let t=[0,1,2].map(n=>e.reduce((s,r)=>s+r.cg_mm[n],0)/e.length);re(i,"10 g more here:",...Object.entries(_t).map(([n,{short:s}])=>f("span",{},`${s} `,f("b",{},`${ht(Mh(n,t,e[0].carrier),2)}°`))))}function yy(){let i=["Part","Mass, g","Ahead","Left","Up","Rides on","",""],e=f("table",{class:"parts",id:"parts"},f("caption",{class:"visually-hidden"},"Parts of the truck; places in mm from where the part's carrier counts. Arrow keys go through the list."),f("thead",{},f("tr",{},...i.map((t,n)=>f(t?"th":"td",t?{scope:"col",class:n>0&&n<5?"n":""}:{},t)))),f("tbody",{},...P.bench.rows.map(My)));return Ti(e,"tr",by),e}var by={key:""};function My(i){let e=()=>ut({row:i.row}),t=(a,o,l,c,h,u={})=>{let d=f("input",{type:c,value:l,"aria-label":`${o} of ${i.name}`,"data-key":`${a}-${i.row}`,disabled:!i.here,onfocus:e,...u});return d.addEventListener("change",()=>d.checkValidity()?(Gt([{do:"set",part:i.name,key:a.startsWith("at")?`at_mm.${"xyz"[Number(a[2])]}`:a,value:h(d.value)}],`${o.toLowerCase()} of ${i.name}`).then(p=>{p||d.setAttribute("aria-invalid","true")}),!0):d.reportValidity()),d},n=(a,o)=>f("td",{class:"n"},i.at_mm?t(`at${a}`,o,String(i.at_mm[a]),"number",Number,{step:"any",min:-ip,max:ip,required:!0}):"–"),s=f("select",{"aria-label":`What ${i.name} rides on`,"data-key":`on-${i.row}`,disabled:!i.here||i.at_mm===null,onfocus:e},...P.bench.carriers.filter(a=>i.at_mm===null===a.endsWith("link")).map(a=>f("option",{value:a,selected:a===i.on},a)));s.addEventListener("change",()=>{Gt([{do:"set",part:i.name,key:"on",value:s.value}],`${i.name} rides on ${s.value}`)});let r=f("button",{type:"button","aria-label":`Remove ${i.name}`,"data-key":`remove-${i.row}`,disabled:!i.here,title:"Remove",onclick:()=>{Gt([{do:"remove",part:i.name}],`removed ${i.name}`)}},"✕");return f("tr",{class:`${i.row===P.view.row?"picked":""}${i.weighed?"":" computed"}`,"data-row":i.row},f("td",{},t("name","Name",i.name,"text",a=>a,{required:!0,maxlength:60})),f("td",{class:"n"},t("mass_g","Mass",ap(i),"number",Number,{step:"any",min:.001,max:1e5,required:!0,title:i.weighed?"as weighed":"from shape and material"})),n(0,"Place ahead"),n(1,"Place to the left"),n(2,"Height"),f("td",{},s),f("td",{class:"times"},i.pieces>1?`× ${i.pieces}`:""),f("td",{},r))}function vl(i,e=""){return i.flatMap(t=>wh(`${e}${t.key}`,t.name,t.unit,t.value,[t.low,t.high,t.step],n=>({edit:[{do:"measure",key:t.key,value:n}],what:`${t.name.toLowerCase()} ${V(n,2)} ${t.unit}`})))}var wy=/(preload|shock_length|shaft_travel|limiter)_mm$/;function Sy(){return P.bench.choices.flatMap(i=>{let e=`choice-${i.key}`,t=f("select",{id:e,"data-key":e},...i.choices.map(n=>f("option",{value:n,selected:n===i.value},n)));return t.addEventListener("change",()=>{Gt([{do:"measure",key:i.key,value:t.value}],`${i.name.toLowerCase()} ${t.value}`)}),[f("label",{for:e},i.name),t,f("span",{})]})}function sp(){let[i,e]=[P.bench.measures.filter(t=>t.key==="chassis.steer_deg"),P.bench.measures.filter(t=>t.key!=="chassis.steer_deg"&&!wy.test(t.key))];return f("div",{},f("div",{class:"one"},f("h3",{},"Measures of the truck"),...vl(e)),f("div",{class:"one"},f("h3",{},"How it stands on a slope"),...vl(i),...Sy()))}var Ty=`No link part of this file says what it is, so roll centre and lean are the file's own numbers: give its links link = "lower", "upper", "track bar" or "wishbone", and what they amount to stands here.`,Sh=12,Ey=["front","rear"],Ay=[["roll centre, mm above ground",1,i=>i.roll_centre_mm],["anti-dive, anti-squat, %",0,i=>i.anti_dive_percent??i.anti_squat_percent??null],["instant centre, mm ahead",0,i=>i.instant_centre_mm[0]],["instant centre, mm above ground",0,i=>i.instant_centre_mm[1]],["roll steer, deg per deg",3,i=>i.roll_steer_deg_per_deg],["castor, deg per mm of bump",3,i=>i.castor_deg_per_mm],["forwards, mm per mm of bump",3,i=>i.wheelbase_mm_per_mm],["wheel rate, N/mm",3,i=>i.wheel_rate_n_per_mm],["springs apart, as if upright, mm",1,i=>i.spring_spacing_mm],["bump at the wheel, mm",1,i=>i.bump_mm],["droop at the wheel, mm",1,i=>i.droop_mm],["left spring pressed at ride height, mm",1,i=>i.spring_squeeze_mm[0]],["left spring pressed at droop, mm",1,i=>i.spring_squeeze_at_droop_mm[0]],["soft springs bind at heave, mm",1,i=>i.soft_spring_bound_at_mm],["shock at droop, mm",1,i=>i.shock_length_mm[0]],["shock at ride height, mm",1,i=>i.shock_length_mm[1]],["shock at bump, mm",1,i=>i.shock_length_mm[2]]],Cy=[["anti-dive, anti-squat, %","heave, mm",i=>[i.travel.heave_mm,i.travel.anti_percent]],["roll centre, mm above ground","heave, mm",i=>[i.travel.heave_mm,i.travel.roll_centre_mm]],["castor gained, °","heave, mm",i=>[i.travel.heave_mm,i.travel.castor_deg]],["wheel rate, N/mm","heave, mm",i=>[i.travel.heave_mm,i.travel.wheel_rate_n_per_mm]],["axle goes forwards, mm","heave, mm",i=>[i.travel.heave_mm,i.travel.wheelbase_mm]],["axle steers, °","roll of the axle, °",i=>[i.rolling.roll_deg,i.rolling.steer_deg]]];function cp(i){i.classList.add("suspension");let e=f("div",{class:"views"}),t=f("div",{class:"parts-holder"}),n=f("div",{class:"small-curves"}),s=f("div"),r=f("p",{class:"text"}),a=f("div",{class:"one",id:"suspension-dials"}),o={side:new Tn("side"),rear:new Tn("rear")};i.append(r,e,t,a,n,s);let l=async()=>{let h=P.bench;try{let u=await ce.suspension();if(h!==P.bench||(c(u),!u.truck.linked))return;s.setAttribute("aria-busy","true"),s.firstChild||re(s,f("h3",{},"A link end moved by 5 mm"),f("p",{class:"text soft"},"Working out what each would do…"));let d=await ce.suspensionMoves();if(h!==P.bench)return;re(s,...ky(d)),s.removeAttribute("aria-busy")}catch(u){if(!(u instanceof De))throw u;!(u instanceof en)&&u.status!==409&&(r.textContent=u.message)}},c=h=>{let{linked:u}=h.truck;re(a,f("h3",{},"Springs and shocks"),...vl(P.bench.measures.filter(d=>d.key.includes(".suspension.")),"links-")),r.classList.toggle("soft",u),r.textContent=u?"At ride height, wheels held. Violet is the front axle, rose the rear; thick lines are links, dashed ones shocks.":Ty;for(let d of[e,t,n,s])d.hidden=!u;u&&(re(e,...["side","rear"].map(d=>Ry(d,h.truck,o[d]))),re(t,Ny(h)),re(n,...Cy.map(d=>Dy(d,h))))};Yt(i,()=>{l()},250),l()}function Ry(i,e,t){let n=P.bench.scene,[s,,r]=$i(n,i),a=Math.min($i(n,"side")[1],$i(n,"rear")[1]),o=i==="side"?[s-70,a-14,r+70,26]:[s-40,a-14,r+40,26];t.draw(n.parts,null);let l=e.axles.flatMap(v=>[...Py(i,v),...i==="side"?Iy(v,o):Ly(v,o)]),[c,h]=sn[i](n.cg_mm),u=i==="side"?"Side view, nose to the right":"Rear view",d=e.axles.map(v=>`${v.axle} roll centre ${V(v.roll_centre_mm)} mm above ground, instant centre ${V(v.instant_centre_mm[0],0)} ahead and ${V(v.instant_centre_mm[1],0)} up`).join("; "),p=O("svg",{class:"view links-view",viewBox:`${o[0]} ${o[1]} ${o[2]-o[0]} ${o[3]-o[1]}`,role:"img","aria-label":`${u}: ${d}`},O("path",{class:"ground",d:`M${o[0]} 0H${o[2]}`}),O("g",{class:"faint"},t.root),...l,O("g",{transform:`translate(${c} ${h})`},O("circle",{r:6,class:"cg-back"}),O("path",{d:"M0 0V-6A6 6 0 0 1 6 0ZM0 0V6A6 6 0 0 1 -6 0Z",class:"cg-dark"}),O("circle",{r:6,class:"cg-ring"}))),_=f("figure",{},p,f("figcaption",{},u));return _.style.flexGrow=String(Math.round(o[2]-o[0])),_}function Py(i,e){let t=n=>sn[i](n).map(s=>s.toFixed(1)).join(" ");return e.rods.flatMap(n=>[O("path",{class:`rod of-${e.axle}${n.shock?" shock":""}`,d:`M${t(n.chassis_mm)}L${t(n.axle_mm)}`},O("title",{},`${e.axle} ${n.name}`)),...[n.chassis_mm,n.axle_mm].map(s=>{let[r,a]=sn[i](s);return O("circle",{class:`rod-end of-${e.axle}`,cx:r,cy:a,r:2.6})})])}var hp=(i,e,t)=>O("path",{class:`centre of-${t}`,d:`M${i-6} ${e}H${i+6}M${i} ${e-6}V${e+6}`}),Th=(i,e,t,n,s="middle")=>O("text",{class:`link-word of-${n}`,x:i,y:e,"text-anchor":s},t);function Iy(i,e){let{x_mm:t,roll_centre_mm:n,roll_axis_slope:s,instant_centre_mm:[r,a],axle:o}=i,l=75,c=[O("path",{class:`roll-axis of-${o}`,d:`M${t-l} ${-(n-s*l)}L${t+l} ${-(n+s*l)}`}),hp(t,-n,o),Th(t,-n-12,`roll centre ${V(n,0)}`,o)];if(r===null||a===null)return c;let h=r>t?e[2]-4:e[0]+4,u=r>e[2]-4||r<e[0]+4,d=Math.abs(a)>-e[1]-8?(-e[1]-8)/Math.abs(a):1,p=Math.min(d,u?(h-t)/(r-t):1),[_,v]=[t+p*(r-t),p*a];c.push(O("path",{class:`to-instant of-${o}`,d:`M${t} 0L${_.toFixed(1)} ${(-v).toFixed(1)}`})),p===1&&c.push(O("path",{class:`instant of-${o}`,d:`M${r-5} ${-a-5}L${r+5} ${-a+5}M${r-5} ${-a+5}L${r+5} ${-a-5}`}));let m=_>e[2]-90?"end":_<e[0]+90?"start":"middle";return c.push(Th(_,Math.max(e[1]+12,-v-8),p===1?`${o} instant centre`:`${o} instant centre at ${V(r,0)}, ${V(a,0)}`,o,m)),c}function Ly(i,e){let t=i.axle==="front",[n,s]=[t?e[0]+3:e[2]-3,-i.roll_centre_mm];return[O("path",{class:`roll-axis of-${i.axle}`,d:`M0 ${s}H${n}`}),hp(0,s,i.axle),Th(n,s-5,V(i.roll_centre_mm),i.axle,t?"start":"end")]}function Ny(i){let e=(t,n,s)=>{let r=t!==null&&n!==null&&n!==void 0&&Number((t-n).toFixed(s))!==0;return f("td",{class:"n"},V(t,s),r?f("span",{class:"diff"},` ${ht(t-n,s)}`):null)};return f("table",{class:"link-numbers"},f("caption",{},"At ride height",i.reference?f("span",{class:"soft"},`, against ${P.bench.before?.what??"the reference"}`):null),f("thead",{},f("tr",{},f("td",{}),...Ey.map(t=>f("th",{scope:"col",class:"n"},t)))),f("tbody",{},f("tr",{},f("th",{scope:"row"},"guided by"),...i.truck.axles.map(t=>f("td",{class:"n kinds"},t.links.map(n=>n.replace(`${t.axle} `,"")).join(", ")||"numbers"))),...Ay.filter(([,,t])=>i.truck.axles.some(n=>t(n)!==null)).map(([t,n,s])=>f("tr",{},f("th",{scope:"row"},t),...i.truck.axles.map((r,a)=>e(s(r),i.reference&&s(i.reference.axles[a]),n))))))}function Dy([i,e,t],n){let[s,r,a,o]=[230,118,32,20],l=[...(n.reference?.axles??[]).map(T=>["then",T]),...n.truck.axles.map(T=>["now",T])],c=l.map(([,T])=>t(T)),h=c.flatMap(([T])=>T),u=c.flatMap(([,T])=>T).filter(T=>T!==null),[d,p]=[Math.min(...h),Math.max(...h)],[_,v]=[Math.min(...u),Math.max(...u)];v-_<.001&&([_,v]=[_-1,v+1]);let m=T=>a+(T-d)/(p-d||1)*(s-a-6),g=T=>8+(v-T)/(v-_)*(r-8-o),M=v-_>20?0:v-_>2?1:2,C=([T,x])=>x.map((A,X)=>[T[X],A]).filter(A=>A[1]!==null).map((A,X)=>`${X?"L":"M"}${m(A[0]).toFixed(1)} ${g(A[1]).toFixed(1)}`).join(""),w=l.map(([T,x],A)=>O("path",{class:`${T} of-${x.axle}`,d:C(c[A])})),E=n.truck.axles.map(T=>{let[,x]=t(T);return`${T.axle} ${V(x[0],2)} to ${V(x[x.length-1],2)}`}).join(", ");return f("figure",{},f("figcaption",{},i),O("svg",{viewBox:`0 0 ${s} ${r}`,role:"img","aria-label":`${i} over ${e}: ${E}`},O("path",{class:"curve-frame",d:`M${a} 8V${r-o}H${s-6}M${m(0)} 8V${r-o}`}),...w,...[_,v].map(T=>O("text",{x:a-4,y:g(T)+3.5,"text-anchor":"end"},V(T,M))),...[d,p].map((T,x)=>O("text",{x:m(T),y:r-8,"text-anchor":x?"end":"start"},V(T,0))),O("text",{x:(a+s)/2,y:r-8,"text-anchor":"middle"},e)))}function ky(i){let e=o=>Math.max(...[o.side_deg,o.climb_deg,o.descent_deg].map(l=>Math.abs(l??0))),t=o=>f("td",{class:`n ${o===null||Math.abs(o)<.005?"":o>0?"gain-up":"gain-down"}`},o===null?"–":ht(o,2)),n=o=>f("tr",{},f("th",{scope:"row"},`${o.part}, ${o.end} end ${o.axis}`),...o.why_not?[f("td",{colspan:3,class:"soft"},o.why_not)]:[t(o.side_deg),t(o.climb_deg),t(o.descent_deg)],f("td",{},o.why_not?null:f("button",{type:"button",class:"small","data-key":`move-${o.part}-${o.end}-${o.axis}`,"aria-label":`Move ${o.part}, ${o.end} end ${o.axis} by ${V(i.moved_by_mm,0)} mm`,onclick:()=>{Gt([o.edit],`${o.part}, ${o.end} end ${o.axis} ${V(i.moved_by_mm,0)} mm`)}},"Do it"))),s=[...i.moves].sort((o,l)=>e(l)-e(o)).map(n),r=f("tbody",{},...s.slice(0,Sh));gt(r);let a=s.length>Sh?f("button",{type:"button",id:"link-moves-all",onclick:()=>{r.append(...s.slice(Sh)),a?.parentElement?.remove()}},`All ${s.length} of them`):null;return[f("h3",{},`A link end moved by ${V(i.moved_by_mm,0)} mm`),f("p",{class:"text soft"},`Degrees that it tips later on ${i.surface}, against a rail where it slides first; the side that loses more counts. Links on both sides move together.`),f("div",{class:"parts-holder"},f("table",{id:"link-moves"},f("thead",{},f("tr",{},f("td",{}),...["side","climb","descent"].map(o=>f("th",{scope:"col",class:"n"},o)),f("td",{}))),r)),...a?[f("div",{class:"bar"},a)]:[]]}var Uy={rear:"its rear tyres",left:"its left tyres",front:"its front tyres",right:"its right tyres"},xl=class{constructor(e){this.stage=e;let[t,n]=[Ce("tilt"),Ce("turn")];t.addEventListener("input",()=>ut({tilt:Number(t.value)})),n.addEventListener("input",()=>ut({heading:Number(n.value)%360})),Ce("ways").append(...Object.values(_t).map(({heading:r,name:a})=>f("button",{type:"button","data-heading":r,onclick:()=>ut({heading:r})},a))),gt(Ce("ways")),Ne("view",()=>this.follow()),Ne("shown",()=>this.fetchPath()),Ne("path",()=>this.pose());let s=-1;Ne("view",()=>{s!==P.view.heading&&this.fetchPath(),s=P.view.heading})}stage;asked=null;timer=0;wasOver=!1;playing=!1;follow(){let{tilt:e,heading:t}=P.view,[n,s]=[Ce("tilt"),Ce("turn")];n.value=String(e),s.value=String(t),Ce("tilt-value").textContent=`${V(e)}°`,Ce("turn-value").textContent=`${V(t,0)}°`,n.setAttribute("aria-valuetext",`${V(e)} degrees`),s.setAttribute("aria-valuetext",`${V(t,0)} degrees to the left from nose uphill`);for(let r of Ce("ways").querySelectorAll("button"))r.setAttribute("aria-pressed",String(Number(r.dataset.heading)===t));this.pose()}fetchPath(){if(clearTimeout(this.timer),P.trying||!P.bench)return this.pose();P.path||this.pose(),this.timer=window.setTimeout(()=>{this.asked?.abort(),this.asked=new AbortController,ce.path(P.view.heading,this.asked.signal).then(e=>{P.path=e,this.pose()},e=>{e instanceof De&&(e.status===409||e.status===0)||e instanceof DOMException||Ee(String(e instanceof Error?e.message:e),"wrong")})},15)}pose(){if(this.playing)return;let{tilt:e,heading:t}=P.view,n=P.path,s=n!==null&&n.surface===P.answers?.surface,r=n!==null&&s&&Math.abs(n.heading_deg-t)<3&&!P.trying,a=n!==null&&n.rail_deg!==null&&!P.view.rail,o=(a?n?.goes_at_deg:n?.compliant_deg??n?.rail_deg)??90,l=n&&r?Kf(n.points,Math.min(e,o)):null,c=n!==null&&r&&e>o?a?"away":n.over:null;this.stage.show({theta_deg:e,heading_deg:t,poses:l?.poses??[],load_g:c?[0,0,0,0]:l?.load_g??P.answers?.numbers.corner_g??[0,0,0,0],cg_mm:l?.cg_mm??null},c);let h=Ce("standing"),u=n!==null&&r&&e>(n.goes_at_deg??90);n&&r?h.textContent=Fy(n,e):s||(h.textContent="Working out how it stands…"),h.classList.toggle("over",u),u&&!this.wasOver&&Ee(h.textContent??""),this.wasOver=u;let d=`The truck on the table, tilted ${V(e)} degrees, turned ${V(t,0)}. ${h.textContent??""} Arrow keys look round it, Enter takes the picked part.`;Ce("stage-canvas").setAttribute("aria-label",d)}};function Fy(i,e){let t=Uy[i.over]??i.over,{compliant_deg:n,rail_deg:s,slide_deg:r,goes_at_deg:a}=i;if(a===null||n===null&&s===null)return"No tip was found on this heading.";let o=s!==null&&r!==null;if(e<=a){let c=o?`its tyres slide; against a rail it tips over ${t} at ${V(s)}°`:`it tips over ${t}`;return`Stands, with ${By(i,e,a)} in hand before ${Oy(i)?`it slides or tips over ${t}, which is too close to call`:c}.`}if(!o)return`Gone over ${t}. It tips at ${V(n)}°.`;let l=P.view.rail?"Held by a rail as here, it has":"Against a rail it would have";return e<=s?`Slides away at ${V(r)}°. ${l} ${V(s-e)}° in hand before it tips over ${t}.`:`Gone. It slides away at ${V(r)}°, and tips over ${t} at ${V(s)}° where a rail holds it.`}var up=i=>P.trying?void 0:P.answers?.ways?.find(e=>e.heading_deg===i.heading_deg),Oy=i=>up(i)?.outcome==="too close to call";function By(i,e,t){let[n,s]=up(i)?.goes_at_range_deg??[null,null],r=`${V(t-e)}°`;return n===null||s===null?r:n<e?`${r} (perhaps nothing, at most ${V(s-e)}°)`:`${r} (${V(n-e)} to ${V(s-e)})`}var zy=[["file","A file"],["scale","The scale"],["board","The board"],["agree","They agree"]],Eh="crossfall-begin";function Gy(){try{return JSON.parse(localStorage.getItem(Eh)??"null")}catch{return null}}function dp(i){try{i?localStorage.setItem(Eh,JSON.stringify(i)):localStorage.removeItem(Eh)}catch{}}function fp(i){let e,t="file",n="",s={},r=f("div",{class:"stages",role:"toolbar","aria-label":"Steps to a file that agrees"}),a=f("div",{class:"asks","aria-live":"polite"});i.append(r,a);for(let[S,D]of zy)r.append(f("button",{type:"button","data-stage":S,onclick:()=>h(S)},D));gt(r);let o=S=>{if(!(S instanceof De))throw S;return S.sentences.slice(0,3).join(" ")},l=()=>{let S={file:!0,scale:e.weighed,board:e.tilted,agree:!1};for(let D of r.querySelectorAll("button")){let F=D.dataset.stage;D.setAttribute("aria-pressed",String(F===t)),D.classList.toggle("done",S[F]),D.setAttribute("aria-label",`${D.textContent}${S[F]?", done":""}`)}},c=async()=>{try{return e=await ce.wizard(),n!==P.bench.file&&(s={}),n=P.bench.file,!0}catch(S){return re(a,f("p",{class:"text wrong"},o(S))),!1}},h=S=>{t=S,l(),{file:_,scale:T,board:X,agree:k}[S]()},u=S=>S?f("p",{class:"caution",role:"note"},e.cautions[S]??""):null,d=S=>{let D=e.pictures[S];if(!D)return null;let F=new DOMParser().parseFromString(D.replace("<svg ",'<svg xmlns="http://www.w3.org/2000/svg" '),"image/svg+xml");return f("div",{class:"pict"},document.importNode(F.documentElement,!0))},p=(S,D,F,G,H=()=>{})=>{let $=S(),I=$[D];if(H(D),!I)return G();let K=f("p",{class:"wrong",role:"alert",id:"ask-wrong"}),oe=he=>p(S,he,F,G,H),pe=I.choices.length?f("select",{id:"ask-value","aria-label":I.title},...I.choices.map(he=>f("option",{value:he,selected:he===I.value},he))):f("input",{id:"ask-value",type:"text",inputmode:/^(mm|g|°|N)/.test(I.unit)&&!I.unit.includes(":")?"decimal":"text",autocomplete:"off","aria-label":`${I.title}${I.unit?`, ${I.unit}`:""}`,"aria-describedby":"ask-wrong",value:I.value}),Q=f("form",{class:"ask-one"},f("p",{class:"soft"},`${F}, ${D+1} of ${$.length}`),f("h3",{tabindex:-1},I.title),I.help?f("p",{},I.help):null,u(I.caution),d(I.picture),f("div",{class:"new-line"},pe,f("span",{class:"soft"},I.unit)),K,f("div",{class:"bar"},f("button",{type:"submit",class:"main",id:"ask-next"},"Next"),D>0?f("button",{type:"button",id:"ask-back",onclick:()=>oe(D-1)},"Back"):null,I.needed?null:f("button",{type:"button",id:"ask-skip",onclick:()=>{I.take("").then(()=>oe(D+1))}},"Leave it out")));Q.addEventListener("submit",he=>{he.preventDefault();let Te=pe.value.trim();if(!Te&&I.needed)return K.textContent="This one is needed.",pe.setAttribute("aria-invalid","true"),pe.focus();I.take(Te).then(ke=>{if(ke===null)return oe(D+1);K.textContent=ke,pe.setAttribute("aria-invalid","true"),pe.focus()})}),re(a,Q),pe.focus(),pe instanceof HTMLInputElement&&pe.select()},_=()=>{let S=Gy();re(a,f("h3",{},"A truck that has no file yet"),f("p",{class:"text"},"A kitchen scale, a ruler and a block of 80 to 120 mm make one, in about ten minutes. Every question shows what to do; what you cannot measure now may be left out and added later."),f("div",{class:"bar"},f("button",{type:"button",class:"main",id:"begin-new",onclick:()=>v(null)},"Begin a new truck"),S?f("button",{type:"button",id:"begin-on",onclick:()=>v(S)},`Go on with ${S.name}`):null),f("h3",{},`${P.bench.file.replace(".toml","")} is on the bench`),f("p",{class:"text"},e.begun&&!e.as_begun?"It was begun here and changed by hand since: measure what matters on the scale and the board now.":"Bring it together with what scale and board say."),f("div",{class:"bar"},f("button",{type:"button",id:"to-scale",onclick:()=>h("scale")},"Go on to the scale")),e.as_begun?f("p",{class:"text soft"},"It is as it was begun: a further reading makes it surer."):null,e.as_begun?f("div",{class:"bar"},f("button",{type:"button",id:"begin-more",onclick:()=>w()},"What to measure next")):null,f("h3",{},"Before you start"),...["pack","block","fall","dust","models"].map(u))},v=S=>{let D=S??{name:"",typed:{},at:0},F={key:"name",title:"What is the truck called?",help:"Its file is called so as well.",picture:"",caution:"",unit:"",choices:[],needed:!0,value:D.name,take:async I=>/[.[\]"\\/]/.test(I)||I.length>60?"Up to 60 letters, no dots, quotes, slashes or brackets.":P.bench.trucks.includes(`${I}.toml`)?`There is a ${I}.toml already: choose another name.`:(D.name=I,null)},G=()=>[F,...e.questions.filter(I=>I.first&&!(I.after&&!D.typed[I.after])).map(I=>m(I.key,D.typed))],H=I=>p(G,I,"Beginning",$,K=>{D.at=K,dp(D)}),$=()=>{re(a,f("h3",{},`What you read off ${D.name}`),f("table",{},f("tbody",{},...e.questions.filter(I=>D.typed[I.key]).map(I=>f("tr",{},f("th",{scope:"row"},I.words),f("td",{class:"n"},`${D.typed[I.key]}${["mm","g"].includes(I.kind)?` ${I.kind}`:""}`))))),f("div",{class:"bar"},f("button",{type:"button",class:"main",id:"begin-make",onclick:()=>g(D.name,D.typed,!1)},"Make the file"),f("button",{type:"button",id:"ask-back",onclick:()=>H(0)},"Go through it again")),f("p",{class:"wrong text",role:"alert",id:"ask-wrong"})),document.getElementById("begin-make")?.focus()};H(Math.min(D.at,G().length))},m=(S,D)=>{let F=e.questions.find(H=>H.key===S),G={mm:"mm",g:"g","N/mm":"N/mm",place:"mm: ahead of mid-wheelbase, left of the middle, above the ground"}[F.kind]??"";return{key:S,title:F.do,help:F.kind==="place"?"Three numbers, as 20, 0, 95.":F.hint?`${F.hint[0].toUpperCase()}${F.hint.slice(1)}.`:"",picture:F.picture,caution:F.caution,unit:G,choices:F.choices,needed:F.needed,value:D[S]??"",take:async H=>{if(!H)return delete D[S],null;try{await ce.reading(S,H)}catch($){return o($)}return D[S]=H,null}}},g=async(S,D,F)=>{let G=document.getElementById("ask-wrong");Ee("Making the file…");try{let{begun:H,bench:$}=await ce.begin(S,D,F);F||dp(null),n=$.file,Xt($),Ee(`${H.file} is made and on the bench.`),await c()&&M(H)}catch(H){let $=o(H);G?G.textContent=$:re(a,f("p",{class:"wrong text",role:"alert"},$)),Ee($,"wrong")}},M=S=>{let[D,F,G]=S.cg_mm;re(a,f("h3",{tabindex:-1,id:"begun"},`${S.file} is on the bench`),f("p",{class:"text"},`${V(S.mass_g,0)} ± ${V(S.mass_pm_g,0)} g; CG ${ht(D)} ± ${V(S.cg_pm_mm[0])} mm ahead of mid-wheelbase, ${ht(F)} ± ${V(S.cg_pm_mm[1])} to the left, ${V(G)} ± ${V(S.cg_pm_mm[2])} up (95 %).`),...S.implausible.map(H=>f("p",{class:"text wrong"},`${H[0].toUpperCase()}${H.slice(1)}.`)),S.next.length?f("h3",{},"What to measure next"):null,S.next.length?f("p",{class:"text soft"},"By how much it narrows the ± of the tip angle, for its minutes."):null,...S.next.slice(0,4).map((H,$)=>f("div",{class:"change"},f("span",{}),f("span",{},H.do),f("button",{type:"button",id:`measure-${$}`,onclick:()=>C(H.readings)},"Measure it"),f("p",{class:"note"},`±${V(H.narrows_pm_deg,2)}° in ${V(H.minutes,H.minutes%1?1:0)} min`))),S.typical.length?f("details",{class:"text"},f("summary",{},`${S.typical.length} numbers are typical, not measured`),f("p",{},`${S.typical.join(", ")}.`)):null,f("div",{class:"bar"},f("button",{type:"button",class:"main",id:"to-scale",onclick:()=>h("scale")},"Go on to the scale"))),document.getElementById("begun")?.focus()},C=S=>{let D={},F=P.bench.file.replace(".toml",""),G=S.filter(H=>e.questions.some($=>$.key===H));p(()=>G.map(H=>({...m(H,D),needed:!0})),0,"One more reading",()=>{g(F,D,!0)})},w=()=>{re(a,f("p",{class:"text soft"},"Working out which reading would help most…")),g(P.bench.file.replace(".toml",""),{},!0)},E=[["front","","Stand the front axle on the scale, the rear on blocks just as high","level front","pack"],["rear","","Turn it round: the rear axle on the scale, the front on the blocks","level rear",""],["left","","Both left wheels on the scale, the right ones on the blocks","side left",""],["rear","front","Raise the front on a tall block, and weigh the rear","raised","block"]],T=()=>{let S=E.flatMap(([D,F,G,H,$])=>{let I=`${D} ${F}`,K={key:I,title:G,help:F?"":"Lift it and put it down again once or twice: more than one number says how far the scale scatters.",picture:H,caution:$,unit:"g, repeats apart by spaces",choices:[],needed:!1,value:s[I]??"",take:async pe=>(s[I]=pe,null)};return F?[{key:"block",title:"How tall is that block?",help:"From the ground of the lower wheels to that of the raised ones.",picture:H,caution:$,unit:"mm",choices:[],needed:!1,value:s.block??"90",take:async pe=>(s.block=pe,null)},K]:[K]});S.push({key:"tied",title:"Was the suspension tied, so that nothing sank or rose?",help:"Cable ties round the dampers, at ride height.",picture:"damper",caution:"",unit:"",choices:["yes","no"],needed:!0,value:s.tied??"yes",take:async D=>(s.tied=D,null)}),S.push({key:"step",title:"What is the smallest step the scale shows?",help:"",picture:"",caution:"",unit:"g",choices:[],needed:!0,value:s.step??"1",take:async D=>Number(D.replace(",","."))>0?(s.step=D.replace(",","."),null):"A number of grams, as 1 or 0.1."}),p(()=>S,0,"On the scale",()=>{x()})},x=async()=>{let S=E.map(([H,$])=>({at:H,raised:$,block_mm:$?s.block??"":"",loads:s[`${H} ${$}`]??""})).filter(H=>H.loads),D={step_g:Number(s.step??1),locked:s.tied!=="no",readings:S},F=f("div",{}),G=f("button",{type:"button",id:"ask-back",onclick:T},"Go through it again");try{gh(F,await ce.weigh(D,!0)),Ee("The readings are kept beside the truck."),await c()&&l(),re(a,F,f("div",{class:"bar"},f("button",{type:"button",class:"main",id:"to-board",onclick:()=>h("board")},"Go on to the board"),f("button",{type:"button",id:"to-agree",onclick:()=>h("agree")},"No board: bring file and scale together"),G)),document.getElementById("to-board")?.focus()}catch(H){re(a,f("p",{class:"text wrong",role:"alert"},o(H)),f("div",{class:"bar"},G)),G.focus()}},A=[[90,"Across, left side down"],[270,"Across, right side down"],[0,"Climbing, nose uphill"],[180,"Descending, nose downhill"]],X=()=>{let S=[],D=A.map(([F,G])=>({key:String(F),title:`${G}: at what angle does the last uphill tyre leave the board?`,help:"A strip under the downhill tyres keeps them from sliding. Raise the board slowly, and read the phone on it.",picture:F===90?"board":"headings",caution:"fall",unit:"°",choices:[],needed:!1,value:"",take:async H=>{if(!H)return null;let $=Number(H.replace(",",".").replace("°",""));if(!($>0&&$<90))return"An angle between 0 and 90 degrees.";try{let K=(await ce.board({heading_deg:F,angle_deg:$})).readings.filter(oe=>oe.heading_deg===F).pop();K&&S.push(`${G}: ${V(K.measured_deg)}°, foretold ${V(K.predicted_deg)}°, which ${K.agrees?"agrees":"does not agree"}.`)}catch(I){return o(I)}return null}}));p(()=>D,0,"On the board",()=>{re(a,f("h3",{},S.length?"What the board said":"Nothing was noted"),...S.map(F=>f("p",{class:"text"},F)),f("div",{class:"bar"},f("button",{type:"button",class:"main",id:"to-agree",onclick:()=>h("agree")},"Bring them together"),f("button",{type:"button",id:"ask-back",onclick:X},"Go through it again"))),c().then(F=>{F&&l()}),document.getElementById("to-agree")?.focus()})},k=()=>{re(a,f("p",{class:"text soft"},"Looking for what has to move, within its tolerance, for the file to agree with what was read…")),ce.agreement(!1).then(({found:S})=>z(S),S=>re(a,f("p",{class:"text wrong",role:"alert"},o(S))))},z=S=>{let D=[S.scales?"scale":"",S.board?"board":""].filter(Boolean).join(" and "),F=S.moves.length===0||S.counted==="all",G=H=>H.map($=>ht($)).join(", ");re(a,f("h3",{id:"agreement"},S.agrees&&F?`The file agrees with ${D}`:S.agrees?`With these moves the file agrees with ${D}`:`The file and ${D} do not agree`),f("table",{},f("thead",{},f("tr",{},...["","by the file","± 95 %","together","± 95 %"].map(H=>f(H?"th":"td",H?{scope:"col",class:"n"}:{},H)))),f("tbody",{},...S.sums.map(H=>f("tr",{},f("th",{scope:"row"},`${H.what}, ${H.unit}`),...[H.before,H.before_pm,H.after,H.after_pm].map($=>f("td",{class:"n"},V($))))))),...S.left_out.map(H=>f("p",{class:"text wrong"},`Cannot be believed and was left out: ${H.reading}, ${ht(H.off)} ${H.unit} from what the rest make of the truck.`)),S.agrees?null:f("p",{class:"text"},"Some tolerance in the file is too small, a part is missing from it, or a reading is wrong: weigh again what stands out."),F?null:f("table",{},f("caption",{},"What has to move"),f("thead",{},f("tr",{},...["part","by, g","ahead, left, up, mm"].map(H=>f("th",{scope:"col"},H)))),f("tbody",{},...S.moves.slice(0,12).map(H=>f("tr",{},f("th",{scope:"row"},H.part),f("td",{},ht(H.mass_by_g)),f("td",{},G(H.place_by_mm)))))),S.counted==="some"?f("p",{class:"text wrong"},"The file was brought together with some of these readings before, and they would count twice: undo that first, or go on from a file that has not seen them."):null,S.at_limit.length?f("p",{class:"text soft"},`At the limit of its tolerance: ${S.at_limit.slice(0,6).join(", ")}.`):null,f("div",{class:"bar"},F?null:f("button",{type:"button",class:"main",id:"agree-put",onclick:()=>{U()}},"Put it into the file"),f("button",{type:"button",id:"agree-scale",onclick:()=>h("scale")},"Weigh again"))),document.getElementById("agree-put")?.focus()},U=async()=>{let S=null;await dt(async()=>{let F=await ce.agreement(!0);return S=F.found,F.bench},"brought the file together with what was read")&&(re(a,f("h3",{id:"agreement",tabindex:-1},S.agrees?"The file agrees with what was read":"The file is as near as its tolerances let it come"),f("p",{class:"text"},"Save it to keep it; undo brings back what it was."),f("div",{class:"bar"},f("button",{type:"button",id:"agree-again",onclick:k},"Look again"))),document.getElementById("agreement")?.focus())},J=async()=>{await c()&&h(t)};Yt(i,()=>{n!==P.bench.file&&(t="file",J())}),re(a,f("p",{class:"text soft"},"…")),J()}async function Vy(){let i=await ce.bench();P.bench=i,P.rows=i.rows,P.measures=i.measures,P.scene=i.scene,P.answers=i.answers;let e=jf();bf(()=>e.repaint()),Ff(),Wh();let t=new xl(e);eu(),_f(e),qt?(document.documentElement.dataset.frozen="",Ce("turn").step=String(qt.turn_deg)):Kh([{id:"weights",name:"Weights",make:rp},{id:"tune",name:"Changes",make:kl("Changes",[{id:"changes",name:"Switches",make:iu},{id:"plan",name:"Best set",make:kf},{id:"list",name:"The list",make:Tf}])},{id:"measure",name:"Scale and board",make:kl("Scale and board",[{id:"wizard",name:"Step by step",make:fp},{id:"scales",name:"On the scale",make:Bf},{id:"board",name:"On the board",make:zf}])},{id:"maps",name:"Sweeps",make:Nf},{id:"suspension",name:"Links",make:cp},{id:"course",name:"Course",make:vf}]),qt||(Jh(),Cf(),Ef()),Xt(i),ut({tilt:25,heading:90}),i.recovered&&Ee("Unsaved work from last time is back on the bench. Undo steps through it.");let n=new cl(e,t);performance.mark("bench-ready"),document.documentElement.dataset.ready="",Object.assign(window,{benchWatch:{stage:e,lags:sr,replay:n}})}addEventListener("unhandledrejection",i=>{i.reason instanceof De&&(i.preventDefault(),i.reason.status!==0&&i.reason.status!==409&&Ee(i.reason.message,"wrong"))});Vy().catch(i=>{Ce("notice").textContent=i instanceof Error?i.message:String(i),Ce("notice").hidden=!1});
