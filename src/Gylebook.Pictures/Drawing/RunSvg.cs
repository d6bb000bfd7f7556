using Gylebook.Engine.State;

namespace Gylebook.Pictures.Drawing;

/// <summary>Draws the run as SVG: to stand in a page, whose colours it takes on, or as a file of its own.</summary>
/// <remarks>
/// The same picture always gives the same text. No style attributes and no scripts, so that a page with a strict content
/// policy can carry it; a file of its own has one style sheet, for light and dark.
/// </remarks>
public static class RunSvg
{
    /// <summary>For a page or a print: names of additions at the left, the ribbon, words at the right.</summary>
    /// <param name="picture">What to draw.</param>
    /// <param name="id">Begins the ids in the drawing; two drawings in one page need two.</param>
    /// <param name="standalone">Whether it is a file of its own.</param>
    /// <param name="link">Where a stage's name leads; null for nowhere.</param>
    public static string Wide(RunPicture picture, string id = "run", bool standalone = false, Func<Stage, string>? link = null) =>
        Drawn(picture, RunFrame.Wide, id, standalone, link);

    /// <summary>For a telephone: the ribbon at the left edge, words beside it, no letter smaller than 12 px at 360 px.</summary>
    /// <inheritdoc cref="Wide"/>
    public static string Narrow(RunPicture picture, string id = "run-narrow", bool standalone = false, Func<Stage, string>? link = null) =>
        Drawn(picture, RunFrame.Narrow, id, standalone, link);

    private static string Drawn(RunPicture picture, RunFrame frame, string id, bool standalone, Func<Stage, string>? link)
    {
        RunLayout layout = new(picture, frame);
        layout.Place();
        string size = $"0 0 {MarkupPen.Number(frame.Width)} {MarkupPen.Number(layout.Height)}";
        string label = $"{picture.Recipe}: the run from water to glass";
        MarkupPen pen = new();
        pen.Start(
            "svg", ("xmlns", "http://www.w3.org/2000/svg"), ("viewBox", size), ("width", standalone ? frame.Width : "100%"),
            // With links in it, it is no single image any more.
            ("role", link is null ? "img" : "group"), ("aria-label", label), ("font-family", Ink.Sans));
        pen.Words("title", label);
        pen.Words("desc", InWords(picture));
        if (standalone)
        {
            pen.Words("style", Ink.Alone);
        }

        new RunInk(picture, frame, layout, pen, id, link).Draw();
        pen.End("svg");
        return pen.ToString();
    }

    /// <summary>The run in sentences, for those who hear it.</summary>
    private static string InWords(RunPicture picture) => picture.Trunk.Count == 0
        ? "This recipe cannot be brewed as it is; there is no run to draw."
        : string.Join(" ", picture.Steps.Select(step =>
            $"{step.Name}{(picture.Branches.Count > 0 && step.Portion != "main" ? $" ({step.Portion})" : "")}: {picture.Shown.Litres(step.Litres)}"
            + string.Concat(step.Losses.Select(l => $", {l.Text(picture.Shown)}")) + "."));
}
