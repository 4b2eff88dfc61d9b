// SPDX-License-Identifier: MIT
#include "ui/report/htmlstyle.h"

#include "ui/theme/roles.h"

namespace cradlepost {

namespace {

constexpr char16_t rules[] = uR"(
* { box-sizing: border-box; }
html { font: 15px/1.45 "Inter", "Noto Sans", "Noto Sans Devanagari", "Noto Sans Arabic", system-ui, sans-serif; }
body { margin: 0; background: var(--paper); color: var(--ink); overflow-wrap: anywhere; }
main { max-width: 860px; margin: 0 auto; padding: 32px 24px 48px; }
h1 { font-size: 40px; line-height: 1.15; font-weight: 600; margin: 4px 0; }
h2 { font-size: 20px; line-height: 1.3; font-weight: 600; margin: 40px 0 12px; }
h3 { font-size: 15px; font-weight: 600; margin: 0 0 12px; }
p { margin: 0 0 8px; max-width: 46em; }
.where { font-size: 17px; font-weight: 600; color: var(--soft); margin: 0; }
.hint, .small { color: var(--hint); }
.small { font-size: 13px; }
.sentences { list-style: none; padding: 0; margin: 16px 0 0; font-size: 17px; }
.sentences li { margin: 0 0 8px; }
.sentences a { color: inherit; text-decoration-color: var(--hint); text-underline-offset: 3px; }
a:focus-visible, summary:focus-visible { outline: 2px solid var(--accent); outline-offset: 2px; }
figure { margin: 24px 0; padding: 16px; background: var(--sheet); border: 1px solid var(--line); border-radius: 6px; }
.beside { display: grid; grid-template-columns: repeat(auto-fit, minmax(300px, 1fr)); gap: 24px; margin: 24px 0; }
.beside figure { margin: 0; }
svg { display: block; width: 100%; height: auto; }
svg text { font-family: inherit; }
svg.light { background: #ffffff; }
figure .small { margin: 12px 0 0; }
details { margin: 12px 0 0; }
summary { cursor: pointer; font-size: 13px; color: var(--accent); }
.scroll { overflow-x: auto; margin: 8px 0; }
table { border-collapse: collapse; font-size: 13px; line-height: 1.35; }
caption { text-align: start; font-size: 15px; font-weight: 600; padding: 0 0 8px; }
th, td { padding: 4px 14px 4px 0; text-align: start; vertical-align: top; border-bottom: 1px solid var(--line); }
thead th { color: var(--soft); font-weight: 600; border-bottom-color: var(--edge); }
tbody th { font-weight: 400; }
.n { text-align: end; font-variant-numeric: tabular-nums; }
footer { margin-top: 40px; }
footer h2 { font-size: 15px; margin: 24px 0 8px; }
code { overflow-wrap: anywhere; }
@media print {
  html { font-size: 10.5pt; }
  body { background: none; }
  main { max-width: none; padding: 0; }
  figure { border: 0; padding: 0; }
  details:not([open]) { display: none; }
  figure, tr { break-inside: avoid; }
  h1, h2, h3, caption { break-after: avoid; }
  thead { display: table-header-group; }
}
)";

QString variables(const Roles& roles)
{
    const std::pair<const char*, QColor> all[]
        = {{"paper", roles.paper}, {"sheet", roles.sheet}, {"ink", roles.ink}, {"soft", roles.inkSoft},
            {"hint", roles.inkHint}, {"line", roles.line}, {"edge", roles.edge}, {"accent", roles.accent}};
    QString out;
    for (const auto& [name, colour] : all)
        out += QStringLiteral("--%1: %2; ").arg(QLatin1String(name), colour.name());
    return out;
}

}

QString htmlStyle(const QString& light, const QString& dark)
{
    return QStringLiteral(":root { color-scheme: light dark; ") + variables(lightRoles()) + light
        + QStringLiteral("}\n@media screen and (prefers-color-scheme: dark) { :root { ")
        + variables(darkRoles()) + dark + QStringLiteral("} }") + QString::fromUtf16(rules);
}

}
