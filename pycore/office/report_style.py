"""The look of the report: on a screen in both themes, and on paper."""

from __future__ import annotations

# Contrasts as in the app: text at least 7 to 1, lines 4.5 to 1.
_LIGHT = (
    "--paper:#f4f1e8;--card:#fff;--ink:#14171c;--ink-2:#41474f;--line:#656b74;--faint:#d9d5c8;"
    "--panel:#22306e;--on-panel:#fff;--band:#d3dcf5;--weak:#00505f;--strong:#853500;--fine:#22306e;"
    "--water:#7fa3d6;--concentrate:#22306e;--rest:#e4e0d4"
)
_DARK = (
    "--paper:#10131a;--card:#1b2030;--ink:#f3f1ea;--ink-2:#bfc4cc;--line:#8c93a0;--faint:#333a4d;"
    "--panel:#22306e;--on-panel:#fff;--band:#2a3a78;--weak:#6fd3e3;--strong:#ffb27a;--fine:#a9b8ff;"
    "--water:#5f86c4;--concentrate:#f2c14e;--rest:#2a2f3d"
)

STYLE = (
    f":root{{color-scheme:light dark;{_LIGHT}}}"
    f"@media screen and (prefers-color-scheme:dark){{:root{{{_DARK}}}}}"
    "*{box-sizing:border-box}"
    "body{margin:0;background:var(--paper);color:var(--ink);line-height:1.5;"
    "font:1rem/1.5 system-ui,-apple-system,'Segoe UI',Roboto,'DejaVu Sans',Arial,sans-serif}"
    "header{background:var(--panel);color:var(--on-panel);"
    "padding:1.5rem max(1rem,calc(50% - 26rem))}"
    "header h1{margin:0;font-size:2rem;line-height:1.2}header p{margin:.4rem 0 0}"
    "main{max-width:54rem;margin:0 auto;padding:0 1rem 2rem}"
    "h2{margin:2.2rem 0 .6rem;font-size:1.4rem;border-bottom:3px solid var(--ink);"
    "padding-bottom:.2rem}"
    "h3{margin:1.6rem 0 .3rem;font-size:1.15rem}h4{margin:.8rem 0 0;font-size:1rem}"
    "section.machine{background:var(--card);border:1px solid var(--line);border-radius:4px;"
    "padding:.2rem 1rem 1rem;margin:1rem 0}"
    "table{border-collapse:collapse;width:100%;background:var(--card)}"
    ".wide{overflow-x:auto}th,td{text-align:left;padding:.35rem .6rem;vertical-align:top;"
    "border-bottom:1px solid var(--faint)}th{border-bottom:2px solid var(--ink);font-size:.9rem}"
    "td.n,th.n{text-align:right;font-variant-numeric:tabular-nums;white-space:nowrap}"
    "tfoot td{border-top:2px solid var(--ink);font-weight:700}"
    ".note{color:var(--ink-2);font-size:.9rem}"
    ".invented{background:var(--ink);color:var(--paper);padding:.5rem 1rem;font-weight:700;"
    "text-align:center;margin:0}"
    "ul{padding-left:1.2rem;margin:.4rem 0}li{margin:.2rem 0}"
    ".state{white-space:nowrap;font-weight:700}.state svg{width:1rem;height:1rem;"
    "margin-right:.35rem;vertical-align:-.1em}"
    "svg.chart{display:block;width:100%;height:auto;overflow:visible}"
    ".band{fill:var(--band)}.rest{fill:var(--rest)}.grid{stroke:var(--faint);fill:none}"
    ".tick{fill:var(--ink-2);font-size:11px}.line{stroke:var(--line);fill:none;stroke-width:1.2}"
    ".doubt{stroke:var(--line);fill:none;stroke-width:.8;opacity:.5}"
    ".mark{fill:var(--ink-2)}.mark.weak{fill:var(--weak)}.mark.strong{fill:var(--strong)}"
    ".mark.in_range{fill:var(--fine)}"
    ".water{fill:var(--water)}.concentrate{fill:var(--concentrate)}"
    ".key{display:inline-block;width:.8rem;height:.8rem;margin:0 .3rem 0 .8rem;border:1px solid"
    " var(--line)}.key.water{background:var(--water)}"
    ".key.concentrate{background:var(--concentrate)}"
    ".key.band{background:var(--band)}.key.rest{background:var(--rest)}"
    "@page{size:A4;margin:14mm}"
    "@media print{body{background:#fff;font-size:10pt;-webkit-print-color-adjust:exact;"
    "print-color-adjust:exact}main{max-width:none;padding:0}header{padding:6mm}"
    "section.machine,table,.keep,tr{break-inside:avoid}h2,h3{break-after:avoid}"
    ".wide{overflow:visible}}"
)
