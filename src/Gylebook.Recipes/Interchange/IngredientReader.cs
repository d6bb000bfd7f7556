using System.Text.Json;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Interchange.Json;
using Gylebook.Science.Quantities;

namespace Gylebook.Recipes.Interchange;

/// <summary>The keys of one ingredient line.</summary>
internal static class IngredientReader
{
    private static readonly string[] KindKeys = [.. FileWords.Kinds.Words];

    internal static IngredientLine Read(ObjectReader line)
    {
        var key = line.ExactlyOne(KindKeys);
        var kind = key is null ? null : FileWords.Kinds.Value(key);
        return new IngredientLine
        {
            Kind = kind ?? default,
            Of = key is null ? "" : line.Name(key),
            As = line.OptionalName("as"),
            Alpha = Only(line, "alpha", kind, IsHop, "hops")?.Quantity<Fraction>(),
            Form = Form(line, kind),
            Colour = Only(line, "colour", kind, HasColour, "malts, extracts and sugars")?.Quantity<MaltColour>(),
            Age = Only(line, "age", kind, Ages, "hops and yeast")?.Quantity<Duration>(),
            Storage = Only(line, "storage", kind, IsHop, "hops") is null ? null : line.OptionalObject("storage", Storage),
            Cells = Only(line, "cells", kind, IsYeast, "yeast") is { } cells ? CellCountText.Read(cells) : null,
            Attenuation = Only(line, "attenuation", kind, IsYeast, "yeast")?.Quantity<Fraction>(),
            Amount = Amount(line, kind),
            At = At(line, kind),
            Portion = line.OptionalName("portion"),
        };
    }

    /// <summary>Whether a thing of that kind may be measured in a jug. The rest is weighed.</summary>
    internal static bool MayBeMeasuredInAJug(IngredientKind kind) => kind is
        IngredientKind.Water or IngredientKind.Acid or IngredientKind.Food or IngredientKind.Sugar or IngredientKind.Extract
        or IngredientKind.Yeast;

    private static bool IsHop(IngredientKind kind) => kind is IngredientKind.Hop;

    private static bool IsYeast(IngredientKind kind) => kind is IngredientKind.Yeast;

    private static bool Ages(IngredientKind kind) => kind is IngredientKind.Hop or IngredientKind.Yeast;

    private static HopStorage Storage(ObjectReader at) => new(
        at.Quantity<Temperature>("temperature"),
        at.Word("pack", FileWords.HopPacks),
        at.OptionalQuantity<Fraction>("lost"));

    private static bool HasColour(IngredientKind kind) =>
        kind is IngredientKind.Malt or IngredientKind.Extract or IngredientKind.Sugar;

    /// <summary>A key that only some kinds have.</summary>
    private static JsonCursor? Only(
        ObjectReader line, string key, IngredientKind? kind, Func<IngredientKind, bool> belongs, string toWhat)
    {
        if (line.Take(key) is not { } at || kind is not { } known || belongs(known))
        {
            return kind is null ? null : line.Take(key);
        }

        at.Findings.Error("key.misplaced", at.Path, $"only {toWhat} have \"{key}\"; this line is {FileWords.Kinds.Word(known)}", key);
        return null;
    }

    private static IngredientForm? Form(ObjectReader line, IngredientKind? kind)
    {
        var forms = kind is { } known ? FileWords.FormsOf(known) : null;
        return Only(line, "form", kind, _ => forms is not null, "hops and yeast")?.Word(forms!);
    }

    /// <summary>A mass or a volume; which is meant shows in the unit.</summary>
    private static Amount Amount(ObjectReader line, IngredientKind? kind)
    {
        if (line.Need("amount") is not { } at || kind is not { } known)
        {
            return default;
        }

        if (!MayBeMeasuredInAJug(known) || at.Element.ValueKind != JsonValueKind.String)
        {
            return new Amount(at.Quantity<Mass>(), null);
        }

        return UnitTable.TryParse<VolumeAt20C>(at.Element.GetString()!, out var volume, out _)
            ? new Amount(null, volume)
            : new Amount(UnitTable.LooksLike<VolumeAt20C>(at.Element.GetString()!) ? Refused(at) : at.Quantity<Mass>(), null);
    }

    /// <summary>Litres, but not a volume there can be: told of as litres.</summary>
    private static Entered<Mass>? Refused(JsonCursor at)
    {
        at.Quantity<VolumeAt20C>();
        return null;
    }

    private static AdditionTime At(ObjectReader line, IngredientKind? kind)
    {
        var at = kind is IngredientKind.Malt or null ? line.Take("at") : line.Need("at");
        if (at?.Text(int.MaxValue) is not { } text)
        {
            return new AdditionTime(AdditionPoint.Mash);
        }

        if (!AdditionTimeText.TryParse(text, out var time, out var problem))
        {
            line.Findings.Error(
                "at.unknown", at.Value.Path, $"\"{FindingList.Shorten(text)}\"; {problem}", text, AdditionTimeText.Forms);
        }

        return time;
    }
}
