using Purlin.Report.Fonts;

namespace Purlin.Report.Page;

/// <summary>The look of the page: paper and ink, one column of text with a margin for sources, drawings as wide as the sheet.</summary>
internal static class PageStyle
{
    private static readonly Lazy<string> sheet = new(() => string.Concat(Face(Faces.Regular, "normal", 400), Face(Faces.Bold, "normal", 700), Face(Faces.Italic, "italic", 400), Rules));

    public static string Sheet() => sheet.Value;

    private static string Face(FontFace face, string style, int weight) =>
        $"@font-face{{font-family:'Atkinson Hyperlegible Next';font-style:{style};font-weight:{weight};src:url(data:font/ttf;base64,{Convert.ToBase64String(face.File.Span)}) format('truetype')}}";

    private const string Rules = """

        :root { --paper: #fbf8f1; --ink: #14213a; --quiet: #454f60; --rule: #77808f; --wash: #f2ecdf; --accent: #b3260f; }
        * { box-sizing: border-box; }
        html { background: var(--paper); color: var(--ink); font: 400 18px/1.5 'Atkinson Hyperlegible Next', 'Noto Sans', sans-serif; font-variant-numeric: tabular-nums; -webkit-text-size-adjust: 100%; }
        body { margin: 0; overflow-wrap: break-word; hyphens: manual; }
        a { color: inherit; text-decoration-thickness: 1px; text-underline-offset: 0.18em; }
        a:focus-visible { outline: 3px solid var(--ink); outline-offset: 3px; }
        .skip { position: absolute; left: -99rem; } .skip:focus { left: 1rem; top: 1rem; background: var(--paper); padding: 0.6rem; }
        h1, h2, h3, h4, h5 { line-height: 1.15; margin: 0; text-wrap: balance; }
        p { margin: 0 0 0.8rem; }
        svg { display: block; width: 100%; height: auto; }
        svg a { text-decoration: none; }
        figure { margin: 0; }
        .mark { margin: 0; padding: 0.55rem 1.2rem; text-align: center; font-weight: 700; border-bottom: 2px solid var(--ink); background: repeating-linear-gradient(135deg, var(--wash) 0 6px, var(--paper) 6px 12px); }

        .cover { max-width: 74rem; margin: 0 auto; padding: clamp(0.7rem, 2.4vw, 2.2rem); }
        .frame { border: 3px solid var(--ink); outline: 1px solid var(--ink); outline-offset: -10px; padding: clamp(1.1rem, 3.4vw, 3rem) clamp(1rem, 3.4vw, 3rem) 10px; }
        .heading { display: grid; gap: 0.35rem; }
        .kind { margin: 0; font-size: 1rem; letter-spacing: 0.02em; }
        h1 { font-size: clamp(1.9rem, 5.4vw, 3.7rem); letter-spacing: -0.02em; line-height: 1.02; }
        .house { margin: 0; color: var(--quiet); }
        .front { margin: clamp(1rem, 3vw, 2.4rem) auto; max-width: 60rem; }
        .block { margin: 0 calc(-1 * clamp(1rem, 3.4vw, 3rem) + 10px); display: grid; grid-template-columns: repeat(3, 1fr); border-top: 2px solid var(--ink); }
        .block div { padding: 0.5rem 0.9rem 0.65rem; border-right: 1px solid var(--ink); border-bottom: 1px solid var(--ink); margin: 0 -1px -1px 0; }
        .block dt { font-size: 0.8rem; color: var(--quiet); } .block dd { margin: 0; font-weight: 700; line-height: 1.25; }
        .block .seal { grid-column: 1 / -1; } .block .seal dd { font-weight: 400; }

        main { max-width: 74rem; margin: 0 auto; padding: 0 clamp(1rem, 4vw, 3.4rem) 4rem; }
        .contents { margin: 1rem 0 3rem; } .contents h2 { font-size: 1.15rem; border: 0; padding: 0; margin: 0 0 0.5rem; }
        .contents h2::after { content: none; }
        .contents ol { margin: 0; padding: 0; list-style: none; columns: 17rem; column-gap: 2.4rem; }
        .contents a { display: block; padding: 0.5rem 0; min-height: 44px; border-bottom: 1px solid var(--rule); text-decoration: none; break-inside: avoid; }
        .contents a:hover { text-decoration: underline; }
        .chapter { margin: 0 0 5rem; }
        .chapter > *, .weight > .meaning { max-width: 44rem; } .chapter > table, .chapter > .map, .chapter > .weight, .chapter > h2, .chapter > .several, .chapter > .drawing { max-width: none; }
        h2 { font-size: clamp(1.7rem, 4vw, 2.6rem); letter-spacing: -0.015em; padding-bottom: 0.3rem; margin-bottom: 1.6rem; border-bottom: 4px solid var(--ink); position: relative; }
        h2::after { content: ""; position: absolute; left: 0; right: 0; top: calc(100% + 4px); height: 10px; background: repeating-linear-gradient(135deg, var(--ink) 0 1px, transparent 1px 6px); -webkit-mask: repeating-linear-gradient(90deg, #000 0 22px, transparent 22px 38px); mask: repeating-linear-gradient(90deg, #000 0 22px, transparent 22px 38px); }
        .lead { font-size: 1.3rem; line-height: 1.4; margin: 2rem 0 1.6rem; }
        .chapter h3 { font-size: 1.35rem; margin: 2.4rem 0 0.7rem; }
        .aside { font-size: 0.9rem; color: var(--quiet); }
        .map, .drawing { margin: 2.6rem auto 3rem; } .map { max-width: 60rem !important; }
        figcaption { font-size: 0.92rem; line-height: 1.4; color: var(--quiet); margin-top: 0.5rem; max-width: 44rem; }
        .number { font-weight: 700; color: var(--ink); }
        .upright { display: none; }

        .weight > h3 { font-size: 1.7rem; margin: 3.4rem 0 0.2rem; } .meaning { color: var(--quiet); margin-bottom: 1.6rem; }
        .matter { display: grid; grid-template-columns: 4.4rem minmax(0, 38rem) minmax(12rem, 1fr); column-gap: 1.6rem; padding: 1.9rem 0 2.2rem; border-top: 1px solid var(--ink); break-inside: auto; scroll-margin-top: 1rem; }
        .balloon-large svg { width: 4.4rem; }
        h4 { font-size: 1.45rem; margin: 0.5rem 0 1.1rem; } h4 .number { position: absolute; clip-path: inset(50%); width: 1px; height: 1px; overflow: hidden; }
        dl { margin: 0; } .parts { display: grid; gap: 0.75rem; margin-bottom: 1.1rem; }
        .part { display: grid; grid-template-columns: 8.2rem minmax(0, 1fr); column-gap: 1.1rem; } .part dt { color: var(--quiet); font-size: 0.92rem; padding-top: 0.1rem; } .part dd { margin: 0; }
        .do { border-left: 4px solid var(--ink); padding: 0.5rem 0 0.55rem 0.9rem; margin-left: calc(-0.9rem - 4px); background: var(--wash); } .do dd { font-weight: 700; }
        .caution, .then { border-top: 1px solid var(--rule); padding-top: 0.6rem; margin-top: 0.9rem; }
        .margin { font-size: 0.86rem; line-height: 1.42; color: var(--quiet); border-left: 1px solid var(--rule); padding-left: 1.1rem; }
        h5 { font-size: 0.86rem; color: var(--ink); margin: 0.9rem 0 0.25rem; } h5:first-child { margin-top: 0.6rem; }
        .margin ul, .margin ol { margin: 0; padding: 0; list-style: none; } .margin li { margin-bottom: 0.35rem; } .margin p { margin: 0.5rem 0; }
        .entry { display: block; font-size: 0.78rem; }
        .pictures { display: grid; gap: 1.4rem; margin: 1.3rem 0 0.5rem; }
        .several { grid-template-columns: repeat(auto-fill, minmax(min(100%, 17rem), 1fr)); }
        .pictures img { display: block; width: 100%; height: auto; border: 1px solid var(--ink); background: var(--wash); }
        .missing { border: 1px dashed var(--rule); padding: 1.2rem; margin: 0; }

        table { table-layout: fixed; width: 100%; border-collapse: collapse; margin: 1.4rem 0 2.4rem; font-size: 0.95rem; line-height: 1.42; }
        caption { text-align: left; padding-bottom: 0.5rem; max-width: 44rem; font-weight: 700; }
        th, td { text-align: left; vertical-align: top; padding: 0.55rem 1.1rem 0.6rem 0; border-bottom: 1px solid var(--rule); } thead th { border-bottom: 2px solid var(--ink); font-size: 0.86rem; color: var(--quiet); } tbody th { font-weight: 700; }
        .fine { font-size: 0.86rem; } .fine li { margin-bottom: 0.15rem !important; }
        .steps li, .chapter > ul li { margin-bottom: 0.5rem; } .chapter > ul, .steps { padding-left: 1.3rem; }
        footer { border-top: 4px solid var(--ink); padding: 1rem clamp(1rem, 4vw, 3.4rem) 2rem; font-size: 0.86rem; color: var(--quiet); }

        @media (max-width: 68rem) { .matter { grid-template-columns: 3.6rem minmax(0, 1fr); } .balloon-large svg { width: 3.6rem; } .margin { grid-column: 2; border-left: 0; border-top: 1px solid var(--rule); padding: 0.4rem 0 0; margin-top: 1.2rem; } }
        @media (max-width: 44rem) {
          .wide { display: none; } .upright { display: block; }
          .frame { outline-offset: -7px; padding-bottom: 7px; } .block { margin: 0 calc(-1 * clamp(1rem, 3.4vw, 3rem) + 7px); grid-template-columns: 1fr; } .block div { border-right: 0; }
          .front, .map { margin-left: -0.4rem; margin-right: -0.4rem; }
          .matter { grid-template-columns: minmax(0, 1fr); } .balloon-large { margin-bottom: 0.4rem; } .margin { grid-column: 1; } .part { grid-template-columns: minmax(0, 1fr); } .do { margin-left: 0; }
          table, tbody, tr, th, td, caption { display: block; } thead { position: absolute; clip-path: inset(50%); width: 1px; height: 1px; overflow: hidden; } tbody tr { border-bottom: 1px solid var(--rule); padding: 0.6rem 0; } tbody th, td { border: 0; padding: 0.1rem 0; }
          td::before { content: attr(data-label) ": "; color: var(--quiet); }
        }
        @media print {
          @page { size: letter; margin: 16mm 16mm 18mm; }
          html { background: #fff; font-size: 10.5pt; } .skip, .contents { display: none; } .wide { display: block; } .upright { display: none; }
          .cover, main { max-width: none; padding: 0; } .cover { break-after: page; } .chapter { break-before: page; } .matter, tr, figure { break-inside: avoid; } .matter { grid-template-columns: 3.4rem minmax(0, 1fr); } .margin { grid-column: 2; border-left: 0; } h2, h3, h4 { break-after: avoid; }
        }
        """;
}
