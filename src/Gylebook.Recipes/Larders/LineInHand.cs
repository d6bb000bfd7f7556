using Gylebook.Recipes.Foods;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Lots;

namespace Gylebook.Recipes.Larders;

/// <summary>A recipe's line with what the larder knows of it.</summary>
/// <param name="Line">The line, with the figures of lot and sheet where it says none, and of what the tables have.</param>
/// <param name="Typed">The line as it was written.</param>
public sealed record LineInHand(IngredientLine Line, IngredientLine Typed)
{
    /// <summary>The sheet it is of; null when it is of the tables alone.</summary>
    public LarderSheet? Sheet { get; init; }

    /// <summary>The lot it is of; null when the line names none, or there is no such.</summary>
    public Lot? Lot { get; init; }

    /// <summary>The food it is, made up; null when it is none of the brewer's own.</summary>
    public FoodMakeup? Food { get; init; }

    /// <summary>What is known of the malt it is; null when it is none of the brewer's own.</summary>
    public OwnMalt? Malt { get; init; }

    /// <summary>Where a hop's alpha acids come from.</summary>
    public AlphaFrom Alpha { get; init; }

    /// <summary>Names of the larder that may have been meant, where nothing in it is meant.</summary>
    public Func<IReadOnlyList<string>> Near { get; init; } = static () => [];

    /// <summary>What draws call it by: the lot where one is named, for no two are alike.</summary>
    public string Key => KeyOf(Sheet, Lot) ?? Typed.Of.ToLowerInvariant();

    /// <summary>Where figures of it come from.</summary>
    public Provenance From => Lot is { } lot ? new($"assay of lot {lot.Name}, {Sheet!.Name}", Provenance.Entered.Status)
        : Sheet is { } sheet ? new($"the sheet of {sheet.Name}", Provenance.Entered.Status)
        : Provenance.Entered;

    /// <summary>Sheet and lot as one word without a dot, which parts the words of an id; null without a sheet.</summary>
    internal static string? KeyOf(LarderSheet? sheet, Lot? lot) => sheet is null ? null
        : (lot is null ? sheet.Id : $"{sheet.Id}-{lot.Name}").Replace('.', '-').ToLowerInvariant();
}

/// <summary>Where a hop's alpha acids come from, the vaguest first.</summary>
public enum AlphaFrom
{
    /// <summary>The cultivar's usual value.</summary>
    Cultivar,

    /// <summary>The pack, as a line or a sheet copies it.</summary>
    Pack,

    /// <summary>An assay of the lot.</summary>
    Assay,
}
