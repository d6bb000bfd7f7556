using Gylebook.Forecast.Foods;
using Gylebook.Recipes;
using Gylebook.Recipes.Foods;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Kits;
using Gylebook.Science.Foods.Doses;
using Gylebook.Science.Foods.Words;
using Gylebook.Science.Quantities;

namespace Gylebook.Forecast.Report.Labels;

/// <summary>What a food's label means, and what that much of it does, place by place: for a page, a terminal and a file alike.</summary>
public sealed record FoodLabelReport
{
    /// <summary>The food's id.</summary>
    public required string Food { get; init; }

    /// <summary>Its name.</summary>
    public required string Name { get; init; }

    /// <summary>Its family; null when nothing is known of it.</summary>
    public string? Family { get; init; }

    /// <summary>How much, as typed; null when unsaid.</summary>
    public string? Amount { get; init; }

    /// <summary>Into how much, as typed; null when unsaid.</summary>
    public string? Into { get; init; }

    /// <summary>What 100 g hold, by constituent; null where nobody says.</summary>
    public required IReadOnlyList<Constituent> Per100Grams { get; init; }

    /// <summary>What was assumed.</summary>
    public required IReadOnlyList<FoodAssumption> Assumptions { get; init; }

    /// <summary>What the dose does at each place that was asked for, side by side.</summary>
    public required IReadOnlyList<FoodAtPlace> Places { get; init; }

    /// <summary>The dose against the usual range; null without a dose.</summary>
    public DoseGuide? DoseGuide { get; init; }

    /// <summary>A glass that tastes like the batch; null without a dose.</summary>
    public GlassTrial? Trial { get; init; }

    /// <summary>Bench trials that are kept with the food; none for a food of the tables.</summary>
    public IReadOnlyList<KeptTrial> KeptTrials { get; init; } = [];

    /// <summary>The batch that their doses are told for.</summary>
    public Entered<VolumeAt20C> Batch { get; init; } = KeptTrial.UsualBatch;

    /// <summary>What must be told of allergens.</summary>
    public required AllergenOutlook Allergens { get; init; }

    /// <summary>Where the lists differ, and what may be said of gluten.</summary>
    public required IReadOnlyList<SourcedSentence> AllergenNotes { get; init; }

    /// <summary>What is wrong or doubtful in what was entered.</summary>
    public required IReadOnlyList<Finding> Findings { get; init; }

    /// <summary>Reports on a food.</summary>
    /// <param name="id">Its id.</param>
    /// <param name="name">Its name.</param>
    /// <param name="food">The food made up.</param>
    /// <param name="amount">How much; null to leave out what it does.</param>
    /// <param name="into">Into how much; null likewise.</param>
    /// <param name="places">Where, one or more places side by side.</param>
    /// <param name="kit">Whose height sets the air that gas in the package works against; null for the sea's.</param>
    public static FoodLabelReport Of(
        string id, string name, MadeUpFood food, Entered<Mass>? amount, Entered<VolumeAt20C>? into, IReadOnlyList<AdditionTime> places,
        Kit? kit)
    {
        List<Finding> findings = [.. food.Findings];
        Entered<Length>? height = Dose.HeightOn(kit, findings);
        (string? typedAmount, string? typedInto) = (amount?.Text, into?.Text);
        (amount, into) = DoseCheck.Sane(amount, into, findings);
        IReadOnlyList<IngredientHit> words = food.Makeup?.Words ?? [];
        return new FoodLabelReport
        {
            Food = id,
            Name = name,
            Family = food.Makeup?.Family,
            Amount = typedAmount,
            Into = typedInto,
            Per100Grams = Constituent.Of(food),
            Assumptions = food.Makeup?.Assumed ?? [],
            Places = food.Makeup is { } makeup && amount is { } much && into is { } litres
                ? [.. places.SelectMany(at => FoodAtPlace.Of(food, makeup, new Dose(much.Value, at, litres.Value) { Height = height }, findings))]
                : [],
            DoseGuide = food.Makeup is { } dosed && amount is { } g && into is { } l ? Guide(dosed, g.Value.Grams / l.Value.Litres) : null,
            Trial = amount is { } grams && into is { } batch ? GlassTrial.Of(grams.Value.Grams, batch.Value.Litres) : null,
            Allergens = AllergenNotice.Of(words),
            AllergenNotes = [.. AllergenDifferences.For(words), .. GlutenRules.HasGlutenGrain(words) ? GlutenRules.For(words) : []],
            Findings = findings,
        };
    }

    private static DoseGuide Guide(FoodMakeup food, double gramsPerLitre)
    {
        FoodFamily family = FoodFamilies.Of(food.FamilyId);
        return new DoseGuide(gramsPerLitre, family.DoseLow, family.DoseTypical, family.DoseHigh);
    }
}

/// <summary>A dose at one place.</summary>
/// <param name="At">The place, as recipes say it.</param>
/// <param name="Effect">What it does there.</param>
/// <param name="Cautions">Its hazards there.</param>
public sealed record FoodAtPlace(string At, FoodEffect Effect, IReadOnlyList<Caution> Cautions)
{
    /// <summary>One; none, with a finding, where it cannot be reckoned.</summary>
    internal static IEnumerable<FoodAtPlace> Of(MadeUpFood food, FoodMakeup makeup, Dose dose, List<Finding> findings) =>
        Reckoning.Or<IEnumerable<FoodAtPlace>>(
            () =>
            {
                if (FoodTrial.Of(food, dose) is { } effect)
                {
                    return [new(Words.Of(dose.At), effect, [.. FoodCautions.Of(makeup, dose), .. effect.Fat.Cautions])];
                }

                findings.Add(DoseCheck.NothingLeft(dose));
                return [];
            },
            Words.Of(dose.At),
            (finding, _) =>
            {
                findings.Add(finding);
                return [];
            });
}

/// <summary>A dosed glass of 100 mL that tastes like the batch.</summary>
/// <param name="Milligrams">Food in the glass.</param>
/// <param name="Ladder">Glasses to pour beside it, mg each.</param>
/// <param name="FirstGrams">What to begin the batch with once the glass is liked, g.</param>
public sealed record GlassTrial(double Milligrams, IReadOnlyList<double> Ladder, double FirstGrams)
{
    internal static GlassTrial Of(double grams, double litres)
    {
        double glass = BenchTrial.GlassMilligrams(grams, litres);
        return new(glass, BenchTrial.LadderAround(glass), grams * BenchTrial.FirstShare);
    }
}
