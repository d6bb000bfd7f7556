using Gylebook.Recipes;
using Gylebook.Recipes.Liquors;
using Gylebook.Science.Numerics;
using Gylebook.Science.Water;

namespace Gylebook.Forecast.Liquors;

/// <summary>Salts, dilution and acid for the liquor of one place, in amounts that can be weighed and measured.</summary>
internal static class DoseFinder
{
    /// <summary>Step of a balance, g, and of a measure, mL: common practice, no source.</summary>
    internal const double Step = 0.1;

    private const int Halvings = 40;

    /// <summary>Finds them.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="source">The water before.</param>
    /// <param name="litres">How much of it.</param>
    /// <param name="offers">Salts that may go there.</param>
    /// <param name="mayDilute">Whether distilled water may replace part of it.</param>
    public static SaltSolution Find(WaterPlan plan, IonProfile source, double litres, IEnumerable<OfferedSalt> offers, bool mayDilute)
    {
        DilutionOffer? dilution = mayDilute && plan.Dilution is { } share ? new(IonProfile.Distilled, share.Value.Ratio) : null;
        SaltPlan asked = new(source, plan.Targets, [.. offers.Select(offer => Offer(offer, source))], Dilution: dilution);
        return SaltSolver.SolveWeighable(asked, litres, Step, Step);
    }

    /// <summary>An offer with its limits in g/L.</summary>
    internal static SaltOffer Offer(OfferedSalt offer, IonProfile source)
    {
        SaltOffer usual = SaltSolver.UsualOffer(offer.Salt, source);
        double least = (offer.Least?.Value.MilligramsPerLitre ?? 0) / 1000;
        double most = offer.Most is { } own ? own.Value.MilligramsPerLitre / 1000 : usual.MostGramsPerLitre;
        double price = offer.Price is { } share ? share.Ratio * share.Ratio : usual.Price;
        return usual with { MostGramsPerLitre = Math.Max(least, most), LeastGramsPerLitre = least, Price = price };
    }

    /// <summary>The salts as doses.</summary>
    public static IReadOnlyList<SaltDose> Doses(SaltSolution solution, double litres) =>
        [.. solution.Salts.Select(salt => new SaltDose(salt.Salt, salt.GramsPerLitre * litres))];

    /// <summary>What is doubtful about the salts of one place.</summary>
    public static IEnumerable<Finding> Findings(SaltSolution solution, string place) =>
        solution.Diagnoses.Select(diagnosis => LiquorFinding.Of(diagnosis, place));

    /// <summary>Grams of an alkaline salt to a pH, by halving, since more of it never lowers the pH: the least that reaches it, or the most there may be.</summary>
    public static double AlkaliGrams(Func<double, double> ph, double wanted, double least, double most) =>
        new Bracket(least, most).Halved(grams => wanted - ph(grams), Halvings).High;

    /// <summary>To the nearest step of the measure, within the limit.</summary>
    internal static double Rounded(double amount, double most)
    {
        double rounded = Math.Round(amount / Step) * Step;
        return rounded > most ? Math.Floor(most / Step) * Step : rounded;
    }

    /// <summary>With the ion that a strong acid leaves behind: chloride, sulphate.</summary>
    public static IonProfile WithAnion(IonProfile ions, AcidAsSold acid, double units, double litres) =>
        acid.Acid.Anion is Ion anion
            ? ions.With(anion, ions[anion] + (units * acid.MillimolesPerUnit * anion.MolarMass() / litres))
            : ions;
}
