using Gylebook.Gyles.Plans;

namespace Gylebook.Site.Publications;

/// <summary>A recipe as it was given out: one version of it, with all that is needed to brew it, and nothing that its brewer keeps.</summary>
public sealed record Publication
{
    /// <summary>The recipe's name.</summary>
    public required string Name { get; init; }

    /// <summary>Its part of an address: <c>hedgerow-brown</c>.</summary>
    public required string Slug { get; init; }

    /// <summary>The version; 0 where it is none of a book's.</summary>
    public int Version { get; init; }

    /// <summary>The day it was given out.</summary>
    public required DateOnly Day { get; init; }

    /// <summary>Who gives it out; empty for nobody.</summary>
    public string By { get; init; } = "";

    /// <summary>Its files, made public by <see cref="PublicFiles"/>.</summary>
    public required GyleFiles Files { get; init; }

    /// <summary>The day it was brewed; null where no gyle goes with it.</summary>
    public DateOnly? Brewed { get; init; }

    /// <summary>What was measured of that gyle, beside its plan.</summary>
    public IReadOnlyList<MeasuredNumber> Measured { get; init; } = [];

    /// <summary>What was put right since, the first first.</summary>
    public IReadOnlyList<Erratum> Errata { get; init; } = [];
}

/// <summary>Something wrong in a version that was given out, and what is right.</summary>
/// <param name="Day">When it was said.</param>
/// <param name="Version">Of which version.</param>
/// <param name="Text">What is wrong, and what to do.</param>
public sealed record Erratum(DateOnly Day, int Version, string Text);

/// <summary>A number that was measured, beside the plan's.</summary>
/// <param name="Title">What, and where.</param>
/// <param name="Unit">Its unit, as readouts have it: <c>SG</c>, <c>L at 20 °C</c>.</param>
/// <param name="Decimals">Digits that a person makes use of.</param>
/// <param name="Low">5 % of the plan lay below; null where it had no band.</param>
/// <param name="High">5 % of the plan lay above.</param>
/// <param name="Measured">What was measured.</param>
public sealed record MeasuredNumber(string Title, string Unit, int Decimals, double? Low, double? High, double Measured)
{
    /// <summary>Whether it lies in the band; null where there is none.</summary>
    public bool? IsInside => Low is { } low && High is { } high ? Measured >= low && Measured <= high : null;
}
