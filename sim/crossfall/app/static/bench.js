function Ch(i,e,t){for(let[n,s]of Object.entries(e))s==null||s===!1||(n.startsWith("on")&&typeof s=="function"?i.addEventListener(n.slice(2),s):i.setAttribute(n,s===!0?"":String(s)));i.append(...t.filter(n=>n!=null&&n!==!1))}function _(i,e={},...t){let n=document.createElement(i);return Ch(n,e,t),n}function O(i,e={},...t){let n=document.createElementNS("http://www.w3.org/2000/svg",i);return Ch(n,e,t),n}function Se(i){let e=document.getElementById(i);if(e===null)throw new Error(`no element ${i}`);return e}function ge(i,...e){let t=document.activeElement,n=t&&i.contains(t)?t.getAttribute("data-key"):null;i.replaceChildren(...e.filter(s=>!!s)),n!==null&&i.querySelector(`[data-key="${CSS.escape(n)}"]`)?.focus({preventScroll:!0})}var yl=null;function Ne(i,e="note"){yl??=Se("say"),yl.textContent=i,yl.dataset.kind=e}function Nt(i,e="button"){let t=()=>[...i.querySelectorAll(e)].filter(r=>!r.disabled&&!r.hidden),n=null,s=()=>{let r=t(),a=n&&r.includes(n)?n:r.find(o=>o.getAttribute("aria-pressed")==="true")??r[0];for(let o of r){let l=o===a?0:-1;o.tabIndex!==l&&(o.tabIndex=l)}};i.addEventListener("focusin",r=>{n=r.target.closest(e),s()}),i.addEventListener("keydown",r=>{let a=r.key,o=t(),l=o.indexOf(document.activeElement);if(l<0)return;let h={ArrowRight:l+1,ArrowDown:l+1,ArrowLeft:l-1,ArrowUp:l-1,Home:0,End:o.length-1}[a];h!==void 0&&(r.preventDefault(),o[(h+o.length)%o.length].focus())}),new MutationObserver(s).observe(i,{childList:!0,subtree:!0,attributes:!0,attributeFilter:["disabled","hidden","aria-pressed"]}),s()}var jr=()=>matchMedia("(prefers-reduced-motion: reduce)").matches,G=(i,e=1)=>i==null||!Number.isFinite(i)?"–":i.toFixed(e).replace(/^-(0(\.0*)?)$/,"$1").replace("-","−"),St=(i,e=1)=>{let t=G(i,e);return i>0&&Number(i.toFixed(e))!==0?`+${t}`:t},bl=null,Rh=!1;function _i(){return vi(),Rh}function vi(){if(bl===null){let i=document.createElement("canvas").getContext("webgl2");Rh=i===null;let e=i?.getExtension("WEBGL_debug_renderer_info"),t=e?String(i?.getParameter(e.UNMASKED_RENDERER_WEBGL)):"";i?.getExtension("WEBGL_lose_context")?.loseContext(),bl=/swiftshader|llvmpipe|software|basic render/i.test(t)}return bl}var Ph=i=>Math.max(0,Math.min(3,-Math.floor(Math.log10(i)+1e-9))),qi=(i,e)=>`${G(i,Number.isInteger(Math.round(i*100)/100)?0:2)} ${e}`.trim();var xt={climb:{heading:0,name:"Climb",short:"Climb"},left:{heading:90,name:"Left side down",short:"Left down"},descent:{heading:180,name:"Descent",short:"Descent"},right:{heading:270,name:"Right side down",short:"Right down"}},R={bench:null,scene:null,answers:null,rows:[],measures:[],path:null,trials:[],view:{tilt:0,heading:90,row:null,direction:"all",rail:!1},trying:!1},Qr=new Map;function De(i,e){for(let t of Array.isArray(i)?i:[i])Qr.has(t)||Qr.set(t,new Set),Qr.get(t).add(e)}function ti(...i){let e=new Set;for(let t of i)for(let n of Qr.get(t)??[])e.add(n);for(let t of e)t()}var tp=150;function ps(i,e){let t=0,n=0,s=()=>{clearTimeout(t),n=performance.now(),i()};return()=>{if(!R.trying)return s();clearTimeout(t),t=window.setTimeout(s,Math.max(20,Math.min(tp,n+e()-performance.now())))}}function nn(i){let e=R.bench?.file===i.file?R.bench.rows.find(t=>t.row===R.view.row)?.name:void 0;(e!==void 0||R.bench?.file!==i.file)&&(R.view.row=i.rows.find(t=>t.name===e)?.row??null),R.path&&R.bench?.truck!==i.truck&&(R.path=null),R.bench=i,R.scene=i.scene,R.answers=i.answers,R.rows=i.rows,R.measures=i.measures,R.trying=!1,ti("bench","shown","pick")}function Ml(i){R.scene=i.scene,R.answers=i.answers,R.rows=i.rows,R.measures=i.measures,R.trying=!0,ti("shown")}function ht(i){let e=i.heading!==void 0&&i.heading!==R.view.heading,t=i.row!==void 0&&i.row!==R.view.row;Object.assign(R.view,i),(e||i.tilt!==void 0||i.direction!==void 0||i.rail!==void 0)&&ti("view"),t&&ti("pick")}function ni(i,e,t){if(i.length===0)return null;let n=360/i.length,s=(t%360+360)%360/n,r=Math.floor(s)%i.length,a=e[r]??null,o=e[(r+1)%i.length]??null;return a===null||o===null?a??o:a+(o-a)*(s-Math.floor(s))}var Bn=i=>i.compliant_deg.map((e,t)=>e??i.rail_deg[t]??null);function sn(i,e){let t=ni(i.heading_deg,Bn(i),e);if(t===null)return null;let n=i.heading_deg.length,s=i.rail_deg[Math.round(e*n/360)%n]!==null;return{slides:s,deg:s?i.slide_deg.likely:t}}function nr(i){let[e,t]=i?.compliant_range_deg??i?.rail_range_deg??[null,null];return e===null||t===null?null:[e,t]}var np=2,wl=i=>i!==null&&i[1]-i[0]>np,Yi=(i,e)=>wl(e)?`${G(e[0],0)}–${G(e[1],0)}`:G(i),ir=()=>R.bench.rows.find(i=>i.name===R.bench.scene.pack)?.row??null;var Be=class extends Error{constructor(t,n,s){super(n.join(" "));this.status=t;this.sentences=n;this.where=s}status;sentences;where},Kt=class extends Be{constructor(){super(0,["The bench does not answer."],"gone")}},$t=(()=>{let i=document.getElementById("frozen");return i?.textContent?JSON.parse(i.textContent):null})(),Ji=$t?$t.turn_deg:5;function ip(i,e){let{bench:t,paths:n}=$t;return i==="/api/bench"?t:i==="/api/path"?n[Math.round(Number(e.heading_deg)/Ji)*Ji%360]:i==="/api/reference"?t.before:/exact|ways|gains/.test(i)?t.answers:null}var Sl=new AbortController,Ih=new EventTarget;function sp(){Sl.abort(new Kt),Sl=new AbortController,Ih.dispatchEvent(new Event("gone"))}function Lh(i){Ih.addEventListener("gone",i)}async function ms(i,e={},t){if($t)throw new Be(403,["This is a copy to look at, without a bench behind it."],"copy");let n=Sl,s;try{s=await fetch(i,{...e,signal:t?AbortSignal.any([t,n.signal]):n.signal})}catch(r){throw t?.aborted&&!n.signal.aborted&&!(t.reason instanceof DOMException&&t.reason.name==="TimeoutError")?r:(n.signal.aborted||sp(),new Kt)}if(!s.ok)throw new Be(s.status,[await s.text()||s.statusText],null);return s}async function gs(i){let e;try{e=await i.json()}catch{throw new Kt}if(typeof e=="object"&&e!==null&&"refused"in e)throw new Be(e.refused,e.problems,e.where);return e}async function Zi(i,e={},t){if($t){let s=ip(i,e);if(s==null)throw new Be(409,["This is a copy to look at, without a bench behind it."],"copy");return s}let n=new URLSearchParams(Object.entries(e).map(([s,r])=>[s,String(r)])).toString();return gs(await ms(n?`${i}?${n}`:i,{},t))}async function ea(i,e){return gs(await ms(i,{method:"POST",headers:{"Content-Type":"application/json"},body:JSON.stringify(e)}))}var xi=()=>({document:R.bench.document,revision:R.bench.revision}),rn=(i,e={},t)=>Zi(i,{...xi(),...e},t),yt=(i,e={})=>ea(i,{...xi(),...e}),ve={bench:()=>Zi("/api/bench"),pulse:()=>Zi("/api/pulse",{},AbortSignal.timeout(15e3)),edit:(i,e)=>yt("/api/edit",{edits:i,what:e}),attempt:(i,e=!1)=>yt("/api/try",{edits:i,full:e}),undo:()=>yt("/api/undo"),redo:()=>yt("/api/redo"),history:()=>rn("/api/history"),go:i=>yt("/api/go",{to:i}),nameStep:(i,e)=>yt("/api/name-step",{step:i,name:e}),pin:i=>yt("/api/pin",{key:i}),reference:()=>rn("/api/reference"),save:(i,e)=>yt("/api/save",{name:i,over:e}),discard:()=>yt("/api/discard"),open:i=>ea("/api/open",{name:i}),path:(i,e)=>rn("/api/path",{heading_deg:i},e),partForm:()=>rn("/api/part-form"),changes:()=>rn("/api/changes"),editChanges:(i,e)=>yt("/api/edit-changes",{seen:i,asked:e}),keepEdits:(i,e)=>yt("/api/keep-edits",{seen:i,asked:e}),bought:()=>rn("/api/bought"),fit:i=>yt("/api/fit",{chosen:i}),plan:i=>yt("/api/plan",{asked:i}),readings:()=>rn("/api/readings"),weigh:(i,e)=>yt("/api/weigh",{form:i,keep:e}),board:i=>i?yt("/api/board",{asked:i}):rn("/api/board"),sheet:async()=>{let i=await ms(`/api/sheet?${new URLSearchParams({document:xi().document,revision:String(xi().revision)})}`);return i.headers.get("content-type")?.includes("pdf")||await gs(i),i.blob()},share:async()=>{let i=await ms(`/api/share?${new URLSearchParams({document:xi().document,revision:String(xi().revision)})}`);return i.headers.get("content-type")?.includes("json")&&await gs(i),i.blob()},sweeps:()=>Zi("/api/sweeps"),sweep:i=>Zi("/api/sweep",{name:i}),place:i=>yt("/api/place",{values:i}),trial:()=>Zi("/api/trial"),runTrial:(i,e)=>yt("/api/trial",{headings:i,rail:e}),stopTrial:()=>ea("/api/trial-stop",{}),poses:async i=>{let e=await ms(`/api/poses?${new URLSearchParams({document:xi().document,revision:String(xi().revision),file:i})}`);return e.headers.get("content-type")?.includes("json")&&await gs(e),e.arrayBuffer()},suspension:()=>rn("/api/suspension"),suspensionMoves:()=>rn("/api/suspension-moves"),courseStanding:i=>yt("/api/course-standing",{course:i}),driveCourse:i=>yt("/api/course",{course:i}),courseState:()=>Zi("/api/course"),keepStill:(i,e)=>yt("/api/course-still",{picture:i,words:e}),stopCourse:()=>ea("/api/course-stop",{}),coursePoses:async i=>{let e=await ms(`/api/course-poses?${new URLSearchParams({file:i})}`);return e.headers.get("content-type")?.includes("json")&&await gs(e),e.arrayBuffer()},exact:()=>rn("/api/exact"),gains:()=>rn("/api/gains"),ways:()=>rn("/api/ways"),surface:i=>yt("/api/surface",{surface:i})};function na(i,e,t){return i===null||e===null||e===void 0||Number((i-e).toFixed(t))===0?null:_("span",{class:"diff"},St(i-e,t))}var ia=()=>R.bench.before;function rp(){let i=t=>100*(t.corner_g[0]+t.corner_g[2])/t.mass_g,e=(t,n,s,r)=>{let[a,o]=[n(R.answers.numbers),ia()?n(ia().numbers):void 0];return _("div",{},_("dt",{},`${t}, ${r}`),_("dd",{},G(a,s)," ",na(a,o,s)))};return _("dl",{class:"cells",id:"numbers"},e("All up",t=>t.mass_g,0,"g"),e("CG height",t=>t.cg_mm[2],1,"mm"),e("On the front",t=>t.front_percent,1,"%"),e("On the left",i,1,"%"),e("CG ahead",t=>t.cg_mm[0],1,"mm"),e("CG left",t=>t.cg_mm[1],1,"mm"),e("On springs",t=>t.sprung_g,0,"g"),e("Off springs",t=>t.unsprung_g,0,"g"))}var ta=["squash","along","rise","lean"];function Tl(i){return Object.entries(xt).map(([e,{heading:t,short:n}],s)=>{let r=o=>ni(i.heading_deg,o,t),a=r(Bn(i));return{name:e,short:n,rigid:r(i.rigid_deg)??0,tip:a,slides:sn(i,t)?.slides??!1,way:i.ways?.[s]??null}})}function ap(i,e,t){let n=a=>Math.max(0,a)/t*200,s=[...Nh(i,n,3,9),O("line",{x1:n(i.rigid),x2:n(i.rigid),y1:0,y2:15})];e&&s.push(O("g",{class:"then"},...Nh(e,n,14,4)));let r=El(i).map((a,o)=>`${i.way?.budget_steps[o]?.name} ${St(a)}°`).join(", ");return O("svg",{viewBox:`0 0 200 ${e?19:15}`,class:e?"budget-bar both":"budget-bar",preserveAspectRatio:"none",role:"img","aria-label":r||"no budget yet"},...s)}function Nh(i,e,t,n){let s=[O("rect",{class:"keep",x:0,y:t,width:e(i.tip??i.rigid),height:n})],r=i.rigid;return El(i).forEach((a,o)=>{let[l,c]=[e(r+Math.min(0,a)),e(r+Math.max(0,a))];s.push(O("rect",{class:`loss${o}`,x:l,y:t,width:Math.max(0,c-l),height:n})),r+=a}),s}function El(i){return(i.way?.budget_steps??[]).slice(0,ta.length).map(e=>e.gained_deg??0)}function op(i){let e=nr(i.way),t=i.way?.uncertain_by.slice(0,4).map(s=>`${s.name} ±${G(s.pm_deg,2)}°`).join(", "),n=e?wl(e)?`likely ${G(i.tip)}`:`${G(e[0])} to ${G(e[1])}`:"…";return _("td",{class:"n range-cell",title:t?`95 %. Behind it: ${t}`:void 0},n)}function lp(i,e){let t=Yi(i.tip,nr(i.way));return _("td",{class:"n"},_("b",{},i.slides?`[${t}]`:t)," ",na(i.tip,e?.tip,1))}function cp(){let i=Tl(R.answers),e=ia(),t=e?Tl(e):[],n=Math.max(...[...i,...t].map(r=>Math.max(r.rigid,r.tip??0)))*1.02,s=r=>ta.map((a,o)=>_("td",{class:"n"},r.way?St(El(r)[o]??0):"…"));return _("table",{id:"budget"},_("caption",{},"Where the degrees go",e?_("span",{class:"soft"},`, thin bars: ${e.what}`):null),_("thead",{},_("tr",{},...["","stiff",...ta,"tips, 95 %"].map((r,a)=>_(r?"th":"td",r?{scope:"col",class:a?"n":""}:{},r)))),...i.map((r,a)=>_("tbody",{"data-case":r.name},_("tr",{},_("th",{scope:"row",rowspan:2},r.short),_("td",{class:"n"},G(r.rigid)),...s(r),lp(r,t[a]??null)),_("tr",{},_("td",{class:"bar-cell",colspan:ta.length+1},ap(r,t[a]??null,n)),op(r)))))}function hp(i){return i.outcome!=="too close to call"?`${i.outcome} first`:`too close to call, ${G(100*i.tips_first_share,0)} % tips`}function up(){let{surface:i,grip_range:e,slide_deg:t,ways:n}=R.answers,s=(a,o,l)=>o>a?` (${G(a,l)} to ${G(o,l)})`:"",r=Tl(R.answers);return _("p",{class:"text soft",id:"sliding"},`On ${i}, grip ${G(e.likely,2)}${s(e.low,e.high,2)}, it slides at ${G(t.likely)}°${s(t.low,t.high,1)}. `,n?`${r.map(a=>`${a.short}: ${hp(a.way)}`).join("; ")}. `:"",r.some(a=>a.slides)?"In brackets: it slides first, and would tip there against a rail.":"")}function dp(){let i=R.answers,e=R.view.heading,t=R.trying?void 0:i.ways?.find(c=>c.heading_deg===e),[n,s]=t?.goes_at_range_deg??[null,null],r=sn(i,e),a=ia(),o=Object.values(xt).find(c=>c.heading===e)?.short??`Turned ${G(e,0)}°`,l=a?sn(a,e)?.deg:void 0;ge(Se("readout"),_("span",{},`${o}: ${r?.slides?"slides":"tips"} at ${Yi(r?.deg??null,n===null||s===null?null:[n,s])}° `,na(r?.deg??null,l,1)),_("span",{},`${G(i.numbers.mass_g,0)} g `,na(i.numbers.mass_g,a?.numbers.mass_g,0)))}function Dh(){De(["shown","view"],()=>{R.answers&&dp()}),De("shown",()=>{R.answers&&ge(Se("block"),rp(),cp(),up())})}var bi=null,yi=null,Uh=0,sr=[];function wi(i){yi=i,clearTimeout(sa),bi===null&&fp()}async function fp(){for(;yi!==null;){let i=yi;yi=null;let e=bi=new AbortController,t=performance.now();try{let n=await ve.attempt(i);if(e.signal.aborted)return;Ml(n),sr.push(performance.now()-t),sr.length>400&&sr.shift(),clearTimeout(sa),sa=window.setTimeout(()=>{pp(i,e)},250)}catch(n){if(e.signal.aborted)return;if(!(n instanceof Be))throw n;if(n instanceof Kt)return Cn();if(n.status===409)return bi=null,yi=null,void kh(n,"what you were trying",null);Ne(n.sentences.slice(0,3).join(" "),"wrong")}}bi=null}var sa=0;async function pp(i,e){if(!(!R.trying||bi!==null||e.signal.aborted||yi!==null))try{let t=await ve.attempt(i,!0);R.trying&&bi===null&&yi===null&&!e.signal.aborted&&Ml(t)}catch(t){if(!(t instanceof Be))throw t}}function Oh(){clearTimeout(sa),bi?.abort(),bi=null,yi=null}async function Xt(i,e){return Oh(),gt(()=>ve.edit(i,e),e,()=>ve.edit(i,e))}var Fh=Promise.resolve(),Al=0,ra=0,aa=()=>Al>0;function gt(i,e,t){let n=ra;Al+=1;let s=Fh.then(()=>ra===n?mp(i,e,t):!1).finally(()=>{Al-=1});return Fh=s,s}async function mp(i,e,t){try{return nn(await i()),Ne(e?`${e[0].toUpperCase()}${e.slice(1)}.`:""),Se("notice").hidden=!0,!0}catch(n){if(!(n instanceof Be))throw n;return n instanceof Kt?(ra+=1,Cn()):n.status===409&&n.where!=="disk"?await kh(n,e,t??null):(Ne(n.sentences.slice(0,3).join(" "),"wrong"),Cn()),!1}}function Cn(){Oh(),nn(R.bench)}async function kh(i,e,t){ra+=1;let n=R.bench;try{nn(await ve.bench())}catch(a){if(!(a instanceof Be))throw a;return}let s=R.bench,r=[["Leave it as it is",()=>{}]];if(s.file!==n.file){r.unshift([`Put ${n.file} back on the bench`,()=>{gt(()=>ve.open(n.file),`on the bench: ${n.file}`)}]),Mi(`${s.file} is on the bench now, put there from another tab. Your last change was meant for ${n.file} and was not put down.`,r);return}t&&r.unshift([`Do mine on top: ${e}`,()=>{gt(()=>R.bench.file===n.file?t():Promise.reject(i),e)}]),Mi("This truck was changed in another tab or on disk. You see that state now; your last change was not put down.",r)}function Mi(i,e){let t=Se("notice");ge(t,_("p",{},i),...e.map(([n,s])=>_("button",{type:"button",onclick:()=>{t.hidden=!0,s()}},n))),t.hidden=!1,t.querySelector("button")?.focus()}function Bh(){De("bench",()=>{clearTimeout(Uh);let i=R.bench;Uh=window.setTimeout(()=>{gp(i)},i.answers.exact?400:120)})}async function gp(i){let e=()=>R.bench!==i,t=()=>{R.trying||(R.answers=i.answers,ti("shown"))};try{for(let s of[ve.exact,ve.ways]){if(e())return;if(s===ve.exact&&i.answers.exact)continue;let r=await s();if(e())return;i.answers=r,t()}if(i.before&&!(i.before.exact&&i.before.ways)){let s=await ve.reference();if(e())return;i.before=s,t()}let n=await ve.gains();if(e())return;i.answers=n,t()}catch(n){if(!(n instanceof Be)||n.status!==409&&n.status!==0)throw n}}function _s(i,e,t){let n="input, select, button",s=l=>[...l.querySelectorAll(n)],r=l=>{l&&(l.focus(),l instanceof HTMLInputElement&&l.select())},a=l=>{for(let c of i.querySelectorAll("[tabindex='0']"))c.tabIndex=-1;l.tabIndex=0};for(let l of s(i))l.tabIndex=-1;let o=i.querySelector(t.key?`[data-key="${CSS.escape(t.key)}"]`:"input")??i.querySelector(n);o&&a(o),i.addEventListener("focusin",l=>{a(l.target),t.key=l.target.getAttribute("data-key")??""}),i.addEventListener("input",l=>l.target.toggleAttribute("data-typing",!0));for(let l of["change","focusout"])i.addEventListener(l,c=>c.target.removeAttribute("data-typing"));i.addEventListener("keydown",l=>{let c=l.target,h=c.closest(e),u=s(h).indexOf(c);if(l.altKey||l.ctrlKey||l.metaKey)return;let d=l.key==="ArrowLeft"?-1:l.key==="ArrowRight"?1:0,f=l.key==="ArrowUp"?-1:l.key==="ArrowDown"?1:0;if(f){l.preventDefault();let p=f>0?h.nextElementSibling:h.previousElementSibling;p&&r(s(p)[Math.min(u,s(p).length-1)])}else d&&!c.hasAttribute("data-typing")&&(l.preventDefault(),r(s(h)[u+d]))})}var zh=i=>i.closest("[hidden]")===null;function an(i,e,t=0){let n=!1,s=0,r=()=>{clearTimeout(s),!(!n||!zh(i))&&(n=!1,e())};De("bench",()=>{n=!0,clearTimeout(s),s=window.setTimeout(r,t)}),i.addEventListener("open",r)}function Vh(i){Hh(Se("tabs"),Se("leaf"),i)}function Cl(i,e){return t=>{let n=_("div",{class:"subtabs",role:"tablist","aria-label":i});t.classList.add("several"),t.append(n),Hh(n,t,e)}}function Gh(...i){for(let e of i)document.getElementById(`tab-${e}`)?.click()}function Hh(i,e,t){let n=new Map,s=t.map((a,o)=>{let l=_("button",{type:"button",role:"tab",id:`tab-${a.id}`,onclick:()=>r(a.id)},a.name);return l.addEventListener("keydown",c=>{let h={ArrowRight:o+1,ArrowLeft:o-1,Home:0,End:t.length-1}[c.key];h!==void 0&&(c.preventDefault(),r(t[(h+t.length)%t.length].id,!0))}),i.append(l),l}),r=(a,o=!1)=>{t.forEach((l,c)=>{let h=s[c],u=l.id===a,d=n.get(l.id);if(h.setAttribute("aria-selected",String(u)),h.tabIndex=u?0:-1,d&&(d.hidden=!u),!!u)if(o&&h.focus(),d)for(let f of[d,...d.querySelectorAll('[role="tabpanel"]')])zh(f)&&f.dispatchEvent(new Event("open"));else{let f=_("div",{role:"tabpanel",id:`leaf-${a}`,"aria-labelledby":`tab-${a}`});e.append(f),n.set(a,f),h.setAttribute("aria-controls",f.id),l.make(f)}})};r(t[0].id)}function Wh(){let i=document.querySelector(".bench"),e=[...document.querySelectorAll(".places button")];for(let t of e)t.addEventListener("click",()=>{i.dataset.place=t.dataset.place;for(let n of e)n.setAttribute("aria-pressed",String(n===t))})}var Xh=[["side","Side slope"],["climb","Climb"],["descent","Descent"],["worst","Weakest way"]];function qh(i){let e=null,t=null,n="",s="side",r=_("div",{class:"total",id:"change-total"}),a=_("div",{id:"changes"}),o={key:""},l=_("select",{id:"change-order","aria-label":"Best first for"},...Xh.map(([u,d])=>_("option",{value:u},d)));l.addEventListener("change",()=>{s=l.value,c()}),i.append(_("div",{class:"bar"},_("label",{for:"change-order"},"Best first for"),l),r,a);let c=()=>{if(ge(r,...$h(e)),!e)return ge(a,_("p",{class:"text soft"},"Reading the change file…"));if(e.changes.length===0)return ge(a,_("p",{class:"text"},`There is no ${e.file} beside this truck. It lists what you could do, with prices: begin one under "The list", where what you edited by hand becomes a change as well.`));let u=f=>t?.changes[f.name]?.gain_deg[s]??-99,d=_("div",{},...[...e.changes].sort((f,p)=>u(p)-u(f)).map(f=>vp(f,e,t)));_s(d,".change",o),ge(a,d)},h=async()=>{try{if(e=await ve.changes(),c(),e.changes.length===0)return;let u=`${R.bench.file} ${R.bench.answers.surface} ${e.stamp}`;if(t&&u===n&&Object.keys(R.bench.fitted).length)return;n=u,t=await ve.bought(),c()}catch(u){if(!(u instanceof Be))throw u;u.status!==409&&u.status!==0&&Ne(u.message,"wrong")}};De("bench",c),an(i,()=>{h()},250),i.addEventListener("open",()=>{h()}),De("shown",()=>ge(r,...$h(e))),c(),h()}function $h(i){let{fitted:e,before:t,answers:n}=R.bench,s=Object.keys(e),r=(i?.changes??[]).reduce((o,l)=>o+l.price*(e[l.name]??0),0),a=[_("span",{},s.length?`${s.length} fitted, `:"Nothing fitted, ",_("b",{},qi(r,i?.currency??"")))];if(t){a.push(_("span",{},`${St(n.numbers.mass_g-t.numbers.mass_g,0)} g`));for(let{heading:o,short:l}of Object.values(xt)){let c=(f,p)=>ni(f.heading_deg,p,o),[h,u]=[c(n,Bn(n)),c(t,Bn(t))],d=h!==null&&u!==null?h-u:(c(n,n.rigid_deg)??0)-(c(t,t.rigid_deg)??0);a.push(_("span",{class:"one-gain"},`${l} `,_("b",{class:d>.05?"gain-up":d<-.05?"gain-down":""},`${St(d,1)}°`)))}a.push(_("span",{class:"soft"},`against ${_p(t.what)}`))}return s.length&&a.push(_("button",{type:"button",id:"fit-none","data-key":"fit-none",onclick:()=>{Yh({},"took all changes off")}},"Take all off")),a}var _p=i=>i==="before these changes"?"the truck before":i.startsWith("as ")?`the truck ${i}`:i;function Yh(i,e){return gt(()=>ve.fit(i),e)}function vp(i,e,t){let n=R.bench.fitted[i.name]??0,s=t?.changes[i.name],r=`change-${i.name.replace(/\W+/g,"-")}`,a=u=>{let d={...R.bench.fitted};if(u>0?d[i.name]=u:delete d[i.name],u>0&&i.group)for(let f of e.changes)f.group===i.group&&f.name!==i.name&&delete d[f.name];if(u>0)for(let f of i.requires)d[f]??=1;Yh(d,u>0?`fitted ${i.name}`:`took ${i.name} off`).then(f=>{f||(o.checked=n>0)})},o=_("input",{type:"checkbox",id:r,"data-key":r,checked:n>0,role:"switch"});o.addEventListener("change",()=>a(o.checked?1:0));let l=null;i.most>1&&(l=_("input",{type:"number",min:0,max:i.most,step:1,value:n,"aria-label":`How many of ${i.label}`,"data-key":`${r}-many`}),l.addEventListener("change",()=>a(Math.max(0,Math.min(i.most,Math.round(Number(l.value)))))));let c=s?Xh.slice(0,3).map(([u,d])=>{let f=s.gain_deg[u]??null,v=!s.turns[u]&&Math.abs(f??0)>2*(s.gain_sd_deg[u]??0)&&Math.abs(f??0)>=.05?(f??0)>0?"gain-up":"gain-down":"";return _("span",{},`${d} `,_("b",{class:v},f===null?"–":`${St(f,2)}°`))}):[],h=t?.impossible[i.name];return _("div",{class:`change${n>0?" on":""}`,"data-change":i.name},o,_("label",{for:r},i.label),_("span",{class:"price"},l,l?" × ":"",qi(i.price,e.currency)),_("div",{class:"buys"},...t?c:[_("span",{class:"soft"},"working out what it buys…")],...(s?.side??[]).map(u=>_("span",{class:"soft"},`${u.what} ${St(u.by,Math.abs(u.by)<10?1:0)} ${u.unit}`))),s?.words||h||i.requires.length?_("p",{class:"note"},[h??"",s?.words?`${s.words[0].toUpperCase()}${s.words.slice(1)}.`:"",i.requires.length?`Needs ${i.requires.join(", ")}.`:""].filter(Boolean).join(" ")):null)}async function Zh(i,e,t){let{width:n,height:s}=i.sheet,r=Math.max(2,Math.round(i.seconds*12)+1),a=[];for(let u=0;u<r;u++){if(t())return null;i.draw(u*i.seconds/(r-1));let d=await new Promise(f=>i.sheet.toBlob(f,"image/webp",.72));if(!d||d.type!=="image/webp")throw new Error("This browser cannot write such a clip.");a.push(xp(new Uint8Array(await d.arrayBuffer()),n,s,u===r-1?1500:Math.round(1e3/12))),e((u+1)/r)}let o=new Uint8Array(10);o[0]=2,rr(o,4,n-1),rr(o,7,s-1);let l=[Rl("VP8X",o),Rl("ANIM",new Uint8Array(6)),...a],c=l.reduce((u,d)=>u+d.length,4),h=new Uint8Array(12);return h.set(Pl("RIFF")),new DataView(h.buffer).setUint32(4,c,!0),h.set(Pl("WEBP"),8),new Blob([h,...l],{type:"image/webp"})}function Jh(){return typeof MediaRecorder>"u"?null:["video/mp4;codecs=avc1.42E01F","video/mp4"].find(i=>MediaRecorder.isTypeSupported(i))??null}async function Kh(i,e,t,n){let s=i.sheet.captureStream(24),r=new MediaRecorder(s,{mimeType:e,videoBitsPerSecond:25e5}),a=[];r.ondataavailable=c=>a.push(c.data);let o=new Promise(c=>{r.onstop=()=>c()});i.draw(0),r.start();let l=performance.now();for(;;){let c=Math.min(i.seconds,(performance.now()-l)/1e3);if(i.draw(c),t(c/i.seconds),c>=i.seconds||n())break;await new Promise(h=>requestAnimationFrame(h))}r.stop(),await o;for(let c of s.getTracks())c.stop();return n()?null:new Blob(a,{type:e.split(";")[0]})}function xp(i,e,t,n){let s=[],r=new DataView(i.buffer,i.byteOffset);for(let o=12;o+8<=i.length;){let l=String.fromCharCode(...i.subarray(o,o+4)),c=r.getUint32(o+4,!0),h=o+8+c+c%2;(l==="VP8 "||l==="VP8L"||l==="ALPH")&&s.push(i.subarray(o,h)),o=h}let a=new Uint8Array(16);return rr(a,6,e-1),rr(a,9,t-1),rr(a,12,n),a[15]=2,Rl("ANMF",yp([a,...s]))}function Rl(i,e){let t=new Uint8Array(8+e.length+e.length%2);return t.set(Pl(i)),new DataView(t.buffer).setUint32(4,e.length,!0),t.set(e,8),t}function yp(i){let e=new Uint8Array(i.reduce((n,s)=>n+s.length,0)),t=0;for(let n of i)e.set(n,t),t+=n.length;return e}var Pl=i=>new Uint8Array([...i].map(e=>e.charCodeAt(0))),rr=(i,e,t)=>i.set([t&255,t>>8&255,t>>16&255],e);function vs(i,e){let{along_mm:t,places_mm:n,heading_deg:s}=i,r=0;for(;r<t.length-2&&t[r+1]<e;)r++;let a=(e-t[r])/(t[r+1]-t[r]||1),o=(c,h,u)=>c+(h-c)*u,l=Math.max(0,Math.min(1,a));return{place:[o(n[r][0],n[r+1][0],a),o(n[r][1],n[r+1][1],a)],heading:o(s[r],s[r+1],l)*Math.PI/180}}var bp=(i,e,t)=>({at_mm:i,turned_deg:e,angle_deg:t,flank_mm:220,top_mm:140,width_mm:560}),ar={"Along the bank, over stones":{slope_deg:22,speed_mm_per_s:250,points_mm:[[-950,40],[-320,0],[300,70],[950,0]],stones:[{at_mm:[-330,92],height_mm:18},{at_mm:[150,-34],height_mm:22},{at_mm:[560,132],height_mm:26}],ramps:[]},"Askew over a ramp":{slope_deg:12,speed_mm_per_s:250,points_mm:[[-930,-160],[0,0],[930,160]],stones:[{at_mm:[-420,0],height_mm:16}],ramps:[bp([120,20],-65,18)]},"Up the switchback":{slope_deg:24,speed_mm_per_s:350,points_mm:[[-850,-360],[250,-300],[640,-40],[250,230],[-700,300]],stones:[{at_mm:[-200,-250],height_mm:20},{at_mm:[0,350],height_mm:24}],ramps:[]}};var[Si,xs]=[1150,430],Mp=110,oa=class{constructor(e,t){this.course=e;this.changed=t;let n=Array.from({length:9},(s,r)=>`M${-Si} ${(r-4)*100}H${Si}`).join("");this.ground.append(O("path",{class:"contour",d:n}),O("text",{class:"hill-word",x:-Si+20,y:-xs+50},"uphill"),O("text",{class:"hill-word",x:-Si+20,y:xs-22},"downhill")),this.svg.append(this.ground,this.line,this.things,this.marks,this.cart),this.root=_("div",{},this.svg),this.svg.addEventListener("pointerdown",s=>this.down(s)),this.svg.addEventListener("pointermove",s=>this.move(s));for(let s of["pointerup","pointercancel"])this.svg.addEventListener(s,()=>this.up());this.svg.addEventListener("keydown",s=>this.key(s)),this.draw()}course;changed;root;svg=O("svg",{class:"hill",viewBox:`${-Si} ${-xs} ${2*Si} ${2*xs}`,role:"group","aria-label":"The hill from above, uphill at the top"});ground=O("g");things=O("g");line=O("path",{class:"way"});marks=O("g");cart=O("g",{class:"cart",visibility:"hidden"},O("path",{d:"M-70 -40H60L95 0L60 40H-70Z"}));form=_("div",{class:"bar hill-form"});picked={kind:"points_mm",index:0};held=!1;sketch=null;drawing=!1;take(e){this.course=e,this.picked={kind:"points_mm",index:0},this.draw()}show(e,t){this.line.setAttribute("d",Il(e?e.places_mm:this.course.points_mm)),this.marks.replaceChildren(...(e?t:[]).map(({whose:n,event:s})=>{let{place:[r,a],heading:o}=vs(e,s.at_mm),l=n==="truck"?34:-34;return O("g",{class:`mark ${s.what.replace(" ","-")} ${n}`,transform:`translate(${r+l*-Math.cos(o)} ${-(a+l*-Math.sin(o))})`},O("circle",{r:s.what==="lifts"?11:20}),O("title",{},`${n==="truck"?"":"reference: "}${s.wheel??"it"} ${s.what}`))}))}follow(e,t){if(this.cart.setAttribute("visibility",e?"visible":"hidden"),!e)return;let{place:[n,s],heading:r}=vs(e,t);this.cart.setAttribute("transform",`translate(${n.toFixed(1)} ${(-s).toFixed(1)}) rotate(${(-90-r*180/Math.PI).toFixed(1)})`)}begin(){this.drawing=!0,this.svg.classList.add("drawing")}add(e){let{points_mm:t}=this.course,n=t[Math.floor(t.length/2)];e==="stones"?this.course.stones.push({at_mm:[n[0]+60,n[1]+88],height_mm:20}):this.course.ramps.push({at_mm:[...n],turned_deg:-90,angle_deg:15,flank_mm:220,top_mm:140,width_mm:560}),this.pick({kind:e,index:this.course[e].length-1}),this.changed(!0)}all(){return["points_mm","stones","ramps"].flatMap(e=>this.course[e].map((t,n)=>({kind:e,index:n})))}place({kind:e,index:t}){let s=this.course[e][t];return Array.isArray(s)?s:s.at_mm}put({kind:e,index:t},n){let s=[Math.max(-Si,Math.min(Si,Math.round(n[0]))),Math.max(-xs,Math.min(xs,Math.round(n[1])))];e==="points_mm"?this.course.points_mm[t]=s:this.course[e][t].at_mm=s}pick(e){this.picked=e,this.draw()}words({kind:e,index:t}){return e==="points_mm"?`Point ${t+1} of the way`:e==="stones"?`Stone ${t+1}`:`Ramp ${t+1}`}draw(){let e=document.activeElement===this.things.querySelector("[tabindex='0']"),t=[...this.all()].sort((n,s)=>(n.kind==="ramps"?0:1)-(s.kind==="ramps"?0:1));this.things.replaceChildren(...t.map(n=>{let[s,r]=this.place(n),a=n.kind===this.picked.kind&&n.index===this.picked.index,o=O("g",{role:"slider",class:`thing ${n.kind}${a?" picked":""}`,tabindex:a?0:-1,"data-thing":`${n.kind} ${n.index}`,transform:`translate(${s} ${-r})`,"aria-valuenow":0,"aria-valuetext":`${G(s,0)} mm to the right, ${G(r,0)} up the hill`,"aria-label":`${this.words(n)}: arrow keys move it, Page Down goes to the next, Delete takes it away`});if(n.kind==="points_mm")o.append(O("circle",{r:46,class:"thing-reach"}),O("circle",{r:20}));else if(n.kind==="stones"){let{height_mm:l}=this.course.stones[n.index];o.append(O("circle",{r:52,class:"thing-reach"}),O("ellipse",{rx:18+l*.8,ry:16+l*.6}),O("text",{y:-30-l*.5},`${G(l,0)}`))}else o.append(this.ramp(n.index));return o})),e&&this.things.querySelector("[tabindex='0']")?.focus(),this.drawForm(),this.held||this.show(null,[])}ramp(e){let t=this.course.ramps[e],[n,s,r]=[t.flank_mm+t.top_mm/2,t.top_mm/2,t.width_mm/2];return O("g",{transform:`rotate(${-t.turned_deg})`},O("rect",{x:-r,y:-n,width:2*r,height:2*n}),O("path",{d:`M${-r} ${-s}H${r}M${-r} ${s}H${r}M0 ${n-20}V${s+30}M-26 ${s+62}L0 ${s+28}L26 ${s+62}`}))}drawForm(){let{kind:e,index:t}=this.picked,n=(o,l,c,h,u,d)=>{let f=_("input",{type:"number","data-key":`hill-${l}`,min:h,max:u,step:1,value:d[l]});return f.addEventListener("change",()=>f.checkValidity()?(d[l]=Number(f.value),this.draw(),this.changed(!0),!0):f.reportValidity()),_("label",{},`${o} `,f,` ${c}`)},s=[];if(e==="stones"&&s.push(n("height","height_mm","mm",2,80,this.course.stones[t])),e==="ramps"){let o=this.course.ramps[t];s.push(n("steep","angle_deg","°",1,45,o),n("up points, from uphill to the left,","turned_deg","°",-180,180,o))}let r=_("button",{type:"button","data-key":"hill-remove",disabled:e==="points_mm"&&this.course.points_mm.length<3,onclick:()=>this.remove()},"Take it away"),a=e==="points_mm"?_("button",{type:"button","data-key":"hill-more",onclick:()=>this.split()},"A point after it"):null;ge(this.form,_("b",{},this.words(this.picked)),...s,a,r)}remove(){let{kind:e,index:t}=this.picked;e==="points_mm"&&this.course.points_mm.length<3||(this.course[e].splice(t,1),this.pick({kind:"points_mm",index:e==="points_mm"?Math.max(0,t-1):0}),this.changed(!0))}split(){let{index:e}=this.picked,{points_mm:t}=this.course,[n,s]=e+1<t.length?[t[e],t[e+1]]:[t[e-1],t[e]];t.splice(e+1<t.length?e+1:e,0,[(n[0]+s[0])/2,(n[1]+s[1])/2]),this.pick({kind:"points_mm",index:e+1}),this.changed(!0)}point(e){let t=new DOMPoint(e.clientX,e.clientY).matrixTransform(this.svg.getScreenCTM().inverse());return[t.x,-t.y]}down(e){if(e.preventDefault(),this.svg.setPointerCapture(e.pointerId),this.drawing){this.sketch=[this.point(e)];return}let t=e.target.closest("[data-thing]")?.getAttribute("data-thing");if(!t)return;let[n,s]=t.split(" ");this.pick({kind:n,index:Number(s)}),this.held=!0,this.things.querySelector("[tabindex='0']")?.focus({preventScroll:!0})}move(e){let t=this.point(e);if(this.sketch){let n=this.sketch[this.sketch.length-1];Math.hypot(t[0]-n[0],t[1]-n[1])>Mp&&this.sketch.push(t),this.line.setAttribute("d",Il([...this.sketch,t]))}else this.held&&(this.put(this.picked,t),this.draw(),this.line.setAttribute("d",Il(this.course.points_mm)),this.changed(!1))}up(){let e=this.sketch;if(this.sketch=null,e)this.drawing=!1,this.svg.classList.remove("drawing"),e.length>1&&(this.course.points_mm=e.slice(0,60).map(([t,n])=>[Math.round(t),Math.round(n)])),this.pick({kind:"points_mm",index:0});else if(!this.held)return;this.held=!1,this.changed(!0)}key(e){if(!e.target.hasAttribute("data-thing"))return;let t=e.shiftKey?50:10,n=this.all(),s=n.findIndex(l=>l.kind===this.picked.kind&&l.index===this.picked.index),r=l=>this.pick(n[(s+l+n.length)%n.length]),a=(l,c)=>{let[h,u]=this.place(this.picked);this.put(this.picked,[h+l,u+c]),this.draw(),this.changed(!0)},o={ArrowLeft:()=>a(-t,0),ArrowRight:()=>a(t,0),ArrowUp:()=>a(0,t),ArrowDown:()=>a(0,-t),PageDown:()=>r(1),PageUp:()=>r(-1),Delete:()=>this.remove()};o[e.key]&&(e.preventDefault(),o[e.key]())}},Il=i=>`M${i.map(([e,t])=>`${e.toFixed(0)} ${(-t).toFixed(0)}`).join("L")}`;var[Ll,or,la,Nl,ca]=[600,150,34,22,10],ha=class{root;svg=O("svg",{class:"course-strip",viewBox:`0 0 ${Ll} ${or}`,role:"img"});cursor=O("path",{class:"strip-now"});words=_("p",{class:"text soft strip-words"});x=()=>0;constructor(){let e=s=>O("svg",{viewBox:"0 0 10 10","aria-hidden":"true"},O("g",{class:`mark ${s}`},O("circle",{cx:5,cy:5,r:s==="lifts"?3:5}))),t=s=>O("svg",{viewBox:"0 0 24 10",class:"long","aria-hidden":"true"},O("path",{class:`strip-${s}`,d:"M0 5H24"})),n=[[t("truck"),"the truck"],[t("reference"),"the reference"],[e("lifts"),"a wheel lifts"],[e("slides"),"slides, is stuck"],[e("goes-over"),"goes over"]];this.root=_("div",{},_("h3",{},"In hand, standing there"),this.svg,_("ul",{class:"strip-key"},...n.map(([s,r])=>_("li",{},s,r))),this.words)}draw(e,t){let{along_mm:n}=e.way,s=n[n.length-1],r=[["reference",e.reference],["truck",e.truck]].filter(m=>!!m[1]),a=r.flatMap(([,m])=>m.in_hand_deg).filter(m=>m!==null),[o,l]=[Math.min(0,Math.floor(Math.min(...a)/5)*5),Math.max(10,Math.ceil(Math.max(...a)/5)*5)],c=this.x=m=>la+m/s*(Ll-la-8),h=m=>ca+(l-m)/(l-o)*(or-ca-Nl),u=l-o>40?20:l-o>20?10:5,d=[];for(let m=Math.ceil(o/u)*u;m<=l;m+=u)d.push(O("path",{class:m===0?"strip-zero":"strip-grid",d:`M${la} ${h(m)}H${Ll-8}`}),O("text",{class:"strip-text",x:la-5,y:h(m)+3.5,"text-anchor":"end"},`${G(m,0)}°`));for(let m=0;m<=s;m+=500)d.push(O("text",{class:"strip-text",x:c(m),y:or-6,"text-anchor":m===0?"start":"middle"},m===0?"start":`${m} mm`));let f=r.map(([m,g])=>O("path",{class:`strip-${m}`,d:wp(g.in_hand_deg.map((M,C)=>M===null?null:[c(n[C]),h(M)]))})),p=t.map(({whose:m,event:g})=>O("g",{class:`mark ${g.what.replace(" ","-")} ${m}`},O("circle",{cx:c(Math.max(0,g.at_mm)),cy:m==="truck"?or-Nl-4:ca+4,r:g.what==="lifts"?3.5:6})));this.svg.replaceChildren(...d,...f,...p,this.cursor);let v=r.map(([m,g])=>{let M=g.in_hand_deg.reduce((C,w,E)=>w!==null&&w<(g.in_hand_deg[C]??1/0)?E:C,0);return`${m==="truck"?"The truck":"the reference"} has least at ${G(n[M],0)} mm: ${G(g.in_hand_deg[M])}° (ground ${G(g.slope_deg[M])}°, turned ${G((g.local_heading_deg[M]+360)%360,0)}°)`});this.words.textContent=`${v.reverse().join("; ")}. The ground's own slope under the middle of the truck; stones are left out here.`,this.svg.setAttribute("aria-label",`Degrees in hand along the course. ${this.words.textContent}`)}now(e){this.cursor.setAttribute("d",e===null?"":`M${this.x(Math.max(0,e)).toFixed(1)} ${ca}V${or-Nl}`)}};function wp(i){let e=!1;return i.map(t=>{if(!t)return e=!1,"";let n=`${e?"L":"M"}${t[0].toFixed(1)} ${t[1].toFixed(1)}`;return e=!0,n}).join("")}/**
 * @license
 * Copyright 2010-2026 Three.js Authors
 * SPDX-License-Identifier: MIT
 */var Tu=0,cc=1,Eu=2;var Rr=1,Au=2,Hs=3,Bi=0,Zt=1,Wn=2,rs=0,Ws=1,hc=2,uc=3,dc=4,Cu=5;var as=100,Ru=101,Pu=102,Iu=103,Lu=104,Nu=200,Du=201,Uu=202,Fu=203,fc=204,pc=205,Ou=206,ku=207,Bu=208,zu=209,Vu=210,Gu=211,Hu=212,Wu=213,$u=214,Ua=0,Fa=1,Oa=2,Ds=3,ka=4,Ba=5,za=6,Va=7,mc=0,Xu=1,qu=2,$n=0,gc=1,_c=2,vc=3,xc=4,yc=5,bc=6,Mc=7;var wc=300,os=301,$s=302,mo=303,go=304,Ga=1e3,Vn=1001,Ha=1002,Ut=1003,Yu=1004;var Pr=1005;var Yt=1006,_o=1007;var ui=1008;var pn=1009,Sc=1010,Tc=1011,Xs=1012,vo=1013,Dn=1014,Un=1015,Fn=1016,xo=1017,yo=1018,ls=1020,Ec=35902,Ac=35899,Cc=1021,Rc=1022,On=1023,ci=1026,di=1027,Pc=1028,bo=1029,zi=1030,Mo=1031;var wo=1033,Ir=33776,Lr=33777,Nr=33778,Dr=33779,So=35840,To=35841,Eo=35842,Ao=35843,Co=36196,Ro=37492,Po=37496,Io=37488,Lo=37489,Ur=37490,No=37491,Do=37808,Uo=37809,Fo=37810,Oo=37811,ko=37812,Bo=37813,zo=37814,Vo=37815,Go=37816,Ho=37817,Wo=37818,$o=37819,Xo=37820,qo=37821,Yo=36492,Zo=36494,Jo=36495,Ko=36283,jo=36284,Fr=36285,Qo=36286;var pr=2300,Wa=2301,Na=2302,nc=2303,ic=2400,sc=2401,rc=2402;var Zu=3200;var Ic=0,Ju=1,fi="",cn="srgb",mr="srgb-linear",gr="linear",it="srgb";var Da=7680;var Ku=519,ju=512,Qu=513,ed=514,Lc=515,td=516,nd=517,Nc=518,Dc=519,id=35044;var Uc="300 es",bn=2e3,_r=2001;function Sp(i){for(let e=i.length-1;e>=0;--e)if(i[e]>=65535)return!0;return!1}function Tp(i){return ArrayBuffer.isView(i)&&!(i instanceof DataView)}function vr(i){return document.createElementNS("http://www.w3.org/1999/xhtml",i)}function sd(){let i=vr("canvas");return i.style.display="block",i}var jh={},Us=null;function Fc(...i){let e="THREE."+i.shift();Us?Us("log",e,...i):console.log(e,...i)}function rd(i){let e=i[0];if(typeof e=="string"&&e.startsWith("TSL:")){let t=i[1];t&&t.isStackTrace?i[0]+=" "+t.getLocation():i[1]='Stack trace not available. Enable "THREE.Node.captureStackTrace" to capture stack traces.'}return i}function Oe(...i){i=rd(i);let e="THREE."+i.shift();if(Us)Us("warn",e,...i);else{let t=i[0];t&&t.isStackTrace?console.warn(t.getError(e)):console.warn(e,...i)}}function ze(...i){i=rd(i);let e="THREE."+i.shift();if(Us)Us("error",e,...i);else{let t=i[0];t&&t.isStackTrace?console.error(t.getError(e)):console.error(e,...i)}}function fr(...i){let e=i.join(" ");e in jh||(jh[e]=!0,Oe(...i))}function ad(i,e,t){return new Promise(function(n,s){function r(){switch(i.clientWaitSync(e,i.SYNC_FLUSH_COMMANDS_BIT,0)){case i.WAIT_FAILED:s();break;case i.TIMEOUT_EXPIRED:setTimeout(r,t);break;default:n()}}setTimeout(r,t)})}var od={[Ua]:Ua,[Oa]:za,[ka]:ka,[Ds]:Ba,[Fa]:Fa,[za]:Oa,[Va]:Va,[Ba]:Ds},Gn=class{addEventListener(e,t){this._listeners===void 0&&(this._listeners={});let n=this._listeners;n[e]===void 0&&(n[e]=[]),n[e].indexOf(t)===-1&&n[e].push(t)}hasEventListener(e,t){let n=this._listeners;return n===void 0?!1:n[e]!==void 0&&n[e].indexOf(t)!==-1}removeEventListener(e,t){let n=this._listeners;if(n===void 0)return;let s=n[e];if(s!==void 0){let r=s.indexOf(t);r!==-1&&s.splice(r,1)}}dispatchEvent(e){let t=this._listeners;if(t===void 0)return;let n=t[e.type];if(n!==void 0){e.target=this;let s=n.slice(0);for(let r=0,a=s.length;r<a;r++)s[r].call(this,e);e.target=null}}},Vt=["00","01","02","03","04","05","06","07","08","09","0a","0b","0c","0d","0e","0f","10","11","12","13","14","15","16","17","18","19","1a","1b","1c","1d","1e","1f","20","21","22","23","24","25","26","27","28","29","2a","2b","2c","2d","2e","2f","30","31","32","33","34","35","36","37","38","39","3a","3b","3c","3d","3e","3f","40","41","42","43","44","45","46","47","48","49","4a","4b","4c","4d","4e","4f","50","51","52","53","54","55","56","57","58","59","5a","5b","5c","5d","5e","5f","60","61","62","63","64","65","66","67","68","69","6a","6b","6c","6d","6e","6f","70","71","72","73","74","75","76","77","78","79","7a","7b","7c","7d","7e","7f","80","81","82","83","84","85","86","87","88","89","8a","8b","8c","8d","8e","8f","90","91","92","93","94","95","96","97","98","99","9a","9b","9c","9d","9e","9f","a0","a1","a2","a3","a4","a5","a6","a7","a8","a9","aa","ab","ac","ad","ae","af","b0","b1","b2","b3","b4","b5","b6","b7","b8","b9","ba","bb","bc","bd","be","bf","c0","c1","c2","c3","c4","c5","c6","c7","c8","c9","ca","cb","cc","cd","ce","cf","d0","d1","d2","d3","d4","d5","d6","d7","d8","d9","da","db","dc","dd","de","df","e0","e1","e2","e3","e4","e5","e6","e7","e8","e9","ea","eb","ec","ed","ee","ef","f0","f1","f2","f3","f4","f5","f6","f7","f8","f9","fa","fb","fc","fd","fe","ff"];var Dl=Math.PI/180,$a=180/Math.PI;function Or(){let i=Math.random()*4294967295|0,e=Math.random()*4294967295|0,t=Math.random()*4294967295|0,n=Math.random()*4294967295|0;return(Vt[i&255]+Vt[i>>8&255]+Vt[i>>16&255]+Vt[i>>24&255]+"-"+Vt[e&255]+Vt[e>>8&255]+"-"+Vt[e>>16&15|64]+Vt[e>>24&255]+"-"+Vt[t&63|128]+Vt[t>>8&255]+"-"+Vt[t>>16&255]+Vt[t>>24&255]+Vt[n&255]+Vt[n>>8&255]+Vt[n>>16&255]+Vt[n>>24&255]).toLowerCase()}function Qe(i,e,t){return Math.max(e,Math.min(t,i))}function Ep(i,e){return(i%e+e)%e}function Ul(i,e,t){return(1-t)*i+t*e}function ld(i){return Math.pow(2,Math.floor(Math.log(i)/Math.LN2))}function Oc(i){switch(i.constructor){case Uint32Array:return 4294967295;case Uint16Array:return 65535;case Uint8Array:case Uint8ClampedArray:return 255;case Int32Array:return 2147483647;case Int16Array:return 32767;case Int8Array:return 127;default:return}}function Ap(i,e){if(e.constructor===Float32Array)return i;let t=Oc(e);if(t===void 0)throw new Error("THREE.MathUtils: Invalid component type.");return Math.max(i/t,-1)}function Cp(i,e){if(e.constructor===Float32Array)return i;let t=Oc(e);if(t===void 0)throw new Error("THREE.MathUtils: Invalid component type.");return Math.round(i*t)}var et=class{static{this.prototype.isVector2=!0}constructor(e=0,t=0){this.x=e,this.y=t}get width(){return this.x}set width(e){this.x=e}get height(){return this.y}set height(e){this.y=e}set(e,t){return this.x=e,this.y=t,this}setScalar(e){return this.x=e,this.y=e,this}setX(e){return this.x=e,this}setY(e){return this.y=e,this}setComponent(e,t){switch(e){case 0:this.x=t;break;case 1:this.y=t;break;default:throw new Error("THREE.Vector2: index is out of range: "+e)}return this}getComponent(e){switch(e){case 0:return this.x;case 1:return this.y;default:throw new Error("THREE.Vector2: index is out of range: "+e)}}clone(){return new this.constructor(this.x,this.y)}copy(e){return this.x=e.x,this.y=e.y,this}add(e){return this.x+=e.x,this.y+=e.y,this}addScalar(e){return this.x+=e,this.y+=e,this}addVectors(e,t){return this.x=e.x+t.x,this.y=e.y+t.y,this}addScaledVector(e,t){return this.x+=e.x*t,this.y+=e.y*t,this}sub(e){return this.x-=e.x,this.y-=e.y,this}subScalar(e){return this.x-=e,this.y-=e,this}subVectors(e,t){return this.x=e.x-t.x,this.y=e.y-t.y,this}multiply(e){return this.x*=e.x,this.y*=e.y,this}multiplyScalar(e){return this.x*=e,this.y*=e,this}divide(e){return this.x/=e.x,this.y/=e.y,this}divideScalar(e){return this.multiplyScalar(1/e)}applyMatrix3(e){let t=this.x,n=this.y,s=e.elements;return this.x=s[0]*t+s[3]*n+s[6],this.y=s[1]*t+s[4]*n+s[7],this}min(e){return this.x=Math.min(this.x,e.x),this.y=Math.min(this.y,e.y),this}max(e){return this.x=Math.max(this.x,e.x),this.y=Math.max(this.y,e.y),this}clamp(e,t){return this.x=Qe(this.x,e.x,t.x),this.y=Qe(this.y,e.y,t.y),this}clampScalar(e,t){return this.x=Qe(this.x,e,t),this.y=Qe(this.y,e,t),this}clampLength(e,t){let n=this.length();return this.divideScalar(n||1).multiplyScalar(Qe(n,e,t))}floor(){return this.x=Math.floor(this.x),this.y=Math.floor(this.y),this}ceil(){return this.x=Math.ceil(this.x),this.y=Math.ceil(this.y),this}round(){return this.x=Math.round(this.x),this.y=Math.round(this.y),this}roundToZero(){return this.x=Math.trunc(this.x),this.y=Math.trunc(this.y),this}negate(){return this.x=-this.x,this.y=-this.y,this}dot(e){return this.x*e.x+this.y*e.y}cross(e){return this.x*e.y-this.y*e.x}lengthSq(){return this.x*this.x+this.y*this.y}length(){return Math.sqrt(this.x*this.x+this.y*this.y)}manhattanLength(){return Math.abs(this.x)+Math.abs(this.y)}normalize(){return this.divideScalar(this.length()||1)}angle(){return Math.atan2(-this.y,-this.x)+Math.PI}angleTo(e){let t=Math.sqrt(this.lengthSq()*e.lengthSq());if(t===0)return Math.PI/2;let n=this.dot(e)/t;return Math.acos(Qe(n,-1,1))}distanceTo(e){return Math.sqrt(this.distanceToSquared(e))}distanceToSquared(e){let t=this.x-e.x,n=this.y-e.y;return t*t+n*n}manhattanDistanceTo(e){return Math.abs(this.x-e.x)+Math.abs(this.y-e.y)}setLength(e){return this.normalize().multiplyScalar(e)}lerp(e,t){return this.x+=(e.x-this.x)*t,this.y+=(e.y-this.y)*t,this}lerpVectors(e,t,n){return this.x=e.x+(t.x-e.x)*n,this.y=e.y+(t.y-e.y)*n,this}equals(e){return e.x===this.x&&e.y===this.y}fromArray(e,t=0){return this.x=e[t],this.y=e[t+1],this}toArray(e=[],t=0){return e[t]=this.x,e[t+1]=this.y,e}fromBufferAttribute(e,t){return this.x=e.getX(t),this.y=e.getY(t),this}rotateAround(e,t){let n=Math.cos(t),s=Math.sin(t),r=this.x-e.x,a=this.y-e.y;return this.x=r*n-a*s+e.x,this.y=r*s+a*n+e.y,this}random(){return this.x=Math.random(),this.y=Math.random(),this}*[Symbol.iterator](){yield this.x,yield this.y}},Mn=class{constructor(e=0,t=0,n=0,s=1){this.isQuaternion=!0,this._x=e,this._y=t,this._z=n,this._w=s}static slerpFlat(e,t,n,s,r,a,o){let l=n[s+0],c=n[s+1],h=n[s+2],u=n[s+3],d=r[a+0],f=r[a+1],p=r[a+2],v=r[a+3];if(u!==v||l!==d||c!==f||h!==p){let m=l*d+c*f+h*p+u*v;m<0&&(d=-d,f=-f,p=-p,v=-v,m=-m);let g=1-o;if(m<.9995){let M=Math.acos(m),C=Math.sin(M);g=Math.sin(g*M)/C,o=Math.sin(o*M)/C,l=l*g+d*o,c=c*g+f*o,h=h*g+p*o,u=u*g+v*o}else{l=l*g+d*o,c=c*g+f*o,h=h*g+p*o,u=u*g+v*o;let M=1/Math.sqrt(l*l+c*c+h*h+u*u);l*=M,c*=M,h*=M,u*=M}}e[t]=l,e[t+1]=c,e[t+2]=h,e[t+3]=u}static multiplyQuaternionsFlat(e,t,n,s,r,a){let o=n[s],l=n[s+1],c=n[s+2],h=n[s+3],u=r[a],d=r[a+1],f=r[a+2],p=r[a+3];return e[t]=o*p+h*u+l*f-c*d,e[t+1]=l*p+h*d+c*u-o*f,e[t+2]=c*p+h*f+o*d-l*u,e[t+3]=h*p-o*u-l*d-c*f,e}get x(){return this._x}set x(e){this._x=e,this._onChangeCallback()}get y(){return this._y}set y(e){this._y=e,this._onChangeCallback()}get z(){return this._z}set z(e){this._z=e,this._onChangeCallback()}get w(){return this._w}set w(e){this._w=e,this._onChangeCallback()}set(e,t,n,s){return this._x=e,this._y=t,this._z=n,this._w=s,this._onChangeCallback(),this}clone(){return new this.constructor(this._x,this._y,this._z,this._w)}copy(e){return this._x=e.x,this._y=e.y,this._z=e.z,this._w=e.w,this._onChangeCallback(),this}setFromEuler(e,t=!0){let n=e._x,s=e._y,r=e._z,a=e._order,o=Math.cos,l=Math.sin,c=o(n/2),h=o(s/2),u=o(r/2),d=l(n/2),f=l(s/2),p=l(r/2);switch(a){case"XYZ":this._x=d*h*u+c*f*p,this._y=c*f*u-d*h*p,this._z=c*h*p+d*f*u,this._w=c*h*u-d*f*p;break;case"YXZ":this._x=d*h*u+c*f*p,this._y=c*f*u-d*h*p,this._z=c*h*p-d*f*u,this._w=c*h*u+d*f*p;break;case"ZXY":this._x=d*h*u-c*f*p,this._y=c*f*u+d*h*p,this._z=c*h*p+d*f*u,this._w=c*h*u-d*f*p;break;case"ZYX":this._x=d*h*u-c*f*p,this._y=c*f*u+d*h*p,this._z=c*h*p-d*f*u,this._w=c*h*u+d*f*p;break;case"YZX":this._x=d*h*u+c*f*p,this._y=c*f*u+d*h*p,this._z=c*h*p-d*f*u,this._w=c*h*u-d*f*p;break;case"XZY":this._x=d*h*u-c*f*p,this._y=c*f*u-d*h*p,this._z=c*h*p+d*f*u,this._w=c*h*u+d*f*p;break;default:Oe("Quaternion: .setFromEuler() encountered an unknown order: "+a)}return t===!0&&this._onChangeCallback(),this}setFromAxisAngle(e,t){let n=t/2,s=Math.sin(n);return this._x=e.x*s,this._y=e.y*s,this._z=e.z*s,this._w=Math.cos(n),this._onChangeCallback(),this}setFromRotationMatrix(e){let t=e.elements,n=t[0],s=t[4],r=t[8],a=t[1],o=t[5],l=t[9],c=t[2],h=t[6],u=t[10],d=n+o+u;if(d>0){let f=.5/Math.sqrt(d+1);this._w=.25/f,this._x=(h-l)*f,this._y=(r-c)*f,this._z=(a-s)*f}else if(n>o&&n>u){let f=2*Math.sqrt(1+n-o-u);this._w=(h-l)/f,this._x=.25*f,this._y=(s+a)/f,this._z=(r+c)/f}else if(o>u){let f=2*Math.sqrt(1+o-n-u);this._w=(r-c)/f,this._x=(s+a)/f,this._y=.25*f,this._z=(l+h)/f}else{let f=2*Math.sqrt(1+u-n-o);this._w=(a-s)/f,this._x=(r+c)/f,this._y=(l+h)/f,this._z=.25*f}return this._onChangeCallback(),this}setFromUnitVectors(e,t){let n=e.dot(t)+1;return n<1e-8?(n=0,Math.abs(e.x)>Math.abs(e.z)?(this._x=-e.y,this._y=e.x,this._z=0,this._w=n):(this._x=0,this._y=-e.z,this._z=e.y,this._w=n)):(this._x=e.y*t.z-e.z*t.y,this._y=e.z*t.x-e.x*t.z,this._z=e.x*t.y-e.y*t.x,this._w=n),this.normalize()}angleTo(e){return 2*Math.acos(Math.abs(Qe(this.dot(e),-1,1)))}rotateTowards(e,t){let n=this.angleTo(e);if(n===0)return this;let s=Math.min(1,t/n);return this.slerp(e,s),this}identity(){return this.set(0,0,0,1)}invert(){return this.conjugate()}conjugate(){return this._x*=-1,this._y*=-1,this._z*=-1,this._onChangeCallback(),this}dot(e){return this._x*e._x+this._y*e._y+this._z*e._z+this._w*e._w}lengthSq(){return this._x*this._x+this._y*this._y+this._z*this._z+this._w*this._w}length(){return Math.sqrt(this._x*this._x+this._y*this._y+this._z*this._z+this._w*this._w)}normalize(){let e=this.length();return e===0?(this._x=0,this._y=0,this._z=0,this._w=1):(e=1/e,this._x=this._x*e,this._y=this._y*e,this._z=this._z*e,this._w=this._w*e),this._onChangeCallback(),this}multiply(e){return this.multiplyQuaternions(this,e)}premultiply(e){return this.multiplyQuaternions(e,this)}multiplyQuaternions(e,t){let n=e._x,s=e._y,r=e._z,a=e._w,o=t._x,l=t._y,c=t._z,h=t._w;return this._x=n*h+a*o+s*c-r*l,this._y=s*h+a*l+r*o-n*c,this._z=r*h+a*c+n*l-s*o,this._w=a*h-n*o-s*l-r*c,this._onChangeCallback(),this}slerp(e,t){let n=e._x,s=e._y,r=e._z,a=e._w,o=this.dot(e);o<0&&(n=-n,s=-s,r=-r,a=-a,o=-o);let l=1-t;if(o<.9995){let c=Math.acos(o),h=Math.sin(c);l=Math.sin(l*c)/h,t=Math.sin(t*c)/h,this._x=this._x*l+n*t,this._y=this._y*l+s*t,this._z=this._z*l+r*t,this._w=this._w*l+a*t,this._onChangeCallback()}else this._x=this._x*l+n*t,this._y=this._y*l+s*t,this._z=this._z*l+r*t,this._w=this._w*l+a*t,this.normalize();return this}slerpQuaternions(e,t,n){return this.copy(e).slerp(t,n)}random(){let e=2*Math.PI*Math.random(),t=2*Math.PI*Math.random(),n=Math.random(),s=Math.sqrt(1-n),r=Math.sqrt(n);return this.set(s*Math.sin(e),s*Math.cos(e),r*Math.sin(t),r*Math.cos(t))}equals(e){return e._x===this._x&&e._y===this._y&&e._z===this._z&&e._w===this._w}fromArray(e,t=0){return this._x=e[t],this._y=e[t+1],this._z=e[t+2],this._w=e[t+3],this._onChangeCallback(),this}toArray(e=[],t=0){return e[t]=this._x,e[t+1]=this._y,e[t+2]=this._z,e[t+3]=this._w,e}fromBufferAttribute(e,t){return this._x=e.getX(t),this._y=e.getY(t),this._z=e.getZ(t),this._w=e.getW(t),this._onChangeCallback(),this}toJSON(){return this.toArray()}_onChange(e){return this._onChangeCallback=e,this}_onChangeCallback(){}*[Symbol.iterator](){yield this._x,yield this._y,yield this._z,yield this._w}},k=class{static{this.prototype.isVector3=!0}constructor(e=0,t=0,n=0){this.x=e,this.y=t,this.z=n}set(e,t,n){return n===void 0&&(n=this.z),this.x=e,this.y=t,this.z=n,this}setScalar(e){return this.x=e,this.y=e,this.z=e,this}setX(e){return this.x=e,this}setY(e){return this.y=e,this}setZ(e){return this.z=e,this}setComponent(e,t){switch(e){case 0:this.x=t;break;case 1:this.y=t;break;case 2:this.z=t;break;default:throw new Error("THREE.Vector3: index is out of range: "+e)}return this}getComponent(e){switch(e){case 0:return this.x;case 1:return this.y;case 2:return this.z;default:throw new Error("THREE.Vector3: index is out of range: "+e)}}clone(){return new this.constructor(this.x,this.y,this.z)}copy(e){return this.x=e.x,this.y=e.y,this.z=e.z,this}add(e){return this.x+=e.x,this.y+=e.y,this.z+=e.z,this}addScalar(e){return this.x+=e,this.y+=e,this.z+=e,this}addVectors(e,t){return this.x=e.x+t.x,this.y=e.y+t.y,this.z=e.z+t.z,this}addScaledVector(e,t){return this.x+=e.x*t,this.y+=e.y*t,this.z+=e.z*t,this}sub(e){return this.x-=e.x,this.y-=e.y,this.z-=e.z,this}subScalar(e){return this.x-=e,this.y-=e,this.z-=e,this}subVectors(e,t){return this.x=e.x-t.x,this.y=e.y-t.y,this.z=e.z-t.z,this}multiply(e){return this.x*=e.x,this.y*=e.y,this.z*=e.z,this}multiplyScalar(e){return this.x*=e,this.y*=e,this.z*=e,this}multiplyVectors(e,t){return this.x=e.x*t.x,this.y=e.y*t.y,this.z=e.z*t.z,this}applyEuler(e){return this.applyQuaternion(Qh.setFromEuler(e))}applyAxisAngle(e,t){return this.applyQuaternion(Qh.setFromAxisAngle(e,t))}applyMatrix3(e){let t=this.x,n=this.y,s=this.z,r=e.elements;return this.x=r[0]*t+r[3]*n+r[6]*s,this.y=r[1]*t+r[4]*n+r[7]*s,this.z=r[2]*t+r[5]*n+r[8]*s,this}applyNormalMatrix(e){return this.applyMatrix3(e).normalize()}applyMatrix4(e){let t=this.x,n=this.y,s=this.z,r=e.elements,a=1/(r[3]*t+r[7]*n+r[11]*s+r[15]);return this.x=(r[0]*t+r[4]*n+r[8]*s+r[12])*a,this.y=(r[1]*t+r[5]*n+r[9]*s+r[13])*a,this.z=(r[2]*t+r[6]*n+r[10]*s+r[14])*a,this}applyQuaternion(e){let t=this.x,n=this.y,s=this.z,r=e.x,a=e.y,o=e.z,l=e.w,c=2*(a*s-o*n),h=2*(o*t-r*s),u=2*(r*n-a*t);return this.x=t+l*c+a*u-o*h,this.y=n+l*h+o*c-r*u,this.z=s+l*u+r*h-a*c,this}project(e){return this.applyMatrix4(e.matrixWorldInverse).applyMatrix4(e.projectionMatrix)}unproject(e){return this.applyMatrix4(e.projectionMatrixInverse).applyMatrix4(e.matrixWorld)}transformDirection(e){let t=this.x,n=this.y,s=this.z,r=e.elements;return this.x=r[0]*t+r[4]*n+r[8]*s,this.y=r[1]*t+r[5]*n+r[9]*s,this.z=r[2]*t+r[6]*n+r[10]*s,this.normalize()}divide(e){return this.x/=e.x,this.y/=e.y,this.z/=e.z,this}divideScalar(e){return this.multiplyScalar(1/e)}min(e){return this.x=Math.min(this.x,e.x),this.y=Math.min(this.y,e.y),this.z=Math.min(this.z,e.z),this}max(e){return this.x=Math.max(this.x,e.x),this.y=Math.max(this.y,e.y),this.z=Math.max(this.z,e.z),this}clamp(e,t){return this.x=Qe(this.x,e.x,t.x),this.y=Qe(this.y,e.y,t.y),this.z=Qe(this.z,e.z,t.z),this}clampScalar(e,t){return this.x=Qe(this.x,e,t),this.y=Qe(this.y,e,t),this.z=Qe(this.z,e,t),this}clampLength(e,t){let n=this.length();return this.divideScalar(n||1).multiplyScalar(Qe(n,e,t))}floor(){return this.x=Math.floor(this.x),this.y=Math.floor(this.y),this.z=Math.floor(this.z),this}ceil(){return this.x=Math.ceil(this.x),this.y=Math.ceil(this.y),this.z=Math.ceil(this.z),this}round(){return this.x=Math.round(this.x),this.y=Math.round(this.y),this.z=Math.round(this.z),this}roundToZero(){return this.x=Math.trunc(this.x),this.y=Math.trunc(this.y),this.z=Math.trunc(this.z),this}negate(){return this.x=-this.x,this.y=-this.y,this.z=-this.z,this}dot(e){return this.x*e.x+this.y*e.y+this.z*e.z}lengthSq(){return this.x*this.x+this.y*this.y+this.z*this.z}length(){return Math.sqrt(this.x*this.x+this.y*this.y+this.z*this.z)}manhattanLength(){return Math.abs(this.x)+Math.abs(this.y)+Math.abs(this.z)}normalize(){return this.divideScalar(this.length()||1)}setLength(e){return this.normalize().multiplyScalar(e)}lerp(e,t){return this.x+=(e.x-this.x)*t,this.y+=(e.y-this.y)*t,this.z+=(e.z-this.z)*t,this}lerpVectors(e,t,n){return this.x=e.x+(t.x-e.x)*n,this.y=e.y+(t.y-e.y)*n,this.z=e.z+(t.z-e.z)*n,this}cross(e){return this.crossVectors(this,e)}crossVectors(e,t){let n=e.x,s=e.y,r=e.z,a=t.x,o=t.y,l=t.z;return this.x=s*l-r*o,this.y=r*a-n*l,this.z=n*o-s*a,this}projectOnVector(e){let t=e.lengthSq();if(t===0)return this.set(0,0,0);let n=e.dot(this)/t;return this.copy(e).multiplyScalar(n)}projectOnPlane(e){return Fl.copy(this).projectOnVector(e),this.sub(Fl)}reflect(e){return this.sub(Fl.copy(e).multiplyScalar(2*this.dot(e)))}angleTo(e){let t=Math.sqrt(this.lengthSq()*e.lengthSq());if(t===0)return Math.PI/2;let n=this.dot(e)/t;return Math.acos(Qe(n,-1,1))}distanceTo(e){return Math.sqrt(this.distanceToSquared(e))}distanceToSquared(e){let t=this.x-e.x,n=this.y-e.y,s=this.z-e.z;return t*t+n*n+s*s}manhattanDistanceTo(e){return Math.abs(this.x-e.x)+Math.abs(this.y-e.y)+Math.abs(this.z-e.z)}setFromSpherical(e){return this.setFromSphericalCoords(e.radius,e.phi,e.theta)}setFromSphericalCoords(e,t,n){let s=Math.sin(t)*e;return this.x=s*Math.sin(n),this.y=Math.cos(t)*e,this.z=s*Math.cos(n),this}setFromCylindrical(e){return this.setFromCylindricalCoords(e.radius,e.theta,e.y)}setFromCylindricalCoords(e,t,n){return this.x=e*Math.sin(t),this.y=n,this.z=e*Math.cos(t),this}setFromMatrixPosition(e){let t=e.elements;return this.x=t[12],this.y=t[13],this.z=t[14],this}setFromMatrixScale(e){let t=this.setFromMatrixColumn(e,0).length(),n=this.setFromMatrixColumn(e,1).length(),s=this.setFromMatrixColumn(e,2).length();return this.x=t,this.y=n,this.z=s,this}setFromMatrixColumn(e,t){return this.fromArray(e.elements,t*4)}setFromMatrix3Column(e,t){return this.fromArray(e.elements,t*3)}setFromEuler(e){return this.x=e._x,this.y=e._y,this.z=e._z,this}setFromColor(e){return this.x=e.r,this.y=e.g,this.z=e.b,this}equals(e){return e.x===this.x&&e.y===this.y&&e.z===this.z}fromArray(e,t=0){return this.x=e[t],this.y=e[t+1],this.z=e[t+2],this}toArray(e=[],t=0){return e[t]=this.x,e[t+1]=this.y,e[t+2]=this.z,e}fromBufferAttribute(e,t){return this.x=e.getX(t),this.y=e.getY(t),this.z=e.getZ(t),this}random(){return this.x=Math.random(),this.y=Math.random(),this.z=Math.random(),this}randomDirection(){let e=Math.random()*Math.PI*2,t=Math.random()*2-1,n=Math.sqrt(1-t*t);return this.x=n*Math.cos(e),this.y=t,this.z=n*Math.sin(e),this}*[Symbol.iterator](){yield this.x,yield this.y,yield this.z}},Fl=new k,Qh=new Mn,Ve=class{static{this.prototype.isMatrix3=!0}constructor(e,t,n,s,r,a,o,l,c){this.elements=[1,0,0,0,1,0,0,0,1],e!==void 0&&this.set(e,t,n,s,r,a,o,l,c)}set(e,t,n,s,r,a,o,l,c){let h=this.elements;return h[0]=e,h[1]=s,h[2]=o,h[3]=t,h[4]=r,h[5]=l,h[6]=n,h[7]=a,h[8]=c,this}identity(){return this.set(1,0,0,0,1,0,0,0,1),this}copy(e){let t=this.elements,n=e.elements;return t[0]=n[0],t[1]=n[1],t[2]=n[2],t[3]=n[3],t[4]=n[4],t[5]=n[5],t[6]=n[6],t[7]=n[7],t[8]=n[8],this}extractBasis(e,t,n){return e.setFromMatrix3Column(this,0),t.setFromMatrix3Column(this,1),n.setFromMatrix3Column(this,2),this}setFromMatrix4(e){let t=e.elements;return this.set(t[0],t[4],t[8],t[1],t[5],t[9],t[2],t[6],t[10]),this}multiply(e){return this.multiplyMatrices(this,e)}premultiply(e){return this.multiplyMatrices(e,this)}multiplyMatrices(e,t){let n=e.elements,s=t.elements,r=this.elements,a=n[0],o=n[3],l=n[6],c=n[1],h=n[4],u=n[7],d=n[2],f=n[5],p=n[8],v=s[0],m=s[3],g=s[6],M=s[1],C=s[4],w=s[7],E=s[2],S=s[5],x=s[8];return r[0]=a*v+o*M+l*E,r[3]=a*m+o*C+l*S,r[6]=a*g+o*w+l*x,r[1]=c*v+h*M+u*E,r[4]=c*m+h*C+u*S,r[7]=c*g+h*w+u*x,r[2]=d*v+f*M+p*E,r[5]=d*m+f*C+p*S,r[8]=d*g+f*w+p*x,this}multiplyScalar(e){let t=this.elements;return t[0]*=e,t[3]*=e,t[6]*=e,t[1]*=e,t[4]*=e,t[7]*=e,t[2]*=e,t[5]*=e,t[8]*=e,this}determinant(){let e=this.elements,t=e[0],n=e[1],s=e[2],r=e[3],a=e[4],o=e[5],l=e[6],c=e[7],h=e[8];return t*a*h-t*o*c-n*r*h+n*o*l+s*r*c-s*a*l}invert(){let e=this.elements,t=e[0],n=e[1],s=e[2],r=e[3],a=e[4],o=e[5],l=e[6],c=e[7],h=e[8],u=h*a-o*c,d=o*l-h*r,f=c*r-a*l,p=t*u+n*d+s*f;if(p===0)return this.set(0,0,0,0,0,0,0,0,0);let v=1/p;return e[0]=u*v,e[1]=(s*c-h*n)*v,e[2]=(o*n-s*a)*v,e[3]=d*v,e[4]=(h*t-s*l)*v,e[5]=(s*r-o*t)*v,e[6]=f*v,e[7]=(n*l-c*t)*v,e[8]=(a*t-n*r)*v,this}transpose(){let e,t=this.elements;return e=t[1],t[1]=t[3],t[3]=e,e=t[2],t[2]=t[6],t[6]=e,e=t[5],t[5]=t[7],t[7]=e,this}getNormalMatrix(e){return this.setFromMatrix4(e).invert().transpose()}transposeIntoArray(e){let t=this.elements;return e[0]=t[0],e[1]=t[3],e[2]=t[6],e[3]=t[1],e[4]=t[4],e[5]=t[7],e[6]=t[2],e[7]=t[5],e[8]=t[8],this}setUvTransform(e,t,n,s,r,a,o){let l=Math.cos(r),c=Math.sin(r);return this.set(n*l,n*c,-n*(l*a+c*o)+a+e,-s*c,s*l,-s*(-c*a+l*o)+o+t,0,0,1),this}scale(e,t){return fr("Matrix3: .scale() is deprecated. Use .makeScale() instead."),this.premultiply(Ol.makeScale(e,t)),this}rotate(e){return fr("Matrix3: .rotate() is deprecated. Use .makeRotation() instead."),this.premultiply(Ol.makeRotation(-e)),this}translate(e,t){return fr("Matrix3: .translate() is deprecated. Use .makeTranslation() instead."),this.premultiply(Ol.makeTranslation(e,t)),this}makeTranslation(e,t){return e.isVector2?this.set(1,0,e.x,0,1,e.y,0,0,1):this.set(1,0,e,0,1,t,0,0,1),this}makeRotation(e){let t=Math.cos(e),n=Math.sin(e);return this.set(t,-n,0,n,t,0,0,0,1),this}makeScale(e,t){return this.set(e,0,0,0,t,0,0,0,1),this}equals(e){let t=this.elements,n=e.elements;for(let s=0;s<9;s++)if(t[s]!==n[s])return!1;return!0}fromArray(e,t=0){for(let n=0;n<9;n++)this.elements[n]=e[n+t];return this}toArray(e=[],t=0){let n=this.elements;return e[t]=n[0],e[t+1]=n[1],e[t+2]=n[2],e[t+3]=n[3],e[t+4]=n[4],e[t+5]=n[5],e[t+6]=n[6],e[t+7]=n[7],e[t+8]=n[8],e}clone(){return new this.constructor().fromArray(this.elements)}},Ol=new Ve,eu=new Ve().set(.4123908,.3575843,.1804808,.212639,.7151687,.0721923,.0193308,.1191948,.9505322),tu=new Ve().set(3.2409699,-1.5373832,-.4986108,-.9692436,1.8759675,.0415551,.0556301,-.203977,1.0569715);function Rp(){let i={enabled:!0,workingColorSpace:mr,spaces:{},convert:function(s,r,a){return this.enabled===!1||r===a||!r||!a||(this.spaces[r].transfer===it&&(s.r=li(s.r),s.g=li(s.g),s.b=li(s.b)),this.spaces[r].primaries!==this.spaces[a].primaries&&(s.applyMatrix3(this.spaces[r].toXYZ),s.applyMatrix3(this.spaces[a].fromXYZ)),this.spaces[a].transfer===it&&(s.r=Ns(s.r),s.g=Ns(s.g),s.b=Ns(s.b))),s},workingToColorSpace:function(s,r){return this.convert(s,this.workingColorSpace,r)},colorSpaceToWorking:function(s,r){return this.convert(s,r,this.workingColorSpace)},getPrimaries:function(s){return this.spaces[s].primaries},getTransfer:function(s){return s===fi?gr:this.spaces[s].transfer},getToneMappingMode:function(s){return this.spaces[s].outputColorSpaceConfig.toneMappingMode||"standard"},getLuminanceCoefficients:function(s,r=this.workingColorSpace){return s.fromArray(this.spaces[r].luminanceCoefficients)},define:function(s){Object.assign(this.spaces,s)},_getMatrix:function(s,r,a){return s.copy(this.spaces[a].fromXYZ).multiply(this.spaces[r].toXYZ)},_getDrawingBufferColorSpace:function(s){return this.spaces[s].outputColorSpaceConfig.drawingBufferColorSpace},_getUnpackColorSpace:function(s=this.workingColorSpace){return this.spaces[s].workingColorSpaceConfig.unpackColorSpace}},e=[.64,.33,.3,.6,.15,.06],t=[.2126,.7152,.0722],n=[.3127,.329];return i.define({[mr]:{primaries:e,whitePoint:n,transfer:gr,toXYZ:eu,fromXYZ:tu,luminanceCoefficients:t,workingColorSpaceConfig:{unpackColorSpace:cn},outputColorSpaceConfig:{drawingBufferColorSpace:cn}},[cn]:{primaries:e,whitePoint:n,transfer:it,toXYZ:eu,fromXYZ:tu,luminanceCoefficients:t,outputColorSpaceConfig:{drawingBufferColorSpace:cn}}}),i}var Ke=Rp();function li(i){return i<.04045?i*.0773993808:Math.pow(i*.9478672986+.0521327014,2.4)}function Ns(i){return i<.0031308?i*12.92:1.055*Math.pow(i,.41666)-.055}var ys,Xa=class{static getDataURL(e,t="image/png"){if(/^data:/i.test(e.src)||typeof HTMLCanvasElement>"u")return e.src;let n;if(e instanceof HTMLCanvasElement)n=e;else{ys===void 0&&(ys=vr("canvas")),ys.width=e.width,ys.height=e.height;let s=ys.getContext("2d");e instanceof ImageData?s.putImageData(e,0,0):s.drawImage(e,0,0,e.width,e.height),n=ys}return n.toDataURL(t)}static sRGBToLinear(e){if(typeof HTMLImageElement<"u"&&e instanceof HTMLImageElement||typeof HTMLCanvasElement<"u"&&e instanceof HTMLCanvasElement||typeof ImageBitmap<"u"&&e instanceof ImageBitmap){let t=vr("canvas");t.width=e.width,t.height=e.height;let n=t.getContext("2d");n.drawImage(e,0,0,e.width,e.height);let s=n.getImageData(0,0,e.width,e.height),r=s.data;for(let a=0;a<r.length;a++)r[a]=li(r[a]/255)*255;return n.putImageData(s,0,0),t}else if(e.data){let t=e.data.slice(0);for(let n=0;n<t.length;n++)t instanceof Uint8Array||t instanceof Uint8ClampedArray?t[n]=Math.floor(li(t[n]/255)*255):t[n]=li(t[n]);return{data:t,width:e.width,height:e.height}}else return Oe("ImageUtils.sRGBToLinear(): Unsupported image type. No color space conversion applied."),e}},Pp=0,Fs=class{constructor(e=null){this.isTextureSource=!0,Object.defineProperty(this,"id",{value:Pp++}),this.uuid=Or(),this.data=e,this.dataReady=!0,this.version=0}getSize(e){let t=this.data;return typeof HTMLVideoElement<"u"&&t instanceof HTMLVideoElement?e.set(t.videoWidth,t.videoHeight,0):typeof VideoFrame<"u"&&t instanceof VideoFrame?e.set(t.displayWidth,t.displayHeight,0):t!==null?e.set(t.width||0,t.height||0,t.depth||0):e.set(0,0,0),e}set needsUpdate(e){e===!0&&this.version++}toJSON(e){let t=e===void 0||typeof e=="string";if(!t&&e.images[this.uuid]!==void 0)return e.images[this.uuid];let n={uuid:this.uuid,url:""},s=this.data;if(s!==null){let r;if(Array.isArray(s)){r=[];for(let a=0,o=s.length;a<o;a++)s[a].isDataTexture?r.push(kl(s[a].image)):r.push(kl(s[a]))}else r=kl(s);n.url=r}return t||(e.images[this.uuid]=n),n}};function kl(i){return typeof HTMLImageElement<"u"&&i instanceof HTMLImageElement||typeof HTMLCanvasElement<"u"&&i instanceof HTMLCanvasElement||typeof ImageBitmap<"u"&&i instanceof ImageBitmap?Xa.getDataURL(i):i.data?{data:Array.from(i.data),width:i.width,height:i.height,type:i.data.constructor.name}:(Oe("Texture: Unable to serialize Texture."),{})}var Ip=0,Bl=new k,Qt=class i extends Gn{constructor(e=i.DEFAULT_IMAGE,t=i.DEFAULT_MAPPING,n=Vn,s=Vn,r=Yt,a=ui,o=On,l=pn,c=i.DEFAULT_ANISOTROPY,h=fi){super(),this.isTexture=!0,Object.defineProperty(this,"id",{value:Ip++}),this.uuid=Or(),this.name="",this.source=new Fs(e),this.mipmaps=[],this.mapping=t,this.channel=0,this.wrapS=n,this.wrapT=s,this.magFilter=r,this.minFilter=a,this.anisotropy=c,this.format=o,this.internalFormat=null,this.type=l,this.offset=new et(0,0),this.repeat=new et(1,1),this.center=new et(0,0),this.rotation=0,this.matrixAutoUpdate=!0,this.matrix=new Ve,this.generateMipmaps=!0,this.mipmapsAutoUpdate=!0,this.premultiplyAlpha=!1,this.flipY=!0,this.unpackAlignment=4,this.colorSpace=h,this.userData={},this.updateRanges=[],this.version=0,this.onUpdate=null,this.renderTarget=null,this.isRenderTargetTexture=!1,this.isArrayTexture=!!(e&&e.depth&&e.depth>1),this.pmremVersion=0,this.isPMREMTexture=!1,this.normalized=!1}get width(){return this.source.getSize(Bl).x}get height(){return this.source.getSize(Bl).y}get depth(){return this.source.getSize(Bl).z}get image(){return this.source.data}set image(e){this.source.data=e}updateMatrix(){this.matrix.setUvTransform(this.offset.x,this.offset.y,this.repeat.x,this.repeat.y,this.rotation,this.center.x,this.center.y)}addUpdateRange(e,t){this.updateRanges.push({start:e,count:t})}clearUpdateRanges(){this.updateRanges.length=0}clone(){return new this.constructor().copy(this)}copy(e){return this.name=e.name,this.source=e.source,this.mipmaps=e.mipmaps.slice(0),this.mapping=e.mapping,this.channel=e.channel,this.wrapS=e.wrapS,this.wrapT=e.wrapT,this.magFilter=e.magFilter,this.minFilter=e.minFilter,this.anisotropy=e.anisotropy,this.format=e.format,this.internalFormat=e.internalFormat,this.type=e.type,this.normalized=e.normalized,this.offset.copy(e.offset),this.repeat.copy(e.repeat),this.center.copy(e.center),this.rotation=e.rotation,this.matrixAutoUpdate=e.matrixAutoUpdate,this.matrix.copy(e.matrix),this.generateMipmaps=e.generateMipmaps,this.mipmapsAutoUpdate=e.mipmapsAutoUpdate,this.premultiplyAlpha=e.premultiplyAlpha,this.flipY=e.flipY,this.unpackAlignment=e.unpackAlignment,this.colorSpace=e.colorSpace,this.renderTarget=e.renderTarget,this.isRenderTargetTexture=e.isRenderTargetTexture,this.isPMREMTexture=e.isPMREMTexture,this.isArrayTexture=e.isArrayTexture,this.userData=JSON.parse(JSON.stringify(e.userData)),this.needsUpdate=!0,this}setValues(e){for(let t in e){let n=e[t];if(n===void 0){Oe(`Texture.setValues(): parameter '${t}' has value of undefined.`);continue}let s=this[t];if(s===void 0){Oe(`Texture.setValues(): property '${t}' does not exist.`);continue}s&&n&&s.isVector2&&n.isVector2||s&&n&&s.isVector3&&n.isVector3||s&&n&&s.isMatrix3&&n.isMatrix3?s.copy(n):this[t]=n}}toJSON(e){let t=e===void 0||typeof e=="string";if(!t&&e.textures[this.uuid]!==void 0)return e.textures[this.uuid];let n={metadata:{version:4.7,type:"Texture",generator:"Texture.toJSON"},uuid:this.uuid,name:this.name,image:this.source.toJSON(e).uuid,mapping:this.mapping,channel:this.channel,repeat:[this.repeat.x,this.repeat.y],offset:[this.offset.x,this.offset.y],center:[this.center.x,this.center.y],rotation:this.rotation,wrap:[this.wrapS,this.wrapT],format:this.format,internalFormat:this.internalFormat,type:this.type,normalized:this.normalized,colorSpace:this.colorSpace,minFilter:this.minFilter,magFilter:this.magFilter,anisotropy:this.anisotropy,flipY:this.flipY,generateMipmaps:this.generateMipmaps,mipmapsAutoUpdate:this.mipmapsAutoUpdate,premultiplyAlpha:this.premultiplyAlpha,unpackAlignment:this.unpackAlignment};return Object.keys(this.userData).length>0&&(n.userData=this.userData),t||(e.textures[this.uuid]=n),n}dispose(){this.dispatchEvent({type:"dispose"})}transformUv(e){if(this.mapping!==wc)return e;if(e.applyMatrix3(this.matrix),e.x<0||e.x>1)switch(this.wrapS){case Ga:e.x=e.x-Math.floor(e.x);break;case Vn:e.x=e.x<0?0:1;break;case Ha:Math.abs(Math.floor(e.x)%2)===1?e.x=Math.ceil(e.x)-e.x:e.x=e.x-Math.floor(e.x);break}if(e.y<0||e.y>1)switch(this.wrapT){case Ga:e.y=e.y-Math.floor(e.y);break;case Vn:e.y=e.y<0?0:1;break;case Ha:Math.abs(Math.floor(e.y)%2)===1?e.y=Math.ceil(e.y)-e.y:e.y=e.y-Math.floor(e.y);break}return this.flipY&&(e.y=1-e.y),e}set needsUpdate(e){e===!0&&(this.version++,this.source.needsUpdate=!0)}set needsPMREMUpdate(e){e===!0&&this.pmremVersion++}};Qt.DEFAULT_IMAGE=null;Qt.DEFAULT_MAPPING=wc;Qt.DEFAULT_ANISOTROPY=1;var _t=class{static{this.prototype.isVector4=!0}constructor(e=0,t=0,n=0,s=1){this.x=e,this.y=t,this.z=n,this.w=s}get width(){return this.z}set width(e){this.z=e}get height(){return this.w}set height(e){this.w=e}set(e,t,n,s){return this.x=e,this.y=t,this.z=n,this.w=s,this}setScalar(e){return this.x=e,this.y=e,this.z=e,this.w=e,this}setX(e){return this.x=e,this}setY(e){return this.y=e,this}setZ(e){return this.z=e,this}setW(e){return this.w=e,this}setComponent(e,t){switch(e){case 0:this.x=t;break;case 1:this.y=t;break;case 2:this.z=t;break;case 3:this.w=t;break;default:throw new Error("THREE.Vector4: index is out of range: "+e)}return this}getComponent(e){switch(e){case 0:return this.x;case 1:return this.y;case 2:return this.z;case 3:return this.w;default:throw new Error("THREE.Vector4: index is out of range: "+e)}}clone(){return new this.constructor(this.x,this.y,this.z,this.w)}copy(e){return this.x=e.x,this.y=e.y,this.z=e.z,this.w=e.w!==void 0?e.w:1,this}add(e){return this.x+=e.x,this.y+=e.y,this.z+=e.z,this.w+=e.w,this}addScalar(e){return this.x+=e,this.y+=e,this.z+=e,this.w+=e,this}addVectors(e,t){return this.x=e.x+t.x,this.y=e.y+t.y,this.z=e.z+t.z,this.w=e.w+t.w,this}addScaledVector(e,t){return this.x+=e.x*t,this.y+=e.y*t,this.z+=e.z*t,this.w+=e.w*t,this}sub(e){return this.x-=e.x,this.y-=e.y,this.z-=e.z,this.w-=e.w,this}subScalar(e){return this.x-=e,this.y-=e,this.z-=e,this.w-=e,this}subVectors(e,t){return this.x=e.x-t.x,this.y=e.y-t.y,this.z=e.z-t.z,this.w=e.w-t.w,this}multiply(e){return this.x*=e.x,this.y*=e.y,this.z*=e.z,this.w*=e.w,this}multiplyScalar(e){return this.x*=e,this.y*=e,this.z*=e,this.w*=e,this}applyMatrix4(e){let t=this.x,n=this.y,s=this.z,r=this.w,a=e.elements;return this.x=a[0]*t+a[4]*n+a[8]*s+a[12]*r,this.y=a[1]*t+a[5]*n+a[9]*s+a[13]*r,this.z=a[2]*t+a[6]*n+a[10]*s+a[14]*r,this.w=a[3]*t+a[7]*n+a[11]*s+a[15]*r,this}divide(e){return this.x/=e.x,this.y/=e.y,this.z/=e.z,this.w/=e.w,this}divideScalar(e){return this.multiplyScalar(1/e)}setAxisAngleFromQuaternion(e){this.w=2*Math.acos(e.w);let t=Math.sqrt(1-e.w*e.w);return t<1e-4?(this.x=1,this.y=0,this.z=0):(this.x=e.x/t,this.y=e.y/t,this.z=e.z/t),this}setAxisAngleFromRotationMatrix(e){let t,n,s,r,l=e.elements,c=l[0],h=l[4],u=l[8],d=l[1],f=l[5],p=l[9],v=l[2],m=l[6],g=l[10];if(Math.abs(h-d)<.01&&Math.abs(u-v)<.01&&Math.abs(p-m)<.01){if(Math.abs(h+d)<.1&&Math.abs(u+v)<.1&&Math.abs(p+m)<.1&&Math.abs(c+f+g-3)<.1)return this.set(1,0,0,0),this;t=Math.PI;let C=(c+1)/2,w=(f+1)/2,E=(g+1)/2,S=(h+d)/4,x=(u+v)/4,T=(p+m)/4;return C>w&&C>E?C<.01?(n=0,s=.707106781,r=.707106781):(n=Math.sqrt(C),s=S/n,r=x/n):w>E?w<.01?(n=.707106781,s=0,r=.707106781):(s=Math.sqrt(w),n=S/s,r=T/s):E<.01?(n=.707106781,s=.707106781,r=0):(r=Math.sqrt(E),n=x/r,s=T/r),this.set(n,s,r,t),this}let M=Math.sqrt((m-p)*(m-p)+(u-v)*(u-v)+(d-h)*(d-h));return Math.abs(M)<.001&&(M=1),this.x=(m-p)/M,this.y=(u-v)/M,this.z=(d-h)/M,this.w=Math.acos((c+f+g-1)/2),this}setFromMatrixPosition(e){let t=e.elements;return this.x=t[12],this.y=t[13],this.z=t[14],this.w=t[15],this}min(e){return this.x=Math.min(this.x,e.x),this.y=Math.min(this.y,e.y),this.z=Math.min(this.z,e.z),this.w=Math.min(this.w,e.w),this}max(e){return this.x=Math.max(this.x,e.x),this.y=Math.max(this.y,e.y),this.z=Math.max(this.z,e.z),this.w=Math.max(this.w,e.w),this}clamp(e,t){return this.x=Qe(this.x,e.x,t.x),this.y=Qe(this.y,e.y,t.y),this.z=Qe(this.z,e.z,t.z),this.w=Qe(this.w,e.w,t.w),this}clampScalar(e,t){return this.x=Qe(this.x,e,t),this.y=Qe(this.y,e,t),this.z=Qe(this.z,e,t),this.w=Qe(this.w,e,t),this}clampLength(e,t){let n=this.length();return this.divideScalar(n||1).multiplyScalar(Qe(n,e,t))}floor(){return this.x=Math.floor(this.x),this.y=Math.floor(this.y),this.z=Math.floor(this.z),this.w=Math.floor(this.w),this}ceil(){return this.x=Math.ceil(this.x),this.y=Math.ceil(this.y),this.z=Math.ceil(this.z),this.w=Math.ceil(this.w),this}round(){return this.x=Math.round(this.x),this.y=Math.round(this.y),this.z=Math.round(this.z),this.w=Math.round(this.w),this}roundToZero(){return this.x=Math.trunc(this.x),this.y=Math.trunc(this.y),this.z=Math.trunc(this.z),this.w=Math.trunc(this.w),this}negate(){return this.x=-this.x,this.y=-this.y,this.z=-this.z,this.w=-this.w,this}dot(e){return this.x*e.x+this.y*e.y+this.z*e.z+this.w*e.w}lengthSq(){return this.x*this.x+this.y*this.y+this.z*this.z+this.w*this.w}length(){return Math.sqrt(this.x*this.x+this.y*this.y+this.z*this.z+this.w*this.w)}manhattanLength(){return Math.abs(this.x)+Math.abs(this.y)+Math.abs(this.z)+Math.abs(this.w)}normalize(){return this.divideScalar(this.length()||1)}setLength(e){return this.normalize().multiplyScalar(e)}lerp(e,t){return this.x+=(e.x-this.x)*t,this.y+=(e.y-this.y)*t,this.z+=(e.z-this.z)*t,this.w+=(e.w-this.w)*t,this}lerpVectors(e,t,n){return this.x=e.x+(t.x-e.x)*n,this.y=e.y+(t.y-e.y)*n,this.z=e.z+(t.z-e.z)*n,this.w=e.w+(t.w-e.w)*n,this}equals(e){return e.x===this.x&&e.y===this.y&&e.z===this.z&&e.w===this.w}fromArray(e,t=0){return this.x=e[t],this.y=e[t+1],this.z=e[t+2],this.w=e[t+3],this}toArray(e=[],t=0){return e[t]=this.x,e[t+1]=this.y,e[t+2]=this.z,e[t+3]=this.w,e}fromBufferAttribute(e,t){return this.x=e.getX(t),this.y=e.getY(t),this.z=e.getZ(t),this.w=e.getW(t),this}random(){return this.x=Math.random(),this.y=Math.random(),this.z=Math.random(),this.w=Math.random(),this}*[Symbol.iterator](){yield this.x,yield this.y,yield this.z,yield this.w}},qa=class extends Gn{constructor(e=1,t=1,n={}){super(),n=Object.assign({generateMipmaps:!1,internalFormat:null,minFilter:Yt,depthBuffer:!0,stencilBuffer:!1,resolveColorBuffer:!0,resolveDepthBuffer:!0,resolveStencilBuffer:!0,storeMultisampledColorBuffer:!0,storeMultisampledDepthBuffer:!0,storeMultisampledStencilBuffer:!0,depthTexture:null,samples:0,count:1,depth:1,multiview:!1,useArrayDepthTexture:!1},n),this.isRenderTarget=!0,this.width=e,this.height=t,this.depth=n.depth,this.scissor=new _t(0,0,e,t),this.scissorTest=!1,this.viewport=new _t(0,0,e,t),this.textures=[];let s=n.count;for(let r=0;r<s;r++)this.textures[r]=new Qt({width:e,height:t,depth:n.depth}),this.textures[r].isRenderTargetTexture=!0,this.textures[r].renderTarget=this;this._setTextureOptions(n),this.depthBuffer=n.depthBuffer,this.stencilBuffer=n.stencilBuffer,this.resolveColorBuffer=n.resolveColorBuffer,this.resolveDepthBuffer=n.resolveDepthBuffer,this.resolveStencilBuffer=n.resolveStencilBuffer,this.storeMultisampledColorBuffer=n.storeMultisampledColorBuffer,this.storeMultisampledDepthBuffer=n.storeMultisampledDepthBuffer,this.storeMultisampledStencilBuffer=n.storeMultisampledStencilBuffer,this._depthTexture=null,this.depthTexture=n.depthTexture,this.samples=n.samples,this.multiview=n.multiview,this.useArrayDepthTexture=n.useArrayDepthTexture}_setTextureOptions(e={}){let t={minFilter:Yt,generateMipmaps:!1,flipY:!1,internalFormat:null};e.mapping!==void 0&&(t.mapping=e.mapping),e.wrapS!==void 0&&(t.wrapS=e.wrapS),e.wrapT!==void 0&&(t.wrapT=e.wrapT),e.wrapR!==void 0&&(t.wrapR=e.wrapR),e.magFilter!==void 0&&(t.magFilter=e.magFilter),e.minFilter!==void 0&&(t.minFilter=e.minFilter),e.format!==void 0&&(t.format=e.format),e.type!==void 0&&(t.type=e.type),e.anisotropy!==void 0&&(t.anisotropy=e.anisotropy),e.colorSpace!==void 0&&(t.colorSpace=e.colorSpace),e.flipY!==void 0&&(t.flipY=e.flipY),e.generateMipmaps!==void 0&&(t.generateMipmaps=e.generateMipmaps),e.mipmapsAutoUpdate!==void 0&&(t.mipmapsAutoUpdate=e.mipmapsAutoUpdate),e.internalFormat!==void 0&&(t.internalFormat=e.internalFormat);for(let n=0;n<this.textures.length;n++)this.textures[n].setValues(t)}get texture(){return this.textures[0]}set texture(e){this.textures[0]=e}set depthTexture(e){this._depthTexture!==null&&this._depthTexture.renderTarget===this&&(this._depthTexture.renderTarget=null),e!==null&&e.renderTarget===null&&(e.renderTarget=this),this._depthTexture=e}get depthTexture(){return this._depthTexture}setSize(e,t,n=1){if(this.width!==e||this.height!==t||this.depth!==n){this.width=e,this.height=t,this.depth=n;for(let s=0,r=this.textures.length;s<r;s++)this.textures[s].image.width=e,this.textures[s].image.height=t,this.textures[s].image.depth=n,this.textures[s].isData3DTexture!==!0&&(this.textures[s].isArrayTexture=this.textures[s].image.depth>1);this.dispose()}this.viewport.set(0,0,e,t),this.scissor.set(0,0,e,t)}clone(){return new this.constructor().copy(this)}copy(e){this.width=e.width,this.height=e.height,this.depth=e.depth,this.scissor.copy(e.scissor),this.scissorTest=e.scissorTest,this.viewport.copy(e.viewport),this.textures.length=0;for(let t=0,n=e.textures.length;t<n;t++){this.textures[t]=e.textures[t].clone(),this.textures[t].isRenderTargetTexture=!0,this.textures[t].renderTarget=this;let s=Object.assign({},e.textures[t].image);this.textures[t].source=new Fs(s)}if(this.depthBuffer=e.depthBuffer,this.stencilBuffer=e.stencilBuffer,this.resolveColorBuffer=e.resolveColorBuffer,this.resolveDepthBuffer=e.resolveDepthBuffer,this.resolveStencilBuffer=e.resolveStencilBuffer,this.storeMultisampledColorBuffer=e.storeMultisampledColorBuffer,this.storeMultisampledDepthBuffer=e.storeMultisampledDepthBuffer,this.storeMultisampledStencilBuffer=e.storeMultisampledStencilBuffer,e.depthTexture!==null)if(e.depthTexture.renderTarget===e){let t=e.depthTexture.clone();t.renderTarget=null,this.depthTexture=t}else this.depthTexture=e.depthTexture;else this.depthTexture=null;return this.samples=e.samples,this.multiview=e.multiview,this.useArrayDepthTexture=e.useArrayDepthTexture,this}dispose(){this.dispatchEvent({type:"dispose"})}},un=class extends qa{constructor(e=1,t=1,n={}){super(e,t,n),this.isWebGLRenderTarget=!0}},xr=class extends Qt{constructor(e=null,t=1,n=1,s=1){super(null),this.isDataArrayTexture=!0,this.image={data:e,width:t,height:n,depth:s},this.magFilter=Ut,this.minFilter=Ut,this.wrapR=Vn,this.generateMipmaps=!1,this.flipY=!1,this.unpackAlignment=1,this.layerUpdates=new Set}copy(e){return super.copy(e),this.wrapR=e.wrapR,this}addLayerUpdate(e){this.layerUpdates.add(e)}clearLayerUpdates(){this.layerUpdates.clear()}};var Ya=class extends Qt{constructor(e=null,t=1,n=1,s=1){super(null),this.isData3DTexture=!0,this.image={data:e,width:t,height:n,depth:s},this.magFilter=Ut,this.minFilter=Ut,this.wrapR=Vn,this.generateMipmaps=!1,this.flipY=!1,this.unpackAlignment=1}copy(e){return super.copy(e),this.wrapR=e.wrapR,this}};var at=class i{static{this.prototype.isMatrix4=!0}constructor(e,t,n,s,r,a,o,l,c,h,u,d,f,p,v,m){this.elements=[1,0,0,0,0,1,0,0,0,0,1,0,0,0,0,1],e!==void 0&&this.set(e,t,n,s,r,a,o,l,c,h,u,d,f,p,v,m)}set(e,t,n,s,r,a,o,l,c,h,u,d,f,p,v,m){let g=this.elements;return g[0]=e,g[4]=t,g[8]=n,g[12]=s,g[1]=r,g[5]=a,g[9]=o,g[13]=l,g[2]=c,g[6]=h,g[10]=u,g[14]=d,g[3]=f,g[7]=p,g[11]=v,g[15]=m,this}identity(){return this.set(1,0,0,0,0,1,0,0,0,0,1,0,0,0,0,1),this}clone(){return new i().fromArray(this.elements)}copy(e){let t=this.elements,n=e.elements;return t[0]=n[0],t[1]=n[1],t[2]=n[2],t[3]=n[3],t[4]=n[4],t[5]=n[5],t[6]=n[6],t[7]=n[7],t[8]=n[8],t[9]=n[9],t[10]=n[10],t[11]=n[11],t[12]=n[12],t[13]=n[13],t[14]=n[14],t[15]=n[15],this}copyPosition(e){let t=this.elements,n=e.elements;return t[12]=n[12],t[13]=n[13],t[14]=n[14],this}setFromMatrix3(e){let t=e.elements;return this.set(t[0],t[3],t[6],0,t[1],t[4],t[7],0,t[2],t[5],t[8],0,0,0,0,1),this}extractBasis(e,t,n){return this.determinantAffine()===0?(e.set(1,0,0),t.set(0,1,0),n.set(0,0,1),this):(e.setFromMatrixColumn(this,0),t.setFromMatrixColumn(this,1),n.setFromMatrixColumn(this,2),this)}makeBasis(e,t,n){return this.set(e.x,t.x,n.x,0,e.y,t.y,n.y,0,e.z,t.z,n.z,0,0,0,0,1),this}extractRotation(e){if(e.determinantAffine()===0)return this.identity();let t=this.elements,n=e.elements,s=1/bs.setFromMatrixColumn(e,0).length(),r=1/bs.setFromMatrixColumn(e,1).length(),a=1/bs.setFromMatrixColumn(e,2).length();return t[0]=n[0]*s,t[1]=n[1]*s,t[2]=n[2]*s,t[3]=0,t[4]=n[4]*r,t[5]=n[5]*r,t[6]=n[6]*r,t[7]=0,t[8]=n[8]*a,t[9]=n[9]*a,t[10]=n[10]*a,t[11]=0,t[12]=0,t[13]=0,t[14]=0,t[15]=1,this}makeRotationFromEuler(e){let t=this.elements,n=e.x,s=e.y,r=e.z,a=Math.cos(n),o=Math.sin(n),l=Math.cos(s),c=Math.sin(s),h=Math.cos(r),u=Math.sin(r);if(e.order==="XYZ"){let d=a*h,f=a*u,p=o*h,v=o*u;t[0]=l*h,t[4]=-l*u,t[8]=c,t[1]=f+p*c,t[5]=d-v*c,t[9]=-o*l,t[2]=v-d*c,t[6]=p+f*c,t[10]=a*l}else if(e.order==="YXZ"){let d=l*h,f=l*u,p=c*h,v=c*u;t[0]=d+v*o,t[4]=p*o-f,t[8]=a*c,t[1]=a*u,t[5]=a*h,t[9]=-o,t[2]=f*o-p,t[6]=v+d*o,t[10]=a*l}else if(e.order==="ZXY"){let d=l*h,f=l*u,p=c*h,v=c*u;t[0]=d-v*o,t[4]=-a*u,t[8]=p+f*o,t[1]=f+p*o,t[5]=a*h,t[9]=v-d*o,t[2]=-a*c,t[6]=o,t[10]=a*l}else if(e.order==="ZYX"){let d=a*h,f=a*u,p=o*h,v=o*u;t[0]=l*h,t[4]=p*c-f,t[8]=d*c+v,t[1]=l*u,t[5]=v*c+d,t[9]=f*c-p,t[2]=-c,t[6]=o*l,t[10]=a*l}else if(e.order==="YZX"){let d=a*l,f=a*c,p=o*l,v=o*c;t[0]=l*h,t[4]=v-d*u,t[8]=p*u+f,t[1]=u,t[5]=a*h,t[9]=-o*h,t[2]=-c*h,t[6]=f*u+p,t[10]=d-v*u}else if(e.order==="XZY"){let d=a*l,f=a*c,p=o*l,v=o*c;t[0]=l*h,t[4]=-u,t[8]=c*h,t[1]=d*u+v,t[5]=a*h,t[9]=f*u-p,t[2]=p*u-f,t[6]=o*h,t[10]=v*u+d}return t[3]=0,t[7]=0,t[11]=0,t[12]=0,t[13]=0,t[14]=0,t[15]=1,this}makeRotationFromQuaternion(e){return this.compose(Lp,e,Np)}lookAt(e,t,n){let s=this.elements;return on.subVectors(e,t),on.lengthSq()===0&&(on.z=1),on.normalize(),Ti.crossVectors(n,on),Ti.lengthSq()===0&&(Math.abs(n.z)===1?on.x+=1e-4:on.z+=1e-4,on.normalize(),Ti.crossVectors(n,on)),Ti.normalize(),ua.crossVectors(on,Ti),s[0]=Ti.x,s[4]=ua.x,s[8]=on.x,s[1]=Ti.y,s[5]=ua.y,s[9]=on.y,s[2]=Ti.z,s[6]=ua.z,s[10]=on.z,this}multiply(e){return this.multiplyMatrices(this,e)}premultiply(e){return this.multiplyMatrices(e,this)}multiplyMatrices(e,t){let n=e.elements,s=t.elements,r=this.elements,a=n[0],o=n[4],l=n[8],c=n[12],h=n[1],u=n[5],d=n[9],f=n[13],p=n[2],v=n[6],m=n[10],g=n[14],M=n[3],C=n[7],w=n[11],E=n[15],S=s[0],x=s[4],T=s[8],B=s[12],U=s[1],N=s[5],V=s[9],q=s[13],I=s[2],X=s[6],J=s[10],$=s[14],se=s[3],L=s[7],Y=s[11],ee=s[15];return r[0]=a*S+o*U+l*I+c*se,r[4]=a*x+o*N+l*X+c*L,r[8]=a*T+o*V+l*J+c*Y,r[12]=a*B+o*q+l*$+c*ee,r[1]=h*S+u*U+d*I+f*se,r[5]=h*x+u*N+d*X+f*L,r[9]=h*T+u*V+d*J+f*Y,r[13]=h*B+u*q+d*$+f*ee,r[2]=p*S+v*U+m*I+g*se,r[6]=p*x+v*N+m*X+g*L,r[10]=p*T+v*V+m*J+g*Y,r[14]=p*B+v*q+m*$+g*ee,r[3]=M*S+C*U+w*I+E*se,r[7]=M*x+C*N+w*X+E*L,r[11]=M*T+C*V+w*J+E*Y,r[15]=M*B+C*q+w*$+E*ee,this}multiplyScalar(e){let t=this.elements;return t[0]*=e,t[4]*=e,t[8]*=e,t[12]*=e,t[1]*=e,t[5]*=e,t[9]*=e,t[13]*=e,t[2]*=e,t[6]*=e,t[10]*=e,t[14]*=e,t[3]*=e,t[7]*=e,t[11]*=e,t[15]*=e,this}determinant(){let e=this.elements,t=e[0],n=e[4],s=e[8],r=e[12],a=e[1],o=e[5],l=e[9],c=e[13],h=e[2],u=e[6],d=e[10],f=e[14],p=e[3],v=e[7],m=e[11],g=e[15],M=l*f-c*d,C=o*f-c*u,w=o*d-l*u,E=a*f-c*h,S=a*d-l*h,x=a*u-o*h;return t*(v*M-m*C+g*w)-n*(p*M-m*E+g*S)+s*(p*C-v*E+g*x)-r*(p*w-v*S+m*x)}determinantAffine(){let e=this.elements,t=e[0],n=e[4],s=e[8],r=e[1],a=e[5],o=e[9],l=e[2],c=e[6],h=e[10];return t*(a*h-o*c)-n*(r*h-o*l)+s*(r*c-a*l)}transpose(){let e=this.elements,t;return t=e[1],e[1]=e[4],e[4]=t,t=e[2],e[2]=e[8],e[8]=t,t=e[6],e[6]=e[9],e[9]=t,t=e[3],e[3]=e[12],e[12]=t,t=e[7],e[7]=e[13],e[13]=t,t=e[11],e[11]=e[14],e[14]=t,this}setPosition(e,t,n){let s=this.elements;return e.isVector3?(s[12]=e.x,s[13]=e.y,s[14]=e.z):(s[12]=e,s[13]=t,s[14]=n),this}invert(){let e=this.elements,t=e[0],n=e[1],s=e[2],r=e[3],a=e[4],o=e[5],l=e[6],c=e[7],h=e[8],u=e[9],d=e[10],f=e[11],p=e[12],v=e[13],m=e[14],g=e[15],M=t*o-n*a,C=t*l-s*a,w=t*c-r*a,E=n*l-s*o,S=n*c-r*o,x=s*c-r*l,T=h*v-u*p,B=h*m-d*p,U=h*g-f*p,N=u*m-d*v,V=u*g-f*v,q=d*g-f*m,I=M*q-C*V+w*N+E*U-S*B+x*T;if(I===0)return this.set(0,0,0,0,0,0,0,0,0,0,0,0,0,0,0,0);let X=1/I;return e[0]=(o*q-l*V+c*N)*X,e[1]=(s*V-n*q-r*N)*X,e[2]=(v*x-m*S+g*E)*X,e[3]=(d*S-u*x-f*E)*X,e[4]=(l*U-a*q-c*B)*X,e[5]=(t*q-s*U+r*B)*X,e[6]=(m*w-p*x-g*C)*X,e[7]=(h*x-d*w+f*C)*X,e[8]=(a*V-o*U+c*T)*X,e[9]=(n*U-t*V-r*T)*X,e[10]=(p*S-v*w+g*M)*X,e[11]=(u*w-h*S-f*M)*X,e[12]=(o*B-a*N-l*T)*X,e[13]=(t*N-n*B+s*T)*X,e[14]=(v*C-p*E-m*M)*X,e[15]=(h*E-u*C+d*M)*X,this}scale(e){let t=this.elements,n=e.x,s=e.y,r=e.z;return t[0]*=n,t[4]*=s,t[8]*=r,t[1]*=n,t[5]*=s,t[9]*=r,t[2]*=n,t[6]*=s,t[10]*=r,t[3]*=n,t[7]*=s,t[11]*=r,this}getMaxScaleOnAxis(){let e=this.elements,t=e[0]*e[0]+e[1]*e[1]+e[2]*e[2],n=e[4]*e[4]+e[5]*e[5]+e[6]*e[6],s=e[8]*e[8]+e[9]*e[9]+e[10]*e[10];return Math.sqrt(Math.max(t,n,s))}makeTranslation(e,t,n){return e.isVector3?this.set(1,0,0,e.x,0,1,0,e.y,0,0,1,e.z,0,0,0,1):this.set(1,0,0,e,0,1,0,t,0,0,1,n,0,0,0,1),this}makeRotationX(e){let t=Math.cos(e),n=Math.sin(e);return this.set(1,0,0,0,0,t,-n,0,0,n,t,0,0,0,0,1),this}makeRotationY(e){let t=Math.cos(e),n=Math.sin(e);return this.set(t,0,n,0,0,1,0,0,-n,0,t,0,0,0,0,1),this}makeRotationZ(e){let t=Math.cos(e),n=Math.sin(e);return this.set(t,-n,0,0,n,t,0,0,0,0,1,0,0,0,0,1),this}makeRotationAxis(e,t){let n=Math.cos(t),s=Math.sin(t),r=1-n,a=e.x,o=e.y,l=e.z,c=r*a,h=r*o;return this.set(c*a+n,c*o-s*l,c*l+s*o,0,c*o+s*l,h*o+n,h*l-s*a,0,c*l-s*o,h*l+s*a,r*l*l+n,0,0,0,0,1),this}makeScale(e,t,n){return this.set(e,0,0,0,0,t,0,0,0,0,n,0,0,0,0,1),this}makeShear(e,t,n,s,r,a){return this.set(1,n,r,0,e,1,a,0,t,s,1,0,0,0,0,1),this}compose(e,t,n){let s=this.elements,r=t._x,a=t._y,o=t._z,l=t._w,c=r+r,h=a+a,u=o+o,d=r*c,f=r*h,p=r*u,v=a*h,m=a*u,g=o*u,M=l*c,C=l*h,w=l*u,E=n.x,S=n.y,x=n.z;return s[0]=(1-(v+g))*E,s[1]=(f+w)*E,s[2]=(p-C)*E,s[3]=0,s[4]=(f-w)*S,s[5]=(1-(d+g))*S,s[6]=(m+M)*S,s[7]=0,s[8]=(p+C)*x,s[9]=(m-M)*x,s[10]=(1-(d+v))*x,s[11]=0,s[12]=e.x,s[13]=e.y,s[14]=e.z,s[15]=1,this}decompose(e,t,n){let s=this.elements;e.x=s[12],e.y=s[13],e.z=s[14];let r=this.determinantAffine();if(r===0)return n.set(1,1,1),t.identity(),this;let a=bs.set(s[0],s[1],s[2]).length(),o=bs.set(s[4],s[5],s[6]).length(),l=bs.set(s[8],s[9],s[10]).length();r<0&&(a=-a),Rn.copy(this);let c=1/a,h=1/o,u=1/l;return Rn.elements[0]*=c,Rn.elements[1]*=c,Rn.elements[2]*=c,Rn.elements[4]*=h,Rn.elements[5]*=h,Rn.elements[6]*=h,Rn.elements[8]*=u,Rn.elements[9]*=u,Rn.elements[10]*=u,t.setFromRotationMatrix(Rn),n.x=a,n.y=o,n.z=l,this}makePerspective(e,t,n,s,r,a,o=bn,l=!1){let c=this.elements,h=2*r/(t-e),u=2*r/(n-s),d=(t+e)/(t-e),f=(n+s)/(n-s),p,v;if(l)p=r/(a-r),v=a*r/(a-r);else if(o===bn)p=-(a+r)/(a-r),v=-2*a*r/(a-r);else if(o===_r)p=-a/(a-r),v=-a*r/(a-r);else throw new Error("THREE.Matrix4.makePerspective(): Invalid coordinate system: "+o);return c[0]=h,c[4]=0,c[8]=d,c[12]=0,c[1]=0,c[5]=u,c[9]=f,c[13]=0,c[2]=0,c[6]=0,c[10]=p,c[14]=v,c[3]=0,c[7]=0,c[11]=-1,c[15]=0,this}makeOrthographic(e,t,n,s,r,a,o=bn,l=!1){let c=this.elements,h=2/(t-e),u=2/(n-s),d=-(t+e)/(t-e),f=-(n+s)/(n-s),p,v;if(l)p=1/(a-r),v=a/(a-r);else if(o===bn)p=-2/(a-r),v=-(a+r)/(a-r);else if(o===_r)p=-1/(a-r),v=-r/(a-r);else throw new Error("THREE.Matrix4.makeOrthographic(): Invalid coordinate system: "+o);return c[0]=h,c[4]=0,c[8]=0,c[12]=d,c[1]=0,c[5]=u,c[9]=0,c[13]=f,c[2]=0,c[6]=0,c[10]=p,c[14]=v,c[3]=0,c[7]=0,c[11]=0,c[15]=1,this}equals(e){let t=this.elements,n=e.elements;for(let s=0;s<16;s++)if(t[s]!==n[s])return!1;return!0}fromArray(e,t=0){for(let n=0;n<16;n++)this.elements[n]=e[n+t];return this}toArray(e=[],t=0){let n=this.elements;return e[t]=n[0],e[t+1]=n[1],e[t+2]=n[2],e[t+3]=n[3],e[t+4]=n[4],e[t+5]=n[5],e[t+6]=n[6],e[t+7]=n[7],e[t+8]=n[8],e[t+9]=n[9],e[t+10]=n[10],e[t+11]=n[11],e[t+12]=n[12],e[t+13]=n[13],e[t+14]=n[14],e[t+15]=n[15],e}},bs=new k,Rn=new at,Lp=new k(0,0,0),Np=new k(1,1,1),Ti=new k,ua=new k,on=new k,nu=new at,iu=new Mn,Ii=class i{constructor(e=0,t=0,n=0,s=i.DEFAULT_ORDER){this.isEuler=!0,this._x=e,this._y=t,this._z=n,this._order=s}get x(){return this._x}set x(e){this._x=e,this._onChangeCallback()}get y(){return this._y}set y(e){this._y=e,this._onChangeCallback()}get z(){return this._z}set z(e){this._z=e,this._onChangeCallback()}get order(){return this._order}set order(e){this._order=e,this._onChangeCallback()}set(e,t,n,s=this._order){return this._x=e,this._y=t,this._z=n,this._order=s,this._onChangeCallback(),this}clone(){return new this.constructor(this._x,this._y,this._z,this._order)}copy(e){return this._x=e._x,this._y=e._y,this._z=e._z,this._order=e._order,this._onChangeCallback(),this}setFromRotationMatrix(e,t=this._order,n=!0){let s=e.elements,r=s[0],a=s[4],o=s[8],l=s[1],c=s[5],h=s[9],u=s[2],d=s[6],f=s[10];switch(t){case"XYZ":this._y=Math.asin(Qe(o,-1,1)),Math.abs(o)<.9999999?(this._x=Math.atan2(-h,f),this._z=Math.atan2(-a,r)):(this._x=Math.atan2(d,c),this._z=0);break;case"YXZ":this._x=Math.asin(-Qe(h,-1,1)),Math.abs(h)<.9999999?(this._y=Math.atan2(o,f),this._z=Math.atan2(l,c)):(this._y=Math.atan2(-u,r),this._z=0);break;case"ZXY":this._x=Math.asin(Qe(d,-1,1)),Math.abs(d)<.9999999?(this._y=Math.atan2(-u,f),this._z=Math.atan2(-a,c)):(this._y=0,this._z=Math.atan2(l,r));break;case"ZYX":this._y=Math.asin(-Qe(u,-1,1)),Math.abs(u)<.9999999?(this._x=Math.atan2(d,f),this._z=Math.atan2(l,r)):(this._x=0,this._z=Math.atan2(-a,c));break;case"YZX":this._z=Math.asin(Qe(l,-1,1)),Math.abs(l)<.9999999?(this._x=Math.atan2(-h,c),this._y=Math.atan2(-u,r)):(this._x=0,this._y=Math.atan2(o,f));break;case"XZY":this._z=Math.asin(-Qe(a,-1,1)),Math.abs(a)<.9999999?(this._x=Math.atan2(d,c),this._y=Math.atan2(o,r)):(this._x=Math.atan2(-h,f),this._y=0);break;default:Oe("Euler: .setFromRotationMatrix() encountered an unknown order: "+t)}return this._order=t,n===!0&&this._onChangeCallback(),this}setFromQuaternion(e,t,n){return nu.makeRotationFromQuaternion(e),this.setFromRotationMatrix(nu,t,n)}setFromVector3(e,t=this._order){return this.set(e.x,e.y,e.z,t)}reorder(e){return iu.setFromEuler(this),this.setFromQuaternion(iu,e)}equals(e){return e._x===this._x&&e._y===this._y&&e._z===this._z&&e._order===this._order}fromArray(e){return this._x=e[0],this._y=e[1],this._z=e[2],e[3]!==void 0&&(this._order=e[3]),this._onChangeCallback(),this}toArray(e=[],t=0){return e[t]=this._x,e[t+1]=this._y,e[t+2]=this._z,e[t+3]=this._order,e}_onChange(e){return this._onChangeCallback=e,this}_onChangeCallback(){}*[Symbol.iterator](){yield this._x,yield this._y,yield this._z,yield this._order}};Ii.DEFAULT_ORDER="XYZ";var Os=class{constructor(){this.mask=1}set(e){this.mask=(1<<e|0)>>>0}enable(e){this.mask|=1<<e|0}enableAll(){this.mask=-1}toggle(e){this.mask^=1<<e|0}disable(e){this.mask&=~(1<<e|0)}disableAll(){this.mask=0}test(e){return(this.mask&e.mask)!==0}isEnabled(e){return(this.mask&(1<<e|0))!==0}},Dp=0,su=new k,Ms=new Mn,ii=new at,da=new k,lr=new k,Up=new k,Fp=new Mn,ru=new k(1,0,0),au=new k(0,1,0),ou=new k(0,0,1),lu={type:"added"},Op={type:"removed"},ws={type:"childadded",child:null},zl={type:"childremoved",child:null},dn=class i extends Gn{constructor(){super(),this.isObject3D=!0,Object.defineProperty(this,"id",{value:Dp++}),this.uuid=Or(),this.name="",this.type="Object3D",this.parent=null,this.children=[],this.up=i.DEFAULT_UP.clone();let e=new k,t=new Ii,n=new Mn,s=new k(1,1,1);function r(){n.setFromEuler(t,!1)}function a(){t.setFromQuaternion(n,void 0,!1)}t._onChange(r),n._onChange(a),Object.defineProperties(this,{position:{configurable:!0,enumerable:!0,value:e},rotation:{configurable:!0,enumerable:!0,value:t},quaternion:{configurable:!0,enumerable:!0,value:n},scale:{configurable:!0,enumerable:!0,value:s},modelViewMatrix:{value:new at},normalMatrix:{value:new Ve}}),this.matrix=new at,this.matrixWorld=new at,this.matrixAutoUpdate=i.DEFAULT_MATRIX_AUTO_UPDATE,this.matrixWorldAutoUpdate=i.DEFAULT_MATRIX_WORLD_AUTO_UPDATE,this.matrixWorldNeedsUpdate=!1,this.layers=new Os,this.visible=!0,this.castShadow=!1,this.receiveShadow=!1,this.frustumCulled=!0,this.renderOrder=0,this.animations=[],this.customDepthMaterial=void 0,this.customDistanceMaterial=void 0,this.static=!1,this.userData={},this.pivot=null}onBeforeShadow(){}onAfterShadow(){}onBeforeRender(){}onAfterRender(){}applyMatrix4(e){this.matrixAutoUpdate&&this.updateMatrix(),this.matrix.premultiply(e),this.matrix.decompose(this.position,this.quaternion,this.scale),this.pivot!==null&&this.position.copy(this.pivot).applyMatrix4(this.matrix).sub(this.pivot)}applyQuaternion(e){return this.quaternion.premultiply(e),this}setRotationFromAxisAngle(e,t){this.quaternion.setFromAxisAngle(e,t)}setRotationFromEuler(e){this.quaternion.setFromEuler(e,!0)}setRotationFromMatrix(e){this.quaternion.setFromRotationMatrix(e)}setRotationFromQuaternion(e){this.quaternion.copy(e)}rotateOnAxis(e,t){return Ms.setFromAxisAngle(e,t),this.quaternion.multiply(Ms),this}rotateOnWorldAxis(e,t){return Ms.setFromAxisAngle(e,t),this.quaternion.premultiply(Ms),this}rotateX(e){return this.rotateOnAxis(ru,e)}rotateY(e){return this.rotateOnAxis(au,e)}rotateZ(e){return this.rotateOnAxis(ou,e)}translateOnAxis(e,t){return su.copy(e).applyQuaternion(this.quaternion),this.position.add(su.multiplyScalar(t)),this}translateX(e){return this.translateOnAxis(ru,e)}translateY(e){return this.translateOnAxis(au,e)}translateZ(e){return this.translateOnAxis(ou,e)}localToWorld(e){return this.updateWorldMatrix(!0,!1),e.applyMatrix4(this.matrixWorld)}worldToLocal(e){return this.updateWorldMatrix(!0,!1),e.applyMatrix4(ii.copy(this.matrixWorld).invert())}lookAt(e,t,n){e.isVector3?da.copy(e):da.set(e,t,n);let s=this.parent;this.updateWorldMatrix(!0,!1),lr.setFromMatrixPosition(this.matrixWorld),this.isCamera||this.isLight?ii.lookAt(lr,da,this.up):ii.lookAt(da,lr,this.up),this.quaternion.setFromRotationMatrix(ii),s&&(ii.extractRotation(s.matrixWorld),Ms.setFromRotationMatrix(ii),this.quaternion.premultiply(Ms.invert()))}add(e){if(arguments.length>1){for(let t=0;t<arguments.length;t++)this.add(arguments[t]);return this}return e===this?(ze("Object3D.add: object can't be added as a child of itself.",e),this):(e&&e.isObject3D?(e.removeFromParent(),e.parent=this,this.children.push(e),e.dispatchEvent(lu),ws.child=e,this.dispatchEvent(ws),ws.child=null):ze("Object3D.add: object not an instance of THREE.Object3D.",e),this)}remove(e){if(arguments.length>1){for(let n=0;n<arguments.length;n++)this.remove(arguments[n]);return this}let t=this.children.indexOf(e);return t!==-1&&(e.parent=null,this.children.splice(t,1),e.dispatchEvent(Op),zl.child=e,this.dispatchEvent(zl),zl.child=null),this}removeFromParent(){let e=this.parent;return e!==null&&e.remove(this),this}clear(){return this.remove(...this.children)}attach(e){return this.updateWorldMatrix(!0,!1),ii.copy(this.matrixWorld).invert(),e.parent!==null&&(e.parent.updateWorldMatrix(!0,!1),ii.multiply(e.parent.matrixWorld)),e.applyMatrix4(ii),e.removeFromParent(),e.parent=this,this.children.push(e),e.updateWorldMatrix(!1,!0),e.dispatchEvent(lu),ws.child=e,this.dispatchEvent(ws),ws.child=null,this}getObjectById(e){return this.getObjectByProperty("id",e)}getObjectByName(e){return this.getObjectByProperty("name",e)}getObjectByProperty(e,t){if(this[e]===t)return this;for(let n=0,s=this.children.length;n<s;n++){let a=this.children[n].getObjectByProperty(e,t);if(a!==void 0)return a}}getObjectsByProperty(e,t,n=[]){this[e]===t&&n.push(this);let s=this.children;for(let r=0,a=s.length;r<a;r++)s[r].getObjectsByProperty(e,t,n);return n}getWorldPosition(e){return this.updateWorldMatrix(!0,!1),e.setFromMatrixPosition(this.matrixWorld)}getWorldQuaternion(e){return this.updateWorldMatrix(!0,!1),this.matrixWorld.decompose(lr,e,Up),e}getWorldScale(e){return this.updateWorldMatrix(!0,!1),this.matrixWorld.decompose(lr,Fp,e),e}getWorldDirection(e){this.updateWorldMatrix(!0,!1);let t=this.matrixWorld.elements;return e.set(t[8],t[9],t[10]).normalize()}raycast(){}intersectsFrustum(){return!0}traverse(e){e(this);let t=this.children;for(let n=0,s=t.length;n<s;n++)t[n].traverse(e)}traverseVisible(e){if(this.visible===!1)return;e(this);let t=this.children;for(let n=0,s=t.length;n<s;n++)t[n].traverseVisible(e)}traverseAncestors(e){let t=this.parent;t!==null&&(e(t),t.traverseAncestors(e))}updateMatrix(){this.matrix.compose(this.position,this.quaternion,this.scale);let e=this.pivot;if(e!==null){let t=e.x,n=e.y,s=e.z,r=this.matrix.elements;r[12]+=t-r[0]*t-r[4]*n-r[8]*s,r[13]+=n-r[1]*t-r[5]*n-r[9]*s,r[14]+=s-r[2]*t-r[6]*n-r[10]*s}this.matrixWorldNeedsUpdate=!0}updateMatrixWorld(e){this.matrixAutoUpdate&&this.updateMatrix(),(this.matrixWorldNeedsUpdate||e)&&(this.matrixWorldAutoUpdate===!0&&(this.parent===null?this.matrixWorld.copy(this.matrix):this.matrixWorld.multiplyMatrices(this.parent.matrixWorld,this.matrix)),this.matrixWorldNeedsUpdate=!1,e=!0);let t=this.children;for(let n=0,s=t.length;n<s;n++)t[n].updateMatrixWorld(e)}updateWorldMatrix(e,t,n=!1){let s=this.parent;if(e===!0&&s!==null&&s.updateWorldMatrix(!0,!1),this.matrixAutoUpdate&&this.updateMatrix(),(this.matrixWorldNeedsUpdate||n)&&(this.matrixWorldAutoUpdate===!0&&(this.parent===null?this.matrixWorld.copy(this.matrix):this.matrixWorld.multiplyMatrices(this.parent.matrixWorld,this.matrix)),this.matrixWorldNeedsUpdate=!1,n=!0),t===!0){let r=this.children;for(let a=0,o=r.length;a<o;a++)r[a].updateWorldMatrix(!1,!0,n)}}toJSON(e){let t=e===void 0||typeof e=="string",n={};t&&(e={geometries:{},materials:{},textures:{},images:{},shapes:{},skeletons:{},animations:{},nodes:{}},n.metadata={version:4.7,type:"Object",generator:"Object3D.toJSON"});let s={};s.uuid=this.uuid,s.type=this.type,s.name=this.name,s.castShadow=this.castShadow,s.receiveShadow=this.receiveShadow,s.visible=this.visible,s.frustumCulled=this.frustumCulled,s.renderOrder=this.renderOrder,s.static=this.static,s.matrixAutoUpdate=this.matrixAutoUpdate,Object.keys(this.userData).length>0&&(s.userData=this.userData),s.layers=this.layers.mask,s.matrix=this.matrix.toArray(),s.up=this.up.toArray(),this.pivot!==null&&(s.pivot=this.pivot.toArray()),this.morphTargetDictionary!==void 0&&(s.morphTargetDictionary=Object.assign({},this.morphTargetDictionary)),this.morphTargetInfluences!==void 0&&(s.morphTargetInfluences=this.morphTargetInfluences.slice()),this.isInstancedMesh&&(s.type="InstancedMesh",s.count=this.count,s.instanceMatrix=this.instanceMatrix.toJSON(),this.instanceColor!==null&&(s.instanceColor=this.instanceColor.toJSON())),this.isBatchedMesh&&(s.type="BatchedMesh",s.perObjectFrustumCulled=this.perObjectFrustumCulled,s.sortObjects=this.sortObjects,s.drawRanges=this._drawRanges,s.reservedRanges=this._reservedRanges,s.geometryInfo=this._geometryInfo.map(o=>({...o,boundingBox:o.boundingBox?o.boundingBox.toJSON():void 0,boundingSphere:o.boundingSphere?o.boundingSphere.toJSON():void 0})),s.instanceInfo=this._instanceInfo.map(o=>({...o})),s.availableInstanceIds=this._availableInstanceIds.slice(),s.availableGeometryIds=this._availableGeometryIds.slice(),s.nextIndexStart=this._nextIndexStart,s.nextVertexStart=this._nextVertexStart,s.geometryCount=this._geometryCount,s.maxInstanceCount=this._maxInstanceCount,s.maxVertexCount=this._maxVertexCount,s.maxIndexCount=this._maxIndexCount,s.geometryInitialized=this._geometryInitialized,s.matricesTexture=this._matricesTexture.toJSON(e),s.indirectTexture=this._indirectTexture.toJSON(e),this._colorsTexture!==null&&(s.colorsTexture=this._colorsTexture.toJSON(e)),this.boundingSphere!==null&&(s.boundingSphere=this.boundingSphere.toJSON()),this.boundingBox!==null&&(s.boundingBox=this.boundingBox.toJSON()));function r(o,l){return o[l.uuid]===void 0&&(o[l.uuid]=l.toJSON(e)),l.uuid}if(this.isScene)this.background&&(this.background.isColor?s.background=this.background.toJSON():this.background.isTexture&&(s.background=this.background.toJSON(e).uuid)),this.environment&&this.environment.isTexture&&this.environment.isRenderTargetTexture!==!0&&(s.environment=this.environment.toJSON(e).uuid);else if(this.isMesh||this.isLine||this.isPoints){s.geometry=r(e.geometries,this.geometry);let o=this.geometry.parameters;if(o!==void 0&&o.shapes!==void 0){let l=o.shapes;if(Array.isArray(l))for(let c=0,h=l.length;c<h;c++){let u=l[c];r(e.shapes,u)}else r(e.shapes,l)}}if(this.isSkinnedMesh&&(s.bindMode=this.bindMode,s.bindMatrix=this.bindMatrix.toArray(),this.skeleton!==void 0&&(r(e.skeletons,this.skeleton),s.skeleton=this.skeleton.uuid)),this.material!==void 0)if(Array.isArray(this.material)){let o=[];for(let l=0,c=this.material.length;l<c;l++)o.push(r(e.materials,this.material[l]));s.material=o}else s.material=r(e.materials,this.material);if(this.children.length>0){s.children=[];for(let o=0;o<this.children.length;o++)s.children.push(this.children[o].toJSON(e).object)}if(this.animations.length>0){s.animations=[];for(let o=0;o<this.animations.length;o++){let l=this.animations[o];s.animations.push(r(e.animations,l))}}if(t){let o=a(e.geometries),l=a(e.materials),c=a(e.textures),h=a(e.images),u=a(e.shapes),d=a(e.skeletons),f=a(e.animations),p=a(e.nodes);o.length>0&&(n.geometries=o),l.length>0&&(n.materials=l),c.length>0&&(n.textures=c),h.length>0&&(n.images=h),u.length>0&&(n.shapes=u),d.length>0&&(n.skeletons=d),f.length>0&&(n.animations=f),p.length>0&&(n.nodes=p)}return n.object=s,n;function a(o){let l=[];for(let c in o){let h=o[c];delete h.metadata,l.push(h)}return l}}clone(e){return new this.constructor().copy(this,e)}copy(e,t=!0){if(this.name=e.name,this.up.copy(e.up),this.position.copy(e.position),this.rotation.order=e.rotation.order,this.quaternion.copy(e.quaternion),this.scale.copy(e.scale),this.pivot=e.pivot!==null?e.pivot.clone():null,this.matrix.copy(e.matrix),this.matrixWorld.copy(e.matrixWorld),this.matrixAutoUpdate=e.matrixAutoUpdate,this.matrixWorldAutoUpdate=e.matrixWorldAutoUpdate,this.matrixWorldNeedsUpdate=e.matrixWorldNeedsUpdate,this.layers.mask=e.layers.mask,this.visible=e.visible,this.castShadow=e.castShadow,this.receiveShadow=e.receiveShadow,this.frustumCulled=e.frustumCulled,this.renderOrder=e.renderOrder,this.static=e.static,this.animations=e.animations.slice(),this.userData=JSON.parse(JSON.stringify(e.userData)),t===!0)for(let n=0;n<e.children.length;n++){let s=e.children[n];this.add(s.clone())}return this}dispose(){this.dispatchEvent({type:"dispose"})}};dn.DEFAULT_UP=new k(0,1,0);dn.DEFAULT_MATRIX_AUTO_UPDATE=!0;dn.DEFAULT_MATRIX_WORLD_AUTO_UPDATE=!0;var kt=class extends dn{constructor(){super(),this.isGroup=!0,this.type="Group"}},kp={type:"move"},ks=class{constructor(){this._targetRay=null,this._grip=null,this._hand=null}getHandSpace(){return this._hand===null&&(this._hand=new kt,this._hand.matrixAutoUpdate=!1,this._hand.visible=!1,this._hand.joints={},this._hand.inputState={pinching:!1}),this._hand}getTargetRaySpace(){return this._targetRay===null&&(this._targetRay=new kt,this._targetRay.matrixAutoUpdate=!1,this._targetRay.visible=!1,this._targetRay.hasLinearVelocity=!1,this._targetRay.linearVelocity=new k,this._targetRay.hasAngularVelocity=!1,this._targetRay.angularVelocity=new k),this._targetRay}getGripSpace(){return this._grip===null&&(this._grip=new kt,this._grip.matrixAutoUpdate=!1,this._grip.visible=!1,this._grip.hasLinearVelocity=!1,this._grip.linearVelocity=new k,this._grip.hasAngularVelocity=!1,this._grip.angularVelocity=new k,this._grip.eventsEnabled=!1),this._grip}dispatchEvent(e){return this._targetRay!==null&&this._targetRay.dispatchEvent(e),this._grip!==null&&this._grip.dispatchEvent(e),this._hand!==null&&this._hand.dispatchEvent(e),this}connect(e){if(e&&e.hand){let t=this._hand;if(t)for(let n of e.hand.values())this._getHandJoint(t,n)}return this.dispatchEvent({type:"connected",data:e}),this}disconnect(e){return this.dispatchEvent({type:"disconnected",data:e}),this._targetRay!==null&&(this._targetRay.visible=!1),this._grip!==null&&(this._grip.visible=!1),this._hand!==null&&(this._hand.visible=!1),this}update(e,t,n){let s=null,r=null,a=null,o=this._targetRay,l=this._grip,c=this._hand;if(e&&t.session.visibilityState!=="visible-blurred"){if(c&&e.hand){a=!0;for(let v of e.hand.values()){let m=t.getJointPose(v,n),g=this._getHandJoint(c,v);m!==null&&(g.matrix.fromArray(m.transform.matrix),g.matrix.decompose(g.position,g.quaternion,g.scale),g.matrixWorldNeedsUpdate=!0,g.jointRadius=m.radius),g.visible=m!==null}let h=c.joints["index-finger-tip"],u=c.joints["thumb-tip"],d=h.position.distanceTo(u.position),f=.02,p=.005;c.inputState.pinching&&d>f+p?(c.inputState.pinching=!1,this.dispatchEvent({type:"pinchend",handedness:e.handedness,target:this})):!c.inputState.pinching&&d<=f-p&&(c.inputState.pinching=!0,this.dispatchEvent({type:"pinchstart",handedness:e.handedness,target:this}))}else l!==null&&e.gripSpace&&(r=t.getPose(e.gripSpace,n),r!==null&&(l.matrix.fromArray(r.transform.matrix),l.matrix.decompose(l.position,l.quaternion,l.scale),l.matrixWorldNeedsUpdate=!0,r.linearVelocity?(l.hasLinearVelocity=!0,l.linearVelocity.copy(r.linearVelocity)):l.hasLinearVelocity=!1,r.angularVelocity?(l.hasAngularVelocity=!0,l.angularVelocity.copy(r.angularVelocity)):l.hasAngularVelocity=!1,l.eventsEnabled&&l.dispatchEvent({type:"gripUpdated",data:e,target:this})));o!==null&&(s=t.getPose(e.targetRaySpace,n),s===null&&r!==null&&(s=r),s!==null&&(o.matrix.fromArray(s.transform.matrix),o.matrix.decompose(o.position,o.quaternion,o.scale),o.matrixWorldNeedsUpdate=!0,s.linearVelocity?(o.hasLinearVelocity=!0,o.linearVelocity.copy(s.linearVelocity)):o.hasLinearVelocity=!1,s.angularVelocity?(o.hasAngularVelocity=!0,o.angularVelocity.copy(s.angularVelocity)):o.hasAngularVelocity=!1,this.dispatchEvent(kp)))}return o!==null&&(o.visible=s!==null),l!==null&&(l.visible=r!==null),c!==null&&(c.visible=a!==null),this}_getHandJoint(e,t){if(e.joints[t.jointName]===void 0){let n=new kt;n.matrixAutoUpdate=!1,n.visible=!1,e.joints[t.jointName]=n,e.add(n)}return e.joints[t.jointName]}},cd={aliceblue:15792383,antiquewhite:16444375,aqua:65535,aquamarine:8388564,azure:15794175,beige:16119260,bisque:16770244,black:0,blanchedalmond:16772045,blue:255,blueviolet:9055202,brown:10824234,burlywood:14596231,cadetblue:6266528,chartreuse:8388352,chocolate:13789470,coral:16744272,cornflowerblue:6591981,cornsilk:16775388,crimson:14423100,cyan:65535,darkblue:139,darkcyan:35723,darkgoldenrod:12092939,darkgray:11119017,darkgreen:25600,darkgrey:11119017,darkkhaki:12433259,darkmagenta:9109643,darkolivegreen:5597999,darkorange:16747520,darkorchid:10040012,darkred:9109504,darksalmon:15308410,darkseagreen:9419919,darkslateblue:4734347,darkslategray:3100495,darkslategrey:3100495,darkturquoise:52945,darkviolet:9699539,deeppink:16716947,deepskyblue:49151,dimgray:6908265,dimgrey:6908265,dodgerblue:2003199,firebrick:11674146,floralwhite:16775920,forestgreen:2263842,fuchsia:16711935,gainsboro:14474460,ghostwhite:16316671,gold:16766720,goldenrod:14329120,gray:8421504,green:32768,greenyellow:11403055,grey:8421504,honeydew:15794160,hotpink:16738740,indianred:13458524,indigo:4915330,ivory:16777200,khaki:15787660,lavender:15132410,lavenderblush:16773365,lawngreen:8190976,lemonchiffon:16775885,lightblue:11393254,lightcoral:15761536,lightcyan:14745599,lightgoldenrodyellow:16448210,lightgray:13882323,lightgreen:9498256,lightgrey:13882323,lightpink:16758465,lightsalmon:16752762,lightseagreen:2142890,lightskyblue:8900346,lightslategray:7833753,lightslategrey:7833753,lightsteelblue:11584734,lightyellow:16777184,lime:65280,limegreen:3329330,linen:16445670,magenta:16711935,maroon:8388608,mediumaquamarine:6737322,mediumblue:205,mediumorchid:12211667,mediumpurple:9662683,mediumseagreen:3978097,mediumslateblue:8087790,mediumspringgreen:64154,mediumturquoise:4772300,mediumvioletred:13047173,midnightblue:1644912,mintcream:16121850,mistyrose:16770273,moccasin:16770229,navajowhite:16768685,navy:128,oldlace:16643558,olive:8421376,olivedrab:7048739,orange:16753920,orangered:16729344,orchid:14315734,palegoldenrod:15657130,palegreen:10025880,paleturquoise:11529966,palevioletred:14381203,papayawhip:16773077,peachpuff:16767673,peru:13468991,pink:16761035,plum:14524637,powderblue:11591910,purple:8388736,rebeccapurple:6697881,red:16711680,rosybrown:12357519,royalblue:4286945,saddlebrown:9127187,salmon:16416882,sandybrown:16032864,seagreen:3050327,seashell:16774638,sienna:10506797,silver:12632256,skyblue:8900331,slateblue:6970061,slategray:7372944,slategrey:7372944,snow:16775930,springgreen:65407,steelblue:4620980,tan:13808780,teal:32896,thistle:14204888,tomato:16737095,turquoise:4251856,violet:15631086,wheat:16113331,white:16777215,whitesmoke:16119285,yellow:16776960,yellowgreen:10145074},Ei={h:0,s:0,l:0},fa={h:0,s:0,l:0};function Vl(i,e,t){return t<0&&(t+=1),t>1&&(t-=1),t<1/6?i+(e-i)*6*t:t<1/2?e:t<2/3?i+(e-i)*6*(2/3-t):i}var je=class{constructor(e,t,n){return this.isColor=!0,this.r=1,this.g=1,this.b=1,this.set(e,t,n)}set(e,t,n){if(t===void 0&&n===void 0){let s=e;s&&s.isColor?this.copy(s):typeof s=="number"?this.setHex(s):typeof s=="string"&&this.setStyle(s)}else this.setRGB(e,t,n);return this}setScalar(e){return this.r=e,this.g=e,this.b=e,this}setHex(e,t=cn){return e=Math.floor(e),this.r=(e>>16&255)/255,this.g=(e>>8&255)/255,this.b=(e&255)/255,Ke.colorSpaceToWorking(this,t),this}setRGB(e,t,n,s=Ke.workingColorSpace){return this.r=e,this.g=t,this.b=n,Ke.colorSpaceToWorking(this,s),this}setHSL(e,t,n,s=Ke.workingColorSpace){if(e=Ep(e,1),t=Qe(t,0,1),n=Qe(n,0,1),t===0)this.r=this.g=this.b=n;else{let r=n<=.5?n*(1+t):n+t-n*t,a=2*n-r;this.r=Vl(a,r,e+1/3),this.g=Vl(a,r,e),this.b=Vl(a,r,e-1/3)}return Ke.colorSpaceToWorking(this,s),this}setStyle(e,t=cn){function n(r){r!==void 0&&parseFloat(r)<1&&Oe("Color: Alpha component of "+e+" will be ignored.")}let s;if(s=/^(\w+)\(([^\)]*)\)/.exec(e)){let r,a=s[1],o=s[2];switch(a){case"rgb":case"rgba":if(r=/^\s*(\d+)\s*,\s*(\d+)\s*,\s*(\d+)\s*(?:,\s*(\d+(?:\.\d+)?|\.\d+)\s*)?$/.exec(o))return n(r[4]),this.setRGB(Math.min(255,parseInt(r[1],10))/255,Math.min(255,parseInt(r[2],10))/255,Math.min(255,parseInt(r[3],10))/255,t);if(r=/^\s*(\d+(?:\.\d+)?|\.\d+)\%\s*,\s*(\d+(?:\.\d+)?|\.\d+)\%\s*,\s*(\d+(?:\.\d+)?|\.\d+)\%\s*(?:,\s*(\d+(?:\.\d+)?|\.\d+)\s*)?$/.exec(o))return n(r[4]),this.setRGB(Math.min(100,parseFloat(r[1]))/100,Math.min(100,parseFloat(r[2]))/100,Math.min(100,parseFloat(r[3]))/100,t);break;case"hsl":case"hsla":if(r=/^\s*([+-]?(?:\d+(?:\.\d+)?|\.\d+))\s*,\s*(\d+(?:\.\d+)?|\.\d+)\%\s*,\s*(\d+(?:\.\d+)?|\.\d+)\%\s*(?:,\s*(\d+(?:\.\d+)?|\.\d+)\s*)?$/.exec(o))return n(r[4]),this.setHSL(parseFloat(r[1])/360,parseFloat(r[2])/100,parseFloat(r[3])/100,t);break;default:Oe("Color: Unknown color model "+e)}}else if(s=/^\#([A-Fa-f\d]+)$/.exec(e)){let r=s[1],a=r.length;if(a===3)return this.setRGB(parseInt(r.charAt(0),16)/15,parseInt(r.charAt(1),16)/15,parseInt(r.charAt(2),16)/15,t);if(a===6)return this.setHex(parseInt(r,16),t);Oe("Color: Invalid hex color "+e)}else if(e&&e.length>0)return this.setColorName(e,t);return this}setColorName(e,t=cn){let n=cd[e.toLowerCase()];return n!==void 0?this.setHex(n,t):Oe("Color: Unknown color "+e),this}clone(){return new this.constructor(this.r,this.g,this.b)}copy(e){return this.r=e.r,this.g=e.g,this.b=e.b,this}copySRGBToLinear(e){return this.r=li(e.r),this.g=li(e.g),this.b=li(e.b),this}copyLinearToSRGB(e){return this.r=Ns(e.r),this.g=Ns(e.g),this.b=Ns(e.b),this}convertSRGBToLinear(){return this.copySRGBToLinear(this),this}convertLinearToSRGB(){return this.copyLinearToSRGB(this),this}getHex(e=cn){return Ke.workingToColorSpace(Gt.copy(this),e),Math.round(Qe(Gt.r*255,0,255))*65536+Math.round(Qe(Gt.g*255,0,255))*256+Math.round(Qe(Gt.b*255,0,255))}getHexString(e=cn){return("000000"+this.getHex(e).toString(16)).slice(-6)}getHSL(e,t=Ke.workingColorSpace){Ke.workingToColorSpace(Gt.copy(this),t);let n=Gt.r,s=Gt.g,r=Gt.b,a=Math.max(n,s,r),o=Math.min(n,s,r),l,c,h=(o+a)/2;if(o===a)l=0,c=0;else{let u=a-o;switch(c=h<=.5?u/(a+o):u/(2-a-o),a){case n:l=(s-r)/u+(s<r?6:0);break;case s:l=(r-n)/u+2;break;case r:l=(n-s)/u+4;break}l/=6}return e.h=l,e.s=c,e.l=h,e}getRGB(e,t=Ke.workingColorSpace){return Ke.workingToColorSpace(Gt.copy(this),t),e.r=Gt.r,e.g=Gt.g,e.b=Gt.b,e}getStyle(e=cn){Ke.workingToColorSpace(Gt.copy(this),e);let t=Gt.r,n=Gt.g,s=Gt.b;return e!==cn?`color(${e} ${t.toFixed(3)} ${n.toFixed(3)} ${s.toFixed(3)})`:`rgb(${Math.round(t*255)},${Math.round(n*255)},${Math.round(s*255)})`}offsetHSL(e,t,n){return this.getHSL(Ei),this.setHSL(Ei.h+e,Ei.s+t,Ei.l+n)}add(e){return this.r+=e.r,this.g+=e.g,this.b+=e.b,this}addColors(e,t){return this.r=e.r+t.r,this.g=e.g+t.g,this.b=e.b+t.b,this}addScalar(e){return this.r+=e,this.g+=e,this.b+=e,this}sub(e){return this.r=Math.max(0,this.r-e.r),this.g=Math.max(0,this.g-e.g),this.b=Math.max(0,this.b-e.b),this}multiply(e){return this.r*=e.r,this.g*=e.g,this.b*=e.b,this}multiplyScalar(e){return this.r*=e,this.g*=e,this.b*=e,this}lerp(e,t){return this.r+=(e.r-this.r)*t,this.g+=(e.g-this.g)*t,this.b+=(e.b-this.b)*t,this}lerpColors(e,t,n){return this.r=e.r+(t.r-e.r)*n,this.g=e.g+(t.g-e.g)*n,this.b=e.b+(t.b-e.b)*n,this}lerpHSL(e,t){this.getHSL(Ei),e.getHSL(fa);let n=Ul(Ei.h,fa.h,t),s=Ul(Ei.s,fa.s,t),r=Ul(Ei.l,fa.l,t);return this.setHSL(n,s,r),this}setFromVector3(e){return this.r=e.x,this.g=e.y,this.b=e.z,this}applyMatrix3(e){let t=this.r,n=this.g,s=this.b,r=e.elements;return this.r=r[0]*t+r[3]*n+r[6]*s,this.g=r[1]*t+r[4]*n+r[7]*s,this.b=r[2]*t+r[5]*n+r[8]*s,this}equals(e){return e.r===this.r&&e.g===this.g&&e.b===this.b}fromArray(e,t=0){return this.r=e[t],this.g=e[t+1],this.b=e[t+2],this}toArray(e=[],t=0){return e[t]=this.r,e[t+1]=this.g,e[t+2]=this.b,e}fromBufferAttribute(e,t){return this.r=e.getX(t),this.g=e.getY(t),this.b=e.getZ(t),this}toJSON(){return this.getHex()}*[Symbol.iterator](){yield this.r,yield this.g,yield this.b}},Gt=new je;je.NAMES=cd;var ts=class extends dn{constructor(){super(),this.isScene=!0,this.type="Scene",this.background=null,this.environment=null,this.fog=null,this.backgroundBlurriness=0,this.backgroundIntensity=1,this.backgroundRotation=new Ii,this.environmentIntensity=1,this.environmentRotation=new Ii,this.overrideMaterial=null,typeof __THREE_DEVTOOLS__<"u"&&__THREE_DEVTOOLS__.dispatchEvent(new CustomEvent("observe",{detail:this}))}copy(e,t){return super.copy(e,t),this.background=e.background!==null?e.background.clone():null,this.environment=e.environment!==null?e.environment.clone():null,this.fog=e.fog!==null?e.fog.clone():null,this.backgroundBlurriness=e.backgroundBlurriness,this.backgroundIntensity=e.backgroundIntensity,this.backgroundRotation.copy(e.backgroundRotation),this.environmentIntensity=e.environmentIntensity,this.environmentRotation.copy(e.environmentRotation),this.overrideMaterial=e.overrideMaterial!==null?e.overrideMaterial.clone():null,this.matrixAutoUpdate=e.matrixAutoUpdate,this}toJSON(e){let t=super.toJSON(e);return this.fog!==null&&(t.object.fog=this.fog.toJSON()),t.object.backgroundBlurriness=this.backgroundBlurriness,t.object.backgroundIntensity=this.backgroundIntensity,t.object.backgroundRotation=this.backgroundRotation.toArray(),t.object.environmentIntensity=this.environmentIntensity,t.object.environmentRotation=this.environmentRotation.toArray(),t}},Pn=new k,si=new k,Gl=new k,ri=new k,Ss=new k,Ts=new k,cu=new k,Hl=new k,Wl=new k,$l=new k,Xl=new _t,ql=new _t,Yl=new _t,Pi=class i{constructor(e=new k,t=new k,n=new k){this.a=e,this.b=t,this.c=n}static getNormal(e,t,n,s){s.subVectors(n,t),Pn.subVectors(e,t),s.cross(Pn);let r=s.lengthSq();return r>0?s.multiplyScalar(1/Math.sqrt(r)):s.set(0,0,0)}static getBarycoord(e,t,n,s,r){Pn.subVectors(s,t),si.subVectors(n,t),Gl.subVectors(e,t);let a=Pn.dot(Pn),o=Pn.dot(si),l=Pn.dot(Gl),c=si.dot(si),h=si.dot(Gl),u=a*c-o*o;if(u===0)return r.set(0,0,0),null;let d=1/u,f=(c*l-o*h)*d,p=(a*h-o*l)*d;return r.set(1-f-p,p,f)}static containsPoint(e,t,n,s){return this.getBarycoord(e,t,n,s,ri)===null?!1:ri.x>=0&&ri.y>=0&&ri.x+ri.y<=1}static getInterpolation(e,t,n,s,r,a,o,l){return this.getBarycoord(e,t,n,s,ri)===null?(l.x=0,l.y=0,"z"in l&&(l.z=0),"w"in l&&(l.w=0),null):(l.setScalar(0),l.addScaledVector(r,ri.x),l.addScaledVector(a,ri.y),l.addScaledVector(o,ri.z),l)}static getInterpolatedAttribute(e,t,n,s,r,a){return Xl.setScalar(0),ql.setScalar(0),Yl.setScalar(0),Xl.fromBufferAttribute(e,t),ql.fromBufferAttribute(e,n),Yl.fromBufferAttribute(e,s),a.setScalar(0),a.addScaledVector(Xl,r.x),a.addScaledVector(ql,r.y),a.addScaledVector(Yl,r.z),a}static isFrontFacing(e,t,n,s){return Pn.subVectors(n,t),si.subVectors(e,t),Pn.cross(si).dot(s)<0}set(e,t,n){return this.a.copy(e),this.b.copy(t),this.c.copy(n),this}setFromPointsAndIndices(e,t,n,s){return this.a.copy(e[t]),this.b.copy(e[n]),this.c.copy(e[s]),this}setFromAttributeAndIndices(e,t,n,s){return this.a.fromBufferAttribute(e,t),this.b.fromBufferAttribute(e,n),this.c.fromBufferAttribute(e,s),this}clone(){return new this.constructor().copy(this)}copy(e){return this.a.copy(e.a),this.b.copy(e.b),this.c.copy(e.c),this}getArea(){return Pn.subVectors(this.c,this.b),si.subVectors(this.a,this.b),Pn.cross(si).length()*.5}getMidpoint(e){return e.addVectors(this.a,this.b).add(this.c).multiplyScalar(1/3)}getNormal(e){return i.getNormal(this.a,this.b,this.c,e)}getPlane(e){return e.setFromCoplanarPoints(this.a,this.b,this.c)}getBarycoord(e,t){return i.getBarycoord(e,this.a,this.b,this.c,t)}getInterpolation(e,t,n,s,r){return i.getInterpolation(e,this.a,this.b,this.c,t,n,s,r)}containsPoint(e){return i.containsPoint(e,this.a,this.b,this.c)}isFrontFacing(e){return i.isFrontFacing(this.a,this.b,this.c,e)}intersectsBox(e){return e.intersectsTriangle(this)}closestPointToPoint(e,t){let n=this.a,s=this.b,r=this.c,a,o;Ss.subVectors(s,n),Ts.subVectors(r,n),Hl.subVectors(e,n);let l=Ss.dot(Hl),c=Ts.dot(Hl);if(l<=0&&c<=0)return t.copy(n);Wl.subVectors(e,s);let h=Ss.dot(Wl),u=Ts.dot(Wl);if(h>=0&&u<=h)return t.copy(s);let d=l*u-h*c;if(d<=0&&l>=0&&h<=0&&l-h>0)return a=l/(l-h),t.copy(n).addScaledVector(Ss,a);$l.subVectors(e,r);let f=Ss.dot($l),p=Ts.dot($l);if(p>=0&&f<=p)return t.copy(r);let v=f*c-l*p;if(v<=0&&c>=0&&p<=0)return o=c/(c-p),t.copy(n).addScaledVector(Ts,o);let m=h*p-f*u;if(m<=0&&u-h>=0&&f-p>=0)return cu.subVectors(r,s),o=(u-h)/(u-h+(f-p)),t.copy(s).addScaledVector(cu,o);let g=1/(m+v+d);return a=v*g,o=d*g,t.copy(n).addScaledVector(Ss,a).addScaledVector(Ts,o)}equals(e){return e.a.equals(this.a)&&e.b.equals(this.b)&&e.c.equals(this.c)}},Li=class{constructor(e=new k(1/0,1/0,1/0),t=new k(-1/0,-1/0,-1/0)){this.isBox3=!0,this.min=e,this.max=t}set(e,t){return this.min.copy(e),this.max.copy(t),this}setFromArray(e){this.makeEmpty();for(let t=0,n=e.length;t<n;t+=3)this.expandByPoint(In.fromArray(e,t));return this}setFromBufferAttribute(e){this.makeEmpty();for(let t=0,n=e.count;t<n;t++)this.expandByPoint(In.fromBufferAttribute(e,t));return this}setFromPoints(e){this.makeEmpty();for(let t=0,n=e.length;t<n;t++)this.expandByPoint(e[t]);return this}setFromCenterAndSize(e,t){let n=In.copy(t).multiplyScalar(.5);return this.min.copy(e).sub(n),this.max.copy(e).add(n),this}setFromObject(e,t=!1){return this.makeEmpty(),this.expandByObject(e,t)}clone(){return new this.constructor().copy(this)}copy(e){return this.min.copy(e.min),this.max.copy(e.max),this}makeEmpty(){return this.min.x=this.min.y=this.min.z=1/0,this.max.x=this.max.y=this.max.z=-1/0,this}isEmpty(){return this.max.x<this.min.x||this.max.y<this.min.y||this.max.z<this.min.z}getCenter(e){return this.isEmpty()?e.set(0,0,0):e.addVectors(this.min,this.max).multiplyScalar(.5)}getSize(e){return this.isEmpty()?e.set(0,0,0):e.subVectors(this.max,this.min)}expandByPoint(e){return this.min.min(e),this.max.max(e),this}expandByVector(e){return this.min.sub(e),this.max.add(e),this}expandByScalar(e){return this.min.addScalar(-e),this.max.addScalar(e),this}expandByObject(e,t=!1){e.updateWorldMatrix(!1,!1);let n=e.geometry;if(n!==void 0){let r=n.getAttribute("position");if(t===!0&&r!==void 0&&e.isInstancedMesh!==!0&&e.isBatchedMesh!==!0)for(let a=0,o=r.count;a<o;a++)e.isMesh===!0?e.getVertexPosition(a,In):In.fromBufferAttribute(r,a),In.applyMatrix4(e.matrixWorld),this.expandByPoint(In);else e.boundingBox!==void 0?(e.boundingBox===null&&e.computeBoundingBox(),pa.copy(e.boundingBox)):(n.boundingBox===null&&n.computeBoundingBox(),pa.copy(n.boundingBox)),pa.applyMatrix4(e.matrixWorld),this.union(pa)}let s=e.children;for(let r=0,a=s.length;r<a;r++)this.expandByObject(s[r],t);return this}containsPoint(e){return e.x>=this.min.x&&e.x<=this.max.x&&e.y>=this.min.y&&e.y<=this.max.y&&e.z>=this.min.z&&e.z<=this.max.z}containsBox(e){return this.min.x<=e.min.x&&e.max.x<=this.max.x&&this.min.y<=e.min.y&&e.max.y<=this.max.y&&this.min.z<=e.min.z&&e.max.z<=this.max.z}getParameter(e,t){return t.set((e.x-this.min.x)/(this.max.x-this.min.x),(e.y-this.min.y)/(this.max.y-this.min.y),(e.z-this.min.z)/(this.max.z-this.min.z))}intersectsBox(e){return e.max.x>=this.min.x&&e.min.x<=this.max.x&&e.max.y>=this.min.y&&e.min.y<=this.max.y&&e.max.z>=this.min.z&&e.min.z<=this.max.z}intersectsSphere(e){return this.clampPoint(e.center,In),In.distanceToSquared(e.center)<=e.radius*e.radius}intersectsPlane(e){let t,n;return e.normal.x>0?(t=e.normal.x*this.min.x,n=e.normal.x*this.max.x):(t=e.normal.x*this.max.x,n=e.normal.x*this.min.x),e.normal.y>0?(t+=e.normal.y*this.min.y,n+=e.normal.y*this.max.y):(t+=e.normal.y*this.max.y,n+=e.normal.y*this.min.y),e.normal.z>0?(t+=e.normal.z*this.min.z,n+=e.normal.z*this.max.z):(t+=e.normal.z*this.max.z,n+=e.normal.z*this.min.z),t<=-e.constant&&n>=-e.constant}intersectsTriangle(e){if(this.isEmpty())return!1;this.getCenter(cr),ma.subVectors(this.max,cr),Es.subVectors(e.a,cr),As.subVectors(e.b,cr),Cs.subVectors(e.c,cr),Ai.subVectors(As,Es),Ci.subVectors(Cs,As),Ki.subVectors(Es,Cs);let t=[0,-Ai.z,Ai.y,0,-Ci.z,Ci.y,0,-Ki.z,Ki.y,Ai.z,0,-Ai.x,Ci.z,0,-Ci.x,Ki.z,0,-Ki.x,-Ai.y,Ai.x,0,-Ci.y,Ci.x,0,-Ki.y,Ki.x,0];return!Zl(t,Es,As,Cs,ma)||(t=[1,0,0,0,1,0,0,0,1],!Zl(t,Es,As,Cs,ma))?!1:(ga.crossVectors(Ai,Ci),t=[ga.x,ga.y,ga.z],Zl(t,Es,As,Cs,ma))}clampPoint(e,t){return t.copy(e).clamp(this.min,this.max)}distanceToPoint(e){return this.clampPoint(e,In).distanceTo(e)}getBoundingSphere(e){return this.isEmpty()?e.makeEmpty():(this.getCenter(e.center),e.radius=this.getSize(In).length()*.5),e}intersect(e){return this.min.max(e.min),this.max.min(e.max),this.isEmpty()&&this.makeEmpty(),this}union(e){return this.min.min(e.min),this.max.max(e.max),this}applyMatrix4(e){return this.isEmpty()?this:(ai[0].set(this.min.x,this.min.y,this.min.z).applyMatrix4(e),ai[1].set(this.min.x,this.min.y,this.max.z).applyMatrix4(e),ai[2].set(this.min.x,this.max.y,this.min.z).applyMatrix4(e),ai[3].set(this.min.x,this.max.y,this.max.z).applyMatrix4(e),ai[4].set(this.max.x,this.min.y,this.min.z).applyMatrix4(e),ai[5].set(this.max.x,this.min.y,this.max.z).applyMatrix4(e),ai[6].set(this.max.x,this.max.y,this.min.z).applyMatrix4(e),ai[7].set(this.max.x,this.max.y,this.max.z).applyMatrix4(e),this.setFromPoints(ai),this)}translate(e){return this.min.add(e),this.max.add(e),this}equals(e){return e.min.equals(this.min)&&e.max.equals(this.max)}toJSON(){return{min:this.min.toArray(),max:this.max.toArray()}}fromJSON(e){return this.min.fromArray(e.min),this.max.fromArray(e.max),this}},ai=[new k,new k,new k,new k,new k,new k,new k,new k],In=new k,pa=new Li,Es=new k,As=new k,Cs=new k,Ai=new k,Ci=new k,Ki=new k,cr=new k,ma=new k,ga=new k,ji=new k;function Zl(i,e,t,n,s){for(let r=0,a=i.length-3;r<=a;r+=3){ji.fromArray(i,r);let o=s.x*Math.abs(ji.x)+s.y*Math.abs(ji.y)+s.z*Math.abs(ji.z),l=e.dot(ji),c=t.dot(ji),h=n.dot(ji);if(Math.max(-Math.max(l,c,h),Math.min(l,c,h))>o)return!1}return!0}var Tt=new k,_a=new et,Bp=0,qt=class extends Gn{constructor(e,t,n=!1){if(super(),Array.isArray(e))throw new TypeError("THREE.BufferAttribute: array should be a Typed Array.");this.isBufferAttribute=!0,Object.defineProperty(this,"id",{value:Bp++}),this.name="",this.array=e,this.itemSize=t,this.count=e!==void 0?e.length/t:0,this.normalized=n,this.usage=id,this.updateRanges=[],this.gpuType=Un,this.version=0,this._normalizationScale=e!==void 0?Oc(e):void 0}onUploadCallback(){}set needsUpdate(e){e===!0&&this.version++}setUsage(e){return this.usage=e,this}addUpdateRange(e,t){this.updateRanges.push({start:e,count:t})}clearUpdateRanges(){this.updateRanges.length=0}copy(e){return this.name=e.name,this.array=new e.array.constructor(e.array),this.itemSize=e.itemSize,this.count=e.count,this.normalized=e.normalized,this.usage=e.usage,this.gpuType=e.gpuType,this._normalizationScale=e._normalizationScale,this}copyAt(e,t,n){e*=this.itemSize,n*=t.itemSize;for(let s=0,r=this.itemSize;s<r;s++)this.array[e+s]=t.array[n+s];return this}copyArray(e){return this.array.set(e),this}applyMatrix3(e){if(this.itemSize===2)for(let t=0,n=this.count;t<n;t++)_a.fromBufferAttribute(this,t),_a.applyMatrix3(e),this.setXY(t,_a.x,_a.y);else if(this.itemSize===3)for(let t=0,n=this.count;t<n;t++)Tt.fromBufferAttribute(this,t),Tt.applyMatrix3(e),this.setXYZ(t,Tt.x,Tt.y,Tt.z);return this}applyMatrix4(e){for(let t=0,n=this.count;t<n;t++)Tt.fromBufferAttribute(this,t),Tt.applyMatrix4(e),this.setXYZ(t,Tt.x,Tt.y,Tt.z);return this}applyNormalMatrix(e){for(let t=0,n=this.count;t<n;t++)Tt.fromBufferAttribute(this,t),Tt.applyNormalMatrix(e),this.setXYZ(t,Tt.x,Tt.y,Tt.z);return this}transformDirection(e){for(let t=0,n=this.count;t<n;t++)Tt.fromBufferAttribute(this,t),Tt.transformDirection(e),this.setXYZ(t,Tt.x,Tt.y,Tt.z);return this}set(e,t=0){return this.array.set(e,t),this}getComponent(e,t){let n=this.array[e*this.itemSize+t];return this.normalized&&(n=this._denormalize(n)),n}setComponent(e,t,n){return this.normalized&&(n=this._normalize(n)),this.array[e*this.itemSize+t]=n,this}getX(e){let t=this.array[e*this.itemSize];return this.normalized&&(t=this._denormalize(t)),t}setX(e,t){return this.normalized&&(t=this._normalize(t)),this.array[e*this.itemSize]=t,this}getY(e){let t=this.array[e*this.itemSize+1];return this.normalized&&(t=this._denormalize(t)),t}setY(e,t){return this.normalized&&(t=this._normalize(t)),this.array[e*this.itemSize+1]=t,this}getZ(e){let t=this.array[e*this.itemSize+2];return this.normalized&&(t=this._denormalize(t)),t}setZ(e,t){return this.normalized&&(t=this._normalize(t)),this.array[e*this.itemSize+2]=t,this}getW(e){let t=this.array[e*this.itemSize+3];return this.normalized&&(t=this._denormalize(t)),t}setW(e,t){return this.normalized&&(t=this._normalize(t)),this.array[e*this.itemSize+3]=t,this}setXY(e,t,n){return e*=this.itemSize,this.normalized&&(t=this._normalize(t),n=this._normalize(n)),this.array[e+0]=t,this.array[e+1]=n,this}setXYZ(e,t,n,s){return e*=this.itemSize,this.normalized&&(t=this._normalize(t),n=this._normalize(n),s=this._normalize(s)),this.array[e+0]=t,this.array[e+1]=n,this.array[e+2]=s,this}setXYZW(e,t,n,s,r){return e*=this.itemSize,this.normalized&&(t=this._normalize(t),n=this._normalize(n),s=this._normalize(s),r=this._normalize(r)),this.array[e+0]=t,this.array[e+1]=n,this.array[e+2]=s,this.array[e+3]=r,this}onUpload(e){return this.onUploadCallback=e,this}clone(){return new this.constructor(this.array,this.itemSize).copy(this)}toJSON(){let e={itemSize:this.itemSize,type:this.array.constructor.name,array:Array.from(this.array),normalized:this.normalized};return e.name=this.name,e.usage=this.usage,e.gpuType=this.gpuType,e}dispose(){this.dispatchEvent({type:"dispose"})}_denormalize(e){let t=this._normalizationScale;return t!==void 0?Math.max(e/t,-1):Ap(e,this.array)}_normalize(e){let t=this._normalizationScale;return t!==void 0?Math.round(e*t):Cp(e,this.array)}};var yr=class extends qt{constructor(e,t,n){super(new Uint16Array(e),t,n)}};var br=class extends qt{constructor(e,t,n){super(new Uint32Array(e),t,n)}};var jt=class extends qt{constructor(e,t,n){super(new Float32Array(e),t,n)}},zp=new Li,hr=new k,Jl=new k,ns=class{constructor(e=new k,t=-1){this.isSphere=!0,this.center=e,this.radius=t}set(e,t){return this.center.copy(e),this.radius=t,this}setFromPoints(e,t){let n=this.center;t!==void 0?n.copy(t):zp.setFromPoints(e).getCenter(n);let s=0;for(let r=0,a=e.length;r<a;r++)s=Math.max(s,n.distanceToSquared(e[r]));return this.radius=Math.sqrt(s),this}copy(e){return this.center.copy(e.center),this.radius=e.radius,this}isEmpty(){return this.radius<0}makeEmpty(){return this.center.set(0,0,0),this.radius=-1,this}containsPoint(e){return e.distanceToSquared(this.center)<=this.radius*this.radius}distanceToPoint(e){return e.distanceTo(this.center)-this.radius}intersectsSphere(e){let t=this.radius+e.radius;return e.center.distanceToSquared(this.center)<=t*t}intersectsBox(e){return e.intersectsSphere(this)}intersectsPlane(e){return Math.abs(e.distanceToPoint(this.center))<=this.radius}clampPoint(e,t){let n=this.center.distanceToSquared(e);return t.copy(e),n>this.radius*this.radius&&(t.sub(this.center).normalize(),t.multiplyScalar(this.radius).add(this.center)),t}getBoundingBox(e){return this.isEmpty()?(e.makeEmpty(),e):(e.set(this.center,this.center),e.expandByScalar(this.radius),e)}applyMatrix4(e){return this.center.applyMatrix4(e),this.radius=this.radius*e.getMaxScaleOnAxis(),this}translate(e){return this.center.add(e),this}expandByPoint(e){if(this.isEmpty())return this.center.copy(e),this.radius=0,this;hr.subVectors(e,this.center);let t=hr.lengthSq();if(t>this.radius*this.radius){let n=Math.sqrt(t),s=(n-this.radius)*.5;this.center.addScaledVector(hr,s/n),this.radius+=s}return this}union(e){return e.isEmpty()?this:this.isEmpty()?(this.copy(e),this):(this.center.equals(e.center)===!0?this.radius=Math.max(this.radius,e.radius):(Jl.subVectors(e.center,this.center).setLength(e.radius),this.expandByPoint(hr.copy(e.center).add(Jl)),this.expandByPoint(hr.copy(e.center).sub(Jl))),this)}equals(e){return e.center.equals(this.center)&&e.radius===this.radius}clone(){return new this.constructor().copy(this)}toJSON(){return{radius:this.radius,center:this.center.toArray()}}fromJSON(e){return this.radius=e.radius,this.center.fromArray(e.center),this}},Vp=0,yn=new at,Kl=new dn,Rs=new k,ln=new Li,ur=new Li,Dt=new k,Nn=class i extends Gn{constructor(){super(),this.isBufferGeometry=!0,Object.defineProperty(this,"id",{value:Vp++}),this.uuid=Or(),this.name="",this.type="BufferGeometry",this.index=null,this.indirect=null,this.indirectOffset=0,this.attributes={},this.morphAttributes={},this.morphTargetsRelative=!1,this.groups=[],this.boundingBox=null,this.boundingSphere=null,this.drawRange={start:0,count:1/0},this.userData={},this._transformed=!1}getIndex(){return this.index}setIndex(e){return Array.isArray(e)?this.index=new(Sp(e)?br:yr)(e,1):this.index=e,this}setIndirect(e,t=0){return this.indirect=e,this.indirectOffset=t,this}getIndirect(){return this.indirect}getAttribute(e){return this.attributes[e]}setAttribute(e,t){return this.attributes[e]=t,this}deleteAttribute(e){return delete this.attributes[e],this}hasAttribute(e){return this.attributes[e]!==void 0}addGroup(e,t,n=0){this.groups.push({start:e,count:t,materialIndex:n})}clearGroups(){this.groups=[]}setDrawRange(e,t){this.drawRange.start=e,this.drawRange.count=t}applyMatrix4(e){let t=this.attributes.position;t!==void 0&&(t.applyMatrix4(e),t.needsUpdate=!0);let n=this.attributes.normal;if(n!==void 0){let r=new Ve().getNormalMatrix(e);n.applyNormalMatrix(r),n.needsUpdate=!0}let s=this.attributes.tangent;return s!==void 0&&(s.transformDirection(e),s.needsUpdate=!0),this.boundingBox!==null&&this.computeBoundingBox(),this.boundingSphere!==null&&this.computeBoundingSphere(),this._transformed=!0,this}applyQuaternion(e){return yn.makeRotationFromQuaternion(e),this.applyMatrix4(yn),this}rotateX(e){return yn.makeRotationX(e),this.applyMatrix4(yn),this}rotateY(e){return yn.makeRotationY(e),this.applyMatrix4(yn),this}rotateZ(e){return yn.makeRotationZ(e),this.applyMatrix4(yn),this}translate(e,t,n){return yn.makeTranslation(e,t,n),this.applyMatrix4(yn),this}scale(e,t,n){return yn.makeScale(e,t,n),this.applyMatrix4(yn),this}lookAt(e){return Kl.lookAt(e),Kl.updateMatrix(),this.applyMatrix4(Kl.matrix),this}center(){return this.computeBoundingBox(),this.boundingBox.getCenter(Rs).negate(),this.translate(Rs.x,Rs.y,Rs.z),this}setFromPoints(e){let t=this.getAttribute("position");if(t===void 0){let n=[];for(let s=0,r=e.length;s<r;s++){let a=e[s];n.push(a.x,a.y,a.z||0)}this.setAttribute("position",new jt(n,3))}else{let n=Math.min(e.length,t.count);for(let s=0;s<n;s++){let r=e[s];t.setXYZ(s,r.x,r.y,r.z||0)}e.length>t.count&&Oe("BufferGeometry: Buffer size too small for points data. Use .dispose() and create a new geometry."),t.needsUpdate=!0}return this}computeBoundingBox(){this.boundingBox===null&&(this.boundingBox=new Li);let e=this.attributes.position,t=this.morphAttributes.position;if(e&&e.isGLBufferAttribute){ze("BufferGeometry.computeBoundingBox(): GLBufferAttribute requires a manual bounding box.",this),this.boundingBox.set(new k(-1/0,-1/0,-1/0),new k(1/0,1/0,1/0));return}if(e!==void 0){if(this.boundingBox.setFromBufferAttribute(e),t)for(let n=0,s=t.length;n<s;n++){let r=t[n];ln.setFromBufferAttribute(r),this.morphTargetsRelative?(Dt.addVectors(this.boundingBox.min,ln.min),this.boundingBox.expandByPoint(Dt),Dt.addVectors(this.boundingBox.max,ln.max),this.boundingBox.expandByPoint(Dt)):(this.boundingBox.expandByPoint(ln.min),this.boundingBox.expandByPoint(ln.max))}}else this.boundingBox.makeEmpty();(isNaN(this.boundingBox.min.x)||isNaN(this.boundingBox.min.y)||isNaN(this.boundingBox.min.z))&&ze('BufferGeometry.computeBoundingBox(): Computed min/max have NaN values. The "position" attribute is likely to have NaN values.',this)}computeBoundingSphere(){this.boundingSphere===null&&(this.boundingSphere=new ns);let e=this.attributes.position,t=this.morphAttributes.position;if(e&&e.isGLBufferAttribute){ze("BufferGeometry.computeBoundingSphere(): GLBufferAttribute requires a manual bounding sphere.",this),this.boundingSphere.set(new k,1/0);return}if(e){let n=this.boundingSphere.center;if(ln.setFromBufferAttribute(e),t)for(let r=0,a=t.length;r<a;r++){let o=t[r];ur.setFromBufferAttribute(o),this.morphTargetsRelative?(Dt.addVectors(ln.min,ur.min),ln.expandByPoint(Dt),Dt.addVectors(ln.max,ur.max),ln.expandByPoint(Dt)):(ln.expandByPoint(ur.min),ln.expandByPoint(ur.max))}ln.getCenter(n);let s=0;for(let r=0,a=e.count;r<a;r++)Dt.fromBufferAttribute(e,r),s=Math.max(s,n.distanceToSquared(Dt));if(t)for(let r=0,a=t.length;r<a;r++){let o=t[r],l=this.morphTargetsRelative;for(let c=0,h=o.count;c<h;c++)Dt.fromBufferAttribute(o,c),l&&(Rs.fromBufferAttribute(e,c),Dt.add(Rs)),s=Math.max(s,n.distanceToSquared(Dt))}this.boundingSphere.radius=Math.sqrt(s),isNaN(this.boundingSphere.radius)&&ze('BufferGeometry.computeBoundingSphere(): Computed radius is NaN. The "position" attribute is likely to have NaN values.',this)}}computeTangents(){let e=this.index,t=this.attributes;if(e===null||t.position===void 0||t.normal===void 0||t.uv===void 0){ze("BufferGeometry: .computeTangents() failed. Missing required attributes (index, position, normal or uv)");return}let n=t.position,s=t.normal,r=t.uv,a=this.getAttribute("tangent");(a===void 0||a.count!==n.count)&&(a=new qt(new Float32Array(4*n.count),4),this.setAttribute("tangent",a));let o=[],l=[],c=new Uint8Array(n.count);for(let B=0;B<n.count;B++)o[B]=new k,l[B]=new k;let h=new k,u=new k,d=new k,f=new et,p=new et,v=new et,m=new k,g=new k;function M(B,U,N){c[B]=c[U]=c[N]=1,h.fromBufferAttribute(n,B),u.fromBufferAttribute(n,U),d.fromBufferAttribute(n,N),f.fromBufferAttribute(r,B),p.fromBufferAttribute(r,U),v.fromBufferAttribute(r,N),u.sub(h),d.sub(h),p.sub(f),v.sub(f);let V=1/(p.x*v.y-v.x*p.y);isFinite(V)&&(m.copy(u).multiplyScalar(v.y).addScaledVector(d,-p.y).multiplyScalar(V),g.copy(d).multiplyScalar(p.x).addScaledVector(u,-v.x).multiplyScalar(V),o[B].add(m),o[U].add(m),o[N].add(m),l[B].add(g),l[U].add(g),l[N].add(g))}let C=this.groups;C.length===0&&(C=[{start:0,count:e.count}]);for(let B=0,U=C.length;B<U;++B){let N=C[B],V=N.start,q=N.count;for(let I=V,X=V+q;I<X;I+=3)M(e.getX(I+0),e.getX(I+1),e.getX(I+2))}let w=new k,E=new k,S=new k,x=new k;function T(B){S.fromBufferAttribute(s,B),x.copy(S);let U=o[B];w.copy(U),w.sub(S.multiplyScalar(S.dot(U))).normalize(),E.crossVectors(x,U);let V=E.dot(l[B])<0?-1:1;a.setXYZW(B,w.x,w.y,w.z,V)}for(let B=0,U=n.count;B<U;++B)c[B]&&T(B);this._transformed=!0}computeVertexNormals(){let e=this.index,t=this.getAttribute("position");if(t!==void 0){let n=this.getAttribute("normal");if(n===void 0||n.count!==t.count)n=new qt(new Float32Array(t.count*3),3),this.setAttribute("normal",n);else for(let d=0,f=n.count;d<f;d++)n.setXYZ(d,0,0,0);let s=new k,r=new k,a=new k,o=new k,l=new k,c=new k,h=new k,u=new k;if(e)for(let d=0,f=e.count;d<f;d+=3){let p=e.getX(d+0),v=e.getX(d+1),m=e.getX(d+2);s.fromBufferAttribute(t,p),r.fromBufferAttribute(t,v),a.fromBufferAttribute(t,m),h.subVectors(a,r),u.subVectors(s,r),h.cross(u),o.fromBufferAttribute(n,p),l.fromBufferAttribute(n,v),c.fromBufferAttribute(n,m),o.add(h),l.add(h),c.add(h),n.setXYZ(p,o.x,o.y,o.z),n.setXYZ(v,l.x,l.y,l.z),n.setXYZ(m,c.x,c.y,c.z)}else for(let d=0,f=t.count;d<f;d+=3)s.fromBufferAttribute(t,d+0),r.fromBufferAttribute(t,d+1),a.fromBufferAttribute(t,d+2),h.subVectors(a,r),u.subVectors(s,r),h.cross(u),n.setXYZ(d+0,h.x,h.y,h.z),n.setXYZ(d+1,h.x,h.y,h.z),n.setXYZ(d+2,h.x,h.y,h.z);this.normalizeNormals(),n.needsUpdate=!0}}normalizeNormals(){let e=this.attributes.normal;for(let t=0,n=e.count;t<n;t++)Dt.fromBufferAttribute(e,t),Dt.normalize(),e.setXYZ(t,Dt.x,Dt.y,Dt.z)}toNonIndexed(){function e(o,l){let c=o.array,h=o.itemSize,u=o.normalized,d=new c.constructor(l.length*h),f=0,p=0;for(let v=0,m=l.length;v<m;v++){o.isInterleavedBufferAttribute?f=l[v]*o.data.stride+o.offset:f=l[v]*h;for(let g=0;g<h;g++)d[p++]=c[f++]}return new qt(d,h,u)}if(this.index===null)return Oe("BufferGeometry.toNonIndexed(): BufferGeometry is already non-indexed."),this;let t=new i,n=this.index.array,s=this.attributes;for(let o in s){let l=s[o],c=e(l,n);t.setAttribute(o,c)}let r=this.morphAttributes;for(let o in r){let l=[],c=r[o];for(let h=0,u=c.length;h<u;h++){let d=c[h],f=e(d,n);l.push(f)}t.morphAttributes[o]=l}t.morphTargetsRelative=this.morphTargetsRelative;let a=this.groups;for(let o=0,l=a.length;o<l;o++){let c=a[o];t.addGroup(c.start,c.count,c.materialIndex)}return t}toJSON(){let e={metadata:{version:4.7,type:"BufferGeometry",generator:"BufferGeometry.toJSON"}};if(e.uuid=this.uuid,e.type=this.parameters!==void 0&&this._transformed===!0?"BufferGeometry":this.type,e.name=this.name,Object.keys(this.userData).length>0&&(e.userData=this.userData),this.parameters!==void 0&&this._transformed!==!0){let l=this.parameters;for(let c in l)l[c]!==void 0&&(e[c]=l[c]);return e}e.data={attributes:{}};let t=this.index;t!==null&&(e.data.index={type:t.array.constructor.name,array:Array.prototype.slice.call(t.array)});let n=this.attributes;for(let l in n){let c=n[l];e.data.attributes[l]=c.toJSON(e.data)}let s={},r=!1;for(let l in this.morphAttributes){let c=this.morphAttributes[l],h=[];for(let u=0,d=c.length;u<d;u++){let f=c[u];h.push(f.toJSON(e.data))}h.length>0&&(s[l]=h,r=!0)}r&&(e.data.morphAttributes=s,e.data.morphTargetsRelative=this.morphTargetsRelative);let a=this.groups;a.length>0&&(e.data.groups=JSON.parse(JSON.stringify(a)));let o=this.boundingSphere;return o!==null&&(e.data.boundingSphere=o.toJSON()),e}clone(){return new this.constructor().copy(this)}copy(e){this.index=null,this.attributes={},this.morphAttributes={},this.groups=[],this.boundingBox=null,this.boundingSphere=null;let t={};this.name=e.name;let n=e.index;n!==null&&this.setIndex(n.clone());let s=e.attributes;for(let c in s){let h=s[c];this.setAttribute(c,h.clone(t))}let r=e.morphAttributes;for(let c in r){let h=[],u=r[c];for(let d=0,f=u.length;d<f;d++)h.push(u[d].clone(t));this.morphAttributes[c]=h}this.morphTargetsRelative=e.morphTargetsRelative;let a=e.groups;for(let c=0,h=a.length;c<h;c++){let u=a[c];this.addGroup(u.start,u.count,u.materialIndex)}let o=e.boundingBox;o!==null&&(this.boundingBox=o.clone());let l=e.boundingSphere;return l!==null&&(this.boundingSphere=l.clone()),this.drawRange.start=e.drawRange.start,this.drawRange.count=e.drawRange.count,this.userData=e.userData,this._transformed=e._transformed,this}dispose(){this.dispatchEvent({type:"dispose"})}};var jl=new k,Gp=new k,Hp=new Ve,Ln=class{constructor(e=new k(1,0,0),t=0){this.isPlane=!0,this.normal=e,this.constant=t}set(e,t){return this.normal.copy(e),this.constant=t,this}setComponents(e,t,n,s){return this.normal.set(e,t,n),this.constant=s,this}setFromNormalAndCoplanarPoint(e,t){return this.normal.copy(e),this.constant=-t.dot(this.normal),this}setFromCoplanarPoints(e,t,n){let s=jl.subVectors(n,t).cross(Gp.subVectors(e,t)).normalize();return this.setFromNormalAndCoplanarPoint(s,e),this}copy(e){return this.normal.copy(e.normal),this.constant=e.constant,this}normalize(){let e=1/this.normal.length();return this.normal.multiplyScalar(e),this.constant*=e,this}negate(){return this.constant*=-1,this.normal.negate(),this}distanceToPoint(e){return this.normal.dot(e)+this.constant}distanceToSphere(e){return this.distanceToPoint(e.center)-e.radius}projectPoint(e,t){return t.copy(e).addScaledVector(this.normal,-this.distanceToPoint(e))}intersectLine(e,t,n=!0){let s=e.delta(jl),r=this.normal.dot(s);if(r===0)return this.distanceToPoint(e.start)===0?t.copy(e.start):null;let a=-(e.start.dot(this.normal)+this.constant)/r;return n===!0&&(a<0||a>1)?null:t.copy(e.start).addScaledVector(s,a)}intersectsLine(e){let t=this.distanceToPoint(e.start),n=this.distanceToPoint(e.end);return t<0&&n>0||n<0&&t>0}intersectsBox(e){return e.intersectsPlane(this)}intersectsSphere(e){return e.intersectsPlane(this)}coplanarPoint(e){return e.copy(this.normal).multiplyScalar(-this.constant)}applyMatrix4(e,t){let n=t||Hp.getNormalMatrix(e),s=this.coplanarPoint(jl).applyMatrix4(e),r=this.normal.applyMatrix3(n).normalize();return this.constant=-s.dot(r),this}translate(e){return this.constant-=e.dot(this.normal),this}equals(e){return e.normal.equals(this.normal)&&e.constant===this.constant}clone(){return new this.constructor().copy(this)}toJSON(){return{normal:this.normal.toArray(),constant:this.constant}}fromJSON(e){return this.normal.fromArray(e.normal),this.constant=e.constant,this}},Wp=0,Ni=class extends Gn{constructor(){super(),this.isMaterial=!0,Object.defineProperty(this,"id",{value:Wp++}),this.uuid=Or(),this.name="",this.type="Material",this.blending=Ws,this.side=Bi,this.vertexColors=!1,this.opacity=1,this.transparent=!1,this.alphaHash=!1,this.blendSrc=fc,this.blendDst=pc,this.blendEquation=as,this.blendSrcAlpha=null,this.blendDstAlpha=null,this.blendEquationAlpha=null,this.blendColor=new je(0,0,0),this.blendAlpha=0,this.depthFunc=Ds,this.depthTest=!0,this.depthWrite=!0,this.stencilWriteMask=255,this.stencilFunc=Ku,this.stencilRef=0,this.stencilFuncMask=255,this.stencilFail=Da,this.stencilZFail=Da,this.stencilZPass=Da,this.stencilWrite=!1,this.clippingPlanes=null,this.clipIntersection=!1,this.clipShadows=!1,this.shadowSide=null,this.colorWrite=!0,this.precision=null,this.polygonOffset=!1,this.polygonOffsetFactor=0,this.polygonOffsetUnits=0,this.dithering=!1,this.alphaToCoverage=!1,this.premultipliedAlpha=!1,this.forceSinglePass=!1,this.allowOverride=!0,this.visible=!0,this.toneMapped=!0,this.userData={},this.version=0,this._alphaTest=0}get alphaTest(){return this._alphaTest}set alphaTest(e){this._alphaTest>0!=e>0&&this.version++,this._alphaTest=e}onBeforeRender(){}onBeforeCompile(){}customProgramCacheKey(){return this.onBeforeCompile.toString()}setValues(e){if(e!==void 0)for(let t in e){let n=e[t];if(n===void 0){Oe(`Material: parameter '${t}' has value of undefined.`);continue}let s=this[t];if(s===void 0){Oe(`Material: '${t}' is not a property of THREE.${this.type}.`);continue}s&&s.isColor?s.set(n):s&&s.isVector2&&n&&n.isVector2||s&&s.isEuler&&n&&n.isEuler||s&&s.isVector3&&n&&n.isVector3?s.copy(n):this[t]=n}}toJSON(e){let t=e===void 0||typeof e=="string";t&&(e={textures:{},images:{}});let n={metadata:{version:4.7,type:"Material",generator:"Material.toJSON"}};n.uuid=this.uuid,n.type=this.type,n.blending=this.blending,n.side=this.side,n.shadowSide=this.shadowSide,n.vertexColors=this.vertexColors,n.opacity=this.opacity,n.transparent=this.transparent,n.blendSrc=this.blendSrc,n.blendDst=this.blendDst,n.blendEquation=this.blendEquation,n.blendSrcAlpha=this.blendSrcAlpha,n.blendDstAlpha=this.blendDstAlpha,n.blendEquationAlpha=this.blendEquationAlpha,n.blendColor=this.blendColor.getHex(),n.blendAlpha=this.blendAlpha,n.depthFunc=this.depthFunc,n.depthTest=this.depthTest,n.depthWrite=this.depthWrite,n.colorWrite=this.colorWrite,n.clipIntersection=this.clipIntersection,n.clipShadows=this.clipShadows,n.stencilWriteMask=this.stencilWriteMask,n.stencilFunc=this.stencilFunc,n.stencilRef=this.stencilRef,n.stencilFuncMask=this.stencilFuncMask,n.stencilFail=this.stencilFail,n.stencilZFail=this.stencilZFail,n.stencilZPass=this.stencilZPass,n.stencilWrite=this.stencilWrite,n.polygonOffset=this.polygonOffset,n.polygonOffsetFactor=this.polygonOffsetFactor,n.polygonOffsetUnits=this.polygonOffsetUnits,n.dithering=this.dithering,n.alphaTest=this.alphaTest,n.alphaHash=this.alphaHash,n.alphaToCoverage=this.alphaToCoverage,n.premultipliedAlpha=this.premultipliedAlpha,n.forceSinglePass=this.forceSinglePass,n.allowOverride=this.allowOverride,n.visible=this.visible,n.toneMapped=this.toneMapped,n.name=this.name,this.color&&this.color.isColor&&(n.color=this.color.getHex()),this.roughness!==void 0&&(n.roughness=this.roughness),this.metalness!==void 0&&(n.metalness=this.metalness),this.sheen!==void 0&&(n.sheen=this.sheen),this.sheenColor&&this.sheenColor.isColor&&(n.sheenColor=this.sheenColor.getHex()),this.sheenRoughness!==void 0&&(n.sheenRoughness=this.sheenRoughness),this.emissive&&this.emissive.isColor&&(n.emissive=this.emissive.getHex()),this.emissiveIntensity!==void 0&&(n.emissiveIntensity=this.emissiveIntensity),this.specular&&this.specular.isColor&&(n.specular=this.specular.getHex()),this.specularIntensity!==void 0&&(n.specularIntensity=this.specularIntensity),this.specularColor&&this.specularColor.isColor&&(n.specularColor=this.specularColor.getHex()),this.shininess!==void 0&&(n.shininess=this.shininess),this.clearcoat!==void 0&&(n.clearcoat=this.clearcoat),this.clearcoatRoughness!==void 0&&(n.clearcoatRoughness=this.clearcoatRoughness),this.diffuseRoughness!==void 0&&(n.diffuseRoughness=this.diffuseRoughness),this.diffuseRoughnessMap&&this.diffuseRoughnessMap.isTexture&&(n.diffuseRoughnessMap=this.diffuseRoughnessMap.toJSON(e).uuid),this.clearcoatMap&&this.clearcoatMap.isTexture&&(n.clearcoatMap=this.clearcoatMap.toJSON(e).uuid),this.clearcoatRoughnessMap&&this.clearcoatRoughnessMap.isTexture&&(n.clearcoatRoughnessMap=this.clearcoatRoughnessMap.toJSON(e).uuid),this.clearcoatNormalMap&&this.clearcoatNormalMap.isTexture&&(n.clearcoatNormalMap=this.clearcoatNormalMap.toJSON(e).uuid,n.clearcoatNormalScale=this.clearcoatNormalScale.toArray()),this.sheenColorMap&&this.sheenColorMap.isTexture&&(n.sheenColorMap=this.sheenColorMap.toJSON(e).uuid),this.sheenRoughnessMap&&this.sheenRoughnessMap.isTexture&&(n.sheenRoughnessMap=this.sheenRoughnessMap.toJSON(e).uuid),this.dispersion!==void 0&&(n.dispersion=this.dispersion),this.retroreflectivity!==void 0&&(n.retroreflectivity=this.retroreflectivity),this.iridescence!==void 0&&(n.iridescence=this.iridescence),this.iridescenceIOR!==void 0&&(n.iridescenceIOR=this.iridescenceIOR),this.iridescenceThicknessMinimum!==void 0&&(n.iridescenceThicknessMinimum=this.iridescenceThicknessMinimum),this.iridescenceThicknessMaximum!==void 0&&(n.iridescenceThicknessMaximum=this.iridescenceThicknessMaximum),this.iridescenceMap&&this.iridescenceMap.isTexture&&(n.iridescenceMap=this.iridescenceMap.toJSON(e).uuid),this.iridescenceThicknessMap&&this.iridescenceThicknessMap.isTexture&&(n.iridescenceThicknessMap=this.iridescenceThicknessMap.toJSON(e).uuid),this.anisotropy!==void 0&&(n.anisotropy=this.anisotropy),this.anisotropyRotation!==void 0&&(n.anisotropyRotation=this.anisotropyRotation),this.anisotropyMap&&this.anisotropyMap.isTexture&&(n.anisotropyMap=this.anisotropyMap.toJSON(e).uuid),this.map&&this.map.isTexture&&(n.map=this.map.toJSON(e).uuid),this.matcap&&this.matcap.isTexture&&(n.matcap=this.matcap.toJSON(e).uuid),this.alphaMap&&this.alphaMap.isTexture&&(n.alphaMap=this.alphaMap.toJSON(e).uuid),this.lightMap&&this.lightMap.isTexture&&(n.lightMap=this.lightMap.toJSON(e).uuid,n.lightMapIntensity=this.lightMapIntensity),this.aoMap&&this.aoMap.isTexture&&(n.aoMap=this.aoMap.toJSON(e).uuid,n.aoMapIntensity=this.aoMapIntensity),this.bumpMap&&this.bumpMap.isTexture&&(n.bumpMap=this.bumpMap.toJSON(e).uuid,n.bumpScale=this.bumpScale),this.normalMap&&this.normalMap.isTexture&&(n.normalMap=this.normalMap.toJSON(e).uuid,n.normalMapType=this.normalMapType,n.normalScale=this.normalScale.toArray()),this.displacementMap&&this.displacementMap.isTexture&&(n.displacementMap=this.displacementMap.toJSON(e).uuid,n.displacementScale=this.displacementScale,n.displacementBias=this.displacementBias),this.roughnessMap&&this.roughnessMap.isTexture&&(n.roughnessMap=this.roughnessMap.toJSON(e).uuid),this.metalnessMap&&this.metalnessMap.isTexture&&(n.metalnessMap=this.metalnessMap.toJSON(e).uuid),this.emissiveMap&&this.emissiveMap.isTexture&&(n.emissiveMap=this.emissiveMap.toJSON(e).uuid),this.specularMap&&this.specularMap.isTexture&&(n.specularMap=this.specularMap.toJSON(e).uuid),this.specularIntensityMap&&this.specularIntensityMap.isTexture&&(n.specularIntensityMap=this.specularIntensityMap.toJSON(e).uuid),this.specularColorMap&&this.specularColorMap.isTexture&&(n.specularColorMap=this.specularColorMap.toJSON(e).uuid),this.envMap&&this.envMap.isTexture&&(n.envMap=this.envMap.toJSON(e).uuid,this.combine!==void 0&&(n.combine=this.combine)),this.envMapRotation!==void 0&&(n.envMapRotation=this.envMapRotation.toArray()),this.envMapIntensity!==void 0&&(n.envMapIntensity=this.envMapIntensity),this.reflectivity!==void 0&&(n.reflectivity=this.reflectivity),this.refractionRatio!==void 0&&(n.refractionRatio=this.refractionRatio),this.gradientMap&&this.gradientMap.isTexture&&(n.gradientMap=this.gradientMap.toJSON(e).uuid),this.transmission!==void 0&&(n.transmission=this.transmission),this.transmissionMap&&this.transmissionMap.isTexture&&(n.transmissionMap=this.transmissionMap.toJSON(e).uuid),this.thickness!==void 0&&(n.thickness=this.thickness),this.thicknessMap&&this.thicknessMap.isTexture&&(n.thicknessMap=this.thicknessMap.toJSON(e).uuid),this.attenuationDistance!==void 0&&(n.attenuationDistance=this.attenuationDistance),this.attenuationColor!==void 0&&(n.attenuationColor=this.attenuationColor.getHex()),this.size!==void 0&&(n.size=this.size),this.sizeAttenuation!==void 0&&(n.sizeAttenuation=this.sizeAttenuation),Array.isArray(this.clippingPlanes)&&this.clippingPlanes.length>0&&(n.clippingPlanes=this.clippingPlanes.map(r=>r.toJSON())),this.rotation!==void 0&&(n.rotation=this.rotation),this.depthPacking!==void 0&&(n.depthPacking=this.depthPacking),this.linewidth!==void 0&&(n.linewidth=this.linewidth),this.linecap!==void 0&&(n.linecap=this.linecap),this.linejoin!==void 0&&(n.linejoin=this.linejoin),this.dashSize!==void 0&&(n.dashSize=this.dashSize),this.gapSize!==void 0&&(n.gapSize=this.gapSize),this.scale!==void 0&&(n.scale=this.scale),this.wireframe!==void 0&&(n.wireframe=this.wireframe),this.wireframeLinewidth!==void 0&&(n.wireframeLinewidth=this.wireframeLinewidth),this.wireframeLinecap!==void 0&&(n.wireframeLinecap=this.wireframeLinecap),this.wireframeLinejoin!==void 0&&(n.wireframeLinejoin=this.wireframeLinejoin),this.flatShading!==void 0&&(n.flatShading=this.flatShading),this.fog!==void 0&&(n.fog=this.fog),Object.keys(this.userData).length>0&&(n.userData=this.userData);function s(r){let a=[];for(let o in r){let l=r[o];delete l.metadata,a.push(l)}return a}if(t){let r=s(e.textures),a=s(e.images);r.length>0&&(n.textures=r),a.length>0&&(n.images=a)}return n}fromJSON(e,t){if(e.uuid!==void 0&&(this.uuid=e.uuid),e.name!==void 0&&(this.name=e.name),e.color!==void 0&&this.color!==void 0&&this.color.setHex(e.color),e.roughness!==void 0&&(this.roughness=e.roughness),e.metalness!==void 0&&(this.metalness=e.metalness),e.sheen!==void 0&&(this.sheen=e.sheen),e.sheenColor!==void 0&&(this.sheenColor=new je().setHex(e.sheenColor)),e.sheenRoughness!==void 0&&(this.sheenRoughness=e.sheenRoughness),e.emissive!==void 0&&this.emissive!==void 0&&this.emissive.setHex(e.emissive),e.specular!==void 0&&this.specular!==void 0&&this.specular.setHex(e.specular),e.specularIntensity!==void 0&&(this.specularIntensity=e.specularIntensity),e.specularColor!==void 0&&this.specularColor!==void 0&&this.specularColor.setHex(e.specularColor),e.shininess!==void 0&&(this.shininess=e.shininess),e.clearcoat!==void 0&&(this.clearcoat=e.clearcoat),e.clearcoatRoughness!==void 0&&(this.clearcoatRoughness=e.clearcoatRoughness),e.diffuseRoughness!==void 0&&(this.diffuseRoughness=e.diffuseRoughness),e.dispersion!==void 0&&(this.dispersion=e.dispersion),e.retroreflectivity!==void 0&&(this.retroreflectivity=e.retroreflectivity),e.iridescence!==void 0&&(this.iridescence=e.iridescence),e.iridescenceIOR!==void 0&&(this.iridescenceIOR=e.iridescenceIOR),e.iridescenceThicknessMinimum!==void 0&&(this.iridescenceThicknessMinimum=e.iridescenceThicknessMinimum),e.iridescenceThicknessMaximum!==void 0&&(this.iridescenceThicknessMaximum=e.iridescenceThicknessMaximum),e.iridescenceThicknessRange!==void 0&&(this.iridescenceThicknessMinimum=e.iridescenceThicknessRange[0],this.iridescenceThicknessMaximum=e.iridescenceThicknessRange[1]),e.transmission!==void 0&&(this.transmission=e.transmission),e.thickness!==void 0&&(this.thickness=e.thickness),e.attenuationDistance!==void 0&&(this.attenuationDistance=e.attenuationDistance),e.attenuationColor!==void 0&&this.attenuationColor!==void 0&&this.attenuationColor.setHex(e.attenuationColor),e.anisotropy!==void 0&&(this.anisotropy=e.anisotropy),e.anisotropyRotation!==void 0&&(this.anisotropyRotation=e.anisotropyRotation),e.fog!==void 0&&(this.fog=e.fog),e.flatShading!==void 0&&(this.flatShading=e.flatShading),e.blending!==void 0&&(this.blending=e.blending),e.combine!==void 0&&(this.combine=e.combine),e.side!==void 0&&(this.side=e.side),e.shadowSide!==void 0&&(this.shadowSide=e.shadowSide),e.opacity!==void 0&&(this.opacity=e.opacity),e.transparent!==void 0&&(this.transparent=e.transparent),e.alphaTest!==void 0&&(this.alphaTest=e.alphaTest),e.alphaHash!==void 0&&(this.alphaHash=e.alphaHash),e.depthFunc!==void 0&&(this.depthFunc=e.depthFunc),e.depthTest!==void 0&&(this.depthTest=e.depthTest),e.depthWrite!==void 0&&(this.depthWrite=e.depthWrite),e.colorWrite!==void 0&&(this.colorWrite=e.colorWrite),e.clippingPlanes!==void 0&&(this.clippingPlanes=e.clippingPlanes.map(n=>new Ln().fromJSON(n))),e.clipIntersection!==void 0&&(this.clipIntersection=e.clipIntersection),e.clipShadows!==void 0&&(this.clipShadows=e.clipShadows),e.depthPacking!==void 0&&(this.depthPacking=e.depthPacking),e.blendSrc!==void 0&&(this.blendSrc=e.blendSrc),e.blendDst!==void 0&&(this.blendDst=e.blendDst),e.blendEquation!==void 0&&(this.blendEquation=e.blendEquation),e.blendSrcAlpha!==void 0&&(this.blendSrcAlpha=e.blendSrcAlpha),e.blendDstAlpha!==void 0&&(this.blendDstAlpha=e.blendDstAlpha),e.blendEquationAlpha!==void 0&&(this.blendEquationAlpha=e.blendEquationAlpha),e.blendColor!==void 0&&this.blendColor!==void 0&&this.blendColor.setHex(e.blendColor),e.blendAlpha!==void 0&&(this.blendAlpha=e.blendAlpha),e.stencilWriteMask!==void 0&&(this.stencilWriteMask=e.stencilWriteMask),e.stencilFunc!==void 0&&(this.stencilFunc=e.stencilFunc),e.stencilRef!==void 0&&(this.stencilRef=e.stencilRef),e.stencilFuncMask!==void 0&&(this.stencilFuncMask=e.stencilFuncMask),e.stencilFail!==void 0&&(this.stencilFail=e.stencilFail),e.stencilZFail!==void 0&&(this.stencilZFail=e.stencilZFail),e.stencilZPass!==void 0&&(this.stencilZPass=e.stencilZPass),e.stencilWrite!==void 0&&(this.stencilWrite=e.stencilWrite),e.wireframe!==void 0&&(this.wireframe=e.wireframe),e.wireframeLinewidth!==void 0&&(this.wireframeLinewidth=e.wireframeLinewidth),e.wireframeLinecap!==void 0&&(this.wireframeLinecap=e.wireframeLinecap),e.wireframeLinejoin!==void 0&&(this.wireframeLinejoin=e.wireframeLinejoin),e.rotation!==void 0&&(this.rotation=e.rotation),e.linewidth!==void 0&&(this.linewidth=e.linewidth),e.linecap!==void 0&&(this.linecap=e.linecap),e.linejoin!==void 0&&(this.linejoin=e.linejoin),e.dashSize!==void 0&&(this.dashSize=e.dashSize),e.gapSize!==void 0&&(this.gapSize=e.gapSize),e.scale!==void 0&&(this.scale=e.scale),e.polygonOffset!==void 0&&(this.polygonOffset=e.polygonOffset),e.polygonOffsetFactor!==void 0&&(this.polygonOffsetFactor=e.polygonOffsetFactor),e.polygonOffsetUnits!==void 0&&(this.polygonOffsetUnits=e.polygonOffsetUnits),e.dithering!==void 0&&(this.dithering=e.dithering),e.alphaToCoverage!==void 0&&(this.alphaToCoverage=e.alphaToCoverage),e.premultipliedAlpha!==void 0&&(this.premultipliedAlpha=e.premultipliedAlpha),e.forceSinglePass!==void 0&&(this.forceSinglePass=e.forceSinglePass),e.allowOverride!==void 0&&(this.allowOverride=e.allowOverride),e.visible!==void 0&&(this.visible=e.visible),e.toneMapped!==void 0&&(this.toneMapped=e.toneMapped),e.userData!==void 0&&(this.userData=e.userData),e.vertexColors!==void 0&&(typeof e.vertexColors=="number"?this.vertexColors=e.vertexColors>0:this.vertexColors=e.vertexColors),e.size!==void 0&&(this.size=e.size),e.sizeAttenuation!==void 0&&(this.sizeAttenuation=e.sizeAttenuation),e.map!==void 0&&(this.map=t[e.map]||null),e.matcap!==void 0&&(this.matcap=t[e.matcap]||null),e.alphaMap!==void 0&&(this.alphaMap=t[e.alphaMap]||null),e.bumpMap!==void 0&&(this.bumpMap=t[e.bumpMap]||null),e.bumpScale!==void 0&&(this.bumpScale=e.bumpScale),e.normalMap!==void 0&&(this.normalMap=t[e.normalMap]||null),e.normalMapType!==void 0&&(this.normalMapType=e.normalMapType),e.normalScale!==void 0){let n=e.normalScale;Array.isArray(n)===!1&&(n=[n,n]),this.normalScale=new et().fromArray(n)}return e.displacementMap!==void 0&&(this.displacementMap=t[e.displacementMap]||null),e.displacementScale!==void 0&&(this.displacementScale=e.displacementScale),e.displacementBias!==void 0&&(this.displacementBias=e.displacementBias),e.roughnessMap!==void 0&&(this.roughnessMap=t[e.roughnessMap]||null),e.metalnessMap!==void 0&&(this.metalnessMap=t[e.metalnessMap]||null),e.emissiveMap!==void 0&&(this.emissiveMap=t[e.emissiveMap]||null),e.emissiveIntensity!==void 0&&(this.emissiveIntensity=e.emissiveIntensity),e.specularMap!==void 0&&(this.specularMap=t[e.specularMap]||null),e.specularIntensityMap!==void 0&&(this.specularIntensityMap=t[e.specularIntensityMap]||null),e.specularColorMap!==void 0&&(this.specularColorMap=t[e.specularColorMap]||null),e.envMap!==void 0&&(this.envMap=t[e.envMap]||null),e.envMapRotation!==void 0&&this.envMapRotation.fromArray(e.envMapRotation),e.envMapIntensity!==void 0&&(this.envMapIntensity=e.envMapIntensity),e.reflectivity!==void 0&&(this.reflectivity=e.reflectivity),e.refractionRatio!==void 0&&(this.refractionRatio=e.refractionRatio),e.lightMap!==void 0&&(this.lightMap=t[e.lightMap]||null),e.lightMapIntensity!==void 0&&(this.lightMapIntensity=e.lightMapIntensity),e.aoMap!==void 0&&(this.aoMap=t[e.aoMap]||null),e.aoMapIntensity!==void 0&&(this.aoMapIntensity=e.aoMapIntensity),e.gradientMap!==void 0&&(this.gradientMap=t[e.gradientMap]||null),e.clearcoatMap!==void 0&&(this.clearcoatMap=t[e.clearcoatMap]||null),e.clearcoatRoughnessMap!==void 0&&(this.clearcoatRoughnessMap=t[e.clearcoatRoughnessMap]||null),e.clearcoatNormalMap!==void 0&&(this.clearcoatNormalMap=t[e.clearcoatNormalMap]||null),e.clearcoatNormalScale!==void 0&&(this.clearcoatNormalScale=new et().fromArray(e.clearcoatNormalScale)),e.diffuseRoughnessMap!==void 0&&(this.diffuseRoughnessMap=t[e.diffuseRoughnessMap]||null),e.iridescenceMap!==void 0&&(this.iridescenceMap=t[e.iridescenceMap]||null),e.iridescenceThicknessMap!==void 0&&(this.iridescenceThicknessMap=t[e.iridescenceThicknessMap]||null),e.transmissionMap!==void 0&&(this.transmissionMap=t[e.transmissionMap]||null),e.thicknessMap!==void 0&&(this.thicknessMap=t[e.thicknessMap]||null),e.anisotropyMap!==void 0&&(this.anisotropyMap=t[e.anisotropyMap]||null),e.sheenColorMap!==void 0&&(this.sheenColorMap=t[e.sheenColorMap]||null),e.sheenRoughnessMap!==void 0&&(this.sheenRoughnessMap=t[e.sheenRoughnessMap]||null),this}clone(){return new this.constructor().copy(this)}copy(e){this.name=e.name,this.blending=e.blending,this.side=e.side,this.vertexColors=e.vertexColors,this.opacity=e.opacity,this.transparent=e.transparent,this.blendSrc=e.blendSrc,this.blendDst=e.blendDst,this.blendEquation=e.blendEquation,this.blendSrcAlpha=e.blendSrcAlpha,this.blendDstAlpha=e.blendDstAlpha,this.blendEquationAlpha=e.blendEquationAlpha,this.blendColor.copy(e.blendColor),this.blendAlpha=e.blendAlpha,this.depthFunc=e.depthFunc,this.depthTest=e.depthTest,this.depthWrite=e.depthWrite,this.stencilWriteMask=e.stencilWriteMask,this.stencilFunc=e.stencilFunc,this.stencilRef=e.stencilRef,this.stencilFuncMask=e.stencilFuncMask,this.stencilFail=e.stencilFail,this.stencilZFail=e.stencilZFail,this.stencilZPass=e.stencilZPass,this.stencilWrite=e.stencilWrite;let t=e.clippingPlanes,n=null;if(t!==null){let s=t.length;n=new Array(s);for(let r=0;r!==s;++r)n[r]=t[r].clone()}return this.clippingPlanes=n,this.clipIntersection=e.clipIntersection,this.clipShadows=e.clipShadows,this.shadowSide=e.shadowSide,this.colorWrite=e.colorWrite,this.precision=e.precision,this.polygonOffset=e.polygonOffset,this.polygonOffsetFactor=e.polygonOffsetFactor,this.polygonOffsetUnits=e.polygonOffsetUnits,this.dithering=e.dithering,this.alphaTest=e.alphaTest,this.alphaHash=e.alphaHash,this.alphaToCoverage=e.alphaToCoverage,this.premultipliedAlpha=e.premultipliedAlpha,this.forceSinglePass=e.forceSinglePass,this.allowOverride=e.allowOverride,this.visible=e.visible,this.toneMapped=e.toneMapped,this.userData=JSON.parse(JSON.stringify(e.userData)),this}dispose(){this.dispatchEvent({type:"dispose"})}set needsUpdate(e){e===!0&&this.version++}};var oi=new k,Ql=new k,va=new k,xa=new k,Bs=class{constructor(e=new k,t=new k(0,0,-1)){this.origin=e,this.direction=t}set(e,t){return this.origin.copy(e),this.direction.copy(t),this}copy(e){return this.origin.copy(e.origin),this.direction.copy(e.direction),this}at(e,t){return t.copy(this.origin).addScaledVector(this.direction,e)}lookAt(e){return this.direction.copy(e).sub(this.origin).normalize(),this}recast(e){return this.origin.copy(this.at(e,oi)),this}closestPointToPoint(e,t){t.subVectors(e,this.origin);let n=t.dot(this.direction);return n<0?t.copy(this.origin):t.copy(this.origin).addScaledVector(this.direction,n)}distanceToPoint(e){return Math.sqrt(this.distanceSqToPoint(e))}distanceSqToPoint(e){let t=oi.subVectors(e,this.origin).dot(this.direction);return t<0?this.origin.distanceToSquared(e):(oi.copy(this.origin).addScaledVector(this.direction,t),oi.distanceToSquared(e))}distanceSqToSegment(e,t,n,s){Ql.copy(e).add(t).multiplyScalar(.5),va.copy(t).sub(e).normalize(),xa.copy(this.origin).sub(Ql);let r=e.distanceTo(t)*.5,a=-this.direction.dot(va),o=xa.dot(this.direction),l=-xa.dot(va),c=xa.lengthSq(),h=Math.abs(1-a*a),u,d,f,p;if(h>0)if(u=a*l-o,d=a*o-l,p=r*h,u>=0)if(d>=-p)if(d<=p){let v=1/h;u*=v,d*=v,f=u*(u+a*d+2*o)+d*(a*u+d+2*l)+c}else d=r,u=Math.max(0,-(a*d+o)),f=-u*u+d*(d+2*l)+c;else d=-r,u=Math.max(0,-(a*d+o)),f=-u*u+d*(d+2*l)+c;else d<=-p?(u=Math.max(0,-(-a*r+o)),d=u>0?-r:Math.min(Math.max(-r,-l),r),f=-u*u+d*(d+2*l)+c):d<=p?(u=0,d=Math.min(Math.max(-r,-l),r),f=d*(d+2*l)+c):(u=Math.max(0,-(a*r+o)),d=u>0?r:Math.min(Math.max(-r,-l),r),f=-u*u+d*(d+2*l)+c);else d=a>0?-r:r,u=Math.max(0,-(a*d+o)),f=-u*u+d*(d+2*l)+c;return n&&n.copy(this.origin).addScaledVector(this.direction,u),s&&s.copy(Ql).addScaledVector(va,d),f}intersectSphere(e,t){if(e.radius<0)return null;oi.subVectors(e.center,this.origin);let n=oi.dot(this.direction),s=oi.dot(oi)-n*n,r=e.radius*e.radius;if(s>r)return null;let a=Math.sqrt(r-s),o=n-a,l=n+a;return l<0?null:o<0?this.at(l,t):this.at(o,t)}intersectsSphere(e){return e.radius<0?!1:this.distanceSqToPoint(e.center)<=e.radius*e.radius}distanceToPlane(e){let t=e.normal.dot(this.direction);if(t===0)return e.distanceToPoint(this.origin)===0?0:null;let n=-(this.origin.dot(e.normal)+e.constant)/t;return n>=0?n:null}intersectPlane(e,t){let n=this.distanceToPlane(e);return n===null?null:this.at(n,t)}intersectsPlane(e){let t=e.distanceToPoint(this.origin);return t===0||e.normal.dot(this.direction)*t<0}intersectBox(e,t){let n,s,r,a,o,l,c=1/this.direction.x,h=1/this.direction.y,u=1/this.direction.z,d=this.origin;return c>=0?(n=(e.min.x-d.x)*c,s=(e.max.x-d.x)*c):(n=(e.max.x-d.x)*c,s=(e.min.x-d.x)*c),h>=0?(r=(e.min.y-d.y)*h,a=(e.max.y-d.y)*h):(r=(e.max.y-d.y)*h,a=(e.min.y-d.y)*h),n>a||r>s||((r>n||isNaN(n))&&(n=r),(a<s||isNaN(s))&&(s=a),u>=0?(o=(e.min.z-d.z)*u,l=(e.max.z-d.z)*u):(o=(e.max.z-d.z)*u,l=(e.min.z-d.z)*u),n>l||o>s)||((o>n||n!==n)&&(n=o),(l<s||s!==s)&&(s=l),s<0)?null:this.at(n>=0?n:s,t)}intersectsBox(e){return this.intersectBox(e,oi)!==null}intersectTriangle(e,t,n,s,r){let a=this.origin,o=this.direction,l=o.x,c=o.y,h=o.z,u=e.x-a.x,d=e.y-a.y,f=e.z-a.z,p=t.x-a.x,v=t.y-a.y,m=t.z-a.z,g=n.x-a.x,M=n.y-a.y,C=n.z-a.z,w=Math.abs(l),E=Math.abs(c),S=Math.abs(h),x,T,B,U,N,V,q,I,X,J,$,se;if(w>=E&&w>=S?(B=l,V=u,X=p,se=g,l>=0?(x=c,T=h,U=d,N=f,q=v,I=m,J=M,$=C):(x=h,T=c,U=f,N=d,q=m,I=v,J=C,$=M)):E>=S?(B=c,V=d,X=v,se=M,c>=0?(x=h,T=l,U=f,N=u,q=m,I=p,J=C,$=g):(x=l,T=h,U=u,N=f,q=p,I=m,J=g,$=C)):(B=h,V=f,X=m,se=C,h>=0?(x=l,T=c,U=u,N=d,q=p,I=v,J=g,$=M):(x=c,T=l,U=d,N=u,q=v,I=p,J=M,$=g)),B===0)return null;let L=x/B,Y=T/B,ee=1/B,le=U-L*V,Ee=N-Y*V,j=q-L*X,be=I-Y*X,Ae=J-L*se,Ue=$-Y*se,Me=Ae*be-Ue*j,We=le*Ue-Ee*Ae,Mt=j*Ee-be*le;if(s){if(Me<0||We<0||Mt<0)return null}else if((Me<0||We<0||Mt<0)&&(Me>0||We>0||Mt>0))return null;let ke=Me+We+Mt;if(ke===0)return null;let st=ee*(Me*V+We*X+Mt*se);return(ke>0?st<0:st>0)?null:this.at(st/ke,r)}applyMatrix4(e){return this.origin.applyMatrix4(e),this.direction.transformDirection(e),this}equals(e){return e.origin.equals(this.origin)&&e.direction.equals(this.direction)}clone(){return new this.constructor().copy(this)}},Di=class extends Ni{constructor(e){super(),this.isMeshBasicMaterial=!0,this.type="MeshBasicMaterial",this.color=new je(16777215),this.map=null,this.lightMap=null,this.lightMapIntensity=1,this.aoMap=null,this.aoMapIntensity=1,this.specularMap=null,this.alphaMap=null,this.envMap=null,this.envMapRotation=new Ii,this.combine=mc,this.reflectivity=1,this.refractionRatio=.98,this.wireframe=!1,this.wireframeLinewidth=1,this.wireframeLinecap="round",this.wireframeLinejoin="round",this.fog=!0,this.setValues(e)}copy(e){return super.copy(e),this.color.copy(e.color),this.map=e.map,this.lightMap=e.lightMap,this.lightMapIntensity=e.lightMapIntensity,this.aoMap=e.aoMap,this.aoMapIntensity=e.aoMapIntensity,this.specularMap=e.specularMap,this.alphaMap=e.alphaMap,this.envMap=e.envMap,this.envMapRotation.copy(e.envMapRotation),this.combine=e.combine,this.reflectivity=e.reflectivity,this.refractionRatio=e.refractionRatio,this.wireframe=e.wireframe,this.wireframeLinewidth=e.wireframeLinewidth,this.wireframeLinecap=e.wireframeLinecap,this.wireframeLinejoin=e.wireframeLinejoin,this.fog=e.fog,this}},hu=new at,Qi=new Bs,ya=new ns,uu=new k,ba=new k,Ma=new k,wa=new k,ec=new k,Sa=new k,du=new k,Ta=new k,vt=class extends dn{constructor(e=new Nn,t=new Di){super(),this.isMesh=!0,this.type="Mesh",this.geometry=e,this.material=t,this.morphTargetDictionary=void 0,this.morphTargetInfluences=void 0,this.count=1,this.updateMorphTargets()}copy(e,t){return super.copy(e,t),e.morphTargetInfluences!==void 0?this.morphTargetInfluences=e.morphTargetInfluences.slice():this.morphTargetInfluences=void 0,e.morphTargetDictionary!==void 0?this.morphTargetDictionary=Object.assign({},e.morphTargetDictionary):this.morphTargetDictionary=void 0,this.material=Array.isArray(e.material)?e.material.slice():e.material,this.geometry=e.geometry,this}updateMorphTargets(){let t=this.geometry.morphAttributes,n=Object.keys(t);if(n.length>0){let s=t[n[0]];if(s!==void 0){this.morphTargetInfluences=[],this.morphTargetDictionary={};for(let r=0,a=s.length;r<a;r++){let o=s[r].name||String(r);this.morphTargetInfluences.push(0),this.morphTargetDictionary[o]=r}}}}getVertexPosition(e,t){let n=this.geometry,s=n.attributes.position,r=n.morphAttributes.position,a=n.morphTargetsRelative;t.fromBufferAttribute(s,e);let o=this.morphTargetInfluences;if(r&&o){Sa.set(0,0,0);for(let l=0,c=r.length;l<c;l++){let h=o[l],u=r[l];h!==0&&(ec.fromBufferAttribute(u,e),a?Sa.addScaledVector(ec,h):Sa.addScaledVector(ec.sub(t),h))}t.add(Sa)}return t}intersectsFrustum(e){return e.intersectsObject(this)}raycast(e,t){let n=this.geometry,s=this.material,r=this.matrixWorld;s!==void 0&&(n.boundingSphere===null&&n.computeBoundingSphere(),ya.copy(n.boundingSphere),ya.applyMatrix4(r),Qi.copy(e.ray).recast(e.near),!(ya.containsPoint(Qi.origin)===!1&&(Qi.intersectSphere(ya,uu)===null||Qi.origin.distanceToSquared(uu)>(e.far-e.near)**2))&&(hu.copy(r).invert(),Qi.copy(e.ray).applyMatrix4(hu),!(n.boundingBox!==null&&Qi.intersectsBox(n.boundingBox)===!1)&&this._computeIntersections(e,t,Qi)))}_computeIntersections(e,t,n){let s,r=this.geometry,a=this.material,o=r.index,l=r.attributes.position,c=r.attributes.uv,h=r.attributes.uv1,u=r.attributes.normal,d=r.groups,f=r.drawRange;if(o!==null)if(Array.isArray(a))for(let p=0,v=d.length;p<v;p++){let m=d[p],g=a[m.materialIndex],M=Math.max(m.start,f.start),C=Math.min(o.count,Math.min(m.start+m.count,f.start+f.count));for(let w=M,E=C;w<E;w+=3){let S=o.getX(w),x=o.getX(w+1),T=o.getX(w+2);s=Ea(this,g,e,n,c,h,u,S,x,T),s&&(s.faceIndex=Math.floor(w/3),s.face.materialIndex=m.materialIndex,t.push(s))}}else{let p=Math.max(0,f.start),v=Math.min(o.count,f.start+f.count);for(let m=p,g=v;m<g;m+=3){let M=o.getX(m),C=o.getX(m+1),w=o.getX(m+2);s=Ea(this,a,e,n,c,h,u,M,C,w),s&&(s.faceIndex=Math.floor(m/3),t.push(s))}}else if(l!==void 0)if(Array.isArray(a))for(let p=0,v=d.length;p<v;p++){let m=d[p],g=a[m.materialIndex],M=Math.max(m.start,f.start),C=Math.min(l.count,Math.min(m.start+m.count,f.start+f.count));for(let w=M,E=C;w<E;w+=3){let S=w,x=w+1,T=w+2;s=Ea(this,g,e,n,c,h,u,S,x,T),s&&(s.faceIndex=Math.floor(w/3),s.face.materialIndex=m.materialIndex,t.push(s))}}else{let p=Math.max(0,f.start),v=Math.min(l.count,f.start+f.count);for(let m=p,g=v;m<g;m+=3){let M=m,C=m+1,w=m+2;s=Ea(this,a,e,n,c,h,u,M,C,w),s&&(s.faceIndex=Math.floor(m/3),t.push(s))}}}};function $p(i,e,t,n,s,r,a,o){let l;if(e.side===Zt?l=n.intersectTriangle(a,r,s,!0,o):l=n.intersectTriangle(s,r,a,e.side===Bi,o),l===null)return null;Ta.copy(o),Ta.applyMatrix4(i.matrixWorld);let c=t.ray.origin.distanceTo(Ta);return c<t.near||c>t.far?null:{distance:c,point:Ta.clone(),object:i}}function Ea(i,e,t,n,s,r,a,o,l,c){i.getVertexPosition(o,ba),i.getVertexPosition(l,Ma),i.getVertexPosition(c,wa);let h=$p(i,e,t,n,ba,Ma,wa,du);if(h){let u=new k;Pi.getBarycoord(du,ba,Ma,wa,u),s&&(h.uv=Pi.getInterpolatedAttribute(s,o,l,c,u,new et)),r&&(h.uv1=Pi.getInterpolatedAttribute(r,o,l,c,u,new et)),a&&(h.normal=Pi.getInterpolatedAttribute(a,o,l,c,u,new k),h.normal.dot(n.direction)>0&&h.normal.multiplyScalar(-1));let d={a:o,b:l,c,normal:new k,materialIndex:0};Pi.getNormal(ba,Ma,wa,d.normal),h.face=d,h.barycoord=u}return h}var Za=class extends Qt{constructor(e=null,t=1,n=1,s,r,a,o,l,c=Ut,h=Ut,u,d){super(null,a,o,l,c,h,s,r,u,d),this.isDataTexture=!0,this.image={data:e,width:t,height:n},this.generateMipmaps=!1,this.flipY=!1,this.unpackAlignment=1}};var es=new ns,Xp=new et(.5,.5),Aa=new k,is=class{constructor(e=new Ln,t=new Ln,n=new Ln,s=new Ln,r=new Ln,a=new Ln){this.planes=[e,t,n,s,r,a]}set(e,t,n,s,r,a){let o=this.planes;return o[0].copy(e),o[1].copy(t),o[2].copy(n),o[3].copy(s),o[4].copy(r),o[5].copy(a),this}copy(e){let t=this.planes;for(let n=0;n<6;n++)t[n].copy(e.planes[n]);return this}setFromProjectionMatrix(e,t=bn,n=!1){let s=this.planes,r=e.elements,a=r[0],o=r[1],l=r[2],c=r[3],h=r[4],u=r[5],d=r[6],f=r[7],p=r[8],v=r[9],m=r[10],g=r[11],M=r[12],C=r[13],w=r[14],E=r[15];if(s[0].setComponents(c-a,f-h,g-p,E-M).normalize(),s[1].setComponents(c+a,f+h,g+p,E+M).normalize(),s[2].setComponents(c+o,f+u,g+v,E+C).normalize(),s[3].setComponents(c-o,f-u,g-v,E-C).normalize(),n)s[4].setComponents(l,d,m,w).normalize(),s[5].setComponents(c-l,f-d,g-m,E-w).normalize();else if(s[4].setComponents(c-l,f-d,g-m,E-w).normalize(),t===bn)s[5].setComponents(c+l,f+d,g+m,E+w).normalize();else if(t===_r)s[5].setComponents(l,d,m,w).normalize();else throw new Error("THREE.Frustum.setFromProjectionMatrix(): Invalid coordinate system: "+t);return this}intersectsObject(e){if(e.boundingSphere!==void 0)e.boundingSphere===null&&e.computeBoundingSphere(),es.copy(e.boundingSphere).applyMatrix4(e.matrixWorld);else{let t=e.geometry;t.boundingSphere===null&&t.computeBoundingSphere(),es.copy(t.boundingSphere).applyMatrix4(e.matrixWorld)}return this.intersectsSphere(es)}intersectsSprite(e){es.center.set(0,0,0);let t=Xp.distanceTo(e.center);return es.radius=.7071067811865476+t,es.applyMatrix4(e.matrixWorld),this.intersectsSphere(es)}intersectsSphere(e){let t=this.planes,n=e.center,s=-e.radius;for(let r=0;r<6;r++)if(t[r].distanceToPoint(n)<s)return!1;return!0}intersectsBox(e){let t=this.planes;for(let n=0;n<6;n++){let s=t[n];if(Aa.x=s.normal.x>0?e.max.x:e.min.x,Aa.y=s.normal.y>0?e.max.y:e.min.y,Aa.z=s.normal.z>0?e.max.z:e.min.z,s.distanceToPoint(Aa)<0)return!1}return!0}containsPoint(e){let t=this.planes;for(let n=0;n<6;n++)if(t[n].distanceToPoint(e)<0)return!1;return!0}clone(){return new this.constructor().copy(this)}},fu=new at,Ja=class i{constructor(){this.coordinateSystem=bn,this._frustums=[],this._count=0}setFromArrayCamera(e){let t=e.cameras,n=this._frustums;for(let s=0;s<t.length;s++){let r=t[s];fu.multiplyMatrices(r.projectionMatrix,r.matrixWorldInverse),n[s]===void 0&&(n[s]=new is),n[s].setFromProjectionMatrix(fu,r.coordinateSystem,r.reversedDepth)}return this._count=t.length,this}getFrustum(e){return this._frustums[e]}intersectsObject(e){let t=this._frustums;for(let n=0;n<this._count;n++)if(t[n].intersectsObject(e))return!0;return!1}intersectsSprite(e){let t=this._frustums;for(let n=0;n<this._count;n++)if(t[n].intersectsSprite(e))return!0;return!1}intersectsSphere(e){let t=this._frustums;for(let n=0;n<this._count;n++)if(t[n].intersectsSphere(e))return!0;return!1}intersectsBox(e){let t=this._frustums;for(let n=0;n<this._count;n++)if(t[n].intersectsBox(e))return!0;return!1}containsPoint(e){let t=this._frustums;for(let n=0;n<this._count;n++)if(t[n].containsPoint(e))return!0;return!1}copy(e){this.coordinateSystem=e.coordinateSystem;let t=this._frustums,n=e._frustums;for(let s=0;s<e._count;s++)t[s]===void 0&&(t[s]=new is),t[s].copy(n[s]);return this._count=e._count,this}clone(){return new i().copy(this)}};var ss=class extends Ni{constructor(e){super(),this.isLineBasicMaterial=!0,this.type="LineBasicMaterial",this.color=new je(16777215),this.map=null,this.linewidth=1,this.linecap="round",this.linejoin="round",this.fog=!0,this.setValues(e)}copy(e){return super.copy(e),this.color.copy(e.color),this.map=e.map,this.linewidth=e.linewidth,this.linecap=e.linecap,this.linejoin=e.linejoin,this.fog=e.fog,this}},Ka=new k,ja=new k,pu=new at,dr=new Bs,Ca=new ns,tc=new k,mu=new k,Qa=class extends dn{constructor(e=new Nn,t=new ss){super(),this.isLine=!0,this.type="Line",this.geometry=e,this.material=t,this.morphTargetDictionary=void 0,this.morphTargetInfluences=void 0,this.updateMorphTargets()}copy(e,t){return super.copy(e,t),e.morphTargetInfluences!==void 0?this.morphTargetInfluences=e.morphTargetInfluences.slice():this.morphTargetInfluences=void 0,e.morphTargetDictionary!==void 0?this.morphTargetDictionary=Object.assign({},e.morphTargetDictionary):this.morphTargetDictionary=void 0,this.material=Array.isArray(e.material)?e.material.slice():e.material,this.geometry=e.geometry,this}computeLineDistances(){let e=this.geometry;if(e.index===null){let t=e.attributes.position,n=[0];for(let s=1,r=t.count;s<r;s++)Ka.fromBufferAttribute(t,s-1),ja.fromBufferAttribute(t,s),n[s]=n[s-1],n[s]+=Ka.distanceTo(ja);e.setAttribute("lineDistance",new jt(n,1))}else Oe("Line.computeLineDistances(): Computation only possible with non-indexed BufferGeometry.");return this}intersectsFrustum(e){return e.intersectsObject(this)}raycast(e,t){let n=this.geometry,s=this.matrixWorld,r=e.params.Line.threshold,a=n.drawRange;if(n.boundingSphere===null&&n.computeBoundingSphere(),Ca.copy(n.boundingSphere),Ca.applyMatrix4(s),Ca.radius+=r,e.ray.intersectsSphere(Ca)===!1)return;pu.copy(s).invert(),dr.copy(e.ray).applyMatrix4(pu);let o=r/((this.scale.x+this.scale.y+this.scale.z)/3),l=o*o,c=this.isLineSegments?2:1,h=n.index,d=n.attributes.position;if(h!==null){let f=Math.max(0,a.start),p=Math.min(h.count,a.start+a.count);for(let v=f,m=p-1;v<m;v+=c){let g=h.getX(v),M=h.getX(v+1),C=Ra(this,e,dr,l,g,M,v);C&&t.push(C)}if(this.isLineLoop){let v=h.getX(p-1),m=h.getX(f),g=Ra(this,e,dr,l,v,m,p-1);g&&t.push(g)}}else{let f=Math.max(0,a.start),p=Math.min(d.count,a.start+a.count);for(let v=f,m=p-1;v<m;v+=c){let g=Ra(this,e,dr,l,v,v+1,v);g&&t.push(g)}if(this.isLineLoop){let v=Ra(this,e,dr,l,p-1,f,p-1);v&&t.push(v)}}}updateMorphTargets(){let t=this.geometry.morphAttributes,n=Object.keys(t);if(n.length>0){let s=t[n[0]];if(s!==void 0){this.morphTargetInfluences=[],this.morphTargetDictionary={};for(let r=0,a=s.length;r<a;r++){let o=s[r].name||String(r);this.morphTargetInfluences.push(0),this.morphTargetDictionary[o]=r}}}}};function Ra(i,e,t,n,s,r,a){let o=i.geometry.attributes.position;if(Ka.fromBufferAttribute(o,s),ja.fromBufferAttribute(o,r),t.distanceSqToSegment(Ka,ja,tc,mu)>n)return;tc.applyMatrix4(i.matrixWorld);let c=e.ray.origin.distanceTo(tc);if(!(c<e.near||c>e.far))return{distance:c,point:mu.clone().applyMatrix4(i.matrixWorld),index:a,face:null,faceIndex:null,barycoord:null,object:i}}var gu=new k,_u=new k,zs=class extends Qa{constructor(e,t){super(e,t),this.isLineSegments=!0,this.type="LineSegments"}computeLineDistances(){let e=this.geometry;if(e.index===null){let t=e.attributes.position,n=[];for(let s=0,r=t.count;s<r;s+=2)gu.fromBufferAttribute(t,s),_u.fromBufferAttribute(t,s+1),n[s]=s===0?0:n[s-1],n[s+1]=n[s]+gu.distanceTo(_u);e.setAttribute("lineDistance",new jt(n,1))}else Oe("LineSegments.computeLineDistances(): Computation only possible with non-indexed BufferGeometry.");return this}};var Mr=class extends Qt{constructor(e=[],t=os,n,s,r,a,o,l,c,h){super(e,t,n,s,r,a,o,l,c,h),this.isCubeTexture=!0,this.flipY=!1}get images(){return this.image}set images(e){this.image=e}};var hi=class extends Qt{constructor(e,t,n=Dn,s,r,a,o=Ut,l=Ut,c,h=ci,u=1){if(h!==ci&&h!==di)throw new Error("THREE.DepthTexture: format must be either THREE.DepthFormat or THREE.DepthStencilFormat");let d={width:e,height:t,depth:u};super(d,s,r,a,o,l,h,n,c),this.isDepthTexture=!0,this.flipY=!1,this.generateMipmaps=!1,this.compareFunction=null}copy(e){return super.copy(e),this.source=new Fs(Object.assign({},e.image)),this.compareFunction=e.compareFunction,this}toJSON(e){let t=super.toJSON(e);return t.compareFunction=this.compareFunction,t}},wr=class extends hi{constructor(e,t=Dn,n=os,s,r,a=Ut,o=Ut,l,c=ci){let h={width:e,height:e,depth:1},u=[h,h,h,h,h,h];super(e,e,t,n,s,r,a,o,l,c),this.image=u,this.isCubeDepthTexture=!0,this.isCubeTexture=!0}get images(){return this.image}set images(e){this.image=e}},Sr=class extends Qt{constructor(e=null){super(),this.sourceTexture=e,this.isExternalTexture=!0}copy(e){return super.copy(e),this.sourceTexture=e.sourceTexture,this}},Vs=class i extends Nn{constructor(e=1,t=1,n=1,s=1,r=1,a=1){super(),this.type="BoxGeometry",this.parameters={width:e,height:t,depth:n,widthSegments:s,heightSegments:r,depthSegments:a};let o=this;s=Math.floor(s),r=Math.floor(r),a=Math.floor(a);let l=[],c=[],h=[],u=[],d=0,f=0;p("z","y","x",-1,-1,n,t,e,a,r,0),p("z","y","x",1,-1,n,t,-e,a,r,1),p("x","z","y",1,1,e,n,t,s,a,2),p("x","z","y",1,-1,e,n,-t,s,a,3),p("x","y","z",1,-1,e,t,n,s,r,4),p("x","y","z",-1,-1,e,t,-n,s,r,5),this.setIndex(l),this.setAttribute("position",new jt(c,3)),this.setAttribute("normal",new jt(h,3)),this.setAttribute("uv",new jt(u,2));function p(v,m,g,M,C,w,E,S,x,T,B){let U=w/x,N=E/T,V=w/2,q=E/2,I=S/2,X=x+1,J=T+1,$=0,se=0,L=new k;for(let Y=0;Y<J;Y++){let ee=Y*N-q;for(let le=0;le<X;le++){let Ee=le*U-V;L[v]=Ee*M,L[m]=ee*C,L[g]=I,c.push(L.x,L.y,L.z),L[v]=0,L[m]=0,L[g]=S>0?1:-1,h.push(L.x,L.y,L.z),u.push(le/x),u.push(1-Y/T),$+=1}}for(let Y=0;Y<T;Y++)for(let ee=0;ee<x;ee++){let le=d+ee+X*Y,Ee=d+ee+X*(Y+1),j=d+(ee+1)+X*(Y+1),be=d+(ee+1)+X*Y;l.push(le,Ee,be),l.push(Ee,j,be),se+=6}o.addGroup(f,se,B),f+=se,d+=$}}copy(e){return super.copy(e),this.parameters=Object.assign({},e.parameters),this}static fromJSON(e){return new i(e.width,e.height,e.depth,e.widthSegments,e.heightSegments,e.depthSegments)}};var Tr=class i extends Nn{constructor(e=1,t=1,n=1,s=1){super(),this.type="PlaneGeometry",this.parameters={width:e,height:t,widthSegments:n,heightSegments:s};let r=e/2,a=t/2,o=Math.floor(n),l=Math.floor(s),c=o+1,h=l+1,u=e/o,d=t/l,f=[],p=[],v=[],m=[];for(let g=0;g<h;g++){let M=g*d-a;for(let C=0;C<c;C++){let w=C*u-r;p.push(w,-M,0),v.push(0,0,1),m.push(C/o),m.push(1-g/l)}}for(let g=0;g<l;g++)for(let M=0;M<o;M++){let C=M+c*g,w=M+c*(g+1),E=M+1+c*(g+1),S=M+1+c*g;f.push(C,w,S),f.push(w,E,S)}this.setIndex(f),this.setAttribute("position",new jt(p,3)),this.setAttribute("normal",new jt(v,3)),this.setAttribute("uv",new jt(m,2))}copy(e){return super.copy(e),this.parameters=Object.assign({},e.parameters),this}static fromJSON(e){return new i(e.width,e.height,e.widthSegments,e.heightSegments)}};function cs(i){let e={};for(let t in i){e[t]={};for(let n in i[t]){let s=i[t][n];if(vu(s))s.isRenderTargetTexture?(Oe("UniformsUtils: Textures of render targets cannot be cloned via cloneUniforms() or mergeUniforms()."),e[t][n]=null):e[t][n]=s.clone();else if(Array.isArray(s))if(vu(s[0])){let r=[];for(let a=0,o=s.length;a<o;a++)r[a]=s[a].clone();e[t][n]=r}else e[t][n]=s.slice();else e[t][n]=s}}return e}function Ht(i){let e={};for(let t=0;t<i.length;t++){let n=cs(i[t]);for(let s in n)e[s]=n[s]}return e}function vu(i){return i&&(i.isColor||i.isMatrix3||i.isMatrix4||i.isVector2||i.isVector3||i.isVector4||i.isTexture||i.isQuaternion)}function qp(i){let e=[];for(let t=0;t<i.length;t++)e.push(i[t].clone());return e}function kc(i){let e=i.getRenderTarget();return e===null?i.outputColorSpace:e.isXRRenderTarget===!0?e.texture.colorSpace:Ke.workingColorSpace}var hd={clone:cs,merge:Ht},Yp=`void main() {
	gl_Position = projectionMatrix * modelViewMatrix * vec4( position, 1.0 );
}`,Zp=`void main() {
	gl_FragColor = vec4( 1.0, 0.0, 0.0, 1.0 );
}`,Hn=class extends Ni{constructor(e){super(),this.isShaderMaterial=!0,this.type="ShaderMaterial",this.defines={},this.uniforms={},this.uniformsGroups=[],this.vertexShader=Yp,this.fragmentShader=Zp,this.linewidth=1,this.wireframe=!1,this.wireframeLinewidth=1,this.fog=!1,this.lights=!1,this.clipping=!1,this.forceSinglePass=!0,this.extensions={clipCullDistance:!1,multiDraw:!1},this.defaultAttributeValues={color:[1,1,1],uv:[0,0],uv1:[0,0]},this.index0AttributeName=void 0,this.uniformsNeedUpdate=!1,this.glslVersion=null,e!==void 0&&this.setValues(e)}copy(e){return super.copy(e),this.fragmentShader=e.fragmentShader,this.vertexShader=e.vertexShader,this.uniforms=cs(e.uniforms),this.uniformsGroups=qp(e.uniformsGroups),this.defines=Object.assign({},e.defines),this.wireframe=e.wireframe,this.wireframeLinewidth=e.wireframeLinewidth,this.fog=e.fog,this.lights=e.lights,this.clipping=e.clipping,this.extensions=Object.assign({},e.extensions),this.glslVersion=e.glslVersion,this.defaultAttributeValues=Object.assign({},e.defaultAttributeValues),this.index0AttributeName=e.index0AttributeName,this.uniformsNeedUpdate=e.uniformsNeedUpdate,this}toJSON(e){let t=super.toJSON(e);t.glslVersion=this.glslVersion,t.uniforms={};for(let s in this.uniforms){let a=this.uniforms[s].value;a&&a.isTexture?t.uniforms[s]={type:"t",value:a.toJSON(e).uuid}:a&&a.isColor?t.uniforms[s]={type:"c",value:a.getHex()}:a&&a.isVector2?t.uniforms[s]={type:"v2",value:a.toArray()}:a&&a.isVector3?t.uniforms[s]={type:"v3",value:a.toArray()}:a&&a.isVector4?t.uniforms[s]={type:"v4",value:a.toArray()}:a&&a.isMatrix3?t.uniforms[s]={type:"m3",value:a.toArray()}:a&&a.isMatrix4?t.uniforms[s]={type:"m4",value:a.toArray()}:t.uniforms[s]={value:a}}Object.keys(this.defines).length>0&&(t.defines=this.defines),t.vertexShader=this.vertexShader,t.fragmentShader=this.fragmentShader,t.lights=this.lights,t.clipping=this.clipping;let n={};for(let s in this.extensions)this.extensions[s]===!0&&(n[s]=!0);return Object.keys(n).length>0&&(t.extensions=n),t}fromJSON(e,t){if(super.fromJSON(e,t),e.uniforms!==void 0)for(let n in e.uniforms){let s=e.uniforms[n];switch(this.uniforms[n]={},s.type){case"t":this.uniforms[n].value=t[s.value]||null;break;case"c":this.uniforms[n].value=new je().setHex(s.value);break;case"v2":this.uniforms[n].value=new et().fromArray(s.value);break;case"v3":this.uniforms[n].value=new k().fromArray(s.value);break;case"v4":this.uniforms[n].value=new _t().fromArray(s.value);break;case"m3":this.uniforms[n].value=new Ve().fromArray(s.value);break;case"m4":this.uniforms[n].value=new at().fromArray(s.value);break;default:this.uniforms[n].value=s.value}}if(e.defines!==void 0&&(this.defines=e.defines),e.vertexShader!==void 0&&(this.vertexShader=e.vertexShader),e.fragmentShader!==void 0&&(this.fragmentShader=e.fragmentShader),e.glslVersion!==void 0&&(this.glslVersion=e.glslVersion),e.extensions!==void 0)for(let n in e.extensions)this.extensions[n]=e.extensions[n];return e.lights!==void 0&&(this.lights=e.lights),e.clipping!==void 0&&(this.clipping=e.clipping),this}},eo=class extends Hn{constructor(e){super(e),this.isRawShaderMaterial=!0,this.type="RawShaderMaterial"}};var to=class extends Ni{constructor(e){super(),this.isMeshDepthMaterial=!0,this.type="MeshDepthMaterial",this.depthPacking=Zu,this.map=null,this.alphaMap=null,this.displacementMap=null,this.displacementScale=1,this.displacementBias=0,this.wireframe=!1,this.wireframeLinewidth=1,this.setValues(e)}copy(e){return super.copy(e),this.depthPacking=e.depthPacking,this.map=e.map,this.alphaMap=e.alphaMap,this.displacementMap=e.displacementMap,this.displacementScale=e.displacementScale,this.displacementBias=e.displacementBias,this.wireframe=e.wireframe,this.wireframeLinewidth=e.wireframeLinewidth,this}},no=class extends Ni{constructor(e){super(),this.isMeshDistanceMaterial=!0,this.type="MeshDistanceMaterial",this.map=null,this.alphaMap=null,this.displacementMap=null,this.displacementScale=1,this.displacementBias=0,this.setValues(e)}copy(e){return super.copy(e),this.map=e.map,this.alphaMap=e.alphaMap,this.displacementMap=e.displacementMap,this.displacementScale=e.displacementScale,this.displacementBias=e.displacementBias,this}};function Ps(i,e){return!i||i.constructor===e?i:typeof e.BYTES_PER_ELEMENT=="number"?new e(i):Array.prototype.slice.call(i)}function Pa(i){return i!==void 0&&i.inTangents!==void 0&&i.outTangents!==void 0}var Ui=class{constructor(e,t,n,s){this.parameterPositions=e,this._cachedIndex=0,this.resultBuffer=s!==void 0?s:new t.constructor(n),this.sampleValues=t,this.valueSize=n,this.settings=null,this.DefaultSettings_={}}evaluate(e){let t=this.parameterPositions,n=this._cachedIndex,s=t[n],r=t[n-1];n:{e:{let a;t:{i:if(!(e<s)){for(let o=n+2;;){if(s===void 0){if(e<r)break i;return n=t.length,this._cachedIndex=n,this.copySampleValue_(n-1)}if(n===o)break;if(r=s,s=t[++n],e<s)break e}a=t.length;break t}if(!(e>=r)){let o=t[1];e<o&&(n=2,r=o);for(let l=n-2;;){if(r===void 0)return this._cachedIndex=0,this.copySampleValue_(0);if(n===l)break;if(s=r,r=t[--n-1],e>=r)break e}a=n,n=0;break t}break n}for(;n<a;){let o=n+a>>>1;e<t[o]?a=o:n=o+1}if(s=t[n],r=t[n-1],r===void 0)return this._cachedIndex=0,this.copySampleValue_(0);if(s===void 0)return n=t.length,this._cachedIndex=n,this.copySampleValue_(n-1)}this._cachedIndex=n,this.intervalChanged_(n,r,s)}return this.interpolate_(n,r,e,s)}getSettings_(){return this.settings||this.DefaultSettings_}copySampleValue_(e){let t=this.resultBuffer,n=this.sampleValues,s=this.valueSize,r=e*s;for(let a=0;a!==s;++a)t[a]=n[r+a];return t}interpolate_(){throw new Error("THREE.Interpolant: Call to abstract method.")}intervalChanged_(){}},io=class extends Ui{constructor(e,t,n,s){super(e,t,n,s),this._weightPrev=-0,this._offsetPrev=-0,this._weightNext=-0,this._offsetNext=-0,this.DefaultSettings_={endingStart:ic,endingEnd:ic}}intervalChanged_(e,t,n){let s=this.parameterPositions,r=e-2,a=e+1,o=s[r],l=s[a];if(o===void 0)switch(this.getSettings_().endingStart){case sc:r=e,o=2*t-n;break;case rc:r=s.length-2,o=t+s[r]-s[r+1];break;default:r=e,o=n}if(l===void 0)switch(this.getSettings_().endingEnd){case sc:a=e,l=2*n-t;break;case rc:a=1,l=n+s[1]-s[0];break;default:a=e-1,l=t}let c=(n-t)*.5,h=this.valueSize;this._weightPrev=c/(t-o),this._weightNext=c/(l-n),this._offsetPrev=r*h,this._offsetNext=a*h}interpolate_(e,t,n,s){let r=this.resultBuffer,a=this.sampleValues,o=this.valueSize,l=e*o,c=l-o,h=this._offsetPrev,u=this._offsetNext,d=this._weightPrev,f=this._weightNext,p=(n-t)/(s-t),v=p*p,m=v*p,g=-d*m+2*d*v-d*p,M=(1+d)*m+(-1.5-2*d)*v+(-.5+d)*p+1,C=(-1-f)*m+(1.5+f)*v+.5*p,w=f*m-f*v;for(let E=0;E!==o;++E)r[E]=g*a[h+E]+M*a[c+E]+C*a[l+E]+w*a[u+E];return r}},so=class extends Ui{constructor(e,t,n,s){super(e,t,n,s)}interpolate_(e,t,n,s){let r=this.resultBuffer,a=this.sampleValues,o=this.valueSize,l=e*o,c=l-o,h=(n-t)/(s-t),u=1-h;for(let d=0;d!==o;++d)r[d]=a[c+d]*u+a[l+d]*h;return r}},ro=class extends Ui{constructor(e,t,n,s){super(e,t,n,s)}interpolate_(e){return this.copySampleValue_(e-1)}},ao=class extends Ui{interpolate_(e,t,n,s){let r=this.resultBuffer,a=this.sampleValues,o=this.valueSize,l=e*o,c=l-o,h=this.inTangents,u=this.outTangents;if(!h||!u){let p=(n-t)/(s-t),v=1-p;for(let m=0;m!==o;++m)r[m]=a[c+m]*v+a[l+m]*p;return r}let d=o*2,f=e-1;for(let p=0;p!==o;++p){let v=a[c+p],m=a[l+p],g=f*d+p*2,M=u[g],C=u[g+1],w=e*d+p*2,E=h[w],S=h[w+1],x=Kp(n,t,M,E,s);r[p]=ud(x,v,C,S,m)}return r}};function ud(i,e,t,n,s){let r=1-i;return r*r*r*e+3*r*r*i*t+3*r*i*i*n+i*i*i*s}function Jp(i,e,t,n,s){let r=1-i;return 3*r*r*(t-e)+6*r*i*(n-t)+3*i*i*(s-n)}function Kp(i,e,t,n,s){let r=(i-e)/(s-e);for(let a=0;a<8;a++){let o=ud(r,e,t,n,s)-i;if(Math.abs(o)<1e-10)break;let l=Jp(r,e,t,n,s);if(Math.abs(l)<1e-10)break;r=Math.max(0,Math.min(1,r-o/l))}return r}var fn=class{constructor(e,t,n,s){if(e===void 0)throw new Error("THREE.KeyframeTrack: track name is undefined");if(t===void 0||t.length===0)throw new Error("THREE.KeyframeTrack: no keyframes in track named "+e);this.name=e,this.times=Ps(t,this.TimeBufferType),this.values=Ps(n,this.ValueBufferType),this.setInterpolation(s||this.DefaultInterpolation)}static toJSON(e){let t=e.constructor,n;if(t.toJSON!==this.toJSON)n=t.toJSON(e);else{n={name:e.name,times:Ps(e.times,Array),values:Ps(e.values,Array)};let s=e.getInterpolation();s!==e.DefaultInterpolation&&(n.interpolation=s),Pa(e.settings)&&(n.settings={inTangents:Ps(e.settings.inTangents,Array),outTangents:Ps(e.settings.outTangents,Array)})}return n.type=e.ValueTypeName,n}InterpolantFactoryMethodDiscrete(e){return new ro(this.times,this.values,this.getValueSize(),e)}InterpolantFactoryMethodLinear(e){return new so(this.times,this.values,this.getValueSize(),e)}InterpolantFactoryMethodSmooth(e){return new io(this.times,this.values,this.getValueSize(),e)}InterpolantFactoryMethodBezier(e){let t=new ao(this.times,this.values,this.getValueSize(),e);return this.settings&&(t.inTangents=this.settings.inTangents,t.outTangents=this.settings.outTangents),t}setInterpolation(e){let t;switch(e){case pr:t=this.InterpolantFactoryMethodDiscrete;break;case Wa:t=this.InterpolantFactoryMethodLinear;break;case Na:t=this.InterpolantFactoryMethodSmooth;break;case nc:t=this.InterpolantFactoryMethodBezier;break}if(t===void 0){let n="unsupported interpolation for "+this.ValueTypeName+" keyframe track named "+this.name;if(this.createInterpolant===void 0)if(e!==this.DefaultInterpolation)this.setInterpolation(this.DefaultInterpolation);else throw new Error(n);return Oe("KeyframeTrack:",n),this}return this.createInterpolant=t,this}getInterpolation(){switch(this.createInterpolant){case this.InterpolantFactoryMethodDiscrete:return pr;case this.InterpolantFactoryMethodLinear:return Wa;case this.InterpolantFactoryMethodSmooth:return Na;case this.InterpolantFactoryMethodBezier:return nc}}getValueSize(){return this.values.length/this.times.length}shift(e){if(e!==0){let t=this.times;for(let n=0,s=t.length;n!==s;++n)t[n]+=e;Pa(this.settings)&&(xu(this.settings.inTangents,e),xu(this.settings.outTangents,e))}return this}scale(e){if(e!==1){let t=this.times;for(let n=0,s=t.length;n!==s;++n)t[n]*=e;Pa(this.settings)&&(yu(this.settings.inTangents,e),yu(this.settings.outTangents,e))}return this}trim(e,t){let n=this.times,s=n.length,r=0,a=s-1;for(;r!==s&&n[r]<e;)++r;for(;a!==-1&&n[a]>t;)--a;if(++a,r!==0||a!==s){r>=a&&(a=Math.max(a,1),r=a-1);let o=this.getValueSize();this.times=n.slice(r,a),this.values=this.values.slice(r*o,a*o)}return this}validate(){let e=!0,t=this.getValueSize();t-Math.floor(t)!==0&&(ze("KeyframeTrack: Invalid value size in track.",this),e=!1);let n=this.times,s=this.values,r=n.length;r===0&&(ze("KeyframeTrack: Track is empty.",this),e=!1);let a=null;for(let o=0;o!==r;o++){let l=n[o];if(typeof l=="number"&&isNaN(l)){ze("KeyframeTrack: Time is not a valid number.",this,o,l),e=!1;break}if(a!==null&&a>l){ze("KeyframeTrack: Out of order keys.",this,o,l,a),e=!1;break}a=l}if(s!==void 0&&Tp(s))for(let o=0,l=s.length;o!==l;++o){let c=s[o];if(isNaN(c)){ze("KeyframeTrack: Value is not a valid number.",this,o,c),e=!1;break}}return e}optimize(){let e=this.times.slice(),t=this.values.slice(),n=this.getValueSize(),s=this.getInterpolation()===Na,r=e.length-1,a=1;for(let o=1;o<r;++o){let l=!1,c=e[o],h=e[o+1];if(c!==h&&(o!==1||c!==e[0]))if(s)l=!0;else{let u=o*n,d=u-n,f=u+n;for(let p=0;p!==n;++p){let v=t[u+p];if(v!==t[d+p]||v!==t[f+p]){l=!0;break}}}if(l){if(o!==a){e[a]=e[o];let u=o*n,d=a*n;for(let f=0;f!==n;++f)t[d+f]=t[u+f]}++a}}if(r>0){e[a]=e[r];for(let o=r*n,l=a*n,c=0;c!==n;++c)t[l+c]=t[o+c];++a}return a!==e.length?(this.times=e.slice(0,a),this.values=t.slice(0,a*n)):(this.times=e,this.values=t),this}clone(){let e=this.times.slice(),t=this.values.slice(),n=this.constructor,s=new n(this.name,e,t);return s.createInterpolant=this.createInterpolant,Pa(this.settings)&&(s.settings={inTangents:this.settings.inTangents.slice(),outTangents:this.settings.outTangents.slice()}),s}};function xu(i,e){for(let t=0,n=i.length;t!==n;t+=2)i[t]+=e}function yu(i,e){for(let t=0,n=i.length;t!==n;t+=2)i[t]*=e}fn.prototype.ValueTypeName="";fn.prototype.TimeBufferType=Float32Array;fn.prototype.ValueBufferType=Float32Array;fn.prototype.DefaultInterpolation=Wa;var Fi=class extends fn{constructor(e,t,n){super(e,t,n)}};Fi.prototype.ValueTypeName="bool";Fi.prototype.ValueBufferType=Array;Fi.prototype.DefaultInterpolation=pr;Fi.prototype.InterpolantFactoryMethodLinear=void 0;Fi.prototype.InterpolantFactoryMethodSmooth=void 0;var oo=class extends fn{constructor(e,t,n,s){super(e,t,n,s)}};oo.prototype.ValueTypeName="color";var lo=class extends fn{constructor(e,t,n,s){super(e,t,n,s)}};lo.prototype.ValueTypeName="number";var co=class extends Ui{constructor(e,t,n,s){super(e,t,n,s)}interpolate_(e,t,n,s){let r=this.resultBuffer,a=this.sampleValues,o=this.valueSize,l=(n-t)/(s-t),c=e*o;for(let h=c+o;c!==h;c+=4)Mn.slerpFlat(r,0,a,c-o,a,c,l);return r}},Er=class extends fn{constructor(e,t,n,s){super(e,t,n,s)}InterpolantFactoryMethodLinear(e){return new co(this.times,this.values,this.getValueSize(),e)}};Er.prototype.ValueTypeName="quaternion";Er.prototype.InterpolantFactoryMethodSmooth=void 0;var Oi=class extends fn{constructor(e,t,n){super(e,t,n)}};Oi.prototype.ValueTypeName="string";Oi.prototype.ValueBufferType=Array;Oi.prototype.DefaultInterpolation=pr;Oi.prototype.InterpolantFactoryMethodLinear=void 0;Oi.prototype.InterpolantFactoryMethodSmooth=void 0;var ho=class extends fn{constructor(e,t,n,s){super(e,t,n,s)}};ho.prototype.ValueTypeName="vector";var uo=class{constructor(e,t,n){let s=this,r=!1,a=0,o=0,l,c=[];this.onStart=void 0,this.onLoad=e,this.onProgress=t,this.onError=n,this._abortController=null,this.itemStart=function(h){o++,r===!1&&s.onStart!==void 0&&s.onStart(h,a,o),r=!0},this.itemEnd=function(h){a++,s.onProgress!==void 0&&s.onProgress(h,a,o),a===o&&(r=!1,s.onLoad!==void 0&&s.onLoad())},this.itemError=function(h){s.onError!==void 0&&s.onError(h)},this.resolveURL=function(h){return h=h.normalize("NFC"),l?l(h):h},this.setURLModifier=function(h){return l=h,this},this.addHandler=function(h,u){return c.push(h,u),this},this.removeHandler=function(h){let u=c.indexOf(h);return u!==-1&&c.splice(u,2),this},this.getHandler=function(h){for(let u=0,d=c.length;u<d;u+=2){let f=c[u],p=c[u+1];if(f.global&&(f.lastIndex=0),f.test(h))return p}return null},this.abort=function(){return this.abortController.abort(),this._abortController=null,this}}get abortController(){return this._abortController||(this._abortController=new AbortController),this._abortController}},dd=new uo,fo=class{constructor(e){this.manager=e!==void 0?e:dd,this.crossOrigin="anonymous",this.withCredentials=!1,this.path="",this.resourcePath="",this.requestHeader={},this.priority="auto",this.cache="default",typeof __THREE_DEVTOOLS__<"u"&&__THREE_DEVTOOLS__.dispatchEvent(new CustomEvent("observe",{detail:this}))}load(){}loadAsync(e,t){let n=this;return new Promise(function(s,r){n.load(e,s,t,r)})}parse(){}setCrossOrigin(e){return this.crossOrigin=e,this}setWithCredentials(e){return this.withCredentials=e,this}setPath(e){return this.path=e,this}setResourcePath(e){return this.resourcePath=e,this}setRequestHeader(e){return this.requestHeader=e,this}setPriority(e){return this.priority=e,this}setCache(e){return this.cache=e,this}abort(){return this}};fo.DEFAULT_MATERIAL_NAME="__DEFAULT";var Ia=new k,La=new Mn,zn=new k,Ar=class extends dn{constructor(){super(),this.isCamera=!0,this.type="Camera",this.matrixWorldInverse=new at,this.projectionMatrix=new at,this.projectionMatrixInverse=new at,this.coordinateSystem=bn,this._reversedDepth=!1}get reversedDepth(){return this._reversedDepth}copy(e,t){return super.copy(e,t),this.matrixWorldInverse.copy(e.matrixWorldInverse),this.projectionMatrix.copy(e.projectionMatrix),this.projectionMatrixInverse.copy(e.projectionMatrixInverse),this.coordinateSystem=e.coordinateSystem,this}getWorldDirection(e){return super.getWorldDirection(e).negate()}updateMatrixWorld(e){super.updateMatrixWorld(e),this.matrixWorld.decompose(Ia,La,zn),zn.x===1&&zn.y===1&&zn.z===1?this.matrixWorldInverse.copy(this.matrixWorld).invert():this.matrixWorldInverse.compose(Ia,La,zn.set(1,1,1)).invert()}updateWorldMatrix(e,t,n=!1){super.updateWorldMatrix(e,t,n),this.matrixWorld.decompose(Ia,La,zn),zn.x===1&&zn.y===1&&zn.z===1?this.matrixWorldInverse.copy(this.matrixWorld).invert():this.matrixWorldInverse.compose(Ia,La,zn.set(1,1,1)).invert()}clone(){return new this.constructor().copy(this)}},Ri=new k,bu=new et,Mu=new et,hn=class extends Ar{constructor(e=50,t=1,n=.1,s=2e3){super(),this.isPerspectiveCamera=!0,this.type="PerspectiveCamera",this.fov=e,this.zoom=1,this.near=n,this.far=s,this.focus=10,this.aspect=t,this.view=null,this.filmGauge=35,this.filmOffset=0,this.updateProjectionMatrix()}copy(e,t){return super.copy(e,t),this.fov=e.fov,this.zoom=e.zoom,this.near=e.near,this.far=e.far,this.focus=e.focus,this.aspect=e.aspect,this.view=e.view===null?null:Object.assign({},e.view),this.filmGauge=e.filmGauge,this.filmOffset=e.filmOffset,this}setFocalLength(e){let t=.5*this.getFilmHeight()/e;this.fov=$a*2*Math.atan(t),this.updateProjectionMatrix()}getFocalLength(){let e=Math.tan(Dl*.5*this.fov);return .5*this.getFilmHeight()/e}getEffectiveFOV(){return $a*2*Math.atan(Math.tan(Dl*.5*this.fov)/this.zoom)}getFilmWidth(){return this.filmGauge*Math.min(this.aspect,1)}getFilmHeight(){return this.filmGauge/Math.max(this.aspect,1)}getViewBounds(e,t,n){Ri.set(-1,-1,.5).applyMatrix4(this.projectionMatrixInverse),t.set(Ri.x,Ri.y).multiplyScalar(-e/Ri.z),Ri.set(1,1,.5).applyMatrix4(this.projectionMatrixInverse),n.set(Ri.x,Ri.y).multiplyScalar(-e/Ri.z)}getViewSize(e,t){return this.getViewBounds(e,bu,Mu),t.subVectors(Mu,bu)}setViewOffset(e,t,n,s,r,a){this.aspect=e/t,this.view===null&&(this.view={enabled:!0,fullWidth:1,fullHeight:1,offsetX:0,offsetY:0,width:1,height:1}),this.view.enabled=!0,this.view.fullWidth=e,this.view.fullHeight=t,this.view.offsetX=n,this.view.offsetY=s,this.view.width=r,this.view.height=a,this.updateProjectionMatrix()}clearViewOffset(){this.view!==null&&(this.view.enabled=!1),this.updateProjectionMatrix()}updateProjectionMatrix(){let e=this.near,t=e*Math.tan(Dl*.5*this.fov)/this.zoom,n=2*t,s=this.aspect*n,r=-.5*s,a=this.view;if(this.view!==null&&this.view.enabled){let l=a.fullWidth,c=a.fullHeight;r+=a.offsetX*s/l,t-=a.offsetY*n/c,s*=a.width/l,n*=a.height/c}let o=this.filmOffset;o!==0&&(r+=e*o/this.getFilmWidth()),this.projectionMatrix.makePerspective(r,r+s,t,t-n,e,this.far,this.coordinateSystem,this.reversedDepth),this.projectionMatrixInverse.copy(this.projectionMatrix).invert()}toJSON(e){let t=super.toJSON(e);return t.object.fov=this.fov,t.object.zoom=this.zoom,t.object.near=this.near,t.object.far=this.far,t.object.focus=this.focus,t.object.aspect=this.aspect,this.view!==null&&(t.object.view=Object.assign({},this.view)),t.object.filmGauge=this.filmGauge,t.object.filmOffset=this.filmOffset,t}};var ki=class extends Ar{constructor(e=-1,t=1,n=1,s=-1,r=.1,a=2e3){super(),this.isOrthographicCamera=!0,this.type="OrthographicCamera",this.zoom=1,this.view=null,this.left=e,this.right=t,this.top=n,this.bottom=s,this.near=r,this.far=a,this.updateProjectionMatrix()}copy(e,t){return super.copy(e,t),this.left=e.left,this.right=e.right,this.top=e.top,this.bottom=e.bottom,this.near=e.near,this.far=e.far,this.zoom=e.zoom,this.view=e.view===null?null:Object.assign({},e.view),this}setViewOffset(e,t,n,s,r,a){this.view===null&&(this.view={enabled:!0,fullWidth:1,fullHeight:1,offsetX:0,offsetY:0,width:1,height:1}),this.view.enabled=!0,this.view.fullWidth=e,this.view.fullHeight=t,this.view.offsetX=n,this.view.offsetY=s,this.view.width=r,this.view.height=a,this.updateProjectionMatrix()}clearViewOffset(){this.view!==null&&(this.view.enabled=!1),this.updateProjectionMatrix()}updateProjectionMatrix(){let e=(this.right-this.left)/(2*this.zoom),t=(this.top-this.bottom)/(2*this.zoom),n=(this.right+this.left)/2,s=(this.top+this.bottom)/2,r=n-e,a=n+e,o=s+t,l=s-t;if(this.view!==null&&this.view.enabled){let c=(this.right-this.left)/this.view.fullWidth/this.zoom,h=(this.top-this.bottom)/this.view.fullHeight/this.zoom;r+=c*this.view.offsetX,a=r+c*this.view.width,o-=h*this.view.offsetY,l=o-h*this.view.height}this.projectionMatrix.makeOrthographic(r,a,o,l,this.near,this.far,this.coordinateSystem,this.reversedDepth),this.projectionMatrixInverse.copy(this.projectionMatrix).invert()}toJSON(e){let t=super.toJSON(e);return t.object.zoom=this.zoom,t.object.left=this.left,t.object.right=this.right,t.object.top=this.top,t.object.bottom=this.bottom,t.object.near=this.near,t.object.far=this.far,this.view!==null&&(t.object.view=Object.assign({},this.view)),t}};var Is=-90,Ls=1,Gs=class extends dn{constructor(e,t,n){super(),this.type="CubeCamera",this.renderTarget=n,this.coordinateSystem=null,this.activeMipmapLevel=0;let s=new hn(Is,Ls,e,t);s.layers=this.layers,this.add(s);let r=new hn(Is,Ls,e,t);r.layers=this.layers,this.add(r);let a=new hn(Is,Ls,e,t);a.layers=this.layers,this.add(a);let o=new hn(Is,Ls,e,t);o.layers=this.layers,this.add(o);let l=new hn(Is,Ls,e,t);l.layers=this.layers,this.add(l);let c=new hn(Is,Ls,e,t);c.layers=this.layers,this.add(c)}updateCoordinateSystem(){let e=this.coordinateSystem,t=this.children.concat(),[n,s,r,a,o,l]=t;for(let c of t)this.remove(c);if(e===bn)n.up.set(0,1,0),n.lookAt(1,0,0),s.up.set(0,1,0),s.lookAt(-1,0,0),r.up.set(0,0,-1),r.lookAt(0,1,0),a.up.set(0,0,1),a.lookAt(0,-1,0),o.up.set(0,1,0),o.lookAt(0,0,1),l.up.set(0,1,0),l.lookAt(0,0,-1);else if(e===_r)n.up.set(0,-1,0),n.lookAt(-1,0,0),s.up.set(0,-1,0),s.lookAt(1,0,0),r.up.set(0,0,1),r.lookAt(0,1,0),a.up.set(0,0,-1),a.lookAt(0,-1,0),o.up.set(0,-1,0),o.lookAt(0,0,1),l.up.set(0,-1,0),l.lookAt(0,0,-1);else throw new Error("THREE.CubeCamera.updateCoordinateSystem(): Invalid coordinate system: "+e);for(let c of t)this.add(c),c.updateMatrixWorld()}update(e,t){this.parent===null&&this.updateMatrixWorld();let{renderTarget:n,activeMipmapLevel:s}=this;this.coordinateSystem!==e.coordinateSystem&&(this.coordinateSystem=e.coordinateSystem,this.updateCoordinateSystem());let[r,a,o,l,c,h]=this.children,u=e.getRenderTarget(),d=e.getActiveCubeFace(),f=e.getActiveMipmapLevel(),p=e.xr.enabled;e.xr.enabled=!1;let v=n.texture.mipmapsAutoUpdate;n.texture.mipmapsAutoUpdate=!1;let m=!1;e.isWebGLRenderer===!0?m=e.state.buffers.depth.getReversed():m=e.reversedDepthBuffer,e.setRenderTarget(n,0,s),m&&e.autoClear===!1&&e.clearDepth(),e.render(t,r),e.setRenderTarget(n,1,s),m&&e.autoClear===!1&&e.clearDepth(),e.render(t,a),e.setRenderTarget(n,2,s),m&&e.autoClear===!1&&e.clearDepth(),e.render(t,o),e.setRenderTarget(n,3,s),m&&e.autoClear===!1&&e.clearDepth(),e.render(t,l),e.setRenderTarget(n,4,s),m&&e.autoClear===!1&&e.clearDepth(),e.render(t,c),n.texture.mipmapsAutoUpdate=v,e.setRenderTarget(n,5,s),m&&e.autoClear===!1&&e.clearDepth(),e.render(t,h),e.setRenderTarget(u,d,f),e.xr.enabled=p,n.texture.needsPMREMUpdate=!0}},po=class extends hn{constructor(e=[]){super(),this.isArrayCamera=!0,this.isMultiViewCamera=!1,this.cameras=e,this.perCameraFrustumCulled=!1}};var Bc="\\[\\]\\.:\\/",jp=new RegExp("["+Bc+"]","g"),zc="[^"+Bc+"]",Qp="[^"+Bc.replace("\\.","")+"]",em=/((?:WC+[\/:])*)/.source.replace("WC",zc),tm=/(WCOD+)?/.source.replace("WCOD",Qp),nm=/(?:\.(WC+)(?:\[(.+)\])?)?/.source.replace("WC",zc),im=/\.(WC+)(?:\[(.+)\])?/.source.replace("WC",zc),sm=new RegExp("^"+em+tm+nm+im+"$"),rm=["material","materials","bones","map"],ac=class{constructor(e,t,n){let s=n||ut.parseTrackName(t);this._targetGroup=e,this._bindings=e.subscribe_(t,s)}getValue(e,t){this.bind();let n=this._targetGroup.nCachedObjects_,s=this._bindings[n];s!==void 0&&s.getValue(e,t)}setValue(e,t){let n=this._bindings;for(let s=this._targetGroup.nCachedObjects_,r=n.length;s!==r;++s)n[s].setValue(e,t)}bind(){let e=this._bindings;for(let t=this._targetGroup.nCachedObjects_,n=e.length;t!==n;++t)e[t].bind()}unbind(){let e=this._bindings;for(let t=this._targetGroup.nCachedObjects_,n=e.length;t!==n;++t)e[t].unbind()}},ut=class i{constructor(e,t,n){this.path=t,this.parsedPath=n||i.parseTrackName(t),this.node=i.findNode(e,this.parsedPath.nodeName),this.rootNode=e,this.getValue=this._getValue_unbound,this.setValue=this._setValue_unbound}static create(e,t,n){return e&&e.isAnimationObjectGroup?new i.Composite(e,t,n):new i(e,t,n)}static sanitizeNodeName(e){return e.replace(/\s/g,"_").replace(jp,"")}static parseTrackName(e){let t=sm.exec(e);if(t===null)throw new Error("THREE.PropertyBinding: Cannot parse trackName: "+e);let n={nodeName:t[2],objectName:t[3],objectIndex:t[4],propertyName:t[5],propertyIndex:t[6]},s=n.nodeName&&n.nodeName.lastIndexOf(".");if(s!==void 0&&s!==-1){let r=n.nodeName.substring(s+1);rm.indexOf(r)!==-1&&(n.nodeName=n.nodeName.substring(0,s),n.objectName=r)}if(n.propertyName===null||n.propertyName.length===0)throw new Error("THREE.PropertyBinding: can not parse propertyName from trackName: "+e);return n}static findNode(e,t){if(t===void 0||t===""||t==="."||t===-1||t===e.name||t===e.uuid)return e;if(e.skeleton){let n=e.skeleton.getBoneByName(t);if(n!==void 0)return n}if(e.children){let n=function(r){for(let a=0;a<r.length;a++){let o=r[a];if(o.name===t||o.uuid===t)return o;let l=n(o.children);if(l)return l}return null},s=n(e.children);if(s)return s}return null}_getValue_unavailable(){}_setValue_unavailable(){}_getValue_direct(e,t){e[t]=this.targetObject[this.propertyName]}_getValue_array(e,t){let n=this.resolvedProperty;for(let s=0,r=n.length;s!==r;++s)e[t++]=n[s]}_getValue_arrayElement(e,t){e[t]=this.resolvedProperty[this.propertyIndex]}_getValue_toArray(e,t){this.resolvedProperty.toArray(e,t)}_setValue_direct(e,t){this.targetObject[this.propertyName]=e[t]}_setValue_direct_setNeedsUpdate(e,t){this.targetObject[this.propertyName]=e[t],this.targetObject.needsUpdate=!0}_setValue_direct_setMatrixWorldNeedsUpdate(e,t){this.targetObject[this.propertyName]=e[t],this.targetObject.matrixWorldNeedsUpdate=!0}_setValue_array(e,t){let n=this.resolvedProperty;for(let s=0,r=n.length;s!==r;++s)n[s]=e[t++]}_setValue_array_setNeedsUpdate(e,t){let n=this.resolvedProperty;for(let s=0,r=n.length;s!==r;++s)n[s]=e[t++];this.targetObject.needsUpdate=!0}_setValue_array_setMatrixWorldNeedsUpdate(e,t){let n=this.resolvedProperty;for(let s=0,r=n.length;s!==r;++s)n[s]=e[t++];this.targetObject.matrixWorldNeedsUpdate=!0}_setValue_arrayElement(e,t){this.resolvedProperty[this.propertyIndex]=e[t]}_setValue_arrayElement_setNeedsUpdate(e,t){this.resolvedProperty[this.propertyIndex]=e[t],this.targetObject.needsUpdate=!0}_setValue_arrayElement_setMatrixWorldNeedsUpdate(e,t){this.resolvedProperty[this.propertyIndex]=e[t],this.targetObject.matrixWorldNeedsUpdate=!0}_setValue_fromArray(e,t){this.resolvedProperty.fromArray(e,t)}_setValue_fromArray_setNeedsUpdate(e,t){this.resolvedProperty.fromArray(e,t),this.targetObject.needsUpdate=!0}_setValue_fromArray_setMatrixWorldNeedsUpdate(e,t){this.resolvedProperty.fromArray(e,t),this.targetObject.matrixWorldNeedsUpdate=!0}_getValue_unbound(e,t){this.bind(),this.getValue(e,t)}_setValue_unbound(e,t){this.bind(),this.setValue(e,t)}bind(){let e=this.node,t=this.parsedPath,n=t.objectName,s=t.propertyName,r=t.propertyIndex;if(e||(e=i.findNode(this.rootNode,t.nodeName),this.node=e),this.getValue=this._getValue_unavailable,this.setValue=this._setValue_unavailable,!e){Oe("PropertyBinding: No target node found for track: "+this.path+".");return}if(n){let c=t.objectIndex;switch(n){case"materials":if(!e.material){ze("PropertyBinding: Can not bind to material as node does not have a material.",this);return}if(!e.material.materials){ze("PropertyBinding: Can not bind to material.materials as node.material does not have a materials array.",this);return}e=e.material.materials;break;case"bones":if(!e.skeleton){ze("PropertyBinding: Can not bind to bones as node does not have a skeleton.",this);return}e=e.skeleton.bones;for(let h=0;h<e.length;h++)if(e[h].name===c){c=h;break}break;case"map":if("map"in e){e=e.map;break}if(!e.material){ze("PropertyBinding: Can not bind to material as node does not have a material.",this);return}if(!e.material.map){ze("PropertyBinding: Can not bind to material.map as node.material does not have a map.",this);return}e=e.material.map;break;default:if(e[n]===void 0){ze("PropertyBinding: Can not bind to objectName of node undefined.",this);return}e=e[n]}if(c!==void 0){if(e[c]===void 0){ze("PropertyBinding: Trying to bind to objectIndex of objectName, but is undefined.",this,e);return}e=e[c]}}let a=e[s];if(a===void 0){let c=t.nodeName;ze("PropertyBinding: Trying to update property for track: "+c+"."+s+" but it wasn't found.",e);return}let o=this.Versioning.None;this.targetObject=e,e.isMaterial===!0?o=this.Versioning.NeedsUpdate:e.isObject3D===!0&&(o=this.Versioning.MatrixWorldNeedsUpdate);let l=this.BindingType.Direct;if(r!==void 0){if(s==="morphTargetInfluences"){if(!e.geometry){ze("PropertyBinding: Can not bind to morphTargetInfluences because node does not have a geometry.",this);return}if(!e.geometry.morphAttributes){ze("PropertyBinding: Can not bind to morphTargetInfluences because node does not have a geometry.morphAttributes.",this);return}e.morphTargetDictionary[r]!==void 0&&(r=e.morphTargetDictionary[r])}l=this.BindingType.ArrayElement,this.resolvedProperty=a,this.propertyIndex=r}else a.fromArray!==void 0&&a.toArray!==void 0?(l=this.BindingType.HasFromToArray,this.resolvedProperty=a):Array.isArray(a)?(l=this.BindingType.EntireArray,this.resolvedProperty=a):this.propertyName=s;this.getValue=this.GetterByBindingType[l],this.setValue=this.SetterByBindingTypeAndVersioning[l][o]}unbind(){this.node=null,this.getValue=this._getValue_unbound,this.setValue=this._setValue_unbound}};ut.Composite=ac;ut.prototype.BindingType={Direct:0,EntireArray:1,ArrayElement:2,HasFromToArray:3};ut.prototype.Versioning={None:0,NeedsUpdate:1,MatrixWorldNeedsUpdate:2};ut.prototype.GetterByBindingType=[ut.prototype._getValue_direct,ut.prototype._getValue_array,ut.prototype._getValue_arrayElement,ut.prototype._getValue_toArray];ut.prototype.SetterByBindingTypeAndVersioning=[[ut.prototype._setValue_direct,ut.prototype._setValue_direct_setNeedsUpdate,ut.prototype._setValue_direct_setMatrixWorldNeedsUpdate],[ut.prototype._setValue_array,ut.prototype._setValue_array_setNeedsUpdate,ut.prototype._setValue_array_setMatrixWorldNeedsUpdate],[ut.prototype._setValue_arrayElement,ut.prototype._setValue_arrayElement_setNeedsUpdate,ut.prototype._setValue_arrayElement_setMatrixWorldNeedsUpdate],[ut.prototype._setValue_fromArray,ut.prototype._setValue_fromArray_setNeedsUpdate,ut.prototype._setValue_fromArray_setMatrixWorldNeedsUpdate]];var Ky=new Float32Array(1);var wu=new at,Cr=class{constructor(e,t,n=0,s=1/0){this.ray=new Bs(e,t),this.near=n,this.far=s,this.camera=null,this.layers=new Os,this.params={Mesh:{},Line:{threshold:1},LOD:{},Points:{threshold:1},Sprite:{}}}set(e,t){this.ray.set(e,t)}setFromCamera(e,t){t.isPerspectiveCamera?(this.ray.origin.setFromMatrixPosition(t.matrixWorld),this.ray.direction.set(e.x,e.y,.5).unproject(t).sub(this.ray.origin).normalize(),this.camera=t):t.isOrthographicCamera?(this.ray.origin.set(e.x,e.y,t.projectionMatrix.elements[14]).unproject(t),this.ray.direction.set(0,0,-1).transformDirection(t.matrixWorld),this.camera=t):ze("Raycaster: Unsupported camera type: "+t.type)}setFromXRController(e){return wu.identity().extractRotation(e.matrixWorld),this.ray.origin.setFromMatrixPosition(e.matrixWorld),this.ray.direction.set(0,0,-1).applyMatrix4(wu),this}intersectObject(e,t=!0,n=[]){return oc(e,this,n,t),n.sort(Su),n}intersectObjects(e,t=!0,n=[]){for(let s=0,r=e.length;s<r;s++)oc(e[s],this,n,t);return n.sort(Su),n}};function Su(i,e){return i.distance-e.distance}function oc(i,e,t,n){let s=!0;if(i.layers.test(e.layers)&&i.raycast(e,t)===!1&&(s=!1),s===!0&&n===!0){let r=i.children;for(let a=0,o=r.length;a<o;a++)oc(r[a],e,t,!0)}}var lc=class{static{this.prototype.isMatrix2=!0}constructor(e,t,n,s){this.elements=[1,0,0,1],e!==void 0&&this.set(e,t,n,s)}identity(){return this.set(1,0,0,1),this}fromArray(e,t=0){for(let n=0;n<4;n++)this.elements[n]=e[n+t];return this}set(e,t,n,s){let r=this.elements;return r[0]=e,r[2]=t,r[1]=n,r[3]=s,this}};function Vc(i,e,t,n){let s=am(n);switch(t){case Cc:return i*e;case Pc:return i*e/s.components*s.byteLength;case bo:return i*e/s.components*s.byteLength;case zi:return i*e*2/s.components*s.byteLength;case Mo:return i*e*2/s.components*s.byteLength;case Rc:return i*e*3/s.components*s.byteLength;case On:return i*e*4/s.components*s.byteLength;case wo:return i*e*4/s.components*s.byteLength;case Ir:case Lr:return Math.floor((i+3)/4)*Math.floor((e+3)/4)*8;case Nr:case Dr:return Math.floor((i+3)/4)*Math.floor((e+3)/4)*16;case To:case Ao:return Math.max(i,16)*Math.max(e,8)/4;case So:case Eo:return Math.max(i,8)*Math.max(e,8)/2;case Co:case Ro:case Io:case Lo:return Math.floor((i+3)/4)*Math.floor((e+3)/4)*8;case Po:case Ur:case No:return Math.floor((i+3)/4)*Math.floor((e+3)/4)*16;case Do:return Math.floor((i+3)/4)*Math.floor((e+3)/4)*16;case Uo:return Math.floor((i+4)/5)*Math.floor((e+3)/4)*16;case Fo:return Math.floor((i+4)/5)*Math.floor((e+4)/5)*16;case Oo:return Math.floor((i+5)/6)*Math.floor((e+4)/5)*16;case ko:return Math.floor((i+5)/6)*Math.floor((e+5)/6)*16;case Bo:return Math.floor((i+7)/8)*Math.floor((e+4)/5)*16;case zo:return Math.floor((i+7)/8)*Math.floor((e+5)/6)*16;case Vo:return Math.floor((i+7)/8)*Math.floor((e+7)/8)*16;case Go:return Math.floor((i+9)/10)*Math.floor((e+4)/5)*16;case Ho:return Math.floor((i+9)/10)*Math.floor((e+5)/6)*16;case Wo:return Math.floor((i+9)/10)*Math.floor((e+7)/8)*16;case $o:return Math.floor((i+9)/10)*Math.floor((e+9)/10)*16;case Xo:return Math.floor((i+11)/12)*Math.floor((e+9)/10)*16;case qo:return Math.floor((i+11)/12)*Math.floor((e+11)/12)*16;case Yo:case Zo:case Jo:return Math.ceil(i/4)*Math.ceil(e/4)*16;case Ko:case jo:return Math.ceil(i/4)*Math.ceil(e/4)*8;case Fr:case Qo:return Math.ceil(i/4)*Math.ceil(e/4)*16}throw new Error(`Unable to determine texture byte length for ${t} format.`)}function am(i){switch(i){case pn:case Sc:return{byteLength:1,components:1};case Xs:case Tc:case Fn:return{byteLength:2,components:1};case xo:case yo:return{byteLength:2,components:4};case Dn:case vo:case Un:return{byteLength:4,components:1};case Ec:case Ac:return{byteLength:4,components:3}}throw new Error(`THREE.TextureUtils: Unknown texture type ${i}.`)}typeof __THREE_DEVTOOLS__<"u"&&__THREE_DEVTOOLS__.dispatchEvent(new CustomEvent("register",{detail:{revision:"187"}}));typeof window<"u"&&(window.__THREE__?Oe("WARNING: Multiple instances of Three.js being imported."):window.__THREE__="187");/**
 * @license
 * Copyright 2010-2026 Three.js Authors
 * SPDX-License-Identifier: MIT
 */function Dd(){let i=null,e=!1,t=null,n=null;function s(r,a){n=i.requestAnimationFrame(s),t(r,a)}return{start:function(){e!==!0&&t!==null&&i!==null&&(n=i.requestAnimationFrame(s),e=!0)},stop:function(){i!==null&&i.cancelAnimationFrame(n),e=!1},setAnimationLoop:function(r){t=r},setContext:function(r){i=r}}}function lm(i){let e=new WeakMap;function t(o,l){let c=o.array,h=o.usage,u=c.byteLength,d=i.createBuffer();i.bindBuffer(l,d),i.bufferData(l,c,h),o.onUploadCallback();let f;if(c instanceof Float32Array)f=i.FLOAT;else if(typeof Float16Array<"u"&&c instanceof Float16Array)f=i.HALF_FLOAT;else if(c instanceof Uint16Array)o.isFloat16BufferAttribute?f=i.HALF_FLOAT:f=i.UNSIGNED_SHORT;else if(c instanceof Int16Array)f=i.SHORT;else if(c instanceof Uint32Array)f=i.UNSIGNED_INT;else if(c instanceof Int32Array)f=i.INT;else if(c instanceof Int8Array)f=i.BYTE;else if(c instanceof Uint8Array)f=i.UNSIGNED_BYTE;else if(c instanceof Uint8ClampedArray)f=i.UNSIGNED_BYTE;else throw new Error("THREE.WebGLAttributes: Unsupported buffer data format: "+c);return{buffer:d,type:f,bytesPerElement:c.BYTES_PER_ELEMENT,version:o.version,size:u}}function n(o,l,c){let h=l.array,u=l.updateRanges;if(i.bindBuffer(c,o),u.length===0)i.bufferSubData(c,0,h);else{u.sort((f,p)=>f.start-p.start);let d=0;for(let f=1;f<u.length;f++){let p=u[d],v=u[f];v.start<=p.start+p.count+1?p.count=Math.max(p.count,v.start+v.count-p.start):(++d,u[d]=v)}u.length=d+1;for(let f=0,p=u.length;f<p;f++){let v=u[f];i.bufferSubData(c,v.start*h.BYTES_PER_ELEMENT,h,v.start,v.count)}l.clearUpdateRanges()}l.onUploadCallback()}function s(o){return o.isInterleavedBufferAttribute&&(o=o.data),e.get(o)}function r(o){o.isInterleavedBufferAttribute&&(o=o.data);let l=e.get(o);l&&(i.deleteBuffer(l.buffer),e.delete(o))}function a(o,l){if(o.isInterleavedBufferAttribute&&(o=o.data),o.isGLBufferAttribute){let h=e.get(o);(!h||h.version<o.version)&&e.set(o,{buffer:o.buffer,type:o.type,bytesPerElement:o.elementSize,version:o.version});return}let c=e.get(o);if(c===void 0)e.set(o,t(o,l));else if(c.version<o.version){if(c.size!==o.array.byteLength)throw new Error("THREE.WebGLAttributes: The size of the buffer attribute's array buffer does not match the original size. Resizing buffer attributes is not supported.");n(c.buffer,o,l),c.version=o.version}}return{get:s,remove:r,update:a}}var cm=`#ifdef USE_ALPHAHASH
	if ( diffuseColor.a < getAlphaHashThreshold( vPosition ) ) discard;
#endif`,hm=`#ifdef USE_ALPHAHASH
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
#endif`,um=`#ifdef USE_ALPHAMAP
	diffuseColor.a *= texture2D( alphaMap, vAlphaMapUv ).g;
#endif`,dm=`#ifdef USE_ALPHAMAP
	uniform sampler2D alphaMap;
#endif`,fm=`#ifdef USE_ALPHATEST
	#ifdef ALPHA_TO_COVERAGE
	diffuseColor.a = smoothstep( alphaTest, alphaTest + fwidth( diffuseColor.a ), diffuseColor.a );
	if ( diffuseColor.a == 0.0 ) discard;
	#else
	if ( diffuseColor.a < alphaTest ) discard;
	#endif
#endif`,pm=`#ifdef USE_ALPHATEST
	uniform float alphaTest;
#endif`,mm=`#ifdef USE_AOMAP
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
#endif`,gm=`#ifdef USE_AOMAP
	uniform sampler2D aoMap;
	uniform float aoMapIntensity;
#endif`,_m=`#ifdef USE_BATCHING
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
#endif`,vm=`#ifdef USE_BATCHING
	mat4 batchingMatrix = getBatchingMatrix( getIndirectIndex( gl_DrawID ) );
#endif`,xm=`vec3 transformed = vec3( position );
#ifdef USE_ALPHAHASH
	vPosition = vec3( position );
#endif`,ym=`vec3 objectNormal = vec3( normal );
#ifdef USE_TANGENT
	vec3 objectTangent = vec3( tangent.xyz );
#endif`,bm=`float G_BlinnPhong_Implicit( ) {
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
} // validated`,Mm=`#ifdef USE_IRIDESCENCE
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
#endif`,wm=`#ifdef USE_BUMPMAP
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
#endif`,Sm=`#if NUM_CLIPPING_PLANES > 0
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
#endif`,Tm=`#if NUM_CLIPPING_PLANES > 0
	varying vec3 vClipPosition;
	uniform vec4 clippingPlanes[ NUM_CLIPPING_PLANES ];
#endif`,Em=`#if NUM_CLIPPING_PLANES > 0
	varying vec3 vClipPosition;
#endif`,Am=`#if NUM_CLIPPING_PLANES > 0
	vClipPosition = - mvPosition.xyz;
#endif`,Cm=`#if defined( USE_COLOR ) || defined( USE_COLOR_ALPHA )
	diffuseColor *= vColor;
#endif`,Rm=`#if defined( USE_COLOR ) || defined( USE_COLOR_ALPHA )
	varying vec4 vColor;
#endif`,Pm=`#if defined( USE_COLOR ) || defined( USE_COLOR_ALPHA ) || defined( USE_INSTANCING_COLOR ) || defined( USE_BATCHING_COLOR )
	varying vec4 vColor;
#endif`,Im=`#if defined( USE_COLOR ) || defined( USE_COLOR_ALPHA ) || defined( USE_INSTANCING_COLOR ) || defined( USE_BATCHING_COLOR )
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
#endif`,Lm=`#define PI 3.141592653589793
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
} // validated`,Nm=`vec3 transformedNormal = objectNormal;
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
#endif`,Dm=`#ifdef USE_DISPLACEMENTMAP
	uniform sampler2D displacementMap;
	uniform float displacementScale;
	uniform float displacementBias;
#endif`,Um=`#ifdef USE_DISPLACEMENTMAP
	transformed += normalize( objectNormal ) * ( texture2D( displacementMap, vDisplacementMapUv ).x * displacementScale + displacementBias );
#endif`,Fm=`#ifdef USE_EMISSIVEMAP
	vec4 emissiveColor = texture2D( emissiveMap, vEmissiveMapUv );
	#ifdef DECODE_VIDEO_TEXTURE_EMISSIVE
		emissiveColor = sRGBTransferEOTF( emissiveColor );
	#endif
	totalEmissiveRadiance *= emissiveColor.rgb;
#endif`,Om=`#ifdef USE_EMISSIVEMAP
	uniform sampler2D emissiveMap;
#endif`,km="gl_FragColor = linearToOutputTexel( gl_FragColor );",Bm=`vec4 LinearTransferOETF( in vec4 value ) {
	return value;
}
vec4 sRGBTransferEOTF( in vec4 value ) {
	return vec4( mix( pow( value.rgb * 0.9478672986 + vec3( 0.0521327014 ), vec3( 2.4 ) ), value.rgb * 0.0773993808, vec3( lessThanEqual( value.rgb, vec3( 0.04045 ) ) ) ), value.a );
}
vec4 sRGBTransferOETF( in vec4 value ) {
	return vec4( mix( pow( value.rgb, vec3( 0.41666 ) ) * 1.055 - vec3( 0.055 ), value.rgb * 12.92, vec3( lessThanEqual( value.rgb, vec3( 0.0031308 ) ) ) ), value.a );
}`,zm=`#ifdef USE_ENVMAP
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
#endif`,Vm=`#ifdef USE_ENVMAP
	uniform float envMapIntensity;
	uniform mat3 envMapRotation;
	uniform samplerCube envMap;
	#ifdef ENVMAP_TYPE_PMREM
		float roughnessToMip( const in float roughness ) {
			float r = clamp( roughness, 0.0, 1.0 );
			return ENVMAP_MAX_LOD * r * ( 2.0 - r );
		}
	#endif
#endif`,Gm=`#ifdef USE_ENVMAP
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
#endif`,Hm=`#ifdef USE_ENVMAP
	#if defined( USE_BUMPMAP ) || defined( USE_NORMALMAP ) || defined( PHONG ) || defined( LAMBERT )
		#define ENV_WORLDPOS
	#endif
	#ifdef ENV_WORLDPOS
		
		varying vec3 vWorldPosition;
	#else
		varying vec3 vReflect;
		uniform float refractionRatio;
	#endif
#endif`,Wm=`#ifdef USE_ENVMAP
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
#endif`,$m=`#ifdef USE_FOG
	vFogDepth = - mvPosition.z;
#endif`,Xm=`#ifdef USE_FOG
	varying float vFogDepth;
#endif`,qm=`#ifdef USE_FOG
	#ifdef FOG_EXP2
		float fogFactor = 1.0 - exp( - fogDensity * fogDensity * vFogDepth * vFogDepth );
	#else
		float fogFactor = smoothstep( fogNear, fogFar, vFogDepth );
	#endif
	gl_FragColor.rgb = mix( gl_FragColor.rgb, fogColor, fogFactor );
#endif`,Ym=`#ifdef USE_FOG
	uniform vec3 fogColor;
	varying float vFogDepth;
	#ifdef FOG_EXP2
		uniform float fogDensity;
	#else
		uniform float fogNear;
		uniform float fogFar;
	#endif
#endif`,Zm=`#ifdef USE_GRADIENTMAP
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
}`,Jm=`#ifdef USE_LIGHTMAP
	uniform sampler2D lightMap;
	uniform float lightMapIntensity;
#endif`,Km=`LambertMaterial material;
material.diffuseColor = diffuseColor.rgb;
material.specularStrength = specularStrength;`,jm=`varying vec3 vViewPosition;
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
#define RE_IndirectDiffuse		RE_IndirectDiffuse_Lambert`,Qm=`uniform bool receiveShadow;
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
#include <lightprobes_pars_fragment>`,eg=`#ifdef USE_ENVMAP
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
#endif`,tg=`ToonMaterial material;
material.diffuseColor = diffuseColor.rgb;`,ng=`varying vec3 vViewPosition;
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
#define RE_IndirectDiffuse		RE_IndirectDiffuse_Toon`,ig=`BlinnPhongMaterial material;
material.diffuseColor = diffuseColor.rgb;
material.specularColor = specular;
material.specularShininess = shininess;
material.specularStrength = specularStrength;`,sg=`varying vec3 vViewPosition;
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
#define RE_IndirectDiffuse		RE_IndirectDiffuse_BlinnPhong`,rg=`PhysicalMaterial material;
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
#endif`,ag=`uniform sampler2D dfgLUT;
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
}`,og=`
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
#endif`,lg=`#if defined( RE_IndirectDiffuse )
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
#endif`,cg=`#if defined( RE_IndirectDiffuse )
	#if defined( LAMBERT ) || defined( PHONG )
		irradiance += iblIrradiance;
	#endif
	RE_IndirectDiffuse( irradiance, geometryPosition, geometryNormal, geometryViewDir, geometryClearcoatNormal, material, reflectedLight );
#endif
#if defined( RE_IndirectSpecular )
	RE_IndirectSpecular( radiance, iblIrradiance, clearcoatRadiance, geometryPosition, geometryNormal, geometryViewDir, geometryClearcoatNormal, material, reflectedLight );
#endif`,hg=`#if NUM_LIGHT_PROBE_GRIDS > 0
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
#endif`,ug=`#if defined( USE_LOGARITHMIC_DEPTH_BUFFER )
	gl_FragDepth = vIsPerspective == 0.0 ? gl_FragCoord.z : log2( vFragDepth ) * logDepthBufFC * 0.5;
#endif`,dg=`#if defined( USE_LOGARITHMIC_DEPTH_BUFFER )
	uniform float logDepthBufFC;
	varying float vFragDepth;
	varying float vIsPerspective;
#endif`,fg=`#ifdef USE_LOGARITHMIC_DEPTH_BUFFER
	varying float vFragDepth;
	varying float vIsPerspective;
#endif`,pg=`#ifdef USE_LOGARITHMIC_DEPTH_BUFFER
	vFragDepth = 1.0 + gl_Position.w;
	vIsPerspective = float( isPerspectiveMatrix( projectionMatrix ) );
#endif`,mg=`#ifdef USE_MAP
	vec4 sampledDiffuseColor = texture2D( map, vMapUv );
	#ifdef DECODE_VIDEO_TEXTURE
		sampledDiffuseColor = sRGBTransferEOTF( sampledDiffuseColor );
	#endif
	diffuseColor *= sampledDiffuseColor;
#endif`,gg=`#ifdef USE_MAP
	uniform sampler2D map;
#endif`,_g=`#if defined( USE_MAP ) || defined( USE_ALPHAMAP )
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
#endif`,vg=`#if defined( USE_POINTS_UV )
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
#endif`,xg=`float metalnessFactor = metalness;
#ifdef USE_METALNESSMAP
	vec4 texelMetalness = texture2D( metalnessMap, vMetalnessMapUv );
	metalnessFactor *= texelMetalness.b;
#endif`,yg=`#ifdef USE_METALNESSMAP
	uniform sampler2D metalnessMap;
#endif`,bg=`#ifdef USE_INSTANCING_MORPH
	float morphTargetInfluences[ MORPHTARGETS_COUNT ];
	float morphTargetBaseInfluence = texelFetch( morphTexture, ivec2( 0, gl_InstanceID ), 0 ).r;
	for ( int i = 0; i < MORPHTARGETS_COUNT; i ++ ) {
		morphTargetInfluences[i] =  texelFetch( morphTexture, ivec2( i + 1, gl_InstanceID ), 0 ).r;
	}
#endif`,Mg=`#if defined( USE_MORPHCOLORS )
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
#endif`,wg=`#ifdef USE_MORPHNORMALS
	objectNormal *= morphTargetBaseInfluence;
	for ( int i = 0; i < MORPHTARGETS_COUNT; i ++ ) {
		if ( morphTargetInfluences[ i ] != 0.0 ) objectNormal += getMorph( gl_VertexID, i, 1 ).xyz * morphTargetInfluences[ i ];
	}
#endif`,Sg=`#ifdef USE_MORPHTARGETS
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
#endif`,Tg=`#ifdef USE_MORPHTARGETS
	transformed *= morphTargetBaseInfluence;
	for ( int i = 0; i < MORPHTARGETS_COUNT; i ++ ) {
		if ( morphTargetInfluences[ i ] != 0.0 ) transformed += getMorph( gl_VertexID, i, 0 ).xyz * morphTargetInfluences[ i ];
	}
#endif`,Eg=`float faceDirection = gl_FrontFacing ? 1.0 : - 1.0;
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
vec3 nonPerturbedNormal = normal;`,Ag=`#ifdef USE_NORMALMAP_OBJECTSPACE
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
#endif`,Cg=`#ifndef FLAT_SHADED
	varying vec3 vNormal;
	#ifdef USE_TANGENT
		varying vec3 vTangent;
		varying vec3 vBitangent;
	#endif
#endif`,Rg=`#ifndef FLAT_SHADED
	varying vec3 vNormal;
	#ifdef USE_TANGENT
		varying vec3 vTangent;
		varying vec3 vBitangent;
	#endif
#endif`,Pg=`#ifndef FLAT_SHADED
	vNormal = normalize( transformedNormal );
	#ifdef USE_TANGENT
		vTangent = normalize( transformedTangent );
		vBitangent = normalize( cross( vNormal, vTangent ) * tangent.w );
		#ifdef FLIP_SIDED
			vBitangent = - vBitangent;
		#endif
	#endif
#endif`,Ig=`#ifdef USE_NORMALMAP
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
#endif`,Lg=`#ifdef USE_CLEARCOAT
	vec3 clearcoatNormal = nonPerturbedNormal;
#endif`,Ng=`#ifdef USE_CLEARCOAT_NORMALMAP
	vec3 clearcoatMapN = texture2D( clearcoatNormalMap, vClearcoatNormalMapUv ).xyz * 2.0 - 1.0;
	clearcoatMapN.xy *= clearcoatNormalScale;
	clearcoatNormal = normalize( tbn2 * clearcoatMapN );
#endif`,Dg=`#ifdef USE_CLEARCOATMAP
	uniform sampler2D clearcoatMap;
#endif
#ifdef USE_CLEARCOAT_NORMALMAP
	uniform sampler2D clearcoatNormalMap;
	uniform vec2 clearcoatNormalScale;
#endif
#ifdef USE_CLEARCOAT_ROUGHNESSMAP
	uniform sampler2D clearcoatRoughnessMap;
#endif`,Ug=`#ifdef USE_IRIDESCENCEMAP
	uniform sampler2D iridescenceMap;
#endif
#ifdef USE_IRIDESCENCE_THICKNESSMAP
	uniform sampler2D iridescenceThicknessMap;
#endif`,Fg=`#ifdef OPAQUE
diffuseColor.a = 1.0;
#endif
#ifdef USE_TRANSMISSION
diffuseColor.a *= material.transmissionAlpha;
#endif
gl_FragColor = vec4( outgoingLight, diffuseColor.a );`,Og=`vec3 packNormalToRGB( const in vec3 normal ) {
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
}`,kg=`#ifdef PREMULTIPLIED_ALPHA
	gl_FragColor.rgb *= gl_FragColor.a;
#endif`,Bg=`vec4 mvPosition = vec4( transformed, 1.0 );
#ifdef USE_BATCHING
	mvPosition = batchingMatrix * mvPosition;
#endif
#ifdef USE_INSTANCING
	mvPosition = instanceMatrix * mvPosition;
#endif
mvPosition = modelViewMatrix * mvPosition;
gl_Position = projectionMatrix * mvPosition;`,zg=`#ifdef DITHERING
	gl_FragColor.rgb = dithering( gl_FragColor.rgb );
#endif`,Vg=`#ifdef DITHERING
	vec3 dithering( vec3 color ) {
		float grid_position = rand( gl_FragCoord.xy );
		vec3 dither_shift_RGB = vec3( 0.25 / 255.0, -0.25 / 255.0, 0.25 / 255.0 );
		dither_shift_RGB = mix( 2.0 * dither_shift_RGB, -2.0 * dither_shift_RGB, grid_position );
		return color + dither_shift_RGB;
	}
#endif`,Gg=`float roughnessFactor = roughness;
#ifdef USE_ROUGHNESSMAP
	vec4 texelRoughness = texture2D( roughnessMap, vRoughnessMapUv );
	roughnessFactor *= texelRoughness.g;
#endif`,Hg=`#ifdef USE_ROUGHNESSMAP
	uniform sampler2D roughnessMap;
#endif`,Wg=`#if NUM_SPOT_LIGHT_COORDS > 0
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
#endif`,$g=`#if NUM_SPOT_LIGHT_COORDS > 0
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
#endif`,Xg=`#if ( defined( USE_SHADOWMAP ) && ( NUM_DIR_LIGHT_SHADOWS > 0 || NUM_SUN_LIGHT_SHADOWS > 0 || NUM_POINT_LIGHT_SHADOWS > 0 ) ) || ( NUM_SPOT_LIGHT_COORDS > 0 )
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
#endif`,qg=`float getShadowMask() {
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
}`,Yg=`#ifdef USE_SKINNING
	mat4 boneMatX = getBoneMatrix( skinIndex.x );
	mat4 boneMatY = getBoneMatrix( skinIndex.y );
	mat4 boneMatZ = getBoneMatrix( skinIndex.z );
	mat4 boneMatW = getBoneMatrix( skinIndex.w );
#endif`,Zg=`#ifdef USE_SKINNING
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
#endif`,Jg=`#ifdef USE_SKINNING
	vec4 skinVertex = bindMatrix * vec4( transformed, 1.0 );
	vec4 skinned = vec4( 0.0 );
	skinned += boneMatX * skinVertex * skinWeight.x;
	skinned += boneMatY * skinVertex * skinWeight.y;
	skinned += boneMatZ * skinVertex * skinWeight.z;
	skinned += boneMatW * skinVertex * skinWeight.w;
	transformed = ( bindMatrixInverse * skinned ).xyz;
#endif`,Kg=`#ifdef USE_SKINNING
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
#endif`,jg=`float specularStrength;
#ifdef USE_SPECULARMAP
	vec4 texelSpecular = texture2D( specularMap, vSpecularMapUv );
	specularStrength = texelSpecular.r;
#else
	specularStrength = 1.0;
#endif`,Qg=`#ifdef USE_SPECULARMAP
	uniform sampler2D specularMap;
#endif`,e0=`#if defined( TONE_MAPPING )
	gl_FragColor.rgb = toneMapping( gl_FragColor.rgb );
#endif`,t0=`#ifndef saturate
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
vec3 CustomToneMapping( vec3 color ) { return color; }`,n0=`#ifdef USE_TRANSMISSION
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
#endif`,i0=`#ifdef USE_TRANSMISSION
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
#endif`,s0=`#if defined( USE_UV ) || defined( USE_ANISOTROPY )
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
#endif`,r0=`#if defined( USE_UV ) || defined( USE_ANISOTROPY )
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
#endif`,a0=`#if defined( USE_UV ) || defined( USE_ANISOTROPY )
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
#endif`,o0=`#if defined( USE_ENVMAP ) || defined( DISTANCE ) || defined ( USE_SHADOWMAP ) || defined ( USE_TRANSMISSION ) || NUM_SPOT_LIGHT_COORDS > 0
	vec4 worldPosition = vec4( transformed, 1.0 );
	#ifdef USE_BATCHING
		worldPosition = batchingMatrix * worldPosition;
	#endif
	#ifdef USE_INSTANCING
		worldPosition = instanceMatrix * worldPosition;
	#endif
	worldPosition = modelMatrix * worldPosition;
#endif`,l0=`varying vec2 vUv;
uniform mat3 uvTransform;
void main() {
	vUv = ( uvTransform * vec3( uv, 1 ) ).xy;
	gl_Position = vec4( position.xy, 1.0, 1.0 );
}`,c0=`uniform sampler2D t2D;
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
}`,h0=`varying vec3 vWorldDirection;
#include <common>
void main() {
	vWorldDirection = transformDirection( position, modelMatrix );
	#include <begin_vertex>
	#include <project_vertex>
	gl_Position.z = gl_Position.w;
}`,u0=`uniform float backgroundBlurriness;
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
}`,d0=`varying vec3 vWorldDirection;
#include <common>
void main() {
	vWorldDirection = transformDirection( position, modelMatrix );
	#include <begin_vertex>
	#include <project_vertex>
	gl_Position.z = gl_Position.w;
}`,f0=`uniform samplerCube tCube;
uniform float tFlip;
uniform float opacity;
varying vec3 vWorldDirection;
void main() {
	vec4 texColor = textureCube( tCube, vec3( tFlip * vWorldDirection.x, vWorldDirection.yz ) );
	gl_FragColor = texColor;
	gl_FragColor.a *= opacity;
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
}`,p0=`#include <common>
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
}`,m0=`#if DEPTH_PACKING == 3200
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
}`,g0=`#define DISTANCE
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
}`,_0=`#define DISTANCE
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
}`,v0=`varying vec3 vWorldDirection;
#include <common>
void main() {
	vWorldDirection = transformDirection( position, modelMatrix );
	#include <begin_vertex>
	#include <project_vertex>
}`,x0=`uniform sampler2D tEquirect;
varying vec3 vWorldDirection;
#include <common>
void main() {
	vec3 direction = normalize( vWorldDirection );
	vec2 sampleUV = equirectUv( direction );
	gl_FragColor = texture2D( tEquirect, sampleUV );
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
}`,y0=`uniform float scale;
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
}`,b0=`uniform vec3 diffuse;
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
}`,M0=`#include <common>
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
}`,w0=`uniform vec3 diffuse;
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
}`,S0=`#define LAMBERT
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
}`,T0=`#define LAMBERT
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
}`,E0=`#define MATCAP
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
}`,A0=`#define MATCAP
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
}`,C0=`#define NORMAL
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
}`,R0=`#define NORMAL
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
}`,P0=`#define PHONG
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
}`,I0=`#define PHONG
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
}`,L0=`#define STANDARD
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
}`,N0=`#define STANDARD
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
}`,D0=`#define TOON
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
}`,U0=`#define TOON
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
}`,F0=`uniform float size;
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
}`,O0=`uniform vec3 diffuse;
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
}`,k0=`#include <common>
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
}`,B0=`uniform vec3 color;
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
}`,z0=`uniform float rotation;
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
}`,V0=`uniform vec3 diffuse;
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
}`,qe={alphahash_fragment:cm,alphahash_pars_fragment:hm,alphamap_fragment:um,alphamap_pars_fragment:dm,alphatest_fragment:fm,alphatest_pars_fragment:pm,aomap_fragment:mm,aomap_pars_fragment:gm,batching_pars_vertex:_m,batching_vertex:vm,begin_vertex:xm,beginnormal_vertex:ym,bsdfs:bm,iridescence_fragment:Mm,bumpmap_pars_fragment:wm,clipping_planes_fragment:Sm,clipping_planes_pars_fragment:Tm,clipping_planes_pars_vertex:Em,clipping_planes_vertex:Am,color_fragment:Cm,color_pars_fragment:Rm,color_pars_vertex:Pm,color_vertex:Im,common:Lm,defaultnormal_vertex:Nm,displacementmap_pars_vertex:Dm,displacementmap_vertex:Um,emissivemap_fragment:Fm,emissivemap_pars_fragment:Om,colorspace_fragment:km,colorspace_pars_fragment:Bm,envmap_fragment:zm,envmap_common_pars_fragment:Vm,envmap_pars_fragment:Gm,envmap_pars_vertex:Hm,envmap_physical_pars_fragment:eg,envmap_vertex:Wm,fog_vertex:$m,fog_pars_vertex:Xm,fog_fragment:qm,fog_pars_fragment:Ym,gradientmap_pars_fragment:Zm,lightmap_pars_fragment:Jm,lights_lambert_fragment:Km,lights_lambert_pars_fragment:jm,lights_pars_begin:Qm,lights_toon_fragment:tg,lights_toon_pars_fragment:ng,lights_phong_fragment:ig,lights_phong_pars_fragment:sg,lights_physical_fragment:rg,lights_physical_pars_fragment:ag,lights_fragment_begin:og,lights_fragment_maps:lg,lights_fragment_end:cg,lightprobes_pars_fragment:hg,logdepthbuf_fragment:ug,logdepthbuf_pars_fragment:dg,logdepthbuf_pars_vertex:fg,logdepthbuf_vertex:pg,map_fragment:mg,map_pars_fragment:gg,map_particle_fragment:_g,map_particle_pars_fragment:vg,metalnessmap_fragment:xg,metalnessmap_pars_fragment:yg,morphinstance_vertex:bg,morphcolor_vertex:Mg,morphnormal_vertex:wg,morphtarget_pars_vertex:Sg,morphtarget_vertex:Tg,normal_fragment_begin:Eg,normal_fragment_maps:Ag,normal_pars_fragment:Cg,normal_pars_vertex:Rg,normal_vertex:Pg,normalmap_pars_fragment:Ig,clearcoat_normal_fragment_begin:Lg,clearcoat_normal_fragment_maps:Ng,clearcoat_pars_fragment:Dg,iridescence_pars_fragment:Ug,opaque_fragment:Fg,packing:Og,premultiplied_alpha_fragment:kg,project_vertex:Bg,dithering_fragment:zg,dithering_pars_fragment:Vg,roughnessmap_fragment:Gg,roughnessmap_pars_fragment:Hg,shadowmap_pars_fragment:Wg,shadowmap_pars_vertex:$g,shadowmap_vertex:Xg,shadowmask_pars_fragment:qg,skinbase_vertex:Yg,skinning_pars_vertex:Zg,skinning_vertex:Jg,skinnormal_vertex:Kg,specularmap_fragment:jg,specularmap_pars_fragment:Qg,tonemapping_fragment:e0,tonemapping_pars_fragment:t0,transmission_fragment:n0,transmission_pars_fragment:i0,uv_pars_fragment:s0,uv_pars_vertex:r0,uv_vertex:a0,worldpos_vertex:o0,background_vert:l0,background_frag:c0,backgroundCube_vert:h0,backgroundCube_frag:u0,cube_vert:d0,cube_frag:f0,depth_vert:p0,depth_frag:m0,distance_vert:g0,distance_frag:_0,equirect_vert:v0,equirect_frag:x0,linedashed_vert:y0,linedashed_frag:b0,meshbasic_vert:M0,meshbasic_frag:w0,meshlambert_vert:S0,meshlambert_frag:T0,meshmatcap_vert:E0,meshmatcap_frag:A0,meshnormal_vert:C0,meshnormal_frag:R0,meshphong_vert:P0,meshphong_frag:I0,meshphysical_vert:L0,meshphysical_frag:N0,meshtoon_vert:D0,meshtoon_frag:U0,points_vert:F0,points_frag:O0,shadow_vert:k0,shadow_frag:B0,sprite_vert:z0,sprite_frag:V0},ye={common:{diffuse:{value:new je(16777215)},opacity:{value:1},map:{value:null},mapTransform:{value:new Ve},alphaMap:{value:null},alphaMapTransform:{value:new Ve},alphaTest:{value:0}},specularmap:{specularMap:{value:null},specularMapTransform:{value:new Ve}},envmap:{envMap:{value:null},envMapRotation:{value:new Ve},reflectivity:{value:1},ior:{value:1.5},refractionRatio:{value:.98},dfgLUT:{value:null}},aomap:{aoMap:{value:null},aoMapIntensity:{value:1},aoMapTransform:{value:new Ve}},lightmap:{lightMap:{value:null},lightMapIntensity:{value:1},lightMapTransform:{value:new Ve}},bumpmap:{bumpMap:{value:null},bumpMapTransform:{value:new Ve},bumpScale:{value:1}},normalmap:{normalMap:{value:null},normalMapTransform:{value:new Ve},normalScale:{value:new et(1,1)}},displacementmap:{displacementMap:{value:null},displacementMapTransform:{value:new Ve},displacementScale:{value:1},displacementBias:{value:0}},emissivemap:{emissiveMap:{value:null},emissiveMapTransform:{value:new Ve}},metalnessmap:{metalnessMap:{value:null},metalnessMapTransform:{value:new Ve}},roughnessmap:{roughnessMap:{value:null},roughnessMapTransform:{value:new Ve}},gradientmap:{gradientMap:{value:null}},fog:{fogDensity:{value:25e-5},fogNear:{value:1},fogFar:{value:2e3},fogColor:{value:new je(16777215)}},lights:{ambientLightColor:{value:[]},lightProbe:{value:[]},sunLights:{value:[],properties:{direction:{},color:{}}},sunLightShadows:{value:[],properties:{shadowIntensity:1,shadowBias:{},shadowNormalBias:{},shadowRadius:{},shadowMapSize:{}}},sunShadowMatrix:{value:[]},sunShadowCascade:{value:[]},directionalLights:{value:[],properties:{direction:{},color:{}}},directionalLightShadows:{value:[],properties:{shadowIntensity:1,shadowBias:{},shadowNormalBias:{},shadowRadius:{},shadowMapSize:{}}},directionalShadowMatrix:{value:[]},spotLights:{value:[],properties:{color:{},position:{},direction:{},distance:{},coneCos:{},penumbraCos:{},decay:{}}},spotLightShadows:{value:[],properties:{shadowIntensity:1,shadowBias:{},shadowNormalBias:{},shadowRadius:{},shadowMapSize:{}}},spotLightMap:{value:[]},spotLightMatrix:{value:[]},pointLights:{value:[],properties:{color:{},position:{},decay:{},distance:{}}},pointLightShadows:{value:[],properties:{shadowIntensity:1,shadowBias:{},shadowNormalBias:{},shadowRadius:{},shadowMapSize:{},shadowCameraNear:{},shadowCameraFar:{}}},pointShadowMatrix:{value:[]},hemisphereLights:{value:[],properties:{direction:{},skyColor:{},groundColor:{}}},rectAreaLights:{value:[],properties:{color:{},position:{},width:{},height:{}}},ltc_1:{value:null},ltc_2:{value:null},probesSH:{value:[]},probesMin:{value:[]},probesMax:{value:[]},probesResolution:{value:[]}},points:{diffuse:{value:new je(16777215)},opacity:{value:1},size:{value:1},scale:{value:1},map:{value:null},alphaMap:{value:null},alphaMapTransform:{value:new Ve},alphaTest:{value:0},uvTransform:{value:new Ve}},sprite:{diffuse:{value:new je(16777215)},opacity:{value:1},center:{value:new et(.5,.5)},rotation:{value:0},map:{value:null},mapTransform:{value:new Ve},alphaMap:{value:null},alphaMapTransform:{value:new Ve},alphaTest:{value:0}}},qn={basic:{uniforms:Ht([ye.common,ye.specularmap,ye.envmap,ye.aomap,ye.lightmap,ye.fog]),vertexShader:qe.meshbasic_vert,fragmentShader:qe.meshbasic_frag},lambert:{uniforms:Ht([ye.common,ye.specularmap,ye.envmap,ye.aomap,ye.lightmap,ye.emissivemap,ye.bumpmap,ye.normalmap,ye.displacementmap,ye.fog,ye.lights,{emissive:{value:new je(0)},envMapIntensity:{value:1}}]),vertexShader:qe.meshlambert_vert,fragmentShader:qe.meshlambert_frag},phong:{uniforms:Ht([ye.common,ye.specularmap,ye.envmap,ye.aomap,ye.lightmap,ye.emissivemap,ye.bumpmap,ye.normalmap,ye.displacementmap,ye.fog,ye.lights,{emissive:{value:new je(0)},specular:{value:new je(1118481)},shininess:{value:30},envMapIntensity:{value:1}}]),vertexShader:qe.meshphong_vert,fragmentShader:qe.meshphong_frag},standard:{uniforms:Ht([ye.common,ye.envmap,ye.aomap,ye.lightmap,ye.emissivemap,ye.bumpmap,ye.normalmap,ye.displacementmap,ye.roughnessmap,ye.metalnessmap,ye.fog,ye.lights,{emissive:{value:new je(0)},roughness:{value:1},metalness:{value:0},envMapIntensity:{value:1}}]),vertexShader:qe.meshphysical_vert,fragmentShader:qe.meshphysical_frag},toon:{uniforms:Ht([ye.common,ye.aomap,ye.lightmap,ye.emissivemap,ye.bumpmap,ye.normalmap,ye.displacementmap,ye.gradientmap,ye.fog,ye.lights,{emissive:{value:new je(0)}}]),vertexShader:qe.meshtoon_vert,fragmentShader:qe.meshtoon_frag},matcap:{uniforms:Ht([ye.common,ye.bumpmap,ye.normalmap,ye.displacementmap,ye.fog,{matcap:{value:null}}]),vertexShader:qe.meshmatcap_vert,fragmentShader:qe.meshmatcap_frag},points:{uniforms:Ht([ye.points,ye.fog]),vertexShader:qe.points_vert,fragmentShader:qe.points_frag},dashed:{uniforms:Ht([ye.common,ye.fog,{scale:{value:1},dashSize:{value:1},totalSize:{value:2}}]),vertexShader:qe.linedashed_vert,fragmentShader:qe.linedashed_frag},depth:{uniforms:Ht([ye.common,ye.displacementmap]),vertexShader:qe.depth_vert,fragmentShader:qe.depth_frag},normal:{uniforms:Ht([ye.common,ye.bumpmap,ye.normalmap,ye.displacementmap,{opacity:{value:1}}]),vertexShader:qe.meshnormal_vert,fragmentShader:qe.meshnormal_frag},sprite:{uniforms:Ht([ye.sprite,ye.fog]),vertexShader:qe.sprite_vert,fragmentShader:qe.sprite_frag},background:{uniforms:{uvTransform:{value:new Ve},t2D:{value:null},backgroundIntensity:{value:1}},vertexShader:qe.background_vert,fragmentShader:qe.background_frag},backgroundCube:{uniforms:{envMap:{value:null},backgroundBlurriness:{value:0},backgroundIntensity:{value:1},backgroundRotation:{value:new Ve}},vertexShader:qe.backgroundCube_vert,fragmentShader:qe.backgroundCube_frag},cube:{uniforms:{tCube:{value:null},tFlip:{value:-1},opacity:{value:1}},vertexShader:qe.cube_vert,fragmentShader:qe.cube_frag},equirect:{uniforms:{tEquirect:{value:null}},vertexShader:qe.equirect_vert,fragmentShader:qe.equirect_frag},distance:{uniforms:Ht([ye.common,ye.displacementmap,{referencePosition:{value:new k},nearDistance:{value:1},farDistance:{value:1e3}}]),vertexShader:qe.distance_vert,fragmentShader:qe.distance_frag},shadow:{uniforms:Ht([ye.lights,ye.fog,{color:{value:new je(0)},opacity:{value:1}}]),vertexShader:qe.shadow_vert,fragmentShader:qe.shadow_frag}};qn.physical={uniforms:Ht([qn.standard.uniforms,{clearcoat:{value:0},clearcoatMap:{value:null},clearcoatMapTransform:{value:new Ve},clearcoatNormalMap:{value:null},clearcoatNormalMapTransform:{value:new Ve},clearcoatNormalScale:{value:new et(1,1)},clearcoatRoughness:{value:0},clearcoatRoughnessMap:{value:null},clearcoatRoughnessMapTransform:{value:new Ve},diffuseRoughness:{value:0},diffuseRoughnessMap:{value:null},diffuseRoughnessMapTransform:{value:new Ve},dispersion:{value:0},retroreflectivity:{value:0},iridescence:{value:0},iridescenceMap:{value:null},iridescenceMapTransform:{value:new Ve},iridescenceIOR:{value:1.3},iridescenceThicknessMinimum:{value:100},iridescenceThicknessMaximum:{value:400},iridescenceThicknessMap:{value:null},iridescenceThicknessMapTransform:{value:new Ve},sheen:{value:0},sheenColor:{value:new je(0)},sheenColorMap:{value:null},sheenColorMapTransform:{value:new Ve},sheenRoughness:{value:1},sheenRoughnessMap:{value:null},sheenRoughnessMapTransform:{value:new Ve},transmission:{value:0},transmissionMap:{value:null},transmissionMapTransform:{value:new Ve},transmissionSamplerSize:{value:new et},transmissionSamplerMap:{value:null},thickness:{value:0},thicknessMap:{value:null},thicknessMapTransform:{value:new Ve},attenuationDistance:{value:0},attenuationColor:{value:new je(0)},specularColor:{value:new je(1,1,1)},specularColorMap:{value:null},specularColorMapTransform:{value:new Ve},specularIntensity:{value:1},specularIntensityMap:{value:null},specularIntensityMapTransform:{value:new Ve},anisotropyVector:{value:new et},anisotropyMap:{value:null},anisotropyMapTransform:{value:new Ve}}]),vertexShader:qe.meshphysical_vert,fragmentShader:qe.meshphysical_frag};var el={r:0,b:0,g:0},G0=new at,Ud=new Ve;Ud.set(-1,0,0,0,1,0,0,0,1);function H0(i,e,t,n,s,r){let a=new je(0),o=s===!0?0:1,l,c,h=null,u=0,d=null;function f(M){let C=M.isScene===!0?M.background:null;if(C&&C.isTexture){let w=M.backgroundBlurriness>0;C=e.get(C,w)}return C}function p(M){let C=!1,w=f(M);w===null?m(a,o):w&&w.isColor&&(m(w,1),C=!0);let E=i.xr.getEnvironmentBlendMode();E==="additive"?t.buffers.color.setClear(0,0,0,1,r):E==="alpha-blend"&&t.buffers.color.setClear(0,0,0,0,r),(i.autoClear||C)&&(t.buffers.depth.setTest(!0),t.buffers.depth.setMask(!0),t.buffers.color.setMask(!0),i.clear(i.autoClearColor,i.autoClearDepth,i.autoClearStencil))}function v(M,C){let w=f(C);w&&w.isCubeTexture?(c===void 0&&(c=new vt(new Vs(1,1,1),new Hn({name:"BackgroundCubeMaterial",uniforms:cs(qn.backgroundCube.uniforms),vertexShader:qn.backgroundCube.vertexShader,fragmentShader:qn.backgroundCube.fragmentShader,side:Zt,depthTest:!1,depthWrite:!1,fog:!1,allowOverride:!1})),c.geometry.deleteAttribute("normal"),c.geometry.deleteAttribute("uv"),c.onBeforeRender=function(E,S,x){this.matrixWorld.copyPosition(x.matrixWorld)},Object.defineProperty(c.material,"envMap",{get:function(){return this.uniforms.envMap.value}}),n.update(c)),c.material.uniforms.envMap.value=w,c.material.uniforms.backgroundBlurriness.value=C.backgroundBlurriness,c.material.uniforms.backgroundIntensity.value=C.backgroundIntensity,c.material.uniforms.backgroundRotation.value.setFromMatrix4(G0.makeRotationFromEuler(C.backgroundRotation)).transpose(),w.isRenderTargetTexture===!1&&c.material.uniforms.backgroundRotation.value.premultiply(Ud),c.material.toneMapped=Ke.getTransfer(w.colorSpace)!==it,(h!==w||u!==w.version||d!==i.toneMapping)&&(c.material.needsUpdate=!0,h=w,u=w.version,d=i.toneMapping),c.layers.enableAll(),M.unshift(c,c.geometry,c.material,0,0,null)):w&&w.isTexture&&(l===void 0&&(l=new vt(new Tr(2,2),new Hn({name:"BackgroundMaterial",uniforms:cs(qn.background.uniforms),vertexShader:qn.background.vertexShader,fragmentShader:qn.background.fragmentShader,side:Bi,depthTest:!1,depthWrite:!1,fog:!1,allowOverride:!1})),l.geometry.deleteAttribute("normal"),Object.defineProperty(l.material,"map",{get:function(){return this.uniforms.t2D.value}}),n.update(l)),l.material.uniforms.t2D.value=w,l.material.uniforms.backgroundIntensity.value=C.backgroundIntensity,l.material.toneMapped=Ke.getTransfer(w.colorSpace)!==it,w.matrixAutoUpdate===!0&&w.updateMatrix(),l.material.uniforms.uvTransform.value.copy(w.matrix),(h!==w||u!==w.version||d!==i.toneMapping)&&(l.material.needsUpdate=!0,h=w,u=w.version,d=i.toneMapping),l.layers.enableAll(),M.unshift(l,l.geometry,l.material,0,0,null))}function m(M,C){M.getRGB(el,kc(i)),t.buffers.color.setClear(el.r,el.g,el.b,C,r)}function g(){c!==void 0&&(c.geometry.dispose(),c.material.dispose(),c=void 0),l!==void 0&&(l.geometry.dispose(),l.material.dispose(),l=void 0)}return{getClearColor:function(){return a},setClearColor:function(M,C=1){a.set(M),o=C,m(a,o)},getClearAlpha:function(){return o},setClearAlpha:function(M){o=M,m(a,o)},render:p,addToRenderList:v,dispose:g}}function W0(i,e){let t=i.getParameter(i.MAX_VERTEX_ATTRIBS),n={},s=d(null),r=s,a=!1;function o(N,V,q,I,X){let J=!1,$=u(N,I,q,V);r!==$&&(r=$,c(r.object)),J=f(N,I,q,X),J&&p(N,I,q,X),X!==null&&e.update(X,i.ELEMENT_ARRAY_BUFFER),(J||a)&&(a=!1,w(N,V,q,I),X!==null&&i.bindBuffer(i.ELEMENT_ARRAY_BUFFER,e.get(X).buffer))}function l(){return i.createVertexArray()}function c(N){return i.bindVertexArray(N)}function h(N){return i.deleteVertexArray(N)}function u(N,V,q,I){let X=I.wireframe===!0,J=n[V.id];J===void 0&&(J={},n[V.id]=J);let $=N.isInstancedMesh===!0?N.id:0,se=J[$];se===void 0&&(se={},J[$]=se);let L=se[q.id];L===void 0&&(L={},se[q.id]=L);let Y=L[X];return Y===void 0&&(Y=d(l()),L[X]=Y),Y}function d(N){let V=[],q=[],I=[];for(let X=0;X<t;X++)V[X]=0,q[X]=0,I[X]=0;return{geometry:null,program:null,wireframe:!1,newAttributes:V,enabledAttributes:q,attributeDivisors:I,object:N,attributes:{},index:null}}function f(N,V,q,I){let X=r.attributes,J=V.attributes,$=0,se=q.getAttributes();for(let L in se)if(se[L].location>=0){let ee=X[L],le=J[L];if(le===void 0&&(L==="instanceMatrix"&&N.instanceMatrix&&(le=N.instanceMatrix),L==="instanceColor"&&N.instanceColor&&(le=N.instanceColor)),ee===void 0||ee.attribute!==le||le&&ee.data!==le.data)return!0;$++}return r.attributesNum!==$||r.index!==I}function p(N,V,q,I){let X={},J=V.attributes,$=0,se=q.getAttributes();for(let L in se)if(se[L].location>=0){let ee=J[L];ee===void 0&&(L==="instanceMatrix"&&N.instanceMatrix&&(ee=N.instanceMatrix),L==="instanceColor"&&N.instanceColor&&(ee=N.instanceColor));let le={};le.attribute=ee,ee&&ee.data&&(le.data=ee.data),X[L]=le,$++}r.attributes=X,r.attributesNum=$,r.index=I}function v(){let N=r.newAttributes;for(let V=0,q=N.length;V<q;V++)N[V]=0}function m(N){g(N,0)}function g(N,V){let q=r.newAttributes,I=r.enabledAttributes,X=r.attributeDivisors;q[N]=1,I[N]===0&&(i.enableVertexAttribArray(N),I[N]=1),X[N]!==V&&(i.vertexAttribDivisor(N,V),X[N]=V)}function M(){let N=r.newAttributes,V=r.enabledAttributes;for(let q=0,I=V.length;q<I;q++)V[q]!==N[q]&&(i.disableVertexAttribArray(q),V[q]=0)}function C(N,V,q,I,X,J,$){$===!0?i.vertexAttribIPointer(N,V,q,X,J):i.vertexAttribPointer(N,V,q,I,X,J)}function w(N,V,q,I){v();let X=I.attributes,J=q.getAttributes(),$=V.defaultAttributeValues;for(let se in J){let L=J[se];if(L.location>=0){let Y=X[se];if(Y===void 0&&(se==="instanceMatrix"&&N.instanceMatrix&&(Y=N.instanceMatrix),se==="instanceColor"&&N.instanceColor&&(Y=N.instanceColor)),Y!==void 0){let ee=Y.normalized,le=Y.itemSize,Ee=e.get(Y);if(Ee===void 0)continue;let j=Ee.buffer,be=Ee.type,Ae=Ee.bytesPerElement,Ue=be===i.INT||be===i.UNSIGNED_INT||Y.gpuType===vo;if(Y.isInterleavedBufferAttribute){let Me=Y.data,We=Me.isInterleavedBuffer===!0?Me.stride:Me.itemSize,Mt=Y.offset;if(Me.isInstancedInterleavedBuffer||Me.isInstancedBufferAttribute){for(let ke=0;ke<L.locationSize;ke++)g(L.location+ke,Me.meshPerAttribute);N.isInstancedMesh!==!0&&I._maxInstanceCount===void 0&&(I._maxInstanceCount=Me.meshPerAttribute*Me.count)}else for(let ke=0;ke<L.locationSize;ke++)m(L.location+ke);i.bindBuffer(i.ARRAY_BUFFER,j);for(let ke=0;ke<L.locationSize;ke++)C(L.location+ke,le/L.locationSize,be,ee,We*Ae,(Mt+le/L.locationSize*ke)*Ae,Ue)}else{if(Y.isInstancedBufferAttribute){for(let Me=0;Me<L.locationSize;Me++)g(L.location+Me,Y.meshPerAttribute);N.isInstancedMesh!==!0&&I._maxInstanceCount===void 0&&(I._maxInstanceCount=Y.meshPerAttribute*Y.count)}else for(let Me=0;Me<L.locationSize;Me++)m(L.location+Me);i.bindBuffer(i.ARRAY_BUFFER,j);for(let Me=0;Me<L.locationSize;Me++)C(L.location+Me,le/L.locationSize,be,ee,le*Ae,le/L.locationSize*Me*Ae,Ue)}}else if($!==void 0){let ee=$[se];if(ee!==void 0)switch(ee.length){case 2:i.vertexAttrib2fv(L.location,ee);break;case 3:i.vertexAttrib3fv(L.location,ee);break;case 4:i.vertexAttrib4fv(L.location,ee);break;default:i.vertexAttrib1fv(L.location,ee)}}}}M()}function E(){B();for(let N in n){let V=n[N];for(let q in V){let I=V[q];for(let X in I){let J=I[X];for(let $ in J)h(J[$].object),delete J[$];delete I[X]}}delete n[N]}}function S(N){if(n[N.id]===void 0)return;let V=n[N.id];for(let q in V){let I=V[q];for(let X in I){let J=I[X];for(let $ in J)h(J[$].object),delete J[$];delete I[X]}}delete n[N.id]}function x(N){for(let V in n){let q=n[V];for(let I in q){let X=q[I];if(X[N.id]===void 0)continue;let J=X[N.id];for(let $ in J)h(J[$].object),delete J[$];delete X[N.id]}}}function T(N){for(let V in n){let q=n[V],I=N.isInstancedMesh===!0?N.id:0,X=q[I];if(X!==void 0){for(let J in X){let $=X[J];for(let se in $)h($[se].object),delete $[se];delete X[J]}delete q[I],Object.keys(q).length===0&&delete n[V]}}}function B(){U(),a=!0,r!==s&&(r=s,c(r.object))}function U(){s.geometry=null,s.program=null,s.wireframe=!1}return{setup:o,reset:B,resetDefaultState:U,dispose:E,releaseStatesOfGeometry:S,releaseStatesOfObject:T,releaseStatesOfProgram:x,initAttributes:v,enableAttribute:m,disableUnusedAttributes:M}}function $0(i,e,t){let n;function s(l){n=l}function r(l,c){i.drawArrays(n,l,c),t.update(c,n,1)}function a(l,c,h){h!==0&&(i.drawArraysInstanced(n,l,c,h),t.update(c,n,h))}function o(l,c,h){if(h===0)return;e.get("WEBGL_multi_draw").multiDrawArraysWEBGL(n,l,0,c,0,h);let d=0;for(let f=0;f<h;f++)d+=c[f];t.update(d,n,1)}this.setMode=s,this.render=r,this.renderInstances=a,this.renderMultiDraw=o}function X0(i,e,t,n){let s;function r(){if(s!==void 0)return s;if(e.has("EXT_texture_filter_anisotropic")===!0){let x=e.get("EXT_texture_filter_anisotropic");s=i.getParameter(x.MAX_TEXTURE_MAX_ANISOTROPY_EXT)}else s=0;return s}function a(x){return!(x!==On&&n.convert(x)!==i.getParameter(i.IMPLEMENTATION_COLOR_READ_FORMAT))}function o(x){let T=x===Fn&&(e.has("EXT_color_buffer_half_float")||e.has("EXT_color_buffer_float"));return!(x!==pn&&x!==Un&&!T&&n.convert(x)!==i.getParameter(i.IMPLEMENTATION_COLOR_READ_TYPE))}function l(x){if(x==="highp"){if(i.getShaderPrecisionFormat(i.VERTEX_SHADER,i.HIGH_FLOAT).precision>0&&i.getShaderPrecisionFormat(i.FRAGMENT_SHADER,i.HIGH_FLOAT).precision>0)return"highp";x="mediump"}return x==="mediump"&&i.getShaderPrecisionFormat(i.VERTEX_SHADER,i.MEDIUM_FLOAT).precision>0&&i.getShaderPrecisionFormat(i.FRAGMENT_SHADER,i.MEDIUM_FLOAT).precision>0?"mediump":"lowp"}let c=t.precision!==void 0?t.precision:"highp",h=l(c);h!==c&&(Oe("WebGLRenderer:",c,"not supported, using",h,"instead."),c=h);let u=t.reversedDepthBuffer===!0&&e.has("EXT_clip_control"),d=t.logarithmicDepthBuffer===!0&&u===!1;t.reversedDepthBuffer===!0&&u===!1&&Oe("WebGLRenderer: Unable to use reversed depth buffer due to missing EXT_clip_control extension. Fallback to default depth buffer."),t.logarithmicDepthBuffer===!0&&u===!0&&Oe("WebGLRenderer: Logarithmic depth buffer is ignored when reversed depth buffer is enabled.");let f=i.getParameter(i.MAX_TEXTURE_IMAGE_UNITS),p=i.getParameter(i.MAX_VERTEX_TEXTURE_IMAGE_UNITS),v=i.getParameter(i.MAX_TEXTURE_SIZE),m=i.getParameter(i.MAX_CUBE_MAP_TEXTURE_SIZE),g=i.getParameter(i.MAX_VERTEX_ATTRIBS),M=i.getParameter(i.MAX_VERTEX_UNIFORM_VECTORS),C=i.getParameter(i.MAX_VARYING_VECTORS),w=i.getParameter(i.MAX_FRAGMENT_UNIFORM_VECTORS),E=i.getParameter(i.MAX_SAMPLES),S=i.getParameter(i.SAMPLES);return{isWebGL2:!0,getMaxAnisotropy:r,getMaxPrecision:l,textureFormatReadable:a,textureTypeReadable:o,precision:c,logarithmicDepthBuffer:d,reversedDepthBuffer:u,maxTextures:f,maxVertexTextures:p,maxTextureSize:v,maxCubemapSize:m,maxAttributes:g,maxVertexUniforms:M,maxVaryings:C,maxFragmentUniforms:w,maxSamples:E,samples:S}}function q0(i){let e=this,t=null,n=0,s=!1,r=!1,a=new Ln,o=new Ve,l={value:null,needsUpdate:!1};this.uniform=l,this.numPlanes=0,this.numIntersection=0,this.init=function(u,d){let f=u.length!==0||d||n!==0||s;return s=d,n=u.length,f},this.beginShadows=function(){r=!0,h(null)},this.endShadows=function(){r=!1},this.setGlobalState=function(u,d){t=h(u,d,0)},this.setState=function(u,d,f){let p=u.clippingPlanes,v=u.clipIntersection,m=u.clipShadows,g=i.get(u);if(!s||p===null||p.length===0||r&&!m)r?h(null):c();else{let M=r?0:n,C=M*4,w=g.clippingState||null;l.value=w,w=h(p,d,C,f);for(let E=0;E!==C;++E)w[E]=t[E];g.clippingState=w,this.numIntersection=v?this.numPlanes:0,this.numPlanes+=M}};function c(){l.value!==t&&(l.value=t,l.needsUpdate=n>0),e.numPlanes=n,e.numIntersection=0}function h(u,d,f,p){let v=u!==null?u.length:0,m=null;if(v!==0){if(m=l.value,p!==!0||m===null){let g=f+v*4,M=d.matrixWorldInverse;o.getNormalMatrix(M),(m===null||m.length<g)&&(m=new Float32Array(g));for(let C=0,w=f;C!==v;++C,w+=4)a.copy(u[C]).applyMatrix4(M,o),a.normal.toArray(m,w),m[w+3]=a.constant}l.value=m,l.needsUpdate=!0}return e.numPlanes=v,e.numIntersection=0,m}}var zr=class extends un{constructor(e=1,t={}){super(e,e,t),this.isWebGLCubeRenderTarget=!0;let n={width:e,height:e,depth:1},s=[n,n,n,n,n,n];this.texture=new Mr(s),this._setTextureOptions(t),this.texture.isRenderTargetTexture=!0}fromEquirectangularTexture(e,t){this.texture.type=t.type,this.texture.colorSpace=t.colorSpace,this.texture.generateMipmaps=t.generateMipmaps,this.texture.minFilter=t.minFilter,this.texture.magFilter=t.magFilter;let n={uniforms:{tEquirect:{value:null}},vertexShader:`

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
			`},s=new Vs(5,5,5),r=new Hn({name:"CubemapFromEquirect",uniforms:cs(n.uniforms),vertexShader:n.vertexShader,fragmentShader:n.fragmentShader,side:Zt,blending:rs});r.uniforms.tEquirect.value=t;let a=new vt(s,r),o=t.minFilter;return t.minFilter===ui&&(t.minFilter=Yt),new Gs(1,10,this).update(e,a),t.minFilter=o,a.geometry.dispose(),a.material.dispose(),this}clear(e,t=!0,n=!0,s=!0){let r=e.getRenderTarget();for(let a=0;a<6;a++)e.setRenderTarget(this,a),e.clear(t,n,s);e.setRenderTarget(r)}},fd=256,Y0=3,Z0=20,Fd=256,Od=16,J0=3,K0=new k,j0=new je,nl=class i{constructor(e){this._renderer=e,this._cubeSize=0,this._sourceTarget=null,this._cubeCamera=new Gs(1,10,null),this._boxMesh=new vt(new Vs(5,5,5),null),this._cubemapMaterial=null,this._equirectMaterial=null,this._blurMaterial=null,this._ggxMaterial=null,this._integrationMaterial=null}fromScene(e,t=0,n=.1,s=100,r={}){let{size:a=256,position:o=K0}=r,l=this._renderer;this._setSize(a);let c=this._allocateTarget(),h=this._getSourceTarget(!0);t>0&&(h.texture.mipmapsAutoUpdate=!1);let u=l.autoClear,d=l.autoClearColor,f=l.autoClearDepth,p=l.autoClearStencil,v=e.background;l.autoClear=!0,l.autoClearColor=!0,l.autoClearDepth=!0,l.autoClearStencil=!0,v===null&&(e.background=l.getClearColor(j0));let m=new Gs(n,s,h);return m.position.copy(o),m.update(l,e),l.autoClear=u,l.autoClearColor=d,l.autoClearDepth=f,l.autoClearStencil=p,e.background=v,t>0&&(h.texture.mipmapsAutoUpdate=!0,this._blur(c,t)),this._applyPMREM(c),c}fromEquirectangular(e,t=null){return this._fromTexture(e,t)}fromCubemap(e,t=null){return this._fromTexture(e,t)}compileCubemapShader(){this._cubemapMaterial===null&&(this._cubemapMaterial=gd(),this._compileMaterial(this._cubemapMaterial))}compileEquirectangularShader(){this._equirectMaterial===null&&(this._equirectMaterial=md(),this._compileMaterial(this._equirectMaterial))}dispose(){this._sourceTarget!==null&&this._sourceTarget.dispose(),this._cubemapMaterial!==null&&this._cubemapMaterial.dispose(),this._equirectMaterial!==null&&this._equirectMaterial.dispose(),this._blurMaterial!==null&&this._blurMaterial.dispose(),this._ggxMaterial!==null&&this._ggxMaterial.dispose(),this._integrationMaterial!==null&&this._integrationMaterial.dispose(),this._boxMesh.geometry.dispose()}static lodToRoughness(e,t){return t>0?1-Math.sqrt(1-e/t):0}_setSize(e){this._cubeSize=Math.max(fd,ld(e))}_fromTexture(e,t){e.mapping===os||e.mapping===$s?this._setSize(e.image.length===0?fd:e.image[0].width||e.image[0].image.width):this._setSize(e.image.width/4);let n=t||this._allocateTarget();return this._textureToCubemap(e),this._applyPMREM(n),n}_allocateTarget(){let e=this._cubeSize,t=pd(e,!1,!1),n=Math.log2(e)-Y0;for(let s=0;s<=n;s++)t.texture.mipmaps.push({width:e>>s,height:e>>s});return t.texture.name="PMREM",t.texture.isPMREMTexture=!0,t}_getSourceTarget(e=!1){let t=this._cubeSize,n=this._sourceTarget;return(n===null||n.width!==t||e&&n.depthBuffer===!1)&&(n!==null&&n.dispose(),this._sourceTarget=pd(t,!0,e)),this._sourceTarget}_compileMaterial(e){this._boxMesh.material=e,this._renderer.compile(this._boxMesh,this._cubeCamera.children[0])}_renderCube(e,t,n){let s=this._boxMesh,r=this._cubeCamera;s.material=n,r.renderTarget=e,r.activeMipmapLevel=t;let a=e.width>>t;e.viewport.set(0,0,a,a),r.update(this._renderer,s),e.viewport.set(0,0,e.width,e.height)}_textureToCubemap(e){let t;e.mapping===os||e.mapping===$s?(this._cubemapMaterial===null&&(this._cubemapMaterial=gd()),t=this._cubemapMaterial,t.uniforms.flipEnvMap.value=e.isRenderTargetTexture===!1?-1:1):(this._equirectMaterial===null&&(this._equirectMaterial=md()),t=this._equirectMaterial),t.uniforms.envMap.value=e,this._renderCube(this._getSourceTarget(),0,t)}_applyPMREM(e){this._ggxMaterial===null&&(this._ggxMaterial=Q0(),this._integrationMaterial=e_());let t=this._cubeSize,n=e.texture.mipmaps.length-1,s=this._ggxMaterial.uniforms;s.envMap.value=this._sourceTarget.texture;let r=this._integrationMaterial.uniforms;r.envMap.value=this._sourceTarget.texture,r.sourceLod.value=Math.log2(t/Od);for(let a=0;a<=n;a++){let o=i.lodToRoughness(a,n);if(a>n-J0)r.roughness.value=o,this._renderCube(e,a,this._integrationMaterial);else{let l=o>0?Math.log2(t)+.5*Math.log2(6/(Fd*Math.pow(o,4)))+.5:0;s.roughness.value=o,s.lodBias.value=l,this._renderCube(e,a,this._ggxMaterial)}}}_blur(e,t){this._blurMaterial===null&&(this._blurMaterial=t_());let n=this._blurMaterial,s=n.uniforms,r=this._sourceTarget;s.sigma.value=Math.min(t,Math.PI)/Math.SQRT2,s.envMap.value=r.texture,this._renderCube(e,0,n),s.envMap.value=e.texture,this._renderCube(r,0,n)}};function pd(i,e,t){return new zr(i,{minFilter:ui,generateMipmaps:e,type:Fn,colorSpace:mr,depthBuffer:t})}function Vr(i,e,t){return new Hn({name:i,uniforms:e,vertexShader:qe.cube_vert,fragmentShader:t,side:Zt,blending:rs,depthTest:!1,depthWrite:!1})}function Q0(){return Vr("PMREMGGXConvolution",{envMap:{value:null},roughness:{value:0},lodBias:{value:0}},`

		#define GGX_SAMPLES ${Fd}u

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
	`)}function e_(){return Vr("PMREMGGXIntegration",{envMap:{value:null},roughness:{value:0},sourceLod:{value:0},sourceSize:{value:Od}},`

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
	`)}function t_(){return Vr("PMREMSphericalGaussianBlur",{envMap:{value:null},sigma:{value:0}},`

		#define SAMPLES ${Z0}
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
	`)}function md(){return Vr("PMREMEquirectangularToCubemap",{envMap:{value:null}},`

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
	`)}function gd(){return Vr("PMREMCubemapToCubemap",{envMap:{value:null},flipEnvMap:{value:-1}},`

		varying vec3 vWorldDirection;

		uniform samplerCube envMap;
		uniform float flipEnvMap;

		void main() {

			gl_FragColor = vec4( textureCube( envMap, vec3( flipEnvMap * vWorldDirection.x, vWorldDirection.yz ) ).rgb, 1.0 );

		}
	`)}function n_(i){let e=new WeakMap,t=new WeakMap,n=null;function s(d,f=!1){return d==null?null:f?a(d):r(d)}function r(d){if(d&&d.isTexture){let f=d.mapping;if(f===mo||f===go)if(e.has(d)){let p=e.get(d).texture;return o(p,d.mapping)}else{let p=d.image;if(p&&p.height>0){let v=new zr(p.height);return v.fromEquirectangularTexture(i,d),e.set(d,v),d.addEventListener("dispose",c),o(v.texture,d.mapping)}else return null}}return d}function a(d){if(d&&d.isTexture&&d.isPMREMTexture!==!0){let f=d.mapping,p=f===mo||f===go,v=f===os||f===$s;if(p||v){let m=t.get(d),g=m!==void 0?m.texture.pmremVersion:0;if(d.isRenderTargetTexture&&d.pmremVersion!==g)return n===null&&(n=new nl(i)),m=p?n.fromEquirectangular(d,m):n.fromCubemap(d,m),m.texture.pmremVersion=d.pmremVersion,t.set(d,m),m.texture;if(m!==void 0)return m.texture;{let M=d.image;return p&&M&&M.height>0||v&&M&&l(M)?(n===null&&(n=new nl(i)),m=p?n.fromEquirectangular(d):n.fromCubemap(d),m.texture.pmremVersion=d.pmremVersion,t.set(d,m),d.addEventListener("dispose",h),m.texture):null}}}return d}function o(d,f){return f===mo?d.mapping=os:f===go&&(d.mapping=$s),d}function l(d){let f=0,p=6;for(let v=0;v<p;v++)d[v]!==void 0&&f++;return f===p}function c(d){let f=d.target;f.removeEventListener("dispose",c);let p=e.get(f);p!==void 0&&(e.delete(f),p.dispose())}function h(d){let f=d.target;f.removeEventListener("dispose",h);let p=t.get(f);p!==void 0&&(t.delete(f),p.dispose())}function u(){e=new WeakMap,t=new WeakMap,n!==null&&(n.dispose(),n=null)}return{get:s,dispose:u}}function i_(i){let e={};function t(n){if(e[n]!==void 0)return e[n];let s=i.getExtension(n);return e[n]=s,s}return{has:function(n){return t(n)!==null},init:function(){t("EXT_color_buffer_float"),t("WEBGL_clip_cull_distance"),t("OES_texture_float_linear"),t("EXT_color_buffer_half_float"),t("WEBGL_multisampled_render_to_texture"),t("WEBGL_render_shared_exponent")},get:function(n){let s=t(n);return s===null&&fr("WebGLRenderer: "+n+" extension not supported."),s}}}function s_(i,e,t,n){let s={},r=new WeakMap,a=new FinalizationRegistry(p=>delete s[p]);function o(p){l(p.target)}function l(p){p.index!==null&&e.remove(p.index);for(let m in p.attributes)e.remove(p.attributes[m]);p.removeEventListener("dispose",o),delete s[p.id],a.unregister(p);let v=r.get(p);v&&(e.remove(v),r.delete(p)),n.releaseStatesOfGeometry(p),p.isInstancedBufferGeometry===!0&&delete p._maxInstanceCount,t.memory.geometries--}function c(p,v){return s[v.id]!==void 0||(v.addEventListener("dispose",o),s[v.id]=new WeakRef(v),a.register(v,v.id,v),t.memory.geometries++),v}function h(p){let v=p.attributes;for(let m in v)e.update(v[m],i.ARRAY_BUFFER)}function u(p){let v=p.index,m=p.attributes.position,g=0;if(m===void 0)return;let M=v!==null?v.array.length:m.array.length/3-1,C=m.count>=65535?br:yr,w=new C(Math.ceil(M/3)*6,1),E=w.array;if(v!==null){let x=v.array;g=v.version;for(let T=0,B=0;T<M;T+=3){let U=x[T+0],N=x[T+1],V=x[T+2];E[B++]=U,E[B++]=N,E[B++]=N,E[B++]=V,E[B++]=V,E[B++]=U}}else{g=m.version;for(let x=0,T=0;x<M;x+=3){let B=x+0,U=x+1,N=x+2;E[T++]=B,E[T++]=U,E[T++]=U,E[T++]=N,E[T++]=N,E[T++]=B}}w.version=g;let S=r.get(p);S&&e.remove(S),r.set(p,w)}function d(p){let v=r.get(p);if(v){let m=p.index;m!==null&&v.version<m.version&&u(p)}else u(p);return r.get(p)}function f(){for(let p in s){let v=s[p].deref();v!==void 0&&l(v)}}return{get:c,update:h,getWireframeAttribute:d,dispose:f}}function r_(i,e,t){let n;function s(u){n=u}let r,a;function o(u){r=u.type,a=u.bytesPerElement}function l(u,d){i.drawElements(n,d,r,u*a),t.update(d,n,1)}function c(u,d,f){f!==0&&(i.drawElementsInstanced(n,d,r,u*a,f),t.update(d,n,f))}function h(u,d,f){if(f===0)return;e.get("WEBGL_multi_draw").multiDrawElementsWEBGL(n,d,0,r,u,0,f);let v=0;for(let m=0;m<f;m++)v+=d[m];t.update(v,n,1)}this.setMode=s,this.setIndex=o,this.render=l,this.renderInstances=c,this.renderMultiDraw=h}function a_(i){let e={geometries:0,textures:0},t={frame:0,calls:0,triangles:0,points:0,lines:0};function n(r,a,o){switch(t.calls++,a){case i.TRIANGLES:t.triangles+=o*(r/3);break;case i.LINES:t.lines+=o*(r/2);break;case i.LINE_STRIP:t.lines+=o*(r-1);break;case i.LINE_LOOP:t.lines+=o*r;break;case i.POINTS:t.points+=o*r;break;default:ze("WebGLInfo: Unknown draw mode:",a);break}}function s(){t.calls=0,t.triangles=0,t.points=0,t.lines=0}return{memory:e,render:t,programs:null,autoReset:!0,reset:s,update:n}}function o_(i,e,t){let n=new WeakMap,s=new _t;function r(a,o,l){let c=a.morphTargetInfluences,h=o.morphAttributes.position||o.morphAttributes.normal||o.morphAttributes.color,u=h!==void 0?h.length:0,d=n.get(o);if(d===void 0||d.count!==u){let B=function(){x.dispose(),n.delete(o),o.removeEventListener("dispose",B)};d!==void 0&&d.texture.dispose();let f=o.morphAttributes.position!==void 0,p=o.morphAttributes.normal!==void 0,v=o.morphAttributes.color!==void 0,m=o.morphAttributes.position||[],g=o.morphAttributes.normal||[],M=o.morphAttributes.color||[],C=0;f===!0&&(C=1),p===!0&&(C=2),v===!0&&(C=3);let w=o.attributes.position.count*C,E=1;w>e.maxTextureSize&&(E=Math.ceil(w/e.maxTextureSize),w=e.maxTextureSize);let S=new Float32Array(w*E*4*u),x=new xr(S,w,E,u);x.type=Un,x.needsUpdate=!0;let T=C*4;for(let U=0;U<u;U++){let N=m[U],V=g[U],q=M[U],I=w*E*4*U;for(let X=0;X<N.count;X++){let J=X*T;f===!0&&(s.fromBufferAttribute(N,X),S[I+J+0]=s.x,S[I+J+1]=s.y,S[I+J+2]=s.z,S[I+J+3]=0),p===!0&&(s.fromBufferAttribute(V,X),S[I+J+4]=s.x,S[I+J+5]=s.y,S[I+J+6]=s.z,S[I+J+7]=0),v===!0&&(s.fromBufferAttribute(q,X),S[I+J+8]=s.x,S[I+J+9]=s.y,S[I+J+10]=s.z,S[I+J+11]=q.itemSize===4?s.w:1)}}d={count:u,texture:x,size:new et(w,E)},n.set(o,d),o.addEventListener("dispose",B)}if(a.isInstancedMesh===!0&&a.morphTexture!==null)l.getUniforms().setValue(i,"morphTexture",a.morphTexture,t);else{let f=0;for(let v=0;v<c.length;v++)f+=c[v];let p=o.morphTargetsRelative?1:1-f;l.getUniforms().setValue(i,"morphTargetBaseInfluence",p),l.getUniforms().setValue(i,"morphTargetInfluences",c)}l.getUniforms().setValue(i,"morphTargetsTexture",d.texture,t),l.getUniforms().setValue(i,"morphTargetsTextureSize",d.size)}return{update:r}}function l_(i,e,t,n,s){let r=new WeakMap;function a(c){let h=s.render.frame,u=c.geometry,d=e.get(c,u);if(r.get(d)!==h&&(e.update(d),r.set(d,h)),c.isInstancedMesh&&(c.hasEventListener("dispose",l)===!1&&c.addEventListener("dispose",l),r.get(c)!==h&&(t.update(c.instanceMatrix,i.ARRAY_BUFFER),c.instanceColor!==null&&t.update(c.instanceColor,i.ARRAY_BUFFER),r.set(c,h))),c.isSkinnedMesh){let f=c.skeleton;r.get(f)!==h&&(f.update(),r.set(f,h))}return d}function o(){r=new WeakMap}function l(c){let h=c.target;h.removeEventListener("dispose",l),n.releaseStatesOfObject(h),t.remove(h.instanceMatrix),h.instanceColor!==null&&t.remove(h.instanceColor)}return{update:a,dispose:o}}var c_={[gc]:"LINEAR_TONE_MAPPING",[_c]:"REINHARD_TONE_MAPPING",[vc]:"CINEON_TONE_MAPPING",[xc]:"ACES_FILMIC_TONE_MAPPING",[bc]:"AGX_TONE_MAPPING",[Mc]:"NEUTRAL_TONE_MAPPING",[yc]:"CUSTOM_TONE_MAPPING"};function h_(i,e,t,n,s,r){let a=new un(e,t,{type:i,depthBuffer:s,stencilBuffer:r,samples:n?4:0,storeMultisampledDepthBuffer:!1,storeMultisampledStencilBuffer:!1,resolveDepthBuffer:!1,resolveStencilBuffer:!1}),o=null,l=null,c=null,h=new Nn;h.setAttribute("position",new jt([-1,3,0,-1,-1,0,3,-1,0],3)),h.setAttribute("uv",new jt([0,2,0,0,2,0],2));let u=new eo({uniforms:{tDiffuse:{value:null}},vertexShader:`
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
			}`,depthTest:!1,depthWrite:!1}),d=new vt(h,u),f=new ki(-1,1,1,-1,0,1),p=null,v=null,m=!1,g,M=null,C=[],w=!1;this.setSize=function(E,S){a.setSize(E,S),o!==null&&o.setSize(E,S),l!==null&&l.setSize(E,S);for(let x=0;x<C.length;x++){let T=C[x];T.setSize&&T.setSize(E,S)}},this.setEffects=function(E){C=E,w=C.length>0&&C[0].isRenderPass===!0;let S=a.width,x=a.height;C.length>0&&o===null&&(o=new un(S,x,{type:Fn,depthBuffer:!1,stencilBuffer:!1}),l=new un(S,x,{type:Fn,depthBuffer:!1,stencilBuffer:!1}));let T=s===!0&&C.some(B=>B.needsDepthTexture===!0);T!==(a.depthTexture!==null)&&(T===!0&&c===null&&(c=new hi(S,x),r===!0&&(c.format=di,c.type=ls)),a.dispose(),a.depthTexture=T?c:null,a.resolveDepthBuffer=T,a.storeMultisampledDepthBuffer=T);for(let B=0;B<C.length;B++){let U=C[B];U.setSize&&U.setSize(S,x),T&&U.needsDepthTexture===!0&&U.setDepthTexture&&U.setDepthTexture(c)}},this.begin=function(E,S){if(m||E.toneMapping===$n&&C.length===0)return!1;if(M=S,S!==null){let x=S.width,T=S.height;(a.width!==x||a.height!==T)&&this.setSize(x,T)}return w===!1&&E.setRenderTarget(a),g=E.toneMapping,E.toneMapping=$n,!0},this.hasRenderPass=function(){return w},this.end=function(E,S){E.toneMapping=g,m=!0;let x=a,T=o;for(let B=0;B<C.length;B++){let U=C[B];U.enabled!==!1&&(U.render(E,T,x,S),U.needsSwap!==!1&&(x=T,T=T===o?l:o))}if(p!==E.outputColorSpace||v!==E.toneMapping){p=E.outputColorSpace,v=E.toneMapping,u.defines={},Ke.getTransfer(p)===it&&(u.defines.SRGB_TRANSFER="");let B=c_[v];B&&(u.defines[B]=""),u.needsUpdate=!0}u.uniforms.tDiffuse.value=x.texture,E.setRenderTarget(M),E.render(d,f),M=null,m=!1},this.isCompositing=function(){return m},this.dispose=function(){a.dispose(),o!==null&&o.dispose(),l!==null&&l.dispose(),h.dispose(),u.dispose()}}var kd=new Qt,Bd=new hi(1,1),zd=new wr(1),Vd=new xr,Gd=new Ya,Hd=new Mr,_d=[],vd=[],xd=new Float32Array(16),yd=new Float32Array(9),bd=new Float32Array(4);function Zs(i,e,t){let n=i[0];if(n<=0||n>0)return i;let s=e*t,r=_d[s];if(r===void 0&&(r=new Float32Array(s),_d[s]=r),e!==0){n.toArray(r,0);for(let a=1,o=0;a!==e;++a)o+=t,i[a].toArray(r,o)}return r}function Ct(i,e){if(i.length!==e.length)return!1;for(let t=0,n=i.length;t<n;t++)if(i[t]!==e[t])return!1;return!0}function Rt(i,e){for(let t=0,n=e.length;t<n;t++)i[t]=e[t]}function il(i,e){let t=vd[e];t===void 0&&(t=new Int32Array(e),vd[e]=t);for(let n=0;n!==e;++n)t[n]=i.allocateTextureUnit();return t}function u_(i,e){let t=this.cache;t[0]!==e&&(i.uniform1f(this.addr,e),t[0]=e)}function d_(i,e){let t=this.cache;if(e.x!==void 0)(t[0]!==e.x||t[1]!==e.y)&&(i.uniform2f(this.addr,e.x,e.y),t[0]=e.x,t[1]=e.y);else{if(Ct(t,e))return;i.uniform2fv(this.addr,e),Rt(t,e)}}function f_(i,e){let t=this.cache;if(e.x!==void 0)(t[0]!==e.x||t[1]!==e.y||t[2]!==e.z)&&(i.uniform3f(this.addr,e.x,e.y,e.z),t[0]=e.x,t[1]=e.y,t[2]=e.z);else if(e.r!==void 0)(t[0]!==e.r||t[1]!==e.g||t[2]!==e.b)&&(i.uniform3f(this.addr,e.r,e.g,e.b),t[0]=e.r,t[1]=e.g,t[2]=e.b);else{if(Ct(t,e))return;i.uniform3fv(this.addr,e),Rt(t,e)}}function p_(i,e){let t=this.cache;if(e.x!==void 0)(t[0]!==e.x||t[1]!==e.y||t[2]!==e.z||t[3]!==e.w)&&(i.uniform4f(this.addr,e.x,e.y,e.z,e.w),t[0]=e.x,t[1]=e.y,t[2]=e.z,t[3]=e.w);else{if(Ct(t,e))return;i.uniform4fv(this.addr,e),Rt(t,e)}}function m_(i,e){let t=this.cache,n=e.elements;if(n===void 0){if(Ct(t,e))return;i.uniformMatrix2fv(this.addr,!1,e),Rt(t,e)}else{if(Ct(t,n))return;bd.set(n),i.uniformMatrix2fv(this.addr,!1,bd),Rt(t,n)}}function g_(i,e){let t=this.cache,n=e.elements;if(n===void 0){if(Ct(t,e))return;i.uniformMatrix3fv(this.addr,!1,e),Rt(t,e)}else{if(Ct(t,n))return;yd.set(n),i.uniformMatrix3fv(this.addr,!1,yd),Rt(t,n)}}function __(i,e){let t=this.cache,n=e.elements;if(n===void 0){if(Ct(t,e))return;i.uniformMatrix4fv(this.addr,!1,e),Rt(t,e)}else{if(Ct(t,n))return;xd.set(n),i.uniformMatrix4fv(this.addr,!1,xd),Rt(t,n)}}function v_(i,e){let t=this.cache;t[0]!==e&&(i.uniform1i(this.addr,e),t[0]=e)}function x_(i,e){let t=this.cache;if(e.x!==void 0)(t[0]!==e.x||t[1]!==e.y)&&(i.uniform2i(this.addr,e.x,e.y),t[0]=e.x,t[1]=e.y);else{if(Ct(t,e))return;i.uniform2iv(this.addr,e),Rt(t,e)}}function y_(i,e){let t=this.cache;if(e.x!==void 0)(t[0]!==e.x||t[1]!==e.y||t[2]!==e.z)&&(i.uniform3i(this.addr,e.x,e.y,e.z),t[0]=e.x,t[1]=e.y,t[2]=e.z);else{if(Ct(t,e))return;i.uniform3iv(this.addr,e),Rt(t,e)}}function b_(i,e){let t=this.cache;if(e.x!==void 0)(t[0]!==e.x||t[1]!==e.y||t[2]!==e.z||t[3]!==e.w)&&(i.uniform4i(this.addr,e.x,e.y,e.z,e.w),t[0]=e.x,t[1]=e.y,t[2]=e.z,t[3]=e.w);else{if(Ct(t,e))return;i.uniform4iv(this.addr,e),Rt(t,e)}}function M_(i,e){let t=this.cache;t[0]!==e&&(i.uniform1ui(this.addr,e),t[0]=e)}function w_(i,e){let t=this.cache;if(e.x!==void 0)(t[0]!==e.x||t[1]!==e.y)&&(i.uniform2ui(this.addr,e.x,e.y),t[0]=e.x,t[1]=e.y);else{if(Ct(t,e))return;i.uniform2uiv(this.addr,e),Rt(t,e)}}function S_(i,e){let t=this.cache;if(e.x!==void 0)(t[0]!==e.x||t[1]!==e.y||t[2]!==e.z)&&(i.uniform3ui(this.addr,e.x,e.y,e.z),t[0]=e.x,t[1]=e.y,t[2]=e.z);else{if(Ct(t,e))return;i.uniform3uiv(this.addr,e),Rt(t,e)}}function T_(i,e){let t=this.cache;if(e.x!==void 0)(t[0]!==e.x||t[1]!==e.y||t[2]!==e.z||t[3]!==e.w)&&(i.uniform4ui(this.addr,e.x,e.y,e.z,e.w),t[0]=e.x,t[1]=e.y,t[2]=e.z,t[3]=e.w);else{if(Ct(t,e))return;i.uniform4uiv(this.addr,e),Rt(t,e)}}function sl(i){return i.version===0&&(i.compareFunction=Dc,i.needsUpdate=!0),i}function E_(i,e,t){let n=this.cache,s=t.allocateTextureUnit();n[0]!==s&&(i.uniform1i(this.addr,s),n[0]=s);let r;this.type===i.SAMPLER_2D_SHADOW?r=sl(Bd):r=kd,t.setTexture2D(e||r,s)}function A_(i,e,t){let n=this.cache,s=t.allocateTextureUnit();n[0]!==s&&(i.uniform1i(this.addr,s),n[0]=s),t.setTexture3D(e||Gd,s)}function C_(i,e,t){let n=this.cache,s=t.allocateTextureUnit();n[0]!==s&&(i.uniform1i(this.addr,s),n[0]=s);let r;this.type===i.SAMPLER_CUBE_SHADOW?r=sl(zd):r=Hd,t.setTextureCube(e||r,s)}function R_(i,e,t){let n=this.cache,s=t.allocateTextureUnit();n[0]!==s&&(i.uniform1i(this.addr,s),n[0]=s),t.setTexture2DArray(e||Vd,s)}function P_(i){switch(i){case 5126:return u_;case 35664:return d_;case 35665:return f_;case 35666:return p_;case 35674:return m_;case 35675:return g_;case 35676:return __;case 5124:case 35670:return v_;case 35667:case 35671:return x_;case 35668:case 35672:return y_;case 35669:case 35673:return b_;case 5125:return M_;case 36294:return w_;case 36295:return S_;case 36296:return T_;case 35678:case 36198:case 36298:case 36306:case 35682:return E_;case 35679:case 36299:case 36307:return A_;case 35680:case 36300:case 36308:case 36293:return C_;case 36289:case 36303:case 36311:case 36292:return R_}}function I_(i,e){i.uniform1fv(this.addr,e)}function L_(i,e){let t=Zs(e,this.size,2);i.uniform2fv(this.addr,t)}function N_(i,e){let t=Zs(e,this.size,3);i.uniform3fv(this.addr,t)}function D_(i,e){let t=Zs(e,this.size,4);i.uniform4fv(this.addr,t)}function U_(i,e){let t=Zs(e,this.size,4);i.uniformMatrix2fv(this.addr,!1,t)}function F_(i,e){let t=Zs(e,this.size,9);i.uniformMatrix3fv(this.addr,!1,t)}function O_(i,e){let t=Zs(e,this.size,16);i.uniformMatrix4fv(this.addr,!1,t)}function k_(i,e){i.uniform1iv(this.addr,e)}function B_(i,e){i.uniform2iv(this.addr,e)}function z_(i,e){i.uniform3iv(this.addr,e)}function V_(i,e){i.uniform4iv(this.addr,e)}function G_(i,e){i.uniform1uiv(this.addr,e)}function H_(i,e){i.uniform2uiv(this.addr,e)}function W_(i,e){i.uniform3uiv(this.addr,e)}function $_(i,e){i.uniform4uiv(this.addr,e)}function X_(i,e,t){let n=this.cache,s=e.length,r=il(t,s);Ct(n,r)||(i.uniform1iv(this.addr,r),Rt(n,r));let a;this.type===i.SAMPLER_2D_SHADOW?a=sl(Bd):a=kd;for(let o=0;o!==s;++o)t.setTexture2D(e[o]||a,r[o])}function q_(i,e,t){let n=this.cache,s=e.length,r=il(t,s);Ct(n,r)||(i.uniform1iv(this.addr,r),Rt(n,r));for(let a=0;a!==s;++a)t.setTexture3D(e[a]||Gd,r[a])}function Y_(i,e,t){let n=this.cache,s=e.length,r=il(t,s);Ct(n,r)||(i.uniform1iv(this.addr,r),Rt(n,r));let a;this.type===i.SAMPLER_CUBE_SHADOW?a=sl(zd):a=Hd;for(let o=0;o!==s;++o)t.setTextureCube(e[o]||a,r[o])}function Z_(i,e,t){let n=this.cache,s=e.length,r=il(t,s);Ct(n,r)||(i.uniform1iv(this.addr,r),Rt(n,r));for(let a=0;a!==s;++a)t.setTexture2DArray(e[a]||Vd,r[a])}function J_(i){switch(i){case 5126:return I_;case 35664:return L_;case 35665:return N_;case 35666:return D_;case 35674:return U_;case 35675:return F_;case 35676:return O_;case 5124:case 35670:return k_;case 35667:case 35671:return B_;case 35668:case 35672:return z_;case 35669:case 35673:return V_;case 5125:return G_;case 36294:return H_;case 36295:return W_;case 36296:return $_;case 35678:case 36198:case 36298:case 36306:case 35682:return X_;case 35679:case 36299:case 36307:return q_;case 35680:case 36300:case 36308:case 36293:return Y_;case 36289:case 36303:case 36311:case 36292:return Z_}}var Wc=class{constructor(e,t,n){this.id=e,this.addr=n,this.cache=[],this.type=t.type,this.setValue=P_(t.type)}},$c=class{constructor(e,t,n){this.id=e,this.addr=n,this.cache=[],this.type=t.type,this.size=t.size,this.setValue=J_(t.type)}},Xc=class{constructor(e){this.id=e,this.seq=[],this.map={}}setValue(e,t,n){let s=this.seq;for(let r=0,a=s.length;r!==a;++r){let o=s[r];o.setValue(e,t[o.id],n)}}},Gc=/(\w+)(\])?(\[|\.)?/g;function Md(i,e){i.seq.push(e),i.map[e.id]=e}function K_(i,e,t){let n=i.name,s=n.length;for(Gc.lastIndex=0;;){let r=Gc.exec(n),a=Gc.lastIndex,o=r[1],l=r[2]==="]",c=r[3];if(l&&(o=o|0),c===void 0||c==="["&&a+2===s){Md(t,c===void 0?new Wc(o,i,e):new $c(o,i,e));break}else{let u=t.map[o];u===void 0&&(u=new Xc(o),Md(t,u)),t=u}}}var qs=class{constructor(e,t){this.seq=[],this.map={};let n=e.getProgramParameter(t,e.ACTIVE_UNIFORMS);for(let a=0;a<n;++a){let o=e.getActiveUniform(t,a),l=e.getUniformLocation(t,o.name);K_(o,l,this)}let s=[],r=[];for(let a of this.seq)a.type===e.SAMPLER_2D_SHADOW||a.type===e.SAMPLER_CUBE_SHADOW||a.type===e.SAMPLER_2D_ARRAY_SHADOW?s.push(a):r.push(a);s.length>0&&(this.seq=s.concat(r))}setValue(e,t,n,s){let r=this.map[t];r!==void 0&&r.setValue(e,n,s)}setOptional(e,t,n){let s=t[n];s!==void 0&&this.setValue(e,n,s)}static upload(e,t,n,s){for(let r=0,a=t.length;r!==a;++r){let o=t[r],l=n[o.id];l.needsUpdate!==!1&&o.setValue(e,l.value,s)}}static seqWithValue(e,t){let n=[];for(let s=0,r=e.length;s!==r;++s){let a=e[s];a.id in t&&n.push(a)}return n}};function wd(i,e,t){let n=i.createShader(e);return i.shaderSource(n,t),i.compileShader(n),n}var j_=37297,Q_=0;function ev(i,e){let t=i.split(`
`),n=[],s=Math.max(e-6,0),r=Math.min(e+6,t.length);for(let a=s;a<r;a++){let o=a+1;n.push(`${o===e?">":" "} ${o}: ${t[a]}`)}return n.join(`
`)}var Sd=new Ve;function tv(i){Ke._getMatrix(Sd,Ke.workingColorSpace,i);let e=`mat3( ${Sd.elements.map(t=>t.toFixed(4))} )`;switch(Ke.getTransfer(i)){case gr:return[e,"LinearTransferOETF"];case it:return[e,"sRGBTransferOETF"];default:return Oe("WebGLProgram: Unsupported color space: ",i),[e,"LinearTransferOETF"]}}function Td(i,e,t){let n=i.getShaderParameter(e,i.COMPILE_STATUS),r=(i.getShaderInfoLog(e)||"").trim();if(n&&r==="")return"";let a=/ERROR: 0:(\d+)/.exec(r);if(a){let o=parseInt(a[1]);return t.toUpperCase()+`

`+r+`

`+ev(i.getShaderSource(e),o)}else return r}function nv(i,e){let t=tv(e);return[`vec4 ${i}( vec4 value ) {`,`	return ${t[1]}( vec4( ${t[0]} * value.rgb, value.a ) );`,"}"].join(`
`)}var iv={[gc]:"Linear",[_c]:"Reinhard",[vc]:"Cineon",[xc]:"ACESFilmic",[bc]:"AgX",[Mc]:"Neutral",[yc]:"Custom"};function sv(i,e){let t=iv[e];return t===void 0?(Oe("WebGLProgram: Unsupported toneMapping:",e),"vec3 "+i+"( vec3 color ) { return LinearToneMapping( color ); }"):"vec3 "+i+"( vec3 color ) { return "+t+"ToneMapping( color ); }"}var tl=new k;function rv(){Ke.getLuminanceCoefficients(tl);let i=tl.x.toFixed(4),e=tl.y.toFixed(4),t=tl.z.toFixed(4);return["float luminance( const in vec3 rgb ) {",`	const vec3 weights = vec3( ${i}, ${e}, ${t} );`,"	return dot( weights, rgb );","}"].join(`
`)}function av(i){return[i.extensionClipCullDistance?"#extension GL_ANGLE_clip_cull_distance : require":"",i.extensionMultiDraw?"#extension GL_ANGLE_multi_draw : require":""].filter(Br).join(`
`)}function ov(i){let e=[];for(let t in i){let n=i[t];n!==!1&&e.push("#define "+t+" "+n)}return e.join(`
`)}function lv(i,e){let t={},n=i.getProgramParameter(e,i.ACTIVE_ATTRIBUTES);for(let s=0;s<n;s++){let r=i.getActiveAttrib(e,s),a=r.name,o=1;r.type===i.FLOAT_MAT2&&(o=2),r.type===i.FLOAT_MAT3&&(o=3),r.type===i.FLOAT_MAT4&&(o=4),t[a]={type:r.type,location:i.getAttribLocation(e,a),locationSize:o}}return t}function Br(i){return i!==""}function Ed(i,e){let t=e.numSpotLightShadows+e.numSpotLightMaps-e.numSpotLightShadowsWithMaps;return i.replace(/NUM_SUN_LIGHTS/g,e.numSunLights).replace(/NUM_DIR_LIGHTS/g,e.numDirLights).replace(/NUM_SPOT_LIGHTS/g,e.numSpotLights).replace(/NUM_SPOT_LIGHT_MAPS/g,e.numSpotLightMaps).replace(/NUM_SPOT_LIGHT_COORDS/g,t).replace(/NUM_RECT_AREA_LIGHTS/g,e.numRectAreaLights).replace(/NUM_POINT_LIGHTS/g,e.numPointLights).replace(/NUM_HEMI_LIGHTS/g,e.numHemiLights).replace(/NUM_SUN_LIGHT_SHADOWS/g,e.numSunLightShadows).replace(/NUM_DIR_LIGHT_SHADOWS/g,e.numDirLightShadows).replace(/NUM_SPOT_LIGHT_SHADOWS_WITH_MAPS/g,e.numSpotLightShadowsWithMaps).replace(/NUM_SPOT_LIGHT_SHADOWS/g,e.numSpotLightShadows).replace(/NUM_POINT_LIGHT_SHADOWS/g,e.numPointLightShadows).replace(/NUM_LIGHT_PROBE_GRIDS/g,e.numLightProbeGrids)}function Ad(i,e){return i.replace(/NUM_CLIPPING_PLANES/g,e.numClippingPlanes).replace(/UNION_CLIPPING_PLANES/g,e.numClippingPlanes-e.numClipIntersection)}var cv=/^[ \t]*#include +<([\w\d./]+)>/gm;function qc(i){return i.replace(cv,hv)}function hv(i,e){let t=qe[e];if(t===void 0)throw new Error("THREE.WebGLProgram: Can not resolve #include <"+e+">");return qc(t)}var uv=/#pragma unroll_loop_start\s+for\s*\(\s*int\s+i\s*=\s*(\d+)\s*;\s*i\s*<\s*(\d+)\s*;\s*i\s*\+\+\s*\)\s*{([\s\S]+?)}\s+#pragma unroll_loop_end/g;function Cd(i){return i.replace(uv,dv)}function dv(i,e,t,n){let s="";for(let r=parseInt(e);r<parseInt(t);r++)s+=n.replace(/\[\s*i\s*\]/g,"[ "+r+" ]").replace(/UNROLLED_LOOP_INDEX/g,r);return s}function Rd(i){let e=`precision ${i.precision} float;
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
#define LOW_PRECISION`),e}var fv={[Rr]:"SHADOWMAP_TYPE_PCF",[Hs]:"SHADOWMAP_TYPE_VSM"};function pv(i){return fv[i.shadowMapType]||"SHADOWMAP_TYPE_BASIC"}var mv={[$s]:"ENVMAP_MODE_REFRACTION"};function gv(i){return i.envMap===!1?"ENVMAP_MODE_REFLECTION":mv[i.envMapMode]||"ENVMAP_MODE_REFLECTION"}var _v={[mc]:"ENVMAP_BLENDING_MULTIPLY",[Xu]:"ENVMAP_BLENDING_MIX",[qu]:"ENVMAP_BLENDING_ADD"};function vv(i){return i.envMap===!1?"ENVMAP_BLENDING_NONE":_v[i.combine]||"ENVMAP_BLENDING_NONE"}function xv(i,e,t,n){let s=i.getContext(),r=t.defines,a=t.vertexShader,o=t.fragmentShader,l=pv(t),c=t.envMapPMREM===!0?"ENVMAP_TYPE_PMREM":"ENVMAP_TYPE_CUBE",h=gv(t),u=vv(t),d=av(t),f=ov(r),p=s.createProgram(),v,m,g=t.glslVersion?"#version "+t.glslVersion+`
`:"";t.isRawShaderMaterial?(v=["#define SHADER_TYPE "+t.shaderType,"#define SHADER_NAME "+t.shaderName,f].filter(Br).join(`
`),v.length>0&&(v+=`
`),m=["#define SHADER_TYPE "+t.shaderType,"#define SHADER_NAME "+t.shaderName,f].filter(Br).join(`
`),m.length>0&&(m+=`
`)):(v=[Rd(t),"#define SHADER_TYPE "+t.shaderType,"#define SHADER_NAME "+t.shaderName,f,t.extensionClipCullDistance?"#define USE_CLIP_DISTANCE":"",t.batching?"#define USE_BATCHING":"",t.batchingColor?"#define USE_BATCHING_COLOR":"",t.instancing?"#define USE_INSTANCING":"",t.instancingColor?"#define USE_INSTANCING_COLOR":"",t.instancingMorph?"#define USE_INSTANCING_MORPH":"",t.useFog&&t.fog?"#define USE_FOG":"",t.useFog&&t.fogExp2?"#define FOG_EXP2":"",t.map?"#define USE_MAP":"",t.envMap?"#define USE_ENVMAP":"",t.envMap?"#define "+h:"",t.lightMap?"#define USE_LIGHTMAP":"",t.aoMap?"#define USE_AOMAP":"",t.bumpMap?"#define USE_BUMPMAP":"",t.normalMap?"#define USE_NORMALMAP":"",t.normalMapObjectSpace?"#define USE_NORMALMAP_OBJECTSPACE":"",t.normalMapTangentSpace?"#define USE_NORMALMAP_TANGENTSPACE":"",t.displacementMap?"#define USE_DISPLACEMENTMAP":"",t.emissiveMap?"#define USE_EMISSIVEMAP":"",t.anisotropy?"#define USE_ANISOTROPY":"",t.anisotropyMap?"#define USE_ANISOTROPYMAP":"",t.clearcoatMap?"#define USE_CLEARCOATMAP":"",t.clearcoatRoughnessMap?"#define USE_CLEARCOAT_ROUGHNESSMAP":"",t.clearcoatNormalMap?"#define USE_CLEARCOAT_NORMALMAP":"",t.diffuseRoughnessMap?"#define USE_DIFFUSE_ROUGHNESSMAP":"",t.iridescenceMap?"#define USE_IRIDESCENCEMAP":"",t.iridescenceThicknessMap?"#define USE_IRIDESCENCE_THICKNESSMAP":"",t.specularMap?"#define USE_SPECULARMAP":"",t.specularColorMap?"#define USE_SPECULAR_COLORMAP":"",t.specularIntensityMap?"#define USE_SPECULAR_INTENSITYMAP":"",t.roughnessMap?"#define USE_ROUGHNESSMAP":"",t.metalnessMap?"#define USE_METALNESSMAP":"",t.alphaMap?"#define USE_ALPHAMAP":"",t.alphaHash?"#define USE_ALPHAHASH":"",t.transmission?"#define USE_TRANSMISSION":"",t.transmissionMap?"#define USE_TRANSMISSIONMAP":"",t.thicknessMap?"#define USE_THICKNESSMAP":"",t.sheenColorMap?"#define USE_SHEEN_COLORMAP":"",t.sheenRoughnessMap?"#define USE_SHEEN_ROUGHNESSMAP":"",t.mapUv?"#define MAP_UV "+t.mapUv:"",t.alphaMapUv?"#define ALPHAMAP_UV "+t.alphaMapUv:"",t.lightMapUv?"#define LIGHTMAP_UV "+t.lightMapUv:"",t.aoMapUv?"#define AOMAP_UV "+t.aoMapUv:"",t.emissiveMapUv?"#define EMISSIVEMAP_UV "+t.emissiveMapUv:"",t.bumpMapUv?"#define BUMPMAP_UV "+t.bumpMapUv:"",t.normalMapUv?"#define NORMALMAP_UV "+t.normalMapUv:"",t.displacementMapUv?"#define DISPLACEMENTMAP_UV "+t.displacementMapUv:"",t.metalnessMapUv?"#define METALNESSMAP_UV "+t.metalnessMapUv:"",t.roughnessMapUv?"#define ROUGHNESSMAP_UV "+t.roughnessMapUv:"",t.anisotropyMapUv?"#define ANISOTROPYMAP_UV "+t.anisotropyMapUv:"",t.clearcoatMapUv?"#define CLEARCOATMAP_UV "+t.clearcoatMapUv:"",t.clearcoatNormalMapUv?"#define CLEARCOAT_NORMALMAP_UV "+t.clearcoatNormalMapUv:"",t.clearcoatRoughnessMapUv?"#define CLEARCOAT_ROUGHNESSMAP_UV "+t.clearcoatRoughnessMapUv:"",t.diffuseRoughnessMapUv?"#define DIFFUSE_ROUGHNESSMAP_UV "+t.diffuseRoughnessMapUv:"",t.iridescenceMapUv?"#define IRIDESCENCEMAP_UV "+t.iridescenceMapUv:"",t.iridescenceThicknessMapUv?"#define IRIDESCENCE_THICKNESSMAP_UV "+t.iridescenceThicknessMapUv:"",t.sheenColorMapUv?"#define SHEEN_COLORMAP_UV "+t.sheenColorMapUv:"",t.sheenRoughnessMapUv?"#define SHEEN_ROUGHNESSMAP_UV "+t.sheenRoughnessMapUv:"",t.specularMapUv?"#define SPECULARMAP_UV "+t.specularMapUv:"",t.specularColorMapUv?"#define SPECULAR_COLORMAP_UV "+t.specularColorMapUv:"",t.specularIntensityMapUv?"#define SPECULAR_INTENSITYMAP_UV "+t.specularIntensityMapUv:"",t.transmissionMapUv?"#define TRANSMISSIONMAP_UV "+t.transmissionMapUv:"",t.thicknessMapUv?"#define THICKNESSMAP_UV "+t.thicknessMapUv:"",t.vertexTangents&&t.flatShading===!1?"#define USE_TANGENT":"",t.vertexNormals?"#define HAS_NORMAL":"",t.vertexColors?"#define USE_COLOR":"",t.vertexAlphas?"#define USE_COLOR_ALPHA":"",t.vertexUv1s?"#define USE_UV1":"",t.vertexUv2s?"#define USE_UV2":"",t.vertexUv3s?"#define USE_UV3":"",t.pointsUvs?"#define USE_POINTS_UV":"",t.flatShading?"#define FLAT_SHADED":"",t.skinning?"#define USE_SKINNING":"",t.morphTargets?"#define USE_MORPHTARGETS":"",t.morphNormals&&t.flatShading===!1?"#define USE_MORPHNORMALS":"",t.morphColors?"#define USE_MORPHCOLORS":"",t.morphTargetsCount>0?"#define MORPHTARGETS_TEXTURE_STRIDE "+t.morphTextureStride:"",t.morphTargetsCount>0?"#define MORPHTARGETS_COUNT "+t.morphTargetsCount:"",t.doubleSided?"#define DOUBLE_SIDED":"",t.flipSided?"#define FLIP_SIDED":"",t.shadowMapEnabled?"#define USE_SHADOWMAP":"",t.shadowMapEnabled?"#define "+l:"",t.sizeAttenuation?"#define USE_SIZEATTENUATION":"",t.numLightProbes>0?"#define USE_LIGHT_PROBES":"",t.logarithmicDepthBuffer?"#define USE_LOGARITHMIC_DEPTH_BUFFER":"",t.reversedDepthBuffer?"#define USE_REVERSED_DEPTH_BUFFER":"","uniform mat4 modelMatrix;","uniform mat4 modelViewMatrix;","uniform mat4 projectionMatrix;","uniform mat4 viewMatrix;","uniform mat3 normalMatrix;","uniform vec3 cameraPosition;","uniform bool isOrthographic;","#ifdef USE_INSTANCING","	attribute mat4 instanceMatrix;","#endif","#ifdef USE_INSTANCING_COLOR","	attribute vec3 instanceColor;","#endif","#ifdef USE_INSTANCING_MORPH","	uniform sampler2D morphTexture;","#endif","attribute vec3 position;","attribute vec3 normal;","attribute vec2 uv;","#ifdef USE_UV1","	attribute vec2 uv1;","#endif","#ifdef USE_UV2","	attribute vec2 uv2;","#endif","#ifdef USE_UV3","	attribute vec2 uv3;","#endif","#ifdef USE_TANGENT","	attribute vec4 tangent;","#endif","#if defined( USE_COLOR_ALPHA )","	attribute vec4 color;","#elif defined( USE_COLOR )","	attribute vec3 color;","#endif","#ifdef USE_SKINNING","	attribute vec4 skinIndex;","	attribute vec4 skinWeight;","#endif",`
`].filter(Br).join(`
`),m=[Rd(t),"#define SHADER_TYPE "+t.shaderType,"#define SHADER_NAME "+t.shaderName,f,t.useFog&&t.fog?"#define USE_FOG":"",t.useFog&&t.fogExp2?"#define FOG_EXP2":"",t.alphaToCoverage?"#define ALPHA_TO_COVERAGE":"",t.map?"#define USE_MAP":"",t.matcap?"#define USE_MATCAP":"",t.envMap?"#define USE_ENVMAP":"",t.envMap?"#define "+c:"",t.envMap?"#define "+h:"",t.envMap?"#define "+u:"",t.envMapPMREM?"#define ENVMAP_MAX_LOD "+t.envMapMaxLod+".0":"",t.envMapPMREM?"#define ENVMAP_SIZE "+t.envMapSize+".0":"",t.lightMap?"#define USE_LIGHTMAP":"",t.aoMap?"#define USE_AOMAP":"",t.bumpMap?"#define USE_BUMPMAP":"",t.normalMap?"#define USE_NORMALMAP":"",t.normalMapObjectSpace?"#define USE_NORMALMAP_OBJECTSPACE":"",t.normalMapTangentSpace?"#define USE_NORMALMAP_TANGENTSPACE":"",t.packedNormalMap?"#define USE_PACKED_NORMALMAP":"",t.emissiveMap?"#define USE_EMISSIVEMAP":"",t.anisotropy?"#define USE_ANISOTROPY":"",t.anisotropyMap?"#define USE_ANISOTROPYMAP":"",t.clearcoat?"#define USE_CLEARCOAT":"",t.clearcoatMap?"#define USE_CLEARCOATMAP":"",t.clearcoatRoughnessMap?"#define USE_CLEARCOAT_ROUGHNESSMAP":"",t.clearcoatNormalMap?"#define USE_CLEARCOAT_NORMALMAP":"",t.diffuseRoughness?"#define USE_DIFFUSE_ROUGHNESS":"",t.diffuseRoughnessMap?"#define USE_DIFFUSE_ROUGHNESSMAP":"",t.dispersion?"#define USE_DISPERSION":"",t.retroreflection?"#define USE_RETROREFLECTION":"",t.iridescence?"#define USE_IRIDESCENCE":"",t.iridescenceMap?"#define USE_IRIDESCENCEMAP":"",t.iridescenceThicknessMap?"#define USE_IRIDESCENCE_THICKNESSMAP":"",t.specularMap?"#define USE_SPECULARMAP":"",t.specularColorMap?"#define USE_SPECULAR_COLORMAP":"",t.specularIntensityMap?"#define USE_SPECULAR_INTENSITYMAP":"",t.roughnessMap?"#define USE_ROUGHNESSMAP":"",t.metalnessMap?"#define USE_METALNESSMAP":"",t.alphaMap?"#define USE_ALPHAMAP":"",t.alphaTest?"#define USE_ALPHATEST":"",t.alphaHash?"#define USE_ALPHAHASH":"",t.sheen?"#define USE_SHEEN":"",t.sheenColorMap?"#define USE_SHEEN_COLORMAP":"",t.sheenRoughnessMap?"#define USE_SHEEN_ROUGHNESSMAP":"",t.transmission?"#define USE_TRANSMISSION":"",t.transmissionMap?"#define USE_TRANSMISSIONMAP":"",t.thicknessMap?"#define USE_THICKNESSMAP":"",t.vertexTangents&&t.flatShading===!1?"#define USE_TANGENT":"",t.vertexColors||t.instancingColor?"#define USE_COLOR":"",t.vertexAlphas||t.batchingColor?"#define USE_COLOR_ALPHA":"",t.vertexUv1s?"#define USE_UV1":"",t.vertexUv2s?"#define USE_UV2":"",t.vertexUv3s?"#define USE_UV3":"",t.pointsUvs?"#define USE_POINTS_UV":"",t.gradientMap?"#define USE_GRADIENTMAP":"",t.flatShading?"#define FLAT_SHADED":"",t.doubleSided?"#define DOUBLE_SIDED":"",t.flipSided?"#define FLIP_SIDED":"",t.shadowMapEnabled?"#define USE_SHADOWMAP":"",t.shadowMapEnabled?"#define "+l:"",t.premultipliedAlpha?"#define PREMULTIPLIED_ALPHA":"",t.numLightProbes>0?"#define USE_LIGHT_PROBES":"",t.decodeVideoTexture?"#define DECODE_VIDEO_TEXTURE":"",t.decodeVideoTextureEmissive?"#define DECODE_VIDEO_TEXTURE_EMISSIVE":"",t.logarithmicDepthBuffer?"#define USE_LOGARITHMIC_DEPTH_BUFFER":"",t.reversedDepthBuffer?"#define USE_REVERSED_DEPTH_BUFFER":"","uniform mat4 viewMatrix;","uniform vec3 cameraPosition;","uniform bool isOrthographic;",t.toneMapping!==$n?"#define TONE_MAPPING":"",t.toneMapping!==$n?qe.tonemapping_pars_fragment:"",t.toneMapping!==$n?sv("toneMapping",t.toneMapping):"",t.dithering?"#define DITHERING":"",t.opaque?"#define OPAQUE":"",qe.colorspace_pars_fragment,nv("linearToOutputTexel",t.outputColorSpace),rv(),t.useDepthPacking?"#define DEPTH_PACKING "+t.depthPacking:"",`
`].filter(Br).join(`
`)),a=qc(a),a=Ed(a,t),a=Ad(a,t),o=qc(o),o=Ed(o,t),o=Ad(o,t),a=Cd(a),o=Cd(o),t.isRawShaderMaterial!==!0&&(g=`#version 300 es
`,v=[d,"#define attribute in","#define varying out","#define texture2D texture"].join(`
`)+`
`+v,m=["#define varying in",t.glslVersion===Uc?"":"layout(location = 0) out highp vec4 pc_fragColor;",t.glslVersion===Uc?"":"#define gl_FragColor pc_fragColor","#define gl_FragDepthEXT gl_FragDepth","#define texture2D texture","#define textureCube texture","#define texture2DProj textureProj","#define texture2DLodEXT textureLod","#define texture2DProjLodEXT textureProjLod","#define textureCubeLodEXT textureLod","#define texture2DGradEXT textureGrad","#define texture2DProjGradEXT textureProjGrad","#define textureCubeGradEXT textureGrad"].join(`
`)+`
`+m);let M=g+v+a,C=g+m+o,w=wd(s,s.VERTEX_SHADER,M),E=wd(s,s.FRAGMENT_SHADER,C);s.attachShader(p,w),s.attachShader(p,E),t.index0AttributeName!==void 0?s.bindAttribLocation(p,0,t.index0AttributeName):t.hasPositionAttribute===!0&&s.bindAttribLocation(p,0,"position"),s.linkProgram(p);function S(U){if(i.debug.checkShaderErrors){let N=s.getProgramInfoLog(p)||"",V=s.getShaderInfoLog(w)||"",q=s.getShaderInfoLog(E)||"",I=N.trim(),X=V.trim(),J=q.trim(),$=!0,se=!0;if(s.getProgramParameter(p,s.LINK_STATUS)===!1)if($=!1,typeof i.debug.onShaderError=="function")i.debug.onShaderError(s,p,w,E);else{let L=Td(s,w,"vertex"),Y=Td(s,E,"fragment");ze("WebGLProgram: Shader Error "+s.getError()+" - VALIDATE_STATUS "+s.getProgramParameter(p,s.VALIDATE_STATUS)+`

Material Name: `+U.name+`
Material Type: `+U.type+`

Program Info Log: `+I+`
`+L+`
`+Y)}else I!==""?Oe("WebGLProgram: Program Info Log:",I):(X===""||J==="")&&(se=!1);se&&(U.diagnostics={runnable:$,programLog:I,vertexShader:{log:X,prefix:v},fragmentShader:{log:J,prefix:m}})}s.deleteShader(w),s.deleteShader(E),x=new qs(s,p),T=lv(s,p)}let x;this.getUniforms=function(){return x===void 0&&S(this),x};let T;this.getAttributes=function(){return T===void 0&&S(this),T};let B=t.rendererExtensionParallelShaderCompile===!1;return this.isReady=function(){return B===!1&&(B=s.getProgramParameter(p,j_)),B},this.destroy=function(){n.releaseStatesOfProgram(this),s.deleteProgram(p),this.program=void 0},this.type=t.shaderType,this.name=t.shaderName,this.id=Q_++,this.cacheKey=e,this.usedTimes=1,this.program=p,this.vertexShader=w,this.fragmentShader=E,this}var yv=0,Yc=class{constructor(){this.shaderCache=new Map,this.materialCache=new Map}update(e,t,n){let s=this._getShaderCacheForMaterial(e);return s.has(t)===!1&&(s.add(t),t.usedTimes++),s.has(n)===!1&&(s.add(n),n.usedTimes++),this}remove(e){let t=this.materialCache.get(e);for(let n of t)n.usedTimes--,n.usedTimes===0&&this.shaderCache.delete(n.code);return this.materialCache.delete(e),this}getVertexShaderStage(e){return this._getShaderStage(e.vertexShader)}getFragmentShaderStage(e){return this._getShaderStage(e.fragmentShader)}dispose(){this.shaderCache.clear(),this.materialCache.clear()}_getShaderCacheForMaterial(e){let t=this.materialCache,n=t.get(e);return n===void 0&&(n=new Set,t.set(e,n)),n}_getShaderStage(e){let t=this.shaderCache,n=t.get(e);return n===void 0&&(n=new Zc(e),t.set(e,n)),n}},Zc=class{constructor(e){this.id=yv++,this.code=e,this.usedTimes=0}};function bv(i){return i===zi||i===Ur||i===Fr}function Mv(i,e,t,n,s,r){let a=new Os,o=new Yc,l=new Set,c=[],h=new Map,u=n.logarithmicDepthBuffer,d={MeshDepthMaterial:"depth",MeshDistanceMaterial:"distance",MeshNormalMaterial:"normal",MeshBasicMaterial:"basic",MeshLambertMaterial:"lambert",MeshPhongMaterial:"phong",MeshToonMaterial:"toon",MeshStandardMaterial:"physical",MeshPhysicalMaterial:"physical",MeshMatcapMaterial:"matcap",LineBasicMaterial:"basic",LineDashedMaterial:"dashed",PointsMaterial:"points",ShadowMaterial:"shadow",SpriteMaterial:"sprite"};function f(x){return l.add(x),x===0?"uv":`uv${x}`}function p(x,T,B,U,N,V){let q=U.fog,I=N.geometry,X=x.isMeshStandardMaterial||x.isMeshLambertMaterial||x.isMeshPhongMaterial?U.environment:null,J=x.isMeshStandardMaterial||x.isMeshLambertMaterial&&!x.envMap||x.isMeshPhongMaterial&&!x.envMap,$=e.get(x.envMap||X,J),se=d[x.type],L=n.precision;x.precision!==null&&(L=n.getMaxPrecision(x.precision),L!==x.precision&&Oe("WebGLProgram.getParameters:",x.precision,"not supported, using",L,"instead."));let Y=I.morphAttributes.position||I.morphAttributes.normal||I.morphAttributes.color,ee=Y!==void 0?Y.length:0,le=0;I.morphAttributes.position!==void 0&&(le=1),I.morphAttributes.normal!==void 0&&(le=2),I.morphAttributes.color!==void 0&&(le=3);let Ee,j,be,Ae;if(se){let xe=qn[se];Ee=xe.vertexShader,j=xe.fragmentShader}else{Ee=x.vertexShader,j=x.fragmentShader;let xe=o.getVertexShaderStage(x),rt=o.getFragmentShaderStage(x);o.update(x,xe,rt),be=xe.id,Ae=rt.id}let Ue=i.getRenderTarget(),Me=i.state.buffers.depth.getReversed(),We=N.isInstancedMesh===!0,Mt=N.isBatchedMesh===!0,ke=!!x.map,st=!!x.matcap,ot=!!$,Ye=ot&&$.isPMREMTexture===!0,Ft=!!x.aoMap,Et=!!x.lightMap,Jt=!!x.bumpMap&&x.wireframe===!1,pt=!!x.normalMap,kn=!!x.displacementMap,Pt=!!x.emissiveMap,gn=!!x.metalnessMap,_n=!!x.roughnessMap,vn=x.anisotropy>0,F=x.clearcoat>0,xn=x.diffuseRoughness>0,dt=x.dispersion>0,ft=x.retroreflectivity>0,_e=x.iridescence>0,At=x.sheen>0,Fe=x.transmission>0,Ge=vn&&!!x.anisotropyMap,A=F&&!!x.clearcoatMap,y=F&&!!x.clearcoatNormalMap,H=F&&!!x.clearcoatRoughnessMap,re=xn&&!!x.diffuseRoughnessMap,ie=_e&&!!x.iridescenceMap,ce=_e&&!!x.iridescenceThicknessMap,pe=At&&!!x.sheenColorMap,Q=At&&!!x.sheenRoughnessMap,te=!!x.specularMap,ue=!!x.specularColorMap,P=!!x.specularIntensityMap,ne=Fe&&!!x.transmissionMap,K=Fe&&!!x.thicknessMap,de=!!x.gradientMap,oe=!!x.alphaMap,he=x.alphaTest>0,Ie=!!x.alphaHash,Xe=!!x.extensions,ae=$n;x.toneMapped&&(Ue===null||Ue.isXRRenderTarget===!0)&&(ae=i.toneMapping);let Le=Ye?$.isCompressedCubeTexture?$.image[0].mipmaps:$.mipmaps:null,$e={shaderID:se,shaderType:x.type,shaderName:x.name,vertexShader:Ee,fragmentShader:j,defines:x.defines,customVertexShaderID:be,customFragmentShaderID:Ae,isRawShaderMaterial:x.isRawShaderMaterial===!0,glslVersion:x.glslVersion,precision:L,batching:Mt,batchingColor:Mt&&N._colorsTexture!==null,instancing:We,instancingColor:We&&N.instanceColor!==null,instancingMorph:We&&N.morphTexture!==null,outputColorSpace:Ue===null?i.outputColorSpace:Ue.isXRRenderTarget===!0?Ue.texture.colorSpace:Ke.workingColorSpace,alphaToCoverage:!!x.alphaToCoverage,map:ke,matcap:st,envMap:ot,envMapMode:ot&&$.mapping,envMapPMREM:Ye,envMapMaxLod:Ye?Le.length-1:null,envMapSize:Ye?Le[0].width:null,aoMap:Ft,lightMap:Et,bumpMap:Jt,normalMap:pt,displacementMap:kn,emissiveMap:Pt,normalMapObjectSpace:pt&&x.normalMapType===Ju,normalMapTangentSpace:pt&&x.normalMapType===Ic,packedNormalMap:pt&&x.normalMapType===Ic&&bv(x.normalMap.format),metalnessMap:gn,roughnessMap:_n,anisotropy:vn,anisotropyMap:Ge,clearcoat:F,clearcoatMap:A,clearcoatNormalMap:y,clearcoatRoughnessMap:H,diffuseRoughness:xn,diffuseRoughnessMap:re,dispersion:dt,retroreflection:ft,iridescence:_e,iridescenceMap:ie,iridescenceThicknessMap:ce,sheen:At,sheenColorMap:pe,sheenRoughnessMap:Q,specularMap:te,specularColorMap:ue,specularIntensityMap:P,transmission:Fe,transmissionMap:ne,thicknessMap:K,gradientMap:de,opaque:x.transparent===!1&&x.blending===Ws&&x.alphaToCoverage===!1,alphaMap:oe,alphaTest:he,alphaHash:Ie,combine:x.combine,mapUv:ke&&f(x.map.channel),aoMapUv:Ft&&f(x.aoMap.channel),lightMapUv:Et&&f(x.lightMap.channel),bumpMapUv:Jt&&f(x.bumpMap.channel),normalMapUv:pt&&f(x.normalMap.channel),displacementMapUv:kn&&f(x.displacementMap.channel),emissiveMapUv:Pt&&f(x.emissiveMap.channel),metalnessMapUv:gn&&f(x.metalnessMap.channel),roughnessMapUv:_n&&f(x.roughnessMap.channel),anisotropyMapUv:Ge&&f(x.anisotropyMap.channel),clearcoatMapUv:A&&f(x.clearcoatMap.channel),clearcoatNormalMapUv:y&&f(x.clearcoatNormalMap.channel),clearcoatRoughnessMapUv:H&&f(x.clearcoatRoughnessMap.channel),diffuseRoughnessMapUv:re&&f(x.diffuseRoughnessMap.channel),iridescenceMapUv:ie&&f(x.iridescenceMap.channel),iridescenceThicknessMapUv:ce&&f(x.iridescenceThicknessMap.channel),sheenColorMapUv:pe&&f(x.sheenColorMap.channel),sheenRoughnessMapUv:Q&&f(x.sheenRoughnessMap.channel),specularMapUv:te&&f(x.specularMap.channel),specularColorMapUv:ue&&f(x.specularColorMap.channel),specularIntensityMapUv:P&&f(x.specularIntensityMap.channel),transmissionMapUv:ne&&f(x.transmissionMap.channel),thicknessMapUv:K&&f(x.thicknessMap.channel),alphaMapUv:oe&&f(x.alphaMap.channel),vertexTangents:!!I.attributes.tangent&&(pt||vn),vertexNormals:!!I.attributes.normal,vertexColors:x.vertexColors,vertexAlphas:x.vertexColors===!0&&!!I.attributes.color&&I.attributes.color.itemSize===4,pointsUvs:N.isPoints===!0&&!!I.attributes.uv&&(ke||oe),fog:!!q,useFog:x.fog===!0,fogExp2:!!q&&q.isFogExp2,flatShading:x.wireframe===!1&&(x.flatShading===!0||I.attributes.normal===void 0&&pt===!1&&(x.isMeshLambertMaterial||x.isMeshPhongMaterial||x.isMeshStandardMaterial||x.isMeshPhysicalMaterial)),sizeAttenuation:x.sizeAttenuation===!0,logarithmicDepthBuffer:u,reversedDepthBuffer:Me,skinning:N.isSkinnedMesh===!0,hasPositionAttribute:I.attributes.position!==void 0,morphTargets:I.morphAttributes.position!==void 0,morphNormals:I.morphAttributes.normal!==void 0,morphColors:I.morphAttributes.color!==void 0,morphTargetsCount:ee,morphTextureStride:le,numSunLights:T.sun.length,numDirLights:T.directional.length,numPointLights:T.point.length,numSpotLights:T.spot.length,numSpotLightMaps:T.spotLightMap.length,numRectAreaLights:T.rectArea.length,numHemiLights:T.hemi.length,numSunLightShadows:T.sunShadowMap.length,numDirLightShadows:T.directionalShadowMap.length,numPointLightShadows:T.pointShadowMap.length,numSpotLightShadows:T.spotShadowMap.length,numSpotLightShadowsWithMaps:T.numSpotLightShadowsWithMaps,numLightProbes:T.numLightProbes,numLightProbeGrids:V.filter(xe=>xe.texture!==null).length,numClippingPlanes:r.numPlanes,numClipIntersection:r.numIntersection,dithering:x.dithering,shadowMapEnabled:i.shadowMap.enabled&&B.length>0,shadowMapType:i.shadowMap.type,toneMapping:ae,decodeVideoTexture:ke&&x.map.isVideoTexture===!0&&Ke.getTransfer(x.map.colorSpace)===it,decodeVideoTextureEmissive:Pt&&x.emissiveMap.isVideoTexture===!0&&Ke.getTransfer(x.emissiveMap.colorSpace)===it,premultipliedAlpha:x.premultipliedAlpha,doubleSided:x.side===Wn,flipSided:x.side===Zt,useDepthPacking:x.depthPacking>=0,depthPacking:x.depthPacking||0,index0AttributeName:x.index0AttributeName,extensionClipCullDistance:Xe&&x.extensions.clipCullDistance===!0&&t.has("WEBGL_clip_cull_distance"),extensionMultiDraw:(Xe&&x.extensions.multiDraw===!0||Mt)&&t.has("WEBGL_multi_draw"),rendererExtensionParallelShaderCompile:t.has("KHR_parallel_shader_compile"),customProgramCacheKey:x.customProgramCacheKey()};return $e.vertexUv1s=l.has(1),$e.vertexUv2s=l.has(2),$e.vertexUv3s=l.has(3),l.clear(),$e}function v(x){let T=[];if(x.shaderID?T.push(x.shaderID):(T.push(x.customVertexShaderID),T.push(x.customFragmentShaderID)),x.defines!==void 0)for(let B in x.defines)T.push(B),T.push(x.defines[B]);return x.isRawShaderMaterial===!1&&(m(T,x),g(T,x),T.push(i.outputColorSpace)),T.push(x.customProgramCacheKey),T.join()}function m(x,T){x.push(T.precision),x.push(T.outputColorSpace),x.push(T.envMapMode),x.push(T.envMapPMREM),x.push(T.envMapMaxLod),x.push(T.envMapSize),x.push(T.mapUv),x.push(T.alphaMapUv),x.push(T.lightMapUv),x.push(T.aoMapUv),x.push(T.bumpMapUv),x.push(T.normalMapUv),x.push(T.displacementMapUv),x.push(T.emissiveMapUv),x.push(T.metalnessMapUv),x.push(T.roughnessMapUv),x.push(T.anisotropyMapUv),x.push(T.clearcoatMapUv),x.push(T.clearcoatNormalMapUv),x.push(T.clearcoatRoughnessMapUv),x.push(T.diffuseRoughnessMapUv),x.push(T.iridescenceMapUv),x.push(T.iridescenceThicknessMapUv),x.push(T.sheenColorMapUv),x.push(T.sheenRoughnessMapUv),x.push(T.specularMapUv),x.push(T.specularColorMapUv),x.push(T.specularIntensityMapUv),x.push(T.transmissionMapUv),x.push(T.thicknessMapUv),x.push(T.combine),x.push(T.fogExp2),x.push(T.sizeAttenuation),x.push(T.morphTargetsCount),x.push(T.numSunLights),x.push(T.numDirLights),x.push(T.numPointLights),x.push(T.numSpotLights),x.push(T.numSpotLightMaps),x.push(T.numHemiLights),x.push(T.numRectAreaLights),x.push(T.numSunLightShadows),x.push(T.numDirLightShadows),x.push(T.numPointLightShadows),x.push(T.numSpotLightShadows),x.push(T.numSpotLightShadowsWithMaps),x.push(T.numLightProbes),x.push(T.numLightProbeGrids),x.push(T.shadowMapType),x.push(T.toneMapping),x.push(T.numClippingPlanes),x.push(T.numClipIntersection),x.push(T.depthPacking)}function g(x,T){a.disableAll(),T.instancing&&a.enable(0),T.instancingColor&&a.enable(1),T.instancingMorph&&a.enable(2),T.matcap&&a.enable(3),T.envMap&&a.enable(4),T.normalMapObjectSpace&&a.enable(5),T.normalMapTangentSpace&&a.enable(6),T.clearcoat&&a.enable(7),T.iridescence&&a.enable(8),T.alphaTest&&a.enable(9),T.vertexColors&&a.enable(10),T.vertexAlphas&&a.enable(11),T.vertexUv1s&&a.enable(12),T.vertexUv2s&&a.enable(13),T.vertexUv3s&&a.enable(14),T.vertexTangents&&a.enable(15),T.anisotropy&&a.enable(16),T.alphaHash&&a.enable(17),T.batching&&a.enable(18),T.dispersion&&a.enable(19),T.retroreflection&&a.enable(24),T.diffuseRoughness&&a.enable(25),T.batchingColor&&a.enable(20),T.gradientMap&&a.enable(21),T.packedNormalMap&&a.enable(22),T.vertexNormals&&a.enable(23),x.push(a.mask),a.disableAll(),T.fog&&a.enable(0),T.useFog&&a.enable(1),T.flatShading&&a.enable(2),T.logarithmicDepthBuffer&&a.enable(3),T.reversedDepthBuffer&&a.enable(4),T.skinning&&a.enable(5),T.morphTargets&&a.enable(6),T.morphNormals&&a.enable(7),T.morphColors&&a.enable(8),T.premultipliedAlpha&&a.enable(9),T.shadowMapEnabled&&a.enable(10),T.doubleSided&&a.enable(11),T.flipSided&&a.enable(12),T.useDepthPacking&&a.enable(13),T.dithering&&a.enable(14),T.transmission&&a.enable(15),T.sheen&&a.enable(16),T.opaque&&a.enable(17),T.pointsUvs&&a.enable(18),T.decodeVideoTexture&&a.enable(19),T.decodeVideoTextureEmissive&&a.enable(20),T.alphaToCoverage&&a.enable(21),T.numLightProbeGrids>0&&a.enable(22),T.hasPositionAttribute&&a.enable(23),x.push(a.mask)}function M(x){let T=d[x.type],B;if(T){let U=qn[T];B=hd.clone(U.uniforms)}else B=x.uniforms;return B}function C(x,T){let B=h.get(T);return B!==void 0?++B.usedTimes:(B=new xv(i,T,x,s),c.push(B),h.set(T,B)),B}function w(x){if(--x.usedTimes===0){let T=c.indexOf(x);c[T]=c[c.length-1],c.pop(),h.delete(x.cacheKey),x.destroy()}}function E(x){o.remove(x)}function S(){o.dispose()}return{getParameters:p,getProgramCacheKey:v,getUniforms:M,acquireProgram:C,releaseProgram:w,releaseShaderCache:E,programs:c,dispose:S}}function wv(){let i=new WeakMap;function e(a){return i.has(a)}function t(a){let o=i.get(a);return o===void 0&&(o={},i.set(a,o)),o}function n(a){i.delete(a)}function s(a,o,l){i.get(a)[o]=l}function r(){i=new WeakMap}return{has:e,get:t,remove:n,update:s,dispose:r}}function Sv(i,e){return i.groupOrder!==e.groupOrder?i.groupOrder-e.groupOrder:i.renderOrder!==e.renderOrder?i.renderOrder-e.renderOrder:i.material.id!==e.material.id?i.material.id-e.material.id:i.materialVariant!==e.materialVariant?i.materialVariant-e.materialVariant:i.z!==e.z?i.z-e.z:i.id-e.id}function Pd(i,e){return i.groupOrder!==e.groupOrder?i.groupOrder-e.groupOrder:i.renderOrder!==e.renderOrder?i.renderOrder-e.renderOrder:i.z!==e.z?e.z-i.z:i.id-e.id}function Id(){let i=[],e=0,t=[],n=[],s=[];function r(){e=0,t.length=0,n.length=0,s.length=0}function a(d){let f=0;return d.isInstancedMesh&&(f+=2),d.isSkinnedMesh&&(f+=1),f}function o(d,f,p,v,m,g){let M=i[e];return M===void 0?(M={id:d.id,object:d,geometry:f,material:p,materialVariant:a(d),groupOrder:v,renderOrder:d.renderOrder,z:m,group:g},i[e]=M):(M.id=d.id,M.object=d,M.geometry=f,M.material=p,M.materialVariant=a(d),M.groupOrder=v,M.renderOrder=d.renderOrder,M.z=m,M.group=g),e++,M}function l(d,f,p,v,m,g,M){M.reversedDepth===!0&&(m=-m);let C=o(d,f,p,v,m,g);p.transmission>0?n.push(C):p.transparent===!0?s.push(C):t.push(C)}function c(d,f,p,v,m,g){let M=o(d,f,p,v,m,g);p.transmission>0?n.unshift(M):p.transparent===!0?s.unshift(M):t.unshift(M)}function h(d,f){t.length>1&&t.sort(d||Sv),n.length>1&&n.sort(f||Pd),s.length>1&&s.sort(f||Pd)}function u(){for(let d=e,f=i.length;d<f;d++){let p=i[d];if(p.id===null)break;p.id=null,p.object=null,p.geometry=null,p.material=null,p.group=null}}return{opaque:t,transmissive:n,transparent:s,init:r,push:l,unshift:c,finish:u,sort:h}}function Tv(){let i=new WeakMap;function e(n,s){let r=i.get(n),a;return r===void 0?(a=new Id,i.set(n,[a])):s>=r.length?(a=new Id,r.push(a)):a=r[s],a}function t(){i=new WeakMap}return{get:e,dispose:t}}function Ev(){let i={};return{get:function(e){if(i[e.id]!==void 0)return i[e.id];let t;switch(e.type){case"SunLight":case"DirectionalLight":t={direction:new k,color:new je};break;case"SpotLight":t={position:new k,direction:new k,color:new je,distance:0,coneCos:0,penumbraCos:0,decay:0};break;case"PointLight":t={position:new k,color:new je,distance:0,decay:0};break;case"HemisphereLight":t={direction:new k,skyColor:new je,groundColor:new je};break;case"RectAreaLight":t={color:new je,position:new k,halfWidth:new k,halfHeight:new k};break}return i[e.id]=t,t}}}function Av(){let i={};return{get:function(e){if(i[e.id]!==void 0)return i[e.id];let t;switch(e.type){case"SunLight":case"DirectionalLight":t={shadowIntensity:1,shadowBias:0,shadowNormalBias:0,shadowRadius:1,shadowMapSize:new et};break;case"SpotLight":t={shadowIntensity:1,shadowBias:0,shadowNormalBias:0,shadowRadius:1,shadowMapSize:new et};break;case"PointLight":t={shadowIntensity:1,shadowBias:0,shadowNormalBias:0,shadowRadius:1,shadowMapSize:new et,shadowCameraNear:1,shadowCameraFar:1e3};break}return i[e.id]=t,t}}}var Cv=0;function Rv(i,e){return(e.castShadow?2:0)-(i.castShadow?2:0)+(e.map?1:0)-(i.map?1:0)}function Pv(i){let e=new Ev,t=Av(),n={version:0,hash:{sunLength:-1,directionalLength:-1,pointLength:-1,spotLength:-1,rectAreaLength:-1,hemiLength:-1,numSunShadows:-1,numDirectionalShadows:-1,numPointShadows:-1,numSpotShadows:-1,numSpotMaps:-1,numLightProbes:-1},ambient:[0,0,0],probe:[],sun:[],sunShadow:[],sunShadowMap:[],sunShadowMatrix:[],sunShadowCascade:[],directional:[],directionalShadow:[],directionalShadowMap:[],directionalShadowMatrix:[],spot:[],spotLightMap:[],spotShadow:[],spotShadowMap:[],spotLightMatrix:[],rectArea:[],rectAreaLTC1:null,rectAreaLTC2:null,point:[],pointShadow:[],pointShadowMap:[],pointShadowMatrix:[],hemi:[],numSpotLightShadowsWithMaps:0,numLightProbes:0};for(let c=0;c<9;c++)n.probe.push(new k);let s=new k,r=new at,a=new at;function o(c){let h=0,u=0,d=0;for(let V=0;V<9;V++)n.probe[V].set(0,0,0);let f=0,p=0,v=0,m=0,g=0,M=0,C=0,w=0,E=0,S=0,x=0,T=0,B=0,U=0;c.sort(Rv);for(let V=0,q=c.length;V<q;V++){let I=c[V],X=I.color,J=I.intensity,$=I.distance,se=null;if(I.shadow&&I.shadow.map&&(I.shadow.map.texture.format===zi?se=I.shadow.map.texture:se=I.shadow.map.depthTexture||I.shadow.map.texture),I.isAmbientLight)h+=X.r*J,u+=X.g*J,d+=X.b*J;else if(I.isLightProbe){for(let L=0;L<9;L++)n.probe[L].addScaledVector(I.sh.coefficients[L],J);U++}else if(I.isSunLight){let L=e.get(I);if(L.color.copy(I.color).multiplyScalar(I.intensity),I.castShadow){let Y=I.shadow,ee=t.get(I);ee.shadowIntensity=Y.intensity,ee.shadowBias=Y.bias,ee.shadowNormalBias=Y.normalBias,ee.shadowRadius=Y.radius,ee.shadowMapSize.copy(Y.mapSize).multiply(Y.getFrameExtents()),n.sunShadow[p]=ee,n.sunShadowMap[p]=se;let le=Y.getViewportCount();for(let Ee=0;Ee<le;Ee++)n.sunShadowMatrix[v+Ee]=Y.getMatrix(Ee),n.sunShadowCascade[v+Ee]=Y._cascadeData[Ee];v+=le,p++}n.sun[f]=L,f++}else if(I.isDirectionalLight){let L=e.get(I);if(L.color.copy(I.color).multiplyScalar(I.intensity),I.castShadow){let Y=I.shadow,ee=t.get(I);ee.shadowIntensity=Y.intensity,ee.shadowBias=Y.bias,ee.shadowNormalBias=Y.normalBias,ee.shadowRadius=Y.radius,ee.shadowMapSize=Y.mapSize,n.directionalShadow[m]=ee,n.directionalShadowMap[m]=se,n.directionalShadowMatrix[m]=I.shadow.matrix,E++}n.directional[m]=L,m++}else if(I.isSpotLight){let L=e.get(I);L.position.setFromMatrixPosition(I.matrixWorld),L.color.copy(X).multiplyScalar(J),L.distance=$,L.coneCos=Math.cos(I.angle),L.penumbraCos=Math.cos(I.angle*(1-I.penumbra)),L.decay=I.decay,n.spot[M]=L;let Y=I.shadow;if(I.map&&(n.spotLightMap[T]=I.map,T++,Y.updateMatrices(I),I.castShadow&&B++),n.spotLightMatrix[M]=Y.matrix,I.castShadow){let ee=t.get(I);ee.shadowIntensity=Y.intensity,ee.shadowBias=Y.bias,ee.shadowNormalBias=Y.normalBias,ee.shadowRadius=Y.radius,ee.shadowMapSize=Y.mapSize,n.spotShadow[M]=ee,n.spotShadowMap[M]=se,x++}M++}else if(I.isRectAreaLight){let L=e.get(I);L.color.copy(X).multiplyScalar(J),L.halfWidth.set(I.width*.5,0,0),L.halfHeight.set(0,I.height*.5,0),n.rectArea[C]=L,C++}else if(I.isPointLight){let L=e.get(I);if(L.color.copy(I.color).multiplyScalar(I.intensity),L.distance=I.distance,L.decay=I.decay,I.castShadow){let Y=I.shadow,ee=t.get(I);ee.shadowIntensity=Y.intensity,ee.shadowBias=Y.bias,ee.shadowNormalBias=Y.normalBias,ee.shadowRadius=Y.radius,ee.shadowMapSize=Y.mapSize,ee.shadowCameraNear=Y.camera.near,ee.shadowCameraFar=Y.camera.far,n.pointShadow[g]=ee,n.pointShadowMap[g]=se,n.pointShadowMatrix[g]=I.shadow.matrix,S++}n.point[g]=L,g++}else if(I.isHemisphereLight){let L=e.get(I);L.skyColor.copy(I.color).multiplyScalar(J),L.groundColor.copy(I.groundColor).multiplyScalar(J),n.hemi[w]=L,w++}}C>0&&(i.has("OES_texture_float_linear")===!0?(n.rectAreaLTC1=ye.LTC_FLOAT_1,n.rectAreaLTC2=ye.LTC_FLOAT_2):(n.rectAreaLTC1=ye.LTC_HALF_1,n.rectAreaLTC2=ye.LTC_HALF_2)),n.ambient[0]=h,n.ambient[1]=u,n.ambient[2]=d;let N=n.hash;(N.sunLength!==f||N.directionalLength!==m||N.pointLength!==g||N.spotLength!==M||N.rectAreaLength!==C||N.hemiLength!==w||N.numSunShadows!==p||N.numDirectionalShadows!==E||N.numPointShadows!==S||N.numSpotShadows!==x||N.numSpotMaps!==T||N.numLightProbes!==U)&&(n.sun.length=f,n.directional.length=m,n.spot.length=M,n.rectArea.length=C,n.point.length=g,n.hemi.length=w,n.sunShadow.length=p,n.sunShadowMap.length=p,n.sunShadowMatrix.length=v,n.sunShadowCascade.length=v,n.directionalShadow.length=E,n.directionalShadowMap.length=E,n.directionalShadowMatrix.length=E,n.pointShadow.length=S,n.pointShadowMap.length=S,n.pointShadowMatrix.length=S,n.spotShadow.length=x,n.spotShadowMap.length=x,n.spotLightMatrix.length=x+T-B,n.spotLightMap.length=T,n.numSpotLightShadowsWithMaps=B,n.numLightProbes=U,N.sunLength=f,N.directionalLength=m,N.pointLength=g,N.spotLength=M,N.rectAreaLength=C,N.hemiLength=w,N.numSunShadows=p,N.numDirectionalShadows=E,N.numPointShadows=S,N.numSpotShadows=x,N.numSpotMaps=T,N.numLightProbes=U,n.version=Cv++)}function l(c,h){let u=0,d=0,f=0,p=0,v=0,m=0,g=h.matrixWorldInverse;for(let M=0,C=c.length;M<C;M++){let w=c[M];if(w.isSunLight){let E=n.sun[u];E.direction.setFromMatrixPosition(w.matrixWorld),E.direction.transformDirection(g),u++}else if(w.isDirectionalLight){let E=n.directional[d];E.direction.setFromMatrixPosition(w.matrixWorld),s.setFromMatrixPosition(w.target.matrixWorld),E.direction.sub(s),E.direction.transformDirection(g),d++}else if(w.isSpotLight){let E=n.spot[p];E.position.setFromMatrixPosition(w.matrixWorld),E.position.applyMatrix4(g),E.direction.setFromMatrixPosition(w.matrixWorld),s.setFromMatrixPosition(w.target.matrixWorld),E.direction.sub(s),E.direction.transformDirection(g),p++}else if(w.isRectAreaLight){let E=n.rectArea[v];E.position.setFromMatrixPosition(w.matrixWorld),E.position.applyMatrix4(g),a.identity(),r.copy(w.matrixWorld),r.premultiply(g),a.extractRotation(r),E.halfWidth.set(w.width*.5,0,0),E.halfHeight.set(0,w.height*.5,0),E.halfWidth.applyMatrix4(a),E.halfHeight.applyMatrix4(a),v++}else if(w.isPointLight){let E=n.point[f];E.position.setFromMatrixPosition(w.matrixWorld),E.position.applyMatrix4(g),f++}else if(w.isHemisphereLight){let E=n.hemi[m];E.direction.setFromMatrixPosition(w.matrixWorld),E.direction.transformDirection(g),m++}}}return{setup:o,setupView:l,state:n}}function Ld(i){let e=new Pv(i),t=[],n=[],s=[];function r(u){h.camera=u,t.length=0,n.length=0,s.length=0}function a(u){u.isLightProbeGrid?s.push(u):t.push(u)}function o(u){n.push(u)}function l(){e.setup(t),s.sort((u,d)=>u.priority-d.priority||u.id-d.id)}function c(u){e.setupView(t,u)}let h={lightsArray:t,shadowsArray:n,lightProbeGridArray:s,camera:null,lights:e,transmissionRenderTarget:{},textureUnits:0};return{init:r,state:h,setupLights:l,setupLightsView:c,pushLight:a,pushShadow:o}}function Iv(i){let e=new WeakMap;function t(s,r=0){let a=e.get(s),o;return a===void 0?(o=new Ld(i),e.set(s,[o])):r>=a.length?(o=new Ld(i),a.push(o)):o=a[r],o}function n(){e=new WeakMap}return{get:t,dispose:n}}var Lv=`void main() {
	gl_Position = vec4( position, 1.0 );
}`,Nv=`uniform sampler2D shadow_pass;
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
}`,Dv=[new k(1,0,0),new k(-1,0,0),new k(0,1,0),new k(0,-1,0),new k(0,0,1),new k(0,0,-1)],Uv=[new k(0,-1,0),new k(0,-1,0),new k(0,0,1),new k(0,0,-1),new k(0,-1,0),new k(0,-1,0)],Nd=new at,kr=new k,Hc=new k;function Fv(i,e,t){let n=new is,s=new et,r=new et,a=new _t,o=new to,l=new no,c={},h=t.maxTextureSize,u={[Bi]:Zt,[Zt]:Bi,[Wn]:Wn},d=new Hn({defines:{VSM_SAMPLES:8},uniforms:{shadow_pass:{value:null},resolution:{value:new et},radius:{value:4}},vertexShader:Lv,fragmentShader:Nv}),f=d.clone();f.defines.HORIZONTAL_PASS=1;let p=new Nn;p.setAttribute("position",new qt(new Float32Array([-1,-1,.5,3,-1,.5,-1,3,.5]),3));let v=new vt(p,d),m=this;this.enabled=!1,this.autoUpdate=!0,this.needsUpdate=!1,this.type=Rr;let g=this.type;this.render=function(S,x,T){if(m.enabled===!1||m.autoUpdate===!1&&m.needsUpdate===!1||S.length===0)return;this.type===Au&&(Oe("WebGLShadowMap: PCFSoftShadowMap has been removed. Using PCFShadowMap instead."),this.type=Rr);let B=i.getRenderTarget(),U=i.getActiveCubeFace(),N=i.getActiveMipmapLevel(),V=i.state;V.setBlending(rs),V.buffers.depth.getReversed()===!0?V.buffers.color.setClear(0,0,0,0):V.buffers.color.setClear(1,1,1,1),V.buffers.depth.setTest(!0),V.setScissorTest(!1);let q=g!==this.type;q&&x.traverse(function(I){I.material&&(Array.isArray(I.material)?I.material.forEach(X=>X.needsUpdate=!0):I.material.needsUpdate=!0)});for(let I=0,X=S.length;I<X;I++){let J=S[I],$=J.shadow;if($===void 0){Oe("WebGLShadowMap:",J,"has no shadow.");continue}if($.autoUpdate===!1&&$.needsUpdate===!1)continue;s.copy($.mapSize);let se=$.getFrameExtents();s.multiply(se),r.copy($.mapSize),(s.x>h||s.y>h)&&(s.x>h&&(r.x=Math.floor(h/se.x),s.x=r.x*se.x,$.mapSize.x=r.x),s.y>h&&(r.y=Math.floor(h/se.y),s.y=r.y*se.y,$.mapSize.y=r.y));let L=i.state.buffers.depth.getReversed();if($.camera._reversedDepth=L,$.map===null||q===!0){if($.map!==null&&($.map.depthTexture!==null&&($.map.depthTexture.dispose(),$.map.depthTexture=null),$.map.dispose()),this.type===Hs){if(J.isPointLight){Oe("WebGLShadowMap: VSM shadow maps are not supported for PointLights. Use PCF or BasicShadowMap instead.");continue}$.map=new un(s.x,s.y,{format:zi,type:Fn,minFilter:Yt,magFilter:Yt,generateMipmaps:!1}),$.map.texture.name=J.name+".shadowMap",$.map.depthTexture=new hi(s.x,s.y,Un),$.map.depthTexture.name=J.name+".shadowMapDepth",$.map.depthTexture.format=ci,$.map.depthTexture.compareFunction=null,$.map.depthTexture.minFilter=Ut,$.map.depthTexture.magFilter=Ut}else J.isPointLight?($.map=new zr(s.x),$.map.depthTexture=new wr(s.x,Dn)):($.map=new un(s.x,s.y),$.map.depthTexture=new hi(s.x,s.y,Dn)),$.map.depthTexture.name=J.name+".shadowMap",$.map.depthTexture.format=ci,this.type===Rr?($.map.depthTexture.compareFunction=L?Nc:Lc,$.map.depthTexture.minFilter=Yt,$.map.depthTexture.magFilter=Yt):($.map.depthTexture.compareFunction=null,$.map.depthTexture.minFilter=Ut,$.map.depthTexture.magFilter=Ut);$.camera.updateProjectionMatrix()}$.map.isWebGLCubeRenderTarget!==!0&&($.map.width!==s.x||$.map.height!==s.y)&&$.map.setSize(s.x,s.y);let Y=$.map.isWebGLCubeRenderTarget?6:$.getViewportCount();J.isPointLight!==!0&&$.updateMatrices(J,T);let ee=($.camera.layers.mask&4294967294)!==0?$.camera.layers:T.layers;for(let le=0;le<Y;le++){let Ee=$.getCamera(le);if(J.isPointLight){let j=$.camera,be=$.matrix,Ae=J.distance||j.far;Ae!==j.far&&(j.far=Ae,j.updateProjectionMatrix()),kr.setFromMatrixPosition(J.matrixWorld),j.position.copy(kr),Hc.copy(j.position),Hc.add(Dv[le]),j.up.copy(Uv[le]),j.lookAt(Hc),j.updateMatrixWorld(),be.makeTranslation(-kr.x,-kr.y,-kr.z),Nd.multiplyMatrices(j.projectionMatrix,j.matrixWorldInverse),$._frustum.setFromProjectionMatrix(Nd,j.coordinateSystem,j.reversedDepth)}if($.map.isWebGLCubeRenderTarget)i.setRenderTarget($.map,le),i.clear();else{le===0&&(i.setRenderTarget($.map),i.clear());let j=$.getViewport(le);a.set(r.x*j.x,r.y*j.y,r.x*j.z,r.y*j.w),V.viewport(a)}n=$.getFrustum(le),w(x,T,Ee,J,ee,this.type)}$.isPointLightShadow!==!0&&this.type===Hs&&M($,T),$.needsUpdate=!1}g=this.type,m.needsUpdate=!1,i.setRenderTarget(B,U,N)};function M(S,x){let T=e.update(v);d.defines.VSM_SAMPLES!==S.blurSamples&&(d.defines.VSM_SAMPLES=S.blurSamples,f.defines.VSM_SAMPLES=S.blurSamples,d.needsUpdate=!0,f.needsUpdate=!0),S.mapPass===null?S.mapPass=new un(s.x,s.y,{format:zi,type:Fn}):(S.mapPass.width!==S.map.width||S.mapPass.height!==S.map.height)&&S.mapPass.setSize(S.map.width,S.map.height),d.uniforms.shadow_pass.value=S.map.depthTexture,d.uniforms.resolution.value.set(S.map.width,S.map.height),d.uniforms.radius.value=S.radius,i.setRenderTarget(S.mapPass),i.clear(),i.renderBufferDirect(x,null,T,d,v,null),f.uniforms.shadow_pass.value=S.mapPass.texture,f.uniforms.resolution.value.set(S.map.width,S.map.height),f.uniforms.radius.value=S.radius,i.setRenderTarget(S.map),i.clear(),i.renderBufferDirect(x,null,T,f,v,null)}function C(S,x,T,B){let U=null,N=T.isPointLight===!0?S.customDistanceMaterial:S.customDepthMaterial;if(N!==void 0)U=N;else if(U=T.isPointLight===!0?l:o,i.localClippingEnabled&&x.clipShadows===!0&&Array.isArray(x.clippingPlanes)&&x.clippingPlanes.length!==0||x.displacementMap&&x.displacementScale!==0||x.alphaMap&&x.alphaTest>0||x.map&&x.alphaTest>0||x.alphaToCoverage===!0){let V=U.uuid,q=x.uuid,I=c[V];I===void 0&&(I={},c[V]=I);let X=I[q];X===void 0&&(X=U.clone(),I[q]=X,x.addEventListener("dispose",E)),U=X}if(U.visible=x.visible,U.wireframe=x.wireframe,B===Hs?U.side=x.shadowSide!==null?x.shadowSide:x.side:U.side=x.shadowSide!==null?x.shadowSide:u[x.side],U.alphaMap=x.alphaMap,U.alphaTest=x.alphaToCoverage===!0?.5:x.alphaTest,U.map=x.map,U.clipShadows=x.clipShadows,U.clippingPlanes=x.clippingPlanes,U.clipIntersection=x.clipIntersection,U.displacementMap=x.displacementMap,U.displacementScale=x.displacementScale,U.displacementBias=x.displacementBias,U.wireframeLinewidth=x.wireframeLinewidth,U.linewidth=x.linewidth,T.isPointLight===!0&&U.isMeshDistanceMaterial===!0){let V=i.properties.get(U);V.light=T}return U}function w(S,x,T,B,U,N){if(S.visible===!1)return;if(S.layers.test(U)&&(S.isMesh||S.isLine||S.isPoints)&&(S.castShadow||S.receiveShadow&&N===Hs)&&(!S.frustumCulled||S.intersectsFrustum(n))){S.modelViewMatrix.multiplyMatrices(T.matrixWorldInverse,S.matrixWorld);let I=e.update(S),X=S.material;if(Array.isArray(X)){let J=I.groups;for(let $=0,se=J.length;$<se;$++){let L=J[$],Y=X[L.materialIndex];if(Y&&Y.visible){let ee=C(S,Y,B,N);S.onBeforeShadow(i,S,x,T,I,ee,L),i.renderBufferDirect(T,null,I,ee,S,L),S.onAfterShadow(i,S,x,T,I,ee,L)}}}else if(X.visible){let J=C(S,X,B,N);S.onBeforeShadow(i,S,x,T,I,J,null),i.renderBufferDirect(T,null,I,J,S,null),S.onAfterShadow(i,S,x,T,I,J,null)}}let q=S.children;for(let I=0,X=q.length;I<X;I++)w(q[I],x,T,B,U,N)}function E(S){S.target.removeEventListener("dispose",E);for(let T in c){let B=c[T],U=S.target.uuid;U in B&&(B[U].dispose(),delete B[U])}}}function Ov(i,e){function t(){let P=!1,ne=new _t,K=null,de=new _t(0,0,0,0);return{setMask:function(oe){K!==oe&&!P&&(i.colorMask(oe,oe,oe,oe),K=oe)},setLocked:function(oe){P=oe},setClear:function(oe,he,Ie,Xe,ae){ae===!0&&(oe*=Xe,he*=Xe,Ie*=Xe),ne.set(oe,he,Ie,Xe),de.equals(ne)===!1&&(i.clearColor(oe,he,Ie,Xe),de.copy(ne))},reset:function(){P=!1,K=null,de.set(-1,0,0,0)}}}function n(){let P=!1,ne=!1,K=null,de=null,oe=null;return{setReversed:function(he){if(ne!==he){let Ie=e.get("EXT_clip_control");he?Ie.clipControlEXT(Ie.LOWER_LEFT_EXT,Ie.ZERO_TO_ONE_EXT):Ie.clipControlEXT(Ie.LOWER_LEFT_EXT,Ie.NEGATIVE_ONE_TO_ONE_EXT),ne=he;let Xe=oe;oe=null,this.setClear(Xe)}},getReversed:function(){return ne},setTest:function(he){he?Me(i.DEPTH_TEST):We(i.DEPTH_TEST)},setMask:function(he){K!==he&&!P&&(i.depthMask(he),K=he)},setFunc:function(he){if(ne&&(he=od[he]),de!==he){switch(he){case Ua:i.depthFunc(i.NEVER);break;case Fa:i.depthFunc(i.ALWAYS);break;case Oa:i.depthFunc(i.LESS);break;case Ds:i.depthFunc(i.LEQUAL);break;case ka:i.depthFunc(i.EQUAL);break;case Ba:i.depthFunc(i.GEQUAL);break;case za:i.depthFunc(i.GREATER);break;case Va:i.depthFunc(i.NOTEQUAL);break;default:i.depthFunc(i.LEQUAL)}de=he}},setLocked:function(he){P=he},setClear:function(he){oe!==he&&(oe=he,ne&&(he=1-he),i.clearDepth(he))},reset:function(){P=!1,K=null,de=null,oe=null,ne=!1}}}function s(){let P=!1,ne=null,K=null,de=null,oe=null,he=null,Ie=null,Xe=null,ae=null;return{setTest:function(Le){P||(Le?Me(i.STENCIL_TEST):We(i.STENCIL_TEST))},setMask:function(Le){ne!==Le&&!P&&(i.stencilMask(Le),ne=Le)},setFunc:function(Le,$e,xe){(K!==Le||de!==$e||oe!==xe)&&(i.stencilFunc(Le,$e,xe),K=Le,de=$e,oe=xe)},setOp:function(Le,$e,xe){(he!==Le||Ie!==$e||Xe!==xe)&&(i.stencilOp(Le,$e,xe),he=Le,Ie=$e,Xe=xe)},setLocked:function(Le){P=Le},setClear:function(Le){ae!==Le&&(i.clearStencil(Le),ae=Le)},reset:function(){P=!1,ne=null,K=null,de=null,oe=null,he=null,Ie=null,Xe=null,ae=null}}}let r=new t,a=new n,o=new s,l={},c=new WeakMap,h={},u={},d={},f=new WeakMap,p=[],v=null,m=!1,g=null,M=null,C=null,w=null,E=null,S=null,x=null,T=new je(0,0,0),B=0,U=!1,N=null,V=null,q=null,I=null,X=null,J=i.getParameter(i.MAX_COMBINED_TEXTURE_IMAGE_UNITS),$=!1,se=0,L=i.getParameter(i.VERSION);L.indexOf("WebGL")!==-1?(se=parseFloat(/^WebGL (\d)/.exec(L)[1]),$=se>=1):L.indexOf("OpenGL ES")!==-1&&(se=parseFloat(/^OpenGL ES (\d)/.exec(L)[1]),$=se>=2);let Y=null,ee={},le=i.getParameter(i.SCISSOR_BOX),Ee=i.getParameter(i.VIEWPORT),j=new _t().fromArray(le),be=new _t().fromArray(Ee);function Ae(P,ne,K,de){let oe=new Uint8Array(4),he=i.createTexture();i.bindTexture(P,he),i.texParameteri(P,i.TEXTURE_MIN_FILTER,i.NEAREST),i.texParameteri(P,i.TEXTURE_MAG_FILTER,i.NEAREST);for(let Ie=0;Ie<K;Ie++)P===i.TEXTURE_3D||P===i.TEXTURE_2D_ARRAY?i.texImage3D(ne,0,i.RGBA,1,1,de,0,i.RGBA,i.UNSIGNED_BYTE,oe):i.texImage2D(ne+Ie,0,i.RGBA,1,1,0,i.RGBA,i.UNSIGNED_BYTE,oe);return he}let Ue={};Ue[i.TEXTURE_2D]=Ae(i.TEXTURE_2D,i.TEXTURE_2D,1),Ue[i.TEXTURE_CUBE_MAP]=Ae(i.TEXTURE_CUBE_MAP,i.TEXTURE_CUBE_MAP_POSITIVE_X,6),Ue[i.TEXTURE_2D_ARRAY]=Ae(i.TEXTURE_2D_ARRAY,i.TEXTURE_2D_ARRAY,1,1),Ue[i.TEXTURE_3D]=Ae(i.TEXTURE_3D,i.TEXTURE_3D,1,1),r.setClear(0,0,0,1),a.setClear(1),o.setClear(0),Me(i.DEPTH_TEST),a.setFunc(Ds),Jt(!1),pt(cc),Me(i.CULL_FACE),Ft(rs);function Me(P){h[P]!==!0&&(i.enable(P),h[P]=!0)}function We(P){h[P]!==!1&&(i.disable(P),h[P]=!1)}function Mt(P,ne){return d[P]!==ne?(i.bindFramebuffer(P,ne),d[P]=ne,P===i.DRAW_FRAMEBUFFER&&(d[i.FRAMEBUFFER]=ne),P===i.FRAMEBUFFER&&(d[i.DRAW_FRAMEBUFFER]=ne),!0):!1}function ke(P,ne){let K=p,de=!1;if(P){K=f.get(ne),K===void 0&&(K=[],f.set(ne,K));let oe=P.textures;if(K.length!==oe.length||K[0]!==i.COLOR_ATTACHMENT0){for(let he=0,Ie=oe.length;he<Ie;he++)K[he]=i.COLOR_ATTACHMENT0+he;K.length=oe.length,de=!0}}else K[0]!==i.BACK&&(K[0]=i.BACK,de=!0);de&&i.drawBuffers(K)}function st(P){return v!==P?(i.useProgram(P),v=P,!0):!1}let ot={[as]:i.FUNC_ADD,[Ru]:i.FUNC_SUBTRACT,[Pu]:i.FUNC_REVERSE_SUBTRACT};ot[Iu]=i.MIN,ot[Lu]=i.MAX;let Ye={[Nu]:i.ZERO,[Du]:i.ONE,[Uu]:i.SRC_COLOR,[fc]:i.SRC_ALPHA,[Vu]:i.SRC_ALPHA_SATURATE,[Bu]:i.DST_COLOR,[Ou]:i.DST_ALPHA,[Fu]:i.ONE_MINUS_SRC_COLOR,[pc]:i.ONE_MINUS_SRC_ALPHA,[zu]:i.ONE_MINUS_DST_COLOR,[ku]:i.ONE_MINUS_DST_ALPHA,[Gu]:i.CONSTANT_COLOR,[Hu]:i.ONE_MINUS_CONSTANT_COLOR,[Wu]:i.CONSTANT_ALPHA,[$u]:i.ONE_MINUS_CONSTANT_ALPHA};function Ft(P,ne,K,de,oe,he,Ie,Xe,ae,Le){if(P===rs){m===!0&&(We(i.BLEND),m=!1);return}if(m===!1&&(Me(i.BLEND),m=!0),P!==Cu){if(P!==g||Le!==U){if((M!==as||E!==as)&&(i.blendEquation(i.FUNC_ADD),M=as,E=as),Le)switch(P){case Ws:i.blendFuncSeparate(i.ONE,i.ONE_MINUS_SRC_ALPHA,i.ONE,i.ONE_MINUS_SRC_ALPHA);break;case hc:i.blendFunc(i.ONE,i.ONE);break;case uc:i.blendFuncSeparate(i.ZERO,i.ONE_MINUS_SRC_COLOR,i.ZERO,i.ONE);break;case dc:i.blendFuncSeparate(i.DST_COLOR,i.ONE_MINUS_SRC_ALPHA,i.ZERO,i.ONE);break;default:ze("WebGLState: Invalid blending: ",P);break}else switch(P){case Ws:i.blendFuncSeparate(i.SRC_ALPHA,i.ONE_MINUS_SRC_ALPHA,i.ONE,i.ONE_MINUS_SRC_ALPHA);break;case hc:i.blendFuncSeparate(i.SRC_ALPHA,i.ONE,i.ONE,i.ONE);break;case uc:ze("WebGLState: SubtractiveBlending requires material.premultipliedAlpha = true");break;case dc:ze("WebGLState: MultiplyBlending requires material.premultipliedAlpha = true");break;default:ze("WebGLState: Invalid blending: ",P);break}C=null,w=null,S=null,x=null,T.set(0,0,0),B=0,g=P,U=Le}return}oe=oe||ne,he=he||K,Ie=Ie||de,(ne!==M||oe!==E)&&(i.blendEquationSeparate(ot[ne],ot[oe]),M=ne,E=oe),(K!==C||de!==w||he!==S||Ie!==x)&&(i.blendFuncSeparate(Ye[K],Ye[de],Ye[he],Ye[Ie]),C=K,w=de,S=he,x=Ie),(Xe.equals(T)===!1||ae!==B)&&(i.blendColor(Xe.r,Xe.g,Xe.b,ae),T.copy(Xe),B=ae),g=P,U=!1}function Et(P,ne){P.side===Wn?We(i.CULL_FACE):Me(i.CULL_FACE);let K=P.side===Zt;ne&&(K=!K),Jt(K),P.blending===Ws&&P.transparent===!1?Ft(rs):Ft(P.blending,P.blendEquation,P.blendSrc,P.blendDst,P.blendEquationAlpha,P.blendSrcAlpha,P.blendDstAlpha,P.blendColor,P.blendAlpha,P.premultipliedAlpha),a.setFunc(P.depthFunc),a.setTest(P.depthTest),a.setMask(P.depthWrite),r.setMask(P.colorWrite);let de=P.stencilWrite;o.setTest(de),de&&(o.setMask(P.stencilWriteMask),o.setFunc(P.stencilFunc,P.stencilRef,P.stencilFuncMask),o.setOp(P.stencilFail,P.stencilZFail,P.stencilZPass)),Pt(P.polygonOffset,P.polygonOffsetFactor,P.polygonOffsetUnits),P.alphaToCoverage===!0?Me(i.SAMPLE_ALPHA_TO_COVERAGE):We(i.SAMPLE_ALPHA_TO_COVERAGE)}function Jt(P){N!==P&&(P?i.frontFace(i.CW):i.frontFace(i.CCW),N=P)}function pt(P){P!==Tu?(Me(i.CULL_FACE),P!==V&&(P===cc?i.cullFace(i.BACK):P===Eu?i.cullFace(i.FRONT):i.cullFace(i.FRONT_AND_BACK))):We(i.CULL_FACE),V=P}function kn(P){P!==q&&($&&i.lineWidth(P),q=P)}function Pt(P,ne,K){P?(Me(i.POLYGON_OFFSET_FILL),(I!==ne||X!==K)&&(I=ne,X=K,a.getReversed()&&(ne=-ne,K=-K),i.polygonOffset(ne,K))):We(i.POLYGON_OFFSET_FILL)}function gn(P){P?Me(i.SCISSOR_TEST):We(i.SCISSOR_TEST)}function _n(P){P===void 0&&(P=i.TEXTURE0+J-1),Y!==P&&(i.activeTexture(P),Y=P)}function vn(P,ne,K){K===void 0&&(Y===null?K=i.TEXTURE0+J-1:K=Y);let de=ee[K];de===void 0&&(de={type:void 0,texture:void 0},ee[K]=de),(de.type!==P||de.texture!==ne)&&(Y!==K&&(i.activeTexture(K),Y=K),i.bindTexture(P,ne||Ue[P]),de.type=P,de.texture=ne)}function F(){let P=ee[Y];P!==void 0&&P.type!==void 0&&(i.bindTexture(P.type,null),P.type=void 0,P.texture=void 0)}function xn(){try{i.compressedTexImage2D(...arguments)}catch(P){ze("WebGLState:",P)}}function dt(){try{i.compressedTexImage3D(...arguments)}catch(P){ze("WebGLState:",P)}}function ft(){try{i.texSubImage2D(...arguments)}catch(P){ze("WebGLState:",P)}}function _e(){try{i.texSubImage3D(...arguments)}catch(P){ze("WebGLState:",P)}}function At(){try{i.compressedTexSubImage2D(...arguments)}catch(P){ze("WebGLState:",P)}}function Fe(){try{i.compressedTexSubImage3D(...arguments)}catch(P){ze("WebGLState:",P)}}function Ge(){try{i.texStorage2D(...arguments)}catch(P){ze("WebGLState:",P)}}function A(){try{i.texStorage3D(...arguments)}catch(P){ze("WebGLState:",P)}}function y(){try{i.texImage2D(...arguments)}catch(P){ze("WebGLState:",P)}}function H(){try{i.texImage3D(...arguments)}catch(P){ze("WebGLState:",P)}}function re(P){return u[P]!==void 0?u[P]:i.getParameter(P)}function ie(P,ne){u[P]!==ne&&(i.pixelStorei(P,ne),u[P]=ne)}function ce(P){j.equals(P)===!1&&(i.scissor(P.x,P.y,P.z,P.w),j.copy(P))}function pe(P){be.equals(P)===!1&&(i.viewport(P.x,P.y,P.z,P.w),be.copy(P))}function Q(P,ne){let K=c.get(ne);K===void 0&&(K=new WeakMap,c.set(ne,K));let de=K.get(P);de===void 0&&(de=i.getUniformBlockIndex(ne,P.name),i.uniformBlockBinding(ne,de,de),K.set(P,de))}function te(P,ne,K){let oe=c.get(ne).get(P);l[oe]!==K&&(i.bindBufferBase(i.UNIFORM_BUFFER,oe,K),l[oe]=K)}function ue(){i.disable(i.BLEND),i.disable(i.CULL_FACE),i.disable(i.DEPTH_TEST),i.disable(i.POLYGON_OFFSET_FILL),i.disable(i.SCISSOR_TEST),i.disable(i.STENCIL_TEST),i.disable(i.SAMPLE_ALPHA_TO_COVERAGE),i.blendEquation(i.FUNC_ADD),i.blendFunc(i.ONE,i.ZERO),i.blendFuncSeparate(i.ONE,i.ZERO,i.ONE,i.ZERO),i.blendColor(0,0,0,0),i.colorMask(!0,!0,!0,!0),i.clearColor(0,0,0,0),i.depthMask(!0),i.depthFunc(i.LESS),a.setReversed(!1),i.clearDepth(1),i.stencilMask(4294967295),i.stencilFunc(i.ALWAYS,0,4294967295),i.stencilOp(i.KEEP,i.KEEP,i.KEEP),i.clearStencil(0),i.cullFace(i.BACK),i.frontFace(i.CCW),i.polygonOffset(0,0),i.activeTexture(i.TEXTURE0),i.bindFramebuffer(i.FRAMEBUFFER,null),i.bindFramebuffer(i.DRAW_FRAMEBUFFER,null),i.bindFramebuffer(i.READ_FRAMEBUFFER,null),i.useProgram(null),i.lineWidth(1),i.scissor(0,0,i.canvas.width,i.canvas.height),i.viewport(0,0,i.canvas.width,i.canvas.height),i.pixelStorei(i.PACK_ALIGNMENT,4),i.pixelStorei(i.UNPACK_ALIGNMENT,4),i.pixelStorei(i.UNPACK_FLIP_Y_WEBGL,!1),i.pixelStorei(i.UNPACK_PREMULTIPLY_ALPHA_WEBGL,!1),i.pixelStorei(i.UNPACK_COLORSPACE_CONVERSION_WEBGL,i.BROWSER_DEFAULT_WEBGL),i.pixelStorei(i.PACK_ROW_LENGTH,0),i.pixelStorei(i.PACK_SKIP_PIXELS,0),i.pixelStorei(i.PACK_SKIP_ROWS,0),i.pixelStorei(i.UNPACK_ROW_LENGTH,0),i.pixelStorei(i.UNPACK_IMAGE_HEIGHT,0),i.pixelStorei(i.UNPACK_SKIP_PIXELS,0),i.pixelStorei(i.UNPACK_SKIP_ROWS,0),i.pixelStorei(i.UNPACK_SKIP_IMAGES,0),h={},u={},Y=null,ee={},d={},l={},f=new WeakMap,p=[],v=null,m=!1,g=null,M=null,C=null,w=null,E=null,S=null,x=null,T=new je(0,0,0),B=0,U=!1,N=null,V=null,q=null,I=null,X=null,j.set(0,0,i.canvas.width,i.canvas.height),be.set(0,0,i.canvas.width,i.canvas.height),r.reset(),a.reset(),o.reset()}return{buffers:{color:r,depth:a,stencil:o},enable:Me,disable:We,bindFramebuffer:Mt,drawBuffers:ke,useProgram:st,setBlending:Ft,setMaterial:Et,setFlipSided:Jt,setCullFace:pt,setLineWidth:kn,setPolygonOffset:Pt,setScissorTest:gn,activeTexture:_n,bindTexture:vn,unbindTexture:F,compressedTexImage2D:xn,compressedTexImage3D:dt,texImage2D:y,texImage3D:H,pixelStorei:ie,getParameter:re,updateUBOMapping:Q,uniformBlockBinding:te,texStorage2D:Ge,texStorage3D:A,texSubImage2D:ft,texSubImage3D:_e,compressedTexSubImage2D:At,compressedTexSubImage3D:Fe,scissor:ce,viewport:pe,reset:ue}}function kv(i,e,t,n,s,r,a){let o=e.has("WEBGL_multisampled_render_to_texture")?e.get("WEBGL_multisampled_render_to_texture"):null,l=typeof navigator>"u"?!1:/OculusBrowser/g.test(navigator.userAgent),c=new et,h=new WeakMap,u=new Set,d,f=new WeakMap,p=new Set,v=new FinalizationRegistry(A=>p.delete(A)),m=!1;try{m=typeof OffscreenCanvas<"u"&&new OffscreenCanvas(1,1).getContext("2d")!==null}catch{}function g(A,y){return m?new OffscreenCanvas(A,y):vr("canvas")}function M(A,y,H){let re=1,ie=Ge(A);if((ie.width>H||ie.height>H)&&(re=H/Math.max(ie.width,ie.height)),re<1)if(typeof HTMLImageElement<"u"&&A instanceof HTMLImageElement||typeof HTMLCanvasElement<"u"&&A instanceof HTMLCanvasElement||typeof ImageBitmap<"u"&&A instanceof ImageBitmap||typeof VideoFrame<"u"&&A instanceof VideoFrame){let ce=Math.floor(re*ie.width),pe=Math.floor(re*ie.height);d===void 0&&(d=g(ce,pe));let Q=y?g(ce,pe):d;return Q.width=ce,Q.height=pe,Q.getContext("2d").drawImage(A,0,0,ce,pe),Oe("WebGLRenderer: Texture has been resized from ("+ie.width+"x"+ie.height+") to ("+ce+"x"+pe+")."),Q}else return"data"in A&&Oe("WebGLRenderer: Image in DataTexture is too big ("+ie.width+"x"+ie.height+")."),A;return A}function C(A){return A.generateMipmaps}function w(A){i.generateMipmap(A)}function E(A){return A.isWebGLCubeRenderTarget?i.TEXTURE_CUBE_MAP:A.isWebGL3DRenderTarget?i.TEXTURE_3D:A.isWebGLArrayRenderTarget||A.isCompressedArrayTexture?i.TEXTURE_2D_ARRAY:i.TEXTURE_2D}function S(A,y,H,re,ie,ce=!1){if(A!==null){if(i[A]!==void 0)return i[A];Oe("WebGLRenderer: Attempt to use non-existing WebGL internal format '"+A+"'")}let pe;re&&(pe=e.get("EXT_texture_norm16"),pe||Oe("WebGLRenderer: Unable to use normalized textures without EXT_texture_norm16 extension"));let Q=y;if(y===i.RED&&(H===i.FLOAT&&(Q=i.R32F),H===i.HALF_FLOAT&&(Q=i.R16F),H===i.UNSIGNED_BYTE&&(Q=i.R8),H===i.UNSIGNED_SHORT&&pe&&(Q=pe.R16_EXT),H===i.SHORT&&pe&&(Q=pe.R16_SNORM_EXT)),y===i.RED_INTEGER&&(H===i.UNSIGNED_BYTE&&(Q=i.R8UI),H===i.UNSIGNED_SHORT&&(Q=i.R16UI),H===i.UNSIGNED_INT&&(Q=i.R32UI),H===i.BYTE&&(Q=i.R8I),H===i.SHORT&&(Q=i.R16I),H===i.INT&&(Q=i.R32I)),y===i.RG&&(H===i.FLOAT&&(Q=i.RG32F),H===i.HALF_FLOAT&&(Q=i.RG16F),H===i.UNSIGNED_BYTE&&(Q=i.RG8),H===i.UNSIGNED_SHORT&&pe&&(Q=pe.RG16_EXT),H===i.SHORT&&pe&&(Q=pe.RG16_SNORM_EXT)),y===i.RG_INTEGER&&(H===i.UNSIGNED_BYTE&&(Q=i.RG8UI),H===i.UNSIGNED_SHORT&&(Q=i.RG16UI),H===i.UNSIGNED_INT&&(Q=i.RG32UI),H===i.BYTE&&(Q=i.RG8I),H===i.SHORT&&(Q=i.RG16I),H===i.INT&&(Q=i.RG32I)),y===i.RGB_INTEGER&&(H===i.UNSIGNED_BYTE&&(Q=i.RGB8UI),H===i.UNSIGNED_SHORT&&(Q=i.RGB16UI),H===i.UNSIGNED_INT&&(Q=i.RGB32UI),H===i.BYTE&&(Q=i.RGB8I),H===i.SHORT&&(Q=i.RGB16I),H===i.INT&&(Q=i.RGB32I)),y===i.RGBA_INTEGER&&(H===i.UNSIGNED_BYTE&&(Q=i.RGBA8UI),H===i.UNSIGNED_SHORT&&(Q=i.RGBA16UI),H===i.UNSIGNED_INT&&(Q=i.RGBA32UI),H===i.BYTE&&(Q=i.RGBA8I),H===i.SHORT&&(Q=i.RGBA16I),H===i.INT&&(Q=i.RGBA32I)),y===i.RGB&&(H===i.UNSIGNED_SHORT&&pe&&(Q=pe.RGB16_EXT),H===i.SHORT&&pe&&(Q=pe.RGB16_SNORM_EXT),H===i.UNSIGNED_INT_5_9_9_9_REV&&(Q=i.RGB9_E5),H===i.UNSIGNED_INT_10F_11F_11F_REV&&(Q=i.R11F_G11F_B10F)),y===i.RGBA){let te=ce?gr:Ke.getTransfer(ie);H===i.FLOAT&&(Q=i.RGBA32F),H===i.HALF_FLOAT&&(Q=i.RGBA16F),H===i.UNSIGNED_BYTE&&(Q=te===it?i.SRGB8_ALPHA8:i.RGBA8),H===i.UNSIGNED_SHORT&&pe&&(Q=pe.RGBA16_EXT),H===i.SHORT&&pe&&(Q=pe.RGBA16_SNORM_EXT),H===i.UNSIGNED_SHORT_4_4_4_4&&(Q=i.RGBA4),H===i.UNSIGNED_SHORT_5_5_5_1&&(Q=i.RGB5_A1)}return(Q===i.R16F||Q===i.R32F||Q===i.RG16F||Q===i.RG32F||Q===i.RGBA16F||Q===i.RGBA32F)&&e.get("EXT_color_buffer_float"),Q}function x(A,y){let H;return A?y===null||y===Dn||y===ls?H=i.DEPTH24_STENCIL8:y===Un?H=i.DEPTH32F_STENCIL8:y===Xs&&(H=i.DEPTH24_STENCIL8,Oe("DepthTexture: 16 bit depth attachment is not supported with stencil. Using 24-bit attachment.")):y===null||y===Dn||y===ls?H=i.DEPTH_COMPONENT24:y===Un?H=i.DEPTH_COMPONENT32F:y===Xs&&(H=i.DEPTH_COMPONENT16),H}function T(A,y){return C(A)===!0||A.isFramebufferTexture&&A.minFilter!==Ut&&A.minFilter!==Yt?Math.log2(Math.max(y.width,y.height))+1:A.mipmaps.length>0?A.mipmaps.length:A.isCompressedTexture&&Array.isArray(A.image)?y.mipmaps.length:1}function B(A){let y=new WeakRef(A);n.get(A).__ref=y,p.add(y),v.register(A,y,y)}function U(A){let y=n.get(A).__ref;y!==void 0&&(p.delete(y),v.unregister(y))}function N(A){q(A.target)}function V(A){I(A.target)}function q(A){A.removeEventListener("dispose",N),U(A),J(A),A.isVideoTexture&&h.delete(A),A.isHTMLTexture&&u.delete(A)}function I(A){A.removeEventListener("dispose",V),U(A),se(A)}function X(){for(let A of p){let y=A.deref();y!==void 0&&(y.isRenderTarget===!0?I(y):q(y))}p.clear(),u.clear()}function J(A){let y=n.get(A);if(y.__webglInit===void 0)return;let H=A.source,re=f.get(H);if(re){let ie=re[y.__cacheKey];ie.usedTimes--,ie.usedTimes===0&&$(A),Object.keys(re).length===0&&f.delete(H)}n.remove(A)}function $(A){let y=n.get(A);i.deleteTexture(y.__webglTexture);let H=A.source,re=f.get(H);delete re[y.__cacheKey],a.memory.textures--}function se(A){let y=n.get(A);y.__depthDisposeCallback&&y.__depthDisposeCallback();let H=A.depthTexture;if(H&&H.renderTarget===A&&q(H),A.isWebGLCubeRenderTarget)for(let ie=0;ie<6;ie++){if(Array.isArray(y.__webglFramebuffer[ie]))for(let ce=0;ce<y.__webglFramebuffer[ie].length;ce++)i.deleteFramebuffer(y.__webglFramebuffer[ie][ce]);else i.deleteFramebuffer(y.__webglFramebuffer[ie]);y.__webglDepthbuffer&&i.deleteRenderbuffer(y.__webglDepthbuffer[ie])}else{if(Array.isArray(y.__webglFramebuffer))for(let ie=0;ie<y.__webglFramebuffer.length;ie++)i.deleteFramebuffer(y.__webglFramebuffer[ie]);else i.deleteFramebuffer(y.__webglFramebuffer);if(y.__webglDepthbuffer&&i.deleteRenderbuffer(y.__webglDepthbuffer),y.__webglMultisampledFramebuffer&&i.deleteFramebuffer(y.__webglMultisampledFramebuffer),y.__webglColorRenderbuffer)for(let ie=0;ie<y.__webglColorRenderbuffer.length;ie++)y.__webglColorRenderbuffer[ie]&&i.deleteRenderbuffer(y.__webglColorRenderbuffer[ie]);y.__webglDepthRenderbuffer&&i.deleteRenderbuffer(y.__webglDepthRenderbuffer)}let re=A.textures;for(let ie=0,ce=re.length;ie<ce;ie++){let pe=n.get(re[ie]);pe.__webglTexture&&(i.deleteTexture(pe.__webglTexture),a.memory.textures--),n.remove(re[ie])}n.remove(A)}let L=0;function Y(){L=0}function ee(){return L}function le(A){L=A}function Ee(){let A=L;return A>=s.maxTextures&&Oe("WebGLTextures: Trying to use "+(A+1)+" texture units while this GPU supports only "+s.maxTextures),L+=1,A}function j(A){let y=[];return y.push(A.wrapS),y.push(A.wrapT),y.push(A.wrapR||0),y.push(A.magFilter),y.push(A.minFilter),y.push(A.anisotropy),y.push(A.internalFormat),y.push(A.format),y.push(A.type),y.push(A.generateMipmaps),y.push(A.mipmapsAutoUpdate),y.push(A.premultiplyAlpha),y.push(A.flipY),y.push(A.unpackAlignment),y.push(A.colorSpace),y.join()}function be(A,y){let H=n.get(A);if(A.isVideoTexture&&At(A),A.isRenderTargetTexture===!1&&A.isExternalTexture!==!0&&A.version>0&&H.__version!==A.version){let re=A.image;if(re===null)Oe("WebGLRenderer: Texture marked for update but no image data found.");else if(re.complete===!1)Oe("WebGLRenderer: Texture marked for update but image is incomplete");else{Et(H,A,y);return}}else A.isExternalTexture&&(H.__webglTexture=A.sourceTexture?A.sourceTexture:null);t.bindTexture(i.TEXTURE_2D,H.__webglTexture,i.TEXTURE0+y)}function Ae(A,y){let H=n.get(A);if(A.isRenderTargetTexture===!1&&A.version>0&&H.__version!==A.version){Et(H,A,y);return}else A.isExternalTexture&&(H.__webglTexture=A.sourceTexture?A.sourceTexture:null);t.bindTexture(i.TEXTURE_2D_ARRAY,H.__webglTexture,i.TEXTURE0+y)}function Ue(A,y){let H=n.get(A);if(A.isRenderTargetTexture===!1&&A.version>0&&H.__version!==A.version){Et(H,A,y);return}t.bindTexture(i.TEXTURE_3D,H.__webglTexture,i.TEXTURE0+y)}function Me(A,y){let H=n.get(A);if(A.version>0&&H.__version!==A.version){Jt(H,A,y);return}t.bindTexture(i.TEXTURE_CUBE_MAP,H.__webglTexture,i.TEXTURE0+y)}let We={[Ga]:i.REPEAT,[Vn]:i.CLAMP_TO_EDGE,[Ha]:i.MIRRORED_REPEAT},Mt={[Ut]:i.NEAREST,[Yu]:i.NEAREST_MIPMAP_NEAREST,[Pr]:i.NEAREST_MIPMAP_LINEAR,[Yt]:i.LINEAR,[_o]:i.LINEAR_MIPMAP_NEAREST,[ui]:i.LINEAR_MIPMAP_LINEAR},ke={[ju]:i.NEVER,[Dc]:i.ALWAYS,[Qu]:i.LESS,[Lc]:i.LEQUAL,[ed]:i.EQUAL,[Nc]:i.GEQUAL,[td]:i.GREATER,[nd]:i.NOTEQUAL};function st(A,y){if(y.type===Un&&e.has("OES_texture_float_linear")===!1&&(y.magFilter===Yt||y.magFilter===_o||y.magFilter===Pr||y.magFilter===ui||y.minFilter===Yt||y.minFilter===_o||y.minFilter===Pr||y.minFilter===ui)&&Oe("WebGLRenderer: Unable to use linear filtering with floating point textures. OES_texture_float_linear not supported on this device."),i.texParameteri(A,i.TEXTURE_WRAP_S,We[y.wrapS]),i.texParameteri(A,i.TEXTURE_WRAP_T,We[y.wrapT]),(A===i.TEXTURE_3D||A===i.TEXTURE_2D_ARRAY)&&i.texParameteri(A,i.TEXTURE_WRAP_R,We[y.wrapR]),i.texParameteri(A,i.TEXTURE_MAG_FILTER,Mt[y.magFilter]),i.texParameteri(A,i.TEXTURE_MIN_FILTER,Mt[y.minFilter]),y.compareFunction&&(i.texParameteri(A,i.TEXTURE_COMPARE_MODE,i.COMPARE_REF_TO_TEXTURE),i.texParameteri(A,i.TEXTURE_COMPARE_FUNC,ke[y.compareFunction])),e.has("EXT_texture_filter_anisotropic")===!0){if(y.magFilter===Ut||y.minFilter!==Pr&&y.minFilter!==ui||y.type===Un&&e.has("OES_texture_float_linear")===!1)return;if(y.anisotropy>1||n.get(y).__currentAnisotropy){let H=e.get("EXT_texture_filter_anisotropic");i.texParameterf(A,H.TEXTURE_MAX_ANISOTROPY_EXT,Math.min(y.anisotropy,s.getMaxAnisotropy())),n.get(y).__currentAnisotropy=y.anisotropy}}}function ot(A,y){let H=!1;A.__webglInit===void 0&&(A.__webglInit=!0,y.addEventListener("dispose",N),B(y));let re=y.source,ie=f.get(re);ie===void 0&&(ie={},f.set(re,ie));let ce=j(y);if(ce!==A.__cacheKey){ie[ce]===void 0&&(ie[ce]={texture:i.createTexture(),usedTimes:0},a.memory.textures++,H=!0),ie[ce].usedTimes++;let pe=ie[A.__cacheKey];pe!==void 0&&(ie[A.__cacheKey].usedTimes--,pe.usedTimes===0&&$(y)),A.__cacheKey=ce,A.__webglTexture=ie[ce].texture}return H}function Ye(A,y,H){return Math.floor(Math.floor(A/H)/y)}function Ft(A,y,H,re){let ce=A.updateRanges;if(ce.length===0)t.texSubImage2D(i.TEXTURE_2D,0,0,0,y.width,y.height,H,re,y.data);else{ce.sort((P,ne)=>P.start-ne.start);let pe=0;for(let P=1;P<ce.length;P++){let ne=ce[pe],K=ce[P],de=ne.start+ne.count,oe=Ye(K.start,y.width,4),he=Ye(ne.start,y.width,4);K.start<=de+1&&oe===he&&Ye(K.start+K.count-1,y.width,4)===oe?ne.count=Math.max(ne.count,K.start+K.count-ne.start):(++pe,ce[pe]=K)}ce.length=pe+1;let Q=t.getParameter(i.UNPACK_ROW_LENGTH),te=t.getParameter(i.UNPACK_SKIP_PIXELS),ue=t.getParameter(i.UNPACK_SKIP_ROWS);t.pixelStorei(i.UNPACK_ROW_LENGTH,y.width);for(let P=0,ne=ce.length;P<ne;P++){let K=ce[P],de=Math.floor(K.start/4),oe=Math.ceil(K.count/4),he=de%y.width,Ie=Math.floor(de/y.width),Xe=oe,ae=1;t.pixelStorei(i.UNPACK_SKIP_PIXELS,he),t.pixelStorei(i.UNPACK_SKIP_ROWS,Ie),t.texSubImage2D(i.TEXTURE_2D,0,he,Ie,Xe,ae,H,re,y.data)}A.clearUpdateRanges(),t.pixelStorei(i.UNPACK_ROW_LENGTH,Q),t.pixelStorei(i.UNPACK_SKIP_PIXELS,te),t.pixelStorei(i.UNPACK_SKIP_ROWS,ue)}}function Et(A,y,H){let re=i.TEXTURE_2D;(y.isDataArrayTexture||y.isCompressedArrayTexture)&&(re=i.TEXTURE_2D_ARRAY),y.isData3DTexture&&(re=i.TEXTURE_3D);let ie=ot(A,y),ce=y.source;t.bindTexture(re,A.__webglTexture,i.TEXTURE0+H);let pe=n.get(ce);if(ce.version!==pe.__version||ie===!0){if(t.activeTexture(i.TEXTURE0+H),(typeof ImageBitmap<"u"&&y.image instanceof ImageBitmap)===!1){let ae=Ke.getPrimaries(Ke.workingColorSpace),Le=y.colorSpace===fi?null:Ke.getPrimaries(y.colorSpace),$e=y.colorSpace===fi||ae===Le?i.NONE:i.BROWSER_DEFAULT_WEBGL;t.pixelStorei(i.UNPACK_FLIP_Y_WEBGL,y.flipY),t.pixelStorei(i.UNPACK_PREMULTIPLY_ALPHA_WEBGL,y.premultiplyAlpha),t.pixelStorei(i.UNPACK_COLORSPACE_CONVERSION_WEBGL,$e)}t.pixelStorei(i.UNPACK_ALIGNMENT,y.unpackAlignment);let te=M(y.image,!1,s.maxTextureSize);te=Fe(y,te);let ue=r.convert(y.format,y.colorSpace),P=r.convert(y.type),ne=S(y.internalFormat,ue,P,y.normalized,y.colorSpace,y.isVideoTexture);st(re,y);let K,de=y.mipmaps,oe=y.isVideoTexture!==!0,he=pe.__version===void 0||ie===!0,Ie=ce.dataReady,Xe=T(y,te);if(y.isDepthTexture)ne=x(y.format===di,y.type),he&&(oe?t.texStorage2D(i.TEXTURE_2D,1,ne,te.width,te.height):t.texImage2D(i.TEXTURE_2D,0,ne,te.width,te.height,0,ue,P,null));else if(y.isDataTexture)if(de.length>0){oe&&he&&t.texStorage2D(i.TEXTURE_2D,Xe,ne,de[0].width,de[0].height);for(let ae=0,Le=de.length;ae<Le;ae++)K=de[ae],oe?Ie&&t.texSubImage2D(i.TEXTURE_2D,ae,0,0,K.width,K.height,ue,P,K.data):t.texImage2D(i.TEXTURE_2D,ae,ne,K.width,K.height,0,ue,P,K.data);y.generateMipmaps=!1}else oe?(he&&t.texStorage2D(i.TEXTURE_2D,Xe,ne,te.width,te.height),Ie&&Ft(y,te,ue,P)):t.texImage2D(i.TEXTURE_2D,0,ne,te.width,te.height,0,ue,P,te.data);else if(y.isCompressedTexture)if(y.isCompressedArrayTexture){oe&&he&&t.texStorage3D(i.TEXTURE_2D_ARRAY,Xe,ne,de[0].width,de[0].height,te.depth);for(let ae=0,Le=de.length;ae<Le;ae++)if(K=de[ae],y.format!==On)if(ue!==null)if(oe){if(Ie)if(y.layerUpdates.size>0){let $e=Vc(K.width,K.height,y.format,y.type);for(let xe of y.layerUpdates){let rt=K.data.subarray(xe*$e/K.data.BYTES_PER_ELEMENT,(xe+1)*$e/K.data.BYTES_PER_ELEMENT);t.compressedTexSubImage3D(i.TEXTURE_2D_ARRAY,ae,0,0,xe,K.width,K.height,1,ue,rt)}}else t.compressedTexSubImage3D(i.TEXTURE_2D_ARRAY,ae,0,0,0,K.width,K.height,te.depth,ue,K.data)}else t.compressedTexImage3D(i.TEXTURE_2D_ARRAY,ae,ne,K.width,K.height,te.depth,0,K.data,0,0);else Oe("WebGLRenderer: Attempt to load unsupported compressed texture format in .uploadTexture()");else oe?Ie&&t.texSubImage3D(i.TEXTURE_2D_ARRAY,ae,0,0,0,K.width,K.height,te.depth,ue,P,K.data):t.texImage3D(i.TEXTURE_2D_ARRAY,ae,ne,K.width,K.height,te.depth,0,ue,P,K.data);y.layerUpdates.size>0&&y.clearLayerUpdates()}else{oe&&he&&t.texStorage2D(i.TEXTURE_2D,Xe,ne,de[0].width,de[0].height);for(let ae=0,Le=de.length;ae<Le;ae++)K=de[ae],y.format!==On?ue!==null?oe?Ie&&t.compressedTexSubImage2D(i.TEXTURE_2D,ae,0,0,K.width,K.height,ue,K.data):t.compressedTexImage2D(i.TEXTURE_2D,ae,ne,K.width,K.height,0,K.data):Oe("WebGLRenderer: Attempt to load unsupported compressed texture format in .uploadTexture()"):oe?Ie&&t.texSubImage2D(i.TEXTURE_2D,ae,0,0,K.width,K.height,ue,P,K.data):t.texImage2D(i.TEXTURE_2D,ae,ne,K.width,K.height,0,ue,P,K.data)}else if(y.isDataArrayTexture)if(oe){if(he&&t.texStorage3D(i.TEXTURE_2D_ARRAY,Xe,ne,te.width,te.height,te.depth),Ie)if(y.layerUpdates.size>0){let ae=Vc(te.width,te.height,y.format,y.type);for(let Le of y.layerUpdates){let $e=te.data.subarray(Le*ae/te.data.BYTES_PER_ELEMENT,(Le+1)*ae/te.data.BYTES_PER_ELEMENT);t.texSubImage3D(i.TEXTURE_2D_ARRAY,0,0,0,Le,te.width,te.height,1,ue,P,$e)}y.clearLayerUpdates()}else t.texSubImage3D(i.TEXTURE_2D_ARRAY,0,0,0,0,te.width,te.height,te.depth,ue,P,te.data)}else t.texImage3D(i.TEXTURE_2D_ARRAY,0,ne,te.width,te.height,te.depth,0,ue,P,te.data);else if(y.isData3DTexture)oe?(he&&t.texStorage3D(i.TEXTURE_3D,Xe,ne,te.width,te.height,te.depth),Ie&&t.texSubImage3D(i.TEXTURE_3D,0,0,0,0,te.width,te.height,te.depth,ue,P,te.data)):t.texImage3D(i.TEXTURE_3D,0,ne,te.width,te.height,te.depth,0,ue,P,te.data);else if(y.isFramebufferTexture){if(he)if(oe)t.texStorage2D(i.TEXTURE_2D,Xe,ne,te.width,te.height);else{let ae=te.width,Le=te.height;for(let $e=0;$e<Xe;$e++)t.texImage2D(i.TEXTURE_2D,$e,ne,ae,Le,0,ue,P,null),ae>>=1,Le>>=1}}else if(y.isHTMLTexture){if("texElementImage2D"in i){let ae=i.canvas;if(ae.hasAttribute("layoutsubtree")||ae.setAttribute("layoutsubtree","true"),te.parentNode!==ae){ae.appendChild(te),u.add(y),ae.onpaint=Le=>{let $e=Le.changedElements;for(let xe of u)$e.includes(xe.image)&&(xe.needsUpdate=!0)},ae.requestPaint();return}if(i.texElementImage2D.length===3)i.texElementImage2D(i.TEXTURE_2D,i.RGBA8,te);else{let $e=i.RGBA,xe=i.RGBA,rt=i.UNSIGNED_BYTE;i.texElementImage2D(i.TEXTURE_2D,0,$e,xe,rt,te)}i.texParameteri(i.TEXTURE_2D,i.TEXTURE_MIN_FILTER,i.LINEAR),i.texParameteri(i.TEXTURE_2D,i.TEXTURE_WRAP_S,i.CLAMP_TO_EDGE),i.texParameteri(i.TEXTURE_2D,i.TEXTURE_WRAP_T,i.CLAMP_TO_EDGE)}}else if(de.length>0){if(oe&&he){let ae=Ge(de[0]);t.texStorage2D(i.TEXTURE_2D,Xe,ne,ae.width,ae.height)}for(let ae=0,Le=de.length;ae<Le;ae++)K=de[ae],oe?Ie&&t.texSubImage2D(i.TEXTURE_2D,ae,0,0,ue,P,K):t.texImage2D(i.TEXTURE_2D,ae,ne,ue,P,K);y.generateMipmaps=!1}else if(oe){if(he){let ae=Ge(te);t.texStorage2D(i.TEXTURE_2D,Xe,ne,ae.width,ae.height)}Ie&&t.texSubImage2D(i.TEXTURE_2D,0,0,0,ue,P,te)}else t.texImage2D(i.TEXTURE_2D,0,ne,ue,P,te);C(y)&&y.mipmapsAutoUpdate===!0&&w(re),pe.__version=ce.version,y.onUpdate&&y.onUpdate(y)}A.__version=y.version}function Jt(A,y,H){if(y.image.length!==6)return;let re=ot(A,y),ie=y.source;t.bindTexture(i.TEXTURE_CUBE_MAP,A.__webglTexture,i.TEXTURE0+H);let ce=n.get(ie);if(ie.version!==ce.__version||re===!0){t.activeTexture(i.TEXTURE0+H);let pe=Ke.getPrimaries(Ke.workingColorSpace),Q=y.colorSpace===fi?null:Ke.getPrimaries(y.colorSpace),te=y.colorSpace===fi||pe===Q?i.NONE:i.BROWSER_DEFAULT_WEBGL;t.pixelStorei(i.UNPACK_FLIP_Y_WEBGL,y.flipY),t.pixelStorei(i.UNPACK_PREMULTIPLY_ALPHA_WEBGL,y.premultiplyAlpha),t.pixelStorei(i.UNPACK_ALIGNMENT,y.unpackAlignment),t.pixelStorei(i.UNPACK_COLORSPACE_CONVERSION_WEBGL,te);let ue=y.isCompressedTexture||y.image[0].isCompressedTexture,P=y.image[0]&&y.image[0].isDataTexture,ne=[];for(let xe=0;xe<6;xe++)!ue&&!P?ne[xe]=M(y.image[xe],!0,s.maxCubemapSize):ne[xe]=P?y.image[xe].image:y.image[xe],ne[xe]=Fe(y,ne[xe]);let K=ne[0],de=r.convert(y.format,y.colorSpace),oe=r.convert(y.type),he=S(y.internalFormat,de,oe,y.normalized,y.colorSpace),Ie=y.isVideoTexture!==!0,Xe=ce.__version===void 0||re===!0,ae=ie.dataReady,Le=T(y,K);st(i.TEXTURE_CUBE_MAP,y);let $e;if(y.isDepthTexture){if(he=x(y.format===di,y.type),Xe)if(Ie)t.texStorage2D(i.TEXTURE_CUBE_MAP,1,he,K.width,K.height);else for(let xe=0;xe<6;xe++)t.texImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+xe,0,he,K.width,K.height,0,de,oe,null)}else if(ue){Ie&&Xe&&t.texStorage2D(i.TEXTURE_CUBE_MAP,Le,he,K.width,K.height);for(let xe=0;xe<6;xe++){$e=ne[xe].mipmaps;for(let rt=0;rt<$e.length;rt++){let It=$e[rt];y.format!==On?de!==null?Ie?ae&&t.compressedTexSubImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+xe,rt,0,0,It.width,It.height,de,It.data):t.compressedTexImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+xe,rt,he,It.width,It.height,0,It.data):Oe("WebGLRenderer: Attempt to load unsupported compressed texture format in .setTextureCube()"):Ie?ae&&t.texSubImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+xe,rt,0,0,It.width,It.height,de,oe,It.data):t.texImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+xe,rt,he,It.width,It.height,0,de,oe,It.data)}}}else{if($e=y.mipmaps,Ie&&Xe){$e.length>0&&Le++;let xe=Ge(ne[0]);t.texStorage2D(i.TEXTURE_CUBE_MAP,Le,he,xe.width,xe.height)}for(let xe=0;xe<6;xe++)if(P){Ie?ae&&t.texSubImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+xe,0,0,0,ne[xe].width,ne[xe].height,de,oe,ne[xe].data):t.texImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+xe,0,he,ne[xe].width,ne[xe].height,0,de,oe,ne[xe].data);for(let rt=0;rt<$e.length;rt++){let mi=$e[rt].image[xe].image;Ie?ae&&t.texSubImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+xe,rt+1,0,0,mi.width,mi.height,de,oe,mi.data):t.texImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+xe,rt+1,he,mi.width,mi.height,0,de,oe,mi.data)}}else{Ie?ae&&t.texSubImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+xe,0,0,0,de,oe,ne[xe]):t.texImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+xe,0,he,de,oe,ne[xe]);for(let rt=0;rt<$e.length;rt++){let It=$e[rt];Ie?ae&&t.texSubImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+xe,rt+1,0,0,de,oe,It.image[xe]):t.texImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+xe,rt+1,he,de,oe,It.image[xe])}}}C(y)&&y.mipmapsAutoUpdate===!0&&w(i.TEXTURE_CUBE_MAP),ce.__version=ie.version,y.onUpdate&&y.onUpdate(y)}A.__version=y.version}function pt(A,y,H,re,ie,ce){let pe=r.convert(H.format,H.colorSpace),Q=r.convert(H.type),te=S(H.internalFormat,pe,Q,H.normalized,H.colorSpace),ue=n.get(y),P=n.get(H);if(P.__renderTarget=y,!ue.__hasExternalTextures){let ne=Math.max(1,y.width>>ce),K=Math.max(1,y.height>>ce);ie===i.TEXTURE_3D||ie===i.TEXTURE_2D_ARRAY?t.texImage3D(ie,ce,te,ne,K,y.depth,0,pe,Q,null):t.texImage2D(ie,ce,te,ne,K,0,pe,Q,null)}t.bindFramebuffer(i.FRAMEBUFFER,A),_e(y)?o.framebufferTexture2DMultisampleEXT(i.FRAMEBUFFER,re,ie,P.__webglTexture,0,ft(y)):(ie===i.TEXTURE_2D||ie>=i.TEXTURE_CUBE_MAP_POSITIVE_X&&ie<=i.TEXTURE_CUBE_MAP_NEGATIVE_Z)&&i.framebufferTexture2D(i.FRAMEBUFFER,re,ie,P.__webglTexture,ce),t.bindFramebuffer(i.FRAMEBUFFER,null)}function kn(A,y,H){if(i.bindRenderbuffer(i.RENDERBUFFER,A),y.depthBuffer){let re=y.depthTexture,ie=re&&re.isDepthTexture?re.type:null,ce=x(y.stencilBuffer,ie),pe=y.stencilBuffer?i.DEPTH_STENCIL_ATTACHMENT:i.DEPTH_ATTACHMENT;_e(y)?o.renderbufferStorageMultisampleEXT(i.RENDERBUFFER,ft(y),ce,y.width,y.height):H?i.renderbufferStorageMultisample(i.RENDERBUFFER,ft(y),ce,y.width,y.height):i.renderbufferStorage(i.RENDERBUFFER,ce,y.width,y.height),i.framebufferRenderbuffer(i.FRAMEBUFFER,pe,i.RENDERBUFFER,A)}else{let re=y.textures;for(let ie=0;ie<re.length;ie++){let ce=re[ie],pe=r.convert(ce.format,ce.colorSpace),Q=r.convert(ce.type),te=S(ce.internalFormat,pe,Q,ce.normalized,ce.colorSpace);_e(y)?o.renderbufferStorageMultisampleEXT(i.RENDERBUFFER,ft(y),te,y.width,y.height):H?i.renderbufferStorageMultisample(i.RENDERBUFFER,ft(y),te,y.width,y.height):i.renderbufferStorage(i.RENDERBUFFER,te,y.width,y.height)}}i.bindRenderbuffer(i.RENDERBUFFER,null)}function Pt(A,y,H){let re=y.isWebGLCubeRenderTarget===!0;if(t.bindFramebuffer(i.FRAMEBUFFER,A),!(y.depthTexture&&y.depthTexture.isDepthTexture))throw new Error("THREE.WebGLTextures: renderTarget.depthTexture must be an instance of THREE.DepthTexture.");let ie=n.get(y.depthTexture);ie.__renderTarget=y;let ce=re?y.depthTexture.image[0]:y.depthTexture.image;(!ie.__webglTexture||ce.width!==y.width||ce.height!==y.height)&&(ce.width=y.width,ce.height=y.height,y.depthTexture.needsUpdate=!0),re?Me(y.depthTexture,0):be(y.depthTexture,0);let pe=ie.__webglTexture,Q=ft(y),te=re?i.TEXTURE_CUBE_MAP_POSITIVE_X+H:i.TEXTURE_2D,ue=y.depthTexture.format===di?i.DEPTH_STENCIL_ATTACHMENT:i.DEPTH_ATTACHMENT;if(y.depthTexture.format===ci)_e(y)?o.framebufferTexture2DMultisampleEXT(i.FRAMEBUFFER,ue,te,pe,0,Q):i.framebufferTexture2D(i.FRAMEBUFFER,ue,te,pe,0);else if(y.depthTexture.format===di)_e(y)?o.framebufferTexture2DMultisampleEXT(i.FRAMEBUFFER,ue,te,pe,0,Q):i.framebufferTexture2D(i.FRAMEBUFFER,ue,te,pe,0);else throw new Error("THREE.WebGLTextures: Unknown depthTexture format.")}function gn(A){let y=n.get(A),H=A.isWebGLCubeRenderTarget===!0;if(y.__boundDepthTexture!==A.depthTexture){let re=A.depthTexture;if(y.__depthDisposeCallback&&y.__depthDisposeCallback(),re){let ie=()=>{delete y.__boundDepthTexture,delete y.__depthDisposeCallback,re.removeEventListener("dispose",ie)};re.addEventListener("dispose",ie),y.__depthDisposeCallback=ie}y.__boundDepthTexture=re}if(A.depthTexture&&!y.__autoAllocateDepthBuffer)if(H)for(let re=0;re<6;re++)Pt(y.__webglFramebuffer[re],A,re);else A.texture.mipmaps.length>0?Pt(y.__webglFramebuffer[0],A,0):Pt(y.__webglFramebuffer,A,0);else if(H){y.__webglDepthbuffer=[];for(let re=0;re<6;re++)if(t.bindFramebuffer(i.FRAMEBUFFER,y.__webglFramebuffer[re]),y.__webglDepthbuffer[re]===void 0)y.__webglDepthbuffer[re]=i.createRenderbuffer(),kn(y.__webglDepthbuffer[re],A,!1);else{let ie=A.stencilBuffer?i.DEPTH_STENCIL_ATTACHMENT:i.DEPTH_ATTACHMENT,ce=y.__webglDepthbuffer[re];i.bindRenderbuffer(i.RENDERBUFFER,ce),i.framebufferRenderbuffer(i.FRAMEBUFFER,ie,i.RENDERBUFFER,ce)}}else if(A.texture.mipmaps.length>0?t.bindFramebuffer(i.FRAMEBUFFER,y.__webglFramebuffer[0]):t.bindFramebuffer(i.FRAMEBUFFER,y.__webglFramebuffer),y.__webglDepthbuffer===void 0)y.__webglDepthbuffer=i.createRenderbuffer(),kn(y.__webglDepthbuffer,A,!1);else{let ie=A.stencilBuffer?i.DEPTH_STENCIL_ATTACHMENT:i.DEPTH_ATTACHMENT,ce=y.__webglDepthbuffer;i.bindRenderbuffer(i.RENDERBUFFER,ce),i.framebufferRenderbuffer(i.FRAMEBUFFER,ie,i.RENDERBUFFER,ce)}t.bindFramebuffer(i.FRAMEBUFFER,null)}function _n(A,y,H){let re=n.get(A);y!==void 0&&pt(re.__webglFramebuffer,A,A.texture,i.COLOR_ATTACHMENT0,i.TEXTURE_2D,0),H!==void 0&&gn(A)}function vn(A){let y=A.texture,H=n.get(A),re=n.get(y);A.addEventListener("dispose",V),B(A);let ie=A.textures,ce=A.isWebGLCubeRenderTarget===!0,pe=ie.length>1;if(pe||(re.__webglTexture===void 0&&(re.__webglTexture=i.createTexture()),re.__version=y.version,a.memory.textures++),ce){H.__webglFramebuffer=[];for(let Q=0;Q<6;Q++)if(y.mipmaps.length>0){H.__webglFramebuffer[Q]=[];for(let te=0;te<y.mipmaps.length;te++)H.__webglFramebuffer[Q][te]=i.createFramebuffer()}else H.__webglFramebuffer[Q]=i.createFramebuffer()}else{if(y.mipmaps.length>0){H.__webglFramebuffer=[];for(let Q=0;Q<y.mipmaps.length;Q++)H.__webglFramebuffer[Q]=i.createFramebuffer()}else H.__webglFramebuffer=i.createFramebuffer();if(pe)for(let Q=0,te=ie.length;Q<te;Q++){let ue=n.get(ie[Q]);ue.__webglTexture===void 0&&(ue.__webglTexture=i.createTexture(),a.memory.textures++)}if(A.samples>0&&_e(A)===!1){H.__webglMultisampledFramebuffer=i.createFramebuffer(),H.__webglColorRenderbuffer=[],t.bindFramebuffer(i.FRAMEBUFFER,H.__webglMultisampledFramebuffer);for(let Q=0;Q<ie.length;Q++){let te=ie[Q];H.__webglColorRenderbuffer[Q]=i.createRenderbuffer(),i.bindRenderbuffer(i.RENDERBUFFER,H.__webglColorRenderbuffer[Q]);let ue=r.convert(te.format,te.colorSpace),P=r.convert(te.type),ne=S(te.internalFormat,ue,P,te.normalized,te.colorSpace,A.isXRRenderTarget===!0),K=ft(A);i.renderbufferStorageMultisample(i.RENDERBUFFER,K,ne,A.width,A.height),i.framebufferRenderbuffer(i.FRAMEBUFFER,i.COLOR_ATTACHMENT0+Q,i.RENDERBUFFER,H.__webglColorRenderbuffer[Q])}i.bindRenderbuffer(i.RENDERBUFFER,null),A.depthBuffer&&(H.__webglDepthRenderbuffer=i.createRenderbuffer(),kn(H.__webglDepthRenderbuffer,A,!0)),t.bindFramebuffer(i.FRAMEBUFFER,null)}}if(ce){t.bindTexture(i.TEXTURE_CUBE_MAP,re.__webglTexture),st(i.TEXTURE_CUBE_MAP,y);for(let Q=0;Q<6;Q++)if(y.mipmaps.length>0)for(let te=0;te<y.mipmaps.length;te++)pt(H.__webglFramebuffer[Q][te],A,y,i.COLOR_ATTACHMENT0,i.TEXTURE_CUBE_MAP_POSITIVE_X+Q,te);else pt(H.__webglFramebuffer[Q],A,y,i.COLOR_ATTACHMENT0,i.TEXTURE_CUBE_MAP_POSITIVE_X+Q,0);C(y)?w(i.TEXTURE_CUBE_MAP):y.mipmaps.length>0&&i.texParameteri(i.TEXTURE_CUBE_MAP,i.TEXTURE_MAX_LEVEL,y.mipmaps.length-1),t.unbindTexture()}else if(pe){for(let Q=0,te=ie.length;Q<te;Q++){let ue=ie[Q],P=n.get(ue),ne=i.TEXTURE_2D;(A.isWebGL3DRenderTarget||A.isWebGLArrayRenderTarget)&&(ne=A.isWebGL3DRenderTarget?i.TEXTURE_3D:i.TEXTURE_2D_ARRAY),t.bindTexture(ne,P.__webglTexture),st(ne,ue),pt(H.__webglFramebuffer,A,ue,i.COLOR_ATTACHMENT0+Q,ne,0),C(ue)&&w(ne)}t.unbindTexture()}else{let Q=i.TEXTURE_2D;if((A.isWebGL3DRenderTarget||A.isWebGLArrayRenderTarget)&&(Q=A.isWebGL3DRenderTarget?i.TEXTURE_3D:i.TEXTURE_2D_ARRAY),t.bindTexture(Q,re.__webglTexture),st(Q,y),y.mipmaps.length>0)for(let te=0;te<y.mipmaps.length;te++)pt(H.__webglFramebuffer[te],A,y,i.COLOR_ATTACHMENT0,Q,te);else pt(H.__webglFramebuffer,A,y,i.COLOR_ATTACHMENT0,Q,0);C(y)?w(Q):y.mipmaps.length>0&&i.texParameteri(Q,i.TEXTURE_MAX_LEVEL,y.mipmaps.length-1),t.unbindTexture()}A.depthBuffer&&gn(A)}function F(A){let y=A.textures;for(let H=0,re=y.length;H<re;H++){let ie=y[H];if(C(ie)&&ie.mipmapsAutoUpdate===!0){let ce=E(A),pe=n.get(ie).__webglTexture;t.bindTexture(ce,pe),w(ce),t.unbindTexture()}}}let xn=[];function dt(A){if(A.samples>0){if(_e(A)===!1){let y=A.textures,H=A.width,re=A.height,ie=i.COLOR_BUFFER_BIT,ce=A.stencilBuffer?i.DEPTH_STENCIL_ATTACHMENT:i.DEPTH_ATTACHMENT,pe=n.get(A),Q=y.length>1;if(Q)for(let ue=0;ue<y.length;ue++)t.bindFramebuffer(i.FRAMEBUFFER,pe.__webglMultisampledFramebuffer),i.framebufferRenderbuffer(i.FRAMEBUFFER,i.COLOR_ATTACHMENT0+ue,i.RENDERBUFFER,null),t.bindFramebuffer(i.FRAMEBUFFER,pe.__webglFramebuffer),i.framebufferTexture2D(i.DRAW_FRAMEBUFFER,i.COLOR_ATTACHMENT0+ue,i.TEXTURE_2D,null,0);t.bindFramebuffer(i.READ_FRAMEBUFFER,pe.__webglMultisampledFramebuffer),A.texture.mipmaps.length>0?t.bindFramebuffer(i.DRAW_FRAMEBUFFER,pe.__webglFramebuffer[0]):t.bindFramebuffer(i.DRAW_FRAMEBUFFER,pe.__webglFramebuffer);for(let ue=0;ue<y.length;ue++){if(A.resolveDepthBuffer&&(A.depthBuffer&&(ie|=i.DEPTH_BUFFER_BIT),A.stencilBuffer&&A.resolveStencilBuffer&&(ie|=i.STENCIL_BUFFER_BIT)),Q){i.framebufferRenderbuffer(i.READ_FRAMEBUFFER,i.COLOR_ATTACHMENT0,i.RENDERBUFFER,pe.__webglColorRenderbuffer[ue]);let P=n.get(y[ue]).__webglTexture;i.framebufferTexture2D(i.DRAW_FRAMEBUFFER,i.COLOR_ATTACHMENT0,i.TEXTURE_2D,P,0)}i.blitFramebuffer(0,0,H,re,0,0,H,re,ie,i.NEAREST),l===!0&&(xn.length=0,xn.push(i.COLOR_ATTACHMENT0+ue),A.depthBuffer&&A.storeMultisampledDepthBuffer===!1&&xn.push(ce),i.invalidateFramebuffer(i.READ_FRAMEBUFFER,xn))}if(t.bindFramebuffer(i.READ_FRAMEBUFFER,null),t.bindFramebuffer(i.DRAW_FRAMEBUFFER,null),Q)for(let ue=0;ue<y.length;ue++){t.bindFramebuffer(i.FRAMEBUFFER,pe.__webglMultisampledFramebuffer),i.framebufferRenderbuffer(i.FRAMEBUFFER,i.COLOR_ATTACHMENT0+ue,i.RENDERBUFFER,pe.__webglColorRenderbuffer[ue]);let P=n.get(y[ue]).__webglTexture;t.bindFramebuffer(i.FRAMEBUFFER,pe.__webglFramebuffer),i.framebufferTexture2D(i.DRAW_FRAMEBUFFER,i.COLOR_ATTACHMENT0+ue,i.TEXTURE_2D,P,0)}t.bindFramebuffer(i.DRAW_FRAMEBUFFER,pe.__webglMultisampledFramebuffer)}else if(A.depthBuffer&&A.storeMultisampledDepthBuffer===!1&&l){let y=A.stencilBuffer?i.DEPTH_STENCIL_ATTACHMENT:i.DEPTH_ATTACHMENT;i.invalidateFramebuffer(i.DRAW_FRAMEBUFFER,[y])}}}function ft(A){return Math.min(s.maxSamples,A.samples)}function _e(A){let y=n.get(A);return A.samples>0&&e.has("WEBGL_multisampled_render_to_texture")===!0&&y.__useRenderToTexture!==!1}function At(A){let y=a.render.frame;h.get(A)!==y&&(h.set(A,y),A.update())}function Fe(A,y){let H=A.colorSpace,re=A.format,ie=A.type;return A.isCompressedTexture===!0||A.isVideoTexture===!0||H!==mr&&H!==fi&&(Ke.getTransfer(H)===it?(re!==On||ie!==pn)&&Oe("WebGLTextures: sRGB encoded textures have to use RGBAFormat and UnsignedByteType."):ze("WebGLTextures: Unsupported texture color space:",H)),y}function Ge(A){return typeof HTMLImageElement<"u"&&A instanceof HTMLImageElement?(c.width=A.naturalWidth||A.width,c.height=A.naturalHeight||A.height):typeof VideoFrame<"u"&&A instanceof VideoFrame?(c.width=A.displayWidth,c.height=A.displayHeight):(c.width=A.width,c.height=A.height),c}this.allocateTextureUnit=Ee,this.resetTextureUnits=Y,this.getTextureUnits=ee,this.setTextureUnits=le,this.setTexture2D=be,this.setTexture2DArray=Ae,this.setTexture3D=Ue,this.setTextureCube=Me,this.rebindTextures=_n,this.setupRenderTarget=vn,this.updateRenderTargetMipmap=F,this.updateMultisampleRenderTarget=dt,this.setupDepthRenderbuffer=gn,this.setupFrameBufferTexture=pt,this.useMultisampledRTT=_e,this.dispose=X}function Bv(i,e){function t(n,s=fi){let r,a=Ke.getTransfer(s);if(n===pn)return i.UNSIGNED_BYTE;if(n===xo)return i.UNSIGNED_SHORT_4_4_4_4;if(n===yo)return i.UNSIGNED_SHORT_5_5_5_1;if(n===Ec)return i.UNSIGNED_INT_5_9_9_9_REV;if(n===Ac)return i.UNSIGNED_INT_10F_11F_11F_REV;if(n===Sc)return i.BYTE;if(n===Tc)return i.SHORT;if(n===Xs)return i.UNSIGNED_SHORT;if(n===vo)return i.INT;if(n===Dn)return i.UNSIGNED_INT;if(n===Un)return i.FLOAT;if(n===Fn)return i.HALF_FLOAT;if(n===Cc)return i.ALPHA;if(n===Rc)return i.RGB;if(n===On)return i.RGBA;if(n===ci)return i.DEPTH_COMPONENT;if(n===di)return i.DEPTH_STENCIL;if(n===Pc)return i.RED;if(n===bo)return i.RED_INTEGER;if(n===zi)return i.RG;if(n===Mo)return i.RG_INTEGER;if(n===wo)return i.RGBA_INTEGER;if(n===Ir||n===Lr||n===Nr||n===Dr)if(a===it)if(r=e.get("WEBGL_compressed_texture_s3tc_srgb"),r!==null){if(n===Ir)return r.COMPRESSED_SRGB_S3TC_DXT1_EXT;if(n===Lr)return r.COMPRESSED_SRGB_ALPHA_S3TC_DXT1_EXT;if(n===Nr)return r.COMPRESSED_SRGB_ALPHA_S3TC_DXT3_EXT;if(n===Dr)return r.COMPRESSED_SRGB_ALPHA_S3TC_DXT5_EXT}else return null;else if(r=e.get("WEBGL_compressed_texture_s3tc"),r!==null){if(n===Ir)return r.COMPRESSED_RGB_S3TC_DXT1_EXT;if(n===Lr)return r.COMPRESSED_RGBA_S3TC_DXT1_EXT;if(n===Nr)return r.COMPRESSED_RGBA_S3TC_DXT3_EXT;if(n===Dr)return r.COMPRESSED_RGBA_S3TC_DXT5_EXT}else return null;if(n===So||n===To||n===Eo||n===Ao)if(r=e.get("WEBGL_compressed_texture_pvrtc"),r!==null){if(n===So)return r.COMPRESSED_RGB_PVRTC_4BPPV1_IMG;if(n===To)return r.COMPRESSED_RGB_PVRTC_2BPPV1_IMG;if(n===Eo)return r.COMPRESSED_RGBA_PVRTC_4BPPV1_IMG;if(n===Ao)return r.COMPRESSED_RGBA_PVRTC_2BPPV1_IMG}else return null;if(n===Co||n===Ro||n===Po||n===Io||n===Lo||n===Ur||n===No)if(r=e.get("WEBGL_compressed_texture_etc"),r!==null){if(n===Co||n===Ro)return a===it?r.COMPRESSED_SRGB8_ETC2:r.COMPRESSED_RGB8_ETC2;if(n===Po)return a===it?r.COMPRESSED_SRGB8_ALPHA8_ETC2_EAC:r.COMPRESSED_RGBA8_ETC2_EAC;if(n===Io)return r.COMPRESSED_R11_EAC;if(n===Lo)return r.COMPRESSED_SIGNED_R11_EAC;if(n===Ur)return r.COMPRESSED_RG11_EAC;if(n===No)return r.COMPRESSED_SIGNED_RG11_EAC}else return null;if(n===Do||n===Uo||n===Fo||n===Oo||n===ko||n===Bo||n===zo||n===Vo||n===Go||n===Ho||n===Wo||n===$o||n===Xo||n===qo)if(r=e.get("WEBGL_compressed_texture_astc"),r!==null){if(n===Do)return a===it?r.COMPRESSED_SRGB8_ALPHA8_ASTC_4x4_KHR:r.COMPRESSED_RGBA_ASTC_4x4_KHR;if(n===Uo)return a===it?r.COMPRESSED_SRGB8_ALPHA8_ASTC_5x4_KHR:r.COMPRESSED_RGBA_ASTC_5x4_KHR;if(n===Fo)return a===it?r.COMPRESSED_SRGB8_ALPHA8_ASTC_5x5_KHR:r.COMPRESSED_RGBA_ASTC_5x5_KHR;if(n===Oo)return a===it?r.COMPRESSED_SRGB8_ALPHA8_ASTC_6x5_KHR:r.COMPRESSED_RGBA_ASTC_6x5_KHR;if(n===ko)return a===it?r.COMPRESSED_SRGB8_ALPHA8_ASTC_6x6_KHR:r.COMPRESSED_RGBA_ASTC_6x6_KHR;if(n===Bo)return a===it?r.COMPRESSED_SRGB8_ALPHA8_ASTC_8x5_KHR:r.COMPRESSED_RGBA_ASTC_8x5_KHR;if(n===zo)return a===it?r.COMPRESSED_SRGB8_ALPHA8_ASTC_8x6_KHR:r.COMPRESSED_RGBA_ASTC_8x6_KHR;if(n===Vo)return a===it?r.COMPRESSED_SRGB8_ALPHA8_ASTC_8x8_KHR:r.COMPRESSED_RGBA_ASTC_8x8_KHR;if(n===Go)return a===it?r.COMPRESSED_SRGB8_ALPHA8_ASTC_10x5_KHR:r.COMPRESSED_RGBA_ASTC_10x5_KHR;if(n===Ho)return a===it?r.COMPRESSED_SRGB8_ALPHA8_ASTC_10x6_KHR:r.COMPRESSED_RGBA_ASTC_10x6_KHR;if(n===Wo)return a===it?r.COMPRESSED_SRGB8_ALPHA8_ASTC_10x8_KHR:r.COMPRESSED_RGBA_ASTC_10x8_KHR;if(n===$o)return a===it?r.COMPRESSED_SRGB8_ALPHA8_ASTC_10x10_KHR:r.COMPRESSED_RGBA_ASTC_10x10_KHR;if(n===Xo)return a===it?r.COMPRESSED_SRGB8_ALPHA8_ASTC_12x10_KHR:r.COMPRESSED_RGBA_ASTC_12x10_KHR;if(n===qo)return a===it?r.COMPRESSED_SRGB8_ALPHA8_ASTC_12x12_KHR:r.COMPRESSED_RGBA_ASTC_12x12_KHR}else return null;if(n===Yo||n===Zo||n===Jo)if(r=e.get("EXT_texture_compression_bptc"),r!==null){if(n===Yo)return a===it?r.COMPRESSED_SRGB_ALPHA_BPTC_UNORM_EXT:r.COMPRESSED_RGBA_BPTC_UNORM_EXT;if(n===Zo)return r.COMPRESSED_RGB_BPTC_SIGNED_FLOAT_EXT;if(n===Jo)return r.COMPRESSED_RGB_BPTC_UNSIGNED_FLOAT_EXT}else return null;if(n===Ko||n===jo||n===Fr||n===Qo)if(r=e.get("EXT_texture_compression_rgtc"),r!==null){if(n===Ko)return r.COMPRESSED_RED_RGTC1_EXT;if(n===jo)return r.COMPRESSED_SIGNED_RED_RGTC1_EXT;if(n===Fr)return r.COMPRESSED_RED_GREEN_RGTC2_EXT;if(n===Qo)return r.COMPRESSED_SIGNED_RED_GREEN_RGTC2_EXT}else return null;return n===ls?i.UNSIGNED_INT_24_8:i[n]!==void 0?i[n]:null}return{convert:t}}var zv=`
void main() {

	gl_Position = vec4( position, 1.0 );

}`,Vv=`
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

}`,Jc=class{constructor(){this.texture=null,this.mesh=null,this.depthNear=0,this.depthFar=0}init(e,t){if(this.texture===null){let n=new Sr(e.texture);(e.depthNear!==t.depthNear||e.depthFar!==t.depthFar)&&(this.depthNear=e.depthNear,this.depthFar=e.depthFar),this.texture=n}}getMesh(e){if(this.texture!==null&&this.mesh===null){let t=e.cameras[0].viewport,n=new Hn({vertexShader:zv,fragmentShader:Vv,uniforms:{depthColor:{value:this.texture},depthWidth:{value:t.z},depthHeight:{value:t.w}}});this.mesh=new vt(new Tr(20,20),n)}return this.mesh}reset(){this.texture=null,this.mesh=null}getDepthTexture(){return this.texture}},Kc=class extends Gn{constructor(e,t){super();let n=this,s=null,r=1,a=null,o="local-floor",l=1,c=null,h=null,u=null,d=null,f=null,p=null,v=typeof XRWebGLBinding<"u",m=new Jc,g={},M=t.getContextAttributes(),C=null,w=null,E=[],S=[],x=new et,T=null,B=null,U=new hn;U.viewport=new _t;let N=new hn;N.viewport=new _t;let V=[U,N],q=new po,I=null,X=null;this.cameraAutoUpdate=!0,this.enabled=!1,this.isPresenting=!1,this.getController=function(j){let be=E[j];return be===void 0&&(be=new ks,E[j]=be),be.getTargetRaySpace()},this.getControllerGrip=function(j){let be=E[j];return be===void 0&&(be=new ks,E[j]=be),be.getGripSpace()},this.getHand=function(j){let be=E[j];return be===void 0&&(be=new ks,E[j]=be),be.getHandSpace()};function J(j){let be=S.indexOf(j.inputSource);if(be===-1)return;let Ae=E[be];Ae!==void 0&&(Ae.update(j.inputSource,j.frame,c||a),Ae.dispatchEvent({type:j.type,data:j.inputSource}))}function $(){s.removeEventListener("select",J),s.removeEventListener("selectstart",J),s.removeEventListener("selectend",J),s.removeEventListener("squeeze",J),s.removeEventListener("squeezestart",J),s.removeEventListener("squeezeend",J),s.removeEventListener("end",$),s.removeEventListener("inputsourceschange",se);for(let j=0;j<E.length;j++){let be=S[j];be!==null&&(S[j]=null,E[j].disconnect(be))}I=null,X=null,m.reset();for(let j in g)delete g[j];if(e.setRenderTarget(C),f=null,d=null,u=null,s=null,w=null,Ee.stop(),n.isPresenting=!1,e.setPixelRatio(T),e.setSize(x.width,x.height,!1),B!==null){let j=B.camera;j.fov=B.fov,j.zoom=B.zoom,j.updateProjectionMatrix(),B=null}n.dispatchEvent({type:"sessionend"})}this.setFramebufferScaleFactor=function(j){r=j,n.isPresenting===!0&&Oe("WebXRManager: Cannot change framebuffer scale while presenting.")},this.setReferenceSpaceType=function(j){o=j,n.isPresenting===!0&&Oe("WebXRManager: Cannot change reference space type while presenting.")},this.getReferenceSpace=function(){return c||a},this.setReferenceSpace=function(j){c=j},this.getBaseLayer=function(){return d!==null?d:f},this.getBinding=function(){return u===null&&v&&(u=new XRWebGLBinding(s,t)),u},this.getFrame=function(){return p},this.getSession=function(){return s},this.setSession=async function(j){if(s=j,s!==null){if(C=e.getRenderTarget(),s.addEventListener("select",J),s.addEventListener("selectstart",J),s.addEventListener("selectend",J),s.addEventListener("squeeze",J),s.addEventListener("squeezestart",J),s.addEventListener("squeezeend",J),s.addEventListener("end",$),s.addEventListener("inputsourceschange",se),M.xrCompatible!==!0&&await t.makeXRCompatible(),T=e.getPixelRatio(),e.getSize(x),v&&"createProjectionLayer"in XRWebGLBinding.prototype){let Ae=null,Ue=null,Me=null;M.depth&&(Me=M.stencil?t.DEPTH24_STENCIL8:t.DEPTH_COMPONENT24,Ae=M.stencil?di:ci,Ue=M.stencil?ls:Dn);let We={colorFormat:t.RGBA8,depthFormat:Me,scaleFactor:r};u=this.getBinding(),d=u.createProjectionLayer(We),s.updateRenderState({layers:[d]}),e.setPixelRatio(1),e.setSize(d.textureWidth,d.textureHeight,!1),w=new un(d.textureWidth,d.textureHeight,{format:On,type:pn,depthTexture:new hi(d.textureWidth,d.textureHeight,Ue,void 0,void 0,void 0,void 0,void 0,void 0,Ae),stencilBuffer:M.stencil,colorSpace:e.outputColorSpace,samples:M.antialias?4:0,resolveDepthBuffer:d.ignoreDepthValues===!1,resolveStencilBuffer:d.ignoreDepthValues===!1,storeMultisampledDepthBuffer:d.ignoreDepthValues===!1,storeMultisampledStencilBuffer:d.ignoreDepthValues===!1})}else{let Ae={antialias:M.antialias,alpha:!0,depth:M.depth,stencil:M.stencil,framebufferScaleFactor:r};f=new XRWebGLLayer(s,t,Ae),s.updateRenderState({baseLayer:f}),e.setPixelRatio(1),e.setSize(f.framebufferWidth,f.framebufferHeight,!1),w=new un(f.framebufferWidth,f.framebufferHeight,{format:On,type:pn,colorSpace:e.outputColorSpace,stencilBuffer:M.stencil,resolveDepthBuffer:f.ignoreDepthValues===!1,resolveStencilBuffer:f.ignoreDepthValues===!1,storeMultisampledDepthBuffer:f.ignoreDepthValues===!1,storeMultisampledStencilBuffer:f.ignoreDepthValues===!1})}w.isXRRenderTarget=!0,this.setFoveation(l),c=null,a=await s.requestReferenceSpace(o),Ee.setContext(s),Ee.start(),n.isPresenting=!0,n.dispatchEvent({type:"sessionstart"})}},this.getEnvironmentBlendMode=function(){if(s!==null)return s.environmentBlendMode},this.getDepthTexture=function(){return m.getDepthTexture()};function se(j){for(let be=0;be<j.removed.length;be++){let Ae=j.removed[be],Ue=S.indexOf(Ae);Ue>=0&&(S[Ue]=null,E[Ue].disconnect(Ae))}for(let be=0;be<j.added.length;be++){let Ae=j.added[be],Ue=S.indexOf(Ae);if(Ue===-1){for(let We=0;We<E.length;We++)if(We>=S.length){S.push(Ae),Ue=We;break}else if(S[We]===null){S[We]=Ae,Ue=We;break}if(Ue===-1)break}let Me=E[Ue];Me&&Me.connect(Ae)}}function L(j,be){be===null?j.matrixWorld.copy(j.matrix):j.matrixWorld.multiplyMatrices(be.matrixWorld,j.matrix),j.matrixWorldInverse.copy(j.matrixWorld).invert()}this.updateCamera=function(j){if(s===null)return;let be=j.near,Ae=j.far;m.texture!==null&&(m.depthNear>0&&(be=m.depthNear),m.depthFar>0&&(Ae=m.depthFar)),q.near=N.near=U.near=be,q.far=N.far=U.far=Ae,(I!==q.near||X!==q.far)&&(s.updateRenderState({depthNear:q.near,depthFar:q.far}),I=q.near,X=q.far),q.layers.mask=j.layers.mask|6,U.layers.mask=q.layers.mask&-5,N.layers.mask=q.layers.mask&-3;let Ue=j.parent,Me=q.cameras;L(q,Ue);for(let We=0;We<Me.length;We++)L(Me[We],Ue);q.projectionMatrix.copy(U.projectionMatrix),q.projectionMatrixInverse.copy(U.projectionMatrixInverse),B===null&&j.isPerspectiveCamera&&(B={camera:j,fov:j.fov,zoom:j.zoom}),Y(j,q,Ue)};function Y(j,be,Ae){Ae===null?j.matrix.copy(be.matrixWorld):(j.matrix.copy(Ae.matrixWorld),j.matrix.invert(),j.matrix.multiply(be.matrixWorld)),j.matrix.decompose(j.position,j.quaternion,j.scale),j.updateMatrixWorld(!0),j.projectionMatrix.copy(be.projectionMatrix),j.projectionMatrixInverse.copy(be.projectionMatrixInverse),j.isPerspectiveCamera&&(j.fov=$a*2*Math.atan(1/j.projectionMatrix.elements[5]),j.zoom=1)}this.getCamera=function(){return q},this.getFoveation=function(){if(!(d===null&&f===null))return l},this.setFoveation=function(j){l=j,d!==null&&(d.fixedFoveation=j),f!==null&&f.fixedFoveation!==void 0&&(f.fixedFoveation=j)},this.hasDepthSensing=function(){return m.texture!==null},this.getDepthSensingMesh=function(){return m.getMesh(q)},this.getCameraTexture=function(j){return g[j]};let ee=null;function le(j,be){if(h=be.getViewerPose(c||a),p=be,h!==null){let Ae=h.views;f!==null&&(e.setRenderTargetFramebuffer(w,f.framebuffer),e.setRenderTarget(w));let Ue=!1;Ae.length!==q.cameras.length&&(q.cameras.length=0,Ue=!0);for(let ke=0;ke<Ae.length;ke++){let st=Ae[ke],ot=null;if(f!==null)ot=f.getViewport(st);else{let Ft=u.getViewSubImage(d,st);ot=Ft.viewport,ke===0&&(e.setRenderTargetTextures(w,Ft.colorTexture,Ft.depthStencilTexture),e.setRenderTarget(w))}let Ye=V[ke];Ye===void 0&&(Ye=new hn,Ye.layers.enable(ke),Ye.viewport=new _t,V[ke]=Ye),Ye.matrix.fromArray(st.transform.matrix),Ye.matrix.decompose(Ye.position,Ye.quaternion,Ye.scale),Ye.projectionMatrix.fromArray(st.projectionMatrix),Ye.projectionMatrixInverse.copy(Ye.projectionMatrix).invert(),Ye.viewport.set(ot.x,ot.y,ot.width,ot.height),ke===0&&(q.matrix.copy(Ye.matrix),q.matrix.decompose(q.position,q.quaternion,q.scale)),Ue===!0&&q.cameras.push(Ye)}let Me=s.enabledFeatures;if(Me&&Me.includes("depth-sensing")&&s.depthUsage=="gpu-optimized"&&v){u=n.getBinding();let ke=u.getDepthInformation(Ae[0]);ke&&ke.isValid&&ke.texture&&m.init(ke,s.renderState)}if(Me&&Me.includes("camera-access")&&v){e.state.unbindTexture(),u=n.getBinding();for(let ke=0;ke<Ae.length;ke++){let st=Ae[ke].camera;if(st){let ot=g[st];ot||(ot=new Sr,g[st]=ot);let Ye=u.getCameraImage(st);ot.sourceTexture=Ye}}}}for(let Ae=0;Ae<E.length;Ae++){let Ue=S[Ae],Me=E[Ae];Ue!==null&&Me!==void 0&&Me.update(Ue,be,c||a)}ee&&ee(j,be),be.detectedPlanes&&n.dispatchEvent({type:"planesdetected",data:be}),p=null}let Ee=new Dd;Ee.setAnimationLoop(le),this.setAnimationLoop=function(j){ee=j},this.dispose=function(){}}},Gv=new at,Wd=new Ve;Wd.set(-1,0,0,0,1,0,0,0,1);function Hv(i,e){function t(m,g){m.matrixAutoUpdate===!0&&m.updateMatrix(),g.value.copy(m.matrix)}function n(m,g){g.color.getRGB(m.fogColor.value,kc(i)),g.isFog?(m.fogNear.value=g.near,m.fogFar.value=g.far):g.isFogExp2&&(m.fogDensity.value=g.density)}function s(m,g,M,C,w){g.isNodeMaterial?g.uniformsNeedUpdate=!1:g.isMeshBasicMaterial?r(m,g):g.isMeshLambertMaterial?(r(m,g),g.envMap&&(m.envMapIntensity.value=g.envMapIntensity)):g.isMeshToonMaterial?(r(m,g),u(m,g)):g.isMeshPhongMaterial?(r(m,g),h(m,g),g.envMap&&(m.envMapIntensity.value=g.envMapIntensity)):g.isMeshStandardMaterial?(r(m,g),d(m,g),g.isMeshPhysicalMaterial&&f(m,g,w)):g.isMeshMatcapMaterial?(r(m,g),p(m,g)):g.isMeshDepthMaterial?r(m,g):g.isMeshDistanceMaterial?(r(m,g),v(m,g)):g.isMeshNormalMaterial?r(m,g):g.isLineBasicMaterial?(a(m,g),g.isLineDashedMaterial&&o(m,g)):g.isPointsMaterial?l(m,g,M,C):g.isSpriteMaterial?c(m,g):g.isShadowMaterial?(m.color.value.copy(g.color),m.opacity.value=g.opacity):g.isShaderMaterial&&(g.uniformsNeedUpdate=!1)}function r(m,g){m.opacity.value=g.opacity,g.color&&m.diffuse.value.copy(g.color),g.emissive&&m.emissive.value.copy(g.emissive).multiplyScalar(g.emissiveIntensity),g.map&&(m.map.value=g.map,t(g.map,m.mapTransform)),g.alphaMap&&(m.alphaMap.value=g.alphaMap,t(g.alphaMap,m.alphaMapTransform)),g.bumpMap&&(m.bumpMap.value=g.bumpMap,t(g.bumpMap,m.bumpMapTransform),m.bumpScale.value=g.bumpScale,g.side===Zt&&(m.bumpScale.value*=-1)),g.normalMap&&(m.normalMap.value=g.normalMap,t(g.normalMap,m.normalMapTransform),m.normalScale.value.copy(g.normalScale),g.side===Zt&&m.normalScale.value.negate()),g.displacementMap&&(m.displacementMap.value=g.displacementMap,t(g.displacementMap,m.displacementMapTransform),m.displacementScale.value=g.displacementScale,m.displacementBias.value=g.displacementBias),g.emissiveMap&&(m.emissiveMap.value=g.emissiveMap,t(g.emissiveMap,m.emissiveMapTransform)),g.specularMap&&(m.specularMap.value=g.specularMap,t(g.specularMap,m.specularMapTransform)),g.alphaTest>0&&(m.alphaTest.value=g.alphaTest);let M=e.get(g),C=M.envMap,w=M.envMapRotation;C&&(m.envMap.value=C,m.envMapRotation.value.setFromMatrix4(Gv.makeRotationFromEuler(w)).transpose(),C.isCubeTexture&&C.isRenderTargetTexture===!1&&m.envMapRotation.value.premultiply(Wd),m.reflectivity.value=g.reflectivity,m.ior.value=g.ior,m.refractionRatio.value=g.refractionRatio),g.lightMap&&(m.lightMap.value=g.lightMap,m.lightMapIntensity.value=g.lightMapIntensity,t(g.lightMap,m.lightMapTransform)),g.aoMap&&(m.aoMap.value=g.aoMap,m.aoMapIntensity.value=g.aoMapIntensity,t(g.aoMap,m.aoMapTransform))}function a(m,g){m.diffuse.value.copy(g.color),m.opacity.value=g.opacity,g.map&&(m.map.value=g.map,t(g.map,m.mapTransform))}function o(m,g){m.dashSize.value=g.dashSize,m.totalSize.value=g.dashSize+g.gapSize,m.scale.value=g.scale}function l(m,g,M,C){m.diffuse.value.copy(g.color),m.opacity.value=g.opacity,m.size.value=g.size*M,m.scale.value=C*.5,g.map&&(m.map.value=g.map,t(g.map,m.uvTransform)),g.alphaMap&&(m.alphaMap.value=g.alphaMap,t(g.alphaMap,m.alphaMapTransform)),g.alphaTest>0&&(m.alphaTest.value=g.alphaTest)}function c(m,g){m.diffuse.value.copy(g.color),m.opacity.value=g.opacity,m.rotation.value=g.rotation,g.map&&(m.map.value=g.map,t(g.map,m.mapTransform)),g.alphaMap&&(m.alphaMap.value=g.alphaMap,t(g.alphaMap,m.alphaMapTransform)),g.alphaTest>0&&(m.alphaTest.value=g.alphaTest)}function h(m,g){m.specular.value.copy(g.specular),m.shininess.value=Math.max(g.shininess,1e-4)}function u(m,g){g.gradientMap&&(m.gradientMap.value=g.gradientMap)}function d(m,g){m.metalness.value=g.metalness,g.metalnessMap&&(m.metalnessMap.value=g.metalnessMap,t(g.metalnessMap,m.metalnessMapTransform)),m.roughness.value=g.roughness,g.roughnessMap&&(m.roughnessMap.value=g.roughnessMap,t(g.roughnessMap,m.roughnessMapTransform)),g.envMap&&(m.envMapIntensity.value=g.envMapIntensity)}function f(m,g,M){m.ior.value=g.ior,g.diffuseRoughness>0&&(m.diffuseRoughness.value=g.diffuseRoughness,g.diffuseRoughnessMap&&(m.diffuseRoughnessMap.value=g.diffuseRoughnessMap,t(g.diffuseRoughnessMap,m.diffuseRoughnessMapTransform))),g.sheen>0&&(m.sheenColor.value.copy(g.sheenColor).multiplyScalar(g.sheen),m.sheenRoughness.value=g.sheenRoughness,g.sheenColorMap&&(m.sheenColorMap.value=g.sheenColorMap,t(g.sheenColorMap,m.sheenColorMapTransform)),g.sheenRoughnessMap&&(m.sheenRoughnessMap.value=g.sheenRoughnessMap,t(g.sheenRoughnessMap,m.sheenRoughnessMapTransform))),g.clearcoat>0&&(m.clearcoat.value=g.clearcoat,m.clearcoatRoughness.value=g.clearcoatRoughness,g.clearcoatMap&&(m.clearcoatMap.value=g.clearcoatMap,t(g.clearcoatMap,m.clearcoatMapTransform)),g.clearcoatRoughnessMap&&(m.clearcoatRoughnessMap.value=g.clearcoatRoughnessMap,t(g.clearcoatRoughnessMap,m.clearcoatRoughnessMapTransform)),g.clearcoatNormalMap&&(m.clearcoatNormalMap.value=g.clearcoatNormalMap,t(g.clearcoatNormalMap,m.clearcoatNormalMapTransform),m.clearcoatNormalScale.value.copy(g.clearcoatNormalScale),g.side===Zt&&m.clearcoatNormalScale.value.negate())),g.dispersion>0&&(m.dispersion.value=g.dispersion),g.retroreflectivity>0&&(m.retroreflectivity.value=g.retroreflectivity),g.iridescence>0&&(m.iridescence.value=g.iridescence,m.iridescenceIOR.value=g.iridescenceIOR,m.iridescenceThicknessMinimum.value=g.iridescenceThicknessMinimum,m.iridescenceThicknessMaximum.value=g.iridescenceThicknessMaximum,g.iridescenceMap&&(m.iridescenceMap.value=g.iridescenceMap,t(g.iridescenceMap,m.iridescenceMapTransform)),g.iridescenceThicknessMap&&(m.iridescenceThicknessMap.value=g.iridescenceThicknessMap,t(g.iridescenceThicknessMap,m.iridescenceThicknessMapTransform))),g.transmission>0&&(m.transmission.value=g.transmission,m.transmissionSamplerMap.value=M.texture,m.transmissionSamplerSize.value.set(M.width,M.height),g.transmissionMap&&(m.transmissionMap.value=g.transmissionMap,t(g.transmissionMap,m.transmissionMapTransform)),m.thickness.value=g.thickness,g.thicknessMap&&(m.thicknessMap.value=g.thicknessMap,t(g.thicknessMap,m.thicknessMapTransform)),m.attenuationDistance.value=g.attenuationDistance,m.attenuationColor.value.copy(g.attenuationColor)),g.anisotropy>0&&(m.anisotropyVector.value.set(g.anisotropy*Math.cos(g.anisotropyRotation),g.anisotropy*Math.sin(g.anisotropyRotation)),g.anisotropyMap&&(m.anisotropyMap.value=g.anisotropyMap,t(g.anisotropyMap,m.anisotropyMapTransform))),m.specularIntensity.value=g.specularIntensity,m.specularColor.value.copy(g.specularColor),g.specularColorMap&&(m.specularColorMap.value=g.specularColorMap,t(g.specularColorMap,m.specularColorMapTransform)),g.specularIntensityMap&&(m.specularIntensityMap.value=g.specularIntensityMap,t(g.specularIntensityMap,m.specularIntensityMapTransform))}function p(m,g){g.matcap&&(m.matcap.value=g.matcap)}function v(m,g){let M=e.get(g).light;m.referencePosition.value.setFromMatrixPosition(M.matrixWorld),m.nearDistance.value=M.shadow.camera.near,m.farDistance.value=M.shadow.camera.far}return{refreshFogUniforms:n,refreshMaterialUniforms:s}}function Wv(i,e,t,n){let s={},r={};function a(M,C){let w=C.program;n.uniformBlockBinding(M,w,s[M.id])}function o(M,C){let w=s[M.id];w===void 0&&(p(M),w=l(M),s[M.id]=w,M.addEventListener("dispose",m));let E=C.program;n.updateUBOMapping(M,E);let S=e.render.frame;r[M.id]!==S&&(c(M),r[M.id]=S)}function l(M){let C=i.createBuffer(),w=M.__size,E=M.usage;return i.bindBuffer(i.UNIFORM_BUFFER,C),i.bufferData(i.UNIFORM_BUFFER,w,E),i.bindBuffer(i.UNIFORM_BUFFER,null),C}function c(M){let C=s[M.id],w=M.uniforms,E=M.__cache;i.bindBuffer(i.UNIFORM_BUFFER,C);for(let S=0,x=w.length;S<x;S++){let T=w[S];if(Array.isArray(T))for(let B=0,U=T.length;B<U;B++)h(T[B],S,B,E);else h(T,S,0,E)}i.bindBuffer(i.UNIFORM_BUFFER,null)}function h(M,C,w,E){if(d(M,C,w,E)===!0){let S=M.__offset,x=M.value;if(Array.isArray(x)){let T=0;for(let B=0;B<x.length;B++){let U=x[B],N=v(U,!0);u(U,M.__data,T),T+=N.storage/Float32Array.BYTES_PER_ELEMENT}}else u(x,M.__data,0);i.bufferSubData(i.UNIFORM_BUFFER,S,M.__data)}}function u(M,C,w){typeof M=="number"||typeof M=="boolean"?C[w]=M:M.isMatrix3?(C[w]=M.elements[0],C[w+1]=M.elements[1],C[w+2]=M.elements[2],C[w+3]=0,C[w+4]=M.elements[3],C[w+5]=M.elements[4],C[w+6]=M.elements[5],C[w+7]=0,C[w+8]=M.elements[6],C[w+9]=M.elements[7],C[w+10]=M.elements[8],C[w+11]=0):ArrayBuffer.isView(M)?C.set(M.subarray(0,C.length-w),w):M.toArray(C,w)}function d(M,C,w,E){let S=M.value,x=C+"_"+w;if(Array.isArray(S)){E[x]===void 0&&(E[x]=[]);let T=E[x],B=!1;for(let U=0;U<S.length;U++)f(S[U],T,U)===!0&&(B=!0);return B}return f(S,E,x)}function f(M,C,w){if(C[w]===void 0)return typeof M=="number"||typeof M=="boolean"?C[w]=M:ArrayBuffer.isView(M)?C[w]=M.slice():C[w]=M.clone(),!0;{let E=C[w];if(typeof M=="number"||typeof M=="boolean"){if(E!==M)return C[w]=M,!0}else{if(ArrayBuffer.isView(M))return!0;if(E.equals(M)===!1)return E.copy(M),!0}}return!1}function p(M){let C=M.uniforms,w=0,E=16;for(let x=0,T=C.length;x<T;x++){let B=Array.isArray(C[x])?C[x]:[C[x]];for(let U=0,N=B.length;U<N;U++){let V=B[U],q=Array.isArray(V.value)?V.value:[V.value],I=Array.isArray(C[x])||Array.isArray(V.value),X=w;for(let $=0,se=q.length;$<se;$++){let L=q[$],Y=v(L,I),ee=w%E,le=ee%Y.boundary,Ee=ee+le;w+=le,Ee!==0&&E-Ee<Y.storage&&(w+=E-Ee),$===0&&(X=w),w+=Y.storage}let J=V.type==="int"?Int32Array:V.type==="uint"?Uint32Array:Float32Array;V.__data=new J((w-X)/Float32Array.BYTES_PER_ELEMENT),V.__offset=X}}let S=w%E;return S>0&&(w+=E-S),M.__size=w,M.__cache={},this}function v(M,C){let w={boundary:0,storage:0};return typeof M=="number"||typeof M=="boolean"?(w.boundary=4,w.storage=4):M.isVector2?(w.boundary=8,w.storage=8):M.isVector3||M.isColor?(w.boundary=16,w.storage=12):M.isVector4?(w.boundary=16,w.storage=16):M.isMatrix3?(w.boundary=16,w.storage=48):M.isMatrix4?(w.boundary=16,w.storage=64):M.isTexture?Oe("WebGLRenderer: Texture samplers can not be part of an uniforms group."):ArrayBuffer.isView(M)?(w.boundary=16,w.storage=M.byteLength):Oe("WebGLRenderer: Unsupported uniform value type.",M),C===!0&&(w.boundary=16,w.storage=Math.ceil(w.storage/16)*16),w}function m(M){let C=M.target;C.removeEventListener("dispose",m),i.deleteBuffer(s[C.id]),delete s[C.id],delete r[C.id]}function g(){for(let M in s)i.deleteBuffer(s[M]);s={},r={}}return{bind:a,update:o,dispose:g}}var $v=new Uint16Array([12469,15057,12620,14925,13266,14620,13807,14376,14323,13990,14545,13625,14713,13328,14840,12882,14931,12528,14996,12233,15039,11829,15066,11525,15080,11295,15085,10976,15082,10705,15073,10495,13880,14564,13898,14542,13977,14430,14158,14124,14393,13732,14556,13410,14702,12996,14814,12596,14891,12291,14937,11834,14957,11489,14958,11194,14943,10803,14921,10506,14893,10278,14858,9960,14484,14039,14487,14025,14499,13941,14524,13740,14574,13468,14654,13106,14743,12678,14818,12344,14867,11893,14889,11509,14893,11180,14881,10751,14852,10428,14812,10128,14765,9754,14712,9466,14764,13480,14764,13475,14766,13440,14766,13347,14769,13070,14786,12713,14816,12387,14844,11957,14860,11549,14868,11215,14855,10751,14825,10403,14782,10044,14729,9651,14666,9352,14599,9029,14967,12835,14966,12831,14963,12804,14954,12723,14936,12564,14917,12347,14900,11958,14886,11569,14878,11247,14859,10765,14828,10401,14784,10011,14727,9600,14660,9289,14586,8893,14508,8533,15111,12234,15110,12234,15104,12216,15092,12156,15067,12010,15028,11776,14981,11500,14942,11205,14902,10752,14861,10393,14812,9991,14752,9570,14682,9252,14603,8808,14519,8445,14431,8145,15209,11449,15208,11451,15202,11451,15190,11438,15163,11384,15117,11274,15055,10979,14994,10648,14932,10343,14871,9936,14803,9532,14729,9218,14645,8742,14556,8381,14461,8020,14365,7603,15273,10603,15272,10607,15267,10619,15256,10631,15231,10614,15182,10535,15118,10389,15042,10167,14963,9787,14883,9447,14800,9115,14710,8665,14615,8318,14514,7911,14411,7507,14279,7198,15314,9675,15313,9683,15309,9712,15298,9759,15277,9797,15229,9773,15166,9668,15084,9487,14995,9274,14898,8910,14800,8539,14697,8234,14590,7790,14479,7409,14367,7067,14178,6621,15337,8619,15337,8631,15333,8677,15325,8769,15305,8871,15264,8940,15202,8909,15119,8775,15022,8565,14916,8328,14804,8009,14688,7614,14569,7287,14448,6888,14321,6483,14088,6171,15350,7402,15350,7419,15347,7480,15340,7613,15322,7804,15287,7973,15229,8057,15148,8012,15046,7846,14933,7611,14810,7357,14682,7069,14552,6656,14421,6316,14251,5948,14007,5528,15356,5942,15356,5977,15353,6119,15348,6294,15332,6551,15302,6824,15249,7044,15171,7122,15070,7050,14949,6861,14818,6611,14679,6349,14538,6067,14398,5651,14189,5311,13935,4958,15359,4123,15359,4153,15356,4296,15353,4646,15338,5160,15311,5508,15263,5829,15188,6042,15088,6094,14966,6001,14826,5796,14678,5543,14527,5287,14377,4985,14133,4586,13869,4257,15360,1563,15360,1642,15358,2076,15354,2636,15341,3350,15317,4019,15273,4429,15203,4732,15105,4911,14981,4932,14836,4818,14679,4621,14517,4386,14359,4156,14083,3795,13808,3437,15360,122,15360,137,15358,285,15355,636,15344,1274,15322,2177,15281,2765,15215,3223,15120,3451,14995,3569,14846,3567,14681,3466,14511,3305,14344,3121,14037,2800,13753,2467,15360,0,15360,1,15359,21,15355,89,15346,253,15325,479,15287,796,15225,1148,15133,1492,15008,1749,14856,1882,14685,1886,14506,1783,14324,1608,13996,1398,13702,1183]),Xn=null;function Xv(){return Xn===null&&(Xn=new Za($v,16,16,zi,Fn),Xn.name="DFG_LUT",Xn.minFilter=Yt,Xn.magFilter=Yt,Xn.wrapS=Vn,Xn.wrapT=Vn,Xn.generateMipmaps=!1,Xn.needsUpdate=!0),Xn}var Ys=class{constructor(e={}){let{canvas:t=sd(),context:n=null,depth:s=!0,stencil:r=!1,alpha:a=!1,antialias:o=!1,premultipliedAlpha:l=!0,preserveDrawingBuffer:c=!1,powerPreference:h="default",failIfMajorPerformanceCaveat:u=!1,reversedDepthBuffer:d=!1,outputBufferType:f=pn}=e;this.isWebGLRenderer=!0;let p;if(n!==null){if(typeof WebGLRenderingContext<"u"&&n instanceof WebGLRenderingContext)throw new Error("THREE.WebGLRenderer: WebGL 1 is not supported since r163.");p=n.getContextAttributes().alpha}else p=a;let v=f,m=new Set([wo,Mo,bo]),g=new Set([pn,Dn,Xs,ls,xo,yo]),M=new Uint32Array(4),C=new Int32Array(4),w={textures:[],min:[],max:[],resolution:[]},E=null,S=null,x=[],T=[],B=null;this.domElement=t,this.debug={checkShaderErrors:!0,diagnostics:{keywords:!1},onShaderError:null},this.autoClear=!0,this.autoClearColor=!0,this.autoClearDepth=!0,this.autoClearStencil=!0,this.sortObjects=!0,this.clippingPlanes=[],this.localClippingEnabled=!1,this.toneMapping=$n,this.toneMappingExposure=1,this.transmissionResolutionScale=1;let U=this,N=!1,V=null,q=null,I=null,X=null;this._outputColorSpace=cn;let J=0,$=0,se=null,L=-1,Y=null,ee=new _t,le=new _t,Ee=null,j=new je(0),be=0,Ae=t.width,Ue=t.height,Me=1,We=null,Mt=null,ke=new _t(0,0,Ae,Ue),st=new _t(0,0,Ae,Ue),ot=!1,Ye=new is,Ft=new Ja,Et=!1,Jt=!1,pt=new at,kn=new k,Pt=new _t,gn={background:null,fog:null,environment:null,overrideMaterial:null,isScene:!0},_n=!1;function vn(){return se===null?Me:1}let F=n;function xn(b,D){return t.getContext(b,D)}let dt,ft,_e,At,Fe,Ge,A,y,H,re,ie,ce,pe,Q,te,ue,P,ne,K,de,oe,he,Ie;try{let b={alpha:!0,depth:s,stencil:r,antialias:o,premultipliedAlpha:l,preserveDrawingBuffer:c,powerPreference:h,failIfMajorPerformanceCaveat:u};if("setAttribute"in t&&t.setAttribute("data-engine",`three.js r${"187"}`),t.addEventListener("webglcontextlost",Le,!1),t.addEventListener("webglcontextrestored",$e,!1),t.addEventListener("webglcontextcreationerror",xe,!1),F===null){let D="webgl2";if(F=xn(D,b),F===null)throw xn(D)?new Error("THREE.WebGLRenderer: Error creating WebGL context with your selected attributes."):new Error("THREE.WebGLRenderer: Error creating WebGL context.")}Xe()}catch(b){throw t.removeEventListener("webglcontextlost",Le,!1),t.removeEventListener("webglcontextrestored",$e,!1),t.removeEventListener("webglcontextcreationerror",xe,!1),ze("WebGLRenderer: "+b.message),b}function Xe(){dt=new i_(F),dt.init(),oe=new Bv(F,dt),ft=new X0(F,dt,e,oe),_e=new Ov(F,dt),ft.reversedDepthBuffer&&d&&_e.buffers.depth.setReversed(!0),q=F.createFramebuffer(),I=F.createFramebuffer(),X=F.createFramebuffer(),At=new a_(F),Fe=new wv,Ge=new kv(F,dt,_e,Fe,ft,oe,At),A=new n_(U),y=new lm(F),he=new W0(F,y),H=new s_(F,y,At,he),re=new l_(F,H,y,he,At),ne=new o_(F,ft,Ge),te=new q0(Fe),ie=new Mv(U,A,dt,ft,he,te),ce=new Hv(U,Fe),pe=new Tv,Q=new Iv(dt),P=new H0(U,A,_e,re,p,l),ue=new Fv(U,re,ft),Ie=new Wv(F,At,ft,_e),K=new $0(F,dt,At),de=new r_(F,dt,At),At.programs=ie.programs,U.capabilities=ft,U.extensions=dt,U.properties=Fe,U.renderLists=pe,U.shadowMap=ue,U.state=_e,U.info=At}v!==pn&&(B=new h_(v,t.width,t.height,o,s,r));let ae=new Kc(U,F);this.xr=ae,this.getContext=function(){return F},this.getContextAttributes=function(){return F.getContextAttributes()},this.forceContextLoss=function(){let b=dt.get("WEBGL_lose_context");b&&b.loseContext()},this.forceContextRestore=function(){let b=dt.get("WEBGL_lose_context");b&&b.restoreContext()},this.getPixelRatio=function(){return Me},this.setPixelRatio=function(b){b!==void 0&&(Me=b,this.setSize(Ae,Ue,!1))},this.getSize=function(b){return b.set(Ae,Ue)},this.setSize=function(b,D,Z=!0){if(ae.isPresenting){Oe("WebGLRenderer: Can't change size while VR device is presenting.");return}Ae=b,Ue=D,t.width=Math.floor(b*Me),t.height=Math.floor(D*Me),Z===!0&&(t.style.width=b+"px",t.style.height=D+"px"),B!==null&&B.setSize(t.width,t.height),this.setViewport(0,0,b,D)},this.getDrawingBufferSize=function(b){return b.set(Ae*Me,Ue*Me).floor()},this.setDrawingBufferSize=function(b,D,Z){Ae=b,Ue=D,Me=Z,t.width=Math.floor(b*Z),t.height=Math.floor(D*Z),this.setViewport(0,0,b,D)},this.setEffects=function(b){if(v===pn){ze("WebGLRenderer: setEffects() requires outputBufferType set to HalfFloatType or FloatType.");return}if(b){for(let D=0;D<b.length;D++)if(b[D].isOutputPass===!0){Oe("WebGLRenderer: OutputPass is not needed in setEffects(). Tone mapping and color space conversion are applied automatically.");break}}B.setEffects(b||[])},this.getCurrentViewport=function(b){return b.copy(ee)},this.getViewport=function(b){return b.copy(ke)},this.setViewport=function(b,D,Z,z){b.isVector4?ke.set(b.x,b.y,b.z,b.w):ke.set(b,D,Z,z),_e.viewport(ee.copy(ke).multiplyScalar(vn()).round())},this.getScissor=function(b){return b.copy(st)},this.setScissor=function(b,D,Z,z){b.isVector4?st.set(b.x,b.y,b.z,b.w):st.set(b,D,Z,z),_e.scissor(le.copy(st).multiplyScalar(vn()).round())},this.getScissorTest=function(){return ot},this.setScissorTest=function(b){_e.setScissorTest(ot=b)},this.setOpaqueSort=function(b){We=b},this.setTransparentSort=function(b){Mt=b},this.getClearColor=function(b){return b.copy(P.getClearColor())},this.setClearColor=function(){P.setClearColor(...arguments)},this.getClearAlpha=function(){return P.getClearAlpha()},this.setClearAlpha=function(){P.setClearAlpha(...arguments)},this.clear=function(b=!0,D=!0,Z=!0){let z=0;if(b){let W=!1;if(se!==null){let me=se.texture.format;W=m.has(me)}if(W){let me=se.texture.type,Te=g.has(me),fe=P.getClearColor(),we=P.getClearAlpha(),Pe=fe.r,He=fe.g,Ze=fe.b;Te?(M[0]=Pe,M[1]=He,M[2]=Ze,M[3]=we,F.clearBufferuiv(F.COLOR,0,M)):(C[0]=Pe,C[1]=He,C[2]=Ze,C[3]=we,F.clearBufferiv(F.COLOR,0,C))}else z|=F.COLOR_BUFFER_BIT}D&&(z|=F.DEPTH_BUFFER_BIT,this.state.buffers.depth.setMask(!0)),Z&&(z|=F.STENCIL_BUFFER_BIT,this.state.buffers.stencil.setMask(4294967295)),z!==0&&F.clear(z)},this.clearColor=function(){this.clear(!0,!1,!1)},this.clearDepth=function(){this.clear(!1,!0,!1)},this.clearStencil=function(){this.clear(!1,!1,!0)},this.setNodesHandler=function(b){b.setRenderer(this),V=b},this.dispose=function(){t.removeEventListener("webglcontextlost",Le,!1),t.removeEventListener("webglcontextrestored",$e,!1),t.removeEventListener("webglcontextcreationerror",xe,!1),P.dispose(),pe.dispose(),Q.dispose(),Ge.dispose(),Fe.dispose(),A.dispose(),re.dispose(),H.dispose(),he.dispose(),Ie.dispose(),ie.dispose(),ae.dispose(),ae.removeEventListener("sessionstart",vh),ae.removeEventListener("sessionend",xh),Wi.stop()};function Le(b){b.preventDefault(),Fc("WebGLRenderer: Context Lost."),N=!0}function $e(){Fc("WebGLRenderer: Context Restored."),N=!1;let b=At.autoReset,D=ue.enabled,Z=ue.autoUpdate,z=ue.needsUpdate,W=ue.type;Xe(),At.autoReset=b,ue.enabled=D,ue.autoUpdate=Z,ue.needsUpdate=z,ue.type=W}function xe(b){ze("WebGLRenderer: A WebGL context could not be created. Reason: ",b.statusMessage)}function rt(b){let D=b.target;D.removeEventListener("dispose",rt),It(D)}function It(b){mi(b),Fe.remove(b)}function mi(b){let D=Fe.get(b).programs;D!==void 0&&(D.forEach(function(Z){ie.releaseProgram(Z)}),b.isShaderMaterial&&ie.releaseShaderCache(b))}this.renderBufferDirect=function(b,D,Z,z,W,me){D===null&&(D=gn);let Te=W.isMesh&&W.matrixWorld.determinantAffine()<0,fe=jf(b,D,Z,z,W);_e.setMaterial(z,Te);let we=Z.index,Pe=1;if(z.wireframe===!0){if(we=H.getWireframeAttribute(Z),we===void 0)return;Pe=2}let He=Z.drawRange,Ze=Z.attributes.position,Ce=He.start*Pe,Je=(He.start+He.count)*Pe;me!==null&&(Ce=Math.max(Ce,me.start*Pe),Je=Math.min(Je,(me.start+me.count)*Pe)),we!==null?(Ce=Math.max(Ce,0),Je=Math.min(Je,we.count)):Ze!=null&&(Ce=Math.max(Ce,0),Je=Math.min(Je,Ze.count));let wt=Je-Ce;if(wt<0||wt===1/0)return;he.setup(W,z,fe,Z,we);let ct,lt=K;if(we!==null&&(ct=y.get(we),lt=de,lt.setIndex(ct)),W.isMesh)z.wireframe===!0?(_e.setLineWidth(z.wireframeLinewidth*vn()),lt.setMode(F.LINES)):lt.setMode(F.TRIANGLES);else if(W.isLine){let Bt=z.linewidth;Bt===void 0&&(Bt=1),_e.setLineWidth(Bt*vn()),W.isLineSegments?lt.setMode(F.LINES):W.isLineLoop?lt.setMode(F.LINE_LOOP):lt.setMode(F.LINE_STRIP)}else W.isPoints?lt.setMode(F.POINTS):W.isSprite&&lt.setMode(F.TRIANGLES);if(W.isBatchedMesh)if(dt.get("WEBGL_multi_draw"))lt.renderMultiDraw(W._multiDrawStarts,W._multiDrawCounts,W._multiDrawCount);else{let Bt=W._multiDrawStarts,Re=W._multiDrawCounts,Wt=W._multiDrawCount,nt=we?y.get(we).bytesPerElement:1,$i=Fe.get(z).currentProgram.getUniforms();for(let zt=0;zt<Wt;zt++)$i.setValue(F,"_gl_DrawID",zt),lt.render(Bt[zt]/nt,Re[zt])}else if(W.isInstancedMesh)lt.renderInstances(Ce,wt,W.count);else if(Z.isInstancedBufferGeometry){let Bt=Z._maxInstanceCount!==void 0?Z._maxInstanceCount:1/0,Re=Math.min(Z.instanceCount,Bt);lt.renderInstances(Ce,wt,Re)}else lt.render(Ce,wt)};function _h(b,D,Z,z){V!==null&&b.isNodeMaterial&&V.setObject(z,b),Et===!0&&te.setState(b,Z,!1),b.transparent===!0&&b.side===Wn&&b.forceSinglePass===!1?(b.side=Zt,b.needsUpdate=!0,tr(b,D,z),b.side=Bi,b.needsUpdate=!0,tr(b,D,z),b.side=Wn):tr(b,D,z)}this.compile=function(b,D,Z=null){Z===null&&(Z=b),V!==null&&V.renderStart(b,D,Z),S=Q.get(Z),S.init(D),T.push(S),Z.traverseVisible(function(W){W.isLight&&W.layers.test(D.layers)&&(S.pushLight(W),W.castShadow&&S.pushShadow(W))}),b!==Z&&b.traverseVisible(function(W){W.isLight&&W.layers.test(D.layers)&&(S.pushLight(W),W.castShadow&&S.pushShadow(W))}),S.setupLights(),V!==null&&V.updateLights(S.state.lightsArray),Jt=this.localClippingEnabled,Et=te.init(this.clippingPlanes,Jt),Et===!0&&te.setGlobalState(this.clippingPlanes,D),V!==null&&ue.render(S.state.shadowsArray,Z,D);let z=new Set;return b.traverse(function(W){if(!(W.isMesh||W.isPoints||W.isLine||W.isSprite))return;let me=W.material;if(me)if(Array.isArray(me))for(let Te=0;Te<me.length;Te++){let fe=me[Te];_h(fe,Z,D,W),z.add(fe)}else _h(me,Z,D,W),z.add(me)}),S=T.pop(),V!==null&&V.renderEnd(),z},this.compileAsync=function(b,D,Z=null){let z=this.compile(b,D,Z);return new Promise(W=>{function me(){if(z.forEach(function(Te){let we=Fe.get(Te).currentProgram;(we===void 0||we.isReady())&&z.delete(Te)}),z.size===0){W(b);return}setTimeout(me,10)}dt.get("KHR_parallel_shader_compile")!==null?me():setTimeout(me,10)})};let vl=null;function Jf(b){vl&&vl(b)}function vh(){Wi.stop()}function xh(){Wi.start()}let Wi=new Dd;Wi.setAnimationLoop(Jf),typeof self<"u"&&Wi.setContext(self),this.setAnimationLoop=function(b){vl=b,ae.setAnimationLoop(b),b===null?Wi.stop():Wi.start()},ae.addEventListener("sessionstart",vh),ae.addEventListener("sessionend",xh),this.render=function(b,D){if(D!==void 0&&D.isCamera!==!0){ze("WebGLRenderer.render: camera is not an instance of THREE.Camera.");return}if(N===!0)return;V!==null&&V.renderStart(b,D);let Z=ae.enabled===!0&&ae.isPresenting===!0,z=B!==null&&(se===null||Z)&&B.begin(U,se);if(b.matrixWorldAutoUpdate===!0&&b.updateMatrixWorld(),D.parent===null&&D.matrixWorldAutoUpdate===!0&&D.updateMatrixWorld(),ae.enabled===!0&&ae.isPresenting===!0&&(B===null||B.isCompositing()===!1)&&(ae.cameraAutoUpdate===!0&&ae.updateCamera(D),D=ae.getCamera()),b.isScene===!0&&b.onBeforeRender(U,b,D,se),S=Q.get(b,T.length),S.init(D),S.state.textureUnits=Ge.getTextureUnits(),T.push(S),pt.multiplyMatrices(D.projectionMatrix,D.matrixWorldInverse),D.isArrayCamera?Ft.setFromArrayCamera(D):Ye.setFromProjectionMatrix(pt,bn,D.reversedDepth),Jt=this.localClippingEnabled,Et=te.init(this.clippingPlanes,Jt),E=pe.get(b,x.length),E.init(),x.push(E),this.info.render.frame++,ae.enabled===!0&&ae.isPresenting===!0){let Te=U.xr.getDepthSensingMesh();Te!==null&&xl(Te,D,-1/0,U.sortObjects)}xl(b,D,0,U.sortObjects),E.finish(),V!==null&&V.updateLights(S.state.lightsArray),U.sortObjects===!0&&E.sort(We,Mt),_n=ae.enabled===!1||ae.isPresenting===!1||ae.hasDepthSensing()===!1,_n&&P.addToRenderList(E,b),this.info.autoReset===!0&&this.info.reset(),Et===!0&&te.beginShadows();let W=S.state.shadowsArray;if(ue.render(W,b,D),Et===!0&&te.endShadows(),(z&&B.hasRenderPass())===!1){let Te=E.opaque,fe=E.transmissive;if(S.setupLights(),D.isArrayCamera){let we=D.cameras;if(fe.length>0)for(let Pe=0,He=we.length;Pe<He;Pe++){let Ze=we[Pe];bh(Te,fe,b,Ze)}_n&&P.render(b);for(let Pe=0,He=we.length;Pe<He;Pe++){let Ze=we[Pe];yh(E,b,Ze,Ze.viewport)}}else fe.length>0&&bh(Te,fe,b,D),_n&&P.render(b),yh(E,b,D)}se!==null&&$===0&&(Ge.updateMultisampleRenderTarget(se),Ge.updateRenderTargetMipmap(se)),z&&B.end(U),b.isScene===!0&&b.onAfterRender(U,b,D),he.resetDefaultState(),L=-1,Y=null,T.pop(),T.length>0?(S=T[T.length-1],Ge.setTextureUnits(S.state.textureUnits),Et===!0&&te.setGlobalState(U.clippingPlanes,S.state.camera)):S=null,x.pop(),x.length>0?E=x[x.length-1]:E=null,V!==null&&V.renderEnd()};function xl(b,D,Z,z){if(b.visible===!1)return;if(b.layers.test(D.layers)){if(b.isGroup)Z=b.renderOrder;else if(b.isLOD)b.autoUpdate===!0&&b.update(D);else if(b.isLight)S.pushLight(b),b.castShadow&&S.pushShadow(b);else if(b.isSprite){let Te=D.isArrayCamera?Ft:Ye;if(!b.frustumCulled||b.intersectsFrustum(Te)){z&&Pt.setFromMatrixPosition(b.matrixWorld).applyMatrix4(pt);let fe=re.update(b),we=b.material;we.visible&&E.push(b,fe,we,Z,Pt.z,null,D)}}else if(b.isMesh||b.isLine||b.isPoints){let Te=D.isArrayCamera?Ft:Ye;if(!b.frustumCulled||b.intersectsFrustum(Te)){let fe=re.update(b),we=b.material;if(z&&(b.boundingSphere!==void 0?(b.boundingSphere===null&&b.computeBoundingSphere(),Pt.copy(b.boundingSphere.center)):(fe.boundingSphere===null&&fe.computeBoundingSphere(),Pt.copy(fe.boundingSphere.center)),Pt.applyMatrix4(b.matrixWorld).applyMatrix4(pt)),Array.isArray(we)){let Pe=fe.groups;for(let He=0,Ze=Pe.length;He<Ze;He++){let Ce=Pe[He],Je=we[Ce.materialIndex];Je&&Je.visible&&E.push(b,fe,Je,Z,Pt.z,Ce,D)}}else we.visible&&E.push(b,fe,we,Z,Pt.z,null,D)}}}let me=b.children;for(let Te=0,fe=me.length;Te<fe;Te++)xl(me[Te],D,Z,z)}function yh(b,D,Z,z){let{opaque:W,transmissive:me,transparent:Te}=b;S.setupLightsView(Z),Et===!0&&te.setGlobalState(U.clippingPlanes,Z),z&&_e.viewport(ee.copy(z)),W.length>0&&Jr(W,D,Z),me.length>0&&Jr(me,D,Z),Te.length>0&&Jr(Te,D,Z),_e.buffers.depth.setTest(!0),_e.buffers.depth.setMask(!0),_e.buffers.color.setMask(!0),_e.setPolygonOffset(!1)}function bh(b,D,Z,z){if((Z.isScene===!0?Z.overrideMaterial:null)!==null)return;if(S.state.transmissionRenderTarget[z.id]===void 0){let Ce=dt.has("EXT_color_buffer_half_float")||dt.has("EXT_color_buffer_float");S.state.transmissionRenderTarget[z.id]=new un(1,1,{generateMipmaps:!0,type:Ce?Fn:pn,minFilter:ui,samples:Math.max(4,ft.samples),stencilBuffer:r,resolveDepthBuffer:!1,resolveStencilBuffer:!1,storeMultisampledDepthBuffer:!1,storeMultisampledStencilBuffer:!1,colorSpace:Ke.workingColorSpace})}let me=S.state.transmissionRenderTarget[z.id],Te=z.viewport||ee;me.setSize(Te.z*U.transmissionResolutionScale,Te.w*U.transmissionResolutionScale);let fe=U.getRenderTarget(),we=U.getActiveCubeFace(),Pe=U.getActiveMipmapLevel();U.setRenderTarget(me),U.getClearColor(j),be=U.getClearAlpha(),be<1&&U.setClearColor(16777215,.5),U.clear(),_n&&P.render(Z);let He=U.toneMapping;U.toneMapping=$n;let Ze=z.viewport;if(z.viewport!==void 0&&(z.viewport=void 0),S.setupLightsView(z),Et===!0&&te.setGlobalState(U.clippingPlanes,z),Jr(b,Z,z),Ge.updateMultisampleRenderTarget(me),Ge.updateRenderTargetMipmap(me),dt.has("WEBGL_multisampled_render_to_texture")===!1){let Ce=!1;for(let Je=0,wt=D.length;Je<wt;Je++){let ct=D[Je],{object:lt,geometry:Bt,material:Re,group:Wt}=ct;if(Re.side===Wn&&lt.layers.test(z.layers)){let nt=Re.side;Re.side=Zt,Re.needsUpdate=!0,Mh(lt,Z,z,Bt,Re,Wt),Re.side=nt,Re.needsUpdate=!0,Ce=!0}}Ce===!0&&(Ge.updateMultisampleRenderTarget(me),Ge.updateRenderTargetMipmap(me))}U.setRenderTarget(fe,we,Pe),U.setClearColor(j,be),Ze!==void 0&&(z.viewport=Ze),U.toneMapping=He}function Jr(b,D,Z){let z=D.isScene===!0?D.overrideMaterial:null;for(let W=0,me=b.length;W<me;W++){let Te=b[W],{object:fe,geometry:we,group:Pe}=Te,He=Te.material;He.allowOverride===!0&&z!==null&&(He=z),fe.layers.test(Z.layers)&&Mh(fe,D,Z,we,He,Pe)}}function Mh(b,D,Z,z,W,me){V!==null&&W.isNodeMaterial&&V.setObject(b,W),b.onBeforeRender(U,D,Z,z,W,me),b.modelViewMatrix.multiplyMatrices(Z.matrixWorldInverse,b.matrixWorld),b.normalMatrix.getNormalMatrix(b.modelViewMatrix),W.onBeforeRender(U,D,Z,z,b,me),W.transparent===!0&&W.side===Wn&&W.forceSinglePass===!1?(W.side=Zt,W.needsUpdate=!0,U.renderBufferDirect(Z,D,z,W,b,me),W.side=Bi,W.needsUpdate=!0,U.renderBufferDirect(Z,D,z,W,b,me),W.side=Wn):U.renderBufferDirect(Z,D,z,W,b,me),b.onAfterRender(U,D,Z,z,W,me)}function wh(b){let D=0;for(let Z of b)Z.texture!==null&&D++;return D}function tr(b,D,Z){D.isScene!==!0&&(D=gn);let z=Fe.get(b),W=S.state.lights,me=S.state.shadowsArray,Te=W.state.version,fe=ie.getParameters(b,W.state,me,D,Z,S.state.lightProbeGridArray),we=ie.getProgramCacheKey(fe),Pe=z.programs;z.environment=b.isMeshStandardMaterial||b.isMeshLambertMaterial||b.isMeshPhongMaterial?D.environment:null,z.fog=D.fog;let He=b.isMeshStandardMaterial||b.isMeshLambertMaterial&&!b.envMap||b.isMeshPhongMaterial&&!b.envMap;z.envMap=A.get(b.envMap||z.environment,He),z.envMapRotation=z.environment!==null&&b.envMap===null?D.environmentRotation:b.envMapRotation,Pe===void 0&&(b.addEventListener("dispose",rt),Pe=new Map,z.programs=Pe,z.programVariants=new Map);let Ze=Pe.get(we);if(Ze!==void 0){if(z.currentProgram===Ze&&z.lightsStateVersion===Te)return Th(b,fe),Ze}else fe.uniforms=ie.getUniforms(b),V!==null&&b.isNodeMaterial&&V.build(b,Z,fe),b.onBeforeCompile(fe,U),Ze=ie.acquireProgram(fe,we),Pe.set(we,Ze),z.uniforms=fe.uniforms;let Ce=z.uniforms;return(!b.isShaderMaterial&&!b.isRawShaderMaterial||b.clipping===!0)&&(Ce.clippingPlanes=te.uniform),Th(b,fe),z.needsLights=ep(b),z.lightsStateVersion=Te,z.needsLights&&(Ce.ambientLightColor.value=W.state.ambient,Ce.lightProbe.value=W.state.probe,Ce.sunLights.value=W.state.sun,Ce.sunLightShadows.value=W.state.sunShadow,Ce.directionalLights.value=W.state.directional,Ce.directionalLightShadows.value=W.state.directionalShadow,Ce.spotLights.value=W.state.spot,Ce.spotLightShadows.value=W.state.spotShadow,Ce.rectAreaLights.value=W.state.rectArea,Ce.ltc_1.value=W.state.rectAreaLTC1,Ce.ltc_2.value=W.state.rectAreaLTC2,Ce.pointLights.value=W.state.point,Ce.pointLightShadows.value=W.state.pointShadow,Ce.hemisphereLights.value=W.state.hemi,Ce.sunShadowMatrix.value=W.state.sunShadowMatrix,Ce.sunShadowCascade.value=W.state.sunShadowCascade,Ce.directionalShadowMatrix.value=W.state.directionalShadowMatrix,Ce.spotLightMatrix.value=W.state.spotLightMatrix,Ce.spotLightMap.value=W.state.spotLightMap,Ce.pointShadowMatrix.value=W.state.pointShadowMatrix),z.numLightProbeGrids=wh(S.state.lightProbeGridArray),z.currentProgram=Ze,z.uniformsList=null,Ze}function Kf(b,D,Z,z,W){let me=Fe.get(b),Te=me.currentProgram.id+","+z+","+W,fe=me.programVariants.get(Te);return fe===void 0?(fe=tr(b,D,Z),me.programVariants.set(Te,fe)):(me.currentProgram=fe,me.uniformsList=null,me.outputColorSpace=z,me.toneMapping=W),fe}function Sh(b){if(b.uniformsList===null){let D=b.currentProgram.getUniforms();b.uniformsList=qs.seqWithValue(D.seq,b.uniforms)}return b.uniformsList}function Th(b,D){let Z=Fe.get(b);Z.outputColorSpace=D.outputColorSpace,Z.batching=D.batching,Z.batchingColor=D.batchingColor,Z.instancing=D.instancing,Z.instancingColor=D.instancingColor,Z.instancingMorph=D.instancingMorph,Z.skinning=D.skinning,Z.morphTargets=D.morphTargets,Z.morphNormals=D.morphNormals,Z.morphColors=D.morphColors,Z.morphTargetsCount=D.morphTargetsCount,Z.numClippingPlanes=D.numClippingPlanes,Z.numIntersection=D.numClipIntersection,Z.vertexAlphas=D.vertexAlphas,Z.vertexTangents=D.vertexTangents,Z.toneMapping=D.toneMapping}function jf(b,D,Z,z,W){D.isScene!==!0&&(D=gn),Ge.resetTextureUnits();let me=D.fog,Te=z.isMeshStandardMaterial||z.isMeshLambertMaterial||z.isMeshPhongMaterial?D.environment:null,fe=se===null?U.outputColorSpace:se.isXRRenderTarget===!0?se.texture.colorSpace:Ke.workingColorSpace,we=z.isMeshStandardMaterial||z.isMeshLambertMaterial&&!z.envMap||z.isMeshPhongMaterial&&!z.envMap,Pe=A.get(z.envMap||Te,we),He=z.vertexColors===!0&&!!Z.attributes.color&&Z.attributes.color.itemSize===4,Ze=!!Z.attributes.tangent&&(!!z.normalMap||z.anisotropy>0),Ce=!!Z.morphAttributes.position,Je=!!Z.morphAttributes.normal,wt=!!Z.morphAttributes.color,ct=$n;z.toneMapped&&(se===null||se.isXRRenderTarget===!0)&&(ct=U.toneMapping);let lt=Z.morphAttributes.position||Z.morphAttributes.normal||Z.morphAttributes.color,Bt=lt!==void 0?lt.length:0,Re=Fe.get(z),Wt=S.state.lights;if(Et===!0&&(Jt===!0||b!==Y)){let mt=b===Y&&z.id===L;te.setState(z,b,mt)}let nt=!1,$i=!1;z.version===Re.__version?Re.needsLights&&Re.lightsStateVersion!==Wt.state.version||W.isBatchedMesh&&Re.batching===!1||!W.isBatchedMesh&&Re.batching===!0||W.isBatchedMesh&&Re.batchingColor===!0&&W._colorsTexture===null||W.isBatchedMesh&&Re.batchingColor===!1&&W._colorsTexture!==null||W.isInstancedMesh&&Re.instancing===!1||!W.isInstancedMesh&&Re.instancing===!0||W.isSkinnedMesh&&Re.skinning===!1||!W.isSkinnedMesh&&Re.skinning===!0||W.isInstancedMesh&&Re.instancingColor===!0&&W.instanceColor===null||W.isInstancedMesh&&Re.instancingColor===!1&&W.instanceColor!==null||W.isInstancedMesh&&Re.instancingMorph===!0&&W.morphTexture===null||W.isInstancedMesh&&Re.instancingMorph===!1&&W.morphTexture!==null||Re.envMap!==Pe||z.fog===!0&&Re.fog!==me||Re.numClippingPlanes!==void 0&&(Re.numClippingPlanes!==te.numPlanes||Re.numIntersection!==te.numIntersection)||Re.vertexAlphas!==He||Re.vertexTangents!==Ze||Re.morphTargets!==Ce||Re.morphNormals!==Je||Re.morphColors!==wt||Re.morphTargetsCount!==Bt||Re.numLightProbeGrids!==wh(S.state.lightProbeGridArray)?nt=!0:(Re.outputColorSpace!==fe||Re.toneMapping!==ct)&&($i=!0):(nt=!0,Re.__version=z.version);let zt=Re.currentProgram;(nt===!0||$i===!0)&&(zt=$i===!0?Kf(z,D,W,fe,ct):tr(z,D,W),V&&z.isNodeMaterial&&V.onUpdateProgram(z,zt,Re));let Kr=!1,gi=!1,Xi=!1,tt=zt.getUniforms(),Ot=Re.uniforms;if(_e.useProgram(zt.program)&&(Kr=!0,gi=!0,Xi=!0),z.id!==L&&(L=z.id,gi=!0),Kr||Y!==b){_e.buffers.depth.getReversed()&&b.reversedDepth!==!0&&(b._reversedDepth=!0,b.updateProjectionMatrix()),tt.setValue(F,"projectionMatrix",b.projectionMatrix),tt.setValue(F,"viewMatrix",b.matrixWorldInverse);let Lt=tt.map.cameraPosition;Lt!==void 0&&Lt.setValue(F,kn.setFromMatrixPosition(b.matrixWorld)),ft.logarithmicDepthBuffer&&tt.setValue(F,"logDepthBufFC",2/(Math.log(b.far+1)/Math.LN2)),(z.isMeshPhongMaterial||z.isMeshToonMaterial||z.isMeshLambertMaterial||z.isMeshBasicMaterial||z.isMeshStandardMaterial||z.isShaderMaterial)&&tt.setValue(F,"isOrthographic",b.isOrthographicCamera===!0),Y!==b&&(Y=b,gi=!0,Xi=!0)}if(Re.needsLights&&(Wt.state.sunShadowMap.length>0&&tt.setValue(F,"sunShadowMap",Wt.state.sunShadowMap,Ge),Wt.state.directionalShadowMap.length>0&&tt.setValue(F,"directionalShadowMap",Wt.state.directionalShadowMap,Ge),Wt.state.spotShadowMap.length>0&&tt.setValue(F,"spotShadowMap",Wt.state.spotShadowMap,Ge),Wt.state.pointShadowMap.length>0&&tt.setValue(F,"pointShadowMap",Wt.state.pointShadowMap,Ge)),W.isSkinnedMesh){tt.setOptional(F,W,"bindMatrix"),tt.setOptional(F,W,"bindMatrixInverse");let mt=W.skeleton;mt&&(mt.boneTexture===null&&mt.computeBoneTexture(),tt.setValue(F,"boneTexture",mt.boneTexture,Ge))}W.isBatchedMesh&&(tt.setOptional(F,W,"batchingTexture"),tt.setValue(F,"batchingTexture",W._matricesTexture,Ge),tt.setOptional(F,W,"batchingIdTexture"),tt.setValue(F,"batchingIdTexture",W._indirectTexture,Ge),tt.setOptional(F,W,"batchingColorTexture"),W._colorsTexture!==null&&tt.setValue(F,"batchingColorTexture",W._colorsTexture,Ge));let An=Z.morphAttributes;if((An.position!==void 0||An.normal!==void 0||An.color!==void 0)&&ne.update(W,Z,zt),(gi||Re.receiveShadow!==W.receiveShadow)&&(Re.receiveShadow=W.receiveShadow,tt.setValue(F,"receiveShadow",W.receiveShadow)),(z.isMeshStandardMaterial||z.isMeshLambertMaterial||z.isMeshPhongMaterial)&&z.envMap===null&&D.environment!==null&&(Ot.envMapIntensity.value=D.environmentIntensity),Ot.dfgLUT!==void 0&&(Ot.dfgLUT.value=Xv()),gi){if(tt.setValue(F,"toneMappingExposure",U.toneMappingExposure),Re.needsLights&&Qf(Ot,Xi),me&&z.fog===!0&&ce.refreshFogUniforms(Ot,me),ce.refreshMaterialUniforms(Ot,z,Me,Ue,S.state.transmissionRenderTarget[b.id]),Re.needsLights&&Re.numLightProbeGrids>0){let mt=w,Lt=0;for(let ei of S.state.lightProbeGridArray)ei.texture!==null&&(mt.textures[Lt]=ei.texture,mt.min[Lt]=ei.boundingBox.min,mt.max[Lt]=ei.boundingBox.max,mt.resolution[Lt]=ei.resolution,Lt++);for(let ei in mt)mt[ei].length=Lt;Ot.probesSH.value=mt.textures,Ot.probesMin.value=mt.min,Ot.probesMax.value=mt.max,Ot.probesResolution.value=mt.resolution}qs.upload(F,Sh(Re),Ot,Ge)}if(z.isShaderMaterial&&z.uniformsNeedUpdate===!0&&(qs.upload(F,Sh(Re),Ot,Ge),z.uniformsNeedUpdate=!1),z.isSpriteMaterial&&tt.setValue(F,"center",W.center),tt.setValue(F,"modelViewMatrix",W.modelViewMatrix),tt.setValue(F,"normalMatrix",W.normalMatrix),tt.setValue(F,"modelMatrix",W.matrixWorld),z.uniformsGroups!==void 0){let mt=z.uniformsGroups;for(let Lt=0,ei=mt.length;Lt<ei;Lt++){let Ah=mt[Lt];Ie.update(Ah,zt),Ie.bind(Ah,zt)}}return zt}function Qf(b,D){b.ambientLightColor.needsUpdate=D,b.lightProbe.needsUpdate=D,b.sunLights.needsUpdate=D,b.sunLightShadows.needsUpdate=D,b.directionalLights.needsUpdate=D,b.directionalLightShadows.needsUpdate=D,b.pointLights.needsUpdate=D,b.pointLightShadows.needsUpdate=D,b.spotLights.needsUpdate=D,b.spotLightShadows.needsUpdate=D,b.rectAreaLights.needsUpdate=D,b.hemisphereLights.needsUpdate=D}function ep(b){return b.isMeshLambertMaterial||b.isMeshToonMaterial||b.isMeshPhongMaterial||b.isMeshStandardMaterial||b.isShadowMaterial||b.isShaderMaterial&&b.lights===!0}this.getActiveCubeFace=function(){return J},this.getActiveMipmapLevel=function(){return $},this.getRenderTarget=function(){return se},this.setRenderTargetTextures=function(b,D,Z){let z=Fe.get(b);z.__autoAllocateDepthBuffer=b.resolveDepthBuffer===!1,z.__autoAllocateDepthBuffer===!1&&(z.__useRenderToTexture=!1),Fe.get(b.texture).__webglTexture=D,Fe.get(b.depthTexture).__webglTexture=z.__autoAllocateDepthBuffer?void 0:Z,z.__hasExternalTextures=!0},this.setRenderTargetFramebuffer=function(b,D){let Z=Fe.get(b);Z.__webglFramebuffer=D,Z.__useDefaultFramebuffer=D===void 0},this.setRenderTarget=function(b,D=0,Z=0){se=b,J=D,$=Z;let z=null,W=!1,me=!1;if(b){let fe=Fe.get(b);if(fe.__useDefaultFramebuffer!==void 0){_e.bindFramebuffer(F.FRAMEBUFFER,fe.__webglFramebuffer),ee.copy(b.viewport),le.copy(b.scissor),Ee=b.scissorTest,_e.viewport(ee),_e.scissor(le),_e.setScissorTest(Ee),L=-1;return}else if(fe.__webglFramebuffer===void 0)Ge.setupRenderTarget(b);else if(fe.__hasExternalTextures)Ge.rebindTextures(b,Fe.get(b.texture).__webglTexture,Fe.get(b.depthTexture).__webglTexture);else if(b.depthBuffer){let He=b.depthTexture;if(fe.__boundDepthTexture!==He){if(He!==null&&Fe.has(He)&&(b.width!==He.image.width||b.height!==He.image.height))throw new Error("THREE.WebGLRenderer: Attached DepthTexture is initialized to the incorrect size.");Ge.setupDepthRenderbuffer(b)}}let we=b.texture;(we.isData3DTexture||we.isDataArrayTexture||we.isCompressedArrayTexture)&&(me=!0);let Pe=Fe.get(b).__webglFramebuffer;b.isWebGLCubeRenderTarget?(Array.isArray(Pe[D])?z=Pe[D][Z]:z=Pe[D],W=!0):b.samples>0&&Ge.useMultisampledRTT(b)===!1?z=Fe.get(b).__webglMultisampledFramebuffer:Array.isArray(Pe)?z=Pe[Z]:z=Pe,ee.copy(b.viewport),le.copy(b.scissor),Ee=b.scissorTest}else ee.copy(ke).multiplyScalar(Me).floor(),le.copy(st).multiplyScalar(Me).floor(),Ee=ot;if(Z!==0&&(z=q),_e.bindFramebuffer(F.FRAMEBUFFER,z)&&_e.drawBuffers(b,z),_e.viewport(ee),_e.scissor(le),_e.setScissorTest(Ee),W){let fe=Fe.get(b.texture);F.framebufferTexture2D(F.FRAMEBUFFER,F.COLOR_ATTACHMENT0,F.TEXTURE_CUBE_MAP_POSITIVE_X+D,fe.__webglTexture,Z)}else if(me){let fe=D;for(let we=0;we<b.textures.length;we++){let Pe=Fe.get(b.textures[we]);F.framebufferTextureLayer(F.FRAMEBUFFER,F.COLOR_ATTACHMENT0+we,Pe.__webglTexture,Z,fe)}}else if(b!==null&&Z!==0){let fe=Fe.get(b.texture);F.framebufferTexture2D(F.FRAMEBUFFER,F.COLOR_ATTACHMENT0,F.TEXTURE_2D,fe.__webglTexture,Z)}L=-1};function Eh(b){let D=Fe.get(b);return(D.__readFormat!==b.format||D.__readType!==b.type)&&(D.__readFormat=b.format,D.__readType=b.type,D.__formatReadable=ft.textureFormatReadable(b.format),D.__typeReadable=ft.textureTypeReadable(b.type)),D}this.readRenderTargetPixels=function(b,D,Z,z,W,me,Te,fe=0){if(!(b&&b.isWebGLRenderTarget)){ze("WebGLRenderer.readRenderTargetPixels: renderTarget is not THREE.WebGLRenderTarget.");return}let we=Fe.get(b).__webglFramebuffer;if(b.isWebGLCubeRenderTarget&&Te!==void 0&&(we=we[Te],Array.isArray(we)&&(we=we[0])),we){_e.bindFramebuffer(F.FRAMEBUFFER,we);try{let Pe=b.textures[fe],He=Pe.format,Ze=Pe.type;b.textures.length>1&&F.readBuffer(F.COLOR_ATTACHMENT0+fe);let Ce=Eh(Pe);if(Ce.__formatReadable===!1){ze("WebGLRenderer.readRenderTargetPixels: renderTarget is not in RGBA or implementation defined format.");return}if(Ce.__typeReadable===!1){ze("WebGLRenderer.readRenderTargetPixels: renderTarget is not in UnsignedByteType or implementation defined type.");return}D>=0&&D<=b.width-z&&Z>=0&&Z<=b.height-W&&F.readPixels(D,Z,z,W,oe.convert(He),oe.convert(Ze),me)}finally{let Pe=se!==null?Fe.get(se).__webglFramebuffer:null;_e.bindFramebuffer(F.FRAMEBUFFER,Pe)}}},this.readRenderTargetPixelsAsync=async function(b,D,Z,z,W,me,Te,fe=0){if(!(b&&b.isWebGLRenderTarget))throw new Error("THREE.WebGLRenderer.readRenderTargetPixels: renderTarget is not THREE.WebGLRenderTarget.");let we=Fe.get(b).__webglFramebuffer;if(b.isWebGLCubeRenderTarget&&Te!==void 0&&(we=we[Te],Array.isArray(we)&&(we=we[0])),we)if(D>=0&&D<=b.width-z&&Z>=0&&Z<=b.height-W){_e.bindFramebuffer(F.FRAMEBUFFER,we);let Pe=b.textures[fe],He=Pe.format,Ze=Pe.type;b.textures.length>1&&F.readBuffer(F.COLOR_ATTACHMENT0+fe);let Ce=Eh(Pe);if(Ce.__formatReadable===!1)throw new Error("THREE.WebGLRenderer.readRenderTargetPixelsAsync: renderTarget is not in RGBA or implementation defined format.");if(Ce.__typeReadable===!1)throw new Error("THREE.WebGLRenderer.readRenderTargetPixelsAsync: renderTarget is not in UnsignedByteType or implementation defined type.");let Je=F.createBuffer();F.bindBuffer(F.PIXEL_PACK_BUFFER,Je),F.bufferData(F.PIXEL_PACK_BUFFER,me.byteLength,F.STREAM_READ),F.readPixels(D,Z,z,W,oe.convert(He),oe.convert(Ze),0),F.bindBuffer(F.PIXEL_PACK_BUFFER,null);let wt=se!==null?Fe.get(se).__webglFramebuffer:null;_e.bindFramebuffer(F.FRAMEBUFFER,wt);let ct=F.fenceSync(F.SYNC_GPU_COMMANDS_COMPLETE,0);return F.flush(),await ad(F,ct,4),F.bindBuffer(F.PIXEL_PACK_BUFFER,Je),F.getBufferSubData(F.PIXEL_PACK_BUFFER,0,me),F.bindBuffer(F.PIXEL_PACK_BUFFER,null),F.deleteBuffer(Je),F.deleteSync(ct),me}else throw new Error("THREE.WebGLRenderer.readRenderTargetPixelsAsync: requested read bounds are out of range.")},this.copyFramebufferToTexture=function(b,D=null,Z=0){let z=Math.pow(2,-Z),W=Math.floor(b.image.width*z),me=Math.floor(b.image.height*z),Te=D!==null?D.x:0,fe=D!==null?D.y:0;Ge.setTexture2D(b,0),F.copyTexSubImage2D(F.TEXTURE_2D,Z,0,0,Te,fe,W,me),_e.unbindTexture()},this.copyTextureToTexture=function(b,D,Z=null,z=null,W=0,me=0){let Te,fe,we,Pe,He,Ze,Ce,Je,wt,ct=b.isCompressedTexture?b.mipmaps[me]:b.image;if(Z!==null)Te=Z.max.x-Z.min.x,fe=Z.max.y-Z.min.y,we=Z.isBox3?Z.max.z-Z.min.z:1,Pe=Z.min.x,He=Z.min.y,Ze=Z.isBox3?Z.min.z:0;else{let tt=Math.pow(2,-W);Te=Math.floor(ct.width*tt),fe=Math.floor(ct.height*tt),b.isDataArrayTexture?we=ct.depth:b.isData3DTexture?we=Math.floor(ct.depth*tt):we=1,Pe=0,He=0,Ze=0}z!==null?(Ce=z.x,Je=z.y,wt=z.z):(Ce=0,Je=0,wt=0);let lt=oe.convert(D.format),Bt=oe.convert(D.type),Re;D.isData3DTexture?(Ge.setTexture3D(D,0),Re=F.TEXTURE_3D):D.isDataArrayTexture||D.isCompressedArrayTexture?(Ge.setTexture2DArray(D,0),Re=F.TEXTURE_2D_ARRAY):(Ge.setTexture2D(D,0),Re=F.TEXTURE_2D),_e.activeTexture(F.TEXTURE0),_e.pixelStorei(F.UNPACK_FLIP_Y_WEBGL,D.flipY),_e.pixelStorei(F.UNPACK_PREMULTIPLY_ALPHA_WEBGL,D.premultiplyAlpha),_e.pixelStorei(F.UNPACK_ALIGNMENT,D.unpackAlignment);let Wt=_e.getParameter(F.UNPACK_ROW_LENGTH),nt=_e.getParameter(F.UNPACK_IMAGE_HEIGHT),$i=_e.getParameter(F.UNPACK_SKIP_PIXELS),zt=_e.getParameter(F.UNPACK_SKIP_ROWS),Kr=_e.getParameter(F.UNPACK_SKIP_IMAGES);_e.pixelStorei(F.UNPACK_ROW_LENGTH,ct.width),_e.pixelStorei(F.UNPACK_IMAGE_HEIGHT,ct.height),_e.pixelStorei(F.UNPACK_SKIP_PIXELS,Pe),_e.pixelStorei(F.UNPACK_SKIP_ROWS,He),_e.pixelStorei(F.UNPACK_SKIP_IMAGES,Ze);let gi=b.isDataArrayTexture||b.isData3DTexture,Xi=D.isDataArrayTexture||D.isData3DTexture;if(b.isDepthTexture){let tt=Fe.get(b),Ot=Fe.get(D),An=Fe.get(tt.__renderTarget),mt=Fe.get(Ot.__renderTarget);_e.bindFramebuffer(F.READ_FRAMEBUFFER,An.__webglFramebuffer),_e.bindFramebuffer(F.DRAW_FRAMEBUFFER,mt.__webglFramebuffer);for(let Lt=0;Lt<we;Lt++)gi&&(F.framebufferTextureLayer(F.READ_FRAMEBUFFER,F.COLOR_ATTACHMENT0,Fe.get(b).__webglTexture,W,Ze+Lt),F.framebufferTextureLayer(F.DRAW_FRAMEBUFFER,F.COLOR_ATTACHMENT0,Fe.get(D).__webglTexture,me,wt+Lt)),F.blitFramebuffer(Pe,He,Pe+Te,He+fe,Ce,Je,Ce+Te,Je+fe,F.DEPTH_BUFFER_BIT,F.NEAREST);_e.bindFramebuffer(F.READ_FRAMEBUFFER,null),_e.bindFramebuffer(F.DRAW_FRAMEBUFFER,null)}else if(W!==0||b.isRenderTargetTexture||Fe.has(b)){let tt=Fe.get(b),Ot=Fe.get(D);_e.bindFramebuffer(F.READ_FRAMEBUFFER,I),_e.bindFramebuffer(F.DRAW_FRAMEBUFFER,X);for(let An=0;An<we;An++)gi?F.framebufferTextureLayer(F.READ_FRAMEBUFFER,F.COLOR_ATTACHMENT0,tt.__webglTexture,W,Ze+An):F.framebufferTexture2D(F.READ_FRAMEBUFFER,F.COLOR_ATTACHMENT0,F.TEXTURE_2D,tt.__webglTexture,W),Xi?F.framebufferTextureLayer(F.DRAW_FRAMEBUFFER,F.COLOR_ATTACHMENT0,Ot.__webglTexture,me,wt+An):F.framebufferTexture2D(F.DRAW_FRAMEBUFFER,F.COLOR_ATTACHMENT0,F.TEXTURE_2D,Ot.__webglTexture,me),W!==0?F.blitFramebuffer(Pe,He,Pe+Te,He+fe,Ce,Je,Ce+Te,Je+fe,F.COLOR_BUFFER_BIT,F.NEAREST):Xi?F.copyTexSubImage3D(Re,me,Ce,Je,wt+An,Pe,He,Te,fe):F.copyTexSubImage2D(Re,me,Ce,Je,Pe,He,Te,fe);_e.bindFramebuffer(F.READ_FRAMEBUFFER,null),_e.bindFramebuffer(F.DRAW_FRAMEBUFFER,null)}else Xi?b.isDataTexture||b.isData3DTexture?F.texSubImage3D(Re,me,Ce,Je,wt,Te,fe,we,lt,Bt,ct.data):D.isCompressedArrayTexture?F.compressedTexSubImage3D(Re,me,Ce,Je,wt,Te,fe,we,lt,ct.data):F.texSubImage3D(Re,me,Ce,Je,wt,Te,fe,we,lt,Bt,ct):b.isDataTexture?F.texSubImage2D(F.TEXTURE_2D,me,Ce,Je,Te,fe,lt,Bt,ct.data):b.isCompressedTexture?F.compressedTexSubImage2D(F.TEXTURE_2D,me,Ce,Je,ct.width,ct.height,lt,ct.data):F.texSubImage2D(F.TEXTURE_2D,me,Ce,Je,Te,fe,lt,Bt,ct);_e.pixelStorei(F.UNPACK_ROW_LENGTH,Wt),_e.pixelStorei(F.UNPACK_IMAGE_HEIGHT,nt),_e.pixelStorei(F.UNPACK_SKIP_PIXELS,$i),_e.pixelStorei(F.UNPACK_SKIP_ROWS,zt),_e.pixelStorei(F.UNPACK_SKIP_IMAGES,Kr),me===0&&D.generateMipmaps===!0&&D.mipmapsAutoUpdate===!0&&F.generateMipmap(Re),_e.unbindTexture()},this.initRenderTarget=function(b){Fe.get(b).__webglFramebuffer===void 0&&Ge.setupRenderTarget(b)},this.initTexture=function(b){b.isCubeTexture?Ge.setTextureCube(b,0):b.isData3DTexture?Ge.setTexture3D(b,0):b.isDataArrayTexture||b.isCompressedArrayTexture?Ge.setTexture2DArray(b,0):Ge.setTexture2D(b,0),_e.unbindTexture()},this.resetState=function(){J=0,$=0,se=null,_e.reset(),he.reset()},typeof __THREE_DEVTOOLS__<"u"&&__THREE_DEVTOOLS__.dispatchEvent(new CustomEvent("observe",{detail:this}))}get coordinateSystem(){return bn}get outputColorSpace(){return this._outputColorSpace}set outputColorSpace(e){this._outputColorSpace=e;let t=this.getContext();t.drawingBufferColorSpace=Ke._getDrawingBufferColorSpace(e),t.unpackColorSpace=Ke._getUnpackColorSpace()}};function Yn(i,...e){for(let t of e)i.push(t[0],t[1],t[2])}function Js(i,e,t,n,s){Yn(i,e,t,n,e,n,s)}function qv(i,e=[0,0,0]){let[t,n,s]=[0,1,2].map(u=>(i[u]??1)/2),r=u=>[e[0]+(u&1?t:-t),e[1]+(u&2?n:-n),e[2]+(u&4?s:-s)],a=[0,1,2,3,4,5,6,7].map(r),o=u=>a[u],l=[],c=[[0,2,3,1],[4,5,7,6],[0,1,5,4],[2,6,7,3],[0,4,6,2],[1,3,7,5]];for(let[u,d,f,p]of c)Js(l,o(u),o(d),o(f),o(p));let h=[];for(let u=0;u<8;u++)for(let d of[1,2,4])u&d||Yn(h,o(u),o(u|d));return{triangles:l,lines:h,hull:a}}function $d(i,e,t){let n=(d,f)=>Array.from({length:20},(p,v)=>{let m=2*Math.PI*v/20;return[d*Math.cos(m),d*Math.sin(m),f]}),[s,r]=[-t/2,t/2],[a,o,l,c]=[n(i,s),n(i,r),n(e,s),n(e,r)],h=[],u=[];for(let d=0;d<20;d++){let f=(d+1)%20;Js(h,a[d],a[f],o[f],o[d]),e>0?(Js(h,l[f],l[d],c[d],c[f]),Js(h,o[d],o[f],c[f],c[d]),Js(h,a[f],a[d],l[d],l[f]),Yn(u,l[d],l[f],c[d],c[f])):(Yn(h,[0,0,r],o[d],o[f]),Yn(h,[0,0,s],a[f],a[d])),Yn(u,a[d],a[f],o[d],o[f])}return{triangles:h,lines:u,hull:[...a,...o]}}function Yv(i){let[e,t]=[7,12],n=(o,l)=>{let[c,h]=[Math.PI*o/e,2*Math.PI*l/t];return[i*Math.sin(c)*Math.cos(h),i*Math.sin(c)*Math.sin(h),i*Math.cos(c)]},s=[],r=[],a=[];for(let o=0;o<e;o++)for(let l=0;l<t;l++)Js(s,n(o,l),n(o+1,l),n(o+1,l+1),n(o,l+1)),a.push(n(o,l));for(let o=0;o<20;o++){let[l,c]=[o,o+1].map(h=>2*Math.PI*h/20);Yn(r,[i*Math.cos(l),i*Math.sin(l),0],[i*Math.cos(c),i*Math.sin(c),0]),Yn(r,[i*Math.cos(l),0,i*Math.sin(l)],[i*Math.cos(c),0,i*Math.sin(c)])}return{triangles:s,lines:r,hull:a}}function Zv(i,e){let t=[];for(let n of e)Yn(t,i[n[0]],i[n[1]],i[n[2]]);return{triangles:t,lines:Kv(i,e),hull:Jv(i)}}function Jv(i){if(i.length<=300)return i;let e=new Set;for(let t=0;t<240;t++){let n=1-(2*t+1)/240,[s,r]=[Math.sqrt(1-n*n),t*2.399963],a=[s*Math.cos(r),s*Math.sin(r),n],o=i[0],l=-1/0;for(let c of i){let h=c[0]*a[0]+c[1]*a[1]+c[2]*a[2];h>l&&([o,l]=[c,h])}e.add(o)}return[...e]}function Kv(i,e){let t=new Map,n=[];for(let s of e){let[r,a,o]=s.map(c=>i[c]),l=ex(Qv(Xd(a,r),Xd(o,r)));for(let[c,h]of[[s[0],s[1]],[s[1],s[2]],[s[2],s[0]]]){let u=c<h?`${c} ${h}`:`${h} ${c}`,d=t.get(u);d===void 0?t.set(u,l):jv(d,l)<.8&&Yn(n,i[c],i[h])}}return n}var Xd=(i,e)=>[i[0]-e[0],i[1]-e[1],i[2]-e[2]],jv=(i,e)=>i[0]*e[0]+i[1]*e[1]+i[2]*e[2],Qv=(i,e)=>[i[1]*e[2]-i[2]*e[1],i[2]*e[0]-i[0]*e[2],i[0]*e[1]-i[1]*e[0]];function ex(i){let e=Math.hypot(...i)||1;return[i[0]/e,i[1]/e,i[2]/e]}function wn(i){let[e=1,t=1,n=1]=i.size_mm;switch(i.kind){case"box":return qv(i.size_mm,i.middle_mm);case"cylinder":return $d(e,0,t);case"tube":return $d(e,t,n);case"sphere":return Yv(e);case"mesh":return Zv(i.vertices_mm??[],i.faces??[])}}function hs(i,e,t){return[0,1,2].map(n=>e[3*n]*i[0]+e[3*n+1]*i[1]+e[3*n+2]*i[2]+t[n])}var en={plan:([i,e])=>[-e,-i],side:([i,,e])=>[i,-e],rear:([,i,e])=>[-i,-e]},rl=new Map;function Zn(i){let e=i.shape;if(!e)return"";let t=e.vertices_mm?`${e.vertices_mm.length} ${e.vertices_mm[0]} ${e.faces?.length}`:`${e.size_mm} ${e.middle_mm??""}`;return`${i.label}|${e.kind} ${t}|${i.centre_mm}|${i.turn}`}function al(i,e){let t=`${e}|${Zn(i)}`,n=rl.get(t);return n||(rl.size>4e3&&rl.clear(),n=tx(i,e),rl.set(t,n)),n}function tx(i,e){return i.shape?Qc(wn(i.shape).hull.map(t=>en[e](hs(t,i.turn,i.centre_mm)))):[]}function us(i){return i.length?`M${i.map(([e,t])=>`${e.toFixed(1)} ${t.toFixed(1)}`).join("L")}Z`:""}function nx(i,e){let t={plan:n=>n.centre_mm[2],side:n=>-n.centre_mm[1],rear:n=>-n.centre_mm[0]};return[...i].sort((n,s)=>t[e](n)-t[e](s))}function jc(i){return i==="chassis"?"chassis":i.endsWith("axle")?`axle ${i.split(" ")[0]}`:"wheel"}function Qc(i){let e=[...i].sort((n,s)=>n[0]-s[0]||n[1]-s[1]),t=n=>{let s=[];for(let r of n){for(;s.length>=2&&ix(s[s.length-2],s[s.length-1],r)<=0;)s.pop();s.push(r)}return s.pop(),s};return[...t(e),...t(e.reverse())]}var ix=(i,e,t)=>(e[0]-i[0])*(t[1]-i[1])-(e[1]-i[1])*(t[0]-i[0]);function Vi(i,e){let t=[];for(let r of i.parts)t.push(...al(r,e));for(let r of i.axles)for(let a of[-1,1]){let o=a*(r.track_mm/2+r.width_mm/2);t.push(en[e]([r.x_mm+a*r.radius_mm,o,0]),en[e]([r.x_mm,o,2*r.radius_mm]))}let n=t.map(r=>r[0]),s=t.map(r=>r[1]);return[Math.min(...n),Math.min(...s),Math.max(...n),Math.max(...s)]}var Sn=class{constructor(e,t=1,n=!1){this.face=e;this.scale=t;this.named=n}face;scale;named;root=O("g");order="";drawn=[];draw(e,t){let n=nx(e.filter(a=>a.shape),this.face),s=n.map(a=>a.label).join("|");s!==this.order&&(this.order=s,this.drawn=n.map(()=>({path:O("path"),look:"",dress:""})),this.root.replaceChildren(...this.drawn.map(a=>a.path)));let r=typeof this.scale=="number"?this.scale:this.scale();n.forEach((a,o)=>this.one(this.drawn[o],a,t,r))}one(e,t,n,s){let r=`${Zn(t)} ${s}`;r!==e.look&&(e.look=r,e.path.setAttribute("d",us(al(t,this.face).map(([c,h])=>[c*s,h*s]))));let a=t.row>=0,o=`part ${jc(t.carrier)}${a&&t.row===n?" picked":""}${a?" here":""}`,l=`${o} ${t.row} ${this.named?t.mass_g:""}`;l!==e.dress&&(e.dress=l,e.path.setAttribute("class",o),a&&e.path.setAttribute("data-row",String(t.row)),this.named&&e.path.replaceChildren(O("title",{},`${t.label}, ${G(t.mass_g)} g`)))}};var eh=["chassis","front axle","rear axle","front left","front right","rear left","rear right"],th=eh.slice(3),Yd={chassis:"body","axle front":"front axle","axle rear":"rear axle",wheel:"wheels"},qd={paper:"--sheet",ink:"--ink",faint:"--rule",soft:"--soft",board:"--board",chassis:"--chassis","axle front":"--axle-front","axle rear":"--axle-rear",stone:"--stone",wheel:"--wheel",picked:"--picked",over:"--red",load:"--blue",pack:"--pack"},Ks=class{ink=Object.fromEntries(Object.keys(qd).map(e=>[e,new je]));face=new Di({vertexColors:!0,polygonOffset:!0,polygonOffsetFactor:1,polygonOffsetUnits:1});glass=new Di({vertexColors:!0,transparent:!0,opacity:.16,depthWrite:!1});pack=new ss({depthTest:!1,transparent:!0});lined=new Map;filled=new Map;times=0;repaint(){let e=getComputedStyle(document.documentElement);for(let[t,n]of Object.entries(qd))this.ink[t].set(e.getPropertyValue(n).trim());for(let[t,n]of[...this.lined,...this.filled])n.color.copy(this.ink[t]);this.pack.color.copy(this.ink.pack),this.times+=1}line(e){let t=this.lined.get(e);return t||this.lined.set(e,t=new ss({color:this.ink[e]})),t}fill(e,t=0){let n=this.filled.get(e);return n||this.filled.set(e,n=new Di({color:this.ink[e],polygonOffset:t>0,polygonOffsetFactor:t,polygonOffsetUnits:t})),n}},ds=class{constructor(e){this.paints=e;this.root.add(...this.bodies)}paints;root=new kt;bodies=eh.map(()=>new kt);built=[];dress(e,t){eh.forEach((n,s)=>{let r=e.parts.filter(u=>u.carrier===n&&u.shape),a=new Set(r.map(Zn)),o=(t.before?.parts??[]).filter(u=>u.carrier===n&&u.shape&&!a.has(Zn(u))),l=`${this.paints.times}|${t.glass}|${t.ghost}|${r.map(u=>`${Zn(u)} ${u.row===t.picked} ${u.row===t.pack}`).join("|")}|${o.map(Zn).join("|")}`;if(this.built[s]===l)return;this.built[s]=l;let c=this.bodies[s];Gr(c);let h=u=>t.glass&&n==="chassis"&&!(u.row>=0&&(u.row===t.picked||u.row===t.pack));t.ghost?this.edges(c,r,this.paints.line("load")):(this.meshes(c,r.filter(u=>!h(u)),n,t.picked,this.paints.face,this.paints.line("ink")),this.meshes(c,r.filter(h),n,t.picked,this.paints.glass,this.paints.line("soft")),this.edges(c,r.filter(u=>u.row>=0&&u.row===t.pack),this.paints.pack,5)),this.edges(c,o,this.paints.line("load"))})}meshes(e,t,n,s,r,a){let o=[],l=[],c=[],h=this.paints.ink[jc(n)];for(let f of t){let p=wn(f.shape).triangles;for(let v=0;v<p.length;v+=3)o.push(...hs(p.slice(v,v+3),f.turn,f.centre_mm)),v%9===0&&c.push(f);nh(o,l,f.row>=0&&f.row===s?this.paints.ink.picked:h)}if(o.length===0)return;let u=Jn(o);u.setAttribute("color",new qt(new Float32Array(l),3));let d=new vt(u,r);d.userData.owner=c,d.frustumCulled=!1,e.add(d),this.edges(e,t,a)}edges(e,t,n,s=0){let r=[];for(let o of t){let l=wn(o.shape).lines;for(let c=0;c<l.length;c+=3)r.push(...hs(l.slice(c,c+3),o.turn,o.centre_mm))}if(r.length===0)return;let a=Tn(r,n);a.renderOrder=s,e.add(a)}pose(e){this.bodies.forEach((t,n)=>{let s=e[n]??e[n<3?n:n<5?1:2];t.position.set(s?.[0]??0,s?.[1]??0,s?.[2]??0),t.quaternion.set(s?.[3]??0,s?.[4]??0,s?.[5]??0,s?.[6]??1)})}corners(){let e=[];for(let t of this.bodies){t.updateMatrix();for(let n of t.children){if(!(n instanceof vt))continue;let s=n.geometry.getAttribute("position");for(let r=0;r<s.count;r++)e.push(new k().fromBufferAttribute(s,r).applyMatrix4(t.matrix))}}return e}},sx=new k(.25,.55,.85).normalize();function nh(i,e,t){let[n,s,r]=[new k,new k,new k];for(let a=e.length;a<i.length;a+=9){n.fromArray(i,a),s.fromArray(i,a+3).sub(n),r.fromArray(i,a+6).sub(n);let o=s.cross(r).normalize(),l=.88+.2*o.dot(sx)+.12*o.z,[c,h,u]=[t.r,t.g,t.b].map(d=>Math.min(1,d*l**1.3));for(let d=0;d<3;d++)e.push(c,h,u)}}function Jn(i){let e=new Nn;return e.setAttribute("position",new qt(new Float32Array(i),3)),e}function Tn(i,e){let t=new zs(Jn(i),e);return t.frustumCulled=!1,t}function Gr(i){for(let e of[...i.children])i.remove(e),(e instanceof vt||e instanceof zs)&&e.geometry.dispose()}var[Kn,jn]=[1350,650],Zd=330,rx=1200,ax=Math.PI/3,ol=class{canvas;renderer;world=new ts;camera=new ki(-1,1,1,-1,-6e3,6e3);paints=new Ks;hill=new kt;furniture=new kt;figures=[new ds(this.paints),new ds(this.paints)];plumb;course=null;way=null;seen=[null,null];time=0;constructor(e){this.canvas=e,this.renderer=new Ys({canvas:e,antialias:!vi(),powerPreference:"low-power"}),this.camera.up.set(0,0,1),this.plumb=Tn([0,0,0,0,0,1],this.paints.line("over")),this.hill.add(this.furniture,...this.figures.map(t=>t.root)),this.world.add(this.hill,this.plumb),this.repaint()}repaint(){this.paints.repaint(),this.world.background=this.paints.ink.paper,this.course&&this.way&&this.take(this.course,this.way,this.seen)}take(e,t,n){Object.assign(this,{course:e,way:t,seen:n}),this.hill.rotation.x=e.slope_deg*Math.PI/180,Gr(this.furniture),this.furnish(e,t),n.forEach((s,r)=>{this.figures[r].root.visible=s!==null,s&&this.figures[r].dress(s.scene,{picked:null,pack:r?null:s.pack,glass:!1,before:null,ghost:r===1})})}furnish(e,t){let n=[-Kn,-jn,0,Kn,-jn,0,Kn,jn,0,-Kn,-jn,0,Kn,jn,0,-Kn,jn,0],s=[];for(let a=-Kn+50;a<=Kn;a+=100)s.push(a,-jn,.5,a,jn,.5);for(let a=-jn+50;a<=jn;a+=100)s.push(-Kn,a,.5,Kn,a,.5);let r=[];t.places_mm.forEach((a,o)=>{o&&r.push(...t.places_mm[o-1],1.5,...a,1.5)}),this.furniture.add(new vt(Jn(n),this.paints.fill("board",2)),Tn(s,this.paints.line("faint")),Tn(r,this.paints.line("ink")));for(let a of e.stones)this.lay(ox(t,a.at_mm,a.height_mm));for(let a of e.ramps){let[o,l,c,h]=[a.flank_mm+a.top_mm/2,a.top_mm/2,a.width_mm/2,a.flank_mm*Math.tan(a.angle_deg*Math.PI/180)],u=[[-o,0],[-l,h],[l,h],[o,0]],d=new at().makeRotationZ(a.turned_deg*Math.PI/180+Math.PI/2).setPosition(...a.at_mm,0);this.lay(lx(u,c),d)}this.seen.forEach((a,o)=>a?.events.forEach(l=>{let{place:[c,h],heading:u}=vs(t,l.at_mm),d=o?-26:26,f=l.what==="lifts"?40:90,p=wn({kind:"box",size_mm:[5,5,f]}).triangles.map((v,m)=>v+[c-d*Math.cos(u),h-d*Math.sin(u),f/2][m%3]);this.furniture.add(new vt(Jn(p),this.paints.fill(l.what==="lifts"?"load":"over")))}))}lay(e,t=new at){let n=Jn(e.triangles).applyMatrix4(t),s=[];nh([...n.getAttribute("position").array],s,this.paints.ink.stone),n.setAttribute("color",new qt(new Float32Array(s),3));let r=Tn(e.lines,this.paints.line("ink"));r.geometry.applyMatrix4(t),this.furniture.add(new vt(n,this.paints.face),r)}get seconds(){return Math.max(0,...this.seen.map(e=>e?.recording.seconds??0))}at(e,t=0){let n=this.seen[t]?.recording;if(!n)return null;let s=n.at(n.rowAt(e));return{along:s.poses[0][0],load_g:s.load_g}}draw(e,t){if(!this.course||!this.way)return;this.time=e;let[n,s]=t??[this.canvas.clientWidth,this.canvas.clientHeight];if(n<2||s<2)return;this.renderer.setPixelRatio(t||vi()?1:Math.min(devicePixelRatio,2)),this.renderer.setSize(n,s,!1);let r=[];this.seen.forEach((u,d)=>{if(!u)return;let f=u.recording.at(u.recording.rowAt(e)),p=this.figures[d].root;if(this.set(this.figures[d],f.poses),this.hill.updateMatrixWorld(!0),r.push(p.localToWorld(new k(f.poses[0][0],f.poses[0][1],60))),d>0)return;let v=p.localToWorld(new k(...f.cg_mm)),m=this.plumb.geometry.getAttribute("position");m.setXYZ(0,v.x,v.y,v.z),m.setXYZ(1,v.x,v.y,v.y*Math.tan(this.hill.rotation.x)),m.needsUpdate=!0});let[a,o]=[r[0]??new k,r[1]??r[0]??new k],l=Math.min(rx,a.distanceTo(o)),c=a.clone().add(o.clone().sub(a).setLength(l/2)),h=Math.max(Zd,Zd*1.35*s/n)+l*.3;Object.assign(this.camera,{left:-h*n/s,right:h*n/s,top:h,bottom:-h}),this.camera.position.copy(c).add(new k(-.4,-1,.34).multiplyScalar(1500)),this.camera.lookAt(c),this.camera.updateProjectionMatrix(),this.renderer.render(this.world,this.camera)}again(){this.draw(this.time)}set(e,t){let n=t[0][0],{place:[s,r],heading:a}=vs(this.way,n);e.pose(t),e.root.matrixAutoUpdate=!1,e.root.matrix.makeRotationZ(a+Math.PI/2).setPosition(s,r,0).multiply(new at().makeTranslation(-n,0,0)),e.root.matrixWorldNeedsUpdate=!0}};function ox(i,e,t){let n=i.places_mm.reduce((u,d,f)=>Math.hypot(d[0]-e[0],d[1]-e[1])<Math.hypot(i.places_mm[u][0]-e[0],i.places_mm[u][1]-e[1])?f:u,0),s=i.heading_deg[n]*Math.PI/180+Math.PI,r=t/(1-Math.cos(ax)),[a,o]=[Math.cos(s),Math.sin(s)],l=[-o,0,a,a,0,o,0,1,0],c={triangles:[],lines:[]},h=(u,d)=>{for(let f of["triangles","lines"])for(let p=0;p<u[f].length;p+=3)c[f].push(...hs(u[f].slice(p,p+3),l,d))};h(wn({kind:"cylinder",size_mm:[r,60]}),[e[0],e[1],t-r]);for(let u of[-30,30])h({...wn({kind:"sphere",size_mm:[r]}),lines:[]},[e[0]+u*a,e[1]+u*o,t-r]);return c}function lx(i,e){let t={triangles:[],lines:[]},n=([s,r],a)=>[s,a*e,r];return i.forEach((s,r)=>{t.lines.push(...n(s,-1),...n(s,1));let a=i[r+1];if(a){t.triangles.push(...n(s,1),...n(s,-1),...n(a,-1),...n(s,1),...n(a,-1),...n(a,1));for(let o of[-1,1])t.lines.push(...n(s,o),...n(a,o)),r>0&&t.triangles.push(...n(i[0],o),...o>0?[...n(s,o),...n(a,o)]:[...n(a,o),...n(s,o)])}}),t}var cx=["front left","front right","rear left","rear right"],Jd=9,Hr=class{about;rows;columns;values;constructor(e){let t=new DataView(e);if(new TextDecoder().decode(new Uint8Array(e,0,4))!=="CFP1")throw new Error("That is no recording.");let n=t.getUint32(4,!0),s=JSON.parse(new TextDecoder().decode(new Uint8Array(e,8,n)));this.about=s,this.rows=s.rows,this.columns=s.columns,this.values=new Float32Array(e,8+n)}get seconds(){return this.values[(this.rows-1)*this.columns]??0}rowAt(e){let[t,n]=[0,this.rows-1];for(;t<n;){let s=t+n+1>>1;(this.values[s*this.columns]??0)<=e?t=s:n=s-1}return t}events(){let e=[];for(let n=0;n<4;n++)for(let s=0;s<this.rows;s++){if(this.at(s).load_g[n]>=1)continue;let{theta:r,time:a}={theta:this.at(s).theta,time:this.values[s*this.columns]};if(Array.from({length:this.rows-s},(o,l)=>this.at(s+l).load_g[n]).every(o=>o<1)){e.push({what:`${cx[n]} lifts at ${G(r)}°`,time:a});break}}let t=this.at(this.rows-1).theta;return this.about.trial_outcome==="tips"&&e.push({what:`goes over at ${G(this.about.trial_deg??t)}°`,time:this.seconds}),this.about.trial_outcome==="slides"&&e.push({what:`slides away at ${G(this.about.trial_slide_deg??t)}°`,time:this.seconds}),e.sort((n,s)=>n.time-s.time)}get end(){if(this.about.trial_outcome==="slides")return"away";if(this.about.trial_outcome!=="tips")return null;let[e,t,n,s]=this.at(this.rows-1).load_g.map(a=>Math.max(0,a));return[["left",e+n],["right",t+s],["front",e+t],["rear",n+s]].sort((a,o)=>o[1]-a[1])[0][0]}at(e){let t=this.values.subarray(e*this.columns,(e+1)*this.columns),n=Array.from({length:7},(s,r)=>Array.from(t.subarray(Jd+7*r,Jd+7*r+7)));return{theta:t[1],load_g:Array.from(t.subarray(2,6)),cg_mm:[t[6],t[7],t[8]],poses:n}}},ll=class{constructor(e,t){this.stage=e;this.tilt=t;De("bench",()=>{this.state&&this.state.truck!==R.bench.truck&&this.recording&&this.leave(),R.trials=this.state&&jd(this.state)?this.state.found:[],ti("trials"),this.recording||this.draw()}),this.draw(),this.poll()}stage;tilt;recording=null;events=[];time=0;speed=1;running=!1;last=0;drawn=0;since=0;state=null;timer=0;rate=0;async poll(){clearTimeout(this.timer);try{this.take(await ve.trial())}catch{return}this.state?.state==="running"&&(this.timer=window.setTimeout(()=>{this.poll()},250))}take(e){let t=this.state;if(this.state=e,R.trials=jd(e)?e.found:[],ti("trials"),t?.state==="running"&&e.state!=="running"){let n={done:`Trials done: ${e.done} of ${e.total}.`,stopped:`Trials stopped; ${e.done} of ${e.total} are kept.`,failed:`The trials failed: ${e.words}`};Ne(n[e.state]??"",e.state==="failed"?"wrong":"note")}this.recording||this.draw()}async run(e){let{rail:t}=R.view;try{this.take(await ve.runTrial(e,t)),Ne("The trial is running."),this.poll()}catch(n){if(n instanceof Be)Ne(n.message,"wrong");else throw n}}async open(e){try{this.recording=new Hr(await ve.poses(e))}catch(t){return Ne(t instanceof Error?t.message:String(t),"wrong")}this.events=this.recording.events(),this.playing(!0),this.recording.about.heading_deg!==null&&ht({heading:this.recording.about.heading_deg}),this.time=0,this.draw(),this.play()}playing(e){this.tilt.playing=e;for(let t of document.querySelectorAll(".sliders input, .ways button"))t.disabled=e}leave(){this.pause(),this.recording=null,this.playing(!1),ht({tilt:R.view.tilt}),this.draw()}play(){let e=this.recording;e&&(this.time>=e.seconds&&(this.time=0),this.running=!0,this.last=this.since=performance.now(),this.drawn=0,this.drawControls(),requestAnimationFrame(t=>this.step(t)))}pause(){this.running=!1,this.recording&&this.drawControls()}step(e){let t=this.recording;if(!(!t||!this.running)){if(this.time=Math.min(t.seconds,this.time+(e-this.last)/1e3*this.speed),this.last=e,this.show(),this.drawn+=1,e-this.since>500&&(this.rate=this.drawn*1e3/(e-this.since),this.since=e,this.drawn=0),this.time>=t.seconds)return this.pause();requestAnimationFrame(n=>this.step(n))}}show(){let e=this.recording,t=e.at(e.rowAt(this.time)),n=this.time>=e.seconds?e.end:null;ht({tilt:Math.max(0,Math.min(90,t.theta))}),this.stage.show({theta_deg:t.theta,poses:t.poses,load_g:t.load_g,cg_mm:t.cg_mm,heading_deg:R.view.heading},n);let s=t.load_g.filter(c=>c<1).length,r=s===0?"all four tyres down":`${s} of 4 tyres off the table`,a=n===null?"":n==="away"?"; it slides away":`; it goes over its ${n} tyres`;Se("standing").textContent=`Replay: table at ${G(t.theta)}°, ${r}${a}.`,Se("standing").classList.toggle("over",s>=2||n!==null);let o=document.getElementById("scrub");o&&(o.value=this.time.toFixed(2),o.setAttribute("aria-valuetext",`${G(this.time)} seconds, table at ${G(t.theta)} degrees${a}`));let l=document.getElementById("replay-clock");l&&(l.textContent=`${G(this.time,1)} s`)}draw(){if(this.recording)return this.drawControls();let e=this.state,t=e?.state==="running",s=R.trials.map(h=>_("option",{value:h.file},`${Kd(h.heading_deg)}: ${Qd(h)}`)),r=(e?.records??[]).map(h=>_("option",{value:h},`kept record ${h}`)),a=_("select",{id:"replay-choice","aria-label":"Recorded trial",class:"grow"},...s,...r),o=_("input",{type:"checkbox",id:"trial-rail","data-key":"rail",checked:R.view.rail});o.addEventListener("change",()=>ht({rail:o.checked}));let l=_("label",{class:"tick"},o,"against a rail"),c=_("div",{class:"tries",role:"toolbar","aria-label":"Virtual trials"},_("button",{type:"button",id:"trial-one","data-key":"trial-one",onclick:()=>{this.run([R.view.heading])}},"Try it this way"),_("button",{type:"button",id:"trial-four","data-key":"trial-four",onclick:()=>{this.run(Object.values(xt).map(h=>h.heading))}},"Try all four"),l);Nt(c,"button, input"),ge(Se("trial"),t?_("progress",{class:"grow",max:e.total,value:e.done,"aria-label":"Trials done"}):null,t?_("span",{},`${e.done} of ${e.total}`):null,t?_("button",{type:"button",id:"trial-stop",onclick:()=>{ve.stopTrial().then(h=>this.take(h))}},"Stop"):null,t?null:c,s.length+r.length?a:null,s.length+r.length?_("button",{type:"button",id:"replay-open",onclick:()=>{this.open(a.value)}},"Replay"):null)}drawControls(){let e=this.recording,t=_("input",{type:"range",id:"scrub","data-key":"scrub",class:"grow",min:0,max:e.seconds.toFixed(2),step:.01,value:this.time.toFixed(2),"aria-label":"Moment of the recording"});t.addEventListener("input",()=>{this.time=Number(t.value),this.show()});let n=_("select",{id:"replay-speed","data-key":"speed","aria-label":"Speed"},...[.25,.5,1,2,4].map(s=>_("option",{value:s,selected:s===this.speed},s===1?"real time":s<1?`${s*100} %`:`${s} times`)));n.addEventListener("change",()=>{this.speed=Number(n.value)}),ge(Se("trial"),_("button",{type:"button",id:"play","data-key":"play",onclick:()=>this.running?this.pause():this.play()},this.running?"Pause":"Play"),t,_("output",{id:"replay-clock"},`${G(this.time)} s`),n,_("button",{type:"button",id:"replay-leave",onclick:()=>this.leave()},"Back to the sliders"),_("div",{class:"events",role:"group","aria-label":"Moments of the recording"},...this.events.map(({what:s,time:r})=>_("button",{type:"button","data-key":`event-${r.toFixed(2)}-${s}`,onclick:()=>{this.pause(),this.time=r,this.show()}},s))),_("p",{},`Recorded trial${e.about.heading_deg===null?"":`, ${Kd(e.about.heading_deg)}`}: ${Qd(e.about)}.`)),this.show()}};function Kd(i){let e=Object.values(xt).find(t=>t.heading===i);return e?e.name.toLowerCase():`turned ${G(i,0)}°`}var jd=i=>i.truck===R.bench.truck&&i.surface===R.bench.answers.surface;function Qd(i){let e=i.hold==="rail"?" against a rail":"";if(i.trial_outcome==="tips"){let[t,n]=i.trial_ci_deg??[null,null];return`tips${e} at ${G(i.trial_deg)}°, ${G(t)} to ${G(n)}`}return i.trial_outcome==="slides"?`slides away at ${G(i.trial_slide_deg)}°`:i.trial_outcome}var[ef,tf]=[1600,900],hx=["fill","fill-opacity","fill-rule","stroke","stroke-width","stroke-opacity","stroke-dasharray","stroke-linecap","stroke-linejoin","paint-order","font","text-anchor","visibility","vector-effect","letter-spacing"];function sf(i){if(Se("share-picture").addEventListener("click",()=>{dx(i)}),Se("share-page").addEventListener("click",()=>{ux()}),!$t)return;let e=_("p",{class:"frozen-note"});document.querySelector(".head").append(e),De("bench",()=>{e.textContent=`${R.bench.file.replace(/\.toml$/,"")}, as it was on ${$t.date}: a copy to look at`})}function Wr(i,e){let t=_("a",{href:URL.createObjectURL(i),download:e});t.click(),URL.revokeObjectURL(t.href),Ne(`${e} is in your downloads.`)}var pi=()=>R.bench.file.replace(/\.toml$/,"");async function ux(){Ne("Working out every way to stand, for the copy…");try{Wr(await ve.share(),`${pi()}-bench.html`)}catch(i){if(!(i instanceof Be))throw i;Ne(`No copy was made: ${i.message}`,"wrong")}}async function nf(i,e,t){let n=i.cloneNode(!0),[s,r]=[[i,...i.querySelectorAll("*")],[n,...n.querySelectorAll("*")]];s.forEach((l,c)=>{let h=getComputedStyle(l);for(let u of hx)r[c].style.setProperty(u,h.getPropertyValue(u))}),n.setAttribute("width",String(e)),n.setAttribute("height",String(t)),n.setAttribute("xmlns","http://www.w3.org/2000/svg");let a=new Image,o=URL.createObjectURL(new Blob([new XMLSerializer().serializeToString(n)],{type:"image/svg+xml"}));return a.src=o,await a.decode(),URL.revokeObjectURL(o),a}async function dx(i){let e=_("canvas",{width:ef,height:tf}),t=e.getContext("2d"),n=getComputedStyle(document.documentElement),s=M=>n.getPropertyValue(M).trim();t.fillStyle=s("--sheet"),t.fillRect(0,0,ef,tf),i.render();let r=document.querySelector("#stage .flat"),a=Se("stage-canvas"),o=r?r.getBoundingClientRect():a,[l,c]=[o.width,o.height],h=Math.min(790/l,700/c);t.drawImage(r?await nf(r,l*2,c*2):a,20,90,l*h,c*h);let u=document.querySelector("svg.polar");t.drawImage(await nf(u,1560,1374),820,84,760,669);let d=(M,C,w,E,S="--ink")=>{t.font=E,t.fillStyle=s(S),t.fillText(M,C,w)},f=n.getPropertyValue("--plain")||"sans-serif",{numbers:p,surface:v,grip_range:m}=R.answers;d(pi(),30,56,`600 38px ${f}`),d(`on ${v}, grip ${G(m.likely,2)}, ${$t?.date??new Date().toISOString().slice(0,10)}`,60+fx(t,pi(),`600 38px ${f}`),56,`22px ${f}`,"--soft"),d(`${G(p.mass_g,0)} g, CG ${G(p.cg_mm[2])} mm high, ${G(p.front_percent)} % on the front`,30,820,`24px ${f}`);let g=Object.values(xt).map(({heading:M,short:C})=>{let w=sn(R.answers,M),E=R.answers.ways?.find(S=>S.heading_deg===M);return`${C} ${w?.slides?"slides":"tips"} ${Yi(w?.deg??null,w?.slides?null:nr(E))}°`});d(g.join("   "),30,862,`600 24px ${f}`),e.toBlob(M=>{M&&Wr(M,`${pi()}.png`)})}function fx(i,e,t){return i.font=t,i.measureText(e).width}var js=[640,400],px=`Driven in the engine: the truck goes straight on while the hill turns under it as the way does, with stones and ramps
  where the way has them. Left out: steering, so that it wanders a little off its line, and what bends cost; its tyres squash but do
  not give along the ground, which is up to a degree too hopeful; and axles on links move on straight lines. The curve above is no drive: it is the one answer for standing there.`;function rf(i){new ih(i)}var ih=class{map;strip=new ha;view=null;canvas=_("canvas",{class:"course-canvas",role:"img","aria-label":"The drive in three dimensions"});told=_("div",{class:"course-told"});controls=_("div",{class:"bar course-controls"});drive=_("button",{type:"button",class:"main",id:"course-drive",onclick:()=>{this.run()}},"Drive it");slope=_("input",{type:"number",id:"course-slope",min:0,max:60,step:1,value:0});speed=_("input",{type:"number",id:"course-speed",min:50,max:1e3,step:10,value:0});standing=null;state=null;shown=null;time=0;playing=!1;filming=!1;timer=0;asked=0;constructor(e){e.classList.add("course");let t=Object.keys(ar)[0];this.map=new oa(structuredClone(ar[t]),a=>this.changed(a));let n=_("select",{id:"course-choice","aria-label":"Course"},...Object.keys(ar).map(a=>_("option",{value:a},a)));n.addEventListener("change",()=>{this.map.take(structuredClone(ar[n.value])),this.dials(),this.changed(!0)});for(let[a,o]of[[this.slope,"slope_deg"],[this.speed,"speed_mm_per_s"]])a.addEventListener("change",()=>a.checkValidity()?(this.map.course[o]=Number(a.value),this.changed(!0),!0):a.reportValidity());let s=_("div",{class:"hill-tools",role:"toolbar","aria-label":"What lies on the hill"},_("button",{type:"button",id:"course-draw",onclick:()=>{this.map.begin(),Ne("Draw the way on the hill with one stroke.")}},"Draw a way"),_("button",{type:"button",id:"course-stone",onclick:()=>this.map.add("stones")},"Add a stone"),_("button",{type:"button",id:"course-ramp",onclick:()=>this.map.add("ramps")},"Add a ramp"));Nt(s),e.append(_("div",{class:"bar"},n,_("label",{},"hill ",this.slope," °"),_("label",{},"at ",this.speed," mm/s"),this.drive),this.map.root,_("div",{class:"hill-row"},this.map.form,s),_("div",{class:"course-stage",hidden:!0},this.canvas),this.controls,this.told,this.strip.root,_("p",{class:"text soft"},px.replace(/\s+/g," "))),this.dials();let r="";an(e,()=>{let{truck:a,answers:o,before:l}=R.bench,c=`${a} ${o.surface} ${l?.key} ${l?.what}`;c!==r&&this.changed(!0),r=c}),new MutationObserver(()=>{this.view?.repaint(),this.view?.again()}).observe(document.documentElement,{attributes:!0,attributeFilter:["data-light"]}),new ResizeObserver(()=>this.view?.again()).observe(this.canvas),this.changed(!0)}dials(){this.slope.value=String(this.map.course.slope_deg),this.speed.value=String(this.map.course.speed_mm_per_s)}changed(e){e&&this.leave(),clearTimeout(this.timer),this.timer=window.setTimeout(()=>{this.ask()},e?20:120)}leave(){this.playing=!1,this.shown=null,this.state=null,this.canvas.parentElement?.toggleAttribute("hidden",!0),this.map.follow(null,0),this.strip.now(null),ge(this.controls),ge(this.told)}async ask(){let e=++this.asked;try{let t=await ve.courseStanding(this.map.course);if(e!==this.asked)return;this.standing=t,this.map.show(t.way,[]),this.strip.draw(t,[]),this.drive.title=`${G(t.way.seconds)} s on the way`}catch(t){this.refused(t)}}refused(e){if(!(e instanceof Be))throw e;e instanceof Kt||e.status===409||ge(this.told,_("p",{class:"text wrong"},e.message))}async run(){if(this.drive.getAttribute("aria-disabled")==="true")return;this.leave(),this.drive.setAttribute("aria-disabled","true");let e=structuredClone(this.map.course),t=R.bench;try{let n=await ve.driveCourse(e),{number:s}=n;for(;n.state==="running"&&n.number===s;)ge(this.controls,_("progress",{max:n.total,value:n.done,"aria-label":"Drives done"}),_("button",{type:"button",id:"course-stop",onclick:()=>{ve.stopCourse()}},"Stop")),await new Promise(r=>setTimeout(r,150)),n=await ve.courseState();if(ge(this.controls),n.number!==s&&ge(this.told,_("p",{class:"text"},"Another tab drives a course meanwhile.")),t!==R.bench||n.number!==s)return;n.state==="failed"&&ge(this.told,_("p",{class:"text wrong"},`It was not driven: ${n.words}`)),n.found.length&&await this.take(e,n)}catch(n){ge(this.controls),this.refused(n)}finally{this.drive.removeAttribute("aria-disabled")}}async take(e,t){let n=async a=>{let o=t.found.find(c=>c.whose===a),l=a==="truck"?R.bench.scene:R.bench.before?.scene;return!o||!l?null:{scene:l,pack:ir(),recording:new Hr(await ve.coursePoses(o.file)),events:o.events}},s=[await n("truck"),await n("reference")];if(this.map.course.points_mm.length===0||!s[0])return;this.state=t,this.shown={course:e,seen:s},this.time=0;let r=this.events();this.map.show(t.way,r),this.standing&&this.strip.draw(this.standing,r),this.tell(),_i()||(this.canvas.parentElement.hidden=!1,this.view??=new ol(this.canvas),this.view.take(e,t.way,s)),this.buttons(),this.show(),Ne(this.outcome(t.found[0],"The truck")),!jr()&&this.play()}events(){return(this.state?.found??[]).flatMap(e=>e.events.map(t=>({whose:e.whose,event:t})))}outcome(e,t){let n=e.events.find(a=>a.what===e.outcome),s=e.events.filter(a=>a.what==="lifts"),r=Math.abs(e.off_line_mm)>=5&&!n?`, ${G(Math.abs(e.off_line_mm),0)} mm off its line at the end`:"";return`${t} ${e.outcome}${n?` at ${G(n.at_mm,0)} mm`:""}${r}; ${s.length===0?"no wheel lifts":`${s.length} ${s.length===1?"lift":"lifts"} of a wheel`}.`}tell(){let e=this.state,t=n=>_("button",{type:"button",class:"event",title:`after ${G(n.begin_s)} s`,onclick:()=>{this.playing=!1,this.time=n.begin_s,this.show(),this.buttons()}},`${n.wheel?`${n.wheel} ${n.what}`:n.what}, ${G(n.at_mm,0)} mm`);ge(this.told,...e.found.flatMap(n=>{let s=n.whose==="truck"?"The truck":`The reference (${e.against})`,r=_("div",{class:`events ${n.whose}`,role:"toolbar","aria-label":`What happened to ${s.toLowerCase()}`},...n.events.map(t));return Nt(r),[_("p",{class:`text outcome ${n.whose}${n.outcome==="comes through"?"":" bad"}`},this.outcome(n,s)),n.events.length?r:null]}))}get seconds(){return Math.max(.1,...(this.shown?.seen??[]).map(e=>e?.recording.seconds??0))}buttons(){let e=_("input",{type:"range",id:"course-time","data-key":"course-time",class:"grow",min:0,max:this.seconds.toFixed(2),step:.02,value:this.time.toFixed(2),"aria-label":"Moment of the drive"});e.addEventListener("input",()=>{this.playing=!1,this.time=Number(e.value),this.show()});let t=_i()?null:Jh();ge(this.controls,_("button",{type:"button",id:"course-play","data-key":"course-play",onclick:()=>this.playing?this.pause():this.play()},this.playing?"Pause":"Play"),e,_("output",{id:"course-clock"},""),_i()?null:_("button",{type:"button",id:"course-clip","data-key":"course-clip",title:"An animated picture (WebP)",onclick:()=>{this.clip(null)}},"Clip"),t?_("button",{type:"button",id:"course-film","data-key":"course-film",title:"A film (MP4), which takes as long as it plays",onclick:()=>{this.clip(t)}},"MP4"):null,_i()?null:_("button",{type:"button",id:"course-still","data-key":"course-still",title:"This moment as a picture",onclick:()=>this.still()},"Still"),_i()?null:_("button",{type:"button",id:"course-sheet","data-key":"course-sheet",title:"This moment as a second page of the set-up sheet, as long as the truck stays as it is",onclick:()=>{this.onSheet()}},"Sheet")),this.show()}play(){this.time>=this.seconds&&(this.time=0),this.playing=!0,this.buttons();let e=performance.now(),t=n=>{if(!(!this.playing||!this.shown)){if(this.time=Math.min(this.seconds,this.time+(n-e)/1e3),e=n,this.show(),this.time>=this.seconds)return this.pause();requestAnimationFrame(t)}};requestAnimationFrame(t)}pause(){this.playing=!1,this.buttons()}show(){if(!this.shown||!this.state?.way)return;let e=this.shown.seen[0].recording,t=e.at(e.rowAt(this.time)),n=t.poses[0][0];this.filming||this.view?.draw(this.time),this.map.follow(this.state.way,n),this.strip.now(n);let s=document.getElementById("course-time"),r=t.load_g.filter(o=>o<1).length;s&&(s.value=this.time.toFixed(2),s.setAttribute("aria-valuetext",`${G(this.time)} seconds, ${G(n,0)} millimetres along, ${r===0?"all wheels down":`${r} of 4 wheels off the ground`}`));let a=document.getElementById("course-clock");a&&(a.textContent=`${G(this.time)} s`)}film(){let e=_("canvas",{width:js[0],height:js[1]}),t=e.getContext("2d",{alpha:!1}),n=getComputedStyle(document.documentElement),s=u=>n.getPropertyValue(u).trim(),{course:r,seen:a}=this.shown,[o,l]=[this.view,this.state],c=(u,d,f,p,v,m="left")=>{t.font=`${p} ${n.getPropertyValue("--plain")}`,t.textAlign=m,t.lineWidth=4,t.strokeStyle=s("--sheet"),t.strokeText(u,d,f),t.fillStyle=s(v),t.fillText(u,d,f)},h=u=>{o.draw(u,js),t.drawImage(o.canvas,0,0,...js),c(pi(),14,28,"600 20px","--ink"),c(`hill of ${G(r.slope_deg,0)}°, ${l.surface}`,14,48,"13px","--soft"),a[1]&&c(`blue edges: ${l.against}`,14,66,"13px","--blue"),c(`${G(u)} s`,js[0]-14,28,"600 18px","--ink","right"),l.found.forEach((d,f)=>{let v=d.events.filter(m=>m.begin_s<=u&&(m.what!=="lifts"||m.end_s>=u)).map(m=>m.wheel?`${m.wheel} ${m.what}`:m.what);v.length&&c(`${d.whose==="truck"?"":"reference: "}${[...new Set(v)].slice(-3).join(", ")}`,14,js[1]-16-22*f,"600 15px",d.whose==="truck"?"--red":"--blue")})};return{seconds:this.seconds,draw:h,sheet:e}}async clip(e){this.playing=!1,this.filming=!0;let t=performance.now(),n=this.shown,s=_("progress",{max:1,value:0,"aria-label":"Clip made"}),r=!1;ge(this.controls,s,_("button",{type:"button",id:"course-clip-stop",onclick:()=>{r=!0}},"Stop"));try{let a=this.film(),o=()=>r||this.shown!==n,l=h=>{s.value=h},c=e?await Kh(a,e,l,o):await Zh(a,l,o);c&&(Wr(c,`${pi()}-course.${e?"mp4":"webp"}`),Ne(`${pi()}-course.${e?"mp4":"webp"} is in your downloads: ${G(c.size/1e6,2)} MB, made in ${G((performance.now()-t)/1e3,0)} s.`))}catch(a){Ne(a instanceof Error?a.message:String(a),"wrong")}finally{this.filming=!1,this.shown===n&&n&&(this.buttons(),document.activeElement===document.body&&document.getElementById(e?"course-film":"course-clip")?.focus())}}still(){let e=this.film();e.draw(this.time),e.sheet.toBlob(t=>{t&&Wr(t,`${pi()}-course.png`)}),this.view?.again()}async onSheet(){let{course:e}=this.shown,t=this.film();t.draw(this.time),this.view?.again();let n=t.sheet.toDataURL("image/png").split(",")[1],s=this.state.found.flatMap(a=>{let o=a.whose==="truck"?"The truck":`The reference (${this.state.against})`,l=a.events.map(c=>`${c.wheel?`${c.wheel} ${c.what}`:c.what} at ${G(c.at_mm,0)} mm`);return[this.outcome(a,o),...l.length?[mx(`${l.join(", ")}.`)]:[]]}),r=`A hill of ${G(e.slope_deg,0)}° on ${this.state.surface}, driven at ${G(e.speed_mm_per_s,0)} mm/s over ${e.stones.length} stones and ${e.ramps.length} ramps; here after ${G(this.time)} s.`;try{await ve.keepStill(n,[r,...s,"Driven in the engine without steering: see the page for what is left out."]),Ne("This moment is the second page of the set-up sheet, as long as the truck stays as it is.")}catch(a){if(!(a instanceof Be))throw a;Ne(a.message,"wrong")}}},mx=i=>i.length>230?`${i.slice(0,226)} …`:i;function lf(i){Se("undo").addEventListener("click",af),Se("redo").addEventListener("click",sh),Se("save").addEventListener("click",()=>{of()}),Se("save-as").addEventListener("click",rh),Se("sheet").addEventListener("click",()=>{gx()});let e=Se("truck");e.addEventListener("change",()=>{hf(e.value)});let t=Se("surface");t.addEventListener("change",()=>{gt(()=>ve.surface(t.value),`on ${t.value}`)});let n=Se("reference");n.addEventListener("change",()=>{gt(()=>ve.pin(n.value),`compared with: ${n.selectedOptions[0]?.textContent??""}`)}),_x(i),addEventListener("keydown",s=>{if(!(s.ctrlKey||s.metaKey)||s.target.matches("input[type=text], input[type=number], textarea"))return;let r=s.key.toLowerCase();r==="z"&&(s.preventDefault(),(s.shiftKey?sh:af)()),r==="y"&&(s.preventDefault(),sh()),r==="s"&&(s.preventDefault(),of())}),Nt(document.querySelector(".tools")),De("bench",cf)}function cf(){let i=R.bench;ge(Se("truck"),...i.trucks.map(s=>_("option",{value:s,selected:s===i.file},s.replace(/\.toml$/,"")))),ge(Se("surface"),...(i.surfaces.length?i.surfaces:[i.answers.surface]).map(s=>_("option",{value:s,selected:s===i.answers.surface},s))),Se("surface").disabled=i.surfaces.length<2,ge(Se("reference"),...i.references.map(s=>_("option",{value:s.key,selected:s.key===i.reference},s.words)));let e=Se("state");e.textContent=i.needs_name?i.unsaved?"demo truck, changed: save it under a name":"demo truck":i.unsaved?"changed, not saved yet":"saved",e.classList.toggle("unsaved",i.unsaved);let[t,n]=[Se("undo"),Se("redo")];t.disabled=i.undo===null,n.disabled=i.redo===null,t.title=i.undo===null?"Nothing to undo":`Undo: ${i.undo}`,n.title=i.redo===null?"Nothing to redo":`Redo: ${i.redo}`,Se("save").disabled=!i.unsaved&&!i.needs_name,document.title=`${i.unsaved?"• ":""}${i.file.replace(/\.toml$/,"")} – crossfall bench`}async function gx(){Ne("Drawing the set-up sheet…");try{let i=_("a",{href:URL.createObjectURL(await ve.sheet()),download:`${R.bench.file.replace(/\.toml$/,"")}-sheet.pdf`});i.click(),URL.revokeObjectURL(i.href),Ne("The set-up sheet is in your downloads.")}catch(i){if(!(i instanceof Be))throw i;Ne(`The sheet was not drawn: ${i.message}`,"wrong")}}function af(){gt(()=>ve.undo(),`undone: ${R.bench.undo??"nothing"}`)}function sh(){gt(()=>ve.redo(),`done again: ${R.bench.redo??"nothing"}`)}async function of(){if(R.bench.needs_name)return rh();await cl(null,!1)}async function cl(i,e){try{nn(await ve.save(i,e)),Ne(`Saved as ${R.bench.file}.`)}catch(t){if(!(t instanceof Be))throw t;if(t.status===409&&t.where==="disk")Mi(`Not saved: ${t.message}.`,[["Save under a new name",rh],["Write mine over it",()=>{cl(i,!0)}],["Take the file as it is on disk",()=>{gt(()=>ve.discard(),"taken from disk")}]]);else if(t.status===409){let n=R.bench.file;nn(await ve.bench()),R.bench.file!==n?Mi(`${R.bench.file} is on the bench now, put there from another tab; ${n} was not saved.`,[[`Put ${n} back on the bench`,()=>{hf(n)}]]):Mi("This truck was changed in another tab or on disk. You see that state now; nothing was saved.",[["Save this state",()=>{cl(i,e)}]])}else t.status!==0&&Ne(t.message,"wrong")}}function rh(){let i=Se("ask"),e=_("input",{id:"new-file",required:!0,maxlength:80,value:R.bench.file.replace(/\.toml$/,"")+"-2"});ge(i,_("form",{method:"dialog"},_("h2",{},"Save as a new file"),_("label",{for:"new-file"},"Name, in the opened folder"),e,_("div",{class:"bar"},_("button",{value:"no",formnovalidate:!0},"Leave it"),_("button",{value:"yes",class:"main"},"Save")))),i.onclose=()=>{i.returnValue==="yes"&&cl(e.value.trim(),!1)},i.returnValue="no",i.showModal(),e.select()}async function hf(i){Ne(`Fetching ${i.replace(/\.toml$/,"")}…`),await gt(()=>ve.open(i),`on the bench: ${i.replace(/\.toml$/,"")}`)&&cf()}function _x(i){let e=document.documentElement,t=Se("light"),n=matchMedia("(prefers-color-scheme: dark)"),s=null;try{s=localStorage.getItem("crossfall-light")}catch{}let r=()=>{let a=s??(n.matches?"dark":"light");e.dataset.light=a,t.textContent=a==="dark"?"Light":"Dark",i()};t.addEventListener("click",()=>{s=e.dataset.light==="dark"?"light":"dark";try{localStorage.setItem("crossfall-light",s)}catch{}r()}),n.addEventListener("change",r),r()}function df(i){let e=null,t=null,n={key:""},s=_("div",{id:"change-list"}),r=_("div",{hidden:!0}),a=_("datalist",{id:"change-groups"}),o=_("button",{type:"button",id:"change-new"},"New change"),l=_("button",{type:"button",id:"change-keep",title:"What you edited by hand since the state it is compared with"},"Keep my edits as a change"),c=_("button",{type:"button",id:"change-back",hidden:!0});i.append(_("div",{class:"bar"},o,l,c),r,s,a);let h=()=>{if(!e)return;if(c.hidden=t===null||t.stamp!==e.stamp,c.textContent=`Take back: ${t?.what??""}`,ge(a,...[...new Set(e.changes.map(g=>g.group).filter(Boolean))].map(g=>_("option",{value:g}))),e.changes.length===0)return ge(s,_("p",{class:"text"},`There is no ${e.file} yet. Begin it with a new change, or edit the truck (move the pack, weigh something lighter, add a part) and keep that as a change: it becomes a switch with a price.`));let v=_("tbody",{},...e.changes.map(u)),m=_("table",{class:"parts listed"},_("caption",{class:"visually-hidden"},"The list of changes. Arrow keys go through it."),_("thead",{},_("tr",{},...["Change, and what it does",`Price, ${e.currency||"money"}`,"One of a group",""].map(g=>_(g?"th":"td",g?{scope:"col"}:{},g)))),v);_s(v,"tr",n),ge(s,m,_("p",{class:"text soft"},`Kept in ${e.file}. Of a group only one can be on the truck.`))},u=v=>{let m=v.name in R.bench.fitted,g=(M,C,w,E)=>{let S=_("input",{value:w,"aria-label":`${C} of ${v.name}`,"data-key":`list-${M}-${v.name}`,...E});return S.addEventListener("change",()=>{if(!S.checkValidity())return void S.reportValidity();let x=M==="price"?Number(S.value||0):S.value.trim()||null;f({do:"field",name:v.name,field:M,value:x},`${C.toLowerCase()} of ${v.name}`).then(T=>{T||(S.value=w)})}),S};return _("tr",{"data-listed":v.name},_("td",{},g("label","Words",v.label,{required:!0,maxlength:200}),_("small",{class:"soft"},v.does)),_("td",{class:"n"},g("price","Price",String(v.price),{type:"number",min:0,max:1e7,step:"any"})),_("td",{},g("group","Group",v.group??"",{list:"change-groups",maxlength:60})),_("td",{},_("button",{type:"button","aria-label":`Remove ${v.name} from the list`,"data-key":`list-remove-${v.name}`,disabled:m,title:m?"It is on the truck: take it off first":"Remove",onclick:()=>{f({do:"remove",name:v.name},`removed ${v.name}`)}},"✕")))},d=(v,m)=>{e=v,t=v.was===void 0?null:{text:v.was,stamp:v.stamp,what:m},h()},f=async(v,m)=>{try{return d(await ve.editChanges(e?.stamp??"",v),m),Ne(`${m[0].toUpperCase()}${m.slice(1)}, written to ${e.file}.`),!0}catch(g){if(!(g instanceof Be))throw g;return Ne(g.sentences.slice(0,3).join(" "),"wrong"),g.status!==0&&p(),!1}},p=async()=>{try{e=await ve.changes(),h()}catch(v){if(!(v instanceof Be))throw v;v.status!==409&&v.status!==0&&Ne(v.message,"wrong")}};c.addEventListener("click",()=>{t&&f({do:"text",text:t.text},`took back: ${t.what}`).then(v=>{v&&(t=null,h(),o.focus())})}),o.addEventListener("click",()=>uf(r,"A new change",!0,v=>f({do:"new",change:v},`new change ${v.name}`))),l.addEventListener("click",()=>uf(r,"Your edits as a change",!1,async v=>{let m=await gt(()=>ve.keepEdits(e?.stamp??"",v),`kept your edits as ${v.name}, switched on`);return m&&Gh("changes"),m})),an(i,()=>{p()},100),i.addEventListener("open",()=>{p()}),p()}var vx=[["move","moves a part"],["mass","makes a part weigh"],["remove","takes a part off"],["set","sets a measure"]];function uf(i,e,t,n){let s=(E,S)=>_("input",{id:`change-${E}`,...S}),r=s("name",{required:!0,maxlength:60,pattern:'[^.\\[\\]"]+',"aria-label":"Name"}),a=s("label",{maxlength:200,"aria-label":"In words"}),o=s("price",{type:"number",min:0,max:1e7,step:"any",value:0,"aria-label":"Price"}),l=s("group",{list:"change-groups",maxlength:60,"aria-label":"Group, of which only one can be chosen"}),c=_("select",{id:"change-act","aria-label":"What it does"},...vx.map(([E,S])=>_("option",{value:E},S))),h=R.bench.rows.find(E=>E.row===R.view.row)?.name,u=_("select",{id:"change-part","aria-label":"Which part"},...R.bench.rows.map(E=>_("option",{value:E.name,selected:E.name===h},E.name))),d=_("select",{id:"change-measure","aria-label":"Which measure"},...R.bench.measures.map(E=>_("option",{value:E.key},`${E.name}, ${E.unit}`))),f=["ahead","to the left","up"].map((E,S)=>s(`by${S}`,{type:"number",step:"any",value:0,"aria-label":`Moved by, ${E}, mm`})),p=s("value",{type:"number",step:"any","aria-label":"To"}),v=_("div",{class:"new-line"}),m=()=>{let E=c.value;p.required=E==="mass"||E==="set",ge(v,_("span",{class:"new-label"},"It"),c,...E==="set"?[d,p]:[u],...E==="move"?[...f,_("span",{class:"soft"},"mm ahead, left, up")]:[],...E==="mass"?[p,_("span",{class:"soft"},"g")]:[])};c.addEventListener("change",()=>{m(),c.focus()});let g=()=>c.value==="move"?{move:[{part:u.value,by_mm:f.map(E=>Number(E.value))}]}:c.value==="mass"?{swap:[{part:u.value,new:{mass_g:Number(p.value)}}]}:c.value==="remove"?{remove:[u.value]}:{set:{[d.value]:Number(p.value)}},M=()=>{i.hidden=!0,i.replaceChildren(),document.getElementById(t?"change-new":"change-keep")?.focus()},C=(E,...S)=>_("div",{class:"new-line"},_("span",{class:"new-label"},E),...S),w=_("form",{class:"new-part","aria-label":e},_("h3",{},e),C("Name",r,_("label",{},"price ",o)),t?C("In words",a):null,C("One of",l,_("span",{class:"soft"},"leave empty if it goes with all others")),t?v:null,_("p",{class:"about"},t?"What is more than this (a part added, several things at once): edit the truck, then keep that as a change.":"What differs from the state your truck is compared with goes into the list, and is switched on in its place."),_("div",{class:"bar"},_("button",{type:"submit",class:"main",id:"change-add"},t?"Put it in the list":"Keep them"),_("button",{type:"button",id:"change-leave",onclick:M},"Leave it")));w.addEventListener("submit",E=>{E.preventDefault();let S={name:r.value.trim(),label:a.value.trim(),price:Number(o.value||0),group:l.value.trim(),...t?g():{}};n(S).then(x=>{x&&M()})}),m(),ge(i,w),i.hidden=!1,r.focus()}function ff(){let i=Se("history"),e=_("div",{class:"steps"}),t=_("button",{type:"button",id:"step-name",onclick:()=>h()},"Name this step…"),n=_("button",{type:"button",id:"step-pin",title:"Compare everything with the truck as it is now",onclick:()=>{gt(()=>ve.pin("now"),"compared with this step from now on")}},"Compare with this");i.append(e,_("div",{class:"step-tools"},t,n)),Nt(i);let s=null,r=0,a=()=>{let u=s?.steps??[];if(i.hidden=u.length<2,!s||i.hidden)return;let d=u.map(v=>v.weakest_deg).filter(v=>v!==null),[f,p]=[Math.min(...d)-.5,Math.max(...d)+.5];ge(e,...u.map((v,m)=>{let g=v.weakest_deg,M=m?u[m-1].weakest_deg:null,C=g!==null&&M!==null?`, ${St(g-M,1)}°`:"",w=`${v.name||v.what}${g===null?"":`: weakest ${G(g)}°${C}`}${v.saved?", as saved":""}`,E=_("i",{class:"step-bar","aria-hidden":"true"});return E.style.height=`${g===null?2:Math.round(3+15*(g-f)/(p-f))}px`,_("button",{type:"button",class:`step${v.saved?" saved":""}${m>s.now?" undone":""}`,"data-key":`step-${m}`,"aria-pressed":String(m===s.now),title:w,"aria-label":`Step ${m}: ${w}`,onclick:()=>{gt(()=>ve.go(m),m===0?"back at the start":`at the step: ${v.name||v.what}`)}},E,_("span",{},v.name?v.name:g===null?"…":`${G(g)}°`))})),t.disabled=s.now===0,e.querySelector("[aria-pressed='true']")?.scrollIntoView({block:"nearest",inline:"nearest"})},o=async()=>{try{s=await ve.history(),a()}catch(u){if(!(u instanceof Be))throw u}},l=()=>{clearTimeout(r),r=window.setTimeout(()=>{o()},150)};De("bench",l);let c="";De("shown",()=>{R.trying||!R.answers.exact||c===R.bench.truck+R.answers.surface||(c=R.bench.truck+R.answers.surface,l())});let h=()=>{if(!s||s.now===0)return;let u=s.now,d=Se("ask"),f=_("input",{id:"new-step",maxlength:60,value:s.steps[u].name});ge(d,_("form",{method:"dialog"},_("h2",{},"Name this step"),_("label",{for:"new-step"},`What to call the truck after “${s.steps[u].what}”`),f,_("div",{class:"bar"},_("button",{value:"no",formnovalidate:!0},"Leave it"),_("button",{value:"yes",class:"main"},"Name it")))),d.onclose=()=>{d.returnValue==="yes"&&ve.nameStep(u,f.value).then(p=>{s=p,a()},p=>{if(!(p instanceof Be))throw p;Ne(p.message,"wrong")})},d.returnValue="no",d.showModal(),f.select()}}var pf=1500,ul=!1,hl="";function mf(){Lh(()=>{if(ul)return;ul=!0,document.documentElement.dataset.lost="",Cn();let i=Se("notice");i.replaceChildren(_("p",{},"The bench does not answer. What you see is the last state it took; your work up to there is kept. Start it again with crossfall bench: this page finds it by itself.")),i.hidden=!1}),window.setTimeout(()=>{gf()},pf)}async function gf(){try{await xx()}catch(i){if(!(i instanceof Be))throw i;i instanceof Kt||Ne(i.message,"wrong")}finally{window.setTimeout(()=>{gf()},pf)}}async function xx(){let i=await ve.pulse(),e=R.bench;if(ul)return yx();if(!(R.trying||aa())){if(i.document!==e.document||i.revision!==e.revision){let t=await ve.bench();if(R.trying||aa()||R.bench!==e)return;nn(t),Ne(t.document!==e.document?`${t.file} was put on the bench by another tab.`:`Changed elsewhere: ${t.undo??"an older state"}.`)}else if(i.unsaved!==e.unsaved||i.surface!==e.answers.surface||i.reference!==(e.reference??"auto")){let t=await ve.bench();!R.trying&&!aa()&&R.bench===e&&nn(t)}i.disk!==hl&&(hl=i.disk,hl&&Mi(`${hl}.`,[["Take the file as it is on disk",()=>{gt(()=>ve.discard(),"taken from disk")}],["Keep what is here",()=>{}]]))}}async function yx(){let i=R.bench,e=await ve.bench();ul=!1,delete document.documentElement.dataset.lost,Se("notice").hidden=!0,nn(e),Ne(e.document===i.document&&e.revision===i.revision?"The bench is back, with everything as it was.":`The bench is back, with ${e.file} as it is there now.`)}function _f(i){let e=_("div",{id:"map-holder"}),t=_("select",{id:"sweep-choice",class:"grow","aria-label":"Finished sweep"}),n=async()=>{try{ge(e,bx(await ve.sweep(t.value)))}catch(r){if(!(r instanceof Be))throw r;ge(e,_("p",{class:"text wrong"},r.message))}},s=_("div",{class:"bar"},t,_("button",{type:"button",id:"sweep-open",onclick:()=>{n()}},"Open"));i.append(s,e),ve.sweeps().then(({tables:r})=>{ge(t,...r.map(a=>_("option",{value:a},a))),r.length===0&&ge(s,_("p",{class:"text"},"There is no finished sweep in this folder yet. crossfall sweep makes one; its results.csv opens here."))})}function bx(i){let e=Object.entries(i.columns).filter(([,d])=>d.every(f=>f===null||typeof f=="number")).map(([d])=>d),t=e.filter(d=>new Set(i.columns[d]).size>1),n=t.filter(d=>d.includes(".")&&!d.startsWith("slide")),s=e.filter(d=>/tip|compliant|rigid|critical|angle/.test(d)&&d.endsWith("_deg")),r={x:n[0]??t[0]??"",y:n[1]??t[1]??"",z:s.find(d=>d==="tip_deg")??s[0]??t[t.length-1]??""},a=[...new Set(i.columns.heading_deg??[])].filter(d=>typeof d=="number"),o=a[0]??null,l=_("div",{}),c=(d,f)=>{let p=_("select",{id:`map-${d}`},...t.map(v=>_("option",{value:v,selected:v===r[d]},Mx(v))));return p.addEventListener("change",()=>{r[d]=p.value,u()}),[_("label",{for:`map-${d}`},f),p]},h=_("select",{id:"map-way","aria-label":"Heading"},...a.map(d=>_("option",{value:d},`turned ${d}°`)));h.addEventListener("change",()=>{o=Number(h.value),u()});let u=()=>ge(l,wx(i,r,o,n));return u(),_("div",{},_("div",{class:"bar map-bar"},...c("x","Across"),...c("y","Up"),...c("z","Colour"),a.length>1?h:null),l,_("p",{class:"text soft"},`${i.rows} lines${i.cut?", the first of more":""}. A point puts that truck on the table; undo brings yours back.`))}function Mx(i){return i.replace(/^part\./,"").replace(/\.at_mm\./," ").replace(/\./g," ").replace(/_(mm|deg|g)$/," ($1)").replace(/_/g," ")}function wx(i,e,t,n){let s=i.columns,r=[];for(let N=0;N<i.rows;N++)[e.x,e.y,e.z].every(q=>typeof s[q]?.[N]=="number")&&(t===null||s.heading_deg?.[N]===t)&&r.push(N);let a=(N,V)=>s[N][V],o=N=>{let V=r.map(X=>a(N,X)),[q,I]=[Math.min(...V),Math.max(...V)];return I>q?[q,I]:[q-1,I+1]},[l,c,h]=[420,320,46];if(r.length===0)return O("svg",{viewBox:`0 0 ${l} 40`},O("text",{x:10,y:24,class:"ring-name"},"nothing to draw"));let[[u,d],[f,p],[v,m]]=[o(e.x),o(e.y),o(e.z)],g=N=>h+(N-u)/(d-u)*(l-h-70),M=N=>c-40-(N-f)/(p-f)*(c-60),C=N=>{let V=[[31,56,84],[88,124,144],[176,184,164],[243,228,178]],q=Math.max(0,Math.min(2.999,N*3)),[I,X]=[V[Math.floor(q)],V[Math.floor(q)+1]];return`rgb(${I.map((J,$)=>Math.round(J+(X[$]-J)*(q%1))).join(" ")})`},[w,E]=[new Set(r.map(N=>a(e.x,N))).size,new Set(r.map(N=>a(e.y,N))).size],S=w*E<=r.length*1.5&&w>1&&E>1,[x,T]=S?[(l-h-70)/(w-1)*1.02,(c-60)/(E-1)*1.02]:[11,11],B=r.map(N=>{let V=`${e.x} ${G(a(e.x,N),2)}, ${e.y} ${G(a(e.y,N),2)}: ${e.z} ${G(a(e.z,N),2)}`,q=O("rect",{x:g(a(e.x,N))-x/2,y:M(a(e.y,N))-T/2,width:x,height:T,fill:C((a(e.z,N)-v)/(m-v)),class:"map-point",tabindex:r.length<=400?0:-1,role:"button","aria-label":V},O("title",{},V)),I=()=>{let X={};for(let J of n)X[J]=a(J,N);gt(()=>ve.place(X),"put a point of the sweep on the table").then(J=>{J&&Ne(V)})};return q.addEventListener("click",I),q.addEventListener("keydown",X=>{(X.key==="Enter"||X.key===" ")&&(X.preventDefault(),I())}),q}),U=[];for(let N=0;N<=4;N++)U.push(O("text",{class:"ring-name",x:g(u+(d-u)*N/4),y:c-12,"text-anchor":"middle"},G(u+(d-u)*N/4,d-u<8?2:0)),O("text",{class:"ring-name",x:h-14,y:M(f+(p-f)*N/4)+3,"text-anchor":"end"},G(f+(p-f)*N/4,p-f<8?2:0)),O("rect",{x:l-38,y:24+(4-N)*30,width:12,height:30,fill:C(N/4)}),O("text",{class:"ring-name",x:l-22,y:24+(4-N)*30+18},G(v+(m-v)*N/4,1)));return U.push(O("text",{class:"ring-name",x:l-38,y:16},e.z.replace(/_/g," "))),O("svg",{viewBox:`0 0 ${l} ${c}`,id:"map",role:"group","aria-label":`${e.z} over ${e.x} and ${e.y}`},...B,...U)}var Sx=[["budget","At most, money","100"],["added_g","At most heavier, g",""],["run_min","Run time at least, min",""],["front_least","On the front axle at least, %",""],["front_most","On the front axle at most, %",""],["reach_deg","Reach this angle, °",""]],$r="";function xf(i){let e=_("select",{id:"plan-aim"},...[["worst","the weakest way"],["side","the side slope"],["climb","the climb"],["descent","the descent"]].map(([c,h])=>_("option",{value:c},h))),t=Sx.map(([c,h,u])=>{let d=_("input",{id:`plan-${c}`,type:"number",step:"any",min:c==="added_g"?void 0:0,value:u});return[c,_("label",{for:`plan-${c}`},h),d]}),n=_("select",{id:"plan-limits"},_("option",{value:""},"no class")),s="",r=async()=>{if(s===R.bench.document)return;s=R.bench.document;let c=await ve.changes();$r=c.currency;let h=l.querySelector("label[for='plan-budget']");h&&(h.textContent=`At most, ${$r||"money"}`),ge(n,_("option",{value:""},"no class"),...c.limits.map(u=>_("option",{value:u},u.replace(".limits.toml",""))))},a=_("div",{id:"plan-answer","aria-live":"polite"}),o=_("button",{type:"submit",class:"main",id:"plan-go"},"Find the best set"),l=_("form",{class:"plan-form"},_("label",{for:"plan-aim"},"Raise"),e,...t.flatMap(([,c,h])=>[c,h]),_("label",{for:"plan-limits"},"Within the limits of"),n,o);l.addEventListener("submit",c=>{c.preventDefault();let h={aim:e.value};for(let[u,,d]of t)d.value!==""&&(h[u]=Number(d.value));n.value&&(h.limits=n.value),o.disabled=!0,ge(a,_("p",{class:"text soft"},"Looking through every set that may go together…")),ve.plan(h).then(u=>Tx(a,u),u=>{if(!(u instanceof Be))throw u;ge(a,_("p",{class:"text wrong"},u.message))}).finally(()=>{o.disabled=!1})}),i.append(l,a),i.addEventListener("open",()=>{r()}),an(i,()=>{r()}),r()}function Tx(i,e){let t=e.best;ge(i,t?_("div",{},_("h3",{},`Best: ${G(t.deg,2)}° for ${qi(t.price,$r)}`),vf(t,"best")):_("p",{class:"text"},"No set of these changes does what is asked."),e.front.length>1?Ex(e):null,_("p",{class:"text soft"},`${e.scored} sets were scored with springs and tyres${e.proven?"; this is proven to be the best of them all":""}.`),e.runners.length?_("h3",{},"Next best"):null,...e.runners.map((n,s)=>vf(n,`runner-${s}`)))}function vf(i,e){return _("div",{class:"change"},_("span",{}),_("span",{},i.labels.join("; ")||"nothing"),_("button",{type:"button",id:`fit-${e}`,onclick:()=>{ah(i)}},"Fit"),_("p",{class:"note"},`${G(i.deg,2)}° ± ${G(1.96*i.sd_deg,2)}${i.slides?" against a rail: it slides first":""}, ${qi(i.price,$r)}, ${G(i.added_g,0)} g heavier${i.tied?"; as good as the best, as far as the masses are known":""}`))}function ah(i){return gt(()=>ve.fit(i.chosen),"fitted the set")}function Ex(i){let e=i.front,[t,n,s]=[420,200,38],[r,a]=[0,Math.max(...e.map(p=>p.price),1)],o=[...e.map(p=>p.deg),i.now.deg],[l,c]=[Math.floor(Math.min(...o)),Math.ceil(Math.max(...o))],h=p=>s+(p-r)/(a-r)*(t-s-14),u=p=>n-28-(p-l)/Math.max(1,c-l)*(n-44),d=[];for(let p=l;p<=c;p+=Math.max(1,Math.round((c-l)/5)))d.push(O("path",{class:"ring",d:`M${s} ${u(p)}H${t-10}`}),O("text",{class:"ring-name",x:s-5,y:u(p)+3,"text-anchor":"end"},`${p}°`));for(let p=0;p<=4;p++)d.push(O("text",{class:"ring-name",x:h(a*p/4),y:n-12,"text-anchor":"middle"},G(a*p/4,0)));let f=`M${h(0)} ${u(e[0].deg)}`;e.forEach((p,v)=>{f+=`${v?`H${h(p.price)}`:""}L${h(p.price)} ${u(p.deg)}`}),d.push(O("path",{class:"compliant",d:f}));for(let p of e){let v=`${qi(p.price,$r)}: ${G(p.deg,2)}°, ${p.labels.join("; ")||"nothing"}`,m=O("circle",{cx:h(p.price),cy:u(p.deg),r:5,class:"front-point",tabindex:0,role:"button","aria-label":`Fit: ${v}`},O("title",{},v));m.addEventListener("click",()=>{ah(p)}),m.addEventListener("keydown",g=>{(g.key==="Enter"||g.key===" ")&&(g.preventDefault(),ah(p))}),d.push(m)}return _("figure",{class:"front"},_("figcaption",{class:"text soft"},"The most degrees for every price; a point fits its set."),O("svg",{viewBox:`0 0 ${t} ${n}`,id:"front",role:"group","aria-label":"Money against degrees"},...d))}var En=74,Gi=178,fs=15,Ax=[["key-compliant","tips on springs and tyres"],["key-rail","against a rail"],["key-range","its 95 % range"],["key-rigid","tips, nothing gives"],["key-slide","slides, low to high grip"],["key-lift","first wheel lifts"],["key-tried","virtual trial"],["key-before","before"]],Cx={"key-tried":"M13 0L18 5L13 10L8 5Z","key-range":"M3 5H23M3 1V9M23 1V9"},oh=class{root;back=O("g");curves=O("g");parts=new Sn("plan",()=>this.scale());marks=O("g");plan=O("g",{class:"polar-plan"},this.parts.root,this.marks);puck=O("g",{class:"puck"});high=75;constructor(e){this.root=O("svg",{viewBox:"-234 -206 468 412",class:"polar",role:"slider",tabindex:0,"data-key":"puck","aria-label":"Slope under the truck: arrows left and right turn it, up and down tilt it","aria-valuemin":0,"aria-valuemax":90},this.back,this.plan,this.curves,this.puck);let t=document.createElement("ul");t.className="legend";for(let[n,s]of Ax){let r=O("svg",{viewBox:"0 0 26 10",class:n,"aria-hidden":"true"},n==="key-slide"?O("rect",{width:26,height:10}):O("path",{d:Cx[n]??"M0 5H26"})),a=document.createElement("li");a.append(r,s),t.append(a)}e.append(this.root,t),De(["shown","trials"],()=>this.draw()),De("view",()=>this.drawPuck()),De("pick",()=>this.drawPlan()),this.listen()}listen(){let e=!1,t=n=>{let s=new DOMPoint(n.clientX,n.clientY).matrixTransform(this.root.getScreenCTM().inverse()),r=Math.hypot(s.x,s.y),a=(Px(Math.atan2(-s.x,s.y))+360)%360;ht({heading:Math.round(a/Ji)*Ji%360,tilt:Math.max(0,Math.min(90,Ix(this.angleAt(r),1)))})};this.root.addEventListener("pointerdown",n=>{e=!0,this.root.setPointerCapture(n.pointerId),t(n)}),this.root.addEventListener("pointermove",n=>{e&&t(n)});for(let n of["pointerup","pointercancel"])this.root.addEventListener(n,()=>e=!1);this.root.addEventListener("keydown",n=>{let s=n.shiftKey?10:1,{tilt:r,heading:a}=R.view,l={ArrowUp:{tilt:Math.min(90,r+s)},ArrowDown:{tilt:Math.max(0,r-s)},ArrowLeft:{heading:(a+360-Ji*s)%360},ArrowRight:{heading:(a+Ji*s)%360},Home:{tilt:0}}[n.key];l&&(n.preventDefault(),ht(l),Ne(`Tilt ${G(R.view.tilt)}°, turned ${G(R.view.heading,0)}°; ${yf(R.view.heading)}.`))})}radius(e){return e<fs?e/fs*En:En+(e-fs)/(this.high-fs)*(Gi-En)}angleAt(e){return e<En?e/En*fs:fs+(e-En)/(Gi-En)*(this.high-fs)}at(e,t){let n=e*Math.PI/180;return[-Math.sin(n)*t,Math.cos(n)*t]}curve(e,t){return e.flatMap((n,s)=>{let r=t[s];return r==null?[]:[this.at(n,this.radius(Math.min(r,90)))]})}draw(){let e=R.answers;if(!e)return;let t=this.high,n=Bn(e),s=Math.max(...e.rigid_deg,...n.map(d=>d??0));this.high=Math.max(this.high,Math.min(95,Math.ceil((s+2)/10)*10)),(this.high!==t||!this.back.hasChildNodes())&&this.drawBack(),this.drawPlan();let[r,a,o]=[e.slide_deg.low,e.slide_deg.likely,e.slide_deg.high].map(d=>Rx(this.radius(d))),l=[O("path",{class:"slide-band",d:`${o}${r}`,"fill-rule":"evenodd"}),O("path",{class:"slide-likely",d:a}),O("path",{class:"lift",d:this.pieces(e.heading_deg,e.first_lift_deg)})],c=R.bench.before;if(c){let d=Bn(c);l.push(O("path",{class:"before",d:us(this.curve(c.heading_deg,d.some(f=>f!==null)?d:c.rigid_deg))}))}let[h,u]=this.cutAt(e);l.push(O("path",{class:"rigid",d:us(this.curve(e.heading_deg,e.rigid_deg))}),O("path",{class:"railed",d:u}),O("path",{class:"compliant",d:h}));for(let d of e.ways??[])l.push(this.range(d));for(let d of R.trying?[]:R.trials)l.push(...this.tried(d));for(let{heading:d}of Object.values(xt))l.push(this.reading(d),this.wayName(d));for(let[d,f,p]of[["nose",0,-En-1],["tail",0,En+7],["left",14-En,-5],["right",En-14,-5]])l.push(O("text",{x:f,y:p,class:"side-name","text-anchor":"middle"},d));this.curves.replaceChildren(...l),this.curves.classList.toggle("trying",R.trying),this.curves.classList.toggle("inexact",!e.exact),this.drawPuck()}pieces(e,t){let n="",s=!1;for(let r=0;r<=e.length;r++){let a=t[r%e.length]??null;a!==null&&(n+=`${s?"L":"M"}${Qs(this.at(e[r%e.length],this.radius(Math.min(a,90))))}`),s=a!==null}return n}cutAt(e){let[t,n,s]=[e.heading_deg,Bn(e),e.slide_deg.likely],r=["",""],a=360/t.length,o=-1,l=(c,h,u)=>{r[c]+=`${o===c?"L":"M"}${Qs(this.at(h,this.radius(Math.min(u,90))))}`,o=c};return t.forEach((c,h)=>{let[u,d]=[n[h]??null,n[(h+1)%t.length]??null];if(u===null||d===null){o=-1;return}let[f,p]=[h,(h+1)%t.length].map(v=>e.rail_deg[v]===null?0:1);if(o!==f&&l(f,c,u),f!==p){let v=d===u?.5:Math.max(0,Math.min(1,(s-u)/(d-u))),m=c+a*v;l(f,m,s),l(p,m,s)}l(p,c+a,d)}),r}range(e){let[t,n]=e.compliant_range_deg??e.rail_range_deg??[null,null];if(t===null||n===null)return O("g");let[[s,r],[a,o]]=[t,n].map(h=>this.at(e.heading_deg,this.radius(h))),l=this.at(e.heading_deg+90,5),c=([h,u])=>`M${Qs([h-l[0],u-l[1]])}L${Qs([h+l[0],u+l[1]])}`;return O("path",{class:e.compliant_deg===null?"range of-rail":"range",d:`M${Qs([s,r])}L${Qs([a,o])}${c([s,r])}${c([a,o])}`},O("title",{},`95 % range: ${G(t)} to ${G(n)}°`))}tried(e){let t=e.trial_deg??e.trial_slide_deg;if(t===null)return[];let[n,s]=this.at(e.heading_deg,this.radius(t)),[r,a]=(e.trial_ci_deg??[t,t]).map(c=>this.at(e.heading_deg,this.radius(c??t))),o=e.hold==="rail"?" against a rail":"",l=O("title",{},`virtual trial: ${e.trial_outcome}${o} at ${G(t)}°`);return[O("path",{class:"tried-line",d:`M${r[0]} ${r[1]}L${a[0]} ${a[1]}`}),O("path",{class:`tried ${e.trial_outcome}`,d:`M${n} ${s-5}L${n+5} ${s}L${n} ${s+5}L${n-5} ${s}Z`},l)]}reading(e){let t=R.answers,n=sn(t,e),s=n?.deg??ni(t.heading_deg,t.rigid_deg,e),[r,a]=this.at(e,Gi+14),o=Math.abs(r)<20?"middle":r<0?"start":"end",l=e===90?-231:e===270?231:r,c={x:l,y:a+(Math.abs(a)<20?-6:a>0?10:0),"text-anchor":o},h=O("tspan",{class:"reading-slides"},"slides "),u=R.trying?void 0:t.ways?.find(p=>p.heading_deg===e),[d,f]=u?.goes_at_range_deg??[null,null];return O("text",{...c,class:"reading"},n?.slides&&o==="middle"?h:null,`${Yi(s,d===null||f===null?null:[d,f])}°`,n?.slides&&o!=="middle"?O("tspan",{class:"reading-slides",x:l,dy:12},"slides"):null)}wayName(e){let t={0:"tail downhill",90:"left side",180:"nose downhill",270:"right side"}[e],[n,s]=this.at(e,Gi+14);if(Math.abs(n)<20)return O("text",{x:44,y:s+(s>0?10:0),class:"way-name"},t);let r={x:n<0?-231:231,"text-anchor":n<0?"start":"end"};return O("text",{class:"way-name",y:s+24},O("tspan",r,t),O("tspan",{...r,dy:12},"downhill"))}drawBack(){let e=[];for(let t=20;t<=this.high;t+=10){let n=this.radius(t),[s,r]=this.at(134,n);e.push(O("circle",{r:n,class:t%30===0?"ring strong":"ring"}),O("text",{x:s,y:r+3,class:"ring-name","text-anchor":"middle"},`${t}°`))}for(let t=0;t<360;t+=15){let[n,s]=this.at(t,Gi),[r,a]=this.at(t,Gi+(t%45===0?7:4));e.push(O("path",{d:`M${n} ${s}L${r} ${a}`,class:"tick"}))}e.push(O("circle",{r:Gi,class:"rim"})),this.back.replaceChildren(...e)}scale(){return Math.min(.42,(En-8)/(R.scene.wheelbase_mm/2+60))}drawPlan(){let e=R.scene;if(!e)return;let t=this.scale();this.parts.draw(e.parts,R.view.row);let n=[],s=[0,1,3,2].map(o=>e.tip_points_mm[o]).map(([o,l])=>[-l*t,-o*t]);n.push(O("path",{d:us(s),class:"tip-line"}));let[r,a]=[-e.cg_mm[1]*t,-e.cg_mm[0]*t];n.push(O("g",{transform:`translate(${r.toFixed(2)} ${a.toFixed(2)})`,class:"cg"},O("circle",{r:5,class:"cg-back"}),O("path",{d:"M0 0V-5A5 5 0 0 1 5 0ZM0 0V5A5 5 0 0 1 -5 0Z",class:"cg-dark"}),O("circle",{r:5,class:"cg-ring"}))),this.marks.replaceChildren(...n)}drawPuck(){let{tilt:e,heading:t}=R.view,n=R.answers;if(!n)return;let s=this.radius(e),[r,a]=this.at(t,s),[o,l]=this.at(t,Gi),c=sn(n,t)?.deg??ni(n.heading_deg,n.rigid_deg,t)??90;this.puck.classList.toggle("over",e>c),this.puck.replaceChildren(O("path",{d:`M0 0L${o.toFixed(1)} ${l.toFixed(1)}`,class:"puck-line"}),O("circle",{cx:r.toFixed(1),cy:a.toFixed(1),r:15,class:"puck-reach"}),O("circle",{cx:r.toFixed(1),cy:a.toFixed(1),r:6.5,class:"puck-dot"})),this.root.setAttribute("aria-valuenow",G(e).replace("−","-")),this.root.setAttribute("aria-valuetext",`tilted ${G(e)} degrees, turned ${G(t,0)}; ${yf(t)}`)}};function yf(i){let e=R.answers,t=sn(e,i);return t===null?`tips at ${G(ni(e.heading_deg,e.rigid_deg,i))}° if nothing gives`:`${t.slides?"slides":"tips"} at ${G(t.deg)}°`}var Rx=i=>`M${i} 0A${i} ${i} 0 1 0 ${-i} 0A${i} ${i} 0 1 0 ${i} 0Z`,Qs=([i,e])=>`${i.toFixed(2)} ${e.toFixed(2)}`,Px=i=>i*180/Math.PI,Ix=(i,e)=>Number(i.toFixed(e)),bf=()=>new oh(Se("polar"));var Lx=["front","rear","left","right","front left","front right","rear left","rear right","all"],Nx=["","front","rear","left","right"],Xr=(i,e="",t="")=>({at:i,raised:e,block_mm:t,loads:""});function wf(i){let e=[Xr("front"),Xr("rear"),Xr("left"),Xr("rear","front","90")],t="",n=_("tbody",{}),s=_("div",{id:"weigh-answer","aria-live":"polite"}),r=_("input",{id:"weigh-step",type:"number",min:.01,step:"any",value:1,required:!0}),a=_("input",{id:"weigh-locked",type:"checkbox",checked:!0}),o=()=>ge(n,...e.map((h,u)=>{let d=_("td",{},Mf(h)),f=p=>v=>{h[p]=v.target.value,ge(d,Mf(h))};return _("tr",{},d,_("td",{},_("select",{"aria-label":`Reading ${u+1}: what stands on the scale`,onchange:f("at")},...Lx.map(p=>_("option",{value:p,selected:p===h.at},p==="all"?"the whole truck":p.includes(" ")?`${p} wheel`:p==="front"||p==="rear"?`${p} axle`:`${p} side`)))),_("td",{},_("select",{"aria-label":`Reading ${u+1}: which end is raised`,onchange:f("raised")},...Nx.map(p=>_("option",{value:p,selected:p===h.raised},p?`${p} raised`:"level")))),_("td",{},_("input",{type:"number",min:1,step:"any",value:h.block_mm,"aria-label":`Reading ${u+1}: block height in mm`,onchange:f("block_mm")})),_("td",{},_("input",{type:"text",inputmode:"decimal",value:h.loads,placeholder:"1342; 1345","aria-label":`Reading ${u+1}: scale shows, in g, repeats apart by semicolons or spaces`,onchange:f("loads")})),_("td",{},_("button",{type:"button","aria-label":`Remove reading ${u+1}`,onclick:()=>{e.splice(u,1),o()}},"✕")))})),l=async h=>{try{Dx(s,await ve.weigh({step_g:Number(r.value),locked:a.checked,readings:e},h)),h&&Ne("The readings are kept beside the truck.")}catch(u){if(!(u instanceof Be))throw u;ge(s,_("p",{class:"text wrong"},u.sentences.slice(0,3).join(" ")))}};i.append(_("p",{class:"text"},"One kitchen scale will do: put it under one axle, the other on a block of the scale's height, and write down what it shows. Then raise one end on a block you have measured, and weigh the other end again: that gives the height."),_("div",{class:"parts-holder"},_("table",{class:"parts",id:"readings"},_("thead",{},_("tr",{},...["","On the scale","Stands","Block, mm","Scale shows, g",""].map(h=>_(h?"th":"td",h?{scope:"col"}:{},h)))),n)),_("div",{class:"bar"},_("button",{type:"button",id:"reading-add",onclick:()=>{e.push(Xr("front")),o()}},"Another reading"),_("label",{for:"weigh-step"},"Scale's step, g"),r,_("label",{class:"tick"},a,"suspension tied up"),_("button",{type:"button",class:"main",id:"weigh-go",onclick:()=>{l(!1)}},"Weigh"),_("button",{type:"button",id:"weigh-keep",onclick:()=>{l(!0)}},"Keep readings")),s),o();let c=async()=>{if(t!==R.bench.file){t=R.bench.file;try{let h=await ve.readings();h.form?(e=h.form.readings,r.value=String(h.form.step_g),a.checked=h.form.locked,o(),ge(s,_("p",{class:"text soft"},`Read back from ${h.file}.`))):ge(s,h.there?_("p",{class:"text"},`${h.file} says more than this form shows, and is left as it is: crossfall weigh-in ${h.file} reads it. Keeping readings here puts it aside as a copy first.`):null)}catch(h){if(!(h instanceof Be))throw h;t=""}}};an(i,()=>{c()}),c()}function Mf(i){let e=["left","right"].includes(i.at)||["left","right"].includes(i.raised),[t,n]=e?["left","right"]:["rear","front"],s=o=>i.raised===o?16:0,r=o=>i.at===o||i.at==="all"||i.at.startsWith(`${o} `)||i.at.endsWith(` ${o}`),a=(o,l)=>[...s(l)?[O("rect",{class:"sk-block",x:o-9,y:40-s(l),width:18,height:s(l)})]:[],O("rect",{class:r(l)?"sk-scale":"sk-block",x:o-11,y:40,width:22,height:5}),O("circle",{class:"sk-line",cx:o,cy:32-s(l),r:8})];return O("svg",{class:"sketch",viewBox:"0 -8 92 56",role:"img","aria-label":`${i.at} on the scale${i.raised?`, ${i.raised} raised`:""}`},...a(20,t),...a(72,n),O("path",{class:"sk-body",d:`M14 ${24-s(t)}L78 ${24-s(n)}L74 ${14-s(n)}L18 ${12-s(t)}Z`}))}function Dx(i,e){let t=R.answers.numbers,n=[t.mass_g,t.cg_mm[0],t.cg_mm[1],t.cg_mm[2]];ge(i,_("table",{id:"weighed"},_("caption",{},"What the scale says"),_("thead",{},_("tr",{},...["","found","95 % between","in the file","difference"].map(s=>_(s?"th":"td",s?{scope:"col",class:"n"}:{},s)))),_("tbody",{},...e.found.map((s,r)=>_("tr",{},_("th",{scope:"row"},`${s.what}, ${s.unit}`),_("td",{class:"n"},_("b",{},s.value===null?"not measured":G(s.value))),_("td",{class:"n"},s.value===null?"–":`${G(s.low)} to ${G(s.high)}`),_("td",{class:"n"},G(n[r])),_("td",{class:"n"},s.value===null?"–":St(s.value-n[r])))))),...[...e.doubts,...e.warnings].map(s=>_("p",{class:"text wrong"},s)),e.next.length?_("p",{class:"text soft"},`What would help most now: ${e.next.join("; ")}.`):null)}function Sf(i){let e=_("div",{id:"board"});i.append(_("p",{class:"text"},"Lay a strip under the downhill tyres so that they do not slide, raise the board slowly, and read the angle at which the last uphill tyre leaves it."),e,_("p",{class:"text soft"},"Have a hand ready to catch the truck, take loose weights off first, and mind the pack. Scale models only: nothing here is a basis for a vehicle that carries people."));let t=s=>{ve.board(s).then(r=>n(r),r=>{if(!(r instanceof Be))throw r;r.status!==409&&r.status!==0&&Ne(r.message,"wrong")})},n=s=>ge(e,_("table",{},_("caption",{},"Tilt-board card"),_("thead",{},_("tr",{},...["","predicted","measured before","measured now"].map(r=>_(r?"th":"td",r?{scope:"col",class:"n"}:{},r)))),_("tbody",{},...s.card.map(r=>{let a=s.readings.filter(l=>l.heading_deg===r.heading_deg),o=_("input",{type:"number",min:1,max:89,step:.1,id:`board-${r.heading_deg}`,"aria-label":`Measured angle, ${r.name}`});return _("tr",{},_("th",{scope:"row"},r.name),_("td",{class:"n"},r.high_deg-r.low_deg>.15?`${G(r.low_deg)} to ${G(r.high_deg)}°`:`${G(r.deg)}°`,_("small",{class:"soft"},` ± ${G(2*r.u_deg)}`)),_("td",{class:"n"},...a.length?a.map(l=>_("span",{class:l.agrees?"":"wrong"},`${G(l.measured_deg)}° ${l.agrees?"agrees":"does not"} `,_("button",{type:"button",class:"small",title:"Take this reading out","aria-label":`Take out ${G(l.measured_deg)}°, ${r.name}`,onclick:()=>t({remove:l.number,angles_deg:l.angles_deg})},"✕"))):["–"]),_("td",{class:"n"},o," ",_("button",{type:"button","aria-label":`Note ${r.name}`,onclick:()=>{o.value!==""&&o.reportValidity()&&t({heading_deg:r.heading_deg,angle_deg:Number(o.value)})}},"Note")))}))),s.agrees===null?null:_("p",{class:"text"},_("b",{},s.agrees?"Prediction and board agree.":"Prediction and board do not agree.")),...s.causes.map(r=>_("p",{class:"text"},r)),_("p",{class:"text soft"},`Readings are kept in ${s.file}.`));an(i,()=>t(),900),ge(e,_("p",{class:"text soft"},"Working out what the board should show…")),t()}var Tf=.016666666666666666,Ux=2.2,Fx=3e4,Ox=150,kx=.05,Bx=.02;function Ef(i,e,t,n,s,r){let a=i.map(([C,w,E])=>[C-e[0],w-e[1],E]),o=C=>Math.max(...a.map(w=>w[C]))-Math.min(...a.map(w=>w[C])),l=(o(0)**2+o(1)**2)/12,[c,h]=r?zx(i,e,n,l):[e,0],[u,d,f,p]=[e[0],e[1],0,h],[v,m]=r?[p*(e[1]-c[1]),-p*(e[0]-c[0])]:[kx,0],g=[{along:0,up:0,turned:0}],M=0;for(let C=1;C*25e-5<Ux&&M<.15;C++){let[w,E,S]=[n[0],n[1],0],[x,T]=[Math.cos(f),Math.sin(f)];for(let[B,U,N]of a){let[V,q]=[B*x+U*T,-B*T+U*x];for(let{n:I,aside:X,c:J}of t){let $=J-X*N-I[0]*(u+V)-I[1]*(d+q);if($<=0)continue;let[se,L]=[v+p*q,m-p*V],Y=Math.max(0,Fx*$-Ox*(se*I[0]+L*I[1])),ee=se*I[1]-L*I[0],le=-s*Y*Math.max(-1,Math.min(1,ee/Bx)),[Ee,j]=[Y*I[0]+le*I[1],Y*I[1]-le*I[0]];w+=Ee,E+=j,S+=q*Ee-V*j}}v+=w*25e-5,m+=E*25e-5,p+=S/l*25e-5,u+=v*25e-5,d+=m*25e-5,f+=p*25e-5,M=Math.hypot(v,m)+Math.abs(p)*Math.sqrt(l)<.03&&C*25e-5>.2?M+25e-5:0,Math.floor(C*25e-5/Tf)>Math.floor((C-1)*25e-5/Tf)&&g.push({along:u-e[0],up:d-e[1],turned:f})}return g.push(Vx({along:u-e[0],up:d-e[1],turned:f},a,e,t)),g}function zx(i,e,t,n){let s=Math.min(...i.map(p=>p[1])),[r,a]=i.filter(p=>p[1]<s+.004).reduce((p,v)=>v[0]>p[0]?v:p),o=[r,a],[l,c]=[e[0]-o[0],e[1]-o[1]],h=Math.hypot(...t),u=-(l*t[0]+c*t[1])/h,d=Math.hypot(l,c),f=l*t[1]-c*t[0]>0;return[o,.4+Math.sqrt(2*h*(f?d-u:0)/(n+d**2))*1.1]}function Vx(i,e,t,n){let[s,r]=[Math.cos(i.turned),Math.sin(i.turned)],a={...i};for(let o=0;o<20;o++)for(let{n:l,aside:c,c:h}of n){let u=Math.max(...e.map(([d,f,p])=>h-c*p-l[0]*(t[0]+a.along+d*s+f*r)-l[1]*(t[1]+a.up-d*r+f*s)));u<=0||(a.along+=l[0]*u,a.up+=l[1]*u)}return a}var Gx=60,Af=9.80665,Hx=.6;function Rf(i,e,t,{hinge:n,board:s}){let[r,a]=[Cf(e.heading_deg),Cf(e.theta_deg)],o=t==="away"?new k(-Math.cos(r),Math.sin(r),0):Wx(t),l=new k(-o.y,o.x,0),c=new k(...e.cg_mm??R.scene.cg_mm),h=C=>C.x*Math.cos(r)-C.y*Math.sin(r),u=$x(i,o,l),d=Math.min(0,...u.map(C=>C[1])),f=h(o),p=Math.hypot(f*Math.sin(a),Math.cos(a)),v={n:[f*Math.sin(a)/p,Math.cos(a)/p],aside:h(l)*Math.sin(a)/p,c:-((n*Math.sin(a)+s)/1e3)/p},m=t==="away"?Math.min(R.answers.grip_range.likely,Math.tan(a)-.1):Hx,g=[-Af*Math.sin(a)*f,-Af*Math.cos(a)],M=Ef(u,If(c,o),[{n:[0,1],aside:0,c:d},v],g,Math.max(.05,m),t!=="away");return M[M.length-1].up-=d,{frames:M,along:o,cg:c}}function Pf(i,{frames:e,along:t,cg:n},s){let r=Math.min(e.length-1,s*60),[a,o]=[e[Math.floor(r)],e[Math.ceil(r)]],l=c=>a[c]+(o[c]-a[c])*(r%1);i.quaternion.copy(new Mn().setFromAxisAngle(new k(0,0,1).cross(t),l("turned"))),i.position.copy(n).addScaledVector(t,l("along")*1e3).add(new k(0,0,l("up")*1e3)),i.position.sub(n.clone().applyQuaternion(i.quaternion))}function Wx(i){let e=R.scene.tip_points_mm,t={rear:[3,2],left:[2,0],front:[0,1],right:[1,3]},[n,s]=(t[i]??[2,0]).map(a=>e[a]),r=new k(-(s[1]-n[1]),s[0]-n[0],0).normalize();return r.x*(n[0]+s[0])+r.y*(n[1]+s[1])<0?r.negate():r}var If=(i,e)=>[i.dot(e)/1e3,i.z/1e3];function $x(i,e,t){let n=new Map;for(let s of i){let r=Math.floor(s.dot(t)/Gx),a=n.get(r);a?a.push(s):n.set(r,[s])}return[...n.values()].flatMap(s=>{let r=s.map(o=>o.dot(t)/1e3),a=[...new Set([Math.min(...r),Math.max(...r)])];return Qc(s.map(o=>If(o,e))).flatMap(([o,l])=>a.map(c=>[o,l,c]))})}var Cf=i=>i*Math.PI/180;var dl=class{frames=0;moment={theta_deg:0,poses:[],load_g:[0,0,0,0],cg_mm:null,heading_deg:0};views={side:new Sn("side"),rear:new Sn("rear")};table=O("g");truck=O("g");marks=O("g");angle=O("text",{class:"reading",x:-262,y:-12});over=null;constructor(e,t){t.hidden=!0,this.table.append(O("path",{class:"ground",d:"M-300 0H300"}),this.truck,this.marks),e.append(O("svg",{class:"flat view",viewBox:"-320 -330 640 400",role:"img","aria-label":"The truck on the table, as a flat view"},O("path",{class:"wedge",d:"M-300 0H300"}),this.table,this.angle),_("p",{class:"flat-note"},"This browser offers no WebGL, so the truck is drawn flat: from behind where it stands across the slope, from its right side else.")),De(["shown","pick"],()=>this.render())}show(e,t=null){this.moment=e,this.over=t,this.render()}repaint(){}render(){let e=R.scene;if(!e)return;let{theta_deg:t,heading_deg:n}=this.moment,s=n*Math.PI/180,r=Math.abs(Math.sin(s))>.7?"rear":"side",a=(r==="rear"?Math.sin(s):Math.cos(s))>=0?-1:1;this.table.setAttribute("transform",`rotate(${(a*t).toFixed(2)} ${a*300} 0)`);let o=this.views[r];o.draw(e.parts,R.view.row);let l=e.tip_points_mm.map(([p,v])=>en[r]([p,v,0])[0]),c=a<0?Math.min(...l):Math.max(...l);this.truck.setAttribute("transform",this.over===null?"":this.over==="away"?`translate(${a*90} 0)`:`rotate(${a*86} ${c} 0) translate(0 -14)`),this.truck.replaceChildren(o.root);let[h,u]=en[r](this.moment.cg_mm??e.cg_mm),d=this.moment.load_g,f=r==="rear"?[[0,2],[1,3]]:[[2,3],[0,1]];this.marks.replaceChildren(O("g",{transform:`translate(${h} ${u})`},O("circle",{r:8,class:"cg-back"}),O("path",{d:"M0 0V-8A8 8 0 0 1 8 0ZM0 0V8A8 8 0 0 1 -8 0Z",class:"cg-dark"}),O("circle",{r:8,class:"cg-ring"})),...f.map(([p,v],m)=>O("text",{class:"reading",x:(m?Math.max:Math.min)(...l),y:18,"text-anchor":"middle"},`${G(Math.max(0,(d[p]??0)+(d[v]??0)),0)} g`))),this.marks.setAttribute("visibility",this.over===null?"visible":"hidden"),this.angle.textContent=`${G(t)}°`,this.frames+=1}};var Hi={ahead:{axes:[0],words:"ahead, back"},left:{axes:[1],words:"left, right"},up:{axes:[2],words:"up, down"},side:{axes:[0,2],words:"side plane"},rear:{axes:[1,2],words:"rear plane"},floor:{axes:[0,1],words:"floor plane"}},Xx=["ahead","left","up"],fl=[["ahead","back"],["left","right"],["up","down"]],Lf=52,ch=.25,pl=class{constructor(e,t,n,s){this.holder=e;this.drawn=t;this.changed=n;this.back=s;this.grip=O("g",{role:"slider",tabindex:-1,id:"grip-3d",class:"grip-3d","aria-valuenow":0},O("circle",{r:15,class:"handle-reach"}),O("circle",{r:6,class:"handle"})),this.root=O("svg",{class:"handles",role:"group","aria-label":"The picked part on the table"},...this.arms.map(r=>r.root),this.grip),e.append(this.root,this.readout),this.grip.addEventListener("pointerdown",r=>this.take(r,this.along)),this.grip.addEventListener("keydown",r=>this.nudge(r)),this.root.addEventListener("pointermove",r=>this.drag(r));for(let r of["pointerup","pointercancel"])this.root.addEventListener(r,()=>this.drop());De("bench",()=>{this.held||this.say(null)}),De("shown",()=>{this.held&&this.read(this.held)})}holder;drawn;changed;back;along="side";root;grip;arms=Xx.map(e=>this.arm(e));readout=_("div",{class:"stage-readout","aria-hidden":"true",hidden:!0});held=null;readTimer=0;movable(){if($t)return null;let e=R.bench?.rows.find(n=>n.row===R.view.row),t=R.scene?.parts.find(n=>n.row===R.view.row);return e&&t&&e.at_mm&&e.here?{part:t,row:e}:null}focus(){this.movable()&&this.grip.focus()}next(){let e=Object.keys(Hi);this.choose(e[(e.indexOf(this.along)+1)%e.length])}choose(e){this.along=e,this.changed()}arm(e){let[t,n,s]=[O("path"),O("circle",{r:7}),O("text",{},e)],r=O("g",{class:"arm","aria-hidden":"true"},t,n,s);return r.addEventListener("pointerdown",a=>this.take(a,e)),{root:r,line:t,tip:n,name:s}}place(e){let t=e?null:this.movable();if(this.root.toggleAttribute("hidden",!t),!t)return;let{part:n,row:s}=t,r=this.drawn(n.cg_mm,n.carrier),a=this.pixels(n),o=Math.max(...a.map(v=>Math.hypot(...v)));this.grip.setAttribute("transform",`translate(${r[0].toFixed(1)} ${r[1].toFixed(1)})`),this.arms.forEach((v,m)=>{let[g,M]=a[m],C=Math.hypot(g,M);v.root.toggleAttribute("hidden",C<ch*o);let[w,E]=[r[0]+g/C*Lf,r[1]+M/C*Lf];v.line.setAttribute("d",`M${r[0].toFixed(1)} ${r[1].toFixed(1)}L${w.toFixed(1)} ${E.toFixed(1)}`);for(let[S,x,T]of[[v.tip,"cx","cy"],[v.name,"x","y"]])S.setAttribute(x,w.toFixed(1)),S.setAttribute(T,(E-(S===v.name?10:0)).toFixed(1));v.root.classList.toggle("chosen",Hi[this.along].axes.includes(m))});let[l,c,h]=s.at_mm,{axes:u,words:d}=Hi[this.along],f=u.length===1?"arrow keys move it a millimetre":`left and right move it ${fl[u[0]].join(" or ")}, up and down ${fl[u[1]].join(" or ")}, a millimetre each`;this.grip.setAttribute("aria-label",`${s.name} in three dimensions, ${d}: ${f}. M changes the way, Escape goes back to the table.`),this.grip.setAttribute("aria-valuetext",`${G(l)} ahead, ${G(c)} left, ${G(h)} up`)}pixels(e){let t=this.drawn(e.cg_mm,e.carrier);return[0,1,2].map(n=>{let s=[...e.cg_mm];s[n]+=20;let[r,a]=this.drawn(s,e.carrier);return[(r-t[0])/20,(a-t[1])/20]})}take(e,t=this.along){let n=this.movable();return n?(e.preventDefault(),e.stopPropagation(),this.root.setPointerCapture(e.pointerId),t!==this.along&&this.choose(t),this.held={...n,along:t,from:[e.clientX,e.clientY],moved:[0,0,0],pixels:this.pixels(n.part)},this.read(this.held),!0):!1}drag(e){let t=this.held;if(!t)return;let n=qx(t,[e.clientX-t.from[0],e.clientY-t.from[1]]);n.every((s,r)=>s===t.moved[r])||(t.moved=n,wi(lh(t.row,t.part,n)),this.read(t))}drop(){let e=this.held;e&&(this.held=null,this.say(null),!e.moved.every(t=>t===0)&&Xt(lh(e.row,e.part,e.moved),`moved ${e.row.name}`).then(t=>{t||Cn()}))}nudge(e){if(e.key==="Escape"||e.key==="Enter")return e.preventDefault(),this.back();if(e.key==="m")return this.next();let t=this.movable(),{axes:n}=Hi[this.along],s=e.shiftKey?10:1,[r,a]=[n[0],n[1]??n[0]],o=r===1?-1:1,c={ArrowRight:[r,o*s],ArrowLeft:[r,-o*s],ArrowUp:[a,a===1&&n.length===1?-s:s],ArrowDown:[a,a===1&&n.length===1?s:-s]}[e.key];if(!c||!t)return;e.preventDefault();let h=[0,0,0];h[c[0]]=c[1],Xt(lh(t.row,t.part,h),`moved ${t.row.name}`).then(u=>{u&&this.read({...t,along:this.along,from:[0,0],moved:h,pixels:[]},1600)})}read(e,t=0){let{moved:n,row:s}=e,r=Object.values(xt).find(h=>h.heading===R.view.heading)?.short??`Turned ${G(R.view.heading,0)}°`,[a,o]=[sn(R.answers,R.view.heading),sn(R.bench.answers,R.view.heading)],l=a&&o&&this.held?` (${St(a.deg-o.deg)}°)`:"",c=Hi[e.along].axes.map(h=>`${n[h]<0?fl[h][1]:fl[h][0]} ${G(Math.abs(n[h]),0)} mm`);this.say([_("b",{},s.name),c.join(", "),a?`${r} ${a.slides?"slides":"tips"} ${R.answers.exact?"":"≈ "}${G(a.deg)}°${l}`:""],e,t)}say(e,t=null,n=0){if(clearTimeout(this.readTimer),this.readout.hidden=e===null,e===null||!t)return;ge(this.readout,...e.map(f=>_("div",{},f)));let s=R.scene.parts.find(f=>f.row===t.row.row)??t.part,[r,a]=this.drawn(s.cg_mm,s.carrier),[o,l]=[this.holder.clientWidth,this.holder.clientHeight],{offsetWidth:c,offsetHeight:h}=this.readout,[u,d]=[r+26+c>o?r-26-c:r+26,Math.min(l-h-4,Math.max(4,a+18))];this.readout.style.transform=`translate(${Math.max(4,u).toFixed(0)}px, ${d.toFixed(0)}px)`,n&&(this.readTimer=window.setTimeout(()=>this.say(null),n))}};function qx(i,[e,t]){let n=[0,0,0],s=Math.max(...i.pixels.map(u=>Math.hypot(...u))),r=Hi[i.along].axes.filter(u=>Math.hypot(...i.pixels[u])>=ch*s),[a,o]=r;if(a===void 0)return n;let[l,c]=[i.pixels[a],o===void 0?null:i.pixels[o]],h=c?l[0]*c[1]-l[1]*c[0]:0;return c&&o!==void 0&&Math.abs(h)>ch**2*s**2?(n[a]=Math.round((e*c[1]-t*c[0])/h),n[o]=Math.round((l[0]*t-l[1]*e)/h)):n[a]=Math.round((e*l[0]+t*l[1])/(l[0]**2+l[1]**2)),n}function lh(i,e,t){return[0,1,2].filter(n=>t[n]!==0).map(n=>({do:"set",part:i.name,key:`at_mm.${"xyz"[n]}`,value:Number((i.at_mm[n]+(n===1&&e.mirrored?-t[n]:t[n])).toFixed(3))}))}var er={corner:{words:"Corner",round:null,up:20},side:{words:"Side",round:-90,up:0},rear:{words:"Rear",round:180,up:0},front:{words:"Front",round:0,up:0},top:{words:"Top",round:180,up:88}};function Nf(i,e){let t=Object.keys(er).map((l,c)=>_("button",{type:"button",id:`look-${l}`,"data-from":l,title:`Look from there: key ${c+1} on the table`,onclick:()=>i.look(l)},er[l].words)),n=_("button",{type:"button",id:"see-through",title:"Key t on the table",onclick:()=>i.seeThrough(!i.glass)},"See through"),s=_("button",{type:"button",id:"move-along",class:"moves",title:"Key m at the part",onclick:()=>e.next()}),r=_("div",{class:"looks",role:"toolbar","aria-label":"How to look at the table, and which way the picked part moves"},...t,n,s);Nt(r);let a=_("div",{class:"stage-bar"},r),o=()=>{t.forEach(l=>l.setAttribute("aria-pressed",String(l.dataset.from===i.from))),n.setAttribute("aria-pressed",String(i.glass)),s.hidden=e.movable()===null,s.textContent=`Moves: ${Hi[e.along].words}`};return De(["pick","bench"],o),o(),{follow:o,root:a}}var bt=250,mn=210,tn=12,hh=300,Df=-62,uh=class{constructor(e,t){this.holder=e;this.canvas=t;this.slow=vi(),this.renderer=new Ys({canvas:t,antialias:!this.slow,powerPreference:"low-power"}),this.camera.up.set(0,0,1),this.world.add(this.table),this.turn.position.set(bt,0,0),this.table.position.set(-bt,0,0),this.table.add(this.turn),this.turn.add(this.fall,this.tipLines),this.furnish(),this.plumb=Tn([0,0,0,0,0,1],this.paints.line("over")),this.world.add(this.plumb),this.mark=O("svg",{class:"cg-mark",viewBox:"-10 -10 20 20","aria-hidden":"true"},O("circle",{r:8,class:"cg-back"}),O("path",{d:"M0 0V-8A8 8 0 0 1 8 0ZM0 0V8A8 8 0 0 1 -8 0Z",class:"cg-dark"}),O("circle",{r:8,class:"cg-ring"})),this.angle=_("div",{class:"stage-angle","aria-hidden":"true"});let n=s=>_("div",{class:`stage-tag ${s}`,"aria-hidden":"true"},s==="cg"?"CG":s);this.tags={cg:n("cg"),pack:n("pack")},e.append(this.mark,this.tags.cg,this.tags.pack,this.angle,Yx());for(let s of th){let r=_("b"),a=_("div",{class:"stage-load","aria-hidden":"true",title:`load on the ${s} wheel`},_("span",{},`${s} `),r);this.labels.push({root:a,grams:r}),e.append(a)}this.handles=new pl(e,(s,r)=>this.drawnAt(s,r),()=>{this.bar.follow(),this.draw()},()=>this.canvas.focus()),this.bar=Nf(this,this.handles),e.before(this.bar.root),this.repaint(),this.listen(),new ResizeObserver(()=>this.resize()).observe(e),this.resize()}holder;canvas;world=new ts;camera=new ki(-1,1,1,-1,-4e3,4e3);renderer;paints=new Ks;figure=new ds(this.paints);table=new kt;turn=new kt;fall=this.figure.root;bodies=this.figure.bodies;columns=[];tipLines=new kt;plumb;labels=[];mark;tags;angle;handles;bar;azimuth=Df;elevation=er.corner.up;zoom=1;from="corner";glass=!1;wanted=!1;slow;fine=!0;restTimer=0;falls=null;fallen=0;fallTimer=0;size=new et(1,1);frames=0;moment={theta_deg:0,poses:[],load_g:[0,0,0,0],cg_mm:null,heading_deg:0};listen(){De("shown",ps(()=>this.build(),()=>this.slow?2e3:50)),De("pick",()=>this.build());let e=null;this.canvas.addEventListener("pointerdown",t=>{this.partsAt(t)[0]?.row===R.view.row&&this.handles.take(t)||(e={x:t.clientX,y:t.clientY,far:!1},this.canvas.setPointerCapture(t.pointerId))}),this.canvas.addEventListener("pointermove",t=>{if(!e)return;let[n,s]=[t.clientX-e.x,t.clientY-e.y];!e.far&&Math.hypot(n,s)<4||(e={x:t.clientX,y:t.clientY,far:!0},this.orbit(-n*.4,s*.4))}),this.canvas.addEventListener("pointerup",t=>{e&&!e.far&&this.pickAt(t),e=null}),this.canvas.addEventListener("pointercancel",()=>e=null),this.canvas.addEventListener("wheel",t=>{t.preventDefault(),this.enlarge(Math.exp(-t.deltaY*.001))},{passive:!1}),this.canvas.addEventListener("keydown",t=>{let n=t.shiftKey?20:5,s={ArrowLeft:()=>this.orbit(-n,0),ArrowRight:()=>this.orbit(n,0),ArrowUp:()=>this.orbit(0,n),ArrowDown:()=>this.orbit(0,-n),"+":()=>this.enlarge(1.15),"=":()=>this.enlarge(1.15),"-":()=>this.enlarge(1/1.15),Home:()=>{this.zoom=1,this.look("corner")},t:()=>this.seeThrough(!this.glass),Enter:()=>this.handles.focus(),Escape:()=>ht({row:null})};Object.keys(er).forEach((a,o)=>{s[String(o+1)]=()=>this.look(a)});let r=s[t.key];r&&(t.preventDefault(),r())}),this.canvas.addEventListener("webglcontextlost",t=>t.preventDefault()),this.canvas.addEventListener("webglcontextrestored",()=>this.draw())}orbit(e,t){this.azimuth+=e,this.elevation=Math.max(-5,Math.min(88,this.elevation+t)),this.from=null,this.bar.follow(),this.draw()}look(e){this.from=e,this.bar.follow(),this.draw()}seeThrough(e){this.glass=e,this.bar.follow(),this.build()}enlarge(e){this.zoom=Math.max(.5,Math.min(4,this.zoom*e)),this.draw()}repaint(){this.paints.repaint(),this.world.background=this.paints.ink.paper,R.scene&&this.build(),this.draw()}furnish(){let e=wn({kind:"box",size_mm:[2*bt,2*mn,tn]}),t=(l,c,h)=>l.map((u,d)=>d%3===0?u+c:d%3===2?u+h:u),n=new vt(Jn(t(e.triangles,bt,-tn/2)),this.paints.fill("board",2)),s=[];for(let l=50;l<2*bt;l+=50)s.push(l,-mn,.4,l,mn,.4);for(let l=-200;l<=200;l+=50)s.push(0,l,.4,2*bt,l,.4);this.table.add(n,Tn(t(e.lines,bt,-tn/2),this.paints.line("ink")),Tn(s,this.paints.line("faint")));let r=[],a=(l,c)=>[l*Math.cos(Qn(c))-bt,-mn,l*Math.sin(Qn(c))-tn];for(let l=0;l<90;l+=2)r.push(...a(150,l),...a(150,l+2));for(let l=0;l<=90;l+=5)r.push(...a(150,l),...a(l%10?155:162,l));let o=[];for(let l of[-mn,mn])o.push(-bt-hh,l,-tn,bt,l,-tn);o.push(-bt-hh,-mn,-tn,-bt-hh,mn,-tn),o.push(-bt,-mn,-tn,-bt,mn,-tn,bt,-mn,-tn,bt,mn,-tn),this.world.add(Tn(r,this.paints.line("ink")),Tn(o,this.paints.line("faint")));for(let l=0;l<4;l++){let c=new vt(Jn(t(wn({kind:"box",size_mm:[9,9,1]}).triangles,0,.5)),this.paints.fill("load"));this.columns.push(c),this.turn.add(c)}}build(){let e=R.scene;if(!e)return;this.figure.dress(e,{picked:R.view.row,pack:ir(),glass:this.glass,before:R.bench.before?.scene??null}),Gr(this.tipLines);let t=e.tip_points_mm,n=[0,1,3,2];n.forEach((s,r)=>this.tipLines.add(this.strip(t[s],t[n[(r+1)%4]]))),this.draw()}strip(e,t){let[n,s]=[t[0]-e[0],t[1]-e[1]],r=Math.hypot(n,s)||1,[a,o]=[-s/r*1.3,n/r*1.3],l=(f,p)=>[f[0]+p*a,f[1]+p*o,.8],[c,h,u,d]=[l(e,1),l(e,-1),l(t,-1),l(t,1)];return new vt(Jn([...c,...h,...u,...c,...u,...d]),this.paints.fill("over"))}partsAt(e){let t=this.canvas.getBoundingClientRect(),n=new et((e.clientX-t.left)/t.width*2-1,1-(e.clientY-t.top)/t.height*2),s=new Cr;s.setFromCamera(n,this.camera);let a=s.intersectObjects(this.bodies,!0).filter(o=>o.object instanceof vt).map(o=>o.object.userData.owner[o.faceIndex??0]).filter(o=>o.row>=0);return a.filter((o,l)=>a.findIndex(c=>c.row===o.row)===l)}pickAt(e){let t=this.partsAt(e).map(s=>s.row),n=this.glass?t.indexOf(R.view.row??-1):-1;ht({row:t[(n+1)%Math.max(1,t.length)]??null})}show(e,t=null){this.moment=e,this.table.rotation.y=-Qn(e.theta_deg),this.turn.rotation.z=Qn(e.heading_deg),this.figure.pose(e.poses),this.topple(t),this.draw()}topple(e){if(cancelAnimationFrame(this.fallTimer),e===null||!R.scene){this.falls=null,this.fallen=0,this.fall.position.set(0,0,0),this.fall.quaternion.identity();return}let t=`${e} ${this.moment.theta_deg.toFixed(2)} ${this.moment.heading_deg} ${R.bench.truck} ${JSON.stringify(this.moment.poses[0]??[])}`;this.falls?.key!==t&&(this.falls={key:t,...Rf(this.figure.corners(),this.moment,e,{hinge:bt,board:tn})});let n=(this.falls.frames.length-1)/60;jr()&&(this.fallen=n);let s=performance.now()-this.fallen*1e3,r=a=>{this.fallen=Math.min(n,Math.max(0,(a-s)/1e3)),Pf(this.fall,this.falls,this.fallen),this.draw(),this.fallen<n&&(this.fallTimer=requestAnimationFrame(r))};r(performance.now())}drawnAt(e,t){let s=(this.bodies[["chassis","front axle","rear axle",...th].indexOf(t)]??this.bodies[0]).localToWorld(new k(...e)).project(this.camera);return[(s.x+1)/2*this.size.x,(1-s.y)/2*this.size.y]}resize(){let{clientWidth:e,clientHeight:t}=this.holder;e<2||t<2||(this.size.set(e,t),this.sharpen(this.fine),this.draw())}sharpen(e){this.fine=e,this.renderer.setPixelRatio(this.slow?e?2:1:Math.min(devicePixelRatio,2)),this.renderer.setSize(this.size.x,this.size.y,!1)}draw(){this.slow&&(this.fine&&this.sharpen(!1),clearTimeout(this.restTimer),this.restTimer=window.setTimeout(()=>{this.sharpen(!0),this.render()},350)),!this.wanted&&(this.wanted=!0,requestAnimationFrame(()=>{this.wanted=!1,this.render()}))}render(){let{x:e,y:t}=this.size,n=Qn(this.moment.theta_deg),s=new k(-bt+bt*Math.cos(n)-55*Math.sin(n),0,bt*Math.sin(n)+55*Math.cos(n));this.falls&&(this.world.updateMatrixWorld(),s.lerp(this.fall.localToWorld(this.falls.cg.clone()),.75));let r=(e/t>1?285:285*Math.min(1.35,t/e))/this.zoom;if(this.camera.left=-r*e/t,this.camera.right=r*e/t,this.camera.top=r,this.camera.bottom=-r,this.from){let{round:l,up:c}=er[this.from];this.azimuth=l===null?Df:this.moment.heading_deg+l,this.elevation=c}let[a,o]=[Qn(this.azimuth),Qn(this.elevation)];this.camera.position.copy(s).add(new k(Math.cos(a)*Math.cos(o),Math.sin(a)*Math.cos(o),Math.sin(o)).multiplyScalar(1e3)),this.camera.lookAt(s),this.camera.updateProjectionMatrix(),this.placeLoads(),this.world.updateMatrixWorld(),this.placeMarks(),this.renderer.render(this.world,this.camera),this.frames+=1}placeLoads(){let e=R.scene;e&&e.tip_points_mm.forEach((t,n)=>{let s=Math.max(0,this.moment.load_g[n]??0),r=e.axles[n<2?0:1],a=(n%2===0?1:-1)*(r.track_mm/2+r.width_mm/2+16);this.columns[n].position.set(t[0],a,0),this.columns[n].scale.z=Math.max(.5,s/12),this.columns[n].visible=this.falls===null})}placeMarks(){let e=this.moment.cg_mm??R.scene?.cg_mm??[0,0,0],t=this.fall.localToWorld(new k(...e));this.put(this.mark,t,0,0),this.put(this.tags.cg,t,20,0);let n=R.scene?.parts.find(o=>o.row>=0&&o.row===ir());if(this.tags.pack.hidden=!n,n){let[o,l]=this.drawnAt(n.cg_mm,n.carrier);this.move(this.tags.pack,o,l-15)}let s=this.plumbFoot(t),r=this.plumb.geometry.getAttribute("position");r.setXYZ(0,t.x,t.y,t.z),r.setXYZ(1,s.x,s.y,s.z),r.needsUpdate=!0,this.plumb.visible=this.falls===null,this.columns.forEach((o,l)=>{let{root:c,grams:h}=this.labels[l],u=Math.max(0,this.moment.load_g[l]??0);h.textContent=`${G(u,0)} g`,c.classList.toggle("light",u<1),c.hidden=!o.visible,this.put(c,o.localToWorld(new k(0,0,0)),0,10)}),this.handles.place(this.falls!==null),this.angle.textContent=`${G(this.moment.theta_deg,1)}°`;let a=Qn(this.moment.theta_deg/2);this.put(this.angle,new k(110*Math.cos(a)-bt,-mn,110*Math.sin(a)-tn),0,0)}plumbFoot(e){let t=this.table.worldToLocal(e.clone()),n=Qn(this.moment.theta_deg);return t.x-=t.z*Math.tan(Math.min(n,Qn(85))),t.z=1,this.table.localToWorld(t)}put(e,t,n,s){let r=t.clone().project(this.camera);this.move(e,(r.x+1)/2*this.size.x+n,(1-r.y)/2*this.size.y+s)}move(e,t,n){e.style.transform=`translate(${t.toFixed(1)}px, ${n.toFixed(1)}px) translate(-50%, -50%)`}};function Yx(){return _("ul",{class:"stage-key","aria-label":"Colours by what a part rides on"},...Object.entries(Yd).map(([i,e])=>_("li",{},O("svg",{viewBox:"0 0 10 10","aria-hidden":"true"},O("rect",{class:`part ${i}`,width:10,height:10})),e)))}function Uf(i,e){if(i.length===0)return null;let t=0;for(;t<i.length-2&&i[t+1].theta_deg<e;)t++;let[n,s]=[i[t],i[Math.min(t+1,i.length-1)]],r=s.theta_deg-n.theta_deg,a=r>0?Math.max(0,Math.min(1,(e-n.theta_deg)/r)):0,o=(l,c)=>l.map((h,u)=>h+((c[u]??h)-h)*a);return{theta_deg:e,poses:n.poses.map((l,c)=>o(l,s.poses[c])),load_g:o(n.load_g,s.load_g),cg_mm:o(n.cg_mm,s.cg_mm)}}var Qn=i=>i*Math.PI/180;function Ff(){let[i,e]=[Se("stage"),Se("stage-canvas")];return _i()?new dl(i,e):new uh(i,e)}var Zx=`No link part of this file says what it is, so roll centre and lean are the file's own numbers: give its links link = "lower", "upper", "track bar" or "wishbone", and what they amount to stands here.`,dh=12,Jx=["front","rear"],Kx=[["roll centre, mm above ground",1,i=>i.roll_centre_mm],["anti-dive, anti-squat, %",0,i=>i.anti_dive_percent??i.anti_squat_percent??null],["instant centre, mm ahead",0,i=>i.instant_centre_mm[0]],["instant centre, mm above ground",0,i=>i.instant_centre_mm[1]],["roll steer, deg per deg",3,i=>i.roll_steer_deg_per_deg],["castor, deg per mm of bump",3,i=>i.castor_deg_per_mm],["forwards, mm per mm of bump",3,i=>i.wheelbase_mm_per_mm],["wheel rate, N/mm",3,i=>i.wheel_rate_n_per_mm],["springs apart, as if upright, mm",1,i=>i.spring_spacing_mm],["bump at the wheel, mm",1,i=>i.bump_mm],["droop at the wheel, mm",1,i=>i.droop_mm],["left spring pressed at ride height, mm",1,i=>i.spring_squeeze_mm[0]],["left spring pressed at droop, mm",1,i=>i.spring_squeeze_at_droop_mm[0]],["soft springs bind at heave, mm",1,i=>i.soft_spring_bound_at_mm],["shock at droop, mm",1,i=>i.shock_length_mm[0]],["shock at ride height, mm",1,i=>i.shock_length_mm[1]],["shock at bump, mm",1,i=>i.shock_length_mm[2]]],jx=[["anti-dive, anti-squat, %","heave, mm",i=>[i.travel.heave_mm,i.travel.anti_percent]],["roll centre, mm above ground","heave, mm",i=>[i.travel.heave_mm,i.travel.roll_centre_mm]],["castor gained, °","heave, mm",i=>[i.travel.heave_mm,i.travel.castor_deg]],["wheel rate, N/mm","heave, mm",i=>[i.travel.heave_mm,i.travel.wheel_rate_n_per_mm]],["axle goes forwards, mm","heave, mm",i=>[i.travel.heave_mm,i.travel.wheelbase_mm]],["axle steers, °","roll of the axle, °",i=>[i.rolling.roll_deg,i.rolling.steer_deg]]];function Of(i){i.classList.add("suspension");let e=_("div",{class:"views"}),t=_("div",{class:"parts-holder"}),n=_("div",{class:"small-curves"}),s=_("div"),r=_("p",{class:"text"}),a={side:new Sn("side"),rear:new Sn("rear")};i.append(r,e,t,n,s);let o=async()=>{let c=R.bench;try{let h=await ve.suspension();if(c!==R.bench||(l(h),!h.truck.linked))return;s.setAttribute("aria-busy","true"),s.firstChild||ge(s,_("h3",{},"A link end moved by 5 mm"),_("p",{class:"text soft"},"Working out what each would do…"));let u=await ve.suspensionMoves();if(c!==R.bench)return;ge(s,...ry(u)),s.removeAttribute("aria-busy")}catch(h){if(!(h instanceof Be))throw h;!(h instanceof Kt)&&h.status!==409&&(r.textContent=h.message)}},l=c=>{let{linked:h}=c.truck;r.classList.toggle("soft",h),r.textContent=h?"At ride height, wheels held. Violet is the front axle, rose the rear; thick lines are links, dashed ones shocks.":Zx;for(let u of[e,t,n,s])u.hidden=!h;h&&(ge(e,...["side","rear"].map(u=>Qx(u,c.truck,a[u]))),ge(t,iy(c)),ge(n,...jx.map(u=>sy(u,c))))};an(i,()=>{o()},250),o()}function Qx(i,e,t){let n=R.bench.scene,[s,,r]=Vi(n,i),a=Math.min(Vi(n,"side")[1],Vi(n,"rear")[1]),o=i==="side"?[s-70,a-14,r+70,26]:[s-40,a-14,r+40,26];t.draw(n.parts,null);let l=e.axles.flatMap(v=>[...ey(i,v),...i==="side"?ty(v,o):ny(v,o)]),[c,h]=en[i](n.cg_mm),u=i==="side"?"Side view, nose to the right":"Rear view",d=e.axles.map(v=>`${v.axle} roll centre ${G(v.roll_centre_mm)} mm above ground, instant centre ${G(v.instant_centre_mm[0],0)} ahead and ${G(v.instant_centre_mm[1],0)} up`).join("; "),f=O("svg",{class:"view links-view",viewBox:`${o[0]} ${o[1]} ${o[2]-o[0]} ${o[3]-o[1]}`,role:"img","aria-label":`${u}: ${d}`},O("path",{class:"ground",d:`M${o[0]} 0H${o[2]}`}),O("g",{class:"faint"},t.root),...l,O("g",{transform:`translate(${c} ${h})`},O("circle",{r:6,class:"cg-back"}),O("path",{d:"M0 0V-6A6 6 0 0 1 6 0ZM0 0V6A6 6 0 0 1 -6 0Z",class:"cg-dark"}),O("circle",{r:6,class:"cg-ring"}))),p=_("figure",{},f,_("figcaption",{},u));return p.style.flexGrow=String(Math.round(o[2]-o[0])),p}function ey(i,e){let t=n=>en[i](n).map(s=>s.toFixed(1)).join(" ");return e.rods.flatMap(n=>[O("path",{class:`rod of-${e.axle}${n.shock?" shock":""}`,d:`M${t(n.chassis_mm)}L${t(n.axle_mm)}`},O("title",{},`${e.axle} ${n.name}`)),...[n.chassis_mm,n.axle_mm].map(s=>{let[r,a]=en[i](s);return O("circle",{class:`rod-end of-${e.axle}`,cx:r,cy:a,r:2.6})})])}var kf=(i,e,t)=>O("path",{class:`centre of-${t}`,d:`M${i-6} ${e}H${i+6}M${i} ${e-6}V${e+6}`}),fh=(i,e,t,n,s="middle")=>O("text",{class:`link-word of-${n}`,x:i,y:e,"text-anchor":s},t);function ty(i,e){let{x_mm:t,roll_centre_mm:n,roll_axis_slope:s,instant_centre_mm:[r,a],axle:o}=i,l=75,c=[O("path",{class:`roll-axis of-${o}`,d:`M${t-l} ${-(n-s*l)}L${t+l} ${-(n+s*l)}`}),kf(t,-n,o),fh(t,-n-12,`roll centre ${G(n,0)}`,o)];if(r===null||a===null)return c;let h=r>t?e[2]-4:e[0]+4,u=r>e[2]-4||r<e[0]+4,d=Math.abs(a)>-e[1]-8?(-e[1]-8)/Math.abs(a):1,f=Math.min(d,u?(h-t)/(r-t):1),[p,v]=[t+f*(r-t),f*a];c.push(O("path",{class:`to-instant of-${o}`,d:`M${t} 0L${p.toFixed(1)} ${(-v).toFixed(1)}`})),f===1&&c.push(O("path",{class:`instant of-${o}`,d:`M${r-5} ${-a-5}L${r+5} ${-a+5}M${r-5} ${-a+5}L${r+5} ${-a-5}`}));let m=p>e[2]-90?"end":p<e[0]+90?"start":"middle";return c.push(fh(p,Math.max(e[1]+12,-v-8),f===1?`${o} instant centre`:`${o} instant centre at ${G(r,0)}, ${G(a,0)}`,o,m)),c}function ny(i,e){let t=i.axle==="front",[n,s]=[t?e[0]+3:e[2]-3,-i.roll_centre_mm];return[O("path",{class:`roll-axis of-${i.axle}`,d:`M0 ${s}H${n}`}),kf(0,s,i.axle),fh(n,s-5,G(i.roll_centre_mm),i.axle,t?"start":"end")]}function iy(i){let e=(t,n,s)=>{let r=t!==null&&n!==null&&n!==void 0&&Number((t-n).toFixed(s))!==0;return _("td",{class:"n"},G(t,s),r?_("span",{class:"diff"},` ${St(t-n,s)}`):null)};return _("table",{class:"link-numbers"},_("caption",{},"At ride height",i.reference?_("span",{class:"soft"},`, against ${R.bench.before?.what??"the reference"}`):null),_("thead",{},_("tr",{},_("td",{}),...Jx.map(t=>_("th",{scope:"col",class:"n"},t)))),_("tbody",{},_("tr",{},_("th",{scope:"row"},"guided by"),...i.truck.axles.map(t=>_("td",{class:"n kinds"},t.links.map(n=>n.replace(`${t.axle} `,"")).join(", ")||"numbers"))),...Kx.filter(([,,t])=>i.truck.axles.some(n=>t(n)!==null)).map(([t,n,s])=>_("tr",{},_("th",{scope:"row"},t),...i.truck.axles.map((r,a)=>e(s(r),i.reference&&s(i.reference.axles[a]),n))))))}function sy([i,e,t],n){let[s,r,a,o]=[230,118,32,20],l=[...(n.reference?.axles??[]).map(S=>["then",S]),...n.truck.axles.map(S=>["now",S])],c=l.map(([,S])=>t(S)),h=c.flatMap(([S])=>S),u=c.flatMap(([,S])=>S).filter(S=>S!==null),[d,f]=[Math.min(...h),Math.max(...h)],[p,v]=[Math.min(...u),Math.max(...u)];v-p<.001&&([p,v]=[p-1,v+1]);let m=S=>a+(S-d)/(f-d||1)*(s-a-6),g=S=>8+(v-S)/(v-p)*(r-8-o),M=v-p>20?0:v-p>2?1:2,C=([S,x])=>x.map((T,B)=>[S[B],T]).filter(T=>T[1]!==null).map((T,B)=>`${B?"L":"M"}${m(T[0]).toFixed(1)} ${g(T[1]).toFixed(1)}`).join(""),w=l.map(([S,x],T)=>O("path",{class:`${S} of-${x.axle}`,d:C(c[T])})),E=n.truck.axles.map(S=>{let[,x]=t(S);return`${S.axle} ${G(x[0],2)} to ${G(x[x.length-1],2)}`}).join(", ");return _("figure",{},_("figcaption",{},i),O("svg",{viewBox:`0 0 ${s} ${r}`,role:"img","aria-label":`${i} over ${e}: ${E}`},O("path",{class:"curve-frame",d:`M${a} 8V${r-o}H${s-6}M${m(0)} 8V${r-o}`}),...w,...[p,v].map(S=>O("text",{x:a-4,y:g(S)+3.5,"text-anchor":"end"},G(S,M))),...[d,f].map((S,x)=>O("text",{x:m(S),y:r-8,"text-anchor":x?"end":"start"},G(S,0))),O("text",{x:(a+s)/2,y:r-8,"text-anchor":"middle"},e)))}function ry(i){let e=o=>Math.max(...[o.side_deg,o.climb_deg,o.descent_deg].map(l=>Math.abs(l??0))),t=o=>_("td",{class:`n ${o===null||Math.abs(o)<.005?"":o>0?"gain-up":"gain-down"}`},o===null?"–":St(o,2)),n=o=>_("tr",{},_("th",{scope:"row"},`${o.part}, ${o.end} end ${o.axis}`),...o.why_not?[_("td",{colspan:3,class:"soft"},o.why_not)]:[t(o.side_deg),t(o.climb_deg),t(o.descent_deg)],_("td",{},o.why_not?null:_("button",{type:"button",class:"small","data-key":`move-${o.part}-${o.end}-${o.axis}`,"aria-label":`Move ${o.part}, ${o.end} end ${o.axis} by ${G(i.moved_by_mm,0)} mm`,onclick:()=>{Xt([o.edit],`${o.part}, ${o.end} end ${o.axis} ${G(i.moved_by_mm,0)} mm`)}},"Do it"))),s=[...i.moves].sort((o,l)=>e(l)-e(o)).map(n),r=_("tbody",{},...s.slice(0,dh));Nt(r);let a=s.length>dh?_("button",{type:"button",id:"link-moves-all",onclick:()=>{r.append(...s.slice(dh)),a?.parentElement?.remove()}},`All ${s.length} of them`):null;return[_("h3",{},`A link end moved by ${G(i.moved_by_mm,0)} mm`),_("p",{class:"text soft"},`Degrees that it tips later on ${i.surface}, against a rail where it slides first; the side that loses more counts. Links on both sides move together.`),_("div",{class:"parts-holder"},_("table",{id:"link-moves"},_("thead",{},_("tr",{},_("td",{}),...["side","climb","descent"].map(o=>_("th",{scope:"col",class:"n"},o)),_("td",{}))),r)),...a?[_("div",{class:"bar"},a)]:[]]}var ay={rear:"its rear tyres",left:"its left tyres",front:"its front tyres",right:"its right tyres"},ml=class{constructor(e){this.stage=e;let[t,n]=[Se("tilt"),Se("turn")];t.addEventListener("input",()=>ht({tilt:Number(t.value)})),n.addEventListener("input",()=>ht({heading:Number(n.value)%360})),Se("ways").append(...Object.values(xt).map(({heading:r,name:a})=>_("button",{type:"button","data-heading":r,onclick:()=>ht({heading:r})},a))),Nt(Se("ways")),De("view",()=>this.follow()),De("shown",()=>this.fetchPath()),De("path",()=>this.pose());let s=-1;De("view",()=>{s!==R.view.heading&&this.fetchPath(),s=R.view.heading})}stage;asked=null;timer=0;wasOver=!1;playing=!1;follow(){let{tilt:e,heading:t}=R.view,[n,s]=[Se("tilt"),Se("turn")];n.value=String(e),s.value=String(t),Se("tilt-value").textContent=`${G(e)}°`,Se("turn-value").textContent=`${G(t,0)}°`,n.setAttribute("aria-valuetext",`${G(e)} degrees`),s.setAttribute("aria-valuetext",`${G(t,0)} degrees to the left from nose uphill`);for(let r of Se("ways").querySelectorAll("button"))r.setAttribute("aria-pressed",String(Number(r.dataset.heading)===t));this.pose()}fetchPath(){if(clearTimeout(this.timer),R.trying||!R.bench)return this.pose();R.path||this.pose(),this.timer=window.setTimeout(()=>{this.asked?.abort(),this.asked=new AbortController,ve.path(R.view.heading,this.asked.signal).then(e=>{R.path=e,this.pose()},e=>{e instanceof Be&&(e.status===409||e.status===0)||e instanceof DOMException||Ne(String(e instanceof Error?e.message:e),"wrong")})},15)}pose(){if(this.playing)return;let{tilt:e,heading:t}=R.view,n=R.path,s=n!==null&&n.surface===R.answers?.surface,r=n!==null&&s&&Math.abs(n.heading_deg-t)<3&&!R.trying,a=n!==null&&n.rail_deg!==null&&!R.view.rail,o=(a?n?.goes_at_deg:n?.compliant_deg??n?.rail_deg)??90,l=n&&r?Uf(n.points,Math.min(e,o)):null,c=n!==null&&r&&e>o?a?"away":n.over:null;this.stage.show({theta_deg:e,heading_deg:t,poses:l?.poses??[],load_g:c?[0,0,0,0]:l?.load_g??R.answers?.numbers.corner_g??[0,0,0,0],cg_mm:l?.cg_mm??null},c);let h=Se("standing"),u=n!==null&&r&&e>(n.goes_at_deg??90);n&&r?h.textContent=oy(n,e):s||(h.textContent="Working out how it stands…"),h.classList.toggle("over",u),u&&!this.wasOver&&Ne(h.textContent??""),this.wasOver=u;let d=`The truck on the table, tilted ${G(e)} degrees, turned ${G(t,0)}. ${h.textContent??""} Arrow keys look round it, Enter takes the picked part.`;Se("stage-canvas").setAttribute("aria-label",d)}};function oy(i,e){let t=ay[i.over]??i.over,{compliant_deg:n,rail_deg:s,slide_deg:r,goes_at_deg:a}=i;if(a===null||n===null&&s===null)return"No tip was found on this heading.";let o=s!==null&&r!==null;if(e<=a){let c=o?`its tyres slide; against a rail it tips over ${t} at ${G(s)}°`:`it tips over ${t}`;return`Stands, with ${cy(i,e,a)} in hand before ${ly(i)?`it slides or tips over ${t}, which is too close to call`:c}.`}if(!o)return`Gone over ${t}. It tips at ${G(n)}°.`;let l=R.view.rail?"Held by a rail as here, it has":"Against a rail it would have";return e<=s?`Slides away at ${G(r)}°. ${l} ${G(s-e)}° in hand before it tips over ${t}.`:`Gone. It slides away at ${G(r)}°, and tips over ${t} at ${G(s)}° where a rail holds it.`}var Bf=i=>R.trying?void 0:R.answers?.ways?.find(e=>e.heading_deg===i.heading_deg),ly=i=>Bf(i)?.outcome==="too close to call";function cy(i,e,t){let[n,s]=Bf(i)?.goes_at_range_deg??[null,null],r=`${G(t-e)}°`;return n===null||s===null?r:n<e?`${r} (perhaps nothing, at most ${G(s-e)}°)`:`${r} (${G(n-e)} to ${G(s-e)})`}var gl=null,zf=()=>gl!==null,Vf=i=>gl?.(i),qr=1e4,hy=i=>Math.round(i*2)/2;function uy(i){let e=R.measures.find(s=>s.key==="chassis.raise_mm")?.value??0;if(i==="chassis")return{at:[0,0,e],out:1};let t=R.scene.axles[i.includes("rear")?1:0];if(i.endsWith("axle"))return{at:[t.x_mm,0,t.radius_mm],out:1};let n=i.endsWith("right");return{at:[t.x_mm,(n?-1:1)*t.track_mm/2,t.radius_mm],out:n?-1:1}}async function Gf(i,e,t,n=""){let s;try{s=await ve.partForm()}catch(L){if(!(L instanceof Be))throw L;return Ne(L.message,"wrong")}let r=L=>{let Y=new Set(R.bench.rows.map(le=>le.name)),ee=1;for(;Y.has(ee>1?`${L} ${ee}`:L);)ee+=1;return ee>1?`${L} ${ee}`:L},a=R.bench.rows.find(L=>L.name===n),o=(L,Y,ee)=>_("input",{id:`new-${L}`,"aria-label":Y,"data-key":`new-${L}`,...ee}),l=(L,Y,ee,le={})=>o(L,Y,{type:"number",step:"any",value:ee,...le}),c=o("name","Name",{required:!0,maxlength:60,value:r(n?"weighed part":"brass weight"),pattern:'[^.\\[\\]"]+'}),h=l("mass","Mass of one, g",20,{min:.001,max:1e5,required:!0}),u=_("select",{id:"new-material","aria-label":"Weighed, or out of what"},_("option",{value:""},"as weighed"),...s.materials.map(L=>_("option",{value:L},L))),d=l("price","Price of one",0,{min:0,max:1e7}),f=_("select",{id:"new-on","aria-label":"Rides on"},...R.bench.carriers.filter(L=>!L.endsWith("link")).map(L=>_("option",{value:L,selected:L===a?.on},L))),p=l("count","How many in a row",1,{min:1,max:500,step:1,required:!0}),v=["ahead","to the left","up"].map((L,Y)=>l(`step${Y}`,`Each further on by, ${L}, mm`,0,{min:-qr,max:qr})),m=o("mirror","Also on the other side",{type:"checkbox"}),g=a?.at_mm??[0,0,60],M=["x","y","z"].map((L,Y)=>l(L,["Ahead, mm","To the left, mm","Up, mm"][Y],g[Y],{min:-qr,max:qr,required:!0})),C=["x","y","z"].map(L=>l(`turn-${L}`,`Turned about ${L}, degrees`,0,{min:-360,max:360})),w=_("select",{id:"new-kind","aria-label":"Shape"},_("option",{value:""},"a point"),...s.kinds.filter(L=>L.kind!=="mesh"||s.meshes.length).map(L=>_("option",{value:L.kind,selected:L.kind==="box"},L.kind))),E=_("select",{id:"new-out-of","aria-label":"Was counted in"},_("option",{value:""},"nothing: it is new"),...s.lumps.map(L=>_("option",{value:L,selected:L===n},L))),S=_("div",{class:"new-shape"}),x=_("div",{class:"new-line",hidden:!0},_("span",{},"each on by"),...v,_("span",{class:"soft"},"mm ahead, left, up")),T=()=>s.kinds.find(L=>L.kind===w.value),B=()=>ge(S,...(T()?.fields??[]).flatMap(L=>{let Y=`${L.key.replace(/_(mm|g_per_m)$/,"").replace(/_/g," ")}${L.key.endsWith("_mm")?", mm":L.key==="g_per_m"?", g per m":""}`,ee=Array.isArray(L.start)?L.start:[L.start];if(L.key==="file"||L.choices.length){let le=L.key==="file"?s.meshes:L.choices;return[_("label",{},Y,_("select",{"data-field":L.key,"aria-label":`${Y}: ${L.meaning}`},...le.map(Ee=>_("option",{value:Ee,selected:Ee===L.start},Ee))))]}return[_("label",{},Y,...ee.map((le,Ee)=>_("input",{type:"number",step:"any",min:.001,max:qr,required:L.needed,value:le??"","data-field":L.key,"aria-label":L.many>1?`${Y}, ${["ahead","across","up"][Ee]}`:`${Y}: ${L.meaning}`})))]})),U=()=>{let L=T();if(!L)return null;let Y={kind:L.kind};for(let ee of L.fields){let Ee=[...S.querySelectorAll(`[data-field="${ee.key}"]`)].map(j=>j instanceof HTMLSelectElement?j.value:j.value===""?null:Number(j.value));Ee.some(j=>j===null)||(Y[ee.key]=ee.many>1?Ee:Ee[0])}return Y},N=()=>w.value==="strip"&&S.querySelector('[data-field="g_per_m"]')?.value!=="",V=()=>{let L={name:c.value.trim(),on:f.value};u.value===""&&!N()&&(L.mass_g=Number(h.value)),u.value&&(L.material=u.value);let ee=U();return ee&&(L.shape=ee),L.at_mm=M.map(le=>Number(le.value)),C.some(le=>Number(le.value))&&(L.turn_deg=C.map(le=>Number(le.value))),Number(p.value)>1&&Object.assign(L,{count:Number(p.value),step_mm:v.map(le=>Number(le.value))}),m.checked&&(L.mirror=!0),Number(d.value)&&(L.price=Number(d.value)),{do:"add",part:L,...E.value?{out_of:E.value}:{}}},q=()=>/wheel|left|right/.test(f.value),I=()=>{x.hidden=Number(p.value)<=1,m.disabled=q(),h.disabled=u.value!==""||N(),u.disabled=w.value===""||N(),w.value===""&&(u.value=""),M[1].setAttribute("aria-label",q()?"Outwards, mm":"To the left, mm"),J.textContent=q()?"outwards":"left",R.view.row=R.bench.rows.length,se.checkValidity()&&wi([V()])},X=()=>{gl=null,Yr=null,t.classList.remove("placing"),i.replaceChildren(),i.hidden=!0;for(let L of e)L.hidden=!1},J=_("span",{class:"soft"},"left"),$=(L,...Y)=>_("div",{class:"new-line"},_("span",{class:"new-label"},L),...Y),se=_("form",{class:"new-part","aria-label":"A new part"},_("h3",{},n?`A part out of ${n}`:"A new part"),$("Name",c,_("label",{},"price ",d,` ${s.currency}`)),$("Shape",w,S),$("Weighs",h,_("span",{},"g,"),u),$("Rides on",f,_("label",{class:"tick"},m,"also on the other side")),$("Stands",M[0],_("span",{class:"soft"},"ahead"),M[1],J,M[2],_("span",{class:"soft"},"up, mm")),_("p",{class:"about"},"Click in a drawing to put it there."),$("How many",p,x),_("details",{},_("summary",{},"Turned"),$("by, degrees",...C.flatMap((L,Y)=>[L,_("span",{class:"soft"},`about ${"xyz"[Y]}`)]))),$("Counted in",E),_("p",{class:"about"},"What was weighed on its own and stood in a lump until now comes out of it: mass and CG of the whole stay as they are."),_("div",{class:"bar"},_("button",{type:"submit",class:"main",id:"new-add"},"Add it"),_("button",{type:"button",id:"new-leave",onclick:()=>{X(),ht({row:null}),Cn(),document.getElementById("add-part")?.focus()}},"Leave it")));w.addEventListener("change",()=>{B()}),se.addEventListener("input",I),se.addEventListener("submit",L=>{L.preventDefault();let Y=c.value.trim(),ee=E.value?`took ${Y} out of ${E.value}`:`added ${Y}`;Xt([V()],ee).then(le=>{le&&(X(),ht({row:R.bench.rows.find(Ee=>Ee.name===Y)?.row??null}),document.getElementById("add-part")?.focus())})}),gl=L=>{let{at:Y,out:ee}=uy(f.value);L.forEach((le,Ee)=>{le!==null&&(M[Ee].value=String(hy((le-Y[Ee])*(Ee===1?ee:1))))}),I()},Yr={file:R.bench.file,close:X};for(let L of e)L.hidden=!0;ge(i,se),i.hidden=!1,t.classList.add("placing"),B(),I(),c.focus(),c.select()}var Yr=null;De("bench",()=>{Yr&&Yr.file!==R.bench.file&&Yr.close()});var _l=16,Hf=[60,32],ph={light:"",helps:[0,0,0],hurts:[0,0,0]};function dy(){let i=document.documentElement.dataset.light??"";if(ph.light!==i){let e=getComputedStyle(document.documentElement),t=n=>{let s=e.getPropertyValue(n).trim();return[1,3,5].map(r=>parseInt(s.slice(r,r+2),16))};ph={light:i,helps:t("--helps"),hurts:t("--hurts")}}return ph}function mh(i,e,t="chassis"){let n=s=>{let r=R.answers.gain[s]?.[t];return r?r[0]+r[1]*e[0]+r[2]*e[1]+r[3]*e[2]:0};return i==="all"?Math.min(...Object.keys(xt).map(n)):n(i)}var Zr=class{constructor(e){this.face=e;let t=e==="side"?"Side view, nose to the right":"Rear view";this.parts=new Sn(e,1,!0),this.root=O("svg",{class:"view",role:"group","aria-label":t},this.field,this.ground,this.parts.root,this.ghost,this.truck,this.grips),this.figure=_("figure",{},this.root,_("figcaption",{},t)),[this.canvas.width,this.canvas.height]=Hf,De("bench",()=>this.box=this.frame()),De("shown",ps(()=>this.draw(),()=>this.held?0:vi()?2e3:50)),De("pick",()=>this.draw());let n=R.view.direction;De("view",()=>{R.view.direction!==n&&this.paintField(),n=R.view.direction}),this.box=this.frame(),this.draw(),this.root.addEventListener("pointermove",s=>this.drag(s));for(let s of["pointerup","pointercancel"])this.root.addEventListener(s,()=>this.drop());this.root.addEventListener("click",s=>{if(zf()){let[a,o]=this.point(s);return Vf(this.face==="side"?[a,null,-o]:[null,-a,-o])}let r=s.target.getAttribute("data-row");r!==null&&!this.held&&ht({row:Number(r)})})}face;figure;root;field=O("image",{preserveAspectRatio:"none"});ground=O("g");parts;truck=O("g");grips=O("g");ghost=O("g",{class:"ghost"});canvas=document.createElement("canvas");box=[0,0,1,1];held=null;frame(){let[e,,t]=Vi(R.scene,this.face),n=Math.min(Vi(R.scene,"side")[1],Vi(R.scene,"rear")[1]);return[e-_l,n-_l,t+_l,_l]}draw(){let e=R.scene,[t,n,s,r]=this.box;this.root.setAttribute("viewBox",`${t} ${n} ${s-t} ${r-n}`),this.figure.style.flexGrow=String(Math.round(s-t));let a=[O("path",{class:"ground",d:`M${t} 0H${s}`})];for(let c of e.axles)if(this.face==="side")a.push(O("circle",{class:"tyre",cx:c.x_mm,cy:-c.radius_mm,r:c.radius_mm}));else for(let h of[-1,1])a.push(O("rect",{class:"tyre",x:(h*c.track_mm-c.width_mm)/2,y:-2*c.radius_mm,width:c.width_mm,height:2*c.radius_mm}));this.parts.draw(e.parts,R.view.row),this.drawGhost(),this.ground.replaceChildren(...a.splice(0));for(let c of this.face==="side"?[e.wedge_mm[0],e.wedge_mm[2]]:[e.wedge_mm[1],e.wedge_mm[3]])a.push(this.wedge(c));let[o,l]=en[this.face](e.cg_mm);a.push(O("g",{transform:`translate(${o} ${l})`},O("circle",{r:7,class:"cg-back"}),O("path",{d:"M0 0V-7A7 7 0 0 1 7 0ZM0 0V7A7 7 0 0 1 -7 0Z",class:"cg-dark"}),O("circle",{r:7,class:"cg-ring"}))),this.truck.replaceChildren(...a),R.trying||this.paintField(),this.drawGrips()}drawGhost(){let e=R.bench.before?.scene;if(!e)return this.ghost.replaceChildren();let t=new Set(R.scene.parts.map(Zn)),[n,s]=en[this.face](e.cg_mm);this.ghost.replaceChildren(...e.parts.filter(r=>r.shape&&!t.has(Zn(r))).map(r=>O("path",{d:us(al(r,this.face))})),O("path",{d:`M${n-9} ${s}H${n+9}M${n} ${s-9}V${s+9}`}))}wedge([e,t]){let n=this.face==="rear"?-1:1,s=(-this.box[1]+40)/Math.max(1,t[1]-e[1]),[r,a]=[(t[0]-e[0])*s,(t[1]-e[1])*s];return O("path",{class:"wedge",d:`M${n*e[0]} ${-e[1]}L${n*(e[0]+r)} ${-(e[1]+a)}`})}paintField(){let[e,t,n,s]=this.box,[r,a]=Hf,{helps:o,hurts:l}=dy(),c=new ImageData(r,a),h=R.scene.cg_mm;for(let u=0;u<a;u++)for(let d=0;d<r;d++){let[f,p]=[e+(d+.5)/r*(n-e),t+(u+.5)/a*(s-t)],v=this.face==="side"?[f,h[1],-p]:[h[0],-f,-p],m=p>0?0:mh(R.view.direction,v),[g,M,C]=m>0?o:l,w=Math.min(6,Math.ceil(Math.abs(m)/.05));c.data.set([g,M,C,p>0?0:w*24],4*(u*r+d))}this.canvas.getContext("2d").putImageData(c,0,0),this.field.setAttribute("href",this.canvas.toDataURL());for(let[u,d]of Object.entries({x:e,y:t,width:n-e,height:s-t}))this.field.setAttribute(u,String(d))}movable(){let e=R.bench.rows.find(n=>n.row===R.view.row),t=R.scene.parts.find(n=>n.row===R.view.row);return e&&t&&e.at_mm&&e.here?{part:t,row:e}:null}drawGrips(){let e=this.movable();if(!e)return this.grips.replaceChildren();let[t,n]=en[this.face](e.part.cg_mm),s=this.grips.firstElementChild;s||(s=O("g",{role:"slider",tabindex:0,"data-key":`grip-${this.face}`,"aria-valuenow":0},O("circle",{r:18,class:"handle-reach"}),O("circle",{r:7,class:"handle"})),s.addEventListener("pointerdown",a=>this.take(a)),s.addEventListener("keydown",a=>this.nudge(a)),this.grips.append(s)),s.setAttribute("transform",`translate(${t} ${n})`);let r=e.row.at_mm;s.setAttribute("aria-label",`${e.row.name}, ${this.face==="side"?"along and up":"across and up"}: arrow keys move it a millimetre`),s.setAttribute("aria-valuetext",`${G(r[0])} ahead, ${G(r[1])} left, ${G(r[2])} up`)}point(e){let t=new DOMPoint(e.clientX,e.clientY).matrixTransform(this.root.getScreenCTM().inverse());return[t.x,t.y]}take(e){let t=this.movable();t&&(e.preventDefault(),this.root.setPointerCapture(e.pointerId),this.held={...t,from:this.point(e),moved:[0,0]})}drag(e){if(!this.held)return;let[t,n]=this.point(e),s=[Math.round(t-this.held.from[0]),Math.round(n-this.held.from[1])];s[0]===this.held.moved[0]&&s[1]===this.held.moved[1]||(this.held.moved=s,wi(this.moveEdit(this.held.row,this.held.part,s)))}drop(){let e=this.held;e&&(this.held=null,!(e.moved[0]===0&&e.moved[1]===0)&&Xt(this.moveEdit(e.row,e.part,e.moved),`moved ${e.row.name}`).then(t=>{t||Cn()}))}nudge(e){let t=e.shiftKey?10:1,s={ArrowLeft:[-t,0],ArrowRight:[t,0],ArrowUp:[0,-t],ArrowDown:[0,t]}[e.key],r=this.movable();!s||!r||(e.preventDefault(),Xt(this.moveEdit(r.row,r.part,s),`moved ${r.row.name}`))}moveEdit(e,t,[n,s]){let r=e.at_mm,a=(l,c)=>({do:"set",part:e.name,key:`at_mm.${l}`,value:Number(c.toFixed(3))}),o=[];return n&&this.face==="side"&&o.push(a("x",r[0]+n)),n&&this.face==="rear"&&o.push(a("y",r[1]+(t.mirrored?n:-n))),(s||!n)&&o.push(a("z",r[2]-s)),o}};var Wf=1e4;function Xf(i){i.classList.add("weights");let e=_("div",{class:"views"}),t=_("div",{id:"picked"}),n=_("div",{class:"parts-holder"}),s=_("div",{id:"measures",hidden:!0});e.append(new Zr("side").figure,new Zr("rear").figure);let r=_("div",{class:"below"},s,n),a=_("div",{id:"new-part",class:"below",hidden:!0}),o=(p="")=>{Gf(a,[t,l,r],e,p)},l=fy(s,r,()=>o());i.append(my(),e,t,l,r,a);let c=()=>ge(t,gy(o)),h=()=>{let{scrollTop:p}=r;ge(n,_y()),r.scrollTop=p},u="";De(["bench","pick"],()=>{let p=R.bench.rows.find(m=>m.row===R.view.row),v=JSON.stringify(p??null);v!==u&&c(),u=v}),De("bench",h),De("shown",()=>Zf()),De("shown",ps(py,()=>100)),De("bench",()=>ge(s,$f())),c(),h(),ge(s,$f()),De("pick",()=>{for(let p of n.querySelectorAll("tr[data-row]"))p.classList.toggle("picked",Number(p.dataset.row)===R.view.row);requestAnimationFrame(f)});let f=()=>{let p=n.querySelector("tr.picked");if(!p||r.scrollHeight<=r.clientHeight)return;let[v,m]=[p.getBoundingClientRect(),r.getBoundingClientRect()],g=28;v.top<m.top+g?r.scrollTop-=m.top+g-v.top:v.bottom>m.bottom&&(r.scrollTop+=v.bottom-m.bottom)}}function fy(i,e,t){let n=_("button",{type:"button",id:"measures-fold","aria-expanded":"false","aria-controls":"measures"},"Measures of the truck");n.addEventListener("click",()=>{i.hidden=!i.hidden,n.setAttribute("aria-expanded",String(!i.hidden)),e.scrollTop=0});let s=_("div",{class:"bar list-bar",role:"toolbar","aria-label":"Parts and measures"},n,_("button",{type:"button",id:"add-part",onclick:t},"Add a part"));return Nt(s),s}function py(){let i=document.activeElement,e=(s,r)=>{let a=document.querySelector(`#leaf-weights [data-key="${CSS.escape(s)}"]`);!a||a===i||a.value===r||(a.value=r)};for(let s of R.rows)e(`mass_g-${s.row}`,qf(s)),s.at_mm?.forEach((r,a)=>e(`at${a}-${s.row}`,String(r)));let t=(s,r)=>{let a=document.getElementById(`dial-${s}`);!a||a===i||r===void 0||Number(a.value)===r||(a.value=String(r),Yf(a,r))};for(let s of R.measures)t(s.key,s.value);let n=R.rows.find(s=>s.row===R.view.row);n&&(t("mass",n.mass_g),n.at_mm?.forEach((s,r)=>t(`at${r}`,s)))}var qf=i=>i.mass_g.toFixed(i.mass_g<10?2:1);function Yf(i,e){let t=`${G(e,Number(i.dataset.digits))} ${i.dataset.unit}`;i.setAttribute("aria-valuetext",t);let n=document.querySelector(`output[for="${CSS.escape(i.id)}"]`);n&&(n.textContent=t)}function my(){let i=s=>()=>{ht({direction:s});for(let r of n.querySelectorAll("button"))r.setAttribute("aria-pressed",String(r.dataset.direction===s))},e=(s,r)=>_("button",{type:"button","data-direction":s,"aria-pressed":String(s===R.view.direction),onclick:i(s)},r),t=_("span",{},R.answers.gain_of==="compliant"?"springs and tyres at work":"if nothing gives"),n=_("div",{class:"bar",role:"toolbar","aria-label":"Where a gram helps, for which way to stand"},e("all","All ways"),...Object.entries(xt).map(([s,{short:r}])=>e(s,r)),_("span",{class:"gain-key"},_("i",{class:"helps"}),"helps",_("i",{class:"hurts"}),"hurts, a step is 0.05° per 10 g,",t));return Nt(n),De("shown",()=>{t.textContent=R.answers.gain_of==="compliant"?"springs and tyres at work":"if nothing gives"}),n}function gh(i,e,t,n,s,r){let[a,o,l]=s,c=`dial-${i}`,h=Math.max(Ph(l),Math.min(3,String(n).split(".")[1]?.length??0),t==="mm"||t==="g"?1:0),u=`${G(n,h)} ${t}`,d=_("input",{type:"range",id:c,"data-key":c,"data-digits":h,"data-unit":t,min:Math.min(a,n),max:Math.max(o,n),step:"any",value:n,"aria-valuetext":u}),f=()=>Number((Math.round(Number(d.value)/l)*l).toFixed(4));return d.addEventListener("keydown",p=>{let v={ArrowRight:l,ArrowUp:l,ArrowLeft:-l,ArrowDown:-l,PageUp:10*l,PageDown:-10*l}[p.key];v!==void 0&&(p.preventDefault(),d.value=String(f()+v),d.dispatchEvent(new Event("input")),d.dispatchEvent(new Event("change")))}),d.addEventListener("input",()=>{Yf(d,f()),wi(r(f()).edit)}),d.addEventListener("change",()=>{let{edit:p,what:v}=r(f());Xt(p,v)}),[_("label",{for:c},e),d,_("output",{for:c},u)]}function gy(i){let e=R.bench.rows.find(s=>s.row===R.view.row);if(!e)return _("p",{class:"text soft"},"Pick a part in the list, the drawings or on the table to weigh and move it.");let t=_("div",{class:"one"},_("h3",{},e.name));if(e.here){let s=Math.max(60,Math.ceil(e.mass_g*2/50)*50);t.append(...gh("mass","Mass","g",e.mass_g,[Math.min(1,e.mass_g),s,e.mass_g<20?.1:1],r=>({edit:[{do:"set",part:e.name,key:"mass_g",value:r}],what:`mass of ${e.name} ${G(r)} g`}))),e.at_mm&&["Ahead","To the left","Up"].forEach((r,a)=>{let o=e.at_mm;t.append(...gh(`at${a}`,r,"mm",o[a],[o[a]-60,o[a]+60,.5],l=>({edit:[{do:"set",part:e.name,key:`at_mm.${"xyz"[a]}`,value:l}],what:`moved ${e.name}`})))})}let n=_("p",{class:"gain-words about",id:"gain-words"});return t.append(n),e.here&&e.at_mm&&e.count===1&&!e.mirror&&t.append(_("button",{type:"button",class:"about",id:"take-out",title:"A part that was weighed on its own since: mass and CG of the whole stay as they are",onclick:()=>i(e.name)},"Take a part out of it…")),e.here||t.append(_("p",{class:"about"},"This part stands in an included file; edit it there.")),queueMicrotask(Zf),t}function Zf(){let i=document.getElementById("gain-words"),e=R.scene.parts.filter(n=>n.row===R.view.row);if(!i||e.length===0)return;let t=[0,1,2].map(n=>e.reduce((s,r)=>s+r.cg_mm[n],0)/e.length);ge(i,"10 g more here:",...Object.entries(xt).map(([n,{short:s}])=>_("span",{},`${s} `,_("b",{},`${St(mh(n,t,e[0].carrier),2)}°`))))}function _y(){let i=["Part","Mass, g","Ahead","Left","Up","Rides on","",""],e=_("table",{class:"parts",id:"parts"},_("caption",{class:"visually-hidden"},"Parts of the truck; places in mm from where the part's carrier counts. Arrow keys go through the list."),_("thead",{},_("tr",{},...i.map((t,n)=>_(t?"th":"td",t?{scope:"col",class:n>0&&n<5?"n":""}:{},t)))),_("tbody",{},...R.bench.rows.map(xy)));return _s(e,"tr",vy),e}var vy={key:""};function xy(i){let e=()=>ht({row:i.row}),t=(a,o,l,c,h,u={})=>{let d=_("input",{type:c,value:l,"aria-label":`${o} of ${i.name}`,"data-key":`${a}-${i.row}`,disabled:!i.here,onfocus:e,...u});return d.addEventListener("change",()=>d.checkValidity()?(Xt([{do:"set",part:i.name,key:a.startsWith("at")?`at_mm.${"xyz"[Number(a[2])]}`:a,value:h(d.value)}],`${o.toLowerCase()} of ${i.name}`).then(f=>{f||d.setAttribute("aria-invalid","true")}),!0):d.reportValidity()),d},n=(a,o)=>_("td",{class:"n"},i.at_mm?t(`at${a}`,o,String(i.at_mm[a]),"number",Number,{step:"any",min:-Wf,max:Wf,required:!0}):"–"),s=_("select",{"aria-label":`What ${i.name} rides on`,"data-key":`on-${i.row}`,disabled:!i.here||i.at_mm===null,onfocus:e},...R.bench.carriers.filter(a=>i.at_mm===null===a.endsWith("link")).map(a=>_("option",{value:a,selected:a===i.on},a)));s.addEventListener("change",()=>{Xt([{do:"set",part:i.name,key:"on",value:s.value}],`${i.name} rides on ${s.value}`)});let r=_("button",{type:"button","aria-label":`Remove ${i.name}`,"data-key":`remove-${i.row}`,disabled:!i.here,title:"Remove",onclick:()=>{Xt([{do:"remove",part:i.name}],`removed ${i.name}`)}},"✕");return _("tr",{class:`${i.row===R.view.row?"picked":""}${i.weighed?"":" computed"}`,"data-row":i.row},_("td",{},t("name","Name",i.name,"text",a=>a,{required:!0,maxlength:60})),_("td",{class:"n"},t("mass_g","Mass",qf(i),"number",Number,{step:"any",min:.001,max:1e5,required:!0,title:i.weighed?"as weighed":"from shape and material"})),n(0,"Place ahead"),n(1,"Place to the left"),n(2,"Height"),_("td",{},s),_("td",{class:"times"},i.pieces>1?`× ${i.pieces}`:""),_("td",{},r))}function $f(){let i=e=>gh(e.key,e.name,e.unit,e.value,[e.low,e.high,e.step],t=>({edit:[{do:"measure",key:e.key,value:t}],what:`${e.name.toLowerCase()} ${G(t,2)} ${e.unit}`}));return _("div",{class:"one"},_("h3",{},"Measures of the truck"),...R.bench.measures.flatMap(i))}async function yy(){let i=await ve.bench();R.bench=i,R.rows=i.rows,R.measures=i.measures,R.scene=i.scene,R.answers=i.answers;let e=Ff();lf(()=>e.repaint()),bf(),Dh();let t=new ml(e);Wh(),sf(e),$t?(document.documentElement.dataset.frozen="",Se("turn").step=String($t.turn_deg)):Vh([{id:"weights",name:"Weights",make:Xf},{id:"tune",name:"Changes",make:Cl("Changes",[{id:"changes",name:"Switches",make:qh},{id:"plan",name:"Best set",make:xf},{id:"list",name:"The list",make:df}])},{id:"measure",name:"Scale and board",make:Cl("Scale and board",[{id:"scales",name:"On the scale",make:wf},{id:"board",name:"On the board",make:Sf}])},{id:"maps",name:"Sweeps",make:_f},{id:"suspension",name:"Links",make:Of},{id:"course",name:"Course",make:rf}]),$t||(Bh(),mf(),ff()),nn(i),ht({tilt:25,heading:90}),i.recovered&&Ne("Unsaved work from last time is back on the bench. Undo steps through it.");let n=new ll(e,t);performance.mark("bench-ready"),document.documentElement.dataset.ready="",Object.assign(window,{benchWatch:{stage:e,lags:sr,replay:n}})}addEventListener("unhandledrejection",i=>{i.reason instanceof Be&&(i.preventDefault(),i.reason.status!==0&&i.reason.status!==409&&Ne(i.reason.message,"wrong"))});yy().catch(i=>{Se("notice").textContent=i instanceof Error?i.message:String(i),Se("notice").hidden=!1});
