using Gylebook.Pictures;
using Gylebook.Pictures.Drawing;
using Gylebook.Pictures.Sheets;
using Gylebook.Recipes;
using Gylebook.Recipes.Editing;

namespace Gylebook.Site.Recasting;

/// <summary>Writes a recipe that was weighed anew for a follower's kit, beside what was published.</summary>
public static class RecastHtml
{
    /// <summary>A fragment of the page: what stands against it, weights in both units, what was held.</summary>
    /// <param name="recast">Weighed anew.</param>
    /// <param name="here">The published recipe's sheet, metric; null for none.</param>
    public static string Write(Recast recast, RecipeSheet? here)
    {
        ArgumentNullException.ThrowIfNull(recast);
        MarkupPen pen = new();
        Against(pen, recast);
        if (recast is { Forecast: { } forecast, Planned: { } planned })
        {
            RecipeSheet metric = RecipeSheet.Of(planned, forecast, ReaderUnits.Metric), us = RecipeSheet.Of(planned, forecast, ReaderUnits.UnitedStates);
            Table(pen, metric, us, here);
            Held(pen, recast);
        }

        return pen.ToString();
    }

    private static void Against(MarkupPen pen, Recast recast)
    {
        Finding[] errors = [.. recast.Findings.Where(finding => finding.Severity == Severity.Error)], doubts = [.. recast.Findings.Where(finding => finding.Severity == Severity.Warning)];
        if (errors.Length > 0)
        {
            pen.Start("div", ("class", "stop"), ("role", "alert"));
            pen.Words("b", "It does not go like this.");
            foreach (Finding error in errors)
            {
                pen.Words("p", Told(error));
            }

            if (recast.MostLitres is { } most)
            {
                pen.Words("p", ToldText.Both(Invariant($"On yours at most about {most:0.#} L of beer would fit.")));
            }

            pen.End("div");
        }

        foreach (Finding doubt in doubts)
        {
            pen.Words("p", Told(doubt), ("class", "care"));
        }
    }

    private static string Told(Finding finding) => ToldText.Both(finding.Where.Length > 0 ? $"{PlaceWords.Of(finding.Where)}: {finding.Message}" : finding.Message);

    private static void Table(MarkupPen pen, RecipeSheet metric, RecipeSheet us, RecipeSheet? here)
    {
        // Liquor is warmer or cooler on another kit, and a swap has another name: such a row is found by its place.
        Dictionary<string, SheetPart> there = (here?.Parts ?? []).ToDictionary(part => part.Name);
        pen.Start("div", ("class", "wide"), ("tabindex", "0"), ("role", "region"), ("aria-label", "On your kit"));
        pen.Start("table");
        pen.Start("thead");
        pen.Start("tr");
        foreach ((string head, string kind) in new[] { ("What", ""), ("here", "n"), ("on yours", "n"), ("US", "n") })
        {
            pen.Words("th", head, ("scope", "col"), ("class", kind));
        }

        pen.End("tr");
        pen.End("thead");
        foreach ((SheetPart part, SheetPart other) in metric.Parts.Zip(us.Parts).Where(parts => parts.First.Rows.Count > 0))
        {
            SheetPart? before = there.GetValueOrDefault(part.Name);
            bool isAlike = before?.Rows.Count == part.Rows.Count;
            pen.Start("tbody");
            foreach ((int number, (SheetRow row, SheetRow theirs)) in part.Rows.Zip(other.Rows).Index())
            {
                pen.Start("tr");
                pen.Start("th", ("scope", "row"));
                pen.Words("span", row.What);
                pen.Words("small", row.When.Length > 0 ? ToldText.Both(row.When) : part.Name);
                pen.End("th");
                pen.Words("td", (isAlike ? before!.Rows[number] : before?.Rows.FirstOrDefault(one => one.What == row.What))?.Amount ?? "", ("class", "n us"));
                pen.Words("td", row.Amount, ("class", "n mine"));
                pen.Words("td", theirs.Amount, ("class", "n us"));
                pen.End("tr");
            }

            pen.End("tbody");
        }

        pen.End("table");
        pen.End("div");
        pen.Start("dl", ("class", "figures"));
        foreach (SheetFigure figure in metric.Figures)
        {
            pen.Start("div");
            pen.Words("dt", figure.Title);
            pen.Words("dd", figure.Value);
            pen.End("div");
        }

        pen.End("dl");
    }

    private static void Held(MarkupPen pen, Recast recast)
    {
        Shown shown = new(ReaderUnits.Metric);
        string[] held = [.. recast.Reached.Select(reached => reached.Readout switch
        {
            "originalGravity" => shown.Gravity(reached.Reached),
            "bitterness" => shown.Ibu(reached.Reached),
            "carbonationVolumes" => shown.Volumes(reached.Reached),
            _ => "",
        }).Where(words => words.Length > 0)];
        pen.Words("p", ToldText.Both($"Held for you: {string.Join(", ", held)}, the shares of malt. Yours to lose: {recast.Kit.Kettle.Evaporation.Text} of steam, {recast.Kit.Kettle.LeftBehind.Text} in the kettle. What was not asked is taken as it is here; likely numbers only; the cautions of the page stay the same."), ("class", "small"));
    }
}
