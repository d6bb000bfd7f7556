using Gylebook.Pictures.Drawing;

namespace Gylebook.Pictures.Labels;

/// <summary>A label's lines, as they are printed.</summary>
/// <param name="Name">The beer's.</param>
/// <param name="Strength">How strong.</param>
/// <param name="Lines">All else, a paragraph each.</param>
/// <param name="Code">A square code as SVG; null for none.</param>
public sealed record PrintedLabel(string Name, string Strength, IReadOnlyList<string> Lines, string? Code);

/// <summary>Labels on A4, ten on a page, as a page of its own without a script.</summary>
public static class LabelSheetHtml
{
    /// <summary>Labels on one page.</summary>
    public const int OnAPage = 10;

    /// <summary>How it looks.</summary>
    public const string StyleSheet = """
        @page { size: A4; margin: 8mm; }
        * { box-sizing: border-box; }
        body { margin: 0; font: 8.5pt/1.3 system-ui, sans-serif; color: #000; background: #fff; }
        .sheet { display: grid; grid-template-columns: 1fr 1fr; gap: 3mm; width: 194mm; margin: 0 auto; }
        .label { height: 53mm; border: .3mm solid #777; padding: 3mm; overflow: hidden; display: grid; grid-template-rows: auto 1fr; break-inside: avoid; }
        .top { display: flex; justify-content: space-between; align-items: baseline; border-bottom: .4mm solid #000; }
        .top b { font: 600 13pt Georgia, serif; }
        .low { display: grid; grid-template-columns: 1fr auto; gap: 2mm; }
        p { margin: 1mm 0 0; }
        svg { width: 18mm; height: 18mm; align-self: end; }
        .help { max-width: 194mm; margin: 4mm auto; font-size: 10pt; }
        @media print { .help { display: none; } }
        """;

    /// <summary>The page.</summary>
    /// <param name="label">What stands on each.</param>
    /// <param name="count">How many.</param>
    /// <param name="style">Address of <see cref="StyleSheet"/>.</param>
    public static string Page(PrintedLabel label, int count, string style)
    {
        ArgumentNullException.ThrowIfNull(label);
        MarkupPen pen = new();
        pen.Raw("<!doctype html>\n");
        pen.Start("html", ("lang", "en"));
        pen.Start("head");
        pen.Element("meta", ("charset", "utf-8"));
        pen.Element("meta", ("name", "viewport"), ("content", "width=device-width"));
        pen.Words("title", $"{label.Name}: labels");
        pen.Element("link", ("rel", "stylesheet"), ("href", style));
        pen.End("head");
        pen.Start("body");
        pen.Words("p", Invariant($"{count} labels, {OnAPage} on a page of A4: print without margins of the browser. Starch paste or milk holds them on glass and comes off in warm water."), ("class", "help"));
        pen.Start("main", ("class", "sheet"));
        for (int i = 0; i < count; i++)
        {
            One(pen, label);
        }

        pen.End("main");
        pen.End("body");
        pen.End("html");
        return pen.ToString();
    }

    private static void One(MarkupPen pen, PrintedLabel label)
    {
        pen.Start("div", ("class", "label"));
        pen.Start("div", ("class", "top"));
        pen.Words("b", label.Name);
        pen.Words("span", label.Strength);
        pen.End("div");
        pen.Start("div", ("class", "low"));
        pen.Start("div");
        foreach (string line in label.Lines)
        {
            pen.Words("p", line);
        }

        pen.End("div");
        if (label.Code is { } code)
        {
            pen.Raw(code);
        }

        pen.End("div");
        pen.End("div");
    }
}
