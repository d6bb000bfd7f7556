using Gylebook.Forecast;
using Gylebook.Recipes.Foods;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Interchange;
using Gylebook.Science.Quantities;

namespace Gylebook.Web.Features.Foods.Labels;

/// <summary>How much of a food, into how much, and the two places to compare.</summary>
/// <param name="Amount">How much; null for the usual dose of its family.</param>
/// <param name="Into">Litres in the fermenter, or in the package for what goes in that late.</param>
/// <param name="At">One place.</param>
/// <param name="Beside">The other.</param>
public sealed record FoodQuestion(Entered<Mass>? Amount, Entered<VolumeAt20C> Into, AdditionTime At, AdditionTime Beside)
{
    /// <summary>The recipe that wants it; null for none.</summary>
    public Guid? For { get; init; }

    // For a family without a usual dose: a place to start from, there to be typed over (common practice, no source).
    private const double GramsPerLitre = 10;

    /// <summary>Places that are offered; any other may stand in the address.</summary>
    public static readonly IReadOnlyList<AdditionTime> Offered =
    [
        new(AdditionPoint.Mash), new(AdditionPoint.CopperUp), new(AdditionPoint.Boil, 10), new(AdditionPoint.KnockOut), new(AdditionPoint.Pitch),
        new(AdditionPoint.Ferment, 3), new(AdditionPoint.Rack), new(AdditionPoint.Package),
    ];

    /// <summary>Reads an address; what it does not say, or says wrongly, is left at a usual value.</summary>
    public static FoodQuestion Read(string? amount, string? into, string? at, string? beside, Guid? recipe = null) => new(
        UnitTable.TryParse(amount, out Entered<Mass> much, out _) && much.Value.Grams > 0 ? much : null,
        UnitTable.TryParse(into, out Entered<VolumeAt20C> litres, out _) && litres.Value.Litres > 0 ? litres : TwentyLitres,
        AdditionTimeText.TryParse(at ?? "", out AdditionTime one, out _) ? one : new(AdditionPoint.Mash),
        AdditionTimeText.TryParse(beside ?? "", out AdditionTime other, out _) ? other : new(AdditionPoint.KnockOut))
    {
        For = recipe,
    };

    /// <summary>The amount asked for, or the family's usual dose.</summary>
    public Entered<Mass> AmountOf(FoodFamily family)
    {
        if (Amount is { } asked)
        {
            return asked;
        }

        Mass usual = Mass.FromGrams((family.DoseTypical ?? GramsPerLitre) * Into.Value.Litres);
        return Typed<Mass>(UnitTable.Format(usual, "g", 3));
    }

    /// <summary>The address of that question about that food, with a panel open; null for none.</summary>
    public string Url(Guid? food, string? panel) => PageUrls.FoodLabelWith(food, panel, Amount?.Text, Into.Text, Words.Of(At), Words.Of(Beside), For);

    private static Entered<VolumeAt20C> TwentyLitres => Typed<VolumeAt20C>("20 L");

    private static Entered<T> Typed<T>(string text)
        where T : struct, IQuantity<T> =>
        UnitTable.TryParse(text, out Entered<T> entered, out string problem) ? entered : throw new InvalidOperationException(problem);
}
