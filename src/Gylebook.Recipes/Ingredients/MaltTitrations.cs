using Gylebook.Recipes.Data;
using Gylebook.Science.Mashing;
using Gylebook.Science.Quantities;

namespace Gylebook.Recipes.Ingredients;

/// <summary>A malt, grain or food as an acid and buffer in the mash.</summary>
/// <param name="DistilledPh">pH of its mash in distilled water, sample cooled to 20 °C.</param>
/// <param name="Buffer">a1, mEq/(kg·pH).</param>
/// <param name="Curvature">a2, mEq/(kg·pH²).</param>
/// <param name="Provenance">Where the figures come from.</param>
public sealed record MaltTitration(double DistilledPh, double Buffer, double Curvature, Provenance Provenance);

/// <summary>Titrations of malts by generic type: <c>data/malt-titration.csv</c>.</summary>
public static class MaltTitrations
{
    private static readonly Lazy<IReadOnlyDictionary<string, MaltTitration>> Rows = new(Read);

    private static readonly Lazy<(double[] Ebc, MaltTitration[] Rows)> Caramels = new(ByColour);

    /// <summary>All of them, by the malt's id.</summary>
    public static IReadOnlyDictionary<string, MaltTitration> All => Rows.Value;

    /// <summary>The curve of a malt of that colour; null when nobody has measured one.</summary>
    /// <remarks>Caramel malts are graded by colour: between two grades the pH is on the straight line, beyond the last it is the last's.</remarks>
    public static MaltTitration? Of(Malt malt, MaltColour colour)
    {
        (double[] ebc, MaltTitration[] rows) = Caramels.Value;
        if (malt.Family != MaltFamily.Caramel || colour.Ebc < ebc[0] / 2)
        {
            return Rows.Value.GetValueOrDefault(malt.Id);
        }

        double within = Math.Clamp(colour.Ebc, ebc[0], ebc[^1]);
        return rows[0] with
        {
            DistilledPh = Between(within, ebc, [.. rows.Select(row => row.DistilledPh)]),
            Buffer = Between(within, ebc, [.. rows.Select(row => row.Buffer)]),
        };
    }

    private static double Between(double at, double[] x, double[] y)
    {
        int above = Math.Max(1, Array.FindIndex(x, each => each >= at));
        double along = (at - x[above - 1]) / (x[above] - x[above - 1]);
        return y[above - 1] + (along * (y[above] - y[above - 1]));
    }

    private static (double[] Ebc, MaltTitration[] Rows) ByColour()
    {
        var graded = Malts.All
            .Where(malt => malt.Family == MaltFamily.Caramel && Rows.Value.ContainsKey(malt.Id))
            .OrderBy(malt => malt.Colour.Ebc).ToList();
        return ([.. graded.Select(malt => malt.Colour.Ebc)], [.. graded.Select(malt => Rows.Value[malt.Id])]);
    }

    private static Dictionary<string, MaltTitration> Read()
    {
        Dictionary<string, MaltTitration> read = [];
        foreach (var row in ReferenceData.Table("malt-titration.csv").Rows)
        {
            string malt = row.Required("malt");
            if (Malts.Find(malt).Match?.Id != malt || !read.TryAdd(malt, new(
                row.Number("distilledPh"), row.Number("buffer"), row.Number("curvature"), Provenance.Of(row))))
            {
                throw row.Wrong("malt", $"is no malt's id, or there twice: {malt}");
            }
        }

        return read;
    }
}
