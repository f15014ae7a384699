#include "engine/sheet/style.hpp"

namespace endbell::inline sheet {

namespace {

// Read on a phone in one hand, on a Letter or A4 page, in the dark, without colour: on a narrow screen each row of a
// table becomes a small card whose cells carry their column's name.
constexpr std::string_view style = R"(
:root{color-scheme:light dark;--paper:#fff;--ink:#141414;--soft:#555;--line:#bdbdbd;--band:#f3f3f3}
@media screen and (prefers-color-scheme:dark){
 :root{--paper:#141414;--ink:#ececec;--soft:#b3b3b3;--line:#5a5a5a;--band:#212121}
}
*{box-sizing:border-box}
html{-webkit-text-size-adjust:100%}
body{font:16px/1.5 system-ui,sans-serif;color:var(--ink);background:var(--paper);
 margin:0 auto;padding:1.25rem 1rem 2rem;max-width:51rem;overflow-wrap:anywhere}
h1{font-size:1.05rem;font-weight:600;color:var(--soft);margin:0 0 .75rem}
h2{font-size:1.05rem;line-height:1.3;margin:0 0 .5rem;break-after:avoid}
section{margin:1.6rem 0 0;padding:.7rem 0 0;border-top:1px solid var(--line)}
p,ul,ol,dl,table,figure{margin:.5rem 0}
ul,ol{padding-left:1.4rem}
li{margin:.15rem 0}
ol{padding-left:2.4rem}
ol li::marker{font-weight:700}
.decision{border:0;border-top:6px solid var(--ink);border-bottom:1px solid var(--ink);margin:0;padding:.6rem 0 .7rem}
.decision+section{border-top:0;margin-top:.9rem}
.decision h2{font-size:1rem;letter-spacing:.02em;margin:0}
.decision .what{font-size:1.7rem;line-height:1.2;font-weight:700;margin:.1rem 0 .5rem}
.decision ul{list-style:none;padding:0;margin:0}
table{border-collapse:collapse;width:100%;font-variant-numeric:tabular-nums;font-size:.92rem;line-height:1.4}
caption{caption-side:bottom;text-align:left;font-size:.85rem;color:var(--soft);padding-top:.35rem}
th,td{border-bottom:1px solid var(--line);padding:.3rem .9rem .3rem 0;text-align:left;vertical-align:top;
 unicode-bidi:isolate;overflow-wrap:break-word}
.wild{overflow-wrap:anywhere}
th:last-child,td:last-child{padding-right:0}
thead th{font-size:.8rem;color:var(--soft);font-weight:600;border-bottom:2px solid var(--ink);vertical-align:bottom;
 overflow-wrap:normal}
tbody th{font-weight:600}
tbody th.long{font-weight:400}
.amount{text-align:right;white-space:nowrap}
dl{display:grid;grid-template-columns:fit-content(9rem) 1fr;gap:.15rem 1rem}
dt{color:var(--soft)}
dd{margin:0}
dd,li{unicode-bidi:isolate}
.said{border-left:6px solid var(--ink);background:var(--band);padding:.4rem .7rem;margin:.4rem 0;break-inside:avoid}
.said b{letter-spacing:.04em}
.CAUTION{border-left-style:double}
.NOTICE{border-left-width:2px}
figcaption{font-size:.85rem;color:var(--soft)}
.scroll{overflow-x:auto}
.scroll:focus-visible,summary:focus-visible{outline:3px solid var(--ink);outline-offset:2px}
svg{display:block;height:auto}
svg text{fill:var(--ink)}
.chart{display:inline-block;vertical-align:top;width:100%;max-width:24rem}
.chart p{font-size:.85rem;color:var(--soft)}
.chart figcaption{color:var(--ink);margin-bottom:.4rem}
.chart svg{width:100%}
.chart svg text{font:11px system-ui,sans-serif}
.chart svg .strong{font-weight:700}
.box{fill:var(--paper);stroke:var(--ink)}
.axis{stroke:var(--line)}
.window{fill:var(--band);stroke:var(--ink)}
summary{padding:.6rem 0;cursor:pointer}
pre{white-space:pre-wrap;font-size:.85rem}
footer{margin-top:2rem;padding-top:.5rem;border-top:1px solid var(--line);font-size:.8rem;color:var(--soft)}
@media screen and (min-width:780px){
 .chart{width:48%}
 .chart+.chart{margin-left:3%}
 dl{grid-template-columns:fit-content(9rem) 1fr fit-content(9rem) 1fr}
}
@media screen and (max-width:600px){
 dl{grid-template-columns:6.5rem minmax(0,1fr);gap:.15rem .6rem}
 thead{position:absolute;clip-path:inset(50%);width:1px;height:1px;overflow:hidden}
 table{display:flex;flex-direction:column}
 tbody,tr,caption{display:block;width:100%}
 caption{order:1}
 tbody tr{border-top:1px solid var(--line);padding:.45rem 0}
 tbody th,td{display:block;border:0;padding:.05rem 0}
 td{display:grid;grid-template-columns:6.5rem minmax(0,1fr);gap:.6rem}
 .amount{text-align:left;white-space:normal}
 td::before{content:attr(data-of);color:var(--soft)}
}
@media print{
 @page{margin:9mm 12mm}
 html{font-size:8.3pt}
 body{font-size:1rem;line-height:1.24;padding:0;max-width:none}
 h1{margin-bottom:.4rem}
 table{line-height:1.2}
 dl{grid-template-columns:fit-content(9rem) 1fr fit-content(9rem) 1fr;gap:.05rem 1rem}
 section{margin-top:.5rem;padding-top:.25rem}
 section:last-of-type dl{font-size:.85rem;line-height:1.15;grid-template-columns:fit-content(11rem) 1fr}
 p,ul,ol,dl,table{margin:.25rem 0}
 th,td{padding-top:.1rem;padding-bottom:.1rem}
 thead{display:table-header-group}
 tr,li,dt,dd,figure,.decision,.chart{break-inside:avoid}
 h2+*{break-before:avoid}
 ul{columns:2;column-gap:1.5rem}
 .decision ul{columns:1}
 .said{padding:.1rem .5rem;margin:.15rem 0;print-color-adjust:exact}
 .chart{width:46%;max-width:none}
 .chart+.chart{margin-left:4%}
 .scroll{overflow:visible}
 .scroll svg{min-width:0!important}
 details{display:none}
 footer{margin-top:.5rem;padding-top:.25rem}
 .decision{padding:.35rem 0 .4rem}
 .decision .what{margin:.1rem 0 .3rem}
}
)";

}  // namespace

std::string_view page_style() {
    return style;
}

}  // namespace endbell::inline sheet
