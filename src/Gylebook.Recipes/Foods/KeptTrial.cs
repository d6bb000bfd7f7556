using Gylebook.Recipes.Ingredients;
using Gylebook.Science.Foods.Doses;
using Gylebook.Science.Quantities;

namespace Gylebook.Recipes.Foods;

/// <summary>A bench trial that is kept with its food: glasses of one finished beer, each with another dose.</summary>
public sealed record KeptTrial
{
    /// <summary>The batch its doses are told for until somebody says another. Our choice.</summary>
    public static Entered<VolumeAt20C> UsualBatch { get; } = new(VolumeAt20C.FromLitres(19), "19 L");

    /// <summary>The day it was tasted.</summary>
    public required DateOnly Day { get; init; }

    /// <summary>The beer in the glasses: a gyle's name, or in words.</summary>
    public required string Beer { get; init; }

    /// <summary>What was dosed, where it was not the food as it is: a tincture, a syrup, a tea, and how it was made. Null for the food itself.</summary>
    public string? Dosed { get; init; }

    /// <summary>The glasses, in the order of the file.</summary>
    public IReadOnlyList<TrialGlass> Glasses { get; init; } = [];

    /// <summary>The best glass: the one that is called so, else the one with the highest mark; null where nobody can tell.</summary>
    public TrialGlass? Best => Glasses.Where(glass => glass.IsBest == true).ToArray() is [{ } called] ? called
        : Glasses.Where(glass => glass.Mark is not null && glass.Mark == Glasses.Max(other => other.Mark)).ToArray() is [{ } highest] ? highest
        : null;
}

/// <summary>A glass of a bench trial.</summary>
public sealed record TrialGlass
{
    /// <summary>How much was in it, for each litre.</summary>
    public required TrialDose Dose { get; init; }

    /// <summary>A mark from 0, the worst, to 10; null when nobody gave one.</summary>
    public double? Mark { get; init; }

    /// <summary>What was tasted, in words; null when nothing was written down.</summary>
    public string? Notes { get; init; }

    /// <summary>Whether it is the dose for the batch; null when unsaid.</summary>
    public bool? IsBest { get; init; }
}

/// <summary>A dose in a beer, and the text it was typed as: "3 g/L", "0.5 mL/L".</summary>
/// <param name="PerLitre">Grams or millilitres for each litre of beer.</param>
/// <param name="IsPoured">Whether it is millilitres.</param>
/// <param name="Text">As typed.</param>
public readonly record struct TrialDose(double PerLitre, bool IsPoured, string Text)
{
    private const double PerGlassOfOneInALitre = 1000 * BenchTrial.GlassMillilitres / 1000;

    /// <summary>What the same dose is in so much beer.</summary>
    public Amount In(VolumeAt20C beer) => Of(BenchTrial.BatchGrams(PerLitre * PerGlassOfOneInALitre, beer.Litres));

    /// <summary>What to begin the batch with: then taste, and top up. Common practice, see <see cref="BenchTrial.FirstShare"/>.</summary>
    public Amount FirstIn(VolumeAt20C beer) => Of(BenchTrial.FirstShare * BenchTrial.BatchGrams(PerLitre * PerGlassOfOneInALitre, beer.Litres));

    /// <summary>Three figures that count: nobody tastes a fourth.</summary>
    private Amount Of(double much)
    {
        string number = Invariant($"{Figures(much):0.########}");
        return IsPoured
            ? new Amount(null, new Entered<VolumeAt20C>(VolumeAt20C.FromLitres(much / 1000), $"{number} mL"))
            : new Amount(new Entered<Mass>(Mass.FromGrams(much), $"{number} g"), null);
    }

    private static double Figures(double value)
    {
        if (value == 0)
        {
            return 0;
        }

        double step = Math.Pow(10, Math.Floor(Math.Log10(value)) - 2);

        // A half goes up, as by hand: 48.45 stands a hair below itself in binary.
        return Math.Round(Math.Round(value / step, 6), MidpointRounding.AwayFromZero) * step;
    }
}
