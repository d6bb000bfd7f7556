using Gylebook.Science.Water;

namespace Gylebook.Science.Mashing;

/// <summary>Says where a mash pH leaves the range its model was made for.</summary>
/// <remarks>
/// <para>Source: pH 4.5 to 6.5 is where the printed titrations lie; calcium to 300 mg/L is Taylor's series (Briggs et al. 2004,
/// ch. 4); chalk loses most of its effect above 400 mg/L in measured mashes (hobby literature, 2009).</para>
/// </remarks>
public static class MashPhCheck
{
    private const double Lowest = 4.5;
    private const double Highest = 6.5;
    private const double MostCalcium = 300;
    private const double MostChalk = 0.4;

    /// <summary>Everything doubtful about a forecast of this mash, or an empty list.</summary>
    public static IReadOnlyList<WaterDiagnosis> Diagnose(MashPhMix mix)
    {
        List<WaterDiagnosis> found = [];
        double ph = MashPh.Predict(mix);
        if (ph is < Lowest or > Highest)
        {
            found.Add(new("mashPh.outsideModel", Invariant(
                $"A mash pH of {ph:0.00} lies outside {Lowest} to {Highest}, where malts were titrated."),
                ph, ph < Lowest ? Lowest : Highest, "pH"));
        }

        if (mix.Liquor.Ions.Calcium > MostCalcium)
        {
            found.Add(new("mashPh.calciumBeyondSeries", Invariant(
                $"Calcium of {mix.Liquor.Ions.Calcium:0} mg/L is more than was measured in a mash."),
                mix.Liquor.Ions.Calcium, MostCalcium, "mg/L"));
        }

        if (mix.Liquor.ChalkGramsPerLitre > MostChalk)
        {
            found.Add(new("mashPh.chalkWeak",
                "So much chalk does not all dissolve in a mash: the pH will be lower than forecast. Baking soda or lime is surer.",
                mix.Liquor.ChalkGramsPerLitre, MostChalk, "g/L"));
        }

        return found;
    }
}
