using Gylebook.Recipes.Ingredients;

namespace Gylebook.Recipes.Lots;

/// <summary>An amount of something at hand, with its dates, its price and its assay.</summary>
public abstract record Lot
{
    /// <summary>What it is called by: what stands on the sack.</summary>
    public required string Name { get; init; }

    /// <summary>How much was bought; null when unsaid.</summary>
    public Amount? Amount { get; init; }

    /// <summary>What that much cost; null when unsaid.</summary>
    public Price? Price { get; init; }

    /// <summary>The day it was bought; null when unsaid.</summary>
    public DateOnly? Bought { get; init; }

    /// <summary>The day it was opened; null when it is sealed, or nobody says.</summary>
    public DateOnly? Opened { get; init; }

    /// <summary>The last day its maker stands by it; null when unsaid.</summary>
    public DateOnly? BestBefore { get; init; }
}

/// <summary>A lot with the figures of its assay.</summary>
/// <typeparam name="TFigures">Which figures.</typeparam>
public sealed record Lot<TFigures> : Lot
    where TFigures : class
{
    /// <summary>What was measured of this lot; it goes before the sheet's figures. Null when nothing was.</summary>
    public TFigures? Assay { get; init; }
}

/// <summary>A sum of money, and the text it was typed as: "4.20 EUR".</summary>
/// <param name="Value">How much.</param>
/// <param name="Currency">Its three letters, ISO 4217.</param>
/// <param name="Text">As typed.</param>
public readonly record struct Price(decimal Value, string Currency, string Text);

/// <summary>A sheet of something a brewer has or knows.</summary>
public abstract record LarderSheet
{
    /// <summary>What recipes call it by.</summary>
    public required string Id { get; init; }

    /// <summary>What it is called.</summary>
    public required string Name { get; init; }

    /// <summary>How much of it is sold at once; null when nobody said.</summary>
    public Amount? Pack { get; init; }

    /// <summary>The lots of it, in the order of the file.</summary>
    public abstract IReadOnlyList<Lot> EveryLot { get; }
}

/// <summary>A sheet with lots whose assays have those figures.</summary>
/// <typeparam name="TFigures">Which figures.</typeparam>
public abstract record LarderSheet<TFigures> : LarderSheet
    where TFigures : class
{
    /// <summary>The lots of it, in the order of the file.</summary>
    public IReadOnlyList<Lot<TFigures>> Lots { get; init; } = [];

    /// <inheritdoc/>
    public override IReadOnlyList<Lot> EveryLot => Lots;

    /// <summary>What was measured of a lot; null when nothing was.</summary>
    internal static TFigures? AssayOf(Lot? lot) => (lot as Lot<TFigures>)?.Assay;
}

/// <summary>A sheet that says what of the tables its thing is like.</summary>
/// <typeparam name="TFigures">Which figures.</typeparam>
public abstract record LikeSheet<TFigures> : LarderSheet<TFigures>
    where TFigures : class
{
    /// <summary>The row of the tables from which all is taken that is not said, by id or name.</summary>
    public required string Like { get; init; }

    /// <summary>Anything worth remembering; null when nothing.</summary>
    public string? Notes { get; init; }

    /// <summary>What its maker states of it; null when nothing.</summary>
    public TFigures? Figures { get; init; }
}
