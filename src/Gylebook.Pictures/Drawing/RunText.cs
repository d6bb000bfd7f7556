using Gylebook.Engine.State;
using static Gylebook.Pictures.Drawing.MarkupPen;

namespace Gylebook.Pictures.Drawing;

/// <summary>Writes the words of a stage: its name and litres, what it says of them, and what happens on the way into it.</summary>
internal sealed class RunText(RunPicture picture, RunFrame frame, MarkupPen pen, Func<Stage, string>? link)
{
    /// <summary>Writes all words of a stage.</summary>
    public void Draw(RunLevel level)
    {
        double left = level.Ribbons.Max(r => r.Centre + (r.Width / 2)) + 6;
        pen.Element("path", ("d", $"M{Number(left)} {Number(level.Y)} H{Number(frame.TextEnd)}"), ("stroke", Ink.Rule), ("stroke-width", "1"));
        DrawStage(level);
        foreach (RunLine line in level.Lines)
        {
            DrawLine(line);
        }
    }

    /// <summary>Lines under a stage's name.</summary>
    public static int LinesUnder(RunPicture picture, RunFrame frame, RunLevel level) => level.Steps.Sum(step =>
    {
        Said said = Said.Of(picture, frame, level, step);
        return (level.Parted ? 1 : 0) + (said.Below.Length > 0 ? 1 : 0);
    });

    private void DrawStage(RunLevel level)
    {
        double y = level.Top + 17;
        Said first = Said.Of(picture, frame, level, level.Steps[0]);
        double room = frame.TextRoom - (level.Parted ? 0 : TextRoom.WidthOf(first.Litres, Type.Small) + 8);
        string name = TextRoom.Elided(level.Name, Type.Name, room);
        (string, object)[] looks = [("x", frame.TextStart), ("y", y), ("font-family", Ink.Serif), ("font-size", Type.Name), ("fill", Ink.Text)];
        if (link is null)
        {
            pen.Text(name, name == level.Name ? null : level.Name, looks);
        }
        else
        {
            // As wide as the words and a thumb high: the whole head of the stage leads there.
            pen.Start("a", ("href", link(level.Steps[0].Stage)));
            pen.Element("rect", ("x", frame.TextStart), ("y", level.Top), ("width", frame.TextRoom), ("height", level.Y - level.Top), ("fill", "transparent"));
            pen.Text(name, null, looks);
            pen.End("a");
        }

        foreach (RunStep step in level.Steps)
        {
            Said said = Said.Of(picture, frame, level, step);
            if (level.Parted)
            {
                y += Type.Line;
                Words(said.Beside, frame.TextRoom - TextRoom.WidthOf(said.Litres, Type.Small) - 8, y, Ink.Text);
            }

            pen.Text(said.Litres, null, ("x", frame.TextEnd), ("y", y), ("text-anchor", "end"), ("font-size", Type.Small), ("fill", Ink.Text));
            if (said.Below.Length > 0)
            {
                y += Type.Line;
                Words(said.Below, frame.TextRoom, y, Ink.Faint);
            }
        }
    }

    private void Words(string words, double room, double y, string colour)
    {
        string shown = TextRoom.Elided(words, Type.Small, room);
        pen.Text(shown, shown == words ? null : words, ("x", frame.TextStart), ("y", y), ("font-size", Type.Small), ("fill", colour));
    }

    private void DrawLine(RunLine line)
    {
        switch (line.Kind)
        {
            case RunLineKind.LeftAddition or RunLineKind.LeftLiquor:
                pen.Text(line.Text, line.Full, ("class", "in"), ("x", line.X), ("y", line.Y), ("text-anchor", "end"), ("font-size", Type.Small), ("fill", line.Kind == RunLineKind.LeftLiquor ? Ink.Faint : Ink.Copper));
                break;
            case RunLineKind.Hazard or RunLineKind.Limit:
                DrawCaution(line);
                break;
            default:
                pen.Text(line.Text, line.Full, ("class", line.Kind == RunLineKind.Loss ? "loss" : "in"), ("x", line.X), ("y", line.Y), ("font-size", Type.Small), ("fill", Ink.Copper));
                break;
        }
    }

    /// <summary>A triangle for a hazard, a ring for the limit of a model: told apart without colour.</summary>
    private void DrawCaution(RunLine line)
    {
        double x = line.X;
        double y = line.Y;
        pen.Start("g", ("class", "caution"));
        pen.Words("title", line.Full);
        if (line.Kind == RunLineKind.Hazard)
        {
            string triangle = $"M{Number(x + 5.5)} {Number(y - 10)} L{Number(x + 11)} {Number(y)} H{Number(x)} Z";
            pen.Element("path", ("d", triangle), ("fill", Ink.Amber));
        }
        else
        {
            pen.Element("circle", ("cx", x + 5.5), ("cy", y - 4.5), ("r", 4.0), ("fill", "none"), ("stroke", Ink.Amber), ("stroke-width", "1.5"));
        }

        pen.Text(line.Text, null, ("x", x + 16), ("y", y), ("font-size", Type.Small), ("fill", Ink.Amber));
        pen.End("g");
    }
}
