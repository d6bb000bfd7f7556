namespace Gylebook.Pictures.Drawing;

/// <summary>Finds a place for everything: the drawing grows downwards, so that no words ever meet.</summary>
internal sealed class RunLayout(RunPicture picture, RunFrame frame)
{
    private const double LeastStep = 30;
    private const double LeastWidth = 2;
    private const double ThickestStroke = 26;
    private const int MostNames = 4;

    private readonly Ribbons _ribbons = new(picture, frame, LeastWidth);

    /// <summary>The stages from top to bottom.</summary>
    public List<RunLevel> Levels { get; } = [];

    /// <summary>Height of the whole.</summary>
    public double Height { get; private set; }

    /// <summary>Places everything.</summary>
    public void Place()
    {
        double line = 4;
        foreach (RunLevel level in Found())
        {
            level.Top = line;
            double below = line + 22 + (Type.Line * RunText.LinesUnder(picture, frame, level));
            level.Y = Math.Round(Math.Max(line + LeastStep, PlaceWords(level, below, line + LeastStep - 14)));
            line = level.Y;
            Levels.Add(level);
        }

        Height = Math.Round(line + 4);
    }

    private IEnumerable<RunLevel> Found()
    {
        foreach (RunStep step in picture.Trunk)
        {
            yield return new RunLevel { Name = step.Name, Steps = [step], Parted = false, Ribbons = [_ribbons.Trunk(step)] };
        }

        // All branches go through the same stages.
        for (int i = 0; i < (picture.Branches.Count > 0 ? picture.Branches.Min(b => b.Steps.Count) : 0); i++)
        {
            RunStep[] steps = [.. picture.Branches.Select(b => b.Steps[i])];
            yield return new RunLevel { Name = steps[0].Name, Steps = steps, Parted = true, Ribbons = [.. steps.Select(_ribbons.Branch)] };
        }
    }

    /// <summary>Places the words on the way into a stage.</summary>
    /// <returns>Where the next line may stand.</returns>
    private double PlaceWords(RunLevel level, double below, double leftStart)
    {
        double left = leftStart;
        double right = below;
        bool any = false;
        for (int i = 0; i < level.Steps.Count; i++)
        {
            RunStep step = level.Steps[i];
            bool atLeft = frame.AdditionsEnd is not null && !level.Parted;
            foreach ((RunAddition? addition, string full) in Told(step.Additions))
            {
                left = atLeft ? PlaceLeft(level, addition, full, left) : left;
                right = atLeft ? right : PlaceRight(level, i, RunLineKind.Addition, addition?.Text(picture.Shown) ?? More(step), full, 2, right);
            }

            foreach (RunLoss loss in step.Losses)
            {
                string text = loss.Text(picture.Shown);
                right = PlaceRight(level, i, RunLineKind.Loss, text, text, Stroke(loss.Litres), right);
            }

            right = PlaceCautions(level, i, step.Cautions, right);
            any |= right > below;
        }

        return Math.Max(left > leftStart ? left - 4 : 0, any ? right + 10 : below + 6);
    }

    /// <summary>Names of additions, the last of many told as how many more.</summary>
    private IEnumerable<(RunAddition? Addition, string Full)> Told(IReadOnlyList<RunAddition> additions)
    {
        bool all = additions.Count <= MostNames;
        foreach (RunAddition addition in additions.Take(all ? MostNames : MostNames - 1))
        {
            yield return (addition, addition.Text(picture.Shown));
        }

        if (!all)
        {
            yield return (null, string.Join("\n", additions.Skip(MostNames - 1).Select(a => a.Text(picture.Shown))));
        }
    }

    private static string More(RunStep step) => Invariant($"and {step.Additions.Count - MostNames + 1} more");

    private double PlaceLeft(RunLevel level, RunAddition? addition, string full, double y)
    {
        double room = frame.AdditionsEnd!.Value - 4;
        string text = addition is null ? More(level.Steps[0]) : Short(addition, room);
        bool liquor = addition is { IsLiquor: true };
        double stroke = liquor ? Stroke(addition!.Litres) : 1.5;
        level.Lines.Add(new(liquor ? RunLineKind.LeftLiquor : RunLineKind.LeftAddition, 0, text, full, frame.AdditionsEnd.Value, y + 12, stroke));
        return y + Type.Line;
    }

    /// <summary>The amount whole, and as much of the name as fits beside it.</summary>
    private string Short(RunAddition addition, double room)
    {
        string amount = addition.Text(picture.Shown)[addition.Name.Length..];
        // "sparge 1.32 US gal" says enough where the stroke has the colour of water.
        bool cut = addition.IsLiquor && TextRoom.WidthOf(addition.Name + amount, Type.Small) > room;
        string name = cut ? addition.Name.Split(' ')[0] : addition.Name;
        return TextRoom.Elided(name, Type.Small, room - TextRoom.WidthOf(amount, Type.Small)) + amount;
    }

    private double PlaceRight(RunLevel level, int ribbon, RunLineKind kind, string text, string full, double stroke, double y)
    {
        string owner = level.Parted ? level.Steps[ribbon].Portion + ": " : "";
        string sign = kind == RunLineKind.Addition ? "+ " : "− ";
        double ownerRoom = Math.Min(TextRoom.WidthOf(owner, Type.Small), frame.TextRoom * 0.4);
        string shortOwner = TextRoom.Elided(owner, Type.Small, ownerRoom + 1);
        string body = TextRoom.Elided(sign + text, Type.Small, frame.TextRoom - TextRoom.WidthOf(shortOwner, Type.Small));
        double height = Math.Max(Type.Line, Math.Min(stroke, ThickestStroke) + 3);
        level.Lines.Add(new(kind, ribbon, shortOwner + body, owner + full, frame.TextStart, y + (height / 2) + 4.5, stroke));
        return y + height;
    }

    private double PlaceCautions(RunLevel level, int ribbon, IReadOnlyList<RunCaution> cautions, double y)
    {
        double x = frame.TextStart;
        foreach (RunCaution caution in cautions)
        {
            string says = TextRoom.Elided(caution.Says, Type.Small, frame.TextRoom - 16);
            double width = 16 + TextRoom.WidthOf(says, Type.Small);
            if (x > frame.TextStart && x + width > frame.TextEnd)
            {
                x = frame.TextStart;
                y += Type.Line;
            }

            level.Lines.Add(new(
                caution.IsHazard ? RunLineKind.Hazard : RunLineKind.Limit, ribbon, says, $"{caution.Says}\n{caution.Message}", x, y + 13, 0));
            x += width + 10;
        }

        return cautions.Count > 0 ? y + Type.Line : y;
    }

    /// <summary>How wide so many litres of a ribbon are drawn.</summary>
    public double WidthOf(double litres) => _ribbons.WidthOf(litres);

    private double Stroke(double litres) => Math.Clamp(litres * _ribbons.PerLitre, LeastWidth, ThickestStroke);
}
