using Gylebook.Recipes.Forms;
using Gylebook.Recipes.Ingredients;

namespace Gylebook.Recipes.Liquors;

/// <summary>The malts and foods that the grist of a water sheet means: malts of the table, or what has a titration of its own.</summary>
internal static class GristMeaning
{
    public static List<GristLine> Of(IReadOnlyList<GristSheet> sheets, FindingList findings)
    {
        List<GristLine> lines = [];
        for (int i = 0; i < sheets.Count; i++)
        {
            if (sheets[i].Of.Length == 0)
            {
                // It could not be read, and that is told.
                continue;
            }

            lines.Add(Of(sheets[i], new PartCursor(Invariant($"grist[{i}]"), findings)));
        }

        return lines;
    }

    /// <summary>The malts of a plan that overrule the table, each once.</summary>
    public static List<TitratedMalt> Titrated(IReadOnlyList<TitratedSheet> sheets, FindingList findings)
    {
        Dictionary<string, TitratedMalt> malts = [];
        for (int i = 0; i < sheets.Count; i++)
        {
            PartCursor at = new(Invariant($"malts[{i}]"), findings);
            var found = Malts.Find(sheets[i].Malt);
            if (sheets[i].Malt.Length == 0)
            {
                // It could not be read, and that is told.
                continue;
            }

            if (found.Match is not { } malt)
            {
                string nearest = string.Join(", ", found.Nearest);
                at.Error("malt.unknown", "malt", $"\"{FindingList.Shorten(sheets[i].Malt)}\"; not in the tables. Nearest: {nearest}", sheets[i].Malt, nearest);
            }
            else if (!malts.TryAdd(malt.Id, new TitratedMalt(malt, new MaltTitration(sheets[i].DistilledPh, sheets[i].Buffer, 0, Provenance.Entered))))
            {
                at.Error("malt.twice", "malt", $"{malt.Name} is there twice; keep one", malt.Name);
            }
        }

        return [.. malts.Values];
    }

    private static GristLine Of(GristSheet line, PartCursor at)
    {
        MaltTitration? own = line is { DistilledPh: { } ph, Buffer: { } buffer } ? new MaltTitration(ph, buffer, 0, Provenance.Entered) : null;
        if (line.IsFood)
        {
            return new GristLine(line.Of, line.Amount.Value, own);
        }

        var found = Malts.Find(line.Of);
        if (found.Match is not { } malt)
        {
            string nearest = string.Join(", ", found.Nearest);
            if (own is null)
            {
                at.Error("malt.unknown", "malt", $"\"{FindingList.Shorten(line.Of)}\"; not in the tables, and without a titration of its own. Nearest: {nearest}", line.Of, nearest);
            }

            return new GristLine(line.Of, line.Amount.Value, own);
        }

        return new GristLine(malt.Name, line.Amount.Value, own ?? MaltTitrations.Of(malt, line.Colour?.Value ?? malt.Colour), malt);
    }
}
