using Gylebook.Recipes.Documents;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Interchange;

namespace Gylebook.Recipes.Editing;

/// <summary>A line of a draft, as typed.</summary>
/// <param name="Number">Its place, from 0.</param>
/// <param name="Kind">What sort of thing; null when the line does not say.</param>
/// <param name="Of">What, as typed.</param>
public sealed record DraftLine(int Number, IngredientKind? Kind, string Of)
{
    /// <summary>Where its findings point to.</summary>
    public string Path => Invariant($"ingredients[{Number}]");

    /// <summary>The key under which it says what it is of: <c>malt</c>; null when the line does not say.</summary>
    public string? KindKey => Kind is { } kind ? FileWords.Kinds.Word(kind) : null;

    /// <summary>A name to show instead.</summary>
    public string? As { get; init; }

    /// <summary>How much.</summary>
    public string Amount { get; init; } = "";

    /// <summary>When: <c>boil 60 min</c>.</summary>
    public string At { get; init; } = "";

    /// <summary>The portion it goes into; null for all.</summary>
    public string? Portion { get; init; }

    /// <summary>A hop's alpha acids.</summary>
    public string? Alpha { get; init; }

    /// <summary>Whole, pellet, dry, liquid or slurry.</summary>
    public string? Form { get; init; }

    /// <summary>Time since a hop's assay, or since yeast was packed.</summary>
    public string? Age { get; init; }

    /// <summary>Cells that yeast held when fresh.</summary>
    public string? Cells { get; init; }

    /// <summary>How far this yeast went last time.</summary>
    public string? Attenuation { get; init; }

    /// <summary>A malt's own colour.</summary>
    public string? Colour { get; init; }

    /// <summary>What to call it in a sentence.</summary>
    public string Name => As ?? (Of.Length > 0 ? SpokenName.Of(Of) : "a line without a name");

    /// <summary>When it goes in; the mash, for what cannot be read.</summary>
    public AdditionTime Time => AdditionTimeText.TryParse(At, out var time, out _) ? time : new(AdditionPoint.Mash);

    internal static DraftLine From(int number, ObjectNode line)
    {
        string? key = FileWords.Kinds.Words.FirstOrDefault(line.Has);
        string? Text(string field) => FileDraft.TextOf(line[field]);
        IngredientKind? kind = key is null ? null : FileWords.Kinds.Value(key);
        return new DraftLine(number, kind, key is null ? "" : Text(key) ?? "")
        {
            As = Text("as"),
            Amount = Text("amount") ?? "",
            At = Text("at") ?? "mash",
            Portion = Text("portion"),
            Alpha = Text("alpha"),
            Form = Text("form"),
            Age = Text("age"),
            Cells = Text("cells"),
            Attenuation = Text("attenuation"),
            Colour = Text("colour"),
        };
    }
}
