namespace Gylebook.Recipes.Foods;

/// <summary>What of a food's ash dissolves, g/100 g, and the ions in it, mg/100 g.</summary>
/// <remarks>
/// Sodium, potassium and chloride dissolve whole; calcium, magnesium and phosphorus, much of them bound in fibre and phytate, in the
/// share that the ash does. That is an assumption: nobody has printed what a whole food gives up in a week.
/// </remarks>
internal readonly record struct AshParts(
    double Minerals, double Sodium, double Potassium, double Calcium, double Magnesium, double Phosphorus, double Chloride)
{
    private const double SaltPerSodium = 2.5, ChloridePerSodium = 1.5;

    /// <summary>Parts the ash: it never dissolves less than the ions that are counted on their own, salt for all of its sodium.</summary>
    public static AshParts Of(FoodComposition food, double ash, FoodFamily family, MakeupNotes notes)
    {
        var sodium = food.SodiumMilligrams ?? notes.Borrow("sodium", 0, "mg/100 g", family);
        var potassium = food.PotassiumMilligrams ?? notes.Borrow("potassium", 0, "mg/100 g", family);
        var dissolves = 1 - notes.Borrow("insolubleAsh", family.InsolubleAsh, "1", family);
        var (calcium, magnesium) = (dissolves * (food.CalciumMilligrams ?? 0), dissolves * (food.MagnesiumMilligrams ?? 0));
        var phosphorus = dissolves * (food.PhosphorusMilligrams ?? 0);
        var chloride = food.ChlorideMilligrams ?? 0;
        var ions = (SaltPerSodium * sodium) + potassium + calcium + magnesium + phosphorus + Math.Max(0, chloride - (ChloridePerSodium * sodium));
        return new AshParts(
            Math.Max(Math.Min(ash, ions / 1000), ash * dissolves), sodium, potassium, calcium, magnesium, phosphorus, chloride);
    }
}

/// <summary>Acids of a food that are counted on their own: those whose food has a known pH, without which nobody can say what of them is salt.</summary>
/// <param name="All">As the tables have them, g/100 g; null for none.</param>
/// <param name="Share">What of them there is room for.</param>
internal readonly record struct AcidsIn(FoodAcids? All, double Share)
{
    /// <summary>All of them together, g/100 g.</summary>
    public double Grams => (All?.Total ?? 0) * Share;

    /// <summary>How little and how much there may be.</summary>
    public (double Low, double High) Ends => All is null ? (1, 1) : (All.LowShare, All.HighShare);

    /// <summary>The acids of a food, when its pH is known.</summary>
    public static AcidsIn Of(FoodComposition food, MakeupNotes notes)
    {
        if (food is not { Acids: { Total: > 0 } acids, Ph: { } ph })
        {
            return new AcidsIn(null, 1);
        }

        notes.Assume("ownPh", $"{MakeupNotes.Say(ph.Likely)} ({MakeupNotes.Say(ph.Low)} to {MakeupNotes.Say(ph.High)})", ph.Provenance.Source);
        return new AcidsIn(acids, 1);
    }

    /// <summary>The same, cut to so many grams.</summary>
    public AcidsIn Kept(double grams) => Grams > 0 ? this with { Share = Share * grams / Grams } : this;

    /// <summary>One of them, kg/kg.</summary>
    public double Of(Func<FoodAcids, double> acid) => All is null ? 0 : acid(All) * Share / 100;
}
