namespace Gylebook.Pictures;

/// <summary>The run as a table: the picture's twin for those who read rather than look, and for the command line.</summary>
/// <param name="Caption">What the table tells.</param>
/// <param name="Header">Column names, with units where a column has one.</param>
/// <param name="Rows">One row a stage, one cell a column, all text.</param>
public sealed record RunTable(string Caption, IReadOnlyList<string> Header, IReadOnlyList<IReadOnlyList<string>> Rows)
{
    /// <summary>The table of a picture: nothing the picture shows is missing here.</summary>
    public static RunTable Of(RunPicture picture)
    {
        Shown shown = picture.Shown;
        bool parted = picture.Branches.Count > 0;
        string[] header = ["Stage", .. parted ? ["Portion"] : Array.Empty<string>(), "Goes in", "Is lost", "Volume at 20\u00A0°C", "Temperature", "Gravity", "Says", "Cautions"];
        return new RunTable(
            $"{picture.Recipe} on {picture.Kit}: the run from water to glass",
            header,
            [
                .. picture.Steps.Select(step => (IReadOnlyList<string>)
                [
                    step.Name,
                    .. parted ? [step.Portion] : Array.Empty<string>(),
                    string.Join("; ", step.Additions.Select(a => a.Text(shown))),
                    string.Join("; ", step.Losses.Select(l => l.Text(shown))),
                    shown.Litres(step.Litres),
                    step.TemperatureC is double celsius ? shown.Celsius(celsius) : "",
                    shown.Gravity(step.Gravity),
                    step.Says,
                    string.Join(", ", step.Cautions.Select(c => c.Says)),
                ]),
            ]);
    }
}
