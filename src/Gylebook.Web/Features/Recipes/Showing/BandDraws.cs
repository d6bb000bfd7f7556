namespace Gylebook.Web.Features.Recipes.Showing;

/// <summary>How many draws the bands on a page are made of.</summary>
/// <param name="Count">0 for no bands. A thousand tell an end to a fortieth of the band (decision 0025), and are there before the hand has left the key.</param>
public sealed record BandDraws(int Count)
{
    /// <summary>What pages take.</summary>
    public static BandDraws Usual { get; } = new(1000);
}
