using Gylebook.Engine.Readouts;
using Gylebook.Engine.Stages;
using Gylebook.Engine.State;
using Gylebook.Forecast.Planning;
using Gylebook.Recipes;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Liquors;
using Gylebook.Science.Quantities;
using Gylebook.Science.Water;

namespace Gylebook.Forecast.Liquors;

/// <summary>Carries out a water plan: blends, finds salts and acids place by place, and says what the liquor is then.</summary>
public static class WaterTreatment
{
    /// <summary>What comes of the plan for that need; null, with a finding, where it cannot be reckoned.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="need">Litres and grist.</param>
    /// <param name="findings">Takes what cannot be reckoned; the outcome brings findings of its own.</param>
    public static WaterOutcome? TryOf(WaterPlan plan, LiquorNeed need, ICollection<Finding> findings) => Reckoning.Or<WaterOutcome?>(
        () => Of(plan, need), "plan",
        (finding, _) =>
        {
            findings.Add(finding);
            return null;
        });

    /// <summary>What comes of the plan for that need.</summary>
    public static WaterOutcome Of(WaterPlan plan, LiquorNeed asked)
    {
        List<Finding> findings = [];
        SourceLiquor source = SourceLiquor.Of(plan, findings);
        Differs("strike", plan.Strike, asked.StrikeLitres, findings);
        Differs("sparge", plan.Sparge, asked.SpargeLitres, findings);
        LiquorNeed need = asked.With(plan.Malts, findings);
        TreatedMash treated = new MashTreatment(plan, source, Stirrable(need, findings), findings).Treat();
        (TreatedLiquor mash, Band? ph) = (treated.Liquor, treated.Ph);
        double acidUsed = mash.Acids.Sum(acid => acid.Units) + (treated.Mend is { Acid: not null } mend ? mend.Units : 0);
        TreatedLiquor sparge = SpargeTreatment.Treat(plan, source, need.SpargeLitres, acidUsed, findings);
        if ((plan.MashPh is not null || plan.MashReading is not null) && ph is null)
        {
            findings.Add(new("mash.noGrist", Severity.Warning, plan.MashPh is null ? "mashReading" : "mashPh", "no grist with a titration, so the pH of the mash is not known and no acid is counted for it"));
        }

        (TreatedLiquor kettle, WortSouring? wort) = new KettleTreatment(plan, need, findings).Treat(treated, sparge, acidUsed + sparge.Acids.Sum(acid => acid.Units));
        TreatedLiquor package = PackageTreatment.Treat(plan, kettle.Ions, need.PackageLitres, findings);
        bool laterToo = plan.Salts.Any(offer => offer.Into == LiquorPlace.Kettle);
        findings.AddRange(LiquorFinding.IonsNotReached(
            [[("mash", mash), ("sparge", sparge)], .. laterToo ? [[("kettle", kettle)]] : Nowhere, .. package.Litres > 0 ? [[("package", package)]] : Nowhere]));
        return new WaterOutcome
        {
            Name = plan.Name,
            Plan = plan,
            Need = asked,
            Source = source,
            Mash = mash,
            Sparge = sparge,
            Kettle = kettle,
            Package = package,
            Wort = wort,
            MashPh = ph,
            MashReading = treated.Reading,
            Mend = treated.Mend,
            Cautions = TreatmentCautions.Of(plan, need, treated, sparge, kettle),
            Findings = findings,
        };
    }

    private static IReadOnlyList<(string Place, TreatedLiquor Liquor)>[] Nowhere => [];

    /// <summary>What to put into the mash once a meter has read its pH; null where it is as wanted, or nothing at hand would bring it there.</summary>
    /// <param name="outcome">The treated liquor, with all its salts and acids in.</param>
    /// <param name="ph">As the meter showed it.</param>
    /// <param name="sample">How warm the sample was.</param>
    internal static MashMend? MendOf(WaterOutcome outcome, double ph, Entered<Temperature> sample) =>
        outcome.Plan.MashPh is null ? null : Of(outcome.Plan with { MashReading = new MeterReading(ph, sample, null) }, outcome.Need).Mend;

    /// <summary>What the run's liquors carry, in each kilogram of water.</summary>
    public static PlannedLiquors LiquorsOf(WaterOutcome outcome) => new(
        new Minerals(Carried(outcome.Mash), Carried(outcome.Sparge), Carried(outcome.Source.Ions)), outcome.MashPh, outcome.Mash.Litres);

    /// <summary>What a plan puts in after the liquor, as lines of the recipe, so that the run carries it as any other: salts and acid for the kettle, salts for the package.</summary>
    public static IEnumerable<IngredientLine> RecipeLinesOf(WaterOutcome outcome) =>
    [
        .. outcome.Kettle.Salts.Select(dose => Salt(dose, AdditionPoint.CopperUp)),
        .. outcome.Kettle.Acids.Select(Acid),
        .. outcome.Package.Salts.Select(dose => Salt(dose, AdditionPoint.Package)),
    ];

    private static IngredientLine Salt(SaltDose dose, AdditionPoint at)
    {
        // A salt of known assay is told to the run as the pure one in it.
        bool assayed = dose.Salt.Purity is not null;
        double grams = dose.Grams * (dose.Salt.Purity?.Ratio ?? 1);
        return Line(IngredientKind.Salt, assayed ? BrewingSalts.AnhydrousCalciumChloride.Id : dose.Salt.Id, dose.Salt.Name, grams, at);
    }

    /// <summary>An acid of any strength is told to the run as the pure acid in it.</summary>
    private static IngredientLine Acid(AcidDose dose)
    {
        AcidAsSold sold = dose.Acid.Acid;
        double grams = dose.Units * sold.MillimolesPerUnit * sold.Acid.MolarMass / 1000;
        return Line(IngredientKind.Acid, sold.Acid.Id, dose.Acid.Name, grams, AdditionPoint.CopperUp);
    }

    private static IngredientLine Line(IngredientKind kind, string of, string name, double grams, AdditionPoint at) => new()
    {
        Kind = kind,
        Of = of,
        As = name,
        Amount = new Amount(new(Mass.FromGrams(grams), Invariant($"{grams} g")), null),
        At = new AdditionTime(at),
    };

    /// <summary>A grist that no liquor could wet has no pH of a mash.</summary>
    private static LiquorNeed Stirrable(LiquorNeed need, List<Finding> findings)
    {
        double grist = need.Grist.Sum(line => line.Amount.Kilograms);
        if (need.StrikeLitres >= LiquorNeed.Thickest * grist)
        {
            return need;
        }

        string thick = LiquorFinding.Number(need.StrikeLitres / grist, "L/kg"), limit = LiquorFinding.Number(LiquorNeed.Thickest, "L/kg");
        findings.Add(new("mash.tooThick", Severity.Error, "strike", $"{thick} of liquor to the grist; less than {limit} cannot be stirred", thick, limit));
        return need with { Grist = [] };
    }

    /// <summary>Tells when a plan was written for other litres than the brew asks for.</summary>
    private static void Differs(string key, Entered<VolumeAt20C>? written, double needed, List<Finding> findings)
    {
        const double Tolerance = 0.02;
        if (written is { } own && Math.Abs(own.Value.Litres - needed) > Tolerance * own.Value.Litres)
        {
            string asked = LiquorFinding.Number(needed, "L");
            findings.Add(new("water.litresDiffer", Severity.Note, key, $"the plan says {own.Text}; the brew asks for {asked}, which salts and acids are counted for", own.Text, asked));
        }
    }

    private static Wort Carried(TreatedLiquor liquor)
    {
        Wort carried = Carried(liquor.Unsoured);
        foreach (AcidDose dose in liquor.Acids)
        {
            double millimoles = dose.Units * dose.Acid.Acid.MillimolesPerUnit / liquor.Litres / Wort.WaterKilogramsPerLitre;
            AcidsCarried.Put(ref carried, dose.Acid.Acid.Acid, millimoles);
        }

        return carried;
    }

    /// <summary>Ions, and their mass as minerals; bicarbonate leaves as gas and water, and weighs nothing here.</summary>
    private static Wort Carried(IonProfile ions)
    {
        const double LitresPerKilogram = 1 / Wort.WaterKilogramsPerLitre;
        Wort carried = default;
        IonTracers.Put(ref carried, ions, LitresPerKilogram);
        double milligrams = Ions.All.Where(ion => ion != Ion.Bicarbonate).Sum(ion => ions[ion]);
        carried[Component.Minerals] = milligrams * LitresPerKilogram / 1e6;
        return carried;
    }
}
