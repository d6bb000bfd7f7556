using Gylebook.Engine.State;

namespace Gylebook.Engine.Stages;

/// <summary>What a kilogram of water carries, in each of the liquors: ions, and acids put into it.</summary>
/// <param name="Strike">In the liquor the mash starts in.</param>
/// <param name="Rinse">In the liquor the grain is rinsed with.</param>
/// <param name="TopUp">In the liquor the kettle is filled up with: as it comes from the source.</param>
public sealed record Minerals(Wort Strike, Wort Rinse, Wort TopUp)
{
    /// <summary>Liquor of which nothing is known, counted as pure water.</summary>
    public static Minerals None { get; } = new(default, default, default);

    /// <summary>So many kilograms of water with what they carry.</summary>
    public static Wort In(in Wort perKilogram, double kilograms)
    {
        Wort liquor = default;
        liquor.Add(perKilogram, kilograms);
        liquor[Component.Water] += kilograms;
        return liquor;
    }
}
