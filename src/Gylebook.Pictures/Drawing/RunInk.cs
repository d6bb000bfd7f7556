using Gylebook.Engine.Readouts;
using Gylebook.Engine.State;
using static Gylebook.Pictures.Drawing.MarkupPen;

namespace Gylebook.Pictures.Drawing;

/// <summary>Puts a layout on paper: strokes first, the ribbon over them, words last.</summary>
internal sealed class RunInk(RunPicture picture, RunFrame frame, RunLayout layout, MarkupPen pen, string id, Func<Stage, string>? link)
{
    private const double Top = 4;

    /// <summary>Less than that beside the ribbon's own edge, a dashed line could not be told from it, px.</summary>
    private const double LeastGhost = 0.4;

    /// <summary>Draws all.</summary>
    public void Draw()
    {
        for (int i = 0; i < layout.Levels.Count; i++)
        {
            DrawStrokes(i);
        }

        for (int i = 0; i < layout.Levels.Count; i++)
        {
            DrawRibbons(i);
        }

        for (int i = 0; picture.Ghost is not null && i < layout.Levels.Count; i++)
        {
            DrawGhost(i, picture.Ghost);
        }

        RunText words = new(picture, frame, pen, link);
        foreach (RunLevel level in layout.Levels)
        {
            DrawBands(level);
            words.Draw(level);
        }
    }

    private void DrawRibbons(int i)
    {
        RunLevel level = layout.Levels[i];
        for (int ribbon = 0; ribbon < level.Ribbons.Count; ribbon++)
        {
            Flow flow = FlowInto(i, ribbon);
            string gradient = Invariant($"{id}-{i}-{ribbon}");
            Tint to = level.Steps[ribbon].Tint;
            Tint from = i == 0 ? to : Above(i, ribbon).Tint;
            pen.Start("linearGradient", ("id", gradient), ("x1", "0"), ("y1", "0"), ("x2", "0"), ("y2", "1"));
            pen.Element("stop", ("offset", "0"), ("stop-color", Colour(from)));
            pen.Element("stop", ("offset", "1"), ("stop-color", Colour(to)));
            pen.End("linearGradient");
            pen.Element("path", ("class", "ribbon"), ("d", flow.Outline), ("fill", $"url(#{gradient})"));
            pen.Element("path", ("d", flow.Edges), ("fill", "none"), ("stroke", Ink.Faint), ("stroke-width", "0.75"), ("stroke-opacity", "0.7"));
        }
    }

    /// <summary>The edges the other run would have here, dashed, where it is another number of litres.</summary>
    private void DrawGhost(int i, RunGhost ghost)
    {
        RunLevel level = layout.Levels[i];
        for (int ribbon = 0; ribbon < level.Steps.Count; ribbon++)
        {
            double? from = i == 0 ? ghost.Of(level.Steps[ribbon]) : ghost.Of(Above(i, ribbon));
            if (ghost.Of(level.Steps[ribbon]) is not { } to || from is null || (i > 0 && layout.Levels[i - 1].Ribbons.Count != level.Ribbons.Count))
            {
                continue;
            }

            Flow own = FlowInto(i, ribbon);
            Flow flow = own with { FromHalf = layout.WidthOf(from.Value) / 2, ToHalf = layout.WidthOf(to) / 2 };
            if (Math.Max(Math.Abs(flow.FromHalf - own.FromHalf), Math.Abs(flow.ToHalf - own.ToHalf)) >= LeastGhost)
            {
                pen.Element("path", ("class", "ghost"), ("d", flow.Edges), ("fill", "none"), ("stroke", Ink.Text), ("stroke-width", "1.1"), ("stroke-dasharray", "4 3"));
            }
        }
    }

    /// <summary>Strokes of what joins and what leaves, from under the ribbon's edge.</summary>
    private void DrawStrokes(int i)
    {
        foreach (RunLine line in layout.Levels[i].Lines.Where(l => l.Stroke > 0))
        {
            // Strike liquor is the ribbon itself.
            if (i == 0 && line.Kind is RunLineKind.LeftLiquor or RunLineKind.Addition)
            {
                continue;
            }

            Flow flow = FlowInto(i, line.Ribbon);
            double y = line.Y - 4.5;
            bool joinsFromLeft = line.Kind is RunLineKind.LeftAddition or RunLineKind.LeftLiquor;
            bool atRight = line.Ribbon > 0 || layout.Levels[i].Ribbons.Count == 1;
            double into = Math.Min(flow.HalfAt(y), 5);
            double edge = joinsFromLeft || !atRight ? flow.CentreAt(y) - flow.HalfAt(y) + into : flow.CentreAt(y) + flow.HalfAt(y) - into;
            double end = joinsFromLeft ? frame.AdditionsEnd!.Value + 4 : atRight ? frame.TextStart - 8 : Math.Max(1, edge - 20);
            double bend = joinsFromLeft ? 6 : -Math.Min(8, y - flow.Top);
            double middle = (edge + end) / 2;
            string d = $"M{Number(end)} {Number(y)} C {Number(middle)} {Number(y)}, {Number(middle)} {Number(y + bend)}, {Number(edge)} {Number(y + bend)}";
            if (line.Kind == RunLineKind.Loss)
            {
                // Dark beer on dark paper needs an edge, as the ribbon does.
                pen.Element("path", ("d", d), ("fill", "none"), ("stroke", Ink.Faint), ("stroke-width", line.Stroke + 1.2), ("stroke-opacity", "0.7"));
            }

            pen.Element("path", ("d", d), ("fill", "none"), ("stroke", StrokeColour(i, line)), ("stroke-width", line.Stroke));
        }
    }

    private string StrokeColour(int i, RunLine line) => line.Kind switch
    {
        RunLineKind.Loss => i == 0 ? Ink.Water : Colour(Above(i, line.Ribbon).Tint),
        RunLineKind.LeftLiquor => Ink.Water,
        _ => Ink.Copper,
    };

    /// <summary>How sure we are, where somebody knows: a whisker from the low to the high end, about the ribbon.</summary>
    private void DrawBands(RunLevel level)
    {
        for (int i = 0; i < level.Steps.Count; i++)
        {
            (double centre, double width) = level.Ribbons[i];
            Band litres = level.Steps[i].Litres;
            if (litres.Kind == BandKind.Point || litres.Likely <= 0)
            {
                continue;
            }

            foreach (int side in (int[])[-1, 1])
            {
                double low = centre + (side * width / 2 * litres.Low / litres.Likely);
                double high = centre + (side * width / 2 * litres.High / litres.Likely);
                string d = $"M{Number(low)} {Number(level.Y)} H{Number(high)} M{Number(low)} {Number(level.Y - 4)} v8 M{Number(high)} {Number(level.Y - 4)} v8";
                pen.Element("path", ("class", "band"), ("d", d), ("stroke", Ink.Copper), ("stroke-width", "1.5"), ("fill", "none"));
            }
        }
    }

    private RunStep Above(int i, int ribbon)
    {
        RunLevel above = layout.Levels[i - 1];
        return above.Steps[above.Steps.Count == 1 ? 0 : ribbon];
    }

    /// <summary>The ribbon's way from the stage above. Where the cast parts, each branch takes its own share of the width.</summary>
    private Flow FlowInto(int i, int ribbon)
    {
        RunLevel level = layout.Levels[i];
        (double centre, double width) = level.Ribbons[ribbon];
        if (i == 0)
        {
            return new Flow(centre, width / 2, Top, centre, width / 2, level.Y);
        }

        RunLevel above = layout.Levels[i - 1];
        if (above.Ribbons.Count == level.Ribbons.Count)
        {
            (double from, double wide) = above.Ribbons[ribbon];
            return new Flow(from, wide / 2, above.Y, centre, width / 2, level.Y);
        }

        (double trunk, double all) = above.Ribbons[0];
        double shrink = all / level.Ribbons.Sum(r => r.Width);
        double left = trunk - (all / 2) + (level.Ribbons.Take(ribbon).Sum(r => r.Width) * shrink);
        return new Flow(left + (width * shrink / 2), width * shrink / 2, above.Y, centre, width / 2, level.Y);
    }

    private static string Colour(Tint tint) => tint.Is == TintOf.Water ? Ink.Water : tint.Hex;
}
