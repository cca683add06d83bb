using Purlin.Report.Fonts;

namespace Purlin.Report.Page;

/// <summary>The look of the page: paper and ink, answers beside the house, one line a matter, pictures beside words.</summary>
internal static class PageStyle
{
    private static readonly Lazy<string> sheet = new(() => string.Concat(Face(Faces.Regular, "normal", 400), Face(Faces.Bold, "normal", 700), Face(Faces.Italic, "italic", 400), Rules));

    public static string Sheet() => sheet.Value;

    private static string Face(FontFace face, string style, int weight) =>
        $"@font-face{{font-family:'Atkinson Hyperlegible Next';font-style:{style};font-weight:{weight};src:url(data:font/ttf;base64,{Convert.ToBase64String(face.File.Span)}) format('truetype')}}";

    private const string Rules = """

        :root { --paper: #fbf8f1; --ink: #14213a; --quiet: #454f60; --rule: #77808f; --wash: #f2ecdf; --accent: #a3210c; }
        * { box-sizing: border-box; }
        html { background: var(--paper); color: var(--ink); font: 400 18px/1.5 'Atkinson Hyperlegible Next', 'Noto Sans', sans-serif; font-variant-numeric: tabular-nums; -webkit-text-size-adjust: 100%; }
        body { margin: 0; overflow-wrap: anywhere; hyphens: manual; }
        a { color: inherit; text-decoration-thickness: 1px; text-underline-offset: 0.18em; }
        a:focus-visible, summary:focus-visible, input:focus-visible { outline: 3px solid var(--ink); outline-offset: 3px; }
        .skip { position: absolute; left: -99rem; } .skip:focus { left: 1rem; top: 1rem; background: var(--paper); padding: 0.6rem; z-index: 3; }
        .unseen { position: absolute; clip-path: inset(50%); width: 1px; height: 1px; overflow: hidden; white-space: nowrap; }
        h1, h2, h3, h4 { line-height: 1.15; margin: 0; text-wrap: balance; }
        p { margin: 0 0 0.7rem; } dl, figure, fieldset { margin: 0; } dd { margin: 0; }
        svg { display: block; width: 100%; height: auto; } svg a { text-decoration: none; }
        .mark { margin: 0; padding: 0.5rem 1.2rem; text-align: center; font-weight: 700; border-bottom: 2px solid var(--ink); background: repeating-linear-gradient(135deg, var(--wash) 0 6px, var(--paper) 6px 12px); }
        body > header, main, footer { max-width: 68rem; margin: 0 auto; padding: 0 clamp(1rem, 4vw, 3rem); }
        body > header { padding-top: 1.4rem; }
        .kind, .house { margin: 0; color: var(--quiet); } .kind { color: var(--ink); }
        h1 { font-size: clamp(1.7rem, 4.6vw, 2.9rem); letter-spacing: -0.015em; margin: 0.15rem 0 0.3rem; }
        main { border-top: 4px solid var(--ink); margin-top: 1rem; padding-bottom: 3rem; }
        .opening { display: grid; grid-template-columns: minmax(0, 1.15fr) minmax(0, 1fr); gap: 2.2rem; align-items: center; padding: 1.2rem 0 0.4rem; }
        .answer { padding: 0.9rem 0; border-bottom: 1px solid var(--rule); } .answer:last-child { border: 0; } .answer p { margin: 0.15rem 0 0; }
        .answer h2 { font: 400 1rem/1.4 inherit; font-family: inherit; color: var(--quiet); }
        .reply { font-size: 1.5rem; line-height: 1.25; font-weight: 700; }
        .chapter { margin: 0 0 2.6rem; } .chapter > h2, .list-head { font-size: clamp(1.35rem, 3vw, 1.8rem); padding: 1.3rem 0 0.7rem; }
        .chapter > h3, .reference > h3 { font-size: 1.15rem; margin: 1.4rem 0 0.4rem; }
        .lead { font-size: 1.1rem; max-width: 44rem; } .aside { font-size: 0.92rem; color: var(--quiet); } .chapter > p, .reference > p, .reference li { max-width: 46rem; }
        .drawing { margin: 1rem auto 1.4rem; max-width: 52rem; } figcaption { font-size: 0.92rem; line-height: 1.4; color: var(--quiet); margin-top: 0.4rem; } .upright { display: none; } .number { font-weight: 700; }

        table { width: 100%; border-collapse: collapse; margin: 0.8rem 0 1.6rem; font-size: 0.97rem; line-height: 1.4; table-layout: fixed; }
        caption { text-align: left; padding-bottom: 0.4rem; font-weight: 700; } .list caption { font-weight: 400; color: var(--quiet); font-size: 0.92rem; }
        th, td { text-align: left; vertical-align: top; padding: 0.42rem 0.9rem 0.46rem 0; border-bottom: 1px solid var(--rule); } thead th { border-bottom: 2px solid var(--ink); font-size: 0.86rem; color: var(--quiet); }
        .fine { font-size: 0.9rem; } .fine li { margin-bottom: 0.2rem; }
        .list th:first-child { width: 9.5rem; } .list thead th:nth-child(2) { width: 46%; } .list a { display: flex; gap: 0.6rem; align-items: baseline; text-decoration: none; min-height: 1.7rem; } .list a:hover bdi { text-decoration: underline; }
        .list .number { min-width: 2.3rem; text-align: right; padding: 0 0.4rem; } .heavy .number { background: var(--accent); color: #fff; } .bars { min-width: 2.1rem; letter-spacing: 0.06em; font-weight: 700; } .heavy .bars { color: var(--accent); }
        .filter { border: 1px solid var(--rule); padding: 0 1rem; margin: 0 0 1rem; } .filter[open] { padding-bottom: 1rem; } fieldset { border: 0; padding: 0.3rem 0; display: flex; flex-wrap: wrap; gap: 0 1.2rem; } legend { color: var(--quiet); font-size: 0.92rem; padding: 0; } label { display: inline-flex; gap: 0.45rem; align-items: center; min-height: 2.1rem; } input { width: 1.15rem; height: 1.15rem; accent-color: var(--ink); }
        summary { cursor: pointer; padding: 0.7rem 0; min-height: 44px; font-weight: 700; } summary h2 { display: inline; font-size: 1.35rem; }
        .reference { border-top: 2px solid var(--ink); } .reference:last-of-type { border-bottom: 2px solid var(--ink); } .folded summary { font-weight: 400; text-decoration: underline; text-underline-offset: 0.18em; text-decoration-thickness: 1px; padding: 0.4rem 0; }

        .weighing { padding: 1.6rem 0 0.2rem; } .weighing h3 { font-size: 1.5rem; margin: 0 0 0.2rem; } .weighing p { color: var(--quiet); }
        .matter { border-top: 2px solid var(--ink); padding: 1rem 0 1.4rem; scroll-margin-top: 0.5rem; display: grid; grid-template-columns: 10.5rem minmax(0, 1fr); column-gap: 1.8rem; align-content: start; }
        .matter h4 { grid-column: 1 / -1; display: flex; gap: 0.9rem; align-items: center; font-size: 1.4rem; margin-bottom: 0.8rem; } .balloon { flex: none; width: 3rem; }
        .rail { font-size: 0.95rem; line-height: 1.35; grid-row: span 3; } .rail div { margin-bottom: 0.55rem; } .rail dt, .parts dt { color: var(--quiet); font-size: 0.86rem; } .rail dd { font-weight: 700; } .rail .thing dd { font-weight: 400; } .accent { color: var(--accent); }
        .two { display: grid; grid-template-columns: minmax(0, 1fr) minmax(0, 1.05fr); gap: 1.6rem; align-items: start; } .two > .words:only-child { grid-column: 1 / -1; max-width: 44rem; }
        .parts { display: grid; gap: 0.7rem; margin-bottom: 0.7rem; } .parts p { margin: 0 0 0.25rem; } .parts dt { font-weight: 700; color: var(--ink); font-size: 0.95rem; } .do { border-left: 4px solid var(--ink); padding-left: 0.8rem; }
        .back { margin: 0; font-size: 0.92rem; } .back a { display: inline-block; padding: 0.4rem 0; } .entry { color: var(--quiet); font-size: 0.86rem; } .matter > .folded, .matter > .back { grid-column: 2; }
        .pictures { display: grid; gap: 1rem; } .pictures.small { grid-template-columns: repeat(auto-fill, minmax(min(100%, 14rem), 1fr)); margin: 0.6rem 0 1.4rem; }
        .pictures img { display: block; width: 100%; height: auto; border: 1px solid var(--ink); background: var(--wash); } .missing { border: 1px dashed var(--rule); padding: 1rem; margin: 0; } .close { display: none; }
        figure:target { position: fixed; inset: 0; z-index: 2; background: var(--paper); padding: 1rem; overflow: auto; } figure:target img { width: auto; max-width: 100%; max-height: 82vh; margin: 0 auto; } figure:target figcaption { max-width: 44rem; margin: 0.5rem auto; } figure:target .close { display: block; text-align: center; padding: 0.6rem; }
        .job { display: grid; grid-template-columns: 12rem minmax(0, 1fr) 10rem; gap: 1.4rem; padding: 1rem 0; border-top: 1px solid var(--rule); } .job > div:first-child:not(.pictures) { grid-column: 1 / 3; } .blanks div { border-bottom: 1px solid var(--ink); min-height: 2.6rem; } .blanks dt { color: var(--quiet); font-size: 0.86rem; }
        .sheet { break-before: page; } .steps { padding-left: 1.4rem; }
        footer { border-top: 4px solid var(--ink); padding-top: 0.8rem; padding-bottom: 2rem; font-size: 0.86rem; color: var(--quiet); }

        @media (max-width: 56rem) { .two { grid-template-columns: minmax(0, 1fr); } .matter { grid-template-columns: minmax(0, 1fr); } .matter > .folded, .matter > .back { grid-column: 1; } .rail { display: grid; grid-template-columns: repeat(auto-fit, minmax(9rem, 1fr)); gap: 0 1rem; grid-row: auto; } }
        @media (max-width: 44rem) {
          .opening { grid-template-columns: minmax(0, 1fr); gap: 0.6rem; } .wide { display: none; } .upright { display: block; } .reply { font-size: 1.3rem; } .job { grid-template-columns: minmax(0, 1fr); } .job > div:first-child:not(.pictures) { grid-column: 1; }
          table, tbody, tr, th, td, caption { display: block; } thead { position: absolute; clip-path: inset(50%); width: 1px; height: 1px; overflow: hidden; } tbody tr { border-bottom: 1px solid var(--rule); padding: 0.5rem 0; } tbody th, td { border: 0; padding: 0.1rem 0; }
          td::before { content: attr(data-label); color: var(--quiet); } .list td { display: inline; font-size: 0.9rem; color: var(--quiet); } .list td::before { content: none; } .list td:not(:last-child)::after { content: " \00B7"; } .list tbody tr { display: flex; flex-wrap: wrap; column-gap: 0.3rem; padding-left: 2.9rem; } .list tbody th { flex: 0 0 calc(100% + 2.9rem); margin-left: -2.9rem; order: -1; } .list .when::before { content: none; }
        }
        @media print {
          @page { size: letter; margin: 14mm 14mm 16mm; }
          html { background: #fff; font-size: 9.6pt; } .skip, .filter, .back, .close, .folded { display: none; } .wide { display: block; } .upright { display: none; }
          body > header, main, footer { max-width: none; padding: 0; } .matter, tr, figure, .job { break-inside: avoid; } .matter { grid-template-columns: 8rem minmax(0, 1fr); } .two { grid-template-columns: minmax(0, 1fr) minmax(0, 1.05fr); } .rail { display: block; } h2, h3, h4, .weighing { break-after: avoid; }
          .pictures img { max-height: 8cm; width: auto; max-width: 100%; } .reference[open] { columns: 2; font-size: 8pt; } figure:target { position: static; }
        }
        """;
}
