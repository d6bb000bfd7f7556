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

        return new GristLine(malt.Name, amount.Value, own ?? MaltTitrations.Of(malt, colour?.Value ?? malt.Colour), malt);
    }

    /// <summary>The malts of a plan that overrule the table, each once.</summary>
    internal static IReadOnlyList<TitratedMalt> Titrated(ObjectReader file)
    {
        Dictionary<string, TitratedMalt> malts = [];
        foreach ((TitratedMalt? malt, string path) in file.OptionalListOfObjects("malts", at => (OneTitrated(at), at.PathOf("malt"))))
        {
            if (malt is not null && !malts.TryAdd(malt.Malt.Id, malt))
            {
                file.Findings.Error("malt.twice", path, $"{malt.Malt.Name} is there twice; keep one", malt.Malt.Name);
            }
        }

        return [.. malts.Values];
    }

    private static TitratedMalt? OneTitrated(ObjectReader at)
    {
        string name = at.Name("malt");
        var found = Malts.Find(name);
        MaltTitration own = Acidity(at);
        if (found.Match is null && name.Length > 0)
        {
            string nearest = string.Join(", ", found.Nearest);
            at.Findings.Error("malt.unknown", at.PathOf("malt"), $"\"{FindingList.Shorten(name)}\"; not in the tables. Nearest: {nearest}", name, nearest);
        }

        return found.Match is { } malt ? new TitratedMalt(malt, own) : null;
    }

    /// <summary>A titration the brewer has: the pH in distilled water and the buffer; both or neither.</summary>
    private static MaltTitration? Own(ObjectReader at)
    {
        double? ph = Ph(at.Take("distilledPh"));
        double? buffer = Buffer(at.Take("buffer"));
        if (ph is null != buffer is null)
        {
            at.Findings.Error("titration.half", at.Path, "a titration needs both distilledPh and buffer, mEq/(kg·pH)");
        }

        return ph is { } known && buffer is { } stiff ? new MaltTitration(known, stiff, 0, Provenance.Entered) : null;
    }

    /// <summary>A titration that must be whole: of a malt that overrules the table, of a food.</summary>
    internal static MaltTitration Acidity(ObjectReader at) =>
        new(Ph(at.Need("distilledPh")) ?? 0, Buffer(at.Need("buffer")) ?? 0, 0, Provenance.Entered);

    private static double? Ph(JsonCursor? at) => at?.Number(2, 9);

    private static double? Buffer(JsonCursor? at) => at?.Number(1, 2000);
}
