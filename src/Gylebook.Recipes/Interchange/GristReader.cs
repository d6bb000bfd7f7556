using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Interchange.Json;
using Gylebook.Recipes.Liquors;
using Gylebook.Science.Quantities;

namespace Gylebook.Recipes.Interchange;

/// <summary>The keys of a grist line in a water plan: a malt of the table, or a food with a titration of its own.</summary>
internal static class GristReader
{
    internal static GristLine? Read(ObjectReader at)
    {
        string? key = at.ExactlyOne(["malt", "food"]);
        string name = key is null ? "" : at.Name(key);
        Entered<Mass> amount = at.Quantity<Mass>("amount");
        Entered<MaltColour>? colour = at.OptionalQuantity<MaltColour>("colour");
        MaltTitration? own = Own(at);
        if (name.Length == 0)
        {
            return null;
        }

        if (key == "food")
        {
            return new GristLine(name, amount.Value, own);
        }

        var found = Malts.Find(name);
        if (found.Match is not { } malt)
        {
            string nearest = string.Join(", ", found.Nearest);
            if (own is null)
            {
                at.Findings.Error("malt.unknown", at.PathOf("malt"), $"\"{FindingList.Shorten(name)}\"; not in the tables, and without a titration of its own. Nearest: {nearest}", name, nearest);
            }

            return new GristLine(name, amount.Value, own);
        }

        return new GristLine(malt.Name, amount.Value, own ?? MaltTitrations.Of(malt, colour?.Value ?? malt.Colour));
    }

    /// <summary>A titration the brewer has: the pH in distilled water and the buffer; both or neither.</summary>
    private static MaltTitration? Own(ObjectReader at)
    {
        double? ph = at.Take("distilledPh")?.Number(2, 9);
        double? buffer = at.Take("buffer")?.Number(1, 2000);
        if (ph is null != buffer is null)
        {
            at.Findings.Error("titration.half", at.Path, "a titration needs both distilledPh and buffer, mEq/(kg·pH)");
        }

        return ph is { } known && buffer is { } stiff ? new MaltTitration(known, stiff, 0, new("the brewer's own figure", "entered")) : null;
    }
}
